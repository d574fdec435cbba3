"""Water on the fibre, what is clean of it, how fine it is."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Plain,
)

@final
class _BlendRegain(Formula):
    """Commercial regain of a blend of two fibres, each share by oven-dry mass.

    A = p × A₁ + (1 − p) × A₂

    share: share of the first fibre in the oven-dry mass
    first: regain agreed for the first fibre
    second: regain agreed for the second fibre
    """

    def __call__(self, share: _Plain, first: _Plain, second: _Plain) -> Quantity: ...
    def working(
        self,
        share: _Plain,
        first: _Plain,
        second: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share", "first", "second"],
        *,
        blend_regain: _Plain,
        share: _Plain = ...,
        first: _Plain = ...,
        second: _Plain = ...,
    ) -> list[Quantity]: ...

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
class _CleanFibre(Formula):
    """Clean dry fibre in greasy wool.

    f = S × y

    greasy: greasy mass
    clean_share: clean dry fibre as a share of the greasy mass
    """

    def __call__(self, greasy: _Measure, clean_share: _Plain) -> Quantity: ...
    def working(
        self,
        greasy: _Measure,
        clean_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["greasy", "clean_share"],
        *,
        clean_fibre: _Measure,
        greasy: _Measure = ...,
        clean_share: _Plain = ...,
    ) -> list[Quantity]: ...

clean_fibre: _CleanFibre

@final
class _CleanYieldCustoms(Formula):
    """Clean yield of the United States customs: clean content less an allowance for vegetable
    matter.

    Y = A − smaller of (0.005 × A + 0.6 × V, 0.15 × A)

    content: clean content
    vegetable: vegetable matter as a share of the greasy mass
    """

    def __call__(self, content: _Plain, vegetable: _Plain) -> Quantity: ...
    def working(
        self,
        content: _Plain,
        vegetable: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["content", "vegetable"],
        *,
        clean_yield_customs: _Plain,
        content: _Plain = ...,
        vegetable: _Plain = ...,
    ) -> list[Quantity]: ...

clean_yield_customs: _CleanYieldCustoms

@final
class _CommercialMass(Formula):
    """Invoice mass: oven-dry mass with the agreed allowances for water and fat.

    C = D × (1 + A + a)

    dry: oven-dry mass
    allowance: agreed allowance for water
    fat: agreed allowance for fat, oil and dressing
    """

    def __call__(self, dry: _Measure, allowance: _Plain, fat: _Plain) -> Quantity: ...
    def working(
        self,
        dry: _Measure,
        allowance: _Plain,
        fat: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dry", "allowance", "fat"],
        *,
        commercial_mass: _Measure,
        dry: _Measure = ...,
        allowance: _Plain = ...,
        fat: _Plain = ...,
    ) -> list[Quantity]: ...

commercial_mass: _CommercialMass

@final
class _FibreDiameter(Formula):
    """Diameter of a round fibre from its linear density.

    d = 1000 × √(4 × T_f / (3141.59265 × ρ))

    count: linear density of the fibre
    density: density of the fibre
    """

    def __call__(self, count: _Measure, density: _Measure) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "density"],
        *,
        fibre_diameter: _Measure,
        count: _Measure = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

fibre_diameter: _FibreDiameter

@final
class _FibreInMass(Formula):
    """Clean dry fibre in what was weighed.

    f = m / s

    mass: mass as weighed
    state: mass for each unit of clean dry fibre
    """

    def __call__(self, mass: _Measure, state: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        state: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "state"],
        *,
        fibre_in_mass: _Measure,
        mass: _Measure = ...,
        state: _Plain = ...,
    ) -> list[Quantity]: ...

fibre_in_mass: _FibreInMass

@final
class _FibresInSection(Formula):
    """Mean number of fibres in the section of a yarn.

    n = T / (T_f × (1 + CV × CV))

    yarn: yarn count, clean and conditioned
    fibre: count of a fibre of the mean diameter
    variation: coefficient of variation of the diameter
    """

    def __call__(self, yarn: _Measure, fibre: _Measure, variation: _Plain) -> Quantity: ...
    def working(
        self,
        yarn: _Measure,
        fibre: _Measure,
        variation: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn", "fibre", "variation"],
        *,
        fibres_in_section: _Plain,
        yarn: _Measure = ...,
        fibre: _Measure = ...,
        variation: _Plain = ...,
    ) -> list[Quantity]: ...

fibres_in_section: _FibresInSection

@final
class _LimitIrregularity(Formula):
    """Least possible irregularity of a yarn: fibres laid by chance.

    CV_lim = k / √n

    factor: factor for the spread of the fibres' mass
    fibres: fibres in the section
    """

    def __call__(self, factor: _Plain, fibres: _Plain) -> Quantity: ...
    def working(
        self,
        factor: _Plain,
        fibres: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["factor", "fibres"],
        *,
        limit_irregularity: _Plain,
        factor: _Plain = ...,
        fibres: _Plain = ...,
    ) -> list[Quantity]: ...

limit_irregularity: _LimitIrregularity

@final
class _MassAfterChangeOfState(Formula):
    """Mass of the same fibre in another state: oil out, water in.

    m₂ = m₁ × s₂ / s₁

    mass: mass before
    before: mass for each unit of clean dry fibre, before
    after: mass for each unit of clean dry fibre, after
    """

    def __call__(self, mass: _Measure, before: _Plain, after: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        before: _Plain,
        after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "before", "after"],
        *,
        mass_after_change_of_state: _Measure,
        mass: _Measure = ...,
        before: _Plain = ...,
        after: _Plain = ...,
    ) -> list[Quantity]: ...

mass_after_change_of_state: _MassAfterChangeOfState

@final
class _MassAtRegain(Formula):
    """The same fibre at another regain.

    m₂ = m × (1 + R₂) / (1 + R₁)

    mass: mass as weighed
    regain: regain at weighing
    wanted: regain wanted
    """

    def __call__(self, mass: _Measure, regain: _Plain, wanted: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        regain: _Plain,
        wanted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "regain", "wanted"],
        *,
        mass_at_regain: _Measure,
        mass: _Measure = ...,
        regain: _Plain = ...,
        wanted: _Plain = ...,
    ) -> list[Quantity]: ...

mass_at_regain: _MassAtRegain

@final
class _MassInState(Formula):
    """What the scale reads for clean dry fibre in a state.

    m = f × s

    fibre: clean dry fibre
    state: mass for each unit of clean dry fibre
    """

    def __call__(self, fibre: _Measure, state: _Plain) -> Quantity: ...
    def working(
        self,
        fibre: _Measure,
        state: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre", "state"],
        *,
        mass_in_state: _Measure,
        fibre: _Measure = ...,
        state: _Plain = ...,
    ) -> list[Quantity]: ...

mass_in_state: _MassInState

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
class _OvenDryMass(Formula):
    """Oven-dry mass of a mass at a regain.

    D = m / (1 + R)

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
class _RegainFromContent(Formula):
    """Water on the oven-dry mass, from the share of water in the whole.

    R = M / (1 − M)

    content: water as a share of the mass with its water
    """

    def __call__(self, content: _Plain) -> Quantity: ...
    def working(self, content: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["content"],
        *,
        regain_from_content: _Plain,
        content: _Plain = ...,
    ) -> list[Quantity]: ...

regain_from_content: _RegainFromContent

@final
class _ScouredYield(Formula):
    """Mass after scouring as a share of the mass before.

    Y = m / G

    scoured: mass after scouring
    greasy: mass before
    """

    def __call__(self, scoured: _Measure, greasy: _Measure) -> Quantity: ...
    def working(
        self,
        scoured: _Measure,
        greasy: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["scoured", "greasy"],
        *,
        scoured_yield: _Plain,
        scoured: _Measure = ...,
        greasy: _Measure = ...,
    ) -> list[Quantity]: ...

scoured_yield: _ScouredYield

@final
class _ScouredYieldIwto(Formula):
    """Scoured yield that the wool trade calculates from a core test, at a regain.

    Y = (WB + VMB) × (1 + R) / 0.9773

    wool_base: bone-dry pure wool fibre as a share of the greasy mass
    vegetable_base: dry vegetable matter, free of ash and extract, as a share of the greasy mass
    regain: regain at which the yield is stated
    """

    def __call__(self, wool_base: _Plain, vegetable_base: _Plain, regain: _Plain) -> Quantity: ...
    def working(
        self,
        wool_base: _Plain,
        vegetable_base: _Plain,
        regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wool_base", "vegetable_base", "regain"],
        *,
        scoured_yield_iwto: _Plain,
        wool_base: _Plain = ...,
        vegetable_base: _Plain = ...,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

scoured_yield_iwto: _ScouredYieldIwto

@final
class _SortedMass(Formula):
    """Greasy mass left after the rejects are sorted out.

    S = G × (1 − r)

    greasy: greasy mass as received
    rejects: share rejected, with its dirt
    """

    def __call__(self, greasy: _Measure, rejects: _Plain) -> Quantity: ...
    def working(
        self,
        greasy: _Measure,
        rejects: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["greasy", "rejects"],
        *,
        sorted_mass: _Measure,
        greasy: _Measure = ...,
        rejects: _Plain = ...,
    ) -> list[Quantity]: ...

sorted_mass: _SortedMass

@final
class _StateRatio(Formula):
    """Mass of a material for each unit of the clean dry fibre in it.

    s = 1 + R + o + v

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
class _WaterInMass(Formula):
    """Water in a mass at a regain.

    w = m × R / (1 + R)

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

    T_f = 4.11548638 × d × d / 4000

    diameter: fibre diameter
    """

    def __call__(self, diameter: _Measure) -> Quantity: ...
    def working(
        self,
        diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["diameter"],
        *,
        wool_fibre_count: _Measure,
        diameter: _Measure = ...,
    ) -> list[Quantity]: ...

wool_fibre_count: _WoolFibreCount
