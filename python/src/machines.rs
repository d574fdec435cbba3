//! Machines at work.

use hankwise::mill::AtWork as Machine;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::errors::raise;
use crate::inputs::{locate, one_figure};
use crate::particulars::Particulars;

/// Runs a machine with what was given by name.
fn run(py: Python<'_>, name: &str, given: Option<&Bound<'_, PyDict>>) -> PyResult<Particulars> {
    let located = |e: hankwise::Error| raise(&e.at(name));
    let machine = Machine::named(name).map_err(located)?;
    let mut figures: Vec<(String, _, _)> = Vec::new();
    for (key, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let key: String = key.extract()?;
        let kind = machine.kind(&key).map_err(located)?;
        if value.is_none() {
            continue;
        }
        let (amount, typed) = one_figure(&value, kind).map_err(|e| locate(py, name, &key, e))?;
        figures.push((key, amount, typed));
    }
    let given: Vec<_> =
        figures.iter().map(|(key, amount, typed)| (key.as_str(), *amount, typed.clone())).collect();
    Particulars::hand_over(py, machine.run(&given).map_err(|e| e.at(name)))
}

macro_rules! machine {
    ($(#[$doc:meta])* $name:ident, $signature:literal) => {
        $(#[$doc])*
        #[pyfunction]
        #[pyo3(signature = (**given), text_signature = $signature)]
        pub(crate) fn $name(
            py: Python<'_>,
            given: Option<&Bound<'_, PyDict>>,
        ) -> PyResult<Particulars> {
            run(py, stringify!($name), given)
        }
    };
}

machine!(
    /// mule_run(*, spindles, travel, cycle, count, efficiency, let_in=0, draft=None, delivered=None,
    ///     twist=None, slip=0, coiling=0, mass=None, waste=None, cop=None, breaks=None, patrol=None,
    ///     piecing=None, load=None, per_person=None)
    /// --
    ///
    /// The mule at work: draws, output, doffs, hours, broken ends and people.
    ///
    /// Give `mass` for a lot and `waste` for what is lost of what is fed, `draft` or `delivered` for the
    /// slubbing, `twist` for the spindle turns, `cop` for the doffs. `breaks` are for a thousand spindle hours;
    /// with the time of a round (`patrol`) they tell the spindles idle, with `piecing` and `load` the spindles
    /// that a minder can piece for. The efficiency takes in idle spindles and doffs: nothing is taken off twice.
    ///
    /// >>> import hankwise as hw
    /// >>> mule = hw.mill.mule_run(spindles=120, travel="6 ft", cycle="22.5 s", count="150 tex",
    /// ...                         efficiency="85 %", draft=1.4, mass="30 kg", cop="90 g")
    /// >>> mule["output"], mule["time"], mule["doffs"]
    /// (<mass per time: 4.477 kg/h>, <time: 6.701 h>, <number: 3>)
    mule_run,
    "(*, spindles, travel, cycle, count, efficiency, let_in=0, draft=None, \
         delivered=None, twist=None, slip=0, coiling=0, mass=None, waste=None, cop=None, \
         breaks=None, patrol=None, piecing=None, load=None, per_person=None)"
);

machine!(
    /// ring_frame_run(*, spindles, speed, twist, count, efficiency, draft=None, full=None, empty=None,
    ///     hank=None, mass=None, waste=None, package=None, package_length=None, breaks=None,
    ///     patrol=None, piecing=None, load=None, per_person=None)
    /// --
    ///
    /// The ring frame at work: delivery, lag of the traveller, output, doffs, hours, people.
    ///
    /// `full` and `empty` are the diameters of package and tube, for what the traveller lags and the twist as it
    /// lies there. Other figures as for `mule_run`.
    ///
    /// >>> import hankwise as hw
    /// >>> frame = hw.mill.ring_frame_run(spindles=100, speed="5000 rpm", twist="300 turns/m",
    /// ...                                count="150 tex", efficiency="85 %", full="46 mm", empty="25 mm")
    /// >>> frame["output"], frame["lag_empty"]
    /// (<mass per time: 12.75 kg/h>, <rate per minute: 212.2 /min>)
    ring_frame_run,
    "(*, spindles, speed, twist, count, efficiency, draft=None, full=None, \
         empty=None, hank=None, mass=None, waste=None, package=None, package_length=None, \
         breaks=None, patrol=None, piecing=None, load=None, per_person=None)"
);

machine!(
    /// twister_run(*, spindles, speed, twist, count, efficiency, turns=1, ends=None, contraction=0,
    ///     mass=None, waste=None, package=None, package_length=None, breaks=None, patrol=None,
    ///     piecing=None, load=None, per_person=None)
    /// --
    ///
    /// The twister at work: single to feed, output, doffs, packages, hours, people.
    ///
    /// `turns` of twist in a revolution are 2 on a two-for-one spindle. `contraction` is on the untwisted length;
    /// `count` is that of the folded yarn. A package is told by its net mass (`package`) or `package_length`.
    ///
    /// >>> import hankwise as hw
    /// >>> twister = hw.mill.twister_run(spindles=40, speed="2400 rpm", twist="130 turns/m", ends=2,
    /// ...                               count="310 tex", efficiency="80 %", mass="30 kg", package="1.1 kg")
    /// >>> twister["time"], twister["packages"], twister["rest"]
    /// (<time: 2.730 h>, <number: 27>, <mass: 0.3 kg>)
    twister_run,
    "(*, spindles, speed, twist, count, efficiency, turns=1, ends=None, \
         contraction=0, mass=None, waste=None, package=None, package_length=None, \
         breaks=None, patrol=None, piecing=None, load=None, per_person=None)"
);

machine!(
    /// winder_run(*, drums, speed, count, efficiency, mass=None, waste=None, package=None,
    ///     package_length=None, bobbin=None, hank=None, within=None, per_person=None)
    /// --
    ///
    /// The winder at work: output, time of a cone, whole cones of a lot and what is over, drums, hours.
    ///
    /// `package` is the yarn on a full cone, net, `bobbin` what is wound off, `within` the time in which the lot
    /// is wanted, `hank` the length of a hank for hanks in an hour.
    ///
    /// >>> import hankwise as hw
    /// >>> winder = hw.mill.winder_run(drums=12, speed="300 m/min", count="310 tex", efficiency="70 %",
    /// ...                             mass="30 kg", package="1.2 kg", within="1 h")
    /// >>> winder["packages"], winder["drums_needed"]
    /// (<number: 25>, <number: 8>)
    winder_run,
    "(*, drums, speed, count, efficiency, mass=None, waste=None, package=None, \
         package_length=None, bobbin=None, hank=None, within=None, per_person=None)"
);

machine!(
    /// reel_run(*, reel, positions, speed, change, count, hank=None, turns=None, mass=None,
    ///     hanks=None, waste=None, reels=1, per_person=None)
    /// --
    ///
    /// The reel at work: turns of a hank, hanks, doffs, hours, people.
    ///
    /// `hank` is the mass of a hank as it comes off the reel, in the state of `count`; or give its `turns`.
    /// `change` is the time between doffs; no efficiency comes on top. `mass` or `hanks` is the lot.
    ///
    /// >>> import hankwise as hw
    /// >>> reel = hw.mill.reel_run(reel="1.5 m", positions=20, speed="120 rpm", change="8 min",
    /// ...                         count="310 tex", hank="105 g", mass="30 kg")
    /// >>> reel["turns_set"], reel["hanks_made"], reel["doffs"]
    /// (<number: 226>, <number: 285>, <number: 15>)
    reel_run,
    "(*, reel, positions, speed, change, count, hank=None, turns=None, mass=None, \
         hanks=None, waste=None, reels=1, per_person=None)"
);

machine!(
    /// warping_run(*, ends, creel, length, speed, change, width=None, count=None, package=None,
    ///     stretch=None, beaming=None, set_up=None, machines=1, per_person=None)
    /// --
    ///
    /// Warping in sections: sections, yarn and bobbins for the creel, hours.
    ///
    /// `change` is the time for a section beside running, `beaming` the speed of beaming, `set_up` the time to
    /// creel, once; no efficiency comes on top.
    ///
    /// >>> import hankwise as hw
    /// >>> warp = hw.mill.warping_run(ends=864, creel=144, length="60 m", speed="40 m/min", change="20 min",
    /// ...                            width="36.5 in")
    /// >>> warp["sections"], warp["ends_set"].to("ends/in")
    /// (<number: 6>, <sett: 23.67 threads/in>)
    warping_run,
    "(*, ends, creel, length, speed, change, width=None, count=None, package=None, \
         stretch=None, beaming=None, set_up=None, machines=1, per_person=None)"
);

machine!(
    /// loom_run(*, speed, picks, efficiency=None, stops=None, stops_of_picks=None, stop_time=None,
    ///     width=None, weft=None, length=None, looms=1, attention=None, load=None, per_person=None)
    /// --
    ///
    /// The loom at work: efficiency from its stops, cloth and weft in an hour, hours, looms of a weaver.
    ///
    /// Give the `efficiency`, or the stops in an hour of running (`stops`) or in a hundred thousand picks
    /// (`stops_of_picks`) with `stop_time`: never both, for the stops are in the efficiency. `attention` is the
    /// weaver's own time for a stop, `load` the share of the weaver's time for stops.
    ///
    /// >>> import hankwise as hw
    /// >>> loom = hw.mill.loom_run(speed="90 picks/min", picks="4.6 picks/cm", stops="6 /h",
    /// ...                         stop_time="2 min", attention="1 min", load="70 %")
    /// >>> loom["efficiency_found"], loom["cloth"], loom["looms_per_person"]
    /// (<fraction: 83.33 %>, <length: 9.783 m>, <number: 8>)
    loom_run,
    "(*, speed, picks, efficiency=None, stops=None, stops_of_picks=None, \
         stop_time=None, width=None, weft=None, length=None, looms=1, attention=None, \
         load=None, per_person=None)"
);

machine!(
    /// cloth_run(*, length, speed, passages=1, change=0, machines=1, per_person=None)
    /// --
    ///
    /// Cloth through a machine, several times if need be: length run and hours.
    ///
    /// `change` is the time for a passage beside running, to sew on and thread; no efficiency comes on top.
    ///
    /// >>> import hankwise as hw
    /// >>> hw.mill.cloth_run(length="60 m", speed="8 m/min", passages=4, change="10 min")["time"]
    /// <time: 1.167 h>
    cloth_run,
    "(*, length, speed, passages=1, change=0, machines=1, per_person=None)"
);

machine!(
    /// batch_run(*, mass, capacity, running, change=0, waste=None, machines=1, per_person=None)
    /// --
    ///
    /// Goods in loads: whole loads, even ones, hours.
    ///
    /// `mass` is what comes out good and `capacity` the largest load, both in one state; `running` and `change`
    /// are the times of a load. A load that is part full takes the whole time.
    ///
    /// >>> import hankwise as hw
    /// >>> batch = hw.mill.batch_run(mass="40 kg", capacity="12 kg", running="45 min", change="15 min")
    /// >>> batch["loads"], batch["even_load"], batch["time"]
    /// (<number: 4>, <mass: 10 kg>, <time: 4 h>)
    batch_run,
    "(*, mass, capacity, running, change=0, waste=None, machines=1, per_person=None)"
);

machine!(
    /// dryer_run(*, mass, before, after, evaporation, efficiency="100 %", machines=1, per_person=None)
    /// --
    ///
    /// The dryer at work: water to dry off and the hours for it.
    ///
    /// `mass` is oven-dry, `before` and `after` the water on it as a regain, `evaporation` what your dryer takes
    /// off in an hour, measured: weigh a load before and after.
    ///
    /// >>> import hankwise as hw
    /// >>> dryer = hw.mill.dryer_run(mass="40 kg", before="60 %", after="16 %", evaporation="15 kg/h")
    /// >>> dryer["water"], dryer["time"]
    /// (<mass: 17.6 kg>, <time: 1.173 h>)
    dryer_run,
    "(*, mass, before, after, evaporation, efficiency=\"100 %\", machines=1, per_person=None)"
);
