"""The command `hankwise chart`: a control chart of the readings in a file."""

from __future__ import annotations

import argparse
import csv
import json
import sys
from pathlib import Path
from typing import Any

import hankwise as hw


def add(commands: Any, whole: Any) -> None:
    """Add the command to the parser."""
    chart = commands.add_parser(
        "chart", help="a control chart of readings in a CSV file, in the order of its rows"
    )
    chart.add_argument("file", metavar="FILE.csv", help="a column of readings, with a head")
    chart.add_argument("--column", metavar="NAME", help="the column, where there are several")
    chart.add_argument("--subgroup", type=whole, metavar="N", help="readings in a subgroup")
    chart.add_argument(
        "--kind",
        choices=["mean", "range", "deviation", "individuals", "moving range"],
        help="what the points are",
    )
    chart.add_argument("--unit", metavar="UNIT", help="the unit of the readings, such as tex")
    chart.add_argument("--baseline", type=whole, metavar="N", help="limits from the first N points")
    chart.add_argument("--save", metavar="F.svg", help="draw it (.svg, .png, .pdf)")
    chart.add_argument("--json", action="store_true", help="print JSON for other programs")


def _column(path: Path, name: str | None) -> list[float]:
    """Read the figures of a column; says where one cannot be read."""
    with path.open(encoding="utf-8-sig", newline="") as file:
        rows = [row for row in csv.reader(file) if any(cell.strip() for cell in row)]
    if len(rows) < 2:
        raise hw.NotationError(f"{path}: a head and readings below it are wanted")
    heads = [head.strip() for head in rows[0]]
    if name is None:
        if len(heads) > 1:
            raise hw.NotationError(
                f"{path} has columns {', '.join(heads)}; say which with --column NAME"
            )
        name = heads[0]
    if name not in heads:
        raise hw.NotationError(f"{path} has no column '{name}'; it has {', '.join(heads)}")
    place = heads.index(name)
    values = []
    for number, row in enumerate(rows[1:], start=2):
        cell = row[place].strip() if place < len(row) else ""
        try:
            values.append(float(cell))
        except ValueError:
            more = "; does the file have a head?" if number == 2 else ""
            raise hw.NotationError(
                f"{path}, row {number}, {name}: '{cell}' is no figure{more}"
            ) from None
    try:
        float(name)
    except ValueError:
        return values
    raise hw.NotationError(
        f"{path}: '{name}' stands where the head should be; write the name of the column above"
    )


def run(args: argparse.Namespace) -> None:
    """Print the chart, and draw it."""
    values = _column(Path(args.file), args.column)
    readings = values if args.unit is None else hw.q(values, args.unit)
    chart = hw.quality.chart(readings, args.subgroup, args.kind, baseline=args.baseline)
    if args.save is not None:
        chart.save(args.save)
        print(f"picture: {args.save}", file=sys.stderr)
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
    print(json.dumps(parts, ensure_ascii=False, indent=1))
