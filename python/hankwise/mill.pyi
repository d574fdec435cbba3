"""Losses, oil, card, mule, twister, loom, gearing, time and money."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
    _Measure,
    _Plain,
    _Plains,
)
from hankwise._mill_more import blend as blend
from hankwise._mill_more import change_wheel as change_wheel
from hankwise._mill_more import evenness_of_blend as evenness_of_blend

@final
class _AddOn(Formula):
    """Oil or water to put on clean dry fibre.

    a = f × o

    fibre: clean dry fibre
    share: share to add, on clean dry fibre
    """

    def __call__(self, fibre: _Measure, share: _Plain) -> Quantity: ...
    def working(
        self,
        fibre: _Measure,
        share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre", "share"],
        *,
        add_on: _Measure,
        fibre: _Measure = ...,
        share: _Plain = ...,
    ) -> list[Quantity]: ...

add_on: _AddOn

@final
class _AfterChainOfLosses(Formula):
    """What comes out of a chain of lossy stages.

    m₂ = m₁ × (1 − w₁) × (1 − w₂)

    mass: mass in
    losses: losses of the stages in order
    """

    def __call__(self, mass: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass"],
        *,
        after_chain_of_losses: _Measure,
        mass: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

after_chain_of_losses: _AfterChainOfLosses

@final
class _AfterLoss(Formula):
    """What comes out of a stage that loses a share and keeps a fixed mass.

    m₂ = m₁ × (1 − w) − h

    mass: mass in
    loss: share lost
    held_up: mass held up
    """

    def __call__(self, mass: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "loss", "held_up"],
        *,
        after_loss: _Measure,
        mass: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

after_loss: _AfterLoss

@final
class _BeforeChainOfLosses(Formula):
    """What must go into a chain of lossy stages.

    m₁ = m₂ / (1 − w₁) / (1 − w₂)

    mass: mass wanted
    losses: losses of the stages in order
    """

    def __call__(self, mass: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass"],
        *,
        before_chain_of_losses: _Measure,
        mass: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

before_chain_of_losses: _BeforeChainOfLosses

@final
class _BeforeLoss(Formula):
    """What must go into a stage for a mass to come out.

    m₁ = (m₂ + h) / (1 − w)

    mass: mass wanted
    loss: share lost
    held_up: mass held up
    """

    def __call__(self, mass: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "loss", "held_up"],
        *,
        before_loss: _Measure,
        mass: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

before_loss: _BeforeLoss

@final
class _CardRate(Formula):
    """What the card delivers in an hour.

    P = N × v × T × 0.00006

    ends: good ends
    speed: delivery
    count: slubbing count
    """

    def __call__(self, ends: _Plain, speed: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        speed: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "speed", "count"],
        *,
        card_rate: _Measure,
        ends: _Plain = ...,
        speed: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

card_rate: _CardRate

@final
class _CarryOver(Formula):
    """How much of the lot before still comes off a machine after a mass of the new lot has gone
    through it.

    x = exp(−(m / h))

    mass: mass of the new lot gone through
    held_up: mass that the machine holds
    """

    def __call__(self, mass: _Measure, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "held_up"],
        *,
        carry_over: _Plain,
        mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

carry_over: _CarryOver

@final
class _CorrectedWeigh(Formula):
    """The new hopper weigh after the slubbing was found heavy or light.

    m₂ = m₁ × T / T_x

    weigh: hopper weigh as it is
    wanted: slubbing count wanted
    found: slubbing count found
    """

    def __call__(self, weigh: _Measure, wanted: _Measure, found: _Measure) -> Quantity: ...
    def working(
        self,
        weigh: _Measure,
        wanted: _Measure,
        found: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["weigh", "wanted", "found"],
        *,
        corrected_weigh: _Measure,
        weigh: _Measure = ...,
        wanted: _Measure = ...,
        found: _Measure = ...,
    ) -> list[Quantity]: ...

corrected_weigh: _CorrectedWeigh

@final
class _CostAfterStage(Formula):
    """Cost of a kilogram after a lossy stage.

    c₂ = (c₁ + k) / (1 − w)

    cost: cost of a kilogram that goes in
    stage: cost of the stage for a kilogram that goes in
    loss: share lost
    """

    def __call__(self, cost: _Measure, stage: _Measure, loss: _Plain) -> Quantity: ...
    def working(
        self,
        cost: _Measure,
        stage: _Measure,
        loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost", "stage", "loss"],
        *,
        cost_after_stage: _Measure,
        cost: _Measure = ...,
        stage: _Measure = ...,
        loss: _Plain = ...,
    ) -> list[Quantity]: ...

cost_after_stage: _CostAfterStage

@final
class _CostOfTime(Formula):
    """Cost of running a machine for a time.

    k = τ × c

    time: running time
    hourly: cost of an hour
    """

    def __call__(self, time: _Measure, hourly: _Plain) -> Quantity: ...
    def working(
        self,
        time: _Measure,
        hourly: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["time", "hourly"],
        *,
        cost_of_time: _Plain,
        time: _Measure = ...,
        hourly: _Plain = ...,
    ) -> list[Quantity]: ...

cost_of_time: _CostOfTime

@final
class _CostShare(Formula):
    """A product's share of a joint cost, by the clean dry fibre in it.

    k = K × f_i / f

    cost: joint cost
    fibre: clean dry fibre in the product
    total: clean dry fibre in all products
    """

    def __call__(self, cost: _Plain, fibre: _Measure, total: _Measure) -> Quantity: ...
    def working(
        self,
        cost: _Plain,
        fibre: _Measure,
        total: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost", "fibre", "total"],
        *,
        cost_share: _Plain,
        cost: _Plain = ...,
        fibre: _Measure = ...,
        total: _Measure = ...,
    ) -> list[Quantity]: ...

cost_share: _CostShare

@final
class _DeliveredLength(Formula):
    """Slubbing delivered in a draw with a delivery wheel.

    d = p × z

    per_tooth: slubbing delivered for each tooth of the wheel
    teeth: teeth of the wheel
    """

    def __call__(self, per_tooth: _Measure, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        per_tooth: _Measure,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["per_tooth", "teeth"],
        *,
        delivered_length: _Measure,
        per_tooth: _Measure = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

delivered_length: _DeliveredLength

@final
class _DeliveryWheel(Formula):
    """The delivery wheel that would give a wanted draft.

    z = S / D / p

    travel: travel of the carriage
    draft: draft wanted
    per_tooth: slubbing delivered for each tooth of the wheel
    """

    def __call__(self, travel: _Measure, draft: _Plain, per_tooth: _Measure) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        draft: _Plain,
        per_tooth: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "draft", "per_tooth"],
        *,
        delivery_wheel: _Plain,
        travel: _Measure = ...,
        draft: _Plain = ...,
        per_tooth: _Measure = ...,
    ) -> list[Quantity]: ...

delivery_wheel: _DeliveryWheel

@final
class _DraftConstant(Formula):
    """Draft constant of a pair of rollers: the draft that the train between them gives, a place of
    it open.

    i = a₁ / b₁ × a₂ / b₂; C = d_f / d_b × i

    front: diameter of the front roller
    back: diameter of the back roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

    def __call__(
        self,
        front: _Measure,
        back: _Measure,
        drivers: _Plains,
        driven: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        front: _Measure,
        back: _Measure,
        drivers: _Plains,
        driven: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["front", "back"],
        *,
        draft_constant: _Plain,
        front: _Measure = ...,
        back: _Measure = ...,
        drivers: _Plains = ...,
        driven: _Plains = ...,
    ) -> list[Quantity]: ...

draft_constant: _DraftConstant

@final
class _DraftFromWheel(Formula):
    """Draft that a change wheel gives, where draft falls as teeth rise.

    D = C / z

    constant: draft constant: draft times teeth
    teeth: teeth of the wheel
    """

    def __call__(self, constant: _Plain, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        constant: _Plain,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "teeth"],
        *,
        draft_from_wheel: _Plain,
        constant: _Plain = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

draft_from_wheel: _DraftFromWheel

@final
class _DraftOfCounts(Formula):
    """Draft that makes one count of another, with the ends fed together.

    D = T₁ × n / T₂

    fed: count fed, of one end
    delivered: count delivered
    doublings: ends fed together
    """

    def __call__(self, fed: _Measure, delivered: _Measure, doublings: _Plain) -> Quantity: ...
    def working(
        self,
        fed: _Measure,
        delivered: _Measure,
        doublings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fed", "delivered", "doublings"],
        *,
        draft_of_counts: _Plain,
        fed: _Measure = ...,
        delivered: _Measure = ...,
        doublings: _Plain = ...,
    ) -> list[Quantity]: ...

draft_of_counts: _DraftOfCounts

@final
class _Draws(Formula):
    """Draws for a length of yarn.

    N = Y / (k × L)

    yarn: yarn to spin, all spindles together
    spindles: spindles at work
    wound: yarn wound in a draw
    """

    def __call__(self, yarn: _Measure, spindles: _Plain, wound: _Measure) -> Quantity: ...
    def working(
        self,
        yarn: _Measure,
        spindles: _Plain,
        wound: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn", "spindles", "wound"],
        *,
        draws: _Plain,
        yarn: _Measure = ...,
        spindles: _Plain = ...,
        wound: _Measure = ...,
    ) -> list[Quantity]: ...

draws: _Draws

@final
class _EmulsionMass(Formula):
    """Emulsion that brings a wanted mass of oil.

    E = a / x

    oil: oil wanted on the wool
    oil_share: oil as a share of the emulsion
    """

    def __call__(self, oil: _Measure, oil_share: _Plain) -> Quantity: ...
    def working(
        self,
        oil: _Measure,
        oil_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["oil", "oil_share"],
        *,
        emulsion_mass: _Measure,
        oil: _Measure = ...,
        oil_share: _Plain = ...,
    ) -> list[Quantity]: ...

emulsion_mass: _EmulsionMass

@final
class _FeedRate(Formula):
    """What must be fed, as weighed, for a delivery of clean dry fibre.

    F = P / (1 − w) × s

    delivery: clean dry fibre delivered
    loss: share lost in the card
    state: mass for each unit of clean dry fibre at the hopper
    """

    def __call__(self, delivery: _Measure, loss: _Plain, state: _Plain) -> Quantity: ...
    def working(
        self,
        delivery: _Measure,
        loss: _Plain,
        state: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["delivery", "loss", "state"],
        *,
        feed_rate: _Measure,
        delivery: _Measure = ...,
        loss: _Plain = ...,
        state: _Plain = ...,
    ) -> list[Quantity]: ...

feed_rate: _FeedRate

@final
class _HeadTime(Formula):
    """Time that the carriage stands at the head for the turns put in there.

    τ_h = n_h / (60 × n)

    turns: turns at the head
    speed: spindle speed at the head
    """

    def __call__(self, turns: _Plain, speed: _Measure) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "speed"],
        *,
        head_time: _Measure,
        turns: _Plain = ...,
        speed: _Measure = ...,
    ) -> list[Quantity]: ...

head_time: _HeadTime

@final
class _HopperWeigh(Formula):
    """What the hopper weighs for each drop.

    m = F / (60 × r)

    feed: mass fed, as weighed
    drops: drops
    """

    def __call__(self, feed: _Measure, drops: _Measure) -> Quantity: ...
    def working(
        self,
        feed: _Measure,
        drops: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["feed", "drops"],
        *,
        hopper_weigh: _Measure,
        feed: _Measure = ...,
        drops: _Measure = ...,
    ) -> list[Quantity]: ...

hopper_weigh: _HopperWeigh

@final
class _LayeredShareDeviation(Formula):
    """How far the share of a component differs from place to place in a stack taken down from top
    to bottom.

    σ = p × (1 − p) × c × √(2 / n)

    share: share of the component in the blend
    layers: layers of each component
    variation: coefficient of variation of a layer's thickness from place to place
    """

    def __call__(self, share: _Plain, layers: _Plain, variation: _Plain) -> Quantity: ...
    def working(
        self,
        share: _Plain,
        layers: _Plain,
        variation: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share", "layers", "variation"],
        *,
        layered_share_deviation: _Plain,
        share: _Plain = ...,
        layers: _Plain = ...,
        variation: _Plain = ...,
    ) -> list[Quantity]: ...

layered_share_deviation: _LayeredShareDeviation

@final
class _LayersForDeviation(Formula):
    """Layers of each component that keep the share within a standard deviation, in whole layers.

    n = round up(2 × p × (1 − p) × c / σ × p × (1 − p) × c / σ)

    share: share of the component in the blend
    deviation: standard deviation wanted of the share, from place to place
    variation: coefficient of variation of a layer's thickness from place to place
    """

    def __call__(self, share: _Plain, deviation: _Plain, variation: _Plain) -> Quantity: ...
    def working(
        self,
        share: _Plain,
        deviation: _Plain,
        variation: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share", "deviation", "variation"],
        *,
        layers_for_deviation: _Plain,
        share: _Plain = ...,
        deviation: _Plain = ...,
        variation: _Plain = ...,
    ) -> list[Quantity]: ...

layers_for_deviation: _LayersForDeviation

@final
class _LoomOutput(Formula):
    """Cloth that a loom weaves.

    v = r × η / (100 × p)

    speed: picks in a minute
    picks: picks in the cloth
    efficiency: efficiency
    """

    def __call__(self, speed: _Measure, picks: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        picks: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "picks", "efficiency"],
        *,
        loom_output: _Measure,
        speed: _Measure = ...,
        picks: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

loom_output: _LoomOutput

@final
class _LoomTime(Formula):
    """Time of a loom for a number of picks.

    τ = p / (60 × r × η)

    picks: picks to weave
    speed: picks in a minute
    efficiency: efficiency
    """

    def __call__(self, picks: _Plain, speed: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        picks: _Plain,
        speed: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "speed", "efficiency"],
        *,
        loom_time: _Measure,
        picks: _Plain = ...,
        speed: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

loom_time: _LoomTime

@final
class _MuleDraft(Formula):
    """Draft of the mule: travel over slubbing delivered.

    D = S / d

    travel: travel of the carriage
    delivered: slubbing delivered in a draw
    """

    def __call__(self, travel: _Measure, delivered: _Measure) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        delivered: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "delivered"],
        *,
        mule_draft: _Plain,
        travel: _Measure = ...,
        delivered: _Measure = ...,
    ) -> list[Quantity]: ...

mule_draft: _MuleDraft

@final
class _MuleOutput(Formula):
    """What the mule spins in an hour.

    P = k × L × T × 0.000001 / τ × η

    spindles: spindles
    wound: yarn wound in a draw
    cycle: time of a draw
    count: count of the single
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        wound: _Measure,
        cycle: _Measure,
        count: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        wound: _Measure,
        cycle: _Measure,
        count: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "wound", "cycle", "count", "efficiency"],
        *,
        mule_output: _Measure,
        spindles: _Plain = ...,
        wound: _Measure = ...,
        cycle: _Measure = ...,
        count: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

mule_output: _MuleOutput

@final
class _MuleTwist(Formula):
    """Twist that the mule puts in.

    t = (n × (1 − x) − b) / L

    turns: turns of the spindle in a draw
    slip: slip of the band
    coiling: turns spent in coiling to the spindle tip
    wound: yarn wound in a draw
    """

    def __call__(
        self,
        turns: _Plain,
        slip: _Plain,
        coiling: _Plain,
        wound: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        slip: _Plain,
        coiling: _Plain,
        wound: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "slip", "coiling", "wound"],
        *,
        mule_twist: _Measure,
        turns: _Plain = ...,
        slip: _Plain = ...,
        coiling: _Plain = ...,
        wound: _Measure = ...,
    ) -> list[Quantity]: ...

mule_twist: _MuleTwist

@final
class _PiecesFromYarn(Formula):
    """Pieces that a mass of yarn makes, not yet rounded down to whole ones.

    n = greater of ((y − h) / e, 0)

    yarn: yarn at hand
    fixed: needed once, however many pieces
    each: needed for each piece
    """

    def __call__(self, yarn: _Measure, fixed: _Measure, each: _Measure) -> Quantity: ...
    def working(
        self,
        yarn: _Measure,
        fixed: _Measure,
        each: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn", "fixed", "each"],
        *,
        pieces_from_yarn: _Plain,
        yarn: _Measure = ...,
        fixed: _Measure = ...,
        each: _Measure = ...,
    ) -> list[Quantity]: ...

pieces_from_yarn: _PiecesFromYarn

@final
class _RandomShareDeviation(Formula):
    """Deviation of the share between samples of a blend mixed as well as chance does: the binomial
    bound.

    σ_b = √(p × (1 − p) / k)

    share: share of the component in the blend
    tufts: tufts in the sample
    """

    def __call__(self, share: _Plain, tufts: _Plain) -> Quantity: ...
    def working(
        self,
        share: _Plain,
        tufts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share", "tufts"],
        *,
        random_share_deviation: _Plain,
        share: _Plain = ...,
        tufts: _Plain = ...,
    ) -> list[Quantity]: ...

random_share_deviation: _RandomShareDeviation

@final
class _Realisation(Formula):
    """Goods made as a share of the material taken in, both on clean dry fibre.

    y = f₂ / f₁

    made: made
    taken: taken in
    """

    def __call__(self, made: _Measure, taken: _Measure) -> Quantity: ...
    def working(
        self,
        made: _Measure,
        taken: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["made", "taken"],
        *,
        realisation: _Plain,
        made: _Measure = ...,
        taken: _Measure = ...,
    ) -> list[Quantity]: ...

realisation: _Realisation

@final
class _SampledShareDeviation(Formula):
    """Deviation of the share between samples: of the heap from place to place, and of the tufts by
    chance.

    σ_s = √(σ × σ × (1 − 1 / k) + p × (1 − p) / k)

    deviation: standard deviation of the share in the heap, from place to place
    share: share of the component in the blend
    tufts: tufts in the sample
    """

    def __call__(self, deviation: _Plain, share: _Plain, tufts: _Plain) -> Quantity: ...
    def working(
        self,
        deviation: _Plain,
        share: _Plain,
        tufts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["deviation", "share", "tufts"],
        *,
        sampled_share_deviation: _Plain,
        deviation: _Plain = ...,
        share: _Plain = ...,
        tufts: _Plain = ...,
    ) -> list[Quantity]: ...

sampled_share_deviation: _SampledShareDeviation

@final
class _ShareDeviationAfterPasses(Formula):
    """Deviation of the share from place to place after passes through the teaser with relaying.

    σ_j = σ × exp(-0.5 × j × ln(d))

    deviation: standard deviation of the share, before
    doublings: places of the heap that come together in each place of the next
    passes: passes
    """

    def __call__(self, deviation: _Plain, doublings: _Plain, passes: _Plain) -> Quantity: ...
    def working(
        self,
        deviation: _Plain,
        doublings: _Plain,
        passes: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["deviation", "doublings", "passes"],
        *,
        share_deviation_after_passes: _Plain,
        deviation: _Plain = ...,
        doublings: _Plain = ...,
        passes: _Plain = ...,
    ) -> list[Quantity]: ...

share_deviation_after_passes: _ShareDeviationAfterPasses

@final
class _SingleFromSlubbing(Formula):
    """The single that a slubbing makes.

    T = T_c × d / L

    slubbing: count of the slubbing
    delivered: slubbing delivered in a draw
    wound: yarn wound in a draw
    """

    def __call__(self, slubbing: _Measure, delivered: _Measure, wound: _Measure) -> Quantity: ...
    def working(
        self,
        slubbing: _Measure,
        delivered: _Measure,
        wound: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["slubbing", "delivered", "wound"],
        *,
        single_from_slubbing: _Measure,
        slubbing: _Measure = ...,
        delivered: _Measure = ...,
        wound: _Measure = ...,
    ) -> list[Quantity]: ...

single_from_slubbing: _SingleFromSlubbing

@final
class _SlubbingCount(Formula):
    """Count of the slubbing, or of a card sliver with one end, from what is fed.

    T = P × (1 − w) × 1000000 / (60 × v × N)

    feed: mass fed
    loss: share lost in the card
    ends: good ends
    speed: delivery
    """

    def __call__(self, feed: _Measure, loss: _Plain, ends: _Plain, speed: _Measure) -> Quantity: ...
    def working(
        self,
        feed: _Measure,
        loss: _Plain,
        ends: _Plain,
        speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["feed", "loss", "ends", "speed"],
        *,
        slubbing_count: _Measure,
        feed: _Measure = ...,
        loss: _Plain = ...,
        ends: _Plain = ...,
        speed: _Measure = ...,
    ) -> list[Quantity]: ...

slubbing_count: _SlubbingCount

@final
class _SlubbingForSingle(Formula):
    """The slubbing to card for a single.

    T_c = T × L / d

    single: count of the single
    wound: yarn wound in a draw
    delivered: slubbing delivered in a draw
    """

    def __call__(self, single: _Measure, wound: _Measure, delivered: _Measure) -> Quantity: ...
    def working(
        self,
        single: _Measure,
        wound: _Measure,
        delivered: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single", "wound", "delivered"],
        *,
        slubbing_for_single: _Measure,
        single: _Measure = ...,
        wound: _Measure = ...,
        delivered: _Measure = ...,
    ) -> list[Quantity]: ...

slubbing_for_single: _SlubbingForSingle

@final
class _SpindleOutput(Formula):
    """Mass of yarn that a spindle delivers in a time, from its front roller.

    Y = 60 × n × τ × C × η; m = Y × T × 0.000001

    roller_speed: speed of the front roller
    roller: circumference of the front roller
    time: time
    efficiency: efficiency
    count: count of the yarn delivered
    """

    def __call__(
        self,
        roller_speed: _Measure,
        roller: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        roller_speed: _Measure,
        roller: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["roller_speed", "roller", "time", "efficiency", "count"],
        *,
        spindle_output: _Measure,
        roller_speed: _Measure = ...,
        roller: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

spindle_output: _SpindleOutput

@final
class _SpindleSpeed(Formula):
    """Speed of a spindle that a cylinder drives by a band that slips.

    n = n_c × w × (1 − s)

    cylinder: speed of the cylinder
    whirl_ratio: turns of the spindle for one of the cylinder, without slip
    slip: slip of the band
    """

    def __call__(self, cylinder: _Measure, whirl_ratio: _Plain, slip: _Plain) -> Quantity: ...
    def working(
        self,
        cylinder: _Measure,
        whirl_ratio: _Plain,
        slip: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cylinder", "whirl_ratio", "slip"],
        *,
        spindle_speed: _Measure,
        cylinder: _Measure = ...,
        whirl_ratio: _Plain = ...,
        slip: _Plain = ...,
    ) -> list[Quantity]: ...

spindle_speed: _SpindleSpeed

@final
class _TapePitch(Formula):
    """Width of a condenser tape.

    p = B / N

    width: width of the web
    ends: ends across it, waste ends too
    """

    def __call__(self, width: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        width: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["width", "ends"],
        *,
        tape_pitch: _Measure,
        width: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

tape_pitch: _TapePitch

@final
class _TimeForLength(Formula):
    """Time for a length at a speed.

    τ = L / (60 × v)

    length: length to make
    speed: speed, all spindles or drums together
    """

    def __call__(self, length: _Measure, speed: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "speed"],
        *,
        time_for_length: _Measure,
        length: _Measure = ...,
        speed: _Measure = ...,
    ) -> list[Quantity]: ...

time_for_length: _TimeForLength

@final
class _TimeForMass(Formula):
    """Time for a mass at a rate.

    τ = m / P

    mass: mass to make
    rate: rate
    """

    def __call__(self, mass: _Measure, rate: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        rate: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "rate"],
        *,
        time_for_mass: _Measure,
        mass: _Measure = ...,
        rate: _Measure = ...,
    ) -> list[Quantity]: ...

time_for_mass: _TimeForMass

@final
class _TotalDoublings(Formula):
    """Doublings of several machines together.

    N = n₁ × n₂

    doublings: ends fed together at each machine
    """

    def __call__(self, doublings: _Plains) -> Quantity: ...
    def working(
        self,
        doublings: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

total_doublings: _TotalDoublings

@final
class _TotalDraft(Formula):
    """Draft of several machines or zones together.

    D = d₁ × d₂

    drafts: draft of each machine or zone
    """

    def __call__(self, drafts: _Plains) -> Quantity: ...
    def working(self, drafts: _Plains, *, at: int | tuple[int, ...] | None = None) -> Working: ...

total_draft: _TotalDraft

@final
class _TrainRatio(Formula):
    """Turns of the last shaft of a train of wheels for one turn of the first.

    i = a₁ / b₁ × a₂ / b₂

    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

    def __call__(self, drivers: _Plains, driven: _Plains) -> Quantity: ...
    def working(
        self,
        drivers: _Plains,
        driven: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

train_ratio: _TrainRatio

@final
class _TuftsInSample(Formula):
    """Tufts in a sample: or fibres, where the wool is opened to single ones.

    k = M / t

    sample: mass of the sample
    tuft: mean mass of a tuft
    """

    def __call__(self, sample: _Measure, tuft: _Measure) -> Quantity: ...
    def working(
        self,
        sample: _Measure,
        tuft: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sample", "tuft"],
        *,
        tufts_in_sample: _Plain,
        sample: _Measure = ...,
        tuft: _Measure = ...,
    ) -> list[Quantity]: ...

tufts_in_sample: _TuftsInSample

@final
class _TurnsAtHead(Formula):
    """Turns of the spindle at the head, once the draft is over.

    n_h = n − n_d

    turns: all turns of the spindle in a draw
    drafting: turns while drafting
    """

    def __call__(self, turns: _Plain, drafting: _Plain) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        drafting: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "drafting"],
        *,
        turns_at_head: _Plain,
        turns: _Plain = ...,
        drafting: _Plain = ...,
    ) -> list[Quantity]: ...

turns_at_head: _TurnsAtHead

@final
class _TurnsPerDraw(Formula):
    """Turns of the spindle in a draw for a wanted twist.

    n = (t × L + b) / (1 − x)

    twist: twist wanted
    wound: yarn wound in a draw
    coiling: turns spent in coiling to the spindle tip
    slip: slip of the band
    """

    def __call__(
        self,
        twist: _Measure,
        wound: _Measure,
        coiling: _Plain,
        slip: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        wound: _Measure,
        coiling: _Plain,
        slip: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "wound", "coiling", "slip"],
        *,
        turns_per_draw: _Plain,
        twist: _Measure = ...,
        wound: _Measure = ...,
        coiling: _Plain = ...,
        slip: _Plain = ...,
    ) -> list[Quantity]: ...

turns_per_draw: _TurnsPerDraw

@final
class _TurnsWhileDrafting(Formula):
    """Turns of the spindle while the carriage runs out.

    n_d = n × 60 × τ

    speed: mean spindle speed while drafting
    time: time of the run out
    """

    def __call__(self, speed: _Measure, time: _Measure) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "time"],
        *,
        turns_while_drafting: _Plain,
        speed: _Measure = ...,
        time: _Measure = ...,
    ) -> list[Quantity]: ...

turns_while_drafting: _TurnsWhileDrafting

@final
class _TwistConstant(Formula):
    """Twist constant of a machine: the twist that a train of wheels gives, a place of it open.

    i = a₁ / b₁ × a₂ / b₂; C = i × w / L

    whirl_ratio: turns of the spindle for one of the cylinder
    roller: circumference of the delivery roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

    def __call__(
        self,
        whirl_ratio: _Plain,
        roller: _Measure,
        drivers: _Plains,
        driven: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        whirl_ratio: _Plain,
        roller: _Measure,
        drivers: _Plains,
        driven: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["whirl_ratio", "roller"],
        *,
        twist_constant: _Measure,
        whirl_ratio: _Plain = ...,
        roller: _Measure = ...,
        drivers: _Plains = ...,
        driven: _Plains = ...,
    ) -> list[Quantity]: ...

twist_constant: _TwistConstant

@final
class _TwistWheel(Formula):
    """The twist wheel that would give the wanted turns in a draw.

    z = n / p

    turns: turns of the spindle wanted
    per_tooth: turns for each tooth of the wheel
    """

    def __call__(self, turns: _Plain, per_tooth: _Plain) -> Quantity: ...
    def working(
        self,
        turns: _Plain,
        per_tooth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "per_tooth"],
        *,
        twist_wheel: _Plain,
        turns: _Plain = ...,
        per_tooth: _Plain = ...,
    ) -> list[Quantity]: ...

twist_wheel: _TwistWheel

@final
class _TwistWheelForNewCount(Formula):
    """The twist wheel for another count at the same twist factor, where twist falls as teeth rise.

    z₂ = z₁ × √(T₂ / T₁)

    teeth: teeth of the wheel at hand
    count: count that it suits
    wanted: count to come
    """

    def __call__(self, teeth: _Plain, count: _Measure, wanted: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        count: _Measure,
        wanted: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "count", "wanted"],
        *,
        twist_wheel_for_new_count: _Plain,
        teeth: _Plain = ...,
        count: _Measure = ...,
        wanted: _Measure = ...,
    ) -> list[Quantity]: ...

twist_wheel_for_new_count: _TwistWheelForNewCount

@final
class _TwisterOutput(Formula):
    """Yarn that a twister delivers, all spindles together.

    v = k × n / t × η

    spindles: spindles
    speed: spindle speed
    twist: twist
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "speed", "twist", "efficiency"],
        *,
        twister_output: _Measure,
        spindles: _Plain = ...,
        speed: _Measure = ...,
        twist: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

twister_output: _TwisterOutput

@final
class _VolumeOfMass(Formula):
    """Volume of a liquid from its mass.

    V = m / ρ

    mass: mass
    density: density
    """

    def __call__(self, mass: _Measure, density: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "density"],
        *,
        volume_of_mass: _Measure,
        mass: _Measure = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

volume_of_mass: _VolumeOfMass

@final
class _WheelForDraft(Formula):
    """The change wheel that would give a wanted draft, where draft falls as teeth rise.

    z = C / D

    constant: draft constant: draft times teeth
    draft: draft wanted
    """

    def __call__(self, constant: _Plain, draft: _Plain) -> Quantity: ...
    def working(
        self,
        constant: _Plain,
        draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["constant", "draft"],
        *,
        wheel_for_draft: _Plain,
        constant: _Plain = ...,
        draft: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_draft: _WheelForDraft

@final
class _WheelForNewCount(Formula):
    """The change wheel for another count from the same feed, where draft falls as teeth rise.

    z₂ = z₁ × T₂ / T₁

    teeth: teeth of the wheel at hand
    count: count that it gives
    wanted: count wanted
    """

    def __call__(self, teeth: _Plain, count: _Measure, wanted: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        count: _Measure,
        wanted: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "count", "wanted"],
        *,
        wheel_for_new_count: _Plain,
        teeth: _Plain = ...,
        count: _Measure = ...,
        wanted: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_count: _WheelForNewCount

@final
class _WheelForNewDraft(Formula):
    """The change wheel for another draft, where draft falls as teeth rise.

    z₂ = z₁ × D₁ / D₂

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    wanted: draft wanted
    """

    def __call__(self, teeth: _Plain, draft: _Plain, wanted: _Plain) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        draft: _Plain,
        wanted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "draft", "wanted"],
        *,
        wheel_for_new_draft: _Plain,
        teeth: _Plain = ...,
        draft: _Plain = ...,
        wanted: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_new_draft: _WheelForNewDraft

@final
class _WheelForNewDraftDirect(Formula):
    """The change wheel for another draft, where draft rises with the teeth.

    z₂ = z₁ × D₂ / D₁

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    wanted: draft wanted
    """

    def __call__(self, teeth: _Plain, draft: _Plain, wanted: _Plain) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        draft: _Plain,
        wanted: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "draft", "wanted"],
        *,
        wheel_for_new_draft_direct: _Plain,
        teeth: _Plain = ...,
        draft: _Plain = ...,
        wanted: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_new_draft_direct: _WheelForNewDraftDirect

@final
class _WheelForNewTwist(Formula):
    """The change wheel for another twist, where twist falls as teeth rise.

    z₂ = z₁ × t₁ / t₂

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    wanted: twist wanted
    """

    def __call__(self, teeth: _Plain, twist: _Measure, wanted: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        twist: _Measure,
        wanted: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "twist", "wanted"],
        *,
        wheel_for_new_twist: _Plain,
        teeth: _Plain = ...,
        twist: _Measure = ...,
        wanted: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_twist: _WheelForNewTwist

@final
class _WheelForNewTwistDirect(Formula):
    """The change wheel for another twist, where twist rises with the teeth.

    z₂ = z₁ × t₂ / t₁

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    wanted: twist wanted
    """

    def __call__(self, teeth: _Plain, twist: _Measure, wanted: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        twist: _Measure,
        wanted: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "twist", "wanted"],
        *,
        wheel_for_new_twist_direct: _Plain,
        teeth: _Plain = ...,
        twist: _Measure = ...,
        wanted: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_twist_direct: _WheelForNewTwistDirect

@final
class _WhirlRatio(Formula):
    """Turns of a spindle for one of the cylinder that drives it by a band.

    w = (D + e) / (d + e)

    cylinder: diameter of the cylinder
    whirl: diameter of the whirl
    band: thickness of the band
    """

    def __call__(self, cylinder: _Measure, whirl: _Measure, band: _Measure) -> Quantity: ...
    def working(
        self,
        cylinder: _Measure,
        whirl: _Measure,
        band: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cylinder", "whirl", "band"],
        *,
        whirl_ratio: _Plain,
        cylinder: _Measure = ...,
        whirl: _Measure = ...,
        band: _Measure = ...,
    ) -> list[Quantity]: ...

whirl_ratio: _WhirlRatio

@final
class _WoundLength(Formula):
    """Yarn wound on in a draw.

    L = S − g

    travel: travel of the carriage
    let_in: let-in of the carriage
    """

    def __call__(self, travel: _Measure, let_in: _Measure) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        let_in: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "let_in"],
        *,
        wound_length: _Measure,
        travel: _Measure = ...,
        let_in: _Measure = ...,
    ) -> list[Quantity]: ...

wound_length: _WoundLength

@final
class _YarnForPieces(Formula):
    """Yarn for a number of pieces; none for no piece.

    y = (0 if n < 0.5, else h + n × e)

    pieces: pieces
    fixed: needed once, however many pieces
    each: needed for each piece
    """

    def __call__(self, pieces: _Plain, fixed: _Measure, each: _Measure) -> Quantity: ...
    def working(
        self,
        pieces: _Plain,
        fixed: _Measure,
        each: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["pieces", "fixed", "each"],
        *,
        yarn_for_pieces: _Measure,
        pieces: _Plain = ...,
        fixed: _Measure = ...,
        each: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_for_pieces: _YarnForPieces
