"""Machines at work, against plain arithmetic written out here: picks and stops.

Nothing below uses the library's formulas: each sum is done again from what happens at the machine,
with other values on the way than the library takes.
"""

import math

import hankwise as hw
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")


def between(low, high):
    return st.floats(low, high, allow_nan=False)


def near(figure, unit, expected):
    assert figure.number(unit) == pytest.approx(expected, rel=1e-9, abs=1e-12)


@settings(max_examples=cases(25))
@given(
    speed=between(40, 300),
    picks=between(8, 90),
    stops=between(0.5, 30),
    stop=between(0.2, 6),
    looms=st.integers(1, 12),
    length=between(1, 100),
    attention=between(0.1, 1.5),
    load=between(0.5, 0.9),
)
def test_a_loom_that_stops_pick_by_pick(speed, picks, stops, stop, looms, length, attention, load):
    all_picks = length * 36 * picks
    running = all_picks / speed  # minutes
    stopped = running / 60 * stops * stop
    # Minutes that a weaver gives to a loom, over the minutes that it takes to weave.
    share = running / 60 * stops * attention / (running + stopped)
    each = math.floor(load / share + 1e-6)

    def at_work():
        return hw.mill.loom(
            loom_speed=f"{speed!r} picks/min", weft_sett=f"{picks!r} picks/in",
            stop_rate=f"{stops!r} /h", stop_time=f"{stop!r} min", cloth_length=f"{length!r} yd",
            looms=looms, attention_time=f"{attention!r} min", work_load=load,
        )  # fmt: skip

    if each == 0:
        with pytest.raises(hw.RangeError, match="the stops of a single loom take more"):
            at_work()
        return
    loom = at_work()
    near(loom["loom_hours"], "h", (running + stopped) / 60)
    near(loom["time"], "h", (running + stopped) / 60 / looms)
    near(loom["efficiency"], "%", 100 * running / (running + stopped))
    near(loom["looms_per_person"], "", each)


def test_efficiency_is_never_taken_twice():
    loom = {"loom_speed": "90 picks/min", "weft_sett": "4.6 picks/cm"}
    with pytest.raises(hw.NotationError, match="each settles the efficiency: omit all but one"):
        hw.mill.loom(**loom, efficiency="80 %", stop_rate="6 /h", stop_time="2 min")
    with pytest.raises(hw.NotationError, match="efficiency and stop_time were given"):
        hw.mill.loom(**loom, efficiency="80 %", stop_time="2 min")


def test_a_workbook_is_written(tmp_path):
    path = tmp_path / "loom.xlsx"
    loom = hw.mill.loom(loom_speed="90 picks/min", weft_sett="4.6 picks/cm", efficiency="75 %")
    loom.to_workbook(path)
    assert path.stat().st_size > 0
    assert "loom_delivery_speed" in str(loom.working("cloth_rate"))
