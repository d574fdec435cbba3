"""The catalogue: every formula by name."""

from __future__ import annotations

from hankwise._hankwise import Formula, find, search
from hankwise._hankwise import formulas as _by_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import NoReturn


class _Fixed:
    """What a mapping that does not change refuses. Without `typing`, which is slow to import."""

    _own = ""

    def _fixed(self, *_args: object, **_more: object) -> NoReturn:
        raise TypeError(f"the {type(self).__name__.lower()} does not change; {self._own}")

    __setitem__ = __delitem__ = __ior__ = _fixed
    clear = pop = popitem = setdefault = update = _fixed


class Catalogue(_Fixed, dict[str, Formula]):
    """The formulas by name; shows itself as a table."""

    _own = "a formula of your own is a function"

    def __reduce__(self) -> tuple[type[Catalogue], tuple[dict[str, Formula]]]:
        return type(self), (dict(self),)

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
