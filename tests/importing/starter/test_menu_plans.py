"""Twelve menus of our own, ordinary and odd: each becomes a plan that loads, with day, guests and kitchen as typed.
Their dishes are written by `ways`, so only what is around them is looked at here."""

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

import pytest

from board.app.new_plan import Made, from_menu, menu_in, new_plan
from board.app.timetables import in_memory
from board.base.errors import Trouble
from board.checks.plan.every import check
from board.checks.sheet.assessed import of_plan
from board.facts.serving import table_minutes
from board.importing.starter.menu import read_menu
from board.importing.starter.menu_courses import course_minutes
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.ways import ways
from board.plan.phrases.when import clock_of
from board.plan.snag import Weight

MENUS = Path(__file__).parents[1] / "menus"
NOON = datetime(2026, 11, 29, 12, 0, tzinfo=UTC)  # a Sunday


@dataclass(frozen=True)
class Typed:
    """What a menu says: the day, the arrival, guests without the host, ovens, rings, dishes by course; hands beside the
    host, and how many lines are told."""

    day: str
    arrive: str
    guests: int
    ovens: int
    rings: int
    dishes: tuple[int, ...]
    hands: tuple[str, ...] = ()
    told: int = 0


TYPED = {
    "roast-dinner": Typed("2026-12-06", "13:00", 5, 1, 4, (1, 5, 2), told=1),
    "vegetarian-feast": Typed("2026-12-21", "19:00", 9, 2, 5, (2, 1, 3, 1), ("Sanne", "Pieter")),
    "buffet": Typed("2026-12-12", "18:00", 19, 1, 6, (6, 2, 2), ("Jule",), told=2),
    "nordic": Typed("2026-12-12", "18:00", 6, 1, 4, (2, 1, 3, 1, 1), told=1),
    "brunch": Typed("2026-11-29", "11:00", 5, 1, 4, (2, 3, 1, 1), told=1),
    "one-ring-flat": Typed("2026-11-30", "19:30", 2, 0, 1, (1, 2, 1)),
    "eight-courses": Typed("2026-12-31", "18:00", 6, 2, 5, (2, 1, 1, 1, 3, 1, 1, 1, 1), ("Dan", "Mia", "Bo"), told=2),
    "british": Typed("2026-12-05", "18:30", 8, 1, 4, (1, 4, 2, 1), told=2),
    "american": Typed("2026-12-05", "17:30", 8, 1, 4, (2, 6, 2)),
    "no-courses": Typed("2026-12-05", "19:00", 4, 1, 4, (1, 3, 1), told=1),
    "times": Typed("2026-12-12", "16:05", 5, 1, 4, (1, 1, 2, 1)),
    "other-script": Typed("2026-12-19", "20:00", 6, 1, 4, (2, 2, 3), told=3),
}


def made(name: str) -> Made:
    path = MENUS / f"{name}.txt"
    menu = menu_in(path, {}, NOON.date())
    return from_menu(menu, path.name, {}, NOON, "Europe/Dublin", None, print)


def test_every_menu_here_is_looked_at() -> None:
    assert {path.stem for path in MENUS.iterdir()} == set(TYPED)


@pytest.mark.parametrize("name", TYPED)
def test_a_menu_becomes_a_plan_with_all_it_says(name: str) -> None:
    typed = TYPED[name]

    plan = made(name).file.plan

    assert (plan.date.isoformat(), plan.arrive) == (typed.day, typed.arrive)
    assert plan.guest_count == typed.guests + 1
    assert (len(plan.kitchen.ovens), plan.kitchen.rings) == (typed.ovens, typed.rings)
    assert tuple(len(course.dishes) for course in plan.courses) == typed.dishes
    assert tuple(plan.hands) == ("host", *typed.hands)
    assert all(dish.for_ == typed.guests + 1 for course in plan.courses for dish in course.dishes)


@pytest.mark.parametrize("name", TYPED)
def test_the_check_finds_nothing_wrong_in_what_was_read(name: str) -> None:
    """Of the plan itself: what is asked of dishes without steps is for `ways`."""
    assert [snag for snag in check(made(name).file) if snag.code.startswith("plan ")] == []


@pytest.mark.parametrize("name", TYPED)
def test_what_is_not_understood_is_told(name: str) -> None:
    menu = menu_in(MENUS / f"{name}.txt", {}, NOON.date())

    assert len(menu.notes) == TYPED[name].told, menu.notes
    text = made(name).text
    assert all(f"# {note}" in text for note in menu.notes)


# What stops a plan of these menus: a true stop each, for the guest must not eat what the dish is usually made of.
STOPS = {
    "times": {
        ("radishes & butter", "Ruth", "butter"),
        ("pea soup", "Ruth", "butter"),
        ("strawberries and cream", "Ruth", "cream"),
    },
    "vegetarian-feast": {
        ("white bean dip", "Wil", "flatbread"),
        ("mushroom and chestnut pie", "Wil", "plain flour"),
    },
}


@pytest.mark.parametrize("name", TYPED)
def test_only_what_a_guest_must_not_eat_stops_a_plan(name: str) -> None:
    stops = [snag for snag in check(made(name).file) if snag.weight is Weight.STOP]

    assert {snag.code for snag in stops} <= {"guests 1"}
    assert {(s.about.dish, s.about.guests[0], s.about.foods[0]) for s in stops} == STOPS.get(name, set())


@pytest.mark.slow
@pytest.mark.parametrize("name", TYPED)
def test_every_menu_has_a_timetable_and_little_to_mind(name: str) -> None:
    timed = in_memory(of_plan(made(name).file), limit=20)

    assert [course.name for course in timed.the_sheet.courses] == [c.course for c in timed.file.plan.courses]
    minded = {snag.code for snag in timed.snags if snag.weight is Weight.MIND}
    # a diet not met, hands that get up, the usual hour of clearing down, leftovers of a starter of smoked fish
    assert minded <= {"guests 8", "table 6", "time 12", "food 11"}
    unpacked = [s for s in timed.snags if s.code == "food 11" and "no job puts away" in s.message]
    assert unpacked == []


def test_a_need_of_all_is_every_guests() -> None:
    def entries(text: str) -> tuple[str, ...]:
        return read_menu(f"{text}\nMain: beans", NOON.date()).guests

    assert entries("10 guests: all vegetarian") == ("10 guests, vegetarian",)
    assert entries("8 guests, all vegan") == ("8 guests, vegan",)
    assert entries("4 guests: Ada coeliac, everybody vegetarian") == ("Ada coeliac, vegetarian", "3 others, vegetarian")
    with pytest.raises(NotAMenu, match="say how many guests there are"):
        entries("Guests: all vegan")


def test_needs_come_through_to_the_plan() -> None:
    assert [(g.name, g.count, g.avoids, g.diets) for g in made("eight-courses").file.plan.guests] == [
        ("Ines", 1, ("tree nuts",), ()),
        ("Tomas", 1, (), ("vegetarian",)),
        ("Maud", 1, (), ("alcohol-free",)),
        ("others", 3, (), ()),
        ("host", 1, (), ()),
    ]


def test_hours_hands_and_drinks_come_through_to_the_plan() -> None:
    made_of = made("eight-courses")
    plan = made_of.file.plan

    assert [course.at.clock for course in plan.courses] == [
        "18:20", "19:00", "19:40", "20:20", "21:00", "21:45", "22:30", "23:15", "00:05"
    ]  # fmt: skip
    assert plan.hands["Bo"].hired
    assert [(s.start, s.end) for s in plan.hands["Dan"].hours["on the day"]] == [("16:00", "01:20")]
    assert [(d.drink, d.bottles) for course in plan.courses for d in course.drink] == [("red wine", 2)]
    assert "drink: red wine, 2 bottles  # assumed: a glass each" in made_of.text
    assert "white wine" not in made_of.text


def test_what_nobody_said_is_marked() -> None:
    assert made("no-courses").assumed == ("event", "ovens", "rings")
    text = made("no-courses").text
    assert "event: Supper  # assumed" in text
    assert "  rings: 4  # assumed" in text
    assert "arrive: 19:00\n" in text


@pytest.mark.parametrize(
    ("text", "clocks"),
    [
        ("Nibbles: a\nMain: b\nSweet: c", ["18:55", "19:40", "20:25"]),
        ("Starter: a\nMain 20:00: b\nSweet: c", ["19:05", "20:00", "20:45"]),
        ("Starter: a\nFish: b\nMain 20:00: c", ["19:00", "19:30", "20:00"]),
        ("18:30 for 19:15\nNibbles: a\nStarter: b\nSweet: c", ["18:50", "19:15", "20:00"]),
        ("Starter 22:30: a\nMain 0:15: b\nCoffee: c", ["22:30", "00:15", "01:00"]),
    ],
)
def test_courses_stand_between_the_hours_that_are_written(text: str, clocks: list[str]) -> None:
    menu = read_menu(text, NOON.date())

    assert [clock_of(minute) for minute in course_minutes(menu, "18:30")] == clocks


def test_what_is_eaten_before_a_course_with_an_hour_is_eaten_by_then_and_only_what_spoils_is_put_away() -> None:
    menu = read_menu("19:00\n9 guests\nNibbles: olives; salted almonds\nStarter 19:45: leek soup", NOON.date())

    plan = from_menu(menu, "menu", {}, NOON, "UTC", None, print).file.plan

    nibbles, _ = plan.courses
    assert nibbles.at.clock == "19:20"
    assert nibbles.eaten_in is not None
    assert 20 + nibbles.eaten_in.likely + table_minutes("clear", 10) + table_minutes("serve", 10) == 45
    assert [job.puts_away for job in plan.jobs if job.puts_away] == [["Starter"]]


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("Starter 18:00: a", "Starter at 18:00 is too soon: the guests come at 18:30"),
        ("Starter 20:00: a\nMain 19:30: b", "Main at 19:30 is too soon: Starter needs until 20:10"),
    ],
)
def test_hours_that_cannot_be_are_told(text: str, part: str) -> None:
    with pytest.raises(NotAMenu, match=part):
        course_minutes(read_menu(text, NOON.date()), "18:30")


def test_dishes_of_the_hosts_own_come_before_any_way() -> None:
    mine = ["- dish: Leek soup of ours", "  for: 7", "  steps:", "    - {step: stir it, takes: 5 min}"]
    menu = read_menu("Starter: leek soup\nMain: beef", NOON.date())

    found = from_menu(menu, "menu", {}, NOON, "UTC", None, print, lambda name, _: mine if name == "leek soup" else None)

    assert [dish.dish for course in found.file.plan.courses for dish in course.dishes] == ["Leek soup of ours", "beef"]
    assert found.bare == ("beef",)


def test_dishes_of_the_hosts_own_that_spoil_the_plan_are_told_and_nothing_is_made() -> None:
    menu = read_menu("Starter: leek soup", NOON.date())

    with pytest.raises(Trouble, match="no plan can be made of this menu") as wrong:
        from_menu(menu, "menu", {}, NOON, "UTC", None, print, lambda *_: ["- dish: Leek soup"])

    assert wrong.value.code == 2


def test_what_is_done_to_a_dish_is_asked_once_where_its_words_do_not_say(monkeypatch: pytest.MonkeyPatch) -> None:
    roast, braise = ways.Way("roasted", "main"), ways.Way("braised", "main")
    written: dict[str, ways.Way | None] = {}
    bare = ways.dish_lines

    def dish_lines(dish: str, way: ways.Way | None, at: ways.Setting) -> list[str]:
        written[dish] = way
        return bare(dish, None, at)

    monkeypatch.setattr(ways, "all_ways", lambda: (roast, braise))
    monkeypatch.setattr(ways, "ways_for", lambda dish: (roast,) if "roast" in dish else ())
    monkeypatch.setattr(ways, "dish_lines", dish_lines)
    typed, shown = ["", "", "", "", "", "", "9", "2", "", "roast", "braised"], list[str]()

    def ask(prompt: str) -> str:
        shown.append(prompt)
        return typed.pop(0)

    menu = read_menu("Main: roast beef; swede; leeks; beets; kale", NOON.date())
    found = from_menu(menu, "menu", {}, NOON, "Europe/Dublin", ask, shown.append)

    assert written == {"roast beef": roast, "swede": braise, "leeks": None, "beets": roast, "kale": braise}
    assert found.bare == ("leeks",)
    assert found.assumed == ()  # enter took what stood in brackets
    assert shown.count("What is done to it?\n1 roasted  2 braised") == 1
    assert [line for line in shown if line.endswith("? ")] == ["swede? ", "swede? ", "leeks? ", "beets? ", "kale? "]


def test_ways_are_shown_a_course_at_a_time_so_that_a_terminal_has_room() -> None:
    typed, shown = ["", "", "", "", "", "", "+", "2", "1", "3"], list[str]()

    def ask(prompt: str) -> str:
        shown.append(prompt)
        return typed.pop(0)

    found = from_menu(
        read_menu("Main: fish surprise; grey matter\nSweet: cloud nine", NOON.date()),
        *("menu", {}, NOON, "Europe/Dublin", ask, shown.append),
    )

    lists = [line for line in shown if line.startswith("What is done")]
    assert len(lists) == 4  # main, side, main again, sweet
    assert all(len(each.splitlines()) <= 12 and max(map(len, each.splitlines())) <= 80 for each in lists)
    assert found.bare == ()


def test_a_guest_who_gets_nothing_in_a_course_is_told_at_once(tmp_path: Path) -> None:
    """The vegan may eat the salad; the other courses hold meat, and milk and eggs."""
    menu = tmp_path / "menu.txt"
    menu.write_text(
        "Friday 18 December, 19:00\nGuests: Ada (vegan), Ben (vegetarian), Cleo\nStarter: green salad\n"
        "Main: roast lamb\nSweet: lemon tart\n"
    )
    told = new_plan(tmp_path / "plan.yaml", {"zone": "Europe/Dublin"}, NOON, None, print, menu)

    assert [line for line in told.splitlines() if line.startswith("Nothing for")] == [
        "Nothing for Ada in Main, Sweet: add a dish there, `only for: Ada`.",
        "Nothing for Ben in Main: add a dish there, `only for: Ben`.",
    ]
