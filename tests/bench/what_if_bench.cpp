// SPDX-License-Identifier: Apache-2.0
// One move of a slider of What if, on the demo's visit in the real window of the smallest tablet: first what
// is worked out (strip, all rules), then the same with every change on the page and the whole window painted
// anew, which is more than a move repaints. Needs a display. The counter share_of_frame is to stay below 1:
// all of it within a frame of 60 Hz.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QQuickItem>
#include <QTemporaryDir>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <memory>

#include "demo/demo.h"
#include "desktop/bus_awake.h"
#include "desktop/program.h"

namespace {

using namespace wetfront;
using namespace wetfront::ui;

constexpr double frame_s = 1.0 / 60.0;

[[noreturn]] void give_up(const std::string& why) {
    std::cerr << "what_if_bench: " << why << '\n';
    std::exit(1);
}

void open_fold(QQuickItem& around) {
    if (around.property("title").toString() == QStringLiteral("What if") &&
        around.property("open").isValid()) {
        around.setProperty("open", true);
        return;
    }
    for (auto* item : around.childItems()) {
        open_fold(*item);
    }
}

/// The program at the step Advice of the example visit, with What if opened.
class OpenedWhatIf {
public:
    OpenedWhatIf() : store_{open()} {
        const Preferences nothing_kept{[](const QString&) { return QString{}; },
                                       [](const QString&, const QString&) {}};
        program_ = std::make_unique<Program>(store_, clock_, nothing_kept, no_bus_, folder_.path(), false);
        if (!program_->show()) {
            give_up("no window");
        }
        program_->window()->resize(1024, 600);
        program_->window()->grabWindow();  // lays it out
        program_->session().openVisit(QString::fromStdString(example_visit().visit.id.text));
        auto* visit = program_->session().visit();
        if (visit == nullptr) {
            give_up("no visit");
        }
        program_->window()->grabWindow();
        visit->goTo(static_cast<int>(Step::advice));
        program_->window()->grabWindow();
        open_fold(*program_->window()->contentItem());
        program_->window()->grabWindow();
        if (!what_if().open() || what_if().strips().isEmpty()) {
            give_up("What if did not open");
        }
    }

    [[nodiscard]] WhatIfViewModel& what_if() { return *program_->session().visit()->advice()->whatIf(); }
    [[nodiscard]] QQuickWindow& window() { return *program_->window(); }

private:
    Store open() {
        auto opened = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
        if (!opened || !fill_store(opened.value())) {
            give_up("no records");
        }
        return std::move(opened).value();
    }

    QTemporaryDir folder_;
    SystemClock clock_;
    Store store_;
    BusAwake no_bus_{QDBusConnection{QStringLiteral("none")}, QDBusConnection{QStringLiteral("none")},
                     nullptr};
    std::unique_ptr<Program> program_;
};

/// Back and forth along the scale, through short runs with findings and long ones without.
class Finger {
public:
    explicit Finger(WhatIfSetting& setting) : setting_{setting} {}
    void move() {
        if (setting_.value() + by_ > 300.0 || setting_.value() + by_ < setting_.from()) {
            by_ = -by_;
        }
        const double before = setting_.value();
        setting_.move(before + by_);
        if (setting_.value() == before) {
            give_up("the slider did not move");
        }
    }

private:
    WhatIfSetting& setting_;
    double by_ = setting_.step();
};

template <class Work>
void measure(benchmark::State& state, const Work& work) {
    const auto begin = std::chrono::steady_clock::now();
    for (auto _ : state) {
        work();
    }
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begin;
    state.counters["share_of_frame"] = spent.count() / static_cast<double>(state.iterations()) / frame_s;
}

}  // namespace

int main(int argc, char** argv) {
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    OpenedWhatIf page;
    Finger finger{*page.what_if().onTime()};
    page.window().setVisible(false);  // nothing is painted behind the measurement's back
    benchmark::RegisterBenchmark("move", [&](benchmark::State& state) {
        measure(state, [&] { finger.move(); });
    })->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("move_and_paint_the_window", [&](benchmark::State& state) {
        measure(state, [&] {
            finger.move();
            benchmark::DoNotOptimize(page.window().grabWindow());
        });
    })->Unit(benchmark::kMillisecond);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
