//! Sectional warping.

use super::asks::each;
use super::common::people;
use crate::error::Result;
use crate::job::{Ask, Job, Work};
use crate::quantity::print::figure;
use crate::quantity::{Count, Duration, Kind, Length};
use crate::{cloth, mill, yarn};

pub(super) static WARPING: Job = Job {
    name: "warping_run",
    module: module_path!(),
    title: "Warping in sections",
    summary: "Warping in sections: sections, yarn and bobbins for the creel, hours.",
    details: "`change` is the time for a section beside running, `beaming` the speed of beaming, `set_up` the time to creel, once; no efficiency comes on top.",
    example: ">>> import hankwise as hw\n\
>>> warp = hw.mill.warping_run(ends=864, creel=144, length=\"60 m\", speed=\"40 m/min\", change=\"20 min\",\n\
...                            width=\"36.5 in\")\n\
>>> warp[\"sections\"], warp[\"ends_set\"].to(\"ends/in\")\n\
(<number: 6>, <sett: 23.67 threads/in>)",
    asks: &[
        Ask::need("ends", "N", "ends of the warp", Kind::Count, (10.0, 20000.0), "864"),
        Ask::need(
            "creel",
            "b",
            "ends in a section: the bobbins in the creel",
            Kind::Count,
            (4.0, 1000.0),
            "144",
        ),
        Ask::need("length", "W", "length of the warp", Kind::Length, (2.0, 5000.0), "\"60 m\""),
        Ask::need("speed", "v", "warping speed", Kind::Speed, (5.0, 800.0), "\"40 m/min\""),
        Ask::need(
            "change",
            "τ_c",
            "time for a section beside running: leasing, tying, mending",
            Kind::Duration,
            (0.02, 2.0),
            "\"20 min\"",
        )
        .or_none(),
        Ask::may("width", "B", "width of the warp", Kind::Length, (0.1, 6.0)),
        Ask::may("count", "T", "count of the warp", Kind::LinearDensity, (5.0, 2000.0)),
        Ask::may("package", "g", "yarn on a bobbin or cone of the creel", Kind::Mass, (0.05, 10.0)),
        Ask::may("stretch", "e", "stretch in warping and beaming", Kind::Stretch, (0.0, 0.05))
            .or_none(),
        Ask::may("beaming", "v_b", "speed of beaming", Kind::Speed, (1.0, 200.0)),
        Ask::may("set_up", "τ_s", "time to creel and set up, once", Kind::Duration, (0.1, 16.0)),
        Ask::may("machines", "k", "warping machines at work", Kind::Count, (1.0, 10.0)).or(1.0),
        each("warping machines that a person minds").broken(),
    ],
    cautions: &["machines"],
    work,
};

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (ends, creel): (Count<_>, Count<_>) = (job.get("ends"), job.get("creel"));
    let length: Length<_> = job.get("length");
    job.needs("package", "count")?;
    if creel.value() > ends.value() {
        job.warn(format!(
            "the warp has {} ends, fewer than the {} of the creel: it is made in one section",
            figure(ends.value()),
            figure(creel.value())
        ));
    }
    job.block("Settings");
    let sections = job.name("sections", "sections", cloth::warp_sections(ends, creel));
    let full = Count::from(creel.v().min(ends.v()));
    let full = job.name("section_ends", "ends in a full section", full);
    let last = Count::from(ends.v() - (sections.v() - 1.0) * full.v());
    job.name("last_section_ends", "ends in the last section", last);
    if job.has("width") {
        let width: Length<_> = job.get("width");
        job.name("ends_set", "how close the ends stand", mill::sett_from_ends(ends, width));
        let section = Length::from(width.v() * full.v() / ends.v());
        job.name("section_width", "width of a full section", section);
    }
    if job.has("stretch") {
        let beamed = mill::length_after_stretches(length, &[job.get("stretch")]);
        job.name("stretched", "length on the beam, under tension", beamed);
    }
    job.block("Yarn");
    let yarn_in = job.name("yarn", "yarn in the warp", cloth::warp_yarn_length(ends, length));
    let each = Length::from(sections.v() * length.v());
    let each = job.name("bobbin_yarn", "yarn that a bobbin in the creel gives", each);
    if job.has("count") {
        let mass = yarn::mass_of_length(job.get("count"), yarn_in);
        job.name("mass", "mass of the warp", mass);
        let mass = yarn::mass_of_length(job.get("count"), each);
        let mass = job.name("bobbin_mass", "and its mass", mass);
        if job.has("package") {
            let times = yarn::packages_for_mass(mass, job.get("package"));
            let times = job.name("creelings", "bobbins for each place of the creel", times);
            let all = Count::from(times.v() * full.v());
            job.name("bobbins", "bobbins to have ready", all);
        }
    }
    job.block("Time");
    let warping = mill::section_warping_time(sections, length, job.get("speed"), job.get("change"));
    let warping = job.name("warping_time", "warping", warping);
    let mut all = warping.v();
    if job.has("beaming") {
        let beaming = mill::time_for_length(length, job.get("beaming"));
        all = all + job.name("beaming_time", "beaming", beaming).v();
    }
    if job.has("set_up") {
        all = all + job.get::<Duration<_>>("set_up").v();
    }
    let time = job.name("time", "the warp in all", Duration::from(all));
    job.note("Stops are in the time for a section: no efficiency comes on top.");
    if job.has("per_person") {
        people(job, job.get("machines"), job.get("per_person"), Some(time));
    }
    Ok(())
}
