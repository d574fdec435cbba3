"""Workbooks of what gives several figures in the rooms fibre, mill and quality.

A workbook is written for what is first given; the cells of what is given are then changed to other
figures, LibreOffice recalculates, and every line must be what the library says for those figures.
"""

import ast
import math
import re
from pathlib import Path

import hankwise as hw
import openpyxl
import pytest
from sheet_cases import CASES, PLACES
from test_sheet import RESIDUAL, assert_live, column, named_cells, put, recalculate

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

PLAIN = {"number", "ratio", "money"}
ROOMS = ("fibre", "mill", "quality")
# What a chain settles before it runs: a workbook is of the road that was taken then.
SETTLED = {"system", "confidence", "rinses", "twist_wheels", "wheels"}


def work(room: str, function: str, given: dict) -> hw.Particulars | hw.Results:
    given = dict(given)
    placed = [given.pop(name) for name in PLACES.get(function, [])]
    return getattr(getattr(hw, room), function)(*placed, **given)


def write(found: hw.Particulars | hw.Results, path: Path) -> None:
    if isinstance(found, hw.Results):
        found.to_workbook(path)
    else:
        found.to_sheet(path)


def figures_of(given: object) -> list[float]:
    """Every figure that was typed, in the unit that it was typed in."""
    if isinstance(given, dict):
        return [x for one in given.values() for x in figures_of(one)]
    if isinstance(given, list):
        return [x for one in given for x in figures_of(one)]
    if isinstance(given, str):
        found = re.match(r"[\d.]+", given)
        return [float(found[0])] if found else []
    return [float(given)]


def inputs_of(path: Path) -> dict[str, float]:
    """The cells of what was given, by the names of their lines."""
    book = openpyxl.load_workbook(path)
    return {name: book["Working"][cell].value for name, cell in named_cells(book).items()}


@pytest.fixture(scope="module")
def sheets(tmp_path_factory):
    """By case: the library's second answer, its workbook, that of the first one recalculated."""
    folder = tmp_path_factory.mktemp("rooms")
    (folder / "library").mkdir()
    answers = {}
    for case, (room, function, first, changes) in CASES.items():
        name = f"{case}.xlsx"
        write(work(room, function, first), folder / name)
        answers[case] = work(room, function, first | changes)
        write(answers[case], folder / "library" / name)
        put(folder / name, inputs_of(folder / "library" / name))
    out = recalculate(folder)
    return {
        case: (answer, folder / "library" / f"{case}.xlsx", out / f"{case}.xlsx")
        for case, answer in answers.items()
    }


def near(a: float, b: float) -> bool:
    return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)


def test_all_that_gives_several_figures_is_tried(root):
    """The stubs say what gives them: a new one needs a case."""
    wanted = set()
    for room in ROOMS:
        more = root / "python" / "hankwise" / f"_{room}_more.pyi"
        for node in ast.parse(more.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.FunctionDef) and "Particulars" in ast.unparse(node.returns):
                wanted.add((room, node.name))
        wanted |= {
            (room, name)
            for name, one in vars(getattr(hw, room)).items()
            if isinstance(one, hw.Calculation)
        }
    assert {(room, function) for room, function, *_ in CASES.values()} == wanted


@pytest.mark.parametrize("case", CASES)
def test_what_was_given_is_a_cell_with_a_name_and_all_else_a_formula(case, sheets):
    _, written, _ = sheets[case]
    book = openpyxl.load_workbook(written)
    # A name of a line that two cells share would be lost here.
    assert len(book.defined_names) == len(named_cells(book))
    assert_live(written, set(named_cells(book)))
    _, _, first, changes = CASES[case]
    typed = {name: given for name, given in (first | changes).items() if name not in SETTLED}
    missing = [
        x
        for x in figures_of(typed)
        if not any(near(x, cell) for cell in inputs_of(written).values())
    ]
    assert not missing


@pytest.mark.parametrize("case", CASES)
def test_a_changed_workbook_says_what_the_library_says(case, sheets):
    answer, written, recalculated = sheets[case]
    sheet, library = column(recalculated), column(written)
    assert sheet.keys() == library.keys()
    wrong = {
        name: (figures, library[name])
        for name, figures in sheet.items()
        if len(figures) != len(library[name]) or not all(map(near, figures, library[name]))
    }
    assert not wrong
    off = [name for name in answer if not near(sheet[name][-1], answer.working(name).value)]
    assert not off


def test_a_lot_found_by_iteration_is_a_value_that_tells_when_it_is_stale(tmp_path):
    """The share wanted is in an equation that no cell solves: what it leaves stands beside it."""
    given = {"fibre_mass": "36 kg", "held_up": "0.6 kg", "wanted_own_share": "95 %"}
    for name in ("same", "changed"):
        hw.mill.lot_on_card(**given).to_workbook(tmp_path / f"{name}.xlsx")
    put(tmp_path / "same.xlsx", {"fibre_mass": 40.0})
    put(tmp_path / "changed.xlsx", {"wanted_own_share": 98.0})
    out = recalculate(tmp_path)
    left = {}
    for name in ("same", "changed"):
        sheet = openpyxl.load_workbook(out / f"{name}.xlsx", data_only=True)["Working"]
        rows = [row[RESIDUAL - 1].value for row in sheet.iter_rows(min_row=3)]
        (left[name],) = [x for x in rows if x is not None]
    assert abs(left["same"]) < 1e-12
    assert abs(left["changed"]) > 1e-3


@pytest.mark.parametrize("case", CASES)
def test_what_was_changed_matters(case, sheets):
    room, function, first, _ = CASES[case]
    before, after = work(room, function, first), sheets[case][0]
    assert before.keys() == after.keys()
    same = [x for x in after if near(before.working(x).value, after.working(x).value)]
    assert len(same) < len(after) / 2, same


@pytest.mark.parametrize("case", CASES)
def test_a_figure_ends_its_own_working(case, sheets):
    answer = sheets[case][0]
    for name in answer:
        working = answer.working(name)
        last = working.lines[-1]
        assert (last["name"], last["value"]) == (name, working.value)
        unit = working.unit or ("" if answer[name].kind in PLAIN else "fraction")
        assert answer[name].number(unit) == pytest.approx(working.value, rel=1e-12, abs=0), name
        assert name in str(working), name


@pytest.mark.parametrize("case", CASES)
def test_cautions_are_words_on_a_sheet_of_their_own(case, sheets):
    answer, _, recalculated = sheets[case]
    book = openpyxl.load_workbook(recalculated, data_only=True)
    said = "sheet Cautions" in book["Working"]["A1"].value
    if not answer.cautions:
        assert (book.sheetnames, said) == (["Working"], False)
        return
    assert (book.sheetnames, said) == (["Working", "Cautions"], True)
    cells = [cell for row in book["Cautions"] for cell in row if cell.value is not None]
    assert {cell.data_type for cell in cells} == {"s"}
    head, *lines = [cell.value for cell in cells]
    assert "Reminders only" in head
    assert lines == answer.cautions
    # None of them stands where the figures are.
    words = [cell.value for row in book["Working"] for cell in row if isinstance(cell.value, str)]
    assert not set(words) & set(lines)


def test_the_sheet_of_a_plan_and_of_a_formula_have_their_cautions_too(tmp_path, first_lot):
    result = hw.plan.loads(first_lot).run(draws=50)
    result.to_sheet(tmp_path / "plan.xlsx")
    book = openpyxl.load_workbook(tmp_path / "plan.xlsx")
    assert book.sheetnames == ["Working", "Cautions", "Chance"]
    lines = [row[0].value for row in book["Cautions"].iter_rows(min_row=3)]
    report = " ".join(result.text(all=True).replace("!", " ").split())
    assert lines
    for line in lines:
        assert " ".join(line.split()) in report

    weighed = hw.formulas["feed_rate"]
    weighed.working(
        **{
            row["name"]: {"mass per time": "8 kg/h", "fraction": "5 %", "ratio": "1.27"}[
                row["kind"]
            ]
            for row in weighed.inputs
        }
    ).to_sheet(tmp_path / "formula.xlsx")
    book = openpyxl.load_workbook(tmp_path / "formula.xlsx")
    lines = [row[0].value for row in book["Cautions"].iter_rows(min_row=3)]
    assert lines == weighed.cautions


def test_names_that_differ_in_their_capitals_are_two(tmp_path):
    """A spreadsheet takes capitals and small letters of a name for the same."""
    cost = hw.mill.cost_through(
        price_per_mass="4 /kg",
        stages=[{"name": "card", "loss": "8 %"}],
        goods={"Hank": "1 kg", "hank": "2 kg"},
    )
    cost.to_workbook(tmp_path / "cost.xlsx")
    book = openpyxl.load_workbook(tmp_path / "cost.xlsx")
    assert len({name.lower() for name in book.defined_names}) == len(book.defined_names)
    cells = inputs_of(tmp_path / "cost.xlsx")
    assert (cells["Hank.mass"], cells["hank.mass"]) == (1.0, 2.0)
