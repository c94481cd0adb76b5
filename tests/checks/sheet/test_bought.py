"""buying 5: raw meat and fish bought longer before they are begun than they keep.

Days: USDA FSIS / FoodSafety.gov cold storage chart, the upper figure: ground meat, poultry, offal and raw sausages 2
days, fish 3, steaks and roasts 5; sausages from memory.
"""

import pytest

from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet
from tests.conftest import read

TEXT = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [4 guests]
shopping: {{{days} before: '10:00 - 11:00'}}
pantry: [{pantry}]
hands: {{host: {{hours: {{{days} before: '9:00 - 22:00', on the day: '9:00 - 23:30'}}}}}}
courses:
  - course: Main
    at: 20:00
    dishes:
      - dish: Supper
        ingredients: ["{food}"]
        steps: [{{step: fry it, where: stovetop, takes: 20 min, day: on the day, until: 75 C}}]
"""


def found(food: str, days: int, pantry: str = "salt") -> list[str]:
    file = read(TEXT.format(food=food, days=f"{days} days" if days > 1 else "day", pantry=pantry))
    assert isinstance(file, PlanFile), file
    sheet: RunSheet = make_sheet(file, solve)
    return [snag.message for snag in safety_check(file, sheet) if snag.code == "buying 5"]


@pytest.mark.parametrize(
    ("food", "most"),
    [("1 kg minced beef", 2), ("1 kg chicken thighs", 2), ("800 g lamb's liver", 2), ("1 kg raw pork sausages", 2),
     ("1 kg cod fillets", 3), ("1 kg beef shin", 5)],
)  # fmt: skip
def test_it_is_told_past_the_last_day_of_the_chart(food: str, most: int) -> None:
    assert found(food, most) == []
    (message,) = found(food, most + 1)
    assert f"{most + 1} days before Supper is begun" in message


@pytest.mark.parametrize("food", ["1 kg chicken thighs, frozen", "500 g dried beans", "300 g cheddar", "4 eggs"])
def test_what_is_frozen_or_keeps_is_left_out(food: str) -> None:
    assert found(food, 6) == []


def test_what_is_in_the_house_is_left_out() -> None:
    assert found("1 kg cod fillets", 6, pantry="1 kg cod fillets") == []
