//! What looms and finishing machines have in common: waste, people.

use crate::error::{Error, Result};
use crate::job::Work;
use crate::mill;
use crate::quantity::{Count, Duration, Fraction, Mass};
use crate::worked::Worked;

type W<'t> = Worked<'t>;

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
