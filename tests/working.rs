//! The working of a formula: what it shows and that it agrees with the answer.

use hankwise::catalogue;
use hankwise::quantity::parse;

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
