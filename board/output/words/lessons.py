"""What evenings teach, and the cook's book."""

from collections.abc import Sequence

from board.base.words.looking_back import evenings
from board.base.words.times import span

BOOK_STEP, BOOK_LANE, BOOK_TAKES = "step", "lane", "takes"
BOOK_EVENINGS, BOOK_RANGE = "evenings", "four of five"
BOOK_KIND, BOOK_OVEN, BOOK_WAY = "kind of work", "oven", "how"
BOOK_EMPTY = "Nothing in it yet: `platecall lessons PLAN LOG --into-book` adds what an evening showed."

BOOK_USE = (
    "Write `takes: as in the book` at a step of a plan, or `heats: as in the book` at an oven; then "
    "`platecall lessons PLAN --from-book` writes the figures there."
)


def book_title(count: int) -> str:
    return f"The cook's book: {evenings(count)}"


def book_way(way: str, start: float, end: float) -> str:
    return f"{way}, {start:g} to {end:g} °C"


LESSON_NUMBER, LESSON_WHAT, LESSON_BEFORE, LESSON_AFTER = "", "what", "the plan says", "learned"
LESSON_TOOK, LESSON_RANGE = "took, min", "four of five take"
TOOK_SHOWN = 4
LESSONS_NOTES, LESSON_NOTED, THE_EVENING = "What you noted, to be told at its time next time", "noted", "the evening"
NO_LESSONS = "Nothing to change: the plan's figures hold, as far as these evenings tell."
NO_STEPS = "None of these evenings has a step of this plan, by dish and words: they teach nothing of it."
ONLY_SAID_STEPS = "What was done on these evenings was only said afterwards, not seen: it teaches no lengths."
NO_EVENINGS = "No evening to learn from: rehearsals, and evenings learned from before, are left out."
LESSONS_EFFECT = "How often each course is out within 5 min of its time"
EFFECT_COURSE, EFFECT_PLAN, EFFECT_TAUGHT, EFFECT_ANEW = "course", "by the plan", "as learned", "worked out anew"
EFFECT_READ = (
    "on time then: on these evenings themselves, whatever made it late. by the plan: the timetable and the lengths as "
    "the plan has them now. as learned: that timetable, with the lengths these evenings showed. worked out anew: the "
    "timetable of the plan with the lessons in it."
)
EFFECT_GIVES_UP = "The new timetable gives up, and the present one does not:"
EFFECT_NO_LONGER = "The new timetable need not give up, as the present one does:"
EFFECT_STOPPED = "With all of these in it the plan has no timetable; mend what stands in the way, or take some of them:"
EFFECT_STOPS = "With all of these in the plan, this must be mended before anybody eats, and need not now:"
EFFECT_UNPROVED = "The new timetable is the best that was found in the time given; another may give up less."

EFFECT_CAME = "on time then"
EFFECT_THEN = "and then"
LESSONS_ALONE = "Each lesson by itself, the worst first"
ALONE_NOT_FOUND = (
    "– : not worked out (--each does it for all), or no good timetable found within 10 s; together they are, above."
)
LESSONS_CAUTION = (
    "A length learned says nothing of safety: a thermometer decides whether food is cooked, the label and your local "
    "food-safety code how long it keeps."
)
ASIDES = {
    "forgotten": "over three times its high, its call at the end unanswered: left open by mistake",
    "unheard": "the bell at its end went by unheard; if it is not ready, say so at the bell",
    "interrupted": "the board was shut or asleep meanwhile",
    "cold-oven": "the oven had lost its heat",
    "untimed": "begun and ended at once",
}
LESSONS_ASIDE = "Set aside"


def lessons_title(plan: str, fresh: int, known: int, rehearsals: int) -> str:
    said = f"{plan}: lessons from {evenings(fresh)}"
    if known:
        said += f"; {evenings(known)} learned from before"
    if rehearsals:
        said += f"; {rehearsals} rehearsal{'s' if rehearsals != 1 else ''} left out"
    return said


def lesson_before(text: str, *, said: bool) -> str:
    return text if said else f"{text} (assumed)"


def seen_once(told: str) -> str:
    return f"{told}, once"


def came_late(minutes: Sequence[float]) -> str:
    """`5 to 12 late, 6 of 6`; of a moment that is sooner, `6 to 10 early, 5 of 6`."""
    early = sum(minutes) < 0
    those = [abs(each) for each in minutes if (each < 0) == early and each]
    least, most = round(min(those)), round(max(those))
    few = str(least) if least == most else f"{least} to {most}"
    return f"{few} {'early' if early else 'late'}, {len(those)} of {len(minutes)}"


def late_between(low: int, high: int) -> str:
    """`3 early to 14 late`."""
    if (low < 0) == (high < 0):
        low, high, word = (-high, -low, "early") if low < 0 else (low, high, "late")
        return f"{low} to {high} {word}"
    return f"{-low} early to {high} late"


def took(minutes: Sequence[float]) -> str:
    """`18, 20, 22`, the least first; of many, `18 to 31 (7 times)`."""
    if len(minutes) > TOOK_SHOWN:
        least, most = round(minutes[0]), round(minutes[-1])
        return f"{least} ({len(minutes)} times)" if least == most else f"{least} to {most} ({len(minutes)} times)"
    return ", ".join(str(round(each)) for each in minutes)


def strange_steps(count: int) -> str:
    return f"{count} step{'s' if count != 1 else ''} of these evenings the plan does not have, by dish and words."


def lesson_aside(date: str, name: str, minutes: int, why: str) -> str:
    return f"{date} {name}, {minutes} min: {why}"


def oven_turn(oven: str, before: int, after: int) -> str:
    return f"{oven} from {before} to {after} °C"


def alone_gives_up(what: str) -> str:
    return f"but {what}"


def others_alone(*, some: bool) -> str:
    said = "changes no course's odds by as much as one evening in a hundred."
    return f"{'Each other lesson' if some else 'Each lesson'} by itself {said}"


def unweighed(numbers: Sequence[int]) -> str:
    return f"Stopped before these were worked out by themselves: {', '.join(map(str, numbers))}."


def how_to_take_lessons(plan: str) -> str:
    return f"take them: platecall lessons {plan} --take all (not what was seen once), or --take 1,2"


def decided_so(question: str, yes: int, answers: int) -> str:
    return f"{question} Yes on {yes} of {answers}"


def came_on_time(count: int, evenings: int) -> str:
    return f"{count} of {evenings}"


def moved(name: str, minutes: int) -> str:
    return f"{name} {span(abs(minutes))} {'later' if minutes > 0 else 'sooner'}".lstrip()


def effect_moved(pieces: list[str]) -> str:
    return f"Worked out anew, these begin at another time on the day: {', '.join(pieces)}."
