/* Economic speeds and lots through plain structs: against the cost function written again, a
 * spindle's steps tried one by one, defaults of zero, and refusals that write nothing. */
#include "check.h"
#include <gullet.h>
#include <math.h>

static const double PI = 3.14159265358979323846;

static int near(double a, double b, double tolerance)
{
    return fabs(a - b) <= tolerance * fmax(fabs(a), fabs(b));
}

static double cost_at(const gullet_edge_economics *e, double speed)
{
    double cut = PI * e->diameter_m * e->travel_m / (e->feed_per_rev_m * speed);
    double life = 60 * pow(e->taylor_speed_m_per_s / speed, 1 / e->taylor_exponent);
    double edges = (e->in_cut_share == 0 ? 1 : e->in_cut_share) * cut / life;
    return e->machine_rate_money_per_s * (e->handling_time_s + cut + edges * e->change_time_s)
        + edges * e->edge_cost_money;
}

static gullet_edge_economics turned(void)
{
    gullet_edge_economics e = gullet_edge_economics_init();
    e.machine_rate_money_per_s = 60.0 / 3600;
    e.edge_cost_money = 4;
    e.change_time_s = 180;
    e.handling_time_s = 120;
    e.taylor_speed_m_per_s = 200.0 / 60;
    e.taylor_exponent = 0.25;
    e.diameter_m = 0.06;
    e.travel_m = 0.2;
    e.feed_per_rev_m = 2e-4;
    return e;
}

static void best_speeds(void)
{
    gullet_edge_economics e = turned();
    gullet_economic_speed least = gullet_economic_speed_init(), fast = gullet_economic_speed_init();
    CHECK(gullet_economics_best(&e, GULLET_LEAST_COST, &least) == GULLET_OK);
    CHECK(gullet_economics_best(&e, GULLET_LEAST_TIME, &fast) == GULLET_OK);
    /* 3 (3 + 4/1) min and 3 x 3 min. */
    CHECK(near(least.tool_life_s, 21 * 60, 1e-12) && near(fast.tool_life_s, 9 * 60, 1e-12));
    CHECK(near(least.cost_per_part_money, cost_at(&e, least.cutting_speed_m_per_s), 1e-12));
    CHECK(cost_at(&e, 1.01 * least.cutting_speed_m_per_s) > least.cost_per_part_money);
    CHECK(cost_at(&e, 0.99 * least.cutting_speed_m_per_s) > least.cost_per_part_money);
    CHECK(fast.time_per_part_s < least.time_per_part_s && least.whole_parts_per_edge >= 1);
    e.in_cut_share = 0.5;
    CHECK(gullet_economics_best(&e, GULLET_LEAST_COST, &least) == GULLET_OK);
    CHECK(near(least.tool_life_s, 10.5 * 60, 1e-12));
}

static void steps_of_a_spindle(void)
{
    double steps[] = {190.0 / 60, 310.0 / 60, 500.0 / 60, 820.0 / 60};
    gullet_edge_economics e = turned();
    gullet_economic_speed chosen = gullet_economic_speed_init(), each = gullet_economic_speed_init();
    gullet_snapping snapping = gullet_snapping_init();
    double least = INFINITY, speed = 0;
    size_t index;
    CHECK(gullet_economics_snap(&e, GULLET_LEAST_COST, steps, 4, &chosen, &snapping) == GULLET_OK);
    for (index = 0; index < 4; index++) {
        CHECK(gullet_economics_at(&e, steps[index], &each) == GULLET_OK);
        CHECK(near(each.cost_per_part_money, cost_at(&e, PI * e.diameter_m * steps[index]), 1e-12));
        if (each.cost_per_part_money < least) {
            least = each.cost_per_part_money;
            speed = steps[index];
        }
    }
    CHECK(chosen.spindle_speed_rev_per_s == speed && chosen.cost_per_part_money == least);
    CHECK(snapping.below_rev_per_s <= snapping.wanted_rev_per_s);
    CHECK(snapping.above_rev_per_s > snapping.wanted_rev_per_s);
    CHECK(near(snapping.extra_cost_share * (least - snapping.extra_cost_money), snapping.extra_cost_money, 1e-9));
    CHECK(snapping.left_out == 0);
}

static void lots(void)
{
    gullet_lot lot = gullet_lot_init();
    gullet_lot_price price = gullet_lot_price_init();
    lot.lot_size = 10;
    lot.machine_rate_money_per_s = 60.0 / 3600;
    lot.setup_time_s = 1800;
    lot.handling_time_s = 60;
    lot.cutting_time_s = 240;
    lot.allowance_of_normal_time = 0.2;
    lot.material_cost_money = 2.5;
    CHECK(gullet_lot_compute(&lot, &price) == GULLET_OK);
    CHECK(near(price.time_per_part_s, 540, 1e-14) && near(price.lot_time_s, 5400, 1e-14));
    CHECK(price.setup_s + price.handling_s + price.cutting_s + price.moving_s + price.tool_change_s + price.gauging_s
              + price.allowance_s
          == price.time_per_part_s);
    CHECK(price.setup_money + price.handling_money + price.cutting_money + price.moving_money + price.tool_change_money
              + price.gauging_money + price.allowance_money + price.edges_money + price.material_money
          == price.cost_per_part_money);
    CHECK(near(price.cost_per_part_money, 11.5, 1e-14) && near(price.lot_cost_money, 115, 1e-14));
    lot.crawford_rate = 0.8;
    CHECK(gullet_lot_compute(&lot, &price) == GULLET_OK);
    /* Ten units of the unit curve take 6.315 times the first. */
    CHECK(fabs(price.handling_s / 6 - 6.315) < 0.0005);
}

static void refusals(void)
{
    gullet_edge_economics e = turned();
    gullet_economic_speed out = gullet_economic_speed_init();
    gullet_snapping snapping = gullet_snapping_init();
    gullet_lot lot = gullet_lot_init();
    gullet_lot_price price = gullet_lot_price_init();
    gullet_problem problem = gullet_problem_init();
    e.taylor_exponent = 1;
    e.diameter_m = NAN;
    CHECK(gullet_economics_best(&e, GULLET_LEAST_COST, &out) < 0 && gullet_last_error_count() == 2);
    CHECK(out.cutting_speed_m_per_s == 0);
    e = turned();
    CHECK(gullet_economics_best(&e, 2, &out) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_economics_best(NULL, 0, &out) < 0 && gullet_economics_best(&e, 0, NULL) < 0);
    CHECK(gullet_economics_snap(&e, 0, NULL, 0, &out, &snapping) < 0 && snapping.wanted_rev_per_s == 0);
    e.struct_size = 4;
    CHECK(gullet_economics_best(&e, 0, &out) == GULLET_ERROR_STRUCT_SIZE);
    lot.lot_size = 2.5;
    CHECK(gullet_lot_compute(&lot, &price) < 0 && gullet_last_error(0, &problem) == GULLET_OK);
    CHECK(strcmp(problem.parameter, "lot_size") == 0 && price.lot_time_s == 0);
}

int main(void)
{
    best_speeds();
    steps_of_a_spindle();
    lots();
    refusals();
    return check_end("economics");
}
