"""What is worth offering: each gain just enough and just not, in the order of the aims; and what each cost counts."""

from datetime import datetime, timedelta

import pytest
from msgspec.structs import replace

from board.evening.decide import decide
from board.evening.events import Event
from board.evening.fold import fold_all
from board.evening.forecast import Forecaster
from board.evening.state import State, begin
from board.evening.wishes import LeaveOut
from board.session.replan.gain import Costs, costs, offer
from board.sheet.run_sheet import Attended, Keeping, RunSheet, Slot, SpoilClock
from tests.conftest import at, slot

NOON = at("12:00")


def with_slot(sheet: RunSheet, id_: str, **changes: object) -> RunSheet:
    slots: tuple[Slot, ...] = tuple(replace(s, **changes) if s.id == id_ else s for s in sheet.slots)
    return replace(sheet, slots=slots)


def costing(sheet: RunSheet, *, late: int = 0, kept: int = 0, away: int = 0, lost: int = 0) -> RunSheet:
    """The little supper at these costs: a stew that takes so much longer than there is time, chopped leeks that keep so
    much shorter than they stand (ten minutes), and so much whisking, which nothing waits for. A sauce that is
    `lost` may stand out a minute."""
    over = at("18:35") + timedelta(minutes=away)
    whisk = replace(slot("whisk", "18:35", "18:35"), end=over, attended=work("18:35", away))
    sheet = with_slot(replace(sheet, slots=(*sheet.slots, whisk)), "sauce", attended=())
    sheet = with_slot(sheet, "sauce", dish="Sauce", exposed=True)
    sheet = replace(sheet, clocks=(SpoilClock("Sauce", "Stew", 1 if lost else 120, "a rule", "serve", "clear"),))
    sheet = with_slot(sheet, "chop", keeping=Keeping(10 - kept, "room"))
    return with_slot(sheet, "stew", end=at("18:50") + timedelta(minutes=late), attended=())


def work(start: str, minutes: int, who: str = "host") -> tuple[Attended, ...]:
    return (Attended(at(start), at(start) + timedelta(minutes=minutes), who, "all"),)


def costs_of(sheet: RunSheet, now: datetime = NOON, *events: Event) -> Costs:
    state = fold_all(begin(sheet), events)
    return costs(state, Forecaster(sheet).forecast(state, now))


def left_out(sheet: RunSheet, id_: str) -> State:
    events = decide(begin(sheet), LeaveOut(id_), NOON)
    assert isinstance(events, list)
    return fold_all(begin(sheet), events)


def is_offered(before: RunSheet, after: RunSheet) -> bool:
    return offer(begin(before), after, begin(after), NOON) is not None


@pytest.mark.parametrize("wanted", [Costs(0, 0, 0), Costs(4, 0, 0), Costs(0, 3, 0), Costs(0, 0, 9), Costs(2, 1, 7, 1)])
def test_the_sheets_of_these_tests_cost_what_they_say(little: RunSheet, wanted: Costs) -> None:
    assert costs_of(costing(little, late=wanted.late, kept=wanted.kept, away=wanted.away, lost=wanted.lost)) == wanted


GAINS = {  # what it costs as it is, by the fresh sheet; whether it is offered
    "just enough minutes late": ({"late": 4}, {"late": 1}, True),
    "a minute too few": ({"late": 3}, {"late": 1}, False),
    "just enough past keeping": ({"kept": 5}, {}, True),
    "a minute of keeping too few": ({"kept": 4}, {}, False),
    "just enough time with the guests": ({"away": 12}, {"away": 2}, True),
    "a minute with the guests too few": ({"away": 12}, {"away": 3}, False),
    "nothing": ({"late": 9}, {"late": 9}, False),
    "a course is later, for less dear things": ({"kept": 5, "away": 20}, {"late": 1}, False),
    "the host is away longer, but a course is in time": ({"late": 3}, {"away": 20}, True),
    "less kept well, but a course is in time": ({"late": 3}, {"kept": 5}, True),
    "less kept well, for time with the guests": ({"away": 20}, {"kept": 1}, False),
    "a dish less out too long": ({"lost": 1}, {}, True),
    "a dish is out too long, for a course in time": ({"late": 9}, {"lost": 1}, False),
    "less kept well, for a dish out too long": ({"lost": 1}, {"kept": 9}, True),
    "a dish out too long, for much kept well": ({"kept": 9}, {"lost": 1}, False),
    "a course is later, for a dish out too long": ({"lost": 1}, {"late": 1}, True),
    "a little in time, and enough kept well": ({"late": 1, "kept": 5}, {}, True),
}


@pytest.mark.parametrize(("before", "after", "offered"), GAINS.values(), ids=GAINS)
def test_a_fresh_sheet_is_offered_where_it_gains_enough_and_loses_nothing_dearer(
    little: RunSheet, before: dict[str, int], after: dict[str, int], offered: bool
) -> None:
    assert is_offered(costing(little, **before), costing(little, **after)) == offered


def test_an_offer_tells_when_each_course_ahead_goes_out_by_either_sheet(little: RunSheet) -> None:
    before, after = costing(little, late=4), costing(little)

    found = offer(begin(before), after, begin(after), NOON)

    assert found is not None
    assert (found.before, found.after) == (Costs(4, 0, 0), Costs(0, 0, 0))
    assert found.courses == (("Stew", at("19:04"), at("19:00")),)


@pytest.mark.parametrize(("end", "minutes"), [("18:30", 0), ("18:31", 1)])
def test_work_counts_from_when_the_guests_are_there(little: RunSheet, end: str, minutes: int) -> None:
    """Of work that goes on as they come, what is left of it. The stew is left to itself."""
    little = with_slot(little, "stew", attended=())
    length = round((at(end) - at("18:20")).total_seconds() / 60)

    assert (
        costs_of(with_slot(little, "sauce", start=at("18:20"), end=at(end), attended=work("18:20", length))).away
        == minutes
    )


def test_work_counts_when_it_now_looks_like_being_done(little: RunSheet) -> None:
    """The chopping, planned for the afternoon, would begin at 18:15 and end five minutes after they came."""
    assert costs_of(little, at("18:15")).away == 10 + 5 + 4  # sauce, what is left of the chopping, stew


@pytest.mark.parametrize(
    ("changes", "minutes"),
    [
        ({}, 10),
        ({"attended": work("18:35", 10, who="aide")}, 0),
        ({"with_guests": True}, 0),
        ({"lane": "front-of-house"}, 0),
    ],
)
def test_only_the_work_of_those_who_sit_away_from_the_guests_counts(
    little: RunSheet, changes: dict[str, object], minutes: int
) -> None:
    sheet = replace(with_slot(little, "sauce", **changes), hands=("host", "aide"), hired_hands=("aide",))

    assert costs_of(sheet).away == minutes


@pytest.mark.parametrize(("gone", "left"), [("whisk", Costs(0, 5, 0)), ("chop", Costs(0, 0, 10))])
def test_what_is_left_out_costs_nothing(little: RunSheet, gone: str, left: Costs) -> None:
    sheet = costing(little, kept=5, away=10)
    state = left_out(sheet, gone)

    assert costs(state, Forecaster(sheet).forecast(state, NOON)) == left


def test_a_result_stands_until_the_last_that_takes_it_up_begins(little: RunSheet) -> None:
    """Chopped by 17:20; taken up by the stew at 17:30 and by the sauce at 18:35, 75 minutes later."""
    sheet = with_slot(little, "chop", keeping=Keeping(70, "room"), then=("stew", "sauce"))
    gone = left_out(sheet, "sauce")

    assert costs_of(sheet).kept == 5
    assert costs(gone, Forecaster(sheet).forecast(gone, NOON)).kept == 0


@pytest.mark.parametrize(("start", "up"), [("19:05", 7 + 10), ("19:11", 1 + 10), ("19:12", 0)])
def test_getting_up_from_the_table_costs_what_is_missing_and_the_work(little: RunSheet, start: str, up: int) -> None:
    """Out at 19:00; nobody is to get up till 19:12. Ten minutes of work."""
    assert costs_of(with_pans(little, start)).up == up


def with_pans(sheet: RunSheet, start: str) -> RunSheet:
    """The little supper, sat over for twelve minutes, with ten minutes of work that no course waits for."""
    pans = slot("pans", start, f"{start[:3]}{int(start[3:]) + 10}")
    return replace(sheet, slots=(*sheet.slots, pans), courses=(replace(sheet.courses[0], sits=12),))


def test_a_sheet_that_leaves_them_seated_is_offered(little: RunSheet) -> None:
    assert is_offered(with_pans(little, "19:05"), with_pans(little, "19:13"))
    assert not is_offered(with_pans(little, "19:13"), with_pans(little, "19:05"))
