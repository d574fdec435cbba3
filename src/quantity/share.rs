//! Shares: what each is a share of, and what may be done with two that are shares of unlike things.

use super::kind::Kind;
use crate::error::{Error, Result};

/// A formula that turns a share of one kind into that of another.
pub struct Way {
    /// The kind that it takes.
    pub from: Kind,
    /// The kind that it gives.
    pub to: Kind,
    /// Its name.
    pub formula: &'static str,
    /// What else it takes or supposes; may be empty.
    pub note: &'static str,
}

const fn way(from: Kind, to: Kind, formula: &'static str, note: &'static str) -> Way {
    Way { from, to, formula, note }
}

/// The formulas from one share to another.
pub const WAYS: &[Way] = &[
    way(Kind::TakeUp, Kind::Crimp, "crimp_from_take_up", ""),
    way(Kind::TwistedContraction, Kind::Contraction, "contraction_on_untwisted", ""),
    way(Kind::Contraction, Kind::TwistedContraction, "contraction_on_twisted", ""),
    way(Kind::Regain, Kind::MoistureContent, "moisture_content", ""),
    way(Kind::MoistureContent, Kind::Regain, "regain_from_content", ""),
    way(Kind::OverWidth, Kind::Shrinkage, "shrinkage_of_over_width", ""),
    way(Kind::Shrinkage, Kind::OverWidth, "over_width_for_shrinkage", ""),
    way(Kind::Shrinkage, Kind::DimensionalChange, "dimensional_change_from_shrinkage", ""),
    way(Kind::DimensionalChange, Kind::Shrinkage, "shrinkage_from_dimensional_change", ""),
    way(Kind::Shrinkage, Kind::AreaShrinkage, "area_shrinkage", "with that of the other side"),
    way(Kind::AreaShrinkage, Kind::Shrinkage, "shrinkage_of_side", "where both sides shrink alike"),
    way(Kind::DrawIn, Kind::Shrinkage, "compounded_shrinkage", "with the shrinkages that follow"),
    way(Kind::Margin, Kind::MarkUp, "mark_up_of_margin", ""),
    way(Kind::Yield, Kind::MassLoss, "mass_loss_from_yield", ""),
    way(Kind::OnFibre, Kind::MassLoss, "scouring_loss", "with what is left on it and the water"),
    way(Kind::ShareOfSales, Kind::Margin, "profit_of_sales", "with all other costs"),
];

impl Kind {
    /// True of a share that says what it is a share of; a plain fraction, such as `8 %`, does not.
    pub fn has_a_base(self) -> bool {
        self.family() == Kind::Fraction && self != Kind::Fraction
    }

    /// The share that a factor says: yarn × 1.2 of the cloth is a crimp of 20 %, cloth × 0.92 of the
    /// yarn a take-up of 8 %. None where a share says nothing of how one size becomes another.
    pub fn of_factor(self, factor: f64) -> Option<f64> {
        match self {
            Kind::Crimp
            | Kind::OverWidth
            | Kind::Stretch
            | Kind::MarkUp
            | Kind::TwistedContraction
            | Kind::DimensionalChange
            | Kind::Deviation => Some(factor - 1.0),
            Kind::TakeUp
            | Kind::DrawIn
            | Kind::Shrinkage
            | Kind::AreaShrinkage
            | Kind::MassLoss
            | Kind::ShareLost
            | Kind::Contraction => Some(1.0 - factor),
            _ => None,
        }
    }

    /// True of two shares of unlike things: 8 % of the one is another amount than 8 % of the other.
    fn unlike(self, other: Kind) -> bool {
        let losses = [Kind::ShareLost, Kind::MassLoss];
        let are_losses = losses.contains(&self) && losses.contains(&other);
        self != other && self.has_a_base() && other.has_a_base() && !are_losses
    }

    /// The kind of a sum or difference of two shares. That of a plain fraction and any other is plain:
    /// `100 % − take-up` is what is left, not a take-up. Shares of unlike things are refused.
    pub fn with(self, other: Kind, what: &str) -> Result<Kind> {
        self.comparable(other, what)?;
        let plain = [self, other].contains(&Kind::Fraction) && other.family() == Kind::Fraction;
        Ok(if plain { Kind::Fraction } else { self })
    }

    /// Refuses two shares of unlike things; `what` is what was to be made of them, such as `a sum`.
    pub fn comparable(self, other: Kind, what: &str) -> Result<()> {
        if !self.unlike(other) {
            return Ok(());
        }
        let convert = match (ways(self, other), ways(other, self)) {
            (None, None) => "what each leaves multiplies, (1 − a) × (1 − b), where the second is \
                             taken of what the first left; else give both to a formula that takes both"
                .to_owned(),
            (one, two) => format!(
                "turn the one into the other first: {}",
                one.into_iter().chain(two).collect::<Vec<_>>().join("; ")
            ),
        };
        let follow =
            [self, other].contains(&Kind::DrawIn) && [self, other].contains(&Kind::Shrinkage);
        let convert = if follow {
            "the second is of what the first left, so what remains multiplies: use \
             compounded_shrinkage, the draw-in first"
                .to_owned()
        } else {
            convert
        };
        Err(Error::unit(format!(
            "cannot take {what} of a {} and a {}: they are shares of different things; {convert}",
            self.words(),
            other.words()
        )))
    }

    /// Refuses a share of one thing in place of a share of another, or in place of a plain fraction,
    /// which is a share of something else again. A draw-in is let through for a shrinkage: both are on
    /// the size before.
    pub fn given_for(self, wanted: Kind) -> Result<()> {
        if wanted == Kind::Fraction && self.has_a_base() {
            return Err(Error::unit(format!(
                "a {} was given for a plain fraction: they are shares of different things; write '100 % \
                 − x' if what is left of it is meant, or the value itself, like '{}'",
                self.words(),
                wanted.example()
            )));
        }
        if !self.unlike(wanted) || (self, wanted) == (Kind::DrawIn, Kind::Shrinkage) {
            return Ok(());
        }
        let convert = match (ways(self, wanted), ways(wanted, self)) {
            (Some(way), _) => way,
            (None, Some(way)) => format!("{way}, and its solve goes back"),
            (None, None) => "no formula turns the one into the other alone".to_owned(),
        };
        Err(Error::unit(format!(
            "a {} was given for a {}: they are shares of different things; {convert}; or write the \
             value that is meant, like '{}'",
            self.words(),
            wanted.words(),
            wanted.example()
        )))
    }
}

/// The formula from one kind of share to another in words.
fn ways(from: Kind, to: Kind) -> Option<String> {
    // What turns into a loss of mass turns into one that cannot be a gain.
    let wanted = if to == Kind::ShareLost { Kind::MassLoss } else { to };
    let way = WAYS.iter().find(|way| way.from == from && way.to == wanted)?;
    let note = if way.note.is_empty() { String::new() } else { format!(" ({})", way.note) };
    Some(format!("{} gives the {} of a {}{note}", way.formula, way.to.words(), from.words()))
}
