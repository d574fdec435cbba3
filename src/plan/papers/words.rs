//! What values and stages are called on paper: in words, never by a name that a program knows.

use crate::plan::Plan;
use crate::plan::result::PlanResult;
use crate::table::Block;

/// A part of a lot or mill file in words: `weft.card` is the weft at the card, `goods.throw` the goods throw.
pub(super) fn place(path: &str) -> String {
    path.replace('.', " ")
}

/// The names of the values and stages of a plan, and the words for each.
pub(super) struct Words(Vec<(String, String)>);

impl Words {
    pub(super) fn new(plan: &Plan, result: &PlanResult) -> Words {
        let mut all: Vec<(String, String)> = Vec::new();
        let mut add = |name: &str, meaning: &str| {
            let Some((path, _)) = name.rsplit_once('.') else { return };
            if all.iter().all(|(known, _)| known != name) {
                all.push((name.to_owned(), format!("{}, {meaning}", place(path))));
            }
        };
        for given in plan.given() {
            add(&given.key, given.meaning);
        }
        for label in result.recording().labels.values() {
            add(label.name(), &label.meaning);
        }
        for stage in &result.stages {
            if stage.name.contains('.') {
                all.push((stage.name.clone(), stage_words(&stage.machine, &stage.of)));
            }
        }
        // A longer name may have a shorter one in it.
        all.sort_by_key(|(name, _)| std::cmp::Reverse(name.len()));
        Words(all)
    }

    /// A text in which every name is replaced by its words.
    pub(super) fn plain(&self, text: &str) -> String {
        let mut text = text.to_owned();
        if text.contains('.') {
            for (name, words) in &self.0 {
                if text.contains(name.as_str()) {
                    text = text.replace(name.as_str(), words);
                }
            }
        }
        text
    }
    /// A table in words.
    pub(super) fn block(&self, block: Block) -> Block {
        let all = |texts: Vec<String>| texts.iter().map(|text| self.plain(text)).collect();
        Block {
            title: self.plain(&block.title),
            lead: all(block.lead),
            rows: block.rows.into_iter().map(all).collect(),
            foot: all(block.foot),
            ..block
        }
    }
}

/// A stage and what is in it: `card, weft`.
pub(super) fn stage_words(machine: &str, of: &str) -> String {
    if of.is_empty() { machine.to_owned() } else { format!("{machine}, {of}") }
}
