//! Designation: what a yarn is made of, as people write it.
//!
//! Two notations of ISO 1139, from the single to the fold and from the fold to the single, and the
//! short notations of the trade. What can be read in two ways is refused, with both readings.
//!
//! ```
//! use hankwise::yarn::Yarn;
//!
//! let yarn = Yarn::parse("125 tex Z 210 x 2 S 120; R 257 tex")?;
//! assert_eq!(yarn.fold_to_single()?, "R 257 tex S 120/2 Z 210; 125 tex");
//! assert_eq!(yarn.singles(), Some(2));
//! # Ok::<(), hankwise::Error>(())
//! ```
//!
//! The two notations agree in what they say and differ in who thinks in them: the spinner starts from
//! the single, the one who uses the yarn from what it is as a whole. The examples of the standard were
//! available from memory only, and of unlike components from the fold to the single only the form
//! used here, `R 195 tex S 260/(S 380; 62 tex + Z 90; 125 tex)`.

mod balance;
mod cursor;
mod read;
mod report;
mod resultant;
mod settle;
mod shares;
mod single;
mod sums;
mod trade;
mod words;
mod write;

pub use balance::Balance;
pub use sums::Asked;
pub use trade::{Order, Reading};

use std::fmt;

use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit};

/// Direction of twist, as ISO 2 has it: the slope of the letter's middle stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Direction {
    /// Left-hand.
    S,
    /// Right-hand.
    Z,
}

impl Direction {
    /// The letter.
    pub const fn letter(self) -> char {
        match self {
            Direction::S => 'S',
            Direction::Z => 'Z',
        }
    }
}

/// The twist of a strand.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub enum Turned {
    /// Nothing is said about it.
    #[default]
    Unsaid,
    /// No twist: `t0`.
    Not,
    /// A direction, and how much where it is said.
    To(Direction, Option<Amount>),
}

/// A single: spun, or of filaments.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Single {
    /// Its count, where it is said.
    pub count: Option<Amount>,
    /// How many filaments, of a filament yarn.
    pub filaments: Option<u32>,
    /// Its twist.
    pub twist: Turned,
}

/// Ends that are alike, in a fold.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What each end is.
    pub strand: Strand,
    /// How many.
    pub ends: u32,
}

/// Ends that lie together: folded, or wound together without twist.
#[derive(Clone, Debug, PartialEq)]
pub struct Fold {
    /// The ends.
    pub parts: Vec<Part>,
    /// The twist that holds them.
    pub twist: Turned,
}

/// A single or a fold.
#[derive(Clone, Debug, PartialEq)]
pub enum Strand {
    /// A single.
    Single(Single),
    /// Ends folded together.
    Fold(Fold),
}

/// The count of the whole, as it was measured or as the name says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Whole {
    /// The count.
    pub count: Amount,
    /// True of a bulked yarn, whose mark is `B` instead of `R`.
    pub bulked: bool,
}

/// What a yarn is made of, and what is known of it.
#[derive(Clone, Debug)]
pub struct Yarn {
    /// What it is made of.
    pub build: Strand,
    /// The count of the whole, where it was said: `R 257 tex`.
    pub whole: Option<Whole>,
    /// What else is known; most often nothing.
    about: Option<Box<About>>,
}

/// What is known of a yarn besides its build. A count without its state can be half a count.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct About {
    /// Length of each end of the outermost fold in a unit length of the yarn; empty where all are
    /// alike.
    pub lengths: Vec<f64>,
    /// The ends of the range that raw silk is named by, as in `17/20 den`.
    pub range: Option<(f64, f64)>,
    /// The fibre, such as "wool".
    pub material: Option<String>,
    /// The state that its counts are in, such as "in oil" or "scoured".
    pub state: Option<String>,
    /// True once the yarn has been washed and has shrunk, false before, `None` where unsaid.
    pub relaxed: Option<bool>,
}

impl Turned {
    /// The direction, where there is one.
    pub fn direction(&self) -> Option<Direction> {
        match self {
            Turned::To(direction, _) => Some(*direction),
            _ => None,
        }
    }
    /// Turns per metre, where they are known; none for `t0`.
    pub fn turns(&self) -> Option<f64> {
        match self {
            Turned::Unsaid => None,
            Turned::Not => Some(0.0),
            Turned::To(_, turns) => turns.map(|t| t.base()),
        }
    }
}

impl Strand {
    /// The twist that holds it together.
    pub fn twist(&self) -> Turned {
        match self {
            Strand::Single(single) => single.twist,
            Strand::Fold(fold) => fold.twist,
        }
    }
    /// Its parts; none of a single.
    pub fn parts(&self) -> &[Part] {
        match self {
            Strand::Single(_) => &[],
            Strand::Fold(fold) => &fold.parts,
        }
    }
    /// How many singles lie in it; `None` beyond what can be counted.
    fn singles(&self) -> Option<u64> {
        match self {
            Strand::Single(_) => Some(1),
            Strand::Fold(fold) => fold.parts.iter().try_fold(0u64, |sum, part| {
                let here = part.strand.singles()?.checked_mul(u64::from(part.ends))?;
                sum.checked_add(here)
            }),
        }
    }
    /// The first single in it, whose unit the yarn is thought of in.
    fn first(&self) -> &Single {
        match self {
            Strand::Single(single) => single,
            Strand::Fold(fold) => fold.parts[0].strand.first(),
        }
    }
    /// Folds in folds: 0 for a single, 1 for a folded yarn, 2 for a cabled one.
    fn depth(&self) -> usize {
        match self {
            Strand::Single(_) => 0,
            Strand::Fold(fold) => {
                1 + fold.parts.iter().map(|p| p.strand.depth()).max().unwrap_or(0)
            }
        }
    }
}

impl Yarn {
    /// A yarn of which only the build is known.
    pub fn of(build: Strand) -> Self {
        Yarn { build, whole: None, about: None }
    }

    /// What is known of it besides its build and its count.
    pub fn about(&self) -> &About {
        static NOTHING: About =
            About { lengths: Vec::new(), range: None, material: None, state: None, relaxed: None };
        self.about.as_deref().unwrap_or(&NOTHING)
    }

    /// The same, to be added to.
    pub fn about_mut(&mut self) -> &mut About {
        self.about.get_or_insert_default()
    }

    /// Reads a yarn in any notation whose reading is settled.
    ///
    /// # Errors
    /// Where the text cannot be read, with a mark under the place, or can be read in more than one way.
    pub fn parse(text: &str) -> Result<Self> {
        read::yarn(text, &Reading::default())
    }

    /// Reads a yarn, with what settles a short notation: the order of its numbers, its count system.
    ///
    /// # Errors
    /// As [`Yarn::parse`].
    pub fn parse_as(text: &str, reading: &Reading) -> Result<Self> {
        read::yarn(text, reading)
    }

    /// How many singles lie in it; `None` beyond what can be counted.
    pub fn singles(&self) -> Option<u64> {
        self.build.singles()
    }

    /// What it is called: a spun single, a filament yarn, folded, cabled, wound together.
    pub fn what(&self) -> &'static str {
        match (&self.build, self.build.depth()) {
            (Strand::Single(Single { filaments: Some(1), .. }), _) => "monofilament",
            (Strand::Single(Single { filaments: Some(_), .. }), _) => "filament yarn",
            (Strand::Single(Single { count: None, .. }), _) => "yarn of unknown build",
            (Strand::Single(_), _) => "single",
            (Strand::Fold(Fold { twist: Turned::Not, .. }), _) => "multiple wound yarn",
            (_, 1) => "folded yarn",
            _ => "cabled yarn",
        }
    }

    /// The count system that the yarn is thought of in: that of its resultant, else of its first
    /// single.
    pub fn system(&self) -> &'static Unit {
        let count = self.whole.map(|w| w.count).or(self.build.first().count);
        count.map_or_else(read::tex, |c| c.unit)
    }

    /// As it is written: from the single to the fold where that can be said.
    pub fn designation(&self) -> String {
        let short = if self.about().range.is_some() { self.trade() } else { self.single_to_fold() };
        // A yarn whose singles are not known has its resultant, or was put together of nothing.
        short.or_else(|_| self.fold_to_single()).unwrap_or_default()
    }

    /// The same yarn with a measured count of the whole.
    ///
    /// # Errors
    /// Where it is not a count.
    pub fn with_whole(mut self, count: Amount) -> Result<Self> {
        if count.unit.kind != Kind::LinearDensity {
            return Err(Error::unit(format!(
                "the resultant of a yarn is a count, not a {}; write it like '257 tex'",
                count.unit.kind.words()
            )));
        }
        Kind::LinearDensity.check(count.base())?;
        self.whole = Some(Whole { count, bulked: false });
        Ok(self)
    }
}

impl PartialEq for Yarn {
    fn eq(&self, other: &Yarn) -> bool {
        self.build == other.build && self.whole == other.whole && self.about() == other.about()
    }
}

impl fmt::Display for Yarn {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.designation())?;
        let relaxed = self.about().relaxed.map(|r| if r { "relaxed" } else { "not relaxed" });
        let known = [self.about().material.as_deref(), self.about().state.as_deref(), relaxed];
        let known: Vec<&str> = known.into_iter().flatten().collect();
        if known.is_empty() { Ok(()) } else { write!(f, "; {}", known.join(", ")) }
    }
}
