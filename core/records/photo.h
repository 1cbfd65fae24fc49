// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/clock.h"
#include "base/ids.h"

namespace wetfront {

/// A picture taken at the visit: of a bank, of what a finding speaks of, of both or of neither. Its bytes are
/// kept beside the visit under their hash (Store::keep_picture()).
struct Photo {
    std::string sha256;   ///< of its bytes: 64 letters, 0-9 and a-f
    Id bank;              ///< empty: of no single bank
    std::string finding;  ///< id of the finding's rule, "pump-never-rests"; empty: of none
    std::string note;
    WallTime added;
    friend bool operator==(const Photo&, const Photo&) = default;
};

/// Most photos of a visit, three of each bank and some more, and most bytes of one. Ours, no source.
constexpr std::size_t most_photos = 40;
constexpr std::size_t most_photo_bytes = std::size_t{1024} * 1024;

/// 64 letters, 0-9 and a-f.
[[nodiscard]] bool is_sha256(std::string_view text);

/// Whether these bytes can be kept as a photo: they begin and end as a JPEG file does (ITU-T T.81, B.2.1) and
/// are no more than most_photo_bytes. Whether a picture comes of them, nobody knows before it is drawn.
[[nodiscard]] bool is_photo(std::string_view jpeg);

}  // namespace wetfront
