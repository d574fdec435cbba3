"""Live workbooks of formulas against the library: change the inputs, recalculate in LibreOffice.

Every formula of the catalogue is written as a workbook; its inputs are changed by their defined
names, LibreOffice recalculates, and what comes out must be what the library says for the changed
inputs.
"""

import math
import re
from dataclasses import dataclass

import hankwise as hw
import openpyxl
import pytest
from sheet_formulas import BOTH_SIDES, TOGETHER
from sheets import assert_live, change, column, out_of_date, put, recalculate, recalculated, rows_of

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

NEAR = 1e-9
PLAIN = {"Count", "Money", "Ratio", "Reading", "ReadingSpread"}  # written without a unit
UNITS: dict[str, list[str]] = {}
for _unit in hw.units():
    UNITS.setdefault(_unit["kind"], []).append(_unit["symbol"])
UNITS["thickness"] = UNITS["yarn diameter"]
# What only iteration finds is a value in a workbook; beside it a cell tells when it is stale.
SOLVED = {name for name, f in hw.formulas.items() if "root of" in f.equation}


def number(formula: hw.Formula, row: dict, share: float) -> float:
    """A value of an input's range, in the base unit: 0 gives its low end, 1 its high end."""
    low, high = TOGETHER.get(formula.name, {}).get(row["name"], row["usual"])
    if low > 0 and high / low > 20:
        figure = low * (high / low) ** share
    else:
        figure = low + (high - low) * share
    return float(round(figure)) if row["type"] == "Count" else figure


@dataclass
class Case:
    """A formula, the inputs to put into its workbook, and what must come out."""

    formula: hw.Formula
    typed: dict[str, tuple[str, list[tuple[float, str]]]]
    expected: float | None = None

    def inputs(self) -> dict[str, str | list[str]]:
        texts = {}
        for name, (many, figures) in self.typed.items():
            all_texts = [f"{x!r} {unit}".strip() for x, unit in figures]
            texts[name] = all_texts if many else all_texts[0]
        return texts

    def cells(self) -> dict[str, float]:
        """The values by the names of their lines: a list is numbered from 1."""
        return {
            f"{name}[{place}]" if many else name: x
            for name, (many, figures) in self.typed.items()
            for place, (x, _) in enumerate(figures, start=1)
        }

    def answer(self) -> float:
        return self.formula.working(**self.inputs()).value


def middling(formula: hw.Formula, share: float) -> Case:
    """Inputs from the usual range, each in a unit of its kind, another one for each formula."""
    turn = sorted(hw.formulas).index(formula.name)
    typed = {}
    for place, row in enumerate(formula.inputs):
        if row["type"] in PLAIN:
            base = unit = ""
        else:
            base = row["unit"] or "fraction"
            units = UNITS["fraction" if base == "fraction" else row["kind"]]
            unit = units[(turn + 3 * place) % len(units)]
        # Unequal shares, so that like inputs do not cancel.
        own = share / (1 + place / 4)
        shares = [own, own / 2, own / 3] if row["many"] else [own]
        if row["whole"]:
            shares = [round(own / 2, 4), round(own / 3, 4)]
            shares.append(1 - sum(shares))
        figures = [hw.convert(number(formula, row, one), base, unit) for one in shares]
        typed[row["name"]] = (row["many"], [(float(f"{x:.5g}"), unit) for x in figures])
    return Case(formula, typed)


def given(formula: hw.Formula, texts: dict[str, str]) -> Case:
    typed = {}
    for name, text in texts.items():
        figure, _, unit = text.partition(" ")
        typed[name] = (False, [(float(figure), unit)])
    return Case(formula, typed)


@pytest.fixture(scope="module")
def cases(tmp_path_factory) -> list[tuple[Case, float]]:
    """Every formula at other inputs than it was written with: the case, what the sheet says."""
    folder = tmp_path_factory.mktemp("formulas")
    (folder / "written").mkdir()
    all_cases, books = {}, {}
    for name, formula in hw.formulas.items():
        first = middling(formula, 0.4)
        others = [first if name in SOLVED else middling(formula, 0.65)]
        for texts, expected in BOTH_SIDES.get(name, []):
            others.append(given(formula, texts))
            others[-1].expected = expected
        for place, other in enumerate(others):
            path = folder / "written" / f"{name}-{place}.xlsx"
            # Written with middling values in the same units; both sides of a
            # bend with those of its far side, so that one of them crosses it.
            start = others[-1] if other.expected is not None else first
            formula.working(**start.inputs()).to_workbook(path)
            book = openpyxl.load_workbook(path)
            assert_live(book, set(other.cells()))
            change(book, other.cells())
            all_cases[path.stem], books[path.stem] = other, book
    sheets = recalculated(folder, books)
    return [(case, column(sheets[at])[case.formula.name][-1]) for at, case in all_cases.items()]


def test_every_formula_recalculates_to_what_the_library_says(cases):
    assert {case.formula.name for case, _ in cases} == set(hw.formulas)
    wrong = []
    for case, sheet in cases:
        library = case.answer()
        if not math.isclose(sheet, library, rel_tol=NEAR):
            wrong.append((case.formula.name, case.inputs(), sheet, library))
    assert not wrong


def test_inputs_were_really_changed(cases):
    for case, sheet in cases:
        if case.expected is None and case.formula.name not in SOLVED:
            first = middling(case.formula, 0.4).answer()
            assert sheet != pytest.approx(first, rel=1e-6, abs=0), case.formula.name


def test_both_sides_of_a_bend(cases):
    bent = {
        name
        for name, f in hw.formulas.items()
        # Where there is an answer on one side only, there is no other to go to.
        if name not in SOLVED
        and any(
            word in re.sub(r"no answer if| if [^()]*, else no answer", "", f.equation)
            for word in ("smaller", "greater", "round", " if ")
        )
    }
    assert bent == set(BOTH_SIDES), "a formula with a bend needs inputs on both sides of it"
    for case, sheet in cases:
        if case.expected is not None:
            assert sheet == pytest.approx(case.expected, rel=NEAR, abs=0), case.inputs()


def test_a_stale_root_is_told(tmp_path):
    formula = hw.formulas["weft_crimp"]
    first, other = middling(formula, 0.4), middling(formula, 0.65)
    for place, case in enumerate((first, other)):
        path = tmp_path / f"{place}.xlsx"
        formula.working(**first.inputs()).to_workbook(path)
        put(path, case.cells())
    out = recalculate(tmp_path)
    still, stale = (x for place in (0, 1) for x in out_of_date(rows_of(out / f"{place}.xlsx")))
    assert abs(still) < 1e-15
    assert abs(stale) > 1e-4
