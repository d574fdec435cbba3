//! Whether a wool will spin to a count.

use super::tables::MINIMUM_FIBRES;
use super::{
    fibres_in_section, limit_count, limit_factor_of_diameter, limit_irregularity,
    setting_over_staple, wool_fibre_count,
};
use crate::calculation::{Check, Inputs, Results, Words, calculation};
use crate::error::Result;
use crate::handbook::Figure;
use crate::number::{Number, V};
use crate::quantity::print::fixed;
use crate::quantity::{Count, Fineness, Fraction, Length, LinearDensity, Ratio};
use crate::source::cited;

const BLOCK: &str = "Fibres in the section";

/// A way of spinning wool.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Words)]
pub enum WoolSpinning {
    /// on the woollen mule or ring frame
    #[default]
    Woollen,
    /// drawn without combing
    #[word("semi-worsted")]
    SemiWorsted,
    /// combed and drawn
    Worsted,
}

impl WoolSpinning {
    /// Its word.
    pub fn word(self) -> &'static str {
        Self::WORDS[self as usize].0
    }
    /// The fibres that a section needs; the upper end of a band is the one to plan by.
    fn floor(self) -> Option<&'static Figure> {
        MINIMUM_FIBRES.figures.iter().find(|f| f.of[0] == "wool" && f.of[1] == self.word())
    }
}

/// Staple and drafting rollers.
#[derive(Clone, Debug, Inputs)]
pub struct DraftingZone<N> {
    /// length of the longest staple
    #[q("l", 0.02..=0.4, like = "80 mm")]
    pub staple: Length<N>,
    /// distance between the nips of the drafting rollers
    #[q("s", 0.02..=0.5, like = "120 mm")]
    pub roller_setting: Length<N>,
}

/// What [`will_spin()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WillSpinInputs<N> {
    /// mean fibre diameter
    #[q("d_f", 12.0..=50.0, like = "27 µm")]
    pub fibre_diameter: Fineness<N>,
    /// coefficient of variation of the fibre diameter
    #[q("CV_d", 0.15..=0.30, like = "24 %", zero)]
    pub diameter_cv: Fraction<N>,
    /// count of the single, clean and conditioned
    #[q("T", 5.0..=2000.0, like = "150 tex")]
    pub count: LinearDensity<N>,
    /// way of spinning
    #[word]
    pub system: WoolSpinning,
    /// Staple and drafting rollers.
    #[group]
    pub drafting_zone: Option<DraftingZone<N>>,
}

/// What [`will_spin()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WillSpinResults<N> {
    /// count of a fibre of the mean diameter
    #[block = "Fibres in the section"]
    pub fibre_count: LinearDensity<N>,
    /// fibres in the section
    pub fibres: Count<N>,
    /// fibres that the section needs
    pub fibres_needed: Count<N>,
    /// fibres in the section, over what is needed
    pub fibres_ratio: Ratio<N>,
    /// finest count
    pub limit_count: LinearDensity<N>,
    /// least irregularity, as coefficient of variation
    pub limit_irregularity: Fraction<N>,
    /// setting of the rollers, over the staple
    pub setting_over_staple: Option<Ratio<N>>,
}

/// Fibres in the section of a wool yarn against what a way of spinning needs: woollen, semi-worsted or
/// worsted.
///
/// Below what is needed there is a warning. `staple` and `roller_setting` are compared where both are
/// given.
#[calculation(
    title = "Will this wool spin to the count?",
    example = ">>> import hankwise as hw
>>> wool = hw.fibre.will_spin(fibre_diameter=\"27 µm\", diameter_cv=\"24 %\", count=\"150 tex\")
>>> wool[\"fibres\"], wool[\"limit_count\"]
(<number: 189.1>, <linear density (count): 95.19 tex>)",
    check = check
)]
pub fn will_spin<N: Number>(given: &WillSpinInputs<N>) -> WillSpinResults<N> {
    let WillSpinInputs { fibre_diameter, diameter_cv, count, .. } = *given;
    let fibre_count = wool_fibre_count(fibre_diameter);
    let fibres = fibres_in_section(count, fibre_count, diameter_cv);
    let needed = given.system.floor().map_or(f64::NAN, |floor| floor.high);
    let fibres_needed = Count::from(V::constant(needed));
    WillSpinResults {
        fibre_count,
        fibres,
        fibres_needed,
        fibres_ratio: Ratio::from(fibres.v() / fibres_needed.v()),
        limit_count: limit_count(fibres_needed, fibre_count, diameter_cv),
        limit_irregularity: limit_irregularity(limit_factor_of_diameter(diameter_cv), fibres),
        setting_over_staple: given
            .drafting_zone
            .as_ref()
            .map(|zone| setting_over_staple(zone.roller_setting, zone.staple)),
    }
}

#[expect(clippy::unnecessary_wraps, reason = "a check of a calculation may refuse")]
fn check(
    given: &WillSpinInputs<f64>,
    found: &WillSpinResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if let Some(floor) = given.system.floor() {
        let (word, n) = (given.system.word(), found.fibres.value());
        if n < floor.high {
            check.warn(format!(
                "{} fibres in the section are {} the {} that {word} spinning needs ({}): a coarser count \
                 or a finer wool",
                fixed(n, 0),
                if n < floor.low { "below" } else { "in" },
                floor.words(),
                cited(floor.source)
            ));
        }
        check.note(
            BLOCK,
            format!(
                "For {word} spinning the section needs {} fibres ({}); that is a floor, and no \
                 promise above it: short, tender or uneven wool stops sooner.",
                floor.words(),
                cited(floor.source)
            ),
        );
    }
    if found.setting_over_staple.is_some_and(|over| over.value() < 1.0) {
        check.warn(
            "the rollers are closer than the staple is long: both pairs hold the longest fibres, which \
             break or crack the draft (custom of the trade)",
        );
    }
    Ok(())
}
