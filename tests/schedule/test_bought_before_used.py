"""What work takes up is there: it begins after the first trip that can bring it, or `check` stops (buying 6)."""

from collections.abc import Callable

import pytest

from board.checks.plan.buying import food_is_bought_before_it_is_used
from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from tests.schedule.audit.tampering import sheet_of

PlanFrom = Callable[[str], PlanFile]

TEA = """
event: Tea
date: 2026-09-12
zone: UTC
arrive: '15:00'
guests: [4 guests]
hands: {{host: {{hours: {{day before: '17:00 - 21:00', on the day: '9:00 - 10:30, 12:15 - 19:00'}}}}}}
shopping: {{{trips}}}
shops: {{florist: {{sat: '9:00 - 12:00'}}}}
pantry: [{pantry}]
courses:
  - course: Tea
    at: '15:30'
    standing: yes
    drink: ['still cider, 2 bottles, chilled 1 h']
    dishes:
      - dish: Scones
        ingredients: [500 g flour, 2 cups water]
        steps:
          - {{step: mix the dough, takes: 20 min, {day} keeps: 1 day in the fridge}}
          - {{step: bake the scones, where: oven at 200 C, takes: 20 min, keeps: 3 h}}
jobs:
  - {{job: arrange the flowers, supplies: [20 flowers (florist)], takes: 30 min, not after: '{by}'}}
"""
WORK = ("scones/mix-the-dough", "jobs/arrange-the-flowers", "jobs/chill-the-still-cider-for-tea")


def tea(plan_from: PlanFrom, trips: str, pantry: str = "salt", day: str = "", by: str = "14:00") -> PlanFile:
    return plan_from(TEA.format(trips=trips, pantry=pantry, day=day and f"day: {day},", by=by))


def begins(plan: PlanFile) -> list[str]:
    """When the work begins that takes something up."""
    sheet = sheet_of(plan)
    assert validate(plan, sheet) == []
    return [f"{sheet.by_id()[id_].start:%a %H:%M}" for id_ in WORK]


def snags(plan: PlanFile) -> list[tuple[str, str]]:
    return [(snag.code, snag.message) for snag in food_is_bought_before_it_is_used(plan)]


def test_work_waits_for_the_trip(plan_from: PlanFrom) -> None:
    """Time before it is free, and is used where nothing must be bought first."""
    with_trip, without = tea(plan_from, "on the day: '9:30 - 10:15'"), tea(plan_from, "")

    assert all(at >= "Sat 10:15" for at in begins(with_trip))
    assert begins(without)[0] < "Sat 10:15"
    assert snags(with_trip) == snags(without) == []


def test_a_shop_that_is_shut_brings_nothing(plan_from: PlanFrom) -> None:
    """Friday's trip brings flour and cider; the florist is open on Saturday only."""
    plan = tea(plan_from, "fri: '17:00 - 18:00', sat: '9:30 - 10:15'")
    dough, flowers, _ = begins(plan)

    assert "Fri 18:00" <= dough < "Sat 10:15"
    assert flowers >= "Sat 10:15"


@pytest.mark.parametrize(
    ("pantry", "waits"),
    [("flour", False), ("1 kg flour", False), ("0.5 kg flour", False), ("499 g flour", True), ("2 bags flour", True)],
)
def test_what_is_in_the_house_is_there(plan_from: PlanFrom, pantry: str, waits: bool) -> None:
    dough, *_ = begins(tea(plan_from, "sat: '9:30 - 10:15'", pantry))

    assert (dough >= "Sat 10:15") == waits


def test_a_pantry_in_a_file_is_not_known(plan_from: PlanFrom) -> None:
    assert begins(tea(plan_from, "sat: '9:30 - 10:15'", "house.yaml"))[0] < "Sat 10:15"


@pytest.mark.parametrize(
    ("trips", "more", "told"),
    [
        (
            "sat: '9:30 - 10:15'",
            {"by": "10:00"},
            "arrange the flowers takes up flowers, and the first trip that can bring it ends at Sat 10:15: too late",
        ),
        (
            "sat: '9:30 - 10:15'",
            {"day": "day before"},
            "mix the dough takes up flour, and the first trip that can bring it ends at Sat 10:15: too late",
        ),
        (
            "fri: '17:00 - 18:00', sat: '11:00 - 13:45'",
            {},
            "arrange the flowers takes up flowers, and the first trip that can bring it ends at Sat 13:45: too late",
        ),
    ],
)
def test_check_stops_where_every_trip_is_too_late(
    plan_from: PlanFrom, trips: str, more: dict[str, str], told: str
) -> None:
    assert snags(tea(plan_from, trips, **more)) == [("buying 6", told)]


def test_what_comes_after_may_be_what_is_too_late(plan_from: PlanFrom) -> None:
    """20 min to mix and 20 to bake after 14:50, and tea at 15:30 after 5 min to plate; chilled for an hour."""
    plan = tea(plan_from, "sat: '14:00 - 14:50'", by="15:30")

    assert [message.rpartition(": ")[2] for _, message in snags(plan)] == [
        "too late, and serve Tea comes after it",
        "too late, and serve Tea comes after it",
        "arrange the flowers takes up flowers, and its shop is shut on every trip",
    ]


def test_what_must_be_ready_for_the_guests_may_be_too_late(plan_from: PlanFrom) -> None:
    """30 min of flowers after 14:35 are not over at 15:00."""
    (told,) = (
        message for _, message in snags(tea(plan_from, "sat: '11:50 - 14:35'", by="16:00", pantry="flour, still cider"))
    )

    assert told.endswith("ends at Sat 14:35: too late, and guests arrive comes after it")
