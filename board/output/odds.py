"""The odds of an evening, as text and for other programs."""

import math
from collections.abc import Mapping
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.text import Text

from board.base import words as shared
from board.base.plain import one_line
from board.odds.result import BY_SHARES, WITHIN_MINUTES, Cause, CourseOdds, Help, Odds
from board.output import words
from board.output.schemas.odds import CauseForm, OddsForm
from board.output.tables import cell, table

NAME_WIDTH, MOST_COLUMNS = 18, 50
BLAME_ROWS, HELP_ROWS = 6, 3
BLOCKS = "▁▂▃▄▅▆▇█"
FEW, EMPTY, EDGE = "·", " ", "│"
FEW_OF_TALLEST = 1 / 32  # a column lower than this against the tallest is drawn as few


def print_odds(odds: Odds, out: Console) -> None:
    """A table of the courses, a small picture of their spread, what made them late, where a minute helps, and what the
    odds do not know."""
    out.print(cell(words.odds_title(odds.plan, odds.evenings), "bold"))
    if not odds.never_varies:
        out.print(cell(words.odds_error(_points(odds), odds.seed), "dim"))
    if any(odds.assumed):
        out.print(cell(words.odds_assumed(*odds.assumed)))
    out.print()
    _courses(odds, out)
    if not odds.never_varies:
        _picture(odds, out)
    _blame(odds, out)
    out.print()
    if odds.never_varies:
        out.print(cell(words.ODDS_NO_SPREAD))
    else:
        _help(odds, out)
        out.print()
        pieces, sittings = odds.assumed
        told = words.odds_spreads(
            odds.spreads - pieces, odds.pieces, odds.sittings - sittings, len(odds.courses), assumed=any(odds.assumed)
        )
        out.print(cell(told, "dim"))
    out.print(cell(words.ODDS_CAUTION, "dim"))


def _points(odds: Odds) -> float:
    """The sampling error in points, rounded up to a tenth."""
    return math.ceil(odds.error * 1000) / 10


def _courses(odds: Odds, out: Console) -> None:
    zone = ZoneInfo(odds.zone)
    rows = table(
        (words.ODDS_COURSE, "left"),
        (words.ODDS_WANTED, "right"),
        (words.ODDS_WITHIN, "right"),
        *((words.odds_by(share), "right") for share in BY_SHARES),
        (words.ODDS_MEAN, "right"),
    )
    for course in odds.courses:
        rows.add_row(
            cell(course.name),
            shared.clock(course.wanted.astimezone(zone)),
            words.chance(course.within, certain=odds.never_varies),
            *(shared.clock(course.by[share].astimezone(zone)) for share in BY_SHARES),
            words.odds_minutes(course.mean_late),
        )
    out.print(rows)


def _picture(odds: Odds, out: Console) -> None:
    width = min(MOST_COLUMNS, max(12, out.width - NAME_WIDTH - 4))
    first, last = _range(odds.courses)
    each = 1 if last - first < width else WITHIN_MINUTES
    columns = range(math.ceil(first / each), min(math.ceil(last / each), math.ceil(first / each) + width - 1) + 1)
    out.print()
    out.print(cell(words.odds_picture(each), "dim"))
    out.print(Text(" " * (NAME_WIDTH + 1) + _scale(columns, each), style="dim"))
    for course in odds.courses:
        name = one_line(course.name, NAME_WIDTH).ljust(NAME_WIDTH + 1)
        out.print(Text((name + blocks(course.spread, columns, each)).rstrip()))


def _range(courses: tuple[CourseOdds, ...]) -> tuple[int, int]:
    """The first and last minute after wanted to draw, including 0 and the limit of on time."""
    seen = [minute for course in courses for minute in course.spread]
    return min(0, *seen), max(WITHIN_MINUTES + 1, *seen)


def blocks(spread: Mapping[int, int], columns: range, each: int) -> str:
    """One row of columns by number of evenings, the tallest drawn full; evenings beyond the last column count in it."""
    heights = dict.fromkeys(columns, 0)
    for minute, evenings in spread.items():
        heights[min(max(math.ceil(minute / each), columns[0]), columns[-1])] += evenings
    tallest = max(heights.values())
    drawn = {column: _glyph(height / tallest) for column, height in heights.items()}
    return "".join(f"{glyph}{EDGE}" if column * each == WITHIN_MINUTES else glyph for column, glyph in drawn.items())


def _glyph(height: float) -> str:
    if height < FEW_OF_TALLEST:
        return FEW if height else EMPTY
    return BLOCKS[min(len(BLOCKS) - 1, math.ceil(height * len(BLOCKS)) - 1)]


def _scale(columns: range, each: int) -> str:
    """Figures above the columns whose minutes divide by 5 (by 25, where a column is 5 min)."""
    line = ""
    for column in columns:
        place = column - columns[0] + (column * each > WITHIN_MINUTES)  # the edge takes a place
        if column % 5 == 0 and len(line) <= place:
            line = line.ljust(place) + str(column * each)
    return line


def _blame(odds: Odds, out: Console) -> None:
    out.print()
    if not odds.blame:
        out.print(cell(words.ODDS_NO_BLAME))
        return
    out.print(cell(words.ODDS_BLAME, "bold"))
    rows = table((words.ODDS_COURSE, "left"), (words.ODDS_CAUSE, "left"), (words.ODDS_LATE_IN, "right"))
    for each in odds.blame[:BLAME_ROWS]:
        rows.add_row(cell(each.course), cell(_blamed(each.cause)), words.chance(each.share, certain=odds.never_varies))
    out.print(rows)


def _blamed(cause: Cause) -> str:
    if cause.kind == "timetable":
        return words.ODDS_TIMETABLE
    return words.sat_long(cause.name) if cause.kind == "sitting" else cause.name


def _help(odds: Odds, out: Console) -> None:
    lines = [line for line in (_helped(odds, each) for each in odds.help) if line]
    if not lines:
        out.print(cell(words.ODDS_NO_HELP))
        return
    out.print(cell(words.ODDS_HELP, "bold"))
    for line in lines[:HELP_ROWS]:
        out.print(cell(line, indent=2))


def _helped(odds: Odds, each: Help) -> str | None:
    """What a minute brings to courses it helps by at least one point; None if there are none."""
    gains = []
    for course in odds.courses:
        points = round(each.gain[course.name] * 100)
        if points >= 1:
            gains.append(words.odds_gain(course.name, words.chance(course.within, certain=False), points))
    if not gains:
        return None
    name = words.sit_shorter(each.cause.name) if each.cause.kind == "sitting" else each.cause.name
    return words.odds_help(name, gains, words.odds_minutes(max(0.0, sum(each.saved.values()))))


def odds_form(odds: Odds) -> OddsForm:
    """The odds for other programs. Times ISO 8601 in the plan's zone, shares from 0 to 1, lengths in minutes."""
    zone = ZoneInfo(odds.zone)

    def cause(each: Cause) -> CauseForm:
        return {"kind": each.kind, "id": each.id, "name": each.name}

    return {
        "plan": odds.plan,
        "zone": odds.zone,
        "evenings": odds.evenings,
        "seed": odds.seed,
        "error": round(odds.error, 6),
        "pieces": odds.pieces,
        "spreads": odds.spreads,
        "sittings": odds.sittings,
        "assumed": {"spreads": odds.assumed[0], "sittings": odds.assumed[1]},
        "courses": [
            {
                "name": course.name,
                "wanted": course.wanted.astimezone(zone).isoformat(),
                "planned": course.planned.astimezone(zone).isoformat(),
                "within_5_min": course.within,
                "by": {f"{share:.2f}": course.by[share].astimezone(zone).isoformat() for share in BY_SHARES},
                "mean_late_minutes": round(course.mean_late, 3),
                "spread": [{"minutes": minute, "evenings": n} for minute, n in sorted(course.spread.items())],
            }
            for course in odds.courses
        ],
        "blame": [{"course": each.course, **cause(each.cause), "share": each.share} for each in odds.blame],
        "help": [
            {
                **cause(each.cause),
                "courses": [
                    {"name": name, "gain": each.gain[name], "saved_minutes": round(each.saved[name], 3)}
                    for name in each.gain
                ],
            }
            for each in odds.help
        ],
    }
