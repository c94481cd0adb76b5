"""Ticks: kept whole beside the plan, shown as changed when the amount changed, and never the end of anything."""

import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from board.base.errors import Trouble
from board.files.pantry import in_the_house, read_pantry, read_ticks, ticks_path, write_ticks
from board.plan.load import PlanFile
from board.shopping.ticks import Tickable, Ticks, entries
from tests.conftest import read
from tests.shopping.conftest import Listed
from tests.shopping.test_list import plan

BUTTER = Tickable("butter", "250 g", "butter")
LESS_BUTTER = Tickable("butter", "125 g", "butter")


def test_a_tick_is_for_an_amount() -> None:
    ticks = Ticks()
    ticks.toggle(LESS_BUTTER)

    assert ticks.is_ticked(LESS_BUTTER)
    assert ticks.ticked_as(LESS_BUTTER) is None
    assert not ticks.is_ticked(BUTTER)
    assert ticks.ticked_as(BUTTER) == "125 g"
    ticks.toggle(BUTTER)
    assert ticks.kept == {"butter": "250 g"}
    ticks.toggle(BUTTER)
    assert ticks.kept == {}


def test_headings_and_foods_in_the_order_of_the_list(listed: Listed) -> None:
    found = list(entries(listed(plan("100 g butter (dairy)", "2 onions (veg)"))))

    assert [entry if isinstance(entry, str) else entry.food for entry in found] == [
        "Saturday 28 November · dairy", "butter", "Saturday 28 November · veg", "onions",
    ]  # fmt: skip


NASTY = st.text(max_size=30) | st.sampled_from(
    ["yes", "12", "a: b", "- x", "#", "'", '"', "\x00", "\u2028", "null", ""]
)


@given(st.dictionaries(NASTY.filter(bool), NASTY))
def test_what_is_written_is_read_back(tmp_path_factory: pytest.TempPathFactory, ticks: dict[str, str]) -> None:
    path = tmp_path_factory.mktemp("ticks") / "supper.ticks.yaml"
    write_ticks(path, ticks)

    assert read_ticks(path) == ticks
    assert [file.name for file in path.parent.iterdir()] == [path.name]


def test_they_lie_beside_the_plan() -> None:
    assert ticks_path(Path("plans/supper.yaml")) == Path("plans/supper.ticks.yaml")


@pytest.mark.parametrize(
    "text",
    ["", "[", "ticked: [a]", "ticked: {a: [b]}", "other: {a: b}", "ticked:", "\x00", "[" * 500, "a", "ticked: {a: {}}"],
)
def test_a_broken_file_is_none_and_no_end(tmp_path: Path, text: str) -> None:
    path = tmp_path / "ticks.yaml"
    path.write_text(text)

    assert read_ticks(path) is None


def test_bytes_a_folder_or_nothing_at_all(tmp_path: Path) -> None:
    path = tmp_path / "ticks.yaml"
    assert read_ticks(path) == {}
    path.write_bytes(b"\xff\xfe\x00")
    assert read_ticks(path) is None
    assert read_ticks(tmp_path) is None


def test_where_it_cannot_be_written_the_old_one_is_whole(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "ticks.yaml"
    write_ticks(path, {"butter": "250 g"})
    before = path.read_bytes()

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(OSError, match="No space"):
        write_ticks(path, {"butter": "250 g", "eggs": "6"})
    assert path.read_bytes() == before
    assert [file.name for file in tmp_path.iterdir()] == [path.name]


@pytest.mark.parametrize("text", ["- 2 kg flour\n- salt\n", "pantry:\n  - 2 kg flour\n  - salt\n"])
def test_a_pantry_file_bare_or_below_its_key(tmp_path: Path, text: str) -> None:
    (tmp_path / "larder.yaml").write_text(text)
    file = read(plan("1 kg flour", more="pantry: [larder.yaml, 100 g butter]\n"))
    assert isinstance(file, PlanFile)

    assert [each.food for each in in_the_house(file, tmp_path / "supper.yaml")] == ["flour", "salt", "butter"]


@pytest.mark.parametrize(("text", "at", "says"), [
    ("- 2 kg flour\n- 3 kg\n", "larder.yaml:2:3: plan 7", "does not say of what"),
    ("pantry:\n  - [a]\n", "larder.yaml:2:5: plan 7", "not a list of what is in the house"),
    ("flour: 2 kg\n", "larder.yaml:1:1: plan 7", "not a list of what is in the house"),
    ("- more.yaml\n", "larder.yaml:1:3: plan 7", "cannot name another"),
    ("- 'salt\n", "larder.yaml:1:3: plan 7", "not a list of what is in the house"),
])  # fmt: skip
def test_a_bad_pantry_file_is_told_with_its_place(tmp_path: Path, text: str, at: str, says: str) -> None:
    path = tmp_path / "larder.yaml"
    path.write_text(text)

    with pytest.raises(Trouble) as told:
        read_pantry(path)
    assert told.value.code == 2
    assert at in str(told.value)
    assert says in str(told.value)


@pytest.mark.parametrize("text", [
    "token: s3cret\nuser: s3cret\n", "-----BEGIN KEY-----\ns3cret==\n", "s3cret: [", "- {password: s3cret}\n",
    "- 's3cret\n", "? s3cret\n", "*s3cret", "- [s3cret]\n- '!s3cret!'\n", "s3cret: 1\ns3cret: 2\n", "!s3cret!x y",
])  # fmt: skip
def test_any_other_file_that_a_plan_names_is_not_quoted(tmp_path: Path, text: str) -> None:
    """A plan may come from somebody else, and name a file of the host's."""
    path = tmp_path / "larder.yaml"
    path.write_text(text)

    with pytest.raises(Trouble) as told:
        read_pantry(path)

    assert "s3cret" not in str(told.value)
    assert "larder.yaml:" in str(told.value)


def test_a_pantry_file_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(Trouble, match="no such file"):
        read_pantry(tmp_path / "larder.yaml")
