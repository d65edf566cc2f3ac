//! Thread milling: size of the cutter, travel on the helix, removal.

use super::define::formulas;
use super::finish::SQRT_3;

formulas! {
    topic "thread_milling";

    thread_mill_largest_diameter {
        symbol "D_c", "D_c";
        meaning "Largest thread mill for an internal thread.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        diameter_ratio k: Ratio, above 0.0, below 1.0, default 0.7, "cutter over major diameter that is allowed";
        -> Length;
        equation "D_c = k D", r"D_c = k D";
        valid "ratios of 2/3 to 3/4 keep the flanks true enough for common threads; internal_thread_mill_widening tells how true; coarse pitches need less";
        source "common practice, no source";
        example "major_diameter=12 mm; diameter_ratio=0.75" => "9 mm", 1e-12, "own arithmetic";
        = k * D
    }

    internal_thread_mill_widening {
        symbol "delta_f", r"\delta_f";
        meaning "Axial amount by which a ringed cutter of the thread's own profile mills each flank of an internal thread too wide.";
        pitch P: Length, from 0.0, "lead of the thread; its pitch where it has one start";
        feature_diameter D: Length, above 0.0, "diameter at which the flank is looked at";
        cutter_diameter D_c: Length, above 0.0, below feature_diameter, "cutter diameter";
        flank_angle alpha: Angle, above 0.0, below PI / 2.0, default PI / 6.0, "angle of the flank from the normal to the axis; 30 deg of 60 deg threads";
        -> Length;
        equation "delta_f = P^2 D_c/(4 pi^2 tan(alpha) D (D - D_c))", r"\delta_f = \frac{P^2 D_c}{4 \pi^2 \tan\alpha\, D (D - D_c)}";
        valid "cutter axis along the thread's, rings without lead; second order of the angle beside the deepest point: within 7 % of the exact envelope for common metric threads";
        source "derived: envelope of the rings along the helix";
        example "pitch=1.5 mm; feature_diameter=20 mm; cutter_diameter=16 mm" => "0.0197430118 mm", 1e-8, "identity: 36/(320 pi^2 tan(30 deg)) mm";
        = P * P * D_c / (4.0 * PI * PI * tan(alpha) * D * (D - D_c))
    }

    thread_mill_axial_shift {
        symbol "L_s", "L_s";
        meaning "Axial shift between two turns of a thread mill with several rings: the whole pitches its rings cover.";
        cutting_length l: Length, from pitch, "length of the rings";
        pitch P: Length, above 0.0, "pitch of the thread";
        -> Length;
        equation "L_s = P floor(l/P)", r"L_s = P \left\lfloor\frac{l}{P}\right\rfloor";
        valid "single start; a quotient within 1e-9, relative, below a whole number counts as that number; passes by pass_count over the thread's length";
        source "derived: rings fall into their own grooves only after whole pitches";
        example "cutting_length=10 mm; pitch=1.5 mm" => "9 mm", 1e-12, "own arithmetic: six pitches";
        = P * max(floor((l / P) * (1.0 + crate::formula::cost::WHOLE)), number(1.0))
    }

    thread_milling_travel {
        symbol "L", "L";
        meaning "Travel of the cutter centre at one axial position of a thread mill, or at one level of a bore: in, turns, out.";
        turn_length L_t: Length, above 0.0, "travel of one turn of the helix";
        turns k: Turns, from 1.0, "turns: one with rings over the whole length, one a pitch with a single ring";
        entry_length l_e: Length, from 0.0, "travel of the entry arc; the exit is as long";
        -> Length;
        equation "L = k L_t + 2 l_e", r"L = k L_t + 2 l_e";
        valid "turn_length by helix_turn_length over the pitch; feed of the cutter centre by inside_arc_feed at the major diameter, by outside_arc_feed at the minor one";
        source "derived: sum of the moves";
        example "turn_length=20 mm; turns=1; entry_length=6 mm" => "32 mm", 1e-12, "own arithmetic";
        = k * L_t + 2.0 * l_e
    }

    thread_milling_removal_rate {
        symbol "Q", "Q";
        meaning "Mean removal rate while a thread mill cuts an internal thread of 60 deg from its minor diameter to its full depth in one turn.";
        pitch P: Length, above 0.0, "pitch of the thread";
        thread_length l: Length, from 0.0, "length of the thread that is cut at once";
        pitch_diameter D_2: Length, above 0.0, "pitch diameter of the thread";
        turn_time t: Time, above 0.0, "time of the turn";
        -> VolumeRate;
        equation "Q = (35 sqrt(3)/256) pi D_2 P l/t", r"Q = \frac{35 \sqrt{3}}{256} \pi D_2 P \frac{l}{t}";
        valid "basic profile of ISO 68-1: a groove 5/8 H deep, 3/4 P wide at the minor and 1/8 P at the major diameter; the tap drill at the minor diameter";
        source "derived: section 35 sqrt(3)/256 P^2 of the groove, one groove a pitch, on the pitch diameter";
        example "pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s" => "32.9991834 mm3/s", 1e-8, "identity: M12";
        = (35.0 * super::SQRT_3 / 256.0) * PI * D_2 * P * l / t
    }

    external_thread_milling_removal_rate {
        symbol "Q", "Q";
        meaning "Mean removal rate while a thread mill cuts an external thread of 60 deg from its major diameter to its full depth in one turn.";
        pitch P: Length, above 0.0, "pitch of the thread";
        thread_length l: Length, from 0.0, "length of the thread that is cut at once";
        pitch_diameter D_2: Length, above 0.0, "pitch diameter of the thread";
        turn_time t: Time, above 0.0, "time of the turn";
        -> VolumeRate;
        equation "Q = (425 sqrt(3)/2304) pi D_2 P l/t", r"Q = \frac{425 \sqrt{3}}{2304} \pi D_2 P \frac{l}{t}";
        valid "basic profile of ISO 68-1: a groove 17/24 H deep, 7/8 P wide at the major diameter, counted down to a flat of P/6 in place of the rounded root, which is on the safe side; the blank at the major diameter";
        source "derived: section 425 sqrt(3)/2304 P^2 of the groove, one groove a pitch, on the pitch diameter";
        example "pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s" => "44.522707729 mm3/s", 1e-9, "identity: M12";
        = (425.0 * super::SQRT_3 / 2304.0) * PI * D_2 * P * l / t
    }
}
