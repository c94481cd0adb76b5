"""Raw meat, poultry, fish or eggs, and then food eaten as it is, on one board, knife or other tool, unwashed.

By the run sheet's own times. Only where the tool is named, and the kitchen has one of it: of several, nobody knows
which is used, and `cautions` says it once.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from board.checks.raw_food import DishWork, RawLine, dishes, heats, is_ready, touched
from board.checks.sheet.timed import Timed
from board.checks.sheet.tools import in_hand_before, in_hand_until, is_washed, names_wash_of, tools_of
from board.facts import deeds, faults
from board.plan.load import PlanFile
from board.plan.resolve.washing_up import is_clear_down
from board.plan.snag import About, Snag, Weight
from board.sheet.run_sheet import Slot

_NAMED = re.compile(
    r"\b(?:the|same|that|one) ((?:[\w-]+ ){0,2}?(?:board|knife|cleaver|platter|plate|tray|bowl|tongs|grater|mandoline?|"
    r"mincer|slicer|blender|food processor|scissors))\b"
)
_ANOTHER = re.compile(r"\b(?:clean|other|another|second|fresh|new|washed|separate|different|own)\b")


@dataclass(frozen=True, slots=True)
class RawContact:
    """`tool` touches raw `food` in `first`, then what is eaten as it is in `second`."""

    tool: str
    food: str
    first: Slot
    second: Slot


def raw_food_touches_nothing_ready(timed: Timed) -> list[Snag]:
    """food 17: for each tool, the first time it goes unwashed from raw food to food eaten as it is. Source:
    `faults.RAW_CONTACT`."""
    found: dict[str, RawContact] = {}
    for contact in raw_contacts(timed):
        found.setdefault(contact.tool, contact)
    return [_snag(timed.file, each) for each in found.values()]


def raw_contacts(timed: Timed) -> Iterator[RawContact]:
    """In the order in which they would happen."""
    file, paths = timed.file, timed.paths
    works = list(dishes(file))
    of_step = {task.node.id: work for work in works for task in work.tasks}
    slots = sorted((slot for slot in timed.sheet.slots if slot.id in of_step), key=lambda slot: slot.start)
    tools = {slot.id: _tools(file, slot) for slot in slots}
    raw = {slot.id: line for slot in slots if (line := touched(of_step[slot.id], paths.task(slot))) is not None}
    ready = [slot for slot in slots if is_ready(of_step[slot.id], paths.task(slot))]
    for second in ready:
        for first in slots:
            if first.id not in raw or first.start >= second.start:
                continue
            if of_step[first.id] is of_step[second.id] and _stays_raw(of_step[first.id], raw[first.id]):
                continue
            for tool in sorted(tools[first.id] & tools[second.id]):
                if not _is_clean(timed, tool, first, second):
                    yield RawContact(tool, raw[first.id].line.food, first, second)


def _stays_raw(work: DishWork, line: RawLine) -> bool:
    return not any(work.cooks(task, line) for task in work.tasks)


def _tools(file: PlanFile, slot: Slot) -> set[str]:
    """The tools of a slot that the kitchen has one of, and those its words name: `on the same board`."""
    kitchen = file.plan.kitchen.tools
    found = {tool for tool in tools_of(slot, file) if kitchen[tool] == 1}
    for named in _NAMED.findall(slot.name.casefold()):
        tool = named.removeprefix("same ")
        if _ANOTHER.search(tool):
            continue
        alike = [each for each in kitchen if each.casefold().split()[-1:] == tool.split()[-1:]]
        if not alike:
            found.add(tool)
        elif len(alike) == 1 and kitchen[alike[0]] == 1:
            found.add(alike[0])
    return found


def _is_assumed(file: PlanFile, slot: Slot) -> bool:
    """Whether it is a clearing down that nobody wrote: what it cleans, nobody said."""
    task = file.filled.tasks.get(slot.id)
    return task is not None and is_clear_down(task.node)


def _is_clean(timed: Timed, tool: str, first: Slot, second: Slot) -> bool:
    """Whether it is washed between, goes through the heat with the food in it, or is another piece."""
    file, sheet, paths = timed.file, timed.sheet, timed.paths
    between = [slot for slot in sheet.slots if first.end <= slot.start and slot.end <= second.start]
    heated = any(
        slot.id in file.filled.tasks and tool in _tools(file, slot) and heats(file.filled.tasks[slot.id])
        for slot in between
    )
    apart = first.dish != second.dish
    return (
        heated
        or is_washed(file, sheet, tool, first.end, second.start)
        or names_wash_of(first.name, tool)
        or names_wash_of(second.name, tool)
        or any(deeds.washes_up(slot.name) for slot in between if not _is_assumed(file, slot))
        or (apart and tool in tools_of(second, file) and in_hand_before(paths, tool, first.start, second))
        or (apart and tool in tools_of(first, file) and in_hand_until(paths, tool, first, second.start))
    )


def _snag(file: PlanFile, contact: RawContact) -> Snag:
    tool = contact.tool
    message = f"the {tool} goes unwashed from raw {contact.food} ({contact.first.name}) to {contact.second.name}"
    wash = f"a step with `washes: {tool}`" if tool in file.plan.kitchen.tools else f"a step `wash the {tool}`"
    mend = f"Do the other first, take another {tool}, or wash it between: {wash}."
    about = About((contact.first.id, contact.second.id), foods=(contact.food,), tool=tool)
    place = file.places.of((*file.filled.tasks[contact.second.id].node.loc, "step"))
    return Snag("food 17", Weight.STOP, message, mend, place, safety=True, source=faults.RAW_CONTACT, about=about)
