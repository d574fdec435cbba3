//! A place in a text, and a mark under it for the message.

use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, unit};

/// The most that a fold may count: more is a slip, and keeps sums within bounds.
const MOST_ENDS: u32 = 10_000;
/// No system has a longer name; a long text is not searched for one.
const LONGEST_SYSTEM: usize = 40;
const POWERS: [f64; 16] =
    [1., 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

/// A place in the text of a designation.
#[derive(Clone, Copy)]
pub(super) struct Cursor<'t> {
    pub(super) text: &'t str,
    pub(super) at: usize,
}

impl<'t> Cursor<'t> {
    pub(super) fn new(text: &'t str) -> Self {
        Cursor { text, at: 0 }
    }
    #[inline(always)]
    pub(super) fn rest(&self) -> &'t str {
        &self.text[self.at..]
    }
    #[inline(always)]
    pub(super) fn peek(&self) -> u8 {
        self.text.as_bytes().get(self.at).copied().unwrap_or(0)
    }
    pub(super) fn is_at_end(&self) -> bool {
        self.at >= self.text.len()
    }
    /// Past spaces.
    #[inline(always)]
    pub(super) fn skip(&mut self) {
        loop {
            match self.peek() {
                b' ' | b'\t' | b'\n' | b'\r' => self.at += 1,
                // A no-break space, as typesetting has it between number and unit.
                0xC2 if self.rest().starts_with('\u{a0}') => self.at += 2,
                0xE2 if self.rest().starts_with(['\u{202f}', '\u{2009}']) => self.at += 3,
                _ => return,
            }
        }
    }
    /// Past a character, if it is here.
    #[inline(always)]
    pub(super) fn eat(&mut self, wanted: u8) -> bool {
        self.skip();
        let here = self.peek() == wanted;
        self.at += usize::from(here);
        here
    }
    /// Past the sign of multiplication, in any of its spellings.
    #[inline(always)]
    pub(super) fn eat_times(&mut self) -> bool {
        self.skip();
        match self.peek() {
            b'x' | b'X' | b'*' => self.at += 1,
            0xC3 if self.rest().starts_with('×') => self.at += 2,
            _ => return false,
        }
        true
    }

    /// A mark under a place, and what is the matter there.
    #[cold]
    pub(super) fn fault(&self, at: usize, what: impl std::fmt::Display) -> Error {
        let line: String =
            self.text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
        let before = self.text[..at.min(self.text.len())].chars().count();
        Error::notation(format!("{what}\n    {line}\n    {}^", " ".repeat(before)))
    }

    /// What is at a place, for a message.
    #[cold]
    pub(super) fn found(&self, at: usize) -> String {
        match self.text[at.min(self.text.len())..].split_whitespace().next() {
            Some(word) => format!("'{word}' is here"),
            None => "the text ends here".to_owned(),
        }
    }

    /// The digits that are here and what follows their point: number, digits, decimals.
    #[inline(always)]
    fn digits(&mut self) -> (u64, usize, usize) {
        let bytes = self.text.as_bytes();
        let (mut figure, mut digits, mut point) = (0u64, 0, None);
        while let Some(byte) = bytes.get(self.at) {
            let digit = byte.wrapping_sub(b'0');
            if digit < 10 {
                figure = figure.wrapping_mul(10).wrapping_add(u64::from(digit));
                digits += 1;
            } else if *byte == b'.' && point.is_none() {
                point = Some(digits);
            } else {
                break;
            }
            self.at += 1;
        }
        (figure, digits, point.map_or(0, |p| digits - p))
    }

    /// A number as a designation has it: digits, a point, one of the signs ½, ¼ and so on.
    #[inline(always)]
    pub(super) fn number(&mut self, wanted: &str) -> Result<f64> {
        self.skip();
        let start = self.at;
        let (figure, digits, decimals) = self.digits();
        let next = self.peek();
        let unusual = match next {
            b',' | b'e' | b'E' | 0x80.. => true,
            // `22 1/2`
            b' ' => {
                let after = self.text.as_bytes().get(self.at + 1);
                matches!(after, Some(b'0'..=b'9' | 0xC2 | 0xE2))
            }
            _ => false,
        };
        if digits == 0 || digits > 15 || unusual {
            return self.unusual_number(start, (figure, digits, decimals), wanted);
        }
        // Both are exact, so the quotient is rounded once, as by the reader of Rust.
        let figure = figure.cast_signed() as f64;
        Ok(if decimals == 0 { figure } else { figure / POWERS[decimals] })
    }

    /// A number with a sign such as ½, of very many digits, or none at all.
    #[cold]
    fn unusual_number(
        &mut self,
        start: usize,
        (figure, digits, decimals): (u64, usize, usize),
        wanted: &str,
    ) -> Result<f64> {
        if self.peek() == b',' && self.rest()[1..].starts_with(|c: char| c.is_ascii_digit()) {
            return Err(self.comma(start));
        }
        if let Some(length) = self.power().filter(|_| digits > 0) {
            self.at += length;
            return Ok(self.text[start..self.at].parse().unwrap_or(f64::INFINITY));
        }
        let value = match digits {
            0 => 0.0,
            1..=15 => figure as f64 / POWERS[decimals],
            _ => self.text[start..self.at].parse().unwrap_or(f64::INFINITY),
        };
        if let Some((part, length)) = self.spaced_fraction().filter(|_| digits > 0 && decimals == 0)
        {
            self.at += length;
            return Ok(value + part);
        }
        let sign = self.rest().chars().next();
        let part = sign.and_then(|c| Some((c, crate::quantity::fraction_sign(c)?)));
        match part {
            Some((sign, part)) if decimals == 0 => {
                self.at += sign.len_utf8();
                Ok(value + part)
            }
            _ if digits == 0 => {
                Err(self.fault(start, format!("{wanted} is missing: {}", self.found(start))))
            }
            _ => Ok(value),
        }
    }

    /// Length of `e-5`, as programs write large and small figures.
    fn power(&self) -> Option<usize> {
        let after = self.rest().strip_prefix(['e', 'E'])?;
        let sign = usize::from(after.starts_with(['-', '+']));
        let digits = after[sign..].bytes().take_while(u8::is_ascii_digit).count();
        (digits > 0).then_some(1 + sign + digits)
    }

    /// ` ½`, ` 1/2`: the rest of a mixed number, and its length.
    fn spaced_fraction(&self) -> Option<(f64, usize)> {
        let after = self.rest().strip_prefix(' ')?;
        let sign = after.chars().next()?;
        if let Some(part) = crate::quantity::fraction_sign(sign) {
            return Some((part, 1 + sign.len_utf8()));
        }
        // With others it could be so many of a fold: `2 1/16 Nm`.
        let parts =
            [("1/2", 0.5), ("1/4", 0.25), ("3/4", 0.75), ("1/3", 1.0 / 3.0), ("2/3", 2.0 / 3.0)];
        let (written, part) = parts.into_iter().find(|(written, _)| after.starts_with(written))?;
        let next = after[written.len()..].chars().next().unwrap_or(' ');
        (!next.is_ascii_digit() && !"./".contains(next)).then_some((part, 1 + written.len()))
    }

    /// A comma in a figure: a decimal mark to some, to others one of thousands.
    fn comma(&self, start: usize) -> Error {
        let before = &self.text[start..self.at];
        let after: String = self.rest()[1..].chars().take_while(char::is_ascii_digit).collect();
        let point = format!("write the decimal mark as a point, {before}.{after}");
        let what = if after.len() == 3 && before != "0" {
            format!("{point}, or thousands without a mark, {before}{after}")
        } else {
            point
        };
        self.fault(self.at, what)
    }

    /// A whole number of ends or filaments.
    #[inline(always)]
    pub(super) fn whole(&mut self, what: &str) -> Result<u32> {
        self.skip();
        let start = self.at;
        let (figure, digits, decimals) = self.digits();
        match u32::try_from(figure) {
            Ok(whole @ 1..=MOST_ENDS) if decimals == 0 && digits < 9 && self.peek() < 0x80 => {
                Ok(whole)
            }
            _ => Err(self.not_whole(start, what)),
        }
    }

    #[cold]
    fn not_whole(&mut self, start: usize, what: &str) -> Error {
        self.at = start;
        if let Err(error) = self.number(what) {
            return error;
        }
        let given = &self.text[start..self.at];
        self.fault(start, format!("{what} is a whole number from 1 to 10 000, not {given}"))
    }

    /// A count: a number and its system.
    #[inline(always)]
    pub(super) fn count(&mut self) -> Result<Amount> {
        self.skip();
        let start = self.at;
        if self.peek().is_ascii_alphabetic() {
            // `R Nm 15.8/2`; a word that is none is not what is missing here.
            let mut ahead = *self;
            if let Ok(Some(unit)) = super::trade::prefix(&mut ahead) {
                *self = ahead;
                let count = Amount { number: self.number("a count")?, unit };
                super::trade::positive(self, start, &count)?;
                return Ok(count);
            }
        }
        let number = self.number("a count such as '125 tex'")?;
        self.count_of(number, start)
    }

    /// The system of a count whose number was read.
    #[inline(always)]
    pub(super) fn count_of(&mut self, number: f64, start: usize) -> Result<Amount> {
        self.skip();
        let unit = self.system()?;
        let count = Amount { number, unit };
        let tex = count.base();
        if tex > 0.0 && tex.is_finite() {
            return Ok(count);
        }
        let given = self.text[start..self.at].trim();
        Err(self.fault(start, format!("a count is more than 0 and finite, not {given}")))
    }

    /// The count system that is here: the longest run of words that names one.
    #[inline(always)]
    pub(super) fn system(&mut self) -> Result<&'static crate::quantity::Unit> {
        let rest = self.rest();
        // What most designations have is seen at a glance.
        let end = rest.bytes().position(|b| !b.is_ascii_alphabetic()).unwrap_or(rest.len());
        let common = super::read::common_system(&rest[..end]);
        let next = rest.as_bytes().get(end).copied().unwrap_or(b' ');
        if let Some(unit) = common
            && matches!(next, b' ' | b';' | b')' | b'+')
        {
            self.at += end;
            return Ok(unit);
        }
        self.named_system()
    }

    /// A system by any of its names.
    #[inline(never)]
    fn named_system(&mut self) -> Result<&'static crate::quantity::Unit> {
        let (start, rest) = (self.at, self.rest());
        let limit = rest.find([';', '(', ')', '+', '×', '*', ',']).unwrap_or(rest.len());
        let words = rest[..limit].trim_end();
        let mut ends: Vec<usize> = words
            .char_indices()
            .filter(|(i, c)| c.is_whitespace() || *c == '/' || is_glued(&words[*i..]))
            .map(|(i, _)| i)
            .chain([words.len()])
            .filter(|i| (1..=LONGEST_SYSTEM).contains(i))
            .collect();
        while let Some(end) = ends.pop() {
            if let Ok(unit) = unit(words[..end].trim_end(), Some(Kind::LinearDensity)) {
                self.at += end;
                return Ok(unit);
            }
        }
        let word = words.split([' ', '/']).next().unwrap_or_default();
        let word: String = word.chars().take(LONGEST_SYSTEM).collect();
        if word.is_empty() {
            return Err(self.fault(
                start,
                format!(
                    "the count system is missing: {}; write one such as 'tex', 'Nm', 'Ne' or 'YSW'",
                    self.found(start)
                ),
            ));
        }
        if matches!(word.as_str(), "x" | "X") || word.starts_with(['x', 'X', '×', '*']) {
            return Err(self.fault(
                start,
                "the count system is missing before the sign of multiplication; write it like '125 tex × 2'",
            ));
        }
        let why = unit(&word, Some(Kind::LinearDensity)).err();
        let mut why =
            why.map_or_else(|| format!("unknown count system '{word}'"), |e| e.to_string());
        let is_word = word.chars().all(char::is_alphabetic);
        if is_word && why.contains("unknown unit") && !why.contains("did you mean") {
            why.push_str("; give a fibre separately, as material");
        }
        Err(self.fault(start, why))
    }
}

/// What may follow a count system without a space: `tex` in `34texS600x2`, `150denf48`.
fn is_glued(rest: &str) -> bool {
    let mut signs = rest.chars();
    let letter = signs.next().unwrap_or(' ');
    "SZxXfFt".contains(letter) && signs.next().is_some_and(|c| c.is_ascii_digit())
}
