//! Spindle speed, cutting speed, feed: how turning and feeding belong together.

use super::define::formulas;

formulas! {
    topic "rotation";

    spindle_speed {
        symbol "n", "n";
        meaning "Spindle speed that gives a cutting speed at a diameter.";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed";
        diameter D: Length, above 0.0, "diameter that cuts: the effective diameter of a ball or bull nose";
        -> RotationalSpeed;
        equation "n = v_c/(pi D)", r"n = \frac{v_c}{\pi D}";
        valid "any process with a rotating tool or workpiece; n in revolutions per second";
        source "definition; symbols of ISO 3002-1 and -3, from memory";
        example "cutting_speed=300 ft/min; diameter=0.375 in" => "3056 rpm", 5e-4,
            "Bingham, Milling Procedures (teaching web page), seen";
        = v_c / (PI * D)
    }

    cutting_speed {
        symbol "v_c", "v_c";
        meaning "Cutting speed at a diameter that turns at a spindle speed.";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        diameter D: Length, above 0.0, "diameter that cuts: the effective diameter of a ball or bull nose";
        -> Velocity;
        equation "v_c = pi D n", r"v_c = \pi\, D\, n";
        valid "any process with a rotating tool or workpiece; n in revolutions per second";
        source "definition; symbols of ISO 3002-1 and -3, from memory";
        example "spindle_speed=150 rpm; diameter=30 mm" => "14.13 m/min", 1e-3,
            "El-Hofy, Fundamentals of Machining Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen";
        = PI * D * n
    }

    rule_of_thumb_speed {
        symbol "n", "n";
        meaning "Spindle speed by the shop rule K times cutting speed in ft/min over diameter in inches.";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed";
        diameter D: Length, above 0.0, "diameter that cuts";
        constant K: Ratio, above 0.0, default 4.0, "constant of the rule: 4 or 3.82";
        -> RotationalSpeed;
        equation "n = K v_c/(12 D)", r"n = \frac{K\, v_c}{12\, D}";
        valid "a shop rule for mental arithmetic, not the exact speed: the exact constant is 12/pi = 3.8197, so K = 4 reads 4.72 % high (factor pi/3) and K = 3.82 reads 0.0074 % high; the 12 turns feet into inches, so that K stands for rpm, ft/min and in";
        source "shop rule on student-shop sheets and in a chapter of the Society of Manufacturing Engineers, both seen; error derived";
        example "cutting_speed=300 ft/min; diameter=0.5 in" => "2400 rpm", 1e-9, "identity: 4 x 300/0.5";
        = K * v_c / (12.0 * D)
    }

    feed_per_rev {
        symbol "f", "f";
        meaning "Feed per revolution of a cutter with several teeth.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        teeth z: Count, from 1.0, "effective teeth";
        -> Length;
        equation "f = f_z z", r"f = f_z\, z";
        valid "z counts the teeth that share one cut: half of them for one flank of a staggered side cutter, one where run-out exceeds the feed per tooth";
        source "definition; symbols of ISO 3002-3, from memory";
        example "feed_per_tooth=0.05 mm; teeth=4" => "0.2 mm", 1e-9, "identity";
        = f_z * z
    }

    table_feed {
        symbol "v_f", "v_f";
        meaning "Table feed of a milling cutter.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        teeth z: Count, from 1.0, "effective teeth";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> Velocity;
        equation "v_f = f_z z n", r"v_f = f_z\, z\, n";
        valid "feed of the cutter's axis relative to the work; n in revolutions per second";
        source "definition; symbols of ISO 3002-3, from memory";
        example "feed_per_tooth=0.001 in; teeth=2; spindle_speed=3056 rpm" => "6.1 in/min", 5e-3,
            "Bingham, Milling Procedures (teaching web page), seen";
        = f_z * z * n
    }

    feed_per_tooth {
        symbol "f_z", "f_z";
        meaning "Feed per tooth that a table feed amounts to.";
        table_feed v_f: Velocity, from 0.0, "table feed";
        teeth z: Count, from 1.0, "effective teeth";
        spindle_speed n: RotationalSpeed, above 0.0, "spindle speed";
        -> Length;
        equation "f_z = v_f/(z n)", r"f_z = \frac{v_f}{z\, n}";
        valid "feed of the cutter's axis relative to the work; n in revolutions per second";
        source "definition; symbols of ISO 3002-3, from memory";
        example "table_feed=600 mm/min; teeth=10; spindle_speed=100 rpm" => "0.6 mm", 1e-9,
            "Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open textbook-companion file), seen";
        = v_f / (z * n)
    }

    spindle_speed_for_feed {
        symbol "n", "n";
        meaning "Spindle speed at which a table feed gives a feed per tooth.";
        table_feed v_f: Velocity, from 0.0, "table feed";
        feed_per_tooth f_z: Length, above 0.0, "feed per tooth";
        teeth z: Count, from 1.0, "effective teeth";
        -> RotationalSpeed;
        equation "n = v_f/(f_z z)", r"n = \frac{v_f}{f_z\, z}";
        valid "feed of the cutter's axis relative to the work; n in revolutions per second";
        source "definition; symbols of ISO 3002-3, from memory";
        example "table_feed=120 mm/min; feed_per_tooth=0.1 mm; teeth=8" => "150 rpm", 1e-9,
            "El-Hofy, Fundamentals of Machining Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen";
        = v_f / (f_z * z)
    }

    feed_rate {
        symbol "v_f", "v_f";
        meaning "Feed rate that a feed per revolution gives.";
        feed_per_rev f: Length, from 0.0, "feed per revolution; the lead in tapping";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> Velocity;
        equation "v_f = f n", r"v_f = f\, n";
        valid "turning, boring, drilling, reaming; tapping with f = lead; n in revolutions per second";
        source "definition; symbols of ISO 3002-3, from memory";
        example "feed_per_rev=0.24 mm; spindle_speed=176 rpm" => "42.24 mm/min", 1e-9,
            "own arithmetic on the inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.130";
        = f * n
    }

    pulley_speed {
        symbol "n", "n";
        meaning "Spindle speed of a belt step.";
        motor_speed n_m: RotationalSpeed, from 0.0, "speed of the driving pulley";
        driver_diameter d_1: Length, above 0.0, "diameter of the driving pulley";
        driven_diameter d_2: Length, above 0.0, "diameter of the driven pulley";
        -> RotationalSpeed;
        equation "n = n_m d_1/d_2", r"n = n_m \frac{d_1}{d_2}";
        valid "one belt without slip; n in revolutions per second";
        source "derived: both pulleys run at the belt's speed";
        example "motor_speed=1200 rpm; driver_diameter=6 in; driven_diameter=1.5 in" => "4800 rpm", 1e-9,
            "public training pages on milling machines, milling machine 6, seen";
        = n_m * d_1 / d_2
    }

    geometric_step_ratio {
        symbol "q", "q";
        meaning "Ratio of neighbouring speeds in a geometric series of spindle speeds.";
        lowest n_min: RotationalSpeed, above 0.0, to highest, "lowest speed";
        highest n_max: RotationalSpeed, above 0.0, "highest speed";
        steps k: Count, from 2.0, "number of speeds";
        -> Ratio;
        equation "q = (n_max/n_min)^(1/(k - 1))", r"q = \left(\frac{n_\mathrm{max}}{n_\mathrm{min}}\right)^{\frac{1}{k - 1}}";
        valid "series designed after ISO 3 preferred numbers and the like";
        source "definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex. 22.2 p.778, seen in a companion";
        example "lowest=72 rpm; highest=720 rpm; steps=11" => "1.2589", 1e-4,
            "public solution: 11 spindle speeds from 72 to 720 rpm in geometric progression, seen";
        = pow(n_max / n_min, number(1.0) / (k - number(1.0)))
    }

    geometric_step_speed {
        symbol "n_i", "n_i";
        meaning "One speed of a geometric series of spindle speeds.";
        lowest n_min: RotationalSpeed, above 0.0, to highest, "lowest speed";
        highest n_max: RotationalSpeed, above 0.0, "highest speed";
        steps k: Count, from 2.0, "number of speeds";
        index i: Count, from 1.0, to steps, "place in the series, 1 for the lowest speed";
        -> RotationalSpeed;
        equation "n_i = n_min (n_max/n_min)^((i - 1)/(k - 1))",
            r"n_i = n_\mathrm{min} \left(\frac{n_\mathrm{max}}{n_\mathrm{min}}\right)^{\frac{i - 1}{k - 1}}";
        valid "series designed after ISO 3 preferred numbers and the like; the speeds on a machine's plate are rounded";
        source "definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex. 22.2 p.778, seen in a companion";
        example "lowest=72 rpm; highest=720 rpm; steps=11; index=5" => "180.85 rpm", 1e-4,
            "public solution: 11 spindle speeds from 72 to 720 rpm in geometric progression, seen";
        = n_min * pow(n_max / n_min, (i - number(1.0)) / (k - number(1.0)))
    }

    handwheel_turns {
        symbol "N", "N";
        meaning "Turns of a handwheel for a travel.";
        travel s: Length, "travel; its sign is kept";
        travel_per_turn L: Length, above 0.0, "travel per turn of the handwheel";
        -> Turns;
        equation "N = s/L", r"N = \frac{s}{L}";
        valid "screw without backlash: approach from the same side each time";
        source "definition";
        example "travel=1.375 in; travel_per_turn=0.200 in" => "6.875 turns", 1e-9, "identity";
        = s / L
    }

    handwheel_rate {
        symbol "n_h", "n_h";
        meaning "Speed at which a handwheel is turned for a table feed.";
        table_feed v_f: Velocity, from 0.0, "table feed";
        travel_per_turn L: Length, above 0.0, "travel per turn of the handwheel";
        -> RotationalSpeed;
        equation "n_h = v_f/L", r"n_h = \frac{v_f}{L}";
        valid "a hand turns unevenly: the feed is a target; n_h in revolutions per second";
        source "definition";
        example "table_feed=10 in/min; travel_per_turn=0.200 in" => "50 rpm", 1e-9,
            "identity: 10/0.2 turns a minute";
        = v_f / L
    }
}
