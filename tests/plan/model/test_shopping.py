"""What a plan says about buying and drinking: read, or refused with its place; trips and bottles on the run sheet."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.plan.load import PlanFile
from board.plan.model.drinking import HowMuch, parse_how_much, parse_pairing
from board.plan.model.shopping import Pack, Price, parse_in_the_house, parse_pack, parse_price
from board.plan.resolve.hours import home_of, hours_of
from board.plan.resolve.trips import trips
from board.schedule.audit.validate import validate
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import make_sheet
from board.sheet import said
from board.sheet.run_sheet import RunSheet
from tests.conftest import HEAD
from tests.plan.test_bad_plans import SOUND, expect_only_this_told

# Added to a sound plan at its end, where line 32 begins; then line:column, and words of the message or the mend.
BAD = {
    "a trip without hours": ("shopping: {fri: soon}", "32:17", "plan 7", "17:30 - 22:00"),
    "a trip on no day": ("shopping: {friday night: '16:00 - 17:00'}", "32:12", "plan 7", "is not a day"),
    "a list of trips": ("shopping: [fri]", "32:11", "plan 7", "a list"),
    "hours of a shop that are none": ("shops: {butcher: {fri: all day}}", "32:24", "plan 7", "17:30 - 22:00"),
    "a shop without its days": ("shops: {butcher: '8:00 - 18:00'}", "32:18", "plan 7", "key"),
    "a pantry of nothing": ("pantry: [2 kg]", "32:10", "plan 7", "does not say of what"),
    "a pantry below zero": ("pantry: [-2 kg flour]", "32:10", "plan 7", "has no amount"),
    "a pantry in keys": ("pantry: {flour: 2 kg}", "32:9", "plan 7", "list"),
    "a pack of no size": ("packs: {butter: some}", "32:17", "plan 7", "Write for example 250 g or 6."),
    "a pack in a range": ("packs: {eggs: 6 to 12}", "32:15", "plan 7", "not the size of a pack"),
    "a price of no amount": ("prices: {butter: 2.40}", "32:18", "plan 7", "2.40 a pack"),
    "a price by a strange measure": ("prices: {butter: 2.40 a kilogam}", "32:18", "plan 7", "Did you mean 'kilogram'?"),
    "a price below zero": ("prices: {butter: -1 a pack}", "32:18", "plan 7", "is not a price"),
    "a system of measures nobody knows": ("units: imperial", "32:8", "plan 7", "Write metric or us."),
    "a drink nobody knows": ("drinks: {wne: usual}", "32:10", "plan 5", "Did you mean 'wine'?"),
    "how much, in no words": ("drinks: {wine: plenty}", "32:16", "plan 7", "2 glasses a guest in the first hour"),
    "a strange measure of a drink": (
        "drinks: {wine: 2 buckets a guest}", "32:16", "plan 7", "is no measure of a drink",
    ),
    "more than a guest can take": ("drinks: {wine: 90 glasses a guest}", "32:16", "plan 7", "check the figure"),
    "drinks in a word": ("drinks: plenty", "32:9", "plan 7", "Write usual"),
    "fewer children than none": ("drinks: {children: -1}", "32:20", "plan 7", "0 or more"),
}  # fmt: skip
INSIDE = {
    "a dish scaled somehow": (
        "- dish: Lentils", "- dish: Lentils\n        scale: doubled", "29:16", "linear or as written",
    ),
    "a drink without bottles": ("at: 20:15", "at: 20:15\n    drink: dry cider", "27:12", "how many bottles"),
    "a drink with more to it": (
        "at: 20:15", "at: 20:15\n    drink: [\"cider, 6 bottles, shaken\"]", "27:13", "'shaken' says nothing",
    ),
    "a drink chilled for some time": (
        "at: 20:15", "at: 20:15\n    drink: cider, 6 bottles, chilled a while", "27:12", "25 min",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("line", "at", "code", "words"), BAD.values(), ids=BAD)
def test_a_fault_is_told_with_its_place(line: str, at: str, code: str, words: str) -> None:
    last = "            takes: 30 min\n"
    expect_only_this_told(last, f"{last}{line}\n", at, code, words)


@pytest.mark.parametrize(("old", "new", "at", "words"), INSIDE.values(), ids=INSIDE)
def test_a_fault_inside_is_told_with_its_place(old: str, new: str, at: str, words: str) -> None:
    expect_only_this_told(old, new, at, "plan 7", words)


def test_what_a_job_needs_is_read_like_an_ingredient() -> None:
    expect_only_this_told(
        "takes: 30 min\n", "takes: 30 min\njobs: [{job: candles, supplies: candles}]\n", "32:33", "plan 7",
        "has no amount",
    )  # fmt: skip


@pytest.mark.parametrize(("text", "price"), [
    ("2.40 a pack", Price(hundredths=240)), ("14.50 a kg", Price(hundredths=1450, per="kg")),
    ("€0,30 each", Price(hundredths=30, sign="€", per="each")),
    ("3 € a bunch", Price(hundredths=300, sign="€", per="bunch")),
    ("1.2 per 100 g", Price(hundredths=120, amount=100, per="g")), ("2/l", Price(hundredths=200, per="l")),
    ("1.20 for 6 piece", Price(hundredths=120, amount=6, per="each")),
])  # fmt: skip
def test_prices(text: str, price: Price) -> None:
    assert Price.model_validate(parse_price(text)) == price


@pytest.mark.parametrize(("text", "pack"), [
    ("250 g", Pack(amount=250, unit="g")), ("6", Pack(amount=6)), ("1½ l", Pack(amount=1.5, unit="l")),
    ("a bunch", Pack(amount=1, unit="bunch")),
])  # fmt: skip
def test_packs(text: str, pack: Pack) -> None:
    assert Pack.model_validate(parse_pack(text)) == pack


@given(st.text(max_size=40) | st.text("0123456789.,/ €akgpcheruni", max_size=20))
def test_whatever_is_written_is_read_or_refused_in_words(text: str) -> None:
    for parse in (parse_price, parse_pack, parse_in_the_house, parse_how_much, parse_pairing):
        try:
            assert parse(text) is not None
        except ValueError as refused:
            assert str(refused)  # noqa: PT017  # both endings are right


@pytest.mark.parametrize(("text", "found"), [
    ("usual", HowMuch(usual=True)), ("none", HowMuch()), ("2 glasses a guest", HowMuch(amount=2)),
    ("1 glass a guest a course", HowMuch(amount=1, each="course")),
    ("0.5 l a guest", HowMuch(amount=0.5, unit="l")), ("500 ml per guest", HowMuch(amount=0.5, unit="l")),
    ("2 glasses a guest in the first hour, 1 an hour after", HowMuch(amount=1, each="hour", first_hour=2)),
])  # fmt: skip
def test_how_much_there_is_to_drink(text: str, found: HowMuch) -> None:
    assert HowMuch.model_validate(parse_how_much(text)) == found


SHOPPING = (
    HEAD
    + """
kitchen: {fridge: 40 litres}
shopping: {fri: '16:00 - 17:30', sat: '10:00 - 11:00'}
courses:
  - course: Broth
    at: 19:15
    drink: dry cider, 6 bottles, chilled 2 h, opened 10 min before
    dishes:
      - dish: Leek broth
        steps:
          - step: simmer it
            where: stovetop
            takes: 90 min
            attended: none
            not after: 12:30
            keeps: 1 day in the fridge
          - {step: reheat it, where: stovetop, takes: 20 min}
"""
)


@pytest.fixture(scope="module")
def shopping(plan_from: Callable[[str], PlanFile]) -> tuple[PlanFile, RunSheet]:
    file = plan_from(SHOPPING)
    return file, make_sheet(file, solve)


def clock(day: int, hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 11, day, hour, minute, tzinfo=UTC)  # Dublin is at UTC in winter


def test_trips_stand_on_the_sheet_at_their_time_and_may_lie_outside_the_hours(
    shopping: tuple[PlanFile, RunSheet],
) -> None:
    file, sheet = shopping
    slots = sheet.by_id()

    friday, saturday = slots["jobs/go-shopping-fri"], slots["jobs/go-shopping-sat"]
    assert (friday.start, friday.end) == (clock(27, 16), clock(27, 17, 30))
    assert (saturday.start, saturday.end) == (clock(28, 10), clock(28, 11))
    assert {part.who for part in (*friday.attended, *saturday.attended)} == {"host"}
    assert sheet.given_up == ()
    assert validate(file, sheet) == []


def test_nothing_hot_runs_while_the_only_host_is_out(shopping: tuple[PlanFile, RunSheet]) -> None:
    """Until 12:30 its 90 minutes fit only after the trip; nobody is at home from 10 to 11, though it needs no hands."""
    _, sheet = shopping
    simmer = sheet.by_id()["leek-broth/simmer-it"]

    assert (simmer.start, simmer.end) == (clock(28, 11), clock(28, 12, 30))


def test_the_validator_sees_what_is_hot_with_the_host_out(shopping: tuple[PlanFile, RunSheet]) -> None:
    import msgspec

    file, sheet = shopping
    moved = tuple(
        msgspec.structs.replace(s, start=clock(28, 9, 30), end=clock(28, 11)) if s.id == "leek-broth/simmer-it" else s
        for s in sheet.slots
    )

    found = validate(file, msgspec.structs.replace(sheet, slots=moved))
    assert any("simmer it" in line and "nobody is at home" in line for line in found)


def test_hours_hold_the_trips_and_home_does_not(shopping: tuple[PlanFile, RunSheet]) -> None:
    plan = shopping[0].plan

    assert (clock(27, 16), clock(27, 17, 30)) in hours_of(plan, "host")
    assert home_of(plan, "host") == [(clock(28, 9), clock(28, 10)), (clock(28, 11), clock(28, 23, 30))]
    assert [trip.name for trip in trips(plan)] == ["go shopping (fri)", "go shopping (sat)"]


def test_bottles_are_chilled_with_their_litres_and_opened_in_time(shopping: tuple[PlanFile, RunSheet]) -> None:
    """Six bottles take 6 × 1.2 = 7.2 litres of fridge and 3 minutes to open: common practice, no source."""
    _, sheet = shopping
    slots = sheet.by_id()
    chill, opening = slots["jobs/chill-the-dry-cider-for-broth"], slots["jobs/open-the-dry-cider-for-broth"]
    serve = slots["serve/broth"]

    assert [(use.what, use.amount) for use in chill.uses] == [("fridge", pytest.approx(7.2))]
    assert (chill.end - chill.start).total_seconds() == 2 * 3600
    assert opening.start >= chill.end
    assert 600 <= (serve.start - opening.end).total_seconds() <= 2400
    assert chill.call == "Into the fridge: dry cider, 6 bottles"
    assert opening.call == "Open the dry cider, 6 bottles"


def test_a_very_long_name_of_a_drink_and_a_course_still_makes_a_sheet(plan_from: Callable[[str], PlanFile]) -> None:
    file = plan_from(
        HEAD + f"courses: [{{course: {'C' * 290}, at: '19:15', drink: '{'d' * 90}, 1 bottle, chilled', dishes: "
        "[{dish: D, steps: [{step: cook, takes: 10 min}]}]}]\n"
    )  # fmt: skip

    assert any(task.node.name.startswith("chill the ddd") for task in file.filled.tasks.values())


@pytest.mark.parametrize(("units", "setting", "says"), [
    ("", "180 C", "180 °C (350 °F)"), ("units: us\n", "180 C", "350 °F (180 °C)"),
    ("units: metric\n", "400 F", "200 °C (400 °F)"), ("units: us\n", "400 F", "400 °F (200 °C)"),
])  # fmt: skip
def test_a_dial_is_set_in_the_units_asked_for(
    plan_from: Callable[[str], PlanFile], units: str, setting: str, says: str
) -> None:
    """°F by definition, NIST SP 811, B.8; marks of a dial: common practice, no source."""
    file = plan_from(
        HEAD + units + "courses: [{course: C, at: '19:15', dishes: [{dish: D, steps: [{step: bake, takes: 20 min, "
        f"where: oven at {setting}}}]}}]}}]\n"
    )
    sheet = make_sheet(file, solve)
    call = next(said.call_at_start(slot) for slot in sheet.slots if slot.kind == "heat")

    assert call is not None
    assert says in call
    assert sheet.fahrenheit == (units == "units: us\n")


def test_the_plan_the_faults_are_put_into_has_thirty_one_lines() -> None:
    assert SOUND.lstrip("\n").count("\n") == 31
