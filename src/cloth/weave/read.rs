//! Reading a weave from the words of the trade.

use std::str::FromStr;

use super::{Hand, System, Weave};
use crate::error::{Error, Result, did_you_mean};

const HELP: &str = "write a name such as 'plain', '2/2 twill', '5/2/1/2 twill S', '8-end satin move 3', \
                    '2/2 hopsack', '2/2 warp rib', '2/2 herringbone', '3/1 broken twill', 'double \
                    plain', a mat such as '4/1(3+2)', an ISO 9354 code such as '20-04 02-01-01', or \
                    the picks from the first woven, such as '10 01'";

/// Longest text that is taken for a name or a code.
const LONG: usize = 400;

/// What kind of weave a name is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sort {
    Plain,
    Twill,
    Satin,
    Sateen,
    Hopsack,
    Rib,
    Herringbone,
    Pointed,
    Broken,
}

const SORTS: [(&str, Sort); 17] = [
    ("plain", Sort::Plain),
    ("tabby", Sort::Plain),
    ("twill", Sort::Twill),
    ("satin", Sort::Satin),
    ("sateen", Sort::Sateen),
    ("hopsack", Sort::Hopsack),
    ("mat", Sort::Hopsack),
    ("matt", Sort::Hopsack),
    ("basket", Sort::Hopsack),
    ("rib", Sort::Rib),
    ("rep", Sort::Rib),
    ("repp", Sort::Rib),
    ("herringbone", Sort::Herringbone),
    ("pointed", Sort::Pointed),
    ("waved", Sort::Pointed),
    ("zigzag", Sort::Pointed),
    ("broken", Sort::Broken),
];

/// Other words that a name may have.
const WORDS: [&str; 22] = [
    "weave",
    "cloth",
    "warp",
    "weft",
    "s",
    "z",
    "left",
    "right",
    "left-hand",
    "right-hand",
    "hand",
    "move",
    "step",
    "over",
    "end",
    "ends",
    "weft-way",
    "warp-faced",
    "weft-faced",
    "double",
    "crepe",
    "of",
];

/// The parts of a name.
#[derive(Default)]
struct Name {
    formula: Option<Vec<usize>>,
    sorts: Vec<Sort>,
    ends: Option<usize>,
    step: Option<usize>,
    hand: Option<Hand>,
    system: Option<System>,
    weft_way: bool,
}

impl Weave {
    /// Reads a weave: a name of the trade, a mat, an ISO 9354 code, or its squares. Picks on one line
    /// are in the order of weaving; several lines are a drawing, with the first pick at the bottom.
    ///
    /// A satin is warp-faced and a sateen weft-faced. Twills rise to the right (Z) unless `S` or
    /// `left-hand` is with them. `over 12 ends` says where a herringbone or a pointed twill turns;
    /// `weft-way` has it turn after so many picks instead.
    ///
    /// ```
    /// use hankwise::cloth::Weave;
    ///
    /// let twill: Weave = "2/2 twill".parse()?;
    /// assert_eq!(twill.rows(), ["1001", "1100", "0110", "0011"]);
    /// assert_eq!(twill, Weave::parse("1001 1100 0110 0011")?);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn parse(text: &str) -> Result<Weave> {
        if text.len() > 4_000_000 {
            return Err(Error::notation("a weave must be shorter than four million letters"));
        }
        let text = text.trim();
        if text.len() <= LONG && super::iso::looks_like(text) {
            return super::iso::expand(text);
        }
        if let Some(rows) = rows(text) {
            return Weave::from_rows(&rows);
        }
        if text.len() > LONG {
            let begin: String = text.chars().take(40).collect();
            return Err(Error::notation(format!("'{begin}…' is too long for a name; {HELP}")));
        }
        let lower = text.to_lowercase().replace('ê', "e");
        if let Some(mat) = mat(&lower) {
            return mat;
        }
        let words: Vec<&str> = lower
            .split(|c: char| c.is_whitespace() || c == ',')
            .filter(|w| !w.is_empty())
            .collect();
        let sentence = |from: usize| words[from..].join(" ");
        match words[..] {
            ["double", "double", ..] => Err(Error::notation(format!(
                "'{text}': a cloth of more than two layers is given by its squares"
            ))),
            ["double", _, ..] => {
                let single = Weave::parse(&sentence(1).replace("cloth", ""))?;
                Weave::double(&single, &single)
            }
            ["crepe", "of", _, ..] => Weave::parse(&sentence(2))?.crepe(),
            ["crepe", ..] => Err(Error::notation(
                "there are many crepes: write its picks, or 'crepe of 1/3 twill' for one made by \
                 turning a weave in the four quarters of the repeat",
            )),
            _ => name(text, &words)?.make(text),
        }
    }
}

impl FromStr for Weave {
    type Err = Error;
    fn from_str(text: &str) -> Result<Weave> {
        Weave::parse(text)
    }
}

/// The picks of a text of squares, the first woven first.
fn rows(text: &str) -> Option<Vec<&str>> {
    let split = |c: char| c.is_whitespace() || c == ',' || c == ';';
    let marks = "10xX#.-■□";
    let mut rows: Vec<&str> = text.split(split).filter(|row| !row.is_empty()).collect();
    let drawn = rows.iter().all(|row| row.chars().all(|c| marks.contains(c)));
    let lines = text.contains('\n');
    // One word of dashes, dots or a number is not a drawing.
    if rows.len() < 2 || !(drawn || lines) {
        return None;
    }
    if lines {
        rows.reverse();
    }
    Some(rows)
}

/// A mat such as 4/1(3+2).
fn mat(text: &str) -> Option<Result<Weave>> {
    let (formula, rest) = text.split_once('(')?;
    let (ends, after) = rest.split_once(')')?;
    if !matches!(after.trim(), "" | "mat" | "matt" | "hopsack") {
        return None;
    }
    let formula = numbers(formula.trim(), '/')?;
    let ends = numbers(ends, '+')?;
    Some(Weave::mat(&formula, &ends).map_err(|e| e.at(text)))
}

fn numbers(text: &str, between: char) -> Option<Vec<usize>> {
    text.split(between).map(|n| whole(n.trim())).collect()
}

fn whole(text: &str) -> Option<usize> {
    (text.len() < 7 && !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit()))
        .then(|| text.parse().ok())?
}

fn name(text: &str, words: &[&str]) -> Result<Name> {
    let mut name = Name::default();
    let mut rest = words.iter().copied().peekable();
    let once = |there: bool, what: &str| {
        if there {
            Err(Error::notation(format!("'{text}' has two {what}; leave one")))
        } else {
            Ok(())
        }
    };
    while let Some(word) = rest.next() {
        let formula = numbers(word, '/').filter(|f| f.len() > 1);
        // 2x2 is said of hopsacks alone.
        let square = numbers(&word.replace('×', "x"), 'x').filter(|f| f.len() == 2);
        if let Some(formula) = formula.or(square) {
            once(name.formula.is_some(), "formulas")?;
            name.formula = Some(formula);
        } else if let Some((_, sort)) = SORTS.iter().find(|(w, _)| *w == word) {
            name.sorts.push(*sort);
        } else if let Some(ends) = word.strip_suffix("-end").or(word.strip_suffix("-ends")) {
            once(name.ends.is_some(), "numbers of ends")?;
            name.ends = Some(count(ends, text)?);
        } else if let Some(ends) = whole(word) {
            once(name.ends.is_some(), "numbers of ends")?;
            name.ends = Some(ends);
        } else {
            match word {
                "weave" | "cloth" | "over" | "end" | "ends" | "picks" | "hand" => {}
                "move" | "step" => {
                    once(name.step.is_some(), "moves")?;
                    name.step = Some(count(rest.next().unwrap_or_default(), text)?);
                }
                "s" | "left" | "left-hand" => name.hand = Some(Hand::Left),
                "z" | "right" | "right-hand" => name.hand = Some(Hand::Right),
                "warp" | "warp-faced" => name.system = Some(System::Warp),
                "weft" | "weft-faced" => name.system = Some(System::Weft),
                "weft-way" => name.weft_way = true,
                _ => {
                    let known = SORTS.iter().map(|(w, _)| *w).chain(WORDS);
                    // A word may be known and used where it has no meaning.
                    let near = did_you_mean(word, known).filter(|near| *near != word);
                    let near = near.map(str::to_owned).or_else(|| slashed(word));
                    let mended = near.map(|near| {
                        let mend =
                            |w: &&str| if *w == word { near.clone() } else { (*w).to_owned() };
                        words.iter().map(mend).collect::<Vec<_>>().join(" ")
                    });
                    let tail = match mended.filter(|mended| Weave::parse(mended).is_ok()) {
                        Some(mended) => format!("did you mean '{mended}'?"),
                        None => HELP.to_owned(),
                    };
                    return Err(Error::notation(format!(
                        "unknown weave '{text}'{}; {tail}",
                        if word == text { String::new() } else { format!(" ('{word}')") }
                    )));
                }
            }
        }
    }
    Ok(name)
}

/// A formula with other signs between its numbers, such as 2-2.
fn slashed(word: &str) -> Option<String> {
    let mended = word.replace(['-', ':', '.', '_'], "/");
    numbers(&mended, '/').filter(|f| f.len() > 1).map(|_| mended)
}

fn count(word: &str, text: &str) -> Result<usize> {
    whole(word).ok_or_else(|| {
        Error::notation(format!("'{text}': '{word}' is not a whole number; write one such as 3"))
    })
}

impl Name {
    fn make(mut self, text: &str) -> Result<Weave> {
        let amiss = |what: &str| Error::notation(format!("'{text}': {what}"));
        // "pointed twill", "broken twill": the twill is only its ground.
        if self.sorts.len() == 2 {
            self.sorts.retain(|s| *s != Sort::Twill);
        }
        let sort = match (&self.sorts[..], &self.formula) {
            ([one], _) => *one,
            ([], Some(_)) => Sort::Twill,
            ([], None) => return Err(amiss(HELP)),
            _ => return Err(amiss("these are two weaves; give one")),
        };
        self.fits(sort).map_err(|what| amiss(&what))?;
        let at = |e: Error| e.at(format!("'{text}'"));
        let formula = self.formula.clone().unwrap_or_default();
        let weave = match sort {
            Sort::Plain => Ok(Weave::plain()),
            Sort::Twill => {
                Weave::twill(&formula, self.hand.unwrap_or(Hand::Right), self.step.unwrap_or(1))
            }
            Sort::Satin | Sort::Sateen => {
                let ends = self.ends.unwrap_or_default();
                let face = match (sort, self.system) {
                    (Sort::Sateen, _) | (_, Some(System::Weft)) => System::Weft,
                    _ => System::Warp,
                };
                match (ends, face, self.step) {
                    (4, System::Warp, None) => Weave::broken_twill(&[3, 1]),
                    (4, System::Weft, None) => Weave::broken_twill(&[1, 3]),
                    _ => Weave::satin(ends, self.step, face),
                }
            }
            Sort::Hopsack => Weave::mat(&formula, &formula),
            Sort::Rib if self.system == Some(System::Warp) => Weave::mat(&formula, &[1, 1]),
            Sort::Rib => Weave::mat(&[1, 1], &formula),
            Sort::Herringbone => Weave::herringbone(&formula, self.ends),
            Sort::Pointed => Weave::pointed_twill(&formula, self.ends),
            Sort::Broken => Weave::broken_twill(&formula),
        };
        let weave = weave.map_err(at)?;
        if self.weft_way { weave.turned().map_err(at) } else { Ok(weave) }
    }

    /// Says what a name lacks or has too much of.
    fn fits(&self, sort: Sort) -> std::result::Result<(), String> {
        use Sort::{Broken, Herringbone, Plain, Pointed, Rib, Sateen, Satin, Twill};
        let satin = matches!(sort, Satin | Sateen);
        if satin && self.ends.is_none() {
            return Err("how many ends? write '5-end satin' or '8-end sateen move 3'".to_owned());
        }
        if !satin && sort != Plain && self.formula.is_none() {
            return Err(
                "over and under how many? write a formula with it, such as 2/2 or 3/1".to_owned()
            );
        }
        if (satin || sort == Plain) && self.formula.is_some() {
            return Err("a formula does not belong here; omit it or write 'twill'".to_owned());
        }
        if sort == Rib && self.system.is_none() {
            return Err(
                "a warp rib or a weft rib? in a warp rib the ends float, in a weft rib the \
                        picks; write 'warp rib' or 'weft rib'"
                    .to_owned(),
            );
        }
        if self.ends.is_some() && !satin && !matches!(sort, Herringbone | Pointed) {
            return Err("a number of ends does not belong here; omit it".to_owned());
        }
        if self.step.is_some() && !satin && sort != Twill {
            return Err("a step does not belong here; omit it".to_owned());
        }
        if self.hand.is_some() && sort != Twill {
            return Err("only a plain twill has a direction; omit it".to_owned());
        }
        if self.weft_way && !matches!(sort, Herringbone | Pointed | Broken) {
            return Err(
                "only what turns can be 'weft-way': a herringbone, a pointed or broken twill"
                    .to_owned(),
            );
        }
        match (self.system, sort) {
            (None, _) | (_, Rib | Satin) | (Some(System::Weft), Sateen) => Ok(()),
            (Some(System::Warp), Sateen) => {
                Err("a sateen is weft-faced; write 'satin' for the warp face".to_owned())
            }
            _ => Err("only ribs and satins are 'warp' or 'weft'; omit it".to_owned()),
        }
    }
}
