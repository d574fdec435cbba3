//! Finding a unit by any of its names; refusing a word that could mean several.

use std::collections::HashMap;
use std::sync::LazyLock;

use super::define::own_unit;
use super::factors::{FACTORS, KINDS};
use super::kind::Kind;
use super::parse::shortened;
use super::plain::plain;
use super::unit::{Unit, diameters, units, without_factors};
use crate::error::{Error, Result, did_you_mean};
use crate::tsv::{field, rows};

type Table = HashMap<&'static str, &'static Unit>;

fn table_of(units: impl Iterator<Item = &'static Unit>) -> Table {
    let mut table = Table::new();
    for unit in units {
        for name in std::iter::once(&unit.symbol).chain(unit.names) {
            let before = table.insert(name, unit);
            debug_assert!(before.is_none(), "the unit {name} is in the table twice");
        }
    }
    table
}

static TABLE: LazyLock<Table> = LazyLock::new(|| table_of(without_factors()));
/// Millimetres and the like: without a kind asked for, they are lengths.
static DIAMETER_TABLE: LazyLock<Table> = LazyLock::new(|| table_of(diameters()));
static FACTOR_TABLE: LazyLock<Table> = LazyLock::new(|| table_of(FACTORS.iter()));

/// Words that mean more than one thing, and what to write instead.
static SEVERAL_MEANINGS: LazyLock<HashMap<&str, &str>> = LazyLock::new(|| {
    let all = rows(include_str!("several_meanings.tsv")).skip(1);
    all.map(|row| (field(&row, 0), field(&row, 1))).collect()
});

/// Hand-knitting words: each is a band of thickness that differs from country to country, no count.
/// Hundredths of the mill's own money.
const CENTS: &[&str] = &["c", "ct", "cent", "cents", "p", "pence"];
const KNITTING: &[&str] = &[
    "aran",
    "bulky",
    "chunky",
    "cobweb",
    "dk",
    "double double",
    "double knit",
    "double knitting",
    "fingering",
    "lace",
    "light dk",
    "light fingering",
    "light worsted",
    "ply",
    "sock",
    "sport",
    "super bulky",
    "super chunky",
    "triple knitting",
];

/// The refusal of a hand-knitting word where a count is wanted: `DK`, `Aran weight`, the `ply` of
/// `4 ply`.
pub(crate) fn refuse_knitting_word(text: &str) -> Option<Error> {
    let lower = text.to_lowercase().replace('-', " ");
    let (word, called_weight) = match lower.trim().strip_suffix("weight") {
        Some(word) => (word.trim(), true),
        None => (lower.trim(), false),
    };
    // "4 ply", "8ply": the word with the number of the range.
    let ply = word.strip_suffix("ply").map(str::trim_end);
    let ply = ply.filter(|n| !n.is_empty() && n.bytes().all(|b| b.is_ascii_digit()));
    // "worsted" alone is a count system, "worsted weight" is not.
    let known = ply.is_some() || KNITTING.contains(&word) || (called_weight && word == "worsted");
    known.then(|| {
        let written = text.trim().trim_start_matches('-');
        let (example, ends) = if let Some(n) = ply {
            (
                format!("{n} ply"),
                "; the number of ends folded is an input of its own, such as ends=4",
            )
        } else if word == "ply" {
            (
                "4 ply".to_owned(),
                "; the number of ends folded is an input of its own, such as ends=4",
            )
        } else {
            (written.to_owned(), "")
        };
        Error::unit(format!(
            "'{written}' is a hand-knitting word for a range of thickness, which differs from \
             country to country, not a count; write the metres of a mass, such as '230 m/100g'; \
             weight_band('{example}') gives the range{ends}"
        ))
    })
}

/// The unit with a name. With `wanted`, reed systems may drop the word reed, and the message for a
/// unit of another kind says what was wanted.
pub fn unit(name: &str, wanted: Option<Kind>) -> Result<&'static Unit> {
    find(name, wanted).map_err(|other| refusal(name, wanted, other))
}

/// The unit with a name, with nothing said of one that is not known.
pub(super) fn known_unit(name: &str, wanted: Option<Kind>) -> Option<&'static Unit> {
    find(name, wanted).ok()
}

/// The unit with a name; else one of another kind that has it.
fn find(
    name: &str,
    wanted: Option<Kind>,
) -> std::result::Result<&'static Unit, Option<&'static Unit>> {
    let family = wanted.map(Kind::family);
    let fits = |unit: &Unit| family.is_none_or(|f| f == unit.kind);
    if let Some(unit) = TABLE.get(name)
        && fits(unit)
    {
        return Ok(unit);
    }
    let mut other = None;
    for candidate in spellings(name, family) {
        let in_table = |table: &Table, kind: Kind| {
            let may_be = family.is_none() || family == Some(kind);
            may_be.then(|| table.get(candidate.as_str()).copied()).flatten()
        };
        let found = match family {
            Some(Kind::Diameter) => in_table(&DIAMETER_TABLE, Kind::Diameter),
            _ => None,
        };
        let found = found.or_else(|| TABLE.get(candidate.as_str()).copied());
        // The factors are made from the count systems, so they are looked up after them.
        let may_be = family.is_none_or(|f| KINDS.contains(&f));
        let factor = || may_be.then(|| FACTOR_TABLE.get(candidate.as_str()).copied()).flatten();
        let found = found.or_else(factor);
        let found = found.or_else(|| in_table(&DIAMETER_TABLE, Kind::Diameter));
        let found = found.or_else(|| own_unit(&candidate));
        match found {
            Some(unit) if fits(unit) => return Ok(unit),
            Some(unit) => other = Some(unit),
            None => {}
        }
    }
    let by_habit = if fits_counts(family) { count_by_habit(name, family.is_some()) } else { None };
    by_habit.ok_or(other)
}

fn fits_counts(family: Option<Kind>) -> bool {
    family.is_none_or(|f| f == Kind::LinearDensity)
}

/// A count system whose capitals somebody wrote as they came, `nm`, `NE`, `ysw`, or by a letter that is
/// a count only where nothing else can be meant.
fn count_by_habit(name: &str, a_count_is_wanted: bool) -> Option<&'static Unit> {
    const HABITS: &[(&str, &str)] =
        &[("d", "den"), ("td", "den"), ("cc", "Ne"), ("c.c.", "Ne"), ("c.c", "Ne")];
    let name = plain(name.trim()).to_lowercase();
    // One's own names come first, in any capitals.
    if let Some(own) = own_unit(&name).filter(|unit| unit.kind == Kind::LinearDensity) {
        return Some(own);
    }
    if a_count_is_wanted && let Some((_, symbol)) = HABITS.iter().find(|(habit, _)| *habit == name)
    {
        return TABLE.get(symbol).copied();
    }
    SMALL.get(&name).copied().flatten()
}

/// The count systems by their names in small letters; none where several are written so.
static SMALL: LazyLock<HashMap<String, Option<&'static Unit>>> = LazyLock::new(|| {
    let mut small = HashMap::new();
    for (name, unit) in TABLE.iter().filter(|(_, unit)| unit.kind == Kind::LinearDensity) {
        let first = small.entry(name.to_lowercase()).or_insert(Some(*unit));
        if *first != Some(*unit) {
            *first = None;
        }
    }
    small
});

/// The ways in which a unit that somebody wrote may be in the table.
fn spellings(name: &str, family: Option<Kind>) -> Vec<String> {
    let mut all = vec![name.to_owned()];
    let mut tidy = plain(name).split_whitespace().collect::<Vec<_>>().join(" ");
    if fits_counts(family) {
        // `cotton count`, `worsted counts`; `yds/50g`, `metres per 100 g`.
        let lower = tidy.to_ascii_lowercase();
        let without = [" counts", " count"]
            .into_iter()
            .find_map(|word| lower.ends_with(word).then(|| &tidy[..tidy.len() - word.len()]));
        let without = without.map(str::trim_end).filter(|system| !system.is_empty());
        tidy = without.unwrap_or(&tidy).to_owned();
        for (long, short) in [("yards", "yd"), ("yds", "yd"), ("metres", "m"), ("meters", "m")] {
            let rest = tidy.get(long.len()..).filter(|r| r.starts_with(['/', ' ']));
            if let Some(rest) = rest.filter(|_| lower.starts_with(long)) {
                tidy = format!("{short}{rest}");
                break;
            }
        }
    }
    tidy = tidy.replace(" / ", "/").replace("/ ", "/").replace(" /", "/");
    tidy = tidy.replace(" per ", "/").replace("per ", "/").replace(" a ", "/");
    tidy = tidy.replace("^2", "²").replace('*', "·").replace("·√", " √");
    tidy = tidy.replace("/10cm", "/10 cm").replace("/1 ", "/");
    tidy = tidy.replace("/100 g", "/100g").replace("/50 g", "/50g");
    all.push(tidy.clone());
    if family == Some(Kind::ReedCount) {
        all.push(format!("{tidy}-reed"));
    }
    if tidy.len() > 3 {
        all.push(tidy.to_lowercase().replace(' ', "-"));
        all.push(tidy.to_lowercase());
    }
    all
}

/// What to write instead of a word that means more than one thing.
pub(super) fn several_readings(name: &str) -> Option<&'static str> {
    let key = name.trim().to_lowercase();
    let one = key.strip_suffix('s').and_then(|one| SEVERAL_MEANINGS.get(one));
    SEVERAL_MEANINGS.get(&*key).or(one).copied()
}

fn refusal(name: &str, wanted: Option<Kind>, other: Option<&'static Unit>) -> Error {
    let name = &*shortened(name);
    if wanted.is_none_or(|k| k == Kind::LinearDensity)
        && let Some(refusal) = refuse_knitting_word(name)
    {
        return refusal;
    }
    if name.trim().is_empty()
        && let Some(kind) = wanted
    {
        return Error::unit(format!(
            "no unit was given for a {}; write one, as in '{}'",
            kind.words(),
            kind.example()
        ));
    }
    let for_kind = wanted.map_or(String::new(), |k| format!(" for a {}", k.words()));
    let not = wanted.map_or(String::new(), |k| format!(", not of {}", k.words()));
    let write = wanted.map_or(String::new(), |k| format!("; write it like '{}'", k.example()));
    if let Some(instead) = several_readings(name)
        && other.is_none_or(|u| u.kind != Kind::Mass || wanted == Some(Kind::MassPerArea))
    {
        return Error::unit(format!(
            "'{}' alone can be read in several ways; write {instead}",
            name.trim()
        ));
    }
    if let Some(unit) = other
        && unit.kind == Kind::LinearDensity
        && wanted == Some(Kind::MassPerArea)
    {
        return Error::unit(format!(
            "'{name}' is the mass of a running length, which says nothing of an area without the \
             width of the cloth: 56, 58 and 60 in are all in use; mass_per_area_of_cloth('13 oz/yd', \
             '58 in') gives it, or write it like '{}'",
            Kind::MassPerArea.example()
        ));
    }
    if CENTS.contains(&name.trim()) && wanted == Some(Kind::CostPerMass) {
        return Error::unit(format!(
            "'{name}' is money, and says not for what mass; write it like '85 {name}/kg' or '85 {name}/lb'"
        ));
    }
    if CENTS.contains(&name.trim()) && wanted == Some(Kind::Money) {
        return Error::unit(format!(
            "write money as a plain number in the mill's own currency: 0.85 for 85 {name}"
        ));
    }
    if wanted.is_some_and(|w| w.family() == Kind::Ratio) && name.trim_start().starts_with(':') {
        return Error::unit(format!(
            "write a ratio as one number{for_kind}: 30 for 30:1, or for a liquor ratio of 1:30"
        ));
    }
    if let (Some(unit), Some(wanted)) = (other, wanted)
        && wanted.family() == Kind::Ratio
        && !matches!(wanted, Kind::Count | Kind::Money | Kind::Reading | Kind::ReadingSpread)
        && unit.kind == Kind::Fraction
    {
        return Error::unit(format!(
            "'{name}' is a unit of fraction{not}; write a plain number, 0.9 for 90 %"
        ));
    }
    if let Some(unit) = other {
        let what = unit.kind.words();
        return Error::unit(format!(
            "'{name}' is a unit of {what} ({}){not}{write}",
            unit.definition
        ));
    }
    let known = units()
        .filter(|u| wanted.is_none_or(|k| k.family() == u.kind))
        .flat_map(|u| std::iter::once(u.symbol).chain(u.names.iter().copied()))
        .filter(|n| !n.is_empty());
    let near = did_you_mean(name, known).map(|n| format!("; did you mean '{n}'?"));
    let write = match wanted {
        None => "; write one such as 'YSW', 'tex' or 'kg'".to_owned(),
        Some(kind) if !write.is_empty() && kind.family() != Kind::Ratio => {
            format!("; {}", units_of(kind))
        }
        Some(_) => write,
    };
    Error::unit(format!("unknown unit '{name}'{for_kind}{}", near.as_deref().unwrap_or(&write)))
}

/// The unit with a name to convert a value of a kind to.
pub fn unit_to(name: &str, from: Kind) -> Result<&'static Unit> {
    unit(name, Some(from)).map_err(|error| match unit(name, None) {
        Ok(other) if other.kind != from.family() && several_readings(name).is_none() => {
            Error::unit(format!(
                "cannot convert a {} to '{name}', a unit of {}; {}{}",
                from.words(),
                other.kind.words(),
                units_of(from),
                formula_between(from.family(), other.kind)
            ))
        }
        _ => error,
    })
}

/// `units of mass: kg, g, mg, t, lb`.
fn units_of(kind: Kind) -> String {
    let symbols = units().filter(|u| u.kind == kind.family() && !u.symbol.is_empty());
    let symbols: Vec<&str> = symbols.map(|u| u.symbol).take(5).collect();
    format!("units of {}: {}", kind.words(), symbols.join(", "))
}

/// The formula that somebody looks for who converts between a count and a mass or a length.
fn formula_between(from: Kind, to: Kind) -> &'static str {
    match (from, to) {
        (Kind::Mass | Kind::Length, Kind::LinearDensity) => {
            "; a count takes a length and a mass: see count_of"
        }
        (Kind::LinearDensity, Kind::Mass) => "; for the mass of a length see mass_of_length",
        (Kind::LinearDensity, Kind::Length) => "; for the length of a mass see length_of_mass",
        _ => "",
    }
}

/// Two units of one kind, by their names. The first is what it is without a kind asked for, unless
/// only as a diameter has it anything in common with the second: `mm` and `1/in`.
pub fn pair(from: &str, to: &str) -> Result<(&'static Unit, &'static Unit)> {
    // What the first means alone is not always settled; beside the second it may be.
    let first = unit(from, None).or_else(|error| {
        unit(to, None).and_then(|second| unit(from, Some(second.kind))).map_err(|_| error)
    })?;
    unit_to(to, first.kind).map(|second| (first, second)).or_else(|error| {
        let of_diameter = |name| unit(name, Some(Kind::Diameter)).map_err(|_| error.clone());
        Ok((of_diameter(from)?, of_diameter(to)?))
    })
}

/// Numbers in one unit, in another of the same kind.
pub fn convert(number: f64, from: &str, to: &str) -> Result<f64> {
    let (from, to) = pair(from, to)?;
    Ok(to.from_base(from.to_base(number)))
}
