"""The planning table, by Pilot, with a process beside that answers when it is told to."""

import asyncio
from pathlib import Path
from typing import cast

import pytest
from textual.pilot import Pilot

from board.app.plan_table import PlanOnDisk, lines_of_dish
from board.cli import _bare_plan
from board.screens import words
from board.screens.plan_table import PlanTableApp, PlanTableScreen
from board.session.background import Answer, Background, Finding, PlanText, Request
from board.session.plan_desk import opened
from tests.screens.conftest import screen_text

TEXT = """\
event: Small [b]supper[/b]
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands:
  host:
    hours: {on the day: 10:00 - 23:30}
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Soup   # from the garden
        steps:
          - step: chop
            takes: 10 min
          - step: simmer
            where: stovetop, 1 ring
            takes: 20 min
"""


class Silent:
    """A process beside that keeps what it is asked, and answers what a test puts in."""

    def __init__(self) -> None:
        self.asked: list[Request] = []
        self.answers: dict[type[Request], Answer] = {}

    def ask(self, request: Request, *, anew: bool = False) -> bool:
        self.asked.append(request)
        return True

    def answer(self, kind: type[Request]) -> Answer | None:
        return self.answers.pop(kind, None)


class Table:
    def __init__(self, path: Path, text: str = TEXT) -> None:
        self.path = path
        path.write_text(text, encoding="utf-8")
        self.beside = Silent()
        keeper = PlanOnDisk(path)
        self.desk = opened(text, path.name, keeper, cast("Background", self.beside), lines_of_dish)
        self.app = PlanTableApp(self.desk, None, None)

    @property
    def screen(self) -> PlanTableScreen:
        return cast("PlanTableScreen", self.app.screen)

    def shown(self) -> str:
        return screen_text(self.app)  # type: ignore[arg-type]

    def file(self) -> str:
        return self.path.read_text(encoding="utf-8")

    def choose(self, text: str) -> None:
        """The line with that text, unfolded so that it is seen."""
        row = next(row for row in self.desk.read.rows if text in (row.text, row.key))
        self.screen.show(self.screen._seen(row.loc))

    async def press(self, pilot: Pilot[str], *keys: str) -> None:
        """Keys, and all they set going."""
        await pilot.press(*keys)
        await self.settled(pilot)

    async def settled(self, pilot: Pilot[str]) -> None:
        await pilot.pause()
        for _ in range(200):
            if not self.screen.busy:
                break
            await asyncio.sleep(0.02)
        await pilot.pause()


@pytest.fixture
def table(tmp_path: Path) -> Table:
    return Table(tmp_path / "supper.yaml")


@pytest.mark.parametrize("size", [(80, 24), (120, 36), (160, 50)])
async def test_it_opens_on_the_courses_and_text_of_the_plan_is_data(table: Table, size: tuple[int, int]) -> None:
    async with table.app.run_test(size=size) as pilot:
        await table.settled(pilot)
        shown = table.shown()

        assert "event: Small [b]supper[/b]" in shown
        assert "+ Soup" in shown
        assert "simmer" not in shown
        await table.press(pilot, "tab")
        assert ("+ Soup" in table.shown()) == table.screen.wide


async def test_a_line_is_edited_with_its_error_beside_and_u_brings_back_every_byte(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("20 min")
        await table.press(pilot, "enter", *["backspace"] * 6, *"soon")
        assert "soon" in table.shown()
        assert "not" in str(table.screen.said)
        await table.press(pilot, "enter")
        assert table.file() == TEXT  # refused
        await table.press(pilot, *["backspace"] * 4, *"25 Min", "enter")
        assert table.file() == TEXT.replace("20 min", "25 Min")
        assert len(list(table.path.parent.glob("*.bak-*"))) == 1
        await table.press(pilot, "u")
        assert table.file() == TEXT
        await table.press(pilot, "u")
        assert "nothing to take back" in table.shown()
        assert len(list(table.path.parent.glob("*.bak-*"))) == 1


async def test_lines_are_moved_taken_out_and_added_where_they_are_chosen(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("simmer")
        await table.press(pilot, "+", *"Taste", "enter")
        assert "          - step: Taste\n" in table.file()
        await table.press(pilot, "u")
        table.choose("Soup")
        await table.press(pilot, "+", *"Roast carrots", "enter")
        assert "- dish: Roast carrots" in table.file()
        assert table.screen.chosen is not None
        assert table.screen.chosen.text == "Roast carrots"
        await table.press(pilot, "[")
        assert table.file().index("Roast carrots") < table.file().index("Soup   # from the garden")
        await table.press(pilot, "delete")
        assert "Roast carrots" not in table.file()
        await table.press(pilot, "u", "u", "u")
        assert table.file() == TEXT


async def test_a_change_that_the_plan_could_not_be_read_with_is_refused(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("arrive")
        await table.press(pilot, "delete")

        assert table.file() == TEXT
        assert "arrive" in table.screen.said


async def test_a_plan_that_cannot_be_read_opens_at_its_worst_line_and_is_mended_there(tmp_path: Path) -> None:
    table = Table(tmp_path / "bad.yaml", TEXT.replace("takes: 20 min", "takes: soon"))
    async with table.app.run_test(size=(80, 24)) as pilot:
        await table.settled(pilot)
        assert table.screen.chosen is not None
        assert table.screen.chosen.text == "soon"
        assert "plan 7" in table.shown()
        await table.press(pilot, "enter", *["backspace"] * 4, *"20 min", "enter")
        assert table.file() == TEXT
        assert table.desk.read.snags == ()


async def test_a_file_that_is_no_yaml_is_mended_line_by_line(tmp_path: Path) -> None:
    table = Table(tmp_path / "bad.yaml", TEXT.replace("[4 guests]", "[4 guests"))
    async with table.app.run_test(size=(120, 36)) as pilot:
        await table.settled(pilot)
        assert table.screen.chosen is not None
        assert table.screen.chosen.line == 5
        await table.press(pilot, "enter", "]", "enter")
        assert table.file() == TEXT
        assert "+ Soup" in table.shown()


async def test_a_finding_is_gone_to_by_its_number_and_the_rest_is_counted(table: Table) -> None:
    found = tuple(Finding("plan 7", 2, f"thing {n}", "Mend it.", 16) for n in range(5))
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, found)
        await pilot.pause(0.3)
        assert "thing 2" in table.shown()
        assert "and 2 more: f" in table.shown()
        await table.press(pilot, "1")
        assert table.screen.chosen is not None
        assert table.screen.chosen.text == "10 min"


async def test_an_answer_to_the_text_before_is_not_taken_and_is_asked_anew(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        before = table.desk.digest
        table.choose("20 min")
        await table.press(pilot, "enter", *["backspace"] * 6, *"25 min", "enter")
        table.beside.answers[PlanText] = Answer("PlanText", before, None, (Finding("plan 7", 2, "overtaken"),))
        await pilot.pause(0.3)

        assert "overtaken" not in table.shown()
        last = table.beside.asked[-1]
        assert isinstance(last, PlanText)
        assert "25 min" in last.text


async def test_what_an_editor_saves_is_taken_up_and_told(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.path.write_text(TEXT.replace("chop", "slice thin"), encoding="utf-8")
        await pilot.pause(0.8)
        await table.settled(pilot)
        assert "an editor changed the file" in table.shown()
        assert table.desk.planning.text == table.file()


async def test_a_read_only_file_is_told_and_what_was_typed_is_kept(table: Table) -> None:
    table.path.chmod(0o444)
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("20 min")
        await table.press(pilot, "enter", *["backspace"] * 6, *"25 min", "enter")
        assert "NOT ON DISK" in table.shown()
        assert "25 min" in table.desk.planning.text
        table.path.chmod(0o644)
        await pilot.pause(0.8)
        assert "25 min" in table.file()
        await table.settled(pilot)


async def test_a_second_table_looks_on(table: Table) -> None:
    table.desk.looking_on = True
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("20 min")
        await table.press(pilot, "enter")
        assert table.screen.editing is None
        assert "LOOKING ON" in table.shown()


async def test_all_keys_are_listed_and_lead_on(table: Table) -> None:
    async with table.app.run_test(size=(80, 24)) as pilot:
        await table.press(pilot, "?")
        assert all(what in table.shown() for _, what in words.KEYS_TABLE)
        bar = table.shown().splitlines()[-1]
        assert "…" not in bar
        await table.press(pilot, "?")
        await pilot.press("s")
    assert table.app.return_value == "s"


def test_a_plan_alone_opens_at_the_table() -> None:
    assert _bare_plan(["supper.yaml"]) == ["plan", "supper.yaml"]
    assert _bare_plan(["check", "supper.yaml"]) == ["check", "supper.yaml"]
