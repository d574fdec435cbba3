"""Count, folding, twist and hanks."""

# Written by python -m hankwise._stubs from the catalogue.

from collections.abc import Sequence
from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Rounded,
    Working,
    _Measure,
    _Measures,
    _Plain,
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

def round_tex(count: _Measure, /, agreed: Sequence[float] | None = None) -> Rounded: ...
def round_count(
    count: _Measure, unit: str, /, agreed: Sequence[float] | None = None
) -> Rounded: ...
