"""Every command from its words to its exit code."""

import json
import os
import re
import subprocess
import sys
from datetime import datetime, timedelta
from pathlib import Path

import jsonschema
import pytest
from msgspec.structs import replace

from board.app import words as app_words
from board.base.exits import ExitCode
from board.output.sheet_form import outside_form
from board.plan.places import read_yaml
from board.sheet.company import busiest
from board.sheet.run_sheet import RunSheet
from tests.conftest import PLANS
from tests.whole.conftest import LANTERN, Run

KEYS = {"format", "plan", "zone", "proved", "open", "solve_seconds", "valid", "away_minutes", "courses", "steps",
        "given_up", "assumed", "rules", "stops", "cautions", "clocks", "noted", "cold", "sources"}  # fmt: skip
COURSE_KEYS = {"name", "wanted", "served", "late_minutes", "sit_till"}
STEP_KEYS = {"id", "dish", "course", "lane", "start", "end", "attended", "uses", "decide", "how", "goes_in", "leaves",
             "give_minutes", "noted", "assumed"}  # fmt: skip


def test_bare_it_says_what_it_can_do_and_offers_the_bundled_plan(run: Run) -> None:
    code, out, _ = run()

    assert code == ExitCode.DONE
    for command in (*app_words.COMMANDS, "lantern-supper.yaml"):
        assert f"{command} " in out


def test_the_busiest_half_hour_has_no_more_than_thirty_minutes(lantern_sheet: RunSheet) -> None:
    """Work that began before it counts from its first minute only: boiled from 18:00, plated at 18:45, is 5 of 30."""
    course = lantern_sheet.courses[0]
    plated = lantern_sheet.by_id()[course.serve].start
    ends = plated - timedelta(minutes=25)
    work = lantern_sheet.slots[0]
    part = replace(work.attended[0], start=plated - timedelta(minutes=45), end=ends, who="host")
    alone = replace(
        lantern_sheet, courses=(course,), slots=(replace(work, attended=(part,)), lantern_sheet.by_id()[course.serve])
    )

    assert busiest(alone) == (course.name, 5)


@pytest.mark.parametrize("command", app_words.COMMANDS)
def test_every_command_has_help_with_an_example(run: Run, command: str) -> None:
    code, out, _ = run(command, "--help")

    assert code == ExitCode.DONE
    assert re.search(rf"^  (?:printf .* \| )?platecall {command}\b", out.partition("example:\n")[2], re.MULTILINE)


@pytest.mark.parametrize(
    "typed", [["cook"], ["sheet"], ["rehearse", "x.yaml", "--speed", "fast"], ["rehearse", "x", "--speed", "0"],
              ["rehearse", "x", "--from", "25:00"], ["sheet", LANTERN, "--by", "colour"]],
)  # fmt: skip
def test_words_not_understood_exit_64(run: Run, typed: list[str]) -> None:
    code, _, err = run(*typed)

    assert code == ExitCode.USAGE
    assert "usage:" in err


def test_the_bundled_plan_checks_clean_and_lists_what_it_assumes(run: Run) -> None:
    code, out, _ = run("check", LANTERN)

    assert code == ExitCode.DONE
    assert "every course on time" in out
    assert "Assumed" in out
    assert "local food-safety code" in out
    assert "STOP" not in out


def test_a_terminal_that_knows_only_ascii_gets_question_marks(home: Path, tmp_path: Path) -> None:
    plan = tmp_path / "crème.yaml"
    plan.write_text("event: Crème brûlée\ndate: tomorrow\n", encoding="utf-8")
    command = [sys.executable, "-m", "board", "check", str(plan)]
    environment = {**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"}
    done = subprocess.run(command, env=environment, capture_output=True, timeout=60, check=False)

    assert done.returncode == ExitCode.STOP
    assert b"Traceback" not in done.stderr
    assert b"cr?me.yaml:2:7: plan 7: " in done.stdout + done.stderr


def test_a_bad_plan_exits_2_with_every_place(run: Run, tmp_path: Path) -> None:
    plan = tmp_path / "bad.yaml"
    text = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
    plan.write_text(text.replace("best within: 25 min", "best witin: 25 min").replace("rings: 4", "rings: four"))

    for command in (["check"], ["sheet"], ["rehearse", "--plain"]):
        code, out, err = run(command[0], str(plan), *command[1:])

        assert code == ExitCode.STOP
        assert out == ""
        assert f"{plan}:" in err
        assert "Did you mean 'best within'?" in err
        assert "'four' is not a number for `rings`" in err


def test_what_the_kitchen_cannot_do_stops_with_its_line(run: Run, tmp_path: Path) -> None:
    plan = tmp_path / "five-rings.yaml"
    text = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
    plan.write_text(
        text.replace("where: stovetop, 2 rings, frying pan, casserole", "where: stovetop, 5 rings, casserole")
    )
    line = next(n for n, row in enumerate(plan.read_text().splitlines(), 1) if "5 rings" in row)

    code, out, _ = run("check", str(plan))
    sheet_code, _, err = run("sheet", str(plan))

    assert code == sheet_code == ExitCode.STOP
    assert f"{plan}:{line}:" in out
    assert f"{plan}:{line}:" in err
    assert "asks for 5 rings, and there are 4" in out


@pytest.mark.parametrize("command", ["check", "sheet", "odds", "live", "rehearse", "review", "calendar", "dish"])
def test_files_that_are_not_there_or_not_text(run: Run, tmp_path: Path, command: str) -> None:
    binary = tmp_path / "photo.yaml"
    binary.write_bytes(b"\x89PNG\r\n\x1a\n\x00\xff\xfe" * 50)

    missing = run(command, str(tmp_path / "none.yaml"))
    folder = run(command, str(tmp_path))
    wrong = run(command, str(binary))

    for code, out, err in (missing, folder, wrong):
        assert code in (ExitCode.FAILED, ExitCode.STOP)
        assert out == ""
        assert err.strip()
        assert "Traceback" not in err


def test_the_sheet_for_other_programs_keeps_its_form(run: Run) -> None:
    code, out, _ = run("sheet", LANTERN, "--json")
    form = json.loads(out)

    assert code == ExitCode.DONE
    assert set(form) == KEYS
    assert form["valid"] is True
    assert form["proved"] is True
    assert form["open"] == []
    assert all(set(course) == COURSE_KEYS for course in form["courses"])
    assert all(set(step) == STEP_KEYS for step in form["steps"])
    assert len(form["steps"]) >= 30
    for step in form["steps"]:
        start, end = (datetime.fromisoformat(step[key]) for key in ("start", "end"))
        assert start.utcoffset() is not None
        assert start <= end
        for part in step["attended"]:
            assert set(part) == {"start", "end", "who"}
        for use in step["uses"]:
            assert set(use) == {"what", "amount", "start", "end", "celsius"}
    assert form["given_up"] == []
    assert all(isinstance(line, str) for line in form["assumed"])


@pytest.mark.slow
def test_the_same_plan_gives_the_same_sheet(run: Run) -> None:
    forms = []
    for _ in range(2):
        _, out, _ = run("sheet", LANTERN, "--json", "--fresh")
        form = json.loads(out)
        form.pop("solve_seconds")
        forms.append(form)

    assert forms[0] == forms[1]


def test_a_kept_sheet_opens_without_reader_or_solver(
    run: Run, monkeypatch: pytest.MonkeyPatch, lantern_sheet: RunSheet
) -> None:
    run("sheet", LANTERN)

    def never(*_: object) -> None:
        raise AssertionError("solved again")

    monkeypatch.setattr("board.app.timetables._work_out", never)
    code, out, _ = run("sheet", LANTERN, "--by", "lane")

    assert code == ExitCode.DONE
    assert "Stovetop" in out


@pytest.mark.parametrize("by", ["day", "person", "lane"])
def test_the_sheet_lists_every_step_however_grouped(run: Run, by: str, lantern_sheet: RunSheet) -> None:
    _, out, _ = run("sheet", LANTERN, "--by", by)
    folded = " ".join(out.split())

    for slot in lantern_sheet.slots:
        assert slot.name.split()[0] in folded


def test_a_plain_rehearsal_plays_the_evening_and_its_log_is_reviewed(run: Run, home: Path) -> None:
    code, out, _ = run("rehearse", LANTERN)

    assert code == ExitCode.DONE
    assert "4 of 4 courses on time" in out
    log = out.strip().splitlines()[-1].removeprefix("Run log: ")
    assert Path(log).is_relative_to(home)

    code, text, _ = run("review", log, "--all")
    assert code == ExitCode.DONE
    assert "Nothing ran over" in text
    code, out, _ = run("review", log, "--json")
    form = json.loads(out)
    assert form["closed"]
    assert [course["late_minutes"] for course in form["courses"]] == [0, 0, 0, 0]
    assert all(step["status"] == "finished" for step in form["steps"])


def test_a_second_plain_rehearsal_never_writes_over_the_first(run: Run, tmp_path: Path) -> None:
    log = tmp_path / "mine.jsonl"
    run("rehearse", LANTERN, "--plain", "--log", str(log))
    before = log.read_bytes()

    code, _, err = run("rehearse", LANTERN, "--plain", "--log", str(log))

    assert code == ExitCode.FAILED
    assert "already" in err
    assert log.read_bytes() == before


def test_a_log_where_nothing_can_be_written_is_told(run: Run, tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("in the way")

    code, _, err = run("rehearse", LANTERN, "--plain", "--log", str(blocked / "evening.jsonl"))

    assert code == ExitCode.FAILED
    assert "--log" in err


def test_live_needs_a_terminal(run: Run) -> None:
    code, _, err = run("live", LANTERN)

    assert code == ExitCode.FAILED
    assert "terminal" in err


def test_the_schema_accepts_every_bundled_plan_and_sees_a_mistyped_key(run: Run) -> None:
    """Oracle: the jsonschema library, draft 2020-12."""
    _, out, _ = run("schema")
    schema = json.loads(out)
    jsonschema.Draft202012Validator.check_schema(schema)
    checker = jsonschema.Draft202012Validator(schema)

    for file in PLANS.glob("*.yaml"):
        data, _, snags = read_yaml(file.read_text(encoding="utf-8"), file.name)
        assert snags == []
        assert list(checker.iter_errors(data)) == []
        data["courses"][0]["dishes"][0]["steps"][0]["tkes"] = "5 min"
        assert list(checker.iter_errors(data))


def test_the_json_of_another_programs_reader_is_that_of_the_sheet(lantern_sheet: RunSheet) -> None:
    form = outside_form(lantern_sheet, valid=True)

    assert json.loads(json.dumps(form)) == form
