"""Samples, limits and charts, against SciPy, published tables and simulated mills."""

import math
import warnings

import hankwise as hw
import numpy as np
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate, stats

Q = hw.quality


def near(a, b, share=1e-9):
    return abs(a - b) <= share * abs(b)


@given(st.floats(0.01, 0.9999), st.integers(2, 100_000))
@settings(max_examples=cases(300))
def test_students_t_is_scipys(confidence, readings):
    assert near(Q.student_t(confidence, readings), stats.t.isf((1 - confidence) / 2, readings - 1))


@given(st.floats(0.001, 0.999), st.integers(2, 20_000))
@settings(max_examples=cases(300))
def test_chi_square_is_scipys(share, readings):
    assert near(Q.chi_square(share, readings), stats.chi2.ppf(share, readings - 1))


def range_moments(n):
    """By integrals over the normal law: of the mean, and of the square, of the range."""
    below, above = stats.norm.cdf, stats.norm.sf
    mean = integrate.quad(
        lambda x: 1 - below(x) ** n - above(x) ** n, -10, 10, epsabs=1e-13, epsrel=1e-13, limit=300
    )[0]

    def joint(y, x):
        return 1 - below(y) ** n - above(x) ** n + (below(y) - below(x)) ** n

    square = 2 * integrate.dblquad(joint, -10, 10, lambda x: x, 10, epsabs=1e-9, epsrel=1e-9)[0]
    return mean, math.sqrt(square - mean**2)


@pytest.mark.parametrize("n", [2, 3, 4, 5, 7, 10, 25])
def test_range_constants_are_those_of_the_normal_law(n):
    c = Q.chart_constants(n)
    d2, d3 = range_moments(n)
    assert near(c["d2"], d2)
    # SciPy's double integral is the coarser of the two.
    assert near(c["d3"], d3, 1e-7)


def test_range_constants_that_have_a_closed_form():
    two, three = Q.chart_constants(2), Q.chart_constants(3)
    assert near(two["d2"], 2 / math.sqrt(math.pi), 1e-14)
    assert near(two["d3"], math.sqrt(2 - 4 / math.pi), 1e-13)
    assert near(three["d2"], 3 / math.sqrt(math.pi), 1e-14)


@pytest.mark.parametrize("n", [*range(2, 101), 250, 1000])
def test_all_constants_follow_from_c4_d2_d3(n):
    c = Q.chart_constants(n)
    c4 = math.exp(math.lgamma(n / 2) - math.lgamma((n - 1) / 2)) * math.sqrt(2 / (n - 1))
    d2 = integrate.quad(
        lambda x: 1 - stats.norm.cdf(x) ** n - stats.norm.sf(x) ** n,
        -12, 12, epsabs=1e-13, epsrel=1e-13, limit=300,
    )[0]  # fmt: skip
    c5 = math.sqrt(1 - c4**2)
    assert near(c["c4"], c4)
    assert near(c["d2"], d2)
    assert near(c["c5"], c5)
    assert near(c["A2"], 3 / d2 / math.sqrt(n))
    assert near(c["A3"], 3 / c4 / math.sqrt(n))
    assert near(c["E2"], 3 / d2)
    assert near(c["B4"], 1 + 3 * c5 / c4)
    assert c["B3"] == pytest.approx(max(0, 1 - 3 * c5 / c4), abs=1e-9)
    assert near(c["D4"], 1 + 3 * c["d3"] / d2)
    assert c["D3"] == pytest.approx(max(0, 1 - 3 * c["d3"] / d2), abs=1e-12)


def test_subgroups_that_have_no_constants():
    for n in [1, 1001]:
        with pytest.raises(hw.RangeError, match="from 2 to 1000"):
            Q.chart_constants(n)


@given(st.lists(st.floats(50, 200), min_size=3, max_size=60).filter(lambda v: np.std(v) > 1e-3))
def test_a_summary_is_scipys(values):
    s, n = Q.summary(values, "90 %"), len(values)
    low, high = stats.t.interval(0.9, n - 1, np.mean(values), stats.sem(values))
    assert near(s.mean.number(""), np.mean(values))
    assert near(s.sd.number(""), np.std(values, ddof=1))
    assert near(s.mean_limits[0].number(""), low, 1e-8)
    assert near(s.mean_limits[1].number(""), high, 1e-8)
    for got, share in zip(s.sd_limits, [0.95, 0.05], strict=True):
        sd = np.std(values, ddof=1) * math.sqrt((n - 1) / stats.chi2.ppf(share, n - 1))
        assert near(got.number(""), sd, 1e-8)


def test_intervals_take_in_the_truth_as_often_as_they_say():
    rng, times = np.random.default_rng(6), 4000
    held = np.zeros(3)
    for _ in range(times):
        s = Q.summary(rng.normal(100, 10, 6))
        pairs = [[e.number("") for e in s.mean_limits], [e.number("") for e in s.sd_limits]]
        pairs.append(list(s.cv_limits))
        truth = [100, 10, 0.1]
        held += [low <= t <= high for (low, high), t in zip(pairs, truth, strict=True)]
    # Within four standard errors of 95 %.
    assert held / times == pytest.approx([0.95] * 3, abs=4 * math.sqrt(0.95 * 0.05 / times))


@pytest.mark.parametrize(("n", "limit"), [(3, 1.1543), (5, 1.7150), (10, 2.2900), (20, 2.7082)])
def test_grubbs_limits_are_those_of_the_tables(n, limit):
    # Both sides, 5 %, as tables of four decimals print them (from memory).
    s = Q.summary(np.arange(n, dtype=float))
    assert s.farthest["limit"] == pytest.approx(limit, abs=0.00006)
    t = stats.t.isf(0.05 / (2 * n), n - 2)
    assert near(s.farthest["limit"], (n - 1) / math.sqrt(n) * math.sqrt(t**2 / (n - 2 + t**2)))


def test_an_outlier_is_told_and_kept():
    values = [150, 151, 149, 150, 152, 148, 150, 175]
    s = Q.summary(hw.q(values, "tex"))
    assert s.farthest["place"] == 7
    assert s.farthest["stands_apart"]
    assert s.n == 8
    assert near(s.mean.number("tex"), np.mean(values))
    assert "look for a cause" in str(s)


def test_chance_is_rarely_taken_for_an_outlier():
    rng, times = np.random.default_rng(7), 4000
    told = sum(Q.summary(rng.normal(100, 10, 8)).farthest["stands_apart"] for _ in range(times))
    assert told / times == pytest.approx(0.05, abs=4 * math.sqrt(0.05 * 0.95 / times))


@given(st.floats(0.01, 0.3), st.floats(0.01, 0.2), st.floats(0.8, 0.99))
def test_as_many_readings_as_are_needed_and_no_more(cv, error, confidence):
    needed = Q.readings_needed(cv=cv, relative_error=error, confidence=confidence)
    n = round(needed["readings"].number(""))

    def half(n):
        return stats.t.isf((1 - confidence) / 2, n - 1) * cv / math.sqrt(n)

    assert half(n) <= error * (1 + 1e-9)
    assert near(needed["error_left"].number("fraction"), half(n))
    assert n == 2 or half(n - 1) > error * (1 - 1e-9)


def test_indirect_counts_are_refused_with_what_to_do():
    with pytest.raises(hw.UnitError, match=r"\.to\('tex'\).*numbers alone"):
        Q.summary(hw.q([16, 17, 15], "Nm"))
    assert Q.summary(hw.q([16, 17, 15], "Nm").to("tex")).mean.unit == "tex"


@pytest.mark.parametrize(
    ("values", "error", "words"),
    [
        ([1.0], hw.RangeError, "at least 2"),
        ([1.0, math.nan, 2.0], hw.RangeError, "reading 2 is missing"),
        (5, hw.NotationError, "several readings in a row"),
        (["100 tex", "5 g"], hw.UnitError, "not of linear density"),
        (hw.q(np.ones((2, 2)), "tex"), hw.NotationError, "one row"),
        (["a", "b"], hw.NotationError, "a"),
    ],
)
def test_what_is_no_sample(values, error, words):
    with pytest.raises(error, match=words):
        Q.summary(values)


def test_texts_may_have_units_of_their_own():
    s = Q.summary(["100 g", "0.1 kg", "101 g"])
    assert near(s.mean.number("g"), 301 / 3)


def skeins(masses, skein_length="100 m", **more):
    return Q.skein_count(masses=masses, skein_length=skein_length, **more)


def test_skein_options_of_one_yarn_agree():
    """What is conditioned at 17 % reads the same as oven-dry plus 17 % (definition)."""
    dry = np.array([13.05, 12.91, 13.22])
    as_is = skeins(hw.q(dry * 1.17, "g"))
    plus = skeins(hw.q(dry, "g"), option="oven-dry plus regain", allowance="17 %")
    assert near(as_is["count"].number("tex"), plus["count"].number("tex"))
    assert near(plus["count"].number("tex"), dry.mean() * 10 * 1.17)
    assert ["Option 1" in repr(as_is), "Option 3" in repr(plus)] == [True, True]
    last = "scoured, oven-dry plus commercial allowance"
    metric = skeins(hw.q(dry, "g"), option=last, allowance="17 %")
    assert near(metric["count"].number("Nm"), 1000 / plus["count"].number("tex"))


def test_the_interval_of_a_count_is_students():
    masses = np.array([13.05, 12.91, 13.22, 13.10])
    found = skeins(hw.q(masses, "g"), confidence="90 %")
    tex = masses * 10
    low, high = stats.t.interval(0.9, 3, tex.mean(), tex.std(ddof=1) / 2)
    assert near(found["finer_limit"].number("tex"), low)
    assert near(found["coarser_limit"].number("tex"), high)
    assert near(found["cv"].number(""), tex.std(ddof=1) / tex.mean())
    assert "counts[4]" in str(found.working("coarser_limit"))


def test_skein_options_ask_for_what_they_add():
    masses = ["13 g", "13.1 g"]
    with pytest.raises(hw.RangeError, match="adds a regain"):
        skeins(masses, option="oven-dry plus regain")
    with pytest.raises(hw.RangeError, match="adds nothing"):
        skeins(masses, option="oven-dry", allowance="17 %")
    with pytest.raises(hw.NotationError, match="or scoured, conditioned or"):
        skeins(masses, option="8")


def test_skeins_outside_the_scope_are_warned_of():
    with pytest.warns(hw.RangeWarning, match="2000 tex"):
        skeins(["25 g", "26 g"], "10 m")
    with pytest.warns(hw.RangeWarning, match="less than 5 %"):
        skeins(["13 g", "13.1 g"], stretch="5 %")
    with pytest.warns(hw.RangeWarning, match="0 % to 5 % .standard or law, ASTM D1907"):
        skeins(["13 g", "13.1 g"], stretch="6 %")
    with pytest.warns(hw.RangeWarning, match="0 % to 5 % .standard or law, ASTM D1907"):
        skeins(["13 g", "13.1 g"], stretch="-90 %")
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        skeins(["13 g", "13.1 g"], stretch="4 %")
