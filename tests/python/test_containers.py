"""What takes figures, over every container that people have.

Each cell is right and stands in the container in which it came, with its labels, or the whole is
refused with what to write.
"""

import re
import warnings
from collections.abc import Callable
from importlib import import_module
from typing import Any

import hankwise as hw
import numpy as np
import pandas as pd
import pytest

# In tex; 1000 / tex is in Nm, and 1 / (1 − 0.1) and so on are worked out by hand below.
VALUES = [16.0, 20.0, 25.0]
INDEX = ["a", "b", "c"]


def other(name: str) -> Any:
    """Give a module that not everybody has."""
    try:
        return import_module(name)
    except ImportError:
        pytest.skip(f"{name} is not installed; its containers are not tried")


def read_only() -> np.ndarray:
    array = np.array(VALUES)
    array.setflags(write=False)
    return array


def chunks() -> Any:
    return other("dask.array").from_array(np.array(VALUES), chunks=2)


def pint(values: Any) -> Any:
    return other("pint").UnitRegistry().Quantity(values, "g")


# What is given, and which of the values are in it: in the same shape, missing ones as NaN.
TAKEN: dict[str, tuple[Callable[[], Any], Any]] = {
    "float": (lambda: 16.0, 16.0),
    "int": (lambda: 16, 16.0),
    "NumPy float": (lambda: np.float64(16), 16.0),
    "NumPy float32": (lambda: np.float32(16), 16.0),
    "NumPy int": (lambda: np.int64(16), 16.0),
    "0-d": (lambda: np.array(16.0), 16.0),
    "list": (lambda: list(VALUES), VALUES),
    "tuple": (lambda: tuple(VALUES), VALUES),
    "float64": (lambda: np.array(VALUES), VALUES),
    "float32": (lambda: np.array(VALUES, dtype="f4"), VALUES),
    "ints": (lambda: np.array([16, 20, 25]), VALUES),
    "objects": (lambda: np.array(VALUES, dtype=object), VALUES),
    "strided": (lambda: np.repeat(VALUES, 2)[::2], VALUES),
    "backwards": (lambda: np.array(VALUES[::-1])[::-1], VALUES),
    "read-only": (read_only, VALUES),
    "empty": (lambda: np.array([]), []),
    "2-D": (lambda: np.array([VALUES, VALUES]), [VALUES, VALUES]),
    "2-D by columns": (lambda: np.asfortranarray([VALUES, VALUES]), [VALUES, VALUES]),
    "with NaN": (lambda: np.array([16.0, np.nan, 25.0]), [16.0, np.nan, 25.0]),
    "masked": (lambda: np.ma.array([16.0, 999.0, 25.0], mask=[0, 1, 0]), [16.0, np.nan, 25.0]),
    "Series": (lambda: pd.Series(VALUES, index=INDEX, name="n"), VALUES),
    "Series of ints": (lambda: pd.Series([16, 20, 25], index=INDEX, name="n"), VALUES),
    "Series with NaN": (
        lambda: pd.Series([16.0, np.nan, 25.0], index=INDEX, name="n"),
        [16.0, np.nan, 25.0],
    ),
    "nullable Series": (
        lambda: pd.Series([16, None, 25], index=INDEX, name="n", dtype="Int64"),
        [16.0, np.nan, 25.0],
    ),
    "nullable floats": (
        lambda: pd.Series([16, None, 25], index=INDEX, name="n", dtype="Float64"),
        [16.0, np.nan, 25.0],
    ),
    "Arrow-backed Series": (
        lambda: (
            other("pyarrow")
            and pd.Series([16.0, None, 25.0], index=INDEX, name="n", dtype="double[pyarrow]")
        ),
        [16.0, np.nan, 25.0],
    ),
    "table": (
        lambda: pd.DataFrame({"u": VALUES, "v": VALUES}, index=INDEX),
        [[x, x] for x in VALUES],
    ),
}

# What is given, and what the refusal tells to write.
REFUSED: dict[str, tuple[Callable[[], Any], str]] = {
    "bool": (lambda: True, "write numbers"),
    "None": (lambda: None, "write numbers"),
    "generator": (lambda: (x for x in VALUES), "write numbers"),
    "set": (lambda: {16.0}, "write numbers"),
    "dict": (lambda: {"a": 16.0}, "write numbers"),
    "complex": (lambda: np.array([16 + 1j]), "write numbers"),
    "Polars Series": (
        lambda: other("polars").Series("n", VALUES),
        r"polars Series; write values\.to",
    ),
    "Polars table": (lambda: other("polars").DataFrame({"n": VALUES}), r"\['column'\]\.to_numpy"),
    "Arrow array": (lambda: other("pyarrow").array(VALUES), r"values\.to_pandas\(\)"),
    "Arrow chunks": (lambda: other("pyarrow").chunked_array([VALUES]), r"values\.to_pandas\(\)"),
    "Arrow scalar": (lambda: other("pyarrow").scalar(16.0), r"value\.as_py\(\)"),
    "xarray": (lambda: other("xarray").DataArray(VALUES, dims="x"), r"values\.to_numpy\(\)"),
    "Dask": (chunks, r"values\.compute\(\)"),
    "pint value": (lambda: pint(16.0), r"unit of its own, gram.*\.magnitude"),
    "pint values": (lambda: pint(np.array(VALUES)), r"unit of its own, gram.*\.magnitude"),
}

# A function of the container, and of one value in it, from outside the library.
FUNCTIONS: dict[str, tuple[Callable[[Any], Any], Callable[[Any], Any]]] = {
    "convert": (lambda x: hw.convert(x, "tex", "Nm"), lambda x: 1000 / x),
    "q, number": (lambda x: hw.q(x, "tex").number("tex"), lambda x: x),
    "q, to": (lambda x: hw.q(x, "tex").to("Nm").number("Nm"), lambda x: 1000 / x),
    "q + q": (lambda x: (hw.q(x, "g") + hw.q(x, "g")).number("g"), lambda x: 2 * x),
    "q * 2": (lambda x: (hw.q(x, "g") * 2).number("g"), lambda x: 2 * x),
    "x * q": (lambda x: (x * hw.q("2 g")).number("g"), lambda x: 2 * x),
    "q * x": (lambda x: (hw.q("2 g") * x).number("g"), lambda x: 2 * x),
    "q / q": (lambda x: hw.q(x, "g") / hw.q("2 g"), lambda x: x / 2),
    "-q, abs": (lambda x: abs(-hw.q(x, "g")).number("g"), lambda x: x),
    "a formula of a quantity": (
        lambda x: hw.yarn.twist_factor(hw.q(x, "turns/m"), "100 tex").number("turns/cm √tex"),
        lambda x: x / 10,
    ),
    "a calculation": (lambda x: passages(hw.q(x, "m")), lambda x: x / 10),
    "a formula of plain shares": (
        lambda x: hw.mill.mass_after_loss("100 kg", of_hundred(x), "0 kg").number("kg"),
        lambda x: 100 - x,
    ),
}


def passages(length: Any) -> Any:
    """Give the minutes of a length at 10 m/min."""
    return hw.mill.passages(cloth_length=length, cloth_speed="10 m/min")["time"].number("min")


def of_hundred(values: Any) -> Any:
    """Give percents as shares, in the container in which they are."""
    if isinstance(values, bool):
        return values
    if isinstance(values, list | tuple):
        return type(values)(x / 100 for x in values)
    try:
        return values / 100
    except TypeError:
        return values


def quiet(call: Callable[[], Any]) -> Any:
    """Call without the warnings of what is unusual, which are not the question here."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", hw.RangeWarning)
        return call()


@pytest.mark.parametrize("function", FUNCTIONS)
@pytest.mark.parametrize("container", TAKEN)
def test_each_cell_is_right_in_its_container(container, function):
    make, values = TAKEN[container]
    run, one = FUNCTIONS[function]
    given = make()
    if function in ("x * q", "q * x") and isinstance(given, list | tuple):
        with pytest.raises(TypeError, match=r"write numbers.*hankwise\.q"):
            run(given)
        return
    if function == "x * q" and container == "masked":
        # NumPy's masked arrays ask for plain numbers; q * x is taken.
        with pytest.raises(TypeError, match=r"\.number\('g'\)"):
            run(given)
        return
    got = quiet(lambda: run(given))
    if not np.ndim(values):
        assert type(got) is float
        assert got == pytest.approx(one(values), rel=1e-6)
        return
    assert np.shape(got) == np.shape(values)
    if isinstance(given, pd.DataFrame | pd.Series):
        assert type(got) is type(given)
        pd.testing.assert_index_equal(got.index, given.index)
        if isinstance(given, pd.Series):
            assert got.name == given.name
        cells = got.to_numpy(dtype=float, na_value=np.nan)
    elif isinstance(given, np.ma.MaskedArray):
        assert isinstance(got, np.ma.MaskedArray)
        assert got.mask.tolist() == given.mask.tolist()
        cells = got.filled(np.nan)
    else:
        assert not isinstance(got, np.ma.MaskedArray)
        cells = np.asarray(got, dtype=float)
    np.testing.assert_allclose(cells, one(np.array(values, dtype=float)), rtol=1e-6)


@pytest.mark.parametrize("function", FUNCTIONS)
@pytest.mark.parametrize("container", REFUSED)
def test_what_is_not_taken_is_refused_with_what_to_write(container, function):
    make, words = REFUSED[container]
    given = make()
    if function == "x * q" and container.startswith("pint"):
        # pint multiplies whatever it is given; what comes out is not taken for a number.
        got = given * hw.q("2 g")
        assert isinstance(got.magnitude, hw.Quantity)
        with pytest.raises(hw.UnitError, match="unit of its own"):
            hw.q(got, "g")
        return
    if function == "x * q" and container.startswith(("Dask", "xarray", "Polars", "Arrow")):
        # The other library is asked first, and some put their own error before ours.
        with pytest.raises(Exception, match=r"(?s)."):
            run_to_the_end(FUNCTIONS[function][0], given)
        return
    with pytest.raises((TypeError, hw.HankwiseError), match=words):
        FUNCTIONS[function][0](given)


def run_to_the_end(run: Callable[[Any], Any], given: Any) -> None:
    """Run, and compute what was put off."""
    got = run(given)
    if hasattr(got, "compute"):
        got.compute()


@pytest.mark.parametrize("container", REFUSED)
def test_samples_and_lists_refuse_alike(container):
    make, words = REFUSED[container]
    if container in ("generator", "set", "dict", "bool", "None", "complex"):
        words = "write"
    for call in (
        lambda: hw.quality.summary(make()),
        lambda: hw.mill.mass_after_losses("1 kg", make()),
        lambda: hw.quality.chart(make()),
    ):
        if container == "generator":
            continue  # a row of numbers, taken one after another
        with pytest.raises((TypeError, hw.HankwiseError), match=words):
            call()


@pytest.mark.parametrize("container", ["list", "tuple", "float32", "objects", "Series", "strided"])
def test_samples_are_read_from_any_row(container):
    make, values = TAKEN[container]
    bare, grams = hw.quality.summary(make()).mean, hw.quality.summary(hw.q(make(), "g")).mean
    assert bare.number("") == grams.number("g") == pytest.approx(sum(values) / 3)


TEXTS: dict[str, Callable[[list[str]], Any]] = {
    "list": list,
    "tuple": tuple,
    "array": np.array,
    "objects": lambda texts: np.array(texts, dtype=object),
    "Series": lambda texts: pd.Series(texts, index=INDEX, name="n"),
    "Series of objects": lambda texts: pd.Series(texts, index=INDEX, name="n", dtype=object),
}


@pytest.mark.parametrize("make", TEXTS.values(), ids=TEXTS)
def test_a_column_of_texts_is_brought_to_the_unit_of_the_first(make):
    texts = make(["16 tex", "50 Nm", "1000 den"])
    read = hw.q(texts)
    assert read.unit == "tex"
    got = read.number("tex")
    np.testing.assert_allclose(np.asarray(got), [16, 20, 1000 / 9])
    if isinstance(texts, pd.Series):
        assert list(got.index) == INDEX
        assert got.name == "n"
    factor = hw.yarn.twist_factor("100 turns/m", texts).number("turns/cm √tex")
    np.testing.assert_allclose(np.asarray(factor), np.sqrt([16, 20, 1000 / 9]))
    shares = hw.mill.mass_after_loss("100 kg", make(["10 %", "20 %", "0.4"]), "0 kg")
    np.testing.assert_allclose(np.asarray(shares.number("kg")), [90, 80, 60])


@pytest.mark.parametrize("make", TEXTS.values(), ids=TEXTS)
def test_the_rows_that_cannot_be_read_are_named(make):
    texts = make(["16 tex", "many tex", "17 kg"])
    label = " ('b')" if isinstance(texts, pd.Series) else ""
    words = re.escape(f"2 of 3 rows cannot be read: row 1{label}: ")
    with pytest.raises(hw.NotationError, match=rf"{words}.*many.*row 2.*mass"):
        hw.q(texts)
    with pytest.raises(hw.NotationError, match=rf"twist_factor, count: {words}.*row 2"):
        hw.yarn.twist_factor("100 turns/m", texts)


def test_a_missing_text_stays_missing():
    for texts in (["16 tex", None], pd.Series(["16 tex", None]), [hw.q("16 tex"), np.nan]):
        got = np.asarray(hw.q(texts).number("tex"))
        np.testing.assert_array_equal(got, [16.0, np.nan])


def test_texts_with_units_need_no_other():
    with pytest.raises(TypeError, match=r"write numbers.*hankwise\.q\(values\)\.to\('tex'\)"):
        hw.q(["16 tex", "17 tex"], "tex")
