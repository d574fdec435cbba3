//! The mule at work.

use super::asks::{BREAKS, EFFICIENCY, LOAD, MASS, PATROL, PIECING, WASTE, each};
use super::common::{doffs, lot, minding};
use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::mill;
use crate::quantity::{Count, Kind, Length, LinearDensity};

pub(super) static MULE: Job = Job {
    name: "mule_run",
    module: module_path!(),
    title: "The mule at work",
    summary: "The mule at work: draws, output, doffs, hours, broken ends and people.",
    details: "Give `mass` for a lot and `waste` for what is lost of what is fed, `draft` or `delivered` for the slubbing, `twist` for the spindle turns, `cop` for the doffs. `breaks` are for a thousand spindle hours; with the time of a round (`patrol`) they tell the spindles idle, with `piecing` and `load` the spindles that a minder can piece for. The efficiency takes in idle spindles and doffs: nothing is taken off twice.",
    example: ">>> import hankwise as hw\n\
>>> mule = hw.mill.mule_run(spindles=120, travel=\"6 ft\", cycle=\"22.5 s\", count=\"150 tex\",\n\
...                         efficiency=\"85 %\", draft=1.4, mass=\"30 kg\", cop=\"90 g\")\n\
>>> mule[\"output\"], mule[\"time\"], mule[\"doffs\"]\n\
(<mass per time: 4.477 kg/h>, <time: 6.701 h>, <number: 3>)",
    asks: &[
        Ask::need("spindles", "k", "spindles at work", Kind::Count, (20.0, 600.0), "120"),
        Ask::need("travel", "S", "travel of the carriage", Kind::Length, (1.5, 2.3), "\"1.83 m\""),
        Ask::need(
            "cycle",
            "τ",
            "time of a draw, out and in",
            Kind::Duration,
            (0.004, 0.015),
            "\"22.5 s\"",
        ),
        Ask::need(
            "count",
            "T",
            "count of the single as spun",
            Kind::LinearDensity,
            (30.0, 1000.0),
            "\"150 tex\"",
        ),
        Ask { usual: (0.75, 0.9), ..EFFICIENCY }.memory(),
        Ask::may("let_in", "g", "let-in of the carriage", Kind::Length, (0.0, 0.15)).or(0.0),
        Ask::may("draft", "D", "draft", Kind::Ratio, (1.2, 1.5)),
        Ask::may("delivered", "d", "slubbing delivered in a draw", Kind::Length, (0.9, 2.2)),
        Ask::may("twist", "t", "twist wanted", Kind::Twist, (60.0, 1000.0)),
        Ask::may("slip", "x", "slip of the bands", Kind::Fraction, (0.0, 0.08)).or(0.0),
        Ask::may(
            "coiling",
            "b",
            "turns spent in coiling to the spindle tip",
            Kind::Count,
            (0.0, 15.0),
        )
        .broken()
        .or(0.0),
        MASS,
        WASTE,
        Ask::may("cop", "g_c", "yarn on a full cop", Kind::Mass, (0.02, 0.6)),
        BREAKS,
        PATROL,
        PIECING,
        LOAD,
        each("spindles that a person minds"),
    ],
    cautions: &["mule", "machines"],
    work,
};

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (spindles, travel): (Count<_>, Length<_>) = (job.get("spindles"), job.get("travel"));
    let count: LinearDensity<_> = job.get("count");
    let let_in: Length<_> = job.get("let_in");
    if let_in.value() >= travel.value() {
        return Err(Error::range(format!(
            "let_in: the carriage is let in by {} of a travel of {}, and nothing is wound; write less",
            job.say(let_in.value(), Kind::Length),
            job.say(travel.value(), Kind::Length)
        )));
    }
    job.block("Settings");
    let wound = job.name("wound", "yarn wound in a draw", mill::wound_length(travel, let_in));
    if job.at_most_one(&["draft", "delivered"], "the draft")? {
        let delivered = if job.has("delivered") {
            let delivered = job.get("delivered");
            job.name("draft_set", "draft", mill::mule_draft(travel, delivered));
            delivered
        } else {
            let delivered = mill::delivery_for_draft(travel, job.get("draft"));
            job.name("slubbing_delivered", "slubbing to deliver in a draw", delivered)
        };
        if delivered.value() > travel.value() * (1.0 + 1e-9) {
            return Err(Error::range(format!(
                "the rollers would deliver {} to a travel of {}, a draft under 1: the yarn hangs slack; \
                 write a draft of 1.2 to 1.5, or a delivery below the travel",
                job.say(delivered.value(), Kind::Length),
                job.say(travel.value(), Kind::Length)
            )));
        }
        let slubbing = mill::slubbing_for_single(count, wound, delivered);
        job.name("slubbing", "count of the slubbing", slubbing);
    }
    if job.has("twist") {
        let slip = job.get::<crate::quantity::Fraction<_>>("slip");
        if slip.value() >= 1.0 {
            return Err(Error::range(
                "slip: the bands slip the whole way, and no spindle turns; write less",
            ));
        }
        let turns = mill::turns_per_draw(job.get("twist"), wound, job.get("coiling"), slip);
        job.name("turns", "spindle turns in a draw, without slip", turns);
    }
    job.block("Output");
    let cycle = job.get("cycle");
    job.name("draws_per_minute", "draws in a minute, running", mill::draw_rate(cycle));
    let output = mill::mule_output(spindles, wound, cycle, count, job.get("efficiency"));
    let output = job.name("output", "output", output);
    if job.has("cop") {
        let interval = mill::doff_interval(spindles, job.get("cop"), output);
        job.name("doff_interval", "from doff to doff", interval);
    }
    let lot = lot(job, output, count)?;
    if let Some(lot) = &lot {
        let length = crate::yarn::length_of_mass(lot.mass, count);
        job.name("draws", "draws", mill::draws(length, spindles, wound));
    }
    if job.has("cop") {
        doffs(job, spindles, job.get("cop"), lot.as_ref());
    }
    minding(job, spindles, lot.as_ref())
}
