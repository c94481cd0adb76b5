"""What a run sheet must know about food safety to keep its clocks without the plan. Pure."""

from board.kitchen.cooling import estimate
from board.kitchen.heat import ROOM_CELSIUS
from board.kitchen.rule_sets import rule_set
from board.plan.assume import FilledWay, Task
from board.plan.care import Bath
from board.plan.links import fold
from board.plan.load import PlanFile
from board.plan.model import Course, Dish, Plan
from board.plan.spoils import spoils
from board.timetable.run_sheet import Cooling, SpoilClock

FRIDGE_CELSIUS = 4.0  # where the plan does not say; USDA FSIS asks for 40 °F or below
FREEZER_CELSIUS = -18.0
WATER_CELSIUS = {"cold water": 15.0, "ice bath": 2.0}  # common practice, no source


def spoil_clocks(file: PlanFile) -> tuple[SpoilClock, ...]:
    """A clock for each dish whose food spoils, with its limit."""
    away = _put_away(file)
    return tuple(
        _clock(file.plan, course, dish, number, file, away.get(fold(course.course)))
        for number, course in enumerate(file.plan.courses)
        for dish in course.dishes
        if spoils(dish)
    )


def _clock(plan: Plan, course: Course, dish: Dish, number: int, file: PlanFile, away: str | None) -> SpoilClock:
    wanted = file.filled.courses[number]
    limit = rule_set(plan.rules).out_limit(air_of(plan, course), by_time_alone=dish.by_time_alone)
    return SpoilClock(dish.dish, course.course, limit.minutes, limit.source, wanted.serve, wanted.clear, away)


def air_of(plan: Plan, course: Course) -> float | None:
    """How warm it is where a course is eaten, °C; None where the plan does not say."""
    if plan.air is None:
        return None
    return plan.air.outdoors if course.outdoors else plan.air.indoors


def _put_away(file: PlanFile) -> dict[str, str]:
    """Course → the job that puts what is left of it into the cold."""
    return {
        fold(course): id_
        for id_, task in file.filled.tasks.items()
        if task.work is not None
        for course in task.work.puts_away
    }


def cooling_of(plan: Plan, task: Task, way: FilledWay) -> Cooling | None:
    """How what a step cools falls, by the estimate; None where the plan says nothing of it."""
    wish = task.work.cools if task.work is not None else None
    if wish is None:
        return None
    bath = wish.bath or _bath(way)
    ambient = surroundings(plan, way, bath)
    found = estimate(wish.depth_cm, wish.vessel, bath, ambient)
    return Cooling(found.constant_per_minute, found.ambient_celsius, found.assumptions)


def _bath(way: FilledWay) -> Bath:
    return "fridge" if way.on.place in ("fridge", "freezer") else "room"


def surroundings(plan: Plan, way: FilledWay, bath: Bath) -> float:
    """What a vessel stands in, °C."""
    if bath in WATER_CELSIUS:
        return WATER_CELSIUS[bath]
    if way.on.place == "freezer":
        return FREEZER_CELSIUS
    if bath == "fridge":
        return FRIDGE_CELSIUS if plan.kitchen.fridge_at is None else plan.kitchen.fridge_at
    indoors = plan.air.indoors if plan.air is not None else None
    return ROOM_CELSIUS if indoors is None else indoors
