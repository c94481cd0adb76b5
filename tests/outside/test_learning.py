"""The sums of learning against published data and a reference library.

NIST Statistical Reference Datasets, univariate summary statistics: NumAcc1 and Mavro with certified mean and standard
deviation. Normal-inverse-gamma: Murphy, "Conjugate Bayesian analysis of the Gaussian distribution", 2007 (formulae from
memory), its figures and the lognormal's recomputed with scipy.
"""

import math

import pytest
import scipy.stats

from board.learning.figures import Belief, believing, lognormal_quantile, mean_and_sd, t_quantile, t_share
from board.learning.learn import Lateness, estimate

NUM_ACC_1 = (10000001, 10000003, 10000002)
MAVRO_ABOVE_2 = (
    180, 170, 180, 190, 180, 170, 150, 140, 150, 150, 170, 180, 180, 190, 190, 210, 200, 160, 140, 130, 130, 150, 150,
    160, 150, 140, 130, 140, 150, 140, 150, 160, 150, 160, 190, 200, 200, 210, 220, 230, 240, 250, 270, 260, 260, 260,
    270, 260, 250, 240,
)  # fmt: skip  # in 1e-5


def test_nist_num_acc_1_is_exact() -> None:
    assert mean_and_sd(NUM_ACC_1) == (10000002, 1)


def test_nist_mavro_to_twelve_figures() -> None:
    mean, sd = mean_and_sd([float(f"2.00{each:03d}") for each in MAVRO_ABOVE_2])

    assert len(MAVRO_ABOVE_2) == 50
    assert mean == pytest.approx(2.00185600000000, rel=1e-14)
    assert sd == pytest.approx(0.000429123454003053, rel=1e-11)


def test_the_worked_example_of_the_belief() -> None:
    """Prior 30, 2, 2, 50; data 35, 41, 38: kappa 5, mu 34.8, alpha 3.5, beta 97.4; Student t with 7 degrees."""
    after = Belief(30, 2, 2, 50).after([35, 41, 38])

    assert (after.kappa, after.mu, after.alpha) == (5, pytest.approx(34.8), 3.5)
    assert after.beta == pytest.approx(97.4)
    assert after.degrees == 7
    assert after.scale == pytest.approx(5.778779, abs=5e-7)
    assert after.quantile(0.9) == pytest.approx(42.976533, abs=5e-7)


def test_a_moments_minutes_are_the_beliefs_own() -> None:
    """Prior 0, 0.5625, 2, 60; late by 8, 10 and 12: the formulae written out, and scipy's Student t."""
    late, prior = (8.0, 10.0, 12.0), Belief(0.0, 0.5625, 2.0, 60.0)
    kappa, alpha = 3.5625, 3.5
    mu = (0.5625 * 0 + 3 * 10) / kappa
    beta = 60 + 8 / 2 + 0.5625 * 3 * 10**2 / (2 * kappa)
    following = scipy.stats.t(2 * alpha, mu, math.sqrt(beta * (kappa + 1) / (alpha * kappa)))

    found = estimate(prior, late, Lateness)

    assert found.middle == pytest.approx(mu, rel=1e-12)
    assert found.range == pytest.approx((following.ppf(0.1), following.ppf(0.9)), rel=1e-9)
    mean = scipy.stats.t(2 * alpha, mu, math.sqrt(beta / (alpha * kappa)))
    assert found.surprises == (mean.cdf(0.0) < 0.025)


def test_the_lognormals_shares() -> None:
    assert lognormal_quantile(0.8, 30, 0.25) == pytest.approx(37.025345, abs=5e-7)
    assert lognormal_quantile(0.9, 30, 0.25) == pytest.approx(41.329861, abs=5e-7)


@pytest.mark.parametrize("alpha", [2.0, 2.5, 4.0, 12.0])
def test_the_middle_deviation_is_the_root_of_the_median_variance(alpha: float) -> None:
    believed = believing(3.4, 1.0, alpha, 0.137)
    median = scipy.stats.invgamma(alpha, scale=believed.beta).median()

    assert believed.sigma == pytest.approx(0.137)
    assert believed.sigma == pytest.approx(math.sqrt(median), rel=0.005)


@pytest.mark.parametrize("degrees", [1, 2.5, 4, 7, 40, 300])
@pytest.mark.parametrize("share", [0.0001, 0.1, 0.5, 0.55, 0.8, 0.9, 0.99, 0.9999])
def test_students_t_is_scipys(share: float, degrees: float) -> None:
    found = t_quantile(share, degrees)

    assert found == pytest.approx(scipy.stats.t.ppf(share, degrees), rel=1e-9, abs=1e-12)
    assert t_share(abs(found), degrees) == pytest.approx(scipy.stats.t.cdf(abs(found), degrees), rel=1e-12)


@pytest.mark.parametrize("share", [0, 1, -1, 2])
def test_no_quantile_lies_outside(share: float) -> None:
    with pytest.raises(ValueError, match="between 0 and 1"):
        t_quantile(share, 4)


def test_no_figures_have_no_mean() -> None:
    with pytest.raises(ValueError, match="no figures"):
        mean_and_sd([])
    assert mean_and_sd([7.0]) == (7.0, 0.0)
