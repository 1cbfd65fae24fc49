// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QString>

namespace wetfront::ui {

/// A line drawing from one path, for pictograms and signs. Qt Quick Shapes would do the same, but its
/// software renderer (Qt 6.4) uses scene-graph nodes after they are gone when a page is taken down, and
/// crashes.
class LineArtItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString path MEMBER path_ NOTIFY drawing_changed)  ///< SVG path data; empty: nothing is drawn
    Q_PROPERTY(
        qreal grid MEMBER grid_ NOTIFY drawing_changed)  ///< side of the square it is drawn on; 0: in pixels
    Q_PROPERTY(QColor colour MEMBER colour_ NOTIFY drawing_changed)       ///< of the line
    Q_PROPERTY(QColor fill MEMBER fill_ NOTIFY drawing_changed)           ///< transparent: not filled
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY drawing_changed)  ///< of the line, pixels

public:
    explicit LineArtItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void drawing_changed();

private:
    QString path_;
    qreal grid_ = 24.0;
    QColor colour_{Qt::black};
    QColor fill_{Qt::transparent};
    qreal thickness_ = 1.0;
};

}  // namespace wetfront::ui
