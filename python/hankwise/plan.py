"""Plans: what a lot makes, what to set and how sure that is, from a lot file.

>>> import hankwise as hw
>>> plan = hw.plan.load("examples/first-lot.toml")
>>> result = plan.run(lots=1000, seed=1)
>>> result.planned_enough
True

Without a file, from a few words:

>>> hasty = hw.plan.loads(hw.plan.new_lot(greasy="45 kg", breed="Romney", goods="throw"))
>>> hasty.run(lots=1000, seed=1).spoken().split(",")[0]
'From 45 kg of greasy wool you can safely promise 18 throws'
"""

from hankwise._hankwise import (
    Needed,
    Plan,
    PlanResult,
    Quote,
    load,
    loads,
    make,
    mill_tables,
    new_lot,
    new_mill,
    run_all,
)

__all__ = [
    "Needed",
    "Plan",
    "PlanResult",
    "Quote",
    "load",
    "loads",
    "make",
    "mill_tables",
    "new_lot",
    "new_mill",
    "run_all",
]
