"""Completion, asked of the shells themselves where they are installed (programmable completion: Bash manual, 8.6)."""

import shutil
import subprocess
from pathlib import Path

import pytest

from board.app import words
from board.app.completion import SHELLS
from tests.whole.conftest import Run

ASK = """
source completion.bash
COMP_WORDS=({typed} "{last}"); COMP_CWORD=$((${{#COMP_WORDS[@]}} - 1)); COMPREPLY=()
_shtab_platecall "${{COMP_WORDS[0]}}" "{last}" 2>/dev/null
printf '%s\\n' "${{COMPREPLY[@]}}"
"""


@pytest.mark.skipif(shutil.which("bash") is None, reason="no bash here")
def test_bash_completes_commands_options_choices_and_files(run: Run, tmp_path: Path) -> None:
    (tmp_path / "completion.bash").write_text(run("completion", "bash")[1], encoding="utf-8")
    (tmp_path / "supper.yaml").touch()

    def completed(typed: str, last: str) -> set[str]:
        script = ASK.format(typed=typed, last=last)
        done = subprocess.run(["bash", "-c", script], cwd=tmp_path, capture_output=True, text=True, check=True)
        return set(done.stdout.split())

    assert completed("platecall", "re") == {"rehearse", "review"}
    assert completed("platecall sheet", "--b") == {"--by"}
    assert completed("platecall sheet --by", "") == {"day", "person", "lane"}
    assert completed("platecall dishes", "") == {"keep", "show", "drop", "fill"}
    assert completed("platecall check", "supp") == {"supper.yaml"}


@pytest.mark.parametrize("shell", SHELLS)
def test_each_script_knows_every_command_and_is_sound(run: Run, tmp_path: Path, shell: str) -> None:
    code, out, err = run("completion", shell)
    script = tmp_path / "script"
    script.write_text(out, encoding="utf-8")

    assert (code, err) == (0, "")
    assert [command for command in words.COMMANDS if command not in out] == []
    if shutil.which(shell):
        subprocess.run([shell, "-n", str(script)], check=True)
