"""The count systems: every one that is known, by name."""

from __future__ import annotations

from collections.abc import Mapping

from hankwise._catalogue import _Shown
from hankwise._hankwise import UnitError, _count, _count_symbols

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any


class Counts(_Shown, Mapping[str, "dict[str, Any]"]):
    """The count systems by name, your own last; shows itself as a table.

    >>> import hankwise as hw
    >>> hw.counts["gala"]["definition"]
    '300 yd per 24 oz'
    >>> hw.find("scotland 1917", kind="count").names
    ['galashiels-cut']
    """

    _kind = "count"

    def __getitem__(self, name: str) -> dict[str, Any]:
        """Give the row of a system, by any of its names."""
        try:
            return _count(name)
        except UnitError as error:
            raise KeyError(str(error)) from None

    def __iter__(self) -> Iterator[str]:
        """Go through the symbols."""
        return iter(_count_symbols())

    def __len__(self) -> int:
        """Count the systems."""
        return len(_count_symbols())


counts = Counts()
