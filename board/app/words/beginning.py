"""Starting a plan: questions, and errors in answers."""

from datetime import date

NEW_ASKS = {
    "event": "What is the evening called?",
    "date": "On which day?",
    "arrive": "When do the guests arrive?",
    "guests": "How many guests, without yourself?",
    "ovens": "How many ovens?",
    "rings": "How many rings on the stove?",
    "courses": "How many courses?",
    "zone": "In which time zone?",
}
NEW_OPTIONS = {
    "event": "what it is called (default: Supper)",
    "date": "the day: sat, '5 Dec', 2026-12-05 (default: the coming Saturday)",
    "arrive": "when the guests arrive (default: 18:30)",
    "guests": "how many, without the host (default: 6)",
    "ovens": "how many ovens (default: 1)",
    "rings": "how many rings on the stove (default: 4)",
    "courses": "how many courses, 1 to 7 (default: 3)",
    "zone": "the time zone, for example Europe/Dublin (default: the machine's)",
}

NEW_INTRO = "A plan to start from. Enter takes what stands in brackets;\nctrl-c leaves, and nothing is written."
NEW_ENDED = "the questions were not answered to the end; nothing was written"
NEW_ZONE_UNKNOWN = "the machine does not tell its time zone; name it, for example --zone Europe/Dublin"


def new_date(day: date) -> str:
    return f"That is {day:%A} {day.day} {day:%B %Y}."


def new_zone_of_no_place(zone: str) -> str:
    return f"This machine is set to {zone}, which is no place's time. Where is the meal? For example Europe/Dublin."


def new_question(asks: str, default: str) -> str:
    return f"{asks} [{default}] "


def new_wrong(why: str) -> str:
    return f"  {why}"


def new_wrong_option(option: str, why: str) -> str:
    return f"--{option}: {why}"


def new_written(shown: str, quoted: str) -> str:
    return (
        f"Written: {shown}\nThe dishes are placeholders that fit together: change them to yours, then see\n"
        f"  platecall check {quoted}\n  platecall sheet {quoted}"
    )


def recipe_several(path: str, count: int, name: str) -> str:
    return f"{path}: there are {count} recipes in this file; the first is taken: {name}"


def recipe_foreign(path: str, language: str) -> str:
    return f"{path}: its words are not English ({language}): nothing is guessed from them; go over every line"


def no_recipe(path: str, why: str) -> str:
    return f"{path}: {why}"


def dish_written(path: str) -> str:
    return f"Written: {path}\nPaste it under a course's `dishes:`; `platecall check` asks about each guess."
