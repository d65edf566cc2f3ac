//! Single-point threading: heights, infeeds, chip, run-in, speed limits and time.

use super::define::formulas;

formulas! {
    topic "threading";

    compound_infeed {
        symbol "s", "s";
        meaning "Infeed of a compound slide that is set near the flank of the thread.";
        thread_height h: Length, from 0.0, "height of the thread, on the radius";
        compound_angle alpha: Angle, from 0.0, below PI / 2.0, default 29.5 * PI / 180.0, "angle of the slide, from the square of the axis";
        -> Length;
        equation "s = h/cos(alpha)", r"s = \frac{h}{\cos\alpha}";
        valid "slide set a little below half the thread angle, so that the trailing flank is shaved; the dial of the slide reads this way, the cross slide none of it";
        source "right triangle, derived; 29 to 29.5 deg: training manual on lathe threading, seen";
        example "thread_height=0.0811899 in; compound_angle=29 deg" => "0.0928 in", 0.0006,
            "public threading table: 8 threads an inch of the old American form (height 0.64952 P), seen";
        = h / cos(alpha)
    }

    threading_infeed {
        symbol "da_i", r"\Delta a_i";
        meaning "Infeed of one pass of single-point threading at equal chip area.";
        thread_height h: Length, from 0.0, "height of the thread";
        passes N: Count, from 1.0, "number of passes";
        index i: Count, from 1.0, to passes, "number of the pass";
        -> Length;
        equation "da_i = h (sqrt(i) - sqrt(i - 1))/sqrt(N)", r"\Delta a_i = h\, \frac{\sqrt{i} - \sqrt{i - 1}}{\sqrt{N}}";
        valid "as threading_depth, of which it is the step; the last ones should not fall below about 0.05 mm (common practice, no source), or the tool rubs";
        source "derived: difference of two depths";
        example "thread_height=1.2 mm; passes=9; index=1" => "0.4 mm", 1e-12, "identity: a third";
        = {
            // The same without the difference of two near roots.
            let before = max(i - number(1.0), number(0.0));
            h / (sqrt(N) * (sqrt(i) + sqrt(before)))
        }
    }

    threading_chip_section {
        symbol "A", "A";
        meaning "Section that a pass of single-point threading cuts.";
        depth a_2: Length, above 0.0, "depth from the crest after the pass";
        previous_depth a_1: Length, from 0.0, to depth, "depth from the crest before the pass";
        tool_flat w: Length, from 0.0, default 0.0, "flat or width of the rounding at the tip of the tool";
        flank_angle alpha: Angle, above 0.0, below PI / 2.0, default PI / 6.0, "half the angle of the thread";
        -> Area;
        equation "A = (a_2 - a_1) (w + (a_2 + a_1) tan(alpha))", r"A = (a_2 - a_1) \left(w + (a_2 + a_1) \tan\alpha\right)";
        valid "symmetrical thread; the same whether fed in square to the axis or along a flank; with a sharp tip equal steps of the squared depth cut equal sections";
        source "trapezium, derived";
        example "depth=0.5 mm; previous_depth=0.3 mm; tool_flat=0.2 mm; flank_angle=45 deg" => "0.2 mm2", 1e-9, "identity: 0.2 x (0.2 + 0.8) mm2";
        = max(a_2 - a_1, si(0.0)) * (w + (a_2 + a_1) * tan(alpha))
    }

    threading_edge_length {
        symbol "l", "l";
        meaning "Length of edge in the cut of a threading tool that is fed in square to the axis.";
        depth a: Length, above 0.0, "depth from the crest after the pass";
        tool_flat w: Length, from 0.0, default 0.0, "flat or width of the rounding at the tip of the tool";
        flank_angle alpha: Angle, above 0.0, below PI / 2.0, default PI / 6.0, "half the angle of the thread";
        -> Length;
        equation "l = w + 2 a/cos(alpha)", r"l = w + \frac{2 a}{\cos\alpha}";
        valid "both flanks cut; along the compound slide about half of it; section over edge is the mean chip thickness";
        source "trapezium, derived";
        example "depth=0.5 mm; tool_flat=0.2 mm; flank_angle=60 deg" => "2.2 mm", 1e-9, "identity: 0.2 + 4 x 0.5 mm";
        = w + 2.0 * a / cos(alpha)
    }

    threading_mean_chip_thickness {
        symbol "h_m", "h_m";
        meaning "Mean undeformed chip thickness of a pass of single-point threading.";
        chip_section A: Area, from 0.0, "section that the pass cuts";
        edge_length l: Length, above 0.0, "length of edge in the cut";
        -> Length;
        equation "h_m = A/l", r"h_m = \frac{A}{l}";
        valid "section spread over the edge; fed in square to the axis the chips of both flanks run into each other and bind";
        source "derived: equal section";
        example "chip_section=0.2 mm2; edge_length=2 mm" => "0.1 mm", 1e-12, "identity";
        = A / l
    }

    threading_run_in {
        symbol "l_a", "l_a";
        meaning "Shortest run-in in which the carriage reaches the speed of a thread.";
        lead P_h: Length, above 0.0, "lead of the thread";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        acceleration a: Acceleration, above 0.0, "acceleration of the carriage";
        -> Length;
        equation "l_a = (P_h n)^2/(2 a)", r"l_a = \frac{(P_h n)^2}{2 a}";
        valid "constant acceleration from rest; the first turns of a thread that starts sooner have a wrong lead; controls add a lag of their own; n in revolutions per second";
        source "derived: motion at constant acceleration";
        example "lead=2 mm; spindle_speed=3000 rpm; acceleration=2 m/s2" => "2.5 mm", 1e-12, "identity: 0.1^2/4 m";
        = {
            let v = P_h * n;
            v * v / (2.0 * a)
        }
    }

    threading_speed_for_run_in {
        symbol "n", "n";
        meaning "Largest spindle speed at which a run-in suffices for a thread.";
        lead P_h: Length, above 0.0, "lead of the thread";
        run_in l_a: Length, from 0.0, "room before the first turn";
        acceleration a: Acceleration, above 0.0, "acceleration of the carriage";
        -> RotationalSpeed;
        equation "n = sqrt(2 a l_a)/P_h", r"n = \frac{\sqrt{2 a l_a}}{P_h}";
        valid "as threading_run_in; n in revolutions per second";
        source "derived: inverse of threading_run_in";
        example "lead=2 mm; run_in=2.5 mm; acceleration=2 m/s2" => "3000 rpm", 1e-12, "identity: 0.1/0.002 turns a second";
        = (2.0 * a * l_a).sqrt() / P_h
    }

    threading_speed_for_carriage {
        symbol "n", "n";
        meaning "Largest spindle speed of a thread that the carriage can follow.";
        carriage_speed v_max: Velocity, above 0.0, "largest feed speed of the carriage, or what a hand can stop at a shoulder";
        lead P_h: Length, above 0.0, "lead of the thread";
        -> RotationalSpeed;
        equation "n = v_max/P_h", r"n = \frac{v_\mathrm{max}}{P_h}";
        valid "the carriage moves one lead a turn whatever the cutting speed; n in revolutions per second";
        source "derived: feed_rate solved for the spindle speed";
        example "carriage_speed=6 m/min; lead=4 mm" => "1500 rpm", 1e-12, "identity: 6000/4 turns a minute";
        = v_max / P_h
    }

    threading_most_passes {
        symbol "N_max", r"N_\mathrm{max}";
        meaning "Most passes of single-point threading at equal chip area whose last infeed still cuts.";
        thread_height h: Length, above 0.0, "height of the thread";
        smallest_infeed s: Length, above 0.0, default 0.05e-3, "smallest infeed of a pass";
        -> Count;
        equation "N_max = floor(c^2/(2 c - 1)); c = max(h/s, 1)", r"N_\mathrm{max} = \left\lfloor\frac{c^2}{2 c - 1}\right\rfloor,\quad c = \max\left(\frac{h}{s}, 1\right)";
        valid "at least 1; a quotient within 1e-9, relative, below a whole number counts as that number; an infeed below about 0.05 mm rubs (common practice, no source)";
        source "derived: threading_infeed of the last pass, solved for the number of passes";
        example "thread_height=1 mm; smallest_infeed=0.1 mm" => "5", 1e-12,
            "own arithmetic: the fifth of five passes takes 0.106 mm, the sixth of six 0.087 mm";
        = {
            let c = max(h / s, number(1.0));
            floor(c * c / (2.0 * c - number(1.0)) * (1.0 + crate::formula::cost::WHOLE))
        }
    }

    threading_pass_count {
        symbol "N_t", "N_t";
        meaning "Passes of single-point threading over all starts, spring passes included.";
        passes N: Count, from 1.0, "passes that cut, for one start";
        spring_passes N_s: Count, from 0.0, default 1.0, "passes without infeed, for one start";
        starts s: Count, from 1.0, default 1.0, "starts of the thread";
        -> Count;
        equation "N_t = s (N + N_s)", r"N_t = s (N + N_s)";
        valid "every start is cut by itself to the full depth";
        source "definition";
        example "passes=8; spring_passes=2; starts=3" => "30", 1e-12, "identity";
        = s * (N + N_s)
    }

    threading_time {
        symbol "t", "t";
        meaning "Time of single-point threading over all passes.";
        length l: Length, from 0.0, "length of the thread";
        run_in l_a: Length, from 0.0, default 0.0, "run-in before the thread";
        run_out l_u: Length, from 0.0, default 0.0, "run-out beyond it";
        lead P_h: Length, above 0.0, "lead of the thread";
        spindle_speed n: RotationalSpeed, above 0.0, "spindle speed";
        passes N: Count, from 1.0, "number of passes, spring passes and every start included";
        return_time t_r: Time, from 0.0, default 0.0, "time of one return to the start";
        -> Time;
        equation "t = N ((l + l_a + l_u)/(P_h n) + t_r)", r"t = N \left(\frac{l + l_a + l_u}{P_h n} + t_r\right)";
        valid "every pass over the same way; n in revolutions per second";
        source "derived: turns over speed; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.21 p.231, seen in a companion";
        example "length=89 mm; lead=2 mm; spindle_speed=108.514733926292 rpm; passes=5" => "2.05 min", 0.002,
            "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.21 p.231, seen in a companion: 5 passes of 89 mm at 217.03 mm/min, which is 2 mm of lead at 108.5 rpm";
        = N * ((l + l_a + l_u) / (P_h * n) + t_r)
    }
}
