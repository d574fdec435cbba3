//! The wheel for a change, from the wheel at hand: no constant is asked for.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, LinearDensity, Ratio, Twist};

/// The change wheel for another twist, where twist falls as teeth rise.
#[formula(
    result = "z₂",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where twist goes as 1/teeth", "a wheel of the mill's own stands nearest above or below"],
    cautions = ["wheels"],
    slips = ["the proportion the wrong way round: see first which way the wheel works"]
)]
pub fn wheel_for_new_twist<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// twist that it gives
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// twist wanted
    #[q("t₂", 20.0..=4000.0)]
    new_twist: Twist<N>,
) -> Count<N> {
    teeth * twist / new_twist
}

/// The change wheel for another twist, where twist rises with the teeth.
#[formula(
    result = "z₂",
    sources = ["definition"],
    limits = ["for a wheel in the place where twist goes as the teeth", "a wheel of the mill's own stands nearest above or below"],
    cautions = ["wheels"],
    slips = ["the proportion the wrong way round: see first which way the wheel works"]
)]
pub fn wheel_for_new_twist_direct<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// twist that it gives
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// twist wanted
    #[q("t₂", 20.0..=4000.0)]
    new_twist: Twist<N>,
) -> Count<N> {
    teeth * new_twist / twist
}

/// The change wheel for another draft, where draft falls as teeth rise.
#[formula(
    result = "z₂",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where draft goes as 1/teeth", "a wheel of the mill's own stands nearest above or below"],
    cautions = ["wheels"],
    slips = ["the proportion the wrong way round: see first which way the wheel works"]
)]
pub fn wheel_for_new_draft<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// draft that it gives
    #[q("D", 1.0..=40.0)]
    draft: Ratio<N>,
    /// draft wanted
    #[q("D₂", 1.0..=40.0)]
    new_draft: Ratio<N>,
) -> Count<N> {
    teeth * draft / new_draft
}

/// The change wheel for another draft, where draft rises with the teeth.
#[formula(
    result = "z₂",
    sources = ["definition"],
    limits = ["for a wheel in the place where draft goes as the teeth", "a wheel of the mill's own stands nearest above or below"],
    cautions = ["wheels"],
    slips = ["the proportion the wrong way round: see first which way the wheel works"]
)]
pub fn wheel_for_new_draft_direct<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// draft that it gives
    #[q("D", 1.0..=40.0)]
    draft: Ratio<N>,
    /// draft wanted
    #[q("D₂", 1.0..=40.0)]
    new_draft: Ratio<N>,
) -> Count<N> {
    teeth * new_draft / draft
}

/// The change wheel for another count from the same feed, where draft falls as teeth rise.
#[formula(
    result = "z₂",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where draft goes as 1/teeth, so that tex goes as the teeth", "what is fed stays the same; the twist wheel wants changing too, see twist_wheel_for_new_count"],
    cautions = ["wheels"],
    slips = ["the proportion of indirect counts the wrong way round"]
)]
pub fn wheel_for_new_count<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// count that it gives
    #[q("T", 2.0..=100000.0)]
    count: LinearDensity<N>,
    /// count wanted
    #[q("T₂", 2.0..=100000.0)]
    new_count: LinearDensity<N>,
) -> Count<N> {
    teeth * new_count / count
}

/// The twist wheel for another count at the same twist factor, where twist falls as teeth rise.
#[formula(
    result = "z₂",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where twist goes as 1/teeth", "same twist factor for both counts"],
    cautions = ["wheels"],
    slips = ["plain proportion: twist goes as the root of the count"]
)]
pub fn twist_wheel_for_new_count<N: Number>(
    /// teeth of the wheel at hand
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
    /// count that it suits
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// count to come
    #[q("T₂", 1.0..=2000.0)]
    new_count: LinearDensity<N>,
) -> Count<N> {
    teeth * (new_count / count).sqrt()
}
