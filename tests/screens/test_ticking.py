"""Ticking the list off, by Pilot."""

from pathlib import Path

import pytest

from board.files.pantry import read_ticks, write_ticks
from board.screens import words
from board.screens.ticking import TickApp, TickScreen
from board.shopping.ticks import Tickable, Ticks
from tests.screens.conftest import screen_text

ENTRIES = [
    "Friday 27 November · dairy",
    Tickable("butter", "250 g", "butter", ("100 g in the house",), ("Onion tart", "Mash")),
    Tickable("egg", "6", "eggs", (), ("Onion tart",)),
    "Saturday 28 November · \x1b[31mbutcher",
    Tickable("beef", "2 kg", "beef [b]shin[/b] \x1b[2J", (), ("Stew",)),
]
SIZE = (80, 24)


class Ticking:
    def __init__(self, path: Path, kept: dict[str, str] | None = None, entries: list[str | Tickable] = ENTRIES) -> None:
        self.ticks = Ticks(kept or {})
        self.path = path
        self.screen = TickScreen("Supper: provisions for 8", entries, self.ticks, self.keep)
        self.app = TickApp(self.screen, None)

    def keep(self) -> str:
        write_ticks(self.path, self.ticks.kept)
        return ""

    def shown(self) -> str:
        return screen_text(self.app)  # type: ignore[arg-type]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "supper.ticks.yaml"


async def test_every_key_is_shown_and_fits_80_columns(path: Path) -> None:
    ticking = Ticking(path)
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        last = ticking.shown().splitlines()[-1]

        assert "…" not in last
        for keys, what in words.KEYS_TICK:
            assert f"{keys} {what}" in last
        assert "Friday 27 November · dairy" in ticking.shown()
        assert "0 of 3" in ticking.shown()


async def test_space_ticks_and_the_file_knows_at_once(path: Path) -> None:
    ticking = Ticking(path)
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("down", "space")
        await pilot.pause()

        assert read_ticks(path) == {"egg": "6"}
        assert f"{words.TICKED} 6 eggs" in ticking.shown()
        assert "1 of 3" in ticking.shown()
        await pilot.press("space")
        assert read_ticks(path) == {}


async def test_headings_are_never_chosen_and_foreign_text_is_plain(path: Path) -> None:
    ticking = Ticking(path)
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("down", "down", "down", "space")
        await pilot.pause()

        assert read_ticks(path) == {"beef": "2 kg"}
        assert "beef [b]shin[/b]" in ticking.shown()
        assert "\x1b" not in ticking.shown()


async def test_n_goes_to_the_next_not_ticked_and_comes_round(path: Path) -> None:
    ticking = Ticking(path, {"butter": "250 g"})
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        assert "Onion tart" in ticking.shown()  # the eggs are chosen
        await pilot.press("n", "space", "n", "space")
        await pilot.pause()

        assert read_ticks(path) == {"butter": "250 g", "beef": "2 kg", "egg": "6"}


async def test_a_changed_amount_is_shown_as_changed(path: Path) -> None:
    ticking = Ticking(path, {"butter": "125 g"})
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        assert f"{words.NOT_TICKED} 250 g butter" in ticking.shown()
        assert "ticked as 125 g" in ticking.shown()

        await pilot.press("space")
        await pilot.pause()
        assert "ticked as" not in ticking.shown()


async def test_what_stands_in_the_way_is_said_and_the_list_goes_on(path: Path) -> None:
    ticking = Ticking(path)
    ticking.screen.keep = lambda: "no room on the disk"
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("space")
        await pilot.pause()

        assert "no room on the disk" in ticking.shown()
        assert "1 of 3" in ticking.shown()


async def test_an_empty_list_says_so(path: Path) -> None:
    ticking = Ticking(path, entries=[])
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("space", "down", "n", "pagedown")
        await pilot.pause()

        assert "Nothing to buy" in ticking.shown()


async def test_a_long_list_scrolls_with_its_heading(path: Path) -> None:
    many: list[str | Tickable] = [x for n in range(40) for x in (f"H{n} · x", Tickable(f"f{n}", f"{n} g", "food"))]
    ticking = Ticking(path, entries=many)
    async with ticking.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press(*["pagedown"] * 5)
        await pilot.pause()
        assert "39 g food" in ticking.shown()
        await pilot.press(*["pageup"] * 5)
        await pilot.pause()

        assert "H0 · x" in ticking.shown()
