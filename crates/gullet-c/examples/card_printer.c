/* The set-up card of a job file: card_printer JOB.toml [text|html|json] */
#include <gullet.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef gullet_status (*form)(const gullet_plan *, char *, size_t, size_t *);

static char *read_all(const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    char *text = NULL;
    size_t room = 0, got = 1;
    *length = 0;
    while (file != NULL && got > 0) {
        char *grown = (char *)realloc(text, room + 65536);
        if (grown == NULL)
            break;
        text = grown;
        room += 65536;
        got = fread(text + *length, 1, room - *length, file);
        *length += got;
    }
    if (file != NULL)
        fclose(file);
    return text;
}

int main(int argc, char **argv)
{
    const char *wanted = argc > 2 ? argv[2] : "text";
    form card = strcmp(wanted, "html") == 0 ? gullet_card_html
              : strcmp(wanted, "json") == 0 ? gullet_card_json
                                            : gullet_card_text;
    gullet_job *job = NULL;
    gullet_plan *plan = NULL;
    size_t length, needed = 0;
    char *toml = argc > 1 ? read_all(argv[1], &length) : NULL, *text = NULL;
    int done = 0;

    if (toml == NULL) {
        fprintf(stderr, "card_printer JOB.toml [text|html|json]\n");
        return 2;
    }
    if (gullet_job_new_toml(NULL, toml, length, &job) >= 0 && gullet_plan_new(job, &plan) >= 0) {
        card(plan, NULL, 0, &needed);
        text = (char *)malloc(needed);
        done = text != NULL && card(plan, text, needed, NULL) >= 0;
    }
    if (done)
        fputs(text, stdout);
    else
        fprintf(stderr, "%s\n", gullet_last_error_message());
    free(text);
    free(toml);
    gullet_plan_free(plan);
    gullet_job_free(job);
    return done ? 0 : 1;
}
