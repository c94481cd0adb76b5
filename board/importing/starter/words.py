"""A new plan's comments, and errors in answers."""

NEW_EVENT = "Supper"


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
