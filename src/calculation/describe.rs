//! What a calculation is, for a person: as text and as HTML.

use std::fmt::Write as _;

use super::Calculation;
use super::card::{Input, Item, Output, flat};
use crate::caution;
use crate::quantity::print::escape;
use crate::source::titles;
use crate::words::wrapped;

/// One line about an input: name, symbol, what it is, what is usual, the default when omitted.
struct Line {
    name: &'static str,
    symbol: &'static str,
    meaning: String,
    usual: String,
    otherwise: String,
}

fn line(item: &Item) -> Line {
    let of = |input: &Input, list: bool| Line {
        name: input.name,
        symbol: input.symbol,
        meaning: if list { format!("{}, a list", input.meaning) } else { input.meaning.to_owned() },
        usual: input.usual_words(),
        otherwise: match input.default_words() {
            Some(default) => format!("default {default}"),
            None if item.is_needed() => "needed".to_owned(),
            None => "optional".to_owned(),
        },
    };
    let plain = |usual: String| Line {
        name: item.name(),
        symbol: "",
        meaning: item.meaning().to_owned(),
        usual,
        otherwise: if item.is_needed() { "needed" } else { "optional" }.to_owned(),
    };
    match item {
        Item::One(input) => of(input, false),
        Item::List(input) => of(input, true),
        Item::Word(word) => {
            let words: Vec<&str> = word.words.iter().map(|(word, _)| *word).collect();
            plain(words.join(" or "))
        }
        Item::Parts(parts) => plain(format!("such as {}; {} sets one", parts.like, parts.set)),
        Item::Rows(rows) => {
            let asked = flat(rows.items);
            let names: Vec<&str> = asked.iter().map(Item::name).collect();
            plain(format!("each with {}", names.join(", ")))
        }
        Item::Flag(..) => plain("yes or no".to_owned()),
        Item::Text(_) | Item::Group(_) | Item::Choice(_) => plain(String::new()),
    }
}

/// The results, each with what it is; of rows also the names of what each has.
fn answered(outputs: &[Output]) -> Vec<(String, String)> {
    let mut all = Vec::new();
    for output in outputs {
        match output {
            Output::Block(_) => {}
            Output::One(answer) => all.push((answer.name.to_owned(), answer.meaning.to_owned())),
            Output::List(answer) => {
                all.push((format!("{}[…]", answer.name), answer.meaning.to_owned()));
            }
            Output::Part { outputs, .. } => all.extend(answered(outputs)),
            Output::Rows { name, meaning, outputs, .. } => {
                let each: Vec<String> =
                    answered(outputs).into_iter().map(|(name, _)| name).collect();
                all.push(((*name).to_owned(), format!("{meaning}; each with {}", each.join(", "))));
            }
        }
    }
    all
}

/// What is asked, one after another: the name and what it is, whether it is needed, what is usual.
pub fn described(items: &[Item]) -> Vec<(&'static str, String)> {
    flat(items).iter().map(|item| (item.name(), said(&line(item)))).collect()
}

fn said(Line { symbol, meaning, usual, otherwise, .. }: &Line) -> String {
    let symbol = if symbol.is_empty() { String::new() } else { format!(" ({symbol})") };
    let usual = match usual.as_str() {
        "" => String::new(),
        usual if usual.contains(" to ") => format!("; usually {usual}"),
        other => format!("; {other}"),
    };
    format!("{meaning}{symbol}; {otherwise}{usual}")
}

impl Calculation {
    /// What it answers, what it asks, its results, its cautions.
    pub fn description(&self) -> String {
        let part = |title: &str, lines: &mut dyn Iterator<Item = String>| {
            let lines: String = lines.map(|line| wrapped(&line, "    ", "        ")).collect();
            if lines.is_empty() { lines } else { format!("\n{title}:\n{lines}") }
        };
        let list = |all: &[&str]| all.iter().map(|one| (*one).to_owned()).collect::<Vec<_>>();
        let inputs = described(self.inputs).into_iter();
        let results = answered(self.outputs).into_iter();
        let cautions = format!("Cautions: {}", caution::HEAD);
        let mut out = wrapped(self.summary, "", "");
        for paragraph in self.details.split("\n\n").filter(|paragraph| !paragraph.is_empty()) {
            let _ = write!(out, "\n{}", wrapped(paragraph, "", ""));
        }
        out += &part("Inputs", &mut inputs.map(|(name, says)| format!("{name}: {says}")));
        let given = "Results, where their inputs are given";
        out += &part(given, &mut results.map(|(name, meaning)| format!("{name}: {meaning}")));
        out += &part("Limits", &mut list(self.limits).into_iter());
        out += &part("Slips", &mut list(self.slips).into_iter());
        let beware = self.caution_lines().into_iter().map(|line| format!("! {line}"));
        out += &part(cautions.trim_end_matches('.'), &mut { beware });
        if !self.sources.is_empty() {
            let _ = write!(out, "\n{}", wrapped(&self.sources_line(), "", ""));
        }
        if !self.example.is_empty() {
            let _ = writeln!(out, "\n{}", self.example);
        }
        out
    }
    /// The sources beside those of its formulas, each with its basis, in a sentence.
    fn sources_line(&self) -> String {
        format!("Sources, beside those of its formulas: {}.", titles(self.sources))
    }
    /// The same as HTML.
    pub fn html(&self) -> String {
        let sources = if self.sources.is_empty() {
            String::new()
        } else {
            format!("<p><small>{}</small></p>", escape(&self.sources_line()))
        };
        let inputs = flat(self.inputs);
        let inputs = inputs.iter().map(|item| {
            let Line { name, symbol, meaning, usual, otherwise } = line(item);
            [symbol, name, &meaning, &otherwise, &usual].map(escape)
        });
        let results = answered(self.outputs);
        let results = results.iter().map(|(name, meaning)| [name, meaning].map(|s| escape(s)));
        format!(
            "<div><p><b>{}</b>: {}</p>{}{}{}{sources}</div>",
            escape(self.name),
            escape(self.summary),
            table(["symbol", "input", "what it is", "if omitted", "usual"], inputs),
            table(["result", "what it is"], results),
            caution::boxed(&self.caution_lines())
        )
    }
}

/// Cells in HTML as a table.
fn table<const K: usize>(heads: [&str; K], rows: impl Iterator<Item = [String; K]>) -> String {
    let row = |cells: &[String], tag: &str| {
        let cells: Vec<String> =
            cells.iter().map(|cell| format!("<{tag}>{cell}</{tag}>")).collect();
        let cells = cells.concat();
        format!("<tr>{cells}</tr>")
    };
    let body: String = rows.map(|cells| row(&cells, "td")).collect();
    let head = row(&heads.map(str::to_owned), "th");
    format!("<table><thead>{head}</thead><tbody>{body}</tbody></table>")
}
