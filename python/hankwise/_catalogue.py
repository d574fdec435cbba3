"""Formulas and calculations by name."""

from __future__ import annotations

from hankwise._hankwise import Calculation, Formula, _calculation, _formula, find
from hankwise._hankwise import calculations as _calculations
from hankwise._hankwise import formulas as _formulas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any, NoReturn


class _Fixed:
    """What a mapping that does not change refuses. Without `typing`, which is slow to import."""

    _own = ""

    def _fixed(self, *_args: object, **_more: object) -> NoReturn:
        raise TypeError(f"the {type(self).__name__.lower()} does not change; {self._own}")

    __setitem__ = __delitem__ = __ior__ = _fixed
    clear = pop = popitem = setdefault = update = _fixed


class Formulas(_Fixed, dict[str, "Formula[...]"]):
    """The formulas by name; shows itself as a table. `hankwise.find` searches them."""

    _own = "a formula of your own is a function"

    def __reduce__(self) -> tuple[type[Formulas], tuple[dict[str, Formula[...]]]]:
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> Formula[...]:
        """Refuse a name that is not there, naming the nearest."""
        return _formula(name)

    def __repr__(self) -> str:
        """Show the formulas as a table."""
        return repr(find(kind="formula"))

    def _repr_html_(self) -> str:
        return find(kind="formula")._repr_html_()


class Calculations(_Fixed, dict[str, "Calculation[..., Any]"]):
    """The calculations by name; shows itself as a table. `hankwise.find` searches them.

    >>> import hankwise as hw
    >>> "mule" in hw.calculations
    True
    """

    _own = "a calculation of your own is a function"

    def __reduce__(self) -> tuple[type[Calculations], tuple[dict[str, Calculation[..., Any]]]]:
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> Calculation[..., Any]:
        """Refuse a name that is not there, naming the nearest."""
        return _calculation(name)

    def __repr__(self) -> str:
        """Show the calculations as a table."""
        return repr(find(kind="calculation"))

    def _repr_html_(self) -> str:
        return find(kind="calculation")._repr_html_()


formulas = Formulas(sorted(_formulas.items()))
calculations = Calculations(sorted(_calculations.items()))
