"""A supper of three courses, made by hand, on which the pictures of the board are drawn; and one of twenty things at
once. Neither needs the solver, so a picture changes only with the board."""

from datetime import timedelta

from board.base.clock import StoppedClock
from board.evening.wishes import Done
from board.rehearsal.player import catch_up
from board.session.session import Evening, unlogged_evening
from board.sheet.run_sheet import Attended, CourseSlot, Dependency, Keeping, RunSheet, Slot, Use
from tests.conftest import at, follows, slot


def _use(what: str, start: str, end: str, celsius: int | None = None) -> tuple[Use, ...]:
    return (Use(what, 1, at(start), at(end), celsius),)


def _helps(begin: str, over: str) -> tuple[Attended, ...]:
    """By a guest who lends a hand while the host's are at the stove."""
    return (Attended(at(begin), at(over), "Nora", "all"),)


def _hands(*spans: tuple[str, str, str]) -> tuple[Attended, ...]:
    return tuple(Attended(at(a), at(b), "host", kind) for kind, a, b in spans)  # type: ignore[arg-type]


def _slots() -> tuple[Slot, ...]:
    foh = "front-of-house"
    return (
        slot("set the jelly", "15:00", "18:00", lane="fridge", attended=_hands(("start", "15:00", "15:05")),
             then=("plate Sweet",), keeping=Keeping(300, "fridge"), course="Sweet", dish="Plum jelly"),
        slot("heat the oven", "17:50", "18:10", kind="heat", lane="oven", attended=(), then=("bake the pie",),
             uses=_use("oven", "17:50", "18:10", 200)),
        slot("warm the soup", "18:00", "18:24", lane="stovetop", attended=_hands(("start", "18:00", "18:02"),
             ("look-in", "18:12", "18:13"), ("end", "18:23", "18:24")), then=("plate Soup",), course="Soup",
             dish="Parsnip soup", keeping=Keeping(20, "hot"), look_for="steam, no bubbles", core_celsius=74.0,
             uses=_use("rings", "18:00", "18:24")),
        slot("bake the pie", "18:10", "19:00", lane="oven", attended=_hands(("start", "18:10", "18:12"),
             ("look-in", "18:40", "18:41"), ("end", "18:59", "19:00")), waits=follows("heat the oven"),
             then=("plate Main",), course="Main", dish="Mushroom pie", keeping=Keeping(15, "hot"), best_within=10,
             look_for="golden, juices bubble", uses=_use("oven", "18:10", "19:00", 200), call_at_end="Pie out"),
        slot("light the candles", "18:20", "18:25", kind="job", lane=foh, attended=_helps("18:20", "18:25")),
        slot("arrive", "18:30", "18:30", kind="arrive", lane=foh, then=("plate Soup",)),
        slot("plate Soup", "18:30", "18:36", kind="serve", lane=foh, course="Soup", then=("clear Soup",),
             waits=follows("warm the soup", "arrive")),
        slot("steam the beans", "18:45", "18:55", lane="stovetop", attended=_hands(("start", "18:45", "18:47"),
             ("end", "18:54", "18:55")), then=("plate Main",), course="Main", dish="Beans with dill",
             keeping=Keeping(10, "hot"), uses=_use("rings", "18:45", "18:55")),
        slot("clear Soup", "18:56", "19:00", kind="clear", lane=foh, course="Soup",
             attended=_helps("18:56", "19:00"),
             waits=(Dependency("plate Soup", "end", 20, "order"),)),
        slot("plate Main", "19:00", "19:08", kind="serve", lane=foh, course="Main", then=("clear Main",),
             waits=follows("bake the pie", "steam the beans", "clear Soup")),
        slot("clear Main", "19:40", "19:45", kind="clear", lane=foh, course="Main",
             waits=(Dependency("plate Main", "end", 30, "order"),)),
        slot("whip the cream", "19:45", "19:50", then=("plate Sweet",), course="Sweet", keeping=Keeping(30, "fridge")),
        slot("plate Sweet", "19:50", "19:58", kind="serve", lane=foh, course="Sweet",
             waits=follows("whip the cream", "set the jelly", "clear Main")),
    )  # fmt: skip


def supper() -> RunSheet:
    courses = (
        CourseSlot("Soup", at("18:36"), at("18:36"), "plate Soup", "clear Soup", may_slip=5),
        CourseSlot("Main", at("19:08"), at("19:08"), "plate Main", "clear Main", may_slip=10),
        CourseSlot("Sweet", at("19:58"), at("19:58"), "plate Sweet", "plate Sweet", may_slip=10),
    )
    return RunSheet(plan="Plum supper", zone="UTC", digest="0" * 64, date="2026-11-28", arrive=at("18:30"),
                    courses=courses, slots=_slots(), hands=("host",), proved=True)  # fmt: skip


LANES = ("oven", "stovetop", "fridge", "front-of-house", "worktop")


def twenty() -> RunSheet:
    """Twenty steps on all lanes, all called at 17:00, and a course."""
    names = [f"stir pan {number}" for number in range(1, 21)]
    slots = [
        slot(name, "17:00", "17:30", lane=LANES[n % 5], then=("serve",),
             attended=(Attended(at("17:00"), at("17:30"), f"cook {n}", "all"),))
        for n, name in enumerate(names)
    ]  # fmt: skip
    serve = slot("serve", "17:40", "17:45", kind="serve", lane="front-of-house", course="Stew", waits=follows(*names))
    course = CourseSlot("Stew", at("17:45"), at("17:45"), "serve", "serve", may_slip=10)
    return RunSheet(plan="Twenty pans", zone="UTC", digest="0" * 64, date="2026-11-28", arrive=at("18:30"),
                    courses=(course,), slots=(*slots, serve), hands=("host",), proved=True)  # fmt: skip


def evening_at(
    sheet: RunSheet, clock: str, *, until: str, answered: tuple[str, ...] = ()
) -> tuple[Evening, StoppedClock]:
    """An evening at a clock time: all that was due before `until` answered on time, later only what is named."""
    stopped = StoppedClock(min(at(clock), *(each.start for each in sheet.slots)))
    evening = unlogged_evening(sheet, stopped)
    catch_up(evening, stopped, at(until))
    while stopped.now() < at(clock):
        stopped.set(min(at(clock), stopped.now() + timedelta(seconds=30)))
        for call in evening.tick().due:
            if call.slot in answered:
                evening.wish(Done(*call.key))
    return evening, stopped
