"""Whether the words of a step say the same length, heat and place as its keys. Pure; minutes and °C.

The timetable goes by the keys alone, and people in the kitchen by the words. A name's own range is fine, and so is a
share of a longer step (`rest 10 min, then carve`). The limits of what is only rounded are ours.
"""

import re
from collections.abc import Iterator

from board.base.words.times import short
from board.checks.plan.figures import Figures
from board.facts.degrees import to_celsius
from board.facts.phrases import folded
from board.plan.load import PlanFile
from board.plan.model.work import Way, Work
from board.plan.phrases.durations import LengthInText, lengths_in
from board.plan.resolve.assume import Task
from board.plan.snag import Snag, Weight

NIGHT_MINUTES = 5 * 60  # no night in the fridge or on the bench is shorter; ours
ROUNDED_MINUTES, ROUNDED_SHARE = 1, 0.1
FAR_MORE, FAR_MORE_MINUTES = 2, 20  # `simmer for 10 min`, taking over twice that and so much more, is another length
ROUNDED_CELSIUS = 10
HAND_MINUTES = 10  # a hand goes to an oven or fridge for no longer: `put the plates in the oven`


def words_say_what_keys_say(file: PlanFile) -> list[Snag]:
    """plan 19: the words of a step name a length longer than its longest `takes` and the wait after it, or nothing but
    a length far shorter; an oven's heat that its `where` does not have; or an oven, ring, fridge or freezer where it is
    not planned. The timetable goes by the keys. Our own limits."""
    say, waits = Figures(file), dict[str, int]()
    for link in file.filled.links:
        waits[link.first] = max(waits.get(link.first, 0), link.least)
    found = []
    for id_, task in file.filled.tasks.items():
        if task.node.kind == "step" and task.work is not None:
            for said in _contradictions(say, task, task.work, waits.get(id_, 0)):
                mend = "The timetable goes by the keys: change them, or the words."
                place = file.places.of((*task.node.loc, "step"))
                found.append(Snag("plan 19", Weight.MIND, f"{task.node.name}: {said}", mend, place))
    return found


def _contradictions(say: Figures, task: Task, work: Work, waits: int) -> Iterator[str]:
    said = folded(task.node.name)
    ways: list[Way] = [work, *work.or_]
    takes = [way.takes for way in ways if way.takes is not None]
    if takes:
        low, high = min(each.low for each in takes), max(each.high for each in takes)
        plain = task.node.name.casefold()  # not folded, which takes `1½` apart
        if (length := _another_length(plain, low, high, waits, ahead=work.day is not None)) is not None:
            yield f"its words say {length}, and `takes` {_span(low, high)}"
    if (heat := _another_heat(said, ways)) is not None:
        yield f"its words say {say.degrees(heat[0])}, and `where` {say.degrees(heat[1])}"
    if (place := _another_place(said, task)) is not None:
        yield f"its words say {_SAID[place]}, and it is planned {_SAID.get(task.ways[0].where.place, 'elsewhere')}"


# --- how long ---


def _span(low: int, high: int) -> str:
    return short(low) if low == high else f"{low if high < 60 else short(low)} to {short(high)}"


_NO_LENGTH_OF_IT = re.compile(
    r"\b(?:every|each|after|within|last|first|final|next|up to|most|than|max|maximum|until|till|before|by|under|"
    r"about to|further|more|another|extra|in|at)(?: the| another| a)?$"
)
_OF_SOMETHING = re.compile(
    r"^(?:per|an? |each|every|before|ahead|after|earlier|later|old|aged|in advance|beforehand|-|left|from|into|to go)"
)
_NIGHT = re.compile(
    r"(?<!the )(?<!an )\bovernight(?=$|[,;.)]| (?:in|at|on|until|and|then|under|with|covered|uncovered)\b)"
)
_ONLY_THAT = re.compile(r"^\w+(?: [\w'-]+){0,3}?(?: for)?$")


def _another_length(said: str, low: int, high: int, waits: int, *, ahead: bool) -> str | None:
    """The length that the words say, if it is another. `ahead`: on a day of its own, a night passes anyhow."""
    named = [each for each in lengths_in(said) if _is_of_the_step(each)]
    longest = max(named, key=lambda each: each.low, default=None)
    if _NIGHT.search(said) and not ahead and high + waits < NIGHT_MINUTES:
        return "overnight"
    if longest is None:
        return None
    if longest.low - high - waits > max(ROUNDED_MINUTES, longest.low * ROUNDED_SHARE):
        return short(longest.low)
    alone = len(named) == 1 and not longest.after and _ONLY_THAT.match(longest.before) is not None
    if alone and low >= longest.high * FAR_MORE and low - longest.high >= FAR_MORE_MINUTES:
        return short(longest.high)
    return None


def _is_of_the_step(length: LengthInText) -> bool:
    return not (_NO_LENGTH_OF_IT.search(length.before) or _OF_SOMETHING.match(length.after))


# --- how hot ---

_AT_HEAT = re.compile(r"\bat (\d{2,3}) ?(?:°|degrees?)? ?([cf])\b(?! (?:in the|inside|core))")


def _another_heat(said: str, ways: list[Way]) -> tuple[float, float] | None:
    """The heat that the words say and an oven's by the keys, in °C, if no oven's comes near any that is said."""
    named = [to_celsius(float(figure), unit) for figure, unit in _AT_HEAT.findall(said)]
    heats = [way.where.heat for way in ways if way.where is not None and way.where.place == "oven" and way.where.heat]
    near = any(
        heat.low - ROUNDED_CELSIUS <= celsius <= heat.high + ROUNDED_CELSIUS for heat in heats for celsius in named
    )
    return (named[0], heats[0].want) if named and heats and not near else None


# --- where ---

_SAID = {
    "oven": "in the oven", "stovetop": "on the stovetop", "fridge": "in the fridge", "freezer": "in the freezer",
    "worktop": "at the worktop",
}  # fmt: skip
_WHERE = {
    "oven": re.compile(r"\bin (?:the|a) (?:very )?(?:hot |low |cool |warm |big |small |little )?oven\b"),
    "stovetop": re.compile(r"\bon (?:the|a) (?:hob|stove|stovetop|cooker)\b"),
    "fridge": re.compile(r"\bin the (?:fridge|refrigerator)\b"),
    "freezer": re.compile(r"\bin the (?:deep )?freezer\b"),
}
_SEVERAL = re.compile(r"[,;:(]|\b(?:and|then|or|that|which|is|are|was|while|from|out of)\b")
_GOES_THERE = re.compile(r"(?:make|clear|check|look|tidy|wipe|clean|take|get|find|turn|baste|see|test|feel|fetch)\b")
_PUTS_THERE = re.compile(r"(?:put|place|slide|set|return|pop|transfer|move|lay|stand|store)\b")


def _another_place(said: str, task: Task) -> str | None:
    """The place that a plain name says, if no way of the step is there."""
    places = {way.where.place for way in task.ways}
    handy = _PUTS_THERE.match(said) and max(way.takes.likely for way in task.ways) <= HAND_MINUTES
    if _SEVERAL.search(said) or _GOES_THERE.match(said) or handy:
        return None
    return next((place for place, words in _WHERE.items() if words.search(said) and place not in places), None)
