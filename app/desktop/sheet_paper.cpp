// SPDX-License-Identifier: Apache-2.0
#include "desktop/sheet_paper.h"

#include <QPrintDialog>
#include <QPrinter>

#include "desktop/print_system.h"
#include "print/pdf.h"

namespace wetfront::ui {
namespace {

constexpr double screen_dots_per_inch = 96.0;

Result<bool> print_with_dialog(const SheetContent& content, const Formatter& formatter, Paper size) {
    QPrinter printer{QPrinter::HighResolution};
    printer.setPageSize(page_size_of(size));
    QPrintDialog dialog{&printer};
    if (dialog.exec() != QDialog::Accepted) {
        return false;
    }
    WF_CHECK(paint_sheet(printer, content, formatter));
    return true;
}

Result<bool> print_pdf_with_dialog(const QByteArray& pdf) {
    QPrinter printer{QPrinter::HighResolution};
    QPrintDialog dialog{&printer};
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);  // a signed sheet is printed whole
    if (dialog.exec() != QDialog::Accepted) {
        return false;
    }
    if (const QString file = printer.outputFileName(); !file.isEmpty()) {
        WF_CHECK(write_whole(pdf, std::filesystem::path{file.toStdString()}));
        return true;
    }
    WF_CHECK(print_file_bytes(pdf, printer.printerName(), printer.copyCount()));
    return true;
}

}  // namespace

SheetPaper sheet_paper(const QString& folder) {
    SheetPaper paper;
    paper.pages = [](const SheetContent& content, const Formatter& formatter, Paper size) {
        return preview_pages(content, size, formatter, screen_dots_per_inch);
    };
    paper.pdf = [](const SheetContent& content, const Formatter& formatter, Paper size) {
        return pdf_bytes(content, size, formatter);
    };
    paper.write = [](const QByteArray& pdf, const QString& file) {
        return write_whole(pdf, std::filesystem::path{file.toStdString()});
    };
    paper.print = print_with_dialog;
    paper.print_pdf = print_pdf_with_dialog;
    paper.folder = folder;
    return paper;
}

}  // namespace wetfront::ui
