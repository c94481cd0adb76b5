"""Jobs everybody knows, with how long they usually take. Common practice, no source; a plan's own figure goes first."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class UsualJob:
    """Minutes of a one-line job; `fridge` where it stands in the fridge meanwhile with hands only at the start."""

    minutes: int
    fridge_minutes: int = 0


USUAL_JOBS: dict[str, UsualJob] = {
    "lay the table": UsualJob(25),
    "set out the drinks": UsualJob(10),
    "arrange the flowers": UsualJob(20),
    "light the candles": UsualJob(5),
    "make room for coats": UsualJob(5),
    "tidy the room": UsualJob(30),
    "choose the music": UsualJob(5),
    "chill the wine": UsualJob(5, fridge_minutes=120),  # white wine: 2 h in a fridge
    "make the ice": UsualJob(5),
    "iron the cloth": UsualJob(20),
}
JOB_MINUTES = 10  # for a one-line job not known above
