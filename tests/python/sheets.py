"""Live workbooks in tests: change inputs, recalculate in LibreOffice, read the lines."""

import math
import shutil
import subprocess
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import openpyxl
from openpyxl.formula.translate import Translator
from openpyxl.workbook import Workbook

NAME, VALUE, HOW, STALE = 1, 3, 5, 7  # columns
HEAD = 2  # rows
Rows = list[tuple[Any, ...]]


def near(a: float, b: float) -> bool:
    return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)


def named_cells(book: Workbook) -> dict[str, str]:
    """The cells with a defined name, by the names of their lines.

    Points of a table that was looked up twice share the names of their lines: there it is the
    defined name.
    """
    sheet = book["Working"]
    cells = {}
    for name, cell in book.defined_names.items():
        where = cell.attr_text.partition("!")[2].replace("$", "")
        line = sheet.cell(sheet[where].row, NAME).value
        cells[name if line in cells else line] = where
    return cells


def change(book: Workbook, figures: Mapping[str, float]) -> None:
    """Put other values into the cells of inputs, by the names of their lines."""
    cells = named_cells(book)
    for name, x in figures.items():
        book["Working"][cells[name]] = x


def put(path: Path, figures: Mapping[str, float]) -> None:
    """Change a workbook; openpyxl saves formulas without their results."""
    book = openpyxl.load_workbook(path)
    change(book, figures)
    book.save(path)


def recalculate(folder: Path) -> Path:
    """Recalculate all the workbooks of a folder in LibreOffice."""
    office = shutil.which("soffice")
    assert office, (
        "LibreOffice is missing and this test needs it: apt-get install libreoffice-calc-nogui"
    )
    out = folder / "recalculated"
    files = sorted(folder.glob("*.xlsx"))
    done = subprocess.run(
        [
            office,
            f"-env:UserInstallation={(folder / 'profile').as_uri()}",
            "--headless",
            "--convert-to",
            "xlsx",
            "--outdir",
            str(out),
            *map(str, files),
        ],
        capture_output=True,
        text=True,
        timeout=300,
    )
    written = {path.name for path in out.glob("*.xlsx")}
    missing = [path.name for path in files if path.name not in written]
    assert not missing, f"LibreOffice did not write {missing}: {done.stdout + done.stderr}"
    return out


def recalculated(folder: Path, books: Mapping[str, Workbook]) -> dict[str, Rows]:
    """Recalculate workings under each other on one sheet, for LibreOffice is slow to open files."""
    joined = Workbook()
    sheet, places, row = joined.active, {}, 0
    for name, book in books.items():
        working = book["Working"]
        for cell in (cell for cells in working.iter_rows() for cell in cells):
            if cell.value is None:
                continue
            below = sheet.cell(cell.row + row, cell.column)
            below.value = cell.value
            if cell.data_type == "f":
                # A cell that stays where it is, or on another sheet, would not move with its rows.
                assert not set("$!") & set(cell.value), (name, cell.coordinate, cell.value)
                moved = Translator(cell.value, origin=cell.coordinate)
                below.value = moved.translate_formula(below.coordinate)
        places[name] = (row, row + working.max_row)
        row += working.max_row
    joined.save(folder / "joined.xlsx")
    book = openpyxl.load_workbook(recalculate(folder) / "joined.xlsx", data_only=True)
    rows = list(book.active.iter_rows(values_only=True))
    return {name: rows[start:end][HEAD:] for name, (start, end) in places.items()}


def rows_of(path: Path) -> Rows:
    """The lines of a workbook, with the results of its formulas."""
    sheet = openpyxl.load_workbook(path, data_only=True)["Working"]
    return list(sheet.iter_rows(values_only=True))[HEAD:]


def column(rows: Rows) -> dict[str, list[float]]:
    """The values by the names of their lines."""
    lines: dict[str, list[float]] = {}
    for row in rows:
        if row[VALUE - 1] is not None:
            lines.setdefault(row[NAME - 1], []).append(row[VALUE - 1])
    return lines


def out_of_date(rows: Rows) -> list[float]:
    """How far what was chosen, looked up or found by iteration is out of date."""
    return [row[STALE - 1] for row in rows if row[STALE - 1] is not None]


def assert_live(book: Workbook, inputs: set[str]) -> None:
    """Inputs are values with a name, everything else is a formula."""
    cells = named_cells(book)
    assert set(cells) == inputs
    for row in book["Working"].iter_rows(min_row=HEAD + 1):
        cell = row[VALUE - 1]
        if cell.value is None:
            continue
        if cell.coordinate in cells.values():
            assert isinstance(cell.value, int | float), cell.coordinate
        elif not str(row[STALE - 1].value if len(row) >= STALE else "").startswith("="):
            assert str(cell.value).startswith("="), (cell.coordinate, cell.value)
