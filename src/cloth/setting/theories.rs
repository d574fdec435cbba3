//! One question, every theory: how close the threads of a cloth can stand.

use super::bench::{Bench, plain};
use crate::cloth;
use crate::cloth::tables::setting::GALCERAN;
use crate::cloth::{System, Weave};
use crate::error::{Error, Result, did_you_mean};
use crate::particulars::Particulars;
use crate::quantity::print::{constant, figure, with_unit};
use crate::quantity::{Amount, Count, Kind, Sett, Unit, unit};
use crate::worked::{Worked, Working};

/// The class of a weave, as far as a theory asks for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WeaveClass {
    /// One up, one down.
    Plain,
    /// Any twill.
    Twill,
    /// Satin or sateen.
    Satin,
    /// Hopsack, mat.
    Hopsack,
    /// Any other, or not known.
    Other,
}

/// What a theory of setting has to know of a weave.
#[derive(Clone, Debug, PartialEq)]
pub struct Interlacing {
    /// The weave as the user named it.
    pub name: String,
    /// Its class.
    pub class: WeaveClass,
    /// Average float of the ends: picks in the repeat over intersections.
    pub warp_float: f64,
    /// Average float of the picks: ends in the repeat over intersections.
    pub weft_float: f64,
}

impl Interlacing {
    /// That of a weave; `name` is how it is called in what is shown.
    pub fn of(weave: &Weave, name: &str) -> Interlacing {
        Interlacing {
            name: name.to_owned(),
            class: WeaveClass::of(weave),
            warp_float: weave.average_float(System::Warp),
            weft_float: weave.average_float(System::Weft),
        }
    }
    /// That of a weave as people write it, see [`Weave::parse`].
    pub fn parse(text: &str) -> Result<Interlacing> {
        if text.to_lowercase().split_whitespace().any(|word| word == "double") {
            return Err(Error::notation(format!(
                "'{}' is two cloths, one over the other, and no theory is for both at once; ask for \
                 each layer with its own ends and picks, such as 'plain'",
                text.trim()
            )));
        }
        Ok(Interlacing::of(&Weave::parse(text)?, text.trim()))
    }
}

impl WeaveClass {
    /// The class of a weave: known by its build, not by its name.
    pub fn of(weave: &Weave) -> WeaveClass {
        let (ends, picks) = (weave.ends(), weave.picks());
        if ends != picks {
            return WeaveClass::Other;
        }
        if ends == 2 {
            return WeaveClass::Plain;
        }
        // Each end is the one before, so many picks on.
        let shifted = |by: usize| {
            (1..ends).all(|e| {
                (0..picks).all(|p| weave.is_up(e, (p + by) % picks) == weave.is_up(e - 1, p))
            })
        };
        if shifted(1) || shifted(picks - 1) {
            return WeaveClass::Twill;
        }
        let ups = (0..picks).filter(|p| weave.is_up(0, *p)).count();
        if (ups == 1 || ups == picks - 1) && (2..picks - 1).any(shifted) {
            return WeaveClass::Satin;
        }
        // Blocks of plain: every end is the first or its reverse, half of it up in one float.
        let alike =
            |e: usize| (0..picks).filter(|p| weave.is_up(e, *p) == weave.is_up(0, *p)).count();
        let blocks = (0..ends).all(|e| alike(e) == picks || alike(e) == 0);
        let one_float = |system| weave.interlacings(system).iter().all(|i| *i == 2);
        if blocks && 2 * ups == picks && one_float(System::Warp) && one_float(System::Weft) {
            return WeaveClass::Hopsack;
        }
        WeaveClass::Other
    }
}

/// What may be said besides weave and yarns.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SettingAsk {
    /// Ashenhurst's factor of the yarn; without it woollen and worsted are both shown.
    pub factor: Option<f64>,
    /// Specific volume of the yarn, for Peirce and Love; without it that of cotton.
    pub volume: Option<Amount>,
    /// Ends wanted.
    pub ends: Option<Amount>,
    /// Picks wanted.
    pub picks: Option<Amount>,
    /// The unit in which setts are shown.
    pub unit: Option<&'static Unit>,
}

/// What one theory says. Setts are in threads a centimetre.
#[derive(Clone, Debug, PartialEq)]
pub struct Theory {
    /// Short name, by which to ask for it.
    pub key: &'static str,
    /// Its name.
    pub name: &'static str,
    /// The constants that it was run with.
    pub with: String,
    /// The closest ends.
    pub ends: Option<f64>,
    /// The closest picks.
    pub picks: Option<f64>,
    /// The most picks at the ends that are wanted.
    pub picks_at_ends: Option<f64>,
    /// Why it says nothing.
    pub why_not: String,
    /// What it takes for granted.
    pub assumes: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
    /// How sure it is.
    pub grade: &'static str,
}

/// Every theory's closest setts, side by side.
#[derive(Clone, Debug)]
pub struct Settings {
    /// The weave.
    pub weave: Interlacing,
    /// The theories.
    pub rows: Vec<Theory>,
    /// What else was asked.
    pub ask: SettingAsk,
    /// The unit of setts.
    pub unit: &'static Unit,
    pub(super) works: Particulars,
    pub(super) yarns: String,
}

/// From the lowest to the highest, in threads a centimetre.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The lowest.
    pub low: f64,
    /// The highest.
    pub high: f64,
}

impl Spread {
    /// How much closer the highest is, as a share of the lowest.
    pub fn apart(&self) -> f64 {
        self.high / self.low - 1.0
    }
}

/// Usual counts in tex, as for a piece.
const USUAL: (f64, f64) = (5.0, 2000.0);

fn check(weave: &Interlacing, warp: &Amount, weft: &Amount, ask: &SettingAsk) -> Result<()> {
    for (name, float) in [("warp_float", weave.warp_float), ("weft_float", weave.weft_float)] {
        if !(float.is_finite() && float >= 1.0) {
            return Err(Error::range(format!(
                "{} is no average float; plain has 1, others more",
                figure(float)
            ))
            .at(name));
        }
    }
    let setts = [("ends", &ask.ends), ("picks", &ask.picks)];
    let setts = setts.into_iter().filter_map(|(n, a)| a.as_ref().map(|a| (n, a, Kind::Sett)));
    let volume = ask.volume.as_ref().map(|a| ("volume", a, Kind::SpecificVolume));
    let counts = [("warp", warp, Kind::LinearDensity), ("weft", weft, Kind::LinearDensity)];
    for (name, amount, kind) in counts.into_iter().chain(setts).chain(volume) {
        if amount.unit.kind != kind {
            return Err(Error::unit(format!(
                "a {} was given for a {}; write it like '{}'",
                amount.unit.kind.words(),
                kind.words(),
                kind.example()
            ))
            .at(name));
        }
        kind.check(amount.base()).map_err(|e| e.at(name))?;
        if kind == Kind::Sett && amount.base() <= 0.0 {
            return Err(Error::range(format!("{name}: 0 is no sett; leave it out or give one")));
        }
    }
    if let Some(factor) = ask.factor
        && !(factor.is_finite() && factor > 0.0)
    {
        return Err(Error::range(format!(
            "factor: {} is not possible; it is about 0.84 for woollen and 0.90 for worsted",
            constant(factor)
        )));
    }
    Ok(())
}

/// The closest setts of a weave in warp and weft, by every theory.
///
/// The theories take threads to interlace alike: where they do not, as in a crepe, the average float
/// hides the tightest thread. A double cloth is asked for layer by layer.
///
/// ```
/// use hankwise::cloth::{Interlacing, SettingAsk, settings};
/// use hankwise::quantity::parse;
///
/// let yarn = parse("100 tex")?;
/// let all = settings(Interlacing::parse("plain")?, &yarn, &yarn, SettingAsk::default())?;
/// let ashenhurst = all.find("ashenhurst_woollen")?;
/// assert!((ashenhurst.ends.unwrap() - 11.65).abs() < 0.005);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn settings(
    weave: Interlacing,
    warp: &Amount,
    weft: &Amount,
    ask: SettingAsk,
) -> Result<Settings> {
    check(&weave, warp, weft, &ask)?;
    let near = |a: f64, b: f64| (a / b - 1.0).abs() < 1e-9;
    let like_yarns = near(warp.base(), weft.base());
    let square = like_yarns && near(weave.warp_float, weave.weft_float);
    let mut rows = Vec::new();
    let works = Particulars::work(|desk| {
        let count =
            |name, symbol, words, amount: &Amount| desk.given(name, symbol, words, amount, None);
        let warp_given = count("warp", "T₁", "count of the warp", warp);
        let weft_given =
            if like_yarns { warp_given } else { count("weft", "T₂", "count of the weft", weft) };
        let float = |name, symbol, words, x: f64| -> Result<Count<Worked<'_>>> {
            Ok(desk.given(name, symbol, words, &plain(x)?, None))
        };
        let weft_float =
            float("weft_float", "F₂", "threads for each intersection of a pick", weave.weft_float)?;
        let warp_float = if near(weave.warp_float, weave.weft_float) {
            weft_float
        } else {
            float("warp_float", "F₁", "threads for each intersection of an end", weave.warp_float)?
        };
        let one = float("intersections", "I", "one intersection", 1.0)?;
        let mut bench = Bench {
            desk,
            weave: &weave,
            ask: &ask,
            warp: warp_given,
            weft: weft_given,
            weft_float,
            warp_float,
            one,
            like_yarns,
            square,
            rows: Vec::new(),
        };
        for (name, count) in [("warp", warp), ("weft", weft)] {
            if !(USUAL.0..=USUAL.1).contains(&count.base()) && (name == "warp" || !like_yarns) {
                desk.warn(format!(
                    "settings: {name} = {} is unusual; the usual range is {} to {} tex (common practice)",
                    with_unit(count.number, count.unit.symbol),
                    constant(USUAL.0),
                    constant(USUAL.1)
                ));
            }
        }
        if let Some(factor) = ask.factor {
            if !(0.8..=1.0).contains(&factor) {
                desk.warn(format!(
                    "settings: factor = {} is outside the usual range, 0.8 to 1 (Ashenhurst page \
                     1999, Taylor 1909)",
                    constant(factor)
                ));
            }
            bench.ashenhurst(factor, ["ashenhurst", "curvature"], "")?;
        } else {
            let woollen = ["ashenhurst_woollen", "curvature_woollen"];
            bench.ashenhurst(0.84, woollen, "woollen")?;
            let worsted = ["ashenhurst_worsted", "curvature_worsted"];
            bench.ashenhurst(0.90, worsted, "worsted")?;
        }
        bench.taylor()?;
        bench.brierley()?;
        bench.jam();
        bench.galceran("galceran_low", GALCERAN.0)?;
        bench.galceran("galceran_high", GALCERAN.1)?;
        rows = bench.rows;
        for warning in super::show::beyond(&rows, &ask) {
            desk.warn(warning);
        }
        Ok(crate::table::Report::default())
    })?;
    let shown = ask.unit.or(ask.ends.or(ask.picks).map(|a| a.unit));
    let unit = match shown {
        Some(unit) => unit,
        None => unit("threads/cm", Some(Kind::Sett))?,
    };
    if unit.kind != Kind::Sett {
        return Err(Error::unit(format!(
            "unit: '{}' is no unit of sett; write one such as 'threads/in'",
            unit.symbol
        )));
    }
    let say = |a: &Amount| with_unit(a.number, a.unit.symbol);
    let yarns =
        if like_yarns { say(warp) } else { format!("{} warp, {} weft", say(warp), say(weft)) };
    Ok(Settings { weave, rows, ask, unit, works, yarns })
}

impl Settings {
    /// A theory by its key.
    pub fn find(&self, key: &str) -> Result<&Theory> {
        self.rows.iter().find(|row| row.key == key).ok_or_else(|| {
            let keys = || self.rows.iter().map(|row| row.key);
            let near = did_you_mean(key, keys())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = keys().collect::<Vec<_>>().join(", ");
            Error::notation(format!("there is no theory '{key}'{near}; there are {all}"))
        })
    }
    /// How a theory's figure came about; `of` is `ends`, `picks` or `picks_at_ends`.
    pub fn working(&self, key: &str, of: &str) -> Result<Working> {
        let row = self.find(key)?;
        if row.ends.is_none() {
            return Err(Error::notation(format!("{key} gives no sett here: {}", row.why_not)));
        }
        if of == "picks_at_ends" && row.picks_at_ends.is_none() {
            return Err(Error::notation(format!(
                "{key} gives no picks at ends: give ends=, and closer ones where nothing jams yet; \
                 only brierley and jam know of them"
            )));
        }
        self.works.working(&format!("{key}_{of}"))
    }
    /// The ends and picks wanted, as shares of a theory's closest.
    pub fn shares(&self, row: &Theory) -> (Option<f64>, Option<f64>) {
        let of = |sett: &Option<Amount>, closest| share(sett.as_ref()?, closest);
        (of(&self.ask.ends, row.ends), of(&self.ask.picks, row.picks))
    }
    /// From the lowest closest sett of ends to the highest.
    pub fn spread(&self) -> Spread {
        let ends = self.rows.iter().filter_map(|row| row.ends);
        let (low, high) = (f64::INFINITY, 0.0);
        let (low, high) = ends.fold((low, high), |(l, h), x| (x.min(l), x.max(h)));
        Spread { low, high }
    }
    /// What is unusual.
    pub fn warnings(&self) -> &[String] {
        self.works.warnings()
    }
    /// Writes every figure as a live workbook.
    #[cfg(feature = "sheet")]
    pub fn to_sheet(&self, path: &std::path::Path) -> Result<()> {
        self.works.to_sheet(path)
    }
}

/// A sett as a share of a closest one.
pub(super) fn share(sett: &Amount, closest: Option<f64>) -> Option<f64> {
    closest.map(|c| cloth::share_of_maximum(Sett::base(sett.base()), Sett::base(c)).value())
}
