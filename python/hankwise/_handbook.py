"""The handbook: every table by name."""

from __future__ import annotations

from hankwise._catalogue import _Fixed
from hankwise._hankwise import HandbookTable, _table, _tables


class Handbook(_Fixed, dict[str, HandbookTable]):
    """The handbook: tables of values that no formula gives, by name; shows a list of them.

    >>> import hankwise as hw
    >>> hw.handbook["fibre_densities"].find("wool dry")[0].low
    <density: 1.3 g/cm³>
    """

    _own = "keep values of your own beside it"
    _kind = "table"

    def __reduce__(self) -> tuple[type[Handbook], tuple[dict[str, HandbookTable]]]:
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> HandbookTable:
        """Refuse a name that is not there, naming the nearest."""
        return _table(name)


handbook = Handbook({table.name: table for table in _tables()})
