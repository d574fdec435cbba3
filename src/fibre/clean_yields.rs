//! The yields of the trade side by side, from any one of them.

use super::raw::{ALLOWANCE, CUSTOMS_PURE, IWTO_PURE, JAPANESE, TOP_AND_NOIL, combing_allowance};
use super::{
    clean_content_customs, clean_yield_customs, mass_loss_from_yield, scoured_yield_iwto,
    scoured_yield_japanese, top_and_noil_dry,
};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{Fraction, MassLoss, Regain, Yield};
use crate::source::cited;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// A definition of yield.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Basis {
    Iwto(f64),
    Japanese,
    TopAndNoil,
    Content,
    Customs,
}

impl Basis {
    fn of<N: Number>(self, wool: Fraction<N>, vegetable: Fraction<N>) -> Yield<N> {
        match self {
            Basis::Iwto(regain) => {
                scoured_yield_iwto(wool, vegetable, Regain::from(V::constant(regain)))
            }
            Basis::Japanese => scoured_yield_japanese(wool),
            Basis::TopAndNoil => top_and_noil_dry(wool, vegetable),
            Basis::Content => clean_content_customs(wool),
            Basis::Customs => clean_yield_customs(clean_content_customs(wool), vegetable),
        }
    }
    /// The wool base of a yield: each definition solved for it.
    fn back<N: Number>(self, clean: V<N>, vegetable: V<N>) -> V<N> {
        match self {
            Basis::Iwto(regain) => clean * IWTO_PURE / (1.0 + regain) - vegetable,
            Basis::Japanese => clean * JAPANESE.1 / (1.0 + JAPANESE.0),
            Basis::TopAndNoil => (clean + combing_allowance(vegetable)) / TOP_AND_NOIL,
            Basis::Content => clean * CUSTOMS_PURE,
            Basis::Customs => {
                let (of_content, of_vegetable, most) = ALLOWANCE;
                let below = (clean + of_vegetable * vegetable) / (1.0 - of_content);
                below.min(clean / (1.0 - most)) * CUSTOMS_PURE
            }
        }
    }
}

const IWTO_16: Basis = Basis::Iwto(0.16);
const IWTO_17: Basis = Basis::Iwto(0.17);

/// The yield that is known.
#[derive(Clone, Debug, Inputs)]
#[allow(non_camel_case_types, reason = "the variants are named as the inputs")]
pub enum KnownYield<N> {
    /// clean dry fibre in the greasy wool
    #[q("WB", 0.3..=0.8, like = "52 %")]
    WoolBase(Fraction<N>),
    /// scoured yield at 16 % regain
    #[q("Y_16", 0.3..=0.95, like = "61 %")]
    Iwto16(Yield<N>),
    /// scoured yield at 17 % regain
    #[q("Y_17", 0.3..=0.95, like = "61 %")]
    Iwto17(Yield<N>),
    /// Japanese clean scoured yield
    #[q("Y_J", 0.3..=0.95)]
    Japanese(Yield<N>),
    /// yield of top and noil, dry combed
    #[q("Y_t", 0.3..=0.95)]
    TopAndNoil(Yield<N>),
    /// clean content of the US customs
    #[q("A", 0.3..=0.95)]
    CustomsContent(Yield<N>),
    /// clean yield of the US customs
    #[q("Y_c", 0.3..=0.95)]
    CustomsYield(Yield<N>),
    /// shrinkage to scoured wool at 16 % regain
    #[q("s_16", 0.05..=0.7)]
    Iwto16Shrinkage(MassLoss<N>),
    /// shrinkage to scoured wool at 17 % regain
    #[q("s_17", 0.05..=0.7)]
    Iwto17Shrinkage(MassLoss<N>),
    /// shrinkage to Japanese clean scoured wool
    #[q("s_J", 0.05..=0.7)]
    JapaneseShrinkage(MassLoss<N>),
    /// shrinkage to top and noil
    #[q("s_t", 0.05..=0.7)]
    TopAndNoilShrinkage(MassLoss<N>),
    /// shrinkage to the clean content of the US customs
    #[q("s_A", 0.05..=0.7)]
    CustomsContentShrinkage(MassLoss<N>),
    /// shrinkage to the clean yield of the US customs
    #[q("s_c", 0.05..=0.7)]
    CustomsYieldShrinkage(MassLoss<N>),
}

impl<N: Number> KnownYield<N> {
    fn wool_base(&self, vegetable: V<N>) -> Fraction<N> {
        let clean =
            |clean: &Yield<N>, basis: Basis| Fraction::from(basis.back(clean.v(), vegetable));
        let lost = |lost: &MassLoss<N>, basis: Basis| {
            Fraction::from(basis.back(1.0 - lost.v(), vegetable))
        };
        match self {
            KnownYield::WoolBase(wool) => *wool,
            KnownYield::Iwto16(y) => clean(y, IWTO_16),
            KnownYield::Iwto17(y) => clean(y, IWTO_17),
            KnownYield::Japanese(y) => clean(y, Basis::Japanese),
            KnownYield::TopAndNoil(y) => clean(y, Basis::TopAndNoil),
            KnownYield::CustomsContent(y) => clean(y, Basis::Content),
            KnownYield::CustomsYield(y) => clean(y, Basis::Customs),
            KnownYield::Iwto16Shrinkage(s) => lost(s, IWTO_16),
            KnownYield::Iwto17Shrinkage(s) => lost(s, IWTO_17),
            KnownYield::JapaneseShrinkage(s) => lost(s, Basis::Japanese),
            KnownYield::TopAndNoilShrinkage(s) => lost(s, Basis::TopAndNoil),
            KnownYield::CustomsContentShrinkage(s) => lost(s, Basis::Content),
            KnownYield::CustomsYieldShrinkage(s) => lost(s, Basis::Customs),
        }
    }
}

impl<N> KnownYield<N> {
    /// Its name as an input.
    fn name(&self) -> &'static str {
        match self {
            KnownYield::WoolBase(_) => "wool_base",
            KnownYield::Iwto16(_) => "iwto_16",
            KnownYield::Iwto17(_) => "iwto_17",
            KnownYield::Japanese(_) => "japanese",
            KnownYield::TopAndNoil(_) => "top_and_noil",
            KnownYield::CustomsContent(_) => "customs_content",
            KnownYield::CustomsYield(_) => "customs_yield",
            KnownYield::Iwto16Shrinkage(_) => "iwto_16_shrinkage",
            KnownYield::Iwto17Shrinkage(_) => "iwto_17_shrinkage",
            KnownYield::JapaneseShrinkage(_) => "japanese_shrinkage",
            KnownYield::TopAndNoilShrinkage(_) => "top_and_noil_shrinkage",
            KnownYield::CustomsContentShrinkage(_) => "customs_content_shrinkage",
            KnownYield::CustomsYieldShrinkage(_) => "customs_yield_shrinkage",
        }
    }
}

/// What [`clean_yields()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct CleanYieldsInputs<N> {
    /// Any one of the yields.
    #[one_of("the yield")]
    pub known: KnownYield<N>,
    /// dry vegetable matter, on the greasy mass
    #[q("VMB", 0.0..=0.1, like = "1.5 %", zero)]
    pub vegetable_base: Option<Fraction<N>>,
}

/// What [`clean_yields()`] answers.
#[derive(Clone, Debug, Results)]
pub struct CleanYieldsResults<N> {
    /// wool base: clean dry fibre, on the greasy mass
    #[block = "Share of the greasy mass"]
    pub wool_base: Fraction<N>,
    /// scoured yield at 16 % regain
    pub iwto_16: Yield<N>,
    /// shrinkage to scoured wool at 16 % regain
    pub iwto_16_shrinkage: MassLoss<N>,
    /// scoured yield at 17 % regain
    pub iwto_17: Yield<N>,
    /// shrinkage to scoured wool at 17 % regain
    pub iwto_17_shrinkage: MassLoss<N>,
    /// Japanese clean scoured yield
    pub japanese: Yield<N>,
    /// shrinkage to Japanese clean scoured wool
    pub japanese_shrinkage: MassLoss<N>,
    /// yield of top and noil, dry combed
    pub top_and_noil: Yield<N>,
    /// shrinkage to top and noil
    pub top_and_noil_shrinkage: MassLoss<N>,
    /// clean content of the US customs
    pub customs_content: Yield<N>,
    /// shrinkage to the clean content of the US customs
    pub customs_content_shrinkage: MassLoss<N>,
    /// clean yield of the US customs
    pub customs_yield: Yield<N>,
    /// shrinkage to the clean yield of the US customs
    pub customs_yield_shrinkage: MassLoss<N>,
}

/// Every yield of a lot by each definition of the trade, from any one of them.
///
/// Give one yield, or the shrinkage to it, and the vegetable matter. The `wool_base` is what the plan of a
/// lot asks for as its clean yield. Constants of the wool trade are from memory; those of the US customs
/// are published.
#[calculation(
    title = "Clean yield by each definition",
    example = ">>> import hankwise as hw
>>> lot = hw.fibre.clean_yields(iwto_17=\"61 %\", vegetable_base=\"1.5 %\")
>>> lot[\"wool_base\"], lot[\"customs_content\"]
(<fraction: 49.45 %>, <yield: 57.50 %>)",
    sources = ["19 CFR 151", "memory"],
    cautions = ["raw fleece"],
    check = check,
    report = report
)]
pub fn clean_yields<N: Number>(given: &CleanYieldsInputs<N>) -> CleanYieldsResults<N> {
    let vegetable = given.vegetable_base.unwrap_or_else(|| Fraction::from(V::constant(0.0)));
    let wool_base = given.known.wool_base(vegetable.v());
    let by = |basis: Basis| {
        let clean = basis.of(wool_base, vegetable);
        (clean, mass_loss_from_yield(clean))
    };
    let (iwto_16, iwto_16_shrinkage) = by(IWTO_16);
    let (iwto_17, iwto_17_shrinkage) = by(IWTO_17);
    let (japanese, japanese_shrinkage) = by(Basis::Japanese);
    let (top_and_noil, top_and_noil_shrinkage) = by(Basis::TopAndNoil);
    let (customs_content, customs_content_shrinkage) = by(Basis::Content);
    let (customs_yield, customs_yield_shrinkage) = by(Basis::Customs);
    CleanYieldsResults {
        wool_base,
        iwto_16,
        iwto_16_shrinkage,
        iwto_17,
        iwto_17_shrinkage,
        japanese,
        japanese_shrinkage,
        top_and_noil,
        top_and_noil_shrinkage,
        customs_content,
        customs_content_shrinkage,
        customs_yield,
        customs_yield_shrinkage,
    }
}

fn check(
    given: &CleanYieldsInputs<f64>,
    found: &CleanYieldsResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let vegetable = given.vegetable_base.map_or(0.0, Fraction::value);
    if given.vegetable_base.is_none() {
        check.warn(
            "vegetable_base was not given and is taken as none: the yields that count it differ",
        );
    }
    let wool = found.wool_base.value();
    if !(wool > 0.0 && wool + vegetable <= 1.0) {
        return Err(check.refuse(
            given.known.name(),
            format!(
                "the clean dry fibre would be {} of the greasy wool beside {} of vegetable matter, which \
                 cannot be; is it a yield by another definition?",
                check.say(Yield::<f64>::base(wool)),
                check.say(Fraction::<f64>::base(vegetable))
            ),
        ));
    }
    Ok(())
}

/// The yields side by side, with what each holds and how sure it is.
fn report(
    given: &CleanYieldsInputs<f64>,
    found: &CleanYieldsResults<f64>,
    check: &Check<'_>,
) -> Report {
    const ASH: &str = "with vegetable matter, 2.27 % of the dry mass ash and extract";
    const CUSTOMS: &str = "19 CFR 151";
    let wool = found.wool_base.value();
    let rows = [
        (
            "wool base, clean dry fibre",
            wool,
            1.0 - wool,
            "oven-dry fibre without fat, ash, vegetable matter; what the plan asks for",
            "definition",
        ),
        (
            "scoured yield, 16 % regain",
            found.iwto_16.value(),
            found.iwto_16_shrinkage.value(),
            ASH,
            "memory",
        ),
        (
            "scoured yield, 17 % regain",
            found.iwto_17.value(),
            found.iwto_17_shrinkage.value(),
            ASH,
            "memory",
        ),
        (
            "Japanese clean scoured",
            found.japanese.value(),
            found.japanese_shrinkage.value(),
            "no vegetable matter; 16 % regain, 1.5 % ash and extract",
            "memory",
        ),
        (
            "Schlumberger dry top and noil",
            found.top_and_noil.value(),
            found.top_and_noil_shrinkage.value(),
            "what combing keeps; an allowance for vegetable matter off",
            "memory",
        ),
        (
            "US customs clean content",
            found.customs_content.value(),
            found.customs_content_shrinkage.value(),
            "12 % moisture, 1.5 % extract, 0.5 % ash in it",
            CUSTOMS,
        ),
        (
            "US customs clean yield",
            found.customs_yield.value(),
            found.customs_yield_shrinkage.value(),
            "clean content less an allowance for vegetable matter",
            CUSTOMS,
        ),
    ];
    let percent = |x: f64| check.say(Yield::<f64>::base(x));
    let columns = [
        ("by", Left),
        ("yield", Right),
        ("shrinkage", Right),
        ("what it holds", Left),
        ("basis", Left),
    ];
    Report {
        title: CLEAN_YIELDS.title.to_owned(),
        blocks: vec![Block {
            title: format!(
                "Share of the greasy mass; vegetable matter {}",
                check.say(given.vegetable_base.unwrap_or(Fraction::base(0.0)))
            ),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows: rows
                .map(|(by, clean, lost, holds, source)| {
                    vec![
                        by.to_owned(),
                        percent(clean),
                        percent(lost),
                        holds.to_owned(),
                        cited(source),
                    ]
                })
                .to_vec(),
            foot: vec![
                "The constants marked memory are to be compared with the test certificate before \
                 anything is paid on them."
                    .to_owned(),
            ],
            ..Block::default()
        }],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Each definition, solved for the wool base, undoes itself.
        #[test]
        fn back_undoes_forward(wool in 0.2..0.8_f64, vegetable in 0.0..0.2_f64) {
            let all = [
                IWTO_16, IWTO_17, Basis::Japanese, Basis::TopAndNoil, Basis::Content, Basis::Customs,
            ];
            for basis in all {
                let clean = basis.of(Fraction::base(wool), Fraction::base(vegetable)).value();
                let back = basis.back(V(clean), V(vegetable)).value();
                prop_assert!((back - wool).abs() < 1e-12, "{:?}: {} for {}", basis, back, wool);
            }
        }
    }
}
