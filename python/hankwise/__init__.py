"""Yarn-and-cloth arithmetic for a small vertical woollen mill, for classes and for notebooks.

>>> import hankwise as hw
>>> hw.q("22½ YSW").to("Nm")
<linear density (count): 11.61 Nm>
>>> hw.yarn.twist_factor(twist="9 tpi", count="16 YSW")
<twist factor: 38.99 turns/cm √tex>
>>> print(hw.yarn.twist_factor.working(twist="9 tpi", count="16 YSW"))
twist (t) = 9 tpi × 39.3700787 = 354.3 turns/m
    twist; 39.3700787: inches in a metre
count (T) = 1937.71347 / 16 YSW = 121.1 tex
    yarn count; 1937.71347: tex at 1 YSW, 453592.37 / (256 × 0.9144)
twist_factor (K) = t / 100 × √T = 354.3 / 100 × √121.1 = 38.99 turns/cm √tex
    How hard a yarn is twisted for its count; formula twist_factor
<BLANKLINE>
"""

import sys as _sys

# First, so that a command that is stopped while it is being imported says so.
if any("hankwise" in word for word in _sys.orig_argv):
    from hankwise import _stop as _stop

from hankwise import plan
from hankwise._catalogue import calculations, formulas
from hankwise._hankwise import (
    Calculation,
    CallError,
    Capability,
    Chart,
    ColourOrder,
    Draft,
    Formula,
    Found,
    HandbookFigure,
    HandbookTable,
    HankwiseError,
    Hit,
    Layers,
    Needed,
    NotationError,
    Picture,
    Plan,
    PlanError,
    PlanResult,
    Quantity,
    Quote,
    RangeError,
    RangeWarning,
    Results,
    Rounded,
    Summary,
    Table,
    UnitError,
    Weave,
    WoolGrade,
    Working,
    Yarn,
    __version__,
    cloth,
    convert,
    define_count,
    fibre,
    find,
    load_counts,
    mill,
    q,
    quality,
    source,
    units,
    yarn,
)

__all__ = [
    "Calculation",
    "CallError",
    "Capability",
    "Chart",
    "ColourOrder",
    "Draft",
    "Formula",
    "Found",
    "HandbookFigure",
    "HandbookTable",
    "HankwiseError",
    "Hit",
    "Layers",
    "Needed",
    "NotationError",
    "Picture",
    "Plan",
    "PlanError",
    "PlanResult",
    "Quantity",
    "Quote",
    "RangeError",
    "RangeWarning",
    "Results",
    "Rounded",
    "Summary",
    "Table",
    "UnitError",
    "Weave",
    "WoolGrade",
    "Working",
    "Yarn",
    "__version__",
    "calculations",
    "cloth",
    "convert",
    "counts",
    "define_count",
    "fibre",
    "find",
    "formulas",
    "handbook",
    "load_counts",
    "mill",
    "plan",
    "q",
    "quality",
    "source",
    "units",
    "yarn",
]


TYPE_CHECKING = False
if TYPE_CHECKING:
    from hankwise._counts import counts
    from hankwise._handbook import handbook
else:

    def __getattr__(name: str) -> object:
        """Make what is long to make when it is first asked for."""
        if name in ("counts", "handbook"):
            from importlib import import_module

            value = globals()[name] = getattr(import_module(f"hankwise._{name}"), name)
            return value
        raise AttributeError(f"module 'hankwise' has no attribute '{name}'")

    def __dir__() -> list[str]:
        """List what there is, with what is made when it is first asked for."""
        return sorted({*globals(), *__all__})
