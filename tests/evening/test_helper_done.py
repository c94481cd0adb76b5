"""A helper's answer from elsewhere: decided as at the board, but for what only the board asks."""

import msgspec
import pytest

from board.evening import words
from board.evening.decide import decide
from board.evening.events import Event, StepFinished, StepStarted
from board.evening.hands import called
from board.evening.wishes import Done, HelperDone, Refusal, TakeReading
from board.log.record import from_line, to_line
from board.sheet.run_sheet import Attended, RunSheet
from tests.conftest import Host, at


@pytest.fixture
def helped(little: RunSheet) -> RunSheet:
    """Mira chops and makes the sauce; the stew is the host's, but for the looks into it, which are hers."""

    def shared(part: Attended, id_: str) -> Attended:
        mine = id_ in ("chop", "sauce") or part.kind == "look-in"
        return msgspec.structs.replace(part, who="Mira") if mine else part

    slots = tuple(
        msgspec.structs.replace(slot, attended=tuple(shared(part, slot.id) for part in slot.attended))
        for slot in little.slots
    )
    return msgspec.structs.replace(little, slots=slots, hands=("host", "Mira"))


def answers(host: Host) -> list[Event]:
    return [event for event in host.evening.told if isinstance(event, StepStarted | StepFinished)]


def test_a_call_is_for_those_with_hands_on_that_part_of_it(helped: RunSheet) -> None:
    slots = helped.by_id()

    assert called(helped, slots["chop"], "start") == {"Mira"}
    assert called(helped, slots["stew"], "look-in") == {"Mira"}
    assert called(helped, slots["stew"], "end") == {"host"}
    assert called(helped, slots["stew"], "start") == {"host", "Mira"}  # nobody's hands begin it
    assert called(helped, slots["arrive"], "start") == {"host"}  # nobody's hands are on it


def test_it_does_what_the_boards_own_answer_does_and_says_who_gave_it(helped: RunSheet) -> None:
    by_host, by_mira = Host(helped, at("17:00")), Host(helped, at("17:00"))
    for clock, part in (("17:00", "start"), ("17:20", "end")):
        by_host.at(clock)
        by_mira.at(clock)
        assert by_host.wish(Done("chop", part)) is None  # type: ignore[arg-type]
        assert by_mira.wish(HelperDone("chop", part, 0, "Mira")) is None  # type: ignore[arg-type]

    assert by_mira.evening.state.steps == by_host.evening.state.steps
    assert [getattr(event, "by") for event in answers(by_mira)] == ["Mira", "Mira"]  # noqa: B009
    assert [getattr(event, "by") for event in answers(by_host)] == [msgspec.UNSET] * 2  # noqa: B009
    assert [from_line(to_line(event)) for event in answers(by_mira)] == answers(by_mira)


def test_a_line_of_the_boards_own_answer_is_as_it_always_was() -> None:
    """So that an older log keeps its checksums, and an older program reads what this one writes."""
    line = to_line(StepStarted(n=3, at=at("17:00"), slot="chop"))

    assert line.startswith(b'{"event":"StepStarted","n":3,"at":"2026-11-28T17:00:00Z","slot":"chop","crc":')


def test_pressed_twice_it_begins_and_does_not_end(helped: RunSheet) -> None:
    host = Host(helped, at("17:00"))
    host.wish(HelperDone("chop", "start", 0, "Mira"))

    refused = host.wish(HelperDone("chop", "start", 0, "Mira"))

    assert refused == Refusal(words.answered_already("chop"))
    assert host.evening.state.steps["chop"].status == "under-way"


@pytest.mark.parametrize(
    ("wish", "refused"),
    [
        (HelperDone("stew", "start", 0, "Otto"), words.not_theirs("stew", "Otto")),
        (HelperDone("serve", "start", 0, "Mira"), words.not_theirs("serve", "Mira")),
        (HelperDone("soup", "start", 0, "Mira"), words.NO_SUCH_CALL),
        (HelperDone("chop", "end", 0, "Mira"), words.answered_already("chop")),  # not begun: no call of that kind
        (HelperDone("stew", "start", 0, "Mira"), words.waits_for_first("stew", "chop")),
        (HelperDone("stew", "look-in", 0, "Mira"), words.answered_already("stew")),
    ],
)
def test_what_is_not_theirs_or_not_open_is_refused(helped: RunSheet, wish: HelperDone, refused: str) -> None:
    host = Host(helped, at("17:00"))

    assert host.wish(wish) == Refusal(refused)
    assert len(host.evening.told) == 1  # the opening


def test_a_look_is_taken_once_and_only_if_there_is_one(helped: RunSheet) -> None:
    host = Host(helped, at("17:00"))
    host.wish(Done("chop", "start"))
    host.wish(Done("chop", "end"))
    host.at("17:30")
    host.wish(Done("stew", "start"))
    host.at("17:50")

    assert host.wish(HelperDone("stew", "look-in", 0, "Mira")) is None
    assert isinstance(host.wish(HelperDone("stew", "look-in", 0, "Mira")), Refusal)
    assert host.wish(HelperDone("stew", "look-in", 1, "Mira")) is None
    assert isinstance(host.wish(HelperDone("stew", "look-in", 2, "Mira")), Refusal)


def test_what_a_probe_ends_only_the_board_ends(helped: RunSheet) -> None:
    """The stew wants 74 °C in its middle."""
    host = Host(helped, at("17:00"))
    for part in ("start", "end"):
        host.wish(Done("chop", part))  # type: ignore[arg-type]
    host.wish(Done("stew", "start"))
    host.at("18:30")
    ends = HelperDone("stew", "end", 0, "host")

    assert host.wish(ends) == Refusal(words.read_at_the_board("stew"))
    host.wish(TakeReading("stew", 60.0))
    assert host.wish(ends) == Refusal(words.read_at_the_board("stew"))
    host.wish(TakeReading("stew", 75.0))

    assert isinstance(decide(host.evening.state, ends, at("18:40")), list)
