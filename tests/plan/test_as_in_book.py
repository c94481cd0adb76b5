"""`takes: as in the book`: what is taken, told, and refused with its line."""

import textwrap

from board.plan.as_in_book import BookFigure, BookFigures
from board.plan.durations import Spread
from board.plan.edits import AddHistory, Together
from board.plan.load import PlanFile, read_plan
from board.plan.save import CannotEdit
from tests.conftest import HEAD

PLAN = (
    textwrap.dedent(HEAD).lstrip("\n")
    + """\
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Leek soup
        steps:
          - {step: Simmer the  soup, on: stovetop, takes: as in the book}
          - step: simmer the stock
            on: stovetop
            takes: As in the book
            or: {on: oven at 160 C, takes: as in the book}
jobs:
  - {job: fold napkins, takes: as in the book}
"""
)


def figure(low: int, likely: int, high: int, evenings: int) -> BookFigure:
    return BookFigure(Spread(low=low, likely=likely, high=high), evenings)


BOOK = BookFigures(
    {("simmer the soup", "stovetop"): figure(28, 33, 40, 4), ("fold napkins", "front-of-house"): figure(12, 12, 12, 1)},
    {("simmer", "stovetop"): figure(30, 45, 90, 6), ("simmer", "oven"): figure(80, 90, 100, 3)},
    "abc",
)


def read(book: BookFigures | None, text: str = PLAN) -> PlanFile | list[str]:
    found = read_plan(text, "supper.yaml", book)
    return found if isinstance(found, PlanFile) else [snag.render() for snag in found]


def test_a_step_takes_its_own_figure_else_that_of_its_kind_and_lane() -> None:
    found = read(BOOK)
    assert isinstance(found, PlanFile)
    tasks = {task.node.name: task for task in found.filled.tasks.values()}

    assert tasks["Simmer the  soup"].ways[0].takes == Spread(low=28, likely=33, high=40)
    assert tasks["simmer the stock"].ways[0].takes == Spread(low=30, likely=45, high=90)
    assert tasks["simmer the stock"].ways[1].takes == Spread(low=80, likely=90, high=100)
    assert tasks["fold napkins"].ways[0].takes.likely == 12


def test_check_is_told_what_was_taken_and_from_how_many_evenings() -> None:
    found = read(BOOK)
    assert isinstance(found, PlanFile)
    told = found.filled.assumed

    assert "takes 28 to 33 to 40 min, as in the book, from 4 evenings: Simmer the  soup" in told
    assert "takes 12 min, as in the book, from 1 evening: fold napkins" in told
    kind = "by its kind of work (stovetop, simmer)"
    assert f"takes 30 to 45 to 90 min, as in the book, from 6 evenings, {kind}: simmer the stock" in told


def test_without_a_book_each_such_step_is_a_snag_at_its_line() -> None:
    found = read(None)
    assert isinstance(found, list)

    assert [line.split(":")[1] for line in found] == ["16", "19", "20", "22"]
    assert all("P15 there is no cook's book yet" in each for each in found)
    assert all("Write a length, for example `takes: 25 min`." in each for each in found)


def test_what_the_book_does_not_know_is_a_snag_and_the_rest_is_read() -> None:
    found = read(BookFigures(BOOK.steps, {}, ""))
    assert isinstance(found, list)

    assert len(found) == 2
    assert "supper.yaml:19:20: P15 the book knows neither 'simmer the stock' nor other work of its kind" in found[0]


def test_other_snags_of_the_plan_are_told_too() -> None:
    found = read(BOOK, PLAN.replace("at: 19:15", "at: 99:15"))
    assert isinstance(found, list)

    assert not any("P15" in each for each in found)
    assert "supper.yaml:12:9: P07" in found[0]


def test_what_thaws_is_never_as_in_the_book() -> None:
    thaw = PLAN.replace(
        "takes: As in the book", "takes: as in the book\n            thaws: 2 kg in the fridge"
    ).replace("            on: stovetop\n", "")
    found = read(BOOK, thaw)
    assert isinstance(found, list)

    assert any("P15 what thaws takes as long as its weight asks" in each for each in found)


def test_what_was_taken_is_in_the_plans_digest_and_only_there_where_it_is_asked_for() -> None:
    other = BookFigures(BOOK.steps, BOOK.kinds, "abd")
    plain = PLAN.replace("as in the book", "20 min").replace("As in the book", "20 min")
    digests = [getattr(read(book, text), "digest", "") for text in (PLAN, plain) for book in (BOOK, other)]

    assert digests[0] != digests[1]
    assert digests[2] == digests[3]


def test_an_edit_of_such_a_plan_keeps_the_book() -> None:
    file = read(BOOK)
    assert isinstance(file, PlanFile)
    made = Together((AddHistory(("a line",)),)).made(PLAN, file)

    assert not isinstance(made, CannotEdit)
    text, after = made
    assert text.count("as in the book") == 3
    assert after.filled.assumed == file.filled.assumed
