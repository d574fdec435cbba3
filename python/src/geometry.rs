//! A plain cloth from what is known of it.

use hankwise::cloth::{self, KNOWN_OF_PLAIN_CLOTH};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::inputs::{Given, locate, one};
use crate::particulars::Particulars;

const NAME: &str = "plain_cloth";

/// plain_cloth(**known)
/// --
///
/// All that follows, after Peirce, from what is known of a plain cloth of round threads.
///
/// Known are both diameters and three figures more that are not all of one system; or ends, picks and
/// both crimps (or lengths), which give the sum of the diameters. A warp thread crosses picks: its
/// length, height and angle are from pick to pick.
///
/// >>> import hankwise as hw
/// >>> cloth = hw.cloth.plain_cloth(ends="9 ends/cm", picks="10 picks/cm", warp_crimp="4.5 %",
/// ...                              warp_diameter="0.36 mm", weft_diameter="0.34 mm")
/// >>> cloth["weft_crimp"], cloth["thickness"]
/// (<crimp on cloth length: 7.061 %>, <thickness: 0.7477 mm>)
/// >>> print(cloth)
/// Plain cloth of round threads, after Peirce
/// <BLANKLINE>
/// from ends, picks, warp_crimp, warp_diameter, weft_diameter
///                                         warp           weft
///   threads                       9 threads/cm  10 threads/cm
///   crimp                                4.5 %        7.061 %
///   length from thread to thread      1.045 mm       1.190 mm
///   height of the wave               0.2923 mm      0.4077 mm
///   angle                              18.23 °        22.80 °
///   straight part (none: jammed)     0.8223 mm      0.9111 mm
///   diameter                           0.36 mm        0.34 mm
///   crown                            0.6523 mm      0.7477 mm
///   sum of the diameters 0.7 mm
///   thickness 0.7477 mm
///   by the rule h = 4/3 p √c the weft's crimp would be 7.929 % (+12.3 %)
///   the equations are off by no more than 1e-15 mm
///   round threads that neither stretch nor flatten; cloth that is not milled
#[pyfunction]
#[pyo3(signature = (**known), text_signature = "(**known)")]
pub(crate) fn plain_cloth(
    py: Python<'_>,
    known: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    let mut read = Vec::new();
    for (name, value) in known.into_iter().flatten() {
        let name: String = name.extract()?;
        let Some(known) = KNOWN_OF_PLAIN_CLOTH.iter().find(|k| k.name == name) else {
            let names = KNOWN_OF_PLAIN_CLOTH.map(|k| k.name).join(", ");
            return Err(PyTypeError::new_err(format!(
                "{NAME} has no input '{name}'; its inputs are {names}"
            )));
        };
        if value.is_none() {
            continue;
        }
        match one(&value, known.kind).map_err(|e| locate(py, NAME, &name, e))? {
            Given::One(amount, typed) => read.push((known.name, amount, typed)),
            Given::Many(..) => {
                return Err(PyTypeError::new_err(format!(
                    "{NAME}, {name}: one figure is wanted; for arrays there is hankwise.cloth.weft_crimp"
                )));
            }
        }
    }
    Particulars::hand_over(py, cloth::plain_cloth(&read).map_err(|e| e.at(NAME)))
}
