"""The command line."""

from __future__ import annotations

import argparse
import json
import math
import os
import sys
import time
import warnings
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import hankwise as hw

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence


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

    formula = commands.add_parser(
        "formula", parents=[own], help="the answer of a formula with its working, or its card"
    )
    formula.add_argument("name", help="the formula")
    formula.add_argument(
        "inputs", nargs="*", default=[], metavar="input=value", help='such as count="16 YSW"'
    )
    formula.add_argument(
        "--in", dest="units", action="append", default=[], metavar="UNIT",
        help="the answer in this unit as well, such as --in worsted",
    )  # fmt: skip
    formula.add_argument("--json", action="store_true", help="print JSON for other programs")
    formula.add_argument("--latex", action="store_true", help="print the working as LaTeX")
    formula.add_argument("--sheet", metavar="F.xlsx", help="write the working as a live workbook")

    formulas = commands.add_parser("formulas", help="list the formulas, or those with a word")
    formulas.add_argument("words", nargs="*", default=[], metavar="WORD", help="words to look for")
    formulas.add_argument("--json", action="store_true", help="print JSON for other programs")

    handbook = commands.add_parser(
        "handbook", help="list the handbook's tables, show one, or look for words in all"
    )
    handbook.add_argument(
        "words", nargs="*", default=[], metavar="TABLE|WORD", help="a table, words to look for"
    )
    handbook.add_argument("--json", action="store_true", help="print JSON for other programs")

    counts = commands.add_parser(
        "counts", parents=[own], help="list the count systems, or those with a word"
    )
    counts.add_argument("words", nargs="*", default=[], metavar="WORD", help="words to look for")
    counts.add_argument("--json", action="store_true", help="print JSON for other programs")
    return parser


def _progress() -> Callable[[int, int], None] | None:
    """Tell on the terminal how far long draws are; say nothing of short ones."""
    if not sys.stderr.isatty():
        return None
    start = time.monotonic()

    def tell(done: int, total: int) -> None:
        if time.monotonic() - start > 0.5:
            end = "\r\033[K" if done >= total else ""
            print(f"\r{done:,} of {total:,} draws{end}", end="", file=sys.stderr, flush=True)

    return tell


def _goods(text: str) -> dict[str, int]:
    goods: dict[str, int] = {}
    for part in text.split(","):
        name, sign, count = part.partition("=")
        name, count = name.strip(), count.strip()
        if not (sign and name and count.isascii() and count.isdigit()):
            raise hw.NotationError(
                f"--needed {text}: '{part.strip()}' is not a good and a number; "
                "write hank=200,throw=12"
            )
        if name in goods:
            raise hw.NotationError(f"--needed {text}: '{name}' stands twice; write it once")
        if len(count) > 9:
            raise hw.RangeError(f"--needed {text}: {count} is more than any lot makes")
        goods[name] = int(count)
    return goods


def _plan(args: argparse.Namespace) -> None:
    if args.needed is not None and (args.working or args.sheet or args.figure):
        raise hw.NotationError(
            "--needed plans backward and prints its own working; --working, --sheet and --figure "
            "belong to the plan forward: run them without --needed"
        )
    plan = hw.plan.load(args.lot)
    if args.needed is not None:
        goods = _goods(args.needed) if args.needed else None
        needed = plan.needed(goods, args.confidence, args.draws, args.seed, progress=_progress())
        text = needed.to_json() if args.json else f"{needed}\n\n{needed.working}"
        print(text.rstrip("\n"))
        return
    result = plan.run(args.draws, args.seed, progress=_progress())
    # Files first: what is printed last is what was asked for.
    for path in args.figure:
        from hankwise._plot import save

        save(result, Path(path))
        print(f"figure: {path}", file=sys.stderr)
    if args.sheet is not None:
        result.to_sheet(args.sheet)
        print(f"workbook: {args.sheet}", file=sys.stderr)
    if args.working is not None:
        working = result.working(args.working)
        text = f"{args.working} = {working.answer}\n\n{working}".rstrip("\n")
        print(_as_json(working, figure=args.working) if args.json else text)
    elif args.json:
        print(result.to_json())
    else:
        print(result.text(all=args.all), end="")
        if not args.all:
            print("\nMore: --all, --working NAME (such as twister.twist), --needed")


def _as_json(working: hw.Working, **about: object) -> str:
    """Give a working for other programs."""
    parts = {
        "hankwise": hw.__version__,
        **about,
        "value": working.value,
        "unit": working.unit,
        "lines": working.lines,
        "sensitivities": working.sensitivities,
    }
    return json.dumps(parts, ensure_ascii=False, indent=1)


def _convert(args: argparse.Namespace) -> None:
    value, unit = _split(args.words)
    result = value.to(unit)
    number = float(result.number(unit))
    if not math.isfinite(number):
        raise hw.RangeError(f"{value} has no finite figure in {unit}")
    if args.json:
        print(
            json.dumps(
                {
                    "hankwise": hw.__version__,
                    "given": str(value),
                    "number": number,
                    "unit": result.unit,
                }
            )
        )
    else:
        # A share is said in percent; whoever asks for a fraction means the plain figure.
        print(f"{value} = {number:.10g}" if result.unit == "fraction" else f"{value} = {result}")


def _yarn(args: argparse.Namespace) -> None:
    yarn = hw.yarn.parse(" ".join(args.words), system=args.system, order=args.order)
    if args.working:
        print(yarn.working(args.working))
    elif args.json:
        print(json.dumps({"hankwise": hw.__version__, **_described(yarn)}, ensure_ascii=False))
    else:
        print(yarn.report().rstrip())


def _described(yarn: hw.Yarn) -> dict[str, object]:
    """Say what a yarn is, down to its singles."""
    ends = [] if yarn.singles == 1 else [_described(end) for end in yarn.ends]
    resultant = None
    with suppress(hw.HankwiseError):
        resultant = yarn.number("tex")
    return {
        "designation": str(yarn),
        "what": yarn.what,
        "singles": yarn.singles,
        "tex": resultant,
        "measured": yarn.is_measured,
        "turns_per_metre": yarn.twist.number("turns/m") if yarn.twist is not None else None,
        "direction": yarn.direction,
        "filaments": yarn.filaments,
        "ends": ends,
    }


def _split(words: Sequence[str]) -> tuple[hw.Quantity, str]:
    """Find where the quantity ends and the unit begins: units may have spaces in them."""
    # `convert 16 Nm to YSW` is what people say.
    words = [w for i, w in enumerate(words) if w != "to" or i == 0]
    text = " ".join(words)
    first: hw.HankwiseError | None = None
    for cut in range(len(words) - 1, 0, -1):
        try:
            value = hw.q(" ".join(words[:cut]))
            value.to(" ".join(words[cut:]))
        except hw.HankwiseError as error:
            first = first or error
        else:
            return value, " ".join(words[cut:])
    try:
        value = hw.q(text)
    except hw.HankwiseError as error:
        raise first or error from None
    raise hw.NotationError(
        f"'{text}' names no unit to convert to; write it last: hankwise convert {value} UNIT"
    )


def _inputs(formula: hw.Formula, texts: Sequence[str]) -> dict[str, object]:
    many = {i["name"] for i in formula.inputs if i["many"]}
    given: dict[str, object] = {}
    for text in texts:
        name, sign, value = text.partition("=")
        if not sign:
            raise hw.NotationError(
                f"'{text}' is not an input; write it like {formula.inputs[0]['name']}=\"…\""
            )
        if name in given:
            raise hw.NotationError(f"{formula.name}: '{name}' was given twice; write it once")
        given[name] = [part.strip() for part in value.split(",")] if name in many else value
    return given


def _formula(args: argparse.Namespace) -> None:
    formula = hw.formulas[args.name]
    if not args.inputs and (args.sheet is not None or args.latex or args.units):
        example = formula.inputs[0]["name"]
        raise hw.NotationError(
            f"{formula.name}: a working needs the inputs; write them too, such as {example}=…"
        )
    if not args.inputs:
        if args.json:
            keys = (
                "name",
                "room",
                "summary",
                "details",
                "equation",
                "inputs",
                "output",
                "limits",
                "slips",
                "sources",
            )
            print(
                json.dumps(
                    {key: getattr(formula, key) for key in keys}, ensure_ascii=False, indent=1
                )
            )
        else:
            print(f"{formula.name} ({formula.room})\n{formula}", end="")
        return
    inputs = _inputs(formula, args.inputs)
    working = formula.working(**inputs)
    with warnings.catch_warnings():
        # The working has given them.
        warnings.simplefilter("ignore", hw.RangeWarning)
        also = {unit: formula(**inputs).to(unit) for unit in args.units}
    if args.sheet is not None:
        working.to_sheet(args.sheet)
        print(f"workbook: {args.sheet}", file=sys.stderr)
    if args.json:
        numbers = {unit: float(answer.number(unit)) for unit, answer in also.items()}
        more = {"also": numbers} if numbers else {}
        print(_as_json(working, formula=formula.name, **more))
    elif args.latex:
        print(working.latex(), end="")
    else:
        print(" = ".join([formula.name, working.answer, *map(str, also.values())]) + "\n")
        print(working, end="")
        for line in working.sensitivities:
            unit = f" {line['unit']}" if line["unit"] else ""
            print(
                f"    1 % more of {line['input']} ({line['value']:g}{unit}): "
                f"{line['elasticity']:+.3g} %"
            )


def _formulas(args: argparse.Namespace) -> None:
    found = hw.formulas.search(" ".join(args.words))
    if args.json:
        print(
            json.dumps(
                [{"name": f.name, "room": f.room, "summary": f.summary} for f in found.values()]
            )
        )
    else:
        print(found)


def _handbook(args: argparse.Namespace) -> None:
    name, words = "".join(args.words[:1]), " ".join(args.words)
    if name in hw.handbook:
        found = [hw.handbook[name].find(" ".join(args.words[1:]))]
    else:
        found = list(hw.handbook.search(words).values())
    if args.json:
        parts = [
            {"name": t.name, "title": t.title, "about": t.about, "figures": t.records()}
            for t in found
        ]
        print(json.dumps(parts, ensure_ascii=False, indent=1))
    elif not found and len(args.words) == 1:
        # A word that no figure has may be the name of a table misspelt.
        print(hw.handbook[name])
    elif words:
        print("\n\n".join(map(repr, found)) or repr(hw.handbook.search(words)))
    else:
        print(hw.handbook)


def _counts(args: argparse.Namespace) -> None:
    found = hw.counts.search(" ".join(args.words))
    print(json.dumps(list(found.values()), ensure_ascii=False) if args.json else found)


def _read(argv: Sequence[str]) -> argparse.Namespace:
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


def main(argv: Sequence[str] | None = None) -> int:
    """Run a command; gives 0, or 1 where something given was wrong, or 130 where it was stopped."""
    # The trade's signs (½, √, ×) on a terminal of any encoding.
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    warnings.showwarning = lambda message, *_args, **_more: print(
        f"note: {message}", file=sys.stderr
    )
    args = _read(sys.argv[1:] if argv is None else argv)
    command = {
        "plan": _plan,
        "convert": _convert,
        "yarn": _yarn,
        "formula": _formula,
        "formulas": _formulas,
        "handbook": _handbook,
        "counts": _counts,
    }
    try:
        for path in getattr(args, "own", []):
            hw.load_counts(path)
        command[args.command](args)
        if sys.stdout is not None:
            sys.stdout.flush()
    except BrokenPipeError:
        # Whoever read has enough, as in `hankwise plan … | head`; nothing is left to flush.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except (hw.HankwiseError, TypeError, UnicodeError, OSError) as error:
        print(f"hankwise: {error}", file=sys.stderr)
        return 1
    except KeyError as error:
        print(f"hankwise: {error.args[0]}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print("\nhankwise: stopped", file=sys.stderr)
        return 130
    return 0


if __name__ == "__main__":
    sys.exit(main())
