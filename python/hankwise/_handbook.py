"""The handbook: every table by name."""

from __future__ import annotations

from hankwise._catalogue import _Fixed
from hankwise._hankwise import HandbookTable, find_table, search_tables


class Handbook(_Fixed, dict[str, HandbookTable]):
    """The handbook: tables of figures that no formula gives, by name; shows what there is.

    >>> import hankwise as hw
    >>> hw.handbook["fibre_densities"].find("wool dry")[0].low
    <density: 1.3 g/cm³>
    """

    _own = "keep figures of your own beside it"

    def __reduce__(self) -> tuple[type[Handbook], tuple[dict[str, HandbookTable]]]:
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> HandbookTable:
        """Refuse a name that is not there, naming the nearest."""
        return find_table(name)

    def search(self, words: str) -> Handbook:
        """Give the tables that have figures with all the words, with those figures.

        >>> import hankwise as hw
        >>> list(hw.handbook.search("mule"))
        ['lea_strength', 'machine_figures', 'minimum_fibres', 'twist_multipliers']
        """
        return Handbook({table.name: table for table in search_tables(words)})

    def __repr__(self) -> str:
        """Show the tables, and how many figures each has."""
        if not self:
            return "no figure has these words"
        width = max(map(len, self))
        return "\n".join(f"{name:{width}}  {len(t):3}  {t.title}" for name, t in self.items())

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr><td>{name}</td><td>{len(t)}</td><td>{escape(t.title)}</td></tr>"
            for name, t in self.items()
        )
        head = "<tr><th>table</th><th>figures</th><th>of</th></tr>"
        return f"<table><thead>{head}</thead><tbody>{rows}</tbody></table>"


handbook = Handbook({table.name: table for table in search_tables()})
