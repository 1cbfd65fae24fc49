// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QList>
#include <QQuickPaintedItem>

#include "charts/ink.h"

namespace wetfront::ui {

/// What both drawings share: their colours, from the theme of the page.
class InkedItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QColor lineColor MEMBER line_color_ NOTIFY ink_changed)
    Q_PROPERTY(QColor faintColor MEMBER faint_color_ NOTIFY ink_changed)
    Q_PROPERTY(QColor groundColor MEMBER ground_color_ NOTIFY ink_changed)
    Q_PROPERTY(QColor waterColor MEMBER water_color_ NOTIFY ink_changed)
    Q_PROPERTY(QColor warmColor MEMBER warm_color_ NOTIFY ink_changed)
    Q_PROPERTY(qreal stroke MEMBER stroke_ NOTIFY ink_changed)

public:
    explicit InkedItem(QQuickItem* parent = nullptr);

signals:
    void ink_changed();

protected:
    [[nodiscard]] Ink ink() const;

private:
    QColor line_color_;
    QColor faint_color_;
    QColor ground_color_;
    QColor water_color_;
    QColor warm_color_;
    qreal stroke_;
};

/// A bank and its water: the picture of bank_painter.h. Columns count from the pump's end; water that is not
/// known is left out (headerFront 0, empty lists).
class BankItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool pumpOnLeft MEMBER pump_on_left_ NOTIFY picture_changed)
    Q_PROPERTY(qreal aspect MEMBER aspect_ NOTIFY picture_changed)
    Q_PROPERTY(qreal headerFront MEMBER header_front_ NOTIFY picture_changed)
    Q_PROPERTY(QList<qreal> wetFront MEMBER wet_front_ NOTIFY picture_changed)
    Q_PROPERTY(QList<bool> dripping MEMBER dripping_ NOTIFY picture_changed)
    Q_PROPERTY(QList<bool> drying MEMBER drying_ NOTIFY picture_changed)
    Q_PROPERTY(bool running MEMBER running_ NOTIFY picture_changed)

public:
    explicit BankItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void picture_changed();

private:
    bool pump_on_left_ = true;
    qreal aspect_ = 0.0;
    qreal header_front_ = 0.0;
    QList<qreal> wet_front_;
    QList<bool> dripping_;
    QList<bool> drying_;
    bool running_ = false;
};

}  // namespace wetfront::ui
