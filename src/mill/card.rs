//! The card: hopper, rate, slubbing.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{
    Count, Fraction, Frequency, Length, LinearDensity, Mass, MassPerArea, MassRate, Ratio,
    ShareLost, Speed,
};

/// Count of the slubbing, or of a card sliver with one end, from what is fed.
#[formula(
    result = "T_c",
    sources = ["GATE solutions"],
    limits = ["good ends only: waste ends go back and belong in the loss", "feed and count in one state"],
    cautions = ["machines"],
    slips = ["counting the waste ends", "minutes for hours"]
)]
pub fn slubbing_count<N: Number>(
    /// mass fed
    #[q("Q_i", 1.0..=200.0)]
    feed_rate: MassRate<N>,
    /// share lost in the card
    #[q("w", 0.0..=0.15)]
    loss: ShareLost<N>,
    /// good ends
    #[q("N", 1.0..=200.0, memory)]
    ends: Count<N>,
    /// delivery
    #[q("v", 3.0..=300.0, memory)]
    delivery_speed: Speed<N>,
) -> LinearDensity<N> {
    feed_rate * (1.0 - loss) * 1e6 / (60.0 * delivery_speed * ends)
}

/// What the card delivers in an hour.
#[formula(
    result = "Q",
    sources = ["practice"],
    limits = ["in the state of the count; stoppages are extra"],
    slips = ["counting the waste ends"]
)]
pub fn card_output<N: Number>(
    /// good ends
    #[q("N", 1.0..=200.0, memory)]
    ends: Count<N>,
    /// delivery
    #[q("v", 3.0..=300.0, memory)]
    delivery_speed: Speed<N>,
    /// slubbing count
    #[q("T_c", 50.0..=10000.0)]
    slubbing_count: LinearDensity<N>,
) -> MassRate<N> {
    ends * delivery_speed * slubbing_count * 60e-6
}

/// What must be fed, as weighed, for a delivery of clean dry fibre.
#[formula(
    result = "Q_i",
    sources = ["practice"],
    limits = ["running card: what it holds is already in it"],
    cautions = ["machines"],
    slips = ["weighing the feed in one state and the slubbing in another"]
)]
pub fn feed_rate<N: Number>(
    /// clean dry fibre delivered
    #[q("Q_f", 1.0..=200.0)]
    fibre_output: MassRate<N>,
    /// share lost in the card
    #[q("w", 0.0..=0.15)]
    loss: ShareLost<N>,
    /// mass for each unit of clean dry fibre at the hopper
    #[q("s_m", 1.0..=1.7)]
    state_ratio: Ratio<N>,
) -> MassRate<N> {
    fibre_output / (1.0 - loss) * state_ratio
}

/// What the hopper weighs for each drop.
#[formula(
    result = "m_w",
    sources = ["practice"],
    cautions = ["machines"],
    slips = ["drops in an hour for drops in a minute"]
)]
pub fn hopper_weigh<N: Number>(
    /// mass fed, as weighed
    #[q("Q_i", 1.0..=200.0)]
    feed_rate: MassRate<N>,
    /// drops
    #[q("f_d", 0.5..=10.0)]
    drop_rate: Frequency<N>,
) -> Mass<N> {
    feed_rate / (60.0 * drop_rate)
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
    #[q("m_w", 0.02..=2.0)]
    hopper_weigh: Mass<N>,
    /// slubbing count wanted
    #[q("T_w", 50.0..=1000.0)]
    wanted_slubbing_count: LinearDensity<N>,
    /// slubbing count found
    #[q("T_c", 50.0..=1000.0)]
    slubbing_count: LinearDensity<N>,
) -> Mass<N> {
    hopper_weigh * wanted_slubbing_count / slubbing_count
}

/// Width of a condenser tape.
#[formula(
    result = "p",
    sources = ["definition"],
    slips = ["dividing by the good ends only: the waste ends take their width too"]
)]
pub fn tape_pitch<N: Number>(
    /// width of the web
    #[q("b_w", 0.3..=3.0)]
    web_width: Length<N>,
    /// ends across it, waste ends too
    #[q("N", 4.0..=200.0, memory)]
    ends: Count<N>,
) -> Length<N> {
    web_width / ends
}

/// Mass of the web that a condenser divides.
#[formula(
    result = "ω",
    sources = ["definition"],
    limits = ["an even web over the whole width, edges and all"],
    slips = ["counting the good ends only: the web holds the edge ends too", "tex are grams in a kilometre"]
)]
pub fn web_mass_per_area<N: Number>(
    /// slubbing count
    #[q("T_c", 50.0..=10000.0)]
    slubbing_count: LinearDensity<N>,
    /// ends, good ones and edge ends
    #[q("N", 1.0..=200.0, memory)]
    ends: Count<N>,
    /// width of the web
    #[q("b_w", 0.2..=3.0)]
    web_width: Length<N>,
) -> MassPerArea<N> {
    slubbing_count * ends / (1000.0 * web_width)
}

/// Share of the web that goes into the edge ends.
#[formula(
    result = "E",
    sources = ["definition"],
    limits = ["an even web; a web that is thin at the edges gives them less"],
    slips = ["dividing by the good ends"]
)]
pub fn edge_share<N: Number>(
    /// good ends
    #[q("N", 1.0..=200.0, memory)]
    ends: Count<N>,
    /// edge ends, all together
    #[q("N_e", 0.0..=16.0)]
    edge_ends: Count<N>,
) -> Fraction<N> {
    edge_ends / (ends + edge_ends)
}

/// Share of what a card is fed that does not come off as good slubbing, in one pass.
#[formula(
    result = "u",
    sources = ["definition"],
    limits = ["the edge ends are a share of the web, after the waste"],
    slips = ["adding the two shares"]
)]
pub fn pass_loss<N: Number>(
    /// share that falls out as waste
    #[q("w_d", 0.0..=0.15)]
    dropped_share: ShareLost<N>,
    /// share of the web in the edge ends
    #[q("E", 0.0..=0.2)]
    edge_share: Fraction<N>,
) -> ShareLost<N> {
    1.0 - (1.0 - dropped_share) * (1.0 - edge_share)
}

/// Share of a lot that is lost for good where part of each pass is put back on the feed.
#[formula(
    result = "w_L",
    sources = ["definition"],
    limits = ["both are shares of what goes through in one pass, fibre put back counted again", "what is put back last has no lot to come to: it stays for the next"],
    slips = ["counting what is put back as lost", "leaving it out: fibre that goes round again is wasted from again"]
)]
pub fn loss_with_return<N: Number>(
    /// share of a pass that is lost for good
    #[q("w", 0.0..=0.15)]
    loss: ShareLost<N>,
    /// share of a pass that is put back
    #[q("e", 0.0..=0.3)]
    returned_share: Fraction<N>,
) -> ShareLost<N> {
    loss / (1.0 - returned_share)
}
