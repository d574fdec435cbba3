//! The piece: from the finished article to warp and weft, and from the yarn to pieces.

mod ask;
mod colour;
mod from_yarn;
mod given;
mod layout;
mod report;
mod work;

pub use ask::{ASKED, Article, Asked};
#[cfg(feature = "plan-file")]
pub(crate) use layout::{Layout, Names, Setting};

use crate::error::{Error, Result};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{figure, of_kind, with_unit};
use crate::quantity::{Kind, LinearDensity};
use crate::worked::Worked;
use ask::{AT_HAND, Key};
use given::{Entered, Plain};
use layout::Unnamed;
use work::{Work, work};

impl Article {
    /// From the finished article to the reed, the warp, the weft and the yarn for them.
    pub fn piece(&self) -> Result<Particulars> {
        if let Some(key) = AT_HAND.into_iter().find(|key| self.has(*key)) {
            return Err(Error::notation(format!(
                "piece tells the yarn that is needed; with {} at hand ask pieces_from_yarn",
                key.asked().name
            )));
        }
        let unusual = self.check()?;
        Particulars::work(|desk| {
            for words in unusual {
                desk.warn(words);
            }
            let work = self.on(desk, &Entered::new(desk, self, None))?;
            self.report(&work, desk)
        })
    }

    /// The figures for a number of pieces, without their working.
    fn plain(&self, pieces: f64) -> Work<f64> {
        work(&Plain { article: self, pieces: Some(pieces) }, &Unnamed)
    }

    /// The figures on a tape; what cannot be woven is refused.
    fn on<'t>(&self, desk: &Desk<'t>, given: &Entered<'_, 't>) -> Result<Work<Worked<'t>>> {
        self.refuse(&work(&Plain { article: self, pieces: given.pieces() }, &Unnamed))?;
        let work = work(given, desk);
        if let Some(creel) = self.base(Key::Creel)
            && work.at.ends.value() < creel
        {
            desk.warn(format!(
                "the warp has {} ends, fewer than the {} of a section; it is made in one section with \
                 creel={}",
                figure(work.at.ends.value()),
                figure(creel),
                figure(work.at.ends.value())
            ));
        }
        self.doubts(&work).into_iter().for_each(|doubt| desk.warn(doubt));
        Ok(work)
    }

    /// What a loom would hardly weave.
    fn doubts(&self, work: &Work<Worked<'_>>) -> Vec<String> {
        let mut out = Vec::new();
        if let Some(each) = self.base(Key::SelvedgeEnds) {
            let per_dent = self.amount(Key::SelvedgePerDent).0.base();
            let full = (each / per_dent).floor() * per_dent;
            if full < each {
                let less = if full > 0.0 { format!("{} or ", figure(full)) } else { String::new() };
                out.push(format!(
                    "selvedge_ends={} do not fill whole dents of {}; write {less}{}",
                    figure(each),
                    figure(per_dent),
                    figure(full + per_dent)
                ));
            }
        }
        let ends = 0.01 * work.at.ends.value() / work.at.set_width.value();
        let picks = self.base(Key::Picks).or(self.base(Key::FinishedPicks)).unwrap_or(0.0);
        for (threads, key, sett) in [("ends", Key::Warp, ends), ("picks", Key::Weft, picks)] {
            let count = self.amount(key).0.base();
            let thick = crate::yarn::peirce_diameter(LinearDensity::base(count)).value();
            // Common practice: in two layers, the most of a double cloth, threads are beside each other.
            if sett * thick > 2.0 * 10.0 {
                out.push(format!(
                    "{} in a centimetre are far too many {threads} of {} mm (Peirce's diameter of {}): side \
                     by side they fill the cloth at about {}; look at sett and count",
                    figure(sett),
                    figure(thick),
                    of_kind(count, Kind::LinearDensity),
                    figure(10.0 / thick)
                ));
            }
        }
        out
    }

    /// What the loom or the beam cannot take, and what to change.
    fn refuse(&self, work: &Work<f64>) -> Result<()> {
        let say = |key: Key, base: f64| {
            let unit = self.unit(key).map_or(("m", base), |u| (u.symbol, u.from_base(base)));
            with_unit(unit.1, unit.0)
        };
        let ends = work.ground_ends.value();
        if ends < 1.0 {
            return Err(Error::range(format!(
                "no end finds room: the width in the reed is {}, less than a dent and the selvedges \
                 take; give a greater width, or a closer sett",
                say(Key::Width, work.at.reed_width.value())
            )));
        }
        let wide = work.at.set_width.value();
        if let Some(most) = self.base(Key::LoomWidth)
            && wide > most * (1.0 + 1e-9)
        {
            // The finished width goes with the width in the reed.
            let panels = self.base(Key::Panels).unwrap_or(1.0);
            let woven = work.finished.width.value();
            let lost = panels * woven - self.base(Key::Width).unwrap_or(woven);
            let widest = panels * woven * most / wide - lost;
            let more = (panels * wide / most - 1e-9).ceil();
            return Err(Error::range(format!(
                "the loom is too narrow: the warp is {} wide in the reed and the loom takes {}, {} \
                 less; the widest that it weaves so is about {} finished: write that for width{}",
                say(Key::LoomWidth, wide),
                say(Key::LoomWidth, most),
                say(Key::LoomWidth, wide - most),
                say(Key::Width, widest.max(0.0)),
                if more <= Key::Panels.asked().usual.1 {
                    format!(", or weave it in panels={} sewn side by side", figure(more))
                } else {
                    String::new()
                },
            )));
        }
        if let Some(most) = self.base(Key::Beam)
            && work.warp_length.value() > most * (1.0 + 1e-9)
        {
            let panels = self.base(Key::Panels).unwrap_or(1.0);
            let gap = self.base(Key::Gap).unwrap_or(0.0);
            let each = work.at.warp_each.value() + gap;
            let fit = ((most - work.loom_waste.value() + gap) / each + 1e-9).floor();
            let fit = (fit / panels).floor();
            let advice = if fit >= 1.0 {
                format!("write pieces_per_warp={} at most", figure(fit))
            } else {
                let short = work.loom_waste.value() + panels * each - gap - most;
                format!(
                    "not even one piece finds room, for which {} are missing",
                    say(Key::Beam, short)
                )
            };
            return Err(Error::range(format!(
                "the warp is longer than the beam takes: {} against {}, {} too much; {advice}",
                say(Key::Beam, work.warp_length.value()),
                say(Key::Beam, most),
                say(Key::Beam, work.warp_length.value() - most),
            )));
        }
        Ok(())
    }
}
