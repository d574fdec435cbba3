//! Reading a lot file: TOML with units, every message with its place.

use std::cell::RefCell;
use std::collections::BTreeSet;

use toml_edit::{Document, Item, TableLike};

use super::chance::{Layer, Spread};
use super::given::Given;
use super::value::{read, read_value, shown};
use crate::calculation::{Group, Input, Owned, PartsInput, Place, Rows, Source, Text, Word};
use crate::error::{Error, ErrorKind, Result, did_you_mean};
use crate::normal::{Z95, quantile};
use crate::parts::Parts;
use crate::quantity::Amount;
use crate::quantity::print::{default_unit, of_kind};
use crate::words::one_line;

/// So many signs are shown of a line that cannot be read.
const LONGEST: usize = 200;

/// The text of a lot file, parsed.
pub(super) struct File {
    name: String,
    document: Document<String>,
    /// Where the lines begin, but for the first.
    lines: Vec<usize>,
}

/// What a plan is built up from while its file is read.
#[derive(Debug, Default)]
pub(super) struct Draft {
    pub(super) given: Vec<Given>,
    pub(super) warnings: Vec<String>,
}

impl File {
    pub(super) fn parse(name: &str, text: &str) -> Result<File> {
        match Document::parse(text.to_owned()) {
            Ok(document) => {
                let lines = text.match_indices('\n').map(|(at, _)| at + 1).collect();
                Ok(File { name: one_line(name).into_owned(), document, lines })
            }
            Err(e) => {
                let before = e.span().map_or("", |s| &text[..s.start.min(text.len())]);
                let line = before.matches('\n').count() + 1;
                let why = e.message().lines().collect::<Vec<_>>().join(" ");
                let why = why.trim();
                let shown = text.lines().nth(line - 1).unwrap_or("").trim();
                let shown = one_line(&shown.chars().take(LONGEST).collect::<String>()).into_owned();
                let name = one_line(name);
                let write = if why.starts_with("duplicate") {
                    "it is written above already; remove one of the two"
                } else {
                    "write key = \"value\", texts in quotes"
                };
                Err(Error::plan(format!(
                    "{name}:{line}: this is not TOML ({why}): {shown}; {write}"
                )))
            }
        }
    }
    fn line(&self, span: Option<std::ops::Range<usize>>) -> usize {
        span.map_or(1, |s| self.lines.partition_point(|begins| *begins <= s.start) + 1)
    }
    pub(super) fn place(&self, line: usize) -> String {
        format!("{}:{line}", self.name)
    }
    /// The whole file as a section.
    pub(super) fn root(&self) -> Section<'_> {
        Section {
            file: self,
            path: String::new(),
            table: Some(self.document.as_table()),
            line: 1,
            used: RefCell::default(),
        }
    }
}

/// A table of the file. It knows which keys were asked for, so that the others can be refused.
pub(super) struct Section<'d> {
    file: &'d File,
    pub(super) path: String,
    table: Option<&'d dyn TableLike>,
    line: usize,
    used: RefCell<BTreeSet<String>>,
}

/// The share of the lots that lie below what a key names: of `low` 5 %, of `p10` 10 %.
fn percentile(key: &str) -> Option<f64> {
    let percent = match key {
        "low" => 5.0,
        "likely" => 50.0,
        "high" => 95.0,
        _ => key.strip_prefix('p')?.parse().ok()?,
    };
    (0.0 < percent && percent < 100.0).then_some(percent / 100.0)
}

impl<'d> Section<'d> {
    fn full(&self, key: &str) -> String {
        let key = one_line(key);
        if self.path.is_empty() { key.into_owned() } else { format!("{}.{key}", self.path) }
    }
    /// An error at a key of this section.
    pub(super) fn error(&self, key: &str, message: impl Into<String>) -> Error {
        let line = self.item(key).map_or(self.line, |item| self.file.line(item.span()));
        Error::plan(message).at(format_args!("{}: {}", self.file.place(line), self.full(key)))
    }
    /// Turns an error of any kind into one with this place.
    pub(super) fn placed(&self, key: &str, error: &Error) -> Error {
        self.error(key, error.to_string())
    }
    /// Where a key is.
    fn origin(&self, key: &str) -> String {
        let line = self.item(key).map_or(self.line, |item| self.file.line(item.span()));
        self.file.place(line)
    }
    fn item(&self, key: &str) -> Option<&'d Item> {
        self.table.and_then(|t| t.get(key))
    }
    fn take(&self, key: &str) -> Option<&'d Item> {
        self.used.borrow_mut().insert(key.to_owned());
        self.item(key)
    }
    /// True where the file has the section at all.
    pub(super) fn is_present(&self) -> bool {
        self.table.is_some()
    }
    /// The keys, in the order of the file.
    pub(super) fn keys(&self) -> Vec<String> {
        self.table.map(|t| t.iter().map(|(k, _)| k.to_owned()).collect()).unwrap_or_default()
    }
    /// A table within this one; without keys where the file has none.
    pub(super) fn section(&self, key: &str) -> Result<Section<'d>> {
        let item = self.take(key);
        let table = match item {
            None => None,
            Some(item) => Some(item.as_table_like().ok_or_else(|| {
                let message = format!("write a table [{1}], not {0}", shown(item), self.full(key));
                self.error(key, message)
            })?),
        };
        let line = item.map_or(self.line, |i| self.file.line(i.span()));
        Ok(Section { file: self.file, path: self.full(key), table, line, used: RefCell::default() })
    }
    /// Refuses keys that nobody asked for.
    pub(super) fn finish(&self) -> Result<()> {
        self.only(self.used.borrow().iter().map(String::as_str))
    }
    /// Refuses keys other than these.
    pub(super) fn only<'k>(&self, known: impl IntoIterator<Item = &'k str>) -> Result<()> {
        let known: Vec<&str> = known.into_iter().collect();
        let Some(key) = self.keys().into_iter().find(|k| !known.contains(&k.as_str())) else {
            return Ok(());
        };
        let near = did_you_mean(&key, known.iter().copied())
            .map_or_else(|| ".".to_owned(), |k| format!("; did you mean '{k}'?"));
        Err(self.error(&key, format!("unknown key{near} Known here: {}", known.join(", "))))
    }
    fn missing(&self, key: &str, what: &str, example: &str) -> Error {
        let write = match self.path.as_str() {
            "" => format!("{key} = {example}"),
            path if self.is_present() => format!("{key} = {example} in [{path}]"),
            path => format!("a table [{path}] with {key} = {example}"),
        };
        // Two letters off: more likely misspelt than omitted.
        let near = self.keys().into_iter().find(|k| strsim::damerau_levenshtein(k, key) <= 2);
        match near {
            Some(near) => {
                self.error(&near, format!("unknown key, and {what} is missing; write {write}"))
            }
            None => self.error(key, format!("{what} is missing; write {write}")),
        }
    }
    /// A text.
    pub(super) fn text(&self, key: &str, what: &str, example: &str) -> Result<String> {
        let text = self.text_or_none(key)?.ok_or_else(|| self.missing(key, what, example))?;
        Ok(one_line(&text).into_owned())
    }
    /// A text that may be absent.
    pub(super) fn text_or_none(&self, key: &str) -> Result<Option<String>> {
        let Some(item) = self.take(key) else { return Ok(None) };
        match item.as_str() {
            Some(text) => Ok(Some(text.to_owned())),
            None => Err(self.error(key, format!("write a text in quotes, not {}", shown(item)))),
        }
    }
    /// Yes or no.
    pub(super) fn flag(&self, key: &str) -> Result<bool> {
        let Some(item) = self.take(key) else { return Ok(false) };
        item.as_bool()
            .ok_or_else(|| self.error(key, format!("write true or false, not {}", shown(item))))
    }
    /// A list of texts that may be absent.
    pub(super) fn texts(&self, key: &str) -> Result<Option<Vec<String>>> {
        let Some(item) = self.take(key) else { return Ok(None) };
        let wrong = || self.error(key, format!("write a list of texts, not {}", shown(item)));
        let array = item.as_array().ok_or_else(wrong)?;
        array
            .iter()
            .map(|v| v.as_str().map(str::to_owned).ok_or_else(wrong))
            .collect::<Result<_>>()
            .map(Some)
    }
    /// A whole number that may be absent.
    pub(super) fn whole(&self, key: &str) -> Result<Option<u32>> {
        let Some(item) = self.take(key) else { return Ok(None) };
        let number = item.as_integer().and_then(|n| u32::try_from(n).ok());
        number.map(Some).ok_or_else(|| {
            self.error(key, format!("write a whole number from 0 up, not {}", shown(item)))
        })
    }

    /// Reads inputs from this section, and refuses keys that they do not ask for.
    pub(super) fn read<T>(
        &self,
        draft: &mut Draft,
        take: impl FnOnce(&mut Reader<'_, 'd>) -> Result<T>,
    ) -> Result<T> {
        let mut reader = Reader { section: self, draft, groups: Vec::new() };
        // An error that belongs to no key of its own has the place of the table.
        take(&mut reader).map_err(|e| match e.kind() {
            ErrorKind::Plan => e,
            _ => Error::plan(e.to_string()).at(format_args!(
                "{}: {}",
                self.file.place(self.line),
                self.path
            )),
        })
    }
    fn value(&self, draft: &mut Draft, q: &Input) -> Result<Option<Place>> {
        let Some(item) = self.take(q.name) else { return Ok(None) };
        let place = |e: Error| self.placed(q.name, &e);
        let (amount, typed, spread, layer) = match item.as_table_like() {
            None => {
                let (amount, typed) = read(item, q.kind).map_err(place)?;
                (amount, typed, Spread::Known, Layer::Lot)
            }
            Some(table) => self.spread(q, table)?,
        };
        q.check(&amount, Some(&typed)).map_err(place)?;
        if q.whole && spread.is_open() {
            let message = format!("{}: known and whole; write {}", q.meaning, q.example());
            return Err(self.error(q.name, message));
        }
        let bare = item.as_table_like().is_none() && item.as_str().is_none();
        draft.warnings.extend(self.unusual(q, amount.base(), bare, spread));
        let origin = self.origin(q.name);
        Ok(Some(self.push(draft, q, amount, typed, spread, layer, origin)))
    }
    /// What is unusual about a value, or else about its low and its high end.
    fn unusual(&self, q: &Input, base: f64, bare: bool, spread: Spread) -> Option<String> {
        let ends = || [("low", -Z95), ("high", Z95)].map(|(end, z)| (end, spread.at(z, base)));
        let (words, base, end) = match q.unusual(base) {
            Some(words) => (words, base, ""),
            None if spread.is_open() => {
                let mut ends = ends().into_iter();
                ends.find_map(|(end, base)| Some((q.unusual(base)?, base, end)))?
            }
            None => return None,
        };
        let key = self.full(q.name);
        let name = if end.is_empty() { key } else { format!("{key}: {end}") };
        let words = words.replacen(q.name, &name, 1);
        let question = match q.slip(base, bare) {
            Some(question) => format!(". {question}"),
            None => String::new(),
        };
        Some(format!("{}: {words}{question}", self.origin(q.name)))
    }
    fn push(
        &self,
        draft: &mut Draft,
        q: &Input,
        amount: Amount,
        typed: String,
        spread: Spread,
        layer: Layer,
        origin: String,
    ) -> Place {
        draft.given.push(Given {
            key: self.full(q.name),
            symbol: q.symbol,
            meaning: q.meaning,
            kind: q.kind,
            amount,
            typed,
            spread,
            layer,
            origin,
        });
        Place(draft.given.len() - 1)
    }
    /// `{ low = …, likely = …, high = … }` or `{ mean = …, sd = … }`.
    fn spread(&self, q: &Input, table: &dyn TableLike) -> Result<(Amount, String, Spread, Layer)> {
        let inner = |key: &str, message: String| self.error(q.name, format!("{key}: {message}"));
        let one = |key: &str| -> Result<Option<(Amount, String)>> {
            table
                .get(key)
                .map(|i| read(i, q.kind))
                .transpose()
                .map_err(|e| inner(key, e.to_string()))
        };
        if let Some((key, _)) = table
            .iter()
            .find(|(k, _)| percentile(k).is_none() && !["mean", "sd", "varies"].contains(k))
        {
            return Err(inner(
                key,
                "unknown key; write low, likely and high (or percentiles, such as p10, p50 and p90), or mean \
                 and sd, and varies"
                    .into(),
            ));
        }
        let layer = match table.get("varies").map(|i| i.as_str().unwrap_or("")) {
            None | Some("lot") => Layer::Lot,
            Some("mill") => Layer::Mill,
            Some("piece") => Layer::Piece,
            Some(_) => {
                return Err(inner("varies", "write \"mill\", \"lot\" or \"piece\"".into()));
            }
        };
        let mut range = Vec::new();
        for (key, _) in table.iter() {
            if let Some(below) = percentile(key) {
                range.extend(one(key)?.map(|value| (below, value)));
            }
        }
        range.sort_by(|a, b| a.0.total_cmp(&b.0));
        match (&range[..], one("mean")?, one("sd")?) {
            ([(below, (low, _)), (0.5, (likely, typed)), (above, (high, _))], None, None)
                if *below < 0.5 && *above > 0.5 =>
            {
                let values = [low, likely, high].map(Amount::base);
                let spread = Spread::from_range(values, [*below, *above].map(quantile), q.kind)
                    .map_err(|e| self.placed(q.name, &e))?;
                Ok((*likely, typed.clone(), spread, layer))
            }
            ([], Some((mean, typed)), Some((sd, _))) => {
                let spread = Spread::from_mean(q.name, mean.base(), sd.base(), q.kind)
                    .map_err(|e| self.placed(q.name, &e))?;
                Ok((mean, typed, spread, layer))
            }
            _ => Err(self.error(
                q.name,
                format!(
                    "write {0} = {{ low = \"…\", likely = \"…\", high = \"…\" }} or {0} = {{ mean = \"…\", sd = \"…\" }}",
                    q.name
                ),
            )),
        }
    }
    /// Parts that the mill owns, and the one set for use where there is one.
    fn owned(&self, asked: &PartsInput) -> Result<Option<Owned>> {
        let PartsInput { name: list, set, kind, like, .. } = *asked;
        let Some(item) = self.take(list) else { return Ok(None) };
        let array = item.as_array().filter(|a| !a.is_empty()).ok_or_else(|| {
            self.error(list, format!("a list goes here, such as {like}, not {}", shown(item)))
        })?;
        let parts = array
            .iter()
            .map(|v| read_value(v, kind).map(|(amount, _)| amount.base()))
            .collect::<Result<Vec<f64>>>()
            .and_then(|parts| Parts::new(parts, kind, like))
            .map_err(|e| self.placed(list, &e))?;
        let fixed = match self.take(set) {
            None => None,
            Some(item) => {
                let part = read(item, kind).map_err(|e| self.placed(set, &e))?.0.base();
                let owned = parts.all().iter().any(|p| (p - part).abs() <= 1e-9 * p.abs());
                if !owned {
                    let all: Vec<String> = parts.all().iter().map(|p| of_kind(*p, kind)).collect();
                    return Err(self.error(
                        set,
                        format!(
                            "{} is not owned; choose one of {}",
                            of_kind(part, kind),
                            all.join(", ")
                        ),
                    ));
                }
                Some(part)
            }
        };
        Ok(Some(Owned::new(parts, fixed)))
    }
}

/// Reads the structs of inputs from a section of a lot file.
pub(super) struct Reader<'r, 'd> {
    section: &'r Section<'d>,
    draft: &'r mut Draft,
    groups: Vec<Group>,
}

impl Reader<'_, '_> {
    /// The input as it is asked here.
    fn adjusted(&self, input: &Input) -> Input {
        let adjust = self.groups.iter().rev().flat_map(|group| group.adjust);
        match adjust.into_iter().find(|a| a.name == input.name) {
            Some(a) => Input { usual: a.usual, basis: a.basis, ..*input },
            None => *input,
        }
    }
}

impl Source for Reader<'_, '_> {
    fn has(&self, name: &str) -> bool {
        self.section.item(name).is_some()
    }
    fn one(&mut self, input: &Input) -> Result<Option<Place>> {
        let input = self.adjusted(input);
        self.section.value(self.draft, &input)
    }
    fn default(&mut self, input: &Input, base: f64) -> Result<Place> {
        let unit = default_unit(input.kind);
        let amount = Amount { number: unit.from_base(base), unit };
        let (typed, origin) = (input.say(base), "default".to_owned());
        let (spread, layer) = (Spread::Known, Layer::Lot);
        Ok(self.section.push(self.draft, input, amount, typed, spread, layer, origin))
    }
    fn list(&mut self, input: &Input) -> Result<Option<Vec<Place>>> {
        let Some(item) = self.section.take(input.name) else { return Ok(None) };
        let wrong = || {
            let message = format!("a list goes here, not {}", shown(item));
            self.section.error(input.name, message)
        };
        let array = item.as_array().ok_or_else(wrong)?;
        let mut places = Vec::new();
        for value in array {
            let (amount, typed) = read_value(value, input.kind)
                .and_then(|read| input.check(&read.0, Some(&read.1)).map(|()| read))
                .map_err(|e| self.section.placed(input.name, &e))?;
            let origin = self.section.origin(input.name);
            let (spread, layer) = (Spread::Known, Layer::Lot);
            places.push(self.section.push(self.draft, input, amount, typed, spread, layer, origin));
        }
        Ok(Some(places))
    }
    fn word(&mut self, word: &Word) -> Result<Option<usize>> {
        let Some(text) = self.section.text_or_none(word.name)? else { return Ok(None) };
        let place = word.words.iter().position(|(known, _)| *known == text);
        place.map(Some).ok_or_else(|| {
            let all: Vec<String> = word.words.iter().map(|(w, _)| format!("\"{w}\"")).collect();
            let message = format!("'{text}' is not one of its words; write {}", all.join(" or "));
            self.section.error(word.name, message)
        })
    }
    fn text(&mut self, text: &Text) -> Result<Option<String>> {
        let text = self.section.text_or_none(text.name)?;
        Ok(text.map(|text| one_line(&text).into_owned()))
    }
    fn flag(&mut self, name: &'static str) -> Result<bool> {
        self.section.flag(name)
    }
    fn parts(&mut self, parts: &PartsInput) -> Result<Option<Owned>> {
        self.section.owned(parts)
    }
    fn rows(&mut self, rows: &Rows) -> Result<usize> {
        match self.section.take(rows.name) {
            None => Ok(0),
            Some(_) => Err(self.section.error(rows.name, "a lot file has no such list; remove it")),
        }
    }
    fn enter(&mut self, rows: &Rows, _row: usize) -> Result<()> {
        Err(self.section.error(rows.name, "a lot file has no such list; remove it"))
    }
    fn leave(&mut self) {}
    fn open(&mut self, group: &Group) {
        self.groups.push(*group);
    }
    fn close(&mut self) {
        self.groups.pop();
    }
    fn missing(&self, name: &str, meaning: &str, example: &str) -> Error {
        self.section.missing(name, meaning, example)
    }
    fn ways(&self, names: &[&str]) -> String {
        let all: Vec<String> = names.iter().map(|name| format!("{name} = …")).collect();
        all.join(" or ")
    }
}
