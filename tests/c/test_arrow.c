/* Studies over Arrow tables that are made by hand: what comes back, what is refused, and that every
 * release is called once. */
#include "check.h"
#include <gullet.h>
#include <math.h>

static const char JOB[] =
    "[material]\nid = '6061'\n[blank]\nlength = '100 mm'\nwidth = '60 mm'\nheight = '25 mm'\n"
    "[cutter]\nform = 'square'\nmaterial = 'HSS'\ndiameter = '12 mm'\nteeth = 2\nflute_length = '26 mm'\n"
    "stick_out = '40 mm'\n[machine]\nbase = 'manual-knee-mill'\n[hold]\nclamping_force = '12 kN'\n"
    "grip_depth = '12 mm'\n[cut]\noperation = 'side-milling'\nremove = '3 mm'\naxial_depth = '8 mm'\n";

static gullet_job *job;
static gullet_study *study;
/* Releases that were called, and arrays and streams that were made. */
static int released, made;

/* A column as a test writes it; its buffers are copied to the heap. */
typedef struct column {
    const char *name, *format;
    const void *buffers[3];
    size_t bytes[3];
    int64_t buffer_count, length, offset, null_count;
    const struct column *dictionary;
} column;

static void *copy(const void *bytes, size_t length)
{
    void *made_copy;
    if (bytes == NULL)
        return NULL;
    made_copy = malloc(length + (length == 0));
    memcpy(made_copy, bytes, length);
    return made_copy;
}

static void release_array(struct ArrowArray *array)
{
    int64_t i;
    released += array->private_data != NULL;
    for (i = 0; i < array->n_buffers; i++)
        free((void *)(uintptr_t)array->buffers[i]);
    free((void *)array->buffers);
    for (i = 0; i < array->n_children; i++) {
        if (array->children[i]->release != NULL)
            array->children[i]->release(array->children[i]);
        free(array->children[i]);
    }
    free(array->children);
    if (array->dictionary != NULL) {
        array->dictionary->release(array->dictionary);
        free(array->dictionary);
    }
    array->release = NULL;
}

static void make_array(const column *from, struct ArrowArray *array)
{
    int64_t i;
    memset(array, 0, sizeof *array);
    array->length = from->length;
    array->offset = from->offset;
    array->null_count = from->null_count;
    array->n_buffers = from->buffer_count;
    array->buffers = (const void **)calloc(3, sizeof(void *));
    for (i = 0; i < from->buffer_count; i++)
        array->buffers[i] = copy(from->buffers[i], from->bytes[i]);
    array->release = release_array;
    if (from->dictionary != NULL) {
        array->dictionary = (struct ArrowArray *)malloc(sizeof *array);
        make_array(from->dictionary, array->dictionary);
    }
}

static void release_schema(struct ArrowSchema *schema)
{
    int64_t i;
    released += schema->private_data != NULL;
    for (i = 0; i < schema->n_children; i++) {
        schema->children[i]->release(schema->children[i]);
        free(schema->children[i]);
    }
    free(schema->children);
    if (schema->dictionary != NULL) {
        schema->dictionary->release(schema->dictionary);
        free(schema->dictionary);
    }
    schema->release = NULL;
}

static void make_schema(const column *from, struct ArrowSchema *schema)
{
    memset(schema, 0, sizeof *schema);
    schema->format = from->format;
    schema->name = from->name;
    schema->flags = ARROW_FLAG_NULLABLE;
    schema->release = release_schema;
    if (from->dictionary != NULL) {
        schema->dictionary = (struct ArrowSchema *)malloc(sizeof *schema);
        make_schema(from->dictionary, schema->dictionary);
    }
}

/* A table of columns; rows from `offset` on count. */
static struct ArrowArray table_of(const column *columns, int count, int64_t length, int64_t offset)
{
    struct ArrowArray table;
    int i;
    memset(&table, 0, sizeof table);
    table.length = length;
    table.offset = offset;
    table.n_buffers = 1;
    table.buffers = (const void **)calloc(1, sizeof(void *));
    table.n_children = count;
    table.children = (struct ArrowArray **)malloc((size_t)count * sizeof(void *));
    for (i = 0; i < count; i++) {
        table.children[i] = (struct ArrowArray *)malloc(sizeof table);
        make_array(&columns[i], table.children[i]);
    }
    table.release = release_array;
    table.private_data = &made;
    made++;
    return table;
}

static struct ArrowSchema schema_of(const column *columns, int count)
{
    struct ArrowSchema schema;
    int i;
    memset(&schema, 0, sizeof schema);
    schema.format = "+s";
    schema.name = "";
    schema.n_children = count;
    schema.children = (struct ArrowSchema **)malloc((size_t)count * sizeof(void *));
    for (i = 0; i < count; i++) {
        schema.children[i] = (struct ArrowSchema *)malloc(sizeof schema);
        make_schema(&columns[i], schema.children[i]);
    }
    schema.release = release_schema;
    schema.private_data = &made;
    made++;
    return schema;
}

static int told(gullet_status given, gullet_status wanted, const char *word)
{
    const int so = given == wanted && strstr(gullet_last_error_message(), word) != NULL;
    if (!so)
        printf("%d: %s\n", given, gullet_last_error_message());
    return so;
}

/* Six rows; a batch takes the last five of them, of which each column has a row before. Behind a
 * null stands junk. */
#define ROWS 6
static const uint8_t RADIAL_VALID[] = {0x3d}; /* row 1 is null */
static const double RADIAL[ROWS] = {9.0, 1e300, 0.5, 1.0, 2.5, 0.25};
static const float AXIAL[ROWS] = {9.0f, 8.0f, 8.1f, 7.5f, 6.0f, 0.1f};
static const int32_t LENGTHS[ROWS] = {9, 100, 80, 60, 40, 20};
static const uint8_t KEYS_VALID[] = {0x1f}; /* row 5 is null */
static const int8_t KEYS[ROWS] = {0, 0, 1, 2, 3, 77};
static const uint8_t WORDS_VALID[] = {0x0b}; /* the third word is null */
static const int32_t WORD_ENDS[] = {0, 4, 8, 10, 13};
static const char WORD_TEXT[] = "60611018xxbad";
static const int32_t PART_ENDS[] = {0, 1, 2, 5, 6, 7, 8};
static const char PART_TEXT[] = "abc\xc3\xa9" "def";

static const column WORDS = {"", "u", {WORDS_VALID, WORD_ENDS, WORD_TEXT}, {1, sizeof WORD_ENDS, 13}, 3, 4, 0, 1, NULL};
#define COLUMNS 5
static const column GOOD[COLUMNS] = {
    {"part", "u", {NULL, PART_ENDS, PART_TEXT}, {0, sizeof PART_ENDS, 8}, 3, ROWS, 0, 0, NULL},
    {"radial_depth_mm", "g", {RADIAL_VALID, RADIAL, NULL}, {1, sizeof RADIAL, 0}, 2, ROWS, 0, -1, NULL},
    {"axial_depth_mm", "f", {NULL, AXIAL, NULL}, {0, sizeof AXIAL, 0}, 2, ROWS, 0, 0, NULL},
    {"length_mm", "i", {NULL, LENGTHS, NULL}, {0, sizeof LENGTHS, 0}, 2, ROWS, 0, 0, NULL},
    {"material", "c", {KEYS_VALID, KEYS, NULL}, {1, sizeof KEYS, 0}, 2, ROWS, 0, -1, &WORDS},
};

/* The place of a column by its name. */
static int place_of(const struct ArrowSchema *schema, const char *name)
{
    int i;
    for (i = 0; i < (int)schema->n_children; i++)
        if (strcmp(schema->children[i]->name, name) == 0)
            return i;
    CHECK_OF(0, name);
    return 0;
}

static int is_null(const struct ArrowArray *array, int64_t row)
{
    const uint8_t *valid = (const uint8_t *)array->buffers[0];
    row += array->offset;
    return valid != NULL && (valid[row / 8] >> (row % 8) & 1) == 0;
}

static double number_at(const struct ArrowArray *array, int64_t row)
{
    return ((const double *)array->buffers[1])[array->offset + row];
}

/* The word of a row of dictionary-encoded text with 32-bit keys. */
static const char *word_at(const struct ArrowArray *array, int64_t row)
{
    static char word[64];
    const int32_t key = ((const int32_t *)array->buffers[1])[array->offset + row];
    const int32_t *ends = (const int32_t *)array->dictionary->buffers[1] + array->dictionary->offset;
    const int length = (int)(ends[key + 1] - ends[key]);
    snprintf(word, sizeof word, "%.*s", length, (const char *)array->dictionary->buffers[2] + ends[key]);
    return word;
}

/* The results of the last five rows are those of the array form. */
static void compare(const struct ArrowSchema *schema, const struct ArrowArray *results, int64_t rows)
{
    static const char *const STATUS[ROWS] = {"", "missing", "ok", "missing", "unknown_name", "missing"};
    const struct ArrowArray *words = results->children[place_of(schema, "status")];
    const struct ArrowArray *speeds = results->children[place_of(schema, "spindle_speed_rpm")];
    const struct ArrowArray *parts = results->children[place_of(schema, "part")];
    double radial, axial, length, speed = 0.0, rpm = 0.0;
    gullet_status status = -1;
    gullet_input inputs[3];
    gullet_result wanted;
    gullet_study_batch batch = gullet_study_batch_init();
    int64_t row;
    CHECK(results->length == rows && results->offset == 0);
    for (row = 1; row <= rows; row++) {
        CHECK_OF(strcmp(word_at(words, row - 1), STATUS[row]) == 0, word_at(words, row - 1));
        CHECK(is_null(speeds, row - 1) == (strcmp(STATUS[row], "ok") != 0));
    }
    /* The third row, whose material is the dictionary's second word, is computed by hand. */
    gullet_to_si("length", RADIAL[2], "mm", &radial);
    gullet_to_si("length", (double)AXIAL[2], "mm", &axial);
    gullet_to_si("length", (double)LENGTHS[2], "mm", &length);
    memset(inputs, 0, sizeof inputs);
    memset(&wanted, 0, sizeof wanted);
    inputs[0].input = GULLET_INPUT_RADIAL_DEPTH;
    inputs[0].values_si = &radial;
    inputs[1].input = GULLET_INPUT_AXIAL_DEPTH;
    inputs[1].values_si = &axial;
    inputs[2].input = GULLET_INPUT_LENGTH;
    inputs[2].values_si = &length;
    wanted.result = GULLET_RESULT_SPINDLE_SPEED;
    wanted.values_si_out = &speed;
    batch.count = 1;
    batch.inputs = inputs;
    batch.input_count = 3;
    batch.results = &wanted;
    batch.result_count = 1;
    batch.status_out = &status;
    CHECK(gullet_study_run(study, &batch) == GULLET_OK && status == 0);
    CHECK(gullet_from_si("rotational_speed", speed, "rpm", &rpm) == GULLET_OK);
    CHECK(number_at(speeds, 1) == rpm);
    CHECK(memcmp((const char *)parts->buffers[2] + ((const int32_t *)parts->buffers[1])[parts->offset], "bc\xc3\xa9", 4) == 0);
}

static gullet_table_study *study_of(const column *columns, int count, const char *options)
{
    gullet_table_study *prepared = NULL;
    struct ArrowSchema schema = schema_of(columns, count);
    CHECK(gullet_table_study_new(NULL, job, &schema, NULL, 0, options, GULLET_NUL_TERMINATED, &prepared) == GULLET_OK);
    CHECK(schema.release != NULL);
    schema.release(&schema);
    return prepared;
}

static void tables(void)
{
    gullet_table_study *prepared = study_of(GOOD, COLUMNS, "columns=usual; units=metric");
    struct ArrowSchema schema;
    struct ArrowArray rows, results;
    column sliced[COLUMNS], empty[COLUMNS];
    size_t needed = 0;
    int i;
    const int before = released;
    CHECK(gullet_table_study_schema(prepared, &schema) == GULLET_OK && schema.n_children > 15);
    CHECK(gullet_table_study_assumptions(prepared, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT && needed >= 1);

    /* The table has an offset. */
    rows = table_of(GOOD, COLUMNS, 5, 1);
    CHECK(gullet_table_study_run(prepared, &rows, 2, &results) == GULLET_WARNING_ROWS_REFUSED);
    CHECK(rows.release == NULL && released == before);
    compare(&schema, &results, 5);
    results.release(&results);
    CHECK(results.release == NULL && released == before + 1);

    /* Each column has one. */
    for (i = 0; i < COLUMNS; i++) {
        sliced[i] = empty[i] = GOOD[i];
        sliced[i].offset = 1;
        sliced[i].length = 4;
        empty[i].length = 0;
    }
    rows = table_of(sliced, COLUMNS, 4, 0);
    CHECK(gullet_table_study_run(prepared, &rows, 1, &results) == GULLET_WARNING_ROWS_REFUSED);
    compare(&schema, &results, 4);
    results.release(&results);

    /* No rows; into the struct that they came in. */
    rows = table_of(empty, COLUMNS, 0, 0);
    CHECK(gullet_table_study_run(prepared, &rows, 0, &rows) == GULLET_OK);
    CHECK(rows.length == 0 && rows.n_children == schema.n_children);
    rows.release(&rows);
    CHECK(released == before + 3);
    schema.release(&schema);
    gullet_table_study_free(prepared);
    gullet_table_study_free(NULL);
}

/* An operation that has columns of its own: its inputs, and a word of it, dictionary-encoded. */
#define HOLES 3
static void holes(void)
{
    static const char constants[] =
        "operation=drilling; material=1018; machine=small-cnc-mill; cutter_material=HSS; depth=10 mm";
    static const double diameters[HOLES] = {8.0, 5.0, 5.0};
    static const int8_t keys[HOLES] = {0, 1, 2};
    static const int32_t ends[] = {0, 5, 12, 18}, operation_ends[] = {0, 8, 16, 28};
    static const column words = {"", "u", {NULL, ends, "blindthroughtrough"}, {0, sizeof ends, 18}, 3, 3, 0, 0, NULL};
    static const column columns[2] = {
        {"diameter_mm", "g", {NULL, diameters, NULL}, {0, sizeof diameters, 0}, 2, HOLES, 0, 0, NULL},
        {"hole", "c", {NULL, keys, NULL}, {0, sizeof keys, 0}, 2, HOLES, 0, 0, &words},
    };
    static const column mixed[2] = {
        {"operation", "u", {NULL, operation_ends, "slottingdrillingside-milling"}, {0, sizeof operation_ends, 28}, 3, 3, 0, 0, NULL},
        {"radial_depth_mm", "g", {NULL, diameters, NULL}, {0, sizeof diameters, 0}, 2, 3, 0, 0, NULL},
    };
    gullet_table_study *prepared = NULL;
    struct ArrowSchema schema = schema_of(columns, 2), results_schema;
    struct ArrowArray rows, results;
    CHECK(gullet_table_study_new(NULL, NULL, &schema, constants, GULLET_NUL_TERMINATED, NULL, 0, &prepared) == GULLET_OK);
    schema.release(&schema);
    CHECK(gullet_table_study_schema(prepared, &results_schema) == GULLET_OK);
    rows = table_of(columns, 2, HOLES, 0);
    CHECK(gullet_table_study_run(prepared, &rows, 1, &results) == GULLET_WARNING_ROWS_REFUSED);
    {
        const struct ArrowArray *status = results.children[place_of(&results_schema, "status")];
        const struct ArrowArray *turns = results.children[place_of(&results_schema, "spindle_speed_rpm")];
        const struct ArrowArray *speed = results.children[place_of(&results_schema, "cutting_speed_m_per_min")];
        const struct ArrowArray *time = results.children[place_of(&results_schema, "time_s")];
        const double by_hand = 3.14159265358979323846 * 0.005 * number_at(turns, 1);
        CHECK(strcmp(word_at(status, 0), "ok") == 0);
        CHECK(strcmp(word_at(status, 1), "ok") == 0);
        CHECK(strcmp(word_at(status, 2), "unknown_name") == 0 && is_null(time, 2));
        CHECK(fabs(number_at(speed, 1) - by_hand) < 1e-9 * by_hand && number_at(time, 1) > 0.0);
    }
    results.release(&results);
    results_schema.release(&results_schema);
    gullet_table_study_free(prepared);

    prepared = study_of(mixed, 2, NULL);
    rows = table_of(mixed, 2, 3, 0);
    CHECK(told(gullet_table_study_run(prepared, &rows, 1, &results), GULLET_ERROR_INCONSISTENT, "split the table"));
    CHECK(rows.release == NULL);
    gullet_table_study_free(prepared);
}

/* Totals and words of several tables; what is drawn goes on from table to table. */
static void reports(void)
{
    gullet_table_study *prepared = study_of(GOOD, COLUMNS, "spread.cutting_force=0.9..1.2; draws=40; columns=mean_tangential_force");
    gullet_table_study *later = study_of(GOOD, COLUMNS,
                                         "spread.cutting_force=0.9..1.2; draws=40; columns=mean_tangential_force; first_row=5");
    gullet_study_report *report = NULL;
    gullet_study_summary summary = gullet_study_summary_init();
    gullet_problem problem = gullet_problem_init();
    struct ArrowArray rows, results;
    struct ArrowSchema schema;
    uint64_t count = 7, number = 7;
    size_t problems = 7;
    double median[3] = {0.0, 0.0, 0.0};
    int i;
    CHECK(gullet_study_report_new(&report) == GULLET_OK);
    CHECK(gullet_table_study_schema(prepared, &schema) == GULLET_OK);
    for (i = 0; i < 3; i++) {
        rows = table_of(GOOD, COLUMNS, 5, 1);
        CHECK(gullet_table_study_run_with_report(i < 2 ? prepared : later, &rows, 1, i < 2 ? report : NULL, &results)
              == GULLET_WARNING_ROWS_REFUSED);
        median[i] = number_at(results.children[place_of(&schema, "mean_tangential_force_p50_n")], 1);
        results.release(&results);
    }
    CHECK(median[0] > 0.0 && median[0] != median[1] && median[1] == median[2]);
    CHECK(gullet_study_report_summary(report, &summary) == GULLET_OK);
    CHECK(summary.rows == 10 && summary.computed == 2 && summary.cost_known == 0 && summary.cost == 0.0);
    CHECK(summary.cutting_time_s > 0.0 && summary.energy_j > 0.0);
    CHECK(gullet_study_report_rows_of_status(report, GULLET_OK, &count) == GULLET_OK && count == 2);
    CHECK(gullet_study_report_rows_of_status(report, GULLET_ERROR_MISSING, &count) == GULLET_OK && count == 6);
    CHECK(gullet_study_report_rows_of_status(report, GULLET_ERROR_UNKNOWN_NAME, &count) == GULLET_OK && count == 2);
    count = 0;
    for (i = 1; *gullet_limit_name(i) != 0; i++) {
        CHECK(gullet_study_report_rows_of_limit(report, GULLET_ROWS_BINDING, i, &number) == GULLET_OK);
        count += number;
        CHECK(gullet_study_report_rows_of_limit(report, GULLET_ROWS_EXCEEDED, i, &number) == GULLET_OK && number == 0);
    }
    CHECK(count == 2);
    CHECK(gullet_study_report_problem_count(report, &problems) == GULLET_OK && problems == 2);
    CHECK(gullet_study_report_problem(report, 1, &number, &problem) == GULLET_OK && number == 8);
    CHECK(problem.status == GULLET_ERROR_UNKNOWN_NAME && strcmp(problem.parameter, "material") == 0);
    CHECK(strstr(problem.value, "bad") != NULL && *problem.remedy != 0 && strstr(problem.message, "bad") != NULL);
    CHECK(told(gullet_study_report_problem(report, 2, &number, &problem), GULLET_ERROR_OUT_OF_RANGE, "index") && number == 8);
    CHECK(told(gullet_study_report_rows_of_status(report, -9999, &count), GULLET_ERROR_OUT_OF_RANGE, "status") && count == 2);
    CHECK(told(gullet_study_report_rows_of_limit(report, 0, 1, &count), GULLET_ERROR_OUT_OF_RANGE, "which"));
    CHECK(told(gullet_study_report_rows_of_limit(report, 1, 1000, &count), GULLET_ERROR_OUT_OF_RANGE, "limit"));
    CHECK(told(gullet_study_report_summary(report, NULL), GULLET_ERROR_NULL_POINTER, "summary"));
    CHECK(told(gullet_study_report_summary(NULL, &summary), GULLET_ERROR_NULL_POINTER, "report"));
    schema.release(&schema);
    gullet_table_study_free(prepared);
    gullet_table_study_free(later);
    gullet_study_report_free(report);
    gullet_study_report_free(NULL);
}

/* A table is refused, taken over and released, and nothing is written. */
static void bad(const gullet_table_study *prepared, struct ArrowArray rows, const char *word)
{
    struct ArrowArray results;
    const int before = released;
    memset(&results, 0x55, sizeof results);
    CHECK_OF(told(gullet_table_study_run(prepared, &rows, 1, &results), GULLET_ERROR_ARROW_DATA, word), word);
    CHECK(rows.release == NULL && released == before + 1 && results.length == 0x5555555555555555);
}

static void bad_tables(void)
{
    static const char wrong_text[] = "abc\xff\xff" "def";
    static const int32_t wrong_ends[] = {0, 1, 2, 1, 6, 7, 8}, far_ends[] = {0, 1, 2, -4, 6, 7, 8};
    static const int8_t wrong_keys[ROWS] = {0, 4, 1, 2, 3, 0};
    gullet_table_study *prepared = study_of(GOOD, COLUMNS, NULL);
    struct ArrowArray rows, results;
    struct ArrowSchema schema;
    column words = WORDS, columns[COLUMNS];
    memcpy(columns, GOOD, sizeof columns);

    columns[0].buffers[2] = wrong_text;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "part");
    columns[0] = GOOD[0];
    columns[0].buffers[1] = wrong_ends;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "part");
    columns[0].buffers[1] = far_ends;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "part");
    columns[0] = GOOD[0];
    words.buffers[2] = "6061\xff" "018xxbad";
    columns[4].dictionary = &words;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "material");
    columns[4] = GOOD[4];
    columns[4].buffers[1] = wrong_keys;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "material");
    columns[4] = GOOD[4];
    columns[1].length = 4;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "radial_depth_mm");
    columns[1] = GOOD[1];
    columns[1].buffers[1] = NULL;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "null");
    columns[1] = GOOD[1];
    columns[1].length = -1;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "length");
    columns[1] = GOOD[1];
    columns[1].offset = -3;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "offset");
    columns[1] = GOOD[1];
    columns[1].length = INT64_MAX;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "length");
    columns[1] = GOOD[1];
    columns[1].buffer_count = 1;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "");
    columns[1] = GOOD[1];
    columns[1].dictionary = &WORDS;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "dictionary");
    columns[1] = GOOD[1];
    columns[4].dictionary = NULL;
    bad(prepared, table_of(columns, COLUMNS, 5, 1), "dictionary");
    bad(prepared, table_of(GOOD, COLUMNS - 1, 5, 1), "children");
    bad(prepared, table_of(GOOD, COLUMNS, -5, 1), "length");

    /* Pointers: nothing is taken over. */
    rows = table_of(GOOD, COLUMNS, 5, 1);
    CHECK(told(gullet_table_study_run(NULL, &rows, 1, &results), GULLET_ERROR_NULL_POINTER, "study"));
    CHECK(told(gullet_table_study_run(prepared, NULL, 1, &results), GULLET_ERROR_NULL_POINTER, "rows"));
    CHECK(told(gullet_table_study_run(prepared, &rows, 1, NULL), GULLET_ERROR_NULL_POINTER, "results_out"));
    CHECK(told(gullet_table_study_run(prepared, (struct ArrowArray *)(void *)((char *)&rows + 1), 1, &results),
               GULLET_ERROR_MISALIGNED, "rows"));
    CHECK(rows.release != NULL);
    rows.release(&rows);
    CHECK(told(gullet_table_study_run(prepared, &rows, 1, &results), GULLET_ERROR_ARROW_DATA, "spent"));
    CHECK(told(gullet_table_study_schema(prepared, NULL), GULLET_ERROR_NULL_POINTER, "schema_out"));
    gullet_table_study_free(prepared);

    /* Schemas, constants, options: every problem at once, and the schema stays the caller's. */
    prepared = NULL;
    memcpy(columns, GOOD, sizeof columns);
    columns[1].format = "u";
    columns[2].name = "axial_depth_furlong";
    schema = schema_of(columns, COLUMNS);
    CHECK(told(gullet_table_study_new(NULL, job, &schema, "offset=2 kg; nothing", GULLET_NUL_TERMINATED, "units=feet; colums=all",
                                      GULLET_NUL_TERMINATED, &prepared), GULLET_ERROR_SYNTAX, "nothing"));
    CHECK(gullet_last_error_count() == 5 && strstr(gullet_last_error_message(), "furlong") != NULL
          && strstr(gullet_last_error_message(), "options.units") != NULL);
    CHECK(told(gullet_table_study_new(NULL, job, NULL, NULL, 0, NULL, 0, &prepared), GULLET_ERROR_NULL_POINTER, "schema"));
    CHECK(told(gullet_table_study_new(NULL, job, &schema, "\xff", 1, NULL, 0, &prepared), GULLET_ERROR_TEXT_ENCODING, "constants"));
    schema.children[0]->format = "?";
    CHECK(told(gullet_table_study_new(NULL, job, &schema, NULL, 0, NULL, 0, &prepared), GULLET_ERROR_ARROW_DATA, "rows"));
    schema.children[0]->format = NULL;
    CHECK(told(gullet_table_study_new(NULL, job, &schema, NULL, 0, NULL, 0, &prepared), GULLET_ERROR_ARROW_DATA, "rows"));
    schema.release(&schema);
    CHECK(told(gullet_table_study_new(NULL, job, &schema, NULL, 0, NULL, 0, &prepared), GULLET_ERROR_ARROW_DATA, "rows"));
    make_schema(&GOOD[1], &schema);
    CHECK(told(gullet_table_study_new(NULL, job, &schema, NULL, 0, NULL, 0, &prepared), GULLET_ERROR_ARROW_DATA, "rows"));
    CHECK(prepared == NULL);
}

/* A stream of three batches; the last one may be bad, or a failure. */
static int stream_at, stream_ends_with;
enum { END, FAILURE, BAD_TEXT };

static int stream_schema(struct ArrowArrayStream *stream, struct ArrowSchema *out)
{
    (void)stream;
    *out = schema_of(GOOD, COLUMNS);
    return 0;
}

static int stream_next(struct ArrowArrayStream *stream, struct ArrowArray *out)
{
    column columns[COLUMNS];
    (void)stream;
    memcpy(columns, GOOD, sizeof columns);
    memset(out, 0, sizeof *out);
    if (stream_at++ < 2) {
        *out = table_of(columns, COLUMNS, 5, 1);
    } else if (stream_ends_with == FAILURE) {
        return 5;
    } else if (stream_ends_with == BAD_TEXT && stream_at == 3) {
        columns[0].buffers[2] = "ab\xff\xff\xff" "def";
        *out = table_of(columns, COLUMNS, 5, 1);
    }
    return 0;
}

static const char *stream_error(struct ArrowArrayStream *stream)
{
    (void)stream;
    return "the disk is gone";
}

static void stream_release(struct ArrowArrayStream *stream)
{
    released++;
    stream->release = NULL;
}

static struct ArrowArrayStream stream_of(int ends_with)
{
    struct ArrowArrayStream stream = {stream_schema, stream_next, stream_error, stream_release, NULL};
    stream_at = 0;
    stream_ends_with = ends_with;
    made++;
    return stream;
}

static void streams(void)
{
    static const char *const SAID[] = {"", "the disk is gone", "part"};
    int ends_with, i;
    for (ends_with = END; ends_with <= BAD_TEXT; ends_with++) {
        gullet_table_study *prepared = study_of(GOOD, COLUMNS, NULL);
        struct ArrowArrayStream rows = stream_of(ends_with), results;
        struct ArrowArray batch;
        struct ArrowSchema schema;
        gullet_study_report *report = NULL;
        gullet_study_summary summary = gullet_study_summary_init();
        CHECK(gullet_study_report_new(&report) == GULLET_OK);
        CHECK(gullet_table_study_stream_with_report(prepared, &rows, 1, report, &results) == GULLET_OK && rows.release == NULL);
        gullet_table_study_free(prepared);
        CHECK(stream_at == 0);
        CHECK(results.get_schema(&results, &schema) == 0);
        for (i = 0; i < 2; i++) {
            CHECK(results.get_next(&results, &batch) == 0 && batch.release != NULL);
            CHECK(stream_at == i + 1);
            compare(&schema, &batch, 5);
            batch.release(&batch);
            CHECK(gullet_study_report_summary(report, &summary) == GULLET_OK && summary.rows == 5u * (unsigned)(i + 1));
        }
        gullet_study_report_free(report);
        if (ends_with != END) {
            CHECK(results.get_next(&results, &batch) != 0);
            CHECK_OF(strstr(results.get_last_error(&results), SAID[ends_with]) != NULL, results.get_last_error(&results));
        }
        /* A stream that has ended stays so. */
        for (i = 0; i < 2; i++) {
            CHECK(results.get_next(&results, &batch) == 0 && batch.release == NULL);
        }
        schema.release(&schema);
        results.release(&results);
        CHECK(results.release == NULL);
    }
}

static void bad_streams(void)
{
    gullet_table_study *prepared = study_of(GOOD, COLUMNS - 1, NULL);
    struct ArrowArrayStream rows = stream_of(END), results;
    CHECK(told(gullet_table_study_stream(prepared, NULL, 1, &results), GULLET_ERROR_NULL_POINTER, "rows"));
    CHECK(told(gullet_table_study_stream(prepared, &rows, 1, NULL), GULLET_ERROR_NULL_POINTER, "results_out"));
    CHECK(rows.release != NULL);
    CHECK(told(gullet_table_study_stream(prepared, &rows, 1, &results), GULLET_ERROR_INCONSISTENT, "schema"));
    CHECK(rows.release == NULL);
    CHECK(told(gullet_table_study_stream(prepared, &rows, 1, &results), GULLET_ERROR_ARROW_DATA, "spent"));
    rows = stream_of(END);
    rows.get_schema = NULL;
    CHECK(told(gullet_table_study_stream(prepared, &rows, 1, &results), GULLET_ERROR_ARROW_DATA, "spent"));
    gullet_table_study_free(prepared);
}

int main(void)
{
    CHECK(gullet_job_new_toml(NULL, JOB, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    /* The material of the third row. */
    {
        char other[sizeof JOB];
        gullet_job *of_steel = NULL;
        memcpy(other, JOB, sizeof JOB);
        memcpy(strstr(other, "6061"), "1018", 4);
        CHECK(gullet_job_new_toml(NULL, other, GULLET_NUL_TERMINATED, &of_steel) == GULLET_OK);
        CHECK(gullet_study_of_job(of_steel, &study) == GULLET_OK);
        gullet_job_free(of_steel);
    }
    tables();
    holes();
    reports();
    bad_tables();
    streams();
    bad_streams();
    gullet_study_free(study);
    gullet_job_free(job);
    CHECK(released == made && made > 30);
    printf("%d arrays, schemas and streams, %d released\n", made, released);
    return check_end("arrow");
}
