"""Lays a new sheet for the rest of an evening over the sheet it follows; what has begun stays as planned. Pure."""

import re
from collections.abc import Iterator

from msgspec.structs import replace

from board.evening.state import State
from board.schedule.to_run_sheet import in_running_order
from board.sheet.run_sheet import HEAT, ORDER, CourseSlot, Dependency, RunSheet, Slot
from board.sheet.told import Chain, GivenUp, OverHours

BEGUN = ("under-way", "finished")


def merged(state: State, fresh: RunSheet) -> RunSheet:
    """The evening's sheet, with everything that has not begun taken from the new sheet. Slots keep their ids; oven
    changes that have not begun are new slots with unused numbers. Raises KeyError if the sheets are of different
    plans."""
    return _Merger(state, fresh).sheet()


class _Merger:
    def __init__(self, state: State, fresh: RunSheet) -> None:
        self.state = state
        self.old = state.sheet.by_id()
        self.fresh = fresh
        self.renamed = dict(self._numbers())

    def _numbers(self) -> Iterator[tuple[str, str]]:
        """Old and new id of each oven change in the new sheet."""
        used: dict[str, int] = {}
        for slot in self.old.values():
            if slot.of_a_dial and (match := re.fullmatch(r"(dial/.+)-(\d+)", slot.id)):
                used[match[1]] = max(used.get(match[1], 0), int(match[2]))
        for slot in self.fresh.slots:
            if slot.of_a_dial and (match := re.fullmatch(r"(dial/.+)-(\d+)", slot.id)):
                used[match[1]] = used.get(match[1], 0) + 1
                yield slot.id, f"{match[1]}-{used[match[1]]}"

    def sheet(self) -> RunSheet:
        kept = [slot for slot in self.old.values() if self._stays(slot)]
        ahead = [self._ahead(slot) for slot in self.fresh.slots if self._is_ahead(slot)]
        there = {slot.id for slot in (*kept, *ahead)}
        slots = [_known(slot, there) for slot in (*map(self._begun, kept), *ahead)]
        return replace(
            self.fresh,
            digest=self.state.sheet.digest,
            arrive=self.state.sheet.arrive,
            slots=tuple(in_running_order(slots)),
            courses=tuple(self._course(course) for course in self.state.sheet.courses),
            given_up=tuple(self._given_up(given) for given in self.fresh.given_up),
            assumed=self.state.sheet.assumed,
            stops=self.state.sheet.stops,
            cautions=self.state.sheet.cautions,
            noted=self.state.sheet.noted,
        )

    def _stays(self, slot: Slot) -> bool:
        """Whether a slot stays: begun, left out, or an oven to be switched off whose moment has come. An oven change
        that was left out goes."""
        status = self.state.steps[slot.id].status
        if slot.kind == "off" and status == "to-come":
            return all(self.state.steps[wait.after].settled for wait in slot.waits)
        return status in BEGUN or (status == "left-out" and not slot.of_a_dial)

    def _is_ahead(self, slot: Slot) -> bool:
        return slot.of_a_dial or self.state.steps[slot.id].status == "to-come"

    def _begun(self, slot: Slot) -> Slot:
        """Drops every wait but the order of steps: the others are over."""
        return replace(slot, waits=tuple(wait for wait in slot.waits if wait.reason == ORDER))

    def _ahead(self, slot: Slot) -> Slot:
        if slot.of_a_dial:
            waits = tuple(replace(wait, after=self._id(wait.after)) for wait in slot.waits)
            return replace(slot, id=self._id(slot.id), waits=waits)
        old = self.old[slot.id]
        order = tuple(wait for wait in old.waits if wait.reason == ORDER)  # as in the plan, counted from actual ends
        waits = order + tuple(replace(w, after=self._id(w.after)) for w in slot.waits if w.reason != ORDER)
        if not any(wait.reason == HEAT for wait in waits):
            waits += self._heating_now(slot)
        return replace(slot, waits=waits, then=old.then)

    def _heating_now(self, slot: Slot) -> tuple[Dependency, ...]:
        """Waits for an oven that is now heating up or cooling down for this slot."""
        ovens = {use.what for use in slot.uses if use.celsius is not None}
        return tuple(
            Dependency(each.id, "end", 0, HEAT)
            for each in self.old.values()
            if each.kind == "heat" and each.uses[0].what in ovens and self.state.steps[each.id].status == "under-way"
        )

    def _given_up(self, given: GivenUp) -> GivenUp:
        """The same, with the new ids of oven changes."""
        if isinstance(given.what, OverHours):
            given = replace(given, what=replace(given.what, slot=self._id(given.what.slot)))
        if isinstance(given.why, Chain):
            links = tuple(replace(link, after=self._id(link.after)) for link in given.why.links)
            given = replace(given, why=replace(given.why, links=links))
        return given

    def _id(self, id_: str) -> str:
        return self.renamed.get(id_, id_)

    def _course(self, course: CourseSlot) -> CourseSlot:
        pushed = course.pushed + self.state.pushed.get(course.name, 0)
        if self.state.steps[course.serve].status != "to-come":
            return replace(course, pushed=pushed)
        fresh = next(c for c in self.fresh.courses if c.name == course.name)
        return replace(course, served=fresh.served, pushed=pushed)


def _known(slot: Slot, there: set[str]) -> Slot:
    """Drops waits for slots that the sheet no longer holds."""
    return replace(slot, waits=tuple(wait for wait in slot.waits if wait.after in there))
