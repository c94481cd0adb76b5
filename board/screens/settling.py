"""Guesses gone through one by one, what decides most first: taken as they stand, or with another figure."""

from textual.app import ComposeResult

from board.base import words as shared
from board.base.plain import one_line
from board.base.wrap import wrapped
from board.checks.plan.guesses import Guess
from board.plan.places import Loc
from board.screens import words
from board.screens.dressed import DressedApp
from board.screens.lines import Line, Lines, fitted
from board.screens.listing import Listing
from board.screens.typed import Typed, TypingScreen
from board.session.settling import Settling

STEP_COLUMNS = 34
LEAST_FOOT, LEAST_ABOVE = 5, 5  # rows


class SettleScreen(TypingScreen):
    """`answers`: by the number of a guess, its new value, or None where it was taken as it stands. Dismissed when the
    host leaves it."""

    CSS_PATH = "settling.tcss"

    def __init__(self, title: str, settling: Settling) -> None:
        super().__init__()
        self.heading = title
        self.settling = settling
        self.guesses = settling.guesses
        self.answers: dict[int, str | None] = {}
        self.left: set[int] = set()  # open, on purpose
        self.done: list[tuple[int, ...]] = []  # what each key answered, for taking it back
        self.said = ""

    def compose(self) -> ComposeResult:
        yield Lines(id="settle-top")
        yield Listing(id="settle-list")
        yield Lines(id="settle-foot")
        yield Lines(id="settle-keys")

    def on_mount(self) -> None:
        self.call_after_refresh(self.show)

    def on_resize(self) -> None:
        self.call_after_refresh(self.show)

    @property
    def at(self) -> int | None:
        """The first guess without an answer that is not left open."""
        return next((n for n in range(len(self.guesses)) if n not in self.answers and n not in self.left), None)

    def pressed(self, key: str, sign: str) -> None:
        if self.typed is not None:
            self._type(key, self.typed, sign)
        elif key == "q":
            self.dismiss()
        elif key == "u":
            self._back()
        elif self.at is None:
            if key == "enter":
                self.dismiss()
        elif key == "enter":
            self._answer({self.at: None})
        elif key == "down":
            self.done.append((self.at,))
            self.left.add(self.at)
        elif key == "space":
            self._answer_dish(self.guesses[self.at].loc[:4])
        elif sign.isdecimal():
            self.typed = Typed(sign)
        elif sign == "e":
            self.typed = Typed(self.guesses[self.at].text or "")
        self.show()

    def was_typed(self) -> None:
        self.show()

    def _type(self, key: str, typed: Typed, sign: str) -> None:
        self.said = ""
        if key == "enter":
            self._take_typed(typed.text)
        elif key == "escape" or (key == "backspace" and not typed.text):
            self.typed = None
        else:
            typed.press(key, sign)

    def _take_typed(self, typed: str) -> None:
        if self.at is None:
            return
        guess = self.guesses[self.at]
        try:
            value = self.settling.fits(guess, self.settling.retype(guess, typed))
        except ValueError as wrong:
            self.said = str(wrong)
        else:
            self._answer({self.at: value})

    def _answer_dish(self, dish: Loc) -> None:
        """All guesses of a dish that were not gone through, as they stand."""
        known = {*self.answers, *self.left}
        left = (n for n, guess in enumerate(self.guesses) if n not in known and guess.loc[:4] == dish)
        self._answer(dict.fromkeys(left))

    def _answer(self, answers: dict[int, str | None]) -> None:
        self.answers |= answers
        self.done.append(tuple(answers))
        self.typed = None

    def _back(self) -> None:
        for number in self.done.pop() if self.done else ():
            self.answers.pop(number, None)
            self.left.discard(number)

    def show(self) -> None:
        top, keys, foot = (self.query_one(f"#{id_}", Lines) for id_ in ("settle-top", "settle-keys", "settle-foot"))
        count = words.settled_of(len(self.answers), len(self.guesses))
        top.put([((f"{one_line(self.heading, 50)}   ", "accent"), (count, "soft"))])
        at = len(self.guesses) - 1 if self.at is None else self.at
        self.query_one(Listing).show([self._row(n) for n in range(len(self.guesses))], at)
        across = max(20, self.size.width - 2)
        told = self._foot(across)
        foot.styles.height = max(LEAST_FOOT, min(len(told), self.size.height - LEAST_ABOVE))
        foot.put(told)
        keys.put([((words.settle_keys(across, typing=self.typed is not None), "soft"),)])

    def _row(self, number: int) -> Line:
        guess, known = self.guesses[number], number in self.answers
        sign = shared.SIGN["finished"] if known else shared.SIGN["mind"] if guess.why else shared.SIGN["box"]
        value = (self.answers.get(number) or guess.text) if guess.text is not None else words.SETTLE_NO_LINE
        told = f"{sign} {fitted_text(guess.step, STEP_COLUMNS)}  {one_line(f'{guess.key}: {value}')}"
        return ((told, "done" if known else "text"),)

    def _foot(self, width: int) -> list[Line]:
        def told(text: str, role: str) -> list[Line]:
            return [((line, role),) for line in wrapped(one_line(text), width).splitlines()]

        if self.at is None:
            return told(words.SETTLE_LEFT if self.left else words.SETTLE_ALL_DONE, "accent")
        guess = self.guesses[self.at]
        value = guess.text if guess.text is not None else words.SETTLE_NO_LINE
        lines = [*told(f"{guess.course}: {guess.dish}: {guess.step}", "name"), *told(f"{guess.key}: {value}", "text")]
        if self.typed is None:
            lines += told(guess.why, "wary") if guess.why else told(words.SETTLE_DECIDES_NOTHING, "soft")
        else:
            read_as = words.settle_read_as(self.typed.text, self._read_as(guess))
            lines.append(((f"{shared.SIGN['chosen']} ", "accent"), *self.typed.line(width, read_as)))
        return [*lines, *told(self.said, "wary")]

    def _read_as(self, guess: Guess) -> str:
        """What the typed text would be, where it can be read."""
        try:
            return self.settling.retype(guess, self.typed.text if self.typed is not None else "")
        except ValueError:
            return ""


def fitted_text(text: str, columns: int) -> str:
    """Safe text at exactly so many columns."""
    return "".join(piece for piece, _ in fitted(((one_line(text), ""),), columns))


class SettleApp(DressedApp[None]):
    """One screen, until it is left."""

    def __init__(self, screen: SettleScreen, remembered: str | None) -> None:
        super().__init__(remembered=remembered)
        self.settling = screen

    def on_mount(self) -> None:
        self.dress()
        self.push_screen(self.settling, lambda _: self.exit())
