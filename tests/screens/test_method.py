"""How a step is done and what goes in, under its call: cut short on a small board, whole on a wide one."""

import msgspec
import pytest

from board.base.clock import StoppedClock
from board.rehearsal.player import catch_up
from board.screens.app import BoardApp
from board.session.session import unlogged_evening
from board.sheet.run_sheet import RunSheet, SoMuch
from tests.conftest import at
from tests.screens.conftest import Recorder, screen_text

HOW = (
    "Scrub them and cut out the eyes. Halve the large ones so that all are alike, and put them into cold water. "
    "Skim what rises, then lower the heat until the water only trembles, and lay the lid on askew. Never let them fall "
    "apart."
)
AMOUNTS = tuple(SoMuch(f"food number {n}", 10.0 * n, 10.0 * n, "g") for n in range(1, 7))


async def shown(little: RunSheet, size: tuple[int, int]) -> str:
    """The board as its first call, `chop`, is due."""
    slots = tuple(
        msgspec.structs.replace(slot, method=HOW, amounts=AMOUNTS) if slot.id == "chop" else slot
        for slot in little.slots
    )
    sheet = msgspec.structs.replace(little, slots=slots)
    clock = StoppedClock(at("16:00"))
    evening = unlogged_evening(sheet, clock)
    catch_up(evening, clock, at("16:59"))
    clock.set(at("17:00"))
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.pause(0.05)
        return " ".join(screen_text(app).replace("\u258c", " ").split())


async def test_a_wide_board_shows_all_of_it(little: RunSheet) -> None:
    text = await shown(little, (160, 50))

    assert set(HOW.split()) <= set(text.split())  # what comes next stands beside its lines
    assert {f"{n}0" for n in range(1, 7)} <= set(text.split())
    assert "…" not in text.partition("space begun")[0]


@pytest.mark.parametrize("size", [(80, 24), (60, 24)])
async def test_a_small_board_keeps_its_letters_and_keys_and_cuts_the_method(
    little: RunSheet, size: tuple[int, int]
) -> None:
    text = await shown(little, size)

    assert "10 g food number 1" in text
    assert "Scrub them" in text
    assert "apart." not in text
    assert "\u2026" in text
    assert "space begun" in text
    assert "x leave out" in text
    assert any(sign in text for sign in "\u250f\u2501\u2513")  # large letters
