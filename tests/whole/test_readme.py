"""What the README shows is true: its example plan is sound, its commands and keys are the program's."""

import re
from pathlib import Path

from board.app import words as app_words
from board.checks.plan.every import check
from board.plan.findings import FINDINGS
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Weight
from board.screens import words as screens_words
from tests.conftest import HEAD
from tests.whole.conftest import Run

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")


def test_the_example_plan_is_sound_and_clean() -> None:
    text = re.search(r"```yaml\n(.*?)```", README, re.DOTALL)
    assert text is not None

    plan = read_plan(text[1], "README.md")

    assert isinstance(plan, PlanFile)
    assert check(plan) == []


def test_its_sheet_is_what_its_example_plan_gives(run: Run, tmp_path: Path) -> None:
    text = re.search(r"```yaml\n(.*?)```", README, re.DOTALL)
    shown = re.search(r"\$ platecall sheet supper\.yaml\n…\n(.*?)\n…\n```", README, re.DOTALL)
    assert text is not None
    assert shown is not None
    plan = tmp_path / "supper.yaml"
    plan.write_text(text[1], encoding="utf-8")

    _, out, _ = run("sheet", str(plan))

    assert shown[1] in "\n".join(line.rstrip() for line in out.splitlines())


def test_the_example_of_food_safety_is_sound_and_nothing_stops_it() -> None:
    section = README.partition("## Kept safe")[2]
    text = re.search(r"```yaml\n(.*?)```", section, re.DOTALL)
    assert text is not None

    hands = "hands:\n  host:\n    hours: {2 days before: '9:00 - 23:30', on the day: '9:00 - 23:30'}\n"
    head = HEAD.partition("hands:")[0].lstrip() + "air: {outdoors: 33 C}\n" + hands
    plan = read_plan(head + text[1], "README.md")

    assert isinstance(plan, PlanFile), plan
    assert [snag for snag in check(plan) if snag.safety or snag.weight is Weight.STOP] == []


def test_every_code_of_food_safety_stands_in_the_readme() -> None:
    for name in FINDINGS:
        assert not name.startswith("food") or name in README, name


def test_what_it_shows_of_buying_and_drinking_can_be_written_so() -> None:
    text = re.search(r"```yaml\n(.*?)```", README, re.DOTALL)
    buying = re.search(r"```\n(units: metric.*?)```", README, re.DOTALL)
    drinking = re.search(r"```\ncourses:.*?(    drink: .*?)\n(drinks: .*?)\n```", README, re.DOTALL)
    assert text is not None
    assert buying is not None
    assert drinking is not None

    own = text[1][: text[1].index("jobs:")].replace("    at: 19:15\n", f"    at: 19:15\n{drinking[1]}\n")
    plan = read_plan(f"{own}{buying[1]}{drinking[2]}\n", "README.md")

    assert isinstance(plan, PlanFile), "\n".join(snag.render() for snag in plan)
    assert plan.plan.drinks is not None
    assert plan.plan.courses[0].drink[0].bottles == 6
    assert set(plan.plan.shopping) == {"fri", "sat"}


def test_every_key_of_the_board_stands_in_the_readme() -> None:
    for keys, _, _ in (*screens_words.KEYS_EVENING, *screens_words.KEYS_REHEARSAL, *screens_words.KEYS_LOOK):
        for key in (keys,) if keys.isalpha() else keys:
            assert f"`{key}`" in README, key


def test_every_key_of_the_list_stands_in_the_readme() -> None:
    for keys, _ in screens_words.KEYS_TICK:
        for key in keys.split():
            assert f"`{key}`" in README, key


def test_every_command_stands_in_the_readme() -> None:
    for command in app_words.COMMANDS:
        assert f"platecall {command}" in README, command


def test_it_shows_every_picture_there_is_and_no_other() -> None:
    root = Path(__file__).parents[2]
    shown = re.findall(r"!\[[^\]]{40,}\]\(([^)]+)\)", README)

    assert sorted(shown) == sorted(f"screenshots/{file.name}" for file in (root / "screenshots").iterdir())
    assert len(shown) == README.count("![")  # each with words for who cannot see it
    for picture in shown:
        assert (root / picture).read_bytes().startswith(b"\x89PNG\r\n\x1a\n"), picture  # nothing in it to be fetched
        assert 1_000 < (root / picture).stat().st_size < 300_000, picture
