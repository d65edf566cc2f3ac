/* The same doubles as the core, bit by bit. Arguments: the core's rows of formulas and of cuts, and
 * the least number of good rows of each. */
#include "check.h"
#include "formula_table.h"
#include <math.h>

static int same_bits(double a, double b)
{
    return memcmp(&a, &b, sizeof a) == 0;
}

static size_t number_after(const char *line, const char *key)
{
    const char *at = strstr(line, key);
    return at == NULL ? 0 : (size_t)strtoul(at + strlen(key), NULL, 10);
}

static void formula(const formula_row *row, size_t count, const double *table)
{
    const size_t width = row->argument_count + 2;
    double *columns = (double *)malloc((count * row->argument_count + 1) * sizeof(double));
    double *results = (double *)malloc((count + 1) * sizeof(double));
    gullet_status *statuses = (gullet_status *)malloc((count + 1) * sizeof(gullet_status));
    const double *arguments[ARGUMENTS_MOST];
    size_t wrong_one = 0, wrong_row = 0, wrong_name = 0, refused = 0, i, j;
    gullet_status whole;
    for (j = 0; j < row->argument_count; j++) {
        arguments[j] = columns + j * count;
        for (i = 0; i < count; i++)
            columns[j * count + i] = table[i * width + j];
    }
    for (i = 0; i < count; i++) {
        const double expected = table[i * width + width - 2];
        const gullet_status code = -(gullet_status)table[i * width + width - 1];
        double found = 12345.0, named = 12345.0;
        if (row->one(table + i * width, &found) != code || !same_bits(found, code == 0 ? expected : 12345.0))
            wrong_one++;
        if (i < 50 && (gullet_evaluate_si(row->name, table + i * width, row->argument_count, &named) != code
                       || !same_bits(named, found)))
            wrong_name++;
        refused += code != 0;
        results[i] = 12345.0;
    }
    whole = row->rows(count, arguments, results, statuses);
    for (i = 0; i < count; i++) {
        const gullet_status code = -(gullet_status)table[i * width + width - 1];
        const double expected = code == 0 ? table[i * width + width - 2] : 12345.0;
        if (statuses[i] != code || !same_bits(results[i], expected))
            wrong_row++;
    }
    CHECK_OF(wrong_one == 0, row->name);
    CHECK_OF(wrong_name == 0, row->name);
    CHECK_OF(wrong_row == 0, row->name);
    CHECK_OF(whole == (refused ? GULLET_WARNING_ROWS_REFUSED : GULLET_OK), row->name);
    free(columns);
    free(results);
    free(statuses);
}

static void formulas(const char *path, size_t least)
{
    size_t length, index = 0, rows = 0;
    char *text = read_file(path, &length), *at = text;
    while (at < text + length) {
        char *end = (char *)memchr(at, '\n', (size_t)(text + length - at));
        const formula_row *row = &formula_table[index];
        char name[96];
        size_t count, width;
        double *table;
        if (!CHECK(end != NULL && index < formula_table_length))
            break;
        *end = 0;
        snprintf(name, sizeof name, "\"name\":\"%s\"", row->name);
        CHECK_OF(strstr(at, name) != NULL, row->name);
        count = number_after(at, "\"rows\":");
        CHECK_OF(number_after(at, "\"good\":") >= least, row->name);
        width = row->argument_count + 2;
        table = (double *)malloc(count * width * sizeof(double) + 1);
        memcpy(table, end + 1, count * width * sizeof(double));
        at = end + 1 + count * width * sizeof(double);
        formula(row, count, table);
        free(table);
        rows += count;
        index++;
    }
    CHECK(index == formula_table_length);
    printf("%lu rows of %lu formulas\n", (unsigned long)rows, (unsigned long)index);
    free(text);
}

/* The fields of a cut in the core's order, without what is not known; how many there are. */
static size_t fields(const gullet_cut *cut, double values[64], int known[64])
{
    const double *first = &cut->wanted_speed_rev_per_s;
    const size_t count = (size_t)(&cut->time_s - first) + 1;
    size_t i;
    memcpy(values, first, count * sizeof(double));
    for (i = 0; i < count; i++)
        known[i] = 1;
    known[&cut->handwheel_rate_rev_per_s - first] = cut->handwheel_rate_known;
    known[&cut->unit_power_cutting_power_w - first] = cut->unit_power_cutting_power_known;
    known[&cut->mean_roughness_m - first] = cut->mean_roughness_known;
    return count;
}

static double bits(const char *text)
{
    unsigned long long word = strtoull(text, NULL, 10);
    double value;
    memcpy(&value, &word, sizeof value);
    return value;
}

static int number_of(const char *word, const char *first, const char *second, const char *third)
{
    return strcmp(word, first) == 0 ? 0 : strcmp(word, second) == 0 ? 1 : strcmp(word, third) == 0 ? 2 : -1;
}

static void one_cut(char **word, int words, const gullet_setup *setup, size_t *made)
{
    gullet_pass pass = gullet_pass_init();
    gullet_cut cut = gullet_cut_init();
    gullet_limit limits[GULLET_LIMITS_MOST];
    gullet_status status;
    limits[0] = gullet_limit_init();
    pass.operation = number_of(word[6], "side-milling", "slotting", "face-milling");
    pass.kind = number_of(word[7], "roughing", "finishing", "");
    pass.direction = number_of(word[8], "conventional", "climb", "");
    pass.axial_depth_m = bits(word[9]);
    pass.radial_depth_m = bits(word[10]);
    pass.length_m = bits(word[11]);
    status = gullet_cut_compute(setup, &pass, &cut, limits, GULLET_LIMITS_MOST);
    if (strcmp(word[12], "ok") == 0) {
        double values[64];
        int known[64], wrong = 0;
        unsigned i, binding = 0, exceeded = 0;
        size_t count = fields(&cut, values, known), j;
        CHECK(status >= 0 && (cut.warning_bits >> status & 1) == (status > 0) && (status > 0) == (cut.warning_bits > 0));
        if (!CHECK(words == 13 + (int)count))
            return;
        for (j = 0; j < count; j++)
            if (strcmp(word[13 + j], "-") == 0 ? known[j] || values[j] != 0.0
                                               : !known[j] || !same_bits(values[j], bits(word[13 + j])))
                wrong++;
        CHECK(wrong == 0);
        for (i = 0; i < cut.limit_count; i++) {
            binding += (unsigned)limits[i].binding;
            exceeded += (unsigned)limits[i].exceeded;
            wrong += !(limits[i].share >= 0.0) || *gullet_limit_name(limits[i].limit) == 0
                || (limits[i].binding && limits[i].limit != cut.binding_limit);
        }
        CHECK(wrong == 0 && binding <= 1 && exceeded == 0 && cut.limit_count > 5);
        ++*made;
    } else {
        gullet_problem problem = gullet_problem_init();
        CHECK(status < 0 && cut.limit_count == 0 && cut.spindle_speed_rev_per_s == 0.0);
        CHECK(gullet_last_error(0, &problem) == GULLET_OK && problem.status == status);
        CHECK(strcmp(gullet_status_name(status), word[12]) == 0);
        CHECK(words == 14 && strcmp(problem.parameter, word[13]) == 0);
    }
}

static void cuts(const char *path, size_t least)
{
    char *text = read_file(path, NULL), *at = text;
    size_t rows = 0, made = 0;
    while (*at != 0) {
        char *word[96], *end = strchr(at, '\n');
        int words = 0;
        gullet_material *material = NULL;
        gullet_blank *blank = NULL;
        gullet_cutter *cutter = NULL;
        gullet_machine *machine = NULL;
        gullet_hold *hold = NULL;
        gullet_practice *practice = NULL;
        gullet_setup *setup = NULL;
        if (!CHECK(end != NULL))
            break;
        *end = 0;
        while (words < 96) {
            char *tab = strchr(at, '\t');
            word[words++] = at;
            if (tab == NULL)
                break;
            *tab = 0;
            at = tab + 1;
        }
        at = end + 1;
        CHECK(gullet_material_new(NULL, word[0], GULLET_NUL_TERMINATED, &material) == GULLET_OK);
        CHECK(gullet_blank_new(NULL, word[1], GULLET_NUL_TERMINATED, &blank) == GULLET_OK);
        CHECK(gullet_cutter_new(NULL, word[2], GULLET_NUL_TERMINATED, &cutter) == GULLET_OK);
        CHECK(gullet_machine_new(NULL, word[3], GULLET_NUL_TERMINATED, &machine) == GULLET_OK);
        CHECK(gullet_hold_new(NULL, word[4], GULLET_NUL_TERMINATED, &hold) == GULLET_OK);
        CHECK(gullet_practice_new(NULL, word[5], GULLET_NUL_TERMINATED, &practice) == GULLET_OK);
        CHECK(gullet_setup_new(NULL, material, blank, cutter, machine, hold, practice, GULLET_METRIC, &setup) == GULLET_OK);
        gullet_material_free(material);
        gullet_blank_free(blank);
        gullet_cutter_free(cutter);
        gullet_machine_free(machine);
        gullet_hold_free(hold);
        gullet_practice_free(practice);
        one_cut(word, words, setup, &made);
        gullet_setup_free(setup);
        rows++;
    }
    CHECK(rows >= least && made > rows / 2);
    printf("%lu cuts, %lu of them refused\n", (unsigned long)rows, (unsigned long)(rows - made));
    free(text);
}

int main(int argc, char **argv)
{
    size_t least;
    if (argc != 4)
        return 2;
    least = (size_t)strtoul(argv[3], NULL, 10);
    formulas(argv[1], least);
    cuts(argv[2], least);
    return check_end("parity");
}
