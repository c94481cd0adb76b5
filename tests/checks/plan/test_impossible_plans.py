"""Plans that can be read, and ask for what cannot be: where that stands, under which code, and in which words."""

import pytest

from board.checks.plan.every import check
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.conftest import read

SOUND = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
hands:
  host:
    hours:
      on the day: 9:00 - 23:30
  aide: {hours: {day before: '17:00 - 20:00'}}
kitchen:
  rings: 4
  fridge: 20 litres
  ovens: {small oven: {shelves: 3, low: 60 C, high: 200 C}, big oven: {shelves: 2, low: 60 C, high: 240 C}}
  tools: {big pot: 1}
courses:
  - course: Broth
    at: 19:15
    dishes:
      - dish: Leek broth
        steps:
          - step: cut the leeks
            takes: 10 min
          - step: simmer the leeks
            takes: 20 min
  - course: Main
    at: 20:15
    dishes:
      - dish: Lentils
        steps:
          - step: cook the lentils
            takes: 30 min
"""
MORE = "\n            "  # one more key of the same step
DAY, STEP, LAST = "9:00 - 23:30", "takes: 10 min", "takes: 30 min"

# What is changed in SOUND: from, to; then line:column, code, words of the message or of how to mend it.
CAPACITY = {
    "more rings than there are": (
        LAST, f"{LAST}{MORE}where: stovetop, 9 rings", "33:20", "kitchen 1", "9 rings, and there are 4",
    ),
    "more rings than there are, away from the stovetop": (
        LAST, f"{LAST}{MORE}where: worktop, 5 rings", "33:20", "kitchen 1", "5 rings, and there are 4",
    ),
    "more rings than there are, to keep it warm": (
        LAST, f"{LAST}{MORE}keeps: 30 min on the stovetop, 5 rings", "33:20", "kitchen 1", "5 rings, and there are 4",
    ),
    "more of a tool than there is": (
        LAST, f"{LAST}{MORE}where: 'worktop, 2 big pot'", "33:20", "kitchen 2", "asks for 2 big pot",
    ),
    "more shelves than any oven has": (
        LAST, f"{LAST}{MORE}where: oven at 190 C, 4 shelves", "33:20", "kitchen 3", "4 shelves, and there are 3",
    ),
    "more room than the fridge has": (
        LAST, f"{LAST}{MORE}where: 'fridge, 21 litres'", "33:20", "kitchen 4", "21 litres of fridge, and there are 20",
    ),
    "more room than the fridge has, to keep it": (
        LAST, f"{LAST}{MORE}keeps: 1 day in the fridge, 90 litres", "33:20", "kitchen 4", "90 litres of fridge",
    ),
    "an oven asked for 400 °C": (
        LAST, f"{LAST}{MORE}where: big oven at 400 C", "33:20", "kitchen 6",
        "400 °C (750 °F), and the big oven goes from 60 °C (140 °F) to 240 °C (464 °F)",
    ),
    "an oven asked for less than it goes to": (
        LAST, f"{LAST}{MORE}where: big oven at 40 C", "33:20", "kitchen 6",
        "40 °C (105 °F), and the big oven goes from 60 °C",
    ),
    "an oven asked for 500 °F": (
        LAST, f"{LAST}{MORE}where: big oven at 500 F", "33:20", "kitchen 6",
        "260 °C (500 °F), and the big oven goes from 60 °C",
    ),
    "a heat no oven has": (
        LAST, f"{LAST}{MORE}where: oven at 250 C",
        "33:20", "kitchen 6", "the small oven goes from 60 °C (140 °F) to 200 °C (392 °F) and",
    ),
    "kept warm cooler than the oven goes": (
        LAST, f"{LAST}{MORE}keeps: 30 min in the big oven at 50 C{MORE}perishable: no",
        "33:20", "kitchen 6", "50 °C (120 °F)",
    ),
    "heat in one oven and shelves in another": (
        LAST, f"{LAST}{MORE}where: oven at 220 C, 3 shelves",
        "33:20", "kitchen 7", "3 shelves at 220 °C (425 °F), and no one oven has both",
    ),
}  # fmt: skip

HOURS = {
    "nobody on the day itself": ("on the day: 9:00", "day before: 9:00", "6:1", "time 2", "on the day of the event"),
    "an empty list of hours on the day": (
        f"on the day: {DAY}", f"on the day: []\n      day before: {DAY}", "6:1", "time 2", "on the day of the event",
    ),
    "all hours before the guests come": (DAY, "9:00 - 17:00", "4:9", "time 4", "the guests arrive at 18:30"),
    "hours begin after the guests came": (DAY, "21:00 - 23:30", "4:9", "time 4", "the guests arrive at 18:30"),
    "hours end before the last course": (
        DAY, "9:00 - 20:00", "27:9", "time 11", "Main is wanted at 20:15, when nobody",
    ),
    "hours that end before they begin": (
        DAY, "9:00 - 23:30, 23:30 - 9:00", "9:19", "time 5", "23:30 - 09:00 ends before it begins",
    ),
    "hours that end as they begin": (DAY, "9:00 - 9:00", "9:19", "time 5", "read as a whole day"),
    "a time away that ends before it begins": (
        f"on the day: {DAY}", f"on the day: {DAY}\n    away: {{dress: 'day before 18:10 - 17:40'}}",
        "10:19", "time 5", "18:10 - 17:40",
    ),
    "hours on the day after": (
        f"on the day: {DAY}", f"on the day: {DAY}\n      2026-11-29: 10:00 - 12:00", "10:7", "time 6",
        "after the event",
    ),
    "a hand without hours": ("{day before: '17:00 - 20:00'}", "{}", "10:17", "time 7", "aide has no hours at all"),
    "a hand away for all its hours": (
        "'17:00 - 20:00'}}", "'17:00 - 20:00'}, away: {trip: 'day before 16:00 - 21:00'}}",
        "10:54", "time 7", "aide is away for all",
    ),
    "work longer than anybody's hours": (
        STEP, "takes: 16 h",
        "23:20", "time 8", "hands for 16 h on end, and the longest stretch of hours anybody has is 14 h 30",
    ),
    "work longer than the hours of whom it is for": (
        STEP, f"takes: 4 h{MORE}who: aide", "23:20", "time 8", "the longest stretch of hours aide has is 3 h",
    ),
    "work for somebody not there that day": (
        STEP, f"{STEP}{MORE}who: aide{MORE}day: on the day",
        "24:18", "time 9", "only for aide, and they have no hours in the time",
    ),
    "work for somebody not there then, the quicker way too": (
        STEP, f"takes: 5 h{MORE}who: aide{MORE}not before: 17:00{MORE}not after: 18:00{MORE}or: [{{takes: 10 min}}]",
        "24:18", "time 9", "only for aide, and they have no hours in the time",
    ),
    "a day on which nobody has hours": (STEP, f"{STEP}{MORE}day: 3 days before", "24:18", "time 1", "2026-11-25"),
    "over before it may begin": (
        STEP, f"{STEP}{MORE}not before: 17:00{MORE}not after: 16:00", "25:13", "time 10", "no time lies between",
    ),
    "too little time between": (
        STEP, f"{STEP}{MORE}not before: 17:00{MORE}not after: 17:05", "25:13", "time 10", "only 5 min lie between",
    ),
}  # fmt: skip

TWO = f"{STEP}\n          - step: simmer the leeks"
KEEPING = {
    "kept shorter than the wait after it": (
        TWO, f"{STEP}{MORE}keeps: 30 min\n          - step: simmer the leeks{MORE}after: cut the leeks, at least 2 h",
        "24:20", "keeping 1", "cut the leeks keeps 30 min, and simmer the leeks takes it up 2 h later at the soonest",
    ),
    "kept shorter than the work that lies between": (
        LAST, f"{LAST}{MORE}keeps: 1 h\n          - {{step: chop, takes: 40 min, after: cook the lentils}}\n"
        "          - {step: bake, takes: 21 min}\n"
        "          - {step: mix, takes: 5 min, after: [bake, cook the lentils]}",
        "33:20", "keeping 1", "mix takes it up 1 h 01 later at the soonest, after chop, then bake",
    ),
    "waits longer than it should, for work between": (
        LAST, f"{LAST}{MORE}keeps: 9 h\njobs:\n  - {{job: rinse, takes: 1 h, after: 'cut the leeks, at most 10 min'}}\n"
        "  - {job: dry, takes: 1 h, after: [rinse, 'cut the leeks, at most 50 min'], before: serve Main}",
        "36:43", "keeping 2",
        "dry should follow cut the leeks within 50 min, and can do so 1 h later at the soonest, after rinse",
    ),
    "at once, with work between": (
        LAST, f"{LAST}{MORE}keeps: 9 h\n          - {{step: chop, takes: 40 min}}\n"
        "          - {step: mix, takes: 5 min, after: [chop, 'cook the lentils, at once']}",
        "35:53", "keeping 2", "mix should follow cook the lentils at once, and can do so 40 min later",
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    ("old", "new", "at", "code", "words"),
    [*CAPACITY.values(), *HOURS.values(), *KEEPING.values()],
    ids=[*CAPACITY, *HOURS, *KEEPING],
)
def test_what_cannot_be_is_the_one_thing_told(old: str, new: str, at: str, code: str, words: str) -> None:
    assert old in SOUND
    plan = read(SOUND.replace(old, new, 1))
    assert isinstance(plan, PlanFile)
    found = [snag for snag in check(plan) if snag.weight is not Weight.NOTE]

    assert [(f"{s.place.line}:{s.place.column}" if s.place else "", s.code) for s in found] == [(at, code)]
    assert words in f"{found[0].message} {found[0].mend}"
    assert found[0].mend


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (DAY, "9:00 - 1:30"),  # past midnight, as evenings go
        (f"on the day: {DAY}", f"on the day: {DAY}\n      2026-11-29: 0:00 - 1:00"),
        (STEP, f"takes: 16 h{MORE}attended: 2 min at the start"),
        (STEP, f"takes: 3 h{MORE}who: aide{MORE}day: day before{MORE}keeps: 2 days in the fridge"),
        (STEP, f"{STEP}{MORE}not before: 17:00{MORE}not after: 17:10"),
        (LAST, f"{LAST}{MORE}where: oven at 220 C, 2 shelves"),
        (LAST, f"{LAST}{MORE}where: oven at 190 C, 3 shelves"),
        (LAST, f"{LAST}{MORE}where: oven at 240 C"),
        (LAST, f"{LAST}{MORE}where: oven at 464 F"),
        (LAST, f"{LAST}{MORE}where: 'fridge, 20 litres'"),
        (TWO, f"{STEP}{MORE}keeps: 2 h\n          - step: simmer the leeks{MORE}after: cut the leeks, at least 2 h"),
        (
            LAST,
            f"{LAST}{MORE}keeps: 9 h\njobs:\n  - {{job: rinse, takes: 1 h, after: 'cut the leeks, at most 10 min'}}\n"
            "  - {job: dry, takes: 1 h, after: [rinse, 'cut the leeks, at most 1 h'], before: serve Main}",
        ),
        # of several ways, the one that keeps longest, and the one that needs hands for less
        (
            TWO,
            f"{STEP}{MORE}keeps: 1 h{MORE}or: [{{where: fridge, takes: 10 min, keeps: 3 h in the fridge}}]"
            f"\n          - step: simmer the leeks{MORE}after: cut the leeks, at least 2 h",
        ),
        (STEP, f"takes: 16 h{MORE}or: [{{where: worktop, takes: 1 h}}]"),
    ],
)
def test_what_can_just_be_is_no_snag(old: str, new: str) -> None:
    assert old in SOUND
    plan = read(SOUND.replace(old, new, 1))
    assert isinstance(plan, PlanFile)

    assert [snag.render() for snag in check(plan) if snag.weight is not Weight.NOTE] == []


@pytest.mark.parametrize(
    ("date", "old", "new", "told"),
    [
        ("2026-03-28", "at: 20:15", "at: '01:30'", "01:30 does not exist on 2026-03-29, as the clocks go forward; "
         "02:30 is taken"),
        ("2026-10-24", "at: 20:15", "at: '01:30'", "01:30 comes twice on 2026-10-25, as the clocks go back; the "
         "first 01:30 is taken"),
        ("2026-03-28", DAY, "9:00 - 1:15", "01:15 does not exist on 2026-03-29, as the clocks go forward; 02:15 is "
         "taken"),
        ("2026-10-25", STEP, f"{STEP}{MORE}not before: 1:10", "01:10 comes twice on 2026-10-25, as the clocks go "
         "back; the first 01:10 is taken"),
        ("2026-03-28", "at: 20:15", "at: '00:30'", ""),
        ("2026-10-25", "at: 20:15", "at: '01:30'", ""),
    ],
)  # fmt: skip
def test_a_time_that_the_night_has_not_or_has_twice_is_told(date: str, old: str, new: str, told: str) -> None:
    """Ireland's clocks go from 01:00 to 02:00 on 29 March 2026 and from 02:00 to 01:00 on 25 October 2026 (the last
    Sundays: Directive 2000/84/EC, articles 2 and 3, at 01:00 UTC). Past midnight a course is on the next day."""
    assert old in SOUND
    plan = read(SOUND.replace("2026-11-28", date).replace(old, new, 1))
    assert isinstance(plan, PlanFile)

    assert [snag.message for snag in check(plan) if snag.code == "time 3"] == ([told] if told else [])


def test_time_away_cuts_hours_in_two() -> None:
    away = f"on the day: {DAY}\n    away: {{out: '12:00 - 18:00'}}"
    plan = read(SOUND.replace(f"on the day: {DAY}", away).replace(STEP, "takes: 5 h 31"))
    assert isinstance(plan, PlanFile)

    assert [snag.code for snag in check(plan)] == ["time 8"]
    assert "the longest stretch of hours anybody has is 5 h 30" in check(plan)[0].message
