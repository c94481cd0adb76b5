"""food 10 and food 11: what stands out too long before it is eaten, and before what is left is put into the cold.

Limit: USDA FSIS, danger zone: 2 h, and 1 h when the air is above 90 °F.
"""

import re
from datetime import timedelta

import pytest
from msgspec.structs import replace

from board.checks.sheet.clocks import dish_clocks
from board.plan.load import PlanFile
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from tests.checks.sheet.suppers import line_of, said, supper, weights
from tests.conftest import read

MIX = "- {step: mix it, takes: 30 min, before: 'serve Main, at once'}"


@pytest.mark.parametrize(
    ("eaten", "air", "outdoors", "wanted"),
    [
        # 30 min on the bench, 5 plated and carried, then at the table
        ("84 min", "{outdoors: 33 C, indoors: 20 C}", "no", []),
        ("85 min", "{outdoors: 33 C, indoors: 20 C}", "no", []),
        ("86 min", "{outdoors: 33 C, indoors: 20 C}", "no", ["STOP"]),
        ("25 min", "{outdoors: 33 C, indoors: 20 C}", "yes", []),
        ("26 min", "{outdoors: 33 C, indoors: 20 C}", "yes", ["STOP"]),
        # above 90 °F, not at it
        ("26 min", "{outdoors: 90 F}", "yes", []),
        ("26 min", "{outdoors: 90.1 F}", "yes", ["STOP"]),
        ("26 min", "{outdoors: 32 C}", "yes", []),
    ],
)
def test_f10_a_dish_is_eaten_before_its_clock_runs_out(eaten: str, air: str, outdoors: str, wanted: list[str]) -> None:
    assert weights(supper(MIX, eaten=eaten, air=air, outdoors=outdoors), "food 10") == wanted


def test_f10_spells_the_clock_out_at_the_dish() -> None:
    steps = """
    - {step: cut it, takes: 20 min, keeps: 2 h in the room}
    - {step: mix it, takes: 15 min, after: 'cut it, at least 40 min, at most 40 min', before: 'serve Main, at once'}
    """
    (snag,) = said(supper(steps, eaten="60 min"), "food 10")

    assert line_of(snag) == "- dish: Test dish"
    assert "2 h 20 neither hot nor cold enough until it is eaten" in snag.message
    assert "give 2 h [USDA FSIS, danger zone" in snag.message
    # out from 18:40: 2 h later is 20:40
    assert "over at Sat 20:40" in snag.message
    for piece in ("20 min cut it", "40 min kept after cut it", "15 min mix it", "5 min plated and carried",
                  "60 min at the table"):  # fmt: skip
        assert piece in snag.message
    assert "The longest is 60 min at the table." in snag.mend


def test_f10_what_is_cooked_through_begins_a_new_clock() -> None:
    """110 min on the bench, then through the oven to 74 °C (165 °F, FoodSafety.gov): only serving and table count."""
    steps = """
    - {step: cut it, takes: 110 min}
    - {step: bake it, where: oven at 180 C, takes: 40 min, KEY}
    """

    assert weights(supper(steps.replace("KEY", "cooks: poultry")), "food 10") == []
    assert weights(supper(steps.replace("KEY", "attended: all")), "food 10") == ["STOP"]


@pytest.mark.parametrize(
    ("food", "wanted"),
    [
        ("by time alone: no", ["ASK"]),
        ("ingredients: nothing", []),
        ("perishable: no", []),
        ("perishable: yes", []),
        ("ingredients: [1 kg flour]", []),
    ],
)
def test_f16_a_dish_of_which_nothing_is_said_has_no_clock_and_that_is_told(food: str, wanted: list[str]) -> None:
    assert weights(supper(MIX, food=food), "food 16") == wanted


@pytest.mark.parametrize(("heat", "wanted"), [("50 C", ["STOP"]), ("59 C", ["STOP"]), ("60 C", []), ("140 F", [])])
def test_f10_an_oven_below_hot_holding_keeps_nothing_safe(heat: str, wanted: list[str]) -> None:
    """Hot food at 140 °F or above: USDA FSIS."""
    steps = f"""
    - {{step: warm it, where: oven at {heat}, takes: 5 h, before: 'serve Main, at once'}}
    """
    assert weights(supper(steps), "food 10") == wanted


def test_f10_time_alone_gives_four_hours_by_the_retail_rules_only() -> None:
    """FDA Food Code 3-501.19: 4 h under a written procedure."""
    for rules, wanted in (("retail", []), ("home", ["STOP"])):
        dish = "Test dish\n        by time alone: yes"
        assert weights(supper(MIX, eaten="2 h", rules=rules, dish=dish), "food 10") == wanted


PUT_AWAY = "[{{job: put it away, after: 'clear Main, at once', takes: {0} min, attended: all, puts away: Main}}]"


@pytest.mark.parametrize(
    ("jobs", "wanted"),
    [
        ("[]", ["MIND"]),  # nothing puts it away
        # bench 30, carried 5, table 60, cleared 5: 20 min are left
        (PUT_AWAY.format(19), []),
        (PUT_AWAY.format(20), []),
        (PUT_AWAY.format(21), ["MIND"]),
    ],
)
def test_f11_what_is_left_is_put_away_before_the_clock_runs_out(jobs: str, wanted: list[str]) -> None:
    found = said(supper(MIX, eaten="60 min", jobs=jobs), "food 11")

    assert [snag.weight.name for snag in found] == wanted
    for snag in found:
        assert line_of(snag) == "- course: Main"
        # out from 19:25, so for 2 h at 21:25
        assert re.search("(put away by|what is left of Main by) Sat 21:25", snag.message)
        assert "throw it away" in snag.message
        assert "Test dish" in snag.message
        assert "Add a job:" in snag.mend or snag.mend.startswith("Do it sooner: `after: ")


def test_f11_the_first_deadline_of_a_courses_dishes_is_told() -> None:
    more = "      - {dish: Other dish, ingredients: [1 kg food], steps: [{step: MIX, takes: 10 min, BEFORE}]}\n"
    more = more.replace("MIX", "mix more").replace("BEFORE", "before: 'serve Main, at once'")
    for first, dish, other in ((MIX, "Test dish", more), (MIX.replace("30", "9"), "Other dish", more)):
        (snag,) = said(supper(first, eaten="60 min", more=other), "food 11")

        assert f"({dish})" in snag.message


@pytest.mark.parametrize(
    ("food", "spoils"),
    [
        ("55 g coffee", None),
        ("55 g filter coffee, 8 herbal tea bags", None),
        ("55 g coffee, 120 ml whole milk", "it spoils: whole milk"),  # FDA Food Code 1-201.10, from memory
        ("55 g coffee, 8 petits zorbs", "zorbs', which is not known: taken to spoil"),
    ],
)
def test_f11_coffee_is_put_away_only_for_what_spoils_in_it_which_is_told(food: str, spoils: str | None) -> None:
    brewed = "          - {step: brew the coffee, takes: 10 min, keeps: 30 min}"
    found = said(supper(brewed, eaten="60 min", dish="Coffee", food=f"ingredients: [{food}]"), "food 11")

    assert [snag.weight.name for snag in found] == ([] if spoils is None else ["MIND"])
    assert all(spoils in snag.render() for snag in found if spoils)


@pytest.mark.parametrize(("wait", "wanted"), [(75, []), (76, ["MIND"])])
def test_f11_platters_are_in_the_cold_as_the_clock_runs_out(wait: int, wanted: list[str]) -> None:
    """Out from 19:25, so until 21:25; the guests still eat."""
    after = f"'serve Main, at least {wait} min, at most {wait} min'"
    job = f"[{{job: put it away, after: {after}, takes: 10 min, puts away: Main}}]"

    assert weights(supper(MIX, eaten="85 min", jobs=job), "food 11") == wanted


def test_a_clock_runs_out_only_where_what_is_left_is_put_away_too_late() -> None:
    for jobs, wanted in (("[]", True), (PUT_AWAY.format(19), False), (PUT_AWAY.format(21), True)):
        (clock,) = dish_clocks(supper(MIX, eaten="60 min", jobs=jobs)[1])

        assert (clock.runs_out is not None) == wanted


def test_a_sheet_that_does_not_say_how_long_a_course_is_eaten_takes_it_from_the_clearing() -> None:
    _, sheet = supper(MIX, eaten="60 min")
    unsaid = replace(sheet, courses=tuple(replace(course, eaten=None) for course in sheet.courses))
    unwaited = replace(unsaid, slots=tuple(replace(slot, waits=()) for slot in sheet.slots))
    longer = replace(
        unsaid,
        slots=tuple(
            replace(slot, waits=(*slot.waits, *(replace(wait, minutes=2) for wait in slot.waits)))
            for slot in sheet.slots
        ),
    )
    (course,) = sheet.courses

    for found, minutes in ((unsaid, 60), (unwaited, 0), (longer, 60)):
        (clock,) = dish_clocks(found)
        assert clock.eaten - course.served == timedelta(minutes=minutes)


def test_f11_platters_may_be_put_away_while_the_course_is_still_eaten() -> None:
    """Out from 19:25, in the cold again 40 minutes after it went out at 20:00; the course is cleared at 21:30."""
    job = "[{job: put it away, after: 'serve Main, at least 30 min, at most 30 min', takes: 10 min, puts away: Main}]"

    assert weights(supper(MIX, eaten="85 min", jobs=job), "food 11") == []


def test_f11_says_nothing_more_of_what_must_not_be_eaten_at_all() -> None:
    found = supper(MIX, eaten="2 h")

    assert weights(found, "food 10") == ["STOP"]
    assert weights(found, "food 11") == []


@pytest.mark.parametrize("again", ["reheat it", "boil it up again", "warm it, reheats: yes"])
def test_f10_heating_again_gives_no_more_time(again: str) -> None:
    """100 minutes in the room, hot again, 5 to the table, 30 at it: 135 of 120. FDA Food Code 3-501.19, from memory."""
    steps = f"""
    - {{step: stew it, where: stovetop, takes: 60 min, until: 90 C, keeps: 2 h in the room}}
    - step: {again.replace(", ", chr(10) + "      ")}
      where: stovetop
      takes: 15 min
      until: 90 C
      after: 'stew it, at least 100 min, at most 100 min'
      before: 'serve Main, at once'
    """
    (snag,) = said(supper(steps), "food 10")

    assert "2 h 15" in snag.message


COURSES = """\
event: Test supper
date: 2026-11-28
zone: Europe/Dublin
arrive: 18:30
guests: [8 guests]
hands: {host: {hours: {on the day: '9:00 - 23:59'}}}
kitchen: {fridge: 60 litres}
courses:
"""
COURSE = """\
  - course: '%s'
    at: '%s'
    eaten in: %s
    dishes: [{dish: Food %s, ingredients: [1 kg food], steps: [{step: mix %s, takes: 10 min, best within: 5 min}]}]
"""


def offered(*courses: tuple[str, str, str], jobs: str = "") -> list[str]:
    """The jobs food 11 offers for courses of a name, a time and a length each; all of them pasted in, it is gone."""
    head = COURSES + "".join(COURSE % (*course, n, n) for n, course in enumerate(courses))
    plan = read(f"{head}jobs: [{jobs}]\n")
    assert isinstance(plan, PlanFile)
    snags = said((plan, make_sheet(plan, solve)), "food 11")
    lines = [match[1] for snag in snags if (match := re.search(r"Add a job: `(\{.*\})`;", snag.mend))]
    mended = read(f"{head}jobs:\n" + "".join(f"  - {line}\n" for line in lines))
    assert isinstance(mended, PlanFile), "\n".join(snag.render() for snag in mended)
    sheet = make_sheet(mended, solve)
    assert said((mended, sheet), "food 11") == []
    assert not sheet.given_up
    return lines


def test_f11_offers_a_job_for_each_deadline_that_one_job_cannot_meet() -> None:
    """Soup stands out from about 19:00, so until 21:00; Sweet is cleared after that."""
    lines = offered(("Soup", "19:15", "20 min"), ("Sweet", "20:55", "40 min"))

    assert [re.search("puts away: (.*)}", line)[1] for line in lines] == ["Soup", "Sweet"]  # type: ignore[index]


def test_f11_offers_one_job_where_one_meets_all_deadlines() -> None:
    """Sweet is cleared at 20:20, 40 minutes before the soup's deadline: 10 for the job, 5 to spare."""
    (line,) = offered(("Soup", "19:15", "20 min"), ("Sweet", "19:55", "20 min"))

    assert "after: 'clear Sweet, at most 25 min'" in line
    assert "puts away: [Soup, Sweet]" in line


@pytest.mark.parametrize(("sweet", "jobs"), [("20:20", 1), ("20:21", 2)])
def test_f11_one_job_has_ten_minutes_and_five_to_spare_after_the_last_is_cleared(sweet: str, jobs: int) -> None:
    """Sweet is cleared 25 minutes after it is served; the soup's deadline is 21:00."""
    assert len(offered(("Soup", "19:15", "20 min"), ("Sweet", sweet, "20 min"))) == jobs


@pytest.mark.parametrize(
    ("bench", "eaten", "wait"),
    [(90, 15, "at least 0 min, at most 10 min"), (100, 15, "at least 0 min, at most 0 min"),
     (104, 11, "at least 0 min, at most 0 min")],
)  # fmt: skip
def test_f11_what_stood_long_before_is_put_away_soon_after_it_is_served(bench: int, eaten: int, wait: str) -> None:
    """Of the two hours, those on the bench and 5 minutes of carrying are gone; the job takes 10, and 5 are spare."""
    (snag,) = said(supper(MIX.replace("30", str(bench)), eaten=f"{eaten} min"), "food 11")

    assert f"after: 'serve Main, {wait}'" in snag.mend


def test_f11_says_where_the_first_course_stands_that_one_job_puts_away() -> None:
    plan = read(COURSES + COURSE % ("Soup", "19:15", "20 min", 0, 0) + COURSE % ("Sweet", "19:55", "20 min", 1, 1))
    assert isinstance(plan, PlanFile)
    (snag,) = said((plan, make_sheet(plan, solve)), "food 11")

    assert line_of(snag) == "- course: 'Soup'"


@pytest.mark.parametrize(
    ("eaten", "after"),
    [
        (20, "clear Buffet, at most 60 min"),  # longest
        (87, "clear Buffet, at most 0 min"),
        (90, "clear Buffet, at most 0 min"),
        (91, "serve Buffet, at least 80 min, at most 90 min"),
    ],
)
def test_f11_waits_for_clearing_as_long_as_there_is_time_for_the_job(eaten: int, after: str) -> None:
    """Cleared 5 minutes after it is eaten, put away in 10; the deadline is 21:00."""
    (line,) = offered(("Buffet", "19:15", f"{eaten} min"))

    assert f"after: '{after}" in line


def test_f11_writes_its_jobs_as_yaml_whatever_a_course_is_called() -> None:
    (line,) = offered(("Soup: hot, [thick] #1", "19:15", "20 min"))

    assert "puts away: 'Soup: hot, [thick] #1'" in line


def test_f11_of_a_course_eaten_long_is_put_away_while_it_is_eaten() -> None:
    (line,) = offered(("Buffet", "19:15", "100 min"))

    assert "after: 'serve Buffet, at least " in line


def test_f11_a_job_that_waits_for_another_course_is_told_to_be_two() -> None:
    job = "{job: put away, after: clear Sweet, takes: 10 min, puts away: [Soup, Sweet]}"
    head = COURSES + COURSE % ("Soup", "19:15", "20 min", 0, 0) + COURSE % ("Sweet", "20:55", "40 min", 1, 1)
    plan = read(f"{head}jobs: [{job}]\n")
    assert isinstance(plan, PlanFile)
    (snag,) = said((plan, make_sheet(plan, solve)), "food 11")
    own = re.search(r"a job of its own, `(\{.*\})`, and take it out of `puts away` of put away\.", snag.mend)
    assert own is not None
    after = job.replace("[Soup, Sweet]", "Sweet").replace("clear Sweet", "'clear Sweet, at most 20 min'")
    mended = read(f"{head}jobs: [{own[1]}, {after}]\n")
    assert isinstance(mended, PlanFile)

    assert said((mended, make_sheet(mended, solve)), "food 11") == []


SOUP = """
- {step: simmer the soup, where: stovetop, takes: 30 min, keeps: 6 h in the room}
- {step: warm the soup through, where: stovetop, takes: 12 min, until: 50 C, after: 'simmer the soup, at least 6 h'}
"""


def test_f10_vegetable_soup_for_hours_in_the_room_is_stopped_with_the_reason() -> None:
    """Nothing in it spoils raw; cooked, it does: FDA Food Code 1-201.10, from memory."""
    food = "ingredients: [600 g leeks, 3 tbsp olive oil]"
    (snag,) = said(supper(SOUP, food=food, dish="Leek soup"), "food 10")

    assert snag.weight.name == "STOP"
    assert "cooked leek (FDA Food Code 1-201.10" in snag.source


def test_f10_what_nobody_knows_is_asked() -> None:
    (snag,) = said(supper(MIX, food="ingredients: [1 kg frobnitz]", eaten="90 min"), "food 10")

    assert snag.weight.name == "ASK"
    assert "Does it spoil?" in snag.mend
    assert "frobnitz" in snag.source


def test_f10_what_is_baked_dry_may_stand() -> None:
    steps = "- {step: bake it, where: oven at 170 C, takes: 40 min, not after: '12:00', keeps: 2 days in the room}"
    food = "ingredients: [300 g plain flour, 3 eggs, 200 g butter, 200 g sugar]"

    assert said(supper(steps, food=food, dish="Seed cake"), "food 10") == []
