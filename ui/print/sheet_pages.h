// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <QSizeF>
#include <QString>
#include <vector>

#include "format/formatter.h"
#include "print/flow.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

/// A sheet laid out on pages of one size, the same on every device. Needs a QGuiApplication (fonts). Keeps
/// nothing of the content or the formatter.
class SheetPages {
public:
    /// `page` in points, at least 400 x 500.
    SheetPages(const SheetContent& content, QSizeF page, const Formatter& formatter);

    [[nodiscard]] int count() const { return static_cast<int>(pages_.size()); }
    /// Page 0 to count() - 1. The painter's origin is the page's top left corner, its unit is that of flow.h.
    void paint(QPainter& painter, int page) const;

private:
    void paint_draft(QPainter& painter) const;

    QSizeF size_;  ///< sheet units
    QRectF body_;
    std::vector<Line> running_head_;
    std::vector<Line> running_id_;
    QString draft_;  ///< the word across the page; empty once signed
    QString draft_footer_;
    std::vector<Page> pages_;
    std::vector<QString> page_numbers_;  ///< "page 1 of 3"
};

}  // namespace wetfront::ui
