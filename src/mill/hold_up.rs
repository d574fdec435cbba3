//! What a machine holds while it runs: the price of a small lot, and whose wool comes off it.
//!
//! A card or a teaser mixes what it holds. Taken as well mixed, with the fibre `h` in it, it gives off
//! at every moment what it holds at that moment: it fills, empties and clears by the exponential law.
//! A real card clears a little faster at first, and holds the last of a lot longer, in its clothing.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Duration, Fraction, Mass, MassRate, ShareLost};

/// How much of the lot before still comes off a machine after a mass of the new lot has gone
/// through it.
#[formula(
    result = "x",
    sources = ["definition"],
    limits = ["the bound for a machine that mixes what it holds well; a real one clears a little faster at first and keeps a tail"],
    slips = ["taking the share as gone after one hold-up: 37 % is still there"]
)]
#[inverse(
    "Fibre to send through a machine until no more than a share of the lot before comes off.",
    clearing_fibre(held_up, carried_share "share of the lot before that may remain": 0.0005..=0.2) -> fibre_mass
        = -held_up * carried_share.ln(),
    limits = ["well mixed, no cleaning by hand: fettling the clothing takes the tail out", "what share of a colour can still be seen is for the eye: a dark fibre in white shows at far less than a white one in dark"],
    slips = ["clearing with once the hold-up: it leaves 37 %, three times leave 5 %"],
    cautions = ["machines"]
)]
pub fn carried_share<N: Number>(
    /// clean dry fibre gone through
    #[q("f", 0.0..=100.0)]
    fibre_mass: Mass<N>,
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
) -> Fraction<N> {
    (-(fibre_mass / held_up)).exp()
}

/// Share of the lot before in all that comes off while a mass of the new lot goes through.
#[formula(
    result = "X",
    sources = ["definition"],
    limits = ["the machine was not cleared between the lots", "well mixed; the mean of the whole run, whose first slubbing has far more of it and whose last far less", "one less this share is the lot's own fibre"],
    slips = ["taking the share at the end of the run for the share in the run"]
)]
pub fn mean_carried_share<N: Number>(
    /// clean dry fibre gone through
    #[q("f", 0.1..=1000.0)]
    fibre_mass: Mass<N>,
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
) -> Fraction<N> {
    held_up / fibre_mass * (1.0 - (-(fibre_mass / held_up)).exp())
}

/// Fibre of the lot before that comes off while a mass of the new lot goes through.
#[formula(
    result = "m_c",
    sources = ["definition"],
    limits = ["well mixed; the rest of what the machine held stays in it"],
    slips = ["taking all that was held up as gone after one hold-up: 37 % is still there"]
)]
pub fn carried_mass<N: Number>(
    /// clean dry fibre gone through
    #[q("f", 0.0..=100.0)]
    fibre_mass: Mass<N>,
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
) -> Mass<N> {
    held_up * (1.0 - (-(fibre_mass / held_up)).exp())
}

/// What a lot loses in a machine that loses a share and keeps a fixed mass.
#[formula(
    result = "w_L",
    sources = ["definition"],
    limits = ["the held-up fibre is lost to this lot, whoever has it later"],
    slips = ["taking the share of a large lot for a small one: it hides what the machine keeps"]
)]
#[inverse(
    "The smallest lot whose loss stays within what is allowed.",
    smallest_lot(held_up, loss, allowed_loss "loss allowed for the lot" "w_a": 0.03..=0.5) -> fibre_mass
        = loss.if_less(allowed_loss, held_up / (allowed_loss - loss), f64::NAN),
    limits = ["what is allowed has to be over the share that is lost however large the lot"],
    slips = ["dividing the held-up fibre by the allowed loss without first taking off the share that any lot loses"]
)]
pub fn lot_loss<N: Number>(
    /// clean dry fibre of the lot
    #[q("f", 0.5..=5000.0)]
    fibre_mass: Mass<N>,
    /// share lost, however large the lot
    #[q("w", 0.0..=0.2)]
    loss: ShareLost<N>,
    /// clean dry fibre that the machine keeps
    #[q("h", 0.0..=20.0)]
    held_up: Mass<N>,
) -> ShareLost<N> {
    loss + held_up / fibre_mass
}

/// Time until a machine that starts empty delivers to within a share of its full count.
///
/// The same after a change of the feed: until no more than the share of the change is still to come.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["well mixed; within 5 % it is three times the hold-up over the delivery", "a card that is fed heavily at first fills faster"],
    cautions = ["machines"],
    slips = ["weighing a slubbing before the card has settled, and correcting what would have come right"]
)]
pub fn settling_time<N: Number>(
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
    /// clean dry fibre delivered in an hour
    #[q("Q_f", 0.5..=200.0)]
    fibre_output: MassRate<N>,
    /// how near to the full count
    #[q("x", 0.01..=0.2)]
    within: Fraction<N>,
) -> Duration<N> {
    -held_up / fibre_output * within.ln()
}

/// Slubbing that is under its count while an empty machine fills.
#[formula(
    result = "u",
    sources = ["definition"],
    limits = ["well mixed, fed at its full rate from the start; put back on the feed it is not lost"],
    slips = ["counting it as good slubbing: it spins fine, and breaks"]
)]
pub fn off_count_mass<N: Number>(
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
    /// how near to the full count it has to be
    #[q("x", 0.01..=0.2)]
    within: Fraction<N>,
) -> Mass<N> {
    held_up * (within - 1.0 - within.ln())
}

/// Fibre that does not become slubbing of its count once the feed of a machine stops.
#[formula(
    result = "e",
    sources = ["definition"],
    limits = ["well mixed; part of it runs off as light slubbing, part stays in the clothing until it is fettled"],
    cautions = ["machines"],
    slips = ["spinning the last slubbing with the rest: it is lighter all the way"]
)]
pub fn left_at_stop<N: Number>(
    /// clean dry fibre held up
    #[q("h", 0.05..=20.0)]
    held_up: Mass<N>,
    /// how near to the full count it has to be
    #[q("x", 0.01..=0.2)]
    within: Fraction<N>,
) -> Mass<N> {
    held_up * (1.0 - within)
}
