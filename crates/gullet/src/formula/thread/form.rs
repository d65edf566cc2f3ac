//! The basic form of 60 degree threads, metric and unified, and the sizes it goes by.

use crate::formula::define::formulas;
use crate::formula::finish::SQRT_3;

formulas! {
    topic "thread";

    thread_triangle_height {
        symbol "H", "H";
        meaning "Height of the fundamental triangle of a 60 deg thread.";
        pitch P: Length, above 0.0, "pitch";
        -> Length;
        equation "H = sqrt(3) P/2", r"H = \frac{\sqrt{3}\, P}{2}";
        valid "60 deg threads, metric and unified";
        source "ISO 68-1 and ASME B1.1, from memory";
        example "pitch=2 mm" => "1.732 mm", 3e-4, "own arithmetic: sqrt(3) mm";
        = super::SQRT_3 * P / 2.0
    }

    internal_thread_height {
        symbol "H_1", "H_1";
        meaning "Height of a full 60 deg internal thread: the basic overlap of nut and screw.";
        pitch P: Length, above 0.0, "pitch";
        -> Length;
        equation "H_1 = 5 sqrt(3) P/16", r"H_1 = \frac{5 \sqrt{3}\, P}{16}";
        valid "60 deg threads, metric and unified; 5/8 of the fundamental triangle, 0.541266 P";
        source "ISO 68-1 and ASME B1.1, from memory";
        example "pitch=1.5 mm" => "0.812 mm", 7e-4, "table of basic dimensions of M10, DIN 13-1, from memory";
        = 5.0 * super::SQRT_3 * P / 16.0
    }

    external_thread_height {
        symbol "h_3", "h_3";
        meaning "Height of a 60 deg external thread with a rounded root.";
        pitch P: Length, above 0.0, "pitch";
        -> Length;
        equation "h_3 = 17 sqrt(3) P/48", r"h_3 = \frac{17 \sqrt{3}\, P}{48}";
        valid "60 deg threads, metric and unified; 17/24 of the fundamental triangle, 0.613435 P; a root of radius P sqrt(3)/12";
        source "ISO 68-1, ISO 965-1 and DIN 13-1, from memory";
        example "pitch=1.5 mm" => "0.920 mm", 6e-4, "table of basic dimensions of M10, DIN 13-1, from memory";
        = 17.0 * super::SQRT_3 * P / 48.0
    }

    thread_pitch_diameter {
        symbol "D_2", "D_2";
        meaning "Basic pitch diameter of a 60 deg thread.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / super::SQRT_3, "pitch";
        -> Length;
        equation "D_2 = D - 3 sqrt(3) P/8", r"D_2 = D - \frac{3 \sqrt{3}\, P}{8}";
        valid "60 deg threads, metric and unified; basic size, without allowance or tolerance; 0.649519 P below the major diameter";
        source "ISO 724 and ASME B1.1, from memory";
        example "major_diameter=10 mm; pitch=1.5 mm" => "9.026 mm", 6e-5, "ISO 724, M10, from memory";
        = max(D - 3.0 * super::SQRT_3 * P / 8.0, si(0.0))
    }

    thread_minor_diameter {
        symbol "D_1", "D_1";
        meaning "Basic minor diameter of a 60 deg internal thread.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / super::SQRT_3, "pitch";
        -> Length;
        equation "D_1 = D - 5 sqrt(3) P/8", r"D_1 = D - \frac{5 \sqrt{3}\, P}{8}";
        valid "60 deg threads, metric and unified; basic size, without allowance or tolerance; 1.082532 P below the major diameter: 100 % on the ISO and UN overlap basis";
        source "ISO 724 and ASME B1.1, from memory";
        example "major_diameter=10 mm; pitch=1.5 mm" => "8.376 mm", 6e-5, "ISO 724, M10, from memory";
        = max(D - 5.0 * super::SQRT_3 * P / 8.0, si(0.0))
    }

    thread_root_diameter {
        symbol "d_3", "d_3";
        meaning "Root diameter of a 60 deg external thread with a rounded root.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / super::SQRT_3, "pitch";
        -> Length;
        equation "d_3 = D - 17 sqrt(3) P/24", r"d_3 = D - \frac{17 \sqrt{3}\, P}{24}";
        valid "60 deg threads, metric and unified; basic size, without allowance or tolerance; 1.226869 P below the major diameter";
        source "ISO 724, ISO 965-1 and DIN 13-1, from memory";
        example "major_diameter=10 mm; pitch=1.5 mm" => "8.160 mm", 7e-5, "table of basic dimensions of M10, DIN 13-1, from memory";
        = max(D - 17.0 * super::SQRT_3 * P / 24.0, si(0.0))
    }

    thread_lead {
        symbol "P_h", "P_h";
        meaning "Lead of a thread: the advance of one turn.";
        pitch P: Length, above 0.0, "pitch";
        starts s: Count, from 1.0, default 1.0, "starts of the thread";
        -> Length;
        equation "P_h = s P", r"P_h = s\, P";
        valid "the feed per revolution of tapping and threading is the lead, not the pitch, where there are several starts";
        source "definition; ISO 5408, from memory";
        example "pitch=2 mm; starts=3" => "6 mm", 1e-12, "own arithmetic";
        = s * P
    }

    pitch_from_threads_per_inch {
        symbol "P", "P";
        meaning "Pitch of a thread that is named by its threads per inch.";
        threads_per_inch N: Ratio, above 0.0, "threads per inch";
        -> Length;
        equation "P = 1 in/N", r"P = \frac{1\,\mathrm{in}}{N}";
        valid "exact: the inch is 25.4 mm";
        source "definition; ASME B1.1, from memory";
        example "threads_per_inch=20" => "1.27 mm", 1e-12, "identity: 25.4/20 mm";
        = {
            let inch: quantity::Length = si(0.0254);
            inch / N
        }
    }

    numbered_screw_diameter {
        symbol "D", "D";
        meaning "Major diameter of a numbered machine-screw size.";
        size N: Count, from 0.0, to 30.0, "number of the size";
        -> Length;
        equation "D = 0.060 in + 0.013 in N", r"D = 0.060\,\mathrm{in} + 0.013\,\mathrm{in}\, N";
        valid "unified machine screws, number 0 and up; today's standard ends at 12";
        source "ASME B1.1, from memory";
        example "size=10" => "0.1900 in", 1e-9, "ASME B1.1, basic major diameter of No 10, from memory";
        = {
            let thousandth: quantity::Length = si(0.0254 / 1000.0);
            (number(60.0) + 13.0 * N) * thousandth
        }
    }
}
