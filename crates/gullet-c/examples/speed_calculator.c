/* Spindle speed and table feed: speed_calculator 90 ft/min "1/2 in" 2 "0.002 in" */
#include <gullet.h>
#include <stdio.h>

static int fail(void)
{
    fprintf(stderr, "%s\n", gullet_last_error_message());
    return 1;
}

int main(int argc, char **argv)
{
    double cutting_speed_m_per_s, diameter_m, teeth, feed_per_tooth_m;
    double spindle_speed_rev_per_s, table_feed_m_per_s;
    char speed[32], feed[32];

    if (argc != 5) {
        fprintf(stderr, "speed_calculator CUTTING_SPEED DIAMETER TEETH FEED_PER_TOOTH\n");
        return 2;
    }
    if (gullet_parse("velocity", argv[1], GULLET_NUL_TERMINATED, &cutting_speed_m_per_s) < 0
        || gullet_parse("length", argv[2], GULLET_NUL_TERMINATED, &diameter_m) < 0
        || gullet_parse("count", argv[3], GULLET_NUL_TERMINATED, &teeth) < 0
        || gullet_parse("length", argv[4], GULLET_NUL_TERMINATED, &feed_per_tooth_m) < 0
        || gullet_spindle_speed(cutting_speed_m_per_s, diameter_m, &spindle_speed_rev_per_s) < 0
        || gullet_table_feed(feed_per_tooth_m, teeth, spindle_speed_rev_per_s, &table_feed_m_per_s) < 0
        || gullet_format("rotational_speed", spindle_speed_rev_per_s, GULLET_INCH, speed, sizeof speed, NULL) < 0
        || gullet_format("velocity", table_feed_m_per_s, GULLET_INCH, feed, sizeof feed, NULL) < 0)
        return fail();
    printf("%s, %s\n", speed, feed);
    return 0;
}
