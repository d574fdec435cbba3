"""Quantities and convert: like in, like out; what is refused and in which words."""

import copy
import pickle
from contextlib import suppress
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

UNITS = hw.units()
SYMBOLS = {u["kind"]: [v["symbol"] for v in UNITS if v["kind"] == u["kind"]] for u in UNITS}
PAIRS = [(a, b) for symbols in SYMBOLS.values() for a, b in pairwise(symbols)]
POSITIVE = st.floats(min_value=1e-6, max_value=1e6)


# --- like in, like out ------------------------------------------------------------------------


@pytest.mark.parametrize(
    "figure",
    [
        16,
        16.0,
        np.float64(16),
        np.float32(16),
        np.int64(16),
        np.array(16.0),
        Decimal(16),
        Fraction(16),
    ],
    ids=lambda x: type(x).__name__,
)
def test_a_value_gives_a_float(figure):
    for got in (hw.convert(figure, "Nm", "tex"), hw.q(figure, "Nm").number("tex")):
        assert type(got) is float
        assert got == 62.5


MANY = {
    "list": [16, 20.0],
    "tuple": (16, 20.0),
    "floats": np.array([16.0, 20.0]),
    "ints": np.array([16, 20]),
    "float32": np.array([16, 20], dtype=np.float32),
    "objects": np.array([Decimal(16), Decimal(20)]),
    "two axes": np.array([[16.0, 20.0]]),
    "every second": np.array([16.0, 0.5, 20.0])[::2],
    "transposed": np.array([[16.0, 20.0], [1.0, 2.0]]).T[:, 0],
    "series": pd.Series([16.0, 20.0], index=["a", "b"], name="count"),
    "series of ints": pd.Series([16, 20], index=[7, 3]),
    "nullable": pd.Series([16, 20], dtype="Int64"),
}


@pytest.mark.parametrize("values", MANY.values(), ids=MANY)
def test_convert_gives_the_kind_of_container_that_it_was_given(values):
    got = hw.convert(values, "Nm", "tex")
    assert type(got) is type(values)
    assert np.shape(got) == np.shape(values)
    np.testing.assert_allclose(np.asarray(got, dtype=float).ravel(), [62.5, 50.0], rtol=1e-6)
    if isinstance(values, list | tuple):
        assert all(type(x) is float for x in got)
    if isinstance(values, pd.Series):
        pd.testing.assert_index_equal(got.index, values.index)
        assert got.name == values.name


@pytest.mark.parametrize("values", MANY.values(), ids=MANY)
def test_a_quantity_holds_floats_and_keeps_series(values):
    quantity = hw.q(values, "Nm")
    got = quantity.number("tex")
    assert type(got) is (pd.Series if isinstance(values, pd.Series) else np.ndarray)
    assert got.dtype == np.float64
    np.testing.assert_allclose(np.asarray(got).ravel(), [62.5, 50.0], rtol=1e-6)
    assert len(quantity) == len(values)
    assert quantity.to("tex").unit == "tex"
    if isinstance(values, pd.Series):
        pd.testing.assert_index_equal(got.index, values.index)


def test_nested_lists_and_tuples():
    assert hw.convert([[16], [20]], "Nm", "tex") == [[62.5], [50.0]]
    assert hw.convert(((16,), (20,)), "Nm", "tex") == ((62.5,), (50.0,))


def test_tables_of_values():
    table = pd.DataFrame({"a": [16.0, 20.0], "b": [10.0, 40.0]}, index=["x", "y"])
    expected = pd.DataFrame({"a": [62.5, 50.0], "b": [100.0, 25.0]}, index=["x", "y"])
    pd.testing.assert_frame_equal(hw.convert(table, "Nm", "tex"), expected)
    pd.testing.assert_frame_equal(hw.q(table, "Nm").number("tex"), expected)


@pytest.mark.parametrize(
    "empty", [[], (), np.array([]), np.empty((0, 3)), pd.Series([], dtype=float)]
)
def test_nothing_gives_nothing(empty):
    got = hw.convert(empty, "Nm", "tex")
    assert type(got) is type(empty)
    assert np.shape(got) == np.shape(empty)
    assert np.shape(hw.q(empty, "Nm").number("tex")) == np.shape(empty)


def test_a_missing_value_stays_missing_in_its_place():
    for values in ([1, np.nan, 4], np.array([1, np.nan, 4]), pd.Series([1, np.nan, 4])):
        for got in (hw.convert(values, "Nm", "tex"), hw.q(values, "Nm").number("tex")):
            assert [bool(x) for x in np.isnan(got)] == [False, True, False]
    assert np.isnan(hw.convert(np.nan, "Nm", "tex"))
    nullable = pd.Series([1, pd.NA], dtype="Float64")
    assert list(np.isnan(hw.q(nullable, "Nm").number("tex"))) == [False, True]


@pytest.mark.parametrize(
    "wrong",
    [
        True,
        None,
        "16",
        np.bool_(True),
        np.array([True]),
        [True],
        ["16"],
        np.array(["16"]),
        np.array([16 + 2j]),
        np.array([16, "x"], dtype=object),
        pd.Series([True]),
        object(),
        {},
    ],
    ids=repr,
)
def test_what_is_no_number_is_refused(wrong):
    with pytest.raises(TypeError, match="write numbers, not"):
        hw.convert(wrong, "Nm", "tex")
    if not isinstance(wrong, str):
        with pytest.raises(TypeError, match="write numbers, not"):
            hw.q(wrong, "Nm")


# --- the laws of units ------------------------------------------------------------------------


@given(POSITIVE, st.sampled_from(PAIRS))
def test_there_and_back_again(x, units):
    a, b = units
    assert hw.convert(hw.convert(x, a, b), b, a) == pytest.approx(x, rel=1e-12)
    assert hw.q(x, a).to(b).to(a).number(a) == pytest.approx(x, rel=1e-12)


@given(POSITIVE, POSITIVE, st.sampled_from(PAIRS))
def test_direct_units_rise_together_and_indirect_ones_fall(x, y, units):
    a, b = units
    if y < x * (1 + 1e-9):
        return
    falls = [next(u["indirect"] for u in UNITS if u["symbol"] == s) for s in units]
    first, second = hw.convert([x, y], a, b)
    assert (first > second) if falls[0] != falls[1] else (first < second)


@given(st.lists(POSITIVE), st.sampled_from(PAIRS))
def test_all_ways_to_convert_agree_bit_for_bit(values, units):
    a, b = units
    one_by_one = [hw.convert(x, a, b) for x in values]
    assert hw.convert(values, a, b) == one_by_one
    assert hw.convert(np.array(values, dtype=float), a, b).tolist() == one_by_one
    assert hw.q(values, a).number(b).tolist() == one_by_one


@given(st.text(max_size=20))
def test_any_text_is_a_quantity_or_a_clear_refusal(text):
    with suppress(hw.HankwiseError):
        assert isinstance(hw.q(text), hw.Quantity)


@given(POSITIVE, st.sampled_from([u["symbol"] for u in UNITS if u["symbol"]]))
def test_what_is_written_is_read(x, unit):
    assert hw.q(f"{x!r} {unit}").number(unit) == x


# --- what is refused --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("make", "error", "words"),
    [
        (lambda: hw.q(16), hw.UnitError, "has no unit"),
        (lambda: hw.q("16"), hw.UnitError, "has no unit"),
        (lambda: hw.q(None), hw.UnitError, "has no unit"),
        (lambda: hw.q("16 cut"), hw.UnitError, "galashiels-cut.*hawick-cut.*american-cut"),
        (lambda: hw.q(16, "cut"), hw.UnitError, "galashiels-cut"),
        (lambda: hw.q("16 Nek"), hw.UnitError, "worsted.*Ne"),
        (lambda: hw.q("30's"), hw.UnitError, "which count system"),
        (lambda: hw.q("16 YSQ"), hw.UnitError, "did you mean 'YSW'"),
        (lambda: hw.q("2/24 Nm"), hw.NotationError, "folded yarn"),
        (lambda: hw.q("2/24 Ne"), hw.NotationError, r"hankwise.yarn.parse\('2/24 Ne'\)"),
        (lambda: hw.q(""), hw.NotationError, "nothing was given"),
        (lambda: hw.q("many kg"), hw.NotationError, "does not begin with a number"),
        (lambda: hw.q("1,5 kg"), hw.NotationError, "decimal mark as a point"),
        (lambda: hw.q("12 oz 1 lb"), hw.NotationError, "larger unit first"),
        (lambda: hw.q("22 kg", "g"), hw.NotationError, "has its unit already"),
        (lambda: hw.q(float("nan"), "kg"), hw.RangeError, "finite"),
        (lambda: hw.q(float("inf"), "kg"), hw.RangeError, "finite"),
        (lambda: hw.q("1 kg").to("m"), hw.UnitError, "mass to 'm', a unit of length"),
        (lambda: hw.q("1 kg").number("YSW"), hw.UnitError, "cannot convert a mass"),
        (lambda: hw.convert(1, "kg", "m"), hw.UnitError, "cannot convert a mass"),
        (lambda: float(hw.q("1 kg")), TypeError, r"\.number\('kg'\)"),
        (lambda: hash(hw.q("1 kg")), TypeError, "no hash"),
        (lambda: bool(hw.q("0 kg")), TypeError, "neither true nor false"),
        (lambda: len(hw.q("1 kg")), TypeError, "no places"),
        (lambda: hw.q("1 kg")[0], TypeError, "no places"),
    ],
)  # fmt: skip
def test_refusals_of_quantities(make, error, words):
    with pytest.raises(error, match=words):
        make()


COUNT, KILO, TEX = hw.q("16 YSW"), hw.q("1 kg"), hw.q("30 tex")
FOLD = "hankwise.yarn.fold.*mean_by_length.*mean_by_mass"


@pytest.mark.parametrize(
    ("make", "error", "words"),
    [
        (lambda: COUNT + COUNT, hw.UnitError, FOLD),
        (lambda: COUNT - COUNT, hw.UnitError, FOLD),
        (lambda: sum([COUNT, COUNT]), hw.UnitError, FOLD),
        (lambda: hw.q([16, 18], "YSW").mean(), hw.UnitError, FOLD),
        (lambda: np.mean(hw.q([16.0, 18.0], "YSW")), hw.UnitError, FOLD),
        (lambda: hw.q([16, 18], "YSW").sum(), hw.UnitError, FOLD),
        (lambda: np.sum(hw.q([16.0, 18.0], "YSW")), hw.UnitError, FOLD),
        (lambda: TEX + COUNT, hw.UnitError, FOLD),
        (lambda: COUNT + TEX, hw.UnitError, FOLD),
        (lambda: TEX - COUNT, hw.UnitError, FOLD),
        (lambda: sum([TEX, COUNT], start=TEX), hw.UnitError, FOLD),
        (lambda: np.mean([TEX, COUNT]), TypeError, r"\.number\('tex'\)"),
        (lambda: np.sum([COUNT, TEX]), TypeError, r"\.number\('YSW'\)"),
        (lambda: hw.q([30.0], "tex") + hw.q([16.0], "YSW"), hw.UnitError, FOLD),
        (lambda: COUNT * 2, hw.UnitError, "twice as thick or twice the number.*fold_alike"),
        (lambda: 2 * COUNT, hw.UnitError, "twice as thick or twice the number.*fold_alike"),
        (lambda: COUNT / 2, hw.UnitError, "half as thick or half the number"),
        (lambda: COUNT / COUNT, hw.UnitError, "twice as thick or twice the number"),
        (lambda: COUNT < COUNT, hw.UnitError, "finer yarn.*compare in tex"),
        (lambda: np.array([1.0, 2.0]) * COUNT, hw.UnitError, "twice as thick"),
        (lambda: KILO + 1, hw.UnitError, "has no unit"),
        (lambda: 1 + KILO, hw.UnitError, "has no unit"),
        (lambda: np.array([1.0, 2.0]) + KILO, hw.UnitError, "has no unit"),
        (lambda: KILO + hw.q("1 m"), hw.UnitError, "different kinds"),
        (lambda: hw.q("1 m") > KILO, hw.UnitError, "different kinds"),
        (lambda: KILO * KILO, hw.UnitError, "use the formula that is meant"),
        (lambda: KILO * True, TypeError, "write numbers"),
        (lambda: KILO * "2", TypeError, "write numbers"),
        (lambda: KILO / 0, ZeroDivisionError, "divided by zero"),
        (lambda: 1 / KILO, TypeError, "unsupported"),
    ],
)  # fmt: skip
def test_refusals_of_arithmetic(make, error, words):
    with pytest.raises(error, match=words):
        make()


def test_arithmetic_of_direct_quantities():
    assert (KILO + hw.q("1 lb")).number("kg") == 1.45359237
    assert (hw.q("1 lb") + KILO).unit == "lb"
    assert (2 * KILO).number("g") == 2000
    assert (np.array([1.0, 2.0]) * KILO).number("g").tolist() == [1000, 2000]
    assert KILO / hw.q("500 g") == 2
    assert (KILO / 4).number("g") == 250
    assert hw.q("500 g") < KILO == hw.q("1000 g")
    assert (hw.q("16 tex") + COUNT.to("tex")).unit == "tex"
    assert hw.q([1, 2, 6], "kg").mean().number("kg") == 3
    assert np.mean(hw.q([1, 2, 6], "kg")).number("kg") == 3
    assert hw.q([1, 2, 6], "kg").sum().number("kg") == 9
    assert hw.q("1 m") != KILO
    assert KILO != 1
    assert [str(x) for x in hw.q([1, 2], "kg")] == ["1 kg", "2 kg"]
    assert hw.q([1, 2, 3], "kg")[1:].number("kg").tolist() == [2, 3]


# --- how it stays and how it shows ------------------------------------------------------------


def test_errors_have_one_root():
    for error in (hw.UnitError, hw.NotationError, hw.RangeError, hw.PlanError):
        assert issubclass(error, hw.HankwiseError)
    assert issubclass(hw.HankwiseError, ValueError)
    assert issubclass(hw.RangeWarning, UserWarning)


def test_a_quantity_does_not_change():
    array = np.array([1.0, 2.0])
    series = pd.Series([1.0, 2.0])
    held, kept = hw.q(array, "kg"), hw.q(series, "kg")
    array[0] = series[0] = 9.0
    assert held.number("kg").tolist() == kept.number("kg").tolist() == [1, 2]
    held.number("kg")[0] = 9.0
    assert held.number("kg").tolist() == [1, 2]
    with pytest.raises(AttributeError):
        held.unit = "g"
    with pytest.raises(AttributeError):
        held.other = 1


@pytest.mark.parametrize("make", [pickle.dumps, copy.copy, copy.deepcopy], ids=lambda f: f.__name__)
@pytest.mark.parametrize(
    "quantity",
    [hw.q("22½ YSW"), hw.q([1.0, np.nan], "kg"), hw.q(8, "%"), hw.q(pd.Series([1.0]), "m")],
)
def test_a_quantity_can_be_kept(make, quantity):
    again = make(quantity)
    again = pickle.loads(again) if isinstance(again, bytes) else again
    assert repr(again) == repr(quantity)
    np.testing.assert_array_equal(again.number(quantity.unit), quantity.number(quantity.unit))


def test_how_it_shows():
    assert repr(hw.q("22½ YSW")) == "<linear density (count): 22½ YSW>"
    assert str(hw.q(16, "Nm").to("tex")) == "62.5 tex"
    assert f"{hw.q('1.2345 kg'):.2f}" == "1.23 kg"
    assert f"{hw.q('8 %')}" == "8 %"
    assert hw.q("16 Nm")._repr_html_() == '<span title="linear density (count)">16 Nm</span>'
    assert hw.q("16 Nm").kind == "linear density (count)"


def test_units_are_listed_with_their_sources():
    for unit in UNITS:
        assert unit["definition"]
        assert unit["basis"]
        assert hw.source(unit["source"])["title"]
    with pytest.raises(KeyError, match="no source"):
        hw.source("nobody 1900")
