"""How long work takes this cook: what the plan says, mended by what evenings showed. Pure.

A length is a product of many small delays, so its logarithm is taken as normal: twice as long is as far off as half
as long, and no length is below zero. Middle and spread of that normal are both unknown, which the normal-inverse-gamma
belief (`figures.Belief`) puts in plain sums: the plan counts as one evening about the middle (PRIOR_EVENINGS) and as
four about the spread (PRIOR_SPREAD), and each evening counts as one. What the plan says of the spread is taken to be as
likely too small as too large: so the range holds its share of evenings where the plan is right as well.

A wild evening is drawn in before it counts: no further from the middle of all (the plan twice among them) than
WILD deviations. So one evening of three times the length moves a step by about a fifth, and four calm ones beside it
leave little of that.

Where a step has few evenings it leans on its kind: the plan's middle is first moved by how much other steps of the
same kind, and all other steps, ran over or under theirs; each step counts once, and no movement at all counts as
KIND_AGAINST (COOK_AGAINST) further steps. With its n-th evening that leaning becomes an n-th of itself: a step that
always took what the plan says is not drawn away from that by others.

The same evenings in any order, at once or one by one, give the same figures.
"""

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from statistics import NormalDist

from board.learning.figures import Belief, believing, lognormal_quantile, median
from board.review.kinds import Key, Kind, kind_of
from board.review.observe import PastEvening
from board.sheet.run_sheet import Lasts

# How much plan, evenings and kind weigh against each other, and how far one wild evening may pull: ours.
PRIOR_EVENINGS = 1.0
PRIOR_SPREAD = 2.0  # alpha: half as many evenings as it counts for
WILD = 2.5
LEAST_SIGMA = 0.05  # of a logarithm; about a twentieth either way
LEAST_WILD = 0.12
SAID_NOTHING = 0.10  # a plan with one figure says nothing about its spread; common practice, no source
KIND_AGAINST, COOK_AGAINST = 2.0, 4.0
FURTHEST = 0.7  # a step's own ratio counts for its kind no further than twice or half

_NORMAL_80 = NormalDist().inv_cdf(0.9)


@dataclass(frozen=True, slots=True)
class Estimate:
    """What is believed of one length. `evenings`: those it was seen in, beside the plan; `minutes`: what it then took,
    the least first."""

    belief: Belief  # about the logarithm of minutes
    evenings: int
    minutes: tuple[float, ...] = ()

    @property
    def middle(self) -> float:
        """Minutes; as often longer as shorter."""
        return math.exp(self.belief.mu)

    @property
    def range(self) -> tuple[float, float]:
        """Minutes within which the next evening lies four times of five."""
        return math.exp(self.belief.quantile(0.1)), math.exp(self.belief.quantile(0.9))

    @property
    def lasts(self) -> Lasts:
        """As a plan says it: low and high are hardly ever passed, six deviations apart (as `odds.draw` reads them)."""
        sigma = (self.belief.quantile(0.9) - self.belief.mu) / _NORMAL_80
        share = math.exp(sigma**2 / 2) * math.sqrt(math.expm1(sigma**2))  # deviation over middle, of a lognormal
        reach = math.asinh(3 * share)
        likely = max(1, round(self.middle))
        low = max(1, min(likely, round(self.middle * math.exp(-reach))))
        return Lasts(low, likely, max(likely, round(self.middle * math.exp(reach))))


def prior(planned: Lasts, known: int = 0, lean: float = 0.0) -> Belief:
    """What the plan says of a length, in logarithms of minutes. `known`: evenings its figures were learned from
    already; `lean`: how much further up the kind of work moves it."""
    alpha = PRIOR_SPREAD + known / 2
    middle = math.log(max(1, planned.likely)) + lean
    return believing(middle, PRIOR_EVENINGS + known, alpha, sigma_of(planned))


def sigma_of(planned: Lasts) -> float:
    """The deviation of the logarithm, from low and high six deviations of minutes apart."""
    if planned.low == planned.high:
        return SAID_NOTHING
    share = (planned.high - planned.low) / 6 / max(1, planned.likely)
    # A lognormal's deviation over its middle is e^(σ²/2) · √(e^(σ²) − 1); solved for σ.
    return max(LEAST_SIGMA, math.sqrt(math.log((1 + math.sqrt(1 + 4 * share**2)) / 2)))


def planned_range(planned: Lasts) -> tuple[float, float]:
    """Minutes within which the plan's figures have the next evening four times of five."""
    middle, sigma = max(1, planned.likely), sigma_of(planned)
    return lognormal_quantile(0.1, middle, sigma), lognormal_quantile(0.9, middle, sigma)


def estimate(believed: Belief, minutes: Sequence[float]) -> Estimate:
    """After evenings of so many minutes, the wild ones drawn in."""
    logs = sorted(math.log(each) for each in minutes)
    return Estimate(believed.after(_drawn_in(believed, logs)), len(logs), tuple(sorted(minutes)))


def _drawn_in(believed: Belief, logs: Sequence[float]) -> list[float]:
    """No value further from the middle than so many deviations, of the plan's or the evenings' own."""
    if not logs:
        return []
    middle = median([believed.mu, believed.mu, *logs])
    # 1.4826: a normal's deviation over the median of distances from its middle; 1 / NormalDist().inv_cdf(0.75).
    seen = 1.4826 * median([abs(each - middle) for each in logs]) if len(logs) > 2 else 0.0
    reach = WILD * max(believed.sigma, seen, LEAST_WILD)
    return [min(max(each, middle - reach), middle + reach) for each in logs]


def learn(
    planned: Mapping[Key, Lasts], evenings: Iterable[PastEvening], known: Mapping[Key, frozenset[str]] | None = None
) -> dict[Key, Estimate]:
    """An estimate of each planned step that was seen in an evening not learned from yet.

    `known`: by step, the marks of logs its planned figures come from; such an evening weighs, and is not learned again.
    """
    minutes: dict[Key, list[float]] = {}
    ratios: dict[Key, list[float]] = {}
    weighs: dict[Key, int] = {}
    for evening in evenings:
        for step in evening.steps:
            if step.aside is not None:
                continue
            if evening.mark in (known or {}).get(step.key, ()):
                weighs[step.key] = weighs.get(step.key, 0) + 1
                continue
            minutes.setdefault(step.key, []).append(step.minutes)
            likely = planned.get(step.key, step.planned).likely
            ratios.setdefault(step.key, []).append(math.log(step.minutes / max(1, likely)))
    leans = Leanings({key: median(each) for key, each in ratios.items()})
    return {
        key: estimate(prior(lasts, weighs.get(key, 0), leans.of(key) / len(minutes[key])), minutes[key])
        for key, lasts in planned.items()
        if key in minutes
    }


class Leanings:
    """How much steps ran over (or under) their plan, in logarithms: what a step may lean on."""

    def __init__(self, ratios: Mapping[Key, float]) -> None:
        self.ratios = {key: min(max(each, -FURTHEST), FURTHEST) for key, each in ratios.items()}
        self.all = math.fsum(self.ratios.values())
        self.kinds: dict[Kind, list[float]] = {}
        for key, each in sorted(self.ratios.items()):
            self.kinds.setdefault(kind_of(key), []).append(each)

    def of(self, key: Key) -> float:
        """From the other steps of its kind and of this cook; 0 where there are none."""
        own = [self.ratios[key]] if key in self.ratios else []
        others = len(self.ratios) - len(own)
        cook = (self.all - math.fsum(own)) / (others + COOK_AGAINST)
        alike = self.kinds.get(kind_of(key), [])
        count = len(alike) - len(own)
        return (math.fsum(alike) - math.fsum(own) + KIND_AGAINST * cook) / (count + KIND_AGAINST)
