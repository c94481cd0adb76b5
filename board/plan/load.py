"""Plan text → Plan with the place of each part, or everything wrong with it at once. Pure: reads no files."""

import copy
from collections.abc import Iterator
from dataclasses import dataclass
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin

from pydantic import BaseModel, ValidationError

from board.base.near import nearest
from board.base.plan_digest import digest_of
from board.plan.model.courses import Course, Dish
from board.plan.model.drinking import Drinks, HowMuch, Pairing
from board.plan.model.hands import Hand
from board.plan.model.kitchen import Kitchen, Oven
from board.plan.model.model import Air, Plan
from board.plan.model.shopping import InTheHouse, Pack, Price
from board.plan.model.table import Table
from board.plan.model.work import Job, Ref, Step, Way
from board.plan.phrases.away import Away, Happening
from board.plan.phrases.durations import Spread
from board.plan.phrases.food_safety import Cooling, Core, Thaw
from board.plan.phrases.guests import Guest
from board.plan.phrases.phrase import near
from board.plan.phrases.quantities import Ingredient
from board.plan.phrases.seats import Seat
from board.plan.phrases.tableware import Pieces
from board.plan.places import START_FROM, Loc, Places, follow, read_yaml, unknown
from board.plan.resolve.assume import Filled, fill
from board.plan.resolve.bought import waiting_for_trips
from board.plan.resolve.from_book import EXAMPLES, asked_of_book, put, stand_ins
from board.plan.resolve.from_shelf import asked_of_shelf, standing_in
from board.plan.resolve.links import Link, link
from board.plan.resolve.seating import seat_problems
from board.plan.resolve.served import misnamed
from board.plan.snag import Fix, Snag, Weight, in_order

# Replacements for values that could not be read, so that the rest can still be checked.
_STAND_INS: dict[str, Any] = {
    "event": "?", "date": "2026-01-01", "zone": "UTC", "arrive": "06:00", "guests": ["1 guest"],
    "takes": "1 min", "after": "nothing", "hours": {},
}  # fmt: skip
_STAND_INS_WITHIN: dict[str, Any] = {"tools": 1, "ovens": {}, "hands": {"hours": {}}}
# Without these, references would dangle.
_NEEDED_WHOLE = {"courses", "dishes", "steps", "jobs", "kitchen", "tools", "ovens", "hands"}

_A_WHAT: dict[type[BaseModel], str] = {
    Plan: "a plan", Course: "a course", Dish: "a dish", Step: "a step", Job: "a job", Kitchen: "the kitchen",
    Oven: "an oven", Hand: "a pair of hands", Way: "another way", Ref: "a reference to a step", Air: "the air",
    Away: "a time away", Happening: "what happens",
    Guest: "a guest", Ingredient: "an ingredient", Spread: "a length of time",
    Core: "a core temperature", Thaw: "a thaw", Cooling: "a cooling",
    Table: "the table", Pieces: "a piece of the table", Seat: "a seat",
    InTheHouse: "something in the house", Pack: "a pack", Price: "a price", Drinks: "the drinks",
    HowMuch: "how much there is of a drink", Pairing: "a drink",
}  # fmt: skip


@dataclass(frozen=True)
class PlanFile:
    """A valid plan with its defaults filled in, and where each part is in the file."""

    plan: Plan
    filled: Filled
    places: Places
    digest: str


def read_plan(text: str, name: str) -> PlanFile | list[Snag]:
    """The plan, or all snags that make it unusable, heaviest first. Raises nothing."""
    return plan_of(text, *read_yaml(text, name))


def plan_of(text: str, raw: Any, places: Places, snags: list[Snag]) -> PlanFile | list[Snag]:
    """The same of a text whose YAML was read already."""
    snags = list(snags)
    if raw is None and snags:
        return snags
    if not isinstance(raw, dict):
        return [Snag("plan 2", Weight.STOP, "this is not a plan: it has no keys", START_FROM, places.at(1, 1))]
    if asked := asked_of_book(raw):
        snags += [_not_written(loc, places) for loc in asked]
        raw = put(raw, stand_ins(asked))
    if waiting := asked_of_shelf(raw):
        snags += [_on_the_shelf(loc, name, places) for loc, name in waiting]
        raw = standing_in(raw, waiting)
    found = _read(raw, places, snags)
    if isinstance(found, list):
        return in_order(list(dict.fromkeys(found)))
    return PlanFile(*found, places, digest_of(text))


def read_data(data: dict[str, Any], like: PlanFile) -> PlanFile | None:
    """A plan out of the data of `like` as it would be after a change, with that one's places and no digest: to try the
    change before it is written. None if it would be no plan."""
    found = _read(data, like.places, [])
    return None if isinstance(found, list) else PlanFile(*found, like.places, "")


def value_snag(data: Any, loc: Loc, value: Any, places: Places) -> Snag | None:
    """What is wrong with a value by itself, put at a path of a plan's data: read as part of the nearest thing that
    has words of its own, a step say, in a millisecond. None where nothing is, or only the whole plan tells: what it
    refers to. Raises nothing."""
    known = [n for n in range(len(loc)) if _model_at(loc[:n]) and isinstance(follow(data, loc[:n]), dict)]
    around = max(known, default=None)
    if around is None:
        return None
    model, held = _model_at(loc[:around]), dict(follow(data, loc[:around]))
    assert model is not None
    if around == 0:
        held = {key: each for key, each in held.items() if key == loc[0]}
    try:
        changed = _put_in(held, loc[around:], value)
        model.model_validate(changed)
    except ValidationError as wrong:
        for error in wrong.errors(include_url=False):
            at = (*loc[:around], *error["loc"])
            if at[: len(loc)] == loc:
                return _snag({**error, "loc": at}, places)
    except (KeyError, IndexError, TypeError):
        return None
    return None


def _put_in(data: Any, loc: Loc, value: Any) -> Any:
    """A copy of the data with a value at a path; the data itself is left as it is. Raises KeyError, IndexError or
    TypeError where there is no such path."""
    if not loc:
        return value
    if isinstance(data, dict):
        inside = data.get(loc[0]) if len(loc) == 1 else data[loc[0]]
        return {**data, loc[0]: _put_in(inside, loc[1:], value)}
    new = list(data)
    number = int(loc[0])
    new[number:] = [_put_in(new[number] if number < len(new) else None, loc[1:], value), *new[number + 1 :]]
    return new


def words_known(loc: Loc) -> tuple[str, ...]:
    """The keys that the part at a path may have; none where they are free."""
    model = _model_at(loc)
    return () if model is None else tuple(_keys_of(model))


def _not_written(loc: Loc, places: Places) -> Snag:
    message = f"`{loc[-1]}` waits for a figure of the cook's book"
    mend = f"`platecall lessons PLAN --from-book` writes it here; or write one, for example `{EXAMPLES[str(loc[-1])]}`."
    return Snag("plan 15", Weight.STOP, message, mend, places.of(loc))


def _on_the_shelf(loc: Loc, name: str, places: Places) -> Snag:
    message = f"{name!r} waits to be written out from the shelf"
    mend = "`platecall dishes fill PLAN` writes it here; `platecall dishes` lists what there is."
    return Snag("plan 17", Weight.STOP, message, mend, places.of((*loc, "from shelf"), key=True))


def _read(raw: dict[str, Any], places: Places, snags: list[Snag]) -> tuple[Plan, Filled] | list[Snag]:
    """The plan, filled; or these snags and any new ones."""
    snags = list(snags)
    plan, errors = _validated(raw)
    empty = [{"type": "empty", "loc": loc, "input": None} for loc in _empty(raw, ())]
    if errors or empty:
        meant = _near_misses(raw, errors)
        explained = [e["loc"] for e in empty] + [(*loc[:-1], key) for loc, key in meant.items()]
        told = [e for e in errors if e["type"] == "extra_forbidden" or e["loc"] not in explained]
        snags += [_snag(error, places) for error in [*empty, *told]]
        plan = _salvaged(raw, [*empty, *errors], meant)
    if plan is not None:
        linked, problems = link(plan)
        lost = any(error["loc"][:1] == ("guests",) or "only for" in error["loc"] for error in errors)
        if not lost:  # otherwise these checks would run on replacement names
            problems += [*misnamed(plan), *seat_problems(plan)]
        snags += [Snag(p.code, Weight.STOP, p.message, p.mend, places.of(p.loc), fix=p.fix) for p in problems]
        if not snags:
            waiting = waiting_for_trips(plan, linked.nodes, linked.taken_up)
            linked.links += [Link(each.trip, each.work) for each in waiting if each.trip is not None]
            return plan, fill(plan, linked)
    return snags


def _validated(raw: dict[str, Any]) -> tuple[Plan | None, list[Any]]:
    try:
        return Plan.model_validate(raw), []
    except ValidationError as wrong:
        return None, list(wrong.errors(include_url=False))


def _empty(data: Any, loc: Loc) -> Iterator[Loc]:
    """Paths of known keys with no value. A plan that has nothing to say leaves the key out."""
    model = _model_at(loc) if isinstance(data, dict) else None
    inside = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for key, value in inside:
        if value is None and model is not None and key in _keys_of(model):
            yield (*loc, key)
        yield from _empty(value, (*loc, key))


def _near_misses(raw: dict[str, Any], errors: list[Any]) -> dict[Loc, str]:
    """Mistyped keys: path → the key most likely meant."""
    meant: dict[Loc, str] = {}
    for error in errors:
        loc = error["loc"]
        model = _model_at(loc[:-1])
        if error["type"] == "extra_forbidden" and model is not None:
            key, around = _key_meant(str(loc[-1]), model), follow(raw, loc[:-1])
            if key is not None and isinstance(around, dict) and key not in around:
                meant[loc] = key
    return meant


def _salvaged(raw: dict[str, Any], errors: list[Any], meant: dict[Loc, str]) -> Plan | None:
    """The plan with unreadable values replaced, so that its references are checked too."""
    mended = copy.deepcopy(raw)
    for loc, key in meant.items():
        around = follow(mended, loc[:-1])
        if loc[-1] in around:
            around.setdefault(key, around.pop(loc[-1]))
    for _ in range(3):
        if not all([_stood_in(mended, error["type"], error["loc"]) for error in errors]):
            return None
        plan, errors = _validated(mended)
        if plan is not None:
            return plan
    return None


def _stood_in(data: dict[str, Any], kind: str, loc: Loc) -> bool:
    """Replaces or removes the value at a path. False if neither is possible."""
    if kind == "missing":
        around = follow(data, loc[:-1])
        if isinstance(around, dict) and (value := _stand_in(loc)) is not None:
            around.setdefault(str(loc[-1]), value)
            return True
        loc = loc[:-1]
    while loc and not (isinstance(loc[-1], str) and isinstance(follow(data, loc[:-1]), dict)):
        loc = loc[:-1]
    if not loc or loc[-1] in _NEEDED_WHOLE:
        return False
    around = follow(data, loc[:-1])
    if loc[-1] in around:
        value = _stand_in(loc)
        around.pop(loc[-1]) if value is None else around.update({loc[-1]: value})
    return True


def _stand_in(loc: Loc) -> Any:
    last, within = loc[-1], loc[-2] if len(loc) > 1 else ""
    if last in ("course", "dish", "step", "job"):
        return f"? {within}"
    if last == "at":
        return f"0 min after {'the course before' if within else 'guests arrive'}"
    return copy.deepcopy(_STAND_INS_WITHIN.get(str(within), _STAND_INS.get(str(last))))


def _model_at(loc: Loc) -> type[BaseModel] | None:
    """The model at a path; None if there is none, as inside a free map."""
    shape: Any = Plan
    for piece in loc:
        shape = _bare(shape)
        if isinstance(shape, type) and issubclass(shape, BaseModel):
            fields = shape.model_fields.items()
            shape = next((f.annotation for name, f in fields if (f.alias or name) == piece), None)
        else:
            inside = get_args(shape)  # list[Step], dict[str, Oven]
            shape = inside[-1] if get_origin(shape) is dict else inside[0] if inside else None
    shape = _bare(shape)
    return shape if isinstance(shape, type) and issubclass(shape, BaseModel) else None


def _bare(annotation: Any) -> Any:
    """A type without its annotations and its None."""
    while get_origin(annotation) in (Annotated, Union, UnionType):
        annotation = next(inside for inside in get_args(annotation) if inside is not type(None))
    return annotation


def _keys_of(model: type[BaseModel]) -> list[str]:
    return [field.alias or name for name, field in model.model_fields.items()]


# Renamed keys: old → current.
_RENAMED = {"on": "where", "needs": "supplies"}


def _key_meant(key: str, model: type[BaseModel]) -> str | None:
    """The key most likely meant: the new name of an old one, or the nearest spelling."""
    keys = _keys_of(model)
    now = _RENAMED.get(key)
    return now if now in keys else next(iter(nearest(key, keys)), None)


# Example lines to paste for missing keys.
_PASTE = {
    "hands": "hands: {host: {hours: {on the day: '10:00 - 23:30'}}}",
    "hours": "hours: {on the day: '10:00 - 23:30'}",
    "zone": "zone: Europe/Dublin",
    "date": "date: 2026-11-28",
    "arrive": "arrive: 18:30",
    "guests": "guests: [Ines, 3 others]",
    "takes": "takes: 25 min",
    "at": "at: 19:30",
    "event": "event: Small supper",
}
_LISTS = ("courses", "dishes", "steps", "jobs")  # of parts that are plans of their own


def _snag(error: Any, places: Places) -> Snag:
    """One pydantic error, in the words of the host's file."""
    loc: Loc = error["loc"]
    kind: str = error["type"]
    model = _model_at(loc[:-1])
    a_what = _A_WHAT.get(model, "this part") if model else "this part"
    last = str(loc[-1]) if loc else "plan"
    if kind == "extra_forbidden" and model is not None:
        message = f"{last!r} is not a word of {a_what}."
        mend = unknown(last, _keys_of(model))
        if (now := _RENAMED.get(last)) in _keys_of(model):
            message, mend = f"`{last}:` of {a_what} is now called `{now}:`.", f"Write `{now}:` instead of `{last}:`."
        elif error.get("input") is None:  # `{keeps: 6 h in the fridge, 10 litres}`: the comma ends the value
            before = places.before(loc)
            if before is not None and "," not in last:
                message = f"inside {{ }} a comma ends the value, so {last!r} stands alone"
                whole = f'{before}: "{places.words((*loc[:-1], before))}, {last}"'
                mend = f"If it belongs to the value before it, put that in quotes: {whole}. {mend}"
            else:
                mend += " If it belongs to the value before it, put that whole value in quotes."
        meant = _key_meant(last, model)
        fix = None if meant is None else Fix("call", loc, meant)
        return Snag("plan 5", Weight.STOP, message, mend, places.of(loc, key=True), fix=fix)
    if kind == "missing":
        place = places.of(loc[:-1])
        return Snag(
            "plan 6",
            Weight.STOP,
            f"{a_what} needs `{last}`, which is missing",
            f"Add `{_PASTE.get(last, f'{last}: …')}`.",
            place,
            fix=Fix("begin", loc, "" if last in _LISTS else _PASTE.get(last, f"{last}: ")),
        )
    if model is Table and last not in _keys_of(model) and kind in _A_NUMBER and (meant := near(last, _keys_of(model))):
        message = f"{last!r} is neither a word of {a_what} nor so many of anything."
        return Snag("plan 5", Weight.STOP, message, meant.strip(), places.of(loc, key=True))
    is_key = last == "[key]"
    what = f"`{last}`" if isinstance(loc[-1], str) else f"an entry of `{loc[-2]}`"
    message, mend = _words(kind, error, what)
    if mend and mend[-1] not in ".?":
        mend += "."
    fix = Fix("begin", loc, "") if kind == "too_short" and isinstance(error["input"], list) else None
    return Snag("plan 7", Weight.STOP, message, mend, places.of(loc[:-1] if is_key else loc, key=is_key), fix=fix)


_A_NUMBER = ("int_parsing", "int_type", "int_from_float", "int_parsing_size", "float_parsing", "float_type")


def _words(kind: str, error: Any, what: str) -> tuple[str, str]:
    """What is wrong with a value, and how to fix it."""
    context, given = error.get("ctx", {}), error["input"]
    if kind == "value_error":
        message, _, mend = str(context["error"]).partition("; ")
        return message, mend[:1].upper() + mend[1:]
    if given is None:
        return f"{what} has no value", "Write one, or take the line out if the plan can do without."
    if kind in ("list_type", "tuple_type"):
        return f"{what} takes a list", "Put each entry on its own line, starting with `- `."
    if kind in ("model_type", "model_attributes_type", "dict_type"):
        return f"{_shown(given)} stands where keys are needed", "Write `key: value` lines, indented below."
    if kind == "string_type":
        return f"{what} takes words, and {_shown(given)} is none", "Put the words after the colon, in quotes."
    if kind in _A_NUMBER:
        return f"{_shown(given)} is not a number for {what}", "Write a whole number, for example 4."
    if kind in ("bool_parsing", "bool_type"):
        return f"{_shown(given)} is neither yes nor no", "Write yes or no."
    if kind in ("greater_than_equal", "greater_than"):
        bound = f"{context['ge']} or more" if "ge" in context else f"more than {context['gt']}"
        return f"{_shown(given)} is too small for {what}", f"Write {bound}."
    if kind in ("less_than_equal", "less_than"):
        return (
            f"{_shown(given)} is too large for {what}",
            f"Write {context.get('le', context.get('lt'))} or less.",
        )
    if kind == "literal_error":
        return f"{_shown(given)} is not known for {what}", f"Use one of {context['expected']}."
    if kind == "string_too_short":
        return f"{what} is empty", "Write its words."
    if kind == "string_too_long":
        return (
            f"{what} is longer than {context['max_length']} characters",
            "Shorten it.",
        )
    if kind == "too_short" and isinstance(given, dict):
        return f"{what} needs at least one entry", f"Add one: `{_PASTE.get(what.strip('`'), 'name: …')}`."
    if kind == "too_short":
        return f"{what} needs at least one entry", "Add one, starting with `- `."
    return f"{what} cannot be read as it stands", "Delete the line, or retype it."


def _shown(given: Any) -> str:
    """A value as the host will recognise it."""
    if isinstance(given, bool):
        return "a plain yes or no"
    if isinstance(given, list):
        return "a list"
    return "a block of keys" if isinstance(given, dict) else repr(str(given)[:40])
