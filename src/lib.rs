//! Yarn-and-cloth arithmetic for a small vertical woollen mill, for those who teach it and for
//! programs that need it.
//!
//! **A formula is written once, over a number. The kind of number decides what you get back.** Over
//! `f64` it gives the answer at full speed:
//!
//! ```
//! use hankwise::prelude::*;
//!
//! let single = LinearDensity::parse("16 Nm")?;
//! let two_fold = yarn::fold_alike(single, Count::base(2.0), Contraction::parse("2 %")?);
//! assert_eq!(format!("{:.1} tex", two_fold.value()), "127.6 tex");
//! # Ok::<(), Error>(())
//! ```
//!
//! Over [`worked::Worked`] it gives the same answer with every step, the sensitivity of the answer
//! to each input and a live workbook, all from one recording:
//!
//! ```
//! use hankwise::prelude::*;
//!
//! let given = [parse("16 Nm")?, parse_as("2", Kind::Count)?, parse("2 %")?];
//! let working = catalogue::formula("fold_alike")?.working(&given, &[None, None, None])?;
//! assert!(working.text().contains("T_s × N / (1 − k) = 62.5 × 2 / (1 − 0.02) = 127.6 tex"));
//! # Ok::<(), Error>(())
//! ```
//!
//! A [`plan::Plan`] reads a lot file and says what the lot makes, what to set at each machine, how
//! sure that is and where every kilogram goes.
//!
//! The rooms: [`number`] and [`worked`] (the idea), [`quantity`] (units, count and reed systems),
//! [`mod@formula`] (a formula and its card), [`mod@calculation`] (chains of them), [`handbook`] (values
//! that no formula gives), [`fibre`],
//! [`yarn`], [`cloth`], [`mill`] and [`quality`] (the trade), [`catalogue`] (all that can be
//! called or looked up, and the search), [`plan`] (the main job), [`source`] (who says
//! so), [`mod@caution`] (what can do harm),
//! [`mod@normal`], [`law`] and [`table`] (the laws of chance, tables as text and HTML), [`files`]
//! (reading and writing them).
#![forbid(unsafe_code)]

// What the macros write names the crate as others do.
extern crate self as hankwise;

pub mod calculation;
pub mod catalogue;
pub mod caution;
pub mod cloth;
mod error;
pub mod fibre;
pub mod files;
pub mod formula;
pub mod handbook;
pub(crate) mod lanes;
pub mod law;
pub mod mill;
pub mod normal;
pub mod number;
mod parts;
#[cfg(feature = "plan-file")]
pub mod plan;
pub mod prelude;
pub mod quality;
pub mod quantity;
pub mod source;
pub mod table;
mod tsv;
pub(crate) mod words;
pub mod worked;
pub mod yarn;

pub use error::{Error, ErrorKind, Result};

/// The examples of the README are run with the others.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
struct Readme;
