"""Whether what a dish makes is enough for those who are served it, by the portion the plan gives."""

from board.plan.load import PlanFile
from board.plan.phrases.portions import Portion
from board.plan.resolve.amounts import EACH, Amount, Measure, standard_of
from board.plan.resolve.scaling import factor_of
from board.plan.resolve.served import count_of, served
from board.plan.snag import Snag, Weight
from board.sheet.shown import amount_words

FAR_TOO_MUCH = 1.5  # times what is asked for; ours


def portions_suffice(file: PlanFile) -> list[Snag]:
    """guests 12: a dish makes less than the portions of all who are served it; far more is a note. Asked where the two
    do not compare. What it makes grows with its amounts."""
    plan, found = file.plan, []
    for c, course in enumerate(plan.courses):
        for d, (dish, guests) in enumerate(zip(course.dishes, served(plan, course), strict=True)):
            if dish.makes is None or dish.a_guest is None:
                continue
            eaters, factor = count_of(plan, guests), factor_of(plan, course, dish)
            makes, each = (_amount(portion, plan.units) for portion in (dish.makes, dish.a_guest))
            shown = [amount_words(amount, plan.units, {portion.unit}) for amount, portion in (
                (_times(makes, factor), dish.makes), (each, dish.a_guest), (_times(each, eaters), dish.a_guest)
            )]  # fmt: skip
            told = f"{dish.dish} makes {shown[0]}; {eaters} are served it, {shown[1]} each: {shown[2]}"
            place = file.places.of(("courses", c, "dishes", d, "makes"))
            if makes.kind != each.kind:
                message, mend = f"{told}. The two are not compared", "Write `makes` and `a guest` in one unit."
                found.append(Snag("guests 12", Weight.ASK, message, mend, place))
            elif _low(makes) * factor < _low(each) * eaters * (1 - 1e-9):
                mend = "Make more of it (raise the amounts with `makes`, or `scale: linear`), or give each less."
                found.append(Snag("guests 12", Weight.MIND, told, mend, place))
            elif _low(makes) * factor > _high(each) * eaters * FAR_TOO_MUCH:
                mend = "Make less of it, or plan what becomes of the rest: `leaves:` at a step."
                found.append(Snag("guests 12", Weight.NOTE, told, mend, place))
    return found


def _amount(portion: Portion, units: str | None) -> Amount:
    """In grams, millilitres, pieces, or what is counted."""
    measure = Measure("", standard_of(units), by_weight=False, by_piece=False)
    return measure.amount(portion.low, portion.high, portion.unit or EACH)


def _times(amount: Amount, factor: float) -> Amount:
    return Amount(amount.kind, _low(amount) * factor, _high(amount) * factor)


def _low(amount: Amount) -> float:
    return amount.low or 0.0


def _high(amount: Amount) -> float:
    return amount.high or 0.0
