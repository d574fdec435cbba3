//! What was given for a calculation, by name.

use std::borrow::Cow;
use std::collections::BTreeMap;

use super::card::{Group, Input, Item, PartsInput, Rows, Text, Word, flat, named};
use super::owned::Owned;
use super::source::{Place, Source};
use crate::error::{Error, Result, or_near};
use crate::parts::Parts;
use crate::quantity::{Amount, Unit, half_of_last_digit};
use crate::yarn::read_input;

/// A value that was given.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A quantity, with its text where there was one.
    One(Amount, Option<String>),
    /// One value for each of many cases, in the base unit, and the unit that they were given in.
    Column(Vec<f64>, &'static Unit),
    /// A list of quantities.
    List(Vec<(Amount, Option<String>)>),
    /// A word, a name.
    Text(String),
    /// Yes or no.
    Flag(bool),
    /// Owned parts, in the base unit of their kind.
    Parts(Vec<f64>),
    /// Things that are described alike.
    Rows(Vec<Given>),
}

/// What was given for a calculation, or for one row of it: values by name.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    of: &'static str,
    items: &'static [Item],
    values: Vec<(&'static str, Value)>,
}

impl Given {
    /// Nothing given yet for what asks these.
    pub fn new(of: &'static str, items: &'static [Item]) -> Given {
        Given { of, items, values: Vec::new() }
    }
    /// What asks under a name. One that nobody asks for is refused.
    pub fn item(&self, name: &str) -> Result<Item> {
        match named(self.items, name) {
            // The part to use among those owned.
            Some(Item::Parts(parts)) if parts.name != name => return Ok(Item::One(parts.one())),
            Some(item) => return Ok(item),
            None => {}
        }
        let all = flat(self.items);
        let known: Vec<&str> = all.iter().map(Item::name).collect();
        Err(Error::no_input(self.of, name, &known))
    }
    /// Gives a value under a name.
    pub fn set(&mut self, name: &str, value: Value) -> Result<()> {
        let item = self.item(name)?;
        self.put(&item, value)
    }
    /// Gives a value for an item that asks here.
    pub fn put(&mut self, item: &Item, value: Value) -> Result<()> {
        let name = item.name();
        if self.values.iter().any(|(other, _)| *other == name) {
            return Err(Error::twice(name));
        }
        check(item, &value).map_err(|e| e.at(name))?;
        self.values.push((name, value));
        Ok(())
    }
    /// Gives a value as a text; lists are separated by commas.
    pub fn set_text(&mut self, name: &str, text: &str) -> Result<()> {
        let item = self.item(name)?;
        let value = read(&item, text).map_err(|e| e.at(name))?;
        self.put(&item, value)
    }
    /// From names and texts.
    pub fn with_texts(mut self, given: &[(&str, &str)]) -> Result<Given> {
        for (name, text) in given {
            self.set_text(name, text)?;
        }
        Ok(self)
    }
    /// Adds a row to the list with a name.
    pub fn add_row(&mut self, name: &str, row: Given) -> Result<()> {
        if let Some((_, Value::Rows(rows))) = self.values.iter_mut().find(|(n, _)| *n == name) {
            rows.push(row);
            return Ok(());
        }
        self.set(name, Value::Rows(vec![row]))
    }
    /// The same with a row, from names and texts, added to the list with a name.
    pub fn with_row(mut self, name: &str, given: &[(&str, &str)]) -> Result<Given> {
        let row = self.row(name)?.with_texts(given)?;
        self.add_row(name, row)?;
        Ok(self)
    }
    /// What was given, by name.
    pub fn values(&self) -> impl Iterator<Item = (&'static str, &Value)> {
        self.values.iter().map(|(name, value)| (*name, value))
    }
    /// The value with a name.
    pub fn value(&self, name: &str) -> Option<&Value> {
        self.values.iter().find(|(other, _)| *other == name).map(|(_, value)| value)
    }
    /// Nothing given yet for a row of the list with a name.
    pub fn row(&self, name: &str) -> Result<Given> {
        match self.item(name)? {
            Item::Rows(rows) => Ok(Given::new(rows.name, rows.items)),
            _ => Err(Error::notation(format!("{name} is not a list of things with names"))),
        }
    }
}

impl PartsInput {
    /// The input by which one of the parts is set.
    pub fn one(&self) -> Input {
        Input {
            name: self.set,
            symbol: "",
            meaning: self.meaning,
            kind: self.kind,
            usual: (f64::NEG_INFINITY, f64::INFINITY),
            basis: "",
            like: "",
            presence: super::card::Presence::Optional,
            zero: false,
            whole: self.kind == crate::quantity::Kind::Count,
        }
    }
}

/// Refuses a value that does not fit what is asked, or that cannot be.
fn check(item: &Item, value: &Value) -> Result<()> {
    match (item, value) {
        (Item::One(input), Value::One(amount, typed)) => input.check(amount, typed.as_deref()),
        (Item::One(input), Value::Column(column, _)) => {
            for (row, base) in column.iter().enumerate().filter(|(_, base)| !base.is_nan()) {
                input.check_base(*base, None).map_err(|e| e.at(format_args!("row {row}")))?;
            }
            Ok(())
        }
        (Item::List(input), Value::List(all)) => {
            if all.is_empty() {
                return Err(Error::notation("the list is empty"));
            }
            all.iter().enumerate().try_for_each(|(k, (amount, typed))| {
                input.check(amount, typed.as_deref()).map_err(|e| e.at(format_args!("[{}]", k + 1)))
            })
        }
        (Item::Word(word), Value::Text(text)) => place_of(word, text).map(|_| ()),
        (Item::Parts(parts), Value::Parts(all)) => {
            Parts::new(all.clone(), parts.kind, parts.like).map(|_| ())
        }
        (Item::Text(_), Value::Text(_))
        | (Item::Flag(..), Value::Flag(_))
        | (Item::Rows(_), Value::Rows(_)) => Ok(()),
        (Item::One(input), _) => {
            Err(Error::notation(format!("one quantity goes here, such as {}", input.example())))
        }
        (Item::List(input), _) => {
            let example = input.example();
            Err(Error::notation(format!("a list goes here, such as [{example}, {example}]")))
        }
        (Item::Parts(parts), _) => {
            Err(Error::notation(format!("a list goes here, such as {}", parts.like)))
        }
        (Item::Word(word), _) => place_of(word, "").map(|_| ()),
        (Item::Text(_), _) => Err(Error::notation("a text goes here")),
        (Item::Flag(..), _) => Err(Error::notation("yes or no goes here")),
        (Item::Rows(_) | Item::Group(_) | Item::Choice(_), _) => {
            Err(Error::notation("a list of things, each with its values, goes here"))
        }
    }
}

/// The place of a word among those possible.
fn place_of(word: &Word, text: &str) -> Result<usize> {
    let text = text.trim();
    let plain = |word: &str| word.to_lowercase().replace(['-', '_'], " ");
    let found = word.words.iter().position(|(known, _)| plain(known) == plain(text));
    found.ok_or_else(|| {
        let all: Vec<&str> = word.words.iter().map(|(known, _)| *known).collect();
        let near = or_near(text, &all);
        Error::notation(format!(
            "'{text}' is not one of its words{near} Write {}",
            all.join(" or ")
        ))
    })
}

fn read(item: &Item, text: &str) -> Result<Value> {
    let one = |input: &Input, text: &str| {
        read_input(text, input.name, input.kind).map(|(amount, text)| (amount, Some(text)))
    };
    let members = || text.trim_matches(['[', ']', ' ']).split(',').map(str::trim);
    match item {
        Item::One(input) => one(input, text).map(|(amount, text)| Value::One(amount, text)),
        Item::List(input) => {
            members().map(|text| one(input, text)).collect::<Result<_>>().map(Value::List)
        }
        Item::Word(_) | Item::Text(_) => Ok(Value::Text(text.trim().to_owned())),
        Item::Flag(..) => match text.trim().to_lowercase().as_str() {
            "yes" | "true" => Ok(Value::Flag(true)),
            "no" | "false" => Ok(Value::Flag(false)),
            _ => Err(Error::notation(format!("'{}' is neither yes nor no", text.trim()))),
        },
        Item::Parts(parts) => {
            let one = |text| read_input(text, "", parts.kind).map(|(amount, _)| amount.base());
            members().map(one).collect::<Result<_>>().map(Value::Parts)
        }
        Item::Rows(_) | Item::Group(_) | Item::Choice(_) => {
            Err(Error::notation("this cannot be written as one text"))
        }
    }
}

/// A value in its place among those that a calculation runs on.
#[derive(Clone, Debug)]
pub struct Entry {
    /// What asked for it.
    pub input: Input,
    /// Its full name: `card.loss` in a row, `losses[2]` in a list.
    pub key: Cow<'static, str>,
    /// The quantity; of a column, the first that is there, or a usual one.
    pub amount: Amount,
    /// The text of it, where there was one.
    pub typed: Option<String>,
    /// The values of many cases, in the base unit.
    pub column: Option<Vec<f64>>,
    /// Nobody gave it: it is what is taken where nothing is said.
    pub assumed: bool,
}

/// Reads the structs of inputs from what was given, and keeps each value in its place.
pub(super) struct Reader<'g> {
    /// What was given, and the rows that were gone into, with what comes before names there.
    open: Vec<(&'g Given, String)>,
    groups: Vec<Group>,
    pub(super) entries: Vec<Entry>,
    /// The names of rows, and the list in which each stands.
    named: BTreeMap<String, &'static str>,
}

impl<'g> Reader<'g> {
    pub(super) fn new(given: &'g Given) -> Reader<'g> {
        let open = vec![(given, String::new())];
        Reader { open, groups: Vec::new(), entries: Vec::new(), named: BTreeMap::new() }
    }
    fn here(&self) -> &(&'g Given, String) {
        // The first is never left.
        &self.open[self.open.len() - 1]
    }
    fn value(&self, name: &str) -> Option<&'g Value> {
        self.here().0.value(name)
    }
    fn push(
        &mut self,
        input: Input,
        name: Cow<'static, str>,
        amount: Amount,
        typed: Option<String>,
        column: Option<Vec<f64>>,
    ) -> Place {
        let key = match self.here().1.as_str() {
            "" => name,
            before => Cow::Owned(format!("{before}{name}")),
        };
        self.entries.push(Entry { input, key, amount, typed, column, assumed: false });
        Place(self.entries.len() - 1)
    }
    fn assume(&mut self, input: Input, amount: Amount) -> Place {
        let place = self.push(input, input.name.into(), amount, None, None);
        self.entries[place.0].assumed = true;
        place
    }
    fn at(&self, error: Error) -> Error {
        match self.here().1.as_str() {
            "" => error,
            before => error.at(before.trim_end_matches('.')),
        }
    }
    /// The input as it is asked here.
    fn adjusted(&self, input: &Input) -> Input {
        let adjust = self.groups.iter().rev().flat_map(|group| group.adjust);
        match adjust.into_iter().find(|a| a.name == input.name) {
            Some(a) => Input { usual: a.usual, basis: a.basis, ..*input },
            None => *input,
        }
    }
}

impl Source for Reader<'_> {
    fn has(&self, name: &str) -> bool {
        self.value(name).is_some()
    }
    fn one(&mut self, input: &Input) -> Result<Option<Place>> {
        let input = self.adjusted(input);
        match self.value(input.name) {
            Some(Value::One(amount, typed)) => {
                Ok(Some(self.push(input, input.name.into(), *amount, typed.clone(), None)))
            }
            Some(Value::Column(column, unit)) => {
                let first = column.iter().copied().find(|base| !base.is_nan());
                let first = first.unwrap_or_else(|| input.middle());
                let amount = Amount { number: unit.from_base(first), unit };
                Ok(Some(self.push(input, input.name.into(), amount, None, Some(column.clone()))))
            }
            _ => Ok(None),
        }
    }
    fn default(&mut self, input: &Input, base: f64) -> Result<Place> {
        let input = self.adjusted(input);
        let unit = crate::quantity::print::default_unit(input.kind);
        Ok(self.assume(input, Amount { number: unit.from_base(base), unit }))
    }
    fn or_half_digit(&mut self, input: &Input, of: &str) -> Result<Place> {
        if let Some(place) = self.one(input)? {
            return Ok(place);
        }
        let Some(Value::One(amount, Some(text))) = self.value(of) else {
            return Err(self.at(Error::notation(format!(
                "{of}: the last digit that was read is not known; write it as text, such as '{}', or give \
                 {} ({})",
                input.kind.example(),
                input.name,
                input.meaning
            ))));
        };
        let half = half_of_last_digit(text, input.kind).map_err(|e| self.at(e.at(of)))?;
        Ok(self.assume(*input, Amount { number: amount.unit.from_base(half), unit: amount.unit }))
    }
    fn list(&mut self, input: &Input) -> Result<Option<Vec<Place>>> {
        let input = self.adjusted(input);
        let Some(Value::List(all)) = self.value(input.name) else { return Ok(None) };
        let place = |(k, (amount, typed)): (usize, &(Amount, Option<String>))| {
            self.push(
                input,
                format!("{}[{}]", input.name, k + 1).into(),
                *amount,
                typed.clone(),
                None,
            )
        };
        Ok(Some(all.iter().enumerate().map(place).collect()))
    }
    fn word(&mut self, word: &Word) -> Result<Option<usize>> {
        match self.value(word.name) {
            Some(Value::Text(text)) => place_of(word, text).map(Some).map_err(|e| e.at(word.name)),
            _ => Ok(None),
        }
    }
    fn text(&mut self, text: &Text) -> Result<Option<String>> {
        match self.value(text.name) {
            Some(Value::Text(text)) => Ok(Some(text.clone())),
            _ => Ok(None),
        }
    }
    fn flag(&mut self, name: &'static str) -> Result<bool> {
        Ok(matches!(self.value(name), Some(Value::Flag(true))))
    }
    fn parts(&mut self, parts: &PartsInput) -> Result<Option<Owned>> {
        let set = match self.value(parts.set) {
            Some(Value::One(amount, _)) => Some(amount.base()),
            _ => None,
        };
        match (self.value(parts.name), set) {
            (Some(Value::Parts(all)), _) => {
                let owned = Parts::new(all.clone(), parts.kind, parts.like);
                let owned = owned.map_err(|e| e.at(parts.name))?;
                if let Some(set) = set
                    && !owned.all().iter().any(|p| (p - set).abs() <= 1e-9 * p)
                {
                    let all: Vec<String> =
                        owned.all().iter().map(|p| parts.one().say(*p)).collect();
                    return Err(self.at(Error::range(format!(
                        "{}: {} is not among the {} owned: {}",
                        parts.set,
                        parts.one().say(set),
                        parts.name,
                        all.join(", ")
                    ))));
                }
                Ok(Some(Owned::new(owned, set)))
            }
            // The one in use, with no word of others.
            (_, Some(set)) => {
                Ok(Some(Owned::new(Parts::new(vec![set], parts.kind, parts.like)?, Some(set))))
            }
            _ => Ok(None),
        }
    }
    fn rows(&mut self, rows: &Rows) -> Result<usize> {
        match self.value(rows.name) {
            Some(Value::Rows(all)) => Ok(all.len()),
            _ => Ok(0),
        }
    }
    fn enter(&mut self, rows: &Rows, row: usize) -> Result<()> {
        let Some(Value::Rows(all)) = self.value(rows.name) else { return Ok(()) };
        let Some(given) = all.get(row) else { return Ok(()) };
        let before = match rows.label.and_then(|label| given.value(label)) {
            Some(Value::Text(label)) => format!("{label}."),
            _ => format!("{}[{}].", rows.name, row + 1),
        };
        let before = format!("{}{before}", self.here().1);
        let label = before.trim_end_matches('.');
        if let Some(other) = self.named.insert(before.clone(), rows.name) {
            return Err(Error::notation(if other == rows.name {
                format!(
                    "'{label}' is the name of two of the {other}; call them '{label} 1' and '{label} 2'"
                )
            } else {
                format!(
                    "'{label}' is a name among the {other} and among the {}; change one, such as to \
                     '{label} 2'",
                    rows.name
                )
            }));
        }
        self.open.push((given, before));
        Ok(())
    }
    fn leave(&mut self) {
        if self.open.len() > 1 {
            self.open.pop();
        }
    }
    fn open(&mut self, group: &Group) {
        self.groups.push(*group);
    }
    fn close(&mut self) {
        self.groups.pop();
    }
    fn missing(&self, name: &str, meaning: &str, example: &str) -> Error {
        self.at(Error::missing(name, meaning, example))
    }
    fn ways(&self, names: &[&str]) -> String {
        let all: Vec<String> = names.iter().map(|name| format!("{name}=…")).collect();
        all.join(" or ")
    }
}
