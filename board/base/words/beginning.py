"""Words for starting a plan: questions, errors in answers, and the new plan's comments."""

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
NEW_EVENT = "Supper"
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


def new_no_name(longest: int) -> str:
    return f"write a name of up to {longest} characters"


def new_not_a_number(given: str, low: int, high: int) -> str:
    return f"{given!r} is not a number from {low} to {high}"


def new_arrive_outside(given: str, first: str, last: str) -> str:
    return f"{given} lies outside {first} to {last}; write the plan by hand for another hour"


def new_not_a_date(given: str) -> str:
    return f"{given!r} is not a day; write for example sat, 5 Dec or 2026-12-05"


def new_no_such_day(given: str) -> str:
    return f"{given!r} is not a day of the calendar"


def new_day_past(given: str, day: str) -> str:
    return f"{given!r} is {day}, which is over"


def new_day_far(given: str) -> str:
    return f"{given!r} lies too far off; write a day within the next ten years"


def new_written(shown: str, quoted: str) -> str:
    return (
        f"Written: {shown}\nThe dishes are placeholders that fit together: change them to yours, then see\n"
        f"  platecall check {quoted}\n  platecall sheet {quoted}"
    )


NEW_HEAD = """\
# A plan to start from: every line can be changed. The dishes are placeholders; put your own in their place.
# Planning help only: the label on the food, your local food-safety code and a thermometer decide."""
NEW_GUESTS = """\
# By number, or each by name with what they must not or do not eat: `Ines, no tree nuts`, `Tomas, vegetarian`.
# Read every label yourself."""
NEW_KITCHEN = """\
# What there is to cook with. An oven can say more: `ovens: {oven: {shelves: 2, heats: 14 min to 180 C}}`;
# and things that are few can be counted: `fridge: 45 litres`, `tools: {big pot: 1, baking sheet: 2}`."""
NEW_HANDS = """\
# Who works, and when. A helper is another name, with hours of their own."""
NEW_COURSES = """\
# Steps follow one another as written; `takes` may be low, likely and high. `keeps` is how long a result stays good."""
NEW_JOBS = """\
# Work that belongs to no dish; it is done before the guests arrive unless a line says otherwise."""
