"""The tables and the Python of a page of the documentation, to be run."""

import contextlib
import doctest
import io
import re
from itertools import pairwise

import hankwise as hw
from conftest import ROOT


class Page:
    """A page of docs/: its tables by their columns, and what its Python has made."""

    def __init__(self, name: str) -> None:
        self.text = (ROOT / "docs" / name).read_text(encoding="utf-8")
        self.tables: dict[tuple[str, ...], list[list[str]]] = {}
        # What is asked, what is answered, and in which line: of every table that has answers.
        self.asked: list[tuple[str, str, int]] = []
        head: tuple[str, ...] | None = None
        fence = False
        for number, line in enumerate(self.text.splitlines()):
            fence ^= line.startswith("```")
            if fence or not line.startswith("|"):
                head = None
            elif head is None:
                head = tuple(cells(line))
            elif set(line) - set("|-"):
                row = cells(line)
                assert len(row) == len(head), line
                self.tables.setdefault(head, []).append(row)
                if "answer" in head:
                    ask = row[next(i for i, name in enumerate(head) if name.startswith("ask"))]
                    self.asked.append((plain(ask), plain(row[head.index("answer")]), number))

    def fenced(self, kind: str) -> list[str]:
        return re.findall(rf"^```{kind}\n(.*?)^```", self.text, re.MULTILINE | re.DOTALL)

    def commands(self) -> list[tuple[str, str]]:
        """Each command of the page, and what it prints."""
        found = []
        for block in self.fenced("console"):
            parts = re.split(r"^\$ hankwise (.*)\n", block, flags=re.MULTILINE)
            assert parts[0] == ""
            found += list(pairwise(parts[1:]))[::2]
        return found

    def names_above(self, line: int) -> dict[str, object]:
        """What the Python above a line of the page has made."""
        names: dict[str, object] = {"hw": hw}
        above = "\n".join(self.text.splitlines()[:line])
        for block in re.findall(r"^```python\n(.*?)^```", above, re.MULTILINE | re.DOTALL):
            for example in doctest.DocTestParser().get_examples(block):
                with contextlib.redirect_stdout(io.StringIO()):
                    exec(compile(example.source, "page", "single"), names)
        return names


def cells(line: str) -> list[str]:
    return [cell.strip() for cell in line.strip("|").split(" | ")]


def plain(cell: str) -> str:
    assert cell[0] == cell[-1] == "`", cell
    return cell[1:-1]
