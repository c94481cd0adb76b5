"""How a piece of work is recognised from one evening to the next, and what counts as the same kind of work. Pure."""

from typing import NamedTuple

from board.plan.resolve.known_again import first_word, name_key
from board.sheet.run_sheet import Slot


class Key(NamedTuple):
    """Identifies the same step: dish (empty for a job), name and lane, ignoring case and spaces."""

    dish: str
    words: str
    lane: str


class Kind(NamedTuple):
    """Identifies the same kind of work: lane and first word, as in (stovetop, simmer). Synonyms are not recognised."""

    lane: str
    verb: str


def key_of(dish: str | None, name: str, lane: str) -> Key:
    """The key of a step with this dish (None for a job), name and lane."""
    return Key(name_key(dish or ""), name_key(name), lane)


def key_of_slot(slot: Slot) -> Key:
    """The key of a slot. A name shared by several dishes carries its dish (`… in DISH`), which is removed."""
    tail = f" in {slot.dish}"
    name = slot.name.removesuffix(tail) if slot.dish else slot.name
    return key_of(slot.dish, name, slot.lane)


def key_of_sitting(course: str) -> Key:
    """The key of the guests' time over a course."""
    return Key("", name_key(course), "table")


def sitting_label(course: str) -> str:
    """The guests' time over a course, worded as in a plan."""
    return f"{course}: eaten in"


def key_of_moment(name: str) -> Key:
    """The key of when a course is wanted; for "", of when the guests come."""
    return Key("", name_key(name), "at")


def moment_label(name: str) -> str:
    """The same, worded as in a plan."""
    return f"{name}: at" if name else "arrive"


def kind_of(key: Key) -> Kind:
    """The kind of work a key belongs to: just its lane if the name holds no word."""
    return Kind(key.lane, first_word(key.words))
