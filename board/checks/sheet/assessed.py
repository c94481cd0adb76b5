"""A plan with all that is said of it, worked out once and handed on: of it alone, then with its timetable. Pure."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

import msgspec

from board.checks.allergens.guests_eat import Matrix, matrix
from board.checks.allergens.plates import plates
from board.checks.plan.cautions import cautions
from board.checks.plan.every import check
from board.checks.plan.guesses import UNCONFIRMED, guesses_are_confirmed
from board.checks.plan.on_your_word import OnYourWord, on_your_word
from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.plan.snag import Snag, Weight, in_order
from board.sheet.run_sheet import RunSheet
from board.sheet.told import Caution, Stop


@dataclass(frozen=True, slots=True)
class Assessed:
    """`snags`: the worst first, the sheet's too. `eaten`: who may eat what. `trusted`: what the host's own
    words settle. `sheet` None: not worked out, or something stops it."""

    file: PlanFile
    eaten: Matrix
    snags: tuple[Snag, ...]
    cautions: tuple[Caution, ...]
    trusted: tuple[OnYourWord, ...]
    sheet: RunSheet | None = None

    @property
    def the_sheet(self) -> RunSheet:
        """For whoever had it worked out."""
        assert self.sheet is not None
        return self.sheet


def of_plan(file: PlanFile) -> Assessed:
    """What is to be said without a timetable."""
    eaten = matrix(file)
    return Assessed(file, eaten, tuple(check(file, eaten)), cautions(file), on_your_word(file, eaten))


def with_sheet(plan: Assessed, sheet: RunSheet) -> Assessed:
    """With the plan's sheet, which then carries the warnings and says which guesses decide something."""
    found = [snag for snag in plan.snags if snag.code != UNCONFIRMED]
    found += safety_check(plan.file, sheet, plan.eaten)
    snags = in_order([*found, *guesses_are_confirmed(plan.file, found, sheet)])
    return replace(plan, snags=tuple(snags), sheet=_with_warnings(plan, sheet, snags))


def _with_warnings(plan: Assessed, sheet: RunSheet, snags: Iterable[Snag]) -> RunSheet:
    """The sheet with a line for each thing that must be mended before anybody eats, with the usual cautions, and with
    whose plate is different."""
    stops = dict.fromkeys(Stop(s.code, s.message, s.about) for s in snags if s.weight is Weight.STOP and s.safety)
    whose = plates(plan.file, plan.eaten)
    courses = tuple(msgspec.structs.replace(course, plates=whose.get(course.name, ())) for course in sheet.courses)
    return msgspec.structs.replace(sheet, stops=tuple(stops), cautions=plan.cautions, courses=courses)
