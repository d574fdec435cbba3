//! From the article to the loom and to the yarn, over any number.

use super::ask::Key;
use super::given::Given;
use super::layout::{Finished, Layout, Names, Setting};
use crate::cloth;
use crate::number::{Number, V};
use crate::quantity::{Count, DrawIn, Fraction, Length, LinearDensity, Mass, Sett, Shrinkage};
use crate::yarn;

/// An article worked out.
pub(super) struct Work<N> {
    pub(super) at: Layout<N>,
    pub(super) finished: Finished<N>,
    pub(super) ground_ends: Count<N>,
    pub(super) warps: Count<N>,
    /// Warp on the beam that holds the most.
    pub(super) warp_length: Length<N>,
    /// Warp wasted on each beam.
    pub(super) loom_waste: Length<N>,
    pub(super) warp_mass: Mass<N>,
    pub(super) weft_mass: Mass<N>,
}

/// Adds what was given at both ends or sides.
fn with_both<N: Number>(length: V<N>, given: &impl Given<N>, key: Key) -> V<N> {
    if given.has(key) { length + 2.0 * given.get::<Length<N>>(key).v() } else { length }
}

fn setting<N: Number>(given: &impl Given<N>, names: &impl Names<N>) -> Setting<N> {
    let mut width: Length<N> = given.get(Key::Width);
    if [Key::SideHem, Key::Panels].into_iter().any(|key| given.has(key)) {
        let mut sum = with_both(width.v(), given, Key::SideHem);
        if given.has(Key::Panels) {
            let panels: Count<N> = given.get(Key::Panels);
            if given.has(Key::Seam) {
                let seam: Length<N> = given.get(Key::Seam);
                sum = sum + 2.0 * (panels.v() - 1.0) * seam.v();
            }
            sum = sum / panels.v();
        }
        let words = "finished width of a length as woven, hems and seams in";
        width = names.figure("woven_width", words, Length::from(sum));
    }
    let mut length: Length<N> = given.get(Key::Length);
    if given.has(Key::Hem) {
        let sum = with_both(length.v(), given, Key::Hem);
        let words = "finished length of the woven part, hems in";
        length = names.figure("woven_length", words, Length::from(sum));
    }
    let width_shrinkage: Shrinkage<N> = given.get(Key::WidthShrinkage);
    let length_shrinkage: Shrinkage<N> = given.get(Key::LengthShrinkage);
    let draw_in: DrawIn<N> = given.get(Key::DrawIn);
    let ends_per_dent: Count<N> = given.get(Key::EndsPerDent);
    let reed = if given.has(Key::Reed) {
        given.get(Key::Reed)
    } else {
        let sett = if given.has(Key::Sett) {
            given.get(Key::Sett)
        } else {
            // Threads close up as the cloth narrows.
            let finished: Sett<N> = given.get(Key::FinishedEnds);
            Sett::from(finished.v() * (1.0 - width_shrinkage.v()) * (1.0 - draw_in.v()))
        };
        let reed = cloth::reed_for_sett(sett, ends_per_dent);
        if given.has(Key::EndsPerDent) {
            names.figure("reed_wanted", "reed that this wants", reed)
        } else {
            reed
        }
    };
    let picks = if given.has(Key::Picks) {
        given.get(Key::Picks)
    } else {
        let finished: Sett<N> = given.get(Key::FinishedPicks);
        let picks = Sett::from(finished.v() * (1.0 - length_shrinkage.v()));
        names.figure("picks_off_loom", "picks off the loom", picks)
    };
    let selvedge = given
        .has(Key::SelvedgeEnds)
        .then(|| (given.get(Key::SelvedgeEnds), given.get(Key::SelvedgePerDent)));
    Setting {
        width,
        length,
        fringe: given.get(Key::Fringe),
        width_shrinkage,
        length_shrinkage,
        draw_in,
        take_up: given.get(Key::TakeUp),
        reed,
        ends_per_dent,
        selvedge,
        picks,
        turn: given.get(Key::Turn),
        weft_waste: given.get(Key::WeftWaste),
    }
}

/// What lies on the beams: warps, the longest of them, the waste of each, all of them together.
struct Beams<N> {
    warps: Count<N>,
    longest: Length<N>,
    waste: Length<N>,
    all: Length<N>,
}

fn beams<N: Number>(
    given: &impl Given<N>,
    set: &Setting<N>,
    at: &Layout<N>,
    lengths: Count<N>,
    names: &impl Names<N>,
) -> Beams<N> {
    let mut waste = given.get::<Length<N>>(Key::Thrums).v();
    if given.has(Key::Header) {
        waste = waste + given.get::<Length<N>>(Key::Header).v();
    }
    if given.has(Key::Sample) {
        let sample: Length<N> = given.get(Key::Sample);
        waste = waste + sample.v() / (1.0 - set.take_up.v());
    }
    let words = "warp of each beam that makes no piece: thrums, heading, sample";
    let waste = names.figure("loom_waste", words, Length::from(waste));
    let gaps = |lengths: V<N>, warps: V<N>| {
        given.has(Key::Gap).then(|| given.get::<Length<N>>(Key::Gap).v() * (lengths - warps))
    };
    let length = |lengths: Count<N>, waste: V<N>, warps: V<N>| {
        let waste = gaps(lengths.v(), warps).map_or(waste, |gaps| waste + gaps);
        cloth::warp_length(at.warp_each, lengths, Length::from(waste))
    };
    let one = V::constant(1.0);
    if !given.has(Key::PiecesPerWarp) {
        let longest = length(lengths, waste.v(), one);
        let longest = names.figure("warp_length", "length of the warp", longest);
        return Beams { warps: Count::from(one), longest, waste, all: longest };
    }
    let (pieces, most): (Count<N>, Count<N>) =
        (given.get(Key::Pieces), given.get(Key::PiecesPerWarp));
    let warps = Count::from((pieces.v() / most.v() - 1e-6).ceil());
    let warps = names.figure("warps", "warps", warps);
    let times = if given.has(Key::Panels) { given.get::<Count<N>>(Key::Panels).v() } else { one };
    let full = Count::from(most.v().min(pieces.v()) * times);
    let full = names.figure("lengths_on_warp", "lengths on a full warp", full);
    let longest = length(full, waste.v(), one);
    let longest = names.figure("warp_length", "length of a full warp", longest);
    let rest = Count::from(lengths.v() - (warps.v() - 1.0) * full.v());
    let rest = names.figure("lengths_on_last", "lengths on the last warp", rest);
    let last = length(rest, waste.v(), one);
    names.figure("last_warp_length", "length of the last warp", last);
    let all = length(lengths, waste.v() * warps.v(), warps.v());
    let all = names.figure("warped_length", "length of all warps together", all);
    Beams { warps, longest, waste, all }
}

/// The whole of it.
pub(super) fn work<N: Number>(given: &impl Given<N>, names: &impl Names<N>) -> Work<N> {
    let set = setting(given, names);
    let at = set.layout(names);
    let ground_ends = match set.selvedge {
        None => at.ends,
        Some((each, _)) => Count::from(at.ends.v() - 2.0 * each.v()),
    };
    if given.has(Key::Reed) || given.has(Key::EndsPerDent) {
        let mut dents = ground_ends.v() / set.ends_per_dent.v();
        if let Some((each, per_dent)) = set.selvedge {
            // A selvedge whose last dent is not full takes it all the same.
            dents = dents + 2.0 * (each.v() / per_dent.v() - 1e-6).ceil();
        }
        names.figure("dents", "dents filled", Count::from(dents));
    }
    let pieces: Count<N> = given.get(Key::Pieces);
    let (mut lengths, mut panels) = (pieces, None);
    if given.has(Key::Panels) {
        let each: Count<N> = given.get(Key::Panels);
        let words = "lengths to weave";
        lengths = names.figure("lengths", words, Count::from(pieces.v() * each.v()));
        panels = Some(each);
    }
    let beams = beams(given, &set, &at, lengths, names);
    let beamed = cloth::warp_yarn_length(at.ends, beams.all);
    let beamed = names.figure("warp_beamed", "yarn on the beams", beamed);
    let spared = |length: Length<N>| {
        if !given.has(Key::Spare) {
            return length;
        }
        Length::from(length.v() * (1.0 + given.get::<Fraction<N>>(Key::Spare).v()))
    };
    let mut warp_yarn = beamed;
    if given.has(Key::WarpWaste) {
        let waste: Fraction<N> = given.get(Key::WarpWaste);
        warp_yarn = Length::from(beamed.v() * (1.0 + waste.v()));
    }
    let words = "warp yarn to prepare, with waste and spare";
    let warp_yarn = names.figure("warp_yarn", words, spared(warp_yarn));
    let mut weft_yarn = cloth::weft_yarn_length(at.weft_each, lengths, set.weft_waste);
    if given.has(Key::Sample) {
        let none = Shrinkage::base(N::constant(0.0));
        let picks = cloth::picks_in_piece(given.get(Key::Sample), none, set.picks);
        let each = cloth::weft_per_piece(picks, at.set_width, set.turn);
        let samples = cloth::weft_yarn_length(each, beams.warps, set.weft_waste);
        let samples = names.figure("sample_weft", "weft of the samples", samples);
        weft_yarn = Length::from(weft_yarn.v() + samples.v());
    }
    let words = "weft yarn to prepare, with waste and spare";
    let weft_yarn = names.figure("weft_yarn", words, spared(weft_yarn));
    let (warp, weft): (LinearDensity<N>, LinearDensity<N>) =
        (given.get(Key::Warp), given.get(Key::Weft));
    let warp_mass = yarn::mass_of_length(warp, warp_yarn);
    let warp_mass = names.figure("warp_mass", "mass of the warp yarn", warp_mass);
    let weft_mass = yarn::mass_of_length(weft, weft_yarn);
    let weft_mass = names.figure("weft_mass", "mass of the weft yarn", weft_mass);
    let both = Mass::from(warp_mass.v() + weft_mass.v());
    names.figure("yarn_mass", "mass of warp and weft yarn", both);
    packages(given, &at, beams.all, [warp_yarn, weft_yarn], [warp_mass, weft_mass], names);
    let in_piece = cloth::warp_mass(at.ends, at.warp_each, warp);
    let grey =
        cloth::grey_mass(in_piece, given.get(Key::Size), yarn::mass_of_length(weft, at.weft_each));
    let words = if given.has(Key::Size) {
        "mass of a length off the loom, with its size"
    } else {
        "mass of a length off the loom"
    };
    names.figure("grey_mass", words, grey);
    let finished = set.finished(&at, warp, weft, given.get(Key::Loss), names);
    let ends = cloth::sett_after_shrinkage(finished.ends, set.width_shrinkage);
    names.figure("ends_finished", "ends in the finished cloth", ends);
    let picks = cloth::sett_after_shrinkage(set.picks, set.length_shrinkage);
    names.figure("picks_finished", "picks in the finished cloth", picks);
    let piece = finished.woven.v() + finished.fringe.v();
    let piece = panels.map_or(piece, |panels| panels.v() * piece);
    names.figure("piece_mass", "mass of a finished piece, fringes and hems in", Mass::from(piece));
    Work {
        at,
        finished,
        ground_ends,
        warps: beams.warps,
        warp_length: beams.longest,
        loom_waste: beams.waste,
        warp_mass,
        weft_mass,
    }
}

/// Sections, bobbins, pirns, cones.
fn packages<N: Number>(
    given: &impl Given<N>,
    at: &Layout<N>,
    warped: Length<N>,
    [warp, weft]: [Length<N>; 2],
    masses: [Mass<N>; 2],
    names: &impl Names<N>,
) {
    if given.has(Key::Creel) {
        let creel: Count<N> = given.get(Key::Creel);
        let sections = cloth::warp_sections(at.ends, creel);
        let sections = names.figure("sections", "sections of the warp", sections);
        let full = Count::from(creel.v().min(at.ends.v()));
        let full = names.figure("section_ends", "ends in a full section", full);
        let width = Length::from(at.set_width.v() * full.v() / at.ends.v());
        names.figure("section_width", "width of a full section, as in the reed", width);
        let rest = Count::from(at.ends.v() - (sections.v() - 1.0) * full.v());
        names.figure("last_section_ends", "ends in the last section", rest);
        let each = Length::from(sections.v() * warped.v());
        names.figure("bobbin_yarn", "yarn that a bobbin in the creel gives", each);
    }
    if given.has(Key::Bobbin) {
        let bobbins = cloth::packages_for_length(warp, given.get(Key::Bobbin));
        names.figure("bobbins", "warp bobbins to wind", bobbins);
    }
    if given.has(Key::Pirn) {
        let pirns = cloth::packages_for_length(weft, given.get(Key::Pirn));
        names.figure("pirns", "pirns to wind", pirns);
    }
    if given.has(Key::Cone) {
        let cones = |mass: Mass<N>| yarn::packages_for_mass(mass, given.get(Key::Cone));
        names.figure("warp_cones", "cones of warp yarn", cones(masses[0]));
        names.figure("weft_cones", "cones of weft yarn", cones(masses[1]));
    }
}
