//! A costing as tables.

use crate::quantity::Kind;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

pub(super) struct ToldStage {
    pub(super) name: String,
    pub(super) loss: f64,
    pub(super) mass: f64,
    pub(super) added: f64,
    pub(super) cost: f64,
    /// What waste brings for a kilogram that goes in.
    pub(super) sold: Option<f64>,
}

pub(super) struct ToldPiece {
    pub(super) name: String,
    pub(super) mass: f64,
    pub(super) cost: f64,
    pub(super) price: Option<f64>,
}

pub(super) struct Told {
    pub(super) price: f64,
    pub(super) stages: Vec<ToldStage>,
    pub(super) cost: f64,
    /// On the cost of the stages; for an hour.
    pub(super) overhead: (Option<f64>, Option<f64>),
    pub(super) bought: Option<f64>,
    pub(super) pieces: Vec<ToldPiece>,
    pub(super) selling: Option<(&'static str, f64)>,
}

fn money(x: f64) -> String {
    fixed(x, 3)
}

fn percent(x: f64) -> String {
    format!("{} %", fixed(100.0 * x, 1))
}

impl Told {
    pub(super) fn report(&self) -> Report {
        Report { title: "Cost through losses".to_owned(), blocks: vec![self.route(), self.goods()] }
    }

    fn route(&self) -> Block {
        let taken = self.stages.first().map_or(1.0, |s| s.mass);
        // Of a cost of nothing there are no shares.
        let share =
            |x: f64| if self.cost == 0.0 { "–".to_owned() } else { percent(x / self.cost) };
        let of_whole = |x: f64| vec![money(x), share(x)];
        let row = |cells: [String; 5], of: f64| {
            cells.into_iter().chain(of_whole(of)).collect::<Vec<String>>()
        };
        let none = String::new;
        let mut rows = vec![row(
            ["bought".to_owned(), none(), none(), none(), money(self.price)],
            taken * self.price,
        )];
        for s in &self.stages {
            let cells =
                [s.name.clone(), percent(s.loss), fixed(s.mass, 4), money(s.added), money(s.cost)];
            rows.push(row(cells, s.added * s.mass));
            if let Some(sold) = s.sold {
                let name = format!("{}, waste sold", s.name);
                rows.push(row([name, none(), none(), money(-sold), none()], -sold * s.mass));
            }
        }
        rows.push(row(["whole".to_owned(), none(), none(), none(), money(self.cost)], self.cost));
        let mut foot = vec![
            "A loss is a share of what goes into its stage, and added is for a kilogram that goes in.".to_owned(),
        ];
        match self.overhead {
            (None, None) => foot.push("No overhead is in it.".to_owned()),
            (share, hourly) => {
                let share =
                    share.map(|o| format!("{} on what each stage costs", of_kind(o, Kind::MarkUp)));
                let hourly = hourly
                    .map(|o| format!("{} for an hour of each machine that has a rate", figure(o)));
                let both: Vec<String> = [share, hourly].into_iter().flatten().collect();
                foot.push(format!(
                    "Overhead in what is added: {}; none on what is bought.",
                    both.join(", and ")
                ));
            }
        }
        if let Some(share) = self.bought {
            foot.push(format!("What is bought is {} of the cost.", percent(share)));
        }
        let columns = [
            ("stage", Left),
            ("loss", Right),
            ("kg in", Right),
            ("added", Right),
            ("cost of a kg after", Right),
            ("in the kg out", Right),
            ("share", Right),
        ];
        Block {
            title: "For one kilogram that comes out".to_owned(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows,
            foot,
            ..Block::default()
        }
    }

    fn goods(&self) -> Block {
        let mut columns = vec![("goods", Left), ("mass", Right), ("cost", Right)];
        if self.selling.is_some() {
            columns.push(("price", Right));
        }
        let row = |p: &ToldPiece| {
            let mut row = vec![p.name.clone(), of_kind(p.mass, Kind::Mass), money(p.cost)];
            row.extend(p.price.map(money));
            row
        };
        Block {
            title: match self.selling {
                None => "Cost of the goods".to_owned(),
                Some((by, share)) => {
                    format!("Cost and price of the goods, at {} {by}", of_kind(share, Kind::Margin))
                }
            },
            columns: columns.into_iter().map(|(name, align)| (name.to_owned(), align)).collect(),
            rows: self.pieces.iter().map(row).collect(),
            foot: vec!["Value added tax and other taxes on sales are left out.".to_owned()],
            ..Block::default()
        }
    }
}
