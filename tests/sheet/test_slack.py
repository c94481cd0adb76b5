"""How late each thing may start, reckoned back by hand from what is due. Minutes of the day."""

import pytest

from board.sheet.run_sheet import Dependency, Slot
from board.sheet.slack import latest_starts
from tests.conftest import slot

HANDS = "hands"


def followed(anchor: str = "end", minutes: int = 0, reason: str = "order") -> tuple[Slot, Slot]:
    wait = Dependency("fry", anchor, minutes, reason)  # type: ignore[arg-type]
    return slot("fry", "0:00", "0:08"), slot("serve", "1:00", "1:05", waits=(wait,))


@pytest.mark.parametrize(
    ("anchor", "minutes", "latest"), [("end", 0, 52), ("end", 3, 49), ("start", 0, 60), ("start", 3, 57)]
)
def test_what_is_waited_for_may_start_so_late_that_the_wait_is_just_over(
    anchor: str, minutes: int, latest: float
) -> None:
    """The serving is due at 60; the frying lasts 8."""
    found = latest_starts(followed(anchor, minutes), {"fry": 8, "serve": 5}, {"serve": 60})

    assert found == {"fry": latest, "serve": 60}


def test_waits_are_told_in_minutes_and_lengths_in_any_unit() -> None:
    found = latest_starts(followed(minutes=3), {"fry": 480, "serve": 300}, {"serve": 3600}, unit=60)

    assert found["fry"] == 3600 - 480 - 180


def test_what_leads_to_two_must_be_in_time_for_the_earlier() -> None:
    slots = (
        slot("chop", "0:00", "0:10"),
        slot("fry", "0:10", "0:20", waits=(Dependency("chop", "end", 0, "order"),)),
        slot("bake", "0:10", "0:20", waits=(Dependency("chop", "end", 0, "order"),)),
    )

    for due in ({"fry": 50, "bake": 70}, {"fry": 70, "bake": 50}):
        assert latest_starts(slots, {"chop": 10, "fry": 10, "bake": 10}, due)["chop"] == 40


def test_what_is_due_itself_is_no_later_for_what_follows_it() -> None:
    """Due at 90, and 8 minutes before what is due at 60."""
    assert latest_starts(followed(), {"fry": 8, "serve": 5}, {"fry": 90, "serve": 60})["fry"] == 52
    assert latest_starts(followed(), {"fry": 8, "serve": 5}, {"fry": 40, "serve": 60})["fry"] == 40


def test_what_leads_to_nothing_due_may_start_whenever_it_likes() -> None:
    slots = (slot("wash", "0:00", "0:10"), *followed())

    assert "wash" not in latest_starts(slots, {"wash": 10, "fry": 8, "serve": 5}, {"serve": 60})
    assert latest_starts(followed(), {"fry": 8, "serve": 5}, {"fry": 60}) == {"fry": 60}


@pytest.mark.parametrize(
    ("reason", "free", "bound"),
    [
        (HANDS, ("serve", "fry"), False),
        (HANDS, ("fry", "serve"), True),
        (HANDS, ("serve", "other"), True),
        ("order", ("serve", "fry"), True),
    ],
)
def test_only_a_wait_for_hands_that_is_void_binds_nothing(reason: str, free: tuple[str, str], bound: bool) -> None:
    found = latest_starts(followed(reason=reason), {"fry": 8, "serve": 5}, {"serve": 60}, free=frozenset({free}))

    assert ("fry" in found) == bound
