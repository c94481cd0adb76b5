"""`platecall new --menu`: a plan of a menu from a file, from standard input, or typed; two menus beside each other."""

import io
import os
import sys
from datetime import date
from pathlib import Path

import pexpect
import pytest

from board.base.exits import ExitCode
from board.plan.load import PlanFile, read_plan
from board.plan.model.model import Plan
from tests.examples import first
from tests.whole.conftest import Run

MENUS = Path(__file__).parents[1] / "importing" / "menus"
ZONE = ("--zone", "Europe/Dublin")
THE_MENU = """\
Sat 19 Dec 18:30, 7 guests: Ada coeliac, Rory no shellfish, 5 others
one oven, 4 rings, fridge 60 l, Dan helps from 18:00
Nibbles: marinated olives; onion tartlets
Main: braised duck legs; potato gratin; green beans
Coffee
"""


def plan_in(path: Path) -> Plan:
    found = read_plan(path.read_text(encoding="utf-8"), path.name)
    assert isinstance(found, PlanFile)
    return found.plan


def menu_at(folder: Path, text: str | bytes) -> Path:
    path = folder / "menu.txt"
    path.write_bytes(text.encode() if isinstance(text, str) else text)
    return path


def weekless(text: str) -> str:
    """The menu with a day that is always ahead and needs no weekday."""
    return text.replace("Sat 19 Dec", "19 Dec")


def test_a_menu_in_a_file_becomes_a_plan_that_the_check_accepts(run: Run, tmp_path: Path) -> None:
    menu, path = menu_at(tmp_path, weekless(THE_MENU)), tmp_path / "supper.yaml"

    code, out, err = run("new", str(path), "--menu", str(menu), *ZONE)

    assert (code, err) == (ExitCode.DONE, "")
    assert "Nibbles 18:55: marinated olives; onion tartlets" in out
    assert "Assumed: the name Supper\n" in out
    assert "Dan helps, and is taken to be one of the guests" in out
    plan = plan_in(path)
    assert (plan.arrive, plan.guest_count, plan.kitchen.fridge, tuple(plan.hands)) == ("18:30", 8, 60, ("host", "Dan"))
    assert (plan.date.month, plan.date.day) == (12, 19)
    assert plan.guests[0].diets == ("coeliac",)
    code, out, _ = run("check", str(path))
    assert code in (ExitCode.DONE, ExitCode.STOP)  # what is in the dishes, `ways` says
    assert "very course" in out
    assert ": plan " not in out


@pytest.mark.parametrize("name", first(1, ["roast-dinner", "one-ring-flat"]))
def test_two_menus_beside_each_other_write_nothing(
    run: Run, tmp_path: Path, name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    one = tmp_path / "one.txt"
    one.write_text("7 guests\nMain: braised duck legs", encoding="utf-8")
    other = tmp_path / "other.txt"
    text = (MENUS / f"{name}.txt").read_text(encoding="utf-8").replace("Sun 6 Dec", "tomorrow")
    other.write_text(text, encoding="utf-8")
    before = sorted(tmp_path.rglob("*"))

    code, out, err = run("new", "--menu", "one.txt", "--beside", "other.txt", "--limit", "20", *ZONE)

    assert (code, err) == (ExitCode.DONE, "")
    rows = {line[:20].strip(): line[20:].split("  ") for line in out.splitlines()}
    assert "1 dish in 1 course" in out
    for title in (
        "work on days before",
        "work on the day",
        "you with the guests",
        "busiest half hour",
        "clashes",
        "stops",
    ):
        assert title in rows
    assert "cost" not in rows
    assert sorted(tmp_path.rglob("*")) == before


def test_a_plan_may_stand_beside_a_menu_with_what_its_prices_say(run: Run, tmp_path: Path) -> None:
    path, menu = tmp_path / "plan.yaml", menu_at(tmp_path, "7 guests\nMain: beef")
    run("new", str(path), "--courses", "1", *ZONE)
    with path.open("a", encoding="utf-8") as file:
        file.write("prices: {carrots and parsnips: 2.00 a kg}\n")

    code, out, err = run("new", "--menu", str(menu), "--beside", str(path), "--limit", "20", *ZONE)

    assert (code, err) == (ExitCode.DONE, "")
    assert "without a price" in next(line for line in out.splitlines() if line.startswith("cost"))


def test_a_menu_from_standard_input(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "supper.yaml"
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(b"\xef\xbb\xbfMain: beef\r\nSweet: tart\r\n")))

    code, _, err = run("new", str(path), "--menu", "-", *ZONE)

    assert (code, err) == (ExitCode.DONE, "")
    assert [course.course for course in plan_in(path).courses] == ["Main", "Sweet"]


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("", "menu.txt: the menu is empty"),
        ("7 guests\none oven\n", "menu.txt: the menu names no dish"),
        ("Main: beef\nGuests: Ada leek soup\n", "menu.txt:2: 'Ada leek soup' would all be a name"),
        ("Main: beef\n2020-01-01\n", "menu.txt:2: '2020-01-01' is 2020-01-01, which is over"),
        ("5/12\nMain: beef\n", "menu.txt:1: '5/12' may be two days"),
        ("Main: beef\n900 guests\n", "menu.txt:2: '900' is not a number from 1 to 100"),
        ("Main: beef\nMain: lamb\n", "menu.txt:2: Main is named on line 1 too"),
        ("\n".join(f"dish {n}" for n in range(200)), "menu.txt: there are 200 dishes"),
        (b"Main: beef\nSweet: cr\xe8me\n", "menu.txt"),
        ("19:00 Main: beef\nSweet 18:50: tart\n", "menu.txt:2: Sweet at 18:50 is too soon"),
    ],
)  # fmt: skip
def test_a_menu_that_will_not_do_is_told_by_its_line_and_nothing_is_written(
    run: Run, tmp_path: Path, text: str | bytes, part: str
) -> None:
    path = tmp_path / "supper.yaml"

    code, out, err = run("new", str(path), "--menu", str(menu_at(tmp_path, text)), *ZONE)

    assert (code, out) == (ExitCode.STOP, "")
    assert part in err
    assert not path.exists()


def test_escapes_and_markup_in_a_dish_are_only_text(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "supper.yaml"

    code, out, _ = run("new", str(path), "--menu", str(menu_at(tmp_path, "Main: \x1b[31mduck; [b]gratin[/b]")), *ZONE)

    assert code == ExitCode.DONE
    assert "\x1b" not in out + path.read_text(encoding="utf-8")
    assert [dish.dish for dish in plan_in(path).courses[0].dishes] == ["\ufffd[31mduck", "[b]gratin[/b]"]


@pytest.mark.parametrize(
    "words",
    [
        ["--menu", "menu.txt", "--courses", "3"], ["--beside", "menu.txt"], ["--limit", "5"],
        ["x.yaml", "--menu", "menu.txt", "--beside", "menu.txt"], ["--menu", "named.txt", "--guests", "9"],
    ],
)  # fmt: skip
def test_options_that_do_not_go_together(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, words: list[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    menu_at(tmp_path, "Main: beef")
    (tmp_path / "named.txt").write_text("Guests: Ada, Ben\nMain: beef")

    code, out, err = run("new", *words, *ZONE)

    assert (code, out) == (ExitCode.USAGE, "")
    assert "--" in err
    assert list(tmp_path.glob("*.yaml")) == []


def test_options_come_before_what_the_menu_says(run: Run, tmp_path: Path) -> None:
    path, menu = tmp_path / "supper.yaml", menu_at(tmp_path, "5 guests, 4 rings, Lanterns supper\nMain: beef")

    run("new", str(path), "--menu", str(menu), "--guests", "9", "--event", "Frost", "--date", "2099-01-01", *ZONE)
    assert not path.exists()
    run("new", str(path), "--menu", str(menu), "--guests", "9", "--event", "Frost", *ZONE)

    assert (plan_in(path).event, plan_in(path).guest_count) == ("Frost", 10)


def test_a_menu_typed_at_a_terminal(tmp_path: Path) -> None:
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[2]), "HOME": str(tmp_path), "LANG": "C.UTF-8",
           "TZ": "Europe/Vienna"}  # fmt: skip
    ask = pexpect.spawn(sys.executable, ["-m", "board", "new", "supper.yaml"], cwd=str(tmp_path), env=env,
                        encoding="utf-8", timeout=60)  # fmt: skip
    ask.expect_exact("Type the menu, a line a course")
    for n, line in enumerate(
        [*weekless(THE_MENU).splitlines()[:2], "Main: duck; no nuts", "", "Coffee", "", ""], start=1
    ):
        ask.expect_exact(f"{n:>3} ")
        ask.sendline(line)
    ask.expect_exact("line 3: 'no nuts' reads like what a guest must not eat")
    ask.expect_exact("  3 ")
    ask.sendline("Main: duck; nuts")
    ask.expect_exact("What is the evening called? [Supper] ")
    ask.sendline("")
    if ask.expect_exact(["Written: supper.yaml", "? "]) == 1:  # what is done to the duck
        ask.sendline("")
        ask.expect_exact("Written: supper.yaml")
    ask.expect(pexpect.EOF)
    ask.close()

    assert ask.exitstatus == 0
    plan = plan_in(tmp_path / "supper.yaml")
    assert (plan.zone, plan.guest_count, plan.arrive) == ("Europe/Vienna", 8, "18:30")
    assert [course.course for course in plan.courses] == ["Main", "Coffee"]
    assert plan.date >= date.today()  # noqa: DTZ011  # the machine's own day, as the command has it


def test_what_is_cooked_beside_a_dish_is_planned_and_told(run: Run, home: Path) -> None:
    menu = home / "menu.txt"
    menu.write_text("Sat 12 Dec 2026 19:00, 6 guests\nMain: roast duck with mashed potatoes\nSweet: pear tart\n")

    code, out, err = run("new", str(home / "supper.yaml"), "--menu", str(menu), "--zone", "Europe/Dublin")

    text = (home / "supper.yaml").read_text()
    assert code == ExitCode.DONE
    assert "- dish: mashed potatoes" in text
    assert "'roast duck with mashed potatoes' is taken for 2 dishes: roast duck; mashed potatoes" in " ".join(
        (out + err).split()
    )
