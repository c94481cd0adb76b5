"""A plan being made: its text now, the texts before, those taken back, and what an editor did to the file meanwhile.
Pure.

Knows no file: whoever writes it says so (`saved`), and hands in what the file holds (`outside`).
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from difflib import SequenceMatcher

from board.plan.places import Loc

BY_AN_EDITOR: Loc = ("",)  # no part of a plan has this path


@dataclass(frozen=True, slots=True)
class Both:
    """Lines that were changed here and in the file, each otherwise. `line`: the first of them in `here`, from 1."""

    line: int
    here: tuple[str, ...]
    there: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Outside:
    """What an editor did to the file: the lines that are other now, and what was changed on both sides."""

    changed: tuple[str, ...]
    both: tuple[Both, ...]


@dataclass
class Planning:
    """`on_disk`: the text that the file held last, as far as is known. A text keeps its own line ends."""

    text: str
    on_disk: str
    before: list[tuple[str, Loc]] = field(default_factory=list)  # with the part each was changed at, or BY_AN_EDITOR
    taken_back: list[tuple[str, Loc]] = field(default_factory=list)  # the last first to be had again
    _pieces: list[tuple[str, ...] | Both] | None = None  # of a file and a text that disagree, until the host chooses
    _base: str = ""  # what both were made of

    @classmethod
    def of(cls, text: str) -> "Planning":
        return cls(text, text)

    @property
    def both(self) -> tuple[Both, ...]:
        """What the host has still to choose."""
        return tuple(piece for piece in self._pieces or () if isinstance(piece, Both))

    @property
    def unsaved(self) -> bool:
        return self.text != self.on_disk

    def change(self, new: str, at: Loc) -> None:
        """Takes a new text, changed at that part."""
        if new != self.text:
            self.before.append((self.text, at))
            self.taken_back.clear()  # made of another text than this one
            self.text = new

    def back(self) -> Loc | None:
        """Goes back one change, to the byte; returns the part it was at, None if there is none."""
        return self._step(self.before, self.taken_back)

    def again(self) -> Loc | None:
        """The same with the change that was taken back last, until another is made."""
        return self._step(self.taken_back, self.before)

    def _step(self, to: list[tuple[str, Loc]], leaving: list[tuple[str, Loc]]) -> Loc | None:
        if not to:
            return None
        text, at = to.pop()
        leaving.append((self.text, at))
        self.text = text
        return at

    def saved(self, text: str) -> None:
        """The file now holds this text."""
        self.on_disk = text

    def outside(self, disk: str) -> Outside | None:
        """The file now holds that; None where that is known. What changed there is taken; where the same lines were
        changed here and not yet saved, the text stays as it is until the host chooses (`choose`)."""
        if disk == self.on_disk:
            return None
        if self._pieces is None:  # else it was saved once more before the host had chosen
            self._base = self.on_disk
        before, base, here, there = (
            text.splitlines(keepends=True) for text in (self.on_disk, self._base, self.text, disk)
        )
        self.on_disk, self._pieces = disk, list(_merged(base, here, there))
        changed = tuple(line.rstrip("\r\n") for part in _other(before, there) for line in part)
        found = Outside(changed, self.both)
        self._join()
        return found

    def choose(self, *, here: bool) -> None:
        """Takes this side, or the file's, of the first lines that were changed on both. Once all are chosen, the text
        is changed as by any other change, so that `back` undoes it."""
        pieces = self._pieces or []
        first = next((n for n, piece in enumerate(pieces) if isinstance(piece, Both)), None)
        if first is not None:
            piece = pieces[first]
            assert isinstance(piece, Both)
            pieces[first] = piece.here if here else piece.there
        self._join()

    def _join(self) -> None:
        """Makes one text of what no longer disagrees."""
        if self._pieces is not None and not self.both:
            pieces, self._pieces = self._pieces, None
            self.change("".join(line for piece in pieces if isinstance(piece, tuple) for line in piece), BY_AN_EDITOR)


def _other(base: Sequence[str], side: Sequence[str]) -> Iterator[Sequence[str]]:
    return (side[begin:end] for _, _, begin, end in _hunks(base, side))


_Hunk = tuple[int, int, int, int]  # base from, to; side from, to


def _hunks(base: Sequence[str], side: Sequence[str]) -> list[_Hunk]:
    codes = SequenceMatcher(None, base, side, autojunk=False).get_opcodes()
    return [(a, b, c, d) for kind, a, b, c, d in codes if kind != "equal"]


def _merged(base: Sequence[str], here: Sequence[str], there: Sequence[str]) -> Iterator[tuple[str, ...] | Both]:
    """Both sides' changes to the base, in order. Changes that overlap or touch are told as one, unless they agree."""
    sides = {"here": _hunks(base, here), "there": _hunks(base, there)}
    at, line = 0, 1
    while sides["here"] or sides["there"]:
        begin = min(hunks[0][0] for hunks in sides.values() if hunks)
        end, taken = _overlapping(sides, begin)
        same = tuple(base[at:begin])
        yield same
        mine, theirs = _side(here, taken["here"], base, begin, end), _side(there, taken["there"], base, begin, end)
        line += len(same)
        if not taken["there"] or mine == theirs:
            yield mine
        elif not taken["here"]:
            yield theirs
            line += len(theirs) - len(mine)
        else:
            yield Both(line, mine, theirs)
        line += len(mine)
        at = end
    yield tuple(base[at:])


def _overlapping(sides: dict[str, list[_Hunk]], begin: int) -> tuple[int, dict[str, list[_Hunk]]]:
    """The hunks of either side that hang together from there on, taken out of their lists, and where they end."""
    end, taken = begin, dict[str, list[_Hunk]]((name, []) for name in sides)
    more = True
    while more:
        more = False
        for name, hunks in sides.items():
            while hunks and hunks[0][0] <= end:
                taken[name].append(hunks.pop(0))
                end, more = max(end, taken[name][-1][1]), True
    return end, taken


def _side(side: Sequence[str], taken: list[_Hunk], base: Sequence[str], begin: int, end: int) -> tuple[str, ...]:
    """What a side has in place of the base's lines from `begin` to `end`."""
    if not taken:
        return tuple(base[begin:end])
    (first, _, start, _), (_, last, _, stop) = taken[0], taken[-1]
    return (*base[begin:first], *side[start:stop], *base[last:end])
