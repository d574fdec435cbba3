"""Water on the fibre, what is clean of it, how fine it is."""

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
    allowance as allowance,
    allowances as allowances,
    us_grade as us_grade,
)

@_as_formula
def blend_regain(dry_shares: _Plains, regains: _Plains) -> Quantity:
    """Commercial regain of a blend of any number of fibres, each share by oven-dry mass.

    A = p₁ × R₁ + p₂ × R₂

    dry_shares: shares of the fibres in the oven-dry mass
    regains: regain agreed for each fibre
    """

@_as_formula
def clean_content_customs(wool_base: _Plain) -> Quantity:
    """Clean content of the United States customs, from bone-dry pure fibre.

    A = WB / 0.86

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    """

@_as_formula
def clean_yield_customs(clean_content: _Plain, vegetable_on_greasy: _Plain) -> Quantity:
    """Clean yield of the United States customs: clean content less an allowance for vegetable
    matter.

    Y = A − smaller of (0.005 × A + 0.6 × V, 0.15 × A)

    clean_content: clean content
    vegetable_on_greasy: vegetable matter as a share of the greasy mass
    """

@_as_formula
def commercial_mass(oven_dry_mass: _Measure, allowance: _Plain, fat_allowance: _Plain) -> Quantity:
    """Invoice mass: oven-dry mass with the agreed allowances for water and fat.

    C = m_d × (1 + A + a)

    oven_dry_mass: oven-dry mass
    allowance: agreed allowance for water
    fat_allowance: agreed allowance for fat, oil and dressing
    """

@_as_formula
def count_at_regain(count: _Measure, regain: _Plain, wanted_regain: _Plain) -> Quantity:
    """The same yarn's count at another regain.

    T₂ = T × (1 + R_w) / (1 + R)

    count: count as found
    regain: regain at which it was found
    wanted_regain: regain wanted
    """

@_as_formula
def diameter_of_blend(shares: _Plains, fibre_diameters: _Measures) -> Quantity:
    """Mean diameter of a blend, as snippets of all its fibres would be measured.

    d_b = (p₁ / d₁ + p₂ / d₂) / (p₁ / d₁² + p₂ / d₂²)

    shares: shares of the mass
    fibre_diameters: mean diameters of the components
    """

@_as_formula
def dry_share(weighed_shares: _Plains, regains: _Plains) -> Quantity:
    """Share of the first fibre in the oven-dry mass of a blend, from the shares as weighed.

    p₁ = q₁ / (1 + R₁) / (q₁ / (1 + R₁) + q₂ / (1 + R₂))

    weighed_shares: shares of the mass as weighed, the fibre asked for first
    regains: regain of each fibre when it was weighed
    """

@_as_formula
def fibre_count_of_blend(shares: _Plains, fibre_counts: _Measures) -> Quantity:
    """Count of the fibres of a blend that gives the right number of them in a section.

    T_f = 1 / (p₁ / T₁ + p₂ / T₂)

    shares: shares of the mass
    fibre_counts: counts of the fibres
    """

@_as_formula
def fibre_diameter(fibre_count: _Measure, fibre_density: _Measure) -> Quantity:
    """Diameter of a round fibre from its linear density.

    d_f = 1000 × √(4 × T_f / (3141.59265 × ρ))

    fibre_count: linear density of the fibre
    fibre_density: density of the fibre
    """

@_as_formula
def fibre_from_greasy(greasy_mass: _Measure, clean_yield: _Plain) -> Quantity:
    """Clean dry fibre in greasy wool.

    f = G × y

    greasy_mass: greasy mass
    clean_yield: clean dry fibre as a share of the greasy mass
    """

@_as_formula
def fibre_in_mass(mass: _Measure, state_ratio: _Plain) -> Quantity:
    """Clean dry fibre in what was weighed.

    f = m / s_m

    mass: mass as weighed
    state_ratio: mass for each unit of clean dry fibre
    """

@_as_formula
def fibres_in_section(count: _Measure, fibre_count: _Measure, diameter_cv: _Plain) -> Quantity:
    """Mean number of fibres in the section of a yarn.

    n = T / (T_f × (1 + CV_d²))

    count: yarn count, clean and conditioned
    fibre_count: count of a fibre of the mean diameter
    diameter_cv: coefficient of variation of the diameter
    """

@_as_formula
def humidity_between_points(
    regain: _Plain,
    humidity_below: _Plain,
    regain_below: _Plain,
    humidity_above: _Plain,
    regain_above: _Plain,
) -> Quantity:
    """Humidity that gives a regain, straight between two known points.

    φ = φ₁ + (φ₂ − φ₁) × (R − R₁) / (R₂ − R₁)

    regain: regain wanted
    humidity_below: humidity of the point below
    regain_below: regain there
    humidity_above: humidity of the point above
    regain_above: regain there
    """

@_as_formula
def invoice_mass_from_content(
    mass: _Measure,
    moisture_content: _Plain,
    allowance: _Plain,
) -> Quantity:
    """Invoice mass, from the mass as weighed and the share of water in it.

    C = m × (1 − M) × (1 + A)

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    allowance: agreed allowance for water
    """

@_as_formula
def invoice_mass_of_cleaned(
    lot_mass: _Measure,
    sample_mass: _Measure,
    dry_sample_mass: _Measure,
    allowance: _Plain,
    fat_allowance: _Plain,
    dressing_allowance: _Plain,
) -> Quantity:
    """Invoice mass of a lot whose sample was cleaned before it was dried.

    C = m_L × m_sd / m_s × (1 + A + a + b)

    lot_mass: lot as weighed
    sample_mass: sample as taken
    dry_sample_mass: sample, cleaned and oven-dry
    allowance: agreed allowance for water
    fat_allowance: agreed allowance for natural fat
    dressing_allowance: agreed allowance for oil and dressing
    """

@_as_formula
def limit_count(fibres: _Plain, fibre_count: _Measure, diameter_cv: _Plain) -> Quantity:
    """Finest count that a number of fibres in the section allows.

    T = n × T_f × (1 + CV_d²)

    fibres: fibres that the section needs
    fibre_count: count of a fibre of the mean diameter
    diameter_cv: coefficient of variation of the diameter
    """

@_as_formula
def limit_factor(fibre_mass_cv: _Plain) -> Quantity:
    """Factor for the least irregularity, from the spread of the fibres' mass for their length.

    k = √(1 + CV_f²)

    fibre_mass_cv: coefficient of variation of the fibres' mass for their length
    """

@_as_formula
def limit_factor_of_diameter(diameter_cv: _Plain) -> Quantity:
    """Factor for the least irregularity, from the spread of the diameter.

    k = √(1 + 4 × CV_d²)

    diameter_cv: coefficient of variation of the diameter
    """

@_as_formula
def limit_irregularity(limit_factor: _Plain, fibres: _Plain) -> Quantity:
    """Least possible irregularity of a yarn: fibres laid by chance.

    CV_lim = k / √n

    limit_factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

@_as_formula
def mass_after_change_of_state(
    mass_before: _Measure,
    state_ratio_before: _Plain,
    state_ratio_after: _Plain,
) -> Quantity:
    """Mass of the same fibre in another state: oil out, water in.

    m₂ = m₁ × s₂ / s₁

    mass_before: mass before
    state_ratio_before: mass for each unit of clean dry fibre, before
    state_ratio_after: mass for each unit of clean dry fibre, after
    """

@_as_formula
def mass_at_regain(mass: _Measure, regain: _Plain, wanted_regain: _Plain) -> Quantity:
    """The same fibre at another regain.

    m₂ = m × (1 + R_w) / (1 + R)

    mass: mass as weighed
    regain: regain at weighing
    wanted_regain: regain wanted
    """

@_as_formula
def mass_in_state(fibre_mass: _Measure, state_ratio: _Plain) -> Quantity:
    """What the scale reads for clean dry fibre in a state.

    m = f × s_m

    fibre_mass: clean dry fibre
    state_ratio: mass for each unit of clean dry fibre
    """

@_as_formula
def mass_loss_from_yield(clean_yield: _Plain) -> Quantity:
    """Shrinkage of greasy wool: what is not yield.

    m_l = 1 − y

    clean_yield: yield
    """

@_as_formula
def mean_fibre_count_by_mass(shares: _Plains, fibre_counts: _Measures) -> Quantity:
    """Mean count of the fibres of a blend, each by its share of the mass, as it is usually printed.

    T_f = p₁ × T₁ + p₂ × T₂

    shares: shares of the mass
    fibre_counts: counts of the fibres
    """

@_as_formula
def moisture_content(regain: _Plain) -> Quantity:
    """Water as a share of the mass with its water, from the regain.

    M = R / (1 + R)

    regain: water on oven-dry mass
    """

@_as_formula
def noil_share(tear: _Plain) -> Quantity:
    """Noil as a share of top and noil, from the tear.

    x = 1 / (1 + t)

    tear: tear: top over noil
    """

@_as_formula
def oven_dry_from_content(mass: _Measure, moisture_content: _Plain) -> Quantity:
    """Oven-dry mass of a mass with a share of water in it.

    m_d = m × (1 − M)

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    """

@_as_formula
def oven_dry_mass(mass: _Measure, regain: _Plain) -> Quantity:
    """Oven-dry mass of a mass at a regain.

    m_d = m / (1 + R)

    mass: mass as weighed
    regain: water on oven-dry mass
    """

@_as_formula
def oven_dry_mass_of_lot(
    lot_mass: _Measure,
    sample_mass: _Measure,
    dry_sample_mass: _Measure,
) -> Quantity:
    """Oven-dry mass of a lot, from a sample of it.

    m_d = m_L × m_sd / m_s

    lot_mass: lot as weighed
    sample_mass: sample as taken
    dry_sample_mass: sample, oven-dry
    """

@_as_formula
def regain_between_points(
    humidity: _Plain,
    humidity_below: _Plain,
    regain_below: _Plain,
    humidity_above: _Plain,
    regain_above: _Plain,
) -> Quantity:
    """Regain at a humidity, straight between two known points.

    R = R₁ + (R₂ − R₁) × (φ − φ₁) / (φ₂ − φ₁)

    humidity: relative humidity
    humidity_below: humidity of the point below
    regain_below: regain there
    humidity_above: humidity of the point above
    regain_above: regain there
    """

@_as_formula
def regain_from_content(moisture_content: _Plain) -> Quantity:
    """Water on the oven-dry mass, from the share of water in the whole.

    R = M / (1 − M)

    moisture_content: water as a share of the mass with its water
    """

@_as_formula
def regain_from_masses(sample_mass: _Measure, dry_sample_mass: _Measure) -> Quantity:
    """Water on the oven-dry mass, from a sample weighed before and after the oven.

    R = (m_s − m_sd) / m_sd

    sample_mass: sample as taken
    dry_sample_mass: the same, oven-dry
    """

@_as_formula
def regain_of_remainder(blend_regain: _Plain, dry_share: _Plain, others_regain: _Plain) -> Quantity:
    """Regain of one fibre of a blend, from the regain of the whole and that of the others.

    A₁ = (A − (1 − p) × A₂) / p

    blend_regain: regain of the blend
    dry_share: share of this fibre in the oven-dry mass
    others_regain: regain of the other fibres together
    """

@_as_formula
def scoured_yield(scoured_mass: _Measure, greasy_mass: _Measure) -> Quantity:
    """Mass after scouring as a share of the mass before.

    Y = m / G

    scoured_mass: mass after scouring
    greasy_mass: mass before
    """

@_as_formula
def scoured_yield_iwto(
    wool_base: _Plain,
    vegetable_base: _Plain,
    stated_regain: _Plain,
) -> Quantity:
    """Scoured yield that the wool trade calculates from a core test, at a regain.

    Y = (WB + VMB) × (1 + R_s) / 0.9773

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    vegetable_base: dry vegetable matter, free of ash and extract, as a share of the greasy mass
    stated_regain: regain at which the yield is stated
    """

@_as_formula
def scoured_yield_japanese(wool_base: _Plain) -> Quantity:
    """Clean scoured yield as the Japanese trade has it: without vegetable matter.

    Y = WB × 1.16 / 0.985

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    """

@_as_formula
def setting_over_staple(roller_setting: _Measure, staple: _Measure) -> Quantity:
    """How much longer than the staple the draft is: setting of the rollers over the staple.

    x = s / l

    roller_setting: distance between the nips of the two pairs of rollers
    staple: length of the longest staple
    """

@_as_formula
def share_of_sort(masses: _Measures) -> Quantity:
    """Share of one sort in the lot that was sorted.

    p₁ = m₁ / (m₁ + m₂)

    masses: masses of all sorts, the one asked for first
    """

@_as_formula
def sorted_mass(greasy_mass: _Measure, rejects: _Plain) -> Quantity:
    """Greasy mass left after the rejects are sorted out.

    S = G × (1 − r_j)

    greasy_mass: greasy mass as received
    rejects: share rejected, with its dirt
    """

@_as_formula
def spinning_fineness(fibre_diameter: _Measure, diameter_cv: _Plain) -> Quantity:
    """Diameter of a lot of usual spread that spins like this one: the spinning fineness.

    d_s = 0.881 × d_f × √(1 + 5 × CV_d²)

    fibre_diameter: mean fibre diameter
    diameter_cv: coefficient of variation of the diameter
    """

@_as_formula
def state_ratio(regain: _Plain, fat: _Plain, vegetable: _Plain) -> Quantity:
    """Water, fat and vegetable matter are all taken on the clean dry fibre, so they add.

    s_m = 1 + R + o + v_m

    regain: water on clean dry fibre
    fat: grease and oil on clean dry fibre
    vegetable: vegetable matter on clean dry fibre
    """

@_as_formula
def top_and_noil_dry(wool_base: _Plain, vegetable_base: _Plain) -> Quantity:
    """Top and noil to expect, dry combed, with what combing loses to vegetable matter taken off.

    Y = 1.207 × WB − (7.7 − 40.6 / (7.83 + 100 × VMB)) / 100

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    vegetable_base: dry vegetable matter, free of ash and extract, as a share of the greasy mass
    """

@_as_formula
def washed_clean_share(
    state_ratio: _Plain,
    washed_masses: _Measures,
    greasy_masses: _Measures,
) -> Quantity:
    """Clean dry fibre in greasy wool, from washed samples: all that was clean over all that was
    greasy.

    y = (m₁ + m₂) / (s_m × (G₁ + G₂))

    state_ratio: mass of the washed wool for each unit of clean dry fibre
    washed_masses: washed masses of the samples
    greasy_masses: greasy masses of the same samples
    """

@_as_formula
def water_from_content(mass: _Measure, moisture_content: _Plain) -> Quantity:
    """Water in a mass, from its share of the whole.

    m_a = m × M

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    """

@_as_formula
def water_in_mass(mass: _Measure, regain: _Plain) -> Quantity:
    """Water in a mass at a regain.

    m_a = m × R / (1 + R)

    mass: mass as weighed
    regain: water on oven-dry mass
    """

@_as_formula
def wool_fibre_count(fibre_diameter: _Measure) -> Quantity:
    """Linear density of a round wool fibre from its diameter.

    T_f = 4.11548638 × d_f² / 4000

    fibre_diameter: fibre diameter
    """

@_as_formula
def yield_of_sorts(masses: _Measures, yields: _Plains) -> Quantity:
    """Yield of a lot from those of its sorts.

    Y_t = (m₁ × Y₁ + m₂ × Y₂) / (m₁ + m₂)

    masses: masses of the sorts
    yields: their yields
    """

@_as_calculation
def clean_yields(
    *,
    wool_base: _Plain | None = None,
    iwto_16: _Plain | None = None,
    iwto_17: _Plain | None = None,
    japanese: _Plain | None = None,
    top_and_noil: _Plain | None = None,
    customs_content: _Plain | None = None,
    customs_yield: _Plain | None = None,
    iwto_16_shrinkage: _Plain | None = None,
    iwto_17_shrinkage: _Plain | None = None,
    japanese_shrinkage: _Plain | None = None,
    top_and_noil_shrinkage: _Plain | None = None,
    customs_content_shrinkage: _Plain | None = None,
    customs_yield_shrinkage: _Plain | None = None,
    vegetable_base: _Plain | None = None,
) -> Results[
    Literal[
        "wool_base",
        "iwto_16",
        "iwto_16_shrinkage",
        "iwto_17",
        "iwto_17_shrinkage",
        "japanese",
        "japanese_shrinkage",
        "top_and_noil",
        "top_and_noil_shrinkage",
        "customs_content",
        "customs_content_shrinkage",
        "customs_yield",
        "customs_yield_shrinkage",
    ],
    Quantity,
]:
    """Every yield of a lot by each definition of the trade, from any one of them.

    wool_base: clean dry fibre in the greasy wool
    iwto_16: scoured yield at 16 % regain
    iwto_17: scoured yield at 17 % regain
    japanese: Japanese clean scoured yield
    top_and_noil: yield of top and noil, dry combed
    customs_content: clean content of the US customs
    customs_yield: clean yield of the US customs
    iwto_16_shrinkage: shrinkage to scoured wool at 16 % regain
    iwto_17_shrinkage: shrinkage to scoured wool at 17 % regain
    japanese_shrinkage: shrinkage to Japanese clean scoured wool
    top_and_noil_shrinkage: shrinkage to top and noil
    customs_content_shrinkage: shrinkage to the clean content of the US customs
    customs_yield_shrinkage: shrinkage to the clean yield of the US customs
    vegetable_base: dry vegetable matter, on the greasy mass
    """

@_as_calculation
def equilibrium_regain(
    *,
    humidity: _Plain,
) -> Results[Literal["damping_regain", "drying_regain_low", "drying_regain_high"], Quantity]:
    """The regain of clean wool in air of a relative humidity: in damping, and the band of drying.

    humidity: relative humidity
    """

@_as_calculation
def humidity_for_regain(
    *,
    regain: _Plain,
) -> Results[Literal["damping_humidity", "drying_humidity_low", "drying_humidity_high"], Quantity]:
    """The relative humidity that keeps clean wool at a regain: in damping, and the band of drying.

    regain: regain wanted
    """

@_as_calculation
def invoice(
    *,
    lot_mass: _Measure | Sequence[_Measure],
    allowances: _Plains,
    sample_mass: _Measure | Sequence[_Measure] | None = None,
    dry_sample_mass: _Measure | Sequence[_Measure] | None = None,
    regain: _Plain | None = None,
    moisture_content: _Plain | None = None,
    fat_allowance: _Plain | None = None,
) -> Results[str, Any]:
    """Regain found, oven-dry mass and the invoice mass of a lot at each of several allowances.

    lot_mass: mass of the lot on the scale
    sample_mass: sample as taken
    dry_sample_mass: sample, oven-dry; where fat is allowed for, cleaned before it was dried
    regain: regain found, on the oven-dry mass
    moisture_content: moisture content found, on the mass as weighed
    fat_allowance: agreed allowance for fat, oil and dressing, on the clean oven-dry mass
    allowances: agreed allowances for water, on the oven-dry mass
    """

@_as_calculation
def test_wash(
    *,
    greasy_masses: _Measures,
    washed_masses: _Measures,
    regain: _Plain,
    fat: _Plain | None = None,
    vegetable: _Plain | None = None,
    confidence: _Plain | None = None,
    balance_error: _Measure | Sequence[_Measure] | None = None,
) -> Results[str, Any]:
    """The clean yield of a lot from samples that were washed, with its interval, and the line for
    the lot file.

    greasy_masses: greasy mass of each sample
    washed_masses: washed mass of each sample, in the same order
    regain: water on the washed wool, on clean dry fibre
    fat: fat left on it, on clean dry fibre
    vegetable: vegetable matter left in it, on clean dry fibre
    confidence: share of cases that the interval takes in
    balance_error: how far the balance may be misread, either way
    """

@_as_calculation
def will_spin(
    *,
    fibre_diameter: _Measure | Sequence[_Measure],
    diameter_cv: _Plain,
    count: _Measure | Sequence[_Measure],
    system: Literal["woollen", "semi-worsted", "worsted"] | None = None,
    staple: _Measure | Sequence[_Measure] | None = None,
    roller_setting: _Measure | Sequence[_Measure] | None = None,
) -> Results[
    Literal[
        "fibre_count",
        "fibres",
        "fibres_needed",
        "fibres_ratio",
        "limit_count",
        "limit_irregularity",
        "setting_over_staple",
    ],
    Quantity,
]:
    """Fibres in the section of a wool yarn against what a way of spinning needs: woollen, semi-
    worsted or worsted.

    fibre_diameter: mean fibre diameter
    diameter_cv: coefficient of variation of the fibre diameter
    count: count of the single, clean and conditioned
    system: way of spinning
    staple: length of the longest staple
    roller_setting: distance between the nips of the drafting rollers
    """
