"""Water on the fibre, what is clean of it, how fine it is."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._fibre_more import allowance as allowance
from hankwise._fibre_more import allowances as allowances
from hankwise._fibre_more import clean_yields as clean_yields
from hankwise._fibre_more import equilibrium_regain as equilibrium_regain
from hankwise._fibre_more import humidity_for_regain as humidity_for_regain
from hankwise._fibre_more import invoice as invoice
from hankwise._fibre_more import test_wash as test_wash
from hankwise._fibre_more import us_grade as us_grade
from hankwise._fibre_more import will_spin as will_spin
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
class _BlendRegain(Formula):
    """Commercial regain of a blend of any number of fibres, each share by oven-dry mass.

    A = p₁ × R₁ + p₂ × R₂

    dry_shares: shares of the fibres in the oven-dry mass
    regains: regain agreed for each fibre
    """

    def __call__(self, dry_shares: _Plains, regains: _Plains) -> Quantity: ...
    def working(
        self,
        dry_shares: _Plains,
        regains: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

blend_regain: _BlendRegain

@final
class _CleanContentCustoms(Formula):
    """Clean content of the United States customs, from bone-dry pure fibre.

    A = WB / 0.86

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    """

    def __call__(self, wool_base: _Plain) -> Quantity: ...
    def working(self, wool_base: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["wool_base"],
        *,
        clean_content_customs: _Plain,
        wool_base: _Plain = ...,
    ) -> list[Quantity]: ...

clean_content_customs: _CleanContentCustoms

@final
class _CleanYieldCustoms(Formula):
    """Clean yield of the United States customs: clean content less an allowance for vegetable
    matter.

    Y = A − smaller of (0.005 × A + 0.6 × V, 0.15 × A)

    clean_content: clean content
    vegetable_on_greasy: vegetable matter as a share of the greasy mass
    """

    def __call__(self, clean_content: _Plain, vegetable_on_greasy: _Plain) -> Quantity: ...
    def working(
        self,
        clean_content: _Plain,
        vegetable_on_greasy: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["clean_content", "vegetable_on_greasy"],
        *,
        clean_yield_customs: _Plain,
        clean_content: _Plain = ...,
        vegetable_on_greasy: _Plain = ...,
    ) -> list[Quantity]: ...

clean_yield_customs: _CleanYieldCustoms

@final
class _CommercialMass(Formula):
    """Invoice mass: oven-dry mass with the agreed allowances for water and fat.

    C = m_d × (1 + A + a)

    oven_dry_mass: oven-dry mass
    allowance: agreed allowance for water
    fat_allowance: agreed allowance for fat, oil and dressing
    """

    def __call__(
        self,
        oven_dry_mass: _Measure,
        allowance: _Plain,
        fat_allowance: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        oven_dry_mass: _Measure,
        allowance: _Plain,
        fat_allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["oven_dry_mass", "allowance", "fat_allowance"],
        *,
        commercial_mass: _Measure,
        oven_dry_mass: _Measure = ...,
        allowance: _Plain = ...,
        fat_allowance: _Plain = ...,
    ) -> list[Quantity]: ...

commercial_mass: _CommercialMass

@final
class _CountAtRegain(Formula):
    """The same yarn's count at another regain.

    T₂ = T × (1 + R_w) / (1 + R)

    count: count as found
    regain: regain at which it was found
    wanted_regain: regain wanted
    """

    def __call__(self, count: _Measure, regain: _Plain, wanted_regain: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        regain: _Plain,
        wanted_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "regain", "wanted_regain"],
        *,
        count_at_regain: _Measure,
        count: _Measure = ...,
        regain: _Plain = ...,
        wanted_regain: _Plain = ...,
    ) -> list[Quantity]: ...

count_at_regain: _CountAtRegain

@final
class _DiameterOfBlend(Formula):
    """Mean diameter of a blend, as snippets of all its fibres would be measured.

    d_b = (p₁ / d₁ + p₂ / d₂) / (p₁ / (d₁ × d₁) + p₂ / (d₂ × d₂))

    shares: shares of the mass
    fibre_diameters: mean diameters of the components
    """

    def __call__(self, shares: _Plains, fibre_diameters: _Measures) -> Quantity: ...
    def working(
        self,
        shares: _Plains,
        fibre_diameters: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

diameter_of_blend: _DiameterOfBlend

@final
class _DryShare(Formula):
    """Share of the first fibre in the oven-dry mass of a blend, from the shares as weighed.

    p₁ = q₁ / (1 + R₁) / (q₁ / (1 + R₁) + q₂ / (1 + R₂))

    weighed_shares: shares of the mass as weighed, the fibre asked for first
    regains: regain of each fibre when it was weighed
    """

    def __call__(self, weighed_shares: _Plains, regains: _Plains) -> Quantity: ...
    def working(
        self,
        weighed_shares: _Plains,
        regains: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

dry_share: _DryShare

@final
class _FibreCountOfBlend(Formula):
    """Count of the fibres of a blend that gives the right number of them in a section.

    T_f = 1 / (p₁ / T₁ + p₂ / T₂)

    shares: shares of the mass
    fibre_counts: counts of the fibres
    """

    def __call__(self, shares: _Plains, fibre_counts: _Measures) -> Quantity: ...
    def working(
        self,
        shares: _Plains,
        fibre_counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

fibre_count_of_blend: _FibreCountOfBlend

@final
class _FibreDiameter(Formula):
    """Diameter of a round fibre from its linear density.

    d_f = 1000 × √(4 × T_f / (3141.59265 × ρ))

    fibre_count: linear density of the fibre
    fibre_density: density of the fibre
    """

    def __call__(self, fibre_count: _Measure, fibre_density: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_count: _Measure,
        fibre_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_count", "fibre_density"],
        *,
        fibre_diameter: _Measure,
        fibre_count: _Measure = ...,
        fibre_density: _Measure = ...,
    ) -> list[Quantity]: ...

fibre_diameter: _FibreDiameter

@final
class _FibreFromGreasy(Formula):
    """Clean dry fibre in greasy wool.

    f = G × y

    greasy_mass: greasy mass
    clean_yield: clean dry fibre as a share of the greasy mass
    """

    def __call__(self, greasy_mass: _Measure, clean_yield: _Plain) -> Quantity: ...
    def working(
        self,
        greasy_mass: _Measure,
        clean_yield: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["greasy_mass", "clean_yield"],
        *,
        fibre_from_greasy: _Measure,
        greasy_mass: _Measure = ...,
        clean_yield: _Plain = ...,
    ) -> list[Quantity]: ...

fibre_from_greasy: _FibreFromGreasy

@final
class _FibreInMass(Formula):
    """Clean dry fibre in what was weighed.

    f = m / s_m

    mass: mass as weighed
    state_ratio: mass for each unit of clean dry fibre
    """

    def __call__(self, mass: _Measure, state_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        state_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "state_ratio"],
        *,
        fibre_in_mass: _Measure,
        mass: _Measure = ...,
        state_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

fibre_in_mass: _FibreInMass

@final
class _FibresInSection(Formula):
    """Mean number of fibres in the section of a yarn.

    n = T / (T_f × (1 + CV_d × CV_d))

    count: yarn count, clean and conditioned
    fibre_count: count of a fibre of the mean diameter
    diameter_cv: coefficient of variation of the diameter
    """

    def __call__(self, count: _Measure, fibre_count: _Measure, diameter_cv: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        fibre_count: _Measure,
        diameter_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "fibre_count", "diameter_cv"],
        *,
        fibres_in_section: _Plain,
        count: _Measure = ...,
        fibre_count: _Measure = ...,
        diameter_cv: _Plain = ...,
    ) -> list[Quantity]: ...

fibres_in_section: _FibresInSection

@final
class _HumidityBetweenPoints(Formula):
    """Humidity that gives a regain, straight between two known points.

    φ = φ₁ + (φ₂ − φ₁) × (R − R₁) / (R₂ − R₁)

    regain: regain wanted
    humidity_below: humidity of the point below
    regain_below: regain there
    humidity_above: humidity of the point above
    regain_above: regain there
    """

    def __call__(
        self,
        regain: _Plain,
        humidity_below: _Plain,
        regain_below: _Plain,
        humidity_above: _Plain,
        regain_above: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        regain: _Plain,
        humidity_below: _Plain,
        regain_below: _Plain,
        humidity_above: _Plain,
        regain_above: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "regain", "humidity_below", "regain_below", "humidity_above", "regain_above"
        ],
        *,
        humidity_between_points: _Plain,
        regain: _Plain = ...,
        humidity_below: _Plain = ...,
        regain_below: _Plain = ...,
        humidity_above: _Plain = ...,
        regain_above: _Plain = ...,
    ) -> list[Quantity]: ...

humidity_between_points: _HumidityBetweenPoints

@final
class _InvoiceMassFromContent(Formula):
    """Invoice mass, from the mass as weighed and the share of water in it.

    C = m × (1 − M) × (1 + A)

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    allowance: agreed allowance for water
    """

    def __call__(self, mass: _Measure, moisture_content: _Plain, allowance: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        moisture_content: _Plain,
        allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "moisture_content", "allowance"],
        *,
        invoice_mass_from_content: _Measure,
        mass: _Measure = ...,
        moisture_content: _Plain = ...,
        allowance: _Plain = ...,
    ) -> list[Quantity]: ...

invoice_mass_from_content: _InvoiceMassFromContent

@final
class _InvoiceMassOfCleaned(Formula):
    """Invoice mass of a lot whose sample was cleaned before it was dried.

    C = m_L × m_sd / m_s × (1 + A + a + b)

    lot_mass: lot as weighed
    sample_mass: sample as taken
    dry_sample_mass: sample, cleaned and oven-dry
    allowance: agreed allowance for water
    fat_allowance: agreed allowance for natural fat
    dressing_allowance: agreed allowance for oil and dressing
    """

    def __call__(
        self,
        lot_mass: _Measure,
        sample_mass: _Measure,
        dry_sample_mass: _Measure,
        allowance: _Plain,
        fat_allowance: _Plain,
        dressing_allowance: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        lot_mass: _Measure,
        sample_mass: _Measure,
        dry_sample_mass: _Measure,
        allowance: _Plain,
        fat_allowance: _Plain,
        dressing_allowance: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "lot_mass",
            "sample_mass",
            "dry_sample_mass",
            "allowance",
            "fat_allowance",
            "dressing_allowance",
        ],
        *,
        invoice_mass_of_cleaned: _Measure,
        lot_mass: _Measure = ...,
        sample_mass: _Measure = ...,
        dry_sample_mass: _Measure = ...,
        allowance: _Plain = ...,
        fat_allowance: _Plain = ...,
        dressing_allowance: _Plain = ...,
    ) -> list[Quantity]: ...

invoice_mass_of_cleaned: _InvoiceMassOfCleaned

@final
class _LimitCount(Formula):
    """Finest count that a number of fibres in the section allows.

    T = n × T_f × (1 + CV_d × CV_d)

    fibres: fibres that the section needs
    fibre_count: count of a fibre of the mean diameter
    diameter_cv: coefficient of variation of the diameter
    """

    def __call__(self, fibres: _Plain, fibre_count: _Measure, diameter_cv: _Plain) -> Quantity: ...
    def working(
        self,
        fibres: _Plain,
        fibre_count: _Measure,
        diameter_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibres", "fibre_count", "diameter_cv"],
        *,
        limit_count: _Measure,
        fibres: _Plain = ...,
        fibre_count: _Measure = ...,
        diameter_cv: _Plain = ...,
    ) -> list[Quantity]: ...

limit_count: _LimitCount

@final
class _LimitFactor(Formula):
    """Factor for the least irregularity, from the spread of the fibres' mass for their length.

    k = √(1 + CV_f × CV_f)

    fibre_mass_cv: coefficient of variation of the fibres' mass for their length
    """

    def __call__(self, fibre_mass_cv: _Plain) -> Quantity: ...
    def working(
        self,
        fibre_mass_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass_cv"],
        *,
        limit_factor: _Plain,
        fibre_mass_cv: _Plain = ...,
    ) -> list[Quantity]: ...

limit_factor: _LimitFactor

@final
class _LimitFactorOfDiameter(Formula):
    """Factor for the least irregularity, from the spread of the diameter.

    k = √(1 + 4 × CV_d × CV_d)

    diameter_cv: coefficient of variation of the diameter
    """

    def __call__(self, diameter_cv: _Plain) -> Quantity: ...
    def working(
        self,
        diameter_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameter_cv"],
        *,
        limit_factor_of_diameter: _Plain,
        diameter_cv: _Plain = ...,
    ) -> list[Quantity]: ...

limit_factor_of_diameter: _LimitFactorOfDiameter

@final
class _LimitIrregularity(Formula):
    """Least possible irregularity of a yarn: fibres laid by chance.

    CV_lim = k / √n

    limit_factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

    def __call__(self, limit_factor: _Plain, fibres: _Plain) -> Quantity: ...
    def working(
        self,
        limit_factor: _Plain,
        fibres: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["limit_factor", "fibres"],
        *,
        limit_irregularity: _Plain,
        limit_factor: _Plain = ...,
        fibres: _Plain = ...,
    ) -> list[Quantity]: ...

limit_irregularity: _LimitIrregularity

@final
class _MassAfterChangeOfState(Formula):
    """Mass of the same fibre in another state: oil out, water in.

    m₂ = m₁ × s₂ / s₁

    mass_before: mass before
    state_ratio_before: mass for each unit of clean dry fibre, before
    state_ratio_after: mass for each unit of clean dry fibre, after
    """

    def __call__(
        self,
        mass_before: _Measure,
        state_ratio_before: _Plain,
        state_ratio_after: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mass_before: _Measure,
        state_ratio_before: _Plain,
        state_ratio_after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_before", "state_ratio_before", "state_ratio_after"],
        *,
        mass_after_change_of_state: _Measure,
        mass_before: _Measure = ...,
        state_ratio_before: _Plain = ...,
        state_ratio_after: _Plain = ...,
    ) -> list[Quantity]: ...

mass_after_change_of_state: _MassAfterChangeOfState

@final
class _MassAtRegain(Formula):
    """The same fibre at another regain.

    m₂ = m × (1 + R_w) / (1 + R)

    mass: mass as weighed
    regain: regain at weighing
    wanted_regain: regain wanted
    """

    def __call__(self, mass: _Measure, regain: _Plain, wanted_regain: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        regain: _Plain,
        wanted_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "regain", "wanted_regain"],
        *,
        mass_at_regain: _Measure,
        mass: _Measure = ...,
        regain: _Plain = ...,
        wanted_regain: _Plain = ...,
    ) -> list[Quantity]: ...

mass_at_regain: _MassAtRegain

@final
class _MassInState(Formula):
    """What the scale reads for clean dry fibre in a state.

    m = f × s_m

    fibre_mass: clean dry fibre
    state_ratio: mass for each unit of clean dry fibre
    """

    def __call__(self, fibre_mass: _Measure, state_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        state_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "state_ratio"],
        *,
        mass_in_state: _Measure,
        fibre_mass: _Measure = ...,
        state_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

mass_in_state: _MassInState

@final
class _MassLossFromYield(Formula):
    """Shrinkage of greasy wool: what is not yield.

    m_l = 1 − y

    clean_yield: yield
    """

    def __call__(self, clean_yield: _Plain) -> Quantity: ...
    def working(
        self,
        clean_yield: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["clean_yield"],
        *,
        mass_loss_from_yield: _Plain,
        clean_yield: _Plain = ...,
    ) -> list[Quantity]: ...

mass_loss_from_yield: _MassLossFromYield

@final
class _MeanFibreCountByMass(Formula):
    """Mean count of the fibres of a blend, each by its share of the mass, as it is usually printed.

    T_f = p₁ × T₁ + p₂ × T₂

    shares: shares of the mass
    fibre_counts: counts of the fibres
    """

    def __call__(self, shares: _Plains, fibre_counts: _Measures) -> Quantity: ...
    def working(
        self,
        shares: _Plains,
        fibre_counts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

mean_fibre_count_by_mass: _MeanFibreCountByMass

@final
class _MoistureContent(Formula):
    """Water as a share of the mass with its water, from the regain.

    M = R / (1 + R)

    regain: water on oven-dry mass
    """

    def __call__(self, regain: _Plain) -> Quantity: ...
    def working(self, regain: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["regain"],
        *,
        moisture_content: _Plain,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

moisture_content: _MoistureContent

@final
class _NoilShare(Formula):
    """Noil as a share of top and noil, from the tear.

    x = 1 / (1 + t)

    tear: tear: top over noil
    """

    def __call__(self, tear: _Plain) -> Quantity: ...
    def working(self, tear: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["tear"],
        *,
        noil_share: _Plain,
        tear: _Plain = ...,
    ) -> list[Quantity]: ...

noil_share: _NoilShare

@final
class _OvenDryFromContent(Formula):
    """Oven-dry mass of a mass with a share of water in it.

    m_d = m × (1 − M)

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    """

    def __call__(self, mass: _Measure, moisture_content: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        moisture_content: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "moisture_content"],
        *,
        oven_dry_from_content: _Measure,
        mass: _Measure = ...,
        moisture_content: _Plain = ...,
    ) -> list[Quantity]: ...

oven_dry_from_content: _OvenDryFromContent

@final
class _OvenDryMass(Formula):
    """Oven-dry mass of a mass at a regain.

    m_d = m / (1 + R)

    mass: mass as weighed
    regain: water on oven-dry mass
    """

    def __call__(self, mass: _Measure, regain: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "regain"],
        *,
        oven_dry_mass: _Measure,
        mass: _Measure = ...,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

oven_dry_mass: _OvenDryMass

@final
class _OvenDryMassOfLot(Formula):
    """Oven-dry mass of a lot, from a sample of it.

    m_d = m_L × m_sd / m_s

    lot_mass: lot as weighed
    sample_mass: sample as taken
    dry_sample_mass: sample, oven-dry
    """

    def __call__(
        self,
        lot_mass: _Measure,
        sample_mass: _Measure,
        dry_sample_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        lot_mass: _Measure,
        sample_mass: _Measure,
        dry_sample_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["lot_mass", "sample_mass", "dry_sample_mass"],
        *,
        oven_dry_mass_of_lot: _Measure,
        lot_mass: _Measure = ...,
        sample_mass: _Measure = ...,
        dry_sample_mass: _Measure = ...,
    ) -> list[Quantity]: ...

oven_dry_mass_of_lot: _OvenDryMassOfLot

@final
class _RegainBetweenPoints(Formula):
    """Regain at a humidity, straight between two known points.

    R = R₁ + (R₂ − R₁) × (φ − φ₁) / (φ₂ − φ₁)

    humidity: relative humidity
    humidity_below: humidity of the point below
    regain_below: regain there
    humidity_above: humidity of the point above
    regain_above: regain there
    """

    def __call__(
        self,
        humidity: _Plain,
        humidity_below: _Plain,
        regain_below: _Plain,
        humidity_above: _Plain,
        regain_above: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        humidity: _Plain,
        humidity_below: _Plain,
        regain_below: _Plain,
        humidity_above: _Plain,
        regain_above: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "humidity", "humidity_below", "regain_below", "humidity_above", "regain_above"
        ],
        *,
        regain_between_points: _Plain,
        humidity: _Plain = ...,
        humidity_below: _Plain = ...,
        regain_below: _Plain = ...,
        humidity_above: _Plain = ...,
        regain_above: _Plain = ...,
    ) -> list[Quantity]: ...

regain_between_points: _RegainBetweenPoints

@final
class _RegainFromContent(Formula):
    """Water on the oven-dry mass, from the share of water in the whole.

    R = M / (1 − M)

    moisture_content: water as a share of the mass with its water
    """

    def __call__(self, moisture_content: _Plain) -> Quantity: ...
    def working(
        self,
        moisture_content: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["moisture_content"],
        *,
        regain_from_content: _Plain,
        moisture_content: _Plain = ...,
    ) -> list[Quantity]: ...

regain_from_content: _RegainFromContent

@final
class _RegainFromMasses(Formula):
    """Water on the oven-dry mass, from a sample weighed before and after the oven.

    R = (m_s − m_sd) / m_sd

    sample_mass: sample as taken
    dry_sample_mass: the same, oven-dry
    """

    def __call__(self, sample_mass: _Measure, dry_sample_mass: _Measure) -> Quantity: ...
    def working(
        self,
        sample_mass: _Measure,
        dry_sample_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sample_mass", "dry_sample_mass"],
        *,
        regain_from_masses: _Plain,
        sample_mass: _Measure = ...,
        dry_sample_mass: _Measure = ...,
    ) -> list[Quantity]: ...

regain_from_masses: _RegainFromMasses

@final
class _RegainOfRemainder(Formula):
    """Regain of one fibre of a blend, from the regain of the whole and that of the others.

    A₁ = (A − (1 − p) × A₂) / p

    blend_regain: regain of the blend
    dry_share: share of this fibre in the oven-dry mass
    others_regain: regain of the other fibres together
    """

    def __call__(
        self,
        blend_regain: _Plain,
        dry_share: _Plain,
        others_regain: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        blend_regain: _Plain,
        dry_share: _Plain,
        others_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["blend_regain", "dry_share", "others_regain"],
        *,
        regain_of_remainder: _Plain,
        blend_regain: _Plain = ...,
        dry_share: _Plain = ...,
        others_regain: _Plain = ...,
    ) -> list[Quantity]: ...

regain_of_remainder: _RegainOfRemainder

@final
class _ScouredYield(Formula):
    """Mass after scouring as a share of the mass before.

    Y = m / G

    scoured_mass: mass after scouring
    greasy_mass: mass before
    """

    def __call__(self, scoured_mass: _Measure, greasy_mass: _Measure) -> Quantity: ...
    def working(
        self,
        scoured_mass: _Measure,
        greasy_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["scoured_mass", "greasy_mass"],
        *,
        scoured_yield: _Plain,
        scoured_mass: _Measure = ...,
        greasy_mass: _Measure = ...,
    ) -> list[Quantity]: ...

scoured_yield: _ScouredYield

@final
class _ScouredYieldIwto(Formula):
    """Scoured yield that the wool trade calculates from a core test, at a regain.

    Y = (WB + VMB) × (1 + R_s) / 0.9773

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    vegetable_base: dry vegetable matter, free of ash and extract, as a share of the greasy mass
    stated_regain: regain at which the yield is stated
    """

    def __call__(
        self,
        wool_base: _Plain,
        vegetable_base: _Plain,
        stated_regain: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        wool_base: _Plain,
        vegetable_base: _Plain,
        stated_regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wool_base", "vegetable_base", "stated_regain"],
        *,
        scoured_yield_iwto: _Plain,
        wool_base: _Plain = ...,
        vegetable_base: _Plain = ...,
        stated_regain: _Plain = ...,
    ) -> list[Quantity]: ...

scoured_yield_iwto: _ScouredYieldIwto

@final
class _ScouredYieldJapanese(Formula):
    """Clean scoured yield as the Japanese trade has it: without vegetable matter.

    Y = WB × 1.16 / 0.985

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    """

    def __call__(self, wool_base: _Plain) -> Quantity: ...
    def working(self, wool_base: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["wool_base"],
        *,
        scoured_yield_japanese: _Plain,
        wool_base: _Plain = ...,
    ) -> list[Quantity]: ...

scoured_yield_japanese: _ScouredYieldJapanese

@final
class _SettingOverStaple(Formula):
    """How much longer than the staple the draft is: setting of the rollers over the staple.

    x = s / l

    roller_setting: distance between the nips of the two pairs of rollers
    staple: length of the longest staple
    """

    def __call__(self, roller_setting: _Measure, staple: _Measure) -> Quantity: ...
    def working(
        self,
        roller_setting: _Measure,
        staple: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["roller_setting", "staple"],
        *,
        setting_over_staple: _Plain,
        roller_setting: _Measure = ...,
        staple: _Measure = ...,
    ) -> list[Quantity]: ...

setting_over_staple: _SettingOverStaple

@final
class _ShareOfSort(Formula):
    """Share of one sort in the lot that was sorted.

    p₁ = m₁ / (m₁ + m₂)

    masses: masses of all sorts, the one asked for first
    """

    def __call__(self, masses: _Measures) -> Quantity: ...
    def working(self, masses: _Measures, *, at: int | tuple[int, ...] | None = None) -> Working: ...

share_of_sort: _ShareOfSort

@final
class _SortedMass(Formula):
    """Greasy mass left after the rejects are sorted out.

    S = G × (1 − r_j)

    greasy_mass: greasy mass as received
    rejects: share rejected, with its dirt
    """

    def __call__(self, greasy_mass: _Measure, rejects: _Plain) -> Quantity: ...
    def working(
        self,
        greasy_mass: _Measure,
        rejects: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["greasy_mass", "rejects"],
        *,
        sorted_mass: _Measure,
        greasy_mass: _Measure = ...,
        rejects: _Plain = ...,
    ) -> list[Quantity]: ...

sorted_mass: _SortedMass

@final
class _SpinningFineness(Formula):
    """Diameter of a lot of usual spread that spins like this one: the spinning fineness.

    d_s = 0.881 × d_f × √(1 + 5 × CV_d × CV_d)

    fibre_diameter: mean fibre diameter
    diameter_cv: coefficient of variation of the diameter
    """

    def __call__(self, fibre_diameter: _Measure, diameter_cv: _Plain) -> Quantity: ...
    def working(
        self,
        fibre_diameter: _Measure,
        diameter_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_diameter", "diameter_cv"],
        *,
        spinning_fineness: _Measure,
        fibre_diameter: _Measure = ...,
        diameter_cv: _Plain = ...,
    ) -> list[Quantity]: ...

spinning_fineness: _SpinningFineness

@final
class _StateRatio(Formula):
    """Water, fat and vegetable matter are all taken on the clean dry fibre, so they add.

    s_m = 1 + R + o + v_m

    regain: water on clean dry fibre
    fat: grease and oil on clean dry fibre
    vegetable: vegetable matter on clean dry fibre
    """

    def __call__(self, regain: _Plain, fat: _Plain, vegetable: _Plain) -> Quantity: ...
    def working(
        self,
        regain: _Plain,
        fat: _Plain,
        vegetable: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["regain", "fat", "vegetable"],
        *,
        state_ratio: _Plain,
        regain: _Plain = ...,
        fat: _Plain = ...,
        vegetable: _Plain = ...,
    ) -> list[Quantity]: ...

state_ratio: _StateRatio

@final
class _TopAndNoilDry(Formula):
    """Top and noil to expect, dry combed, with what combing loses to vegetable matter taken off.

    Y = 1.207 × WB − (7.7 − 40.6 / (7.83 + 100 × VMB)) / 100

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    vegetable_base: dry vegetable matter, free of ash and extract, as a share of the greasy mass
    """

    def __call__(self, wool_base: _Plain, vegetable_base: _Plain) -> Quantity: ...
    def working(
        self,
        wool_base: _Plain,
        vegetable_base: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wool_base", "vegetable_base"],
        *,
        top_and_noil_dry: _Plain,
        wool_base: _Plain = ...,
        vegetable_base: _Plain = ...,
    ) -> list[Quantity]: ...

top_and_noil_dry: _TopAndNoilDry

@final
class _WashedCleanShare(Formula):
    """Clean dry fibre in greasy wool, from washed samples: all that was clean over all that was
    greasy.

    y = (m₁ + m₂) / (s_m × (G₁ + G₂))

    state_ratio: mass of the washed wool for each unit of clean dry fibre
    washed_masses: washed masses of the samples
    greasy_masses: greasy masses of the same samples
    """

    def __call__(
        self,
        state_ratio: _Plain,
        washed_masses: _Measures,
        greasy_masses: _Measures,
    ) -> Quantity: ...
    def working(
        self,
        state_ratio: _Plain,
        washed_masses: _Measures,
        greasy_masses: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["state_ratio"],
        *,
        washed_clean_share: _Plain,
        state_ratio: _Plain = ...,
        washed_masses: _Measures = ...,
        greasy_masses: _Measures = ...,
    ) -> list[Quantity]: ...

washed_clean_share: _WashedCleanShare

@final
class _WaterFromContent(Formula):
    """Water in a mass, from its share of the whole.

    m_a = m × M

    mass: mass as weighed
    moisture_content: water as a share of the mass with its water
    """

    def __call__(self, mass: _Measure, moisture_content: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        moisture_content: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "moisture_content"],
        *,
        water_from_content: _Measure,
        mass: _Measure = ...,
        moisture_content: _Plain = ...,
    ) -> list[Quantity]: ...

water_from_content: _WaterFromContent

@final
class _WaterInMass(Formula):
    """Water in a mass at a regain.

    m_a = m × R / (1 + R)

    mass: mass as weighed
    regain: water on oven-dry mass
    """

    def __call__(self, mass: _Measure, regain: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "regain"],
        *,
        water_in_mass: _Measure,
        mass: _Measure = ...,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

water_in_mass: _WaterInMass

@final
class _WoolFibreCount(Formula):
    """Linear density of a round wool fibre from its diameter.

    T_f = 4.11548638 × d_f × d_f / 4000

    fibre_diameter: fibre diameter
    """

    def __call__(self, fibre_diameter: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_diameter"],
        *,
        wool_fibre_count: _Measure,
        fibre_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

wool_fibre_count: _WoolFibreCount

@final
class _YieldOfSorts(Formula):
    """Yield of a lot from those of its sorts.

    Y_t = (m₁ × Y₁ + m₂ × Y₂) / (m₁ + m₂)

    masses: masses of the sorts
    yields: their yields
    """

    def __call__(self, masses: _Measures, yields: _Plains) -> Quantity: ...
    def working(
        self,
        masses: _Measures,
        yields: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

yield_of_sorts: _YieldOfSorts
