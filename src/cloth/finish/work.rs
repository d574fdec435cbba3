//! The chain of processes: from the loom to the finished cloth, and back.

use super::process::Process;
use super::state::{State, Step};
use super::tell::{self, Told};
use crate::error::{Error, Result, did_you_mean};
use crate::number::{Number, V};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::with_unit;
use crate::quantity::{Amount, Crimp, Kind, Length, LinearDensity, Mass, MassPerArea, Sett, Typed};
use crate::worked::Worked;

/// A figure that may be known of a cloth in finishing.
#[derive(Clone, Copy, Debug)]
pub struct KnownInFinishing {
    /// Its name.
    pub name: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    pub(super) symbol: &'static str,
}

const fn known(
    name: &'static str,
    symbol: &'static str,
    words: &'static str,
    kind: Kind,
) -> KnownInFinishing {
    KnownInFinishing { name, words, kind, symbol }
}

/// What may be known of a cloth before or after its finishing.
pub static KNOWN_IN_FINISHING: [KnownInFinishing; 10] = [
    known("width", "b", "width", Kind::Length),
    known("length", "L", "length", Kind::Length),
    known("ends", "n_1", "ends", Kind::Sett),
    known("picks", "n_2", "picks", Kind::Sett),
    known("warp", "T_1", "count of the warp", Kind::LinearDensity),
    known("weft", "T_2", "count of the weft", Kind::LinearDensity),
    known("warp_crimp", "c_1", "crimp of the warp", Kind::Crimp),
    known("weft_crimp", "c_2", "crimp of the weft", Kind::Crimp),
    known("mass_per_area", "w", "mass per area", Kind::MassPerArea),
    known("mass", "m", "mass of the piece", Kind::Mass),
];

/// The figure of a cloth in finishing that a name stands for; one that is not known is refused.
pub fn known_in_finishing(name: &str) -> Result<&'static KnownInFinishing> {
    let names = || KNOWN_IN_FINISHING.iter().map(|k| k.name);
    KNOWN_IN_FINISHING.iter().find(|k| k.name == name).ok_or_else(|| {
        let near = did_you_mean(name, names())
            .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
        let all = names().collect::<Vec<_>>().join(", ");
        Error::notation(format!(
            "'{name}' is no figure of a cloth in finishing{near}; there are {all}"
        ))
    })
}

/// A figure as it was given: its name, the quantity and the text.
pub(super) type Given<'a> = (&'a str, Amount, Option<String>);

/// How far a mass per area that was given may be from that of the threads before it is doubted.
const DOUBTED: f64 = 0.1;

/// The given figures by name.
pub(super) struct Cloth<'a, 'g> {
    given: &'a [Given<'g>],
}

impl<'a, 'g> Cloth<'a, 'g> {
    fn new(given: &'a [Given<'g>]) -> Result<Self> {
        for (k, (name, amount, _)) in given.iter().enumerate() {
            let known = known_in_finishing(name)?;
            if given[..k].iter().any(|other| other.0 == *name) {
                return Err(Error::notation(format!("{name} is given twice; leave one out")));
            }
            known.kind.check(amount.base()).map_err(|e| e.at(name))?;
        }
        if given.is_empty() {
            let all = KNOWN_IN_FINISHING.each_ref().map(|k| k.name).join(", ");
            return Err(Error::notation(format!(
                "nothing is known of the cloth; give at least one of {all}, such as width='1.60 m'"
            )));
        }
        Ok(Cloth { given })
    }

    /// The unit in which a figure was given.
    pub(super) fn unit(&self, name: &str) -> Option<&'static crate::quantity::Unit> {
        self.given.iter().find(|g| g.0 == name).map(|g| g.1.unit)
    }

    /// The state of the cloth, each figure from where `take` has it.
    fn state<N: Number>(&self, take: impl Fn(&KnownInFinishing, &Given<'_>) -> V<N>) -> State<N> {
        let of = |name: &str| {
            let known = KNOWN_IN_FINISHING.iter().find(|k| k.name == name)?;
            self.given.iter().find(|g| g.0 == name).map(|given| take(known, given))
        };
        let mut state = State {
            width: of("width").map(Length::from),
            length: of("length").map(Length::from),
            ends: of("ends").map(Sett::from),
            picks: of("picks").map(Sett::from),
            warp: of("warp").map(LinearDensity::from),
            weft: of("weft").map(LinearDensity::from),
            warp_crimp: of("warp_crimp").map(Crimp::from),
            weft_crimp: of("weft_crimp").map(Crimp::from),
            area: of("mass_per_area").map(MassPerArea::from),
            mass: of("mass").map(Mass::from),
        };
        let by_piece = |state: &State<N>| {
            let area = state.width?.v() * state.length?.v();
            Some(MassPerArea::from(1000.0 * state.mass?.v() / area))
        };
        state.area = state.area.or_else(|| by_piece(&state)).or_else(|| state.area_of_threads());
        state
    }

    fn plain(&self) -> State<f64> {
        self.state(|_, given| V(given.1.base()))
    }

    fn enter<'t>(&self, desk: &Desk<'t>) -> State<Worked<'t>> {
        fn one<'t, Q: Typed<Worked<'t>>>(
            desk: &Desk<'t>,
            known: &KnownInFinishing,
            (_, amount, typed): &Given<'_>,
        ) -> V<Worked<'t>> {
            desk.given::<Q>(known.name, known.symbol, known.words, amount, typed.clone()).v()
        }
        self.state(|known, given| match known.kind {
            Kind::Length => one::<Length<_>>(desk, known, given),
            Kind::Sett => one::<Sett<_>>(desk, known, given),
            Kind::LinearDensity => one::<LinearDensity<_>>(desk, known, given),
            Kind::Crimp => one::<Crimp<_>>(desk, known, given),
            Kind::MassPerArea => one::<MassPerArea<_>>(desk, known, given),
            _ => one::<Mass<_>>(desk, known, given),
        })
    }
}

/// Whether the cloth is known on the loom or finished.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum From {
    Loom,
    Finished,
}

/// The states from the loom to the finished cloth.
fn states<N: Number>(known: State<N>, steps: &[Step<N>], from: From) -> Vec<State<N>> {
    let mut states = vec![known];
    match from {
        From::Loom => {
            for step in steps {
                states.push(states[states.len() - 1].after(step));
            }
        }
        From::Finished => {
            for step in steps.iter().rev() {
                states.push(states[states.len() - 1].before(step));
            }
            states.reverse();
        }
    }
    states
}

/// What finishing makes of a cloth that comes off the loom so: width and length, sett, count, mass after
/// each process.
///
/// What is known is given under the names of [`KNOWN_IN_FINISHING`], with the text where there was one;
/// as much comes out as that allows.
///
/// ```
/// use hankwise::cloth::{Process, finishing};
/// use hankwise::quantity::{Kind, parse, parse_as};
///
/// let mut mill = Process::new("mill")?;
/// mill.set("width", parse_as("18 %", Kind::Shrinkage)?, None)?;
/// let mut tenter = Process::new("tenter")?;
/// tenter.set("width", parse_as("-4 %", Kind::Shrinkage)?, None)?;
/// let cloth = finishing(&[mill, tenter], &[("width", parse("1.80 m")?, None)])?;
/// assert_eq!(format!("{:.4}", cloth.find("mill_width")?.value), "1.4760");
/// assert_eq!(format!("{:.4}", cloth.find("finished_width")?.value), "1.5350");
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn finishing(
    processes: &[Process],
    loom: &[(&str, Amount, Option<String>)],
) -> Result<Particulars> {
    work(processes, loom, None, From::Loom)
}

/// What to weave for a wanted finished cloth: the same chain backward.
///
/// `widest` is the widest that the loom weaves, where that matters.
pub fn to_weave(
    processes: &[Process],
    finished: &[(&str, Amount, Option<String>)],
    widest: Option<Amount>,
) -> Result<Particulars> {
    work(processes, finished, widest, From::Finished)
}

fn work(
    processes: &[Process],
    given: &[Given<'_>],
    widest: Option<Amount>,
    from: From,
) -> Result<Particulars> {
    if processes.is_empty() {
        return Err(Error::notation(
            "no process is given; give the processes in their order, such as [('mill', {'width': \
             '18 %', 'length': '12 %'}), ('press', {})]",
        ));
    }
    let cloth = Cloth::new(given)?;
    let keys = keys(processes);
    let plain = |end| {
        let steps: Vec<Step<f64>> = processes.iter().map(|p| p.step(end)).collect();
        states(cloth.plain(), &steps, from)
    };
    check_crimps(processes, &plain(None))?;
    // A sample leaves a band: closest and heaviest at one end of it, widest and lightest at the other.
    let bands =
        processes.iter().any(Process::is_found).then(|| [Some(true), Some(false)].map(plain));
    Particulars::work(|desk| {
        for process in processes {
            process.warnings().into_iter().for_each(|w| desk.warn(w));
        }
        let steps: Vec<_> =
            processes.iter().zip(&keys).map(|(p, key)| p.enter(desk, key)).collect();
        let known = cloth.enter(desk);
        if let (Some(threads), true) = (
            known.area_of_threads(),
            cloth.unit("mass_per_area").is_some() || cloth.unit("mass").is_some(),
        ) && let Some(area) = known.area
        {
            let off = area.value() / threads.value() - 1.0;
            if off.abs() > DOUBTED {
                desk.warn(format!(
                    "the mass per area is {} g/m² by what was given and {} g/m² by the threads; the first \
                     is taken: look at setts, counts, crimps and what else is on the yarn",
                    crate::quantity::print::figure(area.value()),
                    crate::quantity::print::figure(threads.value())
                ));
            }
        }
        let told = Told {
            cloth: &cloth,
            processes,
            keys: &keys,
            steps: &steps,
            states: &states(known, &steps, from),
            bands: bands.as_ref(),
            from,
        };
        let report = tell::tell(desk, &told);
        if let (Some(widest), Some(width)) = (widest, told.states[0].width) {
            limit(desk, widest, width, &steps);
        }
        Ok(report)
    })
}

/// Says what the loom can do where more is wanted.
fn limit<'t>(
    desk: &Desk<'t>,
    widest: Amount,
    width: Length<Worked<'t>>,
    steps: &[Step<Worked<'t>>],
) {
    let loom: Length<Worked<'t>> =
        desk.given("widest", "B_m", "widest that the loom weaves", &widest, None);
    let from = State { width: Some(loom), ..State::UNKNOWN };
    let finished = states(from, steps, From::Loom);
    let Some(most) = finished[finished.len() - 1].width else { return };
    let most = desk.figure("widest_finished", "widest that can be finished from this loom", most);
    if width.value() > loom.value() * (1.0 + 1e-12) {
        let unit = widest.unit;
        let say = |x: f64| with_unit(unit.from_base(x), unit.symbol);
        desk.warn(format!(
            "{} would have to be woven and the loom weaves {} at most, which finishes at {}; weave \
             narrower, in two panels or double width",
            say(width.value()),
            say(loom.value()),
            say(most.value())
        ));
    }
}

/// A yarn cannot be shorter than the cloth that it lies in.
fn check_crimps(processes: &[Process], states: &[State<f64>]) -> Result<()> {
    for (k, state) in states.iter().enumerate() {
        for (thread, crimp) in [("warp", state.warp_crimp), ("weft", state.weft_crimp)] {
            if let Some(c) = crimp.filter(|c| c.value() < -1e-9) {
                let when = match k {
                    0 => "on the loom".to_owned(),
                    k => format!("after {}", processes[k - 1].name()),
                };
                return Err(Error::range(format!(
                    "the crimp of the {thread} would be {} {when}: the yarn cannot be shorter than the \
                     cloth; let the yarn shrink nearer to the cloth ({thread}_yarn), or look at the crimp",
                    crate::quantity::print::of_kind(c.value(), Kind::Crimp)
                )));
            }
        }
    }
    Ok(())
}

/// The names of the stages as figures bear them: one for each, never twice the same.
fn keys(processes: &[Process]) -> Vec<String> {
    let mut keys = vec!["loom".to_owned(), "finished".to_owned()];
    for process in processes {
        let name = process.name().to_lowercase();
        let words = name.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty());
        let key = words.collect::<Vec<_>>().join("_");
        let free = |key: &String| !keys.contains(key);
        let numbered = (2..).map(|k| format!("{key}_{k}"));
        let key = std::iter::once(key.clone()).chain(numbered).find(free).unwrap_or(key);
        keys.push(key);
    }
    keys.split_off(2)
}
