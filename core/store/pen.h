// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "store/chain.h"
#include "store/rows.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// What writes into a file during one transaction.
struct Pen {
    Statements& sql;
    std::int64_t device;  ///< key in the table of that name
    const Id& device_id;
    IdSource& ids;
    WallTime now;

    /// Adds an entry with this device's next number and its hash, and the row of `table` that is its content.
    void write(const std::string& table, const Fields& fields) const;
};

}  // namespace wetfront::store_detail
