"""The odds as a host reads them: honest figures, a picture that fits, words that are true."""

import io
import json

import msgspec
import pytest
from rich.console import Console

from board.odds.many import odds
from board.odds.result import Odds
from board.output import words
from board.output.odds import blocks, odds_form, print_odds
from board.output.tables import console
from board.sheet.run_sheet import Lasts, RunSheet
from tests.odds.little import Piece, fixed, sheet_of


def printed(found: Odds, width: int = 80) -> str:
    out = io.StringIO()
    print_odds(found, Console(file=out, width=width, highlight=False, markup=False))
    return out.getvalue()


@pytest.mark.parametrize(
    ("share", "text"),
    [(1.0, "over 99 %"), (0.9951, "over 99 %"), (0.994, "99 %"), (0.5, "50 %"), (0.006, "1 %"),
     (0.0049, "under 1 %"), (0.0, "under 1 %")],
)  # fmt: skip
def test_nothing_is_called_certain_that_was_drawn(share: float, text: str) -> None:
    assert words.chance(share, certain=False) == text


def test_what_cannot_vary_is_certain() -> None:
    assert words.chance(1.0, certain=True) == "100 %"
    assert words.chance(0.0, certain=True) == "0 %"


def test_a_plan_without_spreads_is_told_how_to_write_one() -> None:
    found = odds(sheet_of({"serve": Piece(0, fixed(3))}, wanted=3), 100)

    text = " ".join(printed(found).split())

    assert "100 %" in text
    assert "`takes: 10 to 15 to 20 min`" in text
    assert "│" not in text


def test_the_picture_stands_under_its_scale() -> None:
    """10 evenings at 0, 5 at +3, 1 at +8: columns a minute wide, the edge of on time after +5."""
    row = blocks({0: 10, 3: 5, 8: 1}, range(0, 11), 1)

    assert row == "█  ▄  │  ▁  "


def test_what_is_very_few_is_a_dot_and_what_lies_beyond_is_in_the_last_column() -> None:
    assert blocks({-1: 1, 0: 100, 40: 50}, range(-1, 7), 1) == "·█     │▄"


def test_columns_of_five_minutes_keep_the_edge_of_on_time() -> None:
    assert blocks({0: 4, 1: 2, 5: 2, 6: 4}, range(0, 4), 5) == "██│█ "


@pytest.mark.parametrize("width", [80, 100, 40])
def test_it_fits_the_terminal(lantern_sheet: RunSheet, width: int) -> None:
    text = printed(odds(lantern_sheet, 500), width)

    assert max(len(line) for line in text.splitlines()) <= width
    assert any(line.startswith("Main ") and "│" in line for line in text.splitlines())


def test_long_lateness_is_drawn_in_columns_of_five_minutes() -> None:
    pieces = {"roast": Piece(0, Lasts(10, 20, 400)), "serve": Piece(20, fixed(3), ["roast"])}

    text = printed(odds(sheet_of(pieces, wanted=23), 2_000))

    assert words.odds_picture(5).split(",")[1] in " ".join(text.split())
    assert max(len(line) for line in text.splitlines()) <= 80


def test_without_colour_nothing_is_lost(lantern_sheet: RunSheet, monkeypatch: pytest.MonkeyPatch) -> None:
    found = odds(lantern_sheet, 500)
    monkeypatch.setenv("NO_COLOR", "1")
    bare = io.StringIO()
    print_odds(found, console(bare))

    assert "\x1b" not in bare.getvalue()
    assert bare.getvalue().splitlines() == [line.rstrip() for line in printed(found, 100).splitlines()]


def test_text_from_a_plan_is_made_safe(lantern_sheet: RunSheet) -> None:
    """Escape sequences in names of a course and of a step reach the terminal as replacement signs."""
    pieces = {"boil": Piece(0, Lasts(10, 20, 90)), "serve": Piece(20, fixed(3), ["boil"])}
    sheet = sheet_of(pieces, wanted=23)
    bad = msgspec.structs.replace(
        sheet,
        plan="\x1b[31mred",
        courses=tuple(msgspec.structs.replace(c, name="[b]\x1b[2J") for c in sheet.courses),
        slots=tuple(msgspec.structs.replace(s, named="\x07[link]ring") for s in sheet.slots),
    )

    text = printed(odds(bad, 200))

    assert "\x1b" not in text
    assert "\x07" not in text
    assert "[b]\ufffd[2J" in text
    assert "\ufffd[link]ring" in text


def test_the_form_has_no_number_of_another_library(lantern_sheet: RunSheet) -> None:
    form = odds_form(odds(lantern_sheet, 200))

    assert json.loads(json.dumps(form)) == form
