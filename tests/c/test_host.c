/* The caller's state: rounding mode, flush-to-zero, traps and flags, errno, locale, threads, forks,
 * signals. Results are the same bits under each, and each is as before. */
#define _GNU_SOURCE
#include "check.h"
#include "formula_table.h"
#include <errno.h>
#include <fenv.h>
#include <locale.h>
#include <pthread.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>
#if defined(__x86_64__)
#include <xmmintrin.h>
#endif

#define FORMULAS_MOST 512

static char *job_text;

typedef struct answers {
    double one[FORMULAS_MOST], text[FORMULAS_MOST];
    gullet_cut cut;
    double tiny, converted;
    gullet_status bad, plan;
    char card[64 * 1024];
} answers;

/* Arguments near 1 in SI units: most formulas take them, and those that do not must refuse alike. */
static const double ARGUMENTS[ARGUMENTS_MOST] = {0.9, 1.1, 1.0, 2.0, 3.0, 1.0, 0.3, 1.0, 2.0, 1.0, 1.0, 1.0};

static void work(answers *all)
{
    size_t i;
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    gullet_setup *setup = NULL;
    gullet_pass pass = gullet_pass_init();
    memset(all, 0, sizeof *all);
    all->cut = gullet_cut_init();
    for (i = 0; i < formula_table_length; i++) {
        const formula_row *row = &formula_table[i];
        row->one(ARGUMENTS, &all->one[i]);
        gullet_evaluate(row->name, row->example, GULLET_NUL_TERMINATED, &all->text[i]);
    }
    gullet_spindle_speed(1e-310, 1.0, &all->tiny);
    gullet_convert("length", 1.0 / 3.0, "in", "mm", &all->converted);
    all->bad = gullet_spindle_speed(1.0, -0.1, &all->tiny);
    gullet_job_new_toml(NULL, job_text, GULLET_NUL_TERMINATED, &job);
    gullet_job_setup(job, &setup);
    pass.axial_depth_m = 0.00635;
    pass.radial_depth_m = 0.001;
    gullet_cut_compute(setup, &pass, &all->cut, NULL, 0);
    all->plan = gullet_plan_new(job, &plan);
    gullet_card_text(plan, all->card, sizeof all->card, NULL);
    gullet_plan_free(plan);
    gullet_setup_free(setup);
    gullet_job_free(job);
}

static answers expected, found;

static int alike(void)
{
    work(&found);
    return memcmp(&expected, &found, sizeof found) == 0;
}

static void rounding(void)
{
    static const int modes[] = {FE_TONEAREST, FE_UPWARD, FE_DOWNWARD, FE_TOWARDZERO};
    size_t i;
    for (i = 0; i < 4; i++) {
        CHECK(fesetround(modes[i]) == 0);
        CHECK(alike());
        CHECK(fegetround() == modes[i]);
    }
    fesetround(FE_TONEAREST);
}

#if defined(__x86_64__)
static void control_words(void)
{
    static const unsigned flush[] = {0, 0x8000, 0x0040, 0x8040};
    static const unsigned modes[] = {0, 0x2000, 0x4000, 0x6000};
    /* Masked; every trap but that of inexact results; all of them. */
    static const unsigned masks[] = {0x1f80, 0x1000, 0};
    const unsigned before = _mm_getcsr();
    volatile double three = 3.0, tiny = 1e-310, zero = 0.0;
    unsigned word;
    size_t i, j, k;
    for (i = 0; i < 4; i++)
        for (j = 0; j < 4; j++)
            for (k = 0; k < 3; k++) {
                int same;
                word = flush[i] | modes[j] | masks[k];
                _mm_setcsr(word);
                same = alike();
                word ^= _mm_getcsr();
                _mm_setcsr(before);
                CHECK(same && word == 0);
            }
    /* Flags that stood before stand afterwards, and no other. */
    _mm_setcsr(0x1f80 | 0x3f);
    CHECK(alike() && _mm_getcsr() == (0x1f80 | 0x3f));
    _mm_setcsr(before);
    /* The modes are real: plain C feels each of them. */
    _mm_setcsr(0x1f80 | 0x4000);
    CHECK(1.0 / three > 0.333333333333333314);
    _mm_setcsr(0x1f80 | 0x0040);
    CHECK(tiny * 1.0 == zero);
    _mm_setcsr(before);
}

/* The traps are real: a child that divides by zero under them dies of it. */
static void traps(void)
{
    int status = 0;
    pid_t child = fork();
    if (child == 0) {
        volatile double zero = 0.0;
        feenableexcept(FE_DIVBYZERO | FE_INVALID | FE_OVERFLOW);
        if (!alike())
            _exit(3);
        zero = 1.0 / zero;
        _exit(4);
    }
    CHECK(waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status) && WTERMSIG(status) == SIGFPE);
}
#endif

static void error_number(void)
{
    double out;
    char buffer[4];
    errno = 4711;
    CHECK(alike() && errno == 4711);
    gullet_parse("length", "1e999 mm", GULLET_NUL_TERMINATED, &out);
    gullet_format("length", 1.0, GULLET_METRIC, buffer, sizeof buffer, NULL);
    CHECK(errno == 4711);
}

static void locales(const char *name)
{
    double out = 0.0;
    char text[32];
    if (!CHECK_OF(setlocale(LC_ALL, name) != NULL, name))
        return;
    snprintf(text, sizeof text, "%.1f", 1.5);
    CHECK_OF(strcmp(text, "1,5") == 0, "the locale writes a comma");
    CHECK(alike());
    CHECK(gullet_parse("length", "1.5 mm", GULLET_NUL_TERMINATED, &out) == GULLET_OK && out == 0.0015);
    CHECK(gullet_parse("length", "1,5 mm", GULLET_NUL_TERMINATED, &out) == GULLET_ERROR_NUMBER_UNREADABLE);
    setlocale(LC_ALL, "C");
}

static void *thread(void *number)
{
    const double diameter = -1.0 - (double)*(int *)number;
    double out;
    char value[32];
    int round, right = 1;
    static answers each[8];
    for (round = 0; round < 20; round++) {
        gullet_problem problem = gullet_problem_init();
        gullet_spindle_speed(1.0, diameter, &out);
        work(&each[*(int *)number]);
        right &= memcmp(&each[*(int *)number], &expected, sizeof expected) == 0;
        gullet_spindle_speed(1.0, diameter, &out);
        gullet_last_error(0, &problem);
        snprintf(value, sizeof value, "%d mm", -1000 - 1000 * *(int *)number);
        right &= strcmp(problem.value, value) == 0;
    }
    *(int *)number = right;
    return NULL;
}

static void threads(void)
{
    pthread_t ids[8];
    int numbers[8], i;
    for (i = 0; i < 8; i++) {
        numbers[i] = i;
        CHECK(pthread_create(&ids[i], NULL, thread, &numbers[i]) == 0);
    }
    for (i = 0; i < 8; i++) {
        pthread_join(ids[i], NULL);
        CHECK(numbers[i] == 1);
    }
}

static void forked(void)
{
    int status = 0;
    pid_t child = fork();
    if (child == 0)
        _exit(alike() ? 0 : 1);
    CHECK(waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0);
}

static volatile sig_atomic_t hits, wrong_hits;

static void handler(int number)
{
    double out = 0.0;
    (void)number;
    if (gullet_spindle_speed(2.0, 0.5, &out) != GULLET_OK || out < 1.27 || out > 1.28)
        wrong_hits++;
    hits++;
}

/* A formula that succeeds allocates nothing: a signal handler may call it. */
static void signals(void)
{
    struct sigaction action;
    int i;
    memset(&action, 0, sizeof action);
    action.sa_handler = handler;
    sigaction(SIGALRM, &action, NULL);
    ualarm(500, 500);
    for (i = 0; i < 200000 && hits < 100; i++) {
        double out = 0.0, text = 0.0;
        if (gullet_spindle_speed(1.0, 0.25, &out) != GULLET_OK || out < 1.27 || out > 1.28)
            wrong_hits++;
        if (gullet_parse("length", "1/3 in", GULLET_NUL_TERMINATED, &text) != GULLET_OK)
            wrong_hits++;
    }
    ualarm(0, 0);
    CHECK(hits > 0 && wrong_hits == 0);
}

int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    job_text = read_file(argv[1], NULL);
    work(&expected);
    CHECK(expected.cut.time_s > 0.0 && expected.bad == GULLET_ERROR_OUT_OF_RANGE && strstr(expected.card, "SET-UP") != NULL);
    CHECK(expected.tiny > 0.0);
    rounding();
#if defined(__x86_64__)
    control_words();
    traps();
#endif
    error_number();
    if (argc > 2)
        locales(argv[2]);
    threads();
    forked();
    signals();
    free(job_text);
    return check_end("host");
}
