//! The effect of colour and weave on point paper: what is drawn of a face whose setts are not known.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use super::Picture;
use super::face::{Coloured, LETTERS, lettered};
use super::flat::Laid;
use super::squares::Squares;
use super::svg::{Svg, TITLE, n, width_of};
use crate::cloth::Weave;

impl Weave {
    /// Each square in the colour of the thread that lies on top, with a stroke where it is the warp.
    pub(super) fn effect(
        &self,
        title: &str,
        (ends, picks): (usize, usize),
        colours: &[Coloured; 2],
        words: &[String; 2],
    ) -> Picture {
        let side = (480.0 / ends.max(picks) as f64).clamp(5.0, 22.0);
        let (left, top) = (12.0 + LETTERS, 36.0 + LETTERS);
        let y = top + side * picks as f64;
        let paper =
            Squares { x: left, y, side, size: (ends, picks), repeat: (self.ends(), self.picks()) };
        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, title);
        let laid = |threads| Laid { threads, pitch: side, width: side };
        let key = lettered(&mut svg, (left, top), colours, [&laid(ends), &laid(picks)]);
        let on_top = |end, pick| {
            let warp = self.is_up(end, pick);
            (warp, if warp { colours[0].of_thread(end) } else { colours[1].of_thread(pick) })
        };
        let mut strokes: BTreeMap<String, String> = BTreeMap::new();
        let mut seen: BTreeMap<String, (bool, _)> = BTreeMap::new();
        for end in 0..ends {
            for pick in 0..picks {
                let (warp, colour) = on_top(end, pick);
                seen.entry(format!("{} {warp}", colour.hex())).or_insert((warp, colour));
                if warp {
                    let x = left + side * (end as f64 + 0.5);
                    let from = y - side * (pick as f64 + 0.25);
                    let path = strokes.entry(colour.edge().hex()).or_default();
                    let _ = write!(path, "M{} {}v-{}", n(x), n(from), n(0.5 * side));
                }
            }
        }
        svg.raw("<g class=\"effect\">");
        for (warp, colour) in seen.into_values() {
            let class = if warp { "warp" } else { "weft" };
            let d = paper.path(0.0, |end, pick| on_top(end, pick) == (warp, colour));
            svg.raw(&format!("<path class=\"{class}\" d=\"{d}\" fill=\"{}\"/>", colour.hex()));
        }
        for (stroke, d) in strokes {
            svg.raw(&format!(
                "<path class=\"stroke\" d=\"{d}\" fill=\"none\" stroke=\"{stroke}\" \
                 stroke-width=\"{}\"/>",
                n((0.1 * side).max(0.7))
            ));
        }
        paper.rule(&mut svg);
        svg.raw("</g>");
        let [warp, weft] = words.clone();
        let all = [
            key,
            warp,
            weft,
            "No sett was given: point paper, no scale. Each square has the colour of the thread on top, \
             and a stroke where that is the warp. A heavier line every eight."
                .to_owned(),
        ];
        let wide = (left + paper.width()).max(super::WORDS);
        let below = svg.sentences((12.0, y + 20.0), wide - 12.0, &all);
        let widest = (wide + 12.0).max(24.0 + width_of(title, 1.1 * TITLE));
        let about = format!(
            "Colours of {title} on point paper, {ends} ends × {picks} picks, each square in the colour of \
             the thread on top; not to scale, as no sett was given; {}; {}.",
            all[1], all[2]
        );
        svg.finish(widest, below, title, &about)
    }
}
