"""The cook's book: what is entered, once; its text there and back; what of it is refused, with its line."""

import random
from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.facts.heat import COOLS_FROM, COOLS_TO, HEATS_TO, ROOM_CELSIUS
from board.learning.book import RATES, Added, Book, into_book, kinds_in, ovens_in, steps_in
from board.learning.book_text import book_text, read_book
from board.learning.changes import lessons_for
from board.learning.from_book import Written, written_from_book
from board.plan.edit.edits import Together
from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile, read_plan
from board.plan.snag import Snag
from board.review.kinds import Key
from board.review.observe import OvenTurn, PastEvening
from tests.conftest import HEAD
from tests.review.past import LASTS, SIMMER, evening

STOCK = Key("soup", "simmer the stock", "stovetop")
PLAN = (
    HEAD
    + """
kitchen:
  ovens: {oven: {shelves: 2}}
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Soup
        steps:
          - {step: simmer the soup, where: stovetop, takes: 30 min}
          - {step: Simmer the stock, where: stovetop, takes: 60 min}
"""
)


@pytest.fixture(scope="module")
def file(plan_from: Callable[[str], PlanFile]) -> PlanFile:
    return plan_from(PLAN)


def entered(file: PlanFile, *evenings: PastEvening, book: Book | None = None) -> Added:
    return into_book(book or Book(), file, evenings)


def test_evenings_are_entered_once_and_in_any_order(file: PlanFile) -> None:
    one, two = evening(1, {SIMMER: 33, STOCK: 70}), evening(2, {SIMMER: 35})
    both = entered(file, two, one)
    by_and_by = entered(file, two, book=entered(file, one).book)
    again = entered(file, one, one, two, book=both.book)

    assert (both.fresh, both.known) == (2, 0)
    assert both.book == by_and_by.book == again.book
    assert (again.fresh, again.known) == (0, 2)
    assert both.book.steps["simmer the soup", "stovetop"] == (("00000001", 33.0), ("00000002", 35.0))


def test_of_an_evening_of_another_plan_only_shared_work_is_entered_and_the_rest_later(
    file: PlanFile, plan_from: Callable[[str], PlanFile]
) -> None:
    peel = Key("soup", "peel the roots", "worktop")
    mixed = evening(1, {SIMMER: 33, peel: 12})
    first = entered(file, mixed)
    other = plan_from(PLAN.replace("Simmer the stock, where: stovetop", "peel the roots, where: worktop"))
    then = into_book(first.book, other, [mixed])

    assert set(first.book.steps) == {("simmer the soup", "stovetop")}
    assert then.fresh == 1
    assert then.book.steps["peel the roots", "worktop"] == (("00000001", 12.0),)
    assert then.book.steps["simmer the soup", "stovetop"] == (("00000001", 33.0),)


def test_rehearsals_and_what_was_set_aside_are_left_out(file: PlanFile) -> None:
    import dataclasses

    rehearsal = dataclasses.replace(evening(1, {SIMMER: 33}), rehearsal=True)
    lived = evening(2, {SIMMER: 300})
    forgotten = dataclasses.replace(lived, steps=(dataclasses.replace(lived.steps[0], aside="forgotten"),))
    found = entered(file, rehearsal, forgotten)

    assert found.book == Book()
    assert (found.fresh, found.known, found.rehearsals) == (0, 1, 1)


def test_turns_of_the_dial_are_brought_to_one_pair_of_temperatures(file: PlanFile) -> None:
    """By hand: heating goes by degrees a minute, so 80 of 155 degrees in 8 min are 15.5 min for all of them."""
    turn = OvenTurn("oven", 100, 180, False, 8.0)
    (found,) = ovens_in(entered(file, evening(1, {}, [turn])).book)

    assert (RATES["heats"].start, RATES["heats"].end) == (ROOM_CELSIUS, HEATS_TO) == (20, 175)
    assert (RATES["cools ajar"].start, RATES["cools ajar"].end) == (COOLS_FROM, COOLS_TO) == (200, 120)
    assert found.lasts.likely in (15, 16)


def test_one_evening_gives_one_figure_three_give_three_and_steps_of_a_kind_go_together(file: PlanFile) -> None:
    one = entered(file, evening(1, {SIMMER: 33})).book
    three = entered(file, *(evening(n, {SIMMER: minutes, STOCK: 60}) for n, minutes in enumerate((30, 33, 36)))).book
    (kind,) = kinds_in(three)
    lasts = next(each.lasts for each in steps_in(three) if each.name == "simmer the soup")

    assert [each.lasts.low for each in steps_in(one)] == [33]
    assert lasts.low < lasts.likely == 33 < lasts.high
    assert (kind.name, kind.where, kind.estimate.evenings) == ("simmer", "stovetop", 3)
    assert ("simmer", "oven") not in {(each.name, each.where) for each in kinds_in(three)}


def as_in_book(text: str, book: Book) -> tuple[str, PlanFile]:
    """The plan with the book's figures in it."""
    written = written_from_book(text, "supper.yaml", book, datetime(2026, 11, 28, 12, tzinfo=UTC))
    assert isinstance(written, Written), written[0].render()
    found = read_plan(written.text, "supper.yaml")
    assert isinstance(found, PlanFile), found[0].render()
    return written.text, found


OVEN_AS_IN_BOOK = PLAN.replace("{oven: {shelves: 2}}", "{Oven: {shelves: 2, heats: as in the book}}").lstrip()


@pytest.mark.parametrize("minutes", [12, 20, 26])
def test_a_planted_rate_comes_back_in_a_new_plan_within_five_per_cent(file: PlanFile, minutes: int) -> None:
    """Three evenings, from a plan that writes no rate, of an oven that takes so many minutes from 20 to 175 °C, by
    degrees a minute, and lies off by a twentieth each time. The usual rate is 15 min."""
    rng = random.Random(minutes)
    nights = [
        evening(n, {}, [OvenTurn("oven", before, after, False, (after - before) * minutes / 155 * rng.gauss(1, 0.05))
                        for before, after in ((20, 180), (150, 210))])
        for n in range(3)
    ]  # fmt: skip
    heats = as_in_book(OVEN_AS_IN_BOOK, entered(file, *nights).book)[1].plan.kitchen.ovens["Oven"].heats

    assert heats is not None
    assert (heats.start, heats.end) == (RATES["heats"].start, RATES["heats"].end)
    assert heats.minutes == pytest.approx(minutes, rel=0.05)


def test_before_three_evenings_an_odd_turn_is_drawn_in_to_the_usual_rate(file: PlanFile) -> None:
    """By hand: 60 min counts as no more than 15 · e^(2.5 · 0.15) = 21.8;
    15 counts a quarter beside it: 15 · e^(0.375 / 1.25) = 20.2."""
    (found,) = ovens_in(entered(file, evening(1, {}, [OvenTurn("oven", 20, 175, False, 60.0)])).book)

    assert found.lasts.likely == 20


def test_an_oven_is_one_whatever_its_capitals_and_spaces(file: PlanFile, plan_from: Callable[[str], PlanFile]) -> None:
    capitals = plan_from(PLAN.replace("{oven: {", "{OVEN: {"))
    first = entered(file, evening(1, {}, [OvenTurn("oven", 20, 175, False, 20.0)])).book
    both = into_book(first, capitals, [evening(2, {}, [OvenTurn("OVEN", 20, 175, False, 22.0)])]).book
    by_hand = book_text(both).replace("took: 00000001 20, 00000002 22", "took: 00000001 20")
    by_hand += "  - oven: Oven\n    way: heats\n    took: 00000002 22\n"

    assert both.ovens == {("oven", "heats"): (("00000001", 20.0), ("00000002", 22.0))}
    assert read_book(by_hand, "book.yaml") == both


def test_what_the_book_says_and_what_new_evenings_teach_are_told_apart(file: PlanFile) -> None:
    """By hand: the book has 20 min from three evenings; a fourth, of 30, is drawn
    in to 29.1, and the book counts a quarter beside it: 27."""
    old = [evening(n, {SIMMER: 33}, [OvenTurn("oven", 20, 175, False, 20.0)]) for n in range(3)]
    text = OVEN_AS_IN_BOOK.replace("Oven:", "oven:").replace("takes: 30 min", "takes: as in the book")
    text, taking = as_in_book(text, entered(file, *old).book)
    new = evening(9, {SIMMER: 50}, [OvenTurn("oven", 20, 175, False, 30.0)], LASTS)
    again, (soup, oven) = lessons_for(taking, old).lessons, lessons_for(taking, [new]).lessons
    made = Together((soup.edit, oven.edit)).made(text, taking)
    assert not isinstance(made, CannotEdit)

    assert again == ()
    assert (oven.name, oven.before, oven.after, oven.said) == ("oven heats", "20 min to 175 C", "27 min to 175 C", True)
    assert (soup.before, soup.said) == ("25 to 33 to 43 min", True)
    assert "ovens: {oven: {shelves: 2, heats: 27 min to 175 C}}" in made[0]
    assert f"where: stovetop, takes: {soup.after}}}" in made[0]
    assert "as in the book" not in text


marks = st.from_regex(r"\A[0-9a-f]{8}\Z")
names = st.text(min_size=1, max_size=20).map(lambda text: " ".join(text.casefold().split())).filter(bool)
seen = st.lists(st.tuples(marks, st.integers(1, 60_000).map(lambda tenths: tenths / 10)), min_size=1, max_size=4)


@given(st.dictionaries(st.tuples(names, names), seen, max_size=3), names)
def test_a_book_reads_back_as_it_was_written(steps: dict[tuple[str, str], list[tuple[str, float]]], plan: str) -> None:
    sorted_steps = {about: tuple(sorted(pairs)) for about, pairs in steps.items()}
    known = {mark: ("2026-11-28", plan) for pairs in steps.values() for mark, _ in pairs}
    book = Book(known, sorted_steps, {("oven", "cools ajar"): next(iter(sorted_steps.values()))} if steps else {})

    assert read_book(book_text(book), "book.yaml") == book


SOUND = """\
book: 1
evenings:
  0a1b2c3d: 2026-11-28 Soup supper
steps:
  - step: simmer the soup
    lane: stovetop
    took: 0a1b2c3d 32.5
ovens:
  - oven: oven
    way: heats
    took: 0a1b2c3d 14
"""
BAD = {
    "no YAML": ("took: 0a1b2c3d 32.5", "took: [0a1b2c3d", 7, "book 1"),
    "no book": ("book: 1\n", "", 1, "book 2"),
    "a later version": ("book: 1", "book: 2", 1, "book 2"),
    "no minutes": ("0a1b2c3d 32.5", "0a1b2c3d", 7, "book 3"),
    "no time at all": ("0a1b2c3d 32.5", "0a1b2c3d 0", 7, "book 3"),
    "no mark": ("0a1b2c3d 32.5", "last week 32.5", 7, "book 3"),
    "a strange evening": ("0a1b2c3d 32.5", "0a1b2c3e 32.5", 5, "book 3"),
    "no date": ("2026-11-28 Soup", "Soup", 3, "book 3"),
    "no lane": ("    lane: stovetop\n", "", 5, "book 3"),
    "a strange word": ("lane: stovetop", "lane: stovetop\n    note: mine", 7, "book 3"),
    "a strange way": ("way: heats", "way: burns", 10, "book 3"),
    "a strange part": ("ovens:", "oven:", 8, "book 3"),
    "no list": ("  - oven: oven", "    oven: oven", 9, "book 3"),
}


@pytest.mark.parametrize(("before", "after", "line", "code"), BAD.values(), ids=BAD)
def test_a_broken_book_is_told_with_its_line_and_how_to_mend_it(before: str, after: str, line: int, code: str) -> None:
    assert isinstance(read_book(SOUND, "book.yaml"), Book)
    broken = SOUND.replace(before, after, 1)
    found = read_book(broken, "book.yaml")

    assert broken != SOUND
    assert isinstance(found, list)
    assert all(isinstance(snag, Snag) and snag.mend for snag in found)
    place = found[0].place
    assert place is not None
    assert (found[0].code, place.line) == (code, line)


def test_a_book_written_before_lanes_had_their_name_is_read_as_before() -> None:
    assert read_book(SOUND.replace("lane:", "on:"), "book.yaml") == read_book(SOUND, "book.yaml")


def test_an_empty_file_is_an_empty_book() -> None:
    assert read_book("\ufeff\n", "book.yaml") == Book()
