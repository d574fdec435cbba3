//! A number that remembers how it was calculated.
//!
//! Run a formula with [`Worked`] numbers on a [`Tape`] and the tape holds every step. From that one
//! recording come the [`Working`] (text, HTML, LaTeX), the sensitivity of the answer to each input
//! and the live workbook, so none of them can drift from the answer.

mod constants;
mod digits;
mod expression;
mod gradient;
mod latex;
mod lines;
mod names;
#[cfg(feature = "sheet")]
mod sheet;
mod tape;
mod working;

pub use expression::Dialect;
pub use gradient::Sensitivity;
pub(crate) use lines::subscript;
#[cfg(feature = "sheet")]
pub use sheet::{Section, StaticTable, write_sheet};
pub use tape::{Arg, Call, Label, Op, Recording, Root, Step, Tape, Worked};
pub use working::{Line, Working};
