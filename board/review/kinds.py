"""How work is known again from one evening to the next, and what is work of the same kind. Pure."""

from typing import NamedTuple

from board.plan.resolve.known_again import first_word, name_key
from board.sheet.run_sheet import Slot


class Key(NamedTuple):
    """The same step: its dish (none for a job), its words and its lane; capitals and spaces do not count."""

    dish: str
    words: str
    lane: str


class Kind(NamedTuple):
    """The same kind of work: the lane and the first word, as in stovetop, simmer. Synonyms are not known."""

    lane: str
    verb: str


def key_of(dish: str | None, name: str, lane: str) -> Key:
    return Key(name_key(dish or ""), name_key(name), lane)


def key_of_slot(slot: Slot) -> Key:
    """A slot's name says its dish too where two steps have the same words; that is no part of the words."""
    tail = f" in {slot.dish}"
    name = slot.name.removesuffix(tail) if slot.dish else slot.name
    return key_of(slot.dish, name, slot.lane)


def key_of_sitting(course: str) -> Key:
    """The guests over a course."""
    return Key("", name_key(course), "table")


def sitting_label(course: str) -> str:
    """As the plan has it."""
    return f"{course}: eaten in"


def kind_of(key: Key) -> Kind:
    """Of work without a word in its name, the kind is its lane alone."""
    return Kind(key.lane, first_word(key.words))
