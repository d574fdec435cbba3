//! The description of a formula, as text and as HTML.

use std::fmt::Write as _;

use super::{Formula, Input, Solved};
use crate::caution;
use crate::quantity::print::{escape, of_kind};
use crate::source::source;
use crate::words::wrapped;

/// The basis of the usual range of an input.
pub(crate) const BASIS: &str = "common practice";

/// How many values from outside a formula is checked against, by where they come from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Checks {
    /// Printed in the source that is cited.
    pub published: usize,
    /// Worked out by hand from the definition.
    pub computed: usize,
    /// From the custom of the trade.
    pub practice: usize,
    /// From memory.
    pub memory: usize,
}

/// Written by `make checks` from the rows of `tests/published`.
const CHECKS: &str = include_str!("checks.csv");

impl Checks {
    /// In words: `5 published values and 1 worked out from the definition`.
    fn words(self) -> String {
        let parts = [
            (self.published, "published"),
            (self.computed, "worked out from the definition"),
            (self.practice, "from the custom of the trade"),
            (self.memory, "from memory"),
        ];
        let parts: Vec<String> =
            parts.iter().filter(|(n, _)| *n > 0).map(|(n, what)| format!("{n} {what}")).collect();
        match parts.split_last() {
            None => String::new(),
            Some((only, [])) => only.clone(),
            Some((last, before)) => format!("{} and {last}", before.join(", ")),
        }
    }
}

impl Input {
    /// How it is given: alone, as a list, as the shares of one whole.
    const fn form(&self) -> &'static str {
        match (self.many, self.whole) {
            (_, true) => " (list, sums to 1)",
            (true, _) => " (list)",
            _ => "",
        }
    }
    /// The usual range in words.
    fn usual_words(&self) -> String {
        let (low, high) = self.usual;
        format!("{} to {}", of_kind(low, self.kind), of_kind(high, self.kind))
    }
}

impl Formula {
    /// How many values from outside it is checked against.
    pub fn checks(&self) -> Checks {
        let mut rows = CHECKS.lines().map(|line| line.split(','));
        let row = rows.find_map(|mut row| (row.next() == Some(self.name)).then_some(row));
        let mut numbers = row.into_iter().flatten().map(|n| n.parse().unwrap_or(0));
        let mut next = || numbers.next().unwrap_or(0);
        Checks { published: next(), computed: next(), practice: next(), memory: next() }
    }

    /// Titles of the sources, in a sentence.
    fn sources_line(&self) -> String {
        let title = |key: &&'static str| source(key).map_or(*key, |s| s.title);
        let all: Vec<&str> = self.sources.iter().map(title).collect();
        format!("Sources: {}.", all.join("; "))
    }

    /// The checks in a sentence; empty without any.
    fn checks_line(&self) -> String {
        match self.checks().words() {
            none if none.is_empty() => none,
            words => format!("Checked against values from outside: {words}."),
        }
    }

    /// The formulas that solve the same relation for its other quantities, in a sentence; empty
    /// without any.
    fn solved_line(&self) -> String {
        let mut said = String::new();
        for (place, Solved { unknown, by }) in self.solved_for.iter().enumerate() {
            let (before, same) =
                if place == 0 { ("Also: ", "the same solved ") } else { ("; ", "") };
            let _ = write!(said, "{before}{}, {same}for {unknown}", by.name);
        }
        if said.is_empty() { said } else { said + "." }
    }

    /// What the result is: symbol, kind, unit.
    fn result_line(&self) -> String {
        let (kind, base) = (self.output.kind, self.output.kind.base());
        let unit = if base.is_empty() { String::new() } else { format!(", in {base}") };
        format!("{}, {}{unit}", self.output.symbol, kind.words())
    }

    /// The description: what it says, equation, its inverses, inputs with their usual ranges and the basis of these,
    /// limits, slips, cautions, sources, checks.
    ///
    /// ```
    /// let text = hankwise::catalogue::formula("twist_factor")?.description();
    /// assert!(text.contains("K = t / 100 × √T"));
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn description(&self) -> String {
        let indent = "    ";
        let deeper = "        ";
        let mut out = wrapped(self.summary, "", "");
        if !self.details.is_empty() {
            let _ = write!(out, "\n{}", wrapped(self.details, "", ""));
        }
        out.push('\n');
        for equation in self.equations() {
            out.push_str(&wrapped(&equation, indent, deeper));
        }
        let solved = self.solved_line();
        if !solved.is_empty() {
            let _ = write!(out, "\n{}", wrapped(&solved, "", ""));
        }
        let _ = writeln!(out, "\nInputs (usual ranges: {BASIS}):");
        for input in self.inputs {
            let Input { name, symbol, meaning, kind, .. } = input;
            let line = format!(
                "{name}{}: {symbol}, {meaning} ({}; usually {})",
                input.form(),
                kind.words(),
                input.usual_words()
            );
            out.push_str(&wrapped(&line, indent, deeper));
        }
        let _ = write!(out, "\nResult:\n{}", wrapped(&self.result_line(), indent, deeper));
        for (title, list) in [("Limits", self.limits), ("Slips", self.slips)] {
            if !list.is_empty() {
                let _ = writeln!(out, "\n{title}:");
                for line in list {
                    out.push_str(&wrapped(line, indent, deeper));
                }
            }
        }
        out.push_str(&caution_lines(self.cautions));
        let _ = write!(out, "\n{}", wrapped(&self.sources_line(), "", ""));
        let checks = self.checks_line();
        if !checks.is_empty() {
            out.push_str(&wrapped(&checks, "", ""));
        }
        out
    }

    /// The description as HTML, for a notebook or a page.
    pub fn html(&self) -> String {
        let row = |i: &Input| {
            let cells = [i.symbol, i.name, i.meaning, &i.usual_words()].map(escape);
            format!("<tr><td>{}</td></tr>", cells.join("</td><td>"))
        };
        let rows: String = self.inputs.iter().map(row).collect();
        let listed = |title: &str, lines: &[&str]| match lines.len() {
            0 => String::new(),
            _ => format!(
                "<p>{title}:</p><ul><li>{}</li></ul>",
                escape(&lines.join("\n")).replace('\n', "</li><li>")
            ),
        };
        let foot: Vec<String> = [self.solved_line(), self.sources_line(), self.checks_line()]
            .iter()
            .filter(|line| !line.is_empty())
            .map(|line| escape(line))
            .collect();
        format!(
            "<div><p><b>{}</b>: {}</p><p>{}<br><small>{}</small></p><table><thead><tr>\
             <th>symbol</th><th>input</th><th>what it is</th><th>usual ({BASIS})</th></tr></thead>\
             <tbody>{rows}</tbody></table>{}{}{}<p><small>{}</small></p></div>",
            escape(self.name),
            escape(self.summary),
            escape(&self.equations().join("; ")),
            escape(&self.result_line()),
            listed("Limits", self.limits),
            listed("Slips", self.slips),
            caution::boxed(&self.caution_lines()),
            foot.join("<br>")
        )
    }
}

/// The cautions of a description, under the head that says who decides; nothing for none.
pub(crate) fn caution_lines(names: &[&str]) -> String {
    let mut out = String::new();
    for caution in caution::of(names) {
        if out.is_empty() {
            let _ = write!(out, "\n{}", wrapped(caution::HEAD, "Cautions: ", "    "));
        }
        out.push_str(&wrapped(&caution.line(&[]), "    ! ", "      "));
    }
    out
}
