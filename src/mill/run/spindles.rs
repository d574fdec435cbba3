//! The ring frame and the twister at work.

use super::asks::{BREAKS, EFFICIENCY, LOAD, MASS, PATROL, PIECING, WASTE, each};
use super::common::{doffs, lot, minding};
use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::quantity::{Count, Frequency, Kind, Length, LinearDensity, Mass, MassRate, Twist};
use crate::worked::Worked;
use crate::{mill, yarn};

const SPINDLES: Ask =
    Ask::need("spindles", "k", "spindles at work", Kind::Count, (4.0, 1200.0), "60");
const SPEED: Ask =
    Ask::need("speed", "n", "spindle speed", Kind::Frequency, (800.0, 20000.0), "\"5000 rpm\"");
const TWIST: Ask = Ask::need("twist", "t", "twist", Kind::Twist, (40.0, 2500.0), "\"300 turns/m\"");
const PACKAGE: Ask =
    Ask::may("package", "g", "yarn on a full package, net", Kind::Mass, (0.02, 5.0));

const PACKAGE_LENGTH: Ask =
    Ask::may("package_length", "l_p", "yarn on a full package", Kind::Length, (100.0, 50000.0));

pub(super) static RING_FRAME: Job = Job {
    name: "ring_frame_run",
    module: module_path!(),
    title: "The ring frame at work",
    summary: "The ring frame at work: delivery, lag of the traveller, output, doffs, hours, people.",
    details: "`full` and `empty` are the diameters of package and tube, for what the traveller lags and the twist as it lies there. Other figures as for `mule_run`.",
    example: ">>> import hankwise as hw\n\
>>> frame = hw.mill.ring_frame_run(spindles=100, speed=\"5000 rpm\", twist=\"300 turns/m\",\n\
...                                count=\"150 tex\", efficiency=\"85 %\", full=\"46 mm\", empty=\"25 mm\")\n\
>>> frame[\"output\"], frame[\"lag_empty\"]\n\
(<mass per time: 12.75 kg/h>, <rate per minute: 212.2 /min>)",
    asks: &[
        SPINDLES,
        Ask { usual: (3000.0, 20000.0), ..SPEED },
        TWIST,
        Ask::need(
            "count",
            "T",
            "count of the yarn as spun",
            Kind::LinearDensity,
            (5.0, 1000.0),
            "\"150 tex\"",
        ),
        EFFICIENCY,
        Ask::may("draft", "D", "draft", Kind::Ratio, (1.1, 50.0)),
        Ask::may("full", "d₁", "diameter of the full package", Kind::Length, (0.03, 0.2)),
        Ask::may("empty", "d₂", "diameter of the empty tube", Kind::Length, (0.012, 0.08)),
        Ask::may("hank", "l", "length of a hank", Kind::Length, (50.0, 20000.0)),
        MASS,
        WASTE,
        PACKAGE,
        PACKAGE_LENGTH,
        BREAKS,
        PATROL,
        PIECING,
        LOAD,
        each("spindles that a person minds"),
    ],
    cautions: &["machines"],
    work: ring_frame,
};

pub(super) static TWISTER: Job = Job {
    name: "twister_run",
    module: module_path!(),
    title: "The twister at work",
    summary: "The twister at work: single to feed, output, doffs, packages, hours, people.",
    details: "`turns` of twist in a revolution are 2 on a two-for-one spindle. `contraction` is on the untwisted length; `count` is that of the folded yarn. A package is told by its net mass (`package`) or `package_length`.",
    example: ">>> import hankwise as hw\n\
>>> twister = hw.mill.twister_run(spindles=40, speed=\"2400 rpm\", twist=\"130 turns/m\", ends=2,\n\
...                               count=\"310 tex\", efficiency=\"80 %\", mass=\"30 kg\", package=\"1.1 kg\")\n\
>>> twister[\"time\"], twister[\"packages\"], twister[\"rest\"]\n\
(<time: 2.730 h>, <number: 27>, <mass: 0.3 kg>)",
    asks: &[
        SPINDLES,
        SPEED,
        TWIST,
        Ask::need(
            "count",
            "T",
            "count of the folded yarn",
            Kind::LinearDensity,
            (5.0, 3000.0),
            "\"300 tex\"",
        ),
        EFFICIENCY,
        Ask::may(
            "turns",
            "q",
            "turns of twist in a revolution: 2 on a two-for-one spindle",
            Kind::Count,
            (1.0, 2.0),
        )
        .or(1.0),
        Ask::may("ends", "n", "ends folded", Kind::Count, (2.0, 12.0)),
        Ask::may(
            "contraction",
            "c",
            "contraction in folding, on the untwisted length",
            Kind::Contraction,
            (-0.02, 0.12),
        )
        .or(0.0),
        MASS,
        WASTE,
        PACKAGE,
        PACKAGE_LENGTH,
        BREAKS,
        PATROL,
        PIECING,
        LOAD,
        each("spindles that a person minds"),
    ],
    cautions: &["machines"],
    work: twister,
};

fn ring_frame(job: &Work<'_, '_>) -> Result<()> {
    let (spindles, speed): (Count<_>, Frequency<_>) = (job.get("spindles"), job.get("speed"));
    let (twist, count): (Twist<_>, LinearDensity<_>) = (job.get("twist"), job.get("count"));
    let efficiency = job.get("efficiency");
    job.block("Settings");
    let delivery = mill::delivery_for_twist(speed, Work::plain(1.0), twist);
    let delivery = job.name("delivery", "delivery of a spindle, running", delivery);
    if job.has("draft") {
        let fed = mill::fed_count(count, Work::plain(1.0), Work::plain(0.0), job.get("draft"));
        job.name("count_fed", "count of the slubbing or roving", fed);
    }
    job.needs("full", "empty")?;
    job.needs("empty", "full")?;
    if job.has("full") {
        let (full, empty): (Length<_>, Length<_>) = (job.get("full"), job.get("empty"));
        if empty.value() >= full.value() {
            return Err(Error::range(
                "empty: the tube is as thick as the full package; are full and empty exchanged?",
            ));
        }
        let coil = yarn::twist_of_a_coil(empty);
        if coil.value() >= twist.value() {
            return Err(Error::range(format!(
                "twist: with {} a ring spindle delivers more than it can wind on the empty tube, where \
                 a coil alone takes {}; write more twist or a thicker tube",
                job.say(twist.value(), Kind::Twist),
                job.say(coil.value(), Kind::Twist)
            )));
        }
        let lag = yarn::winding_lag(delivery, full);
        job.name("lag_full", "lag of the traveller at the full package", lag);
        let lag = yarn::winding_lag(delivery, empty);
        job.name("lag_empty", "lag of the traveller at the empty tube", lag);
        let at_full = yarn::twist_on_ring_bobbin(speed, delivery, full);
        let at_full = job.name("twist_full", "twist as it lies on the full package", at_full);
        let at_empty = yarn::twist_on_ring_bobbin(speed, delivery, empty);
        let at_empty = job.name("twist_empty", "twist as it lies on the empty tube", at_empty);
        let step = Twist::from(at_full.v() - at_empty.v());
        job.name("twist_step", "difference of the two", step);
        job.note("Unwinding over the end gives the whole twist back; from the side it does not.");
    }
    job.block("Output");
    let output = mill::spindle_frame_output(spindles, speed, twist, count, efficiency);
    let output = job.name("output", "output", output);
    if job.has("hank") {
        let hanks =
            mill::hanks_of_spindle(speed, twist, Work::plain(1.0), efficiency, job.get("hank"));
        job.name("hanks", "hanks of a spindle in an hour", hanks);
    }
    finish(job, spindles, output, count, None)
}

/// Doffs, the lot, people: what frame and twister have in common.
fn finish<'t>(
    job: &Work<'_, 't>,
    spindles: Count<Worked<'t>>,
    output: MassRate<Worked<'t>>,
    count: LinearDensity<Worked<'t>>,
    singles: Option<&dyn Fn(Mass<Worked<'t>>)>,
) -> Result<()> {
    job.at_most_one(&["package", "package_length"], "what a package holds")?;
    let package = if job.has("package_length") {
        let mass = yarn::mass_of_length(count, job.get("package_length"));
        Some(job.name("package_mass", "yarn on a full package", mass))
    } else {
        job.has("package").then(|| job.get("package"))
    };
    if let Some(package) = package {
        let interval = mill::doff_interval(spindles, package, output);
        job.name("doff_interval", "from doff to doff", interval);
    }
    let lot = lot(job, output, count)?;
    if let (Some(singles), Some(lot)) = (singles, &lot) {
        singles(lot.fed);
    }
    if let Some(package) = package {
        doffs(job, spindles, package, lot.as_ref());
    }
    minding(job, spindles, lot.as_ref())
}

fn twister<'t>(job: &Work<'_, 't>) -> Result<()> {
    let (spindles, speed): (Count<_>, Frequency<_>) = (job.get("spindles"), job.get("speed"));
    let (twist, count): (Twist<_>, LinearDensity<_>) = (job.get("twist"), job.get("count"));
    let turns: Count<_> = job.get("turns");
    if turns.value() > 2.0 {
        return Err(Error::range(
            "turns: a spindle puts in one turn of twist a revolution, a two-for-one two; write 1 or 2",
        ));
    }
    job.needs("contraction", "ends")?;
    job.block("Settings");
    let delivery = mill::delivery_for_twist(speed, turns, twist);
    job.name("delivery", "delivery of a spindle, running", delivery);
    if job.has("ends") {
        let single = yarn::single_for_fold(count, job.get("ends"), job.get("contraction"));
        job.name("single", "count of the single", single);
    }
    job.block("Output");
    // Twist goes in as often as the spindle turns, on a two-for-one twice as often.
    let twisting = Frequency::from(turns.v() * speed.v());
    let twisting = job.name("twisting", "turns of twist in a minute", twisting);
    let yarn_out = mill::twister_output_speed(spindles, twisting, twist, job.get("efficiency"));
    let yarn_out = job.name("yarn_out", "yarn delivered, all spindles", yarn_out);
    let output = mill::output_of_yarn(yarn_out, count);
    let output = job.name("output", "output", output);
    let singles = |fed: Mass<Worked<'t>>| {
        let folded = yarn::length_of_mass(fed, count);
        let singles = yarn::singles_length(folded, job.get("ends"), job.get("contraction"));
        job.name("singles", "singles to have ready, all ends, waste in it", singles);
    };
    let singles: Option<&dyn Fn(Mass<_>)> = if job.has("ends") { Some(&singles) } else { None };
    finish(job, spindles, output, count, singles)
}
