//! The yarn of a piece: how much of it, and how it is wound.

use super::beams::Beams;
use super::inputs::{Article, Winding};
use super::layout::{Layout, Setting};
use crate::calculation::Results;
use crate::number::Number;
use crate::quantity::{Count, Length, Mass, Shrinkage};
use crate::{cloth, yarn};

/// The yarn to prepare.
#[derive(Clone, Debug, Results)]
pub struct YarnToPrepare<N> {
    /// warp yarn to prepare, with waste and spare
    pub warp_yarn_length: Length<N>,
    /// mass of the warp yarn
    pub warp_mass: Mass<N>,
    /// weft of the samples
    pub sample_weft: Option<Length<N>>,
    /// weft yarn to prepare, with waste and spare
    pub weft_yarn_length: Length<N>,
    /// mass of the weft yarn
    pub weft_mass: Mass<N>,
    /// mass of warp and weft yarn
    pub yarn_mass: Mass<N>,
    /// warp bobbins to wind
    pub bobbins: Option<Count<N>>,
    /// pirns to wind
    pub pirns: Option<Count<N>>,
    /// packages of warp yarn
    pub warp_packages: Option<Count<N>>,
    /// packages of weft yarn
    pub weft_packages: Option<Count<N>>,
}

/// Sections of a warp that is made on a mill.
#[derive(Clone, Debug, Results)]
pub struct Sections<N> {
    /// sections of the warp
    pub sections: Count<N>,
    /// ends in a full section
    pub section_ends: Count<N>,
    /// width of a full section, as in the reed
    pub section_width: Length<N>,
    /// ends in the last section
    pub last_section_ends: Count<N>,
    /// yarn that a bobbin in the creel gives
    pub length_per_place: Length<N>,
}

/// The yarn for a piece on the loom and its beams.
pub(super) fn yarn<N: Number>(
    article: &Article<N>,
    set: &Setting<N>,
    at: &Layout<N>,
    beams: &Beams<N>,
    pieces: Count<N>,
) -> YarnToPrepare<N> {
    let spared = |length: Length<N>| match article.yarn.spare_share {
        None => length,
        Some(spare) => Length::from(length.v() * (1.0 + spare.v())),
    };
    let mut warp_yarn = beams.beamed_length;
    if let Some(waste) = article.yarn.warp_waste {
        warp_yarn = Length::from(warp_yarn.v() * (1.0 + waste.v()));
    }
    let warp_yarn_length = spared(warp_yarn);
    let lengths = beams.lengths.unwrap_or(pieces);
    let mut weft_yarn = cloth::weft_yarn_length(at.weft_per_piece, lengths, set.weft_waste);
    let sample_weft = article.idle.sample_length.map(|sample| {
        let none = Shrinkage::base(N::constant(0.0));
        let picks = cloth::picks_in_piece(sample, none, set.weft_sett);
        let each = cloth::weft_per_piece(picks, at.filled_width, set.turn_allowance);
        cloth::weft_yarn_length(each, beams.number(), set.weft_waste)
    });
    if let Some(samples) = sample_weft {
        weft_yarn = Length::from(weft_yarn.v() + samples.v());
    }
    let weft_yarn_length = spared(weft_yarn);
    let warp_mass = yarn::mass_of_length(article.yarns.warp_count, warp_yarn_length);
    let weft_mass = yarn::mass_of_length(article.weft_count(), weft_yarn_length);
    let Winding { length_per_bobbin, length_per_pirn, package_mass, .. } = article.winding;
    let packages = |mass: Mass<N>| package_mass.map(|full| yarn::packages_for_mass(mass, full));
    YarnToPrepare {
        warp_yarn_length,
        warp_mass,
        sample_weft,
        weft_yarn_length,
        weft_mass,
        yarn_mass: Mass::from(warp_mass.v() + weft_mass.v()),
        bobbins: length_per_bobbin.map(|full| cloth::packages_for_length(warp_yarn_length, full)),
        pirns: length_per_pirn.map(|full| cloth::packages_for_length(weft_yarn_length, full)),
        warp_packages: packages(warp_mass),
        weft_packages: packages(weft_mass),
    }
}

/// The sections of a warp, of as many ends as the creel has bobbins.
pub(super) fn sections<N: Number>(
    creel: Count<N>,
    at: &Layout<N>,
    warped: Length<N>,
) -> Sections<N> {
    let sections = cloth::warp_sections(at.ends, creel);
    let full = Count::from(creel.v().min(at.ends.v()));
    Sections {
        sections,
        section_ends: full,
        section_width: Length::from(at.filled_width.v() * full.v() / at.ends.v()),
        last_section_ends: Count::from(at.ends.v() - (sections.v() - 1.0) * full.v()),
        length_per_place: Length::from(sections.v() * warped.v()),
    }
}
