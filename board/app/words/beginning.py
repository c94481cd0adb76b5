"""Starting a plan: questions, and errors in answers."""

from datetime import date
from textwrap import fill

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
NEW_MENU = "a menu, a line a course, with day, guests and kitchen if they are known; - for standard input"
NEW_BESIDE = "work out this menu's evening beside the other's, and write nothing; each may be a plan as well"
NEW_LIMIT = "with --beside: search at most so long for each timetable"

NEW_INTRO = "A plan to start from. Enter takes what stands in brackets;\nctrl-c leaves, and nothing is written."
NEW_INTRO_MENU = "Enter takes what stands in brackets; ctrl-c leaves, and nothing is written."
NEW_ENDED = "the questions were not answered to the end; nothing was written"
NEW_ZONE_UNKNOWN = "the machine does not tell its time zone; name it, for example --zone Europe/Dublin"


NEW_MENU_INTRO = (
    "Type the menu, a line a course: Main: braised duck legs; green beans\n"
    "Day, guests, kitchen and help may stand in lines of their own.\n"
    "Two empty lines end it; an empty first line takes dishes to replace by yours."
)
NEW_STDIN = "the menu"
NEW_COURSES_AND_MENU = "--courses is for a plan without a menu; the menu has its own"
NEW_GUESTS_AND_MENU = "--guests: the menu lists the guests already; leave one of the two"
BESIDE_ALONE = "--beside needs --menu: two menus are set beside each other"
BESIDE_WRITES_NOTHING = "--beside writes nothing; leave the name of the plan away"
LIMIT_ALONE = "--limit is for --beside"


def new_menu_line(number: int) -> str:
    return f"{number:>3} "


def menu_wrong(name: str, line: int, why: str) -> str:
    return f"{name}:{line}: {why}" if line else f"{name}: {why}"


def menu_wrong_typed(line: int, why: str) -> str:
    return f"  {f'line {line}: ' if line else ''}{why}"


def menu_no_plan(name: str, snags: list[str]) -> str:
    return "\n".join([f"{name}: no plan can be made of this menu; nothing was written", *snags])


def ways_ask(ways: list[str]) -> str:
    numbered = "  ".join(f"{n}{chr(160)}{way.replace(' ', chr(160))}" for n, way in enumerate(ways, start=1))
    return "What is done to it?\n" + fill(numbered, 78, break_long_words=False).replace(chr(160), " ")


def ways_after(others: str) -> str:
    more = f"; + shows the next course's ({others})" if others else ""
    return f"A number or a word{more}; enter leaves it bare."


def way_of(dish: str) -> str:
    return f"{dish}? "


def way_unknown(given: str, most: int) -> str:
    return f"  {given!r} is no way of cooking known here; write a number from 1 to {most}, or press enter"


NEW_SAID = {"event": "the name", "date": "the day", "arrive": "the hour of arrival", "guests": "the number of guests",
            "ovens": "ovens", "rings": "rings", "zone": "the time zone"}  # fmt: skip


def menu_written(
    shown: str,
    quoted: str,
    when: str,
    courses: list[str],
    assumed: list[str],
    kept: list[str],
    bare: list[str],
    notes: list[str],
    unfit: list[str],
    mends: list[str],
    hungry: dict[str, list[str]],
) -> str:
    """`unfit`: what could hurt a guest as it is, with `mends`; `hungry`: the courses with nothing for a guest."""
    lines = [f"Written: {shown}", when, *(f"  {course}" for course in courses)]
    lines += assumed
    if kept:
        lines.append(f"From your shelf: {'; '.join(kept)}")
    if bare:
        lines.append(f"Nothing is known of how to make: {'; '.join(bare)}. Write their steps.")
    lines += notes
    if unfit:
        lines += ["Not fit to serve yet:", *(f"  {each}" for each in unfit), *mends]
    lines += [
        f"Nothing for {guest} in {', '.join(without)}: add a dish there, `only for: {guest}`."
        for guest, without in hungry.items()
    ]
    return "\n".join([*lines, f"Then see\n  platecall check {quoted}\n  platecall sheet {quoted}"])


def menu_when(day: date, arrive: str, guests: int, ovens: int, rings: int) -> str:
    table = f"{guests} guest{'s' if guests != 1 else ''} and you"
    kitchen = f"{ovens or 'no'} oven{'s' if ovens != 1 else ''}, {rings or 'no'} ring{'s' if rings != 1 else ''}"
    return f"{day:%A} {day.day} {day:%B %Y}, {arrive}, {table}, {kitchen}"


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


def new_assumed(assumed: list[tuple[str, str]]) -> list[str]:
    """A line, if anything is assumed."""
    return [f"Assumed: {', '.join(f'{NEW_SAID[name]} {value}' for name, value in assumed)}"] if assumed else []


def new_written(shown: str, quoted: str, assumed: list[str]) -> str:
    told = "".join(f"{line}\n" for line in assumed)
    return (
        f"Written: {shown}\n{told}The dishes are placeholders that fit together: change them to yours, then see\n"
        f"  platecall check {quoted}\n  platecall sheet {quoted}"
    )


def recipe_several(path: str, count: int, name: str) -> str:
    return f"{path}: there are {count} recipes in this file; the first is taken: {name}"


def recipe_foreign(path: str, language: str) -> str:
    return f"{path}: its words are not English ({language}): nothing is guessed from them; go over every line"


def no_recipe(path: str, why: str) -> str:
    return f"{path}: {why}"


def dish_written(path: str) -> str:
    return f"Written: {path}\nPaste it under a course's `dishes:`; `platecall settle PLAN` goes through its guesses."
