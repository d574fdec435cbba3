//! What can do harm where a figure is acted on: the usual cautions, each written once.
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

use crate::quantity::print::escape;

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
    /// Name and text, with the places that it is for, where they are told.
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

/// What stands above cautions: what they are, and who decides.
pub const HEAD: &str = "What can do harm here. These are reminders and set nothing: the makers of \
    machines and products, local rules and licensed practice come first.";

const fn c(name: &'static str, text: &'static str, sources: &'static [&'static str]) -> Caution {
    Caution { name, text, sources }
}

/// Every caution.
pub static CAUTIONS: &[Caution] = &[
    c(
        "raw fleece",
        "Raw wool and hair can carry anthrax, whose spores live for years, and Q fever, which \
         spreads by dust: the dust is kept down, cuts are covered, and a doctor who is asked about \
         a fever or a black sore is told of the wool.",
        &["HSE EH23", "WorkSafe Victoria"],
    ),
    c(
        "scouring",
        "Hot alkaline liquor burns skin and eyes, and spoils wool the more the hotter it is: sources \
         stay at or below 60 °C with alkali, and not long above pH 10. Rollers of a scouring machine \
         draw hands in.",
        &["Organic dye", "Beech 1902", "ILO wool"],
    ),
    c(
        "hot liquor",
        "Hot liquor and wet goods scald, and effluent is under local rules.",
        &["practice"],
    ),
    c(
        "steam",
        "Steam scalds, and a vessel under vacuum or pressure is for those licensed to run it.",
        &["practice"],
    ),
    c(
        "machines",
        "Feed rollers, licker-in, the nip of swift and doffer, teaser teeth and fan blades draw hands \
         in, and run on after the power is off: guards stay on, and nobody reaches in before all of \
         it stands still.",
        &["ILO wool"],
    ),
    c(
        "wheels",
        "Wheels, belts and spindles catch fingers, hair and clothes: a wheel is changed and a wrap \
         cleared only with the machine stopped and locked off; guards stay on while it turns.",
        &["practice"],
    ),
    c(
        "mule",
        "The carriage traps between itself and the headstock: nobody stands in its way while it can \
         run.",
        &["ILO wool"],
    ),
    c(
        "loom",
        "A flying shuttle injures, and so does the beat-up: shuttle guards stay on, and the loom \
         stands before anyone reaches in.",
        &["ILO wool"],
    ),
    c(
        "dust",
        "Wool dust is bad for the lungs, and can burn: the extraction runs, and a mask is worn where \
         the local rules ask for it.",
        &["practice"],
    ),
    c(
        "oil",
        "Oily wool and oily waste can heat and catch fire by themselves: they are stored as the maker \
         of the oil says.",
        &["practice"],
    ),
    c(
        "dyeing",
        "Dyes, acids and salts can burn, poison or sensitise: the maker's safety data sheet is read \
         first, powders are weighed without dust, and the bath goes where local rules let it.",
        &["practice"],
    ),
];

/// The cautions with the names, each once, in the order of [`CAUTIONS`].
pub fn of<'n>(names: &'n [&'n str]) -> impl Iterator<Item = &'static Caution> {
    CAUTIONS.iter().filter(|caution| names.contains(&caution.name))
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
