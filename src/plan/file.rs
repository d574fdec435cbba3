//! The text of a file, parsed: every message with its place.

use toml_edit::{Document, TableLike};

use crate::error::{Error, Result};
use crate::words::one_line;

/// So many signs are shown of a line that cannot be read.
const LONGEST: usize = 200;

/// The text of a file, parsed.
#[derive(Debug)]
pub(super) struct File {
    name: String,
    /// Whose values it has: the lot's, the mill's.
    role: &'static str,
    document: Document<String>,
    /// Where the lines begin, but for the first.
    lines: Vec<usize>,
}

impl File {
    pub(super) fn parse(role: &'static str, name: &str, text: &str) -> Result<File> {
        match Document::parse(text.to_owned()) {
            Ok(document) => {
                let lines = text.match_indices('\n').map(|(at, _)| at + 1).collect();
                Ok(File { name: one_line(name).into_owned(), role, document, lines })
            }
            Err(e) => {
                let before = e.span().map_or("", |s| &text[..s.start.min(text.len())]);
                let line = before.matches('\n').count() + 1;
                let why = e.message().lines().collect::<Vec<_>>().join(" ");
                let why = why.trim();
                let shown = text.lines().nth(line - 1).unwrap_or("").trim();
                let shown = one_line(&shown.chars().take(LONGEST).collect::<String>()).into_owned();
                let name = one_line(name);
                let write = if why.starts_with("duplicate") {
                    "it is written above already; remove one of the two"
                } else {
                    "write key = \"value\", texts in quotes"
                };
                Err(Error::plan(format!(
                    "{name}:{line}: this is not TOML ({why}): {shown}; {write}"
                )))
            }
        }
    }
    pub(super) fn line(&self, span: Option<std::ops::Range<usize>>) -> usize {
        span.map_or(1, |s| self.lines.partition_point(|begins| *begins <= s.start) + 1)
    }
    pub(super) fn place(&self, line: usize) -> String {
        format!("{}:{line}", self.name)
    }
    /// What messages call it.
    pub(super) fn name(&self) -> &str {
        &self.name
    }
    /// Whose values it has.
    pub(super) fn role(&self) -> &'static str {
        self.role
    }
    /// As it was written.
    pub(super) fn text(&self) -> &str {
        self.document.raw()
    }
    /// The whole of it.
    pub(super) fn table(&self) -> &dyn TableLike {
        self.document.as_table()
    }
}
