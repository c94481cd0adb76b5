"""Run logs that an earlier version wrote are read, gone on with and looked back on as ever.

`data/` holds two evenings as they were written while sheets still held sentences: the lantern supper with all that can
befall it, and a table whose sheet gives something up and carries stops, cautions and plates. Beside each stand its
figures, as that version reckoned them.
"""

import gzip
import io
import json
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from rich.console import Console

from board.base.clock import StoppedClock
from board.evening.calls import Call
from board.evening.events import EveningOpened, Event, SheetTaken
from board.evening.fold import fold_all
from board.evening.state import begin
from board.log.read import LogContents, read_log
from board.log.record import to_line
from board.log.write import RunLog
from board.output.leaves import WALL, Leaf, leaves
from board.output.sheet import print_sheet
from board.output.sheet_form import outside_form
from board.rehearsal.player import play
from board.review.measure import measured
from board.review.trace import traced
from board.session.session import open_evening
from board.sheet.run_sheet import RunSheet
from board.view.board import headline

DATA = Path(__file__).parent / "data"
EVENINGS = ("lantern-evening", "harvest-evening")


def data_of(name: str) -> bytes:
    return gzip.decompress((DATA / f"{name}.jsonl.gz").read_bytes())


def contents(name: str) -> LogContents:
    return read_log(data_of(name), name)


def figures(opened: EveningOpened, events: tuple[Event, ...], mark: str) -> dict[str, Any]:
    """What a review reckons, as JSON."""
    state = fold_all(begin(opened.sheet), [opened, *events])
    found, late = measured(state, opened), traced(state)
    return {
        "courses": [[c.name, _iso(c.wanted), _iso(c.planned), _iso(c.served), c.pushed] for c in found.courses],
        "steps": [[s.slot.id, s.status, _iso(s.started), _iso(s.finished), s.answered_late] for s in found.steps],
        "kept": [[k.slot.id, k.stood_minutes, k.limit_minutes] for k in found.kept],
        "readings": [[r.slot.id, r.celsius, r.lacks] for r in found.readings],
        "unread": [s.slot.id for s in found.unread],
        "notes": [[n.text, n.slot] for n in found.notes],
        "slips": [[type(s).__name__, s.n] for s in found.slips],
        "put away": [[p.course, _iso(p.at), p.dish, p.stood_minutes, p.limit_minutes] for p in found.put_away],
        "causes": [[t.course, t.late_minutes, [[x.slot.id, x.why, x.minutes] for x in t.links]] for t in late],
        "stops": len(found.stops),
        "mark": mark,
    }  # fmt: skip


def _iso(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()


@pytest.mark.parametrize("name", EVENINGS)
def test_every_line_is_read_and_written_again_it_says_the_same(name: str) -> None:
    data, found = data_of(name), contents(name)
    again = read_log(b"".join(map(to_line, (found.opened, *found.events))), name)

    assert (found.sound_bytes, found.dropped) == (len(data), None)
    assert (again.opened, again.events) == (found.opened, found.events)


@pytest.mark.parametrize("name", EVENINGS)
def test_it_is_looked_back_on_with_the_figures_it_always_had(name: str) -> None:
    found = contents(name)

    assert figures(found.opened, found.events, found.mark) == json.loads(
        (DATA / f"{name}.json").read_text(encoding="utf-8")
    )


@pytest.mark.parametrize("name", EVENINGS)
@pytest.mark.parametrize("share", [0.3, 0.9])
def test_it_is_gone_on_with_from_where_it_broke_off(name: str, share: float, tmp_path: Path) -> None:
    lines = data_of(name).splitlines(keepends=True)
    path = tmp_path / "evening.jsonl"
    path.write_bytes(b"".join(lines[: round(len(lines) * share)]))
    before = read_log(path.read_bytes(), name)
    clock = StoppedClock(before.events[-1].at)
    log = RunLog(path)
    evening = open_evening(before.opened.sheet, clock, log, rehearsal=True)
    list(play(evening, clock))
    log.close()
    after = read_log(path.read_bytes(), name)

    assert after.dropped is None
    assert after.events[: len(before.events)] == before.events
    assert all(
        course.served
        for course in measured(fold_all(begin(after.opened.sheet), [after.opened, *after.events]), after.opened).courses
    )


def sheets(found: LogContents) -> list[RunSheet]:
    return [found.opened.sheet, *(event.sheet for event in found.events if isinstance(event, SheetTaken))]


def stored_sheets(name: str) -> list[dict[str, Any]]:
    """The same as they stand in the file."""
    return [line["sheet"] for line in map(json.loads, data_of(name).splitlines()) if "sheet" in line]


@pytest.mark.parametrize("name", EVENINGS)
def test_sentences_that_it_holds_are_shown_as_they_stand(name: str) -> None:
    """On the sheet, on paper and at calls: what is given up, stops, cautions, plates, an oven's change; and to other
    programs what is assumed."""
    for sheet, stored in zip(sheets(contents(name)), stored_sheets(name), strict=True):
        out = Console(file=io.StringIO(), width=400)
        print_sheet(sheet, "day", out)
        (leaf,) = leaves(sheet, WALL)
        assert isinstance(out.file, io.StringIO)
        printed, paper = out.file.getvalue(), " ".join((*leaf.notes, *_told(leaf)))
        plates = [line for course in stored["courses"] for line in course["plates"]]
        for told in (printed, paper):
            for said in (*stored["stops"], *stored["cautions"], *plates):
                assert said in told
            for given in stored["given_up"]:
                assert f"{given['what']}: {given['why']}" in told
        assert outside_form(sheet, valid=True)["assumed"] == stored["assumed"]
        for slot, written in zip(sheet.slots, stored["slots"], strict=True):
            assert slot.name == written["name"]
            assert slot.name in printed
            if slot.kind == "heat":
                assert headline(slot, Call(slot.id, "start", 0, slot.start)) == written["call"]
                assert headline(slot, Call(slot.id, "end", 0, slot.end)) == written["call_at_end"]


def _told(leaf: Leaf) -> list[str]:
    return [text for day in leaf.days for row in day.rows for text in (row.what, *row.told)]
