//! Broken ends, and the people who mind a machine.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::quantity::{Count, Duration, Fraction, Frequency, Ratio};

/// Broken ends, and how many spindles a person minds.
#[derive(Clone, Debug, Inputs)]
pub struct Minding<N> {
    #[group]
    pub(super) ends: Option<BrokenEnds<N>>,
    #[one_of("how many spindles a person minds")]
    pub(super) spindles_minded: Option<SpindlesMinded<N>>,
}

/// Ends that break.
#[derive(Clone, Debug, Inputs)]
pub struct BrokenEnds<N> {
    /// ends broken in a thousand spindle hours
    #[q("e_b", 5.0..=300.0, memory, zero)]
    pub break_rate: Ratio<N>,
    /// time of a minder's round
    #[q("τ_p", 0.02..=1.0)]
    pub patrol_time: Option<Duration<N>>,
}

/// How it is known how many spindles a person minds.
#[derive(Clone, Debug, Inputs)]
pub enum SpindlesMinded<N> {
    /// spindles that a person minds
    #[q("a_p", 1.0..=1500.0)]
    PerPerson(Count<N>),
    /// from the time that broken ends take
    #[group]
    ByPiecing(Piecing<N>),
}

/// The time that broken ends take.
#[derive(Clone, Debug, Inputs)]
pub struct Piecing<N> {
    /// minder's time for a broken end, with the walk
    #[q("τ_b", 0.001..=0.05)]
    pub piecing_time: Duration<N>,
    /// share of a person's time for broken ends
    #[q("ψ", 0.2..=0.9)]
    pub work_load: Fraction<N>,
}

/// Broken ends and people.
#[derive(Clone, Debug, Results)]
pub struct MindingResults<N> {
    /// ends broken, all spindles
    #[block = "Broken ends and people"]
    pub breaks_per_hour: Option<Frequency<N>>,
    /// share of the spindles idle for broken ends
    pub idle_share: Option<Fraction<N>>,
    /// spindles idle at a time
    pub idle_spindles: Option<Count<N>>,
    /// spindles that a person can mind
    pub spindles_per_person: Option<Count<N>>,
    /// People.
    #[part]
    pub people: Option<People<N>>,
}

/// The people at machines.
#[derive(Clone, Debug, Results)]
pub struct People<N> {
    /// people
    pub people: Count<N>,
    /// their hours over the lot
    pub person_hours: Option<Duration<N>>,
}

/// The people for a number of machines, and their hours where the time is known.
pub(super) fn people<N: Number>(
    machines: Count<N>,
    per_person: Count<N>,
    time: Option<Duration<N>>,
) -> People<N> {
    let people = mill::people_needed(machines, per_person);
    People { people, person_hours: time.map(|time| (people.v() * time.v()).into()) }
}

pub(super) fn minding<N: Number>(
    given: &Minding<N>,
    spindles: Count<N>,
    time: Option<Duration<N>>,
) -> MindingResults<N> {
    let breaks = given.ends.as_ref().map(|ends| ends.break_rate);
    let patrol = given.ends.as_ref().and_then(|ends| ends.patrol_time);
    let idle_share = breaks.zip(patrol).map(|(breaks, patrol)| mill::spindles_idle(breaks, patrol));
    let (spindles_per_person, minded) = match &given.spindles_minded {
        None => (None, None),
        Some(SpindlesMinded::PerPerson(each)) => (None, Some(*each)),
        Some(SpindlesMinded::ByPiecing(Piecing { piecing_time, work_load })) => {
            let found = breaks.map(|b| mill::spindles_for_minder(b, *piecing_time, *work_load));
            (found, found)
        }
    };
    MindingResults {
        breaks_per_hour: breaks.map(|b| (b.v() / 1000.0 * spindles.v() / 60.0).into()),
        idle_share,
        idle_spindles: idle_share.map(|share| (share.v() * spindles.v()).into()),
        spindles_per_person,
        people: minded.map(|each| people(spindles, each, time)),
    }
}

pub(super) fn check_minding(
    given: &Minding<f64>,
    found: &MindingResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if let Some(idle) = found.idle_share {
        if let Some(ends) = given.ends.as_ref().filter(|_| idle.value() > 1.0) {
            refuse!(
                check,
                ends.break_rate,
                "more ends would be down than there are spindles; break_rate is for a thousand spindle \
                 hours, such as 30, and patrol_time the time of a round, such as '5 min'"
            );
        }
        check.note(
            "Broken ends and people",
            "Idle spindles are in the efficiency, and are not taken off again.",
        );
    }
    if let Some(SpindlesMinded::ByPiecing(by)) = &given.spindles_minded {
        match &given.ends {
            None => refuse!(
                check,
                by.piecing_time,
                "piecing_time was given without break_rate (ends broken in a thousand spindle hours); \
                 write both or neither"
            ),
            Some(ends) if ends.break_rate.value() == 0.0 => refuse!(
                check,
                ends.break_rate,
                "no end breaks, so nobody is needed to piece; omit piecing_time and work_load"
            ),
            Some(_) => {}
        }
    }
    Ok(())
}
