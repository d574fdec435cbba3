//! The reed and the ends in a dent, out of the reeds that the mill owns.

use super::{dents_in_width, reed_for_sett, sett_in_reed};
use crate::calculation::{Check, Inputs, Results, calculation, refuse};
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::print::{constant, figure, fixed, with_unit};
use crate::quantity::{Amount, Count, Deviation, Kind, Length, ReedCount, Sett, reeds::SYSTEMS};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Dents in a centimetre of the finest and the coarsest reed that is made: custom of the trade, wide.
const MADE: (f64, f64) = (0.2, 60.0);
/// Usual, as on the cards of the formulas.
const USUAL: (f64, f64) = (0.5, 30.0);
/// Dents across thirty metres of the finest reed: wider looms are not made.
const MOST_DENTS: f64 = 200_000.0;
/// A sett that is off by more than this is another cloth: custom of the trade.
const FAR: f64 = 0.25;
/// The longest order that can be asked for.
const LONGEST: f64 = 12.0;
/// Ends that are tried in a dent where none are given.
const TRIED: [u32; 4] = [1, 2, 3, 4];
/// Choices beside the nearest that are given.
const OTHERS: usize = 9;

/// What [`choose_reed()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ChooseReedInputs<N> {
    /// sett wanted in the reed
    #[q("n_w", 1.0..=60.0, like = "20 ends/in")]
    pub wanted_reed_sett: Sett<N>,
    /// reeds that the mill owns
    #[q("r", 0.5..=30.0)]
    pub reeds: Vec<ReedCount<N>>,
    /// ends that may be drawn in a dent; 1 to 4 if omitted
    #[q("e", 1.0..=8.0, broken)]
    pub ends_per_dent: Option<Vec<Count<N>>>,
    /// most dents after which an uneven order comes round again; 1 for even orders alone
    #[q("k", 1.0..=12.0, or = 4.0)]
    pub period: Count<N>,
    /// width in the reed, selvedges included
    #[q("B", 0.05..=4.0)]
    pub reed_width: Option<Length<N>>,
    /// The selvedges.
    #[group]
    pub selvedge: Option<ReedSelvedge<N>>,
}

/// A selvedge on each side, with ends a dent of its own.
#[derive(Clone, Debug, Inputs)]
pub struct ReedSelvedge<N> {
    /// ends in a dent of the selvedge
    #[q("e_s", 1.0..=8.0, like = "4")]
    pub selvedge_ends_per_dent: Count<N>,
    /// How broad each is.
    #[one_of("the breadth of the selvedge")]
    pub breadth: Breadth<N>,
}

/// How broad a selvedge is.
#[derive(Clone, Debug, Inputs)]
pub enum Breadth<N> {
    /// dents of each selvedge
    #[q("k_s", 1.0..=100.0, like = "4")]
    DentsPerSelvedge(Count<N>),
    /// width of each selvedge, made up to whole dents
    #[q("b_e", 0.001..=0.1, like = "1 cm")]
    WidthPerSelvedge(Length<N>),
}

/// A reed with an order of ends in its dents.
#[derive(Clone, Debug, Results)]
pub struct Sleying<N> {
    /// reed
    pub reed: ReedCount<N>,
    /// ends in one dent after another, until the order comes round again
    pub order: Vec<Count<N>>,
    /// sett in the reed
    pub reed_sett: Sett<N>,
    /// how far the sett is from the one wanted
    pub sett_off: Deviation<N>,
    /// dents in the width
    pub dents: Option<Count<N>>,
    /// ends in the width, selvedges included
    pub ends: Option<Count<N>>,
    /// ends of both selvedges together
    pub both_selvedges: Option<Count<N>>,
}

/// What [`choose_reed()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ChooseReedResults<N> {
    /// The nearest.
    #[block = "The nearest"]
    #[part]
    pub nearest: Sleying<N>,
    /// Others, the nearest first
    #[rows]
    pub others: Vec<Sleying<N>>,
}

/// The reed and the ends in a dent for a sett, out of the reeds that the mill owns.
///
/// Between two neighbouring numbers of `ends_per_dent` the dents also go in turn, such as 3, 2; the order
/// comes round within `period` dents. What is as near is taken even before uneven, and then with two ends in
/// a dent. A selvedge on each side takes `dents_per_selvedge` or `width_per_selvedge`.
#[calculation(
    title = "The reed",
    limits = ["an uneven order shows as reed marks until finishing closes them: try it (custom of the trade)"],
    example = ">>> import hankwise as hw
>>> choice = hw.cloth.choose_reed(wanted_reed_sett=\"20 ends/in\", reeds=[\"8 dents/in\", \"12 dents/in\"],
...                               reed_width=\"24 in\")
>>> choice[\"reed\"], choice[\"order[1]\"], choice[\"order[2]\"], choice[\"ends\"]
(<reed count: 3.150 dents/cm>, <number: 3>, <number: 2>, <number: 480>)",
    check = check,
    report = report
)]
pub fn choose_reed<N: Number>(given: &ChooseReedInputs<N>) -> ChooseReedResults<N> {
    let mut choices = choices(given).into_iter();
    // An impossible order is refused once the numbers are known.
    let nearest = choices.next().unwrap_or((f64::NAN, vec![1]));
    ChooseReedResults {
        nearest: sleying(given, nearest),
        others: choices.take(OTHERS).map(|choice| sleying(given, choice)).collect(),
    }
}

/// A reed with an order, and what they give.
fn sleying<N: Number>(given: &ChooseReedInputs<N>, (reed, order): (f64, Vec<u32>)) -> Sleying<N> {
    let wanted = given.wanted_reed_sett;
    let order: Vec<V<N>> =
        order.iter().map(|ends| V::looked_up(f64::from(*ends), [wanted.v()])).collect();
    let sum = |dents: &[V<N>]| dents.iter().copied().reduce(|a, b| a + b);
    let in_order = V::first(sum(&order).into_iter());
    let ends_per_dent =
        (in_order / order.len() as f64).named(["e", "", "ends in a dent, mean of the order"]);
    let wanted_reed = reed_for_sett(wanted, Count::from(ends_per_dent));
    let reed: ReedCount<N> = ReedCount::from(V(wanted_reed.v().0.chosen(reed)));
    let reed_sett = sett_in_reed(reed, Count::from(ends_per_dent));
    let edge = given.selvedge.as_ref().map(|selvedge| {
        let dents = selvedge.dents(reed);
        (
            dents,
            (2.0 * dents * selvedge.selvedge_ends_per_dent.v()).named([
                "N_s",
                "",
                "ends of both selvedges",
            ]),
        )
    });
    let across = given.reed_width.map(|width| {
        // A millionth of a dent: 29 dents must not become 28.999… by the rounding of binary figures.
        let dents = dents_in_width(reed, width).v().round_down(1e-6).named([
            "N_d",
            "",
            "whole dents in the width",
        ]);
        let ground = edge.map_or(dents, |(edge, _)| {
            (dents - 2.0 * edge).named(["N_g", "", "dents of the ground"])
        });
        let rounds = (ground / order.len() as f64).floor();
        let left = (ground.value() % order.len() as f64).max(0.0) as usize;
        let mut ends = rounds * in_order;
        if let Some(rest) = sum(&order[..left.min(order.len())]) {
            ends = ends + rest;
        }
        (dents, edge.map_or(ends, |(_, both)| ends + both))
    });
    Sleying {
        reed,
        order: order.into_iter().map(Count::from).collect(),
        reed_sett,
        sett_off: (reed_sett.v() / wanted.v() - 1.0).into(),
        dents: across.map(|(dents, _)| dents.into()),
        ends: across.map(|(_, ends)| ends.into()),
        both_selvedges: edge.map(|(_, both)| both.into()),
    }
}

impl<N: Number> ReedSelvedge<N> {
    /// Dents on each side.
    fn dents(&self, reed: ReedCount<N>) -> V<N> {
        match self.breadth {
            Breadth::DentsPerSelvedge(dents) => dents.v(),
            Breadth::WidthPerSelvedge(width) => dents_in_width(reed, width)
                .v()
                .round_up(1e-6)
                .max(V::constant(1.0))
                .named(["k_s", "", "dents of a selvedge"]),
        }
    }
}

/// Every owned reed with every order, the nearest first.
fn choices<N: Number>(given: &ChooseReedInputs<N>) -> Vec<(f64, Vec<u32>)> {
    let wanted = given.wanted_reed_sett.value();
    let mut reeds: Vec<f64> = given.reeds.iter().map(|reed| reed.value()).collect();
    reeds.sort_by(f64::total_cmp);
    reeds.dedup();
    let orders = orders(&may_be_drawn(given), given.period.value().min(LONGEST) as u32);
    let mean = |order: &[u32]| f64::from(order.iter().sum::<u32>()) / order.len() as f64;
    let rank = |(reed, order): &(f64, Vec<u32>)| {
        let off = ((reed * mean(order) / wanted - 1.0).abs() * 1e9).round();
        (off, order.len(), order[0].abs_diff(2))
    };
    let all = reeds.iter().flat_map(|reed| orders.iter().map(|order| (*reed, order.clone())));
    let mut all: Vec<(f64, Vec<u32>)> = all.collect();
    all.sort_by(|a, b| rank(a).partial_cmp(&rank(b)).unwrap_or(std::cmp::Ordering::Equal));
    all
}

/// The ends that may be drawn in a dent, those that can be.
fn may_be_drawn<N: Number>(given: &ChooseReedInputs<N>) -> Vec<u32> {
    let Some(given) = &given.ends_per_dent else { return TRIED.to_vec() };
    let whole = given.iter().map(|e| e.value()).filter(|e| can_be_drawn(*e));
    let mut ends: Vec<u32> = whole.map(|e| e as u32).collect();
    ends.sort_unstable();
    ends.dedup();
    ends
}

fn can_be_drawn(ends: f64) -> bool {
    (1.0..=64.0).contains(&ends) && ends.fract() == 0.0
}

/// `more` dents of `least + 1` among `period`, spread evenly, the fuller dent first.
fn order(least: u32, more: u32, period: u32) -> Vec<u32> {
    let upto = |i: u32| (i * more).div_ceil(period);
    (0..period).map(|i| least + upto(i + 1) - upto(i)).collect()
}

/// Every order between the numbers of ends allowed that comes round within a number of dents.
fn orders(ends: &[u32], longest: u32) -> Vec<Vec<u32>> {
    let gcd = |mut a: u32, mut b: u32| {
        while b > 0 {
            (a, b) = (b, a % b);
        }
        a
    };
    let mut all: Vec<Vec<u32>> = ends.iter().map(|e| vec![*e]).collect();
    for pair in ends.windows(2).filter(|pair| pair[1] == pair[0] + 1) {
        for period in 2..=longest {
            let mixes = (1..period).filter(|more| gcd(*more, period) == 1);
            all.extend(mixes.map(|more| order(pair[0], more, period)));
        }
    }
    all
}

fn check(
    given: &ChooseReedInputs<f64>,
    found: &ChooseReedResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    for reed in &given.reeds {
        if let Some(amount) = check.given(*reed) {
            check_reed(&amount).map_err(|e| e.at("reeds"))?;
        }
    }
    if let Some(ends) = given.ends_per_dent.iter().flatten().find(|e| !can_be_drawn(e.value())) {
        let ends = ends.value();
        let advice = if ends > 0.0 && ends < 64.0 {
            let (low, high) = (ends.floor().max(1.0), ends.ceil().max(2.0));
            format!("write [{low}, {high}] to go between the two, such as {high}, {low} in turn")
        } else {
            "write numbers such as 2, or [2, 3]".to_owned()
        };
        refuse!(
            check,
            given.ends_per_dent,
            "{} ends in a dent cannot be drawn: dents take whole ends; {advice}",
            constant(ends)
        );
    }
    if given.period.value() > LONGEST {
        refuse!(
            check,
            given.period,
            "an order of {} dents shows no order; write 1 (even alone) to {LONGEST}",
            figure(given.period.value())
        );
    }
    let first = &found.nearest;
    check_width(given, first, check)?;
    if first.sett_off.value().abs() > FAR {
        check.warn(format!(
            "choose_reed: no reed given comes near {}: the nearest, {} with {} in a dent, gives {}, {} % \
             {}; look for another reed, or allow other ends_per_dent",
            check.say(given.wanted_reed_sett),
            check.say(first.reed),
            first.words(),
            check.say(first.reed_sett),
            fixed(100.0 * first.sett_off.value().abs(), 0),
            if first.sett_off.value() > 0.0 { "too many" } else { "too few" }
        ));
    }
    Ok(())
}

/// A width has room for the selvedges and something between them, and a loom takes it.
fn check_width(
    given: &ChooseReedInputs<f64>,
    first: &Sleying<f64>,
    check: &Check<'_>,
) -> Result<()> {
    let (Some(width), Some(dents)) = (given.reed_width, first.dents) else { return Ok(()) };
    if dents.value() > MOST_DENTS {
        refuse!(
            check,
            given.reed_width,
            "{} has {} dents of {}, more than any loom takes; is its unit right?",
            check.say(width),
            figure(dents.value()),
            check.say(first.reed)
        );
    }
    let edges = given.selvedge.as_ref().map_or(0.0, |s| 2.0 * s.dents(first.reed).0);
    if dents.value() <= edges {
        refuse!(
            check,
            given.reed_width,
            "{} has {} dents of {} and the selvedges take {}; nothing is left for the cloth",
            check.say(width),
            figure(dents.value()),
            check.say(first.reed),
            figure(edges)
        );
    }
    Ok(())
}

/// Says what is wrong with a number that is not a reed in its system.
fn check_reed(reed: &Amount) -> Result<()> {
    let Amount { number, unit } = *reed;
    let given = with_unit(number, unit.symbol);
    let (least, most) = MADE;
    if reed.base() < least || reed.base() > most {
        let likely: Vec<String> = SYSTEMS
            .iter()
            .filter(|s| s.symbol.ends_with("reed") || s.symbol.starts_with("dents/"))
            .filter(|s| (USUAL.0..=USUAL.1).contains(&s.to_base(number)))
            .map(|s| format!("'{} {}'", constant(number), s.symbol))
            .take(4)
            .collect();
        let advice = if likely.is_empty() {
            format!("write it with its system, such as '{}'", Kind::ReedCount.example())
        } else {
            format!("is it {}?", likely.join(" or "))
        };
        return Err(Error::range(format!(
            "{given} is not a reed: it would have {} dents in an inch, and reeds are made from {} to {} \
             (custom of the trade); {advice}",
            figure(reed.base() * 2.54),
            figure(least * 2.54),
            figure(most * 2.54),
        )));
    }
    // Dents counted one by one over more than an inch make a whole number; beers and porters are
    // halved, and reeds of 33½ dents in an inch are made.
    let counts_dents = unit.definition.starts_with("dents in") && unit.to_base(1.0) < 0.3;
    if counts_dents && number.fract() != 0.0 {
        return Err(Error::range(format!(
            "{given} is not a reed: its number counts {}, and half a dent cannot be made; write {} or \
             {}, or the number in the reed's own system",
            unit.definition,
            constant(number.floor()),
            constant(number.ceil()),
        )));
    }
    Ok(())
}

impl Sleying<f64> {
    /// The order as people say it: `2`, `3, 2`.
    pub fn words(&self) -> String {
        self.order.iter().map(|ends| figure(ends.value())).collect::<Vec<_>>().join(", ")
    }
}

/// One sleying to a line, the nearest first.
fn report(
    given: &ChooseReedInputs<f64>,
    found: &ChooseReedResults<f64>,
    check: &Check<'_>,
) -> Report {
    let sett = |sett: Sett<f64>| check.say(sett).replace("threads", "ends");
    let row = |s: &Sleying<f64>| {
        let off = fixed(s.sett_off.value() * 100.0, 1);
        let sign = if s.sett_off.value() > 0.0 && off != "0.0" { "+" } else { "" };
        let off = format!("{sign}{off} %");
        let mut cells = vec![check.say(s.reed), s.words(), sett(s.reed_sett), off];
        cells.extend([s.dents, s.ends].into_iter().flatten().map(|n| figure(n.value())));
        cells
    };
    let mut columns =
        vec![("reed", Right), ("ends in a dent", Left), ("gives", Right), ("off by", Right)];
    if given.reed_width.is_some() {
        columns.extend([("dents", Right), ("ends", Right)]);
    }
    let all = || std::iter::once(&found.nearest).chain(&found.others);
    let mut foot = Vec::new();
    if let Some(both) = found.nearest.both_selvedges {
        let among = if given.reed_width.is_some() { "; they are among the ends" } else { "" };
        let both = figure(both.value());
        foot.push(format!("The selvedges of the first take {both} ends together{among}."));
    }
    if all().any(|s| s.order.len() > 1) {
        foot.push(
            "An uneven order shows as reed marks until finishing closes them: try it (custom of the trade)."
                .to_owned(),
        );
    }
    Report {
        title: "The reed".to_owned(),
        blocks: vec![Block {
            title: format!("{} wanted in the reed", sett(given.wanted_reed_sett)),
            columns: columns.into_iter().map(|(name, align)| (name.to_owned(), align)).collect(),
            rows: all().map(row).collect(),
            foot,
            ..Block::default()
        }],
    }
}
