"""The picture of a plan: the mass down the stages, and the goods against the promise."""

from __future__ import annotations

import unicodedata
from typing import TYPE_CHECKING, Any

from hankwise._hankwise import (
    HankwiseError,
    NotationError,
    _check_output,
    _write_picture,
)

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from hankwise._hankwise import PlanResult, Results


def blank(width: float, height: float) -> Any:
    """Give an empty picture that a notebook shows by itself, its sides in inches."""
    try:
        from matplotlib.figure import Figure
    except ImportError as error:
        raise HankwiseError(
            "a picture needs matplotlib; install it with: pip install 'hankwise[plot]'"
        ) from error

    class Picture(Figure):
        """A picture that a notebook shows by itself."""

        def _repr_png_(self) -> bytes:
            import io

            buffer = io.BytesIO()
            self.savefig(buffer, format="png")
            return buffer.getvalue()

    return Picture(figsize=(width, height), layout="constrained")


def write(draw: Callable[[], Any], path: Path, force: bool) -> None:
    """Draw into a file, whole or not at all; the ending says which kind."""
    _check_output(path, None, force)
    figure = draw()
    import io

    import matplotlib

    kind = path.suffix.lower().removeprefix(".")
    # The same bytes from the same values: no date, fixed names inside the SVG; text stays text.
    date = {"svg": "Date", "pdf": "CreationDate"}.get(kind)
    drawn = io.BytesIO()
    with matplotlib.rc_context({"svg.hashsalt": "hankwise", "svg.fonttype": "none"}):
        figure.savefig(drawn, format=kind, dpi=160, metadata=date and {date: None})
    _write_picture(path, drawn.getvalue(), force)


# Signs that turn the order of others round.
_TURNING = {*range(0x202A, 0x202F), *range(0x2066, 0x206A)}


def literal(text: str) -> str:
    """Give a name as a picture shows it: `$` is not mathematics, control characters are escapes."""
    shown = (
        ascii(sign)[1:-1]
        if unicodedata.category(sign) in ("Cc", "Cs", "Zl", "Zp") or ord(sign) in _TURNING
        else sign
        for sign in text
    )
    return "".join(shown).replace("$", r"\$")


def results_figure(name: str, results: Results[str, Any]) -> Any:
    """Draw the results of a calculation that has a picture; gives the Figure."""
    if name == "week":
        from hankwise._plot_week import week_figure

        return week_figure(results)
    raise NotationError(f"{name} has no picture; hankwise.mill.week has one")


def plan_figure(result: PlanResult) -> Any:
    """Draw a result; gives the Figure. Shades and marks, so that it can be read in grey print."""
    figure = blank(10.5, 4.8)
    left, right = figure.subplots(1, 2, width_ratios=(3, 2))
    _stages(left, result)
    _promise(right, result)
    figure.suptitle(f"{literal(result.name)}\n{literal(result.answer)}", fontweight="bold")
    return figure


def _stages(axes: Any, result: PlanResult) -> None:
    stages = list(result.stages)
    greasy, fibre = result.intake
    stated = 1 + result.stated_regain
    names = ["intake", *(s["name"] for s in stages)]
    planned = [fibre * stated, *(s["planned"] for s in stages)]
    scale = [greasy, *(s["on_scale"] for s in stages)]
    places = range(len(names))
    axes.bar(
        places, scale, width=0.8, color="0.90", edgecolor="0.55", label="on the scale, planned"
    )
    axes.bar(
        places,
        planned,
        width=0.8,
        color="0.62",
        edgecolor="0.25",
        label=f"fibre at {100 * result.stated_regain:.0f} % regain, planned",
    )
    if result.simulated:
        low = [s["middle"] - s["low"] for s in stages]
        high = [s["high"] - s["middle"] for s in stages]
        axes.errorbar(
            places[1:],
            [s["middle"] for s in stages],
            yerr=[low, high],
            fmt="none",
            ecolor="black",
            elinewidth=1.4,
            capsize=4,
            label="in 9 lots of 10",
        )
    # The masses are written below the bands.
    below = [planned[0], *(s["low"] if s["low"] is not None else s["planned"] for s in stages)]
    for place, mass, under in zip(places, planned, below, strict=True):
        axes.annotate(
            f"{mass:.1f}",
            (place, under),
            (0, -5),
            textcoords="offset points",
            ha="center",
            va="top",
            fontsize=8,
            bbox={"facecolor": "white", "edgecolor": "none", "pad": 0.8},
        )
    axes.set_xticks(list(places), names, rotation=35, ha="right")
    axes.set_ylabel("kg")
    axes.set_title("Fibre out of each stage", fontsize=10)
    axes.spines[["top", "right"]].set_visible(False)
    axes.legend(frameon=False, fontsize=8)


def _promise(axes: Any, result: PlanResult) -> None:
    import numpy as np

    axes.spines[["top", "right", "left"]].set_visible(False)
    axes.set_yticks([])
    spare = result.samples["spare"]
    if spare.size == 0:
        planned = result.spare["planned"]
        axes.axvline(0, color="black", linewidth=1.6)
        axes.plot([planned], [0.5], "D", color="black")
        axes.annotate("planned", (planned, 0.5), (0, 10), textcoords="offset points", ha="center")
        axes.set_ylim(0, 1)
    else:
        whole = np.floor(spare + 1e-9)
        low, high = np.percentile(whole, [0.05, 99.95])
        step = max(1.0, np.ceil((high - low) / 45))
        edges = np.arange(low - step, high + 2 * step, step)
        # An edge is at the promise, so that no bar is half short and half enough.
        edges = edges - (edges[0] % step)
        counts, edges = np.histogram(whole, edges)
        short = edges[:-1] < 0
        axes.bar(
            edges[:-1][short],
            counts[short],
            width=step,
            align="edge",
            color="white",
            edgecolor="0.35",
            hatch="////",
            linewidth=0.6,
        )
        axes.bar(
            edges[:-1][~short],
            counts[~short],
            width=step,
            align="edge",
            color="0.62",
            edgecolor="0.35",
            linewidth=0.6,
        )
        axes.axvline(0, color="black", linewidth=1.6)
        chance = result.chance or 0.0
        top = axes.get_ylim()[1] * 1.16
        axes.set_ylim(0, top)
        axes.text(
            0.02,
            0.97,
            f"short\n{100 * (1 - chance):.0f} % of lots",
            transform=axes.transAxes,
            va="top",
        )
        axes.text(
            0.98,
            0.97,
            f"enough\n{100 * chance:.0f} % of lots",
            transform=axes.transAxes,
            va="top",
            ha="right",
        )
    axes.set_xlabel(literal(result._spare_label))
    axes.set_title("Simulated lots against the promise" if spare.size else "Planned", fontsize=10)


def save(result: PlanResult, path: Path, force: bool) -> None:
    """Draw a result into a file, whole or not at all; the ending says which kind."""
    write(lambda: plan_figure(result), path, force)
