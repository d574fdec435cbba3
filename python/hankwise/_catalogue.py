"""Formulas and calculations by name."""

from hankwise._hankwise import Calculation, Formula, _calc, find
from hankwise._hankwise import calculations as _calculations
from hankwise._hankwise import formulas as _formulas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any, NoReturn

    from hankwise._hankwise import _Kind


class _Shown:
    """Show a mapping as a table of what the search finds of its kind."""

    _kind: "_Kind"

    def __repr__(self) -> str:
        """Show everything as a table."""
        return repr(find(kind=self._kind))

    def _repr_html_(self) -> str:
        return find(kind=self._kind)._repr_html_()


class _Fixed(_Shown):
    """What a mapping that does not change refuses. Without `typing`, which is slow to import."""

    _own = ""

    def _fixed(self, *_args: object, **_more: object) -> "NoReturn":
        raise TypeError(f"the {type(self).__name__.lower()} does not change; {self._own}")

    __setitem__ = __delitem__ = __ior__ = _fixed
    clear = pop = popitem = setdefault = update = _fixed


class Formulas(_Fixed, dict[str, "Formula[...]"]):
    """The formulas by name; shows itself as a table. `hankwise.find` searches them."""

    _own = "a formula of your own is a function"
    _kind = "formula"

    def __reduce__(self) -> "tuple[type[Formulas], tuple[dict[str, Formula[...]]]]":
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> "Formula[...]":
        """Refuse a name that is not there, naming the nearest."""
        return _calc(name, "formula")


class Calculations(_Fixed, dict[str, "Calculation[..., Any]"]):
    """The calculations by name; shows itself as a table. `hankwise.find` searches them.

    >>> import hankwise as hw
    >>> "mule" in hw.calculations
    True
    """

    _own = "a calculation of your own is a function"
    _kind = "calculation"

    def __reduce__(self) -> "tuple[type[Calculations], tuple[dict[str, Calculation[..., Any]]]]":
        return type(self), (dict(self),)

    def __missing__(self, name: str) -> "Calculation[..., Any]":
        """Refuse a name that is not there, naming the nearest."""
        return _calc(name, "calculation")


formulas = Formulas(sorted(_formulas.items()))
calculations = Calculations(sorted(_calculations.items()))
