//! What lies on the beams: warps, the longest of them, the waste of each.

use super::inputs::Article;
use super::layout::{Layout, Setting};
use crate::calculation::Results;
use crate::cloth;
use crate::number::{Number, V};
use crate::quantity::{Count, Length};

/// What lies on the beams.
#[derive(Clone, Debug, Results)]
pub struct Beams<N> {
    /// lengths to weave, panels counted singly
    pub lengths: Option<Count<N>>,
    /// warp of each beam that makes no piece: thrums, heading, sample
    pub loom_waste: Length<N>,
    /// length of the warp; of a full one where there are several
    pub warp_length: Length<N>,
    /// Several warps.
    #[part]
    pub several: Option<Warps<N>>,
    /// yarn on the beams
    pub beamed_length: Length<N>,
}

/// Several warps for one order.
#[derive(Clone, Debug, Results)]
pub struct Warps<N> {
    /// warps
    pub warps: Count<N>,
    /// lengths on a full warp
    pub lengths_on_warp: Count<N>,
    /// lengths on the last warp
    pub lengths_on_last: Count<N>,
    /// length of the last warp
    pub last_warp_length: Length<N>,
    /// length of all warps together
    pub warped_length: Length<N>,
}

impl<N: Number> Beams<N> {
    /// Length of all warps together.
    pub(super) fn all(&self) -> Length<N> {
        self.several.as_ref().map_or(self.warp_length, |several| several.warped_length)
    }
    /// The number of warps.
    pub(super) fn number(&self) -> Count<N> {
        let one = Count::base(N::constant(1.0));
        self.several.as_ref().map_or(one, |several| several.warps)
    }
}

/// What lies on the beams for a number of pieces.
pub(super) fn beams<N: Number>(
    article: &Article<N>,
    set: &Setting<N>,
    at: &Layout<N>,
    pieces: Count<N>,
) -> Beams<N> {
    let idle = &article.idle;
    let panels = article.panels();
    let named = panels.map(|panels| Count::from(pieces.v() * panels.v()));
    let lengths = named.unwrap_or(pieces);
    let mut waste = idle.thrums.v();
    if let Some(header) = idle.header {
        waste = waste + header.v();
    }
    if let Some(sample) = idle.sample_length {
        waste = waste + sample.v() / (1.0 - set.take_up.v());
    }
    let loom_waste = Length::from(waste);
    let length = |lengths: Count<N>, waste: V<N>, warps: V<N>| {
        let gaps = idle.gap.map(|gap| gap.v() * (lengths.v() - warps));
        let waste = gaps.map_or(waste, |gaps| waste + gaps);
        cloth::warp_length(at.warp_per_piece, lengths, Length::from(waste))
    };
    let one = V::constant(1.0);
    let (warp_length, several) = match idle.pieces_per_warp {
        None => (length(lengths, waste, one), None),
        Some(most) => {
            let warps = Count::from((pieces.v() / most.v()).round_up(1e-6));
            let times = panels.map_or(one, Count::v);
            let full = Count::from(most.v().min(pieces.v()) * times);
            let last = Count::from(lengths.v() - (warps.v() - 1.0) * full.v());
            let several = Warps {
                warps,
                lengths_on_warp: full,
                lengths_on_last: last,
                last_warp_length: length(last, waste, one),
                warped_length: length(lengths, waste * warps.v(), warps.v()),
            };
            (length(full, waste, one), Some(several))
        }
    };
    let all = several.as_ref().map_or(warp_length, |several| several.warped_length);
    Beams {
        lengths: named,
        loom_waste,
        warp_length,
        several,
        beamed_length: cloth::warp_yarn_length(at.ends, all),
    }
}
