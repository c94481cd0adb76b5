"""What is printed: sheets, checks, ways out of a clash."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from board.base.words.house import first_named
from board.base.words.looking_back import away_of_each
from board.base.words.signs import SIGN
from board.base.words.times import clock, short_day, span
from board.sheet.told import StillOpen

CAUTIONS_TITLE = "The usual cautions"

CAUTION = (
    "Planning help only: the label on the food, your local food-safety code and licensed advice decide. "
    "Allergies: read every label and ask your guest; local law and licensed practice go first."
)

STOP, MIND, NOTE = f"{SIGN['stop']} STOP: cannot be done as written", f"{SIGN['mind']} MIND", f"{SIGN['note']} NOTE"
ASK = f"{SIGN['ask']} ASK: the program does not know"
STOP_SAFETY = f"{SIGN['stop']} STOP: could hurt somebody who eats it"
CHECK_HOLDS_UNSAFE = "Every course is on time; but it is not fit to serve until the stops below are mended."
CHECK_HOLDS = "The timetable holds: every course on time, nothing kept past its limit."
CHECK_HOLDS_LONGER = "The timetable holds: every course on time; what your times keep longer than is usual is asked."
CHECK_GIVES_UP = "The timetable has to give something up:"
CHECK_STOPPED = "No timetable until the stops below are mended."


def check_past(due: datetime, now: datetime) -> str:
    return f"Its time is past: guests were due {_with_year(due)}, and it is {_with_year(now)} now."


def check_late(first: datetime, now: datetime) -> str:
    return f"Its work was to begin {_with_year(first)}, and it is {_with_year(now)} now."


def _with_year(at: datetime) -> str:
    return f"{short_day(at)} {at.year} {clock(at)}"


CHECK_ASSUMED = "Assumed, because the plan does not say:"
ON_YOUR_WORD = "On your word, which may be wrong; without it there would be more to mind:"
NOTHING_FOUND = "nothing to mend, to ask or to mind"
_COUNTED = {"stop": ("stop", "stops"), "ask": ("to ask",) * 2, "mind": ("to mind",) * 2, "note": ("note", "notes")}


def counted(findings: Mapping[str, int]) -> str:
    """`2 stops, 3 to ask, 5 to mind`, from `{"stop": 2, …}`."""
    told = [f"{n} {_COUNTED[weight][n != 1]}" for weight, n in findings.items() if n]
    return ", ".join(told) or NOTHING_FOUND


CHECK_PARTS = {
    "ask": "to ask", "mind": "to mind", "note": "to note", "assumed": "assumed", "trusted": "on your word",
    "cautions": "usual cautions", "stop": "to mend",
}  # fmt: skip


def also_at(places: Sequence[tuple[int, str]], count: int) -> str:
    """Where the others of the same kind stand."""
    told = ", ".join(f"line {line} ({text})" for line, text in places)
    return f"Also {told}." if len(places) == count else f"And {count} more like it."


def with_more(line: str, same: int, other: int) -> str:
    """`same`: others of which the line is true, too; `other`: those with another figure."""
    return line + (f" and {same} more" if same else "") + (f"; other figures for {other} more" if other else "")


def check_assumed(count: int, *, whole: bool) -> str:
    return CHECK_ASSUMED if whole or not count else f"{CHECK_ASSUMED[:-1]} ({count}; --all tells them):"


def cautions_brief(topics: Sequence[str]) -> str:
    return f"The usual cautions: {', '.join(topic.lower() for topic in topics)} (--all tells them)."


def hands_unsaid(names: Sequence[str]) -> str:
    """Before what is given up, of which it may be the reason."""
    return f"Perhaps only since hands are taken to stay all the time at: {first_named(names)} (say `attended:`)"


def more_given_up(count: int) -> str:
    return f"and {count} more"


def more_by_all(left: Sequence[tuple[int, str]]) -> str:
    return f"Not shown: {', '.join(f'{count} {name}' for count, name in left)}. --all tells them."


def on_your_word(word: str, settles: str, about: Sequence[str]) -> str:
    """`free from milk (safe for Ines): bread, cake`."""
    return f"{word}{f' ({settles})' if settles else ''}: {', '.join(about)}"


def check_title(event: str, guests: int, pieces: int) -> str:
    return f"{event}: {guests} at the table, {pieces} pieces of work"


SHEET_FROM, SHEET_TO, SHEET_WHAT, SHEET_WHERE, SHEET_WHO, SHEET_GIVE = "from", "to", "what", "where", "who", "give"
GIVE_TOLD_MINUTES = 60  # more give than this says nothing


def give(minutes: int | None) -> str:
    """`give 18 min`, where it is short; else nothing."""
    if minutes is None or minutes > GIVE_TOLD_MINUTES:
        return ""
    return f"give {minutes} min" if minutes else "no give"


def give_in_column(minutes: int | None) -> str:
    """The same under the column's head."""
    return "" if minutes is None or minutes > GIVE_TOLD_MINUTES else f"{minutes} min"


def runs_till(length: str, clock: str) -> str:
    """Of what runs by itself: `2 h 45, till 20:58`."""
    return f"{length}, till {clock}"


def of_dish(step: str, dish: str) -> str:
    return f"{step} ({dish})"


def with_moments(step: str, before: Sequence[str], after: Sequence[str]) -> str:
    """`18:30 guests arrive; reheat the soup`: what takes no minutes beside what lasts."""
    return "; ".join([*before, " · ".join([step, *after])])


def done_with(others: Sequence[str]) -> str:
    """Of what takes several people: who else does it."""
    return f"with {' and '.join(others)}"


def waits_for(name: str) -> str:
    return f"waits for: {name}"


def look_at(clock: str, kind: str) -> str:
    """When hands are needed on what began before; `kind` as on the run sheet."""
    return f"end {clock}" if kind == "end" else clock


def looks(found: Sequence[tuple[str, Sequence[str]]]) -> str:
    """`look in: simmer the broth 19:01, end 19:25; …`, from names and their moments; nothing where there are none."""
    told = "; ".join(f"{name} {', '.join(times)}" for name, times in found)
    return f"look in: {told}" if told else ""


def block_title(about: str, names: Sequence[str], left: int) -> str:
    """`Beef: brown, build the braise and 2 more`; `left`: how many of what is done are not named."""
    told = ", ".join(names) + (f" and {left} more" if left else "")
    return f"{about}: {told}" if about else told


CLOCKS_GO_BACK = "The clocks go back: a time marked first comes before that, again after."

SHEET_NOBODY = "nobody needed"
SHEET_GIVEN_UP = "Given up"

SHEET_STOPS = "Must be mended before anybody eats"
SHEET_CLOCKS = "Neither hot nor cold enough, until it is eaten"
CLOCK_DISH, CLOCK_COURSE, CLOCK_OUT, CLOCK_LIMIT, CLOCK_RUNS_OUT = "dish", "course", "min out", "limit", "put away by"
CLOCK_IN_TIME = "put away in time"


def clocks_by(rules: str) -> str:
    return f"By the {rules}; what passes its limit is thrown away. Your local code and the label decide."


SHEET_COLD = "Fridge and freezer"
COLD_ASSUMED = (
    "Ice and bought frozen food: 2 litres a kilo, packs included; where no trip is planned, at home from noon "
    "[common practice, no source]"
)


def cold_fullest(place: str, at: str, litres: float, room: float | None, over: float) -> str:
    """`fridge: fullest Sat 14:00, 38 of 40 l`; `at`: day and clock."""
    of = f" of {room:g}" if room is not None else ""
    return f"{place}: fullest {at}, {litres:g}{of} l" + (f", {over:g} l too many" if over else "")


def cold_hours(place: str, day: str, hours: Sequence[tuple[str, float]]) -> str:
    """`fridge, Saturday, by the hour: 9:00 12 l, 14:00 38 l`: from each hour on, till the next."""
    return f"{place}, {day}, by the hour: {', '.join(f'{at} {litres:g} l' for at, litres in hours)}"


def cold_uncounted(place: str, what: Sequence[str]) -> str:
    return f"{place}: not counted, for the plan gives no litres: {', '.join(what)}"


def moved_since(moved: Sequence[tuple[str, str, str]], more: int) -> str:
    """`2 moved since last time: chop the leeks 17:00, was 16:55; …`: names, times as they are and as they were."""
    named = "; ".join(f"{name} {now}, was {before}" for name, now, before in moved)
    return f"{len(moved) + more} moved since last time: {named}" + (f"; and {more} more" if more else "")


def min_late(minutes: int) -> str:
    return f"  ({minutes} min late)"


def away_from_guests(minutes: Mapping[str, int]) -> str:
    return f"{away_of_each(minutes)} in the kitchen while your guests are at the table or about"


def sit_till(clock: str) -> str:
    """After a course's name."""
    return f", sit till {clock}" if clock else ", no time to sit down"


def up_for(ups: str) -> str:
    return f"up {ups}"


def busiest_before(course: str, minutes: int) -> str:
    return f"busiest half hour: before {course}, {minutes} of 30 min at work"


def without_pause(day: str, minutes: int, since: str, who: str = "") -> str:
    return f"{day}: {span(minutes)} without a pause from {since}{f', {who}' if who else ''}"


def without_supper(day: str, since: str, until: str, who: str = "") -> str:
    return f"{day}: no half hour to eat between {since} and {until}{f', {who}' if who else ''}"


AIMS = {  # minutes of each; of clocks, dishes
    "hours": "of work outside your hours",
    "clocks": "out past the clock",
    "courses": "of courses late",
    "keeps": "past what things keep",
    "outside": "that work lies off its hours",
    "freshness": "past the best of hot food",
    "usual": "outside the usual hours of jobs",
    "table": "up from the table",
    "company": "away from the guests",
    "rest": "without a pause",
    "day": "of work in the last three hours",
    "spread": "of work spread over the days",
    "busiest": "in your busiest half hour",
    "give": "of give",
    "spared": "of a helper's work",
}


def sheet_state(proved: bool, still_open: Sequence[StillOpen]) -> str:
    """What is proved, and which aims are not: by how many minutes at the most each may still be bettered."""
    if proved:
        return "proved: no timetable does better on what counts"
    if not still_open:
        return "the best found, not proved"
    left = [f"{_so_many(each.by, each.aim)} {AIMS[each.aim]}" for each in still_open if each.by is not None]
    unseen = [f"{_unit(each.aim)[1]} {AIMS[each.aim]}" for each in still_open if each.by is None]
    parts = [f"Open: {', '.join(left)}"] if left else []
    parts += [f"not looked into: {', '.join(unseen)}"] if unseen else []
    order = list(AIMS)
    first = min(order.index(each.aim) for each in still_open)
    # What is proved of lesser aims is so only for what was found of the greater ones.
    nothing_after = len(still_open) == len([aim for aim in order[first:] if aim != "spared"])
    if first:
        parts.append("all else is proved" if nothing_after else "all that counts more is proved")
    return "; ".join(parts)


def _so_many(count: int, aim: str) -> str:
    one, several = _unit(aim)
    return f"{count} {one if count == 1 else several}"


def _unit(aim: str) -> tuple[str, str]:
    return ("dish", "dishes") if aim == "clocks" else ("minute", "minutes")


REVIEW_LATE, REVIEW_PUSHED, REVIEW_STEP, REVIEW_BEGUN = "late", "pushed", "step", "begun"
REVIEW_MINUTES, REVIEW_TOOK, REVIEW_ANSWERED, REVIEW_LATER = "min", "took", "answered", "later"
REVIEW_SAID = "said"  # afterwards, and not seen

LEAF_WALL = "For the wall: everybody's work"
LEAF_NOTES = "Mind"
OFF_THE_HEAT = {"oven": "out", "stovetop": "off"}  # before the time it is


def recipe_from(dish: str, source: str) -> str:
    return f"{dish}: recipe from {source}"


def leaf_of(name: str) -> str:
    return f"For {name}"


def hands_at(clocks: list[str]) -> str:
    return f"hands at {', '.join(clocks)}"


def sheet_plates(course: str) -> str:
    return f"Whose plate is different: {course}"


SLIPPED = "What slipped"
OFFERED = "Better timetables the board offered"


def offered(brings: str, *, taken: bool) -> str:
    return f"{brings}: {'taken' if taken else 'not taken'}"


def between(low: int, high: int) -> str:
    """`25 min`, `20 to 25 min`, `50 min to 1 h 10`."""
    if low == high:
        return span(low)
    return f"{low} to {span(high)}" if high < 60 else f"{span(low)} to {span(high)}"


WAYS_OUT = "Ways out, each worked out again, the cheapest first"
WAYS_IN_PART = "No one change mends all of it; these help, each worked out again, what helps most first"
NOT_ALL_TRIED = "not all was looked into in the time there was; --limit SECONDS sets it"
NO_WAYS_OUT = "No way out was needed, or none was found among the changes the program knows"


def way_line(number: int, what: str) -> str:
    return f"{number} {what}"


def how_to_take(plan: str) -> str:
    return f"take one: platecall sheet {plan} --take 1"


def taken(plan: str) -> str:
    return f"Written to {plan}; these lines changed:"


def to_decide(question: str) -> str:
    return f"decide: {question}"
