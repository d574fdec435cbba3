//! Looking for the values at which a function meets the target: where it crosses it, touches it at a
//! maximum or a minimum, meets it at the edge of where it has values, or stays at it.

/// Steps into which a range is cut.
const STEPS: usize = 400;

/// Steps in a decade beyond the usual range, and the decades that are looked through.
const BEYOND: (i32, i32) = (20, 9);

/// How far from the target, relatively, a maximum or an edge still meets it; and how far beyond it a
/// maximum may be by rounding before there are two values about it.
const TOUCH: (f64, f64) = (1e-9, 1e-13);

/// What a maximum looks as wide as, relatively, to numbers with sixteen digits.
const NARROW: f64 = 1e-6;

/// A value at which the target is met without being crossed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Touch {
    /// The result is less on both sides.
    Maximum,
    /// The result is more on both sides.
    Minimum,
    /// The formula has no answer on one side.
    Edge,
}

/// What was found: one value, or all from the least to the most.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Found {
    pub(super) least: f64,
    pub(super) most: f64,
    pub(super) touch: Option<Touch>,
}

impl Found {
    fn one(x: f64, touch: Option<Touch>) -> Found {
        Found { least: x, most: x, touch }
    }
    pub(super) fn is_stretch(&self) -> bool {
        self.most > self.least
    }
}

/// Points from one end to the other: in even steps of the ratio where the range spans decades, else of the
/// difference.
pub(super) fn within(low: f64, high: f64) -> Vec<f64> {
    let ratio = low > 0.0 && high / low > 20.0;
    let at = |k: usize| {
        let share = k as f64 / STEPS as f64;
        if ratio { low * (high / low).powf(share) } else { low + (high - low) * share }
    };
    (0..STEPS).map(at).chain([high]).collect()
}

/// Points as far beyond the usual range as is possible, the usual range among them.
pub(super) fn beyond(low: f64, high: f64, least: f64, most: f64) -> Vec<f64> {
    let (each, decades) = BEYOND;
    let far = |k: i32| 10_f64.powf(f64::from(k) / f64::from(each));
    let steps = 1..=each * decades;
    let width = (high - low).max(f64::MIN_POSITIVE);
    let mut points: Vec<f64> = if low > 0.0 && least >= 0.0 {
        // To nothing in even steps of the ratio.
        let down = steps.clone().map(|k| low / far(k));
        down.chain((least == 0.0).then_some(0.0)).collect()
    } else if least.is_finite() {
        (1..=STEPS / 2).map(|k| low + (least - low) * 2.0 * k as f64 / STEPS as f64).collect()
    } else {
        steps.clone().map(|k| low - width * (far(k) - 1.0)).collect()
    };
    points.reverse();
    points.extend(within(low, high));
    if most.is_finite() {
        points
            .extend((1..=STEPS / 2).map(|k| high + (most - high) * 2.0 * k as f64 / STEPS as f64));
    } else {
        points.extend(steps.map(|k| high + width * (far(k) - 1.0)));
    }
    points.retain(|x| *x >= least && *x <= most);
    points.dedup();
    points
}

/// A point that was looked at.
#[derive(Clone, Copy, Debug)]
struct Point {
    x: f64,
    miss: f64,
    touch: Option<Touch>,
}

/// What is looked through, and what came out on the way.
pub(super) struct Search<F, G> {
    /// The result less the target.
    pub(super) miss: F,
    /// The slope of the result.
    pub(super) slope: G,
    pub(super) wanted: f64,
    /// The least and the most that the points gave.
    pub(super) ends: (f64, f64),
}

impl<F: FnMut(f64) -> f64, G: FnMut(f64) -> f64> Search<F, G> {
    /// What gives the wanted result, between points in their order. `closed` says of both ends whether the
    /// last point is one that was asked for or the last possible: there it need not be crossed.
    pub(super) fn through(&mut self, points: &[f64], closed: (bool, bool)) -> Vec<Found> {
        let points: Vec<Point> = points.iter().map(|x| self.at(*x, None)).collect();
        for point in points.iter().filter(|point| point.miss.is_finite()) {
            self.note(point.miss);
        }
        let points = self.with_edges(points);
        let points = self.with_turns(&points);
        let touches: Vec<bool> =
            (0..points.len()).map(|at| self.touches(&points, at, closed)).collect();
        let mut found: Vec<Found> = Vec::new();
        let mut at = 0;
        while at < points.len() {
            let Point { x, miss, touch } = points[at];
            if self.hits(miss) {
                let last = (at..points.len()).take_while(|k| self.hits(points[*k].miss)).last();
                let last = last.unwrap_or(at);
                let before = at.checked_sub(1).map(|k| points[k]);
                let after = points.get(last + 1).copied();
                let mut one = self.stretch(x, points[last].x, before, after);
                if !one.is_stretch() {
                    one.touch = one.touch.or(touch);
                }
                found.push(one);
                at = last + 1;
                continue;
            }
            if touches[at] {
                found.push(Found::one(x, touch));
            } else if let Some(next) = points.get(at + 1)
                && !touches[at + 1]
                && !self.hits(next.miss)
                && miss.is_finite()
                && next.miss.is_finite()
                && miss.signum() * next.miss.signum() < 0.0
            {
                let root = bisect(&mut self.miss, x, next.x);
                let left_over = (self.miss)(root).abs();
                // A jump or a pole changes sign too, without coming near the wanted value.
                if self.hits(left_over) {
                    found.push(self.stretch(root, root, Some(points[at]), Some(*next)));
                } else if left_over <= miss.abs().min(next.miss.abs())
                    && left_over <= 1e-9 * self.size(points[at]).max(self.size(*next))
                {
                    found.push(Found::one(root, None));
                }
            }
            at += 1;
        }
        found.dedup_by(|next, one| near(one.most, next.least));
        found
    }

    fn at(&mut self, x: f64, touch: Option<Touch>) -> Point {
        Point { x, miss: (self.miss)(x), touch }
    }

    fn note(&mut self, miss: f64) {
        let answer = miss + self.wanted;
        self.ends = (self.ends.0.min(answer), self.ends.1.max(answer));
    }

    /// What a miss near a point is small against: not the miss at an edge, which may be a pole.
    fn size(&self, point: Point) -> f64 {
        let miss = if point.touch == Some(Touch::Edge) { 0.0 } else { point.miss.abs() };
        self.wanted.abs().max(miss)
    }

    /// Whether a miss is only rounding.
    fn hits(&self, miss: f64) -> bool {
        miss.abs() <= 1e-14 * self.wanted.abs()
    }

    /// The points, and between one with an answer and one without the last that has one.
    fn with_edges(&mut self, points: Vec<Point>) -> Vec<Point> {
        let mut all: Vec<Point> = Vec::with_capacity(points.len());
        for point in points {
            let Some(before) = all.last_mut() else {
                all.push(point);
                continue;
            };
            let [was, is] = [before.miss, point.miss].map(f64::is_finite);
            if was == is {
                all.push(point);
                continue;
            }
            let (inside, outside) = if was { (before.x, point.x) } else { (point.x, before.x) };
            let edge = last_inside(inside, outside, |x| (self.miss)(x).is_finite());
            if was && near(edge, before.x) {
                before.touch = Some(Touch::Edge);
            } else if was || !near(edge, point.x) {
                let edge = self.at(edge, Some(Touch::Edge));
                all.push(edge);
            }
            let starts = !was && near(edge, point.x);
            all.push(Point { touch: starts.then_some(Touch::Edge), ..point });
        }
        all
    }

    /// The points, and where they come nearest to the target between two others, the place where they
    /// do.
    fn with_turns(&mut self, points: &[Point]) -> Vec<Point> {
        let mut all = Vec::with_capacity(points.len());
        for (at, point) in points.iter().enumerate() {
            all.push(*point);
            let Some(turn) = self.turn(points, at) else { continue };
            self.note(turn.miss);
            if near(turn.x, point.x) {
                all.pop();
                all.push(turn);
            } else if turn.x < point.x {
                all.insert(all.len() - 1, turn);
            } else {
                all.push(turn);
            }
        }
        all
    }

    /// The maximum or minimum beside a point that is nearer to the target than its neighbours.
    fn turn(&mut self, points: &[Point], at: usize) -> Option<Point> {
        let here = points[at];
        if !here.miss.is_finite() || self.hits(here.miss) {
            return None;
        }
        let beside = |k: Option<usize>| {
            k.and_then(|k| points.get(k)).filter(|point| point.miss.is_finite()).copied()
        };
        let (left, right) = (beside(at.checked_sub(1)), beside(Some(at + 1)));
        let mut most = 0.0_f64;
        for other in [left, right].into_iter().flatten() {
            let farther = other.miss.abs() - here.miss.abs();
            if other.miss.signum() * here.miss.signum() < 0.0 || farther < 0.0 {
                return None;
            }
            most = most.max(farther);
        }
        // Between points the function does not fall by many times what it falls from point to point.
        if here.miss.abs() > 4.0 * most {
            return None;
        }
        let (low, high) = (left.unwrap_or(here).x, right.unwrap_or(here).x);
        let sign = here.miss.signum();
        let about = nearest(low, high, |x| sign * (self.miss)(x));
        let x = self.turned(low, high, about, sign);
        let interior = |end: f64| (x - end).abs() > 1e-9 * (high - low);
        if !interior(low) || !interior(high) {
            return None;
        }
        let kind = if sign < 0.0 { Touch::Maximum } else { Touch::Minimum };
        Some(self.at(x, Some(kind)))
    }

    /// The place of a maximum or minimum to the last digit, where the slope changes sign there: its
    /// height alone tells it to half of the digits.
    fn turned(&mut self, low: f64, high: f64, about: f64, sign: f64) -> f64 {
        let rises = [low, high].map(|x| sign * (self.slope)(x));
        if !(rises[0] < 0.0 && rises[1] > 0.0) {
            return about;
        }
        let slope = &mut self.slope;
        let x = bisect(&mut |x| sign * slope(x), low, high);
        let [exact, rough] = [x, about].map(|x| sign * (self.miss)(x));
        if exact <= rough + TOUCH.1 * self.wanted.abs().max(rough.abs()) { x } else { about }
    }

    /// Whether a point gives the target although nothing crosses it there.
    fn touches(&self, points: &[Point], at: usize, closed: (bool, bool)) -> bool {
        let Point { miss, touch, .. } = points[at];
        let beside = [at.checked_sub(1), Some(at + 1)].into_iter().flatten();
        let (mut crossed, mut about) = (false, self.wanted.abs());
        for other in beside.filter_map(|k| points.get(k)).filter(|other| other.miss.is_finite()) {
            crossed |= other.miss.signum() * miss.signum() < 0.0;
            about = about.max(self.size(*other));
        }
        let end = (at == 0 && closed.0) || (at + 1 == points.len() && closed.1);
        match touch {
            Some(Touch::Maximum | Touch::Minimum) => {
                miss.abs() <= about * if crossed { TOUCH.1 } else { TOUCH.0 }
            }
            Some(Touch::Edge) => !crossed && miss.abs() <= TOUCH.0 * self.wanted.abs(),
            None => end && !crossed && miss.abs() <= TOUCH.0 * self.wanted.abs(),
        }
    }

    /// The stretch about values that give the wanted result, to its ends between them and their
    /// neighbours. A stretch as narrow as rounding is a single value.
    fn stretch(
        &mut self,
        from: f64,
        to: f64,
        before: Option<Point>,
        after: Option<Point>,
    ) -> Found {
        let miss = &mut self.miss;
        let rounding = 1e-14 * self.wanted.abs();
        let mut end = |inside: f64, outside: Option<Point>| match outside {
            Some(outside) => last_inside(inside, outside.x, |x| miss(x).abs() <= rounding),
            None => inside,
        };
        let (least, most) = (end(from, before), end(to, after));
        if from >= to && near(least, most) {
            return Found::one(from, None);
        }
        // On a step the slope is nothing; about a maximum only at the top.
        let narrow = most - least <= NARROW * least.abs().max(most.abs())
            && (self.slope)(least + 0.25 * (most - least)) != 0.0;
        if narrow && let (Some(before), Some(after)) = (before, after) {
            let [left, right] = [before.miss, after.miss].map(f64::signum);
            if left * right < 0.0 {
                return Found::one(f64::midpoint(least, most), None);
            }
            if left * right > 0.0 {
                let x = self.turned(before.x, after.x, f64::midpoint(least, most), left);
                let kind = if left < 0.0 { Touch::Maximum } else { Touch::Minimum };
                return Found::one(x, Some(kind));
            }
        }
        Found { least, most, touch: None }
    }
}

/// The last value of which something holds, between one of which it does and one of which it does not.
fn last_inside(mut inside: f64, mut outside: f64, mut holds: impl FnMut(f64) -> bool) -> f64 {
    // Towards zero there would be a thousand halvings, and nothing to see.
    for _ in 0..200 {
        let middle = f64::midpoint(inside, outside);
        if middle.total_cmp(&inside).is_eq() || middle.total_cmp(&outside).is_eq() {
            break;
        }
        if holds(middle) { inside = middle } else { outside = middle }
    }
    inside
}

/// Where a function with one minimum between two values has it, by the golden section.
fn nearest(mut low: f64, mut high: f64, mut height: impl FnMut(f64) -> f64) -> f64 {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let mut inner = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    let mut heights = inner.map(&mut height);
    for _ in 0..60 {
        if heights[0] <= heights[1] {
            high = inner[1];
            inner = [high - GOLDEN * (high - low), inner[0]];
            heights = [height(inner[0]), heights[0]];
        } else {
            low = inner[0];
            inner = [inner[1], low + GOLDEN * (high - low)];
            heights = [heights[1], height(inner[1])];
        }
    }
    if heights[0] <= heights[1] { inner[0] } else { inner[1] }
}

/// True of two values that differ by no more than rounding on the way can make.
fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// Halves a bracket until its ends are neighbours; returns the better of the two.
pub(crate) fn bisect(miss: &mut impl FnMut(f64) -> f64, mut left: f64, mut right: f64) -> f64 {
    let rising = miss(right) > 0.0;
    loop {
        let middle = f64::midpoint(left, right);
        if middle <= left || middle >= right {
            break;
        }
        if (miss(middle) > 0.0) == rising {
            right = middle;
        } else {
            left = middle;
        }
    }
    if miss(left).abs() < miss(right).abs() { left } else { right }
}
