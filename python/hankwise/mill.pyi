"""Losses, oil, card, mule, twister, loom, gearing, time and money."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Job,
    Particulars,
    Quantity,
    Working,
    _Measure,
    _Measures,
    _Plain,
    _Plains,
)
from hankwise._mill_more import balance as balance
from hankwise._mill_more import blend as blend
from hankwise._mill_more import change_wheel as change_wheel
from hankwise._mill_more import dye_bath as dye_bath
from hankwise._mill_more import emulsion as emulsion
from hankwise._mill_more import evenness_of_blend as evenness_of_blend
from hankwise._mill_more import scour_liquor as scour_liquor
from hankwise._mill_more import washes as washes

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
class _BreakEvenLot(Formula):
    """Smallest lot that pays its fixed cost.

    m = (F / g if 0 < g, else no answer)

    fixed: cost once for the lot: clean-down, setting up
    margin: price less cost of a kilogram
    """

    def __call__(self, fixed: _Plain, margin: _Measure) -> Quantity: ...
    def working(
        self,
        fixed: _Plain,
        margin: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fixed", "margin"],
        *,
        break_even_lot: _Measure,
        fixed: _Plain = ...,
        margin: _Measure = ...,
    ) -> list[Quantity]: ...

break_even_lot: _BreakEvenLot

@final
class _BreakEvenLotWithHoldUp(Formula):
    """Smallest lot that pays its fixed cost and the fibre that the machines keep.

    g = (1 − w) × p − c; m = ((F + h × p) / g if 0 < g, else no answer)

    fixed: cost once for the lot: clean-down, setting up
    cost: cost of a kilogram taken in, wool and work
    loss: share lost
    held_up: mass held up
    price: price of a kilogram that comes out
    """

    def __call__(
        self,
        fixed: _Plain,
        cost: _Measure,
        loss: _Plain,
        held_up: _Measure,
        price: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        fixed: _Plain,
        cost: _Measure,
        loss: _Plain,
        held_up: _Measure,
        price: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fixed", "cost", "loss", "held_up", "price"],
        *,
        break_even_lot_with_hold_up: _Measure,
        fixed: _Plain = ...,
        cost: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
        price: _Measure = ...,
    ) -> list[Quantity]: ...

break_even_lot_with_hold_up: _BreakEvenLotWithHoldUp

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
class _CarriedOver(Formula):
    """Fibre of the lot before that comes off while a mass of the new lot goes through.

    c = h × (1 − exp(−(m / h)))

    mass: clean dry fibre gone through
    held_up: clean dry fibre held up
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
        carried_over: _Measure,
        mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

carried_over: _CarriedOver

@final
class _CarryOver(Formula):
    """How much of the lot before still comes off a machine after a mass of the new lot has gone
    through it.

    x = exp(−(m / h))

    mass: clean dry fibre gone through
    held_up: clean dry fibre held up
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
class _ChargeForMass(Formula):
    """Charge for a mass by its tariff, no less than the minimum for a lot.

    k = greater of (m × c, k_0)

    mass: mass charged
    tariff: tariff for a kilogram
    minimum: least charge for a lot
    """

    def __call__(self, mass: _Measure, tariff: _Measure, minimum: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        tariff: _Measure,
        minimum: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "tariff", "minimum"],
        *,
        charge_for_mass: _Plain,
        mass: _Measure = ...,
        tariff: _Measure = ...,
        minimum: _Plain = ...,
    ) -> list[Quantity]: ...

charge_for_mass: _ChargeForMass

@final
class _ChargeForRejects(Formula):
    """Charge for putting away sorting rejects beyond the share that is free.

    k = greater of (r − r_0, 0) × m × c

    mass: incoming mass
    rejects: share rejected in sorting
    free: share that is free
    tariff: charge for a kilogram beyond it
    """

    def __call__(
        self,
        mass: _Measure,
        rejects: _Plain,
        free: _Plain,
        tariff: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        rejects: _Plain,
        free: _Plain,
        tariff: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "rejects", "free", "tariff"],
        *,
        charge_for_rejects: _Plain,
        mass: _Measure = ...,
        rejects: _Plain = ...,
        free: _Plain = ...,
        tariff: _Measure = ...,
    ) -> list[Quantity]: ...

charge_for_rejects: _ChargeForRejects

@final
class _ClearingFibre(Formula):
    """Fibre to send through a machine until no more than a share of the lot before comes off.

    m = −h × ln(x)

    held_up: clean dry fibre held up
    share: share of the lot before that may remain
    """

    def __call__(self, held_up: _Measure, share: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "share"],
        *,
        clearing_fibre: _Measure,
        held_up: _Measure = ...,
        share: _Plain = ...,
    ) -> list[Quantity]: ...

clearing_fibre: _ClearingFibre

@final
class _ComponentShare(Formula):
    """Share of a component after it was fed, machine after machine, beside others.

    b = a₁ / N₁ × a₂ / N₂

    carrying: ends that carry the component, at each machine
    fed: all ends fed, at each machine
    """

    def __call__(self, carrying: _Plains, fed: _Plains) -> Quantity: ...
    def working(
        self,
        carrying: _Plains,
        fed: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

component_share: _ComponentShare

@final
class _ConcentrationAfterChange(Formula):
    """Concentration after the volume of the bath has changed: filled up, or boiled down.

    c₂ = c₁ × V₁ / V₂

    concentration: concentration before
    before: volume before
    after: volume after
    """

    def __call__(self, concentration: _Measure, before: _Measure, after: _Measure) -> Quantity: ...
    def working(
        self,
        concentration: _Measure,
        before: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["concentration", "before", "after"],
        *,
        concentration_after_change: _Measure,
        concentration: _Measure = ...,
        before: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

concentration_after_change: _ConcentrationAfterChange

@final
class _ConcentrationFound(Formula):
    """Concentration of what is dissolved in a volume of liquor.

    c = 1000 × a / V

    mass: mass dissolved
    volume: liquor
    """

    def __call__(self, mass: _Measure, volume: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "volume"],
        *,
        concentration_found: _Measure,
        mass: _Measure = ...,
        volume: _Measure = ...,
    ) -> list[Quantity]: ...

concentration_found: _ConcentrationFound

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
class _CostAfterStageLessWaste(Formula):
    """Cost of a kilogram after a lossy stage whose waste is sold.

    c₂ = (c₁ + k − s × v) / (1 − w)

    cost: cost of a kilogram that goes in
    stage: cost of the stage for a kilogram that goes in
    loss: share lost
    sold: share of what goes in that is sold as waste
    value: what a kilogram of the waste sells for
    """

    def __call__(
        self,
        cost: _Measure,
        stage: _Measure,
        loss: _Plain,
        sold: _Plain,
        value: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        cost: _Measure,
        stage: _Measure,
        loss: _Plain,
        sold: _Plain,
        value: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost", "stage", "loss", "sold", "value"],
        *,
        cost_after_stage_less_waste: _Measure,
        cost: _Measure = ...,
        stage: _Measure = ...,
        loss: _Plain = ...,
        sold: _Plain = ...,
        value: _Measure = ...,
    ) -> list[Quantity]: ...

cost_after_stage_less_waste: _CostAfterStageLessWaste

@final
class _CostOfAnHour(Formula):
    """What an hour comes to at a mass in the hour.

    k = P × c

    rate: mass in an hour
    cost: cost, or value, of a kilogram
    """

    def __call__(self, rate: _Measure, cost: _Measure) -> Quantity: ...
    def working(
        self,
        rate: _Measure,
        cost: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["rate", "cost"],
        *,
        cost_of_an_hour: _Plain,
        rate: _Measure = ...,
        cost: _Measure = ...,
    ) -> list[Quantity]: ...

cost_of_an_hour: _CostOfAnHour

@final
class _CostOfMass(Formula):
    """What a mass comes to at a price.

    k = m × c

    mass: mass
    price: price of a kilogram
    """

    def __call__(self, mass: _Measure, price: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        price: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "price"],
        *,
        cost_of_mass: _Plain,
        mass: _Measure = ...,
        price: _Measure = ...,
    ) -> list[Quantity]: ...

cost_of_mass: _CostOfMass

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
class _CostThroughLosses(Formula):
    """What a kilogram that comes out has cost to buy, through a chain of losses.

    c₂ = c₁ / (1 − w₁) / (1 − w₂)

    price: price of a kilogram taken in
    losses: losses of the stages in order
    """

    def __call__(self, price: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        price: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["price"],
        *,
        cost_through_losses: _Measure,
        price: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

cost_through_losses: _CostThroughLosses

@final
class _CostsOfSales(Formula):
    """Costs together, as a share of sales.

    K = 0 + k₁ + k₂

    parts: each cost, on sales
    """

    def __call__(self, parts: _Plains) -> Quantity: ...
    def working(self, parts: _Plains, *, at: int | tuple[int, ...] | None = None) -> Working: ...

costs_of_sales: _CostsOfSales

@final
class _CountAfterDraftChange(Formula):
    """Count after the draft alone was changed.

    T₂ = T₁ × D₁ / D₂

    count: count before
    draft: draft before
    after: draft after
    """

    def __call__(self, count: _Measure, draft: _Plain, after: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        draft: _Plain,
        after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "draft", "after"],
        *,
        count_after_draft_change: _Measure,
        count: _Measure = ...,
        draft: _Plain = ...,
        after: _Plain = ...,
    ) -> list[Quantity]: ...

count_after_draft_change: _CountAfterDraftChange

@final
class _CountThroughDrafts(Formula):
    """Count that comes out of drafts, with the ends fed together and what is lost on the way.

    D = d₁ × d₂; T₂ = T₁ × N × (1 − w) / D

    fed: count fed, of one end
    doublings: doublings of all machines together
    loss: share lost on the way
    drafts: draft of each machine or zone
    """

    def __call__(
        self,
        fed: _Measure,
        doublings: _Plain,
        loss: _Plain,
        drafts: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        fed: _Measure,
        doublings: _Plain,
        loss: _Plain,
        drafts: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fed", "doublings", "loss"],
        *,
        count_through_drafts: _Measure,
        fed: _Measure = ...,
        doublings: _Plain = ...,
        loss: _Plain = ...,
        drafts: _Plains = ...,
    ) -> list[Quantity]: ...

count_through_drafts: _CountThroughDrafts

@final
class _CountToFeed(Formula):
    """Count to feed for a count that is wanted, through a draft.

    T₁ = T₂ × D / (N × (1 − w))

    wanted: count wanted
    doublings: ends fed together
    loss: share lost on the way
    draft: draft
    """

    def __call__(
        self,
        wanted: _Measure,
        doublings: _Plain,
        loss: _Plain,
        draft: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        wanted: _Measure,
        doublings: _Plain,
        loss: _Plain,
        draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["wanted", "doublings", "loss", "draft"],
        *,
        count_to_feed: _Measure,
        wanted: _Measure = ...,
        doublings: _Plain = ...,
        loss: _Plain = ...,
        draft: _Plain = ...,
    ) -> list[Quantity]: ...

count_to_feed: _CountToFeed

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
class _DeliveryForDraft(Formula):
    """Slubbing to deliver in a draw of the mule for a draft.

    d = S / D

    travel: travel of the carriage
    draft: draft
    """

    def __call__(self, travel: _Measure, draft: _Plain) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "draft"],
        *,
        delivery_for_draft: _Measure,
        travel: _Measure = ...,
        draft: _Plain = ...,
    ) -> list[Quantity]: ...

delivery_for_draft: _DeliveryForDraft

@final
class _DeliveryForTwist(Formula):
    """Delivery of a spindle for a twist.

    v = q × n / t

    spindle: spindle speed
    turns: turns of twist in a revolution
    twist: twist
    """

    def __call__(self, spindle: _Measure, turns: _Plain, twist: _Measure) -> Quantity: ...
    def working(
        self,
        spindle: _Measure,
        turns: _Plain,
        twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle", "turns", "twist"],
        *,
        delivery_for_twist: _Measure,
        spindle: _Measure = ...,
        turns: _Plain = ...,
        twist: _Measure = ...,
    ) -> list[Quantity]: ...

delivery_for_twist: _DeliveryForTwist

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
class _DoffInterval(Formula):
    """Time from one doff to the next.

    τ = k × g / P

    spindles: spindles
    package: yarn on a full package
    output: output, all spindles together
    """

    def __call__(self, spindles: _Plain, package: _Measure, output: _Measure) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        package: _Measure,
        output: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "package", "output"],
        *,
        doff_interval: _Measure,
        spindles: _Plain = ...,
        package: _Measure = ...,
        output: _Measure = ...,
    ) -> list[Quantity]: ...

doff_interval: _DoffInterval

@final
class _Doffs(Formula):
    """Times that all spindles are doffed for a mass of yarn; the last doff may not be full.

    D = round up(m / (k × g) − 0.000001)

    mass: yarn to make
    spindles: spindles
    package: yarn on a full package
    """

    def __call__(self, mass: _Measure, spindles: _Plain, package: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        spindles: _Plain,
        package: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "spindles", "package"],
        *,
        doffs: _Plain,
        mass: _Measure = ...,
        spindles: _Plain = ...,
        package: _Measure = ...,
    ) -> list[Quantity]: ...

doffs: _Doffs

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
class _DrawsPerMinute(Formula):
    """Draws of the mule in a minute.

    r = 1 / (60 × τ)

    cycle: time of a draw, out and in
    """

    def __call__(self, cycle: _Measure) -> Quantity: ...
    def working(self, cycle: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["cycle"],
        *,
        draws_per_minute: _Measure,
        cycle: _Measure = ...,
    ) -> list[Quantity]: ...

draws_per_minute: _DrawsPerMinute

@final
class _DrumsNeeded(Formula):
    """Drums for a mass in a time, not yet rounded up to whole ones.

    k = m / m₁

    mass: mass to wind
    each: mass that a drum winds in that time
    """

    def __call__(self, mass: _Measure, each: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        each: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "each"],
        *,
        drums_needed: _Plain,
        mass: _Measure = ...,
        each: _Measure = ...,
    ) -> list[Quantity]: ...

drums_needed: _DrumsNeeded

@final
class _DyeLeft(Formula):
    """Dye left in the bath when a share of it is on the goods.

    d_l = d × (1 − E)

    dye: dye put in
    exhaustion: exhaustion: share of it on the goods
    """

    def __call__(self, dye: _Measure, exhaustion: _Plain) -> Quantity: ...
    def working(
        self,
        dye: _Measure,
        exhaustion: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dye", "exhaustion"],
        *,
        dye_left: _Measure,
        dye: _Measure = ...,
        exhaustion: _Plain = ...,
    ) -> list[Quantity]: ...

dye_left: _DyeLeft

@final
class _DyeMass(Formula):
    """Dye or auxiliary to weigh out, from its share of the mass of the goods.

    d = m × p / s

    goods: goods, in the state that the recipe means
    depth: depth: share of the mass of the goods
    strength: strength of the product, on that of the standard
    """

    def __call__(self, goods: _Measure, depth: _Plain, strength: _Plain) -> Quantity: ...
    def working(
        self,
        goods: _Measure,
        depth: _Plain,
        strength: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["goods", "depth", "strength"],
        *,
        dye_mass: _Measure,
        goods: _Measure = ...,
        depth: _Plain = ...,
        strength: _Plain = ...,
    ) -> list[Quantity]: ...

dye_mass: _DyeMass

@final
class _EdgeShare(Formula):
    """Share of the web that goes into the edge ends.

    E = N_e / (N + N_e)

    ends: good ends
    edge_ends: edge ends, all together
    """

    def __call__(self, ends: _Plain, edge_ends: _Plain) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        edge_ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "edge_ends"],
        *,
        edge_share: _Plain,
        ends: _Plain = ...,
        edge_ends: _Plain = ...,
    ) -> list[Quantity]: ...

edge_share: _EdgeShare

@final
class _EfficiencyFound(Formula):
    """Efficiency: what was made over what would be made without a stop.

    η = a / c

    made: made
    calculated: calculated, without a stop
    """

    def __call__(self, made: _Plain, calculated: _Plain) -> Quantity: ...
    def working(
        self,
        made: _Plain,
        calculated: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["made", "calculated"],
        *,
        efficiency_found: _Plain,
        made: _Plain = ...,
        calculated: _Plain = ...,
    ) -> list[Quantity]: ...

efficiency_found: _EfficiencyFound

@final
class _EfficiencyWithStops(Formula):
    """Efficiency of a machine that stops so often in an hour of running.

    s = 60 × f × τ; η = 1 / (1 + s)

    stops: stops, while it runs
    stop: time of a stop
    """

    def __call__(self, stops: _Measure, stop: _Measure) -> Quantity: ...
    def working(
        self,
        stops: _Measure,
        stop: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stops", "stop"],
        *,
        efficiency_with_stops: _Plain,
        stops: _Measure = ...,
        stop: _Measure = ...,
    ) -> list[Quantity]: ...

efficiency_with_stops: _EfficiencyWithStops

@final
class _EfficiencyWithStopsOfPicks(Formula):
    """Efficiency of a loom from its stops in a hundred thousand picks.

    τ_r = 100000 / (60 × r); η = τ_r / (τ_r + s × τ)

    stops: stops in a hundred thousand picks
    stop: time of a stop
    speed: picks in a minute, running
    """

    def __call__(self, stops: _Plain, stop: _Measure, speed: _Measure) -> Quantity: ...
    def working(
        self,
        stops: _Plain,
        stop: _Measure,
        speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stops", "stop", "speed"],
        *,
        efficiency_with_stops_of_picks: _Plain,
        stops: _Plain = ...,
        stop: _Measure = ...,
        speed: _Measure = ...,
    ) -> list[Quantity]: ...

efficiency_with_stops_of_picks: _EfficiencyWithStopsOfPicks

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
class _EndBreakRate(Formula):
    """Ends that break, for a thousand spindles running an hour.

    e = 1000 × b / (k × τ)

    breaks: ends broken
    spindles: spindles
    time: time
    """

    def __call__(self, breaks: _Plain, spindles: _Plain, time: _Measure) -> Quantity: ...
    def working(
        self,
        breaks: _Plain,
        spindles: _Plain,
        time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["breaks", "spindles", "time"],
        *,
        end_break_rate: _Plain,
        breaks: _Plain = ...,
        spindles: _Plain = ...,
        time: _Measure = ...,
    ) -> list[Quantity]: ...

end_break_rate: _EndBreakRate

@final
class _EndsInSections(Formula):
    """Ends of a warp that is made in full sections.

    N = b × S

    section: ends in a section: the bobbins in the creel
    sections: sections
    """

    def __call__(self, section: _Plain, sections: _Plain) -> Quantity: ...
    def working(
        self,
        section: _Plain,
        sections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["section", "sections"],
        *,
        ends_in_sections: _Plain,
        section: _Plain = ...,
        sections: _Plain = ...,
    ) -> list[Quantity]: ...

ends_in_sections: _EndsInSections

@final
class _EndsSpacing(Formula):
    """How close the ends of a warp stand, from their number and its width.

    n = N / (100 × B)

    ends: ends
    width: width of the warp
    """

    def __call__(self, ends: _Plain, width: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "width"],
        *,
        ends_spacing: _Measure,
        ends: _Plain = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

ends_spacing: _EndsSpacing

@final
class _ExhaustionFound(Formula):
    """Exhaustion, from the bath before and after.

    E = 1 − c₂ × V₂ / (c₁ × V₁)

    concentration: concentration of the dye before
    before: bath before
    left: concentration of the dye after
    after: bath after
    """

    def __call__(
        self,
        concentration: _Measure,
        before: _Measure,
        left: _Measure,
        after: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        concentration: _Measure,
        before: _Measure,
        left: _Measure,
        after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["concentration", "before", "left", "after"],
        *,
        exhaustion_found: _Plain,
        concentration: _Measure = ...,
        before: _Measure = ...,
        left: _Measure = ...,
        after: _Measure = ...,
    ) -> list[Quantity]: ...

exhaustion_found: _ExhaustionFound

@final
class _FalseTwist(Formula):
    """Twist that a yarn has while a false twister turns it.

    t = n_y × η / v

    turns: turns of the yarn in a minute
    delivery: delivery
    efficiency: share of the turns that the yarn takes on
    """

    def __call__(self, turns: _Measure, delivery: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        turns: _Measure,
        delivery: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["turns", "delivery", "efficiency"],
        *,
        false_twist: _Measure,
        turns: _Measure = ...,
        delivery: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

false_twist: _FalseTwist

@final
class _FatAfterOiling(Formula):
    """Grease and oil on clean dry fibre after oiling.

    o₂ = o₁ + o

    fat: grease and oil on it before
    oil: oil put on, on clean dry fibre
    """

    def __call__(self, fat: _Plain, oil: _Plain) -> Quantity: ...
    def working(
        self,
        fat: _Plain,
        oil: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat", "oil"],
        *,
        fat_after_oiling: _Plain,
        fat: _Plain = ...,
        oil: _Plain = ...,
    ) -> list[Quantity]: ...

fat_after_oiling: _FatAfterOiling

@final
class _FatAfterWashes(Formula):
    """Grease and oil left on clean dry fibre after washes that each take a share of it away.

    o₂ = o₁ × (1 − g₁) × (1 − g₂)

    fat: grease and oil before
    removed: share that each wash takes of what it meets
    """

    def __call__(self, fat: _Plain, removed: _Plains) -> Quantity: ...
    def working(
        self,
        fat: _Plain,
        removed: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat"],
        *,
        fat_after_washes: _Plain,
        fat: _Plain = ...,
        removed: _Plains = ...,
    ) -> list[Quantity]: ...

fat_after_washes: _FatAfterWashes

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
class _HanksOfSpindle(Formula):
    """Hanks that a spindle delivers in a time.

    h = 60 × n × τ × η / (t × l)

    speed: spindle speed
    twist: twist
    time: time
    efficiency: efficiency
    hank: length of a hank
    """

    def __call__(
        self,
        speed: _Measure,
        twist: _Measure,
        time: _Measure,
        efficiency: _Plain,
        hank: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        twist: _Measure,
        time: _Measure,
        efficiency: _Plain,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "twist", "time", "efficiency", "hank"],
        *,
        hanks_of_spindle: _Plain,
        speed: _Measure = ...,
        twist: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_spindle: _HanksOfSpindle

@final
class _HanksPerHour(Formula):
    """Hanks that a drum winds in an hour.

    h = v × η / l

    speed: winding speed
    efficiency: efficiency
    hank: length of a hank
    """

    def __call__(self, speed: _Measure, efficiency: _Plain, hank: _Measure) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        efficiency: _Plain,
        hank: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "efficiency", "hank"],
        *,
        hanks_per_hour: _Measure,
        speed: _Measure = ...,
        efficiency: _Plain = ...,
        hank: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_per_hour: _HanksPerHour

@final
class _HanksPerHourFound(Formula):
    """Hanks that a drum has wound in an hour, from what all have wound.

    N = 1000000 × m / (T × l); h = N / (60 × τ × k)

    mass: mass wound
    count: count
    hank: length of a hank
    time: time
    drums: drums
    """

    def __call__(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        time: _Measure,
        drums: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        time: _Measure,
        drums: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count", "hank", "time", "drums"],
        *,
        hanks_per_hour_found: _Measure,
        mass: _Measure = ...,
        count: _Measure = ...,
        hank: _Measure = ...,
        time: _Measure = ...,
        drums: _Plain = ...,
    ) -> list[Quantity]: ...

hanks_per_hour_found: _HanksPerHourFound

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

    n = round up(2 × p × (1 − p) × c / σ × p × (1 − p) × c / σ − 1e−9)

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
class _LeftAfterRinses(Formula):
    """Share of what is dissolved in the carried liquor that is left after rinses, each well mixed.

    x = V_c / (V_c + V₁) × V_c / (V_c + V₂)

    carried: liquor that the goods carry into each rinse
    rinses: clean water of each rinse
    """

    def __call__(self, carried: _Measure, rinses: _Measures) -> Quantity: ...
    def working(
        self,
        carried: _Measure,
        rinses: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["carried"],
        *,
        left_after_rinses: _Plain,
        carried: _Measure = ...,
        rinses: _Measures = ...,
    ) -> list[Quantity]: ...

left_after_rinses: _LeftAfterRinses

@final
class _LeftAtStop(Formula):
    """Fibre that does not become slubbing of its count once the feed of a machine stops.

    e = h × (1 − x)

    held_up: clean dry fibre held up
    within: how near to the full count it has to be
    """

    def __call__(self, held_up: _Measure, within: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        within: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "within"],
        *,
        left_at_stop: _Measure,
        held_up: _Measure = ...,
        within: _Plain = ...,
    ) -> list[Quantity]: ...

left_at_stop: _LeftAtStop

@final
class _LengthAfterStretches(Formula):
    """Length of a warp after it was stretched, machine after machine.

    L = L₀ × (1 + e₁) × (1 + e₂)

    length: length before
    stretches: stretch at each machine
    """

    def __call__(self, length: _Measure, stretches: _Plains) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        stretches: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length"],
        *,
        length_after_stretches: _Measure,
        length: _Measure = ...,
        stretches: _Plains = ...,
    ) -> list[Quantity]: ...

length_after_stretches: _LengthAfterStretches

@final
class _LengthWound(Formula):
    """Length that a drum winds in a time.

    Y = 60 × v × τ × η

    speed: winding speed
    time: time
    efficiency: efficiency
    """

    def __call__(self, speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "time", "efficiency"],
        *,
        length_wound: _Measure,
        speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

length_wound: _LengthWound

@final
class _LiquorCarried(Formula):
    """Liquor that squeezed or drained goods carry to the next bowl.

    V_c = f × p / ρ

    fibre: dry goods
    pickup: liquor left on them, on the dry mass
    density: density of the liquor
    """

    def __call__(self, fibre: _Measure, pickup: _Plain, density: _Measure) -> Quantity: ...
    def working(
        self,
        fibre: _Measure,
        pickup: _Plain,
        density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre", "pickup", "density"],
        *,
        liquor_carried: _Measure,
        fibre: _Measure = ...,
        pickup: _Plain = ...,
        density: _Measure = ...,
    ) -> list[Quantity]: ...

liquor_carried: _LiquorCarried

@final
class _LiquorVolume(Formula):
    """Liquor for a mass of goods, from the liquor ratio.

    V = m × r

    mass: goods
    liquor_ratio: litres of liquor for a kilogram of goods
    """

    def __call__(self, mass: _Measure, liquor_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        liquor_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "liquor_ratio"],
        *,
        liquor_volume: _Measure,
        mass: _Measure = ...,
        liquor_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

liquor_volume: _LiquorVolume

@final
class _LoadTime(Formula):
    """Time of a machine for a number of loads.

    τ = n × (τ_r + τ_c)

    loads: loads
    running: running time of a load
    change: time to empty and fill
    """

    def __call__(self, loads: _Plain, running: _Measure, change: _Measure) -> Quantity: ...
    def working(
        self,
        loads: _Plain,
        running: _Measure,
        change: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loads", "running", "change"],
        *,
        load_time: _Measure,
        loads: _Plain = ...,
        running: _Measure = ...,
        change: _Measure = ...,
    ) -> list[Quantity]: ...

load_time: _LoadTime

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
class _LoomsForWeaver(Formula):
    """Looms that a weaver can mind, not yet rounded down.

    k = u / (60 × f × η × τ)

    stops: stops of a loom, while it runs
    attention: weaver's time for a stop
    efficiency: efficiency of the loom
    load: share of the weaver's time for it
    """

    def __call__(
        self,
        stops: _Measure,
        attention: _Measure,
        efficiency: _Plain,
        load: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        stops: _Measure,
        attention: _Measure,
        efficiency: _Plain,
        load: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stops", "attention", "efficiency", "load"],
        *,
        looms_for_weaver: _Plain,
        stops: _Measure = ...,
        attention: _Measure = ...,
        efficiency: _Plain = ...,
        load: _Plain = ...,
    ) -> list[Quantity]: ...

looms_for_weaver: _LoomsForWeaver

@final
class _LossWithReturn(Formula):
    """Share of a lot that is lost for good where part of each pass is put back on the feed.

    L = w / (1 − e)

    loss: share of a pass that is lost for good
    returned: share of a pass that is put back
    """

    def __call__(self, loss: _Plain, returned: _Plain) -> Quantity: ...
    def working(
        self,
        loss: _Plain,
        returned: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loss", "returned"],
        *,
        loss_with_return: _Plain,
        loss: _Plain = ...,
        returned: _Plain = ...,
    ) -> list[Quantity]: ...

loss_with_return: _LossWithReturn

@final
class _LotLoss(Formula):
    """What a lot loses in a machine that loses a share and keeps a fixed mass.

    L = w + h / m

    lot: clean dry fibre of the lot
    loss: share lost, however large the lot
    held_up: clean dry fibre that the machine keeps
    """

    def __call__(self, lot: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        lot: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["lot", "loss", "held_up"],
        *,
        lot_loss: _Plain,
        lot: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

lot_loss: _LotLoss

@final
class _LotSurplus(Formula):
    """What a lot leaves: what comes out of it sold, less what it cost by its mass and once.

    m₂ = greater of (m × (1 − w) − h, 0); s = m₂ × p − m × c − F

    mass: mass taken in
    cost: cost of a kilogram taken in, wool and work
    fixed: cost once for the lot: clean-down, setting up
    loss: share lost
    held_up: mass held up
    price: price of a kilogram that comes out
    """

    def __call__(
        self,
        mass: _Measure,
        cost: _Measure,
        fixed: _Plain,
        loss: _Plain,
        held_up: _Measure,
        price: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        cost: _Measure,
        fixed: _Plain,
        loss: _Plain,
        held_up: _Measure,
        price: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "cost", "fixed", "loss", "held_up", "price"],
        *,
        lot_surplus: _Plain,
        mass: _Measure = ...,
        cost: _Measure = ...,
        fixed: _Plain = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
        price: _Measure = ...,
    ) -> list[Quantity]: ...

lot_surplus: _LotSurplus

@final
class _MarkUpOfMargin(Formula):
    """The mark-up on cost that leaves a margin on the price.

    u = g / (1 − g)

    margin: margin, on the price
    """

    def __call__(self, margin: _Plain) -> Quantity: ...
    def working(self, margin: _Plain, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["margin"],
        *,
        mark_up_of_margin: _Plain,
        margin: _Plain = ...,
    ) -> list[Quantity]: ...

mark_up_of_margin: _MarkUpOfMargin

@final
class _MassInLiquor(Formula):
    """Mass of what is dissolved in a volume of liquor.

    a = V × c / 1000

    volume: liquor
    concentration: mass in a volume
    """

    def __call__(self, volume: _Measure, concentration: _Measure) -> Quantity: ...
    def working(
        self,
        volume: _Measure,
        concentration: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["volume", "concentration"],
        *,
        mass_in_liquor: _Measure,
        volume: _Measure = ...,
        concentration: _Measure = ...,
    ) -> list[Quantity]: ...

mass_in_liquor: _MassInLiquor

@final
class _MassWound(Formula):
    """Mass that a drum winds in a time.

    Y = 60 × v × τ × η; m = Y × T × 0.000001

    speed: winding speed
    time: time
    efficiency: efficiency
    count: count
    """

    def __call__(
        self,
        speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "time", "efficiency", "count"],
        *,
        mass_wound: _Measure,
        speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

mass_wound: _MassWound

@final
class _MeanCarryOver(Formula):
    """Share of the lot before in all that comes off while a mass of the new lot goes through.

    X = h / m × (1 − exp(−(m / h)))

    mass: clean dry fibre gone through
    held_up: clean dry fibre held up
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
        mean_carry_over: _Plain,
        mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

mean_carry_over: _MeanCarryOver

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
class _NetDraft(Formula):
    """How many times finer the yarn is than one end of what was fed first: drafts over doublings.

    D = d₁ × d₂ / N

    doublings: doublings of all machines together
    drafts: draft of each machine or zone
    """

    def __call__(self, doublings: _Plain, drafts: _Plains) -> Quantity: ...
    def working(
        self,
        doublings: _Plain,
        drafts: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["doublings"],
        *,
        net_draft: _Plain,
        doublings: _Plain = ...,
        drafts: _Plains = ...,
    ) -> list[Quantity]: ...

net_draft: _NetDraft

@final
class _OffCountAtStart(Formula):
    """Slubbing that is under its count while an empty machine fills.

    u = h × (x − 1 − ln(x))

    held_up: clean dry fibre held up
    within: how near to the full count it has to be
    """

    def __call__(self, held_up: _Measure, within: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        within: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "within"],
        *,
        off_count_at_start: _Measure,
        held_up: _Measure = ...,
        within: _Plain = ...,
    ) -> list[Quantity]: ...

off_count_at_start: _OffCountAtStart

@final
class _PassLoss(Formula):
    """Share of what a card is fed that does not come off as good slubbing, in one pass.

    u = 1 − (1 − w) × (1 − E)

    waste: share that falls out as waste
    edges: share of the web in the edge ends
    """

    def __call__(self, waste: _Plain, edges: _Plain) -> Quantity: ...
    def working(
        self,
        waste: _Plain,
        edges: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["waste", "edges"],
        *,
        pass_loss: _Plain,
        waste: _Plain = ...,
        edges: _Plain = ...,
    ) -> list[Quantity]: ...

pass_loss: _PassLoss

@final
class _PassageTime(Formula):
    """Time of cloth that runs through a machine, several times if need be.

    τ_r = L / (60 × v); τ = n × (τ_r + τ_c)

    length: length of the cloth
    speed: speed of the cloth
    passages: passages
    change: time for a passage beside running: sewing on, threading
    """

    def __call__(
        self,
        length: _Measure,
        speed: _Measure,
        passages: _Plain,
        change: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        speed: _Measure,
        passages: _Plain,
        change: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "speed", "passages", "change"],
        *,
        passage_time: _Measure,
        length: _Measure = ...,
        speed: _Measure = ...,
        passages: _Plain = ...,
        change: _Measure = ...,
    ) -> list[Quantity]: ...

passage_time: _PassageTime

@final
class _PeopleNeeded(Formula):
    """People for a number of machines or spindles.

    p = round up(k / a − 0.000001)

    machines: machines, spindles or drums
    each: of them for each person
    """

    def __call__(self, machines: _Plain, each: _Plain) -> Quantity: ...
    def working(
        self,
        machines: _Plain,
        each: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["machines", "each"],
        *,
        people_needed: _Plain,
        machines: _Plain = ...,
        each: _Plain = ...,
    ) -> list[Quantity]: ...

people_needed: _PeopleNeeded

@final
class _PersonHours(Formula):
    """Hours of people at a machine.

    τ_p = τ × p

    time: running time
    people: people at the machine
    """

    def __call__(self, time: _Measure, people: _Plain) -> Quantity: ...
    def working(
        self,
        time: _Measure,
        people: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["time", "people"],
        *,
        person_hours: _Measure,
        time: _Measure = ...,
        people: _Plain = ...,
    ) -> list[Quantity]: ...

person_hours: _PersonHours

@final
class _PicksInTime(Formula):
    """Picks that a loom puts in in a time.

    p = 60 × r × τ × η

    speed: picks in a minute
    time: time
    efficiency: efficiency
    """

    def __call__(self, speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "time", "efficiency"],
        *,
        picks_in_time: _Plain,
        speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

picks_in_time: _PicksInTime

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
class _PriceAtMargin(Formula):
    """Price that leaves a margin, which is a share of the price.

    p = k / (1 − g)

    cost: whole cost
    margin: margin, on the price
    """

    def __call__(self, cost: _Plain, margin: _Plain) -> Quantity: ...
    def working(
        self,
        cost: _Plain,
        margin: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost", "margin"],
        *,
        price_at_margin: _Plain,
        cost: _Plain = ...,
        margin: _Plain = ...,
    ) -> list[Quantity]: ...

price_at_margin: _PriceAtMargin

@final
class _PriceAtMarkUp(Formula):
    """Price with a mark-up, which is a share of the cost.

    p = k × (1 + u)

    cost: whole cost
    mark_up: mark-up, on the cost
    """

    def __call__(self, cost: _Plain, mark_up: _Plain) -> Quantity: ...
    def working(
        self,
        cost: _Plain,
        mark_up: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost", "mark_up"],
        *,
        price_at_mark_up: _Plain,
        cost: _Plain = ...,
        mark_up: _Plain = ...,
    ) -> list[Quantity]: ...

price_at_mark_up: _PriceAtMarkUp

@final
class _ProfitOfSales(Formula):
    """Profit that costs leave, as a margin on sales.

    g = 1 − k₁ − k₂

    costs: each cost, on sales
    """

    def __call__(self, costs: _Plains) -> Quantity: ...
    def working(self, costs: _Plains, *, at: int | tuple[int, ...] | None = None) -> Working: ...

profit_of_sales: _ProfitOfSales

@final
class _QualityPremium(Formula):
    """What better fibre is worth, from steps of quality and the value of a step: a millimetre of
    hauteur, a micrometre, a newton a kilotex.

    c = 0 + n₁ × v₁ + n₂ × v₂

    steps: steps of each quality
    values: value of a step of each, for a kilogram
    """

    def __call__(self, steps: _Plains, values: _Measures) -> Quantity: ...
    def working(
        self,
        steps: _Plains,
        values: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

quality_premium: _QualityPremium

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
class _RateOfYarn(Formula):
    """Mass of yarn in an hour, from the length delivered in a minute.

    P = 0.00006 × v × T

    speed: yarn delivered
    count: count
    """

    def __call__(self, speed: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "count"],
        *,
        rate_of_yarn: _Measure,
        speed: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

rate_of_yarn: _RateOfYarn

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
class _ReelDoffs(Formula):
    """Doffs of a reel for a number of hanks; the last may not be full.

    D = round up(N / p − 0.000001)

    hanks: hanks to reel
    positions: hanks reeled side by side
    """

    def __call__(self, hanks: _Plain, positions: _Plain) -> Quantity: ...
    def working(
        self,
        hanks: _Plain,
        positions: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hanks", "positions"],
        *,
        reel_doffs: _Plain,
        hanks: _Plain = ...,
        positions: _Plain = ...,
    ) -> list[Quantity]: ...

reel_doffs: _ReelDoffs

@final
class _ReelingTime(Formula):
    """Time of a reel for a number of doffs.

    τ_r = n / (60 × r); τ = D × (τ_r + τ_c)

    doffs: doffs
    turns: turns of the reel for a hank
    speed: speed of the reel
    change: time between doffs: tying, lacing, taking off, piecing up
    """

    def __call__(
        self,
        doffs: _Plain,
        turns: _Plain,
        speed: _Measure,
        change: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        doffs: _Plain,
        turns: _Plain,
        speed: _Measure,
        change: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["doffs", "turns", "speed", "change"],
        *,
        reeling_time: _Measure,
        doffs: _Plain = ...,
        turns: _Plain = ...,
        speed: _Measure = ...,
        change: _Measure = ...,
    ) -> list[Quantity]: ...

reeling_time: _ReelingTime

@final
class _RegainAfterWetting(Formula):
    """Water on clean dry fibre after wetting.

    R₂ = R₁ + e

    regain: water on it before
    water: water put on, on clean dry fibre
    """

    def __call__(self, regain: _Plain, water: _Plain) -> Quantity: ...
    def working(
        self,
        regain: _Plain,
        water: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["regain", "water"],
        *,
        regain_after_wetting: _Plain,
        regain: _Plain = ...,
        water: _Plain = ...,
    ) -> list[Quantity]: ...

regain_after_wetting: _RegainAfterWetting

@final
class _RolledSpeed(Formula):
    """Turns in a minute of a yarn that rolls on a drum, a disc or the top of a flyer.

    n_y = n × D / d

    drum_speed: speed of the drum
    drum: diameter of the drum
    yarn: diameter of the yarn
    """

    def __call__(self, drum_speed: _Measure, drum: _Measure, yarn: _Measure) -> Quantity: ...
    def working(
        self,
        drum_speed: _Measure,
        drum: _Measure,
        yarn: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["drum_speed", "drum", "yarn"],
        *,
        rolled_speed: _Measure,
        drum_speed: _Measure = ...,
        drum: _Measure = ...,
        yarn: _Measure = ...,
    ) -> list[Quantity]: ...

rolled_speed: _RolledSpeed

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
class _ScouringLoss(Formula):
    """Loss of mass of an oiled yarn or cloth when its oil is scoured out, at equal regain.

    m = (o₁ − o₂) / (1 + R + o₁)

    fat: oil on clean dry fibre before
    left: oil on clean dry fibre after
    regain: water on clean dry fibre, before and after
    """

    def __call__(self, fat: _Plain, left: _Plain, regain: _Plain) -> Quantity: ...
    def working(
        self,
        fat: _Plain,
        left: _Plain,
        regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat", "left", "regain"],
        *,
        scouring_loss: _Plain,
        fat: _Plain = ...,
        left: _Plain = ...,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

scouring_loss: _ScouringLoss

@final
class _SectionWarpingTime(Formula):
    """Time to warp a number of sections, without beaming.

    τ_r = W / (60 × v); τ = S × (τ_r + τ_c)

    sections: sections
    length: length of the warp
    speed: warping speed
    change: time for a section beside running: leasing, tying, mending
    """

    def __call__(
        self,
        sections: _Plain,
        length: _Measure,
        speed: _Measure,
        change: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        sections: _Plain,
        length: _Measure,
        speed: _Measure,
        change: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sections", "length", "speed", "change"],
        *,
        section_warping_time: _Measure,
        sections: _Plain = ...,
        length: _Measure = ...,
        speed: _Measure = ...,
        change: _Measure = ...,
    ) -> list[Quantity]: ...

section_warping_time: _SectionWarpingTime

@final
class _SettlingTime(Formula):
    """Time until a machine that starts empty delivers to within a share of its full count.

    t = −h / P × ln(x)

    held_up: clean dry fibre held up
    delivery: clean dry fibre delivered in an hour
    within: how near to the full count
    """

    def __call__(self, held_up: _Measure, delivery: _Measure, within: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        delivery: _Measure,
        within: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "delivery", "within"],
        *,
        settling_time: _Measure,
        held_up: _Measure = ...,
        delivery: _Measure = ...,
        within: _Plain = ...,
    ) -> list[Quantity]: ...

settling_time: _SettlingTime

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
class _SmallestLot(Formula):
    """The smallest lot whose loss stays within what is allowed.

    m = h / (L − w)

    held_up: clean dry fibre that the machine keeps
    loss: share lost, however large the lot
    allowed: loss allowed for the lot
    """

    def __call__(self, held_up: _Measure, loss: _Plain, allowed: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        loss: _Plain,
        allowed: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "loss", "allowed"],
        *,
        smallest_lot: _Measure,
        held_up: _Measure = ...,
        loss: _Plain = ...,
        allowed: _Plain = ...,
    ) -> list[Quantity]: ...

smallest_lot: _SmallestLot

@final
class _SpindleFrameOutput(Formula):
    """What a frame of spindles spins in an hour.

    v = n / t; P = 0.00006 × k × v × T × η

    spindles: spindles
    speed: spindle speed
    twist: twist
    count: count of the yarn delivered
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "speed", "twist", "count", "efficiency"],
        *,
        spindle_frame_output: _Measure,
        spindles: _Plain = ...,
        speed: _Measure = ...,
        twist: _Measure = ...,
        count: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

spindle_frame_output: _SpindleFrameOutput

@final
class _SpindleFromTravellers(Formula):
    """Spindle speed from the speed of the traveller at two diameters of winding.

    n_s = (n₁ × d₁ − n₂ × d₂) / (d₁ − d₂)

    at_large: traveller speed at the large diameter
    large: large diameter
    at_small: traveller speed at the small diameter
    small: small diameter
    """

    def __call__(
        self,
        at_large: _Measure,
        large: _Measure,
        at_small: _Measure,
        small: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        at_large: _Measure,
        large: _Measure,
        at_small: _Measure,
        small: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["at_large", "large", "at_small", "small"],
        *,
        spindle_from_travellers: _Measure,
        at_large: _Measure = ...,
        large: _Measure = ...,
        at_small: _Measure = ...,
        small: _Measure = ...,
    ) -> list[Quantity]: ...

spindle_from_travellers: _SpindleFromTravellers

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
class _SpindlesForBalance(Formula):
    """Spindles of the next machine that keep up with those before it.

    k₂ = n × v₁ × k₁ / (D × v₂)

    doublings: ends fed together at the machine before
    speed: front roller speed of the machine before
    heads: heads or spindles of the machine before
    draft: draft
    next: front roller speed of the next machine
    """

    def __call__(
        self,
        doublings: _Plain,
        speed: _Measure,
        heads: _Plain,
        draft: _Plain,
        next: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        doublings: _Plain,
        speed: _Measure,
        heads: _Plain,
        draft: _Plain,
        next: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["doublings", "speed", "heads", "draft", "next"],
        *,
        spindles_for_balance: _Plain,
        doublings: _Plain = ...,
        speed: _Measure = ...,
        heads: _Plain = ...,
        draft: _Plain = ...,
        next: _Measure = ...,
    ) -> list[Quantity]: ...

spindles_for_balance: _SpindlesForBalance

@final
class _SpindlesForMinder(Formula):
    """Spindles that a minder can piece for, not yet rounded down.

    k = 1000 × u / (e × τ)

    breaks: ends broken in a thousand spindle hours
    piecing: time for a piecing
    load: share of the minder's time for it
    """

    def __call__(self, breaks: _Plain, piecing: _Measure, load: _Plain) -> Quantity: ...
    def working(
        self,
        breaks: _Plain,
        piecing: _Measure,
        load: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["breaks", "piecing", "load"],
        *,
        spindles_for_minder: _Plain,
        breaks: _Plain = ...,
        piecing: _Measure = ...,
        load: _Plain = ...,
    ) -> list[Quantity]: ...

spindles_for_minder: _SpindlesForMinder

@final
class _SpindlesIdle(Formula):
    """Share of the spindles that stand idle because ends are broken.

    i = 0.75 × e / 1000 × τ

    breaks: ends broken in a thousand spindle hours
    patrol: time of a round
    """

    def __call__(self, breaks: _Plain, patrol: _Measure) -> Quantity: ...
    def working(
        self,
        breaks: _Plain,
        patrol: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["breaks", "patrol"],
        *,
        spindles_idle: _Plain,
        breaks: _Plain = ...,
        patrol: _Measure = ...,
    ) -> list[Quantity]: ...

spindles_idle: _SpindlesIdle

@final
class _StageCostByHour(Formula):
    """What a kilogram that goes into a stage costs there, from the cost of an hour.

    k = c / P

    hourly: cost of an hour
    rate: mass that goes in in an hour
    """

    def __call__(self, hourly: _Plain, rate: _Measure) -> Quantity: ...
    def working(
        self,
        hourly: _Plain,
        rate: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hourly", "rate"],
        *,
        stage_cost_by_hour: _Measure,
        hourly: _Plain = ...,
        rate: _Measure = ...,
    ) -> list[Quantity]: ...

stage_cost_by_hour: _StageCostByHour

@final
class _StockVolume(Formula):
    """Stock solution that holds a mass of dye.

    V = 1000 × d / c

    dye: dye wanted
    stock: concentration of the stock solution
    """

    def __call__(self, dye: _Measure, stock: _Measure) -> Quantity: ...
    def working(
        self,
        dye: _Measure,
        stock: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dye", "stock"],
        *,
        stock_volume: _Measure,
        dye: _Measure = ...,
        stock: _Measure = ...,
    ) -> list[Quantity]: ...

stock_volume: _StockVolume

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
class _TimeForHanks(Formula):
    """Time to wind a mass, from the hanks that a drum winds in an hour.

    N = 1000000 × m / (T × l); τ = N / (60 × h × k)

    mass: mass to wind
    count: count
    hank: length of a hank
    rate: hanks that a drum winds, with stops
    drums: drums at work
    """

    def __call__(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        rate: _Measure,
        drums: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        count: _Measure,
        hank: _Measure,
        rate: _Measure,
        drums: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "count", "hank", "rate", "drums"],
        *,
        time_for_hanks: _Measure,
        mass: _Measure = ...,
        count: _Measure = ...,
        hank: _Measure = ...,
        rate: _Measure = ...,
        drums: _Plain = ...,
    ) -> list[Quantity]: ...

time_for_hanks: _TimeForHanks

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
class _TransferCoefficient(Formula):
    """Share of what lies on the card's cylinder that goes over to the doffer in a turn of it.

    m_t = P / (60 × n); q = m_t / m

    rate: mass that the card delivers
    cylinder: turns of the cylinder
    load: fibre on the cylinder, all round
    """

    def __call__(self, rate: _Measure, cylinder: _Measure, load: _Measure) -> Quantity: ...
    def working(
        self,
        rate: _Measure,
        cylinder: _Measure,
        load: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["rate", "cylinder", "load"],
        *,
        transfer_coefficient: _Plain,
        rate: _Measure = ...,
        cylinder: _Measure = ...,
        load: _Measure = ...,
    ) -> list[Quantity]: ...

transfer_coefficient: _TransferCoefficient

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
class _TwistFromTravellers(Formula):
    """Twist of a ring yarn from the speed of the traveller at two diameters of winding.

    n_s = (n₁ × d₁ − n₂ × d₂) / (d₁ − d₂); v = 3.14159265 × d₁ × (n_s − n₁); t = n_s / v

    at_large: traveller speed at the large diameter
    large: large diameter
    at_small: traveller speed at the small diameter
    small: small diameter
    """

    def __call__(
        self,
        at_large: _Measure,
        large: _Measure,
        at_small: _Measure,
        small: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        at_large: _Measure,
        large: _Measure,
        at_small: _Measure,
        small: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["at_large", "large", "at_small", "small"],
        *,
        twist_from_travellers: _Measure,
        at_large: _Measure = ...,
        large: _Measure = ...,
        at_small: _Measure = ...,
        small: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_travellers: _TwistFromTravellers

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
class _WaterToDry(Formula):
    """Water to dry off goods.

    w = d × (R₁ − R₂)

    dry: oven-dry mass of the goods
    before: water in them before, on the dry mass
    after: water in them after, on the dry mass
    """

    def __call__(self, dry: _Measure, before: _Plain, after: _Plain) -> Quantity: ...
    def working(
        self,
        dry: _Measure,
        before: _Plain,
        after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dry", "before", "after"],
        *,
        water_to_dry: _Measure,
        dry: _Measure = ...,
        before: _Plain = ...,
        after: _Plain = ...,
    ) -> list[Quantity]: ...

water_to_dry: _WaterToDry

@final
class _WaterToFill(Formula):
    """Water to fill the bath up, beside what solutions and wet goods bring.

    V_w = V − (V_i₁ + V_i₂)

    liquor: liquor wanted
    parts: what is in it already: stock solutions, water in the goods
    """

    def __call__(self, liquor: _Measure, parts: _Measures) -> Quantity: ...
    def working(
        self,
        liquor: _Measure,
        parts: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["liquor"],
        *,
        water_to_fill: _Measure,
        liquor: _Measure = ...,
        parts: _Measures = ...,
    ) -> list[Quantity]: ...

water_to_fill: _WaterToFill

@final
class _WebMassPerArea(Formula):
    """Mass of the web that a condenser divides.

    m_A = T × N / (1000 × b)

    slubbing: slubbing count
    ends: ends, good ones and edge ends
    width: width of the web
    """

    def __call__(self, slubbing: _Measure, ends: _Plain, width: _Measure) -> Quantity: ...
    def working(
        self,
        slubbing: _Measure,
        ends: _Plain,
        width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["slubbing", "ends", "width"],
        *,
        web_mass_per_area: _Measure,
        slubbing: _Measure = ...,
        ends: _Plain = ...,
        width: _Measure = ...,
    ) -> list[Quantity]: ...

web_mass_per_area: _WebMassPerArea

@final
class _WeftInsertion(Formula):
    """Weft that a loom puts in, while it runs.

    v = r × B × (1 + c)

    speed: picks in a minute
    width: width that a pick crosses
    crimp: crimp of the weft
    """

    def __call__(self, speed: _Measure, width: _Measure, crimp: _Plain) -> Quantity: ...
    def working(
        self,
        speed: _Measure,
        width: _Measure,
        crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed", "width", "crimp"],
        *,
        weft_insertion: _Measure,
        speed: _Measure = ...,
        width: _Measure = ...,
        crimp: _Plain = ...,
    ) -> list[Quantity]: ...

weft_insertion: _WeftInsertion

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
class _WholeLoads(Formula):
    """Loads of a machine for a mass of goods.

    n = round up(m / g − 0.000001)

    mass: mass of the goods
    load: mass of the largest load
    """

    def __call__(self, mass: _Measure, load: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        load: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "load"],
        *,
        whole_loads: _Plain,
        mass: _Measure = ...,
        load: _Measure = ...,
    ) -> list[Quantity]: ...

whole_loads: _WholeLoads

@final
class _WholePackages(Formula):
    """Full packages that a mass of yarn makes; what is over fills no other.

    p = round down(m / g + 0.000001)

    mass: yarn wound
    net: yarn on a full package
    """

    def __call__(self, mass: _Measure, net: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        net: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "net"],
        *,
        whole_packages: _Plain,
        mass: _Measure = ...,
        net: _Measure = ...,
    ) -> list[Quantity]: ...

whole_packages: _WholePackages

@final
class _WholePieces(Formula):
    """Whole pieces out of a mass.

    n = round down(m / e + 1e−9)

    mass: mass at hand
    each: mass for each piece
    """

    def __call__(self, mass: _Measure, each: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        each: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "each"],
        *,
        whole_pieces: _Plain,
        mass: _Measure = ...,
        each: _Measure = ...,
    ) -> list[Quantity]: ...

whole_pieces: _WholePieces

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

@final
class _YieldOfEqualCharge(Formula):
    """Yield at which a tariff for what is sent in and one for what comes out charge alike; below it
    the one for what comes out is the cheaper for the owner.

    y = c_1 / c_2

    sent_in: tariff for a kilogram sent in
    come_out: tariff for a kilogram that comes out
    """

    def __call__(self, sent_in: _Measure, come_out: _Measure) -> Quantity: ...
    def working(
        self,
        sent_in: _Measure,
        come_out: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sent_in", "come_out"],
        *,
        yield_of_equal_charge: _Plain,
        sent_in: _Measure = ...,
        come_out: _Measure = ...,
    ) -> list[Quantity]: ...

yield_of_equal_charge: _YieldOfEqualCharge

@final
class _BatchRunJob(Job):
    """Goods in loads: whole loads, even ones, hours.

    mass: mass of the goods
    capacity: largest load, in the same state as the mass
    running: running time of a load
    change: time to empty and fill
    waste: waste, on what is fed
    machines: machines at work
    per_person: machines that a person minds
    """

    def __call__(
        self,
        *,
        mass: _Measure,
        capacity: _Measure,
        running: _Measure,
        change: _Measure | None = None,
        waste: _Plain | None = None,
        machines: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

batch_run: _BatchRunJob

@final
class _CardRunJob(Job):
    """A lot on the card: what to set and weigh, how long it takes, where each part of it goes.

    lot: clean dry fibre of the lot
    slubbing: slubbing count, as it leaves the card
    ends: good ends
    speed: delivery
    edge_ends: edge ends, all together
    put_back: share of the edge ends that is put back on the feed
    droppings: droppings under the card
    strips: strips fettled from the clothing
    fly: fly
    burr: fibre thrown out with burr and seed
    loss: loss that is not split by place
    held_up: clean dry fibre in the running card
    within: how near to its count slubbing has to be
    drops: drops of the hopper
    width: width of the web
    regain: water on clean dry fibre, at the hopper
    fat: grease and oil on clean dry fibre, at the hopper
    regain_out: water on clean dry fibre, in the slubbing
    fat_out: grease and oil on clean dry fibre, in the slubbing
    """

    def __call__(
        self,
        *,
        lot: _Measure,
        slubbing: _Measure,
        ends: _Plain,
        speed: _Measure,
        edge_ends: _Plain | None = None,
        put_back: _Plain | None = None,
        droppings: _Plain | None = None,
        strips: _Plain | None = None,
        fly: _Plain | None = None,
        burr: _Plain | None = None,
        loss: _Plain | None = None,
        held_up: _Measure | None = None,
        within: _Plain | None = None,
        drops: _Measure | None = None,
        width: _Measure | None = None,
        regain: _Plain | None = None,
        fat: _Plain | None = None,
        regain_out: _Plain | None = None,
        fat_out: _Plain | None = None,
    ) -> Particulars: ...

card_run: _CardRunJob

@final
class _ClothRunJob(Job):
    """Cloth through a machine, several times if need be: length run and hours.

    length: length of the cloth
    speed: speed of the cloth
    passages: passages
    change: time for a passage beside running: sewing on, threading
    machines: machines that share the cloth
    per_person: machines that a person minds
    """

    def __call__(
        self,
        *,
        length: _Measure,
        speed: _Measure,
        passages: _Plain | None = None,
        change: _Measure | None = None,
        machines: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

cloth_run: _ClothRunJob

@final
class _DryerRunJob(Job):
    """The dryer at work: water to dry off and the hours for it.

    mass: oven-dry mass of the goods
    before: water in them before, on the dry mass
    after: water in them after, on the dry mass
    evaporation: water that the dryer takes off in an hour
    efficiency: share of the hours in which the dryer takes that off
    machines: dryers at work
    per_person: dryers that a person minds
    """

    def __call__(
        self,
        *,
        mass: _Measure,
        before: _Plain,
        after: _Plain,
        evaporation: _Measure,
        efficiency: _Plain | None = None,
        machines: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

dryer_run: _DryerRunJob

@final
class _LoomRunJob(Job):
    """The loom at work: efficiency from its stops, cloth and weft in an hour, hours, looms of a
    weaver.

    speed: picks in a minute, running
    picks: picks in the cloth off the loom
    efficiency: efficiency, with every stop in it
    stops: stops in an hour of running
    stops_of_picks: stops in a hundred thousand picks
    stop_time: time that the loom stands for a stop
    width: width in the reed
    weft: count of the weft
    length: cloth to weave, off the loom
    looms: looms at work on it
    attention: weaver's time for a stop
    load: share of a person's time for broken ends or stops
    per_person: looms that a weaver minds
    """

    def __call__(
        self,
        *,
        speed: _Measure,
        picks: _Measure,
        efficiency: _Plain | None = None,
        stops: _Measure | None = None,
        stops_of_picks: _Plain | None = None,
        stop_time: _Measure | None = None,
        width: _Measure | None = None,
        weft: _Measure | None = None,
        length: _Measure | None = None,
        looms: _Plain | None = None,
        attention: _Measure | None = None,
        load: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

loom_run: _LoomRunJob

@final
class _LotsApartJob(Job):
    """What a lot loses for being small, the smallest lot worth running apart, and whose wool comes
    off.

    lot: clean dry fibre of the lot, at the card
    held_up: clean dry fibre that the card keeps
    loss: share lost, however large the lot
    allowed: loss allowed
    own: share of its own fibre wanted over the run, the card not cleared
    trace: share of the lot before that may still come off
    """

    def __call__(
        self,
        *,
        lot: _Measure,
        held_up: _Measure,
        loss: _Plain | None = None,
        allowed: _Plain | None = None,
        own: _Plain | None = None,
        trace: _Plain | None = None,
    ) -> Particulars: ...

lots_apart: _LotsApartJob

@final
class _MuleRunJob(Job):
    """The mule at work: draws, output, doffs, hours, broken ends and people.

    spindles: spindles at work
    travel: travel of the carriage
    cycle: time of a draw, out and in
    count: count of the single as spun
    efficiency: efficiency, with every stop, doff and idle spindle in it
    let_in: let-in of the carriage
    draft: draft
    delivered: slubbing delivered in a draw
    twist: twist wanted
    slip: slip of the bands
    coiling: turns spent in coiling to the spindle tip
    mass: good yarn to make
    waste: waste, on what is fed
    cop: yarn on a full cop
    breaks: ends broken in a thousand spindle hours
    patrol: time of a round of the minder
    piecing: minder's time for a broken end, with the walk
    load: share of a person's time for broken ends or stops
    per_person: spindles that a person minds
    """

    def __call__(
        self,
        *,
        spindles: _Plain,
        travel: _Measure,
        cycle: _Measure,
        count: _Measure,
        efficiency: _Plain,
        let_in: _Measure | None = None,
        draft: _Plain | None = None,
        delivered: _Measure | None = None,
        twist: _Measure | None = None,
        slip: _Plain | None = None,
        coiling: _Plain | None = None,
        mass: _Measure | None = None,
        waste: _Plain | None = None,
        cop: _Measure | None = None,
        breaks: _Plain | None = None,
        patrol: _Measure | None = None,
        piecing: _Measure | None = None,
        load: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

mule_run: _MuleRunJob

@final
class _ReelRunJob(Job):
    """The reel at work: turns of a hank, hanks, doffs, hours, people.

    reel: circumference of the reel
    positions: hanks reeled side by side
    speed: speed of the reel
    change: time between doffs: tying, lacing, taking off, piecing up
    count: count of the yarn at the reel
    hank: mass of a hank, at the reel
    length: yarn in the finished hank
    shrinkage: shrinkage of the hank in scouring
    turns: turns of a hank
    mass: yarn to reel, good
    hanks: hanks to reel
    waste: waste, on what is fed
    reels: reels at work
    per_person: reels that a person minds
    """

    def __call__(
        self,
        *,
        reel: _Measure,
        positions: _Plain,
        speed: _Measure,
        change: _Measure,
        count: _Measure,
        hank: _Measure | None = None,
        length: _Measure | None = None,
        shrinkage: _Plain | None = None,
        turns: _Plain | None = None,
        mass: _Measure | None = None,
        hanks: _Plain | None = None,
        waste: _Plain | None = None,
        reels: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

reel_run: _ReelRunJob

@final
class _RingFrameRunJob(Job):
    """The ring frame at work: delivery, lag of the traveller, output, doffs, hours, people.

    spindles: spindles at work
    speed: spindle speed
    twist: twist
    count: count of the yarn as spun
    efficiency: efficiency, with every stop, doff and idle spindle in it
    draft: draft
    full: diameter of the full package
    empty: diameter of the empty tube
    hank: length of a hank
    mass: good yarn to make
    waste: waste, on what is fed
    package: yarn on a full package, net
    package_length: yarn on a full package
    breaks: ends broken in a thousand spindle hours
    patrol: time of a round of the minder
    piecing: minder's time for a broken end, with the walk
    load: share of a person's time for broken ends or stops
    per_person: spindles that a person minds
    """

    def __call__(
        self,
        *,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
        draft: _Plain | None = None,
        full: _Measure | None = None,
        empty: _Measure | None = None,
        hank: _Measure | None = None,
        mass: _Measure | None = None,
        waste: _Plain | None = None,
        package: _Measure | None = None,
        package_length: _Measure | None = None,
        breaks: _Plain | None = None,
        patrol: _Measure | None = None,
        piecing: _Measure | None = None,
        load: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

ring_frame_run: _RingFrameRunJob

@final
class _TwisterRunJob(Job):
    """The twister at work: single to feed, output, doffs, packages, hours, people.

    spindles: spindles at work
    speed: spindle speed
    twist: twist
    count: count of the folded yarn
    efficiency: efficiency, with every stop, doff and idle spindle in it
    turns: turns of twist in a revolution: 2 on a two-for-one spindle
    ends: ends folded
    contraction: contraction in folding, on the untwisted length
    mass: good yarn to make
    waste: waste, on what is fed
    package: yarn on a full package, net
    package_length: yarn on a full package
    breaks: ends broken in a thousand spindle hours
    patrol: time of a round of the minder
    piecing: minder's time for a broken end, with the walk
    load: share of a person's time for broken ends or stops
    per_person: spindles that a person minds
    """

    def __call__(
        self,
        *,
        spindles: _Plain,
        speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
        turns: _Plain | None = None,
        ends: _Plain | None = None,
        contraction: _Plain | None = None,
        mass: _Measure | None = None,
        waste: _Plain | None = None,
        package: _Measure | None = None,
        package_length: _Measure | None = None,
        breaks: _Plain | None = None,
        patrol: _Measure | None = None,
        piecing: _Measure | None = None,
        load: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

twister_run: _TwisterRunJob

@final
class _WarpingRunJob(Job):
    """Warping in sections: sections, yarn and bobbins for the creel, hours.

    ends: ends of the warp
    creel: ends in a section: the bobbins in the creel
    length: length of the warp
    speed: warping speed
    change: time for a section beside running: leasing, tying, mending
    width: width of the warp
    count: count of the warp
    package: yarn on a bobbin or cone of the creel
    stretch: stretch in warping and beaming
    beaming: speed of beaming
    set_up: time to creel and set up, once
    machines: warping machines at work
    per_person: warping machines that a person minds
    """

    def __call__(
        self,
        *,
        ends: _Plain,
        creel: _Plain,
        length: _Measure,
        speed: _Measure,
        change: _Measure,
        width: _Measure | None = None,
        count: _Measure | None = None,
        package: _Measure | None = None,
        stretch: _Plain | None = None,
        beaming: _Measure | None = None,
        set_up: _Measure | None = None,
        machines: _Plain | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

warping_run: _WarpingRunJob

@final
class _WinderRunJob(Job):
    """The winder at work: output, time of a cone, whole cones of a lot and what is over, drums,
    hours.

    drums: drums at work
    speed: winding speed of a drum
    count: count of the yarn
    efficiency: efficiency, with every stop, doff and idle spindle in it
    mass: good yarn to make
    waste: waste, on what is fed
    package: yarn on a full cone, net
    package_length: yarn on a full cone
    bobbin: yarn on a bobbin or cop that is wound off
    hank: length of a hank
    within: time in which the lot is wanted
    per_person: drums that a person minds
    """

    def __call__(
        self,
        *,
        drums: _Plain,
        speed: _Measure,
        count: _Measure,
        efficiency: _Plain,
        mass: _Measure | None = None,
        waste: _Plain | None = None,
        package: _Measure | None = None,
        package_length: _Measure | None = None,
        bobbin: _Measure | None = None,
        hank: _Measure | None = None,
        within: _Measure | None = None,
        per_person: _Plain | None = None,
    ) -> Particulars: ...

winder_run: _WinderRunJob
