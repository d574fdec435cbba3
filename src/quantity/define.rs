//! Count systems that users define: defined once, known everywhere afterwards; those of a lot file are known
//! while it is read, and to nobody else.
//!
//! What is defined stays until the program ends and never changes, so a count keeps its meaning.

#[cfg(feature = "plan-file")]
use std::cell::RefCell;
use std::collections::HashMap;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{LazyLock, Mutex, PoisonError, RwLock, RwLockReadGuard};

use super::counts::{self, Exact, SYSTEMS, System};
use super::factors::{FACTORS, cover_form};
use super::kind::Kind;
use super::lookup::{refuse_knitting_word, several_readings};
use super::parse::parse_as;
use super::unit::{Form, Unit, without_factors};
use crate::error::{Error, Result};
use crate::source::Basis;

/// A count system that somebody wants to define.
///
/// ```
/// use hankwise::quantity::{Definition, convert, define};
///
/// define(&Definition {
///     name: "my-cut".into(),
///     length: "300 yd".into(),
///     mass: "26 oz".into(),
///     ..Definition::default()
/// })?;
/// assert_eq!(convert(16.0, "my-cut", "hawick-cut")?, 16.0);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct Definition {
    /// Its name, which is also how it is printed.
    pub name: String,
    /// Other names.
    pub names: Vec<String>,
    /// A length with its unit, such as "300 yd".
    pub length: String,
    /// A mass with its unit, such as "26 oz".
    pub mass: String,
    /// False for hanks of the length in the mass; true for the mass of the length.
    pub direct: bool,
    /// Who says so; may be empty.
    pub source: String,
    /// Where it is at home; may be empty.
    pub country: String,
    /// When it was in use; may be empty.
    pub date: String,
}

/// A definition that cannot be: which of them, at which key, and why.
pub(crate) struct Refused {
    /// Only a file has several.
    #[cfg_attr(not(feature = "plan-file"), allow(dead_code))]
    pub(crate) which: usize,
    pub(crate) key: &'static str,
    pub(crate) error: Error,
}

/// What was defined, in order; `table` finds it by any of its names.
#[derive(Default)]
struct Own {
    systems: Vec<&'static System>,
    units: Vec<&'static Unit>,
    table: HashMap<String, &'static Unit>,
}

impl Own {
    /// The systems of the definitions, those that are there already among them; all are added, or none
    /// where one is refused.
    fn add(
        &mut self,
        all: &[Definition],
        worths: &[Worth],
    ) -> std::result::Result<Vec<&'static System>, Refused> {
        let (mut found, mut made) = (Vec::new(), Vec::<Kept>::new());
        for (which, (definition, worth)) in all.iter().zip(worths).enumerate() {
            let new = made.iter().map(|kept| kept.system);
            let before = self.systems.iter().copied().chain(new);
            let same = taken(definition, worth.0, before).map_err(|(key, error)| Refused {
                which,
                key,
                error,
            })?;
            found.push(same.unwrap_or_else(|| {
                let kept = keep(definition, *worth);
                made.push(kept);
                kept.system
            }));
        }
        for Kept { system, factors } in made {
            self.systems.push(system);
            for unit in std::iter::once(&system.unit).chain(factors.iter().copied()) {
                self.units.push(unit);
                for name in names(unit) {
                    self.table.insert(name.to_owned(), unit);
                    // As a name is looked up that somebody wrote in capitals.
                    self.table.insert(name.to_lowercase(), unit);
                }
            }
        }
        Ok(found)
    }
}

static OWN: LazyLock<RwLock<Own>> = LazyLock::new(RwLock::default);
/// Spares the lock where nothing was defined.
static ANY: AtomicBool = AtomicBool::new(false);

fn own() -> Option<RwLockReadGuard<'static, Own>> {
    let any = ANY.load(Ordering::Acquire);
    any.then(|| OWN.read().unwrap_or_else(PoisonError::into_inner))
}

/// The systems of the lot file that this thread reads.
#[cfg(feature = "plan-file")]
mod here {
    use super::{Definition, Own, RefCell, Refused, System, Unit, worths};

    thread_local! {
        static HERE: RefCell<Option<Own>> = const { RefCell::new(None) };
    }

    /// Systems that this thread knows until this is dropped, before those that everybody knows.
    pub(crate) struct OwnHere {
        outside: Option<Own>,
        // It belongs to the thread.
        _thread: std::marker::PhantomData<*const ()>,
    }

    impl OwnHere {
        pub(crate) fn define(all: &[Definition]) -> Result<OwnHere, Refused> {
            let mut own = Own::default();
            own.add(all, &worths(all)?)?;
            let outside = HERE.replace((!all.is_empty()).then_some(own));
            Ok(OwnHere { outside, _thread: std::marker::PhantomData })
        }
    }

    impl Drop for OwnHere {
        fn drop(&mut self) {
            HERE.replace(self.outside.take());
        }
    }

    fn read<T: Default>(of: impl FnOnce(&Own) -> T) -> T {
        HERE.with_borrow(|own| own.as_ref().map(of)).unwrap_or_default()
    }
    pub(super) fn unit(name: &str) -> Option<&'static Unit> {
        read(|own| own.table.get(name).copied())
    }
    pub(super) fn units() -> Vec<&'static Unit> {
        read(|own| own.units.clone())
    }
    pub(super) fn systems() -> Vec<&'static System> {
        read(|own| own.systems.clone())
    }
}
#[cfg(feature = "plan-file")]
pub(crate) use here::OwnHere;

/// Without lot files there are no systems of one.
#[cfg(not(feature = "plan-file"))]
mod here {
    use super::{System, Unit};

    pub(super) fn unit(_name: &str) -> Option<&'static Unit> {
        None
    }
    pub(super) fn units() -> Vec<&'static Unit> {
        Vec::new()
    }
    pub(super) fn systems() -> Vec<&'static System> {
        Vec::new()
    }
}

/// A unit that a user defined, by one of its names.
pub(super) fn own_unit(name: &str) -> Option<&'static Unit> {
    here::unit(name).or_else(|| own()?.table.get(name).copied())
}

/// The units that users defined: the systems and their factors.
pub(super) fn own_units() -> Vec<&'static Unit> {
    let mut units = here::units();
    if let Some(own) = own() {
        // A name that the lot file gives to another system is that one's.
        units.extend(own.units.iter().filter(|unit| here::unit(unit.symbol).is_none()));
    }
    units
}

/// Every count system: the trade's, then one's own.
pub fn systems() -> impl Iterator<Item = &'static System> {
    let mut all = here::systems();
    if let Some(own) = own() {
        all.extend(own.systems.iter().filter(|s| here::unit(s.unit.symbol).is_none()));
    }
    SYSTEMS.iter().chain(all)
}

/// Defines a count system. Its name is then known wherever a count is read, and `tpi/√name` as a twist
/// factor and `K_name` as a cover factor where the system is indirect. The same definition again is not an error; another one under a
/// name that is taken is refused.
pub fn define(definition: &Definition) -> Result<&'static System> {
    let all = define_all(std::slice::from_ref(definition));
    let refused = |r: Refused| match r.key {
        "" => r.error,
        key => r.error.at(format_args!("{}: {key}", definition.name)),
    };
    all.map(|systems| systems[0]).map_err(refused)
}

/// Defines all of them, or none where one is refused.
pub(crate) fn define_all(all: &[Definition]) -> std::result::Result<Vec<&'static System>, Refused> {
    // Before the lock is taken: reading a unit asks for it too.
    let worths = worths(all)?;
    let mut own = OWN.write().unwrap_or_else(PoisonError::into_inner);
    let found = own.add(all, &worths)?;
    ANY.store(!own.systems.is_empty(), Ordering::Release);
    Ok(found)
}

fn worths(all: &[Definition]) -> std::result::Result<Vec<Worth>, Refused> {
    let refused = |which, (key, error)| Refused { which, key, error };
    all.iter().enumerate().map(|(which, d)| worth(d).map_err(|e| refused(which, e))).collect()
}

type Worth = (Form, f64, f64);
type At = (&'static str, Error);

fn worth(definition: &Definition) -> std::result::Result<Worth, At> {
    let read = |key, text: &str, kind: Kind| {
        let base = parse_as(text, kind).map(|a| a.base()).map_err(|e| (key, e))?;
        if base > 0.0 {
            return Ok(base);
        }
        let message = format!("'{text}' is no {} to count by; write one above 0", kind.words());
        Err((key, Error::range(message)))
    };
    let length = read("length", &definition.length, Kind::Length)?;
    let mass = read("mass", &definition.mass, Kind::Mass)?;
    // Yards and metres are whole numbers of 10⁻⁴ m, grains, drams and milligrams of 1/224 of 10⁻¹¹ kg:
    // of such the quotient is rounded once, like that of the trade's own systems.
    if let (Some(length), Some(mass)) = (whole(length, 10_000), whole(mass, 22_400_000_000_000)) {
        return Ok(if definition.direct {
            counts::direct(mass, length)
        } else {
            counts::indirect(length, mass)
        });
    }
    let tex = mass / length * 1e6;
    Ok((if definition.direct { Form::Times(tex) } else { Form::Over(tex) }, length, mass))
}

/// A value as a whole number of parts, but for the rounding of binary figures.
fn whole(x: f64, parts: u64) -> Option<Exact> {
    let n = x * parts as f64;
    let near = (n - n.round()).abs() <= 4.0 * f64::EPSILON * n;
    (near && (1.0..9e15).contains(&n)).then(|| (n.round() as u128, u128::from(parts)))
}

fn names(unit: &'static Unit) -> impl Iterator<Item = &'static str> {
    std::iter::once(unit.symbol).chain(unit.names.iter().copied())
}

/// The system where it is there already, None where its names are free.
fn taken(
    definition: &Definition,
    form: Form,
    own: impl Iterator<Item = &'static System>,
) -> std::result::Result<Option<&'static System>, At> {
    let systems: Vec<&'static System> = SYSTEMS.iter().chain(own).collect();
    let all_units = || {
        let systems = systems.iter().map(|s| &s.unit);
        without_factors().chain(FACTORS.iter()).chain(systems)
    };
    // People do not tell names apart by their capitals.
    let same = |a: &str, b: &str| a.to_lowercase() == b.to_lowercase();
    let mut there = None;
    let mut free = false;
    let keys = std::iter::once("").chain(std::iter::repeat("names"));
    let wanted = std::iter::once(&definition.name).chain(&definition.names);
    for (key, name) in keys.zip(wanted) {
        if let Some(why) = unfit(name) {
            return Err((key, Error::unit(why)));
        }
        let holder = all_units().find(|unit| names(unit).any(|n| same(n, name)));
        let Some(unit) = holder else {
            free = true;
            continue;
        };
        let exactly = unit.kind == Kind::LinearDensity && unit.form == form;
        let system = systems.iter().find(|s| s.unit == *unit).filter(|_| exactly);
        let first = *there.get_or_insert(unit);
        if system.is_none() || first != unit {
            let message = format!(
                "the name '{name}' is taken: {} is {} ({}); choose another",
                unit.symbol, unit.definition, unit.source
            );
            return Err((key, Error::unit(message)));
        }
    }
    match there {
        Some(unit) if free => {
            let known: Vec<&str> = names(unit).collect();
            let message = format!(
                "'{}' is defined already, as {} with no other names than {}; \
                 define it once, with all its names",
                definition.name,
                unit.definition,
                known.join(", ")
            );
            Err(("", Error::unit(message)))
        }
        there => Ok(there.and_then(|unit| systems.into_iter().find(|s| s.unit == *unit))),
    }
}

/// Why a word cannot be the name of a count system.
fn unfit(name: &str) -> Option<String> {
    let fits = |c: char| c.is_alphabetic() || c.is_ascii_digit() || "-/.".contains(c);
    if !name.starts_with(char::is_alphabetic) || !name.chars().all(fits) {
        return Some(format!(
            "'{name}' cannot be read back after a number; write a name that begins with a letter and \
             has only letters, digits and hyphens, such as 'my-cut'"
        ));
    }
    if let Some(refusal) = refuse_knitting_word(name) {
        return Some(format!("{refusal}; choose another name, such as 'our-{name}'"));
    }
    // Signs of the notation of yarns: they would be read before the name is.
    let lower = name.to_lowercase();
    let sign = lower.trim_end_matches(|c: char| c.is_ascii_digit());
    let signs = ["r", "b", "s", "z", "x", "f", "t"];
    let words = ["no", "no.", "nr", "nr.", "tkt", "tkt.", "ticket", "single", "singles"];
    if signs.contains(&sign) || words.contains(&lower.as_str()) {
        return Some(format!(
            "'{name}' is a sign of the notation of yarns, as in '125 tex Z 210 x 2; R 257 tex' or \
             'Tkt 90 metric'; choose a name of its own, such as 'our-{name}'"
        ));
    }
    several_readings(name).map(|instead| {
        format!(
            "'{name}' alone can be read in several ways ({instead}); choose a name of its own, such as \
             'our-{name}'"
        )
    })
}

/// A system with its factors, kept until the program ends.
#[derive(Clone, Copy)]
struct Kept {
    system: &'static System,
    factors: &'static [&'static Unit],
}

/// Keeps what is defined, once however often the same is defined.
fn keep(definition: &Definition, worth: Worth) -> Kept {
    static ALL: LazyLock<Mutex<HashMap<Definition, Kept>>> = LazyLock::new(Mutex::default);
    let mut all = ALL.lock().unwrap_or_else(PoisonError::into_inner);
    *all.entry(definition.clone()).or_insert_with(|| {
        let system = leak(definition, worth);
        Kept { system, factors: factors(system).leak() }
    })
}

fn leak(definition: &Definition, (form, length, mass): Worth) -> &'static System {
    let (l, m) = (definition.length.trim(), definition.mass.trim());
    let words = if definition.direct { format!("{m} per {l}") } else { format!("{l} per {m}") };
    let source = if definition.source.is_empty() { "own definition" } else { &definition.source };
    let names: Vec<&'static str> = definition.names.iter().map(|n| kept(n)).collect();
    Box::leak(Box::new(System {
        unit: Unit {
            symbol: kept(&definition.name),
            names: Box::leak(names.into_boxed_slice()),
            kind: Kind::LinearDensity,
            form,
            definition: kept(&words),
            source: kept(source),
            rests_on: Some(Basis::Own),
        },
        length,
        mass,
        country: kept(&definition.country),
        date: kept(&definition.date),
    }))
}

fn kept(text: &str) -> &'static str {
    Box::leak(text.to_owned().into_boxed_str())
}

/// Turns and threads in an inch by the root of an indirect count: twist factor, cover factor.
fn factors(system: &'static System) -> Vec<&'static Unit> {
    let Form::Over(constant) = system.unit.form else { return Vec::new() };
    let own = |kind, form, spelt: Vec<&'static str>, over: &str| -> &'static Unit {
        Box::leak(Box::new(Unit {
            symbol: spelt[0],
            names: spelt.leak().split_at(1).1,
            kind,
            form,
            definition: kept(&format!("{over} ÷ √({})", system.unit.symbol)),
            source: system.unit.source,
            rests_on: Some(Basis::Own),
        }))
    };
    let spelt = |forms: [&str; 2]| {
        let of = |name: &str| forms.map(|form| kept(&form.replace('*', name)));
        names(&system.unit).flat_map(of).collect::<Vec<_>>()
    };
    let twist = Form::Times(constant.sqrt() / 2.54);
    vec![
        own(Kind::TwistFactor, twist, spelt(["tpi/√*", "tpi/sqrt(*)"]), "turns/in"),
        own(Kind::CoverFactor, cover_form(constant), spelt(["K_*", "threads/in/√*"]), "threads/in"),
    ]
}
