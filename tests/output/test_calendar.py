"""The calendar file against RFC 5545: read line by line by a reader of this file's own, and by the icalendar package
(which is lenient). Sections named beside a test are the RFC's, from memory; times in Berlin are recomputed with
dateutil's own zone reader.
"""

import re
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import icalendar
import msgspec
import pytest
from dateutil import tz
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from board.base.plain import one_line
from board.output import words
from board.output.calendar import calendar, is_calendar
from board.sheet.run_sheet import Attended, CourseSlot, Dependency, RunSheet, Slot
from tests.conftest import slot

STAMP = datetime(2026, 11, 20, 12, 0, 30, 999, tzinfo=UTC)
BERLIN = tz.gettz("Europe/Berlin")


@dataclass
class Part:
    """A component as it stands in the file: its properties in order, and what lies inside it."""

    name: str
    lines: list[tuple[str, str, str]] = field(default_factory=list)  # name, parameters, value as written
    inside: list["Part"] = field(default_factory=list)

    def all(self, name: str) -> list[str]:
        return [value for own, _, value in self.lines if own == name]

    def one(self, name: str) -> str:
        (value,) = self.all(name)
        return value

    def text(self, name: str) -> str:
        """A TEXT value unescaped (3.3.11), in one pass."""
        return re.sub(r"\\(.)", lambda m: "\n" if m[1] in "nN" else m[1], self.one(name))


_LINE = re.compile(r"([A-Z0-9-]+)((?:;[A-Z0-9-]+=[^;:\"]+)*):(.*)", re.DOTALL)


def parts_of(data: bytes) -> Part:
    """3.1: lines end in CRLF, none is longer than 75 octets, and a folded one goes on after one space."""
    assert data.endswith(b"\r\n")
    rows = data[:-2].split(b"\r\n")
    assert b"\n" not in b"".join(rows)
    assert b"\r" not in b"".join(rows)
    assert max(len(row) for row in rows) <= 75
    for row in rows:
        row.decode()  # no character is cut in two
    lines: list[str] = []
    for row in rows:
        if row.startswith(b" "):
            lines[-1] += row[1:].decode()
        else:
            lines.append(row.decode())
    open_parts = [Part("")]
    for line in lines:
        match = _LINE.fullmatch(line)
        assert match, line
        name, parameters, value = match.groups()
        if name == "BEGIN":
            made = Part(value)
            open_parts[-1].inside.append(made)
            open_parts.append(made)
        elif name == "END":
            assert open_parts.pop().name == value
        else:
            open_parts[-1].lines.append((name, parameters, value))
    (root,) = open_parts
    (whole,) = root.inside
    return whole


def expect_required(whole: Part) -> None:
    """3.6, 3.6.1, 3.6.6: what must be there, and what must not be there twice or together."""
    assert whole.name == "VCALENDAR"
    assert whole.one("VERSION") == "2.0"
    assert whole.one("PRODID")
    assert whole.all("METHOD") == []
    uids = [event.one("UID") for event in whole.inside]
    assert len(set(uids)) == len(uids)
    for event in whole.inside:
        assert event.name == "VEVENT"
        assert re.fullmatch(r"\d{8}T\d{6}Z", event.one("DTSTAMP"))
        assert re.fullmatch(r"\d{8}T\d{6}Z", event.one("DTSTART"))
        assert len(event.all("DTEND")) <= 1
        assert event.all("DURATION") == []
        assert all(event.one("DTSTART") < end for end in event.all("DTEND"))
        assert 0 <= int(event.one("SEQUENCE")) < 2**31
        assert event.one("SUMMARY")
        for alarm in event.inside:
            assert alarm.name == "VALARM"
            assert alarm.one("ACTION") == "DISPLAY"
            assert alarm.one("DESCRIPTION")
            ((_, parameters, trigger),) = [line for line in alarm.lines if line[0] == "TRIGGER"]
            assert (parameters, trigger) == ("", "-PT15M") or (
                parameters == ";VALUE=DATE-TIME" and re.fullmatch(r"\d{8}T\d{6}Z", trigger)
            )


def named(whole: Part, words: str) -> list[Part]:
    return [event for event in whole.inside if words in event.text("SUMMARY")]


def moment(text: str) -> datetime:
    return datetime.strptime(text, "%Y%m%dT%H%M%SZ").replace(tzinfo=UTC)


def work(name: str, start: datetime, minutes: int, who: str = "host", **more: object) -> Slot:
    """A step with hands on it all the time."""
    end = start + timedelta(minutes=minutes)
    parts = (Attended(start, end, who, "all"),)
    return Slot(id=name, named=name, kind="step", lane="worktop", start=start, end=end, attended=parts, **more)  # type: ignore[arg-type]


def sheet_of(*slots: Slot, zone: str = "Europe/Berlin", date: str = "2026-10-25", plan: str = "Supper") -> RunSheet:
    arrive = max(s.end for s in slots)
    return RunSheet(plan=plan, zone=zone, digest="0" * 64, date=date, arrive=arrive, courses=(), slots=slots)


def test_the_bundled_plans_file_holds_all_that_must_be_there(lantern_sheet: RunSheet) -> None:
    data = calendar(lantern_sheet, STAMP)
    whole = parts_of(data)

    expect_required(whole)
    assert is_calendar(data)
    read = icalendar.Calendar.from_ical(data)
    assert len(read.walk("VEVENT")) == len(whole.inside)
    (arrive,) = named(whole, "guests arrive")
    assert moment(arrive.one("DTSTART")) == lantern_sheet.arrive
    assert {each.one("DTSTAMP") for each in whole.inside} == {"20261120T120030Z"}


def test_every_piece_of_hands_on_work_lies_in_just_one_event(lantern_sheet: RunSheet) -> None:
    read = icalendar.Calendar.from_ical(calendar(lantern_sheet, STAMP))
    spans = [
        (event.decoded("dtstart"), event.decoded("dtend"), str(event["description"]))
        for event in read.walk("VEVENT")
        if "(host)" in str(event["summary"])
    ]

    pieces = [(s, part) for s in lantern_sheet.slots for part in s.attended if part.end > part.start]
    assert len(pieces) > 40
    for own, part in pieces:
        assert [own.name in text for start, end, text in spans if start <= part.start and part.end <= end] == [True]


def test_an_event_begins_where_its_oven_is_heated_and_rings_before_that(lantern_sheet: RunSheet) -> None:
    read = icalendar.Calendar.from_ical(calendar(lantern_sheet, STAMP))
    work = [event for event in read.walk("VEVENT") if "(host)" in str(event["summary"])]
    dials = [slot for slot in lantern_sheet.slots if slot.kind in ("heat", "off")]

    assert {slot.kind for slot in dials} == {"heat", "off"}
    for dial in dials:
        local = dial.start.astimezone(ZoneInfo(lantern_sheet.zone))
        [event] = [each for each in work if f"{local:%H:%M}" in str(each["description"]) and dial.name in
                   str(each["description"]) and each.decoded("dtstart") <= dial.start
                   <= each.decoded("dtend", each.decoded("dtstart"))]  # fmt: skip
        assert any(alarm.decoded("trigger") < timedelta() for alarm in event.walk("VALARM")
                   if isinstance(alarm.decoded("trigger"), timedelta))  # fmt: skip


def at(hour: int, minute: int) -> datetime:
    return datetime(2026, 10, 25, hour, minute, tzinfo=UTC)


def test_heating_alone_before_the_work_moves_the_event_and_a_lone_switch_is_a_moment() -> None:
    heat = Slot(id="h", named="heat the oven", kind="heat", lane="oven", start=at(16, 0), end=at(16, 20))
    bake = msgspec.structs.replace(work("bake", at(16, 20), 5), waits=(Dependency("h", "end", 0, "heat"),))
    off = Slot(id="o", named="turn the oven off", kind="off", lane="oven", start=at(18, 0), end=at(18, 0),
               waits=(Dependency("bake", "end", 0, "order"),))  # fmt: skip
    bare = sheet_of(heat, bake, off, zone="UTC")
    first, second = named(parts_of(calendar(msgspec.structs.replace(bare, hands=("host",)), STAMP)), "(host)")

    assert (moment(first.one("DTSTART")), moment(first.one("DTEND"))) == (at(16, 0), at(16, 25))
    assert first.text("DESCRIPTION").startswith("16:00–16:20 heat the oven (Oven)")
    assert moment(second.one("DTSTART")) == at(18, 0)
    assert second.text("DESCRIPTION").startswith("18:00 turn the oven off (Oven)")
    assert not [line for line in second.lines if "DTEND" in str(line)]


def test_courses_stand_at_their_times_with_their_dishes(lantern_sheet: RunSheet) -> None:
    whole = parts_of(calendar(lantern_sheet, STAMP))

    for course in lantern_sheet.courses:
        (event,) = named(whole, f"Lantern supper: {course.name}")
        assert moment(event.one("DTSTART")) == course.served
        assert moment(event.one("DTEND")) == lantern_sheet.by_id()[course.clear].start
        dishes = {s.dish for s in lantern_sheet.slots if s.course == course.name and s.dish}
        assert set(event.text("DESCRIPTION").split("\n")) == dishes
        assert event.inside == []  # the work before it has the reminder


@pytest.mark.parametrize(
    ("date", "saturday"),
    [("2026-10-25", "20:00"), ("2026-03-29", "18:00")],
    ids=["the clocks go back", "the clocks go forward"],
)
def test_a_day_back_over_a_clock_change_keeps_the_local_time(date: str, saturday: str) -> None:
    """24 h back from Sunday 19:00 in Berlin: Saturday 20:00 in autumn, 18:00 in spring (zoneinfo; here dateutil)."""
    sunday = datetime.fromisoformat(f"{date}T19:00").replace(tzinfo=BERLIN).astimezone(UTC)
    made = sheet_of(work("stir the custard", sunday - timedelta(hours=24), 30), work("lay out", sunday, 20), date=date)

    whole = parts_of(calendar(made, STAMP))

    (ahead,) = named(whole, "make ahead")
    (day,) = named(whole, "in the kitchen")
    local = moment(ahead.one("DTSTART")).astimezone(BERLIN)
    assert local.strftime("%a %H:%M") == f"Sat {saturday}"
    assert ahead.text("DESCRIPTION").startswith(f"{saturday}–")
    assert moment(day.one("DTSTART")).astimezone(BERLIN).strftime("%a %H:%M") == "Sun 19:00"


def test_the_evening_before_is_at_seven_by_the_clock_on_either_side_of_a_change() -> None:
    """Work on Sunday 25 Oct 10:00 (winter time); the reminder falls on Saturday 19:00, which is summer time, 17:00Z."""
    sunday = datetime(2026, 10, 25, 9, 0, tzinfo=UTC)
    made = sheet_of(work("cut the leeks", sunday, 30), work("serve", sunday + timedelta(days=1), 5), date="2026-10-26")

    (ahead,) = named(parts_of(calendar(made, STAMP)), "make ahead")

    assert [alarm.one("TRIGGER") for alarm in ahead.inside] == ["20261024T170000Z", "-PT15M"]
    assert ahead.inside[0].text("DESCRIPTION") == "Tomorrow at 10:00: Supper: make ahead (host)"


def test_only_a_days_first_stretch_is_told_on_the_evening_before() -> None:
    morning = datetime(2026, 10, 23, 8, 0, tzinfo=UTC)
    made = sheet_of(
        work("cut the leeks", morning, 30),
        work("boil the eggs", morning + timedelta(minutes=59), 10),  # a pause of 29 min joins, one of 30 does not
        work("knead the dough", morning + timedelta(minutes=99), 10),
        work("peel", morning + timedelta(minutes=10), 10, who="Ines"),
        work("serve", morning + timedelta(days=2), 5),
    )

    whole = parts_of(calendar(made, STAMP))

    told = [(each.text("SUMMARY"), each.one("DTSTART")[9:13], len(each.inside)) for each in named(whole, "make ahead")]
    assert told == [
        ("Supper: make ahead (host)", "0800", 2),
        ("Supper: make ahead (Ines)", "0810", 1),
        ("Supper: make ahead (host)", "0939", 1),
    ]
    assert named(whole, "make ahead (host)")[0].one("DTEND")[9:13] == "0909"


def test_shopping_stands_by_itself_whoever_does_it() -> None:
    friday = datetime(2026, 10, 23, 8, 0, tzinfo=UTC)
    trip = work("buy the fish at the market", friday, 60)
    made = sheet_of(
        work("peel", friday - timedelta(minutes=20), 20), trip, work("serve", friday + timedelta(days=2), 5)
    )

    whole = parts_of(calendar(made, STAMP))

    (shopping,) = named(whole, "buy the fish")
    assert (shopping.one("DTSTART"), shopping.one("DTEND")) == ("20261023T080000Z", "20261023T090000Z")
    assert [alarm.one("TRIGGER") for alarm in shopping.inside] == ["-PT15M"]
    assert "fish" not in named(whole, "make ahead")[0].text("DESCRIPTION")


def test_past_midnight_the_evening_is_still_the_events() -> None:
    late = datetime(2026, 10, 24, 22, 50, tzinfo=UTC)  # 00:50 on Sunday; the event is on Saturday
    made = sheet_of(work("serve", late - timedelta(minutes=20), 10), work("brew", late, 10), date="2026-10-24")

    whole = parts_of(calendar(made, STAMP))

    assert named(whole, "make ahead") == []
    assert len(named(whole, "in the kitchen")) == 1


def test_what_a_host_wrote_stays_data() -> None:
    """Commas, semicolons, backslashes (also before n and N), and lines that would begin a component of their own."""
    names = [
        "salt, pepper; \\oil\\",
        r"fold at C:\new and C:\New, \, \;",
        "eggs\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:Free drinks",
        "cream\nATTENDEE:mailto:x\x0bY\x85Z\u2028W",
    ]
    start = datetime(2026, 10, 25, 9, 0, tzinfo=UTC)
    for plan, name in zip(names, reversed(names), strict=True):
        made = sheet_of(work(name, start, 20, who=plan), plan=plan)
        course = CourseSlot(name, made.arrive, made.arrive, "x", "x", 0)

        whole = parts_of(calendar(msgspec.structs.replace(made, courses=(course,)), STAMP))

        expect_required(whole)
        assert len(whole.inside) == 3
        (block,) = named(whole, "in the kitchen")
        assert block.text("SUMMARY") == f"{one_line(plan)}: in the kitchen ({one_line(plan)})"
        assert block.text("DESCRIPTION").split("\n")[0] == f"10:00–10:20 {one_line(name)} (Worktop)"
        assert named(whole, one_line(name))
        assert all(name in ("UID", "DTSTAMP", "SEQUENCE", "DTSTART", "DTEND", "SUMMARY", "DESCRIPTION")
                   for event in whole.inside for name, _, _ in event.lines)  # fmt: skip


@settings(deadline=None)
@given(st.text(min_size=1), st.text(min_size=1), st.text(min_size=1))
def test_whatever_the_names_lines_fold_by_octets_and_read_back(plan: str, who: str, name: str) -> None:
    assume(not words.CALENDAR_SHOPPING.search(name))  # shopping is an entry of its own
    start = datetime(2026, 10, 25, 9, 0, tzinfo=UTC)

    data = calendar(sheet_of(work(name, start, 20, who=who), plan=plan), STAMP)

    whole = parts_of(data)
    expect_required(whole)
    (block,) = [event for event in whole.inside if event.all("DESCRIPTION")]
    assert block.text("SUMMARY") == f"{one_line(plan)}: in the kitchen ({one_line(who)})"
    assert one_line(name) in block.text("DESCRIPTION")
    assert len(icalendar.Calendar.from_ical(data).walk("VEVENT")) == 2


def test_long_lines_of_wide_signs_fold_between_characters() -> None:
    start = datetime(2026, 10, 25, 9, 0, tzinfo=UTC)
    name = "Käsespätzle für die Gäste 🧀🥔🧅 " * 12

    whole = parts_of(calendar(sheet_of(work(name, start, 20), plan="Größte Jause 🕯️"), STAMP))

    (block,) = named(whole, "in the kitchen")
    assert one_line(name) in block.text("DESCRIPTION")


def test_uids_stay_and_sequence_rises_when_times_change(lantern_sheet: RunSheet) -> None:
    hour = timedelta(hours=1)

    def later(s: Slot) -> Slot:
        parts = tuple(msgspec.structs.replace(p, start=p.start + hour, end=p.end + hour) for p in s.attended)
        return msgspec.structs.replace(s, start=s.start + hour, end=s.end + hour, attended=parts)

    moved = msgspec.structs.replace(
        lantern_sheet,
        slots=tuple(later(s) for s in lantern_sheet.slots),
        courses=tuple(msgspec.structs.replace(c, served=c.served + hour) for c in lantern_sheet.courses),
        arrive=lantern_sheet.arrive + hour,
    )

    first = parts_of(calendar(lantern_sheet, STAMP))
    again = parts_of(calendar(lantern_sheet, STAMP + timedelta(seconds=5)))
    later_one = parts_of(calendar(moved, STAMP + timedelta(days=1)))

    def by_uid(whole: Part, name: str) -> dict[str, str]:
        return {event.one("UID"): event.one(name) for event in whole.inside}

    assert by_uid(first, "DTSTART") == by_uid(again, "DTSTART")
    assert by_uid(first, "SUMMARY") == by_uid(later_one, "SUMMARY")
    for uid, begins in by_uid(later_one, "DTSTART").items():
        assert moment(begins) == moment(by_uid(first, "DTSTART")[uid]) + hour
        assert int(by_uid(first, "SEQUENCE")[uid]) < int(by_uid(again, "SEQUENCE")[uid])


def test_an_event_a_week_later_keeps_its_uids_and_another_event_has_others(little: RunSheet) -> None:
    week = timedelta(days=7)
    slots = tuple(
        msgspec.structs.replace(
            each,
            start=each.start + week,
            end=each.end + week,
            attended=tuple(
                msgspec.structs.replace(part, start=part.start + week, end=part.end + week) for part in each.attended
            ),
        )
        for each in little.slots
    )
    date = (datetime.fromisoformat(little.date) + week).date().isoformat()
    later = msgspec.structs.replace(little, date=date, arrive=little.arrive + week, slots=slots)

    assert _uids(calendar(later, STAMP)) == _uids(calendar(little, STAMP))
    assert not _uids(calendar(msgspec.structs.replace(little, plan="Other"), STAMP)) & _uids(calendar(little, STAMP))


def test_what_is_no_more_is_sent_as_cancelled_and_rings_no_more(little: RunSheet) -> None:
    """STATUS:CANCELLED: RFC 5545, 3.8.1.11; a higher SEQUENCE: 3.8.7.4."""
    before = calendar(little, STAMP)
    bare = msgspec.structs.replace(little, slots=())
    after = calendar(bare, STAMP + timedelta(hours=1), before)

    gone = [each for each in _events(after) if each.get("status") == "CANCELLED"]
    assert {str(each["uid"]) for each in gone} == _uids(before) - _uids(calendar(bare, STAMP))
    assert gone
    old = {str(each["uid"]): each for each in _events(before)}
    for each in gone:
        assert each["dtstart"].dt == old[str(each["uid"])]["dtstart"].dt
        assert each["sequence"] > old[str(each["uid"])]["sequence"]
        assert not each.subcomponents


def test_a_file_of_another_event_cancels_nothing(little: RunSheet) -> None:
    other = calendar(msgspec.structs.replace(little, plan="Other"), STAMP)

    assert b"CANCELLED" not in calendar(little, STAMP, other)


def _events(data: bytes) -> list[icalendar.Event]:
    return list(icalendar.Calendar.from_ical(data).walk("VEVENT"))


def _uids(data: bytes) -> set[str]:
    return {str(each["uid"]) for each in _events(data)}


def test_a_moment_has_no_end_and_a_course_cleared_at_once_neither(little: RunSheet) -> None:
    clear = slot("clear", "19:00", "19:05", kind="clear", lane="front-of-house", course="Stew")
    slots = tuple(clear if s.id == "clear" else s for s in little.slots)

    whole = parts_of(calendar(msgspec.structs.replace(little, slots=slots), STAMP))

    expect_required(whole)
    for event in (*named(whole, "guests arrive"), *named(whole, "Little supper: Stew")):
        assert event.all("DTEND") == []
