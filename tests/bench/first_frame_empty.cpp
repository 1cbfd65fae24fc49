// SPDX-License-Identifier: Apache-2.0
// An empty window of the same toolkit from start to its first frame: what the wizard is measured against.
#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

#include "first_frame.h"

int main(int argc, char** argv) {
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QApplication application{argc, argv};
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick.Controls\nApplicationWindow { visible: true; width: 1024; height: 600 }");
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().front());
    if (window == nullptr) {
        return 3;
    }
    end_at_first_frame(*window);
    return QApplication::exec();
}
