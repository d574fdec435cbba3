//! The working of a formula: what it shows and that it agrees with the answer.

use hankwise::catalogue;
use hankwise::quantity::{Kind, parse, parse_as};

#[test]
fn shows_the_steps_from_what_was_typed() {
    let f = catalogue::formula("twist_factor").unwrap();
    let given = [parse("9 tpi").unwrap(), parse("16 YSW").unwrap()];
    let typed = [Some("9 tpi".to_owned()), Some("16 YSW".to_owned())];
    let working = f.working(&given, &typed).unwrap();
    println!("{}\n{}\n{:?}", working.text(), working.latex(), working.sensitivities());
    println!("{:?}", catalogue::formula("mass_per_area").unwrap().equations());
    println!("{:?}", catalogue::formula("mass_before_losses").unwrap().equations());
    println!("{:?}", catalogue::formula("clean_yield_customs").unwrap().equations());
    assert!(working.text().contains("38.99"));
}

/// 2 kg held up in 40 kg are 5 %, with the 5 % that any lot loses 10 %.
#[test]
fn the_working_of_an_unknown_is_that_of_the_inverse() {
    let f = catalogue::formula("lot_loss").unwrap();
    let given = ["1 kg", "5 %", "2 kg"].map(|text| parse(text).unwrap());
    let typed = [None, Some("5 %".to_owned()), Some("2 kg".to_owned())];
    let wanted = parse("10 %").unwrap();
    let working = f.solve_working(0, &wanted, Some("10 %".to_owned()), &given, &typed).unwrap();
    assert!((working.value() - 40.0).abs() < 1e-9, "{}", working.text());
    let text = working.text();
    for part in ["smallest_lot", "h / (w_a − w)", "10 %", "5 %", "2"] {
        assert!(text.contains(part), "{part} is not in\n{text}");
    }
}

/// No formula of the catalogue gives the hold-up: what was found is put into the formula.
#[test]
fn the_working_without_an_inverse_says_what_was_found() {
    let f = catalogue::formula("lot_loss").unwrap();
    let given = ["40 kg", "5 %", "1 kg"].map(|text| parse(text).unwrap());
    let wanted = parse("10 %").unwrap();
    let working = f.solve_working(2, &wanted, Some("10 %".to_owned()), &given, &[]).unwrap();
    assert!((working.value() - 0.1).abs() < 1e-12, "{}", working.text());
    let lines = working.lines();
    let found = lines.iter().find(|line| line.name == "held_up").unwrap();
    assert!((found.value - 2.0).abs() < 1e-9);
    assert_eq!(found.origin, "found so that lot_loss is 10 %");
    // A share is shown as one, and the origin is where the unit is changed too.
    let given = ["40 kg", "1 %", "2 kg"].map(|text| parse(text).unwrap());
    let working = f.solve_working(1, &wanted, None, &given, &[]).unwrap();
    assert!(working.text().contains("found so that lot_loss is 10 %"), "{}", working.text());
    assert!((working.value() - 0.1).abs() < 1e-12);
}

#[test]
fn no_one_working_where_several_values_fit() {
    // Two standard deviations of 5 to either side of 100.
    let f = catalogue::formula("outlier_ratio").unwrap();
    let given = ["0", "100", "5"].map(|text| parse_as(text, Kind::Reading).unwrap());
    let wanted = parse_as("2", Kind::Ratio).unwrap();
    let error = f.solve_working(0, &wanted, None, &given, &[]).unwrap_err().to_string();
    assert!(error.contains("more than one reading gives 2: 90, 110"), "{error}");
}

#[test]
fn the_working_takes_the_least_of_a_stretch() {
    // No more is taken off than 15 % of 50 %, however much vegetable matter there is.
    let f = catalogue::formula("clean_yield_customs").unwrap();
    let given = ["50 %", "1 %"].map(|text| parse(text).unwrap());
    let working = f.solve_working(1, &parse("42.5 %").unwrap(), None, &given, &[]).unwrap();
    let text = working.text();
    assert!(text.contains("the least, and so is every one from 12.08 % to 100 %"), "{text}");
}

#[test]
fn the_same_step_is_recorded_once() {
    use hankwise::number::Number;
    use hankwise::worked::{Label, Tape};
    let tape = Tape::new();
    let label = |key: &str| Label { key: key.to_owned(), ..Label::default() };
    let wanted = tape.input(34.4, label("wanted"));
    let twice = |key: &str| (wanted / 2.0).chosen(17.0).labelled(|| label(key));
    // Another name is another step, the same name is not.
    let steps = ["a", "b", "a", "b"].map(|key| twice(key).arg());
    assert_eq!(steps[0], steps[2]);
    assert_eq!(steps[1], steps[3]);
    assert_ne!(steps[0], steps[1]);
    // Inputs are never one, however alike.
    assert_ne!(tape.input(34.4, label("wanted")).arg(), wanted.arg());
    let recording = tape.finish();
    assert_eq!(recording.steps.len(), 5, "{:?}", recording.steps);
}
