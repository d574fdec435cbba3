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
                // A no-break space, as typesetting has it between figure and unit.
                0xC2 if self.rest().starts_with('\u{a0}') => self.at += 2,
                0xE2 if self.rest().starts_with(['\u{202f}', '\u{2009}']) => self.at += 3,
                _ => return,
            }
        }
    }
    /// Past a character, if it stands here.
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

    /// What stands at a place, for a message.
    #[cold]
    pub(super) fn found(&self, at: usize) -> String {
        match self.text[at.min(self.text.len())..].split_whitespace().next() {
            Some(word) => format!("'{word}' stands here"),
            None => "the text ends here".to_owned(),
        }
    }

    /// The digits that stand here and what follows their point: figure, digits, decimals.
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
        if digits == 0 || digits > 15 || next == b',' || next >= 0x80 {
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
        let after = self.text.as_bytes().get(self.at + 1);
        if self.peek() == b',' && after.is_some_and(u8::is_ascii_digit) {
            return Err(self.fault(self.at, "write the decimal mark as a point, 69.3"));
        }
        let value = match digits {
            0 => 0.0,
            1..=15 => figure as f64 / POWERS[decimals],
            _ => self.text[start..self.at].parse().unwrap_or(f64::INFINITY),
        };
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
        let number = self.number("a count such as '34 tex'")?;
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

    /// The count system that stands here: the longest run of words that names one.
    #[inline(always)]
    pub(super) fn system(&mut self) -> Result<&'static crate::quantity::Unit> {
        let rest = self.rest();
        // What most designations have is told at a glance.
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
            .filter(|(_, c)| c.is_whitespace() || *c == '/')
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
        let why = unit(&word, Some(Kind::LinearDensity)).err();
        let mut why = why.map_or_else(|| format!("'{word}' is no count system"), |e| e.to_string());
        if why.contains("is not a known unit") && !why.contains("did you mean") {
            why.push_str("; a fibre is no count system: it is told apart");
        }
        Err(self.fault(start, why))
    }
}
