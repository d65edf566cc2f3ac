//! Cost: the tool life and speed of least cost or least time, and what a part costs.

use super::define::formulas;

formulas! {
    topic "cost";

    minimum_cost_life {
        symbol "T_c", "T_c";
        meaning "Tool life at which a part costs least.";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, above 0.0, "machine and operator, money per time";
        -> Time;
        equation "T_c = (1/n - 1) (t_ch + C_e/C_m)", r"T_c = \left(\frac{1}{n} - 1\right) \left(t_{ch} + \frac{C_e}{C_m}\right)";
        valid "v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds";
        source "derived: least cost over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268 (the method, seen in a companion)";
        example "taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min" => "56 min", 1e-9,
            "identity: 3 (2 + 16.6667) min, inputs of A. Ghosh, A.K. Mallik, Manufacturing Science, Ex. 4.26 p.268";
        = (number(1.0) / n - number(1.0)) * (t_ch + C_e / C_m)
    }

    maximum_production_life {
        symbol "T_p", "T_p";
        meaning "Tool life at which a part takes least time.";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        -> Time;
        equation "T_p = (1/n - 1) t_ch", r"T_p = \left(\frac{1}{n} - 1\right) t_{ch}";
        valid "v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds";
        source "derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271 (the method, seen in a companion)";
        example "taylor_exponent=0.25; change_time=2 min" => "6 min", 1e-9, "identity: 3 x 2 min";
        = (number(1.0) / n - number(1.0)) * t_ch
    }

    minimum_cost_speed {
        symbol "v_c", "v_c";
        meaning "Cutting speed at which a part costs least.";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, above 0.0, "machine and operator, money per time";
        -> Velocity;
        equation "v_c = C (T_c/1 min)^(-n); T_c = (1/n - 1) (t_ch + C_e/C_m)",
            r"v_c = C \left(\frac{T_c}{1\,\mathrm{min}}\right)^{-n},\quad T_c = \left(\frac{1}{n} - 1\right) \left(t_{ch} + \frac{C_e}{C_m}\right)";
        valid "v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds";
        source "derived: least cost over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268, seen in a companion";
        example "taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min" => "27.42 m/min", 0.001,
            "A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268, seen in a companion";
        require edge_cost: (change_time > 0.0 || edge_cost > 0.0), "change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed";
        = crate::formula::wear::speed_for_life::value(super::minimum_cost_life::value(n, t_ch, C_e, C_m), C, n)
    }

    maximum_production_speed {
        symbol "v_c", "v_c";
        meaning "Cutting speed at which a part takes least time.";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, above 0.0, "time of one tool change";
        -> Velocity;
        equation "v_c = C (T_p/1 min)^(-n); T_p = (1/n - 1) t_ch",
            r"v_c = C \left(\frac{T_p}{1\,\mathrm{min}}\right)^{-n},\quad T_p = \left(\frac{1}{n} - 1\right) t_{ch}";
        valid "v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds";
        source "derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion";
        example "taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min" => "47.92 m/min", 0.001,
            "A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion";
        = crate::formula::wear::speed_for_life::value(super::maximum_production_life::value(n, t_ch), C, n)
    }

    unit_cost {
        symbol "K", "K";
        meaning "Cost of machining one part, with its share of edges and tool changes.";
        handling_time t_h: Time, from 0.0, "handling time a part";
        cutting_time t_c: Time, from 0.0, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, from 0.0, "machine and operator, money per time";
        -> Money;
        equation "K = C_m (t_h + t_c + t_ch t_c/T) + C_e t_c/T", r"K = C_m \left(t_h + t_c + t_{ch} \frac{t_c}{T}\right) + C_e \frac{t_c}{T}";
        valid "without material and set-up; mean over many parts, edges changed also within a part";
        source "definition of the machining cost; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.27 p.269 (the method, seen in a companion)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min; edge_cost=4; machine_rate=60 money/h" => "7.7", 1e-12,
            "identity: 2 + 5 + 3/10 and 4/10";
        = C_m * (t_h + t_c + t_ch * t_c / T) + C_e * t_c / T
    }

    unit_cost_whole_parts {
        symbol "K", "K";
        meaning "Cost of machining one part where an edge makes whole parts only.";
        handling_time t_h: Time, from 0.0, "handling time a part";
        cutting_time t_c: Time, above 0.0, to tool_life, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, from 0.0, "machine and operator, money per time";
        -> Money;
        equation "K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/t_c)",
            r"K = C_m \left(t_h + t_c + \frac{t_{ch}}{m}\right) + \frac{C_e}{m},\quad m = \left\lfloor\frac{T}{t_c}\right\rfloor";
        valid "without material and set-up; m whole parts an edge, T/t_c within 1e-9, relative, below a whole number counts as that number";
        source "definition of the machining cost; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min; edge_cost=4; machine_rate=60 money/h" => "7.77777777778", 1e-9,
            "identity: 9 whole parts an edge, 7 + 3/9 + 4/9";
        = {
            let parts = (T / t_c).value * (1.0 + crate::formula::cost::WHOLE);
            let m = max(number(parts.floor()), number(1.0));
            C_m * (t_h + t_c + t_ch / m) + C_e / m
        }
    }

    lot_time {
        symbol "t", "t";
        meaning "Time of a lot: set-up and all its parts.";
        setup_time t_su: Time, from 0.0, "set-up time of the lot";
        cycle_time t_cy: Time, from 0.0, "time of one part";
        lot_size N: Count, from 1.0, "parts in the lot";
        -> Time;
        equation "t = t_su + N t_cy", r"t = t_{su} + N\, t_{cy}";
        valid "one set-up; the same time for each part";
        source "definition; example: P.F. Ostwald, T.S. McLaren, Cost Analysis and Estimating for Engineering and Management, ch. 7 no. 7.1, seen";
        example "setup_time=1.5 h; cycle_time=0.50 min; lot_size=75" => "2.125 h", 0.0001,
            "P.F. Ostwald, T.S. McLaren, Cost Analysis and Estimating for Engineering and Management, 1st ed., ch. 7 no. 7.1, seen";
        = t_su + N * t_cy
    }
}

/// A quotient this near to a whole number, relative, counts as that number: rounding must not
/// decide it.
pub(super) const WHOLE: f64 = 1e-9;
