//! A plain cloth from whatever is known of it.

mod report;
mod settle;

use crate::calculation::{Check, Input, Inputs, Item, Results, calculation};
use crate::error::{Error, Result};
use crate::formula::nearest;
use crate::number::{Number, V};
use crate::quantity::{Angle, Crimp, Diameter, Sett, Thickness};
use settle::{Cloth, Given, settle};

/// What [`plain_cloth()`] asks. Lengths, heights and angles are of one wave: from a thread that is crossed
/// to the next.
#[derive(Clone, Debug, Inputs)]
pub struct PlainClothInputs<N> {
    /// diameter of the warp
    #[q("d₁", 0.02..=4.0, like = "0.36 mm")]
    pub warp_diameter: Option<Diameter<N>>,
    /// diameter of the weft
    #[q("d₂", 0.02..=4.0, like = "0.34 mm")]
    pub weft_diameter: Option<Diameter<N>>,
    /// picks
    #[q("n₂", 0.5..=80.0)]
    pub weft_sett: Option<Sett<N>>,
    /// crimp of the warp, on cloth length
    #[q("c₁", 0.0..=0.5, zero)]
    pub warp_crimp: Option<Crimp<N>>,
    /// length of the warp from pick to pick
    #[q("l_1", 0.05..=30.0)]
    pub warp_thread_length: Option<Thickness<N>>,
    /// height of the warp's wave
    #[q("h_1", 0.0..=8.0, zero)]
    pub warp_height: Option<Thickness<N>>,
    /// angle of the warp
    #[q("θ_1", 0.0..=90.0, zero)]
    pub warp_angle: Option<Angle<N>>,
    /// ends
    #[q("n₁", 0.5..=80.0, like = "9 ends/cm")]
    pub warp_sett: Option<Sett<N>>,
    /// crimp of the weft, on cloth length
    #[q("c₂", 0.0..=0.5, zero)]
    pub weft_crimp: Option<Crimp<N>>,
    /// length of the weft from end to end
    #[q("l_2", 0.05..=30.0)]
    pub weft_thread_length: Option<Thickness<N>>,
    /// height of the weft's wave
    #[q("h_2", 0.0..=8.0, zero)]
    pub weft_height: Option<Thickness<N>>,
    /// angle of the weft
    #[q("θ_2", 0.0..=90.0, zero)]
    pub weft_angle: Option<Angle<N>>,
}

/// What [`plain_cloth()`] answers.
#[derive(Clone, Debug, Results)]
pub struct PlainClothResults<N> {
    /// ends
    #[block = "Plain cloth of round threads, after Peirce"]
    pub warp_sett: Sett<N>,
    /// picks
    pub weft_sett: Sett<N>,
    /// crimp of the warp, on cloth length
    pub warp_crimp: Crimp<N>,
    /// crimp of the weft, on cloth length
    pub weft_crimp: Crimp<N>,
    /// length of the warp from pick to pick
    pub warp_thread_length: Thickness<N>,
    /// length of the weft from end to end
    pub weft_thread_length: Thickness<N>,
    /// height of the warp's wave
    pub warp_height: Thickness<N>,
    /// height of the weft's wave
    pub weft_height: Thickness<N>,
    /// angle of the warp
    pub warp_angle: Angle<N>,
    /// angle of the weft
    pub weft_angle: Angle<N>,
    /// straight part of the warp; none in the jam
    pub warp_straight: Thickness<N>,
    /// straight part of the weft; none in the jam
    pub weft_straight: Thickness<N>,
    /// sum of the diameters
    pub diameters: Thickness<N>,
    /// diameter of the warp
    pub warp_diameter: Option<Diameter<N>>,
    /// diameter of the weft
    pub weft_diameter: Option<Diameter<N>>,
    /// thickness: the higher crown
    pub thickness: Option<Thickness<N>>,
}

/// Where among the inputs those of a system begin, and the wave's height in each.
const SYSTEMS: [usize; 2] = [2, 7];
const HEIGHT: usize = 3;
const OF_A_SYSTEM: usize = 5;
const KNOWN: usize = 12;

/// The input at a place.
fn input(place: usize) -> &'static Input {
    match &PlainClothInputs::<f64>::ITEMS[place] {
        Item::One(input) => input,
        // `PlainClothInputs` has no lists or parts, so each of its items is one input.
        other => unreachable!("an input of a plain cloth is one quantity: {other:?}"),
    }
}

impl<N: Number> PlainClothInputs<N> {
    /// What was given, in the order of the inputs.
    fn known(&self) -> Given<N> {
        [
            self.warp_diameter.map(Diameter::v),
            self.weft_diameter.map(Diameter::v),
            self.weft_sett.map(Sett::v),
            self.warp_crimp.map(Crimp::v),
            self.warp_thread_length.map(Thickness::v),
            self.warp_height.map(Thickness::v),
            self.warp_angle.map(Angle::v),
            self.warp_sett.map(Sett::v),
            self.weft_crimp.map(Crimp::v),
            self.weft_thread_length.map(Thickness::v),
            self.weft_height.map(Thickness::v),
            self.weft_angle.map(Angle::v),
        ]
    }
}

/// All that follows, after Peirce, from what is known of a plain cloth of round threads.
///
/// Give both diameters and three more that are not all of one system, such as both setts and one crimp; or
/// both setts and both crimps (or lengths), which give the sum of the diameters. Lengths, heights and angles
/// are of one wave: from a thread that is crossed to the next. Where no cloth has what is given, the refusal
/// says what to change, and by how much.
#[calculation(
    title = "Plain cloth of round threads, after Peirce",
    example = ">>> import hankwise as hw
>>> cloth = hw.cloth.plain_cloth(warp_sett=\"9 ends/cm\", weft_sett=\"10 picks/cm\", warp_crimp=\"4.5 %\",
...                              warp_diameter=\"0.36 mm\", weft_diameter=\"0.34 mm\")
>>> cloth[\"weft_crimp\"], cloth[\"thickness\"]
(<crimp on cloth length: 7.061 %>, <thickness: 0.7477 mm>)",
    limits = ["round threads that neither stretch nor flatten", "cloth that is not milled"],
    check = check,
    report = report::report
)]
pub fn plain_cloth<N: Number>(given: &PlainClothInputs<N>) -> PlainClothResults<N> {
    let known = given.known();
    // What settles nothing, and what no cloth has, is refused by the check.
    let cloth = settle(&known).unwrap_or_else(Cloth::none);
    let [warp, weft] = cloth.waves;
    let d = cloth.diameters;
    let of = |system: usize, place: usize| known[SYSTEMS[system] + place];
    let straight = |wave: settle::Wave<N>| Thickness::from((wave.length - d * wave.angle).max(0.0));
    let crowns = cloth.warp_diameter.zip(cloth.weft_diameter);
    let crowns = crowns.map(|(d1, d2)| [warp.height + d1, weft.height + d2]);
    PlainClothResults {
        // The spacing of the ends is that which the weft crosses.
        warp_sett: Sett::from(of(1, 0).unwrap_or_else(|| 10.0 / weft.spacing)),
        weft_sett: Sett::from(of(0, 0).unwrap_or_else(|| 10.0 / warp.spacing)),
        warp_crimp: Crimp::from(of(0, 1).unwrap_or_else(|| warp.length / warp.spacing - 1.0)),
        weft_crimp: Crimp::from(of(1, 1).unwrap_or_else(|| weft.length / weft.spacing - 1.0)),
        warp_thread_length: Thickness::from(warp.length),
        weft_thread_length: Thickness::from(weft.length),
        warp_height: Thickness::from(warp.height),
        weft_height: Thickness::from(weft.height),
        warp_angle: Angle::from(of(0, 4).unwrap_or_else(|| super::peirce::degrees(warp.angle))),
        weft_angle: Angle::from(of(1, 4).unwrap_or_else(|| super::peirce::degrees(weft.angle))),
        warp_straight: straight(warp),
        weft_straight: straight(weft),
        diameters: Thickness::from(d),
        warp_diameter: cloth.warp_diameter.map(Diameter::from),
        weft_diameter: cloth.weft_diameter.map(Diameter::from),
        thickness: crowns.map(|[one, other]| Thickness::from(one.max(other))),
    }
}

fn check(
    given: &PlainClothInputs<f64>,
    _found: &PlainClothResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let known = given.known();
    check_set(&known)?;
    if settle(&known).is_some_and(|cloth| cloth.is_possible()) {
        return Ok(());
    }
    let words = known.iter().enumerate().filter_map(|(place, value)| {
        let Input { name, kind, .. } = *input(place);
        Some(format!("{name} = {}", check.say_base(value.as_ref()?.value(), kind)))
    });
    let words: Vec<String> = words.collect();
    Err(Error::range(format!(
        "no plain cloth of round threads has {}; {}",
        words.join(", "),
        changes(&known, check)
    )))
}

/// Whether a cloth is settled by what is given; else what to give.
fn check_set(known: &Given<f64>) -> Result<()> {
    let names = |places: std::ops::Range<usize>| -> Vec<&'static str> {
        places.filter(|place| known[*place].is_some()).map(|place| input(place).name).collect()
    };
    let [warp, weft] = SYSTEMS.map(|start| names(start..start + OF_A_SYSTEM));
    let heights = SYSTEMS.iter().filter(|start| known[**start + HEIGHT].is_some()).count();
    let diameters = names(0..2);
    let count = warp.len() + weft.len();
    let given = names(0..KNOWN).join(", ");
    let given = if given.is_empty() { "nothing".to_owned() } else { given };
    let refuse = |advice: &str| {
        Err(Error::notation(format!(
            "what is given, {given}, does not settle a plain cloth: {advice}"
        )))
    };
    let example = "warp_diameter, weft_diameter, warp_sett, weft_sett and one crimp";
    if heights == 2 {
        return refuse("the two heights are one, as they sum to the diameters; omit one");
    }
    if diameters.len() < 2 {
        let measured = |start: usize| {
            [0, 1, 2].iter().filter(|k| known[start + **k].is_some()).count() == 2
                && known[start + 3].is_none()
                && known[start + 4].is_none()
        };
        if SYSTEMS.iter().all(|start| measured(*start)) {
            return Ok(());
        }
        return refuse(&format!(
            "give both diameters and three more, such as {example}; or, to find the diameters, \
             warp_sett, weft_sett and both crimps"
        ));
    }
    match (count, heights) {
        (0..=2, _) => {
            refuse(&format!("give {} more beside the diameters, such as {example}", 3 - count))
        }
        (3, 1) if warp.len() == 1 || weft.len() == 1 => {
            let free = |system: &[&str]| !system.iter().any(|name| name.ends_with("height"));
            // The height belongs to both: each system needs one more.
            let [one, other] = [&warp, &weft].map(|s| s.len() - usize::from(!free(s)));
            if one == 1 && other == 1 {
                Ok(())
            } else {
                refuse(
                    "the height belongs to both systems; give one more of the warp and one of the weft",
                )
            }
        }
        (3, 0) if warp.is_empty() || weft.is_empty() => {
            refuse("all three are of one system; give one of the other instead, such as its sett")
        }
        (3, 0) => Ok(()),
        (3, _) => refuse(
            "the height belongs to both systems; give one more of the warp and one of the weft",
        ),
        _ => refuse(&format!("{} too many; omit that, or the diameters", count - 3)),
    }
}

/// Which single inputs to change, and by how much, so that there is a cloth.
fn changes(known: &Given<f64>, check: &Check<'_>) -> String {
    let possible = |place: usize, x: f64| {
        let mut given = *known;
        given[place] = Some(V(x));
        settle(&given).is_some_and(|cloth| cloth.is_possible())
    };
    let mut found = Vec::new();
    for (place, value) in known.iter().enumerate() {
        let Some(value) = value else { continue };
        let Input { name, kind, usual: (low, high), .. } = *input(place);
        let given = value.value();
        for end in [low, high] {
            // What the rounding of binary numbers leaves of zero is none.
            let say = |x: f64| check.say_base(if x.abs() < 1e-9 * high { 0.0 } else { x }, kind);
            let works = |x| possible(place, x);
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
