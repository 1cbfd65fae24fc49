// SPDX-License-Identifier: Apache-2.0
#include "print/pdf.h"

#include <gmock/gmock.h>

#include <QDir>
#include <QFile>
#include <QPageRanges>
#include <QPdfWriter>
#include <QTemporaryDir>

#include "example_sheet.h"
#include "support/full_disk.h"

namespace wetfront::ui {
namespace {

using namespace test;

class PdfTest : public testing::Test {
protected:
    QString written(const SheetContent& content, Paper paper = Paper::letter,
                    const Formatter& formatter = si) {
        const auto result = write_pdf(content, path_.toStdString(), paper, formatter);
        EXPECT_TRUE(result.has_value()) << (result ? "" : result.error().text());
        return path_;
    }
    [[nodiscard]] QStringList files() const {
        return QDir{folder_.path()}.entryList(QDir::Files | QDir::Hidden);
    }

    QTemporaryDir folder_;
    QString path_ = folder_.filePath("sheet.pdf");
};

TEST_F(PdfTest, the_text_reads_back_as_it_went_in_and_in_its_order) {
    QString body;
    for (QString page : page_texts(written(example_sheet()))) {
        page = without_blanks(page);
        const QString head = without_blanks("Plover Pad Service, Invented Creek visit-17, revision 2");
        EXPECT_TRUE(page.startsWith(head)) << page.toStdString();
        page.remove(0, head.size());
        static const QRegularExpression footer{"DRAFT,notsignedpage\\dof\\d$"};
        EXPECT_TRUE(footer.match(page).hasMatch()) << page.toStdString();
        body += page.remove(footer);
    }
    EXPECT_EQ(body.toStdString(), without_blanks(example_text().join(QString{})).toStdString());
}

TEST_F(PdfTest, words_with_double_f_and_fi_are_letters_with_blanks_between_the_words) {
    const QString text = page_texts(written(example_sheet())).join(QString{});
    EXPECT_TRUE(text.contains("Sufficient, offline, affluent, first fill of the coffin-shaped baffle."))
        << text.toStdString();
    EXPECT_TRUE(text.contains("Offices and affairs")) << text.toStdString();
}

TEST_F(PdfTest, a_name_that_looks_like_markup_is_printed_as_it_was_typed) {
    const char* const name = "<b>Mill</b> & <img src=file:///etc/hostname> &lt; %1 House";
    SheetFacts facts;
    facts.facts = {{"House", verbatim(name)}};
    auto content = sheet_of({SheetParagraph{Message{"In %1 it is dry.", {verbatim(name)}}}, facts});
    content.running_head = verbatim(name);
    const QString page = without_blanks(page_texts(written(content)).join(QString{}));
    const QString wanted = without_blanks(QString::fromUtf8(name));
    EXPECT_TRUE(page.startsWith(wanted)) << page.toStdString();
    EXPECT_TRUE(page.contains("In" + wanted + "itisdry.")) << page.toStdString();
    EXPECT_TRUE(page.contains("House" + wanted)) << page.toStdString();
}

TEST_F(PdfTest, the_reader_gets_his_units_and_his_decimal_mark) {
    const auto content = sheet_of({SheetParagraph{Message{"%1 and %2", {any(18.3_m), any(celsius(35.0))}}}});
    // 18.3 m / 0.3048 m = 60.04 ft.
    EXPECT_TRUE(page_texts(written(content, Paper::letter, Formatter{UnitSystem::us}))
                    .front()
                    .contains("60 ft and 95 °F"));
    EXPECT_TRUE(page_texts(written(content, Paper::a4, Formatter{UnitSystem::si, QLocale{QLocale::Spanish}}))
                    .front()
                    .contains("18,3 m and 35 °C"));
}

TEST_F(PdfTest, the_words_of_the_sheet_itself_are_in_the_readers_language) {
    const auto content = example_sheet();
    const QString text =
        without_blanks(page_texts(written(content, Paper::letter, spanish_reader())).join(QString{}));
    for (const char* words :
         {"BORRADOR,sinfirmar", "página1de", "visit-17,revisión2", "PELIGRO", "AVISO",
          "Remedio:", "Fuente:asource", "Nota:floatsticks", "Nombre,firma,fecha", "Sincicloconocido"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << " in " << text.toStdString();
    }
    for (const char* english : {"DRAFT", "page1of", "Remedy:", "Source:", "Note:", "Name,signature"}) {
        EXPECT_FALSE(text.contains(QLatin1String{english})) << english;
    }
}

// Letter is 8.5 x 11 in, A4 210 x 297 mm (ISO 216).
TEST_F(PdfTest, the_page_has_the_size_of_its_paper) {
    EXPECT_TRUE(output_of("pdfinfo", {written(example_sheet(), Paper::letter)}).contains("612 x 792 pts"));
    EXPECT_TRUE(output_of("pdfinfo", {written(example_sheet(), Paper::a4)})
                    .contains(QRegularExpression{"595\\S* x 84[12]\\S* pts"}));
}

TEST_F(PdfTest, all_is_vector_and_every_font_is_embedded) {
    written(example_sheet());
    // Two lines of heading, then one a picture or font.
    EXPECT_EQ(output_of("pdfimages", {"-list", path_}).trimmed().split(u'\n').size(), 2);
    const QStringList fonts = output_of("pdffonts", {path_}).trimmed().split(u'\n');
    ASSERT_GT(fonts.size(), 2);
    for (const QString& font : fonts.mid(2)) {
        EXPECT_TRUE(font.contains("TrueType") && font.contains(QRegularExpression{"Identity-H +yes"}))
            << font.toStdString();
    }
}

TEST_F(PdfTest, every_page_names_its_number_and_how_many_there_are) {
    for (const std::size_t count : {0U, 1U, 7U, 20U, 60U}) {
        SheetFindings findings;
        findings.findings.assign(
            count, {Severity::fault, "Timer 1", "The far end stays dry.", "Set more.", "a source"});
        const QStringList pages = page_texts(written(sheet_of({findings})));
        for (int i = 0; i < pages.size(); ++i) {
            EXPECT_TRUE(pages[i].contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())))
                << pages[i].toStdString();
            EXPECT_TRUE(pages[i].contains("visit-17, revision 2"));
            EXPECT_TRUE(pages[i].contains("Plover Pad Service, Invented Creek"));
        }
        EXPECT_EQ(pages.join(QString{}).count("The far end stays dry."), count);
        EXPECT_TRUE(output_of("pdfinfo", {path_})
                        .contains(QRegularExpression{QStringLiteral("Pages: +%1\\n").arg(pages.size())}));
    }
}

TEST_F(PdfTest, a_signed_sheet_is_not_called_a_draft) {
    auto content = example_sheet();
    for (const QString& page : page_texts(written(content))) {
        EXPECT_TRUE(page.contains("DRAFT"));
    }
    content.draft = false;
    EXPECT_FALSE(page_texts(written(content)).join(QString{}).contains("DRAFT"));
}

TEST_F(PdfTest, long_texts_lose_nothing_and_table_heads_are_repeated) {
    SheetTable table;
    table.columns = {"Head one", "Head two"};
    std::string all;
    for (int i = 0; i < 90; ++i) {
        const std::string name = "Name" + std::to_string(1000 + i) + std::string(200, 'x') + "end";
        all += name;
        table.rows.push_back({{verbatim(name)}, {"fine"}});
    }
    const std::string endless = std::string(6000, 'y');
    table.rows.push_back({{verbatim(endless)}, {"fine"}});
    const QStringList pages = page_texts(written(sheet_of({table})));
    ASSERT_GT(pages.size(), 3);
    QString text = without_blanks(pages.join(QString{}));
    for (const QString& page : pages) {
        EXPECT_EQ(without_blanks(page).count("HeadoneHeadtwo"), 1);
    }
    EXPECT_EQ(text.count(u'x'), 90 * 200);
    EXPECT_EQ(text.count(u'y'), 6000);
    for (int i = 0; i < 90; ++i) {
        EXPECT_EQ(text.count(QStringLiteral("Name%1x").arg(1000 + i)), 1) << i;
    }
}

TEST_F(PdfTest, a_device_with_page_ranges_gets_those_pages_only) {
    SheetFindings findings;
    findings.findings.assign(60,
                             {Severity::fault, "Timer 1", "The far end stays dry.", "Set more.", "a source"});
    QPdfWriter writer{path_};
    writer.setPageRanges(QPageRanges::fromString("2-3"));
    ASSERT_TRUE(paint_sheet(writer, sheet_of({findings}), si).has_value());
    const QStringList pages = page_texts(path_);
    ASSERT_EQ(pages.size(), 2);
    EXPECT_TRUE(pages[0].contains("page 2 of "));
    EXPECT_TRUE(pages[1].contains("page 3 of "));
}

}  // namespace
}  // namespace wetfront::ui
