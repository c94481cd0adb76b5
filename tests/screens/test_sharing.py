"""The board with a page for phones: its address and code, a helper called, an answer from elsewhere; and without."""

import asyncio
from collections.abc import Sequence

import msgspec
import pytest

from board.evening.wishes import HelperDone, Refusal
from board.screens import words
from board.screens.app import BoardApp
from board.screens.sharing import PhonesScreen, Sharing
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at
from tests.screens.conftest import Kitchen, Recorder, screen_text

ADDRESS = "http://192.168.1.20:8430/V7m0_q-fX9b2Lr4TzYc1Aw/"
ROWS = tuple("█▀" * 20 + "▄" for _ in range(20))


class FakePage:
    """A page that nobody serves."""

    address = ADDRESS

    def __init__(self) -> None:
        self.rung: list[str] = []
        self.looking: set[str] = set()
        self.board: Sharing | None = None
        self.ended = 0

    def drawn(self) -> Sequence[str]:
        return ROWS

    def ring(self, who: str) -> None:
        self.rung.append(who)

    def is_rung(self, who: str) -> bool:
        return who in self.rung

    def is_looking(self, who: str) -> bool:
        return who in self.looking

    async def begin(self, board: Sharing) -> None:
        self.board = board

    async def end(self) -> None:
        self.ended += 1


class Shared:
    """The little supper with Mira, who chops, on a board with a page."""

    def __init__(self, sheet: RunSheet) -> None:
        chop = msgspec.structs.replace(
            sheet.slots[0], attended=(msgspec.structs.replace(sheet.slots[0].attended[0], who="Mira"),)
        )
        sheet = msgspec.structs.replace(sheet, slots=(chop, *sheet.slots[1:]), hands=("host", "Mira"))
        self.host = Host(sheet, at("17:00"))
        self.page = FakePage()
        self.app = BoardApp(self.host.evening, chime=Recorder(), page=self.page)

    def shown(self) -> str:
        return screen_text(self.app)


@pytest.fixture
def shared(little: RunSheet) -> Shared:
    return Shared(little)


async def test_a_key_shows_address_code_and_names_and_calls_the_chosen_one(shared: Shared) -> None:
    shared.page.looking = {"Mira"}
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert "m phones" in shared.shown()
        await pilot.press("m")
        await pilot.pause()
        flat = shared.shown().replace("│", "").replace("\n", "")
        assert all(row in shared.shown() for row in ROWS)
        assert "".join(ADDRESS.split()) in "".join(flat.split()) or ADDRESS[:30] in flat
        assert words.LOOKS in shared.shown()

        await pilot.press("down", "enter")
        await pilot.pause()

        assert shared.page.rung == ["Mira"]
        assert words.rung("Mira", looks=True) in shared.shown()


async def test_called_without_a_phone_that_looks_the_host_is_told(shared: Shared) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        await pilot.press("m", "down", "enter")
        await pilot.pause()

        assert words.rung("Mira", looks=False) in shared.shown()


@pytest.mark.parametrize("size", [(80, 24), (60, 18), (100, 20)])
async def test_the_code_is_whole_or_not_there_and_the_address_always_is(shared: Shared, size: tuple[int, int]) -> None:
    async with shared.app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.press("m")
        await pilot.pause()

        whole = [row in shared.shown() for row in ROWS]
        assert all(whole) is (size == (80, 24))
        assert all(whole) or not any("█▀█" in line for line in shared.shown().splitlines())
        assert ADDRESS[:20] in shared.shown()


async def test_a_helpers_answer_is_taken_in_the_boards_turn_and_told(shared: Shared) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert shared.page.board is not None
        wish = HelperDone("chop", "start", 0, "Mira")

        assert await shared.page.board.answered(wish) is None
        await pilot.pause()

        assert shared.host.evening.state.steps["chop"].status == "under-way"
        assert words.answered_by("Mira", "begun", "chop") in shared.shown()
        assert isinstance(await shared.page.board.answered(wish), Refusal)
        await pilot.press("u")  # the host has the last word
        await pilot.pause()
        assert shared.host.evening.state.steps["chop"].status == "to-come"


async def test_over_a_small_screen_it_is_taken_too(shared: Shared) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        await pilot.press("m")
        await pilot.pause()
        assert isinstance(shared.app.screen, PhonesScreen)
        assert shared.page.board is not None

        assert await shared.page.board.answered(HelperDone("chop", "start", 0, "Mira")) is None
        await shared.page.board.comes("Mira")
        await pilot.press("escape")
        await pilot.pause()

        assert words.comes("Mira") in shared.shown()


async def test_what_nobody_waits_for_any_more_is_not_done_later(shared: Shared) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert shared.page.board is not None
        asked = asyncio.ensure_future(shared.page.board.answered(HelperDone("chop", "start", 0, "Mira")))
        await asyncio.sleep(0)
        asked.cancel()
        await pilot.pause()

        assert shared.host.evening.state.steps["chop"].status == "to-come"


async def test_a_fault_in_it_never_ends_the_board(shared: Shared, monkeypatch: pytest.MonkeyPatch) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert shared.page.board is not None

        def broken(wish: object) -> None:
            raise OSError("no such thing")

        monkeypatch.setattr(shared.host.evening, "wish", broken)

        refused = await shared.page.board.answered(HelperDone("chop", "start", 0, "Mira"))

        assert refused == Refusal(words.board_fault("no such thing"))
        assert shared.app.is_running


async def test_the_page_ends_with_the_board(shared: Shared) -> None:
    async with shared.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert shared.page.ended == 0

    assert shared.page.ended == 1


async def test_a_board_without_a_page_says_how_to_have_one(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(120, 36)) as pilot:
        await pilot.pause()
        assert "phones" not in kitchen.shown()
        await pilot.press("m")
        await pilot.pause()

        assert words.NOT_SHARED in kitchen.shown()
