//! The units in which results are printed.

use super::section::Section;
use crate::error::Result;
use crate::quantity::print::{figure, fixed, of_kind, significant, with_unit};
use crate::quantity::{Kind, Unit, unit};

/// Units for printing: those that the lot file asks for, else the handbooks' own. Values are
/// calculated and handed to programs in the base units whatever is printed.
#[derive(Clone, Debug, Default)]
pub(super) struct Say {
    units: Vec<(Kind, &'static Unit)>,
    /// Units of lengths by their use: a reed in inches beside a warp in yards.
    lengths: Vec<(&'static str, &'static Unit)>,
    /// For masses below one of the unit of mass: what a balance on a table shows.
    small_mass: Option<&'static Unit>,
}

const KEYS: [(&str, Kind); 8] = [
    ("count", Kind::LinearDensity),
    ("mass", Kind::Mass),
    ("twist", Kind::Twist),
    ("twist_factor", Kind::TwistFactor),
    ("sett", Kind::Sett),
    ("reed", Kind::ReedCount),
    ("area", Kind::MassPerArea),
    ("rate", Kind::MassRate),
];

/// What lengths are for.
const USES: [&str; 5] = ["reed_width", "warp", "weft", "yarn", "cloth"];

/// What a length of a setting is for.
fn use_of(setting: &str) -> &'static str {
    match setting {
        "reed_width" => "reed_width",
        "warp_length" | "warp_yarn_length" => "warp",
        "weft_yarn_length" => "weft",
        "width" | "off_loom_width" => "cloth",
        _ => "yarn",
    }
}

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
        for key in USES {
            say.lengths.extend(one(key, Kind::Length)?.map(|unit| (key, unit)));
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

    /// A length for a use.
    pub(super) fn length(&self, setting: &str, metres: f64) -> String {
        let of_use = self.lengths.iter().find(|(key, _)| *key == use_of(setting));
        match of_use {
            Some((_, unit)) => with_unit(unit.from_base(metres), unit.symbol),
            None => self.figure(metres, Kind::Length),
        }
    }

    /// A value of a setting, by its name, with as many digits as the hand can set.
    fn setting(&self, name: &str, base: f64, kind: Kind) -> String {
        let of_use = || self.lengths.iter().any(|(key, _)| *key == use_of(name));
        if kind == Kind::Length && of_use() {
            return self.length(name, base);
        }
        self.to_hand(base, kind)
    }

    /// The value of a setting.
    pub(super) fn of_setting(&self, setting: &super::Setting) -> String {
        let name = setting.key.rsplit('.').next().unwrap_or_default();
        self.setting(name, setting.value, setting.kind)
    }

    /// A value with as many digits as the hand can set or the balance can read: whole teeth, ends and
    /// picks, 159 g, 1.49 kg, 10 h 12 min, 276 km of yarn.
    pub(super) fn to_hand(&self, base: f64, kind: Kind) -> String {
        match kind {
            Kind::Count => fixed(base, 0),
            Kind::Duration if base >= 1.0 => {
                let minutes = (base * 60.0).round();
                format!("{} h {} min", fixed((minutes / 60.0).floor(), 0), minutes % 60.0)
            }
            Kind::Duration => format!("{} min", significant(base * 60.0, 2)),
            Kind::Length if self.unit(kind).is_none() && base >= 10_000.0 => {
                format!("{} km", significant(base / 1000.0, 3))
            }
            Kind::Mass | Kind::Volume | Kind::MassRate => self.rounded(base, kind, 3),
            _ => self.figure(base, kind),
        }
    }

    /// A value of a kind with some significant digits.
    fn rounded(&self, base: f64, kind: Kind, digits: usize) -> String {
        let printed = self.figure(base, kind);
        let Some((_, unit)) = printed.split_once(' ') else { return printed };
        let in_unit = crate::quantity::unit(unit, Some(kind)).map(|unit| unit.from_base(base));
        in_unit.map_or(printed.clone(), |x| format!("{} {unit}", significant(x, digits)))
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
