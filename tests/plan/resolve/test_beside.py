"""Which step goes on with what is best eaten at once, where another part of the dish is begun in between. How long
such food waits is common practice, no source, as `facts.keeping` has it."""

from collections.abc import Callable

import pytest

from board.plan.load import PlanFile
from board.plan.resolve.beside import doubts
from tests.plan.resolve.test_keeping import plan_of

PlanFrom = Callable[[str], PlanFile]

# A dish, its foods, its steps, and which step besides the next takes up which: `serve` for serving.
WAITS = {
    "a chop, while its sauce reduces": (
        "Lamb chops with mustard sauce", "8 lamb chops, 200 ml cream, 20 g mustard",
        "grill the chops @ stovetop ~ 10 min; reduce the mustard sauce @ stovetop ~ 20 min",
        {"grill the chops": "serve"},
    ),
    "an ice, while something of another food is melted": (
        "Hazelnut gelato with caramel", "1 l hazelnut gelato, 200 g toffees",
        "take the gelato out ~ 2 min; melt the toffees for the sauce @ stovetop ~ 10 min",
        {"take the gelato out": "serve"},
    ),
    "an ice called by its dish alone": (
        "Blackcurrant sorbet", "1 l blackcurrant sorbet, 100 g almonds",
        "scoop ~ 5 min; toast the almonds @ oven at 180 C ~ 8 min", {"scoop": "serve"},
    ),
    "until a later step names it": (
        "Hake with peas", "8 hake fillets, 600 g peas, 100 g butter",
        "fry the hake @ stovetop ~ 8 min; steam the peas @ stovetop ~ 5 min; plate the hake ~ 4 min",
        {"fry the hake": "plate the hake"},
    ),
    "until a later step joins all of it": (
        "Linguine with clams", "500 g linguine, 1 kg clams, 50 g parsley",
        "boil the linguine @ stovetop ~ 9 min; chop the parsley ~ 5 min; steam the clams @ stovetop ~ 6 min; "
        "toss everything together ~ 2 min",
        {"boil the linguine": "toss everything together"},
    ),
    "through one beside it that is for it": (
        "Veal escalopes", "8 veal escalopes, 2 lemons, 100 g capers",
        "fry the escalopes @ stovetop ~ 8 min; slice the lemons for the escalopes ~ 5 min",
        {"fry the escalopes": "serve"},
    ),
    "what was made before it is no part of it": (
        "Gelato with caramel", "1 l gelato, 200 g toffees",
        "melt the toffees @ stovetop ~ 10 min; scoop the gelato ~ 5 min; warm the toffees ~ 5 min",
        {"scoop the gelato": "serve"},
    ),
    "another thing that the dish's name speaks of": (
        "Cod and chips", "8 cod fillets, 2 kg potatoes, 1 l oil",
        "fry the cod @ stovetop ~ 8 min; fry the chips @ stovetop ~ 15 min", {"fry the cod": "serve"},
    ),
    "by the host's own short limit": (
        "Rarebit", "400 g cheddar, 8 slices bread, 2 apples",
        "melt the cheddar @ stovetop ~ 8 min ~ keeps: 10 min in the room; slice the apples ~ 5 min",
        {"melt the cheddar": "serve"},
    ),
    "dressed leaves": (
        "Rocket with pears", "300 g rocket, 4 pears",
        "dress the rocket ~ 3 min; slice the pears ~ 6 min", {"dress the rocket": "serve"},
    ),
}  # fmt: skip
GOES_ON = {
    "it puts more into it, by what it uses": (
        "Buttery potatoes", "2 kg potatoes, 150 g butter",
        "boil the potatoes @ stovetop ~ 25 min; crush with butter ~ 5 min ~ uses: [150 g butter]",
    ),
    "it uses some of the same": (
        "Squid with lemon", "1 kg squid, 4 lemons",
        "deep-fry the squid @ stovetop ~ 8 min; slice the lemons ~ 4 min ~ uses: [1 kg squid, 4 lemons]",
    ),
    "what is in it since an earlier step": (
        "Veal ragout", "1 kg veal, 4 leeks",
        "brown the veal @ stovetop ~ 10 min; add the leeks and fry the leeks @ stovetop ~ 5 min ~ keeps: 20 min hot; "
        "braise the veal @ oven at 160 C ~ 2 h",
    ),
    "it is what it says": (
        "Lamb chops", "8 lamb chops, 2 lemons", "grill the chops @ stovetop ~ 10 min; rest the chops ~ 5 min",
    ),
    "by a word that stands for it": (
        "Squid with lemon", "1 kg squid, 4 lemons", "deep-fry the squid @ stovetop ~ 8 min; drain it ~ 2 min",
    ),
    "its words name nothing": (
        "Linguine with clams", "500 g linguine, 1 kg clams", "boil the linguine @ stovetop ~ 9 min; drain ~ 2 min",
    ),
    "something is put into it": (
        "Linguine with cream", "500 g linguine, 300 ml cream",
        "boil the linguine @ stovetop ~ 9 min; stir in the cream ~ 2 min",
    ),
    "it is covered": (
        "Baked gelato", "1 l gelato, 6 egg whites, 200 g sugar",
        "scoop the gelato ~ 5 min; cover with meringue ~ 5 min",
    ),
    "something goes over it": (
        "Waffles with plums", "8 waffles, 500 g plums",
        "cook the waffles @ stovetop ~ 10 min; spoon the plums over ~ 3 min",
    ),
    "what keeps for days waits for nobody": (
        "Almond biscuits with figs", "200 g almonds, 200 g flour, 8 figs",
        "bake the biscuits @ oven at 180 C ~ 15 min; slice the figs ~ 5 min",
    ),
    "a stew keeps": (
        "Beef stew with carrots", "2 kg beef, 600 g carrots",
        "braise the beef stew @ oven at 150 C ~ 3 h; steam the carrots @ stovetop ~ 10 min",
    ),
    "what is only cut": (
        "Cod and chips", "8 cod fillets, 2 kg potatoes", "cut the chips ~ 10 min; fry the cod @ stovetop ~ 8 min",
    ),
    "the next names the whole dish": (
        "Sundae", "1 l ice cream, 200 g cherries",
        "scoop the ice cream ~ 5 min; chill the sundae with cherries ~ 4 min",
    ),
}  # fmt: skip


def also_taken_up(file: PlanFile) -> dict[str, str]:
    """By step's words: what takes it up besides the next that is written."""
    filled = file.filled
    nodes = {id_: task.node for id_, task in filled.tasks.items()}
    steps = [id_ for id_, node in nodes.items() if node.kind == "step"]
    found = {}
    for link in filled.taken_up:
        follows = link.first in steps[:-1] and steps[steps.index(link.first) + 1] == link.second
        if link.first in steps and not follows and link.first != steps[-1]:
            second = nodes[link.second]
            found[nodes[link.first].name] = "serve" if second.kind == "serve" else second.name
    return found


@pytest.mark.parametrize("name", WAITS)
def test_what_must_be_eaten_at_once_waits_through_another_part_of_its_dish(plan_from: PlanFrom, name: str) -> None:
    dish, foods, steps, wanted = WAITS[name]

    assert also_taken_up(plan_from(plan_of(dish, foods, steps))) == wanted


@pytest.mark.parametrize("name", GOES_ON)
def test_where_words_do_not_say_so_a_step_goes_on_with_the_one_before(plan_from: PlanFrom, name: str) -> None:
    dish, foods, steps = GOES_ON[name]

    assert also_taken_up(plan_from(plan_of(dish, foods, steps))) == {}


def test_where_the_host_says_who_takes_it_up_it_is_so(plan_from: PlanFrom) -> None:
    steps = (
        "fry the hake @ stovetop ~ 8 min; steam the peas @ stovetop ~ 5 min ~ after: nothing; "
        "plate up ~ 4 min ~ after: [fry the hake, steam the peas]"
    )

    found = also_taken_up(plan_from(plan_of("Hake with peas", "8 hake fillets, 600 g peas", steps)))

    assert found == {"fry the hake": "plate up"}


def test_so_it_is_hot_food_on_its_way_to_the_table(plan_from: PlanFrom) -> None:
    dish, foods, steps, _ = WAITS["a chop, while its sauce reduces"]

    file = plan_from(plan_of(dish, foods, steps.replace("~ 20 min", "~ 5 min")))

    chops = next(task for task in file.filled.tasks.values() if task.node.name == "grill the chops")
    assert chops.ways[0].keeps is not None
    assert (chops.ways[0].keeps.minutes, chops.best_within) == (20, 10)


# A dish of fried squid and the words of its second step; whether they leave open what it is about.
OPEN = {
    "pick the mint ~ 15 min": True,
    "write the little cards ~ 15 min": True,
    "drain ~ 5 min": False,
    "drain the pieces ~ 5 min": False,
    "rest the catch ~ 5 min": False,
    "turn the rings over ~ 5 min": False,
    "fry the rings @ stovetop ~ 5 min": False,
    "salt the fish ~ 5 min": False,
    "slice the lemons ~ 5 min": False,
    "pick the mint ~ 15 min ~ after: nothing": False,
}


@pytest.mark.parametrize("step", OPEN)
def test_it_is_asked_only_of_a_step_whose_words_leave_it_open(plan_from: PlanFrom, step: str) -> None:
    file = plan_from(plan_of("Squid", "1 kg squid, 4 lemons", f"fry the squid @ stovetop ~ 8 min; {step}"))

    found = doubts(file.plan, {id_: task.node for id_, task in file.filled.tasks.items()}, file.filled.links)

    assert [each.then for each in found] == ([("serve/course",)] if OPEN[step] else [])


@pytest.mark.parametrize(
    ("dish", "first", "then"),
    [
        ("Lentil terrine", "press the lentils into the mould", "set the terrine"),
        ("Bread pudding", "soak the bread", "steam the pudding"),
        ("Apple crumble", "cut the apples", "warm the crumble"),
    ],
)
def test_a_dish_without_ingredients_is_the_whole_of_what_its_steps_call_by_its_name(
    plan_from: PlanFrom, dish: str, first: str, then: str
) -> None:
    file = plan_from(
        f"""
        event: Supper
        date: 2026-11-28
        zone: Europe/Dublin
        arrive: 18:30
        guests: [4 guests]
        hands:
          host:
            hours: {{on the day: '9:00 - 23:00'}}
        courses:
          - course: Main
            at: 19:30
            dishes:
              - dish: {dish}
                perishable: no
                steps:
                  - {{step: {first}, takes: 20 min, keeps: 1 h in the room}}
                  - {{step: {then}, where: stovetop, takes: 1 h, attended: 2 min at the start}}
        """
    )
    served = [link.first for link in file.filled.links if link.second.startswith("serve/") and link.takes_up]

    assert [each for each in served if first.replace(" ", "-") in each] == []
