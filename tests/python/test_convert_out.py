"""Converting into an array: the same values, in their place, whoever computes them."""

import warnings
from concurrent.futures import ThreadPoolExecutor

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays

# A product, a quotient, a reciprocal.
CHANGES = [("lb", "kg"), ("g", "kg"), ("Nm", "YSW"), ("Nm", "tex"), ("den", "Ne")]
# More than a thread is started for, and no whole number of parts.
MANY = 1_234_567


@pytest.fixture(scope="module")
def many():
    return np.random.default_rng(7).uniform(0.1, 90.0, MANY)


@pytest.mark.parametrize("units", CHANGES, ids="→".join)
def test_the_same_to_the_last_bit(many, units):
    fresh = hw.convert(many, *units)
    out = np.full(MANY, np.nan)
    assert hw.convert(many, *units, out=out) is out
    assert np.array_equal(out.view(np.int64), fresh.view(np.int64))
    # In its own place, and without a thread.
    own = many.copy()
    assert hw.convert(own, *units, out=own) is own
    assert np.array_equal(own, fresh)
    few = np.empty(1000)
    assert np.array_equal(hw.convert(many[:1000], *units, out=few), fresh[:1000])


@given(
    arrays.arrays(np.float64, arrays.array_shapes(min_dims=0, max_dims=3, min_side=0)),
    st.sampled_from(CHANGES),
)
def test_any_values_and_shapes(values, units):
    out = np.empty_like(values)
    with warnings.catch_warnings():
        # What has no value there is NaN, and is told of.
        warnings.simplefilter("ignore", hw.RangeWarning)
        if values.ndim == 0:
            with pytest.raises(TypeError, match="out is for arrays"):
                hw.convert(values, *units, out=out)
            return
        hw.convert(values, *units, out=out)
        np.testing.assert_array_equal(out, hw.convert(values, *units))
    for x, y in zip(values.flat, out.flat, strict=True):
        try:
            one = hw.convert(x, *units)
        except hw.RangeError:
            one = np.nan
        assert y == one or (np.isnan(y) and np.isnan(one))


LAYOUTS = {
    "every second": lambda: (np.arange(1.0, 21.0)[::2], np.zeros(20)[1::2]),
    "backwards": lambda: (np.arange(1.0, 11.0)[::-1], np.zeros(10)),
    "by columns": lambda: (np.asfortranarray(np.arange(1.0, 13.0).reshape(3, 4)), np.zeros((3, 4))),
    "both by columns": lambda: (
        np.asfortranarray(np.arange(1.0, 13.0).reshape(3, 4)),
        np.asfortranarray(np.zeros((3, 4))),
    ),
    "turned": lambda: (np.arange(1.0, 13.0).reshape(3, 4).T, np.zeros((4, 3))),
    "other bytes": lambda: (np.arange(1.0, 9.0).astype(">f8"), np.zeros(8)),
    "not aligned": lambda: (
        np.frombuffer(b"x" + np.arange(1.0, 9.0).tobytes(), dtype=np.uint8)[1:].view(np.float64),
        np.zeros(8),
    ),
    "ints": lambda: (np.arange(1, 9), np.zeros(8)),
    "float32": lambda: (np.arange(1, 9, dtype=np.float32), np.zeros(8)),
    "list": lambda: ([[1, 2.0], [3, 4]], np.zeros((2, 2))),
    "series": lambda: (pd.Series([1.0, 2.0], index=[7, 3]), np.zeros(2)),
    "neighbours": lambda: np.split(np.arange(1.0, 21.0), 2),
    "in turn": lambda: np.arange(1.0, 21.0).reshape(10, 2).T,
}


@pytest.mark.parametrize("make", LAYOUTS.values(), ids=LAYOUTS)
def test_layouts(make):
    values, out = make()
    wanted = np.asarray(hw.convert(np.array(values, dtype=float), "Nm", "tex"))
    assert hw.convert(values, "Nm", "tex", out=out) is out
    np.testing.assert_array_equal(out, wanted)


def test_a_file_in_memory_can_be_written_to(tmp_path):
    out = np.memmap(tmp_path / "tex", dtype=np.float64, mode="w+", shape=(3,))
    hw.convert([10, 20, 40], "Nm", "tex", out=out)
    assert np.fromfile(tmp_path / "tex").tolist() == [100, 50, 25]


VALUES = np.array([16.0, 20.0, 25.0])
FROZEN = np.zeros(3)
FROZEN.flags.writeable = False
BASE = np.arange(1.0, 8.0)


@pytest.mark.parametrize(
    ("values", "out", "error", "words"),
    [
        (VALUES, np.zeros(2), hw.NotationError, r"shape \[2\] and the values \[3\]"),
        (VALUES, np.zeros((3, 1)), hw.NotationError, r"shape \[3, 1\]"),
        (VALUES, np.zeros(3, dtype=np.float32), TypeError, "float64, not ndarray of float32"),
        (VALUES, np.zeros(3, dtype=int), TypeError, "float64, not ndarray of int64"),
        (VALUES, np.zeros(3, dtype=">f8"), TypeError, "float64, not ndarray of >f8"),
        (VALUES, [0.0] * 3, TypeError, "NumPy array of float64, not list"),
        (VALUES, pd.Series(np.zeros(3)), TypeError, "not Series"),
        (VALUES, np.ma.zeros(3), TypeError, "not MaskedArray"),
        (VALUES, hw.q([1, 2, 3], "tex"), TypeError, "not hankwise.Quantity|not Quantity"),
        (np.ma.array(VALUES, mask=[0, 1, 0]), np.zeros(3), TypeError, "masked.*filled"),
        (VALUES, FROZEN, hw.NotationError, "read-only"),
        (BASE[:-1], BASE[1:], hw.NotationError, "overlap"),
        (BASE, BASE[::-1], hw.NotationError, "overlap"),
        (16.0, np.zeros(1), TypeError, "out is for arrays"),
        (VALUES > 17, np.zeros(3), TypeError, "write numbers"),
        ("16", np.zeros(1), TypeError, "write numbers"),
    ],
)
def test_what_out_cannot_be(values, out, error, words):
    before = np.array(BASE)
    with pytest.raises(error, match=words):
        hw.convert(values, "Nm", "tex", out=out)
    np.testing.assert_array_equal(BASE, before)


def test_units_are_refused_before_anything_is_written():
    out = np.zeros(3)
    with pytest.raises(hw.UnitError, match="mass"):
        hw.convert(VALUES, "kg", "tex", out=out)
    assert not out.any()


def test_several_at_once(many):
    """Without the interpreter's lock, and each with the values of its own."""
    fresh = hw.convert(many, "Nm", "tex")
    with ThreadPoolExecutor(4) as pool:
        outs = [np.empty(MANY) for _ in range(8)]
        for got in pool.map(lambda out: hw.convert(many, "Nm", "tex", out=out), outs):
            assert np.array_equal(got, fresh)
