// SPDX-License-Identifier: Apache-2.0
// Times, times of day and ids, as files write them.
#include "base/clock.h"
#include "base/ids.h"
#include "properties.h"
#include "records/settings.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace wetfront;
    const auto text = fuzz::text_of(data, size);
    // A fraction beyond milliseconds is cut, so a text may change once; the moment stays.
    fuzz::must_survive_writing(
        text, [](std::string_view from) { return parse_iso8601(from, "time"); }, to_iso8601);
    if (const auto time = parse_iso8601(text, "time")) {
        fuzz::must(local_date(time.value()) == text.substr(0, 10),
                   "the date at the place is the one written");
        fuzz::must(local_clock(time.value()) == text.substr(11, 5),
                   "the clock at the place is the one written");
    }
    fuzz::must_survive_writing(
        text, [](std::string_view from) { return TimeOfDay::parse(from, "time of day"); },
        [](TimeOfDay time) { return time.text(); });
    fuzz::must_survive_writing(
        text, [](std::string_view from) { return parse_id(from, "id"); },
        [](const Id& id) { return id.text; });
    return 0;
}
