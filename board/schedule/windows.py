"""When each job may start: hours of the hands, days it was given, somebody at home while it is hot. Pure."""

from collections.abc import Sequence

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


def nearest_starts(problem: Problem, job: Job, way: Way, *hands: Hand) -> list[Window]:
    """The starts that keep every rule of hours; where none does, those at which as few minutes as can be lie outside:
    of hands at work, of heat with nobody at home, of what has its own time."""
    allowed = allowed_starts(problem, job, way, *hands)
    return allowed or _least_outside(_asked(problem, job, way, hands), job.earliest, problem.horizon)


_Asked = tuple[int, int, list[Window]]  # from the start: an offset, a length, and the windows it should lie in


def _asked(problem: Problem, job: Job, way: Way, hands: Sequence[Hand]) -> list[_Asked]:
    asked: list[_Asked] = [(0, way.minutes, [(problem.opens, problem.horizon + way.minutes)])]
    asked += [(part.offset, part.length, list(hand.free)) for hand in hands for part in way.parts]
    if way.hot:
        asked += [(-way.warm_up, way.warm_up, home_windows(problem)), (0, way.minutes, home_windows(problem))]
    if job.window is not None:
        asked.append((0, way.minutes, [job.window]))
    return asked


def _least_outside(asked: list[_Asked], first: int, last: int) -> list[Window]:
    """Minutes outside grow and shrink evenly from one turning point to the next: two that are least in a row, and so is
    all between."""
    turns = {
        edge - offset - piece
        for offset, length, windows in asked
        for window in windows
        for edge in window
        for piece in (0, length)
    }
    points = sorted({first, last, *(turn for turn in turns if first < turn < last)})
    outside = [sum(_outside(at + offset, length, windows) for offset, length, windows in asked) for at in points]
    least = min(outside)
    pairs = zip(points, outside, points[1:], outside[1:], strict=False)
    flat = [(a, b + 1) for a, one, b, other in pairs if one == other == least]
    return merged(flat + [(at, at + 1) for at, minutes in zip(points, outside, strict=True) if minutes == least])


def _outside(start: int, length: int, windows: list[Window]) -> int:
    return length - sum(max(0, min(b, start + length) - max(a, start)) for a, b in windows)


def stands_alone(problem: Problem, hold: Hold, end: int, until: int) -> bool:
    """Whether what was made by minute `end` would be hot, up to minute `until`, while nobody is at home."""
    return hold.hot and end < until and not any(a <= end and until <= b for a, b in home_windows(problem))


def home_windows(problem: Problem) -> list[Window]:
    """When anybody at all is at home."""
    return merged([window for each in problem.hands for window in each.home])


def starts_within(windows: tuple[Window, ...] | list[Window], offset: int, length: int) -> list[Window]:
    """Starts such that [start + offset, start + offset + length) lies in one window."""
    return [(a - offset, b - offset - length + 1) for a, b in windows if b - a >= length]
