/* The data files of the project, run through C: worked examples, bad input, bad jobs, golden cards.
 * Arguments: the root of the project, then the files of worked examples. */
#include "check.h"
#include "formula_table.h"
#include <math.h>

static char *path_in(const char *root, const char *name)
{
    static char path[1024];
    snprintf(path, sizeof path, "%s/%s", root, name);
    return path;
}

/* A worked example: as its row says, by text, and by the array form to the same bits. */
static void worked(char **row, int columns)
{
    char kind[32];
    double found = 0.0, expected = 0.0, scale;
    int passed, marked = columns > 8 && row[8][strspn(row[8], " \t")] != 0;
    if (!CHECK_OF(gullet_formula_result_kind(row[1], kind, sizeof kind, NULL) == GULLET_OK, row[0]))
        return;
    CHECK_OF(gullet_parse(kind, row[3], strlen(row[3]), &expected) == GULLET_OK, row[0]);
    CHECK_OF(gullet_evaluate(row[1], row[2], strlen(row[2]), &found) == GULLET_OK, row[0]);
    scale = expected == 0.0 ? 1.0 : fabs(expected);
    passed = fabs(found - expected) / scale <= strtod(row[4], NULL);
    CHECK_OF(passed != marked, row[0]);
}

static void worked_file(const char *file, size_t *count)
{
    char *text = read_file(file, NULL), *at = text, *row[CSV_COLUMNS];
    int columns = csv_row(&at, row);
    CHECK_OF(columns >= 8 && strcmp(row[1], "formula") == 0 && strcmp(row[4], "rtol") == 0, file);
    while ((columns = csv_row(&at, row)) > 0) {
        worked(row, columns);
        ++*count;
    }
    free(text);
}

/* The example of each formula of the catalogue, by text. */
static void examples(void)
{
    size_t i;
    char name[64];
    CHECK(gullet_formula_count() == formula_table_length);
    for (i = 0; i < formula_table_length; i++) {
        const formula_row *row = &formula_table[i];
        double found = 0.0, expected = 0.0;
        CHECK(gullet_formula_name(i, name, sizeof name, NULL) == GULLET_OK && strcmp(name, row->name) == 0);
        CHECK_OF(gullet_evaluate(row->name, row->example, GULLET_NUL_TERMINATED, &found) == GULLET_OK, row->name);
        CHECK_OF(gullet_parse(row->result_kind, row->expected, GULLET_NUL_TERMINATED, &expected) == GULLET_OK, row->name);
        /* The tolerance of each stands in the catalogue and is tested there; here none is off. */
        CHECK_OF(fabs(found - expected) <= 0.1 * fabs(expected) + 1e-12, row->name);
    }
}

static int has_remedies(size_t count)
{
    size_t i;
    for (i = 0; i < count; i++) {
        gullet_problem problem = gullet_problem_init();
        if (gullet_last_error(i, &problem) != GULLET_OK || !*problem.remedy || !*problem.admissible)
            return 0;
    }
    return count > 0;
}

static void bad_input(const char *root)
{
    char *text = read_file(path_in(root, "tests/data/bad_input.csv"), NULL), *at = text, *row[CSV_COLUMNS];
    int rows = 0;
    CHECK(csv_row(&at, row) >= 8 && strcmp(row[4], "code") == 0 && strcmp(row[7], "text") == 0);
    while (csv_row(&at, row) > 0) {
        double untouched = 12345.0;
        gullet_status status;
        gullet_problem problem = gullet_problem_init();
        if (strcmp(row[1], "quantity") == 0)
            status = gullet_parse(row[2], row[3], strlen(row[3]), &untouched);
        else if (strcmp(row[1], "formula") == 0)
            status = gullet_evaluate(row[2], row[3], strlen(row[3]), &untouched);
        else
            continue;
        rows++;
        CHECK_OF(status < 0 && untouched == 12345.0, row[0]);
        CHECK_OF(gullet_last_error(0, &problem) == GULLET_OK && problem.status == status, row[0]);
        CHECK_OF(strcmp(gullet_status_name(status), row[4]) == 0, row[0]);
        CHECK_OF(*row[5] == 0 || strcmp(problem.parameter, row[5]) == 0, row[0]);
        CHECK_OF(gullet_last_error_count() == strtoul(row[6], NULL, 10), row[0]);
        CHECK_OF(strstr(gullet_last_error_message(), row[7]) != NULL, gullet_last_error_message());
        CHECK_OF(has_remedies(gullet_last_error_count()), row[0]);
    }
    CHECK(rows >= 80);
    printf("%d rows of bad input\n", rows);
    free(text);
}

/* Lines of a job file under edits. */
typedef struct lines {
    char *line[512];
    size_t count;
} lines;

static char *copy(const char *text, size_t length)
{
    char *copied = (char *)malloc(length + 1);
    memcpy(copied, text, length);
    copied[length] = 0;
    return copied;
}

static void insert(lines *job, size_t at, char *line)
{
    memmove(job->line + at + 1, job->line + at, (job->count - at) * sizeof job->line[0]);
    job->line[at] = line;
    job->count++;
}

static void remove_line(lines *job, size_t at)
{
    free(job->line[at]);
    job->count--;
    memmove(job->line + at, job->line + at + 1, (job->count - at) * sizeof job->line[0]);
}

/* The lines of a section, without its head; 0 where there is none. */
static int bounds(const lines *job, const char *section, size_t length, size_t *start, size_t *end)
{
    size_t i = 0;
    if (length > 0) {
        for (; i < job->count; i++)
            if (job->line[i][0] == '[' && strncmp(job->line[i] + 1, section, length) == 0
                && strcmp(job->line[i] + 1 + length, "]") == 0)
                break;
        if (i == job->count)
            return 0;
        i++;
    }
    *start = i;
    while (i < job->count && job->line[i][0] != '[')
        i++;
    *end = i;
    return 1;
}

/* One edit, as tests/job_files.rs says: `path = value`, `[section]`, or either behind `- `. */
static void edit(lines *job, const char *text)
{
    int removes = strncmp(text, "- ", 2) == 0;
    const char *equals, *dot = NULL, *c, *key;
    size_t start = 0, end = 0, i, key_length;
    if (removes)
        text += 2;
    if (*text == '[') {
        if (!removes) {
            insert(job, job->count, copy(text, strlen(text)));
        } else if (bounds(job, text + 1, strlen(text) - 2, &start, &end)) {
            for (i = start - 1; i < end; i++)
                remove_line(job, start - 1);
        }
        return;
    }
    equals = strstr(text, " = ");
    if (equals == NULL)
        equals = text + strlen(text);
    for (c = text; c < equals; c++)
        if (*c == '.')
            dot = c;
    key = dot == NULL ? text : dot + 1;
    key_length = (size_t)(equals - key);
    if (dot != NULL && !bounds(job, text, (size_t)(dot - text), &start, &end)) {
        char head[128];
        snprintf(head, sizeof head, "[%.*s]", (int)(dot - text), text);
        insert(job, job->count, copy(head, strlen(head)));
    }
    bounds(job, text, dot == NULL ? 0 : (size_t)(dot - text), &start, &end);
    for (i = start; i < end; i++)
        if (strncmp(job->line[i], key, key_length) == 0 && strncmp(job->line[i] + key_length, " = ", 3) == 0)
            break;
    if (i < end) {
        remove_line(job, i);
        if (!removes)
            insert(job, i, copy(key, strlen(key)));
    } else if (!removes) {
        while (end > start && job->line[end - 1][strspn(job->line[end - 1], " \t")] == 0)
            end--;
        insert(job, end, copy(key, strlen(key)));
    }
}

/* The text of a job: the good one under the edits of a row, or the raw text of the row. */
static char *edited(const char *good, char *edits, size_t *length)
{
    lines job = {{0}, 0};
    char *text, *out;
    size_t i, size = 1;
    if (strncmp(edits, "raw:", 4) == 0) {
        const char *in = edits + 4 + (edits[4] == ' ');
        text = out = (char *)malloc(strlen(in) + 1);
        while (*in != 0) {
            if (strncmp(in, "\\n", 2) == 0) {
                *out++ = '\n';
                in += 2;
            } else if (strncmp(in, "\\r", 2) == 0) {
                *out++ = '\r';
                in += 2;
            } else if (strncmp(in, "\\u0000", 6) == 0) {
                *out++ = 0;
                in += 6;
            } else {
                *out++ = *in++;
            }
        }
        *length = (size_t)(out - text);
        return text;
    }
    while (*good != 0) {
        size_t line = strcspn(good, "\n");
        insert(&job, job.count, copy(good, line));
        good += line + (good[line] == '\n');
    }
    while (edits != NULL) {
        char *next = strstr(edits, " && ");
        if (next != NULL)
            *next = 0;
        edit(&job, edits);
        edits = next == NULL ? NULL : next + 4;
    }
    for (i = 0; i < job.count; i++)
        size += strlen(job.line[i]) + 1;
    text = out = (char *)malloc(size);
    for (i = 0; i < job.count; i++) {
        size_t line = strlen(job.line[i]);
        memcpy(out, job.line[i], line);
        out += line;
        *out++ = '\n';
        free(job.line[i]);
    }
    *length = (size_t)(out - text);
    return text;
}

static void bad_jobs(const char *root)
{
    char *good = read_file(path_in(root, "tests/data/good_job.toml"), NULL);
    char *text = read_file(path_in(root, "tests/data/bad_jobs.csv"), NULL), *at = text, *row[CSV_COLUMNS];
    int rows = 0;
    gullet_job *job = NULL;
    CHECK(gullet_job_new_toml(NULL, good, strlen(good), &job) == GULLET_OK);
    gullet_job_free(job);
    CHECK(csv_row(&at, row) >= 6 && strcmp(row[1], "edits") == 0);
    while (csv_row(&at, row) > 0) {
        size_t length, i, count;
        char *toml = edited(good, row[1], &length);
        int found = 0;
        gullet_status status;
        job = NULL;
        status = gullet_job_new_toml(NULL, toml, length, &job);
        rows++;
        count = gullet_last_error_count();
        CHECK_OF(status < 0 && job == NULL, row[0]);
        CHECK_OF(count == strtoul(row[4], NULL, 10), row[0]);
        for (i = 0; i < count; i++) {
            gullet_problem problem = gullet_problem_init();
            gullet_last_error(i, &problem);
            /* Lines depend on where an edit puts its key. */
            found |= strcmp(gullet_status_name(problem.status), row[2]) == 0
                && strcmp(problem.parameter, row[3]) == 0
                && (strstr(row[5], "(line") != NULL || strstr(problem.message, row[5]) != NULL);
        }
        CHECK_OF(found, row[0]);
        free(toml);
    }
    CHECK(rows >= 100);
    printf("%d rows of bad jobs\n", rows);
    free(text);
    free(good);
}

/* The card of an example job, letter for letter. */
static void golden(const char *root, const char *name)
{
    char part[256], *toml, *expected, *card;
    size_t needed = 0, length;
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    snprintf(part, sizeof part, "crates/gullet-cli/jobs/%s.toml", name);
    toml = read_file(path_in(root, part), NULL);
    snprintf(part, sizeof part, "tests/golden/%s.txt", name);
    expected = read_file(path_in(root, part), &length);
    CHECK(gullet_job_new_toml(NULL, toml, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_plan_new(job, &plan) >= GULLET_OK);
    gullet_job_free(job);
    CHECK(gullet_card_text(plan, NULL, 0, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT);
    card = (char *)malloc(needed);
    CHECK(gullet_card_text(plan, card, needed, NULL) == GULLET_OK);
    CHECK_OF(needed == length + 1 && strcmp(card, expected) == 0, name);
    gullet_plan_free(plan);
    free(card);
    free(expected);
    free(toml);
}

int main(int argc, char **argv)
{
    static const char *const jobs[] = {"bearing_bracket", "gib_strip", "sensor_plate", "wear_block"};
    size_t count = 0, i;
    int file;
    if (argc < 3)
        return 2;
    for (file = 2; file < argc; file++)
        worked_file(argv[file], &count);
    CHECK(count >= 272);
    printf("%lu worked examples\n", (unsigned long)count);
    examples();
    bad_input(argv[1]);
    bad_jobs(argv[1]);
    for (i = 0; i < sizeof jobs / sizeof jobs[0]; i++)
        golden(argv[1], jobs[i]);
    return check_end("cases");
}
