"""Text of a plan → Plan with its places, or all that is wrong with it at once. Reads no files itself."""

import copy

from dataclasses import dataclass
from typing import Any, get_args

from pydantic import BaseModel, ValidationError

from board.plan.assume import Filled, fill
from board.plan.links import link
from board.plan.model import Course, Dish, Job, Plan, Step
from board.plan.places import Loc, Places, read_yaml, unknown
from board.plan.snag import Snag, Weight, in_order
from board.plan_digest import digest_of

# What stands in for a value that could not be read, so that the rest can still be looked over.
_STAND_INS: dict[str, Any] = {
    "takes": "1 min", "at": "19:00", "arrive": "19:00", "date": "2026-01-01", "zone": "UTC", "guests": ["1 guest"],
}  # fmt: skip
_A_WHAT = {Plan: "a plan", Course: "a course", Dish: "a dish", Step: "a step", Job: "a job"}


@dataclass(frozen=True)
class PlanFile:
    """A plan that was read, filled with what is assumed, and where each part of it stands."""

    plan: Plan
    filled: Filled
    places: Places
    digest: str


def read_plan(text: str, name: str) -> PlanFile | list[Snag]:
    """The plan, or every snag that keeps it from being one, heaviest first."""
    raw, places, snags = read_yaml(text, name)
    if raw is None and snags:
        return snags
    if not isinstance(raw, dict):
        return [
            Snag(
                "P02",
                Weight.STOP,
                "this is not a plan: it has no keys",
                "Start from the short example in the README.",
                places.at(1, 1),
            )
        ]
    try:
        plan: Plan | None = Plan.model_validate(raw)
    except ValidationError as wrong:
        snags += [_snag(error, places) for error in wrong.errors()]
        plan = _salvage(raw, wrong)
    if plan is not None:
        linked, problems = link(plan)
        snags += [Snag(p.code, Weight.STOP, p.message, p.mend, places.of(p.loc)) for p in problems]
        if not snags:
            return PlanFile(plan, fill(plan, linked), places, digest_of(text))
    return in_order(list(dict.fromkeys(snags)))


def _salvage(raw: dict[str, Any], wrong: ValidationError) -> Plan | None:
    """The plan without the values that could not be read, so that its references are looked over as well."""
    mended = copy.deepcopy(raw)
    for error in wrong.errors():
        if error["type"] == "missing" and error["loc"][-1] in _STAND_INS:
            around = _follow(mended, error["loc"][:-1])
            if isinstance(around, dict):
                around[str(error["loc"][-1])] = _STAND_INS[str(error["loc"][-1])]
            continue
        loc = error["loc"]
        while loc and not (isinstance(loc[-1], str) and isinstance(_follow(mended, loc[:-1]), dict)):
            loc = loc[:-1]
        around = _follow(mended, loc[:-1])
        if loc and isinstance(around, dict) and loc[-1] in around:
            if loc[-1] in _STAND_INS:
                around[loc[-1]] = _STAND_INS[loc[-1]]
            else:
                del around[loc[-1]]
    try:
        return Plan.model_validate(mended)
    except ValidationError:
        return None


def _follow(data: Any, loc: Loc) -> Any:
    for piece in loc:
        try:
            data = data[piece]
        except (KeyError, IndexError, TypeError):
            return None
    return data


def _model_at(loc: Loc) -> type[BaseModel] | None:
    """The model whose keys stand at a path; None inside lists of scalars or free maps."""
    model: Any = Plan
    for piece in loc:
        if isinstance(piece, int):
            continue
        if isinstance(model, type) and issubclass(model, BaseModel):
            field = next((f for n, f in model.model_fields.items() if (f.alias or n) == piece), None)
            if field is None:
                return None
            model = _model_in(field.annotation)
        # else: a free map such as ovens, tools or hands; its key is no field
    return model if isinstance(model, type) and issubclass(model, BaseModel) else None


def _model_in(annotation: Any) -> Any:
    """The one model inside an annotation such as `dict[str, Oven]` or `list[Step] | None`."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for inside in get_args(annotation):
        if (found := _model_in(inside)) is not None:
            return found
    return None


def _keys_of(model: type[BaseModel]) -> list[str]:
    return [field.alias or name for name, field in model.model_fields.items()]


def _snag(error: Any, places: Places) -> Snag:
    """One pydantic error in the words of the host's file."""
    loc: Loc = error["loc"]
    kind: str = error["type"]
    given = error.get("input")
    model = _model_at(loc[:-1])
    a_what = _A_WHAT.get(model, "this part") if model else "this part"
    last = str(loc[-1]) if loc else "plan"
    if kind == "extra_forbidden" and model is not None:
        message = f"{last!r} is not a word of {a_what}."
        return Snag("P05", Weight.STOP, message, unknown(last, _keys_of(model)), places.of(loc, key=True))
    if kind == "missing":
        place = places.of(loc[:-1])
        return Snag(
            "P06",
            Weight.STOP,
            f"{a_what} needs `{last}`, which is missing",
            f"Add a line `{last}: …`.",
            place,
        )
    message, mend = _words(kind, error, given, last)
    return Snag("P07", Weight.STOP, message, mend, places.of(loc))


def _words(kind: str, error: Any, given: Any, last: str) -> tuple[str, str]:
    context = error.get("ctx", {})
    if kind in ("value_error", "assertion_error"):
        message, _, mend = str(context.get("error", error["msg"])).partition("; ")
        return message, (mend[:1].upper() + mend[1:]) if mend else ""
    if given is None:
        return f"`{last}` has no value", "Write one after the colon, or delete the line."
    if kind in ("list_type", "tuple_type"):
        return f"`{last}` takes a list", "Put each entry on its own line, starting with `- `."
    if kind in ("model_type", "model_attributes_type", "dict_type"):
        return (
            f"{str(given)[:40]!r} stands where keys are needed",
            "Write `key: value` lines, indented below.",
        )
    if kind == "string_type":
        return (
            f"`{last}` takes words, not {type(given).__name__}",
            "Put the words after the colon, in quotes if need be.",
        )
    if kind in ("int_parsing", "int_type", "int_from_float", "float_parsing", "float_type"):
        return f"{str(given)[:40]!r} is not a number here", "Write a whole number."
    if kind in ("greater_than_equal", "greater_than"):
        bound = context.get("ge", context.get("gt"))
        return (
            f"{given} is too small for `{last}`",
            f"Write {bound} or more." if "ge" in context else f"Write more than {bound}.",
        )
    if kind in ("less_than_equal", "less_than"):
        return f"{given} is too large for `{last}`", f"Write {context.get('le', context.get('lt'))} or less."
    if kind == "string_too_short":
        return f"`{last}` is empty", "Write its words."
    if kind == "string_too_long":
        return (
            f"`{last}` is longer than {context.get('max_length')} characters",
            "Shorten it; a note can hold the rest.",
        )
    if kind == "too_short":
        return f"`{last}` needs at least one entry", "Add one, starting with `- `."
    return f"{str(given)[:60]!r} cannot be read: {error['msg']}", ""
