// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/steps_model.h"

#include "timed_visit.h"

namespace wetfront::ui {
namespace {

class StepsModelTest : public TimedVisit {};

TEST_F(StepsModelTest, what_is_wrong_with_the_house_is_not_counted_among_the_settings_found) {
    const StepsModel steps{*record_, nullptr};
    const QString before = steps.at(Step::settings_found).summary;
    const auto known = record_->found_findings().size();
    record_->visit().conditions.static_pressure =
        Entered<PressureDifference>::parse("0.4 inH2O", "static pressure").value();
    ASSERT_TRUE(record_->save_visit());
    ASSERT_GT(record_->found_findings().size(), known) << "so much is a finding";
    EXPECT_EQ(steps.at(Step::settings_found).summary, before);
    record_->visit().found.front().base_on_time = Entered<Duration>::of(seconds(2.0));
    ASSERT_TRUE(record_->save_visit());
    EXPECT_NE(steps.at(Step::settings_found).summary, before);
}

}  // namespace
}  // namespace wetfront::ui
