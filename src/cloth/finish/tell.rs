//! How the chain is shown: a row for each stage, what the mill looks at across.

use super::process::{Of, Process};
use super::state::{State, Step};
use super::work::{Cloth, From};
use crate::cloth;
use crate::number::{Number, V};
use crate::particulars::Desk;
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{
    AreaShrinkage, CoverFactor, Crimp, Kind, Length, LinearDensity, Mass, MassLoss, MassPerArea,
    OverWidth, Ratio, Sett, Shrinkage, Typed, Unit, unit,
};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// What there is to tell.
pub(super) struct Told<'a, 'g, 't> {
    pub(super) cloth: &'a Cloth<'a, 'g>,
    pub(super) processes: &'a [Process],
    pub(super) keys: &'a [String],
    pub(super) steps: &'a [Step<Worked<'t>>],
    pub(super) states: &'a [State<Worked<'t>>],
    /// Closest and heaviest, widest and lightest that samples leave possible.
    pub(super) bands: Option<&'a [Vec<State<f64>>; 2]>,
    pub(super) from: From,
}

/// A column of the table.
struct Column {
    name: &'static str,
    head: &'static str,
    words: &'static str,
    kind: Kind,
    /// In which it is shown where nobody gave it in another: metric, and beside inches.
    units: [&'static str; 2],
}

const fn column(
    name: &'static str,
    head: &'static str,
    words: &'static str,
    kind: Kind,
    units: [&'static str; 2],
) -> Column {
    Column { name, head, words, kind, units }
}

const COLUMNS: [Column; 13] = [
    column("width", "width", "width", Kind::Length, ["m", "in"]),
    column("length", "length", "length", Kind::Length, ["m", "yd"]),
    column("ends", "ends", "ends", Kind::Sett, ["threads/cm", "threads/in"]),
    column("picks", "picks", "picks", Kind::Sett, ["threads/cm", "threads/in"]),
    column("warp", "warp", "count of the warp", Kind::LinearDensity, ["tex"; 2]),
    column("weft", "weft", "count of the weft", Kind::LinearDensity, ["tex"; 2]),
    column("warp_crimp", "warp crimp", "crimp of the warp", Kind::Crimp, ["%"; 2]),
    column("weft_crimp", "weft crimp", "crimp of the weft", Kind::Crimp, ["%"; 2]),
    column("warp_cover", "warp cover", "cover factor of the warp", Kind::CoverFactor, ["K_SI"; 2]),
    column("weft_cover", "weft cover", "cover factor of the weft", Kind::CoverFactor, ["K_SI"; 2]),
    column("mass_per_area", "mass", "mass per area", Kind::MassPerArea, ["g/m²", "oz/yd²"]),
    column(
        "running_mass",
        "running",
        "mass of a running length",
        Kind::LinearDensity,
        ["g/m", "oz/yd"],
    ),
    column("mass", "piece", "mass of the piece", Kind::Mass, ["kg", "lb"]),
];

impl Column {
    /// The figure of a state.
    fn of<N: Number>(&self, state: &State<N>) -> Option<V<N>> {
        match self.name {
            "width" => state.width.map(Typed::v),
            "length" => state.length.map(Typed::v),
            "ends" => state.ends.map(Typed::v),
            "picks" => state.picks.map(Typed::v),
            "warp" => state.warp.map(Typed::v),
            "weft" => state.weft.map(Typed::v),
            "warp_crimp" => state.warp_crimp.map(Typed::v),
            "weft_crimp" => state.weft_crimp.map(Typed::v),
            "warp_cover" => state.warp_cover().map(Typed::v),
            "weft_cover" => state.weft_cover().map(Typed::v),
            "mass_per_area" => state.area.map(Typed::v),
            "running_mass" => state.running().map(Typed::v),
            _ => state.piece().map(Typed::v),
        }
    }
    /// Names the figure of a stage.
    fn name<'t>(&self, desk: &Desk<'t>, key: &str, when: &str, x: V<Worked<'t>>) {
        let (name, words) = (format!("{key}_{}", self.name), format!("{} {when}", self.words));
        match self.kind {
            Kind::Length => drop(desk.figure(&name, &words, Length::from(x))),
            Kind::Sett => drop(desk.figure(&name, &words, Sett::from(x))),
            Kind::LinearDensity => drop(desk.figure(&name, &words, LinearDensity::from(x))),
            Kind::Crimp => drop(desk.figure(&name, &words, Crimp::from(x))),
            Kind::CoverFactor => drop(desk.figure(&name, &words, CoverFactor::from(x))),
            Kind::MassPerArea => drop(desk.figure(&name, &words, MassPerArea::from(x))),
            _ => drop(desk.figure(&name, &words, Mass::from(x))),
        }
    }
    /// True of what is looked at in the yarn, not in the cloth.
    fn is_of_yarn(&self) -> bool {
        matches!(self.kind, Kind::Crimp | Kind::CoverFactor)
            || ["warp", "weft"].contains(&self.name)
    }
    /// Its heading with the unit: of setts the unit alone, as in ends/cm.
    fn heading(&self, symbol: &str) -> String {
        match symbol.split_once('/') {
            Some((_, per)) if self.kind == Kind::Sett => format!("{}/{per}", self.head),
            _ => format!("{}, {symbol}", self.head),
        }
    }
    /// The unit in which it is shown, and its name: that in which it was given.
    fn shown(&self, cloth: &Cloth<'_, '_>) -> Option<(&'static Unit, &'static str)> {
        let given = cloth.unit(self.name).map(|unit| (unit, unit.symbol));
        // Who gives the size of the cloth in inches or yards weighs it in ounces.
        let size = ["width", "length", "ends", "picks"].into_iter().find_map(|n| cloth.unit(n));
        let imperial = size.is_some_and(|u| matches!(u.symbol, "in" | "ft" | "yd" | "threads/in"));
        let other = self.units[usize::from(imperial)];
        given.or_else(|| unit(other, Some(self.kind)).ok().map(|unit| (unit, other)))
    }
}

/// Names the figures of the chain and says how they are shown.
pub(super) fn tell<'t>(desk: &Desk<'t>, told: &Told<'_, '_, 't>) -> Report {
    let stages: Vec<(&str, &str)> = std::iter::once(("loom", "off the loom"))
        .chain(told.keys.iter().map(String::as_str).zip(told.processes.iter().map(Process::name)))
        .collect();
    let block = |title: &str, of_yarn: bool| {
        let mut columns = vec![("stage".to_owned(), Left)];
        let mut rows: Vec<_> = stages.iter().map(|(_, name)| vec![(*name).to_owned()]).collect();
        for column in COLUMNS.iter().filter(|column| column.is_of_yarn() == of_yarn) {
            let figures: Option<Vec<_>> = told.states.iter().map(|s| column.of(s)).collect();
            let Some((figures, shown)) = figures.zip(column.shown(told.cloth)) else { continue };
            columns.push((column.heading(shown.1), Right));
            for (((key, stage), x), row) in stages.iter().zip(&figures).zip(&mut rows) {
                let when =
                    if *key == "loom" { (*stage).to_owned() } else { format!("after {stage}") };
                column.name(desk, key, &when, *x);
                row.push(figure(shown.0.from_base(x.value())));
            }
            column.name(desk, "finished", "when finished", figures[figures.len() - 1]);
        }
        Block { title: title.to_owned(), columns, rows, ..Block::default() }
    };
    for caution in ["hot liquor", "steam", "machines"] {
        desk.beware(caution);
    }
    let blocks = [block("the cloth, stage by stage", false), block("the yarn in it", true)];
    let mut blocks: Vec<Block> = blocks.into_iter().filter(|b| b.columns.len() > 1).collect();
    let title = match told.from {
        From::Loom => "From the loom to the finished cloth",
        From::Finished => "What to weave for the finished cloth",
    };
    if let Some(last) = blocks.last_mut() {
        last.foot = bands(told).into_iter().chain(assumed(told)).collect();
    }
    blocks.insert(0, changes(desk, told));
    Report { title: title.to_owned(), blocks }
}

/// What each process does, and all together.
fn changes<'t>(desk: &Desk<'t>, told: &Told<'_, '_, 't>) -> Block {
    let columns = ["width", "length", "mass"].map(|head| (head.to_owned(), Right));
    let columns = std::iter::once(("lost, on what it was before".to_owned(), Left)).chain(columns);
    let cell = |x: Option<f64>| x.map_or_else(|| "–".to_owned(), |x| of_kind(x, Kind::Shrinkage));
    let mut rows: Vec<Vec<String>> = told
        .processes
        .iter()
        .map(|process| {
            let cells = [Of::Width, Of::Length, Of::Mass].map(|of| cell(process.figure(of.name())));
            std::iter::once(process.name().to_owned()).chain(cells).collect()
        })
        .collect();
    let all = |of: fn(&Step<Worked<'t>>) -> Option<Shrinkage<Worked<'t>>>| {
        let some: Vec<_> = told.steps.iter().filter_map(of).collect();
        (!some.is_empty()).then(|| cloth::compounded_shrinkage(&some))
    };
    let width = all(|s| s.width)
        .map(|s| desk.figure("width_shrinkage", "shrinkage in width, compounded", s));
    let length = all(|s| s.length)
        .map(|s| desk.figure("length_shrinkage", "shrinkage in length, compounded", s));
    let kept = told.steps.iter().filter_map(|s| s.loss).map(|m| 1.0 - m.v());
    let kept = kept.reduce(|all, one| all * one);
    let loss =
        kept.map(|kept| desk.figure("loss", "mass lost, compounded", MassLoss::from(1.0 - kept)));
    let mut foot = Vec::new();
    if let Some(width) = width {
        let over: OverWidth<_> = cloth::over_width_for_shrinkage(width);
        let over = desk.figure("over_width", "woven wider than finished", over);
        foot.push(format!(
            "woven {} wider than finished, on the finished width",
            of_kind(over.value(), Kind::OverWidth)
        ));
    }
    if let (Some(width), Some(length)) = (width, length) {
        let area: AreaShrinkage<_> = cloth::area_shrinkage(width, length);
        let area = desk.figure("area_shrinkage", "area lost", area);
        foot.push(format!("area lost {}", of_kind(area.value(), Kind::AreaShrinkage)));
    }
    if width.is_some() || length.is_some() || kept.is_some() {
        let left = [width, length].into_iter().flatten().map(|s| 1.0 - s.v());
        let left = left.reduce(|a, b| a * b);
        let one = || V::constant(1.0);
        let times = kept.unwrap_or_else(one) / left.unwrap_or_else(one);
        let times = desk.figure(
            "mass_per_area_factor",
            "mass per area after over before",
            Ratio::from(times),
        );
        foot.push(format!("mass per area × {}", figure(times.value())));
    }
    if told.processes.len() > 1 {
        let cells =
            [width.map(Shrinkage::value), length.map(Shrinkage::value), loss.map(MassLoss::value)];
        rows.push(std::iter::once("together".to_owned()).chain(cells.map(cell)).collect());
    }
    Block {
        title: "what each process does".to_owned(),
        columns: columns.collect(),
        rows,
        foot,
        ..Block::default()
    }
}

/// Between which figures the answer lies, where samples say what a process does.
fn bands(told: &Told<'_, '_, '_>) -> Vec<String> {
    let Some(ends) = told.bands else { return Vec::new() };
    let (place, when) = match told.from {
        From::Loom => (told.states.len() - 1, "finished"),
        From::Finished => (0, "off the loom"),
    };
    let words = COLUMNS.iter().filter_map(|column| {
        let (unit, symbol) = column.shown(told.cloth)?;
        let [a, b] = ends.each_ref().map(|states| column.of(&states[place]).map(V::value));
        let [a, b] = [a?, b?].map(|x| unit.from_base(x));
        let (low, high) = (a.min(b), a.max(b));
        let spread = high - low > 1e-9 * high.abs();
        spread.then(|| format!("{} {} to {} {}", column.head, figure(low), figure(high), symbol))
    });
    let words: Vec<String> = words.collect();
    if words.is_empty() {
        return words;
    }
    vec![format!("possible {when} as far as the samples tell: {}", words.join("; "))]
}

/// What was taken for granted, and what could not be told.
fn assumed(told: &Told<'_, '_, '_>) -> Vec<String> {
    let mut out = Vec::new();
    let state = &told.states[0];
    let by_cloth =
        |size: Option<Shrinkage<_>>, yarn: Option<Shrinkage<_>>| size.is_some() && yarn.is_none();
    let warp = told.steps.iter().any(|s| by_cloth(s.length, s.warp_yarn));
    let weft = told.steps.iter().any(|s| by_cloth(s.width, s.weft_yarn));
    let shortened = [
        (warp && state.warp.is_some()).then_some("warp"),
        (weft && state.weft.is_some()).then_some("weft"),
    ];
    let shortened: Vec<&str> = shortened.into_iter().flatten().collect();
    if !shortened.is_empty() {
        let yarns = shortened.iter().map(|n| format!("{n}_yarn")).collect::<Vec<_>>().join(", ");
        out.push(format!(
            "the crimp of the {} is taken as unchanged: the yarn shortens with the cloth; where it keeps \
             its length or shrinks by itself, say so ({yarns})",
            shortened.join(" and ")
        ));
    }
    if state.area.is_none() && (state.ends.is_some() || state.warp.is_some()) {
        out.push(
            "no mass per area: it wants mass_per_area, or mass with width and length, or ends, picks, \
             warp, weft and both crimps"
                .to_owned(),
        );
    }
    out
}
