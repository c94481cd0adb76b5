"""The tree of a plan's lines."""

from pathlib import Path

import pytest

from board.plan.places import read_yaml
from board.view.plan_tree import Row, first_opened, raw_rows, row_at, row_at_line, rows_of, shown, with_seen

PLAN = """\
event: "Small \\e[31msupper"   # a comment
guests: [Ines, 3 others]
hands:
  host:
    hours: {on the day: 10:00 - 23:30}
courses:
  - course: Main
    at: 19:30
    dishes:
      - dish: Soup
        for: 4
        ingredients:
          - 1 onion (veg)
        steps:
          # low heat
          - step: simmer
            where: stovetop, 1 ring
            takes: 20 min
            uses: [1 onion,
                   salt]
jobs:
  - lay the table
  - job: open the wine
    takes: 4 min
"""
PLANS = sorted(Path("plans").glob("*.yaml"))


def tree(text: str) -> tuple[Row, ...]:
    data, places, _ = read_yaml(text, "plan")
    return rows_of(data, places)


def test_each_line_is_the_phrase_it_is_in_the_file() -> None:
    rows = {row.loc: row for row in tree(PLAN)}

    simmer = rows[("courses", 0, "dishes", 0, "steps", 0)]
    assert (simmer.kind, simmer.text, simmer.beside, simmer.line) == ("step", "simmer", "20 min, stovetop, 1 ring", 16)
    assert rows[("guests",)].phrase == "[Ines, 3 others]"
    assert rows[("jobs", 0)].kind == "job"
    assert (rows[("jobs", 1)].text, rows[("jobs", 1)].edits) == ("open the wine", ("jobs", 1, "job"))
    assert rows[("hands", "host", "hours")].text == "{on the day: 10:00 - 23:30}"
    assert rows[(*simmer.loc, "uses", 1)].text == "salt"  # brackets over two lines fold


def test_what_is_shown_is_safe_and_what_is_edited_is_not_changed() -> None:
    event = tree(PLAN)[0]

    assert "\x1b" not in event.text
    assert event.phrase == "Small \x1b[31msupper"


def test_a_tree_opens_at_its_dishes_and_unfolds_down_to_a_part() -> None:
    rows = tree(PLAN)
    opened = first_opened(rows)

    assert [row.text for row in shown(rows, opened) if row.kind in ("course", "dish", "step")] == ["Main", "Soup"]
    deep = ("courses", 0, "dishes", 0, "steps", 0, "takes")
    seen = shown(rows, with_seen(rows, opened, deep))
    assert seen[row_at(seen, deep)].text == "20 min"
    assert shown(rows, ())[row_at(shown(rows, ()), deep)].key == "courses"


def test_a_line_of_the_file_finds_its_row() -> None:
    rows = tree(PLAN)
    found = [row_at_line(rows, line) for line in (1, 15, 18)]

    assert [row.key for row in found if row] == ["event", "steps", "takes"]
    assert row_at_line((), 3) is None


def test_what_is_no_yaml_stands_line_by_line() -> None:
    rows = raw_rows("event: [\n  \tx: 1\n")

    assert [(row.line, row.phrase) for row in rows] == [(1, "event: ["), (2, "  \tx: 1")]


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
def test_every_value_of_a_bundled_plan_stands_in_one_row(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    data, places, _ = read_yaml(text, path.name)
    rows = rows_of(data, places)

    assert [row.line for row in rows] == sorted(row.line for row in rows)
    edited = [row.edits for row in rows if row.phrase is not None]
    assert len(edited) == len(set(edited))
    scalars = [
        loc for loc in places.values if not any(other[: len(loc)] == loc for other in places.values if other != loc)
    ]
    covered = set(edited)
    missing = [loc for loc in scalars if not any(loc[:n] in covered for n in range(1, len(loc) + 1))]
    assert [loc for loc in missing if "\n" not in (places.words(loc) or "")] == []


def test_lines_that_are_no_yaml_keep_how_far_they_are_set_in() -> None:
    """That is often what is wrong with them."""
    shown = [row.text for row in raw_rows("hands:\n   host:   x\n\tbad: y\n")]

    assert shown == ["hands:", "   host: x", "    bad: y"]
