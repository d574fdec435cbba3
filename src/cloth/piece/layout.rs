//! The chain from the reed to the finished piece, over any number: the piece and the plan share it.

use crate::calculation::Results;
use crate::cloth;
use crate::number::Number;
use crate::quantity::{
    Count, DrawIn, Fraction, Length, LinearDensity, Mass, MassLoss, MassPerArea, ReedCount, Sett,
    Shrinkage, TakeUp,
};

/// What a piece of cloth is laid out from.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Setting<N> {
    /// Finished width of what is woven.
    pub(crate) width: Length<N>,
    /// Finished length of what is woven, without fringes.
    pub(crate) length: Length<N>,
    pub(crate) fringe: Length<N>,
    pub(crate) width_shrinkage: Shrinkage<N>,
    pub(crate) length_shrinkage: Shrinkage<N>,
    pub(crate) draw_in: DrawIn<N>,
    pub(crate) take_up: TakeUp<N>,
    pub(crate) reed: ReedCount<N>,
    pub(crate) ends_per_dent: Count<N>,
    /// Ends of each selvedge and how many of them are in a dent.
    pub(crate) selvedge: Option<(Count<N>, Count<N>)>,
    /// Off the loom.
    pub(crate) weft_sett: Sett<N>,
    pub(crate) turn_allowance: Length<N>,
    pub(crate) weft_waste: Fraction<N>,
}

/// A piece on the loom.
#[derive(Clone, Debug, Results)]
pub struct Layout<N> {
    /// width wanted in the reed
    pub reed_width: Length<N>,
    /// The selvedges.
    #[part]
    pub selvedges: Option<SelvedgeLayout<N>>,
    /// ends
    pub ends: Count<N>,
    /// sett in the reed
    pub reed_sett: Sett<N>,
    /// width that the ends fill in the reed
    pub filled_width: Length<N>,
    /// warp for a piece, fringes included
    pub warp_per_piece: Length<N>,
    /// picks in a piece
    #[whole]
    pub picks_per_piece: Count<N>,
    /// weft for a piece
    pub weft_per_piece: Length<N>,
}

/// Selvedges on the loom.
#[derive(Clone, Debug, Results)]
pub struct SelvedgeLayout<N> {
    /// width of both selvedges in the reed
    pub selvedge_width: Length<N>,
    /// ends without the selvedges
    pub ground_ends: Count<N>,
}

impl<N: Number> Setting<N> {
    /// From the finished piece to the loom.
    #[inline]
    pub(crate) fn layout(&self) -> Layout<N> {
        let reed_width = cloth::reed_width(self.width, self.width_shrinkage, self.draw_in);
        let selvedges = self.selvedge.map(|(ends, per_dent)| {
            let sett = cloth::sett_in_reed(self.reed, per_dent);
            let both = Count::from(2.0 * ends.v());
            (both, Length::from(both.v() / sett.v() / 100.0))
        });
        let ground = match selvedges {
            None => reed_width,
            Some((_, width)) => Length::from(reed_width.v() - width.v()),
        };
        let ground_ends = cloth::ends_for_reed(self.reed, self.ends_per_dent, ground);
        let ends = match selvedges {
            None => ground_ends,
            Some((both, _)) => Count::from(ground_ends.v() + both.v()),
        };
        let reed_sett = cloth::sett_in_reed(self.reed, self.ends_per_dent);
        let filled = match selvedges {
            None => ends.v() / reed_sett.v() / 100.0,
            Some((both, width)) => (ends.v() - both.v()) / reed_sett.v() / 100.0 + width.v(),
        };
        let filled_width = Length::from(filled);
        let warp_per_piece =
            cloth::warp_per_piece(self.length, self.length_shrinkage, self.take_up, self.fringe);
        let picks_per_piece =
            cloth::picks_in_piece(self.length, self.length_shrinkage, self.weft_sett);
        Layout {
            reed_width,
            selvedges: selvedges
                .map(|(_, selvedge_width)| SelvedgeLayout { selvedge_width, ground_ends }),
            ends,
            reed_sett,
            filled_width,
            warp_per_piece,
            picks_per_piece,
            weft_per_piece: cloth::weft_per_piece(
                picks_per_piece,
                filled_width,
                self.turn_allowance,
            ),
        }
    }

    /// Weft for a piece, with its waste.
    // Only the plan weighs it.
    #[cfg(feature = "plan-file")]
    pub(crate) fn weft_wound(&self, at: &Layout<N>) -> Length<N> {
        cloth::weft_yarn_length(at.weft_per_piece, Count::base(N::constant(1.0)), self.weft_waste)
    }

    /// From the loom to the finished piece: its width, and its mass by area, woven part and fringes.
    pub(crate) fn finished(
        &self,
        at: &Layout<N>,
        warp: LinearDensity<N>,
        weft: LinearDensity<N>,
        loss: MassLoss<N>,
    ) -> Finished<N> {
        let (s_w, s_l) = (self.width_shrinkage, self.length_shrinkage);
        let off_loom_width = cloth::off_loom_width(at.filled_width, self.draw_in);
        let finished_width = cloth::size_after_shrinkage(off_loom_width, s_w);
        let off_loom_warp_sett = Sett::from(at.ends.v() / off_loom_width.v() / 100.0);
        let pick = Length::from(at.weft_per_piece.v() / at.picks_per_piece.v());
        let off_loom_mass_per_area = cloth::mass_per_area(
            off_loom_warp_sett,
            warp,
            cloth::crimp_from_take_up(self.take_up),
            self.weft_sett,
            weft,
            cloth::crimp_from_lengths(pick, off_loom_width),
        );
        let finished_mass_per_area =
            cloth::finished_mass_per_area(off_loom_mass_per_area, loss, s_w, s_l);
        Finished {
            off_loom_width,
            off_loom_warp_sett,
            off_loom_mass_per_area,
            finished_width,
            finished_mass_per_area,
            woven_mass: cloth::mass_of_piece(finished_mass_per_area, finished_width, self.length),
            fringe_mass: cloth::fringe_mass(at.ends, self.fringe, warp),
        }
    }
}

/// A piece off the loom and finished.
#[derive(Clone, Debug, Results)]
pub struct Finished<N> {
    /// width off the loom
    pub off_loom_width: Length<N>,
    /// ends off the loom
    pub off_loom_warp_sett: Sett<N>,
    /// mass per area off the loom
    pub off_loom_mass_per_area: MassPerArea<N>,
    /// finished width
    pub finished_width: Length<N>,
    /// finished mass per area
    pub finished_mass_per_area: MassPerArea<N>,
    /// mass of the woven part
    pub woven_mass: Mass<N>,
    /// mass of the fringes
    pub fringe_mass: Mass<N>,
}
