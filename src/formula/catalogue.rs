//! The catalogue: every formula, by name.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::Formula;
use crate::error::{Error, Result, did_you_mean};

static BY_NAME: LazyLock<BTreeMap<&'static str, &'static Formula>> = LazyLock::new(|| {
    let rooms = [
        crate::fibre::FORMULAS,
        crate::yarn::FORMULAS,
        crate::mill::FORMULAS,
        crate::cloth::FORMULAS,
    ];
    rooms.into_iter().flatten().copied().flatten().map(|f| (f.name, *f)).collect()
});

/// Every formula, in the order of names.
pub fn all() -> impl ExactSizeIterator<Item = &'static Formula> {
    BY_NAME.values().copied()
}

/// The formula with a name.
pub fn find(name: &str) -> Result<&'static Formula> {
    BY_NAME.get(name).copied().ok_or_else(|| {
        let near = did_you_mean(name, BY_NAME.keys().copied())
            .map(|n| format!("did you mean '{n}'? "))
            .unwrap_or_default();
        Error::notation(format!(
            "there is no formula '{name}'; {near}'hankwise formulas WORD' lists those with a word in them"
        ))
    })
}

/// The formulas that have every one of the words in their name, sentence, symbols or inputs.
pub fn search(words: &str) -> Vec<&'static Formula> {
    let words: Vec<String> = words.split_whitespace().map(str::to_lowercase).collect();
    all()
        .filter(|f| {
            let mut text =
                format!("{} {} {} {}", f.name, f.room(), f.summary, f.details).to_lowercase();
            for input in f.inputs {
                text.push(' ');
                text.push_str(&input.name.to_lowercase());
                text.push(' ');
                text.push_str(&input.meaning.to_lowercase());
            }
            words.iter().all(|w| text.contains(w.as_str()))
        })
        .collect()
}
