//! One invoice at several allowances, from a lot on the scale and a sample in the oven.

use super::{
    commercial_mass, moisture_content, oven_dry_from_content, oven_dry_mass, oven_dry_mass_of_lot,
    regain_from_content, regain_from_masses,
};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::print::fixed;
use crate::quantity::{Deviation, Mass, MoistureContent, OnFibre, Regain};

const INVOICES: &str = "invoice at each allowance";

/// A sample that was dried in the oven.
#[derive(Clone, Debug, Inputs)]
pub struct DriedSample<N> {
    /// sample as taken
    #[q("m_s", 0.001..=10.0, like = "250 g")]
    pub sample_mass: Mass<N>,
    /// sample, oven-dry; where fat is allowed for, cleaned before it was dried
    #[q("m_sd", 0.001..=10.0, like = "212.3 g")]
    pub dry_sample_mass: Mass<N>,
}

/// How the water in a lot is known.
#[derive(Clone, Debug, Inputs)]
pub enum WaterInLot<N> {
    /// From a sample.
    #[group]
    Sample(DriedSample<N>),
    /// regain found, on the oven-dry mass
    #[q("R", 0.0..=0.4, like = "17.8 %", zero)]
    Regain(Regain<N>),
    /// moisture content found, on the mass as weighed
    #[q("M", 0.0..=0.3, like = "15.1 %", zero)]
    MoistureContent(MoistureContent<N>),
}

/// What [`invoice()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct InvoiceInputs<N> {
    /// mass of the lot on the scale
    #[q("m_L", 0.01..=50_000.0, like = "500 kg")]
    pub lot_mass: Mass<N>,
    /// The sample, the regain or the moisture content.
    #[one_of("the water in the lot")]
    pub water: WaterInLot<N>,
    /// agreed allowance for fat, oil and dressing, on the clean oven-dry mass
    #[q("a", 0.0..=0.1, or = 0.0)]
    pub fat_allowance: OnFibre<N>,
    /// agreed allowances for water, on the oven-dry mass
    #[q("A", 0.0..=0.25, like = "17 %", zero)]
    pub allowances: Vec<Regain<N>>,
}

/// The invoice at an allowance.
#[derive(Clone, Debug, Results)]
pub struct Invoice<N> {
    /// allowance for water
    pub allowance: Regain<N>,
    /// invoice mass
    pub invoice_mass: Mass<N>,
    /// how far the invoice mass is from the mass on the scale
    #[head = "to the scale"]
    pub difference: Deviation<N>,
}

/// What [`invoice()`] answers.
#[derive(Clone, Debug, Results)]
pub struct InvoiceResults<N> {
    /// regain found, on the oven-dry mass
    #[block = "The lot"]
    pub regain: Option<Regain<N>>,
    /// moisture content found, on the mass as weighed
    pub moisture_content: Option<MoistureContent<N>>,
    /// oven-dry mass of the lot, cleaned where fat is allowed for
    pub oven_dry_mass: Mass<N>,
    /// what the lot holds beside it: water, and fat where that is allowed for
    pub water_mass: Mass<N>,
    /// invoice at each allowance
    #[rows]
    pub invoices: Vec<Invoice<N>>,
}

/// Regain found, oven-dry mass and the invoice mass of a lot at each of several allowances.
///
/// The water in the lot comes from a `sample_mass` as taken and the `dry_sample_mass` from the oven, or
/// by its `regain` on the dry mass, or by its `moisture_content` on the mass as weighed. The allowance of
/// a fibre is in `hankwise.fibre.allowance`. `fat_allowance` is for fat, oil and dressing, where the
/// sample was cleaned before it was dried.
#[calculation(
    title = "Invoice mass at the agreed regain",
    example = ">>> import hankwise as hw
>>> carded = hw.fibre.allowance(\"wool carded\")
>>> lot = hw.fibre.invoice(lot_mass=\"500 kg\", sample_mass=\"250 g\", dry_sample_mass=\"212.3 g\",
...                        allowances=[\"16 %\", carded, \"18.25 %\"])
>>> lot[\"regain\"], lot[\"invoices[2].invoice_mass\"]
(<regain: 17.76 %>, <mass: 496.8 kg>)",
    check = check
)]
pub fn invoice<N: Number>(given: &InvoiceInputs<N>) -> InvoiceResults<N> {
    let lot = given.lot_mass;
    // Both are None where a sample was cleaned: what it lost is then not its water alone.
    let (regain, content, dry) = match &given.water {
        WaterInLot::Regain(regain) => {
            (Some(*regain), Some(moisture_content(*regain)), oven_dry_mass(lot, *regain))
        }
        WaterInLot::MoistureContent(content) => (
            Some(regain_from_content(*content)),
            Some(*content),
            oven_dry_from_content(lot, *content),
        ),
        WaterInLot::Sample(DriedSample { sample_mass, dry_sample_mass }) => {
            let regain = (given.fat_allowance.value() == 0.0)
                .then(|| regain_from_masses(*sample_mass, *dry_sample_mass));
            let dry = oven_dry_mass_of_lot(lot, *sample_mass, *dry_sample_mass);
            (regain, regain.map(moisture_content), dry)
        }
    };
    let at = |allowance: &Regain<N>| {
        let invoice_mass = commercial_mass(dry, *allowance, given.fat_allowance);
        let difference: V<N> = invoice_mass.v() / lot.v() - 1.0;
        Invoice { allowance: *allowance, invoice_mass, difference: difference.into() }
    };
    InvoiceResults {
        regain,
        moisture_content: content,
        oven_dry_mass: dry,
        water_mass: Mass::from(lot.v() - dry.v()),
        invoices: given.allowances.iter().map(at).collect(),
    }
}

fn check(
    given: &InvoiceInputs<f64>,
    found: &InvoiceResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let fat = given.fat_allowance;
    match &given.water {
        WaterInLot::Sample(sample)
            if sample.dry_sample_mass.value() > sample.sample_mass.value() =>
        {
            refuse!(
                check,
                sample.dry_sample_mass,
                "it is more than sample_mass, and the oven takes water away; are they exchanged?"
            );
        }
        // A mass without water still has its fat: the allowance would count it twice.
        WaterInLot::Regain(_) | WaterInLot::MoistureContent(_) if fat.value() > 0.0 => {
            refuse!(
                check,
                given.fat_allowance,
                "fat is allowed for where the sample was cleaned before it was dried; write sample_mass \
                 and dry_sample_mass in place of regain or moisture_content, or omit fat_allowance"
            );
        }
        _ => {}
    }
    for (k, one) in given.allowances.iter().enumerate() {
        let same = |other: &Regain<f64>| (other.value() - one.value()).abs() < 1e-9;
        if given.allowances[..k].iter().any(same) {
            refuse!(check, given.allowances, "{} was given twice; omit one", check.say(*one));
        }
    }
    let masses = || found.invoices.iter().map(|one| one.invoice_mass.value());
    let (least, most) = (masses().fold(f64::INFINITY, f64::min), masses().fold(0.0, f64::max));
    if found.invoices.len() > 1 {
        check.note(
            INVOICES,
            format!(
                "Between the least and the most there are {}, {} % of the least: that is what the \
                 agreement is about.",
                check.say(Mass::base(most - least)),
                fixed(100.0 * (most / least - 1.0), 1)
            ),
        );
    }
    if fat.value() > 0.0 {
        check.note(
            INVOICES,
            format!(
                "Beside each allowance for water, {} for fat, oil and dressing, on the clean oven-dry \
                 mass: the sample was cleaned before it was dried.",
                check.say(fat)
            ),
        );
    }
    check.note(
        INVOICES,
        "The allowance is agreed before the lot is weighed, and sample and lot are weighed together.",
    );
    Ok(())
}
