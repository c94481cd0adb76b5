"""Changes to a plan's text: what was asked for changes, and no other byte does.

The YAML these texts hold is YAML 1.2.2 (yaml.org/spec/1.2.2); what a new text says is told by the reader of plans,
and in one test by another library call altogether, ruamel.yaml's own loader.
"""

import copy
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from ruamel.yaml import YAML

from board.plan.edit import splice
from board.plan.edit.save import Append, CannotEdit, Change, Put, Remove, Wrap, edit, same
from board.plan.edit.source import Source, read_source
from board.plan.places import Loc, read_yaml
from tests.conftest import PLANS
from tests.examples import the_largest_slow, times

ALL_PLANS = sorted(PLANS.glob("*.yaml"))

# Name: text, change, text wanted in full.
EXAMPLES: dict[str, tuple[str, Change, str]] = {
    # --- a value for a value
    "a word": ("a: b\nc: d\n", Put(("a",), "x"), "a: x\nc: d\n"),
    "a note behind it stays where it is": ("a: b    # why\n", Put(("a",), "longer"), "a: longer    # why\n"),
    "quotes of either kind are kept": (
        "a: 'b'  # c\nd: \"e\"\n", Put(("d",), 'say "x"'), "a: 'b'  # c\nd: \"say \\\"x\\\"\"\n",
    ),
    "a quote inside single quotes is doubled": ("a: 'b'\n", Put(("a",), "Pia's"), "a: 'Pia''s'\n"),
    "a value of several plain lines": ("a: b\n  c\n  d  # e\nf: g\n", Put(("a",), "x"), "a: x  # e\nf: g\n"),
    "a folded value keeps the note at its head": (
        "a: >-  # long\n  b\n  c\n\n# next\nf: g\n", Put(("a",), "x"), "a: x  # long\n\n# next\nf: g\n",
    ),
    "a literal value that keeps its last lines": ("a: |+\n  b\n\nf: g\n", Put(("a",), "x"), "a: x\n\nf: g\n"),
    "nothing written": ("a:  # none yet\nb: c\n", Put(("a",), "x"), "a: x  # none yet\nb: c\n"),
    "nothing written at the end of the file": ("b: c\na:", Put(("a",), "x"), "b: c\na: x"),
    "nothing written in a list": ("a:\n  -\n  - b\n", Put(("a", 0), "x"), "a:\n  - x\n  - b\n"),
    "nothing written in braces": ("a: {b, c: 1}\n", Put(("a", "b"), 2), "a: {b: 2, c: 1}\n"),
    "an anchor stays": ("a: &first b\nc: d\n", Put(("a",), "x"), "a: &first x\nc: d\n"),
    "a number": ("a: {rings: 4}\n", Put(("a", "rings"), 6), "a: {rings: 6}\n"),
    "a time is a word and wants no quotes": ("at: 19:15\n", Put(("at",), "19:30"), "at: 19:30\n"),
    "true is quoted where the word is meant": ("a: b\n", Put(("a",), "true"), "a: 'true'\n"),
    "truth is not": ("a: b\n", Put(("a",), True), "a: true\n"),
    "digits are quoted where words are meant": ("a: b\n", Put(("a",), "12"), "a: '12'\n"),
    "yes is a word in YAML 1.2": ("a: b\n", Put(("a",), "yes"), "a: yes\n"),
    "and none in YAML 1.1": ("%YAML 1.1\n---\na: b\n", Put(("a",), "yes"), "%YAML 1.1\n---\na: 'yes'\n"),
    "a colon and a space": ("a: b\n", Put(("a",), "soup: hot"), "a: 'soup: hot'\n"),
    "a note sign": ("a: b\n", Put(("a",), "soup # hot"), "a: 'soup # hot'\n"),
    "an apostrophe in what must be quoted": ("a: b\n", Put(("a",), "Pia's: hot"), 'a: "Pia\'s: hot"\n'),
    "a first sign that means something": ("a: b\n", Put(("a",), "@home"), "a: '@home'\n"),
    "spaces at the edge": ("a: b\n", Put(("a",), " x "), "a: ' x '\n"),
    "no letter at all": ("a: b\n", Put(("a",), ""), "a: ''\n"),
    "a comma needs quotes in brackets only": (
        "a: [b, c]\nd: e\n", Put(("a", 1), "x, y"), "a: [b, 'x, y']\nd: e\n",
    ),
    "several lines in one": ("a: b\n", Put(("a",), "x\ny"), 'a: "x\\ny"\n'),
    "letters of any script": ("a: crème # é\nb: 1\n", Put(("a",), "餃子 𝄞 ½"), "a: 餃子 𝄞 ½ # é\nb: 1\n"),
    "a word for a list in brackets": ("a: [b,\n  c]  # d\n", Put(("a",), "x"), "a: x  # d\n"),
    "a word for a block": (
        "a:  # many\n  - b\n  - c  # last\n# next\nd: e\n", Put(("a",), "x"), "a: x  # many\n# next\nd: e\n",
    ),
    "a word for the last block of a file": ("d: e\na:\n  b: c", Put(("a",), "x"), "d: e\na: x"),
    "a word for a mapping in a list": ("a:\n  - b: 1\n    c: 2\n  - d\n", Put(("a", 0), "x"), "a:\n  - x\n  - d\n"),
    "a mapping for a number": ("a: 1  # one\n", Put(("a",), {"b": {}, "c": 2}), "a: {b: {}, c: 2}  # one\n"),
    "a block for a block": (
        "a:\n  - b: 1\n    c: 2\n  - d\n\ne: f\n", Put(("a",), [{"x": "y", "z": ["1 h", 2]}]),
        "a:\n  - x: y\n    z:\n      - 1 h\n      - 2\n\ne: f\n",
    ),
    "keys for a list that stands below its key": ("a:\n- b\n- c\n", Put(("a",), {"x": 1}), "a:\n x: 1\n"),
    # --- a new key
    "a key below its siblings": ("a:\n    b: 1\nc: d\n", Put(("a", "x"), 2), "a:\n    b: 1\n    x: 2\nc: d\n"),
    "before the note of what follows": (
        "a:\n  b: 1  # one\n\n# about c\nc: d\n", Put(("a", "x"), 2), "a:\n  b: 1  # one\n  x: 2\n\n# about c\nc: d\n",
    ),
    "below a note that goes on in deeper lines": (
        "a:\n  b: 1  # one\n       # and more\n  # two\nc: d\n", Put(("a", "x"), 2),
        "a:\n  b: 1  # one\n       # and more\n  x: 2\n  # two\nc: d\n",
    ),
    "in an item of a list": ("a:\n  -   b: 1\n  - c\n", Put(("a", 0, "x"), 2), "a:\n  -   b: 1\n      x: 2\n  - c\n"),
    "at the top": ("a: 1\nb:\n  c: 2\n", Put(("x",), 3), "a: 1\nb:\n  c: 2\nx: 3\n"),
    "before the end mark of a document": ("---\na: 1\n...\n", Put(("x",), 2), "---\na: 1\nx: 2\n...\n"),
    "without a line end at the end": ("a: 1\nb:\n  c: 2", Put(("b", "x"), 3), "a: 1\nb:\n  c: 2\n  x: 3"),
    "with the line ends of another system": (
        "a:\r\n  b: 1\r\nc: d\r\n", Put(("a", "x"), 2), "a:\r\n  b: 1\r\n  x: 2\r\nc: d\r\n",
    ),
    "with the line ends of an old system": ("a:\r  b: 1\rc: d\r", Put(("a", "x"), 2), "a:\r  b: 1\r  x: 2\rc: d\r"),
    "behind a byte-order mark": ("\ufeffa: 1\n", Put(("x",), 2), "\ufeffa: 1\nx: 2\n"),
    "in braces": ("a: {b: 1}  # c\n", Put(("a", "x"), "y, z"), "a: {b: 1, x: 'y, z'}  # c\n"),
    "in braces with nothing in them": ("a: { }\n", Put(("a", "x"), 2), "a: {x: 2}\n"),
    "in braces over several lines": (
        "a: {\n  b: 1,\n  c: 2  # two\n}\n", Put(("a", "x"), 3), "a: {\n  b: 1,\n  c: 2,  # two\n  x: 3\n}\n",
    ),
    "in braces over several lines, without a note": (
        "a: {\n  b: 1,\n  c: [2]\n}\n", Put(("a", "x"), 3), "a: {\n  b: 1,\n  c: [2],\n  x: 3\n}\n",
    ),
    "in braces that end in a comma": (
        "a: {\n  b: 1,  # one, no more\n}\n", Put(("a", "x"), 3), "a: {\n  b: 1,  # one, no more\n  x: 3,\n}\n",
    ),
    "where nothing was written": ("a:\n  b:  # so\nc: d\n", Put(("a", "b", "x"), 2), "a:\n  b: {x: 2}  # so\nc: d\n"),
    "a mapping like its sibling, in braces": (
        "a:\n  b: {c: 1}\n", Put(("a", "x"), {"c": "2 h"}), "a:\n  b: {c: 1}\n  x: {c: 2 h}\n",
    ),
    "a mapping like its sibling, in lines": (
        "a:\n  b:\n    c: 1\n", Put(("a", "x"), {"c": {"d": 2}}), "a:\n  b:\n    c: 1\n  x:\n    c:\n      d: 2\n",
    ),
    "a key that needs quotes": ("a:\n  b: 1\n", Put(("a", "x: y"), 2), "a:\n  b: 1\n  'x: y': 2\n"),
    "below a literal value": (
        "a:\n  b: |\n    one\n    two\n\nc: d\n", Put(("a", "x"), 2), "a:\n  b: |\n    one\n    two\n  x: 2\n\nc: d\n",
    ),
    "below a literal value that keeps its last lines": (
        "a:\n  b: |+\n    one\n\nc: d\n", Put(("a", "x"), 2), "a:\n  b: |+\n    one\n\n  x: 2\nc: d\n",
    ),
    # --- one more item
    "an item with the dash of the others": (
        "a:\n  - b\n  -   c\nd: e\n", Append(("a",), "x"), "a:\n  - b\n  -   c\n  -   x\nd: e\n",
    ),
    "an item right below its key": ("a:\n- b\nd: e\n", Append(("a",), "x"), "a:\n- b\n- x\nd: e\n"),
    "an item of keys": ("a:\n  - b: 1\n", Append(("a",), {"x": 2, "y": 3}), "a:\n  - b: 1\n  - x: 2\n    y: 3\n"),
    "an item in brackets": ("a: [b, c]\n", Append(("a",), "x"), "a: [b, c, x]\n"),
    "an item in empty brackets": ("a: []\n", Append(("a",), {"x": 1}), "a: [{x: 1}]\n"),
    "an item in brackets over several lines": (
        "a: [b,  # one\n    c]\n", Append(("a",), "x"), "a: [b,  # one\n    c, x]\n",
    ),
    # --- one less
    "a key with its lines": ("a: 1\nb:\n  c: 2  # two\nd: 3\n", Remove(("b",)), "a: 1\nd: 3\n"),
    "notes in lines of their own stay": (
        "a: 1\n# above\nb: 2  # beside\n# below\nd: 3\n", Remove(("b",)), "a: 1\n# above\n# below\nd: 3\n",
    ),
    "the last of a file that ends without a line end": ("a: 1\r\nb: 2", Remove(("b",)), "a: 1"),
    "the only key leaves braces": ("a:\n  # none\n  b: 1\nc: 2\n", Remove(("a", "b")), "a: {}\n  # none\nc: 2\n"),
    "the only item leaves brackets": ("a:\n- b\nc: 2\n", Remove(("a", 0)), "a: []\nc: 2\n"),
    "the first key after a dash": ("a:\n  - b: 1\n    c: 2\n", Remove(("a", 0, "b")), "a:\n  - c: 2\n"),
    "the first key after a dash, with a note below": (
        "a:\n  - b: 1\n    # about c\n    c: 2\n", Remove(("a", 0, "b")), "a:\n  - \n    # about c\n    c: 2\n",
    ),
    "an item between blank lines": ("a:\n  - b\n\n  - c\n\n  - d\n", Remove(("a", 1)), "a:\n  - b\n\n  - d\n"),
    "the last item of several": ("a:\n  - b\n  - c: 1\n    d: 2\ne: f\n", Remove(("a", 1)), "a:\n  - b\ne: f\n"),
    "a list in a list": ("a:\n- - b\n  - c\n# d\n- e\n", Remove(("a", 0)), "a:\n# d\n- e\n"),
    "in brackets, the first": ("a: [b, c, d]\n", Remove(("a", 0)), "a: [c, d]\n"),
    "in brackets, the last": ("a: [b, c, d]\n", Remove(("a", 2)), "a: [b, c]\n"),
    "in braces, one of several": ("a: {b: 1, c: {d: 2}, e: 3}\n", Remove(("a", "c")), "a: {b: 1, e: 3}\n"),
    "in braces, the only one": ("a: {b: 1}  # c\n", Remove(("a", "b")), "a: {}  # c\n"),
    "in brackets over several lines, with notes": (
        "a: [\n  b,  # one\n  # of two\n  c,  # three\n  d  # four\n]\n", Remove(("a", 1)),
        "a: [\n  b,  # one\n  # of two\n  d  # four\n]\n",
    ),
    "in brackets over several lines, the last": (
        "a: [\n  b,  # one\n  c  # two\n]\n", Remove(("a", 1)), "a: [\n  b  # one\n]\n",
    ),
    # --- a list around a mapping
    "braces": ("or: {keeps: 2 h}  # b\n", Wrap(("or",)), "or: [{keeps: 2 h}]  # b\n"),
    "lines": (
        "or:\n  # so\n  keeps: 2 h  # or\n\n  # so\n  where: worktop\nx: y\n", Wrap(("or",)),
        "or:\n  # so\n  - keeps: 2 h  # or\n\n    # so\n    where: worktop\nx: y\n",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "change", "wanted"), EXAMPLES.values(), ids=EXAMPLES)
def test_a_change_gives_this_text(text: str, change: Change, wanted: str) -> None:
    assert edit(text, [change]) == wanted


@pytest.mark.parametrize(("text", "change", "wanted"), EXAMPLES.values(), ids=EXAMPLES)
def test_a_change_is_seen_by_another_reader_of_yaml(text: str, change: Change, wanted: str) -> None:
    """ruamel.yaml's safe loader knows nothing of our reading; all but what is asked for reads as before."""
    before, after = (YAML(typ="safe", pure=True).load(each.removeprefix("\ufeff")) for each in (text, wanted))
    holder = _follow(before, change.loc[:-1])
    match change:
        case Put(value=value) if holder is None:
            _follow(before, change.loc[:-2])[change.loc[-2]] = {change.loc[-1]: value}
        case Put(value=value):
            holder[change.loc[-1]] = value
        case Append(value=value):
            holder[change.loc[-1]].append(value)
        case Remove():
            del holder[change.loc[-1]]
        case Wrap():
            holder[change.loc[-1]] = [holder[change.loc[-1]]]

    assert after == before


def _follow(data: Any, loc: Loc) -> Any:
    for piece in loc:
        data = data[piece]
    return data


# Layouts no cut is known for: the file is written anew around the change, with its comments and order.
REWRITTEN = {
    "keys behind question marks": ("# top\n? a\n: b\nc: d # e\n", Put(("x",), "y"), "# top\na: b\nc: d # e\nx: y\n"),
    "a pair without braces in a list": ("a: [b: 1, c] # d\n", Put(("a", 0, "x"), 2), "a: [{b: 1, x: 2}, c] # d\n"),
    "the only key of a file": ("# top\na: b\n", Remove(("a",)), "# top\n{}\n"),
    "with the line ends of another system, behind question marks": (
        "? a\r\n: b\r\nx:\r\n    - \"y\" # z\r\n\r\nq: 19:30\r\n", Put(("w",), "yes"),
        "a: b\r\nx:\r\n    - \"y\" # z\r\n\r\nq: 19:30\r\nw: yes\r\n",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "change", "wanted"), REWRITTEN.values(), ids=REWRITTEN)
def test_a_layout_no_cut_is_known_for_is_still_changed(text: str, change: Change, wanted: str) -> None:
    assert edit(text, [change]) == wanted


REFUSED = {
    "a file that is no YAML": ("a: [b\n", Put(("a",), "x"), "cannot be changed while it cannot be read"),
    "a file that repeats itself": ("a: &x b\nc: *x\n", Put(("a",), "y"), "*x repeats another part"),
    "two documents": ("a: b\n---\nc: d\n", Put(("a",), "y"), "more than one plan"),
    "a key twice": ("a: b\na: c\n", Put(("a",), "y"), "stands here twice"),
    "a path that leads nowhere": ("a: {b: c}\n", Put(("a", "x", "y"), 1), "no place for this change: a, x, y"),
    "an item that is not there": ("a: [b]\n", Put(("a", 3), 1), "no place for this change: a, 4"),
    "taking out what is not there": ("a: [b]\n", Remove(("c",)), "no place for this change: c"),
    "adding to what is no list": ("a: b\n", Append(("a",), 1), "no place for this change: a"),
    "a list around words": ("a: b\n", Wrap(("a",)), "no place for this change: a"),
    "half a character": ("a: b\n", Put(("a",), "x\ud800"), "only its host can change: a"),
    "a value no plan can hold": ("a: b\n", Put(("a",), 1.5), "only its host can change: a"),
}  # fmt: skip


@pytest.mark.parametrize(("text", "change", "says"), REFUSED.values(), ids=REFUSED)
def test_what_cannot_be_changed_is_refused_with_a_reason(text: str, change: Change, says: str) -> None:
    found = edit(text, [change])

    assert isinstance(found, CannotEdit)
    assert says in found.reason


def test_anchors_of_one_name_are_no_trouble(recwarn: pytest.WarningsRecorder) -> None:
    assert edit("? &x a\n: &x b\n", [Put(("c",), "d")]) == "&x a: &x b\nc: d\n"
    assert not recwarn


def test_changes_are_made_all_or_none() -> None:
    text = "a: 1\nb: [c]\n"

    assert edit(text, [Put(("a",), 2), Append(("b",), "d")]) == "a: 2\nb: [c, d]\n"
    assert isinstance(edit(text, [Put(("a",), 2), Remove(("z",))]), CannotEdit)
    assert edit(text, []) == text


PATHS: list[Loc] = [("a",), ("a", "b"), ("c", 1), ("d", 0), ("e",)]


@settings(deadline=None, max_examples=times(300))
@given(st.text(max_size=12) | st.text("-:[]{}#&*!|>'\"%@`, \n\tab1", max_size=8), st.sampled_from(PATHS))
def test_any_words_read_back_as_the_very_words(words: str, loc: Loc) -> None:
    text = "a:\n  b: x  # one\nc: [y, 'z']\nd:\n  - >\n    w\ne: # two\n"
    new = edit(text, [Put(loc, words)])
    if isinstance(new, CannotEdit):
        assert any("\ud800" <= sign <= "\udfff" for sign in words)
        return

    wanted = copy.deepcopy(read_yaml(text, "")[0])
    _follow(wanted, loc[:-1])[loc[-1]] = words
    assert same(read_yaml(new, "")[0], wanted)
    assert "# two" in new
    assert ("# one" in new) or loc == ("a",)


@settings(deadline=None, max_examples=times(150))
@given(st.text(max_size=10), st.sampled_from(["a:\n  b: 1\n", "a: {b: 1}\n"]))
def test_any_key_reads_back_as_the_very_key(word: str, text: str) -> None:
    new = edit(text, [Put(("a", word), "v")])

    if isinstance(new, CannotEdit):
        assert any("\ud800" <= sign <= "\udfff" for sign in word)
    else:
        assert read_yaml(new, "")[0] == {"a": {"b": 1, word: "v"} if word != "b" else {"b": "v"}}


# --- the bundled plans ---------------------------------------------------------------------------------------
def source_of(name: str, line_end: str = "\n") -> Source:
    source = read_source((PLANS / name).read_text(encoding="utf-8").replace("\n", line_end))
    assert isinstance(source, Source)
    return source


def scalars(data: Any, loc: Loc = ()) -> list[Loc]:
    if isinstance(data, dict):
        return [found for key, value in data.items() for found in scalars(value, (*loc, key))]
    if isinstance(data, list):
        return [found for number, value in enumerate(data) for found in scalars(value, (*loc, number))]
    return [loc]


def notes(text: str) -> list[str]:
    """The comments of a bundled plan, which has no # elsewhere."""
    return [line[line.index("#") :] for line in text.splitlines(keepends=True) if "#" in line]


def touched(before: str, after: str) -> list[int]:
    """Numbers of the lines of `before` that are not in `after` as they were; -1 where lines were added or lost."""
    old, new = before.splitlines(keepends=True), after.splitlines(keepends=True)
    if len(old) != len(new):
        return [-1]
    return [number for number, pair in enumerate(zip(old, new, strict=True)) if pair[0] != pair[1]]


@pytest.mark.parametrize("line_end", ["\n", "\r\n"], ids=["lf", "crlf"])
@pytest.mark.parametrize("name", [path.name for path in ALL_PLANS])
def test_every_value_of_a_plan_said_in_other_words_changes_its_own_line_only(name: str, line_end: str) -> None:
    source = source_of(name, line_end)
    text, wanted = source.text, copy.deepcopy(source.data)
    for loc in reversed(scalars(source.data)):
        spot = source.at(loc)
        assert spot is not None
        words = f"{_follow(source.data, loc)}; or so"
        new = splice.replace(source, spot, words)
        assert touched(source.text, new) == [spot.node.start_mark.line]
        # From the end to the start, so that all of them are made in one text, which is read once.
        begin, end = source.start(spot.node), source.end(spot.node)
        text = text[:begin] + new[begin : len(new) - len(source.text) + end] + text[end:]
        _follow(wanted, loc[:-1])[loc[-1]] = words
    assert same(read_yaml(text, "")[0], wanted)
    assert notes(text) == notes(source.text)


@pytest.mark.parametrize("name", [the_largest_slow(path.name) for path in ALL_PLANS])
def test_every_kind_of_place_of_a_plan_can_be_changed_and_nothing_else_moves(name: str) -> None:
    source = source_of(name)
    for loc in scalars(source.data)[::61]:
        new = edit(source.text, [Put(loc, "in other words, at last")])
        spot = source.at(loc)
        assert isinstance(new, str)
        assert spot is not None
        assert touched(source.text, new) == [spot.node.start_mark.line]
