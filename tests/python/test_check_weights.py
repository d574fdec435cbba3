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


def weigh(**given):
    """The row of a card for one length, in grams."""
    (row,) = card(count="200 tex", check_lengths=["20 m"], **given)["check_weights"]
    return {name: value.number("g") for name, value in row.items() if name != "check_length"}


def halves(row):
    """Half the widths of both bands, relative to the weight."""
    weight = row["check_weight"]
    return (row["mean_high"] / weight - 1, row["high"] / weight - 1)


@settings(max_examples=cases(60))
@given(
    cv=st.floats(0.002, 0.06),
    between=st.floats(0, 0.06),
    ends=st.integers(1, 6),
    readings=st.integers(1, 40),
    confidence=st.floats(0.5, 0.9999),
)
def test_the_bands_are_those_of_the_normal_law(cv, between, ends, readings, confidence):
    row = weigh(
        ends=ends,
        readings=readings,
        cv=cv,
        cv_between=between,
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
    row = weigh(
        ends=ends,
        readings=readings,
        different_ends=different,
        cv=cv,
        cv_between=between,
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
    state = {"stated_regain": "17 %", "regain": "12 %", "stated_oil": "0 %", "oil": "6 %"}
    found = card(count="16 YSW", check_lengths=["10 yd", "20 yd"], ends=2, **state)
    rows = found["check_weights"]
    assert len(rows) == 2
    for row in rows:
        stated = hw.yarn.check_weight("16 YSW", row["check_length"], 2).number("g")
        assert row["check_weight"].number("g") == pytest.approx(stated / 1.17 * 1.18, rel=1e-12)
        assert set(row) == {"check_length", "check_weight"}
    formula = hw.yarn.check_weight_in_todays_air("16 YSW", "10 yd", 2, 0.17, 0.12, 0, 0.06)
    assert rows[0]["check_weight"].number("g") == pytest.approx(formula.number("g"), rel=1e-15)
    assert "check_weight_in_todays_air" in str(found.working("check_weights[1].check_weight"))


def test_it_shows_itself():
    yarn = {"count": "16 YSW", "check_lengths": ["10 yd"], "cv": "2 %"}
    shown = card(**yarn, readings=4, balance="gr, dr")
    text, page = repr(shown), shown._repr_html_()
    for words in [
        "Check weights of 16 YSW", "10 yd", "17.09 gr", "0.625 dr", "mean from", "each from"
    ]:  # fmt: skip
        assert words in text
        assert words in page
    assert text.splitlines()[0] == "Check weights of 16 YSW"
    assert re.search(r"<h4>Check weights of 16 YSW</h4>.*<table>.*</table>.*<small>", page)
    assert "<h3>" not in page
    # One reading has no mean of its own to show.
    assert "mean" not in repr(card(**yarn))


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"check_lengths": []}, "list is empty"),
        ({"check_lengths": ["0 m"]}, "0 m is not possible for the length"),
        ({"check_lengths": ["3 g"]}, "check_lengths.*unit of mass"),
        ({"check_lengths": [20]}, "20 has no unit"),
        ({"count": 16}, "16 has no unit"),
        ({"count": "16 cut"}, "several ways"),
        ({"ends": 0}, "ends: 0 is not possible"),
        ({"readings": -2}, "readings: .*0 or more"),
        ({"readings": 100_000}, "too many"),
        ({"different_ends": 2}, "at least 1 and at most 1"),
        ({"readings": 4, "different_ends": 3}, "evenly"),
        ({"confidence": 95}, "95 %"),
        ({"confidence": "100 %"}, "between 0 and 100 %"),
        ({"cv": "130 %"}, "cv.*between 0 % and 100 %"),
        ({"regain": "12 %"}, "without stated_regain .*; write both"),
        ({"stated_oil": "2 %"}, "without oil .*; write both"),
        ({"balance": "m"}, "balance"),
        ({"balance": "kilogrm"}, "did you mean 'kilogram'"),
    ],
)
@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_nonsense_is_refused(wrong, words):
    with pytest.raises(hw.HankwiseError, match=words):
        card(**{"count": "200 tex", "check_lengths": ["20 m"], **wrong})


def test_unusual_values_are_told():
    with pytest.warns(hw.RangeWarning, match="60 %"):
        weigh(stated_regain="17 %", regain="60 %")
