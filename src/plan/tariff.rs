//! What the mill charges for its stages, and what a lot costs it: the tables `[tariff]` and `[cost]`.

use super::draft::Draft;
use super::given::Given;
use super::section::Section;
use super::stage::NAMES;
use super::tree::Tree;
use super::tree::levels::{AFTER_YARN, HEADS};
use super::tree::routes::Desk;
use crate::calculation::{Inputs, Place};
use crate::error::{Error, Result, did_you_mean};
use crate::quantity::{CostPerMass, Money};

/// What is charged for a stage or a machine of the goods.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Charges<N> {
    /// tariff for a kilogram that goes in, as weighed
    #[q("c₁", 0.0..=100.0, zero, like = "2.20 /kg")]
    pub(super) tariff_in: Option<CostPerMass<N>>,
    /// tariff for a kilogram that comes out, as weighed
    #[q("c₂", 0.0..=200.0, zero, like = "5.50 /kg")]
    pub(super) tariff_out: Option<CostPerMass<N>>,
    /// charge for a running hour
    #[q("k_h", 0.0..=500.0, zero, like = "40")]
    pub(super) hourly_charge: Option<Money<N>>,
    /// charge for clearing the machine, once for each heap
    #[q("k_c", 0.0..=1000.0, zero, like = "45")]
    pub(super) clearing_charge: Option<Money<N>>,
    /// charge for a piece
    #[q("k_p", 0.0..=1000.0, zero, like = "24")]
    pub(super) piece_charge: Option<Money<N>>,
}

/// What is charged for a lot, however small.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Least<N> {
    /// least charge for a lot
    #[q("k₀", 0.0..=2000.0, zero, like = "260")]
    minimum_charge: Option<Money<N>>,
}

/// What a lot costs the mill.
#[derive(Clone, Debug, Inputs)]
pub(super) struct LotCost<N> {
    /// cost once for the lot, whatever its size
    #[q("k_f", 0.0..=5000.0, or = 0.0, like = "250")]
    fixed_cost: Money<N>,
    /// cost of a greasy kilogram taken in
    #[q("c_m", 0.0..=200.0, or = 0.0, like = "4.50 /kg")]
    cost_per_mass: CostPerMass<N>,
}

/// The prices of a mill, and what a lot costs it.
#[derive(Clone, Debug, Default)]
pub(super) struct Tariffs {
    /// The currency; only printed.
    pub(super) money: String,
    /// Whether there is a table of them at all.
    pub(super) is_present: bool,
    /// What is read of them. Nothing of a plan but its quotation rests on it.
    given: Vec<Given>,
    least: Option<Place>,
    /// What is charged for each machine that has a table.
    stages: Vec<(String, Charges<Place>)>,
    cost: Option<(Place, Place)>,
    /// The machines of the lot, each with the tables that it is read from.
    machines: Vec<(String, Vec<String>)>,
}

impl Tariffs {
    /// Reads the two tables; what is wrong is noted.
    pub(super) fn read(desk: &Desk<'_>, draft: &mut Draft) -> Tariffs {
        let mut tariffs = Tariffs::default();
        let mut own = Draft::default();
        let read = tariffs.take(desk, &mut own);
        own.note(read);
        tariffs.given = own.hand_over(draft);
        for given in &tariffs.given {
            let wrong = if given.spread.is_open() {
                format!("is known; write one value, such as {}", given.typed)
            } else if given.base() < 0.0 {
                format!("{} is less than nothing; write 0 or more", given.typed)
            } else {
                continue;
            };
            draft.fault(Error::plan(format!("{}: {wrong}", given.meaning)).at(given.place()));
        }
        tariffs
    }

    fn take(&mut self, desk: &Desk<'_>, draft: &mut Draft) -> Result<()> {
        let table = desk.both.section("tariff")?;
        self.is_present = table.is_present();
        let money = draft.note(table.line_or_none("money"));
        self.money = money.flatten().unwrap_or_default();
        let least = table.read(draft, |reader| Least::take(reader))?.minimum_charge;
        self.least = least.map(|least| *least.inner());
        for name in table.keys() {
            if ["money", "minimum_charge"].contains(&name.as_str()) {
                continue;
            }
            let read = charges(desk, &table, &name, draft);
            self.stages.extend(draft.note(read).map(|charges| (name, charges)));
        }
        let table = desk.both.section("cost")?;
        if table.is_present() {
            let cost = table.read(draft, |reader| LotCost::take(reader))?;
            self.cost = Some((*cost.fixed_cost.inner(), *cost.cost_per_mass.inner()));
            table.finish()?;
        }
        Ok(())
    }

    /// Takes note of the machines of the lot; stages before the goods have no pieces to charge for.
    pub(super) fn settle(&mut self, desk: &Desk<'_>, tree: &Tree, draft: &mut Draft) {
        self.machines = desk.machines();
        for pass in tree.all_passes() {
            let Some(charges) = self.written(&pass.machine) else { continue };
            let Some(piece) = &charges.piece_charge else { continue };
            let place = self.given[piece.inner().0].place();
            let message = "there are no pieces here, only at the machines of the goods; write tariff_in \
                           or tariff_out, such as \"5.50 /kg\"";
            draft.fault(Error::plan(message).at(place));
        }
    }

    fn written(&self, machine: &str) -> Option<&Charges<Place>> {
        let chain = self.machines.iter().find(|(name, _)| name == machine);
        let like = chain.into_iter().flat_map(|(_, chain)| chain).map(String::as_str);
        std::iter::once(machine)
            .chain(like)
            .find_map(|name| self.stages.iter().find(|(stage, _)| stage == name))
            .map(|(_, charges)| charges)
    }
    /// What is charged for a machine: by its own table, else by that of the machine that it is like.
    pub(super) fn of(&self, machine: &str) -> Option<Charges<f64>> {
        Some(self.written(machine)?.map(&mut |place: &Place| self.given[place.0].base()))
    }
    /// The least charge for a lot.
    pub(super) fn minimum_charge(&self) -> Option<f64> {
        self.least.map(|place| self.given[place.0].base())
    }
    /// What a lot costs the mill: once, and for each greasy kilogram.
    pub(super) fn cost(&self) -> Option<(Money<f64>, CostPerMass<f64>)> {
        let (fixed, per_mass) = self.cost?;
        let base = |place: Place| self.given[place.0].base();
        Some((Money::base(base(fixed)), CostPerMass::base(base(per_mass))))
    }
}

/// Reads what is charged for a stage.
fn charges(
    desk: &Desk<'_>,
    table: &Section<'_>,
    name: &str,
    draft: &mut Draft,
) -> Result<Charges<Place>> {
    let own = table.section(name)?;
    let tables = desk.both.keys();
    let known: Vec<&str> = tables
        .iter()
        .map(String::as_str)
        .filter(|key| !HEADS.contains(key))
        .chain(NAMES.iter().copied())
        .chain(AFTER_YARN)
        .filter(|known| *known != "loss")
        .collect();
    // A stage that stands twice in a route, such as tease-2, needs no table of its own.
    let again = name.rsplit_once('-').filter(|(_, times)| times.parse::<u32>().is_ok());
    let is_known = known.contains(&name) || again.is_some_and(|(of, _)| known.contains(&of));
    if !is_known {
        let near = did_you_mean(name, known.iter().copied().chain(["money", "minimum_charge"]));
        let instead = near.map_or_else(
            || "write the name of a stage, such as [tariff.card]".to_owned(),
            |near| format!("did you mean '{near}'?"),
        );
        // A table that is written with dots has no line of its own.
        let first = own.keys().first().and_then(|key| own.at(key));
        let place = first.map_or_else(|| own.place(), |at| at.place());
        let message = format!("the mill has no stage '{name}'; {instead}");
        return Err(Error::plan(message).at(format_args!("{place}: tariff.{name}")));
    }
    let charges = own.read(draft, |reader| Charges::take(reader))?;
    own.finish()?;
    Ok(charges)
}
