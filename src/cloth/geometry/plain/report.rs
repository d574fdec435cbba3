//! How a plain cloth is shown.

use super::super::weft_crimp_by_rule;
use super::settle::settle;
use super::{KNOWN, PlainClothInputs, PlainClothResults, input};
use crate::calculation::Check;
use crate::quantity::print::{fixed, of_kind};
use crate::quantity::{Kind, Ratio, Thickness, Typed};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Warp beside weft.
pub(super) fn report(
    given: &PlainClothInputs<f64>,
    found: &PlainClothResults<f64>,
    check: &Check<'_>,
) -> Report {
    fn row<Q: Typed<f64>>(words: &str, check: &Check<'_>, warp: Q, weft: Q) -> Vec<String> {
        vec![words.to_owned(), check.say(warp), check.say(weft)]
    }
    let mut rows = vec![
        row("threads", check, found.warp_sett, found.weft_sett),
        row("crimp", check, found.warp_crimp, found.weft_crimp),
        row(
            "length from thread to thread",
            check,
            found.warp_thread_length,
            found.weft_thread_length,
        ),
        row("height of the wave", check, found.warp_height, found.weft_height),
        row("angle", check, found.warp_angle, found.weft_angle),
        row("straight part (none: jammed)", check, found.warp_straight, found.weft_straight),
    ];
    let mut foot = vec![format!("sum of the diameters {}", check.say(found.diameters))];
    if let (Some(d1), Some(d2), Some(thickness)) =
        (found.warp_diameter, found.weft_diameter, found.thickness)
    {
        rows.push(row("diameter", check, d1, d2));
        let crown = |height: Thickness<f64>, d: f64| Thickness::base(height.value() + d);
        let crowns = [crown(found.warp_height, d1.value()), crown(found.weft_height, d2.value())];
        rows.push(row("crown", check, crowns[0], crowns[1]));
        foot.push(format!("thickness {}", check.say(thickness)));
        foot.extend(by_rule(found));
    }
    let known = given.known();
    if let Some(cloth) = settle(&known) {
        // To a power of ten: the last digits are only rounding.
        let off = 10_f64.powf(cloth.residual().max(1e-16).log10().ceil());
        foot.push(format!("the equations are off by no more than {off:.0e} mm"));
    }
    foot.push(
        "round threads that neither stretch nor flatten; cloth that is not milled".to_owned(),
    );
    let columns = [("", Left), ("warp", Right), ("weft", Right)];
    let columns = columns.map(|(name, align)| (name.to_owned(), align)).to_vec();
    let names = (0..KNOWN).filter(|place| known[*place].is_some()).map(|place| input(place).name);
    let title = format!("From {}", names.collect::<Vec<_>>().join(", "));
    let block = Block { title, columns, rows, foot, ..Block::default() };
    Report { title: "Plain cloth of round threads, after Peirce".to_owned(), blocks: vec![block] }
}

/// The weft's crimp by the rule of the root, beside the exact one.
fn by_rule(found: &PlainClothResults<f64>) -> Option<String> {
    let rule = weft_crimp_by_rule(
        found.warp_sett,
        found.weft_sett,
        found.warp_crimp,
        found.warp_diameter?,
        found.weft_diameter?,
        Ratio::base(4.0 / 3.0),
    );
    let off = rule.value() / found.weft_crimp.value() - 1.0;
    let sign = if off > 0.0 { "+" } else { "" };
    off.is_finite().then(|| {
        format!(
            "by the rule h = 4/3 p √c the weft's crimp would be {} ({sign}{} %)",
            of_kind(rule.value(), Kind::Crimp),
            fixed(100.0 * off, 1)
        )
    })
}
