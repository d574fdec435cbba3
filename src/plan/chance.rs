//! How uncertain a value is, and simulating it.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

use crate::error::{Error, Result};
use crate::normal::Z95;
use crate::quantity::{Kind, print::of_kind};

/// Where the uncertainty of a value comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layer {
    /// The mill's own constant, not known well: the same for every lot.
    Mill,
    /// From lot to lot.
    Lot,
    /// From piece to piece: averages out over many.
    Piece,
}

impl Layer {
    /// The layer in words.
    pub const fn words(self) -> &'static str {
        match self {
            Layer::Mill => "mill's constant",
            Layer::Lot => "lot to lot",
            Layer::Piece => "piece to piece",
        }
    }
}

/// The scale on which a value is spread evenly to both sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Shares: ln(x/(1 − x)); a simulated lot stays between 0 and 1.
    Logit,
    /// Masses, lengths and the like: ln x; a simulated lot stays above 0.
    Log,
    /// As it is.
    Plain,
}

impl Scale {
    fn of(self, x: f64) -> f64 {
        match self {
            Scale::Logit => (x / (1.0 - x)).ln(),
            Scale::Log => x.ln(),
            Scale::Plain => x,
        }
    }
    #[inline]
    fn back(self, y: f64) -> f64 {
        match self {
            Scale::Logit => 1.0 / (1.0 + (-y).exp()),
            Scale::Log => y.exp(),
            Scale::Plain => y,
        }
    }
}

/// How a value is spread: normal to each side of the middle, on a scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Spread {
    /// Taken as known.
    Known,
    /// Two halves of a normal distribution that meet in the median.
    Normal {
        /// The scale.
        scale: Scale,
        /// The median, on the scale.
        middle: f64,
        /// Standard deviation below it.
        below: f64,
        /// Standard deviation above it.
        above: f64,
    },
}

impl Spread {
    /// From low, likely (median) and high, in base units, and the deviates of the two ends.
    pub(super) fn from_range(
        [low, likely, high]: [f64; 3],
        [z_low, z_high]: [f64; 2],
        kind: Kind,
    ) -> Result<Self> {
        let p = |x: f64| of_kind(x, kind);
        if !(low <= likely && likely <= high) {
            return Err(Error::range(format!(
                "low {}, likely {}, high {} are not in order; write the smallest first",
                p(low),
                p(likely),
                p(high)
            )));
        }
        let scale = match kind.family() {
            Kind::Fraction if low > 0.0 && high < 1.0 => Scale::Logit,
            _ if low > 0.0 && kind.family() != Kind::Fraction => Scale::Log,
            _ => Scale::Plain,
        };
        let middle = scale.of(likely);
        Ok(Spread::Normal {
            scale,
            middle,
            below: (middle - scale.of(low)) / -z_low,
            above: (scale.of(high) - middle) / z_high,
        })
    }
    /// A normal distribution, where it stays within what is possible in all but one lot in a thousand.
    pub(super) fn from_mean(name: &str, mean: f64, sd: f64, kind: Kind) -> Result<Self> {
        let (low, high) = kind.possible();
        let p = |x: f64| of_kind(x, kind);
        for (room, end, way) in [(mean - low, low, "below"), (high - mean, high, "above")] {
            if sd <= 0.0 || room >= Z999 * sd {
                continue;
            }
            let write = skewed(mean, sd, kind).map_or_else(
                || "write low, likely and high within what is possible".to_owned(),
                |[low, likely, high]| {
                    format!(
                        "write {name} = {{ low = \"{}\", likely = \"{}\", high = \"{}\" }}",
                        p(low),
                        p(likely),
                        p(high)
                    )
                },
            );
            return Err(Error::range(format!(
                "a mean of {} with an sd of {} would pile lots up at {}, which none can lie {way}; {write}",
                p(mean),
                p(sd),
                p(end)
            )));
        }
        Ok(Spread::normal(mean, sd))
    }
    /// A normal distribution.
    pub(super) fn normal(mean: f64, sd: f64) -> Self {
        Spread::Normal { scale: Scale::Plain, middle: mean, below: sd, above: sd }
    }
    /// The value at a standard normal deviate; `likely` where it is known.
    #[inline]
    pub fn at(&self, z: f64, likely: f64) -> f64 {
        match *self {
            Spread::Known => likely,
            Spread::Normal { scale, middle, below, above } => {
                scale.back(middle + z * if z < 0.0 { below } else { above })
            }
        }
    }
    /// True where the value is spread at all.
    pub fn is_open(&self) -> bool {
        matches!(self, Spread::Normal { below, above, .. } if *below > 0.0 || *above > 0.0)
    }
}

/// The deviate that one lot in a thousand exceeds.
const Z999: f64 = 3.090_232_306_167_813_5;

/// Low, likely and high of a logarithmic normal distribution with a mean and a standard deviation, from
/// the nearer end of what is possible, to two digits; none where it does not fit.
fn skewed(mean: f64, sd: f64, kind: Kind) -> Option<[f64; 3]> {
    let (low, high) = kind.possible();
    let from_high = high - mean < mean - low;
    let room = if from_high { high - mean } else { mean - low };
    let whole = (sd / room).powi(2) + 1.0;
    let (middle, width) = (room / whole.sqrt(), Z95 * whole.ln().sqrt());
    let [near, likely, far] = [-width, 0.0, width].map(|width| middle * width.exp());
    let ends = if from_high {
        [high - far, high - likely, high - near]
    } else {
        [low + near, low + likely, low + far]
    };
    let two_digits = |x: f64| format!("{x:.1e}").parse().unwrap_or(x);
    let ends = if from_high { ends } else { ends.map(two_digits) };
    (room > 0.0 && low < ends[0] && ends[0] < ends[1] && ends[1] < ends[2] && ends[2] < high)
        .then_some(ends)
}

/// Standard normal deviates, a fresh stream for each simulated lot: a lot is the same whichever
/// thread simulates it and in whatever order.
pub(super) struct Deviates {
    generator: ChaCha8Rng,
}

impl Deviates {
    /// The generator of a seed.
    pub(super) fn new(seed: u64) -> Self {
        Deviates { generator: ChaCha8Rng::seed_from_u64(seed) }
    }
    /// Fills `out` for a simulated lot.
    pub(super) fn fill(&mut self, lot: u64, out: &mut [f64]) {
        self.generator.set_stream(lot);
        self.generator.set_word_pos(0);
        // Box and Muller, Annals of Mathematical Statistics 29 (1958): two deviates from two even ones.
        for pair in out.chunks_mut(2) {
            let radius = (-2.0 * self.even().ln()).sqrt();
            let (sin, cos) = (std::f64::consts::TAU * self.even()).sin_cos();
            pair[0] = radius * cos;
            if let Some(second) = pair.get_mut(1) {
                *second = radius * sin;
            }
        }
    }
    /// Even between 0 (never) and 1.
    fn even(&mut self) -> f64 {
        ((self.generator.next_u64() >> 11) + 1) as f64 / (1u64 << 53) as f64
    }
}
