"""Count, folding, twist and hanks."""

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
class _ContractionOfCottonSingle(Formula):
    """Contraction of a cotton single in spinning, by an empirical rule, on the untwisted length.

    TM = K / 9.56734427; c = (2.67 × TM − 4.93) / 100

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
class _HelixContraction(Formula):
    """Contraction of a yarn whose fibres lie in ideal helices, on the untwisted length.

    tan α = 3.14159265 × d × t; sec α = √(1 + tan α × tan α); c = 1 − 2 / (1 + sec α)

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
class _TwistLeftRatio(Formula):
    """Share of the singles' twist left after folding the other way, with the slope of the fold.

    tan β = 3.14159265 × D × t_f; q = 1 − t_f / t_s / (1 + tan β × tan β)

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
class _TwoFoldContraction(Formula):
    """Contraction of a two-fold staple yarn: the singles change their own, and lie aslant.

    tan β = 3.14159265 × D × t_f; cos β = 1 / √(1 + tan β × tan β); k₁ = 1 − (1 − k′) / (1 − k) ×
    cos β

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
