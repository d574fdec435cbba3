//! What is worth a word beside the figures.

use super::Plan;
use super::chain::Nominal;
use super::given::Values;
use super::goods;
use crate::quantity::Kind;
use crate::worked::{Op, Recording};

impl Plan {
    /// For each good that the likely figures do not make as promised: where the promise stands, what
    /// is made, and what to write instead.
    pub(super) fn shortfalls(&self, nominal: &Nominal) -> Vec<String> {
        let likely = self.likely();
        let values = Values { given: &likely };
        let wanted: Vec<f64> = self.goods.iter().map(|g| g.want.map_or(0.0, f64::from)).collect();
        let greasy = self.back(&values, goods::needed(&nominal.needs, &wanted)).value();
        let goods = self.goods.iter().zip(&nominal.made);
        goods
            .filter_map(|(good, made)| {
                let want = good.want.filter(|want| *made < f64::from(*want))?;
                Some(format!(
                    "{}: goods.{}.promised: {want} are promised and the likely figures make {made}; \
                     write {made}, or take in {} of greasy wool (by the likely figures)",
                    good.origin,
                    good.name,
                    // Up to the next 100 g, so that the figure as printed is enough.
                    self.say.figure((greasy * 10.0).ceil() / 10.0, Kind::Mass),
                ))
            })
            .collect()
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
                    "{}: the part in use is {:.0} % {} the one wanted; see what it gives, or get a nearer one",
                    label.name(),
                    off.abs() * 100.0,
                    if off > 0.0 { "above" } else { "below" }
                )
            })
        })
        .collect()
}
