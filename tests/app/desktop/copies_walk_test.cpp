// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

#include "demo/demo.h"
#include "desktop/desktop_run.h"
#include "support/fake_clock.h"
#include "support/full_disk.h"
#include "ui_support/fake_awake.h"
#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

constexpr int patience_ms = 20'000;

/// The program as it runs, on a record file of its own with one house, and a folder that stands for a stick.
class CopiesWalkTest : public testing::Test {
protected:
    CopiesWalkTest() {
        QDir{}.mkpath(stick_);
        clock_.monotonic = 1'000'000'000;
        auto store = Store::open(file(), clock_);
        EXPECT_TRUE(store) << store.error().text();
        EXPECT_TRUE(store.value().add(example_visit()));
    }

    void begin() {
        run_ = std::make_unique<DesktopRun>(DesktopRun::Setup{
            file(),
            clock_,
            {[](const QString&) { return QString{}; }, [](const QString&, const QString&) {}},
            awake_,
            folder_.filePath(QStringLiteral("documents")),
            false,
            [this] { return QStringList{stick_}; }});
        ASSERT_TRUE(run_->begin());
        settle();
    }
    // Takes the window that is there now in hand.
    void settle() {
        ASSERT_NE(run_->window(), nullptr);
        run_->window()->resize(1024, 600);
        show_and_wait(*run_->window());
        hand_ = std::make_unique<Hand>(*run_->window());
    }
    // Until another window has come, which is the answer to what was pressed.
    void click_and_wait_for_another_window(const QString& name) {
        const auto* before = run_->window();
        hand_->click(name);
        ASSERT_TRUE(QTest::qWaitFor([&] { return run_->window() != before; }, patience_ms));
        settle();
    }
    void click(const char* name) { hand_->click(QString::fromUtf8(name)); }
    [[nodiscard]] bool says(const QString& words) {
        return std::ranges::any_of(hand_->everything(),
                                   [&](const Heard& each) { return each.name.contains(words); });
    }
    [[nodiscard]] bool comes_to_say(const char* words) {
        return QTest::qWaitFor([&] { return says(QString::fromUtf8(words)); }, patience_ms);
    }
    [[nodiscard]] std::size_t farms() { return run_->program()->session().farms().size() - 1U; }
    void enter_a_farm() {
        auto& session = run_->program()->session();
        session.startHouse({}, QStringLiteral("Entered later"), QStringLiteral("House 9"));
        session.leave();
        session.leave();
    }
    void open_copies() {
        click("Language, units and light");
        click("Copies of the records");
        ASSERT_EQ(run_->program()->session().place(), QStringLiteral("copies"));
    }
    void make_a_copy_and_look_at_it() {
        open_copies();
        hand_->click(QStringLiteral("Copy to ") + stick_);
        ASSERT_TRUE(comes_to_say("Copied and read back"));
        hand_->click(QStringLiteral("Copy of 2026-07-01 05:00, on ") + stick_);
        ASSERT_TRUE(comes_to_say("Go back to this copy"));
    }
    [[nodiscard]] std::filesystem::path file() const {
        return folder_.filePath(QStringLiteral("records.wetfront")).toStdString();
    }
    [[nodiscard]] QString replaced() const {
        const auto found = QDir{folder_.path()}.entryList({QStringLiteral("records.wetfront.replaced-*")});
        return found.isEmpty() ? QString{} : folder_.filePath(found.front());
    }

    QTemporaryDir folder_;
    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    test::FakeClock clock_;
    FakeAwake awake_;
    std::unique_ptr<DesktopRun> run_;
    std::unique_ptr<Hand> hand_;
};

TEST_F(CopiesWalkTest, the_start_of_the_day_makes_a_copy_and_so_does_the_next_day_at_the_houses) {
    begin();
    const auto copies = [this] { return backups_in(backup_folder_of(file()), file()).size(); };
    EXPECT_TRUE(QTest::qWaitFor([&] { return copies() == 1; }, patience_ms));
    clock_.advance_ms(24LL * 3600 * 1000);
    run_->program()->session().openHouse(QString::fromStdString(example_visit().house.id.text));
    EXPECT_EQ(copies(), 1U);
    click("Back");
    EXPECT_EQ(copies(), 2U);
}

TEST_F(CopiesWalkTest, a_copy_that_cannot_be_made_is_told_on_the_houses_page) {
    QFile blocking{folder_.filePath(QStringLiteral("backups"))};
    ASSERT_TRUE(blocking.open(QIODevice::WriteOnly));
    begin();
    EXPECT_TRUE(comes_to_say("The copy of today could not be made"));
    EXPECT_TRUE(hand_->shows(QStringLiteral("New house")));
}

TEST_F(CopiesWalkTest, a_copy_on_a_stick_brings_the_old_state_back_and_the_replaced_file_is_named) {
    begin();
    ASSERT_EQ(farms(), 1U);
    open_copies();
    hand_->click(QStringLiteral("Copy to ") + stick_);
    ASSERT_TRUE(comes_to_say("Copied and read back"));
    click("Back");
    enter_a_farm();
    ASSERT_EQ(farms(), 2U);

    open_copies();
    const QString line = QStringLiteral("Copy of 2026-07-01 05:00, on ") + stick_;
    hand_->click(line);
    ASSERT_TRUE(comes_to_say("Entries made since this copy: 3"));  // a farm, a house, a visit
    click("Keep the records as they are");
    EXPECT_EQ(farms(), 2U);
    EXPECT_TRUE(replaced().isEmpty());

    hand_->click(line);
    ASSERT_TRUE(comes_to_say("Go back to this copy"));
    click_and_wait_for_another_window(QStringLiteral("Go back to this copy"));
    ASSERT_NE(run_->program(), nullptr);
    EXPECT_EQ(farms(), 1U);
    ASSERT_FALSE(replaced().isEmpty());
    EXPECT_TRUE(says(QStringLiteral("is kept as ") + replaced()));
}

TEST_F(CopiesWalkTest, the_keyboard_alone_keeps_the_records) {
    begin();
    make_a_copy_and_look_at_it();
    EXPECT_EQ(hand_->focused(), QStringLiteral("Keep the records as they are"));
    hand_->key(Qt::Key_Return);
    EXPECT_FALSE(hand_->shows(QStringLiteral("Go back to this copy")));
    EXPECT_TRUE(replaced().isEmpty());
}

TEST_F(CopiesWalkTest, a_copy_that_is_gone_meanwhile_is_told_and_the_records_open_as_they_were) {
    begin();
    make_a_copy_and_look_at_it();
    ASSERT_TRUE(QDir{stick_ + QStringLiteral("/Wetfront copies")}.removeRecursively());
    click_and_wait_for_another_window(QStringLiteral("Go back to this copy"));
    ASSERT_NE(run_->program(), nullptr);
    EXPECT_EQ(farms(), 1U);
    EXPECT_TRUE(says(QStringLiteral("It could not go back to the copy")));
}

TEST_F(CopiesWalkTest, a_damaged_file_is_kept_and_the_program_opens_on_the_backup) {
    {
        auto store = Store::open(file(), clock_);
        ASSERT_TRUE(store) << store.error().text();
        ASSERT_TRUE(back_up_today(store.value(), backup_folder_of(file()), clock_));
    }
    ASSERT_TRUE(QFile::resize(QString::fromStdString(file().string()), 50));
    begin();
    EXPECT_EQ(run_->program(), nullptr);
    EXPECT_TRUE(says(QStringLiteral("the file is damaged")));
    EXPECT_EQ(hand_->focused(), QStringLiteral("Close"));
    EXPECT_TRUE(says(QStringLiteral("It holds houses: 1")));
    click_and_wait_for_another_window(QStringLiteral("Go back to the copy of 2026-07-01"));
    ASSERT_NE(run_->program(), nullptr);
    EXPECT_EQ(farms(), 1U);
    ASSERT_FALSE(replaced().isEmpty());
    EXPECT_EQ(QFileInfo{replaced()}.size(), 50);
    EXPECT_TRUE(says(QStringLiteral("is kept as ") + replaced()));
}

TEST_F(CopiesWalkTest, a_file_that_is_not_ours_is_left_alone_and_the_page_says_what_to_do) {
    const QByteArray letter{"Dear grower, this is a letter and no record file."};
    QFile other{QString::fromStdString(file().string())};
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write(letter);
    other.close();
    begin();
    EXPECT_EQ(run_->program(), nullptr);
    EXPECT_TRUE(says(QStringLiteral("it is not a record file")));
    EXPECT_TRUE(says(QStringLiteral("move it away to begin anew")));
    ASSERT_TRUE(other.rename(folder_.filePath(QStringLiteral("letter"))));
    click_and_wait_for_another_window(QStringLiteral("Try again"));
    ASSERT_NE(run_->program(), nullptr);
    EXPECT_EQ(farms(), 0U);
}

TEST_F(CopiesWalkTest, a_disk_that_takes_nothing_is_told_and_the_file_opens_once_it_does) {
    bool opened = true;
    bool told = false;
    {
        const test::FullDisk full{0};  // what a test prints does not reach a file either
        opened = !QFile::remove(QString::fromStdString(file().string()));
        begin();
        opened = opened || run_->program() != nullptr;
        told = says(QStringLiteral("the disk could not be read or written")) &&
               says(QStringLiteral("check the disk, then try again"));
    }
    EXPECT_FALSE(opened);
    EXPECT_TRUE(told);
    click_and_wait_for_another_window(QStringLiteral("Try again"));
    EXPECT_NE(run_->program(), nullptr);
}

TEST_F(CopiesWalkTest, two_presses_on_going_back_are_one) {
    {
        auto store = Store::open(file(), clock_);
        ASSERT_TRUE(store) << store.error().text();
        ASSERT_TRUE(back_up_today(store.value(), backup_folder_of(file()), clock_));
    }
    ASSERT_TRUE(QFile::resize(QString::fromStdString(file().string()), 50));
    begin();
    auto* page = run_->window();
    emit run_->start_problem()->goBack();
    emit run_->start_problem()->goBack();
    ASSERT_TRUE(QTest::qWaitFor([&] { return run_->program() != nullptr; }, patience_ms));
    EXPECT_NE(run_->window(), page);
    QCoreApplication::processEvents();
    EXPECT_EQ(farms(), 1U);
    EXPECT_EQ(QDir{folder_.path()}.entryList({QStringLiteral("records.wetfront.replaced-*")}).size(), 1);
}

TEST_F(CopiesWalkTest,
       entries_lost_in_a_damaged_journal_are_told_on_the_page_that_opens_and_on_the_houses_page) {
    const auto wal = file().string() + "-wal";
    const auto crashed = folder_.filePath(QStringLiteral("crashed")).toStdString();
    {
        auto store = Store::open(file(), clock_);
        ASSERT_TRUE(store) << store.error().text();
        auto farm = example_visit().farm;
        for (const auto* customer : {"First", "Second", "Third"}) {
            farm.customer = customer;
            ASSERT_TRUE(store.value().save(farm));
        }
        std::filesystem::copy_file(file(), crashed);
        std::filesystem::copy_file(wal, crashed + "-wal");
    }
    std::filesystem::rename(crashed, file());
    std::filesystem::rename(crashed + "-wal", wal);
    // In the page of the first frame (sqlite.org/fileformat2.html, 4.1).
    QFile journal{QString::fromStdString(wal)};
    ASSERT_TRUE(journal.open(QIODevice::ReadWrite));
    journal.seek(32 + 24 + 1000);
    journal.write("damage");
    journal.close();
    begin();
    EXPECT_TRUE(says(QStringLiteral("may be missing")));
    EXPECT_TRUE(run_->program()->session().problem().contains(QStringLiteral("-wal file was damaged")));
    EXPECT_TRUE(run_->program()->session().copies()->problem().contains(QStringLiteral("is kept as")));
}

TEST_F(CopiesWalkTest, a_file_of_a_newer_version_is_looked_at_and_nothing_can_be_started) {
    QFile newer{QString::fromStdString(file().string())};
    ASSERT_TRUE(newer.open(QIODevice::ReadWrite));
    // The version number of the schema, at byte 60 of an SQLite file (sqlite.org/fileformat2.html, 1.3).
    newer.seek(60);
    newer.write(QByteArray::fromHex("00000063"));
    newer.close();
    begin();
    EXPECT_TRUE(says(QStringLiteral("update this program")));
    click_and_wait_for_another_window(QStringLiteral("Open read-only"));
    ASSERT_NE(run_->program(), nullptr);
    auto& session = run_->program()->session();
    EXPECT_TRUE(says(QStringLiteral("Read only.")));
    EXPECT_FALSE(hand_->shows(QStringLiteral("New house")));
    session.openHouse(QString::fromStdString(example_visit().house.id.text));
    EXPECT_FALSE(hand_->shows(QStringLiteral("Start a visit")));
    session.openVisit(QString::fromStdString(example_visit().visit.id.text));
    session.visit()->goTo(static_cast<int>(Step::time_the_water));
    EXPECT_FALSE(session.visit()->stopwatch()->canMark());
    EXPECT_TRUE(says(QStringLiteral("nothing can be timed")));
    EXPECT_TRUE(backups_in(backup_folder_of(file()), file()).empty());
}

TEST_F(CopiesWalkTest, a_second_copy_of_the_program_says_who_holds_the_file_and_opens_it_once_it_is_free) {
    QProcess first;
    first.start(QStringLiteral(WETFRONT_PROGRAM),
                {QStringLiteral("--store"), QString::fromStdString(file().string())});
    ASSERT_TRUE(first.waitForStarted());
    // Its copy of the day tells that it is open; asking the file itself could be in its way.
    ASSERT_TRUE(QTest::qWaitFor([this] { return !backups_in(backup_folder_of(file()), file()).empty(); },
                                patience_ms));
    begin();
    EXPECT_EQ(run_->program(), nullptr);
    EXPECT_TRUE(says(QStringLiteral("it is open in wetfront (process %1)").arg(first.processId())));
    EXPECT_FALSE(says(QStringLiteral("Go back to the copy")));
    first.kill();
    ASSERT_TRUE(first.waitForFinished(patience_ms));
    click_and_wait_for_another_window(QStringLiteral("Try again"));
    ASSERT_NE(run_->program(), nullptr);
    EXPECT_EQ(farms(), 1U);
}

TEST_F(CopiesWalkTest,
       records_go_to_a_stick_for_another_machine_and_a_bundle_is_looked_at_before_it_is_taken_in) {
    begin();
    click("Language, units and light");
    click("Records to and from other machines");
    ASSERT_EQ(run_->program()->session().place(), QStringLiteral("bundles"));
    EXPECT_TRUE(says(QStringLiteral("No bundle and no receipt is on a stick.")));
    hand_->click(QStringLiteral("Write to ") + stick_);
    ASSERT_TRUE(comes_to_say("Written and read back"));
    const auto written =
        QDir{stick_ + QStringLiteral("/Wetfront bundles")}.entryList({QStringLiteral("*.bundle")});
    ASSERT_EQ(written.size(), 1);
    hand_->click(QStringLiteral("Bundle %1, on %2").arg(written.front(), stick_));
    ASSERT_TRUE(comes_to_say("New entries: 0"));
    click("Take it in");
    EXPECT_TRUE(comes_to_say("The receipt for the sender is beside the bundle"));
    click("Back");
    EXPECT_EQ(run_->program()->session().place(), QStringLiteral("houses"));
}

}  // namespace
}  // namespace wetfront::ui
