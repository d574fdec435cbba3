//! A test wash of the lot's own samples.

use super::{state_ratio, washed_clean_share};
use crate::error::{Error, Result};
use crate::job::{Ask, Given};
use crate::law::t_two_sided;
use crate::normal;
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{constant, fixed, of_kind};
use crate::quantity::{Amount, Fraction, Kind, Mass, Ratio, Regain, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

static ITEMS: [Ask; 5] = [
    Ask::plain(
        "regain",
        "R",
        "water on the washed wool, on clean dry fibre",
        Kind::Regain,
        (0.0, 0.25),
    ),
    Ask::plain("fat", "o", "fat left on it, on clean dry fibre", Kind::Fraction, (0.0, 0.05)),
    Ask::plain(
        "vegetable",
        "v",
        "vegetable matter left in it, on the same",
        Kind::Fraction,
        (0.0, 0.1),
    ),
    Ask::plain(
        "confidence",
        "C",
        "share of cases that the interval takes in",
        Kind::Fraction,
        (0.8, 0.999),
    ),
    Ask::plain(
        "reading",
        "r",
        "how far the balance may be misread, either way",
        Kind::Mass,
        (0.0, 0.05),
    ),
];

/// Clean dry fibre that greasy wool usually has.
const USUAL: std::ops::RangeInclusive<f64> = 0.3..=0.8;

/// A mass as it was given.
pub type Weighed = (Amount, Option<String>);

/// What a test wash asks for beside the weighings.
pub fn test_wash_items() -> Given {
    Given::new("test_wash", &ITEMS)
}

/// The clean share of a lot from samples that were washed, with its interval, and the line for the lot
/// file.
///
/// The interval is for the lot's own share, the samples being drawn from all over it; that of one more
/// sample is wider.
///
/// ```
/// use hankwise::fibre::{test_wash, test_wash_items};
/// use hankwise::quantity::parse;
///
/// let weighed = |text: &str| Ok::<_, hankwise::Error>((parse(text)?, None));
/// let given = test_wash_items().read(&[("regain", "16 %")])?;
/// let greasy = [weighed("200 g")?, weighed("200 g")?];
/// let washed = [weighed("120.64 g")?, weighed("111.36 g")?];
/// let lot = test_wash(&greasy, &washed, &given)?;
/// // 104 and 96 g of clean dry fibre: 50 % with a standard error of 2 %, and t is 12.7 for two.
/// assert!((lot.find("clean")?.value - 0.5).abs() < 1e-12);
/// assert!((lot.find("high")?.value - (0.5 + 12.7062 * 0.02)).abs() < 1e-5);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn test_wash(greasy: &[Weighed], washed: &[Weighed], given: &Given) -> Result<Particulars> {
    check(greasy, washed)?;
    let confidence = given.base("confidence").unwrap_or(0.95);
    if !(0.5..1.0).contains(&confidence) {
        return Err(Error::range(format!(
            "confidence: {} is given; write a share from 50 % to under 100 %, such as '95 %'",
            of_kind(confidence, Kind::Fraction)
        )));
    }
    Particulars::work(|desk| {
        given.warn(desk);
        let enter = |all: &[Weighed], name: &str, symbol: &str, words: &str| {
            let one = |(k, (amount, typed)): (usize, &Weighed)| {
                let (name, symbol) = (format!("{name}_{}", k + 1), format!("{symbol}_{}", k + 1));
                desk.given::<Mass<_>>(&name, &symbol, words, amount, typed.clone())
            };
            all.iter().enumerate().map(one).collect::<Vec<_>>()
        };
        let dirty = enter(greasy, "greasy", "g", "greasy mass of a sample");
        let clean = enter(washed, "washed", "c", "washed mass of a sample");
        let regain: Regain<_> = given.need(desk, "regain")?;
        let fat: Fraction<_> = given.or(desk, "fat", 0.0)?;
        let vegetable: Fraction<_> = given.or(desk, "vegetable", 0.0)?;
        let state = state_ratio(regain, fat, vegetable);
        let share = washed_clean_share(state, &clean, &dirty);
        if share.value() > 1.0 {
            return Err(Error::range(
                "the samples hold more clean fibre than they weighed in the grease; are greasy and \
                 clean exchanged?",
            ));
        }
        if !USUAL.contains(&share.value()) {
            desk.warn(format!(
                "clean = {} is unusual; the usual range is {} to {} (common practice)",
                percent(share.value()),
                of_kind(*USUAL.start(), Kind::Fraction),
                of_kind(*USUAL.end(), Kind::Fraction)
            ));
        }
        let share = desk.figure("clean", "clean dry fibre in the greasy wool", share);
        let mut rows = Vec::new();
        for (k, (g, c)) in dirty.iter().zip(&clean).enumerate() {
            let own = c.value() / (state.value() * g.value());
            if own > 1.0 {
                return Err(Error::range(format!(
                    "sample {} holds more clean fibre than it weighed in the grease; does each stand \
                     beside its own?",
                    k + 1
                )));
            }
            rows.push(vec![format!("sample {}", k + 1), percent(own)]);
        }
        rows.push(vec!["all together".to_owned(), percent(share.value())]);
        let mut foot = Vec::new();
        if let Some(reading) = given.get::<Mass<_>>(desk, "reading") {
            let number = V::constant(greasy.len() as f64);
            let off = number * reading.v();
            let (all_clean, all_dirty) = (total(&clean), total(&dirty));
            let low = (all_clean - off).max(0.0) / (state.v() * (all_dirty + off));
            let high = (all_clean + off) / (state.v() * (all_dirty - off).max(1e-12));
            let low = desk.figure("reading_low", "least, by the balance alone", Ratio::from(low));
            let high = desk.figure("reading_high", "most, by the balance alone", Ratio::from(high));
            foot.push(format!(
                "The balance alone leaves {} to {}, all readings off the same way.",
                percent(low.value()),
                percent(high.value())
            ));
        }
        if greasy.len() == 1 {
            desk.warn(
                "one sample says nothing of how the lot varies: there is no interval for the lot; wash \
                 two or more, drawn from all over it",
            );
        } else {
            let error = standard_error(share, state, &clean, &dirty);
            foot.extend(interval(desk, greasy.len(), confidence, share, error)?);
        }
        foot.push(
            "Clean dry fibre: without water, fat and vegetable matter. A yield of the trade is larger: \
             clean_yields turns it into each."
                .to_owned(),
        );
        Ok(Report {
            title: format!("Test wash: {} of clean dry fibre", percent(share.value())),
            blocks: vec![Block {
                title: "Of the greasy mass".to_owned(),
                columns: vec![(String::new(), Left), ("clean dry fibre".to_owned(), Right)],
                rows,
                foot,
                ..Block::default()
            }],
        })
    })
}

type Work<'t> = Worked<'t>;

fn total<'t>(masses: &[Mass<Work<'t>>]) -> V<Work<'t>> {
    V::sum(masses.iter().map(|m| m.v()))
}

/// Standard error of a ratio of sums: each sample is compared with what the share of all makes of its own
/// greasy mass.
fn standard_error<'t>(
    share: Fraction<Work<'t>>,
    state: Ratio<Work<'t>>,
    clean: &[Mass<Work<'t>>],
    greasy: &[Mass<Work<'t>>],
) -> Ratio<Work<'t>> {
    let n = greasy.len() as f64;
    let off = |(c, g): (&Mass<_>, &Mass<_>)| (c.v() / state.v() - share.v() * g.v()).squared();
    let squares = V::sum(clean.iter().zip(greasy).map(off));
    Ratio::from((squares * (n / (n - 1.0))).sqrt() / total(greasy))
}

fn percent(x: f64) -> String {
    format!("{} %", fixed(x * 100.0, 2))
}

/// The interval of the lot, that of one more sample, and the line for the lot file.
fn interval<'t>(
    desk: &Desk<'t>,
    samples: usize,
    confidence: f64,
    share: Fraction<Work<'t>>,
    error: Ratio<Work<'t>>,
) -> Result<Vec<String>> {
    let error = desk.figure("standard_error", "standard error of the clean share", error).v();
    let plain = unit("", Some(Kind::Ratio))?;
    let freedom = (samples - 1) as f64;
    let constant_of = |name: &str, symbol: &str, words: &str, number: f64| -> V<Work<'t>> {
        desk.given::<Ratio<_>>(name, symbol, words, &Amount { number, unit: plain }, None).v()
    };
    let t = constant_of(
        "t",
        "t",
        "deviate of Student's law for the confidence",
        t_two_sided(confidence, freedom),
    );
    let ends = |name: &str, words: &str, half: V<Work<'t>>| {
        let low = Fraction::from((share.v() - half).max(0.0));
        let high = Fraction::from((share.v() + half).min(1.0));
        let low = desk.figure(&format!("{name}low"), &format!("least {words}"), low);
        let high = desk.figure(&format!("{name}high"), &format!("most {words}"), high);
        format!("{} to {}", percent(low.value()), percent(high.value()))
    };
    let lot = ends("", "for the lot", t * error);
    // What binary arithmetic leaves of nothing is no spread.
    if error.value() < 1e-9 {
        return Ok(vec![
            "The samples do not differ: they were weighed too coarsely, or are no samples from all over \
             the lot; there is no interval."
                .to_owned(),
        ]);
    }
    let n = samples as f64;
    let next = ends("next_", "for one more sample", t * error * (n + 1.0).sqrt());
    // The plan draws from a normal distribution: widened so that its 5 % and 95 % points are those of
    // Student's law.
    let wider = constant_of(
        "widened",
        "w",
        "5 % point of Student's law over that of the normal law",
        t_two_sided(0.9, freedom) / normal::Z95,
    );
    let deviation =
        desk.figure("deviation", "standard deviation for the lot file", Ratio::from(wider * error));
    let sure = constant((confidence * 1000.0).round() / 10.0);
    let mut lines = vec![
        format!("The lot itself, {sure} %: {lot} (Student's t, {samples} samples)."),
        format!("One more sample like these, {sure} %: {next}."),
    ];
    if deviation.value() > 0.0 && deviation.value() < share.value() {
        let [mean, sd] = [share.value(), deviation.value()].map(|x| fixed(x * 100.0, 2));
        lines.push(format!(
            "For the lot file: clean = {{ mean = \"{mean} %\", sd = \"{sd} %\" }}, widened to the spread \
             of Student's law."
        ));
    }
    if samples < 4 {
        lines.push(
            "Few samples: most of the width is that so few tell little. One more narrows it much."
                .to_owned(),
        );
    }
    Ok(lines)
}

fn check(greasy: &[Weighed], washed: &[Weighed]) -> Result<()> {
    if greasy.is_empty() {
        return Err(Error::notation("no sample was given; write greasy=['200 g', '210 g']"));
    }
    if greasy.len() != washed.len() {
        return Err(Error::notation(format!(
            "{} samples in the grease and {} clean: give both masses of each, in the same order",
            greasy.len(),
            washed.len()
        )));
    }
    for (name, all) in [("greasy", greasy), ("clean", washed)] {
        for (amount, _) in all {
            Kind::Mass.check(amount.base()).map_err(|e| e.at(name))?;
            if amount.base() <= 0.0 {
                return Err(Error::range(format!("{name}: a sample weighs more than nothing")));
            }
        }
    }
    Ok(())
}
