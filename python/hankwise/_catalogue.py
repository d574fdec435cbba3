"""The catalogue: every formula, by name."""

from collections.abc import Iterator, Mapping

from hankwise._hankwise import Formula, find, search
from hankwise._hankwise import formulas as _by_name

_SORTED = dict(sorted(_by_name.items()))


class Catalogue(Mapping[str, Formula]):
    """The formulas by name; shows itself as a table."""

    def __init__(self, formulas: dict[str, Formula]) -> None:
        """Keep the formulas."""
        self._formulas = formulas

    def __getitem__(self, name: str) -> Formula:
        """Give the formula with a name; a miss names the nearest."""
        return self._formulas[name] if name in self._formulas else find(name)

    def __iter__(self) -> Iterator[str]:
        """Go through the names."""
        return iter(self._formulas)

    def __len__(self) -> int:
        """Count the formulas."""
        return len(self._formulas)

    def search(self, words: str) -> "Catalogue":
        """Give the formulas that have all the words in their card.

        >>> import hankwise as hw
        >>> "twist_factor" in hw.formulas.search("twist count")
        True
        """
        return Catalogue({name: self._formulas[name] for name in search(words)})

    def __repr__(self) -> str:
        """Show the formulas as a table."""
        if not self._formulas:
            return "no formula has these words"
        width = max(map(len, self._formulas))
        return "\n".join(
            f"{f.room:6} {name:{width}}  {f.summary}" for name, f in self._formulas.items()
        )

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr><td>{f.room}</td><td>{name}</td><td>{escape(f.summary)}</td>"
            f"<td>{escape(f.equation)}</td></tr>"
            for name, f in self._formulas.items()
        )
        head = "<tr><th>room</th><th>formula</th><th>says</th><th>equation</th></tr>"
        return f"<table><thead>{head}</thead><tbody>{rows}</tbody></table>"


formulas = Catalogue(_SORTED)
