/* Parts, libraries with overlays, set-ups, jobs, plans and cards. Argument: a job file. */
#include "check.h"
#include <gullet.h>

static gullet_setup *parts(void)
{
    static const char cutter_keys[] =
        "{\"form\": \"square\", \"material\": \"HSS\", \"diameter\": \"1/2 in\", \"teeth\": 2, "
        "\"flute_length\": \"1 in\", \"stick_out\": \"1.5 in\"}";
    char first[2048], second[2048];
    gullet_material *material = NULL;
    gullet_blank *blank = NULL;
    gullet_cutter *cutter = NULL, *again = NULL;
    gullet_machine *machine = NULL;
    gullet_hold *hold = NULL;
    gullet_practice *practice = NULL;
    gullet_setup *setup = NULL;
    gullet_problem problem = gullet_problem_init();
    CHECK(gullet_material_new(NULL, "{\"id\": \"6061\"}", GULLET_NUL_TERMINATED, &material) == GULLET_OK);
    CHECK(gullet_blank_new(NULL, "{\"length\": \"4 in\", \"width\": \"2 in\", \"height\": \"1 in\"}", GULLET_NUL_TERMINATED, &blank) == GULLET_OK);
    CHECK(gullet_cutter_new(NULL, cutter_keys, GULLET_NUL_TERMINATED, &cutter) == GULLET_OK);
    CHECK(gullet_machine_new(NULL, "{\"base\": \"manual-knee-mill\"}", GULLET_NUL_TERMINATED, &machine) == GULLET_OK);
    CHECK(gullet_hold_new(NULL, "{\"clamping_force\": \"12 kN\", \"grip_depth\": \"1/2 in\"}", GULLET_NUL_TERMINATED, &hold) == GULLET_OK);
    CHECK(gullet_practice_new(NULL, "{\"base\": \"training\"}", GULLET_NUL_TERMINATED, &practice) == GULLET_OK);
    /* What is written reads as the same. */
    CHECK(gullet_cutter_json(cutter, first, sizeof first, NULL) == GULLET_OK);
    CHECK(gullet_cutter_new(NULL, first, GULLET_NUL_TERMINATED, &again) == GULLET_OK);
    CHECK(gullet_cutter_json(again, second, sizeof second, NULL) == GULLET_OK && strcmp(first, second) == 0);
    CHECK(strstr(first, "0.5 in") != NULL || strstr(first, "12.7 mm") != NULL);
    CHECK(gullet_material_json(material, first, sizeof first, NULL) == GULLET_OK && strcmp(first, "{\"id\":\"6061\"}") == 0);
    CHECK(gullet_blank_json(blank, first, sizeof first, NULL) == GULLET_OK);
    CHECK(gullet_machine_json(machine, first, sizeof first, NULL) == GULLET_OK && strstr(first, "speeds") != NULL);
    CHECK(gullet_hold_json(hold, first, sizeof first, NULL) == GULLET_OK && strstr(first, "clamping_force") != NULL);
    CHECK(gullet_practice_json(practice, first, sizeof first, NULL) == GULLET_OK && strstr(first, "power_share") != NULL);
    gullet_cutter_free(again);
    again = NULL;
    CHECK(gullet_cutter_new(NULL, "{\"form\": \"square\", \"teath\": 2}", GULLET_NUL_TERMINATED, &again) == GULLET_ERROR_UNKNOWN_NAME);
    CHECK(gullet_last_error_count() > 3 && gullet_last_error(0, &problem) == GULLET_OK);
    CHECK(strcmp(problem.parameter, "cutter.teath") == 0 && strstr(problem.remedy, "teeth") != NULL && again == NULL);
    CHECK(gullet_setup_new(NULL, material, blank, cutter, machine, hold, practice, 5, &setup) == GULLET_ERROR_OUT_OF_RANGE && setup == NULL);
    CHECK(gullet_setup_new(NULL, material, blank, cutter, machine, hold, practice, GULLET_INCH, &setup) == GULLET_OK);
    gullet_material_free(material);
    gullet_blank_free(blank);
    gullet_cutter_free(cutter);
    gullet_machine_free(machine);
    gullet_hold_free(hold);
    gullet_practice_free(practice);
    return setup;
}

/* A shop's own speed answers in the place of the tables'; bad rows are all told. */
static void overlays(void)
{
    static const char csv[] = "id,class,tool_material,process,sfm_start,src\no1,6061,HSS,end milling,220,shop trial\n";
    static const char bad[] = "id,class,tool_material,process,sfm_start,src\no1,6061,HSS,end milling,-3,shop trial\no2,unheard,HSS,end milling,4,x\n";
    gullet_library *library = NULL, *second = NULL;
    gullet_material *material = NULL;
    gullet_overlay overlay;
    gullet_problem problem = gullet_problem_init();
    overlay.file_name = "ours.csv";
    overlay.text = csv;
    overlay.text_length = GULLET_NUL_TERMINATED;
    CHECK(gullet_library_new(NULL, NULL, 0, &library) == GULLET_OK);
    CHECK(gullet_library_new(library, &overlay, 1, &second) == GULLET_OK);
    gullet_library_free(library);
    CHECK(gullet_material_new(second, "{\"id\": \"6061\"}", GULLET_NUL_TERMINATED, &material) == GULLET_OK);
    gullet_library_free(second);
    gullet_material_free(material);
    second = NULL;
    overlay.text = bad;
    overlay.text_length = strlen(bad);
    CHECK(gullet_library_new(NULL, &overlay, 1, &second) == GULLET_ERROR_BAD_ROW && second == NULL);
    CHECK(gullet_last_error_count() >= 2 && gullet_last_error(0, &problem) == GULLET_OK);
    CHECK(strncmp(problem.parameter, "ours.csv:2", 10) == 0);
    overlay.text = "a,b\n\xff,1\n";
    overlay.text_length = 8;
    CHECK(gullet_library_new(NULL, &overlay, 1, &second) == GULLET_ERROR_TEXT_ENCODING);
    overlay.file_name = NULL;
    CHECK(gullet_library_new(NULL, &overlay, 1, &second) == GULLET_ERROR_NULL_POINTER && second == NULL);
}

/* The wanted cutting speed under an overlay is the overlay's. */
static void speed_of_the_shop(const char *toml)
{
    static const char csv[] = "id,class,tool_material,process,sfm_start,src\no1,6061,HSS,end milling,60,shop trial\n";
    gullet_library *library = NULL;
    gullet_job *job = NULL;
    gullet_setup *ours = NULL, *theirs = NULL;
    gullet_overlay overlay;
    gullet_pass pass = gullet_pass_init();
    gullet_cut our_cut = gullet_cut_init(), their_cut = gullet_cut_init();
    overlay.file_name = "ours.csv";
    overlay.text = csv;
    overlay.text_length = sizeof csv - 1;
    CHECK(gullet_library_new(NULL, &overlay, 1, &library) == GULLET_OK);
    CHECK(gullet_job_new_toml(library, toml, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_job_setup(job, &ours) == GULLET_OK);
    gullet_job_free(job);
    gullet_library_free(library);
    CHECK(gullet_job_new_toml(NULL, toml, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_job_setup(job, &theirs) == GULLET_OK);
    gullet_job_free(job);
    pass.axial_depth_m = 0.00635;
    pass.radial_depth_m = 0.001;
    CHECK(gullet_cut_compute(ours, &pass, &our_cut, NULL, 0) >= 0);
    CHECK(gullet_cut_compute(theirs, &pass, &their_cut, NULL, 0) >= 0);
    CHECK(our_cut.wanted_speed_rev_per_s < 0.5 * their_cut.wanted_speed_rev_per_s);
    gullet_setup_free(ours);
    gullet_setup_free(theirs);
}

/* Asking for reliefs changes nothing else, and gives some. */
static void reliefs(const gullet_setup *setup, gullet_pass *pass)
{
    gullet_cut lean = gullet_cut_init(), full = gullet_cut_init();
    gullet_limit fast[GULLET_LIMITS_MOST], slow[GULLET_LIMITS_MOST];
    unsigned i, found = 0;
    fast[0] = slow[0] = gullet_limit_init();
    CHECK(gullet_cut_compute(setup, pass, &lean, fast, GULLET_LIMITS_MOST) >= 0);
    pass->with_reliefs = 1;
    CHECK(gullet_cut_compute(setup, pass, &full, slow, GULLET_LIMITS_MOST) >= 0);
    pass->with_reliefs = 0;
    CHECK(memcmp(&lean, &full, sizeof lean) == 0);
    for (i = 0; i < lean.limit_count; i++) {
        CHECK(fast[i].relief_setting[0] == 0 && fast[i].relief_si == 0.0);
        CHECK(fast[i].limit == slow[i].limit && fast[i].value_si == slow[i].value_si && fast[i].share == slow[i].share);
        if (slow[i].relief_setting[0] != 0) {
            found++;
            CHECK(slow[i].relief_si > 0.0 && slow[i].relief_setting[31] == 0);
        }
    }
    CHECK(found > 0);
}

static void cuts(gullet_setup *setup)
{
    gullet_pass pass = gullet_pass_init();
    gullet_cut cut = gullet_cut_init();
    char *json;
    size_t needed = 0;
    gullet_status status;
    pass.operation = GULLET_SLOTTING;
    pass.axial_depth_m = 0.001;
    status = gullet_cut_compute(setup, &pass, &cut, NULL, 0);
    CHECK(status >= 0 && cut.entry_angle_rad >= 0.0 && cut.exit_angle_rad > 3.14 && cut.exit_angle_rad < 3.15);
    CHECK(cut.handwheel_rate_known == 1 && cut.handwheel_rate_rev_per_s > 0.0);
    CHECK((status == GULLET_OK) == (cut.warning_bits == 0));
    CHECK(status == GULLET_OK || cut.warning_bits >> status == 1u || (cut.warning_bits >> status & 1u));
    CHECK(cut.cutting_speed_low_m_per_s <= cut.cutting_speed_start_m_per_s && cut.time_low_s <= cut.time_high_s);
    pass.operation = GULLET_SIDE_MILLING;
    pass.axial_depth_m = 0.005;
    pass.radial_depth_m = 0.001;
    reliefs(setup, &pass);
    pass.operation = GULLET_SLOTTING;
    pass.axial_depth_m = 0.001;
    pass.radial_depth_m = 0.0;
    CHECK(gullet_cut_json(setup, &pass, GULLET_INCH, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT);
    json = (char *)malloc(needed);
    CHECK(gullet_cut_json(setup, &pass, GULLET_INCH, json, needed, NULL) == status);
    CHECK(strlen(json) + 1 == needed && json[0] == '{' && strstr(json, "spindle_speed") != NULL);
    free(json);
    /* A pass that no lowering saves. */
    pass.operation = GULLET_SIDE_MILLING;
    pass.axial_depth_m = 0.1;
    pass.radial_depth_m = 0.001;
    CHECK(gullet_cut_compute(setup, &pass, &cut, NULL, 0) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(strstr(gullet_last_error_message(), " in") != NULL);
}

static void plans(const char *toml)
{
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    gullet_plan_summary summary = gullet_plan_summary_init();
    gullet_planned_pass pass = gullet_planned_pass_init();
    gullet_cut cut = gullet_cut_init();
    gullet_limit limits[GULLET_LIMITS_MOST];
    size_t i, needed = 0;
    double removed = 0.0, seconds = 0.0;
    char *text;
    static gullet_status (*const forms[])(const gullet_plan *, char *, size_t, size_t *) = {
        gullet_card_text, gullet_card_html, gullet_card_json};
    static const char *const words[] = {"SET-UP CARD", "<!DOCTYPE html>", "\"passes\""};
    limits[0] = gullet_limit_init();
    CHECK(gullet_job_new_toml(NULL, toml, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_plan_new(job, &plan) >= GULLET_OK);
    gullet_job_free(job);
    CHECK(gullet_plan_summarise(plan, &summary) == GULLET_OK && summary.pass_count > 1);
    for (i = 0; i < summary.pass_count; i++) {
        CHECK(gullet_plan_pass(plan, i, &pass) == GULLET_OK && pass.number == i + 1);
        CHECK(pass.kind == (i + 1 == summary.pass_count ? GULLET_FINISHING : GULLET_ROUGHING));
        CHECK(gullet_plan_cut(plan, i, &cut, limits, GULLET_LIMITS_MOST) >= 0 && cut.time_s == pass.cutting_s);
        removed += pass.depth_m;
        seconds += pass.cutting_s;
    }
    CHECK(pass.left_counts == 0);
    CHECK(removed > summary.stock_m - 1e-9 && removed < summary.stock_m + 1e-9);
    CHECK(seconds > summary.cutting_s - 1e-9 && seconds < summary.cutting_s + 1e-9);
    CHECK(gullet_plan_pass(plan, i, &pass) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_plan_cut(plan, i, &cut, NULL, 0) == GULLET_ERROR_OUT_OF_RANGE);
    for (i = 0; i < 3; i++) {
        CHECK(forms[i](plan, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT);
        text = (char *)malloc(needed);
        CHECK(forms[i](plan, text, needed, NULL) == GULLET_OK);
        CHECK_OF(strlen(text) + 1 == needed && strstr(text, words[i]) != NULL, words[i]);
        free(text);
    }
    gullet_plan_free(plan);
}

int main(int argc, char **argv)
{
    gullet_setup *setup;
    char *toml;
    if (argc != 2)
        return 2;
    toml = read_file(argv[1], NULL);
    setup = parts();
    cuts(setup);
    gullet_setup_free(setup);
    overlays();
    speed_of_the_shop(toml);
    plans(toml);
    free(toml);
    return check_end("handles");
}
