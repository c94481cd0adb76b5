"""What spoils unchilled: by the host's word, otherwise by what the food has become. Pure."""

from dataclasses import dataclass

from board.plan.model.courses import Dish
from board.plan.model.model import Plan
from board.plan.places import Loc


@dataclass(frozen=True, slots=True)
class Spoils:
    """Whether food spoils, `why`, and whether that is known or only taken so."""

    does: bool = False
    why: str = ""
    sure: bool = True

    def beside(self, source: str) -> str:
        """The reason, after what a finding stands on; the other alone where one is empty."""
        return "; ".join(filter(None, (source, f"it spoils: {self.why}" if self.why else "")))


KEEPS = Spoils()
BY_WORD = Spoils(True, "your word, `perishable: yes`")


def dish_at(plan: Plan, loc: Loc) -> Dish | None:
    """The dish that a path lies in; None for jobs and courses."""
    if len(loc) > 3 and loc[0] == "courses" and loc[2] == "dishes":
        return plan.courses[int(loc[1])].dishes[int(loc[3])]
    return None
