//! New files: a mill and a lot from a few words, what is not known taken from the handbook.

mod goods;
mod lot;
mod mill;
mod spoken;
mod wool;

pub use lot::new_lot;
pub use mill::new_mill;

use super::Source;
use crate::error::{Error, Result, or_near};
use crate::quantity::{Kind, parse_as};
use crate::words::one_line;

/// A question to whoever writes a new file, and the word that answers it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Question {
    /// The word, as in `greasy=35kg`.
    pub word: &'static str,
    /// What is asked.
    pub ask: &'static str,
    /// How one would answer.
    pub like: &'static str,
    /// What is taken where the answer is not known.
    pub otherwise: &'static str,
}

/// What is asked for a new lot.
pub const LOT_QUESTIONS: &[Question] = &[
    Question {
        word: "greasy",
        ask: "How much greasy wool",
        like: "35kg",
        otherwise: "50 kg, until it is weighed",
    },
    Question {
        word: "breed",
        ask: "Which breed",
        like: "Romney",
        otherwise: "the clean yield of any breed",
    },
    Question {
        word: "feel",
        ask: "How it feels: fine, medium or coarse, or its diameter",
        like: "medium",
        otherwise: "no word on how fine a yarn it spins",
    },
    Question {
        word: "goods",
        ask: "What is made of it, each with its size and how many",
        like: "throw:12,hank:50g:120",
        otherwise: "hanks of 100 g, as many as it makes",
    },
    Question {
        word: "count",
        ask: "Which count of two-fold yarn",
        like: "330m/100g",
        otherwise: "330 m/100g",
    },
    Question { word: "owner", ask: "Whose it is", like: "grower A", otherwise: "not said" },
    Question { word: "by", ask: "By when", like: "2026-09-01", otherwise: "not said" },
    Question {
        word: "name",
        ask: "What the lot is called",
        like: "Hill lot",
        otherwise: "New lot",
    },
];

/// What is asked for a new mill.
pub const MILL_QUESTIONS: &[Question] = &[
    Question { word: "spinning", ask: "What spins: mule or ring", like: "mule", otherwise: "mule" },
    Question {
        word: "spindles",
        ask: "How many spindles the mule has",
        like: "120",
        otherwise: "no hours on the mule",
    },
    Question {
        word: "ends",
        ask: "How many good ends the card delivers",
        like: "120",
        otherwise: "no hopper weigh",
    },
    Question {
        word: "held_up",
        ask: "How much clean wool the running card keeps",
        like: "0.6kg",
        otherwise: "0.6 kg, from memory",
    },
    Question {
        word: "reel",
        ask: "How far round the reel is",
        like: "1.5m",
        otherwise: "1.50 m, from memory",
    },
    Question {
        word: "loom_width",
        ask: "The widest reed space of the loom",
        like: "1.9m",
        otherwise: "2.30 m, from memory",
    },
    Question {
        word: "reeds",
        ask: "Which reeds there are",
        like: "20 dents/10 cm,24 dents/10 cm",
        otherwise: "20, 24 and 30 dents/10 cm, from memory",
    },
    Question {
        word: "regain",
        ask: "The regain at which goods are sold",
        like: "17%",
        otherwise: "17 %",
    },
];

/// The words given, by name.
struct Words<'w> {
    given: Vec<(&'static str, &'w str)>,
}

impl<'w> Words<'w> {
    /// Refuses words that are not asked for, and those that appear twice; what is empty is not known.
    fn new(given: &[(&str, &'w str)], questions: &'static [Question]) -> Result<Words<'w>> {
        let known: Vec<&'static str> = questions.iter().map(|question| question.word).collect();
        let mut words = Words { given: Vec::new() };
        for (word, answer) in given {
            let Some(word) = known.iter().copied().find(|known| known == word) else {
                let near = or_near(word, &known);
                let all = known.join(", ");
                return Err(Error::notation(format!("unknown word '{word}'{near} Words: {all}")));
            };
            if words.given.iter().any(|(other, _)| *other == word) {
                return Err(Error::notation(format!("'{word}' appears twice; write it once")));
            }
            words.given.push((word, answer));
        }
        words.given.retain(|(_, answer)| !answer.trim().is_empty());
        Ok(words)
    }
    /// The answer to a question.
    fn get(&self, word: &str) -> Option<&'w str> {
        self.given.iter().find(|(name, _)| *name == word).map(|(_, answer)| answer.trim())
    }
    /// The answer to a question for a quantity, as TOML; it must be above nothing.
    fn quantity(&self, word: &'static str, kind: Kind) -> Result<Option<String>> {
        self.get(word).map(|answer| quantity(word, answer, kind)).transpose()
    }
    /// The answer to a question for a number of things.
    fn whole(&self, word: &'static str, most: u32) -> Result<Option<String>> {
        let Some(answer) = self.get(word) else { return Ok(None) };
        match answer.parse::<u32>() {
            Ok(number) if (1..=most).contains(&number) => Ok(Some(number.to_string())),
            _ => Err(Error::notation(format!(
                "{word}: write a whole number from 1 to {most}, not '{answer}'"
            ))),
        }
    }
}

/// A quantity above nothing, as TOML.
fn quantity(word: &str, answer: &str, kind: Kind) -> Result<String> {
    let amount = parse_as(answer, kind).map_err(|e| e.at(word))?;
    if amount.base() <= 0.0 {
        return Err(Error::range(format!("{word}: {answer} is nothing; write more")));
    }
    Ok(text(answer))
}

/// A text of one line, as TOML.
fn text(text: &str) -> String {
    toml_edit::Value::from(one_line(text).trim()).to_string().trim().to_owned()
}

/// The name by which a lot names the mill of the handbook.
pub(super) const HANDBOOK: &str = "handbook";

/// The mill of the handbook.
pub(super) fn handbook_mill() -> Result<Source> {
    Ok(Source { name: "handbook mill".to_owned(), text: new_mill(&[])? })
}
