"""Files that are no plan at all, or not even YAML: where the trouble begins, and in which words."""

import pytest

from board.plan.load import PlanFile, read_plan
from tests.conftest import HEAD
from tests.plan.test_bad_plans import JARGON, SOUND, spot

# The text of the file; then line:column, code, words of the message.
FILES = {
    "an empty file": ("", "1:1", "plan 2", "the file is empty"),
    "nothing but a comment": ("# soup\n", "1:1", "plan 2", "nothing but comments"),
    "nothing but null": ("null\n", "1:1", "plan 2", "this is not a plan"),
    "a list": ("- soup\n- cheese\n", "1:1", "plan 2", "this is not a plan"),
    "bare words": ("soup and cheese", "1:1", "plan 2", "this is not a plan"),
    "a control character": ("event: a\ndate: \x07b\n", "2:7", "plan 1", "the sign U+0007"),
    "a control character after another kind of line end": ("event: a\r\ndate: \x01b\n", "2:7", "plan 1", "U+0001"),
    "the character that ends a string": ("event: \x00", "1:8", "plan 1", "U+0000"),
    "half a character": ("event: \ud800", "1:8", "plan 1", "U+D800"),
    "a tab for indentation": ("hands:\n\thost: 5\n", "2:1", "plan 1", "indented with a tab"),
    "a tab beside spaces": ("hands:\n  host:\n  \thours: 5\n", "3:3", "plan 1", "indented with a tab"),
    "quotes left open": ('event: "soup\ndate: 2026-11-28\n', "1:8", "plan 1", "quotes that open here"),
    "a bracket left open": ("guests: [Ines, Tomas\nzone: UTC\n", "1:9", "plan 1", "bracket that opens here"),
    "a brace left open": ("event: a\nkitchen: {rings: 4\n", "2:10", "plan 1", "bracket that opens here"),
    "a bracket too many": ("event: ]\n", "1:8", "plan 1", "this is not YAML"),
    "a colon inside a value": ("event: soup: and cheese\n", "1:12", "plan 1", "a colon stands where"),
    "a line too far to the left": (
        "hands:\n    host: {}\n  ana: {}\n", "3:3", "plan 1", "the indentation does not fit",
    ),
    "a line of words alone": ("event: soup\nand cheese\ndate: 1\n", "2:1", "plan 1", "words stand alone"),
    "a sign that begins no value": ("event: @home\n", "1:8", "plan 1", "cannot begin with this sign"),
    "a backslash in double quotes": ('event: "a\\q"\n', "1:11", "plan 1", "a backslash"),
    "a second plan below the first": ("event: a\n---\nevent: b\n", "2:1", "plan 1", "more than one plan"),
    "an alias": ("event: &x a\nzone: *x\n", "2:7", "plan 3", "*x repeats another part"),
    "an alias to nothing": ("zone: *there\n", "1:7", "plan 3", "*there repeats another part"),
    "an alias to itself": ("jobs: &x [*x]\n", "1:11", "plan 3", "*x repeats another part"),
    "brackets without end": ("[" * 5000, "1:41", "plan 3", "nested too deeply"),
    "lists without end": ("- " * 5000, "1:81", "plan 3", "nested too deeply"),
    "keys without end": ("{a: " * 5000, "1:158", "plan 3", "nested too deeply"),
    "more than a plan can hold": ("#" * 200_001, "1:1", "plan 2", "too large"),
    "a later YAML than there is": ("%YAML 9.9\n---\na: b\n", "1:1", "plan 1", "this is not YAML"),
}  # fmt: skip


@pytest.mark.parametrize(("text", "at", "code", "words"), FILES.values(), ids=FILES)
def test_a_file_that_is_no_plan_says_where_and_why(text: str, at: str, code: str, words: str) -> None:
    found = read_plan(text, "supper.yaml")

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [(at, code)], found[0].render()[:500]
    assert words in found[0].message
    assert found[0].mend
    assert not JARGON.search(found[0].render())


def test_a_key_written_twice_is_told_with_the_line_of_the_first() -> None:
    found = read_plan(SOUND.lstrip() + "event: Another supper\n", "supper.yaml")

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [("32:1", "plan 4")]
    assert found[0].message == "'event' stands here twice (first on line 1)"


def test_a_key_that_is_a_list_is_refused_and_the_rest_still_read() -> None:
    found = read_plan(SOUND.lstrip() + "? [a, b]\n: c\n", "supper.yaml")

    assert isinstance(found, list)
    assert [(spot(snag), snag.code) for snag in found] == [("32:3", "plan 3")]


@pytest.mark.parametrize("text", ["event: a", HEAD], ids=["one key", "no courses"])
def test_each_part_a_plan_cannot_do_without_is_asked_for_by_name(text: str) -> None:
    found = read_plan(text.lstrip(), "supper.yaml")

    assert isinstance(found, list)
    assert {snag.code for snag in found} == {"plan 6"}
    assert "a plan needs `courses`, which is missing" in [snag.message for snag in found]


@pytest.mark.parametrize("mark", ["\ufeff", "%YAML 1.2\n---\n", "---\n", "# a note\n\n"])
def test_what_editors_put_before_a_plan_does_no_harm(mark: str) -> None:
    assert isinstance(read_plan(mark + SOUND.lstrip(), "supper.yaml"), PlanFile)


def test_anchors_alone_do_no_harm(recwarn: pytest.WarningsRecorder) -> None:
    text = SOUND.replace("zone: ", "zone: &x ").replace("date: ", "date: &x ")

    assert isinstance(read_plan(text.lstrip(), "supper.yaml"), PlanFile)
    assert not recwarn


def test_lines_may_end_as_on_any_system() -> None:
    """YAML 1.2.2, 5.4: line feed, carriage return, or both."""
    for line_end in ("\n", "\r\n", "\r"):
        assert isinstance(read_plan(SOUND.lstrip().replace("\n", line_end), "supper.yaml"), PlanFile)
