"""What a host noted, kept where it belongs in the plan for the next time."""

from dataclasses import replace

from board.learning.changes import history_lines, lessons_for
from board.learning.notes import Note, notes_for
from board.plan.edit.edits import AddHistory, AddNotes, CannotEdit, apply_all
from board.plan.load import PlanFile, read_plan
from board.review.kinds import Key
from board.review.observe import Noted, PastEvening
from tests.review.past import evening

PLAN = """\
event: Supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
hands:
  host: {hours: {on the day: '9:00 - 23:30'}}
courses:
  - course: Soup
    at: 19:15
    dishes:
      - dish: Leek soup
        steps:
          - step: simmer the soup      # low
            where: stovetop, 1 ring
            takes: 20 to 30 to 45 min
          - {step: cut the chives, takes: 3 min, noted: with the scissors}
jobs:
  - lay the table
"""
SIMMER = Noted("stir more often", "simmer the soup", Key("leek soup", "simmer the soup", "stovetop"))
CHIVES = Noted("a bunch is enough", "cut the chives", Key("leek soup", "cut the chives", "worktop"))
TABLE = Noted("two lamps\nare enough", "lay the table", Key("", "lay the table", "front-of-house"))
SERVED = Noted("ladle at the table", "serve Soup", course="Soup")
GONE = Noted("too much", "bake the bread", Key("bread", "bake the bread", "oven"))
EVENING = Noted("start an hour sooner")
DATE = "2026-11-02"


def plan_of(text: str = PLAN) -> PlanFile:
    found = read_plan(text, "supper.yaml")
    assert isinstance(found, PlanFile), found
    return found


def night(*notes: Noted, plan: str = "Supper", number: int = 1) -> PastEvening:
    return replace(evening(number, {}), notes=notes, plan=plan)


def test_each_note_goes_where_it_belongs() -> None:
    found = notes_for(plan_of(), [night(SIMMER, TABLE, SERVED, GONE, EVENING)])

    assert found == (
        Note("simmer the soup", f"stir more often ({DATE})", ("courses", 0, "dishes", 0, "steps", 0)),
        Note("lay the table", f"two lamps are enough ({DATE})", ("jobs", 0)),
        Note("serve Soup", f"ladle at the table ({DATE})", ("courses", 0)),
        Note("", f"bake the bread: too much ({DATE})", ()),
        Note("", f"start an hour sooner ({DATE})", ()),
    )


def test_of_another_plans_evening_only_what_both_do_is_kept() -> None:
    found = notes_for(plan_of(), [night(SIMMER, TABLE, SERVED, GONE, EVENING, plan="Another supper")])

    assert [note.name for note in found] == ["simmer the soup", "lay the table"]


def test_another_lane_is_the_same_step() -> None:
    moved = replace(SIMMER, key=Key("leek soup", "simmer the soup", "oven"))

    assert [note.name for note in notes_for(plan_of(), [night(moved)])] == ["simmer the soup"]


def test_notes_are_written_beside_what_they_are_about_and_once() -> None:
    evenings = [night(SIMMER, CHIVES, TABLE, SERVED, EVENING), night(SIMMER, number=2)]
    found = lessons_for(plan_of(), evenings)
    edits = [AddNotes(note.loc, (note.text,)) for note in found.notes]
    history = AddHistory(history_lines("2026-12-01", found.lessons, found, found.notes))
    made = apply_all(PLAN, plan_of(), [*edits, history])
    assert not isinstance(made, CannotEdit)
    text, file = made

    steps = file.plan.courses[0].dishes[0].steps
    assert steps[0].noted == [f"stir more often ({DATE})", "stir more often (2026-11-03)"]
    assert steps[1].noted == ["with the scissors", f"a bunch is enough ({DATE})"]
    assert file.plan.jobs[0].noted == [f"two lamps are enough ({DATE})"]
    assert file.plan.courses[0].noted == [f"ladle at the table ({DATE})"]
    assert file.plan.noted == [f"start an hour sooner ({DATE})"]
    assert "# low" in text
    assert lessons_for(file, evenings).notes == ()
    assert "all lessons; from" in text


def test_notes_not_taken_come_again_though_all_figures_were() -> None:
    evenings = [night(SIMMER, EVENING)]
    found = lessons_for(plan_of(), evenings)
    lines = history_lines("2026-12-01", found.lessons, found, found.notes[:1])
    made = apply_all(PLAN, plan_of(), [AddNotes(found.notes[0].loc, (found.notes[0].text,)), AddHistory(lines)])
    assert not isinstance(made, CannotEdit)

    assert [note.text for note in lessons_for(made[1], evenings).notes] == [f"start an hour sooner ({DATE})"]


def test_a_figure_and_a_note_of_one_line_get_both() -> None:
    table = Key("", "lay the table", "front-of-house")
    nights = [replace(evening(n, {table: 40.0}), notes=(TABLE,)) for n in (1,)]
    found = lessons_for(plan_of(), nights)
    (lesson,), (note,) = found.lessons, found.notes
    made = apply_all(PLAN, plan_of(), [lesson.edit, AddNotes(note.loc, (note.text,))])
    assert not isinstance(made, CannotEdit)
    (job,) = made[1].plan.jobs

    assert job.takes is not None
    assert job.takes.likely > 20
    assert job.noted == [f"two lamps are enough ({DATE})"]
