"""food 17: raw food and then food eaten as it is on one tool, unwashed. FDA Food Code 3-302.11(A), 4-602.11(A), from
memory."""

import pytest

from board.checks.allergens.guests_eat import matrix
from board.checks.plan.cautions import cautions
from board.checks.sheet.raw_contact import raw_food_touches_nothing_ready
from board.checks.sheet.timed import timed
from board.plan.load import PlanFile, read_plan
from board.plan.snag import About, Snag, Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet

PLAN = """
event: Supper with one board
date: 2026-12-05
zone: Europe/Dublin
arrive: 19:00
guests: [4 guests]
kitchen: {{tools: {{{tools}}}}}
hands: {{host: {{hours: {{on the day: '12:00 - 23:00'}}}}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Roast
        ingredients: ['{raw}', 4 onions (veg)]
        steps:
{roast}
      - dish: Salad
        ingredients: [6 tomatoes (veg), 1 head lettuce (veg)]
        steps:
{salad}
jobs: [{jobs}]
"""
BONE = "bone the bird | worktop, board | 15 min"
COOK = "roast the bird | oven at 190 C | 60 min | until: 74 C"
SLICE = "slice the tomatoes | worktop, board | 10 min | after: bone the bird"
WASH = "{job: wash up, takes: 5 min, after: bone the bird, before: slice the tomatoes}"


def steps(*each: str) -> str:
    lines = []
    for step in each:
        name, where, takes, *more = (piece.strip() for piece in step.split("|"))
        keys = [f"step: '{name}'", f"where: '{where}'", f"takes: {takes}", *more]
        lines.append("          - {" + ", ".join(keys) + "}")
    return "\n".join(lines)


def plan(
    *salad: str, roast: tuple[str, ...] = (BONE, COOK), tools: str = "board: 1", raw: str = "1 chicken", jobs: str = ""
) -> PlanFile:
    text = PLAN.format(tools=tools, raw=raw, roast=steps(*roast), salad=steps(*salad), jobs=jobs)
    found = read_plan(text, "plan.yaml")
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return found


def found(file: PlanFile) -> list[Snag]:
    return raw_food_touches_nothing_ready(timed(file, make_sheet(file, solve), matrix(file)))


def test_one_board_unwashed_is_a_stop_and_names_tool_raw_food_both_steps_and_the_wash() -> None:
    (snag,) = found(plan(SLICE))

    assert (snag.code, snag.weight, snag.safety) == ("food 17", Weight.STOP, True)
    assert snag.message == "the board goes unwashed from raw chicken (bone the bird) to slice the tomatoes"
    assert "`washes: board`" in snag.mend
    assert "FDA Food Code 3-302.11(A)" in snag.source
    assert snag.place is not None
    assert "slice the tomatoes" in snag.place.text


@pytest.mark.parametrize(
    "salad",
    [
        ("shred the lettuce | worktop, board | 10 min | after: bone the bird",),
        ("slice the tomatoes on the same board | worktop | 10 min | after: bone the bird",),
        ("slice the tomatoes | worktop, board | 10 min | after: bone the bird", "dress the salad | worktop | 5 min"),
    ],
)
def test_food_eaten_raw_after_it_is_found(salad: tuple[str, ...]) -> None:
    assert len(found(plan(*salad))) == 1


@pytest.mark.parametrize(
    ("raw", "first"),
    [
        ("1 kg pork shoulder", "dice the pork | worktop, board | 15 min"),
        ("1 kg salmon", "skin the salmon | worktop, board | 15 min"),
        ("1 kg prawns", "peel the raw prawns | worktop, board | 15 min"),
        ("1 kg minced beef", "shape the mince into patties | worktop, board | 15 min"),
        ("4 eggs", "beat the eggs | worktop, board | 5 min"),
        ("1 chicken", "cut it up | worktop, board | 15 min"),
        ("1 chicken", "cut the chicken up on the board | worktop | 15 min"),
    ],
)
def test_every_class_of_raw_food_counts(raw: str, first: str) -> None:
    after = first.partition(" |")[0]
    file = plan(
        f"slice the tomatoes | worktop, board | 10 min | after: '{after}'",
        roast=(first, "roast it | oven at 190 C | 60 min | until: 74 C"),
        raw=raw,
    )

    assert len(found(file)) == 1


def test_what_is_carved_on_the_unwashed_board_counts_too() -> None:
    file = plan("slice the tomatoes | worktop | 10 min", roast=(BONE, COOK, "carve the bird | worktop, board | 10 min"))

    carved = About(("roast/bone-the-bird", "roast/carve-the-bird"), foods=("chicken",), tool="board")
    assert [snag.about for snag in found(file)] == [carved]


@pytest.mark.parametrize(
    "file",
    [
        plan(SLICE, jobs=WASH),
        plan(SLICE, jobs=WASH.replace("wash up,", "scrub the board,")),
        plan(SLICE, jobs=WASH.replace("takes", "washes: board, takes")),
        plan("wash the board, then slice the tomatoes | worktop, board | 10 min | after: bone the bird"),
        plan("slice the tomatoes on a clean board | worktop | 10 min | after: bone the bird"),
        plan("slice the tomatoes | worktop, knife | 10 min | after: bone the bird", tools="board: 1, knife: 1"),
        plan(SLICE, tools="board: 2"),  # nobody knows which
        plan("slice the tomatoes | worktop, board | 10 min | before: bone the bird"),
        plan("slice the tomatoes | worktop, board | 10 min | after: bone the bird", "simmer them | stovetop | 20 min"),
        plan(
            "slice the tomatoes | worktop, board | 10 min | after: peel the onions",
            roast=("peel the onions | worktop, board | 5 min", COOK),
        ),
        plan(
            "slice the tomatoes | worktop, pan | 10 min | after: roast the bird",
            roast=(
                "lay the bird in the pan | worktop, pan | 5 min",
                "roast the bird | oven at 190 C, pan | 60 min | until: 74 C",
            ),
            tools="pan: 1",
        ),
    ],
)
def test_washed_another_tool_first_or_heated_it_is_none(file: PlanFile) -> None:
    assert found(file) == []


def test_where_no_tool_is_named_or_there_are_several_it_is_a_caution_once() -> None:
    unnamed = plan("slice the tomatoes | worktop | 10 min", roast=("bone the bird | worktop | 15 min", COOK))
    several = plan(SLICE, tools="board: 2")

    for file in (unnamed, several):
        assert [each.about for each in cautions(file) if each.topic == "raw-food"] == [("bone the bird",)]
    assert [each for each in cautions(plan(SLICE)) if each.topic == "raw-food"] == []


def test_no_caution_where_nothing_is_cut_raw_or_nothing_is_eaten_as_it_is() -> None:
    roasted = plan("roast the tomatoes | oven at 190 C | 30 min", roast=("bone the bird | worktop | 15 min", COOK))
    whole = plan("slice the tomatoes | worktop | 10 min", roast=(COOK,))

    for file in (roasted, whole):
        assert [each for each in cautions(file) if each.topic == "raw-food"] == []
