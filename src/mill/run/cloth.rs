//! Finishing machines at work: cloth run through, loads in turn, a dryer.

use super::asks::{EFFICIENCY, WASTE, each};
use super::common::{fed, people};
use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::mill;
use crate::quantity::{Count, Duration, Kind, Length, Mass, MassRate, Regain};
use crate::worked::Worked;

pub(super) static PASSAGES: Job = Job {
    name: "cloth_run",
    module: module_path!(),
    title: "Cloth through a machine",
    summary: "Cloth through a machine, several times if need be: length run and hours.",
    details: "`change` is the time for a passage beside running, to sew on and thread; no efficiency comes on top.",
    example: ">>> import hankwise as hw\n\
>>> hw.mill.cloth_run(length=\"60 m\", speed=\"8 m/min\", passages=4, change=\"10 min\")[\"time\"]\n\
<time: 1.167 h>",
    asks: &[
        Ask::need("length", "L", "length of the cloth", Kind::Length, (1.0, 10000.0), "\"60 m\""),
        Ask::need("speed", "v", "speed of the cloth", Kind::Speed, (0.2, 100.0), "\"8 m/min\""),
        Ask::may("passages", "n", "passages", Kind::Count, (1.0, 12.0)).or(1.0),
        Ask::may(
            "change",
            "τ_c",
            "time for a passage beside running: sewing on, threading",
            Kind::Duration,
            (0.0, 1.0),
        )
        .or(0.0),
        Ask::may("machines", "k", "machines that share the cloth", Kind::Count, (1.0, 10.0))
            .or(1.0),
        each("machines that a person minds"),
    ],
    cautions: &["machines"],
    work: passages,
};

pub(super) static BATCHES: Job = Job {
    name: "batch_run",
    module: module_path!(),
    title: "Goods in loads",
    summary: "Goods in loads: whole loads, even ones, hours.",
    details: "`mass` is what comes out good and `capacity` the largest load, both in one state; `running` and `change` are the times of a load. A load that is part full takes the whole time.",
    example: ">>> import hankwise as hw\n\
>>> batch = hw.mill.batch_run(mass=\"40 kg\", capacity=\"12 kg\", running=\"45 min\", change=\"15 min\")\n\
>>> batch[\"loads\"], batch[\"even_load\"], batch[\"time\"]\n\
(<number: 4>, <mass: 10 kg>, <time: 4 h>)",
    asks: &[
        Ask::need("mass", "m", "mass of the goods", Kind::Mass, (0.5, 10000.0), "\"40 kg\""),
        Ask::need(
            "capacity",
            "g",
            "largest load, in the same state as the mass",
            Kind::Mass,
            (0.5, 500.0),
            "\"12 kg\"",
        ),
        Ask::need(
            "running",
            "τ_r",
            "running time of a load",
            Kind::Duration,
            (0.02, 24.0),
            "\"45 min\"",
        ),
        Ask::may("change", "τ_c", "time to empty and fill", Kind::Duration, (0.0, 4.0)).or(0.0),
        WASTE,
        Ask::may("machines", "k", "machines at work", Kind::Count, (1.0, 10.0)).or(1.0),
        each("machines that a person minds"),
    ],
    cautions: &["machines"],
    work: batches,
};

pub(super) static DRYER: Job = Job {
    name: "dryer_run",
    module: module_path!(),
    title: "The dryer at work",
    summary: "The dryer at work: water to dry off and the hours for it.",
    details: "`mass` is oven-dry, `before` and `after` the water on it as a regain, `evaporation` what your dryer takes off in an hour, measured: weigh a load before and after.",
    example: ">>> import hankwise as hw\n\
>>> dryer = hw.mill.dryer_run(mass=\"40 kg\", before=\"60 %\", after=\"16 %\", evaporation=\"15 kg/h\")\n\
>>> dryer[\"water\"], dryer[\"time\"]\n\
(<mass: 17.6 kg>, <time: 1.173 h>)",
    asks: &[
        Ask::need(
            "mass",
            "d",
            "oven-dry mass of the goods",
            Kind::Mass,
            (0.5, 10000.0),
            "\"40 kg\"",
        ),
        Ask::need(
            "before",
            "R₁",
            "water in them before, on the dry mass",
            Kind::Regain,
            (0.3, 2.0),
            "\"60 %\"",
        ),
        Ask::need(
            "after",
            "R₂",
            "water in them after, on the dry mass",
            Kind::Regain,
            (0.08, 0.25),
            "\"16 %\"",
        )
        .or_none(),
        Ask::need(
            "evaporation",
            "E",
            "water that the dryer takes off in an hour",
            Kind::MassRate,
            (0.5, 1000.0),
            "\"15 kg/h\"",
        ),
        Ask { words: "share of the hours in which the dryer takes that off", ..EFFICIENCY }.or(1.0),
        Ask::may("machines", "k", "dryers at work", Kind::Count, (1.0, 10.0)).or(1.0),
        each("dryers that a person minds"),
    ],
    cautions: &["machines"],
    work: dryer,
};

fn finish<'t>(job: &Work<'_, 't>, time: Duration<Worked<'t>>) {
    if job.has("per_person") {
        people(job, job.get("machines"), job.get("per_person"), Some(time));
    }
}

fn passages(job: &Work<'_, '_>) -> Result<()> {
    let (length, machines): (Length<_>, Count<_>) = (job.get("length"), job.get("machines"));
    let (passages, change): (Count<_>, Duration<_>) = (job.get("passages"), job.get("change"));
    job.block("The lot");
    let each = Length::from(length.v() / machines.v());
    if job.has("machines") {
        job.name("each_length", "cloth for each machine", each);
    }
    let run = Length::from(each.v() * passages.v());
    job.name("run_length", "length run through each machine", run);
    let time = mill::passage_time(each, job.get("speed"), passages, change);
    let time = job.name("time", "time", time);
    if time.value() <= 0.0 {
        return Err(Error::range("speed: the cloth runs through in no time; write a lower speed"));
    }
    let hourly = Length::from(length.v() / time.v());
    job.name("hourly", "cloth finished so in an hour", hourly);
    job.note("The time beside running is in the hours: no efficiency comes on top.");
    finish(job, time);
    Ok(())
}

fn batches(job: &Work<'_, '_>) -> Result<()> {
    let (mass, machines): (Mass<_>, Count<_>) = (job.get("mass"), job.get("machines"));
    let capacity: Mass<_> = job.get("capacity");
    job.block("The lot");
    // Mass is what comes out good; what goes in has the waste in it.
    let fed = fed(job, mass)?;
    let loads = job.name("loads", "loads", mill::loads_for_mass(fed, capacity));
    let even = Mass::from(fed.v() / loads.v());
    let even = job.name("even_load", "each, if all are alike", even);
    let last = Mass::from((fed.v() - (loads.v() - 1.0) * capacity.v()).max(0.0));
    job.name("last_load", "the last, if the others are full", last);
    if even.value() < 0.5 * capacity.value() {
        job.warn(format!(
            "the load is less than half of what the machine takes ({}): a load that small may run \
             otherwise than a full one",
            job.say(capacity.value(), Kind::Mass)
        ));
    }
    let rounds = Count::from((loads.v() / machines.v() - 1e-6).ceil());
    let rounds = job.name("rounds", "loads of each machine, one after the other", rounds);
    let time = mill::load_time(rounds, job.get("running"), job.get("change"));
    let time = job.name("time", "time", time);
    job.name("output", "goods in an hour", MassRate::from(mass.v() / time.v()));
    job.note("Emptying and filling are in the hours: no efficiency comes on top.");
    finish(job, time);
    Ok(())
}

fn dryer(job: &Work<'_, '_>) -> Result<()> {
    let (dry, machines): (Mass<_>, Count<_>) = (job.get("mass"), job.get("machines"));
    let (before, after): (Regain<_>, Regain<_>) = (job.get("before"), job.get("after"));
    if before.value() <= after.value() {
        return Err(Error::range(format!(
            "the goods hold {} before and {} after, and there is nothing to dry off; are before and \
             after exchanged?",
            job.say(before.value(), Kind::Regain),
            job.say(after.value(), Kind::Regain)
        )));
    }
    job.block("The lot");
    let zero = Work::plain::<Regain<_>>(0.0);
    let wet = crate::fibre::mass_at_regain(dry, zero, before);
    job.name("wet", "goods as they go in", wet);
    let out = crate::fibre::mass_at_regain(dry, zero, after);
    let out = job.name("out", "goods as they come out", out);
    let water = job.name("water", "water to dry off", mill::water_to_dry(dry, before, after));
    let rate: MassRate<_> = job.get("evaporation");
    let share: crate::quantity::Fraction<_> = job.get("efficiency");
    let rate = MassRate::from(rate.v() * share.v() * machines.v());
    let rate = job.name("evaporation_held", "water taken off in an hour, all dryers", rate);
    let time = job.name("time", "time", mill::time_for_mass(water, rate));
    job.name("output", "goods in an hour, as they come out", MassRate::from(out.v() / time.v()));
    finish(job, time);
    Ok(())
}
