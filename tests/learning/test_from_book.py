"""`as in the book`, written out: what is written where, what is told and asked about, what the book does not know."""

import textwrap
from datetime import UTC, datetime

import jsonschema
import pytest

from board.checks.plan.every import check
from board.learning.book import Book
from board.learning.changes import marks_of
from board.learning.from_book import Written, written_from_book
from board.plan.load import PlanFile, read_plan
from board.plan.phrases.durations import Spread
from board.plan.phrases.stations import HeatRate
from board.plan.places import read_yaml
from board.plan.schema import json_schema
from board.plan.snag import Snag
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
          - {step: Simmer the  soup, where: stovetop, takes: as in the book}  # slowly
          - step: simmer the stock
            where: stovetop
            takes: As in the book
            or: {where: oven at 160 C, takes: as in the book}
jobs:
  - {job: fold napkins, takes: as in the book}
"""
)
OVEN_PLAN = PLAN[: PLAN.index("courses:")] + (
    """\
kitchen:
  ovens:
    Big  Oven: {shelves: 3, heats: As in  the book}  # the old one
    small oven:
      heats: 9 min to 180 C
courses:
  - course: Bread
    at: 19:15
    dishes:
      - {dish: Bread, steps: [{step: bake the bread, where: Big  Oven at 200 C, takes: 40 min}]}
"""
)
ASKED = "heats: As in  the book"
NOW = datetime(2026, 11, 28, 23, 30, tzinfo=UTC)


def seen(*minutes: float) -> tuple[tuple[str, float], ...]:
    """One evening after the other."""
    return tuple((f"{n:08x}", each) for n, each in enumerate(minutes))


BOOK = Book(
    {f"{n:08x}": (f"2026-11-{n + 1:02}", "Soup supper") for n in range(6)},
    {
        ("simmer the soup", "stovetop"): seen(33, 33, 33, 33),
        ("simmer the beans", "stovetop"): seen(40, 44, 48, 45, 41, 50),
        ("simmer the plums", "oven"): seen(90, 90, 90),
        ("fold napkins", "front-of-house"): seen(12),
    },
    {("big oven", "heats"): seen(18, 18, 18), ("big oven", "cools"): seen(20)},
)


def written(text: str = PLAN, book: Book = BOOK) -> Written:
    found = written_from_book(text, "supper.yaml", book, NOW)
    assert isinstance(found, Written), [snag.render() for snag in found]
    return found


def plan_of(text: str) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), [snag.render() for snag in found]
    return found


def missing(text: str, book: Book = BOOK) -> list[str]:
    return [snag.render() for snag in written(text, book).missing]


def test_a_plan_that_waits_for_the_book_says_so_at_each_line() -> None:
    found = read_plan(PLAN, "supper.yaml")
    assert isinstance(found, list)

    assert [(snag.code, snag.place.line if snag.place else 0) for snag in found] == [
        ("plan 15", 16), ("plan 15", 19), ("plan 15", 20), ("plan 15", 22),
    ]  # fmt: skip
    assert all("platecall lessons PLAN --from-book" in snag.mend for snag in found)


def test_a_step_takes_its_own_figure_else_that_of_its_kind_and_lane() -> None:
    tasks = {task.node.name: task for task in plan_of(written().text).filled.tasks.values()}

    assert tasks["Simmer the  soup"].ways[0].takes.likely == 33
    assert 33 < tasks["simmer the stock"].ways[0].takes.likely < 46  # beans and soup, both simmered
    assert tasks["simmer the stock"].ways[1].takes.likely == 90
    assert tasks["fold napkins"].ways[0].takes == Spread(low=12, likely=12, high=12)


def test_only_the_words_are_changed_and_the_history_says_from_where() -> None:
    lines = written().text.splitlines()
    kept = [line for line in PLAN.splitlines() if "in the book" not in line]

    assert [line for line in kept if line not in lines] == []
    assert any(line.startswith("          - {step: Simmer the  soup, where: stovetop, takes: ") for line in lines)
    assert any(line.endswith("  # slowly") for line in lines)
    assert "  - \"2026-11-28: 'fold napkins'; from 2026-11-01 [00000000]\"" in lines


def test_the_day_is_that_of_the_plans_zone() -> None:
    """Half past eleven at night in UTC is the next day in Auckland."""
    there = PLAN.replace("Europe/Dublin", "Pacific/Auckland")

    assert any(line.startswith("2026-11-29: ") for line in plan_of(written(there).text).plan.history)


def test_what_was_written_is_not_learned_from_a_second_time() -> None:
    history = plan_of(written().text).plan.history

    assert marks_of(history, "Simmer the  soup") == {f"{n:08x}" for n in range(4)}
    assert marks_of(history, "fold napkins") == {"00000000"}


def test_a_history_that_is_there_is_added_to() -> None:
    text = PLAN + "history:\n  - 2026-10-01: all lessons; from 2026-09-30 [0000000f]\n".replace(": all", " all")
    history = plan_of(written(text).text).plan.history

    assert history[0] == "2026-10-01 all lessons; from 2026-09-30 [0000000f]"
    assert len(history) > 1


def test_each_figure_is_told_with_its_evenings() -> None:
    told = written().told

    assert "fold napkins: 12 min, from 1 evening" in told
    assert any(line.startswith("Simmer the  soup: ") and line.endswith(", from 4 evenings") for line in told)
    assert any(line.endswith("from 6 evenings, by its kind of work (stovetop, simmer)") for line in told)


def test_a_length_known_by_its_kind_alone_stays_a_guess_that_check_asks_about() -> None:
    asked = [snag for snag in check(plan_of(written().text)) if snag.code == "unsure 1"]

    assert [snag.message for snag in asked] == ["1 guess is not confirmed: Leek soup 1"]


@pytest.mark.parametrize(("longest", "refused"), [(9, False), (400, True)])
def test_a_kind_of_work_that_took_anything_is_not_written(longest: float, refused: bool) -> None:
    book = Book(BOOK.evenings, {("simmer the jam", "stovetop"): seen(5, longest, 9, longest, 6, longest)})
    text = PLAN.replace("            or: {where: oven at 160 C, takes: as in the book}\n", "")
    why = [each for each in missing(text, book) if "knows no more than the kind of work of 'simmer the stock'" in each]

    assert bool(why) is refused


def test_what_the_book_does_not_know_waits_and_the_rest_is_written() -> None:
    found = written(book=Book(BOOK.evenings, {("fold napkins", "front-of-house"): seen(12)}))

    assert found.text.casefold().count("as in the book") == 3
    assert "{job: fold napkins, takes: 12 min}" in found.text
    assert [snag.code for snag in found.missing] == ["plan 15"] * 3
    assert (
        found.missing[1]
        .render()
        .startswith("supper.yaml:19:20: plan 15: the book knows neither 'simmer the stock' nor other work of its kind")
    )


def test_an_empty_book_changes_nothing() -> None:
    found = written(book=Book())

    assert (found.text, found.told, len(found.missing)) == (PLAN, (), 4)


def test_a_plan_that_asks_for_nothing_is_as_it_was() -> None:
    plain = PLAN.replace("as in the book", "20 min").replace("As in the book", "20 min")

    assert written(plain) == Written(plain, (), ())


def test_what_else_is_wrong_with_the_plan_is_told_instead() -> None:
    found = written_from_book(PLAN.replace("at: 19:15", "at: 99:15"), "supper.yaml", BOOK, NOW)
    assert isinstance(found, list)

    assert [isinstance(snag, Snag) and snag.code for snag in found] == ["plan 7"]


def test_what_thaws_is_never_as_in_the_book() -> None:
    thaw = PLAN.replace(
        "takes: As in the book", "takes: as in the book\n            thaws: 2 kg in the fridge"
    ).replace("            where: stovetop\n", "")

    assert any("what thaws takes as long as its weight asks" in each for each in missing(thaw))


def test_an_oven_is_as_fast_as_the_book_says_by_its_name() -> None:
    found = written(OVEN_PLAN.replace(ASKED, f"{ASKED}, cools: as in the book"))
    oven = plan_of(found.text).plan.kitchen.ovens["Big  Oven"]

    assert oven.heats == HeatRate(minutes=18, start=20, end=175)
    assert oven.cools is not None
    assert (oven.cools.start, oven.cools.end) == (200, 120)
    assert "heats: 18 min to 175 C" in found.text
    assert marks_of(plan_of(found.text).plan.history, "Big  Oven heats") == {f"{n:08x}" for n in range(3)}


UNKNOWN = {
    "another oven is no help": (
        "Big  Oven", "range",
        "12:19: plan 15: the book does not know how fast 'range' heats; the oven it knows is 'big oven'",
    ),
    "another way is no help": (
        ASKED, "cools ajar: as in the book",
        "12:41: plan 15: the book does not know how fast 'Big Oven' cools with the door ajar; "
        "of this oven it knows `cools` and `heats`",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("before", "after", "said"), UNKNOWN.values(), ids=UNKNOWN)
def test_what_the_book_does_not_know_of_an_oven_is_never_guessed(before: str, after: str, said: str) -> None:
    (found,) = missing(OVEN_PLAN.replace(before, after))

    assert said.partition(": ")[2] in found


def test_how_to_mend_a_rate_is_in_the_plans_way() -> None:
    both = OVEN_PLAN.replace(ASKED, "cools: as in the book, cools ajar: as in the book")
    found = missing(both, Book())

    assert found[0].endswith("or leave `cools` out: the usual rate is assumed.")
    assert found[1].endswith("or leave `cools ajar` out: nothing is then planned with the door ajar.")
    for each in found:
        mended = each.rpartition("example `")[2].partition("`")[0]
        plan_of(OVEN_PLAN.replace(ASKED, mended))


def test_ovens_of_the_book_are_shown_as_data_and_not_too_many_of_them() -> None:
    ovens = {(f"{n} oven \x1b[31m{'of the house ' * 9}", "heats"): seen(18) for n in range(9)}
    (found,) = missing(OVEN_PLAN, Book(BOOK.evenings, {}, ovens))

    assert "\x1b" not in found
    assert "'0 oven \ufffd[31mof the house of t…'" in found
    assert "and 5 more" in found
    assert "4 oven" not in found


ODD = {
    "a figure of the long form": ("heats: {minutes: as in the book, start: 20, end: 175}", "plan 7"),
    "a key in capitals": ("Heats: as in the book", "plan 5"),
    "a key with a line": ("cools_ajar: as in the book", "plan 5"),
    "other words": ("heats: as in my book", "plan 7"),
    "another figure": ("high: as in the book", "plan 7"),
}


@pytest.mark.parametrize(("said", "code"), ODD.values(), ids=ODD)
def test_only_a_whole_rate_in_these_words_waits_for_the_book(said: str, code: str) -> None:
    found = read_plan(OVEN_PLAN.replace(ASKED, said), "supper.yaml")
    assert isinstance(found, list)

    assert [(snag.code, snag.place.line if snag.place else 0) for snag in found] == [(code, 12)]


def test_an_editors_schema_accepts_what_waits() -> None:
    """Oracle: the jsonschema library, draft 2020-12."""
    checker = jsonschema.Draft202012Validator(json_schema())

    for text in (PLAN, OVEN_PLAN.replace(ASKED, f"{ASKED}, cools: as in the book, cools ajar: as in the book")):
        data, _, snags = read_yaml(text, "supper.yaml")
        assert snags == []
        assert list(checker.iter_errors(data)) == []
