"""Machines at work, against plain arithmetic written out here: picks and stops.

Nothing below uses the library's formulas: each sum is done again from what happens at the machine,
with other figures on the way than the library takes.
"""

import inspect
import math
import pickle
import re

import hankwise as hw
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")

MACHINES = [name for name, job in vars(hw.mill).items() if isinstance(job, hw.Job)]


def between(low, high):
    return st.floats(low, high, allow_nan=False)


def near(figure, unit, expected):
    assert figure.number(unit) == pytest.approx(expected, rel=1e-9, abs=1e-12)


def whole_up(x):
    """Rounded up, a millionth being the rounding of binary figures."""
    return math.ceil(x - 1e-6)


def test_a_job_is_itself_again_from_a_pickle():
    for name in MACHINES:
        job = getattr(hw.mill, name)
        assert pickle.loads(pickle.dumps(job)) is job
        assert job.asks[0]["name"] in repr(job)
        assert job.summary in job._repr_html_()


@pytest.mark.parametrize("name", MACHINES)
def test_what_help_shows_is_what_is_read(name):
    machine = getattr(hw.mill, name)
    with pytest.raises(hw.NotationError) as error:
        machine(nonsense=1)
    read = re.search(r"there are (.*)$", str(error.value)).group(1).split(", ")
    shown = inspect.signature(machine).parameters
    assert sorted(read) == sorted(shown)
    # What help shows without a default is what is asked for.
    asked = [p.name for p in shown.values() if p.default is p.empty]
    with pytest.raises(hw.NotationError, match=f"{asked[0]} .* is missing"):
        machine()


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
        return hw.mill.loom_run(
            speed=f"{speed!r} picks/min", picks=f"{picks!r} picks/in", stops=f"{stops!r} /h",
            stop_time=f"{stop!r} min", length=f"{length!r} yd", looms=looms,
            attention=f"{attention!r} min", load=load,
        )  # fmt: skip

    if each == 0:
        with pytest.raises(hw.RangeError, match="the stops of a single loom take more"):
            at_work()
        return
    loom = at_work()
    near(loom["loom_hours"], "h", (running + stopped) / 60)
    near(loom["time"], "h", (running + stopped) / 60 / looms)
    near(loom["efficiency_found"], "%", 100 * running / (running + stopped))
    near(loom["looms_per_person"], "", each)


def test_efficiency_is_never_taken_twice():
    loom = {"speed": "90 picks/min", "picks": "4.6 picks/cm"}
    with pytest.raises(hw.NotationError, match="leave all but one out"):
        hw.mill.loom_run(**loom, efficiency="80 %", stops="6 /h", stop_time="2 min")
    with pytest.raises(hw.NotationError, match="stops are in the efficiency"):
        hw.mill.loom_run(**loom, efficiency="80 %", stop_time="2 min")


def test_a_workbook_is_written(tmp_path):
    path = tmp_path / "loom.xlsx"
    loom = hw.mill.loom_run(speed="90 picks/min", picks="4.6 picks/cm", efficiency="75 %")
    loom.to_sheet(path)
    assert path.stat().st_size > 0
    assert "loom_delivery_speed" in str(loom.working("cloth"))
