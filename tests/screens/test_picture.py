"""The pictures of the README: joined lines, true colours, no sign lost, the same bytes each time they are drawn."""

import asyncio
from pathlib import Path

import pytest
from rich.segment import Segment
from rich.style import Style

from board.checks.plan.every import check
from board.files.bundled import bundled_plan
from board.files.plans import plan_in
from board.plan.snag import Weight
from board.screens.palette import DARK, LOOKS
from board.sheet.run_sheet import RunSheet

for package in ("PIL.Image", "fontTools", "matplotlib"):
    pytest.importorskip(package, reason="pip install -e '.[pictures]'")

from PIL import Image

from tests.bench.pictures import SHOTS, draw_board, mistaken_plan
from tests.bench.pixels import HIGH, MARGIN, WIDE, MissingSigns, draw_cells

LOOK = LOOKS["dark"].theme


def drawn(file: Path, *rows: Segment) -> Image.Image:
    draw_cells([[row] for row in rows], file, LOOK)
    return Image.open(file)


@pytest.mark.slow
def test_the_same_board_gives_the_same_bytes(lantern_sheet: RunSheet, tmp_path: Path) -> None:
    shot = next(shot for shot in SHOTS if shot.size == (80, 24))
    pictures = []
    for _ in range(2):
        asyncio.run(draw_board(lantern_sheet, shot, tmp_path))
        pictures.append((tmp_path / f"{shot.name}.png").read_bytes())

    assert pictures[0] == pictures[1]
    assert Image.open(tmp_path / f"{shot.name}.png").size == (80 * WIDE + 2 * MARGIN, 24 * HIGH + 2 * MARGIN)


@pytest.mark.parametrize("bold", [False, True])
def test_lines_join_from_cell_to_cell(tmp_path: Path, bold: bool) -> None:
    style = Style(color="#ffffff", bgcolor="#000000", bold=bold)
    upright = drawn(tmp_path / "upright.png", Segment("┃", style), Segment("┃", style))
    level = drawn(tmp_path / "level.png", Segment("━━", style))

    middle = MARGIN + WIDE // 2, MARGIN + HIGH // 2
    assert {upright.getpixel((middle[0], MARGIN + y)) for y in range(2 * HIGH)} == {(255, 255, 255)}
    assert {level.getpixel((MARGIN + x, middle[1])) for x in range(2 * WIDE)} == {(255, 255, 255)}


def test_a_cell_has_its_colours_and_all_around_it_the_look_s(tmp_path: Path) -> None:
    picture = drawn(tmp_path / "cells.png", Segment("█ ", Style(color="#ff0000", bgcolor="#0000ff")))
    reverse = drawn(tmp_path / "reverse.png", Segment("█ ", Style(color="#ff0000", bgcolor="#0000ff", reverse=True)))
    first, second = (MARGIN + WIDE // 2, MARGIN + HIGH // 2), (MARGIN + WIDE + WIDE // 2, MARGIN + HIGH // 2)

    assert [picture.getpixel(cell) for cell in (first, second)] == [(255, 0, 0), (0, 0, 255)]
    assert [reverse.getpixel(cell) for cell in (first, second)] == [(0, 0, 255), (255, 0, 0)]
    assert picture.getpixel((0, 0)) == tuple(bytes.fromhex(DARK.background.removeprefix("#")))


def test_bold_and_faint_letters_look_it(tmp_path: Path) -> None:
    usual, bold, dim = (
        drawn(tmp_path / "letters.png", Segment("kept", Style(color="#ffffff", bgcolor="#000000", **style))).tobytes()
        for style in ({}, {"bold": True}, {"dim": True})
    )

    assert sum(dim) < sum(usual) < sum(bold)


def test_a_sign_the_font_lacks_is_named_and_nothing_is_drawn(tmp_path: Path) -> None:
    with pytest.raises(MissingSigns, match=r"⏰ \(U\+23F0\), \U0001fb00"):
        drawn(tmp_path / "none.png", Segment("18:50 ◔ \U0001fb00 ⏰"))

    assert not (tmp_path / "none.png").exists()


def test_the_plan_that_is_checked_holds_mistakes_of_two_weights() -> None:
    snags = check(plan_in(mistaken_plan(), bundled_plan()))

    assert any(snag.weight is Weight.STOP and snag.safety for snag in snags)
    assert any(snag.weight is Weight.MIND for snag in snags)
