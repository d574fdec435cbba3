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
#[cfg(feature = "plan-file")]
pub mod plan;
pub mod quantity;
pub mod source;
pub mod worked;
pub mod yarn;

pub use error::{Error, ErrorKind, Result};

/// Writes a file so that it appears whole or not at all.
#[cfg(feature = "sheet")]
pub(crate) fn write_whole(path: &std::path::Path, bytes: &[u8]) -> Result<()> {
    let refuse =
        |e: std::io::Error| Error::plan(format!("{} cannot be written: {e}", path.display()));
    let mut beside = path.as_os_str().to_owned();
    beside.push(".part");
    std::fs::write(&beside, bytes).map_err(refuse)?;
    std::fs::rename(&beside, path).map_err(|e| {
        let _ = std::fs::remove_file(&beside);
        refuse(e)
    })
}
