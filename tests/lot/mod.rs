//! Changing a lot file value by value, for the tests that plan lots.
#![allow(dead_code)] // each test file uses its own part

/// The first lot, as it stands in the examples.
pub(crate) const LOT: &str = include_str!("whole-lot.toml");

/// The lot with every uncertain value replaced by its likely one.
pub(crate) fn known() -> String {
    let line = |line: &str| {
        let Some((key, rest)) = line.split_once(" = {").filter(|_| !line.starts_with('#')) else {
            return line.to_owned();
        };
        let likely = rest.split_once("likely = ").unwrap().1;
        format!("{key} = {}", likely.split_once(',').unwrap().0)
    };
    LOT.lines().map(|l| line(l) + "\n").collect()
}

/// Lines of a section: from its heading (`[card]`, or nothing for the head of the file) to the next.
fn section(text: &str, name: &str) -> std::ops::Range<usize> {
    let start = text.find(&format!("\n[{name}]")).unwrap_or_else(|| panic!("no [{name}]")) + 1;
    let end = text[start..].find("\n[").map_or(text.len(), |at| start + at + 1);
    start..end
}

/// The text with a key of a section set to a value as TOML has it; written anew where it is missing.
pub(crate) fn set(text: &str, name: &str, key: &str, value: &str) -> String {
    let range = section(text, name);
    let mut found = false;
    let mut lines: Vec<String> = text[range.clone()]
        .lines()
        .map(|line| {
            if line.split_once('=').is_some_and(|(k, _)| k.trim() == key) {
                found = true;
                format!("{key} = {value}")
            } else {
                line.to_owned()
            }
        })
        .collect();
    if !found {
        lines.insert(1, format!("{key} = {value}"));
    }
    format!("{}{}\n{}", &text[..range.start], lines.join("\n"), &text[range.end..])
}

/// The text without a key of a section.
pub(crate) fn unset(text: &str, name: &str, key: &str) -> String {
    let range = section(text, name);
    let keep = |line: &&str| line.split_once('=').is_none_or(|(k, _)| k.trim() != key);
    let lines: Vec<&str> = text[range.clone()].lines().filter(keep).collect();
    format!("{}{}\n{}", &text[..range.start], lines.join("\n"), &text[range.end..])
}

/// The text without a section.
pub(crate) fn without(text: &str, name: &str) -> String {
    let range = section(text, name);
    format!("{}{}", &text[..range.start], &text[range.end..])
}

/// The line on which a text is first, counted from 1.
pub(crate) fn line_of(text: &str, part: &str) -> usize {
    let at = text.find(part).unwrap_or_else(|| panic!("no '{part}'"));
    text[..at].matches('\n').count() + 1
}
