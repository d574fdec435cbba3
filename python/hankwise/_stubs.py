"""Type stubs of the rooms, written from the catalogue.

python -m hankwise._stubs            writes fibre.pyi, yarn.pyi, cloth.pyi, mill.pyi,
                                     quality.pyi
python -m hankwise._stubs --check    says which of them are not as the catalogue is
"""

from __future__ import annotations

import re
import sys
from pathlib import Path
from textwrap import fill
from types import ModuleType
from typing import Any

import hankwise as hw

_HEAD = '''"""{about}"""

# Written by python -m hankwise._stubs from the catalogue.

from collections.abc import Mapping, Sequence
from typing import Any, Literal, NotRequired, TypedDict

from hankwise._hankwise import (
    Quantity,
    Results,
    _as_calculation,
    _as_formula,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)
'''


def _type(unit: str, many: bool) -> str:
    """Ratios and shares may be bare numbers, whatever has a unit may not."""
    return ("_Measure" if unit else "_Plain") + ("s" if many else "")


def _doc(lines: list[str]) -> list[str]:
    """Write what something is, for the editors that show it."""
    indent = " " * 4
    rows = [fill(line, 97, initial_indent=indent, subsequent_indent=indent) for line in lines]
    return [f'    """{chr(10).join(rows).strip()}', '    """']


def _function(name: str, parameters: list[str], result: str) -> list[str]:
    """Write a function on one line, or a line for each parameter."""
    line = f"def {name}({', '.join(parameters)}) -> {result}:"
    if len(line) <= 100:
        return [line]
    rows = [row for one in parameters for row in _wrapped(one, "    ")]
    last = _wrapped(f") -> {result}:", "", end="")
    return [f"def {name}(", *rows, *last]


def _wrapped(one: str, indent: str, end: str = ",") -> list[str]:
    """Write a piece of a signature, the words of a long list on lines of their own."""
    line = f"{indent}{one}{end}"
    head, bracket, rest = one.partition("Literal[")
    if len(line) <= 100 or not bracket:
        return [line]
    words, _, tail = rest.rpartition('"')
    return [
        f"{indent}{head}Literal[",
        *(f"{indent}    {word}," for word in (words + '"').split(", ")),
        f"{indent}{tail}{end}",
    ]


def _stub_of_formula(formula: hw.Formula[...]) -> list[str]:
    inputs = formula.inputs
    given = [f"{i['name']}: {_type(i['unit'], i['many'])}" for i in inputs]
    meanings = [f"{i['name']}: {i['meaning']}" for i in inputs]
    doc = _doc([formula.summary, "", formula.equation, "", *meanings])
    return ["", "@_as_formula", *_function(formula.name, given, "Quantity"), *doc]


def _type_of_input(asked: dict[str, Any], title: str) -> str:
    """Give the type of an input of a calculation; `title` names the rows of its lists."""
    if "rows" in asked:
        row = f"_{title}{asked['name'].title().replace('_', '')}"
        if asked["label"]:
            return f"Sequence[{row} | tuple[str, {row}] | str] | Mapping[str, {row}]"
        return f"Sequence[{row}]"
    if "words" in asked:
        return f"Literal[{', '.join(f'{chr(34)}{word}{chr(34)}' for word in asked['words'])}]"
    if "flag" in asked:
        return "bool"
    if "set" in asked:
        return _type(asked["unit"], many=True)
    if "unit" in asked:
        one = _type(asked["unit"], asked["many"])
        # A column of cases.
        return one if asked["many"] or one == "_Plain" else f"{one} | Sequence[_Measure]"
    return "str"


def _inputs(all_asked: list[dict[str, Any]], title: str) -> list[tuple[str, str, bool]]:
    """Give name, type and need of each input, those that have to be given first."""
    found = []
    for asked in sorted(all_asked, key=lambda one: not one["needed"]):
        found.append((asked["name"], _type_of_input(asked, title), asked["needed"]))
        if "set" in asked:
            found.append((asked["set"], _type(asked["unit"], many=False), False))
    return found


def _rows_of(calculation: hw.Calculation[..., Any], title: str) -> list[str]:
    """Write the types of the rows of a calculation's lists."""
    lines: list[str] = []
    for asked in calculation.inputs:
        if "rows" in asked:
            lines += ["", f"class _{title}{asked['name'].title().replace('_', '')}(TypedDict):"]
            for name, type_, needed in _inputs(asked["rows"], title):
                needed = needed and name != asked["label"]
                lines.append(f"    {name}: {type_ if needed else f'NotRequired[{type_} | None]'}")
    return lines


def _stub_of_calculation(calculation: hw.Calculation[..., Any]) -> list[str]:
    title = calculation.name.title().replace("_", "")
    given = [
        f"{name}: {type_}" if needed else f"{name}: {type_} | None = None"
        for name, type_, needed in _inputs(calculation.inputs, title)
    ]
    results = calculation.results
    if any("rows" in one or one["many"] for one in results):
        result = "Results[str, Any]"
    else:
        names = ", ".join(f'"{one["name"]}"' for one in results)
        result = f"Results[Literal[{names}], Quantity]"
    meanings = [f"{asked['name']}: {asked['meaning']}" for asked in calculation.inputs]
    doc = _doc([calculation.summary, "", *meanings])
    head = _function(calculation.name, ["*", *given], result)
    return [*_rows_of(calculation, title), "", "@_as_calculation", *head, *doc]


def stub(room: ModuleType) -> str:
    """Give the stub of a room."""
    all_named = vars(room).values()
    body: list[str] = []
    for one in all_named:
        if isinstance(one, hw.Formula):
            body += _stub_of_formula(one)
    for one in all_named:
        if isinstance(one, hw.Calculation):
            body += _stub_of_calculation(one)
    text = "\n".join(body) + "\n"
    head = _HEAD.format(about=room.__doc__).splitlines(keepends=True)
    return "".join(_used(head, text, _functions(room))) + text


def _functions(room: ModuleType) -> list[str]:
    """Name what a room has besides formulas and calculations."""
    made = (hw.Formula, hw.Calculation)
    return sorted(n for n, f in vars(room).items() if callable(f) and not isinstance(f, made))


def _used(head: list[str], text: str, functions: list[str]) -> list[str]:
    """Leave out imports that nothing of the room needs, and add its functions."""
    lines = []
    for line in head:
        if line.startswith("from ") and not line.startswith("from hankwise"):
            module, _, names = line.strip().partition(" import ")
            used = [name for name in names.split(", ") if re.search(rf"\b{name}\b", text)]
            if used:
                lines.append(f"{module} import {', '.join(used)}\n")
        elif line.startswith("    "):
            name = line.strip().rstrip(",")
            if re.search(rf"\b{name}\b", text):
                lines.append(line)
        elif line.startswith(")"):
            # Names of functions stand between those with capitals and those with an underscore.
            names = lines[lines.index("from hankwise._hankwise import (\n") + 1 :]
            del lines[-len(names) :]
            names += [f"    {name} as {name},\n" for name in functions]
            lines += [*sorted(names, key=_rank), line]
        else:
            lines.append(line)
    return lines


def _rank(line: str) -> tuple[int, str]:
    """Sort imports as ruff does: classes, then functions."""
    name = line.strip().split(" ")[0].rstrip(",")
    bare = name.lstrip("_")
    return (0 if bare[:1].isupper() else 1, name.lower())


def main(args: list[str]) -> int:
    """Write the stubs beside this file, or compare them."""
    stale = 0
    for room in (hw.fibre, hw.yarn, hw.cloth, hw.mill, hw.quality):
        path = Path(__file__).with_name(room.__name__.rpartition(".")[2] + ".pyi")
        text = stub(room)
        if "--check" not in args:
            path.write_text(text, encoding="utf-8")
        elif not path.exists() or path.read_text(encoding="utf-8") != text:
            print(f"{path} is not as the catalogue is; write it with: python -m hankwise._stubs")
            stale += 1
    return 1 if stale else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
