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
 * Studies
 *     A study computes cuts over columns, some hundred nanoseconds a row, on several processors:
 *     gullet_study_run over arrays of SI numbers, gullet_table_study_run and _stream over tables in
 *     the form of Apache Arrow, through its C data interface. Rows get the bits of
 *     gullet_cut_compute, whatever the number of threads and the rows beside them.
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

/** Room for the ledger of any cut of this version. */
#define GULLET_LIMITS_MOST 19

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

/** A blank. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_blank gullet_blank;

/** A cutter. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_cutter gullet_cutter;

/** A vise. Read-only after it is made: any number of threads may use it at once. */
typedef struct gullet_hold gullet_hold;

/**
 * A job: what is to be cut, with what, how held. Read-only after it is made: any number of threads
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
 * The pass plan of a job and its card. Read-only after it is made: any number of threads may use
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
 * A study made ready for tables of one schema. Any number of threads may use it at once. It needs a
 * library with Arrow in it, as it is built by default.
 */
typedef struct gullet_table_study gullet_table_study;

/**
 * What came of a call: 0 done; below 0 an error, and nothing is written; above 0 done, with
 * doubts. Numbers are never used anew.
 */
typedef int32_t gullet_status;

/** One problem. The texts stay valid until the next call on the same thread that fails. */
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
 * Reads a job file in TOML; `library` NULL stands for the built-in tables. Every problem is told at
 * once, each with its path, such as cutter.teeth, and its line. Free it with gullet_job_free.
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
 * Plans the passes of a job. A positive status is the first of the doubts about the plan as a whole,
 * which the card tells in words. The job is copied: its handle may be freed. Free the plan with gullet_plan_free.
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
 * Prepares a study for tables of the columns of `schema`, which stays the caller's.
 *
 * A column is named as an input with its unit behind (axial_depth_mm, cutter_diameter_in,
 * spindle_speed_rpm, cutter_teeth), or as a choice (material, machine, practice, operation, pass,
 * direction, cutter_material, cutter_form as text, dictionary-encoded or not; feed_across_jaws as
 * booleans or text). Numbers are float64, float32 or integers; a float32 is widened as it is.
 * cost_per_hour adds a column with the cost. Other columns are passed through; a name that is
 * nearly that of an input is refused. `constants` gives what no column does: "material=6061;
 * axial_depth=6 mm". `options`: "units=metric" or inch; "columns=usual", all, or names with commas;
 * "text_numbers=refused", kept or replaced; "pass_through=" names with commas. Either may be NULL.
 * What neither gives is as in `job`; without a job some inputs have the defaults of job files, see
 * gullet_table_study_assumptions. `library` NULL stands for the tables of the job, or the built-in
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
 *     t = t_ch t_c/T
 *
 * cutting_time_s: t_c, time a part that the edge cuts [s]; cutting_time >= 0.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
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
                                               double *tool_change_time_per_part_s_out);

/** gullet_tool_change_time_per_part over arrays of `count` rows; see "Arrays". */
gullet_status gullet_tool_change_time_per_part_array(size_t count,
                                                     const double *cutting_time_s,
                                                     const double *change_time_s,
                                                     const double *tool_life_s,
                                                     double *tool_change_time_per_part_s_out,
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
 * Tool life at which a part costs least.
 *
 *     T_c = (1/n - 1) (t_ch + C_e/C_m)
 *
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
 * minimum_cost_life_s_out: T_c [s].
 * Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
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
                                       double *minimum_cost_life_s_out);

/** gullet_minimum_cost_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_minimum_cost_life_array(size_t count,
                                             const double *taylor_exponent,
                                             const double *change_time_s,
                                             const double *edge_cost_money,
                                             const double *machine_rate_money_per_s,
                                             double *minimum_cost_life_s_out,
                                             gullet_status *status_out);

/**
 * Tool life at which a part takes least time.
 *
 *     T_p = (1/n - 1) t_ch
 *
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * maximum_production_life_s_out: T_p [s].
 * Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
 * Source: derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
 *     2nd ed., Ex. 4.28 p.271 (the method, seen in a companion).
 * Example: taylor_exponent=0.25; change_time=2 min => 6 min (identity: 3 x 2 min).
 */
gullet_status gullet_maximum_production_life(double taylor_exponent,
                                             double change_time_s,
                                             double *maximum_production_life_s_out);

/** gullet_maximum_production_life over arrays of `count` rows; see "Arrays". */
gullet_status gullet_maximum_production_life_array(size_t count,
                                                   const double *taylor_exponent,
                                                   const double *change_time_s,
                                                   double *maximum_production_life_s_out,
                                                   gullet_status *status_out);

/**
 * Cutting speed at which a part costs least.
 *
 *     v_c = C (T_c/1 min)^(-n); T_c = (1/n - 1) (t_ch + C_e/C_m)
 *
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
 * change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed.
 * minimum_cost_speed_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
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
                                        double *minimum_cost_speed_m_per_s_out);

/** gullet_minimum_cost_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_minimum_cost_speed_array(size_t count,
                                              const double *taylor_speed_m_per_s,
                                              const double *taylor_exponent,
                                              const double *change_time_s,
                                              const double *edge_cost_money,
                                              const double *machine_rate_money_per_s,
                                              double *minimum_cost_speed_m_per_s_out,
                                              gullet_status *status_out);

/**
 * Cutting speed at which a part takes least time.
 *
 *     v_c = C (T_p/1 min)^(-n); T_p = (1/n - 1) t_ch
 *
 * taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
 * taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
 * change_time_s: t_ch, time of one tool change [s]; change_time > 0.
 * maximum_production_speed_m_per_s_out: v_c [m/s].
 * Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
 * Source: derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
 *     Science, 2nd ed., Ex. 4.28 p.271, seen in a companion.
 * Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min => 47.92 m/min (A. Ghosh,
 *     A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion).
 */
gullet_status gullet_maximum_production_speed(double taylor_speed_m_per_s,
                                              double taylor_exponent,
                                              double change_time_s,
                                              double *maximum_production_speed_m_per_s_out);

/** gullet_maximum_production_speed over arrays of `count` rows; see "Arrays". */
gullet_status gullet_maximum_production_speed_array(size_t count,
                                                    const double *taylor_speed_m_per_s,
                                                    const double *taylor_exponent,
                                                    const double *change_time_s,
                                                    double *maximum_production_speed_m_per_s_out,
                                                    gullet_status *status_out);

/**
 * Cost of machining one part, with its share of edges and tool changes.
 *
 *     K = C_m (t_h + t_c + t_ch t_c/T) + C_e t_c/T
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
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
                               double *unit_cost_money_out);

/** gullet_unit_cost over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_cost_array(size_t count,
                                     const double *handling_time_s,
                                     const double *cutting_time_s,
                                     const double *change_time_s,
                                     const double *tool_life_s,
                                     const double *edge_cost_money,
                                     const double *machine_rate_money_per_s,
                                     double *unit_cost_money_out,
                                     gullet_status *status_out);

/**
 * Cost of machining one part where an edge makes whole parts only.
 *
 *     K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/t_c)
 *
 * handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
 * cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life.
 * change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
 * tool_life_s: T, tool life [s]; tool_life > 0.
 * edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
 * machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
 * unit_cost_whole_parts_money_out: K [-].
 * Valid for: without material and set-up; m whole parts an edge, T/t_c within 1e-9, relative, below
 *     a whole number counts as that number.
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
                                           double *unit_cost_whole_parts_money_out);

/** gullet_unit_cost_whole_parts over arrays of `count` rows; see "Arrays". */
gullet_status gullet_unit_cost_whole_parts_array(size_t count,
                                                 const double *handling_time_s,
                                                 const double *cutting_time_s,
                                                 const double *change_time_s,
                                                 const double *tool_life_s,
                                                 const double *edge_cost_money,
                                                 const double *machine_rate_money_per_s,
                                                 double *unit_cost_whole_parts_money_out,
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

#endif /* GULLET_H */
