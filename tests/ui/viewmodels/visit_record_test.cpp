// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/visit_record.h"

#include <QDir>
#include <QFileInfo>
#include <QTest>

#include "desk.h"
#include "support/full_disk.h"
#include "viewmodels/press_files.h"

namespace wetfront::ui {
namespace {

class VisitRecordTest : public Desk {
protected:
    Mark press(MarkKind kind = MarkKind::pump_start) {
        clock_.advance_ms(20'000);
        Mark mark;
        mark.id = store_.new_id();
        mark.kind = kind;
        mark.pump = file_.house.pumps.front().id;
        mark.at = clock_.boot_now();
        mark.wall = clock_.wall_now();
        record_.add_mark(mark);
        return mark;
    }

    // Presses of which the last two find the disk full.
    void press_with_a_full_disk() {
        press(MarkKind::pump_start);
        const test::FullDisk full{0};
        press(MarkKind::pump_stop);
        press(MarkKind::pump_start);
    }

    [[nodiscard]] std::vector<Id> ids_of(const std::vector<Mark>& marks) {
        std::vector<Id> ids;
        for (const auto& mark : marks) {
            ids.push_back(mark.id);
        }
        return ids;
    }

    VisitRecord record_{context_, file_, nullptr};
};

TEST_F(VisitRecordTest, a_press_that_the_disk_does_not_take_stays_in_memory_and_is_said_at_once) {
    press_with_a_full_disk();
    EXPECT_EQ(record_.file().visit.marks.size(), 3U);
    EXPECT_EQ(stored().marks.size(), 1U);
    EXPECT_EQ(record_.presses_not_stored(), 2);
    EXPECT_FALSE(record_.storage_problem().isEmpty());
}

TEST_F(VisitRecordTest, presses_go_in_by_themselves_once_there_is_room_in_order_and_none_twice) {
    press_with_a_full_disk();
    ASSERT_TRUE(QTest::qWaitFor([this] { return record_.presses_not_stored() == 0; }, 5000));
    EXPECT_EQ(stored().marks, record_.file().visit.marks);
    EXPECT_EQ(record_.storage_problem(), QString{});
}

TEST_F(VisitRecordTest, the_next_press_takes_those_that_wait_with_it_before_itself) {
    press_with_a_full_disk();
    press(MarkKind::pump_stop);
    EXPECT_EQ(record_.presses_not_stored(), 0);
    EXPECT_EQ(ids_of(stored().marks), ids_of(record_.file().visit.marks));
}

TEST_F(VisitRecordTest, an_undo_while_the_disk_is_full_waits_behind_its_press) {
    Mark wrong;
    {
        const test::FullDisk full{0};
        wrong = press();
        record_.set_undone(wrong.id, true);
        EXPECT_TRUE(record_.file().visit.marks.front().undone);
        EXPECT_EQ(record_.presses_not_stored(), 2);
    }
    record_.store_waiting();
    EXPECT_EQ(record_.presses_not_stored(), 0);
    ASSERT_EQ(stored().marks.size(), 1U);
    EXPECT_TRUE(stored().marks.front().undone);
}

TEST_F(VisitRecordTest, an_undo_of_a_stored_press_is_not_lost_to_a_full_disk) {
    const auto pressed = press();
    {
        const test::FullDisk full{0};
        record_.set_undone(pressed.id, true);
        EXPECT_EQ(record_.presses_not_stored(), 1);
    }
    EXPECT_FALSE(stored().marks.front().undone);
    record_.store_waiting();
    EXPECT_TRUE(stored().marks.front().undone);
}

// The commit was reported as failed, and yet it is there.
TEST_F(VisitRecordTest, a_press_whose_fate_was_unknown_goes_in_once) {
    Mark pressed;
    {
        const test::FullDisk full{0};
        pressed = press();
    }
    ASSERT_TRUE(store_.add_mark(file_.visit.id, pressed));
    record_.store_waiting();
    EXPECT_EQ(record_.presses_not_stored(), 0);
    EXPECT_EQ(ids_of(stored().marks), std::vector{pressed.id});
}

TEST_F(VisitRecordTest, an_entry_that_finds_room_takes_the_waiting_presses_with_it) {
    press_with_a_full_disk();
    ASSERT_TRUE(record_.save_house());
    EXPECT_EQ(record_.presses_not_stored(), 0);
    EXPECT_EQ(stored().marks.size(), 3U);
}

TEST_F(VisitRecordTest, an_entry_that_is_stored_does_not_hide_that_presses_are_not) {
    Mark unknown;
    unknown.id = store_.new_id();
    record_.visit().marks.push_back(unknown);
    record_.set_undone(unknown.id, true);
    ASSERT_TRUE(record_.save_house());
    EXPECT_EQ(record_.presses_not_stored(), 1);
    EXPECT_FALSE(record_.storage_problem().isEmpty());
}

TEST_F(VisitRecordTest, a_press_that_the_record_refuses_holds_up_no_other) {
    Mark unknown;
    unknown.id = store_.new_id();
    record_.visit().marks.push_back(unknown);
    record_.set_undone(unknown.id, true);
    ASSERT_EQ(record_.presses_not_stored(), 1);
    const auto pressed = press();
    EXPECT_EQ(ids_of(stored().marks), std::vector{pressed.id});
    EXPECT_EQ(record_.presses_not_stored(), 1);
    EXPECT_FALSE(record_.storage_problem().isEmpty());
}

TEST_F(VisitRecordTest, leaving_tries_once_more_to_store_what_waits) {
    press_with_a_full_disk();
    record_.close();
    EXPECT_EQ(stored().marks.size(), 3U);
}

TEST_F(VisitRecordTest, nothing_is_tried_again_once_the_visit_is_left) {
    press_with_a_full_disk();
    {
        const test::FullDisk full{0};
        record_.close();
    }
    EXPECT_FALSE(QTest::qWaitFor([this] { return stored().marks.size() > 1; }, 1200));
}

class PressFilesTest : public VisitRecordTest {
protected:
    QString elsewhere_ = folder_.filePath(QStringLiteral("elsewhere"));
};

TEST_F(PressFilesTest, presses_written_elsewhere_can_be_read_by_their_owner_alone) {
    press_with_a_full_disk();
    const auto file = record_.write_presses(elsewhere_);
    ASSERT_TRUE(file) << file.error().text();
    EXPECT_EQ(QFileInfo{file.value()}.permissions() & ~(QFile::ReadUser | QFile::WriteUser),
              QFile::ReadOwner | QFile::WriteOwner);
}

TEST_F(PressFilesTest, presses_written_elsewhere_are_found_and_taken_in_once) {
    press_with_a_full_disk();
    ASSERT_TRUE(record_.write_presses(elsewhere_));
    auto found = presses_to_take({elsewhere_}, store_);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().missing, 2);
    ASSERT_TRUE(take_presses(found.front(), store_));
    EXPECT_EQ(stored().marks, record_.file().visit.marks);
    EXPECT_TRUE(presses_to_take({elsewhere_}, store_).empty());
    ASSERT_TRUE(take_presses(found.front(), store_));
    EXPECT_EQ(stored().marks.size(), 3U);
}

TEST_F(PressFilesTest, an_undo_written_elsewhere_is_found_and_taken_in) {
    const auto pressed = press();
    {
        const test::FullDisk full{0};
        record_.set_undone(pressed.id, true);
    }
    ASSERT_TRUE(record_.write_presses(elsewhere_));
    ASSERT_EQ(record_.presses_not_stored(), 1);
    const auto found = presses_to_take({elsewhere_}, store_);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().missing, 1);
    ASSERT_TRUE(take_presses(found.front(), store_));
    EXPECT_TRUE(stored().marks.front().undone);
    EXPECT_TRUE(presses_to_take({elsewhere_}, store_).empty());
}

TEST_F(PressFilesTest, presses_of_a_visit_that_was_signed_meanwhile_are_found_as_such) {
    press_with_a_full_disk();
    ASSERT_TRUE(record_.write_presses(elsewhere_));
    Visit now_signed = stored();
    now_signed.signatures.push_back({{"Jo Penn", "technician"}, clock_.wall_now()});
    ASSERT_TRUE(store_.save(now_signed));
    const auto found = presses_to_take({elsewhere_}, store_);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_TRUE(found.front().is_signed);
    EXPECT_FALSE(take_presses(found.front(), store_));
}

TEST_F(PressFilesTest, a_link_is_not_read_and_not_written_through) {
    press_with_a_full_disk();
    const QString there = record_.write_presses(elsewhere_).value();
    const QString moved = folder_.filePath(QStringLiteral("moved.json"));
    ASSERT_TRUE(QFile::rename(there, moved) && QFile::link(moved, there));
    EXPECT_TRUE(presses_to_take({elsewhere_}, store_).empty());
    const QString nowhere = folder_.filePath(QStringLiteral("nowhere.json"));
    ASSERT_TRUE(QFile::remove(there) && QFile::link(nowhere, there));
    const auto written = record_.write_presses(elsewhere_);
    ASSERT_TRUE(written);
    EXPECT_NE(written.value(), there);
    EXPECT_FALSE(QFile::exists(nowhere));
}

TEST_F(PressFilesTest, a_file_with_presses_that_are_nowhere_else_is_not_written_over) {
    press_with_a_full_disk();
    const auto first = record_.write_presses(elsewhere_);
    ASSERT_TRUE(first);
    VisitRecord reopened{context_, store_.visit_file(file_.visit.id).value(), nullptr};
    const auto second = reopened.write_presses(elsewhere_);
    ASSERT_TRUE(second);
    EXPECT_NE(second.value(), first.value());
    EXPECT_EQ(record_.write_presses(elsewhere_).value(), first.value());
}

TEST_F(PressFilesTest, a_folder_that_cannot_be_made_is_said_with_what_is_safe) {
    QFile in_the_way{elsewhere_};
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    in_the_way.close();
    const auto refused = record_.write_presses(elsewhere_);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, Error::Kind::storage);
    EXPECT_NE(refused.error().text().find("still on screen"), std::string::npos);
}

TEST_F(PressFilesTest, a_file_of_another_sort_or_of_an_unknown_visit_is_passed_over) {
    ASSERT_TRUE(QDir{}.mkpath(elsewhere_));
    QFile other{QDir{elsewhere_}.filePath(QStringLiteral("presses-of-grapes.json"))};
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("{\"grapes\": 12}");
    other.close();
    Visit unknown = file_.visit;
    unknown.id = Id{"nobody-knows-it"};
    unknown.marks = {press()};
    ASSERT_TRUE(write_presses(unknown, elsewhere_));
    EXPECT_TRUE(presses_to_take({elsewhere_}, store_).empty());
}

}  // namespace
}  // namespace wetfront::ui
