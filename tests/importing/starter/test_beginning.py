"""A plan to start from: sound whatever the kitchen, the table and the names. The dishes are of our own invention."""

import os
import subprocess
import sys
from datetime import UTC, date, datetime
from pathlib import Path
from zoneinfo import available_timezones

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.app import new_plan as edge
from board.base.errors import Trouble
from board.base.plain import one_line
from board.checks.plan.every import check
from board.checks.sheet.every import safety_check
from board.importing.starter.answers import Answers, defaults, read_arrival, read_date, read_event, readers
from board.importing.starter.plan_text import plan_text
from board.plan.load import PlanFile, read_plan
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.examples import first, times

WEDNESDAY = date(2026, 11, 25)
NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


def answers(**more: object) -> Answers:
    usual = {"event": "Supper", "date": date(2026, 12, 5), "arrive": "18:30", "guests": 6, "ovens": 1, "rings": 4,
             "courses": 3, "zone": "Europe/Dublin"}  # fmt: skip
    return Answers(**{**usual, **more})  # type: ignore[arg-type]


def plan_of(given_answers: Answers) -> PlanFile:
    found = read_plan(plan_text(given_answers), "new.yaml")
    assert isinstance(found, PlanFile), "\n".join(snag.render() for snag in found)
    return found


@pytest.mark.parametrize("courses", first(2, [4, 7, 1, 2, 3, 5, 6]))
@pytest.mark.parametrize(("ovens", "rings"), [(1, 4), (2, 4), (0, 4), (1, 0), (0, 0), (0, 1), (1, 1)])
def test_every_number_of_courses_and_guests_is_sound_in_every_kitchen(courses: int, ovens: int, rings: int) -> None:
    for guests in range(4, 25) if (ovens, rings) == (1, 4) else (4, 13, 24):
        plan_file = plan_of(answers(courses=courses, ovens=ovens, rings=rings, guests=guests))

        assert check(plan_file) == []
        assert len(plan_file.plan.courses) == courses
        assert plan_file.plan.guest_count == guests + 1  # the host eats too
        assert len(plan_file.plan.kitchen.ovens) == ovens


@pytest.mark.parametrize("arrive", ["09:00", "12:30", "22:00"])
def test_any_hour_that_is_asked_for_is_sound(arrive: str) -> None:
    assert check(plan_of(answers(arrive=arrive, courses=7))) == []


@pytest.mark.parametrize(
    ("ovens", "rings", "guests", "courses"), [(1, 4, 6, 3), (2, 4, 24, 7)], ids=["the usual", "a full table"]
)
def test_its_timetable_holds_and_gives_nothing_up(ovens: int, rings: int, guests: int, courses: int) -> None:
    plan_file = plan_of(answers(ovens=ovens, rings=rings, guests=guests, courses=courses))

    sheet = make_sheet(plan_file, solve)

    assert validate(plan_file, sheet) == []
    assert sheet.given_up == ()
    assert [snag for snag in safety_check(plan_file, sheet) if snag.code != "table 6"] == []  # up a little soon


@settings(deadline=None, max_examples=times(25))
@given(st.text(max_size=200))
def test_an_events_name_is_data_whatever_it_is(name: str) -> None:
    try:
        event = read_event(name)
    except ValueError:
        assert not one_line(name) or len(one_line(name)) > 120
        return

    plan = plan_of(answers(event=event)).plan

    assert plan.event == event == one_line(name)
    assert plan.courses == plan_of(answers()).plan.courses


@pytest.mark.parametrize(
    "name", ["a: b", "'", '"', "# no", "- x", "{", "*a", "no", "12", "~", "2026-12-05", "x\ny: z", "\\n"]
)
def test_names_that_yaml_would_take_for_something_else(name: str) -> None:
    assert plan_of(answers(event=read_event(name))).plan.event == one_line(name)


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("sat", "2026-11-28"), ("Saturday", "2026-11-28"), ("wed", "2026-11-25"), ("tues", "2026-12-01"),
        ("2026-12-05", "2026-12-05"), ("5 Dec", "2026-12-05"), ("5. December", "2026-12-05"), ("Dec 5", "2026-12-05"),
        ("sat 5 dec", "2026-12-05"), ("5th of December, 2026", "2026-12-05"), ("December 5th", "2026-12-05"),
        ("1 March", "2027-03-01"), ("25 nov", "2026-11-25"), ("24 nov", "2027-11-24"), ("29 Feb", "2028-02-29"),
        ("31 Dec 2027", "2027-12-31"), ("today", "2026-11-25"), ("tomorrow", "2026-11-26"), (" Sat ", "2026-11-28"),
        ("Fri, 1 Jan", "2027-01-01"),
    ],
)  # fmt: skip
def test_days_as_people_write_them(said: str, day: str) -> None:
    """Wednesday 25 November 2026 is today; weekdays reckoned from a calendar of 2026."""
    assert read_date(said, WEDNESDAY).isoformat() == day


@pytest.mark.parametrize(
    "said",
    ["", "5/12", "05.12.", "12", "Dec", "31 Nov", "2026-13-01", "2026-11-24", "24 Nov 2026", "1999-01-01", "2099-01-01",
     "soon", "sat; rm", "5 Dec 99999", "30 Feb", "\x00", "9" * 5000, "saturn"],
)  # fmt: skip
def test_days_that_are_none_are_told(said: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        read_date(said, WEDNESDAY)


@settings(deadline=None, max_examples=times(50))
@given(st.text(max_size=30) | st.from_regex(r"[0-9]{1,4} ?[a-zA-Z]{1,4} ?[0-9]{0,6}"))
def test_whatever_is_answered_it_is_read_or_told(text: str) -> None:
    for name, read in readers(WEDNESDAY).items():
        try:
            found = read(text)
        except ValueError:
            continue
        assert check(plan_of(answers(**{name: found}))) == [] or name in ("date", "zone")


@pytest.mark.parametrize(
    ("said", "clock"), [("18:30", "18:30"), ("7 pm", "19:00"), ("9:00", "09:00"), ("22:00", "22:00"), ("noon", "12:00")]
)
def test_hours(said: str, clock: str) -> None:
    assert read_arrival(said) == clock


@pytest.mark.parametrize("said", ["8:59", "22:01", "18", "25:00", "midnight", ""])
def test_hours_that_will_not_do(said: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        read_arrival(said)


def test_the_usual_day_is_the_coming_saturday_and_never_today() -> None:
    assert defaults(WEDNESDAY, "UTC")["date"] == "2026-11-28"
    assert defaults(date(2026, 11, 28), "UTC")["date"] == "2026-12-05"
    assert "zone" not in defaults(WEDNESDAY, None)
    found = edge.gather({}, NOON, "UTC", None, print)
    assert plan_of(found).plan.guest_count == 7


def asked(*typed: str, zone: str | None = "Europe/Dublin", **given_options: str) -> tuple[Answers, list[str]]:
    """The answers, and all that was shown, when a host types these lines."""
    lines, shown = list(typed), []

    def ask(prompt: str) -> str:
        shown.append(prompt)
        if not lines:
            raise EOFError
        return lines.pop(0)

    return edge.gather(given_options, NOON, zone, ask, shown.append), shown


def test_enter_takes_what_stands_in_brackets() -> None:
    found, shown = asked(*[""] * 7)

    assert found == edge.gather({}, NOON, "Europe/Dublin", None, print)
    assert shown[1:3] == ["What is the evening called? [Supper] ", "On which day? [2026-11-28] "]
    assert len(shown) == 9  # the date is read back; the zone is the machine's, and not asked


def test_a_day_is_read_back_in_words() -> None:
    _, shown = asked("Feast", "5 dec", *[""] * 5)

    assert shown[shown.index("On which day? [2026-11-28] ") + 1] == "That is Saturday 5 December 2026."


@pytest.mark.parametrize(("typed", "zone"), [("", "Etc/UTC"), ("Europe/Berlin", "Europe/Berlin")])
def test_a_machine_in_no_place_is_told_and_asked_for_one_once(typed: str, zone: str) -> None:
    found, shown = asked(*[""] * 7, typed, zone="Etc/UTC")

    assert found.zone == zone
    assert sum("no place's time" in line for line in shown) == 1
    assert len([line for line in shown if "[Etc/UTC]" in line]) == 1


def test_a_wrong_answer_is_asked_again_with_what_is_wrong() -> None:
    found, shown = asked("Feast", "5/12", "5 dec", "3:00", "7 pm", "none", "0", "101", "9", "", "", "8", "2")

    assert (found.event, found.date, found.arrive, found.guests) == ("Feast", date(2026, 12, 5), "19:00", 9)
    assert (found.ovens, found.rings, found.courses) == (1, 4, 2)
    told = [line for line in shown if line.startswith("  ")]
    assert len(told) == 6
    assert told[0] == "  '5/12' is not a day; write for example sat, 5 Dec or 2026-12-05"
    assert told[-1] == "  '8' is not a number from 1 to 7"


def test_what_an_option_says_is_not_asked_and_an_unknown_zone_is() -> None:
    found, shown = asked("", "", "", "", "", "Mars", "Europe/Berlin", zone=None, guests="8", courses="1")

    assert (found.guests, found.courses, found.zone) == (8, 1, "Europe/Berlin")
    assert not any("courses" in line or "guests, " in line for line in shown)
    assert any("'Mars' is not a time zone" in line for line in shown)


def test_an_end_before_the_last_answer_writes_nothing() -> None:
    with pytest.raises(Trouble, match="nothing was written"):
        asked("Feast", "sat")


@pytest.mark.parametrize(
    ("option", "value"), [("date", "5/12"), ("guests", "-1"), ("zone", "Mars"), ("event", " "), ("arrive", "late")]
)
def test_a_wrong_option_is_told_by_its_name(option: str, value: str) -> None:
    with pytest.raises(Trouble, match=f"--{option}: ") as wrong:
        edge.gather({option: value}, NOON, "UTC", None, print)

    assert wrong.value.code == 64


def test_without_a_zone_and_nobody_to_ask_that_is_told() -> None:
    with pytest.raises(Trouble, match="--zone Europe/Dublin"):
        edge.gather({}, NOON, None, None, print)


def test_today_is_that_of_the_zone() -> None:
    late = datetime(2026, 11, 27, 23, 30, tzinfo=UTC)  # Saturday already in Berlin, Friday in UTC

    assert edge.gather({"zone": "Europe/Berlin", "date": "today"}, late, "UTC", None, print).date == date(2026, 11, 28)
    assert edge.gather({"date": "today"}, late, "UTC", None, print).date == date(2026, 11, 27)


def zone_told(setting: str) -> str:
    """In a process of its own: what a machine says once is kept."""
    code = "from board.app.new_plan import machine_zone; print(machine_zone())"
    env = {**os.environ, "TZ": setting, "PYTHONPATH": str(Path(__file__).parents[2])}
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=env)
    assert done.stderr == ""
    return done.stdout.strip()


@pytest.mark.parametrize("setting", ["Europe/Vienna", "UTC"])
def test_the_machines_zone_where_it_tells_one(setting: str) -> None:
    assert zone_told(setting) == setting


@pytest.mark.parametrize("setting", ["Nowhere/Land", "CET-1CEST,M3", ":/etc/hostname"])
def test_where_the_setting_names_no_zone_it_is_the_systems_or_none(setting: str) -> None:
    assert zone_told(setting) in {"None", *available_timezones()}
