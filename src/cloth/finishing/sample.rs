//! What a sample that was measured before and after says of a process.

use crate::calculation::{Check, Inputs};
use crate::cloth;
use crate::cloth::tables::DIMENSIONAL_CHANGE_SPECIMENS;
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::{Length, Mass, Typed};
use crate::source::cited;

/// Widths of specimens before and after a process.
#[derive(Clone, Debug, Inputs)]
pub struct MeasuredWidth<N> {
    /// width of each specimen before the process
    #[q("b_1", .., like = "50 cm")]
    pub width_before: Vec<Length<N>>,
    /// width of each specimen after the process
    #[q("b_2", .., like = "41 cm")]
    pub width_after: Vec<Length<N>>,
}

/// Lengths of specimens before and after a process.
#[derive(Clone, Debug, Inputs)]
pub struct MeasuredLength<N> {
    /// length of each specimen before the process
    #[q("L₀", .., like = "50 cm")]
    pub length_before: Vec<Length<N>>,
    /// length of each specimen after the process
    #[q("L_2", .., like = "43 cm")]
    pub length_after: Vec<Length<N>>,
}

/// Masses of specimens before and after a process, in one state of moisture.
#[derive(Clone, Debug, Inputs)]
pub struct MeasuredMass<N> {
    /// mass of each specimen before the process
    #[q("m₁", .., like = "120 g")]
    pub mass_before: Vec<Mass<N>>,
    /// mass of each specimen after the process, in the same state of moisture
    #[q("m₂", .., like = "118 g")]
    pub mass_after: Vec<Mass<N>>,
}

/// What was measured of specimens, and how far a reading may be off.
pub(super) struct Measured<'a, N, Q> {
    pub(super) before: &'a [Q],
    pub(super) after: &'a [Q],
    pub(super) error: Option<Q>,
    pub(super) loss: fn(Q, Q) -> V<N>,
}

/// Shrinkage of a specimen.
pub(super) fn of_size<N: Number>(before: Length<N>, after: Length<N>) -> V<N> {
    cloth::shrinkage_from_sizes(before, after).v()
}

/// Loss of mass of a specimen.
pub(super) fn of_mass<N: Number>(before: Mass<N>, after: Mass<N>) -> V<N> {
    cloth::mass_loss_from_masses(before, after).v()
}

impl<N: Number, Q: Typed<N>> Measured<'_, N, Q> {
    fn pairs(&self) -> impl Iterator<Item = (Q, Q)> {
        self.before.iter().copied().zip(self.after.iter().copied())
    }
    /// The mean of the specimens.
    pub(super) fn likely(&self) -> V<N> {
        let number = self.pairs().count();
        let sum = V::sum(self.pairs().map(|(before, after)| (self.loss)(before, after)));
        if number > 1 { sum / number as f64 } else { sum }
    }
    /// From the least that a specimen can have lost to the most, each reading off as far as it may be.
    pub(super) fn band(&self) -> [V<N>; 2] {
        let off = self.error.map_or(V::constant(0.0), Typed::v);
        let ends = self.pairs().map(|(before, after)| {
            let (before, after) = (before.v(), after.v());
            [1.0 - (after + off) / (before - off), 1.0 - (after - off) / (before + off)]
        });
        let all = ends.reduce(|[low, high], [least, most]| [low.min(least), high.max(most)]);
        all.unwrap_or([V::constant(f64::NAN); 2])
    }
}

impl<Q: Typed<f64>> Measured<'_, f64, Q> {
    /// Refuses what says nothing; doubts a small specimen.
    pub(super) fn check(
        &self,
        names: [&str; 2],
        process: &str,
        check: &mut Check<'_>,
    ) -> Result<()> {
        let [before, after] = names;
        let at = |name: &str| format!("{process}.{name}");
        if self.before.len() != self.after.len() {
            let (one, other) = (self.before.len(), self.after.len());
            return Err(Error::notation(format!(
                "{before} has {one} specimens and {after} {other}; give both for each specimen"
            ))
            .at(process));
        }
        if let Some(error) = self.error {
            let all = [(before, self.before), (after, self.after)];
            for (name, reading) in
                all.into_iter().flat_map(|(n, all)| all.iter().map(move |r| (n, r)))
            {
                // A reading that may be off by all there is says nothing.
                if reading.v().value() <= 2.0 * error.v().value() {
                    return Err(Error::range(format!(
                        "{} is measured where the reading may be off by {}; measure a larger specimen",
                        check.say(*reading),
                        check.say(error)
                    ))
                    .at(at(name)));
                }
            }
        }
        let small = self.before.iter().map(|q| q.v().value()).fold(f64::INFINITY, f64::min);
        let [marks, specimens] = ["distance between marks, at least", "specimens, when possible"]
            .map(|what| DIMENSIONAL_CHANGE_SPECIMENS.row(&[what]));
        // In metres: the table has centimetres.
        let least = marks.measure()?.to_base(marks.low);
        if Q::KIND == crate::quantity::Kind::Length && small < least {
            check.warn(format!(
                "{process}: measured over {} m; the marks of a specimen are at least {least} m \
                 apart and {} specimens are taken when possible ({})",
                crate::quantity::print::figure(small),
                specimens.low,
                cited(marks.source)
            ));
        }
        Ok(())
    }
    /// How it was measured, in words.
    pub(super) fn words(&self, check: &Check<'_>) -> String {
        let specimens = match self.before.len() {
            1 => "one specimen, which says nothing of how far the next would differ".to_owned(),
            n => format!("mean of {n} specimens"),
        };
        match self.error {
            Some(error) => format!("{specimens}; each reading to ± {}", check.say(error)),
            None => format!("{specimens}; the reading error was not given"),
        }
    }
}
