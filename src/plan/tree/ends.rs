//! What each yarn is at its end: its count, its state as sold, what stays on it.

use super::{From, Of, Tree, YarnNode};
use crate::number::Number;
use crate::plan::given::Values;
use crate::plan::goods::YarnEnd;
use crate::plan::stage::{AnyStage, named};
use crate::quantity::{LinearDensity, OnFibre, Ratio, Shrinkage};
use crate::yarn;

impl Tree {
    /// What each yarn is at its end: its count, and how it shrank after the reel.
    pub(in crate::plan) fn yarn_ends<N: Number>(
        &self,
        values: &Values<'_, N>,
        ends: &mut Vec<YarnEnd<N>>,
    ) {
        ends.clear();
        let nothing = YarnEnd {
            dry: None,
            label_count: None,
            label_state: Ratio::base(N::constant(1.0)),
            shrinkage: Shrinkage::base(N::constant(0.0)),
        };
        ends.resize(self.yarns.len(), nothing);
        for place in self.order.iter().copied() {
            let yarn = &self.yarns[place];
            let parent = match yarn.from {
                From::Yarn(parent) => Some(ends[parent]),
                _ => None,
            };
            let stays = self.stays(yarn, values);
            let label_state = if self.weighed {
                Ratio::base(N::constant(1.0))
            } else {
                yarn.label.state(&yarn.label_key, values, stays)
            };
            let shrinks = yarn.passes.iter().filter_map(|pass| pass.stage.shrinkage(values));
            let before = parent.map(|end| end.shrinkage);
            let mut shrinks = before.into_iter().chain(shrinks);
            let shrinkage = shrinks.next().map(|first| {
                shrinks.fold(first, |all, next| {
                    let left = (1.0 - all.v()) * (1.0 - next.v());
                    let words = "shrinkage of the hank in all its baths";
                    named(&yarn.key, "shrinkage", words, Shrinkage::from(1.0 - left))
                })
            });
            let spec = yarn.spec.count.as_ref().map(|c| LinearDensity::base(values.at(*c.inner())));
            let (dry, label_count) = match (spec, parent.and_then(|end| end.dry)) {
                (Some(count), _) => {
                    let dry = LinearDensity::from(count.v() / label_state.v());
                    let dry = named(&yarn.key, "dry", "finished yarn, on clean dry fibre", dry);
                    (Some(dry), Some(count))
                }
                (None, Some(before)) => {
                    let dry = yarn.passes.iter().fold(before, |count, pass| {
                        let (Some(loss), Some(shrinkage)) =
                            (pass.stage.loss(values), pass.stage.shrinkage(values))
                        else {
                            return count;
                        };
                        let same_state = Ratio::base(N::constant(1.0));
                        yarn::count_after_scouring(count, same_state, loss.share, shrinkage)
                    });
                    let dry = named(&yarn.key, "dry", "finished yarn, on clean dry fibre", dry);
                    let count = LinearDensity::from(dry.v() * label_state.v());
                    let words = "count of the finished yarn, as on the label";
                    (Some(dry), Some(named(&yarn.key, "count", words, count)))
                }
                _ => (None, None),
            };
            let shrinkage = shrinkage.unwrap_or(nothing_shrinks());
            ends[place] = YarnEnd { dry, label_count, label_state, shrinkage };
        }
    }

    /// Dye and mordant that stay on a yarn.
    fn stays<N: Number>(&self, yarn: &YarnNode, values: &Values<'_, N>) -> Option<OnFibre<N>> {
        let before = match yarn.from {
            From::Yarn(parent) => self.stays(&self.yarns[parent], values),
            From::Heap(heap) => {
                let heap = &self.heaps[heap];
                let sorts = match &heap.of {
                    Of::All(sorts) if sorts.len() == 1 => &self.sorts[sorts[0]].passes[..],
                    _ => &[],
                };
                on(sorts.iter().chain(&heap.passes), values, None)
            }
            From::Stock(_) => None,
        };
        on(yarn.passes.iter(), values, before)
    }
}

fn nothing_shrinks<N: Number>() -> Shrinkage<N> {
    Shrinkage::base(N::constant(0.0))
}

/// What stays on after some stages.
fn on<'p, N: Number>(
    passes: impl Iterator<Item = &'p super::Pass>,
    values: &Values<'_, N>,
    before: Option<OnFibre<N>>,
) -> Option<OnFibre<N>> {
    let dyes = passes.filter_map(|pass| match &pass.stage {
        AnyStage::Dye(dye) => dye.stays(values),
        _ => None,
    });
    before.into_iter().chain(dyes).reduce(|sum, one| OnFibre::from(sum.v() + one.v()))
}
