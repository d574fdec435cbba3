//! One invoice at several allowances, from a lot on the scale and a sample in the oven.

use super::{
    allowance, commercial_mass, oven_dry_from_content, oven_dry_mass, oven_dry_mass_of_lot,
    regain_from_content, regain_from_masses,
};
use crate::error::{Error, Result};
use crate::job::{Ask, Given, block};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{constant, figure, fixed, of_kind, with_unit};
use crate::quantity::{Amount, Fraction, Kind, Mass, MoistureContent, Regain, parse_as, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

static ITEMS: [Ask; 6] = [
    Ask::need("mass", "m", "mass on the scale", Kind::Mass, (0.01, 50_000.0), "\"500 kg\""),
    Ask::plain("sample", "m_s", "sample as taken", Kind::Mass, (0.001, 10.0)),
    Ask::plain("dry", "d", "sample, oven-dry", Kind::Mass, (0.001, 10.0)),
    Ask::plain("regain", "R", "regain found", Kind::Regain, (0.0, 0.4)),
    Ask::plain("content", "M", "moisture content found", Kind::MoistureContent, (0.0, 0.3)),
    Ask::plain(
        "fat",
        "a",
        "agreed allowance for fat, oil and dressing",
        Kind::Fraction,
        (0.0, 0.1),
    ),
];

/// An allowance at which to invoice, and where it comes from.
#[derive(Clone, Debug)]
pub struct Allowance {
    amount: Amount,
    typed: Option<String>,
    from: String,
}

impl Allowance {
    /// An allowance that the contract gives.
    pub fn agreed(amount: Amount, typed: Option<String>) -> Result<Self> {
        Kind::Regain.check(amount.base())?;
        Ok(Allowance { amount, typed, from: "as given".to_owned() })
    }
    /// From a text: a share such as `17 %`, or a fibre of a list such as `wool carded` or `wool ASTM`.
    pub fn read(text: &str) -> Result<Self> {
        if !text.starts_with(char::is_alphabetic) {
            return Self::agreed(parse_as(text, Kind::Regain)?, Some(text.trim().to_owned()));
        }
        let found = allowance(text, None)?;
        let unit = unit("%", Some(Kind::Regain))?;
        let amount = Amount { number: found.low, unit };
        let from =
            format!("{}, {} ({}, {})", found.of[1], found.of[0], found.source, found.grade.word());
        Ok(Allowance { amount, typed: None, from })
    }
    /// The name of its invoice mass among the particulars.
    fn name(&self) -> String {
        format!("invoice_at_{}", constant(tidy(100.0 * self.amount.base())))
    }
}

/// Without the rounding of a change of unit.
fn tidy(x: f64) -> f64 {
    (x * 1e9).round() / 1e9
}

/// What the invoice of a lot asks for.
pub fn invoice_items() -> Given {
    Given::new("invoice", &ITEMS)
}

/// Regain found, oven-dry mass and invoice mass of a lot at each of several allowances.
///
/// ```
/// use hankwise::fibre::{Allowance, invoice, invoice_items};
///
/// let lot = invoice_items().read(&[("mass", "500 kg"), ("sample", "250 g"), ("dry", "212.3 g")])?;
/// let found = invoice(&lot, &[Allowance::read("17 %")?, Allowance::read("wool combed")?])?;
/// assert!((found.find("invoice_at_17")?.value - 496.782).abs() < 1e-9);
/// assert!((found.find("invoice_at_18.25")?.value - 502.0895).abs() < 1e-9);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn invoice(given: &Given, allowances: &[Allowance]) -> Result<Particulars> {
    check(given, allowances)?;
    let cleaned = cleaned(given);
    Particulars::work(|desk| {
        given.warn(desk);
        let mass: Mass<_> = given.need(desk, "mass")?;
        let dry = oven_dry(given, desk, mass)?;
        let words =
            if cleaned { "clean oven-dry mass of the lot" } else { "oven-dry mass of the lot" };
        let dry = desk.figure("oven_dry", words, dry);
        let gone = Mass::from(mass.v() - dry.v());
        if cleaned {
            desk.figure("gone", "water and fat in the lot as weighed", gone);
        } else {
            desk.figure("water", "water in the lot as weighed", gone);
        }
        let fat: Fraction<_> = given.or(desk, "fat", 0.0)?;
        let mut rows = Vec::new();
        let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
        let unit = given.unit("mass");
        let say = |x: f64| unit.map_or_else(|| figure(x), |u| with_unit(u.from_base(x), u.symbol));
        for (k, one) in allowances.iter().enumerate() {
            let name = one.name();
            if desk.found(&name).is_some() {
                return Err(Error::notation(format!(
                    "allowances: {} % is given twice; leave one out",
                    constant(tidy(100.0 * one.amount.base()))
                )));
            }
            let (key, symbol) = (format!("allowance_{}", k + 1), format!("A_{}", k + 1));
            let words = format!("allowance: {}", one.from);
            let agreed: Regain<_> =
                desk.given(&key, &symbol, &words, &one.amount, one.typed.clone());
            let percent = format!("{} %", constant(tidy(100.0 * one.amount.base())));
            let words = format!("invoice mass at {percent}");
            let found = desk.figure(&name, &words, commercial_mass(dry, agreed, fat)).value();
            (least, most) = (least.min(found), most.max(found));
            let off = 100.0 * (found / mass.value() - 1.0);
            let sign = if off > 0.0 { "+" } else { "" };
            rows.push(vec![
                percent,
                say(found),
                format!("{sign}{} %", fixed(off, 2)),
                one.from.clone(),
            ]);
        }
        let mut at =
            block(desk, "The lot", &["regain", "content", "oven_dry", "water", "gone"], unit);
        at.rows.insert(0, vec!["mass on the scale".to_owned(), say(mass.value())]);
        let columns =
            [("allowance", Right), ("invoice mass", Right), ("to the scale", Right), ("", Left)];
        let mut foot = vec![
            "The allowance is agreed before the lot is weighed, and sample and lot are weighed together."
                .to_owned(),
        ];
        if cleaned {
            foot.insert(
                0,
                format!(
                    "Beside each allowance for water, {} for fat, oil and dressing, on the clean oven-dry \
                     mass: the sample was cleaned before it was dried.",
                    of_kind(fat.value(), Kind::Fraction)
                ),
            );
        }
        if allowances.len() > 1 {
            foot.insert(
                0,
                format!(
                    "Between the least and the most there are {}, {} % of the least: that is what the \
                     agreement is about.",
                    say(most - least),
                    fixed(100.0 * (most / least - 1.0), 1)
                ),
            );
        }
        let invoiced = Block {
            title: "Invoice".to_owned(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows,
            foot,
            ..Block::default()
        };
        Ok(Report {
            title: "Invoice mass at the agreed regain".to_owned(),
            blocks: vec![at, invoiced],
        })
    })
}

/// True where the sample was cleaned of its fat before it was dried.
fn cleaned(given: &Given) -> bool {
    given.base("fat").is_some_and(|fat| fat > 0.0)
}

fn check(given: &Given, allowances: &[Allowance]) -> Result<()> {
    if allowances.is_empty() {
        return Err(Error::notation(
            "allowances is missing: an invoice is at the regain that was agreed; write \
             allowances=['17 %'], or by fibre and list allowances=['wool carded']",
        ));
    }
    given.not_both("regain", "content", "one gives the other")?;
    for one in ["regain", "content"] {
        given.not_both(one, "dry", "the dried sample gives it")?;
    }
    if cleaned(given) && (given.has("regain") || given.has("content")) {
        // A mass without water still has its fat: the allowance would count it twice.
        return Err(Error::notation(
            "fat is allowed for where the sample was cleaned before it was dried; write its masses as \
             sample= and dry= in place of regain or content, or leave fat out",
        ));
    }
    if let (Some(sample), Some(dry)) = (given.base("sample"), given.base("dry"))
        && dry > sample
    {
        return Err(Error::range(
            "dry is more than sample: the oven takes water away; are they exchanged?",
        ));
    }
    Ok(())
}

/// The oven-dry mass, by the way that was given; regain and content beside it.
fn oven_dry<'t>(
    given: &Given,
    desk: &Desk<'t>,
    mass: Mass<Worked<'t>>,
) -> Result<Mass<Worked<'t>>> {
    let regain_words = "regain found, on the oven-dry mass";
    let content_words = "moisture content found, on the mass as weighed";
    if let Some(regain) = given.get::<Regain<_>>(desk, "regain") {
        desk.figure("content", content_words, super::moisture_content(regain));
        return Ok(oven_dry_mass(mass, regain));
    }
    if let Some(content) = given.get::<MoistureContent<_>>(desk, "content") {
        desk.figure("regain", regain_words, regain_from_content(content));
        return Ok(oven_dry_from_content(mass, content));
    }
    if !given.has("sample") && !given.has("dry") {
        return Err(Error::notation(
            "what the lot holds of water is missing; write sample='250 g' and dry='212.3 g' from the \
             oven, or regain='17.8 %' on the dry mass, or content='15.1 %' on the mass as weighed",
        ));
    }
    let sample: Mass<_> = given.need(desk, "sample")?;
    let dried: Mass<_> = given.need(desk, "dry")?;
    // What a cleaned sample lost is not its water alone.
    if !cleaned(given) {
        let regain = desk.figure("regain", regain_words, regain_from_masses(sample, dried));
        desk.figure("content", content_words, super::moisture_content(regain));
    }
    Ok(oven_dry_mass_of_lot(mass, sample, dried))
}
