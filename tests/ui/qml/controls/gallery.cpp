// SPDX-License-Identifier: Apache-2.0
// Shows all controls in a window, or saves what the window shows:
//   gallery [sun|shade|night] [buttons|fields|boxes|pad|time|reason|confirm|busy] [WIDTHxHEIGHT]
//   [picture.png]
#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QTimer>
#include <cstdio>

int main(int argc, char** argv) {
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QGuiApplication application(argc, argv);
    const QStringList words = application.arguments().mid(1);
    const QStringList size = words.value(2, QStringLiteral("1024x600")).split(QLatin1Char('x'));
    QQuickView view;
    view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    view.setResizeMode(QQuickView::SizeRootObjectToView);
    view.resize(size.value(0).toInt(), size.value(1).toInt());
    view.setInitialProperties({{QStringLiteral("mode"), words.value(0, QStringLiteral("sun"))},
                               {QStringLiteral("page"), words.value(1, QStringLiteral("buttons"))}});
    view.setSource(QUrl(QStringLiteral("qrc:/qt/qml/Wetfront/Gallery/Gallery.qml")));
    if (view.rootObject() == nullptr) {
        return 1;
    }
    view.show();
    if (words.size() > 3) {
        const QString picture = words.at(3);
        // Overlays open with the second frame.
        QTimer::singleShot(400, &view, [&view, picture] {
            if (!view.grabWindow().save(picture)) {
                std::fprintf(stderr, "%s: cannot be written\n", qPrintable(picture));
            }
            QCoreApplication::quit();
        });
    }
    return application.exec();
}
