"""A run log for other eyes and other programs: as rows of a table, and with the guests' names taken out. Pure."""

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

import msgspec

from board.log.record import to_line
from board.run.events import EveningOpened, Event, NoteWritten

COLUMNS = (
    "log", "n", "at", "event", "slot", "part", "number", "minutes", "course", "dish", "celsius", "seconds", "text",
    "more",
)  # fmt: skip


def schema() -> dict[str, Any]:
    """The JSON Schema, draft 2020-12, of one line of a run log without its checksum."""
    (named,), parts = msgspec.json.schema_components([Event], ref_template="#/$defs/{name}")
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "platecall run log line",
        **named,
        "$defs": parts,
    }


def rows(name: str, events: Iterable[Event]) -> Iterator[tuple[str, ...]]:
    """A row an event, in `COLUMNS`; times ISO 8601 in UTC. `more`: what has no column, as JSON; a run sheet is left
    out."""
    for event in events:
        told: dict[str, Any] = msgspec.to_builtins(event)
        told.pop("sheet", None)
        row = {key: told.pop(key) for key in COLUMNS if told.get(key) is not None}
        more = msgspec.json.encode({k: v for k, v in told.items() if v is not None}).decode() if told else ""
        yield tuple(str({**row, "log": name, "more": more}.get(column, "")) for column in COLUMNS)


def as_csv(logs: Iterable[tuple[str, Sequence[Event]]]) -> str:
    """RFC 4180: a head row, CRLF. Text that a spreadsheet would reckon with is led by an apostrophe."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for name, events in logs:
        writer.writerows([_harmless(each) for each in row] for row in rows(name, events))
    return out.getvalue()


def _harmless(text: str) -> str:
    """A figure stays one; `=`, `+`, `-`, `@` and control signs begin a formula elsewhere."""
    if text[:1] in ("=", "+", "-", "@", "\t", "\r") and not re.fullmatch(r"-?\d+(\.\d+)?", text):
        return f"'{text}"
    return text


def without_names(events: Sequence[Event], names: Iterable[str], stand_in: str, *, notes: bool) -> tuple[Event, ...]:
    """The same evening, every name (whole words, in any capitals) replaced by `stand_in` and its number, longest
    names first; notes left out unless they are to stay. Checksums are made when lines are."""
    ordered = sorted({name.strip() for name in names if name.strip()}, key=lambda name: (-len(name), name))
    numbers = {name.casefold(): f"{stand_in} {n}" for n, name in enumerate(ordered, 1)}
    pattern = re.compile("|".join(rf"(?<!\w){re.escape(name)}(?!\w)" for name in ordered), re.IGNORECASE)

    def clean(value: Any) -> Any:
        if isinstance(value, str):
            return pattern.sub(lambda found: numbers[found[0].casefold()], value) if ordered else value
        if isinstance(value, dict):
            return {clean(key): clean(each) for key, each in value.items()}
        return [clean(each) for each in value] if isinstance(value, list) else value

    kept = [event for event in events if notes or not isinstance(event, NoteWritten)]
    numbered = {event.n: n for n, event in enumerate(kept, 1)}
    return tuple(_again(event, numbered, clean) for event in kept)


def _again(event: Event, numbered: dict[int, int], clean: Any) -> Event:
    """The event with its new number, and what it takes back by theirs. Its kind and its times are no words."""
    told = msgspec.to_builtins(event)
    made = {**clean(told), "event": told["event"], "n": numbered[event.n], "at": told["at"]}
    if "targets" in told:
        made["targets"] = [numbered[target] for target in told["targets"] if target in numbered]
    if isinstance(event, EveningOpened):
        made["sheet"] = {**made["sheet"], "zone": event.sheet.zone, "digest": event.sheet.digest}
    return msgspec.convert(made, Event)  # type: ignore[arg-type]  # a union is a type to msgspec


def as_lines(events: Iterable[Event]) -> bytes:
    """A whole log, each line with its checksum."""
    return b"".join(map(to_line, events))
