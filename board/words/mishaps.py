"""A rehearsal with mishaps."""


def played_early(at: str, name: str) -> str:
    return f"{at}  ✓ {name} is ready before its time"


def played_not_ready(at: str, name: str, minutes: int) -> str:
    return f"{at}  … {name} is not ready yet: {minutes} min more"


def played_guests_late(at: str, minutes: int) -> str:
    return f"{at}  … the guests are {minutes} min late"


def played_sat_long(at: str, course: str, minutes: int) -> str:
    return f"{at}  … the guests sit {minutes} min longer over {course}"
