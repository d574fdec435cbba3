"""Machines that make and handle yarn, against plain arithmetic: turns, draws, sections.

Nothing below uses the library's formulas: each sum is done again from what happens at the machine,
with other numbers on the way than the library takes.
"""

import math
import pickle

import hankwise as hw
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st

pytestmark = pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")


def between(low, high):
    return st.floats(low, high, allow_nan=False)


def near(quantity, unit, expected):
    assert quantity.number(unit) == pytest.approx(expected, rel=1e-9, abs=1e-12)


def whole_up(x):
    """Rounded up, a millionth being the rounding of binary numbers."""
    return math.ceil(x - 1e-6)


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
    mule = hw.mill.mule(
        spindles=spindles, travel=f"{travel!r} in", let_in=f"{let_in!r} in", cycle=f"{cycle!r} s",
        count=f"{count!r} YSW", efficiency=efficiency, wanted_draft=draft,
        wanted_twist=f"{twist!r} tpi",
        slip=slip, coiling=coiling, yarn_mass=f"{mass!r} lb", package_mass=f"{cop!r} oz",
    )  # fmt: skip
    # Yorkshire skeins of 256 yards to the pound.
    wound = travel - let_in
    draw = spindles * wound / 36 / (256 * count)  # pounds in a draw
    hourly = 3600 / cycle * efficiency * draw
    near(mule["output"], "lb/h", hourly)
    near(mule["time"], "h", mass / hourly)
    near(mule["draws"], "", mass / draw)
    near(mule["delivered_length"], "in", travel / draft)
    # The slubbing of a draw weighs what the yarn of it weighs.
    near(mule["slubbing_count"], "YSW", count * (travel / draft) / wound)
    # The spindle turns until what does not slip and is not spent in coiling is the twist.
    turns = mule["spindle_turns"].number("")
    assert (turns * (1 - slip) - coiling) / wound == pytest.approx(twist)
    near(mule["doffs"], "", whole_up(mass / (spindles * cop / 16)))
    full = mule["packages"].number("")
    assert full % spindles == 0
    assert full * cop + mule["left_over"].number("oz") == pytest.approx(16 * mass)


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
    frame = hw.mill.ring_frame(
        spindles=spindles, spindle_speed=f"{speed!r} rpm", twist=f"{twist!r} turns/m",
        count=f"{count!r} tex", efficiency=efficiency, full_diameter=f"{full!r} mm",
        empty_diameter=f"{empty!r} mm", break_rate=breaks, piecing_time=f"{piecing!r} s",
        work_load=load, patrol_time=f"{patrol!r} min",
    )  # fmt: skip
    metres = spindles * 60 * efficiency * speed / twist
    near(frame["output"], "kg/h", metres * count / 1e6)
    for name, d in (("full", full), ("empty", empty)):
        circumference = math.pi * d / 1000
        coils = speed / twist / circumference  # wound on in a minute
        near(frame[f"{name}_lag"], "rpm", coils)
        near(frame[f"{name}_twist"], "turns/m", twist - 1 / circumference)
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
    twister = hw.mill.twister(
        spindles=spindles, spindle_speed=f"{speed!r} rpm", twist=f"{twist!r} tpi", ends=ends,
        resultant_count=f"{fold!r} worsted", contraction=contraction, efficiency=efficiency,
        yarn_mass=f"{mass!r} lb", package_length=f"{length!r} yd",
        spindle_type="two-for-one" if turns == 2 else "ordinary",
    )  # fmt: skip
    yards = spindles * turns * speed / twist / 36 * 60 * efficiency
    near(twister["output"], "lb/h", yards / (560 * fold))
    near(twister["single_count"], "worsted", single)
    near(twister["singles_length"], "yd", mass * 560 * single)
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
    winder = hw.mill.winder(
        drums=drums, winding_speed=f"{speed!r} yd/min", count=f"{count!r} Ne",
        efficiency=efficiency,
        yarn_mass=f"{mass!r} lb", time_allowed=f"{within!r} h", hank_length="840 yd",
    )  # fmt: skip
    hanks = speed * 60 * efficiency / 840
    near(winder["hank_rate"], "hanks/h", hanks)
    near(winder["time"], "h", mass * count / (hanks * drums))
    needed = winder["drums_needed"].number("")
    assert needed >= 1
    assert needed == whole_up(mass * count / (hanks * within))


def test_a_reel_doff_by_doff():
    reel = hw.mill.reel(
        reel_circumference="54 in", positions=40, reel_speed="150 rpm", change_time="5 min",
        count="16 YSW", wanted_hank_mass="4 oz",
        yarn_mass="50 lb", reels=2, per_person=2,
    )  # fmt: skip
    turns = math.ceil(0.25 * 256 * 16 * 36 / 54)
    near(reel["reel_turns"], "", turns)
    hank = turns * 54 / 36 / (256 * 16)
    hanks = math.floor(50 / hank)
    near(reel["hanks"], "", hanks)
    near(reel["left_over"], "lb", 50 - hanks * hank)
    minutes, left = 0, hanks
    while left > 0:
        left -= 2 * 40
        minutes += turns / 150 + 5
    near(reel["time"], "min", minutes)
    near(reel["people"], "", 1)


def test_a_warp_section_by_section():
    warp = hw.mill.warping(
        ends=900, creel=144, warp_length="60 m", warping_speed="40 m/min",
        change_time="20 min", warp_count="125 tex",
        bobbin_mass="500 g", beaming_speed="15 m/min", set_up_time="90 min",
    )  # fmt: skip
    left, sections, minutes = 900, [], 90 + 60 / 15
    while left > 0:
        sections.append(min(left, 144))
        left -= sections[-1]
        minutes += 60 / 40 + 20
    assert [warp[n].number("") for n in ("sections", "last_section_ends")] == [7, sections[-1]]
    near(warp["time"], "min", minutes)
    near(warp["warp_mass"], "g", 900 * 60 * 0.125)
    near(warp["length_per_bobbin"], "m", 7 * 60)


def test_an_efficiency_is_never_taken_twice():
    mule = {"spindles": 120, "travel": "6 ft", "cycle": "22.5 s", "count": "150 tex"}
    bare = hw.mill.mule(**mule, efficiency="85 %")
    with_breaks = hw.mill.mule(**mule, efficiency="85 %", break_rate=200, patrol_time="30 min")
    near(with_breaks["output"], "kg/h", bare["output"].number("kg/h"))
    assert "are not taken off again" in str(with_breaks)


@pytest.mark.filterwarnings("default::hankwise.RangeWarning")
def test_what_is_unusual_or_short_is_said():
    with pytest.warns(hw.RangeWarning, match="drums do not wind the lot within"):
        hw.mill.winder(
            drums=2, winding_speed="300 m/min", count="310 tex", efficiency="70 %",
            yarn_mass="300 kg", time_allowed="4 h",
        )  # fmt: skip
    with pytest.warns(hw.RangeWarning, match="fewer than the 144 of the creel"):
        hw.mill.warping(
            ends=100, creel=144, warp_length="60 m", warping_speed="40 m/min",
            change_time="20 min",
        )  # fmt: skip


def test_a_mule_says_what_can_do_harm():
    mule = hw.mill.mule(
        spindles=120, travel="1.83 m", cycle="24 s", count="150 tex", efficiency="85 %"
    )
    text = str(mule)
    assert "The carriage traps" in text
    assert "local rules" in text


def test_a_reel_in_columns_and_from_a_pickle():
    reel = {"reel_circumference": "1.5 m", "positions": 20, "change_time": "8 min"}
    reel |= {"count": "310 tex", "wanted_hank_mass": "105 g", "yarn_mass": "30 kg"}
    speeds = ["90 rpm", "120 rpm", "150 rpm"]
    many = hw.mill.reel(**reel, reel_speed=speeds)
    for place, speed in enumerate(speeds):
        one = hw.mill.reel(**reel, reel_speed=speed)
        assert many["time"].number("h")[place] == one["time"].number("h")
    again = pickle.loads(pickle.dumps(many))
    assert (again["time"].number("h") == many["time"].number("h")).all()


def test_a_twister_takes_the_nearest_wheel():
    twister = {"spindles": 40, "spindle_speed": "2400 rpm", "efficiency": "80 %"}
    twister |= {"resultant_count": "310 tex", "wanted_twist": "125 turns/m"}
    found = hw.mill.twister(**twister, twist_constant="4320 turns/m", twist_wheels=[32, 35, 40])
    # 34.56 teeth wanted.
    near(found["twist_wheel"], "", 35)
    near(found["twist"], "turns/m", 4320 / 35)
    near(found["output"], "kg/h", 40 * 2400 / (4320 / 35) * 0.8 * 60 * 310 / 1e6)


def test_hanks_are_said_for_an_hour():
    # 900 yd/min × 60 × 90 % are 48,600 yd: 57.86 hanks of 840 yd.
    given = {"winding_speed": "900 yd/min", "efficiency": "90 %", "hank_length": "840 yd"}
    assert str(hw.mill.hank_rate(**given)).startswith("57.86 hanks/h")
    assert "= 57.86 hanks/h" in hw.mill.hank_rate.working(**given).text()
