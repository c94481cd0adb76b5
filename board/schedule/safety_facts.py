"""What a run sheet must know about food safety to keep its clocks without the plan. Pure."""

from board.facts.cooling import USUAL_CELSIUS, CoolingPlace, estimate
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.model.courses import Course, Dish
from board.plan.model.model import Plan
from board.plan.resolve.assume import CourseWanted, Filled, FilledWay, Task
from board.plan.resolve.at_table import dish_spoils
from board.plan.resolve.links import name_key
from board.sheet.run_sheet import Cooling, RawLimit, SpoilClock, Stage

FREEZER_CELSIUS = -18.0  # 0 °F: USDA FSIS, on freezing; from memory


def spoil_clocks(plan: Plan, filled: Filled) -> tuple[SpoilClock, ...]:
    """A clock for each dish whose food spoils, with its limit."""
    away = _put_away(filled)
    return tuple(
        _clock(plan, course, dish, filled.courses[number], away.get(name_key(course.course)))
        for number, course in enumerate(plan.courses)
        for d, dish in enumerate(course.dishes)
        if dish_spoils(plan, filled, ("courses", number, "dishes", d)).does
    )


def _clock(plan: Plan, course: Course, dish: Dish, wanted: CourseWanted, away: str | None) -> SpoilClock:
    limit = rule_set(plan.rules).out_limit(air_of(plan, course), by_time_alone=dish.by_time_alone)
    return SpoilClock(dish.dish, course.course, limit.minutes, limit.source, wanted.serve, wanted.clear, away)


def raw_limit(file: PlanFile) -> RawLimit | None:
    """How long raw food may stand out in the kitchen; None where nothing is cooked through."""
    if not any(task.care.fresh for task in file.filled.tasks.values()):
        return None
    limit = rule_set(file.plan.rules).out_limit(file.plan.air.indoors if file.plan.air is not None else None)
    return RawLimit(limit.minutes, limit.source)


def air_of(plan: Plan, course: Course) -> float | None:
    """How warm it is where a course is eaten, °C; None where the plan does not say."""
    if plan.air is None:
        return None
    return plan.air.outdoors if course.outdoors else plan.air.indoors


def _put_away(filled: Filled) -> dict[str, str]:
    """Course → the job that puts its leftovers in the cold."""
    return {
        name_key(course): id_
        for id_, task in filled.tasks.items()
        if task.work is not None
        for course in task.work.puts_away
    }


def cooling_of(plan: Plan, task: Task, way: FilledWay) -> Cooling | None:
    """How what a step cools will fall, by estimate; None if the plan says nothing about it."""
    wish = task.work.cools if task.work is not None else None
    if wish is None:
        return None
    bath = wish.bath or _bath(way)
    ambient = surroundings(plan, way, bath)
    found = estimate(wish.depth_cm, wish.vessel, bath, ambient)
    stages = tuple(
        Stage(stage.start.celsius, stage.end.celsius, stage.end.fahrenheit, stage.within_minutes, stage.source)
        for stage in rule_set(plan.rules).cooling
    )
    return Cooling(found.constant_per_minute, found.ambient_celsius, found.assumptions, stages)


def _bath(way: FilledWay) -> CoolingPlace:
    return "fridge" if way.where.place in ("fridge", "freezer") else "room"


def surroundings(plan: Plan, way: FilledWay, bath: CoolingPlace) -> float:
    """What a vessel stands in, °C."""
    return FREEZER_CELSIUS if bath == "fridge" and way.where.place == "freezer" else ambient_of(plan, bath)


def ambient_of(plan: Plan, bath: CoolingPlace) -> float:
    """How warm it is in the fridge, the room or the water: as the plan says, else as usual. °C."""
    indoors = plan.air.indoors if plan.air is not None else None
    measured = {"fridge": plan.kitchen.fridge_at, "room": indoors}.get(bath)
    return USUAL_CELSIUS[bath] if measured is None else measured
