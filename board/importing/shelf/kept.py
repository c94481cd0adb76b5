"""A kept dish as a file: the same keys as a course of a plan, and what is known of it. Text in, text out."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Annotated, Any

from pydantic import Field, ValidationError

from board.importing.shelf import words
from board.plan.edit.items import item_lines
from board.plan.edit.save import CannotEdit, Put, edit
from board.plan.edit.yaml_text import Layout, entry
from board.plan.model.courses import Dish
from board.plan.model.part import LongWords, PlanModel, Words
from board.plan.phrases.durations import Minutes
from board.plan.phrases.phrase import Phrase
from board.plan.phrases.when import parse_date
from board.plan.places import Places, read_yaml
from board.plan.snag import Snag, Weight

Day = Annotated[date, Phrase(parse_date, "2026-11-28")]
Names = Annotated[tuple[Words, ...], Field(max_length=200)]


class Evening(PlanModel):
    """One evening: its day, its plan's name, and the guests who were to be served the dish."""

    on: Day
    evening: Words
    to: Names = ()


class _File(PlanModel):
    """`planned`: evenings of plans that had the dish; `served`: those of them that a run log showed."""

    kept: Day
    course: Words | None = None
    hands: Minutes | None = None
    planned: tuple[Evening, ...] = ()
    served: tuple[Evening, ...] = ()
    learned: tuple[LongWords, ...] = ()
    dishes: Annotated[list[Dish], Field(min_length=1, max_length=1)]


@dataclass(frozen=True)
class KeptDish:
    """A dish on the shelf. `text`: its whole file; `hands`: minutes of handwork when it was kept, None if unknown."""

    dish: Dish
    text: str
    course: str | None
    hands: int | None
    planned: tuple[Evening, ...]
    served: tuple[Evening, ...]

    @property
    def name(self) -> str:
        """In its host's words; unsafe for a terminal as it is."""
        return self.dish.dish

    def lines_for(self, eaters: int | None) -> list[str]:
        """The dish as YAML lines of a plan, without indent, from `- dish:` on. For another number of eaters its
        amounts stay as they were written, and `scale: linear` has the plan reckon them."""
        text = self.text
        if eaters is not None and self.dish.for_ not in (None, eaters) and self.dish.scale is None:
            scaled = edit(text, [Put(("dishes", 0, "scale"), "linear")])
            text = text if isinstance(scaled, CannotEdit) else scaled
        return item_lines(text, ("dishes", 0))


def read_kept(text: str, name: str) -> KeptDish | list[Snag]:
    """The dish in a file's text, or what is wrong with it, each at its line. Raises nothing."""
    data, places, snags = read_yaml(text, name)
    if snags:
        return snags
    if not isinstance(data, dict):
        return [Snag("shelf 1", Weight.STOP, words.NOT_KEPT, words.KEEP_ANEW, places.at(1, 1))]
    try:
        found = _File.model_validate(data)
    except ValidationError as wrong:
        return [_snag(error, places) for error in wrong.errors(include_url=False)]
    return KeptDish(found.dishes[0], text, found.course, found.hands, found.planned, found.served)


def _snag(error: Any, places: Places) -> Snag:
    said = str(error.get("ctx", {}).get("error", ""))
    message, _, mend = said.partition("; ")
    if error["type"] != "value_error":
        about = [str(piece) for piece in error["loc"] if isinstance(piece, str)]
        message, mend = f"{words.NOT_KEPT}{f': `{about[-1]}`' if about else ''}", words.KEEP_ANEW
    place = places.of(error["loc"], key=error["type"] == "extra_forbidden")
    return Snag("shelf 1", Weight.STOP, message, f"{mend[:1].upper()}{mend[1:]}", place)


def kept_text(known: Mapping[str, Any], dish: list[str]) -> str:
    """A file's text out of what is known of a dish, as plain data, and its lines as `item_lines` gives them."""
    layout = Layout()
    lines = [words.HEAD, *(line for key, value in known.items() if value for line in entry(key, value, layout))]
    return "\n".join([*lines, "dishes:", *(f"  {line}".rstrip() for line in dish), ""])


def evening_data(evening: Evening) -> dict[str, Any]:
    """An evening as plain data."""
    return {
        "on": evening.on.isoformat(),
        "evening": evening.evening,
        **({"to": list(evening.to)} if evening.to else {}),
    }
