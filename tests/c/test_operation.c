/* Operations: the list, a hole drilled, errors, buffers, and the cards of a part. Argument: the file of
   a part made by several operations. */
#include "check.h"
#include <gullet.h>

typedef gullet_status (*form)(const gullet_operation_cut *, char *, size_t, size_t *);

/* Text of a form, for free(). */
static char *text_of(form form, const gullet_operation_cut *cut)
{
    size_t needed = 0;
    char *text;
    CHECK(form(cut, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT && needed > 0);
    text = (char *)malloc(needed);
    CHECK(form(cut, text, needed, NULL) == GULLET_OK && strlen(text) + 1 == needed);
    return text;
}

static int near(double a, double b)
{
    double difference = a > b ? a - b : b - a;
    return difference <= 1e-12 * (a > 0.0 ? a : -a);
}

/* Sets "name=value; ..." as a list has it. */
static void set_all(gullet_operation *operation, const char *inputs)
{
    char *copy = (char *)malloc(strlen(inputs) + 1), *at = copy, *next, *value;
    strcpy(copy, inputs);
    while (at != NULL && *at != 0) {
        next = strchr(at, ';');
        if (next != NULL)
            *next++ = 0;
        while (*at == ' ')
            at++;
        value = strchr(at, '=');
        if (value != NULL) {
            *value++ = 0;
            CHECK_OF(gullet_operation_set_text(operation, at, value) == GULLET_OK, at);
        }
        at = next;
    }
    free(copy);
}

/* Every operation of the list runs its example; names and numbers agree in every way of asking. */
static void examples(void)
{
    size_t count = gullet_operation_count(), place = 0, again = 0, i;
    gullet_operation_listing listing = gullet_operation_listing_init();
    gullet_operation_field field = gullet_operation_field_init();
    gullet_operation_summary summary = gullet_operation_summary_init();
    CHECK(count >= 10);
    for (place = 0; place < count; place++) {
        gullet_operation *operation = NULL;
        gullet_operation_cut *cut = NULL;
        gullet_limit limits[GULLET_LIMITS_MOST];
        double values[64], value = 0.0;
        int32_t known[64];
        unsigned required = 0, binding = 0;
        gullet_status status;
        char *json;
        CHECK(gullet_operation_list(place, &listing) == GULLET_OK && listing.title[0] != 0 && listing.meaning[0] != 0);
        CHECK(gullet_operation_find(listing.name, &again) == GULLET_OK && again == place);
        for (i = 0; i < listing.input_count; i++) {
            CHECK(gullet_operation_input(place, i, &field) == GULLET_OK && field.name[0] != 0);
            CHECK(field.kind[0] != 0 && field.meaning[0] != 0 && field.admissible[0] != 0);
            CHECK(!field.always || field.default_text[0] == 0);
            required += field.always != 0;
        }
        CHECK(required > 0 && gullet_operation_input(place, i, &field) == GULLET_ERROR_OUT_OF_RANGE);
        CHECK(gullet_operation_new(NULL, listing.name, GULLET_METRIC, &operation) == GULLET_OK);
        CHECK(gullet_operation_compute(operation, &cut) == GULLET_ERROR_MISSING && cut == NULL);
        CHECK_OF(gullet_last_error_count() == 2 + required, listing.name);
        CHECK(gullet_operation_set_text(operation, "material", listing.example_material) == GULLET_OK);
        CHECK(gullet_operation_set_text(operation, "machine", listing.example_machine) == GULLET_OK);
        CHECK(gullet_operation_set_text(operation, "tool", listing.example_tool) == GULLET_OK);
        CHECK(gullet_operation_set_text(operation, "practice", "experienced") == GULLET_OK);
        set_all(operation, listing.example_inputs);
        status = gullet_operation_compute(operation, &cut);
        CHECK_OF(status >= GULLET_OK, gullet_last_error_message());
        gullet_operation_free(operation);
        if (cut == NULL)
            continue;
        CHECK(gullet_operation_cut_summarise(cut, &summary) == GULLET_OK && summary.value_count == listing.value_count);
        CHECK((status == GULLET_OK) == (summary.warning_bits == 0));
        CHECK(status == GULLET_OK || (summary.warning_bits >> status & 1u));
        CHECK(summary.value_count < 64);
        CHECK(gullet_operation_cut_values(cut, values, known, 63) == GULLET_OK);
        for (i = 0; i < listing.value_count; i++) {
            CHECK(gullet_operation_value(place, i, &field) == GULLET_OK && field.default_text[0] == 0);
            status = gullet_operation_cut_value(cut, field.name, &value);
            CHECK_OF(known[i] ? status == GULLET_OK && value == values[i] : status == GULLET_ERROR_MISSING && values[i] == 0.0, field.name);
            CHECK(known[i] || !field.always);
        }
        limits[0] = gullet_limit_init();
        CHECK(gullet_operation_cut_limits(cut, limits, GULLET_LIMITS_MOST) == GULLET_OK);
        for (i = 0; i < summary.limit_count; i++) {
            CHECK(gullet_limit_name(limits[i].limit)[0] != 0 && !limits[i].exceeded && limits[i].share <= 1.0 + 1e-9);
            if (limits[i].binding) {
                binding++;
                CHECK(limits[i].limit == summary.binding_limit);
            }
        }
        CHECK_OF(binding == 1, listing.name);
        json = text_of(gullet_operation_cut_json, cut);
        CHECK(json[0] == '{' && strstr(json, listing.name) != NULL);
        free(json);
        gullet_operation_cut_free(cut);
    }
    CHECK(gullet_operation_list(count, &listing) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_operation_input(count, 0, &field) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_operation_value(0, 1000, &field) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_operation_find("driling", &again) == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(strstr(gullet_last_error_message(), "did you mean drilling?") != NULL);
}

/* A hole of 10 mm at 500 rpm and 0.1 mm: v_f = f n, v_c = pi D n, own arithmetic. */
static void hole(void)
{
    gullet_operation *operation = NULL;
    gullet_operation_cut *cut = NULL, *second = NULL;
    gullet_material *material = NULL;
    gullet_machine *machine = NULL;
    gullet_practice *practice = NULL;
    double feed_speed = 0.0, cutting_speed = 0.0, time = 0.0, blind = 0.0;
    char *text;
    CHECK(gullet_material_new(NULL, "{\"id\": \"1018\"}", GULLET_NUL_TERMINATED, &material) == GULLET_OK);
    CHECK(gullet_machine_new(NULL, "{\"base\": \"small-cnc-mill\"}", GULLET_NUL_TERMINATED, &machine) == GULLET_OK);
    CHECK(gullet_practice_new(NULL, "{\"base\": \"experienced\"}", GULLET_NUL_TERMINATED, &practice) == GULLET_OK);
    CHECK(gullet_operation_new(NULL, "drilling", GULLET_INCH, &operation) == GULLET_OK);
    CHECK(gullet_operation_set_material(operation, material) == GULLET_OK);
    CHECK(gullet_operation_set_machine(operation, machine) == GULLET_OK);
    CHECK(gullet_operation_set_practice(operation, practice) == GULLET_OK);
    gullet_material_free(material);
    gullet_machine_free(machine);
    gullet_practice_free(practice);
    CHECK(gullet_operation_set(operation, "diameter", 0.01) == GULLET_OK);
    CHECK(gullet_operation_set_text(operation, "depth", "20 mm") == GULLET_OK);
    CHECK(gullet_operation_set(operation, "spindle_speed", 500.0 / 60.0) == GULLET_OK);
    CHECK(gullet_operation_set_text(operation, "feed", "0.1 mm") == GULLET_OK);
    CHECK(gullet_operation_compute(operation, &cut) >= GULLET_OK);
    CHECK(gullet_operation_cut_value(cut, "feed_speed", &feed_speed) == GULLET_OK && near(feed_speed, 1e-4 * 500.0 / 60.0));
    CHECK(gullet_operation_cut_value(cut, "cutting_speed", &cutting_speed) == GULLET_OK);
    CHECK(near(cutting_speed, 3.14159265358979323846 * 0.01 * 500.0 / 60.0));
    CHECK(gullet_operation_cut_value(cut, "time", &time) == GULLET_OK && time > 0.020 / feed_speed);
    /* A choice by its place, the others kept; the first cut stays. */
    CHECK(gullet_operation_set(operation, "hole", 1.0) == GULLET_OK);
    CHECK(gullet_operation_compute(operation, &second) >= GULLET_OK);
    CHECK(gullet_operation_cut_value(second, "time", &blind) == GULLET_OK && blind > 0.0);
    text = text_of(gullet_operation_cut_text, second);
    CHECK(strstr(text, "blind") != NULL && strstr(text, " in/min") != NULL && strstr(text, "0.3937 in") != NULL);
    free(text);
    text = text_of(gullet_operation_cut_text, cut);
    CHECK(strstr(text, "through") != NULL && strncmp(text, "SET-UP CARD  Drilling\n", 22) == 0);
    free(text);
    text = text_of(gullet_operation_cut_html, cut);
    CHECK(strncmp(text, "<!DOCTYPE html>", 15) == 0 && strstr(text, "<script") == NULL);
    free(text);
    text = text_of(gullet_operation_cut_steps, cut);
    CHECK(strstr(text, "\n") != NULL && strstr(text, " = ") != NULL);
    free(text);
    text = text_of(gullet_operation_cut_cautions, cut);
    CHECK(strstr(text, "eye") != NULL);
    free(text);
    free(text_of(gullet_operation_cut_warnings, cut));
    gullet_operation_free(operation);
    gullet_operation_cut_free(cut);
    gullet_operation_cut_free(second);
}

static void errors(void)
{
    gullet_operation *operation = NULL;
    gullet_operation_cut *cut = NULL;
    gullet_operation_field field = gullet_operation_field_init();
    gullet_operation_summary summary = gullet_operation_summary_init();
    gullet_problem problem = gullet_problem_init();
    gullet_limit limits[2];
    union {
        double values[128];
        int32_t known[256];
    } room;
    double zero = 0.0, value = -1.0;
    CHECK(gullet_operation_new(NULL, "driling", GULLET_METRIC, &operation) == GULLET_ERROR_UNKNOWN_NAME && operation == NULL);
    CHECK(gullet_operation_new(NULL, NULL, GULLET_METRIC, &operation) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_new(NULL, "drilling", 7, &operation) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_operation_new(NULL, "drilling", GULLET_METRIC, NULL) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_new(NULL, "drilling", GULLET_METRIC, &operation) == GULLET_OK);
    CHECK(gullet_operation_set_text(operation, "diamter", "8 mm") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(strstr(gullet_last_error_message(), "did you mean diameter?") != NULL);
    CHECK(gullet_operation_set_text(operation, "diameter", "8") == GULLET_ERROR_UNIT_MISSING);
    CHECK(gullet_last_error(0, &problem) == GULLET_OK && strcmp(problem.parameter, "diameter") == 0);
    CHECK(gullet_operation_set_text(operation, "hole", "thru") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_text(operation, "material", "10 18x") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_text(operation, "machine", "small-cnc-mil") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_text(operation, "practice", "bold") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_text(operation, "tool", "wood") == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_text(operation, "depth", "\xff mm") == GULLET_ERROR_TEXT_ENCODING);
    CHECK(gullet_operation_set_text(operation, "depth", NULL) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_set_text(NULL, "depth", "8 mm") == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_set(operation, "dept", 1.0) == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_operation_set_material(operation, NULL) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_compute(NULL, &cut) == GULLET_ERROR_NULL_POINTER);
    set_all(operation, "material=1018; machine=small-cnc-mill; practice=experienced; diameter=8 mm; depth=20 mm");
    /* Numbers that mean nothing are told when it is computed, all at once. */
    CHECK(gullet_operation_set(operation, "diameter", -0.008) == GULLET_OK);
    CHECK(gullet_operation_set(operation, "point_angle", zero / zero) == GULLET_OK);
    CHECK(gullet_operation_set(operation, "hole", 2.0) == GULLET_OK);
    CHECK(gullet_operation_compute(operation, &cut) < 0 && cut == NULL && gullet_last_error_count() == 3);
    CHECK(gullet_operation_set(operation, "diameter", 0.008) == GULLET_OK);
    CHECK(gullet_operation_set_text(operation, "point_angle", "118 deg") == GULLET_OK);
    CHECK(gullet_operation_set(operation, "hole", 0.0) == GULLET_OK);
    CHECK(gullet_operation_set_text(operation, "depth", "800 mm") == GULLET_OK);
    CHECK(gullet_operation_compute(operation, &cut) == GULLET_ERROR_LIMIT_EXCEEDED && cut == NULL);
    CHECK(gullet_last_error(0, &problem) == GULLET_OK && strcmp(problem.parameter, "depth_ratio") == 0);
    CHECK(gullet_operation_set_text(operation, "depth", "20 mm") == GULLET_OK);
    CHECK(gullet_operation_compute(operation, &cut) >= GULLET_OK && cut != NULL);
    CHECK(gullet_operation_cut_value(cut, "tim", &value) == GULLET_ERROR_UNKNOWN_NAME && value == -1.0);
    CHECK(strstr(gullet_last_error_message(), "did you mean time?") != NULL);
    CHECK(gullet_operation_cut_value(cut, "handwheel_rate", &value) == GULLET_ERROR_MISSING && value == -1.0);
    CHECK(gullet_operation_cut_value(cut, "time", NULL) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_cut_values(cut, room.values, NULL, 3) == GULLET_ERROR_BUFFER_TOO_SHORT);
    CHECK(gullet_operation_cut_values(cut, NULL, NULL, 128) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_operation_cut_values(cut, room.values, room.known, 128) == GULLET_ERROR_OVERLAP);
    CHECK(gullet_operation_cut_values(cut, room.values, NULL, 128) == GULLET_OK);
    limits[0] = gullet_limit_init();
    CHECK(gullet_operation_cut_limits(cut, limits, 2) == GULLET_ERROR_BUFFER_TOO_SHORT);
    limits[0].struct_size = 3;
    CHECK(gullet_operation_cut_limits(cut, limits, 2) == GULLET_ERROR_STRUCT_SIZE);
    summary.struct_size = 4;
    CHECK(gullet_operation_cut_summarise(cut, &summary) == GULLET_ERROR_STRUCT_SIZE);
    field.struct_size = 8;
    CHECK(gullet_operation_input(0, 0, &field) == GULLET_ERROR_STRUCT_SIZE);
    CHECK(gullet_operation_input(0, 0, NULL) == GULLET_ERROR_NULL_POINTER);
    gullet_operation_cut_free(cut);
    gullet_operation_cut_free(NULL);
    gullet_operation_free(operation);
    gullet_operation_free(NULL);
}

/* A part has cards, and nothing that belongs to a job of one operation. */
static void part(const char *toml)
{
    static gullet_status (*const forms[])(const gullet_plan *, char *, size_t, size_t *) = {
        gullet_card_text, gullet_card_html, gullet_card_json};
    static const char *const words[] = {"PART  ", "<!DOCTYPE html>", "\"lots\""};
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    gullet_setup *setup = NULL;
    gullet_study *study = NULL;
    gullet_plan_summary summary = gullet_plan_summary_init();
    gullet_planned_pass pass = gullet_planned_pass_init();
    size_t i, needed = 0;
    CHECK_OF(gullet_job_new_toml(NULL, toml, GULLET_NUL_TERMINATED, &job) == GULLET_OK, gullet_last_error_message());
    CHECK(gullet_job_setup(job, &setup) == GULLET_ERROR_WRONG_TYPE && setup == NULL);
    CHECK(gullet_study_of_job(job, &study) == GULLET_ERROR_WRONG_TYPE && study == NULL);
    CHECK_OF(gullet_plan_new(job, &plan) == GULLET_OK, gullet_last_error_message());
    gullet_job_free(job);
    CHECK(gullet_plan_summarise(plan, &summary) == GULLET_ERROR_WRONG_TYPE);
    CHECK(gullet_plan_pass(plan, 0, &pass) == GULLET_ERROR_WRONG_TYPE);
    for (i = 0; i < 3; i++) {
        char *text;
        CHECK(forms[i](plan, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT);
        text = (char *)malloc(needed);
        CHECK(forms[i](plan, text, needed, NULL) == GULLET_OK);
        CHECK_OF(strlen(text) + 1 == needed && strstr(text, words[i]) != NULL, words[i]);
        free(text);
    }
    gullet_plan_free(plan);
    plan = NULL;
    job = NULL;
    CHECK(gullet_job_new_json(NULL, "{\"route\": \"part\"}", GULLET_NUL_TERMINATED, &job) == GULLET_ERROR_MISSING && job == NULL);
}

int main(int argc, char **argv)
{
    char *toml;
    if (argc != 2)
        return 2;
    toml = read_file(argv[1], NULL);
    examples();
    hole();
    errors();
    part(toml);
    free(toml);
    return check_end("operation");
}
