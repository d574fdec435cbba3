//! Where the inputs of a calculation come from: arguments, a lot file.

use super::card::{Choice, Group, Input, Item, PartsInput, Rows, Text, Word, any_name, flat};
use super::owned::Owned;
use crate::error::{Error, Result};

/// The place of a value among those that were given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Place(pub usize);

/// Hands out what was given for a calculation, one input after another.
///
/// The structs of inputs read themselves from it (`take`), so that arguments, a lot file and a page ask
/// for the same things in the same words.
pub trait Source {
    /// Whether a name was given at all.
    fn has(&self, name: &str) -> bool;
    /// The place of a quantity, where it was given; checked.
    fn one(&mut self, input: &Input) -> Result<Option<Place>>;
    /// The place of a value that is used for a quantity that was not given.
    fn default(&mut self, input: &Input, base: f64) -> Result<Place>;
    /// The places of a list of quantities, where it was given; checked.
    fn list(&mut self, input: &Input) -> Result<Option<Vec<Place>>>;
    /// The place of a word among those possible, where one was given.
    fn word(&mut self, word: &Word) -> Result<Option<usize>>;
    /// A text, where it was given.
    fn text(&mut self, text: &Text) -> Result<Option<String>>;
    /// Whether something is so.
    fn flag(&mut self, name: &'static str) -> Result<bool>;
    /// Owned parts, where they were given.
    fn parts(&mut self, parts: &PartsInput) -> Result<Option<Owned>>;
    /// How many rows were given.
    fn rows(&mut self, rows: &Rows) -> Result<usize>;
    /// Goes into a row: names are then those of the row.
    fn enter(&mut self, rows: &Rows, row: usize) -> Result<()>;
    /// Comes out of the row.
    fn leave(&mut self);
    /// Goes into a group.
    fn open(&mut self, group: &Group);
    /// Comes out of the group.
    fn close(&mut self);
    /// The error where something that is needed is missing: its name, what it is, how one would write it.
    fn missing(&self, name: &str, meaning: &str, example: &str) -> Error;
    /// How several ways to write one thing are named: `draft=… or delivered_length=…`.
    fn ways(&self, names: &[&str]) -> String;

    /// A quantity that has to be given.
    fn needed(&mut self, input: &Input) -> Result<Place> {
        match self.one(input)? {
            Some(place) => Ok(place),
            None => Err(self.missing(input.name, input.meaning, &input.example())),
        }
    }
    /// A quantity for which a value stands when it is not given.
    fn or(&mut self, input: &Input, base: f64) -> Result<Place> {
        match self.one(input)? {
            Some(place) => Ok(place),
            None => self.default(input, base),
        }
    }
    /// A quantity for which half of the last digit of another stands, as that was written, when it is not
    /// given.
    fn or_half_digit(&mut self, input: &Input, of: &str) -> Result<Place> {
        let _ = of;
        self.needed(input)
    }
    /// A list that has to be given.
    fn needed_list(&mut self, input: &Input) -> Result<Vec<Place>> {
        let found = self.list(input)?;
        found.ok_or_else(|| {
            let example = format!("[{0}, {0}]", input.example());
            self.missing(input.name, input.meaning, &example)
        })
    }
    /// A word, or the one that is taken when none is given.
    fn needed_word(&mut self, word: &Word) -> Result<usize> {
        let found = self.word(word)?.or(word.default);
        found.ok_or_else(|| {
            let all: Vec<String> = word.words.iter().map(|w| format!("\"{}\"", w.0)).collect();
            self.missing(word.name, word.meaning, &all.join(" or "))
        })
    }
    /// A text that has to be given.
    fn needed_text(&mut self, text: &Text) -> Result<String> {
        let found = self.text(text)?;
        found.ok_or_else(|| self.missing(text.name, text.meaning, "\"…\""))
    }
    /// Owned parts that have to be given.
    fn needed_parts(&mut self, parts: &PartsInput) -> Result<Owned> {
        let found = self.parts(parts)?;
        found.ok_or_else(|| self.missing(parts.name, parts.meaning, parts.like))
    }
    /// Rows of which there has to be one at least.
    fn needed_rows(&mut self, rows: &Rows) -> Result<usize> {
        match self.rows(rows)? {
            0 => Err(self.missing(rows.name, rows.meaning, "[{…}]")),
            several => Ok(several),
        }
    }
    /// Whether anything of a group that may be omitted was given; then all that it needs has to be.
    fn any(&mut self, items: &[Item]) -> Result<bool> {
        let Some(given) = any_name(items, |name| self.has(name)) else { return Ok(false) };
        for item in &flat(items) {
            let has = || any_name(std::slice::from_ref(item), |name| self.has(name)).is_some();
            if item.is_needed() && !has() {
                return Err(Error::notation(format!(
                    "{} was given without {} ({}); write both or neither",
                    given,
                    item.name(),
                    item.meaning()
                )));
            }
        }
        Ok(true)
    }
    /// Which of several ways to say one thing was taken: its place; none where none was.
    fn way(&mut self, choice: &Choice) -> Result<Option<usize>> {
        let mut taken: Vec<(usize, &'static str)> = Vec::new();
        for (place, way) in choice.ways.iter().enumerate() {
            if let Some(name) = any_name(std::slice::from_ref(way), |name| self.has(name)) {
                taken.push((place, name));
            }
        }
        if taken.len() > 1 {
            let given: Vec<&str> = taken.iter().map(|(_, name)| *name).collect();
            return Err(Error::notation(format!(
                "{} were given, and each settles {}: omit all but one",
                given.join(" and "),
                choice.what
            )));
        }
        Ok(taken.first().map(|(place, _)| *place))
    }
    /// The same where one way has to be taken.
    fn needed_way(&mut self, choice: &Choice) -> Result<usize> {
        if let Some(place) = self.way(choice)? {
            return Ok(place);
        }
        // Of a way with several names the first that it needs.
        let first = |way: &Item| {
            let all = flat(std::slice::from_ref(way));
            all.iter().find(|item| item.is_needed()).or(all.first()).map(Item::name)
        };
        let names: Vec<&str> = choice.ways.iter().filter_map(first).collect();
        Err(Error::call(format!("{} is missing; write {}", choice.what, self.ways(&names))))
    }
}
