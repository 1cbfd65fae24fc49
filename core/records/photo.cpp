// SPDX-License-Identifier: Apache-2.0
#include "records/photo.h"

namespace wetfront {

bool is_sha256(std::string_view text) {
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

bool is_photo(std::string_view jpeg) {
    return jpeg.size() <= most_photo_bytes && jpeg.starts_with("\xFF\xD8\xFF") && jpeg.ends_with("\xFF\xD9");
}

}  // namespace wetfront
