/* Faults on purpose, one a run, that valgrind and the address sanitiser must find. */
#include <gullet.h>
#include <stdio.h>
#include <stdlib.h>

static gullet_cutter *cutter(void)
{
    gullet_cutter *made = NULL;
    gullet_cutter_new(NULL, "{\"form\": \"square\", \"material\": \"HSS\", \"diameter\": \"10 mm\", \"teeth\": 2, "
                            "\"flute_length\": \"20 mm\", \"stick_out\": \"30 mm\"}", GULLET_NUL_TERMINATED, &made);
    return made;
}

int main(int argc, char **argv)
{
    char json[2048];
    gullet_cutter *made = cutter();
    char *heap = (char *)malloc(8);
    if (argc != 2 || made == NULL || heap == NULL)
        return 2;
    switch (argv[1][0]) {
    case '0': /* none */
        gullet_cutter_json(made, json, sizeof json, NULL);
        gullet_cutter_free(made);
        free(heap);
        return 0;
    case '1': /* a handle used after it was freed */
        gullet_cutter_free(made);
        gullet_cutter_json(made, json, sizeof json, NULL);
        break;
    case '2': /* a handle freed twice */
        gullet_cutter_free(made);
        gullet_cutter_free(made);
        break;
    case '3': /* a handle never freed */
        made = NULL;
        break;
    case '4': { /* a capacity of one byte beyond the buffer */
        size_t needed = 0;
        char *room;
        gullet_cutter_json(made, NULL, 0, &needed);
        room = (char *)malloc(needed - 1);
        gullet_cutter_json(made, room, needed, NULL);
        free(room);
        gullet_cutter_free(made);
        break;
    }
    case '5': { /* text without its NUL */
        double out;
        heap[0] = '1';
        for (int i = 1; i < 8; i++)
            heap[i] = '0';
        gullet_parse("length", heap, GULLET_NUL_TERMINATED, &out);
        gullet_cutter_free(made);
        break;
    }
    case '6': { /* arrays shorter than their count */
        double *values = (double *)calloc(3, sizeof(double));
        double results[8];
        gullet_status statuses[8];
        gullet_spindle_speed_array(8, values, values, results, statuses);
        printf("%g\n", results[7]);
        free(values);
        gullet_cutter_free(made);
        break;
    }
    case '7': /* the host's free for a handle */
        free(made);
        break;
    default:
        return 2;
    }
    free(heap);
    return 0;
}
