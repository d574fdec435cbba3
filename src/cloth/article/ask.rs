//! What is asked about an article, and what was given.

use crate::cloth::ColourOrder;
use crate::error::{Error, Result, did_you_mean};
use crate::quantity::print::of_kind;
use crate::quantity::{Amount, Kind, parse_as, unit};

/// What to do about a figure that was not given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Missing {
    /// Ask for it; this is how one would write it.
    Ask(&'static str),
    /// Take a figure, in the base unit.
    Take(f64),
    /// Leave out what it is for.
    Leave,
}
use Missing::{Ask as Needed, Leave, Take};

/// A figure that is asked for.
#[derive(Debug)]
pub struct Asked {
    /// Its name, as an argument.
    pub name: &'static str,
    pub(super) symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    pub(super) usual: (f64, f64),
    pub(super) missing: Missing,
}

macro_rules! asks {
    ($($key:ident $name:literal $symbol:literal $kind:ident $usual:expr, $missing:expr, $words:literal;)*) => {
        /// A figure that is asked for.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub(super) enum Key { $($key),* }
        /// Everything that an article may be given, in the order of the arguments.
        pub const ASKED: &[Asked] = &[$(Asked {
            name: $name, symbol: $symbol, words: $words, kind: Kind::$kind, usual: $usual,
            missing: $missing,
        }),*];
    };
}

asks! {
    Width "width" "b" Length (0.05, 4.0), Needed("\"1.40 m\""), "finished width of the article";
    Length "length" "L" Length (0.2, 200.0), Needed("\"1.80 m\""), "finished length of the woven part, without fringes and hems";
    Picks "picks" "x" Sett (1.0, 60.0), Leave, "picks off the loom";
    FinishedPicks "finished_picks" "x_f" Sett (1.0, 60.0), Leave, "picks in the finished cloth";
    Warp "warp" "T₁" LinearDensity (5.0, 2000.0), Needed("\"8 Nm\""), "count of the warp";
    Weft "weft" "T₂" LinearDensity (5.0, 2000.0), Leave, "count of the weft; as the warp where it is not given";
    Sett "sett" "n" Sett (1.0, 60.0), Leave, "sett in the reed";
    FinishedEnds "finished_ends" "n_f" Sett (1.0, 60.0), Leave, "ends in the finished cloth";
    Reed "reed" "r" ReedCount (0.5, 30.0), Leave, "reed";
    EndsPerDent "ends_per_dent" "e" Count (1.0, 6.0), Leave, "ends in a dent";
    Pieces "pieces" "n" Count (1.0, 500.0), Take(1.0), "pieces wanted";
    WidthShrinkage "width_shrinkage" "s_w" Shrinkage (-0.05, 0.45), Take(0.0), "shrinkage in width, off the loom to finished";
    LengthShrinkage "length_shrinkage" "s_l" Shrinkage (-0.05, 0.45), Take(0.0), "shrinkage in length, off the loom to finished";
    DrawIn "draw_in" "d" DrawIn (0.0, 0.2), Take(0.0), "draw-in, reed to off the loom";
    TakeUp "take_up" "u" TakeUp (0.0, 0.2), Take(0.0), "take-up of the warp, on yarn length";
    Fringe "fringe" "q" Length (0.0, 0.5), Take(0.0), "fringe at each end";
    Hem "hem" "h" Length (0.0, 0.3), Leave, "cloth folded under at each end";
    SideHem "side_hem" "h_s" Length (0.0, 0.1), Leave, "cloth folded under at each side";
    Panels "panels" "k" Count (1.0, 4.0), Leave, "lengths sewn side by side";
    Seam "seam" "j" Length (0.0, 0.05), Leave, "cloth that each edge of a seam takes";
    SelvedgeEnds "selvedge_ends" "N_s" Count (1.0, 100.0), Leave, "ends of each selvedge";
    SelvedgePerDent "selvedge_per_dent" "e_s" Count (1.0, 8.0), Leave, "ends in a dent of the selvedge";
    PiecesPerWarp "pieces_per_warp" "n_w" Count (1.0, 500.0), Leave, "pieces on a warp";
    Gap "gap" "g" Length (0.0, 0.6), Leave, "warp left unwoven between pieces";
    Thrums "thrums" "a" Length (0.0, 5.0), Take(0.0), "warp that cannot be woven: tying on and thrums, for each warp";
    Header "header" "a_h" Length (0.0, 2.0), Leave, "warp for the heading, for each warp";
    Sample "sample" "L_s" Length (0.0, 3.0), Leave, "cloth off the loom woven as a sample, for each warp";
    Turn "turn" "t" Length (0.0, 0.1), Take(0.0), "allowance for the turn of the weft, for each pick";
    WarpWaste "warp_waste" "w₁" Fraction (0.0, 0.1), Leave, "waste of winding and warping, on the yarn in the warps";
    WeftWaste "weft_waste" "w₂" Fraction (0.0, 0.15), Take(0.0), "waste of weft, on what is woven in";
    Spare "spare" "v" Fraction (0.0, 0.3), Leave, "yarn to have over, on what is needed with its waste";
    Size "size" "z" Fraction (0.0, 0.5), Take(0.0), "size on the warp, on the yarn without it";
    Loss "loss" "m" Fraction (0.0, 0.25), Take(0.0), "mass lost in finishing";
    LoomWidth "loom_width" "B_m" Length (0.3, 6.0), Leave, "widest reed space of the loom";
    Beam "beam" "W_m" Length (1.0, 5000.0), Leave, "longest warp that the beam takes";
    Creel "creel" "b" Count (4.0, 1000.0), Leave, "ends in a section: the bobbins in the creel";
    Bobbin "bobbin" "l_b" Length (50.0, 100_000.0), Leave, "yarn on a warp bobbin";
    Pirn "pirn" "l_p" Length (10.0, 20_000.0), Leave, "yarn on a pirn";
    Cone "cone" "m_c" Mass (0.05, 10.0), Leave, "yarn on a cone";
    HaveWarp "warp_yarn" "y₁" Mass (0.05, 10_000.0), Leave, "warp yarn at hand";
    HaveWeft "weft_yarn" "y₂" Mass (0.05, 10_000.0), Leave, "weft yarn at hand";
    Have "yarn" "y" Mass (0.05, 10_000.0), Leave, "yarn at hand for warp and weft";
}

/// The figures that only the way from the yarn asks for.
pub(super) const AT_HAND: [Key; 3] = [Key::HaveWarp, Key::HaveWeft, Key::Have];
/// Sizes that leave nothing to weave, or nothing to weave on, where they are none.
const SIZES: [&str; 7] = ["width", "length", "loom_width", "beam", "bobbin", "pirn", "cone"];
/// The orders of colour and the colour of the selvedges.
const COLOURS: [&str; 3] = ["warp_colours", "weft_colours", "selvedge_colour"];

impl Key {
    pub(super) fn asked(self) -> &'static Asked {
        &ASKED[self as usize]
    }
}

/// A woven article as one wants it: sizes, yarns, settings.
///
/// ```
/// use hankwise::cloth::Article;
///
/// let throw = Article::read(&[
///     ("width", "1.40 m"), ("length", "1.80 m"), ("fringe", "12 cm"),
///     ("warp", "8 Nm"), ("sett", "4.8 ends/cm"), ("picks", "4.6 picks/cm"),
///     ("width_shrinkage", "12 %"), ("length_shrinkage", "10 %"), ("draw_in", "6 %"),
///     ("take_up", "8 %"), ("pieces", "12"), ("thrums", "90 cm"),
/// ])?.piece()?;
/// let reed = throw.find("reed_width")?.value;
/// assert!((reed - 1.40 / (0.88 * 0.94)).abs() < 1e-12);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug, Default)]
pub struct Article {
    given: Vec<Option<(Amount, Option<String>)>>,
    pub(super) warp_colours: Option<ColourOrder>,
    pub(super) weft_colours: Option<ColourOrder>,
    pub(super) selvedge_colour: Option<String>,
}

impl Article {
    /// Nothing given yet.
    pub fn new() -> Self {
        Article { given: vec![None; ASKED.len()], ..Article::default() }
    }
    /// From names and texts.
    pub fn read(given: &[(&str, &str)]) -> Result<Self> {
        let mut article = Article::new();
        for (name, text) in given {
            match Article::kind(name)? {
                None => article.colour(name, text)?,
                Some(kind) => {
                    let amount = parse_as(text, kind).map_err(|e| e.at(name))?;
                    article.set(name, amount, Some((*text).to_owned()))?;
                }
            }
        }
        Ok(article)
    }
    /// The kind of what has a name; none for colours.
    pub fn kind(name: &str) -> Result<Option<Kind>> {
        if COLOURS.contains(&name) {
            return Ok(None);
        }
        ASKED.iter().find(|a| a.name == name).map(|a| Some(a.kind)).ok_or_else(|| {
            let names = || ASKED.iter().map(|a| a.name).chain(COLOURS);
            let near = did_you_mean(name, names())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = names().collect::<Vec<_>>().join(", ");
            Error::notation(format!("a piece has no '{name}'{near}; there are {all}"))
        })
    }
    /// Gives a figure; `typed` is the text, where there was one.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let Some((place, asked)) = ASKED.iter().enumerate().find(|(_, a)| a.name == name) else {
            return Article::kind(name).map(|_| ());
        };
        asked.kind.check(amount.base()).map_err(|e| e.at(name))?;
        if asked.kind == Kind::Count && (amount.base() < 1.0 || amount.base().fract() != 0.0) {
            let near = amount.base().floor().max(1.0);
            return Err(Error::range(format!(
                "{name}: {} is no whole number from 1 up; write {near} or {}",
                of_kind(amount.base(), asked.kind),
                near + 1.0
            )));
        }
        let size = matches!(asked.kind, Kind::Sett) || SIZES.contains(&asked.name);
        if size && amount.base() == 0.0 {
            return Err(Error::range(format!(
                "{name} ({}) is 0, of which no piece is made; write more{}",
                asked.words,
                if let Needed(example) = asked.missing {
                    format!(", such as {example}")
                } else {
                    ", or leave it out".to_owned()
                }
            )));
        }
        self.given[place] = Some((amount, typed));
        Ok(())
    }
    /// Gives an order of colours, or the colour of the selvedges.
    pub fn colour(&mut self, name: &str, text: &str) -> Result<()> {
        let order = || text.parse::<ColourOrder>().map_err(|e| e.at(name));
        match name {
            "warp_colours" => self.warp_colours = Some(order()?),
            "weft_colours" => self.weft_colours = Some(order()?),
            "selvedge_colour" => {
                let colour = text.trim();
                if !colour.starts_with(|c: char| c.is_alphabetic() || c == '#') {
                    return Err(Error::notation(format!(
                        "{name}: '{colour}' is no colour; write one such as 'grey' (the ends are \
                         selvedge_ends)"
                    )));
                }
                self.selvedge_colour = Some(colour.to_owned());
            }
            _ => {
                let kind = Article::kind(name)?.map_or("", Kind::words);
                return Err(Error::notation(format!("{name} is a {kind}, not a colour")));
            }
        }
        Ok(())
    }

    pub(super) fn has(&self, key: Key) -> bool {
        self.given[key as usize].is_some()
    }
    /// What was given, in the base unit.
    pub(super) fn base(&self, key: Key) -> Option<f64> {
        self.given[key as usize].as_ref().map(|(amount, _)| amount.base())
    }
    /// The unit in which something was given.
    pub(super) fn unit(&self, key: Key) -> Option<&'static crate::quantity::Unit> {
        self.given[key as usize].as_ref().map(|(amount, _)| amount.unit)
    }
    /// What was given, or what is taken instead.
    pub(super) fn amount(&self, key: Key) -> (Amount, Option<String>) {
        let given = &self.given[key as usize];
        given.clone().unwrap_or_else(|| {
            let base = match (key, key.asked().missing) {
                (_, Take(base)) => base,
                (Key::EndsPerDent, _) if self.has(Key::Reed) => 2.0,
                (Key::EndsPerDent, _) => 1.0,
                (Key::SelvedgePerDent, _) => return self.amount(Key::EndsPerDent),
                (Key::Weft, _) => return self.amount(Key::Warp),
                _ => f64::NAN,
            };
            let kind = key.asked().kind;
            let name = if kind.family() == Kind::Fraction { "%" } else { kind.base() };
            // Every base unit is in the table: a test of the crate looks each up.
            let unit = unit(name, Some(kind)).unwrap_or_else(|e| unreachable!("{e}"));
            (Amount { number: base, unit }, None)
        })
    }

    /// Refuses what does not go together; says what is unusual.
    pub(super) fn check(&self) -> Result<Vec<String>> {
        for asked in ASKED {
            let key = ASKED.iter().position(|a| std::ptr::eq(a, asked));
            if let (Needed(example), Some(None)) = (asked.missing, key.map(|k| &self.given[k])) {
                let name = asked.name;
                let words = asked.words;
                return Err(Error::notation(format!(
                    "{name} ({words}) is missing; write {name}={example}"
                )));
            }
        }
        self.one_of(
            &[Key::Sett, Key::Reed, Key::FinishedEnds],
            "how close the ends stand",
            "sett=\"4.8 ends/cm\" in the reed, reed=\"24 dents/10 cm\" with ends_per_dent=2, or \
             finished_ends=\"6 ends/cm\"",
        )?;
        self.one_of(
            &[Key::Picks, Key::FinishedPicks],
            "how close the picks lie",
            "picks=\"4.6 picks/cm\" off the loom, or finished_picks=\"5 picks/cm\"",
        )?;
        if self.has(Key::Seam) && !self.has(Key::Panels) {
            return Err(Error::notation("a seam joins panels; write panels=2 too"));
        }
        if self.has(Key::SelvedgePerDent) && !self.has(Key::SelvedgeEnds) {
            return Err(Error::notation(
                "selvedge_per_dent was given without selvedge_ends; write both",
            ));
        }
        if self.selvedge_colour.is_some() && !self.has(Key::SelvedgeEnds) {
            return Err(Error::notation(
                "selvedge_colour was given without selvedge_ends; write both",
            ));
        }
        let outside = |(asked, given): (&Asked, &Option<(Amount, Option<String>)>)| {
            let base = given.as_ref()?.0.base();
            let (low, high) = asked.usual;
            (base < low || base > high).then(|| {
                format!(
                    "{} = {} is unusual; the usual range is {} to {} (common practice)",
                    asked.name,
                    of_kind(base, asked.kind),
                    of_kind(low, asked.kind),
                    of_kind(high, asked.kind)
                )
            })
        };
        Ok(ASKED.iter().zip(&self.given).filter_map(outside).collect())
    }

    /// One way to say a thing is asked for, and not two.
    fn one_of(&self, keys: &[Key], what: &str, write: &str) -> Result<()> {
        let given: Vec<&str> =
            keys.iter().filter(|key| self.has(**key)).map(|key| key.asked().name).collect();
        match given[..] {
            [_] => Ok(()),
            [] => Err(Error::notation(format!("{what} is missing; write {write}"))),
            _ => Err(Error::notation(format!(
                "{} were given, and each settles {what}: leave all but one out",
                given.join(" and ")
            ))),
        }
    }

    /// What matters and was not said: it is taken as none.
    pub(super) fn taken_as_none(&self) -> Vec<&'static str> {
        let said = |key: &Key| !self.has(*key);
        let all = [
            (Key::DrawIn, "draw-in"),
            (Key::WidthShrinkage, "shrinkage in width"),
            (Key::LengthShrinkage, "shrinkage in length"),
            (Key::TakeUp, "take-up of the warp"),
            (Key::Thrums, "thrums"),
            (Key::WeftWaste, "waste of weft"),
            (Key::Loss, "mass lost in finishing"),
        ];
        all.into_iter().filter(|(key, _)| said(key)).map(|(_, words)| words).collect()
    }
}
