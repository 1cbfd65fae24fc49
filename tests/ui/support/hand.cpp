// SPDX-License-Identifier: Apache-2.0
#include "ui_support/hand.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTest>
#include <algorithm>

namespace wetfront::ui {
namespace {

void listen(QAccessibleInterface* interface, std::vector<Heard>& heard) {
    if (interface == nullptr || !interface->isValid()) {
        return;
    }
    if (auto* const item = qobject_cast<QQuickItem*>(interface->object())) {
        const QString name = interface->text(QAccessible::Name);
        if (!item->isVisible()) {
            return;
        }
        if (!name.isEmpty()) {
            heard.push_back({item, interface->role(), name, interface->text(QAccessible::Description),
                             interface->state()});
        }
    }
    for (int i = 0; i < interface->childCount(); ++i) {
        listen(interface->child(i), heard);
    }
}

QStringList names(const std::vector<Heard>& heard) {
    QStringList list;
    for (const Heard& each : heard) {
        list.append(each.name);
    }
    return list;
}

QPointF middle(const QQuickItem* item) {
    return item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
}

/// Scrolling areas follow the focus; without a screen in sight of the item a press would hit something else.
void bring_into_sight(QQuickItem* item) {
    if (item->activeFocusOnTab()) {
        item->forceActiveFocus(Qt::TabFocusReason);
    }
}

bool in_sight(const QQuickItem* item) {
    // A press goes to a whole pixel, and the lower edge belongs to what is below.
    const QPointF place = middle(item).toPoint();
    for (const QQuickItem* around = item; around != nullptr; around = around->parentItem()) {
        if ((around->clip() || around->parentItem() == nullptr) &&
            !around->mapRectToScene(around->boundingRect()).adjusted(0, 0, -1, -1).contains(place)) {
            return false;
        }
    }
    return true;
}

}  // namespace

bool Heard::can_be_pressed() const {
    return role == QAccessible::Button || role == QAccessible::RadioButton || role == QAccessible::CheckBox ||
           role == QAccessible::PageTab || role == QAccessible::EditableText ||
           role == QAccessible::ListItem || role == QAccessible::Slider;
}

std::vector<Heard> Hand::everything() const {
    QCoreApplication::processEvents();
    window_.grabWindow();
    std::vector<Heard> heard;
    listen(QAccessible::queryAccessibleInterface(&window_), heard);
    return heard;
}

bool Hand::shows(const QString& name) const {
    const auto heard = everything();
    return std::any_of(heard.begin(), heard.end(), [&](const Heard& each) { return each.name == name; });
}

Heard Hand::find(const QString& name) const {
    std::vector<Heard> found = everything();
    const QStringList all = names(found);
    std::erase_if(found, [&](const Heard& each) { return each.name != name; });
    std::stable_partition(found.begin(), found.end(),
                          [](const Heard& each) { return each.can_be_pressed(); });
    if (found.empty()) {
        ADD_FAILURE() << "nothing is called \"" << name.toStdString()
                      << "\" here, but: " << all.join(" | ").toStdString();
        return {window_.contentItem(), QAccessible::NoRole, {}, {}, {}};
    }
    return found.front();
}

QPoint Hand::middle_of(const Heard& heard) const {
    QQuickItem* const item = heard.item;
    if (!in_sight(item)) {
        bring_into_sight(item);
        EXPECT_TRUE(in_sight(item)) << "\"" << heard.name.toStdString()
                                    << "\" is scrolled out of sight or beyond the window";
    }
    return middle(item).toPoint();
}

void Hand::press(const QString& name) {
    QTest::mousePress(&window_, Qt::LeftButton, Qt::NoModifier, middle_of(find(name)));
}

void Hand::release(const QString& name) {
    QTest::mouseRelease(&window_, Qt::LeftButton, Qt::NoModifier, middle_of(find(name)));
}

void Hand::click(const QString& name) {
    click(find(name));
}

void Hand::click(const Heard& heard) {
    const QPoint place = middle_of(heard);
    QTest::mousePress(&window_, Qt::LeftButton, Qt::NoModifier, place);
    QTest::mouseRelease(&window_, Qt::LeftButton, Qt::NoModifier, place);
}

void Hand::drag(const Heard& heard, double from, double to) {
    if (!in_sight(heard.item)) {
        bring_into_sight(heard.item);
    }
    const auto place = [&](double share) {
        return heard.item->mapToScene(QPointF(share * heard.item->width(), heard.item->height() / 2))
            .toPoint();
    };
    constexpr int parts = 8;
    QTest::mousePress(&window_, Qt::LeftButton, Qt::NoModifier, place(from));
    for (int i = 1; i <= parts; ++i) {
        QTest::mouseMove(&window_, place(from + (to - from) * i / parts));
    }
    QTest::mouseRelease(&window_, Qt::LeftButton, Qt::NoModifier, place(to));
}

void Hand::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(&window_, key, modifiers);
}

void Hand::type(const QString& text) {
    for (const QChar letter : text) {
        QTest::keyClick(&window_, letter.toLatin1());
    }
}

QString Hand::focused() const {
    const QQuickItem* const item = window_.activeFocusItem();
    const auto heard = everything();
    const auto found =
        std::find_if(heard.begin(), heard.end(), [&](const Heard& each) { return each.item == item; });
    return found == heard.end() ? QString() : found->name;
}

}  // namespace wetfront::ui
