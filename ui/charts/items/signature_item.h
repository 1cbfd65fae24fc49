// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>
#include <QQuickWindow>
#include <QStringList>
#include <optional>
#include <vector>

#include "records/stroke.h"

namespace wetfront::ui {

/// The field that a person signs on, or a picture of it: finger, pen or mouse draws, and each line is there
/// as it is drawn. A finished line is handed on, thinned, and goes on being shown only if it comes back in
/// `strokes`. A line ends where it leaves the field. One finger draws at a time; a hand that rests on the
/// field gives way to it. The item is as wide as `aspect` times its height.
class SignatureItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList strokes READ strokes WRITE set_strokes NOTIFY strokes_changed)
    Q_PROPERTY(bool drawable READ drawable WRITE set_drawable NOTIFY drawable_changed)  ///< takes input
    Q_PROPERTY(QColor lineColor MEMBER line_color_ NOTIFY look_changed)
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY look_changed)  ///< of the line, pixels
    Q_PROPERTY(qreal aspect READ aspect CONSTANT)

public:
    explicit SignatureItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] QStringList strokes() const;
    void set_strokes(const QStringList& strokes);
    [[nodiscard]] bool drawable() const { return drawable_; }
    void set_drawable(bool drawable);
    [[nodiscard]] static qreal aspect();

signals:
    void strokeDrawn(const QString& points);  ///< Stroke::text()
    void strokes_changed();
    void drawable_changed();
    void look_changed();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void touchEvent(QTouchEvent* event) override;
    void touchUngrabEvent() override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void go_on(QPointF to);
    void finish();
    void drop();
    void watch(QQuickWindow* window);
    [[nodiscard]] bool rests() const;

    std::vector<Stroke> strokes_;
    Stroke drawn_;               ///< the line that is being drawn, with every point
    std::optional<int> finger_;  ///< that draws it
    bool drawable_ = false;
    QColor line_color_{Qt::black};
    qreal thickness_ = 1.0;
    QPointer<QQuickWindow> window_;
};

}  // namespace wetfront::ui
