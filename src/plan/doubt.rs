//! What to measure first: which uncertain value moves the answer most.

use super::Plan;
use super::chain::simulate;
use super::chance::Layer;
use super::given::Values;
use super::lots::{BINS, Block, bin_middle};
use super::tree::forward::Carried;
use crate::normal::Z95;

/// How much one uncertain value has to do with the uncertainty of the promise.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubt {
    /// Name of the value.
    pub key: String,
    /// What it is, in words.
    pub words: String,
    /// Where its uncertainty comes from.
    pub layer: Layer,
    /// Share of the variance of what is spare that would go if the value were known.
    pub share: f64,
    /// Pieces spare (negative: short) of a plan in which the value is known and at its low end, and at its
    /// high end; all other values as planned.
    pub swing: (f64, f64),
    /// Chance of falling short where the value is at its low end, and at its high end; all other values
    /// drawn, as in the simulated lots.
    pub short: (f64, f64),
}

/// Ranks the uncertain values. What is spare is counted in pieces of the good at the place `counted`, of
/// which the whole lot makes `scale` where it is divided.
///
/// For a value, the simulated lots are sorted into bins by its deviate: the variance of the means is
/// what knowing the value would take away (the same simulated lots serve all values).
pub(super) fn rank(plan: &Plan, blocks: &[Block], counted: usize, scale: f64) -> Vec<Doubt> {
    let spare = || blocks.iter().flat_map(|b| b.spare.iter().copied());
    let lots = spare().count() as f64;
    let mean = spare().sum::<f64>() / lots;
    let variance = spare().map(|m| (m - mean) * (m - mean)).sum::<f64>() / lots;
    let open = plan.given.iter().enumerate().filter(|(_, g)| g.spread.is_open());
    let mut doubts: Vec<Doubt> = open
        .enumerate()
        .map(|(place, (at, given))| {
            let mut bins = [[0.0; 3]; BINS];
            for block in blocks {
                for (all, one) in bins.iter_mut().zip(&block.bins[place * BINS..]) {
                    for (a, b) in all.iter_mut().zip(one) {
                        *a += b;
                    }
                }
            }
            let filled = bins.iter().filter(|[n, ..]| *n > 0.0).count() as f64;
            let between = bins
                .iter()
                .filter(|[n, ..]| *n > 0.0)
                .map(|[n, sum, _]| n * (sum / n - mean) * (sum / n - mean))
                .sum::<f64>()
                / lots;
            // Bins of values that do nothing differ too, by chance: so much is taken off.
            let chance = (filled - 1.0) / lots * variance;
            let share =
                if variance > 0.0 { ((between - chance) / variance).clamp(0.0, 1.0) } else { 0.0 };
            Doubt {
                key: given.key.clone(),
                words: given.meaning.to_owned(),
                layer: given.layer,
                share,
                swing: (
                    spare_with(plan, at, -Z95, counted, scale),
                    spare_with(plan, at, Z95, counted, scale),
                ),
                short: (short_at(&bins, -Z95), short_at(&bins, Z95)),
            }
        })
        .collect();
    doubts.sort_by(|a, b| b.share.total_cmp(&a.share));
    doubts
}

/// Pieces spare where one value is at a deviate and the others are as planned.
fn spare_with(plan: &Plan, at: usize, z: f64, counted: usize, scale: f64) -> f64 {
    let mut given = plan.likely();
    given[at] = plan.given[at].draw().at(z).0;
    let values = Values { given: &given };
    let mut fibre = vec![0.0; plan.tree.passes];
    let mut pieces = vec![0.0; plan.tree.goods.len()];
    let mut scratch = Carried::default();
    let (spare, _) = simulate(plan, &values, &mut scratch, &mut fibre, &mut pieces);
    if plan.tree.is_line() { spare / scratch.needs[counted].each().0 } else { spare * scale }
}

/// Share of the lots that fall short at a deviate: on the straight line through the two bins that have
/// lots and lie next to it.
fn short_at(bins: &[[f64; 3]; BINS], z: f64) -> f64 {
    let filled = || (0..BINS).filter(|bin| bins[*bin][0] > 0.0);
    let below = filled().rfind(|bin| bin_middle(*bin) <= z);
    let above = filled().find(|bin| bin_middle(*bin) > z);
    let share = |bin: usize| bins[bin][2] / bins[bin][0];
    match (below, above) {
        (Some(below), Some(above)) => {
            let (from, to) = (bin_middle(below), bin_middle(above));
            let part = (z - from) / (to - from);
            share(below) * (1.0 - part) + share(above) * part
        }
        (Some(bin), None) | (None, Some(bin)) => share(bin),
        (None, None) => f64::NAN,
    }
}
