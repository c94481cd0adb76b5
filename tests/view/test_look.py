"""What looking back shows, in words; and the closing page with its bars, reckoned by hand."""

from datetime import timedelta
from zoneinfo import ZoneInfo

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from board.base import words as shared
from board.evening.events import EveningOpened
from board.evening.wishes import Close, Done, Later, LeaveOut, Push, Settle, TakeBack, TakeReading, Wish, WriteNote
from board.output.review import review_form
from board.review.measure import Review, measured
from board.sheet.run_sheet import Keeping, RunSheet
from board.view import words as view_words
from board.view.bars import TAIL_WIDTH, Chart, Span
from board.view.board import Viewer
from board.view.closing import closing
from board.view.look import about, happened, step_rows
from board.view.reading import reading_said
from board.view.wrap_words import cut, pad, wrap_words
from tests.conftest import Host, at


def evening(host: Host) -> Host:
    """Chop took 5 min more, the stew was read at 71 and 75 °C and stood, the sauce was left out; not cleared."""
    host.at("17:00")
    host.answer("chop")
    host.at("17:25")
    host.answer("chop")
    host.at("17:30")
    host.wish(Later("stew", "start"))
    host.at("17:35")
    host.answer("stew")
    host.at("18:30")
    host.wish(Settle("arrive"))
    host.at("18:35")
    host.wish(LeaveOut("sauce"))
    host.wish(TakeReading("stew", 71.0))
    host.at("18:38")
    host.wish(TakeReading("stew", 75.0))
    host.answer("stew")
    host.wish(WriteNote("thin", "stew"))
    host.at("18:55")
    host.wish(Done("serve", "start"))
    host.at("19:06")
    host.wish(Done("serve", "end"))
    host.wish(WriteNote("hm"))
    host.wish(TakeBack())
    return host


def told(host: Host, *, only_yours: bool = False) -> list[str]:
    shown = happened(Viewer(host.evening.sheet), host.evening.told, host.clock.now(), only_yours=only_yours)
    return [f"{line.clock} {line.sign} {line.text}" for line in shown]


def test_every_kind_of_thing_is_told_in_words(host: Host) -> None:
    lines = told(evening(host))

    for expected in (
        "16:58 ⌂ the board was opened",
        "17:00 ◤ called: Chop",
        "17:00 ◤ begun: chop",
        "17:25 ◢ done: chop",
        "17:30 ↻ later: stew, again in 5 min",
        "18:35 ╱ left out: sauce",
        "18:35 ╽ stew: core 71 °C (159.8 °F), 3 °C below the 74 wanted",
        "18:35 ↻ later: stew, again in 3 min",
        "18:38 ╽ stew: core 75 °C (167 °F), 74 wanted",
        "18:38 ¶ note on stew: thin",
        "19:06 ¶ note: hm (undone)",
        "19:06 ↶ undone: the note",
    ):
        assert expected in lines, expected
    assert lines == sorted(lines, key=lambda line: line[:5])


def test_what_the_host_did_leaves_out_what_the_board_said(host: Host) -> None:
    lines = told(evening(host), only_yours=True)

    assert not [line for line in lines if "called:" in line or "opened" in line]
    assert "17:00 ◤ begun: chop" in lines
    assert "19:06 ↶ undone: the note" in lines


def test_the_warning_a_push_and_the_end_are_told(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.wish(Push("Stew", 20))
    host.at("18:50")
    host.wish(Close())

    lines = told(host)

    assert "18:30 ⇒ Stew pushed 20 min" in lines
    assert "18:50 ! about to go past its best: stew" in lines
    assert "18:50 ⌂ the evening was ended" in lines


def test_how_each_step_stands_with_its_times(host: Host) -> None:
    rows = {row.slot: row for row in step_rows(Viewer(host.evening.sheet), evening(host).evening.tick())}

    assert (rows["chop"].planned, rows["chop"].actual) == ("17:00–17:20", "17:00–17:25")
    assert rows["sauce"].stands == "left out"
    assert (rows["serve"].stands, rows["serve"].actual) == ("finished", "18:55–19:06")
    assert (rows["clear"].stands, rows["clear"].actual) == ("to come", "")


def test_about_a_step_are_its_last_reading_and_its_notes(host: Host) -> None:
    viewer, present = Viewer(host.evening.sheet), evening(host).evening.peek()

    assert about(viewer, present, "stew") == "core 75 °C (167 °F) at 18:38, 74 wanted · 18:38 “thin”"
    assert about(viewer, present, "chop") == ""


def test_what_a_reading_means_is_said_as_it_is_taken(host: Host) -> None:
    viewer = Viewer(host.evening.sheet)
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    early = reading_said(viewer, host.at("17:50"), TakeReading("stew", 50.0))
    late = reading_said(viewer, host.at("18:29"), TakeReading("stew", 71.04))
    host.at("18:30")
    host.answer("stew")
    cooled = reading_said(viewer, host.at("18:40"), TakeReading("stew", 58.0))

    assert early == "core 50 °C (122 °F), 24 °C below the 74 wanted"
    assert late == "core 71 °C (159.9 °F), 3 °C below the 74 wanted; asked again in 3 min"
    # 60 °C (140 °F): USDA FSIS, keeping food hot at home.
    assert cooled == (
        "core 58 °C (136.4 °F), below the 60 °C (140 °F) of hot food: "
        "heat it to 74 °C (165 °F) all through, or leave it out"
    )


@pytest.mark.parametrize(
    ("lacks", "shown"),
    [(3.0, "3 °C"), (2.96, "3 °C"), (2.91, "3 °C"), (0.04, "0.1 °C"), (0.1, "0.1 °C"), (1.2, "1.2 °C")],
)
def test_what_is_lacking_is_never_rounded_to_nothing(lacks: float, shown: str) -> None:
    assert shared.missing(lacks) == shown


# --- the closing page --------------------------------------------------------------------------------------------
def looked_back(host: Host) -> Review:
    opened = next(e for e in host.evening.told if isinstance(e, EveningOpened))
    return measured(host.evening.state, opened)


def page(host: Host, width: int) -> list[str]:
    return ["".join(text for text, _ in line) for line in closing(looked_back(host), width)]


def test_the_page_tells_courses_what_ran_over_was_left_out_kept_read_and_noted(host: Host) -> None:
    host = evening(host)
    host.wish(Close())

    text = "\n".join(page(host, 80))

    assert "Little supper · Sat 28 Nov, a rehearsal\n" in text
    assert "from 17:00 to 19:06" in text
    assert "Stew 19:00 19:06 6 min late" in " ".join(text.split())
    assert "Ran over      chop: 25 min instead of 20" in text
    assert "              stew: 63 min instead of 60" in text
    assert "Left out      sauce" in text
    assert "Not reached   clear" in text
    assert "Kept longest  stew: 17 of 30 min (hot)" in text  # 18:38 to 18:55
    assert "Readings      stew, 18:35: core 71 °C (159.8 °F), 3 °C below the 74 wanted" in text
    assert "Notes         18:38 (stew) thin" in text
    assert "hm" not in text


def test_before_the_end_the_page_says_so_far_and_counts_nothing_as_not_reached(host: Host) -> None:
    text = "\n".join(page(evening(host), 80))

    assert "so far" in text
    assert shared.REVIEW_NOT_REACHED not in text


def test_what_was_begun_and_never_ended_was_reached(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.at("18:00")
    host.wish(Close())
    text = "\n".join(page(host, 80))

    assert "Left open     stew" in text
    assert "Not reached   guests" not in text
    assert "stew" not in text[text.index("Not reached") : text.index("Left open")]


def test_what_stood_too_long_says_by_how_much(host: Host) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew"), ("18:35", "sauce")):
        host.at(clock)
        host.answer(id_)
    host.wish(Settle("arrive"))
    host.at("19:10")
    host.wish(Done("sauce", "end"))
    host.wish(Done("serve", "start"))

    kept = looked_back(host).kept_longest()

    assert (kept[0].slot.id, kept[0].stood_minutes, kept[0].limit_minutes) == ("stew", 40, 30)
    assert "Kept longest  stew: 40 of 30 min (hot), 10 min past it" in "\n".join(page(host, 80))
    whole = " ".join("\n".join(page(host, 80)).split())
    assert view_words.KEPT_PAST_BEST in whole
    assert "throw" not in whole


@pytest.mark.parametrize(
    ("keeping", "safety"),
    [
        (Keeping(30, "hot"), False),
        (Keeping(30, "room"), False),
        (Keeping(30, "room", exposed=True), True),
        (Keeping(24 * 60, "fridge"), True),
        (Keeping(4 * 60, "fridge"), False),
    ],
)
def test_to_throw_it_out_is_said_only_where_it_could_do_harm(little: RunSheet, keeping: Keeping, safety: bool) -> None:
    """12 minutes past: potatoes kept hot are poor, not dangerous; custard on the bench is. Common practice, no source;
    the two hours are the rule sets'."""
    slots = tuple(msgspec.structs.replace(s, keeping=keeping) if s.id == "stew" else s for s in little.slots)
    sheet = msgspec.structs.replace(little, slots=slots)
    host = Host(sheet, at("16:58"))
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.clock.set(at("18:30") + timedelta(minutes=keeping.minutes + 12))

    [line] = [each for each in Viewer(sheet).view(host.evening.tick()).keeping if each.text.startswith("stew")]

    assert line.text.startswith("stew: 12:00 past its limit: when in doubt, throw it out" if safety
                                else "stew: 12:00 past its best: taste it, use it or leave it")  # fmt: skip
    assert line.presses


@pytest.mark.parametrize(
    ("wish", "told"),
    [
        (TakeReading("stew", 76.0), "heated again, core 76 °C (168.8 °F)"),
        (LeaveOut("stew"), "left out"),
        (None, "not heated again"),
    ],
)
def test_what_got_too_cold_is_in_the_review_and_what_came_of_it(host: Host, wish: Wish | None, told: str) -> None:
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"), ("18:30", "stew")):
        host.at(clock)
        host.answer(id_)
    host.at("18:33")
    host.wish(TakeReading("stew", 50.0))
    host.at("18:40")
    if wish is not None:
        assert host.wish(wish) is None

    review = looked_back(host)

    whole = " ".join("\n".join(page(host, 160)).split())
    assert f"stew, 18:33: core 50 °C (122 °F), too cold for food kept hot; {told}" in whole
    [form] = review_form(review)["too_cold"]
    assert (form["about"], form["celsius"]) == ("stew", 50.0)


def test_steps_have_bars_only_where_there_is_room(host: Host) -> None:
    host = evening(host)

    narrow, wide = "\n".join(page(host, 80)), "\n".join(page(host, 120))

    assert shared.CLOSING_AT_TABLE in narrow
    assert "Steps, Saturday 28 November" in wide
    assert "Steps," not in narrow


def test_the_first_page_fits_the_smallest_usual_window(host: Host) -> None:
    assert len(page(evening(host), 78)) <= 23


@pytest.mark.parametrize("width", [40, 58, 78, 100, 118, 158])
def test_no_line_is_wider_than_the_page(host: Host, width: int) -> None:
    nasty = "餃子 🥟 \x1b[2J " + "x" * 200
    host = evening(host)
    host.wish(WriteNote(nasty, "stew"))

    for line in page(host, width):
        assert cell_len(line) <= width, line
        assert "\x1b" not in line


UTC = ZoneInfo("UTC")


def drawn(chart: Chart, span: Span) -> str:
    return "".join(text for text, _ in chart.bar(span))


def test_a_bar_is_the_plan_and_marks_say_what_really_happened() -> None:
    """60 columns for 60 minutes, so a column is a minute."""
    spans = [
        Span("a", (at("18:00"), at("18:20")), at("18:10"), at("18:30")),
        Span("b", (at("18:30"), at("19:00"))),
    ]
    chart = Chart(spans, 60 + 10 + TAIL_WIDTH, 10, UTC)

    assert drawn(chart, spans[0]) == "▬" * 10 + "╟" + "▬" * 9 + " " * 9 + "╢" + " " * 30
    assert chart.bar(spans[0])[1] == ("╟", "actual")
    assert spans[0].later_minutes == 10
    assert chart.bar(spans[1]) == ((" " * 30, None), ("▬" * 30, "planned"))
    assert spans[1].later_minutes is None
    assert chart.times() == " " * 10 + "18:00" + " " * 10 + "18:15" + " " * 10 + "18:30" + " " * 10 + "18:45"


@pytest.mark.parametrize(
    ("began", "ended", "expected"),
    [
        ("18:05", None, "▬▬▬▬▬╟▬▬▬▬" + " " * 50),  # not ended
        ("18:00", "18:10", "╟▬▬▬▬▬▬▬▬╢" + " " * 50),  # on the minute
        ("18:20", "18:30", "▬" * 10 + " " * 10 + "╟" + " " * 8 + "╢" + " " * 30),  # all of it after its time
        ("18:05", "18:05", "▬▬▬▬▬╫▬▬▬▬" + " " * 50),  # of no time
        ("19:00", "19:00", "▬" * 10 + " " * 49 + "╫"),  # of no time, at the very end of the scale
        ("18:05", "19:20", "▬▬▬▬▬╟▬▬▬▬" + " " * 49 + "⇢"),  # ended past the scale
        ("19:10", "19:20", "▬" * 10 + " " * 49 + "⇢"),  # began past the scale
    ],
)
def test_every_row_reads_right(began: str, ended: str | None, expected: str) -> None:
    scale = Span("a", (at("18:00"), at("19:00")))
    row = Span("b", (at("18:00"), at("18:10")), at(began), at(ended) if ended else None, runs_off=True)

    assert drawn(Chart([scale, row], 60 + 10 + TAIL_WIDTH, 10, UTC), row) == expected


def test_work_planned_to_take_no_time_is_still_seen() -> None:
    spans = [Span("a", (at("18:00"), at("19:00"))), Span("b", (at("19:00"), at("19:00")))]

    assert drawn(Chart(spans, 60 + 10 + TAIL_WIDTH, 10, UTC), spans[1]) == " " * 59 + "▬"


def test_the_end_of_a_row_says_how_much_later_it_ended(host: Host) -> None:
    lines = page(evening(host), 120)
    steps = lines[next(n for n, line in enumerate(lines) if line.startswith("Steps")) :]
    tails = {line.split("  ")[0]: line[-8:].strip() for line in steps}

    assert tails["chop"].endswith("+5 min")
    assert tails["stew"].endswith("+8 min")
    assert not tails["sauce"].endswith("min")  # left out
    course = next(line for line in lines if line.startswith("Stew ") and "▬" in line)
    assert course.endswith(" ◧")  # on the table still


def test_times_stand_at_whole_quarters_whenever_the_chart_begins() -> None:
    chart = Chart([Span("a", (at("17:52"), at("18:52")))], 60 + 10 + TAIL_WIDTH, 10, UTC)

    assert chart.times().index("18:00") == 10 + 8


def test_what_runs_on_overnight_does_not_stretch_the_scale() -> None:
    spans = [Span("a", (at("18:00"), at("19:00"))), Span("night", (at("18:30"), at("23:00")), runs_off=True)]

    assert drawn(Chart(spans, 60 + 10 + TAIL_WIDTH, 10, UTC), spans[1]) == " " * 30 + "▬" * 29 + "⇢"


ROW = st.tuples(st.integers(0, 600), st.integers(0, 300), st.integers(-60, 60), st.booleans())


@given(st.tuples(ROW, ROW, ROW), st.integers(20, 160))  # of a set length: lists are drawn ten times slower
def test_every_bar_is_as_wide_as_the_scale_and_has_its_marks(
    rows: tuple[tuple[int, int, int, bool], ...], width: int
) -> None:
    def span(begin: int, length: int, slip: int, is_over: bool) -> Span:
        start = at("12:00") + timedelta(minutes=begin)
        began = start + timedelta(minutes=slip)
        ended = began + timedelta(minutes=length)
        return Span("x", (start, start + timedelta(minutes=length)), began, ended if is_over else None)

    spans = [span(*row) for row in rows]
    chart = Chart(spans, width, 8, UTC)

    for each in spans:
        text = drawn(chart, each)
        assert len(text) == chart.columns
        marks = "".join(sign for sign in text if sign in "╟╢╫⇢")
        assert marks in (("╟╢", "╫") if each.ended else ("╟",))
    assert cell_len(chart.times()) <= 8 + chart.columns


# --- review ------------------------------------------------------------------------------------------------------
def test_the_review_for_other_programs_has_readings_and_what_was_kept(host: Host) -> None:
    host = evening(host)
    opened = next(e for e in host.evening.told if isinstance(e, EveningOpened))

    form = review_form(measured(host.evening.state, opened))

    assert form["readings"] == [
        {"at": "2026-11-28T18:35:00+00:00", "about": "stew", "celsius": 71.0, "wanted_celsius": 74.0, "reached": False},
        {"at": "2026-11-28T18:38:00+00:00", "about": "stew", "celsius": 75.0, "wanted_celsius": 74.0, "reached": True},
    ]
    assert {"id": "stew", "stood_minutes": 17, "limit_minutes": 30, "where": "hot"} in form["kept"]


def test_a_sheet_kept_before_plans_had_a_unit_is_in_celsius(little: RunSheet) -> None:
    old = msgspec.json.decode(msgspec.json.encode(little))
    del old["fahrenheit"]

    assert msgspec.convert(old, RunSheet).fahrenheit is False


@given(st.text(max_size=120), st.integers(2, 40), st.integers(1, 5))
def test_folded_text_keeps_to_its_width_and_its_lines(text: str, width: int, most: int) -> None:
    lines = wrap_words(text, width, most)

    assert len(lines) <= most
    assert all(cell_len(line) <= width for line in lines)
    assert "".join(wrap_words(text, width)).replace(" ", "") == "".join(text.split())


@given(st.text(max_size=40), st.integers(1, 30))
def test_cut_and_padded_text_keeps_to_its_width(text: str, width: int) -> None:
    assert cell_len(cut(text, width)) <= width
    assert cell_len(pad(text, width)) == width
