//! Water on the oven-dry mass and in the whole.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{LinearDensity, Mass, MoistureContent, Regain};

/// Water as a share of the mass with its water, from the regain.
#[formula(
    result = "M",
    sources = ["PCT moisture", "Moisture blog 2015"],
    slips = ["taking the regain itself for the content: 17 % regain is 14.5 % content"]
)]
#[inverse(
    "Water on the oven-dry mass, from the share of water in the whole.",
    regain_from_content(moisture_content "water as a share of the mass with its water": 0.0..=0.3) -> regain
        = moisture_content / (1.0 - moisture_content),
    slips = ["dividing by 1 + M instead of 1 − M"]
)]
pub fn moisture_content<N: Number>(
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> MoistureContent<N> {
    regain / (1.0 + regain)
}

/// Water in a mass at a regain.
#[formula(
    result = "m_a",
    sources = ["GATE solutions"],
    slips = ["taking the regain of the wet mass: m × R instead of m × R/(1 + R)"]
)]
pub fn water_in_mass<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> Mass<N> {
    mass * regain / (1.0 + regain)
}

/// Oven-dry mass of a mass at a regain.
#[formula(
    result = "m_d",
    sources = ["PCT moisture"],
    slips = ["m × (1 − R): the regain is on the dry mass, so divide by 1 + R"]
)]
pub fn oven_dry_mass<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> Mass<N> {
    mass / (1.0 + regain)
}

/// The same fibre at another regain.
#[formula(
    result = "m₂",
    sources = ["PCT moisture"],
    slips = ["adding the difference of the regains to the mass as a percentage"]
)]
pub fn mass_at_regain<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// regain at weighing
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
    /// regain wanted
    #[q("R_w", 0.0..=0.4)]
    wanted_regain: Regain<N>,
) -> Mass<N> {
    mass * (1.0 + wanted_regain) / (1.0 + regain)
}

/// Water on the oven-dry mass, from a sample weighed before and after the oven.
#[formula(
    result = "R",
    sources = ["Moisture blog 2015"],
    limits = ["the sample is weighed at once when it is taken, and dried until its mass no longer falls", "fat and dirt weigh with the dry mass"],
    slips = ["dividing by the mass as taken: that is the content"]
)]
pub fn regain_from_masses<N: Number>(
    /// sample as taken
    #[q("m_s", 0.0001..=10.0)]
    sample_mass: Mass<N>,
    /// the same, oven-dry
    #[q("m_sd", 0.0001..=10.0)]
    dry_sample_mass: Mass<N>,
) -> Regain<N> {
    (sample_mass - dry_sample_mass) / dry_sample_mass
}

/// Water in a mass, from its share of the whole.
#[formula(
    result = "m_a",
    sources = ["Moisture blog 2015"],
    slips = ["taking a regain for a content: 17 % regain is 14.5 % content"]
)]
pub fn water_from_content<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=50000.0)]
    mass: Mass<N>,
    /// water as a share of the mass with its water
    #[q("M", 0.0..=0.3)]
    moisture_content: MoistureContent<N>,
) -> Mass<N> {
    mass * moisture_content
}

/// Oven-dry mass of a mass with a share of water in it.
#[formula(
    result = "m_d",
    sources = ["Moisture blog 2015"],
    slips = ["dividing by 1 + M as if it were a regain"]
)]
pub fn oven_dry_from_content<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=50000.0)]
    mass: Mass<N>,
    /// water as a share of the mass with its water
    #[q("M", 0.0..=0.3)]
    moisture_content: MoistureContent<N>,
) -> Mass<N> {
    mass * (1.0 - moisture_content)
}

/// Oven-dry mass of a lot, from a sample of it.
#[formula(
    result = "m_d",
    sources = ["Moisture blog 2015"],
    limits = ["sample and lot are weighed within the same hour: the lot goes on drying or damping"],
    slips = ["weighing the lot on another day than the sample"]
)]
pub fn oven_dry_mass_of_lot<N: Number>(
    /// lot as weighed
    #[q("m_L", 0.01..=50000.0)]
    lot_mass: Mass<N>,
    /// sample as taken
    #[q("m_s", 0.0001..=10.0)]
    sample_mass: Mass<N>,
    /// sample, oven-dry
    #[q("m_sd", 0.0001..=10.0)]
    dry_sample_mass: Mass<N>,
) -> Mass<N> {
    lot_mass * dry_sample_mass / sample_mass
}

/// The same yarn's count at another regain.
#[formula(
    result = "T₂",
    sources = ["PCT moisture", "definition"],
    limits = ["its length does not change; it does where the yarn is wetted out and relaxes"],
    slips = ["multiplying an indirect count: the heavier yarn has the lower number", "correcting a count that is at the regain already"]
)]
pub fn count_at_regain<N: Number>(
    /// count as found
    #[q("T", 1.0..=5000.0)]
    count: LinearDensity<N>,
    /// regain at which it was found
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
    /// regain wanted
    #[q("R_w", 0.0..=0.4)]
    wanted_regain: Regain<N>,
) -> LinearDensity<N> {
    count * (1.0 + wanted_regain) / (1.0 + regain)
}
