//! Hanks: turns of the reel, length, and what scouring does to the count.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Length, LinearDensity, Ratio, ShareLost, Shrinkage};

/// Whole turns of the reel for a hank that still has its length after scouring.
#[formula(
    result = "z_r",
    sources = ["practice"],
    limits = ["rounded up, so that no hank is short"],
    slips = ["adding the shrinkage to the length instead of dividing by 1 − s"]
)]
pub fn reel_turns<N: Number>(
    /// length of the finished hank
    #[q("l_h", 10.0..=2000.0)]
    hank_length: Length<N>,
    /// circumference of the reel
    #[q("C_r", 0.5..=3.0)]
    reel_circumference: Length<N>,
    /// shrinkage in scouring
    #[q("s", 0.0..=0.15)]
    shrinkage: Shrinkage<N>,
) -> Count<N> {
    // A millionth of a turn: 58 turns must not become 58.000…1 by the rounding of binary figures.
    (hank_length / (1.0 - shrinkage) / reel_circumference).round_up(1e-6)
}

/// Length of a hank after scouring.
#[formula(
    result = "l_h",
    sources = ["Nasmith 1890", "Woodhouse and Kilgour 1921"],
    limits = ["shrinkage zero gives the length as reeled"],
    slips = ["reeling at the label's length and selling short"]
)]
pub fn hank_length<N: Number>(
    /// turns of the reel
    #[q("z_r", 10.0..=2000.0)]
    reel_turns: Count<N>,
    /// circumference of the reel
    #[q("C_r", 0.5..=3.0)]
    reel_circumference: Length<N>,
    /// shrinkage in scouring
    #[q("s", 0.0..=0.15)]
    shrinkage: Shrinkage<N>,
) -> Length<N> {
    reel_turns * reel_circumference * (1.0 - shrinkage)
}

/// Count of a yarn after its hanks are scoured: oil out, a little fibre out, shorter.
#[formula(
    result = "T₂",
    sources = ["practice"],
    limits = ["the ratio of states is 1 where both counts are on clean dry fibre"],
    slips = ["changing the count once: scouring changes both the mass and the length"]
)]
#[inverse(
    "The count to make before scouring for a count wanted after it.",
    count_before_scouring(count_after "count wanted after": 10.0..=4000.0, state_change, loss, shrinkage) -> count_before
        = count_after * (1.0 - shrinkage) / ((1.0 - loss) * state_change),
    slips = ["multiplying by 1 + s instead of by 1 − s"]
)]
pub fn count_after_scouring<N: Number>(
    /// count before
    #[q("T₁", 10.0..=4000.0)]
    count_before: LinearDensity<N>,
    /// state after over state before
    #[q("q", 0.8..=1.1)]
    state_change: Ratio<N>,
    /// fibre lost
    #[q("w", 0.0..=0.03)]
    loss: ShareLost<N>,
    /// shrinkage in length
    #[q("s", 0.0..=0.15)]
    shrinkage: Shrinkage<N>,
) -> LinearDensity<N> {
    count_before * state_change * (1.0 - loss) / (1.0 - shrinkage)
}
