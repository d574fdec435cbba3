"""The command `calc`: a formula or a calculation, its answers or its description."""

from __future__ import annotations

import json
import sys
import warnings
from typing import TYPE_CHECKING, Any

import hankwise as hw
from hankwise._hankwise import _calc
from hankwise._json import dumps

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence

# Changes that are printed under the working of a calculation; all are in the JSON.
_MOST_CHANGES = 5
_FORMULA = (
    "name",
    "room",
    "summary",
    "details",
    "equation",
    "inputs",
    "output",
    "limits",
    "slips",
    "cautions",
    "sources",
    "checks",
)
_CALCULATION = ("name", "room", "summary", "details", "inputs", "results", "cautions")


def add(commands: Any, own: argparse.ArgumentParser, written: argparse.ArgumentParser) -> None:
    """Add the command."""
    calc = commands.add_parser(
        "calc",
        parents=[own, written],
        help="run a formula or a calculation; without values, describe it",
    )
    calc.add_argument("name", help="the formula or calculation; hankwise find WORDS looks for one")
    calc.add_argument(
        "inputs", nargs="*", default=[], metavar="input=value", help='such as count="16 YSW"'
    )
    calc.add_argument(
        "--in",
        dest="units",
        action="append",
        default=[],
        metavar="UNIT",
        help="also show the answer of a formula in this unit, e.g. 'tpi/sqrt(YSW)'",
    )
    calc.add_argument("--working", metavar="NAME", help="show the calculation behind one answer")
    calc.add_argument("--json", action="store_true", help="print JSON for other programs")
    calc.add_argument("--latex", action="store_true", help="print the working as LaTeX")
    calc.add_argument(
        "--workbook", metavar="FILE.xlsx", help="write an Excel workbook with live formulas"
    )


def as_json(working: hw.Working, **about: object) -> str:
    """Give a working for other programs."""
    parts = {
        "hankwise": hw.__version__,
        **about,
        "value": working.value,
        "unit": working.unit,
        "lines": working.lines,
        "sensitivities": working.sensitivities,
        "changes": working.changes,
    }
    return dumps(parts)


def run(args: argparse.Namespace) -> None:
    """Run or describe."""
    try:
        what = _calc(args.name)
    except KeyError as error:
        # In the words of the command line.
        said, _, _ = str(error.args[0]).partition("find(")
        words = " ".join(args.name.split("_"))
        raise hw.NotationError(f"{said}hankwise find {words}") from None
    inputs = what.inputs
    if not args.inputs:
        _describe(args, what, [i["name"] for i in inputs if i.get("needed", True)])
        return
    given = _given(what.name, inputs, args.inputs)
    if isinstance(what, hw.Formula):
        _formula(args, what, given)
    else:
        _calculation(args, what, given)


def _describe(
    args: argparse.Namespace, what: hw.Formula[...] | hw.Calculation[..., Any], names: list[str]
) -> None:
    if args.workbook is not None or args.latex or args.units or args.working:
        raise hw.NotationError(
            f"{what.name}: a working needs the inputs; write them too, such as {names[0]}=…"
        )
    if args.json:
        keys = _FORMULA if isinstance(what, hw.Formula) else _CALCULATION
        parts = {key: getattr(what, key) for key in keys}
        print(dumps({"hankwise": hw.__version__, **parts}))
        return
    print(f"{what.name} ({what.room})\n{str(what).rstrip()}\n")
    print(f"To run it: hankwise calc {what.name} {' '.join(f'{name}=…' for name in names)}")


def _given(of: str, inputs: Sequence[dict[str, Any]], texts: Sequence[str]) -> dict[str, Any]:
    by_name = {asked["name"]: asked for asked in inputs}
    given: dict[str, Any] = {}
    for text in texts:
        name, sign, value = text.partition("=")
        if not sign:
            example = next(iter(by_name))
            raise hw.NotationError(f"'{text}' is not an input; write it like {example}=\"…\"")
        rows, _, rest = name.partition(".")
        if rest and "rows" in by_name.get(rows, {}):
            held = given.setdefault(rows, {})
            if not isinstance(held, dict):
                raise _not_a_list(of, by_name[rows], "", held)
            _row(of, by_name[rows], held, rest, value)
            continue
        if name in given:
            raise hw.NotationError(f"{of}: '{name}' was given twice; write it once")
        given[name] = _value(by_name.get(name, {}), value)
    _complete(of, inputs, given, "")
    return {name: _listed(of, by_name.get(name, {}), value) for name, value in given.items()}


def _example(asked: dict[str, Any]) -> str:
    """Give a row and what is asked of it first."""
    row = "NAME" if asked["label"] else "1"
    return f"{row}.{next(one['name'] for one in asked['rows'] if one['name'] != asked['label'])}"


def _not_a_list(of: str, asked: dict[str, Any], before: str, value: object) -> hw.NotationError:
    name = f"{before}{asked['name']}"
    return hw.NotationError(
        f"{of}: {name} ({asked['meaning']}) is a list; write {name}.{_example(asked)}={value}"
    )


def _complete(
    of: str, inputs: Sequence[dict[str, Any]], given: dict[str, Any], before: str
) -> None:
    """Refuse lists that are missing or written as one value, those in lists too."""
    for asked in inputs:
        name = asked["name"]
        if "rows" not in asked or (name not in given and not asked["needed"]):
            continue
        if name not in given:
            raise hw.NotationError(
                f"{of}: {before}{name} ({asked['meaning']}) is missing; "
                f"write {before}{name}.{_example(asked)}=…"
            )
        if not isinstance(given[name], dict):
            raise _not_a_list(of, asked, before, given[name])
        for row, fields in given[name].items():
            if isinstance(fields, dict):
                _complete(of, asked["rows"], fields, f"{before}{name}.{row}.")


def _row(of: str, asked: dict[str, Any], rows: dict[str, Any], rest: str, value: str) -> None:
    """Put a value in its row: `stages.card.loss=8 %`, or `washes.1.bath=200 L`."""
    row, dot, name = rest.rpartition(".")
    of_row = {one["name"]: one for one in asked["rows"]}
    # A list in a row: `lots.Elm.times.card=10 h`.
    outer, _, inner = rest.partition(".")
    field, nested, deeper = inner.partition(".")
    if nested and name not in of_row and "rows" in of_row.get(field, {}):
        fields = rows.setdefault(outer, {})
        held = fields.setdefault(field, {}) if isinstance(fields, dict) else fields
        if not isinstance(held, dict):
            raise _not_a_list(of, of_row[field], f"{asked['name']}.{outer}.", held)
        _row(of, of_row[field], held, deeper, value)
        return
    if not dot:
        # The value of a row may stand alone: `out.top=673 g`.
        row, name = rest, ""
    fields = rows.setdefault(row, {} if name else value)
    if not name and fields is value:
        return
    if not name or not isinstance(fields, dict) or name in fields:
        raise hw.NotationError(f"{of}: '{asked['name']}.{rest}' was given twice")
    fields[name] = _value(of_row.get(name, {}), value)


def _value(asked: dict[str, Any], value: str) -> Any:
    """Give a text as what is asked: a list, yes or no, or the text itself."""
    if asked.get("many") or "set" in asked:
        return [part.strip() for part in value.strip("[] ").split(",")]
    if asked.get("flag") and value.strip().lower() in ("yes", "no", "true", "false"):
        return value.strip().lower() in ("yes", "true")
    return value


def _listed(of: str, asked: dict[str, Any], value: Any) -> Any:
    """Give rows without names of their own as a list, in the order of their numbers."""
    if "rows" not in asked or not isinstance(value, dict) or asked["label"]:
        return value
    if not all(row.isascii() and row.isdigit() for row in value):
        return list(value.values())
    rows = sorted(value, key=int)
    wanted = [str(number) for number in range(1, len(rows) + 1)]
    if rows != wanted:
        name = asked["name"]
        raise hw.NotationError(
            f"{of}: {name} has the numbers {', '.join(rows)}; write "
            f"{', '.join(f'{name}.{number}' for number in wanted)}"
        )
    return [value[row] for row in rows]


def _formula(args: argparse.Namespace, formula: hw.Formula[...], inputs: dict[str, Any]) -> None:
    if args.working not in (None, formula.name):
        raise hw.NotationError(
            f"{formula.name} has one answer and prints its working; omit --working"
        )
    run: Any = formula
    working = run.working(**inputs)
    with warnings.catch_warnings():
        # The working has given them.
        warnings.simplefilter("ignore", hw.RangeWarning)
        also = {unit: run(**inputs).to(unit) for unit in args.units}
    if args.workbook is not None:
        working.to_workbook(args.workbook, force=args.force)
        print(f"workbook: {args.workbook}", file=sys.stderr)
    if args.json:
        numbers = {unit: float(answer.number(unit)) for unit, answer in also.items()}
        more = {"also": numbers} if numbers else {}
        cautions = {"cautions": formula.cautions} if formula.cautions else {}
        print(as_json(working, formula=formula.name, **more, **cautions))
    elif args.latex:
        print(working.latex(), end="")
    else:
        print(" = ".join([formula.name, working.answer, *map(str, also.values())]) + "\n")
        print(working, end="")
        for change in working.changes:
            print(f"    With {change['words']}")
        _beware(formula)


def _beware(what: hw.Formula[...] | hw.Calculation[..., Any]) -> None:
    """Print what can do harm where the answer is acted on."""
    if what._caution_text:
        print(f"\n{what._caution_text}", end="")


def _calculation(
    args: argparse.Namespace, calculation: hw.Calculation[..., Any], inputs: dict[str, Any]
) -> None:
    if args.units:
        raise hw.NotationError(
            f"{calculation.name} has several answers; --in is for the one answer of a formula"
        )
    if args.latex and args.working is None:
        raise hw.NotationError(
            f"{calculation.name} has several answers; write --working NAME for one"
        )
    found = calculation(**inputs)
    if args.workbook is not None:
        found.to_workbook(args.workbook, force=args.force)
        print(f"workbook: {args.workbook}", file=sys.stderr)
    if args.working is not None:
        working = found.working(args.working)
        if args.json:
            print(as_json(working, calculation=calculation.name, result=args.working))
        else:
            print(working.latex() if args.latex else working, end="")
            if not args.latex:
                for change in working.changes[:_MOST_CHANGES]:
                    print(f"    With {change['words']}")
                _beware(calculation)
    elif args.json:
        parts = {"hankwise": hw.__version__, **json.loads(found.to_json())}
        print(dumps(parts))
    else:
        print(found)
        print(
            f"\nMore: --working NAME (such as {next(iter(found.keys()))}), "
            "--workbook FILE.xlsx, --json"
        )
