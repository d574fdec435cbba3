//! The ends of a fold: lengths of their own, shares of mass and length, cost.

use super::sums::{Asked, Enter, Place, nominal};
use super::{About, Strand, Whole, Yarn};
use crate::error::{Error, Result};
use crate::number::Number;
use crate::quantity::{Amount, CostPerMass, Kind, LinearDensity, Ratio};
use crate::yarn::{fold_cost, fold_cost_share, fold_fed};

/// Counts, lengths and prices of the ends.
type Priced = (Vec<LinearDensity<f64>>, Vec<Ratio<f64>>, Vec<CostPerMass<f64>>);

impl Yarn {
    /// Share of the mass of the yarn that one end has, counted from 0 over the ends of the fold.
    ///
    /// # Errors
    /// Where the count of a single is not known, or there is no such end.
    pub fn mass_share(&self, end: usize) -> Result<f64> {
        self.sum(Asked::MassShare, end)
    }

    /// Share of all the thread in the yarn that one end has.
    ///
    /// # Errors
    /// As [`Yarn::mass_share`].
    pub fn length_share(&self, end: usize) -> Result<f64> {
        self.sum(Asked::LengthShare, end)
    }

    /// Cost of the yarn by mass, from the price of each end.
    ///
    /// # Errors
    /// Where the prices are not as many as the ends, or the count of a single is not known.
    pub fn cost(&self, prices: &[f64]) -> Result<f64> {
        let (counts, lengths, prices) = self.priced(prices)?;
        Ok(fold_cost(&counts, &lengths, &prices).value())
    }

    /// Share of the cost that each end has.
    ///
    /// # Errors
    /// As [`Yarn::cost`].
    pub fn cost_shares(&self, prices: &[f64]) -> Result<Vec<f64>> {
        let (mut counts, mut lengths, mut prices) = self.priced(prices)?;
        Ok((0..counts.len())
            .map(|_| {
                let share = fold_cost_share(&counts, &lengths, &prices).value();
                counts.rotate_left(1);
                lengths.rotate_left(1);
                prices.rotate_left(1);
                share
            })
            .collect())
    }

    /// The yarn with its ends folded at a contraction, on the untwisted length.
    ///
    /// # Errors
    /// Where the count of a single is not known, or the yarn is not a fold.
    pub fn folded(self, contraction: f64) -> Result<Yarn> {
        Kind::Contraction.check(contraction)?;
        let ends = self.ends().count();
        if self.build.parts().is_empty() {
            return Err(self.no_fold("a contraction in folding"));
        }
        self.fed(&vec![1.0 / (1.0 - contraction); ends])
    }

    /// The yarn with each end fed at a length of its own in a unit length of the yarn: 1.6 for an
    /// end that loops, 1/(1 − k) for a straight one that contracts by k.
    ///
    /// # Errors
    /// Where the lengths are not as many as the ends, or the count of a single is not known.
    pub fn fed(mut self, lengths: &[f64]) -> Result<Yarn> {
        if self.build.parts().is_empty() {
            return Err(self.no_fold("a length for each end"));
        }
        self.one_for_each_end(lengths.len(), "lengths")?;
        for length in lengths {
            Kind::Ratio.check(*length)?;
        }
        let each: Vec<_> = lengths.iter().map(|u| Ratio::base(*u)).collect();
        let tex = fold_fed(&self.counts(&mut |amount, _, _, _, _| amount.base())?, &each).value();
        Kind::LinearDensity.check(tex)?;
        let system = self.system();
        // To eight digits, so that the designation can be read by people too.
        let number = system.from_base(tex);
        let number = format!("{number:.7e}").parse().unwrap_or(number);
        let count = Amount { number, unit: system };
        self.whole = Some(Whole { count, bulked: false });
        self.about_mut().lengths = lengths.to_vec();
        Ok(self)
    }

    /// The ends of the outermost fold, each a yarn of its own; of a single, itself.
    pub fn ends(&self) -> impl Iterator<Item = Yarn> {
        let one = |strand: &Strand| {
            let whole = if self.build.parts().is_empty() { self.whole } else { None };
            let mut yarn = Yarn { whole, ..Yarn::of(strand.clone()) };
            if self.about() != yarn.about() {
                *yarn.about_mut() = About { lengths: Vec::new(), ..self.about().clone() };
            }
            yarn
        };
        let strands: Vec<&Strand> = match &self.build {
            Strand::Single(_) => vec![&self.build],
            Strand::Fold(fold) => fold
                .parts
                .iter()
                .flat_map(|p| std::iter::repeat_n(&p.strand, p.ends as usize))
                .collect(),
        };
        strands.into_iter().map(one)
    }

    /// Length of each end in a unit length of the yarn: alike where nothing else is known.
    pub fn lengths(&self) -> Vec<f64> {
        let told = &self.about().lengths;
        if told.is_empty() { vec![1.0; self.ends().count()] } else { told.clone() }
    }

    fn priced(&self, prices: &[f64]) -> Result<Priced> {
        self.one_for_each_end(prices.len(), "prices")?;
        for price in prices {
            Kind::CostPerMass.check(*price)?;
        }
        let counts = self.counts(&mut |amount, _, _, _, _| amount.base())?;
        let lengths = self.lengths().into_iter().map(Ratio::base).collect();
        Ok((counts, lengths, prices.iter().map(|p| CostPerMass::base(*p)).collect()))
    }

    fn one_for_each_end(&self, given: usize, what: &str) -> Result<()> {
        let ends = self.ends().count();
        if given == ends {
            return Ok(());
        }
        Err(Error::notation(format!(
            "'{}' has {ends} ends in its outermost fold and {given} {what} were given; give one for each end, in the order of the designation",
            self.designation()
        )))
    }

    /// The count of each end of the outermost fold.
    pub(super) fn counts<N: Number>(&self, enter: Enter<'_, N>) -> Result<Vec<LinearDensity<N>>> {
        let mut place = Place::of(self);
        let Strand::Fold(fold) = &self.build else {
            return Ok(vec![nominal(&self.build, &mut place, enter)?]);
        };
        let mut counts = Vec::new();
        for part in &fold.parts {
            let one = nominal(&part.strand, &mut place, enter)?;
            counts.extend(std::iter::repeat_n(one, part.ends as usize));
        }
        Ok(counts)
    }
}
