"""Goes through a plan's guesses and writes what the host says of them into it."""

from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.app.rewriting import rewritten
from board.base.clock import WallClock
from board.base.errors import Trouble
from board.base.plain import one_line
from board.checks.plan.guesses import Guess
from board.files.preferences import read_settings, settings_file
from board.plan.edit.edit_guesses import SettleStep, retyped
from board.plan.edit.edits import CannotEdit, Together
from board.plan.load import PlanFile
from board.plan.places import Loc

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence


def ask(text: str, file: PlanFile, guesses: "Sequence[Guess]") -> dict[int, str | None]:
    """What the host says at the terminal, by the number of a guess: a new value, or None as it stands. Raises
    Trouble."""
    from board.screens.settling import SettleApp, SettleScreen

    def retype(guess: Guess, typed: str) -> str:
        return retyped(guess.key, guess.text or "", typed)

    def fits(guess: Guess, value: str) -> str:
        made = SettleStep(guess.loc, {guess.key: value}).made(text, file)
        if isinstance(made, CannotEdit):
            raise ValueError(made.reason)
        return value

    screen = SettleScreen(words.settle_title(file.plan.event), guesses, retype, fits)
    app = SettleApp(screen, read_settings(settings_file()).theme)
    app.run()
    if app.return_code:
        raise Trouble(words.SETTLE_FAILED)
    return screen.answers


def with_answers(text: str, file: PlanFile, guesses: "Sequence[Guess]", answers: "Mapping[int, str | None]") -> str:
    """The plan's text with all of it, or Trouble."""
    steps: dict[Loc, dict[str, str | None]] = {}
    for number, value in answers.items():
        guess = guesses[number]
        steps.setdefault(guess.loc, {})[guess.key] = value
    made = Together(tuple(SettleStep(loc, keys) for loc, keys in steps.items())).made(text, file)
    if isinstance(made, CannotEdit):
        raise Trouble(one_line(made.reason))
    return made[0]


def write(path: Path, old: str, new: str) -> Path:
    """Writes the plan; returns the path of the copy beside it. Raises Trouble."""
    return rewritten(path, old, new, WallClock().now().date().isoformat())[1]
