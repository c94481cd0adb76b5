"""`as in the book`: where a plan waits for a figure of the cook's book. Pure.

A figure is written into the plan by a command of its own; until then the plan cannot be read whole.
"""

import copy
import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, get_args

from board.facts.heat import COOLS_FROM, COOLS_MINUTES, COOLS_TO, HEATS_MINUTES, HEATS_TO, ROOM_CELSIUS
from board.plan.phrases.stations import OvenWay, rate_text
from board.plan.places import Loc

OVENS: Loc = ("kitchen", "ovens")
_AS_IN_BOOK = re.compile(r"as\s+in\s+the\s+book", re.IGNORECASE)
_AJAR = 10  # minutes; an example only: no rate with the door ajar is ever assumed
EXAMPLES = {
    "takes": "25 min",
    "heats": rate_text(HEATS_MINUTES, ROOM_CELSIUS, HEATS_TO),
    "cools": rate_text(COOLS_MINUTES, COOLS_FROM, COOLS_TO),
    "cools ajar": rate_text(_AJAR, COOLS_FROM, COOLS_TO),
}


def asked_of_book(raw: Any) -> list[Loc]:
    """Paths of every `takes`, and of every oven's rate, that says so."""
    return list(_asked(raw, ()))


def is_rate(loc: Loc) -> bool:
    """Whether a path is that of an oven's rate."""
    return len(loc) == len(OVENS) + 2 and loc[: len(OVENS)] == OVENS and loc[-1] in get_args(OvenWay)


def stand_ins(locs: Iterable[Loc]) -> dict[Loc, str]:
    """What is read at these paths while the figures are not there, so that the rest can be."""
    return {loc: EXAMPLES[str(loc[-1])] for loc in locs}


def put(raw: dict[str, Any], texts: Mapping[Loc, str]) -> dict[str, Any]:
    """The plan's data with other words at these paths; what was given is left as it is."""
    made = copy.deepcopy(raw)
    for loc, text in texts.items():
        around: Any = made
        for piece in loc[:-1]:
            around = around[piece]
        around[loc[-1]] = text
    return made


def _asked(data: Any, loc: Loc) -> Iterator[Loc]:
    inside = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for key, value in inside:
        said = isinstance(value, str) and _AS_IN_BOOK.fullmatch(value.strip()) is not None
        if said and (key == "takes" or is_rate((*loc, key))):
            yield (*loc, key)
        yield from _asked(value, (*loc, key))
