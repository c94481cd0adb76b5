"""Who may eat what: every guest against every dish, with the reasons. Planning help only: read every label, ask your
guest; the label, local law and licensed practice decide."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from board.checks.allergens.dietary_needs import Need, is_severe, needs_of
from board.checks.allergens.ingredient_facts import BY_THE_TABLE, Stuff, host_foods, stuff_of
from board.checks.allergens.undercooked import made_here_of_egg, undercooked
from board.checks.allergens.verdict import Reason, Verdict, judged
from board.checks.allergens.words_of_a_dish import Said, beside_its_ingredients, said_of
from board.checks.raw_food import DishWork, dishes
from board.facts.origins import Origin
from board.facts.rule_set import RuleSet
from board.facts.rule_sets import rule_set
from board.plan.load import PlanFile
from board.plan.phrases.guests import Guest
from board.plan.places import Loc
from board.plan.resolve.going_in import all_lines
from board.plan.resolve.served import served


@dataclass(frozen=True)
class Answer:
    """Whether one guest may eat one dish, why, and whether they are served it."""

    verdict: Verdict
    reasons: tuple[Reason, ...]
    served: bool


@dataclass(frozen=True)
class DishRow:
    """One dish of the plan that is eaten, in the order of the plan. `listed`: whether its ingredients are written."""

    course: str
    dish: str
    loc: Loc
    listed: bool


@dataclass(frozen=True)
class Matrix:
    """`answers[guest, dish]` by their numbers in `guests` and `dishes`."""

    guests: tuple[Guest, ...]
    needs: tuple[tuple[Need, ...], ...]
    dishes: tuple[DishRow, ...]
    answers: Mapping[tuple[int, int], Answer]

    def left_hungry(self) -> dict[str, list[str]]:
        """The courses in which a guest may eat nothing that is served to them, by the guest's name."""
        found: dict[str, list[str]] = {}
        for g in self.most_harmed_first():
            for course in dict.fromkeys(row.course for row in self.dishes):
                here = [self.answers[g, d] for d, row in enumerate(self.dishes) if row.course == course]
                if not any(each.served and each.verdict is not Verdict.NOT_SAFE for each in here):
                    found.setdefault(self.guests[g].name, []).append(course)
        return found

    def most_harmed_first(self) -> list[int]:
        """The numbers of the guests in the order of the plan, whose allergy can be anaphylaxis before all others."""
        return sorted(range(len(self.guests)), key=lambda g: not is_severe(self.needs[g]))


def matrix(file: PlanFile) -> Matrix:
    """Every guest against every dish. Raises nothing; anything unknown is to be asked about."""
    plan = file.plan
    own, rules = host_foods(plan), rule_set(plan.rules)
    needs = tuple(needs_of(guest) for guest in plan.guests)
    works = {work.loc: work for work in dishes(file)}
    rows: list[DishRow] = []
    answers: dict[tuple[int, int], Answer] = {}
    for c, course in enumerate(plan.courses):
        for d, (dish, eaters) in enumerate(zip(course.dishes, served(plan, course), strict=True)):
            loc: Loc = ("courses", c, "dishes", d)
            row = DishRow(course.course, dish.dish, loc, "ingredients" in dish.model_fields_set)
            lines = all_lines(dish)
            if row.listed and not lines:
                continue
            stuff = [stuff_of(each, (*loc, *at), own) for at, each in lines]
            said = said_of(plan, dish, loc, stuff)
            for g in range(len(plan.guests)):
                reasons = tuple(r for need in needs[g] for r in _reasons(works[loc], row, stuff, said, need, rules))
                verdict = max((reason.verdict for reason in reasons), default=Verdict.SAFE)
                answers[g, len(rows)] = Answer(verdict, reasons, g in eaters)
            rows.append(row)
    return Matrix(tuple(plan.guests), needs, tuple(rows), answers)


def _reasons(
    work: DishWork, row: DishRow, stuff: list[Stuff], said: tuple[Said, ...], need: Need, rules: RuleSet
) -> Iterator[Reason]:
    if not row.listed:
        why = "its ingredients are not written down"
        yield Reason(Verdict.ASK, need, "", why, "nothing is known of it", row.loc, unknown=True)
    if not need.known:
        why = f"the program knows no food called {need.words.removeprefix('no ')!r}"
        why = f"{need.told} is not understood" if need.unread else why
        yield Reason(Verdict.ASK, need, "", why, need.source, row.loc)
        return
    for each in stuff:
        yield from judged(each, need)
    if need.diet is not None and need.diet.cooked:
        yield from undercooked(work, stuff, need, rules)
        yield from made_here_of_egg(work, said, stuff, need)
    yield from beside_its_ingredients(said, stuff, need)
    if need.diet is not None and need.diet.meat_with_dairy:
        yield from _meat_with_dairy(row, stuff, need)


def _meat_with_dairy(row: DishRow, stuff: list[Stuff], need: Need) -> Iterator[Reason]:
    """Meat and dairy in one dish; for certain, or perhaps."""
    for sure in (True, False):
        meat, dairy = _having(stuff, Origin.MEAT, sure), _having(stuff, Origin.DAIRY, sure)
        if meat and dairy:
            verdict = Verdict.NOT_SAFE if sure else Verdict.ASK
            why = f"{'holds' if sure else 'may hold'} dairy in one dish with {meat[0].food}, {BY_THE_TABLE}"
            yield Reason(verdict, need, dairy[0].food, why, need.source, dairy[0].loc)
            return


def _having(stuff: list[Stuff], origin: Origin, sure: bool) -> list[Stuff]:
    return [each for each in stuff if origin in each.holds or (not sure and origin in each.may_hold)]
