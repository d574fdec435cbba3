//! One question, every theory: how close the threads of a cloth can be.

use super::interlacing::Interlacing;
use super::report;
use super::theories::{Theory, theories};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::cloth::ClothYarns;
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::print::constant;
use crate::quantity::{Ratio, Sett, SpecificVolume};

/// What [`setts()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct SettsInputs<N> {
    /// weave, such as 2/2 twill
    pub weave: String,
    /// The yarns.
    #[group]
    pub yarns: ClothYarns<N>,
    /// Ashenhurst's factor of the yarn; where it is omitted, woollen and worsted are both answered
    #[q("k", 0.8..=1.0, like = "0.84", basis = "Ashenhurst page 1999")]
    pub yarn_factor: Option<Ratio<N>>,
    /// specific volume of the yarn, for Peirce and Love; that of cotton where it is omitted
    #[q("v", 0.7..=6.0)]
    pub specific_volume: Option<SpecificVolume<N>>,
    /// ends wanted
    #[q("n_1", 1.0..=80.0, like = "8 ends/cm")]
    pub wanted_warp_sett: Option<Sett<N>>,
    /// picks wanted
    #[q("n_f", 1.0..=80.0, like = "8 picks/cm")]
    pub wanted_weft_sett: Option<Sett<N>>,
}

/// What [`setts()`] answers.
#[derive(Clone, Debug, Results)]
pub struct SettsResults<N> {
    /// Maximum setts, by every theory
    #[rows]
    pub theories: Vec<Theory<N>>,
    /// lowest maximum sett of the ends
    #[block = "How far the theories differ"]
    pub lowest_warp_sett: Sett<N>,
    /// highest maximum sett of the ends
    pub highest_warp_sett: Sett<N>,
    /// how much closer the highest is, on the lowest
    pub spread: Ratio<N>,
}

/// The maximum setts of a weave in warp and weft, by every theory side by side.
///
/// `weft_count` is the warp's unless given, `yarn_factor` Ashenhurst's (woollen and worsted are both answered
/// without it), `specific_volume` that for Peirce and Love (cotton's without it). With `wanted_warp_sett` or
/// `wanted_weft_sett` each theory says what share of its maximum they are. Results are named by theory:
/// `brierley.warp_sett`. The theories take threads to interlace alike: where they do not, as in a crepe, the
/// average float hides the tightest thread. Ask for a double cloth layer by layer.
#[calculation(
    title = "Maximum setts, by every theory",
    example = ">>> import hankwise as hw
>>> found = hw.cloth.setts(weave=\"plain\", warp_count=\"100 tex\")
>>> found[\"ashenhurst_woollen.warp_sett\"]
<sett: 11.65 threads/cm>
>>> round(found[\"spread\"].number(\"\"), 2)
0.57",
    check = check,
    report = report::report
)]
pub fn setts<N: Number>(given: &SettsInputs<N>) -> SettsResults<N> {
    let theories: Vec<Theory<N>> = match Interlacing::parse(&given.weave) {
        Ok(weave) => theories(&weave, given).into_iter().map(|(theory, _)| theory).collect(),
        // The check refuses it.
        Err(_) => Vec::new(),
    };
    let setts = || theories.iter().filter_map(|theory| theory.warp_sett).map(Sett::v);
    let none = V::constant(f64::NAN);
    let low = setts().reduce(V::min).unwrap_or(none);
    let high = setts().reduce(V::max).unwrap_or(none);
    SettsResults {
        theories,
        lowest_warp_sett: Sett::from(low),
        highest_warp_sett: Sett::from(high),
        spread: Ratio::from(high / low - 1.0),
    }
}

fn check(
    given: &SettsInputs<f64>,
    _found: &SettsResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let weave = Interlacing::parse(&given.weave)?;
    // A factor is a part of one; beyond it a percentage was meant.
    if let Some(factor) = given.yarn_factor.map(Ratio::value).filter(|factor| *factor > 2.0) {
        let meant = constant(factor / 100.0);
        let factor = constant(factor);
        return Err(
            check.refuse("yarn_factor", format!("write {meant} for {factor} %, not {factor}"))
        );
    }
    for (theory, about) in theories(&weave, given) {
        if theory.warp_sett.is_none() {
            check.beside(theory.key, about.why_not);
        }
    }
    for warning in report::beyond(given, &weave, check) {
        check.warn(warning);
    }
    Ok(())
}

/// A sett as a share of a maximum.
pub(super) fn share<N: Number>(
    sett: Option<Sett<N>>,
    maximum: Option<Sett<N>>,
) -> Option<Ratio<N>> {
    Some(crate::cloth::share_of_maximum(sett?, maximum?))
}
