//! Moves: way and time of a tool between two points, driven or cranked by hand.

use super::define::formulas;

formulas! {
    topic "moves";

    path_length {
        symbol "L", "L";
        meaning "Length of a straight path over three axes.";
        travel_x x: Length, "travel of the first axis, either way";
        travel_y y: Length, "travel of the second axis, either way";
        travel_z z: Length, default 0.0, "travel of the third axis, either way";
        -> Length;
        equation "L = sqrt(x^2 + y^2 + z^2)", r"L = \sqrt{x^2 + y^2 + z^2}";
        valid "axes at right angles, interpolated: speed and acceleration are those along the path";
        source "geometry";
        example "travel_x=30 mm; travel_y=-40 mm; travel_z=120 mm" => "130 mm", 1e-12, "identity: 3-4-5 and 5-12-13";
        = {
            let square: quantity::Area = x * x + y * y + z * z;
            square.sqrt()
        }
    }

    simultaneous_move_time {
        symbol "t", "t";
        meaning "Time of a move in which each axis goes its own way at its own pace.";
        time_x t_x: Time, from 0.0, "time of the first axis";
        time_y t_y: Time, from 0.0, "time of the second axis";
        time_z t_z: Time, from 0.0, default 0.0, "time of the third axis";
        -> Time;
        equation "t = max(t_x, t_y, t_z)", r"t = \max(t_x, t_y, t_z)";
        valid "axes start together and do not wait for each other: the path is not straight, mind what stands in the way";
        source "definition";
        example "time_x=1.2 s; time_y=0.8 s; time_z=0.3 s" => "1.2 s", 1e-12, "identity";
        = max(max(t_x, t_y), t_z)
    }

    move_peak_speed {
        symbol "v_p", "v_p";
        meaning "Highest speed that a move from rest to rest reaches.";
        distance s: Length, from 0.0, "distance";
        set_speed v: Velocity, above 0.0, "speed that is set";
        acceleration a: Acceleration, above 0.0, "acceleration, the same to start and to stop";
        -> Velocity;
        equation "v_p = min(v, sqrt(a s))", r"v_p = \min\left(v, \sqrt{a\, s}\right)";
        valid "constant acceleration, no limit of jerk; below v the move is too short for the speed, a feed as well as a rapid";
        source "derived: motion at constant acceleration";
        example "distance=50 mm; set_speed=30 m/min; acceleration=2.5 m/s2" => "0.35355339 m/s", 1e-7, "own arithmetic: sqrt(0.125) m/s";
        = {
            // Roots apart, so that a product of small or large ones stays within range.
            let reached = si(s.value.sqrt() * a.value.sqrt());
            min(v, reached)
        }
    }

    hand_cranked_time {
        symbol "t", "t";
        meaning "Time of a travel that is cranked by hand.";
        travel s: Length, from 0.0, "travel";
        travel_per_turn L: Length, above 0.0, "travel for one turn of the handwheel";
        pace n: RotationalSpeed, above 0.0, "turns a hand can hold";
        -> Time;
        equation "t = s/(L n)", r"t = \frac{s}{L\, n}";
        valid "steady turning, with no time to take hold or to look at the dial; n in revolutions per second";
        source "definition: turns over pace";
        example "travel=4 in; travel_per_turn=0.2 in; pace=60 rpm" => "20 s", 1e-12, "identity: 20 turns, one a second";
        = s / (L * n)
    }
}
