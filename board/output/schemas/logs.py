"""What `logs --json` prints."""

from typing import TypedDict

from board.output.schemas.units import Date, Minutes


class LogForm(TypedDict):
    """`late_minutes`: of the latest course, null where none was served or that was only said afterwards (`said`)."""

    path: str
    date: Date
    event: str
    rehearsal: bool
    ended: str
    late_minutes: Minutes | None
    said: bool


class LogsForm(TypedDict):
    """By date."""

    logs: list[LogForm]
