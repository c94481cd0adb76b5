"""The odds."""

ODDS_COURSE, ODDS_WANTED, ODDS_WITHIN, ODDS_MEAN = "course", "wanted", "within 5 min", "mean late"
ODDS_CAUSE, ODDS_LATE_IN = "ran over most", "of all evenings"
ODDS_BLAME = "What made a course more than 5 min late"
ODDS_NO_BLAME = "In none of these evenings was a course more than 5 min late."
ODDS_HELP = "Where one more minute helps most (begin it a minute sooner, or take a minute out of it)"
ODDS_NO_HELP = "No single minute raises a course's chance by a whole point."
ODDS_TIMETABLE = "the timetable plans it late"
ODDS_NO_SPREAD = (
    "Nothing in this plan may last longer or shorter: every piece of work has one figure, so all evenings are the "
    "timetable's own. To learn the odds, write how long things last at least, most likely and at most, as in "
    "`takes: 10 to 15 to 20 min` or `eaten in: 20 to 25 to 35 min`."
)
ODDS_CAUTION = (
    "The odds know only these spreads. They take it that every call is answered on time and nothing goes wrong "
    "otherwise; guests who come late, a forgotten pan or a slow oven are not in them."
)


def odds_title(plan: str, evenings: int) -> str:
    return f"{plan}: the odds, from {evenings:,} evenings played forward"


def odds_error(points: float, seed: int) -> str:
    return f"shares are right to ± {points:g} point{'s' if points != 1 else ''} (19 times of 20); seed {seed}"


def odds_by(share: float) -> str:
    return f"{share:.0%} by".replace("%", " %")


def odds_minutes(minutes: float) -> str:
    return "under 0.1 min" if 0 < minutes < 0.1 else f"{minutes:.1f} min"


def chance(share: float, *, certain: bool) -> str:
    """Whole per cent; none and all are only said when they are so."""
    if not certain and share >= 0.995:
        return "over 99 %"
    if not certain and share < 0.005:
        return "under 1 %"
    return f"{round(share * 100)} %"


def odds_picture(minutes: int) -> str:
    each = "minute" if minutes == 1 else f"{minutes} minutes"
    return f"Minutes after the wanted time, one block for each {each}; left of │ is within 5 min; · is very few"


def sat_long(course: str) -> str:
    return f"the guests sat long over {course}"


def sit_shorter(course: str) -> str:
    return f"the guests over {course}"


def odds_gain(course: str, before: str, points: int) -> str:
    return f"{course} +{points} point{'s' if points != 1 else ''} (from {before})"


def odds_help(name: str, gains: list[str], minutes: str) -> str:
    return f"{name}: {', '.join(gains)}; saves {minutes} of lateness an evening"


def odds_assumed(pieces: int, sittings: int) -> str:
    """Said in the heading: how much of the odds is the program's guess."""
    counted = (
        (pieces, "piece of work", "pieces of work"),
        (sittings, "course in how long it is eaten", "courses in how long they are eaten"),
    )
    of = " and ".join(f"{count} {one if count == 1 else many}" for count, one, many in counted if count)
    return f"Spreads are assumed for {of}, by kind of work (common practice, no source); your own logs know better."


def odds_spreads(spreads: int, pieces: int, sittings: int, courses: int, *, assumed: bool) -> str:
    others = "are assumed" if assumed else "always take their one figure"
    return (
        f"The plan gives {spreads} of {pieces} pieces of work a spread, and {sittings} of {courses} courses in how "
        f"long they are eaten; the others {others}."
    )
