// SPDX-License-Identifier: Apache-2.0
// The sheets of many visits, printed as PDFs by `wetfront-cli store sheets` in a program of its own: the last
// tenth of them beside the first, in processor time, which other work does not lengthen (rate_ratio to stay
// near 1), and the most memory that the program ever had beside what it had after the first tenth
// (memory_ratio to stay near 1). Visits are signed and none of their sheets was kept, so that each is drawn,
// with the trend of its house: 20 visits a house.
//
// WETFRONT_BENCH_SHEETS sheets (60 if it is not set; what is to be met is asked for 1,000).
#include <benchmark/benchmark.h>

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <optional>
#include <string>
#include <vector>

#include "demo/demo.h"
#include "store/store.h"

namespace {

using namespace wetfront;
using std::chrono::steady_clock;

constexpr int visits_each = 20;
constexpr std::int64_t month_ms = std::int64_t{30} * 86'400'000;

[[noreturn]] void give_up(const std::string& why) {
    std::cerr << "sheets_batch_bench: " << why << '\n';
    std::exit(1);
}

int sheets_asked() {
    const char* asked = std::getenv("WETFRONT_BENCH_SHEETS");
    const int sheets = asked == nullptr ? 60 : std::atoi(asked);
    return sheets < visits_each ? visits_each : sheets / visits_each * visits_each;
}

class Folder {
public:
    Folder() {
        if (::mkdtemp(path_.data()) == nullptr) {
            give_up("no temporary folder");
        }
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string file(const char* name) const { return path_ + "/" + name; }

private:
    std::string path_ = std::filesystem::temp_directory_path().string() + "/wetfront-sheets-XXXXXX";
};

/// The demo's example visit, month after month, to one house after the other.
void fill(const std::string& file, int sheets) {
    const SystemClock clock;
    auto store = Store::open(file, clock);
    if (!store) {
        give_up(store.error().text());
    }
    for (int house = 0; house < sheets / visits_each; ++house) {
        std::vector<VisitFile> files;
        VisitFile visit = example_visit();
        visit.house.id = Id{"house-" + std::to_string(house)};
        visit.house.name = "House " + std::to_string(house + 1);
        visit.visit.house = visit.house.id;
        for (int number = 0; number < visits_each; ++number) {
            visit.visit.id = store.value().new_id();
            visit.visit.started.unix_ms -= month_ms;
            for (auto& mark : visit.visit.marks) {
                mark.id = store.value().new_id();
                mark.wall.unix_ms -= month_ms;
            }
            files.push_back(visit);
        }
        if (const auto added = store.value().add(files); !added) {
            give_up(added.error().text());
        }
    }
}

double peak_kilobytes(pid_t program) {
    std::ifstream status{"/proc/" + std::to_string(program) + "/status"};
    for (std::string word; status >> word;) {
        if (word == "VmHWM:") {
            double kilobytes = 0.0;
            status >> kilobytes;
            return kilobytes;
        }
    }
    return 0.0;
}

/// Processor seconds that it has used.
double work_of(pid_t program) {
    clockid_t clock{};
    timespec used{};
    if (::clock_getcpuclockid(program, &clock) != 0 || ::clock_gettime(clock, &used) != 0) {
        give_up("no processor time is told");
    }
    return static_cast<double>(used.tv_sec) + 1e-9 * static_cast<double>(used.tv_nsec);
}

struct Printed {
    std::vector<double> at;        ///< work done when each was told
    double seconds = 0.0;          ///< from the first to the last
    double early_kilobytes = 0.0;  ///< the most until a tenth was printed
    double most_kilobytes = 0.0;
};

Printed print(const std::string& store, const std::string& folder, int sheets) {
    std::array<int, 2> told{};
    if (::pipe(told.data()) != 0) {
        give_up("no pipe");
    }
    const pid_t program = ::fork();
    if (program == 0) {
        ::dup2(told[1], STDERR_FILENO);
        ::dup2(::open("/dev/null", O_WRONLY), STDOUT_FILENO);
        ::close(told[0]);
        ::execl(WETFRONT_CLI, WETFRONT_CLI, "store", "sheets", "--store", store.c_str(), "--to",
                folder.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(told[1]);
    Printed printed;
    std::FILE* lines = ::fdopen(told[0], "r");
    std::optional<steady_clock::time_point> begin;
    for (int c = 0; (c = std::fgetc(lines)) != EOF;) {
        if (c == '\n') {
            const auto now = steady_clock::now();
            begin = begin.value_or(now);
            printed.seconds = std::chrono::duration<double>(now - *begin).count();
            printed.at.push_back(work_of(program));
            if (static_cast<int>(printed.at.size()) == sheets / 10) {
                printed.early_kilobytes = peak_kilobytes(program);
            }
        }
    }
    std::fclose(lines);
    int status = 0;
    rusage used{};
    ::wait4(program, &status, 0, &used);
    if (status != 0 || static_cast<int>(printed.at.size()) != sheets) {
        give_up("not every sheet was printed");
    }
    printed.most_kilobytes = static_cast<double>(used.ru_maxrss);
    return printed;
}

void sheets_one_after_the_other(benchmark::State& state) {
    const int sheets = sheets_asked();
    const Folder folder;
    fill(folder.file("records.wetfront"), sheets);
    for (auto _ : state) {
        const auto printed = print(folder.file("records.wetfront"), folder.file("sheets"), sheets);
        const auto part = static_cast<std::size_t>(sheets / 10);
        const auto last = printed.at.size() - 1;
        // From line to line: the first one waits for the program's start too.
        const double first_tenth = printed.at[part] - printed.at[0];
        const double last_tenth = printed.at[last] - printed.at[last - part];
        state.counters["sheets"] = sheets;
        state.counters["sheets_a_second"] = static_cast<double>(last) / printed.seconds;
        state.counters["work_ms_a_sheet"] =
            1000.0 * (printed.at[last] - printed.at[0]) / static_cast<double>(last);
        state.counters["rate_ratio"] = first_tenth / last_tenth;
        state.counters["memory_ratio"] = printed.most_kilobytes / printed.early_kilobytes;
        state.counters["most_megabytes"] = printed.most_kilobytes / 1024.0;
    }
}
BENCHMARK(sheets_one_after_the_other)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
