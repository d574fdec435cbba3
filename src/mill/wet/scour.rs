//! Scour liquor for a lot.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::fibre::oven_dry_mass;
use crate::mill::{left_after_rinses, liquor_carried, liquor_volume, mass_in_liquor};
use crate::number::Number;
use crate::quantity::{
    Concentration, Count, Density, Fraction, Mass, Ratio, Regain, Temperature, Volume,
};

/// The liquor of a scour or of a wash.
#[derive(Clone, Debug, Inputs)]
pub struct ScourLiquor<N> {
    /// litres of liquor for a kilogram of wool
    #[q("r", 4.0..=100.0, like = "30")]
    pub liquor_ratio: Ratio<N>,
    /// soap or detergent in the liquor
    #[q("c_s", 0.5..=45.0)]
    pub soap_concentration: Option<Concentration<N>>,
    /// alkali in the liquor
    #[q("c_a", 0.5..=20.0)]
    pub alkali_concentration: Option<Concentration<N>>,
    /// temperature of the liquor
    #[q("θ", 15.0..=100.0)]
    pub temperature: Option<Temperature<N>>,
}

/// What the squeezed wool carries on, and the rinses.
#[derive(Clone, Debug, Inputs)]
pub struct Squeeze<N> {
    /// liquor left by the squeeze, on the dry wool
    #[q("p", 0.2..=4.0, like = "60 %")]
    pub pickup: Regain<N>,
    /// water in the wool as weighed, on the dry mass
    #[q("R", 0.0..=0.4, zero)]
    pub regain: Option<Regain<N>>,
    /// density of the liquor
    #[q("ρ", 0.95..=1.1, or = 1.0)]
    pub liquor_density: Density<N>,
    /// The rinses.
    #[group]
    pub rinsing: Option<Rinsing<N>>,
}

/// Rinses, well mixed.
#[derive(Clone, Debug, Inputs)]
pub struct Rinsing<N> {
    /// rinses
    #[q("n", 0.0..=6.0, like = "2", zero)]
    pub rinses: Count<N>,
    /// litres of water for a kilogram of wool in a rinse
    #[q("r_r", 4.0..=100.0)]
    pub rinse_ratio: Option<Ratio<N>>,
}

/// What [`scour_liquor()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ScourLiquorInputs<N> {
    /// wool as weighed
    #[q("m", 0.1..=2000.0, like = "20 kg")]
    pub mass: Mass<N>,
    /// The liquor.
    #[group]
    pub liquor: ScourLiquor<N>,
    /// The squeeze and the rinses.
    #[group]
    pub squeeze: Option<Squeeze<N>>,
}

/// Liquor, soap and alkali to make up.
#[derive(Clone, Debug, Results)]
pub struct LiquorResults<N> {
    /// temperature of the liquor, as given
    pub temperature: Option<Temperature<N>>,
    /// liquor
    #[head = "liquor"]
    pub liquor_volume: Volume<N>,
    /// soap or detergent to weigh out
    #[head = "soap"]
    pub soap_mass: Option<Mass<N>>,
    /// alkali to weigh out
    #[head = "alkali"]
    pub alkali_mass: Option<Mass<N>>,
}

/// What [`scour_liquor()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ScourLiquorResults<N> {
    /// The liquor.
    #[block = "Liquor and rinses"]
    #[part]
    pub liquor: LiquorResults<N>,
    /// liquor that the squeezed wool carries on
    pub carried_volume: Option<Volume<N>>,
    /// What the rinses leave.
    #[part]
    pub rinsed: Option<RinseResults<N>>,
    /// water for the lot
    pub water_volume: Volume<N>,
}

/// What the rinses leave.
#[derive(Clone, Debug, Results)]
pub struct RinseResults<N> {
    /// water of each rinse
    pub rinse_volume: Volume<N>,
    /// dissolved matter left after the rinses, on what the squeezed wool carries
    pub left_share: Fraction<N>,
    /// soap or detergent still on the wool with its water
    pub soap_left: Option<Mass<N>>,
    /// alkali still on the wool with its water
    pub alkali_left: Option<Mass<N>>,
}

/// Liquor, soap and alkali for a lot of wool, what it carries on, what the rinses leave, the water for all.
///
/// `pickup` is the liquor that the squeeze leaves on the dry wool; `rinses` are well mixed, each of
/// `rinse_ratio` litres for a kilogram (the liquor's without it). Concentrations and `temperature` are
/// yours; the table `scour_liquors` of the handbook has what sources print.
#[calculation(
    title = "Scour liquor for a lot",
    example = ">>> import hankwise as hw
>>> lot = hw.mill.scour_liquor(mass=\"20 kg\", liquor_ratio=30, soap_concentration=\"10 g/L\",
...                            pickup=\"60 %\", rinses=2, temperature=\"50 °C\")
>>> lot[\"soap_mass\"], lot[\"carried_volume\"], lot[\"water_volume\"]
(<mass: 6 kg>, <volume: 12 L>, <volume: 1800 L>)",
    cautions = ["raw fleece", "scouring", "hot liquor"],
    check = check
)]
pub fn scour_liquor<N: Number>(given: &ScourLiquorInputs<N>) -> ScourLiquorResults<N> {
    let liquor = make_up(given.mass, &given.liquor);
    let carried_volume = given.squeeze.as_ref().map(|squeeze| {
        let dry = squeeze.regain.map_or(given.mass, |regain| oven_dry_mass(given.mass, regain));
        liquor_carried(dry, squeeze.pickup, squeeze.liquor_density)
    });
    let rinsing = given.squeeze.as_ref().and_then(|squeeze| squeeze.rinsing.as_ref());
    // Each rinse is a term of its own: their number is not a cell of a workbook that only half of it
    // would follow.
    let number = rinsing.map_or(0.0, |rinsing| rinsing.rinses.value()).min(MOST_RINSES) as usize;
    let rinse_volume = rinsing
        .and_then(|rinsing| rinsing.rinse_ratio)
        .map_or(liquor.liquor_volume, |ratio| liquor_volume(given.mass, ratio));
    let all = vec![rinse_volume; number];
    let rinsed = carried_volume.filter(|_| number > 0).map(|carried| {
        let left_share = left_after_rinses(carried, &all);
        let left = |out: Mass<N>| {
            let each = out.v() * carried.v() / liquor.liquor_volume.v();
            Mass::from(each * left_share.v())
        };
        RinseResults {
            rinse_volume,
            left_share,
            soap_left: liquor.soap_mass.map(left),
            alkali_left: liquor.alkali_mass.map(left),
        }
    });
    let water = all.iter().fold(liquor.liquor_volume.v(), |sum, rinse| sum + rinse.v());
    ScourLiquorResults { liquor, carried_volume, rinsed, water_volume: Volume::from(water) }
}

/// More rinses than anybody gives.
const MOST_RINSES: f64 = 20.0;

/// Liquor, soap and alkali for a mass of wool.
pub(super) fn make_up<N: Number>(mass: Mass<N>, given: &ScourLiquor<N>) -> LiquorResults<N> {
    let liquor = liquor_volume(mass, given.liquor_ratio);
    let out = |concentration| mass_in_liquor(liquor, concentration);
    LiquorResults {
        temperature: given.temperature,
        liquor_volume: liquor,
        soap_mass: given.soap_concentration.map(out),
        alkali_mass: given.alkali_concentration.map(out),
    }
}

/// The hottest that sources stay at with alkali, °C.
const HOTTEST: f64 = 60.0;

/// Says of a liquor that it is hotter than sources have it; `before` is before the input.
pub(super) fn warn_of_heat(given: &ScourLiquor<f64>, before: &str, check: &mut Check<'_>) {
    if let Some(hot) = given.temperature
        && hot.value() > HOTTEST + 1e-9
    {
        check.warn(format!(
            "{before}temperature: {} is more than the {HOTTEST} °C (140 °F) at or below which sources stay \
             with alkali; the hotter, the more it attacks the wool",
            check.say(hot)
        ));
    }
}

fn check(
    given: &ScourLiquorInputs<f64>,
    _found: &ScourLiquorResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if let Some(squeeze) = &given.squeeze
        && let Some(rinsing) = &squeeze.rinsing
        && rinsing.rinses.value() > MOST_RINSES
    {
        refuse!(check, rinsing.rinses, "write a whole number up to {MOST_RINSES}, such as 2");
    }
    warn_of_heat(&given.liquor, "", check);
    check.note(
        "Liquor and rinses",
        "Concentration and temperature are yours, from the maker of the detergent or a source; the table \
         scour_liquors of the handbook has what sources print.",
    );
    check.note(
        "Liquor and rinses",
        "The rinses are taken as well mixed, for what is dissolved. What grease stays on the wool is found \
         by test: it is data of your scour, not a law.",
    );
    if given.squeeze.as_ref().is_some_and(|squeeze| squeeze.regain.is_none()) {
        check.note(
            "Liquor and rinses",
            "No regain was given: the mass is taken as dry for what is carried.",
        );
    }
    Ok(())
}
