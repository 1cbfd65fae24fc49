// SPDX-License-Identifier: Apache-2.0
// A bundle from elsewhere: its outer form, and its content, which a hash that fits would let through.
#include <vector>

#include "properties.h"
#include "store/bundle_text.h"

namespace {

using namespace wetfront;
using namespace wetfront::store_detail;

struct Bundle {
    BundleHead head;
    std::vector<BundleEntry> entries;
    friend bool operator==(const Bundle&, const Bundle&) = default;
};

Result<Bundle> parse_content(std::string_view content) {
    WF_TRY(auto reader, BundleReader::begin(content));
    Bundle bundle{reader.head(), {}};
    for (;;) {
        WF_TRY(auto entry, reader.next());
        if (!entry) {
            return bundle;
        }
        bundle.entries.push_back(std::move(*entry));
    }
}

std::string content_of(const Bundle& bundle) {
    BundleWriter writer;
    for (const auto& entry : bundle.entries) {
        writer.add(entry);
    }
    return writer.content(bundle.head);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto text = fuzz::text_of(data, size);
    fuzz::must_survive_writing(text, parse_content, content_of);
    if (const auto file = unsealed(text, "wetfront bundle"); !file) {
        fuzz::must_be_told_well(file.error());
    }
    const auto whole = sealed(text, "wetfront bundle");
    const auto again = unsealed(whole, "wetfront bundle");
    fuzz::must(again.has_value() == text.ends_with('\n') && (!again || again.value().content == text),
               "what was sealed is unsealed, if its last line ends");
    const auto fields = parse_fields(text, "fields");
    fuzz::must(!fields || parse_fields(fields_text(fields.value()), "fields") == fields,
               "fields that are read are written and read back equal");
    return 0;
}
