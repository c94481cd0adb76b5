"""What the words of a step say of its hands and its place, where its keys are silent."""

from collections.abc import Callable

import pytest

from board.checks.plan.by_hand import long_work_says_its_hands
from board.plan.load import PlanFile
from board.plan.phrases.durations import Attention
from board.plan.resolve.assume import FilledWay
from board.sheet.words import assumed
from tests.conftest import HEAD
from tests.plan.resolve.test_assume import COURSE, KITCHEN

PlanFrom = Callable[[str], PlanFile]
PUT_AWAY, WHOLE = Attention(start=2), Attention(whole=True)


def file(plan_from: PlanFrom, *steps: str, jobs: str = "") -> PlanFile:
    return plan_from(HEAD + KITCHEN + COURSE + "".join(f"          - {{{step}}}\n" for step in steps) + jobs)


def way(plan_from: PlanFrom, step: str, number: int = 0) -> FilledWay:
    filled = file(plan_from, f"step: {step}").filled
    (task,) = (each for each in filled.tasks.values() if each.node.kind == "step")
    return task.ways[number]


@pytest.mark.parametrize(
    ("step", "place"),
    [
        ("leave it in the fridge, takes: 2 h", "fridge"),
        ("chill until firm, takes: 4 h", "fridge"),
        ("leave in the freezer, takes: 6 h", "freezer"),
        ("let it prove overnight, takes: 10 h", "worktop"),
        ("thaw the bread, takes: 5 h", "worktop"),
        ("'drain, slowly', takes: 2 h", "worktop"),
        ("second prove, takes: 1 h, where: worktop", "worktop"),
        ("second prove, takes: 1 h, where: fridge", "fridge"),
    ],
)
def test_what_stands_by_itself_wants_hands_at_the_start_only(plan_from: PlanFrom, step: str, place: str) -> None:
    found = way(plan_from, step)

    assert (found.attended, found.where.place) == (PUT_AWAY, place)


@pytest.mark.parametrize(
    "step",
    [
        "drain the pasta, takes: 2 min",
        "chill the sauce over ice, takes: 20 min, attended: all",
        "leave to simmer, takes: 40 min, where: stovetop",
        "roll the rested pastry, takes: 20 min",
    ],
)
def test_hands_stay_where_words_or_keys_say_otherwise_or_a_ring_burns(plan_from: PlanFrom, step: str) -> None:
    assert way(plan_from, step).attended == WHOLE


def test_a_place_in_the_words_yields_to_the_one_in_the_keys(plan_from: PlanFrom) -> None:
    found = way(plan_from, "leave it in the fridge, takes: 2 h, where: worktop")

    assert found.where.place == "worktop"


def test_a_way_of_its_own_goes_by_its_own_place(plan_from: PlanFrom) -> None:
    step = "cool the syrup, takes: 1 h, or: [{where: fridge, takes: 20 min}]"

    assert [way(plan_from, step, n).where.place for n in (0, 1)] == ["worktop", "fridge"]


def test_a_job_of_people_keeps_its_hands(plan_from: PlanFrom) -> None:
    filled = file(plan_from, "step: cut, takes: 5 min", jobs="jobs: [{job: rest, takes: 1 h}]").filled

    assert filled.tasks["jobs/rest"].ways[0].attended == WHOLE


@pytest.mark.parametrize("step", ["simmer the stock, takes: 45 min, where: stovetop", "the ragu, takes: 3 h"])
def test_long_work_of_unknown_hands_is_asked_about(plan_from: PlanFrom, step: str) -> None:
    (snag,) = long_work_says_its_hands(file(plan_from, f"step: {step}"))

    assert snag.code == "unsure 3"
    assert "timed as if they were" in snag.message
    assert "attended:" in snag.mend
    assert snag.place is not None
    assert "step:" in snag.place.text


@pytest.mark.parametrize(
    ("step", "attended", "place"),
    [
        ("mix the dough and let it rise, takes: 1 h 30", Attention(start=20), "worktop"),
        ("assemble the trifle and chill overnight, takes: 10 h", Attention(start=20), "fridge"),
        ("'let the dough rise, then shape the rolls', takes: 1 h 15", Attention(start=2, end=20), "worktop"),
        ("rub the lamb and leave to marinate, takes: 3 h, where: fridge", Attention(start=20), "fridge"),
        ("whisk the batter and let it rest, takes: 30 min", WHOLE, "worktop"),
    ],
)
def test_how_much_is_work_of_what_is_worked_and_then_stands_is_asked(
    plan_from: PlanFrom, step: str, attended: Attention, place: str
) -> None:
    found = way(plan_from, step)

    assert (found.attended, found.where.place) == (attended, place)
    assert [snag.code for snag in long_work_says_its_hands(file(plan_from, f"step: {step}"))] == ["unsure 3"]


@pytest.mark.parametrize(
    "step",
    [
        "simmer the stock, takes: 44 min, where: stovetop",
        "simmer the stock, takes: 3 h, where: stovetop, attended: all",
        "simmer the stock, takes: 3 h, where: stovetop, attended: 5 min at the start",
        "bake the ham, takes: 3 h, where: oven at 160 C",
        "marinate the feta, takes: 3 h",
        "ice the cakes, takes: 1 h",
        "peel and cut the roots, takes: 1 h",
        "peel the roots and keep them in water, takes: 30 min",
        "whisk the batter and let it rest, takes: 15 min",
    ],
)
def test_what_is_short_said_or_known_is_not_asked(plan_from: PlanFrom, step: str) -> None:
    assert long_work_says_its_hands(file(plan_from, f"step: {step}")) == []


def test_what_is_assumed_is_told_once_in_words(plan_from: PlanFrom) -> None:
    told = file(plan_from, "step: reduce the stock, takes: 1 h", "step: chill, takes: 3 h").filled.assumed
    said = {assumed(each.kind, each.values, each.about) for each in told}

    assert "needs hands all the time, for 1 h (say `attended:`): reduce the stock" in said
    assert {"is done in the fridge: chill", "needs hands 2 min at the start: chill"} <= said
    assert not any("with hands on it" in line for line in said)


@pytest.mark.parametrize(("dish", "place"), [("1 kg lamb leg", "fridge"), ("1 kg aubergines", "worktop")])
def test_raw_meat_in_a_marinade_of_no_said_place_is_taken_to_lie_in_the_fridge(
    plan_from: PlanFrom, dish: str, place: str
) -> None:
    course = COURSE.replace("        steps:", f"        ingredients: [{dish}]\n        steps:")
    steps = (
        "          - {step: marinate it, takes: 4 h}\n          - {step: roast it, where: oven at 190 C, takes: 1 h}\n"
    )
    filled = plan_from(HEAD + KITCHEN + course + steps).filled

    assert filled.tasks["leek-soup/marinate-it"].ways[0].where.place == place
