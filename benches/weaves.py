"""The values of a weave's squares by NumPy: the peer that the weave is measured against."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

if TYPE_CHECKING:
    from numpy.typing import NDArray


def figures(squares: NDArray[np.bool_]) -> dict[str, Any]:
    """Count interlacings, floats, factors and the warp's share; a row is a pick."""
    cells = squares.size
    found: dict[str, Any] = {"warp_up": np.count_nonzero(squares) / cells}
    passages = 0
    for system, lines in (("warp", np.ascontiguousarray(squares.T)), ("weft", squares)):
        across = lines.shape[1]
        change = np.empty_like(lines)
        np.not_equal(lines[:, 1:], lines[:, :-1], out=change[:, 1:])
        np.not_equal(lines[:, 0], lines[:, -1], out=change[:, 0])
        each = np.count_nonzero(change, axis=1)
        starts = np.flatnonzero(change)
        lengths = np.empty_like(starts)
        np.subtract(starts[1:], starts[:-1], out=lengths[:-1])
        # The last float of a thread runs on into its first.
        stop = np.cumsum(each)
        first = stop - each
        lengths[stop - 1] = starts[first] + across - starts[stop - 1]
        found[system] = (each, across * len(lines) / starts.size, int(lengths.max()))
        passages += starts.size
    found["crossing_firmness"] = passages / cells
    found["floating_factor"] = (2 * cells - passages) / cells
    return found
