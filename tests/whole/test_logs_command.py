"""`logs`, `review` of several evenings, `schema --log` and `rehearse --mishaps`, from the words typed."""

import json
import re
import shutil
import zlib
from html.parser import HTMLParser
from pathlib import Path

import pytest

from board.base.exits import ExitCode
from board.files.paths import logs_folder
from board.log.read import read_log
from tests.whole.conftest import Run
from tests.whole.printed import keeps_to

PLAN = """\
event: <b>Soup</b> & co
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [Ines, 'Tomas, vegetarian', 2 others, host]
hands:
  host: {hours: {on the day: '15:00 - 23:30'}}
courses:
  - course: Soup
    at: 18:45
    eaten in: 20 to 25 to 40 min
    dishes:
      - dish: Soup for Ines
        steps:
          - {step: cut the leeks, takes: 15 to 20 to 30 min}
          - {step: simmer the soup, where: 'stovetop, 1 ring', takes: 25 to 30 to 40 min, keeps: 40 min hot}
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    path = tmp_path / "supper.yaml"
    path.write_text(PLAN, encoding="utf-8")
    return path


@pytest.fixture
def logs(run: Run, plan: Path, tmp_path: Path) -> list[Path]:
    found = [tmp_path / f"night-{seed}.jsonl" for seed in (1, 2)]
    for seed, path in enumerate(found, 1):
        code, _, err = run("rehearse", str(plan), "--mishaps", "rough", "--seed", str(seed), "--log", str(path))
        assert code == ExitCode.DONE, err
    return found


def test_a_night_with_mishaps_ends_in_words(run: Run, plan: Path, tmp_path: Path) -> None:
    command = ("rehearse", str(plan), "--mishaps", "rough", "--seed", "3", "--log")
    _, first, _ = run(*command, str(tmp_path / "a.jsonl"))
    _, again, _ = run(*command, str(tmp_path / "b.jsonl"))

    assert "How the night went" in first
    assert first.splitlines()[:-1] == again.splitlines()[:-1]


def test_the_review_of_such_a_night_tells_what_it_cost_as_the_night_itself_did(
    run: Run, plan: Path, tmp_path: Path
) -> None:
    log = tmp_path / "night.jsonl"
    _, played, _ = run("rehearse", str(plan), "--mishaps", "rough", "--seed", "3", "--log", str(log))
    lines = played.splitlines()
    account = lines[next(n for n, line in enumerate(lines) if line.startswith("The night cost")) : -1]
    _, reviewed, _ = run("review", str(log))

    form = keeps_to("review", run("review", str(log), "--json")[1])

    assert account
    assert " ".join(form["rehearsed_night"]) == " ".join(" ".join(account).split())
    assert "What the rehearsed night cost" in reviewed
    assert " ".join(" ".join(account).split()) in " ".join(reviewed.split())


def test_the_review_of_a_rehearsal_without_mishaps_tells_of_no_night(run: Run, plan: Path, tmp_path: Path) -> None:
    log = tmp_path / "plain.jsonl"
    run("rehearse", str(plan), "--plain", "--log", str(log))

    assert "night" not in run("review", str(log))[1]


def test_logs_are_listed_with_how_they_ended(run: Run, logs: list[Path]) -> None:
    code, out, _ = run("logs", *map(str, logs))

    assert code == ExitCode.DONE
    assert out.count("rehearsal") == 2
    assert out.count("closed") == 2
    assert all(f"\n  {log}\n" in out for log in logs)  # whole, to be copied
    assert run("logs")[1].strip() == "No run logs yet."


@pytest.mark.parametrize("command", ["logs", "review"])
def test_one_log_that_cannot_be_read_hides_no_other(run: Run, logs: list[Path], tmp_path: Path, command: str) -> None:
    cut = tmp_path / "cut.jsonl"
    cut.write_bytes(logs[0].read_bytes()[:200])
    code, out, err = run(command, str(logs[0]), str(cut), str(logs[1]))

    assert code == ExitCode.FAILED
    assert out.count("2026-11-28") >= 2
    assert err.startswith(f"{cut}:1: ")
    assert run(command, str(cut))[:2] == (ExitCode.FAILED, "")


def test_events_come_as_csv(run: Run, logs: list[Path]) -> None:
    _, out, _ = run("logs", "--csv", *map(str, logs))

    assert out.startswith("log,n,at,event,")
    assert "night-2.jsonl,1," in out


def test_a_copy_without_names_is_a_whole_log_and_overwrites_nothing(
    run: Run, plan: Path, logs: list[Path], tmp_path: Path
) -> None:
    copy = tmp_path / "copy.jsonl"
    command = ("logs", "--anonymise", str(logs[0]), "-o", str(copy), "--plan", str(plan))
    code, _, said = run(*command)
    data = copy.read_bytes()

    assert code == ExitCode.DONE
    assert "2 names replaced" in said
    assert b"Ines" not in data
    assert read_log(data, "copy").dropped is None
    assert run("review", str(copy))[0] == ExitCode.DONE
    assert run(*command)[0] == ExitCode.FAILED
    assert copy.read_bytes() == data


@pytest.mark.parametrize("missing", [["--names", "Ines"], ["-o", "x.jsonl"]])
def test_without_a_place_or_names_nothing_is_written(run: Run, logs: list[Path], missing: list[str]) -> None:
    code, _, err = run("logs", "--anonymise", str(logs[0]), *missing)

    assert code == ExitCode.USAGE
    assert "say" in err
    assert not Path("x.jsonl").exists()


def test_several_evenings_in_one_table(run: Run, logs: list[Path]) -> None:
    code, out, _ = run("review", *map(str, logs))

    assert code == ExitCode.DONE
    assert len([line for line in out.splitlines() if line.startswith("2026-11-28  ")]) == 2
    assert [form["plan"] for form in json.loads(run("review", "--json", *map(str, logs))[1])] == [
        "<b>Soup</b> & co"
    ] * 2


def test_one_evening_says_what_was_behind_it(run: Run, logs: list[Path]) -> None:
    _, out, _ = run("review", str(logs[0]), "--odds", "--all")
    form = json.loads(run("review", "--json", "--odds", str(logs[0]))[1])

    assert "What made it late" in out
    assert "The odds beforehand, and what came" in out
    assert "in the kitchen while the guests were there" in out
    assert form["late_because"][0]["course"] == "Soup"
    assert 0 <= form["odds"]["Soup"] <= 1


class Tags(HTMLParser):
    """Which tags a page has."""

    def __init__(self) -> None:
        super().__init__()
        self.seen: list[str] = []

    def handle_starttag(self, tag: str, attrs: object) -> None:
        self.seen.append(tag)


def test_the_page_holds_all_and_no_foreign_tag(run: Run, logs: list[Path], tmp_path: Path) -> None:
    out = tmp_path / "page.html"
    code, _, said = run("review", *map(str, logs), "--html", str(out), "--paper", "letter")
    text = out.read_text(encoding="utf-8")
    tags = Tags()
    tags.feed(text)

    assert code == ExitCode.DONE
    assert "&lt;b&gt;Soup&lt;/b&gt; &amp; co" in text
    assert not {"b", "script", "link", "img"} & set(tags.seen)
    assert str(out) in said
    assert "size: letter" in text
    assert {"Soup", "cut the leeks", "simmer the soup", "serve Soup"} <= set(re.findall(r"<tr><td>([^<]+)</td>", text))
    assert "http" not in text.replace("http-equiv", "")
    assert run("review", str(logs[0]), "--html", str(out))[0] == ExitCode.DONE  # a page of ours is written anew
    assert len(out.read_text(encoding="utf-8")) < len(text)
    out.write_text("my own notes")
    assert run("review", str(logs[0]), "--html", str(out))[0] == ExitCode.FAILED
    assert out.read_text() == "my own notes"


def test_the_schema_of_a_line(run: Run) -> None:
    code, out, _ = run("schema", "--log")

    assert code == ExitCode.DONE
    assert "StepFinished" in json.loads(out)["$defs"]


def test_one_log_of_odd_values_keeps_no_other_from_being_read(
    run: Run, plan: Path, logs: list[Path], tmp_path: Path
) -> None:
    lines = logs[0].read_bytes().splitlines()
    odd = tmp_path / "odd.jsonl"
    forms = [json.loads(line) for line in lines[1:]]
    for form in forms:
        form.pop("crc")
        if "sheet" in form:
            form["sheet"]["slots"][0]["end"] = "9999-12-31T23:59:59Z"
            form["sheet"] |= {"plan": "of a plan long gone", "digest": "0"}  # else it is read by the timetable kept
    bodies = [json.dumps(form, separators=(",", ":")).encode() for form in forms]
    odd.write_bytes(b"".join(body[:-1] + b',"crc":"%08x"}\n' % zlib.crc32(body) for body in bodies))

    code, out, err = run("logs", str(odd), str(logs[1]))
    assert (code, "night-2" in out, "odd.jsonl" in err) == (ExitCode.FAILED, True, True)
    code, out, err = run("review", str(odd), str(logs[1]))
    assert (code, "Soup" in out, "odd.jsonl" in err) == (ExitCode.FAILED, True, True)
    logs_folder().mkdir(parents=True, exist_ok=True)
    shutil.copy(odd, logs_folder())
    code, _, err = run("lessons", str(plan), "--no-effect")
    assert (code, "odd.jsonl" in err) == (ExitCode.DONE, True)
