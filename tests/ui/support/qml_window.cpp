// SPDX-License-Identifier: Apache-2.0
#include "ui_support/qml_window.h"

#include <gtest/gtest.h>

#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>

namespace wetfront::ui {

QmlWindow::QmlWindow(const QString& qml, QSize size) {
    view_.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    view_.setResizeMode(QQuickView::SizeRootObjectToView);
    view_.resize(size);
    auto* const component = new QQmlComponent(view_.engine(), &view_);
    component->setData(qml.toUtf8(), QUrl(QStringLiteral("qrc:/test.qml")));
    auto* const item = qobject_cast<QQuickItem*>(component->create());
    if (item == nullptr) {
        qFatal("%s", qPrintable(component->errorString()));
    }
    view_.setContent(component->url(), component, item);
    show_and_wait(view_);
}

QVariant QmlWindow::get(const char* property) {
    const QVariant value = root().property(property);
    EXPECT_TRUE(value.isValid()) << "the root item has no property " << property;
    return value;
}

void QmlWindow::set(const char* property, const QVariant& value) {
    EXPECT_TRUE(root().setProperty(property, value)) << "the root item has no property " << property;
}

void show_and_wait(QQuickWindow& window) {
    window.show();
    window.requestActivate();
    if (!QTest::qWaitForWindowExposed(&window) || !QTest::qWaitForWindowActive(&window)) {
        qFatal("the window was not shown or did not get the keyboard");
    }
}

}  // namespace wetfront::ui
