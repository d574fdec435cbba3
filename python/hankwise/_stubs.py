"""Type stubs of the rooms, written from the catalogue.

python -m hankwise._stubs            writes fibre.pyi, yarn.pyi, cloth.pyi, mill.pyi,
                                     quality.pyi
python -m hankwise._stubs --check    says which of them are not as the catalogue is
"""

import sys
from pathlib import Path
from textwrap import fill
from types import ModuleType

import hankwise as hw

_HEAD = '''"""{about}"""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)
'''


def _type(unit: str, many: bool) -> str:
    """Ratios and shares may be bare numbers, whatever has a unit may not."""
    return ("_Measure" if unit else "_Plain") + ("s" if many else "")


def _doc(formula: hw.Formula) -> str:
    """Say what a formula is, for the editors that show it."""
    inputs = [f"{i['name']}: {i['meaning']}" for i in formula.inputs]
    lines = [formula.summary, "", formula.equation, "", *inputs]
    indent = " " * 4
    rows = [fill(line, 97, initial_indent=indent, subsequent_indent=indent) for line in lines]
    return "\n".join(rows).strip()


def _method(name: str, parameters: list[str], result: str) -> str:
    """Write a method on one line, or a line for each parameter."""
    line = f"    def {name}({', '.join(['self', *parameters])}) -> {result}: ..."
    if len(line) <= 100:
        return line
    rows = "".join(_parameter(one) for one in ["self", *parameters])
    return f"    def {name}(\n{rows}    ) -> {result}: ..."


def _parameter(one: str) -> str:
    """Write a parameter on a line of its own, the words of a long list below it."""
    line = f"        {one},\n"
    head, bracket, words = one.partition("Literal[")
    if len(line) <= 101 or not bracket:
        return line
    words = words.removesuffix("]")
    within = f"            {words}\n"
    if len(within) > 101:
        within = "".join(f"            {word},\n" for word in words.split(", "))
    return f"        {head}Literal[\n{within}        ],\n"


def _formula(formula: hw.Formula) -> str:
    name, inputs = formula.name, formula.inputs
    title = "_" + name.title().replace("_", "")
    given = [f"{i['name']}: {_type(i['unit'], i['many'])}" for i in inputs]
    at = ["*", "at: int | tuple[int, ...] | None = None"]
    lines = [
        "",
        "@final",
        f"class {title}(Formula):",
        f'    """{_doc(formula)}',
        '    """',
        "",
        _method("__call__", given, "Quantity"),
        _method("working", given + at, "Working"),
    ]
    unknown = ", ".join(f'"{i["name"]}"' for i in inputs if not i["many"])
    if unknown:
        wanted = f"{name}: {_type(formula.output['unit'], False)}"
        known = [f"{one} = ..." for one in given]
        lines += [
            _method(
                "solve", [f"unknown: Literal[{unknown}]", "*", wanted, *known], "list[Quantity]"
            )
        ]
    lines += ["", f"{name}: {title}", ""]
    return "\n".join(lines)


def stub(room: ModuleType) -> str:
    """Give the stub of a room."""
    formulas = [f for f in vars(room).values() if isinstance(f, hw.Formula)]
    body = "".join(map(_formula, formulas))
    head = _HEAD.format(about=room.__doc__)
    used = [line for line in head.splitlines(keepends=True) if _used(line, body)]
    before, ours, after = "".join(used).partition("from hankwise._hankwise import")
    # Imports stand in the order of their modules.
    more = _functions(room)
    first, last = (more, "") if more < ours else ("", more)
    return before + first + ours + after + last + body


def _functions(room: ModuleType) -> str:
    """Import what a room has besides formulas from the stub that is written by hand."""
    short = room.__name__.rpartition(".")[2]
    names = [n for n, f in vars(room).items() if callable(f) and not isinstance(f, hw.Formula)]
    return "".join(f"from hankwise._{short}_more import {n} as {n}\n" for n in sorted(names))


def _used(line: str, body: str) -> bool:
    """Leave out imports that no formula of the room needs."""
    name = line.strip().rstrip(",")
    return not name.startswith("_") or f": {name}" in body


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
