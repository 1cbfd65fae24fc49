// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QLocale>
#include <QQuickWindow>
#include <QStringList>
#include <cstdio>

namespace {

/// Qt hands warnings to a plain function, so the place where they are kept cannot be passed in.
QStringList& warnings() {
    static QStringList list;
    return list;
}

void keep_warning(QtMsgType type, const QMessageLogContext&, const QString& text) {
    std::fprintf(stderr, "%s\n", qPrintable(text));
    if (type != QtDebugMsg && type != QtInfoMsg) {
        warnings().append(text);
    }
}

/// A binding that fails or a property that is not there is only a warning to Qt; here it fails the test.
class WarningsFail : public testing::EmptyTestEventListener {
    void OnTestEnd(const testing::TestInfo&) override {
        for (const QString& warning : warnings()) {
            ADD_FAILURE() << "Qt warned: " << warning.toStdString();
        }
        warnings().clear();
    }
};

}  // namespace

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    // The build asks for the list of tests, and it has no screen.
    if (testing::GTEST_FLAG(list_tests)) {
        return RUN_ALL_TESTS();
    }
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    QLocale::setDefault(QLocale::c());
    const QApplication application(argc, argv);
    // Controls tell their names only while somebody listens.
    QAccessible::setActive(true);
    qInstallMessageHandler(keep_warning);
    // GoogleTest owns its listeners.
    testing::UnitTest::GetInstance()->listeners().Append(new WarningsFail);
    return RUN_ALL_TESTS();
}
