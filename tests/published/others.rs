//! Rows about things other than formulas: a value of the handbook, a value of a weave or of a satin.
//!
//! - `handbook`: `table`, `of` (words that find one value in it), `end` (`low`, `high` or `only`);
//! - `weave`: `weave` (a name, or its picks from the first woven), `figure`, and for
//!   `interlacings_in` the number of `ends` or `picks`;
//! - `chart_constant`: `constant` (its symbol), `n` (readings in a subgroup);
//! - `satin`: `ends`, `figure`; for the `riser` also `move` and `pick`;
//! - `us_grade`: `diameter`; the quality number of the grade.

use hankwise::catalogue;
use hankwise::cloth::{System, Weave, satin_moves};
use hankwise::fibre::us_grade;
use hankwise::quality::ChartConstants;
use hankwise::quantity::{Amount, Fineness, Kind, unit};
use serde_json::{Map, Value};

type Inputs = Map<String, Value>;
type Answer = fn(&Inputs) -> Result<Amount, String>;

pub(crate) fn find(name: &str) -> Option<Answer> {
    match name {
        "handbook" => Some(handbook_figure),
        "weave" => Some(weave_figure),
        "satin" => Some(satin_figure),
        "chart_constant" => Some(chart_constant),
        "us_grade" => Some(quality_number),
        _ => None,
    }
}

fn text<'a>(inputs: &'a Inputs, name: &str) -> Result<&'a str, String> {
    inputs.get(name).and_then(Value::as_str).ok_or(format!("no {name}"))
}

fn whole(inputs: &Inputs, name: &str) -> Result<usize, String> {
    text(inputs, name)?.parse().map_err(|e| format!("{name}: {e}"))
}

/// Taken by value for `map_err`.
#[allow(clippy::needless_pass_by_value)]
fn words(error: hankwise::Error) -> String {
    error.to_string()
}

fn plain(number: f64) -> Result<Amount, String> {
    Ok(Amount { number, unit: unit("", Some(Kind::Ratio)).map_err(words)? })
}

fn handbook_figure(inputs: &Inputs) -> Result<Amount, String> {
    let table = catalogue::table(text(inputs, "table")?).map_err(words)?;
    let of = text(inputs, "of")?;
    let found: Vec<_> = table.find(of).collect();
    let [figure] = found[..] else {
        return Err(format!("'{of}' finds {} values of {}", found.len(), table.name));
    };
    let number = match text(inputs, "end")? {
        "low" => figure.low,
        "high" => figure.high,
        "only" if figure.low.total_cmp(&figure.high).is_eq() => figure.low,
        other => return Err(format!("'{other}' is no end of {}", figure.words())),
    };
    match figure.measure() {
        Ok(unit) => Ok(Amount { number, unit }),
        // A value in a unit of its table alone, such as tpi/√Ne; the row gives none.
        Err(_) => plain(number),
    }
}

fn chart_constant(inputs: &Inputs) -> Result<Amount, String> {
    let n = u32::try_from(whole(inputs, "n")?).map_err(|e| e.to_string())?;
    let constants = ChartConstants::new(n).map_err(words)?;
    let symbol = text(inputs, "constant")?;
    plain(constants.get(symbol).ok_or(format!("'{symbol}' is no constant of a chart"))?)
}

fn weave_figure(inputs: &Inputs) -> Result<Amount, String> {
    let weave = match inputs.get("weave") {
        Some(Value::Array(rows)) => {
            let rows: Vec<&str> = rows.iter().filter_map(Value::as_str).collect();
            Weave::from_rows(&rows)
        }
        _ => Weave::parse(text(inputs, "weave")?),
    }
    .map_err(words)?;
    let of_all = |system: System| {
        let each = weave.interlacings(system);
        each.iter().sum::<usize>() as f64 / each.len() as f64
    };
    plain(match text(inputs, "figure")? {
        "interlacings_of_a_pick" => of_all(System::Weft),
        "interlacings_of_an_end" => of_all(System::Warp),
        "interlacings_in" if inputs.contains_key("ends") => {
            weave.interlacings_in(System::Weft, whole(inputs, "ends")?)
        }
        "interlacings_in" => weave.interlacings_in(System::Warp, whole(inputs, "picks")?),
        "average_float_warp" => weave.average_float(System::Warp),
        "average_float_weft" => weave.average_float(System::Weft),
        "warp_up" => weave.warp_up(),
        "crossing_firmness" => weave.crossing_firmness(),
        "floating_factor" => weave.floating_factor(),
        other => return Err(format!("'{other}' is no value of a weave")),
    })
}

fn satin_figure(inputs: &Inputs) -> Result<Amount, String> {
    let ends = whole(inputs, "ends")?;
    match text(inputs, "figure")? {
        // None where there is no regular satin.
        "moves_up_to_half" => {
            let moves = satin_moves(ends).unwrap_or_default();
            plain(moves.iter().filter(|m| 2 * **m <= ends).count() as f64)
        }
        "riser" => {
            let name = format!("{ends}-end sateen move {}", text(inputs, "move")?);
            let weave = Weave::parse(&name).map_err(words)?;
            let pick = whole(inputs, "pick")? - 1;
            let risers: Vec<usize> = (0..ends).filter(|end| weave.is_up(*end, pick)).collect();
            let [riser] = risers[..] else { return Err(format!("risers: {risers:?}")) };
            plain(riser as f64 + 1.0)
        }
        other => Err(format!("'{other}' is no value of a satin")),
    }
}

fn quality_number(inputs: &Inputs) -> Result<Amount, String> {
    let diameter = Fineness::parse(text(inputs, "diameter")?).map_err(words)?;
    let grade = us_grade(diameter, None).map_err(words)?;
    plain(f64::from(grade.number().ok_or(format!("{} has no number", grade.name))?))
}
