"""What `lessons --book --json` prints."""

from typing import TypedDict

from board.output.schemas.units import Celsius, Count, Date, PartMinutes, Range80


class FiguresForm(TypedDict):
    low_minutes: PartMinutes
    likely_minutes: PartMinutes
    high_minutes: PartMinutes
    range_80_minutes: Range80
    evenings: Count


class BookStepForm(FiguresForm):
    step: str
    lane: str


class BookKindForm(FiguresForm):
    first_word: str
    lane: str


class BookOvenForm(FiguresForm):
    oven: str
    way: str
    from_celsius: Celsius
    to_celsius: Celsius


class BookEveningForm(TypedDict):
    mark: str
    date: Date
    plan: str


class BookForm(TypedDict):
    """The cook's book: how long work takes, and ovens, over all plans."""

    evenings: list[BookEveningForm]
    steps: list[BookStepForm]
    kinds: list[BookKindForm]
    ovens: list[BookOvenForm]
