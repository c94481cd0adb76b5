"""Common jobs and how long they usually take. Common practice, no source; a plan's own figure overrides it."""

import math
from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True)
class UsualJob:
    """Minutes of a one-line job, and more per guest if there are many.

    `fridge_minutes`: time in the fridge, with hands only at the start.
    """

    minutes: int
    fridge_minutes: int = 0
    minutes_a_guest: float = 0.0
    place: Literal["front-of-house", "worktop"] = "front-of-house"

    def minutes_for(self, guests: int) -> int:
        """Minutes of handwork for this many guests."""
        return max(self.minutes, math.ceil(guests * self.minutes_a_guest))


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
    # the room
    "air the room": UsualJob(10),
    "sweep the floor": UsualJob(15),
    "borrow chairs": UsualJob(20, minutes_a_guest=1.5),
    "set out the chairs": UsualJob(5, minutes_a_guest=0.5),
    "put up the table": UsualJob(15),
    "set out the coat rail": UsualJob(5),
    "clean the bathroom": UsualJob(20),
    "put out towels": UsualJob(3),
    "warm the room": UsualJob(5),
    "dim the lights": UsualJob(2),
    "put on music": UsualJob(2),
    "light the fire": UsualJob(15),
    "light the way": UsualJob(5),
    "clear the hall": UsualJob(10),
    "check the smoke alarm": UsualJob(3),
    # the table
    "lay the covers": UsualJob(10, minutes_a_guest=3),
    "fold the napkins": UsualJob(5, minutes_a_guest=1),
    "polish the glasses": UsualJob(10, minutes_a_guest=1.5),
    "polish the cutlery": UsualJob(10, minutes_a_guest=1.5),
    "write the place cards": UsualJob(10, minutes_a_guest=1.5),
    "set out the place cards": UsualJob(3, minutes_a_guest=0.5),
    "set out salt and pepper": UsualJob(3),
    "fill the water jugs": UsualJob(5, minutes_a_guest=0.5),
    "pour the water": UsualJob(3, minutes_a_guest=0.5),
    # at the worktop
    "get out the serving dishes": UsualJob(10, place="worktop"),
    "get out the plates": UsualJob(5, minutes_a_guest=0.75, place="worktop"),
    "warm the plates": UsualJob(5, minutes_a_guest=0.5, place="worktop"),
    "slice the bread": UsualJob(5, minutes_a_guest=0.5, place="worktop"),
    "fill the ice bucket": UsualJob(5, place="worktop"),
    "decant the wine": UsualJob(10, place="worktop"),
    "empty the dishwasher": UsualJob(10, place="worktop"),
    "empty the bin": UsualJob(5, place="worktop"),
    "clear down the kitchen": UsualJob(20, place="worktop"),
    # into the fridge
    "chill the glasses": UsualJob(5, fridge_minutes=45),
    "chill the beer": UsualJob(5, fridge_minutes=180),
    "chill the water": UsualJob(5, fridge_minutes=120),
}
JOB_MINUTES = 10  # for a one-line job not listed above
