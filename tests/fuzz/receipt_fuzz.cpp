// SPDX-License-Identifier: Apache-2.0
// What a receipt from elsewhere says, as if its hash fitted; its outer form is that of a bundle.
#include "properties.h"
#include "store/receipt_text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace wetfront;
    fuzz::must_survive_writing(fuzz::text_of(data, size), store_detail::parse_receipt,
                               store_detail::receipt_content);
    return 0;
}
