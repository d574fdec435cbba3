//! Rounding a count to a number that can be agreed on, as a step of its own: the exact value stays.
//!
//! ISO 2947 replaces traditional numbers by rounded tex, not more than about 2 % away. Its scope could
//! be read but none of its tables, so what is done here is the rule of the scope, not the table: **a
//! count becomes the nearest number of the fewest digits that lies within 2 % of it.** What was rounded
//! may be rounded further if it is taken for exact: that is why the exact number stays. Where a trade has
//! agreed on numbers of its own, give the list.

use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit, print, unit};

/// How far a rounded number may be from the exact one, as a share of the exact one.
pub const ROUNDING: f64 = 0.02;

/// A count and the number that it was rounded to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rounded {
    /// The number before rounding.
    pub exact: f64,
    /// The number after it.
    pub rounded: f64,
    /// The unit of both.
    pub unit: &'static Unit,
}

impl Rounded {
    /// How far the rounded number is from the exact one, as a share of the exact one.
    pub fn difference(&self) -> f64 {
        (self.rounded - self.exact) / self.exact
    }
    /// True where that is 2 % at most.
    pub fn within(&self) -> bool {
        within(self.rounded, self.exact)
    }
    /// The rounded count.
    pub fn count(&self) -> Amount {
        Amount { number: self.rounded, unit: self.unit }
    }
}

impl std::fmt::Display for Rounded {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let sign = if self.difference() > 0.0 { "+" } else { "" };
        let share = print::of_kind(self.difference(), Kind::Fraction);
        let far = if self.within() { "" } else { ", more than 2 % away" };
        write!(
            f,
            "{} → {} ({sign}{share}{far})",
            print::with_unit(self.exact, self.unit.symbol),
            print::with_unit(self.rounded, self.unit.symbol)
        )
    }
}

/// A count in tex, rounded.
///
/// ```
/// use hankwise::prelude::*;
///
/// let rounded = yarn::round_tex(parse("16 Nm")?)?;
/// assert_eq!(rounded.to_string(), "62.5 tex → 62 tex (−0.8 %)");
/// assert_eq!((rounded.exact, rounded.within()), (62.5, true));
/// # Ok::<(), Error>(())
/// ```
pub fn round_tex(count: Amount) -> Result<Rounded> {
    round_count(count, "tex")
}

/// A count in any system, rounded there: the number itself moves by 2 % at most.
pub fn round_count(count: Amount, system: &str) -> Result<Rounded> {
    let (exact, unit) = number_in(count, system)?;
    Ok(Rounded { exact, rounded: roundest(exact), unit })
}

/// The nearest of the numbers agreed on, in the same system. [`Rounded::within`] says whether it is
/// near enough.
pub fn round_to_agreed(count: Amount, system: &str, agreed: &[f64]) -> Result<Rounded> {
    let (exact, unit) = number_in(count, system)?;
    if let Some(wrong) = agreed.iter().find(|a| !(a.is_finite() && **a > 0.0)) {
        return Err(Error::range(format!(
            "{wrong} is not a count to agree on; write numbers above 0, in {}",
            unit.symbol
        )));
    }
    let far = |a: &&f64| (**a - exact).abs();
    let nearest = agreed.iter().min_by(|a, b| far(a).total_cmp(&far(b)));
    let rounded = nearest.copied().ok_or_else(|| {
        Error::range(format!(
            "no number was agreed on; write those of the list, in {}",
            unit.symbol
        ))
    })?;
    Ok(Rounded { exact, rounded, unit })
}

fn number_in(count: Amount, system: &str) -> Result<(f64, &'static Unit)> {
    if count.unit.kind != Kind::LinearDensity {
        return Err(Error::unit(format!(
            "a {} was given for a count; write it like '16 Nm'",
            count.unit.kind.words()
        )));
    }
    let unit = unit(system, Some(Kind::LinearDensity))?;
    // In its own system a number is as it was written.
    let exact = if unit == count.unit { count.number } else { unit.from_base(count.base()) };
    if exact > 0.0 && exact.is_finite() {
        return Ok((exact, unit));
    }
    Err(Error::range(format!(
        "a count of {} cannot be rounded; it must be above 0 and finite",
        print::with_unit(count.number, count.unit.symbol)
    )))
}

fn within(rounded: f64, exact: f64) -> bool {
    (rounded - exact).abs() <= ROUNDING * exact
}

/// The nearest number of the fewest digits within 2 %; of two equally near, the even one.
fn roundest(x: f64) -> f64 {
    // What no yarn ever was stays as it is: its powers of ten would overflow.
    if !(1e-100..1e100).contains(&x) {
        return x;
    }
    let rounded = |digits: i32| {
        let power = x.log10().floor() as i32 - digits + 1;
        // Times or divided by a whole power of ten: rounded once.
        let ten = 10f64.powi(power.abs());
        if power < 0 {
            (x * ten).round_ties_even() / ten
        } else {
            (x / ten).round_ties_even() * ten
        }
    };
    // Three digits always do.
    (1..=3).map(rounded).find(|y| within(*y, x)).unwrap_or(x)
}
