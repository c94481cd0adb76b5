"""Guesses of a plan gone through: how what is typed over one is read, whether the plan takes it, and the plan with all
that was said of them. Pure."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from board.checks.plan.guesses import Guess
from board.plan.edit.edit_guesses import SettleStep, retyped
from board.plan.edit.edits import CannotEdit, Together
from board.plan.load import PlanFile
from board.plan.places import Loc


@dataclass(frozen=True)
class Settling:
    """`guesses` of the plan `file`, which is made of `text`."""

    text: str
    file: PlanFile
    guesses: Sequence[Guess]

    def retype(self, guess: Guess, typed: str) -> str:
        """A guess's value after that was typed. Raises ValueError."""
        return retyped(guess.key, guess.text or "", typed)

    def fits(self, guess: Guess, value: str) -> str:
        """The value as it is, if the plan can be read with it. Raises ValueError."""
        made = SettleStep(guess.loc, {guess.key: value}).made(self.text, self.file)
        if isinstance(made, CannotEdit):
            raise ValueError(made.reason)
        return value

    def answered(self, answers: Mapping[int, str | None]) -> str | CannotEdit:
        """The plan's text with these answers, by the number of a guess: a new value, or None as it stands."""
        steps: dict[Loc, dict[str, str | None]] = {}
        for number, value in answers.items():
            guess = self.guesses[number]
            steps.setdefault(guess.loc, {})[guess.key] = value
        made = Together(tuple(SettleStep(loc, keys) for loc, keys in steps.items())).made(self.text, self.file)
        return made if isinstance(made, CannotEdit) else made[0]
