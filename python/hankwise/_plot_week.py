"""The picture of a week: a bar for each lot at each machine."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from hankwise._plot import blank

if TYPE_CHECKING:
    from hankwise._hankwise import Week


def week_figure(week: Week) -> Any:
    """Draw a week; gives the Figure. Bars are as grey as the lots and bear their names."""
    machines = list(week.machines)
    figure = blank(10.5, 1.6 + 0.62 * len(machines))
    axes = figure.subplots()
    places = {row["machine"]: place for place, row in enumerate(machines)}
    for visit in week.visits:
        place = places[visit["machine"]]
        if visit["cleaned"]:
            axes.barh(
                place,
                visit["cleaned"],
                left=visit["clean_from"],
                height=0.42,
                color="white",
                edgecolor="0.35",
                hatch="////",
                linewidth=0.6,
            )
        # Never so dark or so light that the frame or the name is lost.
        grey = 0.25 + 0.7 * visit["lightness"] / 100
        long = visit["finish"] - visit["start"]
        axes.barh(place, long, left=visit["start"], height=0.72, color=str(grey), edgecolor="black")
        axes.text(
            visit["start"] + long / 2,
            place,
            visit["lot"],
            ha="center",
            va="center",
            fontsize=8,
            color="black" if grey > 0.55 else "white",
            clip_on=True,
        )
    for row, place in zip(machines, places.values(), strict=True):
        axes.plot([row["hours"]] * 2, [place - 0.46, place + 0.46], color="black", linewidth=2.4)
    axes.set_yticks(list(places.values()), list(places))
    axes.invert_yaxis()
    axes.set_xlim(0, 1.02 * max(week.finish, *(row["hours"] for row in machines)))
    axes.set_xlabel(
        "hours from the start; hatched: cleaning; thick line: end of the machine's week"
    )
    axes.spines[["top", "right"]].set_visible(False)
    beyond = "; ".join(
        f"{lot} at the {machine} by {by:.1f} h" for (lot, machine), by in week.beyond.items()
    )
    told = f"beyond the week: {beyond}" if beyond else "all lots fit"
    axes.set_title(f"A week of lots, {week.ordered}: {told}", fontsize=10)
    return figure
