"""Whatever stands in a plan that can be read, every check of it ends in findings that print safely; never a traceback.

The checks that need a timetable see it with random times, for what they say must not depend on a sound one.
"""

import random
from datetime import timedelta

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from board.checks.allergens.guests_eat import matrix
from board.checks.allergens.plates import plates
from board.checks.plan.cautions import cautions
from board.checks.plan.every import check
from board.checks.sheet.assessed import of_plan, with_sheet
from board.checks.sheet.every import safety_check
from board.plan.load import PlanFile, read_plan
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet.run_sheet import RunSheet, Slot
from tests.examples import NEW_EXAMPLES, times
from tests.plan.test_fuzz import SMALL, mutated, often
from tests.plan.test_snag import is_safe

FOODS = [
    "2 eggs", "500 g chicken", "1 kg minced beef", "100 g walnuts, may contain peanuts", "1 l milk, free from lactose",
    "to taste mystery powder", "200 ml red wine", "3 oysters", "300 g soft blue cheese", "1 tin chestnuts",
]  # fmt: skip
CARE = [
    "cooks: poultry", "cooks: roast", "until: 60 C for 12 min", "until: 40 C", "thaws: 2 kg in the fridge",
    "thaws: 500 g in cold water", "cools: 6 cm deep, metal, ice bath", "cools: 30 cm deep, plastic", "perishable: no",
    "perishable: yes", "reheats: yes", "keeps: 9 days in the fridge", "keeps: 3 h in the room",
    "keeps: 1 h in the oven at 59 C", "washes: big pot",
]  # fmt: skip
GUESTS = ["no nuts", "no gluten", "coeliac", "pregnant", "kosher", "halal", "vegan", "no glimmer", "alcohol-free"]
RULES = ["home", "retail"]


@st.composite
def cared_for(draw: st.DrawFn) -> str:
    """The small plan with food, care and guests of all kinds put into it, and perhaps a few lines spoilt."""
    lines = SMALL.split("\n")
    for number in range(len(lines) - 1, -1, -1):
        line = lines[number]
        indent = " " * (len(line) - len(line.lstrip()) + 2)
        if line.lstrip().startswith("- step:") and "{" not in line:
            chosen = draw(st.lists(st.sampled_from(CARE), max_size=2, unique_by=lambda care: care.partition(":")[0]))
            lines[number + 1 : number + 1] = [indent + care for care in chosen]
        if line.lstrip().startswith("- dish:") and "{" not in line and "ingredients" not in lines[number + 1]:
            foods = draw(st.lists(st.sampled_from(FOODS), max_size=4))
            lines.insert(number + 1, f"{indent}ingredients: {foods!r}")
        if line.startswith("guests:"):
            needs = draw(st.lists(st.sampled_from(GUESTS), max_size=3))
            lines[number] = (
                "guests: ["
                + ", ".join(f"'G{n}, {need}'" for n, need in enumerate(needs))
                + (", " if needs else "")
                + "5 guests]"
            )
    lines.insert(0, f"rules: {draw(st.sampled_from(RULES))}")
    text = "\n".join(lines)
    return draw(mutated(text)) if draw(st.booleans()) else text


def expect_findings_of(text: str) -> None:
    """Reads it; where it is a plan, runs every check that needs no timetable."""
    file = read_plan(text, "supper.yaml")
    if not isinstance(file, PlanFile):
        return
    for snag in check(file):
        assert snag.message
        assert is_safe(snag.render())
    assert all(caution.about for caution in cautions(file))
    eaten = matrix(file)
    assert len(eaten.answers) == len(eaten.guests) * len(eaten.dishes)
    assert set(plates(file, eaten)) == {course.course for course in file.plan.courses}


@settings(often, max_examples=times(100))
@given(cared_for())
def test_every_check_ends_in_findings(text: str) -> None:
    expect_findings_of(text)


@pytest.mark.slow
@settings(often, max_examples=10_000 if NEW_EXAMPLES else 2_000)
@given(cared_for())
def test_every_check_ends_in_findings_thousands_of_times(text: str) -> None:
    expect_findings_of(text)


def test_the_small_plan_with_care_is_read() -> None:
    """Else the rest of this file would look over nothing."""
    read = [isinstance(read_plan(SMALL.replace("takes:", f"{care}\n            takes:", 1), "x"), PlanFile)
            for care in CARE]  # fmt: skip
    assert sum(read) >= len(CARE) // 2


@pytest.fixture(scope="module")
def small() -> tuple[PlanFile, RunSheet]:
    file = read_plan(SMALL, "supper.yaml")
    assert isinstance(file, PlanFile), [snag.render() for snag in file]
    return file, make_sheet(file, lambda problem: solve(problem, 5))


@pytest.mark.parametrize("seed", range(60))
def test_a_sheet_of_any_times_is_looked_over(small: tuple[PlanFile, RunSheet], seed: int) -> None:
    file, sheet = small
    chance = random.Random(seed)

    def moved(slot: Slot) -> Slot:
        start = slot.start + timedelta(minutes=chance.randrange(-3000, 3000))
        lasts = timedelta(minutes=chance.randrange(0, 2000))
        return msgspec.structs.replace(slot, start=start, end=start + lasts, exposed=chance.random() < 0.5)

    odd = msgspec.structs.replace(sheet, slots=tuple(moved(slot) for slot in sheet.slots))
    for snag in safety_check(file, odd):
        assert is_safe(snag.render())
    assert len(with_sheet(of_plan(file), odd).the_sheet.slots) == len(sheet.slots)
