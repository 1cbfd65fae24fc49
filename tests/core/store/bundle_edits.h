// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "machines.h"
#include "store/bundle_text.h"

// What stands in a bundle, taken apart and put together again, for the tests of bundles.
namespace wetfront::test {

/// A text as a field of an entry; a literal alone would be taken for a flag.
[[nodiscard]] inline store_detail::Value words(std::string_view text) {
    return store_detail::value(text);
}

[[nodiscard]] std::vector<store_detail::BundleEntry> entries_of(const std::string& bundle);

/// The bundle with those entries instead.
[[nodiscard]] std::string with_entries(const std::string& bundle,
                                       const std::vector<store_detail::BundleEntry>& entries);

/// Each entry behind the one before it, as if one device had written them so, from number 1 on.
void chain_anew(std::vector<store_detail::BundleEntry>& entries);

/// The bundle as its device would have written it with another content.
template <class Change>
[[nodiscard]] std::string rewritten(const std::string& bundle, Change change) {
    auto entries = entries_of(bundle);
    change(entries);
    chain_anew(entries);
    return with_entries(bundle, entries);
}

/// Farm, house and an open visit with two marks, the second undone: six entries.
void enter_visit(Machine& machine, const std::string& visit = "visit-1");
void rename_house(Machine& machine, const std::string& name);

}  // namespace wetfront::test
