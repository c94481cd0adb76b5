"""A new plan's comments, and errors in answers."""

from collections.abc import Sequence
from datetime import date

from board.base.words.house import ASSUMED as ASSUMED

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

NEW_MENU_HEAD = """\
# A plan from a menu: every line can be changed. What nobody said is marked `assumed`; the host's hours, the jobs and
# how long each course is eaten are assumed, too.
# Planning help only: the label on the food, your local food-safety code and a thermometer decide."""
ASSUMED_GLASS = f"{ASSUMED}: a glass each"
MENU_EMPTY = "the menu is empty; write a line a course, for example Main: braised duck legs; green beans"
MENU_NO_DISHES = "the menu names no dish; write a line a course, for example Main: braised duck legs; green beans"
MENU_BY_GAPS = "no course is named; what stands between empty lines is taken for a course"
MENU_BY_BOUNDS = "an hour or a number without a name is taken for the beginning of a course"
MENU_BY_DISH = "some dishes stand in no course; they are put where such dishes usually are, else into the main"


def assumed_hours(start: str | None, end: str | None) -> str:
    return f"{ASSUMED}: {'when it ends' if start else 'when it begins' if end else 'both hours'}"


def at_line(line: int, text: str) -> str:
    return f"line {line}: {text}"


def menu_too_long(lines: int, dishes: int) -> str:
    return f"a menu has at most {lines} lines and {dishes} dishes"


def menu_line_too_long(most: int) -> str:
    return f"a line has at most {most} characters; put dishes on lines of their own"


def menu_dish_too_long(most: int) -> str:
    return f"a dish's name has at most {most} characters; put a semicolon between dishes"


def menu_too_many_dishes(count: int, most: int) -> str:
    return f"there are {count} dishes; a plan from a menu takes up to {most}"


def menu_too_many_courses(count: int, most: int) -> str:
    return f"there are {count} courses; a plan from a menu takes up to {most}"


def menu_course_number(n: int) -> str:
    return f"Course {n}"


def menu_course_twice(name: str, line: int) -> str:
    return f"{name} is named on line {line} too; give one of them another name"


def menu_dish_twice(dish: str) -> str:
    return f"{dish!r} is named twice; say how they differ, for example {dish} for the children"


def menu_no_dish(line: int, name: str) -> str:
    return at_line(line, f"{name} has no dish and is left out")


def menu_not_understood(line: int, said: str) -> str:
    return at_line(line, f"{said!r} is not understood and is left out")


def menu_not_used(line: int, said: str) -> str:
    return at_line(line, f"{said!r} has no place in a plan and is left out")


def menu_taken_for_event(line: int, said: str) -> str:
    return at_line(line, f"{said!r} is taken for the evening's name")


def menu_apart(said: str, dishes: Sequence[str]) -> str:
    return f"{said!r} is taken for {len(dishes)} dishes: {'; '.join(dishes)}"


def menu_for_some(said: str, dish: str, names: Sequence[str], instead_of: str) -> str:
    of = f", in place of {instead_of!r}" if instead_of else ""
    return f"{said!r}: {dish!r} is a dish only for {', '.join(names)}{of}"


def menu_bought_beside(foods: Sequence[str]) -> str:
    return f"bought and served with a dish: {'; '.join(foods)}; what you make is a dish of its own, after a semicolon"


def menu_taken_for(dish: str, way: str) -> str:
    return f"{dish!r} is taken for {way}: look at it"


def menu_not_in_it(piece: str, dish: str) -> str:
    return f"{piece!r} is not known, so it is in no ingredient and no step of {dish!r}"


def menu_joined(line: int, said: str, course: str) -> str:
    return at_line(line, f"{said!r} is taken into {course}, the course above")


def menu_host_counted(line: int, said: str, guests: str) -> str:
    return at_line(line, f"{said!r}: you are taken to be among them, so {guests} guest{'s' if guests != '1' else ''}")


def menu_without_you(line: int, said: str) -> str:
    return at_line(line, f"{said!r}: you are taken not to be among them")


def menu_second_hour(line: int, clock: str) -> str:
    return at_line(line, f"a second hour, {clock}, is left out; a course takes one, for example Main 20:30: …")


def menu_far_day(line: int, said: str, day: date) -> str:
    return at_line(line, f"{said!r} is taken as {day.day} {day:%B %Y}")


def menu_two_days(said: str) -> str:
    return f"{said!r} may be two days; write for example 5 Dec or 2026-12-05"


def menu_next_weekday(said: str) -> str:
    return f"{said!r} may be two days; write for example 5 Dec or 2026-12-05"


def menu_other_weekday(said: str, day: date) -> str:
    return f"{said!r}: {day.day} {day:%B %Y} is a {day:%A}; correct one of the two"


def menu_bare_hour(line: int, said: str, clock: str) -> str:
    return at_line(line, f"{said!r} is taken as {clock}")


def menu_no_such_weekday(said: str) -> str:
    return f"{said!r}: there is no such day in the next two months; write for example 5 Dec or 2026-12-05"


def menu_said_twice(name: str, first: str, second: str) -> str:
    what = {"date": "the day", "arrive": "the arrival", "zone": "the time zone", "event": "the name"}.get(name, name)
    return f"{what} is said twice, {first} and {second}; leave one"


def menu_guests_differ(said: int, listed: int) -> str:
    return f"{said} guests are said and {listed} are listed (you not among them); correct one of the two"


def menu_whose(need: str) -> str:
    return f"{need!r} stands where a name is looked for; say whose it is: Ines, {need}"


def menu_need(said: str) -> str:
    return (
        f"{said!r} reads like what a guest must not eat; write it beside the name, for example "
        "Guests: Ines, no tree nuts; or name the dish without it"
    )


def menu_all_of_how_many(need: str) -> str:
    return f"all {need}: say how many guests there are, for example 8 guests, all {need}"


def menu_guest_too_long(most: int) -> str:
    return f"a guest has at most {most} characters; put a semicolon between guests"


def menu_shared(need: str, names: Sequence[str]) -> str:
    told = "both" if len(names) == 2 else "each"
    return f"{need!r} is taken for {told} of {', '.join(names[:-1])} and {names[-1]}; mend it where it is not so"


def menu_unread(name: str, need: str) -> str:
    return f"{need!r} of {name} is not understood; it is kept, and check asks what must be left out"


def menu_guest_twice(name: str) -> str:
    return f"{name!r} is listed twice; give one of them another name"


def menu_helper(said: str) -> str:
    return f"{said!r} does not say who helps when; write for example Dan helps from 18:00 to 22:00"


def menu_helper_eats(name: str, *, among_others: bool) -> str:
    if among_others:
        return f"{name} helps, and is taken to be one of the guests who are not named"
    return f"{name} helps and is not among the guests; write {name} there, or `hired: yes` if they do not eat"


def menu_helper_twice(name: str) -> str:
    return f"{name} helps twice; write both hours into the plan"


def menu_room(said: str, most: float) -> str:
    return f"{said!r} is no room for food; write litres up to {most:g}, for example fridge 60 l"


def menu_too_soon(course: str, at: str, above: str | None, least: str) -> str:
    after = f"{above} needs until {least}" if above else f"the guests come at {least}"
    return f"{course} at {at} is too soon: {after}"
