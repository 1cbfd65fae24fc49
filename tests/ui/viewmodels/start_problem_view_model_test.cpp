// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/start_problem_view_model.h"

#include <QFile>

#include "desk.h"

namespace wetfront::ui {
namespace {

/// A record file with two backups, closed.
class StartProblemViewModelTest : public testing::Test {
protected:
    StartProblemViewModelTest() {
        auto store = Store::open(file_, clock_);
        EXPECT_TRUE(store) << store.error().text();
        EXPECT_TRUE(store.value().add(example_visit()));
        EXPECT_TRUE(back_up_today(store.value(), backup_folder_of(file_), clock_));
        clock_.advance_ms(24LL * 3600 * 1000);
        EXPECT_TRUE(back_up_today(store.value(), backup_folder_of(file_), clock_));
    }

    [[nodiscard]] std::unique_ptr<StartProblemViewModel> start() {
        const auto opened = Store::open(file_, clock_);
        EXPECT_FALSE(opened) << "the file opened after all";
        return std::make_unique<StartProblemViewModel>(file_, clock_, opened.error(), QString{}, QString{});
    }
    static void spoil(const std::filesystem::path& file) {
        ASSERT_TRUE(QFile::resize(QString::fromStdString(file.string()), 50));
    }

    QTemporaryDir folder_;
    std::filesystem::path file_ = folder_.filePath(QStringLiteral("records.wetfront")).toStdString();
    test::FakeClock clock_;
};

TEST_F(StartProblemViewModelTest, for_a_damaged_file_the_newest_backup_is_offered) {
    spoil(file_);
    const auto offered = start();
    EXPECT_TRUE(offered->problem().contains(QStringLiteral("damaged"))) << offered->problem().toStdString();
    EXPECT_EQ(offered->copyDay(), QStringLiteral("2026-07-02"));
    EXPECT_TRUE(offered->copyHolds().startsWith(QStringLiteral("It holds houses: 1, entries: ")))
        << offered->copyHolds().toStdString();
    EXPECT_FALSE(offered->canLook());
}

TEST_F(StartProblemViewModelTest, a_backup_that_is_damaged_too_is_passed_over) {
    spoil(file_);
    spoil(backups_in(backup_folder_of(file_), file_).front().file);
    EXPECT_EQ(start()->copyDay(), QStringLiteral("2026-07-01"));
}

TEST_F(StartProblemViewModelTest, where_no_backup_is_whole_none_is_offered) {
    spoil(file_);
    for (const auto& backup : backups_in(backup_folder_of(file_), file_)) {
        spoil(backup.file);
    }
    const auto offered = start();
    EXPECT_TRUE(offered->copyDay().isEmpty());
    EXPECT_TRUE(offered->copy().file.empty());
}

TEST_F(StartProblemViewModelTest, a_file_that_can_still_be_read_is_looked_at_and_not_replaced) {
    // The version number of the schema, at byte 60 of an SQLite file (sqlite.org/fileformat2.html, 1.3).
    QFile file{QString::fromStdString(file_.string())};
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek(60);
    file.write(QByteArray::fromHex("00000063"));
    file.close();
    const auto offered = start();
    EXPECT_TRUE(offered->problem().contains(QStringLiteral("newer version")))
        << offered->problem().toStdString();
    EXPECT_TRUE(offered->canLook());
    EXPECT_TRUE(offered->copyDay().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
