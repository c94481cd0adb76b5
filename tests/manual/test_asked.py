"""Whatever has a name is found by it, and an unknown word is told with what is nearest."""

from pathlib import Path

import pytest

from board.app import words as app_words
from board.base.exits import ExitCode
from board.manual import board_keys, pages, plan_keys
from board.manual.asked import answer, nearest
from board.plan.findings import FINDINGS, ROOMS
from board.screens import words as screens_words
from tests.whole.conftest import Run


def asked(what: str) -> str:
    return answer(what, app_words.COMMANDS) or ""


def test_nothing_asked_lists_every_topic_and_how_to_ask() -> None:
    index = asked("")

    assert [topic for topic in pages.TOPICS if f"**{topic}**" not in index] == []
    assert "platecall help takes" in index


@pytest.mark.parametrize("name", pages.TOPICS)
def test_a_topic_is_found(name: str) -> None:
    assert asked(name).startswith(pages.page(name))


@pytest.mark.parametrize("name", FINDINGS)
def test_every_finding_is_told_with_what_it_says(name: str) -> None:
    assert asked(name).startswith(f"# {name}: {FINDINGS[name]}")
    assert asked(name.replace(" ", "")) == asked(name) == asked(name.upper())


@pytest.mark.parametrize("room", ROOMS)
def test_a_room_lists_its_findings(room: str) -> None:
    own = [name for name in FINDINGS if name.split()[0] == room]

    assert [name for name in own if f"**{name}**" not in asked(room)] == []


@pytest.mark.parametrize("key", plan_keys.names())
def test_every_key_of_a_plan_is_told_with_an_example(key: str) -> None:
    assert f"```yaml\n{key}:" in asked(key)
    assert "Value: " in asked(key)


def test_every_key_that_help_on_the_board_shows_is_told() -> None:
    tables = (screens_words.KEYS_EVENING, screens_words.KEYS_REHEARSAL, screens_words.KEYS_SHARED,
              screens_words.KEYS_WATCH, screens_words.KEYS_LOOK)  # fmt: skip
    for keys, _, does in (row for table in tables for row in table):
        for key in board_keys.pressed(keys):
            assert does in (asked(key) if key != "?" else asked("keys")), key


@pytest.mark.parametrize("name", app_words.COMMANDS)
def test_every_command_is_told(name: str) -> None:
    assert app_words.COMMANDS[name][1] in asked(name) or name in pages.TOPICS


@pytest.mark.parametrize(
    ("what", "says"),
    [
        ("probe", "what the probe shows"),
        ("cheese", "Cheese board"),
        ("one oven at two heats", "Potato gratin"),
        ("frozen dessert", "Vanilla parfait"),
        ("helper from six", "Dan"),
        ("food 10", "danger zone"),
        ("food 6", "140 °F"),
        ("takes", "30 to 35 to 45 min"),
        ("signs", "a call to begin"),
        ("findings", "food 32"),
        ("plan keys", "puts away"),
    ],
)
def test_it_answers_what_a_host_asks(what: str, says: str) -> None:
    assert says in asked(what)


@pytest.mark.parametrize(
    ("what", "meant"),
    [("keepz", "keeps"), ("food 99", "food"), ("tabel", "table"), ("kosher", "guests")],
)
def test_an_unknown_word_gives_the_nearest(what: str, meant: str) -> None:
    near = nearest(what, app_words.COMMANDS)

    assert asked(what) == ""
    assert any(each.startswith(meant) for each in near)


def test_the_command_shows_it_piped_and_refuses_what_it_does_not_know(run: Run, tmp_path: Path) -> None:
    code, out, _ = run("help", "food", "10")
    assert (code, out.splitlines()[0]) == (ExitCode.DONE, f"food 10: {FINDINGS['food 10']}")
    assert "\x1b" not in out
    assert not out.endswith("\n\n")

    code, out, told = run("help", "\x1b[31mkeepz")
    assert (code, out) == (ExitCode.USAGE, "")
    assert "nothing called" in told
    assert "\x1b" not in told
