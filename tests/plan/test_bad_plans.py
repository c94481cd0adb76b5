"""Plans with one fault each: where the fault is said to stand, under which code, and in which words."""

import re

import pytest

from board.plan.load import PlanFile
from board.plan.snag import Snag
from tests.conftest import HEAD, read

SOUND = (
    HEAD
    + """\
kitchen:
  rings: 4
  tools: {big pot: 1}
courses:
  - course: Broth
    at: 19:15
    dishes:
      - dish: Leek broth
        ingredients: [1 kg leeks (veg)]
        steps:
          - step: cut the leeks
            takes: 10 min
          - step: simmer the leeks
            where: stovetop, 1 ring, big pot
            takes: 20 min
  - course: Main
    at: 20:15
    dishes:
      - dish: Lentils
        steps:
          - step: cook the lentils
            takes: 30 min
"""
)
MORE = "\n            "  # one more key of the same step

# What is changed in SOUND: from, to; then line:column, code, words of the message or of how to mend it.
SHAPES = {
    "a mistyped key of a step": ("takes: 10 min", "taks: 10 min", "21:13", "plan 5", "'takes'"),
    "a mistyped key beside the right ones": ("10 min", f"10 min{MORE}keps: 2 h", "22:13", "plan 5", "'keeps'"),
    "a mistyped key of a course": ("- course: Main", "- cuorse: Main", "25:5", "plan 5", "Did you mean 'course'?"),
    "a mistyped key of the plan": ("zone: Eur", "zoen: Eur", "3:1", "plan 5", "Did you mean 'zone'?"),
    "a key no part of a plan knows": ("rings: 4", "hobs: 4", "11:3", "plan 5", "Known here: ovens, rings"),
    "a mistyped key of an oven": ("rings: 4", "ovens: {oven: {shelfs: 2}}", "11:18", "plan 5", "'shelves'"),
    "a mistyped key of a long form": (
        "10 min", "{low: 5 min, likly: 6 min, high: 9 min}", "21:33", "plan 5", "'likely'",
    ),
    "a step without its name": ("step: cut the leeks", "call: Leeks", "20:13", "plan 6", "a step needs `step`"),
    "a step without `takes`": ("takes: 30 min", "call: Lentils", "30:13", "plan 6", "a step needs `takes`"),
    "a plan without `arrive`": ("arrive: 18:30\n", "", "1:1", "plan 6", "a plan needs `arrive`"),
    "a length of time without its unit": ("10 min", "10", "21:20", "plan 7", "Write for example 10 min."),
    "a unit no clock knows": ("10 min", "10 minuts", "21:20", "plan 7", "Did you mean 'minutes'?"),
    "a length of time below zero": ("10 min", "-10 min", "21:20", "plan 7", "'-10 min' is not a length of time"),
    "low above high": ("10 min", "20 to 15 to 10 min", "21:20", "plan 7", "low, likely and high must rise"),
    "a number with two readings": ("10 min", "1,500 min", "21:20", "plan 7", "Write 1500 or 1.500."),
    "half an amount of food": (
        "1 kg leeks (veg)", "{food: leeks, low: 1, unit: kg}", "18:23", "plan 7", "both low and high, or neither",
    ),
    "a list for a length of time": ("10 min", "[10, 20]", "21:20", "plan 7", "a list stands where a few words"),
    "keys for a length of time": ("10 min", f"10 min{MORE}best within: {{a: 1}}", "22:26", "plan 7", "keys stand"),
    "no length of time for `best within`": ("10 min", f"10 min{MORE}best within: soon", "22:26", "plan 7", "25 min"),
    "`keeps` that does not say how long": (
        "10 min", f"10 min{MORE}keeps: long in the fridge", "22:20", "plan 7", "3 days in the fridge",
    ),
    "a result kept where nothing keeps": (
        "10 min", f"10 min{MORE}keeps: 2 h on the worktop", "22:20", "plan 7", "place",
    ),
    "part attended, but which": ("10 min", f"10 min{MORE}attended: 3 min", "22:23", "plan 7", "which part needs hands"),
    "an unknown zone": ("Dublin", "Dublinn", "3:7", "plan 7", "Did you mean 'Europe/Dublin'?"),
    "a day the calendar lacks": ("2026-11-28", "2026-02-30", "2:7", "plan 7", "not a day of the calendar"),
    "a date day first": ("2026-11-28", "28/11/2026", "2:7", "plan 7", "Write year-month-day"),
    "a date past all clocks": ("2026-11-28", "9999-12-31", "2:7", "plan 7", "Write a year from 1970 to 2200."),
    "a date before all clocks": ("2026-11-28", "0001-01-01", "2:7", "plan 7", "lies too far off"),
    "an hour past 23": ("at: 19:15", "at: 25:00", "15:9", "plan 7", "Hours run to 23"),
    "a clock time without its colon": ("at: 19:15", "at: 1915", "15:9", "plan 7", "19:15"),
    "a temperature without its unit": ("10 min", f"10 min{MORE}until: 74", "22:20", "plan 7", "Write 74 C or 74 F."),
    "an oven setting without its unit": (
        "10 min", f"10 min{MORE}where: oven at 190", "22:20", "plan 7", "190 C or 190 F",
    ),
    "a range of heat backwards": ("10 min", f"10 min{MORE}where: oven at 210 to 190 C", "22:20", "plan 7", "backwards"),
    "a setting outside its range": (
        "10 min", f"10 min{MORE}where: oven at 150 C (160 to 170 C)", "22:20", "plan 7", "own",
    ),
    "a heat no kitchen has": ("10 min", f"10 min{MORE}where: oven at 2000 C", "22:20", "plan 7", "check the figure"),
    "an oven that heats downwards": ("rings: 4", "ovens: {oven: {heats: 9 min to 5 C}}", "11:25", "plan 7", "hotter"),
    "an oven step without a setting": ("10 min", f"10 min{MORE}where: oven", "22:20", "plan 6", "needs its setting"),
    "a diet nobody knows": ("[8 guests]", '["Ines, vegitarian"]', "5:10", "plan 7", "Did you mean 'vegetarian'?"),
    "a diet as a guest of its own": ("[8 guests]", "[Ines, vegan]", "5:16", "plan 7", "keep a guest together"),
    "an allergy as a guest of its own": ("[8 guests]", "[Ines, no nuts]", "5:16", "plan 7", "keep a guest together"),
    "no hands at all": (
        "host:\n    hours:\n      on the day: 9:00 - 23:30", "{}", "7:3", "plan 7", "Add one: `hands: {",
    ),
    "no guests at all": ("[8 guests]", "[]", "5:9", "plan 7", "at least one entry"),
    "an ingredient without an amount": ("1 kg leeks", "leeks", "18:23", "plan 7", "has no amount"),
    "an ingredient without a food": ("1 kg leeks (veg)", "1 kg", "18:23", "plan 7", "does not say of what"),
    "an amount backwards": ("1 kg leeks", "2 to 1 kg leeks", "18:23", "plan 7", "2 to 1 runs backwards"),
    "rings in words": ("rings: 4", "rings: many", "11:10", "plan 7", "'many' is not a number for `rings`"),
    "fewer rings than none": ("rings: 4", "rings: -1", "11:10", "plan 7", "Write 0 or more."),
    "ovens in words": ("rings: 4", "ovens: some", "11:10", "plan 7", "Write `ovens: 1`"),
    "a day nobody has": ("on the day:", "satday:", "9:7", "plan 7", "'satday' is not a day."),
    "hours that never end": ("9:00 - 23:30", "9:00", "9:19", "plan 7", "17:30 - 22:00"),
    "true where words belong": ("step: cut the leeks", "step: true", "20:19", "plan 7", "a plain yes or no"),
    "a number where words belong": ("event: Test supper", "event: 5", "1:8", "plan 7", "takes words"),
    "words where yes or no belongs": ("at: 20:15", "at: 20:15\n    standing: maybe", "27:15", "plan 7", "Write yes or"),
    "a key without a value": ("takes: 10 min", "takes:", "21:13", "plan 7", "`takes` has no value"),
    "an optional key without a value": ("10 min", f"10 min{MORE}after:", "22:13", "plan 7", "`after` has no value"),
    "an empty name": ("course: Main", "course: ''", "25:13", "plan 7", "`course` is empty"),
    "a place that is none, in long form": (
        "10 min", f"10 min{MORE}where: {{place: shed}}", "22:28", "plan 7", "Use one of",
    ),
    "a course's time that says nothing": ("at: 19:15", "at: {}", "15:9", "plan 7", "Write 19:15."),
}  # fmt: skip

OLDER = {
    "the older word for where": ("10 min", f"10 min{MORE}on: worktop", "22:13", "Write `where:` instead of `on:`."),
    "both words for where": (
        "10 min", f"10 min{MORE}where: worktop{MORE}on: worktop", "23:13", "Write `where:` instead of `on:`.",
    ),
    "the older word of another way": (
        "10 min", f"10 min{MORE}or: [{{on: worktop}}]", "22:19", "Write `where:` instead of `on:`.",
    ),
    "the older word for what a job uses up": (
        "courses:", "jobs: [{job: flowers, needs: 2 bunches roses}]\ncourses:", "13:23",
        "Write `supplies:` instead of `needs:`.",
    ),
}  # fmt: skip

REFERENCES = {
    "a mistyped step": ("10 min", f"10 min{MORE}after: cook the lentls", "22:20", "plan 8", "'cook the lentils'"),
    "a mistyped step in a list": (
        "30 min", f"30 min{MORE}after: [cut the leeks, simer the leeks]", "32:36", "plan 8", "'simmer the leeks'",
    ),
    "a mistyped dish of a step": (
        "30 min", f"30 min{MORE}after: cut the leeks in Leek brot", "32:20", "plan 8", "'cut the leeks in Leek broth'",
    ),
    "a name that two steps have": (
        "cook the lentils\n            takes: 30 min",
        "simmer the leeks\n            takes: 30 min\njobs: [{job: rest, after: simmer the leeks}]",
        "32:27", "plan 9", "'simmer the leeks in Leek broth' or 'simmer the leeks in Lentils'",
    ),
    "a name that two steps of one dish have": (
        "takes: 30 min",
        f"takes: 1 h\n          - step: cook the lentils{MORE}takes: 1 h\njobs:\n- {{job: a, after: cook the lentils}}",
        "35:19", "plan 9", "Give each its own name.",
    ),
    "a name that two steps of one dish have but for a capital": (
        "takes: 30 min",
        f"takes: 1 h\n          - step: Cook the lentils{MORE}takes: 1 h\njobs:\n- {{job: a, after: cook the lentils}}",
        "35:19", "plan 9", "Give each its own name.",
    ),
    "a step that waits for itself": (
        "10 min", f"10 min{MORE}after: cut the leeks", "22:20", "plan 10", "waits for itself",
    ),
    "at most less than at least": (
        "30 min", f"30 min{MORE}after: cut the leeks, at least 3 h, at most 2 h", "32:20", "plan 11",
        "at most 2 h is less",
    ),
    "a ring of two steps": (
        "10 min", f"10 min{MORE}after: simmer the leeks", "20:13", "plan 12",
        "'cut the leeks' → 'simmer the leeks' → 'cut the leeks'",
    ),
    "a ring of three steps across dishes": (
        "30 min", f"30 min{MORE}after: simmer the leeks{MORE}before: cut the leeks", "20:13", "plan 12",
        "'cut the leeks' → 'simmer the leeks' → 'cook the lentils' → 'cut the leeks'",
    ),
    "a ring through `before`": (
        "20 min", f"20 min{MORE}before: cut the leeks", "20:13", "plan 12",
        "'cut the leeks' → 'simmer the leeks' → 'cut the leeks'",
    ),
    "a ring through the serving": (
        "10 min", f"10 min{MORE}after: serve Broth", "20:13", "plan 12", "'serve Broth' → 'cut the leeks' →",
    ),
    "a step before itself": ("10 min", f"10 min{MORE}before: cut the leeks", "22:21", "plan 10", "waits for itself"),
    "a tool the kitchen lacks": ("big pot\n", "big pott\n", "23:20", "plan 8", "Did you mean 'big pot'?"),
    "an oven the kitchen lacks": ("stovetop, 1 ring, big pot", "small ovn at 180 C", "23:20", "plan 8", "an oven of"),
    "a mistyped lane": ("stovetop, 1", "stovetp, 1", "23:20", "plan 8", "Did you mean 'stovetop'?"),
    "a place that is no lane": ("10 min", f"10 min{MORE}where: room", "22:20", "plan 7", "is no lane to work in"),
    "a mistyped place to keep": ("10 min", f"10 min{MORE}keeps: 2 days in the frige", "22:20", "plan 8", "'fridge'"),
    "a stranger among the hands": ("10 min", f"10 min{MORE}who: hots", "22:18", "plan 8", "Did you mean 'host'?"),
    "work for two where there is one": (
        "10 min", f"10 min{MORE}hands: 2", "22:20", "plan 18", "the only hands for it are host",
    ),
    "a dish that waits for the shelf": (
        "      - dish: Lentils", "      - from shelf: Tart\n      - dish: Lentils", "28:9", "plan 17", "dishes fill",
    ),
    "a course after no course": ("at: 20:15", "at: 40 min after Brot", "26:9", "plan 8", "'Broth'"),
    "a first course after another": (
        "at: 19:15", "at: 9 min after the course before", "15:9", "plan 8", "none before it",
    ),
    "a course before the guests": (
        "at: 19:15", "at: 18:00", "15:9", "plan 13", "Broth is wanted at 18:00, before the guests arrive at 18:30",
    ),
    "a course before the one before it": (
        "at: 20:15", "at: 19:00", "26:9", "plan 13", "Main is wanted at 19:00, before Broth at 19:15",
    ),
    "two dishes of one name in a course": (
        "      - dish: Lentils\n        steps:",
        "      - dish: Lentils\n        steps: [{step: rinse, takes: 1 min}]\n      - dish: ' lentils'\n        steps:",
        "30:15", "plan 9", "two dishes of one name in a course",
    ),
    "two dishes of one name in two courses, with one step of the same words": (
        "      - dish: Lentils\n        steps:\n          - step: cook the lentils",
        "      - dish: Leek broth\n        steps:\n          - step: Simmer the leeks", "28:15", "plan 9",
        "its own name",
    ),
    "two courses of one name": ("course: Main", "course: Broth", "25:13", "plan 4", "two courses are called 'Broth'"),
}  # fmt: skip

JARGON = re.compile(
    r"Input should|validation error|\bdict\b|NoneType|https?:|Traceback|pydantic|\bstr\b|\bint\b|Extra inputs"
)


def spot(snag: Snag) -> str:
    assert snag.place is not None
    return f"{snag.place.line}:{snag.place.column}"


def test_the_plan_they_all_start_from_is_sound() -> None:
    assert isinstance(read(SOUND), PlanFile)


@pytest.mark.parametrize(("old", "new", "at", "code", "words"), SHAPES.values(), ids=SHAPES)
def test_a_fault_of_shape_is_the_one_thing_told(old: str, new: str, at: str, code: str, words: str) -> None:
    expect_only_this_told(old, new, at, code, words)


@pytest.mark.parametrize(("old", "new", "at", "code", "words"), REFERENCES.values(), ids=REFERENCES)
def test_a_reference_that_leads_nowhere_is_the_one_thing_told(
    old: str, new: str, at: str, code: str, words: str
) -> None:
    expect_only_this_told(old, new, at, code, words)


@pytest.mark.parametrize(("old", "new", "at", "words"), OLDER.values(), ids=OLDER)
def test_a_key_by_its_older_word_is_told_with_the_new_one(old: str, new: str, at: str, words: str) -> None:
    expect_only_this_told(old, new, at, "plan 5", words)


def expect_only_this_told(old: str, new: str, at: str, code: str, words: str) -> None:
    assert old in SOUND
    found = read(SOUND.replace(old, new, 1))

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [(at, code)], "\n".join(snag.render() for snag in found)
    assert words.casefold() in f"{found[0].message} {found[0].mend}".casefold()
    assert found[0].mend
    assert not JARGON.search(found[0].render())


def test_dishes_of_one_name_in_two_courses_whose_steps_can_be_told_apart_are_no_fault() -> None:
    assert isinstance(read(SOUND.replace("dish: Lentils", "dish: Leek broth")), PlanFile)


def test_a_course_in_the_small_hours_is_after_midnight_and_not_before_the_guests() -> None:
    assert isinstance(read(SOUND.replace("at: 20:15", "at: 0:15")), PlanFile)


def test_yes_is_a_word_like_any_other_where_words_belong() -> None:
    """YAML 1.2.2, 10.3.2 (core schema): only true and false are yes and no."""
    found = read(SOUND.replace("step: cut the leeks", "step: yes"))

    assert isinstance(found, PlanFile)
    assert found.plan.courses[0].dishes[0].steps[0].step == "yes"


def test_six_faults_of_shape_and_reference_are_told_at_once_in_the_order_of_the_file() -> None:
    text = SOUND
    for old, new in (
        ("2026-11-28", "2026-02-30"),
        ("rings: 4", "rings: many"),
        ("takes: 10 min", "taks: 10 min"),
        ("ring, big pot", "ring, big pott"),
        ("at: 20:15", "at: half past"),
        ("takes: 30 min", f"takes: 30 min{MORE}after: simer the leeks"),
    ):
        text = text.replace(old, new)
    found = read(text)

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [
        ("2:7", "plan 7"), ("11:10", "plan 7"), ("21:13", "plan 5"), ("23:20", "plan 8"), ("26:9", "plan 7"),
        ("32:20", "plan 8"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("step: simmer the leeks", "stpe: simmer the leeks"),
        ("- course: Broth", "- cuorse: Broth"),
        ("tools: {big pot: 1}", "tools: {big pot: many}"),
        ("tools: {big pot: 1}", "tools: [big pot]"),
        ("tools: {big pot: 1}", "tools:"),
        ("at: 19:15", "at: soon"),
        ("at: 20:15", "at: soon"),
        ("arrive: 18:30", "arrive: late"),
        ("[8 guests]", "eight"),
        ("on the day: 9:00 - 23:30", "on the day: always"),
        ("takes: 20 min", "takes:"),
    ],
)
def test_one_fault_brings_no_others_in_its_train(old: str, new: str) -> None:
    """Everything else refers to what stands beside the fault: a step, a course, a tool, a person."""
    text = (
        SOUND
        + "jobs: [{job: rest, after: simmer the leeks, before: serve Main, who: host, where: 'worktop, big pot'}]\n"
    )
    found = read(text.replace(old, new))

    assert isinstance(found, list)
    assert len(found) == 1, "\n".join(snag.render() for snag in found)
