"""The statistics behind learning: mean, deviation, quantiles, and how likely next values are. Pure.

Uses only `math`; sums are exact to the last bit (`fsum`), so the order of values never matters.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from statistics import NormalDist


def mean_and_sd(values: Sequence[float]) -> tuple[float, float]:
    """The mean and the sample standard deviation (n − 1), two passes; 0 for a single value. Raises ValueError for none.

    The second pass corrects the rounding of the first (Chan, Golub and LeVeque, The American Statistician 37(3), 1983).
    """
    if not values:
        raise ValueError("no figures")
    n = len(values)
    mean = math.fsum(values) / n
    off = [value - mean for value in values]
    rest = math.fsum(off)
    if n == 1:
        return mean, 0.0
    squares = math.fsum(each * each for each in off) - rest * rest / n
    return mean + rest / n, math.sqrt(max(0.0, squares) / (n - 1))


def median(values: Sequence[float]) -> float:
    """The median; of an even number, halfway between the middle two. Raises ValueError for no values."""
    if not values:
        raise ValueError("no figures")
    ordered = sorted(values)
    half = len(ordered) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


MEDIAN_OFF = 1 / 3  # a gamma's median lies about this far below its shape; from memory


def believing(mu: float, kappa: float, alpha: float, sigma: float) -> "Belief":
    """A belief with this `sigma`."""
    return Belief(mu, kappa, alpha, sigma**2 * (alpha - MEDIAN_OFF))


@dataclass(frozen=True, slots=True)
class Belief:
    """A normal-inverse-gamma belief about how values are spread: `mu` is their mean, worth `kappa` values; `alpha` and
    `beta` give their variance.

    Source: Murphy, "Conjugate Bayesian analysis of the Gaussian distribution", 2007 (formulae from memory).
    """

    mu: float
    kappa: float
    alpha: float
    beta: float

    def after(self, values: Sequence[float]) -> "Belief":
        """The belief after these values; the same in any order, all at once or one by one."""
        if not values:
            return self
        n = len(values)
        mean, sd = mean_and_sd(values)
        kappa = self.kappa + n
        pull = self.kappa * n * (mean - self.mu) ** 2 / (2 * kappa)
        mu = (self.kappa * self.mu + n * mean) / kappa
        return Belief(mu, kappa, self.alpha + n / 2, self.beta + (n - 1) * sd**2 / 2 + pull)

    @property
    def sigma(self) -> float:
        """The deviation that is as likely too small as too large: the root of the median of an inverse gamma, β/(α −
        1/3) to within a hundredth from α = 2 on (from memory; checked by scipy)."""
        return math.sqrt(self.beta / (self.alpha - MEDIAN_OFF))

    @property
    def degrees(self) -> float:
        """Degrees of freedom of the next value's Student t."""
        return 2 * self.alpha

    @property
    def scale(self) -> float:
        """Scale of the next value's Student t."""
        return math.sqrt(self.beta * (self.kappa + 1) / (self.alpha * self.kappa))

    @property
    def mean_scale(self) -> float:
        """Scale of the mean's own Student t."""
        return math.sqrt(self.beta / (self.alpha * self.kappa))

    def quantile(self, share: float) -> float:
        """The value that the next one lies below with this chance. Raises ValueError outside 0 to 1."""
        return self.mu + self.scale * t_quantile(share, self.degrees)


def lognormal_quantile(share: float, middle: float, sigma: float) -> float:
    """The quantile of a lognormal with this median and this deviation of its logarithm."""
    return middle * math.exp(sigma * NormalDist().inv_cdf(share))


@lru_cache(maxsize=4096)
def t_quantile(share: float, degrees: float) -> float:
    """The quantile of Student's t. Raises ValueError outside 0 to 1."""
    if not 0 < share < 1 or degrees <= 0:
        raise ValueError("a share lies between 0 and 1, degrees of freedom above 0")
    if share < 0.5:
        return -t_quantile(1 - share, degrees)
    found, step = 0.0, 1.0
    while abs(step) > 1e-12 * (1 + found):  # Newton's steps from 0 never overshoot: the curve bends down
        step = (share - t_share(found, degrees)) / _t_density(found, degrees)
        found += step
        if step <= 0:  # only rounding is left
            break
    return found


def t_share(value: float, degrees: float) -> float:
    """The chance that Student's t lies below a value of at least 0."""
    return 1 - _incomplete_beta(degrees / 2, 0.5, degrees / (degrees + value * value)) / 2


def _t_density(value: float, degrees: float) -> float:
    logs = math.lgamma((degrees + 1) / 2) - math.lgamma(degrees / 2) - math.log(degrees * math.pi) / 2
    return math.exp(logs - (degrees + 1) / 2 * math.log1p(value * value / degrees))


def _incomplete_beta(a: float, b: float, x: float) -> float:
    """The regularised incomplete beta. Abramowitz and Stegun, 26.5.8 (from memory) where it converges fast, else its
    mirror image."""
    if x <= 0 or x >= 1:
        return 0.0 if x <= 0 else 1.0
    if x > (a + 1) / (a + b + 2):
        return 1 - _incomplete_beta(b, a, 1 - x)
    logs = a * math.log(x) + b * math.log1p(-x) + math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)
    return math.exp(logs) / (a * _fraction(a, b, x))


def _fraction(a: float, b: float, x: float) -> float:
    """Its continued fraction, term by term until it no longer changes (Lentz's method)."""
    tiny = 1e-300
    found = over = 1.0
    under = 0.0
    for term in range(1, 1000):
        m = term // 2
        if term % 2:
            part = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))
        else:
            part = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
        under = 1 / (1 + part * under or tiny)
        over = 1 + part / over or tiny
        found *= over * under
        if abs(over * under - 1) < 1e-15:
            break
    return found
