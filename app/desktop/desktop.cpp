// SPDX-License-Identifier: Apache-2.0
#include "desktop/desktop.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QLocale>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QQuickWindow>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <iostream>
#include <string_view>

#include "desktop/bus_awake.h"
#include "desktop/desktop_run.h"
#include "desktop/speech.h"

namespace wetfront::ui {
namespace {

constexpr int bad_usage = 2;
constexpr int store_failed = 3;

// With no OpenGL, Quick aborts instead of drawing by itself, and a processor that plays a graphics card is
// slower than the software scene graph: so the choice is made before the first window.
bool has_graphics_card() {
    QOpenGLContext context;
    QOffscreenSurface surface;
    if (!context.create()) {
        return false;
    }
    surface.create();
    if (!surface.isValid() || !context.makeCurrent(&surface)) {
        return false;
    }
    const QByteArray renderer{reinterpret_cast<const char*>(context.functions()->glGetString(GL_RENDERER))};
    context.doneCurrent();
    return !renderer.contains("llvmpipe") && !renderer.contains("softpipe") && !renderer.contains("swrast");
}

void choose_scene_graph() {
    if (!qEnvironmentVariableIsSet("QT_QUICK_BACKEND") && !has_graphics_card()) {
        QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    }
}

struct Places {
    std::filesystem::path store;
    QString documents;
};

Places places(const QCommandLineParser& options, const QTemporaryDir& throwaway) {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) +
                              QStringLiteral("/Wetfront sheets");
    if (options.isSet(QStringLiteral("demo"))) {
        return {throwaway.filePath(QStringLiteral("demo.wetfront")).toStdString(), documents};
    }
    if (options.isSet(QStringLiteral("store"))) {
        return {options.value(QStringLiteral("store")).toStdString(), documents};
    }
    const QString data = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    return {QDir{data}.filePath(QStringLiteral("records.wetfront")).toStdString(), documents};
}

}  // namespace

int run_desktop(int& argc, char** argv) {
    // Help and version need no screen.
    const bool no_screen =
        !qEnvironmentVariableIsSet("DISPLAY") && !qEnvironmentVariableIsSet("WAYLAND_DISPLAY");
    if (argc == 2 && no_screen && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM") &&
        std::string_view{argv[1]} != "--demo") {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application{argc, argv};
    QApplication::setApplicationName(QStringLiteral("wetfront"));
    QApplication::setApplicationDisplayName(QStringLiteral("Wetfront"));
    QApplication::setApplicationVersion(QStringLiteral(WETFRONT_VERSION));

    QCommandLineParser options;
    options.setApplicationDescription(
        QStringLiteral("Times the water on cooling pads, advises pump-timer settings, prints the sheet."));
    options.addHelpOption();
    options.addVersionOption();
    options.addOption({QStringLiteral("demo"), QStringLiteral("Open a throwaway copy of the demo farm.")});
    options.addOption(
        {QStringLiteral("store"), QStringLiteral("Open this record file."), QStringLiteral("file")});
    options.process(application);
    if (!options.positionalArguments().isEmpty()) {
        std::cerr << "wetfront: " << options.positionalArguments().front().toStdString()
                  << ": not an option, see wetfront --help\n";
        return bad_usage;
    }

    choose_scene_graph();
    const QTemporaryDir throwaway;
    const auto where = places(options, throwaway);
    const SystemClock clock;
    QSettings settings{QStringLiteral("wetfront"), QStringLiteral("wetfront")};
    Speech speech{QLocale::system().uiLanguages()};
    const Preferences preferences{
        [&](const QString& key) { return settings.value(key).toString(); },
        [&](const QString& key, const QString& value) { settings.setValue(key, value); },
        [&](const QString& chosen) { return speech.speak(chosen); }};
    preferences.speak(preferences.kept(QStringLiteral("language")));
    BusAwake awake{QDBusConnection::sessionBus(), QDBusConnection::systemBus(), nullptr};
    DesktopRun run{
        {where.store, clock, preferences, awake, where.documents, options.isSet(QStringLiteral("demo"))}};
    if (!run.begin()) {
        return store_failed;
    }
    const int ended = QApplication::exec();
    return run.program() == nullptr || ended != 0 ? store_failed : 0;
}

}  // namespace wetfront::ui
