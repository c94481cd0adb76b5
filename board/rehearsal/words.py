"""A rehearsal, and its mishaps."""

from board.base.words.looking_back import evenings
from board.base.words.signs import SIGN


def played(at: str, sign: str, text: str) -> str:
    return f"{at}  {sign} {text}"


def played_course(at: str, name: str, late: int) -> str:
    return f"{at}  {SIGN['served']} {name} is out" + (f", {late} min late" if late else ", on time")


def played_summary(answered: int, courses: int, on_time: int, left_out: int) -> str:
    return f"{answered} calls answered; {on_time} of {courses} courses on time; {left_out} steps left out."


def ready_early(name: str) -> str:
    return f"{name} is ready before its time"


def not_ready(name: str, minutes: int) -> str:
    return f"{name} is not ready yet: {minutes} min more, by the look of it"


def guests_are_late(minutes: int) -> str:
    return f"the guests are {minutes} min late"


def guests_sit(course: str, minutes: int) -> str:
    return f"the guests sit {minutes} min longer over {course}"


def night_title() -> str:
    return "How the night went"


def night_learned(count: int) -> str:
    return f"Lengths were drawn from what {evenings(count)} showed, where the plan does not say so yet."


def night_guests(minutes: int) -> str:
    return f"The guests came {minutes} min late."


def night_oven(oven: str) -> str:
    return f"The {oven} was slow all night."


def night_forgotten(name: str, minutes: int) -> str:
    return f"The end of '{name}' went unheard for {minutes} min."


def night_course(course: str, late: int, may_slip: int) -> str:
    if late <= 0:
        return f"{course} was on time."
    return f"{course} was {late} min late, " + ("which it may be." if late <= may_slip else "more than it may be.")


def night_not_served(course: str) -> str:
    return f"{course} was not served."


def night_kept(name: str, stood: int, limit: int) -> str:
    return f"What came of '{name}' stood {stood} min and keeps {limit}: with food, when in doubt, throw it out."
