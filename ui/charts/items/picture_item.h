// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "items/lettered_item.h"

namespace wetfront::ui {

/// A drawing made from one map. An empty map: nothing is drawn.
class PictureItem : public wetfront::ui::LetteredItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QVariantMap picture MEMBER picture_ NOTIFY picture_changed)

public:
    explicit PictureItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) final;

signals:
    void picture_changed();

private:
    /// `font` has its size in pixels.
    virtual void draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const = 0;

    QVariantMap picture_;
};

}  // namespace wetfront::ui
