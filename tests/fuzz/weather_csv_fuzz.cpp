// SPDX-License-Identifier: Apache-2.0
// Hourly weather as comma-separated values. What is written of it is read to the step in which it is written.
#include "day/weather_csv.h"
#include "weather_properties.h"

namespace {

using namespace wetfront;

void must_survive(const Weather& weather) {
    const auto text = weather_csv_text(weather, "a remark, \"quoted\"");
    const auto back = read_weather_csv(text, "back", from_si<AbsolutePressure>(101325.0));
    fuzz::must(back.has_value(), "what was written is read");
    fuzz::must(back.value().runs.size() == 1 && back.value().gaps.empty() && back.value().notes.empty(),
               "a run is written as one");
    const auto& again = back.value().runs.front();
    fuzz::must(again.from == weather.from && again.hours.size() == weather.hours.size(),
               "every hour is written once");
    for (std::size_t h = 0; h < again.hours.size(); ++h) {
        const auto& a = weather.hours[h];
        const auto& b = again.hours[h];
        fuzz::must(std::abs(in_kelvin(a.dry_bulb) - in_kelvin(b.dry_bulb)) < 0.00501 &&
                       std::abs(in_si(a.relative_humidity) - in_si(b.relative_humidity)) < 0.0000501 &&
                       std::abs(in_si(a.pressure) - in_si(b.pressure)) < 0.0501,
                   "an hour is written to a hundredth");
    }
    fuzz::must(weather_csv_text(again, "a remark, \"quoted\"") == text, "writing twice gives the same text");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto file =
        read_weather_csv(fuzz::text_of(data, size), "fuzz", from_si<AbsolutePressure>(101325.0));
    if (!file) {
        fuzz::must_be_told_well(file.error());
        return 0;
    }
    fuzz::must_be_whole(file.value());
    for (const auto& run : file.value().runs) {
        must_survive(run);
    }
    return 0;
}
