// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "store/bundle_text.h"

// Not for other folders.
//
// A receipt has the outer form of a bundle (bundle_text.h). Its content is one line about it, then a line for
// each run of entries that a device numbered one after the other, with the hash of the last:
//
//   {"receiver":{"id":..,"name":..,"made":..},"bundle":"<SHA-256>","made":"<time>","received":[
//   {"device":"<id>","first":1,"last":500,"hash":".."}
//   ]}
//
// The last hash covers all of them, so the sender knows that the receiver has what it has itself.
namespace wetfront::store_detail {

constexpr std::string_view receipt_format = "wetfront receipt";

struct ReceivedRun {
    std::string device;
    std::int64_t first = 0;
    std::int64_t last = 0;
    Hash hash{};  ///< of the last
    friend bool operator==(const ReceivedRun&, const ReceivedRun&) = default;
};

struct Receipt {
    BundleDevice receiver;
    std::string bundle;  ///< SHA-256 of its content
    WallTime made;
    std::vector<ReceivedRun> runs;
    friend bool operator==(const Receipt&, const Receipt&) = default;
};

/// What sealed() takes, and back from what unsealed() gives.
[[nodiscard]] std::string receipt_content(const Receipt& receipt);
[[nodiscard]] Result<Receipt> parse_receipt(std::string_view content);

}  // namespace wetfront::store_detail
