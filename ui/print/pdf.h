// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QImage>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QSizeF>
#include <vector>

#include "base/result.h"
#include "format/formatter.h"
#include "format/paper.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

[[nodiscard]] QPageSize page_size_of(Paper paper);
[[nodiscard]] QSizeF size_of(Paper paper);  ///< points, upright

// All need a QGuiApplication, for its fonts; the platform may be "offscreen".

/// The sheet as PDF: vector, its text can be read back.
[[nodiscard]] Result<QByteArray> pdf_bytes(const SheetContent& content, Paper paper,
                                           const Formatter& formatter);

/// The same pages onto a printer or another device that has pages, in its paper size; its page ranges are
/// kept to. Changes the device's margins to none. An error (storage) if the device does not take them.
[[nodiscard]] Result<void> paint_sheet(QPagedPaintDevice& device, const SheetContent& content,
                                       const Formatter& formatter);

/// The pages as pictures for a screen, `dots_per_inch` above 0.
[[nodiscard]] std::vector<QImage> preview_pages(const SheetContent& content, Paper paper,
                                                const Formatter& formatter, double dots_per_inch);

}  // namespace wetfront::ui
