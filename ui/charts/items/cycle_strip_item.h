// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantList>

#include "items/lettered_item.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

/// Cycles as strips under one axis. `strips` is a list of maps, times in seconds from pump start: label
/// (text), period, on, fill (0 where missing), continuous (bool), ceiling, wetThrough, runOff, dryPatch,
/// dripReturns, and lowestLevel, a share (left out where not known).
class CycleStripItem : public wetfront::ui::LetteredItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList strips MEMBER strips_ NOTIFY strips_changed)

public:
    explicit CycleStripItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void strips_changed();

private:
    QVariantList strips_;
};

/// The strip that such a map describes.
[[nodiscard]] CycleStrip strip_of(const QVariantMap& map);

/// One sign of a strip, for a legend beside it. `sign` counts from 0 in the order of all_strip_signs; `text`
/// says it.
class StripSignItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int sign MEMBER sign_ NOTIFY sign_changed)
    Q_PROPERTY(QString text READ text NOTIFY sign_changed)

public:
    explicit StripSignItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    [[nodiscard]] QString text() const;

signals:
    void sign_changed();

private:
    int sign_ = 0;
};

}  // namespace wetfront::ui
