"""What a plan's own times make stand longer than is usual. The figures are common practice, no source, unless
`facts.keeping` names one."""

from collections.abc import Callable

import pytest

from board.checks.plan.keeping import no_time_is_longer_than_usual
from board.facts import keeping as facts
from board.plan.load import PlanFile
from board.plan.snag import Weight
from tests.plan.resolve.test_keeping import plan_of

PlanFrom = Callable[[str], PlanFile]

# A dish, its foods, its steps; what is asked, and what the mend begins with.
ASKED = {
    "an ice, scooped before its sauce is made": (
        "Fig gelato with honey sauce", "1 l fig gelato, 200 g honey",
        "scoop the gelato ~ 5 min; simmer the honey sauce @ stovetop ~ 30 min",
        "scoop the gelato: your times make it stand 30 min; usual is 5 min out of the freezer, for ice cream and what "
        "it is churned from",
        "Write `after: nothing` at simmer the honey sauce",
    ),
    "fried hours before": (
        "Calamari", "1 kg squid", "fry the squid @ stovetop ~ 10 min ~ not after: '17:00'",
        "fry the squid: your times make it stand 3 h; usual is 16 min off the heat, for fried food", "Make it later",
    ),
}  # fmt: skip
QUIET = {
    "ready while the sauce is warmed": (
        "Fig gelato with honey sauce", "1 l fig gelato, 200 g honey",
        "scoop the gelato ~ 5 min; simmer the honey sauce @ stovetop ~ 4 min",
    ),
    "the order is free": (
        "Fig gelato with honey sauce", "1 l fig gelato, 200 g honey",
        "scoop the gelato ~ 5 min; simmer the honey sauce @ stovetop ~ 30 min ~ after: nothing",
    ),
    "the host says how long it keeps": (
        "Calamari", "1 kg squid", "fry the squid @ stovetop ~ 10 min ~ {not after: '17:00', keeps: 4 h in the fridge}",
    ),
    "what keeps so long": ("Trifle", "300 ml cream, 4 eggs", "layer the trifle ~ 10 min ~ not after: '12:00'"),
    "nothing usual is known": ("Zibbles", "1 kg semolina", "shape the zibbles ~ 10 min ~ not after: '12:00'"),
}  # fmt: skip


@pytest.mark.parametrize("name", ASKED)
def test_keeping_3__what_stands_longer_by_the_plans_times_than_is_usual_is_asked(
    plan_from: PlanFrom, name: str
) -> None:
    dish, foods, steps, message, mend = ASKED[name]

    [snag] = no_time_is_longer_than_usual(plan_from(plan_of(dish, foods, steps)))

    assert (snag.code, snag.weight, snag.message) == ("keeping 3", Weight.ASK, message)
    assert snag.mend.startswith(mend)
    assert snag.source in {facts.PRACTICE, facts.FSIS_FREEZER}


@pytest.mark.parametrize("name", QUIET)
def test_keeping_3__nothing_is_asked_of_what_is_usual_or_said(plan_from: PlanFrom, name: str) -> None:
    dish, foods, steps = QUIET[name]
    text = plan_of(dish, foods, steps).replace("{not after: '17:00', keeps", "not after: '17:00'\n            keeps")

    assert no_time_is_longer_than_usual(plan_from(text.replace("the fridge}", "the fridge"))) == []
