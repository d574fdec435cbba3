//! A lot through a small mill, from the crate alone: blend, oil, card, mule, price, and skeins weighed.
//!
//! It needs none of the crate's features: `cargo run --no-default-features --example lot`. All data
//! are invented.

use hankwise::Error;
use hankwise::calculation::Value;
use hankwise::mill;
use hankwise::quality::{Sample, Summary};
use hankwise::quantity::unit;

fn main() -> Result<(), Error> {
    // A heather of two natural colours, each weighed at its own regain.
    let mut wanted =
        mill::BLEND.blank().with_texts(&[("blend_mass", "40 kg"), ("stated_regain", "14 %")])?;
    let colour = |name: &str, share: &str, regain: &str| {
        let given = [("name", name), ("share", share), ("regain", regain)];
        wanted.row("components")?.with_texts(&given)
    };
    let colours = vec![colour("white", "60 %", "16 %")?, colour("moorit", "40 %", "12 %")?];
    wanted.set("components", Value::Rows(colours))?;
    println!("{}", mill::BLEND.solve(wanted)?.report().text());

    let oiled = mill::EMULSION.solve_texts(&[
        ("mass", "40 kg"),
        ("regain_before", "14 %"),
        ("oil_added", "5 %"),
        ("wanted_regain", "22 %"),
    ])?;
    println!("{}", oiled.report().text());

    let card = mill::CARD.solve_texts(&[
        ("fibre_mass", "35 kg"),
        ("slubbing_count", "200 tex"),
        ("ends", "120"),
        ("delivery_speed", "12 m/min"),
        ("loss", "5 %"),
        ("held_up", "0.6 kg"),
    ])?;
    println!("{}", card.report().text());
    // How a value was calculated, step by step.
    println!("{}", card.working("fibre_out")?.text());

    let mule = mill::MULE.solve_texts(&[
        ("spindles", "120"),
        ("travel", "1.83 m"),
        ("cycle", "22.5 s"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
        ("yarn_mass", "30 kg"),
    ])?;
    println!("{}", mule.report().text());

    let mut costing = mill::COST_THROUGH.blank().with_texts(&[("price_per_mass", "9 /kg")])?;
    for (name, loss, cost) in [("card", "7 %", "2 /kg"), ("mule", "2 %", "3 /kg")] {
        let stage = [("name", name), ("loss", loss), ("stage_cost_per_mass", cost)];
        costing = costing.with_row("stages", &stage)?;
    }
    println!("{}", mill::COST_THROUGH.solve(costing)?.report().text());

    // Five skeins of the yarn, in tex.
    let skeins = Sample::new(vec![151.0, 148.0, 155.0, 150.0, 146.0], unit("tex", None)?)?;
    println!("{}", Summary::new(skeins, 0.95, Some(0.02))?.report().text());
    Ok(())
}
