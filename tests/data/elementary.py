"""Writes elementary.csv: arguments and correctly rounded results of the elementary functions.

Needs mpmath. Run it in this folder: python3 elementary.py > elementary.csv
Columns: function, bits of x, bits of y (pow only), bits of the result, all in hexadecimal.
"""

import math
import random
import struct

import mpmath
from mpmath import mp, mpf

mp.prec = 260
draw = random.Random(20240229)


def bits(x):
    return format(struct.unpack("<Q", struct.pack("<d", x))[0], "x")


def number(pattern):
    return struct.unpack("<d", struct.pack("<Q", pattern))[0]


def rounded(value):
    """The double nearest to an mpf, ties to even, gradual underflow included."""
    sign, mantissa, exponent, _ = value._mpf_
    mantissa = -int(mantissa) if sign else int(mantissa)
    try:
        if exponent >= 0:
            return float(mantissa << exponent)
        return mantissa / (1 << -exponent)
    except OverflowError:
        return math.copysign(math.inf, mantissa)


def doubt(value):
    """Distance of a value from the middle between two doubles, in ulp; small is hard to round."""
    fraction = mpmath.frac(abs(mpmath.ldexp(mpmath.frexp(value)[0], 53)))
    return abs(fraction - mpf(1) / 2)


def between(low, high):
    return lambda: draw.uniform(low, high)


def sizes(low, high, signed=False):
    def one():
        x = math.exp(draw.uniform(math.log(low), math.log(high)))
        return -x if signed and draw.random() < 0.5 else x

    return one


def neighbours(points, steps=2):
    for point in points:
        x = point
        for _ in range(steps):
            x = math.nextafter(x, -math.inf)
        for _ in range(2 * steps + 1):
            yield x
            x = math.nextafter(x, math.inf)


def any_positive():
    return number(draw.randrange(1, 0x7FF0000000000000))


def near_one():
    return 1.0 + draw.choice([-1, 1]) * math.exp(draw.uniform(math.log(1e-16), math.log(0.1)))


def quarter_turns(most):
    return lambda: draw.randrange(1, most) * (math.pi / 2) * (1 + draw.randrange(-2, 3) * 2.0**-53)


turns = [k * math.pi / 4 for k in range(-16, 17)]
circular = (
    [between(-4 * math.pi, 4 * math.pi)] * 4
    + [between(-0.8, 0.8), sizes(1e-300, 1, True), quarter_turns(9), quarter_turns(10430), between(-16384, 16384)],
    turns,
)
unit = (
    [between(-1, 1)] * 4
    + [between(0.45, 0.65), sizes(1e-300, 1, True), lambda: draw.choice([-1, 1]) * (1 - math.exp(draw.uniform(-37, -1)))],
    [-0.5, 0.0, 0.5, math.sqrt(0.5)],
)
plans = {
    "exp": (
        [between(-745.2, 709.8)] * 3 + [between(-1, 1)] * 2 + [sizes(1e-20, 1, True), between(-746, -707)],
        [0.0, -745.13321910194122, -744.44, -708.3964185322641, 709.782712893384, -745.2, 709.8]
        + [k * math.log(2) / 2 for k in range(-9, 10)],
    ),
    "ln": (
        [any_positive, between(0.5, 2), between(0.5, 2), near_one, sizes(1e-12, 1e12), lambda: number(draw.randrange(1, 1 << 52))],
        [1.0, 2.0, 0.5, math.sqrt(2), math.sqrt(0.5), 2.2250738585072014e-308],
    ),
    "sin": circular,
    "cos": circular,
    "tan": circular,
    "asin": unit,
    "acos": unit,
    "atan": (
        [between(-3, 3)] * 3 + [sizes(1e-3, 1e3, True), sizes(1e-300, 1e300, True)],
        [c / 16 for c in (0, 7, 11, 19, 39, -7, -11, -19, -39)],
    ),
}
names = {"ln": "log", "pow": "power", "fractional_power": "power"}

# Where a search over millions of arguments found the functions furthest off.
furthest = {
    "exp": [-708.7741942257675, -0.3371677836181495, -708.7417533051093],
    "ln": [0.3865775038377813, 0.705996337054384, 1.0975478511366907],
    "sin": [-11.787118114749706, -0.786166538263762, 14585.636387882496],
    "cos": [-0.8058415304315165, -0.7986725818992886, 8522.30791056691],
    "tan": [2.3570432932515946, 0.7826475258555541, -13288.164325640486],
    "asin": [0.5268664137068764, -0.5003320588515591, 0.6051670522124108],
    "acos": [0.6087289814912882, 0.6064984618920612, 0.6060537168293574],
    "atan": [2.6455906807442453, 0.6858170279827095, 0.6884793141540578],
    "pow": [
        (1.0897837832381807, -6322.4222758265905),
        (0.9138085247287044, -6359.050282104315),
        (0.9170518433938516, -4849.7068887374035),
        (1.083087780418726, -8476.617079235424),
        (0.9154177325230859, 4438.969081962078),
        (1.0795917562839081, 8434.802254939874),
        (1.084053963038411, 5874.418228519506),
    ],
    "inverse_half_versine": [0.2198796702956597, 0.19480228336261385, 0.214302812128627],
    "fractional_power": [
        (1.4010926662639231, -0.9375055685245369),
        (1.4329455608206465, 0.9843566727054067),
        (0.7081867098396708, 0.9167826195404694),
    ],
}


def write(function, arguments, count, hard):
    """Half of the rows as they come, half those hardest to round out of many."""
    seen = set()
    exact = globals().get(function) or getattr(mpmath, names.get(function, function))

    def row(args):
        if args in seen:
            return None
        seen.add(args)
        value = exact(*map(mpf, args))
        return args, value

    rows = [r for r in map(row, arguments[:count]) if r]
    rest = [r for r in map(row, arguments[count:]) if r and r[1] != 0]
    rest.sort(key=lambda r: doubt(r[1]))
    for args, value in rows + rest[:hard]:
        result = rounded(value)
        if result == 0:
            # The sign of a zero is the argument's for odd functions; all others give +0.
            result = math.copysign(0.0, args[0]) if function in ("sin", "tan", "asin", "atan") else 0.0
        second = bits(args[1]) if len(args) > 1 else ""
        print(f"{function},{bits(args[0])},{second},{bits(result)}")


def inverse_half_versine(x):
    return 2 * mpmath.asin(mpmath.sqrt(x))


def plan(kinds, spots, inside):
    points = [x for x in neighbours(spots) if inside(x)]
    points += [x for x in (draw.choice(kinds)() for _ in range(12000)) if inside(x)]
    return [(x,) for x in points]


def power():
    """x and y whose power a double can hold, the extremes included."""
    kind = draw.randrange(5)
    x = [sizes(1e-12, 1e12), between(0.5, 2), near_one, sizes(1e-3, 1e3), any_positive][kind]()
    limit = abs(math.log(x)) or 1.0
    y = draw.uniform(-0.4, 0.4) if kind == 3 else draw.uniform(-745, 709) / math.copysign(limit, x - 1)
    return x, y


def fraction():
    kinds = [sizes(1e-12, 1e12), between(0.5, 2), near_one, sizes(1e-3, 1e3), any_positive]
    return draw.choice(kinds)(), draw.uniform(-1, 1)


print("function,x,y,result")
inside = {"ln": lambda x: x > 0, "asin": lambda x: abs(x) <= 1, "acos": lambda x: abs(x) <= 1}
for function, (kinds, spots) in plans.items():
    write(function, [(x,) for x in furthest[function]] + plan(kinds, spots, inside.get(function, lambda x: True)), 1000, 500)
squares = [(float(k), float(n)) for k in range(1, 12) for n in (1, 2, 3, -1, 0)]
roots = [(float(k * k), 0.5) for k in range(1, 40)]
write("pow", furthest["pow"] + squares + roots + [power() for _ in range(12000)], 1000, 500)
half = [between(0, 0.5)] * 3 + [between(0.2, 0.3), sizes(1e-300, 0.5)]
spots = plan(half, [0.0, 0.25, 0.5], lambda x: 0 <= x <= 0.5)
write("inverse_half_versine", [(x,) for x in furthest["inverse_half_versine"]] + spots, 1000, 500)
ends = [(x, y) for x in (5e-324, 2.2250738585072014e-308, 0.5, 1.0, 2.0, 1.7976931348623157e308) for y in (-1.0, -0.25, 0.0, 0.25, 1.0)]
ends = [(x, y) for x, y in ends if (x, y) != (5e-324, -1.0)]
write("fractional_power", furthest["fractional_power"] + ends + [fraction() for _ in range(12000)], 1000, 500)
