"""Who sits where, and what they must not be served, from a plan's `seats` and `guests`. Pure."""

from dataclasses import dataclass

from board.facts.tableware import piece_key
from board.plan.model.model import Plan
from board.plan.phrases.guests import Guest
from board.plan.phrases.phrase import meant_by, near
from board.plan.phrases.seats import EMPTY, Seat, is_facing
from board.plan.places import Loc
from board.plan.resolve.fault import Fault, name_key


@dataclass(frozen=True, slots=True)
class Place:
    """One chair: one of these guests sits there. Several lines can be called `others`; no guests: empty."""

    guests: tuple[Guest, ...]
    loc: Loc

    @property
    def name(self) -> str:
        return self.guests[0].name if self.guests else ""


@dataclass(frozen=True, slots=True)
class Sides:
    """The two long sides, seen from the head of the table; each runs from head to foot."""

    left: tuple[Place, ...]
    right: tuple[Place, ...]
    facing: bool  # written as two sides; else as names around the table


def sides(plan: Plan) -> Sides | None:
    """The table with its guests; None if the plan has no seats, or names somebody unknown.

    Names around the table start at the head of the right side and come back up the left.
    """
    if plan.seats is None or seat_problems(plan):
        return None
    rows = [[place for n, seat in enumerate(side.root) for place in _places(plan, seat, _loc(plan, s, n))]
            for s, side in enumerate(plan.seats)]  # fmt: skip
    if is_facing(plan.seats):
        return Sides(tuple(rows[0]), tuple(rows[1]), facing=True)
    around = [place for row in rows for place in row]
    half = (len(around) + 1) // 2
    return Sides(tuple(reversed(around[half:])), tuple(around[:half]), facing=False)


def seat_problems(plan: Plan) -> list[Fault]:
    """plan 8 for each seat name that is no guest's."""
    found = []
    for s, side in enumerate(plan.seats or []):
        for n, seat in enumerate(side.root):
            if not _is_empty(seat) and not guests_called(plan, seat.name):
                known = [guest.name for guest in plan.guests]
                message = f"{seat.name!r} is nobody among the guests.{near(seat.name, known)}"
                mend = "Name one of the `guests`, `2 others` for some of those without a name, or `empty`."
                found.append(Fault("plan 8", message, mend, _loc(plan, s, n), (seat.name, meant_by(seat.name, known))))
    return found


def seated(plan: Plan) -> dict[str, tuple[int, list[Loc]]]:
    """For each guest name: how many people have it, and the paths of their seats."""
    found: dict[str, tuple[int, list[Loc]]] = {
        guest.name: (sum(each.count for each in guests_called(plan, guest.name)), []) for guest in plan.guests
    }
    for s, side in enumerate(plan.seats or []):
        for n, seat in enumerate(side.root):
            for guest in () if _is_empty(seat) else guests_called(plan, seat.name)[:1]:
                found[guest.name][1].extend([_loc(plan, s, n)] * seat.count)
    return found


def guests_called(plan: Plan, name: str) -> tuple[Guest, ...]:
    """The guests of that name; for unnamed ones, `other`, `others`, `guest` and `guests` are the same."""
    folded = name_key(name)
    exact = tuple(guest for guest in plan.guests if name_key(guest.name) == folded)
    unnamed = (guest for guest in plan.guests if guest.count > 1 or guest.name in ("others", "guests"))
    return exact or tuple(guest for guest in unnamed if piece_key(guest.name) == piece_key(name))


def _is_empty(seat: Seat) -> bool:
    return name_key(seat.name) in EMPTY


def _places(plan: Plan, seat: Seat, loc: Loc) -> list[Place]:
    return [Place(() if _is_empty(seat) else guests_called(plan, seat.name), loc)] * seat.count


def _loc(plan: Plan, side: int, number: int) -> Loc:
    return ("seats", side, number) if is_facing(plan.seats or []) else ("seats", side)
