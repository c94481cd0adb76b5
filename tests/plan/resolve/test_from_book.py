"""`as in the book`, of lengths and of ovens' rates: what is taken, told, and refused with its line."""

import textwrap

import jsonschema
import pytest

from board.checks.plan.every import check
from board.plan.edit.edits import AddHistory, AddOven, Edit, SetOvenTime, SetTakes, Together
from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile, read_plan
from board.plan.phrases.durations import Spread
from board.plan.phrases.stations import HeatRate
from board.plan.places import read_yaml
from board.plan.resolve.from_book import BookFigure, BookFigures, OvenFigure
from board.plan.schema import json_schema
from board.plan.snag import Weight
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
          - {step: Simmer the  soup, where: stovetop, takes: as in the book}
          - step: simmer the stock
            where: stovetop
            takes: As in the book
            or: {where: oven at 160 C, takes: as in the book}
jobs:
  - {job: fold napkins, takes: as in the book}
"""
)


def figure(low: int, likely: int, high: int, evenings: int) -> BookFigure:
    return BookFigure(Spread(low=low, likely=likely, high=high), frozenset(f"{n:08x}" for n in range(evenings)))


def rate(minutes: int, start: float, end: float, evenings: int) -> OvenFigure:
    return OvenFigure(HeatRate(minutes=minutes, start=start, end=end), frozenset(f"{n:08x}" for n in range(evenings)))


BOOK = BookFigures(
    {("simmer the soup", "stovetop"): figure(28, 33, 40, 4), ("fold napkins", "front-of-house"): figure(12, 12, 12, 1)},
    {("simmer", "stovetop"): figure(30, 45, 90, 6), ("simmer", "oven"): figure(80, 90, 100, 3)},
    {("big oven", "heats"): rate(18, 20, 175, 3), ("big oven", "cools"): rate(31, 200, 120, 1)},
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


def test_a_length_known_by_its_kind_alone_is_minded_at_its_line() -> None:
    found = read(BOOK)
    assert isinstance(found, PlanFile)

    snags = [snag for snag in check(found) if snag.code == "unsure 2"]

    assert [snag.weight for snag in snags] == [Weight.MIND, Weight.MIND]
    assert snags[0].message == (
        "simmer the stock: the book gives 30 to 45 to 90 min, from 6 evenings, and knows only its kind of work "
        "(stovetop, simmer)"
    )
    assert snags[0].mend == "Write a length if that is not right."
    assert snags[0].place is not None
    assert snags[0].place.text.strip() == "takes: As in the book"


@pytest.mark.parametrize(("low", "high", "refused"), [(10, 100, False), (10, 101, True), (2, 104, True)])
def test_a_kind_of_work_that_took_anything_is_refused(low: int, high: int, refused: bool) -> None:
    book = BookFigures({**BOOK.steps}, {**BOOK.kinds, ("simmer", "stovetop"): figure(low, low + 5, high, 6)}, {}, "abc")
    found = read(book)

    if refused:
        assert isinstance(found, list)
        (snag,) = found
        assert "plan 15: the book knows no more than the kind of work of 'simmer the stock' (stovetop, simmer)" in snag
    else:
        assert isinstance(found, PlanFile)


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
    assert all("plan 15: there is no cook's book yet" in each for each in found)
    assert all("Write a length, for example `takes: 25 min`." in each for each in found)


def test_what_the_book_does_not_know_is_a_snag_and_the_rest_is_read() -> None:
    found = read(BookFigures(BOOK.steps))
    assert isinstance(found, list)

    assert len(found) == 2
    assert (
        "supper.yaml:19:20: plan 15: the book knows neither 'simmer the stock' nor other work of its kind" in found[0]
    )


def test_other_snags_of_the_plan_are_told_too() -> None:
    found = read(BOOK, PLAN.replace("at: 19:15", "at: 99:15"))
    assert isinstance(found, list)

    assert not any("plan 15" in each for each in found)
    assert "supper.yaml:12:9: plan 7" in found[0]


def test_what_thaws_is_never_as_in_the_book() -> None:
    thaw = PLAN.replace(
        "takes: As in the book", "takes: as in the book\n            thaws: 2 kg in the fridge"
    ).replace("            where: stovetop\n", "")
    found = read(BOOK, thaw)
    assert isinstance(found, list)

    assert any("plan 15: what thaws takes as long as its weight asks" in each for each in found)


def test_what_was_taken_is_in_the_plans_digest_and_only_there_where_it_is_asked_for() -> None:
    other = BookFigures(BOOK.steps, BOOK.kinds, BOOK.ovens, "abd")
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


def made(edit: Edit, text: str) -> str:
    file = read(BOOK, text)
    assert isinstance(file, PlanFile), file
    found = edit.made(text, file)
    assert not isinstance(found, CannotEdit), found.reason
    return found[0]


def test_a_learned_length_stands_in_place_of_the_words() -> None:
    step, way = ("courses", 0, "dishes", 0, "steps", 0), ("courses", 0, "dishes", 0, "steps", 1, "or", 0)
    text = made(Together((SetTakes(step, 30, 35, 42), SetTakes(way, 95, 95, 95))), PLAN)

    assert "- {step: Simmer the  soup, where: stovetop, takes: 30 to 35 to 42 min}" in text
    assert "or: {where: oven at 160 C, takes: 1 h 35}" in text
    assert "takes: As in the book" in text


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


def test_an_oven_is_as_fast_as_the_book_says_by_its_name_and_check_is_told() -> None:
    found = read(BOOK, OVEN_PLAN.replace(ASKED, f"{ASKED}, cools: as in the book"))
    assert isinstance(found, PlanFile)
    oven = found.plan.kitchen.ovens["Big  Oven"]

    assert oven.heats == HeatRate(minutes=18, start=20, end=175)
    assert oven.cools == HeatRate(minutes=31, start=200, end=120)
    assert [line for line in found.filled.assumed if "in the book" in line] == [
        "heats 18 min to 175 C, as in the book, from 3 evenings: Big  Oven",
        "cools 31 min from 200 to 120 C, as in the book, from 1 evening: Big  Oven",
    ]
    assert not any("heats from cold" in line for line in found.filled.assumed)


def test_it_is_read_as_if_its_host_had_written_the_rate() -> None:
    taken = read(BOOK, OVEN_PLAN)
    written = read(BOOK, OVEN_PLAN.replace(ASKED, "heats: 18 min to 175 C"))
    assert isinstance(taken, PlanFile)
    assert isinstance(written, PlanFile)

    assert taken.plan == written.plan


UNKNOWN = {
    "another oven is no help": ("Big  Oven", "range",
                                "12:32: plan 15: the book does not know how fast 'range' heats; "
                                "the oven it knows is 'big oven'"),
    "another way is no help": (ASKED, "cools ajar: as in the book",
                               "12:41: plan 15: the book does not know how fast 'Big Oven' cools with the door ajar; "
                               "of this oven it knows `heats` and `cools`"),
}  # fmt: skip


@pytest.mark.parametrize(("before", "after", "said"), UNKNOWN.values(), ids=UNKNOWN)
def test_what_the_book_does_not_know_of_an_oven_is_never_guessed(before: str, after: str, said: str) -> None:
    found = read(BOOK, OVEN_PLAN.replace(before, after))
    assert isinstance(found, list)

    assert len(found) == 1
    assert f"supper.yaml:{said}" in found[0]


def test_how_to_mend_a_rate_is_in_the_plans_way() -> None:
    both = OVEN_PLAN.replace(ASKED, "cools: as in the book, cools ajar: as in the book")
    found = read(None, both)
    assert isinstance(found, list)

    assert [each.splitlines()[0] for each in found] == [
        "supper.yaml:12:36: plan 15: there is no cook's book yet to take this rate from",
        "supper.yaml:12:64: plan 15: there is no cook's book yet to take this rate from",
    ]
    assert found[0].endswith("or leave `cools` out: the usual rate is then assumed.")
    assert found[1].endswith("or leave `cools ajar` out: nothing is then planned with the door ajar.")
    for each in found:
        mended = each.rpartition("example `")[2].partition("`")[0]
        assert isinstance(read(None, OVEN_PLAN.replace(ASKED, mended)), PlanFile)


def test_ovens_of_the_book_are_shown_as_data_and_not_too_many_of_them() -> None:
    names = [f"{n} oven \x1b[31m{'of the house ' * 9}" for n in range(9)]
    found = read(BookFigures(ovens={(name, "heats"): rate(18, 20, 175, 1) for name in names}), OVEN_PLAN)
    assert isinstance(found, list)

    assert "\x1b" not in found[0]
    assert "'0 oven \ufffd[31mof the house of t…'" in found[0]
    assert "and 5 more" in found[0]
    assert "4 oven" not in found[0]


ODD = {
    "a figure of the long form": ("heats: {minutes: as in the book, start: 20, end: 175}", "plan 7"),
    "a key in capitals": ("Heats: as in the book", "plan 5"),
    "a key with a line": ("cools_ajar: as in the book", "plan 5"),
    "other words": ("heats: as in my book", "plan 7"),
    "another figure": ("high: as in the book", "plan 7"),
}


@pytest.mark.parametrize(("written", "code"), ODD.values(), ids=ODD)
def test_only_a_whole_rate_in_these_words_is_taken(written: str, code: str) -> None:
    found = read(BOOK, OVEN_PLAN.replace(ASKED, written))
    assert isinstance(found, list)

    assert len(found) == 1
    assert found[0].startswith("supper.yaml:12:")
    assert f" {code}: " in found[0]


def test_ovens_that_are_counted_are_as_they_were() -> None:
    text = PLAN.replace("courses:", "kitchen: {ovens: 1}\ncourses:", 1)
    found = read(BOOK, text)
    assert isinstance(found, PlanFile)

    assert found.plan.kitchen.ovens["oven"].heats is None


def test_an_editors_schema_accepts_what_is_read() -> None:
    """Oracle: the jsonschema library, draft 2020-12."""
    checker = jsonschema.Draft202012Validator(json_schema())

    for text in (PLAN, OVEN_PLAN.replace(ASKED, f"{ASKED}, cools: as in the book, cools ajar: as in the book")):
        data, _, snags = read_yaml(text, "supper.yaml")
        assert snags == []
        assert list(checker.iter_errors(data)) == []


def test_a_learned_rate_stands_in_place_of_the_words() -> None:
    text = made(SetOvenTime("big oven", "heats", 21, "21 min to 175 C"), OVEN_PLAN)

    assert "Big  Oven: {shelves: 3, heats: 21 min to 175 C}  # the old one" in text


def test_another_oven_like_it_gets_the_rate_for_the_book_has_none_under_its_name() -> None:
    text = made(AddOven("second oven", "Big  Oven"), OVEN_PLAN)

    assert "    second oven:\n      shelves: 3\n      heats: 18 min to 175 C\n" in text
    assert ASKED in text
