/* A table in the form of Apache Arrow, as another program would hand it over: its rows are computed, and a
 * report says what became of them. */
#include <gullet.h>
#include <stdio.h>
#include <string.h>

#define ROWS 4
#define COLUMNS 2

static const char constants[] =
    "machine=small-cnc-mill; operation=side-milling; axial_depth=6 mm; length=80 mm; part_height=25 mm;"
    "cutter_form=square; cutter_material=HSS; cutter_diameter=12 mm; cutter_teeth=2; cutter_flute_length=25 mm;"
    "cutter_stick_out=35 mm; clamping_force=10 kN; grip_depth=15 mm; cost_per_hour=48";

/* The table lives as long as the program: releasing it only says so. */
static void release_schema(struct ArrowSchema *schema)
{
    schema->release = NULL;
}

static void release_array(struct ArrowArray *array)
{
    array->release = NULL;
}

static struct ArrowSchema schema_of(const char *format, const char *name)
{
    struct ArrowSchema schema;
    memset(&schema, 0, sizeof schema);
    schema.format = format;
    schema.name = name;
    schema.release = release_schema;
    return schema;
}

static struct ArrowArray array_of(const void **buffers, int64_t buffer_count)
{
    struct ArrowArray array;
    memset(&array, 0, sizeof array);
    array.length = ROWS;
    array.n_buffers = buffer_count;
    array.buffers = buffers;
    array.release = release_array;
    return array;
}

static int failed(void)
{
    fprintf(stderr, "%s\n", gullet_last_error_message());
    return 1;
}

int main(void)
{
    static const double widths[ROWS] = {0.5, 1.0, 0.8, 0.3};
    static const int32_t ends[ROWS + 1] = {0, 4, 8, 12, 16};
    static const char words[] = "6061606260611018";
    const void *no_nulls[1] = {NULL}, *width_buffers[2] = {NULL, widths}, *word_buffers[3] = {NULL, ends, words};
    struct ArrowSchema width_schema = schema_of("g", "radial_depth_mm"), word_schema = schema_of("u", "material");
    struct ArrowSchema *column_schemas[COLUMNS] = {&width_schema, &word_schema};
    struct ArrowSchema schema = schema_of("+s", "");
    struct ArrowArray width_array = array_of(width_buffers, 2), word_array = array_of(word_buffers, 3);
    struct ArrowArray *column_arrays[COLUMNS] = {&width_array, &word_array};
    struct ArrowArray rows = array_of(no_nulls, 1), results;
    gullet_table_study *study = NULL;
    gullet_study_report *report = NULL;
    gullet_study_summary summary = gullet_study_summary_init();
    gullet_problem problem = gullet_problem_init();
    size_t count = 0, i;
    uint64_t row = 0;
    int limit;

    schema.n_children = COLUMNS;
    schema.children = column_schemas;
    rows.n_children = COLUMNS;
    rows.children = column_arrays;
    if (gullet_table_study_new(NULL, NULL, &schema, constants, GULLET_NUL_TERMINATED,
                               "columns=spindle_speed,time; spread.feed=0.95..1.05; draws=500", GULLET_NUL_TERMINATED,
                               &study) < 0
        || gullet_study_report_new(&report) < 0
        || gullet_table_study_run_with_report(study, &rows, 1, report, &results) < 0)
        return failed();
    printf("%d columns of %d rows\n", (int)results.n_children, (int)results.length);
    results.release(&results);

    if (gullet_study_report_summary(report, &summary) < 0 || gullet_study_report_problem_count(report, &count) < 0)
        return failed();
    printf("%d of %d rows computed: %.1f s in the cut, %.2f kJ, %.3f of money\n", (int)summary.computed, (int)summary.rows,
           summary.cutting_time_s, summary.energy_j / 1e3, summary.cost);
    for (limit = 1; *gullet_limit_name(limit) != 0; limit++) {
        uint64_t bound = 0;
        if (gullet_study_report_rows_of_limit(report, GULLET_ROWS_BINDING, limit, &bound) == GULLET_OK && bound > 0)
            printf("%d nearest to %s\n", (int)bound, gullet_limit_name(limit));
    }
    for (i = 0; i < count; i++) {
        if (gullet_study_report_problem(report, i, &row, &problem) < 0)
            return failed();
        printf("row %d: %s: %s = %s\n", (int)row, gullet_status_name(problem.status), problem.parameter, problem.value);
    }
    gullet_study_report_free(report);
    gullet_table_study_free(study);
    schema.release(&schema);
    return 0;
}
