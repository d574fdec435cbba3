//! Does the weighing add up? A gap against what the scale could not show.

use crate::error::{Error, Result};
use crate::quantity::print::of_kind;
use crate::quantity::{Kind, number, parse_as, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// A mass as it was written down, and half of its last digit.
#[derive(Clone, Debug)]
pub struct Weighed {
    /// As written.
    pub typed: String,
    /// In kg.
    pub mass: f64,
    /// Half of the last digit, in kg.
    pub half_digit: f64,
}

impl Weighed {
    /// Reads a mass such as `1.7 lb` (to a tenth), `2 lb 9 oz` (to an ounce) or `1½ lb` (to a half).
    pub fn parse(text: &str) -> Result<Weighed> {
        let mass = parse_as(text, Kind::Mass)?.base();
        let start = text.rfind(|c: char| is_digit(c)).ok_or_else(|| no_digit(text))?;
        // The last number, and the unit after it.
        let digit = text[start..].chars().next().map_or(1, char::len_utf8);
        let (head, tail) = text.split_at(start + digit);
        let from = head
            .rfind(|c: char| !is_part(c))
            .map_or(0, |at| at + head[at..].chars().next().map_or(1, char::len_utf8));
        let last = &head[from..];
        // Powers of ten do not say which digit was read.
        let power = head[..from].trim_end_matches(['+', '-']).strip_suffix(['e', 'E']);
        if power.is_some_and(|number| number.ends_with(is_part)) {
            return Err(Error::notation(format!(
                "'{text}' hides its last digit; write the mass out, such as '1,700 g'"
            )));
        }
        let step = unit(tail.trim(), Some(Kind::Mass))?;
        let smallest = match (last.split_once('.'), last.split_once('/')) {
            (_, Some((_, below))) => 1.0 / number(below)?,
            (Some((_, decimals)), _) => 0.1_f64.powi(i32::try_from(decimals.len()).unwrap_or(9)),
            _ => last.chars().last().and_then(vulgar).unwrap_or(1.0),
        };
        let half_digit = step.to_base(smallest) / 2.0;
        Ok(Weighed { typed: text.to_owned(), mass, half_digit })
    }
}

fn no_digit(text: &str) -> Error {
    Error::notation(format!("'{text}' has no number; write a mass such as '1.7 lb'"))
}

fn is_digit(c: char) -> bool {
    c.is_ascii_digit() || vulgar(c).is_some()
}

fn is_part(c: char) -> bool {
    is_digit(c) || matches!(c, '.' | '/' | ',')
}

/// The step of a scale that is read to a fraction written as one sign.
fn vulgar(c: char) -> Option<f64> {
    match c {
        '½' => Some(0.5),
        '¼' | '¾' => Some(0.25),
        '⅛' | '⅜' | '⅝' | '⅞' => Some(0.125),
        '⅓' | '⅔' => Some(1.0 / 3.0),
        _ => None,
    }
}

/// What went into a stage against what came out of it.
#[derive(Clone, Debug)]
pub struct Balance {
    /// What went in.
    pub into: Weighed,
    /// What came out, waste and all.
    pub out: Vec<Weighed>,
}

impl Balance {
    /// What came out, in kg.
    pub fn sum(&self) -> f64 {
        self.out.iter().map(|w| w.mass).sum()
    }
    /// What came out over what went in, in kg: negative where some is missing.
    pub fn gap(&self) -> f64 {
        self.sum() - self.into.mass
    }
    /// The largest gap that half of each last digit can make, in kg.
    pub fn reading(&self) -> f64 {
        self.into.half_digit + self.out.iter().map(|w| w.half_digit).sum::<f64>()
    }
    /// True where the gap is no more than the readings can make.
    pub fn closes(&self) -> bool {
        self.gap().abs() <= self.reading() * (1.0 + 1e-9)
    }
    /// The balance as a table.
    pub fn report(&self) -> Report {
        let kg = |x: f64| of_kind(x, Kind::Mass);
        let row = |name: &str, w: &Weighed| {
            vec![name.to_owned(), w.typed.clone(), kg(w.mass), format!("± {}", kg(w.half_digit))]
        };
        let mut rows = vec![row("in", &self.into)];
        rows.extend(self.out.iter().map(|w| row("out", w)));
        rows.push(vec![
            "out less in".to_owned(),
            String::new(),
            kg(self.gap()),
            format!("± {}", kg(self.reading())),
        ]);
        let lead = if self.closes() {
            "It closes: the gap is no more than the readings can make, and says nothing of a gain or loss."
        } else if self.gap() > 0.0 {
            "More came out than went in, beyond the readings: was it damper, oiled, or mixed with another lot?"
        } else {
            "Some is missing beyond the readings: dust, fly, what the machine holds, or drying."
        };
        let columns =
            [("", Left), ("as written", Left), ("mass", Right), ("half the last digit", Right)];
        Report {
            title: "Balance".to_owned(),
            blocks: vec![Block {
                title: "What went in against what came out".to_owned(),
                lead: vec![lead.to_owned()],
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot: vec![
                    "Masses at different regains do not compare: bring them to one first."
                        .to_owned(),
                ],
                ..Block::default()
            }],
        }
    }
}

/// Compares what went into a stage with what came out of it, against how finely it was weighed.
///
/// ```
/// use hankwise::mill::balance;
///
/// let combing = balance("1.7 lb", &["673 g", "109 g"])?;
/// assert!(combing.gap() > 0.0108 && combing.gap() < 0.011 && combing.closes());
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn balance(into: &str, out: &[&str]) -> Result<Balance> {
    if out.is_empty() {
        return Err(Error::notation(
            "nothing that came out is given; write it like ['673 g', '109 g']",
        ));
    }
    let into = Weighed::parse(into).map_err(|e| e.at("into"))?;
    let read = |(k, text): (usize, &&str)| {
        Weighed::parse(text).map_err(|e| e.at(format!("out, number {}", k + 1)))
    };
    Ok(Balance { into, out: out.iter().enumerate().map(read).collect::<Result<_>>()? })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_of_the_last_digit() {
        const POUND: f64 = 0.453_592_37;
        let half = |text: &str| Weighed::parse(text).unwrap().half_digit;
        for (text, expected) in [
            ("1.7 lb", 0.05 * POUND),
            ("3.0 lb", 0.05 * POUND),
            ("673 g", 0.0005),
            ("673g", 0.0005),
            ("2 lb 9 oz", 0.5 * POUND / 16.0),
            ("1½ lb", 0.25 * POUND),
            ("2 1/4 oz", 0.125 * POUND / 16.0),
            ("12.50 kg", 0.005),
        ] {
            assert!((half(text) - expected).abs() < 1e-12, "{text}: {}", half(text));
        }
        assert!(Weighed::parse("some wool").is_err());
        assert!(Weighed::parse("1.7e3 g").unwrap_err().to_string().contains("write the mass out"));
    }
}
