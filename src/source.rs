//! What a statement rests on: the sources that formulas, tables and units cite, by key.
//!
//! They are in `sources.tsv`, one a line.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::tsv;

/// What a statement rests on, by what was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Basis {
    /// It follows from a definition; exact.
    Definition,
    /// A standard or a law.
    Standard,
    /// A book or a paper.
    Book,
    /// A page on the web, or what only such a page says of a work.
    Web,
    /// The custom of the trade, without a source.
    Custom,
    /// From memory, not checked against a source.
    Memory,
    /// The user's own definition, see [`crate::quantity::define`].
    Own,
}

impl Basis {
    /// Every basis, the firmest first.
    pub const ALL: [Basis; 7] = [
        Basis::Definition,
        Basis::Standard,
        Basis::Book,
        Basis::Web,
        Basis::Custom,
        Basis::Memory,
        Basis::Own,
    ];
    /// The basis in words, the same wherever it is shown.
    pub const fn words(self) -> &'static str {
        match self {
            Basis::Definition => "definition",
            Basis::Standard => "standard or law",
            Basis::Book => "book or paper",
            Basis::Web => "web page",
            Basis::Custom => "custom of the trade",
            Basis::Memory => "from memory, unchecked",
            Basis::Own => "your own",
        }
    }
}

/// A source.
#[derive(Debug)]
pub struct Source {
    /// The key by which it is cited.
    pub key: &'static str,
    /// What it is, and so what rests on it.
    pub basis: Basis,
    /// Author, title, year.
    pub title: &'static str,
    /// Where it was read, and how much of it.
    pub place: &'static str,
}

impl Source {
    /// Title and basis: `J. T. Taylor, Cotton Weaving and Designing, 6th ed., 1909 (book or paper)`; the
    /// basis alone where there is nothing else to name.
    pub fn words(&self) -> String {
        match self.basis {
            Basis::Definition => self.title.to_owned(),
            Basis::Custom | Basis::Memory if self.is_bare() => self.basis.words().to_owned(),
            Basis::Memory => format!("{} ({})", self.title, self.basis.words()),
            basis => {
                let unread = if self.is_read() { "" } else { "; the work itself was not read" };
                format!("{} ({}{unread})", self.title, basis.words())
            }
        }
    }
    /// False of a work that is known only from what a page or memory says of it.
    pub fn is_read(&self) -> bool {
        !self.place.starts_with("not read")
    }
    /// True of a key that names a basis and no source: `definition`, `practice`, `memory`.
    pub fn is_bare(&self) -> bool {
        [DEFINITION, PRACTICE, MEMORY].contains(&self.key)
    }
}

/// The key of what follows from a definition.
pub const DEFINITION: &str = "definition";
/// The key of the custom of the trade.
pub const PRACTICE: &str = "practice";
/// The key of what is from memory.
pub const MEMORY: &str = "memory";

/// The head of the data file.
const HEAD: [&str; 4] = ["key", "basis", "title", "place"];

static SOURCES: LazyLock<BTreeMap<&'static str, Source>> = LazyLock::new(|| {
    let mut rows = tsv::rows(include_str!("sources.tsv"));
    assert_eq!(rows.next().as_deref(), Some(HEAD.as_slice()), "the head of sources.tsv");
    let mut all = BTreeMap::new();
    for row in rows {
        let [key, basis, title, place] = [0, 1, 2, 3].map(|at| tsv::field(&row, at));
        let basis = Basis::ALL.into_iter().find(|b| b.words() == basis);
        let basis = basis.unwrap_or_else(|| panic!("sources.tsv: {key} has no basis"));
        let before = all.insert(key, Source { key, basis, title, place });
        assert!(before.is_none(), "sources.tsv: {key} stands twice");
    }
    all
});

/// The source with a key.
pub fn source(key: &str) -> Option<&'static Source> {
    SOURCES.get(key)
}

/// Every source that is cited, in the order of keys.
pub fn sources() -> impl ExactSizeIterator<Item = &'static Source> {
    SOURCES.values()
}

/// What rests on a source: its basis. What is cited under no key here is the user's own.
pub fn basis(key: &str) -> Basis {
    source(key).map_or(Basis::Own, |source| source.basis)
}

/// The basis of what a source says, with the source where it is one: `web page, All Fiber Arts`.
pub fn cited(key: &str) -> String {
    match source(key) {
        Some(source) if !source.is_bare() => format!("{}, {key}", source.basis.words()),
        _ => basis(key).words().to_owned(),
    }
}

/// Sources by title, each with its basis, after one another.
pub fn titles(keys: &[&'static str]) -> String {
    let words = |key: &&'static str| source(key).map_or_else(|| (*key).to_owned(), Source::words);
    keys.iter().map(words).collect::<Vec<_>>().join("; ")
}
