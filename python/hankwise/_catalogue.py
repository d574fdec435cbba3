"""The catalogue, every formula by name, and the handbook, every table by name."""

from __future__ import annotations

from typing import Generic, TypeVar

from hankwise._hankwise import (
    Formula,
    HandbookTable,
    find,
    find_table,
    search,
    search_tables,
)
from hankwise._hankwise import formulas as _by_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import NoReturn

_T = TypeVar("_T")


class _Fixed(dict[str, _T], Generic[_T]):
    """A mapping that does not change."""

    _own = ""

    def _fixed(self, *_args: object, **_more: object) -> NoReturn:
        raise TypeError(f"the {type(self).__name__.lower()} does not change; {self._own}")

    __setitem__ = __delitem__ = __ior__ = _fixed
    clear = pop = popitem = setdefault = update = _fixed

    def __reduce__(self) -> tuple[type[_Fixed[_T]], tuple[dict[str, _T]]]:
        return type(self), (dict(self),)


class Catalogue(_Fixed[Formula]):
    """The formulas by name; shows itself as a table."""

    _own = "a formula of your own is a function"

    def __missing__(self, name: str) -> Formula:
        """Refuse a name that is not there, naming the nearest."""
        return find(name)

    def search(self, words: str) -> Catalogue:
        """Give the formulas that have all the words in their card.

        >>> import hankwise as hw
        >>> "twist_factor" in hw.formulas.search("twist count")
        True
        """
        return Catalogue({name: self[name] for name in search(words)})

    def __repr__(self) -> str:
        """Show the formulas as a table."""
        if not self:
            return "no formula has these words"
        width = max(map(len, self))
        return "\n".join(f"{f.room:6} {name:{width}}  {f.summary}" for name, f in self.items())

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr><td>{f.room}</td><td>{name}</td><td>{escape(f.summary)}</td>"
            f"<td>{escape(f.equation)}</td></tr>"
            for name, f in self.items()
        )
        head = "<tr><th>room</th><th>formula</th><th>says</th><th>equation</th></tr>"
        return f"<table><thead>{head}</thead><tbody>{rows}</tbody></table>"


formulas = Catalogue(sorted(_by_name.items()))


class Handbook(_Fixed[HandbookTable]):
    """The handbook: tables of figures that no formula gives, by name; shows what there is.

    >>> import hankwise as hw
    >>> hw.handbook["fibre_densities"].find("wool dry")[0].low
    <density: 1.3 g/cm³>
    """

    _own = "keep figures of your own beside it"

    def __missing__(self, name: str) -> HandbookTable:
        """Refuse a name that is not there, naming the nearest."""
        return find_table(name)

    def search(self, words: str) -> Handbook:
        """Give the tables that have figures with all the words, with those figures.

        >>> import hankwise as hw
        >>> list(hw.handbook.search("woollen"))
        ['diameter_factors', 'reels', 'twist_multipliers']
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
