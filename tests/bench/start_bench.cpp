// SPDX-License-Identifier: Apache-2.0
// Cold start to the first frame and resident memory on the demo's records, beside an empty window of the same
// toolkit in the same run. Needs a display. The counters time_ratio and memory_ratio are to stay below 1.5.
#include <benchmark/benchmark.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

namespace {

struct Start {
    double seconds = 0.0;
    double kilobytes = 0.0;
};

Start start(const std::string& program) {
    const auto begin = std::chrono::steady_clock::now();
    std::FILE* output = popen(program.c_str(), "r");
    Start measured;
    if (output == nullptr || std::fscanf(output, "%lf", &measured.kilobytes) != 1) {
        std::fprintf(stderr, "%s showed no frame\n", program.c_str());
        std::exit(1);
    }
    measured.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    pclose(output);
    return measured;
}

void cold_start(benchmark::State& state) {
    std::string folder = std::filesystem::temp_directory_path() / "wetfront-start-XXXXXX";
    if (mkdtemp(folder.data()) == nullptr) {
        std::exit(1);
    }
    const std::string start_wetfront = std::string{WETFRONT_FIRST_FRAME} + " " + folder + "/records.wetfront";
    start(start_wetfront);  // makes the record file
    Start wetfront_sum;
    Start empty_sum;
    for (auto _ : state) {
        const Start empty = start(EMPTY_FIRST_FRAME);
        const Start wetfront = start(start_wetfront);
        state.SetIterationTime(wetfront.seconds);
        wetfront_sum = {wetfront_sum.seconds + wetfront.seconds, wetfront_sum.kilobytes + wetfront.kilobytes};
        empty_sum = {empty_sum.seconds + empty.seconds, empty_sum.kilobytes + empty.kilobytes};
    }
    std::filesystem::remove_all(folder);
    state.counters["time_ratio"] = wetfront_sum.seconds / empty_sum.seconds;
    state.counters["memory_ratio"] = wetfront_sum.kilobytes / empty_sum.kilobytes;
}
BENCHMARK(cold_start)->UseManualTime()->Iterations(5)->Unit(benchmark::kMillisecond);

}  // namespace
