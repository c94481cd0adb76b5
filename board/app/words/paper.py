"""What is written to files, and ways out of a clash."""

from collections.abc import Sequence


def not_a_calendar(path: str) -> str:
    return f"{path}: there is another kind of file here already; it was left as it is. Name another file"


def written_to(path: str) -> str:
    return f"Written: {path}"


def no_such_person(name: str, known: tuple[str, ...]) -> str:
    return (
        f"nobody called {name!r} works in this plan; there are: {', '.join(known)}, and the leaves wall and everybody"
    )


def page_written(path: str) -> str:
    return f"written to {path}; print it from a browser"


def not_overwritten(path: str) -> str:
    return f"{path}: there is such a file, and it is no page made here; nothing was written. Give another name."


def card_to_ask(asked: Sequence[tuple[str, str]]) -> str:
    """Guests with the dishes that are not settled for them."""
    return f"Not settled yet: {'; '.join(f'{guest}, {dish}' for guest, dish in asked)}. See platecall guests."


def ticks_broken(name: str) -> str:
    return f"Ticks are not kept: {name} cannot be read, and is left as it is"


def ticks_not_kept(name: str, why: str) -> str:
    return f"Ticks are not kept ({why}): {name}"


NO_TERMINAL_TICK = "ticking needs a terminal to draw on; leave out --tick to print the list"
TICKS_FAILED = "the list fell again and again; the ticks made before it are kept"


def table_no_course(name: str, known: tuple[str, ...], meant: str) -> str:
    there = ", ".join(known)
    return f"no course is called {name!r}.{meant or f' There are: {there}.'}"


def ask_for_ways(plan: object) -> str:
    return f"\nways out of this: platecall sheet {plan} --ways-out 3"


def no_such_way(number: int, count: int) -> str:
    if not count:
        return "there is nothing to take: no way out was needed, or none was found; the plan is as it was"
    return f"there is no way out number {number}, only 1 to {count}; the plan is as it was"


def trying(what: str) -> str:
    return f"trying: {what}"


def bad_count(text: str) -> str:
    return f"{text!r} is not a number from 1 to 50"
