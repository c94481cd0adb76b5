"""The command as a user has it: own data and cache folders, so that nothing of the machine's is touched."""

from collections.abc import Callable
from pathlib import Path

import pytest

from board.cli import main
from board.files import paths
from tests.conftest import PLANS

LANTERN = str(PLANS / "lantern-supper.yaml")

Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def home(cold_home: Path, keep_lantern: Callable[[Path], None]) -> Path:
    """Where the bundled plan's timetable has been worked out before."""
    keep_lantern(paths.cache().folder)
    return cold_home


@pytest.fixture
def cold_home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Where the program was never used."""
    for name in ("XDG_DATA_HOME", "XDG_CACHE_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name))
    monkeypatch.setenv("HOME", str(tmp_path))
    return tmp_path


@pytest.fixture
def run(home: Path, capsys: pytest.CaptureFixture[str]) -> Run:
    """Runs the command in this process: exit code, stdout, stderr."""

    def call(*words: str) -> tuple[int, str, str]:
        try:
            code = main(list(words))
        except SystemExit as left:
            code = int(left.code or 0)
        out = capsys.readouterr()
        return code, out.out, out.err

    return call
