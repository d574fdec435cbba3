//! Everything that can be called or looked up.

use crate::calculation::Calculation;
use crate::error::{Error, Result};

/// Every calculation, in the order of names.
pub fn calculations() -> impl Iterator<Item = &'static Calculation> {
    let mut all: Vec<&'static Calculation> = crate::mill::CALCULATIONS.concat();
    all.extend(crate::yarn::CALCULATIONS);
    all.sort_by_key(|calculation| calculation.name);
    all.into_iter()
}

/// The calculation with a name.
pub fn calculation(name: &str) -> Result<&'static Calculation> {
    let found = calculations().find(|calculation| calculation.name == name);
    found.ok_or_else(|| {
        let names: Vec<&str> = calculations().map(|calculation| calculation.name).collect();
        Error::no_such(name, &names)
    })
}
