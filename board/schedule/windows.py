"""When each job may start: hours of the hands, days it was given, somebody at home while it is hot. Pure."""

from board.schedule.intervals import Window, meet, merged
from board.schedule.problem import Hand, Hold, Job, Problem, Way


def allowed_starts(problem: Problem, job: Job, way: Way, *hands: Hand, warm_up: bool = True) -> list[Window]:
    """Windows of starts (last minute included as end − 1) that keep every rule of hours, done by all of `hands`.

    With `warm_up`, somebody must also be at home while a cold oven heats.
    """
    allowed: list[Window] = [(problem.opens, problem.horizon + 1)]
    for hand in hands:
        for part in way.parts:
            allowed = meet(allowed, starts_within(hand.free, part.offset, part.length))
    if way.hot:
        home = home_windows(problem)
        allowed = meet(allowed, starts_within(home, 0, way.minutes))
        if warm_up and way.warm_up:
            allowed = meet(allowed, starts_within(home, -way.warm_up, way.warm_up))
    if job.window is not None:
        start, end = job.window
        allowed = meet(allowed, [(start, end - way.minutes + 1)] if end - start >= way.minutes else [])
    return allowed


def stands_alone(problem: Problem, hold: Hold, end: int, until: int) -> bool:
    """Whether what was made by minute `end` would be hot, up to minute `until`, while nobody is at home."""
    return hold.hot and end < until and not any(a <= end and until <= b for a, b in home_windows(problem))


def home_windows(problem: Problem) -> list[Window]:
    """When anybody at all is at home."""
    return merged([window for each in problem.hands for window in each.home])


def starts_within(windows: tuple[Window, ...] | list[Window], offset: int, length: int) -> list[Window]:
    """Starts such that [start + offset, start + offset + length) lies in one window."""
    return [(a - offset, b - offset - length + 1) for a, b in windows if b - a >= length]
