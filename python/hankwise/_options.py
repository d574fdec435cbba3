"""Commands, options and words of the command line."""

from __future__ import annotations

import argparse
import os
from typing import TYPE_CHECKING, NoReturn

import hankwise as hw
from hankwise import _cli_calc, _cli_chart, _cli_find, _cli_new

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
        description="Plan a fleece lot from greasy wool to finished goods; convert, look up and "
        "check yarn and cloth numbers.",
        epilog="Examples:\n"
        "  hankwise new lot greasy=35kg goods=throw:5\n"
        "  hankwise plan examples/first-lot.toml\n"
        "  hankwise convert 16 Nm YSW\n"
        "  hankwise find turns per inch\n\n"
        "Write quantities with their units: '9 tpi', '22½ YSW', '8 %', '1 lb 12 oz'.",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--version", action="version", version=f"hankwise {hw.__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")
    own = _Parser(add_help=False)
    own.add_argument(
        "--counts",
        dest="own",
        metavar="FILE",
        action="append",
        default=[],
        help="a file with your own count systems",
    )
    written = _Parser(add_help=False)
    written.add_argument(
        "--force", action="store_true", help="replace files of another kind than is written"
    )

    plan = commands.add_parser(
        "plan", parents=[own, written], help="what a lot makes, what to set, how sure it is"
    )
    plan.add_argument(
        "words",
        nargs="*",
        default=[],
        metavar="LOT.toml",
        help="the lot file; or words in place of one, such as greasy=45kg breed=Romney "
        "goods=throw, for a sentence to read aloud",
    )
    plan.add_argument(
        "--all",
        action="store_true",
        help="also show every setting, the mass balance and the cautions",
    )
    plan.add_argument(
        "--working",
        metavar="NAME",
        help="show the calculation behind one value, e.g. twister.twist",
    )
    plan.add_argument(
        "--needed",
        metavar="GOODS",
        nargs="?",
        const="",
        help="how much greasy wool to take in for the promise, or for GOODS such as "
        "hank=200,throw=12",
    )
    plan.add_argument(
        "--confidence",
        type=_share,
        metavar="SHARE",
        help="with --needed: how sure to be (default 95 %%)",
    )
    plan.add_argument(
        "--quote",
        action="store_true",
        help="what the lot is charged by the mill's [tariff], what it costs by its [cost]",
    )
    plan.add_argument(
        "--margin",
        type=_share,
        metavar="SHARE",
        help="with --quote: the price that leaves this margin, such as '30 %%'",
    )
    plan.add_argument(
        "--price",
        type=float,
        metavar="MONEY",
        help="with --quote: the margin that this price for the lot leaves",
    )
    plan.add_argument(
        "--lots",
        type=_whole,
        default=100_000,
        metavar="N",
        help="number of simulated lots (default 100,000; 0 = none)",
    )
    plan.add_argument(
        "--seed",
        type=_whole,
        metavar="N",
        help="seed of the simulated lots (default 1)",
    )
    plan.add_argument("--json", action="store_true", help="print JSON for other programs")
    plan.add_argument(
        "--workbook", metavar="FILE.xlsx", help="write an Excel workbook with live formulas"
    )
    plan.add_argument(
        "--picture",
        metavar="FILE",
        action="append",
        default=[],
        help="draw the plan (.svg, .png, .pdf)",
    )

    papers = commands.add_parser(
        "papers", parents=[own, written], help="pages to print: of a lot, or of the mill"
    )
    papers.add_argument(
        "lot", metavar="FILE.toml", help="the lot file; with --tables the mill file"
    )
    for name, what in (
        ("quote", "the quotation: the safe promise and its conditions"),
        ("grower", "the growers' sheets: wool in, goods out, where the rest went"),
        ("mill", "the mill's sheet: every stage, the divisions, where the values come from"),
        ("floor", "the floor sheets: a page for each machine"),
        ("tables", "tables to hang by the machines: wheels, check weights, hopper weighs"),
    ):
        papers.add_argument(f"--{name}", action="store_true", help=what)
    papers.add_argument(
        "--out", metavar="FOLDER", help="where the pages go (default: beside the file)"
    )
    papers.add_argument(
        "--lots",
        type=_whole,
        default=100_000,
        metavar="N",
        help="number of simulated lots (default 100,000; 0 = none)",
    )
    papers.add_argument(
        "--seed", type=_whole, metavar="N", help="seed of the simulated lots (default 1)"
    )

    convert = commands.add_parser(
        "convert", parents=[own], help="a quantity in another unit: convert 16 Nm YSW"
    )
    convert.add_argument("words", nargs="+", metavar="QUANTITY UNIT", help="such as: 16 Nm YSW")
    convert.add_argument("--json", action="store_true", help="print JSON for other programs")

    yarn = commands.add_parser(
        "yarn", parents=[own], help="read a yarn: yarn 2/17 worsted, yarn '125 tex Z 210 x 2 S 120'"
    )
    yarn.add_argument(
        "words",
        nargs="+",
        metavar="DESIGNATION",
        help="the yarn, e.g. 2/17 worsted (quote it if it contains ; or parentheses)",
    )
    yarn.add_argument(
        "--system", metavar="UNIT", help="count system to assume if the yarn names none"
    )
    yarn.add_argument(
        "--order",
        choices=["ends/count", "count/ends", "resultant/ends", "count/count"],
        help="how to read a short form such as 2/17",
    )
    yarn.add_argument("--working", metavar="NAME", help="show the calculation behind one value")
    yarn.add_argument("--json", action="store_true", help="print JSON for other programs")

    setts = commands.add_parser(
        "setts", parents=[own, written], help="maximum sett of a weave, by each published theory"
    )
    setts.add_argument("words", nargs="+", metavar="WEAVE", help="the weave, such as: 2/2 twill")
    setts.add_argument("--warp-count", required=True, metavar="COUNT", help="count of the warp")
    setts.add_argument(
        "--weft-count", metavar="COUNT", help="weft count, if different from the warp"
    )
    setts.add_argument("--yarn-factor", metavar="K", help="Ashenhurst's factor of the yarn")
    setts.add_argument(
        "--specific-volume", metavar="V", help="specific volume of the yarn, such as '1.6 cm³/g'"
    )
    setts.add_argument(
        "--wanted-warp-sett",
        metavar="SETT",
        help="your ends per cm; shown as a share of each maximum",
    )
    setts.add_argument(
        "--wanted-weft-sett",
        metavar="SETT",
        help="your picks per cm; shown as a share of each maximum",
    )
    setts.add_argument(
        "--working",
        metavar="NAME",
        help="show the calculation behind one result, such as brierley.warp_sett",
    )
    setts.add_argument("--json", action="store_true", help="print JSON for other programs")
    setts.add_argument(
        "--workbook", metavar="FILE.xlsx", help="write an Excel workbook with live formulas"
    )

    weave = commands.add_parser(
        "weave", parents=[written], help="analyse a weave: floats, firmness, threading; draw it"
    )
    weave.add_argument(
        "words", nargs="+", metavar="WEAVE", help="its name, an ISO 9354 code, or its picks: 10 01"
    )
    weave.add_argument("--draft", action="store_true", help="also show drawing-in and lifting plan")
    weave.add_argument(
        "--treadles",
        action="store_true",
        help="with --draft or --kind draft: for a treadle loom, threading, tie-up and treadling",
    )
    weave.add_argument(
        "--ends",
        type=_whole,
        metavar="N",
        help="with --draft: healds needed on each shaft for N ends",
    )
    weave.add_argument("--picture", metavar="FILE.svg", help="draw it")
    weave.add_argument(
        "--kind", choices=["point paper", "draft", "face"], help="what --picture draws"
    )
    for name in ("warp", "weft"):
        say = weave.add_argument
        say(f"--{name}", metavar="COLOURS", help="for a face, such as '4 black 4 white'")
        say(f"--{name}-sett", metavar="SETT", help="for a face, its scale, such as '9 ends/cm'")
        say(f"--{name}-count", metavar="COUNT", help="for a face, the thickness, such as '120 tex'")
        say(f"--{name}-diameter", metavar="D", help="the thickness itself, such as '0.45 mm'")
    weave.add_argument(
        "--specific-volume",
        metavar="V",
        help="with a count, for yarn that is not wool: '0.9 cm³/g'",
    )
    weave.add_argument("--inches", action="store_true", help="for a face, a scale in inches too")
    weave.add_argument("--json", action="store_true", help="print JSON for other programs")

    _cli_chart.add(commands, written)

    _cli_calc.add(commands, own, written)
    _cli_find.add(commands, own)
    _cli_new.add(commands)
    return parser


def _lot(parser: argparse.ArgumentParser, args: argparse.Namespace) -> None:
    """Tell a lot file from words in place of one."""
    first, *others = args.words or parser.error("the following arguments are required: LOT.toml")
    args.lot = None if _cli_new.is_word(first) else first
    if args.lot is not None and others:
        parser.error(f"unrecognized arguments: {' '.join(others)}")


def read(argv: Sequence[str]) -> argparse.Namespace:
    """Read the command line; inputs and words may be before and after the options."""
    parser = _parser()
    # An ASCII locale hands over the bytes of a ½ one by one.
    args, more = parser.parse_known_args(
        [os.fsencode(a).decode("utf-8", "surrogateescape") for a in argv]
    )
    many = getattr(args, "inputs", getattr(args, "words", None))
    if args.command is None and not more:
        print(_cli_new.FIRST, end="")
        parser.exit()
    if more and (many is None or any(m.startswith("-") for m in more)):
        parser.error(f"unrecognized arguments: {' '.join(more)}")
    if many is not None:
        many.extend(more)
    if args.command == "plan":
        _lot(parser, args)
    return args
