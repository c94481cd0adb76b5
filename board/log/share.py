"""A run log for other eyes and other programs: as rows of a table, and with the guests' names taken out. Pure."""

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

import msgspec

from board.evening.events import EveningOpened, Event, NoteWritten, TakenBack
from board.log.record import Short, opening_lines, to_line

COLUMNS = (
    "log", "n", "at", "event", "slot", "part", "number", "minutes", "course", "dish", "celsius", "seconds", "text",
    "more",
)  # fmt: skip


def schema() -> dict[str, Any]:
    """The JSON Schema, draft 2020-12, of one line of a run log without its checksum."""
    (named, short), parts = msgspec.json.schema_components([Event, Short], ref_template="#/$defs/{name}")
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "platecall run log line",
        "anyOf": [*named["anyOf"], short],
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


# Keys whose words are the program's own, or times.
_OURS = frozenset((
    "event", "at", "part", "kind", "lane", "anchor", "reason", "zone", "digest", "date", "start", "end", "arrive",
    "wanted", "served", "offered", "gained", "rules", "cooks", "where", "code", "law", "finding", "topic",
))  # fmt: skip


def without_names(events: Sequence[Event], names: Iterable[str], stand_in: str, *, notes: bool) -> tuple[Event, ...]:
    """The same evening, every name (whole words, in any capitals) replaced by `stand_in` and its number, longest
    names first; notes, those of evenings before too, left out unless they are to stay. Checksums are made when lines
    are."""
    said = {tuple(_WORD.findall(name.casefold())): None for name in names}
    ordered = sorted((each for each in said if each), key=lambda each: (-len(" ".join(each)), each))
    numbers = {each: f"{stand_in} {n}" for n, each in enumerate(ordered, 1)}
    # An id joins the words of a name by other signs than a title does.
    any_of_them = "|".join(r"[\W_]+".join(map(re.escape, each)) for each in ordered)
    pattern = re.compile(rf"(?<![^\W_])(?:{any_of_them})(?![^\W_])", re.IGNORECASE)

    def clean(value: Any) -> Any:
        if isinstance(value, str):
            return pattern.sub(lambda it: numbers.get(tuple(_WORD.findall(it[0].casefold())), stand_in), value)
        if isinstance(value, dict):
            stays = {key: each for key, each in value.items() if notes or key != "noted"}
            return {key: each if key in _OURS else clean(each) for key, each in stays.items()}
        return [clean(each) for each in value] if isinstance(value, list | tuple) else value

    kept = [event for event in events if notes or not isinstance(event, NoteWritten)]
    numbered = {event.n: n for n, event in enumerate(kept, 1)}
    return tuple(_again(event, numbered, clean if ordered else lambda value: value) for event in kept)


_WORD = re.compile(r"[^\W_]+")


def _again(event: Event, numbered: dict[int, int], clean: Any) -> Event:
    """The event with its new number, and what it takes back by theirs."""
    made = {**clean(msgspec.to_builtins(event)), "n": numbered[event.n]}
    if isinstance(event, TakenBack):
        made["targets"] = [numbered[target] for target in event.targets if target in numbered]
    again: Event = msgspec.convert(made, Event)
    return again


def as_lines(events: Iterable[Event]) -> bytes:
    """A whole log, each line with its checksum."""
    return b"".join(opening_lines(each) if isinstance(each, EveningOpened) else to_line(each) for each in events)
