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
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Time;
        equation "T_c = q (1/n - 1) (t_ch + C_e/C_m)", r"T_c = q \left(\frac{1}{n} - 1\right) \left(t_{ch} + \frac{C_e}{C_m}\right)";
        valid "v_c T^n = C; life counted while the edge cuts; no other limit binds";
        source "derived: least cost over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268 (the method, seen in a companion)";
        example "taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min" => "56 min", 1e-9,
            "identity: 3 (2 + 16.6667) min, inputs of A. Ghosh, A.K. Mallik, Manufacturing Science, Ex. 4.26 p.268";
        = q * (number(1.0) / n - number(1.0)) * (t_ch + C_e / C_m)
    }

    maximum_production_life {
        symbol "T_p", "T_p";
        meaning "Tool life at which a part takes least time.";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Time;
        equation "T_p = q (1/n - 1) t_ch", r"T_p = q \left(\frac{1}{n} - 1\right) t_{ch}";
        valid "v_c T^n = C; life counted while the edge cuts; no other limit binds";
        source "derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271 (the method, seen in a companion)";
        example "taylor_exponent=0.25; change_time=2 min" => "6 min", 1e-9, "identity: 3 x 2 min";
        = q * (number(1.0) / n - number(1.0)) * t_ch
    }

    minimum_cost_speed {
        symbol "v_c", "v_c";
        meaning "Cutting speed at which a part costs least.";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, above 0.0, "machine and operator, money per time";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Velocity;
        equation "v_c = C (T_c/1 min)^(-n); T_c = q (1/n - 1) (t_ch + C_e/C_m)",
            r"v_c = C \left(\frac{T_c}{1\,\mathrm{min}}\right)^{-n},\quad T_c = q \left(\frac{1}{n} - 1\right) \left(t_{ch} + \frac{C_e}{C_m}\right)";
        valid "v_c T^n = C; life counted while the edge cuts; no other limit binds";
        source "derived: least cost over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268, seen in a companion";
        example "taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min" => "27.42 m/min", 0.001,
            "A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 p.268, seen in a companion";
        require edge_cost: (change_time > 0.0 || edge_cost > 0.0), "change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed";
        = crate::formula::wear::speed_for_life::value(super::minimum_cost_life::value(n, t_ch, C_e, C_m, q), C, n)
    }

    maximum_production_speed {
        symbol "v_c", "v_c";
        meaning "Cutting speed at which a part takes least time.";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        change_time t_ch: Time, above 0.0, "time of one tool change";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Velocity;
        equation "v_c = C (T_p/1 min)^(-n); T_p = q (1/n - 1) t_ch",
            r"v_c = C \left(\frac{T_p}{1\,\mathrm{min}}\right)^{-n},\quad T_p = q \left(\frac{1}{n} - 1\right) t_{ch}";
        valid "v_c T^n = C; life counted while the edge cuts; no other limit binds";
        source "derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion";
        example "taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min" => "47.92 m/min", 0.001,
            "A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion";
        = crate::formula::wear::speed_for_life::value(super::maximum_production_life::value(n, t_ch, q), C, n)
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
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Money;
        equation "K = C_m (t_h + t_c + t_ch q t_c/T) + C_e q t_c/T", r"K = C_m \left(t_h + t_c + t_{ch} \frac{q\, t_c}{T}\right) + C_e \frac{q\, t_c}{T}";
        valid "without material and set-up; mean over many parts, edges changed also within a part";
        source "definition of the machining cost; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.27 p.269 (the method, seen in a companion)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min; edge_cost=4; machine_rate=60 money/h" => "7.7", 1e-12,
            "identity: 2 + 5 + 3/10 and 4/10";
        = C_m * (t_h + t_c + t_ch * q * t_c / T) + C_e * q * t_c / T
    }

    unit_cost_whole_parts {
        symbol "K", "K";
        meaning "Cost of machining one part where an edge makes whole parts only.";
        handling_time t_h: Time, from 0.0, "handling time a part";
        cutting_time t_c: Time, above 0.0, to tool_life / in_cut_share, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        machine_rate C_m: MoneyRate, from 0.0, "machine and operator, money per time";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Money;
        equation "K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/(q t_c))",
            r"K = C_m \left(t_h + t_c + \frac{t_{ch}}{m}\right) + \frac{C_e}{m},\quad m = \left\lfloor\frac{T}{q\, t_c}\right\rfloor";
        valid "without material and set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative, below a whole number counts as that number";
        source "definition of the machining cost; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min; edge_cost=4; machine_rate=60 money/h" => "7.77777777778", 1e-9,
            "identity: 9 whole parts an edge, 7 + 3/9 + 4/9";
        = {
            let m = super::whole_parts_per_edge::value(t_c, T, q);
            C_m * (t_h + t_c + t_ch / m) + C_e / m
        }
    }

    unit_time {
        symbol "t", "t";
        meaning "Time of one part, with its share of tool changes.";
        handling_time t_h: Time, from 0.0, "handling time a part";
        cutting_time t_c: Time, from 0.0, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Time;
        equation "t = t_h + t_c + t_ch q t_c/T", r"t = t_h + t_c + t_{ch} \frac{q\, t_c}{T}";
        valid "without set-up; mean over many parts, edges changed also within a part";
        source "definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min" => "7.3 min", 1e-12, "identity: 2 + 5 + 3/10 min";
        = t_h + t_c + t_ch * q * t_c / T
    }

    unit_time_whole_parts {
        symbol "t", "t";
        meaning "Time of one part where an edge makes whole parts only.";
        handling_time t_h: Time, from 0.0, "handling time a part";
        cutting_time t_c: Time, above 0.0, to tool_life / in_cut_share, "cutting time a part";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        tool_life T: Time, above 0.0, "tool life";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Time;
        equation "t = t_h + t_c + t_ch/m; m = floor(T/(q t_c))",
            r"t = t_h + t_c + \frac{t_{ch}}{m},\quad m = \left\lfloor\frac{T}{q\, t_c}\right\rfloor";
        valid "without set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative, below a whole number counts as that number";
        source "definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min" => "7.33333333333 min", 1e-9,
            "identity: 9 whole parts an edge, 7 + 3/9 min";
        = t_h + t_c + t_ch / super::whole_parts_per_edge::value(t_c, T, q)
    }

    mean_parts_per_edge {
        symbol "m", "m";
        meaning "Parts that one edge makes, as a mean over many.";
        cutting_time t_c: Time, above 0.0, "cutting time a part";
        tool_life T: Time, above 0.0, "tool life";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Ratio;
        equation "m = T/(q t_c)", r"m = \frac{T}{q\, t_c}";
        valid "edges are changed at the end of their life, also within a part";
        source "definition";
        example "cutting_time=5 min; tool_life=49 min" => "9.8", 1e-12, "identity: 49/5";
        = T / (q * t_c)
    }

    whole_parts_per_edge {
        symbol "m", "m";
        meaning "Whole parts that one edge makes.";
        cutting_time t_c: Time, above 0.0, to tool_life / in_cut_share, "cutting time a part";
        tool_life T: Time, above 0.0, "tool life";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        -> Count;
        equation "m = floor(T/(q t_c))", r"m = \left\lfloor\frac{T}{q\, t_c}\right\rfloor";
        valid "T/(q t_c) within 1e-9, relative, below a whole number counts as that number; an edge that does not last one part is refused";
        source "definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "cutting_time=5 min; tool_life=49.9 min" => "9", 1e-12, "identity";
        = {
            let parts = (T / (q * t_c)).value * (1.0 + crate::formula::cost::WHOLE);
            max(number(parts.floor()), number(1.0))
        }
    }

    insert_edge_cost {
        symbol "C_e", "C_e";
        meaning "Cost of one cutting edge of an insert.";
        insert_price P: Money, from 0.0, "price of the insert";
        edges z_e: Count, from 1.0, "edges that are used";
        -> Money;
        equation "C_e = P/z_e", r"C_e = \frac{P}{z_e}";
        valid "edges that are used, not those the insert has; holder and screws are left out";
        source "definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "insert_price=12; edges=8" => "1.5", 1e-12, "identity: 12/8";
        = P / z_e
    }

    reground_edge_cost {
        symbol "C_e", "C_e";
        meaning "Cost of one life of a tool that is reground.";
        tool_price P: Money, from 0.0, "price of the tool";
        regrinds k: Count, from 0.0, "regrinds before the tool is used up";
        regrind_cost C_g: Money, from 0.0, "cost of grinding, a life";
        -> Money;
        equation "C_e = P/(k + 1) + C_g", r"C_e = \frac{P}{k + 1} + C_g";
        valid "one life as bought and one for each regrind; the grinder's time belongs here and not to the tool change";
        source "definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the method, from memory)";
        example "tool_price=40; regrinds=9; regrind_cost=1.5" => "5.5", 1e-12, "identity: 40/10 + 1.5";
        = P / (k + number(1.0)) + C_g
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
