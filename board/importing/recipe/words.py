"""A recipe drafted as a dish: its remarks, and why a file is no recipe."""

from collections.abc import Sequence

RECIPE_HEAD = (
    "Drafted from a recipe file. What is listed under `guessed` is a guess from its words: mend it, then take it out.",
    "No guess is made when food is cooked through: a thermometer, the label and your local food-safety code say so.",
)
RECIPE_UNTIL = "until: ? check with a thermometer"
RECIPE_PREHEATS = "the timetable heats the oven itself"
RECIPE_NAMELESS = "Dish from a recipe"
RECIPE_STEPLESS = "prepare the dish"
RECIPE_NO_STEPS = "the recipe has no steps; write them here"
RECIPE_GO_ON = "go on with the dish"
RECIPE_NO_TIME = "no time is given"
RECIPE_NO_SETTING = "no setting is given"
RECIPE_NO_AMOUNT = "no amount is given"
RECIPE_AMOUNT_UNREAD = "the amount could not be read; write it"
RECIPE_READ_LABEL = "read the label"


def recipe_amount_beside(text: str) -> str:
    return f"the recipe says: {text}"


def recipe_guessed(why: str) -> str:
    return f"guessed: {why}"


def recipe_from(*pieces: str) -> str:
    """Which words of the recipe a guess comes from."""
    return "from " + ", ".join(f"“{piece}”" for piece in pieces)


RECIPE_EMPTY = "the recipe in this file has neither ingredients nor steps"
RECIPE_FOREIGN_AMOUNT = "not English: read the amount again"


def recipe_foreign(language: str) -> str:
    return (
        f"The recipe's words are not English ({language}): no place or time is guessed, and only metric amounts are "
        "read. Go over every line; foods are checked against guests by their English names."
    )


def recipe_tools(tools: Sequence[str]) -> str:
    return f"Needs under `kitchen:`: tools: {{{', '.join(f'{tool}: 1' for tool in tools)}}}"


def recipe_by_weight(said: str) -> str:
    return f"the recipe says “{said}”, and no weight is given: write the minutes"


def recipe_for_weight(said: str, grams: float) -> str:
    return f"“{said}”, for {grams / 1000:.3g} kg: weigh it, and reckon again"


RECIPE_BEFORE = "the sentence before"
RECIPE_USES = "by the recipe’s words"
RECIPE_PREPARATION, RECIPE_COOKING, RECIPE_ALL = "of preparation", "of cooking", "the recipe takes in all"
RECIPE_HANDS = "it runs by itself in between"


def recipe_share(total: str, what: str) -> str:
    return f"a share of the {total} {what}"


def recipe_whole(text: str) -> str:
    return f"The recipe: {text}"


def recipe_yield(text: str) -> str:
    return f"the recipe says: {text}"


def recipe_for_unknown(text: str) -> str:
    return f"for: ?  the recipe says: {text}" if text else "for: ?  the recipe does not say"


def recipe_steps_left_out(count: int) -> str:
    return f"The recipe goes on: {count} more steps were left out."


def recipe_foods_left_out(count: int) -> str:
    more = "1 more ingredient was" if count == 1 else f"{count} more ingredients were"
    return f"The recipe goes on: {more} left out. Read them there, for allergies too."


def recipe_foods_unread(count: int) -> str:
    entry = "An entry" if count == 1 else f"{count} entries"
    return f"{entry} among the recipe's ingredients could not be read. Look at the recipe, for allergies too."


def recipe_no_unit(figure: str, unit: str) -> str:
    return f"{figure} has no unit: taken as °{unit}"


NO_RECIPE = "there is no recipe in this file that is marked up as a schema.org Recipe (JSON-LD, microdata or RDFa)"
RECIPE_TOO_LARGE = "this file is too large to be a recipe"
RECIPE_TOO_DEEP = "this file is nested too deeply to be a recipe"
RECIPE_NOT_JSON = "this is not JSON that can be read"
RECIPE_MARKUP_NOT_JSON = "the recipe's markup in this page is not JSON that can be read"
