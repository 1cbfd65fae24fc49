// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>
#include <QString>
#include <vector>

namespace wetfront::ui {

/// What assistive technology is told of one item in sight.
struct Heard {
    QQuickItem* item;
    QAccessible::Role role;
    QString name;
    QString description;
    QAccessible::State state;

    [[nodiscard]] bool can_be_pressed() const;
    /// Where it is drawn, in the window's pixels.
    [[nodiscard]] QRectF place() const {
        return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    }
};

/// Works a window as a person does: finds controls by their accessible names, presses and types. A name that
/// is not there fails the test, with the names that are. GUI thread; the window outlives the hand.
class Hand {
public:
    explicit Hand(QQuickWindow& window) : window_(window) {}

    /// All named items that are shown, in reading order of the accessibility tree. Paints first, because
    /// layouts move their items only then.
    [[nodiscard]] std::vector<Heard> everything() const;
    [[nodiscard]] bool shows(const QString& name) const;
    /// The item of that name; one that can be pressed goes before a text of the same name.
    [[nodiscard]] Heard find(const QString& name) const;

    void press(const QString& name);
    void release(const QString& name);
    void click(const QString& name);
    /// One of several of that name, from everything().
    void click(const Heard& heard);
    /// Slides a finger along it, both in shares of its width; the finger goes down and up again.
    void drag(const Heard& heard, double from, double to);
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void type(const QString& text);
    /// The accessible name of what has the keyboard; empty if nothing named has it.
    [[nodiscard]] QString focused() const;

private:
    [[nodiscard]] QPoint middle_of(const Heard& heard) const;

    QQuickWindow& window_;
};

}  // namespace wetfront::ui
