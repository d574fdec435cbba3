//! Blending: how much of each component to weigh, and how evenly they come to lie.
//!
//! How even a blend is shows in samples: the share of a component differs from one to the next. Two
//! causes add up, as variances. The heap itself differs from place to place, because layers are
//! thicker here and thinner there; doubling evens that out. And a sample holds a limited number of
//! tufts, each of one colour, drawn by chance: nothing mixes better than that, unless the tufts are
//! opened finer.

mod evenness;
mod weigh;

pub use evenness::*;
pub use weigh::*;

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Fraction, Mass, Ratio};

/// How far the share of a component differs from place to place in a stack taken down from top to
/// bottom.
///
/// Each component lies in n layers. Where the stack is cut, each layer is thicker or thinner than its
/// mean by the coefficient of variation CV_l, independently of the others; to first order the share
/// then has the variance (p(1 − p)CV_l)²·2/n.
#[formula(
    result = "σ",
    sources = ["definition"],
    limits = ["layers of unlike thickness by chance, CV_l small (with two layers and CV_l = 30 % it reads about 3 % low), each component in as many layers", "each handful goes through the stack from top to bottom: taken from the top it mixes nothing", "tufts are taken as small: what they add is random_share_deviation"],
    slips = ["dividing by the number of layers instead of its root"]
)]
pub fn layered_share_deviation<N: Number>(
    /// share of the component in the blend
    #[q("p", 0.02..=0.98)]
    component_share: Fraction<N>,
    /// layers of each component
    #[q("n", 1.0..=100.0)]
    layers: Count<N>,
    /// coefficient of variation of a layer's thickness from place to place
    #[q("CV_l", 0.02..=0.5)]
    layer_cv: Fraction<N>,
) -> Ratio<N> {
    component_share * (1.0 - component_share) * layer_cv * (2.0 / layers).sqrt()
}

/// Layers of each component that keep the share within a standard deviation, in whole layers.
#[formula(
    result = "n",
    sources = ["definition"],
    limits = ["as layered_share_deviation", "of the stack alone: tufts and samples come on top"],
    slips = ["half the deviation from twice the layers: it takes four times as many"]
)]
pub fn layers_for_deviation<N: Number>(
    /// share of the component in the blend
    #[q("p", 0.02..=0.98)]
    component_share: Fraction<N>,
    /// standard deviation wanted of the share, from place to place
    #[q("σ", 0.002..=0.1)]
    share_sd: Fraction<N>,
    /// coefficient of variation of a layer's thickness from place to place
    #[q("CV_l", 0.02..=0.5)]
    layer_cv: Fraction<N>,
) -> Count<N> {
    // Whole layers stay whole, whatever the rounding of binary figures.
    (2.0 * (component_share * (1.0 - component_share) * layer_cv / share_sd).squared())
        .round_up(1e-9)
}

/// Deviation of the share from place to place after passes through the teaser with relaying.
///
/// Each pass brings wool from n_d places of the heap, taken as independent, into every place of the
/// next: the variance falls by n_d.
#[formula(
    result = "σ_j",
    sources = ["definition"],
    limits = ["the heap is laid anew and taken across between passes: a teaser alone opens tufts and mixes only what goes in together", "the places are independent: neighbours in the heap are not, and count as fewer"],
    slips = ["the number of passes as the divisor", "expecting less than chance leaves: see sampled_share_deviation"]
)]
pub fn share_deviation_after_passes<N: Number>(
    /// standard deviation of the share, before
    #[q("σ", 0.001..=0.3)]
    share_sd_before: Ratio<N>,
    /// places of the heap that come together in each place of the next
    #[q("n_d", 1.0..=50.0)]
    doublings: Count<N>,
    /// passes
    #[q("j", 0.0..=6.0)]
    passes: Count<N>,
) -> Ratio<N> {
    share_sd_before * (-0.5 * passes * doublings.ln()).exp()
}

/// Tufts in a sample: or fibres, where the wool is opened to single ones.
#[formula(
    result = "k",
    sources = ["definition"],
    limits = ["tufts of about one mass; unlike ones count as fewer"],
    slips = ["counting fibres where the card has not opened the tufts yet"]
)]
pub fn tufts_in_sample<N: Number>(
    /// mass of the sample
    #[q("m_s", 0.00001..=10.0)]
    sample_mass: Mass<N>,
    /// mean mass of a tuft
    #[q("m_t", 0.00000001..=0.05)]
    tuft_mass: Mass<N>,
) -> Count<N> {
    sample_mass / tuft_mass
}

/// Deviation of the share between samples of a blend mixed as well as chance does: the binomial bound.
#[formula(
    result = "σ_b",
    sources = ["definition"],
    limits = ["tufts of one colour each, laid by chance: more turning over makes it no better, only opening the tufts does"],
    slips = ["expecting a perfect mix to be even", "counting the tufts of the lot instead of the sample's"]
)]
pub fn random_share_deviation<N: Number>(
    /// share of the component in the blend
    #[q("p", 0.02..=0.98)]
    component_share: Fraction<N>,
    /// tufts in the sample
    #[q("k", 1.0..=100000.0)]
    tufts: Count<N>,
) -> Ratio<N> {
    (component_share * (1.0 - component_share) / tufts).sqrt()
}

/// Deviation of the share between samples: of the heap from place to place, and of the tufts by chance.
///
/// Of k tufts taken where the share is x, the share found varies by x(1 − x)/k; over all places that is
/// p(1 − p)/k + σ²(1 − 1/k).
#[formula(
    result = "σ_s",
    sources = ["definition"],
    limits = ["each sample from one place, its tufts by chance"],
    slips = ["adding the deviations instead of their squares"]
)]
pub fn sampled_share_deviation<N: Number>(
    /// standard deviation of the share in the heap, from place to place
    #[q("σ", 0.0..=0.3)]
    share_sd: Ratio<N>,
    /// share of the component in the blend
    #[q("p", 0.02..=0.98)]
    component_share: Fraction<N>,
    /// tufts in the sample
    #[q("k", 1.0..=100000.0)]
    tufts: Count<N>,
) -> Ratio<N> {
    (share_sd.squared() * (1.0 - 1.0 / tufts) + component_share * (1.0 - component_share) / tufts)
        .sqrt()
}
