"""When each job may start: hours of the hands, days it was given, somebody at home while it is hot. Pure."""

from board.timetable.question import Hand, Job, Question, Way, Window, meet, merged


def allowed_starts(question: Question, job: Job, way: Way, hand: Hand | None) -> list[Window]:
    """Windows of starts (last minute included as end − 1) that keep every rule of hours."""
    allowed: list[Window] = [(0, question.horizon + 1)]
    if hand is not None:
        for part in way.parts:
            allowed = meet(allowed, _starts_within(hand.free, part.offset, part.length))
    if way.hot:
        home = merged([window for each in question.hands for window in each.home])
        allowed = meet(allowed, _starts_within(home, 0, way.minutes))
    if job.window is not None:
        start, end = job.window
        allowed = meet(allowed, [(start, end - way.minutes + 1)] if end - start >= way.minutes else [])
    return allowed


def _starts_within(windows: tuple[Window, ...] | list[Window], offset: int, length: int) -> list[Window]:
    """Starts such that [start + offset, start + offset + length) lies in one window."""
    return [(a - offset, b - offset - length + 1) for a, b in windows if b - a >= length]
