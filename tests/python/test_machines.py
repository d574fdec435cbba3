"""Machines at work, against plain arithmetic written out here: turns, draws, picks, sections.

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


@settings(max_examples=cases(40))
@given(
    spindles=st.integers(20, 500),
    travel=between(60, 88),
    let_in=between(0, 4),
    cycle=between(15, 40),
    count=between(3, 30),
    efficiency=between(0.5, 0.99),
    draft=between(1.1, 1.6),
    twist=between(3, 14),
    slip=between(0, 0.1),
    coiling=between(0, 12),
    mass=between(5, 800),
    cop=between(1, 12),
)
def test_a_mule_in_inches(
    spindles, travel, let_in, cycle, count, efficiency, draft, twist, slip, coiling, mass, cop
):
    mule = hw.mill.mule_run(
        spindles=spindles, travel=f"{travel!r} in", let_in=f"{let_in!r} in", cycle=f"{cycle!r} s",
        count=f"{count!r} YSW", efficiency=efficiency, draft=draft, twist=f"{twist!r} tpi",
        slip=slip, coiling=coiling, mass=f"{mass!r} lb", cop=f"{cop!r} oz",
    )  # fmt: skip
    # Yorkshire skeins of 256 yards to the pound.
    wound = travel - let_in
    draw = spindles * wound / 36 / (256 * count)  # pounds in a draw
    hourly = 3600 / cycle * efficiency * draw
    near(mule["output"], "lb/h", hourly)
    near(mule["time"], "h", mass / hourly)
    near(mule["draws"], "", mass / draw)
    near(mule["slubbing_delivered"], "in", travel / draft)
    # The slubbing of a draw weighs what the yarn of it weighs.
    near(mule["slubbing"], "YSW", count * (travel / draft) / wound)
    # The spindle turns until what does not slip and is not spent in coiling is the twist.
    turns = mule["turns"].number("")
    assert (turns * (1 - slip) - coiling) / wound == pytest.approx(twist)
    near(mule["doffs"], "", whole_up(mass / (spindles * cop / 16)))
    full = mule["packages"].number("")
    assert full * cop + mule["rest"].number("oz") == pytest.approx(16 * mass)


@settings(max_examples=cases(40))
@given(
    spindles=st.integers(4, 400),
    speed=between(1000, 15000),
    twist=between(100, 1200),
    count=between(20, 400),
    efficiency=between(0.5, 0.99),
    full=between(40, 150),
    empty=between(15, 39),
    breaks=between(10, 300),
    piecing=between(8, 90),
    load=between(0.2, 0.9),
    patrol=between(5, 40),
)
def test_a_ring_frame(
    spindles, speed, twist, count, efficiency, full, empty, breaks, piecing, load, patrol
):
    frame = hw.mill.ring_frame_run(
        spindles=spindles, speed=f"{speed!r} rpm", twist=f"{twist!r} turns/m",
        count=f"{count!r} tex", efficiency=efficiency, full=f"{full!r} mm",
        empty=f"{empty!r} mm", breaks=breaks, piecing=f"{piecing!r} s", load=load,
        patrol=f"{patrol!r} min",
    )  # fmt: skip
    metres = spindles * 60 * efficiency * speed / twist
    near(frame["output"], "kg/h", metres * count / 1e6)
    for name, d in (("full", full), ("empty", empty)):
        circumference = math.pi * d / 1000
        coils = speed / twist / circumference  # wound on in a minute
        near(frame[f"lag_{name}"], "rpm", coils)
        near(frame[f"twist_{name}"], "turns/m", twist - 1 / circumference)
    near(frame["idle_share"], "%", 0.75 * (breaks / 10) * (patrol / 60))
    # A minder's seconds for broken ends, over those that a spindle asks for in an hour.
    each = 3600 * load / (breaks / 1000 * piecing)
    near(frame["spindles_per_person"], "", each)
    near(frame["people"], "", whole_up(spindles / each))


@settings(max_examples=cases(40))
@given(
    spindles=st.integers(4, 200),
    speed=between(1000, 9000),
    twist=between(2, 15),
    single=between(5, 40),
    ends=st.integers(2, 4),
    contraction=between(-0.02, 0.1),
    efficiency=between(0.5, 0.99),
    mass=between(5, 300),
    length=between(300, 9000),
    turns=st.integers(1, 2),
)
def test_a_twister_of_worsted(
    spindles, speed, twist, single, ends, contraction, efficiency, mass, length, turns
):
    # The fold: so many ends of a worsted count, shortened.
    fold = single / ends * (1 - contraction)
    twister = hw.mill.twister_run(
        spindles=spindles, speed=f"{speed!r} rpm", twist=f"{twist!r} tpi", turns=turns, ends=ends,
        count=f"{fold!r} worsted", contraction=contraction, efficiency=efficiency,
        mass=f"{mass!r} lb", package_length=f"{length!r} yd",
    )  # fmt: skip
    yards = spindles * turns * speed / twist / 36 * 60 * efficiency
    near(twister["output"], "lb/h", yards / (560 * fold))
    near(twister["single"], "worsted", single)
    near(twister["singles"], "yd", mass * 560 * single)
    package = length / (560 * fold)
    near(twister["package_mass"], "lb", package)
    near(twister["doffs"], "", whole_up(mass / package / spindles))


@settings(max_examples=cases(40))
@given(
    drums=st.integers(1, 60),
    speed=between(100, 1000),
    count=between(5, 80),
    efficiency=between(0.4, 0.99),
    mass=between(5, 2000),
    within=between(1, 40),
)
def test_a_winder_of_cotton(drums, speed, count, efficiency, mass, within):
    winder = hw.mill.winder_run(
        drums=drums, speed=f"{speed!r} yd/min", count=f"{count!r} Ne", efficiency=efficiency,
        mass=f"{mass!r} lb", within=f"{within!r} h", hank="840 yd",
    )  # fmt: skip
    hanks = speed * 60 * efficiency / 840
    near(winder["hanks"], "/h", hanks)
    near(winder["time"], "h", mass * count / (hanks * drums))
    needed = winder["drums_needed"].number("")
    assert needed >= 1
    assert needed == whole_up(mass * count / (hanks * within))


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


def test_a_reel_doff_by_doff():
    reel = hw.mill.reel_run(
        reel="54 in", positions=40, speed="150 rpm", change="5 min", count="16 YSW", hank="4 oz",
        mass="50 lb", reels=2, per_person=2,
    )  # fmt: skip
    turns = math.ceil(0.25 * 256 * 16 * 36 / 54)
    near(reel["turns_set"], "", turns)
    hank = turns * 54 / 36 / (256 * 16)
    hanks = math.floor(50 / hank)
    near(reel["hanks_made"], "", hanks)
    near(reel["rest"], "lb", 50 - hanks * hank)
    minutes, left = 0, hanks
    while left > 0:
        left -= 2 * 40
        minutes += turns / 150 + 5
    near(reel["time"], "min", minutes)
    near(reel["people"], "", 1)


def test_a_warp_section_by_section():
    warp = hw.mill.warping_run(
        ends=900, creel=144, length="60 m", speed="40 m/min", change="20 min", count="125 tex",
        package="500 g", beaming="15 m/min", set_up="90 min",
    )  # fmt: skip
    left, sections, minutes = 900, [], 90 + 60 / 15
    while left > 0:
        sections.append(min(left, 144))
        left -= sections[-1]
        minutes += 60 / 40 + 20
    assert [warp[n].number("") for n in ("sections", "last_section_ends")] == [7, sections[-1]]
    near(warp["time"], "min", minutes)
    near(warp["mass"], "g", 900 * 60 * 0.125)
    near(warp["bobbin_yarn"], "m", 7 * 60)


def test_efficiency_is_never_taken_twice():
    loom = {"speed": "90 picks/min", "picks": "4.6 picks/cm"}
    with pytest.raises(hw.NotationError, match="leave all but one out"):
        hw.mill.loom_run(**loom, efficiency="80 %", stops="6 /h", stop_time="2 min")
    with pytest.raises(hw.NotationError, match="stops are in the efficiency"):
        hw.mill.loom_run(**loom, efficiency="80 %", stop_time="2 min")
    mule = {"spindles": 120, "travel": "6 ft", "cycle": "22.5 s", "count": "150 tex"}
    bare = hw.mill.mule_run(**mule, efficiency="85 %")
    with_breaks = hw.mill.mule_run(**mule, efficiency="85 %", breaks=200, patrol="30 min")
    near(with_breaks["output"], "kg/h", bare["output"].number("kg/h"))
    assert "are not taken off again" in str(with_breaks)


@pytest.mark.filterwarnings("default::hankwise.RangeWarning")
def test_what_is_unusual_or_short_is_told():
    with pytest.warns(hw.RangeWarning, match="drums do not wind the lot within"):
        hw.mill.winder_run(
            drums=2, speed="300 m/min", count="310 tex", efficiency="70 %", mass="300 kg",
            within="4 h",
        )  # fmt: skip
    with pytest.warns(hw.RangeWarning, match="fewer than the 144 of the creel"):
        hw.mill.warping_run(ends=100, creel=144, length="60 m", speed="40 m/min", change="20 min")


def test_machines_tell_what_can_do_harm():
    mule = hw.mill.mule_run(
        spindles=120, travel="1.83 m", cycle="24 s", count="150 tex", efficiency="85 %"
    )
    text = str(mule)
    assert "The carriage traps" in text
    assert "local rules" in text


def test_a_workbook_is_written(tmp_path):
    path = tmp_path / "loom.xlsx"
    loom = hw.mill.loom_run(speed="90 picks/min", picks="4.6 picks/cm", efficiency="75 %")
    loom.to_sheet(path)
    assert path.stat().st_size > 0
    assert "loom_delivery_speed" in str(loom.working("cloth"))
