//! The machines behind woven goods: coning, loom, finishing.

use crate::calculation::{Inputs, Item, Owned, Place};
use crate::cloth::{self, LoomWidth, WeftAllowances};
use crate::error::Result;
use crate::mill::run::loom::LoomMachine;
use crate::number::Number;
use crate::plan::draft::Draft;
use crate::plan::given::{Given, Values};
use crate::plan::section::Section;
use crate::plan::stage::Owns;
use crate::plan::tree::routes::Changeover;
use crate::quantity::{Count, DrawIn, Kind, Length, ReedCount, Sett, ShareLost, Shrinkage, TakeUp};

/// Coning, the loom and finishing.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Loom {
    /// What the coning, the loom and the finishing are called.
    pub(in crate::plan) names: [String; 3],
    pub(super) cone: Option<Cone<Place>>,
    pub(super) set: LoomSettings<Place>,
    pub(super) weft: WeftAllowances<Place>,
    pub(super) size: LoomWidth<Place>,
    pub(super) machine: Option<LoomMachine<Place>>,
    /// Time to change over to another warp.
    pub(in crate::plan) changeover: Option<Place>,
    /// The reeds owned; the one that the likely values choose is set.
    pub(super) reeds: Owned,
    pub(super) finish: Option<Finish<Place>>,
}

/// Coning.
#[derive(Clone, Copy, Debug, Inputs)]
pub(super) struct Cone<N> {
    /// yarn lost in coning, on what is coned
    #[q("w", 0.0..=0.03, or = 0.0, like = "1 %")]
    pub(super) loss: ShareLost<N>,
}

/// How the loom is set.
#[derive(Clone, Copy, Debug, Inputs)]
pub(super) struct LoomSettings<N> {
    /// ends in a dent
    #[q("e", 1.0..=4.0, broken, like = "2")]
    pub(super) ends_per_dent: Count<N>,
    /// sett wanted in the reed
    #[q("n_w", 1.0..=30.0, like = "4.8 ends/cm")]
    pub(super) wanted_reed_sett: Sett<N>,
    /// picks in a length, off the loom
    #[q("n₂", 1.0..=30.0, like = "4.6 picks/cm")]
    pub(super) weft_sett: Sett<N>,
    /// draw-in, reed to off the loom
    #[q("d_r", 0.0..=0.15, zero, like = "6 %")]
    pub(super) draw_in: DrawIn<N>,
    /// take-up of the warp, on yarn length
    #[q("u", 0.02..=0.15, zero, like = "8 %")]
    pub(super) take_up: TakeUp<N>,
    /// warp that cannot be woven, for each warp
    #[q("a", 0.3..=4.0, like = "1.0 m")]
    pub(super) loom_waste: Length<N>,
}

/// The reeds of the loom.
#[derive(Clone, Debug, Inputs)]
struct Rack<N> {
    /// reeds owned
    #[parts("reed", ReedCount, "[\"20 dents/10 cm\", \"24 dents/10 cm\"]")]
    reeds: Owned,
    #[group]
    set: LoomSettings<N>,
    #[group]
    weft: WeftAllowances<N>,
    #[group]
    size: LoomWidth<N>,
    #[group]
    machine: Option<LoomMachine<N>>,
}

/// Finishing.
#[derive(Clone, Copy, Debug, Inputs)]
pub(super) struct Finish<N> {
    /// fibre lost in finishing, on the fibre that enters
    #[q("w", 0.0..=0.08, zero, like = "2 %")]
    pub(super) loss: ShareLost<N>,
    /// shrinkage in width, off the loom to finished
    #[q("s_w", -0.02..=0.4, basis = "Austria-Forum Loden", zero, like = "12 %")]
    pub(super) width_shrinkage: Shrinkage<N>,
    /// shrinkage in length, off the loom to finished
    #[q("s_l", -0.02..=0.4, basis = "Austria-Forum Loden", zero, like = "12 %")]
    pub(super) length_shrinkage: Shrinkage<N>,
}

/// What the machines of woven goods ask.
pub(in crate::plan) const CARDS: &[(&str, &str, &[Item])] = &[
    ("cone", "Coning for the loom.", Cone::<Place>::ITEMS),
    ("loom", "Warping and weaving.", Rack::<Place>::ITEMS),
    ("finish", "Finishing the cloth.", Finish::<Place>::ITEMS),
];

/// What can do harm at the loom and after it.
pub(in crate::plan) const CAUTIONS: [(&str, &[&str]); 2] =
    [("loom", &["loom"]), ("finish", &["hot liquor", "steam", "machines"])];

impl Loom {
    /// Its reeds, and the sett that each gives.
    pub(super) fn owns(&self, values: &Values<'_, f64>) -> Owns {
        let set = self.set.map(&mut values.read());
        let sett = |reed: &f64| {
            let sett = cloth::sett_in_reed(ReedCount::base(*reed), set.ends_per_dent);
            (*reed, sett.value())
        };
        Owns {
            parts: "reed",
            kind: Kind::ReedCount,
            gives: ("sett in the reed", Kind::Sett),
            rows: self.reeds.all().iter().map(sett).collect(),
        }
    }
    /// The loss in coning.
    pub(super) fn cone_loss<N: Number>(&self, values: &Values<'_, N>) -> ShareLost<N> {
        let none = ShareLost::base(N::constant(0.0));
        self.cone.as_ref().map_or(none, |cone| cone.map(&mut values.read()).loss)
    }
    /// What finishing does; nothing where there is none.
    pub(super) fn finishing<N: Number>(&self, values: &Values<'_, N>) -> Finish<N> {
        let nothing = || N::constant(0.0);
        self.finish.as_ref().map_or_else(
            || Finish {
                loss: ShareLost::base(nothing()),
                width_shrinkage: Shrinkage::base(nothing()),
                length_shrinkage: Shrinkage::base(nothing()),
            },
            |finish| finish.map(&mut values.read()),
        )
    }
    pub(in crate::plan) fn read(
        cone: Option<&Section<'_>>,
        loom: &Section<'_>,
        finish: Option<&Section<'_>>,
        names: [String; 3],
        draft: &mut Draft,
    ) -> Result<Self> {
        let cone = cone
            .filter(|cone| cone.is_present())
            .map(|cone| {
                let read = cone.read(draft, |reader| Cone::take(reader));
                read.and_then(|read| cone.finish().map(|()| read))
            })
            .transpose()?;
        let Rack { reeds, set, weft, size, machine } =
            loom.read(draft, |reader| Rack::take(reader))?;
        let changeover = loom.read(draft, |reader| Changeover::take(reader))?.changeover;
        loom.finish()?;
        let finish = finish
            .map(|finish| {
                let read = finish.read(draft, |reader| Finish::take(reader));
                read.and_then(|read| finish.finish().map(|()| read))
            })
            .transpose()?;
        // The mill adjusts its yarn from lot to lot, not its reeds: the likely values choose.
        let likely = set.map(&mut |place| Given::base(&draft.given[place.0]));
        let wanted: ReedCount<f64> =
            cloth::reed_for_sett(likely.wanted_reed_sett, likely.ends_per_dent);
        let reed = reeds.choose(wanted).value();
        Ok(Loom {
            changeover: changeover.map(|hours| *hours.inner()),
            names,
            cone,
            set,
            weft,
            size,
            machine,
            reeds: reeds.with(reed),
            finish,
        })
    }
}
