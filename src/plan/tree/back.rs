//! Up the tree: from what the goods ask to the greasy wool.

use super::forward::Carried;
use super::{Of, Tree, up};
use crate::number::{Number, V};
use crate::plan::given::Values;
use crate::plan::goods::{Good, Needs};
use crate::plan::stage::{NoLedger, named};
use crate::plan::stock::Flow;
use crate::quantity::Mass;

fn none<N: Number>() -> V<N> {
    V::constant(0.0)
}

impl Tree {
    /// The greasy wool of each fleece that some pieces of each good ask. Where a heap mixes all that
    /// there is, its sorts give in the proportion in which they are there: `sorts`, where that is known.
    pub(in crate::plan) fn greasy_for<N: Number>(
        &self,
        values: &Values<'_, N>,
        needs: &[Needs<N>],
        pieces: &impl Fn(&Good) -> Option<V<N>>,
        sorts: Option<&[Flow<N>]>,
    ) -> Vec<Mass<N>> {
        let mut asked = Vec::new();
        self.asked(needs, &mut asked, pieces, false);
        if let [yarn] = &asked[..] {
            let words = "scoured yarn that the goods need, as clean dry fibre";
            asked = vec![named("promise", "fibre_needed", words, Mass::from(*yarn)).v()];
        }
        let mut asked_before = vec![none(); self.yarns.len()];
        self.asked_up(values, &mut asked, &mut asked_before);
        let mut of_sort: Vec<V<N>> = vec![none(); self.sorts.len()];
        let asked: Vec<V<N>> = (0..self.heaps.len())
            .map(|heap| self.asked_of_heap(heap, values, &asked_before))
            .collect();
        let heaps = || self.heaps.iter().zip(&asked).filter(|(_, asked)| asked.0.value() > 0.0);
        // First the blends; a heap of all that there is has what they leave of its sorts.
        for (heap, asked) in heaps() {
            let Of::Shares(shares) = &heap.of else { continue };
            for (sort, share) in shares {
                of_sort[*sort] = of_sort[*sort] + *asked * V(values.at(*share));
            }
        }
        let mut there: Option<Vec<V<N>>> = None;
        for (heap, asked) in heaps() {
            let Of::All(all) = &heap.of else { continue };
            if let [sort] = all[..] {
                of_sort[sort] = of_sort[sort] + *asked;
                continue;
            }
            let there = there.get_or_insert_with(|| {
                if let Some(sorts) = sorts {
                    return sorts.iter().map(|flow| flow.fibre.v()).collect();
                }
                let mut made = Carried::default();
                self.carry(values, &mut made, &mut NoLedger, &mut |_, _| {});
                made.sorts.iter().map(|flow| flow.fibre.v()).collect()
            });
            let of_blends = all.iter().fold(*asked, |sum, sort| sum + of_sort[*sort]);
            let times = of_blends / V::sum(all.iter().map(|sort| there[*sort]));
            for sort in all {
                of_sort[*sort] = of_sort[*sort].max(there[*sort] * times);
            }
        }
        self.fleeces.iter().map(|fleece| self.of_fleece(fleece, values, &of_sort)).collect()
    }

    /// The greasy wool for some finished yarn, where all is one line.
    #[inline]
    pub(in crate::plan) fn back_line(&self, values: &Values<'_, f64>, yarn: f64) -> f64 {
        let fibre = up(&self.yarns[0].passes, values, Mass::base(yarn));
        let fibre = up(&self.heaps[0].passes, values, fibre);
        let fibre = up(&self.sorts[0].passes, values, fibre);
        let fleece = &self.fleeces[0];
        let fibre = up(&fleece.passes, values, fibre);
        fleece.inputs.wool.back(&fleece.key, values, fibre).value()
    }

    /// The greasy mass of a fleece of which its sorts are what is asked: the one that asks most binds.
    fn of_fleece<N: Number>(
        &self,
        fleece: &super::FleeceNode,
        values: &Values<'_, N>,
        of_sort: &[V<N>],
    ) -> Mass<N> {
        let greasy = |sort: &usize| -> Mass<N> {
            let node = &self.sorts[*sort];
            let fibre = up(&node.passes, values, Mass::from(of_sort[*sort]));
            if node.whole {
                let fibre = up(&fleece.passes, values, fibre);
                return fleece.inputs.wool.back(&fleece.key, values, fibre);
            }
            let mass = node.wool.back(&node.name, values, fibre);
            let share = node.share.map_or_else(
                || {
                    let rejects = fleece.rejects.map_or(none(), |place| V(values.at(place)));
                    let given = fleece.sorts.iter().filter_map(|sort| self.sorts[*sort].share);
                    given.fold(1.0 - rejects, |rest, share| rest - V(values.at(share)))
                },
                |place| V(values.at(place)),
            );
            Mass::from(mass.v() / share)
        };
        let asked = fleece.sorts.iter().filter(|sort| of_sort[**sort].0.value() > 0.0);
        let most = asked.map(greasy).map(Mass::v).reduce(V::max);
        Mass::from(most.unwrap_or(none()))
    }
}
