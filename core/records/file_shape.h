// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <nlohmann/json.hpp>
#include <string_view>
#include <type_traits>
#include <vector>

#include "records/fields.h"

namespace wetfront {

// The shape of record files beyond fields.h, shared by reading, writing and schema; not for other folders.

using Json = nlohmann::ordered_json;

template <class T>
constexpr bool is_optional = false;
template <class T>
constexpr bool is_optional<std::optional<T>> = true;

template <class T>
constexpr bool is_list = false;
template <class T>
constexpr bool is_list<std::vector<T>> = true;

struct IgnoreField {
    template <class T>
    void operator()(const Field&, T&&) const {}
};

/// True for the structs that each_field knows.
template <class T>
concept Record = requires(T& record) {
    each_field(record, IgnoreField{});
};

/// When a key may be missing.
enum class Need {
    never,            ///< missing means not entered, or the default that visit.h and mark.h name
    in_a_whole_file,  ///< a record that is still being entered may lack it, a whole file may not
    always,
};

template <class R, class Member>
[[nodiscard]] constexpr Need need_of(std::string_view key) {
    if constexpr (std::same_as<R, Mark>) {
        if (key == "bank" || key == "seen" || key == "undone" || key == "started_by" || key == "pads" ||
            key == "proof") {
            return Need::never;
        }
    }
    if constexpr (std::same_as<R, Timer>) {
        if (key == "template_id") {
            return Need::never;
        }
    }
    if constexpr (std::same_as<R, Maintenance>) {
        if (key == "pump") {
            return Need::never;
        }
    }
    if constexpr (std::same_as<R, Photo>) {
        return key == "sha256" || key == "added" ? Need::always : Need::never;
    }
    if constexpr (std::same_as<R, ProofNotes>) {
        return Need::never;  // which of its ids must be there, check_references() says
    }
    if constexpr (std::same_as<Member, StopAgreement> || std::same_as<Member, Conditions> ||
                  std::same_as<Member, Limits>) {
        return Need::never;
    }
    if constexpr (std::same_as<R, PadBank>) {
        if (key == "pump") {
            return Need::in_a_whole_file;
        }
    }
    if constexpr (std::same_as<Member, std::string>) {
        if constexpr (std::same_as<R, TemplateSetting>) {
            return key == "label" ? Need::in_a_whole_file : Need::never;
        }
        if constexpr (std::same_as<R, Farm> || std::same_as<R, House> || std::same_as<R, SettingTemplate>) {
            return key == "name" ? Need::in_a_whole_file : Need::never;
        }
        return std::same_as<R, Tick> && key == "note"               ? Need::never
               : std::same_as<R, Tick> || std::same_as<R, BootTime> ? Need::always
                                                                    : Need::never;
    }
    return is_optional<Member> || is_list<Member> ? Need::never : Need::always;
}

/// Most characters of a text, and of one open point.
constexpr std::size_t most_text_characters = 200;
constexpr std::size_t most_point_characters = 2000;
[[nodiscard]] constexpr std::size_t most_characters(std::string_view key) {
    return key == "label" ? most_label_characters : most_text_characters;
}

/// Most items of the list with that key. Ours, no source: far above any house, far below what could exhaust
/// memory.
[[nodiscard]] constexpr std::size_t most_items(std::string_view key) {
    if (key == "pumps" || key == "flows" || key == "timers" || key == "found" || key == "left" ||
        key == "trim_rows") {
        return 4;
    }
    if (key == "photos") {
        return most_photos;
    }
    if (key == "banks" || key == "at_banks") {
        return 8;
    }
    if (key == "marks") {
        return 100'000;
    }
    if (key == "settings") {
        return EnumNames<TemplateKey>::all.size();
    }
    if (key == "dependencies") {
        return EnumNames<SettingDependency>::all.size();
    }
    if (key == "set_aside") {
        return 1'000;
    }
    if (key == "drawn") {
        return most_strokes;
    }
    if (key == "ticks" || key == "maintenance") {
        return 200;
    }
    return 50;
}

}  // namespace wetfront
