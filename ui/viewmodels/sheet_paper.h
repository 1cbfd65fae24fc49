// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QImage>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "base/whole_file.h"
#include "format/formatter.h"
#include "format/paper.h"
#include "records/sheet_content.h"
#include "viewmodels/media.h"
#include "viewmodels/preferences.h"

namespace wetfront::ui {

/// keep_file().
[[nodiscard]] std::optional<FileFailure> keep_bytes(const QByteArray& bytes, const QString& file);

/// Prints PDF files as one job, each from a new page on, as they are; from any thread.
using PrintFiles = std::function<Result<void>(const QStringList& files)>;

/// How a sheet gets onto paper; joined to the painter by the program, so that view models draw nothing.
struct SheetPaper {
    std::function<std::vector<QImage>(const SheetContent&, const Formatter&, Paper)>
        pages;  ///< as on paper, for looking at
    std::function<Result<QByteArray>(const SheetContent&, const Formatter&, Paper)> pdf;  ///< from any thread
    /// Whole or not at all: an error leaves what was there before.
    std::function<Result<void>(const QByteArray& pdf, const QString& file)> write;
    std::function<Result<bool>(const SheetContent&, const Formatter&, Paper)>
        print;  ///< asks for a printer; false: not printed
    /// The same for a sheet that was kept: these bytes and no others.
    std::function<Result<bool>(const QByteArray& pdf)> print_pdf;
    /// Asks for a printer, for many sheets; none: no printer was chosen.
    std::function<std::optional<PrintFiles>()> ask_printer = {};
    QString folder = {};  ///< where PDFs go unless asked otherwise
    /// Language, units and paper of the sheets, as they were chosen last; never chosen: as on screen, Letter.
    Preferences chosen = {};
    QString language = {};  ///< that the program speaks; empty: English
    Media media = plugged_in_media;
    /// How a file gets onto a stick or into a folder, read back; from any thread.
    std::function<std::optional<FileFailure>(const QByteArray& bytes, const QString& file)> keep = keep_bytes;
};

}  // namespace wetfront::ui
