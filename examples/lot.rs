//! A lot through a small mill, from the crate alone: blend, oil, card, mule, price, and skeins weighed.
//!
//! It needs none of the crate's features: `cargo run --no-default-features --example lot`. All data
//! are invented.

use hankwise::mill::{self, Component};
use hankwise::quality::{Sample, Summary};
use hankwise::quantity::unit;
use hankwise::{Error, job};

fn main() -> Result<(), Error> {
    // A heather of two natural colours, each weighed at its own regain.
    let component = |name: &str, share: &str, regain: &str| {
        let mut one = Component::new(name)?;
        *one.given() = one.given().clone().read(&[("share", share), ("regain", regain)])?;
        Ok::<_, Error>(one)
    };
    let colours = [component("white", "60 %", "16 %")?, component("moorit", "40 %", "12 %")?];
    let wanted = mill::blend_items().read(&[("total", "40 kg"), ("regain", "14 %")])?;
    let heap = mill::blend(&colours, &wanted)?;
    println!("{}", heap.report().text());

    let lot = mill::emulsion_items().read(&[
        ("mass", "40 kg"),
        ("regain", "14 %"),
        ("oil", "5 %"),
        ("wanted", "22 %"),
    ])?;
    let oiled = mill::emulsion(&lot)?;
    println!("{}", oiled.report().text());

    let card = job::find("card_run")?.run(&[
        ("lot", "35 kg"),
        ("slubbing", "200 tex"),
        ("ends", "120"),
        ("speed", "12 m/min"),
        ("loss", "5 %"),
        ("held_up", "0.6 kg"),
    ])?;
    println!("{}", card.report().text());
    // How a figure came about, step by step.
    println!("{}", card.working("slubbing_fibre")?.text());

    let mule = job::find("mule_run")?.run(&[
        ("spindles", "120"),
        ("travel", "1.83 m"),
        ("cycle", "22.5 s"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
        ("mass", "30 kg"),
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
