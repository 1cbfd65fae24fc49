// SPDX-License-Identifier: Apache-2.0
// Lists of quantities on the command line: readings, and the points of a pump's curve.
#include <algorithm>

#include "cli/quantity_lists.h"
#include "properties.h"
#include "units/quantity_text.h"

namespace {

using namespace wetfront;

bool same(const std::vector<Duration>& a, const std::vector<Duration>& b) {
    return std::ranges::equal(a, b);
}
bool same(const std::vector<PumpPoint>& a, const std::vector<PumpPoint>& b) {
    return std::ranges::equal(
        a, b, [](const PumpPoint& p, const PumpPoint& q) { return p.flow == q.flow && p.head == q.head; });
}

template <class Q>
std::string written(Q value) {
    return print_any(any(value), units_of(KindOf<Q>::value).front());
}
std::string written(const PumpPoint& point) {
    return written(point.flow) + ":" + written(point.head);
}

template <class Parse>
void check(std::string_view text, Parse parse) {
    const auto read = parse(text);
    if (!read) {
        fuzz::must_be_told_well(read.error());
        return;
    }
    const auto items = read.value().size();
    fuzz::must(items == static_cast<std::size_t>(std::ranges::count(text, ',')) + 1,
               "a list has one item more than commas");
    std::string again;
    for (const auto& item : read.value()) {
        again += (again.empty() ? "" : ",") + written(item);
    }
    const auto back = parse(again);
    fuzz::must(back.has_value() && same(back.value(), read.value()), "a list in SI units reads back equal");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto text = fuzz::text_of(data, size);
    check(text, readings_of);
    check(text, pump_points);
    return 0;
}
