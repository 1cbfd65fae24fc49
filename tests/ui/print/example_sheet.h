// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QString>
#include <QStringList>
#include <string>
#include <vector>

#include "base/whole_file.h"
#include "format/formatter.h"
#include "format/language.h"
#include "print/pdf.h"
#include "records/sheet_content.h"

namespace wetfront::ui::test {

inline const Formatter si{UnitSystem::si};

/// One who reads Spanish where the decimal mark is a point.
inline Formatter spanish_reader() {
    return Formatter{UnitSystem::si, QLocale::c(), texts_in(QStringLiteral("es"))};
}

/// Every kind of block once or more, all invented; `example_text` is what a reader finds in it, in order, in
/// SI units.
inline std::vector<SheetBlock> example_blocks() {
    std::vector<SheetBlock> blocks;
    blocks.push_back(SheetHeading{"Offices and affairs"});
    blocks.push_back(
        SheetParagraph{"Sufficient, offline, affluent, first fill of the coffin-shaped baffle.", false});
    blocks.push_back(SheetParagraph{Message{"Outside it is %1 hot.", {any(celsius(35.0))}}, true});
    SheetFacts facts;
    facts.facts = {
        {"Farm", verbatim("Invented Creek")},
        {"House", verbatim("House 3")},
        {"Persons",
         verbatim("A technician who has a very long title, with his office's full address behind it, and the "
                  "grower, who was there all day and was told what was found, what was advised and what was "
                  "left, and who asked for the file of it as well as for the paper")},
        {"Bird age", Message{"%1 days", {38}}}};
    blocks.push_back(facts);
    SheetTable table;
    table.columns = {"Setting", "As found", "As left"};
    table.widths = {0.5, 0.25, 0.25};
    table.rows = {
        {{"Period"}, {Message{"%1", {any(seconds(300))}}}, {Message{"%1", {any(seconds(300))}}}},
        {{"Base on-time"}, {Message{"%1", {any(seconds(300))}}, true}, {Message{"%1", {any(seconds(85))}}}}};
    blocks.push_back(table);
    SheetTimeline timeline;
    timeline.title = "One period, to scale";
    CycleStrip found;
    found.label = "found";
    found.period_s = 300.0;
    found.on_s = 240.0;
    found.fill_s = 45.0;
    found.wet_through_s = 165.0;
    found.run_off_s = 40.0;
    found.ceiling_s = 280.0;
    CycleStrip unknown;
    unknown.label = "left";
    timeline.strips = {found, unknown};
    blocks.push_back(timeline);
    SheetBanks banks;
    banks.banks = {{verbatim("North bank"), true, 24.0, 1.5, Message{"%1 long", {any(24.0_m)}}},
                   {verbatim("South bank"), false, 18.0, 1.8, Message{"%1 long", {any(18.0_m)}}}};
    blocks.push_back(banks);
    SheetFindings findings;
    findings.findings = {
        {Severity::harm, "Timer 1", "The pads stop in the heat.", "Take the cut-off out.", "a source"},
        {Severity::fault, "Timer 2", "The far end stays dry.", "Set at least 85 s.", "another source"},
        {Severity::waste, "Timer 3", "The pump never rests.", {}, ""},
        {Severity::note, "North bank", "Read from a wet pad.", "Read it again.", ""}};
    blocks.push_back(findings);
    blocks.push_back(SheetPhotos{{{"", "Photo 1. North bank"}}});
    SheetChecks checks;
    checks.lines = {{"Breaker on", true, "", "done"}, {"Make-up open", false, "float sticks", "NOT done"}};
    blocks.push_back(checks);
    SheetCautions cautions;
    cautions.lines = {{SignalWord::danger, "Water and electricity."},
                      {SignalWord::notice, "Shut the flush valve."}};
    blocks.push_back(cautions);
    SheetSignatures signatures;
    signatures.lines = {
        {"Technician", "T. Example", "2026-07-01 14:22"},
        {"Grower", "", ""},
        {"Owner", "O. Example", "2026-07-01 14:20", {{{{200, 700}, {900, 150}, {2300, 800}}}}}};
    blocks.push_back(signatures);
    blocks.push_back(SheetCode{"Wetfront visit visit-17", {"Visit visit-17", "Its hash"}});
    return blocks;
}

inline SheetContent sheet_of(std::vector<SheetBlock> blocks) {
    SheetContent content;
    content.title = "Commissioning sheet";
    content.id = "visit-17";
    content.revision = 2;
    content.running_head = verbatim("Plover Pad Service, Invented Creek");
    content.blocks = std::move(blocks);
    return content;
}

inline SheetContent example_sheet() {
    return sheet_of(example_blocks());
}

inline QStringList example_text() {
    return {"Commissioning sheet",
            "Offices and affairs",
            "Sufficient, offline, affluent, first fill of the coffin-shaped baffle.",
            "Outside it is 35 °C hot.",
            "Farm",
            "Invented Creek",
            "House",
            "House 3",
            "Persons",
            "A technician who has a very long title, with his office's full address behind it, and the "
            "grower, who was "
            "there all day and was told what was found, what was advised and what was left, and who asked "
            "for the file of "
            "it as well as for the paper",
            "Bird age",
            "38 days",
            "Setting",
            "As found",
            "As left",
            "Period",
            "5 min",
            "5 min",
            "Base on-time",
            "≠ 5 min",
            "85 s",
            "One period, to scale",
            "found",
            "240 s on, every 5 min",
            "from a dry pad",
            "left",
            "No cycle known",
            "0",
            "1",
            "2",
            "3",
            "4",
            "5 min",
            "header fills",
            "pump runs, header full",
            "pad takes up water; pump end first, far end last",
            "wet through, drips",
            "pump off, still drips",
            "pad rests",
            "first dry patch",
            "base on-time",
            "on-time ceiling",
            "on-time found",
            "North bank",
            "South bank",
            "24 m long",
            "18 m long",
            "Harm",
            "Timer 1",
            "The pads stop in the heat.",
            "Remedy: Take the cut-off out.",
            "Source: a source",
            "Fault",
            "Timer 2",
            "The far end stays dry.",
            "Remedy: Set at least 85 s.",
            "Source: another source",
            "Waste",
            "Timer 3",
            "The pump never rests.",
            "Note",
            "North bank",
            "Read from a wet pad.",
            "Remedy: Read it again.",
            "The photo itself is not at hand here; the record names it.",
            "Photo 1. North bank",
            "done: Breaker on",
            "NOT done: Make-up open",
            "Note: float sticks",
            "DANGER",
            "Water and electricity.",
            "NOTICE",
            "Shut the flush valve.",
            "Technician",
            "Grower",
            "T. Example",
            "Signed 2026-07-01 14:22",
            "Name, signature, date",
            "Owner",
            "O. Example",
            "Signed 2026-07-01 14:20, drawn on the screen",
            "Visit visit-17",
            "Its hash"};
}

/// The sheet as a file, for programs that read one.
inline Result<void> write_pdf(const SheetContent& content, const std::filesystem::path& file, Paper paper,
                              const Formatter& formatter) {
    WF_TRY(const QByteArray bytes, pdf_bytes(content, paper, formatter));
    return write_whole(file, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

/// What a program of poppler-utils writes to its output; a program that fails fails the test.
inline QString output_of(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    const bool finished = process.waitForFinished(60'000);
    EXPECT_TRUE(finished && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0)
        << program.toStdString() << ": " << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// The text of each page, in the order in which it was painted.
inline QStringList page_texts(const QString& file) {
    QStringList pages = output_of("pdftotext", {"-raw", file, "-"}).split(u'\f');
    pages.removeLast();  // each page ends with a form feed
    return pages;
}

inline QString without_blanks(QString text) {
    text.remove(QRegularExpression{"\\s"});
    return text;
}

}  // namespace wetfront::ui::test
