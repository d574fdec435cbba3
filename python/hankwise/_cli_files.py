"""The files of a command: what it reads and what it writes."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

import hankwise as hw
from hankwise import _cli_papers
from hankwise._hankwise import _check_output

if TYPE_CHECKING:
    import argparse


def _same(one: str, other: str) -> bool:
    """Tell whether two names are of one file."""
    try:
        return os.path.samefile(one, other)
    except (OSError, ValueError):
        return os.path.abspath(one) == os.path.abspath(other)


def check(args: argparse.Namespace) -> None:
    """Refuse what could not be written, or would replace what is read, before anything is done."""
    read = [name for key in ("lot", "file") if (name := getattr(args, key, None)) is not None]
    read += getattr(args, "own", [])
    written: list[tuple[str, str | None]] = []
    if args.command == "papers":
        written += [(path, "html") for path in _cli_papers.paths(args)]
    for key, ending in (("workbook", "xlsx"), ("picture", None), ("out", "toml")):
        # The papers go into a folder.
        given = None if (key, args.command) == ("out", "papers") else getattr(args, key, None)
        names = [] if given is None else given if isinstance(given, list) else [given]
        # A weave is drawn as SVG alone.
        written += [(name, "svg" if args.command == "weave" else ending) for name in names]
    if getattr(args, "force", False) and not written:
        keys = ("workbook", "picture", "out")
        options = " or ".join(f"--{k.replace('_', '-')} FILE" for k in keys if hasattr(args, k))
        raise hw.NotationError(f"--force replaces a file, and none is written; add {options}")
    before: list[str] = []
    for name, ending in written:
        if any(_same(name, other) for other in read):
            raise hw.NotationError(f"{name} is read; write to another file")
        if any(_same(name, other) for other in before):
            raise hw.NotationError(f"{name} would be written twice; give each file a name")
        _check_output(name, ending, args.force)
        before.append(name)
