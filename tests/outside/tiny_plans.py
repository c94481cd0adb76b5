"""Plans of a few steps, drawn at random: as figures, and the same as a plan's text. The same seed, the same plan.

All times and lengths are multiples of five minutes, and so are the times the oven needs to change between cold, 100
and 200 °C. Minutes count from the midnight the event's day begins with. Not everything a plan may say occurs here:
one course, one oven. `draw` has results that stand in the room or on a ring; `draw_richer` also in the oven or hot,
steps that can be done another way, hours with gaps, and trips to the shops; `draw_spoiling` a dish with a clock, also
kept in the fridge or cooked through on the way; `draw_seated` a course eaten at the table, and work that comes after
its serving.
"""

import random
from dataclasses import dataclass, replace
from typing import Literal

ARRIVE = 18 * 60
SERVE = 5  # minutes to plate and carry, by anybody
SEAT = 5  # and to bring the guests to the table, as is assumed
CELSIUS = (100, 200)
# By the plan's `heats: 40 min to 180 C` from a room of 20 °C, 4 °C a minute; by its `cools`, exactly.
HEATING = {100: 20, 200: 45}  # from cold
CHANGE = {(100, 200): 25, (200, 100): 30}


@dataclass(frozen=True)
class Gap:
    """It follows that step; so many minutes between at the least, and at the most."""

    step: int
    least: int = 0
    most: int | None = None
    order_only: bool = False  # it takes up nothing of it

    @property
    def at_once(self) -> bool:
        return self.most == self.least


@dataclass(frozen=True)
class Step:
    """`attended`: all, none, or five minutes at the start or end. `oven` in °C. A job keeps no limit and no place.

    `over`: minutes by which it may run over. `shared`: the guests may stand by. `other`: the same step done another way,
    of which only minutes, hands, place, keeping and `over` count. `people`: how many do it together. `usual`: a job usually done that many minutes before
    the guests at the most. `through`: it cooks through, to 75 °C.
    """

    name: str
    minutes: int
    attended: str
    ring: bool = False
    oven: int | None = None
    pan: bool = False
    keeps: int = 0
    keeps_in: Literal["", "ring", "oven", "hot", "fridge"] = ""  # the oven at 100 °C
    best_within: int | None = None
    follows: tuple[Gap, ...] = ()
    not_before: int | None = None
    not_after: int | None = None
    who: str | None = None
    people: int = 1
    is_job: bool = False
    over: int = 0
    shared: bool = False
    usual: int | None = None
    through: bool = False
    is_seating: bool = False
    since_served: Gap | None = None  # a job that follows the serving
    other: "Step | None" = None

    def parts(self) -> list[tuple[int, int]]:
        """Stretches with hands on, in minutes after its start."""
        whole = [(0, self.minutes)]
        ends = {"none": [], "all": whole, "start": [(0, 5)], "end": [(self.minutes - 5, self.minutes)]}
        return ends[self.attended]


@dataclass(frozen=True)
class Tiny:
    """One evening. `hours` by person; `trip`: the host is at the shops. `clock`: the dish spoils, and may stand out for
    so many minutes, 120, or 60 where it is hot outdoors; `eaten`: minutes at the table. `sit`: it is eaten seated, and
    for so many minutes nobody is to get up; `hired`: who does not sit."""

    hours: dict[str, list[tuple[int, int]]]
    away: tuple[int, int] | None
    wanted: int
    may_slip: int
    rings: int
    shelves: int
    steps: tuple[Step, ...]
    trip: tuple[int, int] | None = None
    clock: int | None = None
    eaten: int = 25
    sit: int | None = None
    hired: tuple[str, ...] = ()

    def last_steps(self) -> list[int]:
        """Steps no other step follows: they lead to the serving."""
        followed = {gap.step for step in self.steps for gap in step.follows if not gap.order_only}
        return [n for n, step in enumerate(self.steps) if n not in followed and not step.is_job]


def draw(seed: int) -> Tiny:
    """A plan of two to six steps and jobs."""
    chance = random.Random(seed)
    pick = chance.choice
    opens = ARRIVE - pick([20, 40, 60, 90, 120])
    hours = {"host": [(opens, ARRIVE + pick([20, 40, 60, 90]))]}
    if chance.random() < 0.3:
        hours["aide"] = [(ARRIVE - pick([30, 60]), ARRIVE + pick([0, 30]))]
    steps = [_step(chance, n, list(hours)) for n in range(pick([2, 3, 3, 4, 4, 5]))]
    if chance.random() < 0.3:
        steps.append(Step(f"j{len(steps)}", pick([5, 10, 15]), pick(["all", "start"]), is_job=True))
    later = random.Random(seed + 10**6)  # of its own, so that it leaves the rest as it was
    steps = [replace(s, over=later.choice([0, 0, 5, 10]), shared=later.random() < 0.15) for s in steps]
    away = (ARRIVE - 15, ARRIVE - 5) if chance.random() < 0.3 else None
    wanted = ARRIVE + pick([5, 10, 20, 30])
    return Tiny(hours, away, wanted, pick([0, 5, 10]), pick([1, 1, 2]), pick([1, 2]), tuple(steps))


def draw_ahead(seed: int) -> Tiny:
    """Long work, some of which may lie on the evening before."""
    chance = random.Random(seed)
    pick = chance.choice
    evening = (-pick([300, 360, 420]), -pick([60, 90, 120]))
    morning = (pick([9, 10, 12, 14]) * 60, ARRIVE + 60)
    hours = {"host": [evening, morning] if chance.random() < 0.8 else [morning]}
    steps: list[Step] = []
    for n in range(pick([2, 2, 3])):
        after = (Gap(n - 1),) if n and chance.random() < 0.6 else ()
        keeps = pick([4, 18, 26, 60]) * 60
        steps.append(Step(f"s{n}", pick([45, 60, 75, 90, 130]), "all", keeps=keeps, keeps_in="fridge", follows=after))
    if chance.random() < 0.4:
        steps[0] = replace(steps[0], not_after=pick([0, 11 * 60]) or None)
    return Tiny(hours, None, ARRIVE + 15, 5, 1, 1, tuple(steps))


def draw_richer(seed: int) -> Tiny:
    """One of those with, here and there, another way, a gap in the host's hours, a trip, what is kept hot."""
    tiny, chance = draw(seed), random.Random(seed + 2 * 10**6)
    pick, odds = chance.choice, chance.random
    steps = [replace(s, keeps_in=pick(["", "ring", "oven", "oven", "hot"])) if not s.is_job else s for s in tiny.steps]
    steps = [replace(s, other=_another(chance, s)) if odds() < 0.4 and not s.is_job else s for s in steps]
    (opens, ends), *_ = tiny.hours["host"]
    gone = ARRIVE - pick([55, 70, 85]), ARRIVE - pick([30, 40])
    if opens > gone[0] - 20:
        opens = gone[0] - pick([20, 45])
    hours = {**tiny.hours, "host": [(opens, ends)]}
    if odds() < 0.5:
        return replace(tiny, hours=hours, steps=tuple(steps), trip=gone)
    return replace(tiny, hours={**hours, "host": [(opens, gone[0]), (gone[1], ends)]}, steps=tuple(steps))


def draw_together(seed: int) -> Tiny:
    """One of those with a helper, some of whose steps take both."""
    tiny, chance = draw(seed), random.Random(seed + 5 * 10**6)
    pick, odds = chance.choice, chance.random
    hours = {**tiny.hours, "aide": tiny.hours.get("aide") or [(ARRIVE - pick([30, 60]), ARRIVE + pick([0, 30, 60]))]}
    both = [
        replace(s, people=2, who=None) if s.attended != "none" and (not n or odds() < 0.5) else s
        for n, s in enumerate(tiny.steps)
    ]
    return replace(tiny, hours=hours, steps=tuple(both))


def draw_in_order(seed: int) -> Tiny:
    """Such a plan of either kind, in which some steps only come after another, and take up nothing of it."""
    chance = random.Random(seed + 6 * 10**6)
    tiny = draw_spoiling(seed) if chance.random() < 0.3 else draw(seed)
    steps = [
        replace(s, follows=tuple(replace(gap, order_only=chance.random() < 0.6) for gap in s.follows))
        for s in tiny.steps
    ]
    return replace(tiny, steps=tuple(steps))


def draw_with_candles(seed: int) -> Tiny:
    """One of those, a step fewer, with candles to light: usually in the last quarter of an hour before the guests
    (common practice, no source)."""
    tiny, chance = draw(seed), random.Random(seed + 3 * 10**6)
    steps = [s for s in tiny.steps if not s.is_job]
    light = Step(
        "light the candles", chance.choice([5, 10, 20]), chance.choice(["all", "start"]), is_job=True, usual=15
    )
    return replace(tiny, steps=(*steps[: max(2, len(steps) - 1)], light))


def draw_spoiling(seed: int) -> Tiny:
    """Such a plan of either kind, with a clock for its dish that is not always easy to keep, or cannot be kept."""
    chance = random.Random(seed + 3 * 10**6)
    pick, odds = chance.choice, chance.random
    tiny = draw_richer(seed) if odds() < 0.3 else draw(seed)
    steps = []
    for step in tiny.steps:
        kept = step if step.is_job else replace(step, keeps=pick([step.keeps, 60, 120]))
        if kept.keeps and not kept.keeps_in and odds() < 0.25:
            kept = replace(kept, keeps_in="fridge")
        steps.append(replace(kept, through=True) if (step.ring or step.oven) and odds() < 0.3 else kept)
    clock = pick([60, 120])
    eaten = clock - SERVE - pick([10, 20, 30, 45])
    return replace(tiny, steps=tuple(steps), clock=clock, eaten=eaten)


def draw_seated(seed: int) -> Tiny:
    """One of those of few steps, with a job or two after the serving, and more often with somebody who helps."""
    tiny, chance = draw(seed), random.Random(seed + 4 * 10**6)
    pick, odds = chance.choice, chance.random
    steps = [s for s in tiny.steps if not s.is_job][:2]
    steps = [replace(s, follows=tuple(g for g in s.follows if g.step < len(steps))) for s in steps]
    hours = {"host": [(tiny.hours["host"][0][0], tiny.wanted + pick([30, 60, 60]))]}
    if odds() < 0.6:
        hours["aide"] = [(ARRIVE - pick([0, 30]), tiny.wanted + pick([10, 20, 60]))]
    steps = [replace(s, who=s.who if s.who in hours else None) for s in steps]
    for n in range(pick([1, 2, 2])):
        after = Gap(-1, pick([0, 0, 5]), pick([5, 10, 15, 20]))
        attended = pick(["all", "all", "start", "end"])
        name = f"j{len(steps) + n}"
        job = Step(name, pick([5, 10, 20]), attended, is_job=True, shared=odds() < 0.15, since_served=after)
        steps.append(replace(job, ring=odds() < 0.3))
    hired = ("aide",) if "aide" in hours and odds() < 0.3 else ()
    return replace(tiny, hours=hours, steps=tuple(steps), sit=pick([0, 5, 10, 15]), eaten=25, hired=hired)


def _another(chance: random.Random, step: Step) -> Step:
    pick, odds = chance.choice, chance.random
    place = pick(["worktop", "ring", "oven"])
    return replace(
        step,
        minutes=pick([5, 10, 20]),
        attended=pick(["all", "none", "start", "end"]),
        ring=place == "ring",
        oven=pick(CELSIUS) if place == "oven" else None,
        pan=False,
        keeps=pick([5, 15, 60]),
        keeps_in=pick(["", "ring", "oven"]) if odds() < 0.5 else "",
        over=pick([0, 0, 5, 10]),
    )


def _step(chance: random.Random, number: int, people: list[str]) -> Step:
    pick, odds = chance.choice, chance.random
    place = pick(["worktop", "ring", "ring", "oven", "oven", "pan"])
    follows = []
    if number and odds() < 0.65:
        least, most = pick([(0, None), (0, None), (0, None), (10, None), (0, 10), (5, 15), (0, 0)])
        follows.append(Gap(chance.randrange(number), least, most))
        others = [n for n in range(number) if n != follows[0].step]
        if others and odds() < 0.4:
            follows.append(Gap(pick(others)))
    limits = {pick(["not_before", "not_after"]): ARRIVE + pick([-60, -30, 0, 10])} if odds() < 0.12 else {}
    return Step(
        name=f"s{number}",
        minutes=pick([5, 10, 15, 20, 30]),
        attended=pick(["all", "none", "start", "end"]),
        ring=place == "ring",
        oven=pick(CELSIUS) if place == "oven" else None,
        pan=place == "pan",
        keeps=pick([0, 5, 10, 15, 30, 60]),
        keeps_in="ring" if odds() < 0.35 else "",
        best_within=pick([None, 0, 5, 10]) if place not in ("ring", "oven") else pick([0, 5, 10]),
        follows=tuple(follows),
        who=pick(people) if odds() < 0.15 else None,
        **limits,
    )


def as_plan(tiny: Tiny) -> str:
    """The same in the host's words, everything said."""
    hands = "".join(
        f"  {name}:\n    hours: {{{_by_day(spans)}}}\n"
        + ("    hired: yes\n" if name in tiny.hired else "")
        + (f"    away: {{gone: '{_clock(tiny.away[0])} - {_clock(tiny.away[1])}'}}\n" if tiny.away and n == 0 else "")
        for n, (name, spans) in enumerate(tiny.hours.items())
    )
    oven = f"{{shelves: {tiny.shelves}, heats: 40 min to 180 C, cools: 30 min from 200 to 100 C}}"
    air = "air: {outdoors: 33 C}\n" if tiny.clock == 60 else ""
    outdoors = "    outdoors: yes\n" if tiny.clock == 60 else ""
    spoils = "        perishable: yes\n" if tiny.clock else ""
    trip = f"shopping: {{on the day: '{_spans([tiny.trip])}'}}\n" if tiny.trip else ""
    steps = "".join(f"          - {_line(tiny, step)}\n" for step in tiny.steps if not step.is_job)
    jobs = "".join(f"  - {_line(tiny, step)}\n" for step in tiny.steps if step.is_job)
    return (
        f"event: Tiny\ndate: 2026-06-06\nzone: UTC\narrive: '{_clock(ARRIVE)}'\nguests: [2 guests]\n{air}"
        f"kitchen: {{ovens: {{oven: {oven}}}, rings: {tiny.rings}, tools: {{pan: 1}}, wash up: no}}\nhands:\n{hands}{trip}"
        f"courses:\n  - course: All\n    at: '{_clock(tiny.wanted)}'\n    {'standing: yes' if tiny.sit is None else f'sit: {tiny.sit} min'}\n    serve: {SERVE} min\n"
        f"    clear: 0 min\n    eaten in: {tiny.eaten} min\n    may slip: {tiny.may_slip} min\n{outdoors}"
        f"    dishes:\n      - dish: all of it\n{spoils}        steps:\n"
        f"{steps}" + (f"jobs:\n{jobs}" if jobs else "")
    )


def _by_day(spans: list[tuple[int, int]]) -> str:
    days = {
        "day before": [(a + 24 * 60, b + 24 * 60) for a, b in spans if b <= 0],
        "on the day": [s for s in spans if s[1] > 0],
    }
    return ", ".join(f"{day}: '{_spans(each)}'" for day, each in days.items() if each)


def _line(tiny: Tiny, step: Step) -> str:
    said = {"job" if step.is_job else "step": step.name, **_way(step)}
    if step.other is not None:
        said["or"] = "[{" + ", ".join(f"{key}: {value}" for key, value in _way(step.other).items()) + "}]"
    if not step.is_job:
        said["after"] = (
            "[" + ", ".join(f"'{_gap(tiny, gap)}'" for gap in step.follows) + "]" if step.follows else "nothing"
        )
    if step.since_served is not None:
        least, most = step.since_served.least, step.since_served.most
        said["after"] = f"'serve All, at least {least} min, at most {most} min'"
    for key, value in (("not before", step.not_before), ("not after", step.not_after)):
        if value is not None:
            said[key] = f"'{_clock(value)}'"
    if step.best_within is not None:
        said["best within"] = f"{step.best_within} min"
    if tiny.clock and (step.ring or step.oven) and not step.is_job:
        said["until"] = "75 C" if step.through else "50 C"
    if step.shared:
        said["with guests"] = "yes"
    if step.who is not None:
        said["who"] = step.who
    if step.people > 1:
        said["hands"] = str(step.people)
    return "{" + ", ".join(f"{key}: {value}" for key, value in said.items()) + "}"


KEPT = {
    "": "",
    "ring": " on the stovetop, 1 ring",
    "oven": " in the oven at 100 C (100 to 100 C), 1 shelf",
    "hot": " hot",
    "fridge": " in the fridge",
}


def _way(step: Step) -> dict[str, str]:
    on = "worktop, pan" if step.pan else "stovetop, 1 ring" if step.ring else "worktop"
    if step.oven is not None:
        on = f"oven at {step.oven} C ({step.oven} to {step.oven} C), 1 shelf"
    attended = {"start": "5 min at the start", "end": "5 min at the end"}.get(step.attended, step.attended)
    takes = f"{step.minutes} to {step.minutes} to {step.minutes + step.over} min"
    said = {"where": f"'{on}'", "takes": takes, "attended": attended}
    return said if step.is_job else {**said, "keeps": f"'{step.keeps} min{KEPT[step.keeps_in]}'"}


def _gap(tiny: Tiny, gap: Gap) -> str:
    name = tiny.steps[gap.step].name
    only = ", order only" if gap.order_only else ""
    if gap.at_once:
        return f"{name}, at once{only}"
    least = f", at least {gap.least} min" if gap.least else ""
    return name + least + (f", at most {gap.most} min" if gap.most is not None else "") + only


def _spans(spans: list[tuple[int, int]]) -> str:
    return ", ".join(f"{_clock(a)} - {_clock(b)}" for a, b in spans)


def _clock(minute: int) -> str:
    return f"{minute // 60:02d}:{minute % 60:02d}"
