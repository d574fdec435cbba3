"""Count, folding, twist, hanks, diameter, strength and evenness."""

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
from hankwise._yarn_more import parse as parse
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
