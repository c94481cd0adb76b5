"""What a menu's lines say, in any order and in people's own ways of writing them."""

from datetime import date, timedelta

import pytest
from dateutil import parser
from hypothesis import given, settings
from hypothesis import strategies as st

from board.importing.starter import menu as reading
from board.importing.starter.head import Helper
from board.importing.starter.menu import MOST_COURSES, MOST_DISHES, MOST_LINES, Menu, read_menu
from board.importing.starter.not_a_menu import NotAMenu
from board.importing.ways.ways import Way
from board.plan.phrases.guests import Guest, parse_guest
from tests.examples import times

SUNDAY = date(2026, 11, 29)
MEAL = "\nMain: beef"
THE_MENU = """\
Sat 19 Dec 18:30, 7 guests: Ada coeliac, Rory no shellfish, 5 others
one oven, 4 rings, fridge 60 l, Dan helps from 18:00
Nibbles: marinated olives; onion tartlets
Starter: leek soup
Main: braised duck legs; potato gratin; green beans
Sweet: lemon parfait
Coffee
"""


def read(text: str) -> Menu:
    return read_menu(text, SUNDAY)


def told(text: str) -> NotAMenu:
    with pytest.raises(NotAMenu) as wrong:
        read(text)
    return wrong.value


def dishes(text: str) -> list[tuple[str, ...]]:
    return [course.dishes for course in read(text).courses]


def test_a_menu_as_it_stands_on_an_envelope() -> None:
    menu = read(THE_MENU)

    assert menu.found == {"date": date(2026, 12, 19), "arrive": "18:30", "guests": 7, "ovens": 1, "rings": 4}
    assert menu.guests == ("Ada coeliac", "Rory no shellfish", "5 others")
    assert menu.cold == {"fridge": "60 litres"}
    assert menu.helpers == (Helper("Dan", "18:00"),)
    assert [(course.name, course.dishes) for course in menu.courses] == [
        ("Nibbles", ("marinated olives", "onion tartlets")),
        ("Starter", ("leek soup",)),
        ("Main", ("braised duck legs", "potato gratin", "green beans")),
        ("Sweet", ("lemon parfait",)),
        ("Coffee", ("Coffee",)),
    ]
    assert menu.notes == ("Dan helps, and is taken to be one of the guests who are not named",)


@pytest.mark.parametrize(
    ("said", "event", "day", "hour", "guests"),
    [
        ("Game night Friday 19:00 for 8", "Game night", date(2026, 12, 4), "19:00", 7),
        ("Thai night Saturday 19:00 for 6", "Thai night", date(2026, 12, 5), "19:00", 5),
        ("Kids birthday tea Saturday 3pm 12 kids", "Kids birthday tea", date(2026, 12, 5), "15:00", 12),
    ],
)
def test_an_evening_with_its_day_and_hour_behind_its_name_is_no_dish(
    said: str, event: str, day: date, hour: str, guests: int
) -> None:
    menu = read_menu(f"{said}\nRoast beef\nPlum tart", SUNDAY)

    assert {key: menu.found[key] for key in ("event", "date", "arrive", "guests")} == {
        "event": event, "date": day, "arrive": hour, "guests": guests,
    }  # fmt: skip
    assert [dish for course in menu.courses for dish in course.dishes] == ["Roast beef", "Plum tart"]


def test_a_dish_of_no_known_way_is_kept_by_its_name_before_the_first_course() -> None:
    menu = read_menu("Fesenjan with rice\nKuku sabzi\nSweet: plum tart", SUNDAY)

    assert [dish for course in menu.courses for dish in course.dishes][:2] == ["Fesenjan with rice", "Kuku sabzi"]


def test_the_order_of_the_lines_is_all_the_same() -> None:
    lines = THE_MENU.splitlines()
    turned = "\n".join([*lines[2:], lines[1], lines[0]])

    assert read(turned).found == read(THE_MENU).found
    assert read(turned).guests == read(THE_MENU).guests
    assert [c.dishes for c in read(turned).courses] == [c.dishes for c in read(THE_MENU).courses]


@pytest.mark.parametrize("ends", ["\r\n", "\r"])
def test_line_ends_of_other_machines_and_a_mark_at_the_start(ends: str) -> None:
    assert read("\ufeff" + THE_MENU.replace("\n", ends)) == read(THE_MENU)


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("Sat 19 Dec", "2026-12-19"), ("on Saturday the 19th of December", "2026-12-19"), ("19 Dec 2026", "2026-12-19"),
        ("December 19th, 2026", "2026-12-19"), ("Date: 2026-12-19", "2026-12-19"), ("19/12/2026", "2026-12-19"),
        ("19.12.2026", "2026-12-19"), ("12/19/2026", "2026-12-19"), ("19.12.", "2026-12-19"), ("19/12", "2026-12-19"),
        ("12/12", "2026-12-12"), ("tomorrow", "2026-11-30"), ("Saturday", "2026-12-05"), ("on Friday", "2026-12-04"),
        ("this Sunday", "2026-11-29"), ("Sat 12th, 7ish", "2026-12-12"),
        ("Sat, 5 Dec, 7 pm", "2026-12-05"), ("When: 5 Dec at 19:00", "2026-12-05"),
        ("Fecha: 2026-12-19", "2026-12-19"), ("New Year supper, 31 Dec", "2026-12-31"),
    ],
)  # fmt: skip
def test_days(said: str, day: str) -> None:
    """Sunday 29 November 2026 is today; weekdays reckoned from a calendar of 2026."""
    assert read(said + MEAL).found["date"].isoformat() == day


@settings(deadline=None, max_examples=times(200))
@given(
    st.dates(min_value=SUNDAY + timedelta(days=1), max_value=date(2035, 12, 31)),
    st.sampled_from(["%a %d %b %Y", "%d %B %Y", "%B %d, %Y", "%A, %d. %B %Y", "%Y-%m-%d", "%A the %dth of %B %Y"]),
)
def test_days_are_read_as_the_reference_library_reads_them(day: date, form: str) -> None:
    """Against python-dateutil's parser, which is told to skip what is no part of a date (`the`)."""
    said = day.strftime(form)

    found = read(f"{said}, 7 pm, 4 guests{MEAL}").found

    assert found["date"] == parser.parse(said, fuzzy=True).date() == day


@settings(deadline=None, max_examples=times(200))
@given(st.times(), st.sampled_from(["%H:%M", "%I:%M %p", "%I.%M%p", "%I:%M%p"]))
def test_hours_are_read_as_the_reference_library_reads_them(at: object, form: str) -> None:
    said = at.strftime(form)  # type: ignore[attr-defined]  # a time
    expected = parser.parse(said.replace(".", ":")).strftime("%H:%M")

    if "09:00" <= expected <= "22:00":
        assert read(f"{said}, 4 guests{MEAL}").found["arrive"] == expected
    else:
        assert "outside 09:00 to 22:00" in str(told(f"{said}, 4 guests{MEAL}"))


@pytest.mark.parametrize(
    ("said", "part"),
    [
        ("5/12", "may be two days"), ("5/6/2027", "may be two days"), ("next Saturday", "may be two days"),
        ("Fri 19 Dec 2026", "is a Saturday"), ("2025-12-19", "which is over"), ("1 Dec 2020", "which is over"),
        ("31 Nov", "not a day of the calendar"), ("Sat 13th", "no such day"),
        ("31.31.2026", "not a day"), ("2099-01-01", "too far off"),
        ("19 Dec 2026\nDate: 20 Dec 2026", "the day is said twice"), ("25:00", "not a time of day"),
        ("13 pm", "not a time of day"), ("8:00", "outside 09:00 to 22:00"), ("7 pm\nTime: 8 pm", "second hour"),
    ],
)  # fmt: skip
def test_days_and_hours_that_will_not_do(said: str, part: str) -> None:
    if part == "second hour":
        assert part in read(said + MEAL).notes[0]
        return
    wrong = told(f"one oven\n{said}{MEAL}")

    assert part in str(wrong)
    assert wrong.line in (2, 3)


def test_a_day_far_off_is_told_where_no_year_is_written() -> None:
    assert read("28 Nov" + MEAL).notes == ("line 1: '28 Nov' is taken as 28 November 2027",)


@pytest.mark.parametrize(
    ("said", "count", "entries"),
    [
        ("7 guests", 7, ()), ("seven guests", 7, ()), ("Guests: 7", 7, ()), ("4 friends", 4, ()),
        ("for 8", 7, ()), ("8 people", 7, ()), ("we are six", 5, ()), ("We are 5 plus me", 5, ()),
        ("10 adults and 2 kids", 12, ("10 adults", "2 kids")), ("Guests: Lucy + baby Finn", 2, ("Lucy", "baby Finn")),
        ("Supper for 8 at 7 pm", 7, ()),
        ("table for nine", 8, ()), ("People: 8", 7, ()),
        ("Guests: Ada, coeliac; Ben; 2 vegetarians", 4, ("Ada, coeliac", "Ben", "2 vegetarians")),
        ("7 guests (Ada coeliac, 6 others)", 7, ("Ada coeliac", "6 others")),
        ("7 guests, Ada coeliac", 7, ("Ada coeliac", "6 others")),
        ("5 guests, one vegetarian, two vegans", 5, ("1 vegetarian", "2 vegans", "2 others")),
        ("Guests: Ada, coeliac, no nuts, and Ben", 2, ("Ada, coeliac, no nuts", "Ben")),
        ("Guests: me, Ada and Ben", 2, ("Ada", "Ben")),
        ("Guests: Ada, allergic to nuts and eggs, Ben", 2, ("Ada, allergic to nuts and eggs", "Ben")),
        ("Guests:\n- Ada (GF)\n- Ben\n\n", 2, ("Ada (GF)", "Ben")),
        ("Guests: Ada, Ben\nAllergies: Ben severe nut allergy", 2, ("Ada", "Ben, severe nut allergy")),
        ("Guests: Ada, Ben\nAllergies: none", 2, ("Ada", "Ben")),
        ("guests at 18:00: Ada; Ben, EpiPen for nuts", 2, ("Ada", "Ben, EpiPen for nuts")),
        ("Guests: Leo, 3 years old; Greta, over 70", 2, ("Leo, 3 years old", "Greta, over 70")),
    ],
)  # fmt: skip
def test_guests(said: str, count: int, entries: tuple[str, ...]) -> None:
    menu = read(said + MEAL)

    assert (menu.found["guests"], menu.guests) == (count, entries)


def needs(said: str) -> dict[str, tuple[str, ...]]:
    """What each guest of a menu must not have."""
    guests = [Guest(**parse_guest(entry)) for entry in read(said + MEAL).guests]
    return {guest.name: guest.must_not for guest in guests}


@pytest.mark.parametrize(
    ("said", "whose", "told"),
    [
        ("Rae and Sol have a nut allergy", {"Rae": "no nuts", "Sol": "no nuts"}, False),
        ("Rae and Sol eat halal", {"Rae": "halal", "Sol": "halal"}, False),
        ("Rae & Sol are vegan", {"Rae": "vegan", "Sol": "vegan"}, False),
        ("Rae and Sol both avoid pork", {"Rae": "no pork", "Sol": "no pork"}, False),
        ("Rae and Sol cannot have eggs", {"Rae": "no eggs", "Sol": "no eggs"}, False),
        ("Rae, Sol and Tam don't eat fish", {"Rae": "no fish", "Sol": "no fish", "Tam": "no fish"}, False),
        ("Rae, Sol, and Tam don't eat fish", {"Rae": "no fish", "Sol": "no fish", "Tam": "no fish"}, False),
        ("Rae and Sol, both vegan", {"Rae": "vegan", "Sol": "vegan"}, False),
        ("Rae and Sol cannot chew", {"Rae": '"cannot chew"', "Sol": '"cannot chew"'}, False),
        ("Rae and Sol coeliac", {"Rae": "coeliac", "Sol": "coeliac"}, True),
        ("Rae and Sol, coeliac", {"Rae": "coeliac", "Sol": "coeliac"}, True),
        ("Rae and Sol (coeliac)", {"Rae": "coeliac", "Sol": "coeliac"}, True),
        ("Rae, Sol and Tam vegetarian", {"Rae": "vegetarian", "Sol": "vegetarian", "Tam": "vegetarian"}, True),
        ("Rae and Sol severe nut allergy",
         {"Rae": "severe allergy to nuts", "Sol": "severe allergy to nuts"}, True),
        ("Uma vegan, Rae and Sol coeliac, Vic", {"Uma": "vegan", "Rae": "coeliac", "Sol": "coeliac", "Vic": ""}, True),
        ("Rae and Sol coeliac and Uma vegan", {"Rae": "coeliac", "Sol": "coeliac", "Uma": "vegan"}, True),
        ("Rae, Sol vegan", {"Rae": "", "Sol": "vegan"}, False),
        ("Rae, Sol (vegan)", {"Rae": "", "Sol": "vegan"}, False),
        ("Rae and Sol is coeliac", {"Rae": "", "Sol": "coeliac"}, False),
        ("Rae and Sol has a nut allergy", {"Rae": "", "Sol": "no nuts"}, False),
        ("Rae and Sol pregnant", {"Rae": "", "Sol": "pregnant"}, False),
        ("Rae and 2 vegetarians", {"Rae": "", "vegetarians": "vegetarian"}, False),
        ("Rae vegan and Sol coeliac", {"Rae": "vegan", "Sol": "coeliac"}, False),
    ],
)  # fmt: skip
def test_what_is_said_of_several_guests_is_of_each(said: str, whose: dict[str, str], told: bool) -> None:
    found = needs(f"Guests: {said}")

    assert {name: ", ".join(each) for name, each in found.items()} == whose
    assert any("is taken for" in note for note in read(f"Guests: {said}{MEAL}").notes) is told


def test_what_was_taken_for_each_is_marked_in_the_plan() -> None:
    assert read("Guests: Rae and Sol coeliac" + MEAL).guests == ("Rae, probably coeliac", "Sol coeliac")


@pytest.mark.parametrize(
    ("said", "whose"),
    [
        ("Guests: Nonna mashed things only, Sol", {"Nonna": '"mashed things only"', "Sol": ""}),
        ("Guests: Nonna, soft food only, Sol", {"Nonna": '"soft food only"', "Sol": ""}),
        ("Guests: Rae takes heart tablets", {"Rae": '"takes heart tablets"'}),
        ("Guests: Rae (nursing), Sol", {"Rae": '"nursing"', "Sol": ""}),
        ("Guests: Rae diabetic", {"Rae": '"diabetic"'}),
        ("Guests: Rae, diabetic", {"Rae": '"diabetic"'}),
        ("Guests: Rae keto and Sol vegan", {"Rae": '"keto"', "Sol": "vegan"}),
        ("3 guests, Rae is diabetic", {"Rae": '"is diabetic"', "others": ""}),
        ("3 guests\nRae is diabetic", {"Rae": '"is diabetic"', "others": ""}),
        (
            "3 guests\none oven\nRae is diabetic, Sol nut allergy",
            {"Rae": '"is diabetic"', "Sol": "no nuts", "other": ""},
        ),
        ("3 guests, Rae and Sol have a nut allergy", {"Rae": "no nuts", "Sol": "no nuts", "other": ""}),
    ],
)
def test_a_need_that_is_not_understood_is_kept_with_its_guest_and_told(said: str, whose: dict[str, str]) -> None:
    found = needs(said)

    assert {name: ", ".join(each) for name, each in found.items()} == whose
    unread = [each for each in whose.values() if each.startswith('"')]
    notes = [note for note in read(said + MEAL).notes if "is not understood" in note]
    assert len(notes) == len(unread)


@pytest.mark.parametrize(
    ("said", "part"),
    [
        ("0 guests", "'0' is not a number from 1 to 100"), ("900 guests", "'900' is not a number from 1 to 100"),
        ("for 1", "'0' is not a number from 1 to 100"), ("Guests: no nuts", "say whose it is"),
        ("Guests: Ada leek soup", "put a comma after the name"), ("2 guests: Ada, Ben, Cy", "3 are listed"),
        ("Guests: Ada, Ada", "listed twice"), ("Guests: Ada 7", "may be an age"),
        ("Allergies: peanuts", "say whose it is"), ("Guests: Ada, coelliac", "'coelliac' is not a diet"),
    ],
)  # fmt: skip
def test_guests_that_cannot_be_read_are_told_by_the_guest_readers_own_words(said: str, part: str) -> None:
    wrong = told(f"one oven\n{said}{MEAL}")

    assert part in str(wrong)
    assert wrong.line in (0, 2)


@pytest.mark.parametrize(
    "text",
    ["Main: beef\nRory: no shellfish", "Main: beef, no nuts", "Main: beef\nAda is vegan",
     "Main: beef\nAda has a nut allergy", "Note: somebody is allergic\nMain: beef", "Note: Ada is coeliac\nMain: beef",
     "Main: beef; vegan"],
)  # fmt: skip
def test_what_a_guest_must_not_eat_is_never_left_out_or_cooked(text: str) -> None:
    assert "reads like what a guest must not eat" in str(told(text))


@pytest.mark.parametrize(
    "dish", ["nuts", "vegan lasagne", "cake without nuts", "gluten-free bread", "vegetarian option"]
)
def test_a_dish_may_speak_of_diets(dish: str) -> None:
    assert dishes(f"Main: {dish}") == [(dish,)]


@pytest.mark.parametrize(
    ("said", "ovens", "rings"),
    [
        ("one oven, 4 rings", 1, 4), ("no oven and 1 ring", 0, 1), ("2 ovens; six burners", 2, 6),
        ("oven + 4 rings", 1, 4),
        ("Kitchen: double oven, 5-ring hob", 2, 5), ("Ovens: 2, rings: 3", 2, 3), ("a big oven\n4 gas burners", 1, 4),
        ("4 induction rings, an oven", 1, 4),
    ],
)  # fmt: skip
def test_kitchens(said: str, ovens: int, rings: int) -> None:
    found = read(said + MEAL).found

    assert (found["ovens"], found["rings"]) == (ovens, rings)


@pytest.mark.parametrize(
    ("said", "cold"),
    [
        ("fridge 60 l", {"fridge": "60 litres"}), ("60 litres of fridge", {"fridge": "60 litres"}),
        ("Fridge: 45.5 liters", {"fridge": "45.5 litres"}), ("60 l free in the fridge", {"fridge": "60 litres"}),
        ("fridge 60 l, freezer 20 l", {"fridge": "60 litres", "freezer": "20 litres"}),
    ],
)  # fmt: skip
def test_room_in_the_cold(said: str, cold: dict[str, str]) -> None:
    assert read(said + MEAL).cold == cold


@pytest.mark.parametrize(
    ("said", "helpers"),
    [
        ("Dan helps from 18:00", [Helper("Dan", "18:00")]), ("Dan helps", [Helper("Dan")]),
        ("Dan and Mia help from 5 pm until 9 pm", [Helper("Dan", "17:00", "21:00"), Helper("Mia", "17:00", "21:00")]),
        ("Helpers: Dan 17:00-22:00, Mia", [Helper("Dan", "17:00", "22:00"), Helper("Mia")]),
        ("hired help Bo from 17:00", [Helper("Bo", "17:00", None, True)]),
        ("Hired: Bo from 17:00 to 23:00", [Helper("Bo", "17:00", "23:00", True)]),
        ("Aunt Jo will help out from 6.30pm", [Helper("Aunt Jo", "18:30")]), ("I help", []),
    ],
)  # fmt: skip
def test_who_helps(said: str, helpers: list[Helper]) -> None:
    assert list(read(said + MEAL).helpers) == helpers


@pytest.mark.parametrize("said", ["Dan helps on his knees", "Dan helps\nDan helps from 18:00", "fridge 0 l",
                                  "fridge 99999 l", "11 ovens", "21 rings", "Zone: Europe/Dublim"])  # fmt: skip
def test_kitchens_and_help_that_will_not_do(said: str) -> None:
    assert told(said + MEAL).line > 0


def test_a_zone_and_a_name() -> None:
    found = read("Ada's birthday, Europe/Dublin, 7 guests" + MEAL).found

    assert (found["event"], found["zone"]) == ("Ada's birthday", "Europe/Dublin")
    assert read("# Lanterns\nMain: beef").found["event"] == "Lanterns"
    assert read("Event: Lanterns: a night\nMain: beef").found["event"] == "Lanterns: a night"
    assert read("Lanterns\n7 guests\nMain: beef").notes == ("line 1: 'Lanterns' is taken for the evening's name",)
    assert read("Sunday roast\n7 guests\nMain: beef").found["event"] == "Sunday roast"
    assert "event" not in read("Christmas pudding\nbrandy butter").found


@pytest.mark.parametrize(
    ("line", "name", "at", "outdoors"),
    [
        ("Main 20:30: beef", "Main", "20:30", False), ("20:30 Main: beef", "Main", "20:30", False),
        ("Main at 8.30 pm: beef", "Main", "20:30", False), ("Main (20:30): beef", "Main", "20:30", False),
        ("20:30 – Main – beef", "Main", "20:30", False), ("Main: beef", "Main", None, False),
        ("Main beef", "Main", None, False), ("Main – beef", "Main", None, False),
        ("MAIN COURSE\nbeef", "MAIN COURSE", None, False),
        ("Main in the garden: beef", "Main", None, True), ("Main (outside) 20:30: beef", "Main", "20:30", True),
        ("From the fire: beef", "From the fire", None, False), ("Second course: beef", "Second course", None, False),
        ("## Fire\n- beef", "Fire", None, False), ("The grill\n  beef", "The grill", None, False),
        ("**Main:**\n* beef", "Main", None, False), ("3. Main: beef", "Main", None, False),
        ("主菜：beef", "主菜", None, False),
    ],
)  # fmt: skip
def test_courses(line: str, name: str, at: str | None, outdoors: bool) -> None:
    (course,) = read(line).courses

    assert (course.name, course.at, course.outdoors, course.dishes) == (name, at, outdoors, ("beef",))


@pytest.mark.parametrize(
    ("line", "found"),
    [
        ("duck; gratin; beans", ("duck", "gratin", "beans")), ("duck, gratin, beans", ("duck", "gratin", "beans")),
        ("duck, gratin & beans", ("duck", "gratin", "beans")), ("duck, gratin and beans", ("duck", "gratin", "beans")),
        ("duck, slowly; gratin", ("duck, slowly", "gratin")), ("fish & chips", ("fish & chips",)),
        ("soup, fish and chips", ("soup", "fish and chips")),
        ("salad (leaves, apple), bread", ("salad (leaves, apple)", "bread")),
        ("braised duck & potato gratin", ("braised duck", "potato gratin")), ("duck · gratin", ("duck", "gratin")),
        ("bread & butter pudding", ("bread & butter pudding",)),
        ("beef 1.5 kg, 1/2 pineapple", ("beef 1.5 kg", "1/2 pineapple")),
        ("魚、豆", ("魚", "豆")), ("[b]duck[/b]", ("[b]duck[/b]",)), ("\x1b[31mduck", ("\ufffd[31mduck",)),
    ],
)  # fmt: skip
def test_dishes_of_a_line(line: str, found: tuple[str, ...]) -> None:
    assert dishes(f"Main: {line}") == [found]


def test_dishes_on_lines_of_their_own_and_sides() -> None:
    assert dishes("Main\nduck\n- gratin\nSides: beans; cabbage\nSweet\n1. tart\n2. cream") == [
        ("duck", "gratin", "beans", "cabbage"), ("tart", "cream")
    ]  # fmt: skip
    assert dishes("- soup\n- beef") == [("Soup",), ("beef",)]
    assert dishes("Main: beef\nCheese\nCoffee + mints") == [("beef",), ("Cheese",), ("Coffee + mints",)]
    assert dishes("Soup\nMain: beef\nCheese\nCoffee and tea") == [
        ("Soup",),
        ("beef",),
        ("Cheese",),
        ("Coffee and tea",),
    ]


@pytest.mark.parametrize(
    ("text", "drink"),
    [
        ("Main: duck; with red wine", "red wine"), ("Main (with dry cider): duck", None),
        ("Main: duck (with dry cider)", "dry cider"),
        ("Main: duck\nWine: riesling", "riesling"), ("Main: duck\nDrink: dry cider, 4 bottles", "dry cider, 4 bottles"),
        ("Main: duck, drink: apple juice", "apple juice"),
    ],
)  # fmt: skip
def test_a_courses_drink(text: str, drink: str | None) -> None:
    (course,) = read(text).courses

    assert (course.drink, course.dishes) == (drink, ("duck",))


def test_courses_by_empty_lines_where_none_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reading.ways, "ways_for", lambda dish: ())
    menu = read("leek soup\n\nduck\ngratin\n\nplum tart")

    assert [(course.name, len(course.dishes)) for course in menu.courses] == [
        ("Course 1", 1),
        ("Course 2", 2),
        ("Course 3", 1),
    ]
    assert "no course is named" in menu.notes[0]


def test_dishes_of_no_course_stand_where_such_dishes_do(monkeypatch: pytest.MonkeyPatch) -> None:
    known = {"duck": "main", "gratin": "side", "plum tart": "sweet", "leek soup": "starter", "dip": "nibbles"}
    monkeypatch.setattr(reading.ways, "ways_for", lambda dish: (Way("some way", known[dish]),) if dish in known else ())

    menu = read("plum tart\nleek soup\nduck\ngratin\nbeans\ndip")

    assert [(course.name, course.dishes) for course in menu.courses] == [
        ("Nibbles", ("dip",)), ("Starter", ("leek soup",)), ("Main", ("duck", "gratin", "beans")),
        ("Sweet", ("plum tart",)),
    ]  # fmt: skip
    assert "stand in no course" in menu.notes[0]


@pytest.mark.parametrize(
    ("text", "line", "part"),
    [
        ("", 0, "the menu is empty"), ("\n \n***\n", 0, "the menu is empty"),
        ("7 guests\none oven\n", 0, "names no dish"),
        ("Main:\n", 0, "names no dish"), ("Main: beef\nStarter: soup\nmain: lamb", 3, "Main is named on line 1 too"),
        ("Main: beef; Beef", 1, "is named twice"), ("Main: " + "a" * 130, 1, "at most 120 characters"),
        ("Main: " + "a" * 600, 1, "at most 500 characters"),
        ("Main: " + "; ".join(f"dish {n}" for n in range(50)) + "\n" + "\n".join(f"plate {n}" for n in range(150)), 0,
         f"there are 200 dishes; a plan from a menu takes up to {MOST_DISHES}"),
        ("\n".join(f"Act {n}x: dish {n}" for n in range(30)), MOST_COURSES + 1, f"takes up to {MOST_COURSES}"),
        ("a\n" * 1000, MOST_LINES + 1, f"at most {MOST_LINES} lines"),
    ],
)  # fmt: skip
def test_what_is_no_menu_is_told(text: str, line: int, part: str) -> None:
    wrong = told(text)

    assert part in str(wrong)
    assert wrong.line == line


@pytest.mark.parametrize("line", ["7 guests, hats", "Where: the barn", "Καλεσμένοι: έξι", "Dessert:"])
def test_what_is_not_understood_is_told_with_its_line(line: str) -> None:
    (note,) = read(f"one oven\n{line}\n4 rings\nMain: beef").notes

    assert note.startswith("line 2: ")
    assert "left out" in note


@pytest.mark.parametrize(
    ("said", "clock"), [("at 7", "19:00"), ("7ish", "19:00"), ("12 o'clock", "12:00"), ("at 10", "10:00")]
)
def test_an_hour_alone_is_taken_and_told(said: str, clock: str) -> None:
    menu = read(f"Sat 12 Dec, {said}, 4 guests{MEAL}")

    assert menu.found["arrive"] == clock
    assert [note for note in menu.notes if "taken as" in note] == [f"line 1: {said!r} is taken as {clock}"]
