//! The theories of setting, each run on one weave and its yarns.

use super::theories::{Interlacing, SettingAsk, Theory, WeaveClass};
use crate::cloth::tables::setting::{BRIERLEY, HOPSACK, SATIN, TWILL};
use crate::cloth::{self, diameters_side_by_side, maximum_sett};
use crate::error::Result;
use crate::particulars::Desk;
use crate::quantity::print::{constant, figure};
use crate::quantity::{
    Amount, Count, Diameter, Kind, LinearDensity, Ratio, Sett, SpecificVolume, Typed, unit,
};
use crate::worked::Worked;
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

/// Warp, weft and weave on the desk.
pub(super) struct Bench<'a, 't> {
    pub(super) desk: &'a Desk<'t>,
    pub(super) weave: &'a Interlacing,
    pub(super) ask: &'a SettingAsk,
    pub(super) warp: LinearDensity<Worked<'t>>,
    pub(super) weft: LinearDensity<Worked<'t>>,
    /// Threads for each intersection of a pick: what the ends have to make room for.
    pub(super) weft_float: Count<Worked<'t>>,
    pub(super) warp_float: Count<Worked<'t>>,
    pub(super) one: Count<Worked<'t>>,
    /// Counts alike; counts and floats alike.
    pub(super) like_yarns: bool,
    pub(super) square: bool,
    pub(super) rows: Vec<Theory>,
}

pub(super) fn plain(number: f64) -> Result<Amount> {
    Ok(Amount { number, unit: unit("", Some(Kind::Ratio))? })
}

type Pair<'t> = (Sett<Worked<'t>>, Sett<Worked<'t>>);

impl<'t> Bench<'_, 't> {
    fn figures<Q: Typed<Worked<'t>>>(&self, name: &str, words: &str, of: Q) -> Q {
        self.desk.figure(name, words, of)
    }
    /// Keeps what a theory says, or why it says nothing.
    fn keep(&mut self, mut row: Theory, setts: std::result::Result<Pair<'t>, String>) {
        match setts {
            Ok((ends, picks)) => {
                let with = if row.with.is_empty() { "" } else { ", " };
                let words = |of: &str| format!("closest {of} by {}{with}{}", row.name, row.with);
                let ends = self.figures(&format!("{}_ends", row.key), &words("ends"), ends);
                let picks = self.figures(&format!("{}_picks", row.key), &words("picks"), picks);
                (row.ends, row.picks) = (Some(ends.value()), Some(picks.value()));
            }
            Err(why) => row.why_not = why,
        }
        self.rows.push(row);
    }
    /// Runs a theory for ends, and for picks where these are not the same.
    fn both<E>(
        &self,
        of: impl Fn(
            LinearDensity<Worked<'t>>,
            LinearDensity<Worked<'t>>,
            Count<Worked<'t>>,
        ) -> std::result::Result<Sett<Worked<'t>>, E>,
    ) -> std::result::Result<Pair<'t>, E> {
        let ends = of(self.warp, self.weft, self.weft_float)?;
        let picks = if self.square { ends } else { of(self.weft, self.warp, self.warp_float)? };
        Ok((ends, picks))
    }

    /// Ashenhurst's two theories with a factor.
    pub(super) fn ashenhurst(
        &mut self,
        factor: f64,
        keys: [&'static str; 2],
        yarn: &str,
    ) -> Result<()> {
        let name = if yarn.is_empty() { "factor".to_owned() } else { format!("factor_{yarn}") };
        let f: Ratio<_> =
            self.desk.given(&name, "k", "Ashenhurst's factor of the yarn", &plain(factor)?, None);
        let label = if yarn.is_empty() {
            format!("factor {}", constant(factor))
        } else {
            format!("factor {}, {yarn}", constant(factor))
        };
        let like = self.like_yarns;
        let one = self.one;
        let straight = self.both(|own, crossing, float| {
            let own = diameters_side_by_side(f, own);
            Ok::<_, String>(if like {
                maximum_sett(own, float, one)
            } else {
                let crossing = diameters_side_by_side(f, crossing);
                cloth::maximum_sett_unlike(own, crossing, float, one)
            })
        });
        let bent = self.both(|own, crossing, float| {
            let own = diameters_side_by_side(f, own);
            Ok::<_, String>(if like {
                cloth::curvature_sett(own, float, one)
            } else {
                let crossing = diameters_side_by_side(f, crossing);
                cloth::curvature_sett_unlike(own, crossing, float, one)
            })
        });
        let unlike = |grade| if like { grade } else { "computed for unlike yarns" };
        let row = |key, name, assumes, source, grade| Theory {
            key,
            name,
            with: label.clone(),
            ends: None,
            picks: None,
            picks_at_ends: None,
            why_not: String::new(),
            assumes,
            source,
            grade,
        };
        let source = "Ashenhurst page 1999";
        let [first, second] = keys;
        let diameters = "Ashenhurst, diameters and intersections";
        self.keep(row(first, diameters, PLAIN_RULE, source, unlike("published")), straight);
        let curvature = "Ashenhurst, curvature";
        self.keep(row(second, curvature, BENT, "memory", unlike("memory, computed")), bent);
        Ok(())
    }

    /// Taylor's rule: with his own factor of cotton, or that of the yarn.
    pub(super) fn taylor(&mut self) -> Result<()> {
        let factor = self.ask.factor.unwrap_or(0.95);
        let says = "factor of the yarn for Taylor's rule";
        let f: Ratio<_> = self.desk.given("taylor_factor", "k", says, &plain(factor)?, None);
        let says = "Taylor's allowance";
        let more: Ratio<_> = self.desk.given("taylor_allowance", "a", says, &plain(0.05)?, None);
        let setts = if self.weave.class == WeaveClass::Plain && self.square {
            let half = cloth::taylor_plain_sett(diameters_side_by_side(f, self.warp), more);
            Ok((half, half))
        } else {
            Err("for plain cloth of like yarns only".to_owned())
        };
        let of = if self.ask.factor.is_some() { "" } else { ", cotton" };
        let row = Theory {
            key: "taylor",
            name: "Taylor, half and 5 %",
            with: format!("factor {}{of}", constant(factor)),
            ends: None,
            picks: None,
            picks_at_ends: None,
            why_not: String::new(),
            assumes: TAYLOR_SAYS,
            source: "Taylor 1909",
            grade: "published",
        };
        self.keep(row, setts);
        Ok(())
    }

    pub(super) fn brierley(&mut self) -> Result<()> {
        let exponent = match self.weave.class {
            WeaveClass::Plain | WeaveClass::Twill => Ok(TWILL),
            WeaveClass::Satin => Ok(SATIN),
            WeaveClass::Hopsack => Ok(HOPSACK),
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
        let mut row = Theory {
            key: "brierley",
            name: "Brierley",
            with,
            ends: None,
            picks: None,
            picks_at_ends: None,
            why_not: String::new(),
            assumes: BRIERLEY_SAYS,
            source: "memory",
            grade: "memory",
        };
        let square = match exponent {
            Ok(m) => {
                let says = "Brierley's exponent, from memory";
                let m: Ratio<_> = self.desk.given("brierley_exponent", "m", says, &plain(m)?, None);
                let says = "Brierley's constant, from memory";
                let k: Ratio<_> =
                    self.desk.given("brierley_constant", "k", says, &plain(BRIERLEY)?, None);
                let float = Ratio::from(self.weft_float.v());
                Ok(cloth::brierley_sett(float, m, k, self.warp))
            }
            Err(why) => Err(why),
        };
        if let (Ok(square), Some(ends)) = (&square, &self.ask.ends) {
            let ends: Sett<_> = self.desk.given("ends", "n₁", "ends wanted", ends, None);
            let picks = self.figures(
                "brierley_picks_at_ends",
                "most picks at these ends by Brierley",
                cloth::brierley_weft_sett(*square, ends),
            );
            row.picks_at_ends = Some(picks.value());
        }
        self.keep(row, square.map(|s| (s, s)));
        Ok(())
    }

    /// Peirce's jam in plain, Love's in other weaves.
    pub(super) fn jam(&mut self) {
        let volume: Option<SpecificVolume<_>> = self
            .ask
            .volume
            .as_ref()
            .map(|v| self.desk.given("volume", "v", "specific volume of the yarn", v, None));
        let diameter = |count: LinearDensity<Worked<'t>>| -> Diameter<Worked<'t>> {
            volume.map_or_else(
                || yarn::peirce_diameter(count),
                |volume| yarn::yarn_diameter(volume, count),
            )
        };
        let like = self.like_yarns;
        let one = self.one;
        let d1 = self.figures("warp_diameter", "diameter of the warp", diameter(self.warp));
        let d2 = if like {
            d1
        } else {
            self.figures("weft_diameter", "diameter of the weft", diameter(self.weft))
        };
        // Diameters in millimetres, threads in a centimetre.
        let beside = |d: Diameter<Worked<'t>>| Sett::from(10.0 / d.v());
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
        let who = if is_plain { "Peirce, jam" } else { "Love, jam (Peirce's, extended)" };
        let thick = match &self.ask.volume {
            Some(v) => format!("{} {}", constant(v.number), v.unit.symbol),
            None => "cotton, 1.1 cm³/g".to_owned(),
        };
        let mut row = Theory {
            key: "jam",
            name: who,
            with: thick,
            ends: None,
            picks: None,
            picks_at_ends: None,
            why_not: String::new(),
            assumes: JAM,
            source: if is_plain { "Balasubramanian" } else { "memory" },
            grade: if is_plain { "computed" } else { "memory" },
        };
        if let Some(wanted) = &self.ask.ends {
            // The spacing at an intersection: below the sum of both diameters, or nothing jams.
            let Interlacing { weft_float, .. } = *self.weave;
            let spacing = weft_float * 10.0 / wanted.base() - (weft_float - 1.0) * d1.value();
            if spacing > 0.0 && spacing < d1.value() + d2.value() {
                let wanted: Sett<_> =
                    self.desk.given("ends_jammed", "n₁", "ends wanted", wanted, None);
                let ratio = |of: Count<Worked<'t>>| Ratio::from(of.v());
                let (f2, f1) = (ratio(self.weft_float), ratio(self.warp_float));
                let most = if is_plain {
                    cloth::jam_weft_sett(wanted, d1, d2)
                } else {
                    cloth::jam_weft_sett_of_weave(wanted, d1, d2, f2, f1)
                };
                let words = "most picks at these ends by the jam";
                row.picks_at_ends = Some(self.figures("jam_picks_at_ends", words, most).value());
            }
        }
        self.keep(row, Ok((ends, picks)));
    }

    pub(super) fn galceran(&mut self, key: &'static str, material: f64) -> Result<()> {
        let q: Ratio<_> = self.desk.given(
            &format!("{key}_material"),
            "Q",
            "Galceran's coefficient of the material",
            &plain(material)?,
            None,
        );
        let like = self.like_yarns;
        let one = self.one;
        let setts = self.both(|own, _, float| {
            if !like {
                return Err("not for unlike yarns: the page read gives like ones".to_owned());
            }
            let crossings = Ratio::from(one.v() / float.v());
            Ok(cloth::galceran_sett(cloth::galceran_coefficient(q, crossings), own))
        });
        let row = Theory {
            key,
            name: "Galceran",
            with: format!("Q {}", constant(material)),
            ends: None,
            picks: None,
            picks_at_ends: None,
            why_not: String::new(),
            assumes: GALCERAN_SAYS,
            source: "Galceran",
            grade: "published; Kl memory",
        };
        self.keep(row, setts);
        Ok(())
    }
}
