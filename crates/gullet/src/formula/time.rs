//! Time: approach, travel, facing, tapping, rapids, and what a part takes.

use super::define::formulas;

formulas! {
    topic "time";

    peripheral_approach {
        symbol "l_a", "l_a";
        meaning "Travel of a cutter from first contact to its full radial depth in slab, side or face milling from one edge.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Length;
        equation "l_a = sqrt(a (D - a)); a = min(a_e, D/2)", r"l_a = \sqrt{a (D - a)},\quad a = \min\left(a_e, \frac{D}{2}\right)";
        valid "slab and side milling, face milling with one work edge inside the cutter; beyond half immersion the rim at the height of the axis touches first, so D/2";
        source "circle and chord, derived; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.17 p.228, seen in a companion";
        example "diameter=150 mm; radial_depth=25 mm" => "55.9 mm", 0.0005,
            "P.C. Sharma, A Textbook of Production Engineering, Ex. 4.17 p.228, seen in a companion: printed travel 255.9 mm less the 200 mm length";
        = {
            let a = min(a_e, D / 2.0);
            (a * (D - a)).sqrt()
        }
    }

    face_approach_centred {
        symbol "l_a", "l_a";
        meaning "Travel of a face mill from first contact to the full width of work that is centred on it.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "width of the work";
        -> Length;
        equation "l_a = (D - sqrt(D^2 - a_e^2))/2", r"l_a = \frac{D - \sqrt{D^2 - a_e^2}}{2}";
        valid "work centred on the cutter axis; a finishing pass sweeps on for the whole diameter";
        source "circle and chord, derived";
        example "diameter=80 mm; radial_depth=50 mm" => "8.77501001 mm", 1e-6, "identity";
        = {
            // The same without the difference of two nearly equal lengths.
            let root = max(D * D - a_e * a_e, si(0.0)).sqrt();
            a_e * a_e / (2.0 * (D + root))
        }
    }

    drill_point_length {
        symbol "l_p", "l_p";
        meaning "Length of a drill's point.";
        diameter D: Length, above 0.0, "drill diameter";
        point_angle sigma: Angle, above 0.0, to PI, "point angle";
        -> Length;
        equation "l_p = D/(2 tan(sigma/2))", r"l_p = \frac{D}{2 \tan\frac{\sigma}{2}}";
        valid "straight lips, no allowance for the chisel edge";
        source "geometry, derived";
        example "diameter=25 mm; point_angle=118 deg" => "7.511 mm", 0.0005, "own arithmetic: 12.5/tan(59 deg) mm";
        = D / (2.0 * tan(min(sigma / 2.0, si(PI / 2.0))))
    }

    cutting_time {
        symbol "t", "t";
        meaning "Time of a travel at feed.";
        travel L: Length, from 0.0, "travel with approach and overtravel";
        feed_speed v_f: Velocity, above 0.0, "feed speed";
        -> Time;
        equation "t = L/v_f", r"t = \frac{L}{v_f}";
        valid "constant feed; short fast feeds never reach it";
        source "definition";
        example "travel=650 mm; feed_speed=600 mm/min" => "1.083 min", 0.0005,
            "S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology, Ex. 24.2 p.667, seen in a companion";
        = L / v_f
    }

    facing_time_constant_speed {
        symbol "t", "t";
        meaning "Time of facing or parting at constant cutting speed.";
        outer_diameter D_1: Length, from 0.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, to outer_diameter, "diameter where the cut ends";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        -> Time;
        equation "t = pi (D_1^2 - D_2^2)/(4 v_c f)", r"t = \frac{\pi (D_1^2 - D_2^2)}{4 v_c f}";
        valid "no limit of the spindle speed; towards the centre the spindle would run away: see facing_time_limited_speed";
        source "derived: integral of the speed over the radius; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.13 p.220, seen in a companion";
        example "outer_diameter=250 mm; inner_diameter=100 mm; cutting_speed=27 m/min; feed_per_rev=0.8 mm" => "1.91 min", 0.002,
            "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.13 p.220, seen in a companion";
        = {
            let D_2 = min(D_2, D_1);
            PI * (D_1 - D_2) * (D_1 + D_2) / (4.0 * v_c * f)
        }
    }

    facing_time_limited_speed {
        symbol "t", "t";
        meaning "Time of facing or parting at constant cutting speed up to a limit of the spindle speed.";
        outer_diameter D_1: Length, from 0.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, to outer_diameter, "diameter where the cut ends";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest spindle speed";
        -> Time;
        equation "t = pi (D_1^2 - D_k^2)/(4 v_c f) + (D_k - D_2)/(2 f n_max); D_k = max(D_2, min(D_1, v_c/(pi n_max)))",
            r"t = \frac{\pi (D_1^2 - D_k^2)}{4 v_c f} + \frac{D_k - D_2}{2 f n_\mathrm{max}},\quad D_k = \max\left(D_2, \min\left(D_1, \frac{v_c}{\pi n_\mathrm{max}}\right)\right)";
        valid "D_k is the diameter below which the spindle stays at its largest speed; n in revolutions per second; no time for the spindle to gain speed";
        source "derived: integral of the speed over the radius";
        example "outer_diameter=100 mm; inner_diameter=0 mm; cutting_speed=200 m/min; feed_per_rev=0.2 mm; maximum_speed=3000 rpm" => "0.2052 min", 0.0005,
            "own arithmetic: 0.1875 min at constant cutting speed down to 21.2 mm, then 0.0177 min";
        = {
            let D_2 = min(D_2, D_1);
            let D_k = max(D_2, min(D_1, v_c / (PI * n_max)));
            PI * (D_1 - D_k) * (D_1 + D_k) / (4.0 * v_c * f) + (D_k - D_2) / (2.0 * f * n_max)
        }
    }

    tapping_time {
        symbol "t", "t";
        meaning "Time of tapping one hole: in, out, and two reversals of the spindle.";
        depth L: Length, from 0.0, "depth of the thread";
        approach l_a: Length, from 0.0, "approach above the work";
        lead P: Length, above 0.0, "lead of the thread: pitch times starts";
        spindle_speed n: RotationalSpeed, above 0.0, "spindle speed on the way in";
        reverse_speed n_r: RotationalSpeed, above 0.0, "spindle speed on the way out";
        reversal_time t_r: Time, from 0.0, default 0.0, "time of one reversal of the spindle";
        -> Time;
        equation "t = (L + l_a)/(P n) + (L + l_a)/(P n_r) + 2 t_r",
            r"t = \frac{L + l_a}{P n} + \frac{L + l_a}{P n_r} + 2 t_r";
        valid "n in revolutions per second; two reversals a hole";
        source "derived: turns over speed";
        example "depth=20 mm; approach=4 mm; lead=1.5 mm; spindle_speed=320 rpm; reverse_speed=640 rpm; reversal_time=0.5 s" => "5.5 s", 1e-12,
            "identity: 16 turns in 3.0 s, back in 1.5 s, two reversals";
        = (L + l_a) / (P * n) + (L + l_a) / (P * n_r) + 2.0 * t_r
    }

    rapid_time {
        symbol "t", "t";
        meaning "Time of a rapid move from rest to rest.";
        distance s: Length, from 0.0, "distance";
        rapid_speed v: Velocity, above 0.0, "rapid speed";
        acceleration a: Acceleration, above 0.0, "acceleration, the same to start and to stop";
        -> Time;
        equation "t = s/v + v/a for s >= v^2/a, t = 2 sqrt(s/a) for s < v^2/a",
            r"t = \begin{cases} \frac{s}{v} + \frac{v}{a} & s \ge \frac{v^2}{a} \\ 2 \sqrt{\frac{s}{a}} & s < \frac{v^2}{a} \end{cases}";
        valid "constant acceleration, no limit of jerk; short moves never reach the rapid speed";
        source "derived: motion at constant acceleration";
        example "distance=50 mm; rapid_speed=30 m/min; acceleration=2.5 m/s2" => "0.28284 s", 0.0001, "own arithmetic: 2 sqrt(0.02) s, the speed not reached";
        = select(s >= v * v / a, s / v + v / a, 2.0 * (s / a).sqrt())
    }

    band_saw_time {
        symbol "t", "t";
        meaning "Time of sawing through a section.";
        area A: Area, from 0.0, "area of the section";
        cutting_rate q: AreaRate, above 0.0, "area sawn per time";
        -> Time;
        equation "t = A/q", r"t = \frac{A}{q}";
        valid "mean rate over the section; for a tube the area of the wall, not of the solid";
        source "definition; rates from band-saw charts";
        example "area=28.2743338823081391 in2; cutting_rate=2.5 in2/min" => "11.31 min", 0.001, "identity: 6 in round at 2.5 in2/min";
        = A / q
    }

    tool_change_time_per_part {
        symbol "t", "t";
        meaning "Share of the tool change that falls on one part.";
        cutting_time t_c: Time, from 0.0, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Time;
        equation "t = t_ch q t_c/T", r"t = t_{ch} \frac{q\, t_c}{T}";
        valid "mean over many parts; edges are changed at the end of their life, also within a part";
        source "definition; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.7 p.209, seen in a companion";
        example "cutting_time=2 min; change_time=10 min; tool_life=240 min" => "0.083 min", 0.005,
            "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7 p.209, seen in a companion";
        = t_ch * q * t_c / T
    }

    standard_time {
        symbol "t_s", "t_s";
        meaning "Standard time: the normal time with an allowance.";
        normal_time t: Time, from 0.0, "normal time";
        allowance A: Ratio, from 0.0, "allowance as a share of the normal time";
        -> Time;
        equation "t_s = t (1 + A)", r"t_s = t (1 + A)";
        valid "allowance as a share of the normal time; a share of the standard time would make it t/(1 - A)";
        source "definition";
        example "normal_time=8 min; allowance=15 %" => "9.2 min", 1e-12, "identity: 8 x 1.15 min, not 8/0.85";
        = t * (number(1.0) + A)
    }
}
