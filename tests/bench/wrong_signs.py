"""Every wrong sign that can be put into a module, each by a small change of its tree; and those nobody can tell."""

import ast
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

TREE = Path(__file__).parents[2]
FLIPPED: dict[type[ast.AST], Callable[[], Any]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt, ast.Eq: ast.NotEq, ast.NotEq: ast.Eq,
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.And: ast.Or, ast.Or: ast.And,
}  # fmt: skip
SWAPPED = {"min": "max", "max": "min"}


@dataclass(frozen=True)
class Mutant:
    """One wrong sign. `statement`: the line of the smallest statement in a function around it, else 0."""

    module: str
    line: int
    column: int
    statement: int
    before: str
    after: str

    def __str__(self) -> str:
        return f"{self.module}:{self.line}:{self.column}  {self.before}  →  {self.after}"


def path_of(module: str) -> Path:
    return TREE / (module.replace(".", "/") + ".py")


def tree_of(module: str) -> ast.AST:
    return ast.parse(path_of(module).read_text(encoding="utf-8"))


def wrong(node: ast.AST, tells_bool: bool) -> Iterator[tuple[str, Any]]:
    """What can be put wrong about one node: which of its attributes, and what is put there."""
    match node:
        case ast.Compare(ops=ops):
            flips = [(n, FLIPPED[type(op)]()) for n, op in enumerate(ops) if type(op) in FLIPPED]
            yield from (("ops", [*ops[:n], flip, *ops[n + 1 :]]) for n, flip in flips)
        case ast.BinOp(op=op) | ast.AugAssign(op=op) | ast.BoolOp(op=op) if type(op) in FLIPPED:
            yield "op", FLIPPED[type(op)]()
        case ast.UnaryOp(op=ast.Not(), operand=operand):
            yield "operand", ast.UnaryOp(ast.Not(), operand)  # twice not: as if there were none
        case ast.Call(func=ast.Name(id="min" | "max" as name)):
            yield "func", ast.Name(SWAPPED[name], ast.Load())
        case ast.Constant(value=value) if type(value) is int and value in (0, 1):
            yield from (("value", value + by) for by in (1, -1))
        case ast.Return(value=ast.expr() as value) if tells_bool:
            yield "value", ast.UnaryOp(ast.Not(), value)


def walk(node: ast.AST, statement: int = 0, tells_bool: bool = False) -> Iterator[tuple[ast.AST, int, bool]]:
    """Every node that is no annotation, the statement it stands in, and whether its function tells a bool."""
    yield node, statement, tells_bool
    function = isinstance(node, ast.FunctionDef)
    if function:
        tells_bool = isinstance(node.returns, ast.Name) and node.returns.id == "bool"  # type: ignore[attr-defined]
    said = (getattr(node, "annotation", None), getattr(node, "returns", None))
    for child in [each for each in ast.iter_child_nodes(node) if each not in said]:
        inner = child.lineno if (statement or function) and isinstance(child, ast.stmt) else statement
        yield from walk(child, inner, tells_bool)


def mutants(module: str) -> Iterator[tuple[Mutant, ast.AST]]:
    """Each, and the module's tree with it in place; the tree is good until the next is asked for."""
    tree = tree_of(module)
    for node, statement, tells_bool in list(walk(tree)):
        for name, put in wrong(node, tells_bool):
            right, before = getattr(node, name), ast.unparse(node)
            setattr(node, name, put)
            place = node.lineno, node.col_offset + 1  # type: ignore[attr-defined]
            yield Mutant(module, *place, statement, before, ast.unparse(node)), ast.fix_missing_locations(tree)
            setattr(node, name, right)


class Noting(ast.NodeTransformer):
    """Lets every statement of a function tell first that it is come by."""

    def __init__(self, module: str) -> None:
        self.module, self.in_function = module, False

    def visit(self, node: ast.AST) -> Any:
        outside, self.in_function = self.in_function, self.in_function or isinstance(node, ast.FunctionDef)
        node, self.in_function = self.generic_visit(node), outside
        if not (outside and isinstance(node, ast.stmt)):
            return node
        return [*ast.parse(f"_come_by(({self.module!r}, {node.lineno}))").body, node]


# Mutants that nobody can tell from the original: the module, the line as it stands, what was put there; and why.
DEAREST = "dearest = next((gain for gain in gains if gain), 0)  # in the order of the aims"
NOT_ENOUGH = "if not enough or dearest < 0:"
IN_HALF_HOUR = "if part.end > plated - HALF_HOUR and part.start < plated"
BEYOND = "for id_ in self.order[self.order.index(first) + 1 :]:"
LONGEST_OVER = "return sorted(over, key=lambda s: -(s.ran_over or 0))"
WITHIN = 'wanted = "at once" if link.most == link.least else f"within {short(link.most or 0)}"'
RESTED = "if cook is None or not _enough(say.rules, cooks, core, math.inf) or _enough(say.rules, cooks, core, 0):"
LEFT_AT = "return max(spell.use.want for spell in self.spells) if self.off else self.celsius"
OPEN = "found.append(Setting(start, end, 0, inside))"
AS_LONG = (
    "if group and (not suits or segment.off or group[0].off or segment.start - group[-1].end >= COLD_AFTER_MINUTES):"
)
AJAR = "ajar = facts.rates.ajar is not None and came_from is not None and setting.celsius < came_from"
FRONT = 'front = {n for n in range(len(problem.jobs)) if way_of(problem, solution, n).lane == "front-of-house"}'
GIVEN = "allowed = meet(allowed, [(start, end - way.minutes + 1)] if end - start >= way.minutes else [])"
WHO = 'who = slot.attended[0].who if slot.attended else ""'
BEGINS = "start = max(0, end - length, self.busy_until.get(who, 0))"
TURN = "oven, celsius = slot.uses[0].what, slot.uses[0].celsius"
FRONT_NOT = "way_of(problem, solution, n).lane != 'front-of-house'"

EQUAL = {
    ("board.session.replan.gain", DEAREST, "1"): "no gain at all is not enough, and asked for first",
    ("board.session.replan.gain", DEAREST, "-1"): "the same",
    ("board.session.replan.gain", NOT_ENOUGH, "dearest <= 0"): "the same",
    ("board.session.replan.gain", NOT_ENOUGH, "1"): "the same, gains being whole",
    ("board.checks.plan.precedence", BEYOND, "0"): "nothing follows itself",
    ("board.checks.plan.keeping", WITHIN, "1"): "only asked where there is a most",
    ("board.checks.plan.keeping", WITHIN, "-1"): "the same",
    ("board.checks.plan.cooking", RESTED, "-1"): "where no rest is asked for, the rest there is is enough",
    ("board.sheet.company", 'found = ("", -1)', "2"): "any number below zero",
    ("board.sheet.company", IN_HALF_HOUR, "part.end >= plated - HALF_HOUR"): "adds no minute",
    ("board.sheet.company", IN_HALF_HOUR, "part.start <= plated"): "adds no minute",
    ("board.review.measure", LONGEST_OVER, "1"): "what ran over has minutes, and not none",
    ("board.review.measure", LONGEST_OVER, "-1"): "the same",
    ("board.evening.readings", "return left if left > EXACT_MINUTES else 0.0", "left >= EXACT_MINUTES"): "a millionth",
    (
        "board.schedule.oven_dial",
        LEFT_AT,
        "min((spell.use.want for spell in self.spells))",
    ): "a rest is alone in its oven",
    ("board.schedule.oven_dial", OPEN, "1"): "still open: the heat is put in once it is known how long it does",
    ("board.schedule.oven_dial", OPEN, "-1"): "the same",
    (
        "board.schedule.oven_dial",
        AS_LONG,
        "-1",
    ): "whatever follows a rest, or is one, begins anew: only the first can be off",
    ("board.schedule.oven_dial", AJAR, "setting.celsius <= came_from"): "an oven that stands right is not turned",
    ("board.schedule.dependencies", "if amount > drawn:", "amount >= drawn"): "of nothing, nothing is drawn",
    ("board.schedule.dependencies", FRONT, FRONT_NOT): "only asked whether two are on one side",
    ("board.schedule.windows", GIVEN, "end + start"): "what would end before it begins is no window, and is left out",
    ("board.session.replan.remaining", WHO, "-1"): "one pair of hands has all of a step",
    ("board.session.replan.remaining", BEGINS, "-1"): "there are two noughts to be above",
    ("board.session.replan.remaining", TURN, "-1"): "a turn of the dial is one use of its oven",
}
