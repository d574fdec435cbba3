//! What can be searched in each entry: its words without endings, and what each is worth.

use std::sync::{Arc, LazyLock, Mutex, PoisonError};

use super::entry::{Entry, EntryKind, entries};
use crate::calculation::{answers, flat};
use crate::handbook::{Figure, Table};
use crate::words::words;

/// What a word is worth where it stands: in a name, another name, the line that says what it is,
/// what else there is to read.
pub(super) const NAME: f64 = 10.0;
pub(super) const ALIAS: f64 = 9.0;
const SUMMARY: f64 = 5.0;
const DETAIL: f64 = 2.0;

/// An entry and its fields, the name first.
pub(super) type Indexed = (Entry, Vec<Field>);

/// Every entry with its fields. Users may define count systems at any time: what is kept
/// is made anew when there are more.
pub(super) fn index() -> Arc<Vec<Indexed>> {
    static KEPT: Mutex<Option<Arc<Vec<Indexed>>>> = Mutex::new(None);
    let all = entries();
    let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(index) = kept.as_ref().filter(|index| index.len() == all.len()) {
        return Arc::clone(index);
    }
    let with_fields = |entry: Entry| {
        let fields = fields(&entry);
        (entry, fields)
    };
    let index = Arc::new(all.into_iter().map(with_fields).collect());
    *kept = Some(Arc::clone(&index));
    index
}

/// A table, the fields of its head, and its rows with theirs.
pub(super) struct IndexedTable {
    pub(super) table: &'static Table,
    pub(super) head: [Field; 2],
    pub(super) rows: Vec<(&'static Figure, Vec<Field>)>,
}

/// The rows of all tables.
pub(super) static ROWS: LazyLock<Vec<IndexedTable>> = LazyLock::new(|| {
    let row = |figure: &'static Figure| {
        let own = figure.of.iter().map(|word| Field::new(SUMMARY, word));
        let more = [figure.source, figure.note].map(|text| Field::new(DETAIL, text));
        (figure, own.chain(more).collect())
    };
    let indexed = |table: &'static Table| IndexedTable {
        table,
        head: [table.name, table.title].map(|text| Field::new(SUMMARY, text)),
        rows: table.figures.iter().map(row).collect(),
    };
    super::tables().map(indexed).collect()
});

/// A word without what number and tense add: `twists`, `twisted`, `twisting` are `twist`.
fn stem(word: &str) -> String {
    let ends = |end: &str, least: usize| {
        word.strip_suffix(end).filter(|rest| rest.chars().count() >= least)
    };
    let bare = |rest: &str| {
        let mut letters: Vec<char> = rest.chars().collect();
        // spinning, knitting: the last letter stands twice; felling and pressing keep theirs.
        if let [.., a, b] = letters[..]
            && a == b
            && !"lsaeiou".contains(a)
        {
            letters.pop();
        }
        letters.into_iter().collect::<String>()
    };
    let root = if let Some(rest) = ends("ies", 3) {
        format!("{rest}y")
    } else if let Some(rest) = ends("sses", 1) {
        format!("{rest}ss")
    } else if let Some(rest) = ["ches", "shes", "xes"].iter().find_map(|end| ends(end, 2)) {
        format!(
            "{rest}{}",
            if word.ends_with("xes") { "x" } else { &word[word.len() - 4..word.len() - 2] }
        )
    } else if word.ends_with("ss") || word.ends_with("us") || word.ends_with("is") {
        word.to_owned()
    } else {
        ends("s", 3).unwrap_or(word).to_owned()
    };
    let word = root.as_str();
    let ends = |end: &str, least: usize| {
        word.strip_suffix(end).filter(|rest| rest.chars().count() >= least)
    };
    let root = if let Some(rest) = ends("ing", 3) {
        bare(rest)
    } else if let Some(rest) = ends("ed", 3).filter(|rest| !rest.ends_with(['e', 'o'])) {
        bare(rest)
    } else {
        word.to_owned()
    };
    // shrinkage and the like are found by their beginning; dye and dyeing are one.
    match root.strip_suffix('e') {
        Some(rest) if rest.chars().count() >= 3 => rest.to_owned(),
        _ => root,
    }
}

pub(super) fn stems(text: &str) -> Vec<String> {
    words(text).iter().map(|word| stem(word)).collect()
}

/// A part of an entry that can be searched.
pub(super) struct Field {
    pub(super) worth: f64,
    /// The text as it stands, for names with signs such as `g/m²`.
    pub(super) whole: String,
    pub(super) stems: Vec<String>,
}

impl Field {
    pub(super) fn new(worth: f64, text: &str) -> Field {
        Field { worth, whole: text.to_lowercase(), stems: stems(text) }
    }
    /// A name that is not taken apart: a unit is found by the whole of it.
    fn sign(worth: f64, text: &str) -> Field {
        let whole = text.to_lowercase();
        let parts = whole.split_whitespace().map(stem).collect();
        Field { worth, stems: parts, whole }
    }
}

/// The fields of an entry, the name first.
fn fields(entry: &Entry) -> Vec<Field> {
    let sign = matches!(entry.kind(), EntryKind::Unit);
    let name = |worth, text: &str| {
        if sign { Field::sign(worth, text) } else { Field::new(worth, text) }
    };
    let mut all = vec![name(NAME, entry.name())];
    all.extend(entry.other_names().iter().map(|text| name(ALIAS, text)));
    let mut add = |worth, texts: &[&str]| {
        all.extend(texts.iter().map(|text| Field::new(worth, text)));
    };
    add(DETAIL, &[entry.kind().word()]);
    match entry {
        Entry::Formula(f) => {
            add(SUMMARY, &[f.summary]);
            add(DETAIL, &[f.room(), f.details]);
            f.inputs.iter().for_each(|input| add(DETAIL, &[input.name, input.meaning]));
            f.limits.iter().chain(f.slips).for_each(|line| add(DETAIL / 2.0, &[line]));
        }
        Entry::Calculation(c) => {
            add(SUMMARY, &[c.title, c.summary]);
            add(DETAIL, &[c.room(), c.details]);
            for ask in flat(c.inputs) {
                add(DETAIL, &[ask.name(), ask.meaning()]);
            }
            for answer in answers(c.outputs) {
                add(DETAIL, &[answer.name, answer.meaning]);
            }
        }
        Entry::Function(function) => {
            add(SUMMARY, &[function.summary]);
            add(DETAIL, &[function.room]);
        }
        #[cfg(feature = "plan-file")]
        Entry::Stage(stage) => add(SUMMARY, &[stage.summary, stage.makes]),
        Entry::Table(table) | Entry::Rows(table, ..) => {
            add(SUMMARY, &[table.title]);
            add(DETAIL, &[&table.about]);
        }
        Entry::Count(system) => {
            add(SUMMARY, &[system.unit.definition, system.country]);
            add(DETAIL, &[system.date, system.unit.source]);
        }
        Entry::Reed(unit) | Entry::Unit(unit) => {
            add(SUMMARY, &[unit.definition]);
            add(DETAIL, &[unit.kind.words(), unit.source]);
        }
        Entry::Weave(_) => {}
    }
    all
}
