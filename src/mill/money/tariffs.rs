//! Commission tariffs compared: for the kilogram sent in, clean, or finished.

use super::tariffs_report::report;
use super::{charge_for_mass, charge_for_rejects, yield_of_equal_charge};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{CostPerMass, Mass, Money, ShareLost, Yield};

/// A tariff for the clean kilogram.
#[derive(Clone, Debug, Inputs)]
pub struct CleanTariff<N> {
    /// tariff for a kilogram clean
    #[q("c_c", 0.0..=200.0, zero)]
    pub tariff_clean: CostPerMass<N>,
    /// clean mass, on the greasy mass
    #[q("y", 0.3..=0.9)]
    pub clean_yield: Yield<N>,
}

/// What is charged for rejects of sorting.
#[derive(Clone, Debug, Inputs)]
pub struct RejectTariff<N> {
    /// share sorted out, on the greasy mass
    #[q("r_j", 0.0..=0.5, zero)]
    pub rejects: ShareLost<N>,
    /// charge for a kilogram of rejects beyond the share that is free
    #[q("c", 0.0..=50.0, zero, like = "2 /kg")]
    pub reject_charge: CostPerMass<N>,
    /// share of rejects that is put away free, by one mill's rule unless given
    #[q("r₀", 0.0..=0.5, or = 0.15, zero, basis = "Custom mill leaflet")]
    pub free_rejects: ShareLost<N>,
}

/// What [`compare_tariffs()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct CompareTariffsInputs<N> {
    /// greasy mass sent in
    #[q("G", 1.0..=5000.0, like = "80 kg")]
    pub greasy_mass: Mass<N>,
    /// finished mass, on the greasy mass: likely, or low and high, or low, likely and high
    #[q("Y", 0.2..=1.0, like = "55 %")]
    pub yields: Vec<Yield<N>>,
    /// tariff for a kilogram sent in
    #[q("c₁", 0.0..=100.0, zero)]
    pub tariff_in: Option<CostPerMass<N>>,
    /// The tariff for the clean kilogram.
    #[group]
    pub clean: Option<CleanTariff<N>>,
    /// tariff for a kilogram that comes out finished
    #[q("c₂", 0.1..=200.0)]
    pub tariff_out: Option<CostPerMass<N>>,
    /// least charge for a lot
    #[q("k₀", 0.0..=2000.0, or = 0.0)]
    pub minimum_charge: Money<N>,
    /// What rejects cost.
    #[group]
    pub rejects: Option<RejectTariff<N>>,
}

/// What the finished kilogram comes to at a yield.
#[derive(Clone, Debug, Results)]
pub struct YieldCharge<N> {
    /// which yield: low, likely or high
    #[label]
    pub at: String,
    /// finished mass
    pub finished_mass: Mass<N>,
    /// charge by the kilogram that comes out finished
    pub charge_out: Money<N>,
}

/// What [`compare_tariffs()`] answers.
#[derive(Clone, Debug, Results)]
pub struct CompareTariffsResults<N> {
    /// charge by the kilogram sent in
    #[block = "What the lot is charged"]
    pub charge_in: Option<Money<N>>,
    /// clean mass
    pub clean_mass: Option<Mass<N>>,
    /// charge by the kilogram clean
    pub charge_clean: Option<Money<N>>,
    /// yield at which the finished kilogram is charged as the kilogram sent in
    pub equal_yield: Option<Yield<N>>,
    /// yield at which the finished kilogram is charged as the kilogram clean
    pub equal_yield_clean: Option<Yield<N>>,
    /// charge for rejects, whichever the tariff
    pub charge_for_rejects: Option<Money<N>>,
    /// By the finished kilogram, at each yield
    #[rows]
    pub charges_out: Vec<YieldCharge<N>>,
}

/// What a commission mill charges for a lot by the kilogram sent in, clean or finished.
///
/// Below the equal yield the tariff for the finished kilogram is the cheaper for the owner of the wool,
/// above it the dearer. Rejects are charged on top, whichever the tariff. Value added tax is not included.
#[calculation(
    title = "Tariffs compared",
    check = check,
    report = report,
    example = ">>> import hankwise as hw
>>> charge = hw.mill.compare_tariffs(greasy_mass=\"80 kg\", yields=[\"45 %\", \"60 %\"],
...                                  tariff_in=\"11 /kg\", tariff_out=\"20 /kg\")
>>> charge[\"charge_in\"], charge[\"high.charge_out\"], charge[\"equal_yield\"]
(<money: 880>, <money: 960>, <yield: 55 %>)"
)]
pub fn compare_tariffs<N: Number>(given: &CompareTariffsInputs<N>) -> CompareTariffsResults<N> {
    let (greasy, least) = (given.greasy_mass, given.minimum_charge);
    let charge_in = given.tariff_in.map(|tariff| charge_for_mass(greasy, tariff, least));
    let clean_mass =
        given.clean.as_ref().map(|clean| Mass::from(greasy.v() * clean.clean_yield.v()));
    let charge_clean = given
        .clean
        .as_ref()
        .zip(clean_mass)
        .map(|(clean, mass)| charge_for_mass(mass, clean.tariff_clean, least));
    let equal = |charge: Option<Money<N>>| {
        let (charge, tariff) = (charge?, given.tariff_out?);
        // What the lot is charged for a kilogram in truth, with the least charge in it.
        let paid = CostPerMass::from(charge.v() / greasy.v());
        Some(yield_of_equal_charge(paid, tariff))
    };
    let charges_out = match given.tariff_out {
        None => Vec::new(),
        Some(tariff) => {
            let ends = ends(given.yields.len());
            let at = |(end, share): (&&str, &Yield<N>)| {
                let (finished_mass, charge_out) = charge_at(greasy, *share, tariff, least);
                YieldCharge { at: (*end).to_owned(), finished_mass, charge_out }
            };
            ends.iter().zip(&given.yields).map(at).collect()
        }
    };
    CompareTariffsResults {
        charge_in,
        clean_mass,
        charge_clean,
        equal_yield: equal(charge_in),
        equal_yield_clean: equal(charge_clean),
        charge_for_rejects: given
            .rejects
            .as_ref()
            .map(|by| charge_for_rejects(greasy, by.rejects, by.free_rejects, by.reject_charge)),
        charges_out,
    }
}

/// Finished mass and charge by it, at a yield.
pub(super) fn charge_at<N: Number>(
    greasy: Mass<N>,
    share: Yield<N>,
    tariff: CostPerMass<N>,
    least: Money<N>,
) -> (Mass<N>, Money<N>) {
    let mass = Mass::from(greasy.v() * share.v());
    (mass, charge_for_mass(mass, tariff, least))
}

/// What the yields of a range are called.
fn ends(number: usize) -> &'static [&'static str] {
    match number {
        1 => &["likely"],
        2 => &["low", "high"],
        _ => &["low", "likely", "high"],
    }
}

fn check(
    given: &CompareTariffsInputs<f64>,
    _: &CompareTariffsResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let tariffs = [given.tariff_in.is_some(), given.clean.is_some(), given.tariff_out.is_some()];
    if tariffs.iter().filter(|is_given| **is_given).count() < 2 {
        refuse!(
            check,
            given.tariff_out,
            "give two tariffs to compare: of tariff_in, tariff_clean (with clean_yield) and tariff_out"
        );
    }
    let rising = given.yields.is_sorted_by(|a, b| a.value() < b.value());
    if given.yields.len() > 3 || !rising {
        refuse!(
            check,
            given.yields,
            "give one yield, or low and high, or low, likely and high, rising, such as ['48 %', '55 %', \
             '60 %']"
        );
    }
    Ok(())
}
