"""Logs for other programs and other eyes: CSV by RFC 4180 (read back by Python's reader), JSON Schema 2020-12 (checked
with jsonschema), names taken out."""

import csv
import io
import json

import jsonschema
import msgspec

from board.evening.events import EveningOpened, Event, NoteWritten, StepFinished, StepStarted, StopsAccepted, TakenBack
from board.log.read import read_log
from board.log.record import to_line
from board.log.share import COLUMNS, as_csv, as_lines, schema, without_names
from board.sheet.run_sheet import RunSheet
from board.sheet.told import (
    Because,
    Caution,
    Chain,
    FightForOven,
    Fights,
    GivenUp,
    Held,
    Late,
    Longest,
    NotReady,
    PastClock,
    PastLimit,
    Stop,
    Taker,
)
from tests.conftest import at


def evening(sheet: RunSheet) -> list[Event]:
    slots = tuple(msgspec.structs.replace(s, named="chop for Aunt Maud") if s.id == "chop" else s for s in sheet.slots)
    return [
        EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=msgspec.structs.replace(sheet, slots=slots)),
        NoteWritten(n=2, at=at("17:00"), text="=1+1, said INES", slot="chop"),
        StepStarted(n=3, at=at("17:01"), slot="chop"),
        TakenBack(n=4, at=at("17:02"), targets=(3,)),
        NoteWritten(n=5, at=at("17:03"), text="Inestimable"),
        StepStarted(n=6, at=at("17:04"), slot="chop"),
        StepFinished(n=7, at=at("17:24"), slot="chop"),
    ]


def test_every_line_fits_the_schema_and_a_wrong_one_does_not(little: RunSheet) -> None:
    judge = jsonschema.Draft202012Validator(schema())
    lines = [json.loads(to_line(event)) for event in evening(little)]

    jsonschema.Draft202012Validator.check_schema(schema())
    assert all(judge.is_valid(line) for line in lines)
    assert not judge.is_valid({**lines[2], "event": "StepBegun"})
    assert not judge.is_valid({key: value for key, value in lines[2].items() if key != "slot"})


def test_csv_reads_back_and_holds_no_formula(little: RunSheet) -> None:
    text = as_csv([("a.jsonl", evening(little))])
    head, *body = csv.reader(io.StringIO(text, newline=""))

    assert tuple(head) == COLUMNS
    assert text.count("\r\n") == len(body) + 1 == 8
    assert body[1][head.index("text")] == "'=1+1, said INES"
    assert [row[head.index("n")] for row in body] == [str(n) for n in range(1, 8)]
    assert json.loads(body[3][head.index("more")]) == {"targets": [3]}
    assert all("slots" not in row[-1] for row in body)  # the run sheet is no row


def test_a_guest_called_like_a_code_spoils_none(little: RunSheet) -> None:
    """What a sheet gives up and must be mended is told by codes, and the steps it is about lose their names."""
    at_oven = (Taker("chop-for-maud", True, at("17:00"), at("17:20"), low=80, high=100),)
    given = (
        GivenUp(Late("Stew", 5), Chain((Held("chop-for-maud", at("17:20"), "order"),)), 5),
        GivenUp(PastClock("Stew for Maud", "Stew", 135, 120), Longest("chop-for-maud", "kept", 90), 15),
        GivenUp(NotReady("chop-for-maud", "stew"), Because("no-hours-left"), 5),
        GivenUp(PastLimit("chop-for-maud", "stew", 40, 30, "hot"), Fights((FightForOven("oven", 2, at_oven),)), 10),
    )
    stops = (Stop("food 1", "chop for Maud: not done"), "an old sentence about Maud")
    sheet = msgspec.structs.replace(
        little, given_up=given, stops=stops, cautions=(Caution("alcohol", ("Maud's cake",)),)
    )
    events = [
        EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=sheet),
        StopsAccepted(n=2, at=at("16:59"), stops=stops),
    ]
    judge = jsonschema.Draft202012Validator(schema())
    names = [
        "Late",
        "Chain",
        "Because",
        "Oven",
        "Food",
        "Order",
        "Hours",
        "Alcohol",
        "Not",
        "Past",
        "Clash",
        "Maud",
        "Kept",
    ]
    after = without_names(events, names, "guest", notes=True)

    assert all(judge.is_valid(json.loads(to_line(event))) for event in (*events, *after))
    assert isinstance(after[0], EveningOpened)
    assert [type(each.what) for each in after[0].sheet.given_up] == [type(each.what) for each in given]
    assert [type(each.why) for each in after[0].sheet.given_up] == [type(each.why) for each in given]
    assert "maud" not in as_lines(after).decode().casefold()


def test_names_go_and_the_log_is_whole(little: RunSheet) -> None:
    events = without_names(evening(little), ["Ines", "Aunt  Maud", "end"], "guest", notes=True)
    data = as_lines(events)
    contents = read_log(data, "copy")

    assert contents.dropped is None
    assert len(contents.events) == 6
    assert b"Maud" not in data
    assert b"INES" not in data
    assert b"chop for guest 1" in data
    assert b"Inestimable" in data  # whole words only
    assert next(e.text for e in contents.events if isinstance(e, NoteWritten)) == "=1+1, said guest 2"


def test_without_notes_what_is_taken_back_is_still_the_same(little: RunSheet) -> None:
    events = without_names(evening(little), ["Ines"], "guest", notes=False)

    assert [event.n for event in events] == [1, 2, 3, 4, 5]
    assert [event.targets for event in events if isinstance(event, TakenBack)] == [(2,)]
    assert read_log(as_lines(events), "copy").dropped is None


def test_without_notes_those_of_evenings_before_go_too(little: RunSheet) -> None:
    slots = tuple(msgspec.structs.replace(s, noted=("her birthday",)) for s in little.slots)
    opened = EveningOpened(
        n=1, at=at("16:58"), rehearsal=False, sheet=msgspec.structs.replace(little, slots=slots, noted=("too loud",))
    )

    assert b"birthday" not in as_lines(without_names([opened], ["Ines"], "guest", notes=False))
    assert b"too loud" not in as_lines(without_names([opened], ["Ines"], "guest", notes=False))
    assert b"birthday" in as_lines(without_names([opened], ["Ines"], "guest", notes=True))


def test_names_in_ids_go_everywhere_alike(little: RunSheet) -> None:
    def renamed(id_: str) -> str:
        return id_.replace("chop", "aunt-maud-s-soup/chop")

    slots = tuple(
        msgspec.structs.replace(
            s, id=renamed(s.id), waits=tuple(msgspec.structs.replace(w, after=renamed(w.after)) for w in s.waits)
        )
        for s in little.slots
    )
    sheet = msgspec.structs.replace(little, slots=slots)
    first: list[Event] = [
        EveningOpened(n=1, at=at("16:58"), rehearsal=False, sheet=sheet),
        StepStarted(n=2, at=at("17:01"), slot="aunt-maud-s-soup/chop"),
    ]
    opened, started = without_names(first, ["Aunt Maud"], "guest", notes=True)

    assert isinstance(opened, EveningOpened)
    assert isinstance(started, StepStarted)
    assert started.slot == "guest 1-s-soup/chop"
    assert started.slot in opened.sheet.by_id()
    assert {w.after for s in opened.sheet.slots for w in s.waits} <= set(opened.sheet.by_id())


def test_no_names_change_nothing_but_the_notes(little: RunSheet) -> None:
    assert list(without_names(evening(little), [" "], "guest", notes=True)) == evening(little)
