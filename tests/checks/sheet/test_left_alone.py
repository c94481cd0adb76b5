"""kitchen 9: hot fat, a grill, boiling sugar or a flame with nobody at it. NFPA, cooking safety: `Stay in the kitchen
while you are frying, grilling or broiling. If you leave, even for a short time, turn off the stove`; what simmers,
boils, bakes or roasts: `check it regularly, remain in the home`. NFPA, candle safety: out when you leave the room.
"""

import pytest

from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands: {{host: {{hours: {{{more}on the day: '14:00 - 23:00'}}, away: {{read to the child: '{away}'}}}}}}
kitchen: {{ovens: 1, rings: 4}}
courses:
  - course: Main
    at: 20:00
    dishes: [{{dish: Test dish, perishable: no, steps: [{steps}]}}]
jobs: [{jobs}]
"""


def found(
    steps: str = "{step: boil them, takes: 5 min}", away: str = "14:00 - 14:01", jobs: str = "", more: str = ""
) -> list[Snag]:
    """`more`: hours on other days."""
    file = read(TEXT.format(steps=steps, away=away, jobs=jobs, more=more))
    assert isinstance(file, PlanFile), file
    return [snag for snag in safety_check(file, make_sheet(file, solve)) if snag.code == "kitchen 9"]


def step(name: str, attended: str, where: str = "'stovetop, 1 ring'", more: str = "") -> str:
    return f"{{step: {name}, where: {where}, takes: 20 min, attended: '{attended}', after: nothing{more}}}"


def test_what_burns_and_is_left_is_told_of_each_and_what_simmers_is_not() -> None:
    """Nobody at all, pauses between looks, hands at both ends only; and two that are fine. The last two minutes of the
    searing are no pause to leave in."""
    snags = found(", ".join((
        step("deep-fry the croquettes", "none"),
        step("sear the tofu", "1 min every 6 min"),
        step("grill the aubergines", "2 min at the start, 2 min at the end", "oven at 250 C"),
        step("simmer the beans", "none"),
        step("fry the leeks and then simmer the rice", "6 min at the start"),
    )))  # fmt: skip

    assert {snag.message for snag in snags} == {
        "deep-fry the croquettes: hot fat, and nobody is at it for 20 min",
        "sear the tofu: hot fat, and nobody is at it for 16 min",
        "grill the aubergines: a grill, and nobody is at it for 16 min",
    }
    assert {snag.weight for snag in snags} == {Weight.MIND}
    assert all(snag.safety and "attended: all" in snag.mend and "NFPA" in snag.source for snag in snags)


def test_it_weighs_more_where_all_hands_are_away_meanwhile() -> None:
    when = ", not before: '17:00', not after: '17:20'"
    (snag,) = found(step("boil the sugar", "none", more=when), "16:50 - 17:15")

    assert snag.weight is Weight.STOP
    assert snag.message.endswith("nobody is there Sat 17:00 to 17:15 (read to the child)")
    assert snag.about.tasks
    assert "attended: all" in snag.mend


@pytest.mark.parametrize(
    ("away", "job", "told"),
    [
        ("17:30 - 18:00", "{job: light the tapers, not after: '17:30'}", ["nobody is there Sat 17:30 to 18:00"]),
        ("17:30 - 17:32", "{job: light the tapers, not after: '17:30'}", []),
        ("17:30 - 17:50", "{job: light the barbecue, not after: '17:30'}", ["nobody is there Sat 17:30 to 17:50"]),
        ("17:30 - 18:00", "{job: make up and light the fire, not after: '17:30'}", []),  # it burns in its hearth
        ("17:30 - 18:00", "{job: light the lanterns, not after: '17:30'}", []),
        ("19:00 - 19:30", "{job: light the tapers, not after: '18:30'}", []),  # the guests sit by them
        ("17:30 - 18:20", "{job: light the tapers, not after: '17:30'}", ["nobody is there Sat 17:30 to 18:20"]),
        ("17:30 - 18:20", "{job: make up and light the fire, not after: '17:20'}", ["nobody is there Sat 17:30"]),
        ("17:30 - 18:20", "light the tapers", []),  # at their hour, after that
        ("14:10 - 14:40", "{job: light the tapers, not before: '18:00'}", []),
        ("17:30 - 18:20", "{job: set out the tapers, not after: '17:30'}", []),
    ],
)
def test_what_was_lit_does_not_burn_with_nobody_there(away: str, job: str, told: list[str]) -> None:
    snags = found(away=away, jobs=job)

    assert [snag.weight for snag in snags] == [Weight.MIND] * len(told)
    assert all(words in snag.message for snag, words in zip(snags, told, strict=True))


def test_candles_put_out_before_everybody_leaves_are_nothing_to_mind() -> None:
    lit = "{job: light the candles, not after: '16:50'}"

    assert found(away="17:30 - 18:20", jobs=lit)
    assert found(away="17:30 - 18:20", jobs=f"{lit}, {{job: blow out the candles, not after: '17:20'}}") == []


def test_it_weighs_more_where_nobody_is_at_home() -> None:
    (snag,) = found(jobs="{job: light the candles, day: day before}", more="day before: '18:00 - 20:00', ")

    assert snag.weight is Weight.STOP
    assert "nobody is at home Fri 20:00 to Sat 14:00" in snag.message
