//! What the loom or the beam cannot take, and what a loom would hardly weave.

use super::colour;
use super::inputs::{Article, PieceInputs};
use super::{PickSpacing, PieceResults};
use crate::calculation::Check;
use crate::calculation::refuse;
use crate::error::{Error, Result};
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Count, Kind, Length, LinearDensity};

pub(super) fn piece(
    given: &PieceInputs<f64>,
    found: &PieceResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    article(&given.article, found, check)
}

pub(super) fn article(
    article: &Article<f64>,
    found: &PieceResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    refuse_narrow(article, found, check)?;
    refuse_long(article, found, check)?;
    colour::check(article, &found.layout, check)?;
    let ends = found.layout.ends.value();
    if let Some(creel) = article.winding.creel
        && ends < creel.value()
    {
        check.warn(format!(
            "the warp has {} ends, fewer than the {} of a section; for one section write creel={}",
            figure(ends),
            figure(creel.value()),
            figure(ends)
        ));
    }
    warn_of_half_dents(article, check);
    warn_of_thick_threads(article, found, check);
    let none = taken_as_none(article);
    if !none.is_empty() {
        check.note("Off the loom and finished", format!("Taken as none: {}.", none.join(", ")));
    }
    Ok(())
}

/// A loom too narrow for one piece is too narrow for all.
pub(super) fn refuse_narrow(
    article: &Article<f64>,
    found: &PieceResults<f64>,
    check: &Check<'_>,
) -> Result<()> {
    let at = &found.layout;
    let ground = at.selvedges.as_ref().map_or(at.ends, |selvedges| selvedges.ground_ends);
    if ground.value() < 1.0 || ground.value().is_nan() {
        return Err(Error::range(format!(
            "no end finds room: the width in the reed is {}, less than a dent and the selvedges take; \
             write a greater wanted_width or a closer sett",
            check.say(at.reed_width)
        )));
    }
    let wide = at.filled_width.value();
    if let Some(most) = article.loom.width.loom_width
        && wide > most.value() * (1.0 + 1e-9)
    {
        // The finished width goes with the width in the reed.
        let panels = article.panels().map_or(1.0, Count::value);
        let woven = found.finished.finished_width.value();
        let most_base = most.value();
        let lost = panels * woven - article.size.wanted_width.value();
        let widest = panels * woven * most_base / wide - lost;
        let more = (panels * wide / most_base - 1e-9).ceil();
        refuse!(
            check,
            article.loom.width.loom_width,
            "the loom is too narrow: the warp is {} wide in the reed and the loom takes {}, {} less; the \
             widest that it weaves so is about {} finished: write that for wanted_width{}",
            check.say(at.filled_width),
            check.say(most),
            check.say(Length::base(wide - most_base)),
            check.say(Length::base(widest.max(0.0))),
            // More are not usual.
            if more <= 4.0 {
                format!(", or weave it in panels={} sewn side by side", figure(more))
            } else {
                String::new()
            }
        );
    }
    Ok(())
}

fn refuse_long(article: &Article<f64>, found: &PieceResults<f64>, check: &Check<'_>) -> Result<()> {
    let warp_length = found.beams.warp_length;
    let Some(most) = article.loom.beam_length else { return Ok(()) };
    if warp_length.value() <= most.value() * (1.0 + 1e-9) {
        return Ok(());
    }
    let panels = article.panels().map_or(1.0, Count::value);
    let gap = article.idle.gap.map_or(0.0, Length::value);
    let waste = found.beams.loom_waste.value();
    let each = found.layout.warp_per_piece.value() + gap;
    let fit = ((most.value() - waste + gap) / each + 1e-9).floor();
    let fit = (fit / panels).floor();
    let advice = if fit >= 1.0 {
        format!("write pieces_per_warp={} at most", figure(fit))
    } else {
        let short = waste + panels * each - gap - most.value();
        format!("not even one piece finds room: {} are missing", check.say(Length::base(short)))
    };
    refuse!(
        check,
        article.loom.beam_length,
        "the warp is longer than the beam takes: {} against {}, {} too much; {advice}",
        check.say(warp_length),
        check.say(most),
        check.say(Length::base(warp_length.value() - most.value()))
    );
}

/// A dent is full or empty.
fn warn_of_half_dents(article: &Article<f64>, check: &mut Check<'_>) {
    let Some((each, per_dent)) = article.selvedge() else { return };
    let (each, per_dent) = (each.value(), per_dent.value());
    let full = (each / per_dent).floor() * per_dent;
    if full < each {
        let less = if full > 0.0 { format!("{} or ", figure(full)) } else { String::new() };
        check.warn(format!(
            "selvedge_ends={} do not fill whole dents of {}; write {less}{}",
            figure(each),
            figure(per_dent),
            figure(full + per_dent)
        ));
    }
}

/// Threads that would not find room beside each other.
fn warn_of_thick_threads(article: &Article<f64>, found: &PieceResults<f64>, check: &mut Check<'_>) {
    let ends = 0.01 * found.layout.ends.value() / found.layout.filled_width.value();
    let picks = match article.picks {
        PickSpacing::WeftSett(sett) | PickSpacing::WantedWeftSett(sett) => sett.value(),
    };
    let counts = [article.yarns.warp_count, article.weft_count()];
    for ((threads, sett), count) in [("ends", ends), ("picks", picks)].into_iter().zip(counts) {
        let thick = crate::yarn::peirce_diameter(LinearDensity::base(count.value())).value();
        // Common practice: in two layers, the most of a double cloth, threads are beside each other.
        if sett * thick > 2.0 * 10.0 {
            check.warn(format!(
                "{} in a centimetre are far too many {threads} of {} mm (Peirce's diameter of {}): side \
                 by side they fill the cloth at about {}; look at sett and count",
                figure(sett),
                figure(thick),
                of_kind(count.value(), Kind::LinearDensity),
                figure(10.0 / thick)
            ));
        }
    }
}

/// What matters and was not said: it is taken as none.
fn taken_as_none(article: &Article<f64>) -> Vec<&'static str> {
    let (shrinkage, yarn) = (&article.shrinkage, &article.yarn);
    let all = [
        (shrinkage.draw_in.value(), "draw-in"),
        (shrinkage.width_shrinkage.value(), "shrinkage in width"),
        (shrinkage.length_shrinkage.value(), "shrinkage in length"),
        (shrinkage.take_up.value(), "take-up of the warp"),
        (article.idle.thrums.value(), "thrums"),
        (article.weft.weft_waste.value(), "waste of weft"),
        (yarn.mass_loss.value(), "mass lost in finishing"),
    ];
    all.into_iter().filter(|(value, _)| *value == 0.0).map(|(_, words)| words).collect()
}
