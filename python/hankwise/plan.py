"""Plans: what a lot makes, what to set and how sure that is, from a lot file.

>>> import hankwise as hw
>>> plan = hw.plan.load("examples/first-lot.toml")
>>> result = plan.run(lots=1000, seed=1)
>>> result.planned_enough
True
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
    "run_all",
]
