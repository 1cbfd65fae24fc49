// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFont>
#include <QFontMetricsF>
#include <QProcess>
#include <QRegularExpression>
#include <QTest>
#include <QXmlStreamReader>
#include <set>

#include "cycle/advice.h"
#include "demo/demo.h"
#include "desktop/speech.h"
#include "format/language.h"
#include "rules/rules.h"
#include "sheet/sheet.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The English texts that the Spanish catalogue says in other words.
std::set<QString> english_texts() {
    QFile file{QStringLiteral(WETFRONT_SPANISH)};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml{&file};
    std::set<QString> texts;
    QString source;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"source") {
            source = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"translation" && xml.readElementText() != source) {
            texts.insert(source);
        }
    }
    EXPECT_GT(texts.size(), 1000U);
    return texts;
}

void texts_in_sight(const QQuickItem& item, QList<const QQuickItem*>& texts) {
    if (!item.isVisible()) {
        return;
    }
    if (item.inherits("QQuickText")) {
        texts.append(&item);
    }
    for (const auto* child : item.childItems()) {
        texts_in_sight(*child, texts);
    }
}

QString without_blanks(QString text) {
    return text.remove(QRegularExpression{QStringLiteral("\\s")});
}

SheetContent content_of(const VisitFile& file) {
    const auto timings = timings_of(file);
    const auto advice = advise(file);
    const auto found = check(file, timings, advice, WhichSettings::found);
    const auto left = check(file, timings, advice, WhichSettings::left);
    return commissioning_sheet({file, timings, advice, found, left, 1, file.visit.started});
}

/// Pixels that are not white closer to an edge than 12 mm, of a page of 210 mm.
int ink_in_margins(const QImage& page) {
    const int margin = page.width() * 12 / 210;
    int count = 0;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const bool inside =
                x >= margin && x < page.width() - margin && y >= margin && y < page.height() - margin;
            count += !inside && (page.pixel(x, y) & 0xffffff) != 0xffffff ? 1 : 0;
        }
    }
    return count;
}

/// A visit to a house of the demo in the window, and the language chosen on the preferences.
class LanguageWalkTest : public testing::TestWithParam<QSize> {
protected:
    void SetUp() override {
        VisitFile file = example_visit();
        for (auto& pump : file.house.pumps) {
            pump.name += " P";  // a name that is no word of the program
        }
        const auto added = walk_.store().add(file);
        ASSERT_TRUE(added) << added.error().text();
        file.visit.id = Id{"visit-at-hand"};
        file.visit.signatures.clear();
        file.visit.marks.clear();
        ASSERT_TRUE(walk_.store().save(file.visit));
        walk_.session().openVisit(QStringLiteral("visit-at-hand"));
    }
    void choose_spanish() {
        walk_.hand().click(QStringLiteral("Language, units and light"));
        walk_.hand().click(QString::fromUtf8("español"));
        walk_.hand().click(QStringLiteral("Listo"));
    }
    void expect_no_english(const QString& where) {
        for (const auto& heard : walk_.hand().everything()) {
            EXPECT_FALSE(english_.contains(heard.name))
                << where.toStdString() << ": " << heard.name.toStdString();
        }
    }
    // A word that is longer than its place is broken between two letters, unless its letters may get smaller.
    static void expect_no_word_broken(const QQuickItem& text, const QString& words, const QString& where) {
        if (text.property("fontSizeMode").toInt() != 0) {
            return;
        }
        const QFontMetricsF metrics{text.property("font").value<QFont>()};
        for (const auto& word : words.split(QRegularExpression{QStringLiteral("[\\s/\\-]+")})) {
            EXPECT_LE(metrics.horizontalAdvance(word), text.width() + 1.0)
                << where.toStdString() << ": " << word.toStdString();
        }
    }
    void expect_nothing_cut_off(const QString& where) {
        const auto heard = walk_.hand().everything();
        ASSERT_FALSE(heard.empty());
        QList<const QQuickItem*> texts;
        texts_in_sight(*heard.front().item->window()->contentItem(), texts);
        ASSERT_GT(texts.size(), 5);
        for (const auto* text : texts) {
            const QString words = text->property("text").toString();
            expect_no_word_broken(*text, words, where);
            EXPECT_FALSE(text->property("truncated").toBool())
                << where.toStdString() << ": " << words.toStdString();
            EXPECT_LE(text->property("contentWidth").toReal(), text->width() + 1.0)
                << where.toStdString() << ": " << words.toStdString();
            EXPECT_LE(text->property("contentHeight").toReal(), text->height() + 1.0)
                << where.toStdString() << ": " << words.toStdString();
        }
    }

    Speech speech_{{}};
    std::set<QString> english_ = english_texts();
    Walk walk_{GetParam(), [this](const QString& chosen) { return speech_.speak(chosen); }};
};

TEST_P(LanguageWalkTest, spanish_is_spoken_at_once_and_english_again) {
    choose_spanish();
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("1. Seguridad")));
    EXPECT_TRUE(walk_.hand().shows(QString::fromUtf8("Idioma, unidades y luz")));
    EXPECT_FALSE(walk_.hand().shows(QStringLiteral("1. Safety")));
    walk_.hand().click(QString::fromUtf8("Idioma, unidades y luz"));
    walk_.hand().click(QStringLiteral("English"));
    walk_.hand().click(QStringLiteral("Done"));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("1. Safety")));
}

TEST_P(LanguageWalkTest, no_step_speaks_english_in_spanish_and_none_cuts_a_text_off) {
    choose_spanish();
    for (int step = 0; step < walk_.session().visit()->steps()->count(); ++step) {
        walk_.go_to(static_cast<Step>(step));
        const QString title = walk_.session().visit()->stepTitle();
        expect_no_english(title);
        expect_nothing_cut_off(title);
    }
}

TEST_P(LanguageWalkTest, the_field_to_sign_on_speaks_spanish) {
    choose_spanish();
    walk_.go_to(Step::sheet);
    auto* signatures = walk_.session().visit()->sheet()->signatures();
    signatures->draw(0);
    signatures->take();
    expect_no_english(QStringLiteral("the field"));
    expect_nothing_cut_off(QStringLiteral("the field"));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("Cancelar")));
    signatures->addStroke(QStringLiteral("500,400 900,700 1400,300"));
    signatures->take();
    walk_.session().visit()->sheet()->addOpenPoint(QStringLiteral("P"));
    ASSERT_FALSE(signatures->notice().isEmpty());
    expect_no_english(QStringLiteral("who signs"));
    expect_nothing_cut_off(QStringLiteral("who signs"));
}

TEST_P(LanguageWalkTest, the_houses_the_templates_and_the_preferences_speak_spanish) {
    choose_spanish();
    walk_.hand().click(QString::fromUtf8("Idioma, unidades y luz"));
    expect_no_english(QStringLiteral("preferences"));
    expect_nothing_cut_off(QStringLiteral("preferences"));
    walk_.hand().click(QStringLiteral("Plantillas de ajustes"));
    expect_no_english(QStringLiteral("templates"));
    expect_nothing_cut_off(QStringLiteral("templates"));
    for (const char* place : {"visit", "house", "houses"}) {
        walk_.hand().click(QString::fromUtf8("Atrás"));
        expect_no_english(QString::fromUtf8(place));
        expect_nothing_cut_off(QString::fromUtf8(place));
    }
}

TEST_P(LanguageWalkTest, a_sheet_is_made_in_spanish_while_the_screen_stays_english) {
    walk_.go_to(Step::sheet);
    walk_.hand().click(QString::fromUtf8("español"));
    walk_.hand().click(QStringLiteral("A4"));
    walk_.hand().click(QStringLiteral("Save as PDF"));
    const auto files = QDir{walk_.documents()}.entryInfoList({QStringLiteral("*.pdf")});
    ASSERT_EQ(files.size(), 1);
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {files.front().filePath(), QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text = without_blanks(QString::fromUtf8(reader.readAllStandardOutput()));
    const auto content = content_of(walk_.session().visit()->file());
    const Formatter spanish{UnitSystem::us, QLocale::c(), texts_in(QStringLiteral("es"))};
    int looked_for = 0;
    const auto expect_said = [&](const Message& message) {
        const QString said = spanish.text(message);
        EXPECT_TRUE(text.contains(without_blanks(said))) << said.toStdString();
        ++looked_for;
    };
    expect_said(content.title);
    for (const auto& block : content.blocks) {
        if (const auto* heading = std::get_if<SheetHeading>(&block)) {
            expect_said(heading->text);
        } else if (const auto* findings = std::get_if<SheetFindings>(&block)) {
            for (const auto& finding : findings->findings) {
                expect_said(finding.message);
            }
        }
    }
    EXPECT_GT(looked_for, 12);
    for (const char* words :
         {"Hojadepuestaenmarcha", "Lecturas", "Precauciones", "Firmas", "BORRADOR,sinfirmar"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << " in " << text.toStdString();
    }
    for (const char* english : {"Readings", "Signatures", "Cautions", "DRAFT", "Remedy:"}) {
        EXPECT_FALSE(text.contains(QLatin1String{english})) << english;
    }
    const auto& sheet = *walk_.session().visit()->sheet();
    ASSERT_GT(sheet.pageCount(), 1);
    for (int page = 0; page < sheet.pageCount(); ++page) {
        EXPECT_EQ(ink_in_margins(sheet.page(page)), 0) << "page " << page + 1;
    }
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("Save as PDF")));
}

INSTANTIATE_TEST_SUITE_P(Screens, LanguageWalkTest, testing::Values(QSize(1024, 600), QSize(600, 1024)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
