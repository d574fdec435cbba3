//! Pictures of a weave: point paper, draft, and the face of the cloth. SVG, readable in grey.

mod colours;
mod draft;
mod effect;
mod face;
mod flat;
mod names;
mod paper;
mod squares;
mod svg;
mod treadles;

pub use face::{Face, Threads};

use crate::error::{Error, Result};
use crate::files::{FileKind, Output};

/// A picture as SVG.
///
/// ```
/// use hankwise::cloth::Weave;
///
/// let picture = Weave::parse("2/2 twill")?.point_paper(Some((2, 2)), None)?;
/// assert!(picture.svg().starts_with("<svg"));
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    svg: String,
}

impl Picture {
    /// The text of the SVG.
    pub fn svg(&self) -> &str {
        &self.svg
    }
    /// Writes it to a file, whole or not at all.
    pub fn save(&self, out: impl Into<Output>) -> Result<()> {
        out.into().write(FileKind::Svg, self.svg.as_bytes())
    }
}

/// Threads of a small repeat are shown at least so many, in whole repeats.
const FEW: usize = 8;
/// Where squared paper begins: on its left are a bracket and numbers.
const LEFT: f64 = 40.0;
/// The width that words below a small picture may take: that of a phone.
const WORDS: f64 = 320.0;

/// The repeats shown each way, asked for or so many that at least a `few` threads are seen, and the
/// threads that makes.
fn shown(
    (ends, picks): (usize, usize),
    repeats: Option<(usize, usize)>,
    few: (usize, usize),
    most: usize,
) -> Result<((usize, usize), (usize, usize))> {
    let (across, up) = repeats.unwrap_or((few.0.div_ceil(ends), few.1.div_ceil(picks)));
    let fits = |repeats: usize, threads: usize, what: &str| {
        if repeats == 0 {
            return Err(Error::range(format!(
                "0 repeats of the {what} show nothing; write 1 or more"
            )));
        }
        match repeats.checked_mul(threads) {
            Some(n) if n <= most => Ok(n),
            _ if repeats > 1 => Err(Error::range(format!(
                "{repeats} repeats of {threads} {what} are more than can be read in a picture: at most \
                 {most} {what}; draw {} repeats or fewer",
                (most / threads).max(1)
            ))),
            _ => Err(Error::range(format!(
                "a repeat of {threads} {what} is more than can be read in a picture: at most {most} \
                 {what}; draw a part of it, as a weave of its own"
            ))),
        }
    };
    Ok(((across, up), (fits(across, ends, "ends")?, fits(up, picks, "picks")?)))
}
