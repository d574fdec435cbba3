"""The papers of a lot and of a mill, from the command line."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import hankwise as hw
from hankwise._hankwise import _paper_path

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable
    from typing import Literal

    Name = Literal["quote", "grower", "mill", "floor"]

_OF_A_LOT: tuple[Name, ...] = ("quote", "grower", "mill", "floor")


def _asked(args: argparse.Namespace) -> tuple[Name, ...]:
    """Give the papers of the lot that were asked for: all, where none is named."""
    named = tuple(name for name in _OF_A_LOT if getattr(args, name))
    if args.tables and named:
        raise hw.NotationError(
            f"--tables is made from a mill file, --{named[0]} from a lot file; write two commands"
        )
    return named or _OF_A_LOT


def paths(args: argparse.Namespace) -> list[str]:
    """Give the files that will be written."""
    names = ("tables",) if args.tables else _asked(args)
    if args.tables:
        _asked(args)
    return [str(_paper_path(args.lot, name, args.out)) for name in names]


def run(args: argparse.Namespace, progress: Callable[[int, int], None] | None) -> None:
    """Write the papers."""
    if args.tables:
        if args.seed is not None:
            raise hw.NotationError(
                "--seed draws lots, and --tables needs none; omit one of the two"
            )
        written = [hw.plan.mill_tables(args.lot, args.out, force=args.force)]
    else:
        if args.seed is not None and args.lots == 0:
            raise hw.NotationError(
                "--seed draws lots, and --lots 0 draws none; omit one of the two"
            )
        plan = hw.plan.load(args.lot)
        result = plan.run(args.lots, 1 if args.seed is None else args.seed, progress=progress)
        folder = None if args.out is None else Path(args.out)
        written = result.to_papers(folder, _asked(args), force=args.force)
    for path in written:
        print(path)
    sys.stdout.flush()
