"""A plan written in °F: its sheet says the oven's settings as they were written, and °F first."""

from board.output.leaves import where_of
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet import said
from tests.conftest import HEAD, read

TEXT = (
    HEAD
    + """\
kitchen: {ovens: {oven: {shelves: 2}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Squash
        ingredients: [1 kg squash]
        steps: [{step: roast the squash, where: oven at 375 F, takes: 40 min}]
"""
)


def test_settings_stand_as_they_were_written() -> None:
    plan = read(TEXT)
    assert not isinstance(plan, list)
    sheet = make_sheet(plan, solve)
    heat = next(slot for slot in sheet.slots if slot.kind == "heat")
    roast = next(slot for slot in sheet.slots if slot.name == "roast the squash")

    assert heat.name == "heat the oven to 375 °F"
    assert said.call_at_start(heat) == "Oven to 375 °F (190 °C)"
    assert said.call_at_end(heat) == "Oven at 375 °F?"
    assert where_of(roast, sheet) == "oven at 375 °F (190 °C)"
