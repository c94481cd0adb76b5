"""Going through guesses, by Pilot."""

from typing import cast

from board.checks.plan.guesses import Guess
from board.plan.load import PlanFile
from board.screens import words
from board.screens.settling import SettleApp, SettleScreen
from board.session.settling import Settling
from tests.screens.conftest import screen_text

DUCK, TART = ("courses", 0, "dishes", 0), ("courses", 1, "dishes", 0)
GUESSES = [
    Guess((*DUCK, "steps", 1), "takes", "braise", "Duck [b]legs[/b]", "Main", "2 h", "decides when Main is ready"),
    Guess((*DUCK, "steps", 0), "takes", "peel \x1b[31m", "Duck [b]legs[/b]", "Main", "10 min"),
    Guess((*TART, "steps", 0), "keeps", "bake the tart", "Tart", "Sweet", "2 days in the fridge"),
    Guess((*TART, "steps", 0), "attended", "bake the tart", "Tart", "Sweet", None),
]
SIZE = (80, 24)


class Tight(Settling):
    def fits(self, guess: Guess, value: str) -> str:
        if value == "13 min":
            raise ValueError("the plan has no room for 13 min")
        return value


class Shown:
    def __init__(self) -> None:
        self.screen = SettleScreen("Supper", Tight("", cast("PlanFile", None), GUESSES))
        self.app = SettleApp(self.screen, None)

    def shown(self) -> str:
        return screen_text(self.app)  # type: ignore[arg-type]


async def test_every_key_is_shown_and_fits_80_columns() -> None:
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        last = settling.shown().splitlines()[-1]

        assert "…" not in last
        assert all(f"{key} {what}" in last for key, what in words.KEYS_SETTLE)
        assert "decides when Main is ready" in settling.shown()
        assert "Duck [b]legs[/b]" in settling.shown()
        assert "\x1b" not in settling.shown()
        await pilot.press("4")
        await pilot.pause()
        assert all(f"{key} {what}" in settling.shown() for key, what in words.KEYS_SETTLE_TYPING)


async def test_enter_takes_one_space_the_rest_of_its_dish_and_u_goes_back_a_key() -> None:
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("enter")
        assert settling.screen.answers == {0: None}
        await pilot.press("space", "space")
        assert settling.screen.answers == dict.fromkeys(range(4))
        await pilot.press("u")
        assert settling.screen.answers == {0: None, 1: None}
        await pilot.press("u", "u", "u")
        assert settling.screen.answers == {}


async def test_figures_change_a_value_and_an_error_is_told_and_asked_again() -> None:
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("6", "0", "space", "5", "0", "enter")
        assert "must rise" in settling.shown()
        assert settling.screen.answers == {}
        await pilot.press(*["backspace"] * 5, "1", "3", "enter")
        assert "no room for 13 min" in settling.shown()
        await pilot.press("escape", "7", "5")
        assert "= 75 min" in settling.shown()
        await pilot.press("enter")
        assert settling.screen.answers == {0: "75 min"}
        await pilot.press("space", "e", *["backspace"] * 6, *"room", "enter")
        assert settling.screen.answers[2] == "2 days in the room"


async def test_q_stops_with_what_is_settled_and_enter_at_the_end_leaves() -> None:
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("enter", "q")
    assert settling.screen.answers == {0: None}

    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("space", "space", "enter")
    assert len(settling.screen.answers) == len(GUESSES)
    assert settling.app.return_code == 0


async def test_letters_are_text_only_while_something_is_typed() -> None:
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("1", "space", "h", "space", "3", "0", "enter")
        assert settling.screen.answers == {0: "1 h 30"}
        await pilot.press("u", "x", "z")
        assert settling.screen.answers == {}


async def test_a_guess_is_left_open_and_why_a_value_is_refused_stands_whole() -> None:
    shown = Shown()
    async with shown.app.run_test(size=(60, 18)) as pilot:
        await pilot.press("down", "enter", "4", "enter")
        assert set(shown.screen.answers) == {1, 2}
        await pilot.press("down")
        assert "the rest stays a guess" in " ".join(shown.shown().split())
        await pilot.press("u", "u", "u", "u", "e", "ctrl+u", *"soon", "enter")
        await pilot.pause()
        told = " ".join(shown.shown().split())
        assert " ".join(shown.screen.said.split()) in told
        await pilot.press("escape")
        await pilot.pause()
        assert "q stop" in shown.shown().splitlines()[-1]
