"""Plans: a lot file in, what it makes, what to set and how sure it is.

>>> import hankwise as hw
>>> plan = hw.plan.load("examples/first-lot.toml")
>>> result = plan.run(draws=1000, seed=1)
>>> result.enough
True
"""

from hankwise._hankwise import Needed, Plan, PlanResult, load, loads

__all__ = ["Needed", "Plan", "PlanResult", "load", "loads"]
