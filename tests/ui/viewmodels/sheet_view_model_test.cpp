// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/sheet_view_model.h"

#include <map>

#include "desk.h"

namespace wetfront::ui {
namespace {

/// A sheet that is drawn for one reader: his language, units and paper, as the painter was told.
class SheetReaderTest : public Desk {
protected:
    SheetReaderTest() {
        const auto told = [this](const Formatter& formatter, Paper paper) {
            read_ = formatter.text(Message{"page %1 of %2", {1, 2}}) + u'|' + formatter.text(any(24.0_m)) +
                    (paper == Paper::a4 ? "|a4" : "|letter");
        };
        paper_.pages = [told](const SheetContent&, const Formatter& formatter, Paper paper) {
            told(formatter, paper);
            return std::vector<QImage>{};
        };
        paper_.pdf = [this, told](const SheetContent&, const Formatter& formatter,
                                  Paper paper) -> Result<QByteArray> {
            told(formatter, paper);
            return "%PDF-" + read_.toUtf8();
        };
        paper_.write = [](const QByteArray&, const QString&) -> Result<void> {
            return boost::outcome_v2::success();
        };
        paper_.print = [told](const SheetContent&, const Formatter& formatter, Paper paper) -> Result<bool> {
            told(formatter, paper);
            return true;
        };
        paper_.folder = folder_.filePath(QStringLiteral("sheets"));
        paper_.chosen.read = [this](const QString& key) { return kept_[key]; };
        paper_.chosen.write = [this](const QString& key, const QString& value) { kept_[key] = value; };
    }
    SheetViewModel& sheet() { return *visit_.sheet(); }

    std::map<QString, QString> kept_;
    QString read_;
    SheetPaper paper_;
    VisitViewModel visit_{context_, presses_, paper_, file_, {}, nullptr};
};

// 24 m / 0.3048 m = 78.74 ft.
TEST_F(SheetReaderTest, a_sheet_is_as_the_screen_and_on_letter_until_something_else_is_chosen) {
    sheet().showPages();
    EXPECT_EQ(read_, "page 1 of 2|78.7 ft|letter");
    formatter_.set_units(UnitSystem::si);
    paper_.language = "es";
    sheet().showPages();
    EXPECT_EQ(read_, QString::fromUtf8("página 1 de 2|24 m|letter"));
}

TEST_F(SheetReaderTest, the_grower_reads_spanish_while_the_screen_is_english) {
    sheet().setLanguage("es");
    EXPECT_EQ(read_, QString::fromUtf8("página 1 de 2|78.7 ft|letter")) << "the pages follow at once";
    EXPECT_EQ(formatter_.text(Message{"page %1 of %2", {1, 2}}), "page 1 of 2");
}

TEST_F(SheetReaderTest, the_sheet_is_english_while_the_screen_is_spanish) {
    paper_.language = "es";
    sheet().setLanguage("en");
    EXPECT_EQ(read_, "page 1 of 2|78.7 ft|letter");
}

TEST_F(SheetReaderTest, units_and_paper_are_chosen_apart_from_the_screens) {
    sheet().setUnits("si");
    sheet().setPaper("a4");
    EXPECT_EQ(read_, "page 1 of 2|24 m|a4");
    EXPECT_EQ(formatter_.units(), UnitSystem::us);
}

TEST_F(SheetReaderTest, what_is_saved_printed_and_signed_is_what_is_shown) {
    sheet().setLanguage("es");
    sheet().setPaper("a4");
    const QString wanted = QString::fromUtf8("página 1 de 2|78.7 ft|a4");
    read_.clear();
    sheet().savePdf();
    EXPECT_EQ(read_, wanted);
    read_.clear();
    sheet().print();
    EXPECT_EQ(read_, wanted);
    ASSERT_EQ(sheet().addPerson("Jo Penn", "technician"), QString{});
    ASSERT_EQ(sheet().sign(0), QString{});
    EXPECT_EQ(store_.signed_sheet(file_.visit.id).value()->pdf, "%PDF-" + wanted.toStdString());
}

TEST_F(SheetReaderTest, what_was_chosen_last_is_kept_for_the_next_sheet) {
    sheet().setLanguage("es");
    sheet().setUnits("si");
    sheet().setPaper("a4");
    VisitViewModel next{context_, presses_, paper_, file_, {}, nullptr};
    EXPECT_EQ(next.sheet()->language(), "es");
    EXPECT_EQ(next.sheet()->units(), "si");
    EXPECT_EQ(next.sheet()->paper(), "a4");
}

// Unicode CLDR: es-AR writes 78,7.
TEST_F(SheetReaderTest, the_decimal_mark_is_that_of_the_screen_where_it_speaks_the_same_language) {
    paper_.language = "es";
    formatter_.set_locale(QLocale{QLocale::Spanish, QLocale::Argentina});
    sheet().showPages();
    EXPECT_EQ(read_, QString::fromUtf8("página 1 de 2|78,7 ft|letter"));
    sheet().setLanguage("en");
    EXPECT_EQ(read_, "page 1 of 2|78.7 ft|letter");
}

}  // namespace
}  // namespace wetfront::ui
