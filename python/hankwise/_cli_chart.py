"""The command `hankwise chart`: a control chart of the readings in a file."""

from __future__ import annotations

import argparse
import csv
import io
import math
import sys
from pathlib import Path
from typing import Any

import hankwise as hw
from hankwise._hankwise import _read_text
from hankwise._json import dumps


def _from_one(text: str) -> int:
    """Read how many: a whole number from 1 up."""
    if not (text.isascii() and text.isdigit() and 0 < int(text) < 2**31):
        raise argparse.ArgumentTypeError(
            f"{text} is not possible; write a whole number from 1 up, such as 5"
        )
    return int(text)


def add(commands: Any, written: argparse.ArgumentParser) -> None:
    """Add the command to the parser."""
    chart = commands.add_parser(
        "chart",
        parents=[written],
        help="a control chart of readings in a CSV file, in the order of its rows",
    )
    chart.add_argument("file", metavar="FILE.csv", help="CSV file with a header row")
    chart.add_argument("--column", metavar="NAME", help="the column, where there are several")
    chart.add_argument("--subgroup", type=_from_one, metavar="N", help="readings in a subgroup")
    chart.add_argument(
        "--kind",
        choices=["mean", "range", "deviation", "individuals", "moving range"],
        help="what the points are",
    )
    chart.add_argument("--unit", metavar="UNIT", help="the unit of the readings, such as tex")
    chart.add_argument(
        "--baseline", type=_from_one, metavar="N", help="limits from the first N points"
    )
    chart.add_argument("--picture", metavar="FILE", help="draw it (.svg, .png, .pdf)")
    chart.add_argument("--json", action="store_true", help="print JSON for other programs")


def _column(path: Path, name: str | None) -> list[float]:
    """Read the numbers of a column; says where one cannot be read."""
    rows = _rows(path)
    if len(rows) < 2:
        raise hw.NotationError(f"{path}: write a header row and readings below it")
    heads = [head.strip() for head in rows[0][1]]
    # A comma at the end of each line makes no column.
    while len(heads) > 1 and not heads[-1]:
        heads.pop()
    if name is None:
        if len(heads) > 1:
            raise hw.NotationError(
                f"{path} has columns {', '.join(heads)}; say which with --column NAME"
            )
        name = heads[0]
    if name not in heads:
        raise hw.NotationError(f"{path} has no column '{name}'; it has {', '.join(heads)}")
    if heads.count(name) > 1:
        raise hw.NotationError(f"{path} has several columns '{name}'; give each a different name")
    place = heads.index(name)
    values = []
    for number, row in rows[1:]:
        # A comma within a number would make two of it, and the first would be taken for all.
        if any(cell.strip() for cell in row[len(heads) :]):
            raise hw.NotationError(
                f"{path}, row {number}: it has more columns than the header; write the "
                "decimal mark "
                "as a point, and thousands without a comma"
            )
        cell = row[place].strip() if place < len(row) else ""
        values.append(_figure(cell, f"{path}, row {number}, {name}"))
    try:
        float(name)
    except ValueError:
        return values
    raise hw.NotationError(
        f"{path}: '{name}' is where the header should be; write the name of the column above"
    )


def _rows(path: Path) -> list[tuple[int, list[str]]]:
    """Give the lines that are not empty, each with its number, parted as the first one is."""
    text = _read_text(path).removeprefix("\ufeff")
    head = next((line for line in text.splitlines() if line.strip()), "")
    parts = next((mark for mark in ";\t" if mark in head and "," not in head), ",")
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=parts)
    try:
        return [(reader.line_num, row) for row in reader if any(cell.strip() for cell in row)]
    except csv.Error as error:
        raise hw.NotationError(f"{path} is not a CSV file: {error}") from None


def _figure(cell: str, place: str) -> float:
    """Read a number; without one say what to write."""
    try:
        value = float(cell)
    except ValueError:
        value = math.nan
    if math.isfinite(value) and "_" not in cell:
        return value
    number, *unit = cell.split()[:2] or [""]
    if not cell or cell.lower() == "nan":
        more = "omit the row, or write what was read"
    elif "," in cell:
        more = "write the decimal mark as a point, and thousands without a comma"
    elif unit and number.replace(".", "", 1).isdigit():
        more = f"write the number alone, and its unit as --unit {unit[0]}"
    else:
        more = "write a number such as 150.5"
    raise hw.NotationError(f"{place}: '{cell}' is not a number; {more}")


def run(args: argparse.Namespace) -> None:
    """Print the chart, and draw it."""
    values = _column(Path(args.file), args.column)
    if args.kind in ("mean", "range", "deviation") and args.subgroup is None:
        raise hw.NotationError(f"--kind {args.kind} needs --subgroup N, the readings in a subgroup")
    readings = values if args.unit is None else hw.q(values, args.unit)
    chart = hw.quality.chart(readings, args.subgroup, args.kind, baseline=args.baseline)
    if args.picture is not None:
        chart.save(args.picture, force=args.force)
        print(f"picture: {args.picture}", file=sys.stderr)
    if not args.json:
        print(chart)
        return
    low, high = chart.limits
    parts = {
        "hankwise": hw.__version__,
        "kind": chart.kind,
        "subgroup": chart.subgroup,
        "unit": chart.unit,
        "centre": chart.centre.number(chart.centre.unit),
        "limits": [low.number(low.unit), high.number(high.unit)],
        "points": list(chart.points),
        "findings": chart.findings,
        "points_to_false_alarm": chart.points_to_false_alarm,
    }
    print(dumps(parts))
