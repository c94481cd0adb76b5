"""Defaults for what a plan leaves open; `check` lists every one assumed. Pure."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from zoneinfo import ZoneInfo

from board.facts.heat import COOLS_FROM, COOLS_MINUTES, COOLS_TO, HEATS_MINUTES, HEATS_TO
from board.facts.job_words import usual_job
from board.facts.jobs import JOB_MINUTES, UsualJob
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import rule_set
from board.facts.serving import LEAST_MINUTES, At, table_minutes
from board.facts.standing import StandsIn, WorkAndStand, is_by_hand, lies_cold, stands_in, works_and_stands
from board.facts.tableware import LEAST_WASH_MINUTES, WASH_MINUTES_A_PIECE
from board.facts.washing import TOOL_MINUTES
from board.plan.model.model import Plan
from board.plan.model.work import Step, Way, Work
from board.plan.phrases.durations import Attention, Spread
from board.plan.phrases.food_safety import Thaw
from board.plan.phrases.stations import Keep, Station
from board.plan.phrases.when import instant
from board.plan.resolve import absences
from board.plan.resolve.assumed import Assumed, Assumptions, Value
from board.plan.resolve.become import NOTHING, Become, what_becomes
from board.plan.resolve.course_times import eaten_minutes, wanted_moments
from board.plan.resolve.food_safety import NO_CARE, Care, care_of
from board.plan.resolve.keeping import KEEPS_MINUTES, Keeping
from board.plan.resolve.laying import eaters, is_shared, laid, wash_ups
from board.plan.resolve.links import (
    Link,
    Linked,
    Node,
    clear_id,
    serve_id,
)
from board.plan.resolve.reheated import with_reheating
from board.plan.resolve.sits import is_hot, sit_minutes
from board.plan.resolve.spoils import Spoils
from board.plan.resolve.stands import written_stands
from board.plan.resolve.taken_up import spoils_by_what_it_takes_up
from board.plan.resolve.washing_up import LOC as WASHING_UP
from board.plan.resolve.washing_up import is_clear_down

MAY_SLIP_MINUTES = 10  # ours
DAY_MINUTES = 24 * 60  # how long thawed food keeps in the fridge by default; FSIS gives 1 day and more
# Hands to put in and take out, or to put away: common practice, no source.
OVEN_ATTENDED = Attention(start=2, end=2)
STORED_ATTENDED = Attention(start=2)
LONG_BY_HAND_MINUTES = 45  # so long with hands on it all the time is asked about, where nothing says so; ours
WORK_BESIDE_STANDING = 20  # minutes of hands in a step that long of which some stands, on each side of that; ours


@dataclass(frozen=True, slots=True)
class FilledWay:
    """One way to do a piece of work, with every value filled."""

    where: Station
    takes: Spread
    attended: Attention
    keeps: Keep | None


@dataclass(frozen=True, slots=True)
class Task:
    """A piece of work ready for the timetable."""

    node: Node
    ways: tuple[FilledWay, ...]
    best_within: int | None = None
    care: Care = NO_CARE

    @property
    def work(self) -> Work | None:
        return self.node.work


@dataclass(frozen=True, slots=True)
class CourseWanted:
    """A course with its times filled. `wanted`: UTC; durations in minutes. `sit`: how long nobody who eats gets up once
    it is served."""

    name: str
    serve: str  # task ids of serving and clearing
    clear: str
    wanted: datetime
    eaten: int
    may_slip: int
    standing: bool
    sit: int = 0


@dataclass(frozen=True)
class Filled:
    """Tasks by id, their links, the courses, when guests arrive (UTC), and the assumptions made."""

    tasks: dict[str, Task]
    links: tuple[Link, ...]
    courses: tuple[CourseWanted, ...]
    arrive: datetime
    assumed: tuple[Assumed, ...]

    @property
    def taken_up(self) -> tuple[Link, ...]:
        """The links by which what the first made goes on in the second."""
        return tuple(link for link in self.links if link.takes_up)


def fill(plan: Plan, linked: Linked) -> Filled:
    """The plan with every open value filled."""
    assumed = Assumptions()
    arrive = instant(plan.date, plan.arrive, ZoneInfo(plan.zone))
    for id_, hour in linked.hours.items():
        if not is_clear_down(linked.nodes[id_]):
            assumed.of(linked.nodes[id_], hour.kind, **hour.values)
    wanted = dict(zip((serve_id(each.course) for each in plan.courses), wanted_moments(plan), strict=True))
    stands = written_stands(plan, linked, wanted)
    overnight = frozenset(id_ for id_, minutes in stands.items() if minutes > KEEPS_MINUTES)
    becomes = with_reheating(linked, what_becomes(plan, linked), overnight)
    tasks = {node.id: _task(plan, node, becomes.get(node.id, NOTHING), assumed) for node in linked.nodes.values()}
    spoiling = frozenset(id_ for id_, task in tasks.items() if task.care.spoils)
    for id_ in spoils_by_what_it_takes_up(plan, linked.nodes, linked.taken_up, spoiling) - spoiling:
        by = Spoils(True, "what it takes up of another dish spoils")
        tasks[id_] = replace(tasks[id_], care=replace(tasks[id_].care, spoils=True, by=by))
    tasks = _keeping(plan, linked, tasks, becomes, stands, assumed)
    courses = _courses(plan, assumed, tasks, linked.links)
    for name in plan.hands:
        for each in absences.absences(plan, name):
            if each.chosen:
                zone = ZoneInfo(plan.zone)
                since, until = (at.astimezone(zone).isoformat() for at in (each.start, each.end))
                assumed.add("away", each.what, who=name, since=since, until=until)
    for guest in plan.guests:
        for read in guest.read:
            assumed.add(read.how, guest.name, words=read.words, meant=read.meant)
    _kitchen(plan, assumed)
    _table(plan, assumed)
    _washing_up(linked, assumed)
    return Filled(tasks, tuple(linked.links), courses, arrive, assumed.all())


def _task(plan: Plan, node: Node, become: Become, assumed: Assumptions) -> Task:
    work = node.work
    if work is None:
        return Task(node, (_own_way(plan, node, assumed),))
    rules = rule_set(plan.rules)
    usual = _usual(node, plan.guest_count)
    if isinstance(work, Step) and work.guessed:
        assumed.of(node, "guessed", keys=tuple(dict.fromkeys(work.guessed)))
    raw = become.raw is not None and become.spoils and not become.binds
    base = _way(work, work, node, usual, rules, assumed, raw=raw)
    ways = (base, *(_way(way, work, node, usual, rules, assumed, raw=raw) for way in work.or_))
    return Task(node, ways, work.best_within, care_of(plan, node, become, assumed))


def _keeping(
    plan: Plan,
    linked: Linked,
    tasks: dict[str, Task],
    becomes: Mapping[str, Become],
    stands: Mapping[str, int],
    assumed: Assumptions,
) -> dict[str, Task]:
    """The tasks with how long each result keeps, and within what it is best, where the plan is silent."""
    served = {link.first for link in linked.links if link.second.startswith("serve/")}
    keeping = Keeping(plan, rule_set(plan.rules), tasks, linked.taken_up, becomes, stands)
    found: dict[str, Task] = {}
    for id_, task in tasks.items():
        ways = []
        for number, way in enumerate(task.ways):
            kept = keeping.kept(id_, number)
            if kept is not None:
                assumed.of(task.node, kept.kind, **kept.values)
            ways.append(way if kept is None else replace(way, keeps=kept.keep))
        best = task.best_within
        if best is None and id_ in served and task.node.kind == "step":
            best = keeping.best_within(id_)
            if best is not None:
                assumed.of(task.node, "best-within", minutes=best)
        found[id_] = replace(task, ways=tuple(ways), best_within=best)
    return found


def _own_way(plan: Plan, node: Node, assumed: Assumptions) -> FilledWay:
    """How the program's own nodes are done: guests arrive, guests to the table, serve, clear."""
    minutes = 0
    if node.kind == "seat":
        minutes = _of_the_table(node, "seat", "", plan.guest_count, assumed)
    elif node.kind == "serve" or node.kind == "clear":
        course = plan.courses[int(node.loc[1])]
        given = course.serve if node.kind == "serve" else course.clear
        what: At = "serve-shared" if node.kind == "serve" and is_shared(course) else node.kind
        minutes = _of_the_table(node, what, course.course, eaters(plan, course), assumed) if given is None else given
    return FilledWay(Station(place="front-of-house"), _exactly(minutes), Attention(whole=True), None)


def _of_the_table(node: Node, what: At, course: str, guests: int, assumed: Assumptions) -> int:
    """The usual minutes, told with the number of guests where they hang on it."""
    assert node.kind in ("seat", "serve", "clear")
    minutes = table_minutes(what, guests)
    grown: dict[str, Value] = {"guests": guests} if minutes > LEAST_MINUTES else {}
    assumed.add(node.kind, course, node.id, minutes=minutes, **grown)
    return minutes


def _exactly(minutes: int) -> Spread:
    return Spread(low=minutes, likely=minutes, high=minutes)


def _usual(node: Node, guests: int) -> UsualJob | None:
    """The usual job of that name, with its minutes for so many guests."""
    usual = usual_job(node.name) if node.kind == "job" else None
    return usual and replace(usual, minutes=usual.minutes_for(guests))


def _way(
    way: Way, work: Work, node: Node, usual: UsualJob | None, rules: RuleSet, assumed: Assumptions, *, raw: bool
) -> FilledWay:
    """One way; open values come from the step's main way, then from the usual ones. `raw`: of raw meat or the like."""
    on = way.where or work.where
    if work.thaws is not None:
        return _thaw_way(work.thaws, way, node, on, rules, assumed)
    takes = way.takes or work.takes or _exactly(_usual_minutes(usual))
    attended = way.attended or (
        work.attended if way.where is None or work.where is None or way.where.lane == work.where.lane else None
    )
    stands = stands_in(node.name, takes.likely) if node.kind == "step" else None
    mixed = works_and_stands(node.name, takes.likely) if node.kind == "step" and stands is None else None
    if on is None and usual is not None and usual.fridge_minutes:
        on = Station(place="fridge")
        assumed.of(node, "fridge-room")
    elif on is None:
        in_front = node.kind == "job" and (usual is None or usual.place == "front-of-house")
        stands_there = mixed.place if mixed is not None and takes.likely >= LONG_BY_HAND_MINUTES else stands
        if raw and stands_there == "room" and lies_cold(node.name, takes.likely):
            stands_there = "fridge"
        place = stands_there if stands_there is not None and stands_there != "room" else "worktop"
        on = Station(place="front-of-house" if in_front else place)
        by_hand = attended is None and stands is None and mixed is None and not _asks_for_hands(node, takes)
        assumed.of(node, "place-and-hands" if by_hand else "place", place=on.place)
    on = _amounts(on, node, assumed)
    if way.takes is None and work.takes is None:
        ours: dict[str, Value] = {} if usual else {"ours": True}
        assumed.of(node, "takes", minutes=takes.likely, **ours)
    if attended is None:
        stored = usual.minutes if usual and usual.fridge_minutes else None
        attended = _attended(on, takes, stored, stands or mixed, node, assumed)
    keeps = way.keeps or work.keeps
    if keeps is not None:
        where = _amounts(keeps.where, node, assumed)
        keeps = Keep(minutes=keeps.minutes, where=where)
    return FilledWay(on, takes, attended, keeps)


def _usual_minutes(usual: UsualJob | None) -> int:
    return max(usual.minutes, usual.fridge_minutes) if usual else JOB_MINUTES


def _asks_for_hands(node: Node, takes: Spread) -> bool:
    """Whether a step is so long that nobody may take it for granted that hands are on it all the time."""
    return node.kind == "step" and takes.likely >= LONG_BY_HAND_MINUTES and not is_by_hand(node.name)


def _thaw_way(thaw: Thaw, way: Way, node: Node, on: Station | None, rules: RuleSet, assumed: Assumptions) -> FilledWay:
    """Thawing takes as long as the weight needs, unless the plan gives a time."""
    in_fridge = thaw.where == "fridge"
    on = _amounts(on or Station(place="fridge" if in_fridge else "worktop"), node, assumed)
    takes = way.takes
    if takes is None:
        minutes = rules.thaw_fridge_minutes(thaw.kilos) if in_fridge else rules.thaw_water_minutes(thaw.kilos)
        takes = _exactly(minutes)
        assumed.of(node, "thaws", minutes=minutes)
    attended = way.attended
    if attended is None and in_fridge:
        attended = STORED_ATTENDED
        assumed.of(node, "hands-at-start", start=attended.start)
    elif attended is None:
        every = rules.thaw.change_water_minutes
        attended = Attention(start=2, every=every, look=2)
        assumed.of(node, "hands-for-fresh-water", start=2, look=2, every=every)
    keeps = way.keeps or Keep(minutes=DAY_MINUTES if in_fridge else 0, where=Station(place="fridge"))
    return FilledWay(on, takes, attended, keeps)


def _amounts(on: Station, node: Node, assumed: Assumptions) -> Station:
    update: dict[str, int] = {}
    if on.place == "oven" and on.shelves is None and not on.off:
        update["shelves"] = 1
        assumed.of(node, "shelf")
    if on.place == "stovetop" and on.rings is None:
        update["rings"] = 1
        assumed.of(node, "ring")
    return on.model_copy(update=update) if update else on


def _attended(
    on: Station,
    takes: Spread,
    stored: int | None,
    stands: StandsIn | WorkAndStand | None,
    node: Node,
    assumed: Assumptions,
) -> Attention:
    """`stored`: minutes of hands for what is only put away; `stands`: where its words say that it stands by itself, all
    of it or in part, which a fire under it overrules."""
    if stored is not None:
        assumed.of(node, "hands-at-start", start=stored)
        return Attention(start=stored)
    if on.place == "oven":
        assumed.of(node, "hands-at-both-ends", start=OVEN_ATTENDED.start, end=OVEN_ATTENDED.end)
        return OVEN_ATTENDED
    if isinstance(stands, WorkAndStand) and not on.hot:
        return _in_part(stands, takes.likely, node, assumed)
    if on.place in ("fridge", "freezer") or (stands is not None and not on.hot):
        assumed.of(node, "hands-at-start", start=STORED_ATTENDED.start)
        return STORED_ATTENDED
    if _asks_for_hands(node, takes):
        assumed.of(node, "hands-throughout", minutes=takes.likely)
    elif node.work is None or node.work.where is not None:
        assumed.of(node, "hands")
    return Attention(whole=True)


def _in_part(stands: WorkAndStand, minutes: int, node: Node, assumed: Assumptions) -> Attention:
    """How much of it is work, nobody knows: all of what is short; of what is long, so much before and after."""
    if minutes < LONG_BY_HAND_MINUTES:
        assumed.of(node, "hands-throughout", minutes=minutes)
        return Attention(whole=True)
    start = WORK_BESIDE_STANDING if stands.before else STORED_ATTENDED.start
    end = WORK_BESIDE_STANDING if stands.after else 0
    assumed.of(node, "hands-in-part", work=start + end, minutes=minutes)
    return Attention(start=start, end=end)


def _courses(plan: Plan, assumed: Assumptions, tasks: dict[str, Task], links: list[Link]) -> tuple[CourseWanted, ...]:
    found: list[CourseWanted] = []
    for course, wanted in zip(plan.courses, wanted_moments(plan), strict=True):
        if course.eaten_in is None:
            assumed.add("eaten", course.course, clear_id(course.course), minutes=eaten_minutes(course))
        if course.may_slip is None:
            assumed.add("may-slip", course.course, serve_id(course.course), minutes=MAY_SLIP_MINUTES)
        hot = is_hot(course, tasks, links)
        sit = sit_minutes(plan, course, hot=hot)
        if course.sit is None and sit:
            assumed.add("sit-hot" if hot else "sit", course.course, serve_id(course.course), minutes=sit)
        found.append(
            CourseWanted(
                name=course.course,
                serve=serve_id(course.course),
                clear=clear_id(course.course),
                wanted=wanted,
                eaten=eaten_minutes(course),
                may_slip=MAY_SLIP_MINUTES if course.may_slip is None else course.may_slip,
                standing=course.standing,
                sit=sit,
            )
        )
    return tuple(found)


def _kitchen(plan: Plan, assumed: Assumptions) -> None:
    said = plan.kitchen.model_fields_set
    if not said:
        assumed.add("kitchen")
    elif "ovens" not in said:
        assumed.add("one-oven")
    if said and "rings" not in said:
        assumed.add("rings", rings=plan.kitchen.rings)
    for name, oven in plan.kitchen.ovens.items():
        if "ovens" in said and "shelves" not in oven.model_fields_set:
            assumed.add("shelves", name, shelves=oven.shelves)
        if not {"low", "high"} <= oven.model_fields_set:
            assumed.add("oven-range", name, low=oven.low, high=oven.high)
        if oven.heats is None:
            assumed.add("oven-heats", name, to=HEATS_TO, minutes=HEATS_MINUTES)
        if oven.cools is None:
            assumed.add("oven-cools", name, begin=COOLS_FROM, to=COOLS_TO, minutes=COOLS_MINUTES)


def _table(plan: Plan, assumed: Assumptions) -> None:
    """What is laid by default; listed only if the plan counts the house's tableware."""
    if plan.table is None:
        return
    covers: dict[int | None, list[str]] = {}
    for each in laid(plan):
        if each.assumed:
            covers.setdefault(each.course, []).append(each.piece)
    for course, pieces in covers.items():
        if course is None:
            assumed.add("laid-throughout", pieces=tuple(pieces))
        else:
            assumed.add("laid", plan.courses[course].course, pieces=tuple(pieces))
    if plan.table.wash_between and wash_ups(plan):
        assumed.add("wash-a-piece", each=WASH_MINUTES_A_PIECE, least=LEAST_WASH_MINUTES)


def _washing_up(linked: Linked, assumed: Assumptions) -> None:
    for node in linked.nodes.values():
        if is_clear_down(node) and node.work is not None and node.work.takes is not None:
            most = linked.hours[node.id].values.get("most", 0)
            assumed.add("clear-down", task=node.id, minutes=node.work.takes.likely, most=most)
        elif node.loc == WASHING_UP and node.work is not None:
            for tool in node.work.washes:
                assumed.add("wash-a-tool", tool, node.id, minutes=TOOL_MINUTES)
