"""The page of evenings looked back on: bars reckoned by hand, every step with its row, foreign text stays text."""

import re
import shutil
import subprocess
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree
from zoneinfo import ZoneInfo

import msgspec
import pytest

from board.base import words as shared
from board.evening.events import EveningOpened
from board.evening.wishes import Close, DropDish, Push, TakeReading, WriteNote
from board.output import words
from board.output.frame import is_page
from board.output.review_page import MOST_COLUMNS, page
from board.output.time_bars import Axis, bar
from board.review.looked_back import LookedBack
from board.review.measure import measured
from board.review.trace import Answer, answered_late, away_planned_and_actual, traced
from board.sheet.run_sheet import Keeping, RunSheet
from board.view.bars import Span
from tests.conftest import Host, at
from tests.evening.kitchens import with_dishes
from tests.view.test_look import evening

EVIL = "<script>alert('x')</script>\x1b[31m & \"so\"\u202e"
SHOWN = "<script>alert('x')</script>\ufffd[31m & \"so\"\ufffd"  # one sign for each that a terminal would obey
VOID = {"meta", "col"}


class Page(HTMLParser):
    """Tags, attributes, text, rows of cells; fails where tags are not well nested."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.rows: list[list[str]] = []
        self.text = ""
        self.feed(html)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_startendtag(tag, attrs)
        if tag not in VOID:
            self.open.append(tag)
        if tag == "tr":
            self.rows.append([])
        elif tag in ("td", "th"):
            self.rows[-1].append("")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if "style" in self.open:
            return
        self.text += data
        if {"td", "th"} & set(self.open):
            self.rows[-1][-1] += data

    def labels(self) -> list[str]:
        return [attrs["aria-label"] or "" for tag, attrs in self.tags if tag == "svg" and attrs.get("role") == "img"]


def looked_back(host: Host, dropped: str | None = None) -> LookedBack:
    state = host.evening.state
    opened = next(e for e in host.evening.told if isinstance(e, EveningOpened))
    return LookedBack(
        state.sheet.date, measured(state, opened), tuple(traced(state)), tuple(answered_late(state)),
        away_planned_and_actual(state), {"Stew": 0.5}, dropped,
    )  # fmt: skip


def rects(svg: str) -> list[tuple[float, float]]:
    """Start and width in per cent of each bar of a drawing, read as XML."""
    found = ElementTree.fromstring(svg).iter("rect")
    return [(float(r.attrib["x"][:-1]), float(r.attrib["width"][:-1])) for r in found]


def marks(svg: str) -> list[tuple[str, float]]:
    """What each mark says, and where it stands in per cent."""
    found = (each for each in ElementTree.fromstring(svg).iter("svg") if "x" in each.attrib)
    return [(m.attrib["class"], float(m.attrib["x"][:-1])) for m in found]


def drawing(html: str, name: str) -> str:
    """The bar of the row of that name."""
    row = next(row for row in html.split("<tr>") if row.startswith(f"<td>{name}</td>") and '<td class="bars">' in row)
    return row.split('<td class="bars">')[1].split("</td>")[0]


def span(planned: tuple[str, str], was: tuple[str, str] | None, *, runs_off: bool = False) -> Span:
    return Span("x", (at(planned[0]), at(planned[1])), *(map(at, was or ())), runs_off=runs_off)


# --- bars --------------------------------------------------------------------------------------------------------
def test_bar_and_marks_stand_where_a_hand_reckons_them() -> None:
    """A scale of 120 min from 17:00: 17:30 is a quarter of it; 17:45 to 18:33 are 45/120 and 48/120."""
    spans = [span(("17:00", "19:00"), None), span(("17:30", "18:00"), ("17:45", "18:33"))]
    axis = Axis(spans, UTC)

    assert (rects(bar(axis, spans[0], "")), marks(bar(axis, spans[0], ""))) == ([(0.0, 100.0)], [])
    assert rects(bar(axis, spans[1], "")) == [(25.0, 25.0)]
    assert marks(bar(axis, spans[1], "")) == [("began", 37.5), ("ended", 77.5)]
    assert [(mark.share, mark.clock) for mark in axis.marks] == [
        (0.0, "17:00"), (12.5, "17:15"), (25.0, "17:30"), (37.5, "17:45"), (50.0, "18:00"), (62.5, "18:15"),
        (75.0, "18:30"), (87.5, "18:45"), (100.0, "19:00"),
    ]  # fmt: skip


def test_what_took_no_time_is_still_seen_and_stays_on_the_scale() -> None:
    axis = Axis([span(("17:00", "19:00"), None)], UTC)
    row = bar(axis, span(("19:00", "19:00"), ("18:00", "18:00")), "")
    ((left, width),) = rects(row)

    assert width > 0
    assert left + width == pytest.approx(100)
    assert marks(row) == [("began", 50.0), ("ended", 50.0)]


def test_what_only_began_has_no_mark_at_an_end() -> None:
    axis = Axis([span(("17:00", "19:00"), None)], UTC)

    assert marks(bar(axis, Span("x", (at("17:00"), at("18:00")), at("17:30")), "")) == [("began", 25.0)]


def test_what_goes_on_overnight_ends_at_the_edge_with_an_arrow() -> None:
    spans = [span(("17:00", "18:00"), None), span(("17:30", "23:30"), ("17:45", "23:45"), runs_off=True)]
    drawn = bar(Axis(spans, UTC), spans[1], "")

    assert rects(drawn) == [(50.0, 50.0)]
    assert marks(drawn) == [("began", 75.0), ("goes-on", 100.0)]


@pytest.mark.parametrize(
    ("zone", "start", "end", "expected"),
    [
        # IANA time zone database: Europe/Berlin goes back at 3:00 on 2026-10-25, so its hour from 2 comes twice.
        ("Europe/Berlin", "2026-10-24T22:30", "2026-10-25T03:30", ["01:00", "02:00", "02:00", "03:00", "04:00"]),
        # The same: forward at 2:00 on 2026-03-29, so there is no such hour.
        ("Europe/Berlin", "2026-03-28T23:30", "2026-03-29T03:30", ["01:00", "03:00", "04:00", "05:00"]),
        # The same: Asia/Kolkata is five and a half hours ahead of UTC.
        ("Asia/Kolkata", "2026-11-28T12:15", "2026-11-28T15:45", ["18:00", "19:00", "20:00", "21:00"]),
    ],
)
def test_hours_are_those_of_the_plans_zone(zone: str, start: str, end: str, expected: list[str]) -> None:
    planned = (datetime.fromisoformat(start).replace(tzinfo=UTC), datetime.fromisoformat(end).replace(tzinfo=UTC))
    written = Axis([Span("x", planned)], ZoneInfo(zone)).marks
    hours = (planned[1] - planned[0]).total_seconds() / 3600

    assert [mark.clock for mark in written if mark.clock.endswith(":00")] == expected
    full = [mark.share for mark in written if mark.clock.endswith(":00")]
    assert all(b - a == pytest.approx(100 / hours) for a, b in pairwise(full))


@pytest.mark.parametrize("hours", [1, 3, 7, 13, 24, 36, 24 * 400])
def test_times_never_run_into_one_another(hours: int) -> None:
    planned = (at("17:10"), at("17:10") + timedelta(hours=hours))
    axis = Axis([Span("x", planned)], ZoneInfo("Europe/Berlin"))
    written = [mark.share for mark in axis.marks if mark.clock]

    assert 1 <= len(written) <= 9
    assert all(b - a >= 12 for a, b in pairwise(written))


# --- the page ----------------------------------------------------------------------------------------------------
def test_every_step_of_the_day_has_its_row_with_its_bar(host: Host) -> None:
    """Little supper: the scale goes from 17:00 to the planned clearing at 19:35, 155 minutes."""
    html = page([looked_back(evening(host))], "a4")
    read = Page(html)
    rows = {row[0]: row[1:6] for row in read.rows if len(row) == 8}
    later = {row[0]: row[7] for row in read.rows if len(row) == 8}

    assert list(rows) == [words.REVIEW_STEP, "Stew", *(s.name for s in host.evening.state.sheet.slots)]
    assert rows["stew"] == ["17:30–18:30", "17:35–18:38", "60", "63", "+5 min"]
    assert rows["sauce"] == ["18:35–18:45", "–", "10", "left out", "–"]
    assert rows["clear"] == ["19:30–19:35", "–", "5", "to come", "–"]
    assert rows["Stew"] == ["18:50–19:35", "18:55–", "45", "under way", "–"]  # it is not cleared
    assert rects(drawing(html, "stew")) == [(19.35, 38.71)]  # 30 and 60 of 155
    assert marks(drawing(html, "stew")) == [("began", 22.58), ("ended", 63.23)]  # 35 and 98 of 155
    assert marks(drawing(html, "sauce")) == []
    assert marks(drawing(html, "Stew")) == [("began", 74.19)]  # 115 of 155; on the table still
    assert (later["chop"], later["stew"], later["sauce"], later["Stew"]) == ("+5 min", "+8 min", "–", "–")
    assert "stew: planned 17:30–18:30; actual 17:35–18:38" in read.labels()
    assert len(read.labels()) == 1 + len(rows) - 1  # a scale, and a drawing a row


def test_all_the_review_says_is_on_the_page(little: RunSheet) -> None:
    host = evening(Host(little, at("16:58")))
    host.wish(WriteNote("salt it sooner", None))
    found = looked_back(host, "its last 12 bytes were left out")
    answers = tuple(Answer(little.slots[0], f"look-in {n}", n, at("18:00"), at("18:00")) for n in range(9, 2, -1))
    found = replace(found, answers=answers)
    text = " ".join(Page(page([found], "a4")).text.split())

    for told in (
        "Little supper · Sat 28 Nov, a rehearsal, so far",
        "2026-11-28 · from Sat 17:00 to Sat 19:06 · ",
        shared.away_was(*found.away),
        "its last 12 bytes were left out",
        "Sat 18:38 (stew) thin",
        "Sat 19:06 salt it sooner",
        "stew: 63 min instead of 60",
        "Left out sauce",
        "Not reached clear",
        "! stew, Sat 18:35: core 71 °C (159.8 °F), 3 °C below the 74 wanted",
        "stew: 17 of 30 min (hot)",
        "Stew: 50 % within 5 min; it was not",
        words.REVIEW_CAUSES,
        *(words.late_answer(each.slot.name, each.part, each.minutes) for each in answers),
    ):
        assert told in text, told
    assert shared.KEPT_TOO_LONG not in text


def test_stops_slips_pushes_and_what_stood_too_long_stand_out(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    for clock in ("17:00", "17:20"):
        host.at(clock)
        host.answer("chop")
    host.wish(Push("Stew", 10))
    host.at("17:40")
    host.answer("stew")
    host.wish(DropDish("Sauce", "Stew"))
    host.wish(Close())
    found = looked_back(host)
    chop = msgspec.structs.replace(found.review.kept[0].slot, keeping=Keeping(120, "room", exposed=True))
    kept = replace(found.review.kept[0], slot=chop, stood_minutes=140, limit_minutes=120)
    review = replace(found.review, kept=(kept,), stops=("stew: 60 °C is not enough",))
    html = page([replace(found, review=review)], "letter")
    read = Page(html)

    assert f"<strong>! {shared.closing_kept('chop', 140, 120, 'room')}</strong>" in html
    assert shared.KEPT_TOO_LONG in read.text
    assert f"{shared.STOPS_ACCEPTED}</h3>\n<ul><li>▲ stew: 60 °C is not enough" in html
    assert "Sat 17:40 Sauce dropped" in read.text
    assert next(row for row in read.rows if row[0] == "Stew")[-2:] == [words.NOT_SERVED, "+10 min"]
    assert "so far" not in read.text
    assert "size: letter" in html


def test_foreign_text_stays_text(little: RunSheet) -> None:
    named = tuple(msgspec.structs.replace(s, named=f"{EVIL}{s.id}") for s in with_dishes(little).slots)
    course = msgspec.structs.replace(little.courses[0], name=f"{EVIL}Stew")
    sheet = msgspec.structs.replace(little, plan=EVIL, slots=named, courses=(course,), stops=(EVIL,))
    host = evening(Host(sheet, at("16:58")))
    host.wish(WriteNote(EVIL.replace("\x1b", "").replace("\u202e", ""), "stew"))
    found = looked_back(host, EVIL)
    html = page([found, found], "a4")
    read = Page(html)

    assert not {"script", "img", "a", "link", "use"} & {tag for tag, _ in read.tags}
    assert f"{SHOWN}stew: planned 17:30–18:30; actual 17:35–18:38" in read.labels()
    assert f"({SHOWN}stew) <script>" in read.text
    assert not set("\x1b\u202e") & set(html)
    assert not re.search(r"<[^>]*\s(?:src|href|on\w+|style)=", html)
    assert is_page(html.encode())
    for svg in re.findall(r'<svg role="img".*?</svg>(?=</t[dh]>)', html):
        ElementTree.fromstring(svg)  # whole by another reader too


def test_several_evenings_come_in_one_table_first(host: Host) -> None:
    found = looked_back(evening(host))
    read = Page(page([found, found], "a4"))

    assert read.rows[0] == [words.LOG_DATE, words.LOG_PLAN, "Stew", words.EVENINGS_AWAY, words.EVENINGS_LATE_ANSWERS]
    assert read.rows[1] == read.rows[2]
    assert read.rows[1][:3] == ["2026-11-28", "Little supper", "+6 min"]
    assert len([tag for tag, _ in read.tags if tag == "section"]) == 3


def test_more_courses_than_fit_across_stand_in_one_column(host: Host) -> None:
    found = looked_back(evening(host))
    others: Sequence[LookedBack] = [
        replace(found, review=replace(found.review, courses=(replace(found.review.courses[0], name=f"Course {n}"),)))
        for n in range(MOST_COLUMNS)
    ]
    read = Page(page(others, "a4"))

    assert [len(row) for row in read.rows[: MOST_COLUMNS + 1]] == [5] * (MOST_COLUMNS + 1)
    assert read.rows[3][2] == "Course 2 +6 min"


def test_the_page_prints_in_a_browser_within_its_margins(host: Host, tmp_path: Path) -> None:
    """Chromium prints it to PDF; with names no line could hold, nothing is wider than the sheet of paper."""
    tools = [shutil.which(tool) for tool in ("chromium", "pdftotext")]
    if None in tools:
        pytest.skip("no chromium and pdftotext on this machine")
    browser, text = tools
    found = looked_back(evening(host))
    wide = replace(found, review=replace(found.review, plan="w" * 200))
    html, pdf = tmp_path / "page.html", tmp_path / "page.pdf"
    html.write_text(page([wide, found], "a4"), encoding="utf-8")
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                    f"--user-data-dir={tmp_path / 'profile'}", f"--print-to-pdf={pdf}", html.as_uri()],
                   check=True, capture_output=True, timeout=120)  # fmt: skip
    boxes = subprocess.run([text, "-bbox", str(pdf), "-"], check=True, capture_output=True, text=True).stdout
    widths = [float(x) for x in re.findall(r'<word [^>]*xMax="([\d.]+)"', boxes)]

    assert "17:35–18:38" in boxes
    assert max(widths) <= (210 - 14) / 25.4 * 72 + 1  # A4 less its margin, in points


@pytest.mark.parametrize("again", [None, 76.0])
def test_what_was_too_cold_stands_out_unless_it_was_heated_again(little: RunSheet, again: float | None) -> None:
    host = Host(with_dishes(little), at("16:58"))
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.at("18:33")
    host.wish(TakeReading("stew", 50.0))
    host.at("18:40")
    if again is not None:
        host.wish(TakeReading("stew", again))

    html = page([looked_back(host)], "letter")

    told = "stew, Sat 18:33: core 50 °C (122 °F), too cold for food kept hot"
    assert told in Page(html).text
    assert (f"<strong>! {told}" in html) is (again is None)
