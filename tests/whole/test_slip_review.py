"""What slipped stands in the review, for people and for other programs."""

import io

from rich.console import Console

from board.evening.events import EveningOpened
from board.evening.wishes import DelayGuests, DropDish, Lengthen
from board.output import words as output_words
from board.output.review import print_review, review_form
from board.review.measure import measured
from board.sheet.run_sheet import RunSheet
from tests.conftest import Host, at
from tests.evening.kitchens import play, with_dishes


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
