//! The reel at work.

use super::asks::{MASS, WASTE, each};
use super::common::{fed, people};
use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::quantity::{Count, Duration, Kind, Length, LinearDensity, Mass, Shrinkage};
use crate::{mill, yarn};

pub(super) static REEL: Job = Job {
    name: "reel_run",
    module: module_path!(),
    title: "The reel at work",
    summary: "The reel at work: turns of a hank, hanks, doffs, hours, people.",
    details: "`hank` is the mass of a hank as it comes off the reel, in the state of `count`; or give the `length` of the finished hank, with its `shrinkage` in scouring; or its `turns`. `change` is the time between doffs; no efficiency comes on top. `mass` or `hanks` is the lot.",
    example: ">>> import hankwise as hw\n\
>>> reel = hw.mill.reel_run(reel=\"1.5 m\", positions=20, speed=\"120 rpm\", change=\"8 min\",\n\
...                         count=\"310 tex\", hank=\"105 g\", mass=\"30 kg\")\n\
>>> reel[\"turns_set\"], reel[\"hanks_made\"], reel[\"doffs\"]\n\
(<number: 226>, <number: 285>, <number: 15>)",
    asks: &[
        Ask::need("reel", "C", "circumference of the reel", Kind::Length, (0.9, 2.5), "\"1.37 m\""),
        Ask::need("positions", "p", "hanks reeled side by side", Kind::Count, (1.0, 60.0), "20"),
        Ask::need("speed", "r", "speed of the reel", Kind::Frequency, (20.0, 400.0), "\"120 rpm\""),
        Ask::need(
            "change",
            "τ_c",
            "time between doffs: tying, lacing, taking off, piecing up",
            Kind::Duration,
            (0.02, 0.5),
            "\"8 min\"",
        )
        .or_none(),
        Ask::need(
            "count",
            "T",
            "count of the yarn at the reel",
            Kind::LinearDensity,
            (5.0, 3000.0),
            "\"300 tex\"",
        ),
        Ask::may("hank", "m_h", "mass of a hank, at the reel", Kind::Mass, (0.02, 1.0)),
        Ask::may("length", "L", "yarn in the finished hank", Kind::Length, (20.0, 2000.0)),
        Ask::may(
            "shrinkage",
            "s",
            "shrinkage of the hank in scouring",
            Kind::Shrinkage,
            (0.0, 0.15),
        )
        .or(0.0),
        Ask::may("turns", "n", "turns of a hank", Kind::Count, (10.0, 2000.0)),
        Ask { words: "yarn to reel, good", ..MASS },
        Ask::may("hanks", "N", "hanks to reel", Kind::Count, (1.0, 20000.0)),
        WASTE,
        Ask::may("reels", "k", "reels at work", Kind::Count, (1.0, 20.0)).or(1.0),
        each("reels that a person minds"),
    ],
    cautions: &["machines"],
    work,
};

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (reel, count): (Length<_>, LinearDensity<_>) = (job.get("reel"), job.get("count"));
    let (positions, reels): (Count<_>, Count<_>) = (job.get("positions"), job.get("reels"));
    let way = "hank=\"100 g\", as it comes off the reel, length=\"330 m\" or turns=240";
    job.one_of(&["hank", "length", "turns"], "the size of a hank", way)?;
    if job.has("shrinkage") && !job.has("length") {
        return Err(Error::notation(
            "shrinkage was given without length: it is what the length of the finished hank is made good \
             for; write both, or leave shrinkage out",
        ));
    }
    job.at_most_one(&["mass", "hanks"], "how much to reel")?;
    job.block("Settings");
    let turns: Count<_> = if job.has("turns") {
        job.get("turns")
    } else if job.has("length") {
        let shrinkage: Shrinkage<_> = job.get("shrinkage");
        let turns = yarn::reel_turns(job.get("length"), reel, shrinkage);
        job.name("turns_set", "turns for a hank, whole and up", turns)
    } else {
        let turns = yarn::reel_turns_for_mass(job.get("hank"), reel, count);
        job.name("turns_set", "turns for a hank, whole and up", turns)
    };
    let length = yarn::reeled_length(turns, reel, Work::plain(1.0));
    job.name("hank_length", "yarn in a hank", length);
    let hank = yarn::hank_mass(turns, reel, count);
    let hank = job.name("hank_mass", "mass of a hank", hank);
    let doff = mill::reeling_time(Work::plain(1.0), turns, job.get("speed"), job.get("change"));
    let doff = job.name("doff_time", "time of a doff, with what is between", doff);
    job.block("Output");
    let hourly = Count::from(positions.v() * reels.v() / doff.v());
    if !hourly.value().is_finite() {
        return Err(Error::range(
            "the reel neither runs nor stands between doffs; write change=\"8 min\"",
        ));
    }
    job.name("hourly", "hanks in an hour, all reels", hourly);
    let rate = crate::quantity::MassRate::from(hourly.v() * hank.v());
    job.name("output", "output, all reels", rate);
    let hanks: Option<Count<_>> = if job.has("mass") {
        job.block("The lot");
        let mass: Mass<_> = job.get("mass");
        let hanks = job.name("hanks_made", "whole hanks", mill::full_packages(mass, hank));
        let rest = Mass::from((mass.v() - hanks.v() * hank.v()).max(0.0));
        job.name("rest", "yarn over, for no whole hank", rest);
        fed(job, mass)?;
        if hanks.value() < 0.5 {
            return Err(Error::range(format!(
                "mass: the yarn makes no whole hank of {}; write more yarn or a smaller hank",
                job.say(hank.value(), Kind::Mass)
            )));
        }
        Some(hanks)
    } else if job.has("hanks") {
        job.block("The lot");
        let hanks: Count<_> = job.get("hanks");
        let mass = Mass::from(hanks.v() * hank.v());
        let mass = job.name("yarn", "yarn in the hanks", mass);
        fed(job, mass)?;
        Some(hanks)
    } else {
        job.needs("waste", "mass")?;
        None
    };
    let mut time: Option<Duration<_>> = None;
    if let Some(hanks) = hanks {
        let side = Count::from(positions.v() * reels.v());
        let doffs = mill::reel_doffs(hanks, side);
        let doffs = job.name("doffs", "doffs of each reel, the last perhaps not full", doffs);
        let hours = mill::reeling_time(doffs, turns, job.get("speed"), job.get("change"));
        time = Some(job.name("time", "running time", hours));
    }
    job.note("The time between doffs is in the hours: no efficiency comes on top.");
    job.block("People");
    if job.has("per_person") {
        people(job, reels, job.get("per_person"), time);
    }
    Ok(())
}
