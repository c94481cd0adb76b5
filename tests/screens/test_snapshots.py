"""The board drawn at six moments of an evening in four sizes, text and colours, against pictures kept beside.

Drawn anew by `PICTURES=new python -m pytest tests/screens/test_snapshots.py`; look at what changed before it is kept.
"""

import os

import pytest

from board.screens.app import BoardApp
from board.session.session import Evening
from tests.screens.conftest import Recorder
from tests.screens.snapshot import FOLDER, compare, picture_of
from tests.screens.supper import evening_at, supper

SIZES = [(60, 18), (80, 24), (120, 36), (160, 50)]
REFRESH = os.environ.get("PICTURES") == "new"


def _moment(name: str) -> Evening:
    match name:
        case "before-the-first-call":
            evening, _ = evening_at(supper(), "14:40", until="14:40")
        case "a-call-due":
            evening, _ = evening_at(supper(), "18:10", until="18:10")
        case "three-calls-at-once":
            evening, _ = evening_at(supper(), "18:31", until="18:20")
        case "late":
            evening, _ = evening_at(supper(), "19:01", until="18:44")
        case "a-hold-running-out":
            evening, _ = evening_at(supper(), "19:12", until="19:00", answered=("bake the pie", "steam the beans"))
        case _:
            evening, _ = evening_at(supper(), "20:05", until="20:04")
    return evening


MOMENTS = ("before-the-first-call", "a-call-due", "three-calls-at-once", "late", "a-hold-running-out", "the-end")


async def _drawn(evening: Evening, size: tuple[int, int], theme: str = "dark") -> str:
    app = BoardApp(evening, chime=Recorder(), theme=theme)
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.pause(0.05)
        return picture_of(app)


@pytest.mark.parametrize("size", SIZES, ids=lambda size: "x".join(map(str, size)))
@pytest.mark.parametrize("moment", MOMENTS)
async def test_the_board_looks_as_it_did(moment: str, size: tuple[int, int]) -> None:
    drawn = await _drawn(_moment(moment), size)

    compare(f"{moment}-{size[0]}x{size[1]}", drawn, refresh=REFRESH)


@pytest.mark.parametrize("theme", ["light", "contrast", "plain"])
async def test_every_look_shows_the_same_words(theme: str) -> None:
    drawn = await _drawn(_moment("three-calls-at-once"), (80, 24), theme)

    compare(f"three-calls-at-once-80x24-{theme}", drawn, refresh=REFRESH)
    dark = await _drawn(_moment("three-calls-at-once"), (80, 24))
    assert drawn.splitlines()[:24] == dark.splitlines()[:24]
    assert ("#" in drawn.split("-" * 80)[-1]) is (theme != "plain")  # no colour but the terminal's own


def test_the_pictures_stay_small_and_none_is_left_over() -> None:
    kept = {file.name for file in FOLDER.iterdir()}

    wanted = {f"{moment}-{width}x{height}.txt" for moment in MOMENTS for width, height in SIZES}
    wanted |= {f"three-calls-at-once-80x24-{theme}.txt" for theme in ("light", "contrast", "plain")}
    assert kept == wanted
    assert sum(file.stat().st_size for file in FOLDER.iterdir()) < 1_000_000
