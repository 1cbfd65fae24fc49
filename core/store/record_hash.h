// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "records/visit.h"

namespace wetfront {

/// SHA-256, as 64 hexadecimal digits, of the visit file's text: what `wetfront-cli store show ID --json |
/// sha256sum` tells of a visit in a store.
[[nodiscard]] std::string record_hash(const VisitFile& file);

/// By which a photo is named (Photo::sha256): that of its bytes.
[[nodiscard]] std::string photo_hash(std::string_view jpeg);

}  // namespace wetfront
