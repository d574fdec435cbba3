//! Whatever is possible for the kinds of its inputs: a formula gives what is possible for the kind of its
//! answer, or refuses and says which input to change.

mod cases;

use cases::cases;
use hankwise::catalogue;
use hankwise::formula::Formula;
use hankwise::quantity::Kind;
use proptest::prelude::*;

/// A value of a kind anywhere between what is possible at all: `at` says where, `far` how far beyond the
/// usual it may be, `wild` that it may be anything.
fn anywhere(kind: Kind, usual: (f64, f64), at: f64, wild: u8) -> f64 {
    let (low, high) = kind.possible();
    let (least, most) = (low.max(-1e6), high.min(1e6));
    match wild {
        // The ends of what is possible, and nothing at all.
        0 => least.max(1e-9_f64.min(high)).min(high).max(low),
        1 => most,
        2 if low <= 0.0 => 0.0,
        // From one end to the other, evenly and over the decades.
        3 => least + (most - least) * at,
        4 => (10_f64.powf(12.0 * at - 6.0)).clamp(least, most),
        5 if low < 0.0 => (-(10_f64.powf(12.0 * at - 6.0))).clamp(least, most),
        _ => usual.0 + (usual.1 - usual.0) * at,
    }
}

fn row(f: &Formula, at: &[(f64, u8)], list: usize) -> Vec<f64> {
    let length: usize = f.inputs.iter().map(|i| if i.many { 1 + list } else { 1 }).sum();
    let mut row: Vec<f64> = (0..length)
        .map(|place| {
            let (input, (at, wild)) = (f.input(place, length), at[place % at.len()]);
            anywhere(input.kind, input.usual, at, wild)
        })
        .collect();
    // The shares of a whole are brought to sum to it.
    for whole in f.inputs.iter().filter(|input| input.whole) {
        let places: Vec<usize> =
            (0..length).filter(|place| f.input(*place, length).name == whole.name).collect();
        let sum: f64 = places.iter().map(|place| row[*place]).sum();
        for place in &places {
            row[*place] = if sum > 0.0 { row[*place] / sum } else { 1.0 / places.len() as f64 };
        }
    }
    row
}

proptest! {
    #![proptest_config(cases(24))]

    #[test]
    fn an_answer_is_possible_or_says_what_to_change(
        at in proptest::array::uniform12((0.0..=1.0, 0_u8..12)), list in 0_usize..3,
    ) {
        for f in catalogue::formulas() {
            let row = row(f, &at, list);
            match f.answer(&row) {
                Ok(answer) => {
                    let (low, high) = f.output.kind.possible();
                    prop_assert!(answer.is_finite() && answer >= low && answer <= high, "{}", f.name);
                }
                Err(error) => {
                    let message = error.to_string();
                    let advice = ["change one: ", "change it: ", "outside its usual range: ", "look at "];
                    let advice = advice.iter().find_map(|said| message.split_once(said));
                    let named = advice.is_some_and(|(_, advice)| {
                        f.inputs.iter().any(|input| advice.contains(input.name))
                    });
                    prop_assert!(named, "{row:?}: {message}");
                }
            }
        }
    }
}
