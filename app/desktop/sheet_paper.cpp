// SPDX-License-Identifier: Apache-2.0
#include "desktop/sheet_paper.h"

#include <QPrintDialog>
#include <QPrinter>

#include "print/pdf.h"

namespace wetfront::ui {
namespace {

constexpr double screen_dots_per_inch = 96.0;

Result<bool> print_with_dialog(const SheetContent& content, const Formatter& formatter) {
    QPrinter printer{QPrinter::HighResolution};
    QPrintDialog dialog{&printer};
    if (dialog.exec() != QDialog::Accepted) {
        return false;
    }
    WF_CHECK(paint_sheet(printer, content, formatter));
    return true;
}

}  // namespace

SheetPaper sheet_paper(const QString& folder) {
    SheetPaper paper;
    paper.pages = [](const SheetContent& content, const Formatter& formatter) {
        return preview_pages(content, Paper::letter, formatter, screen_dots_per_inch);
    };
    paper.pdf = [](const SheetContent& content, const Formatter& formatter) {
        return pdf_bytes(content, Paper::letter, formatter);
    };
    paper.write = [](const QByteArray& pdf, const QString& file) {
        return write_whole(pdf, std::filesystem::path{file.toStdString()});
    };
    paper.print = print_with_dialog;
    paper.folder = folder;
    return paper;
}

}  // namespace wetfront::ui
