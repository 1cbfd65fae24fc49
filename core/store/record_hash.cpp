// SPDX-License-Identifier: Apache-2.0
#include "store/record_hash.h"

#include "records/record_text.h"
#include "store/sha256.h"

namespace wetfront {

std::string record_hash(const VisitFile& file) {
    return store_detail::in_hex(store_detail::sha256(visit_file_text(file)));
}

std::string photo_hash(std::string_view jpeg) {
    return store_detail::in_hex(store_detail::sha256(jpeg));
}

}  // namespace wetfront
