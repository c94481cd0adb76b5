"""Calls spoken by a command: a small script of our own stands for it. It is never waited for, never a shell, never
on the screen, and what goes wrong is told once."""

import asyncio
import os
import stat
import sys
import time
import wave
from pathlib import Path
from shutil import which

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.screens.speech import Speaker, Spoken, command_of, spoken


@pytest.fixture
def voice(tmp_path: Path) -> Path:
    """A script that writes down each of its arguments, and what it is given on standard input."""
    script = tmp_path / "voice"
    script.write_text(
        f"#!{sys.executable}\nimport sys\n"
        f"with open({str(tmp_path / 'heard')!r}, 'a') as heard:\n"
        "    print(sys.argv[1:], sys.stdin.read(), file=heard)\nprint('noise')\nprint('noise', file=sys.stderr)\n"
    )
    script.chmod(script.stat().st_mode | stat.S_IXUSR)
    return script


def script(tmp_path: Path, body: str) -> str:
    file = tmp_path / "other"
    file.write_text(f"#!{sys.executable}\n{body}\n")
    file.chmod(0o755)
    return str(file)


async def finished(speaker: Speaker) -> None:
    while speaker._task is not None and not speaker._task.done():
        await asyncio.sleep(0.01)


def heard(tmp_path: Path) -> list[str]:
    file = tmp_path / "heard"
    return file.read_text().splitlines() if file.exists() else []


@pytest.mark.parametrize(
    ("line", "text", "made"),
    [
        ("espeak-ng", "Soup on", Spoken(("espeak-ng", "Soup on"), None)),
        ("espeak-ng -s 140", "Soup on", Spoken(("espeak-ng", "-s", "140", "Soup on"), None)),
        ("say --text={} -q", "Soup on", Spoken(("say", "--text=Soup on", "-q"), None)),
        ("espeak-ng --stdin -", "-v", Spoken(("espeak-ng", "--stdin"), b" -v\n")),
        ("say", "-o /tmp/x", Spoken(("say", " -o /tmp/x"), None)),
        ("'my voice' {}", "\u2014\x1b]0;X\x07 soup\n\0", Spoken(("my voice", "\u2014 ]0;X soup"), None)),
    ],
)
def test_how_the_words_are_handed_on(line: str, text: str, made: Spoken) -> None:
    assert spoken(command_of(line), text) == made


@given(st.text())
def test_no_text_can_become_an_option_or_hold_a_control_character(text: str) -> None:
    (_, said) = spoken(("say",), text).arguments

    assert not said.startswith("-")
    assert not any(ord(sign) < 32 or 127 <= ord(sign) < 160 for sign in said)


@pytest.mark.parametrize("line", ["", "   ", "-", "'open", "say \\"])
def test_what_is_no_command_is_refused(line: str) -> None:
    with pytest.raises(ValueError, match=r".*"):
        command_of(line)


async def test_it_speaks_and_nothing_reaches_a_shell(
    voice: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    told: list[str] = []
    speaker = Speaker((str(voice),), told.append)

    speaker.say("Soup on; touch x `touch x` $(touch x) | touch x > x")
    await finished(speaker)

    assert heard(tmp_path) == ["['Soup on; touch x `touch x` $(touch x) | touch x > x'] "]
    assert not (tmp_path / "x").exists()
    assert told == []
    assert capfd.readouterr() == ("", "")


@pytest.mark.skipif(which("espeak-ng") is None, reason="espeak-ng is not installed")
@pytest.mark.parametrize("given", ["", " --stdin -"])
async def test_a_real_voice_speaks_longer_for_more_words(tmp_path: Path, given: str) -> None:
    """Into a file, as a wave of speech: RIFF, WAVE (Microsoft and IBM, 1991), from memory."""
    told: list[str] = []
    seconds = []
    for number, text in enumerate(["Soup on", "Soup on: simmer it until a spoon crushes the carrot"]):
        file = tmp_path / f"{number}.wav"
        speaker = Speaker(command_of(f"espeak-ng -w {file}{given}"), told.append)
        speaker.say(text)
        await finished(speaker)
        with wave.open(str(file)) as sound:
            seconds.append(sound.getnframes() / sound.getframerate())

    assert told == []
    assert 0.3 < seconds[0] < 3 < seconds[1] + 1.5
    assert seconds[1] > 2 * seconds[0]


async def test_on_standard_input_where_the_command_says_so(voice: Path, tmp_path: Path) -> None:
    speaker = Speaker((str(voice), "-"), lambda _: None)

    speaker.say("-v Soup on")
    await finished(speaker)

    assert heard(tmp_path)[0] == "[]  -v Soup on"


async def test_it_is_never_waited_for_and_a_newer_call_replaces_one_that_waits(tmp_path: Path) -> None:
    slow = script(
        tmp_path,
        f"import sys, time\ntime.sleep(0.5)\nopen({str(tmp_path / 'heard')!r}, 'a').write(sys.argv[1] + '\\n')",
    )
    speaker = Speaker((slow,), lambda _: None)

    began = time.perf_counter()
    speaker.say("first")
    await asyncio.sleep(0.1)
    speaker.say("second")
    speaker.say("third")
    assert time.perf_counter() - began < 0.4
    await finished(speaker)

    assert heard(tmp_path) == ["first", "third"]


async def test_a_command_that_hangs_is_ended_with_all_it_started(tmp_path: Path) -> None:
    hung = script(
        tmp_path,
        "import subprocess, sys, time, os\n"
        "child = subprocess.Popen(['sleep', '60'])\n"
        f"open({str(tmp_path / 'heard')!r}, 'w').write(f'{{os.getpid()}} {{child.pid}}')\ntime.sleep(60)",
    )
    told: list[str] = []
    speaker = Speaker((hung,), told.append, longest_seconds=1.0)

    speaker.say("Soup on")
    await finished(speaker)
    await asyncio.sleep(0.3)

    assert "and was ended" in told[0]
    for pid in (int(number) for number in heard(tmp_path)[0].split()):
        assert not is_running(pid)


def is_running(pid: int) -> bool:
    try:
        os.kill(pid, 0)
    except ProcessLookupError:
        return False
    state = Path(f"/proc/{pid}/stat")
    return not (state.exists() and state.read_text().rsplit(")", 1)[1].split()[0] == "Z")


async def test_what_stands_on_the_board_is_not_spoken_after_it_is_left(tmp_path: Path) -> None:
    slow = script(tmp_path, f"import time\ntime.sleep(0.6)\nopen({str(tmp_path / 'heard')!r}, 'w').write('late')")
    speaker = Speaker((slow,), lambda _: None)
    speaker.say("Soup on")
    await asyncio.sleep(0.2)

    speaker.stop()
    await asyncio.sleep(1.0)

    assert heard(tmp_path) == []


@pytest.mark.parametrize("kind", ["not there", "not to be run", "fails"])
async def test_a_failure_is_told_once(tmp_path: Path, kind: str) -> None:
    if kind == "fails":
        command = script(tmp_path, "raise SystemExit(3)")
    else:
        command = str(tmp_path / "none")
        if kind == "not to be run":
            Path(command).write_text("words")
    told: list[str] = []
    speaker = Speaker((command,), told.append)

    for text in ("one", "two", "three"):
        speaker.say(text)
        await finished(speaker)

    assert len(told) == 1
    assert ("it ended with 3" in told[0]) is (kind == "fails")
