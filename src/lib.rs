//! Yarn-and-cloth arithmetic for a small vertical woollen mill, for those who teach it and for
//! programs that need it.
//!
//! One formula, one place; the kind of number decides what you get back: the answer (`f64`), or the
//! answer with its working ([`worked::Worked`]).
#![forbid(unsafe_code)]

pub mod cloth;
mod error;
pub mod fibre;
pub mod formula;
pub mod mill;
pub mod number;
pub mod quantity;
pub mod source;
pub mod worked;
pub mod yarn;

pub use error::{Error, ErrorKind, Result};
