"""Dishes of one's own on disk: names that are data, files nobody else reads, nothing lost."""

import stat
from datetime import date
from pathlib import Path

import pytest

from board.files.shelf import put_on_shelf, read_shelf, take_off_shelf
from board.importing.shelf.kept import KeptDish, kept_text, read_kept
from board.plan.edit.yaml_text import scalar


def dish(name: str, minutes: int = 10) -> KeptDish:
    lines = [f"- dish: {scalar(name)}", "  steps:", f"    - {{step: make it, takes: {minutes} min}}"]
    found = read_kept(kept_text({"kept": date(2026, 11, 29).isoformat()}, lines), "")
    assert isinstance(found, KeptDish), [snag.render() for snag in found]
    return found


@pytest.mark.parametrize(
    "name",
    [
        "Onion tartlets", "[b]bold[/b] \\[x]", "../../etc/passwd", "/etc/passwd", "..", "a/b\\c", "玉ねぎのタルト",
        "Тарт", "x" * 300, "ñ" * 300, "-", "CON", "\u202egnp.exe", "#: {}", "'\"",
    ],
)  # fmt: skip
def test_any_name_is_a_file_in_the_folder_and_is_found_again(tmp_path: Path, name: str) -> None:
    folder = tmp_path / "data" / "dishes"
    path, aside = put_on_shelf(folder, dish(name))

    assert path.resolve().parent == folder.resolve()
    assert aside is None
    assert [kept.name for _, kept in read_shelf(folder).called(name)] == [name]
    assert sorted(p.name for p in tmp_path.iterdir()) == ["data"]


def test_files_are_for_their_owner_alone(tmp_path: Path) -> None:
    folder = tmp_path / "dishes"
    path, _ = put_on_shelf(folder, dish("Tart"))
    put_on_shelf(folder, dish("Tart", 20))
    dropped = take_off_shelf(folder, path)

    assert stat.S_IMODE(folder.stat().st_mode) == stat.S_IMODE(dropped.parent.stat().st_mode) == 0o700
    files = [each for each in folder.rglob("*") if each.is_file()]
    assert len(files) >= 3
    assert {stat.S_IMODE(each.stat().st_mode) for each in files} == {0o600}


def test_one_of_the_same_name_is_replaced_with_a_copy_aside(tmp_path: Path) -> None:
    path, _ = put_on_shelf(tmp_path, dish("Tart"))
    before = path.read_text()
    again, aside = put_on_shelf(tmp_path, dish("tart", 20))

    assert again == path
    assert aside is not None
    assert aside.read_text() == before
    assert "20 min" in path.read_text()
    assert put_on_shelf(tmp_path, dish("tart", 20)) == (path, None)


def test_two_names_of_one_file_name_lie_beside_each_other(tmp_path: Path) -> None:
    one, _ = put_on_shelf(tmp_path, dish("Tart!"))
    other, aside = put_on_shelf(tmp_path, dish("Tart?"))

    assert (one.name, other.name, aside) == ("tart.yaml", "tart-2.yaml", None)
    assert len(read_shelf(tmp_path).dishes) == 2


@pytest.mark.parametrize("bad", [b"dishes: [", b"\xff\xfe", b"", b"- 1", b"dishes:\n  - dish: Tart\n    stps: []\n"])
def test_a_damaged_file_is_told_with_its_line_and_hides_no_other(tmp_path: Path, bad: bytes) -> None:
    put_on_shelf(tmp_path, dish("Soup"))
    (tmp_path / "tart.yaml").write_bytes(bad)
    found = read_shelf(tmp_path)

    assert [kept.name for _, kept in found.dishes] == ["Soup"]
    (told,) = found.wrong
    assert "tart.yaml:" in told
    path, _ = put_on_shelf(tmp_path, dish("Tart"))  # never over a file that could not be read
    assert path.name == "tart-2.yaml"
    assert (tmp_path / "tart.yaml").read_bytes() == bad


def test_dropped_twice_both_copies_are_kept(tmp_path: Path) -> None:
    copies = []
    for minutes in (10, 20):
        path, _ = put_on_shelf(tmp_path, dish("Tart", minutes))
        copies.append(take_off_shelf(tmp_path, path))

    assert len(set(copies)) == 2
    assert ["10 min" in copies[0].read_text(), "20 min" in copies[1].read_text()] == [True, True]
    assert read_shelf(tmp_path).dishes == ()


def test_no_folder_is_an_empty_shelf(tmp_path: Path) -> None:
    assert read_shelf(tmp_path / "nowhere").dishes == ()
