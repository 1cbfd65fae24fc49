// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>

#include "items/bank_item.h"

namespace wetfront::ui {

/// A drawing with text in the font of the page.
class LetteredItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY font_changed)

public:
    explicit LetteredItem(QQuickItem* parent = nullptr);

signals:
    void font_changed();

protected:
    /// With its size in pixels.
    [[nodiscard]] QFont sized_font() const;

private:
    QFont font_;
};

}  // namespace wetfront::ui
