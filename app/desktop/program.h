// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include "viewmodels/session_view_model.h"

namespace wetfront::ui {

/// Store, clock, view models and window joined. Everything passed in outlives it. Needs a QApplication; GUI
/// thread.
class Program {
public:
    Program(Store& store, const Clock& clock, Preferences preferences, Awake& awake, const QString& documents,
            bool demo, Media media = plugged_in_media);
    ~Program();
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    /// Opens where a stopwatch was left running, or on the houses list. False if the window cannot be made.
    [[nodiscard]] bool show();
    [[nodiscard]] SessionViewModel& session() { return session_; }
    [[nodiscard]] QQuickWindow* window() const;

private:
    Formatter formatter_;
    PressClock presses_;
    SessionViewModel session_;
    QQmlApplicationEngine engine_;
};

/// The style of the controls and where QML is found; call once the application exists and before any engine
/// loads.
void prepare_engine(QQmlApplicationEngine& engine);

}  // namespace wetfront::ui
