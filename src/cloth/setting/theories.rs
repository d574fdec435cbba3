//! The theories of setting, each run on one weave and its yarns.

use super::interlacing::{Interlacing, WeaveClass};
use super::setts::{SettsInputs, share};
use crate::calculation::Results;
use crate::cloth::tables::{BRIERLEY_CONSTANTS, BRIERLEY_EXPONENTS, GALCERAN_MATERIALS};
use crate::cloth::{self, diameters_side_by_side, maximum_sett};
use crate::number::Number;
use crate::quantity::print::{constant, figure, of_kind};
use crate::quantity::{Count, Diameter, Kind, LinearDensity, Ratio, Sett};
use crate::source::basis;
use crate::yarn;

const PLAIN_RULE: &str = "round hard threads in one plane; a thread passing between is given its whole \
                          diameter; no bending, no pressure";
const BENT: &str = "round hard threads; at an intersection neighbours stand √3 diameters apart, \
                    elsewhere they touch";
const JAM: &str = "round threads that neither flatten nor stretch, both systems jammed and bent alike; \
                   the diameter by the specific volume of the yarn";
const BRIERLEY_SAYS: &str = "worsted and cotton mill practice, square cloth of one yarn; constants \
                             from memory";
const GALCERAN_SAYS: &str = "an upper limit: the yarn is taken for 10 to 25 % thinner than by \
                             Ashenhurst; intersections for each thread are as remembered";
const TAYLOR_SAYS: &str = "balanced plain cloth, cotton: half of the diameters, and 5 per cent more \
                           since threads leave the plane";

/// What one theory says.
#[derive(Clone, Debug, Results)]
pub struct Theory<N> {
    #[label]
    pub(super) key: &'static str,
    /// closest ends
    #[head = "ends"]
    pub warp_sett: Option<Sett<N>>,
    /// closest picks
    #[head = "picks"]
    pub weft_sett: Option<Sett<N>>,
    /// ends wanted, on the closest
    #[head = "your ends"]
    pub warp_sett_share: Option<Ratio<N>>,
    /// picks wanted, on the closest
    #[head = "your picks"]
    pub weft_sett_share: Option<Ratio<N>>,
    /// most picks at the ends wanted
    #[head = "most picks then"]
    pub most_weft_sett: Option<Sett<N>>,
}

/// What there is to say about a theory besides its numbers.
pub(super) struct About {
    pub(super) name: &'static str,
    /// The constants that it was run with.
    pub(super) with: String,
    /// Why it says nothing.
    pub(super) why_not: String,
    /// What it takes for granted.
    pub(super) assumes: &'static str,
    /// Key of the source, see [`crate::source`].
    pub(super) source: &'static str,
    /// What there is to know of its basis besides.
    pub(super) besides: &'static str,
}

impl About {
    /// What the theory rests on, in words.
    pub(super) fn basis(&self) -> String {
        format!("{}{}", basis(self.source).words(), self.besides)
    }
}

type Pair<N> = (Sett<N>, Sett<N>);
type Said<T> = std::result::Result<T, String>;

/// Warp, weft and weave.
struct Bench<'a, N> {
    weave: &'a Interlacing,
    given: &'a SettsInputs<N>,
    warp: LinearDensity<N>,
    weft: LinearDensity<N>,
    /// Threads for each intersection of a pick: what the ends have to make room for.
    weft_float: Count<N>,
    warp_float: Count<N>,
    one: Count<N>,
    /// Counts alike; counts and floats alike.
    like_yarns: bool,
    square: bool,
    rows: Vec<(Theory<N>, About)>,
}

fn ratio<N: Number>(number: f64) -> Ratio<N> {
    Ratio::base(N::constant(number))
}

/// Every theory on a weave and its yarns.
pub(super) fn theories<N: Number>(
    weave: &Interlacing,
    given: &SettsInputs<N>,
) -> Vec<(Theory<N>, About)> {
    let near = |a: f64, b: f64| (a / b - 1.0).abs() < 1e-9;
    let warp = given.yarns.warp_count;
    let weft = given.yarns.weft_count.unwrap_or(warp);
    let like_yarns = near(warp.value(), weft.value());
    let weft = if like_yarns { warp } else { weft };
    let count = |number: f64| Count::base(N::constant(number));
    let mut bench = Bench {
        weave,
        given,
        warp,
        weft,
        weft_float: count(weave.weft_float),
        warp_float: count(weave.warp_float),
        one: count(1.0),
        like_yarns,
        square: like_yarns && near(weave.warp_float, weave.weft_float),
        rows: Vec::new(),
    };
    if let Some(factor) = given.yarn_factor {
        bench.ashenhurst(factor, ["ashenhurst", "curvature"], "");
    } else {
        bench.ashenhurst(ratio(0.84), ["ashenhurst_woollen", "curvature_woollen"], ", woollen");
        bench.ashenhurst(ratio(0.90), ["ashenhurst_worsted", "curvature_worsted"], ", worsted");
    }
    bench.taylor();
    bench.brierley();
    bench.jam();
    let materials = GALCERAN_MATERIALS.row(&["all, by material"]);
    bench.galceran("galceran_low", materials.low);
    bench.galceran("galceran_high", materials.high);
    bench.rows
}

impl<N: Number> Bench<'_, N> {
    /// Keeps what a theory says, or why it says nothing.
    fn keep(
        &mut self,
        key: &'static str,
        mut about: About,
        setts: Said<Pair<N>>,
        most_weft_sett: Option<Sett<N>>,
    ) {
        let (warp_sett, weft_sett) = match setts {
            Ok((ends, picks)) => (Some(ends), Some(picks)),
            Err(why) => {
                about.why_not = why;
                (None, None)
            }
        };
        let theory = Theory {
            key,
            warp_sett,
            weft_sett,
            warp_sett_share: share(self.given.wanted_warp_sett, warp_sett),
            weft_sett_share: share(self.given.wanted_weft_sett, weft_sett),
            most_weft_sett,
        };
        self.rows.push((theory, about));
    }
    /// Runs a theory for ends, and for picks where these are not the same.
    fn both(
        &self,
        of: impl Fn(LinearDensity<N>, LinearDensity<N>, Count<N>) -> Said<Sett<N>>,
    ) -> Said<Pair<N>> {
        let ends = of(self.warp, self.weft, self.weft_float)?;
        let picks = if self.square { ends } else { of(self.weft, self.warp, self.warp_float)? };
        Ok((ends, picks))
    }

    /// Ashenhurst's two theories with a factor.
    fn ashenhurst(&mut self, factor: Ratio<N>, keys: [&'static str; 2], yarn: &str) {
        let label = format!("factor {}{yarn}", constant(factor.value()));
        let (like, one) = (self.like_yarns, self.one);
        let straight = self.both(|own, crossing, float| {
            let own = diameters_side_by_side(factor, own);
            Ok(if like {
                maximum_sett(own, float, one)
            } else {
                let crossing = diameters_side_by_side(factor, crossing);
                cloth::maximum_sett_unlike(own, crossing, float, one)
            })
        });
        let bent = self.both(|own, crossing, float| {
            let own = diameters_side_by_side(factor, own);
            Ok(if like {
                cloth::curvature_sett(own, float, one)
            } else {
                let crossing = diameters_side_by_side(factor, crossing);
                cloth::curvature_sett_unlike(own, crossing, float, one)
            })
        });
        let besides = if like { "" } else { "; worked out here for unlike yarns" };
        let about = |name, assumes, source| About {
            name,
            with: label.clone(),
            why_not: String::new(),
            assumes,
            source,
            besides,
        };
        let [first, second] = keys;
        let diameters = "Ashenhurst, diameters and intersections";
        let about_first = about(diameters, PLAIN_RULE, "Ashenhurst 1884");
        self.keep(first, about_first, straight, None);
        let curvature = "Ashenhurst, curvature";
        let about_second = about(curvature, BENT, "memory");
        self.keep(second, about_second, bent, None);
    }

    /// Taylor's rule: with his own factor of cotton, or that of the yarn.
    fn taylor(&mut self) {
        let factor = self.given.yarn_factor.unwrap_or(ratio(0.95));
        let setts = if self.weave.class == WeaveClass::Plain && self.square {
            let diameters = diameters_side_by_side(factor, self.warp);
            let half = cloth::taylor_plain_sett(diameters, ratio(0.05));
            Ok((half, half))
        } else {
            Err("for plain cloth of like yarns only".to_owned())
        };
        let of = if self.given.yarn_factor.is_some() { "" } else { ", cotton" };
        let about = About {
            name: "Taylor, half and 5 %",
            with: format!("factor {}{of}", constant(factor.value())),
            why_not: String::new(),
            assumes: TAYLOR_SAYS,
            source: "Taylor 1909",
            besides: "",
        };
        self.keep("taylor", about, setts, None);
    }

    fn brierley(&mut self) {
        let of = |weave: &str| Ok(BRIERLEY_EXPONENTS.row(&[weave]).low);
        let exponent = match self.weave.class {
            WeaveClass::Plain | WeaveClass::Twill => of("twill"),
            WeaveClass::Satin => of("satin"),
            WeaveClass::Hopsack => of("hopsack"),
            WeaveClass::Other => Err("its exponent for this weave is not known here"),
        };
        let Interlacing { warp_float, weft_float, .. } = *self.weave;
        let exponent = if !self.like_yarns {
            Err("not for unlike yarns: its exponent for them is not surely remembered".to_owned())
        } else if !self.square {
            Err(format!(
                "it has one average float for both systems; here ends float over {} and picks over {}",
                figure(warp_float),
                figure(weft_float)
            ))
        } else {
            exponent.map_err(str::to_owned)
        };
        let with = match &exponent {
            Ok(m) if weft_float > 1.0 => format!("exponent {}", constant(*m)),
            _ => String::new(),
        };
        let about = About {
            name: "Brierley",
            with,
            why_not: String::new(),
            assumes: BRIERLEY_SAYS,
            source: "Brierley 1931",
            besides: "",
        };
        let square = exponent.map(|m| {
            let float = Ratio::from(self.weft_float.v());
            // The constant of worsted on the yards in a pound: both of Brierley's are that part of them.
            let constant = BRIERLEY_CONSTANTS.row(&["yards in a pound"]).low;
            cloth::brierley_sett(float, ratio(m), ratio(constant), self.warp)
        });
        let wanted = self.given.wanted_warp_sett;
        let most = square.as_ref().ok().zip(wanted);
        let most = most.map(|(square, ends)| cloth::brierley_weft_sett(*square, ends));
        self.keep("brierley", about, square.map(|s| (s, s)), most);
    }

    /// Peirce's jam in plain, Love's in other weaves.
    fn jam(&mut self) {
        let volume = self.given.specific_volume;
        let diameter = |count: LinearDensity<N>| -> Diameter<N> {
            volume.map_or_else(
                || yarn::peirce_diameter(count),
                |volume| yarn::yarn_diameter(volume, count),
            )
        };
        let (like, one) = (self.like_yarns, self.one);
        let d1 = diameter(self.warp);
        let d2 = if like { d1 } else { diameter(self.weft) };
        // Diameters in millimetres, threads in a centimetre.
        let beside = |d: Diameter<N>| Sett::from(10.0 / d.v());
        let of = |own, crossing, float| {
            if like {
                cloth::curvature_sett(beside(own), float, one)
            } else {
                cloth::curvature_sett_unlike(beside(own), beside(crossing), float, one)
            }
        };
        let ends = of(d1, d2, self.weft_float);
        let picks = if self.square { ends } else { of(d2, d1, self.warp_float) };
        let is_plain = self.weave.class == WeaveClass::Plain;
        let with = match volume {
            Some(volume) => of_kind(volume.value(), Kind::SpecificVolume),
            None => "cotton, 1.1 cm³/g".to_owned(),
        };
        let about = About {
            name: if is_plain { "Peirce, jam" } else { "Love, jam (Peirce's, extended)" },
            with,
            why_not: String::new(),
            assumes: JAM,
            source: if is_plain { "Peirce 1937" } else { "Love 1954" },
            besides: "",
        };
        let most = self.given.wanted_warp_sett.filter(|wanted| {
            // The spacing at an intersection: below the sum of both diameters, or nothing jams.
            let Interlacing { weft_float, .. } = *self.weave;
            let spacing = weft_float * 10.0 / wanted.value() - (weft_float - 1.0) * d1.value();
            spacing > 0.0 && spacing < d1.value() + d2.value()
        });
        let most = most.map(|wanted| {
            let float = |of: Count<N>| Ratio::from(of.v());
            if is_plain {
                cloth::jam_weft_sett(wanted, d1, d2)
            } else {
                let (f2, f1) = (float(self.weft_float), float(self.warp_float));
                cloth::jam_weft_sett_of_weave(wanted, d1, d2, f2, f1)
            }
        });
        self.keep("jam", about, Ok((ends, picks)), most);
    }

    fn galceran(&mut self, key: &'static str, material: f64) {
        let (like, one) = (self.like_yarns, self.one);
        let setts = self.both(|own, _, float| {
            if !like {
                return Err("not for unlike yarns: the page read gives like ones".to_owned());
            }
            let crossings = Ratio::from(one.v() / float.v());
            Ok(cloth::galceran_sett(cloth::galceran_coefficient(ratio(material), crossings), own))
        });
        let about = About {
            name: "Galceran",
            with: format!("Q {}", constant(material)),
            why_not: String::new(),
            assumes: GALCERAN_SAYS,
            source: "Galceran",
            besides: "; Kl from memory",
        };
        self.keep(key, about, setts, None);
    }
}
