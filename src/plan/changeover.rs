//! Changing over from one wool, yarn or warp to the next: in which order, how long, how much wool.

use super::Plan;
use super::chain::Nominal;
use super::tree::{From, Of};

/// One change on a machine.
#[derive(Clone, Debug, PartialEq)]
pub struct Changeover {
    /// The machine.
    pub machine: String,
    /// What ran before; empty for what ran before this lot.
    pub before: String,
    /// What runs next.
    pub next: String,
    /// How long it takes, hours.
    pub time: f64,
    /// Clean dry fibre that the machine keeps of what runs next, kg.
    pub kept: f64,
}

impl Plan {
    /// The changes on the machines that say how long one takes: heaps from light to dark, where the mill
    /// names the order of its colours, else as they are written; the warps of each loom as the goods are.
    pub(super) fn changeovers(&self, nominal: &Nominal) -> Vec<Changeover> {
        let tree = &self.tree;
        let mut heaps: Vec<usize> = (0..tree.heaps.len()).collect();
        heaps.sort_by_key(|heap| self.darkness(*heap));
        let place = |yarn: usize| {
            let mut root = yarn;
            while let From::Yarn(parent) = tree.yarns[root].from {
                root = parent;
            }
            match tree.yarns[root].from {
                From::Heap(heap) => heaps.iter().position(|other| *other == heap),
                _ => None,
            }
        };
        let mut yarns: Vec<usize> = (0..tree.yarns.len()).collect();
        yarns.sort_by_key(|yarn| (place(*yarn), tree.yarns[*yarn].rank));
        let mut all: Vec<Changeover> = Vec::new();
        let mut change = |machine: &str, next: &str, time: f64, kept: f64| {
            let before = all.iter().rev().find(|change| change.machine == machine);
            let before = before.map_or_else(String::new, |change| change.next.clone());
            let (machine, next) = (machine.to_owned(), next.to_owned());
            all.push(Changeover { machine, before, next, time, kept });
        };
        for yarn in yarns {
            let node = &tree.yarns[yarn];
            for pass in &node.passes {
                let Some(time) = pass.changeover else { continue };
                let kept = pass.stage.held_up().filter(|_| pass.keeps);
                let kept = kept.map_or(0.0, |place| self.given[place.0].base());
                let kept = kept.min(nominal.flow[pass.place].0.fibre);
                change(&pass.machine, &node.name, self.given[time.0].base(), kept);
            }
        }
        for good in &tree.goods {
            if let Some((loom, time)) = good.loom_changeover() {
                change(loom, &good.name, self.given[time.0].base(), 0.0);
            }
        }
        all
    }

    /// The place of a heap among the colours of the mill.
    fn darkness(&self, heap: usize) -> usize {
        let sorts: Vec<usize> = match &self.tree.heaps[heap].of {
            Of::All(all) => all.clone(),
            Of::Shares(shares) => shares.iter().map(|(sort, _)| *sort).collect(),
        };
        let colour = |sort: &usize| {
            let fleece = &self.tree.fleeces[self.tree.sorts[*sort].fleece];
            self.colours.iter().position(|colour| *colour == fleece.colour)
        };
        sorts.iter().filter_map(colour).max().unwrap_or(0)
    }
}
