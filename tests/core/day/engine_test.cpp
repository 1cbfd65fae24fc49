// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "day/simulate.h"
#include "fine_steps.h"
#include "random_day.h"

namespace wetfront::test {
namespace {

// Of what two integrations of the same day give, the largest difference as a share of what it is measured by:
// water by water, temperatures by what pads and birds do to them, times by the whole time.
double difference_of(const DayResult& ours, const FineDay& fine, double simulated) {
    const auto& totals = ours.totals;
    double on = 0.0;
    for (const auto& timer : ours.timers) {
        on += in_seconds(timer.pump_on);
    }
    double difference = 0.0;
    const auto compare = [&](double one, double other, double measure) {
        difference = std::max(difference, std::abs(one - other) / measure);
    };
    const double water = std::max({fine.evaporated, 0.05 * fine.pumped, 1.0});
    compare(in_si(totals.evaporated), fine.evaporated, water);
    compare(in_si(totals.pumped), fine.pumped, std::max(fine.pumped, 1.0));
    compare(on, fine.pump_on, simulated);
    const double kelvins = std::max(fine.cooling, simulated * 1.0);
    compare(in_celsius(totals.mean_house) * simulated, fine.house, kelvins);
    compare(3600.0 * totals.cooling, fine.cooling, kelvins);
    compare(3600.0 * totals.lost_to_dry_pad, fine.lost, std::max(kelvins, fine.lost));
    compare(in_seconds(totals.above_house_limit), fine.above_house, simulated);
    compare(in_seconds(totals.above_index_limit), fine.above_index, simulated);
    compare(in_seconds(totals.litter_wet), fine.litter_wet, simulated);
    return difference;
}

TEST(SimulationTest, AgreesWithSmallStepsOverAThousandRandomDays) {
    RandomDays random{20260701};
    int worst = -1;
    double largest = 0.0;
    for (int i = 0; i < 1000; ++i) {
        const int hours = random.whole(2, 5);
        const auto day = random.next(hours, 6);
        const auto ours = simulate(day.house, day.weather, day.plans);
        ASSERT_TRUE(ours) << i << ": " << ours.error().text();
        const auto fine = fine_steps(day.house, day.weather, day.plans);
        const double difference = difference_of(ours.value(), fine, 3600.0 * hours);
        EXPECT_LT(difference, 0.001) << "day " << i;
        EXPECT_LT(ours.value().water.error(), 1e-9) << "day " << i;
        if (difference > largest) {
            largest = difference;
            worst = i;
        }
    }
    RecordProperty("largest", std::to_string(largest));
    std::cout << "largest difference " << largest << " on day " << worst << "\n";
}

}  // namespace
}  // namespace wetfront::test
