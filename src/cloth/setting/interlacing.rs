//! What a theory of setting has to know of a weave.

use crate::cloth::{System, Weave};
use crate::error::{Error, Result};

/// The class of a weave, as far as a theory asks for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WeaveClass {
    /// One up, one down.
    Plain,
    /// Any twill.
    Twill,
    /// Satin or sateen.
    Satin,
    /// Hopsack, mat.
    Hopsack,
    /// Any other, or not known.
    Other,
}

/// What a theory of setting has to know of a weave.
#[derive(Clone, Debug, PartialEq)]
pub struct Interlacing {
    /// The weave as the user named it.
    pub name: String,
    /// Its class.
    pub class: WeaveClass,
    /// Average float of the ends: picks in the repeat over intersections.
    pub warp_float: f64,
    /// Average float of the picks: ends in the repeat over intersections.
    pub weft_float: f64,
}

impl Interlacing {
    /// That of a weave; `name` is how it is called in what is shown.
    pub fn of(weave: &Weave, name: &str) -> Interlacing {
        Interlacing {
            name: name.to_owned(),
            class: WeaveClass::of(weave),
            warp_float: weave.average_float(System::Warp),
            weft_float: weave.average_float(System::Weft),
        }
    }
    /// That of a weave as people write it, see [`Weave::parse`].
    pub fn parse(text: &str) -> Result<Interlacing> {
        if text.to_lowercase().split_whitespace().any(|word| word == "double") {
            return Err(Error::notation(format!(
                "'{}' is two cloths, one over the other, and no theory is for both at once; ask for \
                 each layer with its own ends and picks, such as 'plain'",
                text.trim()
            )));
        }
        Ok(Interlacing::of(&Weave::parse(text)?, text.trim()))
    }
}

impl WeaveClass {
    /// The class of a weave: known by its build, not by its name.
    pub fn of(weave: &Weave) -> WeaveClass {
        let (ends, picks) = (weave.ends(), weave.picks());
        if ends != picks {
            return WeaveClass::Other;
        }
        if ends == 2 {
            return WeaveClass::Plain;
        }
        // Each end is the one before, so many picks on.
        let shifted = |by: usize| {
            (1..ends).all(|e| {
                (0..picks).all(|p| weave.is_up(e, (p + by) % picks) == weave.is_up(e - 1, p))
            })
        };
        if shifted(1) || shifted(picks - 1) {
            return WeaveClass::Twill;
        }
        let ups = (0..picks).filter(|p| weave.is_up(0, *p)).count();
        if (ups == 1 || ups == picks - 1) && (2..picks - 1).any(shifted) {
            return WeaveClass::Satin;
        }
        // Blocks of plain: every end is the first or its reverse, half of it up in one float.
        let alike =
            |e: usize| (0..picks).filter(|p| weave.is_up(e, *p) == weave.is_up(0, *p)).count();
        let blocks = (0..ends).all(|e| alike(e) == picks || alike(e) == 0);
        let one_float = |system| weave.interlacings(system).iter().all(|i| *i == 2);
        if blocks && 2 * ups == picks && one_float(System::Warp) && one_float(System::Weft) {
            return WeaveClass::Hopsack;
        }
        WeaveClass::Other
    }
}
