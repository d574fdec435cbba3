//! What a search found, as text and as HTML.

use std::fmt::Write as _;

use super::entry::{Entry, EntryKind, Face};
#[cfg(feature = "plan-file")]
use crate::calculation::described;
use crate::quantity::print::escape;
use crate::words::wrapped;

/// What a search found, the best first.
#[derive(Clone, Debug)]
pub struct Found {
    words: String,
    kind: Option<EntryKind>,
    hits: Vec<Entry>,
    near: Option<String>,
}

/// How many hits are shown before the rest is counted.
const SHOWN: usize = 10;

/// The keys of a stage in a lot file; empty for any other entry.
fn stage_keys(entry: &Entry) -> String {
    #[cfg(feature = "plan-file")]
    if let Entry::Stage(stage) = entry {
        let head = format!("             In a lot file, under [{}]:\n", stage.name);
        let line = |(name, says): (&str, String)| {
            wrapped(&format!("{name}: {says}"), &" ".repeat(15), &" ".repeat(17))
        };
        return head + &described(stage.asks).into_iter().map(line).collect::<String>();
    }
    let _ = entry;
    String::new()
}

/// The line of a search, as the face writes it.
fn search(face: Face, words: &str, kind: Option<EntryKind>) -> String {
    match face {
        Face::Command => {
            let words = if words.is_empty() { String::new() } else { format!(" {words}") };
            let kind = kind.map(|kind| format!(" --kind {kind}")).unwrap_or_default();
            format!("hankwise find{words}{kind}")
        }
        Face::Python => {
            let words = if words.is_empty() { String::new() } else { format!("\"{words}\"") };
            let kind = kind.map(|kind| format!("kind=\"{kind}\"")).unwrap_or_default();
            let comma = if words.is_empty() || kind.is_empty() { "" } else { ", " };
            format!("hw.find({words}{comma}{kind})")
        }
    }
}

impl Found {
    pub(super) fn new(
        words: &str,
        kind: Option<EntryKind>,
        hits: Vec<Entry>,
        near: Option<String>,
    ) -> Found {
        Found { words: words.to_owned(), kind, hits, near }
    }

    /// The hits, the best first.
    pub fn hits(&self) -> &[Entry] {
        &self.hits
    }

    /// How many there are of each kind that has any.
    pub fn kinds(&self) -> Vec<(EntryKind, usize)> {
        let count = |kind| self.hits.iter().filter(|hit| hit.kind() == kind).count();
        let all = EntryKind::all().map(|kind| (kind, count(kind)));
        all.filter(|(_, count)| *count > 0).collect()
    }

    /// Where nothing was found: a sentence, and the search that would find something.
    pub fn nothing(&self, face: Face) -> Option<String> {
        if !self.hits.is_empty() {
            return None;
        }
        if self.words.is_empty() {
            let line = search(face, "WORDS", self.kind);
            return Some(format!("a row is found by its words: {line}"));
        }
        let what = self.kind.map_or("entry", EntryKind::word);
        let said = format!("no {what} has '{}'", self.words);
        if let Some(near) = &self.near {
            let line = search(face, near, self.kind);
            return Some(format!("{said}; did you mean '{near}'? Type: {line}"));
        }
        let line = search(face, "", self.kind);
        Some(format!("{said}; write fewer or other words, or list everything: {line}"))
    }

    /// The hits for a terminal: the best ten, or all. Without words a list of everything.
    pub fn text(&self, face: Face, all: bool) -> String {
        if let Some(nothing) = self.nothing(face) {
            return wrapped(&nothing, "", "");
        }
        match (self.words.as_str(), self.kind) {
            ("", None) => self.overview(face),
            ("", Some(_)) => self.listing(),
            _ => self.best(face, if all { usize::MAX } else { SHOWN }),
        }
    }

    fn best(&self, face: Face, most: usize) -> String {
        let mut out = String::new();
        let indent = " ".repeat(13);
        for hit in self.hits.iter().take(most) {
            let line = format!("{}: {}", hit.name(), hit.summary());
            out.push_str(&wrapped(&line, &format!("{:<13}", hit.kind().word()), &indent));
            match self.kind {
                Some(EntryKind::Stage) => out.push_str(&stage_keys(hit)),
                _ => {
                    let _ = writeln!(out, "{indent}> {}", hit.line(face));
                }
            }
        }
        let more = self.hits.len().saturating_sub(most);
        if more > 0 {
            let kinds: Vec<String> =
                self.kinds().iter().map(|(kind, count)| format!("{kind} {count}")).collect();
            let all = match face {
                Face::Command => format!("{} --all", search(face, &self.words, self.kind)),
                Face::Python => {
                    format!("print({}.text())", search(face, &self.words, self.kind))
                }
            };
            let mut foot = format!("{more} more of {}. All: {all}", self.hits.len());
            if let [(first, _), _, ..] = self.kinds()[..] {
                let one = search(face, &self.words, Some(first));
                let _ = write!(foot, "; one kind: {one} ({})", kinds.join(", "));
            }
            let _ = write!(out, "\n{}", wrapped(&foot, "", ""));
        }
        out
    }

    /// How many there are of each kind, and how to see them.
    fn overview(&self, face: Face) -> String {
        let mut out = String::new();
        for (kind, count) in self.kinds() {
            let line = search(face, "", Some(kind));
            let _ = writeln!(out, "{count:>5} {:<12} {line}", kind.word());
            let _ = write!(out, "{}", wrapped(kind.about(), &" ".repeat(19), &" ".repeat(19)));
        }
        let words = search(face, "WORDS", None);
        let _ = write!(out, "\n{}", wrapped(&format!("Search all of them: {words}"), "", ""));
        out
    }

    /// All of one kind, a line each.
    fn listing(&self) -> String {
        let widest = self.hits.iter().map(|hit| hit.name().chars().count()).max();
        let width = widest.unwrap_or(0).min(26);
        let indent = " ".repeat(width + 2);
        let mut out = String::new();
        for entry in &self.hits {
            let first = format!("{:<width$}  ", entry.name());
            out.push_str(&wrapped(&entry.summary(), &first, &indent));
        }
        out
    }

    /// The hits as HTML, for a notebook.
    pub fn html(&self, face: Face) -> String {
        if let Some(nothing) = self.nothing(face) {
            return format!("<p>{}</p>", escape(&nothing));
        }
        let row = |cells: [String; 4]| {
            let cells = cells.map(|cell| escape(&cell)).join("</td><td>");
            format!("<tr><td>{cells}</td></tr>")
        };
        let rows: String = if self.words.is_empty() && self.kind.is_none() {
            let line = |(kind, count): (EntryKind, usize)| {
                let (about, next) = (kind.about().to_owned(), search(face, "", Some(kind)));
                row([kind.to_string(), count.to_string(), about, next])
            };
            self.kinds().into_iter().map(line).collect()
        } else {
            let line = |hit: &Entry| {
                row([hit.kind().to_string(), hit.name().to_owned(), hit.summary(), hit.line(face)])
            };
            self.hits.iter().map(line).collect()
        };
        format!(
            "<table><thead><tr><th>kind</th><th>name</th><th>what it is</th><th>type next</th></tr>\
             </thead><tbody>{rows}</tbody></table>"
        )
    }
}
