//! What all machines that make yarn have in common: the lot with its waste, doffs, broken ends, people.

use crate::error::{Error, Result};
use crate::job::Work;
use crate::quantity::{Count, Duration, Fraction, Frequency, LinearDensity, Mass, MassRate, Ratio};
use crate::worked::Worked;
use crate::{mill, yarn};

type W<'t> = Worked<'t>;

/// A lot on a machine.
pub(super) struct Lot<'t> {
    pub(super) mass: Mass<W<'t>>,
    /// What has to be fed for it.
    pub(super) fed: Mass<W<'t>>,
    pub(super) time: Duration<W<'t>>,
}

/// What a lot takes: feed, waste, length and hours; none where no lot was given.
pub(super) fn lot<'t>(
    job: &Work<'_, 't>,
    rate: MassRate<W<'t>>,
    count: LinearDensity<W<'t>>,
) -> Result<Option<Lot<'t>>> {
    job.needs("waste", "mass")?;
    if !job.has("mass") {
        return Ok(None);
    }
    job.block("The lot");
    let mass: Mass<_> = job.get("mass");
    let fed = fed(job, mass)?;
    job.name("length", "yarn made", yarn::length_of_mass(mass, count));
    let time = job.name("time", "running time", mill::time_for_mass(mass, rate));
    Ok(Some(Lot { mass, fed, time }))
}

/// What has to be fed for a mass, and what of it is wasted.
pub(super) fn fed<'t>(job: &Work<'_, 't>, mass: Mass<W<'t>>) -> Result<Mass<W<'t>>> {
    if !job.has("waste") {
        return Ok(mass);
    }
    let waste: Fraction<_> = job.get("waste");
    if waste.value() >= 1.0 {
        return Err(Error::range("waste: all of it is wasted, so nothing is made; write less"));
    }
    let fed = mill::mass_before_loss(mass, waste, Work::plain(0.0));
    let fed = job.name("fed", "to feed, waste in it", fed);
    job.name("wasted", "wasted of it", Mass::from(fed.v() - mass.v()));
    Ok(fed)
}

/// Doffs and packages, where the mass of a package is known.
pub(super) fn doffs<'t>(
    job: &Work<'_, 't>,
    spindles: Count<W<'t>>,
    package: Mass<W<'t>>,
    lot: Option<&Lot<'t>>,
) {
    let Some(Lot { mass, .. }) = lot else { return };
    let doffs = mill::doffs(*mass, spindles, package);
    job.name("doffs", "doffs, the last perhaps not full", doffs);
    let whole = mill::full_packages(*mass, package);
    let whole = job.name("packages", "full packages", whole);
    let rest = Mass::from((mass.v() - whole.v() * package.v()).max(0.0));
    job.name("rest", "yarn over, for no full package", rest);
}

/// Broken ends, spindles idle, spindles for a minder and minders.
pub(super) fn minding<'t>(
    job: &Work<'_, 't>,
    spindles: Count<W<'t>>,
    lot: Option<&Lot<'t>>,
) -> Result<()> {
    job.at_most_one(&["per_person", "piecing"], "how many spindles a person minds")?;
    for (name, other) in
        [("patrol", "breaks"), ("piecing", "breaks"), ("piecing", "load"), ("load", "piecing")]
    {
        job.needs(name, other)?;
    }
    job.block("Broken ends and people");
    if job.has("breaks") {
        let breaks: Ratio<_> = job.get("breaks");
        let hourly = Frequency::from(breaks.v() / 1000.0 * spindles.v() / 60.0);
        job.name("ends_down", "ends down, all spindles", hourly);
        if job.has("patrol") {
            let idle = mill::spindles_idle(breaks, job.get("patrol"));
            if idle.value() > 1.0 {
                return Err(Error::range(
                    "breaks and patrol: more ends would be down than there are spindles; breaks are for a \
                     thousand spindle hours, such as 30, and patrol is the time of a round, such as '5 min'",
                ));
            }
            let idle = job.name("idle_share", "spindles idle for broken ends", idle);
            let number = Count::from(idle.v() * spindles.v());
            job.name("idle", "spindles idle at a time", number);
            job.note("Idle spindles are in the efficiency, and are not taken off again.");
        }
        if job.has("piecing") {
            if breaks.value() == 0.0 {
                return Err(Error::range(
                    "breaks: no end breaks, so nobody is needed to piece; leave piecing and load out",
                ));
            }
            let each = mill::spindles_for_minder(breaks, job.get("piecing"), job.get("load"));
            let each = job.name("spindles_per_person", "spindles that a person can mind", each);
            people(job, spindles, each, lot.map(|lot| lot.time));
        }
    }
    if job.has("per_person") {
        people(job, spindles, job.get("per_person"), lot.map(|lot| lot.time));
    }
    Ok(())
}

/// People, and their hours over the lot.
pub(super) fn people<'t>(
    job: &Work<'_, 't>,
    machines: Count<W<'t>>,
    each: Count<W<'t>>,
    time: Option<Duration<W<'t>>>,
) {
    let people = mill::people_needed(machines, each);
    let people = job.name("people", "people", people);
    if let Some(time) = time {
        let hours = Duration::from(people.v() * time.v());
        job.name("person_hours", "their hours over the lot", hours);
    }
}
