"""The picture of a week: a bar for each lot at each machine."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from hankwise._plot import blank, literal

if TYPE_CHECKING:
    from hankwise._hankwise import Results


def week_figure(week: Results[str, Any]) -> Any:
    """Draw a week; gives the Figure. Bars are as grey as the lots and bear their names."""
    lots = {row["name"]: row["lightness"].number("%") / 100 for row in week["lots"]}
    machines = [row["name"] for row in week["machines"]]
    open_times = {row["name"]: row["open_time"].number("h") for row in week.given["machines"]}
    figure = blank(10.5, 1.6 + 0.62 * len(machines))
    axes = figure.subplots()
    beyond = []
    for visit in week["visits"]:
        lot = next(lot for lot in lots if visit["name"].startswith(f"{lot}."))
        machine = visit["name"].removeprefix(f"{lot}.")
        place = machines.index(machine)
        times = {key: value.number("h") for key, value in visit.items() if key != "name"}
        if times["beyond"] > 1e-9:
            beyond.append(f"{lot} at the {machine} by {times['beyond']:.1f} h")
        if times["clean_time"]:
            axes.barh(
                place,
                times["clean_time"],
                left=times["clean_from"],
                height=0.42,
                color="white",
                edgecolor="0.35",
                hatch="////",
                linewidth=0.6,
            )
        # Never so dark or so light that the frame or the name is lost.
        grey = 0.25 + 0.7 * lots[lot]
        start, long = times["start"], times["finish"] - times["start"]
        axes.barh(place, long, left=start, height=0.72, color=str(grey), edgecolor="black")
        axes.text(
            start + long / 2,
            place,
            literal(lot),
            ha="center",
            va="center",
            fontsize=8,
            color="black" if grey > 0.55 else "white",
            clip_on=True,
        )
    for place, machine in enumerate(machines):
        axes.plot(
            [open_times[machine]] * 2, [place - 0.46, place + 0.46], color="black", linewidth=2.4
        )
    axes.set_yticks(range(len(machines)), [literal(name) for name in machines])
    axes.invert_yaxis()
    axes.set_xlim(0, 1.02 * max(week["finish"].number("h"), *open_times.values()))
    axes.set_xlabel(
        "hours from the start; hatched: cleaning; thick line: end of the machine's week"
    )
    axes.spines[["top", "right"]].set_visible(False)
    fits = f"beyond the week: {literal('; '.join(beyond))}" if beyond else "all lots fit"
    order = week.given.get("order", "light to dark")
    axes.set_title(f"A week of lots, {order}: {fits}", fontsize=10)
    return figure
