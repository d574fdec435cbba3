"""Designation, count, folding, twist, hanks and winding, diameter, strength, evenness."""

# Written by python -m hankwise._stubs from the catalogue.

from collections.abc import Sequence
from typing import Any, Literal

from hankwise._hankwise import (
    Quantity,
    Results,
    _as_calculation,
    _as_formula,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
    parse as parse,
    round_count as round_count,
    round_tex as round_tex,
    weight_band as weight_band,
    weight_class as weight_class,
)

@_as_formula
def added_irregularity(cv_before: _Plain, cv_after: _Plain) -> Quantity:
    """Irregularity that a process added of its own.

    CV_a = √(CV₂² − CV₁²)

    cv_before: irregularity before, as coefficient of variation
    cv_after: irregularity after, as coefficient of variation
    """

@_as_formula
def ball_length(
    ball_mass: _Measure,
    count: _Measure,
    regain: _Plain,
    label_regain: _Plain,
) -> Quantity:
    """Length of yarn in a ball that weighs what its label says at the regain of the label.

    m_R = m_b × (1 + R) / (1 + A); L = m_R / T × 1000000

    ball_mass: mass on the label
    count: count, as measured
    regain: regain at which the count was measured
    label_regain: regain at which the label's mass holds
    """

@_as_formula
def band_half_width(mass: _Measure, cv: _Plain, sd_multiple: _Plain) -> Quantity:
    """Half the width of the band in which a reading, or the mean of several, must fall.

    h = z × CV × m

    mass: what it should weigh
    cv: variation of what is read
    sd_multiple: standard deviations to each side, z or t: 1.96 takes in 95 % where the variation
    is known
    """

@_as_formula
def breaking_force(tenacity: _Measure, count: _Measure) -> Quantity:
    """Force that breaks a yarn, from its tenacity.

    F = f × T / 100

    tenacity: tenacity
    count: yarn count
    """

@_as_formula
def breaking_length(breaking_force: _Measure, count: _Measure) -> Quantity:
    """Length of yarn whose own weight would break it.

    L_b = 1000000 × F / (9.80665 × T)

    breaking_force: breaking force
    count: yarn count
    """

@_as_formula
def bundle_length(hanks: _Plain, cuts_per_hank: _Plain, lea_length: _Measure) -> Quantity:
    """Yarn in a bundle: its hanks, the leas or cuts of a hank, the length of these.

    Y = h × k × l

    hanks: hanks in the bundle
    cuts_per_hank: leas or cuts in a hank
    lea_length: length of a lea or cut
    """

@_as_formula
def chance_for_each(chance_of_all: _Plain, readings: _Plain) -> Quantity:
    """The chance with which each single reading must fall within its limits, so that all do with a
    wanted chance.

    P₁ = exp(ln(P) / n)

    chance_of_all: chance that all readings are within
    readings: readings
    """

@_as_formula
def check_weight(count: _Measure, check_length: _Measure, ends: _Plain) -> Quantity:
    """What the balance should read for a number of ends of a length.

    m_c = T × L_c × N / 1000000

    count: count in the state at the machine
    check_length: length of each end
    ends: ends weighed together
    """

@_as_formula
def check_weight_in_todays_air(
    count: _Measure,
    check_length: _Measure,
    ends: _Plain,
    stated_regain: _Plain,
    regain: _Plain,
    stated_oil: _Plain,
    oil: _Plain,
) -> Quantity:
    """What the balance should read today for ends of a length, where the count is stated at another
    regain or with another oil.

    m₁ = T × L_c × N / 1000000; m_c = m₁ × (1 + R + o) / (1 + R_s + o_s)

    count: count as stated
    check_length: length of each end
    ends: ends weighed together
    stated_regain: regain at which the count is stated
    regain: regain today
    stated_oil: oil with which the count is stated
    oil: oil today
    """

@_as_formula
def contraction_from_counts(nominal_count: _Measure, resultant_count: _Measure) -> Quantity:
    """Contraction in folding, from the nominal and the measured count.

    k = 1 − T₀ / T_R

    nominal_count: sum of the counts of the ends
    resultant_count: count of the folded yarn, as measured
    """

@_as_formula
def contraction_of_cotton_single(twist_factor: _Measure) -> Quantity:
    """Contraction of a cotton single in spinning, by an empirical rule, on the untwisted length.

    TM = 2.54 × K / 24.3010545; k = (no answer if (2.67 × TM − 4.93) / 100 < 0, else (2.67 × TM −
    4.93) / 100)

    twist_factor: twist factor
    """

@_as_formula
def contraction_on_twisted(contraction: _Plain) -> Quantity:
    """Contraction on the twisted length, from that on the untwisted.

    k_t = k / (1 − k)

    contraction: contraction on the untwisted length
    """

@_as_formula
def contraction_on_untwisted(contraction_on_twisted: _Plain) -> Quantity:
    """Contraction on the untwisted length, from that on the twisted.

    k = k_t / (1 + k_t)

    contraction_on_twisted: contraction on the twisted length
    """

@_as_formula
def cord_single(cord_number: _Measure, cords: _Plain) -> Quantity:
    """Single of a sewing cotton from its number: any number of cords equals three ends of that
    count.

    T_s = 3 × T / n

    cord_number: the number, as a cotton count
    cords: cords
    """

@_as_formula
def cotton_ticket(single_count: _Measure, ends: _Plain) -> Quantity:
    """Cotton ticket of a sewing thread: three times its English cotton count.

    k = 3 × 590.541247 / (T_s × N)

    single_count: count of an end
    ends: ends in the thread
    """

@_as_formula
def count_after_scouring(
    count_before: _Measure,
    state_change: _Plain,
    loss: _Plain,
    shrinkage: _Plain,
) -> Quantity:
    """Count of a yarn after its hanks are scoured: oil out, a little fibre out, shorter.

    T₂ = T₁ × q × (1 − w) / (1 − s)

    count_before: count before
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

@_as_formula
def count_before_scouring(
    count_after: _Measure,
    state_change: _Plain,
    loss: _Plain,
    shrinkage: _Plain,
) -> Quantity:
    """The count to make before scouring for a count wanted after it.

    T₁ = T₂ × (1 − s) / ((1 − w) × q)

    count_after: count wanted after
    state_change: state after over state before
    loss: fibre lost
    shrinkage: shrinkage in length
    """

@_as_formula
def count_for_share(resultant_count: _Measure, shares: _Plains) -> Quantity:
    """The count that the first end of a fold must have for its share of the mass.

    T = T_R × p₁ / (p₁ + p₂)

    resultant_count: resultant count wanted
    shares: shares of all ends, the one asked for first
    """

@_as_formula
def count_from_wraps(wraps_factor: _Plain, wraps: _Measure) -> Quantity:
    """Estimate of the count of a yarn from its wraps.

    Y = (2.54 × w / k)²; T = 496,054.648 / Y

    wraps_factor: factor of the yarn and the hand
    wraps: wraps
    """

@_as_formula
def count_of(length: _Measure, mass: _Measure) -> Quantity:
    """Count of a yarn, a slubbing or a sliver, from a length and what it weighs.

    T = m / L × 1000000

    length: length
    mass: mass
    """

@_as_formula
def diameter_by_fibre_density(count: _Measure, fibre_density: _Measure) -> Quantity:
    """Diameter of a yarn from its count and the density of its fibre, packed as spun yarns commonly
    are.

    d = 0.0444 × √(T / ρ)

    count: yarn count
    fibre_density: density of the fibre
    """

@_as_formula
def diameter_rescaled(yarn_diameter: _Measure, count: _Measure, new_count: _Measure) -> Quantity:
    """Diameter of a yarn from that of a yarn like it of another count.

    d₂ = d × √(T₂ / T)

    yarn_diameter: known diameter
    count: count of the yarn that it is known of
    new_count: count of the other yarn
    """

@_as_formula
def fibre_specific_volume(fibre_density: _Measure) -> Quantity:
    """Volume that a gram of solid fibre fills.

    v_f = 1 / ρ

    fibre_density: density of the fibre
    """

@_as_formula
def fold(contraction: _Plain, counts: _Measures) -> Quantity:
    """Resultant count of ends folded together.

    T_R = (T₁ + T₂) / (1 − k)

    contraction: contraction in folding, on the untwisted length
    counts: counts of the ends, one for each end
    """

@_as_formula
def fold_alike(single_count: _Measure, ends: _Plain, contraction: _Plain) -> Quantity:
    """Resultant count of equal ends folded together.

    T_R = T_s × N / (1 − k)

    single_count: count of one end
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

@_as_formula
def fold_cost(counts: _Measures, relative_lengths: _Plains, prices_per_mass: _Measures) -> Quantity:
    """Cost of a folded yarn from the prices of its ends.

    T_R = u₁ × T₁ + u₂ × T₂; p_R = (u₁ × T₁ × p₁ + u₂ × T₂ × p₂) / T_R

    counts: counts of the ends, one for each end
    relative_lengths: length of each end in a unit length of the folded yarn
    prices_per_mass: price of each end
    """

@_as_formula
def fold_cost_share(
    counts: _Measures,
    relative_lengths: _Plains,
    prices_per_mass: _Measures,
) -> Quantity:
    """Share of the cost of a folded yarn that its first end has.

    s = u₁ × T₁ × p₁ / (u₁ × T₁ × p₁ + u₂ × T₂ × p₂)

    counts: counts of the ends, the one asked for first
    relative_lengths: length of each end in a unit length of the folded yarn
    prices_per_mass: price of each end
    """

@_as_formula
def fold_fed(counts: _Measures, relative_lengths: _Plains) -> Quantity:
    """Resultant count of ends that are fed each at a length of its own, as for loops and knops.

    T_R = u₁ × T₁ + u₂ × T₂

    counts: counts of the ends, one for each end
    relative_lengths: length of each end in a unit length of the folded yarn
    """

@_as_formula
def fold_on_twisted(contraction_on_twisted: _Plain, counts: _Measures) -> Quantity:
    """Resultant count of ends folded together, with the contraction on the twisted length.

    T_R = (T₁ + T₂) × (1 + k_t)

    contraction_on_twisted: contraction in folding, on the twisted length
    counts: counts of the ends, one for each end
    """

@_as_formula
def folding_twist_from_bumps(bumps: _Plain, gauge_length: _Measure, ends: _Plain) -> Quantity:
    """Folding twist from the bumps that are seen along a folded yarn: each turn shows one for each
    ply.

    t_f = b / (N × L)

    bumps: bumps counted
    gauge_length: length over which they were counted
    ends: plies
    """

@_as_formula
def folding_twist_ratio(folding_twist: _Measure, single_twist: _Measure) -> Quantity:
    """Folding twist over singles twist.

    q = t_f / t_s

    folding_twist: folding twist
    single_twist: twist of the singles before folding
    """

@_as_formula
def full_hanks(yarn_mass: _Measure, count: _Measure, hank_length: _Measure) -> Quantity:
    """Whole hanks that a mass of yarn makes.

    h = round down(1000000 × m_y / (T × l_h))

    yarn_mass: mass
    count: count
    hank_length: length of a hank
    """

@_as_formula
def hank_length(reel_turns: _Plain, reel_circumference: _Measure, shrinkage: _Plain) -> Quantity:
    """Length of a hank after scouring.

    l_h = z_r × C_r × (1 − s)

    reel_turns: turns of the reel
    reel_circumference: circumference of the reel
    shrinkage: shrinkage in scouring
    """

@_as_formula
def hank_mass(reel_turns: _Plain, reel_circumference: _Measure, count: _Measure) -> Quantity:
    """Mass of a hank from the turns of the reel.

    m_h = z_r × C_r × T / 1000000

    reel_turns: turns of the reel
    reel_circumference: circumference of the reel
    count: count
    """

@_as_formula
def hanks_in_mass(yarn_mass: _Measure, count: _Measure, hank_length: _Measure) -> Quantity:
    """Hanks, or spyndles, that a mass of yarn makes, not rounded to whole ones.

    h = 1000000 × m_y / (T × l_h)

    yarn_mass: mass
    count: count
    hank_length: length of a hank
    """

@_as_formula
def helix_angle(twist: _Measure, yarn_diameter: _Measure) -> Quantity:
    """Slope of the fibres on the surface of a yarn to its axis.

    α = arctan(π / 1000 × d × t) × 180 / π

    twist: twist
    yarn_diameter: diameter of the yarn
    """

@_as_formula
def helix_angle_from_factor(twist_factor: _Measure, specific_volume: _Measure) -> Quantity:
    """Slope of the surface fibres from the twist factor: yarns of one factor and make slope alike.

    α = arctan(2 × K × √(0.0000314159265 × v)) × 180 / π

    twist_factor: twist factor
    specific_volume: specific volume of the yarn
    """

@_as_formula
def helix_contraction(twist: _Measure, yarn_diameter: _Measure) -> Quantity:
    """Contraction of a yarn whose fibres lie in ideal helices, on the untwisted length.

    tan α = π / 1000 × d × t; sec α = √(1 + (tan α)²); k = 1 − 2 / (1 + sec α)

    twist: twist
    yarn_diameter: diameter of the yarn
    """

@_as_formula
def irregularity_after_processes(cvs: _Plains) -> Quantity:
    """Irregularity after processes in a row, each of which adds its own.

    CV_t = √(CV₁² + CV₂²)

    cvs: irregularity of the feed, then what each process adds, as coefficients of variation
    """

@_as_formula
def irregularity_from_mean_deviation(mean_deviation_share: _Plain) -> Quantity:
    """Coefficient of variation from the mean deviation, the U of the evenness tester.

    CV = U × 1.25331414

    mean_deviation_share: mean deviation from the mean, as a share of it
    """

@_as_formula
def irregularity_index(cv: _Plain, limit_factor: _Plain, fibres: _Plain) -> Quantity:
    """How many times more irregular a yarn is than fibres laid by chance would make it.

    I = CV × √n / k

    cv: irregularity of the yarn, as coefficient of variation
    limit_factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

@_as_formula
def irregularity_of_fold(cv: _Plain, ends: _Plain) -> Quantity:
    """Irregularity of a fold of ends whose thick places fall by chance.

    CV_R = CV / √N

    cv: irregularity of an end, as coefficient of variation
    ends: number of ends
    """

@_as_formula
def knots_in_package(package_mass: _Measure, bobbin_mass: _Measure) -> Quantity:
    """Knots in a package from joining the bobbins that it was wound from.

    k = greater of (round up(g / g_k) − 1, 0)

    package_mass: yarn on the package
    bobbin_mass: yarn on a bobbin
    """

@_as_formula
def lea_product(lea_force: _Measure, count: _Measure) -> Quantity:
    """Count-strength product of a cotton lea: English cotton count times the pounds that break it.

    N = 590.541247 / T; S = F / 4.44822162; P = N × S

    lea_force: force that breaks the lea
    count: yarn count
    """

@_as_formula
def length_of_ends(mass: _Measure, count: _Measure, ends: _Plain) -> Quantity:
    """Length of the ends, lying side by side as on a beam, that a mass of yarn makes.

    L = 1000000 × m / (T × N)

    mass: mass
    count: count, in the same state
    ends: ends
    """

@_as_formula
def length_of_mass(mass: _Measure, count: _Measure) -> Quantity:
    """How long a mass of yarn is.

    L = m / T × 1000000

    mass: mass
    count: count, in the same state
    """

@_as_formula
def length_on_package(gross_mass: _Measure, tube_mass: _Measure, count: _Measure) -> Quantity:
    """Yarn on a package, from its mass with and without yarn.

    Y = 1000000 × (g_b − g_t) / T

    gross_mass: package as weighed
    tube_mass: the empty tube or cone
    count: count
    """

@_as_formula
def length_share(counts: _Measures, masses: _Measures) -> Quantity:
    """Share of the length of all yarns that the first has, from their masses.

    λ = m₁ / T₁ / (m₁ / T₁ + m₂ / T₂)

    counts: counts of the yarns, the one asked for first
    masses: mass of each yarn
    """

@_as_formula
def mass_of_component(
    yarn_mass: _Measure,
    counts: _Measures,
    relative_lengths: _Plains,
) -> Quantity:
    """Mass of the first end in a mass of folded yarn.

    m₁ = m_y × u₁ × T₁ / (u₁ × T₁ + u₂ × T₂)

    yarn_mass: mass of the folded yarn
    counts: counts of the ends, the one asked for first
    relative_lengths: length of each end in a unit length of the folded yarn
    """

@_as_formula
def mass_of_ends(count: _Measure, length: _Measure, ends: _Plain, yarn_waste: _Plain) -> Quantity:
    """What ends of a length weigh, with an allowance for waste.

    m = T × L × N × (1 + w_y) / 1000000

    count: count
    length: length of each end
    ends: ends
    yarn_waste: waste, on the yarn used
    """

@_as_formula
def mass_of_length(count: _Measure, length: _Measure) -> Quantity:
    """What a length of yarn weighs.

    m = T × L / 1000000

    count: count
    length: length
    """

@_as_formula
def mass_share(counts: _Measures, relative_lengths: _Plains) -> Quantity:
    """Share of the mass of a fold that its first end has.

    s = u₁ × T₁ / (u₁ × T₁ + u₂ × T₂)

    counts: counts of the ends, the one asked for first
    relative_lengths: length of each end in a unit length of the folded yarn
    """

@_as_formula
def mean_by_length(counts: _Measures) -> Quantity:
    """Mean count of yarns of equal length, such as threads that lie side by side.

    T_m = (T₁ + T₂) / 2

    counts: counts
    """

@_as_formula
def mean_by_mass(counts: _Measures) -> Quantity:
    """Mean count of yarns of equal mass, such as lots of one weight.

    T_m = 2 / (1 / T₁ + 1 / T₂)

    counts: counts
    """

@_as_formula
def mean_by_share(shares: _Plains, values: _Plains) -> Quantity:
    """Mean of values by the shares of their parts in a whole.

    x_m = p₁ × x₁ + p₂ × x₂

    shares: share of each part
    values: value of each part
    """

@_as_formula
def mean_deviation_share(count_deviation: _Measure, mean_count: _Measure) -> Quantity:
    """Mean deviation of a yarn as a share of its mean count: the U of the evenness tester.

    U = D / T_m

    count_deviation: mean deviation from the mean count
    mean_count: mean count
    """

@_as_formula
def mean_of_lots(counts: _Measures, masses: _Measures) -> Quantity:
    """Mean count of lots of any mass: all that they weigh over all their length.

    m = m₁ + m₂; T_m = m / (m₁ / T₁ + m₂ / T₂)

    counts: counts
    masses: mass of each lot
    """

@_as_formula
def metric_ticket(single_count: _Measure, ends: _Plain) -> Quantity:
    """Metric ticket of a sewing thread: three times its metric count.

    k = 3 × 1000 / (T_s × N)

    single_count: count of an end
    ends: ends in the thread
    """

@_as_formula
def missing_component(resultant_count: _Measure, known_counts: _Measures) -> Quantity:
    """The end that is missing from a fold of a wanted resultant, without contraction.

    T_x = T_R − T₁ − T₂

    resultant_count: resultant count wanted
    known_counts: counts of the known ends
    """

@_as_formula
def missing_component_contracted(
    resultant_count: _Measure,
    contraction: _Plain,
    known_counts: _Measures,
) -> Quantity:
    """The end that is missing from a fold of a wanted resultant that contracts in folding.

    T_x = T_R × (1 − k) − T₁ − T₂

    resultant_count: resultant count wanted
    contraction: contraction in folding, on the untwisted length
    known_counts: counts of the known ends
    """

@_as_formula
def packages_for_mass(yarn_mass: _Measure, package_mass: _Measure) -> Quantity:
    """Packages that a mass of yarn fills, the last one perhaps not full.

    p = round up(m_y / g)

    yarn_mass: yarn to wind
    package_mass: yarn on a full package
    """

@_as_formula
def packing_fraction(yarn_diameter: _Measure, count: _Measure, fibre_density: _Measure) -> Quantity:
    """Share of a yarn's section that is fibre, from its measured diameter.

    v = 1000 × π / 4 × d² / T; φ = 1 / (v × ρ)

    yarn_diameter: diameter of the yarn
    count: yarn count
    fibre_density: density of the fibre
    """

@_as_formula
def peirce_diameter(count: _Measure) -> Quantity:
    """Diameter of a cotton yarn by Peirce's round number: an inch over 28 times the root of the
    count.

    N = 590.541247 / T; d = 25.4 / (28 × √N)

    count: yarn count
    """

@_as_formula
def reel_turns(hank_length: _Measure, reel_circumference: _Measure, shrinkage: _Plain) -> Quantity:
    """Whole turns of the reel for a hank that still has its length after scouring.

    z_r = round up(l_h / (1 − s) / C_r)

    hank_length: length of the finished hank
    reel_circumference: circumference of the reel
    shrinkage: shrinkage in scouring
    """

@_as_formula
def reel_turns_for_mass(
    hank_mass: _Measure,
    reel_circumference: _Measure,
    count: _Measure,
) -> Quantity:
    """Whole turns of the reel for a hank of a wanted mass.

    z_r = round up(1000000 × m_h / (T × C_r))

    hank_mass: mass of the hank
    reel_circumference: circumference of the reel
    count: count at the reel
    """

@_as_formula
def reeled_length(reel_turns: _Plain, reel_circumference: _Measure, cuts: _Plain) -> Quantity:
    """Yarn on a reel: turns in a cut or lea, and the number of these.

    Y = z_r × C_r × k

    reel_turns: turns in a cut or lea
    reel_circumference: circumference of the reel
    cuts: number of cuts or leas
    """

@_as_formula
def single_for_fold(resultant_count: _Measure, ends: _Plain, contraction: _Plain) -> Quantity:
    """The single to spin for a wanted resultant of equal ends.

    T_s = T_R × (1 − k) / N

    resultant_count: resultant count wanted
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

@_as_formula
def single_on_twisted(
    resultant_count: _Measure,
    ends: _Plain,
    contraction_on_twisted: _Plain,
) -> Quantity:
    """The single to spin for a wanted resultant of equal ends, with the contraction on the twisted
    length.

    T_s = T_R / ((1 + k_t) × N)

    resultant_count: resultant count wanted
    ends: number of ends
    contraction_on_twisted: contraction in folding, on the twisted length
    """

@_as_formula
def singles_length(folded_length: _Measure, ends: _Plain, contraction: _Plain) -> Quantity:
    """Length of singles, all ends together, for a length of folded yarn.

    L_s = L × N / (1 − k)

    folded_length: length of the folded yarn
    ends: number of ends
    contraction: contraction in folding, on the untwisted length
    """

@_as_formula
def spyndles_of_mill_hanks(hanks: _Plain, cuts_per_hank: _Plain) -> Quantity:
    """Spyndles that hanks of a number of cuts make: a spyndle has 48 cuts.

    s = h × k / 48

    hanks: hanks
    cuts_per_hank: cuts in a hank
    """

@_as_formula
def stress_of_tenacity(tenacity: _Measure, density: _Measure) -> Quantity:
    """Stress that a tenacity means in a fibre or yarn of a density.

    σ = 10 × f × ρ

    tenacity: tenacity
    density: density
    """

@_as_formula
def tenacity(breaking_force: _Measure, count: _Measure) -> Quantity:
    """Strength of a yarn for its count.

    f = 100 × F / T

    breaking_force: breaking force
    count: yarn count
    """

@_as_formula
def traveller_speed(
    spindle_speed: _Measure,
    delivery_speed: _Measure,
    package_diameter: _Measure,
) -> Quantity:
    """Speed of the traveller on the ring.

    n_t = n_s − v / (π × d_p)

    spindle_speed: spindle speed
    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

@_as_formula
def twist_after_shrinkage(twist_before: _Measure, shrinkage: _Plain) -> Quantity:
    """Turns per length after a yarn has shrunk: the turns stay, the length goes.

    t₂ = t₁ / (1 − s)

    twist_before: twist before
    shrinkage: shrinkage in length
    """

@_as_formula
def twist_by_lincoln(twist_factor: _Measure, count: _Measure) -> Quantity:
    """Twist of ring-spun cotton by a rule of 1885: the multiplier's twist, less 0.2 turns in an
    inch for each count below 30, and more by as much for each above.

    N = 590.541247 / T; t = 100 × K / √T − 0.2 × (30 − N) / 0.0254

    twist_factor: twist multiplier
    count: yarn count
    """

@_as_formula
def twist_by_retwisting(retwisting_turns: _Plain, gauge_length: _Measure) -> Quantity:
    """Twist by untwisting a single and twisting it up again to the same length.

    t = n / (2 × L)

    retwisting_turns: turns out and in again, all together
    gauge_length: length between the clamps
    """

@_as_formula
def twist_counted(untwisting_turns: _Plain, gauge_length: _Measure) -> Quantity:
    """Twist counted by untwisting a length until its fibres, or its singles, lie side by side.

    t = n / L

    untwisting_turns: turns to untwist it
    gauge_length: length between the clamps
    """

@_as_formula
def twist_factor(twist: _Measure, count: _Measure) -> Quantity:
    """How hard a yarn is twisted for its count.

    K = t / 100 × √T

    twist: twist
    count: yarn count
    """

@_as_formula
def twist_for_factor(twist_factor: _Measure, count: _Measure) -> Quantity:
    """The twist that a yarn needs for a twist factor.

    t = 100 × K / √T

    twist_factor: twist factor
    count: yarn count
    """

@_as_formula
def twist_for_helix_angle(helix_angle: _Measure, yarn_diameter: _Measure) -> Quantity:
    """Twist that gives the surface fibres a slope.

    t = 1000 × tan(α × π / 180) / (π × d)

    helix_angle: slope wanted
    yarn_diameter: diameter of the yarn
    """

@_as_formula
def twist_for_new_count(twist: _Measure, count: _Measure, new_count: _Measure) -> Quantity:
    """The twist that keeps a yarn as hard when its count is changed.

    t₂ = t × √(T / T₂)

    twist: twist now
    count: count now
    new_count: count wanted
    """

@_as_formula
def twist_for_new_factor(
    twist: _Measure,
    twist_factor: _Measure,
    new_twist_factor: _Measure,
) -> Quantity:
    """The twist when a yarn of one count is to be twisted harder or softer.

    t₂ = t × K₂ / K

    twist: twist now
    twist_factor: twist factor now
    new_twist_factor: twist factor wanted
    """

@_as_formula
def twist_from_roller(roller_ratio: _Plain, roller_circumference: _Measure) -> Quantity:
    """Twist from the turns of the spindle for each turn of the delivery roller.

    t = i / C

    roller_ratio: spindle turns for a turn of the delivery roller
    roller_circumference: circumference of the delivery roller
    """

@_as_formula
def twist_from_speed(spindle_speed: _Measure, delivery_speed: _Measure) -> Quantity:
    """Twist put in by a turning spindle at a delivery.

    t = n_s / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    """

@_as_formula
def twist_from_wheel(twist_constant: _Measure, teeth: _Plain) -> Quantity:
    """Twist that a change wheel gives, where twist falls as teeth rise.

    t = C_t / z

    twist_constant: twist constant: twist times teeth
    teeth: teeth of the wheel
    """

@_as_formula
def twist_gained_over_end(twist_before: _Measure, package_diameter: _Measure) -> Quantity:
    """Twist after unwinding over the end, where the coil turns the way of the twist.

    t₂ = t₁ + 1 / (π × d_p)

    twist_before: twist on the package
    package_diameter: diameter at which the yarn comes off
    """

@_as_formula
def twist_left_in_single(single_twist: _Measure, folding_twist: _Measure) -> Quantity:
    """Twist left in the singles after folding the other way, for small helix angles.

    t_l = t_s − t_f

    single_twist: twist of the singles before folding
    folding_twist: folding twist, of the other direction
    """

@_as_formula
def twist_left_ratio(
    single_twist: _Measure,
    folding_twist: _Measure,
    helix_diameter: _Measure,
) -> Quantity:
    """Share of the singles' twist left after folding the other way, with the slope of the fold.

    tan β = π / 1000 × D × t_f; q = 1 − t_f / t_s / (1 + (tan β)²)

    single_twist: twist of the singles before folding
    folding_twist: folding twist, of the other direction
    helix_diameter: diameter of the helix of the singles' axes, about that of one single
    """

@_as_formula
def twist_lost_over_end(twist_before: _Measure, package_diameter: _Measure) -> Quantity:
    """Twist after unwinding over the end, where the coil turns against the twist.

    t₂ = t₁ − 1 / (π × d_p)

    twist_before: twist on the package
    package_diameter: diameter at which the yarn comes off
    """

@_as_formula
def twist_of_a_coil(package_diameter: _Measure) -> Quantity:
    """Twist that unwinding over the end puts in or takes out: a turn for each coil.

    t_e = 1 / (π × d_p)

    package_diameter: diameter at which the yarn comes off
    """

@_as_formula
def twist_on_ring_bobbin(
    spindle_speed: _Measure,
    delivery_speed: _Measure,
    package_diameter: _Measure,
) -> Quantity:
    """Twist of the yarn as it lies on a ring bobbin: turns of the traveller for a length delivered.

    n_t = n_s − v / (π × d_p); t = n_t / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

@_as_formula
def two_fold_contraction(
    single_contraction_before: _Plain,
    single_contraction_after: _Plain,
    folding_twist: _Measure,
    helix_diameter: _Measure,
) -> Quantity:
    """Contraction of a two-fold staple yarn: the singles change their own, and lie aslant.

    tan β = π / 1000 × D × t_f; cos β = 1 / √(1 + (tan β)²); k = 1 − (1 − k_a) / (1 − k_b) × cos
    β

    single_contraction_before: contraction of the singles before folding
    single_contraction_after: contraction of the singles after folding
    folding_twist: folding twist
    helix_diameter: diameter of the helix of the singles' axes, about that of one single
    """

@_as_formula
def two_for_one_twist(spindle_speed: _Measure, delivery_speed: _Measure) -> Quantity:
    """Twist put in by a two-for-one spindle: two turns a revolution.

    t = 2 × n_s / v

    spindle_speed: spindle speed
    delivery_speed: delivery
    """

@_as_formula
def untwisted_length(twisted_length: _Measure, contraction_on_twisted: _Plain) -> Quantity:
    """Length of the untwisted strand in a length of twisted yarn.

    L₀ = L × (1 + k_t)

    twisted_length: length of the twisted yarn
    contraction_on_twisted: contraction, on the twisted length
    """

@_as_formula
def variation_of_mean(
    cv_between: _Plain,
    cv_along: _Plain,
    different_ends: _Plain,
    test_pieces: _Plain,
) -> Quantity:
    """Variation of the mean of readings, with that from end to end and that along the ends kept
    apart.

    CV_m = √(CV_b² / e + CV_a² / p)

    cv_between: variation from end to end
    cv_along: variation from piece to piece along an end
    different_ends: different ends
    test_pieces: pieces, all together
    """

@_as_formula
def wheel_for_twist(twist_constant: _Measure, twist: _Measure) -> Quantity:
    """The change wheel that would give a wanted twist, where twist falls as teeth rise.

    z = C_t / t

    twist_constant: twist constant: twist times teeth
    twist: twist wanted
    """

@_as_formula
def winding_lag(delivery_speed: _Measure, package_diameter: _Measure) -> Quantity:
    """Turns in a minute by which the traveller lags the spindle, or a bobbin differs from its
    flyer, to wind on what is delivered.

    n_l = v / (π × d_p)

    delivery_speed: delivery
    package_diameter: diameter at which the yarn is wound
    """

@_as_formula
def winding_output(
    winding_speed: _Measure,
    drums: _Plain,
    efficiency: _Plain,
    count: _Measure,
) -> Quantity:
    """What drums wind in an hour.

    Q = 60 × v × k_n × η × T / 1000000

    winding_speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    count: count
    """

@_as_formula
def winding_time(
    yarn_length: _Measure,
    winding_speed: _Measure,
    drums: _Plain,
    efficiency: _Plain,
) -> Quantity:
    """Time to wind a length, all drums at work.

    τ = Y / (60 × v × k_n × η)

    yarn_length: length to wind
    winding_speed: winding speed of a drum
    drums: drums at work
    efficiency: efficiency
    """

@_as_formula
def wraps_estimate(wraps_factor: _Plain, count: _Measure) -> Quantity:
    """Estimate of the wraps of a yarn from its count.

    Y = 496,054.648 / T; w = k × √Y / 2.54

    wraps_factor: factor of the yarn and the hand
    count: yarn count
    """

@_as_formula
def yarn_diameter(specific_volume: _Measure, count: _Measure) -> Quantity:
    """Diameter of a round yarn from its count and specific volume.

    d = √(4 × v × T / 3141.59265)

    specific_volume: specific volume of the yarn
    count: yarn count
    """

@_as_formula
def yarn_specific_volume(packing_fraction: _Plain, fibre_density: _Measure) -> Quantity:
    """Volume that a gram of yarn fills, air and all.

    v = 1 / (φ × ρ)

    packing_fraction: share of the section that is fibre
    fibre_density: density of the fibre
    """

@_as_calculation
def ball_band(
    *,
    count: _Measure | Sequence[_Measure],
    ball_mass: _Measure | Sequence[_Measure] | None = None,
    regain: _Plain | None = None,
    label_regain: _Plain | None = None,
    country: str | None = None,
) -> Results[Literal["yarn_length", "label_count"], Quantity]:
    """What the band of a ball says, from the count and the mass of the ball.

    count: count, as measured
    ball_mass: mass on the label
    regain: regain at which the count was measured
    label_regain: regain at which the label's mass holds
    country: country whose words of hand knitting are shown
    """

@_as_calculation
def check_weight_card(
    *,
    count: _Measure | Sequence[_Measure],
    check_lengths: _Measures,
    ends: _Plain | None = None,
    readings: _Plain | None = None,
    different_ends: _Plain | None = None,
    cv: _Plain | None = None,
    cv_between: _Plain | None = None,
    cv_readings: _Plain | None = None,
    stated_regain: _Plain | None = None,
    regain: _Plain | None = None,
    stated_oil: _Plain | None = None,
    oil: _Plain | None = None,
    confidence: _Plain | None = None,
    balance: str | None = None,
) -> Results[str, Any]:
    """What lengths of a yarn, a slubbing or a sliver should weigh on the balance at hand, and the
    bands in which the mean of the readings, and all single readings, must fall.

    count: count of the yarn, slubbing or sliver, as stated
    check_lengths: length of each end weighed
    ends: ends weighed together
    readings: readings
    different_ends: different ends from which all the pieces come
    cv: coefficient of variation from piece to piece, of the length that is weighed
    cv_between: coefficient of variation from end to end, where it is not in the other
    cv_readings: earlier readings from which the variation comes
    stated_regain: regain at which the count is stated
    regain: regain of the yarn as it is weighed
    stated_oil: oil with which the count is stated, on clean dry fibre
    oil: oil on the yarn as it is weighed, on clean dry fibre
    confidence: chance with which a yarn that is right is within the limits
    balance: units of the balance, separated by commas
    """

@_as_calculation
def wraps(
    *,
    count: _Measure | Sequence[_Measure],
) -> Results[Literal["low", "touching", "high"], Quantity]:
    """The wraps that a yarn of a count may have: an estimate with its band, never a conversion.

    count: yarn count
    """
