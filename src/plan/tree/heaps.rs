//! Reading the heaps: all there is of some sorts, dry shares, a mean diameter, a hand sample.

use super::levels::Named;
use super::read::{Reading, input};
use super::{HeapNode, Of};
use crate::calculation::{Input, Inputs, Place};
use crate::error::{Result, did_you_mean};
use crate::plan::section::Section;
use crate::quantity::{Fineness, Kind, Mass, parse_as};

/// What is kept of a heap.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Held<N> {
    /// kept back unspun, as weighed
    #[q("m_h", 0.0..=100.0, zero, like = "1 kg")]
    held: Option<Mass<N>>,
}

/// The mean diameter that a blend is to have.
#[derive(Clone, Debug, Inputs)]
struct Mean<N> {
    /// mean diameter wanted of the blend
    #[q("d_b", 15.0..=45.0, like = "23 µm")]
    diameter: Fineness<N>,
}

const SAMPLE_MASS: Input = input("sample_mass", "m", "mass in a hand sample", Kind::Mass);
const DRY_SHARE: Input = input("dry_share", "p", "share of the clean dry fibre", Kind::Fraction);

impl<'d> Reading<'_, 'd> {
    pub(super) fn heaps(&mut self, heaps: &[Named<'d>]) -> Result<()> {
        if heaps.is_empty() {
            self.tree.heaps.push(HeapNode {
                name: String::new(),
                key: "heap".to_owned(),
                of: Of::All((0..self.tree.sorts.len()).collect()),
                passes: Vec::new(),
                held: None,
                split: None,
                yarns: Vec::new(),
            });
            return Ok(());
        }
        for Named { name, node } in heaps {
            let keys = node.keys();
            let read = self.of(&keys);
            let Some(of) = self.draft.note(read) else { continue };
            let held = keys.read(self.draft, |reader| Held::take(reader))?.held;
            let key = if heaps.len() == 1 { "heap".to_owned() } else { format!("heap.{name}") };
            self.tree.heaps.push(HeapNode {
                name: name.clone(),
                key,
                of,
                passes: Vec::new(),
                held: held.map(|mass| *mass.inner()),
                split: None,
                yarns: Vec::new(),
            });
        }
        self.draft.faults()?;
        // No sort lies in two heaps that take all of it.
        let mut whole = vec![None; self.tree.sorts.len()];
        for (place, heap) in self.tree.heaps.iter().enumerate() {
            let Of::All(all) = &heap.of else { continue };
            for sort in all {
                if let Some(first) = whole[*sort].replace(place) {
                    let first: &HeapNode = &self.tree.heaps[first];
                    let message = format!(
                        "all of '{}' is in '{}' already; give one of the two its dry share, such as \
                         {{ {0} = \"40 %\" }}",
                        self.tree.sorts[*sort].name, first.name
                    );
                    return Err(heaps[place].node.keys().error("of", message));
                }
            }
        }
        let used = |sort: usize| {
            self.tree.heaps.iter().any(|heap| match &heap.of {
                Of::All(all) => all.contains(&sort),
                Of::Shares(shares) => shares.iter().any(|(other, _)| *other == sort),
            })
        };
        for (place, sort) in self.tree.sorts.iter().enumerate() {
            if !used(place) {
                let message = format!(
                    "no heap takes '{}'; add it to the `of` of one, or make a heap of it",
                    sort.name
                );
                return Err(self.desk.lot.error("heap", message));
            }
        }
        Ok(())
    }

    /// What a heap is made of.
    fn of(&mut self, keys: &Section<'d>) -> Result<Of> {
        let names: Vec<String> = self.tree.sorts.iter().map(|sort| sort.name.clone()).collect();
        let find = |name: &str| {
            names.iter().position(|known| known == name).ok_or_else(|| {
                let near = did_you_mean(name, names.iter().map(String::as_str))
                    .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
                let known = names.join(", ");
                keys.error("of", format!("there is no '{name}'{near} There are {known}"))
            })
        };
        let Some(at) = keys.at("of") else {
            return Ok(Of::All((0..self.tree.sorts.len()).collect()));
        };
        if at.item.is_array() {
            let all = keys.texts("of")?.unwrap_or_default();
            let all = all.iter().map(|name| find(name)).collect::<Result<Vec<_>>>()?;
            if all.is_empty() {
                return Err(keys.error("of", format!("write at least one of {}", names.join(", "))));
            }
            if !keys.has("diameter") {
                return Ok(Of::All(all));
            }
            return self.by_diameter(keys, &all);
        }
        let table = keys.section("of")?;
        let (mut shares, mut samples) = (Vec::new(), 0);
        // A sort of a fleece is written alpaca.fine, which TOML reads as a table within a table.
        for name in table.keys() {
            let within = table.tables(&name)?;
            let parts: Vec<(String, &Section<'_>, String)> = if within.is_present() {
                let names = within.keys();
                names.into_iter().map(|part| (format!("{name}.{part}"), &within, part)).collect()
            } else {
                vec![(name.clone(), &table, name.clone())]
            };
            for (full, section, key) in parts {
                let sort = find(&full)?;
                let text = section.at(&key).and_then(|at| at.item.as_str()).unwrap_or("");
                let weighed = !text.is_empty() && parse_as(text, Kind::Mass).is_ok();
                let asked = if weighed { SAMPLE_MASS } else { DRY_SHARE };
                let share = section.read(self.draft, |reader| reader.under(&key, &asked))?;
                shares.extend(share.map(|share| (sort, share)));
                samples += usize::from(weighed);
            }
        }
        if samples > 0 {
            if samples < shares.len() {
                return Err(keys.error("of", "write shares or masses of a hand sample; not both"));
            }
            return Ok(self.by_sample(&shares));
        }
        let sum: f64 = shares.iter().map(|(_, share)| self.draft.given[share.0].base()).sum();
        if (sum - 1.0).abs() > 1e-6 {
            return Err(keys.error(
                "of",
                format!(
                    "the shares make {} together; write shares of the dry fibre that make 100 %",
                    crate::quantity::print::of_kind(sum, Kind::Fraction)
                ),
            ));
        }
        Ok(Of::Shares(shares))
    }

    /// The shares of a hand sample that was accepted: its masses, by what is on the fibre of each sort.
    fn by_sample(&mut self, masses: &[(usize, Place)]) -> Of {
        let regain = |sort: usize| {
            let regain = *self.tree.sorts[sort].wool.regain.inner();
            self.draft.given[regain.0].base()
        };
        let dry: Vec<f64> = masses
            .iter()
            .map(|(sort, mass)| self.draft.given[mass.0].base() / (1.0 + regain(*sort)))
            .collect();
        let whole: f64 = dry.iter().sum();
        let shares = masses.iter().zip(dry).map(|((sort, mass), dry)| {
            let origin = self.draft.given[mass.0].clone();
            (*sort, self.draft.share(dry / whole, &origin))
        });
        Of::Shares(shares.collect())
    }

    /// The shares of two sorts that give a mean diameter, by the length of fibre.
    fn by_diameter(&mut self, keys: &Section<'d>, sorts: &[usize]) -> Result<Of> {
        let wanted = keys.read(self.draft, |reader| Mean::take(reader))?.diameter;
        let wanted = &self.draft.given[wanted.inner().0];
        let [one, other] = *sorts else {
            return Err(keys.error("diameter", "a mean settles the shares of two sorts; name two"));
        };
        let diameter = |sort: usize| {
            let node = &self.tree.sorts[sort];
            let place = node.wool.diameter.as_ref().map(|d| *d.inner());
            place.map(|place| self.draft.given[place.0].base()).ok_or_else(|| {
                let message =
                    format!("the diameter of '{}' is not known; write it there", node.name);
                keys.error("diameter", message)
            })
        };
        let (thick, thin, mean) = (diameter(one)?, diameter(other)?, wanted.base());
        // Of the length of fibre so much is of the second; its mass goes as the square of the diameter.
        let length = (thick - mean) / (thick - thin);
        if !(0.0..=1.0).contains(&length) {
            let say = |x| crate::quantity::print::of_kind(x, Kind::Fineness);
            return Err(keys.error(
                "diameter",
                format!("no blend of {} and {} has a mean of {}", say(thick), say(thin), say(mean)),
            ));
        }
        let (first, second) = ((1.0 - length) * thick * thick, length * thin * thin);
        let share = second / (first + second);
        let origin = wanted.clone();
        let places = [1.0 - share, share].map(|share| self.draft.share(share, &origin));
        Ok(Of::Shares(vec![(one, places[0]), (other, places[1])]))
    }
}
