//! A week of lots over the machines.

use hankwise::mill::{self, Lot, Machine, Order};
use hankwise::quantity::Kind;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyDictMethods, PyList, PyTuple};

use crate::errors::{NotationError, raise};
use crate::inputs::{locate, one_figure};
use crate::money::named;
use crate::result::Table;

const NAME: &str = "week";

/// A week of lots over the machines. Made by `hankwise.mill.week`.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Week {
    week: mill::Week,
}

fn figure(value: &Bound<'_, PyAny>, kind: Kind, place: &str) -> PyResult<f64> {
    let read = one_figure(value, kind).map_err(|e| locate(value.py(), NAME, place, e))?;
    Ok(read.0.base())
}

fn text(value: &Bound<'_, PyAny>, place: &str) -> PyResult<String> {
    value.extract().map_err(|_| {
        NotationError::new_err(format!("{NAME}, {place}: a word is wanted, such as 'grey'"))
    })
}

fn unknown(place: &str, key: &str, known: &[&str]) -> PyErr {
    raise(&hankwise::Error::no_such(key, known).at(format!("{NAME}, {place}")))
}

/// How light a colour is: a number from 0 to 100, or the same as a share.
fn lightness(value: &Bound<'_, PyAny>, place: &str) -> PyResult<f64> {
    match one_figure(value, Kind::Fraction) {
        Ok((amount, _)) if amount.unit.symbol == "%" => Ok(amount.number),
        _ => figure(value, Kind::Count, place),
    }
}

/// A key or the name of a machine.
fn word(value: &Bound<'_, PyAny>, place: &str) -> PyResult<String> {
    value.extract().map_err(|_| {
        NotationError::new_err(format!(
            "{NAME}, {place}: a name is wanted, such as 'card', not {}",
            crate::columns::shown(value)
        ))
    })
}

fn read_lot(name: String, said: &Bound<'_, PyDict>) -> PyResult<Lot> {
    let (mut colour, mut light, mut hours) = (None, None, None);
    for (key, value) in said.iter() {
        match word(&key, &name)?.as_str() {
            "colour" => colour = Some(text(&value, &format!("{name}, colour"))?),
            "lightness" => {
                light = Some(lightness(&value, &format!("{name}, lightness"))?);
            }
            "hours" => {
                let all = value.cast::<PyDict>().map_err(|_| {
                    NotationError::new_err(format!(
                        "{NAME}, {name}, hours: a dictionary is wanted, the machines in the order of \
                         the route, such as {{'card': '3 h', 'mule': '10 h'}}"
                    ))
                })?;
                let one = |(machine, time): (Bound<'_, PyAny>, Bound<'_, PyAny>)| {
                    let machine = word(&machine, &format!("{name}, hours"))?;
                    let time = figure(&time, Kind::Duration, &format!("{name}, {machine}"))?;
                    Ok((machine, time))
                };
                hours = Some(all.iter().map(one).collect::<PyResult<Vec<_>>>()?);
            }
            key => return Err(unknown(&name, key, &["name", "colour", "lightness", "hours"])),
        }
    }
    let missing = |what: &str, example: &str| {
        NotationError::new_err(format!("{NAME}, {name}: {what} is missing; write {example}"))
    };
    let colour = colour.ok_or_else(|| missing("colour", "'colour': 'grey'"))?;
    let lightness = match light {
        Some(light) => light,
        None => mill::lightness(&colour).map_err(|e| raise(&e.at(format!("{NAME}, {name}"))))?,
    };
    let hours = hours.ok_or_else(|| missing("hours", "'hours': {'card': '3 h'}"))?;
    Ok(Lot { name, colour, lightness, hours })
}

fn read_machine(name: &str, said: &Bound<'_, PyDict>) -> PyResult<Machine> {
    let mut machine = Machine::new(name, f64::NAN);
    let (mut colour, mut light) = (None, None);
    for (key, value) in said.iter().filter(|(_, value)| !value.is_none()) {
        let key = word(&key, name)?;
        let place = format!("{name}, {key}");
        let time = || figure(&value, Kind::Duration, &place);
        match key.as_str() {
            "hours" => machine.hours = time()?,
            "clean_down" => machine.clean_down = time()?,
            "to_darker" => machine.to_darker = Some(time()?),
            "to_lighter" => machine.to_lighter = Some(time()?),
            "people" => machine.people = Some(figure(&value, Kind::Count, &place)?),
            "colour" => colour = Some(text(&value, &place)?),
            "lightness" => light = Some(lightness(&value, &place)?),
            "from_to" => {
                let wrong = || {
                    NotationError::new_err(format!(
                        "{NAME}, {place}: a dictionary of pairs is wanted, such as {{('black', \
                         'white'): '6 h'}}"
                    ))
                };
                let all = value.cast::<PyDict>().map_err(|_| wrong())?;
                for (pair, time) in all.iter() {
                    let pair = pair.cast_into::<PyTuple>().map_err(|_| wrong())?;
                    let (old, new): (String, String) = pair.extract().map_err(|_| wrong())?;
                    machine.from_to.push((old, new, figure(&time, Kind::Duration, &place)?));
                }
            }
            key => {
                const KNOWN: [&str; 8] = [
                    "hours",
                    "clean_down",
                    "to_darker",
                    "to_lighter",
                    "from_to",
                    "colour",
                    "lightness",
                    "people",
                ];
                return Err(unknown(name, key, &KNOWN));
            }
        }
    }
    if machine.hours.is_nan() {
        return Err(NotationError::new_err(format!(
            "{NAME}, {name}: hours are missing: how long it can run in the week; write 'hours': '40 h'"
        )));
    }
    if let Some(colour) = colour {
        let light = match light {
            Some(light) => light,
            None => {
                mill::lightness(&colour).map_err(|e| raise(&e.at(format!("{NAME}, {name}"))))?
            }
        };
        machine.colour = Some((colour, light));
    }
    Ok(machine)
}

/// week(lots, machines, order="light to dark", *, try_orders=False)
/// --
///
/// A week of lots over the machines: the order, when each lot is at each machine, what does not fit.
///
/// Each lot is a dictionary: `name`, `colour`, `hours` at each machine in the order of its route, and
/// `lightness` (0 for black to 100 for white) where the colour is no natural shade. `machines` says of
/// each the `hours` that it can run, its `clean_down` between colours, or `to_darker` and `to_lighter`,
/// or `from_to` for pairs of colours; the `colour` that is on it when the week begins; its `people`.
/// Lots pass all machines in one order: "light to dark", "dark to light" or "as given". With
/// `try_orders` all orders of lots as light as each other are tried; nothing else is called best.
///
/// >>> import hankwise as hw
/// >>> week = hw.mill.week(
/// ...     lots=[
/// ...         {"name": "Elm", "colour": "black", "hours": {"card": "10 h", "mule": "20 h"}},
/// ...         {"name": "Ash", "colour": "white", "hours": {"card": "6 h", "mule": "14 h"}},
/// ...     ],
/// ...     machines={
/// ...         "card": {"hours": "40 h", "clean_down": "2 h"},
/// ...         "mule": {"hours": "40 h", "clean_down": "1 h"},
/// ...     },
/// ... )
/// >>> week.order, week.bottleneck, week.beyond
/// (['Ash', 'Elm'], 'mule', {('Elm', 'mule'): 1.0})
#[pyfunction]
#[pyo3(
    signature = (lots, machines, order="light to dark", *, try_orders=false),
    text_signature = "(lots, machines, order=\"light to dark\", *, try_orders=False)"
)]
pub(crate) fn week(
    py: Python<'_>,
    lots: &Bound<'_, PyAny>,
    machines: &Bound<'_, PyAny>,
    order: &str,
    try_orders: bool,
) -> PyResult<Week> {
    const EXAMPLE: &str = "{'name': 'Ash', 'colour': 'white', 'hours': {'card': '6 h'}}";
    let lots = named(lots, NAME, "lots", EXAMPLE)?
        .into_iter()
        .map(|(name, said)| read_lot(name, &said))
        .collect::<PyResult<Vec<_>>>()?;
    let wrong = || {
        NotationError::new_err(format!(
            "{NAME}, machines: a dictionary is wanted, such as {{'card': {{'hours': '40 h', \
             'clean_down': '2 h'}}}}"
        ))
    };
    let mut all = Vec::new();
    for (name, said) in machines.cast::<PyDict>().map_err(|_| wrong())?.iter() {
        let name = word(&name, "machines")?;
        all.push(read_machine(&name, said.cast::<PyDict>().map_err(|_| wrong())?)?);
    }
    crate::call::warn(py, mill::doubts(&lots, &all))?;
    let order: Order = order.parse().map_err(|e: hankwise::Error| raise(&e.at(NAME)))?;
    let mut raised = None;
    let week = py.detach(|| {
        mill::week(&lots, &all, order, try_orders, &mut || {
            raised = Python::attach(|py| py.check_signals().err());
            raised.is_none()
        })
    });
    if let Some(error) = raised {
        return Err(error);
    }
    Ok(Week { week: week.map_err(|e| raise(&e.at(NAME)))? })
}

#[pymethods]
impl Week {
    /// The names of the lots in the order in which they are run.
    #[getter]
    fn order(&self) -> Vec<&str> {
        self.week.lots.iter().map(|lot| lot.name.as_str()).collect()
    }
    /// How they were put in order: "light to dark", "dark to light" or "as given".
    #[getter]
    fn ordered(&self) -> &'static str {
        self.week.order.words()
    }
    /// How many orders were tried; None where no other was.
    #[getter]
    fn tried(&self) -> Option<usize> {
        self.week.tried
    }
    /// When the last lot is done, in hours from the start.
    #[getter]
    fn finish(&self) -> f64 {
        self.week.finish()
    }
    /// The machine that is taken up most for its hours.
    #[getter]
    fn bottleneck(&self) -> &str {
        &self.week.bottleneck().name
    }
    /// By how many hours each lot runs beyond the week at a machine, by lot and machine.
    #[getter]
    fn beyond<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for (visit, by) in self.week.beyond() {
            let lot = self.week.lots[visit.lot].name.as_str();
            all.set_item((lot, self.week.machines[visit.machine].name.as_str()), by)?;
        }
        Ok(all)
    }
    /// Each lot at each machine, in hours from the start: `clean_from`, `cleaned`, `start`, `finish`.
    #[getter]
    fn visits(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for visit in &self.week.visits {
            let row = PyDict::new(py);
            let lot = &self.week.lots[visit.lot];
            row.set_item("lot", &lot.name)?;
            row.set_item("colour", &lot.colour)?;
            row.set_item("lightness", lot.lightness)?;
            row.set_item("machine", &self.week.machines[visit.machine].name)?;
            row.set_item("clean_from", visit.clean_from)?;
            row.set_item("cleaned", visit.cleaned)?;
            row.set_item("start", visit.start)?;
            row.set_item("finish", visit.finish)?;
            rows.push(row);
        }
        let mut report = self.week.report();
        report.blocks.truncate(1);
        Ok(Table::showing(PyList::new(py, rows)?, report))
    }
    /// Each machine: hours that it can run, of work, of cleaning, when the last lot leaves it, hours of
    /// people.
    #[getter]
    fn machines(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for machine in &self.week.machines {
            let row = PyDict::new(py);
            row.set_item("machine", &machine.name)?;
            row.set_item("hours", machine.hours)?;
            row.set_item("work", machine.work)?;
            row.set_item("cleaned", machine.cleaned)?;
            row.set_item("at_work", machine.at_work())?;
            row.set_item("taken", machine.taken())?;
            row.set_item("finish", machine.finish)?;
            row.set_item("beyond", machine.beyond())?;
            row.set_item("person_hours", machine.person_hours)?;
            rows.push(row);
        }
        let mut report = self.week.report();
        report.blocks.drain(..1);
        Ok(Table::showing(PyList::new(py, rows)?, report))
    }
    /// A figure of the week: a bar for each lot at each machine. Needs matplotlib; gives its Figure.
    #[pyo3(text_signature = "($self)")]
    fn plot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.py().import("hankwise._plot_week")?.call_method1("week_figure", (slf,))
    }
    fn __repr__(&self) -> String {
        self.week.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.week.report().html()
    }
}
