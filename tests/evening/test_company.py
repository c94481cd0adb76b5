"""Minutes away from the guests: one reckoning, whoever asks. The manual: "minutes that those who eat spend in the
kitchen between the guests' coming and the end of the last course (not what is done at the table, nor what you marked
`with guests`)"."""

import msgspec
import pytest

from board.evening.company import away_by_forecast
from board.evening.events import EveningOpened, SheetTaken, StepFinished, StepStarted
from board.evening.fold import fold_all
from board.evening.state import State, begin
from board.evening.wishes import DelayGuests, LeaveOut
from board.review.trace import away_planned_and_actual
from board.session.replan.gain import costs
from board.sheet.company import as_planned, away_minutes
from board.sheet.run_sheet import Attended, CourseSlot, RunSheet, Slot
from tests.conftest import Host, at, slot

# Guests 18:30, the last course is cleared from 19:30 on. Beside the sauce's 10 minutes, 18:35-18:45:
AFTER_DINNER = slot("stock", "19:40", "20:00")
BEFORE_GUESTS = slot("ice", "18:10", "18:30")
STRADDLES_THE_COMING = slot("bread", "18:20", "18:35")
STRADDLES_THE_END = slot("pans", "19:20", "19:45")
LOOKED_AT_TILL_THE_END = slot(
    "broth", "18:50", "19:50", lane="stovetop",
    attended=(
        Attended(at("19:20"), at("19:22"), "host", "look-in"),
        Attended(at("19:29"), at("19:32"), "host", "look-in"),
        Attended(at("19:48"), at("19:50"), "host", "end"),
    ),
)  # fmt: skip
AT_THE_TABLE = slot("water", "18:50", "18:55", lane="front-of-house")
WITH_GUESTS = slot("shake", "18:50", "18:55", with_guests=True)
A_HELPERS = slot("fetch", "18:50", "18:55", attended=(Attended(at("18:50"), at("18:55"), "Nora", "all"),))

EVENINGS = {
    "work after dinner": ((AFTER_DINNER,), 10),
    "work done as the guests come": ((BEFORE_GUESTS,), 10),
    "work the guests come into": ((STRADDLES_THE_COMING,), 10 + 5),
    "work the dinner ends in": ((STRADDLES_THE_END,), 10 + 10),
    "a look-in the dinner ends in": ((LOOKED_AT_TILL_THE_END,), 10 + 2 + 1),
    "work at the table": ((AT_THE_TABLE,), 10),
    "work with the guests": ((WITH_GUESTS,), 10),
    "a helper's work": ((A_HELPERS,), 10),
}


def with_work(sheet: RunSheet, *work: Slot, hired: tuple[str, ...] = ("Nora",)) -> RunSheet:
    """The stew and the clearing are left to themselves, so that the host's hands are free for the work."""
    slots = [msgspec.structs.replace(s, attended=()) if s.id in ("stew", "clear") else s for s in sheet.slots]
    return msgspec.structs.replace(sheet, slots=(*slots, *work), hands=("host", "Nora"), hired_hands=hired)


def done_as_planned(sheet: RunSheet) -> State:
    """Everything begun and ended at its minute."""
    opened = EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=sheet)
    started = [StepStarted(n=0, at=each.start, slot=each.id) for each in sheet.slots]
    finished = [StepFinished(n=0, at=each.end, slot=each.id) for each in sheet.slots]
    events = sorted([*started, *finished], key=lambda event: event.at)
    numbered = [msgspec.structs.replace(event, n=n) for n, event in enumerate(events, 2)]
    return fold_all(begin(sheet), [opened, *numbered])


@pytest.mark.parametrize(("work", "minutes"), EVENINGS.values(), ids=EVENINGS)
def test_planned_forecast_and_as_it_was_are_one_figure(little: RunSheet, work: tuple[Slot, ...], minutes: int) -> None:
    sheet = with_work(little, *work)
    before = Host(sheet, at("16:58")).at("16:58")

    assert away_minutes(sheet) == minutes
    assert away_by_forecast(sheet, before.forecast) == as_planned(sheet) == {"host": minutes}
    assert costs(before.state, before.forecast).away == minutes
    assert away_planned_and_actual(done_as_planned(sheet)) == ({"host": minutes}, {"host": minutes})


def test_who_helps_and_eats_counts_as_the_host_does(little: RunSheet) -> None:
    """Each by name; who is hired does not, and whoever sits is told even where nothing takes them away."""
    sheet = with_work(little, A_HELPERS, hired=())
    before = Host(sheet, at("16:58")).at("16:58")

    assert as_planned(sheet) == away_by_forecast(sheet, before.forecast) == {"host": 10, "Nora": 5}
    assert costs(before.state, before.forecast).away == away_minutes(sheet) == 15
    assert away_planned_and_actual(done_as_planned(sheet)) == ({"host": 10, "Nora": 5}, {"host": 10, "Nora": 5})
    assert as_planned(with_work(little, hired=("host",))) == {"Nora": 0}


def test_guests_who_come_late_find_less_of_it(little: RunSheet) -> None:
    """The sauce is made 18:35-18:45."""
    host = Host(little, at("16:58"))
    host.at("16:58")
    host.wish(DelayGuests(10))
    present = host.at("16:58")

    assert away_by_forecast(little, present.forecast) == {"host": 5}
    assert costs(present.state, present.forecast).away == 5


def test_a_dropped_last_course_ends_no_dinner(little: RunSheet) -> None:
    """A cheese from 20:00 to 20:30, and pans 19:40-20:10: without the cheese the dinner is over at 19:30."""
    sweet = (
        slot("cheese", "19:50", "20:00", kind="serve", lane="front-of-house", course="Cheese", then=("uncheese",)),
        slot("uncheese", "20:30", "20:35", kind="clear", lane="front-of-house", course="Cheese"),
    )
    course = CourseSlot("Cheese", at("20:00"), at("20:00"), "cheese", "uncheese", may_slip=5)
    sheet = with_work(little, slot("pans", "19:40", "20:10"), *sweet)
    sheet = msgspec.structs.replace(sheet, courses=(*sheet.courses, course))
    host = Host(sheet, at("16:58"))
    host.at("16:58")
    assert away_by_forecast(sheet, host.evening.look()) == {"host": 10 + 30}

    host.wish(LeaveOut("cheese"))
    host.wish(LeaveOut("uncheese"))

    assert away_by_forecast(sheet, host.evening.look()) == {"host": 10}


def test_what_was_planned_is_the_first_sheets_also_after_another_is_taken(little: RunSheet) -> None:
    fresh = with_work(little, slot("salad", "18:50", "18:57"))
    state = fold_all(done_as_planned(little), [SheetTaken(n=99, at=at("19:31"), sheet=fresh)])

    assert away_planned_and_actual(state) == ({"host": 10}, {"host": 10})
