//! Count systems of the user's own, from a file, or from the table `[counts]` of a lot file.

use std::path::Path;

use super::file::{File, Section};
use crate::error::{Error, Result, unreadable};
use crate::quantity::counts::System;
use crate::quantity::{Definition, Kind, define_all, parse_as};

/// Defines the count systems of a file: a table for each, all of them or none.
pub fn load_counts(path: &Path) -> Result<Vec<&'static System>> {
    let text = std::fs::read_to_string(path)
        .map_err(|e| Error::plan(format!("{}: {}", path.display(), unreadable(&e))))?;
    let file = File::parse(&path.display().to_string(), &text)?;
    let root = file.root();
    // As it is in a lot file: `[counts.our-cut]`.
    let counts = match root.keys().as_slice() {
        [only] if only == "counts" => root.section(only)?,
        _ => root,
    };
    read_counts(&counts)
}

/// Defines the count systems that are in a section, each in a table of its own.
pub(super) fn read_counts(section: &Section<'_>) -> Result<Vec<&'static System>> {
    let names = section.keys();
    let tables = names.iter().map(|n| section.section(n)).collect::<Result<Vec<_>>>()?;
    let read = |(name, table): (&String, &Section<'_>)| -> Result<Definition> {
        let quantity = |key: &str, what: &str, example: &str, kind: Kind| {
            let text = table.text(key, what, example)?;
            parse_as(&text, kind).map(|_| text).map_err(|e| table.placed(key, &e))
        };
        let text = |key: &str| table.text_or_none(key).map(Option::unwrap_or_default);
        let definition = Definition {
            name: name.clone(),
            names: table.texts("names")?.unwrap_or_default(),
            length: quantity("length", "the length of the hank", "\"300 yd\"", Kind::Length)?,
            mass: quantity("mass", "the mass of the definition", "\"26 oz\"", Kind::Mass)?,
            direct: table.flag("direct")?,
            source: text("source")?,
            country: text("country")?,
            date: text("date")?,
        };
        table.finish()?;
        Ok(definition)
    };
    let all = names.iter().zip(&tables).map(read).collect::<Result<Vec<_>>>()?;
    define_all(&all).map_err(|refused| match refused.key {
        "" => section.placed(&names[refused.which], &refused.error),
        key => tables[refused.which].placed(key, &refused.error),
    })
}
