//! What a breed and a feel say of the wool.

use super::Words;
use crate::error::{Error, Result, did_you_mean};
use crate::fibre::tables::{BREED_YIELDS, WOOL_GRADES_US};
use crate::handbook::Figure;
use crate::quantity::print::figure;
use crate::quantity::{Kind, parse_as};
use crate::source::cited;
use crate::words::wrapped;

/// The breeds whose wool is called Down (common practice).
const DOWN: [&str; 5] = ["Southdown", "Hampshire", "Oxford", "Shropshire", "Suffolk"];

/// What a word for the feel means, by the blood grades (common practice).
const FEELS: [(&str, &[&str]); 3] = [
    ("fine", &["fine"]),
    ("medium", &["½ blood", "⅜ blood", "¼ blood"]),
    ("coarse", &["low ¼ blood", "common"]),
];

/// Lowest and highest of some rows, and what they rest on.
fn over<'f>(rows: impl Iterator<Item = &'f Figure>) -> Option<(f64, f64, String)> {
    let mut found: Option<(f64, f64, Vec<String>)> = None;
    for row in rows {
        let (low, high, mut from) = found.unwrap_or((f64::INFINITY, f64::NEG_INFINITY, Vec::new()));
        let source = cited(row.source);
        if !from.contains(&source) {
            from.push(source);
        }
        // The finest grade has no lower end.
        let least = if row.low.is_finite() { row.low } else { row.high };
        found = Some((low.min(least), high.max(row.high), from));
    }
    found.map(|(low, high, from)| (low, high, from.join("; ")))
}

/// The line for a range of the handbook.
fn line(key: &str, low: f64, high: f64, unit: &str, why: &str) -> String {
    let say = |x: f64| format!("\"{} {unit}\"", figure(x));
    format!(
        "{key} = {{ low = {}, likely = {}, high = {}, from = \"handbook\" }}\n{}",
        say(low),
        say(f64::midpoint(low, high)),
        say(high),
        comment(key, why),
    )
}

/// What a line rests on.
fn comment(key: &str, why: &str) -> String {
    wrapped(&format!("{key}: {why}"), "# ", "#   ")
}

/// The breeds that a name means: itself, without "cross"; Down is several.
fn breeds(name: &str) -> Vec<&'static str> {
    let name = name.to_lowercase();
    let pure = name.replace("crossbred", "").replace("cross", "").replace('-', " ");
    let pure = pure.trim();
    if pure == "down" {
        return DOWN.to_vec();
    }
    let known = BREED_YIELDS.figures.iter().map(|row| row.of[0]);
    let mut found: Vec<&str> = known.filter(|breed| breed.to_lowercase() == pure).collect();
    found.dedup();
    found
}

/// Clean yields between which most breeds lie, in percent.
const MOST: (f64, f64) = (45.0, 65.0);

/// So much clean fibre leaves no room for the water and dirt of many simulated lots, in percent.
const FULL: f64 = 80.0;

/// The line of the clean yield.
pub(super) fn clean(words: &Words<'_>) -> Result<String> {
    let all = || BREED_YIELDS.figures.iter();
    let breed = words.get("breed");
    let breeds = breed.map(breeds).unwrap_or_default();
    if let Some(breed) = breed.filter(|_| breeds.is_empty())
        && let Some(near) = did_you_mean(breed, all().map(|row| row.of[0]))
    {
        let message = format!("breed: unknown '{breed}'; did you mean '{near}'?");
        return Err(Error::notation(message));
    }
    let rows = |row: &&Figure| match &breeds[..] {
        [] => row.low >= MOST.0 && row.high <= MOST.1,
        breeds => breeds.contains(&row.of[0]),
    };
    let Some((low, high, from)) = over(all().filter(rows)) else {
        return Ok("clean = \"55 %\"\n".to_owned());
    };
    let what = match breed {
        Some(_) if !breeds.is_empty() => breeds.join(", "),
        Some(_) => "the handbook lacks this breed; most others".to_owned(),
        None => "most breeds".to_owned(),
    };
    let cross = match breed {
        Some(breed) if breed.to_lowercase().contains("cross") => "; a cross may differ",
        _ => "",
    };
    let why = format!("{what} ({from}){cross}. Test-wash a sample");
    if high > FULL {
        let middle = figure(f64::midpoint(low, high));
        let comment = comment("clean", &format!("the middle of {why}"));
        return Ok(format!("clean = \"{middle} %\"\n{comment}"));
    }
    Ok(line("clean", low, high, "%", &why))
}

/// The line of the diameter.
pub(super) fn diameter(words: &Words<'_>) -> Result<String> {
    let Some(feel) = words.get("feel") else {
        return Ok("# diameter = \"29 µm\"   # not known; with it the plan says how fine a yarn the wool spins\n"
            .to_owned());
    };
    if let Some((_, bloods)) = FEELS.iter().find(|(word, _)| *word == feel) {
        let rows = WOOL_GRADES_US
            .figures
            .iter()
            .filter(|row| row.of[1] == "diameter" && bloods.contains(&row.of[2]));
        if let Some((low, high, from)) = over(rows) {
            let why = format!("{feel}, grades {} ({from})", bloods.join(", "));
            return Ok(line("diameter", low, high, "µm", &why));
        }
    }
    let amount = parse_as(feel, Kind::Fineness).map_err(|_| {
        Error::notation(format!(
            "feel: write fine, medium, coarse or a diameter such as 29µm, not '{feel}'"
        ))
    })?;
    if !(10.0..=60.0).contains(&amount.base()) {
        return Err(Error::range(format!(
            "feel: {feel} is no wool; write a diameter such as 29µm"
        )));
    }
    Ok(format!("diameter = {}\n", super::text(feel)))
}
