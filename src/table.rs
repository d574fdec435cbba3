//! Tables: the same rows as text and as HTML.

use std::fmt::Write as _;

use crate::caution::{self, Caution};
use crate::quantity::print::escape;
use crate::words::{WIDE, wrapped};

/// Where the text of a column is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// Words.
    Left,
    /// Numbers.
    Right,
}

/// A table with a heading, and words before and after it.
#[derive(Clone, Debug, Default)]
pub struct Block {
    /// The heading.
    pub title: String,
    /// Sentences before the table.
    pub lead: Vec<String>,
    /// The columns.
    pub columns: Vec<(String, Align)>,
    /// The rows.
    pub rows: Vec<Vec<String>>,
    /// Sentences after the table.
    pub foot: Vec<String>,
    /// What can do harm, set off from all the rest: text with the mark `!`, HTML in a box.
    pub cautions: Vec<String>,
}

/// Blocks in order.
#[derive(Clone, Debug, Default)]
pub struct Report {
    /// The title.
    pub title: String,
    /// The blocks.
    pub blocks: Vec<Block>,
}

impl Report {
    /// The report as plain text.
    pub fn text(&self) -> String {
        let mut out = String::new();
        if !self.title.is_empty() {
            out.push_str(&wrapped(&self.title, "", "  "));
        }
        for block in &self.blocks {
            if !out.is_empty() {
                out.push('\n');
            }
            out.push_str(&wrapped(&block.title, "", "  "));
            sentences(&mut out, &block.lead);
            block.table(&mut out);
            sentences(&mut out, &block.foot);
            for caution in &block.cautions {
                out.push_str(&wrapped(caution, "  ! ", "  !   "));
            }
        }
        out
    }
    /// The report as HTML.
    pub fn html(&self) -> String {
        let mut out = String::from("<div class=\"hankwise-plan\">");
        heading(&mut out, "h3", &self.title);
        for block in &self.blocks {
            heading(&mut out, "h4", &block.title);
            for line in &block.lead {
                let _ = write!(out, "<p>{}</p>", escape(line));
            }
            if !block.rows.is_empty() {
                out.push_str("<table><thead><tr>");
                for (name, align) in &block.columns {
                    let _ = write!(
                        out,
                        "<th style=\"text-align:{};padding:0 0.6em\">{}</th>",
                        align.css(),
                        escape(name)
                    );
                }
                out.push_str("</tr></thead><tbody>");
                for row in &block.rows {
                    out.push_str("<tr>");
                    for (cell, (_, align)) in row.iter().zip(&block.columns) {
                        let _ = write!(
                            out,
                            "<td style=\"text-align:{};padding:0 0.6em;white-space:{}\">{}</td>",
                            align.css(),
                            // A number stays with its unit.
                            if *align == Align::Right { "nowrap" } else { "pre-wrap" },
                            escape(cell)
                        );
                    }
                    out.push_str("</tr>");
                }
                out.push_str("</tbody></table>");
            }
            for line in &block.foot {
                let _ = write!(out, "<p><small>{}</small></p>", escape(line));
            }
            out.push_str(&caution::boxed(&block.cautions));
        }
        out.push_str("</div>");
        out
    }
}

/// A heading, where there is one.
fn heading(out: &mut String, tag: &str, text: &str) {
    if !text.is_empty() {
        let _ = write!(out, "<{tag}>{}</{tag}>", escape(text));
    }
}

/// Sentences before or after a table, each on lines of its own.
fn sentences(out: &mut String, sentences: &[String]) {
    for sentence in sentences {
        out.push_str(&wrapped(sentence, "  ", "    "));
    }
}

impl Align {
    const fn css(self) -> &'static str {
        match self {
            Align::Left => "left",
            Align::Right => "right",
        }
    }
}

impl Block {
    /// A table with a heading.
    pub(crate) fn of(
        title: impl Into<String>,
        columns: &[(&str, Align)],
        rows: Vec<Vec<String>>,
    ) -> Block {
        let columns = columns.iter().map(|(name, align)| ((*name).to_owned(), *align)).collect();
        Block { title: title.into(), columns, rows, ..Block::default() }
    }
    /// What can do harm, with the head that says what cautions are.
    pub(crate) fn cautions<'c>(cautions: impl Iterator<Item = &'c Caution>) -> Option<Block> {
        Block::caution_lines(cautions.map(|caution| caution.line(&[])).collect())
    }
    /// What can do harm, from lines, with that head; nothing for none.
    pub fn caution_lines(lines: Vec<String>) -> Option<Block> {
        (!lines.is_empty()).then(|| Block {
            title: "Cautions".to_owned(),
            lead: vec![caution::HEAD.to_owned()],
            cautions: lines,
            ..Block::default()
        })
    }
    /// The heads of the columns broken between words, where they are wider than what is below
    /// them; the last lines are next to the rows.
    fn broken_heads(&self) -> Vec<Vec<String>> {
        let broken = |column: usize| -> Vec<String> {
            let head = &self.columns[column].0;
            let cells = self.rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0);
            let word = head.split(' ').map(|word| word.chars().count()).max().unwrap_or(0);
            let room = cells.max(word);
            let mut lines: Vec<String> = Vec::new();
            for word in head.split(' ') {
                match lines.last_mut() {
                    Some(line) if line.chars().count() + 1 + word.chars().count() <= room => {
                        line.push(' ');
                        line.push_str(word);
                    }
                    _ => lines.push(word.to_owned()),
                }
            }
            lines
        };
        let heads: Vec<Vec<String>> = (0..self.columns.len()).map(broken).collect();
        let lines = heads.iter().map(Vec::len).max().unwrap_or(0);
        let line = |at: usize| {
            let cell = |head: &Vec<String>| {
                let skip = lines - head.len();
                at.checked_sub(skip).map_or_else(String::new, |at| head[at].clone())
            };
            heads.iter().map(cell).collect()
        };
        (0..lines).map(line).collect()
    }
    fn table(&self, out: &mut String) {
        if self.rows.is_empty() {
            return;
        }
        let mut heads: Vec<Vec<String>> =
            vec![self.columns.iter().map(|(name, _)| name.clone()).collect()];
        let widths = |heads: &[Vec<String>]| -> Vec<usize> {
            let width = |column: usize| {
                let cells = heads.iter().chain(&self.rows).map(|row| row[column].chars().count());
                cells.max().unwrap_or(0)
            };
            (0..self.columns.len()).map(width).collect()
        };
        // A note that does not fit beside its row goes under it.
        let noted = self.columns.last().is_some_and(|(head, _)| head == "note");
        let mut wide = widths(&heads);
        let counted = wide.len() - usize::from(noted);
        let total = |wide: &[usize]| wide[..counted].iter().map(|width| width + 2).sum::<usize>();
        if total(&wide) > WIDE {
            // Only where that makes it fit.
            let broken = self.broken_heads();
            let narrow = widths(&broken);
            if total(&narrow) <= WIDE {
                (heads, wide) = (broken, narrow);
            }
        }
        let widths = wide;
        if heads.iter().flatten().all(String::is_empty) {
            heads.clear();
        }
        for row in heads.iter().chain(&self.rows) {
            let mut line = String::from("  ");
            let beside: usize = widths.iter().rev().skip(1).map(|width| width + 2).sum();
            let note = row.last().filter(|note| noted && beside + note.chars().count() + 2 > WIDE);
            let cells = &row[..row.len() - usize::from(note.is_some())];
            for ((cell, (_, align)), width) in cells.iter().zip(&self.columns).zip(&widths) {
                let room = " ".repeat(width - cell.chars().count());
                match align {
                    Align::Left => line.extend([cell.as_str(), room.as_str(), "  "]),
                    Align::Right => line.extend([room.as_str(), cell.as_str(), "  "]),
                }
            }
            let _ = writeln!(out, "{}", line.trim_end());
            if let Some(note) = note.filter(|note| !note.is_empty()) {
                let indent = " ".repeat(widths[0] + 6);
                out.push_str(&wrapped(note, &indent, &indent));
            }
        }
    }
}
