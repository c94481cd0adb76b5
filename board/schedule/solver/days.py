"""Days that a body can do, as sums to minimise: work without a pause, work in the last hours, work crowded into a day.

All of it is about what comes before the guests: from then on the courses say when hands rest.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from board.facts.rests import FULL_DAY, LAST_HOURS, LIGHT_DAY, LONG_DAY, LONGEST_STRETCH, PAUSE, SUPPER
from board.schedule.intervals import Window
from board.schedule.problem import Hand
from board.schedule.solver.library import cp_model
from board.schedule.solver.variables import JobVars, Variables

# Prices of a minute of work ahead: ours. For each day that it is early, where its result keeps for long and where not;
# and on top, on a day that is more than light, full or long already.
EARLY, EARLY_AND_SHORT = 2, 4
KEEPS_FOR_LONG = 2 * 24 * 60
CROWDED = {LIGHT_DAY: 3, FULL_DAY: 5, LONG_DAY: 6}


@dataclass(frozen=True, slots=True)
class _Piece:
    """Hands on a job for a while, if it is done `how`; `end`: from the job's start."""

    job: JobVars
    end: int
    minutes: int
    price: int  # of each minute and day that it is early
    how: cp_model.IntVar
    is_work: bool  # and no look at what cooks, nor a trip to the shops: neither breaks a pause


class Days:
    """Builds the sums over the variables of a problem."""

    def __init__(self, variables: Variables) -> None:
        self.v = variables
        self.model = variables.model
        self.problem = variables.problem
        self.ahead = self.problem.arrives - LAST_HOURS  # the moment by which work is best done
        self.ends_after: dict[tuple[int, int, int, int], cp_model.IntVar] = {}
        self.pieces = [piece for job in variables.jobs if job.job.fixed is None for piece in self._pieces(job)]

    def _pieces(self, job: JobVars) -> Iterator[_Piece]:
        for way, chosen in zip(job.job.ways, job.ways, strict=True):
            limit = way.hold.limit if way.hold is not None else None
            price = EARLY if limit is None or limit >= KEEPS_FOR_LONG else EARLY_AND_SHORT
            for part in way.parts:
                is_work = part.kind != "look-in" and not job.job.is_trip
                yield _Piece(job, part.offset + part.length, part.length, price, chosen, is_work)

    def in_the_last_hours(self) -> cp_model.LinearExprT:
        """Minutes of work, whoever does it, that end less than so long before the guests come, or later."""
        return cp_model.LinearExpr.sum([self._ends_after(each, self.ahead) * each.minutes for each in self.pieces])

    def _ends_after(self, piece: _Piece, moment: int) -> cp_model.IntVar:
        """Whether a piece is done, and ends after a moment."""
        key = (piece.job.start.index, piece.how.index, piece.end, moment)
        if key not in self.ends_after:
            after = self.model.new_bool_var(f"after {moment} {piece.job.job.id}")
            self.model.add(piece.job.start <= moment - piece.end).only_enforce_if(~after, piece.how)
            self.model.add(piece.job.start > moment - piece.end).only_enforce_if(after)
            self.model.add_implication(after, piece.how)
            self.ends_after[key] = after
        return self.ends_after[key]

    # --- pauses
    def without_pause(self) -> cp_model.LinearExprT:
        """Minutes by which stretches of work last longer than a body works without a pause, and those of suppers on
        the days before that there is no time for."""
        terms: list[cp_model.LinearExprT] = []
        for number, hand in enumerate(self.problem.hands):
            work = self.v.at_work.get(number, [])
            pauses: list[cp_model.IntervalVar] = []
            for stretch in self._stretches(hand):
                over, between = self._pauses(stretch)
                terms += over
                pauses += between
            if pauses:
                self.model.add_no_overlap([*work, *pauses])
            for day in self.problem.days[:-1]:
                if _is_taken(hand, day.supper):
                    terms.append((1 - self._supper(number, day.supper)) * SUPPER)
        without = cp_model.LinearExpr.sum(terms)
        self.model.add(without >= cp_model.LinearExpr.sum([*self._too_long_alone()]))
        return without

    def _too_long_alone(self) -> Iterator[cp_model.IntVar]:
        """Minutes by which one piece of work alone lasts too long: what the pauses come to anyway, known at once."""
        for piece in self.pieces:
            more = piece.minutes - LONGEST_STRETCH
            if more > 0 and piece.is_work:
                before_guests = piece.how - self._ends_after(piece, self.problem.arrives)
                least = self.model.new_int_var(0, more, "too long alone")
                self.model.add(least >= (before_guests - piece.job.over) * more)
                yield least

    def _stretches(self, hand: Hand) -> list[Window]:
        """A hand's hours before the guests come, as far as they are too long to be worked through."""
        found: list[Window] = []
        for start, end in hand.free:
            end = min(end, self.problem.arrives)
            start = max(start, self.problem.opens)
            if found and start - found[-1][1] < PAUSE:
                found[-1] = (found[-1][0], end)
            elif start < end:
                found.append((start, end))
        return [(start, end) for start, end in found if end - start > LONGEST_STRETCH]

    def _pauses(self, stretch: Window) -> tuple[list[cp_model.LinearExprT], list[cp_model.IntervalVar]]:
        """As many pauses as may be wanted in so long a stretch, each within two hours of the one before or at a price;
        those that are not wanted stand at its end."""
        first, last = stretch
        price: list[cp_model.LinearExprT] = []
        intervals: list[cp_model.IntervalVar] = []
        shown: list[cp_model.IntVar] = []
        before: cp_model.LinearExpr | int = first
        for _ in range(2 * ((last - first) // (LONGEST_STRETCH + PAUSE)) + 1):
            begin = self.model.new_int_var(first - PAUSE, last, "pause")
            is_one = self.model.new_bool_var("is a pause")
            self.model.add(begin == last).only_enforce_if(~is_one)
            over = self.model.new_int_var(0, last - first, "without a pause")
            self.model.add(over >= begin - before - LONGEST_STRETCH)
            self.model.add(begin >= before).only_enforce_if(is_one)
            if shown:
                self.model.add_implication(is_one, shown[-1])
            shown.append(is_one)
            intervals.append(self.model.new_optional_fixed_size_interval_var(begin, PAUSE, is_one, "pause"))
            price.append(over)
            before = begin + PAUSE
        over = self.model.new_int_var(0, last - first, "without a pause")
        self.model.add(over >= last - before - LONGEST_STRETCH)
        return [*price, over], intervals

    def _supper(self, hand: int, when: Window) -> cp_model.IntVar:
        """Whether there is time to eat. Piece by piece: as an interval, presolve (OR-Tools 9.15) loses solutions."""
        begin = self.model.new_int_var(when[0], when[1] - SUPPER, "supper")
        eaten = self.model.new_bool_var("is eaten")
        for piece in self.pieces:
            who = piece.job.who.get(hand)
            if who is not None and piece.is_work:
                later = self.model.new_bool_var("later")
                over = piece.job.start + piece.end
                self.model.add(over - piece.minutes >= begin + SUPPER).only_enforce_if(later)
                self.model.add(over <= begin).only_enforce_if(~later, eaten, who, piece.how)
        return eaten

    # --- work spread over days
    def crowded(self) -> cp_model.LinearExprT:
        """Work done before the last hours, at its price: a minute is dearer the more days before the dinner, dearer
        still where what it makes keeps less long, and dearer on a day with much to do for those who work then."""
        edges = [*(day.begins for day in self.problem.days), self.ahead]
        terms: list[cp_model.LinearExprT] = []
        for days_before, (begin, end) in zip(reversed(range(len(edges) - 1)), pairwise(edges), strict=True):
            load: list[cp_model.LinearExprT] = []
            for piece in self.pieces:
                first = begin == edges[0]
                that_day = (piece.how if first else self._ends_after(piece, begin)) - self._ends_after(piece, end)
                load.append(that_day * piece.minutes)
                terms.append(that_day * (piece.minutes * piece.price * days_before))
            hands = sum(any(a < end and begin < b for a, b in hand.free) for hand in self.problem.hands)
            for minutes, price in CROWDED.items():
                over = self.model.new_int_var(0, self.problem.horizon, "crowded")
                self.model.add(over >= cp_model.LinearExpr.sum(load) - minutes * max(1, hands))
                terms.append(over * price)
        return cp_model.LinearExpr.sum(terms)


def _is_taken(hand: Hand, supper: Window) -> bool:
    """Whether a hand's hours leave no time to eat between."""
    begin = supper[0]
    for start, end in hand.free:
        if end > begin and start - begin < SUPPER:
            begin = max(begin, end)
    return supper[1] - begin < SUPPER
