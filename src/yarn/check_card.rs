//! The check-weight card: what lengths should weigh on the balance at hand, and the bands.

use super::check::{
    CHECK_WEIGHT_IN_TODAYS_AIR, VARIATION_OF_MEAN, band_half_width, chance_for_each,
    variation_of_mean,
};
use crate::error::{Error, Result};
use crate::quantity::{
    Amount, Count, Fraction, Kind, Length, LinearDensity, Mass, Ratio, Regain, Unit, print, unit,
};
use crate::table::{Align, Block, Report};
use crate::{law, normal};

/// Ends, or readings, at most.
const MOST: u32 = 10_000;

/// What a check-weight card is made from. Begin with [`CheckWeights::new`] and change what differs.
#[derive(Clone, Debug)]
pub struct CheckWeights {
    /// The count as stated.
    pub count: Amount,
    /// Lengths to weigh, of each end.
    pub lengths: Vec<Amount>,
    /// Ends weighed together.
    pub ends: u32,
    /// Readings taken.
    pub readings: u32,
    /// Different ends among all that are weighed; none: each reading is taken from fresh ends.
    pub different_ends: Option<u32>,
    /// Variation from piece to piece along an end; where the two are not told apart, all of it.
    pub along: Fraction<f64>,
    /// Variation from end to end.
    pub between: Fraction<f64>,
    /// The readings, taken earlier, that the variation comes from; none: it is known from many.
    pub variation_from: Option<u32>,
    /// Regain at which the count is stated.
    pub stated: Regain<f64>,
    /// Regain of the yarn today.
    pub today: Regain<f64>,
    /// Oil with which the count is stated, on clean dry fibre.
    pub oil_stated: Fraction<f64>,
    /// Oil on the yarn today.
    pub oil_today: Fraction<f64>,
    /// The chance with which a right yarn is within the limits.
    pub confidence: f64,
    /// The units of the balance.
    pub balance: Vec<&'static Unit>,
}

/// A line of the card, masses in kilograms.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CheckRow {
    /// Length of each end.
    pub length: Amount,
    /// What it should weigh.
    pub weight: Mass<f64>,
    /// Half the width of the band for the mean of the readings.
    pub mean_half: Mass<f64>,
    /// Half the width of the band in which all single readings lie.
    pub single_half: Mass<f64>,
}

/// A check-weight card.
#[derive(Clone, Debug)]
pub struct CheckCard {
    /// What it was made from.
    pub asked: CheckWeights,
    /// A line for each length.
    pub rows: Vec<CheckRow>,
    /// Figures outside their usual range, each with a sentence.
    pub warnings: Vec<String>,
}

impl CheckWeights {
    /// One end, one reading, no variation, the state as stated, a chance of 95 %, grams.
    pub fn new(count: Amount, lengths: Vec<Amount>) -> Result<Self> {
        Ok(CheckWeights {
            count,
            lengths,
            ends: 1,
            readings: 1,
            different_ends: None,
            along: Fraction::base(0.0),
            between: Fraction::base(0.0),
            variation_from: None,
            stated: Regain::base(0.0),
            today: Regain::base(0.0),
            oil_stated: Fraction::base(0.0),
            oil_today: Fraction::base(0.0),
            confidence: 0.95,
            balance: vec![unit("g", Some(Kind::Mass))?],
        })
    }

    /// The card.
    pub fn card(&self) -> Result<CheckCard> {
        self.check()?;
        let (pieces, ends) = (self.pieces(), self.different());
        // A reading of several ends side by side averages over them.
        let together = f64::from(self.ends);
        let single = self.variation(together, together);
        let mean = self.variation(f64::from(ends), f64::from(pieces));
        let whole = Fraction::base(self.confidence);
        let each = chance_for_each(whole, Count::base(f64::from(self.readings))).value();
        // What few readings say of the variation is uncertain itself: Student's t for z.
        let z = |chance: f64| match self.variation_from {
            Some(n) => Ratio::base(law::t_two_sided(chance, f64::from(n - 1))),
            None => Ratio::base(normal::two_sided(chance)),
        };
        let rows = self.lengths.iter().map(|length| {
            let weight = super::check_weight_in_todays_air(
                LinearDensity::base(self.count.base()),
                Length::base(length.base()),
                Count::base(together),
                self.stated,
                self.today,
                self.oil_stated,
                self.oil_today,
            );
            CheckRow {
                length: *length,
                weight,
                mean_half: band_half_width(weight, mean, z(self.confidence)),
                single_half: band_half_width(weight, single, z(each)),
            }
        });
        Ok(CheckCard { rows: rows.collect(), asked: self.clone(), warnings: self.unusual() })
    }

    /// What the formulas' cards call unusual.
    fn unusual(&self) -> Vec<String> {
        let mut all: Vec<String> = Vec::new();
        let state = [
            self.stated.value(),
            self.today.value(),
            self.oil_stated.value(),
            self.oil_today.value(),
        ];
        for length in &self.lengths {
            let mut row = vec![self.count.base(), length.base(), f64::from(self.ends)];
            row.extend(state);
            all.extend(CHECK_WEIGHT_IN_TODAYS_AIR.unusual(&row));
        }
        if self.varies() {
            let (ends, pieces) = (f64::from(self.different()), f64::from(self.pieces()));
            let row = [self.between.value(), self.along.value(), ends, pieces];
            all.extend(VARIATION_OF_MEAN.unusual(&row));
        }
        let mut seen = std::collections::BTreeSet::new();
        all.retain(|sentence| seen.insert(sentence.clone()));
        all
    }

    /// Pieces of yarn in all readings together.
    fn pieces(&self) -> u32 {
        self.ends * self.readings
    }

    /// Different ends among them.
    fn different(&self) -> u32 {
        self.different_ends.unwrap_or(self.pieces())
    }

    fn variation(&self, ends: f64, pieces: f64) -> Fraction<f64> {
        variation_of_mean(self.between, self.along, Count::base(ends), Count::base(pieces))
    }

    /// Variation from piece to piece, over all ends.
    fn varies(&self) -> bool {
        self.between.value() > 0.0 || self.along.value() > 0.0
    }

    fn check(&self) -> Result<()> {
        let wrong = |message: String| Err(Error::range(format!("check weights: {message}")));
        of_kind(&self.count, Kind::LinearDensity)?;
        let kinds = [
            (Kind::Fraction, "variation along the ends", self.along.value()),
            (Kind::Fraction, "variation from end to end", self.between.value()),
            (Kind::Regain, "regain stated", self.stated.value()),
            (Kind::Regain, "regain today", self.today.value()),
            (Kind::Fraction, "oil stated", self.oil_stated.value()),
            (Kind::Fraction, "oil today", self.oil_today.value()),
        ];
        for (kind, what, value) in kinds {
            kind.check(value).map_err(|e| e.at(format_args!("check weights, {what}")))?;
        }
        if self.lengths.is_empty() {
            return wrong("no length to weigh; write one, such as '20 m'".to_owned());
        }
        for length in &self.lengths {
            of_kind(length, Kind::Length)?;
            if length.base() <= 0.0 {
                return wrong("a length of 0 weighs nothing; write one, such as '20 m'".to_owned());
            }
        }
        if self.ends == 0 || self.readings == 0 {
            return wrong("at least 1 end and 1 reading are weighed".to_owned());
        }
        if self.variation_from.is_some_and(|n| n < 2) {
            return wrong("a variation comes from at least 2 readings".to_owned());
        }
        // More than anybody weighs, and the product still fits.
        if self.ends > MOST || self.readings > MOST {
            return wrong(format!("too many to weigh; at most {MOST} ends and {MOST} readings"));
        }
        let (ends, pieces) = (self.different(), self.pieces());
        if ends < self.ends || ends > pieces {
            return wrong(format!(
                "{pieces} pieces of yarn, {} side by side, cannot come from {ends} different ends; \
                 write at least {} and at most {pieces}",
                self.ends, self.ends
            ));
        }
        if pieces % ends != 0 {
            return wrong(format!(
                "{pieces} pieces cannot come evenly from {ends} different ends; take as many from each"
            ));
        }
        Kind::Fraction.check(self.confidence).map_err(|e| e.at("check weights, chance"))?;
        if self.confidence <= 0.0 || self.confidence >= 1.0 {
            return wrong(format!(
                "a chance of {} is none to set limits by; write one between 0 and 100 %, such as 95 %",
                print::of_kind(self.confidence, Kind::Fraction)
            ));
        }
        if self.balance.is_empty() {
            return wrong("the balance has no unit; write one, such as 'g'".to_owned());
        }
        if let Some(unit) = self.balance.iter().find(|u| u.kind != Kind::Mass) {
            return Err(Error::unit(format!(
                "check weights: '{}' is a unit of {}, not of a balance; write one such as 'g' or 'gr'",
                unit.symbol,
                unit.kind.words()
            )));
        }
        Ok(())
    }
}

impl CheckRow {
    /// The band of the mean.
    pub fn mean(&self) -> [Mass<f64>; 2] {
        band(self.weight, self.mean_half)
    }
    /// The band of the single readings.
    pub fn single(&self) -> [Mass<f64>; 2] {
        band(self.weight, self.single_half)
    }
}

/// An amount as it was given.
fn as_given(amount: &Amount) -> String {
    print::with_unit(amount.number, amount.unit.symbol)
}

/// Refuses an amount of another kind and one that cannot be.
fn of_kind(amount: &Amount, kind: Kind) -> Result<()> {
    if amount.unit.kind != kind {
        return Err(Error::unit(format!(
            "check weights: {} is a {} and was given for a {}; write it like '{}'",
            as_given(amount),
            amount.unit.kind.words(),
            kind.words(),
            kind.example()
        )));
    }
    kind.check(amount.base()).map_err(|e| e.at(format_args!("check weights, {}", kind.words())))
}

/// Nothing weighs less than nothing.
fn band(middle: Mass<f64>, half: Mass<f64>) -> [Mass<f64>; 2] {
    let (middle, half) = (middle.value(), half.value());
    [Mass::base((middle - half).max(0.0)), Mass::base(middle + half)]
}

impl CheckCard {
    /// True where bands are given: the variation is known.
    pub fn has_bands(&self) -> bool {
        self.asked.varies()
    }

    /// The card as a table: a line for each length and each unit of the balance.
    pub fn report(&self) -> Report {
        let asked = &self.asked;
        let percent = |x: f64| print::of_kind(x, Kind::Fraction);
        let several = asked.readings > 1;
        let mut heads = vec!["length", "should weigh"];
        if self.has_bands() {
            if several {
                heads.extend(["mean from", "to"]);
            }
            heads.extend([if several { "each from" } else { "from" }, "to"]);
        }
        let columns = heads
            .iter()
            .enumerate()
            .map(|(place, head)| {
                ((*head).to_owned(), if place == 0 { Align::Left } else { Align::Right })
            })
            .collect();
        let mut rows = Vec::new();
        for row in &self.rows {
            for unit in &asked.balance {
                let mut masses = vec![row.weight];
                if self.has_bands() {
                    if several {
                        masses.extend(row.mean());
                    }
                    masses.extend(row.single());
                }
                let written = masses
                    .into_iter()
                    .map(|m| print::with_unit(unit.from_base(m.value()), unit.symbol));
                let length = as_given(&row.length);
                rows.push(std::iter::once(length).chain(written).collect());
            }
        }
        let ends = match asked.ends {
            1 => "One end of each length".to_owned(),
            n => format!("{n} ends of each length together"),
        };
        let mut lead = vec![format!("{ends}.")];
        let state = |regain: Regain<f64>, oil: Fraction<f64>| {
            let oil = if asked.oil_stated.value() + asked.oil_today.value() > 0.0 {
                format!(" and {} oil", percent(oil.value()))
            } else {
                String::new()
            };
            format!("{} regain{oil}", percent(regain.value()))
        };
        let states = [state(asked.stated, asked.oil_stated), state(asked.today, asked.oil_today)];
        if asked.stated != asked.today || asked.oil_stated != asked.oil_today {
            lead.push(format!("The count is stated at {}; weighed at {}.", states[0], states[1]));
        }
        Report {
            title: String::new(),
            blocks: vec![Block {
                title: format!("Check weights of {}", as_given(&asked.count)),
                lead,
                columns,
                rows,
                foot: self.foot(),
                ..Block::default()
            }],
        }
    }

    /// What the bands mean.
    fn foot(&self) -> Vec<String> {
        let asked = &self.asked;
        let percent = |x: f64| print::of_kind(x, Kind::Fraction);
        if !self.has_bands() {
            return vec!["No bands: how much the yarn varies was not given.".to_owned()];
        }
        let chance = percent(asked.confidence);
        let readings = match asked.readings {
            1 => format!("A yarn that is right reads within the limits {chance} of the time."),
            n => format!(
                "Of a yarn that is right, the mean of {n} readings is within its limits {chance} of \
                 the time, and all {n} single readings together within theirs {chance} of the time."
            ),
        };
        let variation = if asked.between.value() > 0.0 {
            format!(
                "Variation {} from end to end, {} along an end; {} different ends.",
                percent(asked.between.value()),
                percent(asked.along.value()),
                asked.different()
            )
        } else {
            format!("Variation {} from piece to piece.", percent(asked.along.value()))
        };
        let few = asked.variation_from.map(|n| {
            format!(
                "The variation comes from {n} readings, so the bands are those of Student's t with {} \
                 degrees of freedom; those of all single readings together are on the safe side.",
                n - 1
            )
        });
        [readings, variation].into_iter().chain(few).collect()
    }
}
