//! What is said of a calculation once its numbers are known: refusals, warnings, notes.

use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Typed, parse_as};

/// What a check returns: nothing where it only warns and notes, a result where it may refuse.
pub trait Checked {
    /// Whether nothing was refused.
    fn done(self) -> Result<()>;
}

impl Checked for () {
    fn done(self) -> Result<()> {
        Ok(())
    }
}

impl Checked for Result<()> {
    fn done(self) -> Result<()> {
        self
    }
}

/// Where a calculation is done: it says values in the user's units, and names places as the user does.
pub trait Context {
    /// A value, in the base unit, in words.
    fn say(&self, base: f64, kind: Kind) -> String;
    /// An error at an input.
    fn refuse(&self, name: &str, message: String) -> Error;
    /// Whether an input was given, in whatever form.
    fn has(&self, _name: &str) -> bool {
        false
    }
    /// The quantity of a value, as it was given.
    fn given(&self, _base: f64, _kind: Kind) -> Option<Amount> {
        None
    }
}

/// Takes what a calculation has to say besides its numbers.
pub struct Check<'a> {
    context: &'a dyn Context,
    pub(crate) warnings: Vec<String>,
    /// Sentences under a table, by its heading.
    pub(crate) notes: Vec<(&'static str, String)>,
    /// What is said beside a result, by its name.
    pub(crate) beside: Vec<(String, String)>,
}

impl std::fmt::Debug for Check<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Check").field("warnings", &self.warnings).finish_non_exhaustive()
    }
}

impl<'a> Check<'a> {
    /// Nothing said yet.
    pub fn new(context: &'a dyn Context) -> Check<'a> {
        let (warnings, notes, beside) = Default::default();
        Check { context, warnings, notes, beside }
    }
    /// A quantity in words, in the user's own unit or one that goes with it.
    pub fn say<Q: Typed<f64>>(&self, quantity: Q) -> String {
        self.context.say(quantity.v().0, Q::KIND)
    }
    /// A quantity in words as the least that is enough: its figures are rounded up.
    pub fn say_at_least<Q: Typed<f64>>(&self, quantity: Q) -> String {
        let least = quantity.v().0;
        let enough = |said: &String| {
            parse_as(said, Q::KIND).is_ok_and(|read| read.base() >= least * (1.0 - 1e-9))
        };
        // Steps are smaller than the last of four figures, so that none is passed over.
        let mut steps =
            (0..12).map(|step| self.say_base(least * (1.0 + 1e-4 * f64::from(step)), Q::KIND));
        steps.find(enough).unwrap_or_else(|| self.say(quantity))
    }
    /// A value of a kind in words.
    pub fn say_base(&self, base: f64, kind: Kind) -> String {
        self.context.say(base, kind)
    }
    /// A quantity as it was given: in its own unit.
    pub fn given<Q: Typed<f64>>(&self, quantity: Q) -> Option<Amount> {
        self.context.given(quantity.v().0, Q::KIND)
    }
    /// An error at an input; see [`refuse!`](crate::refuse).
    pub fn refuse(&self, name: &str, message: impl Into<String>) -> Error {
        self.context.refuse(name, message.into())
    }
    /// Says what is unusual.
    pub fn warn(&mut self, warning: impl Into<String>) {
        let warning = warning.into();
        if !self.warnings.contains(&warning) {
            self.warnings.push(warning);
        }
    }
    /// Says of inputs that were given that they change nothing without another.
    pub fn idle(&mut self, names: &[&str], without: &str) {
        for name in names.iter().filter(|name| self.context.has(name)) {
            self.warn(format!("{name} was given but changes nothing without {without}"));
        }
    }
    /// A sentence under the table with a heading.
    pub fn note(&mut self, block: &'static str, sentence: impl Into<String>) {
        self.notes.push((block, sentence.into()));
    }
    /// What is said beside a result: the owned parts next to it, the state in which it is weighed.
    pub fn beside(&mut self, result: impl Into<String>, note: impl Into<String>) {
        self.beside.push((result.into(), note.into()));
    }
}

/// Refuses a value in the check of a calculation: `refuse!(check, given.let_in, "…")`. The input is named
/// by its field, so that a misspelt one does not compile.
#[macro_export]
macro_rules! refuse {
    ($check:expr, $given:ident $(. $field:ident)+, $($message:tt)+) => {{
        let _ = &$given $(. $field)+;
        return Err($check.refuse(
            $crate::refuse!(@last $($field)+),
            format!($($message)+),
        ));
    }};
    (@last $only:ident) => { stringify!($only) };
    (@last $first:ident $($rest:ident)+) => { $crate::refuse!(@last $($rest)+) };
}
