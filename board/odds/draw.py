"""How long work lasts on one evening: minutes drawn from low, likely and high.

Source: Malcolm, Roseboom, Clark and Fazar, "Application of a Technique for Research and Development Program
Evaluation", Operations Research 7(5), 1959: a beta on [low, high] with mean (low + 4 likely + high)/6 and standard
deviation (high − low)/6. A beta has two shape parameters, so both moments are met exactly.
"""

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from board.sheet.run_sheet import Lasts

Minutes = NDArray[np.float64]  # fractional, one place an evening
Draw = Callable[[Lasts, np.random.Generator, int], Minutes]

VARIANCE = 1 / 36  # of a draw, with [low, high] scaled to [0, 1]


def shape(lasts: Lasts) -> tuple[float, float]:
    """The beta's two parameters; requires low < high. The mean lies in [1/6, 5/6] of the range, where both are
    positive: 1/6 · 5/6 > 1/36."""
    mean = ((lasts.low + 4 * lasts.likely + lasts.high) / 6 - lasts.low) / (lasts.high - lasts.low)
    total = mean * (1 - mean) / VARIANCE - 1
    return mean * total, (1 - mean) * total


def three_point(lasts: Lasts, rng: np.random.Generator, evenings: int) -> Minutes:
    """Minutes for that many evenings; requires low < high."""
    alpha, beta = shape(lasts)
    return lasts.low + (lasts.high - lasts.low) * rng.beta(alpha, beta, evenings)
