// SPDX-License-Identifier: Apache-2.0
#include "desktop/sheet_paper.h"

#include <QPrintDialog>
#include <QPrinter>

#include "base/whole_file.h"
#include "desktop/print_system.h"
#include "print/pdf.h"

namespace wetfront::ui {
namespace {

constexpr double screen_dots_per_inch = 96.0;

Result<void> write(const QByteArray& pdf, const QString& file) {
    return write_whole(file.toStdString(), {pdf.constData(), static_cast<std::size_t>(pdf.size())});
}

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
        WF_CHECK(write(pdf, file));
        return true;
    }
    WF_CHECK(print_file_bytes(pdf, printer.printerName(), printer.copyCount()));
    return true;
}

/// To a file there is the folder, and pages are those of each sheet.
std::optional<PrintFiles> ask_printer_by_dialog() {
    QPrinter printer{QPrinter::HighResolution};
    QPrintDialog dialog{&printer};
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
    dialog.setOption(QAbstractPrintDialog::PrintToFile, false);
    if (dialog.exec() != QDialog::Accepted) {
        return std::nullopt;
    }
    return [name = printer.printerName(), copies = printer.copyCount()](const QStringList& files) {
        return print_files(files, name, copies);
    };
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
    paper.write = write;
    paper.print = print_with_dialog;
    paper.print_pdf = print_pdf_with_dialog;
    paper.ask_printer = ask_printer_by_dialog;
    paper.folder = folder;
    return paper;
}

}  // namespace wetfront::ui
