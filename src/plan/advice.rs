//! Advice beside the values: what to promise instead, which wheels are far off, what to measure.

use super::Plan;
use super::chain::Nominal;
use super::given::Values;
use super::goods;
use super::result::PlanResult;
use super::say::Say;
use crate::quantity::Kind;
use crate::quantity::print::with_unit;
use crate::worked::{Op, Recording};

impl Plan {
    /// For each good of which fewer are planned than promised: where the promise is written, how many
    /// are planned, and what to write instead.
    pub(super) fn shortfalls(&self, nominal: &Nominal, result: &PlanResult) -> Vec<String> {
        let likely = self.likely();
        let values = Values { given: &likely };
        let wanted: Vec<f64> =
            self.goods.iter().map(|g| g.promised.map_or(0.0, f64::from)).collect();
        let planned = self.back(&values, goods::needed(&nominal.needs, &wanted)).value();
        let (greasy, basis) = match result.spare.safe_greasy_mass {
            Some(greasy) => (greasy, "kept in 19 lots of 20"),
            None => (planned, "with the planned values"),
        };
        let goods = self.goods.iter().zip(&result.goods);
        goods
            .filter_map(|(good, result)| {
                let promised = good.promised.filter(|n| result.planned < f64::from(*n))?;
                Some(format!(
                    "{}: goods.{}.promised: planned {} of {promised}; write {}, or take in {} of greasy \
                     wool ({basis})",
                    good.origin,
                    good.name,
                    result.planned,
                    result.safe.unwrap_or(result.planned),
                    intake(greasy, &self.say),
                ))
            })
            .collect()
    }
}

/// Greasy wool to take in, up to the next 100 g, so that the mass as printed is enough.
pub(super) fn intake(greasy: f64, say: &Say) -> String {
    say.figure((greasy * 10.0 - 1e-9).ceil() / 10.0, Kind::Mass)
}

/// How to measure a value of the lot file, as an instruction.
pub(super) fn measurement(key: &str, words: &str) -> String {
    match key.split_once('.') {
        Some(("lot", "clean")) => "test-wash samples of the fleece".to_owned(),
        Some(("sort", "rejects")) => "weigh what is sorted out".to_owned(),
        Some((stage, "loss")) => format!("weigh the wool into and out of the {stage}"),
        _ => format!("measure the {words}"),
    }
}

/// How far a part may be from the one wanted before it is worth a word.
const NEAR: f64 = 0.05;

/// Parts in use that are far from what was wanted: the mill owns none nearer, or another was set.
pub(super) fn far_parts(recording: &Recording) -> Vec<String> {
    let steps = recording.steps.iter().enumerate();
    steps
        .filter(|(_, step)| step.op == Op::Chosen)
        .filter_map(|(place, step)| {
            let wanted = recording.value(step.args[0]);
            let off = step.value / wanted - 1.0;
            let label = recording.labels.get(&place)?;
            (off.abs() > NEAR).then(|| {
                format!(
                    "{}: the part in use ({}) is {:.0} % {} than needed ({}); check what it gives, \
                     or get a nearer one",
                    label.name(),
                    with_unit(step.value, &label.unit),
                    off.abs() * 100.0,
                    if off > 0.0 { "larger" } else { "smaller" },
                    with_unit(wanted, &label.unit),
                )
            })
        })
        .collect()
}
