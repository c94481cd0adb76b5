"""Settling guesses, and dishes of one's own."""


def settle_title(event: str) -> str:
    return f"{event}: what was guessed"


def nothing_guessed(path: str) -> str:
    return f"{path}: nothing in it is called a guess"


def guesses_listed(count: int, path: str) -> str:
    return (
        f"{count} guess{'es are' if count != 1 else ' is'} not confirmed in {path}, what decides most first. "
        "At a terminal this command goes through them."
    )


def guess_line(dish: str, step: str, key: str, text: str | None, why: str) -> str:
    told = f"{dish}: {step}: {key}: {text if text is not None else '(no such line)'}"
    return f"{told}  ({why})" if why else told


def settled(count: int, left: int, lost: int, path: str, copy: str) -> str:
    """`lost`: answers to what is no longer in the plan, which was changed meanwhile."""
    more = f"; {left} left" if left else ""
    gone = f"; {lost} to what is no longer in it" if lost else ""
    return f"{count} settled{more}{gone}. Written: {path}; as it was: {copy}"


def settled_aside(path: str) -> str:
    return f"the plan as it was, with your answers: {path}"


SETTLED_LOST = "no folder would take your answers; they are lost"


NOTHING_SETTLED = "nothing was settled; the plan is as it was"
SETTLE_FAILED = "the screen ended by a fault; the plan is as it was"


DISHES_ACTIONS = {
    "keep": ("put a dish of a plan on the shelf", 'platecall dishes keep PLAN "Onion and thyme tartlets"'),
    "show": ("one dish as it is kept", 'platecall dishes show "Onion and thyme tartlets"'),
    "drop": ("take a dish off the shelf; a copy is kept aside", 'platecall dishes drop "Onion and thyme tartlets"'),
    "fill": (
        "write out what a plan wants `from shelf:`, with a copy beside",
        "platecall dishes fill PLAN",
    ),
}
DISH_NAME = "the dish's name"
DISH_COURSE = "of this course, where two dishes have one name"


def dish_kept(name: str, path: str, left_out: tuple[str, ...], copy: str) -> str:
    lines = [f"Kept: {name} ({path})"]
    if left_out:
        lines.append(f"Left out, as it belongs to that evening: {', '.join(left_out)}")
    if copy:
        lines.append(f"The one before lies at {copy}")
    return "\n".join(lines)


def dish_dropped(name: str, copy: str) -> str:
    return f"Dropped: {name}. A copy lies at {copy}"


def dish_in_courses(name: str, courses: list[str]) -> str:
    return f"{len(courses)} dishes are called {name}: say --course with one of {', '.join(courses)}"


def no_such_dish(name: str, path: str, near: list[str]) -> str:
    return f"{path}: no dish is called {name!r}{_did_you_mean(near)}"


def not_on_shelf(name: str, near: list[str], count: int) -> str:
    if not count:
        return f"no dish of yours is called {name!r}; none is kept yet (`platecall dishes keep PLAN DISH`)"
    return f"no dish of yours is called {name!r}{_did_you_mean(near) or '; `platecall dishes` lists them'}"


def _did_you_mean(near: list[str]) -> str:
    return f". Did you mean {' or '.join(near)}?" if near else ""


def shelf_filled(names: list[str], path: str, copy: str) -> str:
    return f"Written out: {', '.join(names)}. {path} was changed; as it was: {copy}"


def nothing_to_fill(path: str) -> str:
    return f"{path}: no dish in it says `from shelf:`"
