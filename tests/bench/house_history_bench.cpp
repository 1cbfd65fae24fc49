// SPDX-License-Identifier: Apache-2.0
// The page of a house with 200 visits, a demo house's with its times creeping up: what is read and worked out
// for it (visits, trends, limits, sentences, settings, the first chart), and the same with the page in the
// real window of the smallest tablet, laid out and painted. Needs a display. The counter share_of_budget is
// to stay below 1: 100 ms.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <memory>
#include <vector>

#include "demo/demo.h"
#include "desktop/bus_awake.h"
#include "desktop/program.h"

namespace {

using namespace wetfront;
using namespace wetfront::ui;

constexpr int visits = 200;
constexpr double budget_s = 0.1;
constexpr std::int64_t month_ms = std::int64_t{30} * 86'400'000;

[[noreturn]] void give_up(const std::string& why) {
    std::cerr << "house_history_bench: " << why << '\n';
    std::exit(1);
}

/// The demo's example visit, so many months later and a little slower each time.
VisitFile visit_of(const VisitFile& example, int number) {
    VisitFile file = example;
    auto& visit = file.visit;
    visit.id = Id{"visit-" + std::to_string(number)};
    visit.started.unix_ms += number * month_ms;
    for (auto& mark : visit.marks) {
        mark.id.text += "-" + std::to_string(number);
        mark.wall.unix_ms += number * month_ms;
        if (mark.kind == MarkKind::far_end_drips) {
            mark.at.boot_ns += number * 20'000'000;  // 20 ms a month
        }
    }
    return file;
}

class OpenedProgram {
public:
    OpenedProgram() : store_{open()} {
        const Preferences nothing_kept{[](const QString&) { return QString{}; },
                                       [](const QString&, const QString&) {}};
        program_ = std::make_unique<Program>(store_, clock_, nothing_kept, no_bus_, folder_.path(), false);
        if (!program_->show()) {
            give_up("no window");
        }
        program_->window()->resize(1024, 600);
        program_->window()->grabWindow();
    }

    [[nodiscard]] Store& store() { return store_; }
    [[nodiscard]] const Clock& clock() const { return clock_; }
    void open_house() {
        program_->session().openHouse(house_id_);
        program_->window()->grabWindow();
        if (program_->session().history()->banks().isEmpty()) {
            give_up("no history");
        }
    }
    void leave() {
        program_->session().leave();
        program_->window()->grabWindow();
    }

private:
    Store open() {
        auto store = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
        if (!store) {
            give_up(store.error().text());
        }
        const auto example = example_visit();
        std::vector<VisitFile> files;
        for (int number = 0; number < visits; ++number) {
            files.push_back(visit_of(example, number));
        }
        if (const auto added = store.value().add(files); !added) {
            give_up(added.error().text());
        }
        return std::move(store).value();
    }

    QTemporaryDir folder_;
    SystemClock clock_;
    Store store_;
    BusAwake no_bus_{QDBusConnection{QStringLiteral("none")}, QDBusConnection{QStringLiteral("none")},
                     nullptr};
    std::unique_ptr<Program> program_;
    QString house_id_ = QString::fromStdString(example_visit().house.id.text);
};

void count(benchmark::State& state, std::chrono::steady_clock::duration taken) {
    const double each =
        std::chrono::duration<double>(taken).count() / static_cast<double>(state.iterations());
    state.counters["visits"] = visits;
    state.counters["share_of_budget"] = each / budget_s;
}

void history_of_200_visits(benchmark::State& state, OpenedProgram& program) {
    Formatter formatter;
    HistoryViewModel history{{program.store(), program.clock(), formatter}, nullptr};
    const auto house = example_visit().house;
    const auto begin = std::chrono::steady_clock::now();
    for (auto _ : state) {
        if (!history.show(house)) {
            give_up("the history was not read");
        }
        benchmark::DoNotOptimize(history.banks());
        benchmark::DoNotOptimize(history.timers());
        benchmark::DoNotOptimize(history.chart(history.first()));
    }
    count(state, std::chrono::steady_clock::now() - begin);
}

void page_of_200_visits(benchmark::State& state, OpenedProgram& program) {
    std::chrono::steady_clock::duration opening{};
    for (auto _ : state) {
        const auto begin = std::chrono::steady_clock::now();
        program.open_house();
        opening += std::chrono::steady_clock::now() - begin;
        state.PauseTiming();
        program.leave();
        state.ResumeTiming();
    }
    count(state, opening);
}

}  // namespace

int main(int argc, char** argv) {
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    OpenedProgram program;
    benchmark::RegisterBenchmark("history_of_200_visits", [&](benchmark::State& state) {
        history_of_200_visits(state, program);
    })->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("page_of_200_visits", [&](benchmark::State& state) {
        page_of_200_visits(state, program);
    })->Unit(benchmark::kMillisecond);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
