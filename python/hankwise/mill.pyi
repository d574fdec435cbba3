"""Losses, oil, card, mule, twister, loom, gearing, time and money."""

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
)

@_as_formula
def break_even_lot(fixed_cost: _Plain, margin_per_mass: _Measure) -> Quantity:
    """Smallest lot that pays its fixed cost.

    m = (k_f / g if 0 < g, else no answer)

    fixed_cost: cost once for the lot: clean-down, setting up
    margin_per_mass: price less cost of a kilogram
    """

@_as_formula
def break_even_lot_with_hold_up(
    fixed_cost: _Plain,
    cost_per_mass: _Measure,
    loss: _Plain,
    held_up: _Measure,
    price_per_mass: _Measure,
) -> Quantity:
    """Smallest lot that pays its fixed cost and the fibre that the machines keep.

    g = (1 − w) × p − c_m; m = ((k_f + h × p) / g if 0 < g, else no answer)

    fixed_cost: cost once for the lot: clean-down, setting up
    cost_per_mass: cost of a kilogram taken in, wool and work
    loss: share lost
    held_up: mass held up
    price_per_mass: price of a kilogram that comes out
    """

@_as_formula
def card_output(ends: _Plain, delivery_speed: _Measure, slubbing_count: _Measure) -> Quantity:
    """What the card delivers in an hour.

    Q = N × v × T_c × 0.00006

    ends: good ends
    delivery_speed: delivery
    slubbing_count: slubbing count
    """

@_as_formula
def carried_mass(fibre_mass: _Measure, held_up: _Measure) -> Quantity:
    """Fibre of the lot before that comes off while a mass of the new lot goes through.

    m_c = h × (1 − exp(−(f / h)))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

@_as_formula
def carried_share(fibre_mass: _Measure, held_up: _Measure) -> Quantity:
    """How much of the lot before still comes off a machine after a mass of the new lot has gone
    through it.

    x = exp(−(f / h))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

@_as_formula
def charge_for_mass(mass: _Measure, tariff: _Measure, minimum_charge: _Plain) -> Quantity:
    """Charge for a mass by its tariff, no less than the minimum for a lot.

    k_m = greater of (m × c, k₀)

    mass: mass charged
    tariff: tariff for a kilogram
    minimum_charge: least charge for a lot
    """

@_as_formula
def charge_for_rejects(
    mass_in: _Measure,
    rejects: _Plain,
    free_rejects: _Plain,
    reject_charge: _Measure,
) -> Quantity:
    """Charge for putting away sorting rejects beyond the share that is free.

    k_m = greater of (r_j − r₀, 0) × m_i × c

    mass_in: incoming mass
    rejects: share rejected in sorting
    free_rejects: share that is free
    reject_charge: charge for a kilogram beyond it
    """

@_as_formula
def clearing_fibre(held_up: _Measure, carried_share: _Plain) -> Quantity:
    """Fibre to send through a machine until no more than a share of the lot before comes off.

    f = −h × ln(x)

    held_up: clean dry fibre held up
    carried_share: share of the lot before that may remain
    """

@_as_formula
def component_share(carrying_ends: _Plains, fed_ends: _Plains) -> Quantity:
    """Share of a component after it was fed, machine after machine, beside others.

    p = a₁ / N₁ × a₂ / N₂

    carrying_ends: ends that carry the component, at each machine
    fed_ends: all ends fed, at each machine
    """

@_as_formula
def concentration_after_change(
    concentration_before: _Measure,
    volume_before: _Measure,
    volume_after: _Measure,
) -> Quantity:
    """Concentration after the volume of the bath has changed: filled up, or boiled down.

    c₂ = c₁ × V₁ / V₂

    concentration_before: concentration before
    volume_before: volume before
    volume_after: volume after
    """

@_as_formula
def concentration_from_mass(dissolved_mass: _Measure, liquor_volume: _Measure) -> Quantity:
    """Concentration of what is dissolved in a volume of liquor.

    c = 1000 × a / V

    dissolved_mass: mass dissolved
    liquor_volume: liquor
    """

@_as_formula
def corrected_weigh(
    hopper_weigh: _Measure,
    wanted_slubbing_count: _Measure,
    slubbing_count: _Measure,
) -> Quantity:
    """The new hopper weigh after the slubbing was found heavy or light.

    m₂ = m_w × T_w / T_c

    hopper_weigh: hopper weigh as it is
    wanted_slubbing_count: slubbing count wanted
    slubbing_count: slubbing count found
    """

@_as_formula
def cost_after_stage(
    cost_per_mass: _Measure,
    stage_cost_per_mass: _Measure,
    loss: _Plain,
) -> Quantity:
    """Cost of a kilogram after a lossy stage.

    c₂ = (c_m + c_s) / (1 − w)

    cost_per_mass: cost of a kilogram that goes in
    stage_cost_per_mass: cost of the stage for a kilogram that goes in
    loss: share lost
    """

@_as_formula
def cost_after_stage_less_waste(
    cost_per_mass: _Measure,
    stage_cost_per_mass: _Measure,
    loss: _Plain,
    sold_share: _Plain,
    waste_price_per_mass: _Measure,
) -> Quantity:
    """Cost of a kilogram after a lossy stage whose waste is sold.

    c₂ = (c_m + c_s − s × p_w) / (1 − w)

    cost_per_mass: cost of a kilogram that goes in
    stage_cost_per_mass: cost of the stage for a kilogram that goes in
    loss: share lost
    sold_share: share of what goes in that is sold as waste
    waste_price_per_mass: what a kilogram of the waste sells for
    """

@_as_formula
def cost_of_an_hour(output: _Measure, cost_per_mass: _Measure) -> Quantity:
    """What an hour comes to at a mass in the hour.

    k_h = Q × c_m

    output: mass in an hour
    cost_per_mass: cost, or value, of a kilogram
    """

@_as_formula
def cost_of_mass(mass: _Measure, price_per_mass: _Measure) -> Quantity:
    """What a mass comes to at a price.

    k_m = m × p

    mass: mass
    price_per_mass: price of a kilogram
    """

@_as_formula
def cost_of_time(time: _Measure, hourly_cost: _Plain) -> Quantity:
    """Cost of running a machine for a time.

    k_m = τ × k_h

    time: running time
    hourly_cost: cost of an hour
    """

@_as_formula
def cost_share(joint_cost: _Plain, fibre_mass: _Measure, total_fibre_mass: _Measure) -> Quantity:
    """A product's share of a joint cost, by the clean dry fibre in it.

    k_m = k_j × f / f_t

    joint_cost: joint cost
    fibre_mass: clean dry fibre in the product
    total_fibre_mass: clean dry fibre in all products
    """

@_as_formula
def cost_through_losses(price_per_mass: _Measure, losses: _Plains) -> Quantity:
    """What a kilogram that comes out has cost to buy, through a chain of losses.

    c₂ = p / (1 − w₁) / (1 − w₂)

    price_per_mass: price of a kilogram taken in
    losses: losses of the stages in order
    """

@_as_formula
def costs_of_sales(costs_on_sales: _Plains) -> Quantity:
    """Costs together, as a share of sales.

    K = k₁ + k₂

    costs_on_sales: each cost, on sales
    """

@_as_formula
def count_for_new_draft(count: _Measure, draft: _Plain, new_draft: _Plain) -> Quantity:
    """Count after the draft alone was changed.

    T₂ = T × D / D₂

    count: count before
    draft: draft before
    new_draft: draft after
    """

@_as_formula
def count_through_drafts(
    fed_count: _Measure,
    total_doublings: _Plain,
    loss: _Plain,
    drafts: _Plains,
) -> Quantity:
    """Count that comes out of drafts, with the ends fed together and what is lost on the way.

    D = d₁ × d₂; T_o = T_i × N × (1 − w) / D

    fed_count: count fed, of one end
    total_doublings: doublings of all machines together
    loss: share lost on the way
    drafts: draft of each machine or zone
    """

@_as_formula
def delivered_length(delivered_per_tooth: _Measure, teeth: _Plain) -> Quantity:
    """Slubbing delivered in a draw with a delivery wheel.

    L_d = p_d × z

    delivered_per_tooth: slubbing delivered for each tooth of the wheel
    teeth: teeth of the wheel
    """

@_as_formula
def delivery_for_draft(travel: _Measure, draft: _Plain) -> Quantity:
    """Slubbing to deliver in a draw of the mule for a draft.

    L_d = S / D

    travel: travel of the carriage
    draft: draft
    """

@_as_formula
def delivery_for_twist(
    spindle_speed: _Measure,
    turns_per_revolution: _Plain,
    twist: _Measure,
) -> Quantity:
    """Delivery of a spindle for a twist.

    v = q × n_s / t

    spindle_speed: spindle speed
    turns_per_revolution: turns of twist in a revolution
    twist: twist
    """

@_as_formula
def delivery_wheel(travel: _Measure, draft: _Plain, delivered_per_tooth: _Measure) -> Quantity:
    """The delivery wheel that would give a wanted draft.

    z = S / D / p_d

    travel: travel of the carriage
    draft: draft wanted
    delivered_per_tooth: slubbing delivered for each tooth of the wheel
    """

@_as_formula
def doff_interval(spindles: _Plain, package_mass: _Measure, output: _Measure) -> Quantity:
    """Time from one doff to the next.

    τ = k_n × g / Q

    spindles: spindles
    package_mass: yarn on a full package
    output: output, all spindles together
    """

@_as_formula
def doffs(yarn_mass: _Measure, spindles: _Plain, package_mass: _Measure) -> Quantity:
    """Times that all spindles are doffed for a mass of yarn; the last doff may not be full.

    D = round up(m_y / (k_n × g))

    yarn_mass: yarn to make
    spindles: spindles
    package_mass: yarn on a full package
    """

@_as_formula
def draft_constant(
    front_roller_diameter: _Measure,
    back_roller_diameter: _Measure,
    drivers: _Plains,
    driven: _Plains,
) -> Quantity:
    """Draft constant of a pair of rollers: the draft that the train between them gives, a place of
    it open.

    i = a₁ / b₁ × a₂ / b₂; C_d = d_f / d_b × i

    front_roller_diameter: diameter of the front roller
    back_roller_diameter: diameter of the back roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

@_as_formula
def draft_from_wheel(draft_constant: _Plain, teeth: _Plain) -> Quantity:
    """Draft that a change wheel gives, where draft falls as teeth rise.

    D = C_d / z

    draft_constant: draft constant: draft times teeth
    teeth: teeth of the wheel
    """

@_as_formula
def draft_of_counts(fed_count: _Measure, delivered_count: _Measure, doublings: _Plain) -> Quantity:
    """Draft that makes one count of another, with the ends fed together.

    D = T_i × n_d / T_o

    fed_count: count fed, of one end
    delivered_count: count delivered
    doublings: ends fed together
    """

@_as_formula
def draw_rate(cycle: _Measure) -> Quantity:
    """Draws of the mule in a minute.

    r = 1 / (60 × τ_d)

    cycle: time of a draw, out and in
    """

@_as_formula
def draws(yarn_length: _Measure, spindles: _Plain, wound_length: _Measure) -> Quantity:
    """Draws for a length of yarn.

    N = Y / (k_n × L_w)

    yarn_length: yarn to spin, all spindles together
    spindles: spindles at work
    wound_length: yarn wound in a draw
    """

@_as_formula
def drums_needed(yarn_mass: _Measure, drum_mass: _Measure) -> Quantity:
    """Drums for a mass in a time, not yet rounded up to whole ones.

    k = m_y / m_k

    yarn_mass: mass to wind
    drum_mass: mass that a drum winds in that time
    """

@_as_formula
def dye_left(dye_mass: _Measure, exhaustion: _Plain) -> Quantity:
    """Dye left in the bath when a share of it is on the goods.

    d_l = d × (1 − E)

    dye_mass: dye put in
    exhaustion: exhaustion: share of it on the goods
    """

@_as_formula
def dye_mass(goods_mass: _Measure, depth: _Plain, dye_strength: _Plain) -> Quantity:
    """Dye or auxiliary to weigh out, from its share of the mass of the goods.

    d = m_g × p / s_d

    goods_mass: goods, in the state that the recipe means
    depth: depth: share of the mass of the goods
    dye_strength: strength of the product, on that of the standard
    """

@_as_formula
def edge_share(ends: _Plain, edge_ends: _Plain) -> Quantity:
    """Share of the web that goes into the edge ends.

    E = N_e / (N + N_e)

    ends: good ends
    edge_ends: edge ends, all together
    """

@_as_formula
def efficiency_from_output(made_amount: _Plain, calculated_amount: _Plain) -> Quantity:
    """Efficiency: what was made over what would be made without a stop.

    η = a / c

    made_amount: made
    calculated_amount: calculated, without a stop
    """

@_as_formula
def efficiency_with_stops(stop_rate: _Measure, stop_time: _Measure) -> Quantity:
    """Efficiency of a machine that stops so often in an hour of running.

    s = 60 × f_s × τ_s; η = 1 / (1 + s)

    stop_rate: stops, while it runs
    stop_time: time of a stop
    """

@_as_formula
def efficiency_with_stops_of_picks(
    stops_per_100000_picks: _Plain,
    stop_time: _Measure,
    loom_speed: _Measure,
) -> Quantity:
    """Efficiency of a loom from its stops in a hundred thousand picks.

    τ_r = 100000 / (60 × r_l); η = τ_r / (τ_r + s × τ_s)

    stops_per_100000_picks: stops in a hundred thousand picks
    stop_time: time of a stop
    loom_speed: picks in a minute, running
    """

@_as_formula
def emulsion_mass(oil_mass: _Measure, oil_in_emulsion: _Plain) -> Quantity:
    """Emulsion that brings a wanted mass of oil.

    E = a / x

    oil_mass: oil wanted on the wool
    oil_in_emulsion: oil as a share of the emulsion
    """

@_as_formula
def end_break_rate(breaks: _Plain, spindles: _Plain, time: _Measure) -> Quantity:
    """Ends that break, for a thousand spindles running an hour.

    e_b = 1000 × b / (k_n × τ)

    breaks: ends broken
    spindles: spindles
    time: time
    """

@_as_formula
def ends_in_sections(ends_per_section: _Plain, sections: _Plain) -> Quantity:
    """Ends of a warp that is made in full sections.

    N = N_s × S

    ends_per_section: ends in a section: the bobbins in the creel
    sections: sections
    """

@_as_formula
def exhaustion_from_baths(
    concentration_before: _Measure,
    volume_before: _Measure,
    concentration_after: _Measure,
    volume_after: _Measure,
) -> Quantity:
    """Exhaustion, from the bath before and after.

    E = 1 − c₂ × V₂ / (c₁ × V₁)

    concentration_before: concentration of the dye before
    volume_before: bath before
    concentration_after: concentration of the dye after
    volume_after: bath after
    """

@_as_formula
def false_twist(
    yarn_turning_speed: _Measure,
    delivery_speed: _Measure,
    twist_efficiency: _Plain,
) -> Quantity:
    """Twist that a yarn has while a false twister turns it.

    t = n_y × η / v

    yarn_turning_speed: turns of the yarn in a minute
    delivery_speed: delivery
    twist_efficiency: share of the turns that the yarn takes on
    """

@_as_formula
def fat_after_oiling(fat_before: _Plain, oil_added: _Plain) -> Quantity:
    """Grease and oil on clean dry fibre after oiling.

    o₂ = o₁ + o_a

    fat_before: grease and oil on it before
    oil_added: oil put on, on clean dry fibre
    """

@_as_formula
def fat_after_washes(fat_before: _Plain, removed_shares: _Plains) -> Quantity:
    """Grease and oil left on clean dry fibre after washes that each take a share of it away.

    o₂ = o₁ × (1 − g₁) × (1 − g₂)

    fat_before: grease and oil before
    removed_shares: share that each wash takes of what it meets
    """

@_as_formula
def fed_count(
    delivered_count: _Measure,
    doublings: _Plain,
    loss: _Plain,
    draft: _Plain,
) -> Quantity:
    """Count to feed for a wanted count, through a draft.

    T_i = T_o × D / (n_d × (1 − w))

    delivered_count: count wanted
    doublings: ends fed together
    loss: share lost on the way
    draft: draft
    """

@_as_formula
def feed_rate(fibre_output: _Measure, loss: _Plain, state_ratio: _Plain) -> Quantity:
    """What must be fed, as weighed, for a delivery of clean dry fibre.

    Q_i = Q_f / (1 − w) × s_m

    fibre_output: clean dry fibre delivered
    loss: share lost in the card
    state_ratio: mass for each unit of clean dry fibre at the hopper
    """

@_as_formula
def full_packages(yarn_mass: _Measure, package_mass: _Measure) -> Quantity:
    """Full packages that a mass of yarn makes; what is over fills no other.

    p = round down(m_y / g)

    yarn_mass: yarn wound
    package_mass: yarn on a full package
    """

@_as_formula
def full_packages_in_step(
    yarn_mass: _Measure,
    spindles: _Plain,
    package_mass: _Measure,
) -> Quantity:
    """Full packages of spindles that work in step: all of a doff are full, or none.

    D_f = round down(m_y / (k_n × g)); p = k_n × D_f

    yarn_mass: yarn to make
    spindles: spindles
    package_mass: yarn on a full package
    """

@_as_formula
def full_pieces(mass: _Measure, mass_per_piece: _Measure) -> Quantity:
    """Whole pieces out of a mass.

    n_p = round down(m / m_p)

    mass: mass at hand
    mass_per_piece: mass for each piece
    """

@_as_formula
def hank_rate(winding_speed: _Measure, efficiency: _Plain, hank_length: _Measure) -> Quantity:
    """Hanks that a drum winds in an hour.

    q_h = 60 × v × η / l_h

    winding_speed: winding speed
    efficiency: efficiency
    hank_length: length of a hank
    """

@_as_formula
def hank_rate_from_mass(
    yarn_mass: _Measure,
    count: _Measure,
    hank_length: _Measure,
    time: _Measure,
    drums: _Plain,
) -> Quantity:
    """Hanks that a drum has wound in an hour, from what all have wound.

    N = 1000000 × m_y / (T × l_h); q_h = N / (τ × k_n)

    yarn_mass: mass of yarn
    count: count
    hank_length: length of a hank
    time: time
    drums: drums at work
    """

@_as_formula
def hanks_of_spindle(
    spindle_speed: _Measure,
    twist: _Measure,
    time: _Measure,
    efficiency: _Plain,
    hank_length: _Measure,
) -> Quantity:
    """Hanks that a spindle delivers in a time.

    h = 60 × n_s × τ × η / (t × l_h)

    spindle_speed: spindle speed
    twist: twist
    time: time
    efficiency: efficiency
    hank_length: length of a hank
    """

@_as_formula
def head_time(head_turns: _Plain, head_speed: _Measure) -> Quantity:
    """Time that the carriage is at the head for the turns put in there.

    τ_h = z_h / (60 × n)

    head_turns: turns at the head
    head_speed: spindle speed at the head
    """

@_as_formula
def hopper_weigh(feed_rate: _Measure, drop_rate: _Measure) -> Quantity:
    """What the hopper weighs for each drop.

    m_w = Q_i / (60 × f_d)

    feed_rate: mass fed, as weighed
    drop_rate: drops
    """

@_as_formula
def layered_share_deviation(component_share: _Plain, layers: _Plain, layer_cv: _Plain) -> Quantity:
    """How far the share of a component differs from place to place in a stack taken down from top
    to bottom.

    σ = p × (1 − p) × CV_l × √(2 / n)

    component_share: share of the component in the blend
    layers: layers of each component
    layer_cv: coefficient of variation of a layer's thickness from place to place
    """

@_as_formula
def layers_for_deviation(component_share: _Plain, share_sd: _Plain, layer_cv: _Plain) -> Quantity:
    """Layers of each component that keep the share within a standard deviation, in whole layers.

    n = round up(2 × (p × (1 − p) × CV_l / σ)²)

    component_share: share of the component in the blend
    share_sd: standard deviation wanted of the share, from place to place
    layer_cv: coefficient of variation of a layer's thickness from place to place
    """

@_as_formula
def left_after_rinses(carried_volume: _Measure, rinse_volumes: _Measures) -> Quantity:
    """Share of what is dissolved in the carried liquor that is left after rinses, each well mixed.

    x = V_c / (V_c + V₁) × V_c / (V_c + V₂)

    carried_volume: liquor that the goods carry into each rinse
    rinse_volumes: clean water of each rinse
    """

@_as_formula
def left_at_stop(held_up: _Measure, within: _Plain) -> Quantity:
    """Fibre that does not become slubbing of its count once the feed of a machine stops.

    e = h × (1 − x)

    held_up: clean dry fibre held up
    within: how near to the full count it has to be
    """

@_as_formula
def length_after_stretches(length_before: _Measure, stretches: _Plains) -> Quantity:
    """Length of a warp after it was stretched, machine after machine.

    L = L₀ × (1 + e₁) × (1 + e₂)

    length_before: length before
    stretches: stretch at each machine
    """

@_as_formula
def length_wound(winding_speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity:
    """Length that a drum winds in a time.

    Y = 60 × v × τ × η

    winding_speed: winding speed
    time: time
    efficiency: efficiency
    """

@_as_formula
def liquor_carried(oven_dry_mass: _Measure, pickup: _Plain, liquor_density: _Measure) -> Quantity:
    """Liquor that squeezed or drained goods carry to the next bowl.

    V_c = m_d × p / ρ

    oven_dry_mass: dry goods
    pickup: liquor left on them, on the dry mass
    liquor_density: density of the liquor
    """

@_as_formula
def liquor_volume(goods_mass: _Measure, liquor_ratio: _Plain) -> Quantity:
    """Liquor for a mass of goods, from the liquor ratio.

    V = m_g × r

    goods_mass: goods
    liquor_ratio: litres of liquor for a kilogram of goods
    """

@_as_formula
def load_time(loads: _Plain, time_per_load: _Measure, change_time: _Measure) -> Quantity:
    """Time of a machine for a number of loads.

    τ = n × (τ_r + τ_c)

    loads: loads
    time_per_load: running time of a load
    change_time: time to empty and fill
    """

@_as_formula
def loads_for_mass(goods_mass: _Measure, load_mass: _Measure) -> Quantity:
    """Loads of a machine for a mass of goods.

    n = round up(m_g / g_l)

    goods_mass: mass of the goods
    load_mass: mass of the largest load
    """

@_as_formula
def loom_delivery_speed(loom_speed: _Measure, weft_sett: _Measure, efficiency: _Plain) -> Quantity:
    """Cloth that a loom weaves.

    v = r_l × η / (100 × n₂)

    loom_speed: picks in a minute
    weft_sett: picks in the cloth
    efficiency: efficiency
    """

@_as_formula
def loom_time(picks: _Plain, loom_speed: _Measure, efficiency: _Plain) -> Quantity:
    """Time of a loom for a number of picks.

    τ = P / (60 × r_l × η)

    picks: picks to weave
    loom_speed: picks in a minute
    efficiency: efficiency
    """

@_as_formula
def looms_for_weaver(
    stop_rate: _Measure,
    attention_time: _Measure,
    efficiency: _Plain,
    work_load: _Plain,
) -> Quantity:
    """Looms that a weaver can mind, not yet rounded down.

    k = ψ / (60 × f_s × η × τ_a)

    stop_rate: stops of a loom, while it runs
    attention_time: weaver's time for a stop
    efficiency: efficiency of the loom
    work_load: share of the weaver's time for it
    """

@_as_formula
def loss_with_return(loss: _Plain, returned_share: _Plain) -> Quantity:
    """Share of a lot that is lost for good where part of each pass is put back on the feed.

    w_L = w / (1 − e)

    loss: share of a pass that is lost for good
    returned_share: share of a pass that is put back
    """

@_as_formula
def lot_loss(fibre_mass: _Measure, loss: _Plain, held_up: _Measure) -> Quantity:
    """What a lot loses in a machine that loses a share and keeps a fixed mass.

    w_L = w + h / f

    fibre_mass: clean dry fibre of the lot
    loss: share lost, however large the lot
    held_up: clean dry fibre that the machine keeps
    """

@_as_formula
def lot_surplus(
    mass_in: _Measure,
    cost_per_mass: _Measure,
    fixed_cost: _Plain,
    loss: _Plain,
    held_up: _Measure,
    price_per_mass: _Measure,
) -> Quantity:
    """What a lot leaves: what comes out of it sold, less what it cost by its mass and once.

    m_o = greater of (m_i × (1 − w) − h, 0); s = m_o × p − m_i × c_m − k_f

    mass_in: mass taken in
    cost_per_mass: cost of a kilogram taken in, wool and work
    fixed_cost: cost once for the lot: clean-down, setting up
    loss: share lost
    held_up: mass held up
    price_per_mass: price of a kilogram that comes out
    """

@_as_formula
def mark_up_of_margin(margin: _Plain) -> Quantity:
    """The mark-up on cost that leaves a margin on the price.

    u = g / (1 − g)

    margin: margin, on the price
    """

@_as_formula
def mass_after_loss(mass_in: _Measure, loss: _Plain, held_up: _Measure) -> Quantity:
    """What comes out of a stage that loses a share and keeps a fixed mass.

    m_o = m_i × (1 − w) − h

    mass_in: mass in
    loss: share lost
    held_up: mass held up
    """

@_as_formula
def mass_after_losses(mass_in: _Measure, losses: _Plains) -> Quantity:
    """What comes out of a chain of lossy stages.

    m_o = m_i × (1 − w₁) × (1 − w₂)

    mass_in: mass in
    losses: losses of the stages in order
    """

@_as_formula
def mass_before_loss(mass_out: _Measure, loss: _Plain, held_up: _Measure) -> Quantity:
    """What must go into a stage for a mass to come out.

    m_i = (m_o + h) / (1 − w)

    mass_out: mass wanted
    loss: share lost
    held_up: mass held up
    """

@_as_formula
def mass_before_losses(mass_out: _Measure, losses: _Plains) -> Quantity:
    """What must go into a chain of lossy stages.

    m_i = m_o / (1 − w₁) / (1 − w₂)

    mass_out: mass wanted
    losses: losses of the stages in order
    """

@_as_formula
def mass_in_liquor(liquor_volume: _Measure, concentration: _Measure) -> Quantity:
    """Mass of what is dissolved in a volume of liquor.

    a = V × c / 1000

    liquor_volume: liquor
    concentration: mass in a volume
    """

@_as_formula
def mass_of_spindle(
    roller_speed: _Measure,
    roller_circumference: _Measure,
    time: _Measure,
    efficiency: _Plain,
    count: _Measure,
) -> Quantity:
    """Mass of yarn that a spindle delivers in a time, from its front roller.

    Y = 60 × n × τ × C × η; m = Y × T / 1000000

    roller_speed: speed of the front roller
    roller_circumference: circumference of the front roller
    time: time
    efficiency: efficiency
    count: count of the yarn delivered
    """

@_as_formula
def mass_to_add(fibre_mass: _Measure, share_to_add: _Plain) -> Quantity:
    """Oil or water to put on clean dry fibre.

    a = f × o

    fibre_mass: clean dry fibre
    share_to_add: share to add, on clean dry fibre
    """

@_as_formula
def mass_wound(
    winding_speed: _Measure,
    time: _Measure,
    efficiency: _Plain,
    count: _Measure,
) -> Quantity:
    """Mass that a drum winds in a time.

    Y = 60 × v × τ × η; m = Y × T / 1000000

    winding_speed: winding speed
    time: time
    efficiency: efficiency
    count: count
    """

@_as_formula
def mean_carried_share(fibre_mass: _Measure, held_up: _Measure) -> Quantity:
    """Share of the lot before in all that comes off while a mass of the new lot goes through.

    X = h / f × (1 − exp(−(f / h)))

    fibre_mass: clean dry fibre gone through
    held_up: clean dry fibre held up
    """

@_as_formula
def mule_draft(travel: _Measure, delivered_length: _Measure) -> Quantity:
    """Draft of the mule: travel over slubbing delivered.

    D = S / L_d

    travel: travel of the carriage
    delivered_length: slubbing delivered in a draw
    """

@_as_formula
def mule_output(
    spindles: _Plain,
    wound_length: _Measure,
    cycle: _Measure,
    count: _Measure,
    efficiency: _Plain,
) -> Quantity:
    """What the mule spins in an hour.

    Q = k_n × L_w × T / 1000000 / τ_d × η

    spindles: spindles
    wound_length: yarn wound in a draw
    cycle: time of a draw
    count: count of the single
    efficiency: efficiency
    """

@_as_formula
def mule_twist(
    spindle_turns: _Plain,
    slip: _Plain,
    coiling: _Plain,
    wound_length: _Measure,
) -> Quantity:
    """Twist that the mule puts in.

    t = (z_t × (1 − x) − b_c) / L_w

    spindle_turns: turns of the spindle in a draw
    slip: slip of the band
    coiling: turns spent in coiling to the spindle tip
    wound_length: yarn wound in a draw
    """

@_as_formula
def net_draft(total_doublings: _Plain, drafts: _Plains) -> Quantity:
    """How many times finer the yarn is than one end of what was fed first: drafts over doublings.

    D = d₁ × d₂ / N

    total_doublings: doublings of all machines together
    drafts: draft of each machine or zone
    """

@_as_formula
def off_count_mass(held_up: _Measure, within: _Plain) -> Quantity:
    """Slubbing that is under its count while an empty machine fills.

    u = h × (x − 1 − ln(x))

    held_up: clean dry fibre held up
    within: how near to the full count it has to be
    """

@_as_formula
def output_of_yarn(output_speed: _Measure, count: _Measure) -> Quantity:
    """Mass of yarn in an hour, from the length delivered in a minute.

    Q = 0.00006 × v × T

    output_speed: yarn delivered
    count: count
    """

@_as_formula
def pass_loss(dropped_share: _Plain, edge_share: _Plain) -> Quantity:
    """Share of what a card is fed that does not come off as good slubbing, in one pass.

    u = 1 − (1 − w_d) × (1 − E)

    dropped_share: share that falls out as waste
    edge_share: share of the web in the edge ends
    """

@_as_formula
def passage_time(
    cloth_length: _Measure,
    cloth_speed: _Measure,
    passages: _Plain,
    change_time: _Measure,
) -> Quantity:
    """Time of cloth that runs through a machine, several times if need be.

    τ_r = L / (60 × v); τ = n × (τ_r + τ_c)

    cloth_length: length of the cloth
    cloth_speed: speed of the cloth
    passages: passages
    change_time: time for a passage beside running: sewing on, threading
    """

@_as_formula
def people_needed(machines: _Plain, per_person: _Plain) -> Quantity:
    """People for a number of machines or spindles.

    p = round up(k / a_p)

    machines: machines, spindles or drums
    per_person: of them for each person
    """

@_as_formula
def person_hours(time: _Measure, people: _Plain) -> Quantity:
    """Hours of people at a machine.

    τ_p = τ × p

    time: running time
    people: people at the machine
    """

@_as_formula
def picks_in_time(loom_speed: _Measure, time: _Measure, efficiency: _Plain) -> Quantity:
    """Picks that a loom puts in in a time.

    P = 60 × r_l × τ × η

    loom_speed: picks in a minute
    time: time
    efficiency: efficiency
    """

@_as_formula
def pieces_from_mass(
    yarn_mass: _Measure,
    fixed_mass: _Measure,
    mass_per_piece: _Measure,
) -> Quantity:
    """Pieces that a mass of yarn makes, not yet rounded down to whole ones.

    n_p = greater of ((m_y − m_0) / m_p, 0)

    yarn_mass: yarn at hand
    fixed_mass: needed once, however many pieces
    mass_per_piece: needed for each piece
    """

@_as_formula
def price_at_margin(cost: _Plain, margin: _Plain) -> Quantity:
    """Price that leaves a margin, which is a share of the price.

    p = k_m / (1 − g)

    cost: whole cost
    margin: margin, on the price
    """

@_as_formula
def price_at_mark_up(cost: _Plain, mark_up: _Plain) -> Quantity:
    """Price with a mark-up, which is a share of the cost.

    p = k_m × (1 + u)

    cost: whole cost
    mark_up: mark-up, on the cost
    """

@_as_formula
def profit_of_sales(costs_on_sales: _Plains) -> Quantity:
    """Profit that costs leave, as a margin on sales.

    g = 1 − k₁ − k₂

    costs_on_sales: each cost, on sales
    """

@_as_formula
def quality_premium(quality_steps: _Plains, step_values: _Measures) -> Quantity:
    """What better fibre is worth, from steps of quality and the value of a step: a millimetre of
    hauteur, a micrometre, a newton a kilotex.

    c = n₁ × v₁ + n₂ × v₂

    quality_steps: steps of each quality
    step_values: value of a step of each, for a kilogram
    """

@_as_formula
def random_share_deviation(component_share: _Plain, tufts: _Plain) -> Quantity:
    """Deviation of the share between samples of a blend mixed as well as chance does: the binomial
    bound.

    σ_b = √(p × (1 − p) / k)

    component_share: share of the component in the blend
    tufts: tufts in the sample
    """

@_as_formula
def realisation(mass_out: _Measure, mass_in: _Measure) -> Quantity:
    """Goods made as a share of the material taken in, both on clean dry fibre.

    y = m_o / m_i

    mass_out: made
    mass_in: taken in
    """

@_as_formula
def reel_doffs(hanks: _Plain, positions: _Plain) -> Quantity:
    """Doffs of a reel for a number of hanks; the last may not be full.

    D = round up(h / p)

    hanks: hanks to reel
    positions: hanks reeled side by side
    """

@_as_formula
def reeling_time(
    doffs: _Plain,
    reel_turns: _Plain,
    reel_speed: _Measure,
    change_time: _Measure,
) -> Quantity:
    """Time of a reel for a number of doffs.

    τ_r = z_r / (60 × n_r); τ = D × (τ_r + τ_c)

    doffs: doffs
    reel_turns: turns of the reel for a hank
    reel_speed: speed of the reel
    change_time: time between doffs: tying, lacing, taking off, piecing up
    """

@_as_formula
def regain_after_wetting(regain_before: _Plain, water_added: _Plain) -> Quantity:
    """Water on clean dry fibre after wetting.

    R₂ = R₁ + e_a

    regain_before: water on it before
    water_added: water put on, on clean dry fibre
    """

@_as_formula
def rolled_speed(
    drum_speed: _Measure,
    drum_diameter: _Measure,
    yarn_diameter: _Measure,
) -> Quantity:
    """Turns in a minute of a yarn that rolls on a drum, a disc or the top of a flyer.

    n_y = n × D / d

    drum_speed: speed of the drum
    drum_diameter: diameter of the drum
    yarn_diameter: diameter of the yarn
    """

@_as_formula
def sampled_share_deviation(share_sd: _Plain, component_share: _Plain, tufts: _Plain) -> Quantity:
    """Deviation of the share between samples: of the heap from place to place, and of the tufts by
    chance.

    σ_s = √(σ² × (1 − 1 / k) + p × (1 − p) / k)

    share_sd: standard deviation of the share in the heap, from place to place
    component_share: share of the component in the blend
    tufts: tufts in the sample
    """

@_as_formula
def scouring_loss(fat_before: _Plain, fat_after: _Plain, regain: _Plain) -> Quantity:
    """Loss of mass of an oiled yarn or cloth when its oil is scoured out, at equal regain.

    m_l = (o₁ − o₂) / (1 + R + o₁)

    fat_before: oil on clean dry fibre before
    fat_after: oil on clean dry fibre after
    regain: water on clean dry fibre, before and after
    """

@_as_formula
def section_warping_time(
    sections: _Plain,
    warp_length: _Measure,
    warping_speed: _Measure,
    change_time: _Measure,
) -> Quantity:
    """Time to warp a number of sections, without beaming.

    τ_r = W / (60 × v); τ = S × (τ_r + τ_c)

    sections: sections
    warp_length: length of the warp
    warping_speed: warping speed
    change_time: time for a section beside running: leasing, tying, mending
    """

@_as_formula
def sett_from_ends(ends: _Plain, warp_width: _Measure) -> Quantity:
    """How close the ends of a warp are, from their number and its width.

    n = N / (100 × B_w)

    ends: ends
    warp_width: width of the warp
    """

@_as_formula
def settling_time(held_up: _Measure, fibre_output: _Measure, within: _Plain) -> Quantity:
    """Time until a machine that starts empty delivers to within a share of its full count.

    τ = −h / Q_f × ln(x)

    held_up: clean dry fibre held up
    fibre_output: clean dry fibre delivered in an hour
    within: how near to the full count
    """

@_as_formula
def share_deviation_after_passes(
    share_sd_before: _Plain,
    doublings: _Plain,
    passes: _Plain,
) -> Quantity:
    """Deviation of the share from place to place after passes through the teaser with relaying.

    σ_j = σ × exp(−0.5 × j × ln(n_d))

    share_sd_before: standard deviation of the share, before
    doublings: places of the heap that come together in each place of the next
    passes: passes
    """

@_as_formula
def single_from_slubbing(
    slubbing_count: _Measure,
    delivered_length: _Measure,
    wound_length: _Measure,
) -> Quantity:
    """The single that a slubbing makes.

    T_s = T_c × L_d / L_w

    slubbing_count: count of the slubbing
    delivered_length: slubbing delivered in a draw
    wound_length: yarn wound in a draw
    """

@_as_formula
def slubbing_count(
    feed_rate: _Measure,
    loss: _Plain,
    ends: _Plain,
    delivery_speed: _Measure,
) -> Quantity:
    """Count of the slubbing, or of a card sliver with one end, from what is fed.

    T_c = Q_i × (1 − w) × 1000000 / (60 × v × N)

    feed_rate: mass fed
    loss: share lost in the card
    ends: good ends
    delivery_speed: delivery
    """

@_as_formula
def slubbing_for_single(
    single_count: _Measure,
    wound_length: _Measure,
    delivered_length: _Measure,
) -> Quantity:
    """The slubbing to card for a single.

    T_c = T_s × L_w / L_d

    single_count: count of the single
    wound_length: yarn wound in a draw
    delivered_length: slubbing delivered in a draw
    """

@_as_formula
def smallest_lot(held_up: _Measure, loss: _Plain, allowed_loss: _Plain) -> Quantity:
    """The smallest lot whose loss stays within what is allowed.

    f = (h / (w_a − w) if w < w_a, else no answer)

    held_up: clean dry fibre that the machine keeps
    loss: share lost, however large the lot
    allowed_loss: loss allowed for the lot
    """

@_as_formula
def spindle_frame_output(
    spindles: _Plain,
    spindle_speed: _Measure,
    twist: _Measure,
    count: _Measure,
    efficiency: _Plain,
) -> Quantity:
    """What a frame of spindles spins in an hour.

    v = n_s / t; Q = 0.00006 × k_n × v × T × η

    spindles: spindles
    spindle_speed: spindle speed
    twist: twist
    count: count of the yarn delivered
    efficiency: efficiency
    """

@_as_formula
def spindle_speed(cylinder_speed: _Measure, whirl_ratio: _Plain, slip: _Plain) -> Quantity:
    """Speed of a spindle that a cylinder drives by a band that slips.

    n_s = n_c × i_w × (1 − x)

    cylinder_speed: speed of the cylinder
    whirl_ratio: turns of the spindle for one of the cylinder, without slip
    slip: slip of the band
    """

@_as_formula
def spindle_speed_from_travellers(
    speed_at_large: _Measure,
    large_diameter: _Measure,
    speed_at_small: _Measure,
    small_diameter: _Measure,
) -> Quantity:
    """Spindle speed from the speed of the traveller at two diameters of winding.

    n_s = (((n₁ × d₁ − n₂ × d₂) / (d₁ − d₂) if n₂ < n₁, else no answer) if d₂ < d₁, else no
    answer)

    speed_at_large: traveller speed at the large diameter
    large_diameter: large diameter
    speed_at_small: traveller speed at the small diameter
    small_diameter: small diameter
    """

@_as_formula
def spindles_for_balance(
    doublings: _Plain,
    front_speed: _Measure,
    heads: _Plain,
    draft: _Plain,
    next_front_speed: _Measure,
) -> Quantity:
    """Spindles of the next machine that keep up with those before it.

    k₂ = n_d × v₁ × k₁ / (D × v₂)

    doublings: ends fed together at the machine before
    front_speed: front roller speed of the machine before
    heads: heads or spindles of the machine before
    draft: draft
    next_front_speed: front roller speed of the next machine
    """

@_as_formula
def spindles_for_minder(break_rate: _Plain, piecing_time: _Measure, work_load: _Plain) -> Quantity:
    """Spindles that a minder can piece for, not yet rounded down.

    k = 1000 × ψ / (e_b × τ_b)

    break_rate: ends broken in a thousand spindle hours
    piecing_time: time for a piecing
    work_load: share of the minder's time for it
    """

@_as_formula
def spindles_idle(break_rate: _Plain, patrol_time: _Measure) -> Quantity:
    """Share of the spindles that stand idle because ends are broken.

    i = 0.75 × e_b / 1000 × τ_p

    break_rate: ends broken in a thousand spindle hours
    patrol_time: time of a round
    """

@_as_formula
def stage_cost_by_hour(hourly_cost: _Plain, feed_rate: _Measure) -> Quantity:
    """What a kilogram that goes into a stage costs there, from the cost of an hour.

    c_s = k_h / Q_i

    hourly_cost: cost of an hour
    feed_rate: mass that goes in in an hour
    """

@_as_formula
def stock_volume(dye_mass: _Measure, stock_concentration: _Measure) -> Quantity:
    """Stock solution that holds a mass of dye.

    V = 1000 × d / c

    dye_mass: dye wanted
    stock_concentration: concentration of the stock solution
    """

@_as_formula
def tape_pitch(web_width: _Measure, ends: _Plain) -> Quantity:
    """Width of a condenser tape.

    p = b_w / N

    web_width: width of the web
    ends: ends across it, waste ends too
    """

@_as_formula
def time_for_hanks(
    yarn_mass: _Measure,
    count: _Measure,
    hank_length: _Measure,
    hank_rate: _Measure,
    drums: _Plain,
) -> Quantity:
    """Time to wind a mass, from the hanks that a drum winds in an hour.

    N = 1000000 × m_y / (T × l_h); τ = N / (q_h × k_n)

    yarn_mass: mass of yarn
    count: count
    hank_length: length of a hank
    hank_rate: hanks that a drum winds, with stops
    drums: drums at work
    """

@_as_formula
def time_for_length(length: _Measure, output_speed: _Measure) -> Quantity:
    """Time for a length at a speed.

    τ = L / (60 × v)

    length: length to make
    output_speed: speed, all spindles or drums together
    """

@_as_formula
def time_for_mass(mass: _Measure, output: _Measure) -> Quantity:
    """Time for a mass at a rate.

    τ = m / Q

    mass: mass to make
    output: rate
    """

@_as_formula
def total_doublings(doublings_by_machine: _Plains) -> Quantity:
    """Doublings of several machines together.

    N = n₁ × n₂

    doublings_by_machine: ends fed together at each machine
    """

@_as_formula
def total_draft(drafts: _Plains) -> Quantity:
    """Draft of several machines or zones together.

    D = d₁ × d₂

    drafts: draft of each machine or zone
    """

@_as_formula
def train_ratio(drivers: _Plains, driven: _Plains) -> Quantity:
    """Turns of the last shaft of a train of wheels for one turn of the first.

    i = a₁ / b₁ × a₂ / b₂

    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

@_as_formula
def transfer_coefficient(
    fibre_output: _Measure,
    cylinder_speed: _Measure,
    cylinder_load: _Measure,
) -> Quantity:
    """Share of what lies on the card's cylinder that goes over to the doffer in a turn of it.

    m_t = Q_f / (60 × n_c); q = m_t / m

    fibre_output: mass that the card delivers
    cylinder_speed: turns of the cylinder
    cylinder_load: fibre on the cylinder, all round
    """

@_as_formula
def tufts_in_sample(sample_mass: _Measure, tuft_mass: _Measure) -> Quantity:
    """Tufts in a sample: or fibres, where the wool is opened to single ones.

    k = m_s / m_t

    sample_mass: mass of the sample
    tuft_mass: mean mass of a tuft
    """

@_as_formula
def turns_at_head(spindle_turns: _Plain, drafting_turns: _Plain) -> Quantity:
    """Turns of the spindle at the head, once the draft is over.

    z_h = z_t − z_d

    spindle_turns: all turns of the spindle in a draw
    drafting_turns: turns while drafting
    """

@_as_formula
def turns_per_draw(
    twist: _Measure,
    wound_length: _Measure,
    coiling: _Plain,
    slip: _Plain,
) -> Quantity:
    """Turns of the spindle in a draw for a wanted twist.

    z_t = (t × L_w + b_c) / (1 − x)

    twist: twist wanted
    wound_length: yarn wound in a draw
    coiling: turns spent in coiling to the spindle tip
    slip: slip of the band
    """

@_as_formula
def turns_while_drafting(drafting_speed: _Measure, drafting_time: _Measure) -> Quantity:
    """Turns of the spindle while the carriage runs out.

    z_d = n × 60 × τ

    drafting_speed: mean spindle speed while drafting
    drafting_time: time of the run out
    """

@_as_formula
def twist_constant(
    whirl_ratio: _Plain,
    roller_circumference: _Measure,
    drivers: _Plains,
    driven: _Plains,
) -> Quantity:
    """Twist constant of a machine: the twist that a train of wheels gives, a place of it open.

    i = a₁ / b₁ × a₂ / b₂; C_t = i × i_w / C

    whirl_ratio: turns of the spindle for one of the cylinder
    roller_circumference: circumference of the delivery roller
    drivers: teeth of the driving wheels
    driven: teeth of the driven wheels
    """

@_as_formula
def twist_from_travellers(
    speed_at_large: _Measure,
    large_diameter: _Measure,
    speed_at_small: _Measure,
    small_diameter: _Measure,
) -> Quantity:
    """Twist of a ring yarn from the speed of the traveller at two diameters of winding.

    n_s = (n₁ × d₁ − n₂ × d₂) / (d₁ − d₂); v = π × d₁ × (n_s − n₁); t = ((n_s / v if n₂ < n₁,
    else no answer) if d₂ < d₁, else no answer)

    speed_at_large: traveller speed at the large diameter
    large_diameter: large diameter
    speed_at_small: traveller speed at the small diameter
    small_diameter: small diameter
    """

@_as_formula
def twist_wheel(spindle_turns: _Plain, turns_per_tooth: _Plain) -> Quantity:
    """The twist wheel that would give the wanted turns in a draw.

    z = z_t / p_t

    spindle_turns: turns of the spindle wanted
    turns_per_tooth: turns for each tooth of the wheel
    """

@_as_formula
def twist_wheel_for_new_count(teeth: _Plain, count: _Measure, new_count: _Measure) -> Quantity:
    """The twist wheel for another count at the same twist factor, where twist falls as teeth rise.

    z₂ = z × √(T₂ / T)

    teeth: teeth of the wheel at hand
    count: count that it suits
    new_count: count to come
    """

@_as_formula
def twister_output_speed(
    spindles: _Plain,
    spindle_speed: _Measure,
    twist: _Measure,
    efficiency: _Plain,
) -> Quantity:
    """Yarn that a twister delivers, all spindles together.

    v = k_n × n_s / t × η

    spindles: spindles
    spindle_speed: spindle speed
    twist: twist
    efficiency: efficiency
    """

@_as_formula
def volume_of_mass(mass: _Measure, density: _Measure) -> Quantity:
    """Volume of a liquid from its mass.

    V = m / ρ

    mass: mass
    density: density
    """

@_as_formula
def water_to_dry(oven_dry_mass: _Measure, regain_before: _Plain, regain_after: _Plain) -> Quantity:
    """Water to dry off goods.

    m_a = m_d × (R₁ − R₂)

    oven_dry_mass: oven-dry mass of the goods
    regain_before: water in them before, on the dry mass
    regain_after: water in them after, on the dry mass
    """

@_as_formula
def water_to_fill(liquor_volume: _Measure, volumes_in: _Measures) -> Quantity:
    """Water to fill the bath up, beside what solutions and wet goods bring.

    V_w = V − (V_i₁ + V_i₂)

    liquor_volume: liquor wanted
    volumes_in: what is in it already: stock solutions, water in the goods
    """

@_as_formula
def web_mass_per_area(slubbing_count: _Measure, ends: _Plain, web_width: _Measure) -> Quantity:
    """Mass of the web that a condenser divides.

    ω = T_c × N / (1000 × b_w)

    slubbing_count: slubbing count
    ends: ends, good ones and edge ends
    web_width: width of the web
    """

@_as_formula
def weft_insertion(loom_speed: _Measure, reed_width: _Measure, weft_crimp: _Plain) -> Quantity:
    """Weft that a loom puts in, while it runs.

    v = r_l × B × (1 + c₂)

    loom_speed: picks in a minute
    reed_width: width that a pick crosses
    weft_crimp: crimp of the weft
    """

@_as_formula
def wheel_for_draft(draft_constant: _Plain, draft: _Plain) -> Quantity:
    """The change wheel that would give a wanted draft, where draft falls as teeth rise.

    z = C_d / D

    draft_constant: draft constant: draft times teeth
    draft: draft wanted
    """

@_as_formula
def wheel_for_new_count(teeth: _Plain, count: _Measure, new_count: _Measure) -> Quantity:
    """The change wheel for another count from the same feed, where draft falls as teeth rise.

    z₂ = z × T₂ / T

    teeth: teeth of the wheel at hand
    count: count that it gives
    new_count: count wanted
    """

@_as_formula
def wheel_for_new_draft(teeth: _Plain, draft: _Plain, new_draft: _Plain) -> Quantity:
    """The change wheel for another draft, where draft falls as teeth rise.

    z₂ = z × D / D₂

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    new_draft: draft wanted
    """

@_as_formula
def wheel_for_new_draft_direct(teeth: _Plain, draft: _Plain, new_draft: _Plain) -> Quantity:
    """The change wheel for another draft, where draft rises with the teeth.

    z₂ = z × D₂ / D

    teeth: teeth of the wheel at hand
    draft: draft that it gives
    new_draft: draft wanted
    """

@_as_formula
def wheel_for_new_twist(teeth: _Plain, twist: _Measure, new_twist: _Measure) -> Quantity:
    """The change wheel for another twist, where twist falls as teeth rise.

    z₂ = z × t / t₂

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    new_twist: twist wanted
    """

@_as_formula
def wheel_for_new_twist_direct(teeth: _Plain, twist: _Measure, new_twist: _Measure) -> Quantity:
    """The change wheel for another twist, where twist rises with the teeth.

    z₂ = z × t₂ / t

    teeth: teeth of the wheel at hand
    twist: twist that it gives
    new_twist: twist wanted
    """

@_as_formula
def whirl_ratio(
    cylinder_diameter: _Measure,
    whirl_diameter: _Measure,
    band_thickness: _Measure,
) -> Quantity:
    """Turns of a spindle for one of the cylinder that drives it by a band.

    i_w = (d_c + e) / (d_w + e)

    cylinder_diameter: diameter of the cylinder
    whirl_diameter: diameter of the whirl
    band_thickness: thickness of the band
    """

@_as_formula
def wound_length(travel: _Measure, let_in: _Measure) -> Quantity:
    """Yarn wound on in a draw.

    L_w = S − i_c

    travel: travel of the carriage
    let_in: let-in of the carriage
    """

@_as_formula
def yarn_for_pieces(pieces: _Plain, fixed_mass: _Measure, mass_per_piece: _Measure) -> Quantity:
    """Yarn for a number of pieces; none for no piece.

    m_y = (0 if n_p < 0.5, else m_0 + n_p × m_p)

    pieces: pieces
    fixed_mass: needed once, however many pieces
    mass_per_piece: needed for each piece
    """

@_as_formula
def yield_of_equal_charge(tariff_in: _Measure, tariff_out: _Measure) -> Quantity:
    """Yield at which a tariff for what is sent in and one for what comes out charge alike; below it
    the one for what comes out is the cheaper for the owner.

    y = c₁ / c₂

    tariff_in: tariff for a kilogram sent in
    tariff_out: tariff for a kilogram that comes out
    """

class _BalanceOut(TypedDict):
    name: NotRequired[str | None]
    mass: _Measure
    balance_error: NotRequired[_Measure | None]
    clean_yield: NotRequired[_Plain | None]
    regain: NotRequired[_Plain | None]
    fat: NotRequired[_Plain | None]
    vegetable: NotRequired[_Plain | None]

@_as_calculation
def balance(
    *,
    mass_in: _Measure | Sequence[_Measure],
    out: _Named[_BalanceOut],
    balance_error: _Measure | Sequence[_Measure] | None = None,
    clean_yield: _Plain | None = None,
    regain: _Plain | None = None,
    fat: _Plain | None = None,
    vegetable: _Plain | None = None,
) -> Results[str, Any]:
    """What went into a stage, or a whole lot, against what came out of it.

    mass_in: mass that goes in, as weighed
    balance_error: how far the balance may be misread, either way; half of the last digit written
    if omitted
    clean_yield: clean dry fibre, on the mass as weighed
    regain: water on clean dry fibre
    fat: grease, dirt and oil, on clean dry fibre
    vegetable: vegetable matter on clean dry fibre
    out: what came out, waste included
    """

@_as_calculation
def batches(
    *,
    goods_mass: _Measure | Sequence[_Measure],
    capacity: _Measure | Sequence[_Measure],
    time_per_load: _Measure | Sequence[_Measure],
    change_time: _Measure | Sequence[_Measure] | None = None,
    loss: _Plain | None = None,
    machines: _Plain | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal[
        "mass_in",
        "mass_lost",
        "loads",
        "even_load",
        "last_load",
        "rounds",
        "time",
        "output",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """Goods in loads: whole loads, even ones, hours.

    goods_mass: mass of the goods
    capacity: largest load, in the same state as the goods
    time_per_load: running time of a load
    change_time: time to empty and fill
    loss: fibre lost as waste, on what is fed
    machines: machines that share the goods
    per_person: machines that a person minds
    """

class _BlendComponents(TypedDict):
    name: NotRequired[str | None]
    regain: _Plain
    share: NotRequired[_Plain | None]
    mass: NotRequired[_Measure | None]
    fat: NotRequired[_Plain | None]
    vegetable: NotRequired[_Plain | None]
    fibre_diameter: NotRequired[_Measure | None]

@_as_calculation
def blend(
    *,
    components: _Named[_BlendComponents],
    blend_mass: _Measure | Sequence[_Measure] | None = None,
    stated_regain: _Plain | None = None,
    stated_fat: _Plain | None = None,
) -> Results[str, Any]:
    """What to weigh of each component of a blend, each at its own regain, for shares of the clean
    dry fibre; or the shares of what was weighed.

    components: components of the blend
    blend_mass: mass of the blend wanted, at the stated regain and fat
    stated_regain: regain at which the mass of the blend is stated
    stated_fat: fat at which the mass of the blend is stated, on clean dry fibre
    """

@_as_calculation
def card(
    *,
    fibre_mass: _Measure | Sequence[_Measure],
    slubbing_count: _Measure | Sequence[_Measure],
    ends: _Plain,
    delivery_speed: _Measure | Sequence[_Measure],
    drop_rate: _Measure | Sequence[_Measure] | None = None,
    held_up: _Measure | Sequence[_Measure] | None = None,
    edge_ends: _Plain | None = None,
    web_width: _Measure | Sequence[_Measure] | None = None,
    put_back_share: _Plain | None = None,
    droppings_share: _Plain | None = None,
    strips_share: _Plain | None = None,
    fly_share: _Plain | None = None,
    burr_share: _Plain | None = None,
    loss: _Plain | None = None,
    within: _Plain | None = None,
    regain_before: _Plain | None = None,
    fat_before: _Plain | None = None,
    regain_after: _Plain | None = None,
    fat_after: _Plain | None = None,
) -> Results[
    Literal[
        "slubbing_dry_count",
        "fibre_output",
        "feed_rate",
        "output_per_end",
        "hopper_weigh",
        "drop_time",
        "tape_width",
        "web_mass_per_area",
        "time",
        "settling_time",
        "off_count_mass",
        "left_at_stop",
        "fibre_out",
        "droppings_mass",
        "strips_mass",
        "fly_mass",
        "burr_mass",
        "loss_mass",
        "edges_mass",
        "edge_share",
        "returned_share",
        "pass_loss",
        "lost_share",
        "fibre_through",
    ],
    Quantity,
]:
    """A lot on the card: what to set and weigh, how long it takes, where each part of it goes.

    fibre_mass: clean dry fibre of the lot
    slubbing_count: count of the slubbing, as it leaves the card
    ends: good ends
    delivery_speed: slubbing that each end delivers
    drop_rate: drops of the hopper
    held_up: clean dry fibre that the running card keeps
    edge_ends: edge ends, all together
    web_width: width of the web
    put_back_share: share of the edge ends that is put back on the feed
    droppings_share: droppings under the card, on what goes through
    strips_share: strips fettled from the clothing, on what goes through
    fly_share: fly, on what goes through
    burr_share: fibre thrown out with burr and seed, on what goes through
    loss: loss not split by place, on what goes through
    within: how near to its count the slubbing has to be
    regain_before: water on clean dry fibre, at the hopper
    fat_before: grease and oil on clean dry fibre, at the hopper
    regain_after: water on clean dry fibre, in the slubbing
    fat_after: grease and oil on clean dry fibre, in the slubbing
    """

@_as_calculation
def change_wheel(
    *,
    wheels: _Plains,
    wheel: _Plain | None = None,
    wanted_twist: _Measure | Sequence[_Measure] | None = None,
    twist_constant: _Measure | Sequence[_Measure] | None = None,
    wanted_draft: _Plain | None = None,
    draft_constant: _Plain | None = None,
    wanted_length: _Measure | Sequence[_Measure] | None = None,
    length_constant: _Measure | Sequence[_Measure] | None = None,
    law: Literal["inverse", "direct"] | None = None,
) -> Results[str, Any]:
    """The change wheel for a twist, a draft or a length, out of those that the mill owns.

    wanted_twist: twist wanted
    twist_constant: twist times teeth, or for a direct wheel twist for each tooth
    wanted_draft: draft wanted
    draft_constant: draft times teeth, or for a direct wheel draft for each tooth
    wanted_length: length wanted
    length_constant: length times teeth, or for a direct wheel length for each tooth
    wheels: wheels owned, teeth
    law: which way the wheel works
    """

@_as_calculation
def compare_tariffs(
    *,
    greasy_mass: _Measure | Sequence[_Measure],
    yields: _Plains,
    tariff_in: _Measure | Sequence[_Measure] | None = None,
    tariff_clean: _Measure | Sequence[_Measure] | None = None,
    clean_yield: _Plain | None = None,
    tariff_out: _Measure | Sequence[_Measure] | None = None,
    minimum_charge: _Plain | None = None,
    rejects: _Plain | None = None,
    reject_charge: _Measure | Sequence[_Measure] | None = None,
    free_rejects: _Plain | None = None,
) -> Results[str, Any]:
    """What a commission mill charges for a lot by the kilogram sent in, clean or finished.

    greasy_mass: greasy mass sent in
    yields: finished mass, on the greasy mass: likely, or low and high, or low, likely and high
    tariff_in: tariff for a kilogram sent in
    tariff_clean: tariff for a kilogram clean
    clean_yield: clean mass, on the greasy mass
    tariff_out: tariff for a kilogram that comes out finished
    minimum_charge: least charge for a lot
    rejects: share sorted out, on the greasy mass
    reject_charge: charge for a kilogram of rejects beyond the share that is free
    free_rejects: share of rejects that is put away free, by one mill's rule unless given
    """

class _CostThroughStages(TypedDict):
    name: NotRequired[str | None]
    loss: NotRequired[_Plain | None]
    stage_cost_per_mass: NotRequired[_Measure | None]
    hourly_cost: NotRequired[_Plain | None]
    feed_rate: NotRequired[_Measure | None]
    waste_price_per_mass: NotRequired[_Measure | None]
    sold_share: NotRequired[_Plain | None]

class _CostThroughGoods(TypedDict):
    name: NotRequired[str | None]
    mass: _Measure

@_as_calculation
def cost_through(
    *,
    price_per_mass: _Measure | Sequence[_Measure],
    stages: _Named[_CostThroughStages],
    goods: _Named[_CostThroughGoods | _Measure] | None = None,
    overhead: _Plain | None = None,
    hourly_overhead: _Plain | None = None,
    margin: _Plain | None = None,
    mark_up: _Plain | None = None,
) -> Results[str, Any]:
    """What a kilogram costs as it goes through stages that lose some of it, and what to ask for
    goods.

    price_per_mass: price of a kilogram taken in
    stages: stages in order
    goods: goods by the mass of one; a kilogram if omitted
    overhead: overhead, on the cost of the stages
    hourly_overhead: overhead of an hour of each machine whose feed rate is given
    margin: margin, on the price
    mark_up: mark-up, on the cost
    """

@_as_calculation
def dryer(
    *,
    oven_dry_mass: _Measure | Sequence[_Measure],
    regain_before: _Plain,
    regain_after: _Plain,
    evaporation_rate: _Measure | Sequence[_Measure],
    efficiency: _Plain | None = None,
    machines: _Plain | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal[
        "mass_in",
        "mass_out",
        "water_to_dry",
        "evaporation_kept",
        "time",
        "output",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The dryer at work: water to dry off and the hours for it.

    oven_dry_mass: oven-dry mass of the goods
    regain_before: water in the goods before, on the oven-dry mass
    regain_after: water in the goods after, on the oven-dry mass
    evaporation_rate: water that the dryer takes off in an hour
    efficiency: share of the hours in which the dryer takes that off
    machines: machines that share the goods
    per_person: machines that a person minds
    """

class _DyeBathAdditions(TypedDict):
    name: NotRequired[str | None]
    on_goods: NotRequired[_Plain | None]
    in_liquor: NotRequired[_Measure | None]

@_as_calculation
def dye_bath(
    *,
    mass: _Measure | Sequence[_Measure],
    depth: _Plain,
    liquor_ratio: _Plain,
    regain_before: _Plain | None = None,
    recipe_regain: _Plain | None = None,
    regain_after: _Plain | None = None,
    dye_strength: _Plain | None = None,
    stock_concentration: _Measure | Sequence[_Measure] | None = None,
    goods_water: _Measure | Sequence[_Measure] | None = None,
    additions: _Named[_DyeBathAdditions] | None = None,
    exhaustion: _Plain | None = None,
    loss: _Plain | None = None,
    count_before: _Measure | Sequence[_Measure] | None = None,
    shrinkage: _Plain | None = None,
    source: str | None = None,
) -> Results[str, Any]:
    """Liquor, dye, additions and water of a dye bath, what is left in it, and the goods after it.

    mass: goods as weighed
    regain_before: water on the dry fibre, as the goods are weighed
    recipe_regain: regain that the recipe's shares are on
    regain_after: water on the dry fibre after drying
    depth: depth: dye on the mass of the goods
    dye_strength: strength of the dye, on the standard
    liquor_ratio: litres of liquor for a kilogram of goods
    stock_concentration: concentration of the stock solution
    goods_water: water in goods that were wetted out
    additions: what is added besides the dye
    exhaustion: dye on the goods at the end, on the dye put in
    loss: fibre and other matter lost in the bath, on what goes in
    count_before: count before the bath
    shrinkage: shrinkage in length
    source: where the recipe comes from
    """

@_as_calculation
def emulsion(
    *,
    regain_before: _Plain,
    oil_added: _Plain,
    mass: _Measure | Sequence[_Measure] | None = None,
    fibre_mass: _Measure | Sequence[_Measure] | None = None,
    fat_before: _Plain | None = None,
    vegetable: _Plain | None = None,
    oil_density: _Measure | Sequence[_Measure] | None = None,
    wanted_regain: _Plain | None = None,
    oil_share: _Plain | None = None,
    water_density: _Measure | Sequence[_Measure] | None = None,
) -> Results[
    Literal[
        "fibre_mass",
        "oil_mass",
        "oil_volume",
        "water_mass",
        "water_beside",
        "water_volume",
        "emulsion_mass",
        "oil_share",
        "water_added",
        "fat_after",
        "regain_after",
        "state_ratio_before",
        "state_ratio_after",
        "mass_after",
    ],
    Quantity,
]:
    """Oil and water for a lot: kilograms and litres to weigh out, and what the lot is after them.

    mass: wool as weighed
    fibre_mass: clean dry fibre
    regain_before: water on clean dry fibre, before
    fat_before: grease and oil on clean dry fibre, before
    vegetable: vegetable matter on clean dry fibre
    oil_added: oil to add, on clean dry fibre
    oil_density: density of the oil
    wanted_regain: regain wanted after oiling
    oil_share: oil in the emulsion, by mass
    water_density: density of water
    """

@_as_calculation
def evenness_of_blend(
    *,
    component_share: _Plain,
    layers: _Plain,
    layer_cv: _Plain,
    tuft_mass: _Measure | Sequence[_Measure],
    sample_mass: _Measure | Sequence[_Measure],
    passes: _Plain | None = None,
    doublings: _Plain | None = None,
    wanted_share_sd: _Plain | None = None,
) -> Results[str, Any]:
    """How far the share of a component differs between samples of a blend: after the stack, after
    each pass of the teaser, and what chance leaves at best.

    component_share: share of the component in the blend
    layers: layers of each component in the stack
    layer_cv: coefficient of variation of a layer's thickness from place to place
    tuft_mass: mean mass of a tuft, or of a fibre once carded
    sample_mass: mass of the sample that is looked at
    passes: passes through the teaser, each with relaying
    doublings: places of the heap that come together in a pass; 1 where it is not laid anew
    wanted_share_sd: standard deviation wanted of the share between samples
    """

@_as_calculation
def fringe_twisting(
    *,
    ends: _Plain,
    strand_ends: _Plain,
    contraction: _Plain,
    strands: _Plain | None = None,
    knot_length: _Measure | Sequence[_Measure] | None = None,
    fringe: _Measure | Sequence[_Measure] | None = None,
    wanted_fringe: _Measure | Sequence[_Measure] | None = None,
    pieces: _Plain | None = None,
    width: _Measure | Sequence[_Measure] | None = None,
    warp_count: _Measure | Sequence[_Measure] | None = None,
    round_time: _Measure | Sequence[_Measure] | None = None,
    tassels_at_once: _Plain | None = None,
    people: _Plain | None = None,
) -> Results[
    Literal[
        "ends_per_tassel",
        "tassels",
        "last_tassel_ends",
        "tassel_spacing",
        "fringe",
        "twisted_fringe",
        "tassel_count",
        "fringe_mass",
        "all_tassels",
        "time_per_piece",
        "time",
        "person_hours",
    ],
    Quantity,
]:
    """Twisted fringes: tassels, the fringe to leave for them, and the hours.

    ends: ends of the warp across the piece
    strand_ends: ends in a strand of a tassel
    strands: strands twisted together in a tassel
    contraction: contraction in twisting, on the untwisted length
    knot_length: fringe taken by the knot and by what is trimmed off
    fringe: fringe at each end of the piece, before it is twisted
    wanted_fringe: length wanted of the twisted fringe, without the knot
    pieces: pieces to fringe, at both ends
    width: width of the piece
    warp_count: count of the warp
    round_time: time to twist and knot the tassels of one round
    tassels_at_once: tassels twisted at once: by hand one, on a fringe twister as its heads allow
    people: people who twist
    """

@_as_calculation
def loom(
    *,
    loom_speed: _Measure | Sequence[_Measure],
    weft_sett: _Measure | Sequence[_Measure],
    efficiency: _Plain | None = None,
    stop_rate: _Measure | Sequence[_Measure] | None = None,
    stops_per_100000_picks: _Plain | None = None,
    stop_time: _Measure | Sequence[_Measure] | None = None,
    reed_width: _Measure | Sequence[_Measure] | None = None,
    weft_count: _Measure | Sequence[_Measure] | None = None,
    cloth_length: _Measure | Sequence[_Measure] | None = None,
    looms: _Plain | None = None,
    per_person: _Plain | None = None,
    attention_time: _Measure | Sequence[_Measure] | None = None,
    work_load: _Plain | None = None,
) -> Results[
    Literal[
        "efficiency",
        "cloth_rate",
        "pick_rate",
        "weft_speed",
        "weft_rate",
        "weft_output",
        "picks",
        "loom_hours",
        "time",
        "weft_yarn_length",
        "weft_mass",
        "stop_rate",
        "looms_per_person",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The loom at work: efficiency from its stops, cloth and weft in an hour, hours, looms of a
    weaver.

    loom_speed: picks woven in a minute, running
    efficiency: efficiency, with every stop in it
    stop_rate: stops in a time of running
    stops_per_100000_picks: stops in a hundred thousand picks
    stop_time: time that the loom is stopped for a stop
    weft_sett: picks in the cloth off the loom
    reed_width: width in the reed
    weft_count: count of the weft
    cloth_length: cloth to weave, off the loom
    looms: looms that share the cloth
    per_person: looms that a weaver minds
    attention_time: weaver's time for a stop
    work_load: share of the weaver's time for stops
    """

class _LotCostStages(TypedDict):
    name: NotRequired[str | None]
    mass_in: NotRequired[_Measure | None]
    time: NotRequired[_Measure | None]
    extra_time: NotRequired[_Measure | None]
    hourly_cost: NotRequired[_Plain | None]
    people: NotRequired[_Plain | None]
    stage_cost_per_mass: NotRequired[_Measure | None]
    fixed_cost: NotRequired[_Plain | None]

class _LotCostOwnStages(TypedDict):
    name: NotRequired[str | None]
    extra_time: NotRequired[_Measure | None]
    hourly_cost: NotRequired[_Plain | None]
    people: NotRequired[_Plain | None]
    stage_cost_per_mass: NotRequired[_Measure | None]
    fixed_cost: NotRequired[_Plain | None]

class _LotCostGoodsTimes(TypedDict):
    stage: NotRequired[str | None]
    time: NotRequired[_Measure | None]

class _LotCostGoods(TypedDict):
    name: NotRequired[str | None]
    fibre_mass: _Measure
    pieces: NotRequired[_Plain | None]
    times: NotRequired[_Named[_LotCostGoodsTimes | _Measure] | None]

@_as_calculation
def lot_cost(
    *,
    greasy_mass: _Measure | Sequence[_Measure],
    price_per_mass: _Measure | Sequence[_Measure],
    stages: _Named[_LotCostStages],
    goods: _Named[_LotCostGoods],
    name: str | None = None,
    own_stages: _Named[_LotCostOwnStages] | None = None,
    left_over: _Measure | Sequence[_Measure] | None = None,
    state_ratio: _Plain | None = None,
    hourly_wage: _Plain | None = None,
    overhead: _Plain | None = None,
    hourly_overhead: _Plain | None = None,
    margin: _Plain | None = None,
    mark_up: _Plain | None = None,
) -> Results[str, Any]:
    """What a lot costs, stage by stage and goods by goods.

    name: name of the lot
    greasy_mass: greasy mass as received
    price_per_mass: price of a greasy kilogram; 0 for an owner's own
    stages: stages up to the yarn, in order
    own_stages: stages after the yarn
    goods: goods
    left_over: clean dry fibre in yarn that is left over
    state_ratio: mass of the yarn for each unit of its clean dry fibre
    hourly_wage: wage of a person for an hour
    overhead: overhead, on the cost of the stages
    hourly_overhead: overhead of an hour of every machine
    margin: margin, on the price
    mark_up: mark-up, on the cost
    """

@_as_calculation
def lot_on_card(
    *,
    fibre_mass: _Measure | Sequence[_Measure],
    held_up: _Measure | Sequence[_Measure],
    loss: _Plain | None = None,
    allowed_loss: _Plain | None = None,
    wanted_own_share: _Plain | None = None,
    trace: _Plain | None = None,
) -> Results[str, Any]:
    """What a lot loses for being small, the smallest lot worth running separately, and whose wool
    comes off.

    fibre_mass: clean dry fibre of the lot, at the card
    held_up: clean dry fibre that the card keeps
    loss: fibre lost, on the fibre that enters, however large the lot
    allowed_loss: loss allowed for the lot
    wanted_own_share: share of its own fibre wanted over the run, the card not cleared
    trace: share of the lot before that may still come off
    """

@_as_calculation
def mule(
    *,
    spindles: _Plain,
    travel: _Measure | Sequence[_Measure],
    cycle: _Measure | Sequence[_Measure],
    efficiency: _Plain,
    count: _Measure | Sequence[_Measure],
    let_in: _Measure | Sequence[_Measure] | None = None,
    slip: _Plain | None = None,
    coiling: _Plain | None = None,
    wanted_draft: _Plain | None = None,
    delivered_length: _Measure | Sequence[_Measure] | None = None,
    delivered_per_tooth: _Measure | Sequence[_Measure] | None = None,
    delivery_wheels: _Plains | None = None,
    delivery_wheel: _Plain | None = None,
    wanted_twist: _Measure | Sequence[_Measure] | None = None,
    turns_per_tooth: _Plain | None = None,
    twist_wheels: _Plains | None = None,
    twist_wheel: _Plain | None = None,
    yarn_mass: _Measure | Sequence[_Measure] | None = None,
    loss: _Plain | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    break_rate: _Plain | None = None,
    patrol_time: _Measure | Sequence[_Measure] | None = None,
    per_person: _Plain | None = None,
    piecing_time: _Measure | Sequence[_Measure] | None = None,
    work_load: _Plain | None = None,
) -> Results[
    Literal[
        "wound_length",
        "wanted_delivery_wheel",
        "delivery_wheel",
        "delivered_length",
        "draft",
        "slubbing_count",
        "wanted_turns",
        "wanted_twist_wheel",
        "twist_wheel",
        "spindle_turns",
        "twist",
        "draw_rate",
        "output",
        "doff_time",
        "mass_in",
        "mass_lost",
        "yarn_length",
        "time",
        "draws",
        "doffs",
        "packages",
        "left_over",
        "breaks_per_hour",
        "idle_share",
        "idle_spindles",
        "spindles_per_person",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The mule at work: draft and twist with their wheels, output, doffs, hours, broken ends and
    people.

    spindles: spindles at work
    travel: travel of the carriage
    let_in: let-in of the carriage
    cycle: time of a draw, out and in
    efficiency: efficiency, with every stop, doff and idle spindle in it
    slip: slip of the bands
    coiling: turns spent in coiling to the spindle tip
    count: count of the single as spun
    wanted_draft: draft wanted
    delivered_length: slubbing delivered in a draw
    delivered_per_tooth: slubbing delivered for each tooth of the delivery wheel
    delivery_wheels: delivery wheels owned, teeth
    wanted_twist: twist wanted
    turns_per_tooth: spindle turns in a draw for each tooth of the twist wheel
    twist_wheels: twist wheels owned, teeth
    yarn_mass: good yarn to make
    loss: fibre lost as waste, on what is fed
    package_mass: yarn on a full cop
    break_rate: ends broken in a thousand spindle hours
    patrol_time: time of a minder's round
    per_person: spindles that a person minds
    piecing_time: minder's time for a broken end, with the walk
    work_load: share of a person's time for broken ends
    """

@_as_calculation
def passages(
    *,
    cloth_length: _Measure | Sequence[_Measure],
    cloth_speed: _Measure | Sequence[_Measure],
    passages: _Plain | None = None,
    change_time: _Measure | Sequence[_Measure] | None = None,
    machines: _Plain | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal["length_per_machine", "run_length", "time", "cloth_rate", "people", "person_hours"],
    Quantity,
]:
    """Cloth through a machine, several times if need be: length run and hours.

    cloth_length: length of the cloth
    cloth_speed: speed of the cloth
    passages: passages
    change_time: time for a passage besides running: sewing on, threading
    machines: machines that share the goods
    per_person: machines that a person minds
    """

@_as_calculation
def reel(
    *,
    reel_circumference: _Measure | Sequence[_Measure],
    positions: _Plain,
    reel_speed: _Measure | Sequence[_Measure],
    change_time: _Measure | Sequence[_Measure],
    count: _Measure | Sequence[_Measure],
    reels: _Plain | None = None,
    wanted_hank_mass: _Measure | Sequence[_Measure] | None = None,
    wanted_hank_length: _Measure | Sequence[_Measure] | None = None,
    shrinkage: _Plain | None = None,
    reel_turns: _Plain | None = None,
    yarn_mass: _Measure | Sequence[_Measure] | None = None,
    hanks: _Plain | None = None,
    loss: _Plain | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal[
        "reel_turns",
        "hank_length",
        "hank_mass",
        "doff_time",
        "hank_rate",
        "output",
        "hanks",
        "yarn_mass",
        "left_over",
        "mass_in",
        "mass_lost",
        "doffs",
        "time",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The reel at work: turns of a hank, hanks, doffs, hours, people.

    reel_circumference: circumference of the reel
    positions: hanks reeled side by side
    reel_speed: speed of the reel
    change_time: time between doffs: tying, lacing, taking off, piecing up
    reels: reels at work
    count: count of the yarn at the reel
    wanted_hank_mass: mass wanted of a hank, as it comes off the reel
    wanted_hank_length: length wanted of the finished hank
    shrinkage: shrinkage of the hank in scouring
    reel_turns: turns of the reel for a hank
    yarn_mass: good yarn to reel
    hanks: hanks to reel
    loss: fibre lost as waste, on what is fed
    per_person: reels that a person minds
    """

@_as_calculation
def ring_frame(
    *,
    spindles: _Plain,
    spindle_speed: _Measure | Sequence[_Measure],
    efficiency: _Plain,
    count: _Measure | Sequence[_Measure],
    twist: _Measure | Sequence[_Measure] | None = None,
    wanted_twist: _Measure | Sequence[_Measure] | None = None,
    twist_constant: _Measure | Sequence[_Measure] | None = None,
    twist_wheels: _Plains | None = None,
    twist_wheel: _Plain | None = None,
    draft: _Plain | None = None,
    full_diameter: _Measure | Sequence[_Measure] | None = None,
    empty_diameter: _Measure | Sequence[_Measure] | None = None,
    hank_length: _Measure | Sequence[_Measure] | None = None,
    yarn_mass: _Measure | Sequence[_Measure] | None = None,
    loss: _Plain | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    package_length: _Measure | Sequence[_Measure] | None = None,
    break_rate: _Plain | None = None,
    patrol_time: _Measure | Sequence[_Measure] | None = None,
    per_person: _Plain | None = None,
    piecing_time: _Measure | Sequence[_Measure] | None = None,
    work_load: _Plain | None = None,
) -> Results[
    Literal[
        "wanted_twist_wheel",
        "twist_wheel",
        "twist",
        "delivery_speed",
        "fed_count",
        "full_lag",
        "empty_lag",
        "full_twist",
        "empty_twist",
        "twist_step",
        "output",
        "hank_rate",
        "package_mass",
        "doff_time",
        "mass_in",
        "mass_lost",
        "yarn_length",
        "time",
        "doffs",
        "packages",
        "left_over",
        "breaks_per_hour",
        "idle_share",
        "idle_spindles",
        "spindles_per_person",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The ring frame at work: delivery, lag of the traveller, output, doffs, hours, broken ends and
    people.

    spindles: spindles at work
    spindle_speed: spindle speed
    efficiency: efficiency, with every stop, doff and idle spindle in it
    twist: twist
    wanted_twist: twist wanted
    twist_constant: twist constant: twist times teeth of the twist wheel
    twist_wheels: twist wheels owned, teeth
    count: count of the yarn as spun
    draft: draft
    full_diameter: diameter of the full package
    empty_diameter: diameter of the empty tube
    hank_length: yarn in a hank
    yarn_mass: good yarn to make
    loss: fibre lost as waste, on what is fed
    package_mass: yarn on a full package, without its tube
    package_length: length of yarn on a full package
    break_rate: ends broken in a thousand spindle hours
    patrol_time: time of a minder's round
    per_person: spindles that a person minds
    piecing_time: minder's time for a broken end, with the walk
    work_load: share of a person's time for broken ends
    """

@_as_calculation
def scour_liquor(
    *,
    mass: _Measure | Sequence[_Measure],
    liquor_ratio: _Plain,
    soap_concentration: _Measure | Sequence[_Measure] | None = None,
    alkali_concentration: _Measure | Sequence[_Measure] | None = None,
    temperature: _Measure | Sequence[_Measure] | None = None,
    pickup: _Plain | None = None,
    regain: _Plain | None = None,
    liquor_density: _Measure | Sequence[_Measure] | None = None,
    rinses: _Plain | None = None,
    rinse_ratio: _Plain | None = None,
) -> Results[
    Literal[
        "temperature",
        "liquor_volume",
        "soap_mass",
        "alkali_mass",
        "carried_volume",
        "rinse_volume",
        "left_share",
        "soap_left",
        "alkali_left",
        "water_volume",
    ],
    Quantity,
]:
    """Liquor, soap and alkali for a lot of wool, what it carries on, what the rinses leave, the
    water for all.

    mass: wool as weighed
    liquor_ratio: litres of liquor for a kilogram of wool
    soap_concentration: soap or detergent in the liquor
    alkali_concentration: alkali in the liquor
    temperature: temperature of the liquor
    pickup: liquor left by the squeeze, on the dry wool
    regain: water in the wool as weighed, on the dry mass
    liquor_density: density of the liquor
    rinses: rinses
    rinse_ratio: litres of water for a kilogram of wool in a rinse
    """

@_as_calculation
def twister(
    *,
    spindles: _Plain,
    spindle_speed: _Measure | Sequence[_Measure],
    efficiency: _Plain,
    resultant_count: _Measure | Sequence[_Measure],
    spindle_type: Literal["ordinary", "two-for-one"] | None = None,
    twist: _Measure | Sequence[_Measure] | None = None,
    wanted_twist: _Measure | Sequence[_Measure] | None = None,
    twist_constant: _Measure | Sequence[_Measure] | None = None,
    twist_wheels: _Plains | None = None,
    twist_wheel: _Plain | None = None,
    ends: _Plain | None = None,
    contraction: _Plain | None = None,
    yarn_mass: _Measure | Sequence[_Measure] | None = None,
    loss: _Plain | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    package_length: _Measure | Sequence[_Measure] | None = None,
    break_rate: _Plain | None = None,
    patrol_time: _Measure | Sequence[_Measure] | None = None,
    per_person: _Plain | None = None,
    piecing_time: _Measure | Sequence[_Measure] | None = None,
    work_load: _Plain | None = None,
) -> Results[
    Literal[
        "wanted_twist_wheel",
        "twist_wheel",
        "twist",
        "delivery_speed",
        "single_count",
        "twisting_rate",
        "output_speed",
        "output",
        "package_mass",
        "doff_time",
        "mass_in",
        "mass_lost",
        "yarn_length",
        "time",
        "singles_length",
        "doffs",
        "packages",
        "left_over",
        "breaks_per_hour",
        "idle_share",
        "idle_spindles",
        "spindles_per_person",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The twister at work: single to feed, output, doffs, packages, hours, broken ends and people.

    spindles: spindles at work
    spindle_speed: spindle speed
    efficiency: efficiency, with every stop, doff and idle spindle in it
    spindle_type: how a spindle twists
    twist: twist
    wanted_twist: twist wanted
    twist_constant: twist constant: twist times teeth of the twist wheel
    twist_wheels: twist wheels owned, teeth
    resultant_count: count of the folded yarn
    ends: ends folded
    contraction: contraction in folding, on the untwisted length
    yarn_mass: good yarn to make
    loss: fibre lost as waste, on what is fed
    package_mass: yarn on a full package, without its tube
    package_length: length of yarn on a full package
    break_rate: ends broken in a thousand spindle hours
    patrol_time: time of a minder's round
    per_person: spindles that a person minds
    piecing_time: minder's time for a broken end, with the walk
    work_load: share of a person's time for broken ends
    """

@_as_calculation
def warping(
    *,
    ends: _Plain,
    creel: _Plain,
    warp_length: _Measure | Sequence[_Measure],
    warping_speed: _Measure | Sequence[_Measure],
    change_time: _Measure | Sequence[_Measure],
    beaming_speed: _Measure | Sequence[_Measure] | None = None,
    set_up_time: _Measure | Sequence[_Measure] | None = None,
    warp_width: _Measure | Sequence[_Measure] | None = None,
    warp_count: _Measure | Sequence[_Measure] | None = None,
    bobbin_mass: _Measure | Sequence[_Measure] | None = None,
    stretch: _Plain | None = None,
    machines: _Plain | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal[
        "sections",
        "section_ends",
        "last_section_ends",
        "warp_sett",
        "section_width",
        "beamed_length",
        "warp_yarn_length",
        "length_per_bobbin",
        "warp_mass",
        "mass_per_bobbin",
        "creelings",
        "bobbins",
        "warping_time",
        "beaming_time",
        "time",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """Warping in sections: sections, yarn and bobbins for the creel, hours.

    ends: ends of the warp
    creel: ends in a section: the bobbins in the creel
    warp_length: length of the warp
    warping_speed: warping speed
    change_time: time for a section beside running: leasing, tying, mending
    beaming_speed: speed of beaming
    set_up_time: time to creel and set up, once
    warp_width: width of the warp
    warp_count: count of the warp
    bobbin_mass: yarn on a bobbin or cone of the creel
    stretch: stretch in warping and beaming
    machines: warping machines at work
    per_person: warping machines that a person minds
    """

class _WashesWashes(TypedDict):
    liquor_ratio: _Plain
    soap_concentration: NotRequired[_Measure | None]
    alkali_concentration: NotRequired[_Measure | None]
    temperature: NotRequired[_Measure | None]
    removed_share: NotRequired[_Plain | None]

@_as_calculation
def washes(
    *,
    mass: _Measure | Sequence[_Measure],
    washes: Sequence[_WashesWashes],
    fat_before: _Plain | None = None,
) -> Results[str, Any]:
    """The washes of a scour one after another: liquor, soap and alkali of each, the grease left
    after each, the water for all.

    mass: wool as weighed
    fat_before: grease and oil on clean dry fibre, before
    washes: the washes, in order
    """

class _WeekLotsTimes(TypedDict):
    machine: NotRequired[str | None]
    time: _Measure

class _WeekLots(TypedDict):
    name: NotRequired[str | None]
    colour: str
    times: _Named[_WeekLotsTimes | _Measure]
    lightness: NotRequired[_Plain | None]

class _WeekMachinesChanges(TypedDict):
    colour_before: str
    colour_after: str
    clean_time: _Measure

class _WeekMachines(TypedDict):
    name: NotRequired[str | None]
    open_time: _Measure
    clean_time: NotRequired[_Measure | None]
    clean_time_to_darker: NotRequired[_Measure | None]
    clean_time_to_lighter: NotRequired[_Measure | None]
    changes: NotRequired[Sequence[_WeekMachinesChanges] | None]
    colour: NotRequired[str | None]
    lightness: NotRequired[_Plain | None]
    people: NotRequired[_Plain | None]

@_as_calculation
def week(
    *,
    lots: _Named[_WeekLots],
    machines: _Named[_WeekMachines],
    order: Literal["light to dark", "dark to light", "as given"] | None = None,
    try_orders: bool | None = None,
) -> Results[str, Any]:
    """A week of lots over the machines: the order, when each lot is at each machine, what does not
    fit.

    lots: lots
    machines: machines
    order: order of the lots
    try_orders: try every order of lots as light as each other
    """

@_as_calculation
def winder(
    *,
    drums: _Plain,
    winding_speed: _Measure | Sequence[_Measure],
    efficiency: _Plain,
    count: _Measure | Sequence[_Measure],
    yarn_mass: _Measure | Sequence[_Measure] | None = None,
    loss: _Plain | None = None,
    time_allowed: _Measure | Sequence[_Measure] | None = None,
    package_mass: _Measure | Sequence[_Measure] | None = None,
    package_length: _Measure | Sequence[_Measure] | None = None,
    bobbin_mass: _Measure | Sequence[_Measure] | None = None,
    hank_length: _Measure | Sequence[_Measure] | None = None,
    per_person: _Plain | None = None,
) -> Results[
    Literal[
        "output",
        "hank_rate",
        "package_mass",
        "package_time",
        "knots",
        "mass_in",
        "mass_lost",
        "yarn_length",
        "time",
        "bobbins",
        "drum_mass",
        "drums_needed",
        "doffs",
        "packages",
        "left_over",
        "people",
        "person_hours",
    ],
    Quantity,
]:
    """The winder at work: output, time of a cone, full cones of a lot and what is left over, drums,
    hours.

    drums: drums at work
    winding_speed: winding speed of a drum
    efficiency: efficiency, with every stop, doff and idle drum in it
    count: count of the yarn
    yarn_mass: good yarn to make
    loss: fibre lost as waste, on what is fed
    time_allowed: time in which the lot is wanted
    package_mass: yarn on a full package, without its tube
    package_length: length of yarn on a full package
    bobbin_mass: yarn on a bobbin or cop that is wound off
    hank_length: yarn in a hank
    per_person: drums that a person minds
    """
