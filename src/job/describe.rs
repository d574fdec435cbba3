//! The description of a job, as text and as HTML.

use std::fmt::Write as _;

use super::{Ask, Job, Missing};
use crate::caution;
use crate::formula::caution_lines;
use crate::quantity::print::{escape, of_kind};
use crate::words::wrapped;

impl Ask {
    /// What is done where it is not given.
    fn otherwise(&self) -> String {
        match self.missing {
            Missing::Needed(_) => "needed".to_owned(),
            Missing::Left => "may be omitted".to_owned(),
            Missing::Taken(base) => format!("{} where omitted", of_kind(base, self.kind)),
        }
    }
    /// The usual range in words.
    fn usual_words(&self) -> String {
        let (low, high) = self.usual;
        format!("{} to {}", of_kind(low, self.kind), of_kind(high, self.kind))
    }
}

impl Job {
    /// The description: what it answers, inputs with their usual ranges and the basis of these,
    /// cautions.
    ///
    /// ```
    /// let text = hankwise::catalogue::job("mule_run")?.description();
    /// assert!(text.contains("spindles"));
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn description(&self) -> String {
        let mut out = wrapped(self.summary, "", "");
        if !self.details.is_empty() {
            let _ = write!(out, "\n{}", wrapped(self.details, "", ""));
        }
        out.push_str("\nInputs:\n");
        for ask in self.asks {
            let Ask { name, symbol, words, kind, source, .. } = ask;
            let line = format!(
                "{name}: {symbol}, {words}; {} ({}; usually {}, {source})",
                ask.otherwise(),
                kind.words(),
                ask.usual_words()
            );
            out.push_str(&wrapped(&line, "    ", "        "));
        }
        out.push_str(&caution_lines(self.cautions));
        out
    }

    /// The description as HTML, for a notebook or a page.
    pub fn html(&self) -> String {
        let row = |ask: &Ask| {
            let usual = format!("{} ({})", ask.usual_words(), ask.source);
            let cells = [ask.symbol, ask.name, ask.words, &ask.otherwise(), &usual].map(escape);
            format!("<tr><td>{}</td></tr>", cells.join("</td><td>"))
        };
        let rows: String = self.asks.iter().map(row).collect();
        let cautions: Vec<String> = caution::of(self.cautions).map(|c| c.line(&[])).collect();
        format!(
            "<div><p><b>{}</b>: {}</p><table><thead><tr><th>symbol</th><th>input</th>\
             <th>what it is</th><th>needed</th><th>usual</th></tr></thead><tbody>{rows}</tbody>\
             </table>{}</div>",
            escape(self.name),
            escape(self.summary),
            caution::boxed(&cautions)
        )
    }
}
