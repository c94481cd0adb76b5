"""What is left of a cleared course, and the host says that it is in the cold: reckoned by hand.

Two hours in all: USDA FSIS, "danger zone" (tests/outside holds the limits). That a fridge stops a clock and sets none
back: as everywhere in `safety.exposure`.
"""

import json
from typing import Any

import jsonschema
import msgspec
import pytest

from board.base import words as shared
from board.base.clock import Jump
from board.evening.clocks import left_over, next_to_put_away, told_of
from board.evening.events import ClockWarned, EveningOpened, LeftoversPutAway
from board.evening.wishes import Close, Done, LeaveOut, PutAway, Refusal, Settle, TakeBack
from board.log.read import read_log
from board.log.share import as_csv, as_lines, schema, without_names
from board.log.write import Memory
from board.output.review import review_form
from board.review.measure import Review, measured
from board.session.session import Evening
from board.sheet.run_sheet import CourseSlot, Dependency, RunSheet, SpoilClock
from board.view.board import Viewer
from board.view.closing import closing
from board.view.look import happened
from board.view.onlooker import Onlooker
from tests.conftest import Host, at, follows, slot
from tests.evening.test_clock_jumps import Jumping, JumpyHost

FOH: dict[str, Any] = {"lane": "front-of-house", "course": "Sweet"}


def left_supper(little: RunSheet, *, sweet: int | None = None, away: bool = False) -> RunSheet:
    """The little supper with a clock of two hours: hot until it is plated at 18:50, on the table at 19:00, cleared at
    19:35 after 45 minutes; up at 20:50. `sweet`: a second course with a limit of so many minutes, out 20:00-20:05,
    cleared 20:15-20:20 after 20 minutes. `away`: a job puts away the first, 20:00-20:10."""
    slots, courses = list(little.slots), list(little.courses)
    clocks = [SpoilClock("stew", "Stew", 120, "USDA FSIS", "serve", "clear", "put away" if away else None)]
    if away:
        slots.append(slot("put away", "20:00", "20:10", kind="job", waits=follows("clear")))
    if sweet is not None:
        slots += [
            slot("bring", "20:00", "20:05", kind="serve", waits=follows("clear"), then=("take",), **FOH),
            slot("take", "20:15", "20:20", kind="clear", waits=(Dependency("bring", "end", 10, "order"),), **FOH),
        ]
        courses.append(CourseSlot("Sweet", at("20:05"), at("20:05"), "bring", "take", may_slip=60))
        clocks.append(SpoilClock("custard", "Sweet", sweet, "USDA FSIS", "bring", "take"))
    return msgspec.structs.replace(little, slots=tuple(slots), courses=tuple(courses), clocks=tuple(clocks))


def served(host: Host, *, until: str = "clear") -> Host:
    """Everything at its minute, as planned, up to the end of that slot."""
    moments = [(each.start, 0, each.id) for each in host.evening.sheet.slots]
    moments += [(each.end, 1, each.id) for each in host.evening.sheet.slots if each.end > each.start]
    last = next(each.end for each in host.evening.sheet.slots if each.id == until)
    for moment, end, id_ in sorted(moments):
        if moment <= last and id_ != "put away":
            host.at(f"{moment:%H:%M}")
            refused = host.wish(Settle(id_) if end or id_ == "arrive" else Done(id_, "start"))
            assert refused is None, refused
    host.evening.tick()
    return host


def cleared(sheet: RunSheet, *, until: str = "clear") -> Host:
    return served(Host(sheet, at("16:58")), until=until)


def put_away(host: Host, clock: str) -> str:
    """Says it at that time, of the course the key means; which that was."""
    course = next_to_put_away(host.at(clock).clocks)
    assert course is not None
    refused = host.wish(PutAway(course))
    assert refused is None, refused
    return course


def warned(host: Host) -> list[tuple[str, str]]:
    return [(f"{e.at:%H:%M}", e.what) for e in host.evening.told if isinstance(e, ClockWarned)]


def lines(host: Host, clock: str) -> list[str]:
    return [line.text for line in Viewer(host.evening.sheet).view(host.at(clock)).keeping]


def reviewed(host: Host) -> Review:
    opened = host.evening.told[0]
    assert isinstance(opened, EveningOpened)
    return measured(host.evening.state, opened)


def test_put_away_in_time_the_clock_stands_still_and_nothing_more_is_said(little: RunSheet) -> None:
    """45 when it is cleared at 19:35; put away at 20:15 after 85, and 85 it stays."""
    host = cleared(left_supper(little))
    assert lines(host, "19:40") == ["Stew leftovers: in the fridge, in shallow dishes, by 20:50 · f when it is"]
    assert put_away(host, "20:15") == "Stew"

    for clock in ("20:16", "20:30", "20:50", "21:30"):
        present = host.at(clock)
        assert [(c.where, round(c.out_minutes, 3), c.running) for c in present.clocks] == [("away", 85, False)]
        assert left_over(present.clocks, present.now) == []
        assert told_of(present.clocks, present.now) == []
        assert lines(host, clock) == []

    assert warned(host) == [("19:35", "put-away")]
    assert Viewer(host.evening.sheet).standings.put_away("Stew", host.at("20:15")) == (
        "put away: Stew leftovers",
        False,
    )


@pytest.mark.parametrize(("clock", "late"), [("20:49", False), ("20:50", False), ("20:51", True), ("22:00", True)])
def test_put_away_after_its_limit_is_told_once_and_never_called_safe(little: RunSheet, clock: str, late: bool) -> None:
    """Up at 20:50: by then is in time, a minute later is not; half an hour after it the key still does it."""
    host = cleared(left_supper(little))
    put_away(host, clock)

    text, grave = Viewer(host.evening.sheet).standings.put_away("Stew", host.at(clock))

    assert grave is late
    assert text == ("Stew leftovers: out 2 hours. Don't serve or keep them" if late else "put away: Stew leftovers")
    assert lines(host, clock) == []
    assert reviewed(host).put_away[0].over is late
    before = warned(host)
    host.at("22:10")
    assert warned(host) == before


def test_taken_back_the_clock_has_gone_on_meanwhile(little: RunSheet) -> None:
    """Put away at 20:15 and taken back at 20:20: 45 + 45 = 90, and its warnings come at 20:30 and 20:50."""
    host = cleared(left_supper(little))
    put_away(host, "20:15")
    host.at("20:20")
    assert host.wish(TakeBack()) is None

    present = host.at("20:20")

    assert [(c.where, round(c.out_minutes, 3), c.running) for c in present.clocks] == [("left", 90, True)]
    assert dict(present.state.put_away) == {}
    for clock in ("20:30", "20:50"):
        host.at(clock)
    assert warned(host) == [("19:35", "put-away"), ("20:30", "soon"), ("20:50", "over")]
    assert reviewed(host).not_told == ("Stew",)


def test_of_two_courses_the_one_with_the_least_time_left_is_first(little: RunSheet) -> None:
    """Stew is up at 20:50, the sweet with 40 minutes, cleared later, at 20:40."""
    host = cleared(left_supper(little, sweet=40), until="take")

    assert [put_away(host, "20:30"), put_away(host, "20:35")] == ["Sweet", "Stew"]

    assert next_to_put_away(host.at("20:36").clocks) is None
    assert {course: f"{when:%H:%M}" for course, when in host.evening.state.put_away.items()} == {
        "Sweet": "20:30",
        "Stew": "20:35",
    }
    host.wish(TakeBack())
    assert next_to_put_away(host.at("20:37").clocks) == "Stew"


def test_on_the_table_or_put_away_already_there_is_nothing_to_put_away(little: RunSheet) -> None:
    host = served(Host(left_supper(little), at("16:58")), until="serve")
    refused = Refusal(shared.NOTHING_TO_PUT_AWAY)
    assert next_to_put_away(host.at("19:10").clocks) is None
    assert host.wish(PutAway("Stew")) == refused
    assert host.wish(PutAway("Soup")) == refused

    host.at("19:30")
    host.wish(Settle("clear"))
    put_away(host, "19:40")

    assert host.wish(PutAway("Stew")) == refused


def test_where_a_job_does_it_its_call_is_answered_instead(little: RunSheet) -> None:
    host = cleared(left_supper(little, away=True))
    assert next_to_put_away(host.at("19:40").clocks) == "Stew"
    assert host.wish(PutAway("Stew")) == Refusal("put away puts away what is left of Stew: answer its call")
    assert lines(host, "20:31") == ["Stew leftovers: in the fridge, in shallow dishes, by 20:50"]

    host.wish(LeaveOut("put away"))
    assert put_away(host, "20:40") == "Stew"

    assert reviewed(host).put_away[0].stood_minutes == 110


def test_a_course_no_job_puts_away_goes_before_one_that_a_job_does(little: RunSheet) -> None:
    """Stew, by its job, has less time left than the sweet."""
    host = cleared(left_supper(little, sweet=120, away=True), until="take")

    assert put_away(host, "20:21") == "Sweet"
    assert next_to_put_away(host.at("20:22").clocks) == "Stew"


def test_a_clearing_left_out_leaves_the_course_to_be_put_away(little: RunSheet) -> None:
    """On the table since 19:00, out since 18:50: 40 at 19:30."""
    host = served(Host(left_supper(little), at("16:58")), until="serve")
    host.wish(LeaveOut("clear"))

    assert put_away(host, "19:30") == "Stew"

    assert [(p.stood_minutes, p.limit_minutes) for p in reviewed(host).put_away] == [(40, 120)]


def test_a_clock_set_by_hand_takes_the_moment_along(little: RunSheet) -> None:
    """Put away at 20:15 after 85; at 20:20 the clock is set an hour ahead: it was 21:15, and 85 all the same."""
    host = JumpyHost(left_supper(little), at("16:58"))
    served(host)
    put_away(host, "20:15")
    host.at("20:20")
    host.clock.jumps(3600)

    present = host.evening.tick()

    assert present.state.put_away["Stew"] == at("21:15")
    assert [round(c.out_minutes, 3) for c in present.clocks] == [85]
    (found,) = reviewed(host).put_away
    assert (found.at, found.stood_minutes, found.over) == (at("21:15"), 85, False)


def test_set_back_it_is_the_same(little: RunSheet) -> None:
    clock = Jumping(at("16:58"))
    host = JumpyHost(left_supper(little), at("16:58"))
    host.clock = host.evening.clock = clock
    served(host)
    put_away(host, "20:15")
    clock.passes(-1800)
    clock.told = Jump(-1800, False)

    assert [(c.where, round(c.out_minutes, 3)) for c in host.evening.tick().clocks] == [("away", 85)]


def test_a_board_opened_again_knows_it(little: RunSheet) -> None:
    host = cleared(left_supper(little))
    put_away(host, "20:15")

    again = Evening(left_supper(little), Jumping(at("20:55")), Memory(), list(host.evening.told))

    assert [(c.where, round(c.out_minutes, 3)) for c in again.tick().clocks] == [("away", 85)]
    assert again.tick().clock_warned == ()


def test_look_back_tells_it_and_that_it_was_taken_back(little: RunSheet) -> None:
    host = cleared(left_supper(little))
    put_away(host, "20:15")
    host.at("20:16")
    host.wish(TakeBack())
    put_away(host, "20:17")

    told = happened(Viewer(host.evening.sheet), host.evening.told, host.clock.now(), only_yours=True)

    assert [f"{line.clock} {line.sign} {line.text}" for line in told][-3:] == [
        "20:15 ▣ put away: Stew leftovers (undone)",
        "20:16 ↶ undone: Stew leftovers put away",
        "20:17 ▣ put away: Stew leftovers",
    ]


def test_who_looks_on_is_told_of_no_key(little: RunSheet) -> None:
    host = cleared(left_supper(little))

    shown = Onlooker(host.evening.sheet).view(host.at("19:40"))

    assert [line.text for line in shown.keeping] == ["Stew leftovers: in the fridge, in shallow dishes, by 20:50"]


# --- the log -----------------------------------------------------------------------------------------------------
def test_the_log_takes_it_in_and_gives_it_back(little: RunSheet) -> None:
    """Schema, CSV, and without names: a course is called after a guest here."""
    sheet = left_supper(little)
    courses = tuple(msgspec.structs.replace(c, name="Stew for Maud") for c in sheet.courses)
    clocks = tuple(msgspec.structs.replace(c, course="Stew for Maud") for c in sheet.clocks)
    host = cleared(msgspec.structs.replace(sheet, courses=courses, clocks=clocks))
    put_away(host, "20:15")
    said = host.evening.told[-1]
    assert isinstance(said, LeftoversPutAway)

    contents = read_log(as_lines(host.evening.told), "evening")
    judge = jsonschema.Draft202012Validator(schema())
    line = json.loads(as_lines([said]))
    nameless = without_names(host.evening.told, ["Maud"], "guest", notes=True)

    assert [contents.opened, *contents.events] == host.evening.told
    assert judge.is_valid(line)
    assert not judge.is_valid({key: value for key, value in line.items() if key != "course"})
    assert f"evening,{said.n},2026-11-28T20:15:00Z,LeftoversPutAway,,,,,Stew for Maud," in as_csv([("evening", [said])])
    opened, again = nameless[0], nameless[-1]
    assert isinstance(opened, EveningOpened)
    assert isinstance(again, LeftoversPutAway)
    assert again.course == opened.sheet.clocks[0].course == "Stew for guest 1"


# --- the review --------------------------------------------------------------------------------------------------
def page_of(host: Host) -> str:
    return "\n".join("".join(text for text, _ in line) for line in closing(reviewed(host), 120))


def test_the_review_says_when_and_how_long_it_had_been_out(little: RunSheet) -> None:
    host = cleared(left_supper(little, sweet=40), until="take")
    put_away(host, "20:30")
    put_away(host, "20:35")

    form, page = review_form(reviewed(host)), page_of(host)

    assert form["put_away"] == [
        {"course": "Sweet", "at": "2026-11-28T20:30:00+00:00", "dish": "custard", "stood_minutes": 30,
         "limit_minutes": 40},
        {"course": "Stew", "at": "2026-11-28T20:35:00+00:00", "dish": "stew", "stood_minutes": 105,
         "limit_minutes": 120},
    ]  # fmt: skip
    assert form["put_away_not_told"] == []
    assert "Put away      Sweet, 20:30: custard had been out 30 of 40 min" in page
    assert "Stew, 20:35: stew had been out 105 of 120 min\n" in page
    assert shared.KEPT_TOO_LONG not in page
    assert "not told" not in page


def test_over_the_limit_is_told_with_the_caution_and_what_nobody_said_softly(little: RunSheet) -> None:
    """Put away at 21:00: 45 + 85 = 130."""
    host = cleared(left_supper(little, sweet=120), until="take")
    put_away(host, "21:00")
    host.wish(Close())

    found = closing(reviewed(host), 120)
    page = page_of(host)

    assert "Stew, 21:00: stew had been out 130 of 120 min, 10 min past it\n" in page
    assert shared.KEPT_TOO_LONG in page
    assert (("              ", "head"), ("not told: when what was left of Sweet was put away", "soft")) in found
    assert review_form(reviewed(host))["put_away_not_told"] == ["Sweet"]


def test_what_a_job_put_away_stands_there_too_and_of_the_dishes_the_one_out_longest(little: RunSheet) -> None:
    """20:00-20:10: 45 + 35 = 80; the rice with it has only an hour, and is 20 past it."""
    sheet = left_supper(little, away=True)
    rice = msgspec.structs.replace(sheet.clocks[0], dish="rice", limit_minutes=60)
    host = cleared(msgspec.structs.replace(sheet, clocks=(*sheet.clocks, rice)))
    host.at("20:00")
    host.answer("put away")
    host.at("20:10")
    host.answer("put away")

    assert [(p.course, p.dish, p.at, p.stood_minutes) for p in reviewed(host).put_away] == [
        ("Stew", "rice", at("20:10"), 80)
    ]


def test_nobody_said_is_told_of_once_it_is_cleared_and_no_job_is_to_come(little: RunSheet) -> None:
    host = served(Host(left_supper(little), at("16:58")), until="serve")
    assert reviewed(host).not_told == ()
    host.at("19:30")
    host.wish(Settle("clear"))
    assert reviewed(host).not_told == ("Stew",)

    waiting = cleared(left_supper(little, away=True))
    assert reviewed(waiting).not_told == ()
    waiting.wish(Close())
    assert reviewed(waiting).not_told == ("Stew",)


def test_without_clocks_nothing_is_said_of_it(little: RunSheet) -> None:
    host = cleared(little)
    host.wish(Close())

    assert (reviewed(host).put_away, reviewed(host).not_told) == ((), ())
    assert "Put away" not in page_of(host)
