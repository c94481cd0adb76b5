"""How long a step's result keeps, and where, in plans that say nothing of it. The figures are common practice, no
source, as `facts.keeping` has them; the limits that go before them are the rule set's."""

from collections.abc import Callable

import pytest

from board.facts import keeping as facts
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.phrases.stations import Keep
from board.plan.resolve.assume import Task
from board.sheet.said import assumed
from tests.conftest import HEAD

PlanFrom = Callable[[str], PlanFile]
H, D = 60, 24 * 60

# A dish, its ingredients, and its steps (words @ where ~ how long ~ more keys); then minutes and place, step by step.
ICES = {
    "an ice cream": (
        "Vanilla ice cream", "500 ml cream, 6 egg yolks, 150 g sugar",
        "make the custard @ stovetop ~ 20 min; chill the custard @ fridge ~ 4 h; churn the ice cream ~ 30 min; "
        "harden in the freezer @ freezer ~ 4 h; scoop into bowls ~ 5 min",
        [(30, "room"), (2 * D, "fridge"), (14 * D, "freezer"), (14 * D, "freezer"), (5, "room")],
    ),
    "a parfait": (
        "Raspberry parfait", "300 g raspberries, 4 eggs, 300 ml cream",
        "whip the cream ~ 5 min; freeze the parfait @ freezer ~ 8 h; unmould the parfait ~ 5 min; plate it ~ 5 min",
        [(2 * H, "fridge"), (14 * D, "freezer"), (15, "room"), (5, "room")],
    ),
    "a sorbet, softened in the fridge": (
        "Lemon sherbet", "6 lemons, 200 g sugar",
        "churn ~ 30 min; freeze until firm @ freezer ~ 4 h; let the sherbet soften @ fridge ~ 20 min",
        [(7 * D, "freezer"), (7 * D, "freezer"), (5, "fridge")],
    ),
    "an ice that was bought": (
        "Hot waffles", "8 waffles, 1 l ice cream", "add a scoop of ice cream to each ~ 4 min", [(6, "room")],
    ),
    "a parfait of liver is no ice": (
        "Chicken liver parfait", "400 g chicken livers, 200 g butter",
        "chill the parfait @ fridge ~ 6 h; slice the parfait ~ 8 min", [(2 * D, "fridge"), (4 * H, "fridge")],
    ),
}  # fmt: skip
BAKED = {
    "a loaf": (
        "Sourdough loaf", "500 g bread flour, 10 g salt",
        "knead the dough ~ 15 min; prove it in the fridge @ fridge ~ 12 h; bake the bread @ oven at 230 C ~ 45 min; "
        "slice the bread ~ 5 min",
        [(30, "room"), (D, "fridge"), (D, "room"), (3 * H, "room")],
    ),
    "rolls of dough with milk and egg": (
        "Dinner rolls", "500 g flour, 7 g yeast, 300 ml milk, 1 egg",
        "make the dough ~ 15 min; bake the rolls @ oven at 200 C ~ 20 min", [(30, "room"), (12 * H, "room")],
    ),
    "cookies": (
        "Oatmeal cookies", "200 g flour, 150 g butter, 100 g sugar, 1 egg",
        "mix the cookie dough ~ 10 min; bake the cookies @ oven at 350 F ~ 12 min",
        [(2 * D, "fridge"), (3 * D, "room")],
    ),
    "tart shells": (
        "Plum tart", "250 g flour, 125 g butter, 800 g plums",
        "rest the pastry @ fridge ~ 1 h; line the tin ~ 10 min; blind bake the case @ oven at 180 C ~ 25 min",
        [(2 * D, "fridge"), (D, "fridge"), (D, "room")],
    ),
    "of no known name, and of flour": (
        "Granny's zibbles", "300 g flour, 100 g butter, 100 g sugar", "bake the zibbles @ oven at 180 C ~ 20 min",
        [(12 * H, "room")],
    ),
    "a sponge cake, cooled": (
        "Hazelnut cake", "200 g flour, 200 g sugar, 4 eggs",
        "bake the cake @ oven at 180 C ~ 30 min; cool on a rack ~ 1 h", [(2 * D, "room"), (2 * D, "room")],
    ),
    "meringues, and what they are filled with": (
        "Meringues with cream", "4 egg whites, 200 g sugar, 300 ml heavy cream",
        "whisk the egg whites ~ 10 min; bake the meringues @ oven at 110 C ~ 90 min; "
        "whip the heavy cream ~ 5 min ~ after: nothing; "
        "fill the meringues ~ 5 min ~ after: [bake the meringues, whip the heavy cream]",
        [(10, "room"), (2 * D, "room"), (4 * H, "fridge"), (2 * H, "fridge")],
    ),
    "a tart with custard in it does not keep as its shell does": (
        "Custard tart", "6 egg yolks, 500 ml cream, 250 g flour",
        "pour the custard into the baked case ~ 5 min; bake the tart @ oven at 130 C ~ 40 min", [None, (120, "room")],
    ),
}  # fmt: skip
COLD = {
    "vegetables": (
        "Crudites and dip", "5 carrots, 1 cucumber, 200 g yogurt",
        "cut the vegetables ~ 20 min; mix the dip ~ 10 min; arrange on a platter ~ 5 min",
        [(D, "fridge"), (2 * D, "fridge"), (4 * H, "fridge")],
    ),
    "in American": (
        "Roasted vegetables", "3 zucchini, 2 eggplants, 1 bunch scallions", "dice the zucchini and eggplants ~ 15 min",
        [(D, "fridge")],
    ),
    "leaves": (
        "Green salad", "2 lettuces, 1 lemon, 4 tbsp olive oil",
        "wash the leaves ~ 10 min; make the vinaigrette ~ 5 min; dress the leaves ~ 3 min",
        [(D, "fridge"), None, (15, "room")],
    ),
    "arugula": (
        "Arugula salad", "200 g arugula, 1 lemon", "toss the arugula with lemon ~ 3 min", [(15, "room")],
    ),
    "a salad that bears its dressing": ("Coleslaw", "1 cabbage, 150 g mayo", "toss the slaw ~ 5 min", [(D, "fridge")]),
    "avocado": ("Guacamole", "4 avocados, 2 limes", "mash the avocados ~ 10 min", [(2 * H, "fridge")]),
    "a set cream, turned out": (
        "Panna cotta", "600 ml cream, 100 g sugar",
        "warm the cream @ stovetop ~ 10 min; pour into moulds ~ 5 min; chill overnight @ fridge ~ 8 h; "
        "turn out the panna cottas ~ 10 min",
        [(30, "room"), (30, "room"), (2 * D, "fridge"), (4 * H, "fridge")],
    ),
    "of no known kind, out of the fridge": (
        "Grandmother's surprise", "500 ml cream, 100 g sugar",
        "chill it well @ fridge ~ 3 h; put it together ~ 10 min", [(D, "fridge"), (4 * H, "fridge")],
    ),
    "raw meat goes back": (
        "Roast beef", "2 kg beef joint",
        "season the beef ~ 10 min; take the beef out of the fridge ~ 5 min; roast the beef @ oven at 190 C ~ 90 min",
        [(D, "fridge"), (H, "room"), (30, "room")],
    ),
    "a stuffed bird does not": (
        "Roast turkey", "6 kg turkey", "stuff the turkey ~ 15 min; roast the turkey @ oven at 170 C ~ 4 h",
        [(30, "room"), (30, "room")],
    ),
}  # fmt: skip
HOT = {
    "a roast": (
        "Roast chicken", "2 kg chicken", "roast the chicken @ oven at 200 C ~ 80 min; rest it ~ 15 min; carve ~ 10 min",
        [(30, "room"), (30, "room"), (30, "room")],
    ),
    "pasta, on its way to its sauce": (
        "Linguine with clams", "600 g linguine, 1 kg clams",
        "boil the linguine @ stovetop ~ 10 min; toss it with the clams @ stovetop ~ 3 min",
        [(10, "room"), (10, "room")],
    ),
    "a souffle": (
        "Cheese souffle", "6 eggs, 100 g cheddar",
        "fold in the whites and fill the ramekins ~ 10 min; bake the souffle @ oven at 200 C ~ 20 min",
        [(30, "room"), (4, "room")],
    ),
    "chips, and fries": (
        "French fries", "2 kg potatoes", "fry the fries @ stovetop ~ 6 min", [(16, "room")],
    ),
    "potatoes before they are mashed": (
        "Mashed potatoes", "2 kg potatoes, 100 g butter",
        "boil the potatoes @ stovetop ~ 25 min; mash with butter @ stovetop ~ 6 min", [(30, "room"), (30, "room")],
    ),
    "a stew that is reheated goes into the fridge": (
        "Lamb stew", "2 kg lamb shoulder", "stew the lamb @ stovetop ~ 2 h; reheat the stew @ stovetop ~ 20 min",
        [(2 * D, "fridge"), (30, "room")],
    ),
    "one that is eaten at once does not": (
        "Lamb stew", "2 kg lamb shoulder", "stew the lamb @ stovetop ~ 2 h", [(30, "room")],
    ),
    "what goes on cooking has its two hours": (
        "Lamb stew", "2 kg lamb shoulder", "brown the lamb @ stovetop ~ 20 min; stew the lamb @ stovetop ~ 2 h",
        [(2 * H, "room"), (30, "room")],
    ),
    "compote is no hot food": (
        "Plum compote", "1 kg plums, 200 g sugar", "stew the plums @ stovetop ~ 30 min", [(12 * H, "room")],
    ),
}  # fmt: skip
EVERY = {**ICES, **BAKED, **COLD, **HOT}


def plan_of(dish: str, foods: str, steps: str) -> str:
    """A plan with that one dish."""
    lines = [f"      - dish: {dish}", "        ingredients:", *(f"          - {food}" for food in foods.split(", "))]
    lines.append("        steps:")
    for step in steps.split("; "):
        name, _, more = step.partition(" ~ ")
        words, _, where = name.partition(" @ ")
        takes, _, also = more.partition(" ~ ")
        lines += [f"          - step: {words}", f"            takes: {takes}"]
        lines += [f"            where: {where}"] if where else []
        lines += [f"            {also}"] if also else []
    return HEAD + "courses:\n  - course: Course\n    at: 20:00\n    dishes:\n" + "\n".join(lines) + "\n"


def steps_of(file: PlanFile) -> list[Task]:
    return [task for task in file.filled.tasks.values() if task.node.kind == "step"]


def keeps_of(file: PlanFile) -> list[tuple[int, str]]:
    found: list[Keep | None] = [task.ways[0].keeps for task in steps_of(file)]
    return [(keep.minutes, keep.where.place) for keep in found if keep is not None]


@pytest.mark.parametrize("name", EVERY)
def test_a_result_keeps_as_its_kind_does_where_its_step_left_it(plan_from: PlanFrom, name: str) -> None:
    dish, foods, steps, wanted = EVERY[name]

    found = keeps_of(plan_from(plan_of(dish, foods, steps)))

    assert len(found) == len(wanted)
    assert [each for each, want in zip(found, wanted, strict=True) if want is not None] == [e for e in wanted if e]


@pytest.mark.parametrize("rules", ["home", "retail"])
@pytest.mark.parametrize("name", EVERY)
def test_no_default_makes_food_stand_longer_than_the_rules_allow(plan_from: PlanFrom, name: str, rules: str) -> None:
    """USDA FSIS, "Danger Zone": 2 h out; FoodSafety.gov, cold food storage chart, the lower figures; FDA Food Code
    3-501.17: seven days, the day of preparation being the first. All stays of a branch, as long as they may, add up."""
    dish, foods, steps, _ = EVERY[name]
    set_ = rule_set(rules)

    for task in steps_of(plan_from(f"rules: {rules}\n" + plan_of(dish, foods, steps))):
        keep, life = task.ways[0].keeps, set_.fridge_lives.get(task.care.life or "")
        assert keep is not None
        if task.care.spoils and keep.where.place == "room":
            assert keep.minutes <= 120
        if task.care.spoils and keep.where.place == "fridge":
            assert keep.minutes <= (life.lower_days if life else set_.ready_to_eat_days or 7) * D


def test_all_stays_in_the_fridge_share_one_life(plan_from: PlanFrom) -> None:
    """FoodSafety.gov, cold food storage chart: raw poultry 1 to 2 days."""
    steps = (
        "joint the chicken ~ 15 min; marinate the chicken @ fridge ~ 8 h; thread the chicken on skewers ~ 20 min; "
        "grill the skewers @ stovetop ~ 15 min ~ cooks: poultry"
    )
    found = keeps_of(plan_from(plan_of("Chicken skewers", "1.5 kg chicken", steps)))[:3]

    assert all(place == "fridge" for _, place in found)
    assert sum(minutes for minutes, _ in found) + 8 * H <= D


@pytest.mark.parametrize("word", ["warm it gently", "crisp it up", "heat the stew"])
def test_what_is_cooked_the_day_before_stays_in_the_fridge_and_is_reheated(plan_from: PlanFrom, word: str) -> None:
    steps = f"stew the beef @ stovetop ~ 3 h ~ day: day before; {word} @ stovetop ~ 20 min ~ day: on the day"

    file = plan_from(plan_of("Beef stew", "2 kg beef shin", steps))

    assert keeps_of(file)[0] == (2 * D, "fridge")
    assert steps_of(file)[1].care.reheats


def test_what_is_done_by_an_hour_of_the_plan_keeps_until_it_is_taken_up(plan_from: PlanFrom) -> None:
    steps = "make the filling ~ 20 min ~ not after: sat 12:00; fill the rolls ~ 10 min ~ not before: sat 18:00"

    file = plan_from(plan_of("Filled rolls", "8 rolls, 300 g cream cheese", steps))

    assert keeps_of(file)[0][0] >= 6 * H
    assert keeps_of(file)[0][1] == "fridge"


def test_what_its_plan_takes_up_soon_is_not_put_back_into_the_fridge(plan_from: PlanFrom) -> None:
    """So its minutes count as out (USDA FSIS, "Danger Zone")."""
    steps = "chill it @ fridge ~ 1 h; mix the dip ~ 10 min ~ before: 'serve Course, at most 10 min'"

    assert keeps_of(plan_from(plan_of("Yogurt dip", "500 g yogurt", steps)))[1] == (2 * H, "room")


@pytest.mark.parametrize("least", ["1 h", "3 h"])
def test_what_must_wait_by_its_plans_word_keeps_so_long(plan_from: PlanFrom, least: str) -> None:
    steps = (
        f"blend the zibble ~ 5 min; boil the zibble @ stovetop ~ 5 min ~ after: 'blend the zibble, at least {least}'"
    )

    assert keeps_of(plan_from(plan_of("Zibble", "200 g semolina", steps)))[0][0] > int(least[0]) * H


def test_what_its_plan_lets_stand_keeps_until_then(plan_from: PlanFrom) -> None:
    steps = (
        "boil the beans @ stovetop ~ 8 min; fry the almonds @ stovetop ~ 40 min; "
        "toss the beans ~ 2 min ~ after: [boil the beans, fry the almonds]"
    )
    file = plan_from(plan_of("Green beans", "800 g green beans, 50 g almonds", steps))

    assert keeps_of(file)[0][0] > 40  # though green beans are best within minutes


# A dish, its foods, its steps, and how the first is told; each stands by a day, an hour or an order of its plan.
BY_TIMES = {
    "hours past what is usual": (
        "Fish fingers", "600 g cod", "deep-fry the fish @ stovetop ~ 10 min ~ not after: '17:00'",
        "keeps 3 h 16 in the fridge by your times; usual is 16 min off the heat, for fried food",
    ),
    "days past what is usual in the fridge": (
        "Caesar salad", "3 lettuces, 100 g parmesan", "dress the salad ~ 10 min ~ day: 2 days before",
        "keeps 60 h 15 in the fridge by your times; usual is 15 min in the room, for dressed leaves",
    ),
    "beside a sauce of the same dish": (
        "Venison steaks with juniper sauce", "8 venison steaks, 10 g juniper, 300 ml stock",
        "fry the steaks @ stovetop ~ 8 min; reduce the juniper sauce @ stovetop ~ 40 min",
        "keeps 1 h in the room by your times; usual is 20 min off the heat, for steaks or chops",
    ),
    "filled, and the table has hours": (
        "Eclairs", "200 g flour, 4 eggs, 300 ml cream",
        "fill the eclairs ~ 10 min ~ not after: '14:00'",
        "keeps 6 h 30 in the fridge by your times; usual is 2 h in the fridge, for filled crisp pastry",
    ),
    "as a table has it": (
        "Tiramisu", "500 g mascarpone, 200 g biscuits",
        "layer the tiramisu ~ 10 min ~ not after: '14:00'", "keeps 1 day in the fridge, as is usual for trifle",
    ),
    "cooked food, as a table has it": (
        "Zibble of veal", "1 kg veal", "simmer the veal @ stovetop ~ 1 h ~ not after: '14:00'",
        "keeps 2 days in the fridge, as is usual for cooked food",
    ),
    "of no known kind": (
        "Zibbles", "200 g semolina", "shape the zibbles ~ 10 min ~ not after: '14:00'",
        "keeps 6 h 30 in the room, as your times let it stand (say `keeps:`)",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", BY_TIMES)
def test_usual_is_only_what_a_table_has(plan_from: PlanFrom, name: str) -> None:
    """Else a guess made from the plan's own times could never fail."""
    dish, foods, steps, told = BY_TIMES[name]

    file = plan_from(plan_of(dish, foods, steps))

    first = steps_of(file)[0].node
    kept = next(each for each in file.filled.assumed if each.kind.startswith("keeps") and first.id in each.tasks)
    assert assumed(kept).startswith(f"{told}: {first.name}")


@pytest.mark.parametrize(
    ("step", "told"),
    [
        ("preheat the oven", "keeps 30 min in the room, as is usual for a hot oven, grill or fire: {}"),
        ("light the barbecue", "keeps 30 min in the room, as is usual for a hot oven, grill or fire: {}"),
        ("brew the coffee", "keeps 2 h in the room, to be careful (say `keeps:`): {}"),
        ("light the candles", None),
        ("lay the table", None),
    ],
)
def test_what_makes_no_food_is_not_put_back_into_the_fridge(plan_from: PlanFrom, step: str, told: str | None) -> None:
    steps = f"whip the mascarpone ~ 10 min; {step} ~ 10 min; dip and layer ~ 15 min"

    file = plan_from(plan_of("Tiramisu", "500 g mascarpone, 200 g biscuits, 300 ml coffee", steps))

    found = [assumed(each) for each in file.filled.assumed if each.kind.startswith("keeps") and step in each.about]
    assert found == ([] if told is None else [told.format(step)])


def test_what_stood_before_a_tool_is_made_ready_stands_on_until_it_is_taken_up(plan_from: PlanFrom) -> None:
    steps = "let the dough rise ~ 1 h; preheat the oven ~ 30 min; top the dough ~ 10 min"

    file = plan_from(plan_of("Pizza", "500 g bread flour, 7 g yeast, 300 g tomatoes", steps))

    rise, _, top = (task.node.id for task in steps_of(file))
    assert any((link.first, link.second) == (rise, top) for link in file.filled.taken_up)


def test_a_baked_ice_softens_in_its_crust(plan_from: PlanFrom) -> None:
    steps = "cover the ice cream with meringue ~ 5 min; bake until golden @ oven at 230 C ~ 4 min"

    file = plan_from(plan_of("Baked Alaska", "1 l ice cream, 6 egg whites, 200 g sugar", steps))

    assert keeps_of(file)[-1] == (5, "room")


@pytest.mark.parametrize(
    ("step", "is_dip"),
    [
        ("mix the yogurt dip", True), ("chill the dip", True), ("dip the biscuits in coffee", False),
        ("dip and layer", False), ("spread the filling over", False), ("blend the olive spread", True),
    ],
)  # fmt: skip
def test_a_dip_is_no_dipping(step: str, is_dip: bool) -> None:
    made = facts.made_in(step, "Zibble", on_heat=False)

    assert (made is not None and made.name == "dip or spread") == is_dip


def test_the_hosts_word_goes_before_any_kind(plan_from: PlanFrom) -> None:
    file = plan_from(
        plan_of("Brown bread", "500 g flour", "bake the bread @ oven at 230 C ~ 45 min ~ keeps: 3 h in the room")
    )

    assert keeps_of(file) == [(3 * H, "room")]
    assert not any(each.kind.startswith("keeps") for each in file.filled.assumed)


def test_what_is_of_no_known_kind_keeps_two_hours_and_is_asked_about(plan_from: PlanFrom) -> None:
    file = plan_from(plan_of("Zibble", "200 g semolina", "zibble it ~ 10 min"))

    told = [assumed(each) for each in file.filled.assumed if each.kind.startswith("keeps")]
    assert keeps_of(file) == [(2 * H, "room")]
    assert told == ["keeps 2 h in the room, to be careful (say `keeps:`): zibble it"]


def test_only_what_goes_hot_to_the_table_is_best_within_minutes(plan_from: PlanFrom) -> None:
    best = {
        dish: steps_of(plan_from(plan_of(dish, foods, step)))[-1].best_within
        for dish, foods, step in (
            ("Brown bread", "500 g flour", "bake the bread @ oven at 230 C ~ 45 min"),
            ("Cheese souffle", "6 eggs", "bake the souffle @ oven at 200 C ~ 20 min"),
            ("Lamb stew", "2 kg lamb shoulder", "stew the lamb @ stovetop ~ 2 h"),
            ("Green salad", "2 lettuces", "dress the leaves ~ 3 min"),
            ("Lentil loaf", "300 g lentils, 2 eggs", "bake the loaf @ oven at 180 C ~ 40 min"),
        )
    }

    assert best == {
        "Brown bread": None,
        "Cheese souffle": 2,
        "Lamb stew": 15,
        "Green salad": None,
        "Lentil loaf": 15,
    }
