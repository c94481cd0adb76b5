"""What evenings taught, as changes to a plan: before and after, the lines that change, and none the second time."""

import difflib
import re
from dataclasses import replace

import pytest

from board.learning.changes import Lessons, history_lines, lessons_for, marks_of, taught
from board.odds.many import on_time
from board.output.lessons import lessons_form
from board.plan.edit.edits import AddHistory, Together, apply_all
from board.plan.load import PlanFile, read_plan
from board.review.kinds import Key, key_of_sitting
from board.review.observe import Aside, Observed, OvenTurn, PastEvening
from board.sheet.run_sheet import Lasts, RunSheet
from tests.conftest import PLANS
from tests.examples import first
from tests.review.past import evening

PLAN = """\
event: Supper  # small
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
kitchen:
  ovens:
    oven: {shelves: 2, heats: 14 min to 180 C}  # gas
hands:
  host: {hours: {on the day: '9:00 - 23:30'}}
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Soup
        steps:
          - step: simmer the soup
            where: stovetop, 1 ring
            takes: 20 to 30 to 45 min   # as last winter
            keeps: 1 h hot
          - step: warm the bowls
            where: oven at 80 C
            takes: 10 min
            or: {where: worktop, takes: {low: 4, likely: 5, high: 8}}
jobs:
  - lay the table
"""
SIMMER = Key("soup", "simmer the soup", "stovetop")
BOWLS, BY_HAND = Key("soup", "warm the bowls", "oven"), Key("soup", "warm the bowls", "worktop")
TABLE = Key("", "lay the table", "front-of-house")


def plan_of(text: str = PLAN) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), found[0].render()
    return found


def taken(text: str, found: Lessons, date: str = "2026-11-29") -> str:
    edits = [each.edit for each in found.lessons]
    made = Together((*edits, AddHistory(history_lines(date, found.lessons, found)))).made(text, plan_of(text))
    assert isinstance(made, tuple), made
    return made[0]


def changed(before: str, after: str) -> list[str]:
    return [line for line in difflib.ndiff(before.splitlines(), after.splitlines()) if line[0] in "+-"]


THREE = [evening(n, {SIMMER: 45.0}) for n in (1, 2, 3)]


def test_a_lesson_says_what_the_plan_says_and_what_was_learned() -> None:
    (lesson,) = lessons_for(plan_of(), THREE).lessons

    assert (lesson.name, lesson.before, lesson.said) == ("simmer the soup", "20 to 30 to 45 min", True)
    assert lesson.after == "28 to 44 to 68 min"  # the plan counts 0.208: e^((0.208 ln 30 + 3 ln 45)/3.208) = 43.8
    assert lesson.estimate.evenings == 3


def test_answers_to_a_steps_question_are_counted() -> None:
    asked = [replace(night, decided=((SIMMER, "thin it?", n != 1),)) for n, night in enumerate(THREE)]
    elsewhere = replace(evening(9, {}), decided=((Key("stew", "stir the stew", "stovetop"), "more salt?", True),))

    found = lessons_for(plan_of(), [*asked, elsewhere])

    assert found.decided == {"thin it?": (2, 3)}
    assert lessons_form(found, None)["decided"] == [{"question": "thin it?", "yes": 2, "answers": 3}]


def test_only_figures_and_history_change() -> None:
    found = lessons_for(plan_of(), THREE)

    assert changed(PLAN, taken(PLAN, found)) == [
        "-             takes: 20 to 30 to 45 min   # as last winter",
        "+             takes: 28 to 44 to 68 min   # as last winter",
        "+ history:",
        "+   - '2026-11-29: all lessons; from 2026-11-02 [00000001], 2026-11-03 [00000002], 2026-11-04 [00000003]'",
    ]


def test_the_same_evenings_teach_nothing_twice() -> None:
    after = taken(PLAN, lessons_for(plan_of(), THREE))
    again = lessons_for(plan_of(after), THREE)

    assert again.lessons == ()
    assert (again.fresh, again.known) == ((), 3)


def test_a_new_evening_beside_old_ones_moves_little() -> None:
    after = taken(PLAN, lessons_for(plan_of(), THREE))
    alone = lessons_for(plan_of(after), [evening(4, {SIMMER: 60.0})]).lessons
    beside = lessons_for(plan_of(after), [*THREE, evening(4, {SIMMER: 60.0})]).lessons

    assert alone[0].estimate.middle > beside[0].estimate.middle > 41


def test_what_was_not_taken_is_learned_another_time() -> None:
    nights = [evening(n, {SIMMER: 45.0, TABLE: 40.0}) for n in (1, 2, 3)]
    found = lessons_for(plan_of(), nights)
    table = next(lesson for lesson in found.lessons if lesson.name == "lay the table")
    made = apply_all(PLAN, plan_of(), [table.edit, AddHistory(history_lines("2026-11-29", [table], found))])
    assert isinstance(made, tuple)
    again = lessons_for(plan_of(made[0]), nights)

    assert "+   - \"2026-11-29: 'lay the table'; from 2026-11-02 [00000001]" in "\n".join(changed(PLAN, made[0]))
    assert [lesson.name for lesson in again.lessons] == ["simmer the soup"]


def sat(number: int, minutes: float, aside: Aside | None = None) -> PastEvening:
    """An evening on which the guests sat so long over the soup, and nothing else is known."""
    over = Observed(key_of_sitting("Soup"), "Soup: eaten in", minutes, Lasts(25, 25, 25), aside)
    return replace(evening(number, {}), sits=(over,))


def test_how_long_guests_sit_is_a_figure_of_the_course() -> None:
    """e^((0.111 ln 25 + 3 ln 40)/3.111) = 39.3; the plan says nothing, so the 25 min are assumed."""
    found = lessons_for(plan_of(), [sat(n, 40) for n in (1, 2, 3)])
    (lesson,) = found.lessons

    assert (lesson.name, lesson.before, lesson.said) == ("Soup: eaten in", "25 min", False)
    assert lesson.after.split(" to ")[1] == "39"
    text = taken(PLAN, found)
    assert next(line for line in changed(PLAN, text) if "history" not in line) == f"+     eaten in: {lesson.after}"
    assert lessons_for(plan_of(text), [sat(n, 40) for n in (1, 2, 3)]).lessons == ()


def test_a_figure_for_sitting_that_stands_there_is_changed_in_its_place() -> None:
    plan = PLAN.replace("    at: 19:15\n", "    at: 19:15\n    eaten in: 20 to 25 to 30 min  # with bread\n")
    text = taken(plan, lessons_for(plan_of(plan), [sat(n, 40) for n in (1, 2, 3)]))

    old, new = (line for line in changed(plan, text) if "eaten in:" in line and "history" not in line and "#" in line)
    assert (old.split("#")[1], new.split("#")[1]) == (" with bread", " with bread")
    assert " 40 to " not in old
    assert "to 40 to" in new


def test_a_forgotten_clearing_is_told_as_set_aside() -> None:
    found = lessons_for(plan_of(), [sat(1, 200, "forgotten")])

    assert found.lessons == ()
    assert [(each.name, each.aside) for _, each in found.aside] == [("Soup: eaten in", "forgotten")]


def test_a_timetable_that_has_learned_waits_for_the_guests(lantern: PlanFile, lantern_sheet: RunSheet) -> None:
    """Half an hour more over the main than the plan has: the sweet is hardly ever on time by the present timetable."""
    main = next(c for c in lantern_sheet.courses if c.name == "Main")
    assert main.eaten is not None
    over = Observed(key_of_sitting("Main"), "Main: eaten in", main.eaten.likely + 30, main.eaten)
    found = lessons_for(lantern, [replace(evening(n, {}), sits=(over,)) for n in range(5)])
    learned = taught(lantern_sheet, found.lessons)

    assert [lesson.name for lesson in found.lessons] == ["Main: eaten in"]
    assert on_time(lantern_sheet, 1000)["Sweet"] > 0.9
    assert on_time(learned, 1000)["Sweet"] < 0.2
    assert on_time(learned, 1000)["Main"] == on_time(lantern_sheet, 1000)["Main"]


def test_a_single_figure_stays_one_until_three_evenings_are_behind_it() -> None:
    once = lessons_for(plan_of(), [evening(1, {BOWLS: 14.0})]).lessons
    often = lessons_for(plan_of(), [evening(n, {BOWLS: 14.0}) for n in range(3)]).lessons

    assert [each.after for each in once] == ["13 min"]
    assert [each.after.count(" to ") for each in often] == [2]


def test_another_way_of_a_step_has_its_own_length_and_a_long_form_stays_one() -> None:
    found = lessons_for(plan_of(), [evening(n, {BY_HAND: 9.0}, planned=Lasts(4, 5, 8)) for n in range(3)])
    new = taken(PLAN, found)

    assert "takes: 10 min" in new
    assert "or: {where: worktop, takes: {low: 5, likely: 9, high: 14}}" in new


def test_a_job_of_one_line_gets_its_length() -> None:
    (lesson,) = lessons_for(plan_of(), [evening(1, {TABLE: 40.0}, planned=Lasts(20, 20, 20))]).lessons

    assert not lesson.said
    assert f"- {{job: lay the table, takes: {lesson.after}}}" in taken(PLAN, lessons_for(plan_of(), [
        evening(1, {TABLE: 40.0}, planned=Lasts(20, 20, 20))]))  # fmt: skip


def test_an_ovens_own_figure_changes_and_the_rest_of_its_line_stays() -> None:
    turns = [OvenTurn("oven", 20, 180, False, 21)]
    found = lessons_for(plan_of(), [evening(n, {}, turns) for n in range(4)])

    assert [(each.name, each.before, each.after) for each in found.lessons] == [
        ("oven heats", "14 min to 180 C", "21 min to 180 C")
    ]
    assert "    oven: {shelves: 2, heats: 21 min to 180 C}  # gas" in taken(PLAN, found)


def test_rehearsals_and_evenings_told_twice_do_not_count() -> None:
    import dataclasses

    played = dataclasses.replace(evening(9, {SIMMER: 90.0}), rehearsal=True)
    found = lessons_for(plan_of(), [*THREE, *THREE, played])

    assert found.lessons == lessons_for(plan_of(), THREE).lessons
    assert found.rehearsals == 1


def test_what_is_within_a_minute_or_a_twentieth_is_no_lesson() -> None:
    assert lessons_for(plan_of(), [evening(1, {SIMMER: 31.0})]).lessons == ()


def test_history_names_a_figure_by_its_whole_words() -> None:
    lines = ["2026-11-29: 'simmer'; from 2026-11-28 [0000000a]", "2026-12-01: all lessons; from 2026-11-30 [0000000b]"]

    assert marks_of(lines, "simmer") == {"0000000a", "0000000b"}
    assert marks_of(lines, "simmer the soup") == {"0000000b"}
    assert marks_of(["mended by hand"], "simmer") == frozenset()


@pytest.mark.parametrize("name", first(1, ["lantern-supper", "garden-lunch", "two-ring-flat", "long-table"]))
def test_the_bundled_plans_keep_every_byte_but_the_figures(name: str) -> None:
    """Every length a third longer: each changed line differs in its figures only, and no comment is lost."""
    text = (PLANS / f"{name}.yaml").read_text(encoding="utf-8")
    file = plan_of(text)
    from board.learning.changes import _figures, _sittings

    steps = {key: figure.lasts.likely * 4 / 3 for key, figure in _figures(file).items()}
    sits = tuple(
        Observed(key, figure.name, figure.lasts.likely * 4 / 3, figure.lasts) for key, figure in _sittings(file).items()
    )
    nights = [replace(evening(n, steps, [OvenTurn("oven", 20, 180, False, 30)]), sits=sits) for n in range(3)]
    found = lessons_for(file, nights)
    new = taken(text, found)

    assert len(found.lessons) > 15
    for line in changed(without_figures(text), without_figures(new)):
        # What had no figure gets one; nothing else, not a sign of a comment, differs.
        said = line[2:].strip()
        new_figure = said.startswith(
            ("history:", "- '2026-11-29: ", '- "2026-11-29: ', "- {job: ", "takes: ", "eaten in: ")
        )
        job = f"{{job: {said.removeprefix('- ').split('  #')[0]}, takes: …}}"
        assert new_figure or (line[0] == "-" and job in without_figures(new)), line
    assert lessons_for(plan_of(new), nights).lessons == ()


def without_figures(text: str) -> str:
    """The text with … for every length and rate."""
    return re.sub(r"\b(takes|eaten in|heats|cools): [^,}#\n]*?(?=\s*(?:[,}#\n]|$))", r"\1: …", text)


def test_the_timetable_with_what_was_learned(lantern: PlanFile, lantern_sheet: RunSheet) -> None:
    beef = Key("beef shin in dark beer", "reheat the beef", "stovetop")
    turns = [OvenTurn("oven", 20, 150, False, 22)]
    found = lessons_for(lantern, [evening(n, {beef: 50.0}, turns) for n in range(3)])
    slots = taught(lantern_sheet, found.lessons).by_id()
    before = lantern_sheet.by_id()

    assert slots["beef-shin-in-dark-beer/reheat-the-beef"].lasts == found.lessons[0].lasts
    heat = next(s for s in before.values() if s.kind == "heat" and s.uses[0].before == 20)
    longer = slots[heat.id].lasts
    assert longer is not None
    assert longer.likely > (heat.end - heat.start).total_seconds() / 60
    untouched = before["roast-roots/roast-the-roots"]
    assert slots[untouched.id] == untouched
