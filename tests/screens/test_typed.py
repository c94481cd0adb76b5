"""Keys and pastes in a burst: each counts once, in order, whatever the screen is at."""

import pytest
from rich.cells import cell_len

from board.screens import held
from board.screens.typed import LONGEST, Typed
from tests.screens.test_settling import SIZE, Shown


def typed(*keys: str, text: str = "") -> tuple[str, int]:
    line = Typed(text)
    for key in keys:
        line.press(key, key if len(key) == 1 else "")
    return line.text, line.at


def test_a_line_is_edited_where_the_place_is() -> None:
    assert typed(*"20 min", "home", "right", "delete", "5") == ("25 min", 2)
    assert typed("left", "left", "backspace", text="abc") == ("bc", 0)
    assert typed("backspace", "home", "left", "delete", text="") == ("", 0)
    assert typed("home", "ctrl+u", "end", "ctrl+u", "f5", text="abc") == ("", 0)


def test_a_paste_is_one_line_and_what_is_too_long_is_left_out() -> None:
    line = Typed("a c", 2)
    line.put("b\r\nd ")
    assert (line.text, line.at) == ("a b d c", 6)
    line.put("x" * LONGEST)
    assert line.text == "a b d c"


@pytest.mark.parametrize("width", [10, 40])
def test_the_place_is_always_in_view_and_nothing_in_it_is_obeyed(width: int) -> None:
    line = Typed("so\x1b]0;long " * 9)
    shown = line.line(width)

    assert "\x1b" not in "".join(text for text, _ in shown)
    assert len(shown[0][0]) < width
    assert shown[1] == (" ", "chosen")


async def test_capitals_and_double_letters_are_typed_as_they_are(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(held, "HELD_SECONDS", 60.0)
    settling = Shown()
    async with settling.app.run_test(size=SIZE) as pilot:
        await pilot.press("1", "1", "0", "space", "M", "i", "n", "n", "backspace", "enter")

        assert settling.screen.answers == {0: "110 Min"}
        await pilot.press("U")
        assert settling.screen.answers == {}


@pytest.mark.parametrize("width", [10, 40, 80])
def test_the_place_is_in_view_behind_signs_two_columns_wide(width: int) -> None:
    line = Typed("日本語 " * 22)
    shown = line.line(width)

    assert cell_len(shown[0][0]) < width
    assert cell_len(shown[0][0]) >= width - 4
    assert shown[1] == (" ", "chosen")
