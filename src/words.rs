//! Words of a text, and whether what somebody looks for is among them.

#[cfg(feature = "plan-file")]
use std::borrow::Cow;

/// A text on one line, as it was written: signs that a terminal obeys instead of showing them, and
/// those that turn the order of others round, are shown as escapes.
#[cfg(feature = "plan-file")]
pub(crate) fn one_line(text: &str) -> Cow<'_, str> {
    let obeyed =
        |c: char| c.is_control() || matches!(c, '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    if !text.contains(obeyed) {
        return Cow::Borrowed(text);
    }
    let mut out = String::new();
    for c in text.chars() {
        if obeyed(c) {
            out.extend(c.escape_default());
        } else {
            out.push(c);
        }
    }
    Cow::Owned(out)
}

/// The words of a text, in small letters.
pub(crate) fn words(text: &str) -> Vec<String> {
    let parts = text.split(|c: char| !c.is_alphanumeric());
    parts.filter(|part| !part.is_empty()).map(str::to_lowercase).collect()
}

/// True where every word looked for begins a word of the texts: `twist` finds twisted, `reed` does
/// not find agreed.
pub(crate) fn has_words<'t>(texts: impl IntoIterator<Item = &'t str>, wanted: &str) -> bool {
    let known: Vec<String> = texts.into_iter().flat_map(words).collect();
    words(wanted).iter().all(|word| known.iter().any(|k| k.starts_with(word.as_str())))
}

/// How wide texts are on a terminal.
pub(crate) const WIDE: usize = 80;

/// A text broken between words at [`WIDE`], with what is before its first line and before those
/// that follow.
pub(crate) fn wrapped(text: &str, first: &str, next: &str) -> String {
    let mut out = first.to_owned();
    let (mut wide, mut empty) = (first.chars().count(), true);
    for word in text.split_whitespace() {
        let long = word.chars().count();
        if !empty && wide + 1 + long > WIDE {
            out.truncate(out.trim_end().len());
            out.push('\n');
            out.push_str(next);
            (wide, empty) = (next.chars().count(), true);
        }
        if !empty {
            out.push(' ');
            wide += 1;
        }
        out.push_str(word);
        wide += long;
        empty = false;
    }
    out.push('\n');
    out
}
