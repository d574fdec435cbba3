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

    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

    def __call__(self, width_shrinkage: _Plain, length_shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["width_shrinkage", "length_shrinkage"],
        *,
        area_shrinkage: _Plain,
        width_shrinkage: _Plain = ...,
        length_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

area_shrinkage: _AreaShrinkage

@final
class _BrierleySett(Formula):
    """The closest sett of a square cloth by Brierley.

    Fᵐ = exp(m × ln(F)); Y = 496,054.648 / T; n_q = Fᵐ × √k × √Y / 2.54

    mean_float: average float, threads for each intersection
    weave_exponent: exponent of the class of weave
    brierley_constant: constant on the yards in a pound
    count: yarn count
    """

    def __call__(
        self,
        mean_float: _Plain,
        weave_exponent: _Plain,
        brierley_constant: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mean_float: _Plain,
        weave_exponent: _Plain,
        brierley_constant: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mean_float", "weave_exponent", "brierley_constant", "count"],
        *,
        brierley_sett: _Measure,
        mean_float: _Plain = ...,
        weave_exponent: _Plain = ...,
        brierley_constant: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_sett: _BrierleySett

@final
class _BrierleyWeftSett(Formula):
    """The most picks at a number of ends, by Brierley: the ends to the power ⅔ times the picks
    stay.

    n₂ = n_q^1.66666667 × n₁^(−0.666666667)

    square_sett: closest sett of the square cloth
    warp_sett: ends
    """

    def __call__(self, square_sett: _Measure, warp_sett: _Measure) -> Quantity: ...
    def working(
        self,
        square_sett: _Measure,
        warp_sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["square_sett", "warp_sett"],
        *,
        brierley_weft_sett: _Measure,
        square_sett: _Measure = ...,
        warp_sett: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_weft_sett: _BrierleyWeftSett

@final
class _BrierleyWeftSettUnlike(Formula):
    """The most picks at a number of ends, by Brierley, where warp and weft are of unlike count.

    a = 0.666666667 × √(T₁ / T₂); n₂ = n_q × exp(a × ln(n_q / n₁))

    square_sett: closest sett of the square cloth
    warp_sett: ends
    warp_count: count of the warp
    weft_count: count of the weft
    """

    def __call__(
        self,
        square_sett: _Measure,
        warp_sett: _Measure,
        warp_count: _Measure,
        weft_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        square_sett: _Measure,
        warp_sett: _Measure,
        warp_count: _Measure,
        weft_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["square_sett", "warp_sett", "warp_count", "weft_count"],
        *,
        brierley_weft_sett_unlike: _Measure,
        square_sett: _Measure = ...,
        warp_sett: _Measure = ...,
        warp_count: _Measure = ...,
        weft_count: _Measure = ...,
    ) -> list[Quantity]: ...

brierley_weft_sett_unlike: _BrierleyWeftSettUnlike

@final
class _ClothCoverFactor(Formula):
    """Cover factor of the cloth from those of warp and weft.

    K_c = K₁ + K₂ − K₁ × K₂ / K_l

    warp_cover_factor: cover factor of the warp
    weft_cover_factor: cover factor of the weft
    cover_factor_limit: cover factor at which threads touch
    """

    def __call__(
        self,
        warp_cover_factor: _Measure,
        weft_cover_factor: _Measure,
        cover_factor_limit: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_cover_factor: _Measure,
        weft_cover_factor: _Measure,
        cover_factor_limit: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_cover_factor", "weft_cover_factor", "cover_factor_limit"],
        *,
        cloth_cover_factor: _Measure,
        warp_cover_factor: _Measure = ...,
        weft_cover_factor: _Measure = ...,
        cover_factor_limit: _Measure = ...,
    ) -> list[Quantity]: ...

cloth_cover_factor: _ClothCoverFactor

@final
class _ClothSpecificVolume(Formula):
    """Specific volume of a cloth, the air in it counted.

    v = 1000 × H / ω

    thickness: thickness
    mass_per_area: mass per area
    """

    def __call__(self, thickness: _Measure, mass_per_area: _Measure) -> Quantity: ...
    def working(
        self,
        thickness: _Measure,
        mass_per_area: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["thickness", "mass_per_area"],
        *,
        cloth_specific_volume: _Measure,
        thickness: _Measure = ...,
        mass_per_area: _Measure = ...,
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

    T₂ = T₁ × (1 − m_l) / (1 − s_y)

    count_before: count before
    mass_loss: mass lost; negative where the cloth gains
    along_shrinkage: shrinkage along the yarn
    """

    def __call__(
        self,
        count_before: _Measure,
        mass_loss: _Plain,
        along_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count_before: _Measure,
        mass_loss: _Plain,
        along_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count_before", "mass_loss", "along_shrinkage"],
        *,
        count_after_finishing: _Measure,
        count_before: _Measure = ...,
        mass_loss: _Plain = ...,
        along_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_after_finishing: _CountAfterFinishing

@final
class _CountBeforeFinishing(Formula):
    """Count to weave with for a count wanted in the finished cloth.

    T₁ = T₂ × (1 − s_y) / (1 − m_l)

    count_after: count in the finished cloth
    mass_loss: mass lost; negative where the cloth gains
    along_shrinkage: shrinkage along the yarn
    """

    def __call__(
        self,
        count_after: _Measure,
        mass_loss: _Plain,
        along_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        count_after: _Measure,
        mass_loss: _Plain,
        along_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count_after", "mass_loss", "along_shrinkage"],
        *,
        count_before_finishing: _Measure,
        count_after: _Measure = ...,
        mass_loss: _Plain = ...,
        along_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

count_before_finishing: _CountBeforeFinishing

@final
class _CountForCoverFactor(Formula):
    """The count that gives a cover factor at a sett.

    T = 10 × K_c / n × 10 × K_c / n

    cover_factor: cover factor
    sett: sett
    """

    def __call__(self, cover_factor: _Measure, sett: _Measure) -> Quantity: ...
    def working(
        self,
        cover_factor: _Measure,
        sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cover_factor", "sett"],
        *,
        count_for_cover_factor: _Measure,
        cover_factor: _Measure = ...,
        sett: _Measure = ...,
    ) -> list[Quantity]: ...

count_for_cover_factor: _CountForCoverFactor

@final
class _CountForSett(Formula):
    """The count of yarn that suits a sett wanted, by diameters and intersections.

    D = n / s × (R + I) / R; Y = 2.54 × D / k × 2.54 × D / k; T = 496,054.648 / Y

    yarn_factor: factor of the yarn
    sett: sett wanted
    sett_share: share of the maximum
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        yarn_factor: _Plain,
        sett: _Measure,
        sett_share: _Plain,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        yarn_factor: _Plain,
        sett: _Measure,
        sett_share: _Plain,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_factor", "sett", "sett_share", "repeat", "intersections"],
        *,
        count_for_sett: _Measure,
        yarn_factor: _Plain = ...,
        sett: _Measure = ...,
        sett_share: _Plain = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

count_for_sett: _CountForSett

@final
class _CountForWeight(Formula):
    """The count for a heavier or lighter cloth of the same weave and firmness.

    T₂ = T × μ × μ

    count: count of the yarn at hand
    mass_ratio: new weight over the old
    """

    def __call__(self, count: _Measure, mass_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        mass_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "mass_ratio"],
        *,
        count_for_weight: _Measure,
        count: _Measure = ...,
        mass_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

count_for_weight: _CountForWeight

@final
class _CountWithAdded(Formula):
    """Count of a yarn with size or oil on it.

    T₂ = T × (1 + z)

    count: count without it
    size_or_oil: size or oil, on the yarn without it
    """

    def __call__(self, count: _Measure, size_or_oil: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        size_or_oil: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "size_or_oil"],
        *,
        count_with_added: _Measure,
        count: _Measure = ...,
        size_or_oil: _Plain = ...,
    ) -> list[Quantity]: ...

count_with_added: _CountWithAdded

@final
class _CoursesForLoop(Formula):
    """The courses, or the wales, that a loop length leads to.

    n = K_d / (100 × l)

    loop_constant: constant of the direction
    loop_length: length of yarn in a loop
    """

    def __call__(self, loop_constant: _Plain, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        loop_constant: _Plain,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loop_constant", "loop_length"],
        *,
        courses_for_loop: _Measure,
        loop_constant: _Plain = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

courses_for_loop: _CoursesForLoop

@final
class _CoverFactor(Formula):
    """How closely the threads of one direction lie for their count.

    K_c = n × √T / 10

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

    K_a = K_b × √((1 − m_l) / (1 − s_y)) / (1 − s_x)

    cover_factor_before: cover factor before
    mass_loss: mass lost; negative where the cloth gains
    across_shrinkage: shrinkage across the threads
    along_shrinkage: shrinkage along the yarn
    """

    def __call__(
        self,
        cover_factor_before: _Measure,
        mass_loss: _Plain,
        across_shrinkage: _Plain,
        along_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        cover_factor_before: _Measure,
        mass_loss: _Plain,
        across_shrinkage: _Plain,
        along_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cover_factor_before", "mass_loss", "across_shrinkage", "along_shrinkage"],
        *,
        cover_factor_after_finishing: _Measure,
        cover_factor_before: _Measure = ...,
        mass_loss: _Plain = ...,
        across_shrinkage: _Plain = ...,
        along_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

cover_factor_after_finishing: _CoverFactorAfterFinishing

@final
class _CoverFactorLimit(Formula):
    """Cover factor at which round threads lie side by side and touch.

    K_l = √(785.398163 / v)

    specific_volume: specific volume of the yarn
    """

    def __call__(self, specific_volume: _Measure) -> Quantity: ...
    def working(
        self,
        specific_volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["specific_volume"],
        *,
        cover_factor_limit: _Measure,
        specific_volume: _Measure = ...,
    ) -> list[Quantity]: ...

cover_factor_limit: _CoverFactorLimit

@final
class _CrimpAfterFinishing(Formula):
    """Crimp after the cloth has shrunk more or less than its yarn.

    c₂ = (1 + c₁) × (1 − s_t) / (1 − s_y) − 1

    crimp_before: crimp before
    along_shrinkage: shrinkage of the cloth along the yarn
    yarn_shrinkage: shrinkage of the yarn itself
    """

    def __call__(
        self,
        crimp_before: _Plain,
        along_shrinkage: _Plain,
        yarn_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        crimp_before: _Plain,
        along_shrinkage: _Plain,
        yarn_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["crimp_before", "along_shrinkage", "yarn_shrinkage"],
        *,
        crimp_after_finishing: _Plain,
        crimp_before: _Plain = ...,
        along_shrinkage: _Plain = ...,
        yarn_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_after_finishing: _CrimpAfterFinishing

@final
class _CrimpAngle(Formula):
    """Angle at which a thread crosses the plane of the cloth.

    θ in radians = root of (l − D × θ in radians) × cos(θ in radians) + D × sin(θ in radians) −
    p; θ = θ in radians × 57.2957795

    modular_length: length between threads crossed
    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

    def __call__(
        self,
        modular_length: _Measure,
        spacing: _Measure,
        diameter_sum: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        modular_length: _Measure,
        spacing: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["modular_length", "spacing", "diameter_sum"],
        *,
        crimp_angle: _Measure,
        modular_length: _Measure = ...,
        spacing: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_angle: _CrimpAngle

@final
class _CrimpBeforeFinishing(Formula):
    """Crimp before finishing from that in the finished cloth.

    c₁ = (1 + c₂) × (1 − s_y) / (1 − s_t) − 1

    crimp_after: crimp after
    along_shrinkage: shrinkage of the cloth along the yarn
    yarn_shrinkage: shrinkage of the yarn itself
    """

    def __call__(
        self,
        crimp_after: _Plain,
        along_shrinkage: _Plain,
        yarn_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        crimp_after: _Plain,
        along_shrinkage: _Plain,
        yarn_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["crimp_after", "along_shrinkage", "yarn_shrinkage"],
        *,
        crimp_before_finishing: _Plain,
        crimp_after: _Plain = ...,
        along_shrinkage: _Plain = ...,
        yarn_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_before_finishing: _CrimpBeforeFinishing

@final
class _CrimpFromLengths(Formula):
    """Crimp: how much longer the yarn is than the cloth that it lies in.

    c = (Y − L) / L

    yarn_length: length of the yarn
    cloth_length: length of the cloth it was taken from
    """

    def __call__(self, yarn_length: _Measure, cloth_length: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_length: _Measure,
        cloth_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_length", "cloth_length"],
        *,
        crimp_from_lengths: _Plain,
        yarn_length: _Measure = ...,
        cloth_length: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_from_lengths: _CrimpFromLengths

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

    modular_length: length between threads crossed
    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

    def __call__(
        self,
        modular_length: _Measure,
        spacing: _Measure,
        diameter_sum: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        modular_length: _Measure,
        spacing: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["modular_length", "spacing", "diameter_sum"],
        *,
        crimp_height: _Measure,
        modular_length: _Measure = ...,
        spacing: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

crimp_height: _CrimpHeight

@final
class _CrimpHeightByRule(Formula):
    """Height of the wave of a thread by the rule of the root.

    h = k × p × √c

    spacing: spacing of the threads crossed
    crimp: crimp
    rule_factor: factor
    """

    def __call__(self, spacing: _Measure, crimp: _Plain, rule_factor: _Plain) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        crimp: _Plain,
        rule_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "crimp", "rule_factor"],
        *,
        crimp_height_by_rule: _Measure,
        spacing: _Measure = ...,
        crimp: _Plain = ...,
        rule_factor: _Plain = ...,
    ) -> list[Quantity]: ...

crimp_height_by_rule: _CrimpHeightByRule

@final
class _CrownHeight(Formula):
    """Height of a crown: of the wave of a thread and the thread itself.

    H = h + d

    wave_height: height of the wave
    yarn_diameter: diameter
    """

    def __call__(self, wave_height: _Measure, yarn_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        wave_height: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wave_height", "yarn_diameter"],
        *,
        crown_height: _Measure,
        wave_height: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

crown_height: _CrownHeight

@final
class _CurvatureSett(Formula):
    """The closest sett of a weave by the curvature of the threads, for a square cloth of like
    yarns.

    n_m = D × R / (R + 0.732050808 × I)

    side_by_side: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["side_by_side", "repeat", "intersections"],
        *,
        curvature_sett: _Measure,
        side_by_side: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

curvature_sett: _CurvatureSett

@final
class _CurvatureSettUnlike(Formula):
    """The closest sett of one system by curvature, where the other is of another yarn.

    p = 0.866025404 × (1 / D₁ + 1 / D₂); n_m = R / ((R − I) / D₁ + I × p)

    own_side_by_side: diameters of the yarn that is set, side by side
    crossing_side_by_side: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

    def __call__(
        self,
        own_side_by_side: _Measure,
        crossing_side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        own_side_by_side: _Measure,
        crossing_side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["own_side_by_side", "crossing_side_by_side", "repeat", "intersections"],
        *,
        curvature_sett_unlike: _Measure,
        own_side_by_side: _Measure = ...,
        crossing_side_by_side: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

curvature_sett_unlike: _CurvatureSettUnlike

@final
class _DentsInWidth(Formula):
    """Dents in a width of the reed.

    N = 100 × r × B

    reed: reed
    reed_width: width in the reed
    """

    def __call__(self, reed: _Measure, reed_width: _Measure) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        reed_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "reed_width"],
        *,
        dents_in_width: _Plain,
        reed: _Measure = ...,
        reed_width: _Measure = ...,
    ) -> list[Quantity]: ...

dents_in_width: _DentsInWidth

@final
class _DiametersInCloth(Formula):
    """Sum of the diameters that the threads of a plain cloth behave as having, from measured
    crimps.

    p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); p₁ = 10 / n₁; l₂ = p₁ × (1 + c₂); D = root of (l₁ − D × θ₁)
    × sin(θ₁) + D × (1 − cos(θ₁)) + ((l₂ − D × θ₂) × sin(θ₂) + D × (1 − cos(θ₂))) − D

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_sett", "weft_sett", "warp_crimp", "weft_crimp"],
        *,
        diameters_in_cloth: _Measure,
        warp_sett: _Measure = ...,
        weft_sett: _Measure = ...,
        warp_crimp: _Plain = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

diameters_in_cloth: _DiametersInCloth

@final
class _DiametersSideBySide(Formula):
    """Diameters of a yarn that lie side by side in a centimetre.

    Y = 496,054.648 / T; D = k × √Y / 2.54

    yarn_factor: factor of the yarn
    count: yarn count
    """

    def __call__(self, yarn_factor: _Plain, count: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_factor: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_factor", "count"],
        *,
        diameters_side_by_side: _Measure,
        yarn_factor: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

diameters_side_by_side: _DiametersSideBySide

@final
class _DimensionalChange(Formula):
    """Dimensional change as ISO 5077 reports it.

    D = (x₂ − x₁) / x₁

    size_before: measure before
    size_after: measure after
    """

    def __call__(self, size_before: _Measure, size_after: _Measure) -> Quantity: ...
    def working(
        self,
        size_before: _Measure,
        size_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_before", "size_after"],
        *,
        dimensional_change: _Plain,
        size_before: _Measure = ...,
        size_after: _Measure = ...,
    ) -> list[Quantity]: ...

dimensional_change: _DimensionalChange

@final
class _DimensionalChangeFromShrinkage(Formula):
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
        dimensional_change_from_shrinkage: _Plain,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

dimensional_change_from_shrinkage: _DimensionalChangeFromShrinkage

@final
class _DrawInFromWidths(Formula):
    """Draw-in from the width in the reed and off the loom.

    d_r = 1 − b_o / B

    reed_width: width in the reed
    off_loom_width: width off the loom
    """

    def __call__(self, reed_width: _Measure, off_loom_width: _Measure) -> Quantity: ...
    def working(
        self,
        reed_width: _Measure,
        off_loom_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_width", "off_loom_width"],
        *,
        draw_in_from_widths: _Plain,
        reed_width: _Measure = ...,
        off_loom_width: _Measure = ...,
    ) -> list[Quantity]: ...

draw_in_from_widths: _DrawInFromWidths

@final
class _EndsForReed(Formula):
    """Ends that fill whole dents within a width.

    N = round down(100 × r × B + 0.000001) × e

    reed: reed
    ends_per_dent: ends in a dent
    reed_width: width in the reed
    """

    def __call__(self, reed: _Measure, ends_per_dent: _Plain, reed_width: _Measure) -> Quantity: ...
    def working(
        self,
        reed: _Measure,
        ends_per_dent: _Plain,
        reed_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed", "ends_per_dent", "reed_width"],
        *,
        ends_for_reed: _Plain,
        reed: _Measure = ...,
        ends_per_dent: _Plain = ...,
        reed_width: _Measure = ...,
    ) -> list[Quantity]: ...

ends_for_reed: _EndsForReed

@final
class _EndsInWidth(Formula):
    """Threads in a width.

    N = 100 × n × b

    sett: sett
    cloth_width: width in the same state
    """

    def __call__(self, sett: _Measure, cloth_width: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        cloth_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "cloth_width"],
        *,
        ends_in_width: _Plain,
        sett: _Measure = ...,
        cloth_width: _Measure = ...,
    ) -> list[Quantity]: ...

ends_in_width: _EndsInWidth

@final
class _EndsWithSelvedges(Formula):
    """Ends of a cloth whose selvedges are set closer than its ground.

    N = 100 × n_g × (b_g + k × b_s)

    ground_sett: sett of the ground
    ground_width: width of the ground
    selvedge_width: width of both selvedges together
    selvedge_closeness: ends in a dent of the selvedge over those of the ground
    """

    def __call__(
        self,
        ground_sett: _Measure,
        ground_width: _Measure,
        selvedge_width: _Measure,
        selvedge_closeness: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        ground_sett: _Measure,
        ground_width: _Measure,
        selvedge_width: _Measure,
        selvedge_closeness: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ground_sett", "ground_width", "selvedge_width", "selvedge_closeness"],
        *,
        ends_with_selvedges: _Plain,
        ground_sett: _Measure = ...,
        ground_width: _Measure = ...,
        selvedge_width: _Measure = ...,
        selvedge_closeness: _Plain = ...,
    ) -> list[Quantity]: ...

ends_with_selvedges: _EndsWithSelvedges

@final
class _FinishedMassPerArea(Formula):
    """Mass per area after finishing.

    ω₂ = ω₁ × (1 − m_l) / ((1 − s_w) × (1 − s_l))

    off_loom_mass_per_area: mass per area off the loom
    mass_loss: mass lost; negative where the cloth gains
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

    def __call__(
        self,
        off_loom_mass_per_area: _Measure,
        mass_loss: _Plain,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        off_loom_mass_per_area: _Measure,
        mass_loss: _Plain,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "off_loom_mass_per_area", "mass_loss", "width_shrinkage", "length_shrinkage"
        ],
        *,
        finished_mass_per_area: _Measure,
        off_loom_mass_per_area: _Measure = ...,
        mass_loss: _Plain = ...,
        width_shrinkage: _Plain = ...,
        length_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

finished_mass_per_area: _FinishedMassPerArea

@final
class _FractionalCover(Formula):
    """Share of the surface that the threads of one direction cover.

    n·d = n × d / 10; e = smaller of (n·d, 1)

    sett: sett
    yarn_diameter: diameter of the yarn
    """

    def __call__(self, sett: _Measure, yarn_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "yarn_diameter"],
        *,
        fractional_cover: _Plain,
        sett: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

fractional_cover: _FractionalCover

@final
class _FractionalCoverOfFactor(Formula):
    """Share of the surface that threads cover, from their cover factor and what a gram of yarn
    fills.

    K_c/K_l = K_c × √(0.00127323954 × v); e = smaller of (K_c/K_l, 1)

    cover_factor: cover factor
    specific_volume: specific volume of the yarn
    """

    def __call__(self, cover_factor: _Measure, specific_volume: _Measure) -> Quantity: ...
    def working(
        self,
        cover_factor: _Measure,
        specific_volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cover_factor", "specific_volume"],
        *,
        fractional_cover_of_factor: _Plain,
        cover_factor: _Measure = ...,
        specific_volume: _Measure = ...,
    ) -> list[Quantity]: ...

fractional_cover_of_factor: _FractionalCoverOfFactor

@final
class _FringeMass(Formula):
    """Mass of the fringes of a piece.

    m = 2 × N × q × T₁ × 0.000001

    ends: ends
    fringe: fringe at each end of the piece
    warp_count: count of the warp
    """

    def __call__(self, ends: _Plain, fringe: _Measure, warp_count: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        fringe: _Measure,
        warp_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "fringe", "warp_count"],
        *,
        fringe_mass: _Measure,
        ends: _Plain = ...,
        fringe: _Measure = ...,
        warp_count: _Measure = ...,
    ) -> list[Quantity]: ...

fringe_mass: _FringeMass

@final
class _GalceranCoefficient(Formula):
    """Galceran's greatest coefficient of density.

    K = Q / (1 + 0.73 × l)

    material_coefficient: coefficient of the material
    crossings: intersections for each thread of the other system
    """

    def __call__(self, material_coefficient: _Plain, crossings: _Plain) -> Quantity: ...
    def working(
        self,
        material_coefficient: _Plain,
        crossings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["material_coefficient", "crossings"],
        *,
        galceran_coefficient: _Plain,
        material_coefficient: _Plain = ...,
        crossings: _Plain = ...,
    ) -> list[Quantity]: ...

galceran_coefficient: _GalceranCoefficient

@final
class _GalceranSett(Formula):
    """Sett by Galceran's coefficient of density.

    Nm = 1000 / T; n = K × √Nm

    density_coefficient: coefficient of density
    count: yarn count
    """

    def __call__(self, density_coefficient: _Plain, count: _Measure) -> Quantity: ...
    def working(
        self,
        density_coefficient: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["density_coefficient", "count"],
        *,
        galceran_sett: _Measure,
        density_coefficient: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

galceran_sett: _GalceranSett

@final
class _GreyMass(Formula):
    """Mass of a piece as it leaves the loom: warp with its size, and weft.

    m = m₁ × (1 + z) + m₂

    warp_mass: mass of the warp without size
    size: size, on the warp without it
    weft_mass: mass of the weft
    """

    def __call__(self, warp_mass: _Measure, size: _Plain, weft_mass: _Measure) -> Quantity: ...
    def working(
        self,
        warp_mass: _Measure,
        size: _Plain,
        weft_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_mass", "size", "weft_mass"],
        *,
        grey_mass: _Measure,
        warp_mass: _Measure = ...,
        size: _Plain = ...,
        weft_mass: _Measure = ...,
    ) -> list[Quantity]: ...

grey_mass: _GreyMass

@final
class _HanksOfWarp(Formula):
    """Hanks of yarn in a warp.

    h = N × W / l_h

    ends: ends
    warp_length: length of the warp
    hank_length: length of a hank
    """

    def __call__(self, ends: _Plain, warp_length: _Measure, hank_length: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp_length: _Measure,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp_length", "hank_length"],
        *,
        hanks_of_warp: _Plain,
        ends: _Plain = ...,
        warp_length: _Measure = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_warp: _HanksOfWarp

@final
class _HanksOfWeft(Formula):
    """Hanks of yarn in the weft of a piece.

    h = 100 × n₂ × L × B / l_h

    reed_width: width in the reed
    cloth_length: length of the piece
    weft_sett: picks in the piece
    hank_length: length of a hank
    """

    def __call__(
        self,
        reed_width: _Measure,
        cloth_length: _Measure,
        weft_sett: _Measure,
        hank_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        reed_width: _Measure,
        cloth_length: _Measure,
        weft_sett: _Measure,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_width", "cloth_length", "weft_sett", "hank_length"],
        *,
        hanks_of_weft: _Plain,
        reed_width: _Measure = ...,
        cloth_length: _Measure = ...,
        weft_sett: _Measure = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_weft: _HanksOfWeft

@final
class _HealdDensity(Formula):
    """How close the heddles stand on a shaft.

    h = n_r × R_s / R

    reed_sett: sett in the reed
    ends_on_shaft: ends of the repeat of the draft on the shaft
    repeat: ends in the repeat of the draft
    """

    def __call__(self, reed_sett: _Measure, ends_on_shaft: _Plain, repeat: _Plain) -> Quantity: ...
    def working(
        self,
        reed_sett: _Measure,
        ends_on_shaft: _Plain,
        repeat: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_sett", "ends_on_shaft", "repeat"],
        *,
        heald_density: _Measure,
        reed_sett: _Measure = ...,
        ends_on_shaft: _Plain = ...,
        repeat: _Plain = ...,
    ) -> list[Quantity]: ...

heald_density: _HealdDensity

@final
class _IntersectionsInLength(Formula):
    """Intersections that an end makes in a length of cloth.

    i = n₂ × I / R

    weft_sett: picks
    repeat: picks in the repeat
    intersections: intersections of an end in the repeat
    """

    def __call__(self, weft_sett: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity: ...
    def working(
        self,
        weft_sett: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["weft_sett", "repeat", "intersections"],
        *,
        intersections_in_length: _Measure,
        weft_sett: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

intersections_in_length: _IntersectionsInLength

@final
class _JamAngle(Formula):
    """Angle of a thread that is jammed: it lies round those it crosses without a straight part.

    p/D = p / D; θ = arctan(p/D / √(1 − p/D × p/D)) × 57.2957795

    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameter_sum: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameter_sum"],
        *,
        jam_angle: _Measure,
        spacing: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

jam_angle: _JamAngle

@final
class _JamCoverFactor(Formula):
    """Cover factor at which a square plain cloth jams: threads √3 diameters apart both ways.

    K_c = K_l / 1.73205081

    cover_factor_limit: cover factor at which threads touch
    """

    def __call__(self, cover_factor_limit: _Measure) -> Quantity: ...
    def working(
        self,
        cover_factor_limit: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cover_factor_limit"],
        *,
        jam_cover_factor: _Measure,
        cover_factor_limit: _Measure = ...,
    ) -> list[Quantity]: ...

jam_cover_factor: _JamCoverFactor

@final
class _JamCrimp(Formula):
    """The most crimp that a thread can have between threads at a spacing: it is then jammed.

    p/D = p / D; θ = arctan(p/D / √(1 − p/D × p/D)); c = θ / p/D − 1

    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameter_sum: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameter_sum"],
        *,
        jam_crimp: _Plain,
        spacing: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

jam_crimp: _JamCrimp

@final
class _JamSpacing(Formula):
    """Spacing of the one system where both are jammed, from that of the other.

    cos θ₂ = √(1 − p / D × p / D); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1 − cos θ₁ × cos θ₁)

    spacing: spacing of the other system
    diameter_sum: sum of the diameters
    """

    def __call__(self, spacing: _Measure, diameter_sum: _Measure) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "diameter_sum"],
        *,
        jam_spacing: _Measure,
        spacing: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

jam_spacing: _JamSpacing

@final
class _JamWeftSett(Formula):
    """The most picks of plain cloth at a number of ends: both systems jammed, by Peirce.

    D = d₁ + d₂; p₁ = 10 / n₁; cos θ₂ = √(1 − p / D × p / D); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1 −
    cos θ₁ × cos θ₁); n₂ = 10 / p₂

    warp_sett: ends
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

    def __call__(
        self,
        warp_sett: _Measure,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_sett", "warp_diameter", "weft_diameter"],
        *,
        jam_weft_sett: _Measure,
        warp_sett: _Measure = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

jam_weft_sett: _JamWeftSett

@final
class _JamWeftSettOfWeave(Formula):
    """The most picks of any weave at a number of ends: both systems jammed, after Love.

    D = d₁ + d₂; p₁′ = F₂ × 10 / n₁ − (F₂ − 1) × d₁; cos θ₂ = √(1 − p / D × p / D); cos θ₁ = 1 −
    cos θ₂; p₂ = D × √(1 − cos θ₁ × cos θ₁); n₂ = 10 × F₁ / (p₂ + (F₁ − 1) × d₂)

    warp_sett: ends
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    weft_float: average float of the picks
    warp_float: average float of the ends
    """

    def __call__(
        self,
        warp_sett: _Measure,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        weft_float: _Plain,
        warp_float: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        weft_float: _Plain,
        warp_float: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_sett", "warp_diameter", "weft_diameter", "weft_float", "warp_float"],
        *,
        jam_weft_sett_of_weave: _Measure,
        warp_sett: _Measure = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        weft_float: _Plain = ...,
        warp_float: _Plain = ...,
    ) -> list[Quantity]: ...

jam_weft_sett_of_weave: _JamWeftSettOfWeave

@final
class _KnitMass(Formula):
    """Mass of the yarn in a knitted piece: courses, the width of each, and the take-up of its
    loops.

    Y = 100 × c × L × b × u; m = Y × T × 0.000001

    courses: courses
    cloth_width: width of the piece
    cloth_length: length of the piece
    knit_take_up: take-up: length of yarn over width of course
    count: count
    """

    def __call__(
        self,
        courses: _Measure,
        cloth_width: _Measure,
        cloth_length: _Measure,
        knit_take_up: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        courses: _Measure,
        cloth_width: _Measure,
        cloth_length: _Measure,
        knit_take_up: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses", "cloth_width", "cloth_length", "knit_take_up", "count"],
        *,
        knit_mass: _Measure,
        courses: _Measure = ...,
        cloth_width: _Measure = ...,
        cloth_length: _Measure = ...,
        knit_take_up: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass: _KnitMass

@final
class _KnitMassPerArea(Formula):
    """Mass of a square metre of knitting: loops, the yarn in each, and its count.

    ω = 10 × S × l × T

    loop_density: loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

    def __call__(
        self,
        loop_density: _Measure,
        loop_length: _Measure,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        loop_density: _Measure,
        loop_length: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loop_density", "loop_length", "count"],
        *,
        knit_mass_per_area: _Measure,
        loop_density: _Measure = ...,
        loop_length: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass_per_area: _KnitMassPerArea

@final
class _KnitMassPerAreaByConstant(Formula):
    """Mass of a square metre of knitting from the constant of its loops: heavier with the count,
    lighter with a longer loop.

    ω = K_s × T / (1000 × l)

    stitch_constant: constant of the loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

    def __call__(
        self,
        stitch_constant: _Plain,
        loop_length: _Measure,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        stitch_constant: _Plain,
        loop_length: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stitch_constant", "loop_length", "count"],
        *,
        knit_mass_per_area_by_constant: _Measure,
        stitch_constant: _Plain = ...,
        loop_length: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

knit_mass_per_area_by_constant: _KnitMassPerAreaByConstant

@final
class _KnitTakeUp(Formula):
    """Take-up of a knitted course: yarn in a stitch, and the stitches in a width.

    u = 100 × w × l

    wales: wales: stitches side by side
    loop_length: length of yarn in a stitch
    """

    def __call__(self, wales: _Measure, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        wales: _Measure,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wales", "loop_length"],
        *,
        knit_take_up: _Plain,
        wales: _Measure = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

knit_take_up: _KnitTakeUp

@final
class _LengthOverDiameters(Formula):
    """Length of a thread between those it crosses, over the sum of the diameters.

    l/D = l / D

    modular_length: length between threads crossed
    diameter_sum: sum of the diameters
    """

    def __call__(self, modular_length: _Measure, diameter_sum: _Measure) -> Quantity: ...
    def working(
        self,
        modular_length: _Measure,
        diameter_sum: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["modular_length", "diameter_sum"],
        *,
        length_over_diameters: _Plain,
        modular_length: _Measure = ...,
        diameter_sum: _Measure = ...,
    ) -> list[Quantity]: ...

length_over_diameters: _LengthOverDiameters

@final
class _LoomStretch(Formula):
    """How far the warp was stretched on the loom: its parts as they lay under tension against its
    length before.

    ε = (l_t + l_w + l_b) / W − 1

    warp_length: warp before it was put on the loom
    tied_length: tied on at the front
    woven_length: woven, as measured under tension
    left_length: left at the back
    """

    def __call__(
        self,
        warp_length: _Measure,
        tied_length: _Measure,
        woven_length: _Measure,
        left_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_length: _Measure,
        tied_length: _Measure,
        woven_length: _Measure,
        left_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_length", "tied_length", "woven_length", "left_length"],
        *,
        loom_stretch: _Plain,
        warp_length: _Measure = ...,
        tied_length: _Measure = ...,
        woven_length: _Measure = ...,
        left_length: _Measure = ...,
    ) -> list[Quantity]: ...

loom_stretch: _LoomStretch

@final
class _LoopConstant(Formula):
    """Munden's constant of a direction: courses, or wales, in a length of yarn of one loop.

    K_d = 100 × n × l

    courses_or_wales: courses, or wales
    loop_length: length of yarn in a loop
    """

    def __call__(self, courses_or_wales: _Measure, loop_length: _Measure) -> Quantity: ...
    def working(
        self,
        courses_or_wales: _Measure,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["courses_or_wales", "loop_length"],
        *,
        loop_constant: _Plain,
        courses_or_wales: _Measure = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

loop_constant: _LoopConstant

@final
class _LoopDensity(Formula):
    """Loops on an area from the length of yarn in one.

    S = K_c × K_w / (100 × l × 100 × l)

    course_constant: constant of the courses
    wale_constant: constant of the wales
    loop_length: length of yarn in a loop
    """

    def __call__(
        self,
        course_constant: _Plain,
        wale_constant: _Plain,
        loop_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        course_constant: _Plain,
        wale_constant: _Plain,
        loop_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["course_constant", "wale_constant", "loop_length"],
        *,
        loop_density: _Measure,
        course_constant: _Plain = ...,
        wale_constant: _Plain = ...,
        loop_length: _Measure = ...,
    ) -> list[Quantity]: ...

loop_density: _LoopDensity

@final
class _LoopForTightness(Formula):
    """The length of yarn in a loop that gives a tightness.

    l = √T / (100 × K_t)

    count: count
    tightness_factor: tightness factor
    """

    def __call__(self, count: _Measure, tightness_factor: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        tightness_factor: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "tightness_factor"],
        *,
        loop_for_tightness: _Measure,
        count: _Measure = ...,
        tightness_factor: _Measure = ...,
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

    m₂ = m₁ × (1 − m_l)

    mass_before: mass before
    mass_loss: mass lost; negative where the cloth gains
    """

    def __call__(self, mass_before: _Measure, mass_loss: _Plain) -> Quantity: ...
    def working(
        self,
        mass_before: _Measure,
        mass_loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_before", "mass_loss"],
        *,
        mass_after_finishing: _Measure,
        mass_before: _Measure = ...,
        mass_loss: _Plain = ...,
    ) -> list[Quantity]: ...

mass_after_finishing: _MassAfterFinishing

@final
class _MassBeforeFinishing(Formula):
    """Mass before a process, from what is to be left after it.

    m₁ = m₂ / (1 − m_l)

    mass_after: mass after
    mass_loss: mass lost; negative where the cloth gains
    """

    def __call__(self, mass_after: _Measure, mass_loss: _Plain) -> Quantity: ...
    def working(
        self,
        mass_after: _Measure,
        mass_loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_after", "mass_loss"],
        *,
        mass_before_finishing: _Measure,
        mass_after: _Measure = ...,
        mass_loss: _Plain = ...,
    ) -> list[Quantity]: ...

mass_before_finishing: _MassBeforeFinishing

@final
class _MassLossFromAreas(Formula):
    """Mass lost, from the mass per area before and after and what the cloth shrank.

    m_l = 1 − ω_a × (1 − s_w) × (1 − s_l) / ω_b

    mass_per_area_before: mass per area before
    mass_per_area_after: mass per area after
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

    def __call__(
        self,
        mass_per_area_before: _Measure,
        mass_per_area_after: _Measure,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mass_per_area_before: _Measure,
        mass_per_area_after: _Measure,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "mass_per_area_before", "mass_per_area_after", "width_shrinkage", "length_shrinkage"
        ],
        *,
        mass_loss_from_areas: _Plain,
        mass_per_area_before: _Measure = ...,
        mass_per_area_after: _Measure = ...,
        width_shrinkage: _Plain = ...,
        length_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

mass_loss_from_areas: _MassLossFromAreas

@final
class _MassLossFromMasses(Formula):
    """Mass lost, from the mass before and after.

    m_l = 1 − m₂ / m₁

    mass_before: mass before
    mass_after: mass after
    """

    def __call__(self, mass_before: _Measure, mass_after: _Measure) -> Quantity: ...
    def working(
        self,
        mass_before: _Measure,
        mass_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_before", "mass_after"],
        *,
        mass_loss_from_masses: _Plain,
        mass_before: _Measure = ...,
        mass_after: _Measure = ...,
    ) -> list[Quantity]: ...

mass_loss_from_masses: _MassLossFromMasses

@final
class _MassOfPiece(Formula):
    """Mass of a piece from its mass per area.

    m = ω × b × L / 1000

    mass_per_area: mass per area
    cloth_width: width
    cloth_length: length
    """

    def __call__(
        self,
        mass_per_area: _Measure,
        cloth_width: _Measure,
        cloth_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mass_per_area: _Measure,
        cloth_width: _Measure,
        cloth_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_per_area", "cloth_width", "cloth_length"],
        *,
        mass_of_piece: _Measure,
        mass_per_area: _Measure = ...,
        cloth_width: _Measure = ...,
        cloth_length: _Measure = ...,
    ) -> list[Quantity]: ...

mass_of_piece: _MassOfPiece

@final
class _MassPerArea(Formula):
    """Mass of a square metre of cloth from its threads.

    ω₁ = n₁ × T₁ × (1 + c₁) / 10; ω₂ = n₂ × T₂ × (1 + c₂) / 10; ω = ω₁ + ω₂

    warp_sett: ends
    warp_count: count of the warp
    warp_crimp: crimp of the warp
    weft_sett: picks
    weft_count: count of the weft
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        warp_sett: _Measure,
        warp_count: _Measure,
        warp_crimp: _Plain,
        weft_sett: _Measure,
        weft_count: _Measure,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        warp_count: _Measure,
        warp_crimp: _Plain,
        weft_sett: _Measure,
        weft_count: _Measure,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "warp_sett", "warp_count", "warp_crimp", "weft_sett", "weft_count", "weft_crimp"
        ],
        *,
        mass_per_area: _Measure,
        warp_sett: _Measure = ...,
        warp_count: _Measure = ...,
        warp_crimp: _Plain = ...,
        weft_sett: _Measure = ...,
        weft_count: _Measure = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_per_area: _MassPerArea

@final
class _MassPerAreaByMultiplier(Formula):
    """Mass per area as the trade's pages have it: threads in an inch over the cotton count, times a
    rounded multiplier.

    t₁ = n₁ × T₁ × 0.00430113902 × (1 + c₁); t₂ = n₂ × T₂ × 0.00430113902 × (1 + c₂); ω = k × (t₁
    + t₂)

    mass_multiplier: multiplier, for threads in an inch, cotton counts and g/m²
    warp_sett: ends
    warp_count: count of the warp
    warp_crimp: crimp of the warp
    weft_sett: picks
    weft_count: count of the weft
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        mass_multiplier: _Plain,
        warp_sett: _Measure,
        warp_count: _Measure,
        warp_crimp: _Plain,
        weft_sett: _Measure,
        weft_count: _Measure,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mass_multiplier: _Plain,
        warp_sett: _Measure,
        warp_count: _Measure,
        warp_crimp: _Plain,
        weft_sett: _Measure,
        weft_count: _Measure,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "mass_multiplier",
            "warp_sett",
            "warp_count",
            "warp_crimp",
            "weft_sett",
            "weft_count",
            "weft_crimp",
        ],
        *,
        mass_per_area_by_multiplier: _Measure,
        mass_multiplier: _Plain = ...,
        warp_sett: _Measure = ...,
        warp_count: _Measure = ...,
        warp_crimp: _Plain = ...,
        weft_sett: _Measure = ...,
        weft_count: _Measure = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_per_area_by_multiplier: _MassPerAreaByMultiplier

@final
class _MassPerAreaOfCloth(Formula):
    """Mass per area from the mass of a running metre.

    ω = λ / (1000 × b)

    running_mass: mass of a running metre
    cloth_width: width
    """

    def __call__(self, running_mass: _Measure, cloth_width: _Measure) -> Quantity: ...
    def working(
        self,
        running_mass: _Measure,
        cloth_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["running_mass", "cloth_width"],
        *,
        mass_per_area_of_cloth: _Measure,
        running_mass: _Measure = ...,
        cloth_width: _Measure = ...,
    ) -> list[Quantity]: ...

mass_per_area_of_cloth: _MassPerAreaOfCloth

@final
class _MassPerAreaOfThreads(Formula):
    """Mass that the warp alone, or the weft alone, adds to a square metre of cloth.

    ω = n × T × (1 + c) / 10

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
        mass_per_area_of_threads: _Measure,
        sett: _Measure = ...,
        count: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

mass_per_area_of_threads: _MassPerAreaOfThreads

@final
class _MaximumSett(Formula):
    """The closest sett of a weave by diameters and intersections, for a square cloth.

    n_m = D × R / (R + I)

    side_by_side: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["side_by_side", "repeat", "intersections"],
        *,
        maximum_sett: _Measure,
        side_by_side: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett: _MaximumSett

@final
class _MaximumSettFromWraps(Formula):
    """The closest sett from wraps: these are fewer than diameters.

    n_m = w / c × R / (R + I)

    wraps: wraps
    wraps_per_diameter: wraps for a diameter
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

    def __call__(
        self,
        wraps: _Measure,
        wraps_per_diameter: _Plain,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        wraps: _Measure,
        wraps_per_diameter: _Plain,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps", "wraps_per_diameter", "repeat", "intersections"],
        *,
        maximum_sett_from_wraps: _Measure,
        wraps: _Measure = ...,
        wraps_per_diameter: _Plain = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett_from_wraps: _MaximumSettFromWraps

@final
class _MaximumSettUnlike(Formula):
    """The closest sett of one system by diameters and intersections, where the other is of another
    yarn.

    n_m = R / (R / D₁ + I / D₂)

    own_side_by_side: diameters of the yarn that is set, side by side
    crossing_side_by_side: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

    def __call__(
        self,
        own_side_by_side: _Measure,
        crossing_side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        own_side_by_side: _Measure,
        crossing_side_by_side: _Measure,
        repeat: _Plain,
        intersections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["own_side_by_side", "crossing_side_by_side", "repeat", "intersections"],
        *,
        maximum_sett_unlike: _Measure,
        own_side_by_side: _Measure = ...,
        crossing_side_by_side: _Measure = ...,
        repeat: _Plain = ...,
        intersections: _Plain = ...,
    ) -> list[Quantity]: ...

maximum_sett_unlike: _MaximumSettUnlike

@final
class _MilasiusFirmness(Formula):
    """Firmness of a cloth by Milašius: 1 would be the closest that round threads allow.

    a = 0.666666667 × √(T₁ / T₂); S = exp((ln(n₂) + a × ln(n₁)) / (1 + a)); φ = 0.00618038723 / P
    × √(T_m / ρ) × S

    weave_factor: weave factor
    mean_count: average count
    fibre_density: density of the fibre
    warp_count: count of the warp
    weft_count: count of the weft
    warp_sett: ends
    weft_sett: picks
    """

    def __call__(
        self,
        weave_factor: _Plain,
        mean_count: _Measure,
        fibre_density: _Measure,
        warp_count: _Measure,
        weft_count: _Measure,
        warp_sett: _Measure,
        weft_sett: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        weave_factor: _Plain,
        mean_count: _Measure,
        fibre_density: _Measure,
        warp_count: _Measure,
        weft_count: _Measure,
        warp_sett: _Measure,
        weft_sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "weave_factor",
            "mean_count",
            "fibre_density",
            "warp_count",
            "weft_count",
            "warp_sett",
            "weft_sett",
        ],
        *,
        milasius_firmness: _Plain,
        weave_factor: _Plain = ...,
        mean_count: _Measure = ...,
        fibre_density: _Measure = ...,
        warp_count: _Measure = ...,
        weft_count: _Measure = ...,
        warp_sett: _Measure = ...,
        weft_sett: _Measure = ...,
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
class _OffLoomMassPerArea(Formula):
    """Mass per area to weave for one wanted after finishing.

    ω₁ = ω₂ × (1 − s_w) × (1 − s_l) / (1 − m_l)

    finished_mass_per_area: mass per area wanted
    mass_loss: mass lost; negative where the cloth gains
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

    def __call__(
        self,
        finished_mass_per_area: _Measure,
        mass_loss: _Plain,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        finished_mass_per_area: _Measure,
        mass_loss: _Plain,
        width_shrinkage: _Plain,
        length_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "finished_mass_per_area", "mass_loss", "width_shrinkage", "length_shrinkage"
        ],
        *,
        off_loom_mass_per_area: _Measure,
        finished_mass_per_area: _Measure = ...,
        mass_loss: _Plain = ...,
        width_shrinkage: _Plain = ...,
        length_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

off_loom_mass_per_area: _OffLoomMassPerArea

@final
class _OffLoomWidth(Formula):
    """Width off the loom.

    b_o = B × (1 − d_r)

    reed_width: width in the reed
    draw_in: draw-in, reed to off the loom
    """

    def __call__(self, reed_width: _Measure, draw_in: _Plain) -> Quantity: ...
    def working(
        self,
        reed_width: _Measure,
        draw_in: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_width", "draw_in"],
        *,
        off_loom_width: _Measure,
        reed_width: _Measure = ...,
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
class _OverWidthFromSizes(Formula):
    """How much wider it is woven than it is finished.

    x = x₁ / x₂ − 1

    size_before: size before
    size_after: size finished
    """

    def __call__(self, size_before: _Measure, size_after: _Measure) -> Quantity: ...
    def working(
        self,
        size_before: _Measure,
        size_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_before", "size_after"],
        *,
        over_width_from_sizes: _Plain,
        size_before: _Measure = ...,
        size_after: _Measure = ...,
    ) -> list[Quantity]: ...

over_width_from_sizes: _OverWidthFromSizes

@final
class _PackagesForLength(Formula):
    """Packages for a length of yarn: bobbins, pirns, cones.

    z = round up(Y / l − 0.000001)

    yarn_length: length of yarn
    package_length: length on a package
    """

    def __call__(self, yarn_length: _Measure, package_length: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_length: _Measure,
        package_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_length", "package_length"],
        *,
        packages_for_length: _Plain,
        yarn_length: _Measure = ...,
        package_length: _Measure = ...,
    ) -> list[Quantity]: ...

packages_for_length: _PackagesForLength

@final
class _PicksInPiece(Formula):
    """Picks in a piece.

    P = 100 × n_o × L_f / (1 − s_l)

    finished_length: finished length of the woven part
    length_shrinkage: shrinkage in length, off the loom to finished
    off_loom_weft_sett: picks off the loom
    """

    def __call__(
        self,
        finished_length: _Measure,
        length_shrinkage: _Plain,
        off_loom_weft_sett: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        finished_length: _Measure,
        length_shrinkage: _Plain,
        off_loom_weft_sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["finished_length", "length_shrinkage", "off_loom_weft_sett"],
        *,
        picks_in_piece: _Plain,
        finished_length: _Measure = ...,
        length_shrinkage: _Plain = ...,
        off_loom_weft_sett: _Measure = ...,
    ) -> list[Quantity]: ...

picks_in_piece: _PicksInPiece

@final
class _PlainThickness(Formula):
    """Thickness of plain cloth: the higher of the two crowns.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; H = (no answer if D < h₁, else
    greater of (h₁ + d₁, h₂ + d₂))

    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

    def __call__(
        self,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["weft_sett", "warp_crimp", "warp_diameter", "weft_diameter"],
        *,
        plain_thickness: _Measure,
        weft_sett: _Measure = ...,
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
    thread_width: width of the threads crossed
    thread_thickness: their thickness
    rule_factor: factor
    """

    def __call__(
        self,
        spacing: _Measure,
        crimp: _Plain,
        thread_width: _Measure,
        thread_thickness: _Measure,
        rule_factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        crimp: _Plain,
        thread_width: _Measure,
        thread_thickness: _Measure,
        rule_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "crimp", "thread_width", "thread_thickness", "rule_factor"],
        *,
        racetrack_height_by_rule: _Measure,
        spacing: _Measure = ...,
        crimp: _Plain = ...,
        thread_width: _Measure = ...,
        thread_thickness: _Measure = ...,
        rule_factor: _Plain = ...,
    ) -> list[Quantity]: ...

racetrack_height_by_rule: _RacetrackHeightByRule

@final
class _RacetrackSpacing(Formula):
    """Spacing of flattened threads without the straight part of their section.

    p′ = p − (a − b)

    spacing: spacing of the threads crossed
    thread_width: their width
    thread_thickness: their thickness
    """

    def __call__(
        self,
        spacing: _Measure,
        thread_width: _Measure,
        thread_thickness: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spacing: _Measure,
        thread_width: _Measure,
        thread_thickness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spacing", "thread_width", "thread_thickness"],
        *,
        racetrack_spacing: _Measure,
        spacing: _Measure = ...,
        thread_width: _Measure = ...,
        thread_thickness: _Measure = ...,
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

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_thread_width: width of the warp thread
    warp_thread_thickness: thickness of the warp thread
    weft_thread_width: width of the weft thread
    weft_thread_thickness: thickness of the weft thread
    """

    def __call__(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_thread_width: _Measure,
        warp_thread_thickness: _Measure,
        weft_thread_width: _Measure,
        weft_thread_thickness: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_thread_width: _Measure,
        warp_thread_thickness: _Measure,
        weft_thread_width: _Measure,
        weft_thread_thickness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "warp_sett",
            "weft_sett",
            "warp_crimp",
            "warp_thread_width",
            "warp_thread_thickness",
            "weft_thread_width",
            "weft_thread_thickness",
        ],
        *,
        racetrack_weft_crimp: _Plain,
        warp_sett: _Measure = ...,
        weft_sett: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_thread_width: _Measure = ...,
        warp_thread_thickness: _Measure = ...,
        weft_thread_width: _Measure = ...,
        weft_thread_thickness: _Measure = ...,
    ) -> list[Quantity]: ...

racetrack_weft_crimp: _RacetrackWeftCrimp

@final
class _ReedForSett(Formula):
    """The reed for a sett.

    r = n_r / e

    reed_sett: sett in the reed
    ends_per_dent: ends in a dent
    """

    def __call__(self, reed_sett: _Measure, ends_per_dent: _Plain) -> Quantity: ...
    def working(
        self,
        reed_sett: _Measure,
        ends_per_dent: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_sett", "ends_per_dent"],
        *,
        reed_for_sett: _Measure,
        reed_sett: _Measure = ...,
        ends_per_dent: _Plain = ...,
    ) -> list[Quantity]: ...

reed_for_sett: _ReedForSett

@final
class _ReedWidth(Formula):
    """Width in the reed for a finished width.

    B = b_f / ((1 − s_w) × (1 − d_r))

    finished_width: finished width
    width_shrinkage: shrinkage in width, off the loom to finished
    draw_in: draw-in, reed to off the loom
    """

    def __call__(
        self,
        finished_width: _Measure,
        width_shrinkage: _Plain,
        draw_in: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        finished_width: _Measure,
        width_shrinkage: _Plain,
        draw_in: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["finished_width", "width_shrinkage", "draw_in"],
        *,
        reed_width: _Measure,
        finished_width: _Measure = ...,
        width_shrinkage: _Plain = ...,
        draw_in: _Plain = ...,
    ) -> list[Quantity]: ...

reed_width: _ReedWidth

@final
class _RunningMassAfter(Formula):
    """Mass of a running length after finishing.

    λ₂ = λ₁ × (1 − m_l) / (1 − s_l)

    running_mass_before: mass of a running length before
    mass_loss: mass lost; negative where the cloth gains
    length_shrinkage: shrinkage in length
    """

    def __call__(
        self,
        running_mass_before: _Measure,
        mass_loss: _Plain,
        length_shrinkage: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        running_mass_before: _Measure,
        mass_loss: _Plain,
        length_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["running_mass_before", "mass_loss", "length_shrinkage"],
        *,
        running_mass_after: _Measure,
        running_mass_before: _Measure = ...,
        mass_loss: _Plain = ...,
        length_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

running_mass_after: _RunningMassAfter

@final
class _RunningMassOfCloth(Formula):
    """Mass of a running metre of cloth.

    λ = 1000 × ω × b

    mass_per_area: mass per area
    cloth_width: width
    """

    def __call__(self, mass_per_area: _Measure, cloth_width: _Measure) -> Quantity: ...
    def working(
        self,
        mass_per_area: _Measure,
        cloth_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_per_area", "cloth_width"],
        *,
        running_mass_of_cloth: _Measure,
        mass_per_area: _Measure = ...,
        cloth_width: _Measure = ...,
    ) -> list[Quantity]: ...

running_mass_of_cloth: _RunningMassOfCloth

@final
class _SettAfterShrinkage(Formula):
    """Sett after the cloth has shrunk across those threads.

    n_a = n_b / (1 − s_x)

    sett_before: sett before
    across_shrinkage: shrinkage across the threads
    """

    def __call__(self, sett_before: _Measure, across_shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        sett_before: _Measure,
        across_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett_before", "across_shrinkage"],
        *,
        sett_after_shrinkage: _Measure,
        sett_before: _Measure = ...,
        across_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

sett_after_shrinkage: _SettAfterShrinkage

@final
class _SettBeforeShrinkage(Formula):
    """Sett before the cloth shrinks across those threads.

    n_b = n_a × (1 − s_x)

    sett_after: sett after
    across_shrinkage: shrinkage across the threads
    """

    def __call__(self, sett_after: _Measure, across_shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        sett_after: _Measure,
        across_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett_after", "across_shrinkage"],
        *,
        sett_before_shrinkage: _Measure,
        sett_after: _Measure = ...,
        across_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

sett_before_shrinkage: _SettBeforeShrinkage

@final
class _SettForCount(Formula):
    """The sett for another count of yarn at the same firmness, in the same weave.

    n₂ = n × √(T / T₂)

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

    n = 10 × K_c / √T

    cover_factor: cover factor
    count: yarn count
    """

    def __call__(self, cover_factor: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        cover_factor: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cover_factor", "count"],
        *,
        sett_for_cover_factor: _Measure,
        cover_factor: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

sett_for_cover_factor: _SettForCoverFactor

@final
class _SettForWeave(Formula):
    """The sett for another weave of the same yarn at the same firmness.

    n₂ = n × (R + I) / R / ((R₂ + I₂) / R₂)

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

    n₂ = n / μ

    sett: sett of the cloth at hand
    mass_ratio: new weight over the old
    """

    def __call__(self, sett: _Measure, mass_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        mass_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "mass_ratio"],
        *,
        sett_for_weight: _Measure,
        sett: _Measure = ...,
        mass_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

sett_for_weight: _SettForWeight

@final
class _SettFromRepeats(Formula):
    """The sett from the repeats of the weave counted in a width.

    n = n_R × R

    repeat_sett: repeats
    repeat: ends in a repeat
    """

    def __call__(self, repeat_sett: _Measure, repeat: _Plain) -> Quantity: ...
    def working(
        self,
        repeat_sett: _Measure,
        repeat: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["repeat_sett", "repeat"],
        *,
        sett_from_repeats: _Measure,
        repeat_sett: _Measure = ...,
        repeat: _Plain = ...,
    ) -> list[Quantity]: ...

sett_from_repeats: _SettFromRepeats

@final
class _SettFromWraps(Formula):
    """A sett by a rule of wraps.

    n = w × s

    wraps: wraps
    wraps_share: share of the wraps
    """

    def __call__(self, wraps: _Measure, wraps_share: _Plain) -> Quantity: ...
    def working(
        self,
        wraps: _Measure,
        wraps_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wraps", "wraps_share"],
        *,
        sett_from_wraps: _Measure,
        wraps: _Measure = ...,
        wraps_share: _Plain = ...,
    ) -> list[Quantity]: ...

sett_from_wraps: _SettFromWraps

@final
class _SettInReed(Formula):
    """Ends across the reed.

    n_r = r × e

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

    s = n / n_m

    sett: sett
    maximum_sett: closest sett by a theory
    """

    def __call__(self, sett: _Measure, maximum_sett: _Measure) -> Quantity: ...
    def working(
        self,
        sett: _Measure,
        maximum_sett: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sett", "maximum_sett"],
        *,
        share_of_maximum: _Plain,
        sett: _Measure = ...,
        maximum_sett: _Measure = ...,
    ) -> list[Quantity]: ...

share_of_maximum: _ShareOfMaximum

@final
class _ShrinkageFromDimensionalChange(Formula):
    """Shrinkage, as the mill counts it, of a dimensional change of ISO 5077.

    s = 0 − D

    dimensional_change: dimensional change
    """

    def __call__(self, dimensional_change: _Plain) -> Quantity: ...
    def working(
        self,
        dimensional_change: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dimensional_change"],
        *,
        shrinkage_from_dimensional_change: _Plain,
        dimensional_change: _Plain = ...,
    ) -> list[Quantity]: ...

shrinkage_from_dimensional_change: _ShrinkageFromDimensionalChange

@final
class _ShrinkageFromSizes(Formula):
    """Shrinkage from a size before and after.

    s = 1 − x₂ / x₁

    size_before: size before
    size_after: size after
    """

    def __call__(self, size_before: _Measure, size_after: _Measure) -> Quantity: ...
    def working(
        self,
        size_before: _Measure,
        size_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_before", "size_after"],
        *,
        shrinkage_from_sizes: _Plain,
        size_before: _Measure = ...,
        size_after: _Measure = ...,
    ) -> list[Quantity]: ...

shrinkage_from_sizes: _ShrinkageFromSizes

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
class _ShrinkageOfSide(Formula):
    """Shrinkage of each side of a cloth that shrinks alike both ways, from the area lost.

    s = 1 − √(1 − s_A)

    area_shrinkage: area lost
    """

    def __call__(self, area_shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        area_shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["area_shrinkage"],
        *,
        shrinkage_of_side: _Plain,
        area_shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

shrinkage_of_side: _ShrinkageOfSide

@final
class _SizeAfterShrinkage(Formula):
    """A length or width after it has shrunk.

    x₂ = x₁ × (1 − s)

    size_before: size before
    shrinkage: shrinkage
    """

    def __call__(self, size_before: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        size_before: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_before", "shrinkage"],
        *,
        size_after_shrinkage: _Measure,
        size_before: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

size_after_shrinkage: _SizeAfterShrinkage

@final
class _SizeBeforeShrinkage(Formula):
    """A length or width before it shrinks.

    x₁ = x₂ / (1 − s)

    size_after: size after
    shrinkage: shrinkage
    """

    def __call__(self, size_after: _Measure, shrinkage: _Plain) -> Quantity: ...
    def working(
        self,
        size_after: _Measure,
        shrinkage: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_after", "shrinkage"],
        *,
        size_before_shrinkage: _Measure,
        size_after: _Measure = ...,
        shrinkage: _Plain = ...,
    ) -> list[Quantity]: ...

size_before_shrinkage: _SizeBeforeShrinkage

@final
class _SizeForOverWidth(Formula):
    """Size to weave for a finished size and an over-width.

    x₁ = x₂ × (1 + x)

    size_after: size finished
    over_width: over-width
    """

    def __call__(self, size_after: _Measure, over_width: _Plain) -> Quantity: ...
    def working(
        self,
        size_after: _Measure,
        over_width: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["size_after", "over_width"],
        *,
        size_for_over_width: _Measure,
        size_after: _Measure = ...,
        over_width: _Plain = ...,
    ) -> list[Quantity]: ...

size_for_over_width: _SizeForOverWidth

@final
class _SizeMass(Formula):
    """Mass of the size on a warp.

    m_z = m₁ × z

    warp_mass: mass of the warp without size
    size: size, on the warp without it
    """

    def __call__(self, warp_mass: _Measure, size: _Plain) -> Quantity: ...
    def working(
        self,
        warp_mass: _Measure,
        size: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_mass", "size"],
        *,
        size_mass: _Measure,
        warp_mass: _Measure = ...,
        size: _Plain = ...,
    ) -> list[Quantity]: ...

size_mass: _SizeMass

@final
class _StitchConstant(Formula):
    """Constant of the loops on an area, from those of courses and wales.

    K_s = K_c × K_w

    course_constant: constant of the courses
    wale_constant: constant of the wales
    """

    def __call__(self, course_constant: _Plain, wale_constant: _Plain) -> Quantity: ...
    def working(
        self,
        course_constant: _Plain,
        wale_constant: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["course_constant", "wale_constant"],
        *,
        stitch_constant: _Plain,
        course_constant: _Plain = ...,
        wale_constant: _Plain = ...,
    ) -> list[Quantity]: ...

stitch_constant: _StitchConstant

@final
class _TakeUpFromLengths(Formula):
    """Take-up of the warp from the yarn that was woven and the cloth when it lies relaxed.

    u = 1 − L / Y

    yarn_length: yarn, unstretched
    cloth_length: cloth, relaxed
    """

    def __call__(self, yarn_length: _Measure, cloth_length: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_length: _Measure,
        cloth_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_length", "cloth_length"],
        *,
        take_up_from_lengths: _Plain,
        yarn_length: _Measure = ...,
        cloth_length: _Measure = ...,
    ) -> list[Quantity]: ...

take_up_from_lengths: _TakeUpFromLengths

@final
class _TaylorCrimp(Formula):
    """What the warp must be longer than the cloth, by Taylor's rule for cotton.

    N = 590.541247 / T₂; c = 2.54 × i × m / N / 100

    intersection_sett: intersections of an end
    taylor_multiplier: multiplier
    weft_count: count of the weft
    """

    def __call__(
        self,
        intersection_sett: _Measure,
        taylor_multiplier: _Plain,
        weft_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        intersection_sett: _Measure,
        taylor_multiplier: _Plain,
        weft_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["intersection_sett", "taylor_multiplier", "weft_count"],
        *,
        taylor_crimp: _Plain,
        intersection_sett: _Measure = ...,
        taylor_multiplier: _Plain = ...,
        weft_count: _Measure = ...,
    ) -> list[Quantity]: ...

taylor_crimp: _TaylorCrimp

@final
class _TaylorPlainSett(Formula):
    """The closest sett of a balanced plain cloth by Taylor: half of the diameters and a little
    more.

    n_m = D / 2 × (1 + a)

    side_by_side: diameters side by side
    taylor_allowance: allowance
    """

    def __call__(self, side_by_side: _Measure, taylor_allowance: _Plain) -> Quantity: ...
    def working(
        self,
        side_by_side: _Measure,
        taylor_allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["side_by_side", "taylor_allowance"],
        *,
        taylor_plain_sett: _Measure,
        side_by_side: _Measure = ...,
        taylor_allowance: _Plain = ...,
    ) -> list[Quantity]: ...

taylor_plain_sett: _TaylorPlainSett

@final
class _ThicknessByRule(Formula):
    """Thickness of plain cloth, its waves by the rule of the root.

    h₁ = k × 10 / n₂ × √c₁; h₂ = d₁ + d₂ − h₁; H = (no answer if h₂ < 0, else greater of (h₁ +
    d₁, h₂ + d₂))

    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    rule_factor: factor
    """

    def __call__(
        self,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        rule_factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        rule_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "weft_sett", "warp_crimp", "warp_diameter", "weft_diameter", "rule_factor"
        ],
        *,
        thickness_by_rule: _Measure,
        weft_sett: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        rule_factor: _Plain = ...,
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

    K_t = √T / (100 × l)

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

    warp_cover: fractional cover of the warp
    weft_cover: fractional cover of the weft
    """

    def __call__(self, warp_cover: _Plain, weft_cover: _Plain) -> Quantity: ...
    def working(
        self,
        warp_cover: _Plain,
        weft_cover: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_cover", "weft_cover"],
        *,
        total_cover: _Plain,
        warp_cover: _Plain = ...,
        weft_cover: _Plain = ...,
    ) -> list[Quantity]: ...

total_cover: _TotalCover

@final
class _WarpLength(Formula):
    """Length of a warp for a number of pieces.

    W = W_p × n_p + a

    warp_per_piece: warp for a piece
    pieces: pieces
    loom_waste: waste of the warp
    """

    def __call__(
        self,
        warp_per_piece: _Measure,
        pieces: _Plain,
        loom_waste: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_per_piece: _Measure,
        pieces: _Plain,
        loom_waste: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_per_piece", "pieces", "loom_waste"],
        *,
        warp_length: _Measure,
        warp_per_piece: _Measure = ...,
        pieces: _Plain = ...,
        loom_waste: _Measure = ...,
    ) -> list[Quantity]: ...

warp_length: _WarpLength

@final
class _WarpMass(Formula):
    """Mass of the yarn in a warp.

    m₁ = N × W × T₁ × 0.000001

    ends: ends
    warp_length: length of the warp
    warp_count: count of the warp
    """

    def __call__(self, ends: _Plain, warp_length: _Measure, warp_count: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp_length: _Measure,
        warp_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp_length", "warp_count"],
        *,
        warp_mass: _Measure,
        ends: _Plain = ...,
        warp_length: _Measure = ...,
        warp_count: _Measure = ...,
    ) -> list[Quantity]: ...

warp_mass: _WarpMass

@final
class _WarpPerPiece(Formula):
    """Warp for a piece, its fringes included.

    W_p = L_f / (1 − s_l) / (1 − u) + 2 × q

    finished_length: finished length of the woven part
    length_shrinkage: shrinkage in length, off the loom to finished
    take_up: take-up of the warp
    fringe: fringe at each end
    """

    def __call__(
        self,
        finished_length: _Measure,
        length_shrinkage: _Plain,
        take_up: _Plain,
        fringe: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        finished_length: _Measure,
        length_shrinkage: _Plain,
        take_up: _Plain,
        fringe: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["finished_length", "length_shrinkage", "take_up", "fringe"],
        *,
        warp_per_piece: _Measure,
        finished_length: _Measure = ...,
        length_shrinkage: _Plain = ...,
        take_up: _Plain = ...,
        fringe: _Measure = ...,
    ) -> list[Quantity]: ...

warp_per_piece: _WarpPerPiece

@final
class _WarpSections(Formula):
    """Sections in which a mill warp is made.

    S = round up(N / N_s − 0.000001)

    ends: ends of the warp
    ends_per_section: ends in a section: the bobbins in the creel
    """

    def __call__(self, ends: _Plain, ends_per_section: _Plain) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        ends_per_section: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "ends_per_section"],
        *,
        warp_sections: _Plain,
        ends: _Plain = ...,
        ends_per_section: _Plain = ...,
    ) -> list[Quantity]: ...

warp_sections: _WarpSections

@final
class _WarpSettAfterStretch(Formula):
    """Ends after plain cloth was stretched, or let go, to other picks: its crimps change places.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); p₁ = 10 / n₁; h₂ = D − h₁; l₂ = D × 2 ×
    arctan(h₂ / (p₁ + √(p₁ × p₁ − h₂ × (2 × D − h₂)))) + (p₁ − D × sin(2 × arctan(h₂ / (p₁ + √(p₁
    × p₁ − h₂ × (2 × D − h₂)))))) / cos(2 × arctan(h₂ / (p₁ + √(p₁ × p₁ − h₂ × (2 × D − h₂)))));
    p₂′ = 10 / n₂′; θ₁′ = root of (l₁ − D × θ₁′) × cos(θ₁′) + D × sin(θ₁′) − p₂′; h₁′ = (l₁ − D ×
    θ₁′) × sin(θ₁′) + D × (1 − cos(θ₁′)); h₂′ = D − h₁′; θ₂′ = root of (l₂ − D × θ₂′) × sin(θ₂′)
    + D × (1 − cos(θ₂′)) − h₂′; p₁′ = (l₂ − D × θ₂′) × cos(θ₂′) + D × sin(θ₂′); n₁′ = (no answer
    if D < h₁, else (no answer if D < h₁′, else 10 / p₁′))

    warp_sett_before: ends
    weft_sett_before: picks
    warp_crimp_before: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    weft_sett_after: picks after
    """

    def __call__(
        self,
        warp_sett_before: _Measure,
        weft_sett_before: _Measure,
        warp_crimp_before: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        weft_sett_after: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett_before: _Measure,
        weft_sett_before: _Measure,
        warp_crimp_before: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        weft_sett_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "warp_sett_before",
            "weft_sett_before",
            "warp_crimp_before",
            "warp_diameter",
            "weft_diameter",
            "weft_sett_after",
        ],
        *,
        warp_sett_after_stretch: _Measure,
        warp_sett_before: _Measure = ...,
        weft_sett_before: _Measure = ...,
        warp_crimp_before: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        weft_sett_after: _Measure = ...,
    ) -> list[Quantity]: ...

warp_sett_after_stretch: _WarpSettAfterStretch

@final
class _WarpYarnLength(Formula):
    """Yarn in a warp.

    Y = N × W

    ends: ends
    warp_length: length of the warp
    """

    def __call__(self, ends: _Plain, warp_length: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp_length"],
        *,
        warp_yarn_length: _Measure,
        ends: _Plain = ...,
        warp_length: _Measure = ...,
    ) -> list[Quantity]: ...

warp_yarn_length: _WarpYarnLength

@final
class _WeftCrimp(Formula):
    """Crimp of the weft in plain cloth, from that of the warp.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of s₁ × cos(θ₁) + D × sin(θ₁) − p₂;
    s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; p₁ = 10 / n₁; s₂ = √(p₁ × p₁ −
    h₂ × (2 × D − h₂)); θ₂ = 2 × arctan(h₂ / (p₁ + s₂)); l₂ = D × θ₂ + s₂; c₂ = (no answer if D <
    h₁, else l₂ / p₁ − 1)

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

    def __call__(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["warp_sett", "weft_sett", "warp_crimp", "warp_diameter", "weft_diameter"],
        *,
        weft_crimp: _Plain,
        warp_sett: _Measure = ...,
        weft_sett: _Measure = ...,
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

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    rule_factor: factor
    """

    def __call__(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        rule_factor: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        warp_sett: _Measure,
        weft_sett: _Measure,
        warp_crimp: _Plain,
        warp_diameter: _Measure,
        weft_diameter: _Measure,
        rule_factor: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "warp_sett", "weft_sett", "warp_crimp", "warp_diameter", "weft_diameter", "rule_factor"
        ],
        *,
        weft_crimp_by_rule: _Plain,
        warp_sett: _Measure = ...,
        weft_sett: _Measure = ...,
        warp_crimp: _Plain = ...,
        warp_diameter: _Measure = ...,
        weft_diameter: _Measure = ...,
        rule_factor: _Plain = ...,
    ) -> list[Quantity]: ...

weft_crimp_by_rule: _WeftCrimpByRule

@final
class _WeftMass(Formula):
    """Mass of the weft in a length of cloth.

    m₂ = 100 × n₂ × L × B × T₂ × 0.000001

    reed_width: width in the reed
    cloth_length: length of the cloth
    weft_sett: picks in the cloth
    weft_count: count of the weft
    """

    def __call__(
        self,
        reed_width: _Measure,
        cloth_length: _Measure,
        weft_sett: _Measure,
        weft_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        reed_width: _Measure,
        cloth_length: _Measure,
        weft_sett: _Measure,
        weft_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["reed_width", "cloth_length", "weft_sett", "weft_count"],
        *,
        weft_mass: _Measure,
        reed_width: _Measure = ...,
        cloth_length: _Measure = ...,
        weft_sett: _Measure = ...,
        weft_count: _Measure = ...,
    ) -> list[Quantity]: ...

weft_mass: _WeftMass

@final
class _WeftPerPiece(Formula):
    """Weft for a piece.

    Y_p = P × (B + b)

    picks: picks
    reed_width: width in the reed
    turn_allowance: allowance for the turn at the selvedge, for each pick
    """

    def __call__(
        self,
        picks: _Plain,
        reed_width: _Measure,
        turn_allowance: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        picks: _Plain,
        reed_width: _Measure,
        turn_allowance: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "reed_width", "turn_allowance"],
        *,
        weft_per_piece: _Measure,
        picks: _Plain = ...,
        reed_width: _Measure = ...,
        turn_allowance: _Measure = ...,
    ) -> list[Quantity]: ...

weft_per_piece: _WeftPerPiece

@final
class _WeftYarnLength(Formula):
    """Weft for a number of pieces, with waste.

    Y = Y_p × n_p × (1 + w₂)

    weft_per_piece: weft for a piece
    pieces: pieces
    weft_waste: waste, on the weft woven in
    """

    def __call__(
        self,
        weft_per_piece: _Measure,
        pieces: _Plain,
        weft_waste: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        weft_per_piece: _Measure,
        pieces: _Plain,
        weft_waste: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["weft_per_piece", "pieces", "weft_waste"],
        *,
        weft_yarn_length: _Measure,
        weft_per_piece: _Measure = ...,
        pieces: _Plain = ...,
        weft_waste: _Plain = ...,
    ) -> list[Quantity]: ...

weft_yarn_length: _WeftYarnLength

@final
class _WorkingSett(Formula):
    """The sett to weave, as a share of the closest.

    n = n_m × s

    maximum_sett: closest sett
    sett_share: share of it
    """

    def __call__(self, maximum_sett: _Measure, sett_share: _Plain) -> Quantity: ...
    def working(
        self,
        maximum_sett: _Measure,
        sett_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["maximum_sett", "sett_share"],
        *,
        working_sett: _Measure,
        maximum_sett: _Measure = ...,
        sett_share: _Plain = ...,
    ) -> list[Quantity]: ...

working_sett: _WorkingSett

@final
class _YarnInCloth(Formula):
    """Yarn in a length of cloth, from the crimp.

    Y = L × (1 + c)

    cloth_length: length of the cloth
    crimp: crimp
    """

    def __call__(self, cloth_length: _Measure, crimp: _Plain) -> Quantity: ...
    def working(
        self,
        cloth_length: _Measure,
        crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cloth_length", "crimp"],
        *,
        yarn_in_cloth: _Measure,
        cloth_length: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

yarn_in_cloth: _YarnInCloth

@final
class _YarnInPiece(Formula):
    """Yarn in a warp and its weft together.

    Y = N × W + P × B

    ends: ends
    warp_length: length of the warp
    picks: picks
    reed_width: width in the reed
    """

    def __call__(
        self,
        ends: _Plain,
        warp_length: _Measure,
        picks: _Plain,
        reed_width: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp_length: _Measure,
        picks: _Plain,
        reed_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp_length", "picks", "reed_width"],
        *,
        yarn_in_piece: _Measure,
        ends: _Plain = ...,
        warp_length: _Measure = ...,
        picks: _Plain = ...,
        reed_width: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_in_piece: _YarnInPiece

@final
class _YarnShrinkageInCloth(Formula):
    """How much the yarn itself shrank in a cloth that shrank while its crimp changed.

    s_t = 1 − (1 − s_y) × (1 + c₂) / (1 + c₁)

    along_shrinkage: shrinkage of the cloth along the yarn
    crimp_before: crimp before
    crimp_after: crimp after
    """

    def __call__(
        self,
        along_shrinkage: _Plain,
        crimp_before: _Plain,
        crimp_after: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        along_shrinkage: _Plain,
        crimp_before: _Plain,
        crimp_after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["along_shrinkage", "crimp_before", "crimp_after"],
        *,
        yarn_shrinkage_in_cloth: _Plain,
        along_shrinkage: _Plain = ...,
        crimp_before: _Plain = ...,
        crimp_after: _Plain = ...,
    ) -> list[Quantity]: ...

yarn_shrinkage_in_cloth: _YarnShrinkageInCloth
