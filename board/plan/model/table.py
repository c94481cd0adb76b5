"""The tableware, chairs and seats of the house."""

import re
from typing import Annotated

from pydantic import ConfigDict, Field, model_validator

from board.plan.model.part import PlanModel, YesNo
from board.plan.phrases.tableware import LaidWith

Count = Annotated[int, Field(ge=0, le=1000)]


class Table(PlanModel):
    """What the house has to eat from and with: your own names, each with a count.

    `laid_with`: what each guest has for the whole meal; `wash_between`: wash what runs short between courses.
    """

    model_config = ConfigDict(extra="allow")
    __pydantic_extra__: dict[str, Count]

    chairs: Count | None = None
    seats_at_the_table: Count | None = None
    laid_with: LaidWith | None = None
    wash_between: YesNo = False

    @model_validator(mode="after")
    def _each_has_a_name(self) -> "Table":
        if not all(re.search(r"[^\W\d_]", name) and len(name) <= 60 for name in self.pieces):
            raise ValueError("a piece of the table has a short name; write for example soup bowls: 8")
        return self

    @property
    def pieces(self) -> dict[str, int]:
        """Counts by name, as written in the plan."""
        return dict(self.__pydantic_extra__)
