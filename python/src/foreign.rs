//! Containers and values of other libraries that cannot be taken as they are: what to write instead.

use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;

use crate::errors::UnitError;
use crate::quantity::Quantity;

/// The refusal of a container that is not read here, or of a value that has a unit of its own: read as
/// plain numbers, the one would be pulled whole into memory or lose its labels, the other its unit.
pub(crate) fn foreign(value: &Bound<'_, PyAny>) -> Option<PyErr> {
    let kind = value.get_type();
    let module = kind.module().ok()?.to_string();
    let library = module.split('.').next().unwrap_or("");
    if matches!(
        library,
        "builtins" | "numpy" | "pandas" | "decimal" | "fractions" | "array" | "hankwise"
    ) {
        return None;
    }
    if value.cast::<Quantity>().is_ok() {
        return None;
    }
    let name = kind.name().map_or_else(|_| String::new(), |name| name.to_string());
    let write = match library {
        "polars" if name == "Series" => {
            "write values.to_numpy(), or values.to_pandas() for a Series with its name; put the \
             answer back with polars.Series"
        }
        "polars" => "take one of its columns, and write frame['column'].to_numpy()",
        "pyarrow" if name.contains("Table") || name.contains("Batch") => {
            "take one of its columns, and write table['column'].to_pandas()"
        }
        "pyarrow" if name.contains("Scalar") => "write value.as_py()",
        "pyarrow" => "write values.to_pandas(), or values.to_numpy(zero_copy_only=False)",
        "xarray" => {
            "write values.to_numpy(), and put the answer back with values.copy(data=answer); a \
             Dataset holds several, take one"
        }
        "dask" => {
            "it would be pulled whole into memory; write values.compute() if that is meant, or call \
             block by block with values.map_blocks or values.map_partitions"
        }
        _ => return with_unit(value, library),
    };
    let article = if library.starts_with(['a', 'e', 'i', 'o', 'u']) { "an" } else { "a" };
    Some(PyTypeError::new_err(format!(
        "write numbers, a NumPy array or a pandas Series, not {article} {library} {name}; {write}"
    )))
}

/// The refusal of a value with a unit of another library.
fn with_unit(value: &Bound<'_, PyAny>, library: &str) -> Option<PyErr> {
    let own = |name: &str| value.getattr(name).ok().filter(|unit| !unit.is_callable());
    let (unit, number) = match (own("units"), own("unit")) {
        (Some(unit), _) => (unit, "magnitude"),
        (None, Some(unit)) => (unit, "value"),
        (None, None) => return None,
    };
    let unit = unit.str().map_or_else(|_| String::new(), |unit| unit.to_string());
    Some(UnitError::new_err(format!(
        "the value is one of {library} and has a unit of its own, {}; say in which unit you hand its \
         numbers over, such as hankwise.q(value.to('g').{number}, 'g')",
        if unit.is_empty() { "a plain number" } else { &unit }
    )))
}
