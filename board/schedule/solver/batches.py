"""What is alike is done together: a choice among timetables that are equal in all aims.

Two pieces of work are together where one pair of hands goes straight from one to the other. And a day's work before the
guests is no longer from its first minute to its last than it need be.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise, permutations

from board.schedule.problem import Part, Way
from board.schedule.solution import Solution
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables

NO_REST = 5  # minutes; a shorter wait only breaks the work up; ours
RAGGED = 30  # minutes that a result may wait more or less than is comfortable, for one such wait less; ours
HARDER = 15  # minutes more that one of several people may get to do for it; ours
# Of two pieces done together, in minutes that a day may last longer for it: ours.
SAME_HEAT = 10
WORTH = {"dish": 20, "work": 24, "food": 6, "tool": 6}  # by what both have in common


@dataclass(frozen=True, slots=True)
class _Piece:
    """Hands on a job for a while, if it is done the `chosen` way."""

    number: int
    job: JobVars
    way: Way
    chosen: cp_model.LiteralT
    part: Part

    @property
    def begin(self) -> cp_model.LinearExprT:
        return self.job.start + self.part.offset

    @property
    def over(self) -> cp_model.LinearExprT:
        return self.job.start + self.part.offset + self.part.length


class Batches:
    """Builds the sums over the variables of a problem, for a timetable that is to be bettered."""

    def __init__(self, variables: Variables, at: Solution) -> None:
        self.v = variables
        self.model = variables.model
        self.problem = variables.problem
        self.at = at
        self.edges = [*(day.begins for day in self.problem.days), self.problem.arrives]
        self.pieces = [piece for n, job in enumerate(variables.jobs) for piece in self._pieces(n, job)]
        self.ahead = [each for each in self.pieces if at.starts[each.number] < self.problem.arrives]

    def _pieces(self, number: int, job: JobVars) -> Iterator[_Piece]:
        for way, chosen in zip(job.job.ways, job.ways, strict=True):
            yield from (_Piece(number, job, way, chosen, part) for part in way.parts if part.kind != "look-in")

    def days(self) -> Iterator[set[int]]:
        """The jobs of each day before the guests, as they stand."""
        for since, until in pairwise(self.edges):
            found = {n for n, start in enumerate(self.at.starts) if since <= start < until}
            if found:
                yield found

    def evening(self) -> set[int]:
        """The jobs from the guests' coming on."""
        return {n for n, start in enumerate(self.at.starts) if start >= self.problem.arrives}

    def apart(self) -> cp_model.LinearExprT:
        """What is alike and not together, and the minutes of each day's work; the less the better."""
        self._nobody_has_it_harder()
        terms: list[cp_model.LinearExprT] = [*self._lengths()]
        for one, other in permutations(self.ahead, 2):
            worth = _worth(one, other)
            if worth and one.number != other.number and set(one.job.who) & set(other.job.who):
                terms.append(self._together(one, other) * -worth)
        return cp_model.LinearExpr.sum(terms)

    def _nobody_has_it_harder(self) -> None:
        """One person's day is not made shorter by giving the work to another."""
        minutes: dict[int, list[cp_model.LinearExprT]] = {}
        now: dict[int, int] = {}
        for piece in self.pieces:
            for hand, who in piece.job.who.items() if len(self.problem.hands) > 1 else ():
                minutes.setdefault(hand, []).append(self.v.both(who, piece.chosen) * piece.part.length)
                if hand in self.at.who[piece.number] and piece.job.job.ways[self.at.ways[piece.number]] is piece.way:
                    now[hand] = now.get(hand, 0) + piece.part.length
        for hand, own in minutes.items():
            self.model.add(cp_model.LinearExpr.sum(own) <= now.get(hand, 0) + HARDER)

    def _together(self, one: _Piece, other: _Piece) -> cp_model.IntVar:
        """Whether one pair of hands goes straight from one to the other."""
        together = self.model.new_bool_var("together")
        self.model.add(other.begin == one.over).only_enforce_if(together)
        self.model.add_implication(together, one.chosen)
        self.model.add_implication(together, other.chosen)
        for hand in {*one.job.who, *other.job.who}:
            first, second = (each.job.who.get(hand, 0) for each in (one, other))
            if first is not second:
                self.model.add(first == second).only_enforce_if(together)
        return together

    def _lengths(self) -> Iterator[cp_model.LinearExprT]:
        """Of each day's work before the guests, by hand."""
        for hand in range(len(self.problem.hands)):
            own = [piece for piece in self.ahead if hand in piece.job.who]
            for since, until in pairwise(self.edges):
                if since >= until or not own:
                    continue
                first = self.model.new_int_var(0, self.problem.horizon, "first minute")
                last = self.model.new_int_var(0, self.problem.horizon, "last minute")
                self.model.add(first <= last)
                for piece in own:
                    later, sooner = self.model.new_bool_var("later"), self.model.new_bool_var("sooner")
                    here = (piece.chosen, piece.job.who[hand], ~later, ~sooner)
                    self.model.add(piece.begin >= until).only_enforce_if(later)
                    self.model.add(piece.over <= since).only_enforce_if(sooner)
                    self.model.add(first <= piece.begin).only_enforce_if(*here)
                    self.model.add(last >= piece.over).only_enforce_if(*here)
                yield last - first

    def ragged(self, at: Solution) -> Iterator[cp_model.LinearExprT]:
        """The price of each rest of so few minutes that it is none; all is done by the same hands, in the same way
        and in the same order as in a solution."""
        found: dict[int, list[tuple[int, _Piece]]] = {}
        for n, job in enumerate(self.v.jobs):
            self.model.add(job.ways[at.ways[n]] == 1)
            own = [each for each in self.pieces if each.number == n and each.way is job.job.ways[at.ways[n]]]
            for who in at.who[n]:
                self.model.add(job.who[who] == 1)
                found.setdefault(who, []).extend((at.starts[n] + each.part.offset, each) for each in own)
        for pieces in found.values():
            for (_, one), (_, other) in pairwise(sorted(pieces, key=lambda each: each[0])):
                at_once, later = self.model.new_bool_var("at once"), self.model.new_bool_var("later")
                self.model.add(other.begin >= one.over)
                self.model.add(other.begin <= one.over).only_enforce_if(at_once)
                self.model.add(other.begin >= one.over + NO_REST).only_enforce_if(later)
                self.model.add_at_most_one(at_once, later)
                yield (1 - at_once - later) * RAGGED


def _worth(one: _Piece, other: _Piece) -> int:
    """Of doing two straight after one another."""
    common = set(one.job.job.alike) & set(other.job.job.alike)
    worth = sum(WORTH[each.partition(":")[0]] for each in common)
    if one.part.kind == other.part.kind == "start" and one.way.oven and other.way.oven:
        worth += SAME_HEAT * (one.way.oven.oven == other.way.oven.oven and one.way.oven.agrees(other.way.oven))
    return worth
