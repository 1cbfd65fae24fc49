// SPDX-License-Identifier: Apache-2.0
// A firm's record file with many houses: from opening it to the houses list (to stay below 300 ms), a frame
// of scrolling that list (the counters share_of_frame below 1: within a frame of 60 Hz), and the memory of
// the program that shows it, beside one with an empty record (memory_ratio to stay below 1.5). Needs a
// display.
//
// WETFRONT_BENCH_HOUSES houses (150 if it is not set; what is to be met is asked for 10,000), 20 visits to
// each, made by the store itself at some 800 visits a second, in WETFRONT_BENCH_RECORDS (kept for the next
// time) or a temporary file. They are read from the system's cache.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QFileInfo>
#include <QQuickItem>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <memory>

#include "desktop/bus_awake.h"
#include "desktop/program.h"
#include "first_frame.h"
#include "support/visit_builder.h"

namespace {

using namespace wetfront;
using namespace wetfront::ui;
using std::chrono::steady_clock;

constexpr int visits_each = 20;
constexpr int houses_a_farm = 10;
constexpr int frames = 300;
constexpr double frame_ms = 1000.0 / 60.0;
constexpr double flick = 40.0;  // pixels a frame: 2,400 a second, as fast as a finger throws the list
constexpr std::int64_t month_ms = std::int64_t{30} * 86'400'000;

[[noreturn]] void give_up(const std::string& why) {
    std::cerr << "houses_list_bench: " << why << '\n';
    std::exit(1);
}

double milliseconds_since(steady_clock::time_point begin) {
    return std::chrono::duration<double, std::milli>(steady_clock::now() - begin).count();
}

double percentile(std::vector<double> times, std::size_t of_hundred) {
    const auto place = times.begin() + static_cast<std::ptrdiff_t>((times.size() - 1) * of_hundred / 100);
    std::nth_element(times.begin(), place, times.end());
    return *place;
}

Store opened(const QString& file, const Clock& clock) {
    auto store = Store::open(file.toStdString(), clock);
    if (!store) {
        give_up(store.error().text());
    }
    return std::move(store).value();
}

/// A house with its visits, one a month up to summer 2026, all signed but the last one of every tenth house.
std::vector<VisitFile> visits_to(int house, Store& store) {
    test::VisitBuilder builder{2};
    builder.both_weathers().run(1, {.fill = 40.0, .wet_through = 95.0, .run_off = 60.0, .dry_out = 900.0});
    builder.found().period = test::typed<Duration>("10 min");
    builder.found().base_on_time = test::typed<Duration>("4 min");
    VisitFile file = builder.file();
    file.farm.id = Id{"farm-" + std::to_string(house / houses_a_farm)};
    file.farm.name = "Farm " + std::to_string(house / houses_a_farm + 1);
    file.house.id = store.new_id();
    file.house.farm = file.farm.id;
    file.house.name = "House " + std::to_string(house % houses_a_farm + 1);
    file.visit.house = file.house.id;
    file.visit.persons = {{"A. Technician", "technician"}};
    const auto move_by = [&file](std::int64_t ms) {
        file.visit.started.unix_ms += ms;
        for (auto& mark : file.visit.marks) {
            mark.wall.unix_ms += ms;
        }
    };
    move_by(-visits_each * month_ms);
    std::vector<VisitFile> files;
    for (int visit = 0; visit < visits_each; ++visit) {
        move_by(month_ms);
        file.visit.id = store.new_id();
        for (auto& mark : file.visit.marks) {
            mark.id = store.new_id();
        }
        const bool open = visit == visits_each - 1 && house % 10 == 0;
        file.visit.signatures.clear();
        if (!open) {
            file.visit.signatures.push_back({file.visit.persons.front(), file.visit.started});
        }
        files.push_back(file);
    }
    return files;
}

void fill(const QString& file, int houses) {
    const SystemClock clock;
    auto store = opened(file, clock);
    for (int house = 0; house < houses;) {
        std::vector<VisitFile> files;
        for (const int end = std::min(houses, house + 50); house < end; ++house) {
            auto more = visits_to(house, store);
            files.insert(files.end(), std::make_move_iterator(more.begin()),
                         std::make_move_iterator(more.end()));
        }
        if (const auto added = store.add(files); !added) {
            give_up(added.error().text());
        }
    }
}

/// The wizard on a record file, as far as its window needs it.
class Opened {
public:
    explicit Opened(const QString& file)
        : store_{opened(file, clock_)},
          program_{std::make_unique<Program>(
              store_, clock_,
              Preferences{[](const QString&) { return QString{}; }, [](const QString&, const QString&) {}},
              no_bus_, QString{}, true)} {}

    [[nodiscard]] Program& program() { return *program_; }
    [[nodiscard]] QQuickWindow& window() { return *program_->window(); }

    /// Until its lines are there, or the hint that there is none.
    void show() {
        if (!program_->show()) {
            give_up("no window");
        }
        window().resize(1024, 600);
        if (program_->session().place() != QStringLiteral("houses")) {
            give_up("it opened elsewhere");
        }
        const int houses = program_->session().houses()->count();
        do {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        } while (!window().isExposed() || (houses > 0 && list_in(*window().contentItem()) == nullptr));
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QQuickItem* list() { return list_in(*window().contentItem()); }

private:
    static QQuickItem* list_in(QQuickItem& around) {
        if (around.inherits("QQuickListView") && around.property("count").toInt() > 0) {
            return &around;
        }
        for (auto* item : around.childItems()) {
            if (auto* found = list_in(*item)) {
                return found;
            }
        }
        return nullptr;
    }

    SystemClock clock_;
    Store store_;
    BusAwake no_bus_{QDBusConnection{QStringLiteral("none")}, QDBusConnection{QStringLiteral("none")},
                     nullptr};
    std::unique_ptr<Program> program_;
};

/// Milliseconds of each frame of a long throw: what is worked out for new lines, and the whole window painted
/// anew. An empty list stands still.
std::vector<double> scroll(Opened& shown) {
    auto* list = shown.list();
    std::vector<double> times;
    for (int frame = 0; frame < frames; ++frame) {
        const auto begin = steady_clock::now();
        if (list != nullptr) {
            list->setProperty("contentY", list->property("contentY").toDouble() + flick);
        }
        QCoreApplication::processEvents();
        // Without exec() nobody does this, and lines that went out of view would stay.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        benchmark::DoNotOptimize(shown.window().grabWindow());
        times.push_back(milliseconds_since(begin));
    }
    return times;
}

/// This program again, to show a record file and scroll it: resident kB and milliseconds until it is there.
struct Shown {
    double kilobytes = 0.0;
    double milliseconds = 0.0;
};

int show_and_tell(const QString& file, steady_clock::time_point begin) {
    Opened opened{file};
    opened.show();
    const double milliseconds = milliseconds_since(begin);
    scroll(opened);
    std::printf("%.0f %.3f\n", resident_kilobytes(), milliseconds);
    return 0;
}

Shown in_a_program_of_its_own(const QString& file) {
    const auto command = QCoreApplication::applicationFilePath() + QStringLiteral(" --show ") + file;
    std::FILE* output = popen(command.toLocal8Bit().constData(), "r");
    Shown shown;
    if (output == nullptr || std::fscanf(output, "%lf %lf", &shown.kilobytes, &shown.milliseconds) != 2) {
        give_up("nothing was shown");
    }
    pclose(output);
    return shown;
}

void open_to_the_list(benchmark::State& state, const QString& file) {
    for (auto _ : state) {
        Opened opened{file};
        benchmark::DoNotOptimize(opened.program().session().resume_running_visit(TimedIn::latest_marks));
        state.counters["houses"] = opened.program().session().houses()->count();
    }
}

void look_for_a_running_stopwatch_after_the_first_frame(benchmark::State& state, const QString& file) {
    const SystemClock clock;
    const auto store = opened(file, clock);
    for (auto _ : state) {
        benchmark::DoNotOptimize(store.visit_with_running_stopwatch(TimedIn::all_marks));
    }
}

void scrolling(benchmark::State& state, const QString& file) {
    Opened opened{file};
    opened.show();
    opened.window().setVisible(false);  // nothing is painted behind the measurement's back
    std::vector<double> times;
    for (auto _ : state) {
        const auto more = scroll(opened);
        times.insert(times.end(), more.begin(), more.end());
    }
    state.counters["frames"] = static_cast<double>(times.size());
    state.counters["share_of_frame_p50"] = percentile(times, 50) / frame_ms;
    state.counters["share_of_frame_p99"] = percentile(times, 99) / frame_ms;
}

/// Each letter of a word is a question of its own; the lines in view are made anew with the answer. What they
/// are compared with is read when Find opens.
void keystrokes(benchmark::State& state, const QString& file) {
    Opened opened{file};
    opened.show();
    auto* houses = opened.program().session().houses();
    const auto opens = steady_clock::now();
    houses->prepareToSeek();
    state.counters["find_opens_ms"] = milliseconds_since(opens);
    const QString word = QStringLiteral("house 7");
    std::vector<double> times;
    for (auto _ : state) {
        for (qsizetype letters = 1; letters <= word.size(); ++letters) {
            const auto begin = steady_clock::now();
            houses->seek(word.first(letters));
            QCoreApplication::processEvents();
            times.push_back(milliseconds_since(begin));
        }
        houses->seek(QString{});
    }
    state.counters["keystroke_ms_p50"] = percentile(times, 50);
    state.counters["keystroke_ms_most"] = percentile(times, 100);
    state.counters["houses"] = houses->total();
}

void memory(benchmark::State& state, const QString& file, const QString& empty) {
    for (auto _ : state) {
        const auto nothing = in_a_program_of_its_own(empty);
        const auto filled = in_a_program_of_its_own(file);
        state.counters["memory_ratio"] = filled.kilobytes / nothing.kilobytes;
        state.counters["shown_ms"] = filled.milliseconds;
        state.counters["empty_shown_ms"] = nothing.milliseconds;
    }
}

}  // namespace

int main(int argc, char** argv) {
    const auto begin = steady_clock::now();
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QApplication application{argc, argv};
    if (argc == 3 && std::string_view{argv[1]} == "--show") {
        return show_and_tell(QString::fromLocal8Bit(argv[2]), begin);
    }
    benchmark::Initialize(&argc, argv);
    const int asked = qEnvironmentVariableIntValue("WETFRONT_BENCH_HOUSES");
    const QTemporaryDir folder;
    const auto file =
        qEnvironmentVariable("WETFRONT_BENCH_RECORDS", folder.filePath(QStringLiteral("records.wetfront")));
    const auto empty = folder.filePath(QStringLiteral("empty.wetfront"));
    fill(empty, 0);
    if (!QFileInfo::exists(file)) {
        fill(file, asked > 0 ? asked : 150);
        std::printf("filled in %.1f s\n", milliseconds_since(begin) / 1000.0);
    }
    const auto add = [](const char* name, auto work, auto... arguments) {
        return benchmark::RegisterBenchmark(name, [=](benchmark::State& state) { work(state, arguments...); })
            ->Unit(benchmark::kMillisecond);
    };
    add("open_to_the_list", open_to_the_list, file);
    add("open_an_empty_record", open_to_the_list, empty);
    add("look_for_a_running_stopwatch_after_the_first_frame",
        look_for_a_running_stopwatch_after_the_first_frame, file);
    add("scroll_300_frames", scrolling, file)->Iterations(1);
    add("keystrokes_of_a_search", keystrokes, file)->Iterations(5);
    add("memory", memory, file, empty)->Iterations(1);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
