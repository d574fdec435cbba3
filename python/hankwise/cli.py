"""The command line."""

from __future__ import annotations

import argparse
import os
import re
import sys
import time
import warnings
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

import hankwise as hw
from hankwise import (
    _cli_calc,
    _cli_chart,
    _cli_files,
    _cli_find,
    _cli_new,
    _cli_output,
    _cli_papers,
)
from hankwise._cli_calc import as_json
from hankwise._json import dumps
from hankwise._options import read
from hankwise._stop import say_stopped

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from typing import Any, Literal


def _progress() -> Callable[[int, int], None] | None:
    """Show on the terminal how far a long simulation is; say nothing of a short one."""
    if not sys.stderr.isatty():
        return None
    start = time.monotonic()

    def tell(done: int, total: int) -> None:
        if time.monotonic() - start > 0.5:
            end = "\r\033[K" if done >= total else ""
            print(
                f"\r{done:,} of {total:,} simulated lots{end}", end="", file=sys.stderr, flush=True
            )

    return tell


def _goods(text: str) -> dict[str, int]:
    goods: dict[str, int] = {}
    for part in text.split(","):
        name, sign, count = part.partition("=")
        name, count = name.strip(), count.strip()
        if not (sign and name and count.isascii() and count.isdigit()):
            raise hw.NotationError(
                f"--needed {text}: '{part.strip()}' must be goods and a whole number from 0 up, "
                "such as hank=200,throw=12"
            )
        if name in goods:
            raise hw.NotationError(f"--needed {text}: '{name}' appears twice; write it once")
        if len(count) > 9:
            raise hw.RangeError(f"--needed {text}: {count} is more than any lot makes")
        goods[name] = int(count)
    return goods


def _plan(args: argparse.Namespace) -> None:
    others = args.working or args.workbook or args.picture
    if args.needed is not None and others:
        raise hw.NotationError(
            "--needed plans backward and prints its own working; run --working, --workbook "
            "and --picture without --needed"
        )
    if args.confidence is not None and args.needed is None:
        raise hw.NotationError("--confidence says how sure --needed is to be; write --needed too")
    for option, given in (("--margin", args.margin), ("--price", args.price)):
        if given is not None and not args.quote:
            raise hw.NotationError(f"{option} asks about the price of the lot; write --quote too")
    if args.quote and (others or args.needed is not None):
        raise hw.NotationError(
            "--quote prints the quotation alone; run --needed, --working, --workbook, --lot-sheet "
            "and --picture without --quote"
        )
    shown = (
        ("--needed", args.needed),
        ("--working", args.working),
        ("--quote", args.quote or None),
    )
    for option, given in shown:
        if args.all and given is not None:
            raise hw.NotationError(f"--all shows the whole plan; write it without {option}")
    if args.all and args.json:
        raise hw.NotationError("--json has all there is; omit --all")
    if args.seed is not None and args.lots == 0:
        raise hw.NotationError("--seed draws lots, and --lots 0 draws none; omit one of the two")
    seed = 1 if args.seed is None else args.seed
    plan = _cli_new.plan(args.words) if args.lot is None else hw.plan.load(args.lot)
    if args.needed is not None:
        goods = _goods(args.needed) if args.needed else None
        sure = 0.95 if args.confidence is None else args.confidence
        needed = plan.needed(goods, sure, args.lots, seed, progress=_progress())
        text = needed.to_json() if args.json else f"{needed}\n\n{needed.working}"
        print(text.rstrip("\n"))
        return
    result = plan.run(args.lots, seed, progress=_progress())
    if args.quote:
        quote = result.quote(margin=args.margin, price=args.price)
        print(quote.to_json() if args.json else quote)
        return
    # Files first: what is printed last is what was asked for.
    for path in args.picture:
        from hankwise._plot import save

        save(result, Path(path), args.force)
        print(f"picture: {path}", file=sys.stderr)
    if args.workbook is not None:
        result.to_workbook(args.workbook, force=args.force)
        print(f"workbook: {args.workbook}", file=sys.stderr)
    if args.working is not None:
        working = result.working(args.working)
        text = f"{args.working} = {working.answer}\n\n{working}".rstrip("\n")
        print(as_json(working, result=args.working) if args.json else text)
    elif args.json:
        print(result.to_json())
    elif args.lot is None and not args.all:
        print(result.spoken())
    else:
        print(result.text(all=args.all), end="")
        if not args.all:
            print(
                "\nMore: --all, --working NAME (such as twister.twist), --needed, --quote; "
                "hankwise papers"
            )


def _convert(args: argparse.Namespace) -> None:
    value, unit, given = _split(args.words)
    result = value.to(unit)
    number = float(result.number(unit))
    if args.json:
        print(
            dumps(
                {
                    "hankwise": hw.__version__,
                    "given": given,
                    "number": number,
                    "unit": result.unit,
                }
            )
        )
    else:
        # A share is shown in percent; whoever asks for a fraction means the plain number.
        print(f"{given} = {number:.10g}" if result.unit == "fraction" else f"{given} = {result}")


def _yarn(args: argparse.Namespace) -> None:
    yarn = hw.yarn.parse(" ".join(args.words), system=args.system, order=args.order)
    if args.working:
        print(yarn.working(args.working))
    elif args.json:
        print(dumps({"hankwise": hw.__version__, **_described(yarn)}))
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


def _setts(args: argparse.Namespace) -> None:
    names = ("weft_count", "yarn_factor", "specific_volume", "wanted_warp_sett", "wanted_weft_sett")
    given = {name: getattr(args, name) for name in names}
    found = hw.cloth.setts(weave=" ".join(args.words), warp_count=args.warp_count, **given)
    if args.workbook is not None:
        found.to_workbook(args.workbook, force=args.force)
        print(f"workbook: {args.workbook}", file=sys.stderr)
    if args.working:
        print(found.working(args.working))
    elif args.json:
        print(found.to_json())
    else:
        print(found)


# What only the face of a cloth is drawn from.
_FACE = (
    *("warp", "weft", "warp_sett", "weft_sett", "warp_count", "weft_count"),
    *("warp_diameter", "weft_diameter", "specific_volume", "inches"),
)


def _weave(args: argparse.Namespace) -> None:
    if args.ends is not None and not args.draft:
        raise hw.NotationError("--ends counts the healds of a draft; write --draft with it")
    face: dict[str, Any] = {name: getattr(args, name) for name in _FACE if getattr(args, name)}
    options = ", ".join("--" + name.replace("_", "-") for name in face)
    if args.picture is None and (args.kind or face):
        raise hw.NotationError(
            f"{options or '--kind'}: this says how to draw a picture; "
            "write --picture FILE.svg with it"
        )
    if face and args.kind not in {None, "face"}:
        raise hw.NotationError(
            f"{options}: this belongs to the face of the cloth; write --kind face, or omit it"
        )
    if args.treadles and not args.draft and args.kind != "draft":
        raise hw.NotationError("--treadles belongs to a draft; write --draft or --kind draft too")
    weave = hw.cloth.weave(" ".join(args.words))
    if args.picture is not None:
        # What only a face has says that a face is meant.
        kind: Literal["point paper", "draft", "face"] = args.kind or (
            "face" if face else "point paper"
        )
        treadles = args.treadles and kind == "draft"
        picture = weave.picture(kind, treadles=treadles, **face)
        picture.save(args.picture, force=args.force)
        print(f"picture: {args.picture}", file=sys.stderr)
    draft = weave.draft() if args.draft else None
    if not args.json:
        print(weave.report().rstrip())
        if draft is not None:
            print(f"\n{draft.report(args.ends, treadles=args.treadles)}".rstrip())
        return
    keys = (
        "name",
        "repeat",
        "rows",
        "interlacings",
        "average_float",
        "longest_float",
        "ashenhurst_ratio",
        "warp_up",
        "balance",
        "interlacement_ratio",
        "crossing_firmness",
        "floating_factor",
    )
    parts: dict[str, object] = {"hankwise": hw.__version__}
    parts |= {key: getattr(weave, key) for key in keys}
    if draft is not None:
        parts["draft"] = {
            "threading": draft.threading,
            "lifts": draft.lifts,
            "tie_up": draft.tie_up,
            "treadling": draft.treadling,
        }
        if args.ends is not None:
            parts["healds"] = draft.ends_on_shafts(args.ends)
    print(dumps(parts))


def _read(text: str) -> tuple[hw.Quantity, str]:
    """Read a quantity, or a yarn for its count, and say what it is."""
    try:
        value = hw.q(text)
    except hw.HankwiseError:
        with suppress(hw.HankwiseError):
            yarn = hw.yarn.parse(text)
            counted = yarn.singles == 1 or yarn.is_measured
            return yarn.resultant, f"{yarn}{'' if counted else ', contraction not counted,'}"
        raise
    return value, str(value)


def _split(words: Sequence[str]) -> tuple[hw.Quantity, str, str]:
    """Find where the quantity ends and the unit begins: units may have spaces in them."""
    # `convert 16 Nm to YSW` is what people say.
    words = [w for i, w in enumerate(words) if w != "to" or i == 0]
    text = " ".join(words)
    first: hw.HankwiseError | None = None
    for cut in range(len(words) - 1, 0, -1):
        try:
            value, given = _read(" ".join(words[:cut]))
            value.to(" ".join(words[cut:]))
        except hw.HankwiseError as error:
            first = first or error
        else:
            return value, " ".join(words[cut:]), given
    try:
        value = hw.q(text)
    except hw.HankwiseError as error:
        raise first or error from None
    raise hw.NotationError(
        f"'{text}' names no unit to convert to; write it last: hankwise convert {value} UNIT"
    )


# What Python offers, and the command that does the same.
_COMMANDS = (
    (re.compile(r"hankwise\.yarn\.parse\('(.+?)'\)"), r"hankwise yarn '\1'"),
    (re.compile(r"write force=True"), "add --force"),
    (
        re.compile(r"give them in a direct unit, such as hankwise\.q\(.+?\)\.to\('tex'\)"),
        "convert each to a direct unit, and write that: --unit tex",
    ),
    (
        re.compile(r"give the numbers alone, such as \[.+?\] for hankwise\.q\(.+?\)"),
        "omit --unit",
    ),
    (re.compile(r"weight_band\('(.+?)'\) gives"), r"hankwise find '\1' gives"),
)


def _said(error: BaseException) -> str:
    """Give a message in the words of the command line."""
    message = str(error.args[0]) if isinstance(error, KeyError) else str(error)
    if isinstance(error, UnicodeEncodeError):
        # Such bytes come from a command line that is not UTF-8.
        return f"{error.object[error.start]!a} is not a character of a text; write in UTF-8"
    for python, command in _COMMANDS:
        message = python.sub(command, message)
    return message


def main(argv: Sequence[str] | None = None) -> int:
    """Run a command; gives 0, or 1 where something given was wrong, or 130 where it was stopped."""
    _cli_output.settle()
    warnings.showwarning = lambda message, *_args, **_more: print(
        f"note: {message}", file=sys.stderr
    )
    args = read(sys.argv[1:] if argv is None else argv)
    if getattr(args, "json", False):
        _cli_output.settle(json=True)
    command = {
        "plan": _plan,
        "papers": lambda args: _cli_papers.run(args, _progress()),
        "convert": _convert,
        "yarn": _yarn,
        "setts": _setts,
        "weave": _weave,
        "chart": _cli_chart.run,
        "calc": _cli_calc.run,
        "find": _cli_find.run,
        "new": _cli_new.run,
    }
    try:
        _cli_files.check(args)
        for path in getattr(args, "own", []):
            hw.load_counts(path)
        command[args.command](args)
        if sys.stdout is not None:
            sys.stdout.flush()
    except BrokenPipeError:
        # Whoever read has enough, as in `hankwise plan … | head`; nothing is left to flush.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except (hw.HankwiseError, TypeError, UnicodeError, OSError, OverflowError, KeyError) as error:
        print(f"hankwise: {_said(error)}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return say_stopped()
    return 0


if __name__ == "__main__":
    sys.exit(main())
