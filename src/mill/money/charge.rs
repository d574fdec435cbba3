//! What a commission mill charges, and the lot at which it pays.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{CostPerMass, Mass, Money, ShareLost, Yield};

/// Charge for a mass by its tariff, no less than the minimum for a lot.
#[formula(
    result = "k_m",
    sources = ["practice"],
    limits = ["the mass in the state that the tariff names: greasy, clean or finished"],
    slips = ["a tariff for finished yarn on the greasy mass"]
)]
pub fn charge_for_mass<N: Number>(
    /// mass charged
    #[q("m", 0.0..=10000.0)]
    mass: Mass<N>,
    /// tariff for a kilogram
    #[q("c", 0.0..=200.0)]
    tariff: CostPerMass<N>,
    /// least charge for a lot
    #[q("k₀", 0.0..=2000.0)]
    minimum_charge: Money<N>,
) -> Money<N> {
    (mass * tariff).max(minimum_charge)
}

/// Charge for putting away sorting rejects beyond the share that is free.
#[formula(
    result = "k_m",
    sources = ["Custom mill leaflet"],
    limits = ["one mill's rule: free to 15 % of the incoming mass, the excess charged"],
    slips = ["charging all rejects once the share is passed, where only the excess is meant"]
)]
pub fn charge_for_rejects<N: Number>(
    /// incoming mass
    #[q("m_i", 0.0..=10000.0)]
    mass_in: Mass<N>,
    /// share rejected in sorting
    #[q("r_j", 0.0..=0.5)]
    rejects: ShareLost<N>,
    /// share that is free
    #[q("r₀", 0.0..=0.5)]
    free_rejects: ShareLost<N>,
    /// charge for a kilogram beyond it
    #[q("c", 0.0..=50.0)]
    reject_charge: CostPerMass<N>,
) -> Money<N> {
    (rejects - free_rejects).max(0.0) * mass_in * reject_charge
}

/// Yield at which a tariff for what is sent in and one for what comes out charge alike; below it the
/// one for what comes out is the cheaper for the owner.
#[formula(
    result = "y",
    sources = ["definition"],
    limits = ["without least charges; all else that is charged being equal"],
    slips = ["comparing the two tariffs as they stand"]
)]
pub fn yield_of_equal_charge<N: Number>(
    /// tariff for a kilogram sent in
    #[q("c₁", 0.0..=100.0)]
    tariff_in: CostPerMass<N>,
    /// tariff for a kilogram that comes out
    #[q("c₂", 0.1..=200.0)]
    tariff_out: CostPerMass<N>,
) -> Yield<N> {
    tariff_in / tariff_out
}

/// What a lot leaves: what comes out of it sold, less what it cost by its mass and once.
#[formula(
    result = "s",
    sources = ["practice"],
    limits = ["a loss is negative", "one affine loss for the route: a share, and a mass held up whatever the lot's size"],
    slips = ["spreading the fixed cost of a usual lot over a small one"]
)]
pub fn lot_surplus<N: Number>(
    /// mass taken in
    #[q("m_i", 0.1..=10000.0)]
    mass_in: Mass<N>,
    /// cost of a kilogram taken in, wool and work
    #[q("c_m", 0.0..=200.0)]
    cost_per_mass: CostPerMass<N>,
    /// cost once for the lot: clean-down, setting up
    #[q("k_f", 0.0..=5000.0)]
    fixed_cost: Money<N>,
    /// share lost
    #[q("w", 0.0..=0.7)]
    loss: ShareLost<N>,
    /// mass held up
    #[q("h", 0.0..=20.0)]
    held_up: Mass<N>,
    /// price of a kilogram that comes out
    #[q("p", 0.0..=500.0)]
    price_per_mass: CostPerMass<N>,
) -> Money<N> {
    let out = (mass_in * (1.0 - loss) - held_up).max(0.0).named([
        "m_o",
        "kg",
        "mass that comes out and is paid for",
    ]);
    out * price_per_mass - mass_in * cost_per_mass - fixed_cost
}

/// Smallest lot that pays its fixed cost.
#[formula(
    result = "m",
    sources = ["definition"],
    limits = ["margin and mass on one basis, such as the kilogram sent in"],
    slips = ["the price for the margin: what the kilogram costs is to be taken off first"]
)]
pub fn break_even_lot<N: Number>(
    /// cost once for the lot: clean-down, setting up
    #[q("k_f", 0.0..=5000.0)]
    fixed_cost: Money<N>,
    /// price less cost of a kilogram
    #[q("g", 0.1..=100.0)]
    margin_per_mass: CostPerMass<N>,
) -> Mass<N> {
    // A kilogram that leaves nothing pays for nothing, however many there are.
    V::constant(0.0).if_less(margin_per_mass, fixed_cost / margin_per_mass, f64::NAN)
}

/// Smallest lot that pays its fixed cost and the fibre that the machines keep.
#[formula(
    result = "m",
    sources = ["practice"],
    limits = ["one affine loss for the route: a share, and a mass held up whatever the lot's size"],
    slips = ["leaving out what the machines keep: it was paid for and is not sold"]
)]
pub fn break_even_lot_with_hold_up<N: Number>(
    /// cost once for the lot: clean-down, setting up
    #[q("k_f", 0.0..=5000.0)]
    fixed_cost: Money<N>,
    /// cost of a kilogram taken in, wool and work
    #[q("c_m", 0.0..=200.0)]
    cost_per_mass: CostPerMass<N>,
    /// share lost
    #[q("w", 0.0..=0.7)]
    loss: ShareLost<N>,
    /// mass held up
    #[q("h", 0.0..=20.0)]
    held_up: Mass<N>,
    /// price of a kilogram that comes out
    #[q("p", 1.0..=500.0)]
    price_per_mass: CostPerMass<N>,
) -> Mass<N> {
    let margin = ((1.0 - loss) * price_per_mass - cost_per_mass).named([
        "g",
        "/kg",
        "what a kilogram taken in brings above its own cost",
    ]);
    V::constant(0.0).if_less(margin, (fixed_cost + held_up * price_per_mass) / margin, f64::NAN)
}
