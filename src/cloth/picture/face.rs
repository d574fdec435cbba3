//! The face of the cloth, drawn flat: threads in their colours, as thick and as far apart as they are.

use std::fmt::Write as _;

use super::colours::Colour;
use super::flat::{Flat, Laid};
use super::svg::{FONT, INK, Svg, TITLE, n, width_of};
use super::{Picture, shown};
use crate::cloth::{ColourOrder, Weave};
use crate::error::{Error, Result};
use crate::quantity::print;
use crate::quantity::{Diameter, LinearDensity, Sett, SpecificVolume};
use crate::yarn::yarn_diameter;

/// More threads than this each way are too thin to be seen.
const MOST: usize = 240;
/// Threads that are shown at least.
const FEW: usize = 24;
/// Least and most pixels from thread to thread.
const PITCH: (f64, f64) = (5.0, 26.0);
/// Size aimed at, in pixels.
const SIZE: f64 = 480.0;
/// Share of the spacing that a thread fills of which no diameter is known.
const FILLED: f64 = 0.8;
/// Millimetres in an inch, by definition.
const INCH: f64 = 25.4;

/// The threads of one direction.
#[derive(Clone, Debug, Default)]
pub struct Threads {
    /// Their colours; None for a light warp and a dark weft.
    pub colours: Option<ColourOrder>,
    /// Their sett; None for threads as far apart as those of the other direction.
    pub sett: Option<Sett<f64>>,
    /// Their diameter; None to have it from the count, or four fifths of the spacing without one.
    pub diameter: Option<Diameter<f64>>,
    /// Their count.
    pub count: Option<LinearDensity<f64>>,
    /// What a gram of the yarn fills, for the diameter; None for wool packed to 0.65, from memory.
    pub specific_volume: Option<SpecificVolume<f64>>,
}

/// What a gram of worsted-spun wool fills, in cm³: 1.31 g/cm³ packed to 0.65, from memory.
const WOOL: f64 = 1.0 / (0.65 * 1.31);

/// What a face is drawn from.
#[derive(Clone, Debug, Default)]
pub struct Face {
    /// The warp.
    pub warp: Threads,
    /// The weft.
    pub weft: Threads,
    /// Repeats of weave and colours together, across and up; None for as many as show the cloth.
    pub repeats: Option<(usize, usize)>,
    /// The title; None for the name of the weave.
    pub title: Option<String>,
    /// A scale bar in inches too.
    pub inches: bool,
}

/// Threads of one direction in millimetres.
struct Size {
    spacing: f64,
    diameter: f64,
}

/// The colours of the threads of one direction, by name.
pub(super) struct Coloured {
    names: Vec<String>,
    colours: Vec<Colour>,
}

impl Coloured {
    fn of(threads: &Threads, name: &str, colour: Colour) -> Result<Coloured> {
        let Some(order) = &threads.colours else {
            return Ok(Coloured { names: vec![name.to_owned()], colours: vec![colour] });
        };
        let names: Vec<String> = order.sequence().into_iter().map(str::to_owned).collect();
        let colours = names.iter().map(|name| Colour::parse(name)).collect::<Result<_>>()?;
        Ok(Coloured { names, colours })
    }
    pub(super) fn of_thread(&self, thread: usize) -> Colour {
        self.colours[thread % self.colours.len()]
    }
    fn name(&self, thread: usize) -> &str {
        &self.names[thread % self.names.len()]
    }
    fn repeat(&self) -> usize {
        self.names.len()
    }
}

impl Threads {
    /// The diameter in millimetres, given or from the count.
    fn thickness(&self) -> Option<f64> {
        let by_count = || {
            let volume = self.specific_volume.unwrap_or(SpecificVolume::base(WOOL));
            self.count.map(|count| yarn_diameter(volume, count))
        };
        self.diameter.or_else(by_count).map(Diameter::value)
    }
    /// Their spacing and diameter; None where neither direction has a sett.
    fn size(&self, other: &Threads, what: &str) -> Result<Option<Size>> {
        let spacing = match self.sett.or(other.sett).map(Sett::value) {
            Some(sett) if sett > 0.0 && sett.is_finite() => 10.0 / sett,
            Some(_) => {
                return Err(Error::range(format!("the {what} has no sett that can be drawn")));
            }
            None => {
                return match self.thickness() {
                    Some(d) => Err(Error::notation(format!(
                        "a diameter of {} for the {what} says nothing without a sett; give the sett of \
                         the warp or the weft too, such as '10 ends/cm'",
                        print::with_unit(d, "mm")
                    ))),
                    None => Ok(None),
                };
            }
        };
        let diameter = self.thickness().unwrap_or(FILLED * spacing);
        if diameter > 3.0 * spacing || diameter < 0.02 * spacing {
            return Err(Error::range(format!(
                "threads of {} every {} in the {what} cannot be drawn: a diameter is between a \
                 fiftieth and three times the spacing; look at its unit and that of the sett",
                print::with_unit(diameter, "mm"),
                print::with_unit(spacing, "mm")
            )));
        }
        Ok(Some(Size { spacing, diameter }))
    }
    /// What the legend says of them, and what the picture takes for granted. Without a scale there is
    /// no thickness to speak of.
    fn words(&self, what: &str, default: &str, size: Option<&Size>) -> String {
        let mut words = match &self.colours {
            Some(order) if order.threads() == 1 => format!("{what}: {}", order.colours()[0]),
            Some(order) => format!("{what}: {order}"),
            None => format!("{what}: {default}, colour not given"),
        };
        let Some(size) = size else { return words };
        match self.sett {
            Some(sett) => {
                let _ = write!(words, "; {}", print::with_unit(sett.value(), "threads/cm"));
            }
            None => words.push_str("; sett not given, drawn at that of the other threads"),
        }
        if let Some(count) = self.count {
            let _ = write!(words, "; {}", print::with_unit(count.value(), "tex"));
        }
        match self.thickness() {
            Some(d) => {
                let _ = write!(words, "; {} thick", print::with_unit(d, "mm"));
            }
            None => {
                let _ = write!(
                    words,
                    "; thickness not given, drawn as {} of the spacing",
                    print::figure(FILLED)
                );
            }
        }
        if let (Some(_), None) = (self.count, self.diameter) {
            let (volume, whose) = match self.specific_volume {
                Some(v) => (v.value(), ""),
                None => (WOOL, " (wool, from memory)"),
            };
            let _ = write!(words, " at {}{whose}", print::with_unit(volume, "cm³/g"));
        }
        if size.diameter > size.spacing {
            words.push_str("; thicker than their spacing, drawn one over the next");
        }
        words
    }
}

const WARP: Colour = Colour([0xf0, 0xe0, 0xbc]);
const WEFT: Colour = Colour([0x7a, 0x4e, 0x2d]);

impl Weave {
    /// The face of the cloth, seen from above and drawn flat: threads at their true diameters and
    /// spacings, with a scale bar. Without a sett it is not to scale, and the colours are drawn as
    /// squares on point paper.
    pub fn face(&self, face: &Face) -> Result<Picture> {
        let colours =
            [Coloured::of(&face.warp, "light", WARP)?, Coloured::of(&face.weft, "dark", WEFT)?];
        let repeat =
            (lcm(self.ends(), colours[0].repeat()), lcm(self.picks(), colours[1].repeat()));
        let sizes = face.warp.size(&face.weft, "warp")?.zip(face.weft.size(&face.warp, "weft")?);
        // As much of the closer threads as shows about a square of cloth.
        let few = |size: &Size, other: &Size| {
            let times = (other.spacing / size.spacing).clamp(1.0, 4.0);
            (FEW as f64 * times) as usize
        };
        let few = sizes.as_ref().map_or((FEW, FEW), |(a, b)| (few(a, b), few(b, a)));
        let (_, threads) = shown(repeat, face.repeats, few, MOST)?;
        let title = face.title.clone().unwrap_or_else(|| self.to_string());
        let words = [
            face.warp.words("warp", "light", sizes.as_ref().map(|s| &s.0)),
            face.weft.words("weft", "dark", sizes.as_ref().map(|s| &s.1)),
        ];
        let Some((across, up)) = sizes else {
            return Ok(self.effect(&title, threads, &colours, &words));
        };

        let (ends, picks) = threads;
        let (wide, high) = (across.spacing * ends as f64, up.spacing * picks as f64);
        let closest = across.spacing.min(up.spacing);
        let scale = (SIZE / wide.max(high)).clamp(PITCH.0 / closest, PITCH.1 / closest);
        let laid = |size: &Size, threads| Laid {
            threads,
            pitch: size.spacing * scale,
            width: size.diameter * scale,
        };
        let flat = Flat {
            weave: self,
            warp: laid(&across, ends),
            weft: laid(&up, picks),
            colours: &colours,
        };
        let (w, h) = (wide * scale, high * scale);
        let (left, top) = (12.0 + LETTERS, 36.0 + LETTERS);
        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, &title);
        let key = lettered(&mut svg, (left, top), &colours, [&flat.warp, &flat.weft]);
        // A picture within the picture cuts off what runs over its edge.
        svg.raw(&format!(
            "<svg class=\"cloth\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" overflow=\"hidden\">",
            n(left),
            n(top),
            n(w),
            n(h)
        ));
        flat.draw(&mut svg);
        svg.raw("</svg>");
        let mut y = top + h + 18.0;
        let millimetres = bar(w / 3.0 / scale);
        scale_bar(&mut svg, (left, y), millimetres * scale, &print::with_unit(millimetres, "mm"));
        if face.inches {
            y += 19.0;
            let (inches, text) = inch_bar(w / 3.0 / scale / INCH);
            scale_bar(&mut svg, (left, y), inches * INCH * scale, &text);
        }
        let about = format!(
            "Face of {title}, {ends} ends × {picks} picks seen from above, drawn flat to scale; {}; {}.",
            words[0], words[1]
        );
        let [warp, weft] = words;
        let wide = (left + w).max(super::WORDS);
        let below = svg.sentences((12.0, y + 24.0), wide - 12.0, &[key, warp, weft]);
        let widest = (wide + 12.0).max(24.0 + width_of(&title, 1.1 * TITLE));
        Ok(svg.finish(widest, below, &title, &about))
    }
}

/// Room for the letters of the colours.
pub(super) const LETTERS: f64 = 14.0;

/// A letter for each colour at its stripes, above the warp and on the left of the weft: the colours are
/// told apart in grey too. What the letters mean.
pub(super) fn lettered(
    svg: &mut Svg,
    (left, top): (f64, f64),
    colours: &[Coloured; 2],
    laid: [&Laid; 2],
) -> String {
    let mut names: Vec<&str> = Vec::new();
    for name in colours.iter().flat_map(|c| &c.names) {
        if !names.contains(&name.as_str()) {
            names.push(name);
        }
    }
    let letter = |name: &str| {
        let at = names.iter().position(|known| *known == name).unwrap_or(0);
        let letter = |k: usize| char::from(b'A' + (k % 26) as u8);
        if at < 26 {
            letter(at).to_string()
        } else {
            format!("{}{}", letter(at / 26 - 1), letter(at))
        }
    };
    svg.raw("<g class=\"letters\">");
    let high = laid[1].pitch * laid[1].threads as f64;
    for (across, (colours, laid)) in [true, false].into_iter().zip(colours.iter().zip(laid)) {
        let mut from = 0;
        let mut last = f64::NEG_INFINITY;
        for thread in 1..=laid.threads {
            if thread < laid.threads && colours.name(thread) == colours.name(from) {
                continue;
            }
            let text = letter(colours.name(from));
            let middle = 0.5 * laid.pitch * (from + thread) as f64;
            if middle - last > width_of(&text, FONT) + 2.0 {
                let at = if across {
                    (left + middle, top - 4.0)
                } else {
                    (left - 8.0, top + high - middle + 0.36 * FONT)
                };
                svg.text(at, "middle", FONT, &text);
                last = middle;
            }
            from = thread;
        }
    }
    svg.raw("</g>");
    names.iter().map(|name| format!("{} {name}", letter(name))).collect::<Vec<_>>().join(", ")
}

/// A line of a known length with its length beside it.
fn scale_bar(svg: &mut Svg, (x, y): (f64, f64), long: f64, text: &str) {
    svg.raw(&format!(
        "<path class=\"scale\" d=\"M{} {}V{}M{} {}H{}M{} {}V{}\" fill=\"none\" stroke=\"{INK}\" \
         stroke-width=\"1.5\"/>",
        n(x),
        n(y - 4.0),
        n(y + 4.0),
        n(x),
        n(y),
        n(x + long),
        n(x + long),
        n(y - 4.0),
        n(y + 4.0)
    ));
    svg.text((x + long + 6.0, y + 4.0), "start", FONT, text);
}

/// A round length of the scale bar, at most so many of its unit.
fn bar(most: f64) -> f64 {
    let power = 10.0_f64.powf(most.log10().floor());
    [5.0, 2.0, 1.0].into_iter().map(|k| k * power).find(|b| *b <= most).unwrap_or(power)
}

/// A length of the scale bar in inches, at most so many: halves of halves below one.
fn inch_bar(most: f64) -> (f64, String) {
    let part = [2_u32, 4, 8, 16, 32].into_iter().find(|part| 1.0 / f64::from(*part) <= most);
    match part {
        Some(part) if most < 1.0 => (1.0 / f64::from(part), format!("1/{part} in")),
        _ => (bar(most), print::with_unit(bar(most), "in")),
    }
}

/// The least number of threads that both repeat in.
fn lcm(a: usize, b: usize) -> usize {
    let (mut x, mut y) = (a, b);
    while y != 0 {
        (x, y) = (y, x % y);
    }
    a / x * b
}
