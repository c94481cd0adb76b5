"""The way of each dish through its slots, with what the plan says of each. Pure."""

import msgspec

from board.plan.load import PlanFile
from board.plan.places import Loc
from board.plan.resolve.assume import FilledWay, Task
from board.plan.resolve.links import name_key
from board.sheet.run_sheet import RunSheet, Slot

HOT_LANES = ("oven", "stovetop")


class Paths:
    """A sheet beside the plan it was made from. Slots that are no step of the plan (dials, servings) have no task."""

    def __init__(self, file: PlanFile, sheet: RunSheet) -> None:
        self.file = file
        self.sheet = sheet
        self.slots = sheet.by_id()
        self.makers: dict[str, list[Slot]] = {}
        for slot in self.steps():
            for taker in slot.then:
                self.makers.setdefault(taker, []).append(slot)

    def steps(self) -> list[Slot]:
        return [slot for slot in self.sheet.slots if slot.kind == "step"]

    def task(self, slot: Slot) -> Task:
        return self.file.filled.tasks[slot.id]

    def way(self, slot: Slot) -> FilledWay:
        """The way of doing it that the timetable chose."""
        assert slot.plan_way is not msgspec.UNSET  # only sheets that this program made are looked over
        return self.task(slot).ways[slot.plan_way]

    def spoils(self, slot: Slot) -> bool:
        return self.task(slot).care.spoils

    def takers(self, slot: Slot) -> list[Slot]:
        """The steps and servings that use its result."""
        followers = [self.slots[id_] for id_ in slot.then if id_ in self.slots]
        return [each for each in followers if each.kind in ("step", "serve")]

    def of_course(self, name: str) -> Loc:
        """The path of a course in the plan."""
        return next(
            ("courses", c) for c, each in enumerate(self.file.plan.courses) if name_key(each.course) == name_key(name)
        )

    def of_dish(self, course: str, dish: str) -> Loc:
        """The path of a dish in the plan."""
        loc = self.of_course(course)
        dishes = self.file.plan.courses[int(loc[1])].dishes
        return next((*loc, "dishes", d) for d, each in enumerate(dishes) if each.dish == dish)


def minutes_between(first: Slot, second: Slot) -> float:
    """From the end of one to the start of the other."""
    return max(0.0, (second.start - first.end).total_seconds() / 60)


def length(slot: Slot) -> float:
    return (slot.end - slot.start).total_seconds() / 60
