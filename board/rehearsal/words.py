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


SEPARATOR = ", "
NIGHT_CHANGED_NOTHING = "The night cost nothing."
NO_ACCOUNT = "What the night cost is not told: not every course was served, or it cannot be played again."
UNTOUCHED = "Your answers and decisions changed nothing."
A_LITTLE_LATE = "answers a little late or early"
DECIDED = {
    "CoursePushed": "pushed {about} by {minutes} min",
    "SheetTaken": "took the new timetable",
    "DishDropped": "dropped {about}",
    "StepLeftOut": "left out '{about}'",
    "StepStretched": "changed the time of '{about}'",
    "GuestsDelayed": "put the guests {minutes} min later",
    "CallPutOff": "put off '{about}' by {minutes} min",
}
MISHAPS = {
    "guests": "guests {minutes} min late",
    "lengths": "other lengths than planned",
    "oven": "slow {about}",
    "unheard": "'{about}' unheard for {minutes} min",
}


def toll_late(minutes: int) -> str:
    return f"{minutes} min"


def toll_stood(minutes: int) -> str:
    return f"food {_more_or_less(minutes)} past its best"


def toll_unsafe(minutes: int) -> str:
    return f"food out {_more_or_less(minutes)} past its safe limit"


def _more_or_less(minutes: int) -> str:
    return f"{minutes} min" if minutes >= 0 else f"{-minutes} min less"


def share(cause: str, of: str) -> str:
    return f"{cause} ({of})"


def of_course(name: str, minutes: int) -> str:
    return f"{name} {minutes}".replace("-", "\N{MINUS SIGN}")


def account_planned(toll: str) -> str:
    return f"The timetable itself costs {toll}."


def account_night(toll: str, causes: str) -> str:
    return f"The night cost {toll}: {causes}."


def account_cost(toll: str, causes: str) -> str:
    return f"You cost {toll}: {causes}."


def account_saved(toll: str, causes: str) -> str:
    return f"You saved {toll}: {causes}."


def account_sum(minutes: list[int], came: int) -> str:
    first, *rest = minutes
    reckoned = f"{first}" + "".join(f" {'-' if each < 0 else '+'} {abs(each)}" for each in rest)
    return f"Late in all: {reckoned} = {came} min.".replace("-", "\N{MINUS SIGN}")


def answered_late(name: str, called: str, answered: str) -> str:
    return f"'{name}' called {called}, answered {answered}"


def mattered(at: str, what: str, did: str) -> str:
    return f"{at} you {what}: {did}"


def did_save(toll: str) -> str:
    return f"saved {toll}"


def did_cost(toll: str) -> str:
    return f"cost {toll}"


DID_NOTHING = "changed nothing"
AS_GOOD = "."


BETTER_LEFT = ". Better not done."


def without_it(toll: str) -> str:
    return f". Without it: {toll} less."


def by_less(minutes: int, toll: str) -> str:
    return f". {minutes} min would have done: {toll} less."


def sooner(at: str, toll: str) -> str:
    return f". At {at}, when it was offered, it would have saved {toll} more."


def left_offer(at: str, toll: str) -> str:
    return f"{at} you left the new timetable that was offered: it would have saved {toll}."


def not_pushed(at: str, course: str, minutes: int, toll: str) -> str:
    return f"{at} a push of {course} by {minutes} min would have spared {toll}."
