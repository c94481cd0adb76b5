"""Goes through a plan's guesses and writes what the host says of them into it."""

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from board.app import words
from board.app.rewriting import put_aside, rewritten
from board.base.clock import WallClock
from board.base.errors import Trouble
from board.base.plain import one_line
from board.checks.plan.guesses import Guess
from board.checks.plan.guesses import guesses as guesses_of
from board.files.plans import plan_in, read_text
from board.files.preferences import read_settings, settings_file
from board.plan.edit.edits import CannotEdit
from board.plan.load import PlanFile
from board.session.settling import Settling

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence


def ask(text: str, file: PlanFile, guesses: "Sequence[Guess]") -> dict[int, str | None]:
    """What the host says at the terminal, by the number of a guess: a new value, or None as it stands. Raises
    Trouble."""
    from board.screens.settling import SettleApp, SettleScreen

    screen = SettleScreen(words.settle_title(file.plan.event), Settling(text, file, guesses))
    app = SettleApp(screen, read_settings(settings_file()).theme)
    app.run()
    if app.return_code:
        raise Trouble(words.SETTLE_FAILED)
    return screen.answers


def with_answers(text: str, file: PlanFile, guesses: "Sequence[Guess]", answers: "Mapping[int, str | None]") -> str:
    """The plan's text with all of it, or Trouble."""
    made = Settling(text, file, guesses).answered(answers)
    if isinstance(made, CannotEdit):
        raise Trouble(one_line(made.reason))
    return made


def write(
    path: Path, old: str, file: PlanFile, guesses: "Sequence[Guess]", answers: "Mapping[int, str | None]"
) -> tuple[Path, int]:
    """Writes the answers into the plan, also where it was changed meanwhile; returns the path of the copy beside it,
    and how many answers no longer had a guess there. Raises Trouble; the plan with all of them is then put aside."""
    today = WallClock().now().date().isoformat()
    try:
        text = read_text(path)
        if text != old:
            was = {number: replace(guesses[number], loc=(), why="") for number in answers}
            now = guesses_of(changed := plan_in(text, path))
            places = {replace(guess, loc=(), why=""): number for number, guess in enumerate(now)}
            kept = {places[guess]: answers[number] for number, guess in was.items() if guess in places}
            new = with_answers(text, changed, now, kept)
            return rewritten(path, text, new, today)[1], len(answers) - len(kept)
        return rewritten(path, old, with_answers(old, file, guesses, answers), today)[1], 0
    except Trouble as trouble:
        aside = put_aside(path, with_answers(old, file, guesses, answers), today)
        kept_in = words.settled_aside(one_line(aside)) if aside is not None else words.SETTLED_LOST
        raise Trouble(f"{trouble}\n    {kept_in}", trouble.code) from None
