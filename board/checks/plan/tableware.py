"""Whether the house has what the table is laid with, and a chair for everybody. Nothing here can hurt: mind at most."""

from collections.abc import Iterator

from board.facts.tableware import counted, piece_key, several
from board.plan.load import PlanFile
from board.plan.phrases.phrase import near
from board.plan.places import Loc
from board.plan.resolve.laying import Kind, Wash, house, kinds, laid
from board.plan.resolve.seating import seated
from board.plan.snag import Snag, Weight

BORROW_CHAIRS = "Borrow chairs and raise the number, or serve every course `standing: yes`."
MORE_TABLE = "Put another table to it and raise the number, or invite fewer."


def pieces_suffice(file: PlanFile) -> list[Snag]:
    """table 1: the courses together ask for more than there are. table 2: one course alone does, or the whole meal."""
    plan = file.plan
    if plan.table is None:
        return []
    found = []
    for kind in kinds(plan):
        if kind.borrow:
            found.append(_one_course_asks_too_much(file, kind))
        elif kind.washes and not plan.table.wash_between:
            found.append(_all_ask_too_much(file, kind))
    return found


def everybody_has_a_chair(file: PlanFile) -> list[Snag]:
    """table 3: fewer chairs, or less room at the table, than guests who sit down."""
    plan, table = file.plan, file.plan.table
    if table is None or all(course.standing for course in plan.courses):
        return []
    found = []
    for key, there, mend in (
        ("chairs", table.chairs, BORROW_CHAIRS),
        ("seats at the table", table.seats_at_the_table, MORE_TABLE),
    ):
        if there is not None and there < plan.guest_count:
            one = key.replace("chairs", "chair").replace("seats", "seat")
            message = (
                f"{plan.guest_count} sit down to eat, and there {f'is 1 {one}' if there == 1 else f'are {there} {key}'}"
            )
            found.append(Snag("table 3", Weight.MIND, message, mend, file.places.of(("table", key))))
    return found


def what_is_laid_is_listed(file: PlanFile) -> list[Snag]:
    """table 4: laid by the plan's own words, and not among what the house has, so it is not counted."""
    plan = file.plan
    if plan.table is None or not plan.table.pieces:
        return []
    there, found = house(plan), {}
    for each in laid(plan):
        if not each.assumed and each.piece not in there and each.piece not in found:
            name = "the whole meal" if each.course is None else plan.courses[each.course].course
            many = counted(each.piece, each.total)
            message = f"{many} for {name}: `table` does not say how many the house has, so they are not counted"
            listed = {piece_key(known): known for known in plan.table.pieces}
            meant = near(each.piece, listed).strip()
            mend = meant or f"Add `{several(each.piece)}: {each.total}` (or how many there are) under table."
            found[each.piece] = Snag("table 4", Weight.NOTE, message, mend, file.places.of(each.loc))
    return list(found.values())


def everybody_has_a_seat(file: PlanFile) -> list[Snag]:
    """table 5: a guest with no seat, or with more than one."""
    found = []
    if file.plan.seats is None:
        return []
    for name, (guests, seats) in seated(file.plan).items():
        if guests == len(seats):
            continue
        has = f"{len(seats) or 'no'} seat{'s' if len(seats) > 1 else ''} at the table"
        message = f"{guests} go by the name {name!r}, and they have {has}" if guests > 1 else f"{name} has {has}"
        mend = "Write the name once among the seats." if guests == 1 else "Give them as many seats as they are."
        place = file.places.of(seats[-1] if len(seats) > guests else ("seats",))
        found.append(Snag("table 5", Weight.MIND, message, mend, place))
    return found


def _one_course_asks_too_much(file: PlanFile, kind: Kind) -> Snag:
    stays = dict(kind.uses).get(None, 0)
    courses = [(course, count) for course, count in kind.uses if course is not None]
    course, most = max(courses, key=lambda use: use[1], default=(None, stays))
    beside = f" beside {stays} for the whole meal" if stays and course is not None else ""
    asked = f"{counted(kind.piece, most)} are asked for by {_name(file, course)}{beside}"
    message = f"{asked}, and the house has {kind.house}"
    mend = f"Borrow {kind.borrow}, or lay something else with `laid with`."
    if kind.washes:
        washed = sum(wash.count for wash in kind.washes)
        mend = f"Borrow {kind.borrow} and wash {washed} in between, or borrow {kind.total - (kind.house or 0)}."
    return Snag("table 2", Weight.MIND, message, mend, file.places.of(_entry(file, kind), key=True))


def _all_ask_too_much(file: PlanFile, kind: Kind) -> Snag:
    names = [_name(file, course) for course, _ in kind.uses]
    asked = f"{', '.join(names[:-1])} and {names[-1]}"
    message = (
        f"{counted(kind.piece, kind.total)} are asked for by {asked}, the house has {kind.house}: "
        f"{' and '.join(_washed(file, kind.washes))}"
    )
    more = kind.total - (kind.house or 0)
    mend = f"Write `wash between: yes` under table to have it on the timetable, or borrow {more}."
    return Snag("table 1", Weight.MIND, message, mend, file.places.of(_entry(file, kind), key=True))


def _washed(file: PlanFile, washes: tuple[Wash, ...]) -> Iterator[str]:
    """`4 must be washed after Broth is cleared`; for which course, where several need some."""
    several_need = len({wash.before for wash in washes}) > 1
    for wash in washes:
        to_what = f" for {_name(file, wash.before)}" if several_need else ""
        yield f"{wash.count} must be washed{to_what} after {_name(file, wash.after)} is cleared"


def _name(file: PlanFile, course: int | None) -> str:
    return "the whole meal" if course is None else file.plan.courses[course].course


def _entry(file: PlanFile, kind: Kind) -> Loc:
    """Where the plan says how many of a kind there are."""
    names = file.plan.table.pieces if file.plan.table else {}
    return ("table", next((name for name in names if piece_key(name) == kind.piece), ""))
