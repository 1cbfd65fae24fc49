// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/finding_maps.h"

#include <gtest/gtest.h>

namespace wetfront::ui {
namespace {

class FindingMapsTest : public testing::Test {
protected:
    FindingMapsTest() {
        house_.banks.resize(2);
        house_.banks[0].id = Id{"bank-1"};
        house_.banks[0].name = "West";
        house_.banks[1].id = Id{"bank-2"};
    }
    static Finding finding(const char* timer, const char* bank, const char* message) {
        Finding made;
        made.severity = Severity::fault;
        made.timer = Id{timer};
        made.bank = Id{bank};
        made.message = message;
        return made;
    }
    [[nodiscard]] QStringList messages(FindingsOf which) const {
        QStringList list;
        for (const auto& map : finding_maps(findings_, house_, Id{"timer-1"}, which, Formatter{})) {
            list.append(map.toMap().value(QStringLiteral("message")).toString());
        }
        return list;
    }

    House house_;
    std::vector<Finding> findings_{finding("timer-1", "bank-1", "too short"),
                                   finding("timer-2", "", "of another timer"),
                                   finding("", "", "sump too small")};
};

TEST_F(FindingMapsTest, a_timers_own_findings_leave_the_house_and_other_timers_out) {
    EXPECT_EQ(messages(FindingsOf::timer), QStringList{QStringLiteral("West: too short")});
}

TEST_F(FindingMapsTest, equipment_is_added_where_it_is_wanted) {
    EXPECT_EQ(messages(FindingsOf::timer_and_house),
              (QStringList{QStringLiteral("West: too short"), QStringLiteral("sump too small")}));
}

TEST_F(FindingMapsTest, a_cause_comes_with_where_to_look) {
    findings_.front().causes = {{"The strainer is clogged.", "the strainer"}};
    const auto maps = finding_maps(findings_, house_, Id{"timer-1"}, FindingsOf::timer, Formatter{});
    EXPECT_EQ(maps.front().toMap().value(QStringLiteral("causes")).toStringList(),
              QStringList{QStringLiteral("The strainer is clogged. Look: the strainer")});
    EXPECT_EQ(maps.front().toMap().value(QStringLiteral("severity")), QStringLiteral("fault"));
}

}  // namespace
}  // namespace wetfront::ui
