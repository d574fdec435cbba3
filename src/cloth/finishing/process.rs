//! A process of finishing: what it does to width, length and mass.

use super::names::{bare, known, words};
use super::sample::{Measured, MeasuredLength, MeasuredMass, MeasuredWidth, of_mass, of_size};
use super::state::Step;
use crate::calculation::{Check, Inputs, Results, calculation, refuse};
use crate::cloth;
use crate::cloth::tables::FINISHING_PROCESSES;
use crate::error::{Result, did_you_mean};
use crate::number::{Number, V};
use crate::quantity::print::of_kind;
use crate::quantity::{
    AreaShrinkage, DimensionalChange, Fraction, Kind, Length, Mass, MassLoss, OverWidth, Ratio,
    Shrinkage,
};
use crate::source::cited;

/// What a process does to the width.
#[derive(Clone, Debug, Inputs)]
pub enum WidthLoss<N> {
    /// shrinkage in width, on the width before; negative: a stretch
    #[q("s_w", .., zero)]
    WidthShrinkage(Shrinkage<N>),
    /// how much wider before than after, on the width after
    #[q("x", .., zero)]
    OverWidth(OverWidth<N>),
    /// change of width of ISO 5077, on the width before: negative where it shrinks
    #[q("D_w", .., zero)]
    WidthChange(DimensionalChange<N>),
    /// As a sample showed it.
    #[group]
    Measured(MeasuredWidth<N>),
}

/// What a process does to the length.
#[derive(Clone, Debug, Inputs)]
pub enum LengthLoss<N> {
    /// shrinkage in length, on the length before; negative: a stretch
    #[q("s_l", .., zero)]
    LengthShrinkage(Shrinkage<N>),
    /// how much longer before than after, on the length after
    #[q("x_l", .., zero)]
    OverLength(OverWidth<N>),
    /// change of length of ISO 5077, on the length before: negative where it shrinks
    #[q("D_l", .., zero)]
    LengthChange(DimensionalChange<N>),
    /// As a sample showed it.
    #[group]
    Measured(MeasuredLength<N>),
}

/// What a process does to the mass.
#[derive(Clone, Debug, Inputs)]
pub enum MassChange<N> {
    /// mass lost, on the mass before; negative: a gain
    #[q("m_l", .., zero)]
    MassLoss(MassLoss<N>),
    /// mass gained, on the mass before: flock, size, a finish
    #[q("m_g", .., zero)]
    MassGain(Fraction<N>),
    /// As a sample showed it.
    #[group]
    Measured(MeasuredMass<N>),
}

/// A process of finishing: scouring, milling, raising, cropping, tentering, pressing, or one of the
/// mill's own. What nothing is said of stays as it was.
#[derive(Clone, Debug, Inputs)]
pub struct Process<N> {
    /// name of the process, such as mill
    #[label]
    pub name: String,
    /// Of the width.
    #[one_of("the shrinkage in width")]
    pub width: Option<WidthLoss<N>>,
    /// Of the length.
    #[one_of("the shrinkage in length")]
    pub length: Option<LengthLoss<N>>,
    /// area lost, on the area before: with one side it gives the other, alone both shrink alike
    #[q("s_A", .., zero)]
    pub area_shrinkage: Option<AreaShrinkage<N>>,
    /// Of the mass.
    #[one_of("the loss of mass")]
    pub mass: Option<MassChange<N>>,
    /// shrinkage of the warp yarn itself; where it is omitted the yarn shortens with the cloth
    #[q("s_1", .., zero)]
    pub warp_yarn_shrinkage: Option<Shrinkage<N>>,
    /// shrinkage of the weft yarn itself; where it is omitted the yarn shortens with the cloth
    #[q("s_2", .., zero)]
    pub weft_yarn_shrinkage: Option<Shrinkage<N>>,
    /// how far the rule may be misread, either way, at each end of a comparison
    #[q("r", .., zero, like = "2 mm")]
    pub reading_error: Option<Length<N>>,
    /// how far the balance may be misread, either way
    #[q("r_m", .., zero, like = "0.5 g")]
    pub balance_error: Option<Mass<N>>,
}

impl<N: Number> Process<N> {
    pub(super) fn measured_width(&self) -> Option<Measured<'_, N, Length<N>>> {
        let Some(WidthLoss::Measured(MeasuredWidth { width_before, width_after })) = &self.width
        else {
            return None;
        };
        let (before, after, error) = (width_before, width_after, self.reading_error);
        Some(Measured { before, after, error, loss: of_size })
    }
    pub(super) fn measured_length(&self) -> Option<Measured<'_, N, Length<N>>> {
        let Some(LengthLoss::Measured(MeasuredLength { length_before, length_after })) =
            &self.length
        else {
            return None;
        };
        let (before, after, error) = (length_before, length_after, self.reading_error);
        Some(Measured { before, after, error, loss: of_size })
    }
    pub(super) fn measured_mass(&self) -> Option<Measured<'_, N, Mass<N>>> {
        let Some(MassChange::Measured(MeasuredMass { mass_before, mass_after })) = &self.mass
        else {
            return None;
        };
        let (before, after, error) = (mass_before, mass_after, self.balance_error);
        Some(Measured { before, after, error, loss: of_mass })
    }
    fn width(&self) -> Option<V<N>> {
        Some(match self.width.as_ref()? {
            WidthLoss::WidthShrinkage(shrinkage) => shrinkage.v(),
            WidthLoss::OverWidth(over) => cloth::shrinkage_of_over_width(*over).v(),
            WidthLoss::WidthChange(change) => cloth::shrinkage_from_dimensional_change(*change).v(),
            WidthLoss::Measured(_) => self.measured_width()?.likely(),
        })
    }
    fn length(&self) -> Option<V<N>> {
        Some(match self.length.as_ref()? {
            LengthLoss::LengthShrinkage(shrinkage) => shrinkage.v(),
            LengthLoss::OverLength(over) => cloth::shrinkage_of_over_width(*over).v(),
            LengthLoss::LengthChange(change) => {
                cloth::shrinkage_from_dimensional_change(*change).v()
            }
            LengthLoss::Measured(_) => self.measured_length()?.likely(),
        })
    }
    fn mass(&self) -> Option<V<N>> {
        Some(match self.mass.as_ref()? {
            MassChange::MassLoss(loss) => loss.v(),
            MassChange::MassGain(gain) => 0.0 - gain.v(),
            MassChange::Measured(_) => self.measured_mass()?.likely(),
        })
    }
    /// Both sides, of which the area lost gives what is not known of them.
    fn sides(&self, width: Option<V<N>>, length: Option<V<N>>) -> [Option<Shrinkage<N>>; 2] {
        let known = [width, length].map(|side| side.map(Shrinkage::from));
        let Some(area) = self.area_shrinkage else { return known };
        match known {
            [Some(width), None] => {
                [Some(width), Some(cloth::length_shrinkage_from_area(area, width))]
            }
            [None, Some(length)] => {
                [Some(cloth::width_shrinkage_from_area(area, length)), Some(length)]
            }
            [None, None] => [Some(cloth::shrinkage_of_side(area)); 2],
            both => both,
        }
    }
    /// The step that a cloth takes in it.
    pub(super) fn step(&self) -> Step<N> {
        let [width, length] = self.sides(self.width(), self.length());
        Step {
            width,
            length,
            loss: self.mass().map(MassLoss::from),
            warp_yarn: self.warp_yarn_shrinkage,
            weft_yarn: self.weft_yarn_shrinkage,
        }
    }
    /// The step at one end of what samples leave possible: either with the most shrinkage and the least
    /// loss of mass, or the reverse.
    pub(super) fn step_at(&self, is_closer: bool) -> Step<N> {
        let end = |[low, high]: [V<N>; 2], is_high: bool| if is_high { high } else { low };
        let step = self.step();
        let width = self.measured_width().map(|measured| end(measured.band(), is_closer));
        let length = self.measured_length().map(|measured| end(measured.band(), is_closer));
        let [width, length] =
            self.sides(width.or_else(|| self.width()), length.or_else(|| self.length()));
        let loss = self.measured_mass().map(|measured| end(measured.band(), !is_closer));
        Step { width, length, loss: loss.map(MassLoss::from).or(step.loss), ..step }
    }
    /// True where any of it comes from a sample.
    pub(super) fn is_measured(&self) -> bool {
        self.measured_width().is_some()
            || self.measured_length().is_some()
            || self.measured_mass().is_some()
    }
}

/// What a process does to the width, in every form in which it is said.
#[derive(Clone, Debug, Results)]
pub struct WidthOfProcess<N> {
    /// shrinkage in width, on the width before
    pub width_shrinkage: Shrinkage<N>,
    /// wider before, on the width after
    pub over_width: OverWidth<N>,
    /// change of width of ISO 5077
    pub width_change: DimensionalChange<N>,
}

/// What a process does to the length, in every form in which it is said.
#[derive(Clone, Debug, Results)]
pub struct LengthOfProcess<N> {
    /// shrinkage in length, on the length before
    pub length_shrinkage: Shrinkage<N>,
    /// longer before, on the length after
    pub over_length: OverWidth<N>,
    /// change of length of ISO 5077
    pub length_change: DimensionalChange<N>,
}

/// What a sample leaves possible of the width.
#[derive(Clone, Debug, Results)]
pub struct WidthBand<N> {
    /// least shrinkage in width that the sample leaves possible
    pub lowest_width_shrinkage: Shrinkage<N>,
    /// most shrinkage in width that the sample leaves possible
    pub highest_width_shrinkage: Shrinkage<N>,
}

/// What a sample leaves possible of the length.
#[derive(Clone, Debug, Results)]
pub struct LengthBand<N> {
    /// least shrinkage in length that the sample leaves possible
    pub lowest_length_shrinkage: Shrinkage<N>,
    /// most shrinkage in length that the sample leaves possible
    pub highest_length_shrinkage: Shrinkage<N>,
}

/// What a sample leaves possible of the mass.
#[derive(Clone, Debug, Results)]
pub struct MassBand<N> {
    /// least loss of mass that the sample leaves possible
    pub lowest_mass_loss: MassLoss<N>,
    /// greatest loss of mass that the sample leaves possible
    pub highest_mass_loss: MassLoss<N>,
}

/// What [`process()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ProcessResults<N> {
    /// Of the width.
    #[block = "What it does to the cloth"]
    #[part]
    pub width: Option<WidthOfProcess<N>>,
    /// Of the length.
    #[part]
    pub length: Option<LengthOfProcess<N>>,
    /// mass lost, on the mass before
    pub mass_loss: Option<MassLoss<N>>,
    /// shrinkage of the warp yarn itself
    pub warp_yarn_shrinkage: Option<Shrinkage<N>>,
    /// shrinkage of the weft yarn itself
    pub weft_yarn_shrinkage: Option<Shrinkage<N>>,
    /// area lost, on the area before
    pub area_shrinkage: Option<AreaShrinkage<N>>,
    /// mass per area after over before
    pub mass_per_area_factor: Option<Ratio<N>>,
    /// Of the width.
    #[block = "What the samples leave possible"]
    #[part]
    pub width_band: Option<WidthBand<N>>,
    /// Of the length.
    #[part]
    pub length_band: Option<LengthBand<N>>,
    /// Of the mass.
    #[part]
    pub mass_band: Option<MassBand<N>>,
}

const WHAT: &str = "What it does to the cloth";
const POSSIBLE: &str = "What the samples leave possible";

/// A process of finishing and what it does, each number on the size or mass that the process finds.
///
/// `width_shrinkage` and `length_shrinkage` are negative where the cloth grows, as on the tenter; instead of
/// them `over_width` and `over_length` are on the size after, `width_change` and `length_change` have the sign
/// of ISO 5077. A sample is given by what its specimens measured, such as `width_before` and `width_after`;
/// `area_shrinkage` with one side gives
/// the other; alone, both are taken to shrink alike. `reading_error` is how far the rule may be misread, and then tells what the sample leaves possible. Any
/// name will do; relax, scour, mill, wash, raise, crop, tenter, dry, steam and press have usual ranges.
#[calculation(
    title = "A process of finishing",
    example = ">>> import hankwise as hw
>>> mill = hw.cloth.process(name=\"mill\", width_shrinkage=\"18 %\", length_shrinkage=\"12 %\", mass_loss=\"2 %\")
>>> mill[\"over_width\"], mill[\"mass_per_area_factor\"]
(<over-width on the finished size: 21.95 %>, <ratio: 1.358>)
>>> felt = hw.cloth.process(name=\"felt\", width_before=[\"62 in\"], width_after=[\"57 in\"],
...                         reading_error=\"0.5 in\")
>>> felt[\"width_shrinkage\"], felt[\"highest_width_shrinkage\"]
(<shrinkage on the size before: 8.065 %>, <shrinkage on the size before: 9.6 %>)",
    check = check
)]
pub fn process<N: Number>(given: &Process<N>) -> ProcessResults<N> {
    let Step { width, length, loss, warp_yarn, weft_yarn } = given.step();
    let left = [width, length].into_iter().flatten().map(|s| 1.0 - s.v());
    let left = left.reduce(|a, b| a * b);
    let one = || V::constant(1.0);
    let is_known = left.is_some() || loss.is_some();
    let kept = loss.map(|loss| 1.0 - loss.v());
    ProcessResults {
        width: width.map(|width_shrinkage| WidthOfProcess {
            width_shrinkage,
            over_width: cloth::over_width_for_shrinkage(width_shrinkage),
            width_change: cloth::dimensional_change_from_shrinkage(width_shrinkage),
        }),
        length: length.map(|length_shrinkage| LengthOfProcess {
            length_shrinkage,
            over_length: cloth::over_width_for_shrinkage(length_shrinkage),
            length_change: cloth::dimensional_change_from_shrinkage(length_shrinkage),
        }),
        mass_loss: loss,
        warp_yarn_shrinkage: warp_yarn,
        weft_yarn_shrinkage: weft_yarn,
        area_shrinkage: width.zip(length).map(|(w, l)| cloth::area_shrinkage(w, l)),
        mass_per_area_factor: is_known
            .then(|| Ratio::from(kept.unwrap_or_else(one) / left.unwrap_or_else(one))),
        width_band: given.measured_width().map(|measured| {
            let [low, high] = measured.band().map(Shrinkage::from);
            WidthBand { lowest_width_shrinkage: low, highest_width_shrinkage: high }
        }),
        length_band: given.measured_length().map(|measured| {
            let [low, high] = measured.band().map(Shrinkage::from);
            LengthBand { lowest_length_shrinkage: low, highest_length_shrinkage: high }
        }),
        mass_band: given.measured_mass().map(|measured| {
            let [low, high] = measured.band().map(MassLoss::from);
            MassBand { lowest_mass_loss: low, highest_mass_loss: high }
        }),
    }
}

impl Process<f64> {
    /// Refuses what says nothing; warns of what is unusual of the process and doubtful about its sample.
    pub(super) fn check(&self, check: &mut Check<'_>) -> Result<()> {
        if self.measured_width().is_none() && self.measured_length().is_none() {
            check.idle(&["reading_error"], "measured widths or lengths");
        }
        if self.measured_mass().is_none() {
            check.idle(&["balance_error"], "measured masses");
        }
        if self.area_shrinkage.is_some() && self.width.is_some() && self.length.is_some() {
            refuse!(
                check,
                self.area_shrinkage,
                "the width and the length settle the area; omit area_shrinkage or one of them"
            );
        }
        let name = self.name.trim();
        if !name.chars().any(char::is_alphanumeric) {
            return Err(crate::error::Error::notation(format!(
                "name: '{name}' is not the name of a process; write one like 'mill', or your own word \
                 for it"
            )));
        }
        let known = known(name);
        if known.is_none()
            && let Some(near) = did_you_mean(&bare(name), words())
        {
            check.warn(format!(
                "'{name}' is taken as a process of your own, without a usual range; did you mean \
                 '{near}'?"
            ));
        }
        if let Some(measured) = self.measured_width() {
            measured.check(["width_before", "width_after"], name, check)?;
        }
        if let Some(measured) = self.measured_length() {
            measured.check(["length_before", "length_after"], name, check)?;
        }
        if let Some(measured) = self.measured_mass() {
            measured.check(["mass_before", "mass_after"], name, check)?;
        }
        let Some(known) = known else { return Ok(()) };
        let Step { width, length, loss, warp_yarn, weft_yarn } = self.step();
        let size = |s: Option<Shrinkage<f64>>| s.map(Shrinkage::value);
        let all = [
            ("width", "shrinkage in width", size(width), Kind::Shrinkage),
            ("length", "shrinkage in length", size(length), Kind::Shrinkage),
            ("loss", "loss of mass", loss.map(MassLoss::value), Kind::MassLoss),
            ("warp_yarn", "shrinkage of the warp yarn", size(warp_yarn), Kind::Shrinkage),
            ("weft_yarn", "shrinkage of the weft yarn", size(weft_yarn), Kind::Shrinkage),
        ];
        for (of, words, value, kind) in all {
            let Some(value) = value else { continue };
            let usual = FINISHING_PROCESSES.figures.iter().find(|f| *f.of == [known, of]);
            if let Some(usual) = usual.filter(|usual| !usual.holds(value)) {
                let note =
                    if usual.note.is_empty() { String::new() } else { format!("; {}", usual.note) };
                check.warn(format!(
                    "{name}: a {words} of {} is outside the usual {} % ({}{note})",
                    of_kind(value, kind),
                    usual.words(),
                    cited(usual.source)
                ));
            }
        }
        Ok(())
    }
}

fn check(given: &Process<f64>, found: &ProcessResults<f64>, check: &mut Check<'_>) -> Result<()> {
    given.check(check)?;
    if given.area_shrinkage.is_some() && given.width.is_none() && given.length.is_none() {
        check.note(
            WHAT,
            "Width and length are taken to shrink alike, which cloth seldom does: measure one of them.",
        );
    }
    if found.mass_per_area_factor.is_none() {
        check.note(WHAT, "nothing was said of it: it changes nothing");
    }
    let all = [
        ("width", given.measured_width().map(|measured| measured.words(check))),
        ("length", given.measured_length().map(|measured| measured.words(check))),
        ("mass", given.measured_mass().map(|measured| measured.words(check))),
    ];
    for (of, words) in all {
        if let Some(words) = words {
            check.note(POSSIBLE, format!("{of}: {words}"));
        }
    }
    Ok(())
}
