//! What to measure first: which uncertain value moves the answer most.

use super::Plan;
use super::chance::Layer;
use super::draws::{BINS, Block};

/// How much one uncertain value has to do with the uncertainty of the margin.
#[derive(Clone, Debug, PartialEq)]
pub struct Driver {
    /// Name of the value.
    pub key: String,
    /// What it is, in words.
    pub words: String,
    /// What varies when it varies.
    pub layer: Layer,
    /// Share of the margin's variance that would go if the value were known.
    pub share: f64,
    /// Mean margin, in pieces, where the value is at its low end and at its high end.
    pub swing: (f64, f64),
    /// Chance of falling short where the value is at its low end and at its high end.
    pub short: (f64, f64),
}

/// Ranks the uncertain values. The margin is divided by `piece`, the yarn in a piece.
///
/// For a value, the simulated lots are sorted into bins by its deviate: the variance of the means is
/// what knowing the value would take away (the same simulated lots serve all values).
pub(super) fn rank(plan: &Plan, blocks: &[Block], piece: f64) -> Vec<Driver> {
    let margins = || blocks.iter().flat_map(|b| b.margin.iter().copied());
    let draws = margins().count() as f64;
    let mean = margins().sum::<f64>() / draws;
    let variance = margins().map(|m| (m - mean) * (m - mean)).sum::<f64>() / draws;
    let open = plan.given.iter().filter(|g| g.spread.is_open());
    let mut drivers: Vec<Driver> = open
        .enumerate()
        .map(|(figure, given)| {
            let mut bins = [[0.0; 3]; BINS];
            for block in blocks {
                for (all, one) in bins.iter_mut().zip(&block.bins[figure * BINS..]) {
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
                / draws;
            // Bins of values that do nothing differ too, by chance: so much is taken off.
            let chance = (filled - 1.0) / draws * variance;
            let share =
                if variance > 0.0 { ((between - chance) / variance).clamp(0.0, 1.0) } else { 0.0 };
            // The lowest and the highest twentieth of the simulated lots, in whole bins.
            let end = |inwards: &mut dyn Iterator<Item = &[f64; 3]>| {
                let mut all = [0.0; 3];
                while all[0] < 0.05 * draws
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
            Driver {
                key: given.key.clone(),
                words: given.meaning.to_owned(),
                layer: given.layer,
                share,
                swing: (low, high),
                short: (short_low, short_high),
            }
        })
        .collect();
    drivers.sort_by(|a, b| b.share.total_cmp(&a.share));
    drivers
}
