//! A plain cloth from whatever is known of it.

mod settle;
mod tell;

use crate::error::{Error, Result, did_you_mean};
use crate::formula::nearest;
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Angle, Crimp, Diameter, Kind, Sett, Thickness};
use crate::worked::Worked;
use settle::{Cloth, Given, settle};

/// A figure that may be known of a plain cloth.
#[derive(Clone, Copy, Debug)]
pub struct KnownOfCloth {
    /// Its name.
    pub name: &'static str,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    /// Where a change is looked for when there is no cloth, in the base unit.
    range: (f64, f64),
}

const fn known(
    name: &'static str,
    symbol: &'static str,
    words: &'static str,
    kind: Kind,
    range: (f64, f64),
) -> KnownOfCloth {
    KnownOfCloth { name, symbol, words, kind, range }
}

/// What may be known of a plain cloth.
///
/// Lengths, heights and angles are of one wave: from a thread that is crossed to the next.
pub const KNOWN_OF_PLAIN_CLOTH: [KnownOfCloth; 12] = [
    known("warp_diameter", "d₁", "diameter of the warp", Kind::Diameter, (0.02, 4.0)),
    known("weft_diameter", "d₂", "diameter of the weft", Kind::Diameter, (0.02, 4.0)),
    known("picks", "n₂", "picks", Kind::Sett, (0.5, 80.0)),
    known("warp_crimp", "c₁", "crimp of the warp", Kind::Crimp, (0.0, 0.5)),
    known(
        "warp_length",
        "l₁",
        "length of the warp from pick to pick",
        Kind::Thickness,
        (0.05, 30.0),
    ),
    known("warp_height", "h₁", "height of the warp's wave", Kind::Thickness, (0.0, 8.0)),
    known("warp_angle", "θ₁", "angle of the warp", Kind::Angle, (0.0, 90.0)),
    known("ends", "n₁", "ends", Kind::Sett, (0.5, 80.0)),
    known("weft_crimp", "c₂", "crimp of the weft", Kind::Crimp, (0.0, 0.5)),
    known("weft_length", "l₂", "length of the weft from end to end", Kind::Thickness, (0.05, 30.0)),
    known("weft_height", "h₂", "height of the weft's wave", Kind::Thickness, (0.0, 8.0)),
    known("weft_angle", "θ₂", "angle of the weft", Kind::Angle, (0.0, 90.0)),
];
use KNOWN_OF_PLAIN_CLOTH as KNOWN;

/// Where in [`KNOWN`] the figures of a system begin, and that of the wave's height in each.
const SYSTEMS: [usize; 2] = [2, 7];
const HEIGHT: usize = 3;
const OF_A_SYSTEM: usize = 5;

/// A figure as given: where it stands in [`KNOWN`], the quantity and the text.
type KnownFigure = (usize, Amount, Option<String>);

/// Whether a cloth is settled by what is given; else what to give.
fn check_set(known: &[KnownFigure]) -> Result<()> {
    let has = |place: usize| known.iter().any(|(at, ..)| *at == place);
    let names = |places: std::ops::Range<usize>| {
        places.filter(|p| has(*p)).map(|p| KNOWN[p].name).collect::<Vec<_>>()
    };
    let [warp, weft] = SYSTEMS.map(|start| names(start..start + OF_A_SYSTEM));
    let heights = SYSTEMS.iter().filter(|start| has(**start + HEIGHT)).count();
    let diameters = names(0..2);
    let count = warp.len() + weft.len();
    let given = known.iter().map(|(at, ..)| KNOWN[*at].name).collect::<Vec<_>>().join(", ");
    let given = if given.is_empty() { "nothing".to_owned() } else { given };
    let refuse = |advice: &str| {
        Err(Error::notation(format!(
            "what is given, {given}, does not settle a plain cloth: {advice}"
        )))
    };
    let example = "warp_diameter, weft_diameter, ends, picks and one crimp";
    if heights == 2 {
        return refuse(
            "the two heights are one figure, as they sum to the diameters; leave one out",
        );
    }
    if diameters.len() < 2 {
        let measured = |start: usize| {
            [0, 1, 2].iter().filter(|k| has(start + **k)).count() == 2
                && !has(start + 3)
                && !has(start + 4)
        };
        if SYSTEMS.iter().all(|start| measured(*start)) {
            return Ok(());
        }
        return refuse(&format!(
            "give both diameters and three figures more, such as {example}; or, to find the diameters, \
             ends, picks and both crimps"
        ));
    }
    match (count, heights) {
        (0..=2, _) => {
            refuse(&format!("{} more wanted beside the diameters, such as {example}", 3 - count))
        }
        (3, 1) if warp.len() == 1 || weft.len() == 1 => {
            let free = |system: &[&str]| !system.iter().any(|n| n.ends_with("height"));
            // The height belongs to both: each system wants one figure more.
            let [one, other] = [&warp, &weft].map(|s| s.len() - usize::from(!free(s)));
            if one == 1 && other == 1 {
                Ok(())
            } else {
                refuse(
                    "the height belongs to both systems; give one figure more of the warp and one of the weft",
                )
            }
        }
        (3, 0) if warp.is_empty() || weft.is_empty() => {
            refuse("all three are of one system; give one of the other instead, such as its sett")
        }
        (3, 0) => Ok(()),
        (3, _) => refuse(
            "the height belongs to both systems; give one figure more of the warp and one of the weft",
        ),
        _ => refuse(&format!("{} too many; leave that out or leave out the diameters", count - 3)),
    }
}

/// A figure in the unit in which the user gave others of its kind.
fn say(known: &[KnownFigure], x: f64, kind: Kind) -> String {
    match known.iter().find(|(at, ..)| KNOWN[*at].kind.family() == kind.family()) {
        // A share is said in percent, however it was given.
        Some((_, amount, _)) if kind.family() != Kind::Fraction => {
            with_unit(amount.unit.from_base(x), amount.unit.symbol)
        }
        _ => of_kind(x, kind),
    }
}

/// Which single figures to change, and by how much, so that there is a cloth.
fn changes(known: &[KnownFigure]) -> String {
    let possible = |place: usize, x: f64| {
        let mut given: Given<f64> = [None; KNOWN.len()];
        for (at, amount, _) in known {
            given[*at] = Some(V(if *at == place { x } else { amount.base() }));
        }
        settle(&given).is_some_and(|cloth| cloth.is_possible())
    };
    let mut found = Vec::new();
    for (place, amount, _) in known {
        let KnownOfCloth { name, kind, range: (low, high), .. } = KNOWN[*place];
        let given = amount.base();
        for end in [low, high] {
            // What the rounding of binary figures leaves of zero is none.
            let say = |x: f64| say(known, if x.abs() < 1e-9 * high { 0.0 } else { x }, kind);
            let works = |x| possible(*place, x);
            if let Some((edge, text)) = nearest(given, end, kind, say, works) {
                let bound = if edge < given { "at most" } else { "at least" };
                let change = format!("{name} {bound} {text}");
                if !found.contains(&change) {
                    found.push(change);
                }
            }
        }
    }
    if found.is_empty() {
        return "no single change within what is usual gives one".to_owned();
    }
    format!("change one: {}", found.join("; or "))
}

/// All that follows, after Peirce, from what is known of a plain cloth of round threads.
///
/// Known are figures of [`KNOWN_OF_PLAIN_CLOTH`]: both diameters and three more that are not all of one system, or
/// setts and crimps (or lengths) of both, which give the sum of the diameters.
///
/// ```
/// use hankwise::cloth::plain_cloth;
/// use hankwise::quantity::{Kind, parse, parse_as};
///
/// let cloth = plain_cloth(&[
///     ("ends", parse("9 ends/cm")?, None),
///     ("picks", parse("10 picks/cm")?, None),
///     ("warp_crimp", parse("4.5 %")?, None),
///     ("warp_diameter", parse_as("0.36 mm", Kind::Diameter)?, None),
///     ("weft_diameter", parse_as("0.34 mm", Kind::Diameter)?, None),
/// ])?;
/// assert_eq!(format!("{:.4}", cloth.find("weft_crimp")?.value), "0.0706");
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn plain_cloth(known: &[(&str, Amount, Option<String>)]) -> Result<Particulars> {
    let known: Vec<KnownFigure> = known
        .iter()
        .map(|(name, amount, typed)| {
            let place = KNOWN.iter().position(|k| k.name == *name).ok_or_else(|| {
                let names = KNOWN.map(|k| k.name);
                let near = did_you_mean(name, names)
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
                Error::notation(format!(
                    "'{name}' is no figure of a plain cloth{near}; there are {}",
                    names.join(", ")
                ))
            })?;
            let kind = KNOWN[place].kind;
            if amount.unit.kind != kind.family() {
                return Err(Error::unit(format!(
                    "{name}: {} is a {}, a {} is wanted; read it with parse_as",
                    amount.unit.symbol,
                    amount.unit.kind.words(),
                    kind.words()
                )));
            }
            kind.check(amount.base()).map_err(|e| e.at(name))?;
            Ok((place, *amount, typed.clone()))
        })
        .collect::<Result<_>>()?;
    check_set(&known)?;
    let mut plain: Given<f64> = [None; KNOWN.len()];
    for (place, amount, _) in &known {
        plain[*place] = Some(V(amount.base()));
    }
    let unsettled = || {
        let given = known.iter().map(|(at, amount, typed)| {
            let text = typed.clone().unwrap_or_else(|| say(&known, amount.base(), KNOWN[*at].kind));
            format!("{} = {text}", KNOWN[*at].name)
        });
        let given = given.collect::<Vec<_>>().join(", ");
        Error::range(format!("no plain cloth of round threads has {given}; {}", changes(&known)))
    };
    let cloth = settle(&plain).filter(Cloth::is_possible).ok_or_else(unsettled)?;
    let residual = cloth.residual();
    Particulars::work(|desk| {
        let mut given: Given<Worked<'_>> = [None; KNOWN.len()];
        for (place, amount, typed) in &known {
            given[*place] = Some(enter(desk, *place, amount, typed.clone()));
        }
        for (place, amount, _) in &known {
            let KnownOfCloth { name, kind, range: (low, high), .. } = KNOWN[*place];
            if !(low..=high).contains(&amount.base()) {
                desk.warn(format!(
                    "{name} = {} is unusual; the usual range is {} to {} (common practice)",
                    of_kind(amount.base(), kind),
                    of_kind(low, kind),
                    of_kind(high, kind)
                ));
            }
        }
        let cloth = settle(&given).ok_or_else(unsettled)?;
        let mut report = tell::tell(desk, &known, &given, &cloth, residual);
        let names: Vec<&str> = known.iter().map(|(at, ..)| KNOWN[*at].name).collect();
        report.blocks[0].title = format!("from {}", names.join(", "));
        Ok(report)
    })
}

fn enter<'t>(
    desk: &Desk<'t>,
    place: usize,
    amount: &Amount,
    typed: Option<String>,
) -> V<Worked<'t>> {
    let KnownOfCloth { name, symbol, words, kind, .. } = KNOWN[place];
    match kind {
        Kind::Sett => desk.given::<Sett<_>>(name, symbol, words, amount, typed).v(),
        Kind::Crimp => desk.given::<Crimp<_>>(name, symbol, words, amount, typed).v(),
        Kind::Angle => desk.given::<Angle<_>>(name, symbol, words, amount, typed).v(),
        Kind::Diameter => desk.given::<Diameter<_>>(name, symbol, words, amount, typed).v(),
        _ => desk.given::<Thickness<_>>(name, symbol, words, amount, typed).v(),
    }
}
