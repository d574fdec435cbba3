//! A new lot file.

use std::fmt::Write as _;

use super::goods::goods;
use super::{HANDBOOK, LOT_QUESTIONS, Words, handbook_mill, text, wool};
use crate::error::{Error, Result};
use crate::plan::{Plan, Run, Source};
use crate::quantity::Kind;

/// The text of a new lot file, from words such as `("greasy", "35 kg")`: [`super::LOT_QUESTIONS`] has them
/// all. `mill` is the mill file that it names, or `handbook` for the mill of the handbook. What is not given
/// is the handbook's, and says so.
///
/// ```
/// use hankwise::plan::{Plan, new_lot};
///
/// let lot = new_lot(&[("greasy", "35 kg"), ("breed", "Romney"), ("goods", "throw:5")], "handbook")?;
/// assert_eq!(Plan::parse(&lot, "new.toml")?.promise(), [("throw", Some(5))]);
/// # Ok::<(), hankwise::Error>(())
/// ```
///
/// # Errors
/// Where a word is unknown, its value is not one, or the lot cannot be planned in the mill of the handbook.
pub fn new_lot(words: &[(&str, &str)], mill: &str) -> Result<String> {
    let words = Words::new(words, LOT_QUESTIONS)?;
    let goods = goods(words.get("goods").unwrap_or("hank"))?;
    let mut lot = String::from(
        "# A lot. Change what you know better. \"handbook\" takes the middle of the usual range, and the\n\
         # whole range as its doubt. docs/lot-file.md explains every key.\n\n",
    );
    let _ = writeln!(lot, "mill = {}", text(mill));
    if mill == HANDBOOK {
        lot.push_str("# For a mill of your own: hankwise new mill --out mill.toml, then mill = \"mill.toml\".\n");
    }
    let breed = words.get("breed").map(|breed| format!("{breed} lot"));
    let name = words.get("name").map(str::to_owned).or(breed);
    let _ = writeln!(lot, "\n[lot]\nname = {}", text(name.as_deref().unwrap_or("New lot")));
    if let Some(breed) = words.get("breed") {
        let _ = writeln!(lot, "description = {}", text(breed));
    }
    if let Some(owner) = words.get("owner") {
        let _ = writeln!(lot, "owner = {}", text(owner));
    }
    if let Some(day) = words.get("by") {
        let date = day.parse::<toml_edit::Datetime>().ok().and_then(|day| day.date);
        let date = date.ok_or_else(|| {
            Error::notation(format!("by: write a date such as 2026-09-01, not '{day}'"))
        })?;
        let _ = writeln!(lot, "due = {date}");
    }
    match words.quantity("greasy", Kind::Mass)? {
        Some(greasy) => {
            let _ = writeln!(lot, "greasy = {greasy}");
        }
        None => lot.push_str("greasy = \"50 kg\"      # not known: weigh it\n"),
    }
    lot.push_str(&wool::clean(&words)?);
    lot.push_str(&wool::diameter(&words)?);
    lot.push_str("\n[yarn]\n");
    match words.quantity("count", Kind::LinearDensity)? {
        Some(count) => {
            let _ = writeln!(lot, "count = {count}       # as on the label");
        }
        None => lot.push_str("count = \"330 m/100g\"  # as on the label; usual, from memory\n"),
    }
    lot.push_str(
        "ends = 2\ntwist_factor = \"25 turns/cm √tex\"   # of the singles; usual, from memory\n",
    );
    if goods.kinds.len() > 1 {
        // Loom and hank ask for different routes; one yarn goes one way.
        let route = if goods.kinds.contains(&"hank") { "hank" } else { goods.kinds[0] };
        let _ =
            writeln!(lot, "route = \"{route}\"        # its goods usually go by different routes");
    }
    lot.push_str("\n# Goods are served in this order.\n");
    lot.push_str(goods.text.trim_start());
    let source = Source { name: "new lot".to_owned(), text: lot.clone() };
    Plan::from_sources(source, Some(handbook_mill()?), "")?.run(&Run::planned())?;
    Ok(lot)
}
