"""The count systems: every one that is known, by name."""

from __future__ import annotations

from collections.abc import Mapping

from hankwise._hankwise import UnitError, _count, _count_symbols

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

_COLUMNS = ("symbol", "other names", "definition", "tex at 1", "country", "date", "source", "grade")


class Counts(Mapping[str, "dict[str, Any]"]):
    """The count systems by name, those of one's own last; shows itself as a table.

    >>> import hankwise as hw
    >>> hw.counts["gala"]["definition"]
    '300 yd per 24 oz'
    >>> print(hw.counts.search("scotland 1917"))
    symbol          other names                 definition        tex at 1    country   date  \
source       grade
    galashiels-cut  gala, gala-cut, scotch-cut  300 yd per 24 oz  2480.27324  Scotland  1917  \
Blanco 1917  published
    """

    def __init__(self, symbols: list[str] | None = None) -> None:
        """Hold some of the systems; without a list all, also those yet to be defined."""
        self._some = symbols

    def _symbols(self) -> list[str]:
        return _count_symbols() if self._some is None else self._some

    def __getitem__(self, name: str) -> dict[str, Any]:
        """Give the row of a system, by any of its names."""
        try:
            row = _count(name)
        except UnitError as error:
            raise KeyError(str(error)) from None
        if row["symbol"] not in self._symbols():
            raise KeyError(f"'{name}' is not among these {len(self)}; see hankwise.counts")
        return row

    def __iter__(self) -> Iterator[str]:
        """Go through the symbols."""
        return iter(self._symbols())

    def __len__(self) -> int:
        """Count the systems."""
        return len(self._symbols())

    def search(self, words: str) -> Counts:
        """Give the systems that have all the words in their row."""
        wanted = words.lower().split()
        rows = ((symbol, " ".join(_cells(row)).lower()) for symbol, row in self.items())
        return Counts([symbol for symbol, text in rows if all(word in text for word in wanted)])

    def __repr__(self) -> str:
        """Show the systems as a table."""
        if not len(self):
            return "no count system has these words"
        rows = [_COLUMNS, *map(_cells, self.values())]
        widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
        lines = (zip(row, widths, strict=True) for row in rows)
        return "\n".join("  ".join(f"{c:{w}}" for c, w in line).rstrip() for line in lines)

    def _repr_html_(self) -> str:
        from html import escape

        def row(cells: tuple[str, ...], tag: str) -> str:
            return "<tr>" + "".join(f"<{tag}>{escape(c)}</{tag}>" for c in cells) + "</tr>"

        body = "".join(row(_cells(one), "td") for one in self.values())
        return f"<table><thead>{row(_COLUMNS, 'th')}</thead><tbody>{body}</tbody></table>"


def _cells(row: dict[str, Any]) -> tuple[str, ...]:
    """Write a row as it is shown."""
    names = ", ".join(row["names"])
    texts = (row[key] for key in ("country", "date", "source", "grade"))
    return row["symbol"], names, row["definition"], f"{row['tex']:.9g}", *texts


counts = Counts()
