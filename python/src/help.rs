//! Help from the card of a formula.

use std::fmt::Write as _;

use hankwise::caution;
use hankwise::quantity::print;

use crate::formula::Formula;

impl Formula {
    pub(crate) fn sources_line(&self) -> String {
        let all: Vec<String> = self
            .card
            .sources
            .iter()
            .map(|key| {
                hankwise::source::source(key).map_or((*key).to_owned(), |s| s.title.to_owned())
            })
            .collect();
        format!("Sources: {}.", all.join("; "))
    }

    /// Help from the card.
    pub(crate) fn help(&self) -> String {
        let card = self.card;
        let mut out = format!("{}\n\n", card.summary);
        if !card.details.is_empty() {
            let _ = write!(out, "{}\n\n", card.details);
        }
        for equation in card.equations() {
            let _ = writeln!(out, "    {equation}");
        }
        out.push_str("\nInputs:\n");
        for input in card.inputs {
            let (low, high) = input.usual;
            let _ = writeln!(
                out,
                "    {}{}: {}, {} ({}; usually {} to {})",
                input.name,
                match (input.many, input.whole) {
                    (_, true) => " (list, sums to 1)",
                    (true, _) => " (list)",
                    _ => "",
                },
                input.symbol,
                input.meaning,
                input.kind.words(),
                print::of_kind(low, input.kind),
                print::of_kind(high, input.kind)
            );
        }
        let unit = card.output.kind.base();
        let unit = if unit.is_empty() { String::new() } else { format!(", in {unit}") };
        let _ = write!(
            out,
            "\nResult:\n    {}, {}{unit}\n",
            card.output.symbol,
            card.output.kind.words()
        );
        for (title, list) in [("Limits", card.limits), ("Slips", card.slips)] {
            if !list.is_empty() {
                let _ = write!(out, "\n{title}:\n");
                for line in list {
                    let _ = writeln!(out, "    {line}");
                }
            }
        }
        let cautions: Vec<String> = card.caution_lines();
        if !cautions.is_empty() {
            let _ = writeln!(out, "\nCautions: {}", caution::HEAD);
            for line in &cautions {
                let _ = writeln!(out, "    ! {line}");
            }
        }
        let _ = write!(out, "\n{}\n", self.sources_line());
        out
    }
}
