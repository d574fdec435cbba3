"""Columns: what one value is refused for is NaN in its row, and one warning says where and why.

What a person does with a column of quantities is done, or refused with what to write.
"""

import json
import operator
import pickle
import subprocess
import sys
import warnings

import hankwise as hw
import numpy as np
import pandas as pd
import pytest


def told(call):
    """Give what a call gives, and its warnings."""
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        got = call()
    assert all(w.category is hw.RangeWarning for w in caught)
    # They point at the line that called.
    assert all(w.filename == __file__ for w in caught)
    return got, [str(w.message) for w in caught]


def strict(text):
    def refuse(word):
        raise AssertionError(f"{word} is no JSON")

    return json.loads(text, parse_constant=refuse)


# --- what is refused in a row -----------------------------------------------------------------

# A formula, its inputs by name, and the rows that one value is refused for.
ROWS = {
    # Divided by zero.
    "people_needed": (
        hw.mill.people_needed,
        {"machines": "4", "per_person": ["0", "1", "2"]},
        [0],
    ),
    # What is held up is more than there was.
    "mass_after_loss": (
        hw.mill.mass_after_loss,
        {"mass_in": ["1 kg", "3 kg", "1 kg"], "loss": "10 %", "held_up": "2 kg"},
        [0, 2],
    ),
}


def columns_of(given, container):
    def column(texts):
        return texts if isinstance(texts, str) else container(texts)

    return {name: column(texts) for name, texts in given.items()}


@pytest.mark.parametrize(("formula", "given", "wrong"), ROWS.values(), ids=ROWS)
def test_a_row_that_one_value_is_refused_for_is_missing(formula, given, wrong):
    names = {i["name"] for i in formula.inputs}
    assert names == set(given), names
    length = max(len(x) for x in given.values() if not isinstance(x, str))
    index = [f"lot {k}" for k in range(length)]
    for container in (list, np.array, lambda texts: pd.Series(texts, index=index)):
        got, messages = told(lambda c=container: formula(**columns_of(given, c)))
        cells = np.asarray(got.number(got.unit))
        assert np.flatnonzero(np.isnan(cells)).tolist() == wrong
        (message,) = [m for m in messages if "have no answer" in m]
        label = " ('lot 0')" if container is not list and container is not np.array else ""
        assert f"{len(wrong)} of {length} rows have no answer (NaN)" in message
        assert f"the first in row 0{label}: " in message
        # The words of the refusal of that row alone, and every other row as it is alone.
        for row in range(length):
            alone = {k: x if isinstance(x, str) else x[row] for k, x in given.items()}
            if row in wrong:
                with pytest.raises(hw.RangeError) as refused:
                    told(lambda a=alone: formula(**a))
                if row == wrong[0]:
                    assert str(refused.value).removeprefix(f"{formula.name}: ") in message
            else:
                assert told(lambda a=alone: formula(**a))[0].number(got.unit) == cells[row]


@pytest.mark.parametrize("formula", hw.formulas.values(), ids=list(hw.formulas))
def test_a_column_has_no_answer_where_one_value_has_none(formula):
    """Every formula, at the ends of what is usual and beyond: the same verdict row by row."""
    if any(i["many"] for i in formula.inputs):
        return
    rng = np.random.default_rng(len(formula.name))
    rows = 24
    columns = {}
    for asked in formula.inputs:
        low, high = asked["usual"]
        low, high = max(low, -1e9), min(high, 1e9)
        column = rng.choice([low, high, (low + high) / 2, low / 3, high * 3], rows)
        if asked["kind"] == "fraction":
            column = np.clip(column, 0, 1)
        columns[asked["name"]] = column
    units = {i["name"]: i["unit"] or "fraction" for i in formula.inputs}
    bare = {i["name"] for i in formula.inputs if not i["unit"]}

    def value(name, x):
        return x if name in bare else hw.q(x, units[name])

    def alone(row):
        return {name: value(name, float(column[row])) for name, column in columns.items()}

    verdicts = []
    for row in range(rows):
        try:
            with warnings.catch_warnings():
                warnings.simplefilter("ignore")
                verdicts.append(formula(**alone(row)).number(formula.output["unit"] or "fraction"))
        except hw.UnitError:
            return  # plain numbers are not taken for this input
        except hw.RangeError as refused:
            verdicts.append(np.nan)
            if "is not possible for a" in str(refused) and "it comes from" not in str(refused):
                return  # an input that cannot be is refused by its row
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        whole = formula(**{name: value(name, column) for name, column in columns.items()})
    cells = np.asarray(whole.number(formula.output["unit"] or "fraction"))
    np.testing.assert_array_equal(cells, verdicts)
    said = [str(w.message) for w in caught if "have no answer" in str(w.message)]
    assert len(said) == bool(np.isnan(verdicts).any())


def test_a_missing_value_is_no_refusal():
    got, messages = told(lambda: hw.mill.mass_after_loss(hw.q([10, np.nan], "kg"), 0.1, "0 kg"))
    np.testing.assert_array_equal(got.number("kg"), [9, np.nan])
    assert not messages


def test_an_impossible_input_is_refused_by_its_row():
    with pytest.raises(hw.RangeError, match="mass_in, row 1"):
        hw.mill.mass_after_loss(hw.q([1, -1], "kg"), 0.1, "0 kg")
    with pytest.raises(hw.RangeError, match="mass_in, row 1"):
        hw.mill.mass_after_loss(hw.q([1, -1], "g"), 0.1, "0 kg")


# --- conversion -------------------------------------------------------------------------------

CHANGES = [
    (0.0, "Nm", "tex"),
    (-16.0, "Nm", "tex"),
    (-5.0, "tex", "Nm"),
    (0.0, "tex", "Nm"),
    (-16.0, "Nm", "YSW"),
    (np.inf, "Nm", "tex"),
    (np.inf, "kg", "lb"),
    (1e308, "t", "g"),
    (1e-320, "Nm", "tex"),
]


@pytest.mark.parametrize(("x", "a", "b"), CHANGES)
def test_what_has_no_value_in_another_unit(x, a, b):
    words = "not possible|no finite value"
    for make in (float, np.float64):
        with pytest.raises(hw.RangeError, match=words):
            hw.convert(make(x), a, b)
        with pytest.raises(hw.RangeError, match=f"{words}|finite number"):
            hw.q(make(x), a).to(b)
        with pytest.raises(hw.RangeError, match=f"{words}|finite number"):
            hw.q(make(x), a).number(b)
    index = ["p", "q", "r"]
    for container in (list, np.array, lambda v: pd.Series(v, index=index), np.ma.array):
        column = container([1.0, x, 2.0])
        got, (message,) = told(lambda c=column: hw.convert(c, a, b))
        assert np.isnan(np.ma.filled(np.asanyarray(got), np.nan)).tolist() == [False, True, False]
        label = " ('q')" if isinstance(column, pd.Series) else ""
        assert (
            f"1 of 3 values in {a} cannot be taken to {b} (NaN), the first in row 1{label}: "
            in message
        )
        held, messages = told(lambda c=column: hw.q(c, a).number(b))
        assert np.isnan(np.ma.filled(np.asanyarray(held), np.nan)).tolist() == [False, True, False]
        assert len(messages) == 1
    out = np.array([1.0, x, 2.0])
    _, (message,) = told(lambda: hw.convert(out, a, b, out=out))
    assert "1 of 3 values" in message
    assert np.isnan(out).tolist() == [False, True, False]


def test_the_place_in_a_table():
    table = pd.DataFrame({"u": [16.0, 20.0], "v": [10.0, 0.0]}, index=["x", "y"])
    for given in (table, table.to_numpy(), np.asfortranarray(table.to_numpy())):
        got, (message,) = told(lambda g=given: hw.convert(g, "Nm", "tex"))
        assert "row 1" in message
        assert "column 1" in message
        assert np.isnan(np.asarray(got)).tolist() == [[False, False], [False, True]]
        if given is table:
            assert "row 1 ('y'), column 1 ('v')" in message
    out = np.zeros((2, 3), order="F")
    given = np.asfortranarray([[1.0, 2.0, 0.0], [1.0, 2.0, 3.0]])
    _, (message,) = told(lambda: hw.convert(given, "Nm", "tex", out=out))
    assert "row 0, column 2" in message


def test_a_difference_below_zero_can_be_converted():
    assert (hw.q("1 kg") - hw.q("2 kg")).number("g") == -1000
    assert (hw.q("30 tex") - hw.q("40 tex")).number("den") == -90


def test_many_values_over_all_cores():
    many = np.full(1_300_000, 16.0)
    many[[700_000, 900_000]] = 0.0
    out = np.empty_like(many)
    _, (message,) = told(lambda: hw.convert(many, "Nm", "tex", out=out))
    assert "2 of 1300000 values" in message
    assert "row 700000" in message
    given, (message,) = told(lambda: hw.q(many, "Nm"))
    assert "row 700000" in message
    assert np.isnan(given.number("tex")).sum() == 2


# --- JSON -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "words",
    [
        # The clean yield of nothing is 0, of which there is no percent.
        ["calc", "mass_after_loss", "mass_in=0 kg", "loss=8 %", "held_up=0 kg", "--json"],
        ["calc", "mass_after_loss", "mass_in=1 kg", "loss=100 %", "held_up=0 kg", "--json"],
        ["yarn", "16 Nm", "--json"],
        ["convert", "16", "Nm", "tex", "--json"],
    ],
    ids=" ".join,
)
def test_json_holds_numbers_or_null(words):
    done = subprocess.run(
        [sys.executable, "-m", "hankwise", *words], capture_output=True, check=True
    )
    strict(done.stdout.decode())


@pytest.mark.parametrize(
    "words",
    [["yarn", "0 six-cord", "--json"], ["convert", "0", "Nm", "tex"], ["convert", "-5 tex", "Nm"]],
    ids=" ".join,
)
def test_no_count_is_refused(words):
    done = subprocess.run([sys.executable, "-m", "hankwise", *words], capture_output=True)
    assert done.returncode != 0
    assert b"more than 0" in done.stderr
    assert b"Traceback" not in done.stderr
    assert not done.stdout


# --- what a person does with a column ---------------------------------------------------------

SERIES = pd.Series([1.0, 2.0, 6.0], index=["a", "b", "c"], name="m")
GRAMS = hw.q(SERIES, "g")
ASK = r"\.number\('g'\)"


@pytest.mark.parametrize(
    "call",
    [
        lambda: pd.DataFrame({"x": SERIES}).assign(K=GRAMS),
        lambda: pd.DataFrame({"x": SERIES}).__setitem__("K", GRAMS),
        lambda: pd.DataFrame({"x": SERIES}).__setitem__("K", hw.q([1, 2, 3], "g")),
        lambda: pd.DataFrame({"x": SERIES}).__setitem__("K", hw.q("1 g")),
        lambda: pd.DataFrame({"K": GRAMS}),
        lambda: pd.Series(GRAMS),
        lambda: np.where([True, False, True], GRAMS, GRAMS),
        lambda: np.where([True, False], hw.q("1 g"), hw.q("2 g")),
        lambda: np.asarray(GRAMS),
        lambda: np.array(hw.q("1 g"), dtype=float),
        lambda: np.concatenate([GRAMS, GRAMS]),
        lambda: np.sqrt(GRAMS),
        lambda: np.sqrt(hw.q("1 g")),
        lambda: np.exp(GRAMS),
        lambda: float(hw.q("1 g")),
        lambda: np.add.reduce(GRAMS),
        lambda: np.multiply(GRAMS, 2, out=np.zeros(3)),
    ],
)
def test_plain_numbers_are_asked_for_with_their_unit(call):
    with pytest.raises(TypeError, match=ASK):
        call()


def test_a_column_goes_into_a_frame_as_numbers():
    frame = pd.DataFrame({"t": [350.0, 400.0]}, index=["a", "b"])
    factor = hw.yarn.twist_factor(twist=hw.q(frame["t"], "turns/m"), count="100 tex")
    frame["K"] = factor.number("turns/cm √tex")
    assert frame["K"].tolist() == [35, 40]
    assert frame["K"].dtype == float


@pytest.mark.parametrize(
    "series",
    [
        SERIES,
        SERIES.astype("Float64"),
        SERIES.astype("Int64"),
        SERIES.to_frame(),
        SERIES.to_numpy(),
    ],
)
def test_a_series_times_a_quantity_is_that_quantity_times_the_series(series):
    two = hw.q("2 g")
    for got in (series * two, two * series):
        assert isinstance(got, hw.Quantity)
        assert got.unit == "g"
        assert np.asarray(got.number("g"), dtype=float).ravel().tolist() == [2, 4, 12]
    with pytest.raises(hw.UnitError, match="has no unit"):
        series + two
    with pytest.raises(hw.UnitError, match="has no unit"):
        operator.lt(series, two)
    with pytest.raises(TypeError, match=f"{ASK}|unsupported"):
        series / two


def test_the_members_of_a_column():
    for given in (GRAMS, hw.q([1, 2, 6], "g"), hw.q(np.array([1, 2, 6]), "g")):
        members = list(given)
        assert all(isinstance(one, hw.Quantity) for one in members)
        assert [str(one) for one in members] == ["1 g", "2 g", "6 g"]
        again = hw.q(members)
        assert again.unit == "g"
        assert again.number("g").tolist() == [1, 2, 6]
    assert [len(row) for row in hw.q([[1, 2], [3, 4]], "g")] == [2, 2]
    with pytest.raises(TypeError, match=f"no places.*{ASK}"):
        list(hw.q("1 g"))


@pytest.mark.parametrize("column", [GRAMS, hw.q([1, 2, 6], "g")], ids=["Series", "array"])
def test_figures_of_a_column(column):
    assert column.max().number("g") == np.max(column).number("g") == 6
    assert column.min().number("kg") == np.min(column).number("kg") == 0.001
    assert column.mean().number("g") == np.mean(column).number("g") == 3
    assert column.sum().number("g") == 9
    # Of 1, 2 and 6 the squares of what is off the mean sum to 14.
    assert column.std().number("g") == pytest.approx(7**0.5)
    assert np.std(column).number("g") == pytest.approx((14 / 3) ** 0.5)
    assert column.std(ddof=0).number("g") == pytest.approx((14 / 3) ** 0.5)
    assert np.asarray(abs(-column).number("g")).tolist() == [1, 2, 6]
    assert np.asarray(np.abs(-column).number("g")).tolist() == [1, 2, 6]
    assert np.asarray((column / 7).round(2).number("g")).tolist() == [0.14, 0.29, 0.86]
    assert np.asarray(round(column / 7, 1).number("g")).tolist() == [0.1, 0.3, 0.9]
    assert f"{column:.2f}" == "[1.00 2.00 6.00] g"
    with pytest.raises(ValueError, match="format"):
        f"{column:wrong}"


def test_figures_of_one_value():
    one = hw.q("-1.234 kg")
    assert abs(one).number("kg") == 1.234
    assert round(one, 1).number("kg") == -1.2
    assert str(-one) == "1.234 kg"


def test_figures_of_indirect_counts_are_refused():
    counts = hw.q([16, 18], "YSW")
    for call in (counts.max, counts.min, counts.std):
        with pytest.raises(hw.UnitError, match=r"\.to\('tex'\)"):
            call()
    with pytest.raises(hw.NotationError, match="of no values"):
        hw.q([], "g").max()


def test_masked_values_stay_out_of_account():
    masked = np.ma.array([150.0, 999.0, 152.0], mask=[0, 1, 0])
    assert hw.q(masked, "tex").mean().number("tex") == 151
    assert hw.q(masked, "tex").max().number("tex") == 152
    with pytest.raises(hw.HankwiseError, match=r"missing|NaN"):
        hw.quality.summary(hw.q(masked, "tex"))
    # What is masked may be anything, and nothing is said of it.
    odd = np.ma.array([16.0, 0.0, 20.0], mask=[0, 1, 0])
    got, messages = told(lambda: hw.convert(odd, "Nm", "tex"))
    assert got.mask.tolist() == [False, True, False]
    assert got.compressed().tolist() == [62.5, 50]
    assert not messages


def test_division_by_zero():
    for by in ([1.0, 0.0], pd.Series([1.0, 0.0], index=["a", "b"])):
        got, (message,) = told(lambda b=by: hw.q([6, 6], "g") / np.asanyarray(b))
        np.testing.assert_array_equal(got.number("g"), [6, np.nan])
        assert "1 of 2 values are divided by zero (NaN), the first in row 1" in message
    with pytest.raises(ZeroDivisionError):
        hw.q("1 g") / hw.q("0 g")
    got, (message,) = told(lambda: hw.q([6, 6], "g") / hw.q([3, 0], "g"))
    np.testing.assert_array_equal(got, [2, np.nan])


# --- what else a program asks -----------------------------------------------------------------


def test_all_names_are_listed():
    assert {"counts", "handbook", "q", "convert", *hw.__all__} <= set(dir(hw))
    # In an interpreter of its own, before anything was asked for.
    code = "import hankwise as hw; assert {'counts', 'handbook'} <= set(dir(hw))"
    subprocess.run([sys.executable, "-c", code], check=True)


def test_plans_of_the_same_text_are_equal(root):
    path = root / "examples/first-lot.toml"
    one, other = hw.plan.load(path), hw.plan.load(path)
    assert one == other
    assert hash(one) == hash(other)
    assert pickle.loads(pickle.dumps(one)) == one
    assert one != hw.plan.load(root / "examples/short-lot.toml")
    assert one != "first lot"


@pytest.mark.parametrize("threads", [1, 2, 4])
def test_the_progress_reaches_the_total(root, threads):
    plan = hw.plan.load(root / "examples/first-lot.toml")
    seen = []
    plan.run(20_000, threads=threads, progress=lambda done, total: seen.append((done, total)))
    assert seen[-1] == (20_000, 20_000)
    assert seen == sorted(seen)


def test_warnings_point_at_the_line_that_called():
    def ask():
        return hw.yarn.twist_factor("9 tpi", "0.5 tex")

    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        ask()
    (warning,) = caught
    assert warning.lineno == ask.__code__.co_firstlineno + 1


def test_rows_that_do_not_belong_together_are_refused():
    """Shares of unlike things in a column, a Series beside a table, lists in another order."""
    take_up = hw.cloth.take_up_from_lengths("2 m", "1.9 m")
    crimp = hw.cloth.crimp_from_take_up("8 %")
    with pytest.raises(hw.NotationError, match=r"row 1: .*crimp.*take-up"):
        hw.q([crimp, take_up])
    content = hw.fibre.moisture_content(regain="16 %")
    with pytest.raises(hw.UnitError, match="moisture content"):
        hw.fibre.mass_at_regain("10 kg", hw.q([hw.q("16 %"), content]), "17 %")
    table = pd.DataFrame({"x": [1, 2], "y": [3, 4]}, index=["a", "b"])
    loss = pd.Series([0.1, 0.2], index=["a", "b"])
    for mass in (table, np.ones((2, 2))):
        with pytest.raises(hw.NotationError, match="a Series and a table"):
            hw.mill.mass_after_loss(hw.q(mass, "kg"), loss, "0 kg")
    greasy, washed = pd.Series([200, 198, 205.0]), pd.Series([124, 119, 130.0], index=[2, 1, 0])
    with pytest.raises(hw.NotationError, match="unequal labels"):
        hw.fibre.test_wash(
            greasy_masses=hw.q(greasy, "g"), washed_masses=hw.q(washed, "g"), regain="16 %"
        )


def test_what_cannot_be_is_refused_with_its_row_and_label():
    masses = pd.Series([10, -1], index=["fine", "coarse"])
    with pytest.raises(hw.RangeError, match=r"mass_in, row 1 \('coarse'\)"):
        hw.mill.mass_after_loss(hw.q(masses, "kg"), "10 %", "0 kg")
    with pytest.raises(hw.RangeError, match="reading 2"):
        hw.quality.summary(hw.q([150, -152], "tex"))
    with pytest.raises(hw.RangeError, match="capability_to_nearest"):
        hw.quality.capability_to_nearest(mean=7, upper=5, lower=10, sd=1)


def test_a_search_of_pages_finds_nothing_at_once():
    assert len(hw.find("a" * 8000)) == 0
