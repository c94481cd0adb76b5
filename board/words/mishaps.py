"""A rehearsal with mishaps."""


def played_early(at: str, name: str) -> str:
    return f"{at}  ✓ {name} is ready before its time"


def played_not_ready(at: str, name: str, minutes: int) -> str:
    return f"{at}  … {name} is not ready yet: {minutes} min more"


def played_guests_late(at: str, minutes: int) -> str:
    return f"{at}  … the guests are {minutes} min late"


def played_sat_long(at: str, course: str, minutes: int) -> str:
    return f"{at}  … the guests sit {minutes} min longer over {course}"


def night_title() -> str:
    return "How the night went"


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


def night_kept(name: str, stood: int, limit: int) -> str:
    return f"What came of '{name}' stood {stood} min and keeps {limit}: with food, when in doubt, throw it out."
