//! Units: what each is called, what it is worth, who says so.

use std::sync::LazyLock;

use super::define::own_units;
use super::factors::FACTORS;
use super::kind::Kind;
use crate::number::Number;
use crate::source::{Basis, basis, cited};
use crate::tsv::{field, rows};

/// How a number in a unit becomes a number in the base unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Form {
    /// base = number × factor
    Times(f64),
    /// base = number ÷ divisor; exact where the factor would not be
    Per(f64),
    /// base = (number − zero) ÷ degrees: a scale with a zero of its own, of smaller degrees
    From {
        /// What the scale reads at the zero of the base unit.
        zero: f64,
        /// Its degrees in one of the base unit.
        degrees: f64,
    },
    /// base = constant ÷ number: the indirect counts, where a larger number is a finer yarn
    Over(f64),
}

/// A unit of measurement.
#[derive(Clone, Debug, PartialEq)]
pub struct Unit {
    /// How it is printed.
    pub symbol: &'static str,
    /// Other ways to write it.
    pub names: &'static [&'static str],
    /// What it measures.
    pub kind: Kind,
    /// What it is worth.
    pub form: Form,
    /// Its definition in words.
    pub definition: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
    /// What the definition rests on where that is not what the source is, such as the user's own word.
    pub rests_on: Option<Basis>,
}

impl Unit {
    /// What the definition rests on.
    pub fn basis(&self) -> Basis {
        self.rests_on.unwrap_or_else(|| basis(self.source))
    }
    /// What the definition rests on, with the source where there is one: `book or paper, Davis 1920`.
    pub fn cited(&self) -> String {
        match self.rests_on {
            Some(basis) => format!("{}, {}", basis.words(), self.source),
            None => cited(self.source),
        }
    }
    /// A number in this unit, in the base unit.
    #[inline]
    pub fn to_base<N: Number>(&self, number: N) -> N {
        match self.form {
            Form::Times(1.0) => number,
            Form::Times(factor) => number * factor,
            Form::Per(divisor) => number / divisor,
            Form::From { zero, degrees } => (number - zero) / degrees,
            Form::Over(constant) => N::constant(constant) / number,
        }
    }
    /// A number in the base unit, in this unit.
    #[inline]
    pub fn from_base<N: Number>(&self, base: N) -> N {
        match self.form {
            Form::Times(1.0) => base,
            Form::Times(factor) => base / factor,
            Form::Per(divisor) => base * divisor,
            Form::From { zero, degrees } => base * degrees + zero,
            Form::Over(constant) => N::constant(constant) / base,
        }
    }
    /// True for an indirect count.
    pub const fn is_indirect(&self) -> bool {
        matches!(self.form, Form::Over(_))
    }
}

/// numerator/denominator, rounded once.
pub const fn exact(numerator: u128, denominator: u128) -> f64 {
    let (mut a, mut b) = (numerator, denominator);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    (numerator / a) as f64 / (denominator / a) as f64
}

/// Short form for the tables: a unit fixed by definition.
pub(super) const fn plain(
    symbol: &'static str,
    names: &'static [&'static str],
    kind: Kind,
    form: Form,
    definition: &'static str,
) -> Unit {
    Unit { symbol, names, kind, form, definition, source: "definition", rests_on: None }
}

/// The units of `units.tsv`. Those of diameter have the names of lengths, so they are found only where a
/// diameter is asked for.
struct General {
    units: Vec<Unit>,
    diameters: Vec<Unit>,
}

static GENERAL: LazyLock<General> = LazyLock::new(|| {
    let all = rows(include_str!("units.tsv")).skip(1).filter_map(|row| of_row(&row));
    let (diameters, units) = all.partition(|unit| unit.kind == Kind::Diameter);
    General { units, diameters }
});

/// A unit from its row: symbol, names, kind, worth, definition, source.
fn of_row(row: &[&'static str]) -> Option<Unit> {
    let [symbol, names, kind, worth, definition] = *row.first_chunk()?;
    let names = names.split(", ").filter(|name| !name.is_empty()).collect::<Vec<_>>().leak();
    let form = match worth.split_once(' ') {
        Some(("per", divisor)) => Form::Per(product(divisor)?),
        Some(("over", constant)) => Form::Over(product(constant)?),
        Some(("scale", scale)) => {
            let (zero, degrees) = scale.split_once(' ')?;
            Form::From { zero: product(zero)?, degrees: product(degrees)? }
        }
        _ => Form::Times(product(worth)?),
    };
    let source = Some(field(row, 5)).filter(|key| !key.is_empty()).unwrap_or("definition");
    let kind = Kind::named(kind)?;
    Some(Unit { source, ..plain(symbol, names, kind, form, definition) })
}

/// An exact product of decimals, such as `4/2.54`, rounded once.
fn product(text: &str) -> Option<f64> {
    let (mut above, mut below) = (1_u128, 1_u128);
    let mut rest = text;
    let mut divides = false;
    loop {
        let end = rest.find(['*', '/']).unwrap_or(rest.len());
        let (whole, part) = rest[..end].split_once('.').unwrap_or((&rest[..end], ""));
        let digits: u128 = format!("{whole}{part}").parse().ok()?;
        let scale = 10_u128.checked_pow(u32::try_from(part.len()).ok()?)?;
        let (by, over) = if divides { (scale, digits) } else { (digits, scale) };
        (above, below) = (above.checked_mul(by)?, below.checked_mul(over)?);
        if end == rest.len() {
            return Some(exact(above, below));
        }
        divides = rest[end..].starts_with('/');
        rest = &rest[end + 1..];
    }
}

/// Every unit, those that users define last.
pub fn units() -> impl Iterator<Item = &'static Unit> {
    let own = own_units();
    without_factors().chain(FACTORS.iter()).chain(diameters()).chain(own)
}

pub(super) fn without_factors() -> impl Iterator<Item = &'static Unit> {
    let counts = super::counts::SYSTEMS.iter().map(|system| &system.unit);
    let reeds = super::reeds::SYSTEMS.iter();
    GENERAL.units.iter().chain(counts).chain(reeds)
}

/// Units of diameter.
pub(super) fn diameters() -> impl Iterator<Item = &'static Unit> {
    GENERAL.diameters.iter()
}
