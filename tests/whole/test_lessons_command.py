"""`lessons` from the words typed to the plan on disk."""

import io
import json
import signal
from contextlib import suppress
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from board.app import impact as effects
from board.app import terminal
from board.app.learning import learn_from, read_evenings
from board.app.sessions import first_moment
from board.app.timetables import sheet_of
from board.base.clock import StoppedClock
from board.base.errors import Trouble
from board.base.exits import ExitCode
from board.evening.events import StepFinished, StepStarted
from board.evening.wishes import WriteNote
from board.files.paths import cache
from board.files.plans import read_plan_file
from board.log.read import read_log
from board.log.write import RunLog
from board.plan.load import PlanFile
from board.rehearsal.draw import Night, draw_night
from board.rehearsal.player import play
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from tests.whole.conftest import Run
from tests.whole.printed import keeps_to

PLAN = """\
event: Soup supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
kitchen: {wash up: no}
hands:
  host: {hours: {on the day: '15:00 - 23:30'}}
courses:
  - course: Soup
    at: 19:15   # sharp
    dishes:
      - dish: Leek soup
        steps:
          - step: cut the leeks
            takes: 15 to 20 to 25 min
          - step: simmer the soup
            where: stovetop, 1 ring
            takes: 25 to 30 to 35 min   # as the book says
            attended: 3 min at the start, 2 min at the end
            best within: 10 min
            keeps: 40 min hot
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_text(PLAN, encoding="utf-8")
    return path


def live(plan: Path, log: Path, *, rehearsal: bool = False) -> Path:
    """An evening on which simmering took 45 minutes and cutting 28."""
    sheet = sheet_of(plan)
    drawn = draw_night(sheet, "calm", 1)

    lasts = dict(drawn.lasts)
    lasts |= {"leek-soup/cut-the-leeks": timedelta(minutes=28), "leek-soup/simmer-the-soup": timedelta(minutes=45)}
    clock = StoppedClock(first_moment(sheet, None))
    kept = RunLog(log)
    evening = open_evening(sheet, clock, kept, rehearsal=rehearsal)
    evening.wish(WriteNote("cut them [b]finer", "leek-soup/cut-the-leeks"))
    list(play(evening, clock, Night(lasts)))
    kept.close()
    return log


def test_lessons_are_shown_with_what_they_bring_and_the_plan_is_left_alone(
    run: Run, plan: Path, tmp_path: Path
) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    code, out, _ = run("lessons", str(plan), str(log))

    assert code == ExitCode.DONE
    assert "lessons from 1 evening" in out
    assert "simmer the soup" in out
    assert "25 to 30 to 35 min" in out
    assert "worked out anew" in out
    assert plan.read_text(encoding="utf-8") == PLAN


def test_washing_up_that_nobody_wrote_is_no_lesson(run: Run, plan: Path, tmp_path: Path) -> None:
    """There is no line of the plan to write its minutes to."""
    plan.write_text(PLAN.replace("wash up: no", "wash up: yes"), encoding="utf-8")
    log = live(plan, tmp_path / "evening.jsonl")
    code, out, _ = run("lessons", str(plan), str(log), "--no-effect", "--take", "1,2")

    assert code == ExitCode.DONE
    assert "clear down" not in out
    assert "wash up: yes" in plan.read_text(encoding="utf-8")
    assert "history:" in plan.read_text(encoding="utf-8")


def test_the_timetable_worked_out_anew_is_on_time_again(run: Run, plan: Path, tmp_path: Path) -> None:
    """Fifteen minutes more on the stove: the present timetable cannot hold, the one worked out anew can."""
    log = live(plan, tmp_path / "evening.jsonl")
    _, out, _ = run("lessons", str(plan), str(log), "--json")
    (soup,) = keeps_to("lessons", out)["effect"]

    assert soup["by_plan"] > 0.9
    assert soup["as_learned"] < soup["worked_out_anew"]


def test_each_lesson_is_weighed_by_itself_and_only_what_matters_is_told(run: Run, plan: Path, tmp_path: Path) -> None:
    """Simmering hands on to the serving and makes the soup late; cutting has hours to spare, and is not told."""
    log = live(plan, tmp_path / "evening.jsonl")
    _, out, _ = run("lessons", str(plan), str(log), "--each", "--json")
    told = keeps_to("lessons", out)
    numbers = {each["name"]: each["number"] for each in told["lessons"]}
    (alone,) = told["alone"]
    (soup,) = alone["courses"]

    assert set(numbers) == {"cut the leeks", "simmer the soup"}
    assert alone["number"] == numbers["simmer the soup"]
    assert soup["as_learned"] < 0.8 < 0.9 < soup["worked_out_anew"]
    (simmer,) = [each for each in told["lessons"] if each["name"] == "simmer the soup"]
    assert simmer["after"] == "33 to 43 to 55 min"
    # It ends when it did, and nothing else moves: sooner by what it takes longer.
    assert alone["moved"] == {"name": "simmer the soup", "minutes": 30 - 43}
    assert alone["gives_up"] == []

    _, out, _ = run("lessons", str(plan), str(log), "--each")
    assert "13 min sooner" in out
    assert "Each other lesson by itself changes no course's odds" in out


def test_what_was_learned_is_told_though_the_plan_has_no_timetable(
    run: Run, plan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    plan.write_text(PLAN.replace("stovetop, 1 ring", "stovetop, 9 rings"), encoding="utf-8")
    code, out, err = run("lessons", str(plan), str(log))
    assert (code, "simmer the soup" in out, "kitchen 1" in err) == (ExitCode.STOP, True, True)

    plan.write_text(PLAN, encoding="utf-8")
    here = effects.sheet_of

    def none_for_the_changed(path: Path, *, plan: PlanFile, **asked: Any) -> RunSheet:
        if (
            plan.plan.courses[0].dishes[0].steps[1].takes
            != read_plan_file(path).plan.courses[0].dishes[0].steps[1].takes
        ):
            raise Trouble("no timetable was found in the time given")
        return here(path, plan=plan, **asked)

    monkeypatch.setattr(effects, "sheet_of", none_for_the_changed)
    code, out, _ = run("lessons", str(plan), str(log))
    assert code == ExitCode.DONE
    assert "With all of these in it the plan has no timetable" in out
    assert "no timetable was found in the time given" in out


def test_what_the_keyboard_stopped_is_told_as_not_weighed(
    plan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Stopped in the timetable of the first of two, whose search swallows it and has something all the same."""
    log = live(plan, tmp_path / "evening.jsonl")
    learning = learn_from(plan, lambda: read_evenings([log])[0])
    sheet, asked = sheet_of(plan), []

    def searched(*_: Any) -> RunSheet:
        asked.append(1)
        if len(asked) > 1:  # the first is of both together
            with suppress(KeyboardInterrupt):
                signal.raise_signal(signal.SIGINT)
        return sheet

    monkeypatch.setattr(effects, "_anew", searched)
    monkeypatch.setattr(effects, "LEAST_SHARE", -1)  # so both count
    brings = effects.effect(learning, learning.found.lessons, each=True)

    assert sorted(brings.unweighed) == [1, 2]
    assert len(asked) == 2
    assert not any(each.found for each in brings.alone)


def test_a_plan_that_is_only_tried_leaves_no_timetable_for_another(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    before = {sheet.digest for sheet in cache().all()}
    run("lessons", str(plan), str(log))

    assert {sheet.digest for sheet in cache().all()} - before <= {sheet_of(plan).digest}


def test_taken_lessons_are_written_once_with_a_copy_beside(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    code, _, said = run("lessons", str(plan), str(log), "--take", "1,2,3")
    after = plan.read_text(encoding="utf-8")
    again, _, err = run("lessons", str(plan), str(log), "--take", "all")
    (copy,) = tmp_path.glob("supper.yaml.bak-*")

    assert code == ExitCode.DONE
    assert "min   # as the book says" in after
    assert "at: 19:15   # sharp" in after
    assert "all lessons; from 2026-11-28 [" in after
    assert copy.read_text(encoding="utf-8") == PLAN
    assert str(copy) in said
    assert again == ExitCode.FAILED
    assert "nothing to take" in err
    assert plan.read_text(encoding="utf-8") == after
    assert run("check", str(plan))[0] == ExitCode.DONE


def test_one_by_number_leaves_the_others(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    run("lessons", str(plan), str(log), "--take", "1")
    _, out, _ = run("lessons", str(plan), str(log), "--no-effect")

    assert "takes: 25 to 30 to 35 min" in plan.read_text(encoding="utf-8")
    assert "\n1  simmer the soup" in out
    assert "16 to 25" not in out  # of the leeks only the note is left
    code, _, err = run("lessons", str(plan), str(log), "--take", "7")
    assert (code, "no lesson number 7" in err) == (ExitCode.FAILED, True)


def test_a_rehearsal_teaches_nothing(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "played.jsonl", rehearsal=True)
    _, out, _ = run("lessons", str(plan), str(log))

    assert "No evening to learn from" in out
    assert "1 rehearsal left out" in out


def test_without_a_log_all_evenings_of_the_folder_are_read_and_what_is_none_is_told(
    run: Run, plan: Path, home: Path
) -> None:
    folder = home / "XDG_DATA_HOME" / "platecall" / "logs"
    folder.mkdir(parents=True)
    live(plan, folder / "soup-supper-2026-11-28.jsonl")
    (folder / "notes.jsonl").write_text("milk, eggs\n")
    _, out, err = run("lessons", str(plan), "--no-effect")

    assert "lessons from 1 evening" in out
    assert "notes.jsonl:1: this is not a run log" in err


def test_a_night_of_mishaps_is_drawn_from_what_evenings_showed(
    run: Run, plan: Path, home: Path, tmp_path: Path
) -> None:
    """The plan knows no simmering over 35 min; the one evening took 45, and most nights after it go beyond 35."""

    def night(seed: int, name: str) -> tuple[str, float]:
        log = tmp_path / f"{name}.jsonl"
        code, out, err = run("rehearse", str(plan), "--mishaps", "calm", "--seed", str(seed), "--log", str(log))
        assert code == ExitCode.DONE, err
        events = read_log(log.read_bytes(), log.name).events
        at = {
            type(event): event.at
            for event in events
            if isinstance(event, StepStarted | StepFinished) and event.slot == "leek-soup/simmer-the-soup"
        }
        return out, (at[StepFinished] - at[StepStarted]) / timedelta(minutes=1)

    before = [night(seed, f"before-{seed}") for seed in (1, 2, 3)]
    folder = home / "XDG_DATA_HOME" / "platecall" / "logs"
    folder.mkdir(parents=True, exist_ok=True)
    live(plan, folder / "soup-supper-2026-11-28.jsonl")
    after = [night(seed, f"after-{seed}") for seed in (1, 2, 3)]

    assert all(minutes <= 35 for _, minutes in before)
    assert sum(minutes > 35 for _, minutes in after) >= 2
    assert not any("Lengths were drawn" in out for out, _ in before)
    assert all("Lengths were drawn from what 1 evening showed" in out for out, _ in after)


def test_what_was_noted_stands_in_the_plan_and_on_the_next_sheet(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    _, out, _ = run("lessons", str(plan), str(log), "--no-effect")
    assert "3  cut the leeks  cut them [b]finer (2026-11-28)" in out

    code, _, err = run("lessons", str(plan), str(log), "--take", "3")
    assert code == ExitCode.DONE, err
    assert "takes: 15 to 20 to 25 min" in plan.read_text(encoding="utf-8")
    _, out, _ = run("lessons", str(plan), str(log), "--no-effect", "--json")
    assert json.loads(out)["notes"] == []
    assert len(json.loads(out)["lessons"]) == 2
    for more in ([], ["--for", "wall"], ["--markdown"], ["--json"]):
        _, sheet, _ = run("sheet", str(plan), *more)
        assert "[b]finer" in sheet.replace("\\", ""), more


SALAD = """\
event: Salad supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands:
  host: {hours: {on the day: '12:00 - 23:30'}}
courses:
  - course: Salad
    at: 19:00
    dishes:
      - dish: Chicken salad
        perishable: yes
        steps:
          - {step: pick and dress the chicken, takes: 40 to 50 to 60 min, keeps: 10 min in the room}
jobs:
  - {job: put it away, after: 'clear Salad, at most 5 min', takes: 5 min, puts away: Salad}
"""


def test_lessons_that_leave_food_out_too_long_say_so_and_may_be_refused(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Three evenings of 140 min: learned, it stands out beyond its two hours; with the plan's 50 it does not."""
    plan = tmp_path / "salad.yaml"
    plan.write_text(SALAD, encoding="utf-8")
    sheet = sheet_of(plan)
    assert sheet.stops == ()
    logs = []
    for number in (1, 2, 3):
        clock = StoppedClock(first_moment(sheet, None) + timedelta(seconds=number))
        logs.append(tmp_path / f"{number}.jsonl")
        kept = RunLog(logs[-1])
        lasts = {"chicken-salad/pick-and-dress-the-chicken": timedelta(minutes=140)}
        list(play(open_evening(sheet, clock, kept, rehearsal=False), clock, Night(lasts)))
        kept.close()

    _, out, _ = run("lessons", str(plan), *map(str, logs))
    told = out.split("How often each course")[0]
    assert "must be mended before anybody eats" in told
    assert "▲ food 10: Chicken salad" in told
    assert "0 of 3" in out  # nor was it on time then

    with monkeypatch.context() as typed:
        typed.setattr(terminal, "has_terminal", lambda: True)
        typed.setattr("sys.stdin", io.StringIO("\n"))
        code, out, err = run("lessons", str(plan), *map(str, logs), "--take", "all")
    assert (code, "Nothing taken" in out, "food 10" in err) == (ExitCode.DONE, True, True)
    assert plan.read_text(encoding="utf-8") == SALAD

    code, out, err = run("lessons", str(plan), *map(str, logs), "--take", "all")
    assert code == ExitCode.STOP
    assert "pick and dress the chicken" in out
    assert "With these figures this must be mended" in err
    assert "food 10: Chicken salad" in err


def test_evenings_of_another_plan_teach_nothing_and_that_is_said(run: Run, plan: Path, tmp_path: Path) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    other = tmp_path / "salad.yaml"
    other.write_text(SALAD, encoding="utf-8")
    _, out, _ = run("lessons", str(other), str(log))

    assert "None of these evenings has a step of this plan" in out
    assert "figures hold" not in out


def test_lessons_are_taken_by_a_range_and_a_second_copy_has_a_number_at_its_end(
    run: Run, plan: Path, tmp_path: Path
) -> None:
    log = live(plan, tmp_path / "evening.jsonl")
    code, _, err = run("lessons", str(plan), str(log), "--take", "1-2", "--no-effect")
    assert code == ExitCode.DONE, err
    after = plan.read_text(encoding="utf-8")
    assert "takes: 15 to 20 to 25 min" not in after
    assert "takes: 25 to 30 to 35 min" not in after
    run("lessons", str(plan), str(log), "--take", "all", "--no-effect")  # the note
    names = sorted(each.name.split(".bak-")[1] for each in tmp_path.glob("supper.yaml.bak-*"))
    assert [name[10:] for name in names] == ["", "-2"]


@pytest.mark.parametrize("bad", ["some", "0", "1,", "", "-2", "1;2", "3-1", "1-", "1-x"])
def test_a_bad_choice_is_one_message(run: Run, plan: Path, bad: str) -> None:
    code, _, err = run("lessons", str(plan), f"--take={bad}")

    assert code == ExitCode.USAGE
    assert "neither all nor numbers" in err
