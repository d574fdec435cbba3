//! A weave in tables.

use super::{Draft, System, Weave};
use crate::quantity::print::figure;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Repeats that are written out in a report.
const DRAWN: usize = 32;
/// Numbers of a list that are written out.
const LISTED: usize = 40;

fn listed(numbers: impl ExactSizeIterator<Item = String>) -> String {
    let more = numbers.len().saturating_sub(LISTED);
    let text = numbers.take(LISTED).collect::<Vec<_>>().join(" ");
    if more > 0 { format!("{text} … and {more} more") } else { text }
}

impl Weave {
    /// Lowest and highest threads to an interlacing among the threads of a system: far apart in a
    /// crepe.
    pub fn float_spread(&self, system: System) -> (f64, f64) {
        let each = self.average_floats(system);
        each.iter().fold((f64::INFINITY, 0.0), |(low, high), f| (f.min(low), f.max(high)))
    }

    /// What there is to say of the weave.
    pub fn report(&self) -> Report {
        let mut lead = vec![format!(
            "repeat of {} ends × {} picks; {}, {} % of the crossings warp up",
            self.ends(),
            self.picks(),
            self.balance(),
            figure(100.0 * self.warp_up())
        )];
        if self.ends().max(self.picks()) <= DRAWN {
            lead.push(
                "As drawn, the first pick at the bottom, the first end on the left, ■ warp up:"
                    .to_owned(),
            );
            let line = |row: String| row.replace('1', "■").replace('0', "·");
            lead.extend(self.rows().into_iter().rev().map(line));
        }
        let both = |what: &str, of: &dyn Fn(System) -> String| {
            vec![what.to_owned(), of(System::Warp), of(System::Weft)]
        };
        let range =
            |low: String, high: String| if low == high { low } else { format!("{low} to {high}") };
        let rows = vec![
            both("intersections of a thread in the repeat", &|system| {
                let each = self.interlacings(system);
                let end = |n: Option<&usize>| n.copied().unwrap_or(0).to_string();
                range(end(each.iter().min()), end(each.iter().max()))
            }),
            both("average float, F", &|system| figure(self.average_float(system))),
            both("F from thread to thread", &|system| {
                let (low, high) = self.float_spread(system);
                range(figure(low), figure(high))
            }),
            both("longest float", &|system| self.longest_float(system).length.to_string()),
            both("Ashenhurst's R/(R + I) for their sett", &|system| {
                figure(self.ashenhurst_ratio(system))
            }),
        ];
        let whole = |what: &str, x: f64| vec![what.to_owned(), figure(x), String::new()];
        let columns = [("", Left), ("ends", Right), ("picks", Right)];
        let block = |title: &str, rows| Block {
            title: title.to_owned(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows,
            ..Block::default()
        };
        let mut threads = block("Threads", rows);
        threads.foot.push(format!(
            "Longest: {}; {}.",
            self.longest_float(System::Warp).place(),
            self.longest_float(System::Weft).place()
        ));
        let mut cloth = block(
            "Cloth",
            vec![
                whole("interlacement ratio (plain is 1)", self.interlacement_ratio()),
                whole("crossing-over firmness factor", self.crossing_firmness()),
                whole("floating-yarn factor", self.floating_factor()),
            ],
        );
        cloth.columns = vec![(String::new(), Left), (String::new(), Right), (String::new(), Right)];
        cloth.foot.push(
            "The two factors are from memory, to be confirmed in print; together they are 2."
                .to_owned(),
        );
        let title = self.to_string();
        let first = Block { title: String::from("Repeat"), lead, ..Block::default() };
        Report { title: format!("Weave: {title}"), blocks: vec![first, threads, cloth] }
    }
}

impl Draft {
    /// The draft as tables: drawing-in and lifting plan, for a loom with treadles tie-up and treadling
    /// in its place; with a number of ends, also how many are on each shaft.
    pub fn report(&self, ends: Option<usize>, treadles: bool) -> Report {
        let numbers = |list: &[usize]| listed(list.iter().map(ToString::to_string));
        let shafts = self.shafts();
        let row = |(k, shafts): (usize, &Vec<usize>)| vec![(k + 1).to_string(), numbers(shafts)];
        let table = |title: &str, line: &str, does: &str, lists: &[Vec<usize>]| Block {
            title: title.to_owned(),
            columns: vec![(line.to_owned(), Right), (does.to_owned(), Left)],
            rows: lists.iter().enumerate().take(LISTED).map(row).collect(),
            foot: Vec::from_iter(
                (lists.len() > LISTED).then(|| format!("… and {} more.", lists.len() - LISTED)),
            ),
            ..Block::default()
        };
        let drawn = format!("shaft of each end: {}", numbers(self.threading()));
        let mut blocks = if treadles {
            vec![
                Block {
                    title: format!(
                        "{shafts} shafts, {} treadles, {} draw",
                        self.treadles(),
                        self.drawing()
                    ),
                    lead: vec![
                        drawn,
                        format!("treadle of each pick: {}", numbers(self.treadling())),
                    ],
                    ..Block::default()
                },
                table("Tie-up", "treadle", "raises shafts", self.tie_up()),
            ]
        } else {
            vec![
                Block {
                    title: format!("{shafts} shafts, {} draw", self.drawing()),
                    lead: vec![drawn],
                    ..Block::default()
                },
                table("Lifting plan", "pick", "lifts shafts", &self.lifts()),
            ]
        };
        if let Some(ends) = ends {
            let rows = self.ends_on_shafts(ends).into_iter().enumerate();
            blocks.push(Block {
                title: format!("Healds for {ends} ends"),
                columns: vec![("shaft".to_owned(), Right), ("healds".to_owned(), Right)],
                rows: rows.map(|(k, n)| vec![(k + 1).to_string(), n.to_string()]).collect(),
                ..Block::default()
            });
        }
        Report { title: "Draft".to_owned(), blocks }
    }
}
