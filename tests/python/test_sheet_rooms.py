"""Workbooks of calculations against the library.

A workbook is written for what is first given; the cells of what is given are then changed to other
values, LibreOffice recalculates, and every line must be what the library says for those figures.
"""

import re

import hankwise as hw
import openpyxl
import pytest
from openpyxl.workbook import Workbook
from sheet_cases import CASES
from sheets import (
    HOW,
    NAME,
    assert_live,
    change,
    column,
    named_cells,
    near,
    out_of_date,
    put,
    recalculate,
    recalculated,
    rows_of,
)

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

PLAIN = {"number", "ratio", "money"}
# What is settled before a calculation runs: a workbook is of the road that was taken then.
SETTLED = {"system", "confidence", "reeds", "rinses", "twist_wheels", "wheels"}
# Words, which are no values although they may begin with one.
WORDS = {"weave", "warp_colours", "weft_colours"}


def work(function: str, given: dict) -> hw.Results:
    return hw.calculations[function](**given)


def figures_of(given: object) -> list[float]:
    """Every value that was typed, in the unit that it was typed in."""
    if isinstance(given, dict):
        return [x for one in given.values() for x in figures_of(one)]
    if isinstance(given, list | tuple):
        return [x for one in given for x in figures_of(one)]
    if isinstance(given, str):
        found = re.match(r"[\d.]+", given)
        return [float(found[0])] if found else []
    return [float(given)]


def inputs_of(book: Workbook) -> dict[str, float]:
    """The cells of what was given, by the names of their lines."""
    return {name: book["Working"][cell].value for name, cell in named_cells(book).items()}


@pytest.fixture(scope="module")
def sheets(tmp_path_factory):
    """By case: the library's second answer, its workbook, the lines of the first recalculated."""
    folder = tmp_path_factory.mktemp("rooms")
    answers, written, library, changed = {}, {}, {}, {}
    for case, (function, first, changes) in CASES.items():
        path = folder / "written.xlsx"
        work(function, first).to_workbook(path)
        changed[case] = openpyxl.load_workbook(path)
        answers[case] = work(function, first | changes)
        answers[case].to_workbook(path)
        written[case], library[case] = openpyxl.load_workbook(path), column(rows_of(path))
        path.unlink()
        change(changed[case], inputs_of(written[case]))
    lines = recalculated(folder, changed)
    return {
        case: (answer, written[case], column(lines[case]), library[case])
        for case, answer in answers.items()
    }


def test_every_calculation_is_tried():
    assert {function for function, *_ in CASES.values()} | set(STALE) == set(hw.calculations)


@pytest.mark.parametrize("case", CASES)
def test_what_was_given_is_a_cell_with_a_name_and_all_else_a_formula(case, sheets):
    _, book, _, _ = sheets[case]
    # What is given has a name of its own; points of a table that was looked up may share theirs.
    sheet = book["Working"]
    lines = [sheet[name.attr_text.partition("!")[2]].row for name in book.defined_names.values()]
    names = [sheet.cell(row, NAME).value for row in lines if sheet.cell(row, HOW).value == "given"]
    assert len(names) == len(set(names))
    assert_live(book, set(named_cells(book)))
    _, first, changes = CASES[case]
    typed = {k: given for k, given in (first | changes).items() if k not in SETTLED | WORDS}
    missing = [
        x for x in figures_of(typed) if not any(near(x, cell) for cell in inputs_of(book).values())
    ]
    assert not missing


@pytest.mark.parametrize("case", CASES)
def test_a_changed_workbook_says_what_the_library_says(case, sheets):
    answer, _, sheet, library = sheets[case]
    assert sheet.keys() == library.keys()
    wrong = {
        name: (figures, library[name])
        for name, figures in sheet.items()
        if len(figures) != len(library[name]) or not all(map(near, figures, library[name]))
    }
    assert not wrong
    off = [name for name in answer if not near(sheet[name][-1], answer.working(name).value)]
    assert not off


STALE = {
    "lot_on_card": (
        {"fibre_mass": "36 kg", "held_up": "0.6 kg", "wanted_own_share": "95 %"},
        {"fibre_mass": 40.0},
        {"wanted_own_share": 98.0},
    ),
    "plain_cloth": (
        {
            "warp_sett": "9 ends/cm",
            "weft_sett": "10 picks/cm",
            "warp_crimp": "4.5 %",
            "warp_diameter": "0.36 mm",
            "weft_diameter": "0.34 mm",
        },
        # The ends are not in the equation of the weft that bends about them.
        {"warp_sett": 9.2},
        {"warp_crimp": 9.0},
    ),
}


@pytest.mark.parametrize("function", STALE)
def test_what_iteration_found_is_a_value_that_tells_when_it_is_stale(tmp_path, function):
    """What no cell solves is beside what its equation leaves."""
    given, beside, within = STALE[function]
    for name, figures in {"same": beside, "changed": within}.items():
        work(function, given).to_workbook(tmp_path / f"{name}.xlsx")
        put(tmp_path / f"{name}.xlsx", figures)
    out = recalculate(tmp_path)
    left = {name: out_of_date(rows_of(out / f"{name}.xlsx")) for name in ("same", "changed")}
    assert left["same"]
    assert max(map(abs, left["same"])) < 1e-12
    assert max(map(abs, left["changed"])) > 1e-3


@pytest.mark.parametrize("case", CASES)
def test_what_was_changed_matters(case, sheets):
    function, first, _ = CASES[case]
    before, after = work(function, first), sheets[case][0]
    assert before.keys() == after.keys()
    same = [x for x in after if near(before.working(x).value, after.working(x).value)]
    assert len(same) < len(after) / 2, same


@pytest.mark.parametrize("case", CASES)
def test_a_value_ends_its_own_working(case, sheets):
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
    answer, book, _, _ = sheets[case]
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
    # None of them is where the values are.
    words = [cell.value for row in book["Working"] for cell in row if isinstance(cell.value, str)]
    assert not set(words) & set(lines)


def test_the_sheet_of_a_plan_and_of_a_formula_have_their_cautions_too(tmp_path, first_lot):
    result = hw.plan.loads(first_lot).run(lots=50)
    result.to_workbook(tmp_path / "plan.xlsx")
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
            row["name"]: {"mass per time": "8 kg/h", "loss on what enters": "5 %", "ratio": "1.27"}[
                row["kind"]
            ]
            for row in weighed.inputs
        }
    ).to_workbook(tmp_path / "formula.xlsx")
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
    cells = inputs_of(book)
    assert (cells["Hank.mass"], cells["hank.mass"]) == (1.0, 2.0)
