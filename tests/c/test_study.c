/* Studies over columns: the same bits as one call a cut, and what is refused. An argument tells of how
 * many rows. */
#include "check.h"
#include <gullet.h>
#include <math.h>

#define ROWS 4000
#define DIAMETERS 4
#define MOST 64

static const char *const MATERIALS[] = {"{\"id\": \"6061\"}", "{\"id\": \"1018\"}", "{\"id\": \"304\"}"};
static const char *const MACHINES[] = {"{\"base\": \"manual-knee-mill\"}", "{\"base\": \"small-cnc-mill\"}"};
static const char *const SIZES[DIAMETERS] = {"6 mm", "3/8 in", "12 mm", "16 mm"};

static gullet_material *materials[3];
static gullet_machine *machines[2];
static gullet_practice *practice;
static gullet_blank *blank;
static gullet_hold *hold;
static gullet_cutter *cutters[DIAMETERS];
static gullet_study *study;

static double axial[ROWS], radial[ROWS], lengths[ROWS], diameters[ROWS], results[MOST][ROWS];
static uint32_t material_of[ROWS], machine_of[ROWS], operation_of[ROWS], kind_of[ROWS], direction_of[ROWS];
static int size_of[ROWS];
static gullet_status status[ROWS];
static size_t row_count = ROWS;
static uint8_t binding[ROWS], held_by[ROWS], warnings[ROWS];

static int told(gullet_status given, gullet_status wanted, const char *parameter)
{
    gullet_problem problem = gullet_problem_init();
    return given == wanted && gullet_last_error(0, &problem) == GULLET_OK && problem.status == wanted
        && strcmp(problem.parameter, parameter) == 0 && *problem.remedy != 0;
}

static int same_bits(double a, double b)
{
    return memcmp(&a, &b, sizeof a) == 0;
}

static uint32_t drawn(uint32_t below)
{
    static uint64_t state = 20240607;
    state = state * 6364136223846793005u + 1442695040888963407u;
    return (uint32_t)(state >> 33) % below;
}

static double between(double low, double high)
{
    return low + (high - low) * (double)drawn(1000003) / 1000003.0;
}

static void set_up(void)
{
    gullet_pass pass = gullet_pass_init();
    int i;
    for (i = 0; i < 3; i++)
        CHECK(gullet_material_new(NULL, MATERIALS[i], GULLET_NUL_TERMINATED, &materials[i]) == GULLET_OK);
    for (i = 0; i < 2; i++)
        CHECK(gullet_machine_new(NULL, MACHINES[i], GULLET_NUL_TERMINATED, &machines[i]) == GULLET_OK);
    CHECK(gullet_practice_new(NULL, "{\"base\": \"training\"}", GULLET_NUL_TERMINATED, &practice) == GULLET_OK);
    CHECK(gullet_blank_new(NULL, "{\"length\": \"90 mm\", \"width\": \"10 mm\", \"height\": \"1 in\"}",
                           GULLET_NUL_TERMINATED, &blank) == GULLET_OK);
    CHECK(gullet_hold_new(NULL, "{\"clamping_force\": \"15 kN\", \"grip_depth\": \"1/2 in\"}", GULLET_NUL_TERMINATED,
                          &hold) == GULLET_OK);
    for (i = 0; i < DIAMETERS; i++) {
        char keys[256];
        snprintf(keys, sizeof keys,
                 "{\"form\": \"square\", \"material\": \"HSS\", \"diameter\": \"%s\", \"teeth\": 2, \"flute_length\": "
                 "\"26 mm\", \"shank_diameter\": \"10 mm\", \"stick_out\": \"35 mm\"}", SIZES[i]);
        CHECK(gullet_cutter_new(NULL, keys, GULLET_NUL_TERMINATED, &cutters[i]) == GULLET_OK);
    }
    pass.axial_depth_m = 0.001;
    pass.radial_depth_m = 0.001;
    CHECK(gullet_study_new(NULL, (const gullet_material *const *)materials, 3, (const gullet_machine *const *)machines, 2,
                           (const gullet_practice *const *)&practice, 1, blank, cutters[0], hold, &pass, &study)
          == GULLET_OK);
    for (i = 0; i < ROWS; i++) {
        size_of[i] = (int)drawn(DIAMETERS);
        gullet_parse("length", SIZES[size_of[i]], GULLET_NUL_TERMINATED, &diameters[i]);
        material_of[i] = drawn(3);
        machine_of[i] = drawn(2);
        operation_of[i] = drawn(3);
        kind_of[i] = drawn(2);
        direction_of[i] = drawn(2);
        axial[i] = between(0.0002, 0.004);
        radial[i] = operation_of[i] == GULLET_SLOTTING ? diameters[i] : between(0.0002, 0.006);
        lengths[i] = between(0.01, 0.2);
        if (i % 97 == 0)
            axial[i] = i % 2 ? NAN : -1.0;
    }
}

static gullet_input input_of(int32_t which, const double *values)
{
    gullet_input given;
    memset(&given, 0, sizeof given);
    given.input = which;
    given.values_si = values;
    return given;
}

static gullet_choice choice_of(int32_t which, const uint32_t *places)
{
    gullet_choice given;
    memset(&given, 0, sizeof given);
    given.choice = which;
    given.places = places;
    return given;
}

static gullet_input inputs[4];
static gullet_choice choices[5];
static gullet_result wanted[MOST];

static gullet_study_batch batch_of(size_t result_count)
{
    gullet_study_batch batch = gullet_study_batch_init();
    size_t i, row;
    inputs[0] = input_of(GULLET_INPUT_AXIAL_DEPTH, axial);
    inputs[1] = input_of(GULLET_INPUT_RADIAL_DEPTH, radial);
    inputs[2] = input_of(GULLET_INPUT_LENGTH, lengths);
    inputs[3] = input_of(GULLET_INPUT_CUTTER_DIAMETER, diameters);
    choices[0] = choice_of(GULLET_CHOICE_MATERIAL, material_of);
    choices[1] = choice_of(GULLET_CHOICE_MACHINE, machine_of);
    choices[2] = choice_of(GULLET_CHOICE_OPERATION, operation_of);
    choices[3] = choice_of(GULLET_CHOICE_PASS, kind_of);
    choices[4] = choice_of(GULLET_CHOICE_DIRECTION, direction_of);
    memset(wanted, 0, sizeof wanted);
    for (i = 0; i < result_count; i++) {
        wanted[i].result = (int32_t)i + 1;
        wanted[i].values_si_out = results[i];
        for (row = 0; row < ROWS; row++)
            results[i][row] = 12345.0;
    }
    memset(status, 0x55, sizeof status);
    batch.count = row_count;
    batch.inputs = inputs;
    batch.input_count = 4;
    batch.choices = choices;
    batch.choice_count = 5;
    batch.results = wanted;
    batch.result_count = result_count;
    batch.status_out = status;
    batch.binding_limit_out = binding;
    batch.held_by_limit_out = held_by;
    batch.warning_bits_out = warnings;
    return batch;
}

static void lists(void)
{
    int32_t number, found;
    for (number = 1; *gullet_input_name(number) != 0; number++)
        CHECK(gullet_input_number(gullet_input_name(number), &found) == GULLET_OK && found == number);
    CHECK(number > GULLET_INPUT_PART_HEIGHT && *gullet_input_name(0) == 0 && *gullet_input_name(-1) == 0);
    CHECK(strcmp(gullet_input_unit(GULLET_INPUT_SPINDLE_SPEED), "rev/s") == 0);
    for (number = 1; *gullet_choice_name(number) != 0; number++)
        CHECK(gullet_choice_number(gullet_choice_name(number), &found) == GULLET_OK && found == number);
    CHECK(number == GULLET_CHOICE_FEED_ACROSS_JAWS + 1);
    CHECK(strcmp(gullet_choice_place_name(GULLET_CHOICE_OPERATION, GULLET_SLOTTING), "slotting") == 0);
    CHECK(strcmp(gullet_choice_place_name(GULLET_CHOICE_PASS, GULLET_FINISHING), "finishing") == 0);
    CHECK(strcmp(gullet_choice_place_name(GULLET_CHOICE_DIRECTION, GULLET_CLIMB), "climb") == 0);
    CHECK(strcmp(gullet_choice_place_name(GULLET_CHOICE_CUTTER_MATERIAL, GULLET_CUTTER_MATERIAL_HSS), "HSS") == 0);
    CHECK(strcmp(gullet_choice_place_name(GULLET_CHOICE_CUTTER_FORM, GULLET_CUTTER_FORM_BALL_NOSE), "ball-nose") == 0);
    CHECK(*gullet_choice_place_name(GULLET_CHOICE_OPERATION, 3) == 0 && *gullet_choice_place_name(0, 0) == 0);
    for (number = 1; *gullet_result_name(number) != 0; number++)
        CHECK(gullet_result_number(gullet_result_name(number), &found) == GULLET_OK && found == number);
    CHECK(number > GULLET_RESULT_TIME && strcmp(gullet_result_unit(GULLET_RESULT_TIME), "s") == 0);
    found = 7;
    CHECK(told(gullet_result_number("tim", &found), GULLET_ERROR_UNKNOWN_NAME, "result") && found == 7);
    CHECK(told(gullet_input_number(NULL, &found), GULLET_ERROR_NULL_POINTER, "input") && found == 7);
    CHECK(told(gullet_choice_number("pass", NULL), GULLET_ERROR_NULL_POINTER, "number_out"));
}

static void one_cut(size_t row, const gullet_setup *setup, size_t *made, size_t *wrong)
{
    gullet_pass pass = gullet_pass_init();
    gullet_cut cut = gullet_cut_init();
    const double *first = &cut.wanted_speed_rev_per_s;
    const size_t count = (size_t)(&cut.time_s - first) + 1;
    gullet_status one;
    size_t i;
    pass.operation = (int32_t)operation_of[row];
    pass.kind = (int32_t)kind_of[row];
    pass.direction = (int32_t)direction_of[row];
    pass.axial_depth_m = axial[row];
    pass.radial_depth_m = radial[row];
    pass.length_m = lengths[row];
    one = gullet_cut_compute(setup, &pass, &cut, NULL, 0);
    if (one < 0) {
        *wrong += status[row] != one;
        for (i = 0; i < count; i++)
            *wrong += results[i][row] != 12345.0;
        return;
    }
    ++*made;
    *wrong += status[row] != 0 || binding[row] != cut.binding_limit || held_by[row] != cut.held_by_limit
        || warnings[row] != (uint8_t)cut.warning_bits;
    for (i = 0; i < count; i++) {
        const double *field = first + i;
        const int known = field == &cut.handwheel_rate_rev_per_s ? cut.handwheel_rate_known
            : field == &cut.unit_power_cutting_power_w           ? cut.unit_power_cutting_power_known
            : field == &cut.mean_roughness_m                     ? cut.mean_roughness_known
                                                                 : 1;
        *wrong += !same_bits(results[i][row], known ? *field : 12345.0);
    }
    *wrong += !same_bits(results[GULLET_RESULT_SPEED_LOW - 1][row], cut.cutting_speed_low_m_per_s);
    *wrong += !same_bits(results[GULLET_RESULT_FORCE_HIGH - 1][row], cut.force_high_n);
    *wrong += !same_bits(results[GULLET_RESULT_TIME_START - 1][row], cut.time_start_s);
}

static void parity(void)
{
    static gullet_setup *setups[3][2][DIAMETERS];
    static const uint32_t threads[] = {1, 3, 0};
    size_t count = 0, t, row, made = 0, wrong = 0;
    while (*gullet_result_name((int32_t)count + 1) != 0)
        count++;
    CHECK(count < MOST);
    for (t = 0; t < 3; t++) {
        gullet_study_batch batch = batch_of(count);
        batch.threads = threads[t];
        CHECK(gullet_study_run(study, &batch) == GULLET_WARNING_ROWS_REFUSED);
        for (row = 0; row < row_count; row++) {
            gullet_setup **setup = &setups[material_of[row]][machine_of[row]][size_of[row]];
            if (*setup == NULL)
                CHECK(gullet_setup_new(NULL, materials[material_of[row]], blank, cutters[size_of[row]],
                                       machines[machine_of[row]], hold, practice, GULLET_METRIC, setup) == GULLET_OK);
            one_cut(row, *setup, &made, &wrong);
        }
    }
    CHECK(wrong == 0);
    CHECK(made > row_count / 2 && made < 3 * row_count);
    printf("%lu rows, %lu of them good, %lu wrong\n", 3ul * row_count, (unsigned long)made, (unsigned long)wrong);
    for (row = 0; row < 3 * 2 * DIAMETERS; row++)
        gullet_setup_free((&setups[0][0][0])[row]);
}

/* Nothing of the outputs was written. */
static int untouched(void)
{
    size_t row;
    for (row = 0; row < ROWS; row++)
        if (results[0][row] != 12345.0 || status[row] != 0x55555555)
            return 0;
    return 1;
}

static void refused(void)
{
    gullet_study_batch batch = batch_of(1);
    gullet_study *none = NULL;
    gullet_pass pass = gullet_pass_init();
    uint32_t nowhere = 99;
    CHECK(told(gullet_study_run(NULL, &batch), GULLET_ERROR_NULL_POINTER, "study"));
    CHECK(told(gullet_study_run(study, NULL), GULLET_ERROR_NULL_POINTER, "batch"));
    batch.struct_size = 8;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_STRUCT_SIZE, "gullet_study_batch"));
    batch = batch_of(1);
    batch.inputs = NULL;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_NULL_POINTER, "inputs"));
    batch = batch_of(1);
    batch.status_out = NULL;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_NULL_POINTER, "status_out") && results[0][0] == 12345.0);
    batch = batch_of(1);
    wanted[0].values_si_out = NULL;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_NULL_POINTER, gullet_result_name(1)));
    batch = batch_of(1);
    wanted[0].result = 0;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OUT_OF_RANGE, "results.result") && untouched());
    batch = batch_of(1);
    inputs[0].input = 1000;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OUT_OF_RANGE, "inputs.input") && untouched());
    batch = batch_of(1);
    inputs[0].reserved = 1;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OUT_OF_RANGE, "inputs.reserved") && untouched());
    batch = batch_of(1);
    choices[2].choice = -4;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OUT_OF_RANGE, "choices.choice") && untouched());
    batch = batch_of(1);
    inputs[1].input = GULLET_INPUT_AXIAL_DEPTH;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_DUPLICATE, "axial_depth") && untouched());
    batch = batch_of(1);
    inputs[1].values_si = (const double *)(const void *)((const char *)radial + 4);
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_MISALIGNED, "radial_depth") && untouched());
    batch = batch_of(1);
    wanted[0].values_si_out = (double *)(void *)((char *)results[0] + 4);
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_MISALIGNED, gullet_result_name(1)) && untouched());
    batch = batch_of(1);
    wanted[0].values_si_out = axial + 1;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OVERLAP, gullet_result_name(1)) && untouched());
    batch = batch_of(2);
    wanted[1].values_si_out = results[0] + row_count - 1;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OVERLAP, gullet_result_name(2)) && untouched());
    batch = batch_of(1);
    batch.held_by_limit_out = binding;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OVERLAP, "held_by_limit_out") && untouched());
    batch = batch_of(1);
    batch.warning_bits_out = (uint8_t *)material_of;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_OVERLAP, "warning_bits_out") && untouched());
    batch = batch_of(1);
    batch.count = (size_t)-1 / 4;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_TOO_LARGE, "status_out") && untouched());
    batch = batch_of(1);
    batch.input_count = (size_t)-1 / 2;
    CHECK(told(gullet_study_run(study, &batch), GULLET_ERROR_TOO_LARGE, "inputs") && untouched());

    /* No rows, the least, and what single rows are told. */
    batch = batch_of(0);
    batch.count = 0;
    batch.status_out = NULL;
    batch.binding_limit_out = batch.held_by_limit_out = batch.warning_bits_out = NULL;
    CHECK(gullet_study_run(study, &batch) == GULLET_OK);
    batch = batch_of(1);
    batch.count = 2;
    batch.binding_limit_out = batch.held_by_limit_out = batch.warning_bits_out = NULL;
    inputs[0].values_si = NULL;
    inputs[0].value_si = 0.001;
    choices[0].places = NULL;
    choices[0].place = nowhere;
    CHECK(gullet_study_run(study, &batch) == GULLET_WARNING_ROWS_REFUSED);
    CHECK(status[0] == GULLET_ERROR_UNKNOWN_NAME && status[1] == GULLET_ERROR_UNKNOWN_NAME && results[0][0] == 12345.0);
    CHECK(status[2] == 0x55555555);
    choices[0].place = 0;
    CHECK(gullet_study_run(study, &batch) >= 0 && results[0][1] > 0.0 && results[0][2] == 12345.0);

    CHECK(told(gullet_study_new(NULL, (const gullet_material *const *)materials, 3,
                                (const gullet_machine *const *)machines, 0, (const gullet_practice *const *)&practice, 1,
                                blank, cutters[0], hold, &pass, &none), GULLET_ERROR_MISSING, "machines"));
    CHECK(told(gullet_study_new(NULL, NULL, 1, (const gullet_machine *const *)machines, 1,
                                (const gullet_practice *const *)&practice, 1, blank, cutters[0], hold, &pass, &none),
               GULLET_ERROR_NULL_POINTER, "materials"));
    pass.lowering = GULLET_DO_NOT_LOWER_FOR_LOADS;
    CHECK(told(gullet_study_new(NULL, (const gullet_material *const *)materials, 3,
                                (const gullet_machine *const *)machines, 2, (const gullet_practice *const *)&practice, 1,
                                blank, cutters[0], hold, &pass, &none), GULLET_ERROR_OUT_OF_RANGE, "pass.lowering"));
    CHECK(told(gullet_study_of_job(NULL, &none), GULLET_ERROR_NULL_POINTER, "job") && none == NULL);
    gullet_study_free(NULL);
}

static gullet_spread spread_of(int32_t quantity, double low, double high)
{
    gullet_spread spread;
    memset(&spread, 0, sizeof spread);
    spread.quantity = quantity;
    spread.shape = GULLET_SHAPE_UNIFORM;
    spread.low = low;
    spread.high = high;
    return spread;
}

#define DRAWN 200
static double quantiles[2 * 3 * DRAWN];
static uint32_t left_out[DRAWN];
static gullet_spread spreads[2];
static const double SHARES[] = {0.0, 0.5, 1.0};

static gullet_draws draws_of(gullet_study_batch *batch)
{
    gullet_draws draws = gullet_draws_init();
    size_t i;
    *batch = batch_of(2);
    batch->count = DRAWN;
    wanted[1].result = GULLET_RESULT_MEAN_TANGENTIAL_FORCE;
    spreads[0] = spread_of(GULLET_SPREAD_CUTTING_FORCE, 0.9, 1.25);
    spreads[1] = spread_of(GULLET_INPUT_LENGTH, 1.0, 1.0);
    draws.draws = 50;
    draws.seed = 3;
    draws.spreads = spreads;
    draws.spread_count = 2;
    draws.quantiles = SHARES;
    draws.quantile_count = 3;
    draws.values_si_out = quantiles;
    draws.left_out_out = left_out;
    for (i = 0; i < 2 * 3 * DRAWN; i++)
        quantiles[i] = 12345.0;
    memset(left_out, 0x55, sizeof left_out);
    return draws;
}

/* The quantiles lie in the spread; parts of the rows are drawn as the whole. */
static void drawn_rows(void)
{
    static double whole[2 * 3 * DRAWN];
    gullet_study_batch batch;
    gullet_draws draws = draws_of(&batch);
    size_t row, good = 0, wrong = 0, q;
    const size_t from = 77;
    CHECK(gullet_study_draw(study, &batch, &draws) == GULLET_WARNING_ROWS_REFUSED);
    for (row = 0; row < DRAWN; row++) {
        const double force = results[1][row], *drawn_force = quantiles + 3 * DRAWN + row;
        if (status[row] != 0) {
            wrong += left_out[row] != 0x55555555 || results[0][row] != 12345.0;
            for (q = 0; q < 6; q++)
                wrong += quantiles[q * DRAWN + row] != 12345.0;
            continue;
        }
        good++;
        wrong += left_out[row] != 0;
        for (q = 0; q < 3; q++)
            wrong += !same_bits(quantiles[q * DRAWN + row], results[0][row]);
        wrong += drawn_force[0] < 0.9 * force * (1 - 1e-12) || drawn_force[0] > 1.0 * force;
        wrong += drawn_force[DRAWN] < drawn_force[0] || drawn_force[DRAWN] > drawn_force[2 * DRAWN];
        wrong += drawn_force[2 * DRAWN] > 1.25 * force * (1 + 1e-12) || drawn_force[2 * DRAWN] < 1.1 * force;
    }
    CHECK(wrong == 0 && good > DRAWN / 5);
    memcpy(whole, quantiles, sizeof whole);

    draws = draws_of(&batch);
    batch.count = DRAWN - from;
    for (q = 0; q < 4; q++)
        inputs[q].values_si += from;
    for (q = 0; q < 5; q++)
        choices[q].places += from;
    draws.first_row = from;
    batch.threads = 1;
    CHECK(gullet_study_draw(study, &batch, &draws) == GULLET_WARNING_ROWS_REFUSED);
    wrong = 0;
    for (q = 0; q < 6; q++)
        for (row = 0; row < DRAWN - from; row++)
            wrong += !same_bits(quantiles[q * (DRAWN - from) + row], whole[q * DRAWN + from + row]);
    CHECK(wrong == 0);
    draws.first_row = from + 1;
    CHECK(gullet_study_draw(study, &batch, &draws) == GULLET_WARNING_ROWS_REFUSED);
    for (row = 0; row < DRAWN - from; row++)
        wrong += !same_bits(quantiles[4 * (DRAWN - from) + row], whole[4 * DRAWN + from + row]);
    CHECK(wrong > DRAWN / 20);
}

static void refused_draws(void)
{
    gullet_study_batch batch;
    gullet_draws draws = draws_of(&batch);
    draws.draws = 0;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OUT_OF_RANGE, "draws") && untouched());
    draws = draws_of(&batch);
    spreads[1].quantity = 0;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OUT_OF_RANGE, "spreads.quantity") && untouched());
    draws = draws_of(&batch);
    spreads[1].quantity = GULLET_INPUT_CUTTER_TEETH;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_WRONG_TYPE, "cutter_teeth") && untouched());
    draws = draws_of(&batch);
    spreads[1].quantity = GULLET_SPREAD_CUTTING_FORCE;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_DUPLICATE, "cutting_force") && untouched());
    draws = draws_of(&batch);
    spreads[0].shape = 4;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OUT_OF_RANGE, "spreads.shape") && untouched());
    draws = draws_of(&batch);
    spreads[0].sigma = 0.1;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OUT_OF_RANGE, "cutting_force") && untouched());
    draws = draws_of(&batch);
    spreads[0].low = NAN;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OUT_OF_RANGE, "cutting_force") && untouched());
    draws = draws_of(&batch);
    draws.values_si_out = NULL;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_NULL_POINTER, "values_si_out") && untouched());
    draws = draws_of(&batch);
    draws.values_si_out = results[1];
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OVERLAP,
               gullet_result_name(GULLET_RESULT_MEAN_TANGENTIAL_FORCE)) && untouched());
    draws = draws_of(&batch);
    draws.left_out_out = operation_of;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_OVERLAP, "left_out_out") && untouched());
    draws = draws_of(&batch);
    draws.quantile_count = (size_t)-1 / 2;
    CHECK(told(gullet_study_draw(study, &batch, &draws), GULLET_ERROR_TOO_LARGE, "quantiles") && untouched());
    draws = draws_of(&batch);
    CHECK(told(gullet_study_draw(study, &batch, NULL), GULLET_ERROR_NULL_POINTER, "draws") && untouched());
}

int main(int argc, char **argv)
{
    int i;
    if (argc > 1)
        row_count = (size_t)strtoul(argv[1], NULL, 10);
    if (row_count == 0 || row_count > ROWS)
        return 2;
    lists();
    set_up();
    parity();
    refused();
    drawn_rows();
    refused_draws();
    gullet_study_free(study);
    for (i = 0; i < 3; i++)
        gullet_material_free(materials[i]);
    for (i = 0; i < 2; i++)
        gullet_machine_free(machines[i]);
    for (i = 0; i < DIAMETERS; i++)
        gullet_cutter_free(cutters[i]);
    gullet_practice_free(practice);
    gullet_blank_free(blank);
    gullet_hold_free(hold);
    return check_end("study");
}
