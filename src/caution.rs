//! What can do harm where a value is acted on: the usual cautions, each written once.
//!
//! A formula or a stage names its cautions; text, card and page show them in a place of their own,
//! under [`HEAD`], so that nobody takes one for a setting.
//!
//! ```
//! use hankwise::{catalogue, caution};
//!
//! let sorted = catalogue::formula("sorted_mass")?;
//! let names: Vec<&str> = caution::of(sorted.cautions).map(|c| c.name).collect();
//! assert_eq!(names, ["raw fleece", "dust"]);
//! # Ok::<(), hankwise::Error>(())
//! ```

use std::fmt::Write as _;

use crate::quantity::print::escape;
use crate::words::wrapped;

/// A caution.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Caution {
    /// Its name: what is dangerous.
    pub name: &'static str,
    /// What can happen, and what is usually done about it.
    pub text: &'static str,
    /// Keys of the sources, see [`crate::source`].
    pub sources: &'static [&'static str],
}

impl Caution {
    /// Name and text, with the places that it is for, where they are given.
    pub fn line(&self, places: &[&str]) -> String {
        // As a sentence begins.
        let mut letters = self.name.chars();
        let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
        let places = match places {
            [] => String::new(),
            some => format!(" ({})", some.join(", ")),
        };
        format!("{first}{}{places}: {}", letters.as_str(), self.text)
    }
}

/// What is above cautions: what they are, and who decides.
pub const HEAD: &str = "Hazards here. Reminders only: follow the maker, local rules and licensed \
    practice.";

const fn c(name: &'static str, text: &'static str, sources: &'static [&'static str]) -> Caution {
    Caution { name, text, sources }
}

/// Every caution.
pub static CAUTIONS: &[Caution] = &[
    c(
        "raw fleece",
        "Raw wool and hair can carry anthrax, whose spores live for years, and Q fever, which \
         spreads by dust. Keep dust down and cover cuts. If you get a fever or a black sore, see a \
         doctor and say that you handle raw wool.",
        &["HSE EH23", "WorkSafe Victoria"],
    ),
    c(
        "scouring",
        "Hot alkaline liquor burns skin and eyes, and damages wool the more the hotter it is. Stay at \
         or below 60 °C with alkali, and not long above pH 10. Rollers of a scouring machine draw \
         hands in: keep clear of them.",
        &["Organic dye", "Beech 1902", "ILO wool"],
    ),
    c(
        "hot liquor",
        "Hot liquor and wet goods scald: keep clear of them. Follow the local rules for effluent.",
        &["practice"],
    ),
    c(
        "steam",
        "Steam scalds: keep clear of it. Leave a vessel under vacuum or pressure to those licensed to \
         run it.",
        &["practice"],
    ),
    c(
        "dryer",
        "A dryer burns skin, and lint in it catches fire; oily goods can heat by themselves when they \
         are stacked hot. Clear out the lint, let goods cool before stacking them, and keep guards on \
         fans and rollers.",
        &["practice"],
    ),
    c(
        "machines",
        "Feed rollers, licker-in, the nip of swift and doffer, teaser teeth and fan blades draw hands \
         in, and run on after the power is off. Keep guards on. Stop, lock off and wait for \
         everything to stop before reaching in.",
        &["ILO wool"],
    ),
    c(
        "wheels",
        "Wheels, belts and spindles catch fingers, hair and clothes. Keep guards on while they turn. \
         Stop and lock off the machine before changing a wheel or clearing a wrap.",
        &["practice"],
    ),
    c(
        "mule",
        "The carriage traps people against the headstock. Do not stand in its way while it can run.",
        &["ILO wool"],
    ),
    c(
        "loom",
        "A flying shuttle injures, and so does the beat-up. Stop the loom before reaching in. Keep \
         shuttle guards on. Protect your hearing.",
        &["ILO wool"],
    ),
    c(
        "dust",
        "Wool dust harms the lungs, and can burn. Keep the extraction running, and wear a mask where \
         the local rules ask for it.",
        &["practice"],
    ),
    c(
        "oil",
        "Oily wool and oily waste can heat and catch fire by themselves. Store them as the maker of \
         the oil says.",
        &["practice"],
    ),
    c(
        "dyeing",
        "Dyes, acids and salts can burn, poison or sensitise. Read the maker's safety data sheet \
         first, weigh powders without raising dust, and empty the bath only where local rules allow.",
        &["practice"],
    ),
];

/// The cautions with the names, each once, in the order of [`CAUTIONS`].
pub fn of<'n>(names: &'n [&'n str]) -> impl Iterator<Item = &'static Caution> {
    CAUTIONS.iter().filter(|caution| names.contains(&caution.name))
}

/// The cautions of a description, under the head that says who decides; nothing for none.
pub fn described(names: &[&str]) -> String {
    let mut out = String::new();
    for caution in of(names) {
        if out.is_empty() {
            let _ = write!(out, "\n{}", wrapped(HEAD, "Cautions: ", "    "));
        }
        out.push_str(&wrapped(&caution.line(&[]), "    ! ", "      "));
    }
    out
}

/// Lines of cautions in a box of their own, as HTML; nothing for none.
pub fn boxed(lines: &[String]) -> String {
    if lines.is_empty() {
        return String::new();
    }
    let lines: Vec<String> = lines.iter().map(|line| escape(line)).collect();
    format!(
        "<aside role=\"note\" class=\"hankwise-caution\" style=\"border:2px solid;padding:0 0.8em;\
         margin:0.6em 0\"><p>{}</p></aside>",
        lines.join("</p><p>")
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_that_is_used_is_written_here() {
        let known = |name: &str| CAUTIONS.iter().any(|c| c.name == name);
        for formula in crate::catalogue::formulas() {
            for name in formula.cautions {
                assert!(known(name), "{}: there is no caution '{name}'", formula.name);
            }
        }
        for caution in CAUTIONS {
            for key in caution.sources {
                assert!(crate::source::source(key).is_some(), "{}: {key}", caution.name);
            }
        }
    }
}
