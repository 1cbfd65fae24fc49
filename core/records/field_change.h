// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace wetfront {

/// One place of a record that an entry changed.
struct FieldChange {
    std::string
        pointer;  ///< JSON pointer (RFC 6901) in the record's text: "/conditions/ph", "/banks/0/length"
    std::string
        before;  ///< as it stands in that text, JSON where it is more than one value; empty: not there
    std::string after;

    friend bool operator==(const FieldChange&, const FieldChange&) = default;
};

}  // namespace wetfront
