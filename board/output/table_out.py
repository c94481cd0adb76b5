"""The table's leaf as text of 60 columns, as Markdown, and for other programs."""

import itertools
from collections.abc import Iterator

from rich.cells import cell_len, chop_cells
from rich.console import Console

from board.facts.tableware import counted
from board.output import words
from board.output.cover import WIDEST, Piece
from board.output.markdown import safe
from board.output.schemas.table import ChairForm, TableForm
from board.output.table import Chair, Row, TableLeaf
from board.output.tables import cell, paragraph, table
from board.plan.model.model import Plan
from board.plan.resolve.laying import kinds, laid
from board.plan.resolve.seating import sides

BOARD = 8  # columns of the table between the two sides
SIDE = (WIDEST - BOARD - 6) // 2  # for names, between a margin of two and the table's edges


def print_table(leaf: TableLeaf, out: Console) -> None:
    """To a console; foreign text is safe already."""
    out.print(cell(leaf.title, "bold"))
    out.print()
    for line in _seats(leaf):
        out.print(line, soft_wrap=True)
    out.print()
    out.print(cell(leaf.cover_title, "bold"))
    for line in leaf.cover.lines or [words.TABLE_STANDING]:
        out.print(line, soft_wrap=True)
    if leaf.cover.signs:
        out.print()
    for line in legend(leaf):
        out.print(paragraph(line, indent=2))
    if leaf.cover.brought:
        out.print(paragraph(f"{words.TABLE_BROUGHT}: {', '.join(piece_of(leaf, p) for p in leaf.cover.brought)}"))
    out.print()
    out.print(cell(words.TABLE_GET_OUT, "bold"))
    for group, rows in leaf.groups:
        out.print()
        made = table((words.TABLE_GROUPS[group], "left"), (words.TABLE_ASKED, "right"), (words.TABLE_THERE, "right"),
                     (words.TABLE_MIND, "left"))  # fmt: skip
        for row in rows:
            made.add_row(cell(row.piece), str(row.asked), how_many(row), cell(to_mind(row)))
        out.print(made)
    out.print()
    for line in remarks(leaf):
        out.print(paragraph(line, "dim"))


def table_markdown(leaf: TableLeaf) -> str:
    """One document. Foreign text never becomes markup; the picture, which holds none, stands as it is."""
    return "\n".join(_markdown(leaf)) + "\n"


def table_form(plan: Plan, leaf: TableLeaf) -> TableForm:
    """The table for other programs; texts as they stand in the plan. Courses by name, None is the whole meal."""
    found = sides(plan)

    def course(number: int | None) -> str | None:
        return None if number is None else plan.courses[number].course

    def chairs(side: str) -> list[ChairForm]:
        return [
            {"name": place.name or None, "must_not": [list(guest.must_not) for guest in place.guests]}
            for place in getattr(found, side)
        ]

    return {
        "plan": plan.event,
        "guests": plan.guest_count,
        "seats": None if found is None else {"facing": found.facing, "left": chairs("left"), "right": chairs("right")},
        "must_not": [
            {"name": guest.name, "count": guest.count, "must_not": list(guest.must_not)} for guest in plan.guests
        ],
        "laid": [
            {
                "course": course(each.course),
                "piece": each.piece,
                "each": each.each,
                "total": each.total,
                "assumed": each.assumed,
            }
            for each in laid(plan)
        ],
        "pieces": [
            {
                "piece": kind.piece,
                "asked_for": kind.total,
                "there": kind.house,
                "borrow": kind.borrow,
                "wash": [
                    {"count": wash.count, "after": course(wash.after), "before": course(wash.before)}
                    for wash in kind.washes
                ],
            }
            for kind in kinds(plan)
        ],
        "wash_between": plan.table is not None and plan.table.wash_between,
        "cover": list(leaf.cover.lines),
    }


def _seats(leaf: TableLeaf) -> Iterator[str]:
    if leaf.left is None or leaf.right is None:
        yield words.TABLE_NO_SEATS if leaf.guests else words.TABLE_NO_SEATS_NO_WORDS
        yield from (f"  {chair.name}: {words_of(chair)}" for chair in leaf.guests)
        return
    yield words.TABLE_SEATS
    yield words.TABLE_FACING if leaf.facing else words.TABLE_AROUND
    yield ""
    margin = " " * (SIDE + 2)
    yield f"{margin}┌{'─' * BOARD}┐"
    for left, right in itertools.zip_longest(leaf.left, leaf.right):
        for a, b in itertools.zip_longest(_beside(left), _beside(right), fillvalue=""):
            padded = " " * (SIDE - cell_len(a)) + a
            yield f"{padded}  │{' ' * BOARD}│  {b}".rstrip()
    yield f"{margin}└{'─' * BOARD}┘"
    if leaf.guests:
        yield f"{words.TABLE_NOT_SEATED}: " + "; ".join(
            f"{chair.name} ({words_of(chair)})" if chair.must_not else chair.name for chair in leaf.guests
        )


def _beside(chair: Chair | None) -> list[str]:
    """What stands beside one chair: a name, and below it what they must not be served."""
    if chair is None:
        return []
    lines = _folded(chair.name or words.TABLE_EMPTY, SIDE)
    if chair.must_not:
        lines += _folded(words.TABLE_MUST_NOT + words_of(chair), SIDE)
    return lines


def words_of(chair: Chair) -> str:
    return ", ".join(chair.must_not)


def _folded(text: str, width: int) -> list[str]:
    """Lines of at most `width` columns; longer words are broken."""
    lines = [""]
    for word in text.split(" "):
        for number, piece in enumerate(chop_cells(word, width) or [""]):
            joined = f"{lines[-1]} {piece}" if lines[-1] and not number else lines[-1] + piece
            if number or cell_len(joined) > width:
                lines.append(piece)
            else:
                lines[-1] = joined
    return [line for line in lines if line]


def legend(leaf: TableLeaf) -> Iterator[str]:
    """What the signs mean; pieces of one kind for one course share a line."""
    found: dict[Piece, list[str]] = {}
    for sign, piece in leaf.cover.signs:
        found.setdefault(piece, []).append(sign)
    for piece, signs in found.items():
        many = counted(piece.name, len(signs)) if len(signs) > 1 else piece.name
        yield f"{' '.join(signs)}  {many}: {_course(leaf, piece)}"


def piece_of(leaf: TableLeaf, piece: Piece) -> str:
    return f"{piece.name} ({_course(leaf, piece)})"


def _course(leaf: TableLeaf, piece: Piece) -> str:
    return words.TABLE_WHOLE_MEAL if piece.course is None else leaf.names[piece.course]


def how_many(row: Row) -> str:
    return words.TABLE_UNTOLD if row.there is None else str(row.there)


def to_mind(row: Row) -> str:
    return "; ".join(row.notes)


def remarks(leaf: TableLeaf) -> Iterator[str]:
    if any(row.there is None for _, rows in leaf.groups for row in rows):
        yield f"{words.TABLE_UNTOLD}: {words.TABLE_NOT_COUNTED}"
    if leaf.usual:
        yield words.TABLE_USUALLY
    yield words.TABLE_ASK


def _markdown(leaf: TableLeaf) -> Iterator[str]:
    yield f"# {safe(leaf.title)}"
    yield ""
    yield f"## {words.TABLE_SEATS}"
    yield ""
    if leaf.left is None or leaf.right is None:
        yield words.TABLE_NO_SEATS if leaf.guests else words.TABLE_NO_SEATS_NO_WORDS
        yield ""
    else:
        yield words.TABLE_FACING if leaf.facing else words.TABLE_AROUND
        yield ""
        yield f"| {words.TABLE_LEFT} | {words.TABLE_RIGHT} |"
        yield "| --: | :-- |"
        for left, right in itertools.zip_longest(leaf.left, leaf.right):
            yield f"| {_in_cell(left)} | {_in_cell(right)} |"
        yield ""
        if leaf.guests:
            yield f"{words.TABLE_NOT_SEATED}:"
            yield ""
    yield from (f"- {safe(chair.name)}: {safe(words_of(chair))}".removesuffix(": ") for chair in leaf.guests)
    yield ""
    yield f"## {safe(leaf.cover_title)}"
    yield ""
    if leaf.cover.lines:
        yield from ("```", *leaf.cover.lines, "```", "")
    else:
        yield from (words.TABLE_STANDING, "")
    yield from (f"- {safe(line)}" for line in legend(leaf))
    if leaf.cover.brought:
        yield from (f"- {words.TABLE_BROUGHT}: {safe(piece_of(leaf, piece))}" for piece in leaf.cover.brought)
    yield ""
    yield f"## {words.TABLE_GET_OUT}"
    for group, rows in leaf.groups:
        yield ""
        yield f"| {words.TABLE_GROUPS[group]} | {words.TABLE_ASKED} | {words.TABLE_THERE} | {words.TABLE_MIND} |"
        yield "| :-- | --: | --: | :-- |"
        yield from (f"| {safe(row.piece)} | {row.asked} | {how_many(row)} | {safe(to_mind(row))} |" for row in rows)
    yield ""
    yield from (f"- {safe(line)}" for line in remarks(leaf))


def _in_cell(chair: Chair | None) -> str:
    if chair is None:
        return ""
    told = f" ({safe(words_of(chair))})" if chair.must_not else ""
    return safe(chair.name or words.TABLE_EMPTY) + told
