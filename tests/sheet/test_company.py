"""The host's minutes away from the guests and the busiest half hour, counted on the little supper: guests at 18:30,
plated at 18:50, the last course eaten at 19:30."""

from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.sheet.company import away_minutes, busiest, host_of
from board.sheet.run_sheet import Attended, CourseSlot, RunSheet
from tests.conftest import at, slot


def with_work(sheet: RunSheet, start: str, end: str, who: str = "host", **changes: object) -> RunSheet:
    """The little supper with one more piece of work, and none on stew and sauce."""
    quiet = tuple(replace(s, attended=()) if s.id in ("stew", "sauce") else s for s in sheet.slots)
    extra = slot("whisk", start, end, **{"attended": (Attended(at(start), at(end), who, "all"),), **changes})
    return replace(sheet, slots=(*quiet, extra))


@pytest.mark.parametrize(
    ("start", "end", "minutes"),
    [
        ("18:10", "18:30", 0),
        ("18:10", "18:31", 1),
        ("18:40", "18:50", 10),
        ("19:29", "19:39", 1),
        ("19:30", "19:40", 0),
    ],
)
def test_work_takes_the_host_away_from_the_coming_of_the_guests_to_the_end_of_the_last_course(
    little: RunSheet, start: str, end: str, minutes: int
) -> None:
    """Of work that lies across either, what lies between them."""
    assert away_minutes(with_work(little, start, end)) == minutes


@pytest.mark.parametrize("changes", [{"who": "aide"}, {"with_guests": True}, {"lane": "front-of-house"}])
def test_neither_somebody_elses_work_nor_work_among_the_guests_takes_the_host_away(
    little: RunSheet, changes: dict[str, object]
) -> None:
    assert away_minutes(with_work(little, "18:40", "18:50", **changes)) == 0  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("hands", "host"), [(("aide", "host"), "host"), (("ida", "joan"), "ida"), ((), "host")], ids=str
)
def test_the_host_is_the_hand_called_so_or_the_first(little: RunSheet, hands: tuple[str, ...], host: str) -> None:
    assert host_of(replace(little, hands=hands)) == host


@pytest.mark.parametrize(
    ("start", "end", "minutes"),
    [
        ("18:00", "18:20", 0),  # over as the half hour before plating begins
        ("18:00", "18:21", 1),
        ("18:30", "18:40", 10),
        ("18:45", "18:55", 5),
        ("18:50", "18:55", 0),
    ],
)
def test_of_work_only_what_lies_in_the_half_hour_before_plating_counts(
    little: RunSheet, start: str, end: str, minutes: int
) -> None:
    assert busiest(with_work(little, start, end)) == ("Stew", minutes)


def test_plating_itself_does_not_count(little: RunSheet) -> None:
    """Begun five minutes before it is called plating by the sheet."""
    begun = Attended(at("18:45"), at("19:00"), "host", "all")
    sheet = with_work(little, "12:00", "12:01")
    sheet = replace(sheet, slots=tuple(replace(s, attended=(begun,)) if s.id == "serve" else s for s in sheet.slots))

    assert busiest(sheet) == ("Stew", 0)


def with_cake(sheet: RunSheet) -> RunSheet:
    """A second course, plated at 20:50 and eaten at 21:30."""
    more = (
        slot("serve-cake", "20:50", "21:00", kind="serve", lane="front-of-house", course="Cake"),
        slot("clear-cake", "21:30", "21:35", kind="clear", lane="front-of-house", course="Cake"),
    )
    cake = CourseSlot("Cake", at("21:00"), at("21:00"), "serve-cake", "clear-cake", 10)
    return replace(sheet, slots=(*sheet.slots, *more), courses=(*sheet.courses, cake))


@pytest.mark.parametrize(("start", "end", "minutes"), [("21:29", "21:39", 1), ("21:30", "21:40", 0)])
def test_the_evening_lasts_until_the_last_of_several_courses_is_eaten(
    little: RunSheet, start: str, end: str, minutes: int
) -> None:
    assert away_minutes(with_cake(with_work(little, start, end))) == minutes


@pytest.mark.parametrize(("later", "course"), [(0, "Stew"), (1, "Cake")])
def test_the_busiest_course_is_told_and_of_two_as_busy_the_first(little: RunSheet, later: int, course: str) -> None:
    whipping = Attended(at("20:30"), at("20:40") + timedelta(minutes=later), "host", "all")
    sheet = with_cake(with_work(little, "18:30", "18:40"))
    sheet = replace(sheet, slots=(*sheet.slots, slot("whip", "20:30", "20:40", attended=(whipping,))))

    assert busiest(sheet) == (course, 10 + later)
