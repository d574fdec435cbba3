//! Whose the goods are, where several growers' wool went into one heap.

use super::chain::Nominal;
use super::tree::{From, Tree};
use super::{Plan, Stock};

/// What one grower has of the goods.
#[derive(Clone, Debug, PartialEq)]
pub struct Grower {
    /// The grower.
    pub owner: String,
    /// Greasy wool that the grower brought, kg.
    pub greasy_mass: f64,
    /// Clean dry fibre that the grower brought, kg.
    pub fibre_mass: f64,
    /// Of each good: its name, the grower's part of the pieces by the fibre in them, and the whole pieces
    /// that fall to the grower.
    pub goods: Vec<(String, f64, f64)>,
}

/// Shares of owners, in the order of the owners.
type Shares = Vec<f64>;

impl Plan {
    /// The growers of the lot and their pieces: by the clean dry fibre that each brought, whole pieces by
    /// the largest remainder. Nothing where there is only one.
    pub(super) fn growers(&self, nominal: &Nominal) -> Vec<Grower> {
        let tree = &self.tree;
        let mut owners: Vec<&str> = Vec::new();
        for fleece in &tree.fleeces {
            if !owners.contains(&fleece.owner.as_str()) {
                owners.push(&fleece.owner);
            }
        }
        if owners.len() < 2 {
            return Vec::new();
        }
        let owner_of = |fleece: usize| {
            let name = tree.fleeces[fleece].owner.as_str();
            owners.iter().position(|owner| *owner == name).unwrap_or(0)
        };
        let mut heaps: Vec<Shares> = vec![vec![0.0; owners.len()]; tree.heaps.len()];
        for (heap, sort, fibre) in &nominal.parts {
            heaps[*heap][owner_of(tree.sorts[*sort].fleece)] += fibre;
        }
        for heap in &mut heaps {
            let whole: f64 = heap.iter().sum();
            for part in heap {
                *part /= whole;
            }
        }
        let mut all: Vec<Grower> = owners
            .iter()
            .enumerate()
            .map(|(place, owner)| {
                let own = (0..tree.fleeces.len()).filter(|fleece| owner_of(*fleece) == place);
                let own = own.map(|fleece| &nominal.fleeces[fleece]);
                Grower {
                    owner: (*owner).to_owned(),
                    greasy_mass: own.clone().map(Stock::total).sum(),
                    fibre_mass: own.map(|wool| wool.fibre).sum(),
                    goods: Vec::new(),
                }
            })
            .collect();
        for (place, good) in tree.goods.iter().enumerate() {
            let mut parts = vec![0.0; owners.len()];
            for (yarn, fibre) in good.yarns().zip(&nominal.taken[place]) {
                let Some(shares) = shares_of(tree, yarn, &heaps) else { continue };
                parts.iter_mut().zip(shares).for_each(|(part, share)| *part += fibre * share);
            }
            let whole: f64 = parts.iter().sum();
            let made = nominal.made[place];
            let share = |part: &f64| if whole > 0.0 { made * part / whole } else { 0.0 };
            let exact: Vec<f64> = parts.iter().map(share).collect();
            let pieces = largest_remainder(&exact, made);
            for ((grower, exact), pieces) in all.iter_mut().zip(exact).zip(pieces) {
                grower.goods.push((good.name.clone(), exact, pieces));
            }
        }
        all
    }
}

/// The shares of the owners in a yarn; nothing of one from stock.
fn shares_of<'h>(tree: &Tree, yarn: usize, heaps: &'h [Shares]) -> Option<&'h Shares> {
    match tree.yarns[yarn].from {
        From::Heap(heap) => Some(&heaps[heap]),
        From::Yarn(parent) => shares_of(tree, parent, heaps),
        From::Stock(_) => None,
    }
}

/// Whole numbers that make a sum together, each as near as can be to its exact part: those with the
/// largest remainders are rounded up.
fn largest_remainder(exact: &[f64], sum: f64) -> Vec<f64> {
    let mut whole: Vec<f64> = exact.iter().map(|x| (x + 1e-9).floor()).collect();
    let mut order: Vec<usize> = (0..exact.len()).collect();
    let remainder = |place: &usize| exact[*place] - (exact[*place] + 1e-9).floor();
    order.sort_by(|a, b| remainder(b).total_cmp(&remainder(a)));
    let rest = (sum - whole.iter().sum::<f64>()).round().max(0.0);
    for place in order.into_iter().take(rest as usize) {
        whole[place] += 1.0;
    }
    whole
}

#[cfg(test)]
mod tests {
    use super::largest_remainder;

    #[test]
    fn pieces_fall_to_the_largest_remainders() {
        assert_eq!(largest_remainder(&[10.04, 7.72, 4.25], 22.0), [10.0, 8.0, 4.0]);
        assert_eq!(largest_remainder(&[0.4, 0.4, 0.2], 1.0), [1.0, 0.0, 0.0]);
        assert_eq!(largest_remainder(&[2.0, 3.0], 5.0), [2.0, 3.0]);
    }
}
