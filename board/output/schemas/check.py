"""What `check --json` prints."""

from typing import Annotated, Literal, TypedDict

from msgspec import Meta

from board.output.schemas.units import At, Count

WeightWord = Literal["stop", "ask", "mind", "note"]


class CountsForm(TypedDict):
    stop: Count
    ask: Count
    mind: Count
    note: Count


class HoldsForm(TypedDict):
    """`holds`: nothing was given up."""

    proved: bool
    holds: bool
    given_up: list[str]


class PastForm(TypedDict):
    """What was to be by now: `guests` arrive, or the first `work` begin. `now`: when it was looked at."""

    what: Literal["guests", "work"]
    due: At
    now: At
    text: str


class PlaceForm(TypedDict):
    file: str
    line: Annotated[int, Meta(ge=1)]
    column: Annotated[int, Meta(ge=1)]


class AboutForm(TypedDict, total=False):
    """What does not apply is left out."""

    tasks: list[str]
    course: str
    dish: str
    guests: list[str]
    foods: list[str]
    tool: str


class FindingForm(TypedDict):
    """`code`: its stable name, as `food 10`. `safety`: it could hurt somebody who eats it, `severe`: kill. `source`:
    what it stands on, empty if on nothing published."""

    code: str
    weight: WeightWord
    safety: bool
    severe: bool
    message: str
    mend: str
    source: str
    place: PlaceForm | None
    about: AboutForm


class AssumedForm(TypedDict):
    """`steps`: ids of the work it decides."""

    kind: str
    values: dict[str, bool | int | float | str | tuple[str, ...]]
    about: list[str]
    steps: list[str]
    text: str


class TrustedForm(TypedDict):
    """What stands on the host's word."""

    word: str
    about: str
    settles: str


class CautionForm(TypedDict):
    topic: str
    about: list[str]
    text: str


class CheckForm(TypedDict):
    """`guests`: seats at the table. `pieces`: steps and jobs, those that nobody wrote among them. `timetable`: null
    where stops must be mended first. `past`: null where nothing of it is known to be. `findings`: the worst first.
    Words are the plan's own."""

    plan: str
    guests: Count
    pieces: Count
    counts: CountsForm
    timetable: HoldsForm | None
    past: PastForm | None
    findings: list[FindingForm]
    assumed: list[AssumedForm]
    on_your_word: list[TrustedForm]
    cautions: list[CautionForm]
