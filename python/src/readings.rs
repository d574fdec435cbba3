//! The readings of a sample, as they are given.

use hankwise::quality::{self as room};
use hankwise::quantity::{Kind, Unit};
use pyo3::prelude::*;
use pyo3::types::{PyList, PyString};

use crate::columns::Figures;
use crate::errors::{NotationError, OrRaise, UnitError};
use crate::inputs::{base_unit, is_row, locate, members, single};
use crate::quantity::Quantity;
use crate::texts::holds_texts;

/// Readings and their unit: a quantity that holds several, a list of quantities or of texts with their
/// units, or bare numbers.
pub(crate) struct Readings {
    pub(crate) values: Vec<f64>,
    pub(crate) unit: &'static Unit,
    pub(crate) kind: Kind,
}

impl Readings {
    pub(crate) fn read(value: &Bound<'_, PyAny>, function: &str) -> PyResult<Readings> {
        let readings = Readings::of(value).and_then(Readings::possible);
        readings.map_err(|e| locate(value.py(), function, "values", e))
    }

    /// Refuses readings that cannot be: a mass below nothing.
    fn possible(self) -> PyResult<Readings> {
        for (place, value) in self.values.iter().enumerate().filter(|(_, value)| !value.is_nan()) {
            let checked = self.kind.check(self.unit.to_base(*value));
            checked.map_err(|e| e.at(format_args!("reading {}", place + 1))).or_raise()?;
        }
        Ok(self)
    }

    fn of(value: &Bound<'_, PyAny>) -> PyResult<Readings> {
        if let Ok(quantity) = value.cast::<Quantity>() {
            let Quantity { unit, kind, .. } = *quantity.get();
            return Ok(Readings {
                values: plain(quantity.get().number.bind(value.py()))?,
                unit,
                kind,
            });
        }
        if value.getattr("ndim").is_ok_and(|n| n.extract::<usize>().is_ok_and(|n| n > 1)) {
            return Err(a_table());
        }
        if let Some(refused) = crate::foreign::foreign(value) {
            return Err(refused);
        }
        if !is_row(value) {
            return Err(NotationError::new_err(format!(
                "write several readings in a row, such as hankwise.q([98, 102, 101], 'tex'), not {}",
                crate::columns::shown(value)
            )));
        }
        // An array or a Series of numbers is read as a whole; one of texts as a list of them.
        let row = if value.hasattr("dtype")? && !holds_texts(value) {
            None
        } else {
            Some(members(value, "values", Kind::Reading)?)
        };
        let says_unit = |one: &Bound<'_, PyAny>| {
            one.is_instance_of::<PyString>() || one.cast::<Quantity>().is_ok()
        };
        let Some(row) = row.as_ref().filter(|row| row.iter().any(says_unit)) else {
            let bare = match &row {
                Some(row) => PyList::new(value.py(), row)?.into_any(),
                None => value.clone(),
            };
            let unit = base_unit(Kind::Reading);
            return Ok(Readings { values: plain(&bare)?, unit, kind: Kind::Reading });
        };
        // Of texts, the first says what all are.
        let first = crate::make::q(&row[0], None)?;
        let (unit, kind) = (first.unit, first.kind);
        let values = row
            .iter()
            .enumerate()
            .map(|(k, one)| {
                let read = crate::inputs::one_figure(one, kind)
                    .map_err(|e| locate(value.py(), "reading", &(k + 1).to_string(), e))?;
                Ok(unit.from_base(read.0.base()))
            })
            .collect::<PyResult<_>>()?;
        Ok(Readings { values, unit, kind })
    }

    pub(crate) fn sample(self) -> hankwise::Result<room::Sample> {
        room::Sample::new(self.values, self.unit)
    }

    /// A figure in the unit of the readings; a bare one is taken as in it.
    pub(crate) fn figure(
        &self,
        value: &Bound<'_, PyAny>,
        function: &str,
        name: &str,
    ) -> PyResult<f64> {
        if let Some(x) = crate::columns::scalar(value).filter(|_| self.unit.symbol.is_empty()) {
            return Ok(x);
        }
        if self.kind == Kind::Reading
            && let Ok(said) = crate::make::q(value, None)
            && !said.unit.symbol.is_empty()
        {
            return Err(UnitError::new_err(format!(
                "{function}, {name}: it has a unit, {0}, and the readings have none; write theirs too, \
                 such as values=hankwise.q(values, '{0}')",
                said.unit.symbol
            )));
        }
        Ok(self.unit.from_base(single(value, function, name, self.kind)?.base()))
    }
}

fn a_table() -> PyErr {
    NotationError::new_err(
        "a table was given instead of one row of readings: its rows one after another, as \
         numpy.ravel(table) gives them, in the order in which they were taken; a row of the table may \
         then be a subgroup=",
    )
}

/// The figures of a row of numbers.
fn plain(value: &Bound<'_, PyAny>) -> PyResult<Vec<f64>> {
    use numpy::{PyArrayMethods, PyUntypedArrayMethods};
    match Figures::of(value)? {
        Figures::One(x) => Ok(vec![x]),
        Figures::Many(array) if array.ndim() > 1 => Err(a_table()),
        Figures::Many(array) => Ok(crate::columns::rows(&array.readonly()).into_owned()),
    }
}

/// A share, such as "95 %".
pub(crate) fn share(
    value: Option<&Bound<'_, PyAny>>,
    function: &str,
    name: &str,
) -> PyResult<Option<f64>> {
    value.map(|v| single(v, function, name, Kind::Fraction).map(|a| a.base())).transpose()
}

pub(crate) fn confidence(value: Option<&Bound<'_, PyAny>>, function: &str) -> PyResult<f64> {
    Ok(share(value, function, "confidence")?.unwrap_or(0.95))
}
