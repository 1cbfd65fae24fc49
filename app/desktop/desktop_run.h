// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

#include "desktop/program.h"
#include "viewmodels/start_problem_view_model.h"

namespace wetfront::ui {

/// The program on one record file, as often as it has to be opened: the store and the window on it; instead
/// of them what can be done when the file cannot be opened; and going back to a copy, for which both make way
/// and come again. Needs a QApplication; GUI thread.
class DesktopRun : public QObject {
public:
    struct Setup {
        std::filesystem::path file;
        const Clock& clock;  ///< outlives the run
        Preferences preferences;
        Awake& awake;  ///< outlives the run
        QString documents;
        bool demo = false;
        Media media = plugged_in_media;
    };
    explicit DesktopRun(Setup setup);
    ~DesktopRun() override;
    DesktopRun(const DesktopRun&) = delete;
    DesktopRun& operator=(const DesktopRun&) = delete;

    /// Opens the file and a window. False if there is no window.
    [[nodiscard]] bool begin();
    /// None while the file cannot be opened.
    [[nodiscard]] Program* program() { return program_.get(); }
    /// None once the program is open.
    [[nodiscard]] StartProblemViewModel* start_problem() { return start_problem_.get(); }
    [[nodiscard]] QQuickWindow* window() const;

private:
    struct Told {
        QString notice;
        QString problem;
    };
    void close();
    bool open(OpenMode mode, const Told& told = {});
    bool show_program(Store store, const Told& told);
    bool show_problem(const Error& error, const Told& told);
    void go_back_to(const std::filesystem::path& copy);
    void again(const std::function<bool()>& opening);

    Setup setup_;
    bool filled_ = false;
    std::unique_ptr<Store> store_;
    std::unique_ptr<Program> program_;
    std::unique_ptr<StartProblemViewModel> start_problem_;
    std::unique_ptr<QQmlApplicationEngine> problem_engine_;
};

}  // namespace wetfront::ui
