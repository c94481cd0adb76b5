"""What `check` shows: a count first, the worst first, all of one screen, and what stands on the host's word."""

import io
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import msgspec
import pytest
from rich.console import Console

from board.checks.sheet.assessed import Assessed, of_plan
from board.files.plans import plan_in
from board.output.check import MOST_GIVEN_UP, MOST_LINES, print_check
from board.output.check_form import check_form
from board.plan.snag import Snag, Weight
from board.sheet.run_sheet import RunSheet
from board.sheet.told import GivenUp
from tests.conftest import PLANS

NAIVE = """\
event: Friends to dinner
date: 2026-12-12
zone: Europe/Vienna
arrive: 19:00
guests: ["Kit, no nuts, no milk", "Ines, coeliac, no shellfish", "Jo, vegan", 5 others]
kitchen:
  ovens: {oven: {shelves: 2, low: 50 C, high: 250 C}}
  rings: 4
  fridge: 20 litres
hands: {host: {hours: {on the day: 9:00 - 23:59}}}
courses:
  - course: Starter
    at: "19:30"
    dishes:
      - dish: Prawn and walnut salad
        ingredients: [500 g prawns, 100 g walnuts, 2 lettuces, 3 tbsp zorgle, 200 ml double cream, 2 tbsp quop]
        steps: [{step: toss the salad, takes: 20 min}]
      - dish: Cheese straws
        ingredients: [200 g puff pastry, 100 g cheddar, 1 egg]
        steps: [{step: bake the straws, where: oven at 200 C, takes: 15 min}]
  - course: Main
    at: "20:30"
    dishes:
      - dish: Roast chicken
        ingredients: [2 chickens, 100 g butter, 2 tsp flib, 1 tbsp plain flour]
        steps: [{step: roast the chickens, where: oven at 190 C, takes: 90 min}]
      - dish: Mash
        ingredients: [2 kg potatoes, 200 ml milk, 100 g butter]
        steps: [{step: mash, takes: 20 min}, {step: reheat the mash, where: stovetop, takes: 10 min}]
  - course: Sweet
    at: "21:30"
    dishes:
      - dish: Chocolate mousse
        ingredients: [300 g dark chocolate, 6 eggs, 300 ml cream, 50 g frobnits]
        steps: [{step: whip the mousse, takes: 30 min}]
      - dish: Almond tart
        ingredients: [200 g ground almonds, 200 g flour, 4 eggs, 100 g butter, "1 l milk, snarked"]
        steps: [{step: bake the tart, where: oven at 180 C, takes: 40 min}]
"""


def shown(text: str, *, whole: bool = False) -> list[str]:
    return lines_of(assessed(text), whole=whole)


def assessed(text: str) -> Assessed:
    return of_plan(plan_in(text, Path("supper.yaml")))


def lines_of(plan: Assessed, *, whole: bool = False, now: datetime | None = None) -> list[str]:
    out = io.StringIO()
    print_check(plan, Console(file=out, width=100, force_terminal=False), now=now, whole=whole)
    return out.getvalue().splitlines()


def test_the_first_line_after_the_title_counts_what_was_found() -> None:
    plan = assessed(NAIVE)
    weights = [snag.weight.name for snag in plan.snags]
    told = lines_of(plan)[1]
    assert told.startswith(f"{weights.count('STOP')} stops, {weights.count('ASK')} to ask, ")
    assert f"{weights.count('MIND')} to mind" in told


def test_a_naive_dinner_of_three_courses_stays_on_one_screen_and_the_rest_is_under_all() -> None:
    plan = assessed(NAIVE)
    brief, whole = lines_of(plan), lines_of(plan, whole=True)
    stops = sum(snag.weight.name == "STOP" for snag in plan.snags)
    assert stops >= 5
    assert len(brief) <= MOST_LINES
    assert any("--all" in line for line in brief)
    assert not any("--all" in line for line in whole)
    for snag in plan.snags:
        assert any(snag.what() in line for line in brief) or snag.weight.name != "STOP"
    for snag in plan.snags:
        assert any(snag.what() in line for line in whole)


def test_the_worst_comes_first_by_harm_not_by_line() -> None:
    codes = [snag.code for snag in assessed(NAIVE).snags]
    weights = [snag.weight for snag in assessed(NAIVE).snags]
    assert weights == sorted(weights, reverse=True)
    assert codes[0] == "guests 1"


@pytest.mark.parametrize("word", ["perishable: no", "free from", "foods", "not served to Kit", "puts away"])
def test_every_word_that_silences_a_finding_is_told_with_what_it_silenced(word: str) -> None:
    text = (
        NAIVE.replace("- dish: Mash\n", "- dish: Mash\n        perishable: no\n")
        .replace("50 g frobnits", "50 g frobnits, 10 g flib")
        .replace("dark chocolate,", "dark chocolate, ")
        .replace('"1 l milk, snarked"', '"1 l oat drink, free from gluten"')
        .replace("- dish: Prawn", "- not for: Kit\n        dish: Prawn")
        + "foods: {frobnits: nothing}\n"
        + "jobs: [{job: put the mash away, puts away: Main, after: clear Main, takes: 10 min}]\n"
    )
    told = {(each.word, each.about) for each in assessed(text).trusted}
    assert {
        "perishable: no": ("perishable: no", "Mash"),
        "free from": ("free from gluten", "oat drink"),
        "foods": ("foods: frobnits: nothing", "frobnits"),
        "not served to Kit": ("not served to Kit", "Prawn and walnut salad (walnuts)"),
        "puts away": ("puts away", "Main (put the mash away)"),
    }[word] in told
    assert not any(each.word.startswith(word.split(":")[0]) for each in assessed(NAIVE).trusted)


def test_what_is_asked_for_alike_is_said_once() -> None:
    lines = shown(NAIVE)
    mends = [line for line in lines if line.startswith("    ") and not line.strip().startswith("^")]
    assert len(mends) == len(set(mends))


def test_of_what_a_timetable_gives_up_the_first_are_told_and_how_many_more(lantern_sheet: RunSheet) -> None:
    """More than one course late, as after a search that was cut short."""
    given_up = tuple(GivenUp(f"Course {n}", "the oven is full", n) for n in range(9))
    plan = replace(assessed(NAIVE), sheet=msgspec.structs.replace(lantern_sheet, given_up=given_up))
    brief, whole = lines_of(plan), lines_of(plan, whole=True)

    assert sum("the oven is full" in line for line in brief) == MOST_GIVEN_UP - 1
    assert "  and 4 more" in brief
    assert sum("the oven is full" in line for line in whole) == 9
    assert not any("hands are taken to stay" in line for line in whole)
    assert len(brief) <= MOST_LINES


def test_hands_that_nobody_gave_are_told_before_what_is_given_up(lantern_sheet: RunSheet) -> None:
    plan = assessed(NAIVE.replace("step: whip the mousse", "step: cook the mousse base"
        ).replace("takes: 30 min", "takes: 50 min"))  # fmt: skip
    sheet = msgspec.structs.replace(lantern_sheet, given_up=(GivenUp("Main", "the hands are full", 1),))
    told = [line.strip() for line in lines_of(replace(plan, sheet=sheet))]
    first = told.index("The timetable has to give something up:") + 1

    assert "hands are taken to stay all the time at: cook the mousse base (say `attended:`)" in told[first]
    assert told[first + 1] == "Main: the hands are full"
    assert any(snag.code == "unsure 3" for snag in plan.snags)


def test_a_timetable_with_a_stop_is_not_said_to_hold(lantern_sheet: RunSheet) -> None:
    plan = assessed(NAIVE)
    unfit = lines_of(replace(plan, sheet=lantern_sheet))
    fit = lines_of(replace(plan, sheet=lantern_sheet, snags=()))
    assert not any("holds" in line for line in unfit if "guests" not in line)
    assert any("not fit to serve" in line for line in unfit)
    assert any(line.startswith("The timetable holds") for line in fit)


def test_a_time_that_is_past_is_told_beside_the_verdict(lantern_sheet: RunSheet) -> None:
    """Guests are due 2026-11-28 18:30 in Dublin, and the first work begins the day before."""
    text = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
    plan = replace(assessed(text), sheet=lantern_sheet, snags=())
    first = min(slot.start for slot in lantern_sheet.slots)

    def told(now: datetime) -> list[str]:
        lines = lines_of(plan, now=now)
        at = next(n for n, line in enumerate(lines) if line.startswith("The timetable holds"))
        return [line for line in lines[at : at + 2] if "it is" in line and "now" in line]

    assert told(first) == []
    assert told(first + timedelta(hours=1)) == [
        "  Its work was to begin Fri 27 Nov 2026 17:08, and it is Fri 27 Nov 2026 18:08 now."
    ]
    assert told(datetime(2026, 11, 28, 21, 30, tzinfo=UTC)) == [
        "  Its time is past: guests were due Sat 28 Nov 2026 18:30, and it is Sat 28 Nov 2026 21:30 now."
    ]
    late = check_form(plan, first + timedelta(hours=1))["past"]
    assert late is not None
    assert (late["what"], late["due"]) == ("work", "2026-11-27T17:08:00+00:00")
    assert f"  {late['text']}" in told(first + timedelta(hours=1))
    assert check_form(plan, first)["past"] is None
    assert any("Its time is past" in line for line in lines_of(assessed(NAIVE), now=datetime(2100, 1, 1, tzinfo=UTC)))


def test_what_stands_longer_than_is_usual_is_not_said_to_keep_its_limit(lantern_sheet: RunSheet) -> None:
    asked = (Snag("keeping 3", Weight.ASK, "it stands"),)
    plan = replace(assessed(NAIVE), sheet=lantern_sheet)

    assert any("nothing kept past its limit" in line for line in lines_of(replace(plan, snags=())))
    assert not any("nothing kept past its limit" in line for line in lines_of(replace(plan, snags=asked)))
