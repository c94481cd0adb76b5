"""`from shelf: onion tartlets`, written out: the kept dish in place of the words. Pure: a plan's text in, the new text
out."""

from collections.abc import Callable
from dataclasses import dataclass

from board.plan.edit.items import put_item
from board.plan.edit.save import CannotEdit, Put, edit
from board.plan.places import read_yaml
from board.plan.resolve.from_shelf import asked_of_shelf
from board.plan.snag import Snag

# A dish's name, how many eat it (None: the plan scales it by its own rule) → its lines; None if there is none.
Shelf = Callable[[str, int | None], list[str] | None]


@dataclass(frozen=True)
class Filled:
    """The plan's text with dishes in it. `written`, `missing`: their names as the plan has them."""

    text: str
    written: tuple[str, ...]
    missing: tuple[str, ...]


def filled(text: str, name: str, shelf: Shelf) -> Filled | list[Snag] | CannotEdit:
    """Every dish that waits for the shelf and is there; keys beside `from shelf` go before the kept dish's own. `name`:
    of the file. Raises nothing."""
    data, _, snags = read_yaml(text, name)
    if snags:
        return snags
    written, missing = [], []
    for loc, wanted in asked_of_shelf(data):
        asked = data["courses"][loc[1]]["dishes"][loc[3]]
        lines = shelf(wanted, None)
        if lines is None:
            missing.append(wanted)
            continue
        made = put_item(text, loc, lines)
        if not isinstance(made, CannotEdit):
            own = [Put((*loc, key), value) for key, value in asked.items() if key != "from shelf"]
            made = edit(made, own)
        if isinstance(made, CannotEdit):
            return made
        text = made
        written.append(wanted)
    return Filled(text, tuple(written), tuple(missing))
