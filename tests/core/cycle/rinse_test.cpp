// SPDX-License-Identifier: Apache-2.0
#include "cycle/rinse.h"

#include <gmock/gmock.h>

#include "cycle/advice.h"
#include "timed_visit.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

// A dry pad of the south bank drips after 200 s and more with the fans on.
TEST(RinseTest, a_fixed_interval_timer_whose_controller_rinses_gets_the_rinse_that_it_can_hold) {
    TimedVisit visit;
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    visit.dry_start("south", 60.0, 200.0, 1100.0);
    auto described = generic_template(TimerKind::fixed_interval);
    described.settings.push_back({TemplateKey::rinse_length, "Rinse", "s", 10.0, 0.0, 900.0, ""});
    choose_controller(visit.timer(), described);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.cycled);
    for (const auto& note : timer.notes) {
        EXPECT_THAT(in_english(note, UnitSystem::si), Not(HasSubstr("by hand")));
    }
    EXPECT_THAT(timer.continuous, Contains(testing::Field(&SettingAdvice::setting, Setting::rinse_length)));
    EXPECT_EQ(timer.advised(Setting::rinse_at), nullptr) << "it has no time for it";
    const auto* rinse = timer.advised(Setting::rinse_length);
    ASSERT_TRUE(rinse != nullptr && rinse->value && timer.fit && timer.fit->settings.rinse_length);
    EXPECT_GT(rinse->value->si, 200.0);
    EXPECT_GE(in_seconds(timer.fit->settings.rinse_length->value()), rinse->value->si);
}

}  // namespace
}  // namespace wetfront::test
