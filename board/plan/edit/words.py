"""Why a plan file was left as it is."""

EDIT_OTHER_TEXT = "the plan is not the one that was read; read it again first"


def edit_unreadable(why: str) -> str:
    return f"the plan cannot be changed while it cannot be read: {why}"


def edit_would_spoil(why: str) -> str:
    return f"with this change the plan could not be read: {why}"


def edit_no_such_place(path: str) -> str:
    return f"the plan has no place for this change: {path}"


def edit_not_possible(path: str) -> str:
    return f"this part of the plan is written in a way that only its host can change: {path}"


def edit_nobody(name: str) -> str:
    return f"nobody among the hands is called {name}"


def edit_hands_there(name: str) -> str:
    return f"{name} is among the hands already"


def edit_hours_covered(name: str, day: str, span_words: str) -> str:
    return f"{name} has the hours {span_words} already ({day})"


def edit_no_stretch(name: str, day: str) -> str:
    return f"{name} has no such stretch of hours ({day})"


def edit_no_away(name: str, what: str) -> str:
    return f"{name} has no time away called {what}"


def edit_away_there(name: str, what: str, start: str) -> str:
    return f"{name} is away at {start} already ({what})"


def edit_does_it(name: str) -> str:
    return f"{name} does it already"


def edit_no_course(name: str) -> str:
    return f"no course is called {name}"


def edit_no_dish(dish: str, course: str) -> str:
    return f"no dish of {course} is called {dish}, or more than one is"


def edit_course_there(name: str, at: str) -> str:
    return f"{name} is wanted at {at} already"


def edit_no_gap(name: str) -> str:
    return f"{name} is wanted by the clock, not so long after something"


def edit_no_oven(name: str) -> str:
    return f"no oven is called {name}"


def edit_oven_there(name: str) -> str:
    return f"an oven is called {name} already"


def edit_no_oven_name(name: str) -> str:
    return f"an oven cannot be called {name!r}: a step that names it would be misread"


EDIT_NONE_MORE = "one more at least"
EDIT_NO_WAY = "another way must differ in something"
EDIT_NO_STEP = "there is no step or job at this place of the plan"
EDIT_NO_ITEM = "there is nothing to replace at this place, or nothing to put there"
EDIT_NOTHING_TYPED = "nothing is written; type the words, or take the line out with del"
EDIT_KEY_AND_VALUE = "write a word, a colon and its value, for example `takes: 25 min`"
EDIT_NOT_IN_A_LIST = "only what stands in a list can be moved: courses, dishes, steps, jobs, entries"
EDIT_NO_FURTHER = "it stands at the end of its list already"
EDIT_NO_DAY = "the step says nothing of its day or time"


def edit_key_there(word: str) -> str:
    return f"`{word}:` stands there already"


def edit_same_place(on: str) -> str:
    return f"the step says so already: {on}"


def edit_only_dish(dish: str, course: str) -> str:
    return f"{dish} is the only dish of {course}"


def edit_replaced(dish: str, instead: list[str]) -> str:
    return f"{dish} is what {', '.join(instead)} stands instead of"


def edit_named_elsewhere(dish: str, names: list[str]) -> str:
    return f"steps of {dish} are named in `after` or `before` of: {'; '.join(names)}"


def bought_step(dish: str) -> str:
    return f"plate the bought {dish}"
