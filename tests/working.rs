//! The working of a formula: what it shows and that it agrees with the answer.

use hankwise::formula;
use hankwise::quantity::parse;

#[test]
fn shows_the_steps_from_what_was_typed() {
    let f = formula::find("twist_factor").unwrap();
    let given = [parse("9 tpi").unwrap(), parse("16 YSW").unwrap()];
    let typed = [Some("9 tpi".to_owned()), Some("16 YSW".to_owned())];
    let working = f.working(&given, &typed).unwrap();
    println!("{}\n{}\n{:?}", working.text(), working.latex(), working.sensitivities());
    println!("{:?}", formula::find("mass_per_area").unwrap().equations());
    println!("{:?}", formula::find("before_chain_of_losses").unwrap().equations());
    println!("{:?}", formula::find("clean_yield_customs").unwrap().equations());
    assert!(working.text().contains("38.99"));
}
