"""Sheets for what goes wrong, small enough to reckon by hand."""

import msgspec

from board.sheet.run_sheet import CourseSlot, Dependency, Keeping, RunSheet, Slot, Use
from tests.conftest import Host, at, follows, slot

HEATED = "heat"


def with_dishes(little: RunSheet) -> RunSheet:
    """The little supper with its steps in two dishes: a pot (chop, stew) and a sauce."""
    dish = {"chop": "Pot", "stew": "Pot", "sauce": "Sauce"}
    slots = tuple(msgspec.structs.replace(s, dish=dish.get(s.id)) for s in little.slots)
    return msgspec.structs.replace(little, slots=slots)


def in_oven(
    id_: str, oven: str, start: str, end: str, *waits: Dependency, celsius: int = 200, kind: str = "step"
) -> Slot:
    """Unattended in an oven."""
    used = (Use(oven, 1, at(start), at(end), celsius),)
    return slot(id_, start, end, lane="oven", attended=(), uses=used, waits=waits, course="Pie", kind=kind,
                dish=id_ if kind == "step" else None, then=("serve",) if kind == "step" else (),
                keeping=Keeping(20, "room") if kind == "step" else None)  # fmt: skip


def ovens() -> RunSheet:
    """Two ovens, one course wanted at 18:30.

    Big: heat 17:00-17:15, pie 17:15-18:00 and rolls 17:15-17:35 at 200. Small: warm-up 17:10-17:20, crisps
    17:20-17:50. All keep 20 min. Serve 18:10-18:30. Wash (worktop, host) 17:40-17:50, after the pie's end if told so.
    """
    heated = (Dependency("heat-big", "end", 0, HEATED),)
    slots = (
        in_oven("heat-big", "big", "17:00", "17:15", kind="heat"),
        in_oven("heat-small", "small", "17:10", "17:20", celsius=150, kind="heat"),
        in_oven("rolls", "big", "17:15", "17:35", *heated),
        in_oven("pie", "big", "17:15", "18:00", *heated),
        in_oven("crisps", "small", "17:20", "17:50", Dependency("heat-small", "end", 0, HEATED), celsius=150),
        slot("serve", "18:10", "18:30", kind="serve", lane="front-of-house", course="Pie", then=("clear",),
             waits=follows("pie", "rolls", "crisps")),
        slot("clear", "19:00", "19:05", kind="clear", lane="front-of-house", course="Pie",
             waits=(Dependency("serve", "end", 30, "order"),)),
    )  # fmt: skip
    course = CourseSlot("Pie", at("18:30"), at("18:30"), "serve", "clear", may_slip=5)
    return RunSheet("Ovens", "UTC", "0", "2026-11-28", at("17:00"), (course,), slots, hands=("host",))


def play(host: Host, *answers: tuple[str, str]) -> None:
    """Answers calls, each at its clock time."""
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)
