// SPDX-License-Identifier: Apache-2.0
#include "desktop/desktop_run.h"

#include <QGuiApplication>
#include <iostream>

#include "demo/demo.h"

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

// A second press on a busy screen is not a second going back.
constexpr auto once_queued = static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection);

class DesktopRunWords {
    Q_DECLARE_TR_FUNCTIONS(DesktopRunWords)
};

QQuickWindow* first_window(const QQmlApplicationEngine& engine) {
    const auto roots = engine.rootObjects();
    return roots.isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(roots.front());
}

}  // namespace

DesktopRun::DesktopRun(Setup setup) : setup_{std::move(setup)} {}

DesktopRun::~DesktopRun() {
    close();
}

QQuickWindow* DesktopRun::window() const {
    return program_ ? program_->window() : problem_engine_ ? first_window(*problem_engine_) : nullptr;
}

void DesktopRun::close() {
    program_.reset();
    store_.reset();
    // The window goes before what it shows.
    if (problem_engine_) {
        for (auto* root : problem_engine_->rootObjects()) {
            delete root;
        }
    }
    problem_engine_.reset();
    start_problem_.reset();
}

bool DesktopRun::begin() {
    return open(OpenMode::read_write);
}

bool DesktopRun::open(OpenMode mode, const Told& told) {
    close();
    auto store = Store::open(setup_.file, setup_.clock, mode);
    if (store && setup_.demo && !filled_) {
        filled_ = true;
        if (const auto filled = fill_store(store.value()); !filled) {
            store = filled.error();
        }
    }
    return store ? show_program(std::move(store).value(), told) : show_problem(store.error(), told);
}

bool DesktopRun::show_program(Store store, const Told& told) {
    store_ = std::make_unique<Store>(std::move(store));
    program_ = std::make_unique<Program>(*store_, setup_.clock, setup_.preferences, setup_.awake,
                                         setup_.documents, setup_.demo, setup_.media);
    auto& session = program_->session();
    const auto loss = store_->loss() ? qstring(store_->loss()->text()) : QString{};
    session.copies()->tell(told.notice, loss.isEmpty() ? told.problem : loss);
    // Queued: what asks is gone when it is done.
    connect(
        &session, &SessionViewModel::goBackAsked, this,
        [this] { go_back_to(program_->session().copies()->looked_at()); }, once_queued);
    const bool shown = program_->show();
    if (!loss.isEmpty()) {
        session.set_problem(loss);  // on the running stopwatch too, where it opens after a crash
    }
    return shown;
}

bool DesktopRun::show_problem(const Error& error, const Told& told) {
    std::cerr << "wetfront: " << error.text() << '\n';
    start_problem_ =
        std::make_unique<StartProblemViewModel>(setup_.file, setup_.clock, error, told.notice, told.problem);
    const auto* asked = start_problem_.get();
    connect(
        asked, &StartProblemViewModel::tryAgain, this,
        [this] { again([this] { return open(OpenMode::read_write); }); }, Qt::QueuedConnection);
    connect(
        asked, &StartProblemViewModel::look, this,
        [this] { again([this] { return open(OpenMode::read_only); }); }, Qt::QueuedConnection);
    connect(
        asked, &StartProblemViewModel::goBack, this, [this, copy = asked->copy().file] { go_back_to(copy); },
        once_queued);
    problem_engine_ = std::make_unique<QQmlApplicationEngine>();
    prepare_engine(*problem_engine_);
    problem_engine_->setInitialProperties(
        {{QStringLiteral("start"), QVariant::fromValue(start_problem_.get())}});
    problem_engine_->load(QUrl{QStringLiteral("qrc:/qt/qml/Wetfront/Wizard/StartProblem.qml")});
    return window() != nullptr;
}

/// Between two windows there is none, which must not end the program.
void DesktopRun::again(const std::function<bool()>& opening) {
    QGuiApplication::setQuitOnLastWindowClosed(false);
    const bool opened = opening();
    QGuiApplication::setQuitOnLastWindowClosed(true);
    if (!opened) {
        QCoreApplication::exit(1);
    }
}

void DesktopRun::go_back_to(const std::filesystem::path& copy) {
    again([this, copy] {
        close();
        const auto replaced = restore(copy, setup_.file, setup_.clock);
        const QString name = qstring(copy.filename().string());
        if (!replaced) {
            return open(OpenMode::read_write, {{},
                                               DesktopRunWords::tr("It could not go back to the copy %1. %2")
                                                   .arg(name, qstring(replaced.error().text()))});
        }
        QString notice = DesktopRunWords::tr("The records are now as they are in the copy %1.").arg(name);
        if (replaced.value()) {
            notice += QLatin1Char(' ') + DesktopRunWords::tr("The file that they replace is kept as %1.")
                                             .arg(qstring(replaced.value()->string()));
        }
        return open(OpenMode::read_write, {notice, {}});
    });
}

}  // namespace wetfront::ui
