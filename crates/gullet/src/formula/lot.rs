//! A lot: what one part takes and costs, each share by itself, and all parts together.

use super::define::formulas;

formulas! {
    topic "lot";

    setup_time_per_part {
        symbol "t_s", "t_s";
        meaning "Share of the set-up that falls on one part of a lot.";
        setup_time t_su: Time, from 0.0, "set-up time of the lot";
        lot_size N: Count, from 1.0, "parts in the lot";
        -> Time;
        equation "t_s = t_su/N", r"t_s = \frac{t_{su}}{N}";
        valid "one set-up for the lot";
        source "definition; example: public homework solution of a batch-machining problem, seen";
        example "setup_time=105 min; lot_size=40" => "2.625 min", 1e-12,
            "identity: 105/40; a public homework solution of a batch-machining problem uses it";
        = t_su / N
    }

    gauging_time_per_part {
        symbol "t_g", "t_g";
        meaning "Share of gauging that falls on one part.";
        gauging_time t_k: Time, from 0.0, "time to gauge one part";
        gauged_every k: Count, from 1.0, default 1.0, "one part in so many is gauged";
        -> Time;
        equation "t_g = t_k/k", r"t_g = \frac{t_k}{k}";
        valid "machine and operator wait for the gauge; gauging while the machine cuts costs nothing here";
        source "definition";
        example "gauging_time=1.5 min; gauged_every=5" => "0.3 min", 1e-12, "identity: 1.5/5";
        = t_k / k
    }

    change_time_per_part {
        symbol "t_ch", "t_{ch}";
        meaning "Share of the tool change that falls on one part, from the parts an edge makes.";
        change_time t_c: Time, from 0.0, "time of one tool change";
        parts_per_edge m: Ratio, above 0.0, "parts one edge makes, whole or as a mean";
        -> Time;
        equation "t_ch = t_c/m", r"t_{ch} = \frac{t_c}{m}";
        valid "m whole where no edge is changed within a part";
        source "definition";
        example "change_time=2 min; parts_per_edge=3" => "40 s", 1e-12, "identity: 2/3 min";
        = t_c / m
    }

    edge_cost_per_part {
        symbol "k_e", "k_e";
        meaning "Cost of cutting edges that falls on one part.";
        edge_cost C_e: Money, from 0.0, "cost of one cutting edge";
        parts_per_edge m: Ratio, above 0.0, "parts one edge makes, whole or as a mean";
        -> Money;
        equation "k_e = C_e/m", r"k_e = \frac{C_e}{m}";
        valid "m whole where no edge is changed within a part";
        source "definition";
        example "edge_cost=3; parts_per_edge=4" => "0.75", 1e-12, "identity: 3/4";
        = C_e / m
    }

    normal_time_per_part {
        symbol "t_n", "t_n";
        meaning "Normal time of one part: everything that recurs, before allowances.";
        handling_time t_h: Time, from 0.0, "load and unload";
        cutting_time t_c: Time, from 0.0, "in the cut";
        moving_time t_m: Time, from 0.0, default 0.0, "moves outside the cut";
        change_share t_ch: Time, from 0.0, default 0.0, "share of tool changes";
        gauging_share t_g: Time, from 0.0, default 0.0, "share of gauging";
        -> Time;
        equation "t_n = t_h + t_c + t_m + t_ch + t_g", r"t_n = t_h + t_c + t_m + t_{ch} + t_g";
        valid "one after the other: what is done while the machine cuts counts as 0";
        source "definition";
        example "handling_time=1 min; cutting_time=4 min; moving_time=0.5 min; change_share=0.2 min; gauging_share=0.3 min" => "6 min", 1e-12, "identity";
        = t_h + t_c + t_m + t_ch + t_g
    }

    standard_time_by_share_of_standard {
        symbol "t_s", "t_s";
        meaning "Standard time: the normal time with an allowance that is a share of the standard time.";
        normal_time t: Time, from 0.0, "normal time";
        allowance A: Ratio, from 0.0, below 1.0, "allowance as a share of the standard time";
        -> Time;
        equation "t_s = t/(1 - A)", r"t_s = \frac{t}{1 - A}";
        valid "allowance as a share of the standard time, the working day; a share of the normal time would make it t (1 + A)";
        source "definition; example: J. Heizer, B. Render, Operations Management, ch. 10, from memory";
        example "normal_time=15.36 min; allowance=15 %" => "18.07 min", 0.0003,
            "J. Heizer, B. Render, Operations Management, ch. 10, example of a time study, from memory";
        = t / (number(1.0) - A)
    }

    allowance_time {
        symbol "t_a", "t_a";
        meaning "Allowance in a standard time: for needs, fatigue and delays.";
        standard_time t_s: Time, from normal_time, "standard time";
        normal_time t_n: Time, from 0.0, "normal time";
        -> Time;
        equation "t_a = t_s - t_n", r"t_a = t_s - t_n";
        valid "either kind of allowance";
        source "definition";
        example "standard_time=9.2 min; normal_time=8 min" => "1.2 min", 1e-12, "identity";
        = max(t_s - t_n, si(0.0))
    }

    lot_time_per_part {
        symbol "t_p", "t_p";
        meaning "Time of one part of a lot, with its shares.";
        setup_share t_s: Time, from 0.0, "share of the set-up";
        handling_time t_h: Time, from 0.0, "load and unload";
        cutting_time t_c: Time, from 0.0, "in the cut";
        moving_time t_m: Time, from 0.0, default 0.0, "moves outside the cut";
        change_share t_ch: Time, from 0.0, default 0.0, "share of tool changes";
        gauging_share t_g: Time, from 0.0, default 0.0, "share of gauging";
        allowance_time t_a: Time, from 0.0, default 0.0, "allowance";
        -> Time;
        equation "t_p = t_s + t_h + t_c + t_m + t_ch + t_g + t_a", r"t_p = t_s + t_h + t_c + t_m + t_{ch} + t_g + t_a";
        valid "one after the other";
        source "definition";
        example "setup_share=2 min; handling_time=1 min; cutting_time=4 min; moving_time=0.5 min; change_share=0.2 min; gauging_share=0.3 min; allowance_time=0.9 min"
            => "8.9 min", 1e-12, "identity";
        = t_s + t_h + t_c + t_m + t_ch + t_g + t_a
    }

    time_cost {
        symbol "k", "k";
        meaning "Cost of a time at the machine.";
        time t: Time, from 0.0, "time";
        machine_rate C_m: MoneyRate, from 0.0, "machine and operator, money per time";
        -> Money;
        equation "k = C_m t", r"k = C_m\, t";
        valid "the same rate throughout; overheads as the rate has them";
        source "definition";
        example "time=6 min; machine_rate=45 money/h" => "4.5", 1e-12, "identity: a tenth of an hour";
        = C_m * t
    }

    lot_cost_per_part {
        symbol "k_p", "k_p";
        meaning "Cost of one part of a lot, share by share.";
        setup_cost k_s: Money, from 0.0, "share of the set-up";
        handling_cost k_h: Money, from 0.0, "load and unload";
        cutting_cost k_c: Money, from 0.0, "in the cut";
        moving_cost k_m: Money, from 0.0, default 0.0, "moves outside the cut";
        change_cost k_ch: Money, from 0.0, default 0.0, "tool changes";
        gauging_cost k_g: Money, from 0.0, default 0.0, "gauging";
        allowance_cost k_a: Money, from 0.0, default 0.0, "allowance";
        edge_share k_e: Money, from 0.0, default 0.0, "cutting edges";
        material_cost k_w: Money, from 0.0, default 0.0, "material";
        -> Money;
        equation "k_p = k_s + k_h + k_c + k_m + k_ch + k_g + k_a + k_e + k_w",
            r"k_p = k_s + k_h + k_c + k_m + k_{ch} + k_g + k_a + k_e + k_w";
        valid "shares in one currency";
        source "definition";
        example "setup_cost=1.5; handling_cost=0.75; cutting_cost=3; moving_cost=0.375; change_cost=0.15; gauging_cost=0.225; allowance_cost=0.9; edge_share=0.5; material_cost=5"
            => "12.4", 1e-12, "identity";
        = k_s + k_h + k_c + k_m + k_ch + k_g + k_a + k_e + k_w
    }

    lot_cost {
        symbol "K", "K";
        meaning "Cost of a lot.";
        cost_per_part k_p: Money, from 0.0, "cost of one part with its shares";
        lot_size N: Count, from 1.0, "parts in the lot";
        -> Money;
        equation "K = N k_p", r"K = N\, k_p";
        valid "the cost per part is that of this lot size";
        source "definition";
        example "cost_per_part=12.40; lot_size=40" => "496", 1e-12, "identity";
        = N * k_p
    }
}
