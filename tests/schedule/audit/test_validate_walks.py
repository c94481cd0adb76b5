"""The way to the table, how long things may last, and the host's company: the validator names what is otherwise."""

from collections.abc import Callable

from msgspec.structs import replace

from board.plan.load import PlanFile
from board.schedule.audit.validate import validate
from board.sheet.run_sheet import Lasts, RunSheet
from tests.schedule.audit.slow_drying import APPLES, DRY, PLUMS, TOP, TRAY, heating_of, length
from tests.schedule.audit.tampering import Tampered, minutes, moved, says, sheet_of, with_slot


def test_nobody_skips_the_way_to_the_table(found_in: Tampered, sheet: RunSheet) -> None:
    top, serve = sheet.by_id()[TOP], sheet.by_id()["serve/pudding"]

    def topped_until(gap: int) -> list[str]:
        return found_in(moved(sheet, TOP, serve.start - minutes(gap) - (top.end - top.start)))

    assert says(topped_until(1), "host has 1 min from top the pudding to serve Pudding", "needs 2 min")
    assert says(topped_until(0), "host has 0 min from top the pudding to serve Pudding")
    assert not says(topped_until(2), "from top the pudding to serve Pudding")


def test_the_way_back_takes_as_long(found_in: Tampered, sheet: RunSheet) -> None:
    clear = sheet.by_id()["clear/pudding"]

    assert says(
        found_in(moved(sheet, PLUMS, clear.end + minutes(1))), "host has 1 min from clear Pudding to cook the plums"
    )
    assert not says(found_in(moved(sheet, PLUMS, clear.end + minutes(2))), "from clear Pudding to cook the plums")


def test_within_the_kitchen_or_at_the_table_nobody_walks(found_in: Tampered, sheet: RunSheet) -> None:
    top, serve, seat = (sheet.by_id()[id_] for id_ in (TOP, "serve/pudding", "guests-to-the-table"))
    next_to_it = moved(sheet, seat.id, serve.start - (seat.end - seat.start))
    after_it = moved(sheet, PLUMS, top.end)

    assert not says(found_in(next_to_it), "from guests to the table to serve Pudding")
    assert not says(found_in(after_it), "from top the pudding to cook the plums")


def test_another_person_may_start_at_once(plan_from: Callable[[str], PlanFile]) -> None:
    plan_file = plan_from(APPLES.replace("hands:\n", "hands:\n  cousin:\n    hours: {on the day: 14:00 - 23:30}\n"))
    sheet = sheet_of(plan_file)
    serve = sheet.by_id()["serve/pudding"]
    by_cousin = moved(sheet, TOP, serve.start - minutes(10))
    parts = by_cousin.by_id()[TOP].attended
    who = {"host": "cousin", "cousin": "host"}[serve.attended[0].who]

    found = validate(plan_file, with_slot(by_cousin, TOP, attended=tuple(replace(part, who=who) for part in parts)))
    assert not says(found, "from top the pudding to serve Pudding")


# --- spreads and company ------------------------------------------------------------------------------------
def test_a_slot_may_last_what_the_plan_says(found_in: Tampered, sheet: RunSheet) -> None:
    assert sheet.by_id()[DRY].lasts == Lasts(45, 50, 60)

    for wrong in (Lasts(44, 50, 60), Lasts(45, 49, 60), Lasts(45, 50, 61), Lasts(50, 50, 50), None):
        assert says(
            found_in(with_slot(sheet, DRY, lasts=wrong)), "dry the apple slices may last", "by no way of doing it"
        )
    heating = heating_of(sheet, TRAY)
    told = with_slot(sheet, heating.id, lasts=Lasts(1, 2, 3))
    assert says(found_in(told), f"{heating.name} is told to last longer or shorter")


def test_the_spread_is_that_of_the_way_taken(plan_from: Callable[[str], PlanFile]) -> None:
    both = APPLES.replace(
        "            keeps: 20 min\n",
        "            keeps: 20 min\n            or:\n              - takes: 8 to 9 to 15 min\n",
    )
    plan_file = plan_from(both)
    sheet = sheet_of(plan_file)
    taken = sheet.by_id()[TOP]

    assert validate(plan_file, sheet) == []
    of_the_other = {9: Lasts(10, 10, 10), 10: Lasts(8, 9, 15)}[length(taken)]
    assert says(validate(plan_file, with_slot(sheet, TOP, lasts=of_the_other)), "top the pudding may last")


def test_a_course_is_eaten_in_what_the_plan_says(
    found_in: Tampered, plan_from: Callable[[str], PlanFile], sheet: RunSheet
) -> None:
    (course,) = sheet.courses
    silent = plan_from(APPLES.replace("    eaten in: 20 to 25 to 40 min\n", ""))

    assert course.eaten == Lasts(20, 25, 40)
    for wrong in (Lasts(20, 25, 41), Lasts(19, 25, 40), Lasts(20, 26, 40), None):
        told = replace(sheet, courses=(replace(course, eaten=wrong),))
        assert says(found_in(told), "Pudding is told otherwise than in the plan")
    assert sheet_of(silent).courses[0].eaten is None
    assert says(validate(silent, sheet), "Pudding is told otherwise than in the plan")


def test_what_can_be_done_with_guests_is_the_plans_word(found_in: Tampered, sheet: RunSheet) -> None:
    candles = "jobs/light-the-candles"

    assert sheet.by_id()[candles].with_guests
    assert says(
        found_in(with_slot(sheet, candles, with_guests=False)), "light the candles is told as done without guests"
    )
    for id_, name in ((TOP, "top the pudding"), ("serve/pudding", "serve Pudding")):
        assert says(found_in(with_slot(sheet, id_, with_guests=True)), f"{name} is told as done with guests")
