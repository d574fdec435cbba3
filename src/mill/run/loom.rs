//! The loom at work.

use super::asks::{EFFICIENCY, LOAD, each};
use super::common::people;
use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::quantity::{Count, Duration, Fraction, Frequency, Kind, Length, Ratio, Sett};
use crate::worked::Worked;
use crate::{cloth, mill, yarn};

pub(super) static LOOM: Job = Job {
    name: "loom_run",
    module: module_path!(),
    title: "The loom at work",
    summary: "The loom at work: efficiency from its stops, cloth and weft in an hour, hours, looms of a weaver.",
    details: "Give the `efficiency`, or the stops in an hour of running (`stops`) or in a hundred thousand picks (`stops_of_picks`) with `stop_time`: never both, for the stops are in the efficiency. `attention` is the weaver's own time for a stop, `load` the share of the weaver's time for stops.",
    example: ">>> import hankwise as hw\n\
>>> loom = hw.mill.loom_run(speed=\"90 picks/min\", picks=\"4.6 picks/cm\", stops=\"6 /h\",\n\
...                         stop_time=\"2 min\", attention=\"1 min\", load=\"70 %\")\n\
>>> loom[\"efficiency_found\"], loom[\"cloth\"], loom[\"looms_per_person\"]\n\
(<fraction: 83.33 %>, <length: 9.783 m>, <number: 8>)",
    asks: &[
        Ask::need(
            "speed",
            "r",
            "picks in a minute, running",
            Kind::Frequency,
            (30.0, 600.0),
            "\"90 picks/min\"",
        ),
        Ask::need(
            "picks",
            "p",
            "picks in the cloth off the loom",
            Kind::Sett,
            (1.0, 60.0),
            "\"4.6 picks/cm\"",
        ),
        Ask { usual: (0.4, 0.95), words: "efficiency, with every stop in it", ..EFFICIENCY }.left(),
        Ask::may("stops", "f", "stops in an hour of running", Kind::Frequency, (0.0, 0.5))
            .or_none(),
        Ask::may(
            "stops_of_picks",
            "s",
            "stops in a hundred thousand picks",
            Kind::Ratio,
            (0.0, 500.0),
        )
        .or_none(),
        Ask::may(
            "stop_time",
            "τ_s",
            "time that the loom stands for a stop",
            Kind::Duration,
            (0.005, 0.3),
        ),
        Ask::may("width", "B", "width in the reed", Kind::Length, (0.1, 4.0)),
        Ask::may("weft", "T", "count of the weft", Kind::LinearDensity, (5.0, 2000.0)),
        Ask::may("length", "L", "cloth to weave, off the loom", Kind::Length, (0.5, 10000.0)),
        Ask::may("looms", "k", "looms at work on it", Kind::Count, (1.0, 100.0)).or(1.0),
        Ask::may("attention", "τ_a", "weaver's time for a stop", Kind::Duration, (0.003, 0.3)),
        LOAD,
        each("looms that a weaver minds"),
    ],
    cautions: &["loom"],
    work,
};

/// The efficiency, from what was given of it: itself, or stops, and never both.
fn efficiency<'t>(job: &Work<'_, 't>) -> Result<Fraction<Worked<'t>>> {
    let write = "efficiency=\"75 %\", or stops=\"6 /h\" with stop_time=\"2 min\" and leave the \
                 efficiency out: stops are in it";
    let ways = ["efficiency", "stops", "stops_of_picks"];
    job.one_of(&ways, "the efficiency", write)?;
    job.needs("stops", "stop_time")?;
    job.needs("stops_of_picks", "stop_time")?;
    if job.has("efficiency") {
        if job.has("stop_time") {
            return Err(Error::notation(
                "efficiency and stop_time were given, and the stops are in the efficiency: leave \
                 stop_time out, or give stops instead of the efficiency",
            ));
        }
        return Ok(job.get("efficiency"));
    }
    let found = if job.has("stops") {
        mill::efficiency_with_stops(job.get("stops"), job.get("stop_time"))
    } else {
        mill::efficiency_with_stops_of_picks(
            job.get("stops_of_picks"),
            job.get("stop_time"),
            job.get("speed"),
        )
    };
    Ok(job.name("efficiency_found", "efficiency, from the stops", found))
}

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (speed, picks): (Frequency<_>, Sett<_>) = (job.get("speed"), job.get("picks"));
    let looms: Count<_> = job.get("looms");
    job.needs("weft", "width")?;
    job.block("Output of a loom");
    let efficiency = efficiency(job)?;
    if efficiency.value() <= 0.0 {
        return Err(Error::range("the loom never runs; write fewer or shorter stops"));
    }
    let each = mill::loom_delivery_speed(speed, picks, efficiency);
    let hourly = mill::length_wound(each, Work::plain(1.0), Work::plain(1.0));
    job.name("cloth", "cloth in an hour", hourly);
    let hour = mill::picks_in_time(speed, Work::plain(1.0), efficiency);
    job.name("picks_per_hour", "picks in an hour", hour);
    if job.has("width") {
        let weft = mill::weft_insertion(speed, job.get("width"), Work::plain(0.0));
        let weft = job.name("weft_insertion", "weft put in, running", weft);
        // In an hour the loom runs for the share of it that is its efficiency.
        let used = mill::length_wound(weft, Work::plain(1.0), efficiency);
        let used = job.name("weft_used", "weft in an hour", used);
        if job.has("weft") {
            let mass = yarn::mass_of_length(job.get("weft"), used);
            job.name("weft_mass", "and its mass", mass);
        }
    }
    let mut time: Option<Duration<_>> = None;
    if job.has("length") {
        job.block("The lot");
        let length: Length<_> = job.get("length");
        let all = cloth::picks_in_piece(length, Work::plain(0.0), picks);
        let all = job.name("picks_in_all", "picks", all);
        let loom_hours = mill::loom_time(all, speed, efficiency);
        let loom_hours = job.name("loom_hours", "loom hours", loom_hours);
        let hours = Duration::from(loom_hours.v() / looms.v());
        time = Some(job.name("time", "running time, all looms at it", hours));
        if job.has("width") {
            let weft = cloth::weft_per_piece(all, job.get("width"), Work::plain(0.0));
            let weft = job.name("weft_in_all", "weft, without turns and waste", weft);
            if job.has("weft") {
                let mass = yarn::mass_of_length(job.get("weft"), weft);
                job.name("weft_mass_in_all", "and its mass", mass);
            }
        }
    }
    weavers(job, looms, efficiency, time)
}

fn weavers<'t>(
    job: &Work<'_, 't>,
    looms: Count<Worked<'t>>,
    efficiency: Fraction<Worked<'t>>,
    time: Option<Duration<Worked<'t>>>,
) -> Result<()> {
    job.at_most_one(&["per_person", "attention"], "how many looms a weaver minds")?;
    job.needs("attention", "load")?;
    job.needs("load", "attention")?;
    job.block("People");
    if job.has("attention") {
        if !job.has("stops") && !job.has("stops_of_picks") {
            return Err(Error::notation(
                "attention was given without stops; write stops=\"6 /h\" with stop_time, or the looms \
                 that a weaver minds as per_person",
            ));
        }
        let stops = if job.has("stops") {
            job.get("stops")
        } else {
            let (each, speed): (Ratio<_>, Frequency<_>) =
                (job.get("stops_of_picks"), job.get("speed"));
            let stops = Frequency::from(each.v() * speed.v() / 1e5);
            job.name("stops_found", "stops, while the loom runs", stops)
        };
        if stops.value() == 0.0 {
            return Err(Error::range(
                "no loom ever stops, so the sum has no end of looms for a weaver; leave attention and \
                 load out",
            ));
        }
        let each = mill::looms_for_weaver(stops, job.get("attention"), efficiency, job.get("load"));
        let each = Count::from((each.v() + 1e-6).floor());
        let each = job.name("looms_per_person", "looms that a weaver can mind, whole ones", each);
        if each.value() < 1.0 {
            return Err(Error::range(
                "the stops of a single loom take more of the weaver's time than its load leaves; write \
                 fewer stops, a shorter attention or a greater load",
            ));
        }
        people(job, looms, each, time);
    }
    if job.has("per_person") {
        people(job, looms, job.get("per_person"), time);
    }
    Ok(())
}
