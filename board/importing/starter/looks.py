"""What the things of a menu's head look like: day, hour, guests, kitchen, help, zone, name. Pure.

Times of day are masked: each is one character of `clocks`' private range.
"""

import re
from collections.abc import Iterator

from board.importing.starter.answers import DAY, MONTH, WEEKDAY
from board.importing.starter.clocks import CLOCK_SIGN

LABELS = {
    **dict.fromkeys(("date", "day", "when", "time", "hour", "arrival", "arrive", "guests arrive", "date and time",
                     "kitchen", "equipment", "zone", "time zone", "timezone"), "said"),
    **dict.fromkeys(("oven", "ovens", "ring", "rings", "burners", "fridge", "refrigerator", "freezer"), "thing"),
    **dict.fromkeys(("guests", "guest", "guest list", "people", "who", "who comes", "eaters", "for", "allergies",
                     "allergy", "diets", "diet", "dietary", "dietary requirements", "dietary needs"), "guests"),
    **dict.fromkeys(("help", "helper", "helpers", "hands", "hired", "hired help"), "help"),
    **dict.fromkeys(("event", "occasion", "name", "title", "called", "party"), "event"),
    **dict.fromkeys(("where", "place", "venue", "address", "theme", "dress", "dress code", "note", "notes", "budget",
                     "music", "bring", "rsvp"), "unused"),
}  # fmt: skip
_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
IN_WORDS = {
    **{word: str(n) for n, word in enumerate(_NUMBERS)},
    "zero": "0", "a": "1", "an": "1", "single": "1", "double": "2", "a dozen": "12",
}  # fmt: skip
N = r"(?<![\w.])(?P<n>[0-9]{1,6}|" + "|".join(sorted(IN_WORDS, key=len, reverse=True)) + ")"
_ROOM = r"(?P<n>[0-9]{1,6}(?:[.,][0-9]{1,2})?)\s*(?:l|litres?|liters?)\b"
_COLD = r"(?P<what>fridge|refrigerator|freezer)"
OVENS = re.compile(rf"{N}\s+(?:\w+\s+)?ovens?\b|^(?:the\s+|my\s+)?oven(?=\s*(?:$|[+&]|and\b|with\b))", re.IGNORECASE)
RINGS = re.compile(
    rf"{N}[\s-]+(?:(?:gas|induction|electric|ceramic|hob|stove|stovetop|cooking)\s+)?"
    rf"(?:rings?|burners?|hobs?|hot\s?plates?)\b(?:\s+(?:hob|stove|cooker|stovetop|cooktop|range))?",
    re.IGNORECASE,
)
FRIDGE = (
    re.compile(rf"\b{_COLD}\b(?:\s+(?:of|with|has|space|room|free))*\s*:?\s*{_ROOM}(?:\s+(?:free|of\s+room|of\s+space))?",
               re.IGNORECASE),
    re.compile(rf"{_ROOM}\s+(?:(?:free|of|in|the|my|room|space)\s+)*{_COLD}\b(?:\s+(?:space|room))?", re.IGNORECASE),
)  # fmt: skip
GUESTS = re.compile(
    rf"{N}\s+(?:(?:hungry|dear|old|invited)\s+)?(?:guests?|friends|visitors)\b"
    rf"|\b(?:we\s+are\s+|we['’]re\s+)?{N.replace('?P<n>', '?P<q>')}\s*(?:plus|and|&|\+)\s*(?:me|myself)\b",
    re.IGNORECASE,
)
BY_AGE = re.compile(
    rf"{N}\s+(?:adults?|grown-?ups?|kids?|child(?:ren)?|toddlers?|infants?|bab(?:y|ies)|teenagers?)\b", re.IGNORECASE
)
EATERS = re.compile(  # the host among them
    rf"{N}\s+(?:people|persons?|diners?|eaters?|covers?|(?:of\s+us|at\s+(?:the\s+)?table))\b"
    rf"|\b(?:table\s+for|party\s+of|serves|we\s+are|we['’]re)\s+{N.replace('?P<n>', '?P<m>')}\b"
    rf"|\bfor\s+{N.replace('?P<n>', '?P<k>')}"
    rf"(?=\s*$|\s*[{CLOCK_SIGN}]|\s+(?:at|on|from)\b)",
    re.IGNORECASE,
)
_LIST_FOLLOWS = re.compile(
    rf"(?:{GUESTS.pattern}|{EATERS.pattern.replace('?P<n>', '?P<p>')}|\b(?:the\s+)?guests)"
    rf"(?:,?\s+(?:(?:come|arrive)\s+)?(?:at\s+|from\s+)?[{CLOCK_SIGN}])?\s*$",
    re.IGNORECASE,
)
HELPS = re.compile(
    rf"(?:with\s+)?(?P<names>[^{CLOCK_SIGN}]+?)\s+(?:helps?|is\s+helping|are\s+helping|will\s+help|comes?\s+to\s+help|"
    rf"gives?\s+(?:me\s+|us\s+)?a\s+hand|cooks\s+too)\b(?:\s+(?:out|me|us|too|in\s+the\s+kitchen|cook))*"
    rf"\s*(?P<when>.*)",
    re.IGNORECASE,
)
HIRED = re.compile(
    rf"(?:(?:hired\s+)?help(?:er)?|hired\s+\w+|waiter|waitress)\s+(?P<names>[^{CLOCK_SIGN}\s][^{CLOCK_SIGN}]*?)"
    rf"\s*(?P<when>(?:(?:from|at|until|till)\s+)?[{CLOCK_SIGN}].*)",
    re.IGNORECASE,
)
FROM_TO = re.compile(
    rf"(?:(?:from|at|after|since|of)?\s*(?P<start>[{CLOCK_SIGN}]))?\s*"
    rf"(?:(?:to|until|till|up\s+to|[-–—])\s*(?P<end>[{CLOCK_SIGN}]))?",
    re.IGNORECASE,
)
DAY_OF_MONTH = re.compile(
    rf"(?<!\w)(?P<weekday>{WEEKDAY})\.?,?\s+(?:the\s+)?(?P<day>\d{{1,2}})(?:st|nd|rd|th)(?!\w)(?!\s+(?:of\s+)?{MONTH})",
    re.IGNORECASE | re.ASCII,
)
BARE_HOUR = re.compile(
    r"(?:\b(?:at|from|around|about)\s+(?P<at>[0-9]{1,2})|(?<![\w.:])(?P<n>[0-9]{1,2})(?=\s*(?:ish\b|o['’]?clock\b)))"
    r"\s*(?:ish\b|o['’]?clock\b)?(?![\w:./]|\s*%)",
    re.IGNORECASE,
)
SEATED = re.compile(
    rf"\b(?:eat|eating|sit|sitting|seated|food|served?|serving)\b[^{CLOCK_SIGN}]*[{CLOCK_SIGN}]"
    rf"|[{CLOCK_SIGN}]\s+for\s+[{CLOCK_SIGN}]",
    re.IGNORECASE,
)
THING_FIRST = re.compile(r"\b(ovens?|rings?|burners?)\s*:\s*(\w+)", re.IGNORECASE)
ZONE = re.compile(r"\b(?:[A-Z][A-Za-z_]+(?:/[A-Za-z_+\-0-9]+)+|UTC)(?![\w/])")
_ISO = r"(?<![\d-])\d{4}-\d{1,2}-\d{1,2}(?![\d-])"
_SLASHED = r"(?<![\d./-])\d{1,2}[./]\d{1,2}(?:[./](?:\d{4}|\d{2})(?!\d)|\.(?!\d))"
_DATE = re.compile(
    rf"(?<!\w)(?:{WEEKDAY}\.?,?\s+)?(?:on\s+)?(?:the\s+)?"
    rf"(?:{DAY}\s+(?:of\s+)?{MONTH}(?!\w)|{MONTH}\s+{DAY}(?!\w)|{_ISO}|{_SLASHED})(?:,?\s+\d{{4}}(?!\w))?",
    re.IGNORECASE | re.ASCII,
)
_SLASHED_ALONE = re.compile(  # `1/2` in a dish's line is no day
    rf"(?:^|(?<=[,;:]))\s*(?:on\s+)?(?:{WEEKDAY}\.?,?\s+)?\d{{1,2}}[./]\d{{1,2}}(?=\s*(?:$|[,;{CLOCK_SIGN}]|at\b))",
    re.IGNORECASE | re.ASCII,
)
WEEKDAY_ALONE = re.compile(rf"(?:on\s+|this\s+|coming\s+)?(?P<day>today|tomorrow|{WEEKDAY})", re.IGNORECASE)
NEXT_WEEKDAY = re.compile(rf"\bnext\s+{WEEKDAY}(?!\w)", re.IGNORECASE)
FILLERS = re.compile(
    r"\b(?:and|at|on|with|for|from|arriv(?:e|es|ing|al)|come|coming|the|a|an|in|around|about|we|have|has|there|are|is|"
    r"my|our|hob|stove|kitchen|cooker|dinner|supper|lunch|start|starts|time|zone|date|day|when|guests?|hrs?|hours?|kl|eat|eating|sit|sitting|seated|down)\b"
    r"|[&+()@.,:\s–—-]",
    re.IGNORECASE,
)
EDGES = re.compile(r"^(?:(?:and|at|on|with|for|from)\b|[\s,.;–—-])+|(?:\s(?:and|at|on|with|for|from)|[\s,.;–—-])+$",
                    re.IGNORECASE)  # fmt: skip
EVENT_WORD = re.compile(
    r"\b(?:supper|dinner|lunch(?:eon)?|brunch|breakfast|party|birthday|feast|celebration|wedding|anniversary|christmas|"
    r"buffet|xmas|easter|thanksgiving|new\s+year|evening|picnic|barbecue|bbq|gathering|reunion|christening|graduation|"
    r"housewarming|night|banquet|eve|menu|braai|barbie|brekkie|potluck|shindig)\b",
    re.IGNORECASE,
)
_OF_A_DISH = re.compile(
    r"\b(?:cakes?|puddings?|ham|turkey|lamb|soup|goose|tarts?|pies?|roast|buns?|stew|eggs)\b", re.IGNORECASE
)


def says_something(text: str) -> bool:
    """Whether some piece of an unlabelled line says nothing but things of a head."""
    if date_in(text) or NEXT_WEEKDAY.search(text) or DAY_OF_MONTH.search(text):
        return True
    return any(not left_of(piece) or _is_a_timed_event(piece) for piece in sentences(text))


def _is_a_timed_event(piece: str) -> bool:
    """`Game night Friday 19:00 for 8`: an occasion's name with its day and its hour behind, and no commas."""
    day = re.search(rf"\b{WEEKDAY}(?!\w)", piece, flags=re.IGNORECASE)
    return day is not None and is_event(piece[: day.start()]) and CLOCK_SIGN_IN.search(piece[day.end() :]) is not None


CLOCK_SIGN_IN = re.compile(f"[{CLOCK_SIGN}]")


def says_nothing_but_head(text: str) -> bool:
    """Whether every piece of a text is a head's."""
    found = date_in(text)
    left = f"{text[: found.start()]} {text[found.end() :]}" if found else text
    return (found is not None or bool(pieces_of(left))) and not any(left_of(each) for each in pieces_of(left))


def left_of(piece: str) -> str:
    """What of a piece no pattern of a head knows; "" if all of it is known. A piece of fillers alone is unknown."""
    if HIRED.fullmatch(piece) or HELPS.fullmatch(piece) or WEEKDAY_ALONE.fullmatch(piece):
        return ""
    if bracketed := counted_list(piece):
        piece = bracketed[1].strip()
    left = piece
    for pattern in (_DATE, _SLASHED_ALONE, *FRIDGE, BY_AGE, GUESTS, EATERS, OVENS, RINGS, ZONE):
        left = pattern.sub(" ", left)
    left = BARE_HOUR.sub(" ", re.sub(f"[{CLOCK_SIGN}]", " ", left))
    left = re.sub(rf"\b{WEEKDAY}(?!\w)", " ", left, flags=re.IGNORECASE) if left != piece else left
    return piece if left == piece else FILLERS.sub("", EVENT_WORD.sub("", left))


def counted_list(piece: str) -> re.Match[str] | None:
    """`7 guests (Ada, coeliac; 6 others)`."""
    found = re.fullmatch(r"([^()]*)\((.*)\)\s*", piece)
    return found if found and (GUESTS.search(found[1]) or EATERS.search(found[1].strip())) else None


def counts_guests(label: str) -> re.Match[str] | None:
    """Whether what stands before a colon ends in guests, with their number or their hour."""
    return _LIST_FOLLOWS.search(label)


def sentences(text: str) -> list[str]:
    """The pieces of a head's line, in which a full stop parts as well."""
    return [each for piece in pieces_of(text) for each in re.split(r"(?<=[a-z]{3})\.\s+(?=[A-Z0-9])", piece)]


def date_in(text: str) -> re.Match[str] | None:
    return _DATE.search(text) or _SLASHED_ALONE.search(text)


def is_event(text: str) -> bool:
    """Whether a text reads like the name of an occasion: `Midwinter supper`, `Ada's birthday`."""
    return bool(EVENT_WORD.search(text)) and not _OF_A_DISH.search(text)


def pieces_of(text: str, only: str = ",;|·") -> list[str]:
    """The pieces of a line between commas and semicolons that stand in no brackets; none is empty."""
    return [piece for piece in (each.strip() for each in _split(text, only)) if piece]


def _split(text: str, at: str) -> Iterator[str]:
    depth = start = 0
    nested = text.count("(") + text.count("[") == text.count(")") + text.count("]")
    for n, sign in enumerate(text):
        depth += nested and ((sign in "([") - (sign in ")]" and depth > 0))
        if sign in at and depth == 0:
            yield text[start:n]
            start = n + 1
    yield text[start:]
