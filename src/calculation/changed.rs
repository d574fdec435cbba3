//! What an input changed by a step that can happen does to a result.

use super::Chain;
use super::check::Check;
use super::given::{Given, Reader};
use super::say::Say;
use super::sheet::Plain;
use super::solved::{Asked, possible};
use crate::formula::{Change, greatest_first, steps};

/// What a step of each input does to a result, the greatest change first: the whole calculation is run
/// again, with that one input changed and all else as it was. Left out are inputs that nobody gave or that
/// do not change the result, and steps that the calculation refuses.
pub(super) fn changed<C: Chain>(given: &Given, name: &str) -> Vec<Change> {
    let mut reader = Reader::new(given);
    let Ok(inputs) = C::take(&mut reader) else { return Vec::new() };
    let entries = reader.entries;
    let base: Vec<f64> = entries.iter().map(|entry| entry.amount.base()).collect();
    let say = Say::of(&entries);
    let context = Asked { say: &say, given };
    let run = |base: &[f64]| {
        let plain = C::map(&inputs, &mut |place| base[place.0]);
        let results = C::body(&plain);
        C::check(&plain, &results, &mut Check::new(&context)).ok()?;
        let mut sheet = Plain::default();
        C::show(&results, &mut sheet);
        let found = sheet.found.into_iter().find(|found| found.name == name)?;
        possible(&found).ok()?;
        Some((found.value, found.answer.kind.base()))
    };
    let Some((answer_was, unit)) = run(&base) else { return Vec::new() };
    let mut all = Vec::new();
    for (place, entry) in entries.iter().enumerate().filter(|(_, entry)| !entry.assumed) {
        let typed = entry.typed.as_deref();
        let taken = steps(&entry.amount, typed, entry.input.kind).into_iter().find_map(|step| {
            entry.input.check(&step, None).ok()?;
            let mut base = base.clone();
            base[place] = step.base();
            run(&base).map(|(answer, _)| (step, answer))
        });
        let Some((step, answer_is)) = taken else { continue };
        // Rounding is not a change.
        if (answer_is - answer_was).abs() <= 1e-12 * answer_was.abs() {
            continue;
        }
        let (input, answers) = (entry.key.to_string(), (answer_was, answer_is));
        all.push(Change::of(input, &entry.amount, typed, &step, answers, unit));
    }
    greatest_first(&mut all);
    all
}
