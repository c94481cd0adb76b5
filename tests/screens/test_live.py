"""Every key of the board, by Pilot: key → wish → state → screen."""

import re

import pytest
from textual.widgets import Input

from board.base import words as shared
from board.base.clock import VirtualClock
from board.evening.events import NoteWritten
from board.evening.wishes import Done
from board.log.write import Unkept
from board.screens import words
from board.screens.ask import HelpScreen, LeaveScreen, NoteScreen, PushScreen
from board.screens.live import LiveScreen
from board.screens.rehearsing import Rehearsal
from board.view import words as view_words
from tests.conftest import at
from tests.screens.conftest import Kitchen

SIZE = (120, 36)


async def test_before_the_first_call_the_board_says_how_long_the_host_is_free(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        assert "Next, in 2 min: " in kitchen.shown()
        assert kitchen.chime.rung == 0


async def test_a_call_rings_once_and_space_answers_it(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        kitchen.set("17:00")
        await pilot.pause()
        assert kitchen.chime.rung == 1
        assert "space begun" in kitchen.shown()

        await pilot.press("space")

        assert kitchen.status("chop") == "under-way"
        await pilot.pause(0.01)
        kitchen.set("17:20")
        await pilot.press("enter")
        assert kitchen.status("chop") == "finished"


async def test_space_ends_what_hands_are_on_before_it_is_called(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        await pilot.press("space")
        await pilot.pause(0.01)
        kitchen.set("17:12")

        await pilot.press("space")

        assert kitchen.status("chop") == "finished"


async def test_a_key_that_bounces_answers_once(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("board.screens.steady.SETTLE_SECONDS", 30.0)
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")

        await pilot.press("space", "space", "space")

        assert kitchen.status("chop") == "under-way"


async def test_with_nothing_called_space_does_nothing_and_says_so(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("space")
        await pilot.pause()

        assert kitchen.status("chop") == "to-come"
        assert words.NO_CALL in kitchen.shown()


async def test_something_to_come_can_be_chosen_and_begun_early(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("down")
        await pilot.pause()
        assert words.NOT_YET_DUE in kitchen.shown()
        await pilot.press("space")

        assert kitchen.status("chop") == "under-way"


async def test_what_was_chosen_to_look_at_gives_way_to_what_is_called(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("down", "down")
        assert kitchen.app.live.chosen is not None

        kitchen.set("17:00")
        await pilot.pause()

        assert kitchen.app.live.chosen is None
        assert words.NOT_YET_DUE not in kitchen.shown()


@pytest.mark.parametrize("how", ["escape", "a while"])
async def test_what_waits_stays_in_sight_of_who_looks_ahead_and_comes_back(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch, how: str
) -> None:
    monkeypatch.setattr("board.screens.board.CHOSEN_SECONDS", 30.0 if how == "escape" else 0.05)
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        await pilot.pause()
        await pilot.press("down", "down", "down")
        if how == "escape":
            assert words.NOT_YET_DUE in kitchen.shown()
            assert "called just now" in kitchen.shown() or "hop" in kitchen.shown().split(words.NOT_YET_DUE)[1]
            await pilot.press("escape")
        else:
            await pilot.pause(0.2)
        await pilot.pause()

        assert words.NOT_YET_DUE not in kitchen.shown()
        assert "space begun" in kitchen.shown()


async def test_what_cannot_be_done_says_why(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("down", "down", "space")  # the stew, whose chopping is not done
        await pilot.pause()

        assert kitchen.status("stew") == "to-come"
        assert "waits for: chop" in kitchen.shown()


async def test_later_and_take_back(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")

        await pilot.press("l")
        assert kitchen.host.evening.state.steps["chop"].put_off
        await pilot.press("u")

        assert not kitchen.host.evening.state.steps["chop"].put_off
        await pilot.pause()
        assert shared.taken_back("chop") in kitchen.shown()


async def test_leave_out(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")

        await pilot.press("x")

        assert kitchen.status("chop") == "left-out"


async def test_arrived_seated_and_cleared(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("a")
        assert kitchen.status("arrive") == "finished"
        await pilot.press("a")
        await pilot.pause()
        assert shared.ARRIVED_ALREADY in kitchen.shown()
        await pilot.press("s")
        await pilot.pause()
        assert words.NOTHING_TO_SEAT in kitchen.shown()
        await pilot.press("c")
        await pilot.pause()
        assert words.NOTHING_TO_CLEAR in kitchen.shown()


async def test_push_shows_its_cost_first_and_is_taken_with_enter(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("p")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, PushScreen)
        assert "Stew 19:10, 10 min late" in kitchen.shown()
        await pilot.press("right")
        await pilot.pause()
        assert "Stew 19:15, 15 min late" in kitchen.shown()
        assert kitchen.host.evening.state.pushed == {}
        await pilot.press("enter")

        assert kitchen.host.evening.state.pushed == {"Stew": 15}


async def test_a_bouncing_enter_closes_a_note_once(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("n", "a")
        screen = kitchen.app.screen
        assert isinstance(screen, NoteScreen)

        field = screen.query_one(Input)
        field.post_message(Input.Submitted(field, "a"))
        field.post_message(Input.Submitted(field, "a"))
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert len(kitchen.host.evening.state.notes) == 1


async def test_a_key_meant_for_what_stood_there_before_answers_nothing(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr("board.screens.steady.SETTLE_SECONDS", 30.0)
        kitchen.host.clock.set(at("17:00"))
        kitchen.app.live.tick()  # the call comes up as the thumb comes down

        await pilot.press("space")

        assert kitchen.status("chop") == "to-come"


async def test_a_key_that_bounces_out_of_a_push_answers_nothing(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        monkeypatch.setattr("board.screens.steady.SETTLE_SECONDS", 30.0)

        await pilot.press("p", "space", "space")
        await pilot.pause()

        assert kitchen.host.evening.state.pushed == {"Stew": 10}
        assert kitchen.status("chop") == "to-come"


async def test_a_push_can_be_looked_at_with_a_full_disk(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(events: object) -> None:
        raise OSError(28, "No space left on device")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr(kitchen.host.evening.keeper, "append", full)
        kitchen.set("17:00")

        await pilot.press("p")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, PushScreen)


async def test_a_tick_that_fails_does_not_ring_again_for_old_calls(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken() -> None:
        raise OSError(28, "No space left on device")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        assert kitchen.chime.rung == 1
        monkeypatch.setattr(kitchen.host.evening, "tick", broken)

        kitchen.app.live.tick()
        kitchen.app.live.tick()

        assert kitchen.chime.rung == 1


async def test_a_fault_in_a_tick_never_ends_the_board(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken() -> None:
        raise ZeroDivisionError("for a test")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr(kitchen.host.evening, "tick", broken)

        kitchen.app.live.tick()
        await pilot.pause()

        assert "for a test" in kitchen.shown()
        assert kitchen.app.is_running


@pytest.mark.parametrize("size", [(60, 18), (80, 20), (40, 12)])
async def test_in_a_small_window_the_call_the_course_and_the_keys_remain(
    kitchen: Kitchen, size: tuple[int, int]
) -> None:
    async with kitchen.app.run_test(size=size) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        await pilot.pause()

        text = kitchen.shown()
        assert "20 min" in text
        assert f"space {view_words.DONE_BEGIN}" in text
        assert size[1] <= 12 or "Stew at 19:00, in 2 h 00" in text
        assert "? help" in text


async def test_push_can_be_left_with_escape(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("p", "escape")

        assert kitchen.host.evening.state.pushed == {}
        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_a_note_is_kept_as_typed_markup_and_all(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")

        await pilot.press("n")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, NoteScreen)
        await pilot.press(*"salt [/b] it", "enter")
        await pilot.pause()

        note = kitchen.host.evening.state.notes[0]
        assert (note.text, note.slot) == ("salt [/b] it", "chop")
        assert isinstance(kitchen.host.evening.state.history[-1], NoteWritten)


async def test_help_fits_the_smallest_usual_window(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()

        await pilot.press("question_mark")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, HelpScreen)
        for key, _, meaning in words.KEYS_EVENING:
            assert (f"{key:>7}  {meaning}" in kitchen.shown()) == (key != words.HELP_KEY)
        for signs, meaning in words.HELP_SIGNS[:1]:  # of calls; the others by ↓
            assert f"{signs:>7}  {meaning}" in kitchen.shown()
        await pilot.press("escape")
        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_below_the_keys_stands_what_the_manual_says_of_an_evening(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await pilot.press("question_mark")
        await pilot.pause()
        assert "The minutes are your judgement" not in kitchen.shown()

        for _ in range(40):
            if "The minutes are your judgement" in " ".join(re.sub(r"[│▁-█]", " ", kitchen.shown()).split()):
                break
            await pilot.press("pagedown")
            await pilot.pause()
        else:
            raise AssertionError(kitchen.shown())


async def test_bell_off_is_shown_and_silent(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("b")
        kitchen.set("17:00")
        await pilot.pause()

        assert kitchen.chime.rung == 0
        assert words.BELL_OFF in kitchen.shown()


@pytest.mark.parametrize("key", ["q", "ctrl+q"])
async def test_leaving_is_asked_for(kitchen: Kitchen, key: str) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press(key)
        await pilot.pause()
        assert isinstance(kitchen.app.screen, LeaveScreen)
        await pilot.press("escape")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, LiveScreen)
        await pilot.press(key)
        await pilot.pause()
        await pilot.press("e")
        await pilot.pause()

        assert kitchen.host.evening.state.closed


async def test_rehearsal_keys_do_nothing_on_a_real_evening(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("j", "h", "full_stop")
        await pilot.pause()

        assert words.ONLY_REHEARSAL in kitchen.shown()


async def test_a_rehearsal_does_not_leap_over_a_call_that_waits(kitchen: Kitchen) -> None:
    clock = VirtualClock(at("16:58"))
    rehearsal, evening = Rehearsal(clock), kitchen.host.evening

    assert rehearsal.jump(evening.tick()) == ""
    assert clock.now() >= at("17:00")
    kitchen.host.clock.set(at("17:00"))
    assert rehearsal.jump(evening.tick()) == words.A_CALL_WAITS
    assert clock.now() < at("17:01")
    evening.wish(Done("chop", "start"))
    assert rehearsal.jump(evening.tick()) == ""
    assert clock.now() >= at("17:20")


async def test_zoom_changes_the_ribbons(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        before = kitchen.shown()

        await pilot.press("z")
        await pilot.pause()

        assert kitchen.shown() != before


async def test_while_the_log_cannot_be_written_answers_count_and_a_banner_says_how_many(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        keeper = kitchen.host.evening.keeper
        keeper.unkept = Unkept(1, 2, "No space left on device")  # type: ignore[misc]

        await pilot.press("space")
        await pilot.pause()
        assert "NOT ON DISK YET: 1 answer (No space left on device). Go on; it tries again" in kitchen.shown()
        assert kitchen.status("chop") == "under-way"
        keeper.unkept = None  # type: ignore[misc]
        kitchen.set("17:01")
        await pilot.pause()

        assert "NOT ON DISK" not in kitchen.shown()


async def test_a_second_copy_that_lacks_lines_is_said_once_and_marked_until_it_is_whole(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        keeper = kitchen.host.evening.keeper
        keeper.copy_trouble = "the folder is not there"  # type: ignore[misc]
        kitchen.set("17:00")
        await pilot.pause()
        assert "Second copy: the folder is not there. It is caught up" in " ".join(kitchen.shown().split())

        kitchen.app.live.saying.say("something else", grave=False)
        kitchen.app.live.tick()
        await pilot.pause()
        assert "Second copy" not in kitchen.shown()
        assert "copy behind" in kitchen.shown()

        keeper.copy_trouble = ""  # type: ignore[misc]
        kitchen.app.live.tick()
        await pilot.pause()
        assert "Second copy: whole again" in kitchen.shown()
        assert "copy behind" not in kitchen.shown()


async def test_what_cannot_be_drawn_never_ends_the_board(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("for a test")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr(kitchen.app.live.next, "show", broken)

        kitchen.set("17:00")
        await pilot.pause()
        await pilot.press("space")

        assert kitchen.status("chop") == "under-way"
        assert kitchen.app.is_running


@pytest.mark.parametrize("size", [(60, 18), (80, 24), (120, 36), (160, 50), (30, 8)])
async def test_the_call_is_readable_at_every_size(kitchen: Kitchen, size: tuple[int, int]) -> None:
    async with kitchen.app.run_test(size=size) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        await pilot.pause()

        text = kitchen.shown()
        # CHOP in letters three rows high (the font's own strokes), the same drawn twice as large, or the plain word.
        assert "┏━╸╻ ╻┏━┓┏━┓" in text or "┏━━━╸ ╻   ╻ ┏━━━┓ ┏━━━┓" in text or "Chop" in text


async def test_a_mouse_presses_the_keys_of_the_bar(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        lines = kitchen.shown().splitlines()
        row = next(number for number, line in enumerate(lines) if "? help" in line)

        await pilot.click(offset=(lines[row].index("? help") + 3, row))
        await pilot.pause()

        assert isinstance(kitchen.app.screen, HelpScreen)


async def test_markup_and_escapes_of_a_plan_never_reach_the_screen(little: object) -> None:
    import msgspec

    from board.sheet.run_sheet import RunSheet

    assert isinstance(little, RunSheet)
    nasty = "so[/]up [b]x\x1b]0;X\x07\x1b[2J\u202e"
    slots = tuple(msgspec.structs.replace(s, named=nasty, call=nasty) if s.kind == "step" else s for s in little.slots)
    courses = tuple(msgspec.structs.replace(c, name=nasty) for c in little.courses)
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots, plan=nasty, courses=courses), "17:00")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        text = kitchen.shown()
        await pilot.press("n")
        await pilot.pause()
        note = kitchen.shown()
        await pilot.press("escape", "p")
        await pilot.pause()

        for shown in (text, note, kitchen.shown()):
            assert "\x1b" not in shown
            assert "\u202e" not in shown
        assert "so[/]up [b]x" in text
