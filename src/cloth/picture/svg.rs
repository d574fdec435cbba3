//! Writing SVG.

use std::fmt::Write as _;

use super::Picture;
use crate::quantity::print::escape;

pub(super) const INK: &str = "#1a1a1a";
/// Height of small letters and of the title.
pub(super) const FONT: f64 = 11.0;
pub(super) const TITLE: f64 = 14.0;
/// From a line of small letters to the next.
pub(super) const LEADING: f64 = 15.0;

/// A coordinate, to a hundredth of a pixel.
pub(super) fn n(x: f64) -> String {
    let text = format!("{x:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// About how wide a line of small letters is.
pub(super) fn width_of(text: &str, size: f64) -> f64 {
    0.56 * size * text.chars().count() as f64
}

#[derive(Default)]
pub(super) struct Svg {
    body: String,
}

impl Svg {
    pub(super) fn raw(&mut self, text: &str) {
        self.body.push_str(text);
    }
    /// Text whose baseline begins, is centred or ends at a point: `start`, `middle`, `end`.
    pub(super) fn text(&mut self, (x, y): (f64, f64), anchor: &str, size: f64, text: &str) {
        let weight = if size >= TITLE { " font-weight=\"bold\"" } else { "" };
        let _ = write!(
            self.body,
            "<text x=\"{}\" y=\"{}\" text-anchor=\"{anchor}\" font-size=\"{}\"{weight}>{}</text>",
            n(x),
            n(y),
            n(size),
            escape(text)
        );
    }
    /// A bracket that marks a repeat.
    pub(super) fn bracket(&mut self, path: &str) {
        let _ = write!(
            self.body,
            "<path class=\"repeat\" d=\"{path}\" fill=\"none\" stroke=\"{INK}\" stroke-width=\"1.2\"/>"
        );
    }
    /// Sentences in small letters from a baseline on, each wrapped to a width; the baseline after them.
    pub(super) fn sentences(&mut self, (x, mut y): (f64, f64), wide: f64, all: &[String]) -> f64 {
        for sentence in all {
            let mut line = String::new();
            for word in sentence.split(' ') {
                if !line.is_empty() && width_of(&line, FONT) + width_of(word, FONT) > wide {
                    self.text((x, y), "start", FONT, &line);
                    y += LEADING;
                    line.clear();
                }
                if !line.is_empty() {
                    line.push(' ');
                }
                line.push_str(word);
            }
            self.text((x, y), "start", FONT, &line);
            y += LEADING;
        }
        y
    }
    /// The whole picture: it scales, and says what it shows to those who cannot see it.
    pub(super) fn finish(self, width: f64, height: f64, title: &str, about: &str) -> Picture {
        let (w, h) = (n(width.ceil()), n(height.ceil()));
        let svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w}\" height=\"{h}\" \
             viewBox=\"0 0 {w} {h}\" role=\"img\" font-family=\"sans-serif\" fill=\"{INK}\" \
             style=\"max-width:100%;height:auto\">\
             <title>{}</title><desc>{}</desc>\
             <rect width=\"{w}\" height=\"{h}\" fill=\"white\"/>{}</svg>\n",
            escape(title),
            escape(about),
            self.body
        );
        Picture { svg }
    }
}
