// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace wetfront {

/// The name an enumerator has in files.
template <class E>
struct EnumName {
    E value;
    std::string_view name;
};
// Compilers before P1816 (clang 14 is one) deduce nothing for an aggregate by themselves.
template <class E>
EnumName(E, std::string_view) -> EnumName<E>;

/// Every enumerator with its name in files; one specialisation an enumeration, in one place each.
template <class E>
struct EnumNames;

template <class E>
[[nodiscard]] std::string_view enum_name(E value) {
    for (const auto& entry : EnumNames<E>::all) {
        if (entry.value == value) {
            return entry.name;
        }
    }
    return {};
}

template <class E>
[[nodiscard]] std::optional<E> enum_value(std::string_view name) {
    for (const auto& entry : EnumNames<E>::all) {
        if (entry.name == name) {
            return entry.value;
        }
    }
    return std::nullopt;
}

template <class E>
concept NamedEnum = requires {
    EnumNames<E>::all;
};

}  // namespace wetfront
