"""When a job is done where its plan does not say: at its usual hour, by its words; of no known job, in the last hours
before the guests come.

Entered as links, such as `before: guests arrive, at most 15 min` in the plan would make, but for one thing: nothing the
plan itself asks for bends for their minutes, and no course waits for the job. Pure.
"""

from collections.abc import Iterator

import msgspec

from board.facts.food import raw_class
from board.facts.job_words import says_another_day, says_when, usual_job, usual_jobs
from board.facts.jobs import AFTER_DINNER, ANY_JOB, THAT_DAY, USUAL_JOBS, Event, UsualJob, Window
from board.facts.phrases import listed_words, stem, stems
from board.plan.model.courses import Course
from board.plan.model.model import Plan
from board.plan.model.work import Work
from board.plan.resolve.assumed import Assumed, Value
from board.plan.resolve.going_in import foods_of
from board.plan.resolve.nodes import Link, Linked, Node, clear_id, serve_id

IN_TIME, WORDS_ALONE = Assumed("before-guests"), Assumed("any-time-by-words")
_AFTER_A_COURSE = Window("over", 0, 30, after=True)
_SOON = 15  # minutes before a course that a job is for: coffee before the course called Coffee
_MAIN = listed_words("main mains roast entree")
_AFTERS = listed_words(
    """sweet dessert pudding pud afters cheese coffee tea petits crumble cake cheesecake trifle mousse fool meringue
    pavlova brownie tiramisu sorbet ice custard chocolate brulee panna fruit berries strawberry raspberry apple pear
    plum peach cherry lemon"""
)  # of a course or a dish that comes after the main one
_SAY_NOTHING = listed_words("the a an our of and in on to out from take get bring fridge refrigerator with for")


def usual_hours(plan: Plan, linked: Linked) -> None:
    """Adds the links of every job that the plan gives no time, and keeps in `linked.hours` what was taken."""
    jobs = [node for node in linked.nodes.values() if node.kind == "job" and node.work is not None]
    for node in jobs:
        if node.work is not None and _is_left_open(node.work):
            linked.hours[node.id] = _Hour(plan, linked, node, node.work).taken(jobs)


def _is_left_open(job: Work) -> bool:
    return job.before is None and job.after is None and job.not_before is None


class _Hour:
    """The hour of one job."""

    def __init__(self, plan: Plan, linked: Linked, node: Node, work: Work) -> None:
        self.plan = plan
        self.linked = linked
        self.node = node
        self.work = work

    def taken(self, jobs: list[Node]) -> Assumed:
        """Links it, and tells how."""
        usual, told = usual_job(self.node.name), says_when(self.node.name)
        elsewhere = self.work.day is not None and self.work.day.on(self.plan.date) != self.plan.date
        if elsewhere or self.work.not_after is not None:
            return self._before_guests(IN_TIME)
        window = usual.window if usual is not None else None
        if self.work.puts_away:
            window = _AFTER_A_COURSE
        elif told == "after dinner" and not (window is not None and window.after):
            window = AFTER_DINNER
        elif told == "another time" or (told == "before the guests" and window is not None and window.after):
            if not says_another_day(self.node.name):
                self._within(THAT_DAY, None)
                return WORDS_ALONE
            return self._before_guests(WORDS_ALONE)
        if window is None and usual is None and any(link.first == self.node.id for link in self.linked.links):
            return self._before_guests(IN_TIME)  # something waits for it
        if window is None and usual is None:
            taken = self._within(ANY_JOB, None)
            return taken if taken is IN_TIME else msgspec.structs.replace(taken, kind="last-hours")
        ahead = list(self._ahead(jobs)) if told != "after dinner" else []
        taken = self._within(window, usual) if window is not None else self._before_guests(IN_TIME)
        return msgspec.structs.replace(taken, values={**taken.values, "ahead": tuple(ahead)}) if ahead else taken

    def _ahead(self, jobs: list[Node]) -> Iterator[str]:
        """Links it to the jobs that come after it, and names them."""
        known = [USUAL_JOBS[name] for name in usual_jobs(self.node.name)]
        for other in jobs:
            theirs = usual_jobs(other.name) if says_when(other.name) != "after dinner" else ()
            wait = max((job.runs_on for job in known if set(theirs) & set(job.ahead_of)), default=None)
            if wait is not None and other is not self.node and self._add(Link(self.node.id, other.id, wait)):
                yield other.name

    def _before_guests(self, taken: Assumed) -> Assumed:
        self._add(Link(self.node.id, "guests-arrive", firm=False))
        return taken

    def _within(self, window: Window, usual: UsualJob | None) -> Assumed:
        event, what, course = self._event(window)
        if window.after and window.event == "last" and course is not None and self._is_named_for(course):
            window = Window("last", 0, _SOON)
        link = (
            Link(event, self.node.id, window.least, window.most, usual=True)
            if window.after
            else Link(self.node.id, event, window.least, window.most, firm=False, usual=True)
        )
        return _taken(window, usual, what) if self._add(link) else self._before_guests(IN_TIME)

    def _add(self, link: Link) -> bool:
        """Unless the two would then wait for one another in a ring."""
        if _leads(self.linked.links, link.second, link.first):
            return False
        self.linked.links.append(link)
        return True

    def _event(self, window: Window) -> tuple[str, dict[str, Value], Course | None]:
        """What a window is about: its id, and what happens; and its course, if one is served."""
        courses = self.plan.courses
        if window.event == "over":
            last = next((each for each in reversed(courses) if each.course in self.work.puts_away), courses[-1])
            return clear_id(last.course), {"event": "cleared", "name": last.course}, None
        if window.event == "table" and "guests-to-the-table" in self.linked.nodes:
            return "guests-to-the-table", {"event": "table"}, None
        if window.event == "used" and (cooked := self._cooked()) is not None:
            return cooked.id, {"event": "work", "name": cooked.name}, None
        course = None if window.event == "guests" else self._course(window.event)
        if course is None:
            return "guests-arrive", {"event": "guests"}, None
        return serve_id(course.course), {"event": "served", "name": course.course}, course

    def _course(self, event: Event) -> Course | None:
        """The one its own words say it is for, `open the red for the beef`; else the usual one, if there is one."""
        courses = self.plan.courses
        seated = [course for course in courses if not course.standing] or courses
        words = stems(self.node.name)
        for_it = next((words[n + 1 :] for n, word in enumerate(words) if word in ("for", "with")), ())
        named = _named(courses, set(words if event == "used" else for_it))
        if named is not None or event == "used":
            return named
        if event == "last":
            return courses[-1]
        if event == "cheese":
            return next((each for each in courses if _is_cheese(each)), None)
        return _main(seated) if event == "main" else seated[0]

    def _cooked(self) -> Node | None:
        """The first step on heat of a dish whose raw meat or fish the job names."""
        words = set(stems(self.node.name))
        for c, course in enumerate(self.plan.courses):
            for d, dish in enumerate(course.dishes):
                raw = (line.food for _, line in foods_of(dish) if raw_class(line.food) not in (None, "eggs"))
                if any(words & set(stems(food)) for food in raw):
                    steps = (n for n in self.linked.nodes.values() if n.loc[:4] == ("courses", c, "dishes", d))
                    return next((n for n in steps if n.work is not None and n.work.on_heat), None)
        return None

    def _is_named_for(self, course: Course) -> bool:
        """Whether the course is what the job makes: a course called Coffee."""
        return bool(set(stems(course.course)) & set(stems(self.node.name)) - {"the", "and"})


def _named(courses: list[Course], words: set[str]) -> Course | None:
    """The first course of which these words name the course, else a dish."""
    words = {word for word in words if word not in _SAY_NOTHING}
    by_course = (each for each in courses if words & set(stems(each.course)))
    return next(by_course, next((each for each in courses if words & set(_stems_of(each))), None))


def _is_cheese(course: Course) -> bool:
    """By its name, or by a dish that is cheese, unlike cheese straws."""
    cheese = {stem("cheese"), stem("cheeseboard")}
    return bool(cheese & {*stems(course.course), *(word for dish in course.dishes for word in stems(dish.dish)[-1:])})


def _main(seated: list[Course]) -> Course:
    """The one called so, else the last with meat or fish in it, else the last that is no sweet by its names."""
    called = (each for each in seated if _MAIN & set(stems(each.course)))
    meat = (each for each in reversed(seated) if any(raw_class(food) not in (None, "eggs") for food in _foods(each)))
    savoury = (each for each in reversed(seated) if not _AFTERS & set(_stems_of(each)))
    return next(called, next(meat, next(savoury, seated[0])))


def _foods(course: Course) -> Iterator[str]:
    return (line.food for dish in course.dishes for _, line in foods_of(dish))


def _stems_of(course: Course) -> tuple[str, ...]:
    return tuple(word for name in (course.course, *(dish.dish for dish in course.dishes)) for word in stems(name))


def _taken(window: Window, usual: UsualJob | None, what: dict[str, Value]) -> Assumed:
    values: dict[str, Value] = {"least": window.least} if window.least else {}
    values |= {"most": window.most or 0, **what}
    if usual is not None and usual.food:
        values["food"] = True
    if usual is not None and usual.fridge_minutes:
        return Assumed("chilled", values)
    if window.after:
        return Assumed("after" if window.least else "soon-after", values)
    return Assumed("before" if window.least else "soon-before", values)


def _leads(links: list[Link], first: str, last: str) -> bool:
    """Whether one thing comes before another, near or far."""
    follows: dict[str, list[str]] = {}
    for link in links:
        follows.setdefault(link.first, []).append(link.second)
    seen, queue = {first}, [first]
    while queue:
        here = queue.pop()
        if here == last:
            return True
        new = [other for other in follows.get(here, []) if other not in seen]
        seen.update(new)
        queue += new
    return False
