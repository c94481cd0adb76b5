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
BEGINS = "start = max(0, end - length, busy_until)"
TURN = "oven, celsius = slot.uses[0].what, slot.uses[0].celsius"
FRONT_NOT = "way_of(problem, solution, n).lane != 'front-of-house'"
FIRST_GOAL = "goals = [stages[0].start.celsius, *(stage.end.celsius for stage in stages)]"
TO_GOAL = "after = piece.falls.minutes_to(celsius, goal) if celsius > goal else 0.0"
FALLS_FROM = 'f"{slot.name}: by an estimate it falls from {say.limit(stages[0].start)} too slowly: {told}; "'
ANY_READY = "head = READY_TO_EAT[0] if head is None and by_day else head"
WITH_LITRES = 'entry = _Entry(taker.start, station.litres or 0, taker.name, (*paths.task(taker).node.loc, "where"))'
SEVERAL_TOOLS = "several = file.plan.kitchen.tools.get(contact.tool, 0) > 1"
KEPT_IN = "return next((count for name, count in found.items() if name_key(name) == name_key(tool)), 0)"
BY_CLEARED = "for each in sorted(left, key=lambda one: _ends(sheet, one.course)[1]):"
LAST_CLEARED = "last = max((each.course for each in group), key=lambda name: _ends(sheet, name)[1])"
ONE_NAME = '"puts away": names if len(names) > 1 else names[0],'
WEIGHED = "weighed = any(grams(1, unit) is not None for unit in units)"
POURED = "poured = any(cups(1, unit) is not None for unit in units)"
NO_FIGURE = "if self.low is None or self.high is None or other.low is None or other.high is None:"
NO_FIGURES = "self.low is None and self.high is None and (other.low is None) and (other.high is None)"
BY_LAST_DAY = "fits = windows[other][0] <= day <= windows[other][1]"
CHILDREN = "children = min(plan.drinks.children if plan.drinks else 0, plan.guest_count)"
LARGE = 'metric, us = ("kg" if size >= 1000 else "g"), ("lb" if size >= GRAMS["lb"] else "oz")'
SPOONS = 'us = "cup" if size >= cup / 4 else "tbsp" if size >= known["tbsp"] else "tsp"'
STEPS = "step = next((s for below, s in ((20, 1.0), (200, 5.0), (2000, 10.0)) if amount < below), 50.0)"
WHOLE = "whole = part.least.high is not None and part.least.high - need.high > 1e-9"
ENOUGH = "short = 0.0 if missing < 1e-9 * least.high else missing"
OVER = "if part.packs is not None and part.packs.left_over > 1e-9:"
SCALED = "if scaled.low is None or scaled.high is None:"
SCALED_NEITHER = "scaled.low is None and scaled.high is None"
SHOWN = "if amount.low is None or amount.high is None:"
SHOWN_NEITHER = "amount.low is None and amount.high is None"
NO_RATE = "if how_much is None or rate is None:"
BOTH_FIGURES = "a plan gives both figures or none"
NOW_ON = "NOW_ON = timedelta(seconds=1)  # so that a span starting at this very moment already counts"
OUT_NOW = "running = to_come and any(each.start < each.end == here for each in raw.stretches)"
HAIR = "a hair"

EQUAL = {
    ("board.checks.sheet.cooling", FIRST_GOAL, "1"): "every stage is counted from the same heat",
    ("board.checks.sheet.cooling", FIRST_GOAL, "-1"): "the same",
    ("board.checks.sheet.cooling", FALLS_FROM, "1"): "the same",
    ("board.checks.sheet.cooling", FALLS_FROM, "-1"): "the same",
    ("board.checks.sheet.cooling", TO_GOAL, "celsius >= goal"): "no minutes to where it is",
    ("board.checks.sheet.fridge", ANY_READY, "1"): "what is ready to eat has the same days, whatever it is",
    ("board.checks.sheet.fridge", ANY_READY, "-1"): "the same",
    ("board.checks.sheet.fridge", WITH_LITRES, "1"): "taken only where it has litres",
    ("board.checks.sheet.fridge", WITH_LITRES, "-1"): "the same",
    ("board.checks.sheet.contact", "if first.start >= second.start:", "first.start > second.start"): "then in hand",
    ("board.checks.sheet.contact", SEVERAL_TOOLS, "1"): "only asked of the kitchen's tools",
    ("board.checks.sheet.contact", SEVERAL_TOOLS, "-1"): "the same",
    ("board.checks.sheet.contact", KEPT_IN, "-1"): "one is needed at the least",
    ("board.checks.sheet.put_away", BY_CLEARED, "0"): "courses are cleared in the order they are served",
    ("board.checks.sheet.put_away", LAST_CLEARED, "0"): "the same",
    ("board.checks.sheet.put_away", ONE_NAME, "-1"): "of one, the first is the last",
    ("board.plan.resolve.amounts", WEIGHED, "2"): "of any amount",
    ("board.plan.resolve.amounts", WEIGHED, "0"): "the same",
    ("board.plan.resolve.amounts", POURED, "2"): "the same",
    ("board.plan.resolve.amounts", POURED, "0"): "the same",
    ("board.plan.resolve.amounts", NO_FIGURE, NO_FIGURES): BOTH_FIGURES,
    ("board.plan.resolve.amounts", "if low is None or high is None:", "low is None and high is None"): BOTH_FIGURES,
    ("board.shopping.days", BY_LAST_DAY, "windows[other][0] <= day < windows[other][1]"): "goes by the first last day",
    ("board.shopping.drinks", CHILDREN, "1"): "only asked where the plan says what is drunk",
    ("board.shopping.drinks", CHILDREN, "-1"): "the same",
    ("board.shopping.drinks", NO_RATE, "how_much is None and rate is None"): "both or none",
    ("board.shopping.items", ENOUGH, "missing <= 1e-09 * least.high"): HAIR,
    ("board.shopping.rows", WHOLE, "part.least.high - need.high >= 1e-09"): HAIR,
    ("board.shopping.rows", OVER, "part.packs.left_over >= 1e-09"): HAIR,
    ("board.shopping.rows", SCALED, SCALED_NEITHER): BOTH_FIGURES,
    ("board.sheet.shown", SHOWN, SHOWN_NEITHER): BOTH_FIGURES,
    ("board.sheet.shown", STEPS, "amount <= below"): "it is a whole number of either step",
    ("board.sheet.shown", LARGE, "size > 1000"): HAIR,
    ("board.sheet.shown", LARGE, "size > GRAMS['lb']"): HAIR,
    ("board.sheet.shown", 'metric = "l" if size >= 1000 else "ml"', "size > 1000"): HAIR,
    ("board.sheet.shown", SPOONS, "size > cup / 4"): HAIR,
    ("board.sheet.shown", SPOONS, "size > known['tbsp']"): HAIR,
    (
        "board.sheet.shown",
        "whole = math.floor(value + 1e-9)",
        "value - 1e-09",
    ): "beside a whole number is no fraction",
    ("board.sheet.shown", "if abs(value - whole - share) < 1e-6:", "abs(value - whole - share) <= 1e-06"): HAIR,
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
    ("board.evening.clocks", NOW_ON, "2"): "any moment does",
    ("board.evening.clocks", OUT_NOW, "each.start <= each.end == here"): "no stretch is of no time",
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
    ("board.session.replan.remaining", BEGINS, "-1"): "there are two noughts to be above",
    ("board.session.replan.remaining", TURN, "-1"): "a turn of the dial is one use of its oven",
}
