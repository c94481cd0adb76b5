"""The planning table without its screen: lines of the bundled plans changed and taken back, what may be added where."""

from pathlib import Path
from typing import cast

import pytest

from board.plan.edit.save import CannotEdit
from board.plan.load import PlanFile
from board.session.background import Answer, Background, PlanProved, PlanText
from board.session.line_changes import NOTHING_THERE, Made, add, adds, missing, move, reading, retype, take_out
from board.session.plan_desk import Desk, opened
from board.sheet.run_sheet import RunSheet
from board.view.plan_tree import Row
from tests.conftest import PLANS
from tests.session.beside import Beside

EVERY = sorted(PLANS.glob("*.yaml"))
A_FEW = 4  # words of a plan tried in the everyday run; all of them in the slow one


class File:
    """A plan's file, in memory."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.wrong = ""
        self.changed_to: str | None = None

    def write(self, old: str, new: str) -> str:
        assert old == self.text
        if not self.wrong:
            self.text = new
        return self.wrong

    def changed(self) -> bool:
        return self.changed_to is not None

    def read(self) -> str | None:
        if self.changed_to is not None:
            self.text, self.changed_to = self.changed_to, None
            return self.text
        return None


def desk_on(text: str) -> tuple[Desk, File, Beside]:
    file, beside = File(text), Beside()
    dish, begin = lambda name, _: [f"- dish: {name}"], lambda name: f"event: {name}\n"
    desk = opened(text, "plan.yaml", file, cast("Background", beside), dish, begin)
    return desk, file, beside


def of_each_word(desk: Desk) -> list[tuple[Row, str]]:
    """One line for each word that stands in the plan twice or more with other values, and another's value."""
    found: dict[tuple[str, str], tuple[Row, str]] = {}
    for row in desk.read.rows:
        if row.phrase is not None:
            other = next(desk.completions(row, "", adding=False), None)
            same = [
                each.phrase for each in desk.read.rows if each.key == row.key and each.phrase not in (None, row.phrase)
            ]
            if other is not None and same:
                found.setdefault((row.kind, row.key), (row, cast("str", same[0])))
    return list(found.values())


def changed_and_back(path: Path, most: int) -> int:
    text = path.read_text(encoding="utf-8")
    desk, file, _ = desk_on(text)
    taken = 0
    for row, phrase in of_each_word(desk)[:most]:
        made = desk.made(retype(row, phrase))
        if isinstance(made, Made):
            desk.take(made)
            assert file.text == desk.planning.text != text
            assert [a for a, b in zip(file.text.splitlines(), text.splitlines(), strict=True) if a != b] != []
            assert desk.back() == row.loc
            assert file.text == text
            taken += 1
    return taken


def test_lines_of_a_bundled_plan_are_changed_and_taken_back_to_the_byte() -> None:
    assert changed_and_back(PLANS / "two-ring-flat.yaml", A_FEW) >= A_FEW // 2


@pytest.mark.slow
@pytest.mark.parametrize("path", EVERY, ids=lambda path: path.stem)
def test_each_kind_of_line_of_every_bundled_plan_is(path: Path) -> None:
    assert changed_and_back(path, 100) > A_FEW


def test_what_is_added_follows_from_the_line() -> None:
    desk, _, _ = desk_on((PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8"))
    first = {row.kind: row for row in reversed(desk.read.rows)}
    groups = {row.key: row for row in desk.read.rows if row.kind == "group"}

    assert [adds(first[kind], desk.read) for kind in ("course", "dish", "step")] == ["dish", "dish", "step"]
    assert [adds(groups[key], desk.read) for key in ("courses", "dishes", "ingredients")] == ["course", "dish", "entry"]
    assert adds(next(row for row in desk.read.rows if row.key == "takes"), desk.read) == "line"


def test_a_course_and_a_line_are_added_and_words_are_completed() -> None:
    desk, file, _ = desk_on((PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8"))
    courses = next(row for row in desk.read.rows if row.key == "courses")
    takes = next(row for row in desk.read.rows if row.key == "takes")

    def dish(name: str, _: object) -> list[str]:
        return [f"- dish: {name}", "  steps: [{step: slice it, takes: 5 min}]"]

    made = desk.made(add(courses, "Cheese: Hard cheeses", dish, desk.begin))
    assert isinstance(made, Made), made
    desk.take(made)
    assert "  - course: Cheese\n    at: 45 min after the course before\n" in file.text
    assert next(desk.completions(takes, "loo", adding=True)) == "look for: "
    desk.dishes = ["Onion tart"]
    dish_row = next(row for row in desk.read.rows if row.kind == "dish")
    assert list(desk.completions(dish_row, "Oni", adding=True)) == ["Onion tart"]
    line = desk.made(add(takes, "look for: steam", desk.dish, desk.begin))
    assert isinstance(line, Made)
    assert line.at == (*takes.loc[:-1], "look for")


def test_what_would_spoil_a_plan_is_refused_with_the_reason() -> None:
    desk, file, _ = desk_on((PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8"))
    before = file.text
    row = next(row for row in desk.read.rows if row.key == "arrive")

    for change in (take_out(row), retype(row, "soon"), move(row, 1), add(row, "nonsense: 3", desk.dish, desk.begin)):
        assert isinstance(desk.made(change), CannotEdit)
    assert (file.text, desk.wrong(row, "soon") != "", desk.wrong(row, "18:00")) == (before, True, "")


def test_an_answer_is_stale_as_soon_as_the_plan_is_changed(lantern_sheet: RunSheet) -> None:
    """And the next is asked for near the timetable that stood."""
    text = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
    desk, _, beside = desk_on(text)
    beside.answers[PlanText] = Answer("PlanText", desk.digest, lantern_sheet)
    assert desk.hear()
    assert not desk.stale

    made = desk.made(retype(next(row for row in desk.read.rows if row.key == "event"), "Lantern dinner"))
    assert isinstance(made, Made)
    desk.take(made)

    assert desk.stale
    assert desk.working
    assert beside.asked[-1] == PlanText(desk.planning.text, lantern_sheet)


def test_an_unproved_timetable_is_asked_to_be_proved(lantern_sheet: RunSheet) -> None:
    import msgspec

    desk, _, beside = desk_on((PLANS / "lantern-supper.yaml").read_text(encoding="utf-8"))
    unproved = msgspec.structs.replace(lantern_sheet, proved=False)
    parts = ((("courses", 0), lantern_sheet.slots[0].id),)
    beside.answers[PlanText] = Answer("PlanText", desk.digest, unproved, (), parts)
    desk.hear()

    assert isinstance(beside.asked[-1], PlanProved)
    assert desk.slot_at(("courses", 0, "dishes", 1)) == lantern_sheet.slots[0].id
    assert desk.slot_at(("jobs", 1)) == ""


def test_an_editors_change_to_the_line_that_is_not_on_disk_is_for_the_host_to_choose() -> None:
    text = (PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8")
    desk, file, _ = desk_on(text)
    event = next(row for row in desk.read.rows if row.key == "event")
    line = text.splitlines()[event.line - 1]
    file.wrong = "disk full"
    made = desk.made(retype(event, "Here"))
    assert isinstance(made, Made)
    desk.take(made)
    assert desk.unwritten == "disk full"
    file.wrong = ""
    file.changed_to = text.replace(line, "event: There")

    outside = desk.look()

    assert outside is not None
    assert len(outside.both) == 1
    assert "event: There" in file.text  # nothing is written over it
    desk.choose(here=True)
    assert "event: Here" in file.text
    desk.back()
    assert desk.planning.text == file.text


def test_a_text_is_read_once_however_often_it_is_gone_back_to() -> None:
    text = (PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8")

    assert reading(text, "a.yaml") is reading(text, "a.yaml")


HEAD = "event: Supper\ndate: 2026-11-28\nzone: Europe/Dublin\n"
REST = "arrive: 18:30\nguests: [3 guests]\nhands: {host: {hours: {on the day: '10:00 - 23:30'}}}\n"


def taken(desk: Desk, row: Row, typed: str) -> str:
    made = desk.made(add(row, typed, desk.dish, desk.begin))
    assert isinstance(made, Made), made
    desk.take(made)
    return desk.planning.text


@pytest.mark.parametrize("text", ["", "\n \n", "# for the winter", "\ufeff# note\n---\n"])
def test_a_file_that_says_nothing_is_begun_and_keeps_its_comments(text: str) -> None:
    desk, file, _ = desk_on(text)

    assert adds(NOTHING_THERE, desk.read) == "plan"
    assert taken(desk, NOTHING_THERE, "Supper").startswith(text)
    assert desk.read.data == {"event": "Supper"}
    desk.back()
    assert file.text == text


def test_what_is_missing_is_begun_with_a_line_to_go_on_from() -> None:
    desk, _, _ = desk_on(HEAD)

    while "`courses`" not in desk.read.snags[0].message:
        fix = desk.read.snags[0].fix
        assert fix is not None
        taken(desk, missing(fix), fix.new)
    fix = desk.read.snags[0].fix
    assert fix is not None
    assert adds(missing(fix), desk.read) == "course"


def test_a_first_course_dish_or_step_goes_into_an_empty_list_or_none() -> None:
    """The cook knows by then who eats, and nothing comes before it."""
    eaters: list[int] = []

    def dish(name: str, file: PlanFile | None) -> list[str]:
        eaters.extend([] if file is None else [file.plan.guest_count])
        return [f"- dish: {name}", "  steps: []"]

    for rest, key, typed in [("", "event", "courses: Main: Soup"), ("courses: []\n", "courses", "Main: Soup")]:
        desk, _, _ = desk_on(HEAD + REST + rest)
        desk.dish = dish
        text = taken(desk, next(row for row in desk.read.rows if row.key == key), typed)
        assert "- course: Main\n    at: 30 min after guests arrive\n    dishes:\n      - dish: Soup\n" in text
        steps = next(row for row in desk.read.rows if row.key == "steps")
        assert adds(steps, desk.read) == "step"
        assert "- step: chop\n" in taken(desk, steps, "chop")
        assert desk.read.snags == ()
    desk, _, _ = desk_on(HEAD + REST.replace("[3 guests]", "[]"))
    taken(desk, next(row for row in desk.read.rows if row.key == "guests"), "Ines, no nuts")
    assert desk.read.data["guests"] == ["Ines, no nuts"]
    assert eaters == [3, 3]


def test_a_part_with_words_of_its_own_gets_a_line_and_keeps_the_others() -> None:
    desk, _, _ = desk_on((PLANS / "two-ring-flat.yaml").read_text(encoding="utf-8"))
    kitchen = next(row for row in desk.read.rows if row.key == "kitchen")
    before = dict(desk.read.data["kitchen"])

    assert adds(kitchen, desk.read) == "line"
    assert "freezer: " in desk.completions(kitchen, "freez", adding=True)
    taken(desk, kitchen, "freezer: 20 litres")
    assert desk.read.data["kitchen"] == {**before, "freezer": "20 litres"}


def test_a_line_is_put_into_what_is_no_yaml() -> None:
    desk, file, _ = desk_on("event: Supper\r\nguests: [4 guests\r\nzone: UTC")

    taken(desk, desk.read.rows[1], "  ]")
    assert file.text == "event: Supper\r\nguests: [4 guests\r\n  ]\r\nzone: UTC"
    taken(desk, next(row for row in desk.read.rows if row.key == "zone"), "arrive: 18:30")
    assert desk.read.data["arrive"] == "18:30"
