//! Every simulated lot must be one that can be: what is drawn too far is counted, what cannot be refused.

use super::Plan;
use super::chain::simulate;
use super::chance::Deviates;
use super::check::refused;
use super::given::Values;
use super::lots::{Impossible, Run};
use super::tree::forward::Carried;
use crate::error::{Error, Result};
use crate::quantity::Kind;
use crate::quantity::print::{fixed, of_kind};

/// Shares may differ from a whole by the rounding of binary values.
const ROUNDING: f64 = 1e-9;

impl Plan {
    /// The places of the values that are uncertain.
    pub(super) fn open(&self) -> Vec<usize> {
        (0..self.given.len()).filter(|i| self.given[*i].spread.is_open()).collect()
    }

    /// Whether a simulated lot can be: fibre is left after every stage, no part of the greasy wool is
    /// less than nothing, and every result is a number.
    #[inline]
    pub(super) fn can_be(
        &self,
        values: &Values<'_, f64>,
        fibre: &[f64],
        pieces: &[f64],
        spare: f64,
        greasy: f64,
    ) -> bool {
        let line = self.tree.is_line();
        fibre.iter().all(|kg| (*kg > 0.0 || !line) && kg.is_finite())
            && pieces.iter().all(|n| *n >= 0.0 && n.is_finite())
            && spare.is_finite()
            && greasy >= 0.0
            && greasy.is_finite()
            && self.tree.wools(values).all(|fat| fat >= -ROUNDING)
    }

    /// [`Plan::can_be`], of values alone.
    fn lot_can_be(&self, given: &[f64]) -> bool {
        let values = Values { given };
        let mut fibre = vec![0.0; self.tree.passes];
        let mut pieces = vec![0.0; self.tree.goods.len()];
        let (spare, greasy) =
            simulate(self, &values, &mut Carried::default(), &mut fibre, &mut pieces);
        self.can_be(&values, &fibre, &pieces, spare, greasy)
    }

    /// Refuses the plan where any simulated lot cannot be, and names the values to blame: those that
    /// alone, put back to what is planned, make the first such lot possible.
    pub(super) fn refuse_impossible(&self, run: &Run, impossible: Impossible) -> Result<()> {
        let Some(first) = impossible.first else { return Ok(()) };
        let planned = self.likely();
        let open = self.open();
        let mut z = vec![0.0; open.len()];
        Deviates::new(run.seed).fill(first as u64, &mut z);
        let mut drawn = planned.clone();
        for (place, z) in open.iter().zip(&z) {
            drawn[*place] = self.given[*place].draw().at(*z).0;
        }
        let blamed = open.iter().find(|place| {
            let mut other = drawn.clone();
            other[**place] = planned[**place];
            self.lot_can_be(&other)
        });
        let lots = |n: usize| fixed(n as f64, 0);
        let head = format!(
            "{} of {} simulated lots cannot be: {}",
            lots(impossible.lots),
            lots(run.lots),
            self.what_cannot_be(&drawn)
        );
        let Some(place) = blamed else {
            return Err(Error::plan(format!(
                "{}: {head}; write narrower ranges, or take in a larger lot",
                self.file()
            )));
        };
        let given = &self.given[*place];
        let message = format!(
            "{head} where this is {}; write a narrower range, or take in a larger lot",
            of_kind(drawn[*place], given.kind)
        );
        Err(refused(given, &message))
    }

    /// The first thing of a lot that cannot be, in words.
    fn what_cannot_be(&self, given: &[f64]) -> String {
        let values = Values { given };
        if self.tree.wools(&values).any(|fat| fat < -ROUNDING) {
            return "fibre, water and vegetable matter exceed the greasy mass".to_owned();
        }
        let mut fibre = vec![0.0; self.tree.passes];
        let mut pieces = vec![0.0; self.tree.goods.len()];
        simulate(self, &values, &mut Carried::default(), &mut fibre, &mut pieces);
        let mut passes = self.tree.all_passes().zip(&fibre);
        let wrong = passes.find(|(_, kg)| !(**kg > 0.0 && kg.is_finite()));
        if let Some((pass, kg)) = wrong {
            return format!("{} comes to {}", pass.makes(), of_kind(*kg, Kind::Mass));
        }
        let wrong =
            self.tree.goods.iter().zip(&pieces).find(|(_, n)| !(**n >= 0.0 && n.is_finite()));
        match wrong {
            Some((good, _)) => format!("the number of '{}' is not a number of pieces", good.name),
            None => "the yarn that the goods need is not a mass".to_owned(),
        }
    }

    /// What is said of the values that were held at the end of what is possible.
    pub(super) fn held(&self, run: &Run, held: &[usize]) -> Vec<String> {
        let said = |(place, lots): (usize, &usize)| {
            let given = &self.given[place];
            let (low, high) = given.kind.possible();
            let ends = [(low, -FAR, "below"), (high, FAR, "above")];
            let beyond = ends.into_iter().filter(|(end, z, _)| {
                let far = given.spread.at(*z, given.base());
                if *z < 0.0 { far < *end } else { far > *end }
            });
            let words: Vec<String> =
                beyond.map(|(end, _, way)| format!("{way} {}", of_kind(end, given.kind))).collect();
            format!(
                "{}: {} of {} simulated lots drew this {} and took that end instead; write a range \
                 that stays within",
                given.place(),
                fixed(*lots as f64, 0),
                fixed(run.lots as f64, 0),
                words.join(" or ")
            )
        };
        self.open().into_iter().zip(held).filter(|(_, lots)| **lots > 0).map(said).collect()
    }
}

/// A deviate that no lot draws: two from 53 bits stay within 8.6.
const FAR: f64 = 9.0;
