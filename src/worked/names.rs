//! What the lines of a working are called: no word stands for two values.

use std::collections::{BTreeMap, BTreeSet};

use super::lines::subscript;
use super::tape::{Arg, Recording};

/// What is known of a step that the recording left without a label.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Said {
    pub(super) unit: &'static str,
    pub(super) meaning: &'static str,
}

/// The names and symbols of steps.
#[derive(Debug, Default)]
pub(super) struct Names {
    /// Name and symbol; the symbol is the name where it has none of its own.
    words: BTreeMap<usize, [String; 2]>,
    said: BTreeMap<usize, Said>,
}

impl Names {
    /// Of the steps that have a line.
    pub(super) fn of(recording: &Recording, steps: impl Iterator<Item = usize>) -> Names {
        let (spare, said) = spare(recording);
        // The key and the symbol that each would have.
        let wanted: BTreeMap<usize, [String; 2]> = steps
            .map(|step| {
                let label = recording.labels.get(&step);
                let key = label.map(|l| l.key.clone()).unwrap_or_default();
                let symbol = label.map(|l| l.symbol.clone()).filter(|symbol| !symbol.is_empty());
                let symbol = symbol.or_else(|| spare.get(&step).cloned()).unwrap_or_default();
                (step, [key, symbol])
            })
            .collect();
        let mut times: BTreeMap<&str, usize> = BTreeMap::new();
        for words in wanted.values() {
            let distinct: BTreeSet<&str> = words.iter().map(String::as_str).collect();
            for word in distinct {
                *times.entry(word).or_default() += 1;
            }
        }
        let mut taken: BTreeSet<String> = times.keys().map(|word| (*word).to_owned()).collect();
        let alone = |word: &str| times.get(word) == Some(&1);
        // Of what was given and comes out again, what comes out has the name.
        let last: BTreeMap<&str, usize> =
            wanted.iter().map(|(step, [key, _])| (key.as_str(), *step)).collect();
        let mut words = BTreeMap::new();
        for (step, [key, symbol]) in &wanted {
            // A key keeps its word before any symbol does.
            let name = if key.is_empty() {
                match symbol.as_str() {
                    "" => format!("step {step}"),
                    symbol if alone(symbol) => symbol.to_owned(),
                    symbol => numbered(symbol, &mut taken),
                }
            } else if last.get(key.as_str()) == Some(step) {
                key.clone()
            } else if taken.insert(format!("{key} as given")) {
                format!("{key} as given")
            } else {
                numbered(key, &mut taken)
            };
            let own = !symbol.is_empty() && alone(symbol);
            words.insert(*step, [name.clone(), if own { symbol.clone() } else { name }]);
        }
        Names { words, said }
    }
    /// The full name of a step.
    pub(super) fn name(&self, recording: &Recording, step: usize) -> String {
        match self.words.get(&step) {
            Some([name, _]) => name.clone(),
            None => recording.labels.get(&step).map_or_else(String::new, |l| l.name().to_owned()),
        }
    }
    /// Its symbol, or its name where no symbol is its own.
    pub(super) fn symbol(&self, recording: &Recording, step: usize) -> String {
        match self.words.get(&step) {
            Some([_, symbol]) => symbol.clone(),
            None => recording.labels.get(&step).map_or_else(String::new, |l| l.symbol.clone()),
        }
    }
    /// What formulas say of a step that has no label.
    pub(super) fn said(&self, step: usize) -> Said {
        self.said.get(&step).copied().unwrap_or_default()
    }
}

/// What the formulas call and say of the steps that go in and come out.
fn spare(recording: &Recording) -> (BTreeMap<usize, String>, BTreeMap<usize, Said>) {
    let mut symbols = BTreeMap::new();
    let mut said = BTreeMap::new();
    for (result, call) in &recording.calls {
        let output = &call.formula.output;
        symbols.entry(*result).or_insert_with(|| output.symbol.to_owned());
        let meaning = call.formula.summary.trim_end_matches('.');
        said.entry(*result).or_insert(Said { unit: output.kind.base(), meaning });
        for (place, arg) in call.inputs.iter().enumerate() {
            if let Arg::Step(step) = arg {
                let input = call.formula.input(place, call.inputs.len());
                symbols.entry(*step).or_insert_with(|| call.symbol(place));
                let unit = input.kind.base();
                said.entry(*step).or_insert(Said { unit, meaning: input.meaning });
            }
        }
    }
    (symbols, said)
}

/// The word with the next free number below it; with a letter where it has a number already.
fn numbered(word: &str, taken: &mut BTreeSet<String>) -> String {
    let ends_in_number = word.ends_with(|c: char| "₀₁₂₃₄₅₆₇₈₉′".contains(c) || c.is_ascii_digit());
    let candidates = (1..).map(|k| match (ends_in_number, k) {
        (true, 1..=26) => format!("{word}{}", char::from(b'a' + (k - 1) as u8)),
        (true, _) => format!("{word}.{k}"),
        (false, _) => format!("{word}{}", subscript(k)),
    });
    let free = candidates.into_iter().find(|c| !taken.contains(c)).unwrap_or_default();
    taken.insert(free.clone());
    free
}
