"""Arrays of numpy in and out; imported when the first array comes."""

from __future__ import annotations

from typing import Any

import numpy as np


def give(data: bytearray, shape: list[int]) -> Any:
    """A fresh array over bytes that nobody else holds."""
    return np.frombuffer(data, dtype=np.float64).reshape(shape)


def take(value: Any) -> tuple[bytes, tuple[int, ...]] | tuple[str, str]:
    """Bytes of doubles in C order with the shape, or why not and what to do."""
    if isinstance(value, np.ma.MaskedArray):
        if np.ma.getmaskarray(value).any():
            return "a masked array", "take the masked rows out, or fill them: array.filled(value)"
        value = value.data
    try:
        array = np.asarray(value)
    except (ValueError, TypeError) as error:
        return f"no regular array: {error}", "give rows of one length"
    if array.dtype.kind == "f" and array.dtype.itemsize > 8:
        return f"an array of {array.dtype}", "convert it: array.astype(float)"
    if array.dtype.kind not in "fiu":
        if array.size == 0 and isinstance(value, (list, tuple)):
            array = array.astype(np.float64)
        else:
            return f"an array of {array.dtype}", "convert it: array.astype(float)"
    if array.dtype.kind in "iu" and array.size:
        if abs(int(array.max())) > 2**53 or abs(int(array.min())) > 2**53:
            return "integers beyond 2**53", "a double cannot hold them: convert them yourself"
    # Byte order, alignment, strides and width are numpy's to settle.
    doubles = np.ascontiguousarray(array, dtype=np.float64)
    return doubles.tobytes(), array.shape
