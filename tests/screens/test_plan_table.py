"""The planning table, by Pilot, with a process beside that answers when it is told to."""

import asyncio
import json
import time
from datetime import timedelta
from pathlib import Path
from typing import cast

import msgspec
import pytest
from textual.events import Key, Paste
from textual.pilot import Pilot

from board.app.plan_table import PlanOnDisk, lines_of_dish, plan_of_course
from board.base.plan_digest import digest_of
from board.cli import _bare_plan
from board.plan.places import Loc
from board.plan.snag import Fix
from board.screens import held as held_keys
from board.screens import words
from board.screens.listing import Listing
from board.screens.plan_table import Days, PlanTableApp, PlanTableScreen
from board.screens.settling import SettleScreen
from board.session.background import Answer, Background, Finding, PlanText, PlanTried, PlanWays, Way
from board.session.plan_desk import Desk, opened
from board.sheet.run_sheet import GivenUp, RunSheet
from board.sheet.told import Late, Longest
from board.view.days import held
from tests.conftest import PLANS
from tests.screens.conftest import screen_text
from tests.session.beside import Beside

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


RECIPE = {
    "@context": "https://schema.org",
    "@type": "Recipe",
    "name": "Barley and leek pot",
    "recipeYield": "4 servings",
    "recipeIngredient": ["200 g pearl barley", "2 leeks", "1 l water"],
    "recipeInstructions": ["Slice the leeks.", "Simmer the barley and leeks in the water for 40 minutes."],
}


class Table:
    def __init__(self, path: Path, text: str = TEXT) -> None:
        self.path = path
        path.write_text(text, encoding="utf-8")
        self.beside = Beside()
        keeper = PlanOnDisk(path)
        self.desk = opened(text, path.name, keeper, cast("Background", self.beside), lines_of_dish, plan_of_course)
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
        await table.press(pilot, "u")
        assert "NOT ON DISK" not in table.shown()  # the file holds what it held
        await table.press(pilot, "a")
        assert "NOT ON DISK" in table.shown()
        table.path.chmod(0o644)
        await pilot.pause(0.8)
        assert "25 min" in table.file()
        assert "NOT ON DISK" not in table.shown()
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


@pytest.fixture
def laid(tmp_path: Path, lantern_sheet: RunSheet) -> Table:
    """A table with a timetable, and nobody else at work."""
    text = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
    table = Table(tmp_path / "lantern.yaml", text)
    table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, lantern_sheet, (), parts_of(table.desk))
    table.desk.hear()
    return table


def parts_of(desk: Desk) -> tuple[tuple[Loc, str], ...]:
    assert desk.read.file is not None
    return tuple((task.node.loc, id_) for id_, task in desk.read.file.filled.tasks.items())


@pytest.mark.parametrize("size", [(80, 24), (120, 36)])
async def test_in_the_days_another_time_is_tried_and_taken_only_with_its_cost(
    laid: Table, lantern_sheet: RunSheet, size: tuple[int, int]
) -> None:
    async with laid.app.run_test(size=size) as pilot:
        await laid.press(pilot, "tab", "down", "down", "right", "right")
        assert laid.desk.trying is not None
        assert laid.desk.trying.minutes == 30
        await pilot.pause(0.3)
        await laid.settled(pilot)
        asked = laid.beside.asked[-1]
        assert isinstance(asked, PlanTried)
        assert asked.near is lantern_sheet
        before = laid.file()
        await laid.press(pilot, "enter")
        assert laid.file() == before  # its cost is not known yet
        later = moved(lantern_sheet, laid.desk.trying.slot.id, 30)
        laid.beside.answers[PlanTried] = Answer("PlanTried", digest_of(asked.text), later)
        await pilot.pause(0.3)
        assert "30 min later" in laid.shown()
        assert "nothing else moves" in laid.shown()
        await laid.press(pilot, "enter")
        assert "not before: " in laid.file()
        assert laid.desk.sheet is later
        await laid.press(pilot, "u")
        assert laid.file() == before


def moved(sheet: RunSheet, slot: str, minutes: int) -> RunSheet:
    """The sheet with one slot later."""
    by = timedelta(minutes=minutes)
    slots = tuple(
        msgspec.structs.replace(each, start=each.start + by, end=each.end + by) if each.id == slot else each
        for each in sheet.slots
    )
    return msgspec.structs.replace(sheet, slots=slots)


async def test_what_is_tried_is_put_off_by_any_other_key(laid: Table) -> None:
    async with laid.app.run_test(size=(120, 36)) as pilot:
        await laid.press(pilot, "tab", "down", "left", "escape")
        assert laid.desk.trying is None
        await laid.press(pilot, "right", "left")
        assert laid.desk.trying is None


async def test_a_step_is_chosen_where_it_is_drawn_and_the_hours_around_it_are_shown(laid: Table) -> None:
    async with laid.app.run_test(size=(160, 50)) as pilot:
        await laid.press(pilot, "tab", "z")
        drawn = laid.screen.drawn
        row = next(n for n, bars in enumerate(drawn.drawn.bars) if bars)
        bar = drawn.drawn.bars[row][0]
        await pilot.click(Days, offset=(1 + bar.left, drawn.first_bar + row))
        await laid.settled(pilot)
        assert laid.screen._chosen_slot() == bar.slot
        drawn = laid.screen.drawn
        await pilot.click(Days, offset=(3, drawn.first_day))
        assert laid.screen._shown_day() == drawn.days[0]
        await pilot.click(Listing, offset=(3, 0))
        await pilot.pause()
        assert laid.screen.chosen is not None


async def test_a_known_mend_is_one_key_and_the_rest_are_gone_through(table: Table) -> None:
    job = "{job: put it away, after: clear Main, takes: 10 min, puts away: Main}"
    found = (
        Finding("food 11", 2, "no job puts it away", "Add a job.", 12, Fix("add", ("jobs",), job)),
        *(Finding("plan 7", 1, f"thing {n}", "Mend it.", 16) for n in range(12)),
    )
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, found)
        await pilot.pause(0.3)
        assert "1 adds {job: put it away" in table.shown()
        await table.press(pilot, "1")
        assert "jobs:\n  - job: put it away\n" in table.file()
        assert "done: adds {job: put it away" in table.shown()
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, found)
        await pilot.pause(0.3)
        await table.press(pilot, "f", *["down"] * 11)
        assert "thing 10" in table.shown()
        assert "no job puts it away" not in table.shown()
        await table.press(pilot, "enter")
        assert table.screen.chosen is not None
        assert table.screen.chosen.text == "10 min"


async def test_findings_of_the_text_before_are_marked_and_no_key_acts_on_them(table: Table) -> None:
    """Their places are those of another text: the mend would go into another step."""
    fix = Fix("settle", ("courses", 0, "dishes", 0, "steps", 1), "takes")
    found = (Finding("unsure 1", 1, "simmer: `takes: 20 min` is a guess", "", 22, fix),)
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, found)
        await pilot.pause(0.3)
        assert words.TABLE_FOUND_BEFORE not in table.shown()
        table.choose("chop")
        await table.press(pilot, "delete")
        without = table.file()
        assert words.TABLE_FOUND_BEFORE in table.shown()
        at = table.screen.listing.at

        await table.press(pilot, "1", "f", "enter")

        assert table.file() == without
        assert table.screen.listing.at == at


async def test_a_table_that_looks_on_takes_nothing_back_and_follows_the_file(table: Table) -> None:
    table.desk.looking_on = True
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.path.write_text(TEXT.replace("10 min", "11 min"), encoding="utf-8")
        table.screen._look()
        await table.settled(pilot)

        await table.press(pilot, "u")

        assert "11 min" in table.desk.planning.text
        assert words.TABLE_LOOKING_ON in table.shown()


async def test_taking_back_what_an_editor_saved_is_said(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.path.write_text(TEXT.replace("10 min", "11 min"), encoding="utf-8")
        table.screen._look()
        await table.settled(pilot)

        await table.press(pilot, "down", "u")

        assert table.file() == TEXT
        assert words.TABLE_BACK_OUTSIDE in table.shown()


async def test_a_mistyped_word_is_mended_by_its_figure(tmp_path: Path) -> None:
    table = Table(tmp_path / "bad.yaml", TEXT.replace("where: stove", "wehre: stove"))
    async with table.app.run_test(size=(80, 24)) as pilot:
        await table.settled(pilot)
        assert "1 writes where" in table.shown()
        await table.press(pilot, "1")
        assert table.file() == TEXT


async def test_ways_out_are_looked_for_and_taken_by_their_figure(laid: Table, lantern_sheet: RunSheet) -> None:
    lost = GivenUp(Late("Main", 5), Longest(lantern_sheet.slots[0].id, "kept", 90), 5)
    sheet = msgspec.structs.replace(lantern_sheet, given_up=(lost,))
    laid.desk.sheet = sheet
    async with laid.app.run_test(size=(120, 36)) as pilot:
        await laid.press(pilot, "w")
        assert isinstance(laid.beside.asked[-1], PlanWays)
        other = laid.file().replace("may slip: 10 min", "may slip: 15 min")
        way = Way("let Nibbles slip", "nothing is given up", "", other)
        laid.beside.answers[PlanWays] = Answer("PlanWays", laid.desk.digest, None, ways=(way,))
        await pilot.pause(0.3)
        assert "1 let Nibbles slip" in laid.shown()
        await laid.press(pilot, "1")
        assert laid.file() == other


async def test_lines_changed_here_and_in_the_file_are_both_shown_and_the_host_chooses(table: Table) -> None:
    table.path.chmod(0o444)
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.choose("20 min")
        await table.press(pilot, "enter", "ctrl+u", *"25 min", "enter")
        table.path.chmod(0o644)
        table.path.write_text(TEXT.replace("20 min", "30 min"), encoding="utf-8")
        table.screen._look()
        await table.settled(pilot)
        assert "25 min" in table.shown()
        assert "30 min" in table.shown()
        await table.press(pilot, "2")
        assert "30 min" in table.file()
        assert "25 min" not in table.desk.planning.text


async def test_keys_in_a_burst_wait_for_the_change_before_them(table: Table) -> None:
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("10 min")
        edits = [["enter", "ctrl+u", *text, "enter"] for text in ("11 min", "22 min", "33 min")]
        for key in [*edits[0], *edits[1], *edits[2], "u", "u"]:
            table.screen.on_key(Key(key, key if len(key) == 1 else None))
        await table.settled(pilot)
        assert table.file() == TEXT.replace("10 min", "11 min")


async def test_a_held_key_takes_one_line_out_and_back_may_be_pressed_fast(
    table: Table, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(held_keys, "HELD_SECONDS", 60.0)
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.choose("chop")
        for key in ("]", "delete", "delete", "delete"):
            table.screen.on_key(Key(key, key if len(key) == 1 else None))
        await table.settled(pilot)
        assert "chop" not in table.file()
        assert "simmer" in table.file()
        for key in ("u", "u"):
            table.screen.on_key(Key(key, key))
        await table.settled(pilot)
        assert table.file() == TEXT


async def test_what_is_pasted_is_typed_where_a_line_is(table: Table) -> None:
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.app.post_message(Paste("nothing\n"))
        table.choose("chop")
        await table.press(pilot, "enter", "ctrl+u")
        table.app.post_message(Paste("chop\nfine"))
        await table.press(pilot, "enter")
        assert table.file() == TEXT.replace("chop", "chop fine")


async def test_a_dish_comes_out_of_a_recipes_file(table: Table, tmp_path: Path) -> None:
    recipe = tmp_path / "soup.json"
    recipe.write_text(json.dumps(RECIPE), encoding="utf-8")
    async with table.app.run_test(size=(120, 36)) as pilot:
        table.choose("Soup")
        await table.press(pilot, "+")
        table.app.post_message(Paste(str(tmp_path / "none.json")))
        await table.press(pilot, "enter")
        assert "none.json" in table.screen.said
        await table.press(pilot, "ctrl+u")
        table.app.post_message(Paste(str(recipe)))
        await table.press(pilot, "enter")
        assert table.file().count("- dish:") == 2


LONG = " ".join(f"word{n:02}" for n in range(60))  # 419 columns


@pytest.mark.parametrize("size", [(80, 24), (60, 18)])
async def test_why_a_line_is_refused_stands_whole(table: Table, size: tuple[int, int]) -> None:
    async with table.app.run_test(size=size) as pilot:
        table.screen.said = LONG
        table.screen.show()
        await table.settled(pilot)
        assert all(word in table.shown() for word in LONG.split())
        assert table.screen.chosen is not None
        assert table.screen.chosen.text in table.shown()
        assert "leave" in table.shown().splitlines()[-1]
        await table.press(pilot, "down")
        assert "word59" not in table.shown()


@pytest.mark.parametrize("size", [(80, 24), (60, 18), (120, 36)])
async def test_the_finding_that_is_chosen_stands_whole_with_its_mend_and_source(
    table: Table, size: tuple[int, int]
) -> None:
    found = tuple(
        Finding("plan 7", 2, f"begin{n} {LONG[:300]} end{n}", f"Mend {LONG[:160]} it{n}.", 16, None, f"Source {n}")
        for n in range(5)
    )
    async with table.app.run_test(size=size) as pilot:
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, found)
        await pilot.pause(0.3)
        await table.press(pilot, "f", "down", "down")
        shown = " ".join(table.shown().split())
        assert f"begin2 {LONG[:300]} end2" in shown
        assert f"Mend {LONG[:160]} it2. [Source 2]" in shown
        assert "end0" not in shown
        await table.press(pilot, "up")
        assert "end1" in table.shown()


@pytest.mark.parametrize("text", ["", "# for the winter\n"])
async def test_in_a_file_that_says_nothing_a_plan_is_begun_with_a_course(tmp_path: Path, text: str) -> None:
    table = Table(tmp_path / "empty.yaml", text)
    async with table.app.run_test(size=(80, 24)) as pilot:
        await table.settled(pilot)
        assert "begins the courses" in table.shown()
        await table.press(pilot, "+", *"Main: Roast chicken, potatoes", "enter")
        assert table.file().startswith(text)
        assert "- dish: Roast chicken" in table.file()
        assert words.TABLE_BEGUN in table.shown()
        assert table.desk.read.snags == ()
        assert table.screen.chosen is not None
        assert table.screen.chosen.key == "date"


async def test_what_is_missing_is_begun_by_its_figure(tmp_path: Path) -> None:
    table = Table(tmp_path / "head.yaml", "event: Supper\ndate: 2026-11-28\n")
    async with table.app.run_test(size=(80, 24)) as pilot:
        await table.settled(pilot)
        for _ in range(4):
            await table.press(pilot, "1", "enter")
        await table.press(pilot, "1", *"Main: Roast chicken", "enter")
        assert table.desk.read.snags == ()
        assert "for: 4" in table.file()


async def test_what_was_taken_back_is_had_again_by_one_key(table: Table) -> None:
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.choose("chop")
        await table.press(pilot, "delete")
        assert "u brings it back" in table.shown()
        without = table.file()
        await table.press(pilot, "u")
        assert table.file() == TEXT
        assert "a again" in table.shown().splitlines()[-1]
        await table.press(pilot, "a")
        assert table.file() == without
        assert "a again" not in table.shown().splitlines()[-1]
        await table.press(pilot, "a")
        assert words.TABLE_NOTHING_AGAIN in table.shown()


async def test_guesses_are_gone_through_at_the_table_and_are_one_change_of_its(tmp_path: Path) -> None:
    guessed = TEXT.replace("takes: 10 min\n", "takes: 10 min\n            guessed: [takes]\n").replace(
        "takes: 20 min\n", "takes: 20 min\n            guessed: [takes]\n"
    )
    table = Table(tmp_path / "guessed.yaml", guessed)
    async with table.app.run_test(size=(80, 24)) as pilot:
        ask = Finding("unsure 1", 3, "2 guesses are not confirmed", "Go through them.", 0, Fix("ask", (), ""))
        table.beside.answers[PlanText] = Answer("PlanText", table.desk.digest, None, (ask,))
        await pilot.pause(0.3)
        table.choose("simmer")
        at = table.screen.listing.at
        await pilot.press("1")
        for _ in range(100):
            await pilot.pause(0.02)
            if isinstance(table.app.screen, SettleScreen):
                break
        assert "0 of 2 settled" in table.shown()
        await pilot.press("enter", *"15", "enter", "q")
        await pilot.pause(0.1)
        await table.settled(pilot)
        assert table.file() == TEXT.replace("20 min", "15 min")
        assert "2 guesses settled" in table.shown()
        assert table.screen.listing.at == at
        await table.press(pilot, "u")
        assert table.file() == guessed


async def test_all_keys_are_read_in_a_small_window(table: Table) -> None:
    async with table.app.run_test(size=(60, 18)) as pilot:
        await table.press(pilot, "?")
        seen = table.shown()
        await table.press(pilot, *["down"] * 30)
        seen += table.shown()
        assert all(word in seen for _, what in words.KEYS_TABLE for word in what.split())
        await table.press(pilot, "escape")
        assert "event: Small" in table.shown()


@pytest.mark.parametrize("size", [(80, 24), (60, 18)])
async def test_what_holds_a_step_is_read_to_its_last_line_in_the_days(laid: Table, size: tuple[int, int]) -> None:
    sheet = laid.desk.sheet
    assert sheet is not None
    slot = max((each for each in laid.desk.parts.values()), key=lambda each: len(" ".join(held(sheet, each))))
    async with laid.app.run_test(size=size) as pilot:
        laid.screen._choose_slot(slot)
        await laid.press(pilot, "tab")
        seen = laid.shown()
        for _ in range(3):
            await laid.press(pilot, "pagedown")
            seen += laid.shown()

        assert all(word in seen for line in held(sheet, slot) for word in line.split())


async def test_no_line_is_changed_that_is_not_seen(table: Table) -> None:
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.choose("chop")
        for pane in (["tab"], ["f"]):
            await table.press(pilot, *pane, "]", "+", *"x", "delete")
            assert words.TABLE_CHANGED_IN_PLAN in table.shown()
            await table.press(pilot, "escape")
        assert table.file() == TEXT
        await table.press(pilot, "tab", "enter", "delete")
        assert "chop" not in table.file()


async def test_a_change_that_is_being_written_is_not_written_twice(
    table: Table, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second time the file no longer holds the text before, and it stood as not on disk."""
    async with table.app.run_test(size=(80, 24)) as pilot:
        table.choose("chop")
        await table.press(pilot, "delete")
        write = table.desk.keeper.write

        def slow(old: str, new: str) -> str:
            time.sleep(0.3)
            return write(old, new)

        monkeypatch.setattr(table.desk.keeper, "write", slow)
        await pilot.press("u")
        table.screen._look()
        await table.settled(pilot)

        assert table.file() == TEXT
        assert (table.desk.unwritten, "NOT ON DISK" in table.shown()) == ("", False)
