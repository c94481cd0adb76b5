"""Looking back, readings, warnings of what stands, and the closing page, by Pilot: key → state → screen."""

import msgspec
import pytest
from textual.widgets import Input

from board.base import words as shared
from board.evening.events import ReadingTaken
from board.evening.wishes import Done, Settle, WriteNote
from board.screens import look, words
from board.screens.ask import NoteScreen
from board.screens.closing import ClosingScreen
from board.screens.live import LiveScreen
from board.screens.look import LookScreen
from board.screens.reading import ReadingScreen
from board.sheet.run_sheet import Keeping, RunSheet
from board.view import words as view_words
from tests.conftest import at
from tests.examples import first
from tests.screens.conftest import Kitchen

SIZE = (100, 30)


def stewing(kitchen: Kitchen, until: str = "18:30") -> None:
    """The stew under way since 17:30, answered on time; of an evening as late, the guests are in."""
    for clock, id_ in (("17:00", "chop"), ("17:20", "chop"), ("17:30", "stew")):
        kitchen.host.at(clock)
        kitchen.host.answer(id_)
    if until >= "18:30":
        kitchen.host.wish(Settle("arrive"))
    kitchen.set(until)


async def test_look_back_lists_what_happened_the_newest_last(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")
        kitchen.host.wish(WriteNote("salt [/b] it", "stew"))

        await pilot.press("o")
        await pilot.pause()

        lines = kitchen.shown().splitlines()
        told = ("called: Chop", "begun: chop", "begun: stew", "note on stew: salt [/b] it")
        rows = [next(n for n, line in enumerate(lines) if text in line) for text in told]
        assert rows == sorted(rows)
        assert "17:30" in next(line for line in lines if "begun: stew" in line)
        for _, name, _ in words.KEYS_LOOK:
            assert name in kitchen.shown()


@pytest.mark.parametrize("key", first(1, ["escape", "o", "q", "ctrl+q"]))
async def test_look_back_is_left_with(kitchen: Kitchen, key: str) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("o")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, LookScreen)

        await pilot.press(key)
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_a_call_that_comes_due_meanwhile_rings_and_is_said_on_the_top_line(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(look, "REFRESH_SECONDS", 0.02)
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("o")
        await pilot.pause()
        assert "nothing is called" in kitchen.shown().splitlines()[0]

        kitchen.set("17:00")
        await pilot.pause(0.1)

        assert kitchen.chime.rung == 1
        assert "◤ Chop · called just now" in kitchen.shown().splitlines()[0]
        assert "called: Chop" in kitchen.shown().splitlines()[3]


async def test_only_what_the_host_did(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")
        await pilot.press("o", "f")
        await pilot.pause()
        assert "called: Chop" not in kitchen.shown()
        assert "begun: chop" in kitchen.shown()
        assert words.LOOK_TITLE["yours"] in kitchen.shown()

        await pilot.press("f")
        await pilot.pause()

        assert "called: Chop" in kitchen.shown()


async def test_every_step_with_how_it_stands_and_a_note_to_any_of_them(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "18:35")
        kitchen.host.wish(Done("stew", "end"))
        kitchen.set("18:36")

        await pilot.press("o", "tab", "home")
        await pilot.pause()

        text = kitchen.shown()
        assert "17:30–18:30  17:30–18:35" in text
        head, row = (next(line for line in text.splitlines() if each in line) for each in ("planned", "17:30–18:35"))
        assert head.index("planned") == row.index("17:30–18:30")
        assert head.index("actual") == row.index("17:30–18:35")
        for name, stands in (("chop", "finished"), ("stew", "keeping"), ("sauce", "called"), ("clear", "to come")):
            assert stands in next(line for line in text.splitlines() if f" {name} " in line)
        await pilot.press("down", "n")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, NoteScreen)
        assert words.note_about("stew") in kitchen.shown()
        await pilot.press(*"thin", "enter")
        await pilot.pause()

        note = kitchen.host.evening.state.notes[0]
        assert (note.text, note.slot) == ("thin", "stew")
        assert "18:36 “thin”" in kitchen.shown()
        assert words.NOTE_KEPT in kitchen.shown()


async def test_what_was_said_while_looking_back_does_not_stay_on_the_board(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("o", "n", *"thin", "enter")
        await pilot.pause()
        assert words.NOTE_KEPT in kitchen.shown()

        await pilot.press("escape")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert words.NOTE_KEPT not in kitchen.shown()


async def test_a_note_left_empty_or_escaped_keeps_nothing(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("o", "n", "escape", "n", "enter")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LookScreen)
        assert kitchen.host.evening.state.notes == ()


async def test_the_same_step_stays_chosen_from_list_to_list(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")
        await pilot.press("o")
        await pilot.pause()
        screen = kitchen.app.screen
        assert isinstance(screen, LookScreen)

        await pilot.press("tab")
        await pilot.pause()
        assert screen._slot() == "stew"  # the last thing that happened
        await pilot.press("home", "tab")
        await pilot.pause()

        assert screen._slot() == "chop"


async def test_a_mouse_chooses_a_line_and_presses_the_keys(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")
        await pilot.press("o", "tab")
        await pilot.pause()
        screen = kitchen.app.screen
        assert isinstance(screen, LookScreen)
        lines = kitchen.shown().splitlines()

        await pilot.click(offset=(10, next(n for n, line in enumerate(lines) if " sauce " in line)))
        await pilot.pause()
        assert screen._slot() == "sauce"
        row = next(n for n, line in enumerate(lines) if "closing page" in line)
        await pilot.click(offset=(lines[row].index("closing page") + 1, row))
        await pilot.pause()

        assert isinstance(kitchen.app.screen, ClosingScreen)


@pytest.mark.parametrize(
    "size", [(40, 12), (80, 24), *(pytest.param(each, marks=pytest.mark.slow) for each in ((60, 18), (160, 50)))]
)
async def test_every_list_and_the_page_are_drawn_at_every_size(kitchen: Kitchen, size: tuple[int, int]) -> None:
    async with kitchen.app.run_test(size=size) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")

        await pilot.press("o", "pageup", "pagedown", "end", "tab", "f", "up", "e")
        await pilot.pause()
        assert "Little supper" in kitchen.shown()
        await pilot.press("pagedown", "end", "up", "home", "escape", "escape")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_a_fault_while_looking_back_ends_nothing(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object, **__: object) -> None:
        raise ZeroDivisionError("for a test")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr(look, "happened", broken)
        await pilot.press("o")
        await pilot.pause()
        assert "for a test" in kitchen.shown()

        await pilot.press("escape")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)


# --- readings ----------------------------------------------------------------------------------------------------
async def test_a_reading_below_is_told_and_keeps_the_step_open(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("t")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, ReadingScreen)
        assert words.READING_CAUTION.split(".")[0] in kitchen.shown()
        await pilot.press("7", "1")
        await pilot.pause()
        assert "core 71 °C (159.8 °F), 3 °C below the 74 wanted" in kitchen.shown()
        await pilot.press("enter")
        await pilot.pause()

        assert [r.celsius for r in kitchen.host.evening.state.readings] == [71.0]
        assert "asked again in 3 min" in kitchen.shown()
        assert kitchen.status("stew") == "under-way"
        kitchen.set("18:33")
        await pilot.pause()
        assert "core 71 °C (159.8 °F) at 18:30, 74 wanted" in kitchen.shown()
        await pilot.press("space")
        await pilot.pause()
        assert kitchen.status("stew") == "under-way"  # it lacks 3 °C, and is asked again
        assert isinstance(kitchen.app.screen, ReadingScreen)
        await pilot.press("w")
        await pilot.pause()
        assert kitchen.status("stew") == "under-way"  # what a probe showed is not ended as if nobody had read
        assert "3 °C below" in kitchen.shown()


async def test_165_fahrenheit_is_there_and_the_step_is_answered_as_usual(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("t", *"165 F", "enter")
        await pilot.pause(0.01)
        assert "core 73.9 °C (165 °F), 74 wanted" in kitchen.shown()
        await pilot.press("space")

        assert kitchen.status("stew") == "finished"


@pytest.mark.parametrize(
    ("typed", "trouble"), [("hot", "nonsense"), ("165", "which-unit"), ("999 C", "no-probe"), ("", "nonsense")]
)
async def test_nonsense_is_told_and_nothing_is_lost(kitchen: Kitchen, typed: str, trouble: str) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)

        await pilot.press("t", *typed, "enter")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, ReadingScreen)
        assert words.READING_TROUBLE[trouble] in kitchen.shown()
        assert kitchen.app.screen.query_one(Input).value == typed
        assert kitchen.host.evening.state.readings == ()
        await pilot.press("escape")
        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_a_reading_is_taken_back_with_u(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.press("t", "7", "1", "enter")
        await pilot.pause()

        await pilot.press("u")
        await pilot.pause()

        assert kitchen.host.evening.state.readings == ()
        assert kitchen.host.evening.tick().forecast.slots["stew"].end == at("18:30")
        await pilot.press("o")
        await pilot.pause()
        assert "(undone)" in kitchen.shown()


async def test_with_nothing_to_read_the_key_says_so(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.press("t")
        await pilot.pause()

        assert words.NOTHING_TO_READ in kitchen.shown()
        assert isinstance(kitchen.app.screen, LiveScreen)


async def test_of_several_that_can_be_read_the_arrows_choose(little: RunSheet) -> None:
    slots = tuple(msgspec.structs.replace(s, core_celsius=63.0) if s.id == "sauce" else s for s in little.slots)
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        kitchen.host.wish(Done("sauce", "start"))
        kitchen.set("18:31")

        await pilot.press("t")
        await pilot.pause()
        assert "stew: core 74 °C (165 °F) wanted" in kitchen.shown()
        await pilot.press("down", *"145 f", "enter")  # 145 °F/63 °C: FDA Food Code 3-401.11(A)
        await pilot.pause()

        reading = kitchen.host.evening.state.history[-1]
        assert isinstance(reading, ReadingTaken)
        assert reading.slot == "sauce"


async def test_a_plan_in_fahrenheit_is_read_and_shown_in_fahrenheit(little: RunSheet) -> None:
    kitchen = Kitchen(msgspec.structs.replace(little, fahrenheit=True), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.pause()
        assert "core 165 °F (74 °C)" in kitchen.shown()

        await pilot.press("t", *"160", "enter")
        await pilot.pause()

        assert "core 160 °F (71.1 °C), 5.2 °F below the 165.2 wanted" in kitchen.shown()  # 74 °C are 165.2 °F


async def test_a_probe_from_the_list_of_steps(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        await pilot.press("o", "tab", "home", "t")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, LookScreen)
        assert shared.no_core("chop") in kitchen.shown()

        await pilot.press("down", "t", *"75", "enter")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LookScreen)
        assert [r.celsius for r in kitchen.host.evening.state.readings] == [75.0]
        assert "core 75 °C (167 °F) at 18:30, 74 wanted" in kitchen.shown()


async def test_a_reading_that_cannot_be_kept_is_told(kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(events: object) -> None:
        raise OSError(28, "No space left on device")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        monkeypatch.setattr(kitchen.host.evening.keeper, "append", full)

        await pilot.press("t", "7", "5", "enter")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LiveScreen)
        assert "No space left on device" in kitchen.shown()


# --- what stands -------------------------------------------------------------------------------------------------
async def test_what_soon_keeps_no_longer_rings_once_and_is_said(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        kitchen.host.wish(Done("stew", "end"))  # keeps 30 min, till 19:00
        for call in ("18:35", "18:50"):
            kitchen.set(call)
        before = kitchen.chime.rung

        kitchen.set("18:51")
        kitchen.set("18:52")
        await pilot.pause()

        assert kitchen.chime.rung == before + 1
        assert "stew: good until 19:00 (hot)" in kitchen.shown()


async def test_of_several_that_stand_the_one_that_presses_first_is_shown_and_how_many_more(little: RunSheet) -> None:
    keeps = {"chop": Keeping(100, "room"), "stew": Keeping(12, "hot"), "sauce": Keeping(25, "hot")}
    slots = tuple(
        msgspec.structs.replace(s, keeping=keeps[s.id], then=("clear",), named=f"{s.id} with a name that is long")
        if s.id in keeps else s for s in little.slots
    )  # fmt: skip
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots), "16:58")
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        stewing(kitchen)
        for slot in ("stew", "sauce", "arrive"):
            kitchen.host.wish(Settle(slot))
        kitchen.set("18:35")
        await pilot.pause()

        lines = [line for line in kitchen.shown().splitlines() if "▒" in line]
        assert len(lines) == 2
        assert "▒ stew with a name" in lines[0]
        assert "good until 18:42" in lines[0]
        assert lines[1].rstrip().endswith(words.and_more(1).strip())


# --- the closing page --------------------------------------------------------------------------------------------
async def test_the_evening_ends_with_its_page_and_then_the_board_is_left(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        stewing(kitchen)
        kitchen.host.wish(WriteNote("salt it", "stew"))

        await pilot.press("q", "e")
        await pilot.pause()

        assert kitchen.host.evening.state.closed
        assert isinstance(kitchen.app.screen, ClosingScreen)
        text = kitchen.shown()
        for part in ("Little supper", "Stew", "19:00", view_words.CLOSING_LEGEND, "salt it", words.CLOSING_KEYS):
            assert part in text
        assert kitchen.app.is_running
        await pilot.press("q")
        await pilot.pause()
        assert kitchen.app._exit


async def test_the_page_is_shown_from_look_back_and_leads_back_there(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen, "17:40")

        await pilot.press("o", "e")
        await pilot.pause()
        assert "so far" in kitchen.shown().splitlines()[0]
        await pilot.press("escape")
        await pilot.pause()

        assert isinstance(kitchen.app.screen, LookScreen)
        assert not kitchen.host.evening.state.closed


async def test_a_fault_in_the_page_does_not_keep_the_host_on_the_board(
    kitchen: Kitchen, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("for a test")

    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        monkeypatch.setattr("board.screens.closing.closing", broken)

        await pilot.press("q", "e")
        await pilot.pause()
        assert "for a test" in kitchen.shown()
        await pilot.press("escape")
        await pilot.pause()

        assert kitchen.app._exit


async def test_markup_and_escapes_never_reach_these_screens(little: RunSheet) -> None:
    nasty = "so[/]up [b]x\x1b]0;X\x07\x1b[2J\u202e"
    slots = tuple(msgspec.structs.replace(s, named=nasty, call=nasty) if s.kind == "step" else s for s in little.slots)
    courses = tuple(msgspec.structs.replace(c, name=nasty) for c in little.courses)
    kitchen = Kitchen(msgspec.structs.replace(little, slots=slots, plan=nasty, courses=courses), "16:58")
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        stewing(kitchen)
        kitchen.host.wish(WriteNote(nasty, "stew"))
        shown = []
        for keys in (("o",), ("tab",), ("e",), ("escape", "escape", "t")):
            await pilot.press(*keys)
            await pilot.pause()
            shown.append(kitchen.shown())

        for text in shown:
            assert "so[/]up [b]x" in text
            assert "\x1b" not in text
            assert "\u202e" not in text


async def test_help_scrolls_where_the_window_is_too_small(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 14)) as pilot:
        await pilot.pause()
        await pilot.press("question_mark")
        await pilot.pause()
        last = words.HELP_SIGNS[-1][1]
        assert last not in kitchen.shown()

        await pilot.press(*["down"] * 20)
        await pilot.pause()

        assert last in kitchen.shown()
