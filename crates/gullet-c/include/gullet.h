/*
 * gullet.h - machining speeds and feeds, and what follows from them
 *
 * Written from the sources by gullet-c-gen; changes belong there. C11 and C++17, also as C99 and
 * C++11.
 *
 * A speed in few lines:
 *
 *     double cutting_speed_m_per_s, diameter_m, spindle_speed_rev_per_s;
 *     gullet_to_si("velocity", 90.0, "ft/min", &cutting_speed_m_per_s);
 *     gullet_parse("length", "1/2 in", GULLET_NUL_TERMINATED, &diameter_m);
 *     if (gullet_spindle_speed(cutting_speed_m_per_s, diameter_m, &spindle_speed_rev_per_s) < 0)
 *         fprintf(stderr, "%s\n", gullet_last_error_message());
 *
 * Numbers are starting values. The machine's manual, the marking on cutter and holder, the shop's
 * rules, local codes and the responsible instructor go before anything computed here.
 *
 * Units
 *     Every number is a double in the SI unit that ends its name: _m metre, _m2, _s second,
 *     _m_per_s, _m_per_s2, _rev_per_s revolutions (never radians) per second, _hz, _rad, _turns of
 *     a handwheel, _n newton, _n_per_m, _pa pascal (also J/m3), _w watt, _n_m, _m3_per_s,
 *     _m2_per_s, _kg_per_m3, _money in the shop's currency, _money_per_s. A name without a unit is
 *     a pure number or a count. A number ending in _si has the unit that belongs to its kind.
 *     gullet_to_si, gullet_from_si, gullet_convert and gullet_parse convert by the text of a unit,
 *     exactly.
 *
 * Status
 *     Calls return a gullet_status: 0 done, below 0 an error, above 0 done with doubts. Where a
 *     call fails, nothing is written but the thread's last error and, of text, `needed_out`. The
 *     last error tells every problem at once with parameter, value, admissible range and remedy;
 *     it belongs to the thread and stays until its next failure. Nothing is clamped silently,
 *     nothing is NaN.
 *
 * Handles
 *     gullet_X_new makes a handle, gullet_X_free frees it; freeing NULL does nothing. Handles are
 *     read-only and copy what they are made from, so they may be freed in any order. A handle is
 *     used after it was freed, or freed twice, at the caller's peril: that cannot be detected.
 *     Never free() what comes from here.
 *
 * Text in
 *     UTF-8. Names end with a NUL. Text with a length beside it may hold any bytes; the length
 *     GULLET_NUL_TERMINATED stands for "up to the first NUL".
 *
 * Text out
 *     Into a buffer of the caller, ended with a NUL. `needed_out`, unless NULL, receives the bytes
 *     needed with the NUL, also where the buffer is too short: call with capacity 0, then once
 *     more.
 *
 * Structs
 *     Each opens with struct_size, set by gullet_X_init(), so that structs can grow at the end:
 *     fields an older program does not know count as zero, fields an older library does not know
 *     must be zero. Reserved fields are zero.
 *
 * Arrays
 *     gullet_F_array takes `count` values of each argument and writes a result and a status a row.
 *     A row that is refused gets the status of its first problem and keeps what stood in its
 *     result; the others get 0; the call then returns GULLET_WARNING_ROWS_REFUSED. Arguments may
 *     share an array; what is written may overlap nothing (GULLET_ERROR_OVERLAP). With count 0
 *     every pointer may be NULL. Results are the same bits as those of one call a row.
 *
 * Operations
 *     Drilling, turning and whatever gullet_operation_list tells of take their inputs by name, as text or
 *     as SI numbers: gullet_operation_new, gullet_operation_set_text, gullet_operation_compute. What comes
 *     out is read by name or all at once. Of handles only gullet_operation changes after it is made.
 *
 * Studies
 *     A study computes cuts over columns, some hundred nanoseconds a row, on several processors:
 *     gullet_study_run over arrays of SI numbers, gullet_table_study_run and _stream over tables in
 *     the form of Apache Arrow, through its C data interface. Rows get the bits of
 *     gullet_cut_compute, whatever the number of threads and the rows beside them.
 *     gullet_study_draw also draws what is not known exactly; the options of a study of tables do
 *     the same. A report adds up tables and streams and says what is wrong with single cells.
 *
 * Threads
 *     Every call may be made from any thread at any time; the last error is each thread's own. A
 *     handle may be used by several threads at once; free it when none uses it. A typed call of one
 *     value that succeeds allocates nothing and takes no lock: a signal handler may make it.
 *
 * State of the caller
 *     Results do not depend on rounding mode, flush-to-zero, floating-point traps or locale, and
 *     these, the floating-point flags and errno are left as they were (x86-64 and AArch64;
 *     elsewhere call with the state a thread starts with). No panic leaves the library. Where
 *     memory runs out, the program ends, as it does in any Rust program.
 */
#ifndef GULLET_H
#define GULLET_H

#include <stddef.h>
#include <stdint.h>
#include <string.h>

/** Version of this header: its parts, as text, and as major * 1000000 + minor * 1000 + patch. */
#define GULLET_VERSION_MAJOR 0
#define GULLET_VERSION_MINOR 1
#define GULLET_VERSION_PATCH 0
#define GULLET_VERSION "0.1.0"
#define GULLET_VERSION_NUMBER 1000u

/** Whether this header is of a version or a later one. */
#define GULLET_VERSION_AT_LEAST(major, minor, patch) \
    (GULLET_VERSION_NUMBER >= (major) * 1000000u + (minor) * 1000u + (patch))

/** Length that stands for "up to the first NUL". */
#define GULLET_NUL_TERMINATED ((size_t)-1)

/* The open Arrow C data interface and C stream interface, laid out as their specification
 * declares them, unless another header has done so. */
#ifdef __cplusplus
extern "C" {
#endif

#ifndef ARROW_C_DATA_INTERFACE
#define ARROW_C_DATA_INTERFACE

#define ARROW_FLAG_DICTIONARY_ORDERED 1
#define ARROW_FLAG_NULLABLE 2
#define ARROW_FLAG_MAP_KEYS_SORTED 4

struct ArrowSchema {
    /* Array type description */
    const char *format;
    const char *name;
    const char *metadata;
    int64_t flags;
    int64_t n_children;
    struct ArrowSchema **children;
    struct ArrowSchema *dictionary;

    /* Release callback */
    void (*release)(struct ArrowSchema *);
    /* Opaque producer-specific data */
    void *private_data;
};

struct ArrowArray {
    /* Array data description */
    int64_t length;
    int64_t null_count;
    int64_t offset;
    int64_t n_buffers;
    int64_t n_children;
    const void **buffers;
    struct ArrowArray **children;
    struct ArrowArray *dictionary;

    /* Release callback */
    void (*release)(struct ArrowArray *);
    /* Opaque producer-specific data */
    void *private_data;
};

#endif /* ARROW_C_DATA_INTERFACE */

#ifndef ARROW_C_STREAM_INTERFACE
#define ARROW_C_STREAM_INTERFACE

struct ArrowArrayStream {
    /* Callbacks providing stream functionality */
    int (*get_schema)(struct ArrowArrayStream *, struct ArrowSchema *out);
    int (*get_next)(struct ArrowArrayStream *, struct ArrowArray *out);
    const char *(*get_last_error)(struct ArrowArrayStream *);

    /* Release callback */
    void (*release)(struct ArrowArrayStream *);

    /* Opaque producer-specific data */
    void *private_data;
};

#endif /* ARROW_C_STREAM_INTERFACE */

#ifdef __cplusplus
} /* extern "C" */
#endif


/** Done. */
#define GULLET_OK 0

/** A value lies outside its admissible range. */
#define GULLET_ERROR_OUT_OF_RANGE (-10)

/** A value is not a finite number. */
#define GULLET_ERROR_NOT_FINITE (-11)

/** A count is not a whole number. */
#define GULLET_ERROR_NOT_WHOLE (-12)

/** The result is too large or too small for a number to hold. */
#define GULLET_ERROR_RESULT_OVERFLOW (-13)

/** A number stands without the unit it needs. */
#define GULLET_ERROR_UNIT_MISSING (-20)

/** The unit is not known, or belongs to another kind of quantity. */
#define GULLET_ERROR_UNIT_UNKNOWN (-21)

/** The text cannot be read as a number. */
#define GULLET_ERROR_NUMBER_UNREADABLE (-22)

/** A formula, material, machine, key or argument of this name does not exist. */
#define GULLET_ERROR_UNKNOWN_NAME (-30)

/** A required argument or key is missing. */
#define GULLET_ERROR_MISSING (-31)

/** The same argument, key or identifier is given twice. */
#define GULLET_ERROR_DUPLICATE (-32)

/** Two values that are each admissible contradict one another. */
#define GULLET_ERROR_INCONSISTENT (-33)

/** A value has the wrong type, such as text where a table belongs. */
#define GULLET_ERROR_WRONG_TYPE (-34)

/** The text of a file is not well-formed. */
#define GULLET_ERROR_SYNTAX (-40)

/** A row of a table is refused. */
#define GULLET_ERROR_BAD_ROW (-41)

/** A file cannot be read or written. */
#define GULLET_ERROR_FILE (-42)

/** The tables hold no value for this combination. */
#define GULLET_ERROR_NO_DATA (-50)

/** A limit is exceeded and nothing the practice may lower helps. */
#define GULLET_ERROR_LIMIT_EXCEEDED (-60)

/** No pass plan satisfies every limit. */
#define GULLET_ERROR_NO_PLAN (-61)

/** A value the tables do not give was assumed. */
#define GULLET_WARNING_ASSUMED 1

/** A value lies outside the range its model was tested in. */
#define GULLET_WARNING_OUTSIDE_VALIDITY 2

/** Sources disagree by more than a third. */
#define GULLET_WARNING_SOURCES_DISAGREE 3

/** The machine cannot do what was wanted; the nearest it can do was taken. */
#define GULLET_WARNING_MACHINE_LIMITS 4

/** A setting was lowered because of a limit. */
#define GULLET_WARNING_LOWERED 5

/** A rounding to what the readout can show. */
#define GULLET_WARNING_ROUNDED 6

/** A pointer is NULL that must not be. */
#define GULLET_ERROR_NULL_POINTER (-100)

/** A pointer is not aligned for what it points to. */
#define GULLET_ERROR_MISALIGNED (-101)

/** A count of values or bytes is more than memory can hold. */
#define GULLET_ERROR_TOO_LARGE (-102)

/** Memory that is written to overlaps other memory of the call. */
#define GULLET_ERROR_OVERLAP (-103)

/** A buffer is too short; the error and `needed_out` say how long it must be. */
#define GULLET_ERROR_BUFFER_TOO_SHORT (-104)

/** The struct_size of a struct is not set, or of a version that is not known. */
#define GULLET_ERROR_STRUCT_SIZE (-105)

/** Text is not UTF-8. */
#define GULLET_ERROR_TEXT_ENCODING (-106)

/** Arrow data contradict their schema, or hold text that is not UTF-8, or are spent. */
#define GULLET_ERROR_ARROW_DATA (-107)

/** A fault of the library; please report it. */
#define GULLET_ERROR_PANIC (-120)

/** Some rows have no result; each has its own status. */
#define GULLET_WARNING_ROWS_REFUSED 100



/** Units of a metric shop: mm, m/min, N, kW. */
#define GULLET_METRIC 0

/** Units of an inch shop: in, ft/min, lbf, hp. */
#define GULLET_INCH 1

/** The side of an end mill cuts a wall; the depth of a pass is radial. */
#define GULLET_SIDE_MILLING 0

/** A slot as wide as the cutter; the depth of a pass is axial. */
#define GULLET_SLOTTING 1

/** The end of the cutter sweeps a face; the depth of a pass is axial. */
#define GULLET_FACE_MILLING 2

/** A pass that takes stock away. */
#define GULLET_ROUGHING 0

/** A pass that leaves the surface. */
#define GULLET_FINISHING 1

/** Up milling: teeth run against the feed; the chip starts thin. */
#define GULLET_CONVENTIONAL 0

/** Down milling: teeth run with the feed; the chip starts thick and pulls at the table. */
#define GULLET_CLIMB 1

/** Feed, then speed, are lowered until every limit holds. */
#define GULLET_LOWER 0

/** Loads that exceed their limits stand in the ledger; nothing is lowered for them. */
#define GULLET_DO_NOT_LOWER_FOR_LOADS 1

/** Highest spindle speed of the machine. */
#define GULLET_LIMIT_SPINDLE_SPEED_HIGHEST 1

/** Lowest spindle speed of the machine. */
#define GULLET_LIMIT_SPINDLE_SPEED_LOWEST 2

/** Speed marked on the cutter or its holder. */
#define GULLET_LIMIT_CUTTER_SPEED 3

/** Cutting speed at the high end of the tables. */
#define GULLET_LIMIT_CUTTING_SPEED 4

/** Pace that a hand can hold. */
#define GULLET_LIMIT_HANDWHEEL_PACE 5

/** Highest table feed of the machine. */
#define GULLET_LIMIT_TABLE_FEED 6

/** Lowest table feed of the machine. */
#define GULLET_LIMIT_TABLE_FEED_LOWEST 7

/** Thinnest chip that cuts. */
#define GULLET_LIMIT_SMALLEST_CHIP 8

/** Thickest chip of the tables. */
#define GULLET_LIMIT_LARGEST_CHIP 9

/** Roughness asked for. */
#define GULLET_LIMIT_MEAN_ROUGHNESS 10

/** Power at the cutter. */
#define GULLET_LIMIT_POWER 11

/** Torque on the spindle. */
#define GULLET_LIMIT_TORQUE 12

/** Deflection of the cutter. */
#define GULLET_LIMIT_DEFLECTION 13

/** Clamping force. */
#define GULLET_LIMIT_CLAMPING 14

/** Length of the flutes. */
#define GULLET_LIMIT_FLUTE_LENGTH 15

/** Roughing depth of the practice. */
#define GULLET_LIMIT_ROUGHING_DEPTH 16

/** Depth of a climb cut on a table with backlash. */
#define GULLET_LIMIT_CLIMB_WITH_BACKLASH 17

/** Height that the jaws grip. */
#define GULLET_LIMIT_GRIP 18

/** Stick-out over diameter. */
#define GULLET_LIMIT_STICK_OUT 19

/** Feed at the high end of the tables. */
#define GULLET_LIMIT_LARGEST_FEED 20

/** Smallest feed that cuts instead of rubbing. */
#define GULLET_LIMIT_SMALLEST_FEED 21

/** Force along the spindle. */
#define GULLET_LIMIT_THRUST 22

/** Torque that turns the work out of its hold. */
#define GULLET_LIMIT_HOLD_TORQUE 23

/** Depth of a hole over its diameter. */
#define GULLET_LIMIT_DEPTH_RATIO 24

/** Stock on the diameter, largest. */
#define GULLET_LIMIT_LARGEST_STOCK 25

/** Stock on the diameter, smallest. */
#define GULLET_LIMIT_SMALLEST_STOCK 26

/** Percentage of thread, largest. */
#define GULLET_LIMIT_LARGEST_THREAD 27

/** Percentage of thread, smallest. */
#define GULLET_LIMIT_SMALLEST_THREAD 28

/** Travel that a tap runs on while the spindle reverses. */
#define GULLET_LIMIT_OVERRUN 29

/** Length of a bar or blade over its size. */
#define GULLET_LIMIT_OVERHANG 30

/** Force that holds work in a chuck. */
#define GULLET_LIMIT_CHUCK_GRIP 31

/** Speed of the carriage along a thread. */
#define GULLET_LIMIT_CARRIAGE_SPEED 32

/** Depth of cut over what the edge or the practice allows. */
#define GULLET_LIMIT_DEPTH_OF_CUT 33

/** Angle of a ramp or a helix into the work. */
#define GULLET_LIMIT_RAMP_ANGLE 34

/** Diameter of a cutter over the bore or thread it cuts. */
#define GULLET_LIMIT_CUTTER_IN_BORE 35

/** Stepover across the passes. */
#define GULLET_LIMIT_STEPOVER 36

/** Teeth in the work, most. */
#define GULLET_LIMIT_MOST_TEETH 37

/** Teeth in the work, fewest. */
#define GULLET_LIMIT_FEWEST_TEETH 38

/** Rate at which a saw cuts through an area. */
#define GULLET_LIMIT_AREA_RATE 39

/** Length of work that stands out of a chuck, over its diameter. */
#define GULLET_LIMIT_WORK_OVERHANG 40

/** Width of the chamfer over what the edge reaches. */
#define GULLET_LIMIT_EDGE_REACH 41

/** Acceleration length before a thread. */
#define GULLET_LIMIT_RUN_IN 42

/** Room for the ledger of any cut of this version. */
#define GULLET_LIMITS_MOST 42

/** The cost of a part is to be least. */
#define GULLET_LEAST_COST 0

/** The time of a part is to be least: maximum production. */
#define GULLET_LEAST_TIME 1

/** Back engagement a_p, along the axis. In m. */
#define GULLET_INPUT_AXIAL_DEPTH 1

/**
 * Working engagement a_e, across the axis; of a slot the cutter's diameter, of a face the width of the work under the cutter. In m.
 */
#define GULLET_INPUT_RADIAL_DEPTH 2

/** Face milling: distance from the cutter's axis to the middle of the work. In m. */
#define GULLET_INPUT_OFFSET 3

/** Length of the cut along the feed. In m. */
#define GULLET_INPUT_LENGTH 4

/** Mean roughness R_a wanted. In m. -INFINITY stands for none. */
#define GULLET_INPUT_MEAN_ROUGHNESS 5

/** Spindle speed to use instead of the table's. In rev/s. -INFINITY stands for none. */
#define GULLET_INPUT_SPINDLE_SPEED 6

/** Feed per tooth to use instead of the table's. In m. -INFINITY stands for none. */
#define GULLET_INPUT_FEED_PER_TOOTH 7

/** Cutting diameter D. In m. */
#define GULLET_INPUT_CUTTER_DIAMETER 8

/** Number of teeth z. */
#define GULLET_INPUT_CUTTER_TEETH 9

/** Length of the flutes, along the axis from the tip. In m. */
#define GULLET_INPUT_CUTTER_FLUTE_LENGTH 10

/** Diameter of the shank in the holder. In m. */
#define GULLET_INPUT_CUTTER_SHANK_DIAMETER 11

/** Distance from the tip to the holder. In m. */
#define GULLET_INPUT_CUTTER_STICK_OUT 12

/** Helix angle of the flutes. In rad. */
#define GULLET_INPUT_CUTTER_HELIX_ANGLE 13

/** Highest speed marked on the cutter or its holder. In rev/s. -INFINITY stands for none. */
#define GULLET_INPUT_CUTTER_MAXIMUM_SPEED 14

/** Corner radius of a cutter with one. In m. */
#define GULLET_INPUT_CUTTER_CORNER_RADIUS 15

/** Cutting-edge angle kappa_r of a face mill. In rad. */
#define GULLET_INPUT_CUTTER_EDGE_ANGLE 16

/** Clamping force of the hold. In N. */
#define GULLET_INPUT_CLAMPING_FORCE 17

/** Static friction between jaw and work. */
#define GULLET_INPUT_JAW_FRICTION 18

/** Height of the work that the jaws cover. In m. */
#define GULLET_INPUT_GRIP_DEPTH 19

/** Height of the part along the spindle axis. In m. */
#define GULLET_INPUT_PART_HEIGHT 20

/** Work material: place in the study's list. */
#define GULLET_CHOICE_MATERIAL 1

/** Machine: place in the study's list. */
#define GULLET_CHOICE_MACHINE 2

/** Practice: place in the study's list. */
#define GULLET_CHOICE_PRACTICE 3

/** Operation: GULLET_SIDE_MILLING, GULLET_SLOTTING or GULLET_FACE_MILLING. */
#define GULLET_CHOICE_OPERATION 4

/** GULLET_ROUGHING or GULLET_FINISHING. */
#define GULLET_CHOICE_PASS 5

/** GULLET_CONVENTIONAL or GULLET_CLIMB. */
#define GULLET_CHOICE_DIRECTION 6

/** What the edges are made of: one of GULLET_CUTTER_MATERIAL_... */
#define GULLET_CHOICE_CUTTER_MATERIAL 7

/** Shape of the cutting end: one of GULLET_CUTTER_FORM_... */
#define GULLET_CHOICE_CUTTER_FORM 8

/** Whether the feed runs across the jaws: 0 or 1. */
#define GULLET_CHOICE_FEED_ACROSS_JAWS 9

/** Spindle speed that the wanted cutting speed would need. In rev/s. */
#define GULLET_RESULT_WANTED_SPEED 1

/** Spindle speed the machine really has. In rev/s. */
#define GULLET_RESULT_SPINDLE_SPEED 2

/** Cutting speed at that spindle speed. In m/s. */
#define GULLET_RESULT_CUTTING_SPEED 3

/** Largest chip wanted. In m. */
#define GULLET_RESULT_CHIP_LOAD 4

/** Feed per tooth, after thinning and limits. In m. */
#define GULLET_RESULT_FEED_PER_TOOTH 5

/** Feed per revolution. In m. */
#define GULLET_RESULT_FEED_PER_REV 6

/** Table feed. In m/s. */
#define GULLET_RESULT_TABLE_FEED 7

/**
 * Pace of the handwheel for that table feed; none where the table is not cranked by hand. In rev/s. Good rows may lack it.
 */
#define GULLET_RESULT_HANDWHEEL_RATE 8

/** Time to travel one inch, or 10 mm in a metric shop, at that table feed. In s. */
#define GULLET_RESULT_TIME_PER_INCH 9

/** Time to travel 10 mm at that table feed. In s. */
#define GULLET_RESULT_TIME_PER_10_MM 10

/** Diameter that cuts at this depth. In m. */
#define GULLET_RESULT_EFFECTIVE_DIAMETER 11

/** Angle of tooth immersion at entry. In rad. */
#define GULLET_RESULT_ENTRY_ANGLE 12

/** Angle of tooth immersion at exit. In rad. */
#define GULLET_RESULT_EXIT_ANGLE 13

/** Largest undeformed chip thickness. In m. */
#define GULLET_RESULT_MAX_CHIP_THICKNESS 14

/** Mean undeformed chip thickness. In m. */
#define GULLET_RESULT_MEAN_CHIP_THICKNESS 15

/** Removal rate while the cut is at full width. In m3/s. */
#define GULLET_RESULT_REMOVAL_RATE 16

/** Specific cutting force at the mean chip, default pair, sharp edge. In Pa. */
#define GULLET_RESULT_SPECIFIC_CUTTING_FORCE 17

/** Power at the cutter, default pair, sharp edge. In W. */
#define GULLET_RESULT_CUTTING_POWER 18

/** Power of the motor for that. In W. */
#define GULLET_RESULT_MOTOR_POWER 19

/** Mean torque on the spindle, default pair, sharp edge. In N.m. */
#define GULLET_RESULT_TORQUE 20

/** Mean tangential force, default pair, sharp edge. In N. */
#define GULLET_RESULT_MEAN_TANGENTIAL_FORCE 21

/**
 * Power at the cutter by the unit-power method, where a unit power is known. In W. Good rows may lack it.
 */
#define GULLET_RESULT_UNIT_POWER_CUTTING_POWER 22

/** Power at the cutter that limits are checked with: the highest pair, worn edge. In W. */
#define GULLET_RESULT_LIMIT_POWER 23

/** Torque that limits are checked with: the highest pair, worn edge. In N.m. */
#define GULLET_RESULT_LIMIT_TORQUE 24

/** Peak tangential force of the teeth in cut: the highest pair, worn edge. In N. */
#define GULLET_RESULT_PEAK_TANGENTIAL_FORCE 25

/** Peak force across the cutter's axis: the highest pair, worn edge. In N. */
#define GULLET_RESULT_PEAK_FORCE 26

/** Peak force along the axis: pulls the work up and the cutter out. In N. */
#define GULLET_RESULT_AXIAL_FORCE 27

/** Deflection of the cutter's tip under the peak force. In m. */
#define GULLET_RESULT_DEFLECTION 28

/** Clamping force needed along the jaws and against lift, with the safety factor. In N. */
#define GULLET_RESULT_CLAMPING_NEEDED 29

/** Clamping force the hold gives. In N. */
#define GULLET_RESULT_CLAMPING_FORCE 30

/** Power that is available at the cutter at this speed, within the practice's share. In W. */
#define GULLET_RESULT_AVAILABLE_POWER 31

/** Torque that is available at this speed, within the practice's share. In N.m. */
#define GULLET_RESULT_AVAILABLE_TORQUE 32

/**
 * Theoretical mean roughness of the surface the pass leaves; none where no model applies. In m. Good rows may lack it.
 */
#define GULLET_RESULT_MEAN_ROUGHNESS 33

/** Travel of the pass with approach, overtravel and clearance. In m. */
#define GULLET_RESULT_TRAVEL 34

/** Time of the pass in the cut, without return and handling. In s. */
#define GULLET_RESULT_TIME 35

/** Cutting speed at the low end of the tables. In m/s. */
#define GULLET_RESULT_SPEED_LOW 36

/** Cutting speed that the tables start with. In m/s. */
#define GULLET_RESULT_SPEED_START 37

/** Cutting speed at the high end of the tables. In m/s. */
#define GULLET_RESULT_SPEED_HIGH 38

/** Mean tangential force with the lowest pair of the material. In N. */
#define GULLET_RESULT_FORCE_LOW 39

/** Mean tangential force with the highest pair of the material. In N. */
#define GULLET_RESULT_FORCE_HIGH 40

/** Power at the cutter with the lowest pair of the material. In W. */
#define GULLET_RESULT_POWER_LOW 41

/** Power at the cutter with the highest pair of the material. In W. */
#define GULLET_RESULT_POWER_HIGH 42

/** Time of the pass with speed and feed at the high ends of the tables. In s. */
#define GULLET_RESULT_TIME_LOW 43

/** Time of the pass with speed and feed at the tables' starting values. In s. */
#define GULLET_RESULT_TIME_START 44

/** Time of the pass with speed and feed at the low ends of the tables. In s. */
#define GULLET_RESULT_TIME_HIGH 45

/** Share of its bound that the binding limit uses. */
#define GULLET_RESULT_BINDING_SHARE 46

/** What edges are made of: HSS. */
#define GULLET_CUTTER_MATERIAL_HSS 0

/** What edges are made of: HSS-Co. */
#define GULLET_CUTTER_MATERIAL_HSS_CO 1

/** What edges are made of: cast cobalt alloy. */
#define GULLET_CUTTER_MATERIAL_CAST_COBALT_ALLOY 2

/** What edges are made of: uncoated carbide. */
#define GULLET_CUTTER_MATERIAL_UNCOATED_CARBIDE 3

/** What edges are made of: coated carbide. */
#define GULLET_CUTTER_MATERIAL_COATED_CARBIDE 4

/** What edges are made of: cermet. */
#define GULLET_CUTTER_MATERIAL_CERMET 5

/** What edges are made of: ceramic. */
#define GULLET_CUTTER_MATERIAL_CERAMIC 6

/** What edges are made of: CBN. */
#define GULLET_CUTTER_MATERIAL_CBN 7

/** What edges are made of: PCD. */
#define GULLET_CUTTER_MATERIAL_PCD 8

/** Shape of the cutting end: square. */
#define GULLET_CUTTER_FORM_SQUARE 0

/** Shape of the cutting end: corner-radius. */
#define GULLET_CUTTER_FORM_CORNER_RADIUS 1

/** Shape of the cutting end: ball-nose. */
#define GULLET_CUTTER_FORM_BALL_NOSE 2

/** Shape of the cutting end: face-mill. */
#define GULLET_CUTTER_FORM_FACE_MILL 3

/** The specific cutting force of every pair. */
#define GULLET_SPREAD_CUTTING_FORCE (-1)

/** The practice's factor for a worn edge. */
#define GULLET_SPREAD_WEAR_FACTOR (-2)

/** The feed per tooth that is really fed. */
#define GULLET_SPREAD_FEED (-3)

/** The spindle speed that is really turned. */
#define GULLET_SPREAD_SPEED (-4)

/** Every factor between `low` and `high` is as likely as another. */
#define GULLET_SHAPE_UNIFORM 1

/** Likeliest at `mode`, falling straight to `low` and `high`. */
#define GULLET_SHAPE_TRIANGULAR 2

/** The logarithm of the factor is normal about 0 with the standard deviation `sigma`. */
#define GULLET_SHAPE_LOG_NORMAL 3

/** Computed rows by the limit nearest to its bound. */
#define GULLET_ROWS_BINDING 1

/** Computed rows by the limit that holds the feed below the wanted one. */
#define GULLET_ROWS_HELD_BY 2

/** Rows that a limit made an error, by that limit. */
#define GULLET_ROWS_EXCEEDED 3

/** A blank. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_blank gullet_blank;

/** A cutter. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_cutter gullet_cutter;

/** A vise. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_hold gullet_hold;

/**
 * What a job file holds: a job, with what is to be cut, with what, how held; a block to be squared;
 * or a part made by several operations. Read-only after it is made: any number of threads
 * may use it at once.
 */
typedef struct gullet_job gullet_job;

/**
 * The reference tables, with a shop's own rows over them. Read-only after it is made: any number
 * of threads may use it at once.
 */
typedef struct gullet_library gullet_library;

/** A machine. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_machine gullet_machine;

/** A work material. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_material gullet_material;

/**
 * An operation with its inputs, and the material, tool, machine and practice it is done with. Several
 * threads may use it at once; their calls take turns.
 */
typedef struct gullet_operation gullet_operation;

/** A cut of an operation. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_operation_cut gullet_operation_cut;

/**
 * The pass plan of a job and its card, or the cards of a route or a part. Read-only after it is made: any number of threads may use
 * it at once.
 */
typedef struct gullet_plan gullet_plan;

/** A practice of a shop. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_practice gullet_practice;

/**
 * Everything a cut is made with, looked up in the tables once. Read-only after it is made: any
 * number of threads may use it at once.
 */
typedef struct gullet_setup gullet_setup;

/**
 * What cuts over columns are computed with: lists that rows choose from, and what no column gives.
 * Any number of threads may use it at once.
 */
typedef struct gullet_study gullet_study;

/**
 * What became of rows over any number of tables and streams: totals, and cells that mean nothing, such
 * as a material that the tables do not know. Several threads may use it at once; calls that compute
 * into one report take turns.
 */
typedef struct gullet_study_report gullet_study_report;

/**
 * A study made ready for tables of one schema. Any number of threads may use it at once. It needs a
 * library with Arrow in it, as it is built by default.
 */
typedef struct gullet_table_study gullet_table_study;

/**
 * What came of a call: 0 done; below 0 an error, and nothing is written; above 0 done, with
 * doubts. Numbers are never used anew.
 */
typedef int32_t gullet_status;

/**
 * One problem. The texts of gullet_last_error stay valid until the next call on the same thread that
 * fails, those of gullet_study_report_problem until the report is freed.
 */
typedef struct gullet_problem {
  /** sizeof(gullet_problem); set by gullet_problem_init(). */
  uint32_t struct_size;
  /** Status of the problem; the first problem's is what the call returned. */
  gullet_status status;
  /**
   * Name of the argument, key or column, without the suffix of its unit; a path such as
   * cutter.teeth in a job file.
   */
  const char *parameter;
  /** The offending value as given, with its unit; empty where there is none. */
  const char *value;
  /** The admissible range or the names that would do; empty where there is none. */
  const char *admissible;
  /** What to do about it. */
  const char *remedy;
  /** All of it in one line. */
  const char *message;
} gullet_problem;

/** An argument of gullet_evaluate_columns. */
typedef struct gullet_column {
  /** The SI values: one a row, or a single one for all rows. */
  const double *values_si;
  /** How many there are: the count of rows, or 1 for all rows alike. */
  size_t value_count;
} gullet_column;

/** A shop's own table, as text. */
typedef struct gullet_overlay {
  /** Name that problems are reported under. */
  const char *file_name;
  /** CSV text with a header line. */
  const char *text;
  /** Bytes of the text, or GULLET_NUL_TERMINATED. */
  size_t text_length;
} gullet_overlay;

/** One pass. Zero stands for what is said behind each field. */
typedef struct gullet_pass {
  /** sizeof(gullet_pass); set by gullet_pass_init(). */
  uint32_t struct_size;
  /** GULLET_SIDE_MILLING, GULLET_SLOTTING or GULLET_FACE_MILLING. */
  int32_t operation;
  /** GULLET_ROUGHING or GULLET_FINISHING. */
  int32_t kind;
  /** GULLET_CONVENTIONAL or GULLET_CLIMB. */
  int32_t direction;
  /** GULLET_LOWER or GULLET_DO_NOT_LOWER_FOR_LOADS. */
  int32_t lowering;
  /**
   * 1 to work out the reliefs of the ledger as well, which takes some fifty times longer; else 0.
   */
  int32_t with_reliefs;
  /** Back engagement a_p, along the axis; needed. */
  double axial_depth_m;
  /**
   * Working engagement a_e, across the axis; needed in side milling, 0 for the cutter's diameter
   * in slotting and for the width of the blank in face milling.
   */
  double radial_depth_m;
  /**
   * Face milling: distance from the cutter's axis to the middle of the work, positive towards the
   * side where teeth enter.
   */
  double offset_m;
  /** Length of the cut along the feed; 0 for the length of the blank. */
  double length_m;
  /** Mean roughness R_a wanted; 0 for none. */
  double mean_roughness_m;
  /** Spindle speed to use instead of the table's; 0 for the table's. */
  double spindle_speed_rev_per_s;
  /** Feed per tooth to use instead of the table's; 0 for the table's. */
  double feed_per_tooth_m;
} gullet_pass;

/** A cut: what a person sets on the machine, and what follows from it. */
typedef struct gullet_cut {
  /** sizeof(gullet_cut); set by gullet_cut_init(). */
  uint32_t struct_size;
  /** Number of limits in the ledger. */
  uint32_t limit_count;
  /** Doubts: 1 << GULLET_WARNING_... for each. */
  uint32_t warning_bits;
  /** The limit nearest to its bound, one of GULLET_LIMIT_...; 0 for none. */
  int32_t binding_limit;
  /** The limit that holds the feed below the wanted one, one of GULLET_LIMIT_...; 0 for none. */
  int32_t held_by_limit;
  /** Number of limits that are exceeded; some only where loads lower nothing. */
  uint32_t exceeded_count;
  /** Spindle speed that the wanted cutting speed would need. */
  double wanted_speed_rev_per_s;
  /** Spindle speed the machine really has. */
  double spindle_speed_rev_per_s;
  /** Cutting speed at that spindle speed. */
  double cutting_speed_m_per_s;
  /** Largest chip wanted. */
  double chip_load_m;
  /** Feed per tooth, after thinning and limits. */
  double feed_per_tooth_m;
  /** Feed per revolution. */
  double feed_per_rev_m;
  /** Table feed. */
  double table_feed_m_per_s;
  /** Pace of the handwheel for that table feed; none where the table is not cranked by hand. */
  double handwheel_rate_rev_per_s;
  /** Time to travel one inch, or 10 mm in a metric shop, at that table feed. */
  double time_per_inch_s;
  /** Time to travel 10 mm at that table feed. */
  double time_per_10_mm_s;
  /** Diameter that cuts at this depth. */
  double effective_diameter_m;
  /** Angle of tooth immersion at entry. */
  double entry_angle_rad;
  /** Angle of tooth immersion at exit. */
  double exit_angle_rad;
  /** Largest undeformed chip thickness. */
  double max_chip_thickness_m;
  /** Mean undeformed chip thickness. */
  double mean_chip_thickness_m;
  /** Removal rate while the cut is at full width. */
  double removal_rate_m3_per_s;
  /** Specific cutting force at the mean chip, default pair, sharp edge. */
  double specific_cutting_force_pa;
  /** Power at the cutter, default pair, sharp edge. */
  double cutting_power_w;
  /** Power of the motor for that. */
  double motor_power_w;
  /** Mean torque on the spindle, default pair, sharp edge. */
  double torque_n_m;
  /** Mean tangential force, default pair, sharp edge. */
  double mean_tangential_force_n;
  /** Power at the cutter by the unit-power method, where a unit power is known. */
  double unit_power_cutting_power_w;
  /** Power at the cutter that limits are checked with: the highest pair, worn edge. */
  double limit_power_w;
  /** Torque that limits are checked with: the highest pair, worn edge. */
  double limit_torque_n_m;
  /** Peak tangential force of the teeth in cut: the highest pair, worn edge. */
  double peak_tangential_force_n;
  /** Peak force across the cutter's axis: the highest pair, worn edge. */
  double peak_force_n;
  /** Peak force along the axis: pulls the work up and the cutter out. */
  double axial_force_n;
  /** Deflection of the cutter's tip under the peak force. */
  double deflection_m;
  /** Clamping force needed along the jaws and against lift, with the safety factor. */
  double clamping_needed_n;
  /** Clamping force the hold gives. */
  double clamping_force_n;
  /** Power that is available at the cutter at this speed, within the practice's share. */
  double available_power_w;
  /** Torque that is available at this speed, within the practice's share. */
  double available_torque_n_m;
  /** Theoretical mean roughness of the surface the pass leaves; none where no model applies. */
  double mean_roughness_m;
  /** Travel of the pass with approach, overtravel and clearance. */
  double travel_m;
  /** Time of the pass in the cut, without return and handling. */
  double time_s;
  /** Cutting speed of the tables: low end. */
  double cutting_speed_low_m_per_s;
  /** Cutting speed of the tables: starting value. */
  double cutting_speed_start_m_per_s;
  /** Cutting speed of the tables: high end. */
  double cutting_speed_high_m_per_s;
  /** Feed per tooth of the tables: low end. */
  double feed_per_tooth_low_m;
  /** Feed per tooth of the tables: starting value. */
  double feed_per_tooth_start_m;
  /** Feed per tooth of the tables: high end. */
  double feed_per_tooth_high_m;
  /** Mean tangential force at the settings, over the pairs of the material: low end. */
  double force_low_n;
  /** Mean tangential force at the settings, over the pairs of the material: starting value. */
  double force_start_n;
  /** Mean tangential force at the settings, over the pairs of the material: high end. */
  double force_high_n;
  /** Power at the cutter at the settings, over the pairs of the material: low end. */
  double power_low_w;
  /** Power at the cutter at the settings, over the pairs of the material: starting value. */
  double power_start_w;
  /** Power at the cutter at the settings, over the pairs of the material: high end. */
  double power_high_w;
  /** Time of the pass with speed and feed at the ends of the tables: low end. */
  double time_low_s;
  /** Time of the pass with speed and feed at the ends of the tables: starting value. */
  double time_start_s;
  /** Time of the pass with speed and feed at the ends of the tables: high end. */
  double time_high_s;
  /** 1 where handwheel_rate is known, 0 where it is not and its field is 0. */
  int32_t handwheel_rate_known;
  /** 1 where unit_power_cutting_power is known, 0 where it is not and its field is 0. */
  int32_t unit_power_cutting_power_known;
  /** 1 where mean_roughness is known, 0 where it is not and its field is 0. */
  int32_t mean_roughness_known;
  /** Zero. */
  int32_t reserved;
} gullet_cut;

/** One limit that was looked at. */
typedef struct gullet_limit {
  /** sizeof(gullet_limit); that of the first one counts for all of an array. */
  uint32_t struct_size;
  /** Which limit: one of GULLET_LIMIT_...; gullet_limit_name names it. */
  int32_t limit;
  /** 0 where the value must be at most the bound, 1 where it must be at least the bound. */
  int32_t at_least;
  /** 1 where the value lies beyond the bound. */
  int32_t exceeded;
  /** 1 for the limit nearest to its bound. */
  int32_t binding;
  /** Zero. */
  int32_t reserved;
  /** Value of this cut, in the unit of gullet_limit_unit. */
  double value_si;
  /** Bound, in the same unit. */
  double bound_si;
  /** Share of the bound that is used; above 1 the limit is exceeded. */
  double share;
  /** The value of `relief_setting` that would free the limit, in `relief_unit`. */
  double relief_si;
  /**
   * What the smallest change that would free it changes; empty where it holds nothing back or
   * was not asked for.
   */
  char relief_setting[32];
  /** SI unit of the relief; empty for a pure number. */
  char relief_unit[16];
} gullet_limit;

/** A plan as a whole. */
typedef struct gullet_plan_summary {
  /** sizeof(gullet_plan_summary); set by gullet_plan_summary_init(). */
  uint32_t struct_size;
  /** Doubts about the plan as a whole: 1 << GULLET_WARNING_... for each. */
  uint32_t warning_bits;
  /** Number of passes; the last one finishes. */
  uint64_t pass_count;
  /** Stock to remove, in counts of the readout. */
  uint64_t stock_counts;
  /** Stock to remove. */
  double stock_m;
  /** Smallest step of the readout or dial. */
  double resolution_m;
  /** Deepest roughing pass that every limit allows. */
  double largest_roughing_depth_m;
  /** Time in the cut, of all passes. */
  double cutting_s;
  /** Time back to the start, of all passes. */
  double returning_s;
  /** Time to set, measure and clear chips, of all passes. */
  double handling_s;
} gullet_plan_summary;

/** A pass of a plan. */
typedef struct gullet_planned_pass {
  /** sizeof(gullet_planned_pass); set by gullet_planned_pass_init(). */
  uint32_t struct_size;
  /** GULLET_ROUGHING or GULLET_FINISHING. */
  int32_t kind;
  /** GULLET_CONVENTIONAL or GULLET_CLIMB. */
  int32_t direction;
  /** Zero. */
  int32_t reserved;
  /** Number of the pass, from 1. */
  uint64_t number;
  /** Depth in counts of the readout. */
  uint64_t depth_counts;
  /** Stock left after the pass, in counts. */
  uint64_t left_counts;
  /** What the readout shows where the pass is set, in counts from zero. */
  int64_t readout_counts;
  /** Depth. */
  double depth_m;
  /** What the readout shows where the pass is set. */
  double readout_m;
  /** Time in the cut, with approach and overtravel. */
  double cutting_s;
  /** Time back to the start. */
  double returning_s;
  /** Time to set, measure and clear chips. */
  double handling_s;
} gullet_planned_pass;

/** An operation. Every text is static. */
typedef struct gullet_operation_listing {
  /** sizeof(gullet_operation_listing); set by gullet_operation_listing_init(). */
  uint32_t struct_size;
  /** Number of inputs, for gullet_operation_input. */
  uint32_t input_count;
  /** Number of settings and results, for gullet_operation_value. */
  uint32_t value_count;
  /** Zero. */
  uint32_t reserved;
  /** Name, such as "drilling", the same in every language. */
  const char *name;
  /** Name as a heading. */
  const char *title;
  /** What it does. */
  const char *meaning;
  /**
   * Limits it looks at beside those of spindle, feed, power and torque: names with commas between.
   */
  const char *limits;
  /** Material of an example with an invented part. */
  const char *example_material;
  /** What the edges of the example's tool are made of. */
  const char *example_tool;
  /** Built-in machine of the example. */
  const char *example_machine;
  /** Inputs of the example: "name=value; ...". */
  const char *example_inputs;
} gullet_operation_listing;

/** An input of an operation, or a value it gives. Every text is static. */
typedef struct gullet_operation_field {
  /** sizeof(gullet_operation_field); set by gullet_operation_field_init(). */
  uint32_t struct_size;
  /** Input: 1 where it must be given. Value: 1 where every cut has it. */
  int32_t always;
  /** Name, the same in every language. */
  const char *name;
  /** What it measures, such as "length"; "choice" for one of words. */
  const char *kind;
  /** SI unit; empty for a pure number, a count and a choice. */
  const char *unit;
  /** What it is. */
  const char *meaning;
  /**
   * Input: what is admissible, in the names of the other inputs, or the words of a choice with
   * commas between, whose places count from 0. Value: empty.
   */
  const char *admissible;
  /**
   * Input: what is taken without it, in metric units; empty where it must be given or the tables
   * decide. Value: empty.
   */
  const char *default_text;
} gullet_operation_field;

/** A cut of an operation as a whole. */
typedef struct gullet_operation_summary {
  /** sizeof(gullet_operation_summary); set by gullet_operation_summary_init(). */
  uint32_t struct_size;
  /** Number of limits in the ledger. */
  uint32_t limit_count;
  /** Doubts: 1 << GULLET_WARNING_... for each. */
  uint32_t warning_bits;
  /** The limit nearest to its bound, one of GULLET_LIMIT_...; 0 for none. */
  int32_t binding_limit;
  /** The limit that holds the feed below the wanted one, one of GULLET_LIMIT_...; 0 for none. */
  int32_t held_by_limit;
  /** Number of settings and results. */
  uint32_t value_count;
} gullet_operation_summary;

/** What decides the economic speed. Zero stands for what is said behind a field, else for zero. */
typedef struct gullet_edge_economics {
  /** sizeof(gullet_edge_economics); set by gullet_edge_economics_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** Machine and operator, money per time; needed. */
  double machine_rate_money_per_s;
  /** Cost of one cutting edge, regrinding included. */
  double edge_cost_money;
  /** Time of one tool change. */
  double change_time_s;
  /** Handling time a part. */
  double handling_time_s;
  /** Share of the cutting time that the edge is in cut; 0 for 1. */
  double in_cut_share;
  /** Cutting speed for a life of one minute, C of v T^n = C, at this feed and depth; needed. */
  double taylor_speed_m_per_s;
  /** Taylor's exponent n of the life, above 0 and below 1; needed. */
  double taylor_exponent;
  /** Diameter that the cutting speed is counted on; needed. */
  double diameter_m;
  /** Travel at feed, all passes together; needed. */
  double travel_m;
  /** Feed per revolution; needed. */
  double feed_per_rev_m;
} gullet_edge_economics;

/** What a part takes and costs at one speed, without set-up and material. */
typedef struct gullet_economic_speed {
  /** sizeof(gullet_economic_speed); set by gullet_economic_speed_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** Cutting speed. */
  double cutting_speed_m_per_s;
  /** Spindle speed. */
  double spindle_speed_rev_per_s;
  /** Feed speed. */
  double feed_speed_m_per_s;
  /** Tool life, counted while the edge cuts. */
  double tool_life_s;
  /** Cutting time a part. */
  double cutting_time_s;
  /** Parts an edge makes, as a mean. */
  double parts_per_edge;
  /** Time a part, edges changed also within a part. */
  double time_per_part_s;
  /** Cost a part, edges changed also within a part. */
  double cost_per_part_money;
  /** Whole parts an edge makes; 0 where it does not last one part. */
  double whole_parts_per_edge;
  /** Time a part where an edge makes whole parts only; 0 where it does not last one part. */
  double whole_parts_time_per_part_s;
  /** Cost a part where an edge makes whole parts only; 0 where it does not last one part. */
  double whole_parts_cost_per_part_money;
} gullet_economic_speed;

/** What the best of a spindle's speeds costs against the wanted speed. */
typedef struct gullet_snapping {
  /** sizeof(gullet_snapping); set by gullet_snapping_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** Speed that would be best if it could be set. */
  double wanted_rev_per_s;
  /** Highest step at or below it; 0 for none. */
  double below_rev_per_s;
  /** Lowest step above it; 0 for none. */
  double above_rev_per_s;
  /** Best step where an edge makes whole parts only; 0 for none. */
  double whole_parts_rev_per_s;
  /** What a part costs more than at the wanted speed. */
  double extra_cost_money;
  /** That over the cost at the wanted speed. */
  double extra_cost_share;
  /** What a part takes longer than at the wanted speed. */
  double extra_time_s;
  /** That over the time at the wanted speed. */
  double extra_time_share;
  /** Steps left out because their life is beyond what a number holds. */
  uint64_t left_out;
} gullet_snapping;

/**
 * A lot. Zero stands for what is said behind a field, else for zero. Hands learn and machines do
 * not: a learning rate shortens load and unload, tool changes and gauging, whose times are then
 * those of the first part.
 */
typedef struct gullet_lot {
  /** sizeof(gullet_lot); set by gullet_lot_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** Parts in the lot, a whole number; needed. */
  double lot_size;
  /** Machine and operator, money per time. */
  double machine_rate_money_per_s;
  /** Set-up time of the lot, allowances included. */
  double setup_time_s;
  /** Load and unload. */
  double handling_time_s;
  /** In the cut, a part. */
  double cutting_time_s;
  /** Moves outside the cut, a part. */
  double moving_time_s;
  /** Time of one tool change. */
  double change_time_s;
  /** Cost of one cutting edge, regrinding included. */
  double edge_cost_money;
  /** Parts one edge makes, whole or as a mean; 0 for 1. */
  double parts_per_edge;
  /** Time to gauge one part. */
  double gauging_time_s;
  /** One part in so many is gauged, a whole number; 0 for 1. */
  double gauged_every;
  /** Allowance as a share of the normal time: standard = normal (1 + A). */
  double allowance_of_normal_time;
  /** Allowance as a share of the standard time: standard = normal/(1 - A). */
  double allowance_of_standard_time;
  /** Learning rate of the cumulative average (Wright); 0 for 1, no learning. */
  double wright_rate;
  /** Learning rate of the unit curve (Crawford); 0 for 1, no learning. */
  double crawford_rate;
  /** Material, a part. */
  double material_cost_money;
} gullet_lot;

/**
 * What a lot takes and costs. The shares of a part, added in this order, give its totals to the
 * last bit.
 */
typedef struct gullet_lot_price {
  /** sizeof(gullet_lot_price); set by gullet_lot_price_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** Share of the set-up. */
  double setup_s;
  /** Load and unload. */
  double handling_s;
  /** In the cut. */
  double cutting_s;
  /** Moves outside the cut. */
  double moving_s;
  /** Share of tool changes. */
  double tool_change_s;
  /** Share of gauging. */
  double gauging_s;
  /** Allowance. */
  double allowance_s;
  /** Cost of the share of the set-up. */
  double setup_money;
  /** Cost of load and unload. */
  double handling_money;
  /** Cost of the time in the cut. */
  double cutting_money;
  /** Cost of moves outside the cut. */
  double moving_money;
  /** Cost of the time of tool changes. */
  double tool_change_money;
  /** Cost of gauging. */
  double gauging_money;
  /** Cost of the allowance. */
  double allowance_money;
  /** Cost of cutting edges. */
  double edges_money;
  /** Cost of material. */
  double material_money;
  /** Normal time of one part, a mean over the lot. */
  double normal_time_s;
  /** Standard time of one part: with the allowance, without the set-up. */
  double standard_time_s;
  /** Time of one part with its share of the set-up. */
  double time_per_part_s;
  /** Cost of one part. */
  double cost_per_part_money;
  /** Time of the lot. */
  double lot_time_s;
  /** Cost of the lot. */
  double lot_cost_money;
} gullet_lot_price;

/** Numbers of an input: one a row, or the same one in all rows. */
typedef struct gullet_input {
  /** Which input: one of GULLET_INPUT_... */
  int32_t input;
  /** Zero. */
  int32_t reserved;
  /** A number a row, in the unit of gullet_input_unit; NULL for `value_si` in every row. */
  const double *values_si;
  /** The number of every row, where `values_si` is NULL. */
  double value_si;
} gullet_input;

/**
 * What rows choose: one place a row, or the same one in all rows. A row that chooses what is not
 * there gets GULLET_ERROR_UNKNOWN_NAME.
 */
typedef struct gullet_choice {
  /** Which choice: one of GULLET_CHOICE_... */
  int32_t choice;
  /** The place in every row, where `places` is NULL. */
  uint32_t place;
  /**
   * A place a row: of materials, machines and practices in the lists of the study, else what the
   * constant of the choice says, and UINT32_MAX for what the study has; NULL for `place` in every
   * row.
   */
  const uint32_t *places;
} gullet_choice;

/** A result that is wanted. */
typedef struct gullet_result {
  /** Which result: one of GULLET_RESULT_... */
  int32_t result;
  /** Zero. */
  int32_t reserved;
  /**
   * Room for a number a row, in the unit of gullet_result_unit. A row that is refused, or that
   * does not have the value, keeps what stood there.
   */
  double *values_si_out;
} gullet_result;

/** Rows of a study, and where their results go. */
typedef struct gullet_study_batch {
  /** sizeof(gullet_study_batch); set by gullet_study_batch_init(). */
  uint32_t struct_size;
  /**
   * Most threads that work, the caller's included; 0 for one a processor. No bit of the results
   * depends on it.
   */
  uint32_t threads;
  /** Number of rows. */
  size_t count;
  /** The numbers, each input at most once. */
  const struct gullet_input *inputs;
  /** How many inputs there are. */
  size_t input_count;
  /** The choices, each at most once. */
  const struct gullet_choice *choices;
  /** How many choices there are. */
  size_t choice_count;
  /** The results that are wanted. */
  const struct gullet_result *results;
  /** How many results there are. */
  size_t result_count;
  /** A status a row: 0, or the error that the row has no results for. */
  gullet_status *status_out;
  /**
   * A limit a row, or NULL: the one nearest to its bound, or that made the row an error; one of
   * GULLET_LIMIT_..., 0 for none.
   */
  uint8_t *binding_limit_out;
  /** A limit a row, or NULL: the one that holds the feed below the wanted one; 0 for none. */
  uint8_t *held_by_limit_out;
  /** Doubts of a row, or NULL: 1 << GULLET_WARNING_... for each. */
  uint8_t *warning_bits_out;
} gullet_study_batch;

/** How readings are fitted: zero stands for what is usual. */
typedef struct gullet_fit_options {
  /** sizeof(gullet_fit_options); set by gullet_fit_options_init(). */
  uint32_t struct_size;
  /** Units that problems are told in: GULLET_METRIC or GULLET_INCH. */
  int32_t units;
  /** Confidence of every limit, two-sided, 0.5 to 0.999; 0 for 0.95. */
  double confidence;
  /** Feed that C is for; 0 for the geometric mean of the readings. */
  double reference_feed_m;
  /** Depth of cut that C is for; 0 for the geometric mean of the readings. */
  double reference_depth_m;
} gullet_fit_options;

/**
 * Taylor's law v T^n (f/f_0)^a (d/d_0)^b = C with C for a life of one minute. A reference of 0
 * stands for a law without that exponent; a range whose ends are 0 for one that is not known.
 */
typedef struct gullet_taylor_law {
  /** sizeof(gullet_taylor_law); set by gullet_taylor_law_init(). */
  uint32_t struct_size;
  /** Units that problems and doubts are told in: GULLET_METRIC or GULLET_INCH. */
  int32_t units;
  /** C: cutting speed for a life of one minute at the reference feed and depth. */
  double taylor_speed_m_per_s;
  /** Lower limit of C; 0 where it comes from no fit. */
  double taylor_speed_low_m_per_s;
  /** Upper limit of C. */
  double taylor_speed_high_m_per_s;
  /** n, above 0 and below 1. */
  double taylor_exponent;
  /** Lower limit of n; 0 where it comes from no fit. */
  double taylor_exponent_low;
  /** Upper limit of n. */
  double taylor_exponent_high;
  /** a, the exponent of the feed. */
  double feed_exponent;
  /** Lower limit of a. */
  double feed_exponent_low;
  /** Upper limit of a. */
  double feed_exponent_high;
  /** f_0, the feed that C is for. */
  double reference_feed_m;
  /** b, the exponent of the depth of cut. */
  double depth_exponent;
  /** Lower limit of b. */
  double depth_exponent_low;
  /** Upper limit of b. */
  double depth_exponent_high;
  /** d_0, the depth of cut that C is for. */
  double reference_depth_m;
  /** Lowest cutting speed of the tests. */
  double lowest_speed_m_per_s;
  /** Highest cutting speed of the tests. */
  double highest_speed_m_per_s;
  /** Lowest feed of the tests. */
  double lowest_feed_m;
  /** Highest feed of the tests. */
  double highest_feed_m;
  /** Lowest depth of cut of the tests. */
  double lowest_depth_m;
  /** Highest depth of cut of the tests. */
  double highest_depth_m;
} gullet_taylor_law;

/** How well a law fits its readings. */
typedef struct gullet_fit_quality {
  /** sizeof(gullet_fit_quality); set by gullet_fit_quality_init(). */
  uint32_t struct_size;
  /** Readings less coefficients. */
  uint32_t degrees_of_freedom;
  /**
   * Standard deviation s of the natural logarithms about the fit: the mean life is exp(s^2/2)
   * times the median that the law gives.
   */
  double residual_deviation;
  /** Correlation r; the multiple one, without a sign, with several variables. */
  double correlation;
  /** Share of the squares that the fit explains. */
  double r_squared;
  /** Confidence of the limits, two-sided. */
  double confidence;
  /** Student's t of that confidence. */
  double student_t;
} gullet_fit_quality;

/**
 * The pair of the power law of specific cutting force, fitted to readings. Main value and exponent
 * belong together: they are neither averaged with nor exchanged for those of other pairs.
 */
typedef struct gullet_kienzle_law {
  /** sizeof(gullet_kienzle_law); set by gullet_kienzle_law_init(). */
  uint32_t struct_size;
  /** Zero. */
  uint32_t reserved;
  /** k_c1.1, specific cutting force at a chip 1 mm thick. */
  double kc11_pa;
  /** Lower limit of k_c1.1. */
  double kc11_low_pa;
  /** Upper limit of k_c1.1. */
  double kc11_high_pa;
  /** m_c, the exponent of the chip thickness. */
  double chip_exponent;
  /** Lower limit of m_c. */
  double chip_exponent_low;
  /** Upper limit of m_c. */
  double chip_exponent_high;
  /** Correlation of ln k_c1.1 and m_c. */
  double pair_correlation;
  /** Geometric mean of the chip thicknesses. */
  double mean_chip_thickness_m;
  /** Specific cutting force at that chip, by which fits are compared. */
  double specific_force_at_mean_pa;
  /** Thinnest chip of the readings. */
  double lowest_chip_thickness_m;
  /** Thickest chip of the readings. */
  double highest_chip_thickness_m;
} gullet_kienzle_law;

/** How a factor on a quantity is spread about 1. Fields that the shape does not have are zero. */
typedef struct gullet_spread {
  /** What is spread: one of GULLET_SPREAD_..., or one of GULLET_INPUT_... that is measured. */
  int32_t quantity;
  /** One of GULLET_SHAPE_... */
  int32_t shape;
  /** Smallest factor. */
  double low;
  /** Likeliest factor. */
  double mode;
  /** Largest factor. */
  double high;
  /** Standard deviation of the factor's logarithm. */
  double sigma;
} gullet_spread;

/** What is drawn over the rows of a batch, and where the quantiles go. */
typedef struct gullet_draws {
  /** sizeof(gullet_draws); set by gullet_draws_init(). */
  uint32_t struct_size;
  /** Draws of every row, from 1 to 1000000. */
  uint32_t draws;
  /** The seed. */
  uint64_t seed;
  /**
   * Number of the batch's first row among all rows. A draw depends on the seed and the number of
   * its row alone, so that parts of a table draw as the whole.
   */
  uint64_t first_row;
  /** The spreads, each quantity once. */
  const struct gullet_spread *spreads;
  /** How many spreads there are. */
  size_t spread_count;
  /** The quantiles that are wanted, from 0 (the smallest draw) to 1 (the largest). */
  const double *quantiles;
  /** How many quantiles there are. */
  size_t quantile_count;
  /**
   * Room for a number a row for each quantile of each result: those of result r of the batch and
   * quantile q begin at (r * quantile_count + q) * count. Rows without any keep what stood there.
   */
  double *values_si_out;
  /**
   * A number a row, or NULL: draws that left what can be computed and are not among the
   * quantiles.
   */
  uint32_t *left_out_out;
} gullet_draws;

/**
 * Totals over rows. Times, energies and costs are rounded row by row, to a nanosecond, a microjoule
 * and a millionth, and added as whole numbers, so that no order of the rows changes them.
 */
typedef struct gullet_study_summary {
  /** sizeof(gullet_study_summary); set by gullet_study_summary_init(). */
  uint32_t struct_size;
  /** 1 where a cost per hour is given, else 0. */
  int32_t cost_known;
  /** Rows there are. */
  uint64_t rows;
  /** Rows that were computed. */
  uint64_t computed;
  /** Time in the cut over the computed rows: without return, handling and set-up. */
  double cutting_time_s;
  /**
   * Energy of the spindle motor over the computed rows, at full width of cut: without idling, feed
   * drives and coolant.
   */
  double energy_j;
  /**
   * Machine and operator for the time in the cut over the computed rows; 0 where it is not known.
   */
  double cost;
} gullet_study_summary;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/** Version of the library in use as text, such as "0.1.0"; static. */
const char *gullet_version(void);

/**
 * Version of the library in use as a number: compare it with GULLET_VERSION_NUMBER of the header
 * a program was compiled with.
 */
uint32_t gullet_version_number(void);

/** Name of a status, such as "out_of_range"; "unknown" for a number that is none. Static. */
const char *gullet_status_name(gullet_status status);

/**
 * The last failure of this thread in words, a line a problem; empty before the first one. Read it
 * after a call that failed: a call that succeeds leaves it as it is. Valid until the next failure
 * of this thread.
 */
const char *gullet_last_error_message(void);

/** Number of problems of the last failure of this thread: all that were found are told at once. */
size_t gullet_last_error_count(void);

/**
 * A problem of the last failure of this thread, from 0. Leaves the last failure as it is, also
 * where it fails itself: with GULLET_ERROR_OUT_OF_RANGE there is no such problem.
 */
gullet_status gullet_last_error(size_t index, struct gullet_problem *problem);

/** Name of a limit, such as "power"; empty for a number that is none. Static. */
const char *gullet_limit_name(int32_t limit);

/** SI unit of a limit's value and bound as text; empty for a pure number. Static. */
const char *gullet_limit_unit(int32_t limit);

/**
 * Reads text with a unit, such as "1-1/4 in" or "90 ft/min", into the SI value of its kind. Kinds:
 * length, area, velocity, acceleration, time, rotational_speed, frequency, angle, ratio, count,
 * turns, force, line_force, stiffness, pressure, power, torque, volume_rate, area_rate, money,
 * money_rate, density. A bare number where a unit belongs is an error.
 */
gullet_status gullet_parse(const char *kind_name,
                           const char *quantity_text,
                           size_t quantity_length,
                           double *value_si_out);

/** Converts a number from one unit of a kind to another, rounded once each way: 1 in is 25.4 mm. */
gullet_status gullet_convert(const char *kind_name,
                             double value,
                             const char *from_unit,
                             const char *to_unit,
                             double *value_out);

/**
 * A number in a unit as the SI value that every other call takes; the same bits as reading the
 * text of the two together.
 */
gullet_status gullet_to_si(const char *kind_name,
                           double value,
                           const char *unit,
                           double *value_si_out);

/** An SI value in a unit. */
gullet_status gullet_from_si(const char *kind_name,
                             double value_si,
                             const char *unit,
                             double *value_out);

/**
 * An SI value as people read it, in the units of a shop: GULLET_METRIC or GULLET_INCH. See
 * "Text out" for the buffer.
 */
gullet_status gullet_format(const char *kind_name,
                            double value_si,
                            int32_t units,
                            char *buffer,
                            size_t capacity,
                            size_t *needed_out);

/**
 * Evaluates a formula by name over arguments as text: "cutting_speed=90 ft/min; diameter=1/2 in".
 * The result is in the SI unit of its kind.
 */
gullet_status gullet_evaluate(const char *formula_name,
                              const char *arguments,
                              size_t arguments_length,
                              double *result_si_out);

/** Evaluates a formula by name over SI arguments in the catalogue's order. */
gullet_status gullet_evaluate_si(const char *formula_name,
                                 const double *arguments_si,
                                 size_t argument_count,
                                 double *result_si_out);

/**
 * Evaluates a formula by name over columns of SI values in the catalogue's order; rows as in the
 * array forms.
 */
gullet_status gullet_evaluate_columns(const char *formula_name,
                                      size_t count,
                                      const struct gullet_column *columns,
                                      size_t column_count,
                                      double *result_si_out,
                                      gullet_status *status_out);

/**
 * A formula worked through with numbers, in one line: equation, numbers with units, result, in
 * GULLET_METRIC or GULLET_INCH units. See "Text out" for the buffer.
 */
gullet_status gullet_explain(const char *formula_name,
                             const char *arguments,
                             size_t arguments_length,
                             int32_t units,
                             char *buffer,
                             size_t capacity,
                             size_t *needed_out);

/**
 * What the catalogue says of a formula: meaning, equation, arguments with their ranges, validity,
 * source. See "Text out" for the buffer.
 */
gullet_status gullet_describe(const char *formula_name,
                              char *buffer,
                              size_t capacity,
                              size_t *needed_out);

/** Number of formulas of the catalogue. */
size_t gullet_formula_count(void);

/** Name of a formula of the catalogue, from 0. See "Text out" for the buffer. */
gullet_status gullet_formula_name(size_t index, char *buffer, size_t capacity, size_t *needed_out);

/**
 * Name of the kind that a formula's result measures, for gullet_from_si and gullet_format. See
 * "Text out" for the buffer.
 */
gullet_status gullet_formula_result_kind(const char *formula_name,
                                         char *buffer,
                                         size_t capacity,
                                         size_t *needed_out);

/**
 * The built-in tables with a shop's own laid over them; `base` NULL stands for the built-in ones,
 * another library for itself. Every row that is refused is told at once, with file, line, column.
 * Free it with gullet_library_free.
 */
gullet_status gullet_library_new(const struct gullet_library *base,
                                 const struct gullet_overlay *overlays,
                                 size_t overlay_count,
                                 struct gullet_library **library_out);

/** Frees a library; NULL is left alone. Handles made with it keep what they need. */
void gullet_library_free(struct gullet_library *library);

/**
 * Puts the parts of a set-up together; `library` NULL stands for the built-in tables. The parts are
 * copied: their handles may be freed. Errors of its cuts are told in `units`:
 * GULLET_METRIC or GULLET_INCH. Free it with gullet_setup_free.
 */
gullet_status gullet_setup_new(const struct gullet_library *library,
                               const struct gullet_material *material,
                               const struct gullet_blank *blank,
                               const struct gullet_cutter *cutter,
                               const struct gullet_machine *machine,
                               const struct gullet_hold *hold,
                               const struct gullet_practice *practice,
                               int32_t units,
                               struct gullet_setup **setup_out);

/** Frees a set-up; NULL is left alone. */
void gullet_setup_free(struct gullet_setup *setup);

/**
 * A work material from the keys of the section `material` of a job file, as a JSON object:
 * {"id": "6061"}
 * `library` NULL stands for the built-in tables. Free it with gullet_material_free.
 */
gullet_status gullet_material_new(const struct gullet_library *library,
                                  const char *keys_json,
                                  size_t keys_length,
                                  struct gullet_material **material_out);

/**
 * The keys of a work material as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_material_json(const struct gullet_material *material,
                                   char *buffer,
                                   size_t capacity,
                                   size_t *needed_out);

/** Frees a work material; NULL is left alone. */
void gullet_material_free(struct gullet_material *material);

/**
 * A blank from the keys of the section `blank` of a job file, as a JSON object:
 * {"length": "3 in", "width": "50 mm", "height": "1 in"}
 * `library` NULL stands for the built-in tables. Free it with gullet_blank_free.
 */
gullet_status gullet_blank_new(const struct gullet_library *library,
                               const char *keys_json,
                               size_t keys_length,
                               struct gullet_blank **blank_out);

/**
 * The keys of a blank as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_blank_json(const struct gullet_blank *blank,
                                char *buffer,
                                size_t capacity,
                                size_t *needed_out);

/** Frees a blank; NULL is left alone. */
void gullet_blank_free(struct gullet_blank *blank);

/**
 * A cutter from the keys of the section `cutter` of a job file, as a JSON object:
 * {"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2, "flute_length": "1 in", "stick_out": "1.5 in"}
 * `library` NULL stands for the built-in tables. Free it with gullet_cutter_free.
 */
gullet_status gullet_cutter_new(const struct gullet_library *library,
                                const char *keys_json,
                                size_t keys_length,
                                struct gullet_cutter **cutter_out);

/**
 * The keys of a cutter as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_cutter_json(const struct gullet_cutter *cutter,
                                 char *buffer,
                                 size_t capacity,
                                 size_t *needed_out);

/** Frees a cutter; NULL is left alone. */
void gullet_cutter_free(struct gullet_cutter *cutter);

/**
 * A machine from the keys of the section `machine` of a job file, as a JSON object:
 * {"base": "manual-knee-mill"}
 * `library` NULL stands for the built-in tables. Free it with gullet_machine_free.
 */
gullet_status gullet_machine_new(const struct gullet_library *library,
                                 const char *keys_json,
                                 size_t keys_length,
                                 struct gullet_machine **machine_out);

/**
 * The keys of a machine as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_machine_json(const struct gullet_machine *machine,
                                  char *buffer,
                                  size_t capacity,
                                  size_t *needed_out);

/** Frees a machine; NULL is left alone. */
void gullet_machine_free(struct gullet_machine *machine);

/**
 * A vise from the keys of the section `hold` of a job file, as a JSON object:
 * {"clamping_force": "12 kN", "grip_depth": "1/2 in"}
 * `library` NULL stands for the built-in tables. Free it with gullet_hold_free.
 */
gullet_status gullet_hold_new(const struct gullet_library *library,
                              const char *keys_json,
                              size_t keys_length,
                              struct gullet_hold **hold_out);

/**
 * The keys of a vise as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_hold_json(const struct gullet_hold *hold,
                               char *buffer,
                               size_t capacity,
                               size_t *needed_out);

/** Frees a vise; NULL is left alone. */
void gullet_hold_free(struct gullet_hold *hold);

/**
 * A practice of a shop from the keys of the section `practice` of a job file, as a JSON object:
 * {"base": "training"}
 * `library` NULL stands for the built-in tables. Free it with gullet_practice_free.
 */
gullet_status gullet_practice_new(const struct gullet_library *library,
                                  const char *keys_json,
                                  size_t keys_length,
                                  struct gullet_practice **practice_out);

/**
 * The keys of a practice of a shop as JSON; reading them gives the same one, bit for bit. See "Text out" for
 * the buffer.
 */
gullet_status gullet_practice_json(const struct gullet_practice *practice,
                                   char *buffer,
                                   size_t capacity,
                                   size_t *needed_out);

/** Frees a practice of a shop; NULL is left alone. */
void gullet_practice_free(struct gullet_practice *practice);

/**
 * Computes one pass: settings the machine really has, what follows from them, and the ledger of
 * limits. A positive status is the first of the doubts there are; gullet_cut_json tells them in words.
 * `limits_out` may be NULL; else the struct_size of its first one is set and there is room for
 * `limit_capacity` of them. Nothing is written where the call fails.
 */
gullet_status gullet_cut_compute(const struct gullet_setup *setup,
                                 const struct gullet_pass *pass,
                                 struct gullet_cut *cut_out,
                                 struct gullet_limit *limits_out,
                                 size_t limit_capacity);

/**
 * A pass worked out in full as JSON: settings, consequences, limits with the origin of each bound,
 * what was lowered, spread, worked steps, data with sources, doubts and cautions, as text in
 * GULLET_METRIC or GULLET_INCH units beside each SI value. See "Text out" for the buffer.
 */
gullet_status gullet_cut_json(const struct gullet_setup *setup,
                              const struct gullet_pass *pass,
                              int32_t units,
                              char *buffer,
                              size_t capacity,
                              size_t *needed_out);

/**
 * Reads a job file in TOML; `library` NULL stands for the built-in tables. With `route =
 * "squared-block"` or `route = "part"` it is a route, which has cards but no passes. Every problem is told at once, each with its path, such as cutter.teeth, and its line. Free it with gullet_job_free.
 */
gullet_status gullet_job_new_toml(const struct gullet_library *library,
                                  const char *job_text,
                                  size_t job_length,
                                  struct gullet_job **job_out);

/** Reads a job file in JSON, with the same sections and keys as in TOML. */
gullet_status gullet_job_new_json(const struct gullet_library *library,
                                  const char *job_text,
                                  size_t job_length,
                                  struct gullet_job **job_out);

/** Frees a job; NULL is left alone. */
void gullet_job_free(struct gullet_job *job);

/** The set-up of a job, for cuts of one's own. Free it with gullet_setup_free. */
gullet_status gullet_job_setup(const struct gullet_job *job, struct gullet_setup **setup_out);

/**
 * Plans the passes of a job, or everything of a route, and makes the cards. A positive status is the
 * first of the doubts about the plan of a job as a whole, which the card tells in words; the doubts of
 * a route stand on its cards alone. The job is copied: its handle may be freed. Free the plan with gullet_plan_free.
 */
gullet_status gullet_plan_new(const struct gullet_job *job,
                              struct gullet_plan **plan_out);

/** Frees a plan; NULL is left alone. */
void gullet_plan_free(struct gullet_plan *plan);

/** What a plan comes to. */
gullet_status gullet_plan_summarise(const struct gullet_plan *plan,
                                    struct gullet_plan_summary *summary_out);

/** A pass of a plan, from 0. */
gullet_status gullet_plan_pass(const struct gullet_plan *plan,
                               size_t index,
                               struct gullet_planned_pass *pass_out);

/** The cut of a pass of a plan, from 0, with reliefs; as gullet_cut_compute. */
gullet_status gullet_plan_cut(const struct gullet_plan *plan,
                              size_t index,
                              struct gullet_cut *cut_out,
                              struct gullet_limit *limits_out,
                              size_t limit_capacity);

/**
 * The set-up card of a plan as text for a terminal or a plain printer. See "Text out" for the
 * buffer.
 */
gullet_status gullet_card_text(const struct gullet_plan *plan,
                               char *buffer,
                               size_t capacity,
                               size_t *needed_out);

/**
 * The set-up card of a plan as one printable page of HTML: no script, no network. See "Text out"
 * for the buffer.
 */
gullet_status gullet_card_html(const struct gullet_plan *plan,
                               char *buffer,
                               size_t capacity,
                               size_t *needed_out);

/**
 * The set-up card of a plan as JSON: every quantity with its SI value and as the card prints it.
 * See "Text out" for the buffer.
 */
gullet_status gullet_card_json(const struct gullet_plan *plan,
                               char *buffer,
                               size_t capacity,
                               size_t *needed_out);

/** Number of operations. Lists in programs should not rely on it: later versions have more. */
size_t gullet_operation_count(void);

/** Place of an operation in the list, by its name. */
gullet_status gullet_operation_find(const char *operation_name, size_t *index_out);

/** An operation of the list, from 0. */
gullet_status gullet_operation_list(size_t index, struct gullet_operation_listing *listing_out);

/** An input of an operation of the list, both from 0. */
gullet_status gullet_operation_input(size_t operation,
                                     size_t index,
                                     struct gullet_operation_field *field_out);

/**
 * A value that an operation of the list gives, both from 0: the settings, then the results, in the
 * order of gullet_operation_cut_values.
 */
gullet_status gullet_operation_value(size_t operation,
                                     size_t index,
                                     struct gullet_operation_field *field_out);

/**
 * An operation by its name, nothing given yet but the practice "training" and tools of HSS. Errors,
 * doubts and cards are told in `units`: GULLET_METRIC or GULLET_INCH. `library` NULL stands for the
 * built-in tables. Free it with gullet_operation_free.
 */
gullet_status gullet_operation_new(const struct gullet_library *library,
                                   const char *operation_name,
                                   int32_t units,
                                   struct gullet_operation **operation_out);

/** Frees an operation; NULL is left alone. Its cuts keep what they need. */
void gullet_operation_free(struct gullet_operation *operation);

/**
 * Gives an input as text with its unit, such as "8.5 mm", or as the word of a choice; or, by the names
 * "material", "machine", "practice" and "tool", what the operation is done with, such as "1018",
 * "small-cnc-mill", "experienced" and "HSS". Later values replace earlier ones.
 */
gullet_status gullet_operation_set_text(struct gullet_operation *operation,
                                        const char *input_name,
                                        const char *value_text);

/**
 * Gives an input as a number in the SI unit of its kind, or as the place of the word of a choice, from
 * 0. What is not admissible is told when the cut is computed.
 */
gullet_status gullet_operation_set(struct gullet_operation *operation,
                                   const char *input_name,
                                   double value_si);

/** Gives the work material by its handle, which is copied. */
gullet_status gullet_operation_set_material(struct gullet_operation *operation,
                                            const struct gullet_material *material);

/** Gives the machine by its handle, which is copied. */
gullet_status gullet_operation_set_machine(struct gullet_operation *operation,
                                           const struct gullet_machine *machine);

/** Gives the practice by its handle, which is copied. */
gullet_status gullet_operation_set_practice(struct gullet_operation *operation,
                                            const struct gullet_practice *practice);

/**
 * Computes the cut: settings the machine really has, what follows from them, every limit, worked
 * steps. Every problem is told at once. A positive status is the first of the doubts there are. The
 * operation may be changed and computed again. Free the cut with gullet_operation_cut_free.
 */
gullet_status gullet_operation_compute(const struct gullet_operation *operation,
                                       struct gullet_operation_cut **cut_out);

/** Frees a cut of an operation; NULL is left alone. */
void gullet_operation_cut_free(struct gullet_operation_cut *cut);

/** What a cut of an operation comes to. */
gullet_status gullet_operation_cut_summarise(const struct gullet_operation_cut *cut,
                                             struct gullet_operation_summary *summary_out);

/**
 * A setting or a result by its name, in the SI unit of its kind. GULLET_ERROR_MISSING where the cut
 * has none, as of the pace of a handwheel on a machine without one.
 */
gullet_status gullet_operation_cut_value(const struct gullet_operation_cut *cut,
                                         const char *value_name,
                                         double *value_si_out);

/**
 * All settings and results in the order of gullet_operation_value, in SI units. `known_out` may be
 * NULL; else it receives 1 for each value, or 0 where the cut has none and its value is 0.
 */
gullet_status gullet_operation_cut_values(const struct gullet_operation_cut *cut,
                                          double *values_si_out,
                                          int32_t *known_out,
                                          size_t capacity);

/**
 * The ledger of a cut of an operation. The struct_size of the first limit is set and there is room for
 * `limit_capacity` of them; gullet_operation_cut_summarise tells how many there are.
 */
gullet_status gullet_operation_cut_limits(const struct gullet_operation_cut *cut,
                                          struct gullet_limit *limits_out,
                                          size_t limit_capacity);

/**
 * The card of a cut of an operation as text, worked steps included. See "Text out" for the buffer.
 */
gullet_status gullet_operation_cut_text(const struct gullet_operation_cut *cut,
                                        char *buffer,
                                        size_t capacity,
                                        size_t *needed_out);

/**
 * The card of a cut of an operation as one printable page of HTML: no script, no network. See "Text
 * out" for the buffer.
 */
gullet_status gullet_operation_cut_html(const struct gullet_operation_cut *cut,
                                        char *buffer,
                                        size_t capacity,
                                        size_t *needed_out);

/**
 * The card of a cut of an operation as JSON: every quantity with its SI value and as the card prints
 * it. See "Text out" for the buffer.
 */
gullet_status gullet_operation_cut_json(const struct gullet_operation_cut *cut,
                                        char *buffer,
                                        size_t capacity,
                                        size_t *needed_out);

/** The chain of formulas and choices, a line each. See "Text out" for the buffer. */
gullet_status gullet_operation_cut_steps(const struct gullet_operation_cut *cut,
                                         char *buffer,
                                         size_t capacity,
                                         size_t *needed_out);

/** The doubts in words, a line each. See "Text out" for the buffer. */
gullet_status gullet_operation_cut_warnings(const struct gullet_operation_cut *cut,
                                            char *buffer,
                                            size_t capacity,
                                            size_t *needed_out);

/** What can hurt, a line each. See "Text out" for the buffer. */
gullet_status gullet_operation_cut_cautions(const struct gullet_operation_cut *cut,
                                            char *buffer,
                                            size_t capacity,
                                            size_t *needed_out);

/** The speed of least cost or least time; `aim` is GULLET_LEAST_COST or GULLET_LEAST_TIME. */
gullet_status gullet_economics_best(const struct gullet_edge_economics *economics,
                                    int32_t aim,
                                    struct gullet_economic_speed *speed_out);

/** What a part takes and costs at a spindle speed. */
gullet_status gullet_economics_at(const struct gullet_edge_economics *economics,
                                  double spindle_speed_rev_per_s,
                                  struct gullet_economic_speed *speed_out);

/**
 * The best of a spindle's steps, rising, each tried through the whole cost function, and what it
 * costs against the speed that would be best.
 */
gullet_status gullet_economics_snap(const struct gullet_edge_economics *economics,
                                    int32_t aim,
                                    const double *speeds_rev_per_s,
                                    size_t speed_count,
                                    struct gullet_economic_speed *chosen_out,
                                    struct gullet_snapping *snapping_out);

/** What a lot takes and costs, share by share. */
gullet_status gullet_lot_compute(const struct gullet_lot *lot, struct gullet_lot_price *price_out);

/**
 * A study over lists of which a row chooses by the place, from 0; a row that does not choose gets
 * the first entry. `pass` and the parts stand for what is not among the inputs; of the blank come
 * height, and length and width as in gullet_cut_compute; pass->lowering and pass->with_reliefs are
 * zero. `library` NULL stands for the built-in tables. The parts are copied: their handles may be
 * freed. Free it with gullet_study_free.
 */
gullet_status gullet_study_new(const struct gullet_library *library,
                               const struct gullet_material *const *materials,
                               size_t material_count,
                               const struct gullet_machine *const *machines,
                               size_t machine_count,
                               const struct gullet_practice *const *practices,
                               size_t practice_count,
                               const struct gullet_blank *blank,
                               const struct gullet_cutter *cutter,
                               const struct gullet_hold *hold,
                               const struct gullet_pass *pass,
                               struct gullet_study **study_out);

/**
 * A study with everything as a job has it: a roughing pass whose depth, which the plan of passes
 * would choose, is among the inputs. Lists have one entry. The job is copied. Free it with
 * gullet_study_free.
 */
gullet_status gullet_study_of_job(const struct gullet_job *job, struct gullet_study **study_out);

/** Frees a study; NULL is left alone. */
void gullet_study_free(struct gullet_study *study);

/**
 * Computes every row of a batch; each gets the bits that gullet_cut_compute gives. A row that is
 * refused gets the status of its error, the others 0; the call then returns
 * GULLET_WARNING_ROWS_REFUSED. What is written may overlap nothing (GULLET_ERROR_OVERLAP). Nothing
 * is written where the call fails. With count 0 every array of rows may be NULL.
 */
gullet_status gullet_study_run(const struct gullet_study *study,
                               const struct gullet_study_batch *batch);

/**
 * Fits Taylor's law to `count` readings by least squares of logarithms: a cutting speed and the
 * life of an edge each, with feeds and depths of cut or NULL for either. The law gives median lives.
 * `options` NULL stands for what is usual; `quality_out` and `residuals_out` (room for `count`
 * numbers: logarithm of each life less the fitted one) may be NULL. Readings that cannot carry a law
 * are refused with the reason; a positive status says that there are doubts.
 */
gullet_status gullet_fit_taylor(const double *cutting_speeds_m_per_s,
                                const double *feeds_m,
                                const double *depths_m,
                                const double *tool_lives_s,
                                size_t count,
                                const struct gullet_fit_options *fit_options,
                                struct gullet_taylor_law *law_out,
                                struct gullet_fit_quality *quality_out,
                                double *residuals_out);

/**
 * Fits the pair k_c1.1 and m_c to `count` readings: a chip thickness and the cutting force per width
 * of chip each. As gullet_fit_taylor.
 */
gullet_status gullet_fit_kienzle(const double *chip_thicknesses_m,
                                 const double *forces_per_width_n_per_m,
                                 size_t count,
                                 const struct gullet_fit_options *fit_options,
                                 struct gullet_kienzle_law *law_out,
                                 struct gullet_fit_quality *quality_out,
                                 double *residuals_out);

/**
 * The life of an edge at a cutting speed, feed and depth of cut; 0 for a feed or depth that the law
 * has no exponent of and that is not compared with the tests. GULLET_WARNING_OUTSIDE_VALIDITY tells
 * that one of the three was not tested.
 */
gullet_status gullet_taylor_life(const struct gullet_taylor_law *law,
                                 double cutting_speed_m_per_s,
                                 double feed_m,
                                 double depth_m,
                                 double *tool_life_s_out);

/** The cutting speed that gives a life, as gullet_taylor_life. */
gullet_status gullet_taylor_speed(const struct gullet_taylor_law *law,
                                  double tool_life_s,
                                  double feed_m,
                                  double depth_m,
                                  double *cutting_speed_m_per_s_out);

/**
 * Writes a material of the tables with the pair of a law in the first place as a shop's own table,
 * text for gullet_overlay. `source` says where the readings come from. Text and size as everywhere.
 */
gullet_status gullet_kienzle_overlay(const struct gullet_kienzle_law *law,
                                     const struct gullet_library *library,
                                     const char *material_name,
                                     const char *source,
                                     char *buffer,
                                     size_t capacity,
                                     size_t *needed_out);

/**
 * Writes a law as a row of a shop's own table of tool life, text for gullet_overlay, for a material
 * of the tables and a tool material. `criterion` says when an edge counted as worn, such as
 * "VB 0.3 mm"; empty where not stated. Text and size as everywhere.
 */
gullet_status gullet_taylor_overlay(const struct gullet_taylor_law *law,
                                    const struct gullet_library *library,
                                    const char *row_id,
                                    const char *material_name,
                                    const char *tool_material,
                                    const char *criterion,
                                    const char *source,
                                    char *buffer,
                                    size_t capacity,
                                    size_t *needed_out);

/**
 * Name of an input, such as "axial_depth", as columns of tables have it before their unit; empty
 * for a number that is none. Numbers run from 1 without a gap. Static.
 */
const char *gullet_input_name(int32_t number);

/** SI unit of an input as text; empty for a pure number. Static. */
const char *gullet_input_unit(int32_t number);

/**
 * Name of a choice, such as "material"; empty for a number that is none. Numbers run from 1
 * without a gap. Static.
 */
const char *gullet_choice_name(int32_t number);

/**
 * Name of a place that a choice picks, from 0, such as "slotting"; empty behind the last one, and
 * for materials, machines and practices, whose lists are a study's own. Static.
 */
const char *gullet_choice_place_name(int32_t number, uint32_t place);

/**
 * Name of a result, such as "spindle_speed"; empty for a number that is none. Numbers run from 1
 * without a gap. Static.
 */
const char *gullet_result_name(int32_t number);

/** SI unit of a result as text; empty for a pure number. Static. */
const char *gullet_result_unit(int32_t number);

/** The number of an input by its name. */
gullet_status gullet_input_number(const char *input_name, int32_t *number_out);

/** The number of a choice by its name. */
gullet_status gullet_choice_number(const char *choice_name, int32_t *number_out);

/** The number of a result by its name. */
gullet_status gullet_result_number(const char *result_name, int32_t *number_out);

/**
 * Computes every row of a batch as gullet_study_run does, and draws what is uncertain: the settings
 * of a row stay as they were found, what follows from them is computed for every draw, and the
 * quantiles of each result are told. No bit depends on the number of threads or on how rows are
 * split into batches. What is written may overlap nothing. Nothing is written where the call fails.
 */
gullet_status gullet_study_draw(const struct gullet_study *study,
                                const struct gullet_study_batch *batch,
                                const struct gullet_draws *draws);

/**
 * An empty report, for gullet_table_study_run_with_report and
 * gullet_table_study_stream_with_report. Free it with gullet_study_report_free.
 */
gullet_status gullet_study_report_new(struct gullet_study_report **report_out);

/** Frees a report; NULL is left alone. Streams made with it keep what they need. */
void gullet_study_report_free(struct gullet_study_report *report);

/** The totals over all rows of a report. */
gullet_status gullet_study_report_summary(const struct gullet_study_report *report,
                                          struct gullet_study_summary *summary);

/** How many rows have this status: 0, or that of an error. */
gullet_status gullet_study_report_rows_of_status(const struct gullet_study_report *report,
                                                 gullet_status status,
                                                 uint64_t *rows_out);

/**
 * How many rows a limit bears on: `which` is one of GULLET_ROWS_..., `limit` one of
 * GULLET_LIMIT_...
 */
gullet_status gullet_study_report_rows_of_limit(const struct gullet_study_report *report,
                                                int32_t which,
                                                int32_t limit,
                                                uint64_t *rows_out);

/** How many cells that mean nothing the report tells of: the first hundred. */
gullet_status gullet_study_report_problem_count(const struct gullet_study_report *report,
                                                size_t *count_out);

/**
 * A cell that means nothing, from 0: the number of its row over all tables of the report, and what is
 * wrong with it, whose parameter is the name of the column. The texts stay valid until the report is
 * freed.
 */
gullet_status gullet_study_report_problem(const struct gullet_study_report *report,
                                          size_t index,
                                          uint64_t *row_out,
                                          struct gullet_problem *problem);

/**
 * Prepares a study for tables of the columns of `schema`, which stays the caller's.
 *
 * A column is named as an input with its unit behind (axial_depth_mm, cutter_diameter_in,
 * spindle_speed_rpm, cutter_teeth), or as a choice (material, machine, practice, operation, pass,
 * direction, cutter_material, cutter_form as text, dictionary-encoded or not; feed_across_jaws as
 * booleans or text). Numbers are float64, float32 or integers; a float32 is widened as it is.
 * cost_per_hour adds a column with the cost. Other columns are passed through; a name that is
 * nearly that of an input is refused. `constants` gives what no column does: "material=6061;
 * axial_depth=6 mm". `options`: "units=metric" or inch; "columns=usual", all, or names with commas;
 * "text_numbers=refused", kept or replaced; "pass_through=" names with commas;
 * "spread.cutting_force=0.9..1.15" draws that quantity, spread evenly between two factors
 * (0.9..1..1.2 likeliest in the middle, sigma 0.1 log-normal), with "draws=1000", "seed=1",
 * "quantiles=0.05,0.5,0.95" and "first_row=0" as in gullet_draws. Either may be NULL.
 * What neither gives is as in `job`; without a job some inputs have the defaults of job files, see
 * gullet_table_study_assumptions. Rows are milling cuts; with "operation=drilling" among the
 * constants, or another operation of its own, the columns are the inputs of that operation
 * (diameter_mm, depth_in, hole), and a column operation is refused: such a table is split. `library`
 * NULL stands for the tables of the job, or the built-in
 * ones. Every problem of the columns, constants and options is told at once. Free it with
 * gullet_table_study_free.
 */
gullet_status gullet_table_study_new(const struct gullet_library *library,
                                     const struct gullet_job *job,
                                     const struct ArrowSchema *schema,
                                     const char *constants,
                                     size_t constants_length,
                                     const char *options,
                                     size_t options_length,
                                     struct gullet_table_study **study_out);

/** Frees a study of tables; NULL is left alone. Streams made with it keep what they need. */
void gullet_table_study_free(struct gullet_table_study *study);

/**
 * What was assumed where no column, constant or job gives it, a line each. See "Text out" for the
 * buffer.
 */
gullet_status gullet_table_study_assumptions(const struct gullet_table_study *study,
                                             char *buffer,
                                             size_t capacity,
                                             size_t *needed_out);

/**
 * The schema of the results: the columns of the rows, then the results with their units in name and
 * metadata, then status, binding_limit, held_by and warnings as dictionaries of text. The caller
 * calls its release.
 */
gullet_status gullet_table_study_schema(const struct gullet_table_study *study,
                                        struct ArrowSchema *schema_out);

/**
 * Computes the rows of one struct array. The array is taken over once every pointer is found good:
 * its release is then NULL, and called by the library, where the call fails too. Columns that are
 * passed through are not copied, so the rows are released with the results. A null in an input that
 * the row needs gives the row the status "missing"; in another one it means none. Rows that are
 * refused have their status and nulls for results; the call then returns
 * GULLET_WARNING_ROWS_REFUSED. Text that is not UTF-8 and whatever else contradicts the schema is
 * refused with GULLET_ERROR_ARROW_DATA. `threads` as in gullet_study_batch. The caller calls the
 * release of the results.
 */
gullet_status gullet_table_study_run(const struct gullet_table_study *study,
                                     struct ArrowArray *rows,
                                     uint32_t threads,
                                     struct ArrowArray *results_out);

/**
 * As gullet_table_study_run, and adds the rows to a report, unless NULL. They are numbered on from the
 * rows that the report has, which what is drawn depends on.
 */
gullet_status gullet_table_study_run_with_report(const struct gullet_table_study *study,
                                                 struct ArrowArray *rows,
                                                 uint32_t threads,
                                                 const struct gullet_study_report *report,
                                                 struct ArrowArray *results_out);

/**
 * Computes the batches of a stream as they are asked for: a stream again, of the schema of
 * gullet_table_study_schema. `rows` is taken over once every pointer is found good: its release is
 * then NULL, and called by the library, where the call fails too. One batch is at hand at a time. A
 * batch that contradicts the schema ends the results with an error, which get_last_error tells. The
 * caller calls the release of the results; the study may be freed before.
 */
gullet_status gullet_table_study_stream(const struct gullet_table_study *study,
                                        struct ArrowArrayStream *rows,
                                        uint32_t threads,
                                        struct ArrowArrayStream *results_out);

/**
 * As gullet_table_study_stream, and adds each batch to a report, unless NULL, as it is computed. Rows
 * are numbered on from the rows that the report has then. The report may be freed before the results.
 */
gullet_status gullet_table_study_stream_with_report(const struct gullet_table_study *study,
                                                    struct ArrowArrayStream *rows,
                                                    uint32_t threads,
                                                    const struct gullet_study_report *report,
                                                    struct ArrowArrayStream *results_out);

/**
 * Spindle speed that gives a cutting speed at a diameter.
 *
 *     n = v_c/(pi D)
 *
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
 * diameter_m: D, diameter that cuts: the effective diameter of a ball or bull nose [m]; diameter >
 *     0.
 * spindle_speed_rev_per_s_out: n [rev/s].
 * Valid for: any process with a rotating tool or workpiece; n in revolutions per second.
 * Source: definition; symbols of ISO 3002-1 and -3, from memory.
 * Example: cutting_speed=300 ft/min; diameter=0.375 in => 3056 rpm (Bingham, Milling Procedures
 *     (teaching web page), seen).
 */
gullet_status gullet_spindle_speed(double cutting_speed_m_per_s,
                                   double diameter_m,
                                   double *spindle_speed_rev_per_s_out);

/** gullet_spindle_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_spindle_speed_array(size_t count,
                                         const double *cutting_speed_m_per_s,
                                         const double *diameter_m,
                                         double *spindle_speed_rev_per_s_out,
                                         gullet_status *status_out);

/**
 * Cutting speed at a diameter that turns at a spindle speed.
 *
 *     v_c = pi D n
 *
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * diameter_m: D, diameter that cuts: the effective diameter of a ball or bull nose [m]; diameter >
 *     0.
 * cutting_speed_m_per_s_out: v_c [m/s].
 * Valid for: any process with a rotating tool or workpiece; n in revolutions per second.
 * Source: definition; symbols of ISO 3002-1 and -3, from memory.
 * Example: spindle_speed=150 rpm; diameter=30 mm => 14.13 m/min (El-Hofy, Fundamentals of Machining
 *     Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen).
 */
gullet_status gullet_cutting_speed(double spindle_speed_rev_per_s,
                                   double diameter_m,
                                   double *cutting_speed_m_per_s_out);

/** gullet_cutting_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_speed_array(size_t count,
                                         const double *spindle_speed_rev_per_s,
                                         const double *diameter_m,
                                         double *cutting_speed_m_per_s_out,
                                         gullet_status *status_out);

/**
 * Spindle speed by the shop rule K times cutting speed in ft/min over diameter in inches.
 *
 *     n = K v_c/(12 D)
 *
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
 * diameter_m: D, diameter that cuts [m]; diameter > 0.
 * constant: K, constant of the rule: 4 or 3.82 [-]; constant > 0.
 * rule_of_thumb_speed_rev_per_s_out: n [rev/s].
 * Valid for: a shop rule for mental arithmetic, not the exact speed: the exact constant is 12/pi =
 *     3.8197, so K = 4 reads 4.72 % high (factor pi/3) and K = 3.82 reads 0.0074 % high; the 12
 *     turns feet into inches, so that K stands for rpm, ft/min and in.
 * Source: shop rule on student-shop sheets and in a chapter of the Society of Manufacturing
 *     Engineers, both seen; error derived.
 * Example: cutting_speed=300 ft/min; diameter=0.5 in => 2400 rpm (identity: 4 x 300/0.5).
 */
gullet_status gullet_rule_of_thumb_speed(double cutting_speed_m_per_s,
                                         double diameter_m,
                                         double constant,
                                         double *rule_of_thumb_speed_rev_per_s_out);

/** gullet_rule_of_thumb_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_rule_of_thumb_speed_array(size_t count,
                                               const double *cutting_speed_m_per_s,
                                               const double *diameter_m,
                                               const double *constant,
                                               double *rule_of_thumb_speed_rev_per_s_out,
                                               gullet_status *status_out);

/**
 * Feed per revolution of a cutter with several teeth.
 *
 *     f = f_z z
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * feed_per_rev_m_out: f [m].
 * Valid for: z counts the teeth that share one cut: half of them for one flank of a staggered side
 *     cutter, one where run-out exceeds the feed per tooth.
 * Source: definition; symbols of ISO 3002-3, from memory.
 * Example: feed_per_tooth=0.05 mm; teeth=4 => 0.2 mm (identity).
 */
gullet_status gullet_feed_per_rev(double feed_per_tooth_m,
                                  double teeth,
                                  double *feed_per_rev_m_out);

/** gullet_feed_per_rev over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_per_rev_array(size_t count,
                                        const double *feed_per_tooth_m,
                                        const double *teeth,
                                        double *feed_per_rev_m_out,
                                        gullet_status *status_out);

/**
 * Table feed of a milling cutter.
 *
 *     v_f = f_z z n
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * table_feed_m_per_s_out: v_f [m/s].
 * Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
 * Source: definition; symbols of ISO 3002-3, from memory.
 * Example: feed_per_tooth=0.001 in; teeth=2; spindle_speed=3056 rpm => 6.1 in/min (Bingham, Milling
 *     Procedures (teaching web page), seen).
 */
gullet_status gullet_table_feed(double feed_per_tooth_m,
                                double teeth,
                                double spindle_speed_rev_per_s,
                                double *table_feed_m_per_s_out);

/** gullet_table_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_table_feed_array(size_t count,
                                      const double *feed_per_tooth_m,
                                      const double *teeth,
                                      const double *spindle_speed_rev_per_s,
                                      double *table_feed_m_per_s_out,
                                      gullet_status *status_out);

/**
 * Feed per tooth that a table feed amounts to.
 *
 *     f_z = v_f/(z n)
 *
 * table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
 * feed_per_tooth_m_out: f_z [m].
 * Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
 * Source: definition; symbols of ISO 3002-3, from memory.
 * Example: table_feed=600 mm/min; teeth=10; spindle_speed=100 rpm => 0.6 mm (Kalpakjian & Schmid,
 *     Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open textbook-companion file), seen).
 */
gullet_status gullet_feed_per_tooth(double table_feed_m_per_s,
                                    double teeth,
                                    double spindle_speed_rev_per_s,
                                    double *feed_per_tooth_m_out);

/** gullet_feed_per_tooth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_per_tooth_array(size_t count,
                                          const double *table_feed_m_per_s,
                                          const double *teeth,
                                          const double *spindle_speed_rev_per_s,
                                          double *feed_per_tooth_m_out,
                                          gullet_status *status_out);

/**
 * Spindle speed at which a table feed gives a feed per tooth.
 *
 *     n = v_f/(f_z z)
 *
 * table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth > 0.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * spindle_speed_for_feed_rev_per_s_out: n [rev/s].
 * Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
 * Source: definition; symbols of ISO 3002-3, from memory.
 * Example: table_feed=120 mm/min; feed_per_tooth=0.1 mm; teeth=8 => 150 rpm (El-Hofy, Fundamentals
 *     of Machining Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen).
 */
gullet_status gullet_spindle_speed_for_feed(double table_feed_m_per_s,
                                            double feed_per_tooth_m,
                                            double teeth,
                                            double *spindle_speed_for_feed_rev_per_s_out);

/** gullet_spindle_speed_for_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_spindle_speed_for_feed_array(size_t count,
                                                  const double *table_feed_m_per_s,
                                                  const double *feed_per_tooth_m,
                                                  const double *teeth,
                                                  double *spindle_speed_for_feed_rev_per_s_out,
                                                  gullet_status *status_out);

/**
 * Feed rate that a feed per revolution gives.
 *
 *     v_f = f n
 *
 * feed_per_rev_m: f, feed per revolution; the lead in tapping [m]; feed_per_rev >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * feed_rate_m_per_s_out: v_f [m/s].
 * Valid for: turning, boring, drilling, reaming; tapping with f = lead; n in revolutions per
 *     second.
 * Source: definition; symbols of ISO 3002-3, from memory.
 * Example: feed_per_rev=0.24 mm; spindle_speed=176 rpm => 42.24 mm/min (own arithmetic on the
 *     inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.130).
 */
gullet_status gullet_feed_rate(double feed_per_rev_m,
                               double spindle_speed_rev_per_s,
                               double *feed_rate_m_per_s_out);

/** gullet_feed_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_rate_array(size_t count,
                                     const double *feed_per_rev_m,
                                     const double *spindle_speed_rev_per_s,
                                     double *feed_rate_m_per_s_out,
                                     gullet_status *status_out);

/**
 * Spindle speed of a belt step.
 *
 *     n = n_m d_1/d_2
 *
 * motor_speed_rev_per_s: n_m, speed of the driving pulley [rev/s]; motor_speed >= 0.
 * driver_diameter_m: d_1, diameter of the driving pulley [m]; driver_diameter > 0.
 * driven_diameter_m: d_2, diameter of the driven pulley [m]; driven_diameter > 0.
 * pulley_speed_rev_per_s_out: n [rev/s].
 * Valid for: one belt without slip; n in revolutions per second.
 * Source: derived: both pulleys run at the belt's speed.
 * Example: motor_speed=1200 rpm; driver_diameter=6 in; driven_diameter=1.5 in => 4800 rpm (public
 *     training pages on milling machines, milling machine 6, seen).
 */
gullet_status gullet_pulley_speed(double motor_speed_rev_per_s,
                                  double driver_diameter_m,
                                  double driven_diameter_m,
                                  double *pulley_speed_rev_per_s_out);

/** gullet_pulley_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_pulley_speed_array(size_t count,
                                        const double *motor_speed_rev_per_s,
                                        const double *driver_diameter_m,
                                        const double *driven_diameter_m,
                                        double *pulley_speed_rev_per_s_out,
                                        gullet_status *status_out);

/**
 * Ratio of neighbouring speeds in a geometric series of spindle speeds.
 *
 *     q = (n_max/n_min)^(1/(k - 1))
 *
 * lowest_rev_per_s: n_min, lowest speed [rev/s]; 0 < lowest <= highest.
 * highest_rev_per_s: n_max, highest speed [rev/s]; highest > 0.
 * steps: k, number of speeds [-]; steps >= 2.
 * geometric_step_ratio_out: q [-].
 * Valid for: series designed after ISO 3 preferred numbers and the like.
 * Source: definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex.
 *     22.2 p.778, seen in a companion.
 * Example: lowest=72 rpm; highest=720 rpm; steps=11 => 1.2589 (public solution: 11 spindle speeds
 *     from 72 to 720 rpm in geometric progression, seen).
 */
gullet_status gullet_geometric_step_ratio(double lowest_rev_per_s,
                                          double highest_rev_per_s,
                                          double steps,
                                          double *geometric_step_ratio_out);

/** gullet_geometric_step_ratio over arrays of `count` rows; see "Arrays". */
gullet_status gullet_geometric_step_ratio_array(size_t count,
                                                const double *lowest_rev_per_s,
                                                const double *highest_rev_per_s,
                                                const double *steps,
                                                double *geometric_step_ratio_out,
                                                gullet_status *status_out);

/**
 * One speed of a geometric series of spindle speeds.
 *
 *     n_i = n_min (n_max/n_min)^((i - 1)/(k - 1))
 *
 * lowest_rev_per_s: n_min, lowest speed [rev/s]; 0 < lowest <= highest.
 * highest_rev_per_s: n_max, highest speed [rev/s]; highest > 0.
 * steps: k, number of speeds [-]; steps >= 2.
 * index: i, place in the series, 1 for the lowest speed [-]; 1 <= index <= steps.
 * geometric_step_speed_rev_per_s_out: n_i [rev/s].
 * Valid for: series designed after ISO 3 preferred numbers and the like; the speeds on a machine's
 *     plate are rounded.
 * Source: definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex.
 *     22.2 p.778, seen in a companion.
 * Example: lowest=72 rpm; highest=720 rpm; steps=11; index=5 => 180.85 rpm (public solution: 11
 *     spindle speeds from 72 to 720 rpm in geometric progression, seen).
 */
gullet_status gullet_geometric_step_speed(double lowest_rev_per_s,
                                          double highest_rev_per_s,
                                          double steps,
                                          double index,
                                          double *geometric_step_speed_rev_per_s_out);

/** gullet_geometric_step_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_geometric_step_speed_array(size_t count,
                                                const double *lowest_rev_per_s,
                                                const double *highest_rev_per_s,
                                                const double *steps,
                                                const double *index,
                                                double *geometric_step_speed_rev_per_s_out,
                                                gullet_status *status_out);

/**
 * Turns of a handwheel for a travel.
 *
 *     N = s/L
 *
 * travel_m: s, travel; its sign is kept [m]; travel: any finite value.
 * travel_per_turn_m: L, travel per turn of the handwheel [m]; travel_per_turn > 0.
 * handwheel_turns_out: N [turns].
 * Valid for: screw without backlash: approach from the same side each time.
 * Source: definition.
 * Example: travel=1.375 in; travel_per_turn=0.200 in => 6.875 turns (identity).
 */
gullet_status gullet_handwheel_turns(double travel_m,
                                     double travel_per_turn_m,
                                     double *handwheel_turns_out);

/** gullet_handwheel_turns over arrays of `count` rows; see "Arrays". */
gullet_status gullet_handwheel_turns_array(size_t count,
                                           const double *travel_m,
                                           const double *travel_per_turn_m,
                                           double *handwheel_turns_out,
                                           gullet_status *status_out);

/**
 * Speed at which a handwheel is turned for a table feed.
 *
 *     n_h = v_f/L
 *
 * table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
 * travel_per_turn_m: L, travel per turn of the handwheel [m]; travel_per_turn > 0.
 * handwheel_rate_rev_per_s_out: n_h [rev/s].
 * Valid for: a hand turns unevenly: the feed is a target; n_h in revolutions per second.
 * Source: definition.
 * Example: table_feed=10 in/min; travel_per_turn=0.200 in => 50 rpm (identity: 10/0.2 turns a
 *     minute).
 */
gullet_status gullet_handwheel_rate(double table_feed_m_per_s,
                                    double travel_per_turn_m,
                                    double *handwheel_rate_rev_per_s_out);

/** gullet_handwheel_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_handwheel_rate_array(size_t count,
                                          const double *table_feed_m_per_s,
                                          const double *travel_per_turn_m,
                                          double *handwheel_rate_rev_per_s_out,
                                          gullet_status *status_out);

/**
 * Diameter of the circle that cuts at the top of the engaged edge of a ball nose cutter.
 *
 *     D_eff = D sin(min(beta + theta, 90 deg)); theta = acos(1 - 2 min(a_p/D, 1))
 *
 * diameter_m: D, diameter of the ball [m]; diameter > 0.
 * axial_depth_m: a_p, depth of cut along the surface normal [m]; axial_depth >= 0.
 * tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
 *     tilt_angle <= 90 deg.
 * ball_effective_diameter_m_out: D_eff [m].
 * Valid for: the full diameter once a_p reaches D/2 or the angle reaches 90 deg; at beta = 0 the
 *     tool axis is the normal, the value is 2 sqrt(a_p (D - a_p)), and the centre stands still and
 *     rubs.
 * Source: derived: circle of latitude on a sphere; formula without tilt seen in public teaching
 *     material, with tilt from memory, both checked by geometry.
 * Example: diameter=10 mm; axial_depth=0.2 mm; tilt_angle=15 deg => 5.18925515 mm (identity).
 */
gullet_status gullet_ball_effective_diameter(double diameter_m,
                                             double axial_depth_m,
                                             double tilt_angle_rad,
                                             double *ball_effective_diameter_m_out);

/** gullet_ball_effective_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_ball_effective_diameter_array(size_t count,
                                                   const double *diameter_m,
                                                   const double *axial_depth_m,
                                                   const double *tilt_angle_rad,
                                                   double *ball_effective_diameter_m_out,
                                                   gullet_status *status_out);

/**
 * Diameter of the circle that cuts at the top of the engaged edge of a cutter with a corner radius.
 *
 *     D_eff = D - 2 r + 2 sqrt(a (2 r - a)); a = min(a_p, r)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 <= corner_radius <= diameter/2.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * corner_radius_effective_diameter_m_out: D_eff [m].
 * Valid for: tool axis along the surface normal; the full diameter once a_p reaches the corner
 *     radius.
 * Source: derived: circle on a torus; a ball nose at r = D/2, a round insert at IC = 2 r.
 * Example: diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm => 10.6457513 mm (identity).
 */
gullet_status gullet_corner_radius_effective_diameter(double diameter_m,
                                                      double corner_radius_m,
                                                      double axial_depth_m,
                                                      double *corner_radius_effective_diameter_m_out);

/** gullet_corner_radius_effective_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_corner_radius_effective_diameter_array(size_t count,
                                                            const double *diameter_m,
                                                            const double *corner_radius_m,
                                                            const double *axial_depth_m,
                                                            double *corner_radius_effective_diameter_m_out,
                                                            gullet_status *status_out);

/**
 * Largest diameter that cuts on a face mill whose edges lean outward.
 *
 *     D_max = D_c + 2 a_p/tan(kappa_r)
 *
 * tip_diameter_m: D_c, diameter at the bottom of the edge [m]; tip_diameter >= 0.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * face_mill_outer_diameter_m_out: D_max [m].
 * Valid for: depth within the height of the edge; a tip diameter of 0 is a pointed chamfer tool.
 * Source: derived: right triangle.
 * Example: tip_diameter=50 mm; axial_depth=4 mm; cutting_edge_angle=45 deg => 58 mm (identity).
 */
gullet_status gullet_face_mill_outer_diameter(double tip_diameter_m,
                                              double axial_depth_m,
                                              double cutting_edge_angle_rad,
                                              double *face_mill_outer_diameter_m_out);

/** gullet_face_mill_outer_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_mill_outer_diameter_array(size_t count,
                                                    const double *tip_diameter_m,
                                                    const double *axial_depth_m,
                                                    const double *cutting_edge_angle_rad,
                                                    double *face_mill_outer_diameter_m_out,
                                                    gullet_status *status_out);

/**
 * Mean diameter of a turning or boring cut.
 *
 *     D_m = D - a_p
 *
 * outer_diameter_m: D, larger diameter of the cut: the stock in turning, the finished bore in
 *     boring [m]; outer_diameter > 0.
 * depth_of_cut_m: a_p, depth of cut, on the radius [m]; 0 <= depth_of_cut <= outer_diameter/2.
 * turning_mean_diameter_m_out: D_m [m].
 * Valid for: half-way between the diameters before and after the cut.
 * Source: derived: (D + (D - 2 a_p))/2.
 * Example: outer_diameter=50 mm; depth_of_cut=2.5 mm => 47.5 mm (identity: half-way between 50 and
 *     45).
 */
gullet_status gullet_turning_mean_diameter(double outer_diameter_m,
                                           double depth_of_cut_m,
                                           double *turning_mean_diameter_m_out);

/** gullet_turning_mean_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_mean_diameter_array(size_t count,
                                                 const double *outer_diameter_m,
                                                 const double *depth_of_cut_m,
                                                 double *turning_mean_diameter_m_out,
                                                 gullet_status *status_out);

/**
 * Angle over which a tooth cuts in a side cut or slot.
 *
 *     phi_s = acos(1 - 2 a_e/D)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * engagement_angle_rad_out: phi_s [rad].
 * Valid for: side cut, up or down; slot at a_e = D (180 deg); circular tooth path.
 * Source: geometry of the circular tooth path, derived; evaluated by the half angle, which loses no
 *     digits in thin cuts or near a slot.
 * Example: diameter=12.7 mm; radial_depth=1.27 mm => 36.8698976 deg (identity: 3-4-5 triangle).
 */
gullet_status gullet_engagement_angle(double diameter_m,
                                      double radial_depth_m,
                                      double *engagement_angle_rad_out);

/** gullet_engagement_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_engagement_angle_array(size_t count,
                                            const double *diameter_m,
                                            const double *radial_depth_m,
                                            double *engagement_angle_rad_out,
                                            gullet_status *status_out);

/**
 * Immersion at which a tooth leaves the work in up (conventional) milling.
 *
 *     phi_ex = acos(1 - 2 a_e/D)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * up_milling_exit_angle_rad_out: phi_ex [rad].
 * Valid for: side cut that enters at phi_st = 0; phi from the normal to the feed in the sense of
 *     rotation.
 * Source: geometry of the circular tooth path, derived.
 * Example: diameter=20 mm; radial_depth=5 mm => 60 deg (identity: acos(1/2)).
 */
gullet_status gullet_up_milling_exit_angle(double diameter_m,
                                           double radial_depth_m,
                                           double *up_milling_exit_angle_rad_out);

/** gullet_up_milling_exit_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_up_milling_exit_angle_array(size_t count,
                                                 const double *diameter_m,
                                                 const double *radial_depth_m,
                                                 double *up_milling_exit_angle_rad_out,
                                                 gullet_status *status_out);

/**
 * Immersion at which a tooth enters the work in down (climb) milling.
 *
 *     phi_st = pi - acos(1 - 2 a_e/D)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * down_milling_entry_angle_rad_out: phi_st [rad].
 * Valid for: side cut that leaves at phi_ex = 180 deg; phi from the normal to the feed in the sense
 *     of rotation.
 * Source: geometry of the circular tooth path, derived.
 * Example: diameter=20 mm; radial_depth=5 mm => 120 deg (identity: 180 - acos(1/2)).
 */
gullet_status gullet_down_milling_entry_angle(double diameter_m,
                                              double radial_depth_m,
                                              double *down_milling_entry_angle_rad_out);

/** gullet_down_milling_entry_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_down_milling_entry_angle_array(size_t count,
                                                    const double *diameter_m,
                                                    const double *radial_depth_m,
                                                    double *down_milling_entry_angle_rad_out,
                                                    gullet_status *status_out);

/**
 * Immersion at which a tooth of a face mill enters the work.
 *
 *     phi_st = acos(2 y/D); y = min(y_high, D/2)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
 *     edge_high > -diameter/2.
 * face_entry_angle_rad_out: phi_st [rad].
 * Valid for: an edge at or beyond D/2 gives 0; positive on the side where teeth enter (left of the
 *     cutter's travel relative to the work, right-hand cutter seen from the spindle).
 * Source: geometry of the circular tooth path, derived.
 * Example: diameter=100 mm; edge_high=25 mm => 60 deg (identity: acos(1/2)).
 */
gullet_status gullet_face_entry_angle(double diameter_m,
                                      double edge_high_m,
                                      double *face_entry_angle_rad_out);

/** gullet_face_entry_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_entry_angle_array(size_t count,
                                            const double *diameter_m,
                                            const double *edge_high_m,
                                            double *face_entry_angle_rad_out,
                                            gullet_status *status_out);

/**
 * Immersion at which a tooth of a face mill leaves the work.
 *
 *     phi_ex = acos(2 y/D); y = max(y_low, -D/2)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
 *     edge_low < diameter/2.
 * face_exit_angle_rad_out: phi_ex [rad].
 * Valid for: an edge at or beyond -D/2 gives 180 deg; positive on the side where teeth enter (left
 *     of the cutter's travel relative to the work, right-hand cutter seen from the spindle).
 * Source: geometry of the circular tooth path, derived.
 * Example: diameter=100 mm; edge_low=-25 mm => 120 deg (identity: acos(-1/2)).
 */
gullet_status gullet_face_exit_angle(double diameter_m,
                                     double edge_low_m,
                                     double *face_exit_angle_rad_out);

/** gullet_face_exit_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_exit_angle_array(size_t count,
                                           const double *diameter_m,
                                           const double *edge_low_m,
                                           double *face_exit_angle_rad_out,
                                           gullet_status *status_out);

/**
 * Angle over which a tooth of a face mill cuts.
 *
 *     phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 = max(y_low, -D/2); y_2 = min(y_high, D/2)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
 *     edge_low < edge_high.
 * edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
 *     edge_high > -diameter/2.
 * edge_low < diameter/2.
 * face_engagement_angle_rad_out: phi_s [rad].
 * Valid for: one work piece without gaps; edges beyond the cutter count as at its rim; positive on
 *     the side where teeth enter (left of the cutter's travel relative to the work, right-hand
 *     cutter seen from the spindle).
 * Source: geometry of the circular tooth path, derived; centred it is 2 asin(a_e/D).
 * Example: diameter=100 mm; edge_low=-20 mm; edge_high=20 mm => 47.1563569564 deg (identity,
 *     centred: 2 asin(0.4)).
 */
gullet_status gullet_face_engagement_angle(double diameter_m,
                                           double edge_low_m,
                                           double edge_high_m,
                                           double *face_engagement_angle_rad_out);

/** gullet_face_engagement_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_engagement_angle_array(size_t count,
                                                 const double *diameter_m,
                                                 const double *edge_low_m,
                                                 const double *edge_high_m,
                                                 double *face_engagement_angle_rad_out,
                                                 gullet_status *status_out);

/**
 * Mean number of teeth in the arc of a cut.
 *
 *     z_m = z phi_s/(2 pi)
 *
 * teeth: z, effective teeth [-]; teeth >= 1.
 * engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg <= engagement_angle <=
 *     360 deg.
 * mean_teeth_in_cut_out: z_m [-].
 * Valid for: straight flutes or one height along a helix, equal pitch; phi_s in radians.
 * Source: derived: share of the revolution times the teeth.
 * Example: teeth=4; engagement_angle=90 deg => 1 (identity).
 */
gullet_status gullet_mean_teeth_in_cut(double teeth,
                                       double engagement_angle_rad,
                                       double *mean_teeth_in_cut_out);

/** gullet_mean_teeth_in_cut over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_teeth_in_cut_array(size_t count,
                                             const double *teeth,
                                             const double *engagement_angle_rad,
                                             double *mean_teeth_in_cut_out,
                                             gullet_status *status_out);

/**
 * Mean number of teeth that touch the work with any part of their edge.
 *
 *     z_m = min(z, z (phi_s + 2 a_p tan(beta)/D)/(2 pi))
 *
 * teeth: z, effective teeth [-]; teeth >= 1.
 * engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg <= engagement_angle <=
 *     360 deg.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
 * mean_teeth_touching_out: z_m [-].
 * Valid for: cylindrical helix, equal pitch; angles in radians; a smoothness figure, not a load
 *     factor: most of the edges touch with a part of their length only.
 * Source: derived: arc plus the lag of the helix.
 * Example: teeth=4; engagement_angle=90 deg; diameter=20 mm; axial_depth=20 mm; helix_angle=30 deg
 *     => 1.73510519 (identity).
 */
gullet_status gullet_mean_teeth_touching(double teeth,
                                         double engagement_angle_rad,
                                         double diameter_m,
                                         double axial_depth_m,
                                         double helix_angle_rad,
                                         double *mean_teeth_touching_out);

/** gullet_mean_teeth_touching over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_teeth_touching_array(size_t count,
                                               const double *teeth,
                                               const double *engagement_angle_rad,
                                               const double *diameter_m,
                                               const double *axial_depth_m,
                                               const double *helix_angle_rad,
                                               double *mean_teeth_touching_out,
                                               gullet_status *status_out);

/**
 * Largest undeformed chip thickness of a side cut or slot.
 *
 *     h_max = f_z sin(kappa_r) s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >=
 *         D/2
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * max_chip_thickness_m_out: h_max [m].
 * Valid for: circular tooth path, f_z much smaller than D; side cut or slot.
 * Source: geometry of the circular tooth path, derived; ISO 3002 symbols from memory.
 * Example: feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg
 *     => 0.06 mm (identity: 3-4-5 triangle).
 */
gullet_status gullet_max_chip_thickness(double feed_per_tooth_m,
                                        double diameter_m,
                                        double radial_depth_m,
                                        double cutting_edge_angle_rad,
                                        double *max_chip_thickness_m_out);

/** gullet_max_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_max_chip_thickness_array(size_t count,
                                              const double *feed_per_tooth_m,
                                              const double *diameter_m,
                                              const double *radial_depth_m,
                                              const double *cutting_edge_angle_rad,
                                              double *max_chip_thickness_m_out,
                                              gullet_status *status_out);

/**
 * Mean undeformed chip thickness over the arc of a side cut or slot.
 *
 *     h_m = 2 f_z sin(kappa_r) a_e/(D phi_s); phi_s = acos(1 - 2 a_e/D)
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * mean_chip_thickness_m_out: h_m [m].
 * Valid for: circular tooth path, f_z much smaller than D; the exact mean of f_z sin(kappa_r)
 *     sin(phi) over the arc; phi_s in radians; the shortcut f_z sqrt(a_e/D) reads 1.7 % high at
 *     a_e/D = 0.1 and 57 % high in a slot.
 * Source: derived: integral of the sine over the arc.
 * Example: feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg
 *     => 0.0310799775 mm (identity).
 */
gullet_status gullet_mean_chip_thickness(double feed_per_tooth_m,
                                         double diameter_m,
                                         double radial_depth_m,
                                         double cutting_edge_angle_rad,
                                         double *mean_chip_thickness_m_out);

/** gullet_mean_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_chip_thickness_array(size_t count,
                                               const double *feed_per_tooth_m,
                                               const double *diameter_m,
                                               const double *radial_depth_m,
                                               const double *cutting_edge_angle_rad,
                                               double *mean_chip_thickness_m_out,
                                               gullet_status *status_out);

/**
 * Mean undeformed chip thickness over the arc of a face mill.
 *
 *     h_m = 2 f_z sin(kappa_r) (y_2 - y_1)/(D phi_s); phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 =
 *         max(y_low, -D/2); y_2 = min(y_high, D/2)
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
 *     edge_low < edge_high.
 * edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
 *     edge_high > -diameter/2.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * edge_low < diameter/2.
 * face_mean_chip_thickness_m_out: h_m [m].
 * Valid for: circular tooth path, f_z much smaller than D; edges beyond the cutter count as at its
 *     rim; phi_s in radians; positive on the side where teeth enter (left of the cutter's travel
 *     relative to the work, right-hand cutter seen from the spindle).
 * Source: derived: integral of the sine over the arc, f_z sin(kappa_r) (cos phi_st - cos
 *     phi_ex)/phi_s.
 * Example: feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm;
 *     cutting_edge_angle=45 deg => 0.137463492 mm (identity).
 */
gullet_status gullet_face_mean_chip_thickness(double feed_per_tooth_m,
                                              double diameter_m,
                                              double edge_low_m,
                                              double edge_high_m,
                                              double cutting_edge_angle_rad,
                                              double *face_mean_chip_thickness_m_out);

/** gullet_face_mean_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_mean_chip_thickness_array(size_t count,
                                                    const double *feed_per_tooth_m,
                                                    const double *diameter_m,
                                                    const double *edge_low_m,
                                                    const double *edge_high_m,
                                                    const double *cutting_edge_angle_rad,
                                                    double *face_mean_chip_thickness_m_out,
                                                    gullet_status *status_out);

/**
 * Largest undeformed chip thickness over the arc of a face mill.
 *
 *     h_max = f_z sin(kappa_r) m; m = sqrt(1 - (2 y/D)^2); y = max(y_low, -y_high, 0 mm)
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
 *     edge_low < edge_high.
 * edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
 *     edge_high > -diameter/2.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * edge_low < diameter/2.
 * face_max_chip_thickness_m_out: h_max [m].
 * Valid for: circular tooth path, f_z much smaller than D; y is the distance of the work from the
 *     cutter axis, so m = 1 where the axis runs over the work; positive on the side where teeth
 *     enter (left of the cutter's travel relative to the work, right-hand cutter seen from the
 *     spindle).
 * Source: derived: largest sine over the arc.
 * Example: feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm;
 *     cutting_edge_angle=45 deg => 0.141421356 mm (identity).
 */
gullet_status gullet_face_max_chip_thickness(double feed_per_tooth_m,
                                             double diameter_m,
                                             double edge_low_m,
                                             double edge_high_m,
                                             double cutting_edge_angle_rad,
                                             double *face_max_chip_thickness_m_out);

/** gullet_face_max_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_max_chip_thickness_array(size_t count,
                                                   const double *feed_per_tooth_m,
                                                   const double *diameter_m,
                                                   const double *edge_low_m,
                                                   const double *edge_high_m,
                                                   const double *cutting_edge_angle_rad,
                                                   double *face_max_chip_thickness_m_out,
                                                   gullet_status *status_out);

/**
 * Feed per tooth over the largest chip thickness of a side cut at a cutting-edge angle of 90 deg.
 *
 *     C_r = 1/s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * radial_thinning_factor_out: C_r [-].
 * Valid for: side cut or slot, circular tooth path; never below 1: from half immersion on every
 *     tooth passes its full feed.
 * Source: derived: largest sine over the arc.
 * Example: diameter=12.7 mm; radial_depth=1.27 mm => 1.66666667 (identity: 3-4-5 triangle).
 */
gullet_status gullet_radial_thinning_factor(double diameter_m,
                                            double radial_depth_m,
                                            double *radial_thinning_factor_out);

/** gullet_radial_thinning_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_radial_thinning_factor_array(size_t count,
                                                  const double *diameter_m,
                                                  const double *radial_depth_m,
                                                  double *radial_thinning_factor_out,
                                                  gullet_status *status_out);

/**
 * Feed per tooth that gives a largest chip thickness in a side cut or slot.
 *
 *     f_z = h_max/(sin(kappa_r) s); s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >=
 *         D/2
 *
 * max_chip_thickness_m: h_max, largest chip thickness [m]; max_chip_thickness >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * feed_for_max_chip_thickness_m_out: f_z [m].
 * Valid for: circular tooth path, f_z much smaller than D; in thin cuts the strength of the tooth
 *     and its chip space bound the feed before this does.
 * Source: derived: inverse of max_chip_thickness.
 * Example: max_chip_thickness=0.2 mm; diameter=75 mm; radial_depth=5 mm => 0.400891862869 mm (own
 *     arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4).
 */
gullet_status gullet_feed_for_max_chip_thickness(double max_chip_thickness_m,
                                                 double diameter_m,
                                                 double radial_depth_m,
                                                 double cutting_edge_angle_rad,
                                                 double *feed_for_max_chip_thickness_m_out);

/** gullet_feed_for_max_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_max_chip_thickness_array(size_t count,
                                                       const double *max_chip_thickness_m,
                                                       const double *diameter_m,
                                                       const double *radial_depth_m,
                                                       const double *cutting_edge_angle_rad,
                                                       double *feed_for_max_chip_thickness_m_out,
                                                       gullet_status *status_out);

/**
 * Largest chip thickness along a round edge: round insert, ball or corner radius.
 *
 *     h_max = f_z m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
 *     insert_diameter > 0.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth > 0.
 * round_edge_max_chip_thickness_m_out: h_max [m].
 * Valid for: arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis;
 *     f_z much smaller than IC.
 * Source: derived: slope of the circle at the depth of cut.
 * Example: feed_per_tooth=0.2 mm; insert_diameter=10 mm; axial_depth=1 mm => 0.12 mm (identity:
 *     3-4-5 triangle, sine 0.6).
 */
gullet_status gullet_round_edge_max_chip_thickness(double feed_per_tooth_m,
                                                   double insert_diameter_m,
                                                   double axial_depth_m,
                                                   double *round_edge_max_chip_thickness_m_out);

/** gullet_round_edge_max_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_round_edge_max_chip_thickness_array(size_t count,
                                                         const double *feed_per_tooth_m,
                                                         const double *insert_diameter_m,
                                                         const double *axial_depth_m,
                                                         double *round_edge_max_chip_thickness_m_out,
                                                         gullet_status *status_out);

/**
 * Feed per tooth that gives a largest chip thickness along a round edge.
 *
 *     f_z = h_max/m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2
 *
 * max_chip_thickness_m: h_max, largest chip thickness [m]; max_chip_thickness >= 0.
 * insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
 *     insert_diameter > 0.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth > 0.
 * round_edge_feed_for_max_chip_thickness_m_out: f_z [m].
 * Valid for: arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis;
 *     f_z much smaller than IC.
 * Source: derived: inverse of round_edge_max_chip_thickness.
 * Example: max_chip_thickness=0.1 mm; insert_diameter=12 mm; axial_depth=1.5 mm => 0.151185789 mm
 *     (identity).
 */
gullet_status gullet_round_edge_feed_for_max_chip_thickness(double max_chip_thickness_m,
                                                            double insert_diameter_m,
                                                            double axial_depth_m,
                                                            double *round_edge_feed_for_max_chip_thickness_m_out);

/** gullet_round_edge_feed_for_max_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_round_edge_feed_for_max_chip_thickness_array(size_t count,
                                                                  const double *max_chip_thickness_m,
                                                                  const double *insert_diameter_m,
                                                                  const double *axial_depth_m,
                                                                  double *round_edge_feed_for_max_chip_thickness_m_out,
                                                                  gullet_status *status_out);

/**
 * Mean chip thickness along a round edge over the feed per tooth.
 *
 *     r_m = 2 a_p/(IC psi); psi = acos(1 - 2 a_p/IC)
 *
 * insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
 *     insert_diameter > 0.
 * axial_depth_m: a_p, depth of cut along the axis [m]; 0 < axial_depth <= insert_diameter/2.
 * round_edge_mean_thickness_ratio_out: r_m [-].
 * Valid for: at phi = 90 deg, f_z much smaller than IC; psi in radians.
 * Source: derived: integral of the sine along the edge.
 * Example: insert_diameter=12 mm; axial_depth=1.5 mm => 0.345908611 (identity).
 */
gullet_status gullet_round_edge_mean_thickness_ratio(double insert_diameter_m,
                                                     double axial_depth_m,
                                                     double *round_edge_mean_thickness_ratio_out);

/** gullet_round_edge_mean_thickness_ratio over arrays of `count` rows; see "Arrays". */
gullet_status gullet_round_edge_mean_thickness_ratio_array(size_t count,
                                                           const double *insert_diameter_m,
                                                           const double *axial_depth_m,
                                                           double *round_edge_mean_thickness_ratio_out,
                                                           gullet_status *status_out);

/**
 * Undeformed chip thickness in turning.
 *
 *     h = f sin(kappa_r)
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * turning_chip_thickness_m_out: h [m].
 * Valid for: straight edge, depth above the part that the nose radius takes, feed below the nose
 *     radius.
 * Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
 * Example: feed_per_rev=0.25 mm; cutting_edge_angle=45 deg => 0.176776695297 mm (own arithmetic:
 *     0.25/sqrt(2)).
 */
gullet_status gullet_turning_chip_thickness(double feed_per_rev_m,
                                            double cutting_edge_angle_rad,
                                            double *turning_chip_thickness_m_out);

/** gullet_turning_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_chip_thickness_array(size_t count,
                                                  const double *feed_per_rev_m,
                                                  const double *cutting_edge_angle_rad,
                                                  double *turning_chip_thickness_m_out,
                                                  gullet_status *status_out);

/**
 * Undeformed chip width in turning.
 *
 *     b = a_p/sin(kappa_r)
 *
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * turning_chip_width_m_out: b [m].
 * Valid for: straight edge, depth above the part that the nose radius takes; along the edge of a
 *     mill as well.
 * Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
 * Example: depth_of_cut=3.0 mm; cutting_edge_angle=45 deg => 4.24264068712 mm (own arithmetic: 3
 *     sqrt(2)).
 */
gullet_status gullet_turning_chip_width(double depth_of_cut_m,
                                        double cutting_edge_angle_rad,
                                        double *turning_chip_width_m_out);

/** gullet_turning_chip_width over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_chip_width_array(size_t count,
                                              const double *depth_of_cut_m,
                                              const double *cutting_edge_angle_rad,
                                              double *turning_chip_width_m_out,
                                              gullet_status *status_out);

/**
 * Undeformed chip thickness of each lip of a two-lip drill.
 *
 *     h = (f/2) sin(sigma/2)
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
 * drilling_chip_thickness_m_out: h [m].
 * Valid for: two equal lips; sigma = 180 deg is a flat bottom.
 * Source: derived: half the feed, square to the lip.
 * Example: feed_per_rev=0.2 mm; point_angle=118 deg => 0.0857167300702 mm (own arithmetic: 0.1 sin
 *     59 deg).
 */
gullet_status gullet_drilling_chip_thickness(double feed_per_rev_m,
                                             double point_angle_rad,
                                             double *drilling_chip_thickness_m_out);

/** gullet_drilling_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drilling_chip_thickness_array(size_t count,
                                                   const double *feed_per_rev_m,
                                                   const double *point_angle_rad,
                                                   double *drilling_chip_thickness_m_out,
                                                   gullet_status *status_out);

/**
 * Undeformed chip thickness in plunging with the end of a mill.
 *
 *     h = f_z sin(kappa_r)
 *
 * feed_per_tooth_m: f_z, feed per tooth along the axis [m]; feed_per_tooth >= 0.
 * cutting_edge_angle_rad: kappa_r, angle between the end edge and the axis [rad]; 0 deg <
 *     cutting_edge_angle <= 90 deg.
 * plunge_chip_thickness_m_out: h [m].
 * Valid for: feed along the axis: the end edges cut and the whole feed is chip, whatever the width;
 *     no thinning.
 * Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
 * Example: feed_per_tooth=0.08 mm; cutting_edge_angle=30 deg => 0.04 mm (identity: half the feed).
 */
gullet_status gullet_plunge_chip_thickness(double feed_per_tooth_m,
                                           double cutting_edge_angle_rad,
                                           double *plunge_chip_thickness_m_out);

/** gullet_plunge_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_plunge_chip_thickness_array(size_t count,
                                                 const double *feed_per_tooth_m,
                                                 const double *cutting_edge_angle_rad,
                                                 double *plunge_chip_thickness_m_out,
                                                 gullet_status *status_out);

/**
 * Removal rate of a milling cut.
 *
 *     Q = a_p a_e v_f
 *
 * axial_depth_m: a_p, depth of cut along the axis, in face and side milling alike [m]; axial_depth
 *     >= 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth >= 0.
 * table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
 * milling_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: full engagement, constant section; the mean over a pass with approach and overtravel
 *     is lower.
 * Source: derived: section times feed.
 * Example: axial_depth=3 mm; radial_depth=60 mm; table_feed=600 mm/min => 108000 mm3/min
 *     (Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open
 *     textbook-companion file), seen).
 */
gullet_status gullet_milling_removal_rate(double axial_depth_m,
                                          double radial_depth_m,
                                          double table_feed_m_per_s,
                                          double *milling_removal_rate_m3_per_s_out);

/** gullet_milling_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_milling_removal_rate_array(size_t count,
                                                const double *axial_depth_m,
                                                const double *radial_depth_m,
                                                const double *table_feed_m_per_s,
                                                double *milling_removal_rate_m3_per_s_out,
                                                gullet_status *status_out);

/**
 * Axial depth of the plain cut that removes as much as another at the same radial depth and feed.
 *
 *     a_p = Q/(a_e v_f)
 *
 * removal_rate_m3_per_s: Q, removal rate [m3/s]; removal_rate >= 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth > 0.
 * table_feed_m_per_s: v_f, feed of the cutter's axis [m/s]; table_feed > 0.
 * axial_depth_for_removal_rate_m_out: a_p [m].
 * Valid for: profiles that take more at their crest than at their foot, such as threads: the mean
 *     width of the section.
 * Source: derived: inverse of milling_removal_rate.
 * Example: removal_rate=108000 mm3/min; radial_depth=60 mm; table_feed=600 mm/min => 3 mm (own
 *     arithmetic on the inputs of Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex.
 *     24.2 p.667).
 */
gullet_status gullet_axial_depth_for_removal_rate(double removal_rate_m3_per_s,
                                                  double radial_depth_m,
                                                  double table_feed_m_per_s,
                                                  double *axial_depth_for_removal_rate_m_out);

/** gullet_axial_depth_for_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_axial_depth_for_removal_rate_array(size_t count,
                                                        const double *removal_rate_m3_per_s,
                                                        const double *radial_depth_m,
                                                        const double *table_feed_m_per_s,
                                                        double *axial_depth_for_removal_rate_m_out,
                                                        gullet_status *status_out);

/**
 * Removal rate of a turning cut.
 *
 *     Q = v_c f a_p
 *
 * cutting_speed_m_per_s: v_c, cutting speed at the mean diameter of the cut [m/s]; cutting_speed >=
 *     0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * depth_of_cut_m: a_p, depth of cut, on the radius [m]; depth_of_cut >= 0.
 * turning_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: exact with the speed at the mean diameter D - a_p; the speed at the outer diameter D
 *     reads a_p/(D - a_p) high.
 * Source: derived: section times speed, by Pappus's rule at the mean diameter.
 * Example: cutting_speed=145 m/min; feed_per_rev=0.38 mm; depth_of_cut=2 mm => 110.2 cm3/min (own
 *     arithmetic on the inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.134).
 */
gullet_status gullet_turning_removal_rate(double cutting_speed_m_per_s,
                                          double feed_per_rev_m,
                                          double depth_of_cut_m,
                                          double *turning_removal_rate_m3_per_s_out);

/** gullet_turning_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_removal_rate_array(size_t count,
                                                const double *cutting_speed_m_per_s,
                                                const double *feed_per_rev_m,
                                                const double *depth_of_cut_m,
                                                double *turning_removal_rate_m3_per_s_out,
                                                gullet_status *status_out);

/**
 * Removal rate of a drill in solid metal.
 *
 *     Q = (pi D^2/4) f n
 *
 * diameter_m: D, drill diameter [m]; diameter >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * drilling_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: solid drilling at full diameter; n in revolutions per second.
 * Source: derived: section times feed rate.
 * Example: diameter=10 mm; feed_per_rev=0.2 mm; spindle_speed=800 rpm => 210 mm3/s (Kalpakjian &
 *     Schmid, Manufacturing Engineering & Technology, 4th ed., Ex. 22.2 p.632, seen).
 */
gullet_status gullet_drilling_removal_rate(double diameter_m,
                                           double feed_per_rev_m,
                                           double spindle_speed_rev_per_s,
                                           double *drilling_removal_rate_m3_per_s_out);

/** gullet_drilling_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drilling_removal_rate_array(size_t count,
                                                 const double *diameter_m,
                                                 const double *feed_per_rev_m,
                                                 const double *spindle_speed_rev_per_s,
                                                 double *drilling_removal_rate_m3_per_s_out,
                                                 gullet_status *status_out);

/**
 * Removal rate of plunge milling.
 *
 *     Q = a_e s v_f
 *
 * radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth >= 0.
 * side_step_m: s, step between two plunges, along the wall [m]; side_step >= 0.
 * table_feed_m_per_s: v_f, feed along the axis [m/s]; table_feed >= 0.
 * plunge_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: every plunge after the first, step below the cutter's chord at a_e.
 * Source: derived: section times feed.
 * Example: radial_depth=6 mm; side_step=8 mm; table_feed=320 mm/min => 15360 mm3/min (identity;
 *     feed of 0.08 mm x 2 teeth x 2000 rpm).
 */
gullet_status gullet_plunge_removal_rate(double radial_depth_m,
                                         double side_step_m,
                                         double table_feed_m_per_s,
                                         double *plunge_removal_rate_m3_per_s_out);

/** gullet_plunge_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_plunge_removal_rate_array(size_t count,
                                               const double *radial_depth_m,
                                               const double *side_step_m,
                                               const double *table_feed_m_per_s,
                                               double *plunge_removal_rate_m3_per_s_out,
                                               gullet_status *status_out);

/**
 * Removal rate of a helix that sinks or widens a bore.
 *
 *     Q = (pi/4) (D_m - D_w) (D_m + D_w) v_a
 *
 * finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
 * start_diameter_m: D_w, diameter before the pass, 0 for solid work [m]; 0 <= start_diameter <=
 *     finished_diameter.
 * axial_feed_m_per_s: v_a, feed along the axis [m/s]; axial_feed >= 0.
 * bore_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: mean over the turns between the first and the last.
 * Source: derived: ring times feed along the axis.
 * Example: finished_diameter=40 mm; start_diameter=36 mm; axial_feed=10 mm/min => 2387.61041673
 *     mm3/min (identity: 76 pi mm2 x 10 mm/min).
 */
gullet_status gullet_bore_removal_rate(double finished_diameter_m,
                                       double start_diameter_m,
                                       double axial_feed_m_per_s,
                                       double *bore_removal_rate_m3_per_s_out);

/** gullet_bore_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_bore_removal_rate_array(size_t count,
                                             const double *finished_diameter_m,
                                             const double *start_diameter_m,
                                             const double *axial_feed_m_per_s,
                                             double *bore_removal_rate_m3_per_s_out,
                                             gullet_status *status_out);

/**
 * Specific cutting force at a chip thickness (Kienzle).
 *
 *     k_c = k_c11 (h/1 mm)^(-m_c) (1 - s (gamma - gamma_0)/1 deg) K
 *
 * kc11_pa: k_c11, specific cutting force at a chip 1 mm thick and 1 mm wide [Pa]; kc11 > 0.
 * chip_exponent: m_c, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
 * chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness > 0.
 * rake_angle_rad: gamma, rake angle of the tool [rad]; rake_angle: any finite value.
 * reference_rake_rad: gamma_0, rake angle that the table's k_c1.1 belongs to [rad]; reference_rake:
 *     any finite value.
 * rake_sensitivity: s, relative change per degree of rake [-]; rake_sensitivity >= 0.
 * correction: K, factor for wear, speed and tool material [-]; correction > 0.
 * rake_sensitivity*(rake_angle - reference_rake)/(1 deg) < 1.
 * specific_cutting_force_pa_out: k_c [Pa].
 * Valid for: chip thickness of about 0.05 to 1.5 mm, thicker than the edge radius (below it
 *     ploughing lifts k_c above the law); k_c1.1 and m_c as a pair from one source, good to 20 % at
 *     best; s = 0.01 per degree in one school, 0.015 in another; the reference rake belongs to the
 *     table.
 * Source: Kienzle's law in the form of German handbooks, from memory.
 * Example: kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0.08 mm; rake_angle=6 deg;
 *     reference_rake=0 deg => 3181.47022 N/mm2 (identity).
 */
gullet_status gullet_specific_cutting_force(double kc11_pa,
                                            double chip_exponent,
                                            double chip_thickness_m,
                                            double rake_angle_rad,
                                            double reference_rake_rad,
                                            double rake_sensitivity,
                                            double correction,
                                            double *specific_cutting_force_pa_out);

/** gullet_specific_cutting_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_specific_cutting_force_array(size_t count,
                                                  const double *kc11_pa,
                                                  const double *chip_exponent,
                                                  const double *chip_thickness_m,
                                                  const double *rake_angle_rad,
                                                  const double *reference_rake_rad,
                                                  const double *rake_sensitivity,
                                                  const double *correction,
                                                  double *specific_cutting_force_pa_out,
                                                  gullet_status *status_out);

/**
 * Cutting force of a chip section.
 *
 *     F_c = k_c h b
 *
 * specific_cutting_force_pa: k_c, specific cutting force at this chip thickness [Pa];
 *     specific_cutting_force >= 0.
 * chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness >= 0.
 * chip_width_m: b, undeformed chip width [m]; chip_width >= 0.
 * chip_section_force_n_out: F_c [N].
 * Valid for: one edge in the cut, sharp; k_c at the same chip thickness.
 * Source: definition of the specific cutting force; symbols of ISO 3002-4, from memory.
 * Example: specific_cutting_force=1.7 hp.min/in3; chip_thickness=0.003 in; chip_width=0.060 in =>
 *     121 lbf (clamp maker's technical handbook, boring example, seen).
 */
gullet_status gullet_chip_section_force(double specific_cutting_force_pa,
                                        double chip_thickness_m,
                                        double chip_width_m,
                                        double *chip_section_force_n_out);

/** gullet_chip_section_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chip_section_force_array(size_t count,
                                              const double *specific_cutting_force_pa,
                                              const double *chip_thickness_m,
                                              const double *chip_width_m,
                                              double *chip_section_force_n_out,
                                              gullet_status *status_out);

/**
 * Tangential force that a power at the cutter amounts to.
 *
 *     F_c = P_c/v_c
 *
 * cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * tangential_force_n_out: F_c [N].
 * Valid for: mean over a revolution where the cut is interrupted: never for tool strength or
 *     holding.
 * Source: definition of power.
 * Example: cutting_power=21.7784052465875 kW; cutting_speed=100 m/min => 13067.043148 N (own
 *     arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4).
 */
gullet_status gullet_tangential_force(double cutting_power_w,
                                      double cutting_speed_m_per_s,
                                      double *tangential_force_n_out);

/** gullet_tangential_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tangential_force_array(size_t count,
                                            const double *cutting_power_w,
                                            const double *cutting_speed_m_per_s,
                                            double *tangential_force_n_out,
                                            gullet_status *status_out);

/**
 * Specific cutting force from a measured force in turning.
 *
 *     k_c = F_c/(f a_p)
 *
 * cutting_force_n: F_c, measured cutting force [N]; cutting_force >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
 * specific_energy_from_force_pa_out: k_c [Pa].
 * Valid for: the section f a_p equals b h whatever the cutting-edge angle; belongs to the chip
 *     thickness of the test.
 * Source: definition of the specific cutting force.
 * Example: cutting_force=1600 N; feed_per_rev=0.2 mm; depth_of_cut=2 mm => 4000 N/mm2 (Sharma P.C.,
 *     A Textbook of Production Engineering, 11th ed., Exa 14.10 p.571, seen).
 */
gullet_status gullet_specific_energy_from_force(double cutting_force_n,
                                                double feed_per_rev_m,
                                                double depth_of_cut_m,
                                                double *specific_energy_from_force_pa_out);

/** gullet_specific_energy_from_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_specific_energy_from_force_array(size_t count,
                                                      const double *cutting_force_n,
                                                      const double *feed_per_rev_m,
                                                      const double *depth_of_cut_m,
                                                      double *specific_energy_from_force_pa_out,
                                                      gullet_status *status_out);

/**
 * Specific cutting force at a chip 1 mm thick from that at another chip thickness.
 *
 *     k_c11 = k_c (h/1 mm)^m_c
 *
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness [Pa];
 *     specific_cutting_force > 0.
 * chip_exponent: m_c, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
 * chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness > 0.
 * kc11_from_specific_force_pa_out: k_c11 [Pa].
 * Valid for: m_c of the same tests as k_c: the two are one pair.
 * Source: derived from k_c = k_c11 (h/1 mm)^(-m_c).
 * Example: specific_cutting_force=3600 N/mm2; chip_exponent=0.5; chip_thickness=0.25 mm => 1800
 *     N/mm2 (identity: 3600 x 0.25^0.5).
 */
gullet_status gullet_kc11_from_specific_force(double specific_cutting_force_pa,
                                              double chip_exponent,
                                              double chip_thickness_m,
                                              double *kc11_from_specific_force_pa_out);

/** gullet_kc11_from_specific_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_kc11_from_specific_force_array(size_t count,
                                                    const double *specific_cutting_force_pa,
                                                    const double *chip_exponent,
                                                    const double *chip_thickness_m,
                                                    double *kc11_from_specific_force_pa_out,
                                                    gullet_status *status_out);

/**
 * Torque of a two-lip drill in solid metal.
 *
 *     M_c = k_c f D^2/8
 *
 * diameter_m: D, drill diameter [m]; diameter >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a lip [Pa];
 *     specific_cutting_force >= 0.
 * drilling_torque_n_m_out: M_c [N.m].
 * Valid for: solid drilling with two lips, each force k_c D f/4 at the radius D/4; k_c at h = (f/2)
 *     sin(sigma/2), about 1.2 times for high-speed steel and chip friction (from memory); margins
 *     not counted.
 * Source: derived: two lip forces times their lever.
 * Example: diameter=12.7 mm; feed_per_rev=0.254 mm; specific_cutting_force=1961.33 N/mm2 => 10.044
 *     N.m (Sharma P.C., A Textbook of Production Engineering, 11th ed., Exa 15.4 p.616, seen).
 */
gullet_status gullet_drilling_torque(double diameter_m,
                                     double feed_per_rev_m,
                                     double specific_cutting_force_pa,
                                     double *drilling_torque_n_m_out);

/** gullet_drilling_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drilling_torque_array(size_t count,
                                           const double *diameter_m,
                                           const double *feed_per_rev_m,
                                           const double *specific_cutting_force_pa,
                                           double *drilling_torque_n_m_out,
                                           gullet_status *status_out);

/**
 * Thrust of a two-lip drill in solid metal.
 *
 *     F_f = K k_c (D/2) f sin(sigma/2)
 *
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a lip [Pa];
 *     specific_cutting_force >= 0.
 * diameter_m: D, drill diameter [m]; diameter >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
 * factor: K, about 1 for a standard chisel edge, 0.5 for a thinned point [-]; factor > 0.
 * drilling_thrust_n_out: F_f [N].
 * Valid for: rough, within 40 % either way: the chisel edge takes a third of the thrust and depends
 *     on the grind.
 * Source: form of German handbooks, from memory; factor 1 derived from a handbook's example, 0.5
 *     common practice, no source.
 * Example: specific_cutting_force=2000 N/mm2; diameter=10 mm; feed_per_rev=0.2 mm; point_angle=60
 *     deg; factor=0.5 => 500 N (own arithmetic: 0.5 x 2000 x 5 x 0.2 x 0.5).
 */
gullet_status gullet_drilling_thrust(double specific_cutting_force_pa,
                                     double diameter_m,
                                     double feed_per_rev_m,
                                     double point_angle_rad,
                                     double factor,
                                     double *drilling_thrust_n_out);

/** gullet_drilling_thrust over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drilling_thrust_array(size_t count,
                                           const double *specific_cutting_force_pa,
                                           const double *diameter_m,
                                           const double *feed_per_rev_m,
                                           const double *point_angle_rad,
                                           const double *factor,
                                           double *drilling_thrust_n_out,
                                           gullet_status *status_out);

/**
 * Force on a milling cutter along the feed, mean over a revolution.
 *
 *     F_x = z a_p f_z/(8 pi) (K_tc A - K_rc B) + z a_p/(2 pi) (K_re E - K_te S); A = cos(2 phi_ex)
 *         - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E =
 *         cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)
 *
 * ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
 * krc_pa: K_rc, radial cutting coefficient [Pa]; krc: any finite value.
 * kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
 * kre_n_per_m: K_re, radial edge coefficient [N/m]; kre: any finite value.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
 *     exit_angle.
 * exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
 * mean_feed_force_n_out: F_x [N].
 * Valid for: force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak:
 *     not for tool strength or the vise; x along the motion of the tool relative to the work, y to
 *     the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from
 *     +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut
 *     arc; angles in radians.
 * Source: derived: linear edge force model integrated over the arc; the model after Altintas,
 *     Manufacturing Automation, from memory.
 * Example: ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5
 *     mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg => -355.114534 N (identity;
 *     coefficients of Al7050 after Engin & Altintas 2001, memory).
 */
gullet_status gullet_mean_feed_force(double ktc_pa,
                                     double krc_pa,
                                     double kte_n_per_m,
                                     double kre_n_per_m,
                                     double teeth,
                                     double axial_depth_m,
                                     double feed_per_tooth_m,
                                     double entry_angle_rad,
                                     double exit_angle_rad,
                                     double *mean_feed_force_n_out);

/** gullet_mean_feed_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_feed_force_array(size_t count,
                                           const double *ktc_pa,
                                           const double *krc_pa,
                                           const double *kte_n_per_m,
                                           const double *kre_n_per_m,
                                           const double *teeth,
                                           const double *axial_depth_m,
                                           const double *feed_per_tooth_m,
                                           const double *entry_angle_rad,
                                           const double *exit_angle_rad,
                                           double *mean_feed_force_n_out,
                                           gullet_status *status_out);

/**
 * Force on a milling cutter square to the feed, mean over a revolution.
 *
 *     F_y = z a_p f_z/(8 pi) (K_tc B + K_rc A) - z a_p/(2 pi) (K_te E + K_re S); A = cos(2 phi_ex)
 *         - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E =
 *         cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)
 *
 * ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
 * krc_pa: K_rc, radial cutting coefficient [Pa]; krc: any finite value.
 * kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
 * kre_n_per_m: K_re, radial edge coefficient [N/m]; kre: any finite value.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
 *     exit_angle.
 * exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
 * mean_normal_force_n_out: F_y [N].
 * Valid for: force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak:
 *     not for tool strength or the vise; x along the motion of the tool relative to the work, y to
 *     the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from
 *     +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut
 *     arc; angles in radians.
 * Source: derived: linear edge force model integrated over the arc; the model after Altintas,
 *     Manufacturing Automation, from memory.
 * Example: ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5
 *     mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg => 162.292039 N (identity;
 *     coefficients of Al7050 after Engin & Altintas 2001, memory).
 */
gullet_status gullet_mean_normal_force(double ktc_pa,
                                       double krc_pa,
                                       double kte_n_per_m,
                                       double kre_n_per_m,
                                       double teeth,
                                       double axial_depth_m,
                                       double feed_per_tooth_m,
                                       double entry_angle_rad,
                                       double exit_angle_rad,
                                       double *mean_normal_force_n_out);

/** gullet_mean_normal_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_normal_force_array(size_t count,
                                             const double *ktc_pa,
                                             const double *krc_pa,
                                             const double *kte_n_per_m,
                                             const double *kre_n_per_m,
                                             const double *teeth,
                                             const double *axial_depth_m,
                                             const double *feed_per_tooth_m,
                                             const double *entry_angle_rad,
                                             const double *exit_angle_rad,
                                             double *mean_normal_force_n_out,
                                             gullet_status *status_out);

/**
 * Force on a milling cutter along its axis, mean over a revolution; positive pulls the tool out of
 *     the holder.
 *
 *     F_z = z a_p/(2 pi) (K_ae (phi_ex - phi_st) - K_ac f_z E); E = cos(phi_ex) - cos(phi_st)
 *
 * kac_pa: K_ac, axial cutting coefficient [Pa]; kac: any finite value.
 * kae_n_per_m: K_ae, axial edge coefficient [N/m]; kae: any finite value.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
 *     exit_angle.
 * exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
 * mean_axial_force_n_out: F_z [N].
 * Valid for: force ON THE TOOL, mean over a revolution, NOT a peak: not for holding; positive pulls
 *     the tool away from the spindle and lifts the work (K_ac > 0 for a right-hand helix on a
 *     right-hand cutter); straight edge, cutting-edge angle 90 deg, any helix, one cut arc; angles
 *     in radians.
 * Source: derived: linear edge force model integrated over the arc; the model after Altintas,
 *     Manufacturing Automation, from memory.
 * Example: kac=222.0 N/mm2; kae=1.4 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm;
 *     entry_angle=0 deg; exit_angle=90 deg => 77.6647947 N (identity; coefficients of Al7050 after
 *     Engin & Altintas 2001, memory).
 */
gullet_status gullet_mean_axial_force(double kac_pa,
                                      double kae_n_per_m,
                                      double teeth,
                                      double axial_depth_m,
                                      double feed_per_tooth_m,
                                      double entry_angle_rad,
                                      double exit_angle_rad,
                                      double *mean_axial_force_n_out);

/** gullet_mean_axial_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_axial_force_array(size_t count,
                                            const double *kac_pa,
                                            const double *kae_n_per_m,
                                            const double *teeth,
                                            const double *axial_depth_m,
                                            const double *feed_per_tooth_m,
                                            const double *entry_angle_rad,
                                            const double *exit_angle_rad,
                                            double *mean_axial_force_n_out,
                                            gullet_status *status_out);

/**
 * Torque of a milling cutter in a side cut or slot, mean over a revolution.
 *
 *     M = a_p a_e f_z z K_tc/(2 pi) + a_p z phi_s K_te D/(4 pi); phi_s = acos(1 - 2 a_e/D)
 *
 * ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
 * kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * mean_milling_torque_n_m_out: M [N.m].
 * Valid for: mean over a revolution, NOT a peak; side cut or slot, up or down, any helix; linear
 *     edge forces; phi_s in radians.
 * Source: derived: mean of (D/2) (K_tc h + K_te) a_p over the arc; without edge force it is k_c
 *     Q/(2 pi n).
 * Example: ktc=796.1 N/mm2; kte=27.7 N/mm; teeth=4; axial_depth=5 mm; radial_depth=10 mm;
 *     feed_per_tooth=0.1 mm; diameter=20 mm => 3.919065 N.m (identity).
 */
gullet_status gullet_mean_milling_torque(double ktc_pa,
                                         double kte_n_per_m,
                                         double teeth,
                                         double axial_depth_m,
                                         double radial_depth_m,
                                         double feed_per_tooth_m,
                                         double diameter_m,
                                         double *mean_milling_torque_n_m_out);

/** gullet_mean_milling_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_milling_torque_array(size_t count,
                                               const double *ktc_pa,
                                               const double *kte_n_per_m,
                                               const double *teeth,
                                               const double *axial_depth_m,
                                               const double *radial_depth_m,
                                               const double *feed_per_tooth_m,
                                               const double *diameter_m,
                                               double *mean_milling_torque_n_m_out,
                                               gullet_status *status_out);

/**
 * Largest number of teeth in the arc of a cut at one instant.
 *
 *     z_s = ceil(z phi_s/(2 pi))
 *
 * teeth: z, effective teeth [-]; teeth >= 1.
 * engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 360
 *     deg.
 * simultaneous_teeth_out: z_s [-].
 * Valid for: straight edges, or one height along a helix; equal pitch; a quotient within 1e-9 of a
 *     whole number counts as it, so the instant at which one tooth enters as another leaves is not
 *     counted; phi_s in radians.
 * Source: derived: teeth a pitch apart within the arc.
 * Example: teeth=4; engagement_angle=100 deg => 2 (own arithmetic: 4 x 100/360 = 1.11).
 */
gullet_status gullet_simultaneous_teeth(double teeth,
                                        double engagement_angle_rad,
                                        double *simultaneous_teeth_out);

/** gullet_simultaneous_teeth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_simultaneous_teeth_array(size_t count,
                                              const double *teeth,
                                              const double *engagement_angle_rad,
                                              double *simultaneous_teeth_out,
                                              gullet_status *status_out);

/**
 * Bound of the sum of the tangential forces of all teeth in a cut over the largest force of one
 *     tooth.
 *
 *     S = k^m_c max(1, s)^(1 - m_c); s = min(k, sin(k psi/2)/(sin(psi/2) s_max)); k = ceil(z
 *         phi_s/(2 pi)); psi = 2 pi/z
 *
 * teeth: z, effective teeth [-]; teeth >= 1.
 * engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 180
 *     deg.
 * largest_sine: s_max, largest sine of the immersion in the arc [-]; 0 < largest_sine <= 1.
 * chip_exponent: m_c, exponent of the chip thickness in the specific cutting force [-]; 0 <=
 *     chip_exponent < 1.
 * tooth_sum_factor_out: S [-].
 * Valid for: upper bound for straight and for helical edges, equal pitch, sharp edges (force of a
 *     tooth as the power 1 - m_c of its chip thickness); at m_c = 0 it bounds the sum of the sines
 *     over the largest; an edge force that does not depend on the chip is to be multiplied by k
 *     instead; angles in radians.
 * Source: derived: k sines a pitch apart sum to sin(k psi/2)/sin(psi/2) times the sine of their
 *     middle; powers below 1 by Jensen's inequality; a helix averages straight edges.
 * Example: teeth=4; engagement_angle=180 deg; largest_sine=1 => 1.4142135624 (identity, slot with
 *     four teeth: sin 45 deg + sin 135 deg).
 */
gullet_status gullet_tooth_sum_factor(double teeth,
                                      double engagement_angle_rad,
                                      double largest_sine,
                                      double chip_exponent,
                                      double *tooth_sum_factor_out);

/** gullet_tooth_sum_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tooth_sum_factor_array(size_t count,
                                            const double *teeth,
                                            const double *engagement_angle_rad,
                                            const double *largest_sine,
                                            const double *chip_exponent,
                                            double *tooth_sum_factor_out,
                                            gullet_status *status_out);

/**
 * Bound of the tangential force of helical edges over that of straight ones.
 *
 *     L = min(1, (w q + min((t - w psi) S, q))/(t S)); t = max(2 a_p tan(beta)/D, 10^(-9)); q =
 *         min(phi_s c^(1 - m_c), psi S); w = floor(t/psi); psi = 2 pi/z
 *
 * teeth: z, effective teeth [-]; teeth >= 1.
 * engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 180
 *     deg.
 * chip_ratio: c, mean over largest chip thickness [-]; 0 < chip_ratio <= 1.
 * chip_exponent: m_c, exponent of the chip thickness in the specific cutting force [-]; 0 <=
 *     chip_exponent < 1.
 * tooth_sum_factor: S, bound for straight edges: sum over the teeth over the largest of one tooth
 *     [-]; tooth_sum_factor >= 1.
 * axial_depth_m: a_p, axial depth [m]; axial_depth > 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
 * helix_relief_factor_out: L [-].
 * Valid for: upper bound for equal pitch and sharp edges; t is the angle by which the edge lags
 *     over the axial depth: short of it only part of each edge is in the cut at one instant; angles
 *     in radians.
 * Source: derived: a helix spreads the straight-edge force over the lag t; over a whole pitch that
 *     force sums to at most q, by Jensen's inequality, and over less to at most its bound S.
 * Example: teeth=2; engagement_angle=90 deg; chip_ratio=0.5; chip_exponent=0; tooth_sum_factor=1;
 *     axial_depth=10 mm; diameter=10 mm; helix_angle=45 deg => 0.39269908 (own arithmetic: lag 2
 *     rad, q = pi/4, so (pi/4)/2).
 */
gullet_status gullet_helix_relief_factor(double teeth,
                                         double engagement_angle_rad,
                                         double chip_ratio,
                                         double chip_exponent,
                                         double tooth_sum_factor,
                                         double axial_depth_m,
                                         double diameter_m,
                                         double helix_angle_rad,
                                         double *helix_relief_factor_out);

/** gullet_helix_relief_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_relief_factor_array(size_t count,
                                               const double *teeth,
                                               const double *engagement_angle_rad,
                                               const double *chip_ratio,
                                               const double *chip_exponent,
                                               const double *tooth_sum_factor,
                                               const double *axial_depth_m,
                                               const double *diameter_m,
                                               const double *helix_angle_rad,
                                               double *helix_relief_factor_out,
                                               gullet_status *status_out);

/**
 * Upper bound of the sum of the tangential forces of a milling cutter.
 *
 *     F_c = k_c h_max b S L
 *
 * specific_cutting_force_pa: k_c, specific cutting force at the largest chip thickness [Pa];
 *     specific_cutting_force >= 0.
 * max_chip_thickness_m: h_max, largest chip thickness in the arc [m]; max_chip_thickness >= 0.
 * chip_width_m: b, undeformed chip width, along the edge [m]; chip_width >= 0.
 * tooth_sum_factor: S, sum over the teeth over the largest of one tooth [-]; tooth_sum_factor >= 1.
 * helix_relief: L, helical edges over straight ones; 1 is safe for every helix [-]; 0 <
 *     helix_relief <= 1.
 * peak_tangential_force_n_out: F_c [N].
 * Valid for: S = tooth_sum_factor and L = helix_relief_factor with the same chip exponent as k_c;
 *     times the peak's own factors for run-out and wear.
 * Source: derived: largest force of one tooth times the bound of the sum.
 * Example: specific_cutting_force=2000 N/mm2; max_chip_thickness=0.06 mm; chip_width=5 mm;
 *     tooth_sum_factor=1.5 => 900 N (own arithmetic: 2000 x 0.06 x 5 x 1.5).
 */
gullet_status gullet_peak_tangential_force(double specific_cutting_force_pa,
                                           double max_chip_thickness_m,
                                           double chip_width_m,
                                           double tooth_sum_factor,
                                           double helix_relief,
                                           double *peak_tangential_force_n_out);

/** gullet_peak_tangential_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_peak_tangential_force_array(size_t count,
                                                 const double *specific_cutting_force_pa,
                                                 const double *max_chip_thickness_m,
                                                 const double *chip_width_m,
                                                 const double *tooth_sum_factor,
                                                 const double *helix_relief,
                                                 double *peak_tangential_force_n_out,
                                                 gullet_status *status_out);

/**
 * Force across the tool's axis from the tangential force and the ratio of the radial to it.
 *
 *     F_xy = F_c sqrt(1 + rho^2)
 *
 * cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
 * radial_force_ratio: rho, radial over tangential force [-]; radial_force_ratio >= 0.
 * in_plane_force_n_out: F_xy [N].
 * Valid for: exact for one tooth; with several teeth in the cut an upper bound, since their forces
 *     point apart.
 * Source: derived: right triangle; triangle inequality over the teeth.
 * Example: cutting_force=400 N; radial_force_ratio=0.75 => 500 N (identity: 3-4-5 triangle).
 */
gullet_status gullet_in_plane_force(double cutting_force_n,
                                    double radial_force_ratio,
                                    double *in_plane_force_n_out);

/** gullet_in_plane_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_in_plane_force_array(size_t count,
                                          const double *cutting_force_n,
                                          const double *radial_force_ratio,
                                          double *in_plane_force_n_out,
                                          gullet_status *status_out);

/**
 * Upper estimate of the axial force that a helix turns out of the tangential force.
 *
 *     F_a = F_c tan(beta)
 *
 * cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
 * helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
 * helix_axial_force_n_out: F_a [N].
 * Valid for: right-hand helix on a right-hand cutter: pulls the tool out of the holder and lifts
 *     the work; frictionless upper estimate: measured ratios of axial to tangential coefficients
 *     for aluminium end mills lie at 0.28 to 0.43, tan 30 deg is 0.577.
 * Source: derived: force square to a frictionless edge; ratios from published coefficients (Engin &
 *     Altintas 2001, memory; review in Chinese Journal of Mechanical Engineering 2021, Table 5,
 *     seen).
 * Example: cutting_force=500 N; helix_angle=45 deg => 500 N (identity: tan 45 deg = 1).
 */
gullet_status gullet_helix_axial_force(double cutting_force_n,
                                       double helix_angle_rad,
                                       double *helix_axial_force_n_out);

/** gullet_helix_axial_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_axial_force_array(size_t count,
                                             const double *cutting_force_n,
                                             const double *helix_angle_rad,
                                             double *helix_axial_force_n_out,
                                             gullet_status *status_out);

/**
 * Undeformed chip width of each lip in drilling or enlarging a hole.
 *
 *     b = (D - d)/(2 sin(sigma/2))
 *
 * diameter_m: D, diameter of the drill, core drill or countersink [m]; diameter > 0.
 * point_angle_rad: sigma, point angle; the included angle of a countersink [rad]; 0 deg <
 *     point_angle <= 180 deg.
 * start_diameter_m: d, diameter of the hole that is there already; 0 for solid metal [m]; 0 <=
 *     start_diameter <= diameter.
 * drilling_chip_width_m_out: b [m].
 * Valid for: straight lips that meet on the axis; no allowance for the chisel edge.
 * Source: derived: half the difference of the diameters along the lip.
 * Example: diameter=20 mm; point_angle=60 deg; start_diameter=12 mm => 8 mm (own arithmetic: 8/(2
 *     sin 30 deg) mm).
 */
gullet_status gullet_drilling_chip_width(double diameter_m,
                                         double point_angle_rad,
                                         double start_diameter_m,
                                         double *drilling_chip_width_m_out);

/** gullet_drilling_chip_width over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drilling_chip_width_array(size_t count,
                                               const double *diameter_m,
                                               const double *point_angle_rad,
                                               const double *start_diameter_m,
                                               double *drilling_chip_width_m_out,
                                               gullet_status *status_out);

/**
 * Undeformed chip thickness of each edge of a core drill, countersink or reamer.
 *
 *     h = (f/z) sin(sigma/2)
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * teeth: z, cutting edges that share the feed [-]; teeth >= 1.
 * point_angle_rad: sigma, included angle of the edges that cut [rad]; 0 deg < point_angle <= 180
 *     deg.
 * hole_chip_thickness_m_out: h [m].
 * Valid for: equal edges; with two edges that of a drill.
 * Source: derived: the feed of an edge, square to it.
 * Example: feed_per_rev=0.4 mm; teeth=4; point_angle=60 deg => 0.05 mm (own arithmetic: 0.1 sin 30
 *     deg).
 */
gullet_status gullet_hole_chip_thickness(double feed_per_rev_m,
                                         double teeth,
                                         double point_angle_rad,
                                         double *hole_chip_thickness_m_out);

/** gullet_hole_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_hole_chip_thickness_array(size_t count,
                                               const double *feed_per_rev_m,
                                               const double *teeth,
                                               const double *point_angle_rad,
                                               double *hole_chip_thickness_m_out,
                                               gullet_status *status_out);

/**
 * Feed per revolution at which each edge of a drill, reamer or countersink takes a chip thickness.
 *
 *     f = h z/sin(sigma/2)
 *
 * chip_thickness_m: h, undeformed chip thickness of an edge [m]; chip_thickness >= 0.
 * teeth: z, cutting edges that share the feed; 2 for a twist drill [-]; teeth >= 1.
 * point_angle_rad: sigma, point angle; the included angle of the edges that cut [rad]; 0 deg <
 *     point_angle <= 180 deg.
 * feed_for_hole_chip_thickness_m_out: f [m].
 * Valid for: equal edges.
 * Source: derived: inverse of h = (f/z) sin(sigma/2).
 * Example: chip_thickness=0.05 mm; teeth=4; point_angle=60 deg => 0.4 mm (own arithmetic: 0.05 x
 *     4/sin 30 deg mm).
 */
gullet_status gullet_feed_for_hole_chip_thickness(double chip_thickness_m,
                                                  double teeth,
                                                  double point_angle_rad,
                                                  double *feed_for_hole_chip_thickness_m_out);

/** gullet_feed_for_hole_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_hole_chip_thickness_array(size_t count,
                                                        const double *chip_thickness_m,
                                                        const double *teeth,
                                                        const double *point_angle_rad,
                                                        double *feed_for_hole_chip_thickness_m_out,
                                                        gullet_status *status_out);

/**
 * Torque of a drill, core drill or countersink that enlarges a hole.
 *
 *     M_c = k_c f (D^2 - d^2)/8
 *
 * diameter_m: D, diameter of the tool where it cuts last [m]; diameter >= 0.
 * start_diameter_m: d, diameter of the hole before [m]; 0 <= start_diameter <= diameter.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of an edge [Pa];
 *     specific_cutting_force >= 0.
 * enlarging_torque_n_m_out: M_c [N.m].
 * Valid for: any number of edges: together they cut a chip of width (D - d)/2 and thickness f, at
 *     the mean radius (D + d)/4; margins and chip friction not counted.
 * Source: derived: section of the chip times k_c times its lever; with no hole before, that of
 *     solid drilling.
 * Example: diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; specific_cutting_force=2000
 *     N/mm2 => 16 N.m (own arithmetic: 2000 x 0.25 x 256/8 N mm).
 */
gullet_status gullet_enlarging_torque(double diameter_m,
                                      double start_diameter_m,
                                      double feed_per_rev_m,
                                      double specific_cutting_force_pa,
                                      double *enlarging_torque_n_m_out);

/** gullet_enlarging_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_enlarging_torque_array(size_t count,
                                            const double *diameter_m,
                                            const double *start_diameter_m,
                                            const double *feed_per_rev_m,
                                            const double *specific_cutting_force_pa,
                                            double *enlarging_torque_n_m_out,
                                            gullet_status *status_out);

/**
 * Thrust of a drill, core drill or countersink that enlarges a hole.
 *
 *     F_f = K k_c ((D - d)/2) f sin(sigma/2)
 *
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of an edge [Pa];
 *     specific_cutting_force >= 0.
 * diameter_m: D, diameter of the tool where it cuts last [m]; diameter >= 0.
 * start_diameter_m: d, diameter of the hole before, larger than the chisel edge [m]; 0 <=
 *     start_diameter <= diameter.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * point_angle_rad: sigma, point angle; the included angle of a countersink [rad]; 0 deg <
 *     point_angle <= 180 deg.
 * factor: K, thrust of the edges over their cutting force; no chisel edge cuts [-]; factor > 0.
 * enlarging_thrust_n_out: F_f [N].
 * Valid for: rough, within 40 % either way; the form of solid drilling with the lips alone.
 * Source: form of German handbooks, from memory; factor 0.5 common practice, no source.
 * Example: specific_cutting_force=2000 N/mm2; diameter=20 mm; start_diameter=12 mm;
 *     feed_per_rev=0.25 mm; point_angle=60 deg => 500 N (own arithmetic: 0.5 x 2000 x 4 x 0.25 x
 *     0.5 N).
 */
gullet_status gullet_enlarging_thrust(double specific_cutting_force_pa,
                                      double diameter_m,
                                      double start_diameter_m,
                                      double feed_per_rev_m,
                                      double point_angle_rad,
                                      double factor,
                                      double *enlarging_thrust_n_out);

/** gullet_enlarging_thrust over arrays of `count` rows; see "Arrays". */
gullet_status gullet_enlarging_thrust_array(size_t count,
                                            const double *specific_cutting_force_pa,
                                            const double *diameter_m,
                                            const double *start_diameter_m,
                                            const double *feed_per_rev_m,
                                            const double *point_angle_rad,
                                            const double *factor,
                                            double *enlarging_thrust_n_out,
                                            gullet_status *status_out);

/**
 * Removal rate of a drill, core drill or reamer that enlarges a hole.
 *
 *     Q = (pi (D^2 - d^2)/4) f n
 *
 * diameter_m: D, diameter of the tool [m]; diameter >= 0.
 * start_diameter_m: d, diameter of the hole before [m]; 0 <= start_diameter <= diameter.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * enlarging_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: at full diameter; n in revolutions per second.
 * Source: derived: section of the ring times feed rate.
 * Example: diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; spindle_speed=300 rpm =>
 *     15079.6447372 mm3/min (own arithmetic: 64 pi x 75 mm3/min).
 */
gullet_status gullet_enlarging_removal_rate(double diameter_m,
                                            double start_diameter_m,
                                            double feed_per_rev_m,
                                            double spindle_speed_rev_per_s,
                                            double *enlarging_removal_rate_m3_per_s_out);

/** gullet_enlarging_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_enlarging_removal_rate_array(size_t count,
                                                  const double *diameter_m,
                                                  const double *start_diameter_m,
                                                  const double *feed_per_rev_m,
                                                  const double *spindle_speed_rev_per_s,
                                                  double *enlarging_removal_rate_m3_per_s_out,
                                                  gullet_status *status_out);

/**
 * Thrust of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.
 *
 *     F_f = K_d W (2 B (f/1 in)^0.8 (D/1 in)^0.8 + J (D/1 in)^2) 1 lbf
 *
 * work_factor: K_d, work material factor, the same number in the handbook's inch and metric forms
 *     [-]; work_factor > 0.
 * diameter_m: D, drill diameter [m]; diameter >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * wear_factor: W, tool wear factor [-]; wear_factor >= 1.
 * thrust_factor: B, factor of the chisel edge on the thrust of the lips [-]; thrust_factor > 0.
 * chisel_factor: J, factor of the thrust of the chisel edge itself [-]; chisel_factor >= 0.
 * handbook_drilling_thrust_n_out: F_f [N].
 * Valid for: two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from
 *     memory), W 1.5 for a worn drill (from memory); B and J by chisel edge over diameter: 0.03
 *     1.100 0.001, 0.10 1.235 0.010, 0.18 1.355 0.030 (standard drill), 0.25 1.445 0.065, 0.30
 *     1.500 0.090; the handbook's metric form has rounded constants and reads 0.6 to 1.5 % off.
 * Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors
 *     for feed and diameter are these powers within 0.8 %.
 * Example: work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5;
 *     thrust_factor=1.355; chisel_factor=0.030 => 2668 lbf (E. Oberg et al., Machinery's Handbook,
 *     31st ed., p.1152-1153, seen: its factors from tables of two or three digits).
 */
gullet_status gullet_handbook_drilling_thrust(double work_factor,
                                              double diameter_m,
                                              double feed_per_rev_m,
                                              double wear_factor,
                                              double thrust_factor,
                                              double chisel_factor,
                                              double *handbook_drilling_thrust_n_out);

/** gullet_handbook_drilling_thrust over arrays of `count` rows; see "Arrays". */
gullet_status gullet_handbook_drilling_thrust_array(size_t count,
                                                    const double *work_factor,
                                                    const double *diameter_m,
                                                    const double *feed_per_rev_m,
                                                    const double *wear_factor,
                                                    const double *thrust_factor,
                                                    const double *chisel_factor,
                                                    double *handbook_drilling_thrust_n_out,
                                                    gullet_status *status_out);

/**
 * Torque of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.
 *
 *     M_c = K_d W A (f/1 in)^0.8 (D/1 in)^1.8 1 in 1 lbf
 *
 * work_factor: K_d, work material factor, the same number in the handbook's inch and metric forms
 *     [-]; work_factor > 0.
 * diameter_m: D, drill diameter [m]; diameter >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * wear_factor: W, tool wear factor [-]; wear_factor >= 1.
 * torque_factor: A, factor of the chisel edge on the torque [-]; torque_factor > 0.
 * handbook_drilling_torque_n_m_out: M_c [N.m].
 * Valid for: two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from
 *     memory), W 1.5 for a worn drill (from memory); A by chisel edge over diameter: 0.03 1.000,
 *     0.10 1.020, 0.18 1.085 (standard drill), 0.25 1.155, 0.30 1.235; the handbook's metric form
 *     has a rounded constant and reads 0.6 % low.
 * Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors
 *     for feed and diameter are these powers within 0.8 %.
 * Example: work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5;
 *     torque_factor=1.085 => 645 lbf.in (E. Oberg et al., Machinery's Handbook, 31st ed.,
 *     p.1152-1153, seen: its factors from tables of two or three digits).
 */
gullet_status gullet_handbook_drilling_torque(double work_factor,
                                              double diameter_m,
                                              double feed_per_rev_m,
                                              double wear_factor,
                                              double torque_factor,
                                              double *handbook_drilling_torque_n_m_out);

/** gullet_handbook_drilling_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_handbook_drilling_torque_array(size_t count,
                                                    const double *work_factor,
                                                    const double *diameter_m,
                                                    const double *feed_per_rev_m,
                                                    const double *wear_factor,
                                                    const double *torque_factor,
                                                    double *handbook_drilling_torque_n_m_out,
                                                    gullet_status *status_out);

/**
 * Factor on the cutting speed of a twist drill in a deep hole.
 *
 *     k_v = 1 for l/D < 3, k_v = 0.9 for l/D < 4, k_v = 0.8 for l/D < 5, k_v = 0.7 for l/D < 6, k_v
 *         = 0.6 else
 *
 * depth_m: l, depth of the hole [m]; depth >= 0.
 * diameter_m: D, drill diameter [m]; diameter > 0.
 * deep_hole_speed_factor_out: k_v [-].
 * Valid for: twist drills with fluid from outside; the step of the printed depth at or below that
 *     of the hole; printed 35 to 40 % less at 6 diameters, of which the larger cut is taken; beyond
 *     it deep-hole drills or pecking.
 * Source: public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters,
 *     seen.
 * Example: depth=40 mm; diameter=10 mm => 80 % (the card: 20 % less at 4 diameters, seen).
 */
gullet_status gullet_deep_hole_speed_factor(double depth_m,
                                            double diameter_m,
                                            double *deep_hole_speed_factor_out);

/** gullet_deep_hole_speed_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_deep_hole_speed_factor_array(size_t count,
                                                  const double *depth_m,
                                                  const double *diameter_m,
                                                  double *deep_hole_speed_factor_out,
                                                  gullet_status *status_out);

/**
 * Factor on the feed of a twist drill in a deep hole.
 *
 *     k_f = 1 for l/D < 3, k_f = 0.9 for l/D < 5, k_f = 0.8 else
 *
 * depth_m: l, depth of the hole [m]; depth >= 0.
 * diameter_m: D, drill diameter [m]; diameter > 0.
 * deep_hole_feed_factor_out: k_f [-].
 * Valid for: twist drills with fluid from outside; the step of the printed depth at or below that
 *     of the hole; beyond 6 diameters deep-hole drills or pecking.
 * Source: public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters,
 *     seen.
 * Example: depth=50 mm; diameter=10 mm => 80 % (the card: 20 % less at 5 diameters, seen).
 */
gullet_status gullet_deep_hole_feed_factor(double depth_m,
                                           double diameter_m,
                                           double *deep_hole_feed_factor_out);

/** gullet_deep_hole_feed_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_deep_hole_feed_factor_array(size_t count,
                                                 const double *depth_m,
                                                 const double *diameter_m,
                                                 double *deep_hole_feed_factor_out,
                                                 gullet_status *status_out);

/**
 * Power at the cutter for a removal rate.
 *
 *     P_c = k_c Q
 *
 * removal_rate_m3_per_s: Q, removal rate [m3/s]; removal_rate >= 0.
 * specific_cutting_force_pa: k_c, specific cutting force at the mean chip thickness, or unit power
 *     [Pa]; specific_cutting_force >= 0.
 * cutting_power_w_out: P_c [W].
 * Valid for: mean over a revolution; k_c at the mean chip thickness reads a few percent above the
 *     exact mean over the arc; two sources of k_c or unit power agree within about 30 %.
 * Source: definition of the specific cutting force as energy per volume.
 * Example: removal_rate=150000 mm3/min; specific_cutting_force=3 J/mm3 => 7.5 kW (Kalpakjian &
 *     Schmid, Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion
 *     file), seen).
 */
gullet_status gullet_cutting_power(double removal_rate_m3_per_s,
                                   double specific_cutting_force_pa,
                                   double *cutting_power_w_out);

/** gullet_cutting_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_power_array(size_t count,
                                         const double *removal_rate_m3_per_s,
                                         const double *specific_cutting_force_pa,
                                         double *cutting_power_w_out,
                                         gullet_status *status_out);

/**
 * Power at the cutter from its tangential force.
 *
 *     P_c = F_c v_c
 *
 * cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
 * power_from_force_w_out: P_c [W].
 * Valid for: any process; the mean power where the force is the mean over a revolution.
 * Source: definition of power.
 * Example: cutting_force=1557 N; cutting_speed=100 m/min => 2595 W (Groover M.P., Fundamentals of
 *     Modern Manufacturing, 3rd ed., power example, memory).
 */
gullet_status gullet_power_from_force(double cutting_force_n,
                                      double cutting_speed_m_per_s,
                                      double *power_from_force_w_out);

/** gullet_power_from_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_power_from_force_array(size_t count,
                                            const double *cutting_force_n,
                                            const double *cutting_speed_m_per_s,
                                            double *power_from_force_w_out,
                                            gullet_status *status_out);

/**
 * Power at the cutter of a side cut or slot, mean over a revolution, with the specific cutting
 *     force followed along the arc.
 *
 *     P_c = z n (D/2) (a_p/sin(kappa_r)) k_c11 (1 mm) (h/1 mm)^(1 - m) I; h = f_z sin(kappa_r); I =
 *         integral of sin(phi)^(1 - m) dphi from 0 to acos(1 - 2 a_e/D)
 *
 * kc11_pa: k_c11, specific cutting force at a chip 1 mm thick and 1 mm wide [Pa]; kc11 > 0.
 * chip_exponent: m, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
 * feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
 * teeth: z, effective teeth [-]; teeth >= 1.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * arc_mean_cutting_power_w_out: P_c [W].
 * Valid for: side cut or slot, up or down, circular tooth path, equal pitch, sharp edge, chip
 *     thickness within the range of k_c1.1; n in revolutions per second; the integral to 1e-12
 *     relative.
 * Source: derived: Kienzle's law integrated over the arc, the integral as 2^(1 - m) B(a_e/D; 1 -
 *     m/2, 1 - m/2).
 * Example: kc11=1800 N/mm2; chip_exponent=0.25; feed_per_tooth=0.1 mm; diameter=20 mm;
 *     radial_depth=5 mm; axial_depth=3 mm; teeth=4; spindle_speed=800 rpm; cutting_edge_angle=90
 *     deg => 297.374353 W (identity).
 */
gullet_status gullet_arc_mean_cutting_power(double kc11_pa,
                                            double chip_exponent,
                                            double feed_per_tooth_m,
                                            double diameter_m,
                                            double radial_depth_m,
                                            double axial_depth_m,
                                            double teeth,
                                            double spindle_speed_rev_per_s,
                                            double cutting_edge_angle_rad,
                                            double *arc_mean_cutting_power_w_out);

/** gullet_arc_mean_cutting_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_arc_mean_cutting_power_array(size_t count,
                                                  const double *kc11_pa,
                                                  const double *chip_exponent,
                                                  const double *feed_per_tooth_m,
                                                  const double *diameter_m,
                                                  const double *radial_depth_m,
                                                  const double *axial_depth_m,
                                                  const double *teeth,
                                                  const double *spindle_speed_rev_per_s,
                                                  const double *cutting_edge_angle_rad,
                                                  double *arc_mean_cutting_power_w_out,
                                                  gullet_status *status_out);

/**
 * Unit power carried from the chip thickness of its table to that of a cut.
 *
 *     u_h = u (h/h_0)^(-x)
 *
 * unit_power_pa: u, unit power of the table [Pa]; unit_power >= 0.
 * table_chip_thickness_m: h_0, chip thickness the table's value belongs to [m];
 *     table_chip_thickness > 0.
 * chip_thickness_m: h, chip thickness of the cut [m]; chip_thickness > 0.
 * exponent: x, exponent of the chip thickness [-]; 0 <= exponent < 1.
 * unit_power_at_chip_pa_out: u_h [Pa].
 * Valid for: chips of about 0.025 to 1.3 mm; the exponent is one value for all materials, so expect
 *     +-30 %.
 * Source: exponent 0.2: fit to the feed factors of Oberg E. et al., Machinery's Handbook, 31st ed.
 *     (their table follows the power -0.193), table seen.
 * Example: unit_power=2 J/mm3; table_chip_thickness=0.32 mm; chip_thickness=0.01 mm => 4 J/mm3 (own
 *     arithmetic: 32^0.2 = 2).
 */
gullet_status gullet_unit_power_at_chip(double unit_power_pa,
                                        double table_chip_thickness_m,
                                        double chip_thickness_m,
                                        double exponent,
                                        double *unit_power_at_chip_pa_out);

/** gullet_unit_power_at_chip over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_power_at_chip_array(size_t count,
                                              const double *unit_power_pa,
                                              const double *table_chip_thickness_m,
                                              const double *chip_thickness_m,
                                              const double *exponent,
                                              double *unit_power_at_chip_pa_out,
                                              gullet_status *status_out);

/**
 * Power of the motor for a power at the cutter.
 *
 *     P_m = P_c/eta
 *
 * cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
 * efficiency: eta, efficiency of the drive [-]; 0 < efficiency <= 1.
 * motor_power_w_out: P_m [W].
 * Valid for: divide once; belts about 0.9, geared heads 0.7 to 0.8 (from memory).
 * Source: definition of efficiency.
 * Example: cutting_power=20.60 hp; efficiency=0.60 => 34.34 hp (P.C. Sharma, A Textbook of
 *     Production Engineering, Ex. 15.1, seen).
 */
gullet_status gullet_motor_power(double cutting_power_w,
                                 double efficiency,
                                 double *motor_power_w_out);

/** gullet_motor_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_motor_power_array(size_t count,
                                       const double *cutting_power_w,
                                       const double *efficiency,
                                       double *motor_power_w_out,
                                       gullet_status *status_out);

/**
 * Torque at the spindle for a power at the cutter.
 *
 *     M_c = P_c/(2 pi n)
 *
 * cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
 * cutting_torque_n_m_out: M_c [N.m].
 * Valid for: mean over a revolution where the cut is interrupted; n in revolutions per second.
 * Source: definition of power.
 * Example: cutting_power=7.5 kW; spindle_speed=100 rpm => 716 N.m (Kalpakjian & Schmid,
 *     Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion file), seen).
 */
gullet_status gullet_cutting_torque(double cutting_power_w,
                                    double spindle_speed_rev_per_s,
                                    double *cutting_torque_n_m_out);

/** gullet_cutting_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_torque_array(size_t count,
                                          const double *cutting_power_w,
                                          const double *spindle_speed_rev_per_s,
                                          double *cutting_torque_n_m_out,
                                          gullet_status *status_out);

/**
 * Power of a torque at a spindle speed.
 *
 *     P_c = 2 pi n M_c
 *
 * torque_n_m: M_c, torque [N.m]; torque >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * power_from_torque_w_out: P_c [W].
 * Valid for: mean over a revolution where the torque is; n in revolutions per second.
 * Source: definition of power.
 * Example: torque=5252.11312203 lbf.ft; spindle_speed=1 rpm => 1 hp (identity: 33000/(2 pi)).
 */
gullet_status gullet_power_from_torque(double torque_n_m,
                                       double spindle_speed_rev_per_s,
                                       double *power_from_torque_w_out);

/** gullet_power_from_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_power_from_torque_array(size_t count,
                                             const double *torque_n_m,
                                             const double *spindle_speed_rev_per_s,
                                             double *power_from_torque_w_out,
                                             gullet_status *status_out);

/**
 * Torque that a drive has to give at a spindle speed.
 *
 *     M_av = P/(2 pi max(n, n_b))
 *
 * rated_power_w: P, rated power at the spindle [W]; rated_power >= 0.
 * base_speed_rev_per_s: n_b, lowest spindle speed at which the rated power is reached [rev/s];
 *     base_speed > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * available_torque_n_m_out: M_av [N.m].
 * Valid for: constant torque up to the base speed, constant power above it; one gear or pulley
 *     step; n in revolutions per second.
 * Source: derived: the usual two-range characteristic of a controlled spindle drive.
 * Example: rated_power=5 hp; base_speed=1750 rpm; spindle_speed=1750 rpm => 15.0060374915 lbf.ft
 *     (identity at the base speed: 33000 hp/(2 pi n)).
 */
gullet_status gullet_available_torque(double rated_power_w,
                                      double base_speed_rev_per_s,
                                      double spindle_speed_rev_per_s,
                                      double *available_torque_n_m_out);

/** gullet_available_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_available_torque_array(size_t count,
                                            const double *rated_power_w,
                                            const double *base_speed_rev_per_s,
                                            const double *spindle_speed_rev_per_s,
                                            double *available_torque_n_m_out,
                                            gullet_status *status_out);

/**
 * Power that a drive has to give at a spindle speed.
 *
 *     P_av = P min(1, n/n_b)
 *
 * rated_power_w: P, rated power at the spindle [W]; rated_power >= 0.
 * base_speed_rev_per_s: n_b, lowest spindle speed at which the rated power is reached [rev/s];
 *     base_speed > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * available_power_w_out: P_av [W].
 * Valid for: constant torque up to the base speed, constant power above it; one gear or pulley
 *     step.
 * Source: derived: the usual two-range characteristic of a controlled spindle drive.
 * Example: rated_power=7.5 kW; base_speed=1500 rpm; spindle_speed=500 rpm => 2.5 kW (identity: a
 *     third of the base speed).
 */
gullet_status gullet_available_power(double rated_power_w,
                                     double base_speed_rev_per_s,
                                     double spindle_speed_rev_per_s,
                                     double *available_power_w_out);

/** gullet_available_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_available_power_array(size_t count,
                                           const double *rated_power_w,
                                           const double *base_speed_rev_per_s,
                                           const double *spindle_speed_rev_per_s,
                                           double *available_power_w_out,
                                           gullet_status *status_out);

/**
 * Energy of a power over a time in the cut.
 *
 *     E = P t
 *
 * power_w: P, power, of the motor or at the cutter [W]; power >= 0.
 * cutting_time_s: t, time in the cut [s]; cutting_time >= 0.
 * cutting_energy_j_out: E [J].
 * Valid for: the power steady over the time, or its mean; idling, feed drives and coolant come on
 *     top.
 * Source: definition of power.
 * Example: power=2 kW; cutting_time=90 s => 0.05 kWh (identity).
 */
gullet_status gullet_cutting_energy(double power_w,
                                    double cutting_time_s,
                                    double *cutting_energy_j_out);

/** gullet_cutting_energy over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_energy_array(size_t count,
                                          const double *power_w,
                                          const double *cutting_time_s,
                                          double *cutting_energy_j_out,
                                          gullet_status *status_out);

/**
 * Cutting speed wanted: the table's value times the practice's factor.
 *
 *     v_w = k_v v_t
 *
 * table_speed_m_per_s: v_t, cutting speed of the table [m/s]; table_speed > 0.
 * speed_factor: k_v, factor of the practice [-]; speed_factor > 0.
 * practice_cutting_speed_m_per_s_out: v_w [m/s].
 * Valid for: factors near 1; the table's value already belongs to the work and cutter material.
 * Source: definition of a factor; the factor itself is the practice's.
 * Example: table_speed=200 ft/min; speed_factor=0.8 => 160 ft/min (own arithmetic).
 */
gullet_status gullet_practice_cutting_speed(double table_speed_m_per_s,
                                            double speed_factor,
                                            double *practice_cutting_speed_m_per_s_out);

/** gullet_practice_cutting_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_practice_cutting_speed_array(size_t count,
                                                  const double *table_speed_m_per_s,
                                                  const double *speed_factor,
                                                  double *practice_cutting_speed_m_per_s_out,
                                                  gullet_status *status_out);

/**
 * Largest chip wanted: the table's feed per tooth times the practice's factor.
 *
 *     h_w = k_f f_t
 *
 * table_feed_per_tooth_m: f_t, feed per tooth of the table, the largest chip of a cut at least half
 *     the cutter wide [m]; table_feed_per_tooth > 0.
 * feed_factor: k_f, factor of the practice [-]; feed_factor > 0.
 * practice_feed_per_tooth_m_out: h_w [m].
 * Valid for: factors near 1; tables give the feed per tooth of cuts wide enough that the largest
 *     chip equals it.
 * Source: definition of a factor; the factor itself is the practice's.
 * Example: table_feed_per_tooth=0.004 in; feed_factor=0.8 => 0.0032 in (own arithmetic).
 */
gullet_status gullet_practice_feed_per_tooth(double table_feed_per_tooth_m,
                                             double feed_factor,
                                             double *practice_feed_per_tooth_m_out);

/** gullet_practice_feed_per_tooth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_practice_feed_per_tooth_array(size_t count,
                                                   const double *table_feed_per_tooth_m,
                                                   const double *feed_factor,
                                                   double *practice_feed_per_tooth_m_out,
                                                   gullet_status *status_out);

/**
 * Largest feed per tooth to which chip thinning may raise the wanted chip.
 *
 *     f_c = c h_w
 *
 * wanted_chip_m: h_w, largest chip wanted [m]; wanted_chip > 0.
 * thinning_cap: c, largest factor the practice allows [-]; thinning_cap >= 1.
 * thinning_cap_feed_m_out: f_c [m].
 * Valid for: keeps thin cuts from feeds that the table or the hand cannot follow.
 * Source: common practice, no source.
 * Example: wanted_chip=0.1 mm; thinning_cap=2 => 0.2 mm (own arithmetic).
 */
gullet_status gullet_thinning_cap_feed(double wanted_chip_m,
                                       double thinning_cap,
                                       double *thinning_cap_feed_m_out);

/** gullet_thinning_cap_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thinning_cap_feed_array(size_t count,
                                             const double *wanted_chip_m,
                                             const double *thinning_cap,
                                             double *thinning_cap_feed_m_out,
                                             gullet_status *status_out);

/**
 * Largest roughing depth of a pass that the practice allows.
 *
 *     a_w = k_a D
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * depth_ratio: k_a, depth over diameter that the practice allows for the work's ISO 513 group [-];
 *     depth_ratio > 0.
 * practice_depth_m_out: a_w [m].
 * Valid for: roughing passes.
 * Source: common practice, no source.
 * Example: diameter=1/2 in; depth_ratio=0.2 => 0.1 in (own arithmetic).
 */
gullet_status gullet_practice_depth(double diameter_m,
                                    double depth_ratio,
                                    double *practice_depth_m_out);

/** gullet_practice_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_practice_depth_array(size_t count,
                                          const double *diameter_m,
                                          const double *depth_ratio,
                                          double *practice_depth_m_out,
                                          gullet_status *status_out);

/**
 * Smallest height of a part that the jaws must grip.
 *
 *     l_g = k_g H
 *
 * part_height_m: H, height of the part along the spindle axis [m]; part_height > 0.
 * smallest_grip: k_g, share of the height that the practice asks for [-]; 0 <= smallest_grip <= 1.
 * grip_for_height_m_out: l_g [m].
 * Valid for: a block in a vise, cut from above.
 * Source: common practice, no source.
 * Example: part_height=30 mm; smallest_grip=0.3 => 9 mm (own arithmetic).
 */
gullet_status gullet_grip_for_height(double part_height_m,
                                     double smallest_grip,
                                     double *grip_for_height_m_out);

/** gullet_grip_for_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_grip_for_height_array(size_t count,
                                           const double *part_height_m,
                                           const double *smallest_grip,
                                           double *grip_for_height_m_out,
                                           gullet_status *status_out);

/**
 * Longest stick-out of a cutter that the practice allows.
 *
 *     l_c = k_l D
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * stick_out_ratio: k_l, stick-out over diameter that the practice allows [-]; stick_out_ratio > 0.
 * stick_out_cap_m_out: l_c [m].
 * Valid for: end mills in a rigid holder.
 * Source: common practice, no source.
 * Example: diameter=10 mm; stick_out_ratio=4 => 40 mm (own arithmetic).
 */
gullet_status gullet_stick_out_cap(double diameter_m,
                                   double stick_out_ratio,
                                   double *stick_out_cap_m_out);

/** gullet_stick_out_cap over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stick_out_cap_array(size_t count,
                                         const double *diameter_m,
                                         const double *stick_out_ratio,
                                         double *stick_out_cap_m_out,
                                         gullet_status *status_out);

/**
 * Power at the cutter that a practice uses of a motor's rating.
 *
 *     P_u = k_p eta P_m
 *
 * rated_motor_power_w: P_m, rated power of the spindle motor [W]; rated_motor_power >= 0.
 * efficiency: eta, efficiency of the drive [-]; 0 < efficiency <= 1.
 * power_share: k_p, share of the power that the practice uses [-]; 0 < power_share <= 1.
 * usable_power_w_out: P_u [W].
 * Valid for: continuous rating of the motor; above the base speed or with a belt step.
 * Source: definition of efficiency; the share is the practice's.
 * Example: rated_motor_power=1.5 kW; efficiency=80 %; power_share=0.5 => 0.6 kW (own arithmetic).
 */
gullet_status gullet_usable_power(double rated_motor_power_w,
                                  double efficiency,
                                  double power_share,
                                  double *usable_power_w_out);

/** gullet_usable_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_usable_power_array(size_t count,
                                        const double *rated_motor_power_w,
                                        const double *efficiency,
                                        const double *power_share,
                                        double *usable_power_w_out,
                                        gullet_status *status_out);

/**
 * Feed per tooth at which a load that follows the power law of the chip just meets its limit.
 *
 *     f_q = f_z q^(-1/(1 - m_c))
 *
 * feed_per_tooth_m: f_z, feed per tooth at which the load was found [m]; feed_per_tooth > 0.
 * load_share: q, load over its limit at that feed [-]; load_share > 0.
 * chip_exponent: m_c, exponent m_c of the specific cutting force [-]; 0 <= chip_exponent < 1.
 * feed_for_load_share_m_out: f_q [m].
 * Valid for: loads in proportion to k_c h, that is to h^(1 - m_c): force, torque, power,
 *     deflection, clamping force at one depth and speed.
 * Source: derived from k_c = k_c11 h^(-m_c): the load grows with f_z^(1 - m_c).
 * Example: feed_per_tooth=0.1 mm; load_share=2; chip_exponent=0.5 => 0.025 mm (own arithmetic:
 *     2^(-2)).
 */
gullet_status gullet_feed_for_load_share(double feed_per_tooth_m,
                                         double load_share,
                                         double chip_exponent,
                                         double *feed_for_load_share_m_out);

/** gullet_feed_for_load_share over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_load_share_array(size_t count,
                                               const double *feed_per_tooth_m,
                                               const double *load_share,
                                               const double *chip_exponent,
                                               double *feed_for_load_share_m_out,
                                               gullet_status *status_out);

/**
 * Feed per revolution whose feed marks on a milled wall have a mean roughness.
 *
 *     f_r = sqrt(9 sqrt(3) D R_a)
 *
 * mean_roughness_m: R_a, mean roughness wanted [m]; 0 <= mean_roughness <= diameter/(9*sqrt(3)).
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * feed_for_wall_roughness_m_out: f_r [m].
 * Valid for: parabolic feed marks of one tooth a revolution: run-out makes one tooth leave the
 *     mark.
 * Source: derived: inverse of h = f^2/(4 D) and R_a = 4 h/(9 sqrt(3)).
 * Example: mean_roughness=0.5345835825 um; diameter=12 mm => 0.31622776 mm (own arithmetic: h =
 *     0.1/48 mm, so f^2 = 0.1 mm2).
 */
gullet_status gullet_feed_for_wall_roughness(double mean_roughness_m,
                                             double diameter_m,
                                             double *feed_for_wall_roughness_m_out);

/** gullet_feed_for_wall_roughness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_wall_roughness_array(size_t count,
                                                   const double *mean_roughness_m,
                                                   const double *diameter_m,
                                                   double *feed_for_wall_roughness_m_out,
                                                   gullet_status *status_out);

/**
 * Travel of a pass: the cut with approach, overtravel and clearance at both ends.
 *
 *     s = l + l_a + l_u + 2 l_c
 *
 * cut_length_m: l, length of the cut [m]; cut_length > 0.
 * approach_m: l_a, travel from first contact to full width [m]; approach >= 0.
 * overtravel_m: l_u, travel past the end until the cutter is clear of the surface [m]; overtravel
 *     >= 0.
 * clearance_m: l_c, clearance at each end [m]; clearance >= 0.
 * cut_travel_m_out: s [m].
 * Valid for: one straight pass.
 * Source: definition; clearance is the practice's.
 * Example: cut_length=100 mm; approach=14 mm; overtravel=14 mm; clearance=0 mm => 128 mm (own
 *     arithmetic).
 */
gullet_status gullet_cut_travel(double cut_length_m,
                                double approach_m,
                                double overtravel_m,
                                double clearance_m,
                                double *cut_travel_m_out);

/** gullet_cut_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cut_travel_array(size_t count,
                                      const double *cut_length_m,
                                      const double *approach_m,
                                      const double *overtravel_m,
                                      const double *clearance_m,
                                      double *cut_travel_m_out,
                                      gullet_status *status_out);

/**
 * Axial depth at which a load in proportion to it just meets its limit.
 *
 *     a_q = a_p/q
 *
 * axial_depth_m: a_p, axial depth at which the load was found [m]; axial_depth > 0.
 * load_share: q, load over its limit at that depth [-]; load_share > 0.
 * depth_for_load_share_m_out: a_q [m].
 * Valid for: force, torque, power, deflection and clamping force at one speed, feed and radial
 *     depth; square-ended cutters.
 * Source: derived: the width of the chip is in proportion to a_p.
 * Example: axial_depth=10 mm; load_share=1.25 => 8 mm (own arithmetic).
 */
gullet_status gullet_depth_for_load_share(double axial_depth_m,
                                          double load_share,
                                          double *depth_for_load_share_m_out);

/** gullet_depth_for_load_share over arrays of `count` rows; see "Arrays". */
gullet_status gullet_depth_for_load_share_array(size_t count,
                                                const double *axial_depth_m,
                                                const double *load_share,
                                                double *depth_for_load_share_m_out,
                                                gullet_status *status_out);

/**
 * Diameter of the solid round bar that bends like the fluted length of a cutter.
 *
 *     d_e = k D
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * factor: k, equivalent diameter as a share of the cutter diameter [-]; 0 < factor <= 1.
 * fluted_equivalent_diameter_m_out: d_e [m].
 * Valid for: end mills of common flute shapes; the second moment of area falls with the fourth
 *     power, to 41 % at 0.8; stubbier cores take a larger factor.
 * Source: factor 0.8: metal-cutting textbook companion file, seen; the range of other cores: common
 *     practice, no source.
 * Example: diameter=0.5 in => 10.16 mm (identity: 0.8 x 12.7 mm).
 */
gullet_status gullet_fluted_equivalent_diameter(double diameter_m,
                                                double factor,
                                                double *fluted_equivalent_diameter_m_out);

/** gullet_fluted_equivalent_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_fluted_equivalent_diameter_array(size_t count,
                                                      const double *diameter_m,
                                                      const double *factor,
                                                      double *fluted_equivalent_diameter_m_out,
                                                      gullet_status *status_out);

/**
 * Deflection of the tip of a round bar under a force at its tip.
 *
 *     delta = F L^3/(3 E I); I = pi d^4/64
 *
 * force_n: F, force across the axis, at the tip; its sign is kept [N]; force: any finite value.
 * overhang_m: L, overhang from the holder [m]; overhang >= 0.
 * diameter_m: d, diameter; for a fluted length the equivalent one [m]; diameter > 0.
 * modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
 * cantilever_deflection_m_out: delta [m].
 * Valid for: slender elastic bar of one diameter in a rigid holder; a real holder and spindle add
 *     to it, often as much again.
 * Source: beam theory; example: E. Isakov, Boring: calculating deflection (trade magazine article,
 *     July 2019), seen.
 * Example: force=207.8 lbf; overhang=4 in; diameter=1 in; modulus=30e6 psi => 0.003 in (E. Isakov,
 *     Boring: calculating deflection (trade magazine article, July 2019), seen).
 */
gullet_status gullet_cantilever_deflection(double force_n,
                                           double overhang_m,
                                           double diameter_m,
                                           double modulus_pa,
                                           double *cantilever_deflection_m_out);

/** gullet_cantilever_deflection over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cantilever_deflection_array(size_t count,
                                                 const double *force_n,
                                                 const double *overhang_m,
                                                 const double *diameter_m,
                                                 const double *modulus_pa,
                                                 double *cantilever_deflection_m_out,
                                                 gullet_status *status_out);

/**
 * Deflection of the tip of a round bar under a force that acts inboard of the tip.
 *
 *     delta = F a^2 (3 L - a)/(6 E I); I = pi d^4/64
 *
 * force_n: F, force across the axis; its sign is kept [N]; force: any finite value.
 * overhang_m: L, overhang from the holder [m]; overhang >= 0.
 * load_distance_m: a, distance of the force from the holder [m]; 0 <= load_distance <= overhang.
 * diameter_m: d, diameter; for a fluted length the equivalent one [m]; diameter > 0.
 * modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
 * cantilever_deflection_inboard_m_out: delta [m].
 * Valid for: slender elastic bar of one diameter in a rigid holder; a side cut of depth a_p loads
 *     the bar about a_p/2 above the tip.
 * Source: beam theory.
 * Example: force=100 N; overhang=40 mm; load_distance=20 mm; diameter=10 mm; modulus=200 GPa =>
 *     0.00679061091 mm (identity: 4e6/(6 x 200000 x 490.873852) mm).
 */
gullet_status gullet_cantilever_deflection_inboard(double force_n,
                                                   double overhang_m,
                                                   double load_distance_m,
                                                   double diameter_m,
                                                   double modulus_pa,
                                                   double *cantilever_deflection_inboard_m_out);

/** gullet_cantilever_deflection_inboard over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cantilever_deflection_inboard_array(size_t count,
                                                         const double *force_n,
                                                         const double *overhang_m,
                                                         const double *load_distance_m,
                                                         const double *diameter_m,
                                                         const double *modulus_pa,
                                                         double *cantilever_deflection_inboard_m_out,
                                                         gullet_status *status_out);

/**
 * Deflection of the tip of a cutter whose flutes are weaker than its shank, under a force at the
 *     tip.
 *
 *     delta = F/(3 E) (L_f^3/I_f + (L^3 - L_f^3)/I_s); I_f = pi d_f^4/64; I_s = pi d_s^4/64
 *
 * force_n: F, force across the axis, at the tip; its sign is kept [N]; force: any finite value.
 * overhang_m: L, overhang from the holder [m]; overhang >= 0.
 * flute_length_m: L_f, fluted length, from the tip [m]; 0 <= flute_length <= overhang.
 * flute_equivalent_diameter_m: d_f, equivalent diameter of the fluted length, not the nominal one
 *     [m]; flute_equivalent_diameter > 0.
 * shank_diameter_m: d_s, shank diameter [m]; shank_diameter > 0.
 * modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
 * stepped_cutter_deflection_m_out: delta [m].
 * Valid for: slender elastic bar of two diameters in a rigid holder; the fluted length as
 *     fluted_equivalent_diameter.
 * Source: beam theory, derived: unit-load integral over the two lengths.
 * Example: force=150 N; overhang=40 mm; flute_length=22 mm; flute_equivalent_diameter=8 mm;
 *     shank_diameter=10 mm; modulus=600000 MPa => 0.0134705508 mm (identity).
 */
gullet_status gullet_stepped_cutter_deflection(double force_n,
                                               double overhang_m,
                                               double flute_length_m,
                                               double flute_equivalent_diameter_m,
                                               double shank_diameter_m,
                                               double modulus_pa,
                                               double *stepped_cutter_deflection_m_out);

/** gullet_stepped_cutter_deflection over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stepped_cutter_deflection_array(size_t count,
                                                     const double *force_n,
                                                     const double *overhang_m,
                                                     const double *flute_length_m,
                                                     const double *flute_equivalent_diameter_m,
                                                     const double *shank_diameter_m,
                                                     const double *modulus_pa,
                                                     double *stepped_cutter_deflection_m_out,
                                                     gullet_status *status_out);

/**
 * Deflection of round work between centres under a force at its middle.
 *
 *     delta = F L^3/(48 E I); I = pi d^4/64
 *
 * force_n: F, force across the axis, at the middle; its sign is kept [N]; force: any finite value.
 * length_m: L, length between the centres [m]; length >= 0.
 * diameter_m: d, diameter of the work [m]; diameter > 0.
 * modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
 * work_deflection_between_centres_m_out: delta [m].
 * Valid for: slender elastic bar of one diameter, simply supported at both ends; centres and
 *     tailstock yield as well.
 * Source: beam theory.
 * Example: force=48 N; length=1 m; diameter=20 mm; modulus=200 GPa => 0.636619772368 mm (identity:
 *     64/(pi 0.02^4 x 2e11) m).
 */
gullet_status gullet_work_deflection_between_centres(double force_n,
                                                     double length_m,
                                                     double diameter_m,
                                                     double modulus_pa,
                                                     double *work_deflection_between_centres_m_out);

/** gullet_work_deflection_between_centres over arrays of `count` rows; see "Arrays". */
gullet_status gullet_work_deflection_between_centres_array(size_t count,
                                                           const double *force_n,
                                                           const double *length_m,
                                                           const double *diameter_m,
                                                           const double *modulus_pa,
                                                           double *work_deflection_between_centres_m_out,
                                                           gullet_status *status_out);

/**
 * Deflection of round work held in a chuck and by a centre under a force at its middle.
 *
 *     delta = 7 F L^3/(768 E I); I = pi d^4/64
 *
 * force_n: F, force across the axis, at the middle; its sign is kept [N]; force: any finite value.
 * length_m: L, length from the jaws to the centre [m]; length >= 0.
 * diameter_m: d, diameter of the work [m]; diameter > 0.
 * modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
 * work_deflection_chuck_and_centre_m_out: delta [m].
 * Valid for: slender elastic bar of one diameter, held fast by the jaws and simply supported by the
 *     centre; near the largest over all places of the force; jaws that grip short hold less.
 * Source: beam theory.
 * Example: force=768 N; length=1 m; diameter=20 mm; modulus=200 GPa => 4.45633840657 mm (identity:
 *     7 x 64/(pi 0.02^4 x 2e11) m).
 */
gullet_status gullet_work_deflection_chuck_and_centre(double force_n,
                                                      double length_m,
                                                      double diameter_m,
                                                      double modulus_pa,
                                                      double *work_deflection_chuck_and_centre_m_out);

/** gullet_work_deflection_chuck_and_centre over arrays of `count` rows; see "Arrays". */
gullet_status gullet_work_deflection_chuck_and_centre_array(size_t count,
                                                            const double *force_n,
                                                            const double *length_m,
                                                            const double *diameter_m,
                                                            const double *modulus_pa,
                                                            double *work_deflection_chuck_and_centre_m_out,
                                                            gullet_status *status_out);

/**
 * Ideal peak-to-valley height that a nose radius leaves in turning.
 *
 *     R_t = f^2/(8 r)
 *
 * feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * turning_peak_to_valley_m_out: R_t [m].
 * Valid for: the nose alone cuts the profile; parabola for the exact r - sqrt(r^2 - f^2/4): 1.6 %
 *     low at f = r/2, 6.7 % low at f = r; real surfaces are rougher (built-up edge, wear,
 *     vibration).
 * Source: geometry of the feed marks, derived; textbooks of metal cutting from memory.
 * Example: feed_per_rev=0.2 mm; nose_radius=0.8 mm => 6.25 um (identity: 0.04/6.4 mm).
 */
gullet_status gullet_turning_peak_to_valley(double feed_per_rev_m,
                                            double nose_radius_m,
                                            double *turning_peak_to_valley_m_out);

/** gullet_turning_peak_to_valley over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_peak_to_valley_array(size_t count,
                                                  const double *feed_per_rev_m,
                                                  const double *nose_radius_m,
                                                  double *turning_peak_to_valley_m_out,
                                                  gullet_status *status_out);

/**
 * Ideal arithmetic mean roughness that a nose radius leaves in turning.
 *
 *     R_a = f^2/(18 sqrt(3) r)
 *
 * feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * turning_mean_roughness_m_out: R_a [m].
 * Valid for: arithmetic mean deviation of the parabolic profile, the nose alone cutting; the shop
 *     form f^2/(32 r) is 2.6 % lower; real roughness is 1.5 to 3 times the ideal (common practice).
 * Source: derived: mean deviation of a parabola; constant 0.0321 in a metal-cutting textbook
 *     companion file, seen.
 * Example: feed_per_rev=0.2 mm; nose_radius=0.8 mm => 1.60375075 um (identity: 0.0320750 x 0.04/0.8
 *     mm).
 */
gullet_status gullet_turning_mean_roughness(double feed_per_rev_m,
                                            double nose_radius_m,
                                            double *turning_mean_roughness_m_out);

/** gullet_turning_mean_roughness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_mean_roughness_array(size_t count,
                                                  const double *feed_per_rev_m,
                                                  const double *nose_radius_m,
                                                  double *turning_mean_roughness_m_out,
                                                  gullet_status *status_out);

/**
 * Nose radius that leaves a wanted ideal mean roughness at a feed in turning.
 *
 *     r = f^2/(18 sqrt(3) R_a)
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 < mean_roughness <=
 *     feed_per_rev/(9*sqrt(3)).
 * nose_radius_for_mean_roughness_m_out: r [m].
 * Valid for: as turning_mean_roughness; the range of the roughness keeps f <= 2 r.
 * Source: derived: inverse of turning_mean_roughness.
 * Example: feed_per_rev=0.1 mm; mean_roughness=0.001 mm => 0.32075015 mm (identity: inputs and the
 *     constant 0.0321 of a metal-cutting textbook companion file).
 */
gullet_status gullet_nose_radius_for_mean_roughness(double feed_per_rev_m,
                                                    double mean_roughness_m,
                                                    double *nose_radius_for_mean_roughness_m_out);

/** gullet_nose_radius_for_mean_roughness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_nose_radius_for_mean_roughness_array(size_t count,
                                                          const double *feed_per_rev_m,
                                                          const double *mean_roughness_m,
                                                          double *nose_radius_for_mean_roughness_m_out,
                                                          gullet_status *status_out);

/**
 * Feed that leaves a wanted ideal mean roughness with a nose radius in turning.
 *
 *     f = sqrt(18 sqrt(3) r R_a)
 *
 * mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 <= mean_roughness <=
 *     2*nose_radius/(9*sqrt(3)).
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * feed_for_mean_roughness_m_out: f [m].
 * Valid for: as turning_mean_roughness; the range of the roughness keeps f <= 2 r.
 * Source: derived: inverse of turning_mean_roughness.
 * Example: mean_roughness=1.6037507477489606 um; nose_radius=0.8 mm => 0.2 mm (identity: inverse of
 *     turning_mean_roughness).
 */
gullet_status gullet_feed_for_mean_roughness(double mean_roughness_m,
                                             double nose_radius_m,
                                             double *feed_for_mean_roughness_m_out);

/** gullet_feed_for_mean_roughness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_mean_roughness_array(size_t count,
                                                   const double *mean_roughness_m,
                                                   const double *nose_radius_m,
                                                   double *feed_for_mean_roughness_m_out,
                                                   gullet_status *status_out);

/**
 * Mean roughness to expect in turning: the shop form of the ideal one times a ratio of real to
 *     ideal.
 *
 *     R_a = K f^2/(32 r)
 *
 * feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * roughness_ratio: K, real over ideal roughness [-]; roughness_ratio >= 1.
 * turning_roughness_estimate_m_out: R_a [m].
 * Valid for: a quarter of the peak-to-valley height is taken for the mean deviation, 2.6 % below
 *     turning_mean_roughness; ratio 1 at high speeds, 1 to 2.5 below about 100 m/min in ductile
 *     metals (built-up edge).
 * Source: form and ratio: Groover M.P., Fundamentals of Modern Manufacturing, chapter on surface
 *     finish, from memory.
 * Example: feed_per_rev=0.25 mm; nose_radius=1.2 mm; roughness_ratio=1.25 => 2.0 um (Groover M.P.,
 *     Fundamentals of Modern Manufacturing, 4th ed., Ex. 24.1, from memory).
 */
gullet_status gullet_turning_roughness_estimate(double feed_per_rev_m,
                                                double nose_radius_m,
                                                double roughness_ratio,
                                                double *turning_roughness_estimate_m_out);

/** gullet_turning_roughness_estimate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_roughness_estimate_array(size_t count,
                                                      const double *feed_per_rev_m,
                                                      const double *nose_radius_m,
                                                      const double *roughness_ratio,
                                                      double *turning_roughness_estimate_m_out,
                                                      gullet_status *status_out);

/**
 * Feed that leaves a wanted mean roughness in turning, with a ratio of real to ideal roughness.
 *
 *     f = sqrt(32 r R_a/K)
 *
 * mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 <= mean_roughness <=
 *     roughness_ratio*nose_radius/8.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * roughness_ratio: K, real over ideal roughness [-]; roughness_ratio >= 1.
 * feed_for_roughness_estimate_m_out: f [m].
 * Valid for: as turning_roughness_estimate; the range of the roughness keeps f <= 2 r.
 * Source: derived: inverse of turning_roughness_estimate.
 * Example: mean_roughness=1.6 um; nose_radius=0.75 mm => 0.196 mm (Groover M.P., Fundamentals of
 *     Modern Manufacturing, 4th ed., problem on the feed for a finish, from memory).
 */
gullet_status gullet_feed_for_roughness_estimate(double mean_roughness_m,
                                                 double nose_radius_m,
                                                 double roughness_ratio,
                                                 double *feed_for_roughness_estimate_m_out);

/** gullet_feed_for_roughness_estimate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_roughness_estimate_array(size_t count,
                                                       const double *mean_roughness_m,
                                                       const double *nose_radius_m,
                                                       const double *roughness_ratio,
                                                       double *feed_for_roughness_estimate_m_out,
                                                       gullet_status *status_out);

/**
 * Feed that leaves a wanted ideal peak-to-valley height with a nose radius in turning.
 *
 *     f = sqrt(8 r R_t)
 *
 * peak_to_valley_m: R_t, wanted peak-to-valley height [m]; 0 <= peak_to_valley <= nose_radius/2.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * feed_for_peak_to_valley_m_out: f [m].
 * Valid for: as turning_peak_to_valley; the range of the height keeps f <= 2 r.
 * Source: derived: inverse of turning_peak_to_valley.
 * Example: peak_to_valley=10 um; nose_radius=0.5 mm => 0.2 mm (identity: sqrt(8 x 0.5 x 0.01) mm).
 */
gullet_status gullet_feed_for_peak_to_valley(double peak_to_valley_m,
                                             double nose_radius_m,
                                             double *feed_for_peak_to_valley_m_out);

/** gullet_feed_for_peak_to_valley over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_for_peak_to_valley_array(size_t count,
                                                   const double *peak_to_valley_m,
                                                   const double *nose_radius_m,
                                                   double *feed_for_peak_to_valley_m_out,
                                                   gullet_status *status_out);

/**
 * Ideal peak-to-valley height that a tool without nose radius leaves in turning.
 *
 *     R_t = f/(tan(C_s) + 1/tan(C_e))
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * side_cutting_edge_angle_rad: C_s, side cutting-edge angle [rad]; 0 deg <= side_cutting_edge_angle
 *     < 90 deg.
 * end_cutting_edge_angle_rad: C_e, end cutting-edge angle [rad]; 0 deg < end_cutting_edge_angle <
 *     90 deg.
 * sharp_tool_peak_to_valley_m_out: R_t [m].
 * Valid for: sharp corner, no nose radius; both edges straight over the feed mark.
 * Source: geometry of the ridge; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.24
 *     (the form, seen).
 * Example: feed_per_rev=0.1 mm; side_cutting_edge_angle=45 deg; end_cutting_edge_angle=45 deg =>
 *     0.05 mm (identity: right-angled ridge).
 */
gullet_status gullet_sharp_tool_peak_to_valley(double feed_per_rev_m,
                                               double side_cutting_edge_angle_rad,
                                               double end_cutting_edge_angle_rad,
                                               double *sharp_tool_peak_to_valley_m_out);

/** gullet_sharp_tool_peak_to_valley over arrays of `count` rows; see "Arrays". */
gullet_status gullet_sharp_tool_peak_to_valley_array(size_t count,
                                                     const double *feed_per_rev_m,
                                                     const double *side_cutting_edge_angle_rad,
                                                     const double *end_cutting_edge_angle_rad,
                                                     double *sharp_tool_peak_to_valley_m_out,
                                                     gullet_status *status_out);

/**
 * Height of the feed marks that peripheral milling leaves.
 *
 *     h = f_z^2/(4 D)
 *
 * feed_per_tooth_m: f_z, feed per tooth; with run-out the feed per revolution [m]; 0 <=
 *     feed_per_tooth <= diameter.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * feed_mark_height_m_out: h [m].
 * Valid for: circular tooth path, parabola for the arc; every tooth cuts: with run-out take the
 *     feed per revolution.
 * Source: geometry of the feed marks; example: A. Ghosh, A.K. Mallik, Manufacturing Science, Ex.
 *     4.25 p.262, seen.
 * Example: feed_per_tooth=0.0347222222222222 mm; diameter=100 mm => 3e-06 mm (A. Ghosh, A.K.
 *     Mallik, Manufacturing Science, Ex. 4.25 p.262, seen; f_z = 25/(60 x 12) mm).
 */
gullet_status gullet_feed_mark_height(double feed_per_tooth_m,
                                      double diameter_m,
                                      double *feed_mark_height_m_out);

/** gullet_feed_mark_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_mark_height_array(size_t count,
                                            const double *feed_per_tooth_m,
                                            const double *diameter_m,
                                            double *feed_mark_height_m_out,
                                            gullet_status *status_out);

/**
 * Height of the feed marks that up (conventional) peripheral milling leaves.
 *
 *     h = f_z^2/(8 (D/2 + f_z z/pi))
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; 0 <= feed_per_tooth <= diameter.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * teeth: z, number of teeth [-]; teeth >= 1.
 * feed_mark_height_up_m_out: h [m].
 * Valid for: trochoidal tooth path, up milling, no run-out.
 * Source: M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the
 *     finished wall.
 * Example: feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4 => 0.204004229 um (identity: 0.01/(8 (6 +
 *     0.4/pi)) mm).
 */
gullet_status gullet_feed_mark_height_up(double feed_per_tooth_m,
                                         double diameter_m,
                                         double teeth,
                                         double *feed_mark_height_up_m_out);

/** gullet_feed_mark_height_up over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_mark_height_up_array(size_t count,
                                               const double *feed_per_tooth_m,
                                               const double *diameter_m,
                                               const double *teeth,
                                               double *feed_mark_height_up_m_out,
                                               gullet_status *status_out);

/**
 * Height of the feed marks that down (climb) peripheral milling leaves.
 *
 *     h = f_z^2/(8 (D/2 - f_z z/pi))
 *
 * feed_per_tooth_m: f_z, feed per tooth [m]; 0 <= feed_per_tooth <= diameter.
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * teeth: z, number of teeth [-]; teeth >= 1.
 * feed_per_tooth*teeth/pi < diameter/2.
 * feed_mark_height_down_m_out: h [m].
 * Valid for: trochoidal tooth path, down milling, no run-out.
 * Source: M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the
 *     finished wall.
 * Example: feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4 => 0.212850154 um (identity: 0.01/(8 (6 -
 *     0.4/pi)) mm).
 */
gullet_status gullet_feed_mark_height_down(double feed_per_tooth_m,
                                           double diameter_m,
                                           double teeth,
                                           double *feed_mark_height_down_m_out);

/** gullet_feed_mark_height_down over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_mark_height_down_array(size_t count,
                                                 const double *feed_per_tooth_m,
                                                 const double *diameter_m,
                                                 const double *teeth,
                                                 double *feed_mark_height_down_m_out,
                                                 gullet_status *status_out);

/**
 * Arithmetic mean roughness of a profile of feed marks.
 *
 *     R_a = 4 h/(9 sqrt(3))
 *
 * feed_mark_height_m: h, height of the feed marks [m]; feed_mark_height >= 0.
 * feed_mark_mean_roughness_m_out: R_a [m].
 * Valid for: parabolic profile.
 * Source: derived: mean deviation of a parabola.
 * Example: feed_mark_height=9 um => 2.30940107676 um (identity: 4/sqrt(3) um).
 */
gullet_status gullet_feed_mark_mean_roughness(double feed_mark_height_m,
                                              double *feed_mark_mean_roughness_m_out);

/** gullet_feed_mark_mean_roughness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_mark_mean_roughness_array(size_t count,
                                                    const double *feed_mark_height_m,
                                                    double *feed_mark_mean_roughness_m_out,
                                                    gullet_status *status_out);

/**
 * Height of the scallops that a ball-nosed cutter leaves between two passes over a flat surface.
 *
 *     h = (D - sqrt(D^2 - s^2))/2
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * stepover_m: s, distance between two passes [m]; 0 <= stepover <= ball_diameter.
 * scallop_height_m_out: h [m].
 * Valid for: flat surface; on a wall or slope the stepover is measured along the surface; feed
 *     marks add to it.
 * Source: derived: circle and chord.
 * Example: ball_diameter=10 mm; stepover=0.5 mm => 6.25391114 um (identity).
 */
gullet_status gullet_scallop_height(double ball_diameter_m,
                                    double stepover_m,
                                    double *scallop_height_m_out);

/** gullet_scallop_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_scallop_height_array(size_t count,
                                          const double *ball_diameter_m,
                                          const double *stepover_m,
                                          double *scallop_height_m_out,
                                          gullet_status *status_out);

/**
 * Stepover of a ball-nosed cutter that leaves a wanted scallop height on a flat surface.
 *
 *     s = 2 sqrt(h (D - h))
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
 * stepover_for_scallop_m_out: s [m].
 * Valid for: flat surface; on a wall or slope the stepover is measured along the surface.
 * Source: derived: inverse of scallop_height.
 * Example: ball_diameter=10 mm; scallop_height=0.005 mm => 0.447101778 mm (identity: 2 sqrt(0.005 x
 *     9.995) mm).
 */
gullet_status gullet_stepover_for_scallop(double ball_diameter_m,
                                          double scallop_height_m,
                                          double *stepover_for_scallop_m_out);

/** gullet_stepover_for_scallop over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stepover_for_scallop_array(size_t count,
                                                const double *ball_diameter_m,
                                                const double *scallop_height_m,
                                                double *stepover_for_scallop_m_out,
                                                gullet_status *status_out);

/**
 * Diameter of the circle that cuts at the top of the engaged edge of a tilted cutter with a corner
 *     radius.
 *
 *     D_eff = D - 2 r + 2 r sin(min(beta + theta, 90 deg)); theta = acos(1 - min(a_p/r, 1))
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
 * axial_depth_m: a_p, depth of cut along the surface normal [m]; axial_depth >= 0.
 * tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
 *     tilt_angle <= 90 deg.
 * tilted_corner_effective_diameter_m_out: D_eff [m].
 * Valid for: the full diameter once the depth reaches the corner radius or the angle reaches 90
 *     deg; a ball nose at r = D/2.
 * Source: derived: circle of latitude on a torus; without tilt it is
 *     corner_radius_effective_diameter.
 * Example: diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm; tilt_angle=15 deg =>
 *     11.332056657 mm (identity).
 */
gullet_status gullet_tilted_corner_effective_diameter(double diameter_m,
                                                      double corner_radius_m,
                                                      double axial_depth_m,
                                                      double tilt_angle_rad,
                                                      double *tilted_corner_effective_diameter_m_out);

/** gullet_tilted_corner_effective_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tilted_corner_effective_diameter_array(size_t count,
                                                            const double *diameter_m,
                                                            const double *corner_radius_m,
                                                            const double *axial_depth_m,
                                                            const double *tilt_angle_rad,
                                                            double *tilted_corner_effective_diameter_m_out,
                                                            gullet_status *status_out);

/**
 * Mean chip thickness along the engaged arc of a tilted ball or corner radius over that of an edge
 *     along the axis.
 *
 *     r_m = (2 sin((beta + gamma)/2) sin((gamma - beta)/2) + max(beta + psi - pi/2, 0))/psi; psi =
 *         acos(1 - 2 a_p/d); gamma = min(beta + psi, pi/2)
 *
 * edge_diameter_m: d, diameter of the ball; twice the corner radius [m]; edge_diameter > 0.
 * axial_depth_m: a_p, depth of cut along the surface normal [m]; 0 < axial_depth <=
 *     edge_diameter/2.
 * tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
 *     tilt_angle <= 90 deg.
 * tilted_edge_mean_thickness_ratio_out: r_m [-].
 * Valid for: at phi = 90 deg, feed much smaller than the edge's diameter; beyond 90 deg the shank's
 *     cylinder cuts; angles in radians.
 * Source: derived: integral of the sine of the cutting-edge angle from beta to beta + psi; without
 *     tilt it is round_edge_mean_thickness_ratio.
 * Example: edge_diameter=12 mm; axial_depth=3 mm; tilt_angle=30 deg => 0.826993343133 (identity:
 *     (cos 30 deg - cos 90 deg)/(pi/3)).
 */
gullet_status gullet_tilted_edge_mean_thickness_ratio(double edge_diameter_m,
                                                      double axial_depth_m,
                                                      double tilt_angle_rad,
                                                      double *tilted_edge_mean_thickness_ratio_out);

/** gullet_tilted_edge_mean_thickness_ratio over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tilted_edge_mean_thickness_ratio_array(size_t count,
                                                            const double *edge_diameter_m,
                                                            const double *axial_depth_m,
                                                            const double *tilt_angle_rad,
                                                            double *tilted_edge_mean_thickness_ratio_out,
                                                            gullet_status *status_out);

/**
 * Diameter of the circle on which the point that leaves the finished surface runs.
 *
 *     D_k = D - 2 r + 2 r sin(beta)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius; of a ball nose half the diameter [m]; 0 <= corner_radius <=
 *     diameter/2.
 * tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
 *     tilt_angle <= 90 deg.
 * contact_diameter_m_out: D_k [m].
 * Valid for: 0 for a ball nose whose axis is the normal: its centre stands still and rubs; a tilt
 *     of 10 to 15 deg avoids that (common practice).
 * Source: derived: circle of latitude on a torus.
 * Example: diameter=12 mm; corner_radius=6 mm; tilt_angle=30 deg => 6 mm (identity: half the ball's
 *     diameter).
 */
gullet_status gullet_contact_diameter(double diameter_m,
                                      double corner_radius_m,
                                      double tilt_angle_rad,
                                      double *contact_diameter_m_out);

/** gullet_contact_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_contact_diameter_array(size_t count,
                                            const double *diameter_m,
                                            const double *corner_radius_m,
                                            const double *tilt_angle_rad,
                                            double *contact_diameter_m_out,
                                            gullet_status *status_out);

/**
 * Radius of the ball that leaves the same scallops as a cutter with a corner radius tilted along
 *     its path.
 *
 *     R_s = r + (D/2 - r)/sin(beta)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
 * tilt_angle_rad: beta, tilt between the tool axis and the surface normal, in the plane of the path
 *     [rad]; 0 deg < tilt_angle <= 90 deg.
 * tilted_corner_scallop_radius_m_out: R_s [m].
 * Valid for: small scallops; a large radius at a small tilt: the corner must not gouge a hollow
 *     surface.
 * Source: derived: second radius of curvature of a torus, the length of its normal to the axis.
 * Example: diameter=12 mm; corner_radius=2 mm; tilt_angle=30 deg => 10 mm (identity: 2 + 4/0.5 mm).
 */
gullet_status gullet_tilted_corner_scallop_radius(double diameter_m,
                                                  double corner_radius_m,
                                                  double tilt_angle_rad,
                                                  double *tilted_corner_scallop_radius_m_out);

/** gullet_tilted_corner_scallop_radius over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tilted_corner_scallop_radius_array(size_t count,
                                                        const double *diameter_m,
                                                        const double *corner_radius_m,
                                                        const double *tilt_angle_rad,
                                                        double *tilted_corner_scallop_radius_m_out,
                                                        gullet_status *status_out);

/**
 * Height of the ridges that a cutter with a corner radius leaves between two passes over a flat
 *     surface.
 *
 *     h = w^2/(4 r + 2 sqrt(4 r^2 - w^2)); w = max(s - (D - 2 r), 0 mm)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
 * stepover_m: s, distance between two passes [m]; 0 <= stepover <= diameter.
 * corner_scallop_height_m_out: h [m].
 * Valid for: tool axis along the surface normal; none while the flat end covers the stepover; the
 *     same as r - sqrt(r^2 - w^2/4).
 * Source: derived: circle and chord; a ball nose at r = D/2.
 * Example: diameter=12 mm; corner_radius=2 mm; stepover=9 mm => 0.0635083269 mm (identity: 2 -
 *     sqrt(3.75) mm).
 */
gullet_status gullet_corner_scallop_height(double diameter_m,
                                           double corner_radius_m,
                                           double stepover_m,
                                           double *corner_scallop_height_m_out);

/** gullet_corner_scallop_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_corner_scallop_height_array(size_t count,
                                                 const double *diameter_m,
                                                 const double *corner_radius_m,
                                                 const double *stepover_m,
                                                 double *corner_scallop_height_m_out,
                                                 gullet_status *status_out);

/**
 * Stepover of a cutter with a corner radius that leaves ridges of a wanted height on a flat
 *     surface.
 *
 *     s = D - 2 r + 2 sqrt(h (2 r - h))
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
 * scallop_height_m: h, wanted height of the ridges [m]; 0 <= scallop_height <= corner_radius.
 * corner_stepover_for_scallop_m_out: s [m].
 * Valid for: tool axis along the surface normal.
 * Source: derived: inverse of corner_scallop_height.
 * Example: diameter=12 mm; corner_radius=2 mm; scallop_height=0.02 mm => 8.56426943989 mm
 *     (identity: 8 + 2 sqrt(0.0796) mm).
 */
gullet_status gullet_corner_stepover_for_scallop(double diameter_m,
                                                 double corner_radius_m,
                                                 double scallop_height_m,
                                                 double *corner_stepover_for_scallop_m_out);

/** gullet_corner_stepover_for_scallop over arrays of `count` rows; see "Arrays". */
gullet_status gullet_corner_stepover_for_scallop_array(size_t count,
                                                       const double *diameter_m,
                                                       const double *corner_radius_m,
                                                       const double *scallop_height_m,
                                                       double *corner_stepover_for_scallop_m_out,
                                                       gullet_status *status_out);

/**
 * Height of the scallops that a ball-nosed cutter leaves between two passes over a convex surface.
 *
 *     h = q/(R + sqrt(R^2 - q)) - q/(rho + R + sqrt((rho + R)^2 - q)); R = D/2; q = (s (rho + R)/(2
 *         rho))^2
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius > 0.
 * stepover_m: s, straight distance between two points of contact [m]; 0 <= stepover <=
 *     ball_diameter*surface_radius/(surface_radius + ball_diameter/2).
 * convex_scallop_height_m_out: h [m].
 * Valid for: round across the passes; nearly s^2/8 (1/R + 1/rho) where both are large against s:
 *     higher than on a flat.
 * Source: derived: two circles about centres on a circle of radius rho + R.
 * Example: ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm => 10.137986478 um
 *     (identity).
 */
gullet_status gullet_convex_scallop_height(double ball_diameter_m,
                                           double surface_radius_m,
                                           double stepover_m,
                                           double *convex_scallop_height_m_out);

/** gullet_convex_scallop_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_convex_scallop_height_array(size_t count,
                                                 const double *ball_diameter_m,
                                                 const double *surface_radius_m,
                                                 const double *stepover_m,
                                                 double *convex_scallop_height_m_out,
                                                 gullet_status *status_out);

/**
 * Height of the scallops that a ball-nosed cutter leaves between two passes over a hollow surface.
 *
 *     h = q/(R + sqrt(R^2 - q)) + q/(rho - R + sqrt((rho - R)^2 - q)); R = D/2; q = (s (rho - R)/(2
 *         rho))^2
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius >
 *     ball_diameter/2.
 * stepover_m: s, straight distance between two points of contact [m]; 0 <= stepover <=
 *     2*surface_radius.
 * stepover (surface_radius - ball_diameter/2) <= ball_diameter surface_radius.
 * concave_scallop_height_m_out: h [m].
 * Valid for: round across the passes; nearly s^2/8 (1/R - 1/rho) where both are large against s:
 *     lower than on a flat; a ball as large as the hollow leaves none.
 * Source: derived: two circles about centres on a circle of radius rho - R.
 * Example: ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm => 7.87976846918 um
 *     (identity).
 */
gullet_status gullet_concave_scallop_height(double ball_diameter_m,
                                            double surface_radius_m,
                                            double stepover_m,
                                            double *concave_scallop_height_m_out);

/** gullet_concave_scallop_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_concave_scallop_height_array(size_t count,
                                                  const double *ball_diameter_m,
                                                  const double *surface_radius_m,
                                                  const double *stepover_m,
                                                  double *concave_scallop_height_m_out,
                                                  gullet_status *status_out);

/**
 * Stepover of a ball-nosed cutter that leaves a wanted scallop height on a convex surface.
 *
 *     s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho + D) (rho + h))
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius > 0.
 * scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
 * (surface_radius + scallop_height)^2 <= surface_radius (surface_radius + ball_diameter).
 * convex_stepover_for_scallop_m_out: s [m].
 * Valid for: straight distance between two points of contact; the balls of both passes must still
 *     meet.
 * Source: derived: triangle of ball centre, ridge and centre of the surface; inverse of
 *     convex_scallop_height.
 * Example: ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm => 0.421503793018 mm
 *     (identity).
 */
gullet_status gullet_convex_stepover_for_scallop(double ball_diameter_m,
                                                 double surface_radius_m,
                                                 double scallop_height_m,
                                                 double *convex_stepover_for_scallop_m_out);

/** gullet_convex_stepover_for_scallop over arrays of `count` rows; see "Arrays". */
gullet_status gullet_convex_stepover_for_scallop_array(size_t count,
                                                       const double *ball_diameter_m,
                                                       const double *surface_radius_m,
                                                       const double *scallop_height_m,
                                                       double *convex_stepover_for_scallop_m_out,
                                                       gullet_status *status_out);

/**
 * Stepover of a ball-nosed cutter that leaves a wanted scallop height on a hollow surface.
 *
 *     s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho - D) (rho - h))
 *
 * ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
 * surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius >
 *     ball_diameter/2.
 * scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
 * scallop_height (ball_diameter - scallop_height) <= (2 surface_radius - ball_diameter)
 *     (surface_radius - scallop_height).
 * concave_stepover_for_scallop_m_out: s [m].
 * Valid for: straight distance between two points of contact; a ball nearly as large as the hollow
 *     leaves no scallop of this height at any stepover, which is refused.
 * Source: derived: triangle of ball centre, ridge and centre of the surface; inverse of
 *     concave_scallop_height.
 * Example: ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm => 0.477999648833 mm
 *     (identity).
 */
gullet_status gullet_concave_stepover_for_scallop(double ball_diameter_m,
                                                  double surface_radius_m,
                                                  double scallop_height_m,
                                                  double *concave_stepover_for_scallop_m_out);

/** gullet_concave_stepover_for_scallop over arrays of `count` rows; see "Arrays". */
gullet_status gullet_concave_stepover_for_scallop_array(size_t count,
                                                        const double *ball_diameter_m,
                                                        const double *surface_radius_m,
                                                        const double *scallop_height_m,
                                                        double *concave_stepover_for_scallop_m_out,
                                                        gullet_status *status_out);

/**
 * Stepover along a sloping surface of passes that are stepped sideways.
 *
 *     s = e/cos(theta)
 *
 * plan_step_m: e, distance of two passes in the plane of the table [m]; plan_step >= 0.
 * slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
 *     [rad]; 0 deg <= slope_angle < 90 deg.
 * stepover_of_plan_step_m_out: s [m].
 * Valid for: plane surface; on a steep wall the ridges grow without bound: step down instead.
 * Source: derived: right triangle.
 * Example: plan_step=0.4 mm; slope_angle=60 deg => 0.8 mm (identity).
 */
gullet_status gullet_stepover_of_plan_step(double plan_step_m,
                                           double slope_angle_rad,
                                           double *stepover_of_plan_step_m_out);

/** gullet_stepover_of_plan_step over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stepover_of_plan_step_array(size_t count,
                                                 const double *plan_step_m,
                                                 const double *slope_angle_rad,
                                                 double *stepover_of_plan_step_m_out,
                                                 gullet_status *status_out);

/**
 * Sideways step of passes that are a stepover apart along a sloping surface.
 *
 *     e = s cos(theta)
 *
 * stepover_m: s, distance of two passes along the surface [m]; stepover >= 0.
 * slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
 *     [rad]; 0 deg <= slope_angle <= 90 deg.
 * plan_step_for_stepover_m_out: e [m].
 * Valid for: plane surface; the steepest part of a surface decides for all of it.
 * Source: derived: inverse of stepover_of_plan_step.
 * Example: stepover=0.8 mm; slope_angle=60 deg => 0.4 mm (identity).
 */
gullet_status gullet_plan_step_for_stepover(double stepover_m,
                                            double slope_angle_rad,
                                            double *plan_step_for_stepover_m_out);

/** gullet_plan_step_for_stepover over arrays of `count` rows; see "Arrays". */
gullet_status gullet_plan_step_for_stepover_array(size_t count,
                                                  const double *stepover_m,
                                                  const double *slope_angle_rad,
                                                  double *plan_step_for_stepover_m_out,
                                                  gullet_status *status_out);

/**
 * Stepover along a sloping surface of passes that are stepped down.
 *
 *     s = a/sin(theta)
 *
 * level_step_m: a, distance of two passes along the tool axis [m]; level_step >= 0.
 * slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
 *     [rad]; 0 deg < slope_angle <= 90 deg.
 * stepover_of_level_step_m_out: s [m].
 * Valid for: plane surface; on a nearly level one the ridges grow without bound: step sideways
 *     instead.
 * Source: derived: right triangle.
 * Example: level_step=0.2 mm; slope_angle=30 deg => 0.4 mm (identity).
 */
gullet_status gullet_stepover_of_level_step(double level_step_m,
                                            double slope_angle_rad,
                                            double *stepover_of_level_step_m_out);

/** gullet_stepover_of_level_step over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stepover_of_level_step_array(size_t count,
                                                  const double *level_step_m,
                                                  const double *slope_angle_rad,
                                                  double *stepover_of_level_step_m_out,
                                                  gullet_status *status_out);

/**
 * Step down of passes that are a stepover apart along a sloping surface.
 *
 *     a = s sin(theta)
 *
 * stepover_m: s, distance of two passes along the surface [m]; stepover >= 0.
 * slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
 *     [rad]; 0 deg <= slope_angle <= 90 deg.
 * level_step_for_stepover_m_out: a [m].
 * Valid for: plane surface; the most level part of a surface decides for all of it.
 * Source: derived: inverse of stepover_of_level_step.
 * Example: stepover=0.4 mm; slope_angle=30 deg => 0.2 mm (identity).
 */
gullet_status gullet_level_step_for_stepover(double stepover_m,
                                             double slope_angle_rad,
                                             double *level_step_for_stepover_m_out);

/** gullet_level_step_for_stepover over arrays of `count` rows; see "Arrays". */
gullet_status gullet_level_step_for_stepover_array(size_t count,
                                                   const double *stepover_m,
                                                   const double *slope_angle_rad,
                                                   double *level_step_for_stepover_m_out,
                                                   gullet_status *status_out);

/**
 * Passes side by side, the first on one edge of an area and the last on the other, no further apart
 *     than a stepover.
 *
 *     N = ceil(W/s) + 1
 *
 * width_m: W, width of the area across the passes [m]; width >= 0.
 * stepover_m: s, largest distance between two passes [m]; stepover > 0.
 * raster_passes_out: N [-].
 * Valid for: a quotient within 1e-9, relative, above a whole number counts as that number.
 * Source: derived: gaps between the passes.
 * Example: width=25 mm; stepover=0.4 mm => 64 (own arithmetic: 62.5 gaps rounded up, and one).
 */
gullet_status gullet_raster_passes(double width_m, double stepover_m, double *raster_passes_out);

/** gullet_raster_passes over arrays of `count` rows; see "Arrays". */
gullet_status gullet_raster_passes_array(size_t count,
                                         const double *width_m,
                                         const double *stepover_m,
                                         double *raster_passes_out,
                                         gullet_status *status_out);

/**
 * Stepover of equal passes over an area, the first on one edge and the last on the other.
 *
 *     s = W/(N - 1)
 *
 * width_m: W, width of the area across the passes [m]; width >= 0.
 * passes: N, number of passes [-]; passes >= 2.
 * raster_stepover_m_out: s [m].
 * Valid for: equal gaps.
 * Source: derived: gaps between the passes.
 * Example: width=25 mm; passes=64 => 0.396825397 mm (identity: 25/63 mm).
 */
gullet_status gullet_raster_stepover(double width_m, double passes, double *raster_stepover_m_out);

/** gullet_raster_stepover over arrays of `count` rows; see "Arrays". */
gullet_status gullet_raster_stepover_array(size_t count,
                                           const double *width_m,
                                           const double *passes,
                                           double *raster_stepover_m_out,
                                           gullet_status *status_out);

/**
 * Equal passes that take a depth, length or width, none larger than a largest step.
 *
 *     N = max(ceil(T/a), 1)
 *
 * total_m: T, depth, length or width to be taken [m]; total >= 0.
 * largest_step_m: a, largest that one pass takes [m]; largest_step > 0.
 * pass_count_out: N [-].
 * Valid for: at least 1; a quotient within 1e-9, relative, above a whole number counts as that
 *     number; levels of a bore, axial shifts of a thread mill, plunges along a wall.
 * Source: definition.
 * Example: total=12 mm; largest_step=5 mm => 3 (own arithmetic: 2.4 rounded up).
 */
gullet_status gullet_pass_count(double total_m, double largest_step_m, double *pass_count_out);

/** gullet_pass_count over arrays of `count` rows; see "Arrays". */
gullet_status gullet_pass_count_array(size_t count,
                                      const double *total_m,
                                      const double *largest_step_m,
                                      double *pass_count_out,
                                      gullet_status *status_out);

/**
 * What each of several equal passes takes.
 *
 *     a = T/N
 *
 * total_m: T, depth, length or width to be taken [m]; total >= 0.
 * passes: N, number of passes [-]; passes >= 1.
 * equal_pass_m_out: a [m].
 * Valid for: with the passes of pass_count none takes more than the largest step.
 * Source: definition.
 * Example: total=12 mm; passes=3 => 4 mm (own arithmetic).
 */
gullet_status gullet_equal_pass(double total_m, double passes, double *equal_pass_m_out);

/** gullet_equal_pass over arrays of `count` rows; see "Arrays". */
gullet_status gullet_equal_pass_array(size_t count,
                                      const double *total_m,
                                      const double *passes,
                                      double *equal_pass_m_out,
                                      gullet_status *status_out);

/**
 * Time of equal passes with the moves between them.
 *
 *     t = N L/v_f + (N - 1) t_l
 *
 * passes: N, number of passes [-]; passes >= 1.
 * travel_m: L, travel of one pass at feed, with approach and overtravel [m]; travel >= 0.
 * feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
 * link_time_s: t_l, time between two passes: step, return, lift [s]; link_time >= 0.
 * passes_time_s_out: t [s].
 * Valid for: constant feed; rasters one way or to and fro, rows of plunges, levels; rows so short
 *     that the feed is never reached take longer.
 * Source: definition.
 * Example: passes=64; travel=80 mm; feed_speed=1200 mm/min; link_time=0.5 s => 287.5 s (own
 *     arithmetic: 64 x 4 s + 63 x 0.5 s).
 */
gullet_status gullet_passes_time(double passes,
                                 double travel_m,
                                 double feed_speed_m_per_s,
                                 double link_time_s,
                                 double *passes_time_s_out);

/** gullet_passes_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_passes_time_array(size_t count,
                                       const double *passes,
                                       const double *travel_m,
                                       const double *feed_speed_m_per_s,
                                       const double *link_time_s,
                                       double *passes_time_s_out,
                                       gullet_status *status_out);

/**
 * Cutting-edge angle of a conical cutter.
 *
 *     kappa_r = 90 deg - sigma/2
 *
 * point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
 * cone_cutting_edge_angle_rad_out: kappa_r [rad].
 * Valid for: feed across the axis; with this angle chip thickness, chip width and the diameter at a
 *     height are those of a face mill.
 * Source: definition of the angles, ISO 3002-1 from memory.
 * Example: point_angle=60 deg => 60 deg (identity: 90 - 30 deg).
 */
gullet_status gullet_cone_cutting_edge_angle(double point_angle_rad,
                                             double *cone_cutting_edge_angle_rad_out);

/** gullet_cone_cutting_edge_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cone_cutting_edge_angle_array(size_t count,
                                                   const double *point_angle_rad,
                                                   double *cone_cutting_edge_angle_rad_out,
                                                   gullet_status *status_out);

/**
 * Depth along the axis of a chamfer whose width is measured across it.
 *
 *     a_p = c/tan(sigma/2)
 *
 * chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
 * point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
 * chamfer_depth_m_out: a_p [m].
 * Valid for: edge of 90 deg, axis along one of its faces.
 * Source: derived: right triangle.
 * Example: chamfer_width=1.5 mm; point_angle=90 deg => 1.5 mm (identity: 45 deg).
 */
gullet_status gullet_chamfer_depth(double chamfer_width_m,
                                   double point_angle_rad,
                                   double *chamfer_depth_m_out);

/** gullet_chamfer_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chamfer_depth_array(size_t count,
                                         const double *chamfer_width_m,
                                         const double *point_angle_rad,
                                         double *chamfer_depth_m_out,
                                         gullet_status *status_out);

/**
 * Width across the axis of a chamfer of a depth along it.
 *
 *     c = a_p tan(sigma/2)
 *
 * axial_depth_m: a_p, depth of the chamfer, along the axis [m]; axial_depth >= 0.
 * point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
 * chamfer_width_m_out: c [m].
 * Valid for: edge of 90 deg, axis along one of its faces.
 * Source: derived: inverse of chamfer_depth.
 * Example: axial_depth=3 mm; point_angle=60 deg => 1.732050808 mm (identity: 3 tan(30 deg) mm).
 */
gullet_status gullet_chamfer_width(double axial_depth_m,
                                   double point_angle_rad,
                                   double *chamfer_width_m_out);

/** gullet_chamfer_width over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chamfer_width_array(size_t count,
                                         const double *axial_depth_m,
                                         const double *point_angle_rad,
                                         double *chamfer_width_m_out,
                                         gullet_status *status_out);

/**
 * Largest diameter that cuts on a conical cutter along an edge.
 *
 *     D_max = D_c + 2 c + 2 u tan(sigma/2)
 *
 * tip_diameter_m: D_c, diameter of the flat at the tip; 0 of a pointed cutter [m]; tip_diameter >=
 *     0.
 * chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
 * tip_clearance_m: u, height of the tip below the chamfer's lower end [m]; tip_clearance >= 0.
 * point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
 * chamfer_outer_diameter_m_out: D_max [m].
 * Valid for: the cutting speed belongs to this diameter; the smallest that cuts is 2 c less, and a
 *     point that cuts with its tip stands still there: keep it below the work.
 * Source: derived: right triangle.
 * Example: tip_diameter=1 mm; chamfer_width=2 mm; tip_clearance=1 mm; point_angle=90 deg => 7 mm
 *     (identity: 1 + 4 + 2 mm).
 */
gullet_status gullet_chamfer_outer_diameter(double tip_diameter_m,
                                            double chamfer_width_m,
                                            double tip_clearance_m,
                                            double point_angle_rad,
                                            double *chamfer_outer_diameter_m_out);

/** gullet_chamfer_outer_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chamfer_outer_diameter_array(size_t count,
                                                  const double *tip_diameter_m,
                                                  const double *chamfer_width_m,
                                                  const double *tip_clearance_m,
                                                  const double *point_angle_rad,
                                                  double *chamfer_outer_diameter_m_out,
                                                  gullet_status *status_out);

/**
 * Removal rate of a chamfer along an edge.
 *
 *     Q = a_p c v_f/2
 *
 * axial_depth_m: a_p, depth of the chamfer, along the axis [m]; axial_depth >= 0.
 * chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
 * table_feed_m_per_s: v_f, feed along the edge [m/s]; table_feed >= 0.
 * chamfer_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: sharp edge of 90 deg before the cut, one pass.
 * Source: derived: triangle times feed.
 * Example: axial_depth=2 mm; chamfer_width=2 mm; table_feed=300 mm/min => 600 mm3/min (identity).
 */
gullet_status gullet_chamfer_removal_rate(double axial_depth_m,
                                          double chamfer_width_m,
                                          double table_feed_m_per_s,
                                          double *chamfer_removal_rate_m3_per_s_out);

/** gullet_chamfer_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chamfer_removal_rate_array(size_t count,
                                                const double *axial_depth_m,
                                                const double *chamfer_width_m,
                                                const double *table_feed_m_per_s,
                                                double *chamfer_removal_rate_m3_per_s_out,
                                                gullet_status *status_out);

/**
 * Feed of the cutter centre for the feed wanted at an inside contour.
 *
 *     v_fc = v_f (D_f - D_c)/D_f
 *
 * contour_feed_m_per_s: v_f, feed wanted at the contour [m/s]; contour_feed >= 0.
 * feature_diameter_m: D_f, diameter of the inside contour [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
 * inside_arc_feed_m_per_s_out: v_fc [m/s].
 * Valid for: circular arc; some controls make this correction themselves: do not correct twice;
 *     thread milling inside with the thread's diameter.
 * Source: derived: same angular rate of contour and cutter centre.
 * Example: contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm => 360 mm/min
 *     (identity: 600 x 24/40).
 */
gullet_status gullet_inside_arc_feed(double contour_feed_m_per_s,
                                     double feature_diameter_m,
                                     double cutter_diameter_m,
                                     double *inside_arc_feed_m_per_s_out);

/** gullet_inside_arc_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_inside_arc_feed_array(size_t count,
                                           const double *contour_feed_m_per_s,
                                           const double *feature_diameter_m,
                                           const double *cutter_diameter_m,
                                           double *inside_arc_feed_m_per_s_out,
                                           gullet_status *status_out);

/**
 * Feed of the cutter centre for the feed wanted at an outside contour.
 *
 *     v_fc = v_f (D_f + D_c)/D_f
 *
 * contour_feed_m_per_s: v_f, feed wanted at the contour [m/s]; contour_feed >= 0.
 * feature_diameter_m: D_f, diameter of the outside contour [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
 * outside_arc_feed_m_per_s_out: v_fc [m/s].
 * Valid for: circular arc; some controls make this correction themselves: do not correct twice;
 *     thread milling outside with the thread's diameter.
 * Source: derived: same angular rate of contour and cutter centre.
 * Example: contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm => 840 mm/min
 *     (identity: 600 x 56/40).
 */
gullet_status gullet_outside_arc_feed(double contour_feed_m_per_s,
                                      double feature_diameter_m,
                                      double cutter_diameter_m,
                                      double *outside_arc_feed_m_per_s_out);

/** gullet_outside_arc_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_outside_arc_feed_array(size_t count,
                                            const double *contour_feed_m_per_s,
                                            const double *feature_diameter_m,
                                            const double *cutter_diameter_m,
                                            double *outside_arc_feed_m_per_s_out,
                                            gullet_status *status_out);

/**
 * Radial depth on a straight wall that engages the cutter as enlarging a bore does.
 *
 *     a_e = min(D_c, (D_m^2 - D_w^2)/(4 (D_m - D_c)))
 *
 * finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
 * start_diameter_m: D_w, diameter before the pass, 0 for solid work [m]; 0 <= start_diameter <
 *     finished_diameter.
 * cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < finished_diameter.
 * bore_radial_depth_m_out: a_e [m].
 * Valid for: cutter running round the inside; held at the cutter diameter, a full slot.
 * Source: derived: area balance over one turn of the cutter centre.
 * Example: finished_diameter=40 mm; start_diameter=36 mm; cutter_diameter=16 mm => 3.16666667 mm
 *     (identity: 304/96 mm).
 */
gullet_status gullet_bore_radial_depth(double finished_diameter_m,
                                       double start_diameter_m,
                                       double cutter_diameter_m,
                                       double *bore_radial_depth_m_out);

/** gullet_bore_radial_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_bore_radial_depth_array(size_t count,
                                             const double *finished_diameter_m,
                                             const double *start_diameter_m,
                                             const double *cutter_diameter_m,
                                             double *bore_radial_depth_m_out,
                                             gullet_status *status_out);

/**
 * Radial depth on a straight wall that engages the cutter as turning down a boss does.
 *
 *     a_e = (D_w^2 - D_m^2)/(4 (D_m + D_c))
 *
 * finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
 * start_diameter_m: D_w, diameter before the pass [m]; finished_diameter < start_diameter <=
 *     finished_diameter + 2*cutter_diameter.
 * cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
 * boss_radial_depth_m_out: a_e [m].
 * Valid for: cutter running round the outside; with more stock on the radius than the cutter is
 *     wide a wall would be left standing, which is refused.
 * Source: derived: area balance over one turn of the cutter centre.
 * Example: finished_diameter=40 mm; start_diameter=44 mm; cutter_diameter=16 mm => 1.5 mm
 *     (identity: 336/224 mm).
 */
gullet_status gullet_boss_radial_depth(double finished_diameter_m,
                                       double start_diameter_m,
                                       double cutter_diameter_m,
                                       double *boss_radial_depth_m_out);

/** gullet_boss_radial_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_boss_radial_depth_array(size_t count,
                                             const double *finished_diameter_m,
                                             const double *start_diameter_m,
                                             const double *cutter_diameter_m,
                                             double *boss_radial_depth_m_out,
                                             gullet_status *status_out);

/**
 * Ramp angle of the cutter centre on a helix into a bore.
 *
 *     alpha = atan(P/(pi (D_f - D_c)))
 *
 * axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn >= 0.
 * feature_diameter_m: D_f, diameter of the bore [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
 * helix_ramp_angle_rad_out: alpha [rad].
 * Valid for: path of the cutter centre, steeper than the helix at the wall; the cutter's own limit
 *     is for this path.
 * Source: derived: unrolled helix.
 * Example: axial_per_turn=1.5 mm; feature_diameter=30 mm; cutter_diameter=20 mm => 2.73359594 deg
 *     (identity: atan(1.5/(10 pi))).
 */
gullet_status gullet_helix_ramp_angle(double axial_per_turn_m,
                                      double feature_diameter_m,
                                      double cutter_diameter_m,
                                      double *helix_ramp_angle_rad_out);

/** gullet_helix_ramp_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_ramp_angle_array(size_t count,
                                            const double *axial_per_turn_m,
                                            const double *feature_diameter_m,
                                            const double *cutter_diameter_m,
                                            double *helix_ramp_angle_rad_out,
                                            gullet_status *status_out);

/**
 * Diameter of the circle that the cutter centre runs on inside a contour.
 *
 *     D_p = D_f - D_c
 *
 * feature_diameter_m: D_f, diameter of the inside contour [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
 * inside_path_diameter_m_out: D_p [m].
 * Valid for: bores, internal threads at the major diameter.
 * Source: derived: the cutter touches the contour.
 * Example: feature_diameter=30 mm; cutter_diameter=20 mm => 10 mm (identity).
 */
gullet_status gullet_inside_path_diameter(double feature_diameter_m,
                                          double cutter_diameter_m,
                                          double *inside_path_diameter_m_out);

/** gullet_inside_path_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_inside_path_diameter_array(size_t count,
                                                const double *feature_diameter_m,
                                                const double *cutter_diameter_m,
                                                double *inside_path_diameter_m_out,
                                                gullet_status *status_out);

/**
 * Diameter of the circle that the cutter centre runs on around a contour.
 *
 *     D_p = D_f + D_c
 *
 * feature_diameter_m: D_f, diameter of the outside contour [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
 * outside_path_diameter_m_out: D_p [m].
 * Valid for: bosses, external threads at the minor diameter.
 * Source: derived: the cutter touches the contour.
 * Example: feature_diameter=30 mm; cutter_diameter=20 mm => 50 mm (identity).
 */
gullet_status gullet_outside_path_diameter(double feature_diameter_m,
                                           double cutter_diameter_m,
                                           double *outside_path_diameter_m_out);

/** gullet_outside_path_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_outside_path_diameter_array(size_t count,
                                                 const double *feature_diameter_m,
                                                 const double *cutter_diameter_m,
                                                 double *outside_path_diameter_m_out,
                                                 gullet_status *status_out);

/**
 * Axial travel a turn at which the helix of the cutter centre has a ramp angle.
 *
 *     P = pi D_p tan(alpha)
 *
 * ramp_angle_rad: alpha, ramp angle, at most the cutter's own limit [rad]; 0 deg <= ramp_angle < 90
 *     deg.
 * path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
 * axial_per_turn_for_ramp_m_out: P [m].
 * Valid for: the axial depth of the cut is this much.
 * Source: derived: unrolled helix; inverse of helix_ramp_angle.
 * Example: ramp_angle=3 deg; path_diameter=10 mm => 1.64643894387 mm (identity: 10 pi tan(3 deg)
 *     mm).
 */
gullet_status gullet_axial_per_turn_for_ramp(double ramp_angle_rad,
                                             double path_diameter_m,
                                             double *axial_per_turn_for_ramp_m_out);

/** gullet_axial_per_turn_for_ramp over arrays of `count` rows; see "Arrays". */
gullet_status gullet_axial_per_turn_for_ramp_array(size_t count,
                                                   const double *ramp_angle_rad,
                                                   const double *path_diameter_m,
                                                   double *axial_per_turn_for_ramp_m_out,
                                                   gullet_status *status_out);

/**
 * Travel of the cutter centre in one turn of a helix.
 *
 *     L_t = sqrt((pi D_p)^2 + P^2)
 *
 * path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
 * axial_per_turn_m: P, axial travel per turn of the helix; the pitch of a thread [m];
 *     axial_per_turn >= 0.
 * helix_turn_length_m_out: L_t [m].
 * Valid for: a full circle at 0.
 * Source: derived: unrolled helix.
 * Example: path_diameter=10 mm; axial_per_turn=1.5 mm => 31.4517160122 mm (identity).
 */
gullet_status gullet_helix_turn_length(double path_diameter_m,
                                       double axial_per_turn_m,
                                       double *helix_turn_length_m_out);

/** gullet_helix_turn_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_turn_length_array(size_t count,
                                             const double *path_diameter_m,
                                             const double *axial_per_turn_m,
                                             double *helix_turn_length_m_out,
                                             gullet_status *status_out);

/**
 * Turns of a helix over an axial depth.
 *
 *     k = T/P
 *
 * axial_depth_m: T, depth along the axis [m]; axial_depth >= 0.
 * axial_per_turn_m: P, axial travel per turn of the helix; the pitch of a thread [m];
 *     axial_per_turn > 0.
 * helix_turns_out: k [turns].
 * Valid for: a blind bore needs one more turn on its floor.
 * Source: definition.
 * Example: axial_depth=12 mm; axial_per_turn=1.5 mm => 8 turns (own arithmetic).
 */
gullet_status gullet_helix_turns(double axial_depth_m,
                                 double axial_per_turn_m,
                                 double *helix_turns_out);

/** gullet_helix_turns over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_turns_array(size_t count,
                                       const double *axial_depth_m,
                                       const double *axial_per_turn_m,
                                       double *helix_turns_out,
                                       gullet_status *status_out);

/**
 * Travel of the cutter centre on a helix into a bore, with full circles on its floor.
 *
 *     L = (T/P) sqrt((pi D_p)^2 + P^2) + k pi D_p
 *
 * axial_depth_m: T, depth along the axis, with the clearance above the work [m]; axial_depth >= 0.
 * axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn > 0.
 * path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
 * floor_turns: k, full circles on the floor: 1 of a blind bore, 0 of a through one [turns];
 *     floor_turns >= 0.
 * helix_travel_m_out: L [m].
 * Valid for: the time is this travel over the feed of the cutter centre.
 * Source: derived: unrolled helix.
 * Example: axial_depth=12 mm; axial_per_turn=1.5 mm; path_diameter=10 mm => 283.029654633 mm
 *     (identity: 8 turns and a circle).
 */
gullet_status gullet_helix_travel(double axial_depth_m,
                                  double axial_per_turn_m,
                                  double path_diameter_m,
                                  double floor_turns,
                                  double *helix_travel_m_out);

/** gullet_helix_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_travel_array(size_t count,
                                        const double *axial_depth_m,
                                        const double *axial_per_turn_m,
                                        const double *path_diameter_m,
                                        const double *floor_turns,
                                        double *helix_travel_m_out,
                                        gullet_status *status_out);

/**
 * Part of the cutter centre's feed on a helix that runs along the axis.
 *
 *     v_a = v_fc P/sqrt((pi D_p)^2 + P^2)
 *
 * centre_feed_m_per_s: v_fc, feed of the cutter centre along the helix [m/s]; centre_feed >= 0.
 * path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
 * axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn >= 0.
 * helix_axial_feed_m_per_s_out: v_a [m/s].
 * Valid for: v_fc times the sine of the ramp angle.
 * Source: derived: unrolled helix.
 * Example: centre_feed=200 mm/min; path_diameter=10 mm; axial_per_turn=1.5 mm => 9.53843026829
 *     mm/min (identity).
 */
gullet_status gullet_helix_axial_feed(double centre_feed_m_per_s,
                                      double path_diameter_m,
                                      double axial_per_turn_m,
                                      double *helix_axial_feed_m_per_s_out);

/** gullet_helix_axial_feed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_helix_axial_feed_array(size_t count,
                                            const double *centre_feed_m_per_s,
                                            const double *path_diameter_m,
                                            const double *axial_per_turn_m,
                                            double *helix_axial_feed_m_per_s_out,
                                            gullet_status *status_out);

/**
 * Travel of a half circle that leads the cutter centre from the axis of a bore onto its circular
 *     path.
 *
 *     l_e = pi D_p/4
 *
 * path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
 * half_circle_entry_length_m_out: l_e [m].
 * Valid for: tangential entry and exit inside; the half circle's diameter is the radius of the
 *     path.
 * Source: derived: half the circumference at D_p/2.
 * Example: path_diameter=8 mm => 6.28318530718 mm (identity: 2 pi mm).
 */
gullet_status gullet_half_circle_entry_length(double path_diameter_m,
                                              double *half_circle_entry_length_m_out);

/** gullet_half_circle_entry_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_half_circle_entry_length_array(size_t count,
                                                    const double *path_diameter_m,
                                                    double *half_circle_entry_length_m_out,
                                                    gullet_status *status_out);

/**
 * Length along the table in which a straight ramp reaches a depth.
 *
 *     L = T/tan(alpha)
 *
 * axial_depth_m: T, depth along the axis [m]; axial_depth >= 0.
 * ramp_angle_rad: alpha, ramp angle, at most the cutter's own limit [rad]; 0 deg < ramp_angle < 90
 *     deg.
 * ramp_length_m_out: L [m].
 * Valid for: straight ramp; what stands under it is cut on the way back.
 * Source: derived: right triangle.
 * Example: axial_depth=6 mm; ramp_angle=3 deg => 114.486820126 mm (identity).
 */
gullet_status gullet_ramp_length(double axial_depth_m,
                                 double ramp_angle_rad,
                                 double *ramp_length_m_out);

/** gullet_ramp_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_ramp_length_array(size_t count,
                                       const double *axial_depth_m,
                                       const double *ramp_angle_rad,
                                       double *ramp_length_m_out,
                                       gullet_status *status_out);

/**
 * Steepest straight ramp of a cutter that does not cut at its centre.
 *
 *     alpha_max = atan(h_k/d_k)
 *
 * core_clearance_m: h_k, height of the part that does not cut above the edges [m]; core_clearance
 *     >= 0.
 * core_diameter_m: d_k, diameter of the part that does not cut [m]; core_diameter > 0.
 * core_ramp_angle_rad_out: alpha_max [rad].
 * Valid for: straight ramp, sharp inner corners: the work that the front edges leave rises under
 *     the core until the rear edges cut it; the maker's own limit comes first.
 * Source: derived: descent while the cutter moves on by its core.
 * Example: core_clearance=0.5 mm; core_diameter=6 mm => 4.76364169073 deg (identity: atan(1/12)).
 */
gullet_status gullet_core_ramp_angle(double core_clearance_m,
                                     double core_diameter_m,
                                     double *core_ramp_angle_rad_out);

/** gullet_core_ramp_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_core_ramp_angle_array(size_t count,
                                           const double *core_clearance_m,
                                           const double *core_diameter_m,
                                           double *core_ramp_angle_rad_out,
                                           gullet_status *status_out);

/**
 * Smallest bore that a cutter which does not cut at its centre can sink into solid work.
 *
 *     D_min = D_c + d_k
 *
 * cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
 * core_diameter_m: d_k, diameter of the part that does not cut; 0 of a centre-cutting cutter [m]; 0
 *     <= core_diameter <= cutter_diameter.
 * smallest_helix_bore_m_out: D_min [m].
 * Valid for: helix from solid; below it the part that does not cut never leaves the axis of the
 *     bore and rides on a pillar; the ramp angle is limited besides.
 * Source: derived: the core's rim reaches the axis of the bore.
 * Example: cutter_diameter=20 mm; core_diameter=12 mm => 32 mm (identity).
 */
gullet_status gullet_smallest_helix_bore(double cutter_diameter_m,
                                         double core_diameter_m,
                                         double *smallest_helix_bore_m_out);

/** gullet_smallest_helix_bore over arrays of `count` rows; see "Arrays". */
gullet_status gullet_smallest_helix_bore_array(size_t count,
                                               const double *cutter_diameter_m,
                                               const double *core_diameter_m,
                                               double *smallest_helix_bore_m_out,
                                               gullet_status *status_out);

/**
 * Largest bore that one helix sinks into solid work with a flat floor.
 *
 *     D_max = 2 (D_c - r)
 *
 * cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
 * corner_radius_m: r, corner radius [m]; 0 <= corner_radius <= cutter_diameter/2.
 * largest_helix_bore_m_out: D_max [m].
 * Valid for: above it a pillar or a point is left on the axis of the bore; up to twice the cutter
 *     diameter what is left is a point of the corner's height.
 * Source: derived: the flat end reaches the axis of the bore.
 * Example: cutter_diameter=20 mm; corner_radius=2 mm => 36 mm (identity).
 */
gullet_status gullet_largest_helix_bore(double cutter_diameter_m,
                                        double corner_radius_m,
                                        double *largest_helix_bore_m_out);

/** gullet_largest_helix_bore over arrays of `count` rows; see "Arrays". */
gullet_status gullet_largest_helix_bore_array(size_t count,
                                              const double *cutter_diameter_m,
                                              const double *corner_radius_m,
                                              double *largest_helix_bore_m_out,
                                              gullet_status *status_out);

/**
 * Step between two plunges at which nothing is left standing between them.
 *
 *     s_max = 2 sqrt(a (D - a)); a = min(a_e, D/2)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * largest_plunge_step_m_out: s_max [m].
 * Valid for: the chord of the cutter at the old wall; the ridges on the new wall are those of
 *     scallop_height at the cutter diameter.
 * Source: derived: circle and chord.
 * Example: diameter=20 mm; radial_depth=6 mm => 18.3303027798 mm (identity: 2 sqrt(84) mm).
 */
gullet_status gullet_largest_plunge_step(double diameter_m,
                                         double radial_depth_m,
                                         double *largest_plunge_step_m_out);

/** gullet_largest_plunge_step over arrays of `count` rows; see "Arrays". */
gullet_status gullet_largest_plunge_step_array(size_t count,
                                               const double *diameter_m,
                                               const double *radial_depth_m,
                                               double *largest_plunge_step_m_out,
                                               gullet_status *status_out);

/**
 * Travel at feed of a drill through the work.
 *
 *     L = t + l_p + l_a + l_u
 *
 * thickness_m: t, thickness of the work along the hole [m]; thickness > 0.
 * point_length_m: l_p, length of the drill's point [m]; point_length >= 0.
 * approach_m: l_a, clearance above the work from which the drill feeds [m]; approach >= 0.
 * overtravel_m: l_u, travel past the point where the full diameter breaks through [m]; overtravel
 *     >= 0.
 * through_hole_travel_m_out: L [m].
 * Valid for: flat faces square to the drill; the point counts once: it must pass the far face, on
 *     the near one it only starts the cut.
 * Source: definition; textbooks on manufacturing give travel as thickness and point, from memory.
 * Example: thickness=15 mm; point_length=6 mm; approach=2 mm; overtravel=1 mm => 24 mm (own
 *     arithmetic).
 */
gullet_status gullet_through_hole_travel(double thickness_m,
                                         double point_length_m,
                                         double approach_m,
                                         double overtravel_m,
                                         double *through_hole_travel_m_out);

/** gullet_through_hole_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_through_hole_travel_array(size_t count,
                                               const double *thickness_m,
                                               const double *point_length_m,
                                               const double *approach_m,
                                               const double *overtravel_m,
                                               double *through_hole_travel_m_out,
                                               gullet_status *status_out);

/**
 * Travel at feed of a drill into a blind hole whose depth counts at full diameter.
 *
 *     L = l + l_p + l_a
 *
 * depth_m: l, depth of the hole at full diameter, without the cone of the point [m]; depth > 0.
 * point_length_m: l_p, length of the drill's point [m]; point_length >= 0.
 * approach_m: l_a, clearance above the work from which the drill feeds [m]; approach >= 0.
 * blind_hole_travel_m_out: L [m].
 * Valid for: a depth that a drawing gives to the tip has the point in it: see full_diameter_depth.
 * Source: definition.
 * Example: depth=60 mm; point_length=4 mm; approach=2 mm => 66 mm (own arithmetic).
 */
gullet_status gullet_blind_hole_travel(double depth_m,
                                       double point_length_m,
                                       double approach_m,
                                       double *blind_hole_travel_m_out);

/** gullet_blind_hole_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_blind_hole_travel_array(size_t count,
                                             const double *depth_m,
                                             const double *point_length_m,
                                             const double *approach_m,
                                             double *blind_hole_travel_m_out,
                                             gullet_status *status_out);

/**
 * Depth at full diameter of a blind hole whose depth counts to the tip of the drill.
 *
 *     l = l_t - l_p
 *
 * tip_depth_m: l_t, depth of the hole to the tip of the drill [m]; tip_depth > 0.
 * point_length_m: l_p, length of the drill's point [m]; 0 <= point_length <= tip_depth.
 * full_diameter_depth_m_out: l [m].
 * Valid for: the hole is deeper than the point is long.
 * Source: definition.
 * Example: tip_depth=20 mm; point_length=3 mm => 17 mm (own arithmetic).
 */
gullet_status gullet_full_diameter_depth(double tip_depth_m,
                                         double point_length_m,
                                         double *full_diameter_depth_m_out);

/** gullet_full_diameter_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_full_diameter_depth_array(size_t count,
                                               const double *tip_depth_m,
                                               const double *point_length_m,
                                               double *full_diameter_depth_m_out,
                                               gullet_status *status_out);

/**
 * Pecks of a drill for a travel.
 *
 *     N = ceil(L/q)
 *
 * travel_m: L, travel at feed from the plane where the pecks start to the bottom [m]; travel > 0.
 * peck_m: q, depth of a peck [m]; peck > 0.
 * peck_count_out: N [-].
 * Valid for: equal pecks, the last one what is left; a quotient within 1e-9, relative, above a
 *     whole number counts as that number.
 * Source: definition.
 * Example: travel=30 mm; peck=8 mm => 4 (own arithmetic: 3.75 rounded up).
 */
gullet_status gullet_peck_count(double travel_m, double peck_m, double *peck_count_out);

/** gullet_peck_count over arrays of `count` rows; see "Arrays". */
gullet_status gullet_peck_count_array(size_t count,
                                      const double *travel_m,
                                      const double *peck_m,
                                      double *peck_count_out,
                                      gullet_status *status_out);

/**
 * Time of drilling a hole in pecks, out of the hole after each.
 *
 *     t = (L + (N - 1) s)/v_f + N t_d + t_L + T; N = ceil(L/q); t_L = time of a rapid move over L;
 *         T = sum over i from 1 to N - 1 of the rapid moves over i q and over i q - s, at v and a
 *
 * travel_m: L, travel at feed from the retract plane to the bottom [m]; travel > 0.
 * peck_m: q, depth of a peck [m]; peck > 0.
 * reentry_clearance_m: s, distance above the last bottom where the feed starts again [m]; 0 <=
 *     reentry_clearance <= peck.
 * feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
 * rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
 * acceleration_m_per_s2: a, acceleration of the rapid moves [m/s2]; acceleration > 0.
 * dwell_s: t_d, dwell at the bottom of each peck [s]; dwell >= 0.
 * travel <= 1000*peck.
 * peck_cycle_time_s_out: t [s].
 * Valid for: pecks measured from the retract plane, to which the drill goes back each time and at
 *     the end; t_r is rapid_time with v and a: short moves never reach the rapid speed; no time for
 *     the spindle or the control.
 * Source: derived: the moves of the cycle, each by motion at constant acceleration.
 * Example: travel=30 mm; peck=10 mm; reentry_clearance=1 mm; feed_speed=120 mm/min; rapid_speed=6
 *     m/min; acceleration=10 m/s2; dwell=0.5 s => 18.43 s (own arithmetic: 16 s of feed, 1.5 s of
 *     dwell, rapids over 10, 9, 20, 19 and 30 mm at 0.1 m/s with 0.01 s of ramps each).
 */
gullet_status gullet_peck_cycle_time(double travel_m,
                                     double peck_m,
                                     double reentry_clearance_m,
                                     double feed_speed_m_per_s,
                                     double rapid_speed_m_per_s,
                                     double acceleration_m_per_s2,
                                     double dwell_s,
                                     double *peck_cycle_time_s_out);

/** gullet_peck_cycle_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_peck_cycle_time_array(size_t count,
                                           const double *travel_m,
                                           const double *peck_m,
                                           const double *reentry_clearance_m,
                                           const double *feed_speed_m_per_s,
                                           const double *rapid_speed_m_per_s,
                                           const double *acceleration_m_per_s2,
                                           const double *dwell_s,
                                           double *peck_cycle_time_s_out,
                                           gullet_status *status_out);

/**
 * Time of drilling a hole in pecks with a short retract after each, that breaks the chip.
 *
 *     t = (L + (N - 1) d)/v_f + N t_d + (N - 1) t_r + t_L; N = ceil(L/q); t_r = d/v + v/a for d >=
 *         v^2/a, t_r = 2 sqrt(d/a) for d < v^2/a; t_L = L/v + v/a for L >= v^2/a, t_L = 2 sqrt(L/a)
 *         for L < v^2/a
 *
 * travel_m: L, travel at feed from the retract plane to the bottom [m]; travel > 0.
 * peck_m: q, depth of a peck [m]; peck > 0.
 * retract_m: d, retract after each peck, at rapid speed [m]; 0 <= retract <= peck.
 * feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
 * rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
 * acceleration_m_per_s2: a, acceleration of the rapid moves [m/s2]; acceleration > 0.
 * dwell_s: t_d, dwell at the bottom of each peck [s]; dwell >= 0.
 * chip_break_cycle_time_s_out: t [s].
 * Valid for: back to the bottom at feed; out of the hole only at the end; t_r is rapid_time with v
 *     and a; no time for the spindle or the control.
 * Source: derived: the moves of the cycle, each by motion at constant acceleration.
 * Example: travel=30 mm; peck=10 mm; retract=1 mm; feed_speed=120 mm/min; rapid_speed=6 m/min;
 *     acceleration=10 m/s2 => 16.35 s (own arithmetic: 16 s of feed, twice 0.02 s back, 0.31 s out;
 *     ramps of 0.01 s at 0.1 m/s).
 */
gullet_status gullet_chip_break_cycle_time(double travel_m,
                                           double peck_m,
                                           double retract_m,
                                           double feed_speed_m_per_s,
                                           double rapid_speed_m_per_s,
                                           double acceleration_m_per_s2,
                                           double dwell_s,
                                           double *chip_break_cycle_time_s_out);

/** gullet_chip_break_cycle_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chip_break_cycle_time_array(size_t count,
                                                 const double *travel_m,
                                                 const double *peck_m,
                                                 const double *retract_m,
                                                 const double *feed_speed_m_per_s,
                                                 const double *rapid_speed_m_per_s,
                                                 const double *acceleration_m_per_s2,
                                                 const double *dwell_s,
                                                 double *chip_break_cycle_time_s_out,
                                                 gullet_status *status_out);

/**
 * Time of a hole whose tool goes in at feed, dwells, and comes out at feed.
 *
 *     t = L/v_f + t_d + L/(k v_f)
 *
 * travel_m: L, travel at feed from the clearance plane to the bottom [m]; travel > 0.
 * feed_speed_m_per_s: v_f, feed speed on the way in [m/s]; feed_speed > 0.
 * return_ratio: k, feed speed on the way out over that on the way in [-]; return_ratio > 0.
 * dwell_s: t_d, dwell at the bottom [s]; dwell >= 0.
 * feed_out_cycle_time_s_out: t [s].
 * Valid for: reaming and boring with the spindle turning forward both ways; no time for the
 *     control.
 * Source: definition.
 * Example: travel=30 mm; feed_speed=60 mm/min; return_ratio=2; dwell=1 s => 46 s (own arithmetic:
 *     30 s in, 1 s, 15 s out).
 */
gullet_status gullet_feed_out_cycle_time(double travel_m,
                                         double feed_speed_m_per_s,
                                         double return_ratio,
                                         double dwell_s,
                                         double *feed_out_cycle_time_s_out);

/** gullet_feed_out_cycle_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_out_cycle_time_array(size_t count,
                                               const double *travel_m,
                                               const double *feed_speed_m_per_s,
                                               const double *return_ratio,
                                               const double *dwell_s,
                                               double *feed_out_cycle_time_s_out,
                                               gullet_status *status_out);

/**
 * Depth of a hole over its diameter.
 *
 *     k_l = l/D
 *
 * depth_m: l, depth of the hole at full diameter [m]; depth >= 0.
 * diameter_m: D, diameter of the hole [m]; diameter > 0.
 * hole_depth_ratio_out: k_l [-].
 * Valid for: any hole.
 * Source: definition.
 * Example: depth=30 mm; diameter=8 mm => 3.75 (own arithmetic).
 */
gullet_status gullet_hole_depth_ratio(double depth_m,
                                      double diameter_m,
                                      double *hole_depth_ratio_out);

/** gullet_hole_depth_ratio over arrays of `count` rows; see "Arrays". */
gullet_status gullet_hole_depth_ratio_array(size_t count,
                                            const double *depth_m,
                                            const double *diameter_m,
                                            double *hole_depth_ratio_out,
                                            gullet_status *status_out);

/**
 * Depth of feed from first contact with the hole's rim to the diameter of a countersink.
 *
 *     z = (D - d)/(2 tan(sigma/2))
 *
 * countersink_diameter_m: D, diameter of the countersink at the surface [m]; countersink_diameter >
 *     0.
 * hole_diameter_m: d, diameter of the hole [m]; 0 <= hole_diameter <= countersink_diameter.
 * included_angle_rad: sigma, included angle of the countersink [rad]; 0 deg < included_angle < 180
 *     deg.
 * countersink_depth_m_out: z [m].
 * Valid for: a hole square to a flat surface, the tip of the countersink smaller than the hole.
 * Source: geometry, derived.
 * Example: countersink_diameter=12 mm; hole_diameter=6 mm; included_angle=90 deg => 3 mm (own
 *     arithmetic: tan 45 deg = 1).
 */
gullet_status gullet_countersink_depth(double countersink_diameter_m,
                                       double hole_diameter_m,
                                       double included_angle_rad,
                                       double *countersink_depth_m_out);

/** gullet_countersink_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_countersink_depth_array(size_t count,
                                             const double *countersink_diameter_m,
                                             const double *hole_diameter_m,
                                             const double *included_angle_rad,
                                             double *countersink_depth_m_out,
                                             gullet_status *status_out);

/**
 * Diameter at the surface that a countersink reaches at a depth from first contact with the hole's
 *     rim.
 *
 *     D = d + 2 z tan(sigma/2)
 *
 * depth_m: z, depth of feed from first contact with the hole's rim [m]; depth >= 0.
 * hole_diameter_m: d, diameter of the hole [m]; hole_diameter >= 0.
 * included_angle_rad: sigma, included angle of the countersink [rad]; 0 deg < included_angle < 180
 *     deg.
 * countersink_diameter_m_out: D [m].
 * Valid for: a hole square to a flat surface, the tip of the countersink smaller than the hole.
 * Source: geometry, derived.
 * Example: depth=3 mm; hole_diameter=6 mm; included_angle=90 deg => 12 mm (own arithmetic: tan 45
 *     deg = 1).
 */
gullet_status gullet_countersink_diameter(double depth_m,
                                          double hole_diameter_m,
                                          double included_angle_rad,
                                          double *countersink_diameter_m_out);

/** gullet_countersink_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_countersink_diameter_array(size_t count,
                                                const double *depth_m,
                                                const double *hole_diameter_m,
                                                const double *included_angle_rad,
                                                double *countersink_diameter_m_out,
                                                gullet_status *status_out);

/**
 * Least stock on the diameter that a machine reamer needs to cut and not to rub.
 *
 *     s = 0.13 mm for D < 4.3 mm, s = 0.2 mm for D < 7.1 mm, s = 0.25 mm for D < 22 mm, s = 0.38 mm
 *         else
 *
 * diameter_m: D, diameter of the reamer [m]; 0023 <= diameter <= 064.
 * smallest_reaming_stock_m_out: s [m].
 * Valid for: machine reamers of 2.3 to 64 mm in steel and iron.
 * Source: E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public
 *     reprint, seen.
 * Example: diameter=10 mm => 0.25 mm (E. Oberg et al., Machinery's Handbook, public reprint, seen:
 *     holes of 7.1 to 22 mm).
 */
gullet_status gullet_smallest_reaming_stock(double diameter_m,
                                            double *smallest_reaming_stock_m_out);

/** gullet_smallest_reaming_stock over arrays of `count` rows; see "Arrays". */
gullet_status gullet_smallest_reaming_stock_array(size_t count,
                                                  const double *diameter_m,
                                                  double *smallest_reaming_stock_m_out,
                                                  gullet_status *status_out);

/**
 * Most stock on the diameter to leave for a machine reamer.
 *
 *     s = 0.25 mm for D < 4.3 mm, s = 0.3 mm for D < 7.1 mm, s = 0.41 mm for D < 22 mm, s = 0.76 mm
 *         else
 *
 * diameter_m: D, diameter of the reamer [m]; 0023 <= diameter <= 064.
 * largest_reaming_stock_m_out: s [m].
 * Valid for: machine reamers of 2.3 to 64 mm in steel and iron.
 * Source: E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public
 *     reprint, seen.
 * Example: diameter=10 mm => 0.41 mm (E. Oberg et al., Machinery's Handbook, public reprint, seen:
 *     holes of 7.1 to 22 mm).
 */
gullet_status gullet_largest_reaming_stock(double diameter_m, double *largest_reaming_stock_m_out);

/** gullet_largest_reaming_stock over arrays of `count` rows; see "Arrays". */
gullet_status gullet_largest_reaming_stock_array(size_t count,
                                                 const double *diameter_m,
                                                 double *largest_reaming_stock_m_out,
                                                 gullet_status *status_out);

/**
 * Drill diameter that leaves a stock for the reamer.
 *
 *     d = D - s
 *
 * diameter_m: D, diameter of the reamer [m]; diameter > 0.
 * stock_m: s, stock on the diameter [m]; 0 <= stock < diameter.
 * reaming_drill_diameter_m_out: d [m].
 * Valid for: the drill cuts to its size; one that cuts large leaves less.
 * Source: definition.
 * Example: diameter=10 mm; stock=0.3 mm => 9.7 mm (own arithmetic).
 */
gullet_status gullet_reaming_drill_diameter(double diameter_m,
                                            double stock_m,
                                            double *reaming_drill_diameter_m_out);

/** gullet_reaming_drill_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_reaming_drill_diameter_array(size_t count,
                                                  const double *diameter_m,
                                                  const double *stock_m,
                                                  double *reaming_drill_diameter_m_out,
                                                  gullet_status *status_out);

/**
 * Travel of a cutter from first contact to its full radial depth in slab, side or face milling from
 *     one edge.
 *
 *     l_a = sqrt(a (D - a)); a = min(a_e, D/2)
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
 * peripheral_approach_m_out: l_a [m].
 * Valid for: slab and side milling, face milling with one work edge inside the cutter; beyond half
 *     immersion the rim at the height of the axis touches first, so D/2.
 * Source: circle and chord, derived; example: P.C. Sharma, A Textbook of Production Engineering,
 *     Ex. 4.17 p.228, seen in a companion.
 * Example: diameter=150 mm; radial_depth=25 mm => 55.9 mm (P.C. Sharma, A Textbook of Production
 *     Engineering, Ex. 4.17 p.228, seen in a companion: printed travel 255.9 mm less the 200 mm
 *     length).
 */
gullet_status gullet_peripheral_approach(double diameter_m,
                                         double radial_depth_m,
                                         double *peripheral_approach_m_out);

/** gullet_peripheral_approach over arrays of `count` rows; see "Arrays". */
gullet_status gullet_peripheral_approach_array(size_t count,
                                               const double *diameter_m,
                                               const double *radial_depth_m,
                                               double *peripheral_approach_m_out,
                                               gullet_status *status_out);

/**
 * Travel of a face mill from first contact to the full width of work that is centred on it.
 *
 *     l_a = (D - sqrt(D^2 - a_e^2))/2
 *
 * diameter_m: D, cutter diameter [m]; diameter > 0.
 * radial_depth_m: a_e, width of the work [m]; 0 < radial_depth <= diameter.
 * face_approach_centred_m_out: l_a [m].
 * Valid for: work centred on the cutter axis; a finishing pass sweeps on for the whole diameter.
 * Source: circle and chord, derived.
 * Example: diameter=80 mm; radial_depth=50 mm => 8.77501001 mm (identity).
 */
gullet_status gullet_face_approach_centred(double diameter_m,
                                           double radial_depth_m,
                                           double *face_approach_centred_m_out);

/** gullet_face_approach_centred over arrays of `count` rows; see "Arrays". */
gullet_status gullet_face_approach_centred_array(size_t count,
                                                 const double *diameter_m,
                                                 const double *radial_depth_m,
                                                 double *face_approach_centred_m_out,
                                                 gullet_status *status_out);

/**
 * Length of a drill's point.
 *
 *     l_p = D/(2 tan(sigma/2))
 *
 * diameter_m: D, drill diameter [m]; diameter > 0.
 * point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
 * drill_point_length_m_out: l_p [m].
 * Valid for: straight lips, no allowance for the chisel edge.
 * Source: geometry, derived.
 * Example: diameter=25 mm; point_angle=118 deg => 7.511 mm (own arithmetic: 12.5/tan(59 deg) mm).
 */
gullet_status gullet_drill_point_length(double diameter_m,
                                        double point_angle_rad,
                                        double *drill_point_length_m_out);

/** gullet_drill_point_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_drill_point_length_array(size_t count,
                                              const double *diameter_m,
                                              const double *point_angle_rad,
                                              double *drill_point_length_m_out,
                                              gullet_status *status_out);

/**
 * Time of a travel at feed.
 *
 *     t = L/v_f
 *
 * travel_m: L, travel with approach and overtravel [m]; travel >= 0.
 * feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
 * cutting_time_s_out: t [s].
 * Valid for: constant feed; short fast feeds never reach it.
 * Source: definition.
 * Example: travel=650 mm; feed_speed=600 mm/min => 1.083 min (S. Kalpakjian, S. Schmid,
 *     Manufacturing Engineering and Technology, Ex. 24.2 p.667, seen in a companion).
 */
gullet_status gullet_cutting_time(double travel_m,
                                  double feed_speed_m_per_s,
                                  double *cutting_time_s_out);

/** gullet_cutting_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_time_array(size_t count,
                                        const double *travel_m,
                                        const double *feed_speed_m_per_s,
                                        double *cutting_time_s_out,
                                        gullet_status *status_out);

/**
 * Time of facing or parting at constant cutting speed.
 *
 *     t = pi (D_1^2 - D_2^2)/(4 v_c f)
 *
 * outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
 * inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * facing_time_constant_speed_s_out: t [s].
 * Valid for: no limit of the spindle speed; towards the centre the spindle would run away: see
 *     facing_time_limited_speed.
 * Source: derived: integral of the speed over the radius; example: P.C. Sharma, A Textbook of
 *     Production Engineering, Ex. 4.13 p.220, seen in a companion.
 * Example: outer_diameter=250 mm; inner_diameter=100 mm; cutting_speed=27 m/min; feed_per_rev=0.8
 *     mm => 1.91 min (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.13 p.220,
 *     seen in a companion).
 */
gullet_status gullet_facing_time_constant_speed(double outer_diameter_m,
                                                double inner_diameter_m,
                                                double cutting_speed_m_per_s,
                                                double feed_per_rev_m,
                                                double *facing_time_constant_speed_s_out);

/** gullet_facing_time_constant_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_facing_time_constant_speed_array(size_t count,
                                                      const double *outer_diameter_m,
                                                      const double *inner_diameter_m,
                                                      const double *cutting_speed_m_per_s,
                                                      const double *feed_per_rev_m,
                                                      double *facing_time_constant_speed_s_out,
                                                      gullet_status *status_out);

/**
 * Time of facing or parting at constant cutting speed up to a limit of the spindle speed.
 *
 *     t = pi (D_1^2 - D_k^2)/(4 v_c f) + (D_k - D_2)/(2 f n_max); D_k = max(D_2, min(D_1, v_c/(pi
 *         n_max)))
 *
 * outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
 * inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * maximum_speed_rev_per_s: n_max, largest spindle speed [rev/s]; maximum_speed > 0.
 * facing_time_limited_speed_s_out: t [s].
 * Valid for: D_k is the diameter below which the spindle stays at its largest speed; n in
 *     revolutions per second; no time for the spindle to gain speed.
 * Source: derived: integral of the speed over the radius.
 * Example: outer_diameter=100 mm; inner_diameter=0 mm; cutting_speed=200 m/min; feed_per_rev=0.2
 *     mm; maximum_speed=3000 rpm => 0.2052 min (own arithmetic: 0.1875 min at constant cutting
 *     speed down to 21.2 mm, then 0.0177 min).
 */
gullet_status gullet_facing_time_limited_speed(double outer_diameter_m,
                                               double inner_diameter_m,
                                               double cutting_speed_m_per_s,
                                               double feed_per_rev_m,
                                               double maximum_speed_rev_per_s,
                                               double *facing_time_limited_speed_s_out);

/** gullet_facing_time_limited_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_facing_time_limited_speed_array(size_t count,
                                                     const double *outer_diameter_m,
                                                     const double *inner_diameter_m,
                                                     const double *cutting_speed_m_per_s,
                                                     const double *feed_per_rev_m,
                                                     const double *maximum_speed_rev_per_s,
                                                     double *facing_time_limited_speed_s_out,
                                                     gullet_status *status_out);

/**
 * Time of tapping one hole: in, out, and two reversals of the spindle.
 *
 *     t = (L + l_a)/(P n) + (L + l_a)/(P n_r) + 2 t_r
 *
 * depth_m: L, depth of the thread [m]; depth >= 0.
 * approach_m: l_a, approach above the work [m]; approach >= 0.
 * lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
 * spindle_speed_rev_per_s: n, spindle speed on the way in [rev/s]; spindle_speed > 0.
 * reverse_speed_rev_per_s: n_r, spindle speed on the way out [rev/s]; reverse_speed > 0.
 * reversal_time_s: t_r, time of one reversal of the spindle [s]; reversal_time >= 0.
 * tapping_time_s_out: t [s].
 * Valid for: n in revolutions per second; two reversals a hole.
 * Source: derived: turns over speed.
 * Example: depth=20 mm; approach=4 mm; lead=1.5 mm; spindle_speed=320 rpm; reverse_speed=640 rpm;
 *     reversal_time=0.5 s => 5.5 s (identity: 16 turns in 3.0 s, back in 1.5 s, two reversals).
 */
gullet_status gullet_tapping_time(double depth_m,
                                  double approach_m,
                                  double lead_m,
                                  double spindle_speed_rev_per_s,
                                  double reverse_speed_rev_per_s,
                                  double reversal_time_s,
                                  double *tapping_time_s_out);

/** gullet_tapping_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tapping_time_array(size_t count,
                                        const double *depth_m,
                                        const double *approach_m,
                                        const double *lead_m,
                                        const double *spindle_speed_rev_per_s,
                                        const double *reverse_speed_rev_per_s,
                                        const double *reversal_time_s,
                                        double *tapping_time_s_out,
                                        gullet_status *status_out);

/**
 * Time of a rapid move from rest to rest.
 *
 *     t = s/v + v/a for s >= v^2/a, t = 2 sqrt(s/a) for s < v^2/a
 *
 * distance_m: s, distance [m]; distance >= 0.
 * rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
 * acceleration_m_per_s2: a, acceleration, the same to start and to stop [m/s2]; acceleration > 0.
 * rapid_time_s_out: t [s].
 * Valid for: constant acceleration, no limit of jerk; short moves never reach the rapid speed.
 * Source: derived: motion at constant acceleration.
 * Example: distance=50 mm; rapid_speed=30 m/min; acceleration=2.5 m/s2 => 0.28284 s (own
 *     arithmetic: 2 sqrt(0.02) s, the speed not reached).
 */
gullet_status gullet_rapid_time(double distance_m,
                                double rapid_speed_m_per_s,
                                double acceleration_m_per_s2,
                                double *rapid_time_s_out);

/** gullet_rapid_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_rapid_time_array(size_t count,
                                      const double *distance_m,
                                      const double *rapid_speed_m_per_s,
                                      const double *acceleration_m_per_s2,
                                      double *rapid_time_s_out,
                                      gullet_status *status_out);

/**
 * Time of sawing through a section.
 *
 *     t = A/q
 *
 * area_m2: A, area of the section [m2]; area >= 0.
 * cutting_rate_m2_per_s: q, area sawn per time [m2/s]; cutting_rate > 0.
 * band_saw_time_s_out: t [s].
 * Valid for: mean rate over the section; for a tube the area of the wall, not of the solid.
 * Source: definition; rates from band-saw charts.
 * Example: area=28.2743338823081391 in2; cutting_rate=2.5 in2/min => 11.31 min (identity: 6 in
 *     round at 2.5 in2/min).
 */
gullet_status gullet_band_saw_time(double area_m2,
                                   double cutting_rate_m2_per_s,
                                   double *band_saw_time_s_out);

/** gullet_band_saw_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_band_saw_time_array(size_t count,
                                         const double *area_m2,
                                         const double *cutting_rate_m2_per_s,
                                         double *band_saw_time_s_out,
                                         gullet_status *status_out);

/**
 * Share of the tool change that falls on one part.
 *
 *     t = t_ch q t_c/T
 *
 * cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * tool_change_time_per_part_s_out: t [s].
 * Valid for: mean over many parts; edges are changed at the end of their life, also within a part.
 * Source: definition; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.7 p.209,
 *     seen in a companion.
 * Example: cutting_time=2 min; change_time=10 min; tool_life=240 min => 0.083 min (P.C. Sharma, A
 *     Textbook of Production Engineering, 11th ed., Ex. 4.7 p.209, seen in a companion).
 */
gullet_status gullet_tool_change_time_per_part(double cutting_time_s,
                                               double change_time_s,
                                               double tool_life_s,
                                               double in_cut_share,
                                               double *tool_change_time_per_part_s_out);

/** gullet_tool_change_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tool_change_time_per_part_array(size_t count,
                                                     const double *cutting_time_s,
                                                     const double *change_time_s,
                                                     const double *tool_life_s,
                                                     const double *in_cut_share,
                                                     double *tool_change_time_per_part_s_out,
                                                     gullet_status *status_out);

/**
 * Standard time: the normal time with an allowance.
 *
 *     t_s = t (1 + A)
 *
 * normal_time_s: t, normal time [s]; normal_time >= 0.
 * allowance: A, allowance as a share of the normal time [-]; allowance >= 0.
 * standard_time_s_out: t_s [s].
 * Valid for: allowance as a share of the normal time; a share of the standard time would make it
 *     t/(1 - A).
 * Source: definition.
 * Example: normal_time=8 min; allowance=15 % => 9.2 min (identity: 8 x 1.15 min, not 8/0.85).
 */
gullet_status gullet_standard_time(double normal_time_s,
                                   double allowance,
                                   double *standard_time_s_out);

/** gullet_standard_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_standard_time_array(size_t count,
                                         const double *normal_time_s,
                                         const double *allowance,
                                         double *standard_time_s_out,
                                         gullet_status *status_out);

/**
 * Length of a straight path over three axes.
 *
 *     L = sqrt(x^2 + y^2 + z^2)
 *
 * travel_x_m: x, travel of the first axis, either way [m]; travel_x: any finite value.
 * travel_y_m: y, travel of the second axis, either way [m]; travel_y: any finite value.
 * travel_z_m: z, travel of the third axis, either way [m]; travel_z: any finite value.
 * path_length_m_out: L [m].
 * Valid for: axes at right angles, interpolated: speed and acceleration are those along the path.
 * Source: geometry.
 * Example: travel_x=30 mm; travel_y=-40 mm; travel_z=120 mm => 130 mm (identity: 3-4-5 and
 *     5-12-13).
 */
gullet_status gullet_path_length(double travel_x_m,
                                 double travel_y_m,
                                 double travel_z_m,
                                 double *path_length_m_out);

/** gullet_path_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_path_length_array(size_t count,
                                       const double *travel_x_m,
                                       const double *travel_y_m,
                                       const double *travel_z_m,
                                       double *path_length_m_out,
                                       gullet_status *status_out);

/**
 * Time of a move in which each axis goes its own way at its own pace.
 *
 *     t = max(t_x, t_y, t_z)
 *
 * time_x_s: t_x, time of the first axis [s]; time_x >= 0.
 * time_y_s: t_y, time of the second axis [s]; time_y >= 0.
 * time_z_s: t_z, time of the third axis [s]; time_z >= 0.
 * simultaneous_move_time_s_out: t [s].
 * Valid for: axes start together and do not wait for each other: the path is not straight, mind
 *     what stands in the way.
 * Source: definition.
 * Example: time_x=1.2 s; time_y=0.8 s; time_z=0.3 s => 1.2 s (identity).
 */
gullet_status gullet_simultaneous_move_time(double time_x_s,
                                            double time_y_s,
                                            double time_z_s,
                                            double *simultaneous_move_time_s_out);

/** gullet_simultaneous_move_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_simultaneous_move_time_array(size_t count,
                                                  const double *time_x_s,
                                                  const double *time_y_s,
                                                  const double *time_z_s,
                                                  double *simultaneous_move_time_s_out,
                                                  gullet_status *status_out);

/**
 * Highest speed that a move from rest to rest reaches.
 *
 *     v_p = min(v, sqrt(a s))
 *
 * distance_m: s, distance [m]; distance >= 0.
 * set_speed_m_per_s: v, speed that is set [m/s]; set_speed > 0.
 * acceleration_m_per_s2: a, acceleration, the same to start and to stop [m/s2]; acceleration > 0.
 * move_peak_speed_m_per_s_out: v_p [m/s].
 * Valid for: constant acceleration, no limit of jerk; below v the move is too short for the speed,
 *     a feed as well as a rapid.
 * Source: derived: motion at constant acceleration.
 * Example: distance=50 mm; set_speed=30 m/min; acceleration=2.5 m/s2 => 0.35355339 m/s (own
 *     arithmetic: sqrt(0.125) m/s).
 */
gullet_status gullet_move_peak_speed(double distance_m,
                                     double set_speed_m_per_s,
                                     double acceleration_m_per_s2,
                                     double *move_peak_speed_m_per_s_out);

/** gullet_move_peak_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_move_peak_speed_array(size_t count,
                                           const double *distance_m,
                                           const double *set_speed_m_per_s,
                                           const double *acceleration_m_per_s2,
                                           double *move_peak_speed_m_per_s_out,
                                           gullet_status *status_out);

/**
 * Time of a travel that is cranked by hand.
 *
 *     t = s/(L n)
 *
 * travel_m: s, travel [m]; travel >= 0.
 * travel_per_turn_m: L, travel for one turn of the handwheel [m]; travel_per_turn > 0.
 * pace_rev_per_s: n, turns a hand can hold [rev/s]; pace > 0.
 * hand_cranked_time_s_out: t [s].
 * Valid for: steady turning, with no time to take hold or to look at the dial; n in revolutions per
 *     second.
 * Source: definition: turns over pace.
 * Example: travel=4 in; travel_per_turn=0.2 in; pace=60 rpm => 20 s (identity: 20 turns, one a
 *     second).
 */
gullet_status gullet_hand_cranked_time(double travel_m,
                                       double travel_per_turn_m,
                                       double pace_rev_per_s,
                                       double *hand_cranked_time_s_out);

/** gullet_hand_cranked_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_hand_cranked_time_array(size_t count,
                                             const double *travel_m,
                                             const double *travel_per_turn_m,
                                             const double *pace_rev_per_s,
                                             double *hand_cranked_time_s_out,
                                             gullet_status *status_out);

/**
 * Time of a unit after learning on the units before it.
 *
 *     t_x = t_1 x^(log2(r))
 *
 * first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
 * learning_rate: r, time of a unit over the time of the unit half its number [-]; 0 < learning_rate
 *     <= 1.
 * unit: x, number of the unit [-]; unit >= 1.
 * learning_unit_time_s_out: t_x [s].
 * Valid for: unit curve (Crawford), not the cumulative average (Wright): taking one for the other
 *     errs by a third at 80 %.
 * Source: unit learning curve, from memory; T.P. Wright, Factors affecting the cost of airplanes,
 *     quoted.
 * Example: first_unit_time=60 min; learning_rate=90 %; unit=4 => 48.6 min (identity: 60 x 0.9^2
 *     min).
 */
gullet_status gullet_learning_unit_time(double first_unit_time_s,
                                        double learning_rate,
                                        double unit,
                                        double *learning_unit_time_s_out);

/** gullet_learning_unit_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_learning_unit_time_array(size_t count,
                                              const double *first_unit_time_s,
                                              const double *learning_rate,
                                              const double *unit,
                                              double *learning_unit_time_s_out,
                                              gullet_status *status_out);

/**
 * Time of the first units together, where the time of a unit falls by the rate at every doubling.
 *
 *     t = t_1 S; S = sum of x^(log2(r)) over x from 1 to N
 *
 * first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
 * learning_rate: r, time of a unit over the time of the unit half its number [-]; 0 < learning_rate
 *     <= 1.
 * units: N, units made [-]; units >= 1.
 * learning_total_time_unit_curve_s_out: t [s].
 * Valid for: unit curve (Crawford); the sum by its first terms and the Euler-Maclaurin formula, to
 *     rounding for any number of units.
 * Source: sum of the unit learning curve; example: C.T. Horngren et al., Cost Accounting,
 *     incremental unit-time learning model, from memory.
 * Example: first_unit_time=100 h; learning_rate=80 %; units=4 => 314.21 h (C.T. Horngren et al.,
 *     Cost Accounting: A Managerial Emphasis, exhibit of the incremental unit-time learning model,
 *     from memory).
 */
gullet_status gullet_learning_total_time_unit_curve(double first_unit_time_s,
                                                    double learning_rate,
                                                    double units,
                                                    double *learning_total_time_unit_curve_s_out);

/** gullet_learning_total_time_unit_curve over arrays of `count` rows; see "Arrays". */
gullet_status gullet_learning_total_time_unit_curve_array(size_t count,
                                                          const double *first_unit_time_s,
                                                          const double *learning_rate,
                                                          const double *units,
                                                          double *learning_total_time_unit_curve_s_out,
                                                          gullet_status *status_out);

/**
 * Mean time of the first units, where that mean falls by the rate at every doubling.
 *
 *     t_m = t_1 N^(log2(r))
 *
 * first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
 * learning_rate: r, mean time of so many units over that of half as many [-]; 0 < learning_rate <=
 *     1.
 * units: N, units made [-]; units >= 1.
 * learning_average_time_s_out: t_m [s].
 * Valid for: cumulative average (Wright), not the unit curve (Crawford): taking one for the other
 *     errs by a third at 80 %.
 * Source: T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et
 *     al., Cost Accounting, cumulative average-time learning model, from memory.
 * Example: first_unit_time=100 h; learning_rate=80 %; units=7 => 53.45 h (C.T. Horngren et al.,
 *     Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning
 *     model, from memory).
 */
gullet_status gullet_learning_average_time(double first_unit_time_s,
                                           double learning_rate,
                                           double units,
                                           double *learning_average_time_s_out);

/** gullet_learning_average_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_learning_average_time_array(size_t count,
                                                 const double *first_unit_time_s,
                                                 const double *learning_rate,
                                                 const double *units,
                                                 double *learning_average_time_s_out,
                                                 gullet_status *status_out);

/**
 * Time of the first units together, where their mean falls by the rate at every doubling.
 *
 *     t = N t_1 N^(log2(r))
 *
 * first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
 * learning_rate: r, mean time of so many units over that of half as many [-]; 0 < learning_rate <=
 *     1.
 * units: N, units made [-]; units >= 1.
 * learning_total_time_cumulative_average_s_out: t [s].
 * Valid for: cumulative average (Wright), not the unit curve (Crawford): taking one for the other
 *     errs by a third at 80 %.
 * Source: T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et
 *     al., Cost Accounting, cumulative average-time learning model, from memory.
 * Example: first_unit_time=100 h; learning_rate=80 %; units=3 => 210.63 h (C.T. Horngren et al.,
 *     Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning
 *     model, from memory).
 */
gullet_status gullet_learning_total_time_cumulative_average(double first_unit_time_s,
                                                            double learning_rate,
                                                            double units,
                                                            double *learning_total_time_cumulative_average_s_out);

/** gullet_learning_total_time_cumulative_average over arrays of `count` rows; see "Arrays". */
gullet_status gullet_learning_total_time_cumulative_average_array(size_t count,
                                                                  const double *first_unit_time_s,
                                                                  const double *learning_rate,
                                                                  const double *units,
                                                                  double *learning_total_time_cumulative_average_s_out,
                                                                  gullet_status *status_out);

/**
 * Mean time of the units of a lot.
 *
 *     t_m = t/N
 *
 * total_time_s: t, time of all the units [s]; total_time >= 0.
 * units: N, units made [-]; units >= 1.
 * mean_unit_time_s_out: t_m [s].
 * Valid for: any curve of learning, or none.
 * Source: definition.
 * Example: total_time=314.21 h; units=4 => 78.5525 h (identity: 314.21/4).
 */
gullet_status gullet_mean_unit_time(double total_time_s,
                                    double units,
                                    double *mean_unit_time_s_out);

/** gullet_mean_unit_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_unit_time_array(size_t count,
                                          const double *total_time_s,
                                          const double *units,
                                          double *mean_unit_time_s_out,
                                          gullet_status *status_out);

/**
 * Largest force along the jaws or upward that friction on both jaw faces can hold.
 *
 *     F = 2 mu F_cl
 *
 * clamping_force_n: F_cl, clamping force, pressing on both faces [N]; clamping_force >= 0.
 * friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
 * two_face_friction_capacity_n_out: F [N].
 * Valid for: two flat jaws, one clamping force that both faces feel; no safety factor; no force
 *     across the jaws.
 * Source: Coulomb friction, derived.
 * Example: clamping_force=10 kN; friction=0.2 => 4 kN (identity: 2 x 0.2 x 10 kN).
 */
gullet_status gullet_two_face_friction_capacity(double clamping_force_n,
                                                double friction,
                                                double *two_face_friction_capacity_n_out);

/** gullet_two_face_friction_capacity over arrays of `count` rows; see "Arrays". */
gullet_status gullet_two_face_friction_capacity_array(size_t count,
                                                      const double *clamping_force_n,
                                                      const double *friction,
                                                      double *two_face_friction_capacity_n_out,
                                                      gullet_status *status_out);

/**
 * Clamping force that keeps the work from sliding along the jaws or lifting.
 *
 *     F_cl = S sqrt(F_a^2 + F_l^2)/(2 mu)
 *
 * force_along_n: F_a, peak force along the jaws [N]; force_along: any finite value.
 * force_lift_n: F_l, peak force that lifts the work [N]; force_lift: any finite value.
 * friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
 * safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
 * required_clamping_force_n_out: F_cl [N].
 * Valid for: two faces; peak forces, not means; parallels under the work give no hold against lift;
 *     force across the jaws and tipping are checked apart.
 * Source: Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by
 *     VDI 3106, seen in a chuck manual.
 * Example: force_along=1200 N; force_lift=500 N; friction=0.2; safety_factor=2 => 6500 N (identity:
 *     2 x 1300/0.4 N).
 */
gullet_status gullet_required_clamping_force(double force_along_n,
                                             double force_lift_n,
                                             double friction,
                                             double safety_factor,
                                             double *required_clamping_force_n_out);

/** gullet_required_clamping_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_required_clamping_force_array(size_t count,
                                                   const double *force_along_n,
                                                   const double *force_lift_n,
                                                   const double *friction,
                                                   const double *safety_factor,
                                                   double *required_clamping_force_n_out,
                                                   gullet_status *status_out);

/**
 * Clamping force that keeps a force across the jaws from opening the clamp.
 *
 *     F_cl = S F_q
 *
 * force_across_n: F_q, peak force across the jaws, away from the fixed jaw [N]; force_across >= 0.
 * safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
 * clamping_force_across_n_out: F_cl [N].
 * Valid for: the clamping force does not rise when the work pulls away from the fixed jaw; the
 *     fixed jaw then presses with F_cl - F_q only, which is what is left for its friction; towards
 *     the fixed jaw the jaw itself carries the force.
 * Source: derived: balance of the forces across the jaws.
 * Example: force_across=1500 N; safety_factor=2 => 3000 N (identity: 2 x 1500 N).
 */
gullet_status gullet_clamping_force_across(double force_across_n,
                                           double safety_factor,
                                           double *clamping_force_across_n_out);

/** gullet_clamping_force_across over arrays of `count` rows; see "Arrays". */
gullet_status gullet_clamping_force_across_array(size_t count,
                                                 const double *force_across_n,
                                                 const double *safety_factor,
                                                 double *clamping_force_across_n_out,
                                                 gullet_status *status_out);

/**
 * Clamping force that keeps a force across the jaws from tipping the work about the line of the
 *     jaws.
 *
 *     F_cl = S F_q (1 + h/(mu w + g/2))
 *
 * force_across_n: F_q, peak force across the jaws, away from the fixed jaw [N]; force_across >= 0.
 * height_m: h, height of the force above the middle of the grip [m]; height >= 0.
 * grip_height_m: g, height over which the jaws grip [m]; grip_height > 0.
 * work_width_m: w, width of the work between the jaw faces [m]; work_width > 0.
 * friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
 * safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
 * tipping_clamping_force_n_out: F_cl [N].
 * Valid for: rigid work and jaws; the movable jaw may pivot and takes no moment; the pressure on
 *     the fixed jaw, F_cl - S F_q, can shift by half the grip height, and friction up and down on
 *     the two faces adds a couple over the work's width; all friction is free for this; no support
 *     from parallels.
 * Source: derived: moments about the middle of the grip, S F_q h <= (F_cl - S F_q) (mu w + g/2); no
 *     published form seen.
 * Example: force_across=1000 N; height=30 mm; grip_height=20 mm; work_width=50 mm; friction=0.2;
 *     safety_factor=2 => 5000 N (own arithmetic: 2000 (1 + 30/(10 + 10)) N).
 */
gullet_status gullet_tipping_clamping_force(double force_across_n,
                                            double height_m,
                                            double grip_height_m,
                                            double work_width_m,
                                            double friction,
                                            double safety_factor,
                                            double *tipping_clamping_force_n_out);

/** gullet_tipping_clamping_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tipping_clamping_force_array(size_t count,
                                                  const double *force_across_n,
                                                  const double *height_m,
                                                  const double *grip_height_m,
                                                  const double *work_width_m,
                                                  const double *friction,
                                                  const double *safety_factor,
                                                  double *tipping_clamping_force_n_out,
                                                  gullet_status *status_out);

/**
 * Force of a screw from the torque on it, with friction in its thread and under its collar.
 *
 *     F = T/(d_m tan(lambda + rho)/2 + mu_c d_c/2); tan(lambda) = L/(pi d_m); tan(rho) =
 *         mu/cos(alpha)
 *
 * torque_n_m: T, torque on the screw [N.m]; torque >= 0.
 * mean_diameter_m: d_m, mean diameter of the thread [m]; mean_diameter > 0.
 * lead_m: L, lead of the thread [m]; lead > 0.
 * thread_friction: mu, coefficient of friction in the thread [-]; thread_friction >= 0.
 * thread_half_angle_rad: alpha, angle of the flanks to the plane across the axis: 0 for a square
 *     thread [rad]; 0 deg <= thread_half_angle < 90 deg.
 * collar_diameter_m: d_c, mean diameter of the collar: 2/3 of the outer one for a solid pivot under
 *     even pressure [m]; collar_diameter >= 0.
 * collar_friction: mu_c, coefficient of friction under the collar [-]; collar_friction >= 0.
 * lead*thread_friction < pi*mean_diameter*cos(thread_half_angle).
 * screw_clamping_force_n_out: F [N].
 * Valid for: raising the load (tightening); the screw does not jam: lambda + rho below 90 deg.
 * Source: screw as an inclined plane; example: R.C. Hibbeler, Statics, 14th ed., problem 8-76, seen
 *     (solution page).
 * Example: torque=8.75 N.m; mean_diameter=12 mm; lead=8 mm; thread_friction=0.27 => 2851 N (R.C.
 *     Hibbeler, Statics, 14th ed., problem 8-76, seen (solution page)).
 */
gullet_status gullet_screw_clamping_force(double torque_n_m,
                                          double mean_diameter_m,
                                          double lead_m,
                                          double thread_friction,
                                          double thread_half_angle_rad,
                                          double collar_diameter_m,
                                          double collar_friction,
                                          double *screw_clamping_force_n_out);

/** gullet_screw_clamping_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_screw_clamping_force_array(size_t count,
                                                const double *torque_n_m,
                                                const double *mean_diameter_m,
                                                const double *lead_m,
                                                const double *thread_friction,
                                                const double *thread_half_angle_rad,
                                                const double *collar_diameter_m,
                                                const double *collar_friction,
                                                double *screw_clamping_force_n_out,
                                                gullet_status *status_out);

/**
 * Force of a screw from the torque on it and its efficiency.
 *
 *     F = 2 pi eta T/L
 *
 * torque_n_m: T, torque on the screw [N.m]; torque >= 0.
 * lead_m: L, lead of the thread [m]; lead > 0.
 * efficiency: eta, efficiency of the screw with its collar [-]; 0 < efficiency <= 1.
 * screw_clamping_force_efficiency_n_out: F [N].
 * Valid for: efficiency 0.1 to 0.2 with plain collar friction (range of seen examples), 0.25 to
 *     0.45 well greased (from memory).
 * Source: derived: work of one turn.
 * Example: torque=40 N.m; lead=5 mm; efficiency=0.35 => 17592.9189 N (identity: 28 pi/0.005 N).
 */
gullet_status gullet_screw_clamping_force_efficiency(double torque_n_m,
                                                     double lead_m,
                                                     double efficiency,
                                                     double *screw_clamping_force_efficiency_n_out);

/** gullet_screw_clamping_force_efficiency over arrays of `count` rows; see "Arrays". */
gullet_status gullet_screw_clamping_force_efficiency_array(size_t count,
                                                           const double *torque_n_m,
                                                           const double *lead_m,
                                                           const double *efficiency,
                                                           double *screw_clamping_force_efficiency_n_out,
                                                           gullet_status *status_out);

/**
 * Tool life at a cutting speed.
 *
 *     T = 1 min (C/v_c)^(1/n)
 *
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * tool_life_s_out: T [s].
 * Valid for: v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the
 *     speeds tested.
 * Source: F.W. Taylor's life equation, from memory.
 * Example: cutting_speed=100 m/min; taylor_speed=400 m/min; taylor_exponent=0.25 => 256 min
 *     (identity: 4^4 min).
 */
gullet_status gullet_tool_life(double cutting_speed_m_per_s,
                               double taylor_speed_m_per_s,
                               double taylor_exponent,
                               double *tool_life_s_out);

/** gullet_tool_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tool_life_array(size_t count,
                                     const double *cutting_speed_m_per_s,
                                     const double *taylor_speed_m_per_s,
                                     const double *taylor_exponent,
                                     double *tool_life_s_out,
                                     gullet_status *status_out);

/**
 * Cutting speed that gives a tool life.
 *
 *     v_c = C (T/1 min)^(-n)
 *
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * speed_for_life_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the
 *     speeds tested.
 * Source: F.W. Taylor's life equation, from memory.
 * Example: tool_life=16 min; taylor_speed=400 m/min; taylor_exponent=0.25 => 200 m/min (identity:
 *     400/2).
 */
gullet_status gullet_speed_for_life(double tool_life_s,
                                    double taylor_speed_m_per_s,
                                    double taylor_exponent,
                                    double *speed_for_life_m_per_s_out);

/** gullet_speed_for_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_speed_for_life_array(size_t count,
                                          const double *tool_life_s,
                                          const double *taylor_speed_m_per_s,
                                          const double *taylor_exponent,
                                          double *speed_for_life_m_per_s_out,
                                          gullet_status *status_out);

/**
 * Taylor's exponent from the lives at two cutting speeds.
 *
 *     n = ln(v_1/v_2)/ln(T_2/T_1)
 *
 * first_speed_m_per_s: v_1, cutting speed of the first test [m/s]; first_speed > 0.
 * first_life_s: T_1, tool life of the first test [s]; first_life > 0.
 * second_speed_m_per_s: v_2, cutting speed of the second test [m/s]; second_speed > 0.
 * second_life_s: T_2, tool life of the second test [s]; second_life > 0.
 * the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) >
 *     0.
 * taylor_exponent_from_two_out: n [-].
 * Valid for: exponent of T in v T^n = C; two tests say nothing of the spread: a fit over many is
 *     better.
 * Source: derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex.
 *     14.7 p.568, seen in a companion.
 * Example: first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min =>
 *     0.224 (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen in a
 *     companion).
 */
gullet_status gullet_taylor_exponent_from_two(double first_speed_m_per_s,
                                              double first_life_s,
                                              double second_speed_m_per_s,
                                              double second_life_s,
                                              double *taylor_exponent_from_two_out);

/** gullet_taylor_exponent_from_two over arrays of `count` rows; see "Arrays". */
gullet_status gullet_taylor_exponent_from_two_array(size_t count,
                                                    const double *first_speed_m_per_s,
                                                    const double *first_life_s,
                                                    const double *second_speed_m_per_s,
                                                    const double *second_life_s,
                                                    double *taylor_exponent_from_two_out,
                                                    gullet_status *status_out);

/**
 * Cutting speed for a life of one minute from the lives at two cutting speeds.
 *
 *     C = v_1 (T_1/1 min)^n; n = ln(v_1/v_2)/ln(T_2/T_1)
 *
 * first_speed_m_per_s: v_1, cutting speed of the first test [m/s]; first_speed > 0.
 * first_life_s: T_1, tool life of the first test [s]; first_life > 0.
 * second_speed_m_per_s: v_2, cutting speed of the second test [m/s]; second_speed > 0.
 * second_life_s: T_2, tool life of the second test [s]; second_life > 0.
 * the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) >
 *     0.
 * taylor_speed_from_two_m_per_s_out: C [m/s].
 * Valid for: v T^n = C; two tests say nothing of the spread: a fit over many is better.
 * Source: derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex.
 *     14.7 p.568, seen in a companion.
 * Example: first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min =>
 *     68.4 m/min (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen
 *     in a companion).
 */
gullet_status gullet_taylor_speed_from_two(double first_speed_m_per_s,
                                           double first_life_s,
                                           double second_speed_m_per_s,
                                           double second_life_s,
                                           double *taylor_speed_from_two_m_per_s_out);

/** gullet_taylor_speed_from_two over arrays of `count` rows; see "Arrays". */
gullet_status gullet_taylor_speed_from_two_array(size_t count,
                                                 const double *first_speed_m_per_s,
                                                 const double *first_life_s,
                                                 const double *second_speed_m_per_s,
                                                 const double *second_life_s,
                                                 double *taylor_speed_from_two_m_per_s_out,
                                                 gullet_status *status_out);

/**
 * Exponent of the feed in the extended Taylor equation from the lives at two feeds and one cutting
 *     speed.
 *
 *     a = n ln(T_1/T_2)/ln(f_2/f_1)
 *
 * first_feed_m: f_1, feed of the first test [m]; first_feed > 0.
 * first_life_s: T_1, tool life of the first test [s]; first_life > 0.
 * second_feed_m: f_2, feed of the second test [m]; second_feed > 0.
 * second_life_s: T_2, tool life of the second test [s]; second_life > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * the larger feed has the shorter life: (first_feed - second_feed)*(second_life - first_life) > 0.
 * feed_exponent_from_two_out: a [-].
 * Valid for: exponent of f in v T^n f^a = C; both tests at one cutting speed and depth; the form T
 *     = K v^(-1/n) f^(-p) has p = a/n.
 * Source: derived from v T^n f^a = C: T_1^n f_1^a = T_2^n f_2^a.
 * Example: first_feed=0.2 mm; first_life=64 min; second_feed=0.4 mm; second_life=16 min;
 *     taylor_exponent=0.25 => 0.5 (own arithmetic: 0.25 ln 4/ln 2).
 */
gullet_status gullet_feed_exponent_from_two(double first_feed_m,
                                            double first_life_s,
                                            double second_feed_m,
                                            double second_life_s,
                                            double taylor_exponent,
                                            double *feed_exponent_from_two_out);

/** gullet_feed_exponent_from_two over arrays of `count` rows; see "Arrays". */
gullet_status gullet_feed_exponent_from_two_array(size_t count,
                                                  const double *first_feed_m,
                                                  const double *first_life_s,
                                                  const double *second_feed_m,
                                                  const double *second_life_s,
                                                  const double *taylor_exponent,
                                                  double *feed_exponent_from_two_out,
                                                  gullet_status *status_out);

/**
 * Tool life relative to a reference cut at another speed, feed and depth.
 *
 *     T = T_ref (r_v r_f^a r_d^b)^(-1/n)
 *
 * reference_life_s: T_ref, tool life of the reference cut [s]; reference_life > 0.
 * speed_ratio: r_v, cutting speed over that of the reference cut [-]; speed_ratio > 0.
 * feed_ratio: r_f, feed over that of the reference cut [-]; feed_ratio > 0.
 * depth_ratio: r_d, depth of cut over that of the reference cut [-]; depth_ratio > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
 * depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
 * scaled_tool_life_s_out: T [s].
 * Valid for: v T^n f^a d^b = C, exponents of this form: the form T = K v^(-1/n) f^(-p) has a = n p;
 *     within the range tested.
 * Source: extended Taylor equation, from memory; example: P.C. Sharma, A Textbook of Production
 *     Engineering, Ex. 14.4 p.566, seen in a companion.
 * Example: reference_life=60 min; speed_ratio=1.2; feed_ratio=1.2; depth_ratio=1.2;
 *     taylor_exponent=0.13; feed_exponent=0.77; depth_exponent=0.37 => 2.98 min (P.C. Sharma, A
 *     Textbook of Production Engineering, 11th ed., Ex. 14.4 p.566, seen in a companion).
 */
gullet_status gullet_scaled_tool_life(double reference_life_s,
                                      double speed_ratio,
                                      double feed_ratio,
                                      double depth_ratio,
                                      double taylor_exponent,
                                      double feed_exponent,
                                      double depth_exponent,
                                      double *scaled_tool_life_s_out);

/** gullet_scaled_tool_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_scaled_tool_life_array(size_t count,
                                            const double *reference_life_s,
                                            const double *speed_ratio,
                                            const double *feed_ratio,
                                            const double *depth_ratio,
                                            const double *taylor_exponent,
                                            const double *feed_exponent,
                                            const double *depth_exponent,
                                            double *scaled_tool_life_s_out,
                                            gullet_status *status_out);

/**
 * Tool life at a cutting speed, feed and depth of cut (extended Taylor equation).
 *
 *     T = 1 min (C/(v_c (f/f_0)^a (a_p/a_0)^b))^(1/n)
 *
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * feed_per_rev_m: f, feed [m]; feed_per_rev > 0.
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute at the reference feed and depth
 *     [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
 * depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
 * reference_feed_m: f_0, feed that C is for [m]; reference_feed > 0.
 * reference_depth_m: a_0, depth of cut that C is for [m]; reference_depth > 0.
 * extended_tool_life_s_out: T [s].
 * Valid for: v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute
 *     at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's
 *     equation, 1 in where in inches; within the range tested.
 * Source: extended Taylor equation, from memory.
 * Example: cutting_speed=100 m/min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min;
 *     taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm;
 *     reference_depth=2 mm => 16 min (identity: (4/4^0.5)^4 min).
 */
gullet_status gullet_extended_tool_life(double cutting_speed_m_per_s,
                                        double feed_per_rev_m,
                                        double depth_of_cut_m,
                                        double taylor_speed_m_per_s,
                                        double taylor_exponent,
                                        double feed_exponent,
                                        double depth_exponent,
                                        double reference_feed_m,
                                        double reference_depth_m,
                                        double *extended_tool_life_s_out);

/** gullet_extended_tool_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_extended_tool_life_array(size_t count,
                                              const double *cutting_speed_m_per_s,
                                              const double *feed_per_rev_m,
                                              const double *depth_of_cut_m,
                                              const double *taylor_speed_m_per_s,
                                              const double *taylor_exponent,
                                              const double *feed_exponent,
                                              const double *depth_exponent,
                                              const double *reference_feed_m,
                                              const double *reference_depth_m,
                                              double *extended_tool_life_s_out,
                                              gullet_status *status_out);

/**
 * Cutting speed that gives a tool life at a feed and depth of cut (extended Taylor equation).
 *
 *     v_c = C (T/1 min)^(-n) (f/f_0)^(-a) (a_p/a_0)^(-b)
 *
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * feed_per_rev_m: f, feed [m]; feed_per_rev > 0.
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute at the reference feed and depth
 *     [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
 * depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
 * reference_feed_m: f_0, feed that C is for [m]; reference_feed > 0.
 * reference_depth_m: a_0, depth of cut that C is for [m]; reference_depth > 0.
 * extended_speed_for_life_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute
 *     at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's
 *     equation, 1 in where in inches; within the range tested.
 * Source: extended Taylor equation, from memory.
 * Example: tool_life=16 min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min;
 *     taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm;
 *     reference_depth=2 mm => 100 m/min (identity: 400/2/2).
 */
gullet_status gullet_extended_speed_for_life(double tool_life_s,
                                             double feed_per_rev_m,
                                             double depth_of_cut_m,
                                             double taylor_speed_m_per_s,
                                             double taylor_exponent,
                                             double feed_exponent,
                                             double depth_exponent,
                                             double reference_feed_m,
                                             double reference_depth_m,
                                             double *extended_speed_for_life_m_per_s_out);

/** gullet_extended_speed_for_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_extended_speed_for_life_array(size_t count,
                                                   const double *tool_life_s,
                                                   const double *feed_per_rev_m,
                                                   const double *depth_of_cut_m,
                                                   const double *taylor_speed_m_per_s,
                                                   const double *taylor_exponent,
                                                   const double *feed_exponent,
                                                   const double *depth_exponent,
                                                   const double *reference_feed_m,
                                                   const double *reference_depth_m,
                                                   double *extended_speed_for_life_m_per_s_out,
                                                   gullet_status *status_out);

/**
 * Tool life relative to a reference cut, by the powers of the equation that is solved for the life.
 *
 *     T = T_ref r_v^(-p) r_f^(-q) r_d^(-r)
 *
 * reference_life_s: T_ref, tool life of the reference cut: K of the equation where speed, feed and
 *     depth of it are 1 [s]; reference_life > 0.
 * speed_ratio: r_v, cutting speed over that of the reference cut [-]; speed_ratio > 0.
 * feed_ratio: r_f, feed over that of the reference cut [-]; feed_ratio > 0.
 * depth_ratio: r_d, depth of cut over that of the reference cut [-]; depth_ratio > 0.
 * speed_power: p, power of the cutting speed, 1/n [-]; speed_power > 1.
 * feed_power: q, power of the feed, 1/n_1 [-]; feed_power: any finite value.
 * depth_power: r, power of the depth, 1/n_2 [-]; depth_power: any finite value.
 * tool_life_by_powers_s_out: T [s].
 * Valid for: T = K v^(-1/n) f^(-1/n_1) d^(-1/n_2), also written v^p f^q d^r T = K: not the
 *     exponents of v T^n f^a d^b = C, which are a = q/p and b = r/p; within the range tested.
 * Source: extended Taylor equation solved for the life, from memory.
 * Example: reference_life=64 min; speed_ratio=2; feed_ratio=2; depth_ratio=2; speed_power=4;
 *     feed_power=1; depth_power=0.5 => 1.41421356237 min (identity: 64/2^5.5 min).
 */
gullet_status gullet_tool_life_by_powers(double reference_life_s,
                                         double speed_ratio,
                                         double feed_ratio,
                                         double depth_ratio,
                                         double speed_power,
                                         double feed_power,
                                         double depth_power,
                                         double *tool_life_by_powers_s_out);

/** gullet_tool_life_by_powers over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tool_life_by_powers_array(size_t count,
                                               const double *reference_life_s,
                                               const double *speed_ratio,
                                               const double *feed_ratio,
                                               const double *depth_ratio,
                                               const double *speed_power,
                                               const double *feed_power,
                                               const double *depth_power,
                                               double *tool_life_by_powers_s_out,
                                               gullet_status *status_out);

/**
 * Taylor's exponent of the life from the power of the speed.
 *
 *     n = 1/p
 *
 * speed_power: p, power of the cutting speed in v^p T = K or T = K v^(-p) [-]; speed_power > 1.
 * taylor_exponent_from_power_out: n [-].
 * Valid for: v^p T = K and v T^n = C are one law; a source's n of 2 to 12 is such a power.
 * Source: derived: the root of v^p T = K.
 * Example: speed_power=4 => 0.25 (identity).
 */
gullet_status gullet_taylor_exponent_from_power(double speed_power,
                                                double *taylor_exponent_from_power_out);

/** gullet_taylor_exponent_from_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_taylor_exponent_from_power_array(size_t count,
                                                      const double *speed_power,
                                                      double *taylor_exponent_from_power_out,
                                                      gullet_status *status_out);

/**
 * Exponent of feed or depth in v T^n f^a d^b = C from its power in the equation solved for the
 *     life.
 *
 *     a = n q
 *
 * power: q, power of the feed or depth in T = K v^(-1/n) f^(-q) d^(-r) [-]; power: any finite
 *     value.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * exponent_from_power_out: a [-].
 * Valid for: both forms are one law: q = 1/n_1, so a = n/n_1.
 * Source: derived: T = K v^(-1/n) f^(-q) raised to the power n.
 * Example: power=2; taylor_exponent=0.25 => 0.5 (identity).
 */
gullet_status gullet_exponent_from_power(double power,
                                         double taylor_exponent,
                                         double *exponent_from_power_out);

/** gullet_exponent_from_power over arrays of `count` rows; see "Arrays". */
gullet_status gullet_exponent_from_power_array(size_t count,
                                               const double *power,
                                               const double *taylor_exponent,
                                               double *exponent_from_power_out,
                                               gullet_status *status_out);

/**
 * Cutting speed for a life of one minute from the life at one cutting speed and the exponent.
 *
 *     C = v_c (T/1 min)^n
 *
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * tool_life_s: T, tool life at that speed; the unit life where C of a source is for seconds or for
 *     60 minutes [s]; tool_life > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * taylor_speed_from_one_m_per_s_out: C [m/s].
 * Valid for: v T^n = C; a constant that is stated for lives in seconds becomes one for minutes with
 *     T = 1 s.
 * Source: derived from v T^n = C; example: M.P. Groover, Fundamentals of Modern Manufacturing, 3rd
 *     ed., ex. 23.1, from memory.
 * Example: cutting_speed=160 m/min; tool_life=5 min; taylor_exponent=0.223 => 229 m/min (M.P.
 *     Groover, Fundamentals of Modern Manufacturing, 3rd ed., ex. 23.1, from memory).
 */
gullet_status gullet_taylor_speed_from_one(double cutting_speed_m_per_s,
                                           double tool_life_s,
                                           double taylor_exponent,
                                           double *taylor_speed_from_one_m_per_s_out);

/** gullet_taylor_speed_from_one over arrays of `count` rows; see "Arrays". */
gullet_status gullet_taylor_speed_from_one_array(size_t count,
                                                 const double *cutting_speed_m_per_s,
                                                 const double *tool_life_s,
                                                 const double *taylor_exponent,
                                                 double *taylor_speed_from_one_m_per_s_out,
                                                 gullet_status *status_out);

/**
 * Tool life to another width of flank wear.
 *
 *     T_2 = T_1 VB_2/VB_1
 *
 * tool_life_s: T_1, tool life to the criterion it was found with [s]; tool_life > 0.
 * flank_wear_m: VB_1, width of flank wear of that criterion [m]; flank_wear > 0.
 * new_flank_wear_m: VB_2, width of flank wear of the new criterion [m]; new_flank_wear > 0.
 * tool_life_for_criterion_s_out: T_2 [s].
 * Valid for: flank wear that grows in proportion to time: its steady part; not the first minutes
 *     nor the steep end.
 * Source: derived from wear in proportion to time.
 * Example: tool_life=20 min; flank_wear=0.3 mm; new_flank_wear=0.6 mm => 40 min (identity).
 */
gullet_status gullet_tool_life_for_criterion(double tool_life_s,
                                             double flank_wear_m,
                                             double new_flank_wear_m,
                                             double *tool_life_for_criterion_s_out);

/** gullet_tool_life_for_criterion over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tool_life_for_criterion_array(size_t count,
                                                   const double *tool_life_s,
                                                   const double *flank_wear_m,
                                                   const double *new_flank_wear_m,
                                                   double *tool_life_for_criterion_s_out,
                                                   gullet_status *status_out);

/**
 * Cutting speed for a life of one minute with another width of flank wear.
 *
 *     C_2 = C_1 (VB_2/VB_1)^n
 *
 * taylor_speed_m_per_s: C_1, cutting speed for a life of one minute with the criterion it was found
 *     with [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * flank_wear_m: VB_1, width of flank wear of that criterion [m]; flank_wear > 0.
 * new_flank_wear_m: VB_2, width of flank wear of the new criterion [m]; new_flank_wear > 0.
 * taylor_speed_for_criterion_m_per_s_out: C_2 [m/s].
 * Valid for: flank wear that grows in proportion to time; the exponent stays.
 * Source: derived: the life of v T^n = C times VB_2/VB_1.
 * Example: taylor_speed=100 m/min; taylor_exponent=0.25; flank_wear=0.05 mm; new_flank_wear=0.8 mm
 *     => 200 m/min (identity: 16^0.25).
 */
gullet_status gullet_taylor_speed_for_criterion(double taylor_speed_m_per_s,
                                                double taylor_exponent,
                                                double flank_wear_m,
                                                double new_flank_wear_m,
                                                double *taylor_speed_for_criterion_m_per_s_out);

/** gullet_taylor_speed_for_criterion over arrays of `count` rows; see "Arrays". */
gullet_status gullet_taylor_speed_for_criterion_array(size_t count,
                                                      const double *taylor_speed_m_per_s,
                                                      const double *taylor_exponent,
                                                      const double *flank_wear_m,
                                                      const double *new_flank_wear_m,
                                                      double *taylor_speed_for_criterion_m_per_s_out,
                                                      gullet_status *status_out);

/**
 * Depth of crater that ends the life of a carbide edge in a test.
 *
 *     KT = 0.06 mm + 0.3 f
 *
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * crater_depth_limit_m_out: KT [m].
 * Valid for: turning tests with sintered carbide.
 * Source: ISO 3685, criteria of tool life of sintered carbide, from memory.
 * Example: feed_per_rev=0.2 mm => 0.12 mm (own arithmetic: 0.06 + 0.3 x 0.2).
 */
gullet_status gullet_crater_depth_limit(double feed_per_rev_m, double *crater_depth_limit_m_out);

/** gullet_crater_depth_limit over arrays of `count` rows; see "Arrays". */
gullet_status gullet_crater_depth_limit_array(size_t count,
                                              const double *feed_per_rev_m,
                                              double *crater_depth_limit_m_out,
                                              gullet_status *status_out);

/**
 * Mean tool life from the median life that a fit of logarithms gives.
 *
 *     T_m = T_50 exp(s^2/2)
 *
 * median_life_s: T_50, median life, the exponential of the fitted logarithm [s]; median_life > 0.
 * log_deviation: s, standard deviation of the natural logarithms of the lives [-]; log_deviation >=
 *     0.
 * mean_from_median_life_s_out: T_m [s].
 * Valid for: lives that scatter log-normally; s of few readings is itself uncertain.
 * Source: mean of the log-normal distribution.
 * Example: median_life=10 min; log_deviation=0 => 10 min (identity).
 */
gullet_status gullet_mean_from_median_life(double median_life_s,
                                           double log_deviation,
                                           double *mean_from_median_life_s_out);

/** gullet_mean_from_median_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_from_median_life_array(size_t count,
                                                 const double *median_life_s,
                                                 const double *log_deviation,
                                                 double *mean_from_median_life_s_out,
                                                 gullet_status *status_out);

/**
 * Tool life at which a part costs least.
 *
 *     T_c = q (1/n - 1) (t_ch + C_e/C_m)
 *
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * minimum_cost_life_s_out: T_c [s].
 * Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
 * Source: derived: least cost over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
 *     2nd ed., Ex. 4.26 p.268 (the method, seen in a companion).
 * Example: taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min =>
 *     56 min (identity: 3 (2 + 16.6667) min, inputs of A. Ghosh, A.K. Mallik, Manufacturing
 *     Science, Ex. 4.26 p.268).
 */
gullet_status gullet_minimum_cost_life(double taylor_exponent,
                                       double change_time_s,
                                       double edge_cost_money,
                                       double machine_rate_money_per_s,
                                       double in_cut_share,
                                       double *minimum_cost_life_s_out);

/** gullet_minimum_cost_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_minimum_cost_life_array(size_t count,
                                             const double *taylor_exponent,
                                             const double *change_time_s,
                                             const double *edge_cost_money,
                                             const double *machine_rate_money_per_s,
                                             const double *in_cut_share,
                                             double *minimum_cost_life_s_out,
                                             gullet_status *status_out);

/**
 * Tool life at which a part takes least time.
 *
 *     T_p = q (1/n - 1) t_ch
 *
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * maximum_production_life_s_out: T_p [s].
 * Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
 * Source: derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
 *     2nd ed., Ex. 4.28 p.271 (the method, seen in a companion).
 * Example: taylor_exponent=0.25; change_time=2 min => 6 min (identity: 3 x 2 min).
 */
gullet_status gullet_maximum_production_life(double taylor_exponent,
                                             double change_time_s,
                                             double in_cut_share,
                                             double *maximum_production_life_s_out);

/** gullet_maximum_production_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_maximum_production_life_array(size_t count,
                                                   const double *taylor_exponent,
                                                   const double *change_time_s,
                                                   const double *in_cut_share,
                                                   double *maximum_production_life_s_out,
                                                   gullet_status *status_out);

/**
 * Cutting speed at which a part costs least.
 *
 *     v_c = C (T_c/1 min)^(-n); T_c = q (1/n - 1) (t_ch + C_e/C_m)
 *
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed.
 * minimum_cost_speed_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
 * Source: derived: least cost over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
 *     Science, 2nd ed., Ex. 4.26 p.268, seen in a companion.
 * Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min; edge_cost=2.50;
 *     machine_rate=0.15 money/min => 27.42 m/min (A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd
 *     ed., Ex. 4.26 p.268, seen in a companion).
 */
gullet_status gullet_minimum_cost_speed(double taylor_speed_m_per_s,
                                        double taylor_exponent,
                                        double change_time_s,
                                        double edge_cost_money,
                                        double machine_rate_money_per_s,
                                        double in_cut_share,
                                        double *minimum_cost_speed_m_per_s_out);

/** gullet_minimum_cost_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_minimum_cost_speed_array(size_t count,
                                              const double *taylor_speed_m_per_s,
                                              const double *taylor_exponent,
                                              const double *change_time_s,
                                              const double *edge_cost_money,
                                              const double *machine_rate_money_per_s,
                                              const double *in_cut_share,
                                              double *minimum_cost_speed_m_per_s_out,
                                              gullet_status *status_out);

/**
 * Cutting speed at which a part takes least time.
 *
 *     v_c = C (T_p/1 min)^(-n); T_p = q (1/n - 1) t_ch
 *
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * maximum_production_speed_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
 * Source: derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
 *     Science, 2nd ed., Ex. 4.28 p.271, seen in a companion.
 * Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min => 47.92 m/min (A. Ghosh,
 *     A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion).
 */
gullet_status gullet_maximum_production_speed(double taylor_speed_m_per_s,
                                              double taylor_exponent,
                                              double change_time_s,
                                              double in_cut_share,
                                              double *maximum_production_speed_m_per_s_out);

/** gullet_maximum_production_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_maximum_production_speed_array(size_t count,
                                                    const double *taylor_speed_m_per_s,
                                                    const double *taylor_exponent,
                                                    const double *change_time_s,
                                                    const double *in_cut_share,
                                                    double *maximum_production_speed_m_per_s_out,
                                                    gullet_status *status_out);

/**
 * Cost of machining one part, with its share of edges and tool changes.
 *
 *     K = C_m (t_h + t_c + t_ch q t_c/T) + C_e q t_c/T
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * unit_cost_money_out: K [-].
 * Valid for: without material and set-up; mean over many parts, edges changed also within a part.
 * Source: definition of the machining cost; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed.,
 *     Ex. 4.27 p.269 (the method, seen in a companion).
 * Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min;
 *     edge_cost=4; machine_rate=60 money/h => 7.7 (identity: 2 + 5 + 3/10 and 4/10).
 */
gullet_status gullet_unit_cost(double handling_time_s,
                               double cutting_time_s,
                               double change_time_s,
                               double tool_life_s,
                               double edge_cost_money,
                               double machine_rate_money_per_s,
                               double in_cut_share,
                               double *unit_cost_money_out);

/** gullet_unit_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_cost_array(size_t count,
                                     const double *handling_time_s,
                                     const double *cutting_time_s,
                                     const double *change_time_s,
                                     const double *tool_life_s,
                                     const double *edge_cost_money,
                                     const double *machine_rate_money_per_s,
                                     const double *in_cut_share,
                                     double *unit_cost_money_out,
                                     gullet_status *status_out);

/**
 * Cost of machining one part where an edge makes whole parts only.
 *
 *     K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/(q t_c))
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * unit_cost_whole_parts_money_out: K [-].
 * Valid for: without material and set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative,
 *     below a whole number counts as that number.
 * Source: definition of the machining cost; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd
 *     ed., ch. 24 (the method, from memory).
 * Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min;
 *     edge_cost=4; machine_rate=60 money/h => 7.77777777778 (identity: 9 whole parts an edge, 7 +
 *     3/9 + 4/9).
 */
gullet_status gullet_unit_cost_whole_parts(double handling_time_s,
                                           double cutting_time_s,
                                           double change_time_s,
                                           double tool_life_s,
                                           double edge_cost_money,
                                           double machine_rate_money_per_s,
                                           double in_cut_share,
                                           double *unit_cost_whole_parts_money_out);

/** gullet_unit_cost_whole_parts over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_cost_whole_parts_array(size_t count,
                                                 const double *handling_time_s,
                                                 const double *cutting_time_s,
                                                 const double *change_time_s,
                                                 const double *tool_life_s,
                                                 const double *edge_cost_money,
                                                 const double *machine_rate_money_per_s,
                                                 const double *in_cut_share,
                                                 double *unit_cost_whole_parts_money_out,
                                                 gullet_status *status_out);

/**
 * Time of one part, with its share of tool changes.
 *
 *     t = t_h + t_c + t_ch q t_c/T
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * unit_time_s_out: t [s].
 * Valid for: without set-up; mean over many parts, edges changed also within a part.
 * Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
 *     method, from memory).
 * Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min => 7.3 min
 *     (identity: 2 + 5 + 3/10 min).
 */
gullet_status gullet_unit_time(double handling_time_s,
                               double cutting_time_s,
                               double change_time_s,
                               double tool_life_s,
                               double in_cut_share,
                               double *unit_time_s_out);

/** gullet_unit_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_time_array(size_t count,
                                     const double *handling_time_s,
                                     const double *cutting_time_s,
                                     const double *change_time_s,
                                     const double *tool_life_s,
                                     const double *in_cut_share,
                                     double *unit_time_s_out,
                                     gullet_status *status_out);

/**
 * Time of one part where an edge makes whole parts only.
 *
 *     t = t_h + t_c + t_ch/m; m = floor(T/(q t_c))
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * unit_time_whole_parts_s_out: t [s].
 * Valid for: without set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative, below a whole
 *     number counts as that number.
 * Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
 *     method, from memory).
 * Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min =>
 *     7.33333333333 min (identity: 9 whole parts an edge, 7 + 3/9 min).
 */
gullet_status gullet_unit_time_whole_parts(double handling_time_s,
                                           double cutting_time_s,
                                           double change_time_s,
                                           double tool_life_s,
                                           double in_cut_share,
                                           double *unit_time_whole_parts_s_out);

/** gullet_unit_time_whole_parts over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_time_whole_parts_array(size_t count,
                                                 const double *handling_time_s,
                                                 const double *cutting_time_s,
                                                 const double *change_time_s,
                                                 const double *tool_life_s,
                                                 const double *in_cut_share,
                                                 double *unit_time_whole_parts_s_out,
                                                 gullet_status *status_out);

/**
 * Parts that one edge makes, as a mean over many.
 *
 *     m = T/(q t_c)
 *
 * cutting_time_s: t_c, cutting time a part [s]; cutting_time > 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * mean_parts_per_edge_out: m [-].
 * Valid for: edges are changed at the end of their life, also within a part.
 * Source: definition.
 * Example: cutting_time=5 min; tool_life=49 min => 9.8 (identity: 49/5).
 */
gullet_status gullet_mean_parts_per_edge(double cutting_time_s,
                                         double tool_life_s,
                                         double in_cut_share,
                                         double *mean_parts_per_edge_out);

/** gullet_mean_parts_per_edge over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_parts_per_edge_array(size_t count,
                                               const double *cutting_time_s,
                                               const double *tool_life_s,
                                               const double *in_cut_share,
                                               double *mean_parts_per_edge_out,
                                               gullet_status *status_out);

/**
 * Whole parts that one edge makes.
 *
 *     m = floor(T/(q t_c))
 *
 * cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
 * whole_parts_per_edge_out: m [-].
 * Valid for: T/(q t_c) within 1e-9, relative, below a whole number counts as that number; an edge
 *     that does not last one part is refused.
 * Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
 *     method, from memory).
 * Example: cutting_time=5 min; tool_life=49.9 min => 9 (identity).
 */
gullet_status gullet_whole_parts_per_edge(double cutting_time_s,
                                          double tool_life_s,
                                          double in_cut_share,
                                          double *whole_parts_per_edge_out);

/** gullet_whole_parts_per_edge over arrays of `count` rows; see "Arrays". */
gullet_status gullet_whole_parts_per_edge_array(size_t count,
                                                const double *cutting_time_s,
                                                const double *tool_life_s,
                                                const double *in_cut_share,
                                                double *whole_parts_per_edge_out,
                                                gullet_status *status_out);

/**
 * Cost of one cutting edge of an insert.
 *
 *     C_e = P/z_e
 *
 * insert_price_money: P, price of the insert [-]; insert_price >= 0.
 * edges: z_e, edges that are used [-]; edges >= 1.
 * insert_edge_cost_money_out: C_e [-].
 * Valid for: edges that are used, not those the insert has; holder and screws are left out.
 * Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
 *     method, from memory).
 * Example: insert_price=12; edges=8 => 1.5 (identity: 12/8).
 */
gullet_status gullet_insert_edge_cost(double insert_price_money,
                                      double edges,
                                      double *insert_edge_cost_money_out);

/** gullet_insert_edge_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_insert_edge_cost_array(size_t count,
                                            const double *insert_price_money,
                                            const double *edges,
                                            double *insert_edge_cost_money_out,
                                            gullet_status *status_out);

/**
 * Cost of one life of a tool that is reground.
 *
 *     C_e = P/(k + 1) + C_g
 *
 * tool_price_money: P, price of the tool [-]; tool_price >= 0.
 * regrinds: k, regrinds before the tool is used up [-]; regrinds >= 0.
 * regrind_cost_money: C_g, cost of grinding, a life [-]; regrind_cost >= 0.
 * reground_edge_cost_money_out: C_e [-].
 * Valid for: one life as bought and one for each regrind; the grinder's time belongs here and not
 *     to the tool change.
 * Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
 *     method, from memory).
 * Example: tool_price=40; regrinds=9; regrind_cost=1.5 => 5.5 (identity: 40/10 + 1.5).
 */
gullet_status gullet_reground_edge_cost(double tool_price_money,
                                        double regrinds,
                                        double regrind_cost_money,
                                        double *reground_edge_cost_money_out);

/** gullet_reground_edge_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_reground_edge_cost_array(size_t count,
                                              const double *tool_price_money,
                                              const double *regrinds,
                                              const double *regrind_cost_money,
                                              double *reground_edge_cost_money_out,
                                              gullet_status *status_out);

/**
 * Time of a lot: set-up and all its parts.
 *
 *     t = t_su + N t_cy
 *
 * setup_time_s: t_su, set-up time of the lot [s]; setup_time >= 0.
 * cycle_time_s: t_cy, time of one part [s]; cycle_time >= 0.
 * lot_size: N, parts in the lot [-]; lot_size >= 1.
 * lot_time_s_out: t [s].
 * Valid for: one set-up; the same time for each part.
 * Source: definition; example: P.F. Ostwald, T.S. McLaren, Cost Analysis and Estimating for
 *     Engineering and Management, ch. 7 no. 7.1, seen.
 * Example: setup_time=1.5 h; cycle_time=0.50 min; lot_size=75 => 2.125 h (P.F. Ostwald, T.S.
 *     McLaren, Cost Analysis and Estimating for Engineering and Management, 1st ed., ch. 7 no. 7.1,
 *     seen).
 */
gullet_status gullet_lot_time(double setup_time_s,
                              double cycle_time_s,
                              double lot_size,
                              double *lot_time_s_out);

/** gullet_lot_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_lot_time_array(size_t count,
                                    const double *setup_time_s,
                                    const double *cycle_time_s,
                                    const double *lot_size,
                                    double *lot_time_s_out,
                                    gullet_status *status_out);

/**
 * Share of the set-up that falls on one part of a lot.
 *
 *     t_s = t_su/N
 *
 * setup_time_s: t_su, set-up time of the lot [s]; setup_time >= 0.
 * lot_size: N, parts in the lot [-]; lot_size >= 1.
 * setup_time_per_part_s_out: t_s [s].
 * Valid for: one set-up for the lot.
 * Source: definition; example: public homework solution of a batch-machining problem, seen.
 * Example: setup_time=105 min; lot_size=40 => 2.625 min (identity: 105/40; a public homework
 *     solution of a batch-machining problem uses it).
 */
gullet_status gullet_setup_time_per_part(double setup_time_s,
                                         double lot_size,
                                         double *setup_time_per_part_s_out);

/** gullet_setup_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_setup_time_per_part_array(size_t count,
                                               const double *setup_time_s,
                                               const double *lot_size,
                                               double *setup_time_per_part_s_out,
                                               gullet_status *status_out);

/**
 * Share of gauging that falls on one part.
 *
 *     t_g = t_k/k
 *
 * gauging_time_s: t_k, time to gauge one part [s]; gauging_time >= 0.
 * gauged_every: k, one part in so many is gauged [-]; gauged_every >= 1.
 * gauging_time_per_part_s_out: t_g [s].
 * Valid for: machine and operator wait for the gauge; gauging while the machine cuts costs nothing
 *     here.
 * Source: definition.
 * Example: gauging_time=1.5 min; gauged_every=5 => 0.3 min (identity: 1.5/5).
 */
gullet_status gullet_gauging_time_per_part(double gauging_time_s,
                                           double gauged_every,
                                           double *gauging_time_per_part_s_out);

/** gullet_gauging_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_gauging_time_per_part_array(size_t count,
                                                 const double *gauging_time_s,
                                                 const double *gauged_every,
                                                 double *gauging_time_per_part_s_out,
                                                 gullet_status *status_out);

/**
 * Share of the tool change that falls on one part, from the parts an edge makes.
 *
 *     t_ch = t_c/m
 *
 * change_time_s: t_c, time of one tool change [s]; change_time >= 0.
 * parts_per_edge: m, parts one edge makes, whole or as a mean [-]; parts_per_edge > 0.
 * change_time_per_part_s_out: t_ch [s].
 * Valid for: m whole where no edge is changed within a part.
 * Source: definition.
 * Example: change_time=2 min; parts_per_edge=3 => 40 s (identity: 2/3 min).
 */
gullet_status gullet_change_time_per_part(double change_time_s,
                                          double parts_per_edge,
                                          double *change_time_per_part_s_out);

/** gullet_change_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_change_time_per_part_array(size_t count,
                                                const double *change_time_s,
                                                const double *parts_per_edge,
                                                double *change_time_per_part_s_out,
                                                gullet_status *status_out);

/**
 * Cost of cutting edges that falls on one part.
 *
 *     k_e = C_e/m
 *
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * parts_per_edge: m, parts one edge makes, whole or as a mean [-]; parts_per_edge > 0.
 * edge_cost_per_part_money_out: k_e [-].
 * Valid for: m whole where no edge is changed within a part.
 * Source: definition.
 * Example: edge_cost=3; parts_per_edge=4 => 0.75 (identity: 3/4).
 */
gullet_status gullet_edge_cost_per_part(double edge_cost_money,
                                        double parts_per_edge,
                                        double *edge_cost_per_part_money_out);

/** gullet_edge_cost_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_edge_cost_per_part_array(size_t count,
                                              const double *edge_cost_money,
                                              const double *parts_per_edge,
                                              double *edge_cost_per_part_money_out,
                                              gullet_status *status_out);

/**
 * Normal time of one part: everything that recurs, before allowances.
 *
 *     t_n = t_h + t_c + t_m + t_ch + t_g
 *
 * handling_time_s: t_h, load and unload [s]; handling_time >= 0.
 * cutting_time_s: t_c, in the cut [s]; cutting_time >= 0.
 * moving_time_s: t_m, moves outside the cut [s]; moving_time >= 0.
 * change_share_s: t_ch, share of tool changes [s]; change_share >= 0.
 * gauging_share_s: t_g, share of gauging [s]; gauging_share >= 0.
 * normal_time_per_part_s_out: t_n [s].
 * Valid for: one after the other: what is done while the machine cuts counts as 0.
 * Source: definition.
 * Example: handling_time=1 min; cutting_time=4 min; moving_time=0.5 min; change_share=0.2 min;
 *     gauging_share=0.3 min => 6 min (identity).
 */
gullet_status gullet_normal_time_per_part(double handling_time_s,
                                          double cutting_time_s,
                                          double moving_time_s,
                                          double change_share_s,
                                          double gauging_share_s,
                                          double *normal_time_per_part_s_out);

/** gullet_normal_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_normal_time_per_part_array(size_t count,
                                                const double *handling_time_s,
                                                const double *cutting_time_s,
                                                const double *moving_time_s,
                                                const double *change_share_s,
                                                const double *gauging_share_s,
                                                double *normal_time_per_part_s_out,
                                                gullet_status *status_out);

/**
 * Standard time: the normal time with an allowance that is a share of the standard time.
 *
 *     t_s = t/(1 - A)
 *
 * normal_time_s: t, normal time [s]; normal_time >= 0.
 * allowance: A, allowance as a share of the standard time [-]; 0 <= allowance < 1.
 * standard_time_by_share_of_standard_s_out: t_s [s].
 * Valid for: allowance as a share of the standard time, the working day; a share of the normal time
 *     would make it t (1 + A).
 * Source: definition; example: J. Heizer, B. Render, Operations Management, ch. 10, from memory.
 * Example: normal_time=15.36 min; allowance=15 % => 18.07 min (J. Heizer, B. Render, Operations
 *     Management, ch. 10, example of a time study, from memory).
 */
gullet_status gullet_standard_time_by_share_of_standard(double normal_time_s,
                                                        double allowance,
                                                        double *standard_time_by_share_of_standard_s_out);

/** gullet_standard_time_by_share_of_standard over arrays of `count` rows; see "Arrays". */
gullet_status gullet_standard_time_by_share_of_standard_array(size_t count,
                                                              const double *normal_time_s,
                                                              const double *allowance,
                                                              double *standard_time_by_share_of_standard_s_out,
                                                              gullet_status *status_out);

/**
 * Allowance in a standard time: for needs, fatigue and delays.
 *
 *     t_a = t_s - t_n
 *
 * standard_time_s: t_s, standard time [s]; standard_time >= normal_time.
 * normal_time_s: t_n, normal time [s]; normal_time >= 0.
 * allowance_time_s_out: t_a [s].
 * Valid for: either kind of allowance.
 * Source: definition.
 * Example: standard_time=9.2 min; normal_time=8 min => 1.2 min (identity).
 */
gullet_status gullet_allowance_time(double standard_time_s,
                                    double normal_time_s,
                                    double *allowance_time_s_out);

/** gullet_allowance_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_allowance_time_array(size_t count,
                                          const double *standard_time_s,
                                          const double *normal_time_s,
                                          double *allowance_time_s_out,
                                          gullet_status *status_out);

/**
 * Time of one part of a lot, with its shares.
 *
 *     t_p = t_s + t_h + t_c + t_m + t_ch + t_g + t_a
 *
 * setup_share_s: t_s, share of the set-up [s]; setup_share >= 0.
 * handling_time_s: t_h, load and unload [s]; handling_time >= 0.
 * cutting_time_s: t_c, in the cut [s]; cutting_time >= 0.
 * moving_time_s: t_m, moves outside the cut [s]; moving_time >= 0.
 * change_share_s: t_ch, share of tool changes [s]; change_share >= 0.
 * gauging_share_s: t_g, share of gauging [s]; gauging_share >= 0.
 * allowance_time_s: t_a, allowance [s]; allowance_time >= 0.
 * lot_time_per_part_s_out: t_p [s].
 * Valid for: one after the other.
 * Source: definition.
 * Example: setup_share=2 min; handling_time=1 min; cutting_time=4 min; moving_time=0.5 min;
 *     change_share=0.2 min; gauging_share=0.3 min; allowance_time=0.9 min => 8.9 min (identity).
 */
gullet_status gullet_lot_time_per_part(double setup_share_s,
                                       double handling_time_s,
                                       double cutting_time_s,
                                       double moving_time_s,
                                       double change_share_s,
                                       double gauging_share_s,
                                       double allowance_time_s,
                                       double *lot_time_per_part_s_out);

/** gullet_lot_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_lot_time_per_part_array(size_t count,
                                             const double *setup_share_s,
                                             const double *handling_time_s,
                                             const double *cutting_time_s,
                                             const double *moving_time_s,
                                             const double *change_share_s,
                                             const double *gauging_share_s,
                                             const double *allowance_time_s,
                                             double *lot_time_per_part_s_out,
                                             gullet_status *status_out);

/**
 * Cost of a time at the machine.
 *
 *     k = C_m t
 *
 * time_s: t, time [s]; time >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
 * time_cost_money_out: k [-].
 * Valid for: the same rate throughout; overheads as the rate has them.
 * Source: definition.
 * Example: time=6 min; machine_rate=45 money/h => 4.5 (identity: a tenth of an hour).
 */
gullet_status gullet_time_cost(double time_s,
                               double machine_rate_money_per_s,
                               double *time_cost_money_out);

/** gullet_time_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_time_cost_array(size_t count,
                                     const double *time_s,
                                     const double *machine_rate_money_per_s,
                                     double *time_cost_money_out,
                                     gullet_status *status_out);

/**
 * Cost of one part of a lot, share by share.
 *
 *     k_p = k_s + k_h + k_c + k_m + k_ch + k_g + k_a + k_e + k_w
 *
 * setup_cost_money: k_s, share of the set-up [-]; setup_cost >= 0.
 * handling_cost_money: k_h, load and unload [-]; handling_cost >= 0.
 * cutting_cost_money: k_c, in the cut [-]; cutting_cost >= 0.
 * moving_cost_money: k_m, moves outside the cut [-]; moving_cost >= 0.
 * change_cost_money: k_ch, tool changes [-]; change_cost >= 0.
 * gauging_cost_money: k_g, gauging [-]; gauging_cost >= 0.
 * allowance_cost_money: k_a, allowance [-]; allowance_cost >= 0.
 * edge_share_money: k_e, cutting edges [-]; edge_share >= 0.
 * material_cost_money: k_w, material [-]; material_cost >= 0.
 * lot_cost_per_part_money_out: k_p [-].
 * Valid for: shares in one currency.
 * Source: definition.
 * Example: setup_cost=1.5; handling_cost=0.75; cutting_cost=3; moving_cost=0.375; change_cost=0.15;
 *     gauging_cost=0.225; allowance_cost=0.9; edge_share=0.5; material_cost=5 => 12.4 (identity).
 */
gullet_status gullet_lot_cost_per_part(double setup_cost_money,
                                       double handling_cost_money,
                                       double cutting_cost_money,
                                       double moving_cost_money,
                                       double change_cost_money,
                                       double gauging_cost_money,
                                       double allowance_cost_money,
                                       double edge_share_money,
                                       double material_cost_money,
                                       double *lot_cost_per_part_money_out);

/** gullet_lot_cost_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_lot_cost_per_part_array(size_t count,
                                             const double *setup_cost_money,
                                             const double *handling_cost_money,
                                             const double *cutting_cost_money,
                                             const double *moving_cost_money,
                                             const double *change_cost_money,
                                             const double *gauging_cost_money,
                                             const double *allowance_cost_money,
                                             const double *edge_share_money,
                                             const double *material_cost_money,
                                             double *lot_cost_per_part_money_out,
                                             gullet_status *status_out);

/**
 * Cost of a lot.
 *
 *     K = N k_p
 *
 * cost_per_part_money: k_p, cost of one part with its shares [-]; cost_per_part >= 0.
 * lot_size: N, parts in the lot [-]; lot_size >= 1.
 * lot_cost_money_out: K [-].
 * Valid for: the cost per part is that of this lot size.
 * Source: definition.
 * Example: cost_per_part=12.40; lot_size=40 => 496 (identity).
 */
gullet_status gullet_lot_cost(double cost_per_part_money,
                              double lot_size,
                              double *lot_cost_money_out);

/** gullet_lot_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_lot_cost_array(size_t count,
                                    const double *cost_per_part_money,
                                    const double *lot_size,
                                    double *lot_cost_money_out,
                                    gullet_status *status_out);

/**
 * Drill diameter that leaves a percentage of thread.
 *
 *     d = D - p K P
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * thread_percent: p, percentage of thread [-]; 0 <= thread_percent <
 *     major_diameter/(thread_basis*pitch).
 * thread_basis: K, basis of the percentage, over the pitch [-]; thread_basis > 0.
 * tap_drill_diameter_m_out: d [m].
 * Valid for: 60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of
 *     tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN
 *     overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones.
 * Source: thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et
 *     al., Machinery's Handbook, 31st ed., p.2155, seen.
 * Example: major_diameter=0.25 in; pitch=0.05 in; thread_percent=75 % => 0.20128607125 in
 *     (identity: 1/4-20 at 75 % takes a No 7 drill (0.201 in)).
 */
gullet_status gullet_tap_drill_diameter(double major_diameter_m,
                                        double pitch_m,
                                        double thread_percent,
                                        double thread_basis,
                                        double *tap_drill_diameter_m_out);

/** gullet_tap_drill_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tap_drill_diameter_array(size_t count,
                                              const double *major_diameter_m,
                                              const double *pitch_m,
                                              const double *thread_percent,
                                              const double *thread_basis,
                                              double *tap_drill_diameter_m_out,
                                              gullet_status *status_out);

/**
 * Percentage of thread that a drill leaves.
 *
 *     p = (D - d)/(K P)
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * drill_diameter_m: d, drill diameter [m]; 0 < drill_diameter <= major_diameter.
 * thread_basis: K, basis of the percentage, over the pitch [-]; thread_basis > 0.
 * thread_percent_out: p [-].
 * Valid for: 60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of
 *     tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN
 *     overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones.
 * Source: thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et
 *     al., Machinery's Handbook, 31st ed., p.2155, seen.
 * Example: major_diameter=0.0600 in; pitch=0.0125 in; drill_diameter=0.0512 in;
 *     thread_basis=1.2990381 => 54 % (E. Oberg et al., Machinery's Handbook, 31st ed., table 2
 *     p.2155, seen).
 */
gullet_status gullet_thread_percent(double major_diameter_m,
                                    double pitch_m,
                                    double drill_diameter_m,
                                    double thread_basis,
                                    double *thread_percent_out);

/** gullet_thread_percent over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_percent_array(size_t count,
                                          const double *major_diameter_m,
                                          const double *pitch_m,
                                          const double *drill_diameter_m,
                                          const double *thread_basis,
                                          double *thread_percent_out,
                                          gullet_status *status_out);

/**
 * Single-point passes of equal chip area whose first one is not deeper than allowed.
 *
 *     N = ceil((h/a_1)^2)
 *
 * thread_height_m: h, height of the thread [m]; thread_height > 0.
 * first_depth_m: a_1, largest depth of the first pass [m]; first_depth > 0.
 * threading_passes_out: N [-].
 * Valid for: flank infeed; at least 1; a quotient within 1e-9, relative, above a whole number
 *     counts as that number; spring passes come on top.
 * Source: derived: equal chip area, a_i = h sqrt(i/N).
 * Example: thread_height=0.92 mm; first_depth=0.25 mm => 14 (own arithmetic: 13.54 rounded up).
 */
gullet_status gullet_threading_passes(double thread_height_m,
                                      double first_depth_m,
                                      double *threading_passes_out);

/** gullet_threading_passes over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_passes_array(size_t count,
                                            const double *thread_height_m,
                                            const double *first_depth_m,
                                            double *threading_passes_out,
                                            gullet_status *status_out);

/**
 * Depth from the crest after a pass of single-point threading at equal chip area.
 *
 *     a_i = h sqrt(i/N)
 *
 * thread_height_m: h, height of the thread [m]; thread_height >= 0.
 * passes: N, number of passes [-]; passes >= 1.
 * index: i, number of the pass [-]; 1 <= index <= passes.
 * threading_depth_m_out: a_i [m].
 * Valid for: flank infeed, a straight-flanked thread; measured square to the axis.
 * Source: derived: chip area grows with the square of the depth.
 * Example: thread_height=1.2 mm; passes=9; index=4 => 0.8 mm (identity: 1.2 x 2/3 mm).
 */
gullet_status gullet_threading_depth(double thread_height_m,
                                     double passes,
                                     double index,
                                     double *threading_depth_m_out);

/** gullet_threading_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_depth_array(size_t count,
                                           const double *thread_height_m,
                                           const double *passes,
                                           const double *index,
                                           double *threading_depth_m_out,
                                           gullet_status *status_out);

/**
 * Largest thread mill for an internal thread.
 *
 *     D_c = k D
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * diameter_ratio: k, cutter over major diameter that is allowed [-]; 0 < diameter_ratio < 1.
 * thread_mill_largest_diameter_m_out: D_c [m].
 * Valid for: ratios of 2/3 to 3/4 keep the flanks true enough for common threads;
 *     internal_thread_mill_widening tells how true; coarse pitches need less.
 * Source: common practice, no source.
 * Example: major_diameter=12 mm; diameter_ratio=0.75 => 9 mm (own arithmetic).
 */
gullet_status gullet_thread_mill_largest_diameter(double major_diameter_m,
                                                  double diameter_ratio,
                                                  double *thread_mill_largest_diameter_m_out);

/** gullet_thread_mill_largest_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_mill_largest_diameter_array(size_t count,
                                                        const double *major_diameter_m,
                                                        const double *diameter_ratio,
                                                        double *thread_mill_largest_diameter_m_out,
                                                        gullet_status *status_out);

/**
 * Axial amount by which a ringed cutter of the thread's own profile mills each flank of an internal
 *     thread too wide.
 *
 *     delta_f = P^2 D_c/(4 pi^2 tan(alpha) D (D - D_c))
 *
 * pitch_m: P, lead of the thread; its pitch where it has one start [m]; pitch >= 0.
 * feature_diameter_m: D, diameter at which the flank is looked at [m]; feature_diameter > 0.
 * cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
 * flank_angle_rad: alpha, angle of the flank from the normal to the axis; 30 deg of 60 deg threads
 *     [rad]; 0 deg < flank_angle < 90 deg.
 * internal_thread_mill_widening_m_out: delta_f [m].
 * Valid for: cutter axis along the thread's, rings without lead; second order of the angle beside
 *     the deepest point: within 7 % of the exact envelope for common metric threads.
 * Source: derived: envelope of the rings along the helix.
 * Example: pitch=1.5 mm; feature_diameter=20 mm; cutter_diameter=16 mm => 0.0197430118 mm
 *     (identity: 36/(320 pi^2 tan(30 deg)) mm).
 */
gullet_status gullet_internal_thread_mill_widening(double pitch_m,
                                                   double feature_diameter_m,
                                                   double cutter_diameter_m,
                                                   double flank_angle_rad,
                                                   double *internal_thread_mill_widening_m_out);

/** gullet_internal_thread_mill_widening over arrays of `count` rows; see "Arrays". */
gullet_status gullet_internal_thread_mill_widening_array(size_t count,
                                                         const double *pitch_m,
                                                         const double *feature_diameter_m,
                                                         const double *cutter_diameter_m,
                                                         const double *flank_angle_rad,
                                                         double *internal_thread_mill_widening_m_out,
                                                         gullet_status *status_out);

/**
 * Axial shift between two turns of a thread mill with several rings: the whole pitches its rings
 *     cover.
 *
 *     L_s = P floor(l/P)
 *
 * cutting_length_m: l, length of the rings [m]; cutting_length >= pitch.
 * pitch_m: P, pitch of the thread [m]; pitch > 0.
 * thread_mill_axial_shift_m_out: L_s [m].
 * Valid for: single start; a quotient within 1e-9, relative, below a whole number counts as that
 *     number; passes by pass_count over the thread's length.
 * Source: derived: rings fall into their own grooves only after whole pitches.
 * Example: cutting_length=10 mm; pitch=1.5 mm => 9 mm (own arithmetic: six pitches).
 */
gullet_status gullet_thread_mill_axial_shift(double cutting_length_m,
                                             double pitch_m,
                                             double *thread_mill_axial_shift_m_out);

/** gullet_thread_mill_axial_shift over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_mill_axial_shift_array(size_t count,
                                                   const double *cutting_length_m,
                                                   const double *pitch_m,
                                                   double *thread_mill_axial_shift_m_out,
                                                   gullet_status *status_out);

/**
 * Travel of the cutter centre at one axial position of a thread mill, or at one level of a bore:
 *     in, turns, out.
 *
 *     L = k L_t + 2 l_e
 *
 * turn_length_m: L_t, travel of one turn of the helix [m]; turn_length > 0.
 * turns_turns: k, turns: one with rings over the whole length, one a pitch with a single ring
 *     [turns]; turns >= 1.
 * entry_length_m: l_e, travel of the entry arc; the exit is as long [m]; entry_length >= 0.
 * thread_milling_travel_m_out: L [m].
 * Valid for: turn_length by helix_turn_length over the pitch; feed of the cutter centre by
 *     inside_arc_feed at the major diameter, by outside_arc_feed at the minor one.
 * Source: derived: sum of the moves.
 * Example: turn_length=20 mm; turns=1; entry_length=6 mm => 32 mm (own arithmetic).
 */
gullet_status gullet_thread_milling_travel(double turn_length_m,
                                           double turns_turns,
                                           double entry_length_m,
                                           double *thread_milling_travel_m_out);

/** gullet_thread_milling_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_milling_travel_array(size_t count,
                                                 const double *turn_length_m,
                                                 const double *turns_turns,
                                                 const double *entry_length_m,
                                                 double *thread_milling_travel_m_out,
                                                 gullet_status *status_out);

/**
 * Mean removal rate while a thread mill cuts an internal thread of 60 deg from its minor diameter
 *     to its full depth in one turn.
 *
 *     Q = (35 sqrt(3)/256) pi D_2 P l/t
 *
 * pitch_m: P, pitch of the thread [m]; pitch > 0.
 * thread_length_m: l, length of the thread that is cut at once [m]; thread_length >= 0.
 * pitch_diameter_m: D_2, pitch diameter of the thread [m]; pitch_diameter > 0.
 * turn_time_s: t, time of the turn [s]; turn_time > 0.
 * thread_milling_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: basic profile of ISO 68-1: a groove 5/8 H deep, 3/4 P wide at the minor and 1/8 P at
 *     the major diameter; the tap drill at the minor diameter.
 * Source: derived: section 35 sqrt(3)/256 P^2 of the groove, one groove a pitch, on the pitch
 *     diameter.
 * Example: pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s =>
 *     32.9991834 mm3/s (identity: M12).
 */
gullet_status gullet_thread_milling_removal_rate(double pitch_m,
                                                 double thread_length_m,
                                                 double pitch_diameter_m,
                                                 double turn_time_s,
                                                 double *thread_milling_removal_rate_m3_per_s_out);

/** gullet_thread_milling_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_milling_removal_rate_array(size_t count,
                                                       const double *pitch_m,
                                                       const double *thread_length_m,
                                                       const double *pitch_diameter_m,
                                                       const double *turn_time_s,
                                                       double *thread_milling_removal_rate_m3_per_s_out,
                                                       gullet_status *status_out);

/**
 * Mean removal rate while a thread mill cuts an external thread of 60 deg from its major diameter
 *     to its full depth in one turn.
 *
 *     Q = (425 sqrt(3)/2304) pi D_2 P l/t
 *
 * pitch_m: P, pitch of the thread [m]; pitch > 0.
 * thread_length_m: l, length of the thread that is cut at once [m]; thread_length >= 0.
 * pitch_diameter_m: D_2, pitch diameter of the thread [m]; pitch_diameter > 0.
 * turn_time_s: t, time of the turn [s]; turn_time > 0.
 * external_thread_milling_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: basic profile of ISO 68-1: a groove 17/24 H deep, 7/8 P wide at the major diameter,
 *     counted down to a flat of P/6 in place of the rounded root, which is on the safe side; the
 *     blank at the major diameter.
 * Source: derived: section 425 sqrt(3)/2304 P^2 of the groove, one groove a pitch, on the pitch
 *     diameter.
 * Example: pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s =>
 *     44.522707729 mm3/s (identity: M12).
 */
gullet_status gullet_external_thread_milling_removal_rate(double pitch_m,
                                                          double thread_length_m,
                                                          double pitch_diameter_m,
                                                          double turn_time_s,
                                                          double *external_thread_milling_removal_rate_m3_per_s_out);

/** gullet_external_thread_milling_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_external_thread_milling_removal_rate_array(size_t count,
                                                                const double *pitch_m,
                                                                const double *thread_length_m,
                                                                const double *pitch_diameter_m,
                                                                const double *turn_time_s,
                                                                double *external_thread_milling_removal_rate_m3_per_s_out,
                                                                gullet_status *status_out);

/**
 * Height of the fundamental triangle of a 60 deg thread.
 *
 *     H = sqrt(3) P/2
 *
 * pitch_m: P, pitch [m]; pitch > 0.
 * thread_triangle_height_m_out: H [m].
 * Valid for: 60 deg threads, metric and unified.
 * Source: ISO 68-1 and ASME B1.1, from memory.
 * Example: pitch=2 mm => 1.732 mm (own arithmetic: sqrt(3) mm).
 */
gullet_status gullet_thread_triangle_height(double pitch_m, double *thread_triangle_height_m_out);

/** gullet_thread_triangle_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_triangle_height_array(size_t count,
                                                  const double *pitch_m,
                                                  double *thread_triangle_height_m_out,
                                                  gullet_status *status_out);

/**
 * Height of a full 60 deg internal thread: the basic overlap of nut and screw.
 *
 *     H_1 = 5 sqrt(3) P/16
 *
 * pitch_m: P, pitch [m]; pitch > 0.
 * internal_thread_height_m_out: H_1 [m].
 * Valid for: 60 deg threads, metric and unified; 5/8 of the fundamental triangle, 0.541266 P.
 * Source: ISO 68-1 and ASME B1.1, from memory.
 * Example: pitch=1.5 mm => 0.812 mm (table of basic dimensions of M10, DIN 13-1, from memory).
 */
gullet_status gullet_internal_thread_height(double pitch_m, double *internal_thread_height_m_out);

/** gullet_internal_thread_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_internal_thread_height_array(size_t count,
                                                  const double *pitch_m,
                                                  double *internal_thread_height_m_out,
                                                  gullet_status *status_out);

/**
 * Height of a 60 deg external thread with a rounded root.
 *
 *     h_3 = 17 sqrt(3) P/48
 *
 * pitch_m: P, pitch [m]; pitch > 0.
 * external_thread_height_m_out: h_3 [m].
 * Valid for: 60 deg threads, metric and unified; 17/24 of the fundamental triangle, 0.613435 P; a
 *     root of radius P sqrt(3)/12.
 * Source: ISO 68-1, ISO 965-1 and DIN 13-1, from memory.
 * Example: pitch=1.5 mm => 0.920 mm (table of basic dimensions of M10, DIN 13-1, from memory).
 */
gullet_status gullet_external_thread_height(double pitch_m, double *external_thread_height_m_out);

/** gullet_external_thread_height over arrays of `count` rows; see "Arrays". */
gullet_status gullet_external_thread_height_array(size_t count,
                                                  const double *pitch_m,
                                                  double *external_thread_height_m_out,
                                                  gullet_status *status_out);

/**
 * Basic pitch diameter of a 60 deg thread.
 *
 *     D_2 = D - 3 sqrt(3) P/8
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
 * thread_pitch_diameter_m_out: D_2 [m].
 * Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
 *     0.649519 P below the major diameter.
 * Source: ISO 724 and ASME B1.1, from memory.
 * Example: major_diameter=10 mm; pitch=1.5 mm => 9.026 mm (ISO 724, M10, from memory).
 */
gullet_status gullet_thread_pitch_diameter(double major_diameter_m,
                                           double pitch_m,
                                           double *thread_pitch_diameter_m_out);

/** gullet_thread_pitch_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_pitch_diameter_array(size_t count,
                                                 const double *major_diameter_m,
                                                 const double *pitch_m,
                                                 double *thread_pitch_diameter_m_out,
                                                 gullet_status *status_out);

/**
 * Basic minor diameter of a 60 deg internal thread.
 *
 *     D_1 = D - 5 sqrt(3) P/8
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
 * thread_minor_diameter_m_out: D_1 [m].
 * Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
 *     1.082532 P below the major diameter: 100 % on the ISO and UN overlap basis.
 * Source: ISO 724 and ASME B1.1, from memory.
 * Example: major_diameter=10 mm; pitch=1.5 mm => 8.376 mm (ISO 724, M10, from memory).
 */
gullet_status gullet_thread_minor_diameter(double major_diameter_m,
                                           double pitch_m,
                                           double *thread_minor_diameter_m_out);

/** gullet_thread_minor_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_minor_diameter_array(size_t count,
                                                 const double *major_diameter_m,
                                                 const double *pitch_m,
                                                 double *thread_minor_diameter_m_out,
                                                 gullet_status *status_out);

/**
 * Root diameter of a 60 deg external thread with a rounded root.
 *
 *     d_3 = D - 17 sqrt(3) P/24
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
 * thread_root_diameter_m_out: d_3 [m].
 * Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
 *     1.226869 P below the major diameter.
 * Source: ISO 724, ISO 965-1 and DIN 13-1, from memory.
 * Example: major_diameter=10 mm; pitch=1.5 mm => 8.160 mm (table of basic dimensions of M10, DIN
 *     13-1, from memory).
 */
gullet_status gullet_thread_root_diameter(double major_diameter_m,
                                          double pitch_m,
                                          double *thread_root_diameter_m_out);

/** gullet_thread_root_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_root_diameter_array(size_t count,
                                                const double *major_diameter_m,
                                                const double *pitch_m,
                                                double *thread_root_diameter_m_out,
                                                gullet_status *status_out);

/**
 * Lead of a thread: the advance of one turn.
 *
 *     P_h = s P
 *
 * pitch_m: P, pitch [m]; pitch > 0.
 * starts: s, starts of the thread [-]; starts >= 1.
 * thread_lead_m_out: P_h [m].
 * Valid for: the feed per revolution of tapping and threading is the lead, not the pitch, where
 *     there are several starts.
 * Source: definition; ISO 5408, from memory.
 * Example: pitch=2 mm; starts=3 => 6 mm (own arithmetic).
 */
gullet_status gullet_thread_lead(double pitch_m, double starts, double *thread_lead_m_out);

/** gullet_thread_lead over arrays of `count` rows; see "Arrays". */
gullet_status gullet_thread_lead_array(size_t count,
                                       const double *pitch_m,
                                       const double *starts,
                                       double *thread_lead_m_out,
                                       gullet_status *status_out);

/**
 * Pitch of a thread that is named by its threads per inch.
 *
 *     P = 1 in/N
 *
 * threads_per_inch: N, threads per inch [-]; threads_per_inch > 0.
 * pitch_from_threads_per_inch_m_out: P [m].
 * Valid for: exact: the inch is 25.4 mm.
 * Source: definition; ASME B1.1, from memory.
 * Example: threads_per_inch=20 => 1.27 mm (identity: 25.4/20 mm).
 */
gullet_status gullet_pitch_from_threads_per_inch(double threads_per_inch,
                                                 double *pitch_from_threads_per_inch_m_out);

/** gullet_pitch_from_threads_per_inch over arrays of `count` rows; see "Arrays". */
gullet_status gullet_pitch_from_threads_per_inch_array(size_t count,
                                                       const double *threads_per_inch,
                                                       double *pitch_from_threads_per_inch_m_out,
                                                       gullet_status *status_out);

/**
 * Major diameter of a numbered machine-screw size.
 *
 *     D = 0.060 in + 0.013 in N
 *
 * size: N, number of the size [-]; 0 <= size <= 30.
 * numbered_screw_diameter_m_out: D [m].
 * Valid for: unified machine screws, number 0 and up; today's standard ends at 12.
 * Source: ASME B1.1, from memory.
 * Example: size=10 => 0.1900 in (ASME B1.1, basic major diameter of No 10, from memory).
 */
gullet_status gullet_numbered_screw_diameter(double size, double *numbered_screw_diameter_m_out);

/** gullet_numbered_screw_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_numbered_screw_diameter_array(size_t count,
                                                   const double *size,
                                                   double *numbered_screw_diameter_m_out,
                                                   gullet_status *status_out);

/**
 * Tap drill by the rule of the workshop: major diameter less the pitch.
 *
 *     d = D - P
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; 0 < pitch < major_diameter.
 * tap_drill_by_rule_m_out: d [m].
 * Valid for: 60 deg threads, cutting taps; 77 % of thread on the basis of tap-drill charts, 92 % of
 *     the ISO and UN overlap; the standard rounds to a drill at hand.
 * Source: ISO 2306, from memory.
 * Example: major_diameter=12 mm; pitch=1.75 mm => 10.2 mm (ISO 2306, M12, from memory: rounded to a
 *     drill).
 */
gullet_status gullet_tap_drill_by_rule(double major_diameter_m,
                                       double pitch_m,
                                       double *tap_drill_by_rule_m_out);

/** gullet_tap_drill_by_rule over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tap_drill_by_rule_array(size_t count,
                                             const double *major_diameter_m,
                                             const double *pitch_m,
                                             double *tap_drill_by_rule_m_out,
                                             gullet_status *status_out);

/**
 * Drill diameter for a forming tap that is to leave a percentage of thread.
 *
 *     d = D - 0.68 p P
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * thread_percent: p, percentage of thread [-]; 0 <= thread_percent < major_diameter/(0.68*pitch).
 * form_tap_drill_diameter_m_out: d [m].
 * Valid for: 60 deg threads; forming taps move metal into the crest, so the hole is larger than for
 *     a cutting tap; percentages near 65 are usual; trial holes decide.
 * Source: form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from
 *     memory.
 * Example: major_diameter=1/4 in; pitch=0.05 in; thread_percent=65 % => 0.2279 in (own arithmetic:
 *     0.25 - 0.68 x 0.65/20 in).
 */
gullet_status gullet_form_tap_drill_diameter(double major_diameter_m,
                                             double pitch_m,
                                             double thread_percent,
                                             double *form_tap_drill_diameter_m_out);

/** gullet_form_tap_drill_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_form_tap_drill_diameter_array(size_t count,
                                                   const double *major_diameter_m,
                                                   const double *pitch_m,
                                                   const double *thread_percent,
                                                   double *form_tap_drill_diameter_m_out,
                                                   gullet_status *status_out);

/**
 * Percentage of thread that a forming tap leaves in a drilled hole.
 *
 *     p = (D - d)/(0.68 P)
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * drill_diameter_m: d, drill diameter [m]; 0 < drill_diameter <= major_diameter.
 * form_thread_percent_out: p [-].
 * Valid for: 60 deg threads; forming taps; not the percentage of a cutting tap.
 * Source: form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from
 *     memory.
 * Example: major_diameter=6 mm; pitch=1 mm; drill_diameter=5.558 mm => 65 % (own arithmetic:
 *     0.442/0.68).
 */
gullet_status gullet_form_thread_percent(double major_diameter_m,
                                         double pitch_m,
                                         double drill_diameter_m,
                                         double *form_thread_percent_out);

/** gullet_form_thread_percent over arrays of `count` rows; see "Arrays". */
gullet_status gullet_form_thread_percent_array(size_t count,
                                               const double *major_diameter_m,
                                               const double *pitch_m,
                                               const double *drill_diameter_m,
                                               double *form_thread_percent_out,
                                               gullet_status *status_out);

/**
 * Depth at full diameter of the drilled hole that a tapped depth needs.
 *
 *     l = b + c P + l_c
 *
 * thread_depth_m: b, depth of full thread [m]; thread_depth > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * chamfer_threads: c, length of the tap's chamfer in threads [-]; chamfer_threads >= 0.
 * clearance_m: l_c, room below the tap, for chips and its point [m]; clearance >= 0.
 * tapping_hole_depth_m_out: l [m].
 * Valid for: blind holes; chamfers of about 8 threads (taper), 4 (plug), 1.5 (bottoming), from
 *     memory.
 * Source: definition; the chamfers: ASME B94.9, from memory.
 * Example: thread_depth=15 mm; pitch=1.5 mm; chamfer_threads=4; clearance=2 mm => 23 mm (own
 *     arithmetic).
 */
gullet_status gullet_tapping_hole_depth(double thread_depth_m,
                                        double pitch_m,
                                        double chamfer_threads,
                                        double clearance_m,
                                        double *tapping_hole_depth_m_out);

/** gullet_tapping_hole_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tapping_hole_depth_array(size_t count,
                                              const double *thread_depth_m,
                                              const double *pitch_m,
                                              const double *chamfer_threads,
                                              const double *clearance_m,
                                              double *tapping_hole_depth_m_out,
                                              gullet_status *status_out);

/**
 * Undeformed chip thickness of a tooth in the chamfer of a cutting tap.
 *
 *     h = (D - d)/(2 c z)
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * drill_diameter_m: d, diameter of the drilled hole [m]; 0 < drill_diameter <= major_diameter.
 * chamfer_threads: c, length of the tap's chamfer in threads [-]; chamfer_threads > 0.
 * flutes: z, flutes of the tap [-]; flutes >= 1.
 * tap_chip_thickness_m_out: h [m].
 * Valid for: measured square to the axis; the teeth of the chamfer share the height alike; one
 *     start.
 * Source: derived: half the difference of the diameters over the teeth of the chamfer.
 * Example: major_diameter=10 mm; drill_diameter=8.5 mm; chamfer_threads=4; flutes=3 => 0.0625 mm
 *     (own arithmetic: 0.75/12 mm).
 */
gullet_status gullet_tap_chip_thickness(double major_diameter_m,
                                        double drill_diameter_m,
                                        double chamfer_threads,
                                        double flutes,
                                        double *tap_chip_thickness_m_out);

/** gullet_tap_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tap_chip_thickness_array(size_t count,
                                              const double *major_diameter_m,
                                              const double *drill_diameter_m,
                                              const double *chamfer_threads,
                                              const double *flutes,
                                              double *tap_chip_thickness_m_out,
                                              gullet_status *status_out);

/**
 * Torque of a cutting tap.
 *
 *     M_c = P^2 D k_c K/8
 *
 * major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
 * pitch_m: P, pitch [m]; pitch > 0.
 * specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a tooth of the
 *     chamfer [Pa]; specific_cutting_force >= 0.
 * factor: K, wear and friction; 1.3 to 2 [-]; factor > 0.
 * tapping_torque_n_m_out: M_c [N.m].
 * Valid for: 60 deg threads of one start; rough, within 50 % either way: a dull tap or packed
 *     flutes multiply it; never for a forming tap.
 * Source: form of German handbooks, from memory: half of the section of the thread, about P^2/4, at
 *     the radius D/2.
 * Example: major_diameter=10 mm; pitch=1.5 mm; specific_cutting_force=3200 N/mm2 => 13.5 N.m (own
 *     arithmetic: 2.25 x 10 x 3200 x 1.5/8 N mm).
 */
gullet_status gullet_tapping_torque(double major_diameter_m,
                                    double pitch_m,
                                    double specific_cutting_force_pa,
                                    double factor,
                                    double *tapping_torque_n_m_out);

/** gullet_tapping_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tapping_torque_array(size_t count,
                                          const double *major_diameter_m,
                                          const double *pitch_m,
                                          const double *specific_cutting_force_pa,
                                          const double *factor,
                                          double *tapping_torque_n_m_out,
                                          gullet_status *status_out);

/**
 * Turns that a tap makes while the spindle comes to a stop.
 *
 *     N = n t_s/2
 *
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
 *     [s]; stopping_time >= 0.
 * tap_stopping_turns_out: N [turns].
 * Valid for: even slowing down; n in revolutions per second.
 * Source: derived: mean speed n/2 over the stop.
 * Example: spindle_speed=600 rpm; stopping_time=0.4 s => 2 turns (own arithmetic: 10 x 0.4/2).
 */
gullet_status gullet_tap_stopping_turns(double spindle_speed_rev_per_s,
                                        double stopping_time_s,
                                        double *tap_stopping_turns_out);

/** gullet_tap_stopping_turns over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tap_stopping_turns_array(size_t count,
                                              const double *spindle_speed_rev_per_s,
                                              const double *stopping_time_s,
                                              double *tap_stopping_turns_out,
                                              gullet_status *status_out);

/**
 * Depth that a tap goes on while the spindle comes to a stop.
 *
 *     l_s = P n t_s/2
 *
 * lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
 *     [s]; stopping_time >= 0.
 * tap_stopping_travel_m_out: l_s [m].
 * Valid for: even slowing down, feed tied to the turns; n in revolutions per second; a control that
 *     brakes ahead of the depth needs this length above it instead.
 * Source: derived: mean speed n/2 over the stop.
 * Example: lead=1.5 mm; spindle_speed=600 rpm; stopping_time=0.4 s => 3 mm (own arithmetic: 1.5 x 2
 *     turns).
 */
gullet_status gullet_tap_stopping_travel(double lead_m,
                                         double spindle_speed_rev_per_s,
                                         double stopping_time_s,
                                         double *tap_stopping_travel_m_out);

/** gullet_tap_stopping_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tap_stopping_travel_array(size_t count,
                                               const double *lead_m,
                                               const double *spindle_speed_rev_per_s,
                                               const double *stopping_time_s,
                                               double *tap_stopping_travel_m_out,
                                               gullet_status *status_out);

/**
 * Spindle speed at which a tap stops within a length.
 *
 *     n = 2 l_s/(P t_s)
 *
 * stopping_travel_m: l_s, length in which the tap has to stop [m]; stopping_travel >= 0.
 * lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
 * stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
 *     [s]; stopping_time > 0.
 * tapping_speed_for_stopping_travel_rev_per_s_out: n [rev/s].
 * Valid for: even slowing down, feed tied to the turns; n in revolutions per second; the time of
 *     the stop is that of the full speed.
 * Source: derived: mean speed n/2 over the stop.
 * Example: stopping_travel=3 mm; lead=1.5 mm; stopping_time=0.4 s => 600 rpm (own arithmetic: 2 x
 *     3/(1.5 x 0.4) revolutions per second).
 */
gullet_status gullet_tapping_speed_for_stopping_travel(double stopping_travel_m,
                                                       double lead_m,
                                                       double stopping_time_s,
                                                       double *tapping_speed_for_stopping_travel_rev_per_s_out);

/** gullet_tapping_speed_for_stopping_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tapping_speed_for_stopping_travel_array(size_t count,
                                                             const double *stopping_travel_m,
                                                             const double *lead_m,
                                                             const double *stopping_time_s,
                                                             double *tapping_speed_for_stopping_travel_rev_per_s_out,
                                                             gullet_status *status_out);

/**
 * Infeed of a compound slide that is set near the flank of the thread.
 *
 *     s = h/cos(alpha)
 *
 * thread_height_m: h, height of the thread, on the radius [m]; thread_height >= 0.
 * compound_angle_rad: alpha, angle of the slide, from the square of the axis [rad]; 0 deg <=
 *     compound_angle < 90 deg.
 * compound_infeed_m_out: s [m].
 * Valid for: slide set a little below half the thread angle, so that the trailing flank is shaved;
 *     the dial of the slide reads this way, the cross slide none of it.
 * Source: right triangle, derived; 29 to 29.5 deg: training manual on lathe threading, seen.
 * Example: thread_height=0.0811899 in; compound_angle=29 deg => 0.0928 in (public threading table:
 *     8 threads an inch of the old American form (height 0.64952 P), seen).
 */
gullet_status gullet_compound_infeed(double thread_height_m,
                                     double compound_angle_rad,
                                     double *compound_infeed_m_out);

/** gullet_compound_infeed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_compound_infeed_array(size_t count,
                                           const double *thread_height_m,
                                           const double *compound_angle_rad,
                                           double *compound_infeed_m_out,
                                           gullet_status *status_out);

/**
 * Infeed of one pass of single-point threading at equal chip area.
 *
 *     da_i = h (sqrt(i) - sqrt(i - 1))/sqrt(N)
 *
 * thread_height_m: h, height of the thread [m]; thread_height >= 0.
 * passes: N, number of passes [-]; passes >= 1.
 * index: i, number of the pass [-]; 1 <= index <= passes.
 * threading_infeed_m_out: da_i [m].
 * Valid for: as threading_depth, of which it is the step; the last ones should not fall below about
 *     0.05 mm (common practice, no source), or the tool rubs.
 * Source: derived: difference of two depths.
 * Example: thread_height=1.2 mm; passes=9; index=1 => 0.4 mm (identity: a third).
 */
gullet_status gullet_threading_infeed(double thread_height_m,
                                      double passes,
                                      double index,
                                      double *threading_infeed_m_out);

/** gullet_threading_infeed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_infeed_array(size_t count,
                                            const double *thread_height_m,
                                            const double *passes,
                                            const double *index,
                                            double *threading_infeed_m_out,
                                            gullet_status *status_out);

/**
 * Section that a pass of single-point threading cuts.
 *
 *     A = (a_2 - a_1) (w + (a_2 + a_1) tan(alpha))
 *
 * depth_m: a_2, depth from the crest after the pass [m]; depth > 0.
 * previous_depth_m: a_1, depth from the crest before the pass [m]; 0 <= previous_depth <= depth.
 * tool_flat_m: w, flat or width of the rounding at the tip of the tool [m]; tool_flat >= 0.
 * flank_angle_rad: alpha, half the angle of the thread [rad]; 0 deg < flank_angle < 90 deg.
 * threading_chip_section_m2_out: A [m2].
 * Valid for: symmetrical thread; the same whether fed in square to the axis or along a flank; with
 *     a sharp tip equal steps of the squared depth cut equal sections.
 * Source: trapezium, derived.
 * Example: depth=0.5 mm; previous_depth=0.3 mm; tool_flat=0.2 mm; flank_angle=45 deg => 0.2 mm2
 *     (identity: 0.2 x (0.2 + 0.8) mm2).
 */
gullet_status gullet_threading_chip_section(double depth_m,
                                            double previous_depth_m,
                                            double tool_flat_m,
                                            double flank_angle_rad,
                                            double *threading_chip_section_m2_out);

/** gullet_threading_chip_section over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_chip_section_array(size_t count,
                                                  const double *depth_m,
                                                  const double *previous_depth_m,
                                                  const double *tool_flat_m,
                                                  const double *flank_angle_rad,
                                                  double *threading_chip_section_m2_out,
                                                  gullet_status *status_out);

/**
 * Length of edge in the cut of a threading tool that is fed in square to the axis.
 *
 *     l = w + 2 a/cos(alpha)
 *
 * depth_m: a, depth from the crest after the pass [m]; depth > 0.
 * tool_flat_m: w, flat or width of the rounding at the tip of the tool [m]; tool_flat >= 0.
 * flank_angle_rad: alpha, half the angle of the thread [rad]; 0 deg < flank_angle < 90 deg.
 * threading_edge_length_m_out: l [m].
 * Valid for: both flanks cut; along the compound slide about half of it; section over edge is the
 *     mean chip thickness.
 * Source: trapezium, derived.
 * Example: depth=0.5 mm; tool_flat=0.2 mm; flank_angle=60 deg => 2.2 mm (identity: 0.2 + 4 x 0.5
 *     mm).
 */
gullet_status gullet_threading_edge_length(double depth_m,
                                           double tool_flat_m,
                                           double flank_angle_rad,
                                           double *threading_edge_length_m_out);

/** gullet_threading_edge_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_edge_length_array(size_t count,
                                                 const double *depth_m,
                                                 const double *tool_flat_m,
                                                 const double *flank_angle_rad,
                                                 double *threading_edge_length_m_out,
                                                 gullet_status *status_out);

/**
 * Mean undeformed chip thickness of a pass of single-point threading.
 *
 *     h_m = A/l
 *
 * chip_section_m2: A, section that the pass cuts [m2]; chip_section >= 0.
 * edge_length_m: l, length of edge in the cut [m]; edge_length > 0.
 * threading_mean_chip_thickness_m_out: h_m [m].
 * Valid for: section spread over the edge; fed in square to the axis the chips of both flanks run
 *     into each other and bind.
 * Source: derived: equal section.
 * Example: chip_section=0.2 mm2; edge_length=2 mm => 0.1 mm (identity).
 */
gullet_status gullet_threading_mean_chip_thickness(double chip_section_m2,
                                                   double edge_length_m,
                                                   double *threading_mean_chip_thickness_m_out);

/** gullet_threading_mean_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_mean_chip_thickness_array(size_t count,
                                                         const double *chip_section_m2,
                                                         const double *edge_length_m,
                                                         double *threading_mean_chip_thickness_m_out,
                                                         gullet_status *status_out);

/**
 * Shortest run-in in which the carriage reaches the speed of a thread.
 *
 *     l_a = (P_h n)^2/(2 a)
 *
 * lead_m: P_h, lead of the thread [m]; lead > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
 * acceleration_m_per_s2: a, acceleration of the carriage [m/s2]; acceleration > 0.
 * threading_run_in_m_out: l_a [m].
 * Valid for: constant acceleration from rest; the first turns of a thread that starts sooner have a
 *     wrong lead; controls add a lag of their own; n in revolutions per second.
 * Source: derived: motion at constant acceleration.
 * Example: lead=2 mm; spindle_speed=3000 rpm; acceleration=2 m/s2 => 2.5 mm (identity: 0.1^2/4 m).
 */
gullet_status gullet_threading_run_in(double lead_m,
                                      double spindle_speed_rev_per_s,
                                      double acceleration_m_per_s2,
                                      double *threading_run_in_m_out);

/** gullet_threading_run_in over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_run_in_array(size_t count,
                                            const double *lead_m,
                                            const double *spindle_speed_rev_per_s,
                                            const double *acceleration_m_per_s2,
                                            double *threading_run_in_m_out,
                                            gullet_status *status_out);

/**
 * Largest spindle speed at which a run-in suffices for a thread.
 *
 *     n = sqrt(2 a l_a)/P_h
 *
 * lead_m: P_h, lead of the thread [m]; lead > 0.
 * run_in_m: l_a, room before the first turn [m]; run_in >= 0.
 * acceleration_m_per_s2: a, acceleration of the carriage [m/s2]; acceleration > 0.
 * threading_speed_for_run_in_rev_per_s_out: n [rev/s].
 * Valid for: as threading_run_in; n in revolutions per second.
 * Source: derived: inverse of threading_run_in.
 * Example: lead=2 mm; run_in=2.5 mm; acceleration=2 m/s2 => 3000 rpm (identity: 0.1/0.002 turns a
 *     second).
 */
gullet_status gullet_threading_speed_for_run_in(double lead_m,
                                                double run_in_m,
                                                double acceleration_m_per_s2,
                                                double *threading_speed_for_run_in_rev_per_s_out);

/** gullet_threading_speed_for_run_in over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_speed_for_run_in_array(size_t count,
                                                      const double *lead_m,
                                                      const double *run_in_m,
                                                      const double *acceleration_m_per_s2,
                                                      double *threading_speed_for_run_in_rev_per_s_out,
                                                      gullet_status *status_out);

/**
 * Largest spindle speed of a thread that the carriage can follow.
 *
 *     n = v_max/P_h
 *
 * carriage_speed_m_per_s: v_max, largest feed speed of the carriage, or what a hand can stop at a
 *     shoulder [m/s]; carriage_speed > 0.
 * lead_m: P_h, lead of the thread [m]; lead > 0.
 * threading_speed_for_carriage_rev_per_s_out: n [rev/s].
 * Valid for: the carriage moves one lead a turn whatever the cutting speed; n in revolutions per
 *     second.
 * Source: derived: feed_rate solved for the spindle speed.
 * Example: carriage_speed=6 m/min; lead=4 mm => 1500 rpm (identity: 6000/4 turns a minute).
 */
gullet_status gullet_threading_speed_for_carriage(double carriage_speed_m_per_s,
                                                  double lead_m,
                                                  double *threading_speed_for_carriage_rev_per_s_out);

/** gullet_threading_speed_for_carriage over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_speed_for_carriage_array(size_t count,
                                                        const double *carriage_speed_m_per_s,
                                                        const double *lead_m,
                                                        double *threading_speed_for_carriage_rev_per_s_out,
                                                        gullet_status *status_out);

/**
 * Most passes of single-point threading at equal chip area whose last infeed still cuts.
 *
 *     N_max = floor(c^2/(2 c - 1)); c = max(h/s, 1)
 *
 * thread_height_m: h, height of the thread [m]; thread_height > 0.
 * smallest_infeed_m: s, smallest infeed of a pass [m]; smallest_infeed > 0.
 * threading_most_passes_out: N_max [-].
 * Valid for: at least 1; a quotient within 1e-9, relative, below a whole number counts as that
 *     number; an infeed below about 0.05 mm rubs (common practice, no source).
 * Source: derived: threading_infeed of the last pass, solved for the number of passes.
 * Example: thread_height=1 mm; smallest_infeed=0.1 mm => 5 (own arithmetic: the fifth of five
 *     passes takes 0.106 mm, the sixth of six 0.087 mm).
 */
gullet_status gullet_threading_most_passes(double thread_height_m,
                                           double smallest_infeed_m,
                                           double *threading_most_passes_out);

/** gullet_threading_most_passes over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_most_passes_array(size_t count,
                                                 const double *thread_height_m,
                                                 const double *smallest_infeed_m,
                                                 double *threading_most_passes_out,
                                                 gullet_status *status_out);

/**
 * Passes of single-point threading over all starts, spring passes included.
 *
 *     N_t = s (N + N_s)
 *
 * passes: N, passes that cut, for one start [-]; passes >= 1.
 * spring_passes: N_s, passes without infeed, for one start [-]; spring_passes >= 0.
 * starts: s, starts of the thread [-]; starts >= 1.
 * threading_pass_count_out: N_t [-].
 * Valid for: every start is cut by itself to the full depth.
 * Source: definition.
 * Example: passes=8; spring_passes=2; starts=3 => 30 (identity).
 */
gullet_status gullet_threading_pass_count(double passes,
                                          double spring_passes,
                                          double starts,
                                          double *threading_pass_count_out);

/** gullet_threading_pass_count over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_pass_count_array(size_t count,
                                                const double *passes,
                                                const double *spring_passes,
                                                const double *starts,
                                                double *threading_pass_count_out,
                                                gullet_status *status_out);

/**
 * Time of single-point threading over all passes.
 *
 *     t = N ((l + l_a + l_u)/(P_h n) + t_r)
 *
 * length_m: l, length of the thread [m]; length >= 0.
 * run_in_m: l_a, run-in before the thread [m]; run_in >= 0.
 * run_out_m: l_u, run-out beyond it [m]; run_out >= 0.
 * lead_m: P_h, lead of the thread [m]; lead > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
 * passes: N, number of passes, spring passes and every start included [-]; passes >= 1.
 * return_time_s: t_r, time of one return to the start [s]; return_time >= 0.
 * threading_time_s_out: t [s].
 * Valid for: every pass over the same way; n in revolutions per second.
 * Source: derived: turns over speed; example: P.C. Sharma, A Textbook of Production Engineering,
 *     Ex. 4.21 p.231, seen in a companion.
 * Example: length=89 mm; lead=2 mm; spindle_speed=108.514733926292 rpm; passes=5 => 2.05 min (P.C.
 *     Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.21 p.231, seen in a companion:
 *     5 passes of 89 mm at 217.03 mm/min, which is 2 mm of lead at 108.5 rpm).
 */
gullet_status gullet_threading_time(double length_m,
                                    double run_in_m,
                                    double run_out_m,
                                    double lead_m,
                                    double spindle_speed_rev_per_s,
                                    double passes,
                                    double return_time_s,
                                    double *threading_time_s_out);

/** gullet_threading_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_threading_time_array(size_t count,
                                          const double *length_m,
                                          const double *run_in_m,
                                          const double *run_out_m,
                                          const double *lead_m,
                                          const double *spindle_speed_rev_per_s,
                                          const double *passes,
                                          const double *return_time_s,
                                          double *threading_time_s_out,
                                          gullet_status *status_out);

/**
 * Tool cutting-edge angle of a turning tool whose lead angle is given.
 *
 *     kappa_r = 90 deg - psi_r
 *
 * lead_angle_rad: psi_r, lead (approach) angle, from the square of the axis [rad]; 0 deg <=
 *     lead_angle < 90 deg.
 * cutting_edge_angle_of_lead_angle_rad_out: kappa_r [rad].
 * Valid for: lead angle of American catalogues, also called side cutting-edge angle; the tool
 *     cutting-edge angle counts from the direction of feed.
 * Source: definition; symbols of ISO 3002-1, from memory.
 * Example: lead_angle=15 deg => 75 deg (identity).
 */
gullet_status gullet_cutting_edge_angle_of_lead_angle(double lead_angle_rad,
                                                      double *cutting_edge_angle_of_lead_angle_rad_out);

/** gullet_cutting_edge_angle_of_lead_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_cutting_edge_angle_of_lead_angle_array(size_t count,
                                                            const double *lead_angle_rad,
                                                            double *cutting_edge_angle_of_lead_angle_rad_out,
                                                            gullet_status *status_out);

/**
 * Depth of cut between the diameters before and after a turning or boring pass.
 *
 *     a_p = (D_1 - D_2)/2
 *
 * larger_diameter_m: D_1, larger diameter: the stock in turning, the finished bore in boring [m];
 *     larger_diameter > 0.
 * smaller_diameter_m: D_2, smaller diameter: the finished one in turning, the bore before the pass
 *     in boring [m]; 0 <= smaller_diameter <= larger_diameter.
 * depth_of_cut_from_diameters_m_out: a_p [m].
 * Valid for: one pass, both diameters about the axis of the spindle: the depth is on the radius,
 *     half of what the diameter changes by; a tube's wall likewise.
 * Source: geometry.
 * Example: larger_diameter=4.50 in; smaller_diameter=4.25 in => 0.125 in (Groover M.P.,
 *     Fundamentals of Modern Manufacturing, 4th ed., turning problem with 46 in turned to 4.25 in,
 *     from memory).
 */
gullet_status gullet_depth_of_cut_from_diameters(double larger_diameter_m,
                                                 double smaller_diameter_m,
                                                 double *depth_of_cut_from_diameters_m_out);

/** gullet_depth_of_cut_from_diameters over arrays of `count` rows; see "Arrays". */
gullet_status gullet_depth_of_cut_from_diameters_array(size_t count,
                                                       const double *larger_diameter_m,
                                                       const double *smaller_diameter_m,
                                                       double *depth_of_cut_from_diameters_m_out,
                                                       gullet_status *status_out);

/**
 * Depth of cut up to which the nose of a turning tool cuts alone.
 *
 *     a_n = 2 r sin(kappa_r/2)^2
 *
 * nose_radius_m: r, nose radius [m]; nose_radius >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * nose_depth_m_out: a_n [m].
 * Valid for: below this depth the cutting-edge angle of the straight edge means nothing: chip and
 *     force follow the nose.
 * Source: circle and tangent, derived: r (1 - cos(kappa_r)).
 * Example: nose_radius=0.8 mm; cutting_edge_angle=60 deg => 0.4 mm (identity: 0.8 (1 - 1/2) mm).
 */
gullet_status gullet_nose_depth(double nose_radius_m,
                                double cutting_edge_angle_rad,
                                double *nose_depth_m_out);

/** gullet_nose_depth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_nose_depth_array(size_t count,
                                      const double *nose_radius_m,
                                      const double *cutting_edge_angle_rad,
                                      double *nose_depth_m_out,
                                      gullet_status *status_out);

/**
 * Largest depth of cut for the length of a turning tool's edge.
 *
 *     a_max = k l_e sin(kappa_r)
 *
 * edge_length_m: l_e, length of the straight edge [m]; edge_length > 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * edge_share: k, share of the edge that may cut [-]; 0 < edge_share <= 1.
 * turning_depth_cap_m_out: a_max [m].
 * Valid for: roughing; half to two thirds of the edge, less with weak corners (common practice, no
 *     source).
 * Source: geometry; the share: common practice, no source.
 * Example: edge_length=12 mm; cutting_edge_angle=30 deg => 4 mm (identity: 2/3 x 12 x 1/2 mm).
 */
gullet_status gullet_turning_depth_cap(double edge_length_m,
                                       double cutting_edge_angle_rad,
                                       double edge_share,
                                       double *turning_depth_cap_m_out);

/** gullet_turning_depth_cap over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_depth_cap_array(size_t count,
                                             const double *edge_length_m,
                                             const double *cutting_edge_angle_rad,
                                             const double *edge_share,
                                             double *turning_depth_cap_m_out,
                                             gullet_status *status_out);

/**
 * Length of edge in the cut of a turning tool with a nose radius.
 *
 *     l = r (theta + asin(min(f/(2 r), 1))) + max(a_p - 2 r sin(kappa_r/2)^2, 0 mm)/sin(kappa_r);
 *         theta = min(kappa_r, acos(1 - min(a_p/r, 1)))
 *
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * turning_edge_length_m_out: l [m].
 * Valid for: cylindrical cut; the straight edge where the depth reaches it, the nose, and the part
 *     of the nose that cuts the feed mark; below nose_depth the nose alone.
 * Source: arcs and tangent, derived.
 * Example: depth_of_cut=2 mm; feed_per_rev=0.8 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg =>
 *     2.87551608 mm (own arithmetic: 0.8 (pi/2 + pi/6) + 1.2 mm).
 */
gullet_status gullet_turning_edge_length(double depth_of_cut_m,
                                         double feed_per_rev_m,
                                         double nose_radius_m,
                                         double cutting_edge_angle_rad,
                                         double *turning_edge_length_m_out);

/** gullet_turning_edge_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_edge_length_array(size_t count,
                                               const double *depth_of_cut_m,
                                               const double *feed_per_rev_m,
                                               const double *nose_radius_m,
                                               const double *cutting_edge_angle_rad,
                                               double *turning_edge_length_m_out,
                                               gullet_status *status_out);

/**
 * Mean undeformed chip thickness over the edge in the cut in turning.
 *
 *     h_m = a_p f/l
 *
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
 * edge_length_m: l, length of edge in the cut [m]; edge_length > 0.
 * turning_mean_chip_thickness_m_out: h_m [m].
 * Valid for: section of the chip spread over the edge, so that k_c h_m l keeps the section; with
 *     edge_length as turning_edge_length.
 * Source: derived: equal section.
 * Example: depth_of_cut=2 mm; feed_per_rev=0.2 mm; edge_length=2.5 mm => 0.16 mm (identity: 0.4/2.5
 *     mm).
 */
gullet_status gullet_turning_mean_chip_thickness(double depth_of_cut_m,
                                                 double feed_per_rev_m,
                                                 double edge_length_m,
                                                 double *turning_mean_chip_thickness_m_out);

/** gullet_turning_mean_chip_thickness over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_mean_chip_thickness_array(size_t count,
                                                       const double *depth_of_cut_m,
                                                       const double *feed_per_rev_m,
                                                       const double *edge_length_m,
                                                       double *turning_mean_chip_thickness_m_out,
                                                       gullet_status *status_out);

/**
 * Cutting-edge angle of the chord between the ends of the edge in the cut of a tool with a nose
 *     radius.
 *
 *     kappa_c = atan(a_p/(x + f/2)); x = r sin(theta) + max(a_p - 2 r sin(kappa_r/2)^2, 0
 *         mm)/tan(kappa_r); theta = min(kappa_r, acos(1 - min(a_p/r, 1)))
 *
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
 * feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
 * nose_radius_m: r, nose radius [m]; nose_radius > 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * turning_chord_angle_rad_out: kappa_c [rad].
 * Valid for: the chip is taken to leave square to the chord, so the thrust in the plane of the cut
 *     acts along it too; no rake, no inclination.
 * Source: L.V. Colwell, Predicting the angle of chip flow for single-point cutting tools, Trans.
 *     ASME 76, 1954, from memory; geometry derived.
 * Example: depth_of_cut=1 mm; feed_per_rev=0.4 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg =>
 *     45 deg (own arithmetic: the edge reaches 0.8 mm ahead of the lowest point of the nose and 0.2
 *     mm behind it, 1 mm for a depth of 1 mm).
 */
gullet_status gullet_turning_chord_angle(double depth_of_cut_m,
                                         double feed_per_rev_m,
                                         double nose_radius_m,
                                         double cutting_edge_angle_rad,
                                         double *turning_chord_angle_rad_out);

/** gullet_turning_chord_angle over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_chord_angle_array(size_t count,
                                               const double *depth_of_cut_m,
                                               const double *feed_per_rev_m,
                                               const double *nose_radius_m,
                                               const double *cutting_edge_angle_rad,
                                               double *turning_chord_angle_rad_out,
                                               gullet_status *status_out);

/**
 * Feed force of a turning tool, as a rough share of the cutting force.
 *
 *     F_f = s F_c sin(kappa)
 *
 * cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
 * cutting_edge_angle_rad: kappa, cutting-edge angle; with a nose radius that of the chord [rad]; 0
 *     deg < cutting_edge_angle <= 90 deg.
 * thrust_share: s, thrust in the plane of the cut over the cutting force [-]; thrust_share >= 0.
 * turning_feed_force_n_out: F_f [N].
 * Valid for: rough, within 40 % either way: the share rises with wear, thin chips and negative
 *     rake, and is below 0.4 with sharp positive edges.
 * Source: resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial
 *     force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen.
 * Example: cutting_force=1000 N; cutting_edge_angle=30 deg; thrust_share=0.6 => 300 N (identity:
 *     600 x 1/2 N).
 */
gullet_status gullet_turning_feed_force(double cutting_force_n,
                                        double cutting_edge_angle_rad,
                                        double thrust_share,
                                        double *turning_feed_force_n_out);

/** gullet_turning_feed_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_feed_force_array(size_t count,
                                              const double *cutting_force_n,
                                              const double *cutting_edge_angle_rad,
                                              const double *thrust_share,
                                              double *turning_feed_force_n_out,
                                              gullet_status *status_out);

/**
 * Passive (radial) force of a turning tool, as a rough share of the cutting force.
 *
 *     F_p = s F_c cos(kappa)
 *
 * cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
 * cutting_edge_angle_rad: kappa, cutting-edge angle; with a nose radius that of the chord [rad]; 0
 *     deg < cutting_edge_angle <= 90 deg.
 * thrust_share: s, thrust in the plane of the cut over the cutting force [-]; thrust_share >= 0.
 * turning_passive_force_n_out: F_p [N].
 * Valid for: rough, within 40 % either way; the force that bends a slender shaft or a boring bar
 *     out of size: least at 90 deg, and never none with a nose radius, so take the angle of the
 *     chord.
 * Source: resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial
 *     force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen.
 * Example: cutting_force=1000 N; cutting_edge_angle=60 deg; thrust_share=0.6 => 300 N (identity:
 *     600 x 1/2 N).
 */
gullet_status gullet_turning_passive_force(double cutting_force_n,
                                           double cutting_edge_angle_rad,
                                           double thrust_share,
                                           double *turning_passive_force_n_out);

/** gullet_turning_passive_force over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_passive_force_array(size_t count,
                                                 const double *cutting_force_n,
                                                 const double *cutting_edge_angle_rad,
                                                 const double *thrust_share,
                                                 double *turning_passive_force_n_out,
                                                 gullet_status *status_out);

/**
 * Torque of a cutting force at the work of a lathe.
 *
 *     M_c = F_c D/2
 *
 * cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
 * diameter_m: D, diameter that is cut [m]; diameter >= 0.
 * turning_torque_n_m_out: M_c [N.m].
 * Valid for: one tool; the same torque at any spindle speed, so lowering the speed frees no torque.
 * Source: force times lever.
 * Example: cutting_force=2000 N; diameter=50 mm => 50 N.m (identity: 2000 x 0.025 N m).
 */
gullet_status gullet_turning_torque(double cutting_force_n,
                                    double diameter_m,
                                    double *turning_torque_n_m_out);

/** gullet_turning_torque over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_torque_array(size_t count,
                                          const double *cutting_force_n,
                                          const double *diameter_m,
                                          double *turning_torque_n_m_out,
                                          gullet_status *status_out);

/**
 * Error of the diameter that a radial deflection of tool or work leaves.
 *
 *     e_D = 2 delta
 *
 * radial_deflection_m: delta, deflection along the radius, tool and work together; its sign is kept
 *     [m]; radial_deflection: any finite value.
 * diameter_error_of_radial_deflection_m_out: e_D [m].
 * Valid for: pushed apart, a shaft is left larger and a bore smaller; a spring pass takes part of
 *     it away.
 * Source: geometry.
 * Example: radial_deflection=0.015 mm => 0.03 mm (identity).
 */
gullet_status gullet_diameter_error_of_radial_deflection(double radial_deflection_m,
                                                         double *diameter_error_of_radial_deflection_m_out);

/** gullet_diameter_error_of_radial_deflection over arrays of `count` rows; see "Arrays". */
gullet_status gullet_diameter_error_of_radial_deflection_array(size_t count,
                                                               const double *radial_deflection_m,
                                                               double *diameter_error_of_radial_deflection_m_out,
                                                               gullet_status *status_out);

/**
 * Error of the radius that a drop of the tool tip along the cutting direction leaves.
 *
 *     e_R = delta^2/(D/2 + sqrt((D/2)^2 + delta^2))
 *
 * tangential_deflection_m: delta, drop of the tip from the height of the axis; a rise counts the
 *     same [m]; tangential_deflection: any finite value.
 * diameter_m: D, diameter that is cut [m]; diameter > 0.
 * radius_error_of_tangential_deflection_m_out: e_R [m].
 * Valid for: the tip stays at its distance across: bore and shaft are both left larger by this,
 *     mostly nothing beside the radial deflection.
 * Source: right triangle, derived.
 * Example: tangential_deflection=3 mm; diameter=8 mm => 1 mm (identity: 3-4-5 triangle).
 */
gullet_status gullet_radius_error_of_tangential_deflection(double tangential_deflection_m,
                                                           double diameter_m,
                                                           double *radius_error_of_tangential_deflection_m_out);

/** gullet_radius_error_of_tangential_deflection over arrays of `count` rows; see "Arrays". */
gullet_status gullet_radius_error_of_tangential_deflection_array(size_t count,
                                                                 const double *tangential_deflection_m,
                                                                 const double *diameter_m,
                                                                 double *radius_error_of_tangential_deflection_m_out,
                                                                 gullet_status *status_out);

/**
 * Travel of a turning tool from its clearance to the full depth of cut.
 *
 *     l_a = a_p/tan(kappa_r) + c
 *
 * depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
 * cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
 *     deg.
 * clearance_m: c, clearance before the first contact [m]; clearance >= 0.
 * turning_approach_m_out: l_a [m].
 * Valid for: straight edge; run-out beyond the end the same way, without the slope; clearances of 1
 *     to 3 mm are common practice, no source.
 * Source: right triangle, derived.
 * Example: depth_of_cut=3 mm; cutting_edge_angle=45 deg; clearance=2 mm => 5 mm (identity: 3 + 2
 *     mm).
 */
gullet_status gullet_turning_approach(double depth_of_cut_m,
                                      double cutting_edge_angle_rad,
                                      double clearance_m,
                                      double *turning_approach_m_out);

/** gullet_turning_approach over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_approach_array(size_t count,
                                            const double *depth_of_cut_m,
                                            const double *cutting_edge_angle_rad,
                                            const double *clearance_m,
                                            double *turning_approach_m_out,
                                            gullet_status *status_out);

/**
 * Travel of a turning pass with approach and run-out.
 *
 *     L = l + l_a + l_u
 *
 * length_m: l, length that is turned [m]; length >= 0.
 * approach_m: l_a, approach [m]; approach >= 0.
 * run_out_m: l_u, run-out beyond the end; none at a shoulder [m]; run_out >= 0.
 * turning_travel_m_out: L [m].
 * Valid for: one pass at one feed.
 * Source: definition.
 * Example: length=120 mm; approach=2 mm => 122 mm (Rao P.N., Manufacturing Technology vol. 2, 2nd
 *     ed., p.130, seen in a digest: 2 mm of approach included).
 */
gullet_status gullet_turning_travel(double length_m,
                                    double approach_m,
                                    double run_out_m,
                                    double *turning_travel_m_out);

/** gullet_turning_travel over arrays of `count` rows; see "Arrays". */
gullet_status gullet_turning_travel_array(size_t count,
                                          const double *length_m,
                                          const double *approach_m,
                                          const double *run_out_m,
                                          double *turning_travel_m_out,
                                          gullet_status *status_out);

/**
 * Diameter below which a spindle held at constant cutting speed stays at its largest speed.
 *
 *     D_k = v_c/(pi n_max)
 *
 * cutting_speed_m_per_s: v_c, cutting speed that is held [m/s]; cutting_speed >= 0.
 * maximum_speed_rev_per_s: n_max, largest spindle speed, of the machine, the chuck or the program
 *     [rev/s]; maximum_speed > 0.
 * constant_speed_knee_diameter_m_out: D_k [m].
 * Valid for: facing and parting towards the centre; n in revolutions per second; without a largest
 *     speed the spindle would run away.
 * Source: derived: spindle_speed solved for the diameter.
 * Example: cutting_speed=200 m/min; maximum_speed=3000 rpm => 21.2 mm (own arithmetic: 200/(3 pi)
 *     mm).
 */
gullet_status gullet_constant_speed_knee_diameter(double cutting_speed_m_per_s,
                                                  double maximum_speed_rev_per_s,
                                                  double *constant_speed_knee_diameter_m_out);

/** gullet_constant_speed_knee_diameter over arrays of `count` rows; see "Arrays". */
gullet_status gullet_constant_speed_knee_diameter_array(size_t count,
                                                        const double *cutting_speed_m_per_s,
                                                        const double *maximum_speed_rev_per_s,
                                                        double *constant_speed_knee_diameter_m_out,
                                                        gullet_status *status_out);

/**
 * Time of facing or parting at one spindle speed.
 *
 *     t = (D_1 - D_2)/(2 f n)
 *
 * outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
 * inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
 * facing_time_fixed_speed_s_out: t [s].
 * Valid for: the way is the radius, not the diameter; n in revolutions per second.
 * Source: definition of the feed; example: Groover M.P., Fundamentals of Modern Manufacturing, 4th
 *     ed., facing problem, from memory.
 * Example: outer_diameter=38 in; inner_diameter=24 in; feed_per_rev=0.015 in; spindle_speed=40 rpm
 *     => 11.67 min (Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., facing of a tube
 *     on a vertical boring mill, from memory).
 */
gullet_status gullet_facing_time_fixed_speed(double outer_diameter_m,
                                             double inner_diameter_m,
                                             double feed_per_rev_m,
                                             double spindle_speed_rev_per_s,
                                             double *facing_time_fixed_speed_s_out);

/** gullet_facing_time_fixed_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_facing_time_fixed_speed_array(size_t count,
                                                   const double *outer_diameter_m,
                                                   const double *inner_diameter_m,
                                                   const double *feed_per_rev_m,
                                                   const double *spindle_speed_rev_per_s,
                                                   double *facing_time_fixed_speed_s_out,
                                                   gullet_status *status_out);

/**
 * Time of parting at constant cutting speed up to a limit of the spindle speed, with less feed near
 *     the centre.
 *
 *     t = pi (D_1^2 - D_a^2)/(4 v_c f) + (D_a - D_m)/(2 f n_max) + pi (D_m^2 - D_b^2)/(4 v_c k f) +
 *         (D_b - D_2)/(2 k f n_max); D_m = max(D_2, D_s); D_a = max(D_m, min(D_1, v_c/(pi n_max)));
 *         D_b = max(D_2, min(D_m, v_c/(pi n_max)))
 *
 * outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
 * inner_diameter_m: D_2, diameter where the cut ends: the bore, or 0 for a solid bar [m]; 0 <=
 *     inner_diameter <= outer_diameter.
 * slow_diameter_m: D_s, diameter below which the feed is reduced [m]; 0 <= slow_diameter <=
 *     outer_diameter.
 * cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
 * feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
 * maximum_speed_rev_per_s: n_max, largest spindle speed [rev/s]; maximum_speed > 0.
 * feed_share: k, reduced feed over the feed [-]; 0 < feed_share <= 1.
 * parting_time_s_out: t [s].
 * Valid for: facing_time_limited_speed twice: at the full feed down to D_m, at the reduced one
 *     below; half the feed near the centre is common practice, no source; n in revolutions per
 *     second.
 * Source: derived: integral of the speed over the radius.
 * Example: outer_diameter=40 mm; inner_diameter=0 mm; slow_diameter=10 mm;
 *     cutting_speed=3.14159265358979 m/s; feed_per_rev=0.1 mm; maximum_speed=50 r/s; feed_share=0.5
 *     => 6 s (own arithmetic: 3 s at constant speed from 40 to 20 mm, then at 50 turns a second 1 s
 *     to 10 mm and 2 s to the centre at half the feed).
 */
gullet_status gullet_parting_time(double outer_diameter_m,
                                  double inner_diameter_m,
                                  double slow_diameter_m,
                                  double cutting_speed_m_per_s,
                                  double feed_per_rev_m,
                                  double maximum_speed_rev_per_s,
                                  double feed_share,
                                  double *parting_time_s_out);

/** gullet_parting_time over arrays of `count` rows; see "Arrays". */
gullet_status gullet_parting_time_array(size_t count,
                                        const double *outer_diameter_m,
                                        const double *inner_diameter_m,
                                        const double *slow_diameter_m,
                                        const double *cutting_speed_m_per_s,
                                        const double *feed_per_rev_m,
                                        const double *maximum_speed_rev_per_s,
                                        const double *feed_share,
                                        double *parting_time_s_out,
                                        gullet_status *status_out);

/**
 * Longest overhang of a parting blade for its width.
 *
 *     l_c = k w
 *
 * blade_width_m: w, width of the blade [m]; blade_width > 0.
 * overhang_ratio: k, overhang over width that the practice allows [-]; overhang_ratio > 0.
 * parting_overhang_cap_m_out: l_c [m].
 * Valid for: blades of steel; the overhang is the radius that is parted and a little more.
 * Source: common practice, no source.
 * Example: blade_width=3 mm => 24 mm (identity: 8 x 3 mm).
 */
gullet_status gullet_parting_overhang_cap(double blade_width_m,
                                          double overhang_ratio,
                                          double *parting_overhang_cap_m_out);

/** gullet_parting_overhang_cap over arrays of `count` rows; see "Arrays". */
gullet_status gullet_parting_overhang_cap_array(size_t count,
                                                const double *blade_width_m,
                                                const double *overhang_ratio,
                                                double *parting_overhang_cap_m_out,
                                                gullet_status *status_out);

/**
 * Sum of the jaw forces that keeps the work from slipping in a lathe chuck.
 *
 *     F_g = S sqrt((F_c D/D_g)^2 + F_f^2)/mu
 *
 * cutting_force_n: F_c, peak cutting force, which turns the work in the jaws [N]; cutting_force >=
 *     0.
 * feed_force_n: F_f, peak feed force, which pushes the work along the jaws; 0 against a stop [N];
 *     feed_force >= 0.
 * cutting_diameter_m: D, largest diameter that is cut [m]; cutting_diameter > 0.
 * grip_diameter_m: D_g, diameter that the jaws grip [m]; grip_diameter > 0.
 * friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
 * safety_factor: S, safety factor on the peak forces [-]; safety_factor >= 1.
 * required_chuck_grip_n_out: F_g [N].
 * Valid for: short work: no tipping out of the jaws by overhang; the grip at the speed of the cut,
 *     not at rest.
 * Source: Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by
 *     VDI 3106, seen in a chuck manual.
 * Example: cutting_force=3000 N; feed_force=2000 N; cutting_diameter=50 mm; grip_diameter=100 mm;
 *     friction=0.25; safety_factor=2 => 20000 N (identity: 2 x 2500/0.25 N, by a 3-4-5 triangle).
 */
gullet_status gullet_required_chuck_grip(double cutting_force_n,
                                         double feed_force_n,
                                         double cutting_diameter_m,
                                         double grip_diameter_m,
                                         double friction,
                                         double safety_factor,
                                         double *required_chuck_grip_n_out);

/** gullet_required_chuck_grip over arrays of `count` rows; see "Arrays". */
gullet_status gullet_required_chuck_grip_array(size_t count,
                                               const double *cutting_force_n,
                                               const double *feed_force_n,
                                               const double *cutting_diameter_m,
                                               const double *grip_diameter_m,
                                               const double *friction,
                                               const double *safety_factor,
                                               double *required_chuck_grip_n_out,
                                               gullet_status *status_out);

/**
 * Grip of a lathe chuck's jaws from outside, at a spindle speed.
 *
 *     F_n = F_0 (1 - c (n/n_max)^2)
 *
 * static_grip_n: F_0, sum of the jaw forces at rest [N]; static_grip >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; 0 <= spindle_speed <= maximum_speed.
 * maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
 * loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <=
 *     loss_at_maximum <= 1.
 * jaw_grip_at_speed_n_out: F_n [N].
 * Valid for: jaws of the chuck's own weight and place, gripped with the largest actuating force;
 *     heavier or farther jaws and a weaker grip lose more; gripping from inside, speed adds grip.
 * Source: centrifugal force of the jaws, derived; the loss at the largest speed: DIN EN 1550 allows
 *     67 % of the grip at rest, seen in a chuck manual.
 * Example: static_grip=36 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm => 30 kN (own
 *     arithmetic: a sixth is lost at half the speed).
 */
gullet_status gullet_jaw_grip_at_speed(double static_grip_n,
                                       double spindle_speed_rev_per_s,
                                       double maximum_speed_rev_per_s,
                                       double loss_at_maximum,
                                       double *jaw_grip_at_speed_n_out);

/** gullet_jaw_grip_at_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_jaw_grip_at_speed_array(size_t count,
                                             const double *static_grip_n,
                                             const double *spindle_speed_rev_per_s,
                                             const double *maximum_speed_rev_per_s,
                                             const double *loss_at_maximum,
                                             double *jaw_grip_at_speed_n_out,
                                             gullet_status *status_out);

/**
 * Grip at rest of a lathe chuck whose jaws still hold with a wanted grip at a spindle speed.
 *
 *     F_0 = F_g/(1 - c (n/n_max)^2)
 *
 * required_grip_n: F_g, sum of the jaw forces that the cut needs [N]; required_grip >= 0.
 * spindle_speed_rev_per_s: n, spindle speed [rev/s]; 0 <= spindle_speed <= maximum_speed.
 * maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
 * loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <=
 *     loss_at_maximum < 1.
 * static_grip_for_speed_n_out: F_0 [N].
 * Valid for: as jaw_grip_at_speed.
 * Source: derived: inverse of jaw_grip_at_speed.
 * Example: required_grip=30 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm => 36 kN (own
 *     arithmetic: a sixth is lost at half the speed).
 */
gullet_status gullet_static_grip_for_speed(double required_grip_n,
                                           double spindle_speed_rev_per_s,
                                           double maximum_speed_rev_per_s,
                                           double loss_at_maximum,
                                           double *static_grip_for_speed_n_out);

/** gullet_static_grip_for_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_static_grip_for_speed_array(size_t count,
                                                 const double *required_grip_n,
                                                 const double *spindle_speed_rev_per_s,
                                                 const double *maximum_speed_rev_per_s,
                                                 const double *loss_at_maximum,
                                                 double *static_grip_for_speed_n_out,
                                                 gullet_status *status_out);

/**
 * Largest spindle speed at which a lathe chuck's jaws keep a grip from outside.
 *
 *     n = n_max sqrt(min((1 - F_g/F_0)/c, 1))
 *
 * static_grip_n: F_0, sum of the jaw forces at rest [N]; static_grip > 0.
 * required_grip_n: F_g, sum of the jaw forces that the cut needs [N]; 0 <= required_grip <=
 *     static_grip.
 * maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
 * loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <
 *     loss_at_maximum <= 1.
 * chuck_speed_for_grip_rev_per_s_out: n [rev/s].
 * Valid for: as jaw_grip_at_speed; never above the speed marked on the chuck.
 * Source: derived: inverse of jaw_grip_at_speed.
 * Example: static_grip=36 kN; required_grip=30 kN; maximum_speed=4000 rpm => 2000 rpm (own
 *     arithmetic: half the speed costs a sixth of the grip).
 */
gullet_status gullet_chuck_speed_for_grip(double static_grip_n,
                                          double required_grip_n,
                                          double maximum_speed_rev_per_s,
                                          double loss_at_maximum,
                                          double *chuck_speed_for_grip_rev_per_s_out);

/** gullet_chuck_speed_for_grip over arrays of `count` rows; see "Arrays". */
gullet_status gullet_chuck_speed_for_grip_array(size_t count,
                                                const double *static_grip_n,
                                                const double *required_grip_n,
                                                const double *maximum_speed_rev_per_s,
                                                const double *loss_at_maximum,
                                                double *chuck_speed_for_grip_rev_per_s_out,
                                                gullet_status *status_out);

/**
 * Tooth pitch of a saw blade whose teeth per inch are given.
 *
 *     p = 25.4 mm/z_i
 *
 * teeth_per_inch: z_i, teeth per inch; of a variable blade such as 3/4 the mean, 3.5 [-];
 *     teeth_per_inch > 0.
 * saw_tooth_pitch_m_out: p [m].
 * Valid for: even pitch, or the mean of a variable one.
 * Source: definition of the inch.
 * Example: teeth_per_inch=10 => 0.1 in (identity).
 */
gullet_status gullet_saw_tooth_pitch(double teeth_per_inch, double *saw_tooth_pitch_m_out);

/** gullet_saw_tooth_pitch over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_tooth_pitch_array(size_t count,
                                           const double *teeth_per_inch,
                                           double *saw_tooth_pitch_m_out,
                                           gullet_status *status_out);

/**
 * Teeth of a saw blade that are in the work at one time.
 *
 *     z_w = w/p
 *
 * width_m: w, width of the work along the blade; of a tube the longest single crossing of the wall
 *     [m]; width >= 0.
 * tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
 * teeth_in_work_out: z_w [-].
 * Valid for: 3 to 24 teeth (common practice, no source): fewer strip, more clog their gullets and
 *     rub.
 * Source: definition.
 * Example: width=2 in; tooth_pitch=0.25 in => 8 (identity).
 */
gullet_status gullet_teeth_in_work(double width_m, double tooth_pitch_m, double *teeth_in_work_out);

/** gullet_teeth_in_work over arrays of `count` rows; see "Arrays". */
gullet_status gullet_teeth_in_work_array(size_t count,
                                         const double *width_m,
                                         const double *tooth_pitch_m,
                                         double *teeth_in_work_out,
                                         gullet_status *status_out);

/**
 * Tooth pitch that keeps a number of teeth in the work.
 *
 *     p = w/z_w
 *
 * width_m: w, width of the work along the blade [m]; width >= 0.
 * teeth_in_work: z_w, teeth in the work: the fewest for the coarsest pitch, the most for the finest
 *     [-]; teeth_in_work > 0.
 * saw_pitch_for_teeth_m_out: p [m].
 * Valid for: width of the work where it is narrowest for the coarsest pitch, widest for the finest.
 * Source: derived: inverse of teeth_in_work.
 * Example: width=0.25 in; teeth_in_work=3 => 2.11666666667 mm (identity: 12 teeth an inch).
 */
gullet_status gullet_saw_pitch_for_teeth(double width_m,
                                         double teeth_in_work,
                                         double *saw_pitch_for_teeth_m_out);

/** gullet_saw_pitch_for_teeth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_pitch_for_teeth_array(size_t count,
                                               const double *width_m,
                                               const double *teeth_in_work,
                                               double *saw_pitch_for_teeth_m_out,
                                               gullet_status *status_out);

/**
 * Factor on the blade speed of a bimetal blade for the width of the stock.
 *
 *     k_w = 1.15 - 0.03 s_1 - 0.02 s_2 - 0.05 s_3 - 0.05 s_4 - 0.12 s_5; s_1 = min(max((w - 6.35
 *         mm)/12.7 mm, 0), 1); s_2 = min(max((w - 19.05 mm)/12.7 mm, 0), 1); s_3 = min(max((w -
 *         31.75 mm)/31.75 mm, 0), 1); s_4 = min(max((w - 63.5 mm)/38.1 mm, 0), 1); s_5 = min(max((w
 *         - 101.6 mm)/101.6 mm, 0), 1)
 *
 * width_m: w, width of the stock along the blade [m]; width > 0.
 * saw_stock_factor_out: k_w [-].
 * Valid for: against the speed for 4 in stock cut with fluid; straight lines between the printed
 *     sizes 1/4, 3/4, 1 1/4, 2 1/2, 4 and 8 in, constant beyond them; each size with its usual
 *     tooth pitch.
 * Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen; 2 1/2 in: manual of a
 *     band-saw machine, seen.
 * Example: width=8 in => 88 % (E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen: 12 %
 *     less).
 */
gullet_status gullet_saw_stock_factor(double width_m, double *saw_stock_factor_out);

/** gullet_saw_stock_factor over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_stock_factor_array(size_t count,
                                            const double *width_m,
                                            double *saw_stock_factor_out,
                                            gullet_status *status_out);

/**
 * Blade speed of a band saw from the speed of a table.
 *
 *     v_c = k_w k_d k_b v_t
 *
 * table_speed_m_per_s: v_t, blade speed of the table, for 4 in stock cut with fluid by a bimetal
 *     blade [m/s]; table_speed > 0.
 * stock_factor: k_w, factor for the width of the stock [-]; stock_factor > 0.
 * dry_factor: k_d, 1 with fluid, 0.5 to 0.7 dry [-]; 0 < dry_factor <= 1.
 * blade_factor: k_b, 1 for a bimetal blade, 0.5 for a carbon steel one [-]; blade_factor > 0.
 * saw_blade_speed_m_per_s_out: v_c [m/s].
 * Valid for: the factors multiply as if they knew nothing of each other.
 * Source: factors: E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen.
 * Example: table_speed=300 ft/min; stock_factor=0.88; blade_factor=0.5 => 132 ft/min (own
 *     arithmetic: 300 x 0.88 x 0.5).
 */
gullet_status gullet_saw_blade_speed(double table_speed_m_per_s,
                                     double stock_factor,
                                     double dry_factor,
                                     double blade_factor,
                                     double *saw_blade_speed_m_per_s_out);

/** gullet_saw_blade_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_blade_speed_array(size_t count,
                                           const double *table_speed_m_per_s,
                                           const double *stock_factor,
                                           const double *dry_factor,
                                           const double *blade_factor,
                                           double *saw_blade_speed_m_per_s_out,
                                           gullet_status *status_out);

/**
 * Speed at which a saw blade sinks into the work at a feed per tooth.
 *
 *     v_f = v_c f_z/p
 *
 * blade_speed_m_per_s: v_c, blade speed [m/s]; blade_speed >= 0.
 * feed_per_tooth_m: f_z, advance per tooth [m]; feed_per_tooth >= 0.
 * tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
 * saw_feed_speed_m_per_s_out: v_f [m/s].
 * Valid for: every tooth cuts.
 * Source: derived: teeth passing per time.
 * Example: blade_speed=60 m/min; feed_per_tooth=0.002 mm; tooth_pitch=6 mm => 20 mm/min (identity:
 *     10 000 teeth a minute).
 */
gullet_status gullet_saw_feed_speed(double blade_speed_m_per_s,
                                    double feed_per_tooth_m,
                                    double tooth_pitch_m,
                                    double *saw_feed_speed_m_per_s_out);

/** gullet_saw_feed_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_feed_speed_array(size_t count,
                                          const double *blade_speed_m_per_s,
                                          const double *feed_per_tooth_m,
                                          const double *tooth_pitch_m,
                                          double *saw_feed_speed_m_per_s_out,
                                          gullet_status *status_out);

/**
 * Teeth of a saw blade that pass while its driving wheel turns once.
 *
 *     z_r = pi D_w/p
 *
 * wheel_diameter_m: D_w, diameter of the wheel that drives the blade [m]; wheel_diameter > 0.
 * tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
 * saw_teeth_per_turn_out: z_r [-].
 * Valid for: the blade does not slip; its thickness beside the wheel is left out.
 * Source: definition.
 * Example: wheel_diameter=350 mm; tooth_pitch=7 mm => 157.079632679 (identity: 50 pi).
 */
gullet_status gullet_saw_teeth_per_turn(double wheel_diameter_m,
                                        double tooth_pitch_m,
                                        double *saw_teeth_per_turn_out);

/** gullet_saw_teeth_per_turn over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_teeth_per_turn_array(size_t count,
                                              const double *wheel_diameter_m,
                                              const double *tooth_pitch_m,
                                              double *saw_teeth_per_turn_out,
                                              gullet_status *status_out);

/**
 * Advance per tooth of a saw blade that a feed speed amounts to.
 *
 *     f_z = v_f p/v_c
 *
 * feed_speed_m_per_s: v_f, speed at which the blade sinks into the work [m/s]; feed_speed >= 0.
 * blade_speed_m_per_s: v_c, blade speed [m/s]; blade_speed > 0.
 * tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
 * saw_feed_per_tooth_m_out: f_z [m].
 * Valid for: every tooth cuts.
 * Source: derived: inverse of saw_feed_speed.
 * Example: feed_speed=20 mm/min; blade_speed=60 m/min; tooth_pitch=6 mm => 0.002 mm (identity: 10
 *     000 teeth a minute).
 */
gullet_status gullet_saw_feed_per_tooth(double feed_speed_m_per_s,
                                        double blade_speed_m_per_s,
                                        double tooth_pitch_m,
                                        double *saw_feed_per_tooth_m_out);

/** gullet_saw_feed_per_tooth over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_feed_per_tooth_array(size_t count,
                                              const double *feed_speed_m_per_s,
                                              const double *blade_speed_m_per_s,
                                              const double *tooth_pitch_m,
                                              double *saw_feed_per_tooth_m_out,
                                              gullet_status *status_out);

/**
 * Area that a saw cuts per time.
 *
 *     q = v_f w
 *
 * feed_speed_m_per_s: v_f, speed at which the blade sinks into the work [m/s]; feed_speed >= 0.
 * width_m: w, width of the work along the blade [m]; width >= 0.
 * sawing_area_rate_m2_per_s_out: q [m2/s].
 * Valid for: width at this moment, or the mean one over the cut.
 * Source: definition.
 * Example: feed_speed=0.5 in/min; width=4 in => 2 in2/min (identity).
 */
gullet_status gullet_sawing_area_rate(double feed_speed_m_per_s,
                                      double width_m,
                                      double *sawing_area_rate_m2_per_s_out);

/** gullet_sawing_area_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_sawing_area_rate_array(size_t count,
                                            const double *feed_speed_m_per_s,
                                            const double *width_m,
                                            double *sawing_area_rate_m2_per_s_out,
                                            gullet_status *status_out);

/**
 * Speed at which a saw blade sinks into the work at an area per time.
 *
 *     v_f = q/w
 *
 * area_rate_m2_per_s: q, area sawn per time [m2/s]; area_rate >= 0.
 * width_m: w, width of the work along the blade, or the mean one over the cut [m]; width > 0.
 * saw_feed_speed_for_area_rate_m_per_s_out: v_f [m/s].
 * Valid for: constant area per time: slower where the work is wide.
 * Source: derived: inverse of sawing_area_rate.
 * Example: area_rate=2 in2/min; width=4 in => 0.5 in/min (identity).
 */
gullet_status gullet_saw_feed_speed_for_area_rate(double area_rate_m2_per_s,
                                                  double width_m,
                                                  double *saw_feed_speed_for_area_rate_m_per_s_out);

/** gullet_saw_feed_speed_for_area_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_saw_feed_speed_for_area_rate_array(size_t count,
                                                        const double *area_rate_m2_per_s,
                                                        const double *width_m,
                                                        double *saw_feed_speed_for_area_rate_m_per_s_out,
                                                        gullet_status *status_out);

/**
 * Removal rate of a saw.
 *
 *     Q = q b
 *
 * area_rate_m2_per_s: q, area sawn per time [m2/s]; area_rate >= 0.
 * kerf_m: b, width of the cut that the set teeth make [m]; kerf >= 0.
 * sawing_removal_rate_m3_per_s_out: Q [m3/s].
 * Valid for: kerf wider than the blade by the set on both sides.
 * Source: definition.
 * Example: area_rate=20 cm2/min; kerf=1.6 mm => 3.2 cm3/min (identity).
 */
gullet_status gullet_sawing_removal_rate(double area_rate_m2_per_s,
                                         double kerf_m,
                                         double *sawing_removal_rate_m3_per_s_out);

/** gullet_sawing_removal_rate over arrays of `count` rows; see "Arrays". */
gullet_status gullet_sawing_removal_rate_array(size_t count,
                                               const double *area_rate_m2_per_s,
                                               const double *kerf_m,
                                               double *sawing_removal_rate_m3_per_s_out,
                                               gullet_status *status_out);

/**
 * Area of a round section, solid or a tube.
 *
 *     A = pi (D^2 - d^2)/4
 *
 * outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
 * inner_diameter_m: d, inner diameter, 0 for a solid bar [m]; 0 <= inner_diameter <=
 *     outer_diameter.
 * round_section_area_m2_out: A [m2].
 * Valid for: cut square to the axis.
 * Source: geometry.
 * Example: outer_diameter=4 in; inner_diameter=3 in => 5.5 in2 (manual of a band-saw machine: 12.5
 *     less 7.0 in2, seen).
 */
gullet_status gullet_round_section_area(double outer_diameter_m,
                                        double inner_diameter_m,
                                        double *round_section_area_m2_out);

/** gullet_round_section_area over arrays of `count` rows; see "Arrays". */
gullet_status gullet_round_section_area_array(size_t count,
                                              const double *outer_diameter_m,
                                              const double *inner_diameter_m,
                                              double *round_section_area_m2_out,
                                              gullet_status *status_out);

/**
 * Area of a rectangular section.
 *
 *     A = w H
 *
 * width_m: w, width of the work along the blade [m]; width > 0.
 * height_m: H, way of the blade through the section [m]; height > 0.
 * rectangular_section_area_m2_out: A [m2].
 * Valid for: solid flats and squares, cut square to the axis.
 * Source: geometry.
 * Example: width=4 in; height=1.5 in => 6 in2 (identity).
 */
gullet_status gullet_rectangular_section_area(double width_m,
                                              double height_m,
                                              double *rectangular_section_area_m2_out);

/** gullet_rectangular_section_area over arrays of `count` rows; see "Arrays". */
gullet_status gullet_rectangular_section_area_array(size_t count,
                                                    const double *width_m,
                                                    const double *height_m,
                                                    double *rectangular_section_area_m2_out,
                                                    gullet_status *status_out);

/**
 * Mean width of cut of a section that a blade sinks through.
 *
 *     w_m = A/H
 *
 * area_m2: A, area of the section [m2]; area >= 0.
 * height_m: H, way of the blade through the section [m]; height > 0.
 * mean_sawn_width_m_out: w_m [m].
 * Valid for: for the choice of the tooth pitch and the feed of tubes and profiles; of a tube it
 *     adds both walls, each of which is shorter.
 * Source: definition; manual of a band-saw machine, seen.
 * Example: area=5.5 in2; height=4 in => 1.38 in (manual of a band-saw machine: tube of 4 in outer
 *     and 3 in inner diameter, seen).
 */
gullet_status gullet_mean_sawn_width(double area_m2,
                                     double height_m,
                                     double *mean_sawn_width_m_out);

/** gullet_mean_sawn_width over arrays of `count` rows; see "Arrays". */
gullet_status gullet_mean_sawn_width_array(size_t count,
                                           const double *area_m2,
                                           const double *height_m,
                                           double *mean_sawn_width_m_out,
                                           gullet_status *status_out);

/**
 * Length of wall of a round tube that a saw blade crosses at a height.
 *
 *     c = sqrt(max(D^2 - 4 y^2, 0 mm^2)) - sqrt(max(d^2 - 4 y^2, 0 mm^2))
 *
 * outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
 * inner_diameter_m: d, inner diameter [m]; 0 <= inner_diameter <= outer_diameter.
 * offset_m: y, distance of the blade from the axis, either way [m]; offset: any finite value.
 * tube_crossing_length_m_out: c [m].
 * Valid for: both walls together where the blade runs through the bore: half of it is in one wall;
 *     no length beyond the tube.
 * Source: chords, derived.
 * Example: outer_diameter=100 mm; inner_diameter=60 mm; offset=30 mm => 80 mm (identity: 3-4-5
 *     triangle, tangent to the bore).
 */
gullet_status gullet_tube_crossing_length(double outer_diameter_m,
                                          double inner_diameter_m,
                                          double offset_m,
                                          double *tube_crossing_length_m_out);

/** gullet_tube_crossing_length over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tube_crossing_length_array(size_t count,
                                                const double *outer_diameter_m,
                                                const double *inner_diameter_m,
                                                const double *offset_m,
                                                double *tube_crossing_length_m_out,
                                                gullet_status *status_out);

/**
 * Longest single crossing of the wall of a round tube, where the blade touches the bore.
 *
 *     c_max = sqrt(D^2 - d^2)
 *
 * outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
 * inner_diameter_m: d, inner diameter [m]; 0 <= inner_diameter <= outer_diameter.
 * tube_longest_crossing_m_out: c_max [m].
 * Valid for: the finest useful pitch follows this, the coarsest the wall itself.
 * Source: chord tangent to a circle, derived.
 * Example: outer_diameter=100 mm; inner_diameter=60 mm => 80 mm (identity: 3-4-5 triangle).
 */
gullet_status gullet_tube_longest_crossing(double outer_diameter_m,
                                           double inner_diameter_m,
                                           double *tube_longest_crossing_m_out);

/** gullet_tube_longest_crossing over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tube_longest_crossing_array(size_t count,
                                                 const double *outer_diameter_m,
                                                 const double *inner_diameter_m,
                                                 double *tube_longest_crossing_m_out,
                                                 gullet_status *status_out);

/**
 * Smallest limit width of cut of one vibration mode, over all speeds.
 *
 *     a_lim = 2 k zeta (1 + zeta)/K_f
 *
 * stiffness_n_per_m: k, modal stiffness [N/m]; stiffness > 0.
 * damping_ratio: zeta, damping ratio, as a share of critical damping [-]; 0 < damping_ratio < 1.
 * cutting_coefficient_pa: K_f, cutting coefficient resolved into the mode's direction [Pa];
 *     cutting_coefficient > 0.
 * stability_limit_single_mode_m_out: a_lim [m].
 * Valid for: one mode, one edge always in cut with full regeneration; below it no speed chatters;
 *     process damping at low speed allows more.
 * Source: J. Tlusty's limit, from memory; derived: least real part of the mode's compliance, -1/(4
 *     k zeta (1 + zeta)).
 * Example: stiffness=1e7 N/m; damping_ratio=0.05; cutting_coefficient=1000 MPa => 1.05 mm
 *     (identity: 2e7 x 0.05 x 1.05/1e9 m).
 */
gullet_status gullet_stability_limit_single_mode(double stiffness_n_per_m,
                                                 double damping_ratio,
                                                 double cutting_coefficient_pa,
                                                 double *stability_limit_single_mode_m_out);

/** gullet_stability_limit_single_mode over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stability_limit_single_mode_array(size_t count,
                                                       const double *stiffness_n_per_m,
                                                       const double *damping_ratio,
                                                       const double *cutting_coefficient_pa,
                                                       double *stability_limit_single_mode_m_out,
                                                       gullet_status *status_out);

/**
 * Smallest limit depth of a slot with one vibration mode along or across the feed, over all speeds.
 *
 *     a_lim = 8 k zeta (1 + zeta)/(z K_rc)
 *
 * stiffness_n_per_m: k, modal stiffness [N/m]; stiffness > 0.
 * damping_ratio: zeta, damping ratio [-]; 0 < damping_ratio < 1.
 * krc_pa: K_rc, radial cutting coefficient [Pa]; krc > 0.
 * teeth: z, number of teeth [-]; teeth >= 1.
 * stability_limit_slot_single_mode_m_out: a_lim [m].
 * Valid for: zeroth order (mean direction of the force), slot, one mode along x or along y; at one
 *     speed the limit is higher.
 * Source: Y. Altintas, E. Budak: zeroth-order solution, from memory and seen in public research
 *     files; the closed form derived.
 * Example: stiffness=1340049.65 N/m; damping_ratio=0.011; krc=200 MPa; teeth=2 => 0.298053843 mm
 *     (identity: mode of the benchmark of T. Insperger and G. Stepan).
 */
gullet_status gullet_stability_limit_slot_single_mode(double stiffness_n_per_m,
                                                      double damping_ratio,
                                                      double krc_pa,
                                                      double teeth,
                                                      double *stability_limit_slot_single_mode_m_out);

/** gullet_stability_limit_slot_single_mode over arrays of `count` rows; see "Arrays". */
gullet_status gullet_stability_limit_slot_single_mode_array(size_t count,
                                                            const double *stiffness_n_per_m,
                                                            const double *damping_ratio,
                                                            const double *krc_pa,
                                                            const double *teeth,
                                                            double *stability_limit_slot_single_mode_m_out,
                                                            gullet_status *status_out);

/**
 * Spindle speed at which a whole number of vibrations falls on a tooth: the widest stable pockets.
 *
 *     n = f_n/(z k)
 *
 * natural_frequency_hz: f_n, natural frequency of the mode [Hz]; natural_frequency > 0.
 * teeth: z, number of teeth [-]; teeth >= 1.
 * waves: k, whole vibrations a tooth: 1, 2, ... [-]; waves >= 1.
 * best_spindle_speed_rev_per_s_out: n [rev/s].
 * Valid for: n in revolutions per second (1 Hz gives 60 rpm); the asymptote of the stability lobes,
 *     evenly pitched teeth.
 * Source: definition of the tooth-passing frequency, derived.
 * Example: natural_frequency=922 Hz; teeth=2; waves=1 => 27660 rpm (identity: 60 x 922/2 rpm).
 */
gullet_status gullet_best_spindle_speed(double natural_frequency_hz,
                                        double teeth,
                                        double waves,
                                        double *best_spindle_speed_rev_per_s_out);

/** gullet_best_spindle_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_best_spindle_speed_array(size_t count,
                                              const double *natural_frequency_hz,
                                              const double *teeth,
                                              const double *waves,
                                              double *best_spindle_speed_rev_per_s_out,
                                              gullet_status *status_out);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

/** Structs with their size set and every other field zero. */
static inline gullet_pass gullet_pass_init(void)
{
    gullet_pass value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_cut gullet_cut_init(void)
{
    gullet_cut value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_limit gullet_limit_init(void)
{
    gullet_limit value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_problem gullet_problem_init(void)
{
    gullet_problem value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_plan_summary gullet_plan_summary_init(void)
{
    gullet_plan_summary value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_planned_pass gullet_planned_pass_init(void)
{
    gullet_planned_pass value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_study_batch gullet_study_batch_init(void)
{
    gullet_study_batch value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_draws gullet_draws_init(void)
{
    gullet_draws value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_study_summary gullet_study_summary_init(void)
{
    gullet_study_summary value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_edge_economics gullet_edge_economics_init(void)
{
    gullet_edge_economics value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_economic_speed gullet_economic_speed_init(void)
{
    gullet_economic_speed value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_snapping gullet_snapping_init(void)
{
    gullet_snapping value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_lot gullet_lot_init(void)
{
    gullet_lot value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_lot_price gullet_lot_price_init(void)
{
    gullet_lot_price value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_fit_options gullet_fit_options_init(void)
{
    gullet_fit_options value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_taylor_law gullet_taylor_law_init(void)
{
    gullet_taylor_law value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_kienzle_law gullet_kienzle_law_init(void)
{
    gullet_kienzle_law value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_fit_quality gullet_fit_quality_init(void)
{
    gullet_fit_quality value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_operation_listing gullet_operation_listing_init(void)
{
    gullet_operation_listing value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_operation_field gullet_operation_field_init(void)
{
    gullet_operation_field value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

static inline gullet_operation_summary gullet_operation_summary_init(void)
{
    gullet_operation_summary value;
    memset(&value, 0, sizeof value);
    value.struct_size = (uint32_t)sizeof value;
    return value;
}

#endif /* GULLET_H */
