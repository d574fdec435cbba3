//! A process of finishing: what it does to width, length and mass.

use super::sample::Measured;
use super::state::Step;
use crate::cloth;
use crate::cloth::tables::finishing::FINISHING_PROCESSES;
use crate::error::{Error, Result, did_you_mean};
use crate::number::{Number, V};
use crate::particulars::Desk;
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Amount, DimensionalChange, Fraction, Kind, MassLoss, OverWidth, Shrinkage};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// What a figure of a process is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Of {
    Width,
    Length,
    Mass,
    WarpYarn,
    WeftYarn,
}

impl Of {
    pub(super) const ALL: [Of; 5] = [Of::Width, Of::Length, Of::Mass, Of::WarpYarn, Of::WeftYarn];
    /// The name of the figure among a process's.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Of::Width => "width",
            Of::Length => "length",
            Of::Mass => "loss",
            Of::WarpYarn => "warp_yarn",
            Of::WeftYarn => "weft_yarn",
        }
    }
    pub(super) const fn words(self) -> &'static str {
        match self {
            Of::Width => "shrinkage in width",
            Of::Length => "shrinkage in length",
            Of::Mass => "loss of mass",
            Of::WarpYarn => "shrinkage of the warp yarn",
            Of::WeftYarn => "shrinkage of the weft yarn",
        }
    }
}

/// A figure that may be said of a process.
#[derive(Clone, Copy, Debug)]
pub struct SaidOfProcess {
    /// Its name.
    pub name: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    symbol: &'static str,
    of: Of,
}

const fn said(
    name: &'static str,
    symbol: &'static str,
    words: &'static str,
    kind: Kind,
    of: Of,
) -> SaidOfProcess {
    SaidOfProcess { name, words, kind, symbol, of }
}

/// What may be said of a process: a shrinkage on the size before it, or the same in another form.
pub static SAID_OF_PROCESS: [SaidOfProcess; 10] = [
    said("width", "s_w", "shrinkage in width", Kind::Shrinkage, Of::Width),
    said("length", "s_l", "shrinkage in length", Kind::Shrinkage, Of::Length),
    said("loss", "m", "mass lost", Kind::MassLoss, Of::Mass),
    said("gain", "g", "mass gained: flock, size, a finish", Kind::Fraction, Of::Mass),
    said("over_width", "x_w", "how much wider before than after", Kind::OverWidth, Of::Width),
    said("over_length", "x_l", "how much longer before than after", Kind::OverWidth, Of::Length),
    said("width_change", "D_w", "change of width (ISO 5077)", Kind::DimensionalChange, Of::Width),
    said(
        "length_change",
        "D_l",
        "change of length (ISO 5077)",
        Kind::DimensionalChange,
        Of::Length,
    ),
    said("warp_yarn", "s_1", "shrinkage of the warp yarn itself", Kind::Shrinkage, Of::WarpYarn),
    said("weft_yarn", "s_2", "shrinkage of the weft yarn itself", Kind::Shrinkage, Of::WeftYarn),
];

/// A figure in whatever form it was said, turned into a loss: a shrinkage, a loss of mass.
fn turned<N: Number>(x: V<N>, kind: Kind) -> V<N> {
    match kind {
        Kind::OverWidth => cloth::shrinkage_of_over_width(OverWidth::from(x)).v(),
        Kind::DimensionalChange => {
            cloth::shrinkage_from_dimensional_change(DimensionalChange::from(x)).v()
        }
        Kind::Fraction => 0.0 - x,
        _ => x,
    }
}

/// Where a figure of a process is from.
#[derive(Clone, Debug, PartialEq)]
enum Origin {
    Said(SaidOfProcess, Amount, Option<String>),
    Found(Measured),
}

impl PartialEq for SaidOfProcess {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

/// A process of finishing: scouring, milling, raising, cropping, tentering, pressing, or one of the
/// mill's own.
#[derive(Clone, Debug, PartialEq)]
pub struct Process {
    name: String,
    origins: [Option<Origin>; 5],
}

/// Names of processes that have a usual range, and other words for them.
const KNOWN: [(&str, &[&str]); 10] = [
    ("relax", &["relaxing", "draw in", "off loom", "off the loom"]),
    ("scour", &["scouring"]),
    ("mill", &["milling", "full", "fulling", "waulk", "waulking"]),
    ("wash", &["washing", "wet finish", "wet finishing"]),
    ("raise", &["raising", "nap", "napping", "brush", "brushing"]),
    ("crop", &["cropping", "shear", "shearing"]),
    ("tenter", &["tentering", "stenter", "stentering"]),
    ("dry", &["drying"]),
    ("steam", &["steaming", "blow", "blowing", "decatise", "decatising", "decatize", "decatizing"]),
    ("press", &["pressing", "calender", "calendering"]),
];

/// The process that a word of the trade stands for.
fn known(name: &str) -> Option<&'static str> {
    let name = name.trim().to_lowercase().replace(['-', '_'], " ");
    let named =
        |(main, others): &(&'static str, &[&str])| *main == name || others.contains(&name.as_str());
    KNOWN.iter().find(|k| named(k)).map(|k| k.0)
}

impl Process {
    /// A process by its name, of which nothing is said yet: it changes nothing.
    pub fn new(name: &str) -> Result<Process> {
        let name = name.trim();
        if !name.chars().any(char::is_alphanumeric) {
            return Err(Error::notation(format!(
                "'{name}' is no name of a process; write one like 'mill', or your own word for it"
            )));
        }
        Ok(Process { name: name.to_owned(), origins: [const { None }; 5] })
    }

    /// What the name of a figure stands for; a name that is not known is refused.
    pub fn said(name: &str) -> Result<&'static SaidOfProcess> {
        SAID_OF_PROCESS.iter().find(|s| s.name == name).ok_or_else(|| {
            let names = SAID_OF_PROCESS.each_ref().map(|s| s.name);
            let near = match name {
                "mass" | "weight" => "; write a 'loss' or a 'gain' of mass".to_owned(),
                _ => did_you_mean(name, names)
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?")),
            };
            Error::notation(format!(
                "'{name}' is nothing that is said of a process{near}; there are {}",
                names.join(", ")
            ))
        })
    }

    /// Says a figure of the process; `typed` is the text, where there was one.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let said = Process::said(name)?;
        said.kind.check(amount.base()).map_err(|e| e.at(format_args!("{}: {name}", self.name)))?;
        if let Some(other) = &self.origins[said.of as usize] {
            let other = match other {
                Origin::Said(other, ..) => other.name,
                Origin::Found(_) => "the sample",
            };
            return Err(Error::notation(format!(
                "{}: {other} and {name} both give the {}; leave one out",
                self.name,
                said.of.words()
            )));
        }
        self.origins[said.of as usize] = Some(Origin::Said(*said, amount, typed));
        Ok(())
    }

    pub(super) fn found(&mut self, of: Of, measured: Measured) {
        self.origins[of as usize] = Some(Origin::Found(measured));
    }

    /// The name.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// A figure of the process as a loss, in the base unit: the shrinkage in `width` and `length`, the
    /// `loss` of mass, the shrinkages `warp_yarn` and `weft_yarn`; none where nothing was said.
    pub fn figure(&self, name: &str) -> Option<f64> {
        self.plain(Of::ALL.into_iter().find(|of| of.name() == name)?)
    }

    /// The lowest and highest that a sample leaves possible; both the figure itself where it was said.
    pub fn band(&self, name: &str) -> Option<(f64, f64)> {
        self.bounds(Of::ALL.into_iter().find(|of| of.name() == name)?)
    }

    fn plain(&self, of: Of) -> Option<f64> {
        Some(match self.origins[of as usize].as_ref()? {
            Origin::Said(said, amount, _) => turned(V(amount.base()), said.kind).value(),
            Origin::Found(measured) => measured.likely(),
        })
    }

    fn bounds(&self, of: Of) -> Option<(f64, f64)> {
        match self.origins[of as usize].as_ref()? {
            Origin::Said(..) => self.plain(of).map(|x| (x, x)),
            Origin::Found(measured) => Some(measured.band()),
        }
    }

    /// True where a figure of it comes from a sample.
    pub(super) fn is_found(&self) -> bool {
        self.origins.iter().flatten().any(|o| matches!(o, Origin::Found(_)))
    }

    fn step_of<N: Number>(loss: impl Fn(Of) -> Option<V<N>>) -> Step<N> {
        Step {
            width: loss(Of::Width).map(Shrinkage::from),
            length: loss(Of::Length).map(Shrinkage::from),
            loss: loss(Of::Mass).map(MassLoss::from),
            warp_yarn: loss(Of::WarpYarn).map(Shrinkage::from),
            weft_yarn: loss(Of::WeftYarn).map(Shrinkage::from),
        }
    }

    /// The step in plain figures: as likely, or at one end of what a sample leaves possible, either
    /// with the most shrinkage and the least loss of mass or the reverse.
    pub(super) fn step(&self, end: Option<bool>) -> Step<f64> {
        Process::step_of(|of| {
            let Some(closer) = end else { return self.plain(of).map(V) };
            let (low, high) = self.bounds(of)?;
            Some(V(if closer == (of != Of::Mass) { high } else { low }))
        })
    }

    /// The step on a desk, from what was said or measured.
    pub(super) fn enter<'t>(&self, desk: &Desk<'t>, key: &str) -> Step<Worked<'t>> {
        Process::step_of(|of| {
            Some(match self.origins[of as usize].as_ref()? {
                Origin::Found(measured) => measured.enter(desk, &format!("{}_by_{key}", of.name())),
                Origin::Said(said, amount, typed) => {
                    let name = format!("{}_by_{key}", said.name);
                    let (symbol, typed) = (said.symbol, typed.clone());
                    let x = match said.kind {
                        Kind::OverWidth => {
                            desk.given::<OverWidth<_>>(&name, symbol, said.words, amount, typed).v()
                        }
                        Kind::DimensionalChange => desk
                            .given::<DimensionalChange<_>>(&name, symbol, said.words, amount, typed)
                            .v(),
                        Kind::Fraction => {
                            desk.given::<Fraction<_>>(&name, symbol, said.words, amount, typed).v()
                        }
                        Kind::MassLoss => {
                            desk.given::<MassLoss<_>>(&name, symbol, said.words, amount, typed).v()
                        }
                        _ => {
                            desk.given::<Shrinkage<_>>(&name, symbol, said.words, amount, typed).v()
                        }
                    };
                    turned(x, said.kind)
                }
            })
        })
    }

    /// What is unusual of the process, and what is doubtful about its sample.
    pub fn warnings(&self) -> Vec<String> {
        let mut out = Vec::new();
        let Process { name, .. } = self;
        let known = known(name);
        if known.is_none() {
            let words = KNOWN.iter().flat_map(|k| std::iter::once(k.0).chain(k.1.iter().copied()));
            if let Some(near) = did_you_mean(name, words) {
                out.push(format!(
                    "'{name}' is taken as a process of your own, without a usual range; did you mean \
                     '{near}'?"
                ));
            }
        }
        for of in Of::ALL {
            if let Some(Origin::Found(measured)) = &self.origins[of as usize] {
                out.extend(measured.doubts().map(|d| format!("{name}: {d}")));
            }
            let (Some(known), Some(x)) = (known, self.plain(of)) else { continue };
            let usual = FINISHING_PROCESSES.figures.iter().find(|f| f.of == [known, of.name()]);
            if let Some(usual) = usual.filter(|u| !u.holds(x)) {
                let kind = if of == Of::Mass { Kind::MassLoss } else { Kind::Shrinkage };
                let note =
                    if usual.note.is_empty() { String::new() } else { format!("; {}", usual.note) };
                out.push(format!(
                    "{name}: a {} of {} is outside the usual {} % (source: {}{note})",
                    of.words(),
                    of_kind(x, kind),
                    usual.words(),
                    usual.source
                ));
            }
        }
        out
    }

    /// What the process does, in every form in which it is said.
    pub fn report(&self) -> Report {
        let percent = |x: f64| of_kind(x, Kind::Shrinkage);
        let mut rows = Vec::new();
        for of in Of::ALL {
            let (Some(x), Some((low, high))) = (self.plain(of), self.bounds(of)) else { continue };
            let (over, change) = match of {
                Of::Width | Of::Length => (percent(x / (1.0 - x)), percent(0.0 - x)),
                _ => (String::new(), String::new()),
            };
            let band = if low < high {
                format!("{} to {}", percent(low), percent(high))
            } else {
                String::new()
            };
            rows.push(vec![of.words().to_owned(), percent(x), band, over, change]);
        }
        let mut foot = Vec::new();
        let gone = |of| self.plain(of).unwrap_or(0.0);
        let left = (1.0 - gone(Of::Width)) * (1.0 - gone(Of::Length));
        if self.plain(Of::Width).is_some() && self.plain(Of::Length).is_some() {
            foot.push(format!("area lost {}", percent(1.0 - left)));
        }
        foot.push(if rows.is_empty() {
            "nothing was said of it: it changes nothing".to_owned()
        } else {
            format!("mass per area × {}", figure((1.0 - gone(Of::Mass)) / left))
        });
        for of in Of::ALL {
            if let Some(Origin::Found(measured)) = &self.origins[of as usize] {
                foot.push(format!("{}: {}", of.words(), measured.words()));
            }
        }
        let columns = [
            ("", Left),
            ("on the size before", Right),
            ("possible", Right),
            ("on the size after", Right),
            ("ISO 5077", Right),
        ];
        let columns = columns.map(|(name, align)| (name.to_owned(), align)).to_vec();
        let title = "what it does to the cloth".to_owned();
        let block = Block { title, columns, rows, foot, ..Block::default() };
        Report { title: self.name.clone(), blocks: vec![block] }
    }
}
