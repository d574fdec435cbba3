"""Designation, count, folding, twist, hanks and winding, diameter, strength, evenness."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)
from hankwise._yarn_more import ball_band as ball_band
from hankwise._yarn_more import check_weight_card as check_weight_card
from hankwise._yarn_more import parse as parse
from hankwise._yarn_more import round_count as round_count
from hankwise._yarn_more import round_tex as round_tex
from hankwise._yarn_more import weight_band as weight_band
from hankwise._yarn_more import weight_class as weight_class
from hankwise._yarn_more import wraps as wraps

@final
class _AddedIrregularity(Formula):
    """Irregularity that a process added of its own.

    CV_a = √(CV₂ × CV₂ − CV₁ × CV₁)

    before: irregularity before, as coefficient of variation
    after: irregularity after, as coefficient of variation
    """

    def __call__(self, before: _Plain, after: _Plain) -> Quantity: ...
    def working(
        self,
        before: _Plain,
        after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after"],
        *,
        added_irregularity: _Plain,
        before: _Plain = ...,
        after: _Plain = ...,
    ) -> list[Quantity]: ...

added_irregularity: _AddedIrregularity

@final
class _BallLength(Formula):
    """Length of yarn in a ball that weighs what its label says at the regain of the label.

    m_R = m × (1 + R) / (1 + A); L = m_R / T × 1000000

    ball: mass on the label
    count: count, as measured
    regain: regain at which the count was measured
    label_regain: regain at which the label's mass holds
    """

    def __call__(
        self,
        ball: _Measure,
        count: _Measure,
        regain: _Plain,
        label_regain: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ball: _Measure,
        count: _Measure,
        regain: _Plain,
        label_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ball", "count", "regain", "label_regain"],
        *,
        ball_length: _Measure,
        ball: _Measure = ...,
        count: _Measure = ...,
        regain: _Plain = ...,
        label_regain: _Plain = ...,
    ) -> list[Quantity]: ...

ball_length: _BallLength

@final
class _BandHalfWidth(Formula):
    """Half the width of the band in which a reading, or the mean of several, must fall.

    h = z × CV × m

    mass: what it should weigh
    variation: variation of what is read
    deviations: standard deviations to each side, z or t: 1.96 takes in 95 % where the variation
    is known
    """

    def __call__(self, mass: _Measure, variation: _Plain, deviations: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        variation: _Plain,
        deviations: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "variation", "deviations"],
        *,
        band_half_width: _Measure,
        mass: _Measure = ...,
        variation: _Plain = ...,
        deviations: _Plain = ...,
    ) -> list[Quantity]: ...

band_half_width: _BandHalfWidth

@final
class _BreakingForce(Formula):
    """Force that breaks a yarn, from its tenacity.

    F = f × T / 100

    tenacity: tenacity
    count: yarn count
    """

    def __call__(self, tenacity: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        tenacity: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["tenacity", "count"],
        *,
        breaking_force: _Measure,
        tenacity: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

breaking_force: _BreakingForce

@final
class _BreakingLength(Formula):
    """Length of yarn whose own weight would break it.

    L_b = 1000000 × F / (9.80665 × T)

    force: breaking force
    count: yarn count
    """

    def __call__(self, force: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        force: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["force", "count"],
        *,
        breaking_length: _Measure,
        force: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

breaking_length: _BreakingLength

@final
class _BundleLength(Formula):
    """Yarn in a bundle: its hanks, the leas or cuts of a hank, the length of these.

    Y = h × k × l

    hanks: hanks in the bundle
    leas: leas or cuts in a hank
    lea: length of a lea or cut
    """

    def __call__(self, hanks: _Plain, leas: _Plain, lea: _Measure) -> Quantity: ...
    def working(
        self,
        hanks: _Plain,
        leas: _Plain,
        lea: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hanks", "leas", "lea"],
        *,
        bundle_length: _Measure,
        hanks: _Plain = ...,
        leas: _Plain = ...,
        lea: _Measure = ...,
    ) -> list[Quantity]: ...

bundle_length: _BundleLength

@final
class _ChanceForEach(Formula):
    """The chance with which each single reading must fall within its limits, so that all do with a
    wanted chance.

    P₁ = exp(ln(P) / n)

    all: chance that all readings are within
    readings: readings
    """

    def __call__(self, all: _Plain, readings: _Plain) -> Quantity: ...
    def working(
        self,
        all: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["all", "readings"],
        *,
        chance_for_each: _Plain,
        all: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

chance_for_each: _ChanceForEach

@final
class _CheckWeight(Formula):
    """What the balance should read for a number of ends of a length.

    m = T × L × k × 0.000001

    count: count in the state at the machine
    length: length of each end
    ends: ends weighed together
    """

    def __call__(self, count: _Measure, length: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "length", "ends"],
        *,
        check_weight: _Measure,
        count: _Measure = ...,
        length: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

check_weight: _CheckWeight

@final
class _CheckWeightInTodaysAir(Formula):
    """What the balance should read today for ends of a length, where the count is stated at another
    regain or with another oil.

    m₁ = T × L × k × 0.000001; m = m₁ × (1 + R₂ + o₂) / (1 + R₁ + o₁)

    count: count as stated
    length: length of each end
    ends: ends weighed together
    stated: regain at which the count is stated
    today: regain today
    oil_stated: oil with which the count is stated
    oil_today: oil today
    """

    def __call__(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        stated: _Plain,
        today: _Plain,
        oil_stated: _Plain,
        oil_today: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        stated: _Plain,
        today: _Plain,
        oil_stated: _Plain,
        oil_today: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "length", "ends", "stated", "today", "oil_stated", "oil_today"],
        *,
        check_weight_in_todays_air: _Measure,
        count: _Measure = ...,
        length: _Measure = ...,
        ends: _Plain = ...,
        stated: _Plain = ...,
        today: _Plain = ...,
        oil_stated: _Plain = ...,
        oil_today: _Plain = ...,
    ) -> list[Quantity]: ...

check_weight_in_todays_air: _CheckWeightInTodaysAir

@final
class _ContractionFound(Formula):
    """Contraction in folding, from the nominal and the measured count.

    c = 1 − T_0 / T_R

    nominal: sum of the counts of the ends
    resultant: count of the folded yarn, as measured
    """

    def __call__(self, nominal: _Measure, resultant: _Measure) -> Quantity: ...
    def working(
        self,
        nominal: _Measure,
        resultant: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["nominal", "resultant"],
        *,
        contraction_found: _Plain,
        nominal: _Measure = ...,
        resultant: _Measure = ...,
    ) -> list[Quantity]: ...

contraction_found: _ContractionFound

@final
class _ContractionOfCottonSingle(Formula):
    """Contraction of a cotton single in spinning, by an empirical rule, on the untwisted length.

    TM = 2.54 × K / 24.3010545; c = (2.67 × TM − 4.93) / 100

    factor: twist factor
    """

    def __call__(self, factor: _Measure) -> Quantity: ...
    def working(self, factor: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor"],
        *,
        contraction_of_cotton_single: _Plain,
        factor: _Measure = ...,
    ) -> list[Quantity]: ...

contraction_of_cotton_single: _ContractionOfCottonSingle

@final
class _ContractionOnTwisted(Formula):
    """Contraction on the twisted length, from that on the untwisted.

    k = c / (1 − c)

    contraction: contraction on the untwisted length
    """

    def __call__(self, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["contraction"],
        *,
        contraction_on_twisted: _Plain,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

contraction_on_twisted: _ContractionOnTwisted

@final
class _ContractionOnUntwisted(Formula):
    """Contraction on the untwisted length, from that on the twisted.

    c = k / (1 + k)

    contraction_on_twisted: contraction on the twisted length
    """

    def __call__(self, contraction_on_twisted: _Plain) -> Quantity: ...
    def working(
        self,
        contraction_on_twisted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["contraction_on_twisted"],
        *,
        contraction_on_untwisted: _Plain,
        contraction_on_twisted: _Plain = ...,
    ) -> list[Quantity]: ...

contraction_on_untwisted: _ContractionOnUntwisted

@final
class _CordSingle(Formula):
    """Single of a sewing cotton from its number: any number of cords equals three ends of that
    count.

    T_s = 3 × T / n

    number: the number, as a cotton count
    cords: cords
    """

    def __call__(self, number: _Measure, cords: _Plain) -> Quantity: ...
    def working(
        self,
        number: _Measure,
        cords: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["number", "cords"],
        *,
        cord_single: _Measure,
        number: _Measure = ...,
        cords: _Plain = ...,
    ) -> list[Quantity]: ...

cord_single: _CordSingle

@final
class _CottonTicket(Formula):
    """Cotton ticket of a sewing thread: three times its English cotton count.

    k = 3 × 590.541247 / (T × n)

    single: count of an end
    ends: ends in the thread
    """

    def __call__(self, single: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "ends"],
        *,
        cotton_ticket: _Plain,
        single: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

cotton_ticket: _CottonTicket

@final
class _CountAfterScouring(Formula):
    """Count of a yarn after its hanks are scoured: oil out, a little fibre out, shorter.

    T₂ = T₁ × q × (1 − w) / (1 − s)

    count: count before
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

    def __call__(
        self,
        count: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "state_change", "loss", "shrinkage"],
        *,
        count_after_scouring: _Measure,
        count: _Measure = ...,
        state_change: _Plain = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_after_scouring: _CountAfterScouring

@final
class _CountBeforeScouring(Formula):
    """The count to make before scouring for a count wanted after it.

    T₁ = T₂ × (1 − s) / ((1 − w) × q)

    count: count wanted after
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

    def __call__(
        self,
        count: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "state_change", "loss", "shrinkage"],
        *,
        count_before_scouring: _Measure,
        count: _Measure = ...,
        state_change: _Plain = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_before_scouring: _CountBeforeScouring

@final
class _CountForShare(Formula):
    """The count that the first end of a fold must have for its share of the mass.

    T = T_R × s₁ / (s₁ + s₂)

    resultant: resultant count wanted
    shares: shares of all ends, the one asked for first
    """

    def __call__(self, resultant: _Measure, shares: _Plains) -> Quantity: ...
    def working(
        self,
        resultant: _Measure,
        shares: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant"],
        *,
        count_for_share: _Measure,
        resultant: _Measure = ...,
        shares: _Plains = ...,
    ) -> list[Quantity]: ...

count_for_share: _CountForShare

@final
class _CountFromWraps(Formula):
    """Estimate of the count of a yarn from its wraps.

    Y = 2.54 × w / k × 2.54 × w / k; T = 496,054.648 / Y

    factor: factor of the yarn and the hand
    wraps: wraps
    """

    def __call__(self, factor: _Plain, wraps: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Plain,
        wraps: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "wraps"],
        *,
        count_from_wraps: _Measure,
        factor: _Plain = ...,
        wraps: _Measure = ...,
    ) -> list[Quantity]: ...

count_from_wraps: _CountFromWraps

@final
class _CountOf(Formula):
    """Count of a yarn, a slubbing or a sliver, from a length and what it weighs.

    T = m / L × 1000000

    length: length measured off
    mass: its mass
    """

    def __call__(self, length: _Measure, mass: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "mass"],
        *,
        count_of: _Measure,
        length: _Measure = ...,
        mass: _Measure = ...,
    ) -> list[Quantity]: ...

count_of: _CountOf

@final
class _DiameterByFibreDensity(Formula):
    """Diameter of a yarn from its count and the density of its fibre, packed as spun yarns commonly
    are.

    d = 0.0444 × √(T / ρ_f)

    count: yarn count
    density: density of the fibre
    """

    def __call__(self, count: _Measure, density: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "density"],
        *,
        diameter_by_fibre_density: _Measure,
        count: _Measure = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

diameter_by_fibre_density: _DiameterByFibreDensity

@final
class _DiameterRescaled(Formula):
    """Diameter of a yarn from that of a yarn like it of another count.

    d₂ = d₁ × √(T₂ / T₁)

    diameter: known diameter
    known: count of the yarn that it is known of
    count: count of the other yarn
    """

    def __call__(self, diameter: _Measure, known: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        diameter: _Measure,
        known: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameter", "known", "count"],
        *,
        diameter_rescaled: _Measure,
        diameter: _Measure = ...,
        known: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

diameter_rescaled: _DiameterRescaled

@final
class _FibreSpecificVolume(Formula):
    """Volume that a gram of solid fibre fills.

    v_f = 1 / ρ

    density: density of the fibre
    """

    def __call__(self, density: _Measure) -> Quantity: ...
    def working(self, density: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["density"],
        *,
        fibre_specific_volume: _Measure,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

fibre_specific_volume: _FibreSpecificVolume

@final
class _Fold(Formula):
    """Resultant count of ends folded together.

    T_R = (T₁ + T₂) / (1 − c)

    contraction: contraction in folding, on the untwisted length
    counts: counts of the ends, one for each end
    """

    def __call__(self, contraction: _Plain, counts: _Measures) -> Quantity: ...
    def working(
        self,
        contraction: _Plain,
        counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["contraction"],
        *,
        fold: _Measure,
        contraction: _Plain = ...,
        counts: _Measures = ...,
    ) -> list[Quantity]: ...

fold: _Fold

@final
class _FoldAlike(Formula):
    """Resultant count of equal ends folded together.

    T_R = T × n / (1 − c)

    single: count of one end
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(self, single: _Measure, ends: _Plain, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "ends", "contraction"],
        *,
        fold_alike: _Measure,
        single: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

fold_alike: _FoldAlike

@final
class _FoldCost(Formula):
    """Cost of a folded yarn from the prices of its ends.

    T_R = u₁ × T₁ + u₂ × T₂; p_R = (u₁ × T₁ × p₁ + u₂ × T₂ × p₂) / T_R

    counts: counts of the ends, one for each end
    lengths: length of each end in a unit length of the folded yarn
    prices: price of each end
    """

    def __call__(self, counts: _Measures, lengths: _Plains, prices: _Measures) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        lengths: _Plains,
        prices: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_cost: _FoldCost

@final
class _FoldCostShare(Formula):
    """Share of the cost of a folded yarn that its first end has.

    s = u₁ × T₁ × p₁ / (u₁ × T₁ × p₁ + u₂ × T₂ × p₂)

    counts: counts of the ends, the one asked for first
    lengths: length of each end in a unit length of the folded yarn
    prices: price of each end
    """

    def __call__(self, counts: _Measures, lengths: _Plains, prices: _Measures) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        lengths: _Plains,
        prices: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_cost_share: _FoldCostShare

@final
class _FoldFed(Formula):
    """Resultant count of ends that are fed each at a length of its own, as for loops and knops.

    T_R = u₁ × T₁ + u₂ × T₂

    counts: counts of the ends, one for each end
    lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(self, counts: _Measures, lengths: _Plains) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        lengths: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_fed: _FoldFed

@final
class _FoldOnTwisted(Formula):
    """Resultant count of ends folded together, with the contraction on the twisted length.

    T_R = (T₁ + T₂) × (1 + k)

    contraction_on_twisted: contraction in folding, on the twisted length
    counts: counts of the ends, one for each end
    """

    def __call__(self, contraction_on_twisted: _Plain, counts: _Measures) -> Quantity: ...
    def working(
        self,
        contraction_on_twisted: _Plain,
        counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["contraction_on_twisted"],
        *,
        fold_on_twisted: _Measure,
        contraction_on_twisted: _Plain = ...,
        counts: _Measures = ...,
    ) -> list[Quantity]: ...

fold_on_twisted: _FoldOnTwisted

@final
class _FoldingTwistFromBumps(Formula):
    """Folding twist from the bumps that are seen along a folded yarn: each turn shows one for each
    ply.

    t = b / (p × L)

    bumps: bumps counted
    length: length over which they were counted
    plies: plies
    """

    def __call__(self, bumps: _Plain, length: _Measure, plies: _Plain) -> Quantity: ...
    def working(
        self,
        bumps: _Plain,
        length: _Measure,
        plies: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["bumps", "length", "plies"],
        *,
        folding_twist_from_bumps: _Measure,
        bumps: _Plain = ...,
        length: _Measure = ...,
        plies: _Plain = ...,
    ) -> list[Quantity]: ...

folding_twist_from_bumps: _FoldingTwistFromBumps

@final
class _FoldingTwistRatio(Formula):
    """Folding twist over singles twist.

    q = t_f / t_s

    folding: folding twist
    single: twist of the singles before folding
    """

    def __call__(self, folding: _Measure, single: _Measure) -> Quantity: ...
    def working(
        self,
        folding: _Measure,
        single: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["folding", "single"],
        *,
        folding_twist_ratio: _Plain,
        folding: _Measure = ...,
        single: _Measure = ...,
    ) -> list[Quantity]: ...

folding_twist_ratio: _FoldingTwistRatio

@final
class _HankLength(Formula):
    """Length of a hank after scouring.

    L = n × C × (1 − s)

    turns: turns of the reel
    reel: circumference of the reel
    shrinkage: shrinkage in scouring
    """

    def __call__(self, turns: _Plain, reel: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        reel: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "reel", "shrinkage"],
        *,
        hank_length: _Measure,
        turns: _Plain = ...,
        reel: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

hank_length: _HankLength

@final
class _HankMass(Formula):
    """Mass of a hank from the turns of the reel.

    m = n × C × T × 0.000001

    turns: turns of the reel
    reel: circumference of the reel
    count: count
    """

    def __call__(self, turns: _Plain, reel: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        reel: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "reel", "count"],
        *,
        hank_mass: _Measure,
        turns: _Plain = ...,
        reel: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

hank_mass: _HankMass

@final
class _HanksInMass(Formula):
    """Hanks, or spyndles, that a mass of yarn makes, not rounded to whole ones.

    h = 1000000 × m / (T × l)

    mass: mass
    count: count
    hank: length of a hank
    """

    def __call__(self, mass: _Measure, count: _Measure, hank: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count", "hank"],
        *,
        hanks_in_mass: _Plain,
        mass: _Measure = ...,
        count: _Measure = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_in_mass: _HanksInMass

@final
class _HelixAngle(Formula):
    """Slope of the fibres on the surface of a yarn to its axis.

    α = arctan(0.00314159265 × d × t) × 57.2957795

    twist: twist
    diameter: diameter of the yarn
    """

    def __call__(self, twist: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "diameter"],
        *,
        helix_angle: _Measure,
        twist: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

helix_angle: _HelixAngle

@final
class _HelixAngleFromFactor(Formula):
    """Slope of the surface fibres from the twist factor: yarns of one factor and make slope alike.

    α = arctan(2 × K × √(0.0000314159265 × v)) × 57.2957795

    factor: twist factor
    volume: specific volume of the yarn
    """

    def __call__(self, factor: _Measure, volume: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Measure,
        volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "volume"],
        *,
        helix_angle_from_factor: _Measure,
        factor: _Measure = ...,
        volume: _Measure = ...,
    ) -> list[Quantity]: ...

helix_angle_from_factor: _HelixAngleFromFactor

@final
class _HelixContraction(Formula):
    """Contraction of a yarn whose fibres lie in ideal helices, on the untwisted length.

    tan α = 0.00314159265 × d × t; sec α = √(1 + tan α × tan α); c = 1 − 2 / (1 + sec α)

    twist: twist
    diameter: diameter of the yarn
    """

    def __call__(self, twist: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "diameter"],
        *,
        helix_contraction: _Plain,
        twist: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

helix_contraction: _HelixContraction

@final
class _IrregularityAfterProcesses(Formula):
    """Irregularity after processes in a row, each of which adds its own.

    CV_t = √(CV₁ × CV₁ + CV₂ × CV₂)

    variations: irregularity of the feed, then what each process adds, as coefficients of
    variation
    """

    def __call__(self, variations: _Plains) -> Quantity: ...
    def working(
        self,
        variations: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

irregularity_after_processes: _IrregularityAfterProcesses

@final
class _IrregularityFromMeanDeviation(Formula):
    """Coefficient of variation from the mean deviation, the U of the evenness tester.

    CV = U × 1.25331414

    deviation: mean deviation from the mean, as a share of it
    """

    def __call__(self, deviation: _Plain) -> Quantity: ...
    def working(self, deviation: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["deviation"],
        *,
        irregularity_from_mean_deviation: _Plain,
        deviation: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_from_mean_deviation: _IrregularityFromMeanDeviation

@final
class _IrregularityIndex(Formula):
    """How many times more irregular a yarn is than fibres laid by chance would make it.

    I = CV × √n / k

    variation: irregularity of the yarn, as coefficient of variation
    factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

    def __call__(self, variation: _Plain, factor: _Plain, fibres: _Plain) -> Quantity: ...
    def working(
        self,
        variation: _Plain,
        factor: _Plain,
        fibres: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["variation", "factor", "fibres"],
        *,
        irregularity_index: _Plain,
        variation: _Plain = ...,
        factor: _Plain = ...,
        fibres: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_index: _IrregularityIndex

@final
class _IrregularityOfFold(Formula):
    """Irregularity of a fold of ends whose thick places fall by chance.

    CV_R = CV / √n

    variation: irregularity of an end, as coefficient of variation
    ends: number of ends
    """

    def __call__(self, variation: _Plain, ends: _Plain) -> Quantity: ...
    def working(
        self,
        variation: _Plain,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["variation", "ends"],
        *,
        irregularity_of_fold: _Plain,
        variation: _Plain = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_of_fold: _IrregularityOfFold

@final
class _KnotsInPackage(Formula):
    """Knots in a package from joining the bobbins that it was wound from.

    k = greater of (round up(g / b − 0.000001) − 1, 0)

    package: yarn on the package
    bobbin: yarn on a bobbin
    """

    def __call__(self, package: _Measure, bobbin: _Measure) -> Quantity: ...
    def working(
        self,
        package: _Measure,
        bobbin: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["package", "bobbin"],
        *,
        knots_in_package: _Plain,
        package: _Measure = ...,
        bobbin: _Measure = ...,
    ) -> list[Quantity]: ...

knots_in_package: _KnotsInPackage

@final
class _LeaProduct(Formula):
    """Count-strength product of a cotton lea: English cotton count times the pounds that break it.

    N = 590.541247 / T; S = F / 4.44822162; P = N × S

    lea: force that breaks the lea
    count: yarn count
    """

    def __call__(self, lea: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        lea: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["lea", "count"],
        *,
        lea_product: _Plain,
        lea: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

lea_product: _LeaProduct

@final
class _LengthOfEnds(Formula):
    """Length of the ends, lying side by side as on a beam, that a mass of yarn makes.

    L = 1000000 × m / (T × N)

    mass: mass
    count: count, in the same state
    ends: ends
    """

    def __call__(self, mass: _Measure, count: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count", "ends"],
        *,
        length_of_ends: _Measure,
        mass: _Measure = ...,
        count: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

length_of_ends: _LengthOfEnds

@final
class _LengthOfMass(Formula):
    """How long a mass of yarn is.

    L = m / T × 1000000

    mass: mass
    count: count, in the same state
    """

    def __call__(self, mass: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count"],
        *,
        length_of_mass: _Measure,
        mass: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

length_of_mass: _LengthOfMass

@final
class _LengthOnPackage(Formula):
    """Yarn on a package, from its mass with and without yarn.

    Y = 1000000 × (m_p − m_c) / T

    package: package as weighed
    tube: the empty tube or cone
    count: count
    """

    def __call__(self, package: _Measure, tube: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        package: _Measure,
        tube: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["package", "tube", "count"],
        *,
        length_on_package: _Measure,
        package: _Measure = ...,
        tube: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

length_on_package: _LengthOnPackage

@final
class _LengthShare(Formula):
    """Share of the length of all yarns that the first has, from their masses.

    λ = m₁ / T₁ / (m₁ / T₁ + m₂ / T₂)

    counts: counts of the yarns, the one asked for first
    masses: mass of each yarn
    """

    def __call__(self, counts: _Measures, masses: _Measures) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        masses: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

length_share: _LengthShare

@final
class _MassOfComponent(Formula):
    """Mass of the first end in a mass of folded yarn.

    m₁ = m × u₁ × T₁ / (u₁ × T₁ + u₂ × T₂)

    mass: mass of the folded yarn
    counts: counts of the ends, the one asked for first
    lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(self, mass: _Measure, counts: _Measures, lengths: _Plains) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        counts: _Measures,
        lengths: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass"],
        *,
        mass_of_component: _Measure,
        mass: _Measure = ...,
        counts: _Measures = ...,
        lengths: _Plains = ...,
    ) -> list[Quantity]: ...

mass_of_component: _MassOfComponent

@final
class _MassOfEnds(Formula):
    """What ends of a length weigh, with an allowance for waste.

    m = T × L × N × (1 + w) × 0.000001

    count: count
    length: length of each end
    ends: ends
    waste: waste, on the yarn used
    """

    def __call__(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        waste: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        waste: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "length", "ends", "waste"],
        *,
        mass_of_ends: _Measure,
        count: _Measure = ...,
        length: _Measure = ...,
        ends: _Plain = ...,
        waste: _Plain = ...,
    ) -> list[Quantity]: ...

mass_of_ends: _MassOfEnds

@final
class _MassOfLength(Formula):
    """What a length of yarn weighs.

    m = T × L × 0.000001

    count: count
    length: length
    """

    def __call__(self, count: _Measure, length: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "length"],
        *,
        mass_of_length: _Measure,
        count: _Measure = ...,
        length: _Measure = ...,
    ) -> list[Quantity]: ...

mass_of_length: _MassOfLength

@final
class _MassShare(Formula):
    """Share of the mass of a fold that its first end has.

    s = u₁ × T₁ / (u₁ × T₁ + u₂ × T₂)

    counts: counts of the ends, the one asked for first
    lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(self, counts: _Measures, lengths: _Plains) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        lengths: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

mass_share: _MassShare

@final
class _MeanByLength(Formula):
    """Mean count of yarns of equal length, such as threads that lie side by side.

    T_m = (T₁ + T₂) / 2

    counts: counts
    """

    def __call__(self, counts: _Measures) -> Quantity: ...
    def working(self, counts: _Measures, *, at: int | tuple[int, ...] | None = None) -> Working: ...

mean_by_length: _MeanByLength

@final
class _MeanByMass(Formula):
    """Mean count of yarns of equal mass, such as lots of one weight.

    T_m = 2 / (1 / T₁ + 1 / T₂)

    counts: counts
    """

    def __call__(self, counts: _Measures) -> Quantity: ...
    def working(self, counts: _Measures, *, at: int | tuple[int, ...] | None = None) -> Working: ...

mean_by_mass: _MeanByMass

@final
class _MeanByShare(Formula):
    """Mean of figures by the shares of their parts in a whole.

    x_m = s₁ × x₁ + s₂ × x₂

    shares: share of each part
    values: figure of each part
    """

    def __call__(self, shares: _Plains, values: _Plains) -> Quantity: ...
    def working(
        self,
        shares: _Plains,
        values: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

mean_by_share: _MeanByShare

@final
class _MeanOfLots(Formula):
    """Mean count of lots of any mass: all that they weigh over all their length.

    m = m₁ + m₂; T_m = m / (m₁ / T₁ + m₂ / T₂)

    counts: counts
    masses: mass of each lot
    """

    def __call__(self, counts: _Measures, masses: _Measures) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        masses: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

mean_of_lots: _MeanOfLots

@final
class _MetricTicket(Formula):
    """Metric ticket of a sewing thread: three times its metric count.

    k = 3 × 1000 / (T × n)

    single: count of an end
    ends: ends in the thread
    """

    def __call__(self, single: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "ends"],
        *,
        metric_ticket: _Plain,
        single: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

metric_ticket: _MetricTicket

@final
class _MissingComponent(Formula):
    """The end that is missing from a fold of a wanted resultant, without contraction.

    T_x = T_R − T₁ − T₂

    resultant: resultant count wanted
    known: counts of the known ends
    """

    def __call__(self, resultant: _Measure, known: _Measures) -> Quantity: ...
    def working(
        self,
        resultant: _Measure,
        known: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant"],
        *,
        missing_component: _Measure,
        resultant: _Measure = ...,
        known: _Measures = ...,
    ) -> list[Quantity]: ...

missing_component: _MissingComponent

@final
class _MissingComponentContracted(Formula):
    """The end that is missing from a fold of a wanted resultant that contracts in folding.

    T_x = T_R × (1 − c) − T₁ − T₂

    resultant: resultant count wanted
    contraction: contraction in folding, on the untwisted length
    known: counts of the known ends
    """

    def __call__(self, resultant: _Measure, contraction: _Plain, known: _Measures) -> Quantity: ...
    def working(
        self,
        resultant: _Measure,
        contraction: _Plain,
        known: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant", "contraction"],
        *,
        missing_component_contracted: _Measure,
        resultant: _Measure = ...,
        contraction: _Plain = ...,
        known: _Measures = ...,
    ) -> list[Quantity]: ...

missing_component_contracted: _MissingComponentContracted

@final
class _PackagesForMass(Formula):
    """Packages that a mass of yarn fills, the last one perhaps not full.

    p = round up(m / g − 0.000001)

    mass: yarn to wind
    net: yarn on a full package
    """

    def __call__(self, mass: _Measure, net: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        net: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "net"],
        *,
        packages_for_mass: _Plain,
        mass: _Measure = ...,
        net: _Measure = ...,
    ) -> list[Quantity]: ...

packages_for_mass: _PackagesForMass

@final
class _PackingFraction(Formula):
    """Share of a yarn's section that is fibre, from its measured diameter.

    v = 785.398163 × d × d / T; φ = 1 / (v × ρ)

    diameter: diameter of the yarn
    count: yarn count
    density: density of the fibre
    """

    def __call__(self, diameter: _Measure, count: _Measure, density: _Measure) -> Quantity: ...
    def working(
        self,
        diameter: _Measure,
        count: _Measure,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameter", "count", "density"],
        *,
        packing_fraction: _Plain,
        diameter: _Measure = ...,
        count: _Measure = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

packing_fraction: _PackingFraction

@final
class _PeirceDiameter(Formula):
    """Diameter of a cotton yarn by Peirce's round figure: an inch over 28 times the root of the
    count.

    N = 590.541247 / T; d = 25.4 / (28 × √N)

    count: yarn count
    """

    def __call__(self, count: _Measure) -> Quantity: ...
    def working(self, count: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["count"],
        *,
        peirce_diameter: _Measure,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

peirce_diameter: _PeirceDiameter

@final
class _ReelTurns(Formula):
    """Whole turns of the reel for a hank that still has its length after scouring.

    n = round up(L / (1 − s) / C − 0.000001)

    length: length of the finished hank
    reel: circumference of the reel
    shrinkage: shrinkage in scouring
    """

    def __call__(self, length: _Measure, reel: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        reel: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "reel", "shrinkage"],
        *,
        reel_turns: _Plain,
        length: _Measure = ...,
        reel: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

reel_turns: _ReelTurns

@final
class _ReelTurnsForMass(Formula):
    """Whole turns of the reel for a hank of a wanted mass.

    n = round up(1000000 × m / (T × C) − 0.000001)

    mass: mass of the hank
    reel: circumference of the reel
    count: count at the reel
    """

    def __call__(self, mass: _Measure, reel: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        reel: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "reel", "count"],
        *,
        reel_turns_for_mass: _Plain,
        mass: _Measure = ...,
        reel: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

reel_turns_for_mass: _ReelTurnsForMass

@final
class _ReeledLength(Formula):
    """Yarn on a reel: turns in a cut or lea, and the number of these.

    Y = n × C × k

    turns: turns in a cut or lea
    reel: circumference of the reel
    cuts: number of cuts or leas
    """

    def __call__(self, turns: _Plain, reel: _Measure, cuts: _Plain) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        reel: _Measure,
        cuts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "reel", "cuts"],
        *,
        reeled_length: _Measure,
        turns: _Plain = ...,
        reel: _Measure = ...,
        cuts: _Plain = ...,
    ) -> list[Quantity]: ...

reeled_length: _ReeledLength

@final
class _SingleForFold(Formula):
    """The single to spin for a wanted resultant of equal ends.

    T = T_R × (1 − c) / n

    resultant: resultant count wanted
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(self, resultant: _Measure, ends: _Plain, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        resultant: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant", "ends", "contraction"],
        *,
        single_for_fold: _Measure,
        resultant: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

single_for_fold: _SingleForFold

@final
class _SingleOnTwisted(Formula):
    """The single to spin for a wanted resultant of equal ends, with the contraction on the twisted
    length.

    T = T_R / ((1 + k) × n)

    resultant: resultant count wanted
    ends: number of ends
    contraction_on_twisted: contraction in folding, on the twisted length
    """

    def __call__(
        self,
        resultant: _Measure,
        ends: _Plain,
        contraction_on_twisted: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        resultant: _Measure,
        ends: _Plain,
        contraction_on_twisted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant", "ends", "contraction_on_twisted"],
        *,
        single_on_twisted: _Measure,
        resultant: _Measure = ...,
        ends: _Plain = ...,
        contraction_on_twisted: _Plain = ...,
    ) -> list[Quantity]: ...

single_on_twisted: _SingleOnTwisted

@final
class _SinglesLength(Formula):
    """Length of singles, all ends together, for a length of folded yarn.

    L_s = L × n / (1 − c)

    length: length of the folded yarn
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(self, length: _Measure, ends: _Plain, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "ends", "contraction"],
        *,
        singles_length: _Measure,
        length: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

singles_length: _SinglesLength

@final
class _SpyndlesOfMillHanks(Formula):
    """Spyndles that hanks of a number of cuts make: a spyndle has 48 cuts.

    s = h × k / 48

    hanks: hanks
    cuts: cuts in a hank
    """

    def __call__(self, hanks: _Plain, cuts: _Plain) -> Quantity: ...
    def working(
        self,
        hanks: _Plain,
        cuts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hanks", "cuts"],
        *,
        spyndles_of_mill_hanks: _Plain,
        hanks: _Plain = ...,
        cuts: _Plain = ...,
    ) -> list[Quantity]: ...

spyndles_of_mill_hanks: _SpyndlesOfMillHanks

@final
class _StressOfTenacity(Formula):
    """Stress that a tenacity means in a fibre or yarn of a density.

    σ = 10 × f × ρ

    tenacity: tenacity
    density: density
    """

    def __call__(self, tenacity: _Measure, density: _Measure) -> Quantity: ...
    def working(
        self,
        tenacity: _Measure,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["tenacity", "density"],
        *,
        stress_of_tenacity: _Measure,
        tenacity: _Measure = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

stress_of_tenacity: _StressOfTenacity

@final
class _Tenacity(Formula):
    """Strength of a yarn for its count.

    f = 100 × F / T

    force: breaking force
    count: yarn count
    """

    def __call__(self, force: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        force: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["force", "count"],
        *,
        tenacity: _Measure,
        force: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

tenacity: _Tenacity

@final
class _TravellerSpeed(Formula):
    """Speed of the traveller on the ring.

    n_t = n − v / (3.14159265 × d)

    spindle: spindle speed
    delivery: delivery
    diameter: diameter at which the yarn is wound
    """

    def __call__(self, spindle: _Measure, delivery: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        spindle: _Measure,
        delivery: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle", "delivery", "diameter"],
        *,
        traveller_speed: _Measure,
        spindle: _Measure = ...,
        delivery: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

traveller_speed: _TravellerSpeed

@final
class _TwistAfterShrinkage(Formula):
    """Turns per length after a yarn has shrunk: the turns stay, the length goes.

    t₂ = t / (1 − s)

    twist: twist before
    shrinkage: shrinkage in length
    """

    def __call__(self, twist: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "shrinkage"],
        *,
        twist_after_shrinkage: _Measure,
        twist: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

twist_after_shrinkage: _TwistAfterShrinkage

@final
class _TwistByLincoln(Formula):
    """Twist of ring-spun cotton by a rule of 1885: the multiplier's twist, less 0.2 turns in an
    inch for each count below 30, and more by as much for each above.

    N = 590.541247 / T; t = 100 × K / √T − 7.87401575 × (30 − N)

    factor: twist multiplier
    count: yarn count
    """

    def __call__(self, factor: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "count"],
        *,
        twist_by_lincoln: _Measure,
        factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_by_lincoln: _TwistByLincoln

@final
class _TwistByRetwisting(Formula):
    """Twist by untwisting a single and twisting it up again to the same length.

    t = n / (2 × L)

    turns: turns out and in again, all together
    length: length between the clamps
    """

    def __call__(self, turns: _Plain, length: _Measure) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "length"],
        *,
        twist_by_retwisting: _Measure,
        turns: _Plain = ...,
        length: _Measure = ...,
    ) -> list[Quantity]: ...

twist_by_retwisting: _TwistByRetwisting

@final
class _TwistCounted(Formula):
    """Twist counted by untwisting a length until its fibres, or its singles, lie side by side.

    t = n / L

    turns: turns to untwist it
    length: length between the clamps
    """

    def __call__(self, turns: _Plain, length: _Measure) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "length"],
        *,
        twist_counted: _Measure,
        turns: _Plain = ...,
        length: _Measure = ...,
    ) -> list[Quantity]: ...

twist_counted: _TwistCounted

@final
class _TwistFactor(Formula):
    """How hard a yarn is twisted for its count.

    K = t / 100 × √T

    twist: twist
    count: yarn count
    """

    def __call__(self, twist: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "count"],
        *,
        twist_factor: _Measure,
        twist: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_factor: _TwistFactor

@final
class _TwistForFactor(Formula):
    """The twist that a yarn needs for a twist factor.

    t = 100 × K / √T

    factor: twist factor
    count: yarn count
    """

    def __call__(self, factor: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "count"],
        *,
        twist_for_factor: _Measure,
        factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_factor: _TwistForFactor

@final
class _TwistForHelixAngle(Formula):
    """Twist that gives the surface fibres a slope.

    t = 1000 × tan(α × 0.0174532925) / (3.14159265 × d)

    angle: slope wanted
    diameter: diameter of the yarn
    """

    def __call__(self, angle: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        angle: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["angle", "diameter"],
        *,
        twist_for_helix_angle: _Measure,
        angle: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_helix_angle: _TwistForHelixAngle

@final
class _TwistForNewCount(Formula):
    """The twist that keeps a yarn as hard when its count is changed.

    t₂ = t₁ × √(T₁ / T₂)

    twist: twist now
    count: count now
    new_count: count wanted
    """

    def __call__(self, twist: _Measure, count: _Measure, new_count: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        count: _Measure,
        new_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "count", "new_count"],
        *,
        twist_for_new_count: _Measure,
        twist: _Measure = ...,
        count: _Measure = ...,
        new_count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_new_count: _TwistForNewCount

@final
class _TwistForNewFactor(Formula):
    """The twist when a yarn of one count is to be twisted harder or softer.

    t₂ = t₁ × K₂ / K₁

    twist: twist now
    factor: twist factor now
    new_factor: twist factor wanted
    """

    def __call__(self, twist: _Measure, factor: _Measure, new_factor: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        factor: _Measure,
        new_factor: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "factor", "new_factor"],
        *,
        twist_for_new_factor: _Measure,
        twist: _Measure = ...,
        factor: _Measure = ...,
        new_factor: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_new_factor: _TwistForNewFactor

@final
class _TwistFromRoller(Formula):
    """Twist from the turns of the spindle for each turn of the delivery roller.

    t = i / C

    turns: spindle turns for a turn of the delivery roller
    roller: circumference of the delivery roller
    """

    def __call__(self, turns: _Plain, roller: _Measure) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        roller: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "roller"],
        *,
        twist_from_roller: _Measure,
        turns: _Plain = ...,
        roller: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_roller: _TwistFromRoller

@final
class _TwistFromSpeed(Formula):
    """Twist put in by a turning spindle at a delivery.

    t = n / v

    spindle: spindle speed
    delivery: delivery
    """

    def __call__(self, spindle: _Measure, delivery: _Measure) -> Quantity: ...
    def working(
        self,
        spindle: _Measure,
        delivery: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle", "delivery"],
        *,
        twist_from_speed: _Measure,
        spindle: _Measure = ...,
        delivery: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_speed: _TwistFromSpeed

@final
class _TwistFromWheel(Formula):
    """Twist that a change wheel gives, where twist falls as teeth rise.

    t = C / z

    constant: twist constant: twist times teeth
    teeth: teeth of the wheel
    """

    def __call__(self, constant: _Measure, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        constant: _Measure,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "teeth"],
        *,
        twist_from_wheel: _Measure,
        constant: _Measure = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

twist_from_wheel: _TwistFromWheel

@final
class _TwistGainedOverEnd(Formula):
    """Twist after unwinding over the end, where the coil turns the way of the twist.

    t₂ = t₁ + 1 / (3.14159265 × d)

    twist: twist on the package
    diameter: diameter at which the yarn comes off
    """

    def __call__(self, twist: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "diameter"],
        *,
        twist_gained_over_end: _Measure,
        twist: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_gained_over_end: _TwistGainedOverEnd

@final
class _TwistLeftInSingle(Formula):
    """Twist left in the singles after folding the other way, for small helix angles.

    t_l = t_s − t_f

    single: twist of the singles before folding
    folding: folding twist, of the other direction
    """

    def __call__(self, single: _Measure, folding: _Measure) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        folding: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "folding"],
        *,
        twist_left_in_single: _Measure,
        single: _Measure = ...,
        folding: _Measure = ...,
    ) -> list[Quantity]: ...

twist_left_in_single: _TwistLeftInSingle

@final
class _TwistLeftRatio(Formula):
    """Share of the singles' twist left after folding the other way, with the slope of the fold.

    tan β = 0.00314159265 × D × t_f; q = 1 − t_f / t_s / (1 + tan β × tan β)

    single: twist of the singles before folding
    folding: folding twist, of the other direction
    diameter: diameter of the helix of the singles' axes, about that of one single
    """

    def __call__(self, single: _Measure, folding: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        folding: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "folding", "diameter"],
        *,
        twist_left_ratio: _Plain,
        single: _Measure = ...,
        folding: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_left_ratio: _TwistLeftRatio

@final
class _TwistLostOverEnd(Formula):
    """Twist after unwinding over the end, where the coil turns against the twist.

    t₂ = t₁ − 1 / (3.14159265 × d)

    twist: twist on the package
    diameter: diameter at which the yarn comes off
    """

    def __call__(self, twist: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "diameter"],
        *,
        twist_lost_over_end: _Measure,
        twist: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_lost_over_end: _TwistLostOverEnd

@final
class _TwistOfACoil(Formula):
    """Twist that unwinding over the end puts in or takes out: a turn for each coil.

    t_e = 1 / (3.14159265 × d)

    diameter: diameter at which the yarn comes off
    """

    def __call__(self, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameter"],
        *,
        twist_of_a_coil: _Measure,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_of_a_coil: _TwistOfACoil

@final
class _TwistOnRingBobbin(Formula):
    """Twist of the yarn as it lies on a ring bobbin: turns of the traveller for a length delivered.

    n_t = n − v / (3.14159265 × d); t = n_t / v

    spindle: spindle speed
    delivery: delivery
    diameter: diameter at which the yarn is wound
    """

    def __call__(self, spindle: _Measure, delivery: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        spindle: _Measure,
        delivery: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle", "delivery", "diameter"],
        *,
        twist_on_ring_bobbin: _Measure,
        spindle: _Measure = ...,
        delivery: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_on_ring_bobbin: _TwistOnRingBobbin

@final
class _TwoFoldContraction(Formula):
    """Contraction of a two-fold staple yarn: the singles change their own, and lie aslant.

    tan β = 0.00314159265 × D × t_f; cos β = 1 / √(1 + tan β × tan β); k₁ = 1 − (1 − k′) / (1 −
    k) × cos β

    before: contraction of the singles before folding
    after: contraction of the singles after folding
    folding: folding twist
    diameter: diameter of the helix of the singles' axes, about that of one single
    """

    def __call__(
        self,
        before: _Plain,
        after: _Plain,
        folding: _Measure,
        diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        before: _Plain,
        after: _Plain,
        folding: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after", "folding", "diameter"],
        *,
        two_fold_contraction: _Plain,
        before: _Plain = ...,
        after: _Plain = ...,
        folding: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

two_fold_contraction: _TwoFoldContraction

@final
class _TwoForOneTwist(Formula):
    """Twist put in by a two-for-one spindle: two turns a revolution.

    t = 2 × n / v

    spindle: spindle speed
    delivery: delivery
    """

    def __call__(self, spindle: _Measure, delivery: _Measure) -> Quantity: ...
    def working(
        self,
        spindle: _Measure,
        delivery: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle", "delivery"],
        *,
        two_for_one_twist: _Measure,
        spindle: _Measure = ...,
        delivery: _Measure = ...,
    ) -> list[Quantity]: ...

two_for_one_twist: _TwoForOneTwist

@final
class _VariationOfMean(Formula):
    """Variation of the mean of readings, with that from end to end and that along the ends told
    apart.

    CV_m = √(CV_b × CV_b / e + CV_a × CV_a / p)

    between: variation from end to end
    along: variation from piece to piece along an end
    ends: different ends
    pieces: pieces, all together
    """

    def __call__(
        self,
        between: _Plain,
        along: _Plain,
        ends: _Plain,
        pieces: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        between: _Plain,
        along: _Plain,
        ends: _Plain,
        pieces: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["between", "along", "ends", "pieces"],
        *,
        variation_of_mean: _Plain,
        between: _Plain = ...,
        along: _Plain = ...,
        ends: _Plain = ...,
        pieces: _Plain = ...,
    ) -> list[Quantity]: ...

variation_of_mean: _VariationOfMean

@final
class _WheelForTwist(Formula):
    """The change wheel that would give a wanted twist, where twist falls as teeth rise.

    z = C / t

    constant: twist constant: twist times teeth
    twist: twist wanted
    """

    def __call__(self, constant: _Measure, twist: _Measure) -> Quantity: ...
    def working(
        self,
        constant: _Measure,
        twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "twist"],
        *,
        wheel_for_twist: _Plain,
        constant: _Measure = ...,
        twist: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_twist: _WheelForTwist

@final
class _WholeHanks(Formula):
    """Whole hanks that a mass of yarn makes.

    h = round down(1000000 × m / (T × l) + 0.000001)

    mass: mass
    count: count
    hank: length of a hank
    """

    def __call__(self, mass: _Measure, count: _Measure, hank: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count", "hank"],
        *,
        whole_hanks: _Plain,
        mass: _Measure = ...,
        count: _Measure = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

whole_hanks: _WholeHanks

@final
class _WindingLag(Formula):
    """Turns in a minute by which the traveller lags the spindle, or a bobbin differs from its
    flyer, to wind on what is delivered.

    n_l = v / (3.14159265 × d)

    delivery: delivery
    diameter: diameter at which the yarn is wound
    """

    def __call__(self, delivery: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        delivery: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["delivery", "diameter"],
        *,
        winding_lag: _Measure,
        delivery: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

winding_lag: _WindingLag

@final
class _WindingOutput(Formula):
    """What drums wind in an hour.

    P = 60 × v × k × η × T × 0.000001

    speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    count: count
    """

    def __call__(
        self,
        speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "drums", "efficiency", "count"],
        *,
        winding_output: _Measure,
        speed: _Measure = ...,
        drums: _Plain = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

winding_output: _WindingOutput

@final
class _WindingTime(Formula):
    """Time to wind a length, all drums at work.

    τ = Y / (60 × v × k × η)

    length: length to wind
    speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    """

    def __call__(
        self,
        length: _Measure,
        speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "speed", "drums", "efficiency"],
        *,
        winding_time: _Measure,
        length: _Measure = ...,
        speed: _Measure = ...,
        drums: _Plain = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

winding_time: _WindingTime

@final
class _WrapsEstimate(Formula):
    """Estimate of the wraps of a yarn from its count.

    Y = 496,054.648 / T; w = k × √Y / 2.54

    factor: factor of the yarn and the hand
    count: yarn count
    """

    def __call__(self, factor: _Plain, count: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "count"],
        *,
        wraps_estimate: _Measure,
        factor: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

wraps_estimate: _WrapsEstimate

@final
class _YarnDiameter(Formula):
    """Diameter of a round yarn from its count and specific volume.

    d = √(4 × v × T / 3141.59265)

    volume: specific volume of the yarn
    count: yarn count
    """

    def __call__(self, volume: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        volume: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["volume", "count"],
        *,
        yarn_diameter: _Measure,
        volume: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_diameter: _YarnDiameter

@final
class _YarnSpecificVolume(Formula):
    """Volume that a gram of yarn fills, air and all.

    v = 1 / (φ × ρ)

    packing: share of the section that is fibre
    density: density of the fibre
    """

    def __call__(self, packing: _Plain, density: _Measure) -> Quantity: ...
    def working(
        self,
        packing: _Plain,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["packing", "density"],
        *,
        yarn_specific_volume: _Measure,
        packing: _Plain = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_specific_volume: _YarnSpecificVolume
