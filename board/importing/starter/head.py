"""What a menu says besides its dishes, read by what it says: day, hour, guests, kitchen, help, zone, name. Pure.

A line comes in masked: each time of day in it is one character of `clocks`' private range, so that its colon is none.
"""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from board.importing.starter import words
from board.importing.starter.answers import DAY, MONTH, WEEKDAY, read_date, readers
from board.importing.starter.clocks import CLOCK_SIGN, Masked
from board.importing.starter.menu_guests import GuestList, is_need
from board.importing.starter.not_a_menu import NotAMenu
from board.plan.model.kitchen import MOST_LITRES
from board.plan.phrases.durations import decimal

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
_IN_WORDS = {
    **{word: str(n) for n, word in enumerate(_NUMBERS)},
    "zero": "0", "a": "1", "an": "1", "single": "1", "double": "2", "a dozen": "12",
}  # fmt: skip
_N = r"(?<![\w.])(?P<n>[0-9]{1,6}|" + "|".join(sorted(_IN_WORDS, key=len, reverse=True)) + ")"
_ROOM = r"(?P<n>[0-9]{1,6}(?:[.,][0-9]{1,2})?)\s*(?:l|litres?|liters?)\b"
_COLD = r"(?P<what>fridge|refrigerator|freezer)"
_OVENS = re.compile(rf"{_N}\s+(?:\w+\s+)?ovens?\b|^(?:the\s+|my\s+)?oven(?=\s*(?:$|[+&]|and\b|with\b))", re.IGNORECASE)
_RINGS = re.compile(
    rf"{_N}[\s-]+(?:(?:gas|induction|electric|ceramic|hob|stove|stovetop|cooking)\s+)?"
    rf"(?:rings?|burners?|hobs?|hot\s?plates?)\b(?:\s+(?:hob|stove|cooker|stovetop|cooktop|range))?",
    re.IGNORECASE,
)
_FRIDGE = (
    re.compile(rf"\b{_COLD}\b(?:\s+(?:of|with|has|space|room|free))*\s*:?\s*{_ROOM}(?:\s+(?:free|of\s+room|of\s+space))?",
               re.IGNORECASE),
    re.compile(rf"{_ROOM}\s+(?:(?:free|of|in|the|my|room|space)\s+)*{_COLD}\b(?:\s+(?:space|room))?", re.IGNORECASE),
)  # fmt: skip
_GUESTS = re.compile(
    rf"{_N}\s+(?:(?:hungry|dear|old|invited)\s+)?(?:guests?|friends|visitors)\b"
    rf"|\b(?:we\s+are\s+|we['’]re\s+)?{_N.replace('?P<n>', '?P<q>')}\s*(?:plus|and|&|\+)\s*(?:me|myself)\b",
    re.IGNORECASE,
)
_BY_AGE = re.compile(
    rf"{_N}\s+(?:adults?|grown-?ups?|kids?|child(?:ren)?|toddlers?|infants?|bab(?:y|ies)|teenagers?)\b", re.IGNORECASE
)
_EATERS = re.compile(  # the host among them
    rf"{_N}\s+(?:people|persons?|diners?|eaters?|covers?|(?:of\s+us|at\s+(?:the\s+)?table))\b"
    rf"|\b(?:table\s+for|party\s+of|serves|we\s+are|we['’]re)\s+{_N.replace('?P<n>', '?P<m>')}\b"
    rf"|\bfor\s+{_N.replace('?P<n>', '?P<k>')}"
    rf"(?=\s*$|\s*[{CLOCK_SIGN}]|\s+(?:at|on|from)\b)",
    re.IGNORECASE,
)
_LIST_FOLLOWS = re.compile(
    rf"(?:{_GUESTS.pattern}|{_EATERS.pattern.replace('?P<n>', '?P<p>')}|\b(?:the\s+)?guests)"
    rf"(?:,?\s+(?:(?:come|arrive)\s+)?(?:at\s+|from\s+)?[{CLOCK_SIGN}])?\s*$",
    re.IGNORECASE,
)
_HELPS = re.compile(
    rf"(?:with\s+)?(?P<names>[^{CLOCK_SIGN}]+?)\s+(?:helps?|is\s+helping|are\s+helping|will\s+help|comes?\s+to\s+help|"
    rf"gives?\s+(?:me\s+|us\s+)?a\s+hand|cooks\s+too)\b(?:\s+(?:out|me|us|too|in\s+the\s+kitchen|cook))*"
    rf"\s*(?P<when>.*)",
    re.IGNORECASE,
)
_HIRED = re.compile(
    rf"(?:(?:hired\s+)?help(?:er)?|hired\s+\w+|waiter|waitress)\s+(?P<names>[^{CLOCK_SIGN}\s][^{CLOCK_SIGN}]*?)"
    rf"\s*(?P<when>(?:(?:from|at|until|till)\s+)?[{CLOCK_SIGN}].*)",
    re.IGNORECASE,
)
_FROM_TO = re.compile(
    rf"(?:(?:from|at|after|since|of)?\s*(?P<start>[{CLOCK_SIGN}]))?\s*"
    rf"(?:(?:to|until|till|up\s+to|[-–—])\s*(?P<end>[{CLOCK_SIGN}]))?",
    re.IGNORECASE,
)
_DAY_OF_MONTH = re.compile(
    rf"(?<!\w)(?P<weekday>{WEEKDAY})\.?,?\s+(?:the\s+)?(?P<day>\d{{1,2}})(?:st|nd|rd|th)(?!\w)(?!\s+(?:of\s+)?{MONTH})",
    re.IGNORECASE | re.ASCII,
)
_BARE_HOUR = re.compile(
    r"(?:\b(?:at|from|around|about)\s+(?P<at>[0-9]{1,2})|(?<![\w.:])(?P<n>[0-9]{1,2})(?=\s*(?:ish\b|o['’]?clock\b)))"
    r"\s*(?:ish\b|o['’]?clock\b)?(?![\w:./]|\s*%)",
    re.IGNORECASE,
)
_SEATED = re.compile(
    rf"\b(?:eat|eating|sit|sitting|seated|food|served?|serving)\b[^{CLOCK_SIGN}]*[{CLOCK_SIGN}]"
    rf"|[{CLOCK_SIGN}]\s+for\s+[{CLOCK_SIGN}]",
    re.IGNORECASE,
)
_THING_FIRST = re.compile(r"\b(ovens?|rings?|burners?)\s*:\s*(\w+)", re.IGNORECASE)
_ZONE = re.compile(r"\b(?:[A-Z][A-Za-z_]+(?:/[A-Za-z_+\-0-9]+)+|UTC)(?![\w/])")
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
_WEEKDAY_ALONE = re.compile(rf"(?:on\s+|this\s+|coming\s+)?(?P<day>today|tomorrow|{WEEKDAY})", re.IGNORECASE)
_NEXT_WEEKDAY = re.compile(rf"\bnext\s+{WEEKDAY}(?!\w)", re.IGNORECASE)
_FILLERS = re.compile(
    r"\b(?:and|at|on|with|for|from|arriv(?:e|es|ing|al)|come|coming|the|a|an|in|around|about|we|have|has|there|are|is|"
    r"my|our|hob|stove|kitchen|cooker|dinner|supper|lunch|start|starts|time|zone|date|day|when|guests?|hrs?|hours?|kl|eat|eating|sit|sitting|seated|down)\b"
    r"|[&+()@.,:\s–—-]",
    re.IGNORECASE,
)
_EDGES = re.compile(r"^(?:(?:and|at|on|with|for|from)\b|[\s,.;–—-])+|(?:\s(?:and|at|on|with|for|from)|[\s,.;–—-])+$",
                    re.IGNORECASE)  # fmt: skip
EVENT_WORD = re.compile(
    r"\b(?:supper|dinner|lunch(?:eon)?|brunch|breakfast|party|birthday|feast|celebration|wedding|anniversary|christmas|"
    r"buffet|xmas|easter|thanksgiving|new\s+year|evening|picnic|barbecue|bbq|gathering|reunion|christening|graduation|"
    r"housewarming|night|banquet|eve|menu)\b",
    re.IGNORECASE,
)
_OF_A_DISH = re.compile(
    r"\b(?:cakes?|puddings?|ham|turkey|lamb|soup|goose|tarts?|pies?|roast|buns?|stew|eggs)\b", re.IGNORECASE
)
FAR_DAYS = 300  # a day without a year that is further off than this is read back


@dataclass(frozen=True)
class Helper:
    """Who helps; `start`, `end`: HH:MM, None where nothing is said. `hired`: does not eat with the guests."""

    name: str
    start: str | None = None
    end: str | None = None
    hired: bool = False


@dataclass
class Head:
    """Collects what the head's lines say. `found`: answers by name, as `Answers` has them; `notes`: for the host."""

    today: date
    found: dict[str, Any] = field(default_factory=dict)
    guests: GuestList = field(default_factory=GuestList)
    helpers: list[Helper] = field(default_factory=list)
    cold: dict[str, str] = field(default_factory=dict)
    guests_line: int = 0  # where they were named last
    seated: str | None = None
    notes: list[str] = field(default_factory=list)

    def take(self, line: Masked) -> bool:
        """Whether the line is the head's; it is then taken in. Raises NotAMenu for what it says and cannot be."""
        label, colon, tail = line.text.partition(":")
        if colon:
            return self._labelled(line, label, tail)
        if not self.says_something(line.text):
            return False
        self._all(line, line.text)
        return True

    def name_it(self, text: str, line: Masked) -> None:
        """Takes a text for the event's name, unless there is one already."""
        if "event" in self.found:
            self.leave_out(line.unmasked(text), line)
        else:
            self._answer("event", line.unmasked(text), line)

    def leave_out(self, said: str, line: Masked, note: Callable[[int, str], str] = words.menu_not_understood) -> None:
        """Tells that a text is left out. Raises NotAMenu where it may say what a guest must not eat."""
        if is_need(said):
            raise NotAMenu(line.number, words.menu_need(said))
        self.notes.append(note(line.number, said))

    def says_something(self, text: str) -> bool:
        """Whether some piece of an unlabelled line says nothing but things of a head."""
        if _date_in(text) or _NEXT_WEEKDAY.search(text) or _DAY_OF_MONTH.search(text):
            return True
        return any(not self._left_of(piece) for piece in _sentences(text))

    def _labelled(self, line: Masked, label: str, tail: str) -> bool:
        kind = LABELS.get(" ".join(label.casefold().split()))
        if kind == "said":
            self._all(line, tail)
        elif kind == "thing":
            self._all(line, line.text)
        elif kind == "guests":
            self._guest_label(tail, line, with_host=label.casefold().strip() in ("people", "eaters", "for", "who"))
        elif kind == "help":
            for piece in pieces_of(tail):
                self._helper(piece, line, hired="hired" in label.casefold())
        elif kind == "event":
            self.name_it(tail, line)
        elif kind == "unused":
            self.leave_out(line.unmasked(line.text), line, words.menu_not_used)
        elif counted := _counts_guests(label):
            self._all(line, label[: counted.start()] + counted[0])
            self._guests(tail, line)
        elif tail.strip() and not self.says_nothing_but_head(tail):
            return False
        elif tail.strip():
            self._all(line, tail)
        else:
            return False
        return True

    def says_nothing_but_head(self, text: str) -> bool:
        """Whether every piece of a text is a head's."""
        found = _date_in(text)
        left = f"{text[: found.start()]} {text[found.end() :]}" if found else text
        return (found is not None or bool(pieces_of(left))) and not any(self._left_of(each) for each in pieces_of(left))

    def _left_of(self, piece: str) -> str:
        """What of a piece no pattern of a head knows; "" if all of it is known. A piece of fillers alone is unknown."""
        if _HIRED.fullmatch(piece) or _HELPS.fullmatch(piece) or _WEEKDAY_ALONE.fullmatch(piece):
            return ""
        if bracketed := _counted_list(piece):
            piece = bracketed[1].strip()
        left = piece
        for pattern in (_DATE, _SLASHED_ALONE, *_FRIDGE, _BY_AGE, _GUESTS, _EATERS, _OVENS, _RINGS, _ZONE):
            left = pattern.sub(" ", left)
        left = _BARE_HOUR.sub(" ", re.sub(f"[{CLOCK_SIGN}]", " ", left))
        left = re.sub(rf"\b{WEEKDAY}(?!\w)", " ", left, flags=re.IGNORECASE) if left != piece else left
        return piece if left == piece else _FILLERS.sub("", EVENT_WORD.sub("", left))

    def _all(self, line: Masked, text: str) -> None:
        """Takes in every piece of a line; tells what is not understood."""
        text = _THING_FIRST.sub(r"\2 \1", text)
        if found := _NEXT_WEEKDAY.search(text):
            raise NotAMenu(line.number, words.menu_next_weekday(found[0]))
        if found := _date_in(text):
            self._answer("date", self._day(found[0], line), line)
            text = f"{text[: found.start()]}, {text[found.end() :]}"
        elif found := _DAY_OF_MONTH.search(text):
            self._answer("date", self._day_of_month(found, line), line)
            text = f"{text[: found.start()]}, {text[found.end() :]}"
        for piece in _sentences(text):
            self._piece(piece, line)

    def _piece(self, piece: str, line: Masked) -> None:
        if found := _WEEKDAY_ALONE.fullmatch(piece):
            self._answer("date", self._day(found["day"], line), line)
            return
        if _HIRED.fullmatch(piece) or _HELPS.fullmatch(piece):
            self._helper(piece, line)
            return
        if bracketed := _counted_list(piece):
            self._piece(bracketed[1].strip(), line)
            self._guests(bracketed[2], line)
            return
        left = self._kitchen(piece, line)
        for clock in re.findall(f"[{CLOCK_SIGN}]", left):
            self._clock(line.clock(clock), line, piece)
        left = re.sub(f"[{CLOCK_SIGN}]", " ", left)
        if found := _BARE_HOUR.search(left):
            self._bare_hour(found, line)
            left = left.replace(found[0], " ")
        if left != piece and (found := re.search(rf"\b{WEEKDAY}(?!\w)", left, re.IGNORECASE)):
            if "date" not in self.found:
                self._answer("date", self._day(found[0], line), line)
            left = left.replace(found[0], " ")
        if _FILLERS.sub("", left):
            self._unknown(_EDGES.sub("", " ".join(left.split())), line)

    def _kitchen(self, piece: str, line: Masked) -> str:
        """Takes in numbers of things, and a zone; returns what is left of the piece."""
        if by_age := [each[0] for each in _BY_AGE.finditer(piece)]:
            self.add_guests(by_age, line)
            self.notes.append(words.menu_without_you(line.number, ", ".join(by_age)))
            piece = _BY_AGE.sub(" ", piece)
        for pattern in _FRIDGE:
            if found := pattern.search(piece):
                self._litres(found, line)
                piece = piece.replace(found[0], " ", 1)
        for name, pattern in (("guests", _GUESTS), ("eaters", _EATERS), ("ovens", _OVENS), ("rings", _RINGS)):
            if found := pattern.search(piece):
                said = next((each for each in found.groups() if each), "1")
                self._number(name, _IN_WORDS.get(said.casefold(), said), found[0], line)
                piece = piece.replace(found[0], " ", 1)
        if found := _ZONE.search(piece):
            self._answer("zone", found[0], line)
            piece = piece.replace(found[0], " ", 1)
        return piece

    def _number(self, name: str, number: str, said: str, line: Masked) -> None:
        if name == "eaters":
            if number.isdecimal() and int(number) > 0:
                number = str(int(number) - 1)
            self.notes.append(words.menu_host_counted(line.number, said, number))
            name = "guests"
        self._answer(name, number, line)

    def _litres(self, found: re.Match[str], line: Masked) -> None:
        try:
            litres = decimal(found["n"])
        except ValueError as wrong:
            raise NotAMenu(line.number, str(wrong)) from None
        if not 0 < litres <= MOST_LITRES:
            raise NotAMenu(line.number, words.menu_room(found[0], MOST_LITRES))
        place = "freezer" if found["what"].casefold() == "freezer" else "fridge"
        self._once(place, self.cold, f"{litres:g} litres", line)

    def _clock(self, clock: str, line: Masked, piece: str) -> None:
        if "arrive" in self.found and _SEATED.search(piece):
            self.seated = clock
        elif "arrive" in self.found and self.found["arrive"] != clock:
            self.notes.append(words.menu_second_hour(line.number, clock))
        elif "arrive" not in self.found:
            self._answer("arrive", clock, line)

    def _bare_hour(self, found: re.Match[str], line: Masked) -> None:
        """`at 7`, `7ish`, `7 o'clock`: of an afternoon or evening, and told."""
        hour = int(found["at"] or found["n"])
        clock = f"{hour + 12 if hour < FIRST_MORNING_HOUR else hour}:00"
        if "arrive" in self.found:
            self.leave_out(found[0].strip(), line)
            return
        self._answer("arrive", clock, line)
        self.notes.append(words.menu_bare_hour(line.number, found[0].strip(), self.found["arrive"]))

    def _day_of_month(self, found: re.Match[str], line: Masked) -> str:
        """`Sat 12th`: the next Saturday that is a twelfth. Raises NotAMenu where there is none within two months."""
        for ahead in range(MONTHS_DAYS):
            day = self.today + timedelta(days=ahead)
            if day.day == int(found["day"]) and found["weekday"].casefold().startswith(f"{day:%a}".casefold()):
                return day.isoformat()
        raise NotAMenu(line.number, words.menu_no_such_weekday(found[0]))

    def _unknown(self, text: str, line: Masked) -> None:
        """A piece of a head's line that is none of its things: a guest's needs, the event's name, or told."""
        said = line.unmasked(text)
        if self.guests.takes_up(said):
            self.guests_line = line.number
            return
        if "event" not in self.found and is_event(said):
            self.name_it(text, line)
        else:
            self.leave_out(said, line)

    def _guest_label(self, text: str, line: Masked, *, with_host: bool) -> None:
        """`7`, `7 (Ada, coeliac; 6 others)` or the list alone."""
        counted = re.match(rf"\s*{_N}\b\s*(?:guests\b|people\b)?\s*(?=$|[,;:(—–-])[,;:—–-]?", text, re.IGNORECASE)
        if counted:
            number = _IN_WORDS.get(counted["n"].casefold(), counted["n"])
            with_host = with_host or "people" in counted[0]
            self._number("eaters" if with_host else "guests", number, counted[0].strip(" ,;:(—–-"), line)
            text = text[counted.end() :].strip()
            if text.startswith("(") and text.endswith(")"):
                text = text[1:-1]
        self._guests(text, line)

    def _guests(self, text: str, line: Masked) -> None:
        """A list of guests, in which pieces of the kitchen or the hours may stand too."""
        entries = []
        for piece in pieces_of(text, only=";") if ";" in text else pieces_of(text):
            if not self._left_of(piece) and not re.fullmatch(rf"{_N}\s+friends", piece, re.IGNORECASE):
                self._all(line, piece)
            else:
                entries.append(line.unmasked(piece))
        self.add_guests(entries, line)

    def add_guests(self, entries: list[str], line: Masked) -> None:
        """Entries of a list. Raises NotAMenu with the guest reader's own message."""
        self.guests_line = line.number
        try:
            self.guests.add(entries)
        except ValueError as wrong:
            raise NotAMenu(line.number, str(wrong)) from None

    def _helper(self, piece: str, line: Masked, *, hired: bool = False) -> None:
        found = (
            _HIRED.fullmatch(piece)
            or _HELPS.fullmatch(piece)
            or re.fullmatch(
                rf"(?P<names>[^{CLOCK_SIGN}]+?)\s*(?P<when>(?:\b(?:from|at|until|till)\b\s*)?[{CLOCK_SIGN}].*)?", piece
            )
        )
        when = _FROM_TO.fullmatch((found["when"] or "").strip()) if found else None
        if found is None or when is None:
            raise NotAMenu(line.number, words.menu_helper(line.unmasked(piece)))
        start, end = (line.clock(when[each]) if when[each] else None for each in ("start", "end"))
        hired = hired or bool(re.search(r"\b(?:hired|waiter|waitress)\b", piece, re.IGNORECASE))
        names = re.sub(r"\bhired(?:\s+help)?\b", "", found["names"], flags=re.IGNORECASE)
        for name in re.split(r"\s*(?:&|\+|,|\band\b)\s*", names):
            self._one_helper(Helper(line.unmasked(name), start, end, hired), line)

    def _one_helper(self, helper: Helper, line: Masked) -> None:
        if helper.name.casefold() in ("", "i", "me", "host", "nobody", "none", "no one"):
            return
        if len(helper.name) > LONGEST_HELPER or not re.search(r"[^\W\d_]", helper.name):
            raise NotAMenu(line.number, words.menu_helper(helper.name))
        if any(each.name.casefold() == helper.name.casefold() for each in self.helpers):
            raise NotAMenu(line.number, words.menu_helper_twice(helper.name))
        self.helpers.append(helper)

    def _day(self, said: str, line: Masked) -> str:
        """The day as ISO. Raises NotAMenu where it may be two, or is not the weekday beside it."""
        plain = " ".join(re.sub(r"\b(?:the|on)\b", " ", said, flags=re.IGNORECASE).split()).strip(" ,")
        weekday = re.match(rf"{WEEKDAY}(?=\W)", plain, re.IGNORECASE)
        alone = plain[weekday.end() :].strip(" .,") if weekday else plain.rstrip(",")
        day = read_day(_slashed(alone, line) if re.match(r"\d{1,2}[./]\d", alone) else alone, self.today, line)
        if weekday and alone and not weekday[0].casefold().startswith(f"{day:%a}".casefold()):
            raise NotAMenu(line.number, words.menu_other_weekday(said, day))
        if day - self.today > timedelta(days=FAR_DAYS) and not re.search(r"\d{4}", said):
            self.notes.append(words.menu_far_day(line.number, said, day))
        return day.isoformat()

    def _answer(self, name: str, said: str, line: Masked) -> None:
        """Reads an answer by its own reader. Raises NotAMenu with that reader's message, or where two differ."""
        try:
            value = readers(self.today)[name](said)
        except ValueError as wrong:
            raise NotAMenu(line.number, str(wrong)) from None
        self._once(name, self.found, value, line)

    def _once(self, name: str, kept: dict[str, Any], value: Any, line: Masked) -> None:
        if name in kept and kept[name] != value:
            raise NotAMenu(line.number, words.menu_said_twice(name, str(kept[name]), str(value)))
        kept[name] = value


LONGEST_HELPER = 60
FIRST_MORNING_HOUR = 10  # `at 10` is of a morning, `at 9` of an evening
MONTHS_DAYS = 62


def _counted_list(piece: str) -> re.Match[str] | None:
    """`7 guests (Ada, coeliac; 6 others)`."""
    found = re.fullmatch(r"([^()]*)\((.*)\)\s*", piece)
    return found if found and (_GUESTS.search(found[1]) or _EATERS.search(found[1].strip())) else None


def _counts_guests(label: str) -> re.Match[str] | None:
    """Whether what stands before a colon ends in guests, with their number or their hour."""
    return _LIST_FOLLOWS.search(label)


def _sentences(text: str) -> list[str]:
    """The pieces of a head's line, in which a full stop parts as well."""
    return [each for piece in pieces_of(text) for each in re.split(r"(?<=[a-z]{3})\.\s+(?=[A-Z0-9])", piece)]


def _date_in(text: str) -> re.Match[str] | None:
    return _DATE.search(text) or _SLASHED_ALONE.search(text)


def read_day(text: str, today: date, line: Masked) -> date:
    """A day by the reader of answers. Raises NotAMenu."""
    try:
        return read_date(text, today)
    except ValueError as wrong:
        raise NotAMenu(line.number, str(wrong)) from None


def _slashed(text: str, line: Masked) -> str:
    """`19/12/2026` → `2026-12-19`, or `19 Dec` without a year, where only one order of day and month can be. Raises
    NotAMenu."""
    first, second, *year = (int(each) for each in re.findall(r"\d+", text))
    orders = {(day, month) for day, month in ((first, second), (second, first)) if month <= 12 and day <= 31}
    if len(orders) != 1:
        raise NotAMenu(line.number, words.menu_two_days(text) if orders else words.new_not_a_date(text))
    ((day, month),) = orders
    named = f"{day} {_MONTHS[month - 1]}"
    return f"{named} {year[0] + 2000 if year[0] < 100 else year[0]}" if year else named


_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


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
