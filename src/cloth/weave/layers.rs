//! Cloths of two layers.

use std::fmt;

use super::Weave;
use super::satin::common_divisor;
use crate::error::{Error, Result};

/// A stitch between face and back, by thread of the whole repeat, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stitch {
    /// The end.
    pub end: usize,
    /// The pick.
    pub pick: usize,
    /// True where a back end is raised over a face pick, false where a face end is lowered under a
    /// back pick.
    pub raised: bool,
}

impl fmt::Display for Stitch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (end, pick) = (self.end + 1, self.pick + 1);
        if self.raised {
            write!(f, "back end {end} over face pick {pick}")
        } else {
            write!(f, "face end {end} under back pick {pick}")
        }
    }
}

/// The two layers of a double cloth.
#[derive(Clone, Debug)]
pub struct Layers {
    /// Face ends with face picks.
    pub face: Weave,
    /// Back ends with back picks, seen from the face.
    pub back: Weave,
    /// Crossings of the layers that keep them apart: a face end up on a back pick, a back end down on
    /// a face pick.
    pub separators: usize,
    /// Crossings that join them.
    pub stitches: Vec<Stitch>,
}

fn common_multiple(a: usize, b: usize) -> usize {
    a / common_divisor(a, b) * b
}

/// Reads the order of a double cloth, such as `1 face 1 back`: true for the face.
pub fn layer_order(text: &str) -> Result<Vec<bool>> {
    let amiss = || {
        Error::notation(format!(
            "'{text}' is not an order of face and back; write one such as '1 face 1 back'"
        ))
    };
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut order = Vec::new();
    for pair in words.chunks(2) {
        let [number, layer] = pair else { return Err(amiss()) };
        let number: usize =
            number.parse().ok().filter(|n| (1..=1000).contains(n)).ok_or_else(amiss)?;
        let face = match *layer {
            "face" => true,
            "back" => false,
            _ => return Err(amiss()),
        };
        order.extend(std::iter::repeat_n(face, number));
    }
    if order.contains(&true) && order.contains(&false) { Ok(order) } else { Err(amiss()) }
}

impl Weave {
    /// Two cloths, one above the other, an end and a pick of the face and of the back in turn, not
    /// stitched: face ends are up on back picks and back ends down on face picks.
    pub fn double(face: &Weave, back: &Weave) -> Result<Weave> {
        let ends = 2 * common_multiple(face.ends(), back.ends());
        let picks = 2 * common_multiple(face.picks(), back.picks());
        Weave::from_fn(ends, picks, |end, pick| match (end % 2, pick % 2) {
            (0, 0) => face.is_up(end / 2, pick / 2),
            (1, 1) => back.is_up(end / 2, pick / 2),
            (back_end, _) => back_end == 0,
        })
    }

    /// Splits a double cloth into its layers, by which ends and which picks are of the face, in turn.
    ///
    /// ```
    /// use hankwise::cloth::{Weave, layer_order};
    ///
    /// let order = layer_order("1 face 1 back")?;
    /// let layers = Weave::parse("double plain")?.split(&order, &order)?;
    /// assert_eq!((layers.face.to_string(), layers.stitches.len()), ("plain".to_owned(), 0));
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn split(&self, face_ends: &[bool], face_picks: &[bool]) -> Result<Layers> {
        for (order, what) in [(face_ends, "ends"), (face_picks, "picks")] {
            if !(order.contains(&true) && order.contains(&false)) {
                return Err(Error::notation(format!(
                    "the {what} of a double cloth are of the face and of the back; write an order such \
                     as '1 face 1 back'"
                )));
            }
        }
        let ends = common_multiple(self.ends(), face_ends.len());
        let picks = common_multiple(self.picks(), face_picks.len());
        if ends.saturating_mul(picks) > 16_000_000 {
            return Err(Error::range(format!(
                "weave and order of the layers meet again after {ends} × {picks} threads only; does the \
                 order fit the weave of {} × {}?",
                self.ends(),
                self.picks()
            )));
        }
        let face_end = |end: usize| face_ends[end % face_ends.len()];
        let face_pick = |pick: usize| face_picks[pick % face_picks.len()];
        let (mut separators, mut stitches) = (0, Vec::new());
        let (mut face, mut back) = (Vec::new(), Vec::new());
        for pick in 0..picks {
            for end in 0..ends {
                let up = self.is_up(end, pick);
                match (face_end(end), face_pick(pick)) {
                    (true, true) => face.push(up),
                    (false, false) => back.push(up),
                    (of_face, _) if of_face == up => separators += 1,
                    (of_face, _) => stitches.push(Stitch { end, pick, raised: !of_face }),
                }
            }
        }
        if stitches.len() > separators {
            return Err(Error::range(format!(
                "{} of {} crossings between face and back would be stitches: this is not a cloth of two \
                 layers in that order; exchange face and back, or begin the order with the other",
                stitches.len(),
                stitches.len() + separators
            )));
        }
        let across = (0..ends).filter(|end| face_end(*end)).count();
        Ok(Layers {
            face: Weave::from_cells(&face, across).map_err(|e| e.at("face"))?,
            back: Weave::from_cells(&back, ends - across).map_err(|e| e.at("back"))?,
            separators,
            stitches,
        })
    }
}
