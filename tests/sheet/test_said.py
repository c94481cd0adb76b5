"""A run sheet holds codes; its words are today's whenever it is shown, and are those that older sheets held."""

import gzip
import json
import re
from collections.abc import Callable
from functools import cache
from importlib import import_module
from pathlib import Path
from types import ModuleType
from typing import Any, get_args, get_type_hints

import msgspec
import pytest

from board.base import words as shared
from board.base.words import times
from board.checks.sheet.assessed import of_plan, with_sheet
from board.evening.calls import Call
from board.evening.events import EveningOpened
from board.facts.cooling import Law
from board.log.record import from_line, to_line
from board.plan.load import PlanFile, read_plan
from board.plan.resolve.assumed import Assumed, Kind
from board.plan.snag import About
from board.schedule.conflicts.explain import clashes_of
from board.schedule.formulate import problem_of
from board.schedule.problem import Problem
from board.schedule.solution import Solution
from board.schedule.solver.feasible import can
from board.schedule.solver.solve import solve
from board.schedule.to_run_sheet import to_run_sheet
from board.sheet import said, words
from board.sheet.run_sheet import RunSheet, restore, store
from board.sheet.told import (
    Because,
    Causes,
    Chain,
    FightForHands,
    FightForThing,
    Fights,
    GivenUp,
    Held,
    Late,
    Longest,
    NoPlace,
    NotReady,
    OvenOff,
    OverHours,
    PastClock,
    PastLimit,
    Stop,
    TakenUp,
    Taker,
    WaitsPast,
    What,
    Why,
    which,
)
from board.view.board import headline
from tests.conftest import PLANS, at, slot

DATA = Path(__file__).parents[1] / "log" / "data"
HARVEST = DATA / "harvest-table.yaml"
PATHS = (HARVEST, PLANS / "lantern-supper.yaml", PLANS / "two-ring-flat.yaml")


@cache
def solved(path: Path) -> tuple[Problem, Solution]:
    """Once for each plan, so that two sheets of it differ by nothing but their words."""
    file = plan_of(path)
    problem = problem_of(file.plan, file.filled)
    return problem, solve(problem, 5)


def plan_of(path: Path) -> PlanFile:
    """Without the washing up that plans of then had none of."""
    text = path.read_text(encoding="utf-8")
    found = read_plan(text.replace("\nkitchen:\n", "\nkitchen:\n  wash up: no\n"), path.name)
    assert isinstance(found, PlanFile)
    return found


def sheet_of(path: Path) -> RunSheet:
    file, (problem, solution) = plan_of(path), solved(path)
    made = to_run_sheet(file, problem, solution, clashes_of(problem, solution, can))
    return with_sheet(of_plan(file), made).the_sheet


CLOCK = re.compile(r"\d\d:\d\d")  # timetables equal in all aims differ in times


@pytest.fixture(scope="module")
def harvest() -> RunSheet:
    """Its oven cannot keep the pot warm and roast the squash; its chicken is not done; one guest eats no nuts."""
    return sheet_of(HARVEST)


def at_a_mark(call: str | None) -> str | None:
    """Old sheets told a setting in °F to the degree, and dials have marks."""
    return call and re.sub(r"(\d+) °C \(\d+ °F\)", lambda told: shared.dial(int(told[1])), call)


def test_it_says_what_sheets_of_the_same_plan_once_held_in_words(harvest: RunSheet) -> None:
    """The old words stand in a log that an earlier version wrote."""
    first, _, _ = gzip.decompress((DATA / "harvest-evening.jsonl.gz").read_bytes()).partition(b"\n")
    old: dict[str, Any] = json.loads(first)["sheet"]
    silent = {
        id_ for each in harvest.assumed if isinstance(each, Assumed) and "keeps" in each.kind for id_ in each.tasks
    }

    assert [each.finding for each in harvest.stops] == [line.partition(":")[0] for line in old["stops"]]
    since = ("sit", "sit-hot")  # assumed of no plan then
    today = {said.assumed(each) for each in harvest.assumed if each.kind not in since}
    assert {line for line in today ^ set(old["assumed"]) if not line.startswith("keeps ")} == set()
    assert [said.caution(each) for each in harvest.cautions] == old["cautions"]
    assert [said.plate(each) for each in harvest.courses[0].plates] == old["courses"][0]["plates"]
    assert [
        {
            "what": said.what(harvest, each.what),
            "why": CLOCK.sub("00:00", said.why(harvest, each.why)),
            "minutes": each.minutes,
        }
        for each in harvest.given_up
    ] == [{**each, "why": CLOCK.sub("00:00", each["why"])} for each in old["given_up"]]
    assert [
        (s.name, said.call_at_start(s), said.call_at_end(s), s.keeping and shared.kept_where(s.keeping.where))
        for s in harvest.slots
        if s.id not in silent and s.kind != "off"  # which sheets of then had none of
    ] == [
        (each["name"], at_a_mark(each["call"]), each["call_at_end"], each["keeping"] and each["keeping"]["where"])
        for each in old["slots"]
        if each["id"] not in silent
    ]  # fmt: skip


WHAT: dict[str, tuple[What, str]] = {
    "over hours": (OverHours("stew", at("17:30"), at("18:30")), "stew (Sat 17:30–18:30) lies outside the hours given"),
    "late": (Late("Stew", 5), "Stew goes out 5 min late"),
    "not ready": (NotReady("chop", "stew"), "chop is not done when stew"),
    "waits past": (
        WaitsPast("chop", "stew", 75, 60),
        "stew begins 1 h 15 after chop, at most 1 h was wanted",
    ),
    "no place": (
        NoPlace("stew", "serve", 20, "hot"),
        "stew stands 20 min without the place it should be kept in (hot)",
    ),
    "past its clock": (
        PastClock("Stew", "Main", 135, 120),
        "Stew stands out 2 h 15 until it is eaten, and may for 2 h (food 10)",
    ),
    "past its limit": (PastLimit("stew", "serve", 1440, 60, "room"), "stew stands 1 day, and keeps 1 h (room)"),
}
WHY: dict[str, tuple[Why | str, str]] = {
    "a code": (Because("nobody-home"), "something hot would run with nobody at home"),
    "an old sentence": ("the oven was in use", "the oven was in use"),
    "a chain": (
        Chain((Held("stew", at("18:30"), "order"), Held("chop", at("17:20"), "hands")), hours_begin=True),
        "waits for stew until 18:30 (it comes first); waits for chop until 17:20 (the hands are busy); "
        "the hours given begin only then",
    ),
    "taken up": (TakenUp("serve", at("18:50")), "it is taken up by serve at Sat 18:50"),
    "longest while it is made": (Longest("chop", "during", 20), "the longest is 20 min chop"),
    "longest as it is kept": (Longest("stew", "kept", 75), "the longest is 75 min kept after stew"),
    "longest as it is carried": (Longest("serve", "during", 5), "the longest is 5 min plated and carried"),
    "longest at the table": (Longest("serve", "table", 100), "the longest is 100 min at the table"),
    "litres": (
        Fights((FightForThing("fridge", 40.0, (
            Taker("chop", True, at("17:20"), at("17:30"), 30.0), Taker("stew", False, amount=12.5),
        )),)),
        "40 litres of fridge room are not enough for keeping what comes of 'chop' (Sat 17:20–17:30, 30 l) "
        "and stew (12.5 l)",
    ),
    "two things": (
        Fights((
            FightForThing("rings", 1, (Taker("stew", False, amount=1), Taker("sauce", False, amount=2))),
            FightForHands(1, (Taker("stew", False), Taker("sauce", False))),
        )),
        "one ring is not enough for stew and sauce (2); one pair of hands is not enough for stew and sauce",
    ),
    "hours": (
        Fights((FightForHands(2, (Taker("stew", False),)),)), "no free hours of any hands suit stew",
    ),
    "hours of some": (
        Fights((FightForHands(2, (Taker("stew", False),), ("Nora", "Daan")),)),
        "no free hours of Nora's or Daan's suit stew",
    ),
    "hands of some": (
        Fights((FightForHands(1, (Taker("stew", False), Taker("sauce", False)), ("Nora",)),)),
        "Nora's hands are not enough for stew and sauce",
    ),
    "two causes": (
        Causes((
            Fights((FightForThing("rings", 1, (Taker("stew", False), Taker("sauce", False))),)),
            Fights((FightForHands(1, (Taker("stew", False), Taker("sauce", False))),)),
        )),
        "one ring is not enough for stew and sauce; and even without that: one pair of hands is not enough for stew "
        "and sauce",
    ),
    "time, and a cause": (
        Causes((
            Chain((Held("stew", at("18:50"), "order"),), hours_begin=True),
            Fights((FightForHands(1, (Taker("stew", False), Taker("sauce", False))),)),
        )),
        "waits for stew until 18:50 (it comes first); the hours given begin only then; and on top of that: one pair of "
        "hands is not enough for stew and sauce",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("told", "sentence"), WHAT.values(), ids=WHAT)
def test_what_is_given_up_in_words(little: RunSheet, told: What, sentence: str) -> None:
    assert said.what(little, told) == sentence


@pytest.mark.parametrize(("told", "sentence"), WHY.values(), ids=WHY)
def test_why_it_is_in_words(little: RunSheet, told: Why | str, sentence: str) -> None:
    assert said.why(little, told) == sentence


ASSUMED: dict[str, Assumed | str] = {
    "takes 25 min: lay the table, feed the cat": Assumed("takes", {"minutes": 25}, ("lay the table", "feed the cat")),
    "takes 1 shelf: cut": Assumed("shelf", {}, ("cut",)),
    "takes 1 ring: cut": Assumed("ring", {}, ("cut",)),
    "is done before the guests arrive, if it can be: cut": Assumed("before-guests", {}, ("cut",)),
    "is done any time before the guests arrive (say when, for example `before: guests arrive, at most 1 h`): polish it":
        Assumed("any-time", {}, ("polish it",)),
    "is done in the last 3 h before the guests arrive, which is a guess (say when, for example `before: guests arrive, "
    "at most 1 h`): polish it":
        Assumed("last-hours", {"most": 180, "event": "guests"}, ("polish it",)),
    "is done any time before the guests arrive (when it is, say with `day:`, `after:` or `before:`): iron on Friday":
        Assumed("any-time-by-words", {}, ("iron on Friday",)),
    "is cold at most 1 h 30 before the guests arrive, and then stays in the fridge, as usual: wine":
        Assumed("chilled", {"most": 90, "event": "guests"}, ("wine",)),
    "is done in the last 45 min before the guests come to the table, as usual; and before 'cut' and 'lay': jugs":
        Assumed("soon-before", {"most": 45, "event": "table", "ahead": ("cut", "lay")}, ("jugs",)),
    "is done in the last 45 min before 'roast it', as usual; the food rules go first: lamb":
        Assumed("soon-before", {"most": 45, "event": "work", "name": "roast it", "food": True}, ("lamb",)),
    "is done 30 min to 1 h before Lamb is served, as usual: open the red":
        Assumed("before", {"least": 30, "most": 60, "event": "served", "name": "Lamb"}, ("open the red",)),
    "is done within 1 h after Pudding is cleared, as usual: dishes":
        Assumed("soon-after", {"most": 60, "event": "cleared", "name": "Pudding"}, ("dishes",)),
    "is done 5 min to 30 min after Pudding is served, as usual: coffee":
        Assumed("after", {"least": 5, "most": 30, "event": "served", "name": "Pudding"}, ("coffee",)),
    "host is away Fri 18:30 to 19:15, as no time is given: supper": Assumed(
        "away", {"who": "host", "since": "2026-11-27T18:30:00+00:00", "until": "2026-11-27T19:15:00+00:00"},
        ("supper",),
    ),
    "is done front of house: cut": Assumed("place", {"place": "front-of-house"}, ("cut",)),
    "is done at the worktop, with hands on it all the time: cut":
        Assumed("place-and-hands", {"place": "worktop"}, ("cut",)),
    "needs no fridge room worth counting: wine": Assumed("fridge-room", {}, ("wine",)),
    "thaws in 1 h 30: duck": Assumed("thaws", {"minutes": 90}, ("duck",)),
    "needs hands all the time: cut": Assumed("hands", {}, ("cut",)),
    "needs hands all the time, for 1 h 30 (say `attended:`): stew": Assumed(
        "hands-throughout", {"minutes": 90}, ("stew",)
    ),
    "needs hands for 20 min of its 1 h 30 (say `attended:`): dough": Assumed(
        "hands-in-part", {"work": 20, "minutes": 90}, ("dough",)
    ),
    "needs hands 5 min at the start: wine": Assumed("hands-at-start", {"start": 5}, ("wine",)),
    "needs hands 2 min at the start and 3 min at the end: bake":
        Assumed("hands-at-both-ends", {"start": 2, "end": 3}, ("bake",)),
    "needs hands 2 min at the start, and 3 min every 30 min for fresh water: duck":
        Assumed("hands-for-fresh-water", {"start": 2, "look": 3, "every": 30}, ("duck",)),
    "keeps 2 h in the room, to be careful (say `keeps:`): cut": Assumed("keeps", {"minutes": 120}, ("cut",)),
    "keeps 12 h in the fridge, as your times let it stand (say `keeps:`): mix":
        Assumed("keeps-by-times", {"minutes": 720, "kept": "fridge"}, ("mix",)),
    "keeps 3 h in the fridge by your times; usual is 20 min off the heat, for steaks or chops: fry":
        Assumed("keeps-past", {"minutes": 180, "kept": "fridge", "stands": 170, "usual": 20, "usually": "hot",
                               "of": "steaks or chops"}, ("fry",)),
    "keeps 1 day in the fridge, as is usual for cut vegetables: cut":
        Assumed("keeps-as", {"minutes": 1440, "kept": "fridge", "of": "cut vegetables"}, ("cut",)),
    "keeps 4 h in the fridge it came from, to be careful (say `keeps:`): plate":
        Assumed("keeps-cold", {"minutes": 240}, ("plate",)),
    "served within 15 min of being ready, if it can be: bake": Assumed("best-within", {"minutes": 15}, ("bake",)),
    "is done at 62.8 °C in the middle (home rules): bake":
        Assumed("core", {"celsius": 62.8, "rules": "home rules"}, ("bake",)),
    "where, takes guessed, and not confirmed: bake": Assumed("guessed", {"keys": ("where", "takes")}, ("bake",)),
    "5 min to bring the guests to the table": Assumed("seat", {"minutes": 5}),
    "5 min to plate and carry a course: Broth, Sweet": Assumed("serve", {"minutes": 5}, ("Broth", "Sweet")),
    "15 min to plate and carry a course (24 guests, one pair of hands; say `serve:`): Broth": Assumed(
        "serve", {"minutes": 15, "guests": 24}, ("Broth",)
    ),
    "8 min to bring the guests to the table (24 guests)": Assumed("seat", {"minutes": 8, "guests": 24}),
    "5 min to clear a course: Broth": Assumed("clear", {"minutes": 5}, ("Broth",)),
    "eaten in 25 min: Broth": Assumed("eaten", {"minutes": 25}, ("Broth",)),
    "may go out up to 10 min late: Broth": Assumed("may-slip", {"minutes": 10}, ("Broth",)),
    "nobody who eats gets up for 8 min once it is served: Fruit": Assumed("sit", {"minutes": 8}, ("Fruit",)),
    "nobody who eats gets up for 12 min once it is served, as something of it is hot: Broth": Assumed(
        "sit-hot", {"minutes": 12}, ("Broth",)
    ),
    "is laid with soup bowl, soup spoon: Broth": Assumed("laid", {"pieces": ("soup bowl", "soup spoon")}, ("Broth",)),
    "is laid with napkin: the whole meal": Assumed("laid-throughout", {"pieces": ("napkin",)}),
    "0.5 min to wash a piece of the table, at least 3 min": Assumed("wash-a-piece", {"each": 0.5, "least": 3}),
    "14 min to clear down the kitchen in the last 1 h before the guests arrive (a job of that name goes before it; "
    "`wash up: no` under kitchen leaves it out)": Assumed("clear-down", {"minutes": 14, "most": 60}),
    "3 min to wash a tool before another dish goes into it (`wash up: no` under kitchen leaves it out): pan":
        Assumed("wash-a-tool", {"minutes": 3}, ("pan",)),
    "an ordinary kitchen: one oven with two shelves, four rings": Assumed("kitchen"),
    "the kitchen has one oven with two shelves": Assumed("one-oven"),
    "the kitchen has 4 rings": Assumed("rings", {"rings": 4}),
    "has 2 shelves: big": Assumed("shelves", {"shelves": 2}, ("big",)),
    "goes from 50 to 250 °C: big": Assumed("oven-range", {"low": 50.0, "high": 250.0}, ("big",)),
    "heats from cold to 175 °C in 15 min: big": Assumed("oven-heats", {"to": 175.0, "minutes": 15}, ("big",)),
    "cools from 200 to 120 °C in 25 min: big":
        Assumed("oven-cools", {"begin": 200.0, "to": 120.0, "minutes": 25}, ("big",)),
    "'GF' is read as no gluten: Kit": Assumed("read-as", {"words": "GF", "meant": "no gluten"}, ("Kit",)),
    "'from the choir' is read as part of the name: Kit":
        Assumed("part-of-name", {"words": "from the choir", "meant": ""}, ("Kit",)),
    "'except almonds' is not weighed: all of nuts counts: Kit":
        Assumed("not-weighed", {"words": "except almonds", "meant": "nuts"}, ("Kit",)),
    "an allergy to red meat is read as no alpha-gal: milk and gelatine are asked about too: Kit":
        Assumed("red-meat", {"words": "red meat", "meant": "alpha-gal"}, ("Kit",)),
    "keeps 3 h in the room: an older log": "keeps 3 h in the room: an older log",
}  # fmt: skip


@pytest.mark.parametrize(("sentence", "told"), ASSUMED.items())
def test_what_is_assumed_in_words(sentence: str, told: Assumed | str) -> None:
    assert said.assumed(told) == sentence


def test_what_an_assumption_decides_stands_on_the_sheet(harvest: RunSheet) -> None:
    decided = [id_ for told in harvest.assumed if isinstance(told, Assumed) for id_ in told.tasks]

    assert len(decided) > 5
    assert set(decided) <= set(harvest.by_id())


def test_everything_that_can_be_assumed_is_among_these() -> None:
    assert {told.kind for told in ASSUMED.values() if isinstance(told, Assumed)} == set(get_args(Kind))


@pytest.mark.parametrize("law", get_args(get_type_hints(Law)["law"]))
def test_what_cooling_takes_for_granted_has_words(law: Any) -> None:
    assert said.cooling(Law(law)) in words.COOLING_TAKEN.values()
    assert said.cooling(law) == law  # as it would stand in an older sheet


@pytest.mark.parametrize("reason", get_args(get_type_hints(Because)["reason"]))
def test_every_plain_reason_has_words(little: RunSheet, reason: Any) -> None:
    assert said.why(little, Because(reason)) in words.GIVEN_UP_SINCE.values()


def test_everything_a_sheet_tells_comes_back_from_its_stored_form(little: RunSheet) -> None:
    given = tuple(GivenUp(what, why, 5) for what, _ in WHAT.values() for why, _ in WHY.values())
    off = slot("rest", "18:00", "18:30", lane="oven", call=OvenOff("old oven", ajar=True))
    sheet = replaced(
        little, given_up=given, slots=(*little.slots, off), stops=(Stop("food 1", "raw", About(("cut",))), "an old one")
    )
    sheet = replaced(sheet, assumed=tuple(ASSUMED.values()))

    assert restore(store(sheet)) == sheet
    assert headline(off, Call("rest", "start", 0, off.start)) == "Old oven off, door ajar, all stays inside"


def test_a_stop_tells_what_it_is_about_and_is_known_by_that_whatever_its_words(harvest: RunSheet) -> None:
    nuts, chicken = (stop for stop in harvest.stops if isinstance(stop, Stop))

    assert nuts.about == About(course="Main", dish="Roast squash", guests=("Fintan",), foods=("walnuts",))
    assert chicken.about == About(("thighs/braise-the-thighs",))
    assert which(msgspec.structs.replace(chicken, message="too cold inside")) == which(chicken) != which(nuts)
    assert which("an old one") == "an old one"


def test_a_stop_of_a_sheet_that_did_not_say_what_it_is_about_is_read() -> None:
    older = msgspec.json.decode(b'{"finding":"food 1","message":"raw"}', type=Stop)

    assert older == Stop("food 1", "raw", About())


def replaced(sheet: RunSheet, **facts: Any) -> RunSheet:
    return msgspec.structs.replace(sheet, **facts)


def test_a_better_word_is_said_of_every_sheet_that_was_stored_before(
    harvest: RunSheet, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened = from_line(to_line(EveningOpened(n=1, at=harvest.arrive, rehearsal=True, sheet=harvest)))
    assert isinstance(opened, EveningOpened)
    for sheet in (restore(store(harvest)), opened.sheet):
        heat = next(each for each in sheet.slots if each.kind == "heat")
        spoken: list[Callable[[], str]] = [
            lambda sheet=sheet: said.given_up(sheet, sheet.given_up[0]),  # type: ignore[misc]
            lambda sheet=sheet: said.caution(sheet.cautions[0]),  # type: ignore[misc]
            lambda sheet=sheet: said.assumed(sheet.assumed[0]),  # type: ignore[misc]
            lambda sheet=sheet: said.plate(sheet.courses[0].plates[0]),  # type: ignore[misc]
            lambda heat=heat: heat.name,  # type: ignore[misc]
            lambda heat=heat: headline(heat, Call(heat.id, "start", 0, heat.start)),  # type: ignore[misc]
            lambda heat=heat: headline(heat, Call(heat.id, "end", 0, heat.end)),  # type: ignore[misc]
        ]
        before = [say() for say in spoken]
        with monkeypatch.context() as better:
            marked(better)
            after = [say() for say in spoken]

        assert not any(MARK in text for text in before)
        assert all(MARK in text for text in after), after
        assert sheet == harvest


MARK = "§better§"
BOARD = Path(said.__file__).parents[1]
ALL_WORDS = [
    import_module(".".join(("board", *path.relative_to(BOARD).with_suffix("").parts)))
    for path in sorted(BOARD.rglob("words*"))
    if path.name in ("words", "words.py")
]


def marked(monkeypatch: pytest.MonkeyPatch, *, but: ModuleType | None = None) -> None:
    """Every word of the program is another; those of one file stay."""
    stay = vars(but) if but is not None else {}
    for each in ALL_WORDS:
        for name, value in list(vars(each).items()):
            if name.startswith("_") or name in stay or isinstance(value, ModuleType):
                continue
            if isinstance(value, str):
                monkeypatch.setattr(each, name, MARK)
            elif isinstance(value, dict):
                monkeypatch.setattr(each, name, dict.fromkeys(value, MARK))
            elif callable(value) and ".words" in getattr(value, "__module__", ""):
                monkeypatch.setattr(each, name, lambda *_, **__: MARK)


@pytest.mark.parametrize(
    "path",
    [HARVEST, *(PLANS / f"{name}.yaml" for name in ("lantern-supper", "two-ring-flat"))],
    ids=lambda path: path.stem,
)
def test_no_word_of_the_program_is_in_what_is_stored(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """But for times and temperatures in what a check says of a stop (`shared.times`), which the cache's key holds."""
    plain = sheet_of(path)
    marked(monkeypatch, but=times)
    with_other_words = sheet_of(path)

    assert MARK.encode() not in store(with_other_words)
    assert with_other_words == plain


def test_only_stops_hold_times_and_temperatures_in_words(harvest: RunSheet, monkeypatch: pytest.MonkeyPatch) -> None:
    marked(monkeypatch)
    found = sheet_of(HARVEST)

    assert any(isinstance(stop, Stop) and MARK in stop.message for stop in found.stops)
    assert MARK.encode() not in store(replaced(found, stops=()))
    assert found.given_up == harvest.given_up
