//! Tapping: tap drills by rule and for forming taps, depth of the hole, torque, and how far a tap runs
//! on when the spindle stops.

use crate::formula::define::formulas;

formulas! {
    topic "thread";

    tap_drill_by_rule {
        symbol "d", "d";
        meaning "Tap drill by the rule of the workshop: major diameter less the pitch.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter, "pitch";
        -> Length;
        equation "d = D - P", r"d = D - P";
        valid "60 deg threads, cutting taps; 77 % of thread on the basis of tap-drill charts, 92 % of the ISO and UN overlap; the standard rounds to a drill at hand";
        source "ISO 2306, from memory";
        example "major_diameter=12 mm; pitch=1.75 mm" => "10.2 mm", 5e-3, "ISO 2306, M12, from memory: rounded to a drill";
        = max(D - P, si(0.0))
    }

    form_tap_drill_diameter {
        symbol "d", "d";
        meaning "Drill diameter for a forming tap that is to leave a percentage of thread.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, "pitch";
        thread_percent p: Ratio, from 0.0, below major_diameter / (0.68 * pitch), "percentage of thread";
        -> Length;
        equation "d = D - 0.68 p P", r"d = D - 0.68\, p\, P";
        valid "60 deg threads; forming taps move metal into the crest, so the hole is larger than for a cutting tap; percentages near 65 are usual; trial holes decide";
        source "form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from memory";
        example "major_diameter=1/4 in; pitch=0.05 in; thread_percent=65 %" => "0.2279 in", 1e-9, "own arithmetic: 0.25 - 0.68 x 0.65/20 in";
        = max(D - 0.68 * p * P, si(0.0))
    }

    form_thread_percent {
        symbol "p", "p";
        meaning "Percentage of thread that a forming tap leaves in a drilled hole.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, "pitch";
        drill_diameter d: Length, above 0.0, to major_diameter, "drill diameter";
        -> Ratio;
        equation "p = (D - d)/(0.68 P)", r"p = \frac{D - d}{0.68\, P}";
        valid "60 deg threads; forming taps; not the percentage of a cutting tap";
        source "form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from memory";
        example "major_diameter=6 mm; pitch=1 mm; drill_diameter=5.558 mm" => "65 %", 1e-9, "own arithmetic: 0.442/0.68";
        = max((D - d) / (0.68 * P), number(0.0))
    }

    tapping_hole_depth {
        symbol "l", "l";
        meaning "Depth at full diameter of the drilled hole that a tapped depth needs.";
        thread_depth b: Length, above 0.0, "depth of full thread";
        pitch P: Length, above 0.0, "pitch";
        chamfer_threads c: Ratio, from 0.0, "length of the tap's chamfer in threads";
        clearance l_c: Length, from 0.0, default 0.0, "room below the tap, for chips and its point";
        -> Length;
        equation "l = b + c P + l_c", r"l = b + c P + l_c";
        valid "blind holes; chamfers of about 8 threads (taper), 4 (plug), 1.5 (bottoming), from memory";
        source "definition; the chamfers: ASME B94.9, from memory";
        example "thread_depth=15 mm; pitch=1.5 mm; chamfer_threads=4; clearance=2 mm" => "23 mm", 1e-12, "own arithmetic";
        = b + c * P + l_c
    }

    tap_chip_thickness {
        symbol "h", "h";
        meaning "Undeformed chip thickness of a tooth in the chamfer of a cutting tap.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        drill_diameter d: Length, above 0.0, to major_diameter, "diameter of the drilled hole";
        chamfer_threads c: Ratio, above 0.0, "length of the tap's chamfer in threads";
        flutes z: Count, from 1.0, "flutes of the tap";
        -> Length;
        equation "h = (D - d)/(2 c z)", r"h = \frac{D - d}{2\, c\, z}";
        valid "measured square to the axis; the teeth of the chamfer share the height alike; one start";
        source "derived: half the difference of the diameters over the teeth of the chamfer";
        example "major_diameter=10 mm; drill_diameter=8.5 mm; chamfer_threads=4; flutes=3" => "0.0625 mm", 1e-12, "own arithmetic: 0.75/12 mm";
        = max(D - d, si(0.0)) / (2.0 * c * z)
    }

    tapping_torque {
        symbol "M_c", "M_c";
        meaning "Torque of a cutting tap.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, "pitch";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the chip thickness of a tooth of the chamfer";
        factor K: Ratio, above 0.0, default 1.5, "wear and friction; 1.3 to 2";
        -> Torque;
        equation "M_c = P^2 D k_c K/8", r"M_c = \frac{P^2 D\, k_c\, K}{8}";
        valid "60 deg threads of one start; rough, within 50 % either way: a dull tap or packed flutes multiply it; never for a forming tap";
        source "form of German handbooks, from memory: half of the section of the thread, about P^2/4, at the radius D/2";
        example "major_diameter=10 mm; pitch=1.5 mm; specific_cutting_force=3200 N/mm2" => "13.5 N.m", 1e-12, "own arithmetic: 2.25 x 10 x 3200 x 1.5/8 N mm";
        = torque(P * P * D * k_c * K / 8.0)
    }

    tap_stopping_turns {
        symbol "N", "N";
        meaning "Turns that a tap makes while the spindle comes to a stop.";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        stopping_time t_s: Time, from 0.0, "time from full speed to a stop; half of a reversal between equal speeds";
        -> Turns;
        equation "N = n t_s/2", r"N = \frac{n\, t_s}{2}";
        valid "even slowing down; n in revolutions per second";
        source "derived: mean speed n/2 over the stop";
        example "spindle_speed=600 rpm; stopping_time=0.4 s" => "2 turns", 1e-12, "own arithmetic: 10 x 0.4/2";
        = n * t_s / 2.0
    }

    tap_stopping_travel {
        symbol "l_s", "l_s";
        meaning "Depth that a tap goes on while the spindle comes to a stop.";
        lead P: Length, above 0.0, "lead of the thread: pitch times starts";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        stopping_time t_s: Time, from 0.0, "time from full speed to a stop; half of a reversal between equal speeds";
        -> Length;
        equation "l_s = P n t_s/2", r"l_s = \frac{P\, n\, t_s}{2}";
        valid "even slowing down, feed tied to the turns; n in revolutions per second; a control that brakes ahead of the depth needs this length above it instead";
        source "derived: mean speed n/2 over the stop";
        example "lead=1.5 mm; spindle_speed=600 rpm; stopping_time=0.4 s" => "3 mm", 1e-12, "own arithmetic: 1.5 x 2 turns";
        = P * n * t_s / 2.0
    }

    tapping_speed_for_stopping_travel {
        symbol "n", "n";
        meaning "Spindle speed at which a tap stops within a length.";
        stopping_travel l_s: Length, from 0.0, "length in which the tap has to stop";
        lead P: Length, above 0.0, "lead of the thread: pitch times starts";
        stopping_time t_s: Time, above 0.0, "time from full speed to a stop; half of a reversal between equal speeds";
        -> RotationalSpeed;
        equation "n = 2 l_s/(P t_s)", r"n = \frac{2\, l_s}{P\, t_s}";
        valid "even slowing down, feed tied to the turns; n in revolutions per second; the time of the stop is that of the full speed";
        source "derived: mean speed n/2 over the stop";
        example "stopping_travel=3 mm; lead=1.5 mm; stopping_time=0.4 s" => "600 rpm", 1e-12, "own arithmetic: 2 x 3/(1.5 x 0.4) revolutions per second";
        = 2.0 * l_s / (P * t_s)
    }
}
