"""Check values from outside, through Python: every row of `tests/published/*.csv`.

A row passes when the answer lies within the row's tolerance of the printed value; only the rounding
of the binary arithmetic itself is forgiven on top, as in the tests of the crate.

A row may ask for an input instead of the result: that input is "?" and the result is given under
the name "=". `{"mass": "?", "regain": "17 %", "=": "100 kg"}` asks for the mass of which 100 kg
come out; `expected` is then that input, in `unit`, and the formula is solved for it.

Rows about things other than formulas (values of the handbook, of a weave or satin; a grade) are
described in `tests/published/others.rs`.
"""

import csv
import json
from pathlib import Path

import hankwise as hw
import pytest

FILES = [
    path
    for path in sorted((Path(__file__).parents[1] / "published").glob("*.csv"))
    # What was measured of cloths is beside the rows and is no table of answers.
    if path.stem != "fabrics-finishing"
]
ROUNDING = 1e-13


def rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def handbook_figure(table: str, of: str, end: str) -> tuple[float, str]:
    (figure,) = hw.handbook[table].find(of)
    low, high = (x if x is None else x.number(figure.unit) for x in (figure.low, figure.high))
    if end == "only":
        assert low == high
    return (high if end == "high" else low), figure.unit


def weave_figure(weave: str | list[str], figure: str, **threads: str) -> tuple[float, str]:
    woven = hw.cloth.weave(weave)
    if figure == "interlacings_in":
        ((of, number),) = threads.items()
        return woven.interlacings_in(**{of: int(number)}), ""
    system = "warp" if figure.endswith(("warp", "end")) else "weft"
    if figure.startswith("interlacings_of"):
        return sum(woven.interlacings[system]) / len(woven.interlacings[system]), ""
    if figure.startswith("average_float"):
        return woven.average_float[system], ""
    return getattr(woven, figure), ""


def satin_figure(ends: str, figure: str, **at: str) -> tuple[float, str]:
    if figure == "riser":
        row = hw.cloth.weave(f"{ends}-end sateen move {at['move']}").rows[int(at["pick"]) - 1]
        return row.index("1") + 1, ""
    try:
        return sum(2 * move <= int(ends) for move in hw.cloth.satin_moves(int(ends))), ""
    except hw.RangeError:
        return 0, ""


def chart_constant(constant: str, n: str) -> tuple[float, str]:
    return hw.quality.chart_constants(int(n))[constant], ""


def quality_number(diameter: str) -> tuple[float, str]:
    number = hw.fibre.us_grade(diameter).number
    assert number is not None
    return number, ""


OTHERS = {
    "chart_constant": chart_constant,
    "handbook": handbook_figure,
    "weave": weave_figure,
    "satin": satin_figure,
    "us_grade": quality_number,
}


def answers(row: dict[str, str]) -> list[float]:
    """What the library says, by each of its ways, in the row's unit."""
    inputs, unit = json.loads(row["inputs"]), row["unit"]
    if row["formula"] == "convert":
        (text,) = inputs.values()
        given = hw.q(text)
        number = given.number(given.unit)
        return [
            given.number(unit),
            given.to(unit).number(unit),
            hw.convert(number, given.unit, unit),
            hw.convert([number], given.unit, unit)[0],
        ]
    if row["formula"] in OTHERS:
        number, of = OTHERS[row["formula"]](**inputs)
        return [hw.convert(number, of, unit) if unit and of != unit else number]
    formula = hw.formulas[row["formula"]]
    if "=" in inputs:
        wanted = inputs.pop("=")
        (unknown,) = (name for name, value in inputs.items() if value == "?")
        del inputs[unknown]
        (root,) = formula.solve(unknown, **{formula.name: wanted}, **inputs)
        return [root.number(unit or root.unit)]
    answer = formula(**inputs)
    unit = unit or answer.unit
    return [
        answer.number(unit),
        formula(*(inputs[i["name"]] for i in formula.inputs)).number(unit),
        hw.convert(formula.working(**inputs).value, answer.unit, unit),
    ]


def misses(row: dict[str, str]) -> list[float]:
    expected, tolerance = float(row["expected"]), float(row["tolerance"])
    near = tolerance + ROUNDING * abs(expected)
    # Written so that a NaN misses.
    return [got for got in answers(row) if not abs(got - expected) <= near]


def test_there_are_files():
    assert {path.stem for path in FILES} >= {"cloth", "mill", "yarn"}


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_row_holds(path):
    all_rows = rows(path)
    assert all_rows
    wrong = [(row["id"], row["formula"], found) for row in all_rows if (found := misses(row))]
    assert not wrong, f"{len(wrong)} of {len(all_rows)} rows miss"


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_a_wrong_row_is_found():
    for row in rows(FILES[0])[:3]:
        wrong = {**row, "expected": str(float(row["expected"]) * 1.01), "tolerance": "0"}
        assert len(misses(wrong)) == len(answers(wrong))
