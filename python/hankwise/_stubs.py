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
from typing import Any, Literal, NotRequired, TypeAlias, TypedDict

from hankwise._hankwise import (
    Quantity,
    Results,
    _as_calculation,
    _as_formula,
    _Measure,
    _Measures,
    _Named,
    _Plain,
    _Plains,
)
'''


_WIDTH = 100


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
    if len(line) <= _WIDTH:
        return [line]
    first, *last = _broken(f") -> {result}:")
    return [f"def {name}(", *(f"    {one}," for one in parameters), first, *last]


def _broken(line: str) -> list[str]:
    """Write a line that is too long with what its brackets hold on lines of their own."""
    if len(line) <= _WIDTH or "[" not in line:
        return [line]
    indent = " " * (len(line) - len(line.lstrip()))
    head, _, rest = line.partition("[")
    inside, _, tail = rest.rpartition("]")
    # Neither the commas of words nor those of further brackets part what is inside.
    members = re.findall(r'(?:"[^"]*"|\[(?:"[^"]*"|[^]"])*\]|[^,"\[])+', inside)
    rows = [row for one in members for row in _broken(f"{indent}    {one.strip()},")]
    return [f"{head}[", *rows, f"{indent}]{tail}"]


def _stub_of_formula(formula: hw.Formula[...]) -> list[str]:
    inputs = formula.inputs
    given = [f"{i['name']}: {_type(i['unit'], i['many'])}" for i in inputs]
    meanings = [f"{i['name']}: {i['meaning']}" for i in inputs]
    doc = _doc([formula.summary, "", formula.equation, "", *meanings])
    return ["", "@_as_formula", *_function(formula.name, given, "Quantity"), *doc]


def _words(asked: dict[str, Any]) -> str:
    """Write the words of which an input takes one."""
    return f"Literal[{', '.join(f'{chr(34)}{word}{chr(34)}' for word in asked['words'])}]"


def _title(name: str, of: str = "_") -> str:
    """Name a type after what it is of."""
    return of + name.title().replace("_", "")


def _type_of_input(asked: dict[str, Any], title: str, columns: bool) -> str:
    """Give the type of an input; `title` begins the names of types that are its own."""
    own = _title(asked["name"], title)
    if "rows" in asked:
        if not asked["label"]:
            return f"Sequence[{own}]"
        # Where one thing is asked of each, its value may stand alone.
        fields = [field for field in asked["rows"] if field["name"] != asked["label"]]
        alone = f" | {_type_of_input(fields[0], own, False)}" if len(fields) == 1 else ""
        return f"_Named[{own}{alone}]"
    if "words" in asked:
        return own if _is_long(asked) else _words(asked)
    if "flag" in asked:
        return "bool"
    if "set" in asked:
        return _type(asked["unit"], many=True)
    if "unit" in asked:
        one = _type(asked["unit"], asked["many"])
        # A column of cases.
        return f"{one} | Sequence[_Measure]" if columns and one == "_Measure" else one
    return "str"


def _is_long(asked: dict[str, Any]) -> bool:
    """Whether the words of an input are too long for a line of a signature."""
    return len(f"    {asked['name']}: {_words(asked)} | None = None,") > _WIDTH


def _inputs(
    all_asked: list[dict[str, Any]], title: str, columns: bool
) -> list[tuple[str, str, bool]]:
    """Give name, type and need of each input, those that have to be given first."""
    found = []
    for asked in sorted(all_asked, key=lambda one: not one["needed"]):
        found.append((asked["name"], _type_of_input(asked, title, columns), asked["needed"]))
        if "set" in asked:
            found.append((asked["set"], _type(asked["unit"], many=False), False))
    return found


def _own_types(all_asked: list[dict[str, Any]], title: str) -> list[str]:
    """Write the types that inputs have of their own: the rows of lists, a choice of many words."""
    lines: list[str] = []
    for asked in all_asked:
        own = _title(asked["name"], title)
        if "rows" in asked:
            lines += [*_own_types(asked["rows"], own), "", f"class {own}(TypedDict):"]
            for name, type_, needed in _inputs(asked["rows"], own, columns=False):
                needed = needed and name != asked["label"]
                lines.append(f"    {name}: {type_ if needed else f'NotRequired[{type_} | None]'}")
        elif "words" in asked and _is_long(asked):
            lines += ["", *_broken(f"{own}: TypeAlias = {_words(asked)}")]
    return lines


def _stub_of_calculation(calculation: hw.Calculation[..., Any]) -> list[str]:
    title = _title(calculation.name)
    given = [
        f"{name}: {type_}" if needed else f"{name}: {type_} | None = None"
        for name, type_, needed in _inputs(calculation.inputs, title, columns=True)
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
    own = _own_types(calculation.inputs, title)
    return [*own, "", "@_as_calculation", *head, *doc]


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
    lines: list[str] = []
    for line in head:
        if line.startswith("from ") and not line.startswith("from hankwise"):
            module, _, names = line.strip().partition(" import ")
            used = [one for one in names.split(", ") if re.search(rf"\b{one}\b", text)]
            if used:
                lines.append(f"{module} import {', '.join(used)}\n")
        elif line.startswith("    "):
            name = line.strip().rstrip(",")
            if re.search(rf"\b{name}\b", text):
                lines.append(line)
        elif line.startswith(")"):
            start = lines.index("from hankwise._hankwise import (\n") + 1
            imports = [*lines[start:], *(f"    {one} as {one},\n" for one in functions)]
            lines[start:] = [*sorted(imports, key=_rank), line]
        else:
            lines.append(line)
    return lines


def _rank(line: str) -> tuple[bool, str]:
    """Sort imports as ruff does: what begins with a capital first."""
    name = line.strip().rstrip(",")
    return (not name[0].isupper(), name.lower())


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
