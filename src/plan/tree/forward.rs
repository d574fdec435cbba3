//! Down the tree: from the fleeces to the goods.

use super::mix::Parts;
use super::{Cut, From, Of, Tree, down, up};
use crate::number::{Number, V};
use crate::plan::given::Values;
use crate::plan::goods::{Good, Needs, Shop, Taken, YarnEnd};
use crate::plan::stage::{Ledger, named};
use crate::plan::stock::{Flow, dyed};
use crate::quantity::{Mass, OnFibre};

/// What comes of a lot, at every joint.
#[derive(Debug)]
pub(in crate::plan) struct Carried<N> {
    /// The greasy wool.
    pub(in crate::plan) fleeces: Vec<Flow<N>>,
    /// Where the sorts begin.
    pub(in crate::plan) begun: Vec<Flow<N>>,
    /// What is ready for the heaps.
    pub(in crate::plan) sorts: Vec<Flow<N>>,
    /// What of each sort no heap took.
    pub(in crate::plan) left_sorts: Vec<V<N>>,
    /// Where the heaps begin, and as they are ready for the card.
    pub(in crate::plan) heaps: Vec<(Flow<N>, Flow<N>)>,
    /// What each heap has of each sort: heap, sort, clean dry fibre.
    pub(in crate::plan) parts: Vec<(usize, usize, V<N>)>,
    /// What is left of each heap unspun.
    pub(in crate::plan) unspun: Vec<V<N>>,
    /// Where the yarns begin, and as they are finished.
    pub(in crate::plan) yarns: Vec<(Flow<N>, Flow<N>)>,
    /// What of each yarn no goods took.
    pub(in crate::plan) left_yarns: Vec<V<N>>,
    /// What each yarn is, for the goods.
    pub(in crate::plan) ends: Vec<YarnEnd<N>>,
    pub(in crate::plan) needs: Vec<Needs<N>>,
    /// What of each finished yarn the promises ask.
    pub(in crate::plan) asked: Vec<V<N>>,
    /// What of its heap, or of the yarn that it is made from, each yarn asks for the promises.
    pub(in crate::plan) asked_before: Vec<V<N>>,
    pub(in crate::plan) taken: Vec<Taken<N>>,
    /// With what each yarn begins, once it is known.
    begins: Vec<Option<Flow<N>>>,
}

impl<N> Default for Carried<N> {
    fn default() -> Self {
        Carried {
            fleeces: Vec::new(),
            begun: Vec::new(),
            sorts: Vec::new(),
            left_sorts: Vec::new(),
            heaps: Vec::new(),
            parts: Vec::new(),
            unspun: Vec::new(),
            yarns: Vec::new(),
            left_yarns: Vec::new(),
            ends: Vec::new(),
            needs: Vec::new(),
            asked: Vec::new(),
            asked_before: Vec::new(),
            taken: Vec::new(),
            begins: Vec::new(),
        }
    }
}

fn none<N: Number>() -> V<N> {
    V::constant(0.0)
}

impl Tree {
    /// Carries a lot down; `see` is shown what leaves each stage.
    pub(in crate::plan) fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        made: &mut Carried<N>,
        ledger: &mut impl Ledger,
        see: &mut impl FnMut(usize, Flow<N>),
    ) {
        self.sort(values, made, ledger, see);
        self.yarn_ends(values, &mut made.ends);
        self.needs(values, &made.ends, &mut made.needs);
        self.ask(values, made);
        self.blend(values, made, ledger, see);
        self.spin(values, made, ledger, see);
        self.serve(values, made);
    }

    /// Fleeces to sorts.
    fn sort<N: Number>(
        &self,
        values: &Values<'_, N>,
        made: &mut Carried<N>,
        ledger: &mut impl Ledger,
        see: &mut impl FnMut(usize, Flow<N>),
    ) {
        made.fleeces.clear();
        made.sorts.clear();
        made.begun.clear();
        for fleece in &self.fleeces {
            let greasy = Mass::base(values.at(*fleece.inputs.greasy.inner()));
            let whole = fleece.inputs.wool.flow(&fleece.key, values, greasy);
            if let [sort] = fleece.sorts[..]
                && self.sorts[sort].whole
            {
                made.fleeces.push(whole);
                let sorted = down(&fleece.passes, values, whole, ledger, see);
                made.begun.push(sorted);
                made.sorts.push(down(&self.sorts[sort].passes, values, sorted, ledger, see));
                continue;
            }
            // Each sort is a share of the mass and has a yield of its own; so has what is sorted out.
            let rejects = fleece.rejects.map_or(none(), |place| V(values.at(place)));
            let rest = fleece
                .sorts
                .iter()
                .filter_map(|sort| self.sorts[*sort].share)
                .fold(1.0 - rejects, |rest, share| rest - V(values.at(share)));
            let reject = Flow { fibre: Mass::from(whole.fibre.v() * rejects), ..whole };
            ledger.sorted_out(fleece, || reject.stock());
            let mut all = Parts::new();
            all.add(reject);
            for sort in &fleece.sorts {
                let node = &self.sorts[*sort];
                let share = node.share.map_or(rest, |place| V(values.at(place)));
                let mass = named(
                    &node.name,
                    "greasy",
                    "greasy mass of the sort",
                    Mass::from(greasy.v() * share),
                );
                let flow = node.wool.flow(&node.name, values, mass);
                all.add(flow);
                made.begun.push(flow);
                made.sorts.push(down(&node.passes, values, flow, ledger, see));
            }
            made.fleeces.push(all.mixed());
        }
    }

    /// What each good needs of its yarns.
    pub(in crate::plan) fn needs<N: Number>(
        &self,
        values: &Values<'_, N>,
        ends: &[YarnEnd<N>],
        needs: &mut Vec<Needs<N>>,
    ) {
        needs.clear();
        let shop = Shop { values, ends };
        needs.extend(self.goods.iter().map(|good| good.need(&shop)));
    }

    /// What the promises ask of each yarn, and of what it is made from.
    fn ask<N: Number>(&self, values: &Values<'_, N>, made: &mut Carried<N>) {
        let Carried { needs, asked, asked_before, .. } = made;
        let line = self.is_line();
        self.asked(needs, asked, &|good: &Good| good.wanted(values), line);
        asked_before.clear();
        asked_before.resize(self.yarns.len(), none());
        if line {
            return;
        }
        self.asked_up(values, asked, asked_before);
    }

    /// What goods in some numbers ask of each finished yarn; parts of it that go on to another are not
    /// in it yet.
    pub(in crate::plan) fn asked<N: Number>(
        &self,
        needs: &[Needs<N>],
        asked: &mut Vec<V<N>>,
        pieces: &impl Fn(&Good) -> Option<V<N>>,
        quiet: bool,
    ) {
        asked.clear();
        asked.resize(self.yarns.len(), none());
        if quiet {
            return;
        }
        for (good, needs) in self.goods.iter().zip(needs) {
            let Some(pieces) = pieces(good).filter(|n| n.0.value() > 0.0) else { continue };
            for part in needs.parts() {
                let need = part.need.fixed.v() + pieces * part.need.each.v();
                asked[part.yarn] = asked[part.yarn] + need;
            }
        }
    }

    /// From what is asked of the finished yarns to what is asked where they begin; what goes on from one
    /// yarn to another is added to what is asked of it.
    pub(in crate::plan) fn asked_up<N: Number>(
        &self,
        values: &Values<'_, N>,
        asked: &mut [V<N>],
        asked_before: &mut [V<N>],
    ) {
        for place in self.order.iter().copied().rev() {
            let yarn = &self.yarns[place];
            if asked[place].0.value() <= 0.0 {
                continue;
            }
            let before = up(&yarn.passes, values, Mass::from(asked[place])).v();
            asked_before[place] = before;
            if let From::Yarn(parent) = yarn.from {
                asked[parent] = asked[parent] + before;
            }
        }
    }

    /// Sorts to heaps, and the heaps through their routes.
    fn blend<N: Number>(
        &self,
        values: &Values<'_, N>,
        made: &mut Carried<N>,
        ledger: &mut impl Ledger,
        see: &mut impl FnMut(usize, Flow<N>),
    ) {
        let Carried { sorts, left_sorts, heaps, asked_before, parts: all_parts, .. } = made;
        all_parts.clear();
        left_sorts.clear();
        left_sorts.extend(sorts.iter().map(|flow| flow.fibre.v()));
        heaps.clear();
        if self.is_line() {
            let flow = sorts[0];
            left_sorts[0] = none();
            heaps.push((flow, down(&self.heaps[0].passes, values, flow, ledger, see)));
            return;
        }
        // First the blends, as much as their goods need; then they fill up, where no other heap waits.
        let mut taken: Vec<V<N>> = vec![none(); self.heaps.len()];
        for fill in [false, true] {
            for (place, heap) in self.heaps.iter().enumerate() {
                let Of::Shares(shares) = &heap.of else { continue };
                let most = shares
                    .iter()
                    .map(|(sort, share)| left_sorts[*sort] / V(values.at(*share)))
                    .reduce(V::min)
                    .unwrap_or(none());
                let more = if fill {
                    if !self.fills_up(place) {
                        continue;
                    }
                    most
                } else {
                    self.asked_of_heap(place, values, asked_before).min(most)
                };
                taken[place] = taken[place] + more;
                for (sort, share) in shares {
                    left_sorts[*sort] = left_sorts[*sort] - more * V(values.at(*share));
                }
            }
        }
        for (place, heap) in self.heaps.iter().enumerate() {
            let mut parts = Parts::new();
            match &heap.of {
                Of::All(all) => {
                    for sort in all {
                        let fibre = Mass::from(left_sorts[*sort]);
                        all_parts.push((place, *sort, fibre.v()));
                        left_sorts[*sort] = none();
                        parts.add(Flow { fibre, ..sorts[*sort] });
                    }
                }
                Of::Shares(shares) => {
                    for (sort, share) in shares {
                        let fibre = Mass::from(taken[place] * V(values.at(*share)));
                        all_parts.push((place, *sort, fibre.v()));
                        parts.add(Flow { fibre, ..sorts[*sort] });
                    }
                }
            }
            let mixed = parts.mixed();
            let fibre = named(&heap.key, "fibre", "clean dry fibre in the heap", mixed.fibre);
            let flow = Flow { fibre, ..mixed };
            heaps.push((flow, down(&heap.passes, values, flow, ledger, see)));
        }
    }

    /// Whether a blend takes all that it can get.
    fn fills_up(&self, heap: usize) -> bool {
        let Of::Shares(shares) = &self.heaps[heap].of else { return false };
        let waits = |sort: usize| {
            self.heaps.iter().any(|other| matches!(&other.of, Of::All(all) if all.contains(&sort)))
        };
        self.heaps[heap].yarns.iter().any(|yarn| self.wants_rest(*yarn))
            && !shares.iter().any(|(sort, _)| waits(*sort))
    }

    /// Whether goods of a yarn, or of one made from it, take what is left.
    pub(in crate::plan) fn wants_rest(&self, yarn: usize) -> bool {
        let yarn = &self.yarns[yarn];
        yarn.takes_rest || yarn.children.iter().any(|child| self.wants_rest(*child))
    }

    /// What the promises ask of a heap, where it begins.
    pub(in crate::plan) fn asked_of_heap<N: Number>(
        &self,
        heap: usize,
        values: &Values<'_, N>,
        asked_before: &[V<N>],
    ) -> V<N> {
        let heap = &self.heaps[heap];
        let asked = heap.yarns.iter().fold(none(), |sum, yarn| sum + asked_before[*yarn]);
        if asked.0.value() <= 0.0 {
            return asked;
        }
        up(&heap.passes, values, Mass::from(asked)).v()
    }

    /// Heaps to yarns, and the yarns through their routes.
    fn spin<N: Number>(
        &self,
        values: &Values<'_, N>,
        made: &mut Carried<N>,
        ledger: &mut impl Ledger,
        see: &mut impl FnMut(usize, Flow<N>),
    ) {
        let Carried { heaps, unspun, yarns, left_yarns, asked, asked_before, begins, .. } = made;
        unspun.clear();
        yarns.clear();
        left_yarns.clear();
        left_yarns.resize(self.yarns.len(), none());
        begins.clear();
        begins.resize(self.yarns.len(), None);
        for (heap, (_, ready)) in self.heaps.iter().zip(heaps.iter()) {
            let mut left = ready.fibre.v();
            if let [yarn] = heap.yarns[..]
                && heap.held.is_none()
                && heap.split.is_none()
            {
                begins[yarn] = Some(*ready);
                unspun.push(none());
                continue;
            }
            let state = ready.plain_state();
            if let Some(held) = heap.held {
                left = left - V(values.at(held)) / state;
            }
            let whole = left;
            if let Some(cuts) = &heap.split {
                for (yarn, cut) in heap.yarns.iter().zip(cuts) {
                    let part = match cut {
                        Cut::Share(share) => whole * V(values.at(*share)),
                        Cut::Mass(mass) => V(values.at(*mass)) / state,
                        Cut::Rest => continue,
                    };
                    let part = part.min(left).max(none());
                    left = left - part;
                    begins[*yarn] = Some(part_of(ready, part));
                }
                for (yarn, cut) in heap.yarns.iter().zip(cuts) {
                    if matches!(cut, Cut::Rest) {
                        begins[*yarn] = Some(part_of(ready, left));
                        left = none();
                    }
                }
            } else {
                // As each turns out to need, and the last takes what is left.
                let rest = heap.yarns.iter().rev().find(|yarn| self.wants_rest(**yarn));
                for yarn in heap.yarns.iter().filter(|yarn| Some(*yarn) != rest) {
                    let part = asked_before[*yarn].min(left).max(none());
                    left = left - part;
                    begins[*yarn] = Some(part_of(ready, part));
                }
                if let Some(yarn) = rest {
                    begins[*yarn] = Some(part_of(ready, left));
                    left = none();
                }
            }
            unspun.push(left);
        }
        let empty = Flow {
            fibre: Mass::from(none()),
            regain: crate::quantity::Regain::base(N::constant(0.0)),
            fat: OnFibre::base(N::constant(0.0)),
            oil: none(),
            vegetable: OnFibre::base(N::constant(0.0)),
            stays: None,
        };
        yarns.resize(self.yarns.len(), (empty, empty));
        for place in self.order.iter().copied() {
            let yarn = &self.yarns[place];
            let begin = match &yarn.from {
                From::Stock(stock) => stock.flow(&yarn.key, values),
                _ => begins[place].unwrap_or(empty),
            };
            let mut end = down(&yarn.passes, values, begin, ledger, see);
            // A machine that keeps more than came in gives nothing.
            if end.fibre.value() < 0.0 && !self.is_line() {
                end.fibre = Mass::from(none());
            }
            yarns[place] = (begin, end);
            let mut left = end.fibre.v();
            let own = yarn.children.iter().fold(asked[place], |own, c| own - asked_before[*c]);
            let mut parts: Vec<(usize, V<N>)> = Vec::new();
            for child in &yarn.children {
                // Its own goods come first where they are served before.
                let free = if self.yarns[*child].rank < yarn.rank { left } else { left - own };
                let part = asked_before[*child].min(free).max(none());
                left = left - part;
                parts.push((*child, part));
            }
            let rest = parts.iter_mut().find(|(child, _)| self.wants_rest(*child));
            if let Some((_, part)) = rest.filter(|_| !yarn.takes_rest) {
                let more = (left - own).max(none());
                *part = *part + more;
                left = left - more;
            }
            for (child, part) in parts {
                begins[child] = Some(part_of(&end, part));
            }
            left_yarns[place] = left;
        }
    }

    /// Yarns to goods: in order, as many of each as leaves those before it whole; then those that take
    /// what is left.
    fn serve<N: Number>(&self, values: &Values<'_, N>, made: &mut Carried<N>) {
        let Carried { needs, left_yarns, taken, .. } = made;
        taken.clear();
        for (place, (good, needs)) in self.goods.iter().zip(needs.iter()).enumerate() {
            let all = good.takes_rest && self.last_of_yarn[place];
            let served = good.take(values, needs, left_yarns, all);
            served.off(needs, left_yarns);
            taken.push(served);
        }
        for (place, (good, needs)) in self.goods.iter().zip(needs.iter()).enumerate() {
            if good.takes_rest && !self.last_of_yarn[place] {
                taken[place].give_back(needs, left_yarns);
                let served = good.take(values, needs, left_yarns, true);
                served.off(needs, left_yarns);
                taken[place] = served;
            }
        }
    }
}

fn part_of<N: Number>(flow: &Flow<N>, fibre: V<N>) -> Flow<N> {
    Flow { fibre: Mass::from(fibre), ..*flow }
}

impl<N: Number> Flow<N> {
    /// Mass for each unit of clean dry fibre, without a name of its own.
    pub(in crate::plan) fn plain_state(&self) -> V<N> {
        let state = crate::fibre::state_ratio(self.regain, self.fat, self.vegetable);
        dyed(state, self.stays).v()
    }
}
