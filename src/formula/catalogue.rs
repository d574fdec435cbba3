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
        crate::quality::FORMULAS,
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

/// The formulas that have every one of the words in their name, sentence or inputs. A word is found
/// by its beginning: `twist` finds twisted and twister, `reed` does not find agreed.
pub fn search(words: &str) -> Vec<&'static Formula> {
    all()
        .filter(|f| {
            let inputs = f.inputs.iter().flat_map(|i| [i.name, i.meaning]);
            has_words([f.name, f.room(), f.summary, f.details].into_iter().chain(inputs), words)
        })
        .collect()
}

/// True where every one of the words begins a word of the texts.
pub(crate) fn has_words<'t>(texts: impl IntoIterator<Item = &'t str>, words: &str) -> bool {
    let split = |text: &str| -> Vec<String> {
        let parts = text.split(|c: char| !c.is_alphanumeric());
        parts.filter(|part| !part.is_empty()).map(str::to_lowercase).collect()
    };
    let known: Vec<String> = texts.into_iter().flat_map(split).collect();
    split(words).iter().all(|word| known.iter().any(|k| k.starts_with(word.as_str())))
}
