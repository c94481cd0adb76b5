"""Guests by name or number, with what they must not or do not eat: `Ines, no tree nuts`; `6 others`."""

import re
from typing import Annotated, Literal, get_args

from pydantic import BaseModel, ConfigDict, Field

from board.facts.food import facts
from board.facts.named import named
from board.plan.phrases.phrase import Phrase, near

Diet = Literal[
    "vegetarian",
    "vegan",
    "pescatarian",
    "halal",
    "kosher",
    "coeliac",
    "lactose-free",
    "pregnant",
    "alcohol-free",
]
DIETS: tuple[str, ...] = get_args(Diet)


class Guest(BaseModel):
    """One guest, or several with no special needs."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    name: str = Field(min_length=1)
    count: int = Field(default=1, ge=1, le=200)
    avoids: tuple[str, ...] = ()
    diets: tuple[Diet, ...] = ()


_AVOIDS = re.compile(r"(?:no|not|without|allergic to|allergy to|avoids)\s+(.+)", re.IGNORECASE)
_AND = re.compile(r"\s+(?:and|or|nor|&)\s+", re.IGNORECASE)  # splits foods, so that each is looked up
_IN_A_NAME = re.compile(
    r"\b(?:no|not|without|avoids|free|never|can't|cannot|doesn't|allerg\w+|intoleran\w+|co?eliac|vegan|vegetarian"
    r"|pescatarian|halal|kosher|pregnant)\b",
    re.IGNORECASE,
)  # after a dash or a bracket it would be read as part of the name
_APART = re.compile(r"[(\[:;/]|\s[-–—]+\s")
_FREE = re.compile(r"(.+?)[\s-]*free", re.IGNORECASE)
_BARE_NO = re.compile(r"^(?:no|not)\s+", re.IGNORECASE)


def parse_guest(text: str) -> dict[str, object]:
    """Name or number first, then diets and `no …`, separated by commas. Raises ValueError."""
    name, *rest = (p.strip() for p in text.split(","))
    if name.lower() in DIETS or _AVOIDS.fullmatch(name):
        raise ValueError(f'{name!r} stands where a name is looked for; keep a guest together: "Ines, {name}"')
    if said := _food_in(name):
        raise ValueError(
            f"{name!r} would all be a name, and {said!r} in it be minded by nobody; put a comma after the name: "
            '"Ines, no tree nuts"'
        )
    avoids: list[str] = []
    diets: list[str] = []
    for piece in rest:
        bare = re.sub(r"^(?:is|are)\s+", "", piece)
        if match := _AVOIDS.fullmatch(bare):
            avoids += [_BARE_NO.sub("", food) for food in _AND.split(match[1])]
        elif bare.lower() in DIETS:
            diets.append(bare.lower())
        else:
            raise ValueError(
                f"{piece!r} is not a diet the program knows.{_near_diet(bare)}; "
                f"write for example no walnuts, or one of {', '.join(DIETS)}"
            )
    counted = re.fullmatch(r"(\d+)(?:\s+(.*))?", name)
    if counted:
        return {"name": counted[2] or "guests", "count": int(counted[1]), "avoids": avoids, "diets": diets}
    return {"name": name, "avoids": avoids, "diets": diets}


MOST_GUESTS = 200
_IN_WORDS = re.compile(
    r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen|many|some|few|several)"
    r"(?:\s+(?:guests?|people|others?))?",
    re.IGNORECASE,
)


def guests_of(value: object) -> object:
    """`guests: 7` is a count; one line of text is one entry; anything else is returned unchanged. Raises ValueError."""
    if isinstance(value, bool) or not isinstance(value, int | float | str):
        return value
    text = str(value).strip()
    if text.isascii() and text.isdecimal() and 1 <= int(text[:9]) <= MOST_GUESTS:
        return [f"{text} guests"]
    if not isinstance(value, str) or not text or (text[0] in "-+.0123456789" and " " not in text):
        raise ValueError(f"{text!r} is no number of guests; write a whole number from 1 to {MOST_GUESTS}, or a list")
    if _IN_WORDS.fullmatch(text):
        raise ValueError(f"{text!r} is no name of a guest; write the number in figures: 8 guests")
    return [text]


def _food_in(name: str) -> str | None:
    """The part of a name that says somebody must not have something: such a word, or a food in brackets or after a dash
    or a colon."""
    if said := _IN_A_NAME.search(name):
        return said[0]
    _, *others = (piece.strip(" )]") for piece in _APART.split(name))
    return next((each for each in others if named(each) is not None or facts(each) is not None), None)


def _near_diet(piece: str) -> str:
    """Never suggests another thing to be free from: lactose-free is no help to somebody who needs gluten-free."""
    free = _FREE.fullmatch(piece)
    if free is None:
        return near(piece, DIETS)
    known = f"{free[1].lower()}-free"
    return f" Did you mean {known if known in DIETS else f'no {free[1]}'!r}?"


GuestLine = Annotated[Guest, Phrase(parse_guest, "Ines, no tree nuts")]
