"""Formulas: calls, arrays, workings, solving, warnings, the catalogue."""

import html
import inspect
import pickle
import pydoc
import warnings

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

FACTOR = hw.yarn.twist_factor
LOSS = hw.mill.mass_after_loss


# --- calls ------------------------------------------------------------------------------------


def test_a_formula_takes_texts_quantities_and_places():
    expected = FACTOR(twist="9 tpi", count="16 YSW").number("tpi/√YSW")
    assert expected == pytest.approx(9 / 4, rel=1e-12)
    for other in (
        FACTOR("9 tpi", "16 YSW"),
        FACTOR("9 tpi", count=hw.q(16, "YSW")),
        FACTOR(hw.q("9 tpi").to("turns/m"), hw.q("16 YSW").to("tex")),
    ):
        assert other.number("tpi/√YSW") == pytest.approx(expected, rel=1e-12)
        assert isinstance(other, hw.Quantity)


def test_shares_may_be_plain_and_percent():
    answers = [
        LOSS("10 kg", share, "0 kg").number("kg") for share in (0.05, "5 %", "0.05", hw.q(5, "%"))
    ]
    assert answers == [9.5] * 4


@pytest.mark.parametrize(
    ("call", "error", "words"),
    [
        (lambda: FACTOR(9, "16 YSW"), hw.UnitError, "twist_factor, twist: 9 has no unit.*'9 tpi'"),
        (lambda: FACTOR("9", "16 YSW"), hw.UnitError, "9 has no unit"),
        (lambda: FACTOR("9 Nm", "16 YSW"), hw.UnitError, "'Nm' is a unit of linear density"),
        (lambda: FACTOR("9 tpi", "16 cut"), hw.UnitError, "galashiels-cut"),
        (lambda: FACTOR("9 tpi", "16 Nek"), hw.UnitError, "worsted"),
        (lambda: FACTOR(hw.q("9 kg"), "16 YSW"), hw.UnitError, "9 kg is a mass .*for a twist"),
        (lambda: FACTOR(np.array([9.0]), "16 YSW"), hw.UnitError, "9 has no unit"),
        (lambda: FACTOR(["nine"], "16 YSW"), hw.NotationError, "twist: 1 of 1 .*row 0: .*nine"),
        (lambda: FACTOR("9 tpi", "0 YSW"), hw.RangeError, "count: '0 YSW'.*finite"),
        (lambda: LOSS("1 kg", 16, "0 kg"), hw.UnitError, "write '16 %' for 16 percent"),
        (lambda: LOSS("1 kg", "16", "0 kg"), hw.UnitError, "write '16 %'"),
        (lambda: LOSS("1 kg", [5, 8], "0 kg"), hw.UnitError, "write '8 %'"),
        (lambda: LOSS("1 kg", True, "0 kg"), TypeError, "loss: write numbers, not True"),
        (lambda: LOSS("1 kg", None, "0 kg"), TypeError, "write numbers, not None"),
        (lambda: LOSS("1 kg", float("nan"), "0 kg"), hw.RangeError, "missing"),
        (lambda: LOSS("1 kg", "120 %", "0 kg"), hw.RangeError, "between 0 % and 100 %"),
        (lambda: LOSS("-1 kg", "12 %", "0 kg"), hw.RangeError, "0 kg or more"),
        (lambda: LOSS(hw.q([1, -1], "kg"), 0.1, "0 kg"), hw.RangeError, "mass_in, row 1"),
        (lambda: LOSS("1 kg", 0.1, "2 kg"), hw.RangeError, "not together"),
        (lambda: FACTOR("9 tpi"), hw.CallError, r"count \(yarn count\) is missing.*16 YSW"),
        (lambda: FACTOR("9 tpi", "16 YSW", 1), hw.CallError, "takes 2 inputs"),
        (lambda: FACTOR("9 tpi", cuont="16 YSW"), hw.CallError, "no input 'cuont'.*twist, count"),
        (lambda: FACTOR("9 tpi", twist="9 tpi"), hw.CallError, "twist was given twice"),
        (lambda: hw.yarn.mean_by_length("16 Nm"), hw.NotationError, "write a list such as"),
        (lambda: hw.yarn.mean_by_length([]), hw.NotationError, "the list is empty"),
        (lambda: hw.yarn.mean_by_length([16, 20]), hw.UnitError, "16 has no unit"),
    ],
)  # fmt: skip
def test_refusals(call, error, words):
    with pytest.raises(error, match=words):
        call()


# --- arrays -----------------------------------------------------------------------------------

KILOS = {
    "list": [10, 20.0],
    "tuple": (10, 20.0),
    "floats": np.array([10.0, 20.0]),
    "ints": np.array([10, 20]),
    "two axes": np.array([[10.0, 20.0]]),
    "every second": np.array([10.0, 0.5, 20.0])[::2],
    "backwards": np.array([20.0, 10.0])[::-1],
}


@pytest.mark.parametrize("kilos", KILOS.values(), ids=KILOS)
def test_arrays_give_arrays_of_the_same_shape(kilos):
    got = LOSS(hw.q(kilos, "kg"), 0.1, "1 kg").number("kg")
    assert type(got) is np.ndarray
    assert got.shape == np.shape(kilos)
    np.testing.assert_allclose(got.ravel(), [8, 17], rtol=1e-15)


def test_an_array_without_axes_is_a_value():
    assert LOSS(hw.q(np.array(10.0), "kg"), np.array(0.1), "1 kg").number("kg") == 8.0


def test_a_series_keeps_its_labels():
    kilos = pd.Series([10.0, 20.0], index=["a", "b"], name="lot")
    shares = pd.Series([0.1, 0.2], index=["a", "b"])
    for got in (
        LOSS(hw.q(kilos, "kg"), 0.1, "0 kg"),
        LOSS("10 kg", shares, "0 kg"),
        LOSS(hw.q(kilos, "kg"), shares, hw.q(np.array([0.0, 0.0]), "kg")),
    ):
        assert list(got.number("kg").index) == ["a", "b"]
    assert LOSS(hw.q(kilos, "kg"), shares, "0 kg").number("kg").tolist() == [9.0, 16.0]
    table = pd.DataFrame({"x": kilos, "y": kilos * 2})
    pd.testing.assert_frame_equal(LOSS(hw.q(table, "kg"), 0.25, "0 kg").number("kg"), table * 0.75)


def test_series_of_unequal_labels_are_not_put_together():
    kilos = pd.Series([10.0, 20.0], index=["a", "b"])
    with pytest.raises(hw.NotationError, match=r"unequal labels \(index\).*align"):
        LOSS(hw.q(kilos, "kg"), pd.Series([0.1, 0.2], index=["b", "a"]), "0 kg")


def test_shapes_are_brought_together_as_numpy_does_it():
    kilos, shares = np.array([[10.0], [20.0], [30.0]]), np.array([0.1, 0.2])
    got = LOSS(hw.q(kilos, "kg"), shares, "0 kg").number("kg")
    np.testing.assert_allclose(got, kilos * (1 - shares), rtol=1e-15)
    with pytest.raises(ValueError, match="broadcast"):
        LOSS(hw.q([1, 2, 3], "kg"), shares, "0 kg")


def test_values_stand_in_their_place_whatever_their_order_in_memory():
    kilos = np.array([[10.0, 20.0, 30.0], [40.0, 50.0, 60.0]])
    shares = np.array([[0.1, 0.12, 0.14], [0.16, 0.18, 0.2]])
    for a in (kilos, np.asfortranarray(kilos), kilos[::-1][::-1], kilos.T.copy().T):
        for b in (shares, np.asfortranarray(shares)):
            got = LOSS(hw.q(a, "kg"), b, "0 kg").number("kg")
            np.testing.assert_allclose(got, kilos * (1 - shares), rtol=1e-15)
        got = LOSS(hw.q(a, "kg"), "10 %", "0 kg").number("kg")
        np.testing.assert_allclose(got, kilos * 0.9, rtol=1e-15)


def test_lists_of_counts_with_arrays_in_them():
    counts = hw.q(pd.Series([16.0, 20.0], index=["a", "b"]), "Nm")
    expected = (62.5 + 50) / 2
    assert hw.yarn.mean_by_length(counts).number("tex") == expected
    assert hw.yarn.mean_by_length(["16 Nm", hw.q("20 Nm")]).number("tex") == expected
    mixed = hw.yarn.mean_by_length([hw.q([16.0, 20.0], "Nm"), "20 Nm"])
    assert mixed.number("tex").tolist() == [expected, 50.0]


def test_a_missing_value_stays_missing_in_its_place():
    got = LOSS(hw.q([10.0, np.nan, 20.0], "kg"), [np.nan, 0.1, 0.1], "0 kg").number("kg")
    np.testing.assert_allclose(got, [np.nan, np.nan, 18.0])
    assert LOSS(hw.q(np.empty((0, 2)), "kg"), 0.1, "0 kg").number("kg").shape == (0, 2)


@given(st.lists(st.floats(min_value=20, max_value=3000), max_size=70), st.floats(2, 2000))
def test_arrays_and_values_agree_bit_for_bit(twists, tex):
    one_by_one = [FACTOR(hw.q(t, "turns/m"), hw.q(tex, "tex")) for t in twists]
    unit = "turns/cm √tex"
    got = FACTOR(hw.q(np.array(twists, dtype=float), "turns/m"), hw.q(tex, "tex")).number(unit)
    assert got.tolist() == [x.number(unit) for x in one_by_one]


# --- warnings ---------------------------------------------------------------------------------


def told(call) -> list[str]:
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        call()
    assert all(w.category is hw.RangeWarning for w in caught)
    assert all(w.filename == __file__ for w in caught)
    return [str(w.message) for w in caught]


def test_an_unusual_value_is_told_once_with_its_range_and_who_says_so():
    (message,) = told(lambda: FACTOR("9 tpi", "0.5 tex"))
    assert "count = 0.5 tex is unusual" in message
    assert "1 tex to 2000 tex" in message
    assert "(custom of the trade)" in message
    assert not told(lambda: FACTOR("9 tpi", "16 YSW"))
    assert len(told(lambda: FACTOR("9000 tpi", "0.5 tex"))) == 2
    assert len(told(lambda: FACTOR.working("9 tpi", "0.5 tex"))) == 1


def test_unusual_values_of_an_array_are_told_once():
    (message,) = told(lambda: FACTOR("9 tpi", hw.q([16.0, 0.5, 0.4, np.nan], "tex")))
    assert "count = 0.5 tex is unusual" in message
    assert message.endswith("so are 1 more")
    (message,) = told(lambda: FACTOR("9000 tpi", hw.q([16.0, 17.0], "tex")))
    assert "twist = " in message


# --- workings ---------------------------------------------------------------------------------


def test_the_working_shows_every_step_from_what_was_typed():
    working = FACTOR.working(twist="9 tpi", count="16 YSW")
    assert working.value == FACTOR("9 tpi", "16 YSW").number(working.unit)
    assert (working.unit, working.name) == ("turns/cm √tex", "twist_factor")
    text = str(working)
    for part in ("9 tpi × 39.3700787", "16 YSW", "t / 100 × √T", "38.99 turns/cm √tex"):
        assert part in text
    assert [line["name"] for line in working.lines] == ["twist", "count", "twist_factor"]
    assert working.text() == text
    # Whoever looks at it sees the answer first.
    assert repr(working) == f"twist_factor = {working.answer}\n\n{text}"
    assert "<table" in working.html()
    assert "<table" in working._repr_html_()
    assert r"\begin{aligned}" in working.latex()
    by_input = {s["input"]: s for s in working.sensitivities}
    assert by_input["twist"]["elasticity"] == pytest.approx(1)
    assert by_input["count"]["elasticity"] == pytest.approx(-0.5)
    assert by_input["twist"]["slope"] == pytest.approx(working.value / 9)


def test_the_working_of_a_dangerous_number_says_so():
    """Where the formula has a caution, so has its working, shown and as HTML; others have none."""
    working = hw.formulas["dye_mass"].working(goods_mass="20 kg", depth="2 %", dye_strength="100 %")
    assert working.cautions == hw.formulas["dye_mass"].cautions
    assert working.cautions
    assert "Cautions: " in repr(working)
    assert "hankwise-caution" in working._repr_html_()
    harmless = hw.formulas["twist_factor"].working(twist="9 tpi", count="16 YSW")
    assert not harmless.cautions
    assert "aution" not in repr(harmless) + harmless._repr_html_()


def test_the_working_of_an_array_is_of_one_place():
    kilos, shares = hw.q([[10.0], [20.0]], "kg"), np.array([0.1, 0.2])
    whole = LOSS(kilos, shares, "0 kg").number("kg")
    for place in ((0, 0), (1, 1), (-1, 0)):
        assert LOSS.working(kilos, shares, "0 kg", at=place).value == whole[place]
    assert LOSS.working(hw.q([10, 20], "kg"), 0.1, "0 kg", at=1).value == 18
    with pytest.raises(TypeError, match=r"'mass_in' is an array.*at=0"):
        LOSS.working(hw.q([10, 20], "kg"), 0.1, "0 kg")
    with pytest.raises(IndexError, match="at=9 is not a place"):
        LOSS.working(hw.q([10, 20], "kg"), 0.1, "0 kg", at=9)
    with pytest.raises(hw.RangeError, match="missing"):
        LOSS.working(hw.q([10, np.nan], "kg"), 0.1, "0 kg", at=1)


def test_no_half_written_workbook(tmp_path):
    working = FACTOR.working("9 tpi", "16 YSW")
    with pytest.raises(hw.HankwiseError, match="cannot be written"):
        working.to_workbook(tmp_path / "no such folder" / "a.xlsx")
    (tmp_path / "a.xlsx").mkdir()
    with pytest.raises(hw.HankwiseError, match="cannot be written"):
        working.to_workbook(tmp_path / "a.xlsx")
    assert [p.name for p in tmp_path.iterdir()] == ["a.xlsx"]


# --- solving ----------------------------------------------------------------------------------


def test_solving_finds_the_one_root():
    (twist,) = FACTOR.solve("twist", twist_factor="39 turns/cm √tex", count="16 YSW")
    assert FACTOR(twist, "16 YSW").number("turns/cm √tex") == pytest.approx(39, rel=1e-9)
    (count,) = FACTOR.solve("count", twist_factor="39 turns/cm √tex", twist="9 tpi")
    assert FACTOR("9 tpi", count).number("turns/cm √tex") == pytest.approx(39, rel=1e-9)


def test_solving_says_when_there_is_no_root():
    # The weft alone weighs more.
    cloth = {"warp_sett": "20 ends/in", "weft_sett": "18 picks/in", "weft_crimp": "6 %"}
    cloth |= {"warp_count": "12 worsted", "weft_count": "12 worsted"}
    with pytest.raises(hw.RangeError, match=r"no warp_crimp from .* gives .*; it gives"):
        hw.cloth.mass_per_area.solve("warp_crimp", mass_per_area="40 g/m²", **cloth)


def test_solving_gives_more_than_one_root():
    # From 7.5 % vegetable matter on, 15 % of 50 % is what is taken off, whatever there is more.
    with (
        pytest.warns(hw.RangeWarning, match="vegetable_on_greasy = 100 % is unusual"),
        pytest.warns(hw.RangeWarning, match="every vegetable_on_greasy from .* gives this result"),
    ):
        roots = hw.fibre.clean_yield_customs.solve(
            "vegetable_on_greasy", clean_yield_customs="42.5 %", clean_content="50 %"
        )
    assert len(roots) == 2
    for root in roots:
        # The most, 100 %, is unusual.
        with warnings.catch_warnings(action="ignore", category=hw.RangeWarning):
            again = hw.fibre.clean_yield_customs("50 %", root)
        assert again.number("%") == pytest.approx(42.5)


def test_solving_a_staircase_gives_both_ends_of_the_step():
    # Ten full packages of 1 kg are in 10 kg, and in all that is less than 11 kg.
    with pytest.warns(hw.RangeWarning, match="every yarn_mass from .* kg to .* kg gives this"):
        least, most = hw.mill.full_packages.solve(
            "yarn_mass", full_packages=10, package_mass="1 kg"
        )
    assert least.number("kg") == pytest.approx(10, abs=1e-4)
    assert most.number("kg") == pytest.approx(11, abs=1e-4)


def test_solving_a_floor_gives_its_whole_length():
    # No less than 90 is charged: at 11 for a kilogram, to 8.18 kg.
    with pytest.warns(hw.RangeWarning, match="every mass from 0"):
        least, most = hw.mill.charge_for_mass.solve(
            "mass", charge_for_mass=90, tariff="11 /kg", minimum_charge=90
        )
    assert least.number("kg") == 0
    assert most.number("kg") == pytest.approx(90 / 11, rel=1e-9)


def test_solving_a_stretch_without_an_end_gives_none_for_it():
    # Of 20 kg no piece comes where the fixed mass is 20 kg or more.
    with pytest.warns(hw.RangeWarning, match="every fixed_mass from 20 kg up gives this result"):
        least, most = hw.mill.pieces_from_mass.solve(
            "fixed_mass", pieces_from_mass=0, yarn_mass="20 kg", mass_per_piece="0.4 kg"
        )
    assert least.number("kg") == pytest.approx(20)
    assert most is None


def test_solving_finds_a_maximum_and_says_that_it_is_the_only_value():
    # √(p(1 − p)/k) is greatest at one half: 0.5/√400.
    said = "component_share = 50 % is the only value that gives this result; the result is at"
    with pytest.warns(hw.RangeWarning, match=said):
        (share,) = hw.mill.random_share_deviation.solve(
            "component_share", random_share_deviation=0.025, tufts=400
        )
    assert share.number("%") == pytest.approx(50)
    with pytest.warns(hw.RangeWarning, match="beyond it the formula has no answer"):
        (width,) = hw.cloth.racetrack_spacing.solve(
            "thread_width",
            racetrack_spacing="0.7 mm",
            spacing="0.7 mm",
            thread_thickness="0.31 mm",
        )
    assert width.number("mm") == pytest.approx(0.31)


def test_solving_looks_beyond_the_usual_range():
    # 512 with a fifth lost is 640.
    with pytest.warns(hw.RangeWarning, match="is unusual"):
        (price,) = hw.mill.cost_through_losses.solve(
            "price_per_mass", cost_through_losses="640 /kg", losses=["20 %"]
        )
    assert price.number("/kg") == pytest.approx(512)
    with pytest.raises(hw.RangeError, match="no price_per_mass from 1 /kg to 500 /kg"):
        hw.mill.cost_through_losses.solve(
            "price_per_mass",
            between=("1 /kg", "500 /kg"),
            cost_through_losses="640 /kg",
            losses=["20 %"],
        )


def test_the_working_of_what_is_solved_for():
    # 100 × 25 turns/cm √tex ÷ √(144 tex): in turns/m, 100 × 25 × 100 ÷ (12 × 100).
    working = FACTOR.solve_working("twist", twist_factor="25 turns/cm √tex", count="144 tex")
    assert working.value == pytest.approx(100 * 25 / 12, rel=1e-12)
    assert working.name == "twist_for_factor"
    assert "25 turns/cm √tex" in working.text()
    # No formula gives the count: it is found, and the working shows that it fits.
    working = FACTOR.solve_working("count", twist_factor="25 turns/cm √tex", twist="250 t/m")
    assert "found so that twist_factor is 25 turns/cm √tex" in working.text()
    assert working.value == pytest.approx(25, rel=1e-9)
    (line,) = (line for line in working.lines if line["name"] == "count")
    assert line["value"] == pytest.approx(100, rel=1e-9)


def test_the_working_of_a_solution_warns_of_unusual_values():
    with pytest.warns(hw.RangeWarning, match=r"twist = .* is unusual"):
        FACTOR.solve_working("twist", twist_factor="78 turns/cm √tex", count="1.5 tex")
    working = hw.fibre.clean_yield_customs.solve_working(
        "vegetable_on_greasy", clean_yield_customs="42.5 %", clean_content="50 %"
    )
    assert "the least, and so is every one from" in working.text()


def test_formulas_of_one_relation_name_each_other():
    count_of = hw.yarn.count_of
    assert count_of.inverse_of is None
    assert count_of.solved_for == {"mass": "mass_of_length", "length": "length_of_mass"}
    assert hw.yarn.length_of_mass.inverse_of == "count_of"
    assert hw.yarn.length_of_mass.solved_for == {"count": "count_of", "mass": "mass_of_length"}
    assert "Also: mass_of_length, the same solved for mass" in inspect.getdoc(count_of)


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: FACTOR.solve("twist", count="16 YSW"), "the wanted result is missing"),
        (
            lambda: FACTOR.solve("twist", twist_factor="39 turns/cm √tex"),
            r"count \(yarn count\) is missing",
        ),
        (lambda: FACTOR.solve("twit", twist_factor="39 turns/cm √tex"), "no input 'twit'"),
        (lambda: FACTOR.solve("twist", twist="9 tpi", count="16 YSW"), "was given too"),
        (lambda: hw.yarn.mean_by_length.solve("counts", mean_by_length="16 Nm"), "a list"),
        (
            lambda: FACTOR.solve(
                "twist", twist_factor="39 turns/cm √tex", count=hw.q([16, 17], "YSW")
            ),
            "not arrays",
        ),
    ],
)
def test_refusals_of_solving(call, words):
    with pytest.raises(TypeError, match=words):
        call()


# --- the card and the catalogue ---------------------------------------------------------------


@pytest.mark.parametrize("formula", hw.formulas.values(), ids=list(hw.formulas))
def test_every_formula_tells_about_itself(formula):
    names = [i["name"] for i in formula.inputs]
    assert list(inspect.signature(formula).parameters) == names
    assert formula.__name__ == formula.name
    assert formula.__module__ == f"hankwise.{formula.room}"
    assert getattr(getattr(hw, formula.room), formula.name) is formula
    card = " ".join(inspect.getdoc(formula).split())
    for part in (formula.summary, *names, *formula.limits, *formula.slips):
        assert part in card
    assert all(line in card for line in formula.equation.split("; "))
    assert formula.name in repr(formula)
    assert formula.sources
    for key in formula.sources:
        assert hw.source(key)["title"]
    page = html.unescape(formula._repr_html_())
    for part in (formula.name, *formula.limits, *formula.slips):
        assert part in page
    assert pickle.loads(pickle.dumps(formula)) is formula


def test_help_shows_the_card():
    assert FACTOR.summary in pydoc.plain(pydoc.render_doc(FACTOR))


def test_the_catalogue_is_a_mapping_that_does_not_change():
    assert list(hw.formulas) == sorted(hw.formulas)
    assert hw.formulas["twist_factor"] is FACTOR
    assert "twist_factor" in hw.formulas
    assert hw.formulas.get("nothing") is None
    with pytest.raises(KeyError, match="did you mean 'twist_factor'"):
        hw.formulas["twist_factr"]
    for change in (
        lambda c: c.__setitem__("a", FACTOR),
        lambda c: c.__delitem__("twist_factor"),
        lambda c: c.update(a=FACTOR),
        lambda c: c.pop("twist_factor"),
        lambda c: c.setdefault("a", FACTOR),
        lambda c: c.clear(),
    ):
        with pytest.raises(TypeError, match="does not change"):
            change(hw.formulas)
    assert pickle.loads(pickle.dumps(hw.formulas)) == hw.formulas


def test_the_catalogue_is_searched_and_shown():
    found = hw.find("twist count", kind="formula")
    assert "twist_factor" in found.names
    assert len(found) < len(hw.formulas)
    assert hw.find(kind="formula").names == list(hw.formulas)
    shown = [line.split()[0] for line in repr(hw.formulas).splitlines() if line[0] != " "]
    assert shown == list(hw.formulas)
    page = hw.formulas._repr_html_()
    assert page.count("<tr>") == len(hw.formulas) + 1
    with pytest.raises(AttributeError):
        FACTOR.name = "other"
