// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/record_form.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace wetfront::ui {
namespace {

/// The air speeds at one bank as a form, kept up to date as a view model does it.
class ListLinesTest : public testing::Test {
protected:
    ListLinesTest() { bring_up_to_date(); }

    void bring_up_to_date() {
        form_.change_fields(list_lines<FacePoint>([this]() -> std::vector<FacePoint>& { return points_; },
                                                  {"speed"}, QStringLiteral("Point %1"), most_,
                                                  [this]() -> Result<void> {
                                                      if (disk_full_) {
                                                          return storage_error("records", "disk full",
                                                                               "make room");
                                                      }
                                                      bring_up_to_date();
                                                      return boost::outcome_v2::success();
                                                  }));
    }

    QString enter(int row, const char* text) { return form_.enter(row, QString::fromLatin1(text)); }
    [[nodiscard]] QString label(int row) const {
        return form_.data(form_.index(row), FormModel::LabelRole).toString();
    }
    [[nodiscard]] std::vector<std::string> texts() const {
        std::vector<std::string> all;
        for (const auto& point : points_) {
            all.push_back(point.speed ? point.speed->text() : "none");
        }
        return all;
    }

    using Texts = std::vector<std::string>;
    static constexpr std::size_t most_ = 4;
    std::vector<FacePoint> points_;
    bool disk_full_ = false;
    Formatter formatter_{UnitSystem::us};
    FormModel form_{formatter_, nullptr};
};

TEST_F(ListLinesTest, an_empty_list_shows_one_empty_item) {
    ASSERT_EQ(form_.count(), 1);
    EXPECT_EQ(label(0), QStringLiteral("Point 1: Air speed at the pad face"));
    EXPECT_EQ(form_.summary(), QStringLiteral("nothing entered"));
}

TEST_F(ListLinesTest, an_entry_in_the_last_item_adds_it_as_typed_and_shows_another) {
    EXPECT_EQ(enter(0, "350 ft/min"), QString{});
    EXPECT_EQ(enter(1, "1.9m/s"), QString{});
    EXPECT_EQ(texts(), (Texts{"350 ft/min", "1.9m/s"}));
    EXPECT_EQ(form_.count(), 3);
    EXPECT_EQ(form_.summary(), QStringLiteral("2 entered"));
}

TEST_F(ListLinesTest, emptying_an_item_takes_it_out_and_the_others_keep_their_texts) {
    enter(0, "350ft/min");
    enter(1, "360ft/min");
    enter(2, "370ft/min");
    EXPECT_EQ(enter(1, ""), QString{});
    EXPECT_EQ(texts(), (Texts{"350ft/min", "370ft/min"}));
    EXPECT_EQ(form_.count(), 3);
    EXPECT_EQ(form_.data(form_.index(1), FormModel::EntryRole).toString(), QStringLiteral("370ft/min"));
    EXPECT_EQ(label(2), QStringLiteral("Point 3: Air speed at the pad face"));
}

TEST_F(ListLinesTest, a_full_list_shows_no_empty_item_until_one_is_taken_out) {
    for (int i = 0; i < static_cast<int>(most_); ++i) {
        EXPECT_EQ(enter(i, "350ft/min"), QString{});
    }
    EXPECT_EQ(form_.count(), static_cast<int>(most_));
    EXPECT_EQ(enter(3, ""), QString{});
    EXPECT_EQ(points_.size(), most_ - 1);
    EXPECT_EQ(form_.count(), static_cast<int>(most_));
    EXPECT_EQ(form_.data(form_.index(3), FormModel::EntryRole).toString(), QString{});
}

TEST_F(ListLinesTest, a_refused_entry_adds_no_item) {
    EXPECT_NE(enter(0, "350"), QString{});
    EXPECT_NE(enter(0, "3000m/s"), QString{});
    EXPECT_TRUE(points_.empty());
    EXPECT_EQ(form_.count(), 1);
}

TEST_F(ListLinesTest, what_could_not_be_stored_is_taken_back) {
    enter(0, "350ft/min");
    disk_full_ = true;
    EXPECT_NE(enter(1, "360ft/min"), QString{});
    EXPECT_NE(enter(0, ""), QString{});
    EXPECT_EQ(texts(), Texts{"350ft/min"});
}

// A page keeps the line that is being pressed, and the ones around it.
TEST_F(ListLinesTest, a_list_grows_and_shrinks_without_making_its_lines_anew) {
    const QSignalSpy resets{&form_, &QAbstractItemModel::modelReset};
    const QSignalSpy inserted{&form_, &QAbstractItemModel::rowsInserted};
    const QSignalSpy removed{&form_, &QAbstractItemModel::rowsRemoved};
    enter(0, "350ft/min");
    ASSERT_EQ(inserted.count(), 1);
    EXPECT_EQ(inserted[0][1].toInt(), 1);
    enter(0, "");
    ASSERT_EQ(removed.count(), 1);
    EXPECT_EQ(removed[0][1].toInt(), 1);
    EXPECT_EQ(resets.count(), 0);
}

TEST(ListedItemTest, an_item_is_in_the_list_only_while_something_is_entered_in_it) {
    std::vector<PumpFlow> flows;
    const auto list = [&flows]() -> std::vector<PumpFlow>& { return flows; };
    ListedItem<PumpFlow> flow{list, &PumpFlow::pump, Id{"pump-1"}};
    const auto keep = [&flow] {
        return flow.keep([] { return Result<void>{boost::outcome_v2::success()}; });
    };
    const auto line =
        form_lines<PumpFlow>([&flow]() -> PumpFlow& { return flow.item(); }, {"flow"}, keep).front();
    EXPECT_EQ(line.entry(), QString{});
    EXPECT_TRUE(flows.empty()) << "looking made an item";
    EXPECT_TRUE(line.set("40gpm"));
    ASSERT_EQ(flows.size(), 1U);
    EXPECT_EQ(flows.front().pump, Id{"pump-1"});
    EXPECT_EQ(line.entry(), QStringLiteral("40gpm"));
    EXPECT_TRUE(line.set(""));
    EXPECT_TRUE(flows.empty());
}

TEST(ListedItemTest, an_item_that_could_not_be_stored_is_not_in_the_list) {
    std::vector<PumpFlow> flows;
    const auto list = [&flows]() -> std::vector<PumpFlow>& { return flows; };
    ListedItem<PumpFlow> flow{list, &PumpFlow::pump, Id{"pump-1"}};
    const auto keep = [&flow] {
        return flow.keep([]() -> Result<void> { return storage_error("records", "disk full", "make room"); });
    };
    const auto line =
        form_lines<PumpFlow>([&flow]() -> PumpFlow& { return flow.item(); }, {"flow"}, keep).front();
    EXPECT_FALSE(line.set("40gpm"));
    EXPECT_TRUE(flows.empty());
    EXPECT_EQ(line.entry(), QString{});
}

}  // namespace
}  // namespace wetfront::ui
