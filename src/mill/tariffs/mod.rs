//! Commission tariffs compared: for the kilogram sent in, clean, or finished.

mod tell;

use super::{charge_for_mass, charge_for_rejects, yield_of_equal_charge};
use crate::error::{Error, Result};
use crate::job::{Ask, Given, place};
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::of_kind;
use crate::quantity::{Amount, CostPerMass, Fraction, Kind, Mass, Money, Yield, parse};
use crate::worked::Worked;
use tell::{Told, ToldRow};

/// What may be said of a lot and of the tariffs for it.
static KNOWN: [Ask; 9] = [
    Ask::any("greasy", "m", "greasy mass sent in", Kind::Mass),
    Ask::any("per_greasy", "c_g", "tariff for a kilogram sent in", Kind::CostPerMass),
    Ask::any("per_clean", "c_c", "tariff for a kilogram clean", Kind::CostPerMass),
    Ask::any("per_finished", "c_f", "tariff for a kilogram finished", Kind::CostPerMass),
    Ask::any("clean_yield", "y_c", "clean for greasy", Kind::Yield),
    Ask::any("minimum", "k_0", "least charge for a lot", Kind::Money),
    Ask::any("rejects", "r", "share rejected in sorting", Kind::Fraction),
    Ask::any("free_rejects", "r_0", "share of rejects that is put away free", Kind::Fraction),
    Ask::any("per_reject", "c_r", "charge for a kilogram of rejects beyond it", Kind::CostPerMass),
];

/// A commission mill's tariffs, for one lot.
///
/// ```
/// use hankwise::mill::Tariffs;
/// use hankwise::quantity::parse;
///
/// let mut tariffs = Tariffs::new();
/// for (name, figure) in [("greasy", "80 kg"), ("per_greasy", "11 /kg"), ("per_finished", "20 /kg")] {
///     tariffs.set(name, parse(figure)?, None)?;
/// }
/// tariffs.set_yields(vec![(parse("45 %")?, None), (parse("60 %")?, None)])?;
/// let compared = tariffs.compare()?;
/// assert_eq!(compared.find("equal_yield")?.value, 0.55);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug)]
pub struct Tariffs {
    given: Given,
    yields: Vec<(Amount, Option<String>)>,
}

impl Default for Tariffs {
    fn default() -> Self {
        Tariffs::new()
    }
}

/// What the yields of a range are called.
fn ends(n: usize) -> &'static [&'static str] {
    match n {
        1 => &["likely"],
        2 => &["low", "high"],
        _ => &["low", "likely", "high"],
    }
}

impl Tariffs {
    /// Tariffs of which nothing is known.
    pub fn new() -> Tariffs {
        Tariffs { given: Given::new("a comparison of tariffs", &KNOWN), yields: Vec::new() }
    }
    /// What may be said of them.
    pub fn said(name: &str) -> Result<&'static Ask> {
        Ok(&KNOWN[place(&KNOWN, "a comparison of tariffs", name)?])
    }
    /// Says something of them.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        self.given.set(name, amount, typed)
    }
    /// Finished for greasy: one yield, low and high, or low, likely and high.
    pub fn set_yields(&mut self, yields: Vec<(Amount, Option<String>)>) -> Result<()> {
        let rising = yields.is_sorted_by(|a, b| a.0.base() < b.0.base());
        if yields.is_empty() || yields.len() > 3 || !rising {
            return Err(Error::range(
                "yields: one yield is wanted, or low and high, or low, likely and high, rising, such \
                 as ['48 %', '55 %', '60 %']",
            ));
        }
        for (amount, _) in &yields {
            Kind::Yield.check(amount.base()).map_err(|e| e.at("yields"))?;
            if amount.base() <= 0.0 {
                return Err(Error::range("yields: a lot of which nothing comes out has no tariff"));
            }
        }
        self.yields = yields;
        Ok(())
    }

    fn check(&self) -> Result<()> {
        let given = &self.given;
        let tariffs = ["per_greasy", "per_clean", "per_finished"];
        if tariffs.iter().filter(|t| given.has(t)).count() < 2 {
            return Err(Error::notation(
                "two tariffs are wanted to compare them: of per_greasy, per_clean and per_finished",
            ));
        }
        if given.has("per_clean") && !given.has("clean_yield") {
            return Err(given.missing("clean_yield"));
        }
        if self.yields.is_empty() {
            return Err(Error::notation(
                "yields are missing: finished for greasy; write them like yields=['48 %', '60 %']",
            ));
        }
        if given.has("rejects") != given.has("per_reject") {
            let missing = if given.has("rejects") { "per_reject" } else { "rejects" };
            return Err(given.missing(missing));
        }
        Ok(())
    }

    /// Compares them, at each yield and over the range.
    pub fn compare(&self) -> Result<Particulars> {
        self.check()?;
        Particulars::work(|desk| {
            let given = &self.given;
            let greasy: Mass<_> = given.need(desk, "greasy")?;
            if greasy.value() <= 0.0 {
                return Err(Error::range("greasy: a lot has a mass; give more than 0 kg"));
            }
            let least: Money<_> = given.get(desk, "minimum").unwrap_or(V::constant(0.0).into());
            let finished: Option<CostPerMass<_>> = given.get(desk, "per_finished");
            let by_greasy: Option<Money<_>> = given.get(desk, "per_greasy").map(|tariff| {
                let charge = charge_for_mass(greasy, tariff, least);
                desk.figure("by_greasy", "charge by the kilogram sent in", charge)
            });
            let by_clean: Option<Money<_>> = given.get(desk, "per_clean").map(|tariff| {
                let share: Yield<_> =
                    given.get(desk, "clean_yield").unwrap_or(V::constant(1.0).into());
                let clean = Mass::from(greasy.v() * share.v());
                let clean = desk.figure("clean", "clean mass", clean);
                let charge = charge_for_mass(clean, tariff, least);
                desk.figure("by_clean", "charge by the kilogram clean", charge)
            });
            let yields: Vec<f64> = self.yields.iter().map(|(y, _)| y.base()).collect();
            if let Some(most) = yields.last().filter(|y| **y > 1.0) {
                desk.warn(format!(
                    "yields: {} finished for greasy is unusual; no more comes out than went in, but for \
                     water and oil",
                    of_kind(*most, Kind::Yield)
                ));
            }
            if let Some(tariff) = finished {
                for (end, (amount, typed)) in ends(yields.len()).iter().zip(&self.yields) {
                    let words = "finished for greasy";
                    let key = format!("yield_{end}");
                    let share: Yield<_> = desk.given(&key, "y", words, amount, typed.clone());
                    let mass = Mass::from(greasy.v() * share.v());
                    let mass = desk.figure(&format!("finished_{end}"), "finished mass", mass);
                    let words = "charge by the kilogram finished";
                    let charge = charge_for_mass(mass, tariff, least);
                    desk.figure(&format!("by_finished_{end}"), words, charge);
                }
            }
            let equal = |name: &str, charge: Option<Money<Worked<'_>>>| {
                let (charge, tariff) = (charge?, finished?);
                // With a least charge in it the tariff that the lot has really paid.
                let paid = CostPerMass::from(charge.v() / greasy.v());
                let words = "yield at which the charge by the finished kilogram is the same";
                let share = yield_of_equal_charge(paid, tariff);
                Some(desk.figure(name, words, share).value())
            };
            let equals = [equal("equal_yield", by_greasy), equal("equal_yield_to_clean", by_clean)];
            let rejects = self.rejects(desk, greasy)?;
            let base = |m: Option<Money<Worked<'_>>>| m.map(Money::value);
            let at = |share: f64| ToldRow {
                share,
                finished: greasy.value() * share,
                greasy: base(by_greasy),
                clean: base(by_clean),
                by_finished: finished
                    .map(|c| (c.value() * greasy.value() * share).max(least.value())),
            };
            let told = Told {
                rows: grid(&yields, &equals).into_iter().map(at).collect(),
                equals,
                rejects,
                least: least.value(),
                yields,
            };
            Ok(told.report())
        })
    }

    /// What is charged for rejects beyond the share that is free, whichever the tariff.
    fn rejects<'t>(&self, desk: &Desk<'t>, greasy: Mass<Worked<'t>>) -> Result<Option<f64>> {
        let given = &self.given;
        if !given.has("rejects") {
            return Ok(None);
        }
        let rejects: Fraction<_> = given.need(desk, "rejects")?;
        let tariff: CostPerMass<_> = given.need(desk, "per_reject")?;
        let free = match given.get(desk, "free_rejects") {
            Some(free) => free,
            // One mill's rule, as the formula says; a house with another gives its own.
            None => desk.given(
                "free_rejects",
                "r_0",
                "share of rejects that is put away free, by one mill's rule",
                &parse("15 %")?,
                None,
            ),
        };
        let charge = charge_for_rejects(greasy, rejects, free, tariff);
        let words = "charge for rejects, whichever the tariff";
        Ok(Some(desk.figure("rejects_charge", words, charge).value()))
    }
}

/// The yields to show: those given, some between, and where two tariffs are equal.
fn grid(yields: &[f64], equals: &[Option<f64>]) -> Vec<f64> {
    const STEPS: u32 = 4;
    let (low, high) = (yields[0], yields[yields.len() - 1]);
    let between = (0..=STEPS).map(|k| low + (high - low) * f64::from(k) / f64::from(STEPS));
    let crossing = equals.iter().flatten().copied().filter(|y| *y >= low && *y <= high);
    let mut all: Vec<f64> = between.chain(yields.iter().copied()).chain(crossing).collect();
    all.sort_by(f64::total_cmp);
    all.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    all
}
