//! What holds for a calculation whatever it is about.

use hankwise::calculation::{Given, Item, Value, flat};
use hankwise::formula::Change;
use hankwise::mill;
use hankwise::prelude::*;

const MULE: &[(&str, &str)] = &[
    ("spindles", "120"),
    ("travel", "6 ft"),
    ("cycle", "22.5 s"),
    ("count", "150 tex"),
    ("efficiency", "85 %"),
];

fn mule(more: &[(&str, &str)]) -> Result<hankwise::calculation::Solved> {
    mill::MULE.solve_texts(&[MULE, more].concat())
}

#[test]
fn results_have_their_working_and_their_place() {
    let solved =
        mule(&[("wanted_draft", "1.4"), ("yarn_mass", "30 kg"), ("package_mass", "90 g")]).unwrap();
    // 30 kg at 4.477 kg/h; 120 cops of 90 g are 10.8 kg.
    assert!((solved.find("output").unwrap().value - 4.477).abs() < 0.0005);
    assert!((solved.find("doffs").unwrap().value - 3.0).abs() < 1e-12);
    for found in solved.results() {
        let working = solved.working(&found.name).unwrap();
        assert_eq!(working.value().to_bits(), found.value.to_bits(), "{}", found.name);
    }
}

#[test]
fn a_step_of_an_input_is_calculated_anew() {
    let solved = mule(&[("yarn_mass", "30 kg")]).unwrap();
    let working = solved.working("output").unwrap();
    let said: Vec<String> = working.changes().iter().map(Change::words).collect();
    // 120 spindles × 1.8288 m × 60/22.5 draws a minute × 150 tex × 0.85 × 60 min: 4.477 kg/h, and in
    // proportion to the spindles, the travel, the count and the efficiency; in inverse to the time.
    assert_eq!(said.len(), 5, "{said:?}");
    for said_so in [
        "travel 7 ft, not 6 ft: 5.223 kg/h, not 4.477 kg/h",
        "efficiency 86 %, not 85 %: 4.530 kg/h, not 4.477 kg/h",
        "spindles 121, not 120: 4.514 kg/h, not 4.477 kg/h",
        "count 151 tex, not 150 tex: 4.507 kg/h, not 4.477 kg/h",
        "cycle 22.6 s, not 22.5 s: 4.457 kg/h, not 4.477 kg/h",
    ] {
        assert!(said.iter().any(|words| words == said_so), "{said_so}: {said:?}");
    }
    assert!(said[0].starts_with("travel"), "the greatest first: {said:?}");
}

#[test]
fn what_was_given_is_its_own_working() {
    let solved = mule(&[("delivered_length", "1.3 m")]).unwrap();
    let text = solved.working("delivered_length").unwrap().text();
    assert_eq!(text.matches("delivered_length").count(), 1, "{text}");
}

#[test]
fn what_goes_together_is_asked_together() {
    let error = mule(&[("loss", "2 %")]).unwrap_err().to_string();
    assert!(error.contains("loss was given without yarn_mass"), "{error}");
    let error =
        mule(&[("wanted_draft", "1.4"), ("delivered_length", "1.3 m")]).unwrap_err().to_string();
    assert!(error.contains("each settles the draft: omit all but one"), "{error}");
    let error = mill::MULE.solve_texts(&MULE[1..]).unwrap_err().to_string();
    assert!(
        error.contains("spindles (spindles at work) is missing; write spindles=120"),
        "{error}"
    );
    let error = mule(&[("wanted_dratf", "1.4")]).unwrap_err().to_string();
    assert!(error.contains("did you mean 'wanted_draft'?"), "{error}");
}

#[test]
fn the_nearest_owned_wheel_is_chosen() {
    let solved = mule(&[
        ("wanted_draft", "1.4"),
        ("delivered_per_tooth", "0.038 m"),
        ("delivery_wheels", "32, 34, 36"),
    ])
    .unwrap();
    // 1.8288 m / 1.4 / 0.038 m = 34.4 teeth.
    assert!((solved.find("delivery_wheel").unwrap().value - 34.0).abs() < 1e-12);
    assert!((solved.find("draft").unwrap().value - 1.8288 / (34.0 * 0.038)).abs() < 1e-12);
}

#[test]
fn a_wheel_that_is_set_needs_no_list_of_others() {
    let solved = mule(&[
        ("wanted_draft", "1.4"),
        ("delivered_per_tooth", "0.038 m"),
        ("delivery_wheel", "36"),
    ])
    .unwrap();
    assert!((solved.find("draft").unwrap().value - 1.8288 / (36.0 * 0.038)).abs() < 1e-12);
    let error = mule(&[("wanted_draft", "1.4"), ("delivery_wheel", "36")]).unwrap_err().to_string();
    assert!(error.contains("delivery_wheel was given without delivered_per_tooth"), "{error}");
}

#[test]
fn many_cases_are_the_single_ones() {
    let counts: Vec<f64> = (0..100).map(|k| 100.0 + f64::from(k)).collect();
    let mut text = MULE.to_vec();
    text.retain(|(name, _)| *name != "count");
    let mut columns = mill::MULE.blank().with_texts(&text).unwrap();
    let tex = hankwise::quantity::unit("tex", None).unwrap();
    columns.set("count", Value::Column(counts.clone(), tex)).unwrap();
    let cases = mill::MULE.cases(&columns, &mut |_| true).unwrap();
    let output = cases.columns.iter().find(|column| column.name == "output").unwrap();
    for (count, output) in counts.iter().zip(&output.values) {
        let mut given: Given = mill::MULE.blank().with_texts(&text).unwrap();
        given
            .set(
                "count",
                Value::One(hankwise::quantity::Amount { number: *count, unit: tex }, None),
            )
            .unwrap();
        let one = mill::MULE.solve(given).unwrap();
        assert_eq!(one.find("output").unwrap().value.to_bits(), output.to_bits());
    }
}

#[test]
fn no_two_inputs_of_a_calculation_have_one_symbol() {
    for calculation in hankwise::catalogue::calculations() {
        let mut symbols: Vec<&str> = Vec::new();
        for item in flat(calculation.inputs) {
            if let Item::One(input) | Item::List(input) = item {
                assert!(!symbols.contains(&input.symbol), "{calculation:?}: {}", input.symbol);
                symbols.push(input.symbol);
            }
        }
    }
}

#[test]
fn wheels_are_not_ignored_where_nothing_is_wanted_of_them() {
    let wheels = [("delivered_per_tooth", "0.038 m"), ("delivery_wheels", "32, 34, 36")];
    let error = mule(&wheels).unwrap_err().to_string();
    assert!(error.contains("write wanted_draft"), "{error}");
    let wheels = [("turns_per_tooth", "6"), ("twist_wheels", "60, 64, 68")];
    let error = mule(&wheels).unwrap_err().to_string();
    assert!(error.contains("write wanted_twist"), "{error}");
}
