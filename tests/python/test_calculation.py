"""Every calculation in Python: its card, its results and their workings, columns, refusals."""

import html
import inspect
import json
import math
import pickle
import pydoc
import re
import warnings

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from calls import CALLS

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

EACH = pytest.mark.parametrize("calculation", hw.calculations.values(), ids=list(hw.calculations))
SAMPLES = [
    pytest.param(hw.calculations[name], given, id=f"{name}-{place}")
    for name, calls in CALLS.items()
    for place, given in enumerate(calls, 1)
]
EACH_CALL = pytest.mark.parametrize(("calculation", "given"), SAMPLES)


def number(quantity, unit):
    """A result in a unit; a share without one as a fraction."""
    return quantity.number(unit or quantity.unit)


def numbers(found):
    """Every result by name, in the unit in which it is kept."""
    return {name: found[name].number(found[name].unit) for name in found}


def one_line(text):
    return " ".join(text.split())


# --- the samples ------------------------------------------------------------------------------


def test_every_calculation_has_a_call():
    assert sorted(CALLS) == list(hw.calculations)
    assert all(CALLS.values())


@EACH
def test_its_calls_give_every_input_and_ask_every_result(calculation):
    given = {name for call in CALLS[calculation.name] for name in call}
    assert given == {asked["name"] for asked in calculation.inputs}
    answered = {
        name.rpartition(".")[2].partition("[")[0]
        for call in CALLS[calculation.name]
        for name in calculation(**call)
    }
    for result in calculation.results:
        assert {one["name"] for one in result.get("rows", [result])} <= answered


# --- the card ---------------------------------------------------------------------------------


@EACH
def test_it_tells_about_itself(calculation):
    room = getattr(hw, calculation.room)
    assert getattr(room, calculation.name) is calculation
    assert calculation.__name__ == calculation.__qualname__ == calculation.name
    assert repr(calculation).startswith(f"<calculation {calculation.name}: ")
    names = [name for one in calculation.inputs for name in (one["name"], one.get("set")) if name]
    shown = inspect.signature(calculation).parameters
    assert list(shown) == names
    assert {one.kind for one in shown.values()} == {inspect.Parameter.KEYWORD_ONLY}
    needed = [name for name, one in shown.items() if one.default is one.empty]
    assert needed == [one["name"] for one in calculation.inputs if one["needed"]]
    help_text = one_line(pydoc.plain(pydoc.render_doc(calculation)))
    page = html.unescape(calculation._repr_html_())
    results = [one["name"] for one in calculation.results]
    for part in (calculation.summary, *names, *results, *calculation.cautions):
        assert part in help_text
    for part in (calculation.summary, *names, *calculation.cautions):
        assert part in page
    for one in calculation.inputs:
        assert one["meaning"] in help_text
        assert one["meaning"] in page
    for one in calculation.results:
        assert all(inside["meaning"] for inside in one.get("rows", [one]))
    assert pickle.loads(pickle.dumps(calculation)) is calculation


# --- the results ------------------------------------------------------------------------------


@EACH_CALL
def test_every_result_has_a_working_that_ends_in_it(calculation, given):
    found = calculation(**given)
    assert len(found) == len(found.keys()) > 0
    for name in found:
        working = found.working(name)
        assert working.value == number(found[name], working.unit), name
        assert math.isfinite(working.value), name
        last = working.lines[-1]
        assert (last["name"], last["value"]) == (name, working.value)
        assert found.meanings[name], name


@EACH_CALL
def test_the_results_show_themselves(calculation, given):
    found = calculation(**given)
    text = repr(found)
    assert str(found) == text
    assert "<table>" in found._repr_html_()
    for line in found.cautions:
        assert line in calculation.cautions
        assert one_line(line) in one_line(text.replace("\n  !   ", " "))


@EACH_CALL
def test_a_pickle_gives_the_same_results(calculation, given):
    found = calculation(**given)
    again = pickle.loads(pickle.dumps(found))
    assert repr(again) == repr(found)
    assert numbers(again) == numbers(found)
    assert again.warnings == found.warnings
    assert again.given == found.given


@EACH_CALL
def test_json_and_table_hold_every_result(calculation, given):
    def refuse(word):
        raise AssertionError(f"{word} is no JSON")

    found = calculation(**given)
    told = json.loads(found.to_json(), parse_constant=refuse)
    assert told["calculation"] == calculation.name
    assert (told["warnings"], told["cautions"]) == (found.warnings, found.cautions)
    assert set(told["results"]) == set(found)
    table = found.to_frame()
    assert list(table.index) == found.keys()
    for name in found:
        result, row = told["results"][name], table.loc[name]
        assert result["meaning"] == row["meaning"] == found.meanings[name]
        assert result["unit"] == row["unit"]
        assert result["value"] == number(found[name], result["unit"]), name
        assert row["value"] == number(found[name], row["unit"]), name


# --- columns ----------------------------------------------------------------------------------


def scalars(calculation, given):
    """The inputs of a call that may be a column."""
    kinds = {asked["name"]: asked for asked in calculation.inputs}
    for name in given:
        asked = kinds[name]
        if "kind" in asked and not asked["many"]:
            yield name


@EACH_CALL
def test_a_column_of_equal_cases_is_the_case(calculation, given):
    one = calculation(**given)
    expected = numbers(one)
    for name in scalars(calculation, given):
        many = calculation(**given | {name: [given[name]] * 3})
        assert many.keys() == one.keys(), name
        for result, column in numbers(many).items():
            np.testing.assert_array_equal(column, [expected[result]] * 3, f"{name}: {result}")
        assert many.to_frame().shape == (3, len(one))
        assert numbers(many.case(2)) == expected
        told = json.loads(many.to_json())["results"]
        alone = json.loads(one.to_json())["results"]
        assert {of: told[of]["value"] for of in told} == {
            of: [alone[of]["value"]] * 3 for of in alone
        }


# --- refusals ---------------------------------------------------------------------------------


@EACH
def test_inputs_are_given_by_name(calculation):
    first = calculation.inputs[0]["name"]
    with pytest.raises(hw.CallError, match=f"{calculation.name}: .*by name, such as {first}=…"):
        calculation("1 kg")


@EACH
def test_an_unknown_name_is_refused_with_the_name_to_type(calculation):
    for given in CALLS[calculation.name]:
        for name in given:
            slip = f"{name}{name[-1]}"
            wrong = {slip if one == name else one: given[one] for one in given}
            says = f"{calculation.name} has no input '{slip}'; did you mean '{name}'"
            with pytest.raises(hw.CallError, match=says):
                calculation(**wrong)


@EACH
def test_what_is_missing_is_refused_with_the_name_to_type(calculation):
    needed = [asked["name"] for asked in calculation.inputs if asked["needed"]]
    for given in CALLS[calculation.name]:
        assert set(needed) <= set(given)
        for name in needed:
            rest = {one: value for one, value in given.items() if one != name}
            says = rf"{calculation.name}: {name} \(.*is missing; write {name}="
            with pytest.raises(hw.CallError, match=says):
                calculation(**rest)
            with pytest.raises(hw.CallError, match=says):
                calculation(**rest, **{name: None})


@EACH
def test_an_unknown_result_is_refused_with_the_name_to_type(calculation):
    found = calculation(**CALLS[calculation.name][0])
    name = found.keys()[0]
    slip = f"{name}{name[-1]}"
    assert slip not in found
    for ask in (found.__getitem__, found.working):
        with pytest.raises((KeyError, hw.NotationError), match=re.escape(f"did you mean '{name}'")):
            ask(slip)


def test_columns_say_what_single_cases_say():
    """What one case is warned of, a row of many is warned of too; cautions likewise."""
    one = hw.mill.mule(**CALLS["mule"][0])
    many = hw.mill.mule(**CALLS["mule"][0] | {"count": ["150 tex", "160 tex"]})
    assert set(many.cautions) == set(one.cautions)
    asked = {"wanted_reed_sett": "4.8 ends/cm", "reeds": ["24 dents/10 cm"]}
    with pytest.warns(hw.RangeWarning, match=r"1 of 3 cases, the first in row 1: .*comes near"):
        hw.cloth.choose_reed(**asked | {"wanted_reed_sett": hw.q([4.8, 48, 4.7], "ends/cm")})


def test_warnings_of_columns_name_the_row_and_its_label():
    """A case outside the usual range is found by the label of its row."""
    ends = pd.Series([4.8, 48, 4.7], index=["plain", "fine", "twill"])
    asked = {"wanted_reed_sett": hw.q(ends, "ends/cm"), "reeds": ["24 dents/10 cm"]}
    with pytest.warns(hw.RangeWarning, match=r"1 of 3 cases, the first in row 1 \('fine'\): "):
        found = hw.cloth.choose_reed(**asked)
    assert any("row 1 ('fine')" in warning for warning in found.warnings)
    mule = CALLS["mule"][0] | {"count": hw.q(pd.Series([100, 2000], index=["a", "b"]), "tex")}
    with pytest.warns(
        hw.RangeWarning, match=r"1 of 2 cases, the first in row 1 \('b'\): count = 2000"
    ):
        hw.mill.mule(**mule)


@EACH_CALL
def test_of_no_cases_there_are_no_values_of_each_result(calculation, given):
    """An empty column gives empty columns of the results, one without values columns of NaN."""
    one = calculation(**given)
    units = {asked["name"]: asked.get("unit") for asked in calculation.inputs}
    # Rows of results differ in their number from case to case.
    kinds = {re.split(r"[.\[]", name)[0] for name in one}
    for name in scalars(calculation, given):
        for values in ([], [math.nan, math.nan]):
            column = np.array(values)
            none = calculation(
                **given | {name: hw.q(column, units[name]) if units[name] else column}
            )
            assert kinds & {re.split(r"[.\[]", name)[0] for name in none}, name
            assert all(len(found) == len(values) for found in numbers(none).values()), name
            assert all(np.isnan(found).all() for found in numbers(none).values()), name


# What only limits the others, and what is chosen from.
LIMITS = {
    "choose_reed": {"reeds", "period"},
    "piece": {"beam_length"},
    "pieces_from_yarn": {"beam_length"},
    "skein_count": {"stretch"},
}


@EACH_CALL
def test_nothing_that_is_given_is_ignored_in_silence(calculation, given):
    """With each optional input left out in turn, what is given is used, or said to be idle."""
    asked = {item["name"]: item for item in calculation.inputs}
    for omitted in [None, *(name for name in given if not asked[name]["needed"])]:
        rest = {name: value for name, value in given.items() if name != omitted}
        with warnings.catch_warnings(record=True) as said:
            warnings.simplefilter("always")
            try:
                results = calculation(**rest)
            except hw.HankwiseError:
                continue
        idle = " ".join(str(warning.message) for warning in said)
        shown = "\n".join(str(results.working(name)) for name in results)
        for name in rest.keys() - LIMITS.get(calculation.name, set()):
            if "symbol" in asked[name] and name not in shown:
                assert f"{name} was given but changes nothing" in idle, (omitted, name)


def test_a_step_of_an_input_is_calculated_anew():
    mule = hw.mill.mule(
        spindles=120, travel="6 ft", cycle="22.5 s", count="150 tex", efficiency="85 %"
    )
    changes = {change["input"]: change for change in mule.working("output").changes}
    more = changes["spindles"]
    # In proportion to the spindles.
    assert more["answer_is"] == pytest.approx(more["answer_was"] * 121 / 120)
    assert more["words"] == "spindles 121, not 120: 4.514 kg/h, not 4.477 kg/h"
