"""Weave, sett and reed, the piece, its mass, knitting, finishing."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._cloth_more import choose_reed as choose_reed
from hankwise._cloth_more import colour_order as colour_order
from hankwise._cloth_more import draft as draft
from hankwise._cloth_more import finished_sample as finished_sample
from hankwise._cloth_more import finishing as finishing
from hankwise._cloth_more import piece as piece
from hankwise._cloth_more import pieces_from_yarn as pieces_from_yarn
from hankwise._cloth_more import plain_cloth as plain_cloth
from hankwise._cloth_more import process as process
from hankwise._cloth_more import satin_moves as satin_moves
from hankwise._cloth_more import settings as settings
from hankwise._cloth_more import to_weave as to_weave
from hankwise._cloth_more import weave as weave
from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Plain,
    _Plains,
)

@final
class _AreaShrinkage(Formula):
    """Area lost from the shrinkages in width and length.

    s_A = 1 − (1 − s_w) × (1 − s_l)

    width: shrinkage in width
    length: shrinkage in length
    """

    def __call__(self, width: _Plain, length: _Plain) -> Quantity: ...
    def working(
        self,
        width: _Plain,
        length: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["width", "length"],
        *,
        area_shrinkage: _Plain,
        width: _Plain = ...,
        length: _Plain = ...,
    ) -> list[Quantity]: ...

area_shrinkage: _AreaShrinkage

@final
class _BrierleyPicks(Formula):
    """The most picks at a number of ends, by Brierley: the ends to the power ⅔ times the picks
    stay.

    n₂ = n^1.66666667 × n₁^(−0.666666667)

    square: closest sett of the square cloth
    ends: ends
    """

    def __call__(self, square: _Measure, ends: _Measure) -> Quantity: ...
    def working(
        self,
        square: _Measure,
        ends: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["square", "ends"],
        *,
        brierley_picks: _Measure,
        square: _Measure = ...,
        ends: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_picks: _BrierleyPicks

@final
class _BrierleyPicksUnlike(Formula):
    """The most picks at a number of ends, by Brierley, where warp and weft are of unlike count.

    a = 0.666666667 × √(T₁ / T₂); n₂ = n × exp(a × ln(n / n₁))

    square: closest sett of the square cloth
    ends: ends
    warp: count of the warp
    weft: count of the weft
    """

    def __call__(
        self,
        square: _Measure,
        ends: _Measure,
        warp: _Measure,
        weft: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        square: _Measure,
        ends: _Measure,
        warp: _Measure,
        weft: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["square", "ends", "warp", "weft"],
        *,
        brierley_picks_unlike: _Measure,
        square: _Measure = ...,
        ends: _Measure = ...,
        warp: _Measure = ...,
        weft: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_picks_unlike: _BrierleyPicksUnlike

@final
class _BrierleySett(Formula):
    """The closest sett of a square cloth by Brierley.

    Fᵐ = exp(m × ln(F)); Y = 496,054.648 / T; n = Fᵐ × √k × √Y / 2.54

    float: average float, threads for each intersection
    exponent: exponent of the class of weave
    constant: constant on the yards in a pound
    count: yarn count
    """

    def __call__(
        self,
        float: _Plain,
        exponent: _Plain,
        constant: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        float: _Plain,
        exponent: _Plain,
        constant: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["float", "exponent", "constant", "count"],
        *,
        brierley_sett: _Measure,
        float: _Plain = ...,
        exponent: _Plain = ...,
        constant: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_sett: _BrierleySett

@final
class _ChangeOfShrinkage(Formula):
    """Dimensional change of ISO 5077 of a shrinkage as the mill counts it.

    D = 0 − s

    shrinkage: shrinkage
    """

    def __call__(self, shrinkage: _Plain) -> Quantity: ...
    def working(self, shrinkage: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["shrinkage"],
        *,
        change_of_shrinkage: _Plain,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

change_of_shrinkage: _ChangeOfShrinkage

@final
class _ClothCoverFactor(Formula):
    """Cover factor of the cloth from those of warp and weft.

    K = K₁ + K₂ − K₁ × K₂ / K_l

    warp: cover factor of the warp
    weft: cover factor of the weft
    limit: cover factor at which threads touch
    """

    def __call__(self, warp: _Measure, weft: _Measure, limit: _Measure) -> Quantity: ...
    def working(
        self,
        warp: _Measure,
        weft: _Measure,
        limit: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp", "weft", "limit"],
        *,
        cloth_cover_factor: _Measure,
        warp: _Measure = ...,
        weft: _Measure = ...,
        limit: _Measure = ...,
    ) -> list[Quantity]: ...

cloth_cover_factor: _ClothCoverFactor

@final
class _ClothSpecificVolume(Formula):
    """Specific volume of a cloth, the air in it counted.

    v = 1000 × H / w

    thickness: thickness
    area: mass per area
    """

    def __call__(self, thickness: _Measure, area: _Measure) -> Quantity: ...
    def working(
        self,
        thickness: _Measure,
        area: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["thickness", "area"],
        *,
        cloth_specific_volume: _Measure,
        thickness: _Measure = ...,
        area: _Measure = ...,
    ) -> list[Quantity]: ...

cloth_specific_volume: _ClothSpecificVolume

@final
class _CompoundedShrinkage(Formula):
    """Shrinkage of several processes in their order, each on the size that it found.

    S = 1 − (1 − s₁) × (1 − s₂)

    shrinkages: shrinkage of each process
    """

    def __call__(self, shrinkages: _Plains) -> Quantity: ...
    def working(
        self,
        shrinkages: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

compounded_shrinkage: _CompoundedShrinkage

@final
class _CountAfterFinishing(Formula):
    """Count of the yarn in the cloth after finishing.

    T₂ = T₁ × (1 − m) / (1 − s)

    count: count before
    loss: mass lost; negative where the cloth gains
    shrinkage: shrinkage along the yarn
    """

    def __call__(self, count: _Measure, loss: _Plain, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "loss", "shrinkage"],
        *,
        count_after_finishing: _Measure,
        count: _Measure = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_after_finishing: _CountAfterFinishing

@final
class _CountBeforeFinishing(Formula):
    """Count to weave with for a count wanted in the finished cloth.

    T₁ = T₂ × (1 − s) / (1 − m)

    count: count in the finished cloth
    loss: mass lost; negative where the cloth gains
    shrinkage: shrinkage along the yarn
    """

    def __call__(self, count: _Measure, loss: _Plain, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        loss: _Plain,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "loss", "shrinkage"],
        *,
        count_before_finishing: _Measure,
        count: _Measure = ...,
        loss: _Plain = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_before_finishing: _CountBeforeFinishing

@final
class _CountForCoverFactor(Formula):
    """The count that gives a cover factor at a sett.

    T = 10 × K / n × 10 × K / n

    factor: cover factor
    sett: sett
    """

    def __call__(self, factor: _Measure, sett: _Measure) -> Quantity: ...
    def working(
        self,
        factor: _Measure,
        sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "sett"],
        *,
        count_for_cover_factor: _Measure,
        factor: _Measure = ...,
        sett: _Measure = ...,
    ) -> list[Quantity]: ...

count_for_cover_factor: _CountForCoverFactor

@final
class _CountForSett(Formula):
    """The count of yarn that suits a sett wanted, by diameters and intersections.

    D = n / s × (R + I) / R; Y = 2.54 × D / k × 2.54 × D / k; T = 496,054.648 / Y

    factor: factor of the yarn
    sett: sett wanted
    share: share of the maximum
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        factor: _Plain,
        sett: _Measure,
        share: _Plain,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        factor: _Plain,
        sett: _Measure,
        share: _Plain,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "sett", "share", "repeat", "intersections"],
        *,
        count_for_sett: _Measure,
        factor: _Plain = ...,
        sett: _Measure = ...,
        share: _Plain = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

count_for_sett: _CountForSett

@final
class _CountForWeight(Formula):
    """The count for a heavier or lighter cloth of the same weave and firmness.

    T₂ = T₁ × w × w

    count: count of the yarn at hand
    ratio: new weight over the old
    """

    def __call__(self, count: _Measure, ratio: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "ratio"],
        *,
        count_for_weight: _Measure,
        count: _Measure = ...,
        ratio: _Plain = ...,
    ) -> list[Quantity]: ...

count_for_weight: _CountForWeight

@final
class _CountWithAdded(Formula):
    """Count of a yarn with size or oil on it.

    T₂ = T₁ × (1 + z)

    count: count without it
    added: size or oil, on the yarn without it
    """

    def __call__(self, count: _Measure, added: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        added: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "added"],
        *,
        count_with_added: _Measure,
        count: _Measure = ...,
        added: _Plain = ...,
    ) -> list[Quantity]: ...

count_with_added: _CountWithAdded

@final
class _CoursesForLoop(Formula):
    """The courses, or the wales, that a loop length leads to.

    n = K_c / (100 × l)

    constant: constant of the direction
    loop_length: length of yarn in a loop
    """

    def __call__(self, constant: _Plain, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        constant: _Plain,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "loop_length"],
        *,
        courses_for_loop: _Measure,
        constant: _Plain = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

courses_for_loop: _CoursesForLoop

@final
class _CoverFactor(Formula):
    """How closely the threads of one direction lie for their count.

    K = n × √T / 10

    sett: sett
    count: yarn count
    """

    def __call__(self, sett: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "count"],
        *,
        cover_factor: _Measure,
        sett: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

cover_factor: _CoverFactor

@final
class _CoverFactorAfterFinishing(Formula):
    """Cover factor after finishing of the threads of one direction.

    K₂ = K₁ × √((1 − m) / (1 − s)) / (1 − s_a)

    factor: cover factor before
    loss: mass lost; negative where the cloth gains
    across: shrinkage across the threads
    along: shrinkage along the yarn
    """

    def __call__(
        self,
        factor: _Measure,
        loss: _Plain,
        across: _Plain,
        along: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        factor: _Measure,
        loss: _Plain,
        across: _Plain,
        along: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "loss", "across", "along"],
        *,
        cover_factor_after_finishing: _Measure,
        factor: _Measure = ...,
        loss: _Plain = ...,
        across: _Plain = ...,
        along: _Plain = ...,
    ) -> list[Quantity]: ...

cover_factor_after_finishing: _CoverFactorAfterFinishing

@final
class _CoverFactorLimit(Formula):
    """Cover factor at which round threads lie side by side and touch.

    K_l = √(785.398163 / v)

    volume: specific volume of the yarn
    """

    def __call__(self, volume: _Measure) -> Quantity: ...
    def working(self, volume: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["volume"],
        *,
        cover_factor_limit: _Measure,
        volume: _Measure = ...,
    ) -> list[Quantity]: ...

cover_factor_limit: _CoverFactorLimit

@final
class _CrimpAfterFinishing(Formula):
    """Crimp after the cloth has shrunk more or less than its yarn.

    c₂ = (1 + c₁) × (1 − s_y) / (1 − s) − 1

    crimp: crimp before
    shrinkage: shrinkage of the cloth along the yarn
    yarn: shrinkage of the yarn itself
    """

    def __call__(self, crimp: _Plain, shrinkage: _Plain, yarn: _Plain) -> Quantity: ...
    def working(
        self,
        crimp: _Plain,
        shrinkage: _Plain,
        yarn: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["crimp", "shrinkage", "yarn"],
        *,
        crimp_after_finishing: _Plain,
        crimp: _Plain = ...,
        shrinkage: _Plain = ...,
        yarn: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_after_finishing: _CrimpAfterFinishing

@final
class _CrimpAngle(Formula):
    """Angle at which a thread crosses the plane of the cloth.

    θ in radians = root of (l − D × θ in radians) × cos(θ in radians) + D × sin(θ in radians) −
    p; θ = θ in radians × 57.2957795

    length: length between threads crossed
    spacing: spacing of the threads crossed
    diameters: sum of the diameters
    """

    def __call__(self, length: _Measure, spacing: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        spacing: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "spacing", "diameters"],
        *,
        crimp_angle: _Measure,
        length: _Measure = ...,
        spacing: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_angle: _CrimpAngle

@final
class _CrimpBeforeFinishing(Formula):
    """Crimp before finishing from that in the finished cloth.

    c₁ = (1 + c₂) × (1 − s) / (1 − s_y) − 1

    crimp: crimp after
    shrinkage: shrinkage of the cloth along the yarn
    yarn: shrinkage of the yarn itself
    """

    def __call__(self, crimp: _Plain, shrinkage: _Plain, yarn: _Plain) -> Quantity: ...
    def working(
        self,
        crimp: _Plain,
        shrinkage: _Plain,
        yarn: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["crimp", "shrinkage", "yarn"],
        *,
        crimp_before_finishing: _Plain,
        crimp: _Plain = ...,
        shrinkage: _Plain = ...,
        yarn: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_before_finishing: _CrimpBeforeFinishing

@final
class _CrimpFound(Formula):
    """Crimp: how much longer the yarn is than the cloth that it lies in.

    c = (l − L) / L

    yarn: length of the yarn
    cloth: length of the cloth it was taken from
    """

    def __call__(self, yarn: _Measure, cloth: _Measure) -> Quantity: ...
    def working(
        self,
        yarn: _Measure,
        cloth: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn", "cloth"],
        *,
        crimp_found: _Plain,
        yarn: _Measure = ...,
        cloth: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_found: _CrimpFound

@final
class _CrimpFromTakeUp(Formula):
    """Crimp on cloth length from take-up on yarn length.

    c = u / (1 − u)

    take_up: take-up on the length of the yarn
    """

    def __call__(self, take_up: _Plain) -> Quantity: ...
    def working(self, take_up: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["take_up"],
        *,
        crimp_from_take_up: _Plain,
        take_up: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_from_take_up: _CrimpFromTakeUp

@final
class _CrimpHeight(Formula):
    """Height of the wave of a thread, from the middle of its trough to that of its crest.

    θ = root of (l − D × θ) × cos(θ) + D × sin(θ) − p; h = (l − D × θ) × sin(θ) + D × (1 −
    cos(θ))

    length: length between threads crossed
    spacing: spacing of the threads crossed
    diameters: sum of the diameters
    """

    def __call__(self, length: _Measure, spacing: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        spacing: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "spacing", "diameters"],
        *,
        crimp_height: _Measure,
        length: _Measure = ...,
        spacing: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_height: _CrimpHeight

@final
class _CrimpHeightByRule(Formula):
    """Height of the wave of a thread by the rule of the root.

    h = k × p × √c

    spacing: spacing of the threads crossed
    crimp: crimp
    factor: factor
    """

    def __call__(self, spacing: _Measure, crimp: _Plain, factor: _Plain) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        crimp: _Plain,
        factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "crimp", "factor"],
        *,
        crimp_height_by_rule: _Measure,
        spacing: _Measure = ...,
        crimp: _Plain = ...,
        factor: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_height_by_rule: _CrimpHeightByRule

@final
class _CrownHeight(Formula):
    """Height of a crown: of the wave of a thread and the thread itself.

    H = h + d

    height: height of the wave
    diameter: diameter
    """

    def __call__(self, height: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        height: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["height", "diameter"],
        *,
        crown_height: _Measure,
        height: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

crown_height: _CrownHeight

@final
class _CurvatureSett(Formula):
    """The closest sett of a weave by the curvature of the threads, for a square cloth of like
    yarns.

    n = D × R / (R + 0.732050808 × I)

    diameters: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(self, diameters: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity: ...
    def working(
        self,
        diameters: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameters", "repeat", "intersections"],
        *,
        curvature_sett: _Measure,
        diameters: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

curvature_sett: _CurvatureSett

@final
class _CurvatureSettUnlike(Formula):
    """The closest sett of one system by curvature, where the other is of another yarn.

    p = 0.866025404 × (1 / D₁ + 1 / D₂); n = R / ((R − I) / D₁ + I × p)

    own: diameters of the yarn that is set, side by side
    crossing: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

    def __call__(
        self,
        own: _Measure,
        crossing: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        own: _Measure,
        crossing: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["own", "crossing", "repeat", "intersections"],
        *,
        curvature_sett_unlike: _Measure,
        own: _Measure = ...,
        crossing: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

curvature_sett_unlike: _CurvatureSettUnlike

@final
class _DentsInWidth(Formula):
    """Dents in a width of the reed.

    N = 100 × r × W

    reed: reed
    width: width in the reed
    """

    def __call__(self, reed: _Measure, width: _Measure) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "width"],
        *,
        dents_in_width: _Plain,
        reed: _Measure = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

dents_in_width: _DentsInWidth

@final
class _DiametersInCloth(Formula):
    """Sum of the diameters that the threads of a plain cloth behave as having, from measured
    crimps.

    p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); p₁ = 10 / n₁; l₂ = p₁ × (1 + c₂); D = root of (l₁ − D × θ₁)
    × sin(θ₁) + D × (1 − cos(θ₁)) + ((l₂ − D × θ₂) × sin(θ₂) + D × (1 − cos(θ₂))) − D

    ends: ends
    picks: picks
    warp_crimp: crimp of the warp
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "picks", "warp_crimp", "weft_crimp"],
        *,
        diameters_in_cloth: _Measure,
        ends: _Measure = ...,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

diameters_in_cloth: _DiametersInCloth

@final
class _DiametersSideBySide(Formula):
    """Diameters of a yarn that lie side by side in a centimetre.

    Y = 496,054.648 / T; D = k × √Y / 2.54

    factor: factor of the yarn
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
        diameters_side_by_side: _Measure,
        factor: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

diameters_side_by_side: _DiametersSideBySide

@final
class _DimensionalChange(Formula):
    """Dimensional change as ISO 5077 reports it.

    D = (x_t − x₀) / x₀

    before: measure before
    after: measure after
    """

    def __call__(self, before: _Measure, after: _Measure) -> Quantity: ...
    def working(
        self,
        before: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after"],
        *,
        dimensional_change: _Plain,
        before: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

dimensional_change: _DimensionalChange

@final
class _DrawInFound(Formula):
    """Draw-in from the width in the reed and off the loom.

    d = 1 − b₁ / B

    reed: width in the reed
    off_loom: width off the loom
    """

    def __call__(self, reed: _Measure, off_loom: _Measure) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        off_loom: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "off_loom"],
        *,
        draw_in_found: _Plain,
        reed: _Measure = ...,
        off_loom: _Measure = ...,
    ) -> list[Quantity]: ...

draw_in_found: _DrawInFound

@final
class _EndsAfterStretch(Formula):
    """Ends after plain cloth was stretched, or let go, to other picks: its crimps change places.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); p₁ = 10 / n₁; h₂ = D − h₁; l₂ = D × 2 ×
    arctan(h₂ / (p₁ + √(p₁ × p₁ − h₂ × (2 × D − h₂)))) + (p₁ − D × sin(2 × arctan(h₂ / (p₁ + √(p₁
    × p₁ − h₂ × (2 × D − h₂)))))) / cos(2 × arctan(h₂ / (p₁ + √(p₁ × p₁ − h₂ × (2 × D − h₂)))));
    p₂′ = 10 / n₂′; θ₁′ = root of (l₁ − D × θ₁′) × cos(θ₁′) + D × sin(θ₁′) − p₂′; h₁′ = (l₁ − D ×
    θ₁′) × sin(θ₁′) + D × (1 − cos(θ₁′)); h₂′ = D − h₁′; θ₂′ = root of (l₂ − D × θ₂′) × sin(θ₂′)
    + D × (1 − cos(θ₂′)) − h₂′; p₁′ = (l₂ − D × θ₂′) × cos(θ₂′) + D × sin(θ₂′); n₁′ = (no answer
    if D < h₁, else (no answer if D < h₁′, else 10 / p₁′))

    ends: ends
    picks: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    picks_after: picks after
    """

    def __call__(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        picks_after: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        picks_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "ends", "picks", "warp_crimp", "warp_diameter", "weft_diameter", "picks_after"
        ],
        *,
        ends_after_stretch: _Measure,
        ends: _Measure = ...,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        picks_after: _Measure = ...,
    ) -> list[Quantity]: ...

ends_after_stretch: _EndsAfterStretch

@final
class _EndsFromRepeats(Formula):
    """The sett from the repeats of the weave counted in a width.

    n = r × R

    repeats: repeats
    ends: ends in a repeat
    """

    def __call__(self, repeats: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        repeats: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["repeats", "ends"],
        *,
        ends_from_repeats: _Measure,
        repeats: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

ends_from_repeats: _EndsFromRepeats

@final
class _EndsInWidth(Formula):
    """Threads in a width.

    N = 100 × n × W

    sett: sett
    width: width in the same state
    """

    def __call__(self, sett: _Measure, width: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "width"],
        *,
        ends_in_width: _Plain,
        sett: _Measure = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

ends_in_width: _EndsInWidth

@final
class _EndsWithSelvedges(Formula):
    """Ends of a cloth whose selvedges are set closer than its ground.

    N = 100 × n × (W + k × S)

    sett: sett of the ground
    width: width of the ground
    selvedges: width of both selvedges together
    closer: ends in a dent of the selvedge over those of the ground
    """

    def __call__(
        self,
        sett: _Measure,
        width: _Measure,
        selvedges: _Measure,
        closer: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        width: _Measure,
        selvedges: _Measure,
        closer: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "width", "selvedges", "closer"],
        *,
        ends_with_selvedges: _Plain,
        sett: _Measure = ...,
        width: _Measure = ...,
        selvedges: _Measure = ...,
        closer: _Plain = ...,
    ) -> list[Quantity]: ...

ends_with_selvedges: _EndsWithSelvedges

@final
class _EvenShrinkage(Formula):
    """Shrinkage of each side of a cloth that shrinks alike both ways, from the area lost.

    s = 1 − √(1 − s_A)

    area: area lost
    """

    def __call__(self, area: _Plain) -> Quantity: ...
    def working(self, area: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["area"],
        *,
        even_shrinkage: _Plain,
        area: _Plain = ...,
    ) -> list[Quantity]: ...

even_shrinkage: _EvenShrinkage

@final
class _FinishedMassPerArea(Formula):
    """Mass per area after finishing.

    w₂ = w₁ × (1 − m) / ((1 − s_w) × (1 − s_l))

    loom: mass per area off the loom
    loss: mass lost; negative where the cloth gains
    width: shrinkage in width
    length: shrinkage in length
    """

    def __call__(self, loom: _Measure, loss: _Plain, width: _Plain, length: _Plain) -> Quantity: ...
    def working(
        self,
        loom: _Measure,
        loss: _Plain,
        width: _Plain,
        length: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loom", "loss", "width", "length"],
        *,
        finished_mass_per_area: _Measure,
        loom: _Measure = ...,
        loss: _Plain = ...,
        width: _Plain = ...,
        length: _Plain = ...,
    ) -> list[Quantity]: ...

finished_mass_per_area: _FinishedMassPerArea

@final
class _FractionalCover(Formula):
    """Share of the surface that the threads of one direction cover.

    n·d = n × d / 10; e = smaller of (n·d, 1)

    sett: sett
    diameter: diameter of the yarn
    """

    def __call__(self, sett: _Measure, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "diameter"],
        *,
        fractional_cover: _Plain,
        sett: _Measure = ...,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

fractional_cover: _FractionalCover

@final
class _FractionalCoverOfFactor(Formula):
    """Share of the surface that threads cover, from their cover factor and what a gram of yarn
    fills.

    K/K_l = K × √(0.00127323954 × v); e = smaller of (K/K_l, 1)

    factor: cover factor
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
        fractional_cover_of_factor: _Plain,
        factor: _Measure = ...,
        volume: _Measure = ...,
    ) -> list[Quantity]: ...

fractional_cover_of_factor: _FractionalCoverOfFactor

@final
class _FringeMass(Formula):
    """Mass of the fringes of a piece.

    m = 2 × N × q × T × 0.000001

    ends: ends
    fringe: fringe at each end of the piece
    count: count of the warp
    """

    def __call__(self, ends: _Plain, fringe: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        fringe: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "fringe", "count"],
        *,
        fringe_mass: _Measure,
        ends: _Plain = ...,
        fringe: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

fringe_mass: _FringeMass

@final
class _GalceranCoefficient(Formula):
    """Galceran's greatest coefficient of density.

    K = Q / (1 + 0.73 × l)

    material: coefficient of the material
    crossings: intersections for each thread of the other system
    """

    def __call__(self, material: _Plain, crossings: _Plain) -> Quantity: ...
    def working(
        self,
        material: _Plain,
        crossings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["material", "crossings"],
        *,
        galceran_coefficient: _Plain,
        material: _Plain = ...,
        crossings: _Plain = ...,
    ) -> list[Quantity]: ...

galceran_coefficient: _GalceranCoefficient

@final
class _GalceranSett(Formula):
    """Sett by Galceran's coefficient of density.

    Nm = 1000 / T; n = K × √Nm

    coefficient: coefficient of density
    count: yarn count
    """

    def __call__(self, coefficient: _Plain, count: _Measure) -> Quantity: ...
    def working(
        self,
        coefficient: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["coefficient", "count"],
        *,
        galceran_sett: _Measure,
        coefficient: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

galceran_sett: _GalceranSett

@final
class _GreyMass(Formula):
    """Mass of a piece as it leaves the loom: warp with its size, and weft.

    m = m₁ × (1 + z) + m₂

    warp: mass of the warp without size
    size: size, on the warp without it
    weft: mass of the weft
    """

    def __call__(self, warp: _Measure, size: _Plain, weft: _Measure) -> Quantity: ...
    def working(
        self,
        warp: _Measure,
        size: _Plain,
        weft: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp", "size", "weft"],
        *,
        grey_mass: _Measure,
        warp: _Measure = ...,
        size: _Plain = ...,
        weft: _Measure = ...,
    ) -> list[Quantity]: ...

grey_mass: _GreyMass

@final
class _HanksOfWarp(Formula):
    """Hanks of yarn in a warp.

    h = N × W / l

    ends: ends
    length: length of the warp
    hank: length of a hank
    """

    def __call__(self, ends: _Plain, length: _Measure, hank: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        length: _Measure,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "length", "hank"],
        *,
        hanks_of_warp: _Plain,
        ends: _Plain = ...,
        length: _Measure = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_warp: _HanksOfWarp

@final
class _HanksOfWeft(Formula):
    """Hanks of yarn in the weft of a piece.

    h = 100 × p × L × B / l

    width: width in the reed
    length: length of the piece
    picks: picks in the piece
    hank: length of a hank
    """

    def __call__(
        self,
        width: _Measure,
        length: _Measure,
        picks: _Measure,
        hank: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        width: _Measure,
        length: _Measure,
        picks: _Measure,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["width", "length", "picks", "hank"],
        *,
        hanks_of_weft: _Plain,
        width: _Measure = ...,
        length: _Measure = ...,
        picks: _Measure = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_weft: _HanksOfWeft

@final
class _HealdDensity(Formula):
    """How close the heddles stand on a shaft.

    h = n × k / R

    sett: sett in the reed
    on_shaft: ends of the repeat of the draft on the shaft
    repeat: ends in the repeat of the draft
    """

    def __call__(self, sett: _Measure, on_shaft: _Plain, repeat: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        on_shaft: _Plain,
        repeat: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "on_shaft", "repeat"],
        *,
        heald_density: _Measure,
        sett: _Measure = ...,
        on_shaft: _Plain = ...,
        repeat: _Plain = ...,
    ) -> list[Quantity]: ...

heald_density: _HealdDensity

@final
class _IntersectionsInLength(Formula):
    """Intersections that an end makes in a length of cloth.

    i = n × I / R

    picks: picks
    repeat: picks in the repeat
    intersections: intersections of an end in the repeat
    """

    def __call__(self, picks: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity: ...
    def working(
        self,
        picks: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "repeat", "intersections"],
        *,
        intersections_in_length: _Measure,
        picks: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

intersections_in_length: _IntersectionsInLength

@final
class _JamAngle(Formula):
    """Angle of a thread that is jammed: it lies round those it crosses without a straight part.

    p/D = p / D; θ = arctan(p/D / √(1 − p/D × p/D)) × 57.2957795

    spacing: spacing of the threads crossed
    diameters: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameters"],
        *,
        jam_angle: _Measure,
        spacing: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

jam_angle: _JamAngle

@final
class _JamCoverFactor(Formula):
    """Cover factor at which a square plain cloth jams: threads √3 diameters apart both ways.

    K = K_l / 1.73205081

    limit: cover factor at which threads touch
    """

    def __call__(self, limit: _Measure) -> Quantity: ...
    def working(self, limit: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["limit"],
        *,
        jam_cover_factor: _Measure,
        limit: _Measure = ...,
    ) -> list[Quantity]: ...

jam_cover_factor: _JamCoverFactor

@final
class _JamCrimp(Formula):
    """The most crimp that a thread can have between threads at a spacing: it is then jammed.

    p/D = p / D; θ = arctan(p/D / √(1 − p/D × p/D)); c = θ / p/D − 1

    spacing: spacing of the threads crossed
    diameters: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameters"],
        *,
        jam_crimp: _Plain,
        spacing: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

jam_crimp: _JamCrimp

@final
class _JamPicks(Formula):
    """The most picks of plain cloth at a number of ends: both systems jammed, by Peirce.

    D = d₁ + d₂; p₁ = 10 / n₁; cos θ₂ = √(1 − p₁ / D × p₁ / D); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1
    − cos θ₁ × cos θ₁); n₂ = 10 / p₂

    ends: ends
    warp: diameter of the warp
    weft: diameter of the weft
    """

    def __call__(self, ends: _Measure, warp: _Measure, weft: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        warp: _Measure,
        weft: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp", "weft"],
        *,
        jam_picks: _Measure,
        ends: _Measure = ...,
        warp: _Measure = ...,
        weft: _Measure = ...,
    ) -> list[Quantity]: ...

jam_picks: _JamPicks

@final
class _JamPicksOfWeave(Formula):
    """The most picks of any weave at a number of ends: both systems jammed, after Love.

    D = d₁ + d₂; p₁′ = F₂ × 10 / n₁ − (F₂ − 1) × d₁; cos θ₂ = √(1 − p₁ / D × p₁ / D); cos θ₁ = 1
    − cos θ₂; p₂ = D × √(1 − cos θ₁ × cos θ₁); n₂ = 10 × F₁ / (p₂ + (F₁ − 1) × d₂)

    ends: ends
    warp: diameter of the warp
    weft: diameter of the weft
    weft_float: average float of the picks
    warp_float: average float of the ends
    """

    def __call__(
        self,
        ends: _Measure,
        warp: _Measure,
        weft: _Measure,
        weft_float: _Plain,
        warp_float: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        warp: _Measure,
        weft: _Measure,
        weft_float: _Plain,
        warp_float: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp", "weft", "weft_float", "warp_float"],
        *,
        jam_picks_of_weave: _Measure,
        ends: _Measure = ...,
        warp: _Measure = ...,
        weft: _Measure = ...,
        weft_float: _Plain = ...,
        warp_float: _Plain = ...,
    ) -> list[Quantity]: ...

jam_picks_of_weave: _JamPicksOfWeave

@final
class _JamSpacing(Formula):
    """Spacing of the one system where both are jammed, from that of the other.

    cos θ₂ = √(1 − p₁ / D × p₁ / D); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1 − cos θ₁ × cos θ₁)

    spacing: spacing of the other system
    diameters: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameters"],
        *,
        jam_spacing: _Measure,
        spacing: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

jam_spacing: _JamSpacing

@final
class _KnitMass(Formula):
    """Mass of the yarn in a knitted piece: courses, the width of each, and the take-up of its
    loops.

    Y = 100 × c × L × B × u; m = Y × T × 0.000001

    courses: courses
    width: width of the piece
    length: length of the piece
    take_up: take-up: length of yarn over width of course
    count: count
    """

    def __call__(
        self,
        courses: _Measure,
        width: _Measure,
        length: _Measure,
        take_up: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        courses: _Measure,
        width: _Measure,
        length: _Measure,
        take_up: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "width", "length", "take_up", "count"],
        *,
        knit_mass: _Measure,
        courses: _Measure = ...,
        width: _Measure = ...,
        length: _Measure = ...,
        take_up: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass: _KnitMass

@final
class _KnitMassByConstant(Formula):
    """Mass of a square metre of knitting from the constant of its loops: heavier with the count,
    lighter with a longer loop.

    w = K_s × T / (1000 × l)

    constant: constant of the loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

    def __call__(self, constant: _Plain, loop_length: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        constant: _Plain,
        loop_length: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "loop_length", "count"],
        *,
        knit_mass_by_constant: _Measure,
        constant: _Plain = ...,
        loop_length: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass_by_constant: _KnitMassByConstant

@final
class _KnitMassPerArea(Formula):
    """Mass of a square metre of knitting: loops, the yarn in each, and its count.

    w = 10 × S × l × T

    loops: loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

    def __call__(self, loops: _Measure, loop_length: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        loops: _Measure,
        loop_length: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loops", "loop_length", "count"],
        *,
        knit_mass_per_area: _Measure,
        loops: _Measure = ...,
        loop_length: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass_per_area: _KnitMassPerArea

@final
class _KnitTakeUp(Formula):
    """Take-up of a knitted course: yarn in a stitch, and the stitches in a width.

    u = 100 × w × l

    wales: wales: stitches side by side
    stitch: length of yarn in a stitch
    """

    def __call__(self, wales: _Measure, stitch: _Measure) -> Quantity: ...
    def working(
        self,
        wales: _Measure,
        stitch: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wales", "stitch"],
        *,
        knit_take_up: _Plain,
        wales: _Measure = ...,
        stitch: _Measure = ...,
    ) -> list[Quantity]: ...

knit_take_up: _KnitTakeUp

@final
class _LengthOverDiameters(Formula):
    """Length of a thread between those it crosses, over the sum of the diameters.

    l/D = l / D

    length: length between threads crossed
    diameters: sum of the diameters
    """

    def __call__(self, length: _Measure, diameters: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        diameters: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "diameters"],
        *,
        length_over_diameters: _Plain,
        length: _Measure = ...,
        diameters: _Measure = ...,
    ) -> list[Quantity]: ...

length_over_diameters: _LengthOverDiameters

@final
class _LinearDensityOfCloth(Formula):
    """Mass of a running metre of cloth.

    T = 1000 × w × B

    area: mass per area
    width: width
    """

    def __call__(self, area: _Measure, width: _Measure) -> Quantity: ...
    def working(
        self,
        area: _Measure,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["area", "width"],
        *,
        linear_density_of_cloth: _Measure,
        area: _Measure = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

linear_density_of_cloth: _LinearDensityOfCloth

@final
class _LoomMassPerArea(Formula):
    """Mass per area to weave for one wanted after finishing.

    w₁ = w₂ × (1 − s_w) × (1 − s_l) / (1 − m)

    finished: mass per area wanted
    loss: mass lost; negative where the cloth gains
    width: shrinkage in width
    length: shrinkage in length
    """

    def __call__(
        self,
        finished: _Measure,
        loss: _Plain,
        width: _Plain,
        length: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        finished: _Measure,
        loss: _Plain,
        width: _Plain,
        length: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["finished", "loss", "width", "length"],
        *,
        loom_mass_per_area: _Measure,
        finished: _Measure = ...,
        loss: _Plain = ...,
        width: _Plain = ...,
        length: _Plain = ...,
    ) -> list[Quantity]: ...

loom_mass_per_area: _LoomMassPerArea

@final
class _LoomStretch(Formula):
    """How far the warp was stretched on the loom: its parts as they lay under tension against its
    length before.

    ε = (a + w + r) / L − 1

    warp: warp before it was put on the loom
    tied: tied on at the front
    woven: woven, as measured under tension
    left: left at the back
    """

    def __call__(
        self,
        warp: _Measure,
        tied: _Measure,
        woven: _Measure,
        left: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp: _Measure,
        tied: _Measure,
        woven: _Measure,
        left: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp", "tied", "woven", "left"],
        *,
        loom_stretch: _Plain,
        warp: _Measure = ...,
        tied: _Measure = ...,
        woven: _Measure = ...,
        left: _Measure = ...,
    ) -> list[Quantity]: ...

loom_stretch: _LoomStretch

@final
class _LoopConstant(Formula):
    """Munden's constant of a direction: courses, or wales, in a length of yarn of one loop.

    K_c = 100 × n × l

    courses: courses, or wales
    loop_length: length of yarn in a loop
    """

    def __call__(self, courses: _Measure, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        courses: _Measure,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "loop_length"],
        *,
        loop_constant: _Plain,
        courses: _Measure = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

loop_constant: _LoopConstant

@final
class _LoopDensity(Formula):
    """Loops on an area from the length of yarn in one.

    S = K_c × K_w / (100 × l × 100 × l)

    courses: constant of the courses
    wales: constant of the wales
    loop_length: length of yarn in a loop
    """

    def __call__(self, courses: _Plain, wales: _Plain, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        courses: _Plain,
        wales: _Plain,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "wales", "loop_length"],
        *,
        loop_density: _Measure,
        courses: _Plain = ...,
        wales: _Plain = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

loop_density: _LoopDensity

@final
class _LoopForTightness(Formula):
    """The length of yarn in a loop that gives a tightness.

    l = √T / (100 × K)

    count: count
    tightness: tightness factor
    """

    def __call__(self, count: _Measure, tightness: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        tightness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "tightness"],
        *,
        loop_for_tightness: _Measure,
        count: _Measure = ...,
        tightness: _Measure = ...,
    ) -> list[Quantity]: ...

loop_for_tightness: _LoopForTightness

@final
class _LoopShape(Formula):
    """Shape of the loop: courses over wales.

    R = c / w

    courses: courses
    wales: wales
    """

    def __call__(self, courses: _Measure, wales: _Measure) -> Quantity: ...
    def working(
        self,
        courses: _Measure,
        wales: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "wales"],
        *,
        loop_shape: _Plain,
        courses: _Measure = ...,
        wales: _Measure = ...,
    ) -> list[Quantity]: ...

loop_shape: _LoopShape

@final
class _LoopsOnArea(Formula):
    """Loops on an area from courses and wales.

    S = c × w

    courses: courses
    wales: wales
    """

    def __call__(self, courses: _Measure, wales: _Measure) -> Quantity: ...
    def working(
        self,
        courses: _Measure,
        wales: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "wales"],
        *,
        loops_on_area: _Measure,
        courses: _Measure = ...,
        wales: _Measure = ...,
    ) -> list[Quantity]: ...

loops_on_area: _LoopsOnArea

@final
class _MassAfterFinishing(Formula):
    """Mass after a process that loses or gains.

    m₂ = m₁ × (1 − m)

    mass: mass before
    loss: mass lost; negative where the cloth gains
    """

    def __call__(self, mass: _Measure, loss: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "loss"],
        *,
        mass_after_finishing: _Measure,
        mass: _Measure = ...,
        loss: _Plain = ...,
    ) -> list[Quantity]: ...

mass_after_finishing: _MassAfterFinishing

@final
class _MassBeforeFinishing(Formula):
    """Mass before a process, from what is to be left after it.

    m₁ = m₂ / (1 − m)

    mass: mass after
    loss: mass lost; negative where the cloth gains
    """

    def __call__(self, mass: _Measure, loss: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "loss"],
        *,
        mass_before_finishing: _Measure,
        mass: _Measure = ...,
        loss: _Plain = ...,
    ) -> list[Quantity]: ...

mass_before_finishing: _MassBeforeFinishing

@final
class _MassLossFound(Formula):
    """Mass lost, from the mass before and after.

    m = 1 − m₂ / m₁

    before: mass before
    after: mass after
    """

    def __call__(self, before: _Measure, after: _Measure) -> Quantity: ...
    def working(
        self,
        before: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after"],
        *,
        mass_loss_found: _Plain,
        before: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

mass_loss_found: _MassLossFound

@final
class _MassLossOfAreas(Formula):
    """Mass lost, from the mass per area before and after and what the cloth shrank.

    m = 1 − w₂ × (1 − s_w) × (1 − s_l) / w₁

    before: mass per area before
    after: mass per area after
    width: shrinkage in width
    length: shrinkage in length
    """

    def __call__(
        self,
        before: _Measure,
        after: _Measure,
        width: _Plain,
        length: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        before: _Measure,
        after: _Measure,
        width: _Plain,
        length: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after", "width", "length"],
        *,
        mass_loss_of_areas: _Plain,
        before: _Measure = ...,
        after: _Measure = ...,
        width: _Plain = ...,
        length: _Plain = ...,
    ) -> list[Quantity]: ...

mass_loss_of_areas: _MassLossOfAreas

@final
class _MassOfPiece(Formula):
    """Mass of a piece from its mass per area.

    m = w × B × L / 1000

    area: mass per area
    width: width
    length: length
    """

    def __call__(self, area: _Measure, width: _Measure, length: _Measure) -> Quantity: ...
    def working(
        self,
        area: _Measure,
        width: _Measure,
        length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["area", "width", "length"],
        *,
        mass_of_piece: _Measure,
        area: _Measure = ...,
        width: _Measure = ...,
        length: _Measure = ...,
    ) -> list[Quantity]: ...

mass_of_piece: _MassOfPiece

@final
class _MassOfThreads(Formula):
    """Mass that the warp alone, or the weft alone, adds to a square metre of cloth.

    w = n × T × (1 + c) / 10

    sett: sett of these threads
    count: their count
    crimp: their crimp
    """

    def __call__(self, sett: _Measure, count: _Measure, crimp: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        count: _Measure,
        crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "count", "crimp"],
        *,
        mass_of_threads: _Measure,
        sett: _Measure = ...,
        count: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_of_threads: _MassOfThreads

@final
class _MassPerArea(Formula):
    """Mass of a square metre of cloth from its threads.

    w₁ = n₁ × T₁ × (1 + c₁) / 10; w₂ = n₂ × T₂ × (1 + c₂) / 10; w = w₁ + w₂

    ends: ends
    warp: count of the warp
    warp_crimp: crimp of the warp
    picks: picks
    weft: count of the weft
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        ends: _Measure,
        warp: _Measure,
        warp_crimp: _Plain,
        picks: _Measure,
        weft: _Measure,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        warp: _Measure,
        warp_crimp: _Plain,
        picks: _Measure,
        weft: _Measure,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp", "warp_crimp", "picks", "weft", "weft_crimp"],
        *,
        mass_per_area: _Measure,
        ends: _Measure = ...,
        warp: _Measure = ...,
        warp_crimp: _Plain = ...,
        picks: _Measure = ...,
        weft: _Measure = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_per_area: _MassPerArea

@final
class _MassPerAreaByMultiplier(Formula):
    """Mass per area as the trade's pages have it: threads in an inch over the cotton count, times a
    rounded multiplier.

    t₁ = n₁ × T₁ × 0.00430113902 × (1 + c₁); t₂ = n₂ × T₂ × 0.00430113902 × (1 + c₂); w = k × (t₁
    + t₂)

    multiplier: multiplier, for threads in an inch, cotton counts and g/m²
    ends: ends
    warp: count of the warp
    warp_crimp: crimp of the warp
    picks: picks
    weft: count of the weft
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        multiplier: _Plain,
        ends: _Measure,
        warp: _Measure,
        warp_crimp: _Plain,
        picks: _Measure,
        weft: _Measure,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        multiplier: _Plain,
        ends: _Measure,
        warp: _Measure,
        warp_crimp: _Plain,
        picks: _Measure,
        weft: _Measure,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["multiplier", "ends", "warp", "warp_crimp", "picks", "weft", "weft_crimp"],
        *,
        mass_per_area_by_multiplier: _Measure,
        multiplier: _Plain = ...,
        ends: _Measure = ...,
        warp: _Measure = ...,
        warp_crimp: _Plain = ...,
        picks: _Measure = ...,
        weft: _Measure = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_per_area_by_multiplier: _MassPerAreaByMultiplier

@final
class _MassPerAreaOfCloth(Formula):
    """Mass per area from the mass of a running metre.

    w = T / (1000 × B)

    running: mass of a running metre
    width: width
    """

    def __call__(self, running: _Measure, width: _Measure) -> Quantity: ...
    def working(
        self,
        running: _Measure,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["running", "width"],
        *,
        mass_per_area_of_cloth: _Measure,
        running: _Measure = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

mass_per_area_of_cloth: _MassPerAreaOfCloth

@final
class _MaximumSett(Formula):
    """The closest sett of a weave by diameters and intersections, for a square cloth.

    n = D × R / (R + I)

    diameters: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(self, diameters: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity: ...
    def working(
        self,
        diameters: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameters", "repeat", "intersections"],
        *,
        maximum_sett: _Measure,
        diameters: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett: _MaximumSett

@final
class _MaximumSettFromWraps(Formula):
    """The closest sett from wraps: these are fewer than diameters.

    n = w / c × R / (R + I)

    wraps: wraps
    reach: wraps for a diameter
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        wraps: _Measure,
        reach: _Plain,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        wraps: _Measure,
        reach: _Plain,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps", "reach", "repeat", "intersections"],
        *,
        maximum_sett_from_wraps: _Measure,
        wraps: _Measure = ...,
        reach: _Plain = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett_from_wraps: _MaximumSettFromWraps

@final
class _MaximumSettUnlike(Formula):
    """The closest sett of one system by diameters and intersections, where the other is of another
    yarn.

    n = R / (R / D₁ + I / D₂)

    own: diameters of the yarn that is set, side by side
    crossing: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

    def __call__(
        self,
        own: _Measure,
        crossing: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        own: _Measure,
        crossing: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["own", "crossing", "repeat", "intersections"],
        *,
        maximum_sett_unlike: _Measure,
        own: _Measure = ...,
        crossing: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett_unlike: _MaximumSettUnlike

@final
class _MilasiusFirmness(Formula):
    """Firmness of a cloth by Milašius: 1 would be the closest that round threads allow.

    a = 0.666666667 × √(T₁ / T₂); S = exp((ln(S₂) + a × ln(S₁)) / (1 + a)); φ = 0.00618038723 / P
    × √(T / ρ) × S

    weave: weave factor
    count: average count
    density: density of the fibre
    warp: count of the warp
    weft: count of the weft
    ends: ends
    picks: picks
    """

    def __call__(
        self,
        weave: _Plain,
        count: _Measure,
        density: _Measure,
        warp: _Measure,
        weft: _Measure,
        ends: _Measure,
        picks: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        weave: _Plain,
        count: _Measure,
        density: _Measure,
        warp: _Measure,
        weft: _Measure,
        ends: _Measure,
        picks: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["weave", "count", "density", "warp", "weft", "ends", "picks"],
        *,
        milasius_firmness: _Plain,
        weave: _Plain = ...,
        count: _Measure = ...,
        density: _Measure = ...,
        warp: _Measure = ...,
        weft: _Measure = ...,
        ends: _Measure = ...,
        picks: _Measure = ...,
    ) -> list[Quantity]: ...

milasius_firmness: _MilasiusFirmness

@final
class _ModularLength(Formula):
    """Length of a thread from one thread that it crosses to the next.

    l = p × (1 + c)

    spacing: spacing of the threads crossed
    crimp: crimp
    """

    def __call__(self, spacing: _Measure, crimp: _Plain) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "crimp"],
        *,
        modular_length: _Measure,
        spacing: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

modular_length: _ModularLength

@final
class _OffLoomWidth(Formula):
    """Width off the loom.

    b₁ = B × (1 − d)

    reed: width in the reed
    draw_in: draw-in, reed to off the loom
    """

    def __call__(self, reed: _Measure, draw_in: _Plain) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        draw_in: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "draw_in"],
        *,
        off_loom_width: _Measure,
        reed: _Measure = ...,
        draw_in: _Plain = ...,
    ) -> list[Quantity]: ...

off_loom_width: _OffLoomWidth

@final
class _OverWidthForShrinkage(Formula):
    """How much wider to weave, on the finished size, for a shrinkage.

    x = s / (1 − s)

    shrinkage: shrinkage
    """

    def __call__(self, shrinkage: _Plain) -> Quantity: ...
    def working(self, shrinkage: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["shrinkage"],
        *,
        over_width_for_shrinkage: _Plain,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

over_width_for_shrinkage: _OverWidthForShrinkage

@final
class _OverWidthFound(Formula):
    """How much wider it is woven than it is finished.

    x = x₁ / x₂ − 1

    before: size before
    after: size finished
    """

    def __call__(self, before: _Measure, after: _Measure) -> Quantity: ...
    def working(
        self,
        before: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after"],
        *,
        over_width_found: _Plain,
        before: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

over_width_found: _OverWidthFound

@final
class _PackagesForLength(Formula):
    """Packages for a length of yarn: bobbins, pirns, cones.

    z = round up(Y / l − 0.000001)

    length: length of yarn
    package: length on a package
    """

    def __call__(self, length: _Measure, package: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        package: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "package"],
        *,
        packages_for_length: _Plain,
        length: _Measure = ...,
        package: _Measure = ...,
    ) -> list[Quantity]: ...

packages_for_length: _PackagesForLength

@final
class _PicksInPiece(Formula):
    """Picks in a piece.

    p = 100 × x × L / (1 − s)

    length: finished length of the woven part
    shrinkage: shrinkage in length, off the loom to finished
    picks: picks off the loom
    """

    def __call__(self, length: _Measure, shrinkage: _Plain, picks: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        shrinkage: _Plain,
        picks: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "shrinkage", "picks"],
        *,
        picks_in_piece: _Plain,
        length: _Measure = ...,
        shrinkage: _Plain = ...,
        picks: _Measure = ...,
    ) -> list[Quantity]: ...

picks_in_piece: _PicksInPiece

@final
class _PlainThickness(Formula):
    """Thickness of plain cloth: the higher of the two crowns.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; H = (no answer if D < h₁, else
    greater of (h₁ + d₁, h₂ + d₂))

    picks: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

    def __call__(
        self,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "warp_crimp", "warp_diameter", "weft_diameter"],
        *,
        plain_thickness: _Measure,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

plain_thickness: _PlainThickness

@final
class _RacetrackHeightByRule(Formula):
    """Height of the wave of a thread over flattened threads, by the rule of the root.

    h = k × √(c × p × (p − (a − b)))

    spacing: spacing of the threads crossed
    crimp: crimp
    width: width of the threads crossed
    thickness: their thickness
    factor: factor
    """

    def __call__(
        self,
        spacing: _Measure,
        crimp: _Plain,
        width: _Measure,
        thickness: _Measure,
        factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        crimp: _Plain,
        width: _Measure,
        thickness: _Measure,
        factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "crimp", "width", "thickness", "factor"],
        *,
        racetrack_height_by_rule: _Measure,
        spacing: _Measure = ...,
        crimp: _Plain = ...,
        width: _Measure = ...,
        thickness: _Measure = ...,
        factor: _Plain = ...,
    ) -> list[Quantity]: ...

racetrack_height_by_rule: _RacetrackHeightByRule

@final
class _RacetrackSpacing(Formula):
    """Spacing of flattened threads without the straight part of their section.

    p′ = p − (a − b)

    spacing: spacing of the threads crossed
    width: their width
    thickness: their thickness
    """

    def __call__(self, spacing: _Measure, width: _Measure, thickness: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        width: _Measure,
        thickness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "width", "thickness"],
        *,
        racetrack_spacing: _Measure,
        spacing: _Measure = ...,
        width: _Measure = ...,
        thickness: _Measure = ...,
    ) -> list[Quantity]: ...

racetrack_spacing: _RacetrackSpacing

@final
class _RacetrackWeftCrimp(Formula):
    """Crimp of the weft in plain cloth of flattened threads, from that of the warp.

    D = b₁ + b₂; f₂ = a₂ − b₂; p₂ = 10 / n₂; p₂′ = p₂ − f₂; l₁′ = p₂ × (1 + c₁) − f₂; θ₁ = root
    of (l₁′ − D × θ₁) × cos(θ₁) + D × sin(θ₁) − p₂′; h₁ = (l₁′ − D × θ₁) × sin(θ₁) + D × (1 −
    cos(θ₁)); f₁ = a₁ − b₁; p₁ = 10 / n₁; p₁′ = p₁ − f₁; θ₂ = 2 × arctan((D − h₁) / (p₁′ + √(p₁′
    × p₁′ − (D − h₁) × (2 × D − (D − h₁))))); l₂ = D × θ₂ + (p₁′ − D × sin(θ₂)) / cos(θ₂) + f₁;
    c₂ = (no answer if D < h₁, else l₂ / p₁ − 1)

    ends: ends
    picks: picks
    warp_crimp: crimp of the warp
    warp_width: width of the warp thread
    warp_thickness: thickness of the warp thread
    weft_width: width of the weft thread
    weft_thickness: thickness of the weft thread
    """

    def __call__(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_width: _Measure,
        warp_thickness: _Measure,
        weft_width: _Measure,
        weft_thickness: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_width: _Measure,
        warp_thickness: _Measure,
        weft_width: _Measure,
        weft_thickness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "ends",
            "picks",
            "warp_crimp",
            "warp_width",
            "warp_thickness",
            "weft_width",
            "weft_thickness",
        ],
        *,
        racetrack_weft_crimp: _Plain,
        ends: _Measure = ...,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_width: _Measure = ...,
        warp_thickness: _Measure = ...,
        weft_width: _Measure = ...,
        weft_thickness: _Measure = ...,
    ) -> list[Quantity]: ...

racetrack_weft_crimp: _RacetrackWeftCrimp

@final
class _ReedForSett(Formula):
    """The reed for a sett.

    r = n / e

    sett: sett in the reed
    ends_per_dent: ends in a dent
    """

    def __call__(self, sett: _Measure, ends_per_dent: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        ends_per_dent: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "ends_per_dent"],
        *,
        reed_for_sett: _Measure,
        sett: _Measure = ...,
        ends_per_dent: _Plain = ...,
    ) -> list[Quantity]: ...

reed_for_sett: _ReedForSett

@final
class _ReedWidth(Formula):
    """Width in the reed for a finished width.

    B = b / ((1 − s) × (1 − d))

    finished: finished width
    shrinkage: shrinkage in width, off the loom to finished
    draw_in: draw-in, reed to off the loom
    """

    def __call__(self, finished: _Measure, shrinkage: _Plain, draw_in: _Plain) -> Quantity: ...
    def working(
        self,
        finished: _Measure,
        shrinkage: _Plain,
        draw_in: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["finished", "shrinkage", "draw_in"],
        *,
        reed_width: _Measure,
        finished: _Measure = ...,
        shrinkage: _Plain = ...,
        draw_in: _Plain = ...,
    ) -> list[Quantity]: ...

reed_width: _ReedWidth

@final
class _RunningMassAfter(Formula):
    """Mass of a running length after finishing.

    T₂ = T₁ × (1 − m) / (1 − s_l)

    running: mass of a running length before
    loss: mass lost; negative where the cloth gains
    length: shrinkage in length
    """

    def __call__(self, running: _Measure, loss: _Plain, length: _Plain) -> Quantity: ...
    def working(
        self,
        running: _Measure,
        loss: _Plain,
        length: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["running", "loss", "length"],
        *,
        running_mass_after: _Measure,
        running: _Measure = ...,
        loss: _Plain = ...,
        length: _Plain = ...,
    ) -> list[Quantity]: ...

running_mass_after: _RunningMassAfter

@final
class _SettAfterShrinkage(Formula):
    """Sett after the cloth has shrunk across those threads.

    n₂ = n₁ / (1 − s)

    sett: sett before
    shrinkage: shrinkage across the threads
    """

    def __call__(self, sett: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "shrinkage"],
        *,
        sett_after_shrinkage: _Measure,
        sett: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

sett_after_shrinkage: _SettAfterShrinkage

@final
class _SettBeforeShrinkage(Formula):
    """Sett before the cloth shrinks across those threads.

    n₁ = n₂ × (1 − s)

    sett: sett after
    shrinkage: shrinkage across the threads
    """

    def __call__(self, sett: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "shrinkage"],
        *,
        sett_before_shrinkage: _Measure,
        sett: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

sett_before_shrinkage: _SettBeforeShrinkage

@final
class _SettForCount(Formula):
    """The sett for another count of yarn at the same firmness, in the same weave.

    n₂ = n₁ × √(T₁ / T₂)

    sett: sett of the cloth at hand
    count: count of its yarn
    new_count: count of the new yarn
    """

    def __call__(self, sett: _Measure, count: _Measure, new_count: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        count: _Measure,
        new_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "count", "new_count"],
        *,
        sett_for_count: _Measure,
        sett: _Measure = ...,
        count: _Measure = ...,
        new_count: _Measure = ...,
    ) -> list[Quantity]: ...

sett_for_count: _SettForCount

@final
class _SettForCoverFactor(Formula):
    """The sett that gives a cover factor.

    n = 10 × K / √T

    factor: cover factor
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
        sett_for_cover_factor: _Measure,
        factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

sett_for_cover_factor: _SettForCoverFactor

@final
class _SettForWeave(Formula):
    """The sett for another weave of the same yarn at the same firmness.

    n₂ = n₁ × (R₁ + I₁) / R₁ / ((R₂ + I₂) / R₂)

    sett: sett of the cloth at hand
    repeat: threads in its repeat
    intersections: intersections in its repeat
    new_repeat: threads in the new repeat
    new_intersections: intersections in the new repeat
    """

    def __call__(
        self,
        sett: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        new_repeat: _Plain,
        new_intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        new_repeat: _Plain,
        new_intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "repeat", "intersections", "new_repeat", "new_intersections"],
        *,
        sett_for_weave: _Measure,
        sett: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
        new_repeat: _Plain = ...,
        new_intersections: _Plain = ...,
    ) -> list[Quantity]: ...

sett_for_weave: _SettForWeave

@final
class _SettForWeight(Formula):
    """The sett for a heavier or lighter cloth of the same weave and firmness, in the yarn that
    suits it.

    n₂ = n₁ / w

    sett: sett of the cloth at hand
    ratio: new weight over the old
    """

    def __call__(self, sett: _Measure, ratio: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "ratio"],
        *,
        sett_for_weight: _Measure,
        sett: _Measure = ...,
        ratio: _Plain = ...,
    ) -> list[Quantity]: ...

sett_for_weight: _SettForWeight

@final
class _SettFromWraps(Formula):
    """A sett by a rule of wraps.

    n = w × s

    wraps: wraps
    share: share of the wraps
    """

    def __call__(self, wraps: _Measure, share: _Plain) -> Quantity: ...
    def working(
        self,
        wraps: _Measure,
        share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps", "share"],
        *,
        sett_from_wraps: _Measure,
        wraps: _Measure = ...,
        share: _Plain = ...,
    ) -> list[Quantity]: ...

sett_from_wraps: _SettFromWraps

@final
class _SettInReed(Formula):
    """Ends across the reed.

    n = r × e

    reed: reed
    ends_per_dent: ends in a dent
    """

    def __call__(self, reed: _Measure, ends_per_dent: _Plain) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        ends_per_dent: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "ends_per_dent"],
        *,
        sett_in_reed: _Measure,
        reed: _Measure = ...,
        ends_per_dent: _Plain = ...,
    ) -> list[Quantity]: ...

sett_in_reed: _SettInReed

@final
class _ShareOfMaximum(Formula):
    """How much of the closest sett a sett is.

    s = n / n₀

    sett: sett
    maximum: closest sett by a theory
    """

    def __call__(self, sett: _Measure, maximum: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        maximum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "maximum"],
        *,
        share_of_maximum: _Plain,
        sett: _Measure = ...,
        maximum: _Measure = ...,
    ) -> list[Quantity]: ...

share_of_maximum: _ShareOfMaximum

@final
class _ShrinkageFound(Formula):
    """Shrinkage from a size before and after.

    s = 1 − x₂ / x₁

    before: size before
    after: size after
    """

    def __call__(self, before: _Measure, after: _Measure) -> Quantity: ...
    def working(
        self,
        before: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["before", "after"],
        *,
        shrinkage_found: _Plain,
        before: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

shrinkage_found: _ShrinkageFound

@final
class _ShrinkageOfChange(Formula):
    """Shrinkage, as the mill counts it, of a dimensional change of ISO 5077.

    s = 0 − D

    change: dimensional change
    """

    def __call__(self, change: _Plain) -> Quantity: ...
    def working(self, change: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["change"],
        *,
        shrinkage_of_change: _Plain,
        change: _Plain = ...,
    ) -> list[Quantity]: ...

shrinkage_of_change: _ShrinkageOfChange

@final
class _ShrinkageOfOverWidth(Formula):
    """Shrinkage of a cloth that is woven wider than it is finished.

    s = x / (1 + x)

    over_width: over-width
    """

    def __call__(self, over_width: _Plain) -> Quantity: ...
    def working(
        self,
        over_width: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["over_width"],
        *,
        shrinkage_of_over_width: _Plain,
        over_width: _Plain = ...,
    ) -> list[Quantity]: ...

shrinkage_of_over_width: _ShrinkageOfOverWidth

@final
class _SizeAfterShrinkage(Formula):
    """A length or width after it has shrunk.

    x₂ = x₁ × (1 − s)

    size: size before
    shrinkage: shrinkage
    """

    def __call__(self, size: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        size: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size", "shrinkage"],
        *,
        size_after_shrinkage: _Measure,
        size: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

size_after_shrinkage: _SizeAfterShrinkage

@final
class _SizeBeforeShrinkage(Formula):
    """A length or width before it shrinks.

    x₁ = x₂ / (1 − s)

    size: size after
    shrinkage: shrinkage
    """

    def __call__(self, size: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        size: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size", "shrinkage"],
        *,
        size_before_shrinkage: _Measure,
        size: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

size_before_shrinkage: _SizeBeforeShrinkage

@final
class _SizeForOverWidth(Formula):
    """Size to weave for a finished size and an over-width.

    x₁ = x₂ × (1 + x)

    size: size finished
    over_width: over-width
    """

    def __call__(self, size: _Measure, over_width: _Plain) -> Quantity: ...
    def working(
        self,
        size: _Measure,
        over_width: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size", "over_width"],
        *,
        size_for_over_width: _Measure,
        size: _Measure = ...,
        over_width: _Plain = ...,
    ) -> list[Quantity]: ...

size_for_over_width: _SizeForOverWidth

@final
class _SizeMass(Formula):
    """Mass of the size on a warp.

    m_z = m₁ × z

    warp: mass of the warp without size
    size: size, on the warp without it
    """

    def __call__(self, warp: _Measure, size: _Plain) -> Quantity: ...
    def working(
        self,
        warp: _Measure,
        size: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp", "size"],
        *,
        size_mass: _Measure,
        warp: _Measure = ...,
        size: _Plain = ...,
    ) -> list[Quantity]: ...

size_mass: _SizeMass

@final
class _StitchConstant(Formula):
    """Constant of the loops on an area, from those of courses and wales.

    K_s = K_c × K_w

    courses: constant of the courses
    wales: constant of the wales
    """

    def __call__(self, courses: _Plain, wales: _Plain) -> Quantity: ...
    def working(
        self,
        courses: _Plain,
        wales: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "wales"],
        *,
        stitch_constant: _Plain,
        courses: _Plain = ...,
        wales: _Plain = ...,
    ) -> list[Quantity]: ...

stitch_constant: _StitchConstant

@final
class _TakeUpFound(Formula):
    """Take-up of the warp from the yarn that was woven and the cloth when it lies relaxed.

    u = 1 − L / l

    yarn: yarn, unstretched
    cloth: cloth, relaxed
    """

    def __call__(self, yarn: _Measure, cloth: _Measure) -> Quantity: ...
    def working(
        self,
        yarn: _Measure,
        cloth: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn", "cloth"],
        *,
        take_up_found: _Plain,
        yarn: _Measure = ...,
        cloth: _Measure = ...,
    ) -> list[Quantity]: ...

take_up_found: _TakeUpFound

@final
class _TaylorPlainSett(Formula):
    """The closest sett of a balanced plain cloth by Taylor: half of the diameters and a little
    more.

    n = D / 2 × (1 + a)

    diameters: diameters side by side
    allowance: allowance
    """

    def __call__(self, diameters: _Measure, allowance: _Plain) -> Quantity: ...
    def working(
        self,
        diameters: _Measure,
        allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameters", "allowance"],
        *,
        taylor_plain_sett: _Measure,
        diameters: _Measure = ...,
        allowance: _Plain = ...,
    ) -> list[Quantity]: ...

taylor_plain_sett: _TaylorPlainSett

@final
class _TaylorTakeUp(Formula):
    """What the warp must be longer than the cloth, by Taylor's rule for cotton.

    N = 590.541247 / T; c = 2.54 × i × m / N / 100

    intersections: intersections of an end
    multiplier: multiplier
    weft: count of the weft
    """

    def __call__(self, intersections: _Measure, multiplier: _Plain, weft: _Measure) -> Quantity: ...
    def working(
        self,
        intersections: _Measure,
        multiplier: _Plain,
        weft: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["intersections", "multiplier", "weft"],
        *,
        taylor_take_up: _Plain,
        intersections: _Measure = ...,
        multiplier: _Plain = ...,
        weft: _Measure = ...,
    ) -> list[Quantity]: ...

taylor_take_up: _TaylorTakeUp

@final
class _ThicknessByRule(Formula):
    """Thickness of plain cloth, its waves by the rule of the root.

    h₁ = k × 10 / n₂ × √c₁; h₂ = d₁ + d₂ − h₁; H = (no answer if h₂ < 0, else greater of (h₁ +
    d₁, h₂ + d₂))

    picks: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    factor: factor
    """

    def __call__(
        self,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "warp_crimp", "warp_diameter", "weft_diameter", "factor"],
        *,
        thickness_by_rule: _Measure,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        factor: _Plain = ...,
    ) -> list[Quantity]: ...

thickness_by_rule: _ThicknessByRule

@final
class _ThreadSpacing(Formula):
    """Spacing of threads from their sett.

    p = 10 / n

    sett: sett
    """

    def __call__(self, sett: _Measure) -> Quantity: ...
    def working(self, sett: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett"],
        *,
        thread_spacing: _Measure,
        sett: _Measure = ...,
    ) -> list[Quantity]: ...

thread_spacing: _ThreadSpacing

@final
class _TightnessFactor(Formula):
    """How tightly a yarn is knitted for its count; the knitter's cover factor.

    K = √T / (100 × l)

    count: count
    loop_length: length of yarn in a loop
    """

    def __call__(self, count: _Measure, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "loop_length"],
        *,
        tightness_factor: _Measure,
        count: _Measure = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

tightness_factor: _TightnessFactor

@final
class _TotalCover(Formula):
    """Share of the surface that warp and weft cover together.

    e = e₁ + e₂ − e₁ × e₂

    warp: fractional cover of the warp
    weft: fractional cover of the weft
    """

    def __call__(self, warp: _Plain, weft: _Plain) -> Quantity: ...
    def working(
        self,
        warp: _Plain,
        weft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp", "weft"],
        *,
        total_cover: _Plain,
        warp: _Plain = ...,
        weft: _Plain = ...,
    ) -> list[Quantity]: ...

total_cover: _TotalCover

@final
class _WarpForPiece(Formula):
    """Warp for a piece, its fringes included.

    l = L / (1 − s) / (1 − u) + 2 × q

    length: finished length of the woven part
    shrinkage: shrinkage in length, off the loom to finished
    take_up: take-up of the warp
    fringe: fringe at each end
    """

    def __call__(
        self,
        length: _Measure,
        shrinkage: _Plain,
        take_up: _Plain,
        fringe: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        shrinkage: _Plain,
        take_up: _Plain,
        fringe: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "shrinkage", "take_up", "fringe"],
        *,
        warp_for_piece: _Measure,
        length: _Measure = ...,
        shrinkage: _Plain = ...,
        take_up: _Plain = ...,
        fringe: _Measure = ...,
    ) -> list[Quantity]: ...

warp_for_piece: _WarpForPiece

@final
class _WarpLength(Formula):
    """Length of a warp for a number of pieces.

    W = l × n + a

    piece: warp for a piece
    pieces: pieces
    waste: waste of the warp
    """

    def __call__(self, piece: _Measure, pieces: _Plain, waste: _Measure) -> Quantity: ...
    def working(
        self,
        piece: _Measure,
        pieces: _Plain,
        waste: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["piece", "pieces", "waste"],
        *,
        warp_length: _Measure,
        piece: _Measure = ...,
        pieces: _Plain = ...,
        waste: _Measure = ...,
    ) -> list[Quantity]: ...

warp_length: _WarpLength

@final
class _WarpMass(Formula):
    """Mass of the yarn in a warp.

    m₁ = N × W × T × 0.000001

    ends: ends
    length: length of the warp
    count: count of the warp
    """

    def __call__(self, ends: _Plain, length: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        length: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "length", "count"],
        *,
        warp_mass: _Measure,
        ends: _Plain = ...,
        length: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

warp_mass: _WarpMass

@final
class _WarpSections(Formula):
    """Sections in which a mill warp is made.

    S = round up(N / b − 0.000001)

    ends: ends of the warp
    section: ends in a section: the bobbins in the creel
    """

    def __call__(self, ends: _Plain, section: _Plain) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        section: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "section"],
        *,
        warp_sections: _Plain,
        ends: _Plain = ...,
        section: _Plain = ...,
    ) -> list[Quantity]: ...

warp_sections: _WarpSections

@final
class _WarpYarn(Formula):
    """Yarn in a warp.

    Y = N × W

    ends: ends
    length: length of the warp
    """

    def __call__(self, ends: _Plain, length: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "length"],
        *,
        warp_yarn: _Measure,
        ends: _Plain = ...,
        length: _Measure = ...,
    ) -> list[Quantity]: ...

warp_yarn: _WarpYarn

@final
class _WeftCrimp(Formula):
    """Crimp of the weft in plain cloth, from that of the warp.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; p₁ = 10 / n₁; s₂ = √(p₁ × p₁ −
    h₂ × (2 × D − h₂)); θ₂ = 2 × arctan(h₂ / (p₁ + s₂)); l₂ = D × θ₂ + s₂; c₂ = (no answer if D <
    h₁, else l₂ / p₁ − 1)

    ends: ends
    picks: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

    def __call__(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "picks", "warp_crimp", "warp_diameter", "weft_diameter"],
        *,
        weft_crimp: _Plain,
        ends: _Measure = ...,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

weft_crimp: _WeftCrimp

@final
class _WeftCrimpByRule(Formula):
    """Crimp of the weft in plain cloth from that of the warp, by the rule of the root.

    h₁ = k × 10 / n₂ × √c₁; h₂ = d₁ + d₂ − h₁; √c₂ = h₂ × n₁ / (10 × k); c₂ = (no answer if h₂ <
    0, else √c₂ × √c₂)

    ends: ends
    picks: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    factor: factor
    """

    def __call__(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Measure,
        picks: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "picks", "warp_crimp", "warp_diameter", "weft_diameter", "factor"],
        *,
        weft_crimp_by_rule: _Plain,
        ends: _Measure = ...,
        picks: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        factor: _Plain = ...,
    ) -> list[Quantity]: ...

weft_crimp_by_rule: _WeftCrimpByRule

@final
class _WeftForPiece(Formula):
    """Weft for a piece.

    y = p × (B + b)

    picks: picks
    width: width in the reed
    turn: allowance for the turn at the selvedge, for each pick
    """

    def __call__(self, picks: _Plain, width: _Measure, turn: _Measure) -> Quantity: ...
    def working(
        self,
        picks: _Plain,
        width: _Measure,
        turn: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "width", "turn"],
        *,
        weft_for_piece: _Measure,
        picks: _Plain = ...,
        width: _Measure = ...,
        turn: _Measure = ...,
    ) -> list[Quantity]: ...

weft_for_piece: _WeftForPiece

@final
class _WeftMass(Formula):
    """Mass of the weft in a length of cloth.

    m₂ = 100 × p × L × B × T × 0.000001

    width: width in the reed
    length: length of the cloth
    picks: picks in the cloth
    count: count of the weft
    """

    def __call__(
        self,
        width: _Measure,
        length: _Measure,
        picks: _Measure,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        width: _Measure,
        length: _Measure,
        picks: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["width", "length", "picks", "count"],
        *,
        weft_mass: _Measure,
        width: _Measure = ...,
        length: _Measure = ...,
        picks: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

weft_mass: _WeftMass

@final
class _WeftYarn(Formula):
    """Weft for a number of pieces, with waste.

    Y = y × n × (1 + w)

    piece: weft for a piece
    pieces: pieces
    waste: waste, on the weft woven in
    """

    def __call__(self, piece: _Measure, pieces: _Plain, waste: _Plain) -> Quantity: ...
    def working(
        self,
        piece: _Measure,
        pieces: _Plain,
        waste: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["piece", "pieces", "waste"],
        *,
        weft_yarn: _Measure,
        piece: _Measure = ...,
        pieces: _Plain = ...,
        waste: _Plain = ...,
    ) -> list[Quantity]: ...

weft_yarn: _WeftYarn

@final
class _WholeEnds(Formula):
    """Ends that fill whole dents within a width.

    N = round down(100 × r × W + 0.000001) × e

    reed: reed
    ends_per_dent: ends in a dent
    width: width in the reed
    """

    def __call__(self, reed: _Measure, ends_per_dent: _Plain, width: _Measure) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        ends_per_dent: _Plain,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "ends_per_dent", "width"],
        *,
        whole_ends: _Plain,
        reed: _Measure = ...,
        ends_per_dent: _Plain = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

whole_ends: _WholeEnds

@final
class _WorkingSett(Formula):
    """The sett to weave, as a share of the closest.

    n = n₀ × s

    maximum: closest sett
    share: share of it
    """

    def __call__(self, maximum: _Measure, share: _Plain) -> Quantity: ...
    def working(
        self,
        maximum: _Measure,
        share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["maximum", "share"],
        *,
        working_sett: _Measure,
        maximum: _Measure = ...,
        share: _Plain = ...,
    ) -> list[Quantity]: ...

working_sett: _WorkingSett

@final
class _YarnInCloth(Formula):
    """Yarn in a length of cloth, from the crimp.

    l = L × (1 + c)

    cloth: length of the cloth
    crimp: crimp
    """

    def __call__(self, cloth: _Measure, crimp: _Plain) -> Quantity: ...
    def working(
        self,
        cloth: _Measure,
        crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cloth", "crimp"],
        *,
        yarn_in_cloth: _Measure,
        cloth: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

yarn_in_cloth: _YarnInCloth

@final
class _YarnInPiece(Formula):
    """Yarn in a warp and its weft together.

    Y = N × W + p × B

    ends: ends
    warp: length of the warp
    picks: picks
    width: width in the reed
    """

    def __call__(
        self,
        ends: _Plain,
        warp: _Measure,
        picks: _Plain,
        width: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp: _Measure,
        picks: _Plain,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp", "picks", "width"],
        *,
        yarn_in_piece: _Measure,
        ends: _Plain = ...,
        warp: _Measure = ...,
        picks: _Plain = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_in_piece: _YarnInPiece

@final
class _YarnShrinkageInCloth(Formula):
    """How much the yarn itself shrank in a cloth that shrank while its crimp changed.

    s_y = 1 − (1 − s) × (1 + c₂) / (1 + c₁)

    shrinkage: shrinkage of the cloth along the yarn
    before: crimp before
    after: crimp after
    """

    def __call__(self, shrinkage: _Plain, before: _Plain, after: _Plain) -> Quantity: ...
    def working(
        self,
        shrinkage: _Plain,
        before: _Plain,
        after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["shrinkage", "before", "after"],
        *,
        yarn_shrinkage_in_cloth: _Plain,
        shrinkage: _Plain = ...,
        before: _Plain = ...,
        after: _Plain = ...,
    ) -> list[Quantity]: ...

yarn_shrinkage_in_cloth: _YarnShrinkageInCloth
