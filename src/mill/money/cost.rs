//! Money.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{CostPerMass, Count, Duration, Fraction, Mass, MassRate, Money, ShareLost};

/// Cost of a kilogram after a lossy stage.
#[formula(
    result = "c₂",
    sources = ["definition"],
    limits = ["waste without value; take off what it sells for"],
    slips = ["leaving the loss out: what is lost was paid for"]
)]
pub fn cost_after_stage<N: Number>(
    /// cost of a kilogram that goes in
    #[q("c_m", 0.0..=200.0)]
    cost_per_mass: CostPerMass<N>,
    /// cost of the stage for a kilogram that goes in
    #[q("c_s", 0.0..=50.0)]
    stage_cost_per_mass: CostPerMass<N>,
    /// share lost
    #[q("w", 0.0..=0.6)]
    loss: ShareLost<N>,
) -> CostPerMass<N> {
    (cost_per_mass + stage_cost_per_mass) / (1.0 - loss)
}

/// Cost of a kilogram after a lossy stage whose waste is sold.
#[formula(
    result = "c₂",
    sources = ["practice"],
    limits = ["waste that goes back into the lot is not lost and is not counted"],
    slips = ["taking the value of the waste off after the division: it was earned on what went in"]
)]
pub fn cost_after_stage_less_waste<N: Number>(
    /// cost of a kilogram that goes in
    #[q("c_m", 0.0..=200.0)]
    cost_per_mass: CostPerMass<N>,
    /// cost of the stage for a kilogram that goes in
    #[q("c_s", 0.0..=50.0)]
    stage_cost_per_mass: CostPerMass<N>,
    /// share lost
    #[q("w", 0.0..=0.6)]
    loss: ShareLost<N>,
    /// share of what goes in that is sold as waste
    #[q("s", 0.0..=0.6)]
    sold_share: ShareLost<N>,
    /// what a kilogram of the waste sells for
    #[q("p_w", 0.0..=50.0)]
    waste_price_per_mass: CostPerMass<N>,
) -> CostPerMass<N> {
    (cost_per_mass + stage_cost_per_mass - sold_share * waste_price_per_mass) / (1.0 - loss)
}

/// What a kilogram that comes out has cost to buy, through a chain of losses.
#[formula(
    result = "c₂",
    sources = ["definition"],
    limits = ["what is bought alone, without the cost of the stages; each loss is a share of what enters its stage"],
    slips = ["adding the losses", "the price of a kilogram taken in for that of one that comes out"]
)]
pub fn cost_through_losses<N: Number>(
    /// price of a kilogram taken in
    #[q("p", 0.0..=200.0)]
    price_per_mass: CostPerMass<N>,
    /// losses of the stages in order
    #[q("w", 0.0..=0.6)]
    losses: &[ShareLost<N>],
) -> CostPerMass<N> {
    losses.fold(price_per_mass, |c, w| c / (1.0 - w))
}

/// A product's share of a joint cost, by the clean dry fibre in it.
#[formula(
    result = "k_m",
    sources = ["practice"],
    limits = ["by clean dry fibre unless the house agrees otherwise"],
    slips = ["sharing by mass at different regains"]
)]
pub fn cost_share<N: Number>(
    /// joint cost
    #[q("k_j", 0.0..=1000000.0)]
    joint_cost: Money<N>,
    /// clean dry fibre in the product
    #[q("f", 0.0..=10000.0)]
    fibre_mass: Mass<N>,
    /// clean dry fibre in all products
    #[q("f_t", 0.1..=10000.0)]
    total_fibre_mass: Mass<N>,
) -> Money<N> {
    joint_cost * fibre_mass / total_fibre_mass
}

/// What a mass comes to at a price.
#[formula(
    result = "k_m",
    sources = ["Fabric costing slides", "Robinson slides"],
    limits = ["mass and price in one state: a price for greasy wool is paid on greasy wool"],
    slips = ["a price for a pound on kilograms"]
)]
pub fn cost_of_mass<N: Number>(
    /// mass
    #[q("m", 0.0..=100000.0)]
    mass: Mass<N>,
    /// price of a kilogram
    #[q("p", 0.0..=200.0)]
    price_per_mass: CostPerMass<N>,
) -> Money<N> {
    mass * price_per_mass
}

/// Cost of running a machine for a time.
#[formula(
    result = "k_m",
    sources = ["definition"],
    slips = ["taking minutes for hours"]
)]
pub fn cost_of_time<N: Number>(
    /// running time
    #[q("τ", 0.0..=1000.0)]
    time: Duration<N>,
    /// cost of an hour
    #[q("k_h", 0.0..=500.0)]
    hourly_cost: Money<N>,
) -> Money<N> {
    time * hourly_cost
}

/// What an hour comes to at a mass in the hour.
#[formula(
    result = "k_h",
    sources = ["Robinson slides"],
    limits = ["mass and cost in one state"],
    slips = ["tonnes for kilograms, cents for the whole coin"]
)]
pub fn cost_of_an_hour<N: Number>(
    /// mass in an hour
    #[q("Q", 0.1..=5000.0)]
    output: MassRate<N>,
    /// cost, or value, of a kilogram
    #[q("c_m", 0.0..=200.0)]
    cost_per_mass: CostPerMass<N>,
) -> Money<N> {
    output * cost_per_mass
}

/// What a kilogram that goes into a stage costs there, from the cost of an hour.
#[formula(
    result = "c_s",
    sources = ["definition"],
    limits = ["while it runs: cleaning, setting and waiting are extra"],
    slips = ["the rate of what comes out for that of what goes in"]
)]
pub fn stage_cost_by_hour<N: Number>(
    /// cost of an hour
    #[q("k_h", 0.0..=500.0)]
    hourly_cost: Money<N>,
    /// mass that goes in in an hour
    #[q("Q_i", 0.1..=5000.0)]
    feed_rate: MassRate<N>,
) -> CostPerMass<N> {
    hourly_cost / feed_rate
}

/// Hours of people at a machine.
#[formula(
    result = "τ_p",
    sources = ["definition"],
    limits = ["one who minds two machines is half a person at each"],
    slips = ["hours of the machine taken for hours of people"]
)]
pub fn person_hours<N: Number>(
    /// running time
    #[q("τ", 0.0..=1000.0)]
    time: Duration<N>,
    /// people at the machine
    #[q("p", 0.0..=20.0)]
    people: Count<N>,
) -> Duration<N> {
    time * people
}

/// Goods made as a share of the material taken in, both on clean dry fibre.
#[formula(
    result = "y",
    sources = ["Cost slides"],
    limits = ["both masses on one moisture basis"],
    slips = ["finished goods at 17 % regain over greasy wool"]
)]
pub fn realisation<N: Number>(
    /// made
    #[q("m_o", 0.0..=10000.0)]
    mass_out: Mass<N>,
    /// taken in
    #[q("m_i", 0.1..=10000.0)]
    mass_in: Mass<N>,
) -> Fraction<N> {
    mass_out / mass_in
}
