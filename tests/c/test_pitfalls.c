/* Wrong pointers, lengths, sizes, texts and numbers: each is answered by a status, and nothing is
 * written. */
#include "check.h"
#include <gullet.h>
#include <math.h>

/* The status and the parameter of the last failure. */
static int told(gullet_status status, gullet_status expected, const char *parameter)
{
    gullet_problem problem = gullet_problem_init();
    return status == expected && gullet_last_error_count() == 1
        && gullet_last_error(0, &problem) == GULLET_OK && problem.status == expected
        && strcmp(problem.parameter, parameter) == 0 && *problem.message && *problem.remedy
        && strstr(gullet_last_error_message(), gullet_status_name(expected)) == gullet_last_error_message();
}

/* An address that is none of a double. */
static double *misaligned(double *array)
{
    return (double *)(void *)((char *)array + 1);
}

static const char JOB[] =
    "units = 'metric'\n[material]\nid = '6061'\n[blank]\nlength = '100 mm'\nwidth = '60 mm'\nheight = '25 mm'\n"
    "[cutter]\nform = 'square'\nmaterial = 'HSS'\ndiameter = '12 mm'\nteeth = 2\nflute_length = '26 mm'\n"
    "stick_out = '40 mm'\n[machine]\nbase = 'manual-knee-mill'\n[hold]\nclamping_force = '12 kN'\n"
    "grip_depth = '12 mm'\n[cut]\noperation = 'side-milling'\nremove = '3 mm'\naxial_depth = '8 mm'\n";

static void versions(void)
{
    char text[32];
    snprintf(text, sizeof text, "%d.%d.%d", GULLET_VERSION_MAJOR, GULLET_VERSION_MINOR, GULLET_VERSION_PATCH);
    CHECK(strcmp(text, GULLET_VERSION) == 0);
    CHECK(strcmp(gullet_version(), GULLET_VERSION) == 0);
    CHECK(gullet_version_number() == GULLET_VERSION_NUMBER);
    CHECK(GULLET_VERSION_NUMBER
          == GULLET_VERSION_MAJOR * 1000000u + GULLET_VERSION_MINOR * 1000u + GULLET_VERSION_PATCH);
    CHECK(GULLET_VERSION_AT_LEAST(0, 1, 0));
    CHECK(!GULLET_VERSION_AT_LEAST(1000, 0, 0));
}

static void before_any_failure(void)
{
    gullet_problem problem = gullet_problem_init();
    CHECK(gullet_last_error_count() == 0);
    CHECK(strcmp(gullet_last_error_message(), "") == 0);
    CHECK(gullet_last_error(0, &problem) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_last_error(0, NULL) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(strcmp(gullet_limit_name(GULLET_LIMIT_POWER), "power") == 0 && strcmp(gullet_limit_unit(GULLET_LIMIT_POWER), "W") == 0);
    CHECK(strcmp(gullet_limit_name(0), "") == 0 && strcmp(gullet_limit_unit(-5), "") == 0);
    CHECK(strcmp(gullet_status_name(GULLET_OK), "ok") == 0);
    CHECK(strcmp(gullet_status_name(GULLET_ERROR_PANIC), "panic") == 0);
    CHECK(strcmp(gullet_status_name(-9999), "unknown") == 0);
}

static void the_last_error(void)
{
    double speed = 7.0;
    gullet_problem problem = gullet_problem_init();
    gullet_status status = gullet_spindle_speed(-1.0, 0.0, &speed);
    CHECK(status == GULLET_ERROR_OUT_OF_RANGE && speed == 7.0);
    CHECK(gullet_last_error_count() == 2);
    CHECK(gullet_last_error(1, &problem) == GULLET_OK);
    CHECK(problem.status == GULLET_ERROR_OUT_OF_RANGE && strcmp(problem.parameter, "diameter") == 0);
    CHECK(strcmp(problem.value, "0 mm") == 0 && strstr(problem.admissible, "above 0 mm") != NULL);
    CHECK(strstr(problem.message, problem.remedy) != NULL);
    CHECK(strstr(gullet_last_error_message(), "cutting_speed") != NULL);
    CHECK(strstr(gullet_last_error_message(), problem.message) != NULL);
    CHECK(gullet_last_error(2, &problem) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_last_error(0, NULL) == GULLET_ERROR_NULL_POINTER);
    problem.struct_size = 0;
    CHECK(gullet_last_error(0, &problem) == GULLET_ERROR_STRUCT_SIZE);
    /* Neither asking nor a success changes it. */
    CHECK(gullet_spindle_speed(1.0, 0.01, &speed) == GULLET_OK && speed != 7.0);
    CHECK(gullet_last_error_count() == 2);
}

static void numbers(void)
{
    static const double bad[] = {NAN, INFINITY, -INFINITY};
    double out = 7.0, huge = 1e308;
    size_t i;
    for (i = 0; i < 3; i++) {
        CHECK(told(gullet_spindle_speed(bad[i], 0.01, &out), GULLET_ERROR_NOT_FINITE, "cutting_speed"));
        CHECK(told(gullet_spindle_speed(1.0, bad[i], &out), GULLET_ERROR_NOT_FINITE, "diameter"));
        CHECK(told(gullet_to_si("length", bad[i], "mm", &out), GULLET_ERROR_NOT_FINITE, "value"));
        CHECK(told(gullet_from_si("length", bad[i], "mm", &out), GULLET_ERROR_NOT_FINITE, "value_si"));
        CHECK(told(gullet_format("length", bad[i], GULLET_METRIC, NULL, 0, NULL), GULLET_ERROR_NOT_FINITE, "value_si"));
    }
    CHECK(gullet_spindle_speed(huge, 1e-308, &out) == GULLET_ERROR_RESULT_OVERFLOW);
    CHECK(told(gullet_table_feed(1e-4, 2.5, 10.0, &out), GULLET_ERROR_NOT_WHOLE, "teeth"));
    CHECK(out == 7.0);
    /* Smaller than any normal number, and not zero. */
    CHECK(gullet_spindle_speed(1e-310, 1.0, &out) == GULLET_OK && out > 0.0);
}

static void pointers(void)
{
    double values[4] = {0.01, 0.02, 0.03, 0.04}, out[4] = {7.0, 7.0, 7.0, 7.0};
    gullet_status statuses[4] = {7, 7, 7, 7};
    gullet_setup *setup = NULL;
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    gullet_cut cut = gullet_cut_init();
    gullet_pass pass = gullet_pass_init();
    CHECK(told(gullet_spindle_speed(1.0, 0.01, NULL), GULLET_ERROR_NULL_POINTER, "spindle_speed"));
    CHECK(told(gullet_spindle_speed(1.0, 0.01, misaligned(out)), GULLET_ERROR_MISALIGNED, "spindle_speed"));
    CHECK(told(gullet_spindle_speed_array(3, NULL, values, out, statuses), GULLET_ERROR_NULL_POINTER, "cutting_speed"));
    CHECK(told(gullet_spindle_speed_array(3, values, NULL, out, statuses), GULLET_ERROR_NULL_POINTER, "diameter"));
    CHECK(told(gullet_spindle_speed_array(3, values, values, NULL, statuses), GULLET_ERROR_NULL_POINTER, "result"));
    CHECK(told(gullet_spindle_speed_array(3, values, values, out, NULL), GULLET_ERROR_NULL_POINTER, "status"));
    CHECK(told(gullet_spindle_speed_array(3, misaligned(values), values, out, statuses), GULLET_ERROR_MISALIGNED, "cutting_speed"));
    CHECK(told(gullet_spindle_speed_array(3, values, values, misaligned(out), statuses), GULLET_ERROR_MISALIGNED, "result"));
    CHECK(told(gullet_spindle_speed_array(3, values, values, out, (gullet_status *)(void *)((char *)statuses + 2)), GULLET_ERROR_MISALIGNED, "status"));
    CHECK(gullet_spindle_speed_array(0, NULL, NULL, NULL, NULL) == GULLET_OK);
    CHECK(gullet_evaluate_columns("spindle_speed", 0, NULL, 0, NULL, NULL) == GULLET_ERROR_MISSING);
    CHECK(told(gullet_evaluate(NULL, "", 0, out), GULLET_ERROR_NULL_POINTER, "formula"));
    CHECK(told(gullet_evaluate("spindle_speed", NULL, 3, out), GULLET_ERROR_NULL_POINTER, "arguments"));
    CHECK(told(gullet_evaluate("spindle_speed", NULL, GULLET_NUL_TERMINATED, out), GULLET_ERROR_NULL_POINTER, "arguments"));
    CHECK(told(gullet_evaluate("spindle_speed", "cutting_speed=1 m/min; diameter=1 mm", GULLET_NUL_TERMINATED, NULL), GULLET_ERROR_NULL_POINTER, "result_si_out"));
    CHECK(told(gullet_evaluate_si("spindle_speed", NULL, 2, out), GULLET_ERROR_NULL_POINTER, "arguments_si"));
    CHECK(told(gullet_parse(NULL, "1 mm", 4, out), GULLET_ERROR_NULL_POINTER, "kind"));
    CHECK(told(gullet_convert("length", 1.0, NULL, "mm", out), GULLET_ERROR_NULL_POINTER, "from_unit"));
    CHECK(told(gullet_convert("length", 1.0, "in", NULL, out), GULLET_ERROR_NULL_POINTER, "to_unit"));
    CHECK(told(gullet_job_new_toml(NULL, NULL, 1, &job), GULLET_ERROR_NULL_POINTER, "job"));
    CHECK(told(gullet_job_new_toml(NULL, JOB, GULLET_NUL_TERMINATED, NULL), GULLET_ERROR_NULL_POINTER, "job_out"));
    CHECK(told(gullet_cutter_new(NULL, "{}", 2, NULL), GULLET_ERROR_NULL_POINTER, "cutter"));
    CHECK(told(gullet_cutter_json(NULL, NULL, 0, NULL), GULLET_ERROR_NULL_POINTER, "cutter"));
    CHECK(told(gullet_job_setup(NULL, &setup), GULLET_ERROR_NULL_POINTER, "job"));
    CHECK(told(gullet_plan_new(NULL, &plan), GULLET_ERROR_NULL_POINTER, "job"));
    CHECK(told(gullet_card_text(NULL, NULL, 0, NULL), GULLET_ERROR_NULL_POINTER, "plan"));
    CHECK(told(gullet_plan_summarise(NULL, NULL), GULLET_ERROR_NULL_POINTER, "plan"));
    CHECK(told(gullet_plan_pass(NULL, 0, NULL), GULLET_ERROR_NULL_POINTER, "plan"));
    CHECK(told(gullet_cut_compute(NULL, &pass, &cut, NULL, 0), GULLET_ERROR_NULL_POINTER, "setup"));
    CHECK(told(gullet_cut_json(NULL, &pass, 0, NULL, 0, NULL), GULLET_ERROR_NULL_POINTER, "setup"));
    CHECK(told(gullet_setup_new(NULL, NULL, NULL, NULL, NULL, NULL, NULL, 0, &setup), GULLET_ERROR_NULL_POINTER, "material"));
    CHECK(told(gullet_library_new(NULL, NULL, 1, NULL), GULLET_ERROR_NULL_POINTER, "overlays"));
    CHECK(told(gullet_plan_new((gullet_job *)(void *)misaligned(values), &plan), GULLET_ERROR_MISALIGNED, "job"));
    CHECK(setup == NULL && job == NULL && plan == NULL && out[0] == 7.0 && statuses[0] == 7);
    gullet_library_free(NULL);
    gullet_material_free(NULL);
    gullet_blank_free(NULL);
    gullet_cutter_free(NULL);
    gullet_machine_free(NULL);
    gullet_hold_free(NULL);
    gullet_practice_free(NULL);
    gullet_setup_free(NULL);
    gullet_job_free(NULL);
    gullet_plan_free(NULL);
}

static void extents(void)
{
    double value = 0.01, out = 7.0;
    gullet_status status = 7;
    const size_t wraps = (size_t)-1 / sizeof(double) + 2, most = (size_t)-1 / 2 / sizeof(double) + 1;
    double *high = (double *)((size_t)-1 - 63);
    CHECK(told(gullet_spindle_speed_array(wraps, &value, &value, &out, &status), GULLET_ERROR_TOO_LARGE, "result"));
    CHECK(told(gullet_spindle_speed_array(most, &value, &value, &out, &status), GULLET_ERROR_TOO_LARGE, "result"));
    CHECK(told(gullet_spindle_speed_array(100, &value, &value, high, &status), GULLET_ERROR_TOO_LARGE, "result"));
    CHECK(told(gullet_evaluate_si("spindle_speed", &value, wraps, &out), GULLET_ERROR_TOO_LARGE, "arguments_si"));
    CHECK(told(gullet_evaluate("spindle_speed", "x", (size_t)-2, &out), GULLET_ERROR_TOO_LARGE, "arguments"));
    CHECK(told(gullet_evaluate_columns("spindle_speed", 1, (const gullet_column *)(void *)&value, wraps, &out, &status), GULLET_ERROR_TOO_LARGE, "columns"));
    CHECK(out == 7.0 && status == 7);
}

static void overlaps(void)
{
    union {
        double numbers[8];
        gullet_status statuses[16];
    } shared;
    double speeds[4] = {1.0, 2.0, 3.0, 4.0}, out[4] = {0.0, 0.0, 0.0, 0.0};
    gullet_status statuses[4] = {7, 7, 7, 7};
    int i;
    for (i = 0; i < 8; i++)
        shared.numbers[i] = 0.01 * (i + 1);
    /* In place, shifted by one row, and over the statuses. */
    CHECK(told(gullet_spindle_speed_array(4, speeds, shared.numbers, shared.numbers, statuses), GULLET_ERROR_OVERLAP, "result"));
    CHECK(told(gullet_spindle_speed_array(4, shared.numbers, speeds, shared.numbers + 1, statuses), GULLET_ERROR_OVERLAP, "result"));
    CHECK(told(gullet_spindle_speed_array(4, shared.numbers + 3, speeds, shared.numbers, statuses), GULLET_ERROR_OVERLAP, "result"));
    CHECK(told(gullet_spindle_speed_array(4, shared.numbers, speeds, out, shared.statuses + 7), GULLET_ERROR_OVERLAP, "status"));
    CHECK(told(gullet_spindle_speed_array(4, speeds, speeds, shared.numbers, shared.statuses), GULLET_ERROR_OVERLAP, "result"));
    CHECK(shared.numbers[0] == 0.01 && shared.numbers[4] == 0.05 && statuses[0] == 7);
    /* Side by side is no overlap, and an argument may stand twice. */
    CHECK(gullet_spindle_speed_array(4, shared.numbers, shared.numbers, shared.numbers + 4, statuses) == GULLET_OK);
    CHECK(gullet_spindle_speed_array(4, speeds, speeds, out, statuses) == GULLET_OK);
    CHECK(out[0] == out[3] && out[0] > 0.318 && out[0] < 0.319 && statuses[3] == 0);
}

static void columns(void)
{
    double speeds[3] = {1.0, -1.0, 3.0}, diameter = 0.01, out[3] = {7.0, 7.0, 7.0}, one = 0.0;
    gullet_status statuses[3];
    gullet_column given[2];
    given[0].values_si = speeds;
    given[0].value_count = 3;
    given[1].values_si = &diameter;
    given[1].value_count = 1;
    CHECK(gullet_evaluate_columns("spindle_speed", 3, given, 2, out, statuses) == GULLET_WARNING_ROWS_REFUSED);
    CHECK(statuses[0] == GULLET_OK && statuses[1] == GULLET_ERROR_OUT_OF_RANGE && statuses[2] == GULLET_OK);
    CHECK(gullet_spindle_speed(3.0, diameter, &one) == GULLET_OK && out[2] == one && out[1] == 7.0);
    CHECK(gullet_evaluate_columns("spindle_speed", 3, given, 1, out, statuses) == GULLET_ERROR_MISSING);
    given[1].value_count = 2;
    CHECK(told(gullet_evaluate_columns("spindle_speed", 3, given, 2, out, statuses), GULLET_ERROR_INCONSISTENT, "diameter"));
    given[1].value_count = 1;
    given[1].values_si = NULL;
    CHECK(told(gullet_evaluate_columns("spindle_speed", 3, given, 2, out, statuses), GULLET_ERROR_NULL_POINTER, "diameter"));
    given[1].values_si = out;
    CHECK(gullet_evaluate_columns("no_such_formula", 3, given, 2, out, statuses) == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_evaluate_si("spindle_speed", speeds, 3, out) == GULLET_ERROR_MISSING);
}

static void texts(void)
{
    double out = 7.0;
    size_t length = 10u * 1024 * 1024;
    char *large = (char *)malloc(length);
    gullet_job *job = NULL;
    CHECK(told(gullet_parse("length", "1 \xff mm", 6, &out), GULLET_ERROR_TEXT_ENCODING, "quantity"));
    CHECK(told(gullet_evaluate("spindle\xc3", "", 0, &out), GULLET_ERROR_TEXT_ENCODING, "formula"));
    CHECK(told(gullet_job_new_json(NULL, "{\"a\xed\xa0\x80\": 1}", GULLET_NUL_TERMINATED, &job), GULLET_ERROR_TEXT_ENCODING, "job"));
    CHECK(gullet_parse("length", "", 0, &out) == GULLET_ERROR_NUMBER_UNREADABLE);
    CHECK(gullet_parse("length", NULL, 0, &out) == GULLET_ERROR_NUMBER_UNREADABLE);
    /* Only the bytes that belong to the text are read, with a NUL among them or none behind. */
    CHECK(gullet_parse("length", "12 mmxxxx", 5, &out) == GULLET_OK && out == 0.012);
    out = 7.0;
    CHECK(gullet_parse("length", "12 mm\0", 6, &out) < 0);
    CHECK(gullet_job_new_toml(NULL, "title = 'a\0b'\n", 14, &job) == GULLET_ERROR_SYNTAX);
    memset(large, '9', length);
    CHECK(gullet_parse("length", large, length, &out) < 0);
    CHECK(gullet_evaluate("spindle_speed", large, length, &out) == GULLET_ERROR_SYNTAX);
    CHECK(gullet_job_new_toml(NULL, large, length, &job) < 0);
    CHECK(gullet_job_new_json(NULL, large, length, &job) == GULLET_ERROR_OUT_OF_RANGE);
    memset(large, '[', length);
    CHECK(gullet_job_new_json(NULL, large, 200000, &job) == GULLET_ERROR_SYNTAX);
    CHECK(gullet_job_new_toml(NULL, large, 200000, &job) == GULLET_ERROR_SYNTAX);
    CHECK(strlen(gullet_last_error_message()) < 2000);
    CHECK(out == 7.0 && job == NULL);
    CHECK(gullet_convert("size", 1.0, "in", "mm", &out) == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_convert("length", 1.0, "in", "kg", &out) == GULLET_ERROR_UNIT_UNKNOWN);
    CHECK(gullet_convert("length", 1.0, "", "mm", &out) == GULLET_ERROR_UNIT_MISSING);
    CHECK(gullet_convert("length", 1.0, "in", "mm", &out) == GULLET_OK && out == 25.4);
    CHECK(gullet_convert("velocity", 9.0, "in/min", "mm/min", &out) == GULLET_OK && out == 228.6);
    CHECK(gullet_convert("power", 1.0, "hp", "W", &out) == GULLET_OK && out == 745.69987158227022);
    CHECK(gullet_from_si("rotational_speed", 10.0, "rpm", &out) == GULLET_OK && out == 600.0);
    free(large);
}

static void buffers(void)
{
    char buffer[64];
    size_t needed = 0, i;
    memset(buffer, 'x', sizeof buffer);
    CHECK(told(gullet_format("length", 0.0127, GULLET_INCH, buffer, 3, &needed), GULLET_ERROR_BUFFER_TOO_SHORT, "capacity"));
    CHECK(needed == strlen("0.5 in") + 1 && buffer[0] == 'x');
    CHECK(told(gullet_format("length", 0.0127, GULLET_INCH, NULL, 0, NULL), GULLET_ERROR_BUFFER_TOO_SHORT, "capacity"));
    CHECK(told(gullet_format("length", 0.0127, GULLET_INCH, NULL, 64, &needed), GULLET_ERROR_NULL_POINTER, "buffer"));
    CHECK(told(gullet_format("length", 0.0127, GULLET_INCH, buffer, needed - 1, &needed), GULLET_ERROR_BUFFER_TOO_SHORT, "capacity"));
    CHECK(told(gullet_format("length", 0.0127, 2, buffer, sizeof buffer, &needed), GULLET_ERROR_OUT_OF_RANGE, "units"));
    CHECK(told(gullet_format("length", 0.0127, -1, buffer, sizeof buffer, &needed), GULLET_ERROR_OUT_OF_RANGE, "units"));
    CHECK(gullet_format("length", 0.0127, GULLET_INCH, buffer, needed, &needed) == GULLET_OK);
    CHECK(strcmp(buffer, "0.5 in") == 0);
    for (i = needed; i < sizeof buffer; i++)
        CHECK(buffer[i] == 'x');
    CHECK(gullet_formula_name(gullet_formula_count(), buffer, sizeof buffer, NULL) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_describe("spindle_speed", NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT && needed > 100);
}

static void structs(void)
{
    gullet_job *job = NULL;
    gullet_setup *setup = NULL;
    struct {
        gullet_pass pass;
        double later[2];
    } newer;
    struct {
        gullet_cut cut;
        double later[2];
    } newer_cut;
    gullet_cut cut = gullet_cut_init();
    gullet_pass pass = gullet_pass_init();
    gullet_limit limits[GULLET_LIMITS_MOST];
    size_t i;
    CHECK(gullet_job_new_toml(NULL, JOB, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_job_setup(job, &setup) == GULLET_OK);
    gullet_job_free(job);
    pass.axial_depth_m = 0.008;
    pass.radial_depth_m = 0.001;
    CHECK(gullet_cut_compute(setup, &pass, &cut, NULL, 0) >= 0 && cut.spindle_speed_rev_per_s > 0.0);

    pass.struct_size = 0;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_STRUCT_SIZE, "gullet_pass"));
    pass.struct_size = (uint32_t)sizeof pass - 8;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_STRUCT_SIZE, "gullet_pass"));
    pass.struct_size = (uint32_t)sizeof pass;
    memset(&newer, 0, sizeof newer);
    newer.pass = pass;
    newer.pass.struct_size = (uint32_t)sizeof newer;
    CHECK(gullet_cut_compute(setup, &newer.pass, &cut, NULL, 0) >= 0);
    newer.later[1] = 1.0;
    CHECK(told(gullet_cut_compute(setup, &newer.pass, &cut, NULL, 0), GULLET_ERROR_STRUCT_SIZE, "gullet_pass"));
    memset(&newer_cut, 0x55, sizeof newer_cut);
    newer_cut.cut.struct_size = (uint32_t)sizeof newer_cut;
    CHECK(gullet_cut_compute(setup, &pass, &newer_cut.cut, NULL, 0) >= 0);
    CHECK(newer_cut.later[0] == 0.0 && newer_cut.later[1] == 0.0 && newer_cut.cut.struct_size == sizeof newer_cut);
    CHECK(newer_cut.cut.time_s == cut.time_s && newer_cut.cut.reserved == 0);

    cut = gullet_cut_init();
    cut.struct_size = 4;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_STRUCT_SIZE, "gullet_cut"));
    cut.struct_size = (uint32_t)sizeof cut;
    memset(limits, 0, sizeof limits);
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, limits, GULLET_LIMITS_MOST), GULLET_ERROR_STRUCT_SIZE, "gullet_limit"));
    limits[0] = gullet_limit_init();
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, limits, 3), GULLET_ERROR_BUFFER_TOO_SHORT, "limit_capacity"));
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, limits, (size_t)-1 / 8), GULLET_ERROR_TOO_LARGE, "limits"));
    CHECK(cut.limit_count == 0 && cut.time_s == 0.0 && limits[0].limit == 0);
    CHECK(gullet_cut_compute(setup, &pass, &cut, limits, GULLET_LIMITS_MOST) >= 0);
    CHECK(cut.limit_count > 5 && cut.limit_count <= GULLET_LIMITS_MOST);
    for (i = 0; i < cut.limit_count; i++) {
        CHECK(limits[i].struct_size == sizeof limits[i] && *gullet_limit_name(limits[i].limit) != 0);
        CHECK(limits[i].at_least == 0 || limits[i].at_least == 1);
        if (limits[i].limit == GULLET_LIMIT_POWER)
            CHECK(limits[i].share == limits[i].value_si / limits[i].bound_si);
    }

    pass.operation = 3;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "pass.operation"));
    pass.operation = GULLET_SIDE_MILLING;
    pass.kind = -1;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "pass.kind"));
    pass.kind = GULLET_ROUGHING;
    pass.direction = 0x7fffffff;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "pass.direction"));
    pass.direction = GULLET_CLIMB;
    pass.lowering = 2;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "pass.lowering"));
    pass.lowering = GULLET_LOWER;
    pass.with_reliefs = 2;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "pass.with_reliefs"));
    pass.with_reliefs = 0;
    pass.radial_depth_m = 0.0;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_OUT_OF_RANGE, "cut.radial_depth"));
    pass.radial_depth_m = NAN;
    CHECK(told(gullet_cut_compute(setup, &pass, &cut, NULL, 0), GULLET_ERROR_NOT_FINITE, "cut.radial_depth"));
    gullet_setup_free(setup);
}

int main(void)
{
    before_any_failure();
    versions();
    the_last_error();
    numbers();
    pointers();
    extents();
    overlaps();
    columns();
    texts();
    buffers();
    structs();
    return check_end("pitfalls");
}
