//! One value of a lot file.

use toml_edit::{Item, Value};

use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind};
use crate::yarn::read_input;

/// The value as it was written, shortened.
pub(super) fn shown(item: &Item) -> String {
    let text = item.to_string();
    let text = text.trim();
    if text.chars().count() > 40 {
        format!("{}…", text.chars().take(40).collect::<String>())
    } else {
        text.to_owned()
    }
}

pub(super) fn read(item: &Item, kind: Kind) -> Result<(Amount, String)> {
    match item {
        Item::Value(value) => read_value(value, kind),
        _ => {
            Err(Error::notation(format!("write a {} such as \"{}\"", kind.words(), kind.example())))
        }
    }
}

pub(super) fn read_value(value: &Value, kind: Kind) -> Result<(Amount, String)> {
    match value {
        Value::String(text) => read_input(text.value(), "", kind),
        Value::Integer(n) => bare(*n.value() as f64, kind),
        Value::Float(x) => bare(*x.value(), kind),
        _ => Err(Error::notation(format!(
            "write a {0}, not {1}; for example \"{2}\"",
            kind.words(),
            value.to_string().trim(),
            kind.example()
        ))),
    }
}

fn bare(number: f64, kind: Kind) -> Result<(Amount, String)> {
    if !number.is_finite() {
        return Err(Error::notation(format!(
            "{number} is not a {}; write one such as \"{}\"",
            kind.words(),
            kind.example()
        )));
    }
    let amount = crate::quantity::bare_number(number, kind)?;
    kind.check(amount.base())?;
    Ok((amount, if number.abs() < 1e15 { number.to_string() } else { format!("{number:e}") }))
}
