//! The card: hopper, rate, slubbing.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{
    Count, Fraction, Frequency, Length, LinearDensity, Mass, MassRate, Ratio, Speed,
};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&SLUBBING_COUNT, &CARD_RATE, &FEED_RATE, &HOPPER_WEIGH, &CORRECTED_WEIGH, &TAPE_PITCH];

/// Count of the slubbing, or of a card sliver with one end, from what is fed.
#[formula(
    result = "T",
    sources = ["GATE solutions"],
    limits = ["good ends only: waste ends go back and belong in the loss", "feed and count in one state"],
    cautions = ["machines"],
    slips = ["counting the waste ends", "minutes for hours"]
)]
pub fn slubbing_count<N: Number>(
    /// mass fed
    #[q("P", 1.0..=200.0)]
    feed: MassRate<N>,
    /// share lost in the card
    #[q("w", 0.0..=0.15)]
    loss: Fraction<N>,
    /// good ends
    #[q("N", 1.0..=200.0)]
    ends: Count<N>,
    /// delivery
    #[q("v", 3.0..=300.0)]
    speed: Speed<N>,
) -> LinearDensity<N> {
    feed * (1.0 - loss) * 1e6 / (60.0 * speed * ends)
}

/// What the card delivers in an hour.
#[formula(
    result = "P",
    sources = ["practice"],
    limits = ["in the state of the count; stoppages are extra"],
    slips = ["counting the waste ends"]
)]
pub fn card_rate<N: Number>(
    /// good ends
    #[q("N", 1.0..=200.0)]
    ends: Count<N>,
    /// delivery
    #[q("v", 3.0..=300.0)]
    speed: Speed<N>,
    /// slubbing count
    #[q("T", 50.0..=10000.0)]
    count: LinearDensity<N>,
) -> MassRate<N> {
    ends * speed * count * 60e-6
}

/// What must be fed, as weighed, for a delivery of clean dry fibre.
#[formula(
    result = "F",
    sources = ["practice"],
    limits = ["running card: what it holds is already in it"],
    cautions = ["machines"],
    slips = ["weighing the feed in one state and the slubbing in another"]
)]
pub fn feed_rate<N: Number>(
    /// clean dry fibre delivered
    #[q("P", 1.0..=200.0)]
    delivery: MassRate<N>,
    /// share lost in the card
    #[q("w", 0.0..=0.15)]
    loss: Fraction<N>,
    /// mass for each unit of clean dry fibre at the hopper
    #[q("s", 1.0..=1.7)]
    state: Ratio<N>,
) -> MassRate<N> {
    delivery / (1.0 - loss) * state
}

/// What the hopper weighs for each drop.
#[formula(
    result = "m",
    sources = ["practice"],
    cautions = ["machines"],
    slips = ["drops in an hour for drops in a minute"]
)]
pub fn hopper_weigh<N: Number>(
    /// mass fed, as weighed
    #[q("F", 1.0..=200.0)]
    feed: MassRate<N>,
    /// drops
    #[q("r", 0.5..=10.0)]
    drops: Frequency<N>,
) -> Mass<N> {
    feed / (60.0 * drops)
}

/// The new hopper weigh after the slubbing was found heavy or light.
#[formula(
    result = "m₂",
    sources = ["practice"],
    limits = ["both counts at one regain", "wait about three times hold-up over feed rate before weighing again"],
    cautions = ["machines"],
    slips = ["correcting twice before the card has cleared"]
)]
pub fn corrected_weigh<N: Number>(
    /// hopper weigh as it is
    #[q("m₁", 0.02..=2.0)]
    weigh: Mass<N>,
    /// slubbing count wanted
    #[q("T", 50.0..=1000.0)]
    wanted: LinearDensity<N>,
    /// slubbing count found
    #[q("T_x", 50.0..=1000.0)]
    found: LinearDensity<N>,
) -> Mass<N> {
    weigh * wanted / found
}

/// Width of a condenser tape.
#[formula(
    result = "p",
    sources = ["definition"],
    slips = ["dividing by the good ends only: the waste ends take their width too"]
)]
pub fn tape_pitch<N: Number>(
    /// width of the web
    #[q("B", 0.3..=3.0)]
    width: Length<N>,
    /// ends across it, waste ends too
    #[q("N", 4.0..=200.0)]
    ends: Count<N>,
) -> Length<N> {
    width / ends
}
