//! What a kilogram costs as it goes through stages that lose some of it, and what to ask for goods.

mod tell;
mod work;

use crate::error::{Error, Result};
use crate::job::{Ask, Given, place};
use crate::quantity::print::figure;
use crate::quantity::{Amount, Kind};

/// What may be said of a stage of a costing.
static STAGE: [Ask; 6] = [
    Ask::any("loss", "w", "share lost of what goes in", Kind::Fraction),
    Ask::any("cost", "k", "cost of the stage for a kilogram that goes in", Kind::CostPerMass),
    Ask::any("hourly", "c", "cost of an hour of the machine", Kind::Money),
    Ask::any("rate", "P", "mass that goes in in an hour", Kind::MassRate),
    Ask::any("waste_sold", "s", "share of what goes in that is sold as waste", Kind::Fraction),
    Ask::any("waste_value", "v", "what a kilogram of that waste sells for", Kind::CostPerMass),
];

/// What may be said of the whole.
static WHOLE: [Ask; 5] = [
    Ask::any("price", "c_1", "price of a kilogram taken in", Kind::CostPerMass),
    Ask::any("overhead", "o", "overhead, on the cost of the stages", Kind::MarkUp),
    Ask::any("hourly_overhead", "c_o", "overhead of an hour of a machine", Kind::Money),
    Ask::any("margin", "g", "margin wanted, on the price", Kind::Margin),
    Ask::any("mark_up", "u", "mark-up wanted, on the cost", Kind::MarkUp),
];

/// What is said where an hour would bring money instead of costing it.
pub(crate) fn hour_costs(given: f64) -> Error {
    Error::range(format!("{} is given for what an hour costs; write 0 or more", figure(given)))
}

/// A stage of a costing.
#[derive(Clone, Debug)]
pub struct CostedStage {
    name: String,
    given: Given,
}

impl CostedStage {
    /// A stage of which nothing is said: it loses and costs nothing.
    pub fn new(name: &str) -> CostedStage {
        let mut given = Given::new("the costing of a stage", &STAGE);
        given.prefix = format!("{name}.");
        CostedStage { name: name.to_owned(), given }
    }
    /// What may be said of a stage.
    pub fn said(name: &str) -> Result<&'static Ask> {
        Ok(&STAGE[place(&STAGE, "the costing of a stage", name)?])
    }
    /// Says something of it.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        if name == "hourly" && amount.base() < 0.0 {
            return Err(hour_costs(amount.base()).at(format!("{}, hourly", self.name)));
        }
        self.given.set(name, amount, typed).map_err(|e| e.at(&self.name))
    }
    fn check(&self) -> Result<()> {
        let given = &self.given;
        if given.has("hourly") && !given.has("rate") {
            return Err(given.missing("rate"));
        }
        if given.has("waste_sold") && !given.has("waste_value") {
            return Err(given.missing("waste_value"));
        }
        let (sold, loss) =
            (given.base("waste_sold").unwrap_or(0.0), given.base("loss").unwrap_or(0.0));
        if sold > loss {
            return Err(Error::range(format!(
                "{}: more is sold as waste than is lost; both are shares of what goes in",
                self.name
            )));
        }
        if given.has("waste_value") && !given.has("loss") {
            return Err(given.missing("loss"));
        }
        Ok(())
    }
}

/// What a kilogram costs through stages that lose some of it.
///
/// ```
/// use hankwise::mill::{Costing, CostedStage};
/// use hankwise::quantity::parse;
///
/// let mut costing = Costing::new();
/// costing.set("price", parse("4.20 /kg")?, None)?;
/// let mut card = CostedStage::new("card");
/// card.set("loss", parse("8 %")?, None)?;
/// card.set("cost", parse("0.40 /kg")?, None)?;
/// costing.stage(card)?;
/// let cost = costing.work()?;
/// assert_eq!(cost.find("cost")?.value, 5.0);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug)]
pub struct Costing {
    given: Given,
    stages: Vec<CostedStage>,
    pieces: Vec<(String, Amount, Option<String>)>,
}

impl Default for Costing {
    fn default() -> Self {
        Costing::new()
    }
}

impl Costing {
    /// A costing of which nothing is known.
    pub fn new() -> Costing {
        Costing { given: Given::new("a costing", &WHOLE), stages: Vec::new(), pieces: Vec::new() }
    }
    /// What may be said of the whole.
    pub fn said(name: &str) -> Result<&'static Ask> {
        Ok(&WHOLE[place(&WHOLE, "a costing", name)?])
    }
    /// Says something of the whole.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let (margin, mark_up) = (name == "margin", name == "mark_up");
        if (margin && self.given.has("mark_up")) || (mark_up && self.given.has("margin")) {
            return Err(Error::notation(
                "a margin is on the price and a mark-up on the cost; give one of them \
                 (mark_up_of_margin turns the one into the other)",
            ));
        }
        if name == "hourly_overhead" && amount.base() < 0.0 {
            return Err(hour_costs(amount.base()).at(name));
        }
        self.given.set(name, amount, typed)
    }
    /// Adds the next stage.
    pub fn stage(&mut self, stage: CostedStage) -> Result<()> {
        stage.check()?;
        if self.stages.iter().any(|s| s.name == stage.name) {
            return Err(Error::notation(format!(
                "the stage '{0}' stands twice; call them '{0} 1' and '{0} 2'",
                stage.name
            )));
        }
        self.stages.push(stage);
        Ok(())
    }
    /// Adds goods by their mass, in the state in which the last stage leaves them.
    pub fn piece(&mut self, name: &str, mass: Amount, typed: Option<String>) -> Result<()> {
        Kind::Mass.check(mass.base()).map_err(|e| e.at(name))?;
        let taken = |n: &str| n == name;
        if self.pieces.iter().any(|p| taken(&p.0)) || self.stages.iter().any(|s| taken(&s.name)) {
            return Err(Error::notation(format!(
                "'{name}' is the name of a stage or of other goods; call these otherwise, such as '{name} \
                 sold'"
            )));
        }
        self.pieces.push((name.to_owned(), mass, typed));
        Ok(())
    }
}
