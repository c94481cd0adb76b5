"""One meaning a sign: each stands in one table, is told apart by shape, and is written nowhere else in the program."""

import re
import unicodedata
from collections.abc import Iterator
from pathlib import Path

from rich.cells import cell_len

from board.base.words.signs import LETTERS_DOWN, LETTERS_RIGHT, SIGN_TABLE
from board.manual.board_keys import signs
from board.screens import words as screens_words
from tests.screens.snapshot import FOLDER

ROOT = Path(__file__).parents[2]
TABLE = ROOT / "board" / "base" / "words" / "signs.py"
SIGNS = [sign for sign, _ in SIGN_TABLE.values()]

# The buttons of players and recorders: play, stop, record, pause, back, on, and what looks like them.
BUTTONS = "▶►▷▸■◼◉●⏺◎⏸⏹⏵⏴⏯⏭⏮◀◄"
# Unicode 15.1, emoji-data.txt, Emoji=Yes: those of the blocks signs are taken from; a terminal may draw them in colour
# and two cells wide. From memory.
EMOJI = "‼⁉™ℹ↔↕↖↗↘↙↩↪⌚⌛⌨⏏⏩⏪⏫⏬⏭⏮⏯⏰⏱⏲⏳⏸⏹⏺Ⓜ▪▫▶◀◻◼◽◾☀☁☂☃☄☎☑☔☕☘☝☠☢☣☦☪☮☯☸☹☺♀♂♟♠♣♥♦♨♻♾♿⚒⚓⚠⚡⛔✂✅✈✉✊✋✌✍✏✒✔✖✝✡✨✳✴❄❇❌❎❓❔❕❗❣❤➕➖➗➡➰➿⤴⤵⬅⬆⬇⬛⬜⭐⭕〰〽㊗㊙"  # noqa: E501
# Signs that are also punctuation or a key stand in text everywhere.
PUNCTUATION = "!?–"
# Geometric shapes and their kin: whatever the program draws of these is a sign, and stands in the table.
SIGN_BLOCKS = [(0x2190, 0x21FF), (0x2200, 0x22FF), (0x2300, 0x23FF), (0x25A0, 0x25FF), (0x2600, 0x27BF)]
# Keys are named by what stands on them; a change from one figure to another, a minus and a root are writing.
WRITING = "←↑→↓↔−√"


def files() -> Iterator[Path]:
    yield from (f for f in sorted((ROOT / "board").rglob("*")) if f.suffix in (".py", ".tcss") and f != TABLE)


def written(text: str, signs: str) -> list[str]:
    """Signs that stand in a text, as they are or escaped as Python and style sheets do."""
    found = [sign for sign in signs if sign in text]
    return found + [s for s in signs if re.search(rf"\\+u?0*{ord(s):x}(?![0-9a-f])", text, re.IGNORECASE)]


def test_each_sign_has_one_meaning_and_each_meaning_one_sign() -> None:
    meanings = [meaning for _, meaning in SIGN_TABLE.values()]

    assert len(set(SIGNS)) == len(SIGNS)
    assert len(set(meanings)) == len(meanings)
    assert all(meanings)


def test_each_sign_is_one_cell_wide_and_never_drawn_as_a_picture() -> None:
    for sign in SIGNS:
        assert len(sign) == cell_len(sign) == 1, sign
        assert unicodedata.east_asian_width(sign) not in ("W", "F"), sign
        assert sign not in EMOJI, sign


def test_no_sign_is_the_button_of_a_player_or_a_recorder() -> None:
    assert not set(SIGNS) & set(BUTTONS)


def test_no_sign_is_written_outside_the_table_and_no_button_anywhere() -> None:
    signs = "".join(sign for sign in SIGNS if sign not in PUNCTUATION) + BUTTONS
    found = {f.relative_to(ROOT).as_posix(): w for f in files() if (w := written(f.read_text("utf-8"), signs))}

    assert found == {}
    assert written(TABLE.read_text("utf-8"), BUTTONS) == []


def test_no_shape_is_drawn_that_the_table_does_not_have() -> None:
    """Of what looks like a sign: arrows, mathematical and technical signs, geometric shapes, dingbats."""
    for file in files():
        for sign in set(file.read_text("utf-8")) - set(WRITING):
            assert not any(a <= ord(sign) <= b for a, b in SIGN_BLOCKS), f"{file.name}: {sign}"


def test_the_guard_itself_would_see_a_sign() -> None:
    assert written("label = '▽ Soup'", "▽▣") == ["▽"]
    assert written('content: "\\25A3"', "▽▣") == ["▣"]
    assert written('sign = "\\u25bd"', "▽▣") == ["▽"]
    assert written("a plain line", "▽▣") == []


def test_the_manual_has_every_sign() -> None:
    told = signs()

    assert [row for row in SIGN_TABLE.values() if f"- {row[0]} {row[1]}" not in told.splitlines()] == []


def test_the_help_shows_the_signs_of_the_table() -> None:
    shown = " ".join(signs for signs, _ in screens_words.HELP_SIGNS).split()

    assert len(set(shown)) == len(shown)
    assert set(shown) <= set(SIGNS)
    assert {"◤", "◇", "◢", "═", "≈", "»", "⊗", "▲"} <= set(shown)


def test_the_pictures_of_the_board_hold_no_button() -> None:
    for picture in FOLDER.glob("*.txt"):
        assert not set(picture.read_text("utf-8")) & set(BUTTONS), picture.name


def test_letters_are_drawn_with_strokes_alone() -> None:
    """What makes large letters is no sign, though two of its strokes are also drawn in lanes."""
    assert all(unicodedata.name(stroke).startswith("BOX DRAWINGS HEAVY") for stroke in LETTERS_RIGHT + LETTERS_DOWN)
