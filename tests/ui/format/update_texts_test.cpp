// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace {

void write(const QString& path, const QByteArray& text) {
    ASSERT_TRUE(QDir{}.mkpath(QFileInfo{path}.path()));
    QFile file{path};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly)) << path.toStdString();
    file.write(text);
}

/// "context|source" of every entry in a catalogue.
QStringList entries(const QString& path) {
    QFile file{path};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml{&file};
    QStringList list;
    QString context;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"source") {
            list << context + u'|' + xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return list;
}

/// Texts that stand untranslated in a catalogue, "context|source".
QStringList untranslated(const QString& path) {
    QFile file{path};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml{&file};
    QStringList list;
    QString context;
    QString source;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"source") {
            source = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"translation" &&
                   (xml.attributes().hasAttribute("type") || xml.readElementText().isEmpty())) {
            list << context + u'|' + source;
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return list;
}

class UpdateTextsTest : public testing::Test {
protected:
    int run(const QString& sources) {
        QProcess process;
        process.setProcessChannelMode(QProcess::ForwardedChannels);
        process.start(WETFRONT_CMAKE,
                      {"-DLUPDATE=" WETFRONT_LUPDATE, "-DSOURCE_DIR=" + sources,
                       "-DCOPY_DIR=" + folder_.filePath("copy"),
                       "-DCATALOGUES=" + folder_.filePath("catalogues"), "-P", WETFRONT_UPDATE_TEXTS});
        EXPECT_TRUE(process.waitForFinished(120'000));
        return process.exitCode();
    }

    QTemporaryDir folder_;
    QString catalogue_ = folder_.filePath("catalogues/x_es.ts");
    QByteArray empty_ =
        "<?xml version=\"1.0\" encoding=\"utf-8\"?><!DOCTYPE TS><TS version=\"2.1\" language=\"es\"></TS>";
};

TEST_F(UpdateTextsTest, texts_of_the_core_stand_in_one_context_wherever_they_are_written) {
    write(catalogue_, empty_);
    write(folder_.filePath("tree/core/a.h"),
          "namespace w { struct F { const char* t = WF_TEXT(\"in a class\"); }; }\n");
    write(folder_.filePath("tree/core/a.cpp"),
          "#define WF_TEXT(text) text\nnamespace w { const char* f() { return WF_TEXT(\"joined \" \"from; "
          "two [%1]\"); }\n"
          "const char* F::g() { return WF_TEXT(\n    \"on its own line\"); } }\n");
    write(folder_.filePath("tree/ui/b.cpp"),
          "QString s() { return QCoreApplication::translate(\"sheet\", \"page %1\"); }\n");
    write(folder_.filePath("tree/app/C.qml"), "import QtQuick\nText { text: qsTr(\"on a page\") }\n");
    ASSERT_EQ(run(folder_.filePath("tree")), 0);
    QStringList found = entries(catalogue_);
    found.sort();
    EXPECT_EQ(found, (QStringList{"C|on a page", "core|in a class", "core|joined from; two [%1]",
                                  "core|on its own line", "sheet|page %1"}));
}

TEST_F(UpdateTextsTest, a_translation_that_was_made_is_kept) {
    write(
        catalogue_,
        "<?xml version=\"1.0\" encoding=\"utf-8\"?><!DOCTYPE TS><TS version=\"2.1\" language=\"es\"><context>"
        "<name>core</name><message><source>Note</source><translation>Nota</translation></message>"
        "</context></TS>");
    write(folder_.filePath("tree/core/a.cpp"), "const char* f() { return WF_TEXT(\"Note\"); }\n");
    ASSERT_EQ(run(folder_.filePath("tree")), 0);
    QFile file{catalogue_};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("<translation>Nota</translation>"));
}

TEST_F(UpdateTextsTest, the_texts_of_this_program_are_found) {
    write(catalogue_, empty_);
    ASSERT_EQ(run(QFileInfo{WETFRONT_UPDATE_TEXTS}.dir().filePath("../..")), 0);
    const QStringList found = entries(catalogue_);
    EXPECT_TRUE(found.contains("core|Base on-time"));          // core/records/settings.cpp
    EXPECT_TRUE(found.contains("core|The pump never rests"));  // ui/charts/strip_painter.cpp
    EXPECT_TRUE(found.contains("core|page %1 of %2"));         // ui/print/sheet_pages.cpp
}

TEST_F(UpdateTextsTest, every_text_of_this_program_is_translated_in_every_catalogue) {
    const QDir tree = QFileInfo{WETFRONT_UPDATE_TEXTS}.dir().filePath("../..");
    const QDir shipped = tree.filePath("resources/translations");
    const auto catalogues = shipped.entryList({"*.ts"});
    ASSERT_FALSE(catalogues.isEmpty());
    ASSERT_TRUE(QDir{}.mkpath(folder_.filePath("catalogues")));
    for (const auto& name : catalogues) {
        ASSERT_TRUE(QFile::copy(shipped.filePath(name), folder_.filePath("catalogues/" + name)));
    }
    ASSERT_EQ(run(tree.path()), 0);
    for (const auto& name : catalogues) {
        const QString brought_up_to_date = folder_.filePath("catalogues/" + name);
        EXPECT_EQ(untranslated(brought_up_to_date), QStringList{})
            << name.toStdString() << ": build update_texts, then translate these";
        auto before = entries(shipped.filePath(name));
        auto now = entries(brought_up_to_date);
        before.sort();
        now.sort();
        EXPECT_EQ(before, now) << name.toStdString() << " is not what update_texts makes of it";
    }
}

// A text is looked up in the context of the class that says it; a namespace has none.
TEST_F(UpdateTextsTest, no_text_of_this_program_stands_in_a_context_that_nobody_asks) {
    write(catalogue_, empty_);
    ASSERT_EQ(run(QFileInfo{WETFRONT_UPDATE_TEXTS}.dir().filePath("../..")), 0);
    for (const auto& entry : entries(catalogue_)) {
        EXPECT_FALSE(entry.startsWith("wetfront::ui|") || entry.startsWith("wetfront|") ||
                     entry.startsWith('|'))
            << entry.toStdString();
    }
}

TEST_F(UpdateTextsTest, no_catalogue_is_an_error) {
    write(folder_.filePath("tree/core/a.cpp"), "const char* f() { return WF_TEXT(\"Note\"); }\n");
    EXPECT_NE(run(folder_.filePath("tree")), 0);
}

}  // namespace
