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
from hankwise._mill_more import compare_tariffs as compare_tariffs
from hankwise._mill_more import cost_through as cost_through
from hankwise._mill_more import dye_bath as dye_bath
from hankwise._mill_more import emulsion as emulsion
from hankwise._mill_more import evenness_of_blend as evenness_of_blend
from hankwise._mill_more import scour_liquor as scour_liquor
from hankwise._mill_more import washes as washes
from hankwise._mill_more import week as week

@final
class _BreakEvenLot(Formula):
    """Smallest lot that pays its fixed cost.

    m = (k_f / g if 0 < g, else no answer)

    fixed_cost: cost once for the lot: clean-down, setting up
    margin_per_mass: price less cost of a kilogram
    """

    def __call__(self, fixed_cost: _Plain, margin_per_mass: _Measure) -> Quantity: ...
    def working(
        self,
        fixed_cost: _Plain,
        margin_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fixed_cost", "margin_per_mass"],
        *,
        break_even_lot: _Measure,
        fixed_cost: _Plain = ...,
        margin_per_mass: _Measure = ...,
    ) -> list[Quantity]: ...

break_even_lot: _BreakEvenLot

@final
class _BreakEvenLotWithHoldUp(Formula):
    """Smallest lot that pays its fixed cost and the fibre that the machines keep.

    g = (1 − w) × p − c_m; m = ((k_f + h × p) / g if 0 < g, else no answer)

    fixed_cost: cost once for the lot: clean-down, setting up
    cost_per_mass: cost of a kilogram taken in, wool and work
    loss: share lost
    held_up: mass held up
    price_per_mass: price of a kilogram that comes out
    """

    def __call__(
        self,
        fixed_cost: _Plain,
        cost_per_mass: _Measure,
        loss: _Plain,
        held_up: _Measure,
        price_per_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        fixed_cost: _Plain,
        cost_per_mass: _Measure,
        loss: _Plain,
        held_up: _Measure,
        price_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fixed_cost", "cost_per_mass", "loss", "held_up", "price_per_mass"],
        *,
        break_even_lot_with_hold_up: _Measure,
        fixed_cost: _Plain = ...,
        cost_per_mass: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
        price_per_mass: _Measure = ...,
    ) -> list[Quantity]: ...

break_even_lot_with_hold_up: _BreakEvenLotWithHoldUp

@final
class _CardOutput(Formula):
    """What the card delivers in an hour.

    Q = N × v × T_c × 0.00006

    ends: good ends
    delivery_speed: delivery
    slubbing_count: slubbing count
    """

    def __call__(
        self,
        ends: _Plain,
        delivery_speed: _Measure,
        slubbing_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        delivery_speed: _Measure,
        slubbing_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "delivery_speed", "slubbing_count"],
        *,
        card_output: _Measure,
        ends: _Plain = ...,
        delivery_speed: _Measure = ...,
        slubbing_count: _Measure = ...,
    ) -> list[Quantity]: ...

card_output: _CardOutput

@final
class _CarriedMass(Formula):
    """Fibre of the lot before that comes off while a mass of the new lot goes through.

    m_c = h × (1 − exp(−(f / h)))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

    def __call__(self, fibre_mass: _Measure, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "held_up"],
        *,
        carried_mass: _Measure,
        fibre_mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

carried_mass: _CarriedMass

@final
class _CarriedShare(Formula):
    """How much of the lot before still comes off a machine after a mass of the new lot has gone
    through it.

    x = exp(−(f / h))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

    def __call__(self, fibre_mass: _Measure, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "held_up"],
        *,
        carried_share: _Plain,
        fibre_mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

carried_share: _CarriedShare

@final
class _ChargeForMass(Formula):
    """Charge for a mass by its tariff, no less than the minimum for a lot.

    k_m = greater of (m × c, k₀)

    mass: mass charged
    tariff: tariff for a kilogram
    minimum_charge: least charge for a lot
    """

    def __call__(self, mass: _Measure, tariff: _Measure, minimum_charge: _Plain) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        tariff: _Measure,
        minimum_charge: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "tariff", "minimum_charge"],
        *,
        charge_for_mass: _Plain,
        mass: _Measure = ...,
        tariff: _Measure = ...,
        minimum_charge: _Plain = ...,
    ) -> list[Quantity]: ...

charge_for_mass: _ChargeForMass

@final
class _ChargeForRejects(Formula):
    """Charge for putting away sorting rejects beyond the share that is free.

    k_m = greater of (r_j − r₀, 0) × m_i × c

    mass_in: incoming mass
    rejects: share rejected in sorting
    free_rejects: share that is free
    reject_charge: charge for a kilogram beyond it
    """

    def __call__(
        self,
        mass_in: _Measure,
        rejects: _Plain,
        free_rejects: _Plain,
        reject_charge: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mass_in: _Measure,
        rejects: _Plain,
        free_rejects: _Plain,
        reject_charge: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_in", "rejects", "free_rejects", "reject_charge"],
        *,
        charge_for_rejects: _Plain,
        mass_in: _Measure = ...,
        rejects: _Plain = ...,
        free_rejects: _Plain = ...,
        reject_charge: _Measure = ...,
    ) -> list[Quantity]: ...

charge_for_rejects: _ChargeForRejects

@final
class _ClearingFibre(Formula):
    """Fibre to send through a machine until no more than a share of the lot before comes off.

    f = −h × ln(x)

    held_up: clean dry fibre held up
    carried_share: share of the lot before that may remain
    """

    def __call__(self, held_up: _Measure, carried_share: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        carried_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "carried_share"],
        *,
        clearing_fibre: _Measure,
        held_up: _Measure = ...,
        carried_share: _Plain = ...,
    ) -> list[Quantity]: ...

clearing_fibre: _ClearingFibre

@final
class _ComponentShare(Formula):
    """Share of a component after it was fed, machine after machine, beside others.

    p = a₁ / N₁ × a₂ / N₂

    carrying_ends: ends that carry the component, at each machine
    fed_ends: all ends fed, at each machine
    """

    def __call__(self, carrying_ends: _Plains, fed_ends: _Plains) -> Quantity: ...
    def working(
        self,
        carrying_ends: _Plains,
        fed_ends: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

component_share: _ComponentShare

@final
class _ConcentrationAfterChange(Formula):
    """Concentration after the volume of the bath has changed: filled up, or boiled down.

    c₂ = c₁ × V₁ / V₂

    concentration_before: concentration before
    volume_before: volume before
    volume_after: volume after
    """

    def __call__(
        self,
        concentration_before: _Measure,
        volume_before: _Measure,
        volume_after: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        concentration_before: _Measure,
        volume_before: _Measure,
        volume_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["concentration_before", "volume_before", "volume_after"],
        *,
        concentration_after_change: _Measure,
        concentration_before: _Measure = ...,
        volume_before: _Measure = ...,
        volume_after: _Measure = ...,
    ) -> list[Quantity]: ...

concentration_after_change: _ConcentrationAfterChange

@final
class _ConcentrationFromMass(Formula):
    """Concentration of what is dissolved in a volume of liquor.

    c = 1000 × a / V

    dissolved_mass: mass dissolved
    liquor_volume: liquor
    """

    def __call__(self, dissolved_mass: _Measure, liquor_volume: _Measure) -> Quantity: ...
    def working(
        self,
        dissolved_mass: _Measure,
        liquor_volume: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dissolved_mass", "liquor_volume"],
        *,
        concentration_from_mass: _Measure,
        dissolved_mass: _Measure = ...,
        liquor_volume: _Measure = ...,
    ) -> list[Quantity]: ...

concentration_from_mass: _ConcentrationFromMass

@final
class _CorrectedWeigh(Formula):
    """The new hopper weigh after the slubbing was found heavy or light.

    m₂ = m_w × T_w / T_c

    hopper_weigh: hopper weigh as it is
    wanted_slubbing_count: slubbing count wanted
    slubbing_count: slubbing count found
    """

    def __call__(
        self,
        hopper_weigh: _Measure,
        wanted_slubbing_count: _Measure,
        slubbing_count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        hopper_weigh: _Measure,
        wanted_slubbing_count: _Measure,
        slubbing_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hopper_weigh", "wanted_slubbing_count", "slubbing_count"],
        *,
        corrected_weigh: _Measure,
        hopper_weigh: _Measure = ...,
        wanted_slubbing_count: _Measure = ...,
        slubbing_count: _Measure = ...,
    ) -> list[Quantity]: ...

corrected_weigh: _CorrectedWeigh

@final
class _CostAfterStage(Formula):
    """Cost of a kilogram after a lossy stage.

    c₂ = (c_m + c_s) / (1 − w)

    cost_per_mass: cost of a kilogram that goes in
    stage_cost_per_mass: cost of the stage for a kilogram that goes in
    loss: share lost
    """

    def __call__(
        self,
        cost_per_mass: _Measure,
        stage_cost_per_mass: _Measure,
        loss: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        cost_per_mass: _Measure,
        stage_cost_per_mass: _Measure,
        loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cost_per_mass", "stage_cost_per_mass", "loss"],
        *,
        cost_after_stage: _Measure,
        cost_per_mass: _Measure = ...,
        stage_cost_per_mass: _Measure = ...,
        loss: _Plain = ...,
    ) -> list[Quantity]: ...

cost_after_stage: _CostAfterStage

@final
class _CostAfterStageLessWaste(Formula):
    """Cost of a kilogram after a lossy stage whose waste is sold.

    c₂ = (c_m + c_s − s × p_w) / (1 − w)

    cost_per_mass: cost of a kilogram that goes in
    stage_cost_per_mass: cost of the stage for a kilogram that goes in
    loss: share lost
    sold_share: share of what goes in that is sold as waste
    waste_price_per_mass: what a kilogram of the waste sells for
    """

    def __call__(
        self,
        cost_per_mass: _Measure,
        stage_cost_per_mass: _Measure,
        loss: _Plain,
        sold_share: _Plain,
        waste_price_per_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        cost_per_mass: _Measure,
        stage_cost_per_mass: _Measure,
        loss: _Plain,
        sold_share: _Plain,
        waste_price_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "cost_per_mass", "stage_cost_per_mass", "loss", "sold_share", "waste_price_per_mass"
        ],
        *,
        cost_after_stage_less_waste: _Measure,
        cost_per_mass: _Measure = ...,
        stage_cost_per_mass: _Measure = ...,
        loss: _Plain = ...,
        sold_share: _Plain = ...,
        waste_price_per_mass: _Measure = ...,
    ) -> list[Quantity]: ...

cost_after_stage_less_waste: _CostAfterStageLessWaste

@final
class _CostOfAnHour(Formula):
    """What an hour comes to at a mass in the hour.

    k_h = Q × c_m

    output: mass in an hour
    cost_per_mass: cost, or value, of a kilogram
    """

    def __call__(self, output: _Measure, cost_per_mass: _Measure) -> Quantity: ...
    def working(
        self,
        output: _Measure,
        cost_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["output", "cost_per_mass"],
        *,
        cost_of_an_hour: _Plain,
        output: _Measure = ...,
        cost_per_mass: _Measure = ...,
    ) -> list[Quantity]: ...

cost_of_an_hour: _CostOfAnHour

@final
class _CostOfMass(Formula):
    """What a mass comes to at a price.

    k_m = m × p

    mass: mass
    price_per_mass: price of a kilogram
    """

    def __call__(self, mass: _Measure, price_per_mass: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        price_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "price_per_mass"],
        *,
        cost_of_mass: _Plain,
        mass: _Measure = ...,
        price_per_mass: _Measure = ...,
    ) -> list[Quantity]: ...

cost_of_mass: _CostOfMass

@final
class _CostOfTime(Formula):
    """Cost of running a machine for a time.

    k_m = τ × k_h

    time: running time
    hourly_cost: cost of an hour
    """

    def __call__(self, time: _Measure, hourly_cost: _Plain) -> Quantity: ...
    def working(
        self,
        time: _Measure,
        hourly_cost: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["time", "hourly_cost"],
        *,
        cost_of_time: _Plain,
        time: _Measure = ...,
        hourly_cost: _Plain = ...,
    ) -> list[Quantity]: ...

cost_of_time: _CostOfTime

@final
class _CostShare(Formula):
    """A product's share of a joint cost, by the clean dry fibre in it.

    k_m = k_j × f / f_t

    joint_cost: joint cost
    fibre_mass: clean dry fibre in the product
    total_fibre_mass: clean dry fibre in all products
    """

    def __call__(
        self,
        joint_cost: _Plain,
        fibre_mass: _Measure,
        total_fibre_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        joint_cost: _Plain,
        fibre_mass: _Measure,
        total_fibre_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["joint_cost", "fibre_mass", "total_fibre_mass"],
        *,
        cost_share: _Plain,
        joint_cost: _Plain = ...,
        fibre_mass: _Measure = ...,
        total_fibre_mass: _Measure = ...,
    ) -> list[Quantity]: ...

cost_share: _CostShare

@final
class _CostThroughLosses(Formula):
    """What a kilogram that comes out has cost to buy, through a chain of losses.

    c₂ = p / (1 − w₁) / (1 − w₂)

    price_per_mass: price of a kilogram taken in
    losses: losses of the stages in order
    """

    def __call__(self, price_per_mass: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        price_per_mass: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["price_per_mass"],
        *,
        cost_through_losses: _Measure,
        price_per_mass: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

cost_through_losses: _CostThroughLosses

@final
class _CostsOfSales(Formula):
    """Costs together, as a share of sales.

    K = 0 + k₁ + k₂

    costs_on_sales: each cost, on sales
    """

    def __call__(self, costs_on_sales: _Plains) -> Quantity: ...
    def working(
        self,
        costs_on_sales: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

costs_of_sales: _CostsOfSales

@final
class _CountForNewDraft(Formula):
    """Count after the draft alone was changed.

    T₂ = T × D / D₂

    count: count before
    draft: draft before
    new_draft: draft after
    """

    def __call__(self, count: _Measure, draft: _Plain, new_draft: _Plain) -> Quantity: ...
    def working(
        self,
        count: _Measure,
        draft: _Plain,
        new_draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["count", "draft", "new_draft"],
        *,
        count_for_new_draft: _Measure,
        count: _Measure = ...,
        draft: _Plain = ...,
        new_draft: _Plain = ...,
    ) -> list[Quantity]: ...

count_for_new_draft: _CountForNewDraft

@final
class _CountThroughDrafts(Formula):
    """Count that comes out of drafts, with the ends fed together and what is lost on the way.

    D = d₁ × d₂; T_o = T_i × N × (1 − w) / D

    fed_count: count fed, of one end
    total_doublings: doublings of all machines together
    loss: share lost on the way
    drafts: draft of each machine or zone
    """

    def __call__(
        self,
        fed_count: _Measure,
        total_doublings: _Plain,
        loss: _Plain,
        drafts: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        fed_count: _Measure,
        total_doublings: _Plain,
        loss: _Plain,
        drafts: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fed_count", "total_doublings", "loss"],
        *,
        count_through_drafts: _Measure,
        fed_count: _Measure = ...,
        total_doublings: _Plain = ...,
        loss: _Plain = ...,
        drafts: _Plains = ...,
    ) -> list[Quantity]: ...

count_through_drafts: _CountThroughDrafts

@final
class _DeliveredLength(Formula):
    """Slubbing delivered in a draw with a delivery wheel.

    L_d = p_d × z

    delivered_per_tooth: slubbing delivered for each tooth of the wheel
    teeth: teeth of the wheel
    """

    def __call__(self, delivered_per_tooth: _Measure, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        delivered_per_tooth: _Measure,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["delivered_per_tooth", "teeth"],
        *,
        delivered_length: _Measure,
        delivered_per_tooth: _Measure = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

delivered_length: _DeliveredLength

@final
class _DeliveryForDraft(Formula):
    """Slubbing to deliver in a draw of the mule for a draft.

    L_d = S / D

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

    v = q × n_s / t

    spindle_speed: spindle speed
    turns_per_revolution: turns of twist in a revolution
    twist: twist
    """

    def __call__(
        self,
        spindle_speed: _Measure,
        turns_per_revolution: _Plain,
        twist: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        turns_per_revolution: _Plain,
        twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "turns_per_revolution", "twist"],
        *,
        delivery_for_twist: _Measure,
        spindle_speed: _Measure = ...,
        turns_per_revolution: _Plain = ...,
        twist: _Measure = ...,
    ) -> list[Quantity]: ...

delivery_for_twist: _DeliveryForTwist

@final
class _DeliveryWheel(Formula):
    """The delivery wheel that would give a wanted draft.

    z = S / D / p_d

    travel: travel of the carriage
    draft: draft wanted
    delivered_per_tooth: slubbing delivered for each tooth of the wheel
    """

    def __call__(
        self,
        travel: _Measure,
        draft: _Plain,
        delivered_per_tooth: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        draft: _Plain,
        delivered_per_tooth: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "draft", "delivered_per_tooth"],
        *,
        delivery_wheel: _Plain,
        travel: _Measure = ...,
        draft: _Plain = ...,
        delivered_per_tooth: _Measure = ...,
    ) -> list[Quantity]: ...

delivery_wheel: _DeliveryWheel

@final
class _DoffInterval(Formula):
    """Time from one doff to the next.

    τ = k_n × g / Q

    spindles: spindles
    package_mass: yarn on a full package
    output: output, all spindles together
    """

    def __call__(self, spindles: _Plain, package_mass: _Measure, output: _Measure) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        package_mass: _Measure,
        output: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "package_mass", "output"],
        *,
        doff_interval: _Measure,
        spindles: _Plain = ...,
        package_mass: _Measure = ...,
        output: _Measure = ...,
    ) -> list[Quantity]: ...

doff_interval: _DoffInterval

@final
class _Doffs(Formula):
    """Times that all spindles are doffed for a mass of yarn; the last doff may not be full.

    D = round up(m_y / (k_n × g) − 0.000001)

    yarn_mass: yarn to make
    spindles: spindles
    package_mass: yarn on a full package
    """

    def __call__(
        self,
        yarn_mass: _Measure,
        spindles: _Plain,
        package_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        spindles: _Plain,
        package_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "spindles", "package_mass"],
        *,
        doffs: _Plain,
        yarn_mass: _Measure = ...,
        spindles: _Plain = ...,
        package_mass: _Measure = ...,
    ) -> list[Quantity]: ...

doffs: _Doffs

@final
class _DraftConstant(Formula):
    """Draft constant of a pair of rollers: the draft that the train between them gives, a place of
    it open.

    i = a₁ / b₁ × a₂ / b₂; C_d = d_f / d_b × i

    front_roller_diameter: diameter of the front roller
    back_roller_diameter: diameter of the back roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

    def __call__(
        self,
        front_roller_diameter: _Measure,
        back_roller_diameter: _Measure,
        drivers: _Plains,
        driven: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        front_roller_diameter: _Measure,
        back_roller_diameter: _Measure,
        drivers: _Plains,
        driven: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["front_roller_diameter", "back_roller_diameter"],
        *,
        draft_constant: _Plain,
        front_roller_diameter: _Measure = ...,
        back_roller_diameter: _Measure = ...,
        drivers: _Plains = ...,
        driven: _Plains = ...,
    ) -> list[Quantity]: ...

draft_constant: _DraftConstant

@final
class _DraftFromWheel(Formula):
    """Draft that a change wheel gives, where draft falls as teeth rise.

    D = C_d / z

    draft_constant: draft constant: draft times teeth
    teeth: teeth of the wheel
    """

    def __call__(self, draft_constant: _Plain, teeth: _Plain) -> Quantity: ...
    def working(
        self,
        draft_constant: _Plain,
        teeth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["draft_constant", "teeth"],
        *,
        draft_from_wheel: _Plain,
        draft_constant: _Plain = ...,
        teeth: _Plain = ...,
    ) -> list[Quantity]: ...

draft_from_wheel: _DraftFromWheel

@final
class _DraftOfCounts(Formula):
    """Draft that makes one count of another, with the ends fed together.

    D = T_i × n_d / T_o

    fed_count: count fed, of one end
    delivered_count: count delivered
    doublings: ends fed together
    """

    def __call__(
        self,
        fed_count: _Measure,
        delivered_count: _Measure,
        doublings: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        fed_count: _Measure,
        delivered_count: _Measure,
        doublings: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fed_count", "delivered_count", "doublings"],
        *,
        draft_of_counts: _Plain,
        fed_count: _Measure = ...,
        delivered_count: _Measure = ...,
        doublings: _Plain = ...,
    ) -> list[Quantity]: ...

draft_of_counts: _DraftOfCounts

@final
class _DrawRate(Formula):
    """Draws of the mule in a minute.

    r = 1 / (60 × τ_d)

    cycle: time of a draw, out and in
    """

    def __call__(self, cycle: _Measure) -> Quantity: ...
    def working(self, cycle: _Measure, *, at: int | tuple[int, ...] | None = None) -> Working: ...
    def solve(
        self,
        unknown: Literal["cycle"],
        *,
        draw_rate: _Measure,
        cycle: _Measure = ...,
    ) -> list[Quantity]: ...

draw_rate: _DrawRate

@final
class _Draws(Formula):
    """Draws for a length of yarn.

    N = Y / (k_n × L_w)

    yarn_length: yarn to spin, all spindles together
    spindles: spindles at work
    wound_length: yarn wound in a draw
    """

    def __call__(
        self,
        yarn_length: _Measure,
        spindles: _Plain,
        wound_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        yarn_length: _Measure,
        spindles: _Plain,
        wound_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_length", "spindles", "wound_length"],
        *,
        draws: _Plain,
        yarn_length: _Measure = ...,
        spindles: _Plain = ...,
        wound_length: _Measure = ...,
    ) -> list[Quantity]: ...

draws: _Draws

@final
class _DrumsNeeded(Formula):
    """Drums for a mass in a time, not yet rounded up to whole ones.

    k = m_y / m_k

    yarn_mass: mass to wind
    drum_mass: mass that a drum winds in that time
    """

    def __call__(self, yarn_mass: _Measure, drum_mass: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        drum_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "drum_mass"],
        *,
        drums_needed: _Plain,
        yarn_mass: _Measure = ...,
        drum_mass: _Measure = ...,
    ) -> list[Quantity]: ...

drums_needed: _DrumsNeeded

@final
class _DyeLeft(Formula):
    """Dye left in the bath when a share of it is on the goods.

    d_l = d × (1 − E)

    dye_mass: dye put in
    exhaustion: exhaustion: share of it on the goods
    """

    def __call__(self, dye_mass: _Measure, exhaustion: _Plain) -> Quantity: ...
    def working(
        self,
        dye_mass: _Measure,
        exhaustion: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dye_mass", "exhaustion"],
        *,
        dye_left: _Measure,
        dye_mass: _Measure = ...,
        exhaustion: _Plain = ...,
    ) -> list[Quantity]: ...

dye_left: _DyeLeft

@final
class _DyeMass(Formula):
    """Dye or auxiliary to weigh out, from its share of the mass of the goods.

    d = m_g × p / s

    goods_mass: goods, in the state that the recipe means
    depth: depth: share of the mass of the goods
    dye_strength: strength of the product, on that of the standard
    """

    def __call__(self, goods_mass: _Measure, depth: _Plain, dye_strength: _Plain) -> Quantity: ...
    def working(
        self,
        goods_mass: _Measure,
        depth: _Plain,
        dye_strength: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["goods_mass", "depth", "dye_strength"],
        *,
        dye_mass: _Measure,
        goods_mass: _Measure = ...,
        depth: _Plain = ...,
        dye_strength: _Plain = ...,
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
class _EfficiencyFromOutput(Formula):
    """Efficiency: what was made over what would be made without a stop.

    η = a / c

    made_amount: made
    calculated_amount: calculated, without a stop
    """

    def __call__(self, made_amount: _Plain, calculated_amount: _Plain) -> Quantity: ...
    def working(
        self,
        made_amount: _Plain,
        calculated_amount: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["made_amount", "calculated_amount"],
        *,
        efficiency_from_output: _Plain,
        made_amount: _Plain = ...,
        calculated_amount: _Plain = ...,
    ) -> list[Quantity]: ...

efficiency_from_output: _EfficiencyFromOutput

@final
class _EfficiencyWithStops(Formula):
    """Efficiency of a machine that stops so often in an hour of running.

    s = 60 × f_s × τ_s; η = 1 / (1 + s)

    stop_rate: stops, while it runs
    stop_time: time of a stop
    """

    def __call__(self, stop_rate: _Measure, stop_time: _Measure) -> Quantity: ...
    def working(
        self,
        stop_rate: _Measure,
        stop_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stop_rate", "stop_time"],
        *,
        efficiency_with_stops: _Plain,
        stop_rate: _Measure = ...,
        stop_time: _Measure = ...,
    ) -> list[Quantity]: ...

efficiency_with_stops: _EfficiencyWithStops

@final
class _EfficiencyWithStopsOfPicks(Formula):
    """Efficiency of a loom from its stops in a hundred thousand picks.

    τ_r = 100000 / (60 × r_l); η = τ_r / (τ_r + s × τ_s)

    stops_per_100000_picks: stops in a hundred thousand picks
    stop_time: time of a stop
    loom_speed: picks in a minute, running
    """

    def __call__(
        self,
        stops_per_100000_picks: _Plain,
        stop_time: _Measure,
        loom_speed: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        stops_per_100000_picks: _Plain,
        stop_time: _Measure,
        loom_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stops_per_100000_picks", "stop_time", "loom_speed"],
        *,
        efficiency_with_stops_of_picks: _Plain,
        stops_per_100000_picks: _Plain = ...,
        stop_time: _Measure = ...,
        loom_speed: _Measure = ...,
    ) -> list[Quantity]: ...

efficiency_with_stops_of_picks: _EfficiencyWithStopsOfPicks

@final
class _EmulsionMass(Formula):
    """Emulsion that brings a wanted mass of oil.

    E = a / x

    oil_mass: oil wanted on the wool
    oil_in_emulsion: oil as a share of the emulsion
    """

    def __call__(self, oil_mass: _Measure, oil_in_emulsion: _Plain) -> Quantity: ...
    def working(
        self,
        oil_mass: _Measure,
        oil_in_emulsion: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["oil_mass", "oil_in_emulsion"],
        *,
        emulsion_mass: _Measure,
        oil_mass: _Measure = ...,
        oil_in_emulsion: _Plain = ...,
    ) -> list[Quantity]: ...

emulsion_mass: _EmulsionMass

@final
class _EndBreakRate(Formula):
    """Ends that break, for a thousand spindles running an hour.

    e_b = 1000 × b / (k_n × τ)

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

    N = N_s × S

    ends_per_section: ends in a section: the bobbins in the creel
    sections: sections
    """

    def __call__(self, ends_per_section: _Plain, sections: _Plain) -> Quantity: ...
    def working(
        self,
        ends_per_section: _Plain,
        sections: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends_per_section", "sections"],
        *,
        ends_in_sections: _Plain,
        ends_per_section: _Plain = ...,
        sections: _Plain = ...,
    ) -> list[Quantity]: ...

ends_in_sections: _EndsInSections

@final
class _ExhaustionFromBaths(Formula):
    """Exhaustion, from the bath before and after.

    E = 1 − c₂ × V₂ / (c₁ × V₁)

    concentration_before: concentration of the dye before
    volume_before: bath before
    concentration_after: concentration of the dye after
    volume_after: bath after
    """

    def __call__(
        self,
        concentration_before: _Measure,
        volume_before: _Measure,
        concentration_after: _Measure,
        volume_after: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        concentration_before: _Measure,
        volume_before: _Measure,
        concentration_after: _Measure,
        volume_after: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "concentration_before", "volume_before", "concentration_after", "volume_after"
        ],
        *,
        exhaustion_from_baths: _Plain,
        concentration_before: _Measure = ...,
        volume_before: _Measure = ...,
        concentration_after: _Measure = ...,
        volume_after: _Measure = ...,
    ) -> list[Quantity]: ...

exhaustion_from_baths: _ExhaustionFromBaths

@final
class _FalseTwist(Formula):
    """Twist that a yarn has while a false twister turns it.

    t = n_y × η / v

    yarn_turning_speed: turns of the yarn in a minute
    delivery_speed: delivery
    twist_efficiency: share of the turns that the yarn takes on
    """

    def __call__(
        self,
        yarn_turning_speed: _Measure,
        delivery_speed: _Measure,
        twist_efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        yarn_turning_speed: _Measure,
        delivery_speed: _Measure,
        twist_efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_turning_speed", "delivery_speed", "twist_efficiency"],
        *,
        false_twist: _Measure,
        yarn_turning_speed: _Measure = ...,
        delivery_speed: _Measure = ...,
        twist_efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

false_twist: _FalseTwist

@final
class _FatAfterOiling(Formula):
    """Grease and oil on clean dry fibre after oiling.

    o₂ = o₁ + o_a

    fat_before: grease and oil on it before
    oil_added: oil put on, on clean dry fibre
    """

    def __call__(self, fat_before: _Plain, oil_added: _Plain) -> Quantity: ...
    def working(
        self,
        fat_before: _Plain,
        oil_added: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat_before", "oil_added"],
        *,
        fat_after_oiling: _Plain,
        fat_before: _Plain = ...,
        oil_added: _Plain = ...,
    ) -> list[Quantity]: ...

fat_after_oiling: _FatAfterOiling

@final
class _FatAfterWashes(Formula):
    """Grease and oil left on clean dry fibre after washes that each take a share of it away.

    o₂ = o₁ × (1 − g₁) × (1 − g₂)

    fat_before: grease and oil before
    removed_shares: share that each wash takes of what it meets
    """

    def __call__(self, fat_before: _Plain, removed_shares: _Plains) -> Quantity: ...
    def working(
        self,
        fat_before: _Plain,
        removed_shares: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat_before"],
        *,
        fat_after_washes: _Plain,
        fat_before: _Plain = ...,
        removed_shares: _Plains = ...,
    ) -> list[Quantity]: ...

fat_after_washes: _FatAfterWashes

@final
class _FedCount(Formula):
    """Count to feed for a count that is wanted, through a draft.

    T_i = T_o × D / (n_d × (1 − w))

    delivered_count: count wanted
    doublings: ends fed together
    loss: share lost on the way
    draft: draft
    """

    def __call__(
        self,
        delivered_count: _Measure,
        doublings: _Plain,
        loss: _Plain,
        draft: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        delivered_count: _Measure,
        doublings: _Plain,
        loss: _Plain,
        draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["delivered_count", "doublings", "loss", "draft"],
        *,
        fed_count: _Measure,
        delivered_count: _Measure = ...,
        doublings: _Plain = ...,
        loss: _Plain = ...,
        draft: _Plain = ...,
    ) -> list[Quantity]: ...

fed_count: _FedCount

@final
class _FeedRate(Formula):
    """What must be fed, as weighed, for a delivery of clean dry fibre.

    Q_i = Q_f / (1 − w) × s_m

    fibre_output: clean dry fibre delivered
    loss: share lost in the card
    state_ratio: mass for each unit of clean dry fibre at the hopper
    """

    def __call__(self, fibre_output: _Measure, loss: _Plain, state_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        fibre_output: _Measure,
        loss: _Plain,
        state_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_output", "loss", "state_ratio"],
        *,
        feed_rate: _Measure,
        fibre_output: _Measure = ...,
        loss: _Plain = ...,
        state_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

feed_rate: _FeedRate

@final
class _FullPackages(Formula):
    """Full packages that a mass of yarn makes; what is over fills no other.

    p = round down(m_y / g + 0.000001)

    yarn_mass: yarn wound
    package_mass: yarn on a full package
    """

    def __call__(self, yarn_mass: _Measure, package_mass: _Measure) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        package_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "package_mass"],
        *,
        full_packages: _Plain,
        yarn_mass: _Measure = ...,
        package_mass: _Measure = ...,
    ) -> list[Quantity]: ...

full_packages: _FullPackages

@final
class _FullPieces(Formula):
    """Whole pieces out of a mass.

    n_p = round down(m / m_p + 1e−9)

    mass: mass at hand
    mass_per_piece: mass for each piece
    """

    def __call__(self, mass: _Measure, mass_per_piece: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        mass_per_piece: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "mass_per_piece"],
        *,
        full_pieces: _Plain,
        mass: _Measure = ...,
        mass_per_piece: _Measure = ...,
    ) -> list[Quantity]: ...

full_pieces: _FullPieces

@final
class _HankRate(Formula):
    """Hanks that a drum winds in an hour.

    q_h = v × η / l_h

    winding_speed: winding speed
    efficiency: efficiency
    hank_length: length of a hank
    """

    def __call__(
        self,
        winding_speed: _Measure,
        efficiency: _Plain,
        hank_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        winding_speed: _Measure,
        efficiency: _Plain,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["winding_speed", "efficiency", "hank_length"],
        *,
        hank_rate: _Measure,
        winding_speed: _Measure = ...,
        efficiency: _Plain = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

hank_rate: _HankRate

@final
class _HankRateFromMass(Formula):
    """Hanks that a drum has wound in an hour, from what all have wound.

    N = 1000000 × m_y / (T × l_h); q_h = N / (60 × τ × k_n)

    yarn_mass: mass wound
    count: count
    hank_length: length of a hank
    time: time
    drums: drums
    """

    def __call__(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        time: _Measure,
        drums: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        time: _Measure,
        drums: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "count", "hank_length", "time", "drums"],
        *,
        hank_rate_from_mass: _Measure,
        yarn_mass: _Measure = ...,
        count: _Measure = ...,
        hank_length: _Measure = ...,
        time: _Measure = ...,
        drums: _Plain = ...,
    ) -> list[Quantity]: ...

hank_rate_from_mass: _HankRateFromMass

@final
class _HanksOfSpindle(Formula):
    """Hanks that a spindle delivers in a time.

    h = 60 × n_s × τ × η / (t × l_h)

    spindle_speed: spindle speed
    twist: twist
    time: time
    efficiency: efficiency
    hank_length: length of a hank
    """

    def __call__(
        self,
        spindle_speed: _Measure,
        twist: _Measure,
        time: _Measure,
        efficiency: _Plain,
        hank_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spindle_speed: _Measure,
        twist: _Measure,
        time: _Measure,
        efficiency: _Plain,
        hank_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_speed", "twist", "time", "efficiency", "hank_length"],
        *,
        hanks_of_spindle: _Plain,
        spindle_speed: _Measure = ...,
        twist: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        hank_length: _Measure = ...,
    ) -> list[Quantity]: ...

hanks_of_spindle: _HanksOfSpindle

@final
class _HeadTime(Formula):
    """Time that the carriage stands at the head for the turns put in there.

    τ_h = z_h / (60 × n)

    head_turns: turns at the head
    head_speed: spindle speed at the head
    """

    def __call__(self, head_turns: _Plain, head_speed: _Measure) -> Quantity: ...
    def working(
        self,
        head_turns: _Plain,
        head_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["head_turns", "head_speed"],
        *,
        head_time: _Measure,
        head_turns: _Plain = ...,
        head_speed: _Measure = ...,
    ) -> list[Quantity]: ...

head_time: _HeadTime

@final
class _HopperWeigh(Formula):
    """What the hopper weighs for each drop.

    m_w = Q_i / (60 × f_d)

    feed_rate: mass fed, as weighed
    drop_rate: drops
    """

    def __call__(self, feed_rate: _Measure, drop_rate: _Measure) -> Quantity: ...
    def working(
        self,
        feed_rate: _Measure,
        drop_rate: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["feed_rate", "drop_rate"],
        *,
        hopper_weigh: _Measure,
        feed_rate: _Measure = ...,
        drop_rate: _Measure = ...,
    ) -> list[Quantity]: ...

hopper_weigh: _HopperWeigh

@final
class _LayeredShareDeviation(Formula):
    """How far the share of a component differs from place to place in a stack taken down from top
    to bottom.

    σ = p × (1 − p) × CV_l × √(2 / n)

    component_share: share of the component in the blend
    layers: layers of each component
    layer_cv: coefficient of variation of a layer's thickness from place to place
    """

    def __call__(self, component_share: _Plain, layers: _Plain, layer_cv: _Plain) -> Quantity: ...
    def working(
        self,
        component_share: _Plain,
        layers: _Plain,
        layer_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["component_share", "layers", "layer_cv"],
        *,
        layered_share_deviation: _Plain,
        component_share: _Plain = ...,
        layers: _Plain = ...,
        layer_cv: _Plain = ...,
    ) -> list[Quantity]: ...

layered_share_deviation: _LayeredShareDeviation

@final
class _LayersForDeviation(Formula):
    """Layers of each component that keep the share within a standard deviation, in whole layers.

    n = round up(2 × p × (1 − p) × CV_l / σ × p × (1 − p) × CV_l / σ − 1e−9)

    component_share: share of the component in the blend
    share_sd: standard deviation wanted of the share, from place to place
    layer_cv: coefficient of variation of a layer's thickness from place to place
    """

    def __call__(self, component_share: _Plain, share_sd: _Plain, layer_cv: _Plain) -> Quantity: ...
    def working(
        self,
        component_share: _Plain,
        share_sd: _Plain,
        layer_cv: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["component_share", "share_sd", "layer_cv"],
        *,
        layers_for_deviation: _Plain,
        component_share: _Plain = ...,
        share_sd: _Plain = ...,
        layer_cv: _Plain = ...,
    ) -> list[Quantity]: ...

layers_for_deviation: _LayersForDeviation

@final
class _LeftAfterRinses(Formula):
    """Share of what is dissolved in the carried liquor that is left after rinses, each well mixed.

    x = V_c / (V_c + V₁) × V_c / (V_c + V₂)

    carried_volume: liquor that the goods carry into each rinse
    rinse_volumes: clean water of each rinse
    """

    def __call__(self, carried_volume: _Measure, rinse_volumes: _Measures) -> Quantity: ...
    def working(
        self,
        carried_volume: _Measure,
        rinse_volumes: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["carried_volume"],
        *,
        left_after_rinses: _Plain,
        carried_volume: _Measure = ...,
        rinse_volumes: _Measures = ...,
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

    length_before: length before
    stretches: stretch at each machine
    """

    def __call__(self, length_before: _Measure, stretches: _Plains) -> Quantity: ...
    def working(
        self,
        length_before: _Measure,
        stretches: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length_before"],
        *,
        length_after_stretches: _Measure,
        length_before: _Measure = ...,
        stretches: _Plains = ...,
    ) -> list[Quantity]: ...

length_after_stretches: _LengthAfterStretches

@final
class _LengthWound(Formula):
    """Length that a drum winds in a time.

    Y = 60 × v × τ × η

    winding_speed: winding speed
    time: time
    efficiency: efficiency
    """

    def __call__(self, winding_speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        winding_speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["winding_speed", "time", "efficiency"],
        *,
        length_wound: _Measure,
        winding_speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

length_wound: _LengthWound

@final
class _LiquorCarried(Formula):
    """Liquor that squeezed or drained goods carry to the next bowl.

    V_c = m_d × p / ρ

    oven_dry_mass: dry goods
    pickup: liquor left on them, on the dry mass
    liquor_density: density of the liquor
    """

    def __call__(
        self,
        oven_dry_mass: _Measure,
        pickup: _Plain,
        liquor_density: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        oven_dry_mass: _Measure,
        pickup: _Plain,
        liquor_density: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["oven_dry_mass", "pickup", "liquor_density"],
        *,
        liquor_carried: _Measure,
        oven_dry_mass: _Measure = ...,
        pickup: _Plain = ...,
        liquor_density: _Measure = ...,
    ) -> list[Quantity]: ...

liquor_carried: _LiquorCarried

@final
class _LiquorVolume(Formula):
    """Liquor for a mass of goods, from the liquor ratio.

    V = m_g × r

    goods_mass: goods
    liquor_ratio: litres of liquor for a kilogram of goods
    """

    def __call__(self, goods_mass: _Measure, liquor_ratio: _Plain) -> Quantity: ...
    def working(
        self,
        goods_mass: _Measure,
        liquor_ratio: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["goods_mass", "liquor_ratio"],
        *,
        liquor_volume: _Measure,
        goods_mass: _Measure = ...,
        liquor_ratio: _Plain = ...,
    ) -> list[Quantity]: ...

liquor_volume: _LiquorVolume

@final
class _LoadTime(Formula):
    """Time of a machine for a number of loads.

    τ = n × (τ_r + τ_c)

    loads: loads
    time_per_load: running time of a load
    change_time: time to empty and fill
    """

    def __call__(
        self,
        loads: _Plain,
        time_per_load: _Measure,
        change_time: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        loads: _Plain,
        time_per_load: _Measure,
        change_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loads", "time_per_load", "change_time"],
        *,
        load_time: _Measure,
        loads: _Plain = ...,
        time_per_load: _Measure = ...,
        change_time: _Measure = ...,
    ) -> list[Quantity]: ...

load_time: _LoadTime

@final
class _LoadsForMass(Formula):
    """Loads of a machine for a mass of goods.

    n = round up(m_g / g_l − 0.000001)

    goods_mass: mass of the goods
    load_mass: mass of the largest load
    """

    def __call__(self, goods_mass: _Measure, load_mass: _Measure) -> Quantity: ...
    def working(
        self,
        goods_mass: _Measure,
        load_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["goods_mass", "load_mass"],
        *,
        loads_for_mass: _Plain,
        goods_mass: _Measure = ...,
        load_mass: _Measure = ...,
    ) -> list[Quantity]: ...

loads_for_mass: _LoadsForMass

@final
class _LoomDeliverySpeed(Formula):
    """Cloth that a loom weaves.

    v = r_l × η / (100 × n₂)

    loom_speed: picks in a minute
    weft_sett: picks in the cloth
    efficiency: efficiency
    """

    def __call__(
        self,
        loom_speed: _Measure,
        weft_sett: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        loom_speed: _Measure,
        weft_sett: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loom_speed", "weft_sett", "efficiency"],
        *,
        loom_delivery_speed: _Measure,
        loom_speed: _Measure = ...,
        weft_sett: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

loom_delivery_speed: _LoomDeliverySpeed

@final
class _LoomTime(Formula):
    """Time of a loom for a number of picks.

    τ = P / (60 × r_l × η)

    picks: picks to weave
    loom_speed: picks in a minute
    efficiency: efficiency
    """

    def __call__(self, picks: _Plain, loom_speed: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        picks: _Plain,
        loom_speed: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["picks", "loom_speed", "efficiency"],
        *,
        loom_time: _Measure,
        picks: _Plain = ...,
        loom_speed: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

loom_time: _LoomTime

@final
class _LoomsForWeaver(Formula):
    """Looms that a weaver can mind, not yet rounded down.

    k = ψ / (60 × f_s × η × τ_a)

    stop_rate: stops of a loom, while it runs
    attention_time: weaver's time for a stop
    efficiency: efficiency of the loom
    work_load: share of the weaver's time for it
    """

    def __call__(
        self,
        stop_rate: _Measure,
        attention_time: _Measure,
        efficiency: _Plain,
        work_load: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        stop_rate: _Measure,
        attention_time: _Measure,
        efficiency: _Plain,
        work_load: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["stop_rate", "attention_time", "efficiency", "work_load"],
        *,
        looms_for_weaver: _Plain,
        stop_rate: _Measure = ...,
        attention_time: _Measure = ...,
        efficiency: _Plain = ...,
        work_load: _Plain = ...,
    ) -> list[Quantity]: ...

looms_for_weaver: _LoomsForWeaver

@final
class _LossWithReturn(Formula):
    """Share of a lot that is lost for good where part of each pass is put back on the feed.

    w_L = w / (1 − e)

    loss: share of a pass that is lost for good
    returned_share: share of a pass that is put back
    """

    def __call__(self, loss: _Plain, returned_share: _Plain) -> Quantity: ...
    def working(
        self,
        loss: _Plain,
        returned_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loss", "returned_share"],
        *,
        loss_with_return: _Plain,
        loss: _Plain = ...,
        returned_share: _Plain = ...,
    ) -> list[Quantity]: ...

loss_with_return: _LossWithReturn

@final
class _LotLoss(Formula):
    """What a lot loses in a machine that loses a share and keeps a fixed mass.

    w_L = w + h / f

    fibre_mass: clean dry fibre of the lot
    loss: share lost, however large the lot
    held_up: clean dry fibre that the machine keeps
    """

    def __call__(self, fibre_mass: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "loss", "held_up"],
        *,
        lot_loss: _Plain,
        fibre_mass: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

lot_loss: _LotLoss

@final
class _LotSurplus(Formula):
    """What a lot leaves: what comes out of it sold, less what it cost by its mass and once.

    m_o = greater of (m_i × (1 − w) − h, 0); s = m_o × p − m_i × c_m − k_f

    mass_in: mass taken in
    cost_per_mass: cost of a kilogram taken in, wool and work
    fixed_cost: cost once for the lot: clean-down, setting up
    loss: share lost
    held_up: mass held up
    price_per_mass: price of a kilogram that comes out
    """

    def __call__(
        self,
        mass_in: _Measure,
        cost_per_mass: _Measure,
        fixed_cost: _Plain,
        loss: _Plain,
        held_up: _Measure,
        price_per_mass: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        mass_in: _Measure,
        cost_per_mass: _Measure,
        fixed_cost: _Plain,
        loss: _Plain,
        held_up: _Measure,
        price_per_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal[
            "mass_in", "cost_per_mass", "fixed_cost", "loss", "held_up", "price_per_mass"
        ],
        *,
        lot_surplus: _Plain,
        mass_in: _Measure = ...,
        cost_per_mass: _Measure = ...,
        fixed_cost: _Plain = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
        price_per_mass: _Measure = ...,
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
class _MassAfterLoss(Formula):
    """What comes out of a stage that loses a share and keeps a fixed mass.

    m_o = m_i × (1 − w) − h

    mass_in: mass in
    loss: share lost
    held_up: mass held up
    """

    def __call__(self, mass_in: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        mass_in: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_in", "loss", "held_up"],
        *,
        mass_after_loss: _Measure,
        mass_in: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

mass_after_loss: _MassAfterLoss

@final
class _MassAfterLosses(Formula):
    """What comes out of a chain of lossy stages.

    m_o = m_i × (1 − w₁) × (1 − w₂)

    mass_in: mass in
    losses: losses of the stages in order
    """

    def __call__(self, mass_in: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        mass_in: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_in"],
        *,
        mass_after_losses: _Measure,
        mass_in: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

mass_after_losses: _MassAfterLosses

@final
class _MassBeforeLoss(Formula):
    """What must go into a stage for a mass to come out.

    m_i = (m_o + h) / (1 − w)

    mass_out: mass wanted
    loss: share lost
    held_up: mass held up
    """

    def __call__(self, mass_out: _Measure, loss: _Plain, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        mass_out: _Measure,
        loss: _Plain,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_out", "loss", "held_up"],
        *,
        mass_before_loss: _Measure,
        mass_out: _Measure = ...,
        loss: _Plain = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

mass_before_loss: _MassBeforeLoss

@final
class _MassBeforeLosses(Formula):
    """What must go into a chain of lossy stages.

    m_i = m_o / (1 − w₁) / (1 − w₂)

    mass_out: mass wanted
    losses: losses of the stages in order
    """

    def __call__(self, mass_out: _Measure, losses: _Plains) -> Quantity: ...
    def working(
        self,
        mass_out: _Measure,
        losses: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_out"],
        *,
        mass_before_losses: _Measure,
        mass_out: _Measure = ...,
        losses: _Plains = ...,
    ) -> list[Quantity]: ...

mass_before_losses: _MassBeforeLosses

@final
class _MassInLiquor(Formula):
    """Mass of what is dissolved in a volume of liquor.

    a = V × c / 1000

    liquor_volume: liquor
    concentration: mass in a volume
    """

    def __call__(self, liquor_volume: _Measure, concentration: _Measure) -> Quantity: ...
    def working(
        self,
        liquor_volume: _Measure,
        concentration: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["liquor_volume", "concentration"],
        *,
        mass_in_liquor: _Measure,
        liquor_volume: _Measure = ...,
        concentration: _Measure = ...,
    ) -> list[Quantity]: ...

mass_in_liquor: _MassInLiquor

@final
class _MassOfSpindle(Formula):
    """Mass of yarn that a spindle delivers in a time, from its front roller.

    Y = 60 × n × τ × C × η; m = Y × T × 0.000001

    roller_speed: speed of the front roller
    roller_circumference: circumference of the front roller
    time: time
    efficiency: efficiency
    count: count of the yarn delivered
    """

    def __call__(
        self,
        roller_speed: _Measure,
        roller_circumference: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        roller_speed: _Measure,
        roller_circumference: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["roller_speed", "roller_circumference", "time", "efficiency", "count"],
        *,
        mass_of_spindle: _Measure,
        roller_speed: _Measure = ...,
        roller_circumference: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

mass_of_spindle: _MassOfSpindle

@final
class _MassToAdd(Formula):
    """Oil or water to put on clean dry fibre.

    a = f × o

    fibre_mass: clean dry fibre
    share_to_add: share to add, on clean dry fibre
    """

    def __call__(self, fibre_mass: _Measure, share_to_add: _Plain) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        share_to_add: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "share_to_add"],
        *,
        mass_to_add: _Measure,
        fibre_mass: _Measure = ...,
        share_to_add: _Plain = ...,
    ) -> list[Quantity]: ...

mass_to_add: _MassToAdd

@final
class _MassWound(Formula):
    """Mass that a drum winds in a time.

    Y = 60 × v × τ × η; m = Y × T × 0.000001

    winding_speed: winding speed
    time: time
    efficiency: efficiency
    count: count
    """

    def __call__(
        self,
        winding_speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        winding_speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["winding_speed", "time", "efficiency", "count"],
        *,
        mass_wound: _Measure,
        winding_speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

mass_wound: _MassWound

@final
class _MeanCarriedShare(Formula):
    """Share of the lot before in all that comes off while a mass of the new lot goes through.

    X = h / f × (1 − exp(−(f / h)))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

    def __call__(self, fibre_mass: _Measure, held_up: _Measure) -> Quantity: ...
    def working(
        self,
        fibre_mass: _Measure,
        held_up: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_mass", "held_up"],
        *,
        mean_carried_share: _Plain,
        fibre_mass: _Measure = ...,
        held_up: _Measure = ...,
    ) -> list[Quantity]: ...

mean_carried_share: _MeanCarriedShare

@final
class _MuleDraft(Formula):
    """Draft of the mule: travel over slubbing delivered.

    D = S / L_d

    travel: travel of the carriage
    delivered_length: slubbing delivered in a draw
    """

    def __call__(self, travel: _Measure, delivered_length: _Measure) -> Quantity: ...
    def working(
        self,
        travel: _Measure,
        delivered_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["travel", "delivered_length"],
        *,
        mule_draft: _Plain,
        travel: _Measure = ...,
        delivered_length: _Measure = ...,
    ) -> list[Quantity]: ...

mule_draft: _MuleDraft

@final
class _MuleOutput(Formula):
    """What the mule spins in an hour.

    Q = k_n × L_w × T × 0.000001 / τ_d × η

    spindles: spindles
    wound_length: yarn wound in a draw
    cycle: time of a draw
    count: count of the single
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        wound_length: _Measure,
        cycle: _Measure,
        count: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        wound_length: _Measure,
        cycle: _Measure,
        count: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "wound_length", "cycle", "count", "efficiency"],
        *,
        mule_output: _Measure,
        spindles: _Plain = ...,
        wound_length: _Measure = ...,
        cycle: _Measure = ...,
        count: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

mule_output: _MuleOutput

@final
class _MuleTwist(Formula):
    """Twist that the mule puts in.

    t = (z_t × (1 − x) − b_c) / L_w

    spindle_turns: turns of the spindle in a draw
    slip: slip of the band
    coiling: turns spent in coiling to the spindle tip
    wound_length: yarn wound in a draw
    """

    def __call__(
        self,
        spindle_turns: _Plain,
        slip: _Plain,
        coiling: _Plain,
        wound_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        spindle_turns: _Plain,
        slip: _Plain,
        coiling: _Plain,
        wound_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_turns", "slip", "coiling", "wound_length"],
        *,
        mule_twist: _Measure,
        spindle_turns: _Plain = ...,
        slip: _Plain = ...,
        coiling: _Plain = ...,
        wound_length: _Measure = ...,
    ) -> list[Quantity]: ...

mule_twist: _MuleTwist

@final
class _NetDraft(Formula):
    """How many times finer the yarn is than one end of what was fed first: drafts over doublings.

    D = d₁ × d₂ / N

    total_doublings: doublings of all machines together
    drafts: draft of each machine or zone
    """

    def __call__(self, total_doublings: _Plain, drafts: _Plains) -> Quantity: ...
    def working(
        self,
        total_doublings: _Plain,
        drafts: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["total_doublings"],
        *,
        net_draft: _Plain,
        total_doublings: _Plain = ...,
        drafts: _Plains = ...,
    ) -> list[Quantity]: ...

net_draft: _NetDraft

@final
class _OffCountMass(Formula):
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
        off_count_mass: _Measure,
        held_up: _Measure = ...,
        within: _Plain = ...,
    ) -> list[Quantity]: ...

off_count_mass: _OffCountMass

@final
class _OutputOfYarn(Formula):
    """Mass of yarn in an hour, from the length delivered in a minute.

    Q = 0.00006 × v × T

    output_speed: yarn delivered
    count: count
    """

    def __call__(self, output_speed: _Measure, count: _Measure) -> Quantity: ...
    def working(
        self,
        output_speed: _Measure,
        count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["output_speed", "count"],
        *,
        output_of_yarn: _Measure,
        output_speed: _Measure = ...,
        count: _Measure = ...,
    ) -> list[Quantity]: ...

output_of_yarn: _OutputOfYarn

@final
class _PassLoss(Formula):
    """Share of what a card is fed that does not come off as good slubbing, in one pass.

    u = 1 − (1 − w_d) × (1 − E)

    dropped_share: share that falls out as waste
    edge_share: share of the web in the edge ends
    """

    def __call__(self, dropped_share: _Plain, edge_share: _Plain) -> Quantity: ...
    def working(
        self,
        dropped_share: _Plain,
        edge_share: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dropped_share", "edge_share"],
        *,
        pass_loss: _Plain,
        dropped_share: _Plain = ...,
        edge_share: _Plain = ...,
    ) -> list[Quantity]: ...

pass_loss: _PassLoss

@final
class _PassageTime(Formula):
    """Time of cloth that runs through a machine, several times if need be.

    τ_r = L / (60 × v); τ = n × (τ_r + τ_c)

    cloth_length: length of the cloth
    cloth_speed: speed of the cloth
    passages: passages
    change_time: time for a passage beside running: sewing on, threading
    """

    def __call__(
        self,
        cloth_length: _Measure,
        cloth_speed: _Measure,
        passages: _Plain,
        change_time: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        cloth_length: _Measure,
        cloth_speed: _Measure,
        passages: _Plain,
        change_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cloth_length", "cloth_speed", "passages", "change_time"],
        *,
        passage_time: _Measure,
        cloth_length: _Measure = ...,
        cloth_speed: _Measure = ...,
        passages: _Plain = ...,
        change_time: _Measure = ...,
    ) -> list[Quantity]: ...

passage_time: _PassageTime

@final
class _PeopleNeeded(Formula):
    """People for a number of machines or spindles.

    p = round up(k / a_p − 0.000001)

    machines: machines, spindles or drums
    per_person: of them for each person
    """

    def __call__(self, machines: _Plain, per_person: _Plain) -> Quantity: ...
    def working(
        self,
        machines: _Plain,
        per_person: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["machines", "per_person"],
        *,
        people_needed: _Plain,
        machines: _Plain = ...,
        per_person: _Plain = ...,
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

    P = 60 × r_l × τ × η

    loom_speed: picks in a minute
    time: time
    efficiency: efficiency
    """

    def __call__(self, loom_speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity: ...
    def working(
        self,
        loom_speed: _Measure,
        time: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loom_speed", "time", "efficiency"],
        *,
        picks_in_time: _Plain,
        loom_speed: _Measure = ...,
        time: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

picks_in_time: _PicksInTime

@final
class _PiecesFromYarn(Formula):
    """Pieces that a mass of yarn makes, not yet rounded down to whole ones.

    n_p = greater of ((m_y − m_0) / m_p, 0)

    yarn_mass: yarn at hand
    fixed_mass: needed once, however many pieces
    mass_per_piece: needed for each piece
    """

    def __call__(
        self,
        yarn_mass: _Measure,
        fixed_mass: _Measure,
        mass_per_piece: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        fixed_mass: _Measure,
        mass_per_piece: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "fixed_mass", "mass_per_piece"],
        *,
        pieces_from_yarn: _Plain,
        yarn_mass: _Measure = ...,
        fixed_mass: _Measure = ...,
        mass_per_piece: _Measure = ...,
    ) -> list[Quantity]: ...

pieces_from_yarn: _PiecesFromYarn

@final
class _PriceAtMargin(Formula):
    """Price that leaves a margin, which is a share of the price.

    p = k_m / (1 − g)

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

    p = k_m × (1 + u)

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

    costs_on_sales: each cost, on sales
    """

    def __call__(self, costs_on_sales: _Plains) -> Quantity: ...
    def working(
        self,
        costs_on_sales: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

profit_of_sales: _ProfitOfSales

@final
class _QualityPremium(Formula):
    """What better fibre is worth, from steps of quality and the value of a step: a millimetre of
    hauteur, a micrometre, a newton a kilotex.

    c = 0 + n₁ × v₁ + n₂ × v₂

    quality_steps: steps of each quality
    step_values: value of a step of each, for a kilogram
    """

    def __call__(self, quality_steps: _Plains, step_values: _Measures) -> Quantity: ...
    def working(
        self,
        quality_steps: _Plains,
        step_values: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...

quality_premium: _QualityPremium

@final
class _RandomShareDeviation(Formula):
    """Deviation of the share between samples of a blend mixed as well as chance does: the binomial
    bound.

    σ_b = √(p × (1 − p) / k)

    component_share: share of the component in the blend
    tufts: tufts in the sample
    """

    def __call__(self, component_share: _Plain, tufts: _Plain) -> Quantity: ...
    def working(
        self,
        component_share: _Plain,
        tufts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["component_share", "tufts"],
        *,
        random_share_deviation: _Plain,
        component_share: _Plain = ...,
        tufts: _Plain = ...,
    ) -> list[Quantity]: ...

random_share_deviation: _RandomShareDeviation

@final
class _Realisation(Formula):
    """Goods made as a share of the material taken in, both on clean dry fibre.

    y = m_o / m_i

    mass_out: made
    mass_in: taken in
    """

    def __call__(self, mass_out: _Measure, mass_in: _Measure) -> Quantity: ...
    def working(
        self,
        mass_out: _Measure,
        mass_in: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass_out", "mass_in"],
        *,
        realisation: _Plain,
        mass_out: _Measure = ...,
        mass_in: _Measure = ...,
    ) -> list[Quantity]: ...

realisation: _Realisation

@final
class _ReelDoffs(Formula):
    """Doffs of a reel for a number of hanks; the last may not be full.

    D = round up(h / p − 0.000001)

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

    τ_r = z_r / (60 × n_r); τ = D × (τ_r + τ_c)

    doffs: doffs
    reel_turns: turns of the reel for a hank
    reel_speed: speed of the reel
    change_time: time between doffs: tying, lacing, taking off, piecing up
    """

    def __call__(
        self,
        doffs: _Plain,
        reel_turns: _Plain,
        reel_speed: _Measure,
        change_time: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        doffs: _Plain,
        reel_turns: _Plain,
        reel_speed: _Measure,
        change_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["doffs", "reel_turns", "reel_speed", "change_time"],
        *,
        reeling_time: _Measure,
        doffs: _Plain = ...,
        reel_turns: _Plain = ...,
        reel_speed: _Measure = ...,
        change_time: _Measure = ...,
    ) -> list[Quantity]: ...

reeling_time: _ReelingTime

@final
class _RegainAfterWetting(Formula):
    """Water on clean dry fibre after wetting.

    R₂ = R₁ + e_a

    regain_before: water on it before
    water_added: water put on, on clean dry fibre
    """

    def __call__(self, regain_before: _Plain, water_added: _Plain) -> Quantity: ...
    def working(
        self,
        regain_before: _Plain,
        water_added: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["regain_before", "water_added"],
        *,
        regain_after_wetting: _Plain,
        regain_before: _Plain = ...,
        water_added: _Plain = ...,
    ) -> list[Quantity]: ...

regain_after_wetting: _RegainAfterWetting

@final
class _RolledSpeed(Formula):
    """Turns in a minute of a yarn that rolls on a drum, a disc or the top of a flyer.

    n_y = n × D / d

    drum_speed: speed of the drum
    drum_diameter: diameter of the drum
    yarn_diameter: diameter of the yarn
    """

    def __call__(
        self,
        drum_speed: _Measure,
        drum_diameter: _Measure,
        yarn_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        drum_speed: _Measure,
        drum_diameter: _Measure,
        yarn_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["drum_speed", "drum_diameter", "yarn_diameter"],
        *,
        rolled_speed: _Measure,
        drum_speed: _Measure = ...,
        drum_diameter: _Measure = ...,
        yarn_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

rolled_speed: _RolledSpeed

@final
class _SampledShareDeviation(Formula):
    """Deviation of the share between samples: of the heap from place to place, and of the tufts by
    chance.

    σ_s = √(σ × σ × (1 − 1 / k) + p × (1 − p) / k)

    share_sd: standard deviation of the share in the heap, from place to place
    component_share: share of the component in the blend
    tufts: tufts in the sample
    """

    def __call__(self, share_sd: _Plain, component_share: _Plain, tufts: _Plain) -> Quantity: ...
    def working(
        self,
        share_sd: _Plain,
        component_share: _Plain,
        tufts: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share_sd", "component_share", "tufts"],
        *,
        sampled_share_deviation: _Plain,
        share_sd: _Plain = ...,
        component_share: _Plain = ...,
        tufts: _Plain = ...,
    ) -> list[Quantity]: ...

sampled_share_deviation: _SampledShareDeviation

@final
class _ScouringLoss(Formula):
    """Loss of mass of an oiled yarn or cloth when its oil is scoured out, at equal regain.

    m_l = (o₁ − o₂) / (1 + R + o₁)

    fat_before: oil on clean dry fibre before
    fat_after: oil on clean dry fibre after
    regain: water on clean dry fibre, before and after
    """

    def __call__(self, fat_before: _Plain, fat_after: _Plain, regain: _Plain) -> Quantity: ...
    def working(
        self,
        fat_before: _Plain,
        fat_after: _Plain,
        regain: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fat_before", "fat_after", "regain"],
        *,
        scouring_loss: _Plain,
        fat_before: _Plain = ...,
        fat_after: _Plain = ...,
        regain: _Plain = ...,
    ) -> list[Quantity]: ...

scouring_loss: _ScouringLoss

@final
class _SectionWarpingTime(Formula):
    """Time to warp a number of sections, without beaming.

    τ_r = W / (60 × v); τ = S × (τ_r + τ_c)

    sections: sections
    warp_length: length of the warp
    warping_speed: warping speed
    change_time: time for a section beside running: leasing, tying, mending
    """

    def __call__(
        self,
        sections: _Plain,
        warp_length: _Measure,
        warping_speed: _Measure,
        change_time: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        sections: _Plain,
        warp_length: _Measure,
        warping_speed: _Measure,
        change_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sections", "warp_length", "warping_speed", "change_time"],
        *,
        section_warping_time: _Measure,
        sections: _Plain = ...,
        warp_length: _Measure = ...,
        warping_speed: _Measure = ...,
        change_time: _Measure = ...,
    ) -> list[Quantity]: ...

section_warping_time: _SectionWarpingTime

@final
class _SettFromEnds(Formula):
    """How close the ends of a warp stand, from their number and its width.

    n = N / (100 × B_w)

    ends: ends
    warp_width: width of the warp
    """

    def __call__(self, ends: _Plain, warp_width: _Measure) -> Quantity: ...
    def working(
        self,
        ends: _Plain,
        warp_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["ends", "warp_width"],
        *,
        sett_from_ends: _Measure,
        ends: _Plain = ...,
        warp_width: _Measure = ...,
    ) -> list[Quantity]: ...

sett_from_ends: _SettFromEnds

@final
class _SettlingTime(Formula):
    """Time until a machine that starts empty delivers to within a share of its full count.

    τ = −h / Q_f × ln(x)

    held_up: clean dry fibre held up
    fibre_output: clean dry fibre delivered in an hour
    within: how near to the full count
    """

    def __call__(self, held_up: _Measure, fibre_output: _Measure, within: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        fibre_output: _Measure,
        within: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "fibre_output", "within"],
        *,
        settling_time: _Measure,
        held_up: _Measure = ...,
        fibre_output: _Measure = ...,
        within: _Plain = ...,
    ) -> list[Quantity]: ...

settling_time: _SettlingTime

@final
class _ShareDeviationAfterPasses(Formula):
    """Deviation of the share from place to place after passes through the teaser with relaying.

    σ_j = σ × exp(-0.5 × j × ln(n_d))

    share_sd_before: standard deviation of the share, before
    doublings: places of the heap that come together in each place of the next
    passes: passes
    """

    def __call__(self, share_sd_before: _Plain, doublings: _Plain, passes: _Plain) -> Quantity: ...
    def working(
        self,
        share_sd_before: _Plain,
        doublings: _Plain,
        passes: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["share_sd_before", "doublings", "passes"],
        *,
        share_deviation_after_passes: _Plain,
        share_sd_before: _Plain = ...,
        doublings: _Plain = ...,
        passes: _Plain = ...,
    ) -> list[Quantity]: ...

share_deviation_after_passes: _ShareDeviationAfterPasses

@final
class _SingleFromSlubbing(Formula):
    """The single that a slubbing makes.

    T_s = T_c × L_d / L_w

    slubbing_count: count of the slubbing
    delivered_length: slubbing delivered in a draw
    wound_length: yarn wound in a draw
    """

    def __call__(
        self,
        slubbing_count: _Measure,
        delivered_length: _Measure,
        wound_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        slubbing_count: _Measure,
        delivered_length: _Measure,
        wound_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["slubbing_count", "delivered_length", "wound_length"],
        *,
        single_from_slubbing: _Measure,
        slubbing_count: _Measure = ...,
        delivered_length: _Measure = ...,
        wound_length: _Measure = ...,
    ) -> list[Quantity]: ...

single_from_slubbing: _SingleFromSlubbing

@final
class _SlubbingCount(Formula):
    """Count of the slubbing, or of a card sliver with one end, from what is fed.

    T_c = Q_i × (1 − w) × 1000000 / (60 × v × N)

    feed_rate: mass fed
    loss: share lost in the card
    ends: good ends
    delivery_speed: delivery
    """

    def __call__(
        self,
        feed_rate: _Measure,
        loss: _Plain,
        ends: _Plain,
        delivery_speed: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        feed_rate: _Measure,
        loss: _Plain,
        ends: _Plain,
        delivery_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["feed_rate", "loss", "ends", "delivery_speed"],
        *,
        slubbing_count: _Measure,
        feed_rate: _Measure = ...,
        loss: _Plain = ...,
        ends: _Plain = ...,
        delivery_speed: _Measure = ...,
    ) -> list[Quantity]: ...

slubbing_count: _SlubbingCount

@final
class _SlubbingForSingle(Formula):
    """The slubbing to card for a single.

    T_c = T_s × L_w / L_d

    single_count: count of the single
    wound_length: yarn wound in a draw
    delivered_length: slubbing delivered in a draw
    """

    def __call__(
        self,
        single_count: _Measure,
        wound_length: _Measure,
        delivered_length: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        single_count: _Measure,
        wound_length: _Measure,
        delivered_length: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["single_count", "wound_length", "delivered_length"],
        *,
        slubbing_for_single: _Measure,
        single_count: _Measure = ...,
        wound_length: _Measure = ...,
        delivered_length: _Measure = ...,
    ) -> list[Quantity]: ...

slubbing_for_single: _SlubbingForSingle

@final
class _SmallestLot(Formula):
    """The smallest lot whose loss stays within what is allowed.

    f = h / (w_a − w)

    held_up: clean dry fibre that the machine keeps
    loss: share lost, however large the lot
    allowed_loss: loss allowed for the lot
    """

    def __call__(self, held_up: _Measure, loss: _Plain, allowed_loss: _Plain) -> Quantity: ...
    def working(
        self,
        held_up: _Measure,
        loss: _Plain,
        allowed_loss: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["held_up", "loss", "allowed_loss"],
        *,
        smallest_lot: _Measure,
        held_up: _Measure = ...,
        loss: _Plain = ...,
        allowed_loss: _Plain = ...,
    ) -> list[Quantity]: ...

smallest_lot: _SmallestLot

@final
class _SpindleFrameOutput(Formula):
    """What a frame of spindles spins in an hour.

    v = n_s / t; Q = 0.00006 × k_n × v × T × η

    spindles: spindles
    spindle_speed: spindle speed
    twist: twist
    count: count of the yarn delivered
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        spindle_speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        spindle_speed: _Measure,
        twist: _Measure,
        count: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "spindle_speed", "twist", "count", "efficiency"],
        *,
        spindle_frame_output: _Measure,
        spindles: _Plain = ...,
        spindle_speed: _Measure = ...,
        twist: _Measure = ...,
        count: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

spindle_frame_output: _SpindleFrameOutput

@final
class _SpindleSpeed(Formula):
    """Speed of a spindle that a cylinder drives by a band that slips.

    n_s = n_c × i_w × (1 − x)

    cylinder_speed: speed of the cylinder
    whirl_ratio: turns of the spindle for one of the cylinder, without slip
    slip: slip of the band
    """

    def __call__(self, cylinder_speed: _Measure, whirl_ratio: _Plain, slip: _Plain) -> Quantity: ...
    def working(
        self,
        cylinder_speed: _Measure,
        whirl_ratio: _Plain,
        slip: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cylinder_speed", "whirl_ratio", "slip"],
        *,
        spindle_speed: _Measure,
        cylinder_speed: _Measure = ...,
        whirl_ratio: _Plain = ...,
        slip: _Plain = ...,
    ) -> list[Quantity]: ...

spindle_speed: _SpindleSpeed

@final
class _SpindleSpeedFromTravellers(Formula):
    """Spindle speed from the speed of the traveller at two diameters of winding.

    n_s = (n₁ × d₁ − n₂ × d₂) / (d₁ − d₂)

    speed_at_large: traveller speed at the large diameter
    large_diameter: large diameter
    speed_at_small: traveller speed at the small diameter
    small_diameter: small diameter
    """

    def __call__(
        self,
        speed_at_large: _Measure,
        large_diameter: _Measure,
        speed_at_small: _Measure,
        small_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        speed_at_large: _Measure,
        large_diameter: _Measure,
        speed_at_small: _Measure,
        small_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed_at_large", "large_diameter", "speed_at_small", "small_diameter"],
        *,
        spindle_speed_from_travellers: _Measure,
        speed_at_large: _Measure = ...,
        large_diameter: _Measure = ...,
        speed_at_small: _Measure = ...,
        small_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

spindle_speed_from_travellers: _SpindleSpeedFromTravellers

@final
class _SpindlesForBalance(Formula):
    """Spindles of the next machine that keep up with those before it.

    k₂ = n_d × v₁ × k₁ / (D × v₂)

    doublings: ends fed together at the machine before
    front_speed: front roller speed of the machine before
    heads: heads or spindles of the machine before
    draft: draft
    next_front_speed: front roller speed of the next machine
    """

    def __call__(
        self,
        doublings: _Plain,
        front_speed: _Measure,
        heads: _Plain,
        draft: _Plain,
        next_front_speed: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        doublings: _Plain,
        front_speed: _Measure,
        heads: _Plain,
        draft: _Plain,
        next_front_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["doublings", "front_speed", "heads", "draft", "next_front_speed"],
        *,
        spindles_for_balance: _Plain,
        doublings: _Plain = ...,
        front_speed: _Measure = ...,
        heads: _Plain = ...,
        draft: _Plain = ...,
        next_front_speed: _Measure = ...,
    ) -> list[Quantity]: ...

spindles_for_balance: _SpindlesForBalance

@final
class _SpindlesForMinder(Formula):
    """Spindles that a minder can piece for, not yet rounded down.

    k = 1000 × ψ / (e_b × τ_b)

    break_rate: ends broken in a thousand spindle hours
    piecing_time: time for a piecing
    work_load: share of the minder's time for it
    """

    def __call__(
        self,
        break_rate: _Plain,
        piecing_time: _Measure,
        work_load: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        break_rate: _Plain,
        piecing_time: _Measure,
        work_load: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["break_rate", "piecing_time", "work_load"],
        *,
        spindles_for_minder: _Plain,
        break_rate: _Plain = ...,
        piecing_time: _Measure = ...,
        work_load: _Plain = ...,
    ) -> list[Quantity]: ...

spindles_for_minder: _SpindlesForMinder

@final
class _SpindlesIdle(Formula):
    """Share of the spindles that stand idle because ends are broken.

    i = 0.75 × e_b / 1000 × τ_p

    break_rate: ends broken in a thousand spindle hours
    patrol_time: time of a round
    """

    def __call__(self, break_rate: _Plain, patrol_time: _Measure) -> Quantity: ...
    def working(
        self,
        break_rate: _Plain,
        patrol_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["break_rate", "patrol_time"],
        *,
        spindles_idle: _Plain,
        break_rate: _Plain = ...,
        patrol_time: _Measure = ...,
    ) -> list[Quantity]: ...

spindles_idle: _SpindlesIdle

@final
class _StageCostByHour(Formula):
    """What a kilogram that goes into a stage costs there, from the cost of an hour.

    c_s = k_h / Q_i

    hourly_cost: cost of an hour
    feed_rate: mass that goes in in an hour
    """

    def __call__(self, hourly_cost: _Plain, feed_rate: _Measure) -> Quantity: ...
    def working(
        self,
        hourly_cost: _Plain,
        feed_rate: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["hourly_cost", "feed_rate"],
        *,
        stage_cost_by_hour: _Measure,
        hourly_cost: _Plain = ...,
        feed_rate: _Measure = ...,
    ) -> list[Quantity]: ...

stage_cost_by_hour: _StageCostByHour

@final
class _StockVolume(Formula):
    """Stock solution that holds a mass of dye.

    V = 1000 × d / c

    dye_mass: dye wanted
    stock_concentration: concentration of the stock solution
    """

    def __call__(self, dye_mass: _Measure, stock_concentration: _Measure) -> Quantity: ...
    def working(
        self,
        dye_mass: _Measure,
        stock_concentration: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["dye_mass", "stock_concentration"],
        *,
        stock_volume: _Measure,
        dye_mass: _Measure = ...,
        stock_concentration: _Measure = ...,
    ) -> list[Quantity]: ...

stock_volume: _StockVolume

@final
class _TapePitch(Formula):
    """Width of a condenser tape.

    p = b_w / N

    web_width: width of the web
    ends: ends across it, waste ends too
    """

    def __call__(self, web_width: _Measure, ends: _Plain) -> Quantity: ...
    def working(
        self,
        web_width: _Measure,
        ends: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["web_width", "ends"],
        *,
        tape_pitch: _Measure,
        web_width: _Measure = ...,
        ends: _Plain = ...,
    ) -> list[Quantity]: ...

tape_pitch: _TapePitch

@final
class _TimeForHanks(Formula):
    """Time to wind a mass, from the hanks that a drum winds in an hour.

    N = 1000000 × m_y / (T × l_h); τ = N / (60 × q_h × k_n)

    yarn_mass: mass to wind
    count: count
    hank_length: length of a hank
    hank_rate: hanks that a drum winds, with stops
    drums: drums at work
    """

    def __call__(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        hank_rate: _Measure,
        drums: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        yarn_mass: _Measure,
        count: _Measure,
        hank_length: _Measure,
        hank_rate: _Measure,
        drums: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["yarn_mass", "count", "hank_length", "hank_rate", "drums"],
        *,
        time_for_hanks: _Measure,
        yarn_mass: _Measure = ...,
        count: _Measure = ...,
        hank_length: _Measure = ...,
        hank_rate: _Measure = ...,
        drums: _Plain = ...,
    ) -> list[Quantity]: ...

time_for_hanks: _TimeForHanks

@final
class _TimeForLength(Formula):
    """Time for a length at a speed.

    τ = L / (60 × v)

    length: length to make
    output_speed: speed, all spindles or drums together
    """

    def __call__(self, length: _Measure, output_speed: _Measure) -> Quantity: ...
    def working(
        self,
        length: _Measure,
        output_speed: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["length", "output_speed"],
        *,
        time_for_length: _Measure,
        length: _Measure = ...,
        output_speed: _Measure = ...,
    ) -> list[Quantity]: ...

time_for_length: _TimeForLength

@final
class _TimeForMass(Formula):
    """Time for a mass at a rate.

    τ = m / Q

    mass: mass to make
    output: rate
    """

    def __call__(self, mass: _Measure, output: _Measure) -> Quantity: ...
    def working(
        self,
        mass: _Measure,
        output: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["mass", "output"],
        *,
        time_for_mass: _Measure,
        mass: _Measure = ...,
        output: _Measure = ...,
    ) -> list[Quantity]: ...

time_for_mass: _TimeForMass

@final
class _TotalDoublings(Formula):
    """Doublings of several machines together.

    N = n₁ × n₂

    doublings_by_machine: ends fed together at each machine
    """

    def __call__(self, doublings_by_machine: _Plains) -> Quantity: ...
    def working(
        self,
        doublings_by_machine: _Plains,
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

    m_t = Q_f / (60 × n_c); q = m_t / m

    fibre_output: mass that the card delivers
    cylinder_speed: turns of the cylinder
    cylinder_load: fibre on the cylinder, all round
    """

    def __call__(
        self,
        fibre_output: _Measure,
        cylinder_speed: _Measure,
        cylinder_load: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        fibre_output: _Measure,
        cylinder_speed: _Measure,
        cylinder_load: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["fibre_output", "cylinder_speed", "cylinder_load"],
        *,
        transfer_coefficient: _Plain,
        fibre_output: _Measure = ...,
        cylinder_speed: _Measure = ...,
        cylinder_load: _Measure = ...,
    ) -> list[Quantity]: ...

transfer_coefficient: _TransferCoefficient

@final
class _TuftsInSample(Formula):
    """Tufts in a sample: or fibres, where the wool is opened to single ones.

    k = m_s / m_t

    sample_mass: mass of the sample
    tuft_mass: mean mass of a tuft
    """

    def __call__(self, sample_mass: _Measure, tuft_mass: _Measure) -> Quantity: ...
    def working(
        self,
        sample_mass: _Measure,
        tuft_mass: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["sample_mass", "tuft_mass"],
        *,
        tufts_in_sample: _Plain,
        sample_mass: _Measure = ...,
        tuft_mass: _Measure = ...,
    ) -> list[Quantity]: ...

tufts_in_sample: _TuftsInSample

@final
class _TurnsAtHead(Formula):
    """Turns of the spindle at the head, once the draft is over.

    z_h = z_t − z_d

    spindle_turns: all turns of the spindle in a draw
    drafting_turns: turns while drafting
    """

    def __call__(self, spindle_turns: _Plain, drafting_turns: _Plain) -> Quantity: ...
    def working(
        self,
        spindle_turns: _Plain,
        drafting_turns: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_turns", "drafting_turns"],
        *,
        turns_at_head: _Plain,
        spindle_turns: _Plain = ...,
        drafting_turns: _Plain = ...,
    ) -> list[Quantity]: ...

turns_at_head: _TurnsAtHead

@final
class _TurnsPerDraw(Formula):
    """Turns of the spindle in a draw for a wanted twist.

    z_t = (t × L_w + b_c) / (1 − x)

    twist: twist wanted
    wound_length: yarn wound in a draw
    coiling: turns spent in coiling to the spindle tip
    slip: slip of the band
    """

    def __call__(
        self,
        twist: _Measure,
        wound_length: _Measure,
        coiling: _Plain,
        slip: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        twist: _Measure,
        wound_length: _Measure,
        coiling: _Plain,
        slip: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["twist", "wound_length", "coiling", "slip"],
        *,
        turns_per_draw: _Plain,
        twist: _Measure = ...,
        wound_length: _Measure = ...,
        coiling: _Plain = ...,
        slip: _Plain = ...,
    ) -> list[Quantity]: ...

turns_per_draw: _TurnsPerDraw

@final
class _TurnsWhileDrafting(Formula):
    """Turns of the spindle while the carriage runs out.

    z_d = n × 60 × τ

    drafting_speed: mean spindle speed while drafting
    drafting_time: time of the run out
    """

    def __call__(self, drafting_speed: _Measure, drafting_time: _Measure) -> Quantity: ...
    def working(
        self,
        drafting_speed: _Measure,
        drafting_time: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["drafting_speed", "drafting_time"],
        *,
        turns_while_drafting: _Plain,
        drafting_speed: _Measure = ...,
        drafting_time: _Measure = ...,
    ) -> list[Quantity]: ...

turns_while_drafting: _TurnsWhileDrafting

@final
class _TwistConstant(Formula):
    """Twist constant of a machine: the twist that a train of wheels gives, a place of it open.

    i = a₁ / b₁ × a₂ / b₂; C_t = i × i_w / C

    whirl_ratio: turns of the spindle for one of the cylinder
    roller_circumference: circumference of the delivery roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

    def __call__(
        self,
        whirl_ratio: _Plain,
        roller_circumference: _Measure,
        drivers: _Plains,
        driven: _Plains,
    ) -> Quantity: ...
    def working(
        self,
        whirl_ratio: _Plain,
        roller_circumference: _Measure,
        drivers: _Plains,
        driven: _Plains,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["whirl_ratio", "roller_circumference"],
        *,
        twist_constant: _Measure,
        whirl_ratio: _Plain = ...,
        roller_circumference: _Measure = ...,
        drivers: _Plains = ...,
        driven: _Plains = ...,
    ) -> list[Quantity]: ...

twist_constant: _TwistConstant

@final
class _TwistFromTravellers(Formula):
    """Twist of a ring yarn from the speed of the traveller at two diameters of winding.

    n_s = (n₁ × d₁ − n₂ × d₂) / (d₁ − d₂); v = 3.14159265 × d₁ × (n_s − n₁); t = n_s / v

    speed_at_large: traveller speed at the large diameter
    large_diameter: large diameter
    speed_at_small: traveller speed at the small diameter
    small_diameter: small diameter
    """

    def __call__(
        self,
        speed_at_large: _Measure,
        large_diameter: _Measure,
        speed_at_small: _Measure,
        small_diameter: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        speed_at_large: _Measure,
        large_diameter: _Measure,
        speed_at_small: _Measure,
        small_diameter: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["speed_at_large", "large_diameter", "speed_at_small", "small_diameter"],
        *,
        twist_from_travellers: _Measure,
        speed_at_large: _Measure = ...,
        large_diameter: _Measure = ...,
        speed_at_small: _Measure = ...,
        small_diameter: _Measure = ...,
    ) -> list[Quantity]: ...

twist_from_travellers: _TwistFromTravellers

@final
class _TwistWheel(Formula):
    """The twist wheel that would give the wanted turns in a draw.

    z = z_t / p_t

    spindle_turns: turns of the spindle wanted
    turns_per_tooth: turns for each tooth of the wheel
    """

    def __call__(self, spindle_turns: _Plain, turns_per_tooth: _Plain) -> Quantity: ...
    def working(
        self,
        spindle_turns: _Plain,
        turns_per_tooth: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindle_turns", "turns_per_tooth"],
        *,
        twist_wheel: _Plain,
        spindle_turns: _Plain = ...,
        turns_per_tooth: _Plain = ...,
    ) -> list[Quantity]: ...

twist_wheel: _TwistWheel

@final
class _TwistWheelForNewCount(Formula):
    """The twist wheel for another count at the same twist factor, where twist falls as teeth rise.

    z₂ = z × √(T₂ / T)

    teeth: teeth of the wheel at hand
    count: count that it suits
    new_count: count to come
    """

    def __call__(self, teeth: _Plain, count: _Measure, new_count: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        count: _Measure,
        new_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "count", "new_count"],
        *,
        twist_wheel_for_new_count: _Plain,
        teeth: _Plain = ...,
        count: _Measure = ...,
        new_count: _Measure = ...,
    ) -> list[Quantity]: ...

twist_wheel_for_new_count: _TwistWheelForNewCount

@final
class _TwisterOutputSpeed(Formula):
    """Yarn that a twister delivers, all spindles together.

    v = k_n × n_s / t × η

    spindles: spindles
    spindle_speed: spindle speed
    twist: twist
    efficiency: efficiency
    """

    def __call__(
        self,
        spindles: _Plain,
        spindle_speed: _Measure,
        twist: _Measure,
        efficiency: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        spindles: _Plain,
        spindle_speed: _Measure,
        twist: _Measure,
        efficiency: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["spindles", "spindle_speed", "twist", "efficiency"],
        *,
        twister_output_speed: _Measure,
        spindles: _Plain = ...,
        spindle_speed: _Measure = ...,
        twist: _Measure = ...,
        efficiency: _Plain = ...,
    ) -> list[Quantity]: ...

twister_output_speed: _TwisterOutputSpeed

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

    m_a = m_d × (R₁ − R₂)

    oven_dry_mass: oven-dry mass of the goods
    regain_before: water in them before, on the dry mass
    regain_after: water in them after, on the dry mass
    """

    def __call__(
        self,
        oven_dry_mass: _Measure,
        regain_before: _Plain,
        regain_after: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        oven_dry_mass: _Measure,
        regain_before: _Plain,
        regain_after: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["oven_dry_mass", "regain_before", "regain_after"],
        *,
        water_to_dry: _Measure,
        oven_dry_mass: _Measure = ...,
        regain_before: _Plain = ...,
        regain_after: _Plain = ...,
    ) -> list[Quantity]: ...

water_to_dry: _WaterToDry

@final
class _WaterToFill(Formula):
    """Water to fill the bath up, beside what solutions and wet goods bring.

    V_w = V − (V_i₁ + V_i₂)

    liquor_volume: liquor wanted
    volumes_in: what is in it already: stock solutions, water in the goods
    """

    def __call__(self, liquor_volume: _Measure, volumes_in: _Measures) -> Quantity: ...
    def working(
        self,
        liquor_volume: _Measure,
        volumes_in: _Measures,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["liquor_volume"],
        *,
        water_to_fill: _Measure,
        liquor_volume: _Measure = ...,
        volumes_in: _Measures = ...,
    ) -> list[Quantity]: ...

water_to_fill: _WaterToFill

@final
class _WebMassPerArea(Formula):
    """Mass of the web that a condenser divides.

    ω = T_c × N / (1000 × b_w)

    slubbing_count: slubbing count
    ends: ends, good ones and edge ends
    web_width: width of the web
    """

    def __call__(self, slubbing_count: _Measure, ends: _Plain, web_width: _Measure) -> Quantity: ...
    def working(
        self,
        slubbing_count: _Measure,
        ends: _Plain,
        web_width: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["slubbing_count", "ends", "web_width"],
        *,
        web_mass_per_area: _Measure,
        slubbing_count: _Measure = ...,
        ends: _Plain = ...,
        web_width: _Measure = ...,
    ) -> list[Quantity]: ...

web_mass_per_area: _WebMassPerArea

@final
class _WeftInsertion(Formula):
    """Weft that a loom puts in, while it runs.

    v = r_l × B × (1 + c₂)

    loom_speed: picks in a minute
    reed_width: width that a pick crosses
    weft_crimp: crimp of the weft
    """

    def __call__(
        self,
        loom_speed: _Measure,
        reed_width: _Measure,
        weft_crimp: _Plain,
    ) -> Quantity: ...
    def working(
        self,
        loom_speed: _Measure,
        reed_width: _Measure,
        weft_crimp: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["loom_speed", "reed_width", "weft_crimp"],
        *,
        weft_insertion: _Measure,
        loom_speed: _Measure = ...,
        reed_width: _Measure = ...,
        weft_crimp: _Plain = ...,
    ) -> list[Quantity]: ...

weft_insertion: _WeftInsertion

@final
class _WheelForDraft(Formula):
    """The change wheel that would give a wanted draft, where draft falls as teeth rise.

    z = C_d / D

    draft_constant: draft constant: draft times teeth
    draft: draft wanted
    """

    def __call__(self, draft_constant: _Plain, draft: _Plain) -> Quantity: ...
    def working(
        self,
        draft_constant: _Plain,
        draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["draft_constant", "draft"],
        *,
        wheel_for_draft: _Plain,
        draft_constant: _Plain = ...,
        draft: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_draft: _WheelForDraft

@final
class _WheelForNewCount(Formula):
    """The change wheel for another count from the same feed, where draft falls as teeth rise.

    z₂ = z × T₂ / T

    teeth: teeth of the wheel at hand
    count: count that it gives
    new_count: count wanted
    """

    def __call__(self, teeth: _Plain, count: _Measure, new_count: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        count: _Measure,
        new_count: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "count", "new_count"],
        *,
        wheel_for_new_count: _Plain,
        teeth: _Plain = ...,
        count: _Measure = ...,
        new_count: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_count: _WheelForNewCount

@final
class _WheelForNewDraft(Formula):
    """The change wheel for another draft, where draft falls as teeth rise.

    z₂ = z × D / D₂

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    new_draft: draft wanted
    """

    def __call__(self, teeth: _Plain, draft: _Plain, new_draft: _Plain) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        draft: _Plain,
        new_draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "draft", "new_draft"],
        *,
        wheel_for_new_draft: _Plain,
        teeth: _Plain = ...,
        draft: _Plain = ...,
        new_draft: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_new_draft: _WheelForNewDraft

@final
class _WheelForNewDraftDirect(Formula):
    """The change wheel for another draft, where draft rises with the teeth.

    z₂ = z × D₂ / D

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    new_draft: draft wanted
    """

    def __call__(self, teeth: _Plain, draft: _Plain, new_draft: _Plain) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        draft: _Plain,
        new_draft: _Plain,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "draft", "new_draft"],
        *,
        wheel_for_new_draft_direct: _Plain,
        teeth: _Plain = ...,
        draft: _Plain = ...,
        new_draft: _Plain = ...,
    ) -> list[Quantity]: ...

wheel_for_new_draft_direct: _WheelForNewDraftDirect

@final
class _WheelForNewTwist(Formula):
    """The change wheel for another twist, where twist falls as teeth rise.

    z₂ = z × t / t₂

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    new_twist: twist wanted
    """

    def __call__(self, teeth: _Plain, twist: _Measure, new_twist: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        twist: _Measure,
        new_twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "twist", "new_twist"],
        *,
        wheel_for_new_twist: _Plain,
        teeth: _Plain = ...,
        twist: _Measure = ...,
        new_twist: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_twist: _WheelForNewTwist

@final
class _WheelForNewTwistDirect(Formula):
    """The change wheel for another twist, where twist rises with the teeth.

    z₂ = z × t₂ / t

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    new_twist: twist wanted
    """

    def __call__(self, teeth: _Plain, twist: _Measure, new_twist: _Measure) -> Quantity: ...
    def working(
        self,
        teeth: _Plain,
        twist: _Measure,
        new_twist: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["teeth", "twist", "new_twist"],
        *,
        wheel_for_new_twist_direct: _Plain,
        teeth: _Plain = ...,
        twist: _Measure = ...,
        new_twist: _Measure = ...,
    ) -> list[Quantity]: ...

wheel_for_new_twist_direct: _WheelForNewTwistDirect

@final
class _WhirlRatio(Formula):
    """Turns of a spindle for one of the cylinder that drives it by a band.

    i_w = (d_c + e) / (d_w + e)

    cylinder_diameter: diameter of the cylinder
    whirl_diameter: diameter of the whirl
    band_thickness: thickness of the band
    """

    def __call__(
        self,
        cylinder_diameter: _Measure,
        whirl_diameter: _Measure,
        band_thickness: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        cylinder_diameter: _Measure,
        whirl_diameter: _Measure,
        band_thickness: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["cylinder_diameter", "whirl_diameter", "band_thickness"],
        *,
        whirl_ratio: _Plain,
        cylinder_diameter: _Measure = ...,
        whirl_diameter: _Measure = ...,
        band_thickness: _Measure = ...,
    ) -> list[Quantity]: ...

whirl_ratio: _WhirlRatio

@final
class _WoundLength(Formula):
    """Yarn wound on in a draw.

    L_w = S − i_c

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

    m_y = (0 if n_p < 0.5, else m_0 + n_p × m_p)

    pieces: pieces
    fixed_mass: needed once, however many pieces
    mass_per_piece: needed for each piece
    """

    def __call__(
        self,
        pieces: _Plain,
        fixed_mass: _Measure,
        mass_per_piece: _Measure,
    ) -> Quantity: ...
    def working(
        self,
        pieces: _Plain,
        fixed_mass: _Measure,
        mass_per_piece: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["pieces", "fixed_mass", "mass_per_piece"],
        *,
        yarn_for_pieces: _Measure,
        pieces: _Plain = ...,
        fixed_mass: _Measure = ...,
        mass_per_piece: _Measure = ...,
    ) -> list[Quantity]: ...

yarn_for_pieces: _YarnForPieces

@final
class _YieldOfEqualCharge(Formula):
    """Yield at which a tariff for what is sent in and one for what comes out charge alike; below it
    the one for what comes out is the cheaper for the owner.

    y = c₁ / c₂

    tariff_in: tariff for a kilogram sent in
    tariff_out: tariff for a kilogram that comes out
    """

    def __call__(self, tariff_in: _Measure, tariff_out: _Measure) -> Quantity: ...
    def working(
        self,
        tariff_in: _Measure,
        tariff_out: _Measure,
        *,
        at: int | tuple[int, ...] | None = None,
    ) -> Working: ...
    def solve(
        self,
        unknown: Literal["tariff_in", "tariff_out"],
        *,
        yield_of_equal_charge: _Plain,
        tariff_in: _Measure = ...,
        tariff_out: _Measure = ...,
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
