//! A calculation: a chain of formulas with named inputs and named results.
//!
//! A formula has one answer; who stands at a machine wants a dozen that go together. A calculation is
//! written once, as a formula is, over any number: a struct of inputs goes in, a struct of results comes
//! out. Over `f64` it gives the numbers, for one case or for a column of them; over
//! [`Worked`](crate::worked::Worked) each result has its working, and the whole its workbook. What it asks
//! and answers is data on its card: reading, messages, help and signatures come from there.
//!
//! ```
//! use hankwise::{catalogue, mill};
//!
//! let mule = mill::MULE.solve_texts(&[
//!     ("spindles", "120"), ("travel", "6 ft"), ("cycle", "22.5 s"), ("count", "150 tex"),
//!     ("efficiency", "85 %"), ("yarn_mass", "30 kg"),
//! ])?;
//! let output = mule.find("output")?.value;
//! assert!((output - 4.477).abs() < 0.0005);
//! assert!(mule.working("output")?.text().contains("4.477 kg/h"));
//! # Ok::<(), hankwise::Error>(())
//! ```

mod card;
mod cases;
mod changed;
mod check;
mod describe;
mod given;
mod owned;
mod report;
mod say;
mod sheet;
mod solved;
mod source;

pub use card::{
    Adjust, Answer, Choice, Group, Input, Item, Output, PartsInput, Presence, Rows, Text, Word,
    answers, flat,
};
pub use cases::{CaseWarning, Cases, GoOn};
pub use check::{Check, Checked, Context};
pub use describe::described;
pub use given::{Entry, Given, Value};
pub use hankwise::refuse;
pub use hankwise_macros::{Inputs, Results, Words, calculation};
pub use owned::Owned;
pub use say::Say;
pub use sheet::{Found, FoundColumn, Sheet};
pub use solved::Solved;
pub use source::{Place, Source};

use crate::error::Result;
use crate::formula::Change;
use crate::number::Number;
use crate::table::Report;

/// A calculation: its card and the ways to run it.
pub struct Calculation {
    /// Its name, as a function.
    pub name: &'static str,
    /// The module in which it is written.
    pub module: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What it answers, in a sentence.
    pub summary: &'static str,
    /// More about it; may be empty.
    pub details: &'static str,
    /// An example for Python; may be empty.
    pub example: &'static str,
    /// What it asks.
    pub inputs: &'static [Item],
    /// What it answers.
    pub outputs: &'static [Output],
    /// Where it holds and where not.
    pub limits: &'static [&'static str],
    /// What people get wrong with it.
    pub slips: &'static [&'static str],
    /// Keys of the sources, see [`crate::source`], beside those of its formulas.
    pub sources: &'static [&'static str],
    /// Its cautions, beside those of its formulas, see [`crate::caution`].
    pub cautions: &'static [&'static str],
    #[doc(hidden)]
    pub runs: Runs,
}

/// The ways to run a calculation.
#[derive(Clone, Copy)]
pub struct Runs {
    solve: fn(&'static Calculation, Given) -> Result<Solved>,
    record: fn(&Given) -> Result<solved::Record>,
    cases: fn(&'static Calculation, &Given, GoOn<'_>) -> Result<Cases>,
    report: fn(&Given) -> Option<Report>,
    changed: fn(&Given, &str) -> Vec<Change>,
}

impl Runs {
    /// Those of a body.
    pub const fn of<C: Chain>() -> Runs {
        Runs {
            solve: solved::solve::<C>,
            record: solved::record::<C>,
            cases: cases::cases::<C>,
            report: solved::report::<C>,
            changed: changed::changed::<C>,
        }
    }
}

/// The body of a calculation and what belongs to it; made by `#[calculation]`.
pub trait Chain: 'static {
    /// What it asks.
    type Inputs<N>;
    /// What it answers.
    type Results<N>;
    /// Reads the inputs.
    fn take(source: &mut impl Source) -> Result<Self::Inputs<Place>>;
    /// The same inputs over another number.
    fn map<A, B>(inputs: &Self::Inputs<A>, to: &mut impl FnMut(&A) -> B) -> Self::Inputs<B>;
    /// The chain of formulas.
    fn body<N: Number>(given: &Self::Inputs<N>) -> Self::Results<N>;
    /// Lays the results out.
    fn show<N>(found: &Self::Results<N>, sheet: &mut impl Sheet<N>);
    /// What is refused, warned of and noted once the numbers are known.
    fn check(
        _given: &Self::Inputs<f64>,
        _found: &Self::Results<f64>,
        _check: &mut Check<'_>,
    ) -> Result<()> {
        Ok(())
    }
    /// A report with a layout of its own.
    fn report(
        _given: &Self::Inputs<f64>,
        _found: &Self::Results<f64>,
        _check: &Check<'_>,
    ) -> Option<Report> {
        None
    }
}

impl std::fmt::Debug for Calculation {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

impl PartialEq for Calculation {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

impl Calculation {
    /// The room in which it stands.
    pub fn room(&self) -> &'static str {
        self.module.split("::").nth(1).unwrap_or(self.module)
    }
    /// Nothing given yet.
    pub fn blank(&self) -> Given {
        Given::new(self.name, self.inputs)
    }
    /// The results for what was given.
    pub fn solve(&'static self, given: Given) -> Result<Solved> {
        (self.runs.solve)(self, given)
    }
    /// The results for names and texts.
    pub fn solve_texts(&'static self, given: &[(&str, &str)]) -> Result<Solved> {
        self.solve(self.blank().with_texts(given)?)
    }
    /// The results for each of many cases: inputs given as columns of one length. `go_on` gets the
    /// number done so far, and stops the run by answering `false`.
    pub fn cases(&'static self, given: &Given, go_on: GoOn<'_>) -> Result<Cases> {
        (self.runs.cases)(self, given, go_on)
    }
    /// What can do harm where the results are acted on, each with its name.
    pub fn caution_lines(&self) -> Vec<String> {
        crate::caution::of(self.cautions).map(|caution| caution.line(&[])).collect()
    }
}
