// SPDX-License-Identifier: Apache-2.0
#include <QGuiApplication>
#include <iostream>

#include "cli/printer.h"
#include "format/language.h"
#include "print/pdf.h"

namespace wetfront {
namespace {

// Qt's warnings are about a desktop session, which a file does not need; what fails comes back as an error.
void only_severe(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) {
        std::cerr << "wetfront-cli: painter: " << text.toStdString() << '\n';
    }
}

Result<void> write_sheet(const SheetOrder& order) {
    // Painting needs fonts and therefore an application object, but no screen.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(only_severe);
    char program[] = "wetfront-cli";
    char* arguments[] = {program, nullptr};
    int count = 1;
    const QGuiApplication application{count, arguments};
    const bool spanish = order.language == SheetLanguage::spanish;
    const auto language = spanish ? QStringLiteral("es") : QStringLiteral("en");
    // The same numbers on every machine, whatever its locale.
    const auto locale = spanish ? ui::locale_in(language, QLocale::c()) : QLocale::c();
    const ui::Formatter reader{order.units, locale, ui::texts_in(language)};
    const auto paper = order.paper == SheetPaperSize::letter ? ui::Paper::letter : ui::Paper::a4;
    return ui::write_pdf(order.content, order.file, paper, reader);
}

}  // namespace

SheetPrinter printer_of_this_build() {
    return write_sheet;
}

}  // namespace wetfront
