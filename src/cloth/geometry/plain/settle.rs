//! The whole cloth from what settles it.

use super::super::peirce::Filling;
use super::super::thread::{FromCrimp, FromHeight, FromSpacing, angle, height, length, spacing};
use super::{KNOWN, OF_A_SYSTEM, SYSTEMS};
use crate::number::{Name, Number, V};

/// What is known, in the order of the inputs and in base units.
pub(super) type Given<N> = [Option<V<N>>; KNOWN];

/// One wave, in millimetres and radians.
#[derive(Clone, Copy)]
pub(super) struct Wave<N> {
    pub(super) spacing: V<N>,
    pub(super) length: V<N>,
    pub(super) height: V<N>,
    pub(super) angle: V<N>,
}

/// A cloth that is settled.
pub(super) struct Cloth<N> {
    pub(super) diameters: V<N>,
    pub(super) warp_diameter: Option<V<N>>,
    pub(super) weft_diameter: Option<V<N>>,
    /// Of the warp and of the weft.
    pub(super) waves: [Wave<N>; 2],
}

/// What one system is known by.
struct Partial<N> {
    spacing: Option<V<N>>,
    length: Option<V<N>>,
    height: Option<V<N>>,
    angle: Option<V<N>>,
    crimp: Option<V<N>>,
    /// What spacing, length, height and angle are called.
    names: [Name; 4],
}

const NAMES: [[Name; 4]; 2] = [
    [
        ["p₂", "mm", "spacing of the picks"],
        ["l₁", "mm", "length of warp between picks"],
        ["h₁", "mm", "height of the warp's wave"],
        ["θ₁", "rad", "weave angle of the warp"],
    ],
    [
        ["p₁", "mm", "spacing of the ends"],
        ["l₂", "mm", "length of weft between ends"],
        ["h₂", "mm", "height of the weft's wave"],
        ["θ₂", "rad", "weave angle of the weft"],
    ],
];
const SUM: Name = ["D", "mm", "sum of the two diameters"];

impl<N: Number> Partial<N> {
    fn of(given: &Given<N>, system: usize) -> Self {
        let names = NAMES[system];
        let [sett, crimp, length, height, angle] =
            std::array::from_fn::<_, OF_A_SYSTEM, _>(|k| given[SYSTEMS[system] + k]);
        let spacing = sett.map(|n| (10.0 / n).named(names[0]));
        let angle = angle.map(|degrees| degrees * (std::f64::consts::PI / 180.0));
        Partial { spacing, length, height, angle, crimp, names }
    }
    /// Spacing and length, where both follow without an angle.
    fn measures(&self) -> Option<(V<N>, V<N>)> {
        let [p, l, ..] = self.names;
        match (self.spacing, self.length, self.crimp) {
            (Some(spacing), Some(length), _) => Some((spacing, length)),
            (Some(spacing), None, Some(crimp)) => {
                Some((spacing, (spacing * (1.0 + crimp)).named(l)))
            }
            (None, Some(length), Some(crimp)) => Some(((length / (1.0 + crimp)).named(p), length)),
            _ => None,
        }
    }
    /// The whole wave from two of its figures.
    fn wave(&self, d: V<N>) -> Option<Wave<N>> {
        let [p, l, h, t] = self.names;
        let by_angle = |angle: V<N>, length: V<N>, known: Option<V<N>>| Wave {
            spacing: known.unwrap_or_else(|| spacing(angle, length, d).named(p)),
            height: self.height.unwrap_or_else(|| height(angle, length, d).named(h)),
            length,
            angle,
        };
        let with_spacing = |angle: V<N>, spacing: V<N>| {
            by_angle(angle, length(angle, spacing, d).named(l), Some(spacing))
        };
        if let Some((spacing, length)) = self.measures() {
            let angle = V::solved::<FromSpacing, 3>([length, spacing, d], t);
            return Some(by_angle(angle, length, Some(spacing)));
        }
        Some(match (self.height, self.angle) {
            (Some(height), Some(angle)) => {
                let straight = (height - d * (1.0 - angle.cos())) / angle.sin();
                by_angle(angle, (d * angle + straight).named(l), None)
            }
            (Some(height), None) => match (self.spacing, self.length, self.crimp) {
                (Some(spacing), ..) => with_spacing(angle(height, spacing, d).named(t), spacing),
                (_, Some(length), _) => {
                    by_angle(V::solved::<FromHeight, 3>([length, height, d], t), length, None)
                }
                (.., Some(crimp)) => {
                    let spacing = V::solved::<FromCrimp, 3>([crimp, height, d], p);
                    with_spacing(angle(height, spacing, d).named(t), spacing)
                }
                _ => return None,
            },
            (None, Some(angle)) => match (self.spacing, self.length, self.crimp) {
                (Some(spacing), ..) => with_spacing(angle, spacing),
                (_, Some(length), _) => by_angle(angle, length, None),
                (.., Some(crimp)) => {
                    let arc = angle.sin() - angle * angle.cos();
                    let spacing = d * arc / (1.0 - (1.0 + crimp) * angle.cos());
                    with_spacing(angle, spacing.named(p))
                }
                _ => return None,
            },
            (None, None) => return None,
        })
    }
}

/// The cloth; `None` where what is given does not settle one.
pub(super) fn settle<N: Number>(given: &Given<N>) -> Option<Cloth<N>> {
    let mut partial = [0, 1].map(|system| Partial::of(given, system));
    let [mut warp_diameter, mut weft_diameter] = [given[0], given[1]];
    let diameters = match (warp_diameter, weft_diameter) {
        (Some(warp), Some(weft)) => (warp + weft).named(SUM),
        (warp, weft) => {
            let ((p2, l1), (p1, l2)) = (partial[0].measures()?, partial[1].measures()?);
            let diameters = V::solved::<Filling, 4>([l1, p2, l2, p1], SUM);
            weft_diameter = weft.or_else(|| {
                warp.map(|d| (diameters - d).named(["d₂", "mm", "diameter of the weft"]))
            });
            warp_diameter = warp.or_else(|| {
                weft.map(|d| (diameters - d).named(["d₁", "mm", "diameter of the warp"]))
            });
            diameters
        }
    };
    // What one wave does not take of the height, the other has.
    let mut waves = [0, 1].map(|system| partial[system].wave(diameters));
    for system in [0, 1] {
        let height = partial[system].height.or(waves[system].map(|wave| wave.height));
        if let (Some(height), None) = (height, waves[1 - system]) {
            let other = &mut partial[1 - system];
            other.height = Some((diameters - height).named(other.names[2]));
            waves[1 - system] = other.wave(diameters);
        }
    }
    let [Some(warp), Some(weft)] = waves else { return None };
    Some(Cloth { diameters, warp_diameter, weft_diameter, waves: [warp, weft] })
}

impl<N: Number> Cloth<N> {
    /// No cloth.
    pub(super) fn none() -> Self {
        let none = V::constant(f64::NAN);
        let wave = Wave { spacing: none, length: none, height: none, angle: none };
        Cloth { diameters: none, warp_diameter: None, weft_diameter: None, waves: [wave; 2] }
    }
}

impl Cloth<f64> {
    /// Whether it can be.
    pub(super) fn is_possible(&self) -> bool {
        let d = self.diameters.value();
        let near = 1e-9 * d;
        self.waves.iter().all(|wave| {
            let [p, l, h, t] = [wave.spacing, wave.length, wave.height, wave.angle].map(V::value);
            p > 0.0
                && p.is_finite()
                && l >= p - near
                && (-near..=d + near).contains(&h)
                && (0.0..=std::f64::consts::FRAC_PI_2 + 1e-9).contains(&t)
                && l - d * t >= -near
        }) && [self.warp_diameter, self.weft_diameter].iter().flatten().all(|d| d.value() > 0.0)
    }
    /// What Peirce's five equations leave of zero, at most.
    pub(super) fn residual(&self) -> f64 {
        let d = self.diameters;
        let [warp, weft] = &self.waves;
        let of = |wave: &Wave<f64>| {
            let [p, h] = [spacing(wave.angle, wave.length, d), height(wave.angle, wave.length, d)];
            [(p - wave.spacing).value(), (h - wave.height).value()]
        };
        let sum = (warp.height + weft.height - d).value();
        of(warp).into_iter().chain(of(weft)).chain([sum]).fold(0.0, |most, x| most.max(x.abs()))
    }
}
