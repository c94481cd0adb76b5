"""What a program guessed and nobody has confirmed yet, the guesses that decide most first. Pure; minutes."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from board.base.words.times import short
from board.plan.load import PlanFile
from board.plan.model.work import Step
from board.plan.places import Loc
from board.plan.resolve.assume import Task
from board.plan.snag import Fix, Snag, Weight
from board.sheet.guesses import half_is_used
from board.sheet.run_sheet import RunSheet, Slot

UNCONFIRMED = "unsure 1"
HOT = ("cooks", "reheats")  # how hot the food must get hangs on them
LENGTHS = ("takes", "where", "attended")  # when the step is over hangs on them
STANDS = ("keeps", "best within")
MOST_DISHES = 6  # named in the line about all of them


@dataclass(frozen=True, slots=True)
class Guess:
    """A key of a step that was filled in by a program. `loc`: of the step; `text`: as it is written, None where the
    step has no such line. `why`: what hangs on it, in words; empty where nothing is known to."""

    loc: Loc
    key: str
    step: str
    dish: str
    course: str
    text: str | None
    why: str = ""


def guesses(file: PlanFile, snags: Iterable[Snag] = (), sheet: RunSheet | None = None) -> list[Guess]:
    """Every guess: first those behind a stop among `snags`, then what food safety hangs on, then what a course's time
    hangs on, the least give first, then what stands long; the rest in the order of the plan."""
    behind = {id_: snag.code for snag in snags if snag.weight is Weight.STOP for id_ in snag.about.tasks}
    slots = {} if sheet is None else sheet.by_id()
    found: list[tuple[tuple[int, int], Guess]] = []
    for id_, task in file.filled.tasks.items():
        work, node = task.work, task.node
        for key in dict.fromkeys(work.guessed) if isinstance(work, Step) else ():
            text = file.places.words((*node.loc, key))
            guess = Guess(node.loc, key, node.name, node.dish or "", node.course or "", text)
            rank, why = _decides(guess, task, behind.get(id_, ""), slots.get(id_), slots)
            found.append((rank, replace(guess, why=why)))
    return [guess for _, guess in sorted(found, key=lambda each: each[0])]


_NOTHING = (9, 0), ""


def _decides(
    guess: Guess, task: Task, stop: str, slot: Slot | None, slots: dict[str, Slot]
) -> tuple[tuple[int, int], str]:
    """Where it stands in the order, and what hangs on it.

    A length decides when a course is ready if half as much again would use up the step's give; how long a result
    stands, if more than half of that passes. Ours, as for what is assumed.
    """
    if guess.text is None:
        return _NOTHING
    if stop:
        return (0, 0), f"stands behind a stop ({stop})"
    if guess.key in HOT:
        return (1, 0), "decides how hot the food must get"
    if slot is None:
        return _NOTHING
    give, way = slot.give_minutes, task.ways[0]
    if guess.key in LENGTHS and give is not None and give * 2 < way.takes.likely:
        return (2, give), f"decides when {guess.course} is ready: give {short(give)}"
    minutes = task.best_within if guess.key == "best within" else way.keeps.minutes if way.keeps else None
    if guess.key in STANDS and minutes is not None and half_is_used(slot, minutes, slots):
        safe = task.care.spoils and guess.key == "keeps"
        return (1 if safe else 3, 0), f"decides how long {'food that spoils' if safe else 'it'} may stand"
    return _NOTHING


def guesses_are_confirmed(file: PlanFile, snags: Iterable[Snag], sheet: RunSheet | None = None) -> list[Snag]:
    """unsure 1: keys that a program guessed, and nobody has confirmed. One line about all of them; then of each dish
    the guess that decides most, if any decides something; and each that the step has no line for."""
    found = guesses(file, snags, sheet)
    if not found:
        return []
    mend = "`platecall settle PLAN` goes through them, what decides most first; until then they are guesses."
    asked = [Snag(UNCONFIRMED, Weight.ASK, _all_of(found), mend, fix=Fix("ask", (), ""))]
    dishes = set()
    for guess in found:
        dish = guess.loc[:4]
        if guess.text is None:
            message = f"{guess.step}: `{guess.key}` is told to be guessed, and the step has no such line"
            no_line = f"Take `{guess.key}` out of `guessed`, or write the line."
            place = file.places.of((*guess.loc, "guessed"), key=True)
            asked.append(Snag(UNCONFIRMED, Weight.ASK, message, no_line, place))
        elif guess.why and dish not in dishes:
            dishes.add(dish)
            message = f"{guess.step}: `{guess.key}: {guess.text}` is a guess, and {guess.why}"
            place = file.places.of((*guess.loc, guess.key), key=True)
            fix = Fix("settle", guess.loc, guess.key)
            asked.append(Snag(UNCONFIRMED, Weight.ASK, message, mend, place, fix=fix))
    return asked


def _all_of(found: list[Guess]) -> str:
    """`12 guesses are not confirmed: Duck legs 7, Gratin 5`."""
    counts: dict[Loc, int] = {}
    for guess in sorted(found, key=lambda each: [int(piece) for piece in each.loc[1:4:2]]):
        counts[guess.loc[:4]] = counts.get(guess.loc[:4], 0) + 1
    names = {guess.loc[:4]: guess.dish for guess in found}
    told = [f"{names[dish]} {count}" for dish, count in counts.items()]
    more = [f"{len(told) - MOST_DISHES} more dishes"] if len(told) > MOST_DISHES else []
    are = "guess is" if len(found) == 1 else "guesses are"
    return f"{len(found)} {are} not confirmed: {', '.join([*told[:MOST_DISHES], *more])}"
