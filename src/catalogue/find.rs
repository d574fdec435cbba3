//! The one search: words in, entries out, the best first.

use std::sync::LazyLock;

use super::entry::{Entry, EntryKind};
use super::found::Found;
use super::index::{ALIAS, Field, Indexed, IndexedTable, NAME, ROWS, index, stems};
use crate::handbook::{Figure, Table};
use crate::tsv;
use crate::words::words;

/// What a likeness is worth: the beginning of a word, the first synonym, each one after it.
const BEGINS: f64 = 0.6;
const SYNONYM: f64 = 0.85;
const NEXT: f64 = 0.85;
/// How much more a field is worth that is the reading and no more.
const WHOLE: f64 = 2.0;
/// What a name is worth that is all that was asked.
const EXACT: f64 = 30.0;

/// Words that say nothing of what is looked for.
const EMPTY: &[&str] = &[
    "a", "an", "and", "are", "as", "by", "do", "does", "find", "for", "from", "how", "i", "is",
    "it", "many", "much", "my", "of", "on", "or", "the", "to", "what", "which", "with",
];

/// One of the readings of what was typed: words that must all be found, or a sign as it stands.
struct Reading {
    whole: String,
    stems: Vec<String>,
    worth: f64,
}

impl Reading {
    fn new(text: &str, worth: f64) -> Reading {
        Reading { whole: text.to_lowercase(), stems: stems(text), worth }
    }
    /// How well the fields have it; none where they do not.
    fn score(&self, fields: &[Field]) -> Option<f64> {
        let names = fields.iter().filter(|f| f.whole == self.whole).map(|f| f.worth * WHOLE);
        let as_it_stands = names.reduce(f64::max);
        let words = self.stems.iter();
        let best = |wanted: &String| {
            fields.iter().filter_map(|field| in_field(field, wanted)).reduce(f64::max)
        };
        let sum: Option<f64> = words.map(best).sum();
        let number = self.stems.len();
        let each = sum.filter(|_| number > 0).map(|sum| sum / number as f64);
        match (as_it_stands, each) {
            (None, None) => None,
            (a, b) => Some(self.worth * a.unwrap_or(0.0).max(b.unwrap_or(0.0))),
        }
    }
}

/// How well a field has a word.
fn in_field(field: &Field, wanted: &str) -> Option<f64> {
    let long = wanted.chars().count() >= 4;
    let likeness = |known: &String| match known {
        same if same == wanted => Some(1.0),
        longer if long && longer.starts_with(wanted) => Some(BEGINS),
        _ => None,
    };
    // A short field that has the word is more about it than a long one.
    let short = 1.0 + 0.3 / field.stems.len().max(1) as f64;
    field.stems.iter().filter_map(likeness).reduce(f64::max).map(|x| x * field.worth * short)
}

/// What is looked for: a word or a phrase, in every reading that it has.
struct Term {
    typed: String,
    readings: Vec<Reading>,
}

impl Term {
    fn score(&self, fields: &[Field]) -> Option<f64> {
        self.readings.iter().filter_map(|reading| reading.score(fields)).reduce(f64::max)
    }
}

/// A phrase, its words without endings, and what is looked for beside it.
type Phrase = (&'static str, Vec<String>, Vec<&'static str>);

static PHRASES: LazyLock<Vec<Phrase>> = LazyLock::new(|| {
    let all = tsv::rows(include_str!("synonyms.tsv")).skip(1);
    let row = |row: Vec<&'static str>| {
        let phrase = tsv::field(&row, 0);
        (phrase, stems(phrase), tsv::field(&row, 1).split(" | ").collect())
    };
    all.map(row).collect()
});

/// Takes what was typed apart: phrases that have a synonym stay together.
fn terms(text: &str) -> Vec<Term> {
    let lower = text.to_lowercase();
    let typed: Vec<&str> =
        lower.split([' ', '\t', '\n', '_', ',', ';', '?']).filter(|w| !w.is_empty()).collect();
    let mut all = Vec::new();
    let mut at = 0;
    while at < typed.len() {
        let longest = (1..=4.min(typed.len() - at)).rev().find_map(|length| {
            let phrase = typed[at..at + length].join(" ");
            let wanted = stems(&phrase);
            let found = PHRASES.iter().filter(|(words, stems, _)| {
                *words == phrase || !wanted.is_empty() && *stems == wanted
            });
            let others: Vec<&str> = found.flat_map(|(_, _, others)| others).copied().collect();
            (!others.is_empty()).then_some((length, phrase, others))
        });
        let (length, phrase, others) = longest.unwrap_or((1, typed[at].to_owned(), Vec::new()));
        let mut readings = vec![Reading::new(&phrase, 1.0)];
        let mut worth = SYNONYM;
        for other in others {
            readings.push(Reading::new(other, worth));
            worth *= NEXT;
        }
        all.push(Term { typed: phrase, readings });
        at += length;
    }
    let telling = |term: &Term| !EMPTY.contains(&term.typed.as_str());
    if all.iter().any(telling) {
        all.retain(telling);
    }
    all
}

/// How well an entry has all that is looked for.
fn score(fields: &[Field], terms: &[Term], asked: &str) -> Option<f64> {
    let spaced = |text: &str| text.replace(['_', '-'], " ");
    let exact = |field: &&Field| field.whole == asked || spaced(&field.whole) == spaced(asked);
    let own = fields.iter().filter(|field| field.worth >= ALIAS).find(exact);
    let sum: Option<f64> = terms.iter().map(|term| term.score(fields)).sum();
    // A name with signs in it, such as dents/10 cm, is more than its words.
    let mean = match (sum, own) {
        (Some(sum), _) => sum / terms.len() as f64,
        (None, Some(_)) => 0.0,
        (None, None) => return None,
    };
    // A name that says little else is more likely meant.
    let named = fields[0].stems.iter().filter(|known| {
        let has = |reading: &Reading| reading.stems.contains(known);
        terms.iter().any(|term| term.readings.iter().any(has))
    });
    let share = named.count() as f64 / fields[0].stems.len().max(1) as f64;
    Some(mean + own.map_or(0.0, |field| EXACT * field.worth / NAME) + 2.0 * share)
}

/// The rows of a table that have a word which the table's name and title do not have.
fn rows(indexed: &IndexedTable, terms: &[Term]) -> Option<(f64, Vec<&'static Figure>)> {
    let in_head: Vec<Option<f64>> = terms.iter().map(|term| term.score(&indexed.head)).collect();
    if in_head.iter().all(Option::is_some) {
        return None;
    }
    let mut best = 0.0_f64;
    let mut found = Vec::new();
    for (figure, fields) in &indexed.rows {
        let each = terms.iter().zip(&in_head).map(|(term, head)| term.score(fields).or(*head));
        if let Some(sum) = each.sum::<Option<f64>>() {
            best = best.max(sum / terms.len() as f64);
            found.push(*figure);
        }
    }
    (!found.is_empty()).then_some((best, found))
}

/// The words of a term that lead to the same rows at the command line.
fn row_words(table: &Table, figures: &[&Figure], typed: &str) -> String {
    let all = |words: &str| {
        table.find(words).filter(|f| figures.iter().any(|g| std::ptr::eq(*g, *f))).count()
            == figures.len()
    };
    if all(typed) {
        return typed.to_owned();
    }
    // A table has no synonyms of its own: those of its first row lead to it.
    figures[0].of.iter().flat_map(|word| words(word)).collect::<Vec<_>>().join(" ")
}

/// Of a longer text than this nothing is found.
const MOST: usize = 300;

/// What has the words, the best first. Words may be in any order and are found in the singular and the
/// plural; names count for more than descriptions. Without words all there is, kind by kind.
///
/// ```
/// use hankwise::catalogue::{EntryKind, find};
///
/// let found = find("turns per inch", None);
/// assert_eq!(found.hits()[0].name(), "tpi");
/// let tables = find("twist", Some(EntryKind::Table));
/// assert_eq!(tables.hits()[0].command(), "hankwise find twist_multipliers");
/// ```
pub fn find(words: &str, kind: Option<EntryKind>) -> Found {
    let (words, index) = (words.trim(), index());
    if words.len() > MOST {
        return Found::new(words, kind, Vec::new(), None);
    }
    let of_kind = |(entry, _): &&Indexed| kind.is_none_or(|kind| entry.kind() == kind);
    let entries = || index.iter().filter(of_kind);
    let terms = terms(words);
    if terms.is_empty() {
        let hits = entries().map(|(entry, _)| entry.clone()).collect();
        return Found::new(words, kind, hits, None);
    }
    let asked = words.to_lowercase();
    let mut scored: Vec<(f64, Entry)> = entries()
        .filter_map(|(entry, fields)| Some((score(fields, &terms, &asked)?, entry.clone())))
        .collect();
    if kind.is_none_or(|kind| kind == EntryKind::Row) {
        let typed: Vec<&str> = terms.iter().map(|term| term.typed.as_str()).collect();
        let typed = typed.join(" ");
        for indexed in ROWS.iter() {
            if let Some((worth, figures)) = rows(indexed, &terms) {
                let words = row_words(indexed.table, &figures, &typed);
                scored.push((worth, Entry::Rows(indexed.table, figures, words)));
            }
        }
    }
    scored.sort_by(|(x, a), (y, b)| {
        let by_score = y.total_cmp(x);
        by_score.then(a.kind().cmp(&b.kind())).then(a.name().cmp(b.name()))
    });
    let hits: Vec<Entry> = scored.into_iter().map(|(_, entry)| entry).collect();
    let near = if hits.is_empty() { near(&terms, kind, &index) } else { None };
    Found::new(words, kind, hits, near)
}

/// The words with those that nothing has put right; none where nothing is near.
fn near(terms: &[Term], kind: Option<EntryKind>, index: &[Indexed]) -> Option<String> {
    let of_kind = |(entry, _): &&Indexed| kind.is_none_or(|kind| entry.kind() == kind);
    let entries: Vec<&Indexed> = index.iter().filter(of_kind).collect();
    let mut put_right = Vec::new();
    let mut changed = false;
    for term in terms {
        if entries.iter().any(|(_, fields)| term.score(fields).is_some()) {
            put_right.push(term.typed.clone());
            continue;
        }
        let names = entries.iter().flat_map(|(entry, _)| {
            let names = std::iter::once(entry.name()).chain(entry.other_names().iter().copied());
            names.flat_map(words).chain(words(&entry.summary()))
        });
        let others = PHRASES.iter().map(|(phrase, ..)| (*phrase).to_owned());
        let candidates = names.chain(others.filter(|_| kind.is_none()));
        put_right.push(nearest(&term.typed, candidates)?);
        changed = true;
    }
    let put_right = put_right.join(" ");
    // Words that are known may still not be found together.
    let found = changed && !find(&put_right, kind).hits().is_empty();
    found.then_some(put_right)
}

/// The nearest of the known words: one slip in a short word, two in a long one.
fn nearest(typed: &str, known: impl Iterator<Item = String>) -> Option<String> {
    let long = typed.chars().count();
    let slips = match long {
        0..=3 => return None,
        4..=6 => 1,
        _ => 2,
    };
    known
        .filter(|word| word.chars().count() >= 4)
        .map(|word| (strsim::osa_distance(typed, &word), word))
        .filter(|(distance, _)| *distance <= slips)
        .min()
        .map(|(_, word)| word)
}
