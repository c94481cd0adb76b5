"""Sizes, themes, insistence, voice and mouse on the board itself."""

import re
import string
from pathlib import Path

import pytest
from textual.color import Color

from board.base import words as shared
from board.base.clock import VirtualClock
from board.base.words import THEMES
from board.evening.wishes import Done, Settle
from board.screens import words
from board.screens.app import BoardApp
from board.screens.ask import HelpScreen, LeaveScreen, PushScreen
from board.screens.big import big, bigger
from board.screens.live import LiveScreen
from board.screens.palette import DARK, LIGHT, LOOKS
from board.screens.panels import DUE_FRAMES, CallPanel
from board.screens.speech import Speaker
from board.session.session import unlogged_evening
from board.view import words as view_words
from tests.conftest import Host, at
from tests.examples import first
from tests.screens.conftest import Kitchen, Recorder, screen_text
from tests.screens.supper import evening_at, supper, twenty
from tests.screens.test_palette import ratio

SIZE = (120, 36)


# --- sizes ---------------------------------------------------------------------------------------------------
@pytest.mark.parametrize(("size", "named"), [((60, 18), 4), ((80, 24), 4), ((120, 36), 18), ((160, 50), 19)])
async def test_twenty_calls_at_once_stay_legible(size: tuple[int, int], named: int) -> None:
    host = Host(twenty(), at("16:58"))
    app = BoardApp(host.evening, chime=Recorder())
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        host.at("17:00")
        app.live.tick()
        await pilot.pause()

        text = screen_text(app)
        assert "+19" in text
        assert sum(f"◤ Stir pan {n} " in text for n in range(1, 21)) >= named
        assert "Stew" in text
        for _ in range(19):  # all of them can be reached, and the chosen one is always in sight
            await pilot.press("down")
        await pilot.pause()
        assert "›17:00  ◤ Stir pan 20" in screen_text(app)


async def test_twenty_things_under_way_say_how_many_lanes_hold_back() -> None:
    host = Host(twenty(), at("17:00"))
    for call in host.at("17:00").due:
        host.evening.wish(Done(*call.key))
    app = BoardApp(host.evening, chime=Recorder())
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()

        lanes = [line for line in screen_text(app).splitlines() if "30:00 stir pan" in line]
        held = [int(found[1]) for line in screen_text(app).splitlines() if (found := re.search(r"\+(\d+) ", line[:22]))]
        assert len(held) == 5
        assert len(lanes) + sum(held) == 20


async def test_lanes_fold_to_a_line_each_where_room_is_short_and_breathe_where_it_is_not() -> None:
    rows = {}
    for size in ((80, 24), (120, 36), (160, 50)):
        evening, _ = evening_at(supper(), "18:41", until="18:40")
        app = BoardApp(evening, chime=Recorder())
        async with app.run_test(size=size) as pilot:
            await pilot.pause()
            lines = screen_text(app).splitlines()
            where = [
                next(n for n, line in enumerate(lines) if line.startswith(name)) for name in ("  Oven", "  Stovetop")
            ]
            rows[size[0]] = where[1] - where[0]

    assert rows[80] == 1
    assert rows[120] == 2
    assert rows[160] == 3


@pytest.mark.parametrize("size", [(60, 18), (80, 24), (120, 36)])
@pytest.mark.parametrize("clock", ["14:58", "18:31", "19:05", "20:05"])
async def test_the_bar_names_few_keys_in_one_row_and_always_the_way_to_all(size: tuple[int, int], clock: str) -> None:
    evening, _ = evening_at(supper(), clock, until=clock)
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.pause()

        bar = screen_text(app).splitlines()[-1]
        named = [key for key, name, _ in words.KEYS_EVENING if f" {key} {name}" in bar]
        assert 4 <= len(named) <= 7
        assert bar.rstrip().endswith("? help")


async def test_capital_letters_are_the_same_keys(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await pilot.press("P")
        await pilot.pause()
        assert isinstance(kitchen.app.screen, PushScreen)

        await pilot.press("escape", "n", *"Salt", "enter")
        await pilot.pause()

        assert [note.text for note in kitchen.host.evening.state.notes] == ["Salt"]  # where a text is typed, it is kept


def test_every_sign_of_ascii_is_a_large_letter_of_one_height() -> None:
    for sign in string.printable[:94]:
        rows = big(f"A{sign}A", 60, 1)

        assert rows is not None
        assert len(rows) == 3
        assert len({len(row) for row in rows}) == 1
        assert all(row.strip() for row in rows)
    assert big("A😀", 60, 1) is None


def test_letters_twice_as_large_are_the_same_letters() -> None:
    small, large = big("LET", 60, 1), bigger("LET", 60)

    assert small is not None
    assert large is not None
    assert len(large) == 2 * len(small)
    assert [row[::2] for row in large[::2]] == list(small)
    assert bigger("LET", len(large[0]) - 2) is None


# --- themes --------------------------------------------------------------------------------------------------
async def test_a_key_steps_through_the_themes_and_each_is_remembered() -> None:
    kept: list[str] = []
    host = Host(supper(), at("14:58"))
    app = BoardApp(host.evening, chime=Recorder(), remembered="light", remember=kept.append)
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        assert app.theme == "light"

        for name in ("contrast", "plain", "dark", "light"):
            await pilot.press("v")
            await pilot.pause()
            assert app.theme == name
            assert words.theme_now(name) in screen_text(app)
            ground = LOOKS[name].theme.background
            assert ground is not None
            assert app.screen.styles.background.rgb == Color.parse(ground).rgb

        assert kept == ["contrast", "plain", "dark", "light"]


async def test_a_theme_that_cannot_be_remembered_is_worn_all_the_same() -> None:
    def full(_: str) -> None:
        raise OSError(30, "Read-only file system")

    app = BoardApp(Host(supper(), at("14:58")).evening, chime=Recorder(), theme="dark", remember=full)
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("v")
        await pilot.pause()

        assert app.theme == "light"
        assert "Read-only file system" in screen_text(app)


@pytest.mark.parametrize(
    ("variables", "theme"),
    [({"NO_COLOR": "1"}, "plain"), ({"TERM": "dumb"}, "plain"), ({"TERM": "linux"}, "plain"), ({}, "dark"),
     ({"TERM": "linux", "COLORTERM": "truecolor"}, "dark")],
)  # fmt: skip
async def test_a_terminal_of_few_colours_gets_none(
    variables: dict[str, str], theme: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name, value in variables.items():
        monkeypatch.setenv(name, value)
    app = BoardApp(Host(supper(), at("14:58")).evening, chime=Recorder())
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()

        assert app.theme == theme


def texts_of(app: BoardApp) -> set[tuple[str, str | None, str | None]]:
    """What is written on the screen on top, with its colour and its ground; of a small screen, inside its frame."""
    boxes = app.screen.query(".box")
    region = boxes.first().region.shrink((1, 1, 1, 1)) if boxes else app.screen.region
    found = set()
    for strip in app.screen._compositor.render_strips()[region.y : region.bottom]:
        for text, style, _ in strip.crop(region.x, region.right):
            if style is not None and any(sign.isalnum() for sign in text):
                colour, ground = (style.bgcolor, style.color) if style.reverse else (style.color, style.bgcolor)
                found.add((text, colour.name if colour else None, ground.name if ground else None))
    return found


def is_near(colour: Color, name: str) -> bool:
    """The same, but for what is lost where colours are laid over each other."""
    return all(abs(a - b) <= 2 for a, b in zip(colour.rgb, Color.parse(name).rgb, strict=True))


OVER_THE_BOARD = (("p",), ("n",), ("w",), ("t",), ("t", "x", "enter"), ("t", "5"), ("o",), ("o", "tab"), ("o", "e"),
                  ("question_mark",), ("q",))  # fmt: skip


@pytest.mark.parametrize("theme", first(1, THEMES))
async def test_every_screen_can_be_read_in_every_theme(theme: str) -> None:
    """WCAG 2.1, 1.4.3 and 1.4.6, as in test_palette; here of what is really drawn."""
    evening, _ = evening_at(supper(), "18:41", until="18:22")
    app = BoardApp(evening, chime=Recorder(), theme=theme)
    least = 7.0 if theme == "contrast" else 4.5
    async with app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        for keys in OVER_THE_BOARD:
            await pilot.press(*keys)
            await pilot.pause()
            assert not isinstance(app.screen, LiveScreen), keys
            written = texts_of(app)
            assert len(written) > 3
            if theme == "plain":
                assert {each for each in written if not {*each[1:]} <= {None, "default"}} == set(), keys
            else:
                assert {pair for pair in written if ratio(str(pair[1]), str(pair[2])) < least} == set(), keys
            while not isinstance(app.screen, LiveScreen):
                await pilot.press("escape")
                await pilot.pause()


@pytest.mark.parametrize("theme", THEMES)
async def test_what_goes_well_has_no_colour_of_its_own_and_what_is_late_has(theme: str) -> None:
    evening, _ = evening_at(supper(), "14:40", until="14:40")
    app = BoardApp(evening, chime=Recorder(), theme=theme)
    async with app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        top, call = app.live.top, app.live.query_one("#call", CallPanel)
        worn = {}
        for stands in view_words.STANDING_SIGN:
            top.set_classes(f"-{stands.lower().replace(' ', '-')}")
            app.stylesheet.update(top)  # at once: a tick would wear what the evening stands at
            worn[stands] = top.rich_style.bgcolor

        assert call.has_class("-quiet")
        assert worn[view_words.STANDS_ON_TIME] == worn[view_words.STANDS_TIGHT]
        assert call.rich_style.color == app.live.rich_style.color
        assert (worn[view_words.STANDS_LATE] == worn[view_words.STANDS_TIGHT]) == (theme == "plain")


async def test_a_call_keeps_its_colour_however_long_it_waits() -> None:
    evening, _ = evening_at(supper(), "18:10", until="18:10")
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        call, seen = app.live.query_one("#call", CallPanel), set()
        for frame in DUE_FRAMES.values():
            call.wear(frame)
            await pilot.pause()
            seen.add((call.rich_style.color, call.styles.border_left[1]))

    assert len(seen) == 1


@pytest.mark.parametrize("theme", THEMES)
async def test_the_chosen_line_of_a_list_is_told_by_more_than_colour(theme: str) -> None:
    evening, _ = evening_at(supper(), "18:41", until="18:22")
    app = BoardApp(evening, chime=Recorder(), theme=theme)
    async with app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        await pilot.press("o", "tab", "home")
        await pilot.pause()
        rows = [strip for strip in app.screen._compositor.render_strips() if "set the jelly" in strip.text]
        styles = [segment.style for segment in rows[0] if "jelly" in segment.text]

        assert styles[0] is not None
        assert styles[0].bold
        plainly = styles[0].reverse or ratio(styles[0].bgcolor.name, str(LOOKS[theme].theme.background)) >= 4.5
        assert plainly
        await pilot.press("escape", "w")
        await pilot.pause()
        assert "› 1" in screen_text(app)


async def test_a_screen_that_is_kept_wears_the_theme_chosen_since() -> None:
    evening, _ = evening_at(supper(), "18:41", until="18:22")
    app = BoardApp(evening, chime=Recorder(), theme="dark")
    async with app.run_test(size=(100, 30)) as pilot:
        await pilot.pause()
        await pilot.press("w")
        await pilot.pause()
        before = [Color.parse(str(colour)) for _, colour, _ in texts_of(app)]
        assert any(is_near(colour, DARK.accent) for colour in before)
        await pilot.press("escape", "v", "w")
        await pilot.pause()

        worn = [Color.parse(str(colour)) for _, colour, _ in texts_of(app)]
        assert any(is_near(colour, LIGHT.accent) for colour in worn)
        assert not any(is_near(colour, each) for colour in worn for each in (DARK.accent, DARK.text, DARK.soft))


# --- insistence ----------------------------------------------------------------------------------------------
async def test_a_call_that_waits_changes_its_words_its_frame_and_its_bell(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        seen = []
        for clock in ("17:00", "17:01", "17:06"):
            kitchen.set(clock)
            await pilot.pause()
            text = kitchen.shown()
            seen.append((kitchen.chime.rung, kitchen.chime.strokes, "▐" in text, "▛▀▀" in text, "!!!" in text))

        assert seen == [(1, 1, False, False, False), (2, 1, True, False, False), (3, 1, True, True, True)]
        assert "!!! called 6 min ago" in text


async def test_an_overtaken_call_is_settled_with_one_key(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        kitchen.set("17:00")
        kitchen.set("17:19")
        await pilot.pause()
        assert f"d {view_words.DONE_ALREADY}" not in kitchen.shown()
        kitchen.set("17:20")
        await pilot.pause()
        assert f"d {view_words.DONE_ALREADY}" in kitchen.shown()

        await pilot.press("d")

        assert kitchen.status("chop") == "finished"
        await pilot.press("u")
        assert kitchen.status("chop") == "to-come"


# --- voice ---------------------------------------------------------------------------------------------------
class Voice(Speaker):
    def __init__(self) -> None:
        self.said: list[str] = []

    def say(self, text: str) -> None:
        self.said.append(text)

    def stop(self) -> None: ...


async def test_a_call_is_spoken_when_it_rings_and_silence_silences_both(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        voice = kitchen.app.live.sounds.voice = Voice()
        for clock in ("17:00", "17:00", "17:01"):
            kitchen.set(clock)
        assert voice.said == ["Chop.", "Chop. Called 1 minute ago."]

        await pilot.press("b")
        kitchen.set("17:06")
        await pilot.pause()

        assert len(voice.said) == 2
        assert kitchen.chime.rung == 2
        assert words.BELL_OFF in kitchen.shown()


async def test_what_soon_keeps_no_longer_is_one_stroke_and_is_spoken(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        voice = kitchen.app.live.sounds.voice = Voice()
        kitchen.set("17:00")
        for step in ("chop", "stew"):
            kitchen.host.wish(Settle(step))
        kitchen.set("17:19")  # the stew keeps 30 minutes
        before, kitchen.chime.strokes = kitchen.chime.rung, 0
        voice.said.clear()
        kitchen.set("17:20")
        kitchen.set("17:20")

        assert voice.said == ["stew: good for 10 more minutes."]
        assert (kitchen.chime.rung - before, kitchen.chime.strokes) == (1, 1)

        await pilot.press("b", "u")
        kitchen.host.wish(Settle("stew"))
        kitchen.set("17:45")
        assert len(voice.said) == 1


async def test_a_voice_that_fails_is_told_on_the_board_and_the_board_goes_on(tmp_path: Path) -> None:
    host = Host(supper(), at("14:58"))
    app = BoardApp(host.evening, chime=Recorder(), bell=False, say=(str(tmp_path / "no-such-voice"),))
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        host.clock.set(at("15:00"))
        app.live.tick()
        for _ in range(20):
            await pilot.pause(0.05)
            if "cannot speak" in screen_text(app):
                break

        assert "cannot speak (No such file or directory)" in screen_text(app)
        assert app.is_running


async def test_help_of_a_rehearsal_shows_every_key_in_the_smallest_usual_window() -> None:
    clock = VirtualClock(at("14:58"))
    clock.pause(True)
    app = BoardApp(unlogged_evening(supper(), clock), chime=Recorder(), virtual=clock)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        await pilot.press("question_mark")
        await pilot.pause()
        seen = screen_text(app)
        assert words.CLOSE_HINT in seen  # which says that it scrolls
        for _ in range(2):
            await pilot.press(*["down"] * 5)
            await pilot.pause()
            seen += screen_text(app)

        for key, _, meaning in (*words.KEYS_EVENING, *words.KEYS_REHEARSAL):
            assert (f"{key:>7}  {meaning}" in seen) == (key != words.HELP_KEY)
        for signs, meaning in words.HELP_SIGNS:
            assert f"{signs:>7}  {meaning}" in seen


# --- mouse ---------------------------------------------------------------------------------------------------
def find(text: str, what: str) -> tuple[int, int]:
    """Column and row of the middle of some words."""
    for row, line in enumerate(text.splitlines()):
        if what in line:
            return line.index(what) + len(what) // 2, row
    raise AssertionError(f"{what!r} is not on the screen:\n{text}")


async def test_a_mouse_chooses_a_call_of_the_list(kitchen: Kitchen) -> None:
    async with kitchen.app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.click(offset=find(kitchen.shown(), "◤ Guests are due"))
        await pilot.pause()

        assert kitchen.app.live.chosen == ("arrive", "start", 0)
        assert words.NOT_YET_DUE in kitchen.shown()


async def test_a_mouse_pushes_a_course_and_takes_it() -> None:
    host = Host(supper(), at("14:58"))
    app = BoardApp(host.evening, chime=Recorder())
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.click(offset=find(screen_text(app), "Main 19:08"))
        await pilot.pause()
        assert isinstance(app.screen, PushScreen)
        assert words.push_line("Main", 10) in screen_text(app)
        await pilot.click(offset=find(screen_text(app), "→ more minutes"))
        await pilot.click(offset=find(screen_text(app), "enter pushes"))
        await pilot.pause()

        assert host.evening.state.pushed == {"Main": 15}


async def test_a_course_that_is_out_cannot_be_pushed_by_mouse_either() -> None:
    evening, _ = evening_at(supper(), "18:50", until="18:50")
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()

        await pilot.click(offset=find(screen_text(app), "Soup ▽ 18:36"))
        await pilot.pause()

        assert isinstance(app.screen, LiveScreen)
        assert shared.cannot_push("Soup") in screen_text(app)


async def test_a_mouse_takes_a_slip_and_goes_through_its_hint() -> None:
    evening, _ = evening_at(supper(), "18:50", until="18:50")
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.click(offset=find(screen_text(app), "w wrong"))
        await pilot.pause()
        await pilot.click(offset=find(screen_text(app), "↓ line"))
        await pilot.pause()
        assert "› 3  Guests linger over Soup" in screen_text(app)  # they are here, so the second line is not
        await pilot.click(offset=find(screen_text(app), "esc leaves"))
        await pilot.pause()
        assert isinstance(app.screen, LiveScreen)
        await pilot.click(offset=find(screen_text(app), "w wrong"))
        await pilot.pause()
        await pilot.click(offset=find(screen_text(app), "3  Guests linger over Soup"))
        await pilot.pause()

        assert isinstance(app.screen, LiveScreen)
        assert "Guests linger over Soup" in screen_text(app)


async def test_a_mouse_keeps_a_reading() -> None:
    evening, _ = evening_at(supper(), "18:10", until="18:10")
    app = BoardApp(evening, chime=Recorder())
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.click(offset=find(screen_text(app), "t probe"))
        await pilot.press("7", "5")
        await pilot.click(offset=find(screen_text(app), "enter keeps it"))
        await pilot.pause()

        assert isinstance(app.screen, LiveScreen)
        assert [reading.celsius for reading in evening.state.readings] == [75.0]


@pytest.mark.parametrize(("key", "screen"), [("? help", HelpScreen), ("p push", PushScreen), ("", LeaveScreen)])
async def test_a_mouse_presses_keys_and_the_hints_of_small_screens(
    kitchen: Kitchen, key: str, screen: type[object]
) -> None:
    async with kitchen.app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()

        if key:
            await pilot.click(offset=find(kitchen.shown(), key))
        else:
            await pilot.press("q")  # named in the help alone
        await pilot.pause()
        assert isinstance(kitchen.app.screen, screen)
        if screen is not HelpScreen:
            await pilot.click(offset=find(kitchen.shown(), "esc"))
            await pilot.pause()
            assert isinstance(kitchen.app.screen, LiveScreen)
