// SPDX-License-Identifier: Apache-2.0
// A visit file from elsewhere, and the parts of one that the store keeps as lines of their own.
#include "properties.h"
#include "records/record_text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace wetfront;
    const auto text = fuzz::text_of(data, size);
    fuzz::must_survive_writing(text, parse_visit_file, visit_file_text);
    fuzz::must_survive_writing(text, parse_farm, farm_text);
    fuzz::must_survive_writing(text, parse_house, house_text);
    if (const auto file = parse_visit_file(text)) {
        fuzz::must_survive_writing(farm_text(file.value().farm), parse_farm, farm_text);
        fuzz::must_survive_writing(house_text(file.value().house), parse_house, house_text);
        auto visit = file.value().visit;
        visit.marks.clear();  // the journal keeps these
        const auto stored = parse_visit(visit_text(visit));
        fuzz::must(stored.has_value() && stored.value() == visit, "what a file holds can be stored");
    }
    return 0;
}
