"""Weave, sett and reed, the piece, its mass, knitting, finishing."""

# Written by python -m hankwise._stubs from the catalogue.

from collections.abc import Sequence
from typing import Any, Literal, NotRequired, TypedDict

from hankwise._hankwise import (
    Quantity,
    Results,
    _as_calculation,
    _as_formula,
    _Measure,
    _Measures,
    _Named,
    _Plain,
    _Plains,
    colour_order as colour_order,
    draft as draft,
    satin_moves as satin_moves,
    weave as weave,
)

@_as_formula
def area_shrinkage(width_shrinkage: _Plain, length_shrinkage: _Plain) -> Quantity:
    """Area lost from the shrinkages in width and length.

    s_A = 1 − (1 − s_w) × (1 − s_l)

    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

@_as_formula
def brierley_sett(
    mean_float: _Plain,
    weave_exponent: _Plain,
    brierley_constant: _Plain,
    count: _Measure,
) -> Quantity:
    """The maximum sett of a square cloth by Brierley.

    Fᵐ = exp(m × ln(F)); Y = 496,054.648 / T; n_q = Fᵐ × √k × √Y / 2.54

    mean_float: average float, threads for each intersection
    weave_exponent: exponent of the class of weave
    brierley_constant: constant on the yards in a pound
    count: yarn count
    """

@_as_formula
def brierley_weft_sett(square_sett: _Measure, warp_sett: _Measure) -> Quantity:
    """The most picks at a number of ends, by Brierley: the ends to the power ⅔ times the picks
    stay.

    n₂ = n_q^(5 / 3) × n₁^(−2 / 3)

    square_sett: maximum sett of the square cloth
    warp_sett: ends
    """

@_as_formula
def brierley_weft_sett_unlike(
    square_sett: _Measure,
    warp_sett: _Measure,
    warp_count: _Measure,
    weft_count: _Measure,
) -> Quantity:
    """The most picks at a number of ends, by Brierley, where warp and weft are of unlike count.

    a = 2 / 3 × √(T₁ / T₂); n₂ = n_q × exp(a × ln(n_q / n₁))

    square_sett: maximum sett of the square cloth
    warp_sett: ends
    warp_count: count of the warp
    weft_count: count of the weft
    """

@_as_formula
def cloth_cover_factor(
    warp_cover_factor: _Measure,
    weft_cover_factor: _Measure,
    cover_factor_limit: _Measure,
) -> Quantity:
    """Cover factor of the cloth from those of warp and weft.

    K_c = K₁ + K₂ − K₁ × K₂ / K_l

    warp_cover_factor: cover factor of the warp
    weft_cover_factor: cover factor of the weft
    cover_factor_limit: cover factor at which threads touch
    """

@_as_formula
def cloth_specific_volume(thickness: _Measure, mass_per_area: _Measure) -> Quantity:
    """Specific volume of a cloth, the air in it counted.

    v = 1000 × H / ω

    thickness: thickness
    mass_per_area: mass per area
    """

@_as_formula
def compounded_shrinkage(shrinkages: _Plains) -> Quantity:
    """Shrinkage of several processes in their order, each on the size that it found.

    S = 1 − (1 − s₁) × (1 − s₂)

    shrinkages: shrinkage of each process
    """

@_as_formula
def count_after_finishing(
    count_before: _Measure,
    mass_loss: _Plain,
    along_shrinkage: _Plain,
) -> Quantity:
    """Count of the yarn in the cloth after finishing.

    T₂ = T₁ × (1 − m_l) / (1 − s_y)

    count_before: count before
    mass_loss: mass lost; negative where the cloth gains
    along_shrinkage: shrinkage along the yarn
    """

@_as_formula
def count_before_finishing(
    count_after: _Measure,
    mass_loss: _Plain,
    along_shrinkage: _Plain,
) -> Quantity:
    """Count to weave with for a count wanted in the finished cloth.

    T₁ = T₂ × (1 − s_y) / (1 − m_l)

    count_after: count in the finished cloth
    mass_loss: mass lost; negative where the cloth gains
    along_shrinkage: shrinkage along the yarn
    """

@_as_formula
def count_for_cover_factor(cover_factor: _Measure, sett: _Measure) -> Quantity:
    """The count that gives a cover factor at a sett.

    T = (10 × K_c / n)²

    cover_factor: cover factor
    sett: sett
    """

@_as_formula
def count_for_sett(
    yarn_factor: _Plain,
    sett: _Measure,
    sett_share: _Plain,
    repeat: _Plain,
    intersections: _Plain,
) -> Quantity:
    """The count of yarn that suits a sett wanted, by diameters and intersections.

    D = n / s × (R + I) / R; Y = (2.54 × D / k)²; T = 496,054.648 / Y

    yarn_factor: factor of the yarn
    sett: sett wanted
    sett_share: share of the maximum
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

@_as_formula
def count_for_weight(count: _Measure, mass_ratio: _Plain) -> Quantity:
    """The count for a heavier or lighter cloth of the same weave and firmness.

    T₂ = T × μ²

    count: count of the yarn at hand
    mass_ratio: new weight over the old
    """

@_as_formula
def count_with_added(count: _Measure, size_or_oil: _Plain) -> Quantity:
    """Count of a yarn with size or oil on it.

    T₂ = T × (1 + z)

    count: count without it
    size_or_oil: size or oil, on the yarn without it
    """

@_as_formula
def courses_for_loop(loop_constant: _Plain, loop_length: _Measure) -> Quantity:
    """The courses, or the wales, that a loop length leads to.

    n = K_d / (100 × l)

    loop_constant: constant of the direction
    loop_length: length of yarn in a loop
    """

@_as_formula
def cover_factor(sett: _Measure, count: _Measure) -> Quantity:
    """How closely the threads of one direction lie for their count.

    K_c = n × √T / 10

    sett: sett
    count: yarn count
    """

@_as_formula
def cover_factor_after_finishing(
    cover_factor_before: _Measure,
    mass_loss: _Plain,
    across_shrinkage: _Plain,
    along_shrinkage: _Plain,
) -> Quantity:
    """Cover factor after finishing of the threads of one direction.

    K_a = K_b × √((1 − m_l) / (1 − s_y)) / (1 − s_x)

    cover_factor_before: cover factor before
    mass_loss: mass lost; negative where the cloth gains
    across_shrinkage: shrinkage across the threads
    along_shrinkage: shrinkage along the yarn
    """

@_as_formula
def cover_factor_limit(specific_volume: _Measure) -> Quantity:
    """Cover factor at which round threads lie side by side and touch.

    K_l = √(1000 × π / 4 / v)

    specific_volume: specific volume of the yarn
    """

@_as_formula
def crimp_after_finishing(
    crimp_before: _Plain,
    along_shrinkage: _Plain,
    yarn_shrinkage: _Plain,
) -> Quantity:
    """Crimp after the cloth has shrunk more or less than its yarn.

    c₂ = (1 + c₁) × (1 − s_t) / (1 − s_y) − 1

    crimp_before: crimp before
    along_shrinkage: shrinkage of the cloth along the yarn
    yarn_shrinkage: shrinkage of the yarn itself
    """

@_as_formula
def crimp_angle(modular_length: _Measure, spacing: _Measure, diameter_sum: _Measure) -> Quantity:
    """Angle at which a thread crosses the plane of the cloth.

    θ_r = root of (l − D × θ_r) × cos(θ_r) + D × sin(θ_r) − p; θ = θ_r × 180 / π

    modular_length: length between threads crossed
    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

@_as_formula
def crimp_before_finishing(
    crimp_after: _Plain,
    along_shrinkage: _Plain,
    yarn_shrinkage: _Plain,
) -> Quantity:
    """Crimp before finishing from that in the finished cloth.

    c₁ = (1 + c₂) × (1 − s_y) / (1 − s_t) − 1

    crimp_after: crimp after
    along_shrinkage: shrinkage of the cloth along the yarn
    yarn_shrinkage: shrinkage of the yarn itself
    """

@_as_formula
def crimp_from_lengths(yarn_length: _Measure, cloth_length: _Measure) -> Quantity:
    """Crimp: how much longer the yarn is than the cloth that it lies in.

    c = (Y − L) / L

    yarn_length: length of the yarn
    cloth_length: length of the cloth
    """

@_as_formula
def crimp_from_take_up(take_up: _Plain) -> Quantity:
    """Crimp on cloth length from take-up on yarn length.

    c = u / (1 − u)

    take_up: take-up on the length of the yarn
    """

@_as_formula
def crimp_height(modular_length: _Measure, spacing: _Measure, diameter_sum: _Measure) -> Quantity:
    """Height of the wave of a thread, from the middle of its trough to that of its crest.

    θ = root of (l − D × θ) × cos(θ) + D × sin(θ) − p; h = (l − D × θ) × sin(θ) + D × (1 −
    cos(θ))

    modular_length: length between threads crossed
    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

@_as_formula
def crimp_height_by_rule(spacing: _Measure, crimp: _Plain, rule_factor: _Plain) -> Quantity:
    """Height of the wave of a thread by the rule of the root.

    h = k × p × √c

    spacing: spacing of the threads crossed
    crimp: crimp
    rule_factor: factor
    """

@_as_formula
def crown_height(wave_height: _Measure, yarn_diameter: _Measure) -> Quantity:
    """Height of a crown: of the wave of a thread and the thread itself.

    H = h + d

    wave_height: height of the wave
    yarn_diameter: diameter
    """

@_as_formula
def curvature_sett(side_by_side: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity:
    """The maximum sett of a weave by the curvature of the threads, for a square cloth of like
    yarns.

    n_m = D × R / (R + 0.732050808 × I)

    side_by_side: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

@_as_formula
def curvature_sett_unlike(
    own_side_by_side: _Measure,
    crossing_side_by_side: _Measure,
    repeat: _Plain,
    intersections: _Plain,
) -> Quantity:
    """The maximum sett of one system by curvature, where the other is of another yarn.

    p = 0.866025404 × (1 / D₁ + 1 / D₂); n_m = R / ((R − I) / D₁ + I × p)

    own_side_by_side: diameters of the yarn that is set, side by side
    crossing_side_by_side: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

@_as_formula
def dents_in_width(reed: _Measure, reed_width: _Measure) -> Quantity:
    """Dents in a width of the reed.

    N = 100 × r × B

    reed: reed
    reed_width: width in the reed
    """

@_as_formula
def diameters_in_cloth(
    warp_sett: _Measure,
    weft_sett: _Measure,
    warp_crimp: _Plain,
    weft_crimp: _Plain,
) -> Quantity:
    """Sum of the diameters that the threads of a plain cloth behave as having, from measured
    crimps.

    p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); p₁ = 10 / n₁; l₂ = p₁ × (1 + c₂); D = root of (l₁ − D × θ₁)
    × sin(θ₁) + D × (1 − cos(θ₁)) + ((l₂ − D × θ₂) × sin(θ₂) + D × (1 − cos(θ₂))) − D; θ₁ = root
    of (l₁ − D × θ₁) × cos(θ₁) + D × sin(θ₁) − p₂; θ₂ = root of (l₂ − D × θ₂) × cos(θ₂) + D ×
    sin(θ₂) − p₁

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    weft_crimp: crimp of the weft
    """

@_as_formula
def diameters_side_by_side(yarn_factor: _Plain, count: _Measure) -> Quantity:
    """Diameters of a yarn that lie side by side in a centimetre.

    Y = 496,054.648 / T; D = k × √Y / 2.54

    yarn_factor: factor of the yarn
    count: yarn count
    """

@_as_formula
def dimensional_change(size_before: _Measure, size_after: _Measure) -> Quantity:
    """Dimensional change as ISO 5077 reports it.

    D = (x₂ − x₁) / x₁

    size_before: measure before
    size_after: measure after
    """

@_as_formula
def dimensional_change_from_shrinkage(shrinkage: _Plain) -> Quantity:
    """Dimensional change of ISO 5077 of a shrinkage as the mill counts it.

    D = −s

    shrinkage: shrinkage
    """

@_as_formula
def draw_in_from_widths(reed_width: _Measure, off_loom_width: _Measure) -> Quantity:
    """Draw-in from the width in the reed and off the loom.

    d_r = 1 − b_o / B

    reed_width: width in the reed
    off_loom_width: width off the loom
    """

@_as_formula
def ends_for_reed(reed: _Measure, ends_per_dent: _Plain, reed_width: _Measure) -> Quantity:
    """Ends that fill whole dents within a width.

    N = round down(100 × r × B) × e

    reed: reed
    ends_per_dent: ends in a dent
    reed_width: width in the reed
    """

@_as_formula
def ends_in_width(sett: _Measure, cloth_width: _Measure) -> Quantity:
    """Threads in a width.

    N = 100 × n × b

    sett: sett
    cloth_width: width in the same state
    """

@_as_formula
def ends_with_selvedges(
    ground_sett: _Measure,
    ground_width: _Measure,
    selvedge_width: _Measure,
    selvedge_closeness: _Plain,
) -> Quantity:
    """Ends of a cloth whose selvedges are set closer than its ground.

    N = 100 × n_g × (b_g + k × b_s)

    ground_sett: sett of the ground
    ground_width: width of the ground
    selvedge_width: width of both selvedges together
    selvedge_closeness: ends in a dent of the selvedge over those of the ground
    """

@_as_formula
def finished_mass_per_area(
    off_loom_mass_per_area: _Measure,
    mass_loss: _Plain,
    width_shrinkage: _Plain,
    length_shrinkage: _Plain,
) -> Quantity:
    """Mass per area after finishing.

    ω₂ = ω₁ × (1 − m_l) / ((1 − s_w) × (1 − s_l))

    off_loom_mass_per_area: mass per area off the loom
    mass_loss: mass lost; negative where the cloth gains
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

@_as_formula
def fractional_cover(sett: _Measure, yarn_diameter: _Measure) -> Quantity:
    """Share of the surface that the threads of one direction cover.

    n·d = n × d / 10; e = smaller of (n·d, 1)

    sett: sett
    yarn_diameter: diameter of the yarn
    """

@_as_formula
def fractional_cover_of_factor(cover_factor: _Measure, specific_volume: _Measure) -> Quantity:
    """Share of the surface that threads cover, from their cover factor and what a gram of yarn
    fills.

    K_c/K_l = K_c × √(4 / (1000 × π) × v); e = smaller of (K_c/K_l, 1)

    cover_factor: cover factor
    specific_volume: specific volume of the yarn
    """

@_as_formula
def fringe_mass(ends: _Plain, fringe: _Measure, warp_count: _Measure) -> Quantity:
    """Mass of the fringes of a piece.

    m = 2 × N × q × T₁ / 1000000

    ends: ends
    fringe: fringe at each end of the piece
    warp_count: count of the warp
    """

@_as_formula
def galceran_coefficient(material_coefficient: _Plain, crossings: _Plain) -> Quantity:
    """Galceran's greatest coefficient of density.

    K = Q / (1 + 0.73 × l)

    material_coefficient: coefficient of the material
    crossings: intersections for each thread of the other system
    """

@_as_formula
def galceran_sett(density_coefficient: _Plain, count: _Measure) -> Quantity:
    """Sett by Galceran's coefficient of density.

    Nm = 1000 / T; n = K × √Nm

    density_coefficient: coefficient of density
    count: yarn count
    """

@_as_formula
def grey_mass(warp_mass: _Measure, size: _Plain, weft_mass: _Measure) -> Quantity:
    """Mass of a piece as it leaves the loom: warp with its size, and weft.

    m = m₁ × (1 + z) + m₂

    warp_mass: mass of the warp without size
    size: size, on the warp without it
    weft_mass: mass of the weft
    """

@_as_formula
def hanks_of_warp(ends: _Plain, warp_length: _Measure, hank_length: _Measure) -> Quantity:
    """Hanks of yarn in a warp.

    h = N × W / l_h

    ends: ends
    warp_length: length of the warp
    hank_length: length of a hank
    """

@_as_formula
def hanks_of_weft(
    reed_width: _Measure,
    cloth_length: _Measure,
    weft_sett: _Measure,
    hank_length: _Measure,
) -> Quantity:
    """Hanks of yarn in the weft of a piece.

    h = 100 × n₂ × L × B / l_h

    reed_width: width in the reed
    cloth_length: length of the piece
    weft_sett: picks in the piece
    hank_length: length of a hank
    """

@_as_formula
def heald_density(reed_sett: _Measure, ends_on_shaft: _Plain, repeat: _Plain) -> Quantity:
    """How close the heddles are on a shaft.

    h = n_r × R_s / R

    reed_sett: sett in the reed
    ends_on_shaft: ends of the repeat of the draft on the shaft
    repeat: ends in the repeat of the draft
    """

@_as_formula
def intersections_in_length(weft_sett: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity:
    """Intersections that an end makes in a length of cloth.

    i = n₂ × I / R

    weft_sett: picks
    repeat: picks in the repeat
    intersections: intersections of an end in the repeat
    """

@_as_formula
def jam_angle(spacing: _Measure, diameter_sum: _Measure) -> Quantity:
    """Angle of a thread that is jammed: it lies round those it crosses without a straight part.

    p/D = p / D; θ = arctan(p/D / √(1 − (p/D)²)) × 180 / π

    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

@_as_formula
def jam_cover_factor(cover_factor_limit: _Measure) -> Quantity:
    """Cover factor at which a square plain cloth jams: threads √3 diameters apart both ways.

    K_c = K_l / 1.73205081

    cover_factor_limit: cover factor at which threads touch
    """

@_as_formula
def jam_crimp(spacing: _Measure, diameter_sum: _Measure) -> Quantity:
    """The most crimp that a thread can have between threads at a spacing: it is then jammed.

    p/D = p / D; θ = arctan(p/D / √(1 − (p/D)²)); c = θ / p/D − 1

    spacing: spacing of the threads crossed
    diameter_sum: sum of the diameters
    """

@_as_formula
def jam_spacing(spacing: _Measure, diameter_sum: _Measure) -> Quantity:
    """Spacing of the one system where both are jammed, from that of the other.

    cos θ₂ = √(1 − (p / D)²); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1 − (cos θ₁)²)

    spacing: spacing of the other system
    diameter_sum: sum of the diameters
    """

@_as_formula
def jam_weft_sett(
    warp_sett: _Measure,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
) -> Quantity:
    """The most picks of plain cloth at a number of ends: both systems jammed, by Peirce.

    D = d₁ + d₂; p₁ = 10 / n₁; cos θ₂ = √(1 − (p₁ / D)²); cos θ₁ = 1 − cos θ₂; p₂ = D × √(1 −
    (cos θ₁)²); n₂ = 10 / p₂

    warp_sett: ends
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

@_as_formula
def jam_weft_sett_of_weave(
    warp_sett: _Measure,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
    weft_float: _Plain,
    warp_float: _Plain,
) -> Quantity:
    """The most picks of any weave at a number of ends: both systems jammed, after Love.

    D = d₁ + d₂; p₁′ = F₂ × 10 / n₁ − (F₂ − 1) × d₁; cos θ₂ = √(1 − (p₁′ / D)²); cos θ₁ = 1 − cos
    θ₂; p₂ = D × √(1 − (cos θ₁)²); n₂ = (10 × F₁ / (p₂ + (F₁ − 1) × d₂) if 0 < p₁′, else no
    answer)

    warp_sett: ends
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    weft_float: average float of the picks
    warp_float: average float of the ends
    """

@_as_formula
def knit_mass(
    courses: _Measure,
    cloth_width: _Measure,
    cloth_length: _Measure,
    knit_take_up: _Plain,
    count: _Measure,
) -> Quantity:
    """Mass of the yarn in a knitted piece: courses, the width of each, and the take-up of its
    loops.

    Y = 100 × c × L × b × u; m = Y × T / 1000000

    courses: courses
    cloth_width: width of the piece
    cloth_length: length of the piece
    knit_take_up: take-up: length of yarn over width of course
    count: count
    """

@_as_formula
def knit_mass_per_area(loop_density: _Measure, loop_length: _Measure, count: _Measure) -> Quantity:
    """Mass of a square metre of knitting: loops, the yarn in each, and its count.

    ω = 10 × S × l × T

    loop_density: loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

@_as_formula
def knit_mass_per_area_by_constant(
    stitch_constant: _Plain,
    loop_length: _Measure,
    count: _Measure,
) -> Quantity:
    """Mass of a square metre of knitting from the constant of its loops: heavier with the count,
    lighter with a longer loop.

    ω = K_s × T / (1000 × l)

    stitch_constant: constant of the loops on an area
    loop_length: length of yarn in a loop
    count: count
    """

@_as_formula
def knit_take_up(wales: _Measure, loop_length: _Measure) -> Quantity:
    """Take-up of a knitted course: yarn in a stitch, and the stitches in a width.

    u = 100 × w × l

    wales: wales: stitches side by side
    loop_length: length of yarn in a stitch
    """

@_as_formula
def length_over_diameters(modular_length: _Measure, diameter_sum: _Measure) -> Quantity:
    """Length of a thread between those it crosses, over the sum of the diameters.

    l/D = l / D

    modular_length: length between threads crossed
    diameter_sum: sum of the diameters
    """

@_as_formula
def length_shrinkage_from_area(area_shrinkage: _Plain, width_shrinkage: _Plain) -> Quantity:
    """Shrinkage in length, from the area lost and the shrinkage in width.

    s_l = 1 − (1 − s_A) / (1 − s_w)

    area_shrinkage: area shrinkage
    width_shrinkage: shrinkage in width
    """

@_as_formula
def loom_stretch(
    warp_length: _Measure,
    tied_length: _Measure,
    woven_length: _Measure,
    left_length: _Measure,
) -> Quantity:
    """How far the warp was stretched on the loom: its parts as they lay under tension against its
    length before.

    ε = (l_t + l_w + l_b) / W − 1

    warp_length: warp before it was put on the loom
    tied_length: tied on at the front
    woven_length: woven, as measured under tension
    left_length: left at the back
    """

@_as_formula
def loop_constant(courses_or_wales: _Measure, loop_length: _Measure) -> Quantity:
    """Munden's constant of a direction: courses, or wales, in a length of yarn of one loop.

    K_d = 100 × n × l

    courses_or_wales: courses, or wales
    loop_length: length of yarn in a loop
    """

@_as_formula
def loop_density(course_constant: _Plain, wale_constant: _Plain, loop_length: _Measure) -> Quantity:
    """Loops on an area from the length of yarn in one.

    S = K_c × K_w / (100 × l)²

    course_constant: constant of the courses
    wale_constant: constant of the wales
    loop_length: length of yarn in a loop
    """

@_as_formula
def loop_for_tightness(count: _Measure, tightness_factor: _Measure) -> Quantity:
    """The length of yarn in a loop that gives a tightness.

    l = √T / (100 × K_t)

    count: count
    tightness_factor: tightness factor
    """

@_as_formula
def loop_shape(courses: _Measure, wales: _Measure) -> Quantity:
    """Shape of the loop: courses over wales.

    R = c / w

    courses: courses
    wales: wales
    """

@_as_formula
def loops_on_area(courses: _Measure, wales: _Measure) -> Quantity:
    """Loops on an area from courses and wales.

    S = c × w

    courses: courses
    wales: wales
    """

@_as_formula
def mass_after_finishing(mass_before: _Measure, mass_loss: _Plain) -> Quantity:
    """Mass after a process that loses or gains.

    m₂ = m₁ × (1 − m_l)

    mass_before: mass before
    mass_loss: mass lost; negative where the cloth gains
    """

@_as_formula
def mass_before_finishing(mass_after: _Measure, mass_loss: _Plain) -> Quantity:
    """Mass before a process, from what is to be left after it.

    m₁ = m₂ / (1 − m_l)

    mass_after: mass after
    mass_loss: mass lost; negative where the cloth gains
    """

@_as_formula
def mass_loss_from_areas(
    mass_per_area_before: _Measure,
    mass_per_area_after: _Measure,
    width_shrinkage: _Plain,
    length_shrinkage: _Plain,
) -> Quantity:
    """Mass lost, from the mass per area before and after and what the cloth shrank.

    m_l = 1 − ω_a × (1 − s_w) × (1 − s_l) / ω_b

    mass_per_area_before: mass per area before
    mass_per_area_after: mass per area after
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

@_as_formula
def mass_loss_from_masses(mass_before: _Measure, mass_after: _Measure) -> Quantity:
    """Mass lost, from the mass before and after.

    m_l = 1 − m₂ / m₁

    mass_before: mass before
    mass_after: mass after
    """

@_as_formula
def mass_of_piece(
    mass_per_area: _Measure,
    cloth_width: _Measure,
    cloth_length: _Measure,
) -> Quantity:
    """Mass of a piece from its mass per area.

    m = ω × b × L / 1000

    mass_per_area: mass per area
    cloth_width: width
    cloth_length: length
    """

@_as_formula
def mass_per_area(
    warp_sett: _Measure,
    warp_count: _Measure,
    warp_crimp: _Plain,
    weft_sett: _Measure,
    weft_count: _Measure,
    weft_crimp: _Plain,
) -> Quantity:
    """Mass of a square metre of cloth from its threads.

    ω₁ = n₁ × T₁ × (1 + c₁) / 10; ω₂ = n₂ × T₂ × (1 + c₂) / 10; ω = ω₁ + ω₂

    warp_sett: ends
    warp_count: count of the warp
    warp_crimp: crimp of the warp
    weft_sett: picks
    weft_count: count of the weft
    weft_crimp: crimp of the weft
    """

@_as_formula
def mass_per_area_by_multiplier(
    mass_multiplier: _Plain,
    warp_sett: _Measure,
    warp_count: _Measure,
    warp_crimp: _Plain,
    weft_sett: _Measure,
    weft_count: _Measure,
    weft_crimp: _Plain,
) -> Quantity:
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

@_as_formula
def mass_per_area_of_cloth(running_mass: _Measure, cloth_width: _Measure) -> Quantity:
    """Mass per area from the mass of a running metre.

    ω = λ / (1000 × b)

    running_mass: mass of a running metre
    cloth_width: width
    """

@_as_formula
def mass_per_area_of_threads(sett: _Measure, count: _Measure, crimp: _Plain) -> Quantity:
    """Mass that the warp alone, or the weft alone, adds to a square metre of cloth.

    ω = n × T × (1 + c) / 10

    sett: sett of these threads
    count: their count
    crimp: their crimp
    """

@_as_formula
def maximum_sett(side_by_side: _Measure, repeat: _Plain, intersections: _Plain) -> Quantity:
    """The maximum sett of a weave by diameters and intersections, for a square cloth.

    n_m = D × R / (R + I)

    side_by_side: diameters side by side
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

@_as_formula
def maximum_sett_from_wraps(
    wraps: _Measure,
    wraps_per_diameter: _Plain,
    repeat: _Plain,
    intersections: _Plain,
) -> Quantity:
    """The maximum sett from wraps: these are fewer than diameters.

    n_m = w / c × R / (R + I)

    wraps: wraps
    wraps_per_diameter: wraps for a diameter
    repeat: threads in the repeat
    intersections: intersections in the repeat
    """

@_as_formula
def maximum_sett_unlike(
    own_side_by_side: _Measure,
    crossing_side_by_side: _Measure,
    repeat: _Plain,
    intersections: _Plain,
) -> Quantity:
    """The maximum sett of one system by diameters and intersections, where the other is of another
    yarn.

    n_m = R / (R / D₁ + I / D₂)

    own_side_by_side: diameters of the yarn that is set, side by side
    crossing_side_by_side: diameters of the yarn that crosses it, side by side
    repeat: threads in the repeat
    intersections: intersections of a crossing thread in the repeat
    """

@_as_formula
def milasius_firmness(
    weave_factor: _Plain,
    mean_count: _Measure,
    fibre_density: _Measure,
    warp_count: _Measure,
    weft_count: _Measure,
    warp_sett: _Measure,
    weft_sett: _Measure,
) -> Quantity:
    """Firmness of a cloth by Milašius: 1 would be the densest that round threads allow.

    a = 2 / 3 × √(T₁ / T₂); S = exp((ln(n₂) + a × ln(n₁)) / (1 + a)); φ = 0.00618038723 / P ×
    √(T_m / ρ) × S

    weave_factor: weave factor
    mean_count: average count
    fibre_density: density of the fibre
    warp_count: count of the warp
    weft_count: count of the weft
    warp_sett: ends
    weft_sett: picks
    """

@_as_formula
def modular_length(spacing: _Measure, crimp: _Plain) -> Quantity:
    """Length of a thread from one thread that it crosses to the next.

    l = p × (1 + c)

    spacing: spacing of the threads crossed
    crimp: crimp
    """

@_as_formula
def off_loom_mass_per_area(
    finished_mass_per_area: _Measure,
    mass_loss: _Plain,
    width_shrinkage: _Plain,
    length_shrinkage: _Plain,
) -> Quantity:
    """Mass per area to weave for one wanted after finishing.

    ω₁ = ω₂ × (1 − s_w) × (1 − s_l) / (1 − m_l)

    finished_mass_per_area: mass per area wanted
    mass_loss: mass lost; negative where the cloth gains
    width_shrinkage: shrinkage in width
    length_shrinkage: shrinkage in length
    """

@_as_formula
def off_loom_width(reed_width: _Measure, draw_in: _Plain) -> Quantity:
    """Width off the loom.

    b_o = B × (1 − d_r)

    reed_width: width in the reed
    draw_in: draw-in, reed to off the loom
    """

@_as_formula
def over_width_for_shrinkage(shrinkage: _Plain) -> Quantity:
    """How much wider to weave, on the finished size, for a shrinkage.

    x = s / (1 − s)

    shrinkage: shrinkage
    """

@_as_formula
def over_width_from_sizes(size_before: _Measure, size_after: _Measure) -> Quantity:
    """How much wider it is woven than it is finished.

    x = x₁ / x₂ − 1

    size_before: size before
    size_after: size finished
    """

@_as_formula
def packages_for_length(yarn_length: _Measure, package_length: _Measure) -> Quantity:
    """Packages for a length of yarn: bobbins, pirns, cones.

    z = round up(Y / l)

    yarn_length: length of yarn
    package_length: length on a package
    """

@_as_formula
def picks_in_piece(
    finished_length: _Measure,
    length_shrinkage: _Plain,
    off_loom_weft_sett: _Measure,
) -> Quantity:
    """Picks in a piece.

    P = 100 × n_o × L_f / (1 − s_l)

    finished_length: finished length of the woven part
    length_shrinkage: shrinkage in length, off the loom to finished
    off_loom_weft_sett: picks off the loom
    """

@_as_formula
def plain_thickness(
    weft_sett: _Measure,
    warp_crimp: _Plain,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
) -> Quantity:
    """Thickness of plain cloth: the higher of the two crowns.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of (l₁ − D × θ₁) × cos(θ₁) + D ×
    sin(θ₁) − p₂; s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; H = (no answer if
    D < h₁, else greater of (h₁ + d₁, h₂ + d₂))

    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

@_as_formula
def racetrack_height_by_rule(
    spacing: _Measure,
    crimp: _Plain,
    thread_width: _Measure,
    thread_thickness: _Measure,
    rule_factor: _Plain,
) -> Quantity:
    """Height of the wave of a thread over flattened threads, by the rule of the root.

    h = (no answer if a − b < 0, else k × √(c × p × (p − (a − b))))

    spacing: spacing of the threads crossed
    crimp: crimp
    thread_width: width of the threads crossed
    thread_thickness: their thickness
    rule_factor: factor
    """

@_as_formula
def racetrack_spacing(
    spacing: _Measure,
    thread_width: _Measure,
    thread_thickness: _Measure,
) -> Quantity:
    """Spacing of flattened threads without the straight part of their section.

    p′ = (no answer if a − b < 0, else p − (a − b))

    spacing: spacing of the threads crossed
    thread_width: their width
    thread_thickness: their thickness
    """

@_as_formula
def racetrack_weft_crimp(
    warp_sett: _Measure,
    weft_sett: _Measure,
    warp_crimp: _Plain,
    warp_thread_width: _Measure,
    warp_thread_thickness: _Measure,
    weft_thread_width: _Measure,
    weft_thread_thickness: _Measure,
) -> Quantity:
    """Crimp of the weft in plain cloth of flattened threads, from that of the warp.

    D = b₁ + b₂; f₂ = a₂ − b₂; p₂ = 10 / n₂; p₂′ = p₂ − f₂; l₁′ = p₂ × (1 + c₁) − f₂; θ₁ = root
    of (l₁′ − D × θ₁) × cos(θ₁) + D × sin(θ₁) − p₂′; h₁ = (l₁′ − D × θ₁) × sin(θ₁) + D × (1 −
    cos(θ₁)); f₁ = a₁ − b₁; p₁ = 10 / n₁; p₁′ = p₁ − f₁; θ₂ = 2 × arctan((D − h₁) / (p₁′ + √(p₁′²
    − (D − h₁) × (2 × D − (D − h₁))))); l₂ = D × θ₂ + (p₁′ − D × sin(θ₂)) / cos(θ₂) + f₁; c₂ =
    (no answer if smaller of (smaller of (smaller of (f₁, f₂), p₁′), p₂′) < 0, else (no answer if
    D < h₁, else l₂ / p₁ − 1))

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_thread_width: width of the warp thread
    warp_thread_thickness: thickness of the warp thread
    weft_thread_width: width of the weft thread
    weft_thread_thickness: thickness of the weft thread
    """

@_as_formula
def reed_for_sett(reed_sett: _Measure, ends_per_dent: _Plain) -> Quantity:
    """The reed for a sett.

    r = n_r / e

    reed_sett: sett in the reed
    ends_per_dent: ends in a dent
    """

@_as_formula
def reed_width(finished_width: _Measure, width_shrinkage: _Plain, draw_in: _Plain) -> Quantity:
    """Width in the reed for a finished width.

    B = b_f / ((1 − s_w) × (1 − d_r))

    finished_width: finished width
    width_shrinkage: shrinkage in width, off the loom to finished
    draw_in: draw-in, reed to off the loom
    """

@_as_formula
def running_mass_after(
    running_mass_before: _Measure,
    mass_loss: _Plain,
    length_shrinkage: _Plain,
) -> Quantity:
    """Mass of a running length after finishing.

    λ₂ = λ₁ × (1 − m_l) / (1 − s_l)

    running_mass_before: mass of a running length before
    mass_loss: mass lost; negative where the cloth gains
    length_shrinkage: shrinkage in length
    """

@_as_formula
def running_mass_of_cloth(mass_per_area: _Measure, cloth_width: _Measure) -> Quantity:
    """Mass of a running metre of cloth.

    λ = 1000 × ω × b

    mass_per_area: mass per area
    cloth_width: width
    """

@_as_formula
def sett_after_shrinkage(sett_before: _Measure, across_shrinkage: _Plain) -> Quantity:
    """Sett after the cloth has shrunk across those threads.

    n_a = n_b / (1 − s_x)

    sett_before: sett before
    across_shrinkage: shrinkage across the threads
    """

@_as_formula
def sett_before_shrinkage(sett_after: _Measure, across_shrinkage: _Plain) -> Quantity:
    """Sett before the cloth shrinks across those threads.

    n_b = n_a × (1 − s_x)

    sett_after: sett after
    across_shrinkage: shrinkage across the threads
    """

@_as_formula
def sett_for_count(sett: _Measure, count: _Measure, new_count: _Measure) -> Quantity:
    """The sett for another count of yarn at the same firmness, in the same weave.

    n₂ = n × √(T / T₂)

    sett: sett of the cloth at hand
    count: count of its yarn
    new_count: count of the new yarn
    """

@_as_formula
def sett_for_cover_factor(cover_factor: _Measure, count: _Measure) -> Quantity:
    """The sett that gives a cover factor.

    n = 10 × K_c / √T

    cover_factor: cover factor
    count: yarn count
    """

@_as_formula
def sett_for_weave(
    sett: _Measure,
    repeat: _Plain,
    intersections: _Plain,
    new_repeat: _Plain,
    new_intersections: _Plain,
) -> Quantity:
    """The sett for another weave of the same yarn at the same firmness.

    n₂ = n × (R + I) / R / ((R₂ + I₂) / R₂)

    sett: sett of the cloth at hand
    repeat: threads in its repeat
    intersections: intersections in its repeat
    new_repeat: threads in the new repeat
    new_intersections: intersections in the new repeat
    """

@_as_formula
def sett_for_weight(sett: _Measure, mass_ratio: _Plain) -> Quantity:
    """The sett for a heavier or lighter cloth of the same weave and firmness, in the yarn that
    suits it.

    n₂ = n / μ

    sett: sett of the cloth at hand
    mass_ratio: new weight over the old
    """

@_as_formula
def sett_from_repeats(repeat_sett: _Measure, repeat: _Plain) -> Quantity:
    """The sett from the repeats of the weave counted in a width.

    n = n_R × R

    repeat_sett: repeats
    repeat: ends in a repeat
    """

@_as_formula
def sett_from_wraps(wraps: _Measure, wraps_share: _Plain) -> Quantity:
    """A sett by a rule of wraps.

    n = w × s

    wraps: wraps
    wraps_share: share of the wraps
    """

@_as_formula
def sett_in_reed(reed: _Measure, ends_per_dent: _Plain) -> Quantity:
    """Ends across the reed.

    n_r = r × e

    reed: reed
    ends_per_dent: ends in a dent
    """

@_as_formula
def share_of_maximum(sett: _Measure, maximum_sett: _Measure) -> Quantity:
    """A sett as a share of the maximum.

    s = n / n_m

    sett: sett
    maximum_sett: maximum sett by a theory
    """

@_as_formula
def shrinkage_from_dimensional_change(dimensional_change: _Plain) -> Quantity:
    """Shrinkage, as the mill counts it, of a dimensional change of ISO 5077.

    s = −D

    dimensional_change: dimensional change
    """

@_as_formula
def shrinkage_from_sizes(size_before: _Measure, size_after: _Measure) -> Quantity:
    """Shrinkage from a size before and after.

    s = 1 − x₂ / x₁

    size_before: size before
    size_after: size after
    """

@_as_formula
def shrinkage_of_over_width(over_width: _Plain) -> Quantity:
    """Shrinkage of a cloth that is woven wider than it is finished.

    s = x / (1 + x)

    over_width: over-width
    """

@_as_formula
def shrinkage_of_side(area_shrinkage: _Plain) -> Quantity:
    """Shrinkage of each side of a cloth that shrinks alike both ways, from the area lost.

    s = 1 − √(1 − s_A)

    area_shrinkage: area lost
    """

@_as_formula
def size_after_shrinkage(size_before: _Measure, shrinkage: _Plain) -> Quantity:
    """A length or width after it has shrunk.

    x₂ = x₁ × (1 − s)

    size_before: size before
    shrinkage: shrinkage
    """

@_as_formula
def size_before_shrinkage(size_after: _Measure, shrinkage: _Plain) -> Quantity:
    """A length or width before it shrinks.

    x₁ = x₂ / (1 − s)

    size_after: size after
    shrinkage: shrinkage
    """

@_as_formula
def size_for_over_width(size_after: _Measure, over_width: _Plain) -> Quantity:
    """Size to weave for a finished size and an over-width.

    x₁ = x₂ × (1 + x)

    size_after: size finished
    over_width: over-width
    """

@_as_formula
def size_mass(warp_mass: _Measure, size: _Plain) -> Quantity:
    """Mass of the size on a warp.

    m_z = m₁ × z

    warp_mass: mass of the warp without size
    size: size, on the warp without it
    """

@_as_formula
def stitch_constant(course_constant: _Plain, wale_constant: _Plain) -> Quantity:
    """Constant of the loops on an area, from those of courses and wales.

    K_s = K_c × K_w

    course_constant: constant of the courses
    wale_constant: constant of the wales
    """

@_as_formula
def take_up_from_lengths(yarn_length: _Measure, cloth_length: _Measure) -> Quantity:
    """Take-up of the warp from the yarn that was woven and the cloth when it lies relaxed.

    u = 1 − L / Y

    yarn_length: yarn, unstretched
    cloth_length: cloth, relaxed
    """

@_as_formula
def taylor_crimp(
    intersection_sett: _Measure,
    taylor_multiplier: _Plain,
    weft_count: _Measure,
) -> Quantity:
    """What the warp must be longer than the cloth, by Taylor's rule for cotton.

    N = 590.541247 / T₂; c = 2.54 × i × m / N / 100

    intersection_sett: intersections of an end
    taylor_multiplier: multiplier
    weft_count: count of the weft
    """

@_as_formula
def taylor_plain_sett(side_by_side: _Measure, taylor_allowance: _Plain) -> Quantity:
    """The maximum sett of a balanced plain cloth by Taylor: half of the diameters and a little
    more.

    n_m = D / 2 × (1 + a)

    side_by_side: diameters side by side
    taylor_allowance: allowance
    """

@_as_formula
def thickness_by_rule(
    weft_sett: _Measure,
    warp_crimp: _Plain,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
    rule_factor: _Plain,
) -> Quantity:
    """Thickness of plain cloth, its waves by the rule of the root.

    h₁ = k × 10 / n₂ × √c₁; h₂ = d₁ + d₂ − h₁; H = (no answer if h₂ < 0, else greater of (h₁ +
    d₁, h₂ + d₂))

    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    rule_factor: factor
    """

@_as_formula
def thread_spacing(sett: _Measure) -> Quantity:
    """Spacing of threads from their sett.

    p = 10 / n

    sett: sett
    """

@_as_formula
def tightness_factor(count: _Measure, loop_length: _Measure) -> Quantity:
    """How tightly a yarn is knitted for its count; the knitter's cover factor.

    K_t = √T / (100 × l)

    count: count
    loop_length: length of yarn in a loop
    """

@_as_formula
def total_cover(warp_cover: _Plain, weft_cover: _Plain) -> Quantity:
    """Share of the surface that warp and weft cover together.

    e = e₁ + e₂ − e₁ × e₂

    warp_cover: fractional cover of the warp
    weft_cover: fractional cover of the weft
    """

@_as_formula
def warp_length(warp_per_piece: _Measure, pieces: _Plain, loom_waste: _Measure) -> Quantity:
    """Length of a warp for a number of pieces.

    W = W_p × n_p + a

    warp_per_piece: warp for a piece
    pieces: pieces
    loom_waste: waste of the warp
    """

@_as_formula
def warp_mass(ends: _Plain, warp_length: _Measure, warp_count: _Measure) -> Quantity:
    """Mass of the yarn in a warp.

    m₁ = N × W × T₁ / 1000000

    ends: ends
    warp_length: length of the warp
    warp_count: count of the warp
    """

@_as_formula
def warp_per_piece(
    finished_length: _Measure,
    length_shrinkage: _Plain,
    take_up: _Plain,
    fringe: _Measure,
) -> Quantity:
    """Warp for a piece, its fringes included.

    W_p = L_f / (1 − s_l) / (1 − u) + 2 × q

    finished_length: finished length of the woven part
    length_shrinkage: shrinkage in length, off the loom to finished
    take_up: take-up of the warp
    fringe: fringe at each end
    """

@_as_formula
def warp_sections(ends: _Plain, ends_per_section: _Plain) -> Quantity:
    """Sections in which a mill warp is made.

    S = round up(N / N_s)

    ends: ends of the warp
    ends_per_section: ends in a section: the bobbins in the creel
    """

@_as_formula
def warp_sett_after_stretch(
    warp_sett_before: _Measure,
    weft_sett_before: _Measure,
    warp_crimp_before: _Plain,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
    weft_sett_after: _Measure,
) -> Quantity:
    """Ends after plain cloth was stretched, or let go, to other picks: its crimps change places.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of (l₁ − D × θ₁) × cos(θ₁) + D ×
    sin(θ₁) − p₂; s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); p₁ = 10 / n₁; h₂ = D − h₁; l₂ =
    D × 2 × arctan(h₂ / (p₁ + √(p₁² − h₂ × (2 × D − h₂)))) + (p₁ − D × sin(2 × arctan(h₂ / (p₁ +
    √(p₁² − h₂ × (2 × D − h₂)))))) / cos(2 × arctan(h₂ / (p₁ + √(p₁² − h₂ × (2 × D − h₂))))); p₂′
    = 10 / n₂′; θ₁′ = root of (l₁ − D × θ₁′) × cos(θ₁′) + D × sin(θ₁′) − p₂′; h₁′ = (l₁ − D ×
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

@_as_formula
def warp_yarn_length(ends: _Plain, warp_length: _Measure) -> Quantity:
    """Yarn in a warp.

    Y = N × W

    ends: ends
    warp_length: length of the warp
    """

@_as_formula
def weft_crimp(
    warp_sett: _Measure,
    weft_sett: _Measure,
    warp_crimp: _Plain,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
) -> Quantity:
    """Crimp of the weft in plain cloth, from that of the warp.

    D = d₁ + d₂; p₂ = 10 / n₂; l₁ = p₂ × (1 + c₁); θ₁ = root of (l₁ − D × θ₁) × cos(θ₁) + D ×
    sin(θ₁) − p₂; s₁ = l₁ − D × θ₁; h₁ = (p₂ + s₁) × tan(θ₁ / 2); h₂ = D − h₁; p₁ = 10 / n₁; s₂ =
    √(p₁² − h₂ × (2 × D − h₂)); θ₂ = 2 × arctan(h₂ / (p₁ + s₂)); l₂ = D × θ₂ + s₂; c₂ = (no
    answer if D < h₁, else l₂ / p₁ − 1)

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    """

@_as_formula
def weft_crimp_by_rule(
    warp_sett: _Measure,
    weft_sett: _Measure,
    warp_crimp: _Plain,
    warp_diameter: _Measure,
    weft_diameter: _Measure,
    rule_factor: _Plain,
) -> Quantity:
    """Crimp of the weft in plain cloth from that of the warp, by the rule of the root.

    h₁ = k × 10 / n₂ × √c₁; h₂ = d₁ + d₂ − h₁; √c₂ = h₂ × n₁ / (10 × k); c₂ = (no answer if h₂ <
    0, else (√c₂)²)

    warp_sett: ends
    weft_sett: picks
    warp_crimp: crimp of the warp
    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    rule_factor: factor
    """

@_as_formula
def weft_mass(
    reed_width: _Measure,
    cloth_length: _Measure,
    weft_sett: _Measure,
    weft_count: _Measure,
) -> Quantity:
    """Mass of the weft in a length of cloth.

    m₂ = 100 × n₂ × L × B × T₂ / 1000000

    reed_width: width in the reed
    cloth_length: length of the cloth
    weft_sett: picks in the cloth
    weft_count: count of the weft
    """

@_as_formula
def weft_per_piece(picks: _Plain, reed_width: _Measure, turn_allowance: _Measure) -> Quantity:
    """Weft for a piece.

    Y_p = P × (B + b)

    picks: picks
    reed_width: width in the reed
    turn_allowance: allowance for the turn at the selvedge, for each pick
    """

@_as_formula
def weft_yarn_length(weft_per_piece: _Measure, pieces: _Plain, weft_waste: _Plain) -> Quantity:
    """Weft for a number of pieces, with waste.

    Y = Y_p × n_p × (1 + w₂)

    weft_per_piece: weft for a piece
    pieces: pieces
    weft_waste: waste, on the weft woven in
    """

@_as_formula
def width_shrinkage_from_area(area_shrinkage: _Plain, length_shrinkage: _Plain) -> Quantity:
    """Shrinkage in width, from the area lost and the shrinkage in length.

    s_w = 1 − (1 − s_A) / (1 − s_l)

    area_shrinkage: area shrinkage
    length_shrinkage: shrinkage in length
    """

@_as_formula
def working_sett(maximum_sett: _Measure, sett_share: _Plain) -> Quantity:
    """The sett to weave, as a share of the maximum.

    n = n_m × s

    maximum_sett: maximum sett by a theory
    sett_share: share of it
    """

@_as_formula
def yarn_in_cloth(cloth_length: _Measure, crimp: _Plain) -> Quantity:
    """Yarn in a length of cloth, from the crimp.

    Y = L × (1 + c)

    cloth_length: length of the cloth
    crimp: crimp
    """

@_as_formula
def yarn_in_piece(
    ends: _Plain,
    warp_length: _Measure,
    picks: _Plain,
    reed_width: _Measure,
) -> Quantity:
    """Yarn in a warp and its weft together.

    Y = N × W + P × B

    ends: ends
    warp_length: length of the warp
    picks: picks
    reed_width: width in the reed
    """

@_as_formula
def yarn_shrinkage_in_cloth(
    along_shrinkage: _Plain,
    crimp_before: _Plain,
    crimp_after: _Plain,
) -> Quantity:
    """How much the yarn itself shrank in a cloth that shrank while its crimp changed.

    s_t = 1 − (1 − s_y) × (1 + c₂) / (1 + c₁)

    along_shrinkage: shrinkage of the cloth along the yarn
    crimp_before: crimp before
    crimp_after: crimp after
    """

@_as_calculation
def choose_reed(
    *,
    wanted_reed_sett: _Measure | Sequence[_Measure],
    reeds: _Measures,
    ends_per_dent: _Plains | None = None,
    period: _Plain | None = None,
    reed_width: _Measure | Sequence[_Measure] | None = None,
    selvedge_ends_per_dent: _Plain | None = None,
    dents_per_selvedge: _Plain | None = None,
    width_per_selvedge: _Measure | Sequence[_Measure] | None = None,
) -> Results[str, Any]:
    """The reed and the ends in a dent for a sett, out of the reeds that the mill owns.

    wanted_reed_sett: sett wanted in the reed
    reeds: reeds that the mill owns
    ends_per_dent: ends that may be drawn in a dent; 1 to 4 if omitted
    period: most dents after which an uneven order comes round again; 1 for even orders alone
    reed_width: width in the reed, selvedges included
    selvedge_ends_per_dent: ends in a dent of the selvedge
    dents_per_selvedge: dents of each selvedge
    width_per_selvedge: width of each selvedge, made up to whole dents
    """

class _FinishingProcesses(TypedDict):
    name: NotRequired[str | None]
    width_shrinkage: NotRequired[_Plain | None]
    over_width: NotRequired[_Plain | None]
    width_change: NotRequired[_Plain | None]
    width_before: NotRequired[_Measures | None]
    width_after: NotRequired[_Measures | None]
    length_shrinkage: NotRequired[_Plain | None]
    over_length: NotRequired[_Plain | None]
    length_change: NotRequired[_Plain | None]
    length_before: NotRequired[_Measures | None]
    length_after: NotRequired[_Measures | None]
    area_shrinkage: NotRequired[_Plain | None]
    mass_loss: NotRequired[_Plain | None]
    mass_gain: NotRequired[_Plain | None]
    mass_before: NotRequired[_Measures | None]
    mass_after: NotRequired[_Measures | None]
    warp_yarn_shrinkage: NotRequired[_Plain | None]
    weft_yarn_shrinkage: NotRequired[_Plain | None]
    reading_error: NotRequired[_Measure | None]
    balance_error: NotRequired[_Measure | None]

@_as_calculation
def finishing(
    *,
    processes: _Named[_FinishingProcesses],
    width: _Measure | Sequence[_Measure] | None = None,
    length: _Measure | Sequence[_Measure] | None = None,
    warp_sett: _Measure | Sequence[_Measure] | None = None,
    weft_sett: _Measure | Sequence[_Measure] | None = None,
    warp_count: _Measure | Sequence[_Measure] | None = None,
    weft_count: _Measure | Sequence[_Measure] | None = None,
    warp_crimp: _Plain | None = None,
    weft_crimp: _Plain | None = None,
    mass_per_area: _Measure | Sequence[_Measure] | None = None,
    piece_mass: _Measure | Sequence[_Measure] | None = None,
) -> Results[str, Any]:
    """What finishing makes of a cloth that comes off the loom so: size, sett, count, mass after
    each process.

    processes: processes in their order
    width: width
    length: length
    warp_sett: ends
    weft_sett: picks
    warp_count: count of the warp
    weft_count: count of the weft
    warp_crimp: crimp of the warp, on cloth length
    weft_crimp: crimp of the weft, on cloth length
    mass_per_area: mass per area
    piece_mass: mass of the piece
    """

@_as_calculation
def piece(
    *,
    wanted_width: _Measure | Sequence[_Measure],
    wanted_length: _Measure | Sequence[_Measure],
    warp_count: _Measure | Sequence[_Measure],
    fringe: _Measure | Sequence[_Measure] | None = None,
    weft_count: _Measure | Sequence[_Measure] | None = None,
    wanted_reed_sett: _Measure | Sequence[_Measure] | None = None,
    reed: _Measure | Sequence[_Measure] | None = None,
    wanted_warp_sett: _Measure | Sequence[_Measure] | None = None,
    ends_per_dent: _Plain | None = None,
    weft_sett: _Measure | Sequence[_Measure] | None = None,
    wanted_weft_sett: _Measure | Sequence[_Measure] | None = None,
    width_shrinkage: _Plain | None = None,
    length_shrinkage: _Plain | None = None,
    draw_in: _Plain | None = None,
    take_up: _Plain | None = None,
    hem: _Measure | Sequence[_Measure] | None = None,
    side_hem: _Measure | Sequence[_Measure] | None = None,
    panels: _Plain | None = None,
    seam: _Measure | Sequence[_Measure] | None = None,
    selvedge_ends: _Plain | None = None,
    selvedge_ends_per_dent: _Plain | None = None,
    selvedge_colour: str | None = None,
    pieces_per_warp: _Plain | None = None,
    gap: _Measure | Sequence[_Measure] | None = None,
    thrums: _Measure | Sequence[_Measure] | None = None,
    header: _Measure | Sequence[_Measure] | None = None,
    sample_length: _Measure | Sequence[_Measure] | None = None,
    turn_allowance: _Measure | Sequence[_Measure] | None = None,
    weft_waste: _Plain | None = None,
    warp_waste: _Plain | None = None,
    spare_share: _Plain | None = None,
    size: _Plain | None = None,
    mass_loss: _Plain | None = None,
    loom_width: _Measure | Sequence[_Measure] | None = None,
    beam_length: _Measure | Sequence[_Measure] | None = None,
    creel: _Plain | None = None,
    length_per_bobbin: _Measure | Sequence[_Measure] | None = None,
    length_per_pirn: _Measure | Sequence[_Measure] | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    warp_colours: str | None = None,
    weft_colours: str | None = None,
    pieces: _Plain | None = None,
) -> Results[str, Any]:
    """A woven article from its finished size to the reed, the warp, the weft and the yarn for them.

    wanted_width: finished width of the article
    wanted_length: finished length of the woven part, without fringes and hems
    fringe: fringe at each end
    warp_count: count of the warp
    weft_count: count of the weft; that of the warp where it is omitted
    wanted_reed_sett: sett wanted in the reed
    reed: reed
    wanted_warp_sett: ends wanted in the finished cloth
    ends_per_dent: ends in a dent; 2 where the reed is given, else 1
    weft_sett: picks off the loom
    wanted_weft_sett: picks wanted in the finished cloth
    width_shrinkage: shrinkage in width, off the loom to finished
    length_shrinkage: shrinkage in length, off the loom to finished
    draw_in: draw-in, reed to off the loom
    take_up: take-up of the warp, on yarn length
    hem: cloth folded under at each end
    side_hem: cloth folded under at each side
    panels: lengths sewn side by side
    seam: cloth that each edge of a seam takes
    selvedge_ends: ends of each selvedge
    selvedge_ends_per_dent: ends in a dent of the selvedge; as in the ground where it is omitted
    selvedge_colour: colour of the selvedges, such as grey
    pieces_per_warp: pieces on a warp; all of them where it is omitted
    gap: warp left unwoven between pieces
    thrums: warp that cannot be woven, for each warp: tying on and thrums
    header: warp for the heading, for each warp
    sample_length: cloth off the loom woven as a sample, for each warp
    turn_allowance: allowance for the turn of the weft, for each pick
    weft_waste: waste of weft, on the weft woven in
    warp_waste: waste of winding and warping, on the yarn in the warps
    spare_share: yarn to have over, on what is needed with its waste
    size: size on the warp, on the yarn without it
    mass_loss: mass lost in finishing, on the mass before
    loom_width: widest reed space of the loom
    beam_length: longest warp that the beam takes
    creel: ends in a section: the bobbins in the creel
    length_per_bobbin: yarn on a warp bobbin
    length_per_pirn: yarn on a pirn
    package_mass: yarn on a full package: a cone
    warp_colours: order of the colours of the warp, such as 24 grey 4 white
    weft_colours: order of the colours of the weft, such as 24 grey 4 white
    pieces: pieces
    """

@_as_calculation
def pieces_from_yarn(
    *,
    wanted_width: _Measure | Sequence[_Measure],
    wanted_length: _Measure | Sequence[_Measure],
    warp_count: _Measure | Sequence[_Measure],
    yarn_at_hand: _Measure | Sequence[_Measure] | None = None,
    warp_yarn_at_hand: _Measure | Sequence[_Measure] | None = None,
    weft_yarn_at_hand: _Measure | Sequence[_Measure] | None = None,
    fringe: _Measure | Sequence[_Measure] | None = None,
    weft_count: _Measure | Sequence[_Measure] | None = None,
    wanted_reed_sett: _Measure | Sequence[_Measure] | None = None,
    reed: _Measure | Sequence[_Measure] | None = None,
    wanted_warp_sett: _Measure | Sequence[_Measure] | None = None,
    ends_per_dent: _Plain | None = None,
    weft_sett: _Measure | Sequence[_Measure] | None = None,
    wanted_weft_sett: _Measure | Sequence[_Measure] | None = None,
    width_shrinkage: _Plain | None = None,
    length_shrinkage: _Plain | None = None,
    draw_in: _Plain | None = None,
    take_up: _Plain | None = None,
    hem: _Measure | Sequence[_Measure] | None = None,
    side_hem: _Measure | Sequence[_Measure] | None = None,
    panels: _Plain | None = None,
    seam: _Measure | Sequence[_Measure] | None = None,
    selvedge_ends: _Plain | None = None,
    selvedge_ends_per_dent: _Plain | None = None,
    selvedge_colour: str | None = None,
    pieces_per_warp: _Plain | None = None,
    gap: _Measure | Sequence[_Measure] | None = None,
    thrums: _Measure | Sequence[_Measure] | None = None,
    header: _Measure | Sequence[_Measure] | None = None,
    sample_length: _Measure | Sequence[_Measure] | None = None,
    turn_allowance: _Measure | Sequence[_Measure] | None = None,
    weft_waste: _Plain | None = None,
    warp_waste: _Plain | None = None,
    spare_share: _Plain | None = None,
    size: _Plain | None = None,
    mass_loss: _Plain | None = None,
    loom_width: _Measure | Sequence[_Measure] | None = None,
    beam_length: _Measure | Sequence[_Measure] | None = None,
    creel: _Plain | None = None,
    length_per_bobbin: _Measure | Sequence[_Measure] | None = None,
    length_per_pirn: _Measure | Sequence[_Measure] | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    warp_colours: str | None = None,
    weft_colours: str | None = None,
) -> Results[str, Any]:
    """The largest number of whole pieces that the yarn at hand makes, what runs out first and what
    is left.

    yarn_at_hand: yarn at hand for warp and weft of one count
    warp_yarn_at_hand: warp yarn at hand
    weft_yarn_at_hand: weft yarn at hand
    wanted_width: finished width of the article
    wanted_length: finished length of the woven part, without fringes and hems
    fringe: fringe at each end
    warp_count: count of the warp
    weft_count: count of the weft; that of the warp where it is omitted
    wanted_reed_sett: sett wanted in the reed
    reed: reed
    wanted_warp_sett: ends wanted in the finished cloth
    ends_per_dent: ends in a dent; 2 where the reed is given, else 1
    weft_sett: picks off the loom
    wanted_weft_sett: picks wanted in the finished cloth
    width_shrinkage: shrinkage in width, off the loom to finished
    length_shrinkage: shrinkage in length, off the loom to finished
    draw_in: draw-in, reed to off the loom
    take_up: take-up of the warp, on yarn length
    hem: cloth folded under at each end
    side_hem: cloth folded under at each side
    panels: lengths sewn side by side
    seam: cloth that each edge of a seam takes
    selvedge_ends: ends of each selvedge
    selvedge_ends_per_dent: ends in a dent of the selvedge; as in the ground where it is omitted
    selvedge_colour: colour of the selvedges, such as grey
    pieces_per_warp: pieces on a warp; all of them where it is omitted
    gap: warp left unwoven between pieces
    thrums: warp that cannot be woven, for each warp: tying on and thrums
    header: warp for the heading, for each warp
    sample_length: cloth off the loom woven as a sample, for each warp
    turn_allowance: allowance for the turn of the weft, for each pick
    weft_waste: waste of weft, on the weft woven in
    warp_waste: waste of winding and warping, on the yarn in the warps
    spare_share: yarn to have over, on what is needed with its waste
    size: size on the warp, on the yarn without it
    mass_loss: mass lost in finishing, on the mass before
    loom_width: widest reed space of the loom
    beam_length: longest warp that the beam takes
    creel: ends in a section: the bobbins in the creel
    length_per_bobbin: yarn on a warp bobbin
    length_per_pirn: yarn on a pirn
    package_mass: yarn on a full package: a cone
    warp_colours: order of the colours of the warp, such as 24 grey 4 white
    weft_colours: order of the colours of the weft, such as 24 grey 4 white
    """

@_as_calculation
def plain_cloth(
    *,
    warp_diameter: _Measure | Sequence[_Measure] | None = None,
    weft_diameter: _Measure | Sequence[_Measure] | None = None,
    weft_sett: _Measure | Sequence[_Measure] | None = None,
    warp_crimp: _Plain | None = None,
    warp_thread_length: _Measure | Sequence[_Measure] | None = None,
    warp_height: _Measure | Sequence[_Measure] | None = None,
    warp_angle: _Measure | Sequence[_Measure] | None = None,
    warp_sett: _Measure | Sequence[_Measure] | None = None,
    weft_crimp: _Plain | None = None,
    weft_thread_length: _Measure | Sequence[_Measure] | None = None,
    weft_height: _Measure | Sequence[_Measure] | None = None,
    weft_angle: _Measure | Sequence[_Measure] | None = None,
) -> Results[
    Literal[
        "warp_sett",
        "weft_sett",
        "warp_crimp",
        "weft_crimp",
        "warp_thread_length",
        "weft_thread_length",
        "warp_height",
        "weft_height",
        "warp_angle",
        "weft_angle",
        "warp_straight",
        "weft_straight",
        "diameters",
        "warp_diameter",
        "weft_diameter",
        "thickness",
    ],
    Quantity,
]:
    """All that follows, after Peirce, from what is known of a plain cloth of round threads.

    warp_diameter: diameter of the warp
    weft_diameter: diameter of the weft
    weft_sett: picks
    warp_crimp: crimp of the warp, on cloth length
    warp_thread_length: length of the warp from pick to pick
    warp_height: height of the warp's wave
    warp_angle: angle of the warp
    warp_sett: ends
    weft_crimp: crimp of the weft, on cloth length
    weft_thread_length: length of the weft from end to end
    weft_height: height of the weft's wave
    weft_angle: angle of the weft
    """

@_as_calculation
def process(
    *,
    name: str,
    width_shrinkage: _Plain | None = None,
    over_width: _Plain | None = None,
    width_change: _Plain | None = None,
    width_before: _Measures | None = None,
    width_after: _Measures | None = None,
    length_shrinkage: _Plain | None = None,
    over_length: _Plain | None = None,
    length_change: _Plain | None = None,
    length_before: _Measures | None = None,
    length_after: _Measures | None = None,
    area_shrinkage: _Plain | None = None,
    mass_loss: _Plain | None = None,
    mass_gain: _Plain | None = None,
    mass_before: _Measures | None = None,
    mass_after: _Measures | None = None,
    warp_yarn_shrinkage: _Plain | None = None,
    weft_yarn_shrinkage: _Plain | None = None,
    reading_error: _Measure | Sequence[_Measure] | None = None,
    balance_error: _Measure | Sequence[_Measure] | None = None,
) -> Results[
    Literal[
        "width_shrinkage",
        "over_width",
        "width_change",
        "length_shrinkage",
        "over_length",
        "length_change",
        "mass_loss",
        "warp_yarn_shrinkage",
        "weft_yarn_shrinkage",
        "area_shrinkage",
        "mass_per_area_factor",
        "lowest_width_shrinkage",
        "highest_width_shrinkage",
        "lowest_length_shrinkage",
        "highest_length_shrinkage",
        "lowest_mass_loss",
        "highest_mass_loss",
    ],
    Quantity,
]:
    """A process of finishing and what it does, each number on the size or mass that the process
    finds.

    name: name of the process, such as mill
    width_shrinkage: shrinkage in width, on the width before; negative: a stretch
    over_width: how much wider before than after, on the width after
    width_change: change of width of ISO 5077, on the width before: negative where it shrinks
    width_before: width of each specimen before the process
    width_after: width of each specimen after the process
    length_shrinkage: shrinkage in length, on the length before; negative: a stretch
    over_length: how much longer before than after, on the length after
    length_change: change of length of ISO 5077, on the length before: negative where it shrinks
    length_before: length of each specimen before the process
    length_after: length of each specimen after the process
    area_shrinkage: area lost, on the area before: with one side it gives the other, alone both
    shrink alike
    mass_loss: mass lost, on the mass before; negative: a gain
    mass_gain: mass gained, on the mass before: flock, size, a finish
    mass_before: mass of each specimen before the process
    mass_after: mass of each specimen after the process, in the same state of moisture
    warp_yarn_shrinkage: shrinkage of the warp yarn itself; where it is omitted the yarn shortens
    with the cloth
    weft_yarn_shrinkage: shrinkage of the weft yarn itself; where it is omitted the yarn shortens
    with the cloth
    reading_error: how far the rule may be misread, either way, at each end of a comparison
    balance_error: how far the balance may be misread, either way
    """

@_as_calculation
def setts(
    *,
    weave: str,
    warp_count: _Measure | Sequence[_Measure],
    weft_count: _Measure | Sequence[_Measure] | None = None,
    yarn_factor: _Plain | None = None,
    specific_volume: _Measure | Sequence[_Measure] | None = None,
    wanted_warp_sett: _Measure | Sequence[_Measure] | None = None,
    wanted_weft_sett: _Measure | Sequence[_Measure] | None = None,
) -> Results[str, Any]:
    """The maximum setts of a weave in warp and weft, by every theory side by side.

    weave: weave, such as 2/2 twill
    warp_count: count of the warp
    weft_count: count of the weft; that of the warp where it is omitted
    yarn_factor: Ashenhurst's factor of the yarn; where it is omitted, woollen and worsted are
    both answered
    specific_volume: specific volume of the yarn, for Peirce and Love; that of cotton where it is
    omitted
    wanted_warp_sett: ends wanted
    wanted_weft_sett: picks wanted
    """

class _ToWeaveProcesses(TypedDict):
    name: NotRequired[str | None]
    width_shrinkage: NotRequired[_Plain | None]
    over_width: NotRequired[_Plain | None]
    width_change: NotRequired[_Plain | None]
    width_before: NotRequired[_Measures | None]
    width_after: NotRequired[_Measures | None]
    length_shrinkage: NotRequired[_Plain | None]
    over_length: NotRequired[_Plain | None]
    length_change: NotRequired[_Plain | None]
    length_before: NotRequired[_Measures | None]
    length_after: NotRequired[_Measures | None]
    area_shrinkage: NotRequired[_Plain | None]
    mass_loss: NotRequired[_Plain | None]
    mass_gain: NotRequired[_Plain | None]
    mass_before: NotRequired[_Measures | None]
    mass_after: NotRequired[_Measures | None]
    warp_yarn_shrinkage: NotRequired[_Plain | None]
    weft_yarn_shrinkage: NotRequired[_Plain | None]
    reading_error: NotRequired[_Measure | None]
    balance_error: NotRequired[_Measure | None]

@_as_calculation
def to_weave(
    *,
    processes: _Named[_ToWeaveProcesses],
    width: _Measure | Sequence[_Measure] | None = None,
    length: _Measure | Sequence[_Measure] | None = None,
    warp_sett: _Measure | Sequence[_Measure] | None = None,
    weft_sett: _Measure | Sequence[_Measure] | None = None,
    warp_count: _Measure | Sequence[_Measure] | None = None,
    weft_count: _Measure | Sequence[_Measure] | None = None,
    warp_crimp: _Plain | None = None,
    weft_crimp: _Plain | None = None,
    mass_per_area: _Measure | Sequence[_Measure] | None = None,
    piece_mass: _Measure | Sequence[_Measure] | None = None,
    loom_width: _Measure | Sequence[_Measure] | None = None,
) -> Results[str, Any]:
    """What to weave for a wanted finished cloth: the chain of `finishing` backward.

    processes: processes in their order
    width: width
    length: length
    warp_sett: ends
    weft_sett: picks
    warp_count: count of the warp
    weft_count: count of the weft
    warp_crimp: crimp of the warp, on cloth length
    weft_crimp: crimp of the weft, on cloth length
    mass_per_area: mass per area
    piece_mass: mass of the piece
    loom_width: widest that the loom weaves
    """
