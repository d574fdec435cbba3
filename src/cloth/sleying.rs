//! The reed and the ends in a dent, out of the reeds that the mill owns.

use crate::error::{Error, Result};
use crate::parts::Parts;
use crate::quantity::print::{constant, figure, fixed, with_unit};
use crate::quantity::{Amount, Kind, reeds::SYSTEMS};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Dents in a centimetre of the finest and the coarsest reed that is made: common practice, wide.
const MADE: (f64, f64) = (0.2, 60.0);
/// Usual, as on the cards of the formulas.
const USUAL: (f64, f64) = (0.5, 30.0);
/// Dents across thirty metres of the finest reed: wider looms are not made.
const MOST_DENTS: f64 = 200_000.0;
/// A sett that is off by more than this is another cloth: common practice.
const FAR: f64 = 0.25;
/// Rows that are shown; the rest can be asked for.
const SHOWN: usize = 10;

/// What a reed is chosen for, besides the sett.
#[derive(Clone, Debug, PartialEq)]
pub struct ReedAsk {
    /// Ends in a dent that may be drawn; an uneven order goes between two neighbours among them.
    pub ends_per_dent: Vec<f64>,
    /// The most dents after which an uneven order comes round again; 1 for even orders alone.
    pub period: usize,
    /// Width in the reed, selvedges and all.
    pub width: Option<Amount>,
    /// Denting of the selvedges.
    pub selvedge: Option<Selvedge>,
}

impl Default for ReedAsk {
    fn default() -> ReedAsk {
        let ends_per_dent = vec![1.0, 2.0, 3.0, 4.0];
        ReedAsk { ends_per_dent, period: 4, width: None, selvedge: None }
    }
}

/// A selvedge: on each side some dents, or a width, with ends a dent of its own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Selvedge {
    /// Ends in each of its dents.
    pub ends_per_dent: f64,
    /// How broad it is on each side.
    pub breadth: Breadth,
}

/// How broad a selvedge is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Breadth {
    /// So many dents.
    Dents(f64),
    /// A width, made up to whole dents.
    Width(Amount),
}

/// A reed with an order of ends in its dents.
#[derive(Clone, Debug, PartialEq)]
pub struct Sleying {
    /// The reed, as the mill calls it.
    pub reed: Amount,
    /// Ends in one dent after another, until the order comes round again.
    pub order: Vec<u32>,
    /// The sett that it gives, in threads a centimetre.
    pub sett: f64,
    /// How far that is from what is wanted, as a share of it.
    pub off: f64,
    /// Dents in the width, where one was given.
    pub dents: Option<u64>,
    /// Ends in the width, selvedges and all.
    pub ends: Option<u64>,
    /// Ends of both selvedges together.
    pub selvedge_ends: Option<u64>,
}

impl Sleying {
    /// The order as people say it: `2`, `3, 2`.
    pub fn words(&self) -> String {
        self.order.iter().map(u32::to_string).collect::<Vec<_>>().join(", ")
    }
    /// Ends in the first dents of the order.
    fn ends_in(&self, dents: u64) -> u64 {
        let period = self.order.len() as u64;
        let all: u64 = self.order.iter().map(|e| u64::from(*e)).sum();
        let rest = self.order.iter().take((dents % period) as usize).map(|e| u64::from(*e));
        dents / period * all + rest.sum::<u64>()
    }
}

/// Reeds and orders of ends for a sett, the nearest first.
#[derive(Clone, Debug)]
pub struct ReedChoice {
    /// The sett wanted.
    pub wanted: Amount,
    /// What else was asked.
    pub ask: ReedAsk,
    /// Every owned reed with every order, the nearest first; there is at least one.
    pub rows: Vec<Sleying>,
    /// What is unusual.
    pub warnings: Vec<String>,
}

/// Says what is wrong with a number that is no reed in its system.
pub fn check_reed(reed: &Amount) -> Result<()> {
    let Amount { number, unit } = *reed;
    if unit.kind != Kind::ReedCount {
        return Err(Error::unit(format!(
            "a {} was given for a reed; write it like '{}'",
            unit.kind.words(),
            Kind::ReedCount.example()
        )));
    }
    Kind::ReedCount.check(reed.base())?;
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
        let inch = figure(reed.base() * 2.54);
        return Err(Error::range(format!(
            "{given} is no reed: it would have {inch} dents in an inch, and reeds are made from {} \
             to {} (custom of the trade); {advice}",
            figure(least * 2.54),
            figure(most * 2.54),
        )));
    }
    // Dents counted one by one over more than an inch make a whole number; beers and porters are
    // halved, and reeds of 33½ dents in an inch are made.
    let counts_dents = unit.definition.starts_with("dents in") && unit.to_base(1.0) < 0.3;
    if counts_dents && number.fract() != 0.0 {
        return Err(Error::range(format!(
            "{given} is no reed: its number counts {}, and half a dent cannot be made; write {} or \
             {}, or the number in the reed's own system",
            unit.definition,
            constant(number.floor()),
            constant(number.ceil()),
        )));
    }
    Ok(())
}

/// Ends in a dent as whole numbers.
fn whole_ends_per_dent(given: &[f64]) -> Result<Vec<u32>> {
    let mut ends: Vec<u32> = Vec::new();
    for e in given {
        if !(e.is_finite() && *e > 0.0 && *e <= 64.0) {
            return Err(Error::range(format!(
                "{} ends in a dent cannot be drawn; write whole numbers such as 2, or [2, 3]",
                constant(*e)
            )));
        }
        if e.fract() != 0.0 {
            let (low, high) = (e.floor().max(1.0), e.ceil());
            return Err(Error::range(format!(
                "{} ends in a dent cannot be drawn: dents take whole ends; write [{low}, {high}] to \
                 go between the two, such as {high}, {low} in turn",
                constant(*e)
            )));
        }
        ends.push(*e as u32);
    }
    ends.sort_unstable();
    ends.dedup();
    Ok(ends)
}

/// `more` dents of `least + 1` among `period`, spread evenly, the fuller dent first.
fn order(least: u32, more: u32, period: u32) -> Vec<u32> {
    let upto = |i: u32| (i * more).div_ceil(period);
    (0..period).map(|i| least + upto(i + 1) - upto(i)).collect()
}

/// Every order between the numbers of ends allowed that comes round within a number of dents.
fn orders(ends: &[u32], longest: usize) -> Vec<Vec<u32>> {
    let gcd = |mut a: u32, mut b: u32| {
        while b > 0 {
            (a, b) = (b, a % b);
        }
        a
    };
    let mut all: Vec<Vec<u32>> = ends.iter().map(|e| vec![*e]).collect();
    for pair in ends.windows(2).filter(|pair| pair[1] == pair[0] + 1) {
        for period in 2..=u32::try_from(longest).unwrap_or(u32::MAX) {
            let mixes = (1..period).filter(|more| gcd(*more, period) == 1);
            all.extend(mixes.map(|more| order(pair[0], more, period)));
        }
    }
    all
}

impl Selvedge {
    /// Dents and ends on each side in a reed.
    fn in_reed(&self, dents_per_cm: f64) -> Result<(u64, u64)> {
        let ends = whole_ends_per_dent(&[self.ends_per_dent]).map_err(|e| e.at("selvedge"))?;
        let dents = match self.breadth {
            Breadth::Dents(n) if n >= 1.0 && n.fract() == 0.0 && n <= 1e4 => n,
            Breadth::Dents(n) => {
                return Err(Error::range(format!(
                    "selvedge: {} dents are not possible; write a whole number from 1 to 10000",
                    constant(n)
                )));
            }
            Breadth::Width(width) => {
                Kind::Length.check(width.base()).map_err(|e| e.at("selvedge"))?;
                (100.0 * dents_per_cm * width.base() - 1e-6).ceil().max(1.0)
            }
        };
        Ok((dents as u64, dents as u64 * u64::from(ends[0])))
    }
}

/// Finds the reed and the ends in a dent for a sett, out of the reeds that the mill owns.
///
/// ```
/// use hankwise::cloth::{ReedAsk, choose_reed};
/// use hankwise::quantity::parse;
///
/// let choice = choose_reed(&parse("20 ends/in")?, &[parse("8 dents/in")?], &ReedAsk::default())?;
/// assert_eq!(choice.rows[0].words(), "3, 2");
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn choose_reed(sett: &Amount, reeds: &[Amount], ask: &ReedAsk) -> Result<ReedChoice> {
    const OWNED: &str = "[\"40 dents/10 cm\", \"50 dents/10 cm\"]";
    if sett.unit.kind != Kind::Sett {
        return Err(Error::unit(format!(
            "a {} was given for a sett; write it like '{}'",
            sett.unit.kind.words(),
            Kind::Sett.example()
        ))
        .at("sett"));
    }
    let wanted = sett.base();
    Kind::Sett.check(wanted).map_err(|e| e.at("sett"))?;
    if wanted <= 0.0 {
        return Err(Error::range("sett: no reed gives 0 ends; write the sett wanted in the reed"));
    }
    let ends = whole_ends_per_dent(&ask.ends_per_dent).map_err(|e| e.at("ends_per_dent"))?;
    if ends.is_empty() {
        return Err(Error::notation(
            "ends_per_dent: no number is allowed; write one such as 2, or [2, 3]",
        ));
    }
    if !(1..=12).contains(&ask.period) {
        return Err(Error::range(format!(
            "period: an order of {} dents is not possible or shows no order; write 1 (even alone) \
             to 12",
            ask.period
        )));
    }
    for reed in reeds {
        check_reed(reed).map_err(|e| e.at("reeds"))?;
    }
    let bases = reeds.iter().map(Amount::base).collect();
    if reeds.is_empty() {
        return Err(Error::notation(format!(
            "reeds: no reed is owned; write those of the mill, such as {OWNED}"
        )));
    }
    let owned = Parts::new(bases, Kind::ReedCount, OWNED).map_err(|e| e.at("reeds"))?;
    let mut rows = Vec::new();
    let mut warnings = Vec::new();
    for part in owned.all() {
        let Some(reed) = reeds.iter().find(|r| r.base().total_cmp(part).is_eq()) else { continue };
        if !(USUAL.0..=USUAL.1).contains(part) {
            warnings.push(format!(
                "choose_reed: {} is outside the usual range, {} to {} dents in an inch (common \
                 practice)",
                with_unit(reed.number, reed.unit.symbol),
                figure(USUAL.0 * 2.54),
                figure(USUAL.1 * 2.54)
            ));
        }
        for order in orders(&ends, ask.period) {
            let mean = order.iter().map(|e| f64::from(*e)).sum::<f64>() / order.len() as f64;
            let sett = part * mean;
            let off = sett / wanted - 1.0;
            let (dents, ends, selvedge_ends) = (None, None, None);
            rows.push(
                Sleying { reed: *reed, order, sett, off, dents, ends, selvedge_ends }
                    .across(ask)?,
            );
        }
    }
    // What is as near is taken even before uneven, and then with the usual two ends in a dent.
    let rank = |s: &Sleying| {
        let off = (s.off.abs() * 1e9).round();
        (off, s.order.len() as f64, (f64::from(s.order[0]) - 2.0).abs())
    };
    rows.sort_by(|a, b| rank(a).partial_cmp(&rank(b)).unwrap_or(std::cmp::Ordering::Equal));
    if let Some(first) = rows.first().filter(|first| first.off.abs() > FAR) {
        warnings.push(format!(
            "choose_reed: no reed given comes near {}: the nearest, {} with {} in a dent, gives {}, {} % \
             {}; look for another reed, or allow other ends_per_dent",
            with_unit(sett.number, sett.unit.symbol),
            with_unit(first.reed.number, first.reed.unit.symbol),
            first.words(),
            with_unit(sett.unit.from_base(first.sett), sett.unit.symbol),
            fixed(100.0 * first.off.abs(), 0),
            if first.off > 0.0 { "too many" } else { "too few" }
        ));
    }
    Ok(ReedChoice { wanted: *sett, ask: ask.clone(), rows, warnings })
}

impl Sleying {
    /// With the dents and ends of the width.
    fn across(mut self, ask: &ReedAsk) -> Result<Sleying> {
        let per_cm = self.reed.base();
        let selvedge = ask.selvedge.map(|s| s.in_reed(per_cm)).transpose()?;
        let Some(width) = ask.width else {
            self.selvedge_ends = selvedge.map(|(_, ends)| 2 * ends);
            return Ok(self);
        };
        Kind::Length.check(width.base()).map_err(|e| e.at("width"))?;
        // A millionth of a dent: 29 dents must not become 28.999… by the rounding of binary figures.
        let dents = (100.0 * per_cm * width.base() + 1e-6).floor();
        if dents > MOST_DENTS {
            return Err(Error::range(format!(
                "width: {} has {} dents of {}, more than any loom takes; is its unit right?",
                with_unit(width.number, width.unit.symbol),
                figure(dents),
                with_unit(self.reed.number, self.reed.unit.symbol)
            )));
        }
        let dents = dents as u64;
        let (edge, edge_ends) = selvedge.unwrap_or_default();
        if dents <= 2 * edge {
            return Err(Error::range(format!(
                "width: {} has {dents} dents of {} and the selvedges take {}; nothing is left for \
                 the cloth",
                with_unit(width.number, width.unit.symbol),
                with_unit(self.reed.number, self.reed.unit.symbol),
                2 * edge
            )));
        }
        self.dents = Some(dents);
        self.ends = Some(self.ends_in(dents - 2 * edge) + 2 * edge_ends);
        self.selvedge_ends = selvedge.map(|(_, ends)| 2 * ends);
        Ok(self)
    }
}

impl ReedChoice {
    /// The nearest.
    pub fn nearest(&self) -> &Sleying {
        &self.rows[0]
    }

    /// The nearest sleyings, as a table.
    pub fn report(&self) -> Report {
        let unit = self.wanted.unit;
        let symbol = unit.symbol.replace("threads", "ends");
        let say = |base: f64| with_unit(unit.from_base(base), &symbol);
        let row = |s: &Sleying| {
            let sign = if s.off > 0.0 { "+" } else { "" };
            let mut cells = vec![
                with_unit(s.reed.number, s.reed.unit.symbol),
                s.words(),
                say(s.sett),
                format!("{sign}{} %", fixed(s.off * 100.0, 1)),
            ];
            cells.extend([s.dents, s.ends].into_iter().flatten().map(|n| figure(n as f64)));
            cells
        };
        let mut columns =
            vec![("reed", Right), ("ends in a dent", Left), ("gives", Right), ("off by", Right)];
        if self.ask.width.is_some() {
            columns.extend([("dents", Right), ("ends", Right)]);
        }
        let rows: Vec<_> = self.rows.iter().take(SHOWN).map(row).collect();
        let mut foot = Vec::new();
        if let Some(edge) = self.nearest().selvedge_ends {
            let among = if self.ask.width.is_some() { "; they are among the ends" } else { "" };
            foot.push(format!("The selvedges of the first take {edge} ends together{among}."));
        }
        if self.rows.iter().take(SHOWN).any(|s| s.order.len() > 1) {
            foot.push(
                "An uneven order shows as reed marks until finishing closes them: try it (common \
                 practice)."
                    .to_owned(),
            );
        }
        if self.rows.len() > SHOWN {
            foot.push(format!("{} more are further off.", self.rows.len() - SHOWN));
        }
        Report {
            title: "Reed".to_owned(),
            blocks: vec![Block {
                title: format!("{} wanted in the reed", say(self.wanted.base())),
                columns: columns.into_iter().map(|(n, align)| (n.to_owned(), align)).collect(),
                rows,
                foot,
                ..Block::default()
            }],
        }
    }
}
