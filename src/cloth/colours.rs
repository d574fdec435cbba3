//! Orders of colour: stripes and checks, `24 grey 4 white`.

use std::fmt;
use std::str::FromStr;

use crate::error::{Error, Result};

/// Threads of one colour side by side.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stripe {
    /// How many.
    pub threads: u32,
    /// Their colour.
    pub colour: String,
}

/// The order of colours in a repeat, as `24 grey 4 white` or `(2 black 2 white) x3 8 grey`: a count,
/// then a colour.
///
/// ```
/// use hankwise::cloth::ColourOrder;
///
/// let order: ColourOrder = "24 grey 4 white".parse()?;
/// assert_eq!(order.threads(), 28);
/// let laid = order.balanced(640)?;
/// assert_eq!(laid.counts(), [("grey", 552), ("white", 88)]);
/// assert!(laid.mirrored);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ColourOrder {
    stripes: Vec<Stripe>,
}

/// More threads than this in a repeat is a slip of the pen.
const LONGEST: u64 = 10_000;
/// More threads than this are in no cloth.
const MOST: u32 = 10_000_000;
const LIKE: &str = "write counts and colours in turn, such as '24 grey 4 white'";

impl FromStr for ColourOrder {
    type Err = Error;
    fn from_str(text: &str) -> Result<Self> {
        let mut reader = Reader { text, words: words(text), at: 0 };
        if let Some(odd) = text.chars().find(|c| c.is_control() && !c.is_whitespace()) {
            return Err(reader.fault(format!("{odd:?} cannot be part of a colour")));
        }
        let mut stripes = Vec::new();
        reader.stripes(&mut stripes, 0)?;
        if stripes.is_empty() {
            return Err(Error::notation(format!("no colour was given; {LIKE}")));
        }
        Ok(ColourOrder { stripes })
    }
}

impl fmt::Display for ColourOrder {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let each = |s: &Stripe| format!("{} {}", s.threads, s.colour);
        f.write_str(&self.stripes.iter().map(each).collect::<Vec<_>>().join(" "))
    }
}

/// Words, values and brackets apart: `8grey,2 white` as `8`, `grey`, `2`, `white`.
fn words(text: &str) -> Vec<String> {
    let mut out = Vec::new();
    for word in text.split(|c: char| c.is_whitespace() || matches!(c, ',' | ';')) {
        let mut rest = word;
        while let Some(first) = rest.chars().next() {
            let end = match first {
                '(' | ')' => 1,
                '0'..='9' => rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len()),
                _ => rest.find(['(', ')']).unwrap_or(rest.len()),
            };
            out.push(rest[..end].to_owned());
            rest = &rest[end..];
        }
    }
    out
}

/// How many times a bracket is taken: `x3`, `×3`.
fn times(word: &str) -> Option<&str> {
    let rest = word.strip_prefix(['x', 'X', '×'])?;
    rest.bytes().all(|b| b.is_ascii_digit()).then_some(rest)
}

struct Reader<'a> {
    text: &'a str,
    words: Vec<String>,
    at: usize,
}

impl Reader<'_> {
    fn peek(&self) -> Option<&str> {
        self.words.get(self.at).map(String::as_str)
    }
    /// Refuses a slip in writing a colour, which would be woven as one.
    fn is_colour(&self, count: &str, colour: &str) -> Result<()> {
        let first = colour.split(' ').next().unwrap_or_default();
        let joined = |c: char| matches!(c, '/' | '+' | '|' | '&' | ':' | '*' | '=');
        let what = if matches!(first, "x" | "X" | "×" | "*") {
            format!("'{first}' is not a colour; a bracket is taken {count} times by '(…) x{count}'")
        } else if first.starts_with('×') {
            format!("'{colour}' is not a colour; omit the ×")
        } else if first.starts_with('.') {
            format!("'{count}{first}' is not a number of threads: threads are whole")
        } else if matches!(first, "end" | "ends" | "pick" | "picks" | "thread" | "threads" | "of") {
            format!("'{colour}' is not a colour; omit '{first}'")
        } else if let Some(place) = colour.find(joined)
            && !colour[place + 1..].trim_start().starts_with(char::is_alphabetic)
        {
            let sign = &colour[place..=place];
            format!("'{colour}' is not a colour; separate stripes by commas, not by '{sign}'")
        } else if let Some(word) =
            ["and", "then"].into_iter().find(|w| colour.ends_with(&format!(" {w}")))
        {
            format!("'{colour}' is not a colour; omit '{word}'")
        } else {
            return Ok(());
        };
        Err(self.fault(what))
    }
    fn fault(&self, what: impl fmt::Display) -> Error {
        Error::notation(format!("'{}': {what}; {LIKE}", self.text))
    }
    fn number(&self, word: &str) -> Result<u32> {
        match word.parse::<u32>() {
            Ok(0) => Err(self.fault("a stripe of 0 threads is not possible: omit it")),
            Ok(n) if u64::from(n) <= LONGEST => Ok(n),
            _ => Err(self.fault(format!("{word} are more threads than a repeat has"))),
        }
    }
    fn stripes(&mut self, out: &mut Vec<Stripe>, depth: usize) -> Result<()> {
        while let Some(word) = self.peek().map(str::to_owned) {
            self.at += 1;
            match word.as_str() {
                "(" if depth < 8 => {
                    let mut inner = Vec::new();
                    self.stripes(&mut inner, depth + 1)?;
                    if self.peek() != Some(")") {
                        return Err(self.fault("a bracket is not closed"));
                    }
                    self.at += 1;
                    for _ in 0..self.often()? {
                        inner.iter().try_for_each(|s| self.add(out, s.clone()))?;
                    }
                }
                "(" => return Err(self.fault("brackets are too deep")),
                ")" if depth > 0 => {
                    self.at -= 1;
                    return Ok(());
                }
                ")" => return Err(self.fault("a bracket closes that was not opened")),
                _ if word.starts_with(|c: char| c.is_ascii_digit()) => {
                    let threads = self.number(&word)?;
                    let colour = self.colour(&word)?;
                    self.add(out, Stripe { threads, colour })?;
                }
                _ => return Err(self.fault(format!("no thread count before '{word}'"))),
            }
        }
        Ok(())
    }
    /// The words up to the next count are one colour: `light grey`.
    fn colour(&mut self, count: &str) -> Result<String> {
        let start = self.at;
        let is_word =
            |w: &str| !w.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '(' | ')'));
        while self.peek().is_some_and(is_word) {
            self.at += 1;
        }
        if start == self.at {
            let bracket = if self.peek() == Some("(") {
                format!("; a bracket is taken {count} times by '(…) x{count}'")
            } else {
                String::new()
            };
            return Err(self.fault(format!("no colour after {count}{bracket}")));
        }
        let colour = self.words[start..self.at].join(" ");
        self.is_colour(count, &colour)?;
        Ok(colour)
    }
    /// What is after a bracket; once where nothing does.
    fn often(&mut self) -> Result<u32> {
        let Some(rest) = self.peek().and_then(times).map(str::to_owned) else { return Ok(1) };
        self.at += 1;
        if !rest.is_empty() {
            return self.number(&rest);
        }
        let Some(word) = self.peek().map(str::to_owned) else {
            return Err(self
                .fault("no number after the ×; write how often a bracket is taken, such as 'x3'"));
        };
        self.at += 1;
        if word.bytes().all(|b| b.is_ascii_digit()) {
            return self.number(&word);
        }
        Err(self.fault(format!("'{word}' is not a number of times; write it like 'x3'")))
    }
    /// Stripes of one colour side by side are one; a colour keeps its first spelling.
    fn add(&self, out: &mut Vec<Stripe>, mut stripe: Stripe) -> Result<()> {
        let lower = stripe.colour.to_lowercase();
        if let Some(same) = out.iter().find(|s| s.colour.to_lowercase() == lower) {
            stripe.colour.clone_from(&same.colour);
        }
        match out.last_mut() {
            Some(last) if last.colour == stripe.colour => last.threads += stripe.threads,
            _ => out.push(stripe),
        }
        let threads: u64 = out.iter().map(|s| u64::from(s.threads)).sum();
        if threads > LONGEST {
            return Err(self.fault(format!("a repeat of more than {LONGEST} threads")));
        }
        Ok(())
    }
}

impl ColourOrder {
    /// The stripes of a repeat.
    pub fn stripes(&self) -> &[Stripe] {
        &self.stripes
    }
    /// Threads in a repeat.
    pub fn threads(&self) -> u32 {
        self.stripes.iter().map(|s| s.threads).sum()
    }
    /// The colours, in the order in which they are first met.
    pub fn colours(&self) -> Vec<&str> {
        let mut all = Vec::new();
        for stripe in &self.stripes {
            if !all.contains(&stripe.colour.as_str()) {
                all.push(stripe.colour.as_str());
            }
        }
        all
    }
    /// The colour of each thread of a repeat.
    pub fn sequence(&self) -> Vec<&str> {
        let one = |s: &'_ Stripe| s.threads as usize;
        self.stripes.iter().flat_map(|s| std::iter::repeat_n(s.colour.as_str(), one(s))).collect()
    }
    /// Threads laid from the start of a repeat; what is over is the start of another.
    pub fn from_start(&self, threads: u32) -> Result<Laid> {
        check(threads)?;
        Ok(self.lay(0, threads, false, 0))
    }
    /// Threads laid so that both edges of the cloth are alike, where the repeat has a middle about
    /// which it is the same both ways; else with what is over half on each side.
    pub fn balanced(&self, threads: u32) -> Result<Laid> {
        check(threads)?;
        let repeat = self.threads();
        let middles = self.middles();
        // With an odd thread too many for any middle, one is at the right edge.
        for odd in 0..=u32::from(threads > 1) {
            let even = threads - odd;
            let starts = middles.iter().flat_map(|d| [*d, d + repeat]).filter_map(|twice| {
                let first = i64::from(twice) - i64::from(even) + 1;
                (first % 2 == 0).then(|| (first / 2).rem_euclid(i64::from(repeat)) as u32)
            });
            // The widest edge: a line of two threads at the edge is lost in the selvedge.
            let laid = starts.map(|start| self.lay(start, threads, odd == 0, odd));
            let best = laid.reduce(|a, b| {
                let rank = |l: &Laid| {
                    let edge = &l.edges[0];
                    (edge.threads, edge.threads == edge.of)
                };
                if rank(&b) > rank(&a) { b } else { a }
            });
            if let Some(best) = best {
                return Ok(best);
            }
        }
        let over = threads % repeat;
        Ok(self.lay((repeat - over / 2) % repeat, threads, false, 0))
    }
    /// Twice the places about which the repeat, going round, is the same both ways.
    fn middles(&self) -> Vec<u32> {
        let colours = self.sequence();
        let repeat = colours.len();
        let same = |d: usize| (0..repeat).all(|i| colours[i] == colours[(repeat + d - i) % repeat]);
        (0..repeat).filter(|d| same(*d)).map(|d| d as u32).collect()
    }
    fn lay(&self, start: u32, threads: u32, mirrored: bool, odd: u32) -> Laid {
        let mut stripes: Vec<Stripe> = Vec::new();
        let (mut place, mut skip) = (0, start);
        while skip >= self.stripes[place].threads {
            skip -= self.stripes[place].threads;
            place = (place + 1) % self.stripes.len();
        }
        let mut left = threads;
        while left > 0 {
            let here = &self.stripes[place];
            let threads = (here.threads - skip).min(left);
            match stripes.last_mut() {
                Some(last) if last.colour == here.colour => last.threads += threads,
                _ => stripes.push(Stripe { threads, colour: here.colour.clone() }),
            }
            left -= threads;
            skip = 0;
            place = (place + 1) % self.stripes.len();
        }
        let repeat = self.threads();
        let edges = [stripes.first(), stripes.last()].map(|stripe| {
            let none = Stripe { threads: 0, colour: String::new() };
            let stripe = stripe.cloned().unwrap_or(none);
            let of = self.widest(&stripe.colour).max(stripe.threads);
            Edge { threads: stripe.threads, of, colour: stripe.colour }
        });
        Laid {
            order: self.clone(),
            stripes,
            repeats: threads / repeat,
            over: threads % repeat,
            mirrored,
            odd,
            edges,
        }
    }
    /// The widest stripe of a colour in the repeat, its two ends joined.
    fn widest(&self, colour: &str) -> u32 {
        let (first, last) = (self.stripes.first(), self.stripes.last());
        let joined = match (first, last) {
            (Some(a), Some(b)) if a.colour == colour && b.colour == colour => {
                if self.stripes.len() > 1 { a.threads + b.threads } else { a.threads }
            }
            _ => 0,
        };
        let of = self.stripes.iter().filter(|s| s.colour == colour).map(|s| s.threads);
        of.max().unwrap_or(0).max(joined)
    }
}

fn check(threads: u32) -> Result<()> {
    if threads > 0 && threads <= MOST {
        return Ok(());
    }
    Err(Error::range(format!("{threads} threads cannot be laid; give between 1 and {MOST}")))
}

/// The stripe at an edge of the cloth.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Edge {
    /// Threads of it that there are.
    pub threads: u32,
    /// Threads that the whole stripe has.
    pub of: u32,
    /// Its colour.
    pub colour: String,
}

impl fmt::Display for Edge {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.threads == self.of {
            write!(f, "{} {}", self.threads, self.colour)
        } else {
            write!(f, "{} of {} {}", self.threads, self.of, self.colour)
        }
    }
}

/// An order of colours laid over a number of threads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Laid {
    /// The repeat.
    pub order: ColourOrder,
    /// The stripes as they are laid, from the left edge.
    pub stripes: Vec<Stripe>,
    /// Whole repeats.
    pub repeats: u32,
    /// Threads that whole repeats leave over.
    pub over: u32,
    /// True where both edges are alike.
    pub mirrored: bool,
    /// A thread too many for any middle, at the right edge.
    pub odd: u32,
    /// The stripes at the left and the right edge.
    pub edges: [Edge; 2],
}

impl Laid {
    /// Threads in all.
    pub fn threads(&self) -> u32 {
        self.stripes.iter().map(|s| s.threads).sum()
    }
    /// Threads of each colour.
    pub fn counts(&self) -> Vec<(&str, u32)> {
        let of = |colour: &str| {
            self.stripes.iter().filter(|s| s.colour == colour).map(|s| s.threads).sum()
        };
        self.order.colours().into_iter().map(|c| (c, of(c))).collect()
    }
    /// How it is laid, in a sentence.
    pub fn words(&self, threads: &str) -> String {
        let [left, right] = &self.edges;
        let over = match self.over {
            0 => String::new(),
            n => format!(" and {n} {threads} over"),
        };
        let edges = if self.mirrored {
            format!("alike at both edges, {left}")
        } else if self.odd > 0 {
            format!(
                "alike at both edges but for one too many at the right, {left} and {right}; take one \
                 of the {threads} less or more to have it even"
            )
        } else {
            format!("the edges are {left} and {right}")
        };
        let repeats = match self.repeats {
            1 => "1 whole repeat".to_owned(),
            n => format!("{n} whole repeats"),
        };
        let none: Vec<&str> =
            self.counts().into_iter().filter(|(_, n)| *n == 0).map(|(colour, _)| colour).collect();
        let lost = match none[..] {
            [] => String::new(),
            _ => format!("; there is no {} in so few {threads}", none.join(", no ")),
        };
        format!("{repeats} of {}{over}; {edges}{lost}.", self.order.threads())
    }
}
