"""How many to test, how sure a mean is, whether a machine has moved."""

# Written by python -m hankwise._stubs from the catalogue.

from typing import Literal, final

from hankwise._hankwise import (
    Formula,
    Quantity,
    Working,
)
