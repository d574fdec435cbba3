"""The picture of a control chart: points in order, centre and limits with their figures."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from hankwise._plot import blank, literal, write

if TYPE_CHECKING:
    from pathlib import Path

    from hankwise._hankwise import Chart


def chart_figure(chart: Chart) -> Any:
    """Draw a chart; gives the Figure. What is out has another mark, so that grey print shows it."""
    figure = blank(9.6, 4.4)
    from matplotlib.ticker import MaxNLocator

    axes = figure.subplots()
    points = chart.points
    # Moving ranges begin with the second reading.
    first = 2 if chart.kind == "moving range" else 1
    places = list(range(first, first + len(points)))
    _lines(axes, chart, places)
    axes.plot(places, points, color="0.45", linewidth=1.0, zorder=2)
    _marks(axes, chart, places)
    what = {"mean": "mean", "range": "range", "deviation": "standard deviation"}
    name = what.get(chart.kind, "reading" if chart.kind == "individuals" else "moving range")
    axes.set_ylabel(f"{name}, {chart.unit}" if chart.unit else name)
    axes.set_xlabel("subgroup" if chart.subgroup > 1 else "reading")
    axes.xaxis.set_major_locator(MaxNLocator(integer=True))
    axes.set_title(literal(chart.title), fontweight="bold", loc="left", fontsize=11)
    axes.spines[["top", "right"]].set_visible(False)
    axes.margins(x=0.02, y=0.14)
    handles, labels = axes.get_legend_handles_labels()
    if handles:
        figure.legend(handles, labels, loc="outside lower left", ncols=3, frameon=False, fontsize=8)
    return figure


def _lines(axes: Any, chart: Chart, places: list[int]) -> None:
    """Centre and limits, each with its value at the right end."""
    low, high = chart.limits
    lines = [("centre", chart.centre, "-"), ("upper", high, "--"), ("lower", low, "--")]
    for name, level, style in lines:
        at = level.number(level.unit)
        axes.axhline(at, color="black", linewidth=1.0, linestyle=style, zorder=1)
        axes.annotate(
            f"{name} {level}",
            (1.0, at),
            (4, 0),
            xycoords=("axes fraction", "data"),
            textcoords="offset points",
            va="center",
            fontsize=8,
            annotation_clip=False,
        )


def _marks(axes: Any, chart: Chart, places: list[int]) -> None:
    """Points: round within, filled black squares in a drift, large crosses out alone."""
    alone = {f["first"] for f in chart.findings if f["what"] == "outlier"}
    drifted = {
        k for f in chart.findings if f["what"] == "drift" for k in range(f["first"], f["last"] + 1)
    }
    rest = [k for k in range(len(places)) if k not in alone | drifted]
    marks = [
        (rest, "o", {"color": "white", "edgecolor": "0.25", "s": 26}, ""),
        (sorted(drifted), "s", {"color": "black", "s": 30}, "drift: the level has moved"),
        (
            sorted(alone),
            "X",
            {"color": "black", "edgecolor": "white", "s": 110},
            "outlier: look at that one",
        ),
    ]
    for which, mark, style, label in marks:
        if which:
            axes.scatter(
                [places[k] for k in which],
                [chart.points[k] for k in which],
                marker=mark,
                zorder=3,
                label=label or None,
                **style,
            )
    for k in chart.out:
        up = chart.points[k] > chart.centre.number(chart.centre.unit)
        axes.annotate(
            str(places[k]),
            (places[k], chart.points[k]),
            (0, 9 if up else -9),
            textcoords="offset points",
            ha="center",
            va="bottom" if up else "top",
            fontsize=8,
        )


def save(chart: Chart, path: Path, force: bool) -> None:
    """Draw a chart into a file, whole or not at all; the ending says which kind."""
    write(lambda: chart_figure(chart), path, force)
