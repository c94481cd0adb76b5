"""The host's own dishes on disk: one file a dish in the data folder, for its owner's eyes only. Raises Trouble."""

from collections.abc import Collection
from contextlib import AbstractContextManager
from dataclasses import dataclass
from pathlib import Path

from board.base.errors import Trouble, why_of
from board.base.plain import one_line
from board.files import words
from board.files.held import held
from board.files.paths import file_name
from board.files.plans import read_text
from board.importing.shelf.kept import KeptDish, read_kept
from board.plan.resolve.known_again import name_key


@dataclass(frozen=True)
class Shelf:
    """The dishes in a folder, each with its file, by name; and what is wrong with files that cannot be read."""

    dishes: tuple[tuple[Path, KeptDish], ...] = ()
    wrong: tuple[str, ...] = ()

    def called(self, name: str) -> list[tuple[Path, KeptDish]]:
        """The dishes of that name; case and spaces do not count."""
        return [each for each in self.dishes if name_key(each[1].name) == name_key(name)]


def read_shelf(folder: Path, names: Collection[str] | None = None) -> Shelf:
    """All dishes in the folder; of many, only those in whose file one of these name keys stands. A file that cannot be
    read is told of, and hides no other. Raises nothing."""
    found, wrong = [], []
    try:
        files = sorted(folder.glob("*.yaml"))
    except OSError as trouble:
        return Shelf(wrong=(words.shelf_unread(one_line(folder), why_of(trouble)),))
    for path in files:
        try:
            text = read_text(path)
            if names is not None and not any(name in name_key(text) for name in names):
                continue
            kept = read_kept(text, one_line(path))
        except Trouble as trouble:
            wrong.append(str(trouble))
            continue
        if isinstance(kept, KeptDish):
            found.append((path, kept))
        else:
            wrong.append(kept[0].render())
    return Shelf(tuple(sorted(found, key=lambda each: name_key(each[1].name))), tuple(wrong))


def put_on_shelf(folder: Path, kept: KeptDish) -> tuple[Path, Path | None]:
    """Writes a dish, over the one of its name. Returns its file, and where a copy of the one before lies."""
    from board.log.disk import replace_whole

    with _held(folder):
        before = read_shelf(folder).called(kept.name)
        path = before[0][0] if before else _free(folder, file_name(kept.name, "dish"))
        try:
            same = bool(before) and before[0][1].text == kept.text
            aside = _aside(folder, path) if before and not same else None
            replace_whole(path, kept.text.encode())
        except (OSError, ValueError) as wrong:
            raise _failed(path, wrong) from None
        return path, aside


def take_off_shelf(folder: Path, path: Path) -> Path:
    """Moves a dish's file among the dropped ones; returns where it then lies."""
    with _held(folder):
        try:
            aside = _aside(folder, path)
            path.unlink()
        except (OSError, ValueError) as wrong:
            raise _failed(path, wrong) from None
        return aside


def _aside(folder: Path, path: Path) -> Path:
    """A copy of the file in the folder of dropped ones. Raises OSError."""
    from board.log.disk import private_folder, write_next_free

    dropped = folder / "dropped"
    private_folder(dropped)
    return write_next_free(dropped / path.name, path.read_bytes())


def _free(folder: Path, stem: str) -> Path:
    """A name that no file has, not even a damaged one."""
    path, number = folder / f"{stem}.yaml", 2
    while path.exists() or path.is_symlink():
        path, number = folder / f"{stem}-{number}.yaml", number + 1
    return path


def _held(folder: Path) -> AbstractContextManager[None]:
    """The shelf's lock, held; makes the folder."""
    return held(folder / ".lock", Trouble(words.shelf_in_use(one_line(folder))), lambda wrong: _failed(folder, wrong))


def _failed(path: Path, wrong: Exception) -> Trouble:
    return Trouble(words.cannot_write(one_line(path), why_of(wrong)))
