//! A new mill file.

use super::super::guide::tables;
use super::{MILL_QUESTIONS, Words, quantity};
use crate::calculation::{Item, flat};
use crate::error::{Error, Result};
use crate::quantity::Kind;

/// The file, with lines `?word: key = value` that hold where the word is given.
const TEMPLATE: &str = include_str!("mill.toml");

/// The text of a new mill file, from words such as `("spindles", "120")`: [`super::MILL_QUESTIONS`] has
/// them all. What is not given is the handbook's, and says so.
///
/// ```
/// use hankwise::plan::new_mill;
///
/// let mill = new_mill(&[("reel", "1.37 m")])?;
/// assert!(mill.contains("reel_circumference = \"1.37 m\""));
/// assert!(mill.contains("loss = \"handbook\""));
/// # Ok::<(), hankwise::Error>(())
/// ```
///
/// # Errors
/// Where a word is unknown, or its value is not one.
pub fn new_mill(words: &[(&str, &str)]) -> Result<String> {
    let words = Words::new(words, MILL_QUESTIONS)?;
    let ring = match words.get("spinning") {
        None | Some("mule") => false,
        Some("ring") => true,
        Some(other) => {
            return Err(Error::notation(format!("spinning: write mule or ring, not '{other}'")));
        }
    };
    if ring && words.get("spindles").is_some() {
        return Err(Error::notation(
            "spindles: these are the mule's, and a ring frame spins; omit them, and write the spindles into \
             [ring] of the file",
        ));
    }
    let reeds = words.get("reeds").map(|reeds| {
        let all: Result<Vec<String>> =
            reeds.split(',').map(|reed| quantity("reeds", reed.trim(), Kind::ReedCount)).collect();
        all.map(|all| format!("[{}]", all.join(", ")))
    });
    let given = [
        ("card.ends", words.whole("ends", 200)?),
        ("mule.spindles", words.whole("spindles", 5000)?),
        ("card.held_up", words.quantity("held_up", Kind::Mass)?),
        ("reel.reel_circumference", words.quantity("reel", Kind::Length)?),
        ("loom.loom_width", words.quantity("loom_width", Kind::Length)?),
        ("loom.reeds", reeds.transpose()?),
        ("label.regain", words.quantity("regain", Kind::Regain)?),
    ];
    let mut table = "";
    let mut text = String::new();
    for line in TEMPLATE.lines() {
        if let Some(name) = line.strip_prefix('[') {
            table = name.split(']').next().unwrap_or(name);
        }
        let line = match line.strip_prefix('?').and_then(|rest| rest.split_once(": ")) {
            Some((word, line)) if words.get(word).is_some() => line.to_owned(),
            Some((_, line)) => format!("# {line}"),
            None => line.to_owned(),
        };
        let line = if table == "route.yarn" && ring { line.replace("mule", "ring") } else { line };
        text.push_str(&written(table, &line, &given));
        text.push('\n');
    }
    Ok(text)
}

/// A line with the value that was given for it, or with the usual range beside what is the handbook's.
fn written(table: &str, line: &str, given: &[(&str, Option<String>)]) -> String {
    let Some((key, value)) = line.split_once(" = ") else { return line.to_owned() };
    let name = format!("{table}.{key}");
    if let Some((_, Some(given))) = given.iter().find(|(known, _)| *known == name) {
        return format!("{key} = {given}");
    }
    if value != "\"handbook\"" {
        return line.to_owned();
    }
    let usual = tables().into_iter().filter(|card| card.name == table).find_map(|card| {
        card.asks.iter().flat_map(|asks| flat(asks)).find_map(|item| match item {
            Item::One(input) if input.name == key => Some(input.usual_words()),
            _ => None,
        })
    });
    format!("{line}   # usually {}", usual.unwrap_or_default())
}
