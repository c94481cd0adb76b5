"""What goes wrong, by hand: the times asserted were worked out on paper from the sheets' docstrings."""

import msgspec
import pytest

from board.evening.events import DishDropped, EveningOpened, GuestsDelayed, StepStretched
from board.evening.slips import KINDS, more, targets, wish_for
from board.evening.wishes import DelayGuests, Done, DropDish, Later, LeaveOut, Lengthen, Refusal, Settle, TakeBack
from board.review.measure import measured
from board.review.observe import observe
from board.sheet.run_sheet import Lasts, RunSheet
from board.view.slipped import slip_words
from tests.conftest import Host, at
from tests.evening.kitchens import ovens, play, with_dishes

SERVED = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew"), ("18:30", "arrive"),
          ("18:35", "sauce"), ("18:45", "sauce"), ("18:50", "serve"), ("19:00", "serve"))  # fmt: skip


def due(host: Host, clock: str) -> list[tuple[str, str]]:
    return [(call.slot, call.part) for call in host.at(clock).due]


@pytest.mark.parametrize(
    ("now", "asked", "ends", "stew", "serve"),
    [
        ("17:10", (5,), "17:25", "17:30", "18:50"),
        ("17:10", (5, 5), "17:30", "17:30", "18:50"),  # each on top of the one before
        ("17:10", (15,), "17:35", "17:35", "18:50"),
        ("17:10", (45,), "18:05", "18:05", "19:05"),  # stew to 19:05
        ("17:28", (5,), "17:33", "17:33", "18:50"),  # overdue since 17:20: five minutes from now
        ("17:10", (-5,), "17:15", "17:30", "18:50"),
        ("17:18", (-5,), "17:18", "17:30", "18:50"),  # never over before now
    ],
)
def test_a_step_not_ready_yet_ends_later_and_moves_what_follows(
    host: Host, now: str, asked: tuple[int, ...], ends: str, stew: str, serve: str
) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at(now)

    for minutes in asked:
        assert host.wish(Lengthen(("chop",), minutes)) is None

    forecast = host.evening.tick().forecast
    assert forecast.slots["chop"].end == at(ends)
    assert forecast.slots["stew"].start == at(stew)
    assert forecast.slots["serve"].start == at(serve)


def test_a_stretched_step_is_called_at_its_new_end_and_not_before(host: Host) -> None:
    play(host, ("17:00", "chop"))
    assert due(host, "17:20") == [("chop", "end")]

    host.wish(Lengthen(("chop",), 5))

    assert due(host, "17:24") == []
    assert due(host, "17:25") == [("chop", "end")]


def test_more_minutes_count_from_when_it_was_put_off_to(host: Host) -> None:
    play(host, ("17:00", "chop"))
    host.at("17:20")
    host.wish(Later("chop", "end"))

    host.wish(Lengthen(("chop",), 5))

    assert host.evening.tick().forecast.slots["chop"].end == at("17:30")


def test_look_ins_stay_where_they_were_and_the_end_moves(host: Host) -> None:
    play(host, ("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))

    host.wish(Lengthen(("stew",), 10))

    assert due(host, "17:50") == [("stew", "look-in")]
    host.answer("stew")
    assert due(host, "18:10") == [("stew", "look-in")]
    host.answer("stew")
    assert ("stew", "end") not in due(host, "18:39")
    assert ("stew", "end") in due(host, "18:40")


@pytest.mark.parametrize(
    ("minutes", "starts", "ends", "served"),
    # Stew 17:30-18:30. 15 more: 18:45, still before the serving. 25 more: 18:55, so out at 19:05.
    # 10 less: it ends 18:20 and then stands 30 of the 30 it keeps.
    [(15, "17:30", "18:45", "19:00"), (25, "17:30", "18:55", "19:05"), (-10, "17:30", "18:20", "19:00")],
)
def test_a_step_to_come_takes_its_new_length(host: Host, minutes: int, starts: str, ends: str, served: str) -> None:
    host.at("16:58")

    host.wish(Lengthen(("stew",), minutes))

    forecast = host.evening.tick().forecast
    assert (forecast.slots["stew"].start, forecast.slots["stew"].end) == (at(starts), at(ends))
    assert forecast.courses[0].served == at(served)


@pytest.mark.parametrize(
    "wish",
    [Lengthen(("stew",), -60), Lengthen(("arrive",), 5), Lengthen((), 5), Lengthen(("stew",), 0), DelayGuests(0),
     DelayGuests(10, "Stew"), DelayGuests(10, "Soup"), DropDish("Soup", "Stew")],
)  # fmt: skip
def test_what_changes_nothing_or_cannot_be_is_refused(host: Host, wish: Lengthen | DelayGuests | DropDish) -> None:
    before = host.evening.state

    assert isinstance(host.wish(wish), Refusal)
    assert host.evening.state is before


def test_what_is_done_takes_no_longer(host: Host) -> None:
    play(host, ("17:00", "chop"), ("17:20", "chop"))

    assert isinstance(host.wish(Lengthen(("chop",), 5)), Refusal)


@pytest.mark.parametrize(
    ("now", "asked", "come", "served"),
    [
        ("17:00", (10,), "18:40", "19:00"),  # they come 10 before the plating still
        ("17:00", (10, 10), "18:50", "19:00"),
        ("17:00", (30,), "19:00", "19:10"),
        ("18:35", (10,), "18:45", "19:00"),  # due at 18:30 and not here: ten minutes from now
    ],
)
def test_late_guests_come_later_and_hold_the_course(
    host: Host, now: str, asked: tuple[int, ...], come: str, served: str
) -> None:
    play(host, ("17:00", "chop"))
    host.at(now)

    for minutes in asked:
        assert host.wish(DelayGuests(minutes)) is None

    present = host.evening.tick()
    assert present.forecast.slots["arrive"].start == at(come)
    if now == "17:00":
        assert present.forecast.courses[0].served == at(served)
    assert "arrive" not in [call.slot for call in present.due]
    assert ("arrive", "start") in due(host, come)


def test_guests_who_are_here_are_not_late(host: Host) -> None:
    host.at("18:00")
    host.wish(Settle("arrive"))

    assert isinstance(host.wish(DelayGuests(10)), Refusal)


@pytest.mark.parametrize(
    ("now", "clears"),
    # On the table at 19:00, eaten in 30: cleared at 19:30, or ten minutes from now where that has passed.
    [("19:10", "19:40"), ("19:45", "19:55")],
)
def test_a_course_that_runs_long_is_cleared_later(host: Host, now: str, clears: str) -> None:
    play(host, *SERVED)
    host.at(now)

    assert host.wish(DelayGuests(10, "Stew")) is None

    assert host.evening.tick().forecast.slots["clear"].start == at(clears)
    assert due(host, clears) == [("clear", "start")]


def test_a_course_that_is_being_cleared_does_not_run_long(host: Host) -> None:
    play(host, *SERVED, ("19:30", "clear"))

    assert isinstance(host.wish(DelayGuests(10, "Stew")), Refusal)


def test_a_course_eaten_standing_holds_up_the_sitting_down(lantern_sheet: RunSheet) -> None:
    """Nibbles out at 18:45 and eaten in 30 min; then the guests go to the table."""
    from board.base.clock import StoppedClock
    from board.rehearsal.player import catch_up
    from board.session.session import unlogged_evening

    clock = StoppedClock(lantern_sheet.slots[0].start)
    evening = unlogged_evening(lantern_sheet, clock)
    catch_up(evening, clock, at("18:50"))
    assert evening.tick().forecast.slots["guests-to-the-table"].start == at("19:15")

    assert evening.wish(DelayGuests(10, "Nibbles")) is None

    forecast = evening.tick().forecast
    assert forecast.slots["guests-to-the-table"].start == at("19:25")
    assert forecast.courses[1].late_minutes >= 10


def test_a_dropped_dish_is_one_event_and_taken_back_whole(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    host.at("16:58")
    before = host.evening.state

    assert host.wish(DropDish("Pot", "Stew")) is None

    state = host.evening.state
    assert [id_ for id_, step in state.steps.items() if step.status == "left-out"] == ["chop", "stew"]
    assert isinstance(state.history[-1], DishDropped)
    host.wish(TakeBack())
    assert host.evening.state.steps == before.steps


def test_what_is_under_way_goes_with_a_dropped_dish(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    play(host, ("17:00", "chop"))

    host.wish(DropDish("Pot", "Stew"))

    assert [host.evening.state.steps[id_].status for id_ in ("chop", "stew")] == ["left-out", "left-out"]
    assert due(host, "17:31") == []


def test_with_its_last_dish_a_course_is_left_out(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    host.at("16:58")
    host.wish(DropDish("Pot", "Stew"))
    still = host.evening.tick().forecast.courses[0].is_ahead

    host.wish(DropDish("Sauce", "Stew"))

    assert still
    assert host.evening.tick().forecast.courses[0].is_left_out
    assert host.evening.state.steps["clear"].status == "left-out"


def test_a_dish_that_is_done_can_be_dropped_and_its_work_stays_done(little: RunSheet) -> None:
    """It fell on the floor: its clock and its waiting go with it, and what it took is still learned from."""
    slots = tuple(msgspec.structs.replace(s, lasts=Lasts(20, 20, 20)) for s in with_dishes(little).slots)
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    play(host, ("17:00", "chop"), ("17:22", "chop"), ("17:30", "stew"), ("18:30", "stew"))
    opened = host.evening.state.history[0]
    assert isinstance(opened, EveningOpened)
    took = observe(opened, host.evening.state.history[1:]).steps

    assert host.wish(DropDish("Pot", "Stew")) is None

    present = host.at("18:31")
    assert [step.status for step in present.state.steps.values()][:2] == ["left-out", "left-out"]
    assert [each.slot for each in present.forecast.keeping if each.slot in ("chop", "stew")] == []
    assert observe(opened, host.evening.state.history[1:]).steps == took
    assert [(each.name, each.minutes) for each in took if each.name == "chop"] == [("chop", 22)]
    assert measured(host.evening.state, opened).left_out() == []
    assert present.forecast.courses[0].is_ahead  # there is still the sauce


def test_a_dish_is_dropped_at_the_table_but_not_once_its_course_is_cleared(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    play(host, *SERVED[:8])
    host.at("19:00")
    host.answer("serve")

    assert host.wish(DropDish("Sauce", "Stew")) is None
    assert host.evening.state.steps["serve"].status == "finished"
    host.wish(TakeBack())
    host.wish(Settle("clear"))
    assert isinstance(host.wish(DropDish("Sauce", "Stew")), Refusal)


def test_what_is_on_the_fire_or_on_the_table_comes_first(little: RunSheet) -> None:
    sheet = with_dishes(little)
    host = Host(sheet, at("16:58"))

    def dishes(chosen: str | None = None) -> list[str]:
        present = host.evening.tick()
        return [target.name for target in targets(present.state, present.forecast, "dish", chosen)]

    play(host, ("17:00", "chop"), ("17:20", "chop"))
    host.wish(Settle("sauce"))
    assert dishes() == ["Pot", "Sauce"]  # to come before done
    host.wish(TakeBack())
    host.at("17:25")
    host.wish(Done("sauce", "start"))  # begun early: hands are on it, but no fire is under it
    assert dishes() == ["Sauce", "Pot"]
    host.at("17:30")
    host.wish(Done("stew", "start"))
    assert dishes() == ["Pot", "Sauce"]
    assert dishes("sauce") == ["Sauce", "Pot"]


def test_a_heating_goes_with_the_last_dish_that_needs_it_and_no_sooner() -> None:
    host = Host(ovens(), at("16:58"))
    host.at("16:58")
    host.wish(DropDish("pie", "Pie"))
    first = host.evening.state.steps["heat-big"].status

    host.wish(DropDish("rolls", "Pie"))

    assert first == "to-come"
    assert host.evening.state.steps["heat-big"].status == "left-out"
    assert host.evening.state.steps["heat-small"].status == "to-come"


def oven_targets(host: Host) -> dict[str, tuple[str, ...]]:
    present = host.evening.tick()
    return {target.name: target.slots for target in targets(present.state, present.forecast, "oven")}


def test_an_oven_that_lost_its_heat_holds_up_all_that_is_in_it() -> None:
    host = Host(ovens(), at("16:58"))
    host.at("16:58")
    assert oven_targets(host) == {}
    play(host, ("17:00", "heat-big"), ("17:10", "heat-small"))
    assert oven_targets(host) == {"big": ("heat-big",), "small": ("heat-small",)}  # while they heat
    play(host, ("17:15", "heat-big"))
    assert oven_targets(host)["big"] == ("rolls", "pie")  # nothing is in it: what goes in next
    play(host, ("17:15", "pie"), ("17:15", "rolls"), ("17:20", "heat-small"), ("17:20", "crisps"))
    assert oven_targets(host) == {"big": ("rolls", "pie"), "small": ("crisps",)}

    host.wish(wish_for("oven", targets(host.evening.state, host.evening.look(), "oven")[0], 15))

    slots = host.evening.tick().forecast.slots
    assert slots["rolls"].end == at("17:50")
    assert slots["pie"].end == at("18:15")
    assert slots["crisps"].end == at("17:50")
    assert host.evening.tick().forecast.courses[0].served == at("18:35")
    host.wish(TakeBack())
    assert host.evening.tick().forecast.courses[0].served == at("18:30")


def test_a_heating_that_takes_longer_holds_up_what_waits_for_it() -> None:
    host = Host(ovens(), at("16:58"))
    play(host, ("17:00", "heat-big"))

    host.wish(Lengthen(("heat-big",), 10, "big"))

    slots = host.evening.tick().forecast.slots
    assert (slots["pie"].start, slots["pie"].end) == (at("17:25"), at("18:10"))


def test_the_likeliest_comes_first_and_the_step_looked_at_before_it(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    play(host, ("17:00", "chop"))
    present = host.at("17:05")

    def first(kind: str, chosen: str | None = None) -> str:
        return targets(present.state, present.forecast, kind, chosen)[0].name  # type: ignore[arg-type]

    assert first("not-ready") == "chop"
    assert first("length") == "stew"
    assert first("length", "sauce") == "sauce"
    assert first("dish") == "Pot"
    assert first("dish", "sauce") == "Sauce"
    assert targets(present.state, present.forecast, "sitting") == ()


def test_of_several_under_way_the_one_that_ends_soonest_presses_most() -> None:
    host = Host(ovens(), at("16:58"))
    play(host, ("17:00", "heat-big"), ("17:15", "heat-big"), ("17:15", "pie"), ("17:15", "rolls"))
    present = host.evening.tick()

    assert [t.name for t in targets(present.state, present.forecast, "not-ready")] == ["rolls", "pie"]


def test_minutes_go_by_ones_up_to_five_and_by_fives_beyond() -> None:
    def walk(kind: str, start: int, *steps: int) -> list[int]:
        found = [start]
        for step in steps:
            found.append(more(kind, found[-1], step))  # type: ignore[arg-type]
        return found

    assert walk("not-ready", 5, 1, 1, -1, -1, -1) == [5, 10, 15, 10, 5, 4]
    assert walk("not-ready", 1, -1) == [1, 1]
    assert walk("length", 1, -1, -1) == [1, -1, -2]
    assert walk("length", -5, -1, -1, 1) == [-5, -10, -15, -10]
    assert walk("guests", 180, 1) == [180, 180]


def test_a_slip_shows_in_the_review_as_what_it_was(little: RunSheet) -> None:
    sheet = with_dishes(little)
    host = Host(sheet, at("16:58"))
    play(host, ("17:00", "chop"))
    host.wish(Lengthen(("chop",), 5))
    host.wish(DelayGuests(10))
    host.wish(DropDish("Sauce", "Stew"))
    host.wish(Lengthen(("stew",), 5))
    host.wish(TakeBack())
    opened = host.evening.state.history[0]
    assert isinstance(opened, EveningOpened)

    found = measured(host.evening.state, opened)

    told = [slip_words(slip, sheet.by_id()) for slip in found.slips]
    assert told == ["chop: +5 min", "guests 10 min late", "Sauce dropped"]
    assert [type(slip) for slip in found.slips] == [StepStretched, GuestsDelayed, DishDropped]


def test_a_lost_heat_and_a_long_sitting_are_told_by_name(little: RunSheet) -> None:
    stretched = StepStretched(n=1, at=at("17:00"), slots=("stew", "sauce"), minutes=5, oven="old oven")
    sitting = GuestsDelayed(n=2, at=at("17:00"), slots=("clear",), minutes=15, course="Stew")

    assert slip_words(stretched, little.by_id()) == "old oven went cold, stew, sauce: +5 min"
    assert slip_words(sitting, little.by_id()) == "guests linger over Stew: +15 min"


def test_later_pressed_again_adds_five_to_what_was_put_off(host: Host) -> None:
    key = ("chop", "start", 0)
    host.at("17:00")
    asked = []
    for _ in range(3):
        wish = host.evening.later(key)  # type: ignore[arg-type]
        asked.append(wish.minutes)
        host.wish(wish)

    assert asked == [5, 10, 15]
    assert due(host, "17:14") == []
    assert due(host, "17:15") == [("chop", "start")]
    host.wish(host.evening.later(key))  # type: ignore[arg-type]
    assert due(host, "17:19") == []  # asked again at its time, it is five minutes from then
    assert due(host, "17:20") == [("chop", "start")]
    for _ in range(4):
        host.wish(TakeBack())
    assert due(host, "17:20") == [("chop", "start")]
    assert host.evening.state.steps["chop"].put_off == {}


@pytest.mark.parametrize("kind", KINDS)
def test_with_nothing_left_no_slip_has_a_target(host: Host, kind: str) -> None:
    for id_ in ("chop", "stew", "sauce", "serve", "clear"):
        host.wish(LeaveOut(id_))
    host.wish(Settle("arrive"))
    present = host.evening.tick()

    assert targets(present.state, present.forecast, kind) == ()  # type: ignore[arg-type]


def test_what_has_begun_early_keeps_what_it_was_stretched_by(host: Host) -> None:
    host.at("16:58")
    host.wish(Lengthen(("chop",), 10))

    host.wish(Done("chop", "start"))

    assert host.evening.tick().forecast.slots["chop"].end == at("17:28")
