//! How evenly a component comes to lie in a blend.

use super::{
    layered_share_deviation, layers_for_deviation, random_share_deviation, sampled_share_deviation,
    share_deviation_after_passes, tufts_in_sample,
};
use crate::error::{Error, Result};
use crate::job::{Ask, Given};
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{constant, fixed};
use crate::quantity::{Count, Fraction, Kind, Mass, Ratio};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

static ITEMS: [Ask; 8] = [
    Ask::plain("share", "p", "share of the component in the blend", Kind::Fraction, (0.02, 0.98)),
    Ask::plain("layers", "n", "layers of each component in the stack", Kind::Count, (1.0, 100.0)),
    Ask::plain(
        "variation",
        "c",
        "coefficient of variation of a layer's thickness",
        Kind::Fraction,
        (0.02, 0.35),
    ),
    Ask::plain(
        "passes",
        "j",
        "passes through the teaser, each with relaying",
        Kind::Count,
        (0.0, 6.0),
    ),
    Ask::plain(
        "doublings",
        "d",
        "places of the heap that come together in a pass",
        Kind::Count,
        (1.0, 50.0),
    ),
    Ask::plain(
        "tuft",
        "t",
        "mean mass of a tuft, or of a fibre once carded",
        Kind::Mass,
        (1e-9, 0.05),
    ),
    Ask::plain("sample", "M", "mass of the sample that is looked at", Kind::Mass, (1e-5, 10.0)),
    Ask::plain(
        "wanted",
        "σ",
        "standard deviation wanted between samples",
        Kind::Fraction,
        (0.002, 0.2),
    ),
];

/// What the evenness of a blend asks for.
pub fn evenness_of_blend_items() -> Given {
    Given::new("evenness_of_blend", &ITEMS)
}

/// How far the share of a component differs between samples of a blend: after the stack, after each
/// pass, and what chance leaves at best.
///
/// ```
/// use hankwise::mill::{evenness_of_blend, evenness_of_blend_items};
///
/// let given = evenness_of_blend_items().read(&[
///     ("share", "50 %"), ("layers", "8"), ("variation", "20 %"), ("tuft", "20 mg"), ("sample", "8 g"),
/// ])?;
/// let blend = evenness_of_blend(&given)?;
/// // 0.25 × 0.2 × √(2/8), and √(0.25/400) where the mix is as good as chance.
/// assert_eq!(blend.find("stack_deviation")?.value, 0.025);
/// assert_eq!(blend.find("random_deviation")?.value, 0.025);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn evenness_of_blend(given: &Given) -> Result<Particulars> {
    check(given)?;
    let passes = given.base("passes").unwrap_or(0.0);
    if passes > 0.0 && !given.has("doublings") {
        return Err(Error::notation(
            "passes are given without doublings: how many places of the heap come together in each \
             place of the next; 1 where it is only teased and not laid anew",
        ));
    }
    Particulars::work(|desk| {
        desk.beware("machines");
        desk.beware("dust");
        given.warn(desk);
        let share: Fraction<_> = given.need(desk, "share")?;
        let layers: Count<_> = given.need(desk, "layers")?;
        let variation: Fraction<_> = given.need(desk, "variation")?;
        let tuft: Mass<_> = given.need(desk, "tuft")?;
        let sample: Mass<_> = given.need(desk, "sample")?;
        let tufts = desk.figure("tufts", "tufts in the sample", tufts_in_sample(sample, tuft));
        let random = desk.figure(
            "random_deviation",
            "deviation of the share if laid by chance: the binomial bound",
            random_share_deviation(share, tufts),
        );
        let stack = desk.figure(
            "stack_deviation",
            "deviation of the share from place to place, after the stack",
            layered_share_deviation(share, layers, variation),
        );
        let mut rows = Vec::new();
        let mut row = |name: String, heap: Ratio<_>| {
            let found = sampled_share_deviation(heap, share, tufts);
            rows.push(vec![name, percent(heap.value()), percent(found.value()), {
                percent(found.value() / share.value())
            }]);
            found
        };
        let mut found = row("the stack".to_owned(), stack);
        let mut heap = stack;
        if let (Some(passes), Some(doublings)) =
            (given.get::<Count<_>>(desk, "passes"), given.get::<Count<_>>(desk, "doublings"))
        {
            let each = passes.value().floor() as u32;
            for pass in 1..each {
                let so_far = Count::from(V::constant(f64::from(pass)));
                let heap = share_deviation_after_passes(stack, doublings, so_far);
                row(format!("after pass {pass}"), heap);
            }
            heap = desk.figure(
                "heap_deviation",
                "deviation of the share from place to place, after the passes",
                share_deviation_after_passes(stack, doublings, passes),
            );
            if passes.value() > 0.0 {
                found = row(format!("after pass {}", constant(passes.value())), heap);
            }
        }
        let found = desk.figure("deviation", "deviation of the share between samples", found);
        desk.figure("cv", "its coefficient of variation", Ratio::from(found.v() / share.v()));
        let mut foot = vec![format!(
            "Deviations are in points of the share, the CV is on it. Laid by chance, which no turning over \
             improves: {} between samples of {} tufts. Two samples in three lie within the deviation, 19 \
             in 20 within twice it.",
            percent(random.value()),
            constant(tufts.value().round())
        )];
        foot.extend(layers_wanted(given, desk, [share, variation], tufts, random));
        if heap.value() < random.value() / 3.0 {
            foot.push(
                "The heap is even enough: what is left is tufts. Opening helps, passes do not."
                    .to_owned(),
            );
        }
        let columns =
            [("", Left), ("place to place", Right), ("between samples", Right), ("CV", Right)];
        Ok(Report {
            title: format!("A component of {}", percent(share.value())),
            blocks: vec![Block {
                title: "Standard deviation of its share".to_owned(),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot,
                ..Block::default()
            }],
        })
    })
}

/// The layers for the deviation wanted, by the stack alone.
fn layers_wanted<'t>(
    given: &Given,
    desk: &Desk<'t>,
    [share, variation]: [Fraction<Worked<'t>>; 2],
    tufts: Count<Worked<'t>>,
    random: Ratio<Worked<'t>>,
) -> Option<String> {
    let wanted: Fraction<_> = given.get(desk, "wanted")?;
    if wanted.value() <= random.value() {
        desk.warn(format!(
            "a deviation of {} is less than chance leaves in such a sample ({}): open the tufts finer, \
             or look at a larger sample",
            percent(wanted.value()),
            percent(random.value())
        ));
        return None;
    }
    // What tufts add is taken off first; the rest is the heap's.
    let rest = wanted.v().squared() - random.v().squared();
    let heap = (rest / (1.0 - 1.0 / tufts.v())).sqrt();
    let layers = layers_for_deviation(share, Fraction::from(heap), variation);
    let words = "layers of each component for the deviation wanted, by the stack alone";
    let needed = desk.figure("layers_wanted", words, layers);
    Some(format!(
        "For {} between samples the stack alone wants {} layers of each component.",
        percent(wanted.value()),
        constant(needed.value())
    ))
}

fn percent(x: f64) -> String {
    format!("{} %", fixed(x * 100.0, 2))
}

fn check(given: &Given) -> Result<()> {
    let base = |name: &str| given.base(name).unwrap_or(1.0);
    let share = base("share");
    if share <= 0.0 || share >= 1.0 {
        return Err(Error::range(
            "share: a component of nothing or of the whole is no blend; write a share between, such as \
             '20 %'",
        ));
    }
    for name in ["layers", "doublings"] {
        let x = base(name);
        if x < 1.0 || x.fract() != 0.0 {
            return Err(Error::range(format!(
                "{name}: {x} is given; a whole number from 1 up is wanted"
            )));
        }
    }
    let passes = given.base("passes").unwrap_or(0.0);
    if passes.fract() != 0.0 || passes > 50.0 {
        return Err(Error::range(format!(
            "passes: {passes} is given; a whole number up to 50 is wanted"
        )));
    }
    for name in ["tuft", "sample", "wanted"] {
        if given.base(name).is_some_and(|x| x <= 0.0) {
            return Err(Error::range(format!("{name}: more than nothing is wanted")));
        }
    }
    if base("sample") < base("tuft") {
        return Err(Error::range(
            "the sample is smaller than a tuft: it is of one colour; give a larger sample, or the mass \
             of a fibre where the wool is carded",
        ));
    }
    Ok(())
}
