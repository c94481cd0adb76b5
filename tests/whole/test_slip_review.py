"""What slipped stands in the review, for people and for other programs."""

import io

from msgspec.structs import replace
from rich.console import Console

from board.evening.events import EveningOpened
from board.evening.wishes import DelayGuests, DropDish, Lengthen, TakeBack, TakeSheet
from board.output import words as output_words
from board.output.review import print_review, review_form
from board.review.measure import measured
from board.session.replan.gain import Costs, Offer
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at
from tests.evening.kitchens import play, with_dishes


def test_each_timetable_that_was_offered_stands_in_the_review_with_what_came_of_it(little: RunSheet) -> None:
    host = Host(little, at("16:58"))
    courses = (("Main", at("19:42"), at("19:36")),)
    for clock, minutes in (("17:10", 0), ("17:20", 1)):
        host.at(clock)
        sheet = replace(little, solve_seconds=float(minutes))
        host.evening.offered(Offer(sheet, Costs(late=12, kept=0, away=9), Costs(late=6, kept=0, away=5), courses))
    assert host.wish(TakeSheet(sheet)) is None
    opened = host.evening.state.history[0]
    assert isinstance(opened, EveningOpened)
    found = measured(host.evening.state, opened)
    out = io.StringIO()

    print_review(found, Console(file=out, width=100))

    assert "Sat 17:10 Main 19:36 instead of 19:42, 4 min more with your guests: not taken" in out.getvalue()
    assert "Sat 17:20 Main 19:36 instead of 19:42, 4 min more with your guests: taken" in out.getvalue()
    assert [(each["at"][11:16], each["taken"]) for each in review_form(found)["offers"]] == [
        ("17:10", False),
        ("17:20", True),
    ]
    host.wish(TakeBack())
    assert [each.taken for each in measured(host.evening.state, opened).offers] == [False, False]


def test_a_slip_stands_in_the_review_with_its_time(little: RunSheet) -> None:
    host = Host(with_dishes(little), at("16:58"))
    play(host, ("17:00", "chop"))
    host.wish(Lengthen(("chop",), 5))
    host.at("17:10")
    host.wish(DelayGuests(10))
    host.wish(DropDish("Sauce", "Stew"))
    opened = host.evening.state.history[0]
    assert isinstance(opened, EveningOpened)
    found = measured(host.evening.state, opened)
    out = io.StringIO()

    print_review(found, Console(file=out, width=100))
    form = review_form(found)

    text = out.getvalue()
    assert output_words.SLIPPED in text
    for line in ("Sat 17:00 chop: +5 min", "Sat 17:10 guests 10 min late", "Sat 17:10 Sauce dropped"):
        assert line in text
    assert [(s["kind"], s["steps"], s["minutes"]) for s in form["slips"]] == [
        ("longer", ["chop"], 5),
        ("guests", ["arrive"], 10),
        ("dropped", ["sauce"], None),
    ]


def test_an_evening_without_slips_says_nothing_of_them(little: RunSheet) -> None:
    host = Host(little, at("16:58"))
    opened = host.evening.state.history[0]
    assert isinstance(opened, EveningOpened)
    out = io.StringIO()

    print_review(measured(host.evening.state, opened), Console(file=out, width=100))

    assert output_words.SLIPPED not in out.getvalue()
