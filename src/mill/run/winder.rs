//! The winder at work.

use super::asks::{EFFICIENCY, MASS, WASTE, each};
use super::common::{doffs, lot, people};
use crate::error::Result;
use crate::job::{Ask, Job, Work};
use crate::quantity::print::figure;
use crate::quantity::{Count, Duration, Fraction, Kind, LinearDensity, Mass, Speed};
use crate::{mill, yarn};

pub(super) static WINDER: Job = Job {
    name: "winder_run",
    module: module_path!(),
    title: "The winder at work",
    summary: "The winder at work: output, time of a cone, whole cones of a lot and what is over, drums, hours.",
    details: "`package` is the yarn on a full cone, net, `bobbin` what is wound off, `within` the time in which the lot is wanted, `hank` the length of a hank for hanks in an hour.",
    example: ">>> import hankwise as hw\n\
>>> winder = hw.mill.winder_run(drums=12, speed=\"300 m/min\", count=\"310 tex\", efficiency=\"70 %\",\n\
...                             mass=\"30 kg\", package=\"1.2 kg\", within=\"1 h\")\n\
>>> winder[\"packages\"], winder[\"drums_needed\"]\n\
(<number: 25>, <number: 8>)",
    asks: &[
        Ask::need("drums", "k", "drums at work", Kind::Count, (1.0, 600.0), "12"),
        Ask::need(
            "speed",
            "v",
            "winding speed of a drum",
            Kind::Speed,
            (50.0, 1200.0),
            "\"300 m/min\"",
        )
        .memory(),
        Ask::need(
            "count",
            "T",
            "count of the yarn",
            Kind::LinearDensity,
            (5.0, 3000.0),
            "\"300 tex\"",
        ),
        EFFICIENCY,
        MASS,
        WASTE,
        Ask::may("package", "g", "yarn on a full cone, net", Kind::Mass, (0.05, 10.0)),
        Ask::may("package_length", "l_p", "yarn on a full cone", Kind::Length, (100.0, 100_000.0)),
        Ask::may(
            "bobbin",
            "b",
            "yarn on a bobbin or cop that is wound off",
            Kind::Mass,
            (0.02, 2.0),
        ),
        Ask::may("hank", "l", "length of a hank", Kind::Length, (50.0, 20000.0)),
        Ask::may("within", "τ_w", "time in which the lot is wanted", Kind::Duration, (0.5, 500.0)),
        each("drums that a person minds"),
    ],
    cautions: &["machines"],
    work,
};

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (drums, speed): (Count<_>, Speed<_>) = (job.get("drums"), job.get("speed"));
    let (count, efficiency): (LinearDensity<_>, Fraction<_>) =
        (job.get("count"), job.get("efficiency"));
    job.at_most_one(&["package", "package_length"], "what a cone holds")?;
    job.needs("within", "mass")?;
    job.block("Output");
    let output = yarn::winding_output(speed, drums, efficiency, count);
    let output = job.name("output", "output, all drums", output);
    if job.has("hank") {
        let hanks = mill::hank_rate(speed, efficiency, job.get("hank"));
        job.name("hanks", "hanks of a drum", hanks);
    }
    let package: Option<Mass<_>> = if job.has("package_length") {
        let mass = yarn::mass_of_length(count, job.get("package_length"));
        Some(job.name("package_mass", "yarn on a full cone", mass))
    } else {
        job.has("package").then(|| job.get("package"))
    };
    if let Some(package) = package {
        let length = yarn::length_of_mass(package, count);
        let time = yarn::winding_time(length, speed, Work::plain(1.0), efficiency);
        job.name("cone_time", "time of a cone", time);
        if job.has("bobbin") {
            let knots = yarn::knots_in_package(package, job.get("bobbin"));
            job.name("knots", "knots in a cone, of joining", knots);
        }
    }
    let lot = lot(job, output, count)?;
    if let Some(lot) = &lot {
        if job.has("bobbin") {
            let bobbins = yarn::packages_for_mass(lot.fed, job.get("bobbin"));
            job.name("bobbins", "bobbins to wind off", bobbins);
        }
        if job.has("within") {
            let within: Duration<_> = job.get("within");
            let each = mill::mass_wound(speed, within, efficiency, count);
            let each = job.name("drum_mass", "what a drum winds in that time", each);
            let wanted = mill::drums_needed(lot.mass, each);
            let wanted = Count::from((wanted.v() - 1e-6).ceil());
            let wanted = job.name("drums_needed", "drums needed for that", wanted);
            if wanted.value() > drums.value() + 0.5 {
                job.warn(format!(
                    "{} drums do not wind the lot within {}: {} are needed, or a longer time",
                    figure(drums.value()),
                    job.say(within.value(), Kind::Duration),
                    figure(wanted.value())
                ));
            }
        }
    }
    if let Some(package) = package {
        doffs(job, drums, package, lot.as_ref());
        if let Some(lot) = &lot
            && lot.mass.value() < package.value() * drums.value() * (1.0 - 1e-9)
        {
            job.warn(format!(
                "the lot does not fill a cone on each of {} drums: wind it on {} of them, or smaller cones",
                figure(drums.value()),
                figure((lot.mass.value() / package.value() - 1e-6).ceil().max(1.0))
            ));
        }
    }
    job.block("People");
    if job.has("per_person") {
        people(job, drums, job.get("per_person"), lot.map(|lot| lot.time));
    }
    Ok(())
}
