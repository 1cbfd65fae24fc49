// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QQuickItem>
#include <QQuickView>
#include <QSize>
#include <QString>
#include <QVariant>

namespace wetfront::ui {

/// QML in a window of its own, shown and active when the constructor returns. QML that cannot be loaded or
/// shown ends the program with the reason: there is nothing to test then. GUI thread.
class QmlWindow {
public:
    /// The item that the QML text describes, as large as the window.
    QmlWindow(const QString& qml, QSize size);

    [[nodiscard]] QQuickWindow& window() { return view_; }
    [[nodiscard]] QQuickItem& root() { return *view_.rootObject(); }
    /// A property of the root item. One that is not there fails the test.
    [[nodiscard]] QVariant get(const char* property);
    void set(const char* property, const QVariant& value);

private:
    QQuickView view_;
};

/// Shows the window and waits until it is painted and has the keyboard.
void show_and_wait(QQuickWindow& window);

}  // namespace wetfront::ui
