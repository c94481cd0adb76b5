"""What the manual shows can be written so, and its commands are the program's."""

import re
import shlex
from io import StringIO
from pathlib import Path

import pytest
from rich.console import Console

from board.checks.plan.every import check
from board.checks.sheet.every import safety_check
from board.cli import whole_parser
from board.manual import board_keys, findings, pages, plan_keys
from board.manual.shown import shown
from board.output.sheet import print_sheet
from board.plan.findings import FINDINGS, ROOMS
from board.plan.load import PlanFile
from board.plan.snag import Weight
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.manual.parts import fences, plan_with, told
from tests.whole.conftest import Run

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
WHOLE = fences(pages.page("plan"))[0]
WORKED = pages.sections(pages.page("worked dinners"))
NEEDS_A_TIMETABLE = {"food 10", "food 11", "keeping 4", "kitchen 9"}
WIDTH = 80


def commands(text: str) -> list[str]:
    """The command lines that a page shows to be typed, as they are typed, one each."""
    lines = [line for block in fences(text, "sh") for line in block.splitlines()]
    return [line for line in lines if line.startswith("platecall")]


def words(line: str) -> list[str]:
    return shlex.split(line.partition(" > ")[0])[1:]


def test_its_example_plan_is_sound_and_clean() -> None:
    plan = plan_with(WHOLE)

    assert isinstance(plan, PlanFile), list(told(plan))
    assert check(plan) == []


def test_its_sheet_is_what_its_example_plan_gives() -> None:
    plan = plan_with(WHOLE)
    assert isinstance(plan, PlanFile)
    text = StringIO()
    print_sheet(make_sheet(plan, solve), "day", Console(file=text, width=WIDTH - 4, highlight=False, emoji=False))
    excerpt = re.search(r"supper\.yaml\n…\n(.*?)\n…\n", pages.page("timetable"), re.DOTALL)

    assert excerpt is not None
    assert excerpt[1] in "\n".join(line.rstrip() for line in text.getvalue().splitlines())


@pytest.mark.parametrize("pattern", WORKED)
def test_a_worked_part_can_be_put_into_a_plan(pattern: str) -> None:
    parts = fences(WORKED[pattern])

    assert parts
    for part in parts:
        plan = plan_with(part)
        assert list(told(plan)) == []
        assert isinstance(plan, PlanFile)
        assert [snag.render() for snag in check(plan) if snag.weight is Weight.STOP] == []


@pytest.mark.parametrize("topic", [topic for topic in pages.TOPICS if topic not in ("plan", "worked dinners")])
def test_whatever_a_topic_shows_of_a_plan_can_be_written_so(topic: str) -> None:
    for part in fences(pages.page(topic)):
        own = part if "courses:" not in part or "dishes:" in part else _with_a_dish(part)
        seated = own if topic != "table" else f"guests: [Ines, Tomas, 2 others]\n{own}"
        assert list(told(plan_with(seated))) == []


def _with_a_dish(part: str) -> str:
    """A course that a page shows without its time and its dishes."""
    head, course, rest = re.split(r"(  - course: Main\n)", part)
    dishes = "[{dish: Leek soup, steps: [{step: ladle it, takes: 5 min}]}]"
    return f"{head}{course}    at: 20:00\n    dishes: {dishes}\n{rest}"


@pytest.mark.parametrize("name", pages.examples())
def test_a_bad_example_is_told_of_and_a_good_one_is_not(name: str) -> None:
    bad, good = (_found(part, timed=name in NEEDS_A_TIMETABLE) for part in pages.examples()[name])

    assert name in FINDINGS
    assert name in bad
    assert name not in good
    assert not {each for each in good if each.startswith("plan")}


def _found(part: str, *, timed: bool) -> set[str]:
    plan = plan_with(part)
    if not isinstance(plan, PlanFile):
        return {snag.code for snag in plan}
    snags = check(plan)
    if timed:
        snags += safety_check(plan, make_sheet(plan, solve))
    return {snag.code for snag in snags}


@pytest.mark.parametrize("text", [README, *map(pages.page, pages.TOPICS)])
def test_every_command_it_shows_is_understood(text: str) -> None:
    for line in commands(text):
        assert whole_parser().understood(words(line)).command, line


def test_what_is_typed_elsewhere_names_commands_that_there_are() -> None:
    known = {action.dest: action.choices for action in whole_parser()._actions}["command"]
    pages_text = [README, *map(pages.page, pages.TOPICS)]
    named = {word for text in pages_text for word in re.findall(r"`platecall ([a-z]+)", text)}

    assert known is not None
    assert named <= set(known)


@pytest.mark.slow
def test_every_command_of_the_manual_runs_as_written(place: Path, run: Run) -> None:
    for topic in pages.TOPICS:
        for line in commands(pages.page(topic)):
            code, _, wrong = run(*words(line))
            if words(line)[0] == "live":
                assert "needs a terminal" in wrong
            else:
                assert code == 0, f"{line}\n{wrong}"


def test_no_line_of_it_is_wider_than_a_terminal() -> None:
    everything = [
        *map(pages.page, pages.TOPICS),
        *map(findings.told, FINDINGS),
        *map(findings.room, ROOMS),
        *map(plan_keys.told, plan_keys.names()),
        board_keys.all_of_them(),
        board_keys.signs(),
    ]

    assert [line for text in everything for line in shown(text, WIDTH).splitlines() if len(line) > WIDTH] == []
    assert [line for text in everything for line in shown(text, WIDTH).splitlines() if line != line.rstrip()] == []


@pytest.mark.parametrize("topic", pages.TOPICS)
def test_a_topic_has_a_title_and_says_something(topic: str) -> None:
    assert pages.page(topic).startswith("# ")
    assert len(pages.page(topic).split()) > 100
