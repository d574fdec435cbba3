//! How a heap is best weighed out to its yarns before it is known what each will lose.

use super::Plan;
use super::lots::Block;
use super::tree::HeapNode;

/// How a heap may be weighed out to its yarns.
#[derive(Clone, Debug, PartialEq)]
pub struct Split {
    /// The heap; empty where there is only one.
    pub heap: String,
    /// What the heap holds with the planned values, as clean dry fibre and on the scale, kg.
    pub fibre_mass: f64,
    /// The same on the scale.
    pub mass: f64,
    /// Each yarn, the share of the heap that is proposed for it, and what it needs with the planned values.
    pub yarns: Vec<(String, f64, f64)>,
    /// Share of the simulated lots in which all promises of the heap are kept, where each yarn takes what
    /// it turns out to need.
    pub as_needed: f64,
    /// The same where all is weighed out beforehand as proposed.
    pub weighed_out: f64,
    /// The same where a mass is moved from the yarn with the most to spare to the one with the least, and
    /// the other way: kg on the scale, and the two chances.
    pub shifted: Vec<(f64, f64, f64)>,
    /// The same where a mass is held back unspun and given to the yarn that falls short: kg on the scale.
    pub held: Vec<(f64, f64)>,
}

/// How much is moved or held back on trial, kg on the scale.
const SHIFTS: [f64; 2] = [0.25, 1.0];
const HELD: [f64; 2] = [0.5, 1.0];

/// The share of a heap that each of its yarns needs, lot by lot.
struct Needs<'a> {
    yarns: Vec<&'a [f64]>,
}

impl Needs<'_> {
    /// Share of some lots in which every yarn has enough, with a share held back for those that have not.
    fn kept(&self, lots: std::ops::Range<usize>, shares: &[f64], held: f64) -> f64 {
        let count = lots.len() as f64;
        let enough = |lot: &usize| {
            let lacks =
                self.yarns.iter().zip(shares).map(|(need, share)| (need[*lot] - share).max(0.0));
            lacks.sum::<f64>() <= held + 1e-12
        };
        lots.filter(enough).count() as f64 / count
    }

    /// The division of a part of the heap that keeps the most of some lots: equal slack, then for each pair
    /// of yarns the best transfer, until none betters it.
    fn best(&self, lots: std::ops::Range<usize>, whole: f64) -> Vec<f64> {
        let count = lots.len() as f64;
        let moments: Vec<(f64, f64)> = self
            .yarns
            .iter()
            .map(|need| {
                let part = &need[lots.clone()];
                let mean = part.iter().sum::<f64>() / count;
                let variance = part.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / count;
                (mean, variance.sqrt())
            })
            .collect();
        let means: f64 = moments.iter().map(|(mean, _)| mean).sum();
        let deviations: f64 = moments.iter().map(|(_, deviation)| deviation).sum();
        let slack = if deviations > 0.0 { (whole - means) / deviations } else { 0.0 };
        let mut shares: Vec<f64> =
            moments.iter().map(|(mean, deviation)| (mean + slack * deviation).max(0.0)).collect();
        let sum: f64 = shares.iter().sum();
        for share in &mut shares {
            *share *= whole / sum;
        }
        let mut found = self.kept(lots.clone(), &shares, 0.0);
        loop {
            let before = found;
            for one in 0..shares.len() {
                for other in one + 1..shares.len() {
                    let Some((first, kept)) = self.transfer(lots.clone(), &shares, one, other)
                    else {
                        continue;
                    };
                    if kept > found + 1e-12 {
                        let both = shares[one] + shares[other];
                        (shares[one], shares[other], found) = (first, both - first, kept);
                    }
                }
            }
            if found <= before {
                return shares;
            }
        }
    }

    /// What one of two yarns is best given of what the two have together: the lots in which the others
    /// have enough, each kept from what the one needs to what the other leaves it.
    fn transfer(
        &self,
        lots: std::ops::Range<usize>,
        shares: &[f64],
        one: usize,
        other: usize,
    ) -> Option<(f64, f64)> {
        let both = shares[one] + shares[other];
        let count = lots.len() as f64;
        let mut ends: Vec<(f64, i32)> = Vec::new();
        for lot in lots {
            let others = self.yarns.iter().zip(shares).enumerate();
            let fits = others
                .filter(|(place, _)| *place != one && *place != other)
                .all(|(_, (need, share))| need[lot] <= share + 1e-12);
            let (from, to) = (self.yarns[one][lot], both - self.yarns[other][lot]);
            if fits && from <= to {
                ends.extend([(from, 1), (to, -1)]);
            }
        }
        // Where one lot ends and another begins both are kept.
        ends.sort_by(|a, b| a.0.total_cmp(&b.0).then(b.1.cmp(&a.1)));
        let (mut open, mut most, mut found) = (0, 0, None);
        for (place, (at, step)) in ends.iter().enumerate() {
            open += step;
            if open > most {
                most = open;
                // The middle of the stretch over which so many are kept.
                let end = ends.get(place + 1).map_or(*at, |next| next.0);
                found = Some(f64::midpoint(*at, end));
            }
        }
        found.map(|first| (first, f64::from(most) / count))
    }
}

impl Plan {
    /// How each heap of several yarns with promises is best weighed out, by the simulated lots: chosen with
    /// the first half of them, its chance taken from the other.
    pub(super) fn splits(
        &self,
        blocks: &[Block],
        mass: impl Fn(usize) -> (f64, f64),
    ) -> Vec<Split> {
        let columns: Vec<Vec<f64>> = (0..self.tree.yarns.len())
            .map(|yarn| {
                blocks.iter().flat_map(|block| block.shares[yarn].iter().copied()).collect()
            })
            .collect();
        let heaps = self.tree.heaps.iter().enumerate();
        heaps.filter_map(|(place, heap)| self.split(heap, &columns, mass(place))).collect()
    }

    fn split(
        &self,
        heap: &HeapNode,
        columns: &[Vec<f64>],
        (fibre_mass, mass): (f64, f64),
    ) -> Option<Split> {
        let asked: Vec<usize> = heap
            .yarns
            .iter()
            .copied()
            .filter(|yarn| columns[*yarn].iter().any(|share| *share > 0.0))
            .collect();
        let lots = columns.first().map_or(0, Vec::len);
        if heap.yarns.len() < 2 || asked.is_empty() || heap.split.is_some() || lots < 100 {
            return None;
        }
        let needs = Needs { yarns: asked.iter().map(|yarn| &columns[*yarn][..]).collect() };
        let (choose, quote) = (0..lots / 2, lots / 2..lots);
        // What is not asked for stays with the yarn that takes the rest, where nothing is promised of it.
        let free = heap.yarns.len() > asked.len();
        let whole = if free { needs.enough(choose.clone()) } else { 1.0 };
        let shares = needs.best(choose.clone(), whole);
        let weighed_out = needs.kept(quote.clone(), &shares, 0.0);
        let in_share = |kg: f64| kg / mass;
        let slack: Vec<f64> = needs
            .yarns
            .iter()
            .zip(&shares)
            .map(|(need, share)| {
                let short = choose.clone().filter(|lot| need[*lot] > *share).count();
                -(short as f64)
            })
            .collect();
        let most = (0..shares.len()).max_by(|a, b| slack[*a].total_cmp(&slack[*b]))?;
        let least = (0..shares.len()).min_by(|a, b| slack[*a].total_cmp(&slack[*b]))?;
        let moved = |kg: f64| {
            let mut moved = shares.clone();
            moved[most] -= in_share(kg);
            moved[least] += in_share(kg);
            needs.kept(quote.clone(), &moved, 0.0)
        };
        let shifted = if most == least || free {
            Vec::new()
        } else {
            SHIFTS.map(|kg| (kg, moved(kg), moved(-kg))).to_vec()
        };
        let held = HELD.map(|kg| {
            let held = in_share(kg);
            let left = needs.best(choose.clone(), (whole - held).max(0.0));
            (kg, needs.kept(quote.clone(), &left, held))
        });
        let planned = |yarn: usize| {
            let mut column = columns[yarn].clone();
            let middle = column.len() / 2;
            *column.select_nth_unstable_by(middle, f64::total_cmp).1
        };
        let rest = 1.0 - shares.iter().sum::<f64>();
        let yarns = heap.yarns.iter().map(|yarn| {
            let name = self.tree.yarns[*yarn].name.clone();
            match asked.iter().position(|other| other == yarn) {
                Some(place) => (name, shares[place], planned(*yarn)),
                None => (name, rest.max(0.0), 0.0),
            }
        });
        Some(Split {
            heap: heap.name.clone(),
            fibre_mass,
            mass,
            yarns: yarns.collect(),
            as_needed: needs.kept(quote.clone(), &vec![0.0; asked.len()], 1.0),
            weighed_out,
            shifted,
            held: if free { Vec::new() } else { held.to_vec() },
        })
    }
}

impl Needs<'_> {
    /// The part of the heap that keeps 19 lots of 20, divided at its best; the whole where none does.
    fn enough(&self, lots: std::ops::Range<usize>) -> f64 {
        let (mut low, mut high) = (0.0, 1.0);
        let keeps = |whole: f64| {
            let shares = self.best(lots.clone(), whole);
            self.kept(lots.clone(), &shares, 0.0) >= 0.95
        };
        if !keeps(high) {
            return high;
        }
        for _ in 0..14 {
            let middle = f64::midpoint(low, high);
            if keeps(middle) { high = middle } else { low = middle }
        }
        high
    }
}
