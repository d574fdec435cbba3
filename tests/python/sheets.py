"""Live workbooks as the tests use them: change inputs, recalculate in LibreOffice, read the lines."""

import math
import shutil
import subprocess
from collections.abc import Mapping
from pathlib import Path

import openpyxl
from openpyxl.workbook import Workbook
from openpyxl.worksheet.worksheet import Worksheet

NAME, VALUE, RESIDUAL = 1, 3, 7  # columns
AT_ONCE = 200


def near(a: float, b: float) -> bool:
    return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-12)


def named_cells(book: Workbook) -> dict[str, str]:
    """The defined names: the name of the line that each stands for, and its cell."""
    sheet = book["Working"]
    cells = {}
    for name in book.defined_names.values():
        where = name.attr_text.partition("!")[2].replace("$", "")
        cells[sheet.cell(sheet[where].row, NAME).value] = where
    return cells


def put(path: Path, changed: Mapping[str, float]) -> Workbook:
    """Put other figures into a workbook; openpyxl saves formulas without their results."""
    book = openpyxl.load_workbook(path)
    cells = named_cells(book)
    for name, x in changed.items():
        book["Working"][cells[name]] = x
    book.save(path)
    return book


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


def recalculated(folder: Path, books: Mapping[str, Workbook]) -> dict[str, Worksheet]:
    """Recalculate workings as sheets of a few workbooks; LibreOffice takes its time for each file.

    The cells of a working ask for cells of their own sheet alone, so that sheets stand side by side.
    """
    places = {}
    names = list(books)
    for start in range(0, len(names), AT_ONCE):
        joined = Workbook()
        joined.remove(joined.active)
        for place, name in enumerate(names[start : start + AT_ONCE]):
            sheet = joined.create_sheet(f"Working {place}")
            places[name] = (f"{start}.xlsx", sheet.title)
            for row in books[name]["Working"].iter_rows():
                for cell in row:
                    if cell.data_type == "f":
                        assert "!" not in cell.value, (name, cell.coordinate, cell.value)
                    if cell.value is not None:
                        sheet[cell.coordinate] = cell.value
        joined.save(folder / f"{start}.xlsx")
    out = recalculate(folder)
    read = {path.name: openpyxl.load_workbook(path, data_only=True) for path in out.glob("*.xlsx")}
    return {name: read[file][title] for name, (file, title) in places.items()}


def working_of(path: Path) -> Worksheet:
    """The working of a workbook, with the results of its formulas."""
    return openpyxl.load_workbook(path, data_only=True)["Working"]


def column(sheet: Worksheet) -> dict[str, list[float]]:
    """The figures of a working by the names of their lines."""
    lines: dict[str, list[float]] = {}
    for row in sheet.iter_rows(min_row=3):
        if row[VALUE - 1].value is not None:
            lines.setdefault(row[NAME - 1].value, []).append(row[VALUE - 1].value)
    return lines


def residuals(sheet: Worksheet) -> list[float]:
    """What equations solved by iteration leave."""
    rows = [row[RESIDUAL - 1].value for row in sheet.iter_rows(min_row=3)]
    return [x for x in rows if x is not None]


def assert_live(book: Workbook, inputs: set[str]) -> None:
    """Inputs are figures with a name, everything else is a formula."""
    cells = named_cells(book)
    assert set(cells) == inputs
    for row in book["Working"].iter_rows(min_row=3):
        cell = row[VALUE - 1]
        if cell.value is None:
            continue
        if cell.coordinate in cells.values():
            assert isinstance(cell.value, int | float), cell.coordinate
        elif not str(row[RESIDUAL - 1].value if len(row) >= RESIDUAL else "").startswith("="):
            assert str(cell.value).startswith("="), (cell.coordinate, cell.value)
