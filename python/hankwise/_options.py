"""What the command line takes: commands, options, words."""

from __future__ import annotations

import argparse
import os
from typing import TYPE_CHECKING, NoReturn

import hankwise as hw
from hankwise import _cli_calc, _cli_chart, _cli_find

if TYPE_CHECKING:
    from collections.abc import Sequence


class _Parser(argparse.ArgumentParser):
    """A parser whose complaints say what to type instead."""

    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{self.prog}: {message}\n{self.format_usage()}")


def _whole(text: str) -> int:
    """Read a whole number that the crate can hold."""
    digits = text.replace(",", "").replace("_", "")
    if not (digits.isascii() and digits.isdigit() and int(digits) < 2**63):
        raise argparse.ArgumentTypeError(
            f"{text} is not possible; write a whole number from 0 up, such as 100000"
        )
    return int(digits)


def _share(text: str) -> float:
    """Read a fraction, or a percentage with its sign."""
    try:
        return hw.q(text).number("fraction") if "%" in text else float(text)
    except ValueError:
        raise argparse.ArgumentTypeError(
            f"'{text}' is not a fraction; write one such as 0.95, or '95 %'"
        ) from None


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="hankwise",
        description="Plan a fleece lot from greasy wool to finished goods, and yarn arithmetic.",
        epilog="Quantities are texts with their units: '9 tpi', '22½ YSW', '8 %', '1 lb 12 oz'.",
    )
    parser.add_argument("--version", action="version", version=f"hankwise {hw.__version__}")
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    own = _Parser(add_help=False)
    own.add_argument(
        "--counts",
        dest="own",
        metavar="FILE",
        action="append",
        default=[],
        help="a file of count systems of your own",
    )

    plan = commands.add_parser(
        "plan", parents=[own], help="what a lot makes, what to set, how sure it is"
    )
    plan.add_argument("lot", metavar="LOT.toml", help="the lot file")
    plan.add_argument("--all", action="store_true", help="show all there is")
    plan.add_argument("--working", metavar="NAME", help="show how a figure comes about")
    plan.add_argument(
        "--needed",
        metavar="GOODS",
        nargs="?",
        const="",
        help="greasy mass to take in: for hank=200,throw=12 or, without goods, for the promise",
    )
    plan.add_argument("--confidence", type=_share, default=0.95, help="for --needed (0.95)")
    plan.add_argument("--draws", type=_whole, default=100_000, help="how many draws (100000)")
    plan.add_argument("--seed", type=_whole, default=1, help="seed of the draws (1)")
    plan.add_argument("--json", action="store_true", help="print JSON for other programs")
    plan.add_argument("--sheet", metavar="F.xlsx", help="write the plan as a live workbook")
    plan.add_argument("--card", metavar="F.html", help="write the lot's card, a page to print")
    plan.add_argument(
        "--figure",
        metavar="F.svg",
        action="append",
        default=[],
        help="draw the plan (.svg, .png, .pdf)",
    )

    convert = commands.add_parser(
        "convert", parents=[own], help="a quantity in another unit: convert 16 Nm YSW"
    )
    convert.add_argument("words", nargs="+", metavar="QUANTITY UNIT", help="such as: 16 Nm YSW")
    convert.add_argument("--json", action="store_true", help="print JSON for other programs")

    yarn = commands.add_parser(
        "yarn", parents=[own], help="read a yarn: yarn 2/24 worsted, yarn '34 tex S 600 x 2 Z 400'"
    )
    yarn.add_argument(
        "words", nargs="+", metavar="DESIGNATION", help="the yarn; in quotes where it has ; or ("
    )
    yarn.add_argument("--system", metavar="UNIT", help="its count system, where it says none")
    yarn.add_argument(
        "--order",
        choices=["ends/count", "count/ends", "resultant/ends", "count/count"],
        help="what the two figures of a short notation are",
    )
    yarn.add_argument("--working", metavar="NAME", help="show how a figure comes about")
    yarn.add_argument("--json", action="store_true", help="print JSON for other programs")

    settings = commands.add_parser(
        "settings", parents=[own], help="closest setts of a weave in its yarns, by every theory"
    )
    settings.add_argument("words", nargs="+", metavar="WEAVE", help="the weave, such as: 2/2 twill")
    settings.add_argument("--warp", required=True, metavar="COUNT", help="count of the warp")
    settings.add_argument("--weft", metavar="COUNT", help="count of the weft, where it is another")
    settings.add_argument("--factor", metavar="K", help="Ashenhurst's factor of the yarn")
    settings.add_argument(
        "--volume", metavar="V", help="specific volume of the yarn, such as '1.6 cm³/g'"
    )
    settings.add_argument("--ends", metavar="SETT", help="ends wanted: what share they are")
    settings.add_argument("--picks", metavar="SETT", help="picks wanted: what share they are")
    settings.add_argument("--in", dest="unit", metavar="UNIT", help="unit of the setts")
    settings.add_argument("--working", metavar="THEORY", help="show how a theory's ends come about")
    settings.add_argument("--json", action="store_true", help="print JSON for other programs")
    settings.add_argument("--sheet", metavar="F.xlsx", help="write all as a live workbook")

    weave = commands.add_parser(
        "weave", help="what there is to say of a weave: weave 2/2 twill, weave '3/2(4+2)'"
    )
    weave.add_argument(
        "words", nargs="+", metavar="WEAVE", help="its name, an ISO 9354 code, or its picks: 10 01"
    )
    weave.add_argument("--draft", action="store_true", help="show threading, tie-up, treadling too")
    weave.add_argument("--ends", type=_whole, help="with --draft: healds a shaft for so many ends")
    weave.add_argument("--picture", metavar="F.svg", help="draw it")
    weave.add_argument(
        "--kind", choices=["point paper", "draft", "face"], help="what --picture draws"
    )
    weave.add_argument("--warp", metavar="COLOURS", help="for a face, such as '4 black 4 white'")
    weave.add_argument("--weft", metavar="COLOURS", help="for a face, such as '4 black 4 white'")
    weave.add_argument("--json", action="store_true", help="print JSON for other programs")

    _cli_chart.add(commands)

    _cli_calc.add(commands, own)
    _cli_find.add(commands, own)
    return parser


def read(argv: Sequence[str]) -> argparse.Namespace:
    """Read the command line; inputs and words may stand before and after the options."""
    parser = _parser()
    # An ASCII locale hands over the bytes of a ½ one by one.
    args, more = parser.parse_known_args(
        [os.fsencode(a).decode("utf-8", "surrogateescape") for a in argv]
    )
    many = getattr(args, "inputs", getattr(args, "words", None))
    if more and (many is None or any(m.startswith("-") for m in more)):
        parser.error(f"unrecognized arguments: {' '.join(more)}")
    if many is not None:
        many.extend(more)
    return args
