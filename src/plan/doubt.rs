//! What to measure first: which uncertain value moves the answer most.

use super::Plan;
use super::chance::Layer;
use super::lots::{BINS, Block};

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
    /// Pieces spare on average (negative: short) where the value is at its low end and at its high end.
    pub swing: (f64, f64),
    /// Chance of falling short where the value is at its low end and at its high end.
    pub short: (f64, f64),
}

/// Ranks the uncertain values. What is spare is divided by `piece`, the yarn in a piece.
///
/// For a value, the simulated lots are sorted into bins by its deviate: the variance of the means is
/// what knowing the value would take away (the same simulated lots serve all values).
pub(super) fn rank(plan: &Plan, blocks: &[Block], piece: f64) -> Vec<Doubt> {
    let spare = || blocks.iter().flat_map(|b| b.spare.iter().copied());
    let lots = spare().count() as f64;
    let mean = spare().sum::<f64>() / lots;
    let variance = spare().map(|m| (m - mean) * (m - mean)).sum::<f64>() / lots;
    let open = plan.given.iter().filter(|g| g.spread.is_open());
    let mut doubts: Vec<Doubt> = open
        .enumerate()
        .map(|(place, given)| {
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
            // The lowest and the highest twentieth of the simulated lots, in whole bins.
            let end = |inwards: &mut dyn Iterator<Item = &[f64; 3]>| {
                let mut all = [0.0; 3];
                while all[0] < 0.05 * lots
                    && let Some(bin) = inwards.next()
                {
                    for (a, b) in all.iter_mut().zip(bin) {
                        *a += b;
                    }
                }
                let [n, sum, short] = all;
                (sum / n / piece, short / n)
            };
            let (low, short_low) = end(&mut bins.iter());
            let (high, short_high) = end(&mut bins.iter().rev());
            Doubt {
                key: given.key.clone(),
                words: given.meaning.to_owned(),
                layer: given.layer,
                share,
                swing: (low, high),
                short: (short_low, short_high),
            }
        })
        .collect();
    doubts.sort_by(|a, b| b.share.total_cmp(&a.share));
    doubts
}
