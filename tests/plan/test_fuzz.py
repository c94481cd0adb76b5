"""Whatever stands in a file, reading it ends in a plan or in findings with a place, and both print safely."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from board.plan.load import PlanFile, read_plan
from board.plan.snag import in_order
from tests.conftest import PLANS
from tests.examples import first, times
from tests.plan.test_bad_plans import JARGON, SOUND
from tests.plan.test_snag import is_safe

BUNDLED = (PLANS / "lantern-supper.yaml").read_text(encoding="utf-8")
RICHER = """
air: {indoors: 19 C}
seats: [[2 guests, guest], [5 guests]]
table: {chairs: 9, soup bowls: 8, wash between: yes, laid with: "napkin, 2 glasses"}
jobs:
  - lay the table
  - {job: chill the wine, where: "fridge, 5 litres", takes: 2 h, day: on the day, not before: sat 9:00}
  - {job: open the red, takes: 4 min, before: "serve Main, at least 30 min, at most 2 h", who: [host]}
  - {job: light the lanterns, supplies: 20 candles (household)}
units: metric
shopping: {fri: "16:00 - 17:30", sat: "9:00 - 9:45"}
shops: {butcher: {fri: "8:00 - 18:00"}}
pantry: [2 kg flour, salt, larder.yaml]
packs: {leeks: 1 kg}
prices: {leeks: 2.40 a pack}
drinks: {wine: usual, water: 0.5 l a guest, children: 1}
"""
SMALL = SOUND.lstrip().replace("at: 20:15", "at: 20:15\n    drink: cider, 6 bottles, chilled 2 h, opened 9 min before")
SMALL += RICHER.lstrip()

NASTY = [
    "[" * 200, "{" * 200, "- " * 3000, "? " * 3000, "[{a: " * 100, "9" * 5000, "-" + "9" * 400, "x" * 30_000,
    "1e999", ".inf", ".nan", "-0", "0x1F", "0o17", "1_000", "12:30:45", "9999-12-31", "0001-01-01", "2026-02-29T25:61Z",
    "\x00", "\x1b[2J", "\x07", "\x85", "\u2028", "\u202e", "\ufeff", "\ufffe", "\ud800", "\U0010ffff", ":" * 99,
    '"\\ud800"', '"\\0"', '"\\x1b[2J"', "&a", "*a", "&a [*a]", "<<: *a", "!!python/object:os.system x", "!x",
    "!!int x", "!!null", "!!set {a}", "%YAML 1.1", "%TAG ! x", "---", "...", "|", ">-", "?", ":", "-", "#", "'", '"',
    "\t", "\r", "@", "`", "}", "]", ",", "true", "null", "~", "''", "{}", "[]", "[null]", "{a: 1}", "{1: 2}",
    "{[a]: b}", "[[a]]", "- a", "0 min", "2 to 1 min", "999999999 days", "٣ min", "1,000 h", "½", "²", "P1Y", "PT1H",
    "-5 C", "9999 C", "200 to 100 C", "oven", "oven at 180 C", "nowhere", "hot", "fridge, 0 litres", "9 rings",
    "nothing", "cut the leeks", "serve Main", "0:00", "25:00", "13 pm", "sat", "366 days before", "2200-12-31",
    "1970-01-01", "10 min after Main", "usual", "2 a pack", "cider, 6 bottles, chilled", "linear", "larder.yaml",
    "Europe", "UTC",
]  # fmt: skip


@st.composite
def mutated(draw: st.DrawFn, text: str) -> str:
    """The text with a few lines lost, doubled, swapped, moved, or with something strange put into them."""
    lines = text.split("\n")
    for _ in range(draw(st.integers(1, 3))):
        at, other = (draw(st.integers(0, len(lines) - 1)) for _ in range(2))
        match draw(st.sampled_from(["lose", "double", "swap", "indent", "value", "key", "insert", "cut", "join"])):
            case "lose" if len(lines) > 1:
                del lines[at]
            case "double":
                lines.insert(other, lines[at])
            case "swap":
                lines[at], lines[other] = lines[other], lines[at]
            case "indent":
                lines[at] = " " * draw(st.integers(0, 12)) + lines[at].lstrip()
            case "value":
                lines[at] = f"{lines[at].split(': ')[0]}: {draw(st.sampled_from(NASTY))}"
            case "key":
                lines[at] = f"{draw(st.sampled_from(NASTY))}: {lines[at].strip()}"
            case "insert":
                spot = draw(st.integers(0, len(lines[at])))
                strange = draw(st.sampled_from(NASTY) | st.text(max_size=5) | st.characters())
                lines[at] = lines[at][:spot] + strange + lines[at][spot:]
            case "cut":
                lines[at] = lines[at][: draw(st.integers(0, len(lines[at])))]
            case "join":
                lines[at] += lines[other].strip()
    return "\n".join(lines)


def ends_well(text: str) -> bool:
    """Reads it, and looks at whatever came of that."""
    found = read_plan(text, "supper.yaml")
    if isinstance(found, PlanFile):
        assert all(task.ways for task in found.filled.tasks.values())
        assert all(course.wanted >= found.filled.arrive for course in found.filled.courses)
        return True
    assert found
    assert found == in_order(found)
    for snag in found:
        printed = snag.render()
        assert snag.place is not None
        assert snag.place.line >= 1
        assert snag.place.column >= 1
        assert is_safe(printed)
        assert printed.count("\n") <= 3
        assert not JARGON.search(snag.message.partition("'")[0])
    return True


often = settings(deadline=None, suppress_health_check=list(HealthCheck))


@settings(often, max_examples=times(260))
@given(mutated(SMALL))
def test_a_plan_with_a_few_lines_spoilt_is_read_or_refused_with_places(text: str) -> None:
    assert ends_well(text)


@pytest.mark.slow
@settings(often, max_examples=times(50))
@given(mutated(BUNDLED))
def test_the_bundled_plan_with_a_few_lines_spoilt_is_read_or_refused_with_places(text: str) -> None:
    assert ends_well(text)


KEYS = st.sampled_from([
    "event", "date", "zone", "arrive", "guests", "kitchen", "hands", "courses", "jobs", "course", "at", "dishes",
    "dish", "steps", "step", "takes", "where", "after", "keeps", "or", "ovens", "tools", "hours",
])  # fmt: skip
YAML_LIKE = st.recursive(
    st.sampled_from(NASTY[8:]) | st.text(max_size=8),
    lambda inner: (
        st.lists(inner, max_size=3).map(lambda found: f"[{', '.join(found)}]")
        | st.dictionaries(KEYS, inner, max_size=4).map(
            lambda d: "{" + ", ".join(f"{k}: {v}" for k, v in d.items()) + "}"
        )
        | st.dictionaries(KEYS, inner, max_size=4).map(lambda d: "\n".join(f"{k}: {v}" for k, v in d.items()))
    ),
    max_leaves=12,
)


@settings(often, max_examples=times(300))
@given(st.text() | st.text("-:[]{}#&*!|>'\"%@, \n\t\rab1") | YAML_LIKE)
def test_whatever_text_is_given_is_read_or_refused_with_places(text: str) -> None:
    assert ends_well(text)


@pytest.mark.parametrize("value", first(30, NASTY), ids=[str(n) for n in range(len(NASTY))])
def test_a_strange_value_anywhere_in_a_plan_is_read_or_refused_with_places(value: str) -> None:
    lines = SMALL.split("\n")
    for number in range(0, len(lines), 3):
        head, colon, _ = lines[number].partition(": ")
        assert ends_well("\n".join([*lines[:number], f"{head}{colon}{value}", *lines[number + 1 :]]))
