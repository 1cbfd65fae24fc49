// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>
#include <QVariantMap>

#include "items/bank_item.h"

namespace wetfront::ui {

/// A drawing with text, made from one map. An empty map: nothing is drawn.
class PictureItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QVariantMap picture MEMBER picture_ NOTIFY picture_changed)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY picture_changed)

public:
    explicit PictureItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) final;

signals:
    void picture_changed();

private:
    /// `font` has its size in pixels.
    virtual void draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const = 0;

    QVariantMap picture_;
    QFont font_;
};

}  // namespace wetfront::ui
