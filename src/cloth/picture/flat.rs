//! Threads that cross, drawn flat: whole threads first, then the ends where they lie on top.

use std::fmt::Write as _;

use super::colours::Colour;
use super::face::Coloured;
use super::svg::{Svg, n};
use crate::cloth::Weave;

/// What is seen between the threads: neither black nor white, which yarns are.
const BETWEEN: &str = "#d8d8d8";

/// The threads of one direction in pixels.
pub(super) struct Laid {
    pub(super) threads: usize,
    /// From the middle of a thread to the middle of the next.
    pub(super) pitch: f64,
    /// Their diameter.
    pub(super) width: f64,
}

impl Laid {
    fn whole(&self) -> f64 {
        self.pitch * self.threads as f64
    }
    /// The middle of a thread, from the first edge.
    fn middle(&self, thread: usize) -> f64 {
        self.pitch * (thread as f64 + 0.5)
    }
    /// A thread's outline lies within its diameter.
    fn outline(&self) -> f64 {
        (0.06 * self.width).clamp(0.3, 1.2)
    }
    /// How far from its middle a thread is passed over by one that lies on it: to its edge, or half way
    /// to the next where threads touch.
    fn reach(&self) -> f64 {
        0.5 * self.width.min(self.pitch)
    }
}

pub(super) struct Flat<'w> {
    pub(super) weave: &'w Weave,
    pub(super) warp: Laid,
    pub(super) weft: Laid,
    pub(super) colours: &'w [Coloured; 2],
}

impl Flat<'_> {
    pub(super) fn draw(&self, svg: &mut Svg) {
        let (warp, weft) = (&self.warp, &self.weft);
        let (w, h) = (warp.whole(), weft.whole());
        svg.raw(&format!("<rect width=\"{}\" height=\"{}\" fill=\"{BETWEEN}\"/>", n(w), n(h)));
        svg.raw("<g class=\"warp\">");
        for end in 0..warp.threads {
            let x = warp.middle(end) - 0.5 * warp.width;
            svg.raw(&thread((x, 0.0), (warp.width, h), self.colours[0].of_thread(end)));
            self.sides(svg, end, &[(0.0, h)]);
        }
        svg.raw("</g><g class=\"weft\">");
        for pick in 0..weft.threads {
            let y = h - weft.middle(pick) - 0.5 * weft.width;
            let colour = self.colours[1].of_thread(pick);
            svg.raw(&thread((0.0, y), (w, weft.width), colour));
            let o = 0.5 * weft.outline();
            let (above, below) = (n(y + o), n(y + weft.width - o));
            let d = format!("M0 {above}H{w}M0 {below}H{w}", w = n(w));
            outline(svg, &d, colour, weft.outline());
        }
        svg.raw("</g><g class=\"warp-up\">");
        for end in 0..warp.threads {
            self.floats(svg, end);
        }
        svg.raw("</g>");
    }
    /// An end where it lies on the picks.
    fn floats(&self, svg: &mut Svg, end: usize) {
        let (warp, weft) = (&self.warp, &self.weft);
        let x = warp.middle(end) - 0.5 * warp.width;
        let along: Vec<(f64, f64)> = runs(|pick| self.weave.is_up(end, pick), weft.threads)
            .into_iter()
            .map(|(from, to)| {
                let down = |middle: f64| weft.whole() - middle;
                let (first, last) = (weft.middle(from), weft.middle(to - 1));
                (down(last + weft.reach()), down(first - weft.reach()))
            })
            .collect();
        let mut d = String::new();
        for (top, bottom) in &along {
            let _ = write!(
                d,
                "M{} {}h{}V{}h-{}z",
                n(x),
                n(*top),
                n(warp.width),
                n(*bottom),
                n(warp.width)
            );
        }
        if d.is_empty() {
            return;
        }
        let colour = self.colours[0].of_thread(end);
        svg.raw(&format!("<path d=\"{d}\" fill=\"{}\"/>", colour.hex()));
        self.sides(svg, end, &along);
        if weft.width < weft.pitch {
            return;
        }
        // Where picks touch, no gap shows where the end goes down.
        let mut d = String::new();
        for (top, bottom) in along {
            for y in [top, bottom] {
                let _ = write!(d, "M{} {}h{}", n(x), n(y), n(warp.width));
            }
        }
        outline(svg, &d, colour, warp.outline());
    }
    /// The outline of an end on both sides.
    fn sides(&self, svg: &mut Svg, end: usize, along: &[(f64, f64)]) {
        let (warp, colour) = (&self.warp, self.colours[0].of_thread(end));
        let (left, o) = (warp.middle(end) - 0.5 * warp.width, 0.5 * warp.outline());
        let (left, right) = (n(left + o), n(left + warp.width - o));
        let mut d = String::new();
        for (from, to) in along.iter().map(|(from, to)| (n(*from), n(*to))) {
            let _ = write!(d, "M{left} {from}V{to}M{right} {from}V{to}");
        }
        outline(svg, &d, colour, warp.outline());
    }
}

/// A whole thread.
fn thread((x, y): (f64, f64), (w, h): (f64, f64), colour: Colour) -> String {
    format!(
        "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"{}\"/>",
        n(x),
        n(y),
        n(w),
        n(h),
        colour.hex()
    )
}

fn outline(svg: &mut Svg, d: &str, colour: Colour, width: f64) {
    svg.raw(&format!(
        "<path class=\"outline\" d=\"{d}\" fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"/>",
        colour.edge().hex(),
        n(width)
    ));
}

/// Where floats begin and end: runs of threads that are passed over.
fn runs(over: impl Fn(usize) -> bool, threads: usize) -> Vec<(usize, usize)> {
    let mut all = Vec::new();
    let mut from = None;
    for k in 0..threads {
        match (over(k), from) {
            (true, None) => from = Some(k),
            (false, Some(start)) => {
                all.push((start, k));
                from = None;
            }
            _ => {}
        }
    }
    all.extend(from.map(|start| (start, threads)));
    all
}
