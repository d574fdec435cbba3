//! Reading the structs of inputs from the files of a plan.

use toml_edit::TableLike;

use super::chance::{Layer, Spread};
use super::draft::Draft;
use super::given::Given;
use super::section::{At, Section};
use super::value::{read, read_value, shown};
use crate::calculation::{Group, Input, Owned, PartsInput, Place, Rows, Source, Text, Word};
use crate::error::{Error, ErrorKind, Result};
use crate::mill;
use crate::normal::{Z95, quantile};
use crate::parts::Parts;
use crate::quantity::print::{default_unit, of_kind};
use crate::quantity::{Amount, Count, Kind, Length, Ratio};
use crate::words::one_line;

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

/// Where a range may come from.
const FROM: [&str; 5] = ["guess", "handbook", "test", "sample", "own lots"];

/// A value as it was read.
struct Read {
    amount: Amount,
    typed: String,
    spread: Spread,
    layer: Layer,
    from: Option<String>,
}

/// Reads the structs of inputs from a section. What is wrong is noted and something usual put in its place,
/// so that the reading goes on and finds the other faults too.
pub(super) struct Reader<'r, 'd> {
    section: &'r Section<'d>,
    draft: &'r mut Draft,
    groups: Vec<Group>,
    /// The key that is read, where it is a name of the user's own.
    own_key: Option<String>,
}

impl<'r, 'd> Reader<'r, 'd> {
    pub(super) fn new(section: &'r Section<'d>, draft: &'r mut Draft) -> Self {
        Reader { section, draft, groups: Vec::new(), own_key: None }
    }
    /// Reads an input under a name of the user's own.
    pub(super) fn under(&mut self, key: &str, input: &Input) -> Result<Option<Place>> {
        self.own_key = Some(key.to_owned());
        let found = self.one(input);
        self.own_key = None;
        found
    }
    fn key<'k>(&'k self, q: &Input) -> &'k str
    where
        'static: 'k,
    {
        self.own_key.as_deref().unwrap_or(q.name)
    }
    /// The input as it is asked here.
    fn adjusted(&self, input: &Input) -> Input {
        let adjust = self.groups.iter().rev().flat_map(|group| group.adjust);
        match adjust.into_iter().find(|a| a.name == input.name) {
            Some(a) => Input { usual: a.usual, basis: a.basis, ..*input },
            None => *input,
        }
    }
    fn value(&mut self, q: &Input) -> Result<Option<Place>> {
        if self.section.take(self.key(q)).is_none() {
            return Ok(None);
        }
        let Some(at) = self.section.at(self.key(q)) else { return Ok(None) };
        let mark = (at.mark(), q.name);
        if let Some(place) = self.draft.known(&mark) {
            return Ok(Some(place));
        }
        let place = |e: Error| self.section.placed(self.key(q), &e);
        let known = |(amount, typed)| {
            let (spread, layer) = (Spread::Known, Layer::Lot);
            Read { amount, typed, spread, layer, from: None }
        };
        let value = match at.item.as_table_like() {
            None if at.item.as_str() == Some("handbook") => self.handbook(q)?,
            None => known(read(at.item, q.kind).map_err(place)?),
            Some(table) if table.contains_key("teeth") => known(self.trial(q, table)?),
            Some(table) if table.contains_key("drivers") => known(self.train(q, table)?),
            Some(table) => self.spread(q, table)?,
        };
        q.check(&value.amount, Some(&value.typed)).map_err(place)?;
        if q.whole && value.spread.is_open() {
            let message = format!("{}: known and whole; write {}", q.meaning, q.example());
            return Err(self.section.error(self.key(q), message));
        }
        // What is lost of wool as it is weighed is of another size than what is lost of its fibre.
        let of_weighed = self.draft.weighed && ["loss", "rejects"].contains(&q.name);
        let bare = at.item.as_table_like().is_none() && at.item.as_str().is_none();
        let unusual = self.unusual(q, value.amount.base(), bare, value.spread);
        self.draft.warnings.extend(unusual.filter(|_| !of_weighed));
        Ok(Some(self.push(Some(mark), &at, q, value)))
    }
    /// A machine's constant from a trial: `{ teeth = 40, gave = "310 turns/m" }`.
    fn trial(&self, q: &Input, table: &dyn TableLike) -> Result<(Amount, String)> {
        let wrong = || {
            let message = format!(
                "write {} = {{ teeth = 40, gave = \"{}\" }}, or the constant itself",
                self.key(q),
                q.kind.example()
            );
            self.section.error(self.key(q), message)
        };
        let one = |key: &str, kind: Kind| {
            let item = table.get(key).ok_or_else(wrong)?;
            read(item, kind).map_err(|e| self.section.placed(self.key(q), &e))
        };
        if table.len() != 2 {
            return Err(wrong());
        }
        let ((teeth, _), (gave, said)) = (one("teeth", Kind::Count)?, one("gave", q.kind)?);
        let teeth = teeth.base();
        let amount = Amount { number: gave.number * teeth, unit: gave.unit };
        Ok((amount, format!("{teeth} × {said}")))
    }
    /// A twist constant from the train of wheels: `{ drivers = [1, 88], driven = [20, 41], whirl_ratio = 8,
    /// roller_circumference = "8.5 cm" }`, with 1 where the change wheel goes.
    fn train(&self, q: &Input, table: &dyn TableLike) -> Result<(Amount, String)> {
        let wrong = || {
            let message = format!(
                "write {} = {{ drivers = [1, 88], driven = [20, 41], whirl_ratio = 8, \
                 roller_circumference = \"8.5 cm\" }}, with 1 where the change wheel goes, or the constant \
                 itself",
                self.key(q)
            );
            self.section.error(self.key(q), message)
        };
        if q.kind != Kind::Twist || table.len() != 4 {
            return Err(wrong());
        }
        let placed = |e: Error| self.section.placed(self.key(q), &e);
        let teeth = |key: &str| -> Result<Vec<f64>> {
            let list = table.get(key).and_then(toml_edit::Item::as_array).ok_or_else(wrong)?;
            let one = |value| read_value(value, Kind::Count).map(|(teeth, _)| teeth.base());
            list.iter().map(one).collect::<Result<_>>().map_err(placed)
        };
        let one = |key: &str, kind: Kind| {
            let item = table.get(key).ok_or_else(wrong)?;
            read(item, kind).map(|(amount, _)| amount.base()).map_err(placed)
        };
        let (drivers, driven) = (teeth("drivers")?, teeth("driven")?);
        if drivers.len() != driven.len() || drivers.is_empty() {
            return Err(wrong());
        }
        let (whirl, roller) =
            (one("whirl_ratio", Kind::Ratio)?, one("roller_circumference", Kind::Length)?);
        let counts = |teeth: &[f64]| teeth.iter().map(|z| Count::base(*z)).collect::<Vec<_>>();
        let constant = mill::twist_constant(
            Ratio::base(whirl),
            Length::base(roller),
            &counts(&drivers),
            &counts(&driven),
        );
        let said = |teeth: &[f64]| {
            let all: Vec<String> = teeth.iter().map(f64::to_string).collect();
            all.join(" × ")
        };
        let amount = Amount { number: constant.value(), unit: default_unit(q.kind) };
        Ok((amount, format!("{} / ({}) × {whirl} / {roller} m", said(&drivers), said(&driven))))
    }
    /// The usual range of the handbook, its middle the likely value.
    fn handbook(&self, q: &Input) -> Result<Read> {
        let (low, high) = q.usual;
        let likely = f64::midpoint(low, high);
        // A share that may be nothing at all is seldom quite nothing.
        let low = if low > 0.0 { low } else { likely / 10.0 };
        let spread = Spread::from_range([low, likely, high], [-Z95, Z95], q.kind)
            .map_err(|e| self.section.placed(self.key(q), &e))?;
        let unit = default_unit(q.kind);
        let amount = Amount { number: unit.from_base(likely), unit };
        let from = Some("handbook".to_owned());
        Ok(Read { amount, typed: q.say(likely), spread, layer: Layer::Lot, from })
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
        let at = self.section.at(self.key(q))?;
        let key = at.key.clone();
        let name = if end.is_empty() { key } else { format!("{key}: {end}") };
        let words = words.replacen(q.name, &name, 1);
        let question = match q.slip(base, bare) {
            Some(question) => format!(". {question}"),
            None => String::new(),
        };
        Some(format!("{}: {words}{question}", at.place()))
    }
    fn push(
        &mut self,
        mark: Option<super::draft::Mark>,
        at: &At<'_>,
        q: &Input,
        value: Read,
    ) -> Place {
        let Read { amount, typed, spread, layer, from } = value;
        let given = Given {
            key: at.key.clone(),
            symbol: q.symbol,
            meaning: q.meaning,
            kind: q.kind,
            amount,
            typed,
            spread,
            layer,
            origin: at.place(),
            from: from.unwrap_or_else(|| at.file.role().to_owned()),
        };
        self.draft.push(mark, given)
    }
    /// A value of no file: a default, or what stands in for one that is wrong.
    fn own(&mut self, q: &Input, base: f64, from: &str) -> Place {
        let unit = default_unit(q.kind);
        let given = Given {
            key: format!("{}.{}", self.section.path, self.key(q)),
            symbol: q.symbol,
            meaning: q.meaning,
            kind: q.kind,
            amount: Amount { number: unit.from_base(base), unit },
            typed: q.say(base),
            spread: Spread::Known,
            layer: Layer::Lot,
            origin: from.to_owned(),
            from: from.to_owned(),
        };
        let mark = ((format!("{from} {}", self.section.path), usize::MAX), q.name);
        if let Some(place) = self.draft.known(&mark) {
            return place;
        }
        self.draft.push(Some(mark), given)
    }
    /// Something usual, for a value that is wrong or missing.
    fn stand_in(&mut self, q: &Input) -> Place {
        self.own(q, f64::midpoint(q.usual.0, q.usual.1), "wrong")
    }
    /// `{ low = …, likely = …, high = … }` or `{ mean = …, sd = … }`.
    fn spread(&self, q: &Input, table: &dyn TableLike) -> Result<Read> {
        let inner = |key: &str, message: String| {
            self.section.error(self.key(q), format!("{key}: {message}"))
        };
        let one = |key: &str| -> Result<Option<(Amount, String)>> {
            table
                .get(key)
                .map(|i| read(i, q.kind))
                .transpose()
                .map_err(|e| inner(key, e.to_string()))
        };
        if let Some((key, _)) = table
            .iter()
            .find(|(k, _)| percentile(k).is_none() && !["mean", "sd", "varies", "from"].contains(k))
        {
            return Err(inner(
                key,
                "unknown key; write low, likely and high (or percentiles, such as p10, p50 and p90), or mean \
                 and sd, varies and from"
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
        let from = match table.get("from") {
            None => None,
            Some(item) => match item.as_str().map(|from| (from, FROM.contains(&from))) {
                Some((from, true)) => Some(from.to_owned()),
                _ => return Err(inner("from", format!("write one of {}", FROM.join(", ")))),
            },
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
                    .map_err(|e| self.section.placed(self.key(q), &e))?;
                Ok(Read { amount: *likely, typed: typed.clone(), spread, layer, from })
            }
            ([], Some((mean, typed)), Some((sd, _))) => {
                let spread = Spread::from_mean(self.key(q), mean.base(), sd.base(), q.kind)
                    .map_err(|e| self.section.placed(self.key(q), &e))?;
                Ok(Read { amount: mean, typed, spread, layer, from })
            }
            _ => Err(self.section.error(
                self.key(q),
                format!(
                    "write {0} = {{ low = \"…\", likely = \"…\", high = \"…\" }} or {0} = {{ mean = \"…\", sd = \"…\" }}",
                    self.key(q)
                ),
            )),
        }
    }
    /// Parts that the mill owns, and the one set for use where there is one.
    fn owned(&self, asked: &PartsInput) -> Result<Option<Owned>> {
        let PartsInput { name: list, set, kind, like, .. } = *asked;
        let Some(item) = self.section.take(list) else { return Ok(None) };
        let array = item.as_array().filter(|a| !a.is_empty()).ok_or_else(|| {
            self.section
                .error(list, format!("a list goes here, such as {like}, not {}", shown(item)))
        })?;
        let parts = array
            .iter()
            .map(|v| read_value(v, kind).map(|(amount, _)| amount.base()))
            .collect::<Result<Vec<f64>>>()
            .and_then(|parts| Parts::new(parts, kind, like))
            .map_err(|e| self.section.placed(list, &e))?;
        let fixed = match self.section.take(set) {
            None => None,
            Some(item) => {
                let part = read(item, kind).map_err(|e| self.section.placed(set, &e))?.0.base();
                let owned = parts.all().iter().any(|p| (p - part).abs() <= 1e-9 * p.abs());
                if !owned {
                    let all: Vec<String> = parts.all().iter().map(|p| of_kind(*p, kind)).collect();
                    return Err(self.section.error(
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

impl Source for Reader<'_, '_> {
    fn has(&self, name: &str) -> bool {
        self.section.has(name)
    }
    fn one(&mut self, input: &Input) -> Result<Option<Place>> {
        let input = self.adjusted(input);
        match self.value(&input) {
            Err(error) if error.kind() == ErrorKind::Plan => {
                self.draft.fault(error);
                Ok(Some(self.stand_in(&input)))
            }
            other => other,
        }
    }
    fn needed(&mut self, input: &Input) -> Result<Place> {
        if let Some(place) = self.one(input)? {
            return Ok(place);
        }
        let missing = self.missing(input.name, input.meaning, &input.example());
        self.draft.fault(missing);
        Ok(self.stand_in(&self.adjusted(input)))
    }
    fn default(&mut self, input: &Input, base: f64) -> Result<Place> {
        Ok(self.own(&self.adjusted(input), base, "default"))
    }
    fn list(&mut self, input: &Input) -> Result<Option<Vec<Place>>> {
        let Some(item) = self.section.take(input.name) else { return Ok(None) };
        let wrong = || {
            let message = format!("a list goes here, not {}", shown(item));
            self.section.error(input.name, message)
        };
        let array = item.as_array().ok_or_else(wrong)?;
        let mut places = Vec::new();
        let Some(at) = self.section.at(input.name) else { return Ok(None) };
        for value in array {
            let (amount, typed) = read_value(value, input.kind)
                .and_then(|read| input.check(&read.0, Some(&read.1)).map(|()| read))
                .map_err(|e| self.section.placed(input.name, &e))?;
            let (spread, layer) = (Spread::Known, Layer::Lot);
            let value = Read { amount, typed, spread, layer, from: None };
            places.push(self.push(None, &at, input, value));
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
        self.owned(parts)
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
