"""The first screen of an evening looked back on fits a terminal, with one cause a late course, in a line."""

import dataclasses
from datetime import timedelta

import pytest

from board.base import words as shared
from board.base.clock import StoppedClock
from board.evening.events import EveningOpened
from board.evening.state import Note
from board.evening.wishes import Say
from board.output import words
from board.output.evenings import odds_lines
from board.output.first_screen import LINES, first_screen
from board.rehearsal.draw import draw_night
from board.rehearsal.player import play
from board.review.looked_back import LookedBack
from board.review.measure import measured
from board.review.trace import answered_late, away_planned_and_actual, traced
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet
from tests.examples import first

WIDTH = 80


def looked_back(sheet: RunSheet, mishaps: str, seed: int, *, until: int | None = None) -> LookedBack:
    """An evening of the sheet as it went; `until`: only so many of its answers."""
    clock = StoppedClock(min(slot.start for slot in sheet.slots) - timedelta(minutes=5))
    evening = unlogged_evening(sheet, clock, rehearsal=False)
    night = draw_night(sheet, mishaps, seed)  # type: ignore[arg-type]  # one of its three words
    for number, _ in enumerate(play(evening, clock, night)):
        if until is not None and number >= until:
            break
    opened = evening.told[0]
    assert isinstance(opened, EveningOpened)
    state = evening.state
    return LookedBack(
        date=sheet.date,
        review=measured(state, opened),
        traced=tuple(traced(state)),
        answers=tuple(answered_late(state)),
        away=away_planned_and_actual(state),
    )


@pytest.mark.parametrize(
    ("mishaps", "seed", "until"), first(1, [("rough", 3, 120), ("calm", 1, None), ("rough", 3, None)])
)
def test_a_good_a_bad_and_a_broken_evening_fit_one_screen(
    lantern_sheet: RunSheet, mishaps: str, seed: int, until: int | None
) -> None:
    evening = looked_back(lantern_sheet, mishaps, seed, until=until)
    shown = [line for line, _ in first_screen(evening, "night.jsonl", (), WIDTH)]

    assert len(shown) <= LINES
    assert max(map(len, shown[:-1])) <= WIDTH
    for course in evening.review.courses:
        assert any(line.startswith(course.name) for line in shown)
    assert "night.jsonl --all" in shown[-1]


@pytest.mark.slow
def test_each_late_course_has_one_line_of_causes_below_it(lantern_sheet: RunSheet) -> None:
    evening = looked_back(lantern_sheet, "rough", 3)
    shown = [line for line, _ in first_screen(evening, "night.jsonl", (), WIDTH)]

    assert len(evening.traced) >= 3
    for each in evening.traced:
        below = shown[next(n for n, line in enumerate(shown) if line.startswith(each.course)) + 1]
        heaviest = max(each.links, key=lambda link: link.minutes)
        assert below.startswith("  ")
        assert heaviest.slot.name in below or words.THE_GUESTS in below or words.as_course("")[:3] in below


@pytest.mark.slow
def test_what_an_earlier_course_has_said_is_not_said_again(lantern_sheet: RunSheet) -> None:
    evening = looked_back(lantern_sheet, "rough", 3)
    first, second = next(each for each in evening.traced if len(each.links) > 1), evening.traced[-1]
    assert second.links[: len(first.links)] == first.links
    shown = [line for line, _ in first_screen(evening, "night.jsonl", (), WIDTH)]
    below = shown[next(n for n, line in enumerate(shown) if line.startswith(second.course)) + 1]

    assert below.startswith("  as ")
    assert first.links[0].slot.name not in below


@pytest.mark.slow
def test_many_notes_are_counted_and_the_screen_holds(lantern_sheet: RunSheet) -> None:
    evening = looked_back(lantern_sheet, "rough", 3)
    notes = tuple(Note(n, evening.review.began, f"note {n}", None) for n in range(40))
    noted = dataclasses.replace(evening, review=dataclasses.replace(evening.review, notes=notes))
    shown = [line for line, _ in first_screen(noted, "night.jsonl", (), WIDTH)]

    assert len(shown) <= LINES
    assert any(line.strip() == words.more_notes(37) for line in shown)


def test_what_was_only_said_afterwards_is_no_verdict(lantern_sheet: RunSheet) -> None:
    """The board opened when all was over, and the host said it went as planned."""
    clock = StoppedClock(max(slot.end for slot in lantern_sheet.slots) + timedelta(minutes=30))
    evening = unlogged_evening(lantern_sheet, clock, rehearsal=False)
    assert evening.wish(Say(evening.behind())) is None
    opened, state = evening.told[0], evening.state
    assert isinstance(opened, EveningOpened)
    review = measured(state, opened)
    back = LookedBack(
        date=lantern_sheet.date, review=review, traced=tuple(traced(state)), answers=tuple(answered_late(state)),
        away=away_planned_and_actual(state),
    )  # fmt: skip

    shown = "\n".join(line for line, _ in first_screen(back, "night.jsonl", (), WIDTH))

    assert all(course.served is not None and course.late_minutes is None for course in review.courses)
    assert shown.count(shared.ONLY_SAID) == len(review.courses)
    assert shared.closing_late(0) not in shown
    assert "in the kitchen" not in shown
    assert odds_lines(dataclasses.replace(back, chances={c.name: 0.9 for c in review.courses})) == []
