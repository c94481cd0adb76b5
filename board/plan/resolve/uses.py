"""What work uses of the kitchen and hands, and whether the plan has it. Pure."""

from board.plan.model.model import Plan
from board.plan.model.work import Way, Work
from board.plan.phrases.phrase import meant_by, near
from board.plan.phrases.stations import KEEPS_IN, LANES, PLACE_WORDS, Station
from board.plan.places import Loc
from board.plan.resolve.fault import Fault


def uses(plan: Plan, loc: Loc, work: Work, *, is_step: bool) -> list[Fault]:
    """Faults for ovens, tools and hands the plan lacks, and for a step without a duration.
    `loc`: the work's path."""
    problems: list[Fault] = []
    ways: list[tuple[Way, Loc]] = [
        (work, loc),
        *((way, (*loc, "or", n)) for n, way in enumerate(work.or_)),
    ]
    for way, at in ways:
        if way.where is not None:
            problems += _station(plan, way.where, (*at, "where"), cooking=True)
        if way.keeps is not None:
            problems += _station(plan, way.keeps.where, (*at, "keeps"), cooking=False)
    if work.takes is None and work.thaws is None and is_step:
        mend = "Add how long it takes, for example `takes: 25 min`."
        problems.append(Fault("plan 6", "a step needs `takes`, which is missing", mend, loc))
    for number, name in enumerate(work.who or []):
        if name not in plan.hands:
            message = f"{name!r} is nobody among the hands.{near(name, plan.hands)}"
            mend = "Name one of the `hands`, or add them there."
            problems.append(Fault("plan 8", message, mend, (*loc, "who", number), (name, meant_by(name, plan.hands))))
    who = work.who or plan.hands
    if len(set(who)) < work.hands:
        message = f"it takes {work.hands} people, and the only hands for it are {' and '.join(dict.fromkeys(who))}"
        mend = "Add somebody under `hands` (and to its `who`), or write a way of it that one person can do alone."
        problems.append(Fault("plan 18", message, mend, (*loc, "hands")))
    return problems


def _station(plan: Plan, station: Station, loc: Loc, *, cooking: bool) -> list[Fault]:
    problems = []
    kitchen = plan.kitchen
    lanes = [*LANES, "freezer"] if cooking else [*KEEPS_IN]
    if station.oven is not None and station.oven not in kitchen.ovens:
        known = [*lanes, *kitchen.ovens]
        what = "lane" if cooking else "place where things keep"
        plain = PLACE_WORDS.get(station.oven.lower().removeprefix("the "))
        meant = f" Did you mean {plain!r}?" if plain else near(station.oven, known)
        message = f"{station.oven!r} is neither a {what} nor an oven of this kitchen.{meant}"
        mend = f"Name one of {', '.join(dict.fromkeys(known))}."
        problems.append(Fault("plan 8", message, mend, loc, (station.oven, plain or meant_by(station.oven, known))))
    elif station.off and not cooking:
        mend = "Write a step of its own for the rest: `where: oven off`."
        problems.append(Fault("plan 7", "nothing keeps in an oven that is switched off", mend, loc))
    elif station.off and (station.place != "oven" or station.heat is not None):
        mend = "Write `oven off`, or the oven with its setting."
        problems.append(Fault("plan 7", "only an oven can be off, and then it has no setting", mend, loc))
    elif station.place == "oven" and station.heat is None and not station.off:
        mend = "Write, for example, `oven at 180 C (170 to 190 C)`."
        problems.append(Fault("plan 6", "an oven needs its setting", mend, loc))
    elif station.place not in lanes:
        what = "is no lane to work in" if cooking else "is no place where things keep"
        problems.append(Fault("plan 7", f"{station.place!r} {what}", f"Name one of {', '.join(lanes)}.", loc))
    for tool in station.tools:
        if tool not in kitchen.tools:
            message = f"the kitchen has no tool called {tool!r}.{near(tool, kitchen.tools)}"
            mend = "Add it under kitchen: tools, with how many there are."
            problems.append(Fault("plan 8", message, mend, loc, (tool, meant_by(tool, kitchen.tools))))
    return problems
