// SPDX-License-Identifier: Apache-2.0
#include <QGuiApplication>
#include <iostream>
#include <memory>
#include <optional>

#include "cli/printer.h"
#include "format/language.h"
#include "photos/photo_file.h"
#include "print/pdf.h"

namespace wetfront {
namespace {

// Qt's warnings are about a desktop session, which a file does not need; what fails comes back as an error.
void only_severe(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) {
        std::cerr << "wetfront-cli: painter: " << text.toStdString() << '\n';
    }
}

/// Painting needs fonts and therefore an application object, but no screen. One for all sheets of a run: each
/// would read the fonts anew.
class Painter {
public:
    Result<std::string> paint(const SheetOrder& order) {
        if (!application_) {
            qputenv("QT_QPA_PLATFORM", "offscreen");
            qInstallMessageHandler(only_severe);
            application_.emplace(count_, arguments_);
        }
        const bool spanish = order.language == SheetLanguage::spanish;
        const auto language = spanish ? QStringLiteral("es") : QStringLiteral("en");
        // The same numbers on every machine, whatever its locale.
        const auto locale = spanish ? ui::locale_in(language, QLocale::c()) : QLocale::c();
        const ui::Formatter reader{order.units, locale, ui::texts_in(language)};
        const auto paper = order.paper == SheetPaperSize::letter ? ui::Paper::letter : ui::Paper::a4;
        WF_TRY(const auto bytes, ui::pdf_bytes(order.content, paper, reader));
        return bytes.toStdString();
    }

private:
    // Qt keeps references to these.
    char program_[13] = "wetfront-cli";
    char* arguments_[2] = {program_, nullptr};
    int count_ = 1;
    std::optional<QGuiApplication> application_;
};

}  // namespace

SheetPrinter printer_of_this_build() {
    return [painter = std::make_shared<Painter>()](const SheetOrder& order) { return painter->paint(order); };
}

PhotoTaker photo_taker_of_this_build() {
    return [](const std::string& file, bool keep_camera_data) -> Result<std::string> {
        WF_TRY(const auto jpeg,
               ui::photo_of(QString::fromStdString(file),
                            keep_camera_data ? ui::CameraData::kept : ui::CameraData::dropped));
        return jpeg.toStdString();
    };
}

}  // namespace wetfront
