"""When guests came and a course would have gone out but for the kitchen: by hand, on the little supper (guests 18:30,
course 19:00)."""

import msgspec

from board.evening.events import EveningOpened
from board.evening.wishes import DelayGuests, Lengthen, Push, Settle
from board.review.observe import observe
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at

COOKED = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("17:50", "stew"), ("18:10", "stew"))
GUESTS, COURSE = 18 * 60 + 30, 19 * 60


def came(host: Host) -> dict[str, int]:
    opened, *events = host.evening.told
    assert isinstance(opened, EveningOpened)
    return dict(observe(opened, events).came)


def cook(host: Host, *answers: tuple[str, str]) -> None:
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)


def test_all_on_time(host: Host) -> None:
    cook(host, *COOKED, ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"),
         ("18:50", "serve"), ("19:00", "serve"))  # fmt: skip

    assert came(host) == {"": GUESTS, "Stew": COURSE}


def test_guests_who_came_late_hold_up_the_course(host: Host) -> None:
    cook(host, *COOKED, ("18:30", "stew"))
    host.wish(DelayGuests(25))
    cook(host, ("18:35", "sauce"), ("18:45", "sauce"))
    host.at("18:55")
    host.wish(Settle("arrive"))
    cook(host, ("18:55", "serve"), ("19:05", "serve"))

    assert came(host) == {"": GUESTS + 25, "Stew": COURSE + 5}


def test_what_the_kitchen_held_up_is_not_the_courses_time(host: Host) -> None:
    cook(host, *COOKED)
    host.at("18:30")
    host.wish(Lengthen(("stew",), 15))
    host.answer("arrive")
    cook(host, ("18:35", "sauce"), ("18:45", "sauce"), ("18:55", "stew"), ("18:55", "serve"), ("19:05", "serve"))

    assert came(host)["Stew"] == COURSE


def test_a_course_that_the_host_put_off_is_wanted_later(host: Host) -> None:
    cook(host, *COOKED, ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"))
    host.wish(Push("Stew", 10))
    cook(host, ("19:00", "serve"), ("19:10", "serve"))

    assert came(host)["Stew"] == COURSE + 10


def test_a_timetable_that_has_it_late_counts(little: RunSheet) -> None:
    course = msgspec.structs.replace(little.courses[0], wanted=at("18:50"))
    host = Host(msgspec.structs.replace(little, courses=(course,)), at("16:58"))
    cook(host, *COOKED, ("18:30", "stew"), ("18:30", "arrive"), ("18:35", "sauce"), ("18:45", "sauce"),
         ("18:50", "serve"), ("19:00", "serve"))  # fmt: skip

    assert came(host)["Stew"] == COURSE  # ten after it is wanted
