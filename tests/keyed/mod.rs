//! A working as a person reads it: each printed line keyed on an ordinary calculator.
//!
//! This reads only the printed text, and computes by rules of its own.

use std::collections::BTreeMap;

/// What is wrong with a printed working: the line and why.
#[derive(Debug)]
pub(crate) struct Fault {
    pub(crate) line: String,
    pub(crate) why: String,
}

/// What was found in a printed working.
#[derive(Debug, Default)]
pub(crate) struct Found {
    /// Lines that compute something.
    pub(crate) lines: usize,
    pub(crate) faults: Vec<Fault>,
}

/// Keys every line of a working as it is printed.
pub(crate) fn key(text: &str) -> Found {
    let mut found = Found::default();
    let mut symbols: BTreeMap<String, String> = BTreeMap::new();
    for line in text.lines().filter(|line| !line.starts_with("    ")) {
        let mut fault = |why: String| found.faults.push(Fault { line: line.to_owned(), why });
        let Some((left, right)) = line.split_once(" = ") else {
            fault("nothing is said of a value".to_owned());
            continue;
        };
        let (sides, result) = match right.rsplit_once(" = ") {
            Some((sides, result)) => (Some(sides), result),
            None => (None, right),
        };
        for symbol in symbols_of(left) {
            if let Some(before) = symbols.insert(symbol.clone(), result.to_owned()) {
                fault(format!("{symbol} is {before} and {result}"));
            }
        }
        let Some(sides) = sides else { continue };
        let keyed = sides.rsplit(" = ").next().unwrap_or(sides);
        if keyed.starts_with("chosen for ") || keyed.starts_with("looked up for ") {
            continue;
        }
        found.lines += 1;
        // A value again, under another name.
        let named = symbols.get(keyed).and_then(|printed| printed.split(' ').next());
        if let Err(why) = reproduces(named.unwrap_or(keyed), left, result) {
            fault(why);
        }
    }
    found
}

/// The name and the symbol that a line gives a value.
fn symbols_of(left: &str) -> Vec<String> {
    match left.strip_suffix(')').and_then(|l| l.rsplit_once(" (")) {
        Some((name, symbol)) => vec![name.to_owned(), symbol.to_owned()],
        None => vec![left.to_owned()],
    }
}

fn reproduces(keyed: &str, left: &str, result: &str) -> Result<(), String> {
    let printed = result.split(' ').next().unwrap_or(result);
    let (value, half) = printed_number(printed).ok_or(format!("'{printed}' is no number"))?;
    if let Some(equation) = keyed.strip_prefix("root of ") {
        let symbol = symbols_of(left).pop().unwrap_or_default();
        let at = |x: f64| Keys::new(equation, Some((&symbol, x))).all();
        let (below, above) = (at(value - half)?, at(value + half)?);
        let root = below.signum() * above.signum() <= 0.0;
        return if root { Ok(()) } else { Err(format!("{below} and {above} around the root")) };
    }
    let got = Keys::new(keyed, None).all()?;
    // The digits that are printed, and four at least where the printed value is short in itself.
    let four = 10_f64.powf(value.abs().max(f64::MIN_POSITIVE).log10().floor() - 3.0) / 2.0;
    let half = if value == 0.0 { half.min(0.0005) } else { half.min(four) };
    if (got - value).abs() <= half * (1.0 + 1e-6) + 1e-12 * value.abs() {
        Ok(())
    } else {
        Err(format!("keyed {got}"))
    }
}

/// A printed number and half a unit of its last place.
fn printed_number(text: &str) -> Option<(f64, f64)> {
    let plain = text.replace(',', "").replace('−', "-");
    let value: f64 = plain.parse().ok()?;
    let (digits, power) = plain.split_once('e').unwrap_or((&plain, "0"));
    let decimals = digits.split_once('.').map_or(0, |(_, part)| part.len());
    let power: i32 = power.parse().ok()?;
    Some((value, 0.5 * 10_f64.powf(f64::from(power) - decimals as f64)))
}

/// The keys that are pressed for an expression.
struct Keys<'a> {
    rest: &'a str,
    unknown: Option<(&'a str, f64)>,
}

impl<'a> Keys<'a> {
    fn new(text: &'a str, unknown: Option<(&'a str, f64)>) -> Keys<'a> {
        Keys { rest: text.trim(), unknown }
    }
    fn all(mut self) -> Result<f64, String> {
        let value = self.sum()?;
        if self.rest.is_empty() { Ok(value) } else { Err(format!("cannot key '{}'", self.rest)) }
    }
    fn take(&mut self, word: &str) -> bool {
        match self.rest.strip_prefix(word) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }
    fn need(&mut self, word: &str) -> Result<(), String> {
        if self.take(word) { Ok(()) } else { Err(format!("no '{word}' before '{}'", self.rest)) }
    }
    fn sum(&mut self) -> Result<f64, String> {
        let mut value = self.product()?;
        loop {
            if self.take(" + ") {
                value += self.product()?;
            } else if self.take(" − ") {
                value -= self.product()?;
            } else {
                return Ok(value);
            }
        }
    }
    fn product(&mut self) -> Result<f64, String> {
        let mut value = self.signed()?;
        loop {
            if self.take(" × ") {
                value *= self.signed()?;
            } else if self.take(" / ") {
                value /= self.signed()?;
            } else {
                return Ok(value);
            }
        }
    }
    fn signed(&mut self) -> Result<f64, String> {
        if self.take("−") { Ok(-self.signed()?) } else { self.power() }
    }
    fn power(&mut self) -> Result<f64, String> {
        if self.take("√") {
            return Ok(self.power()?.sqrt());
        }
        let base = self.atom()?;
        if self.take("²") {
            Ok(base * base)
        } else if self.take("³") {
            Ok(base * base * base)
        } else if self.take("^") {
            Ok(base.powf(self.atom()?))
        } else {
            Ok(base)
        }
    }
    fn list(&mut self) -> Result<Vec<f64>, String> {
        let mut all = vec![self.sum()?];
        while self.take(", ") {
            all.push(self.sum()?);
        }
        self.need(")")?;
        Ok(all)
    }
    fn atom(&mut self) -> Result<f64, String> {
        if let Some((symbol, value)) = self.unknown
            && self.take(symbol)
        {
            return Ok(value);
        }
        if self.take("(") {
            let value = self.sum()?;
            if self.take(" if ") {
                let a = self.sum()?;
                self.need(" < ")?;
                let b = self.sum()?;
                self.need(", else ")?;
                let otherwise = self.sum()?;
                self.need(")")?;
                return Ok(if a < b { value } else { otherwise });
            }
            self.need(")")?;
            return Ok(value);
        }
        if self.take("no answer") {
            return Ok(f64::NAN);
        }
        if self.take("π") {
            return Ok(std::f64::consts::PI);
        }
        for (word, run) in FUNCTIONS {
            if self.take(word) {
                let list = self.list()?;
                return Ok(run(&list));
            }
        }
        self.number()
    }
    /// A number, in groups of three digits or not, with its unit where it is printed with one.
    fn number(&mut self) -> Result<f64, String> {
        let chars: Vec<(usize, char)> = self.rest.char_indices().collect();
        let mut end = 0;
        for (k, (at, c)) in chars.iter().enumerate() {
            let next = chars.get(k + 1).is_some_and(|(_, c)| c.is_ascii_digit());
            let before = k > 0 && chars[k - 1].1 == 'e';
            let part = c.is_ascii_digit()
                || *c == '.'
                || (*c == ',' && next)
                || (*c == 'e' && end > 0)
                || (matches!(c, '−' | '-') && before);
            if !part {
                break;
            }
            end = at + c.len_utf8();
        }
        let text = &self.rest[..end];
        let (value, _) = printed_number(text).ok_or(format!("cannot key '{}'", self.rest))?;
        self.rest = &self.rest[end..];
        self.unit();
        Ok(value)
    }
    /// Passes over the words of a unit, up to the next sign that is a key.
    fn unit(&mut self) {
        let keys = [" × ", " / ", " + ", " − ", " < ", " if ", ", ", ")", "^"];
        let end = keys.iter().filter_map(|key| self.rest.find(key)).min();
        let (unit, rest) = self.rest.split_at(end.unwrap_or(self.rest.len()));
        if unit.starts_with(' ') {
            self.rest = rest;
        }
    }
}

type Run = fn(&[f64]) -> f64;
const FUNCTIONS: [(&str, Run); 10] = [
    ("exp(", |x| x[0].exp()),
    ("ln(", |x| x[0].ln()),
    ("sin(", |x| x[0].sin()),
    ("cos(", |x| x[0].cos()),
    ("tan(", |x| x[0].tan()),
    ("arctan(", |x| x[0].atan()),
    ("round down(", |x| (x[0] + 1e-9).floor()),
    ("round up(", |x| (x[0] - 1e-9).ceil()),
    ("smaller of (", |x| x[0].min(x[1])),
    ("greater of (", |x| x[0].max(x[1])),
];

/// Constants in a line of symbols that nobody knows by heart: of three digits and more, but for powers of
/// ten.
pub(crate) fn long_constants(symbols: &str) -> Vec<String> {
    let words = symbols.split([' ', '(', ')', '^']).map(|word| word.trim_end_matches(','));
    let constants = words.filter(|word| {
        let digits = word.chars().filter(char::is_ascii_digit).collect::<String>();
        let number = word.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
        let significant = digits.trim_start_matches('0').trim_end_matches('0');
        number && significant.len() >= 3
    });
    constants.map(str::to_owned).collect()
}
