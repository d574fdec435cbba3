"""Control charts: limits by hand, outlier and drift distinguished, false alarms by simulation."""

import json

import hankwise as hw
import numpy as np
import pytest
from hankwise import cli
from matplotlib.image import imread
from scipy import stats

Q = hw.quality
RNG = np.random.default_rng(11)
STEADY = RNG.normal(150, 4, (25, 4))


def test_limits_are_those_worked_by_hand():
    """With the printed constants of table A.22 for n = 4, to their digits."""
    grand = STEADY.mean()
    ranges = np.ptp(STEADY, axis=1).mean()
    chart = Q.chart(hw.q(STEADY.ravel(), "tex"), subgroup=4)
    low, high = (e.number("tex") for e in chart.limits)
    assert chart.kind == "mean"
    assert chart.centre.number("tex") == pytest.approx(grand)
    assert high == pytest.approx(grand + 0.729 * ranges, abs=0.0005 * ranges)
    assert low == pytest.approx(grand - 0.729 * ranges, abs=0.0005 * ranges)
    assert chart.sigma.number("tex") == pytest.approx(ranges / 2.059, rel=0.0003)
    of_ranges = Q.chart(STEADY.ravel(), 4, "range")
    assert of_ranges.limits[1].number("") == pytest.approx(2.282 * ranges, abs=0.0005 * ranges)
    assert of_ranges.limits[0].number("") == 0
    sds = STEADY.std(axis=1, ddof=1).mean()
    of_sds = Q.chart(STEADY.ravel(), 4, "deviation")
    assert of_sds.limits[1].number("") == pytest.approx(2.266 * sds, abs=0.0005 * sds)
    single = Q.chart(STEADY.ravel())
    moving = np.abs(np.diff(STEADY.ravel())).mean()
    assert single.limits[1].number("") == pytest.approx(grand + 2.66 * moving, abs=0.005 * moving)


def test_limits_from_a_known_centre_and_spread():
    chart = Q.chart(STEADY.ravel(), 4, centre=150, sigma=4)
    assert [e.number("") for e in chart.limits] == pytest.approx([144, 156])
    assert Q.chart(STEADY.ravel(), 4, "range", sigma=4).centre.number("") == pytest.approx(
        4 * 2.059, abs=0.002
    )


def test_one_reading_out_is_an_outlier():
    values = np.tile([150.0, 151.0, 149.0, 150.5, 149.5], 5)
    values[12] = 165
    (finding,) = Q.chart(values).findings
    assert (finding["what"], finding["first"], finding["side"]) == ("outlier", 12, "above")
    assert "that one" in finding["sentence"]


def test_a_level_that_moves_is_a_drift():
    values = np.concatenate([STEADY.ravel()[:40], STEADY.ravel()[40:60] + 9])
    chart = Q.chart(values, baseline=40)
    drifts = [f for f in chart.findings if f["what"] == "drift"]
    assert len(drifts) >= 1
    assert all(f["side"] == "above" and f["last"] >= 40 for f in drifts)
    assert not chart.steady


def test_simulated_outliers_and_drifts_are_told_apart():
    rng, right = np.random.default_rng(3), [0, 0]
    for _ in range(200):
        values = rng.normal(100, 2, 60)
        with_outlier = values.copy()
        with_outlier[45] += 16
        found = Q.chart(with_outlier, centre=100, sigma=2).findings
        right[0] += any(f["what"] == "outlier" and f["first"] == 45 for f in found)
        # Two standard deviations over twenty readings, as a card drifts.
        drifting = values + 4 * np.clip((np.arange(60) - 30) / 20, 0, 1)
        found = Q.chart(drifting, centre=100, sigma=2).findings
        right[1] += any(f["what"] == "drift" and f["last"] > 35 for f in found)
    assert right[0] >= 190
    assert right[1] >= 180


def first_alarm(points, centre, low, high):
    """By the rules alone: outside, or eight in a row on one side."""
    run, last = 0, 0
    for number, x in enumerate(points, start=1):
        side = 1 if x > centre else -1
        run = run + 1 if side == last else 1
        last = side
        if not low <= x <= high or run >= 8:
            return number
    raise AssertionError("too short a run of points")


def test_false_alarms_of_means_are_as_published():
    # C. W. Champ and W. H. Woodall, Technometrics 29 (1987): 152.73 for these two rules.
    chart = Q.chart(STEADY.ravel(), 4)
    assert chart.points_to_false_alarm == pytest.approx(152.73, abs=0.005)


@pytest.mark.parametrize("kind", ["range", "deviation"])
def test_false_alarms_of_spreads_are_those_of_a_simulation(kind):
    rng = np.random.default_rng(5)
    chart = Q.chart(STEADY.ravel(), 4, kind, sigma=1)
    low, high = (e.number("") for e in chart.limits)
    centre = chart.centre.number("")
    lengths = []
    for _ in range(2500):
        groups = rng.normal(0, 1, (3000, 4))
        points = np.ptp(groups, axis=1) if kind == "range" else groups.std(axis=1, ddof=1)
        lengths.append(first_alarm(points, centre, low, high))
    error = np.std(lengths) / np.sqrt(len(lengths))
    assert chart.points_to_false_alarm == pytest.approx(np.mean(lengths), abs=4 * error)


@pytest.mark.parametrize(
    ("options", "words"),
    [
        ({"subgroup": 7}, "100 readings are not whole subgroups of 7: 2 are over"),
        ({"subgroup": 100}, "fewer than two subgroups"),
        ({"subgroup": 4, "kind": "individuals"}, "no subgroups"),
        ({"subgroup": 1, "kind": "mean"}, "subgroup of 1"),
        ({"baseline": 1}, "first 1 of"),
        ({"sigma": 0}, "more than 0"),
        ({"subgroup": 4, "kind": "range", "centre": 3}, "sigma= instead"),
        ({"kind": "sum"}, "unknown kind of chart"),
    ],
)
def test_what_is_no_chart(options, words):
    with pytest.raises(hw.HankwiseError, match=words):
        Q.chart(STEADY.ravel(), **options)


def test_readings_that_do_not_differ():
    with pytest.raises(hw.RangeError, match="do not differ"):
        Q.chart([5.0] * 20)


def test_capability_by_its_definition():
    values = RNG.normal(100, 2, 60)
    c = Q.capability(hw.q(values, "g"), "92 g", "106 g")
    sd, mean = values.std(ddof=1), values.mean()
    within = np.abs(np.diff(values)).mean() / 1.1283791670955126
    assert c.cp == pytest.approx(14 / 6 / within)
    assert c.cpk == pytest.approx(min(106 - mean, mean - 92) / 3 / within)
    assert c.pp == pytest.approx(14 / 6 / sd)
    assert c.ppk == pytest.approx(min(106 - mean, mean - 92) / 3 / sd)
    expected = stats.norm.cdf(92, mean, sd) + stats.norm.sf(106, mean, sd)
    assert c.expected_outside == pytest.approx(expected, rel=1e-9)
    with pytest.raises(hw.RangeError, match="is above high"):
        Q.capability(values, 106, 92)


def test_the_picture_shows_what_is_out(tmp_path):
    values = STEADY.ravel().copy()
    values[30] = 190
    chart = Q.chart(hw.q(values, "tex"))
    chart.save(tmp_path / "chart.svg")
    chart.save(tmp_path / "again.svg")
    text = (tmp_path / "chart.svg").read_text(encoding="utf-8")
    assert text == (tmp_path / "again.svg").read_text(encoding="utf-8")
    for words in ["outlier", "upper", "lower", "centre", "tex", ">31<"]:
        assert words in text
    chart.save(tmp_path / "chart.png")
    assert imread(tmp_path / "chart.png").shape[0] > 400
    with pytest.raises(hw.NotationError, match=r"\.svg, \.png or \.pdf"):
        chart.save(tmp_path / "chart.txt")


def test_the_command(tmp_path, capsys):
    path = tmp_path / "cards.csv"
    rows = "\n".join(f"{k},{x:.2f}" for k, x in enumerate(STEADY.ravel()))
    path.write_text(f"number,slubbing\n{rows}\n", encoding="utf-8")
    picture = tmp_path / "chart.svg"
    options = ["--column", "slubbing", "--subgroup", "4", "--unit", "tex"]
    assert cli.main(["chart", str(path), *options, "--picture", str(picture)]) == 0
    assert "Chart of 25 means of 4 readings each" in capsys.readouterr().out
    assert picture.exists()
    assert cli.main(["chart", str(path), *options, "--json"]) == 0
    assert len(json.loads(capsys.readouterr().out)["points"]) == 25
    assert cli.main(["chart", str(path)]) == 1
    assert "--column NAME" in capsys.readouterr().err
    assert cli.main(["chart", str(path), "--column", "sliver"]) == 1
    assert "no column 'sliver'" in capsys.readouterr().err
    path.write_text("slubbing\n150\nlots\n", encoding="utf-8")
    assert cli.main(["chart", str(path)]) == 1
    assert "row 3, slubbing: 'lots' is not a number" in capsys.readouterr().err
