"""Wrong uses, which type checkers must find."""

import gullet

gullet.formula.spindle_speed("90 ft/min", "1/2 in")
gullet.formula.spindle_speed(cutting_speed="90 ft/min", diametre="1/2 in")
gullet.formula.spindle_speed(cutting_speed="90 ft/min")
