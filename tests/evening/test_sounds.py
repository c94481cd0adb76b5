"""Which calls are heard, and what is begun with the same key. By hand, from the little supper of conftest; three sounds
and what goes first are ours."""

import msgspec
import pytest

from board.evening.calls import Sound
from board.evening.insist import at_table, strokes, to_ring
from board.evening.wishes import Done, Settle, TakeBack
from board.sheet.run_sheet import Dependency, RunSheet
from board.view.board import Viewer
from tests.conftest import Host, at, slot


def sounds(host: Host, when: str) -> list[tuple[str, Sound | None]]:
    return [(call.slot, call.sound) for call in host.at(when).due]


def play(host: Host, *answers: tuple[str, str]) -> None:
    for clock, id_ in answers:
        host.at(clock)
        host.answer(id_)


TO_THE_STEW = (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew"))


def test_three_sounds(host: Host) -> None:
    assert sounds(host, "17:00") == [("chop", "begin")]
    play(host, *TO_THE_STEW)
    assert sounds(host, "17:50") == [("stew", "look-in")]
    play(host, ("17:50", "stew"), ("18:10", "stew"))
    assert ("stew", "burns") in sounds(host, "18:30")


def test_what_must_not_wait_is_what_is_heard(host: Host) -> None:
    play(host, *TO_THE_STEW)
    due = host.at("18:30").due
    assert strokes(due) == 3
    assert strokes([call for call in due if call.sound == "begin"]) == 1


def test_the_end_of_work_in_hand_is_never_heard_and_never_presses(host: Host) -> None:
    play(host, ("17:00", "chop"))
    heard: dict[tuple[str, str, int], object] = {}
    for when in ("17:20", "17:21", "17:25", "17:29"):
        present = host.at(when)
        rings, _ = to_ring(present.due, present.now, heard)  # type: ignore[arg-type]
        assert rings == []
    view = Viewer(host.evening.sheet).view(host.at("17:29"))
    assert (view.due[0].headline, view.due[0].insistence) == ("Still at it? chop", 1)


def test_what_follows_for_the_same_hands_is_heard_once_and_begun_with_the_same_key(little: RunSheet) -> None:
    """A sauce that waits for the chopping: at 18:35 both are one press; taken back with one, too."""
    sauce = slot("sauce", "17:20", "17:30", waits=(Dependency("chop", "end", 0, "order"),), then=("serve",))
    slots = tuple(sauce if each.id == "sauce" else each for each in little.slots)
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    play(host, ("17:00", "chop"))

    call = host.at("17:20").due[0]
    assert (call.slot, call.in_hand, call.then, call.sound) == ("chop", True, "sauce", "begin")
    rings, heard = to_ring(host.at("17:20").due, at("17:20"), {})
    assert [each.slot for each in rings] == ["chop"]
    assert to_ring(host.at("17:28").due, at("17:28"), heard)[0] == []

    assert host.wish(Done("chop", "end", then="sauce")) is None
    states = host.evening.state.steps
    assert (states["chop"].status, states["sauce"].status) == ("finished", "under-way")
    host.wish(TakeBack())
    states = host.evening.state.steps
    assert (states["chop"].status, states["sauce"].status) == ("under-way", "to-come")


def test_two_keys_pressed_are_taken_back_one_by_one(host: Host) -> None:
    play(host, *TO_THE_STEW[:2])
    host.at("18:35")
    host.wish(Done("sauce", "start"))
    host.wish(TakeBack())
    assert host.evening.state.steps["chop"].status == "finished"
    assert host.evening.state.steps["sauce"].status == "to-come"


def test_while_guests_are_at_the_table_only_what_burns_is_heard(host: Host) -> None:
    play(host, *TO_THE_STEW, ("18:30", "arrive"))
    host.at("18:35")
    due = host.evening.tick().due
    assert not at_table(host.evening.state)

    heard, _ = to_ring(due, at("18:35"), {}, at_table=True)
    assert [call.slot for call in heard] == ["stew"]
    assert {call.slot for call in to_ring(due, at("18:35"), {})[0]} >= {"stew", "sauce"}


def test_the_table_is_taken_from_the_serving_to_the_clearing(host: Host) -> None:
    play(host, *TO_THE_STEW, ("18:30", "arrive"), ("18:30", "stew"), ("18:35", "sauce"), ("18:45", "sauce"))
    host.at("18:50")
    host.wish(Done("serve", "start"))
    assert not at_table(host.evening.state)
    host.at("19:00")
    host.wish(Done("serve", "end"))
    assert at_table(host.evening.state)
    host.at("19:30")
    host.wish(Settle("clear"))
    assert not at_table(host.evening.state)


def test_the_guests_at_the_door_come_before_what_burns(host: Host) -> None:
    play(host, *TO_THE_STEW)
    assert [call.slot for call in host.at("18:30").due][:2] == ["arrive", "stew"]


def test_what_must_begin_stands_above_the_end_of_work_in_hand(host: Host) -> None:
    play(host, *TO_THE_STEW, ("18:30", "arrive"), ("18:30", "stew"), ("18:35", "sauce"))
    host.wish(Done("serve", "start"))
    due = host.at("18:52").due
    assert [(call.slot, call.in_hand) for call in due][-1] == ("sauce", True)


def test_why_the_first_stands_first_is_said(host: Host) -> None:
    view = Viewer(host.evening.sheet).view(host.at("17:25"))
    assert view.due[0].why == ""
    late = Viewer(host.evening.sheet).view(host.at("18:00"))
    assert late.due[0].why == "holds up Stew"


@pytest.mark.parametrize("key", ["chop", "sauce"])
def test_one_key_ends_what_was_in_hand_and_begins_what_stands_on_top(little: RunSheet, key: str) -> None:
    """The sauce waits for nothing but the hands: it has a call of its own, and its key says that the chopping is
    over."""
    sauce = slot("sauce", "17:20", "17:30", waits=(Dependency("chop", "end", 0, "hands"),), then=("serve",))
    slots = tuple(sauce if each.id == "sauce" else each for each in little.slots)
    host = Host(msgspec.structs.replace(little, slots=slots), at("16:58"))
    play(host, ("17:00", "chop"))

    view = Viewer(host.evening.sheet).view(host.at("17:20"))
    call = next(each for each in view.due if each.key[0] == key)
    if key == "sauce":
        assert call.ends == ("chop", "end", 0)
        assert "chop done" in call.answer
        assert view.due[0].key[0] == "sauce"
    else:
        assert call.then == "sauce"
        assert "sauce begun" in call.answer
