// SPDX-License-Identifier: Apache-2.0
// The wizard from start to its first frame: first_frame_wetfront <record file>, filled with the demo if it is
// new.
#include <QApplication>
#include <QFileInfo>

#include "demo/demo.h"
#include "desktop/bus_awake.h"
#include "desktop/program.h"
#include "first_frame.h"

int main(int argc, char** argv) {
    using namespace wetfront;
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QApplication application{argc, argv};
    if (argc != 2) {
        return 2;
    }
    const bool is_new = !QFileInfo::exists(QString::fromLocal8Bit(argv[1]));
    const SystemClock clock;
    auto store = Store::open(argv[1], clock);
    if (!store || (is_new && !fill_store(store.value()))) {
        return 3;
    }
    const ui::Preferences nothing_kept{[](const QString&) { return QString{}; },
                                       [](const QString&, const QString&) {}};
    ui::BusAwake awake{QDBusConnection::sessionBus(), QDBusConnection::systemBus(), nullptr};
    ui::Program program{store.value(), clock, nothing_kept, awake, QString{}, false};
    if (!program.show()) {
        return 3;
    }
    end_at_first_frame(*program.window());
    return QApplication::exec();
}
