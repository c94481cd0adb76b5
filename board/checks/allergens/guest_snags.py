"""What a guest is served but must not eat, does not eat, or must be asked about. Planning help only: read every label,
ask your guest; the label, local law and licensed practice decide."""

from collections import defaultdict
from collections.abc import Iterable

from board.checks.allergens.dietary_needs import is_severe, told_needs
from board.checks.allergens.guests_eat import Answer, DishRow, Matrix
from board.checks.allergens.verdict import Reason, Verdict
from board.plan.load import PlanFile
from board.plan.snag import About, Snag, Weight

_READ = "Read the label and ask your guest"


def guests_can_eat_what_they_are_served(file: PlanFile, found: Matrix) -> list[Snag]:
    """guests 1: an allergy met, gluten for a coeliac, or what harms the old, very young, pregnant or ill: stop. guests
    8: a diet met. guests 2, guests 9: something to ask about. guests 3: unknown foods in a dish that matters. guests 4:
    a guest's word that names no food. guests 5: a dish without its ingredients."""
    snags = _words_without_food(file, found)
    for d, row in enumerate(found.dishes):
        answers = {g: found.answers[g, d] for g in found.most_harmed_first() if found.answers[g, d].served}
        for g, answer in answers.items():
            guest = found.guests[g].name
            met = _met(file, guest, row, answer)
            snags += met
            if not any(snag.safety for snag in met):  # what could hurt is told beside what is only not eaten
                snags += _to_ask(file, guest, row, answer, safety=bool(met))
        snags += _unknown(file, found, row, answers)
    return snags


def _met(file: PlanFile, guest: str, row: DishRow, answer: Answer) -> list[Snag]:
    """What is not safe: one snag for what can hurt, one for diets."""
    snags = []
    for safety in (True, False):
        reasons = [r for r in answer.reasons if r.verdict is Verdict.NOT_SAFE and r.need.safety is safety]
        if reasons:
            code, weight = ("guests 1", Weight.STOP) if safety else ("guests 8", Weight.MIND)
            what = "is not safe for" if safety else "is nothing for"
            message = f"{row.dish} {what} {guest} ({_needs(reasons)}): {_joined(reasons)}"
            special = [reason.mend for reason in reasons if reason.mend]
            mend = " ".join(dict.fromkeys([*special, _ANOTHER]))
            place, source, severe = file.places.of(reasons[0].loc), _sources(reasons), _severe(reasons)
            about = _about(row, [guest], (reason.ingredient for reason in reasons))
            snags.append(
                Snag(code, weight, message, mend, place, safety=safety, source=source, severe=severe, about=about)
            )
    return snags


_ANOTHER = (
    "Take another ingredient; make another dish for them, `only for:` their name and `instead of:` this dish; or write "
    "`not for:` their name."
)


def _to_ask(file: PlanFile, guest: str, row: DishRow, answer: Answer, *, safety: bool) -> list[Snag]:
    """`safety`: only what could hurt."""
    asked = [r for r in answer.reasons if r.verdict is Verdict.ASK and not r.unknown and r.need.known]
    reasons = [r for r in asked if r.need.safety or not safety]
    if not reasons:
        return []
    code = "guests 2" if any(reason.need.safety for reason in reasons) else "guests 9"
    message = f"{row.dish}: ask about it for {guest} ({_needs(reasons)}): {_joined(reasons)}"
    mend = " ".join(dict.fromkeys(reason.mend or f"{_READ}." for reason in reasons))
    place, source = file.places.of(reasons[0].loc), _sources(reasons)
    about = _about(row, [guest], (reason.ingredient for reason in reasons))
    return [Snag(code, Weight.ASK, message, mend, place, source=source, severe=_severe(reasons), about=about)]


def _unknown(file: PlanFile, found: Matrix, row: DishRow, answers: dict[int, Answer]) -> list[Snag]:
    """One snag a dish, for all guests it matters to."""
    whom: dict[str, None] = {}
    foods: dict[str, Reason] = {}
    severe = False
    for g, answer in answers.items():
        for reason in answer.reasons:
            if reason.unknown:
                whom[found.guests[g].name] = None
                foods.setdefault(reason.ingredient, reason)
                severe = severe or reason.need.severe
    if not foods:
        return []
    place = file.places.of(next(iter(foods.values())).loc)
    guests = _and(whom)
    if not row.listed:
        message = f"{row.dish} has no ingredients written down, so nobody knows whether {guests} may eat it"
        mend = "Write its ingredients, or `ingredients: nothing` where nobody eats of it."
        return [Snag("guests 5", Weight.ASK, message, mend, place, severe=severe, about=_about(row, whom))]
    names = _and(repr(food) for food in foods)
    message = f"{row.dish}: {names} {'is' if len(foods) == 1 else 'are'} not in the table of foods; ask for {guests}"
    first = next(iter(foods))
    mend = f"{_READ}; then write it under `foods:`, for example `{first}: mustard and celery` or `{first}: nothing`."
    return [Snag("guests 3", Weight.ASK, message, mend, place, severe=severe, about=_about(row, whom, foods))]


def _words_without_food(file: PlanFile, found: Matrix) -> list[Snag]:
    snags = []
    for g, needs in enumerate(found.needs):
        for need in needs:
            if need.unread:
                name = found.guests[g].name
                message = f"what must be left out for {name}: {need.told}? It is not understood"
                mend = f"Ask; then write what it means, for example {name}, no nuts; every dish is to be asked about."
                snags.append(Snag("guests 4", Weight.ASK, message, mend, file.places.of(("guests", g))))
            elif not need.known:
                word = need.words.removeprefix("no ")
                message = f"{word!r}, which {found.guests[g].name} must not have, is no food or allergen known here"
                mend = (
                    "Every dish is to be asked about; a word such as tree nuts, dairy or one food's name is looked for."
                )
                place = file.places.of(("guests", g))
                snags.append(Snag("guests 4", Weight.ASK, message, mend, place, severe=need.severe))
    return snags


def _about(row: DishRow, guests: Iterable[str], foods: Iterable[str] = ()) -> About:
    return About(course=row.course, dish=row.dish, guests=tuple(guests), foods=tuple(dict.fromkeys(foods)))


def _needs(reasons: list[Reason]) -> str:
    return ", ".join(told_needs(reason.need for reason in reasons))


def _severe(reasons: list[Reason]) -> bool:
    return is_severe(reason.need for reason in reasons)


def _joined(reasons: list[Reason]) -> str:
    """Reasons by ingredient."""
    by_food: dict[str, list[str]] = defaultdict(list)
    for reason in reasons:
        if reason.why not in by_food[reason.ingredient]:
            by_food[reason.ingredient].append(reason.why)
    return "; ".join(": ".join(filter(None, (food, ", ".join(whys)))) for food, whys in by_food.items())


def _sources(reasons: list[Reason]) -> str:
    """The rules and lists they stand on, each once."""
    return "; ".join(dict.fromkeys(reason.source for reason in reasons))


def _and(words: Iterable[str]) -> str:
    listed = list(words)
    return listed[0] if len(listed) == 1 else f"{', '.join(listed[:-1])} and {listed[-1]}"
