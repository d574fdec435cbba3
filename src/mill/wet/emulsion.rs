//! Oil and water for a lot.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::fibre::{fibre_in_mass, mass_in_state, state_ratio};
use crate::mill::{
    emulsion_mass, fat_after_oiling, mass_to_add, regain_after_wetting, volume_of_mass,
};
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{Density, Fraction, Mass, OnFibre, Ratio, Regain, Volume};

/// How the lot is known.
#[derive(Clone, Debug, Inputs)]
pub enum WoolToOil<N> {
    /// wool as weighed
    #[q("m", 0.1..=10_000.0, like = "40 kg")]
    Mass(Mass<N>),
    /// clean dry fibre
    #[q("f", 0.1..=10_000.0)]
    FibreMass(Mass<N>),
}

/// The oil to put on.
#[derive(Clone, Debug, Inputs)]
pub struct Oiling<N> {
    /// oil to add, on clean dry fibre
    #[q("o_a", 0.01..=0.12, like = "5 %", zero)]
    pub oil_added: OnFibre<N>,
    /// density of the oil
    #[q("ρ", 0.8..=1.05, like = "0.92 kg/L")]
    pub oil_density: Option<Density<N>>,
}

/// What [`emulsion()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct EmulsionInputs<N> {
    /// The lot, by its mass as weighed or by its fibre.
    #[one_of("the lot")]
    pub lot: WoolToOil<N>,
    /// water on clean dry fibre, before
    #[q("R₁", 0.0..=0.4, like = "14 %", zero)]
    pub regain_before: Regain<N>,
    /// grease and oil on clean dry fibre, before
    #[q("o₁", 0.0..=0.05, or = 0.0)]
    pub fat_before: OnFibre<N>,
    /// vegetable matter on clean dry fibre
    #[q("v_m", 0.0..=0.1, or = 0.0)]
    pub vegetable: OnFibre<N>,
    /// The oil.
    #[group]
    pub oiling: Oiling<N>,
    /// regain wanted after oiling
    #[q("R_w", 0.1..=0.35)]
    pub wanted_regain: Option<Regain<N>>,
    /// oil in the emulsion, by mass
    #[q("x", 0.05..=1.0)]
    pub oil_share: Option<Fraction<N>>,
    /// density of water
    #[q("ρ_w", 0.95..=1.0, or = 1.0)]
    pub water_density: Density<N>,
}

/// What [`emulsion()`] answers.
#[derive(Clone, Debug, Results)]
pub struct EmulsionResults<N> {
    /// clean dry fibre
    #[block = "To put on"]
    pub fibre_mass: Mass<N>,
    /// oil to weigh out
    pub oil_mass: Mass<N>,
    /// oil, by volume
    pub oil_volume: Option<Volume<N>>,
    /// water in the emulsion
    pub water_mass: Mass<N>,
    /// water to put on besides the emulsion
    pub water_beside: Option<Mass<N>>,
    /// all the water, by volume
    pub water_volume: Volume<N>,
    /// emulsion to make
    pub emulsion_mass: Mass<N>,
    /// oil in the emulsion, by mass
    pub oil_share: Fraction<N>,
    /// water put on, on clean dry fibre
    #[block = "The lot after it"]
    pub water_added: OnFibre<N>,
    /// grease and oil on clean dry fibre, after
    pub fat_after: OnFibre<N>,
    /// water on clean dry fibre, after
    pub regain_after: Regain<N>,
    /// mass for each unit of clean dry fibre, before
    pub state_ratio_before: Ratio<N>,
    /// mass for each unit of clean dry fibre, after
    pub state_ratio_after: Ratio<N>,
    /// mass after oiling, as weighed
    pub mass_after: Mass<N>,
}

/// Oil and water for a lot: kilograms and litres to weigh out, and what the lot is after them.
///
/// The lot is its `mass` as weighed, or its clean dry `fibre_mass`; `regain_before`, `fat_before` and
/// `vegetable` are what is on the fibre now, `oil_added` what is to come on, all on clean dry fibre. The
/// water is that to the `wanted_regain`, or that of an emulsion with `oil_share` of oil; with both, what
/// the emulsion does not bring is put on besides it.
#[calculation(
    title = "Oil and water for a lot",
    example = ">>> import hankwise as hw
>>> lot = hw.mill.emulsion(mass=\"40 kg\", regain_before=\"14 %\", oil_added=\"5 %\",
...                        wanted_regain=\"22 %\", oil_density=\"0.92 kg/L\")
>>> lot[\"oil_mass\"], lot[\"oil_volume\"], lot[\"water_mass\"], lot[\"mass_after\"]
(<mass: 1.754 kg>, <volume: 1.907 L>, <mass: 2.807 kg>, <mass: 44.56 kg>)",
    cautions = ["oil"],
    check = check
)]
pub fn emulsion<N: Number>(given: &EmulsionInputs<N>) -> EmulsionResults<N> {
    let (regain, vegetable) = (given.regain_before, given.vegetable);
    let state_ratio_before = state_ratio(regain, given.fat_before, vegetable);
    let fibre_mass = match given.lot {
        WoolToOil::FibreMass(fibre) => fibre,
        WoolToOil::Mass(mass) => fibre_in_mass(mass, state_ratio_before),
    };
    let Oiling { oil_added, oil_density } = given.oiling;
    let oil_mass = mass_to_add(fibre_mass, oil_added);
    let PutOn { water, water_mass, water_beside, emulsion_mass, oil_share } =
        put_on(given, fibre_mass, oil_mass);
    let water_added = OnFibre::from(water.v() / fibre_mass.v());
    let fat_after = fat_after_oiling(given.fat_before, oil_added);
    let regain_after = regain_after_wetting(regain, water_added);
    let state_ratio_after = state_ratio(regain_after, fat_after, vegetable);
    EmulsionResults {
        fibre_mass,
        oil_mass,
        oil_volume: oil_density.map(|density| volume_of_mass(oil_mass, density)),
        water_mass,
        water_beside,
        water_volume: volume_of_mass(water, given.water_density),
        emulsion_mass,
        oil_share,
        water_added,
        fat_after,
        regain_after,
        state_ratio_before,
        state_ratio_after,
        mass_after: mass_in_state(fibre_mass, state_ratio_after),
    }
}

/// What is put on: all the water, that in the emulsion, that besides it; the emulsion and its oil.
struct PutOn<N> {
    water: Mass<N>,
    water_mass: Mass<N>,
    water_beside: Option<Mass<N>>,
    emulsion_mass: Mass<N>,
    oil_share: Fraction<N>,
}

fn put_on<N: Number>(given: &EmulsionInputs<N>, fibre: Mass<N>, oil: Mass<N>) -> PutOn<N> {
    let to_regain = to_regain(given, fibre);
    let Some(oil_share) = given.oil_share else {
        // All the water goes into the emulsion. Where no water is known the check refuses.
        let water = to_regain.unwrap_or(Mass::base(N::constant(0.0)));
        let emulsion_mass = Mass::from(oil.v() + water.v());
        let oil_share = Fraction::from(oil.v() / emulsion_mass.v());
        return PutOn { water, water_mass: water, water_beside: None, emulsion_mass, oil_share };
    };
    let emulsion_mass = emulsion_mass(oil, oil_share);
    let water_mass = Mass::from(emulsion_mass.v() - oil.v());
    let water_beside = to_regain.map(|all| Mass::from((all.v() - water_mass.v()).max(0.0)));
    PutOn {
        water: to_regain.unwrap_or(water_mass),
        water_mass,
        water_beside,
        emulsion_mass,
        oil_share,
    }
}

/// The water to the regain wanted, where one is.
fn to_regain<N: Number>(given: &EmulsionInputs<N>, fibre: Mass<N>) -> Option<Mass<N>> {
    let wanted = given.wanted_regain?;
    Some(mass_to_add(fibre, OnFibre::from(wanted.v() - given.regain_before.v())))
}

fn check(
    given: &EmulsionInputs<f64>,
    found: &EmulsionResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let now = given.regain_before;
    if given.wanted_regain.is_none() && given.oil_share.is_none() {
        refuse!(
            check,
            given.wanted_regain,
            "how much water to add is missing; give wanted_regain, such as 22 %, or oil_share, the oil in \
             the emulsion, such as 30 %, or both"
        );
    }
    if let Some(wanted) = given.wanted_regain
        && wanted.value() < now.value()
    {
        refuse!(
            check,
            given.wanted_regain,
            "the wool has {} regain and {} is wanted: oiling puts water on and takes none away; dry it \
             first, or write {} or more",
            check.say(now),
            check.say(wanted),
            check.say(now)
        );
    }
    let (oil, water) = (found.oil_mass.value(), found.water_mass.value());
    if let (Some(_), Some(all)) = (given.oil_share, to_regain(given, found.fibre_mass))
        && all.value() - water < -1e-9
    {
        refuse!(
            check,
            given.oil_share,
            "the emulsion brings {} of water and the wanted regain takes {}; write oil_share at {} % or \
             more, or a higher wanted_regain",
            check.say(found.water_mass),
            check.say(all),
            figure((1000.0 * oil / (oil + all.value())).ceil() / 10.0)
        );
    }
    check.note("To put on", "Water that dries off while the stack lies is not counted.");
    if given.oiling.oil_density.is_none() {
        check.note("To put on", "For the oil in litres give oil_density, from its maker.");
    }
    Ok(())
}
