//! What a stage loses and holds.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Mass, ShareLost};

/// What comes out of a stage that loses a share and keeps a fixed mass.
#[formula(
    result = "m_o",
    sources = ["practice"],
    limits = ["the mass held up in the machine is lost to this lot whatever its size: it makes the smallest sensible lot"],
    slips = ["taking the held-up mass as a percentage of a small lot"]
)]
#[inverse(
    "What must go into a stage for a mass to come out.",
    mass_before_loss(mass_out "mass wanted": 0.1..=10000.0, loss, held_up) -> mass_in
        = (mass_out + held_up) / (1.0 - loss),
    limits = ["the same share and held-up mass as forward"],
    slips = ["multiplying by 1 + w instead of dividing by 1 − w"]
)]
pub fn mass_after_loss<N: Number>(
    /// mass in
    #[q("m_i", 0.1..=10000.0)]
    mass_in: Mass<N>,
    /// share lost
    #[q("w", 0.0..=0.4)]
    loss: ShareLost<N>,
    /// mass held up
    #[q("h", 0.0..=20.0)]
    held_up: Mass<N>,
) -> Mass<N> {
    mass_in * (1.0 - loss) - held_up
}

/// What comes out of a chain of lossy stages.
#[formula(
    result = "m_o",
    sources = ["definition"],
    limits = ["each loss is a share of what enters its stage"],
    slips = ["adding the percentages"]
)]
#[inverse(
    "What must go into a chain of lossy stages.",
    mass_before_losses(mass_out "mass wanted": 0.1..=10000.0, losses) -> mass_in
        = losses.fold(mass_out, |m, w| m / (1.0 - w)),
    slips = ["adding the percentages onto the mass wanted"]
)]
pub fn mass_after_losses<N: Number>(
    /// mass in
    #[q("m_i", 0.1..=10000.0)]
    mass_in: Mass<N>,
    /// losses of the stages in order
    #[q("w", 0.0..=0.6)]
    losses: &[ShareLost<N>],
) -> Mass<N> {
    losses.fold(mass_in, |m, w| m * (1.0 - w))
}
