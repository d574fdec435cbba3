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

    cv_before: irregularity before, as coefficient of variation
    cv_after: irregularity after, as coefficient of variation
    """

    def __call__(self, cv_before: _Plain, cv_after: _Plain) -> Quantity: ...
    def working(
        self,
        cv_before: _Plain,
        cv_after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cv_before", "cv_after"],
        *,
        added_irregularity: _Plain,
        cv_before: _Plain = ...,
        cv_after: _Plain = ...,
    ) -> list[Quantity]: ...

added_irregularity: _AddedIrregularity

@final
class _BallLength(Formula):
    """Length of yarn in a ball that weighs what its label says at the regain of the label.

    m_R = m_b × (1 + R) / (1 + A); L = m_R / T × 1000000

    ball_mass: mass on the label
    count: count, as measured
    regain: regain at which the count was measured
    label_regain: regain at which the label's mass holds
    """

    def __call__(
        self,
        ball_mass: _Measure,
        count: _Measure,
        regain: _Plain,
        label_regain: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ball_mass: _Measure,
        count: _Measure,
        regain: _Plain,
        label_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ball_mass", "count", "regain", "label_regain"],
        *,
        ball_length: _Measure,
        ball_mass: _Measure = ...,
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
    cv: variation of what is read
    sd_multiple: standard deviations to each side, z or t: 1.96 takes in 95 % where the variation
    is known
    """

    def __call__(self, mass: _Measure, cv: _Plain, sd_multiple: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        cv: _Plain,
        sd_multiple: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "cv", "sd_multiple"],
        *,
        band_half_width: _Measure,
        mass: _Measure = ...,
        cv: _Plain = ...,
        sd_multiple: _Plain = ...,
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

    breaking_force: breaking force
    count: yarn count
    """

    def __call__(self, breaking_force: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        breaking_force: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["breaking_force", "count"],
        *,
        breaking_length: _Measure,
        breaking_force: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

breaking_length: _BreakingLength

@final
class _BundleLength(Formula):
    """Yarn in a bundle: its hanks, the leas or cuts of a hank, the length of these.

    Y = h × k × l

    hanks: hanks in the bundle
    cuts_per_hank: leas or cuts in a hank
    lea_length: length of a lea or cut
    """

    def __call__(self, hanks: _Plain, cuts_per_hank: _Plain, lea_length: _Measure) -> Quantity: ...
    def working(
        self,
        hanks: _Plain,
        cuts_per_hank: _Plain,
        lea_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hanks", "cuts_per_hank", "lea_length"],
        *,
        bundle_length: _Measure,
        hanks: _Plain = ...,
        cuts_per_hank: _Plain = ...,
        lea_length: _Measure = ...,
    ) -> list[Quantity]: ...

bundle_length: _BundleLength

@final
class _ChanceForEach(Formula):
    """The chance with which each single reading must fall within its limits, so that all do with a
    wanted chance.

    P₁ = exp(ln(P) / n)

    chance_of_all: chance that all readings are within
    readings: readings
    """

    def __call__(self, chance_of_all: _Plain, readings: _Plain) -> Quantity: ...
    def working(
        self,
        chance_of_all: _Plain,
        readings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["chance_of_all", "readings"],
        *,
        chance_for_each: _Plain,
        chance_of_all: _Plain = ...,
        readings: _Plain = ...,
    ) -> list[Quantity]: ...

chance_for_each: _ChanceForEach

@final
class _CheckWeight(Formula):
    """What the balance should read for a number of ends of a length.

    m_c = T × L_c × N × 0.000001

    count: count in the state at the machine
    check_length: length of each end
    ends: ends weighed together
    """

    def __call__(self, count: _Measure, check_length: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        check_length: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "check_length", "ends"],
        *,
        check_weight: _Measure,
        count: _Measure = ...,
        check_length: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

check_weight: _CheckWeight

@final
class _CheckWeightInTodaysAir(Formula):
    """What the balance should read today for ends of a length, where the count is stated at another
    regain or with another oil.

    m₁ = T × L_c × N × 0.000001; m_c = m₁ × (1 + R + o) / (1 + R_s + o_s)

    count: count as stated
    check_length: length of each end
    ends: ends weighed together
    stated_regain: regain at which the count is stated
    regain: regain today
    stated_oil: oil with which the count is stated
    oil: oil today
    """

    def __call__(
        self,
        count: _Measure,
        check_length: _Measure,
        ends: _Plain,
        stated_regain: _Plain,
        regain: _Plain,
        stated_oil: _Plain,
        oil: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        check_length: _Measure,
        ends: _Plain,
        stated_regain: _Plain,
        regain: _Plain,
        stated_oil: _Plain,
        oil: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "count", "check_length", "ends", "stated_regain", "regain", "stated_oil", "oil"
        ],
        *,
        check_weight_in_todays_air: _Measure,
        count: _Measure = ...,
        check_length: _Measure = ...,
        ends: _Plain = ...,
        stated_regain: _Plain = ...,
        regain: _Plain = ...,
        stated_oil: _Plain = ...,
        oil: _Plain = ...,
    ) -> list[Quantity]: ...

check_weight_in_todays_air: _CheckWeightInTodaysAir

@final
class _ContractionFromCounts(Formula):
    """Contraction in folding, from the nominal and the measured count.

    k = 1 − T₀ / T_R

    nominal_count: sum of the counts of the ends
    resultant_count: count of the folded yarn, as measured
    """

    def __call__(self, nominal_count: _Measure, resultant_count: _Measure) -> Quantity: ...
    def working(
        self,
        nominal_count: _Measure,
        resultant_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["nominal_count", "resultant_count"],
        *,
        contraction_from_counts: _Plain,
        nominal_count: _Measure = ...,
        resultant_count: _Measure = ...,
    ) -> list[Quantity]: ...

contraction_from_counts: _ContractionFromCounts

@final
class _ContractionOfCottonSingle(Formula):
    """Contraction of a cotton single in spinning, by an empirical rule, on the untwisted length.

    TM = 2.54 × K / 24.3010545; k = (2.67 × TM − 4.93) / 100

    twist_factor: twist factor
    """

    def __call__(self, twist_factor: _Measure) -> Quantity: ...
    def working(
        self,
        twist_factor: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_factor"],
        *,
        contraction_of_cotton_single: _Plain,
        twist_factor: _Measure = ...,
    ) -> list[Quantity]: ...

contraction_of_cotton_single: _ContractionOfCottonSingle

@final
class _ContractionOnTwisted(Formula):
    """Contraction on the twisted length, from that on the untwisted.

    k_t = k / (1 − k)

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

    k = k_t / (1 + k_t)

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

    cord_number: the number, as a cotton count
    cords: cords
    """

    def __call__(self, cord_number: _Measure, cords: _Plain) -> Quantity: ...
    def working(
        self,
        cord_number: _Measure,
        cords: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cord_number", "cords"],
        *,
        cord_single: _Measure,
        cord_number: _Measure = ...,
        cords: _Plain = ...,
    ) -> list[Quantity]: ...

cord_single: _CordSingle

@final
class _CottonTicket(Formula):
    """Cotton ticket of a sewing thread: three times its English cotton count.

    k = 3 × 590.541247 / (T_s × N)

    single_count: count of an end
    ends: ends in the thread
    """

    def __call__(self, single_count: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        single_count: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_count", "ends"],
        *,
        cotton_ticket: _Plain,
        single_count: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

cotton_ticket: _CottonTicket

@final
class _CountAfterScouring(Formula):
    """Count of a yarn after its hanks are scoured: oil out, a little fibre out, shorter.

    T₂ = T₁ × q × (1 − w) / (1 − s)

    count_before: count before
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

    def __call__(
        self,
        count_before: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count_before: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count_before", "state_change", "loss", "shrinkage"],
        *,
        count_after_scouring: _Measure,
        count_before: _Measure = ...,
        state_change: _Plain = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_after_scouring: _CountAfterScouring

@final
class _CountBeforeScouring(Formula):
    """The count to make before scouring for a count wanted after it.

    T₁ = T₂ × (1 − s) / ((1 − w) × q)

    count_after: count wanted after
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

    def __call__(
        self,
        count_after: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count_after: _Measure,
        state_change: _Plain,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count_after", "state_change", "loss", "shrinkage"],
        *,
        count_before_scouring: _Measure,
        count_after: _Measure = ...,
        state_change: _Plain = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_before_scouring: _CountBeforeScouring

@final
class _CountForShare(Formula):
    """The count that the first end of a fold must have for its share of the mass.

    T = T_R × p₁ / (p₁ + p₂)

    resultant_count: resultant count wanted
    shares: shares of all ends, the one asked for first
    """

    def __call__(self, resultant_count: _Measure, shares: _Plains) -> Quantity: ...
    def working(
        self,
        resultant_count: _Measure,
        shares: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant_count"],
        *,
        count_for_share: _Measure,
        resultant_count: _Measure = ...,
        shares: _Plains = ...,
    ) -> list[Quantity]: ...

count_for_share: _CountForShare

@final
class _CountFromWraps(Formula):
    """Estimate of the count of a yarn from its wraps.

    Y = 2.54 × w / k × 2.54 × w / k; T = 496,054.648 / Y

    wraps_factor: factor of the yarn and the hand
    wraps: wraps
    """

    def __call__(self, wraps_factor: _Plain, wraps: _Measure) -> Quantity: ...
    def working(
        self,
        wraps_factor: _Plain,
        wraps: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps_factor", "wraps"],
        *,
        count_from_wraps: _Measure,
        wraps_factor: _Plain = ...,
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

    d = 0.0444 × √(T / ρ)

    count: yarn count
    fibre_density: density of the fibre
    """

    def __call__(self, count: _Measure, fibre_density: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        fibre_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "fibre_density"],
        *,
        diameter_by_fibre_density: _Measure,
        count: _Measure = ...,
        fibre_density: _Measure = ...,
    ) -> list[Quantity]: ...

diameter_by_fibre_density: _DiameterByFibreDensity

@final
class _DiameterRescaled(Formula):
    """Diameter of a yarn from that of a yarn like it of another count.

    d₂ = d × √(T₂ / T)

    yarn_diameter: known diameter
    count: count of the yarn that it is known of
    new_count: count of the other yarn
    """

    def __call__(
        self,
        yarn_diameter: _Measure,
        count: _Measure,
        new_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        yarn_diameter: _Measure,
        count: _Measure,
        new_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_diameter", "count", "new_count"],
        *,
        diameter_rescaled: _Measure,
        yarn_diameter: _Measure = ...,
        count: _Measure = ...,
        new_count: _Measure = ...,
    ) -> list[Quantity]: ...

diameter_rescaled: _DiameterRescaled

@final
class _FibreSpecificVolume(Formula):
    """Volume that a gram of solid fibre fills.

    v_f = 1 / ρ

    fibre_density: density of the fibre
    """

    def __call__(self, fibre_density: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_density"],
        *,
        fibre_specific_volume: _Measure,
        fibre_density: _Measure = ...,
    ) -> list[Quantity]: ...

fibre_specific_volume: _FibreSpecificVolume

@final
class _Fold(Formula):
    """Resultant count of ends folded together.

    T_R = (T₁ + T₂) / (1 − k)

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

    T_R = T_s × N / (1 − k)

    single_count: count of one end
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(self, single_count: _Measure, ends: _Plain, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        single_count: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_count", "ends", "contraction"],
        *,
        fold_alike: _Measure,
        single_count: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

fold_alike: _FoldAlike

@final
class _FoldCost(Formula):
    """Cost of a folded yarn from the prices of its ends.

    T_R = u₁ × T₁ + u₂ × T₂; p_R = (u₁ × T₁ × p₁ + u₂ × T₂ × p₂) / T_R

    counts: counts of the ends, one for each end
    relative_lengths: length of each end in a unit length of the folded yarn
    prices_per_mass: price of each end
    """

    def __call__(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
        prices_per_mass: _Measures,
    ) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
        prices_per_mass: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_cost: _FoldCost

@final
class _FoldCostShare(Formula):
    """Share of the cost of a folded yarn that its first end has.

    s = u₁ × T₁ × p₁ / (u₁ × T₁ × p₁ + u₂ × T₂ × p₂)

    counts: counts of the ends, the one asked for first
    relative_lengths: length of each end in a unit length of the folded yarn
    prices_per_mass: price of each end
    """

    def __call__(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
        prices_per_mass: _Measures,
    ) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
        prices_per_mass: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_cost_share: _FoldCostShare

@final
class _FoldFed(Formula):
    """Resultant count of ends that are fed each at a length of its own, as for loops and knops.

    T_R = u₁ × T₁ + u₂ × T₂

    counts: counts of the ends, one for each end
    relative_lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(self, counts: _Measures, relative_lengths: _Plains) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fold_fed: _FoldFed

@final
class _FoldOnTwisted(Formula):
    """Resultant count of ends folded together, with the contraction on the twisted length.

    T_R = (T₁ + T₂) × (1 + k_t)

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

    t_f = b / (N × L)

    bumps: bumps counted
    gauge_length: length over which they were counted
    ends: plies
    """

    def __call__(self, bumps: _Plain, gauge_length: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        bumps: _Plain,
        gauge_length: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["bumps", "gauge_length", "ends"],
        *,
        folding_twist_from_bumps: _Measure,
        bumps: _Plain = ...,
        gauge_length: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

folding_twist_from_bumps: _FoldingTwistFromBumps

@final
class _FoldingTwistRatio(Formula):
    """Folding twist over singles twist.

    q = t_f / t_s

    folding_twist: folding twist
    single_twist: twist of the singles before folding
    """

    def __call__(self, folding_twist: _Measure, single_twist: _Measure) -> Quantity: ...
    def working(
        self,
        folding_twist: _Measure,
        single_twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["folding_twist", "single_twist"],
        *,
        folding_twist_ratio: _Plain,
        folding_twist: _Measure = ...,
        single_twist: _Measure = ...,
    ) -> list[Quantity]: ...

folding_twist_ratio: _FoldingTwistRatio

@final
class _FullHanks(Formula):
    """Whole hanks that a mass of yarn makes.

    h = round down(1000000 × m_y / (T × l_h) + 0.000001)

    yarn_mass: mass
    count: count
    hank_length: length of a hank
    """

    def __call__(self, yarn_mass: _Measure, count: _Measure, hank_length: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "count", "hank_length"],
        *,
        full_hanks: _Plain,
        yarn_mass: _Measure = ...,
        count: _Measure = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

full_hanks: _FullHanks

@final
class _HankLength(Formula):
    """Length of a hank after scouring.

    l_h = z_r × C_r × (1 − s)

    reel_turns: turns of the reel
    reel_circumference: circumference of the reel
    shrinkage: shrinkage in scouring
    """

    def __call__(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reel_turns", "reel_circumference", "shrinkage"],
        *,
        hank_length: _Measure,
        reel_turns: _Plain = ...,
        reel_circumference: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

hank_length: _HankLength

@final
class _HankMass(Formula):
    """Mass of a hank from the turns of the reel.

    m_h = z_r × C_r × T × 0.000001

    reel_turns: turns of the reel
    reel_circumference: circumference of the reel
    count: count
    """

    def __call__(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reel_turns", "reel_circumference", "count"],
        *,
        hank_mass: _Measure,
        reel_turns: _Plain = ...,
        reel_circumference: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

hank_mass: _HankMass

@final
class _HanksInMass(Formula):
    """Hanks, or spyndles, that a mass of yarn makes, not rounded to whole ones.

    h = 1000000 × m_y / (T × l_h)

    yarn_mass: mass
    count: count
    hank_length: length of a hank
    """

    def __call__(self, yarn_mass: _Measure, count: _Measure, hank_length: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "count", "hank_length"],
        *,
        hanks_in_mass: _Plain,
        yarn_mass: _Measure = ...,
        count: _Measure = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_in_mass: _HanksInMass

@final
class _HelixAngle(Formula):
    """Slope of the fibres on the surface of a yarn to its axis.

    α = arctan(0.00314159265 × d × t) × 57.2957795

    twist: twist
    yarn_diameter: diameter of the yarn
    """

    def __call__(self, twist: _Measure, yarn_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "yarn_diameter"],
        *,
        helix_angle: _Measure,
        twist: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

helix_angle: _HelixAngle

@final
class _HelixAngleFromFactor(Formula):
    """Slope of the surface fibres from the twist factor: yarns of one factor and make slope alike.

    α = arctan(2 × K × √(0.0000314159265 × v)) × 57.2957795

    twist_factor: twist factor
    specific_volume: specific volume of the yarn
    """

    def __call__(self, twist_factor: _Measure, specific_volume: _Measure) -> Quantity: ...
    def working(
        self,
        twist_factor: _Measure,
        specific_volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_factor", "specific_volume"],
        *,
        helix_angle_from_factor: _Measure,
        twist_factor: _Measure = ...,
        specific_volume: _Measure = ...,
    ) -> list[Quantity]: ...

helix_angle_from_factor: _HelixAngleFromFactor

@final
class _HelixContraction(Formula):
    """Contraction of a yarn whose fibres lie in ideal helices, on the untwisted length.

    tan α = 0.00314159265 × d × t; sec α = √(1 + tan α × tan α); k = 1 − 2 / (1 + sec α)

    twist: twist
    yarn_diameter: diameter of the yarn
    """

    def __call__(self, twist: _Measure, yarn_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "yarn_diameter"],
        *,
        helix_contraction: _Plain,
        twist: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

helix_contraction: _HelixContraction

@final
class _IrregularityAfterProcesses(Formula):
    """Irregularity after processes in a row, each of which adds its own.

    CV_t = √(CV₁ × CV₁ + CV₂ × CV₂)

    cvs: irregularity of the feed, then what each process adds, as coefficients of variation
    """

    def __call__(self, cvs: _Plains) -> Quantity: ...
    def working(self, cvs: _Plains, *, at: int | tuple[int, ...] | None = None) -> Working: ...

irregularity_after_processes: _IrregularityAfterProcesses

@final
class _IrregularityFromMeanDeviation(Formula):
    """Coefficient of variation from the mean deviation, the U of the evenness tester.

    CV = U × 1.25331414

    mean_deviation_share: mean deviation from the mean, as a share of it
    """

    def __call__(self, mean_deviation_share: _Plain) -> Quantity: ...
    def working(
        self,
        mean_deviation_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean_deviation_share"],
        *,
        irregularity_from_mean_deviation: _Plain,
        mean_deviation_share: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_from_mean_deviation: _IrregularityFromMeanDeviation

@final
class _IrregularityIndex(Formula):
    """How many times more irregular a yarn is than fibres laid by chance would make it.

    I = CV × √n / k

    cv: irregularity of the yarn, as coefficient of variation
    limit_factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

    def __call__(self, cv: _Plain, limit_factor: _Plain, fibres: _Plain) -> Quantity: ...
    def working(
        self,
        cv: _Plain,
        limit_factor: _Plain,
        fibres: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cv", "limit_factor", "fibres"],
        *,
        irregularity_index: _Plain,
        cv: _Plain = ...,
        limit_factor: _Plain = ...,
        fibres: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_index: _IrregularityIndex

@final
class _IrregularityOfFold(Formula):
    """Irregularity of a fold of ends whose thick places fall by chance.

    CV_R = CV / √N

    cv: irregularity of an end, as coefficient of variation
    ends: number of ends
    """

    def __call__(self, cv: _Plain, ends: _Plain) -> Quantity: ...
    def working(
        self,
        cv: _Plain,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cv", "ends"],
        *,
        irregularity_of_fold: _Plain,
        cv: _Plain = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

irregularity_of_fold: _IrregularityOfFold

@final
class _KnotsInPackage(Formula):
    """Knots in a package from joining the bobbins that it was wound from.

    k = greater of (round up(g / g_k − 0.000001) − 1, 0)

    package_mass: yarn on the package
    bobbin_mass: yarn on a bobbin
    """

    def __call__(self, package_mass: _Measure, bobbin_mass: _Measure) -> Quantity: ...
    def working(
        self,
        package_mass: _Measure,
        bobbin_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["package_mass", "bobbin_mass"],
        *,
        knots_in_package: _Plain,
        package_mass: _Measure = ...,
        bobbin_mass: _Measure = ...,
    ) -> list[Quantity]: ...

knots_in_package: _KnotsInPackage

@final
class _LeaProduct(Formula):
    """Count-strength product of a cotton lea: English cotton count times the pounds that break it.

    N = 590.541247 / T; S = F / 4.44822162; P = N × S

    lea_force: force that breaks the lea
    count: yarn count
    """

    def __call__(self, lea_force: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        lea_force: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["lea_force", "count"],
        *,
        lea_product: _Plain,
        lea_force: _Measure = ...,
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

    Y = 1000000 × (g_b − g_t) / T

    gross_mass: package as weighed
    tube_mass: the empty tube or cone
    count: count
    """

    def __call__(self, gross_mass: _Measure, tube_mass: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        gross_mass: _Measure,
        tube_mass: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["gross_mass", "tube_mass", "count"],
        *,
        length_on_package: _Measure,
        gross_mass: _Measure = ...,
        tube_mass: _Measure = ...,
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

    m₁ = m_y × u₁ × T₁ / (u₁ × T₁ + u₂ × T₂)

    yarn_mass: mass of the folded yarn
    counts: counts of the ends, the one asked for first
    relative_lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(
        self,
        yarn_mass: _Measure,
        counts: _Measures,
        relative_lengths: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        counts: _Measures,
        relative_lengths: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass"],
        *,
        mass_of_component: _Measure,
        yarn_mass: _Measure = ...,
        counts: _Measures = ...,
        relative_lengths: _Plains = ...,
    ) -> list[Quantity]: ...

mass_of_component: _MassOfComponent

@final
class _MassOfEnds(Formula):
    """What ends of a length weigh, with an allowance for waste.

    m = T × L × N × (1 + w_y) × 0.000001

    count: count
    length: length of each end
    ends: ends
    yarn_waste: waste, on the yarn used
    """

    def __call__(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        yarn_waste: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        length: _Measure,
        ends: _Plain,
        yarn_waste: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "length", "ends", "yarn_waste"],
        *,
        mass_of_ends: _Measure,
        count: _Measure = ...,
        length: _Measure = ...,
        ends: _Plain = ...,
        yarn_waste: _Plain = ...,
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
    relative_lengths: length of each end in a unit length of the folded yarn
    """

    def __call__(self, counts: _Measures, relative_lengths: _Plains) -> Quantity: ...
    def working(
        self,
        counts: _Measures,
        relative_lengths: _Plains,
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

    x_m = p₁ × x₁ + p₂ × x₂

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
class _MeanDeviationShare(Formula):
    """Mean deviation of a yarn as a share of its mean count: the U of the evenness tester.

    U = D / T_m

    count_deviation: mean deviation from the mean count
    mean_count: mean count
    """

    def __call__(self, count_deviation: _Measure, mean_count: _Measure) -> Quantity: ...
    def working(
        self,
        count_deviation: _Measure,
        mean_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count_deviation", "mean_count"],
        *,
        mean_deviation_share: _Plain,
        count_deviation: _Measure = ...,
        mean_count: _Measure = ...,
    ) -> list[Quantity]: ...

mean_deviation_share: _MeanDeviationShare

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

    k = 3 × 1000 / (T_s × N)

    single_count: count of an end
    ends: ends in the thread
    """

    def __call__(self, single_count: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        single_count: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_count", "ends"],
        *,
        metric_ticket: _Plain,
        single_count: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

metric_ticket: _MetricTicket

@final
class _MissingComponent(Formula):
    """The end that is missing from a fold of a wanted resultant, without contraction.

    T_x = T_R − T₁ − T₂

    resultant_count: resultant count wanted
    known_counts: counts of the known ends
    """

    def __call__(self, resultant_count: _Measure, known_counts: _Measures) -> Quantity: ...
    def working(
        self,
        resultant_count: _Measure,
        known_counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant_count"],
        *,
        missing_component: _Measure,
        resultant_count: _Measure = ...,
        known_counts: _Measures = ...,
    ) -> list[Quantity]: ...

missing_component: _MissingComponent

@final
class _MissingComponentContracted(Formula):
    """The end that is missing from a fold of a wanted resultant that contracts in folding.

    T_x = T_R × (1 − k) − T₁ − T₂

    resultant_count: resultant count wanted
    contraction: contraction in folding, on the untwisted length
    known_counts: counts of the known ends
    """

    def __call__(
        self,
        resultant_count: _Measure,
        contraction: _Plain,
        known_counts: _Measures,
    ) -> Quantity: ...
    def working(
        self,
        resultant_count: _Measure,
        contraction: _Plain,
        known_counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant_count", "contraction"],
        *,
        missing_component_contracted: _Measure,
        resultant_count: _Measure = ...,
        contraction: _Plain = ...,
        known_counts: _Measures = ...,
    ) -> list[Quantity]: ...

missing_component_contracted: _MissingComponentContracted

@final
class _PackagesForMass(Formula):
    """Packages that a mass of yarn fills, the last one perhaps not full.

    p = round up(m_y / g − 0.000001)

    yarn_mass: yarn to wind
    package_mass: yarn on a full package
    """

    def __call__(self, yarn_mass: _Measure, package_mass: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        package_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "package_mass"],
        *,
        packages_for_mass: _Plain,
        yarn_mass: _Measure = ...,
        package_mass: _Measure = ...,
    ) -> list[Quantity]: ...

packages_for_mass: _PackagesForMass

@final
class _PackingFraction(Formula):
    """Share of a yarn's section that is fibre, from its measured diameter.

    v = 785.398163 × d × d / T; φ = 1 / (v × ρ)

    yarn_diameter: diameter of the yarn
    count: yarn count
    fibre_density: density of the fibre
    """

    def __call__(
        self,
        yarn_diameter: _Measure,
        count: _Measure,
        fibre_density: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        yarn_diameter: _Measure,
        count: _Measure,
        fibre_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_diameter", "count", "fibre_density"],
        *,
        packing_fraction: _Plain,
        yarn_diameter: _Measure = ...,
        count: _Measure = ...,
        fibre_density: _Measure = ...,
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

    z_r = round up(l_h / (1 − s) / C_r − 0.000001)

    hank_length: length of the finished hank
    reel_circumference: circumference of the reel
    shrinkage: shrinkage in scouring
    """

    def __call__(
        self,
        hank_length: _Measure,
        reel_circumference: _Measure,
        shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        hank_length: _Measure,
        reel_circumference: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hank_length", "reel_circumference", "shrinkage"],
        *,
        reel_turns: _Plain,
        hank_length: _Measure = ...,
        reel_circumference: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

reel_turns: _ReelTurns

@final
class _ReelTurnsForMass(Formula):
    """Whole turns of the reel for a hank of a wanted mass.

    z_r = round up(1000000 × m_h / (T × C_r) − 0.000001)

    hank_mass: mass of the hank
    reel_circumference: circumference of the reel
    count: count at the reel
    """

    def __call__(
        self,
        hank_mass: _Measure,
        reel_circumference: _Measure,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        hank_mass: _Measure,
        reel_circumference: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hank_mass", "reel_circumference", "count"],
        *,
        reel_turns_for_mass: _Plain,
        hank_mass: _Measure = ...,
        reel_circumference: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

reel_turns_for_mass: _ReelTurnsForMass

@final
class _ReeledLength(Formula):
    """Yarn on a reel: turns in a cut or lea, and the number of these.

    Y = z_r × C_r × k

    reel_turns: turns in a cut or lea
    reel_circumference: circumference of the reel
    cuts: number of cuts or leas
    """

    def __call__(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        cuts: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        reel_turns: _Plain,
        reel_circumference: _Measure,
        cuts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reel_turns", "reel_circumference", "cuts"],
        *,
        reeled_length: _Measure,
        reel_turns: _Plain = ...,
        reel_circumference: _Measure = ...,
        cuts: _Plain = ...,
    ) -> list[Quantity]: ...

reeled_length: _ReeledLength

@final
class _SingleForFold(Formula):
    """The single to spin for a wanted resultant of equal ends.

    T_s = T_R × (1 − k) / N

    resultant_count: resultant count wanted
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(
        self,
        resultant_count: _Measure,
        ends: _Plain,
        contraction: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        resultant_count: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant_count", "ends", "contraction"],
        *,
        single_for_fold: _Measure,
        resultant_count: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

single_for_fold: _SingleForFold

@final
class _SingleOnTwisted(Formula):
    """The single to spin for a wanted resultant of equal ends, with the contraction on the twisted
    length.

    T_s = T_R / ((1 + k_t) × N)

    resultant_count: resultant count wanted
    ends: number of ends
    contraction_on_twisted: contraction in folding, on the twisted length
    """

    def __call__(
        self,
        resultant_count: _Measure,
        ends: _Plain,
        contraction_on_twisted: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        resultant_count: _Measure,
        ends: _Plain,
        contraction_on_twisted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["resultant_count", "ends", "contraction_on_twisted"],
        *,
        single_on_twisted: _Measure,
        resultant_count: _Measure = ...,
        ends: _Plain = ...,
        contraction_on_twisted: _Plain = ...,
    ) -> list[Quantity]: ...

single_on_twisted: _SingleOnTwisted

@final
class _SinglesLength(Formula):
    """Length of singles, all ends together, for a length of folded yarn.

    L_s = L × N / (1 − k)

    folded_length: length of the folded yarn
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

    def __call__(self, folded_length: _Measure, ends: _Plain, contraction: _Plain) -> Quantity: ...
    def working(
        self,
        folded_length: _Measure,
        ends: _Plain,
        contraction: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["folded_length", "ends", "contraction"],
        *,
        singles_length: _Measure,
        folded_length: _Measure = ...,
        ends: _Plain = ...,
        contraction: _Plain = ...,
    ) -> list[Quantity]: ...

singles_length: _SinglesLength

@final
class _SpyndlesOfMillHanks(Formula):
    """Spyndles that hanks of a number of cuts make: a spyndle has 48 cuts.

    s = h × k / 48

    hanks: hanks
    cuts_per_hank: cuts in a hank
    """

    def __call__(self, hanks: _Plain, cuts_per_hank: _Plain) -> Quantity: ...
    def working(
        self,
        hanks: _Plain,
        cuts_per_hank: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hanks", "cuts_per_hank"],
        *,
        spyndles_of_mill_hanks: _Plain,
        hanks: _Plain = ...,
        cuts_per_hank: _Plain = ...,
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

    breaking_force: breaking force
    count: yarn count
    """

    def __call__(self, breaking_force: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        breaking_force: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["breaking_force", "count"],
        *,
        tenacity: _Measure,
        breaking_force: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

tenacity: _Tenacity

@final
class _TravellerSpeed(Formula):
    """Speed of the traveller on the ring.

    n_t = n_s − v / (3.14159265 × d_p)

    spindle_speed: spindle speed
    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

    def __call__(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        package_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "delivery_speed", "package_diameter"],
        *,
        traveller_speed: _Measure,
        spindle_speed: _Measure = ...,
        delivery_speed: _Measure = ...,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

traveller_speed: _TravellerSpeed

@final
class _TwistAfterShrinkage(Formula):
    """Turns per length after a yarn has shrunk: the turns stay, the length goes.

    t₂ = t₁ / (1 − s)

    twist_before: twist before
    shrinkage: shrinkage in length
    """

    def __call__(self, twist_before: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        twist_before: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_before", "shrinkage"],
        *,
        twist_after_shrinkage: _Measure,
        twist_before: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

twist_after_shrinkage: _TwistAfterShrinkage

@final
class _TwistByLincoln(Formula):
    """Twist of ring-spun cotton by a rule of 1885: the multiplier's twist, less 0.2 turns in an
    inch for each count below 30, and more by as much for each above.

    N = 590.541247 / T; t = 100 × K / √T − 7.87401575 × (30 − N)

    twist_factor: twist multiplier
    count: yarn count
    """

    def __call__(self, twist_factor: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        twist_factor: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_factor", "count"],
        *,
        twist_by_lincoln: _Measure,
        twist_factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_by_lincoln: _TwistByLincoln

@final
class _TwistByRetwisting(Formula):
    """Twist by untwisting a single and twisting it up again to the same length.

    t = n / (2 × L)

    retwisting_turns: turns out and in again, all together
    gauge_length: length between the clamps
    """

    def __call__(self, retwisting_turns: _Plain, gauge_length: _Measure) -> Quantity: ...
    def working(
        self,
        retwisting_turns: _Plain,
        gauge_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["retwisting_turns", "gauge_length"],
        *,
        twist_by_retwisting: _Measure,
        retwisting_turns: _Plain = ...,
        gauge_length: _Measure = ...,
    ) -> list[Quantity]: ...

twist_by_retwisting: _TwistByRetwisting

@final
class _TwistCounted(Formula):
    """Twist counted by untwisting a length until its fibres, or its singles, lie side by side.

    t = n / L

    untwisting_turns: turns to untwist it
    gauge_length: length between the clamps
    """

    def __call__(self, untwisting_turns: _Plain, gauge_length: _Measure) -> Quantity: ...
    def working(
        self,
        untwisting_turns: _Plain,
        gauge_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["untwisting_turns", "gauge_length"],
        *,
        twist_counted: _Measure,
        untwisting_turns: _Plain = ...,
        gauge_length: _Measure = ...,
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

    twist_factor: twist factor
    count: yarn count
    """

    def __call__(self, twist_factor: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        twist_factor: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_factor", "count"],
        *,
        twist_for_factor: _Measure,
        twist_factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_factor: _TwistForFactor

@final
class _TwistForHelixAngle(Formula):
    """Twist that gives the surface fibres a slope.

    t = 1000 × tan(α × 0.0174532925) / (3.14159265 × d)

    helix_angle: slope wanted
    yarn_diameter: diameter of the yarn
    """

    def __call__(self, helix_angle: _Measure, yarn_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        helix_angle: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["helix_angle", "yarn_diameter"],
        *,
        twist_for_helix_angle: _Measure,
        helix_angle: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_helix_angle: _TwistForHelixAngle

@final
class _TwistForNewCount(Formula):
    """The twist that keeps a yarn as hard when its count is changed.

    t₂ = t × √(T / T₂)

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

    t₂ = t × K₂ / K

    twist: twist now
    twist_factor: twist factor now
    new_twist_factor: twist factor wanted
    """

    def __call__(
        self,
        twist: _Measure,
        twist_factor: _Measure,
        new_twist_factor: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        twist_factor: _Measure,
        new_twist_factor: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "twist_factor", "new_twist_factor"],
        *,
        twist_for_new_factor: _Measure,
        twist: _Measure = ...,
        twist_factor: _Measure = ...,
        new_twist_factor: _Measure = ...,
    ) -> list[Quantity]: ...

twist_for_new_factor: _TwistForNewFactor

@final
class _TwistFromRoller(Formula):
    """Twist from the turns of the spindle for each turn of the delivery roller.

    t = i / C

    roller_ratio: spindle turns for a turn of the delivery roller
    roller_circumference: circumference of the delivery roller
    """

    def __call__(self, roller_ratio: _Plain, roller_circumference: _Measure) -> Quantity: ...
    def working(
        self,
        roller_ratio: _Plain,
        roller_circumference: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["roller_ratio", "roller_circumference"],
        *,
        twist_from_roller: _Measure,
        roller_ratio: _Plain = ...,
        roller_circumference: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_roller: _TwistFromRoller

@final
class _TwistFromSpeed(Formula):
    """Twist put in by a turning spindle at a delivery.

    t = n_s / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    """

    def __call__(self, spindle_speed: _Measure, delivery_speed: _Measure) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "delivery_speed"],
        *,
        twist_from_speed: _Measure,
        spindle_speed: _Measure = ...,
        delivery_speed: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_speed: _TwistFromSpeed

@final
class _TwistFromWheel(Formula):
    """Twist that a change wheel gives, where twist falls as teeth rise.

    t = C_t / z

    twist_constant: twist constant: twist times teeth
    teeth: teeth of the wheel
    """

    def __call__(self, twist_constant: _Measure, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        twist_constant: _Measure,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_constant", "teeth"],
        *,
        twist_from_wheel: _Measure,
        twist_constant: _Measure = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

twist_from_wheel: _TwistFromWheel

@final
class _TwistGainedOverEnd(Formula):
    """Twist after unwinding over the end, where the coil turns the way of the twist.

    t₂ = t₁ + 1 / (3.14159265 × d_p)

    twist_before: twist on the package
    package_diameter: diameter at which the yarn comes off
    """

    def __call__(self, twist_before: _Measure, package_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist_before: _Measure,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_before", "package_diameter"],
        *,
        twist_gained_over_end: _Measure,
        twist_before: _Measure = ...,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_gained_over_end: _TwistGainedOverEnd

@final
class _TwistLeftInSingle(Formula):
    """Twist left in the singles after folding the other way, for small helix angles.

    t_l = t_s − t_f

    single_twist: twist of the singles before folding
    folding_twist: folding twist, of the other direction
    """

    def __call__(self, single_twist: _Measure, folding_twist: _Measure) -> Quantity: ...
    def working(
        self,
        single_twist: _Measure,
        folding_twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_twist", "folding_twist"],
        *,
        twist_left_in_single: _Measure,
        single_twist: _Measure = ...,
        folding_twist: _Measure = ...,
    ) -> list[Quantity]: ...

twist_left_in_single: _TwistLeftInSingle

@final
class _TwistLeftRatio(Formula):
    """Share of the singles' twist left after folding the other way, with the slope of the fold.

    tan β = 0.00314159265 × D × t_f; q = 1 − t_f / t_s / (1 + tan β × tan β)

    single_twist: twist of the singles before folding
    folding_twist: folding twist, of the other direction
    helix_diameter: diameter of the helix of the singles' axes, about that of one single
    """

    def __call__(
        self,
        single_twist: _Measure,
        folding_twist: _Measure,
        helix_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        single_twist: _Measure,
        folding_twist: _Measure,
        helix_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_twist", "folding_twist", "helix_diameter"],
        *,
        twist_left_ratio: _Plain,
        single_twist: _Measure = ...,
        folding_twist: _Measure = ...,
        helix_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_left_ratio: _TwistLeftRatio

@final
class _TwistLostOverEnd(Formula):
    """Twist after unwinding over the end, where the coil turns against the twist.

    t₂ = t₁ − 1 / (3.14159265 × d_p)

    twist_before: twist on the package
    package_diameter: diameter at which the yarn comes off
    """

    def __call__(self, twist_before: _Measure, package_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        twist_before: _Measure,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_before", "package_diameter"],
        *,
        twist_lost_over_end: _Measure,
        twist_before: _Measure = ...,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_lost_over_end: _TwistLostOverEnd

@final
class _TwistOfACoil(Formula):
    """Twist that unwinding over the end puts in or takes out: a turn for each coil.

    t_e = 1 / (3.14159265 × d_p)

    package_diameter: diameter at which the yarn comes off
    """

    def __call__(self, package_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["package_diameter"],
        *,
        twist_of_a_coil: _Measure,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_of_a_coil: _TwistOfACoil

@final
class _TwistOnRingBobbin(Formula):
    """Twist of the yarn as it lies on a ring bobbin: turns of the traveller for a length delivered.

    n_t = n_s − v / (3.14159265 × d_p); t = n_t / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

    def __call__(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        package_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "delivery_speed", "package_diameter"],
        *,
        twist_on_ring_bobbin: _Measure,
        spindle_speed: _Measure = ...,
        delivery_speed: _Measure = ...,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_on_ring_bobbin: _TwistOnRingBobbin

@final
class _TwoFoldContraction(Formula):
    """Contraction of a two-fold staple yarn: the singles change their own, and lie aslant.

    tan β = 0.00314159265 × D × t_f; cos β = 1 / √(1 + tan β × tan β); k = 1 − (1 − k_a) / (1 −
    k_b) × cos β

    single_contraction_before: contraction of the singles before folding
    single_contraction_after: contraction of the singles after folding
    folding_twist: folding twist
    helix_diameter: diameter of the helix of the singles' axes, about that of one single
    """

    def __call__(
        self,
        single_contraction_before: _Plain,
        single_contraction_after: _Plain,
        folding_twist: _Measure,
        helix_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        single_contraction_before: _Plain,
        single_contraction_after: _Plain,
        folding_twist: _Measure,
        helix_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "single_contraction_before",
            "single_contraction_after",
            "folding_twist",
            "helix_diameter",
        ],
        *,
        two_fold_contraction: _Plain,
        single_contraction_before: _Plain = ...,
        single_contraction_after: _Plain = ...,
        folding_twist: _Measure = ...,
        helix_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

two_fold_contraction: _TwoFoldContraction

@final
class _TwoForOneTwist(Formula):
    """Twist put in by a two-for-one spindle: two turns a revolution.

    t = 2 × n_s / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    """

    def __call__(self, spindle_speed: _Measure, delivery_speed: _Measure) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        delivery_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "delivery_speed"],
        *,
        two_for_one_twist: _Measure,
        spindle_speed: _Measure = ...,
        delivery_speed: _Measure = ...,
    ) -> list[Quantity]: ...

two_for_one_twist: _TwoForOneTwist

@final
class _UntwistedLength(Formula):
    """Length of the untwisted strand in a length of twisted yarn.

    L₀ = L × (1 + k_t)

    twisted_length: length of the twisted yarn
    contraction_on_twisted: contraction, on the twisted length
    """

    def __call__(self, twisted_length: _Measure, contraction_on_twisted: _Plain) -> Quantity: ...
    def working(
        self,
        twisted_length: _Measure,
        contraction_on_twisted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twisted_length", "contraction_on_twisted"],
        *,
        untwisted_length: _Measure,
        twisted_length: _Measure = ...,
        contraction_on_twisted: _Plain = ...,
    ) -> list[Quantity]: ...

untwisted_length: _UntwistedLength

@final
class _VariationOfMean(Formula):
    """Variation of the mean of readings, with that from end to end and that along the ends told
    apart.

    CV_m = √(CV_b × CV_b / e + CV_a × CV_a / p)

    cv_between: variation from end to end
    cv_along: variation from piece to piece along an end
    different_ends: different ends
    test_pieces: pieces, all together
    """

    def __call__(
        self,
        cv_between: _Plain,
        cv_along: _Plain,
        different_ends: _Plain,
        test_pieces: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        cv_between: _Plain,
        cv_along: _Plain,
        different_ends: _Plain,
        test_pieces: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cv_between", "cv_along", "different_ends", "test_pieces"],
        *,
        variation_of_mean: _Plain,
        cv_between: _Plain = ...,
        cv_along: _Plain = ...,
        different_ends: _Plain = ...,
        test_pieces: _Plain = ...,
    ) -> list[Quantity]: ...

variation_of_mean: _VariationOfMean

@final
class _WheelForTwist(Formula):
    """The change wheel that would give a wanted twist, where twist falls as teeth rise.

    z = C_t / t

    twist_constant: twist constant: twist times teeth
    twist: twist wanted
    """

    def __call__(self, twist_constant: _Measure, twist: _Measure) -> Quantity: ...
    def working(
        self,
        twist_constant: _Measure,
        twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist_constant", "twist"],
        *,
        wheel_for_twist: _Plain,
        twist_constant: _Measure = ...,
        twist: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_twist: _WheelForTwist

@final
class _WindingLag(Formula):
    """Turns in a minute by which the traveller lags the spindle, or a bobbin differs from its
    flyer, to wind on what is delivered.

    n_l = v / (3.14159265 × d_p)

    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

    def __call__(self, delivery_speed: _Measure, package_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        delivery_speed: _Measure,
        package_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["delivery_speed", "package_diameter"],
        *,
        winding_lag: _Measure,
        delivery_speed: _Measure = ...,
        package_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

winding_lag: _WindingLag

@final
class _WindingOutput(Formula):
    """What drums wind in an hour.

    Q = 60 × v × k_n × η × T × 0.000001

    winding_speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    count: count
    """

    def __call__(
        self,
        winding_speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        winding_speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["winding_speed", "drums", "efficiency", "count"],
        *,
        winding_output: _Measure,
        winding_speed: _Measure = ...,
        drums: _Plain = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

winding_output: _WindingOutput

@final
class _WindingTime(Formula):
    """Time to wind a length, all drums at work.

    τ = Y / (60 × v × k_n × η)

    yarn_length: length to wind
    winding_speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    """

    def __call__(
        self,
        yarn_length: _Measure,
        winding_speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        yarn_length: _Measure,
        winding_speed: _Measure,
        drums: _Plain,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_length", "winding_speed", "drums", "efficiency"],
        *,
        winding_time: _Measure,
        yarn_length: _Measure = ...,
        winding_speed: _Measure = ...,
        drums: _Plain = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

winding_time: _WindingTime

@final
class _WrapsEstimate(Formula):
    """Estimate of the wraps of a yarn from its count.

    Y = 496,054.648 / T; w = k × √Y / 2.54

    wraps_factor: factor of the yarn and the hand
    count: yarn count
    """

    def __call__(self, wraps_factor: _Plain, count: _Measure) -> Quantity: ...
    def working(
        self,
        wraps_factor: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps_factor", "count"],
        *,
        wraps_estimate: _Measure,
        wraps_factor: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

wraps_estimate: _WrapsEstimate

@final
class _YarnDiameter(Formula):
    """Diameter of a round yarn from its count and specific volume.

    d = √(4 × v × T / 3141.59265)

    specific_volume: specific volume of the yarn
    count: yarn count
    """

    def __call__(self, specific_volume: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        specific_volume: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["specific_volume", "count"],
        *,
        yarn_diameter: _Measure,
        specific_volume: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_diameter: _YarnDiameter

@final
class _YarnSpecificVolume(Formula):
    """Volume that a gram of yarn fills, air and all.

    v = 1 / (φ × ρ)

    packing_fraction: share of the section that is fibre
    fibre_density: density of the fibre
    """

    def __call__(self, packing_fraction: _Plain, fibre_density: _Measure) -> Quantity: ...
    def working(
        self,
        packing_fraction: _Plain,
        fibre_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["packing_fraction", "fibre_density"],
        *,
        yarn_specific_volume: _Measure,
        packing_fraction: _Plain = ...,
        fibre_density: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_specific_volume: _YarnSpecificVolume
