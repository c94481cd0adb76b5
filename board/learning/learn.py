"""How long work takes this cook: the plan's figures, corrected by what evenings showed. Pure; minutes.

A length is a product of many small delays, so its logarithm is taken as normal: twice as long is as far off as half as
long, and no length is below zero. Both mean and spread of that normal are unknown; the normal-inverse-gamma belief
(`figures.Belief`) updates them by simple sums. The plan counts for the mean by how far plans are off (PLAN_OFF) against
how much evenings vary, so that a length the plan has wrong does not pass for one that varies; for the spread it counts
as four evenings (PRIOR_SPREAD). Each evening counts as one. The plan's spread is taken to be as likely too small as too
large, so the range holds its share of evenings if the plan is right, too.

An outlier is pulled in before it counts: to at most WILD deviations from the median of all values (the plan twice among
them). So one evening of three times the length moves a step by less than a third, and four calm ones beside it leave
little of that.

A step with few evenings leans on its kind: the plan's mean is first moved by how much other steps of the same kind, and
all other steps, ran over or under theirs. Each step counts once, and no movement at all counts as KIND_AGAINST
(COOK_AGAINST) further steps. After n evenings, the leaning is one n-th of itself: a step that always takes what the
plan says is not drawn away by others.

The same evenings in any order, at once or one by one, give the same figures.
"""

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from statistics import NormalDist

from board.learning.figures import Belief, believing, lognormal_quantile, median, t_quantile
from board.review.kinds import Key, Kind, kind_of
from board.review.observe import PastEvening
from board.sheet.run_sheet import Lasts

# The weights of plan, evenings and kind against each other, and how far an outlier may pull: ours.
PLAN_OFF = 0.3  # of a logarithm: how far a plan's figures are usually off; ours
MOST_PRIOR = 1.0  # the most evenings the plan counts for
PRIOR_SPREAD = 2.0  # alpha: half the number of evenings it counts for
WILD = 2.5
SURE = 0.975  # how sure a change must be before it is offered
LEAST_SIGMA = 0.05  # of a logarithm; about a twentieth either way
LEAST_WILD = 0.12
SAID_NOTHING = 0.10  # a plan with one figure says nothing about its spread; common practice, no source
KIND_AGAINST, COOK_AGAINST = 2.0, 4.0
FURTHEST = 0.7  # a step's ratio counts for its kind within half and twice

_NORMAL_SURE = NormalDist().inv_cdf(SURE)
_NORMAL_80 = NormalDist().inv_cdf(0.9)


@dataclass(frozen=True, slots=True)
class Estimate:
    """The belief about one length. `evenings`: how many it was seen in, besides the plan; `minutes`: what it took then,
    the smallest first."""

    belief: Belief  # about the logarithm of minutes
    evenings: int
    minutes: tuple[float, ...] = ()
    before: Belief | None = None  # by the plan alone; None where it was not asked for

    @staticmethod
    def value(minutes: float) -> float:
        """Minutes as the belief counts them."""
        return math.log(max(minutes, 0.01))

    @staticmethod
    def minutes_of(value: float) -> float:
        return math.exp(value)

    @property
    def surprises(self) -> bool:
        """Whether evenings say that what the plan says is wrong: one by itself if it lies where the plan's own spread
        has one in twenty; several if their mean does, as far as it is known."""
        if self.before is None:
            return True
        if len(self.minutes) == 1:
            seen, told = self.value(self.minutes[0]), self.before
            return abs(seen - told.mu) > told.sigma * _NORMAL_SURE
        return abs(self.belief.mu - self.before.mu) > self.belief.mean_scale * t_quantile(SURE, self.belief.degrees)

    @property
    def spreads(self) -> bool:
        """Whether the deviation is another than the plan's, as far as so many evenings tell."""
        if self.before is None or len(self.minutes) < 2:
            return self.before is None
        # A deviation's logarithm has a deviation of about 1/√(2ν); common statistics, no source.
        return abs(math.log(self.belief.sigma / self.before.sigma)) > _NORMAL_SURE / math.sqrt(2 * self.belief.degrees)

    @property
    def middle(self) -> float:
        """Minutes; longer as often as shorter."""
        return self.minutes_of(self.belief.mu)

    @property
    def range(self) -> tuple[float, float]:
        """Minutes that hold the next evening four times in five."""
        return self.minutes_of(self.belief.quantile(0.1)), self.minutes_of(self.belief.quantile(0.9))

    @property
    def lasts(self) -> Lasts:
        """As a plan gives it: low and high are hardly ever passed, six deviations apart (as `odds.draw` reads them)."""
        sigma = (self.belief.quantile(0.9) - self.belief.mu) / _NORMAL_80
        share = math.exp(sigma**2 / 2) * math.sqrt(math.expm1(sigma**2))  # deviation over median, of a lognormal
        reach = math.asinh(3 * share)
        likely = max(1, round(self.middle))
        low = max(1, min(likely, round(self.middle * math.exp(-reach))))
        return Lasts(low, likely, max(likely, round(self.middle * math.exp(reach))))


def prior(planned: Lasts, known: int = 0, lean: float = 0.0) -> Belief:
    """The plan's figures as a belief about the logarithm of minutes. `known`: evenings its figures already come from;
    `lean`: how much higher the kind of work moves it."""
    middle, sigma = math.log(max(1, planned.likely)) + lean, sigma_of(planned)
    return believing(middle, weight(sigma) + known, PRIOR_SPREAD + known / 2, sigma)


def weight(sigma: float, off: float = PLAN_OFF) -> float:
    """How many evenings a plan's figure counts for, if evenings vary by this deviation and plans are off by `off`."""
    return min(MOST_PRIOR, (sigma / off) ** 2)


def sigma_of(planned: Lasts) -> float:
    """The deviation of the logarithm, if low and high lie six deviations of minutes apart."""
    if planned.low == planned.high:
        return SAID_NOTHING
    share = (planned.high - planned.low) / 6 / max(1, planned.likely)
    # A lognormal's deviation over its median is e^(σ²/2) · √(e^(σ²) − 1); solved for σ.
    return max(LEAST_SIGMA, math.sqrt(math.log((1 + math.sqrt(1 + 4 * share**2)) / 2)))


def planned_range(planned: Lasts) -> tuple[float, float]:
    """Minutes that, by the plan's figures, hold the next evening four times in five."""
    middle, sigma = max(1, planned.likely), sigma_of(planned)
    return lognormal_quantile(0.1, middle, sigma), lognormal_quantile(0.9, middle, sigma)


class Lateness(Estimate):
    """The same of a moment: minutes after the plan's, counted as they are."""

    __slots__ = ()

    @staticmethod
    def value(minutes: float) -> float:
        return minutes

    @staticmethod
    def minutes_of(value: float) -> float:
        return value


def estimate(believed: Belief, minutes: Sequence[float], kind: type[Estimate] = Estimate) -> Estimate:
    """The estimate after evenings of these minutes, outliers pulled in."""
    values = sorted(map(kind.value, minutes))
    return kind(believed.after(_drawn_in(believed, values)), len(values), tuple(sorted(minutes)), believed)


def _drawn_in(believed: Belief, values: Sequence[float]) -> list[float]:
    """No value further from the middle than WILD deviations, of the plan's or the evenings' own."""
    if not values:
        return []
    middle = median([believed.mu, believed.mu, *values])
    # 1.4826: a normal's deviation over the median of distances from its middle; 1 / NormalDist().inv_cdf(0.75).
    seen = 1.4826 * median([abs(each - middle) for each in values]) if len(values) > 2 else 0.0
    reach = WILD * max(believed.sigma, seen, LEAST_WILD)
    return [min(max(each, middle - reach), middle + reach) for each in values]


def learn(
    planned: Mapping[Key, Lasts], evenings: Iterable[PastEvening], known: Mapping[Key, frozenset[str]] | None = None
) -> dict[Key, Estimate]:
    """An estimate of each planned step seen in an evening not yet learned from.

    `known`: by step, marks of the logs its planned figures come from; they add weight but are not learned again.
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
    """How far steps ran over (or under) their plan, in logarithms: what a step may lean on."""

    def __init__(self, ratios: Mapping[Key, float]) -> None:
        self.ratios = {key: min(max(each, -FURTHEST), FURTHEST) for key, each in ratios.items()}
        self.all = math.fsum(self.ratios.values())
        self.kinds: dict[Kind, list[float]] = {}
        for key, each in sorted(self.ratios.items()):
            self.kinds.setdefault(kind_of(key), []).append(each)

    def of(self, key: Key) -> float:
        """The leaning from other steps of its kind and of this cook; 0 if there are none."""
        own = [self.ratios[key]] if key in self.ratios else []
        others = len(self.ratios) - len(own)
        cook = (self.all - math.fsum(own)) / (others + COOK_AGAINST)
        alike = self.kinds.get(kind_of(key), [])
        count = len(alike) - len(own)
        return (math.fsum(alike) - math.fsum(own) + KIND_AGAINST * cook) / (count + KIND_AGAINST)
