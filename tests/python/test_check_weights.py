"""Check-weight cards: against SciPy's normal law, a simulated mill, and what they refuse."""

import re

import hankwise as hw
import numpy as np
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats

card = hw.yarn.check_weight_card


def halves(row):
    """Half the widths of both bands, relative to the weight."""
    return (row["mean_high"] / row["weight"] - 1, row["high"] / row["weight"] - 1)


@settings(max_examples=cases(60))
@given(
    cv=st.floats(0.002, 0.06),
    between=st.floats(0, 0.06),
    ends=st.integers(1, 6),
    readings=st.integers(1, 40),
    confidence=st.floats(0.5, 0.9999),
)
def test_the_bands_are_those_of_the_normal_law(cv, between, ends, readings, confidence):
    (row,) = card(
        "200 tex",
        "20 m",
        ends=ends,
        readings=readings,
        cv=cv,
        cv_between_ends=between,
        confidence=confidence,
    )
    spread = np.hypot(cv, between) / np.sqrt(ends)
    mean, single = halves(row)
    assert mean == pytest.approx(
        stats.norm.isf((1 - confidence) / 2) * spread / np.sqrt(readings), rel=1e-11
    )
    each = confidence ** (1 / readings)
    assert single == pytest.approx(stats.norm.isf((1 - each) / 2) * spread, rel=1e-9)


def inside(ends, readings, different, between, cv, confidence, lots=40_000):
    """How often a right yarn is within both bands, in a simulated mill."""
    (row,) = card(
        "200 tex",
        "20 m",
        ends=ends,
        readings=readings,
        different_ends=different,
        cv=cv,
        cv_between_ends=between,
        confidence=confidence,
    )
    rng = np.random.default_rng(20)
    of_ends = rng.normal(0, between, (lots, different))
    # The pieces of a reading lie side by side, each from another end; ends take turns.
    which = np.arange(ends * readings) % different
    pieces = 4 * (1 + of_ends[:, which] + rng.normal(0, cv, (lots, ends * readings)))
    weighed = pieces.reshape(lots, readings, ends).sum(axis=2)
    mean = weighed.mean(axis=1)
    in_mean = (row["mean_low"] <= mean) & (mean <= row["mean_high"])
    in_single = ((row["low"] <= weighed) & (weighed <= row["high"])).all(axis=1)
    return in_mean.mean(), in_single.mean()


@pytest.mark.parametrize("confidence", [0.9, 0.99])
@pytest.mark.parametrize(
    ("ends", "readings"),
    [(1, 1), (1, 8), (4, 5)],
)
def test_fresh_ends_are_within_as_often_as_said(ends, readings, confidence):
    error = 4 * np.sqrt(confidence * (1 - confidence) / 40_000)
    mean, single = inside(ends, readings, ends * readings, 0.03, 0.04, confidence)
    assert mean == pytest.approx(confidence, abs=error)
    assert single == pytest.approx(confidence, abs=error)


def test_where_ends_are_weighed_again_the_mean_is_right_and_the_single_limits_are_safe():
    for ends, readings, different in [(1, 8, 2), (2, 6, 2), (2, 6, 4)]:
        mean, single = inside(ends, readings, different, 0.04, 0.02, 0.9)
        assert mean == pytest.approx(0.9, abs=0.006)
        assert single > 0.9 - 0.006


def test_the_weight_is_that_of_the_stated_yarn_in_todays_state():
    rows = card(
        "16 YSW",
        ["10 yd", "20 yd"],
        ends=2,
        regain_stated="17 %",
        regain_today="12 %",
        oil_stated="0 %",
        oil_today="6 %",
        balance=["g", "gr", "dr", "oz"],
    )
    assert len(rows) == 8
    for row in rows:
        fibre = hw.yarn.check_weight("16 YSW", row["length"], 2).number(row["balance"]) / 1.17
        assert row["weight"] == pytest.approx(fibre * 1.18, rel=1e-12)
        assert row["low"] is row["mean_high"] is None
    formula = hw.yarn.check_weight_in_todays_air("16 YSW", "10 yd", 2, 0.17, 0.12, 0, 0.06)
    assert rows[0]["weight"] == pytest.approx(formula.number("g"), rel=1e-15)


def test_it_shows_itself():
    shown = card("16 YSW", "10 yd", readings=4, cv="2 %", balance="gr")
    text, page = repr(shown), shown._repr_html_()
    for words in ["Check weights of 16 YSW", "10 yd", "17.09 gr", "mean from", "each from"]:
        assert words in text
        assert words in page
    assert text.splitlines()[0] == "Check weights of 16 YSW"
    assert re.search(r"<h4>Check weights of 16 YSW</h4>.*<table>.*</table>.*<small>", page)
    assert "<h3>" not in page
    # One reading has no mean of its own to show.
    assert "mean" not in repr(card("16 YSW", "10 yd", cv="2 %"))


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"lengths": []}, "no length"),
        ({"lengths": "0 m"}, "a length of 0"),
        ({"lengths": "3 g"}, "lengths.*unit of mass"),
        ({"lengths": 20}, "a bare 20"),
        ({"count": 16}, "a bare 16"),
        ({"count": "16 cut"}, "several ways"),
        ({"ends": 0}, "at least 1 end"),
        ({"readings": -2}, "readings: -2"),
        ({"readings": 100_000}, "too many"),
        ({"different_ends": 2}, "at least 1 and at most 1"),
        ({"readings": 4, "different_ends": 3}, "evenly"),
        ({"confidence": 95}, "95 %"),
        ({"confidence": "100 %"}, "between 0 and 100 %"),
        ({"cv": "130 %"}, "cv.*between 0 % and 100 %"),
        ({"regain_today": "12 %"}, "without regain_stated; write both"),
        ({"oil_stated": "2 %"}, "without oil_today; write both"),
        ({"balance": "m"}, "not of a balance"),
        ({"balance": []}, "no unit"),
        ({"balance": ["kilo"]}, "did you mean 'kilogram'"),
    ],
)
def test_nonsense_is_refused(wrong, words):
    with pytest.raises(hw.HankwiseError, match=words):
        card(**{"count": "200 tex", "lengths": "20 m", **wrong})


def test_unusual_figures_are_told():
    with pytest.warns(hw.RangeWarning, match="60 %"):
        card("200 tex", "20 m", regain_stated="17 %", regain_today="60 %")
