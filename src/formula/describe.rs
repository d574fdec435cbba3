//! The description of a formula, as text and as HTML.

use std::fmt::Write as _;

use super::{Formula, Input, Solved};
use crate::caution;
use crate::quantity::print::{escape, of_kind};
use crate::source::{Basis, basis, cited, titles};
use crate::words::wrapped;

/// How many values from outside a formula is checked against, by what they rest on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Checks([usize; Checks::BASES.len()]);

/// Written by `make checks` from the rows of `tests/published`.
const CHECKS: &str = include_str!("checks.csv");

impl Checks {
    /// What a value from outside can rest on, in the order of the columns of `checks.csv`; what rests on a
    /// definition was worked out by hand from it.
    pub const BASES: [Basis; 6] =
        [Basis::Standard, Basis::Book, Basis::Web, Basis::Definition, Basis::Custom, Basis::Memory];

    /// How many values rest on what.
    pub fn by_basis(self) -> [(Basis, usize); Checks::BASES.len()] {
        std::array::from_fn(|place| (Checks::BASES[place], self.0[place]))
    }

    /// In words: `5 (book or paper), 2 (web page) and 1 (worked out from the definition)`.
    fn words(self) -> String {
        let words = |basis: Basis| match basis {
            Basis::Definition => "worked out from the definition",
            other => other.words(),
        };
        let some = self.by_basis().into_iter().filter(|(_, n)| *n > 0);
        let parts: Vec<String> = some.map(|(basis, n)| format!("{n} ({})", words(basis))).collect();
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
    /// The usual range in words, with what it rests on: `1 tex to 2000 tex (custom of the trade)`.
    pub(super) fn usual_words(&self) -> String {
        let (low, high) = self.usual;
        let [low, high] = [low, high].map(|end| of_kind(end, self.kind));
        format!("{low} to {high} ({})", cited(self.basis))
    }
}

impl Formula {
    /// How many values from outside it is checked against.
    pub fn checks(&self) -> Checks {
        let mut rows = CHECKS.lines().map(|line| line.split(','));
        let row = rows.find_map(|mut row| (row.next() == Some(self.name)).then_some(row));
        let mut numbers = row.into_iter().flatten().map(|n| n.parse().unwrap_or(0));
        Checks(std::array::from_fn(|_| numbers.next().unwrap_or(0)))
    }

    /// The sources, each with its basis, in a sentence; and another where none of them is firmer than a page
    /// on the web.
    fn sources_line(&self) -> String {
        let all = format!("Sources: {}.", titles(self.sources));
        let bases: Vec<Basis> = self.sources.iter().map(|key| basis(key)).collect();
        let only = match (bases.contains(&Basis::Web), bases.contains(&Basis::Memory)) {
            _ if bases.iter().any(|basis| ![Basis::Web, Basis::Memory].contains(basis)) => {
                return all;
            }
            (true, false) => "Web pages only",
            (true, true) => "Web pages and memory only",
            (false, _) => return all,
        };
        format!("{all} {only}: no book, paper or standard was read for it.")
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

    /// The description: what it says, equation, its inverses, inputs with their usual ranges and the basis of each,
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
        out.push_str("\nInputs:\n");
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
        out.push_str(&caution::described(self.cautions));
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
             <th>symbol</th><th>input</th><th>what it is</th><th>usual</th></tr></thead>\
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
