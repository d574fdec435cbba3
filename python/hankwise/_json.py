"""JSON as programs read it: a number that is none is null."""

from __future__ import annotations

import json
import math
from typing import Any


def dumps(value: Any) -> str:
    """Write JSON in lines, with null for what is missing or endless."""
    return json.dumps(_finite(value), ensure_ascii=False, indent=1, allow_nan=False)


def _finite(value: Any) -> Any:
    if isinstance(value, float):
        return value if math.isfinite(value) else None
    if isinstance(value, dict):
        return {key: _finite(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [_finite(one) for one in value]
    return value
