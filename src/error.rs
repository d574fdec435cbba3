//! The one error type of the crate.

use std::fmt;

/// What kind of thing went wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ErrorKind {
    /// A unit is missing, unknown, ambiguous or of the wrong kind.
    Unit,
    /// A text could not be read as what it should be.
    Notation,
    /// A value is impossible.
    Range,
    /// A plan or its lot file is wrong.
    Plan,
    /// A call omits an input that is needed, names one that there is not, or gives one twice.
    Call,
}

/// Says what was given, what was wanted, where, and what to write instead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Error {
    kind: ErrorKind,
    message: String,
}

/// A result of this crate.
pub type Result<T> = std::result::Result<T, Error>;

impl Error {
    /// A missing, unknown, ambiguous or wrong unit.
    pub fn unit(message: impl Into<String>) -> Self {
        Error { kind: ErrorKind::Unit, message: message.into() }
    }
    /// A text that cannot be read.
    pub fn notation(message: impl Into<String>) -> Self {
        Error { kind: ErrorKind::Notation, message: message.into() }
    }
    /// An impossible figure.
    pub fn range(message: impl Into<String>) -> Self {
        Error { kind: ErrorKind::Range, message: message.into() }
    }
    /// A wrong plan or lot file.
    pub fn plan(message: impl Into<String>) -> Self {
        Error { kind: ErrorKind::Plan, message: message.into() }
    }
    /// An input that is needed and was not given: its name, what it is, how one would write it.
    pub fn missing(name: &str, meaning: &str, example: &str) -> Self {
        Error::call(format!("{name} ({meaning}) is missing; write {name}={example}"))
    }
    /// An input that nobody asks for; `of` is what was called, `known` what it asks.
    pub fn no_input(of: &str, name: &str, known: &[&str]) -> Self {
        let near = or_near(name, known);
        Error::call(format!("{of} has no input '{name}'{near} Its inputs: {}", known.join(", ")))
    }
    /// An input that was given twice.
    pub fn twice(name: &str) -> Self {
        Error::call(format!("{name} was given twice; omit one"))
    }
    /// A wrong call.
    pub fn call(message: impl Into<String>) -> Self {
        Error { kind: ErrorKind::Call, message: message.into() }
    }
    /// A name that is none of those known.
    pub fn no_such(name: &str, known: &[&str]) -> Self {
        let near = did_you_mean(name, known.iter().copied())
            .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
        Error::notation(format!("unknown name '{name}'{near}; known: {}", known.join(", ")))
    }
    /// What kind of thing went wrong.
    pub fn kind(&self) -> ErrorKind {
        self.kind
    }
    /// The same error with the place put in front, such as `lot.toml:12: scour.loss: …`.
    pub fn at(self, place: impl fmt::Display) -> Self {
        Error { kind: self.kind, message: format!("{place}: {}", self.message) }
    }
    /// The same error with a message that can be read: of a longer one the middle is omitted, where what
    /// was given stands; the place is at its beginning and what to write at its end.
    pub(crate) fn readable(self) -> Self {
        let letters: Vec<char> = self.message.chars().collect();
        if letters.len() <= LONGEST {
            return self;
        }
        let text = |part: &[char]| part.iter().collect::<String>();
        let from = LONGEST - LONGEST / 3 - 3;
        let message = format!(
            "{} … {}",
            text(&letters[..from]),
            text(&letters[letters.len() - LONGEST / 3..])
        );
        Error { kind: self.kind, message }
    }
    /// [`Error::readable`], line by line: each is a message of its own.
    pub(crate) fn readable_lines(self) -> Self {
        let lines = self
            .message
            .lines()
            .map(|line| Error { kind: self.kind, message: line.to_owned() }.readable().message);
        let message = lines.collect::<Vec<_>>().join("\n");
        Error { kind: self.kind, message }
    }
}

/// The most characters of a message about a file.
const LONGEST: usize = 500;

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Error {}

/// Why a file cannot be read, without the numbers of the system.
pub(crate) fn unreadable(error: &std::io::Error) -> String {
    match error.kind() {
        std::io::ErrorKind::NotFound => "no such file".to_owned(),
        std::io::ErrorKind::IsADirectory => "cannot be read: it is a folder".to_owned(),
        std::io::ErrorKind::PermissionDenied => "cannot be read: permission denied".to_owned(),
        std::io::ErrorKind::InvalidData => {
            "cannot be read: it is not UTF-8; save it as UTF-8, from a spreadsheet as CSV UTF-8"
                .to_owned()
        }
        _ => format!("cannot be read: {error}"),
    }
}

/// The end of a sentence that names a word that is not known: the nearest of the known ones, if any is near.
pub(crate) fn or_near(word: &str, known: &[&str]) -> String {
    did_you_mean(word, known.iter().copied())
        .map_or_else(|| ".".to_owned(), |near| format!("; did you mean '{near}'?"))
}

/// The nearest of the known words to one that is not known, quoted for a message.
pub(crate) fn did_you_mean<'a>(
    word: &str,
    known: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    // What is longer than any name is a slip of another kind.
    const LONGEST: usize = 60;
    if word.len() > LONGEST {
        return None;
    }
    let word = word.to_lowercase();
    known
        .into_iter()
        .map(|k| {
            let k_low = k.to_lowercase();
            // One slip in three letters at most, or the beginning of a name; two letters that changed
            // places, as in YWS, are one slip.
            let letters = k_low.chars().count().max(word.chars().count());
            let slips = strsim::osa_distance(&k_low, &word);
            let begun = word.chars().count() > 3 && k_low.starts_with(&word);
            let near = begun || slips <= letters / 3;
            let likeness = strsim::jaro_winkler(&k_low, &word);
            (if near { likeness.max(0.81) } else { 0.0 }, k)
        })
        .filter(|(likeness, _)| *likeness > 0.8)
        // Of several as near the first: symbols come before other names.
        .reduce(|best, next| if next.0 > best.0 { next } else { best })
        .map(|(_, k)| k)
}
