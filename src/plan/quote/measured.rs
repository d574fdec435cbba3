//! What the rates are applied to: masses, pieces and hours of a lot.

use super::rules::Rules;
use crate::plan::chain::Nominal;
use crate::plan::goods::{Good, Taken};
use crate::plan::lots::Lot;
use crate::plan::stage::NoLedger;
use crate::plan::stock::Flow;
use crate::plan::tree::forward::Carried;
use crate::plan::tree::{FleeceNode, Pass};
use crate::plan::{Plan, Setting};
use crate::quantity::Kind;

/// What the rules are applied to: one lot carried through.
#[derive(Default)]
pub(super) struct Measured {
    /// What comes into each stage and out of it, as weighed.
    pub(super) flow: Vec<(f64, f64)>,
    /// Each fleece, and the sorts of each together.
    pub(super) fleeces: Vec<(f64, f64)>,
    pub(super) pieces: Vec<f64>,
    pub(super) yarn: Vec<f64>,
    pub(super) finished: Vec<f64>,
    pub(super) hours: Vec<Option<f64>>,
}

/// Mass of a state for each unit of clean dry fibre; none of no mass.
fn each(mass: f64, fibre: f64) -> f64 {
    if fibre > 0.0 { mass / fibre } else { 0.0 }
}

impl Measured {
    /// One lot with some values, its machines set.
    pub(super) fn whole(plan: &Plan, rules: &Rules, values: &[f64]) -> (Measured, Nominal) {
        let nominal = Nominal::plain(plan, values);
        let tree = &plan.tree;
        let mut lot = Measured { pieces: nominal.made.clone(), ..Measured::default() };
        lot.flow = nominal.flow.iter().map(|(into, out)| (into.total(), out.total())).collect();
        for (fleece, node) in nominal.fleeces.iter().zip(&tree.fleeces) {
            let sorts = node.sorts.iter().map(|sort| nominal.begun[*sort].total());
            lot.fleeces.push((fleece.total(), sorts.sum()));
        }
        for (good, taken) in tree.goods.iter().zip(&nominal.taken) {
            let as_weighed = |(yarn, fibre): (usize, &f64)| {
                let made = nominal.yarns[yarn].finished;
                fibre * each(made.total(), made.fibre)
            };
            lot.yarn.push(good.yarns().zip(taken).map(as_weighed).sum());
            let goods = nominal.used.iter().filter(|u| u.to == "goods" && u.stage == good.name);
            let sold = goods.map(|u| u.fibre.value() * nominal.label_states[u.yarn]);
            lot.finished.push(sold.sum());
        }
        for names in &rules.hours {
            let timed = |name: &String| {
                let of = |s: &&Setting| s.key == *name && s.kind == Kind::Duration;
                nominal.settings.iter().find(of).map(|s| s.value)
            };
            lot.hours.push(names.iter().find_map(timed));
        }
        (lot, nominal)
    }

    /// One simulated lot: masses and pieces alone.
    pub(super) fn carry(&mut self, plan: &Plan, lot: &Lot<'_>, made: &mut Carried<f64>) {
        let tree = &plan.tree;
        let mass = |flow: &Flow<f64>| flow.stock().total();
        self.flow.resize(tree.passes, (0.0, 0.0));
        let flow = &mut self.flow;
        tree.carry(&lot.values, made, &mut NoLedger, &mut |place, out| flow[place].1 = mass(&out));
        let mut walk = |passes: &[Pass], begin: &Flow<f64>| {
            passes.iter().fold(mass(begin), |into, pass| {
                flow[pass.place].0 = into;
                flow[pass.place].1
            });
        };
        for (node, begin) in tree.fleeces.iter().zip(&made.fleeces) {
            walk(&node.passes, begin);
        }
        for (node, begin) in tree.sorts.iter().zip(&made.begun) {
            walk(&node.passes, begin);
        }
        for (node, (begin, _)) in tree.heaps.iter().zip(&made.heaps) {
            walk(&node.passes, begin);
        }
        for (node, (begin, _)) in tree.yarns.iter().zip(&made.yarns) {
            walk(&node.passes, begin);
        }
        let fleeces = made.fleeces.iter().zip(&tree.fleeces);
        let of = |(fleece, node): (&Flow<f64>, &FleeceNode)| {
            (mass(fleece), node.sorts.iter().map(|sort| mass(&made.begun[*sort])).sum())
        };
        self.fleeces = fleeces.map(of).collect();
        self.pieces = made.taken.iter().map(|taken| taken.made.value()).collect();
        let yarn = |(good, taken): (&Good, &Taken<f64>)| {
            let taken = good.yarns().zip(taken.each());
            taken.map(|(yarn, fibre)| fibre.value() * made.yarns[yarn].1.plain_state().0).sum()
        };
        self.yarn = tree.goods.iter().zip(&made.taken).map(yarn).collect();
    }
}
