//! Cloths of two layers.

use super::Weave;
use super::satin::common_divisor;
use crate::error::Result;

fn common_multiple(a: usize, b: usize) -> usize {
    a / common_divisor(a, b) * b
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
            (face_end, _) => face_end == 0,
        })
    }
}
