"""The shared library from another runtime: python3 example.py libgullet.so"""

import ctypes
import sys

library = ctypes.CDLL(sys.argv[1])
library.gullet_last_error_message.restype = ctypes.c_char_p
library.gullet_spindle_speed.argtypes = [ctypes.c_double, ctypes.c_double, ctypes.POINTER(ctypes.c_double)]


def parse(kind: str, text: str) -> float:
    value = ctypes.c_double()
    size = ctypes.c_size_t(len(text.encode()))
    if library.gullet_parse(kind.encode(), text.encode(), size, ctypes.byref(value)) < 0:
        raise ValueError(library.gullet_last_error_message().decode())
    return value.value


def spindle_speed(cutting_speed: str, diameter: str) -> float:
    speed = ctypes.c_double()
    arguments = parse("velocity", cutting_speed), parse("length", diameter)
    if library.gullet_spindle_speed(*arguments, ctypes.byref(speed)) < 0:
        raise ValueError(library.gullet_last_error_message().decode())
    return speed.value * 60.0


assert f"{spindle_speed('90 ft/min', '1/2 in'):.2f}" == "687.55"
try:
    spindle_speed("90 ft/min", "0 in")
except ValueError as error:
    assert "diameter = 0 mm; admissible: above 0 mm" in str(error), error
else:
    raise AssertionError("a diameter of zero is accepted")
