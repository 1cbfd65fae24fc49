// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheets_view_model.h"

#include <QTest>
#include <algorithm>
#include <set>

#include "sheet_stick.h"
#include "viewmodels/houses_model.h"

namespace wetfront::ui {
namespace {

/// The demo's three houses, with the open visit of the desk in one of them.
class SheetsViewModelTest : public SheetStick {
protected:
    SheetsViewModelTest() {
        const auto filled = fill_store(store_);
        const auto read = houses_.reload();
        EXPECT_TRUE(filled && read);
        paper_.ask_printer = [this]() -> std::optional<PrintFiles> {
            if (!has_printer_) {
                return std::nullopt;
            }
            return [this](const QStringList& files) -> Result<void> {
                for (const auto& name : files) {
                    QFile file{name};
                    printed_.append(file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{"gone"});
                }
                if (!printer_works_) {
                    return storage_error("printer", "it is out of paper", "fill it");
                }
                return boost::outcome_v2::success();
            };
        };
        offer_all();
        sheets_.setSpan("all");
    }
    void offer_all() { sheets_.offer(houses_.houses(), std::nullopt, houses_.listed()); }
    void wait() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !sheets_.busy(); }, 60'000));
    }
    void write() {
        sheets_.writeTo(stick_);
        wait();
    }
    [[nodiscard]] qsizetype signed_since(const std::string& from, const std::string& until = "9999") const {
        const auto all = demo_visits();
        return std::ranges::count_if(all, [&](const VisitFile& file) {
            const auto day = local_date(file.visit.started);
            return file.visit.is_signed() && from <= day && day <= until;
        });
    }
    [[nodiscard]] QStringList place_texts() const {
        QStringList texts;
        for (const auto& place : sheets_.places()) {
            texts.append(place.toMap()["text"].toString());
        }
        return texts;
    }
    [[nodiscard]] std::string told() const {
        return (sheets_.outcome() + " | " + sheets_.problem() + " | " + sheets_.missing().join("; "))
            .toStdString();
    }

    bool has_printer_ = true;
    bool printer_works_ = true;
    QList<QByteArray> printed_;
    HousesModel houses_{context_, nullptr};
    SheetsViewModel sheets_{context_, paper_, nullptr};
};

TEST_F(SheetsViewModelTest, every_signed_visit_becomes_a_file_on_the_stick_and_progress_is_told) {
    std::set<QString> said;
    double most = -1.0;
    QObject::connect(&sheets_, &SheetsViewModel::busyChanged, &sheets_, [&] {
        said.insert(sheets_.busyText().section(' ', 0, 0));
        most = std::max(most, sheets_.progress());
    });
    sheets_.writeTo(stick_);
    EXPECT_TRUE(sheets_.busy());
    EXPECT_TRUE(sheets_.stoppable());
    wait();
    const auto wanted = signed_since("");
    EXPECT_EQ(on_stick().size(), wanted);
    EXPECT_EQ(
        sheets_.outcome(),
        QStringLiteral("Written and read back: %1 of %1, in %2/Wetfront sheets").arg(wanted).arg(stick_))
        << told();
    EXPECT_EQ(sheets_.problem(), QString{});
    EXPECT_TRUE(said.contains("Looking") && said.contains("Sheets"));
    EXPECT_EQ(most, 1.0);
}

TEST_F(SheetsViewModelTest, a_sheet_that_was_kept_comes_as_it_was_handed_out) {
    const auto visit = demo_visits().front().visit;
    ASSERT_TRUE(store_.keep_sheet(visit, "%PDF-handed out"));
    write();
    const auto name = on_stick().filter(QString::fromStdString(visit.id.text + ".pdf"));
    ASSERT_EQ(name.size(), 1);
    EXPECT_EQ(content(name.front()), "%PDF-handed out");
    sheets_.setSummaries(true);
    write();
    const auto summaries = on_stick().filter(".summary.pdf");
    EXPECT_EQ(summaries.size(), signed_since(""));
    EXPECT_EQ(content(summaries.front()), "%PDF-summary");
}

// The clock of the desk stands at 2026-07-01; the season is the calendar year.
TEST_F(SheetsViewModelTest, seasons_and_months_are_counted_from_today) {
    sheets_.setSpan("season");
    write();
    EXPECT_EQ(on_stick().size(), signed_since("2026-01-01"));
    sheets_.setSpan("last_season");
    write();
    EXPECT_EQ(on_stick().size(), signed_since("2025-01-01"));
    EXPECT_GT(signed_since("2025-01-01", "2025-12-31"), 0);
    sheets_.setSpan("year");
    write();
    EXPECT_TRUE(sheets_.outcome().contains(QStringLiteral(": %1 of ").arg(signed_since("2025-07-01"))))
        << told();
    QStringList spans;
    for (const auto& span : sheets_.spans()) {
        spans.append(span.toMap()["text"].toString());
    }
    EXPECT_EQ(spans.join('|'), "This season, 2026|Last season, 2025|Last 12 months|All days");
}

TEST_F(SheetsViewModelTest, the_last_visit_of_each_house_counts_signed_or_not) {
    sheets_.setVisits("last");
    write();
    EXPECT_EQ(on_stick().size(), 3) << "one of each house, Cedar's a draft";
}

TEST_F(SheetsViewModelTest, from_a_house_one_chooses_it_or_its_farm_and_from_the_list_what_it_shows) {
    sheets_.offer(houses_.houses(), file_.house.id, houses_.listed());
    EXPECT_EQ(place_texts().front(), QString::fromStdString(file_.house.name));
    EXPECT_EQ(place_texts().last(), "All houses");
    EXPECT_EQ(place_texts().size(), 3);
    write();
    const auto of_house = store_.visits_of(file_.house.id).value();
    EXPECT_EQ(on_stick().size(),
              std::ranges::count_if(of_house, [](const VisitSummary& visit) { return visit.is_signed; }));
    houses_.seek("cedar");
    offer_all();
    EXPECT_EQ(place_texts(), (QStringList{"Houses in the list: 1", "All houses"}));
}

TEST_F(SheetsViewModelTest, a_batch_is_stopped_after_the_file_at_hand_and_says_how_many_are_whole) {
    std::atomic<int> kept = 0;
    paper_.keep = [&](const QByteArray& bytes, const QString& file) {
        if (++kept == 2) {
            QMetaObject::invokeMethod(
                &sheets_, [this] { sheets_.stop(); }, Qt::BlockingQueuedConnection);
        }
        return keep_bytes(bytes, file);
    };
    write();
    EXPECT_EQ(on_stick().size(), 2);
    EXPECT_TRUE(sheets_.outcome().startsWith(
        QStringLiteral("Stopped. Whole and read back: 2 of %1").arg(signed_since(""))))
        << told();
}

TEST_F(SheetsViewModelTest, a_sheet_that_cannot_be_drawn_is_told_with_its_visit_and_the_rest_goes_on) {
    const auto bad = demo_visits().front().visit.id.text;
    const auto paints = paper_.pdf;
    paper_.pdf = [paints, bad](const SheetContent& content, const Formatter& reader, Paper paper) {
        return content.id == bad
                   ? Result<QByteArray>{storage_error("sheet", "the painter failed", "try again")}
                   : paints(content, reader, paper);
    };
    write();
    EXPECT_EQ(on_stick().size(), signed_since("") - 1);
    ASSERT_EQ(sheets_.missing().size(), 1) << told();
    EXPECT_TRUE(sheets_.missing().front().contains(QString::fromStdString(bad)));
    EXPECT_TRUE(sheets_.missing().front().contains("the painter failed"));
}

TEST_F(SheetsViewModelTest, a_stick_that_fills_up_ends_the_batch_in_words) {
    std::atomic<int> kept = 0;
    paper_.keep = [&](const QByteArray& bytes, const QString& file) {
        return ++kept > 3 ? std::optional{FileFailure{FileFault::no_room}} : keep_bytes(bytes, file);
    };
    write();
    EXPECT_EQ(kept, 4) << "the next one would fare no better";
    EXPECT_TRUE(sheets_.problem().contains("no room left")) << told();
    EXPECT_TRUE(sheets_.outcome().startsWith("Whole before that: 3 of ")) << told();
}

TEST_F(SheetsViewModelTest, a_stick_that_is_pulled_out_is_told_before_and_after) {
    plugged_in_.clear();
    write();
    EXPECT_TRUE(sheets_.problem().contains("pulled out")) << told();
    plugged_in_ = {stick_};
    paper_.keep = [this](const QByteArray& bytes, const QString& file) {
        pull_out_ = true;
        return keep_bytes(bytes, file);
    };
    write();
    EXPECT_TRUE(sheets_.problem().contains("pulled out")) << told();
}

TEST_F(SheetsViewModelTest, the_printer_gets_all_sheets_as_one_job_in_order) {
    sheets_.print();
    wait();
    EXPECT_EQ(printed_.size(), signed_since(""));
    EXPECT_EQ(printed_.count("%PDF-commissioning"), printed_.size());
    EXPECT_EQ(sheets_.outcome(),
              QStringLiteral("Sent to the printer as one job: %1 of %1").arg(printed_.size()))
        << told();
}

TEST_F(SheetsViewModelTest, without_a_printer_or_paper_nothing_is_said_to_be_printed) {
    has_printer_ = false;
    sheets_.print();
    EXPECT_FALSE(sheets_.busy());
    EXPECT_EQ(sheets_.outcome(), "Not printed.");
    has_printer_ = true;
    printer_works_ = false;
    sheets_.print();
    wait();
    EXPECT_TRUE(sheets_.problem().contains("out of paper")) << told();
    EXPECT_EQ(sheets_.outcome(), QString{});
}

TEST_F(SheetsViewModelTest, days_without_a_visit_say_so) {
    clock_.wall = parse_iso8601("2040-05-01T08:00:00Z", "now").value();
    sheets_.setSpan("season");
    sheets_.writeToFolder();
    wait();
    EXPECT_EQ(sheets_.outcome(), "There is no such visit.");
}

TEST_F(SheetsViewModelTest, sheets_go_into_the_folder_of_this_tablet_too) {
    sheets_.setPlace(static_cast<int>(sheets_.places().size()) - 1);
    sheets_.writeToFolder();
    wait();
    EXPECT_EQ(QDir{paper_.folder}.entryList(QDir::Files).size(), signed_since("")) << told();
}

}  // namespace
}  // namespace wetfront::ui
