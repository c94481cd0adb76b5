"""Washing up that a plan does not write: the kitchen is cleared down before the guests come, and a tool that two dishes
need on one day is washed by hand between them. `wash up: no` under `kitchen` leaves both out, and what the plan has of
its own is never done twice. Pure.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from board.facts import deeds
from board.facts.job_words import mentions_job, says_when, usual_job
from board.facts.jobs import JOB_MINUTES
from board.facts.phrases import stems
from board.facts.washing import CLEARS_DOWN, TOOL_MINUTES, clear_down_minutes, is_washed_between
from board.plan.model.model import Plan
from board.plan.model.work import Job, Work
from board.plan.phrases.durations import Attention, Spread
from board.plan.phrases.stations import Station
from board.plan.phrases.when import instant
from board.plan.places import Loc
from board.plan.resolve.course_times import wanted_moments
from board.plan.resolve.fault import name_key, slug
from board.plan.resolve.given_time import ALWAYS, given_time
from board.plan.resolve.hours import Interval, hours_of, less
from board.plan.resolve.nodes import Link, Linked, Node, serve_id

CLEAR_DOWN = "clear down the kitchen"
LOC: Loc = ("kitchen", "wash up")
_KEEPS, _STILL_ONE = 120, 60  # minutes: what says nothing keeps; food that waits no longer stays in its tool; ours
_DAY_BEGINS = timedelta(hours=5)  # a cook's day; ours
_LAST_STRETCH, _ROOM = timedelta(hours=1), 2  # before the guests, and how often the job fits into it; ours
_NEVER_OVER = 1_000  # passes over the links that never settle: they go round in a ring


def is_clear_down(node: Node) -> bool:
    """Whether it is the program's own clearing down."""
    return node.loc == LOC and node.work is not None and not node.work.washes


def clear_down_jobs(plan: Plan) -> list[tuple[Loc, Job]]:
    """The one job, with the path of its key; none where nothing is cooked, where the plan has such a job itself, or
    where the hours before the guests come leave no time for it: it is not worth leaving the table for."""
    cooked = sum(any(step.on_heat for step in dish.steps) for course in plan.courses for dish in course.dishes)
    minutes = clear_down_minutes(cooked)
    if not (plan.kitchen.wash_up and cooked) or any(_clears_down(plan, job) for job in plan.jobs):
        return []
    return [(LOC, _by_hand(CLEAR_DOWN, minutes, {}))] if _has_time(plan, minutes) else []


def _has_time(plan: Plan, minutes: int) -> bool:
    """Whether there are hours before the guests come for this and all else, and some of them in the last stretch."""
    arrive = instant(plan.date, plan.arrive, ZoneInfo(plan.zone))
    hours = [span for name in plan.hands for span in less(hours_of(plan, name), [])]
    ahead, last = (_minutes_within(hours, since, arrive) for since in (ALWAYS[0], arrive - _LAST_STRETCH))
    steps = (step for course in plan.courses for dish in course.dishes for step in dish.steps)
    work = sum(map(_handwork, steps)) + sum(_of_job(plan, job) for job in plan.jobs)
    return ahead >= work + minutes and last >= _ROOM * minutes


def _minutes_within(hours: list[Interval], since: datetime, until: datetime) -> float:
    spans = (min(end, until) - max(start, since) for start, end in hours)
    return sum((max(span, timedelta()) for span in spans), timedelta()) / timedelta(minutes=1)


def _of_job(plan: Plan, job: Job) -> int:
    usual = usual_job(job.job)
    return _handwork(job) if job.takes or usual is None else usual.minutes_for(plan.guest_count)


def _handwork(work: Work) -> int:
    """Minutes of hands on it, or all it takes where it does not say and stands neither in an oven nor in the cold."""
    takes = work.takes.likely if work.takes is not None else JOB_MINUTES
    by_itself = work.where is not None and work.where.place in ("oven", "fridge", "freezer")
    hands = work.attended or Attention(whole=not by_itself)
    looks = takes // hands.every * hands.look if hands.every else 0
    return takes if hands.whole else hands.start + hands.end + looks


def _clears_down(plan: Plan, job: Job) -> bool:
    """Whether a job of the plan is that, on the day and before dinner is over."""
    elsewhere = job.day is not None and job.day.on(plan.date) != plan.date
    after = any(name_key(ref.step).startswith(("serve ", "clear ")) for ref in job.after or [])
    late = says_when(job.job) == "after dinner" or after
    return mentions_job(job.job, CLEARS_DOWN) and not elsewhere and not late


def _by_hand(name: str, minutes: int, tools: dict[str, int]) -> Job:
    """Left without `after` or `before`, as a bare job of a plan is."""
    return Job.model_construct(
        job=name,
        where=Station(place="worktop", tools=tools),
        takes=Spread(low=minutes, likely=minutes, high=minutes),
        attended=Attention(whole=True),
        washes=list(tools),
    )


@dataclass(frozen=True, slots=True)
class _Use:
    """One dish in a tool, from the first of its steps to the last. `ready`: how early that last one may end, for what
    comes of it to keep; `begins`: how late the first must begin."""

    dish: Loc
    first: Node
    last: Node
    amount: int
    ready: datetime
    begins: datetime


def wash_tools(plan: Plan, linked: Linked) -> None:
    """Adds a job for each tool that two dishes need on one day, between the two, in the order that keeps both best."""
    if not plan.kitchen.wash_up or any(_washes_between(plan, job) for job in plan.jobs):
        return
    times = _Times(plan, linked)
    for tool, there_are in plan.kitchen.tools.items():
        if is_washed_between(tool) and not _plan_washes(plan, tool):
            for before, after, amount in _wanted_again(plan, _uses(linked, times, tool), there_are):
                _add(linked, times, tool, before, after, amount)


def _plan_washes(plan: Plan, tool: str) -> bool:
    steps = (step for course in plan.courses for dish in course.dishes for step in dish.steps)
    work: list[tuple[str, Work]] = [*((step.step, step) for step in steps), *((job.job, job) for job in plan.jobs)]
    last = set(stems(tool)[-1:])
    return any(
        name_key(tool) in map(name_key, each.washes) or (deeds.washes_tool(name) and last <= set(stems(name)))
        for name, each in work
    )


def _washes_between(plan: Plan, job: Job) -> bool:
    """Whether a job of the plan washes up after a course that another follows."""
    courses = {f"{deed} {name_key(course.course)}" for course in plan.courses[:-1] for deed in ("serve", "clear")}
    return mentions_job(job.job, CLEARS_DOWN) and any(name_key(ref.step) in courses for ref in job.after or [])


def _wanted_again(plan: Plan, uses: list[_Use], there_are: int) -> Iterator[tuple[_Use, _Use, int]]:
    """Which use leaves how many of a tool dirty for which other: clean ones are taken first, then those of the same
    dish, then what has stood longest."""
    zone = ZoneInfo(plan.zone)

    def day(at: datetime) -> object:
        return (at.astimezone(zone) - _DAY_BEGINS).date()

    clean, dirty = there_are, list[tuple[_Use, int]]()
    for use in uses:
        wanted = use.amount
        mine = sum(amount for other, amount in dirty if other.dish == use.dish)
        dirty = [each for each in dirty if each[0].dish != use.dish]
        wanted -= min(mine, wanted)
        clean, wanted = clean - min(clean, wanted), wanted - min(clean, wanted)
        while wanted and dirty:
            other, amount = dirty.pop(0)
            taken = min(amount, wanted)
            wanted -= taken
            if amount > taken:
                dirty.insert(0, (other, amount - taken))
            gap = timedelta(minutes=TOOL_MINUTES * taken)
            if day(other.ready) == day(use.begins) and other.ready + gap <= use.begins:
                yield other, use, taken
        dirty.append((use, max(mine, use.amount)))


def _uses(linked: Linked, times: "_Times", tool: str) -> list[_Use]:
    """Each by itself, in the order that lets most be kept: where only one of two orders does, it is that."""
    found: list[_Use] = []
    for node in linked.nodes.values():
        amount = _amount(node, tool)
        if node.kind != "step" or not amount or node.id not in times.ready:
            continue
        before = found[-1] if found and found[-1].dish == node.loc[:4] else None
        if before is not None and _goes_on(linked, before.last, node, tool):
            found[-1] = _Use(
                before.dish, before.first, node, max(before.amount, amount), times.ready[node.id], before.begins
            )
        else:
            found.append(_Use(node.loc[:4], node, node, amount, times.ready[node.id], times.begins[node.id]))
    return sorted(found, key=lambda use: use.ready.timestamp() + use.begins.timestamp())


def _amount(node: Node, tool: str) -> int:
    """How many of a tool each of its ways takes."""
    if node.work is None:
        return 0
    places = (way.where or node.work.where for way in (node.work, *node.work.or_))
    return min(place.tools.get(tool, 0) if place is not None else 0 for place in places)


def _goes_on(linked: Linked, first: Node, second: Node, tool: str) -> bool:
    """Whether the food stays in the tool from one step to the next."""
    keeps = first.work.keeps if first.work is not None else None
    stays = keeps is not None and (tool in keeps.where.tools or keeps.minutes <= _STILL_ONE)
    return stays and any((link.first, link.second) == (first.id, second.id) for link in linked.taken_up)


def _add(linked: Linked, times: "_Times", tool: str, before: _Use, after: _Use, amount: int) -> None:
    name = f"wash the {tool}"
    base = f"jobs/{slug(name)}"
    id_ = next(i for i in (base, *(f"{base}-{n}" for n in range(2, 10_000))) if i not in linked.nodes)
    job = _by_hand(name, TOOL_MINUTES * amount, {tool: amount})
    linked.nodes[id_] = Node(id_, "job", name, LOC, job)
    emptied = _emptied_by(linked, times, before, after.begins - timedelta(minutes=TOOL_MINUTES * amount))
    linked.links += [*(Link(each, id_) for each in emptied), Link(id_, after.first.id)]


def _emptied_by(linked: Linked, times: "_Times", before: _Use, until: datetime) -> list[str]:
    """What the washing waits for: food that is kept for a short while stays in its tool until it is taken up. Where
    there is no time for that, it is put elsewhere."""
    takers = [link.second for link in linked.taken_up if link.first == before.last.id and link.second in times.begins]
    keeps = before.last.work.keeps if before.last.work is not None else None
    stays = keeps is None or keeps.minutes <= _STILL_ONE
    if stays and takers and all(times.latest_end(id_) <= until for id_ in takers):
        return takers
    return [before.last.id]


class _Times:
    """By step: how early it may end for its result to keep, and how late it must begin, for its course to be in time
    as far as order alone says. UTC."""

    def __init__(self, plan: Plan, linked: Linked) -> None:
        self.plan = plan
        self.linked = linked
        self.then: dict[str, list[Link]] = {}
        for link in linked.links:
            self.then.setdefault(link.first, []).append(link)
        self.opens = min((start for hand in plan.hands for start, _ in hours_of(plan, hand)), default=None)
        self.ready: dict[str, datetime] = {}
        self.begins: dict[str, datetime] = {}
        for course, wanted in zip(plan.courses, wanted_moments(plan), strict=True):
            self.ready[serve_id(course.course)] = self.begins[serve_id(course.course)] = wanted
        steps = [node for node in linked.nodes.values() if node.kind == "step"]
        for _ in range(_NEVER_OVER):
            left = [node for node in reversed(steps) if node.id not in self.begins and self._settles(node)]
            if not left:
                break

    def _settles(self, node: Node) -> bool:
        """Whether all that takes it up is known, and so it is now."""
        then = [link for link in self.then.get(node.id, []) if link.second in self.linked.nodes]
        then = [link for link in then if self.linked.nodes[link.second].kind in ("step", "serve")]
        if node.work is None or not then or any(link.second not in self.begins for link in then):
            return False
        takes = self._takes(node.id)
        keeps = node.work.keeps.minutes if node.work.keeps is not None else _KEEPS
        ready, last = [], []
        for link in then:
            waits = keeps if link.most is None else min(keeps, link.most)
            ready.append(self._taken_up(link.second) - timedelta(minutes=max(waits, link.least)))
            last.append(self.begins[link.second] - timedelta(minutes=link.least))
        first, until = given_time(self.plan, node.work)
        opens = max(first, self.opens) if self.opens is not None else first
        self.ready[node.id] = max(*ready, opens + takes)
        self.begins[node.id] = min(*last, until) - takes
        return True

    def latest_end(self, id_: str) -> datetime:
        """By when a step is over; a course, out."""
        return self.begins[id_] + self._takes(id_)

    def _takes(self, id_: str) -> timedelta:
        node = self.linked.nodes[id_]
        return timedelta(minutes=node.work.takes.likely if node.work is not None and node.work.takes is not None else 0)

    def _taken_up(self, id_: str) -> datetime:
        """The earliest that a follower may begin."""
        return self.ready[id_] - self._takes(id_)
