// SPDX-License-Identifier: Apache-2.0
#include "print/pdf.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageRanges>
#include <QPdfWriter>
#include <cmath>

#include "print/sheet_pages.h"

namespace wetfront::ui {
namespace {

Error not_painted() {
    return storage_error("sheet", "the device does not take pages",
                         "nothing was printed; try another printer or a file");
}

}  // namespace

QPageSize page_size_of(Paper paper) {
    switch (paper) {
        case Paper::letter:
            return QPageSize{QPageSize::Letter};
        case Paper::a4:
            return QPageSize{QPageSize::A4};
    }
    return QPageSize{};
}

QSizeF size_of(Paper paper) {
    return page_size_of(paper).size(QPageSize::Point);
}

Result<void> paint_sheet(QPagedPaintDevice& device, const SheetContent& content, const Formatter& formatter) {
    QPageLayout layout = device.pageLayout();
    layout.setMode(QPageLayout::FullPageMode);
    layout.setMargins({});
    device.setPageLayout(layout);
    const SheetPages pages{content, device.pageLayout().fullRect(QPageLayout::Point).size(), formatter};
    const QPageRanges wanted = device.pageRanges();

    QPainter painter;
    bool begun = false;
    for (int page = 0; page < pages.count(); ++page) {
        if (!wanted.isEmpty() && !wanted.contains(page + 1)) {
            continue;
        }
        if (begun ? !device.newPage() : !painter.begin(&device)) {
            return not_painted();
        }
        begun = true;
        painter.save();
        painter.scale(device.logicalDpiX() / units_per_inch, device.logicalDpiY() / units_per_inch);
        pages.paint(painter, page);
        painter.restore();
    }
    if (begun && !painter.end()) {
        return not_painted();
    }
    return boost::outcome_v2::success();
}

// In memory first: QPdfWriter does not tell when its device takes less than it was given.
Result<QByteArray> pdf_bytes(const SheetContent& content, Paper paper, const Formatter& formatter) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setResolution(static_cast<int>(units_per_inch));
    writer.setPageSize(page_size_of(paper));
    writer.setTitle(formatter.text(content.title));
    writer.setCreator(QStringLiteral("Wetfront"));
    WF_CHECK(paint_sheet(writer, content, formatter));
    return bytes;
}

std::vector<QImage> preview_pages(const SheetContent& content, Paper paper, const Formatter& formatter,
                                  double dots_per_inch) {
    const SheetPages pages{content, size_of(paper), formatter};
    const double scale = dots_per_inch / units_per_inch;
    const QSizeF size = size_of(paper) * (dots_per_inch / 72.0);
    std::vector<QImage> images;
    for (int page = 0; page < pages.count(); ++page) {
        QImage image{static_cast<int>(std::ceil(size.width())), static_cast<int>(std::ceil(size.height())),
                     QImage::Format_RGB32};
        image.fill(Qt::white);
        QPainter painter{&image};
        painter.scale(scale, scale);
        pages.paint(painter, page);
        painter.end();
        images.push_back(std::move(image));
    }
    return images;
}

}  // namespace wetfront::ui
