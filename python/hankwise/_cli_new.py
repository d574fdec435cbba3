"""The command `new`, and plans of a few words."""

from __future__ import annotations

import argparse
import re
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import hankwise as hw
from hankwise._hankwise import _questions, _write_toml

if TYPE_CHECKING:
    from collections.abc import Sequence

FIRST = """\
hankwise plan greasy=45kg breed=Romney goods=throw   # a safe promise at once, without a file
hankwise new lot --out lot.toml                      # eight questions; then: hankwise plan lot.toml
hankwise find turns per inch                         # search everything; the rest: hankwise --help
"""


def add(commands: Any) -> None:
    """Add the command."""
    new = commands.add_parser(
        "new",
        help="a lot file or a mill file to begin with: new lot greasy=35kg goods=throw:5",
        formatter_class=argparse.RawDescriptionHelpFormatter,
        description="Print a commented lot file or mill file, from words such as greasy=35kg,\n"
        "or, in a terminal, from answers. What you do not know is the handbook's,\n"
        "and says so.",
        epilog="\n".join(
            f"{kind}:\n" + "\n".join(f"  {_example(q):<40} {q['ask']}" for q in _questions(kind))
            for kind in ("lot", "mill")
        ),
    )
    new.add_argument("kind", choices=["lot", "mill"], help="which file")
    new.add_argument("words", nargs="*", default=[], metavar="WORD=VALUE", help="what you know")
    new.add_argument("--out", metavar="FILE.toml", help="write it to a file")
    new.add_argument("--force", action="store_true", help="replace a file that is there")


def _example(question: dict[str, str]) -> str:
    word, like = question["word"], question["like"]
    return f'{word}="{like}"' if " " in like else f"{word}={like}"


def is_word(text: str) -> bool:
    """Tell whether something is a word with its value, not a file."""
    return re.match(r"[a-z_]+=", text) is not None and not Path(text).exists()


def given(words: Sequence[str]) -> dict[str, str]:
    """Read words such as greasy=35kg."""
    all_given: dict[str, str] = {}
    for text in words:
        word, sign, value = text.partition("=")
        if not sign:
            raise hw.NotationError(f"'{text}' has no value; write it like greasy=35kg")
        if word in all_given:
            raise hw.NotationError(f"'{word}' appears twice; write it once")
        if word == "mill":
            raise hw.NotationError("mill: the mill.toml of this folder is used, where there is one")
        all_given[word] = value
    return all_given


def _mill(folder: Path) -> str:
    """Name the mill file of a folder, or the mill of the handbook."""
    return "mill.toml" if (folder / "mill.toml").is_file() else "handbook"


def plan(words: Sequence[str]) -> hw.Plan:
    """Plan a lot of a few words."""
    return hw.plan.loads(hw.plan.new_lot(_mill(Path()), **given(words)), "new lot")


def _text(kind: str, words: dict[str, str], out: str | None) -> str:
    if kind == "mill":
        return hw.plan.new_mill(**words)
    return hw.plan.new_lot(_mill(Path(out).parent if out else Path()), **words)


def _asked(kind: str, out: str | None) -> dict[str, str]:
    """Ask in the terminal; Enter is: not known."""
    words: dict[str, str] = {}
    print(
        "Enter alone means: not known. Nothing is written before the last answer.", file=sys.stderr
    )
    for question in _questions(kind):
        while True:
            ask = f"{question['ask']} (such as {question['like']}; else {question['otherwise']})? "
            print(ask, end="", file=sys.stderr, flush=True)
            answer = sys.stdin.readline()
            if not answer.strip():
                break
            tried = words | {question["word"]: answer.strip()}
            try:
                _text(kind, tried, out)
            except hw.HankwiseError as error:
                print(error, file=sys.stderr)
            else:
                words = tried
                break
        if not answer:
            print(file=sys.stderr)
            break
    return words


def run(args: argparse.Namespace) -> None:
    """Print a new file, or write it."""
    ask = not args.words and sys.stdin is not None and sys.stdin.isatty()
    words = _asked(args.kind, args.out) if ask else given(args.words)
    text = _text(args.kind, words, args.out)
    if args.out is None:
        print(text, end="")
        return
    _write_toml(args.out, text, args.force)
    then = f"hankwise plan {args.out}" if args.kind == "lot" else "hankwise new lot --out lot.toml"
    print(f"{args.kind}: {args.out}; next: {then}", file=sys.stderr)
