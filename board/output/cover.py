"""One guest's cover, drawn in plain signs within 60 columns: forks left, knives and spoons right, the first used
outermost, glasses over the knives, dessert spoon and fork above the plate. Common practice, no source. Pure.
"""

import string
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from board.facts.tableware import Spot, spot_of

WIDEST = 60
SIGNS = string.ascii_letters  # nothing else in a picture is a letter
MOST: dict[Spot, int] = {"left": 5, "right": 5, "above": 4, "glass": 5, "bread": 2, "centre": 6, "beside": 10}
PLATE = 15  # columns


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece before a guest. `course` counts from 0 in eating order; None: for the whole meal."""

    name: str
    course: int | None


@dataclass(frozen=True, slots=True)
class Cover:
    """`lines`: one sign a piece; `signs`: which is which; `brought`: pieces without room, for their course."""

    lines: tuple[str, ...]
    signs: tuple[tuple[str, Piece], ...]
    brought: tuple[Piece, ...]


def cover(pieces: Sequence[Piece]) -> Cover:
    """The picture of pieces in the order of the meal."""
    zones: dict[Spot, list[tuple[str, Piece]]] = {spot: [] for spot in MOST}
    signs: list[tuple[str, Piece]] = []
    brought = []
    for piece in pieces:
        zone = zones[spot_of(piece.name)]
        if len(zone) == MOST[spot_of(piece.name)] or len(signs) == len(SIGNS):
            brought.append(piece)
            continue
        signs.append((SIGNS[len(signs)], piece))
        zone.append(signs[-1])
    return Cover(tuple(_drawn(zones)) if signs else (), tuple(signs), tuple(brought))


def _drawn(zones: dict[Spot, list[tuple[str, Piece]]]) -> Iterable[str]:
    left = _row(_fork_or_napkin(*each) for each in sorted(zones["left"], key=_outermost_first))
    right = _row(_knife_or_spoon(*each) for each in sorted(zones["right"], key=_innermost_first))
    bread = _row(_bread_plate(sign) for sign, _ in zones["bread"])
    glasses = _row(_glass(*each) for each in zones["glass"])
    above = [_lying(*each) for each in sorted(zones["above"], key=lambda each: each[1].name.endswith("fork"))]
    before, behind = max(_width(left), _width(bread)), max(_width(right), _width(glasses))
    for over, middle, after in ((bread, above, glasses), (left, _plate([s for s, _ in zones["centre"]]), right)):
        height = max(len(over), len(middle), len(after))
        for a, b, c in zip(_tall(over, height), _tall(middle, height), _tall(after, height), strict=True):
            yield f"{a:>{before}} {b:^{PLATE}} {c:<{behind}}".rstrip()
    if zones["beside"]:
        yield ""
        yield " ".join(f"[{sign}]" for sign, _ in zones["beside"])


def _outermost_first(each: tuple[str, Piece]) -> tuple[bool, int]:
    _, piece = each
    return not piece.name.endswith("napkin"), -1 if piece.course is None else piece.course


def _innermost_first(each: tuple[str, Piece]) -> tuple[int, bool]:
    _, piece = each
    return 1 if piece.course is None else -piece.course, piece.name.endswith("spoon")


def _row(drawings: Iterable[Sequence[str]]) -> list[str]:
    """Drawings of one height side by side, a column between."""
    return [" ".join(lines) for lines in zip(*drawings, strict=True)]


def _width(lines: Sequence[str]) -> int:
    return max((len(line) for line in lines), default=0)


def _tall(lines: Sequence[str], height: int) -> list[str]:
    return [""] * (height - len(lines)) + list(lines)


def _fork_or_napkin(sign: str, piece: Piece) -> Sequence[str]:
    if piece.name.endswith("napkin"):
        return ".-.", "| |", "| |", "'-'", f" {sign} "
    return "|||", "\\|/", " | ", " | ", f" {sign} "


def _knife_or_spoon(sign: str, piece: Piece) -> Sequence[str]:
    if piece.name.endswith("spoon"):
        return ".-.", "\\_/", " | ", " | ", f" {sign} "
    if piece.name.endswith("knife"):
        return " |\\", " ||", " |/", " | ", f" {sign} "
    return " | ", " | ", " | ", " | ", f" {sign} "


def _glass(sign: str, piece: Piece) -> Sequence[str]:
    if piece.name.endswith(("water glass", "tumbler", "beaker")):
        return "| |", "| |", "|_|", f" {sign} "
    return "\\ /", " | ", "_|_", f" {sign} "


def _bread_plate(sign: str) -> Sequence[str]:
    return ".-.", "( )", "'-'", f" {sign} "


def _lying(sign: str, piece: Piece) -> str:
    """The fork points right, the spoon left, so that each comes to its hand when it is drawn down."""
    return f"{sign} ------{{=" if piece.name.endswith("fork") else f"(_)------ {sign}"


def _plate(signs: Sequence[str]) -> list[str]:
    """What stands in the middle, stacked, the first to be eaten from on top."""
    inner = PLATE - 2
    rim = f".{'-' * (inner - 2)}."
    rows = [f"|{sign:^{inner}}|" for sign in signs or [""]]
    return [rim, f"/{'':{inner}}\\", *rows, f"\\{'':{inner}}/", f"'{'-' * (inner - 2)}'"]
