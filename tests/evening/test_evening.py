"""The evening by hand: the little supper of conftest, what is called when, and what a slip moves.

The times asserted here were worked out on paper from the sheet in the fixture's docstring.
"""

from datetime import timedelta

from board.evening.wishes import (
    DelayGuests,
    Done,
    Later,
    LeaveOut,
    Push,
    Refusal,
    Settle,
    TakeBack,
    WriteNote,
    push_from_now,
)
from board.sheet.run_sheet import Attended, Dependency, RunSheet
from tests.conftest import Host, at, slot


def ids(calls: object) -> list[tuple[str, str]]:
    return [(call.slot, call.part) for call in calls]  # type: ignore[attr-defined]


def test_nothing_is_called_before_its_time(host: Host) -> None:
    present = host.at("16:59")

    assert present.due == ()
    assert ids(present.coming)[0] == ("chop", "start")


def test_a_call_is_raised_once_and_stays_until_it_is_answered(host: Host) -> None:
    first, second = host.at("17:00"), host.at("17:05")

    assert ids(first.raised) == [("chop", "start")]
    assert second.raised == ()
    assert ids(second.due) == [("chop", "start")]
    assert second.due[0].raised == at("17:00")


def test_a_late_start_moves_the_step_and_what_follows_it(host: Host) -> None:
    host.at("17:00")

    host.at("17:25")
    present = host.answer("chop")

    # chop now ends 17:45, so the stew cannot begin at 17:30; it ends 18:45 and the serving at 18:50 still holds.
    assert present.forecast.slots["stew"].start == at("17:45")
    assert present.forecast.slots["serve"].start == at("18:50")
    assert present.forecast.slots["stew"].give_minutes == 5
    assert present.forecast.courses[0].late_minutes == 0


def test_a_slip_beyond_the_give_makes_the_course_late_and_moves_what_would_stand_too_long(host: Host) -> None:
    host.at("17:45")
    present = host.answer("chop")

    # chop 17:45-18:05, stew 18:05-19:05, serve 19:05-19:15: 15 late. The sauce was ready 5 min before the serving
    # and keeps 15, so it may stand 10 min longer; of the 15 it moves by 5, to 18:40.
    assert present.forecast.courses[0].late_minutes == 15
    assert present.forecast.slots["serve"].start == at("19:05")
    assert present.forecast.slots["sauce"].start == at("18:40")


def test_a_step_that_runs_over_is_expected_to_end_now(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")

    present = host.at("17:50")

    assert present.forecast.slots["chop"].end == at("17:50")
    assert present.forecast.slots["stew"].start == at("17:50")
    assert ids(present.due) == [("chop", "end")]


def test_a_step_is_not_called_before_what_it_follows_is_done(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")

    present = host.at("17:35")

    assert ("stew", "start") not in ids(present.due)
    assert isinstance(host.wish(Done("stew", "start")), Refusal)


def test_look_ins_come_after_the_real_start_and_the_last_stands_for_those_missed(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")
    host.at("17:40")
    host.answer("stew")

    early, both = host.at("17:59"), host.at("18:25")

    assert ids(early.due) == []  # begun 10 late, so the first look-in is due at 18:00
    assert [(c.slot, c.part, c.number) for c in both.due] == [("stew", "look-in", 1)]
    after = host.answer("stew")
    assert ids(after.due) == []


def test_later_asks_again_after_five_minutes(host: Host) -> None:
    host.at("17:00")
    host.wish(Later("chop", "start"))

    quiet, again = host.at("17:04"), host.at("17:05")

    assert quiet.due == ()
    assert ids(again.raised) == [("chop", "start")]


def test_later_at_the_end_keeps_the_step_open(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.wish(Later("chop", "end", minutes=5))

    present = host.at("17:21")

    assert present.forecast.slots["chop"].end == at("17:25")
    assert present.due == ()


def test_leaving_a_step_out_frees_what_follows_it(host: Host) -> None:
    host.at("17:00")
    host.wish(LeaveOut("chop"))

    present = host.at("17:30")

    assert ids(present.due) == [("stew", "start")]


def test_a_course_can_be_dropped_but_the_guests_cannot(host: Host) -> None:
    assert isinstance(host.wish(LeaveOut("arrive")), Refusal)
    assert host.wish(LeaveOut("serve")) is None

    course = host.evening.tick().forecast.courses[0]

    assert course.is_left_out
    assert not course.is_ahead


def test_later_on_a_look_in_does_not_put_off_the_end(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.at("18:27")  # both look-ins are overdue, the end is due at 18:30

    host.wish(Later("stew", "look-in", 1))

    assert host.evening.tick().forecast.slots["stew"].end == at("18:30")
    assert [c.part for c in host.at("18:30").due if c.slot == "stew"] == ["end"]


def test_a_call_taken_back_with_its_step_does_not_come_again_by_itself(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")
    host.wish(TakeBack())
    host.wish(TakeBack())

    present = host.answer("chop")  # begun again at 17:20, so its end is due at 17:40

    assert ids(present.due) == []
    assert ids(host.at("17:40").due) == [("chop", "end")]


def test_a_called_step_that_is_pushed_waits_for_its_new_time(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    assert ("sauce", "start") in ids(host.at("18:35").due)

    host.wish(Push("Stew", 30))

    present = host.evening.tick()
    assert ("sauce", "start") not in ids(present.due)
    assert ("sauce", "start") in ids(present.coming)


def test_work_that_fits_in_before_delayed_work_of_the_same_hands_does_not_wait_for_it() -> None:
    first = slot("chop", "17:00", "17:20")
    second = slot("wash", "17:20", "17:30", waits=(Dependency("chop", "end", 0, "hands"),))
    host = Host(RunSheet("Two", "UTC", "0", "2026-11-28", at("18:30"), (), (first, second)), at("17:00"))
    host.at("17:00")

    host.wish(Later("chop", "start", minutes=25))
    close = host.evening.tick().forecast.slots["wash"].start
    host.wish(Later("chop", "start", minutes=30))
    far = host.evening.tick().forecast.slots["wash"].start

    # Chop at 17:25 leaves no ten minutes from 17:20, so washing up waits for it; at 17:30 it does.
    assert close == at("17:45")
    assert far == at("17:20")


def test_a_push_of_one_course_is_no_slip_of_the_next(host: Host) -> None:
    host.at("17:00")
    host.wish(Push("Stew", 40))

    course = host.evening.tick().forecast.courses[0]

    assert (course.late_minutes, course.slip_minutes) == (40, 0)


def test_what_ended_by_itself_is_taken_back_with_its_start() -> None:
    rest = slot(
        "rest", "17:00", "17:30", lane="fridge", attended=(Attended(at("17:00"), at("17:02"), "host", "start"),)
    )
    sheet = RunSheet("Rest", "UTC", "0", "2026-11-28", at("18:30"), (), (rest,))
    host = Host(sheet, at("17:00"))
    host.at("17:00")
    host.answer("rest")
    assert host.at("18:00").state.steps["rest"].finished == at("17:30")

    host.wish(TakeBack())

    assert host.evening.state.steps["rest"].status == "to-come"


def test_a_push_moves_the_course_and_its_last_steps_but_no_further_than_they_must(host: Host) -> None:
    host.at("17:00")
    host.wish(Push("Stew", 20))

    present = host.at("17:00")

    # serve 19:10. The stew is best within 20 and stood 20 already, so it moves by the whole 20, to 17:50.
    # The sauce keeps 15 and stood 5: it moves by 10, to 18:45.
    assert present.forecast.slots["serve"].start == at("19:10")
    assert present.forecast.slots["stew"].start == at("17:50")
    assert present.forecast.slots["sauce"].start == at("18:45")
    assert present.forecast.slots["chop"].start == at("17:00")
    assert present.forecast.courses[0].late_minutes == 20
    assert present.forecast.courses[0].slip_minutes == 0


def test_a_push_counts_from_when_the_course_now_looks_like_going_out(host: Host) -> None:
    host.at("17:45")
    present = host.answer("chop")  # 15 late already

    wish = push_from_now(present.state, present.forecast, "Stew", 10)
    host.wish(wish)

    assert host.evening.tick().forecast.courses[0].served == at("19:25")


def test_pushing_what_has_gone_out_is_refused(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew"), ("18:30", "arrive"),
                       ("18:35", "sauce"), ("18:45", "sauce"), ("18:50", "serve"), ("19:00", "serve")):  # fmt: skip
        host.at(clock)
        host.answer(id_)

    assert isinstance(host.wish(Push("Stew", 10)), Refusal)


def test_late_guests_hold_the_course(host: Host) -> None:
    present = host.at("18:55")

    assert present.forecast.slots["arrive"].start == at("18:55")
    assert present.forecast.slots["serve"].start >= at("18:55")


def test_marking_the_guests_settles_them_at_once(host: Host) -> None:
    host.at("18:20")

    assert host.wish(Settle("arrive")) is None
    assert host.evening.tick().state.steps["arrive"].finished == at("18:20")


def test_take_back_undoes_one_answer_after_another(host: Host) -> None:
    host.at("17:00")
    before = host.evening.tick()
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")

    host.wish(TakeBack())
    once = host.evening.tick()
    host.wish(TakeBack())
    twice = host.evening.tick()

    assert once.state.steps["chop"].status == "under-way"
    assert twice.state.steps == before.state.steps
    assert isinstance(host.wish(TakeBack()), Refusal)


def test_one_key_that_began_and_ended_is_taken_back_whole(host: Host) -> None:
    host.at("18:30")
    host.wish(Settle("arrive"))

    host.wish(TakeBack())

    assert host.evening.tick().state.steps["arrive"].status == "to-come"


def test_an_empty_note_is_not_kept_and_a_full_one_is(host: Host) -> None:
    assert isinstance(host.wish(WriteNote("  ")), Refusal)
    host.wish(WriteNote("salt it more", "stew"))

    assert [(note.text, note.slot) for note in host.evening.tick().state.notes] == [("salt it more", "stew")]


def test_what_stands_is_told_with_its_limit(host: Host) -> None:
    host.at("17:00")
    host.answer("chop")
    host.at("17:20")
    host.answer("chop")
    host.at("17:30")
    host.answer("stew")
    host.at("18:30")
    present = host.answer("stew")

    standing = next(each for each in present.forecast.keeping if each.slot == "stew")
    assert standing.until == at("19:00")
    assert standing.taken_up == at("18:50")


def test_a_forecast_of_the_little_supper_at_its_start_is_its_sheet(host: Host) -> None:
    present = host.at("16:58")

    for planned in present.state.sheet.slots:
        assert present.forecast.slots[planned.id].start == planned.start
        assert present.forecast.slots[planned.id].end == planned.end


def test_what_if_changes_nothing(host: Host) -> None:
    host.at("17:00")
    before = host.evening.state

    ahead = host.evening.what_if(Push("Stew", 30))

    assert not isinstance(ahead, Refusal)
    assert ahead.courses[0].served - at("19:00") == timedelta(minutes=30)
    assert host.evening.state is before


def test_guests_are_not_here_a_day_before_they_are_looked_for(little: RunSheet) -> None:
    """Looked for at 18:30 on the 28th: six hours before is early, a minute earlier than that a key by mistake."""
    host = Host(little, at("12:29"))
    refused = host.wish(Settle("arrive"))

    assert refused == Refusal("the guests are expected at Sat 18:30")
    assert host.evening.state.steps["arrive"].status == "to-come"
    host.at("12:30")
    assert host.wish(Settle("arrive")) is None


def test_guests_put_off_are_looked_for_when_they_are_expected_now(little: RunSheet) -> None:
    """Put off by two hours, to 20:30: six hours before that is 14:30."""
    host = Host(little, at("14:29"))
    host.wish(DelayGuests(120))

    assert host.wish(Settle("arrive")) == Refusal("the guests are expected at Sat 20:30")
    host.at("14:30")
    assert host.wish(Settle("arrive")) is None
