//! The washes of a scour, one after another.

use super::scour::{LiquorResults, ScourLiquor, make_up, warn_of_heat};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::mill::fat_after_washes;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Mass, OnFibre, Volume};

/// A wash.
#[derive(Clone, Debug, Inputs)]
pub struct Wash<N> {
    /// Its liquor.
    #[group]
    pub liquor: ScourLiquor<N>,
    /// grease removed, on the grease that the wash meets
    #[q("g", 0.0..=1.0, zero)]
    pub removed_share: Option<Fraction<N>>,
}

/// What [`washes()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WashesInputs<N> {
    /// wool as weighed
    #[q("m", 0.1..=2000.0, like = "20 kg")]
    pub mass: Mass<N>,
    /// grease and oil on clean dry fibre, before
    #[q("o₁", 0.0..=0.6, zero)]
    pub fat_before: Option<OnFibre<N>>,
    /// the washes, in order
    #[rows]
    pub washes: Vec<Wash<N>>,
}

/// What [`washes()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WashesResults<N> {
    /// Wash by wash
    #[rows]
    pub washes: Vec<WashResults<N>>,
    /// soap or detergent for all washes
    #[block = "For all"]
    pub soap_mass: Option<Mass<N>>,
    /// alkali for all washes
    pub alkali_mass: Option<Mass<N>>,
    /// water for all washes
    pub water_volume: Volume<N>,
}

/// A wash: what to make up, and the grease after it.
#[derive(Clone, Debug, Results)]
pub struct WashResults<N> {
    /// The liquor.
    #[part]
    pub liquor: LiquorResults<N>,
    /// grease and oil on clean dry fibre after the wash
    #[head = "grease left"]
    pub fat_after: Option<OnFibre<N>>,
}

/// The washes of a scour one after another: liquor, soap and alkali of each, the grease left after each, the
/// water for all.
///
/// Each wash has its `liquor_ratio`, `soap_concentration`, `alkali_concentration` and `temperature`; with
/// `fat_before` on the clean dry fibre and the `removed_share` of each wash as you found it by test, what is
/// left. Concentrations and temperatures are yours; the table `scour_liquors` of the handbook has what
/// sources print.
#[calculation(
    title = "The washes of a lot",
    example = ">>> import hankwise as hw
>>> first = {\"liquor_ratio\": 30, \"soap_concentration\": \"10 g/L\", \"removed_share\": \"80 %\"}
>>> second = {\"liquor_ratio\": 25, \"soap_concentration\": \"4 g/L\", \"removed_share\": \"75 %\"}
>>> lot = hw.mill.washes(mass=\"20 kg\", fat_before=\"20 %\", washes=[first, second])
>>> [wash[\"soap_mass\"] for wash in lot[\"washes\"]], lot[\"washes[2].fat_after\"], lot[\"water_volume\"]
([<mass: 6 kg>, <mass: 2 kg>], <share on the fibre: 1 %>, <volume: 1100 L>)",
    cautions = ["raw fleece", "scouring", "hot liquor"],
    check = check
)]
pub fn washes<N: Number>(given: &WashesInputs<N>) -> WashesResults<N> {
    let mut fat = given.fat_before;
    let wash = |wash: &Wash<N>| {
        fat = fat.zip(wash.removed_share).map(|(before, share)| fat_after_washes(before, &[share]));
        WashResults { liquor: make_up(given.mass, &wash.liquor), fat_after: fat }
    };
    let washes: Vec<WashResults<N>> = given.washes.iter().map(wash).collect();
    let liquors = || washes.iter().map(|wash| &wash.liquor);
    let sum = |all: Vec<V<N>>| all.into_iter().reduce(|sum, one| sum + one);
    let mass = |of: fn(&LiquorResults<N>) -> Option<Mass<N>>| {
        sum(liquors().filter_map(of).map(Mass::v).collect()).map(Mass::from)
    };
    let (soap_mass, alkali_mass) = (mass(|all| all.soap_mass), mass(|all| all.alkali_mass));
    let water = V::sum(liquors().map(|liquor| liquor.liquor_volume.v()));
    WashesResults { soap_mass, alkali_mass, water_volume: Volume::from(water), washes }
}

fn check(
    given: &WashesInputs<f64>,
    _found: &WashesResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let tested = given.washes.iter().filter(|wash| wash.removed_share.is_some()).count();
    let known = given.fat_before.is_some();
    if known != (tested > 0) || (known && tested < given.washes.len()) {
        refuse!(
            check,
            given.fat_before,
            "the grease left depends on fat_before and on the removed_share of each wash, found by test; \
             write all of these or none"
        );
    }
    for (place, wash) in given.washes.iter().enumerate() {
        warn_of_heat(&wash.liquor, &format!("washes[{}].", place + 1), check);
    }
    check.note(
        "Wash by wash",
        "Concentrations and temperatures are yours, from the maker of the detergent or a source; the table \
         scour_liquors of the handbook has what sources print.",
    );
    check.note(
        "Wash by wash",
        "What a wash takes of the grease is found by test: it is data of your scour, not a law; later washes \
         take a smaller share.",
    );
    Ok(())
}
