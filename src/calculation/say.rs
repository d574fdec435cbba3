//! Values in the units that go with those that were given.

use super::check::Context;
use super::given::Entry;
use crate::error::Error;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Kind, Unit, unit};

/// Units by which an inch mill is known; masses and lengths for which no unit was given are then said in
/// pounds and yards.
const INCH: [&str; 15] = [
    "in",
    "ft",
    "yd",
    "lb",
    "oz",
    "yd/min",
    "ft/min",
    "lb/h",
    "tpi",
    "threads/in",
    "Ne",
    "YSW",
    "worsted",
    "lea",
    "yd/lb",
];

/// The quantities that were given, by whose units results are said.
#[derive(Clone, Debug, Default)]
pub struct Say {
    given: Vec<Amount>,
}

impl Say {
    pub(super) fn of(entries: &[Entry]) -> Say {
        Say { given: entries.iter().map(|entry| entry.amount).collect() }
    }
    /// A value, in the base unit, in words.
    pub fn base(&self, base: f64, kind: Kind) -> String {
        if kind.family() == Kind::Fraction && base > 0.0 && base < 1e-6 {
            return "under 0.0001 %".to_owned();
        }
        match self.unit(base, kind) {
            Some(unit) => with_unit(unit.from_base(base), unit.symbol),
            None => of_kind(base, kind),
        }
    }
    /// The user's own unit for a value of a kind, or one that goes with the others; none where the unit
    /// of the kind serves.
    fn unit(&self, base: f64, kind: Kind) -> Option<&'static Unit> {
        let units = || self.given.iter().map(|amount| amount.unit);
        let is_inch = |unit: &Unit| INCH.contains(&unit.symbol);
        let own = |kind: Kind| units().find(|unit| unit.kind.family() == kind);
        // A mill may weigh in kilograms and measure in yards.
        let inch = |kind: Kind| own(kind).map_or_else(|| units().any(is_inch), is_inch);
        let symbol = match kind {
            // Each reed by the number that is stamped on it.
            Kind::ReedCount => {
                return self.given(base, kind).map(|amount| amount.unit).or_else(|| own(kind));
            }
            // A temperature as the thermometer shows it.
            Kind::LinearDensity | Kind::Temperature => return own(kind),
            Kind::Twist | Kind::Sett | Kind::Speed if own(kind).is_some() => return own(kind),
            // Yarns are as thick in cloth as before it.
            Kind::Diameter | Kind::Thickness | Kind::MassPerArea
                if own(kind.family()).is_some() =>
            {
                return own(kind.family());
            }
            // Liquor in the gallon of its concentrations.
            Kind::Volume => return own(kind).or_else(|| self.gallon()),
            Kind::Twist if inch(kind) => "tpi",
            Kind::Sett if inch(kind) => "threads/in",
            Kind::Speed if inch(Kind::Length) => "yd/min",
            // A draw of the mule, a reel, a reed are said in inches however long.
            Kind::Length if inch(kind) && base < 3.0 => "in",
            Kind::Length if inch(kind) => "yd",
            Kind::Mass if inch(kind) && base < 0.453 => "oz",
            Kind::Mass if inch(kind) => "lb",
            Kind::MassRate if inch(Kind::Mass) => "lb/h",
            // Cloth is weighed as it is measured, whatever the system of its yarns.
            Kind::MassPerArea if inch(Kind::Length) => "oz/yd²",
            // Ends and stops come a few times in an hour.
            Kind::Frequency if base < 1.0 => "/h",
            _ => return None,
        };
        unit(symbol, Some(kind)).ok()
    }
    /// The gallon by which a concentration was given, where one was.
    fn gallon(&self) -> Option<&'static Unit> {
        let concentrations =
            self.given.iter().filter(|amount| amount.unit.kind == Kind::Concentration);
        let mut volumes = concentrations.filter_map(|amount| amount.unit.symbol.split_once('/'));
        let (_, gallon) = volumes.find(|(_, volume)| volume.ends_with(" gal"))?;
        unit(gallon, Some(Kind::Volume)).ok()
    }
}

impl Context for Say {
    fn say(&self, base: f64, kind: Kind) -> String {
        self.base(base, kind)
    }
    fn refuse(&self, name: &str, message: String) -> Error {
        Error::range(message).at(name)
    }
    fn given(&self, base: f64, kind: Kind) -> Option<Amount> {
        self.given
            .iter()
            .find(|a| a.unit.kind == kind && a.base().total_cmp(&base).is_eq())
            .copied()
    }
}
