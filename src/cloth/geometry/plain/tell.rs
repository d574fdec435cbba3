//! How a plain cloth is shown.

use super::super::peirce::degrees;
use super::super::weft_crimp_by_rule;
use super::settle::{Cloth, Given, Wave};
use super::{KNOWN, KnownFigure, KnownOfCloth, OF_A_SYSTEM, SYSTEMS, say};
use crate::number::V;
use crate::particulars::Desk;
use crate::quantity::print::{fixed, of_kind};
use crate::quantity::{Angle, Crimp, Diameter, Kind, Ratio, Sett, Thickness};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// Names the figures of a cloth and says how they are shown.
pub(super) fn tell<'t>(
    desk: &Desk<'t>,
    known: &[KnownFigure],
    given: &Given<Worked<'t>>,
    cloth: &Cloth<Worked<'t>>,
    residual: f64,
) -> Report {
    let columns = [("", Left), ("warp", Right), ("weft", Right)];
    let mut rows = Vec::new();
    let d = cloth.diameters;
    let show = |place: usize, x: V<Worked<'t>>| {
        let KnownOfCloth { name, words, kind, .. } = KNOWN[place];
        match kind {
            Kind::Sett => desk.figure(name, words, Sett::from(x)).value(),
            Kind::Crimp => desk.figure(name, words, Crimp::from(x)).value(),
            Kind::Angle => desk.figure(name, words, Angle::from(x)).value(),
            Kind::Diameter => desk.figure(name, words, Diameter::from(x)).value(),
            _ => desk.figure(name, words, Thickness::from(x)).value(),
        }
    };
    let mut row = |words: &str, kind: Kind, of: [f64; 2]| {
        let [warp, weft] = of.map(|x| say(known, x, kind));
        rows.push(vec![words.to_owned(), warp, weft]);
    };
    let [warp, weft] = cloth.waves;
    let figures = |system: usize, wave: Wave<Worked<'t>>| {
        let start = SYSTEMS[system];
        [
            given[start].unwrap_or(10.0 / wave.spacing),
            given[start + 1].unwrap_or(wave.length / wave.spacing - 1.0),
            wave.length,
            wave.height,
            given[start + 4].unwrap_or(degrees(wave.angle)),
        ]
    };
    let both = [figures(0, warp), figures(1, weft)];
    // The sett under "warp" is that of the ends, which the weft crosses.
    row("threads", Kind::Sett, [show(7, both[1][0]), show(2, both[0][0])]);
    let words = ["crimp", "length from thread to thread", "height of the wave", "angle"];
    for (k, words) in words.iter().enumerate() {
        let kind = KNOWN[SYSTEMS[0] + 1 + k].kind;
        row(words, kind, [0, 1].map(|s: usize| show(SYSTEMS[s] + 1 + k, both[s][k + 1])));
    }
    let straight = |wave: Wave<Worked<'t>>| wave.length - d * wave.angle;
    let [warp_straight, weft_straight] = [
        ("warp_straight", "straight part of the warp; none in the jam", warp),
        ("weft_straight", "straight part of the weft; none in the jam", weft),
    ]
    .map(|(name, words, wave)| {
        desk.figure(name, words, Thickness::from(straight(wave).max(0.0))).value()
    });
    row("straight part (none: jammed)", Kind::Thickness, [warp_straight, weft_straight]);
    let mut foot = Vec::new();
    let sum = desk.figure("diameters", "sum of the diameters", Thickness::from(d));
    foot.push(format!("sum of the diameters {}", say(known, sum.value(), Kind::Thickness)));
    if let (Some(d1), Some(d2)) = (cloth.warp_diameter, cloth.weft_diameter) {
        let crowns = [warp.height + d1, weft.height + d2];
        row("diameter", Kind::Diameter, [show(0, d1), show(1, d2)]);
        row("crown", Kind::Thickness, crowns.map(V::value));
        let thickness = Thickness::from(crowns[0].max(crowns[1]));
        let thickness = desk.figure("thickness", "thickness: the higher crown", thickness);
        foot.push(format!("thickness {}", say(known, thickness.value(), Kind::Thickness)));
        foot.extend(by_rule(&both, d1.value(), d2.value()));
    }
    // To a power of ten: the last figure of rounding is no news.
    let off = 10_f64.powf(residual.max(1e-16).log10().ceil());
    foot.push(format!("the equations are off by no more than {off:.0e} mm"));
    foot.push(
        "round threads that neither stretch nor flatten; cloth that is not milled".to_owned(),
    );
    let columns = columns.map(|(name, align)| (name.to_owned(), align)).to_vec();
    let block = Block { columns, rows, foot, ..Block::default() };
    Report { title: "Plain cloth of round threads, after Peirce".to_owned(), blocks: vec![block] }
}

/// The weft's crimp by the rule of the root, beside the exact one.
fn by_rule(both: &[[V<Worked<'_>>; OF_A_SYSTEM]; 2], d1: f64, d2: f64) -> Option<String> {
    let [warp, weft] = both.map(|figures| figures.map(V::value));
    let rule = weft_crimp_by_rule(
        Sett::base(weft[0]),
        Sett::base(warp[0]),
        Crimp::base(warp[1]),
        Diameter::base(d1),
        Diameter::base(d2),
        Ratio::base(4.0 / 3.0),
    );
    let off = rule.value() / weft[1] - 1.0;
    let sign = if off > 0.0 { "+" } else { "" };
    off.is_finite().then(|| {
        format!(
            "by the rule h = 4/3 p √c the weft's crimp would be {} ({sign}{} %)",
            of_kind(rule.value(), Kind::Crimp),
            fixed(100.0 * off, 1)
        )
    })
}
