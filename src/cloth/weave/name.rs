//! What a weave is called.

use std::fmt;

use super::make::LONGEST;
use super::satin::{common_divisor, satin_move, satin_moves};
use super::{System, Weave};

/// How many to a float, in turn round a thread, beginning with one that is up.
fn runs(cells: &[bool]) -> Vec<usize> {
    let n = cells.len();
    let Some(start) = (0..n).find(|k| cells[*k] && !cells[(k + n - 1) % n]) else { return vec![n] };
    let mut runs = Vec::new();
    let mut last = false;
    for k in 0..n {
        let up = cells[(start + k) % n];
        if k == 0 || up != last {
            runs.push(0);
        }
        last = up;
        if let Some(run) = runs.last_mut() {
            *run += 1;
        }
    }
    runs
}

fn rotated(runs: &[usize], by: usize) -> Vec<usize> {
    let (head, tail) = runs.split_at(by);
    [tail, head].concat()
}

/// The greatest of the ways to begin that keep ups and downs, or that exchange them.
fn greatest(runs: &[usize], exchanged: bool) -> Vec<usize> {
    let begin = usize::from(exchanged);
    let ways = (begin..runs.len()).step_by(2).map(|by| rotated(runs, by));
    ways.max().unwrap_or_default()
}

fn joined(runs: &[usize], by: &str) -> String {
    runs.iter().map(ToString::to_string).collect::<Vec<_>>().join(by)
}

impl Weave {
    /// The weave's name, where it has one here. Where the repeat begins makes no other weave.
    pub fn name(&self) -> Option<String> {
        if self.ends().max(self.picks()) > LONGEST {
            return None;
        }
        if (self.ends(), self.picks()) == (2, 2) {
            return Some("plain".to_owned());
        }
        let turns = |weave: &Weave| weave.shifts().and_then(|shifts| weave.turning(&shifts));
        self.mat_name()
            .or_else(|| self.shifts().and_then(|shifts| self.regular(&shifts)))
            .or_else(|| turns(self))
            .or_else(|| self.double_name())
            .or_else(|| turns(&self.turned().ok()?).map(|name| format!("{name} weft-way")))
    }

    /// True where two weaves differ only in where the repeat begins.
    pub fn alike(&self, other: &Weave) -> bool {
        let (ends, picks) = (self.ends(), self.picks());
        if (ends, picks) != (other.ends(), other.picks())
            || self.0.by_pick.filled() != other.0.by_pick.filled()
        {
            return false;
        }
        let same = |across: usize, up: usize| {
            let end =
                |e: usize| (0..picks).all(|p| self.is_up(e + across, p + up) == other.is_up(e, p));
            (0..ends).all(end)
        };
        (0..ends).any(|across| (0..picks).any(|up| same(across, up)))
    }

    fn end(&self, end: usize) -> Vec<bool> {
        (0..self.picks()).map(|pick| self.is_up(end, pick)).collect()
    }

    /// Every pick like the first or its reverse: a mat, of which ribs and hopsacks are kinds.
    fn mat_name(&self) -> Option<String> {
        let first: Vec<bool> = (0..self.ends()).map(|end| self.is_up(end, 0)).collect();
        let lead = first.iter().position(|up| *up)?;
        let lift = self.end(lead);
        for (pick, up) in lift.iter().enumerate() {
            if !(0..self.ends()).all(|end| self.is_up(end, pick) == (first[end] == *up)) {
                return None;
            }
        }
        let (lift, group) = (runs(&lift), runs(&first));
        let way = |exchanged| (greatest(&lift, exchanged), greatest(&group, exchanged));
        let (lift, group) = way(false).max(way(true));
        let formula = joined(&lift, "/");
        Some(if group == [1, 1] {
            format!("{formula} warp rib")
        } else if lift == [1, 1] {
            format!("{} weft rib", joined(&group, "/"))
        } else if lift == group {
            format!("{formula} hopsack")
        } else {
            format!("{formula}({})", joined(&group, "+"))
        })
    }

    /// By how many picks each end lags behind the first, where all are alike but for that.
    fn shifts(&self) -> Option<Vec<usize>> {
        let picks = self.picks();
        // Twice over, so that a shifted end is a part of it.
        let first = [self.end(0), self.end(0)].concat();
        (0..self.ends())
            .map(|end| {
                let own = self.end(end);
                (0..picks).find(|by| first[picks - by..][..picks] == own[..])
            })
            .collect()
    }

    /// Ends that lag evenly: twills and satins.
    fn regular(&self, shifts: &[usize]) -> Option<String> {
        let threads = self.picks();
        let step = *shifts.get(1)?;
        let even = (0..shifts.len())
            .all(|k| (shifts[k] + step) % threads == shifts[(k + 1) % shifts.len()]);
        if !even {
            return None;
        }
        let runs = greatest(&runs(&self.end(0)), false);
        let face = match runs[..] {
            [1, _] => Some(System::Weft),
            [_, 1] => Some(System::Warp),
            _ => None,
        };
        if let Some(face) = face
            && step != 1
            && step + 1 != threads
            && common_divisor(step, threads) == 1
        {
            // The move counts ends from pick to pick, the step picks from end to end.
            let own = (1..threads).find(|m| m * step % threads == 1)?;
            let word = if face == System::Warp { "satin" } else { "sateen" };
            let only = satin_moves(threads).ok()?.len() == 2;
            let usual = satin_move(threads, None).ok() == Some(own);
            let tail = if only && usual { String::new() } else { format!(" move {own}") };
            return Some(format!("{threads}-end {word}{tail}"));
        }
        let formula = joined(&runs, "/");
        Some(if step == 1 {
            format!("{formula} twill")
        } else if step + 1 == threads {
            format!("{formula} twill S")
        } else {
            format!("{formula} twill step {step}")
        })
    }

    /// Ends that lag by one more each, then by one less: herringbones, broken and pointed twills.
    fn turning(&self, shifts: &[usize]) -> Option<String> {
        let (threads, ends) = (self.picks(), shifts.len());
        if threads < 3 || ends % 2 == 1 {
            return None;
        }
        let lag = |k: usize| {
            let (here, next) = (shifts[k % ends], shifts[(k + 1) % ends]);
            (next + threads - here) % threads
        };
        let formula = joined(&greatest(&runs(&self.end(0)), false), "/");
        let half = ends / 2;
        let begins = |pattern: &dyn Fn(usize) -> usize| {
            (0..ends).any(|from| (0..ends).all(|k| lag(from + k) == pattern(k)))
        };
        let pointed = |k: usize| if k < half { 1 } else { threads - 1 };
        let cut = |k: usize| match k % half {
            last if last + 1 == half => threads / 2,
            _ => pointed(k),
        };
        if begins(&pointed) {
            let tail = if half + 1 == threads {
                String::new()
            } else {
                format!(" over {} ends", half + 1)
            };
            return Some(format!("{formula} pointed twill{tail}"));
        }
        if half >= 2 && threads % 2 == 0 && begins(&cut) {
            return Some(if half * 2 == threads {
                format!("{formula} broken twill")
            } else if half == threads {
                format!("{formula} herringbone")
            } else {
                format!("{formula} herringbone over {half} ends")
            });
        }
        None
    }

    /// Two layers of one weave.
    fn double_name(&self) -> Option<String> {
        if self.ends() % 2 == 1 || self.picks() % 2 == 1 || self.ends().max(self.picks()) > 256 {
            return None;
        }
        [[true, false], [false, true]].into_iter().find_map(|ends| {
            [[true, false], [false, true]].into_iter().find_map(|picks| {
                let layers = self.split(&ends, &picks).ok()?;
                let name = layers.face.name()?;
                let sound = layers.stitches.is_empty() && layers.back.name()? == name;
                let double = Weave::parse(&format!("double {name}")).ok()?;
                (sound && double.alike(self)).then(|| format!("double {name}"))
            })
        })
    }
}

/// The name, or the size of the repeat in ends and picks for a weave without one.
impl fmt::Display for Weave {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.name() {
            Some(name) => f.write_str(&name),
            None => write!(f, "weave of {} × {}", self.ends(), self.picks()),
        }
    }
}
