"""What a menu says besides its dishes, read by what it says: day, hour, guests, kitchen, help, zone, name. Pure.

A line comes in masked: each time of day in it is one character of `clocks`' private range, so that its colon is none.
"""

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from board.importing.starter import looks, words
from board.importing.starter.answers import WEEKDAY, read_date, readers
from board.importing.starter.clocks import CLOCK_SIGN, Masked
from board.importing.starter.menu_guests import GuestList, is_need
from board.importing.starter.not_a_menu import NotAMenu
from board.plan.model.kitchen import MOST_LITRES
from board.plan.phrases.durations import decimal

LONGEST_HELPER = 60
FIRST_MORNING_HOUR = 10  # `at 10` is of a morning, `at 9` of an evening
MONTHS_DAYS = 62
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
        if not looks.says_something(line.text):
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
        """Tells that a text is left out, unless it says a need of somebody named. Raises NotAMenu where it may say what
        a guest must not eat."""
        if self.takes_up(said, line, by_name=True):
            return
        if is_need(said):
            raise NotAMenu(line.number, words.menu_need(said))
        self.notes.append(note(line.number, said))

    def _labelled(self, line: Masked, label: str, tail: str) -> bool:
        kind = looks.LABELS.get(" ".join(label.casefold().split()))
        if kind == "said":
            self._all(line, tail)
        elif kind == "thing":
            self._all(line, line.text)
        elif kind == "guests":
            self._guest_label(tail, line, with_host=label.casefold().strip() in ("people", "eaters", "for", "who"))
        elif kind == "help":
            for piece in looks.pieces_of(tail):
                self._helper(piece, line, hired="hired" in label.casefold())
        elif kind == "event":
            self.name_it(tail, line)
        elif kind == "unused":
            self.leave_out(line.unmasked(line.text), line, words.menu_not_used)
        elif counted := looks.counts_guests(label):
            self._all(line, label[: counted.start()] + counted[0])
            self._guests(tail, line)
        elif tail.strip() and not looks.says_nothing_but_head(tail):
            return False
        elif tail.strip():
            self._all(line, tail)
        else:
            return False
        return True

    def _all(self, line: Masked, text: str) -> None:
        """Takes in every piece of a line; tells what is not understood."""
        text = looks.THING_FIRST.sub(r"\2 \1", text)
        if found := looks.NEXT_WEEKDAY.search(text):
            raise NotAMenu(line.number, words.menu_next_weekday(found[0]))
        if found := looks.date_in(text):
            self._answer("date", self._day(found[0], line), line)
            text = f"{text[: found.start()]}, {text[found.end() :]}"
        elif found := looks.DAY_OF_MONTH.search(text):
            self._answer("date", self._day_of_month(found, line), line)
            text = f"{text[: found.start()]}, {text[found.end() :]}"
        for piece in looks.sentences(text):
            self._piece(piece, line)

    def _piece(self, piece: str, line: Masked) -> None:
        if found := looks.WEEKDAY_ALONE.fullmatch(piece):
            self._answer("date", self._day(found["day"], line), line)
            return
        if looks.HIRED.fullmatch(piece) or looks.HELPS.fullmatch(piece):
            self._helper(piece, line)
            return
        if bracketed := looks.counted_list(piece):
            self._piece(bracketed[1].strip(), line)
            self._guests(bracketed[2], line)
            return
        left = self._kitchen(piece, line)
        for clock in re.findall(f"[{CLOCK_SIGN}]", left):
            self._clock(line.clock(clock), line, piece)
        left = re.sub(f"[{CLOCK_SIGN}]", " ", left)
        if found := looks.BARE_HOUR.search(left):
            self._bare_hour(found, line)
            left = left.replace(found[0], " ")
        if left != piece and (found := re.search(rf"\b{WEEKDAY}(?!\w)", left, re.IGNORECASE)):
            if "date" not in self.found:
                self._answer("date", self._day(found[0], line), line)
            left = left.replace(found[0], " ")
        if looks.FILLERS.sub("", left):
            self._unknown(looks.EDGES.sub("", " ".join(left.split())), line)

    def _kitchen(self, piece: str, line: Masked) -> str:
        """Takes in numbers of things, and a zone; returns what is left of the piece."""
        if by_age := [each[0] for each in looks.BY_AGE.finditer(piece)]:
            self.add_guests(by_age, line)
            self.notes.append(words.menu_without_you(line.number, ", ".join(by_age)))
            piece = looks.BY_AGE.sub(" ", piece)
        for pattern in looks.FRIDGE:
            if found := pattern.search(piece):
                self._litres(found, line)
                piece = piece.replace(found[0], " ", 1)
        for name, pattern in (
            ("guests", looks.GUESTS),
            ("eaters", looks.EATERS),
            ("ovens", looks.OVENS),
            ("rings", looks.RINGS),
        ):
            if found := pattern.search(piece):
                said = next((each for each in found.groups() if each), "1")
                self._number(name, looks.IN_WORDS.get(said.casefold(), said), found[0], line)
                piece = piece.replace(found[0], " ", 1)
        if found := looks.ZONE.search(piece):
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
        if "arrive" in self.found and looks.SEATED.search(piece):
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
        if self.takes_up(said, line):
            return
        if "event" not in self.found and looks.is_event(said):
            self.name_it(text, line)
        else:
            self.leave_out(said, line)

    def takes_up(self, said: str, line: Masked, *, by_name: bool = False) -> bool:
        """Whether it says what somebody must not eat; they are then among the guests."""
        if taken := self.guests.takes_up(said, by_name=by_name):
            self.guests_line = line.number
        return taken

    def _guest_label(self, text: str, line: Masked, *, with_host: bool) -> None:
        """`7`, `7 (Ada, coeliac; 6 others)` or the list alone."""
        counted = re.match(rf"\s*{looks.N}\b\s*(?:guests\b|people\b)?\s*(?=$|[,;:(—–-])[,;:—–-]?", text, re.IGNORECASE)
        if counted:
            number = looks.IN_WORDS.get(counted["n"].casefold(), counted["n"])
            with_host = with_host or "people" in counted[0]
            self._number("eaters" if with_host else "guests", number, counted[0].strip(" ,;:(—–-"), line)
            text = text[counted.end() :].strip()
            if text.startswith("(") and text.endswith(")"):
                text = text[1:-1]
        self._guests(text, line)

    def _guests(self, text: str, line: Masked) -> None:
        """A list of guests, in which pieces of the kitchen or the hours may stand too."""
        entries = []
        for piece in looks.pieces_of(text, only=";") if ";" in text else looks.pieces_of(text):
            if not looks.left_of(piece) and not re.fullmatch(rf"{looks.N}\s+friends", piece, re.IGNORECASE):
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
            looks.HIRED.fullmatch(piece)
            or looks.HELPS.fullmatch(piece)
            or re.fullmatch(
                rf"(?P<names>[^{CLOCK_SIGN}]+?)\s*(?P<when>(?:\b(?:from|at|until|till)\b\s*)?[{CLOCK_SIGN}].*)?", piece
            )
        )
        when = looks.FROM_TO.fullmatch((found["when"] or "").strip()) if found else None
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
