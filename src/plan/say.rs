//! The units in which results are printed.

use super::file::Section;
use crate::error::Result;
use crate::quantity::print::{figure, fixed, of_kind, with_unit};
use crate::quantity::{Kind, Unit, unit};

/// Units for printing: those that the lot file asks for, else the handbooks' own. Figures are
/// worked out and handed to programs in the base units whatever is printed.
#[derive(Clone, Debug, Default)]
pub(super) struct Say {
    units: Vec<(Kind, &'static Unit)>,
    /// For masses below one of the unit of mass: what a balance on a table shows.
    small_mass: Option<&'static Unit>,
}

const KEYS: [(&str, Kind); 9] = [
    ("count", Kind::LinearDensity),
    ("mass", Kind::Mass),
    ("length", Kind::Length),
    ("twist", Kind::Twist),
    ("twist_factor", Kind::TwistFactor),
    ("sett", Kind::Sett),
    ("reed", Kind::ReedCount),
    ("area", Kind::MassPerArea),
    ("rate", Kind::MassRate),
];

impl Say {
    pub(super) fn read(section: &Section<'_>) -> Result<Self> {
        let mut say = Say::default();
        let one = |key: &str, kind: Kind| match section.text_or_none(key)? {
            None => Ok(None),
            Some(name) => {
                unit(&name, Some(kind)).map(Some).map_err(|e| section.error(key, e.to_string()))
            }
        };
        for (key, kind) in KEYS {
            say.units.extend(one(key, kind)?.map(|unit| (kind, unit)));
        }
        say.small_mass = one("small_mass", Kind::Mass)?;
        Ok(say)
    }

    /// The unit asked for, for a kind.
    pub(super) fn unit(&self, kind: Kind) -> Option<&'static Unit> {
        self.units.iter().find(|(k, _)| *k == kind).map(|(_, unit)| *unit)
    }

    /// A value of a kind, given in its base unit.
    pub(super) fn figure(&self, base: f64, kind: Kind) -> String {
        // Machine parts and pieces are whole and said without a unit.
        if kind == Kind::Count {
            return figure(base);
        }
        let Some(mut unit) = self.unit(kind) else { return of_kind(base, kind) };
        if kind == Kind::Mass && unit.from_base(base).abs() < 1.0 {
            let Some(small) = self.small_mass else { return of_kind(base, kind) };
            unit = small;
        }
        with_unit(unit.from_base(base), unit.symbol)
    }

    /// A large mass to two decimals, without its unit: for columns.
    pub(super) fn mass(&self, kg: f64) -> String {
        fixed(self.unit(Kind::Mass).map_or(kg, |unit| unit.from_base(kg)), 2)
    }

    /// The unit of those columns.
    pub(super) fn mass_unit(&self) -> &'static str {
        self.unit(Kind::Mass).map_or("kg", |unit| unit.symbol)
    }

    /// A number of a kind in the unit that it is printed in.
    pub(super) fn number(&self, base: f64, kind: Kind) -> f64 {
        match self.unit(kind) {
            Some(unit) => unit.from_base(base),
            None if kind == Kind::ReedCount => base * 10.0,
            None => base,
        }
    }
}
