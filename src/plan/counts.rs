//! Count systems of the user's own, from a file, or from the table `[counts]` of a lot file.

use std::path::Path;

use super::file::File;
use super::section::Section;
use crate::error::Result;
use crate::files::read_text;
use crate::quantity::counts::System;
use crate::quantity::{Definition, Kind, OwnHere, Refused, define_all, parse_as};
use crate::words::one_line;

/// Defines the count systems of a file: a table for each, all of them or none.
pub fn load_counts(path: &Path) -> Result<Vec<&'static System>> {
    let text = read_text(path)?;
    let file = File::parse("counts", &path.display().to_string(), &text)?;
    let root = Section::of(&file);
    // As it is in a lot file: `[counts.our-cut]`.
    let counts = match root.keys().as_slice() {
        [only] if only == "counts" => root.section(only)?,
        _ => root,
    };
    read_counts(&counts, define_all)
}

/// Defines the count systems that are in a section, for as long as what this gives is kept.
pub(super) fn counts_here(section: &Section<'_>) -> Result<OwnHere> {
    read_counts(section, OwnHere::define)
}

/// Reads the count systems that are in a section, each in a table of its own, and defines them.
fn read_counts<T>(
    section: &Section<'_>,
    define: impl FnOnce(&[Definition]) -> std::result::Result<T, Refused>,
) -> Result<T> {
    let names = section.keys();
    let tables = names.iter().map(|n| section.section(n)).collect::<Result<Vec<_>>>()?;
    let read = |(name, table): (&String, &Section<'_>)| -> Result<Definition> {
        let quantity = |key: &str, what: &str, example: &str, kind: Kind| {
            let text = table.text(key, what, example)?;
            parse_as(&text, kind).map(|_| text).map_err(|e| table.placed(key, &e))
        };
        let text = |key: &str| {
            let text = table.text_or_none(key)?.unwrap_or_default();
            Ok(one_line(&text).into_owned())
        };
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
    define(&all).map_err(|refused| match refused.key {
        "" => section.placed(&names[refused.which], &refused.error),
        key => tables[refused.which].placed(key, &refused.error),
    })
}
