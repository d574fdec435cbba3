"""Formulas of several lists, and the change wheel, through Python."""

import pickle

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from hankwise.cli import main
from hypothesis import given
from hypothesis import strategies as st

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

ENDS = st.lists(
    st.tuples(st.floats(2, 2000), st.floats(0.3, 5), st.floats(0.1, 100)), min_size=1, max_size=6
)


def tex(figures):
    return [f"{float(x)!r} tex" for x in figures]


@given(ENDS)
def test_folding_is_a_dot_product(ends):
    counts, lengths, prices = np.array(ends).T
    fold = hw.yarn.fold_fed(tex(counts), lengths.tolist()).number("tex")
    np.testing.assert_allclose(fold, counts @ lengths, rtol=1e-12)
    money = [f"{p!r} /kg" for p in prices.tolist()]
    cost = hw.yarn.fold_cost(tex(counts), lengths.tolist(), money).number("/kg")
    np.testing.assert_allclose(cost, np.average(prices, weights=counts * lengths), rtol=1e-12)
    # A quantity that holds an array is a list too.
    assert hw.yarn.fold_fed(hw.q(counts, "tex"), hw.q(lengths, "")).number("tex") == fold


@given(st.lists(st.tuples(st.floats(12, 150), st.floats(12, 150)), min_size=1, max_size=6))
def test_a_train_is_a_product(pairs):
    drivers, driven = np.array(pairs).T
    ratio = hw.mill.train_ratio(drivers.tolist(), driven.tolist()).number("")
    np.testing.assert_allclose(ratio, np.prod(drivers) / np.prod(driven), rtol=1e-12)


@given(st.floats(20, 1500), st.floats(0.05, 2))
def test_contraction_by_the_angle(twist, millimetres):
    alpha = np.arctan(np.pi * millimetres / 1000 * twist)
    t, d = f"{twist!r} turns/m", f"{millimetres!r} mm"
    got = hw.yarn.helix_contraction(t, d).number("fraction")
    np.testing.assert_allclose(got, 1 - 2 / (1 + 1 / np.cos(alpha)), atol=1e-13)
    two = hw.yarn.two_fold_contraction("8 %", "3 %", t, d).number("fraction")
    np.testing.assert_allclose(two, 1 - 0.97 / 0.92 * np.cos(alpha), atol=1e-13)


def test_columns_in_lists():
    shares = pd.Series([0.25, 0.5], index=["a", "b"])
    got = hw.yarn.mean_by_share([shares, 1 - shares], [10, 20])
    assert got.number("").to_dict() == {"a": 17.5, "b": 15.0}
    fed = hw.yarn.fold_fed([hw.q([10.0, 20.0], "tex"), "5 tex"], [1, np.array([2.0, 4.0])])
    assert fed.number("tex").tolist() == [20.0, 40.0]
    # A missing value is no reason to refuse the others.
    shares["a"] = np.nan
    got = hw.yarn.mean_by_share([shares, [0.5, 0.5]], [10, 20]).number("")
    np.testing.assert_array_equal(got, [np.nan, 15])


@pytest.mark.parametrize(
    "row",
    [
        tuple,
        iter,
        np.array,
        pd.Series,
        lambda members: (member for member in members),
        lambda members: np.array(members, dtype=object),
    ],
)
def test_any_row_is_a_list(row):
    expected = hw.yarn.fold_fed(["20 tex", "30 tex"], [1, 2])
    assert hw.yarn.fold_fed(row(["20 tex", "30 tex"]), row([1, 2])) == expected
    wheel = hw.mill.change_wheel(
        twist_constant="995 tpi", wanted_twist="18.1 tpi", wheels=row([50, 54])
    )
    assert wheel["teeth"].number("") == 54
    card = hw.yarn.check_weight_card(count="16 Nm", check_lengths=row(["100 m", "120 yd"]))
    assert len(card["check_weights"]) == 2


@pytest.mark.parametrize(
    "none", [{"20 tex"}, {"20 tex": 1}, "20 tex", b"20 tex", 20, None, np.zeros((2, 2))]
)
def test_what_is_no_row(none):
    with pytest.raises(hw.NotationError, match=r'counts=\["16 YSW", "16 YSW"\], not'):
        hw.yarn.fold_fed(none, [1])
    with pytest.raises(hw.NotationError, match=r'lengths=\["1.4", "1.4"\], not'):
        hw.yarn.fold_fed(["20 tex"], none)


def test_wheel_and_constant_of_unlike_kinds():
    with pytest.raises(hw.NotationError, match="each settles what is wanted: omit all but one"):
        hw.mill.change_wheel(twist_constant="995 tpi", wanted_draft="18 turns", wheels=[50])
    with pytest.raises(hw.UnitError, match=r"995 has no unit"):
        hw.mill.change_wheel(twist_constant=995, wanted_twist="18 tpi", wheels=[50])


@pytest.mark.parametrize(
    ("call", "error", "words"),
    [
        (
            lambda: hw.yarn.fold_fed(["20 tex", "30 tex"], [1]),
            hw.NotationError,
            "counts has 2 and relative_lengths has 1; they go in step",
        ),
        (
            lambda: hw.yarn.fold_cost(["20 tex"], [1], ["4 /kg", "5 /kg"]),
            hw.NotationError,
            "counts has 1 and prices_per_mass has 2",
        ),
        (lambda: hw.yarn.fold_fed([], []), hw.NotationError, "counts: the list is empty"),
        (
            lambda: hw.yarn.count_for_share("8 Ne", [1 / 7, 3 / 7, 4 / 7]),
            hw.RangeError,
            r"count_for_share, shares: they sum to 1.14285714 .*too large",
        ),
        (
            lambda: hw.yarn.mean_by_share([[0.5, 0.5], [0.5, 0.4]], [1, 2]),
            hw.RangeError,
            r"row 1: mean_by_share, shares: they sum to 0\.9 ",
        ),
        (
            lambda: hw.yarn.count_for_share.solve(
                "resultant_count", count_for_share="20 tex", shares=[0.5, 0.6]
            ),
            hw.RangeError,
            "sum to 1.1",
        ),
    ],
)
def test_lists_that_cannot_be(call, error, words):
    with pytest.raises(error, match=words):
        call()


def test_lists_in_help_and_working():
    assert "shares (list, sums to 1)" in hw.yarn.count_for_share.__doc__
    assert [i["whole"] for i in hw.yarn.mean_by_share.inputs] == [True, False]
    assert hw.yarn.fold_fed.equation == "T_R = u₁ × T₁ + u₂ × T₂"
    working = hw.yarn.fold_fed.working(["20 tex", "8 Nm"], [1, "1.5"])
    assert "relative_lengths[2] (u₂) = 1.5" in str(working)
    assert working.value == pytest.approx(20 + 1.5 * 125)
    assert {row["input"] for row in working.sensitivities} >= {"counts[1]", "relative_lengths[2]"}


def test_the_change_wheel():
    wheel = hw.mill.change_wheel(
        twist_constant=hw.q("995.31 tpi"), wanted_twist="18.1 tpi", wheels=["58", 50, 54]
    )
    assert wheel["teeth"].number("") == 54
    assert wheel["twist"].number("tpi") == pytest.approx(995.31 / 54)
    assert wheel["deviation"].number("%") == pytest.approx(100 * (995.31 / 54 / 18.1 - 1))
    assert [wheel[f"{place}.teeth"].number("") for place in ("below", "above")] == [54, 58]
    assert wheel["above.twist"].number("tpi") == pytest.approx(995.31 / 58)
    assert [row["teeth"].number("") for row in wheel["neighbours"]] == [54, 58]
    # The catalogue of 1909 finds 55 teeth; the mill of this test has none.
    assert round(wheel["wanted_teeth"].number("")) == 55
    assert "next above" in str(wheel)
    assert "<table>" in wheel._repr_html_()
    assert str(pickle.loads(pickle.dumps(wheel))) == str(wheel)
    assert "= chosen for (54.99) = 54" in str(wheel.working("twist"))
    draft = hw.mill.change_wheel(draft_constant=0.2, wanted_draft=7, wheels=[30, 40], law="direct")
    assert [draft[n].number("") for n in ("teeth", "draft", "below.teeth")] == [30, 6, 30]
    one = hw.mill.change_wheel(
        length_constant="40 mm", wanted_length="1.44 m", wheels=[36], law="direct"
    )
    assert "above.teeth" not in one
    # The one that is on, and what it gives, whatever is nearest.
    on = hw.mill.change_wheel(
        twist_constant="995.31 tpi", wanted_twist="18.1 tpi", wheels=[50, 54, 58], wheel=58
    )
    assert on["twist"].number("tpi") == pytest.approx(995.31 / 58)


TWIST = {"twist_constant": "4320 tpi", "wanted_twist": "9 tpi", "wheels": [40]}


@pytest.mark.parametrize(
    ("change", "error", "words"),
    [
        ({"wheels": [34.5]}, hw.RangeError, "change_wheel: wheels: .*whole teeth"),
        ({"wheels": []}, hw.NotationError, r"no part is owned.*\[50, 54, 58\]"),
        ({"wheels": 40}, hw.NotationError, "wheels: write a list"),
        ({"law": "linear"}, hw.NotationError, "'linear' is not one of its words"),
        ({"wanted_twist": "16 Nm"}, hw.UnitError, "wanted_twist: .*twist"),
        ({"twist_constant": "4320"}, hw.UnitError, "twist_constant: .*4320 has no"),
        ({"wanted_twist": "0.001 tpi"}, hw.RangeError, "no wheel has them"),
    ],
)
def test_change_wheels_that_cannot_be(change, error, words):
    with pytest.raises(error, match=words):
        hw.mill.change_wheel(**TWIST | change)


def test_several_lists_on_the_command_line(capsys):
    assert main(["calc", "fold_fed", "counts=20 tex, 30 tex", "relative_lengths=1, 1.5"]) == 0
    assert "= 65 tex" in capsys.readouterr().out
    assert main(["calc", "count_for_share", "resultant_count=8 Ne", "shares=50 %, 60 %"]) == 1
    assert "they sum to 1.1 (110 %)" in capsys.readouterr().err
