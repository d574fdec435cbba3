//! A table of the files that a plan is read from: the lot's, the mill's, one over the other.

use std::cell::RefCell;
use std::collections::BTreeSet;

use toml_edit::{Item, TableLike};

use super::draft::Draft;
use super::file::File;
use super::reader::Reader;
use super::value::shown;
use crate::error::{Error, ErrorKind, Result, did_you_mean};
use crate::words::one_line;

/// A table in one file.
#[derive(Clone)]
struct Layer<'d> {
    file: &'d File,
    path: String,
    table: &'d dyn TableLike,
    line: usize,
}

/// A value, and where it is.
#[derive(Clone)]
pub(super) struct At<'d> {
    pub(super) file: &'d File,
    /// Its name in the file, such as `card.loss`.
    pub(super) key: String,
    pub(super) item: &'d Item,
}

impl At<'_> {
    /// Where it is, such as `first-lot.toml:12`.
    pub(super) fn place(&self) -> String {
        self.file.place(self.file.line(self.item.span()))
    }
    /// What tells it from every other value of every file.
    pub(super) fn mark(&self) -> (String, usize) {
        (self.file.name().to_owned(), self.item.span().map_or(usize::MAX, |span| span.start))
    }
}

/// A table that may be written in several places: what the first of them says holds. It knows which keys
/// were asked for, so that the others can be refused.
#[derive(Clone)]
pub(super) struct Section<'d> {
    pub(super) path: String,
    /// Where something that is missing would be written.
    home: (&'d File, usize),
    layers: Vec<Layer<'d>>,
    /// Keys whose value is written under another name.
    elsewhere: Vec<(&'static str, At<'d>)>,
    used: RefCell<BTreeSet<String>>,
}

impl<'d> Section<'d> {
    /// A whole file.
    pub(super) fn of(file: &'d File) -> Section<'d> {
        let whole = Layer { file, path: String::new(), table: file.table(), line: 1 };
        Section {
            path: String::new(),
            home: (file, 1),
            layers: vec![whole],
            elsewhere: Vec::new(),
            used: RefCell::default(),
        }
    }
    /// This table, and below it another: what this one does not say the other does.
    pub(super) fn over(mut self, other: Section<'d>) -> Section<'d> {
        if self.layers.is_empty() && !other.layers.is_empty() {
            self.home = other.home;
        }
        self.layers.extend(other.layers);
        self.elsewhere.extend(other.elsewhere);
        self
    }
    /// A table of which nothing is written.
    pub(super) fn nothing(&self) -> Section<'d> {
        Section {
            layers: Vec::new(),
            elsewhere: Vec::new(),
            used: RefCell::default(),
            ..self.clone()
        }
    }
    /// This table below another that holds before it.
    pub(super) fn below(mut self, mut over: Section<'d>) -> Section<'d> {
        over.layers.append(&mut self.layers);
        self.layers = over.layers;
        self
    }
    /// Whether any of the files has a text in quotes.
    pub(super) fn quotes(&self, text: &str) -> bool {
        let quoted = [format!("\"{text}\""), format!("'{text}'")];
        self.layers.iter().any(|layer| quoted.iter().any(|q| layer.file.text().contains(q)))
    }
    /// The same table under another name in messages.
    pub(super) fn called(mut self, path: impl Into<String>) -> Section<'d> {
        self.path = path.into();
        self
    }
    /// Lets a key mean a value that is written elsewhere.
    pub(super) fn mean(&mut self, key: &'static str, at: At<'d>) {
        self.elsewhere.push((key, at));
    }

    fn full(&self, key: &str) -> String {
        joined(&self.path, key)
    }
    /// The value of a key, and where it is.
    pub(super) fn at(&self, key: &str) -> Option<At<'d>> {
        if let Some((_, at)) = self.elsewhere.iter().find(|(name, _)| *name == key) {
            return Some(at.clone());
        }
        self.layers.iter().find_map(|layer| {
            let item = layer.table.get(key)?;
            Some(At { file: layer.file, key: joined(&layer.path, key), item })
        })
    }
    /// Which of some keys is written first: the nearer table's.
    pub(super) fn first_of(&self, keys: &[&'static str]) -> Option<&'static str> {
        self.layers
            .iter()
            .find_map(|layer| keys.iter().find(|key| layer.table.get(key).is_some()).copied())
    }
    pub(super) fn has(&self, key: &str) -> bool {
        self.at(key).is_some()
    }
    /// An error at a key of this section.
    pub(super) fn error(&self, key: &str, message: impl Into<String>) -> Error {
        if let Some(at) = self.at(key) {
            return Error::plan(message).at(format_args!("{}: {}", at.place(), at.key));
        }
        Error::plan(message).at(format_args!("{}: {}", self.place(), self.full(key)))
    }
    /// Turns an error of any kind into one with this place.
    pub(super) fn placed(&self, key: &str, error: &Error) -> Error {
        self.error(key, error.to_string())
    }
    /// An error of the table as a whole.
    pub(super) fn wrong(&self, message: impl Into<String>) -> Error {
        let (file, line) = self.home;
        Error::plan(message).at(format_args!("{}: {}", file.place(line), self.path))
    }
    /// Where the table begins.
    pub(super) fn place(&self) -> String {
        self.home.0.place(self.home.1)
    }
    pub(super) fn take(&self, key: &str) -> Option<&'d Item> {
        self.used.borrow_mut().insert(key.to_owned());
        self.at(key).map(|at| at.item)
    }
    /// Takes note that a key is known.
    pub(super) fn know(&self, keys: impl IntoIterator<Item = impl Into<String>>) {
        // The keys may be found by looking into this very table.
        let keys: Vec<String> = keys.into_iter().map(Into::into).collect();
        self.used.borrow_mut().extend(keys);
    }
    /// Whether any file has the table.
    pub(super) fn is_present(&self) -> bool {
        !self.layers.is_empty()
    }
    /// The keys, in the order of the files.
    pub(super) fn keys(&self) -> Vec<String> {
        let mut all: Vec<String> = Vec::new();
        for layer in &self.layers {
            for (key, _) in layer.table.iter() {
                if !all.iter().any(|known| known == key) {
                    all.push(key.to_owned());
                }
            }
        }
        all
    }
    /// A table within this one; without keys where no file has one.
    pub(super) fn section(&self, key: &str) -> Result<Section<'d>> {
        self.used.borrow_mut().insert(key.to_owned());
        let mut layers = Vec::new();
        for layer in &self.layers {
            let Some(item) = layer.table.get(key) else { continue };
            let path = joined(&layer.path, key);
            let Some(table) = item.as_table_like() else {
                let place = layer.file.place(layer.file.line(item.span()));
                let message = format!("write a table [{path}], not {}", shown(item));
                return Err(Error::plan(message).at(format_args!("{place}: {path}")));
            };
            let line = layer.file.line(item.span());
            layers.push(Layer { file: layer.file, path, table, line });
        }
        let file = layers.iter().find(|layer| layer.file.role() != "values");
        let home = file.map_or(self.home, |layer| (layer.file, layer.line));
        Ok(Section {
            path: self.full(key),
            home,
            layers,
            elsewhere: Vec::new(),
            used: RefCell::default(),
        })
    }
    /// A table within this one, where it is one: what else stands under the key is passed over.
    pub(super) fn tables(&self, key: &str) -> Result<Section<'d>> {
        let is_table = |layer: &&Layer<'d>| layer.table.get(key).is_none_or(Item::is_table_like);
        let layers = self.layers.iter().filter(is_table).cloned().collect();
        let used = RefCell::new(self.used.borrow().clone());
        let part = Section { layers, used, elsewhere: Vec::new(), ..self.clone() };
        self.used.borrow_mut().insert(key.to_owned());
        part.section(key)
    }
    /// The tables of a list of tables, such as `[[card.changed]]`.
    pub(super) fn list(&self, key: &str) -> Vec<Section<'d>> {
        self.used.borrow_mut().insert(key.to_owned());
        let mut all = Vec::new();
        for layer in &self.layers {
            let item = layer.table.get(key).and_then(Item::as_array_of_tables);
            for table in item.into_iter().flat_map(toml_edit::ArrayOfTables::iter) {
                let line = layer.file.line(table.span());
                let path = joined(&layer.path, key);
                let one = Layer { file: layer.file, path: path.clone(), table, line };
                let home = (layer.file, line);
                all.push(Section { path, home, layers: vec![one], ..self.nothing() });
            }
        }
        all
    }
    /// What stands under a key where it is no table.
    pub(super) fn plain(&self, key: &str) -> Option<At<'d>> {
        self.layers.iter().find_map(|layer| {
            let item = layer.table.get(key).filter(|item| !item.is_table_like())?;
            Some(At { file: layer.file, key: joined(&layer.path, key), item })
        })
    }
    /// The tables within this one that is written first, and what they are called.
    pub(super) fn sections(&self) -> Result<Vec<(String, Section<'d>)>> {
        self.keys().into_iter().map(|key| Ok((key.clone(), self.section(&key)?))).collect()
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
        Err(self.unknown(&key, &known))
    }
    /// The error of a key that is none of those known.
    pub(super) fn unknown(&self, key: &str, known: &[&str]) -> Error {
        let near = did_you_mean(key, known.iter().copied())
            .map_or_else(|| ".".to_owned(), |k| format!("; did you mean '{k}'?"));
        self.error(key, format!("unknown key{near} Known here: {}", known.join(", ")))
    }
    pub(super) fn missing(&self, key: &str, what: &str, example: &str) -> Error {
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
    /// A text that may be absent, on one line.
    pub(super) fn line_or_none(&self, key: &str) -> Result<Option<String>> {
        Ok(self.text_or_none(key)?.map(|text| one_line(&text).into_owned()))
    }
    /// A date that may be absent.
    pub(super) fn date(&self, key: &str) -> Result<Option<String>> {
        let Some(item) = self.take(key) else { return Ok(None) };
        let date = item.as_datetime().and_then(|datetime| datetime.date);
        date.map(|date| Some(date.to_string())).ok_or_else(|| {
            self.error(key, format!("write a date such as 2026-05-04, not {}", shown(item)))
        })
    }
    /// Yes or no.
    pub(super) fn flag(&self, key: &str) -> Result<bool> {
        Ok(self.flag_or_none(key)?.unwrap_or(false))
    }
    /// Yes or no, where it is said.
    pub(super) fn flag_or_none(&self, key: &str) -> Result<Option<bool>> {
        let Some(item) = self.take(key) else { return Ok(None) };
        item.as_bool()
            .map(Some)
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

    /// Reads inputs from this section.
    pub(super) fn read<T>(
        &self,
        draft: &mut Draft,
        take: impl FnOnce(&mut Reader<'_, 'd>) -> Result<T>,
    ) -> Result<T> {
        // An error that belongs to no key of its own has the place of the table.
        take(&mut Reader::new(self, draft)).map_err(|e| match e.kind() {
            ErrorKind::Plan => e,
            _ => self.wrong(e.to_string()),
        })
    }
}

fn joined(path: &str, key: &str) -> String {
    let key = one_line(key);
    if path.is_empty() { key.into_owned() } else { format!("{path}.{key}") }
}
