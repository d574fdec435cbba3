//! The chain from the reed to the finished piece, over any number: the article and the plan share it.

use crate::cloth;
use crate::number::Number;
use crate::particulars::Desk;
use crate::quantity::{
    Count, DrawIn, Fraction, Length, LinearDensity, Mass, MassLoss, ReedCount, Sett, Shrinkage,
    TakeUp, Typed,
};
use crate::worked::Worked;

/// Who names the figures of a chain.
pub(crate) trait Names<N: Number> {
    /// The figure with its name.
    fn figure<Q: Typed<N>>(&self, name: &'static str, words: &'static str, figure: Q) -> Q;
}

impl<'t> Names<Worked<'t>> for Desk<'t> {
    fn figure<Q: Typed<Worked<'t>>>(
        &self,
        name: &'static str,
        words: &'static str,
        figure: Q,
    ) -> Q {
        Desk::figure(self, name, words, figure)
    }
}

/// Nobody: where only the figures matter.
pub(crate) struct Unnamed;

impl<N: Number> Names<N> for Unnamed {
    #[inline(always)]
    fn figure<Q: Typed<N>>(&self, _name: &'static str, _words: &'static str, figure: Q) -> Q {
        figure
    }
}

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
    /// Ends of each selvedge and how many of them stand in a dent.
    pub(crate) selvedge: Option<(Count<N>, Count<N>)>,
    /// Off the loom.
    pub(crate) picks: Sett<N>,
    pub(crate) turn: Length<N>,
    pub(crate) weft_waste: Fraction<N>,
}

/// A piece on the loom.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Layout<N> {
    pub(crate) reed_width: Length<N>,
    pub(crate) ends: Count<N>,
    /// Width that the ends fill in the reed.
    pub(crate) set_width: Length<N>,
    pub(crate) warp_each: Length<N>,
    pub(crate) picks: Count<N>,
    pub(crate) weft_each: Length<N>,
    /// The same with its waste.
    // Only the plan weighs it.
    #[cfg_attr(not(feature = "plan-file"), expect(dead_code))]
    pub(crate) weft_wound: Length<N>,
}

impl<N: Number> Setting<N> {
    /// From the finished piece to the loom.
    #[inline]
    pub(crate) fn layout(&self, names: &impl Names<N>) -> Layout<N> {
        let reed_width = cloth::reed_width(self.width, self.width_shrinkage, self.draw_in);
        let reed_width = names.figure("reed_width", "width wanted in the reed", reed_width);
        let selvedges = self.selvedge.map(|(ends, per_dent)| {
            let sett = cloth::sett_in_reed(self.reed, per_dent);
            let both = Count::from(2.0 * ends.v());
            let width = Length::from(both.v() / sett.v() / 100.0);
            let width =
                names.figure("selvedge_width", "width of both selvedges in the reed", width);
            (both, width)
        });
        let ground = match selvedges {
            None => reed_width,
            Some((_, width)) => Length::from(reed_width.v() - width.v()),
        };
        let ends = cloth::ends_for_reed(self.reed, self.ends_per_dent, ground);
        let ends = match selvedges {
            None => ends,
            Some((both, _)) => {
                let ends = names.figure("ground_ends", "ends without the selvedges", ends);
                Count::from(ends.v() + both.v())
            }
        };
        let ends = names.figure("ends", "ends", ends);
        let sett = cloth::sett_in_reed(self.reed, self.ends_per_dent);
        let sett = names.figure("sett", "sett in the reed", sett);
        let filled = match selvedges {
            None => ends.v() / sett.v() / 100.0,
            Some((both, width)) => (ends.v() - both.v()) / sett.v() / 100.0 + width.v(),
        };
        let set_width = Length::from(filled);
        let set_width =
            names.figure("set_width", "width that the ends fill in the reed", set_width);
        let warp_each =
            cloth::warp_per_piece(self.length, self.length_shrinkage, self.take_up, self.fringe);
        let words = "warp for a piece, fringes included";
        let warp_each = names.figure("warp_each", words, warp_each);
        let picks = cloth::picks_in_piece(self.length, self.length_shrinkage, self.picks);
        let picks = names.figure("picks", "picks in a piece", picks);
        let weft_each = cloth::weft_per_piece(picks, set_width, self.turn);
        let weft_each = names.figure("weft_each", "weft for a piece", weft_each);
        let one = Count::base(N::constant(1.0));
        let weft_wound = cloth::weft_yarn_length(weft_each, one, self.weft_waste);
        Layout { reed_width, ends, set_width, warp_each, picks, weft_each, weft_wound }
    }

    /// From the loom to the finished piece: its width, and its mass by area, woven part and fringes.
    pub(crate) fn finished(
        &self,
        at: &Layout<N>,
        warp: LinearDensity<N>,
        weft: LinearDensity<N>,
        loss: Fraction<N>,
        names: &impl Names<N>,
    ) -> Finished<N> {
        let (s_w, s_l) = (self.width_shrinkage, self.length_shrinkage);
        let off_loom = cloth::off_loom_width(at.set_width, self.draw_in);
        let off_loom = names.figure("off_loom_width", "width off the loom", off_loom);
        let width = cloth::size_after_shrinkage(off_loom, s_w);
        let width = names.figure("width", "finished width", width);
        let ends = Sett::from(at.ends.v() / off_loom.v() / 100.0);
        let ends = names.figure("ends_off_loom", "ends off the loom", ends);
        let pick = Length::from(at.weft_each.v() / at.picks.v());
        let mass = cloth::mass_per_area(
            ends,
            warp,
            cloth::crimp_from_take_up(self.take_up),
            self.picks,
            weft,
            cloth::crimp_from_lengths(pick, off_loom),
        );
        let loom_mass = names.figure("loom_mass", "mass per area off the loom", mass);
        let lost = MassLoss::from(loss.v());
        let mass = cloth::finished_mass_per_area(loom_mass, lost, s_w, s_l);
        let mass_per_area = names.figure("mass_per_area", "finished mass per area", mass);
        let woven = cloth::mass_of_piece(mass_per_area, width, self.length);
        let woven = names.figure("woven_mass", "mass of the woven part", woven);
        let fringe = cloth::fringe_mass(at.ends, self.fringe, warp);
        let fringe = names.figure("fringe_mass", "mass of the fringes", fringe);
        Finished { width, ends, woven, fringe }
    }
}

/// A finished piece.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Finished<N> {
    pub(crate) width: Length<N>,
    /// Off the loom.
    pub(crate) ends: Sett<N>,
    pub(crate) woven: Mass<N>,
    pub(crate) fringe: Mass<N>,
}
