// SPDX-License-Identifier: Apache-2.0
// A setting template's file, and the line that the store keeps of it.
#include "properties.h"
#include "records/record_text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace wetfront;
    const auto text = fuzz::text_of(data, size);
    fuzz::must_survive_writing(text, parse_template_file, template_file_text);
    fuzz::must_survive_writing(text, parse_template, template_text);
    if (const auto described = parse_template_file(text)) {
        fuzz::must(check_template(described.value(), "template").has_value(),
                   "a template from a file is whole");
        fuzz::must_survive_writing(template_text(described.value()), parse_template, template_text);
    }
    return 0;
}
