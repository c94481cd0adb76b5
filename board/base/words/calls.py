"""Calls."""


def call_start(name: str) -> str:
    return name[:1].upper() + name[1:]


def call_end(name: str) -> str:
    return f"Done? {name}"


def call_look_in(name: str) -> str:
    return f"Look in: {name}"


CALL_ARRIVE = "Guests are due"
CALL_SEAT = "Guests to the table"


def call_serve(course: str) -> str:
    return f"Plate {course}"


def call_served(course: str) -> str:
    return f"{course} on the table?"


def call_clear(course: str) -> str:
    return f"Clear {course}"
