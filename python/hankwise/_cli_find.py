"""The command `find`: the one search."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import hankwise as hw
from hankwise._hankwise import _kinds
from hankwise._json import dumps

if TYPE_CHECKING:
    import argparse


class Nothing(hw.HankwiseError):
    """Nothing was found."""


def add(commands: Any, own: argparse.ArgumentParser) -> None:
    """Add the command."""
    find = commands.add_parser(
        "find",
        parents=[own],
        help="search formulas, calculations, tables, counts, units and everything else",
        description="Search everything; without words, list everything. The name of a table "
        "prints the table, with words the rows that have them.",
    )
    find.add_argument("words", nargs="*", default=[], metavar="WORD", help="words to look for")
    find.add_argument("--kind", metavar="KIND", help=f"only one kind: {', '.join(_kinds)}")
    find.add_argument("--all", action="store_true", help="print all hits, not the best ten")
    find.add_argument("--json", action="store_true", help="print JSON for other programs")


def run(args: argparse.Namespace) -> None:
    """Search."""
    words = " ".join(args.words)
    if args.words and args.words[0] in hw.handbook and args.kind in (None, "table", "row"):
        _table(args.words[0], " ".join(args.words[1:]), args)
        return
    found = hw.find(words, args.kind)
    if args.json:
        hits = [
            {("python" if key == "line" else key): value for key, value in row.items()}
            for row in found.records()
        ]
        parts = {"hankwise": hw.__version__, "words": words, "kinds": found.kinds, "hits": hits}
        print(dumps(parts))
    nothing = found._nothing()
    if nothing is not None:
        raise Nothing(nothing)
    if not args.json:
        print(found._command(all=args.all), end="")


def _table(name: str, words: str, args: argparse.Namespace) -> None:
    table = hw.handbook[name]
    rows = table.find(words) if words else table
    if args.json:
        parts = {
            "hankwise": hw.__version__,
            "name": table.name,
            "title": table.title,
            "about": table.about,
            "cautions": table.cautions,
            "rows": rows.records(),
        }
        print(dumps(parts))
    if not len(rows):
        raise Nothing(
            f"nothing in '{name}' matches '{words}'; run hankwise find {name} for all rows"
        )
    if not args.json:
        print(rows)
