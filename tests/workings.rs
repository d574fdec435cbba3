//! Every line of a working can be keyed on an ordinary calculator, no word stands for two values, and each
//! line says what it is.

use std::collections::{BTreeMap, BTreeSet};

use hankwise::calculation::Solved;
use hankwise::catalogue;
use hankwise::quantity::{Kind, parse, parse_as};
use hankwise::worked::Working;
use proptest::prelude::*;

mod at_random;
mod cases;
mod keyed;

use at_random::Random;
use cases::cases;

const LOTS: [&str; 2] =
    [include_str!("lot/whole-lot.toml"), include_str!("../examples/short-lot.toml")];

/// How many workings are drawn, and from which seed: `make fuzz` gives both.
fn asked() -> (usize, u64) {
    let number = |name: &str| std::env::var(name).ok().and_then(|text| text.parse::<u64>().ok());
    let cases = number("PROPTEST_CASES").map_or(20_000, |cases| 100 * cases as usize);
    (cases, number("PROPTEST_RNG_SEED").unwrap_or(1))
}

/// Draws workings of every formula, of every calculation and of the plan.
fn draw(mut see: impl FnMut(&str, &Working)) {
    let (workings, seed) = asked();
    let mut random = Random::new(seed);
    let (formulas, calculations) = at_random::everything();
    let mut silent: BTreeSet<&str> = formulas.iter().map(|f| f.name).collect();
    silent.extend(calculations.iter().map(|c| c.name));
    let mut of_formulas = 0;
    while of_formulas < workings / 2 {
        for formula in &formulas {
            // Where values hardly ever go together, more are tried.
            for _ in 0..if silent.contains(formula.name) { 20 } else { 1 } {
                let Some(working) = at_random::of_formula(formula, &mut random) else { continue };
                silent.remove(formula.name);
                of_formulas += 1;
                see(formula.name, &working);
                break;
            }
        }
    }
    let mut of_calculations = 0;
    while of_calculations < workings * 2 / 5 {
        for calculation in &calculations {
            for _ in 0..if silent.contains(calculation.name) { 200 } else { 1 } {
                let found = at_random::of_calculation(calculation, &mut random);
                if found.is_empty() {
                    continue;
                }
                silent.remove(calculation.name);
                of_calculations += found.len();
                for working in &found {
                    see(calculation.name, working);
                }
                break;
            }
        }
    }
    let mut of_plans = 0;
    while of_plans < workings / 10 {
        for lot in LOTS {
            let found = at_random::of_plan(lot, &mut random);
            of_plans += found.len();
            for working in &found {
                see("plan", working);
            }
        }
    }
    assert!(silent.is_empty(), "no working of {silent:?}");
}

/// What is wrong, by the formula or calculation in whose working it is.
#[derive(Default)]
struct Faults(BTreeMap<String, Vec<String>>);

impl Faults {
    fn add(&mut self, name: &str, fault: String) {
        self.0.entry(name.to_owned()).or_default().push(fault);
    }
    fn assert_none(&self, of: &str) {
        let number: usize = self.0.values().map(Vec::len).sum();
        let shown = self.0.iter().map(|(name, all)| format!("{name} ({}): {}", all.len(), all[0]));
        assert!(number == 0, "{number} {of}:\n{}", shown.collect::<Vec<_>>().join("\n"));
    }
}

#[test]
fn every_printed_line_can_be_keyed() {
    let (mut workings, mut lines, mut bad) = (0, 0, 0);
    let mut faults = Faults::default();
    draw(|name, working| {
        let found = keyed::key(&working.text());
        workings += 1;
        lines += found.lines;
        bad += usize::from(!found.faults.is_empty());
        for fault in found.faults {
            faults.add(name, format!("{} [{}]", fault.line, fault.why));
        }
    });
    println!("{workings} workings, {lines} lines; {bad} workings with a fault");
    faults.assert_none(&format!("of {lines} lines"));
}

/// A line without words, a trick of the machine, a constant of which nobody knows where it comes from.
#[test]
fn every_line_says_what_it_is() {
    let mut faults = Faults::default();
    draw(|name, working| {
        for line in working.lines() {
            let shown = || format!("{} = {} [{}]", line.symbol, line.symbols, line.note());
            if line.meaning.is_empty() || line.name.starts_with("step ") {
                faults.add(name, format!("no words: {}", shown()));
            }
            let symbols = format!(" {}", line.symbols.replace('(', " "));
            let tricks = [" 0 − ", "0.000001", "3.14159", "e−"];
            if tricks.iter().any(|trick| symbols.contains(trick)) {
                faults.add(name, format!("a trick: {}", shown()));
            }
            for constant in keyed::long_constants(&line.symbols) {
                if !line.note().contains(&constant) {
                    faults.add(name, format!("where does {constant} come from? {}", shown()));
                }
            }
        }
    });
    faults.assert_none("lines");
}

/// What is said to come of a step is what comes when the step is typed.
#[test]
fn a_step_of_an_input_is_what_a_person_would_type() {
    let mut random = Random::new(asked().1);
    let (formulas, _) = at_random::everything();
    for formula in formulas {
        let drawn = (0..4000).find_map(|_| at_random::given(formula, &mut random));
        let (given, typed) = drawn.unwrap_or_else(|| panic!("no values for {}", formula.name));
        for change in formula.changed(&given, &typed).unwrap() {
            let place = (0..given.len()).find(|place| change.was == typed[*place].clone().unwrap());
            let place = place.unwrap();
            let input = formula.input(place, given.len());
            let mut row: Vec<f64> = given.iter().map(hankwise::quantity::Amount::base).collect();
            // Two inputs may have been given alike.
            let alike =
                typed.iter().filter(|text| text.as_deref() == Some(&change.was)).count() > 1;
            row[place] = parse_as(&change.is, input.kind).unwrap().base();
            let again = formula.answer(&row).unwrap();
            let off = (again - change.answer_is).abs();
            let near = 1e-9 * again.abs().max(change.answer_was.abs());
            assert!(alike || off <= near, "{}: {}: {again}", formula.name, change.words());
            let step = (row[place] - given[place].base()).abs();
            if input.kind.family() == Kind::Fraction {
                assert!((step - 0.01).abs() < 1e-9, "{}: {}", formula.name, change.words());
            }
            if input.kind == Kind::Count {
                assert!((step - 1.0).abs() < 1e-9, "{}: {}", formula.name, change.words());
            }
        }
    }
    // The last digit that was read, in the unit that it was read in.
    let factor = catalogue::formula("twist_factor").unwrap();
    let texts = ["9.0 tpi", "22½ YSW"];
    let given = texts.map(|text| parse(text).unwrap());
    let changes = factor.changed(&given, &texts.map(|text| Some(text.to_owned()))).unwrap();
    let words: Vec<String> = changes.iter().map(hankwise::formula::Change::words).collect();
    assert!(
        words.iter().any(|words| words.starts_with("twist 9.1 tpi, not 9.0 tpi: ")),
        "{words:?}"
    );
    assert!(
        words.iter().any(|words| words.starts_with("count 23 YSW, not 22½ YSW: ")),
        "{words:?}"
    );
}

/// The same calculation with one input written otherwise.
fn with(solved: &Solved, name: &str, text: &str) -> hankwise::Result<Solved> {
    let mut given = solved.calculation().blank();
    for (other, value) in solved.given().values().filter(|(other, _)| *other != name) {
        given.set(other, value.clone())?;
    }
    given.set_text(name, text)?;
    solved.calculation().solve(given)
}

proptest! {
    #![proptest_config(cases(4))]

    /// What a working says of a step is what the calculation gives where the step is taken.
    #[test]
    fn changes_are_those_of_running_it_again(seed in any::<u64>()) {
        let mut random = Random::new(seed);
        let mut compared = 0;
        for calculation in catalogue::calculations() {
            let Some(solved) = at_random::solved(calculation, &mut random) else { continue };
            for found in solved.results() {
                let working = solved.working(&found.name).unwrap();
                for change in working.changes() {
                    prop_assert!((change.answer_was - found.value).abs() <= 1e-12 * found.value.abs());
                    if change.input.contains(['.', '[']) {
                        continue;
                    }
                    // Nine digits are said of a value that was not typed.
                    let again = with(&solved, &change.input, &change.is).unwrap();
                    let again = again.find(&found.name).unwrap().value;
                    prop_assert!(
                        (again - change.answer_is).abs() <= 1e-6 * again.abs().max(found.value.abs()),
                        "{}, {}: {}; run again it is {again}",
                        calculation.name, found.name, change.words()
                    );
                    compared += 1;
                }
            }
        }
        prop_assert!(compared > 100, "{compared}");
    }
}
