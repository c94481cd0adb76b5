"""What `odds --json` prints."""

from typing import TypedDict

from board.output.schemas.units import At, Count, PartMinutes, Share


class CauseForm(TypedDict):
    kind: str
    id: str
    name: str


class SpreadForm(TypedDict):
    """So many evenings on which the course went out so many minutes late."""

    minutes: int
    evenings: Count


class CourseOddsForm(TypedDict):
    """`by`: share of evenings → when it is out."""

    name: str
    wanted: At
    planned: At
    within_5_min: Share
    by: dict[str, At]
    mean_late_minutes: PartMinutes
    spread: list[SpreadForm]


class BlameForm(CauseForm):
    course: str
    share: Share


class GainForm(TypedDict):
    name: str
    gain: float
    saved_minutes: PartMinutes


class HelpForm(CauseForm):
    courses: list[GainForm]


class AssumedSpreadsForm(TypedDict):
    spreads: Count
    sittings: Count


class OddsForm(TypedDict):
    """The chance that each course goes out on time. `error`: of a share, by chance alone."""

    plan: str
    zone: str
    evenings: Count
    seed: Count
    error: Share
    pieces: Count
    spreads: Count
    sittings: Count
    assumed: AssumedSpreadsForm
    courses: list[CourseOddsForm]
    blame: list[BlameForm]
    help: list[HelpForm]
