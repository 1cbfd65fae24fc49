// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <utility>

#include "base/numbers.h"
#include "records/file_shape.h"
#include "records/json_text.h"
#include "records/record_text.h"

namespace wetfront {

/// Turns a JSON tree into records, field by field as fields.h lists them. Every error names the item by its
/// path.
class RecordReader {
public:
    /// `whole_file`: names and references that a form leaves for later must be there, texts must keep to
    /// their length.
    explicit RecordReader(bool whole_file) : whole_file_{whole_file} {}

    template <Record R>
    [[nodiscard]] Result<R> record(const Json& json, const std::string& path) const {
        R out;
        WF_CHECK(read(json, Field{"", ""}, path, out));
        return out;
    }

private:
    static Error wrong(const Json& json, const std::string& path, std::string accepted) {
        return bad_input(path, glimpse(json), std::move(accepted));
    }

    static Result<void> not_null(const Json& json, const std::string& path) {
        if (json.is_null()) {
            return bad_input(path, "null", "leave out the key of what was not measured or not entered");
        }
        return boost::outcome_v2::success();
    }

    template <Record R>
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path, R& out) const {
        if (!json.is_object()) {
            return wrong(json, path, "an object in braces is expected here");
        }
        const auto below = [&](std::string_view key) {
            return path.empty() ? std::string{key} : path + "." + std::string{key};
        };
        WF_CHECK(only_known_keys(json, out, below));
        std::optional<Error> problem;
        each_field(out, [&]<class Member>(const Field& field, Member& member) {
            if (problem) {
                return;
            }
            const auto found = json.find(field.key);
            if (found != json.end()) {
                if (auto done = read(*found, field, below(field.key), member); !done) {
                    problem = std::move(done).error();
                }
                return;
            }
            const Need need = need_of<R, Member>(field.key);
            if (need == Need::always || (need == Need::in_a_whole_file && whole_file_)) {
                problem = bad_input(below(field.key), "", "missing; it must be there");
            }
        });
        if (problem) {
            return std::move(*problem);
        }
        if constexpr (std::same_as<R, Signature>) {
            WF_CHECK(check_drawn(out.drawn, below("drawn")));
        }
        return boost::outcome_v2::success();
    }

    template <Record R, class Below>
    [[nodiscard]] static Result<void> only_known_keys(const Json& json, R& record, const Below& below) {
        for (const auto& entry : json.items()) {
            bool known = false;
            each_field(record,
                       [&](const Field& field, const auto&) { known = known || entry.key() == field.key; });
            if (!known) {
                std::string all;
                each_field(record, [&](const Field& field, const auto&) {
                    all += (all.empty() ? "" : ", ") + std::string{field.key};
                });
                return bad_input(below(printable(entry.key(), 40)), "", "unknown key; known here: " + all);
            }
        }
        return boost::outcome_v2::success();
    }

    template <class T>
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    std::optional<T>& out) const {
        WF_CHECK(not_null(json, path));
        T value{};
        WF_CHECK(read(json, field, path, value));
        out = std::move(value);
        return boost::outcome_v2::success();
    }

    template <class Q>
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    std::optional<Entered<Q>>& out) const {
        WF_CHECK(not_null(json, path));
        if (!json.is_string()) {
            return wrong(json, path,
                         "write a " + std::string{name_of(KindOf<Q>::value)} +
                             " as text with its unit: " + accepted_units(KindOf<Q>::value));
        }
        WF_TRY(auto entry, parse_field<Q>(field, json.get_ref<const std::string&>(), path));
        out = std::move(entry);
        return boost::outcome_v2::success();
    }

    template <class T>
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    std::vector<T>& out) const {
        if (!json.is_array()) {
            return wrong(json, path, "a list in brackets is expected here");
        }
        if (json.size() > most_items(field.key)) {
            return bad_input(path, std::to_string(json.size()) + " items",
                             "at most " + std::to_string(most_items(field.key)));
        }
        out.reserve(json.size());
        for (std::size_t i = 0; i < json.size(); ++i) {
            const auto item = path + "[" + std::to_string(i) + "]";
            if constexpr (std::same_as<T, std::string>) {
                WF_TRY(auto text, text_of(json[i], item, most_point_characters));
                out.push_back(std::move(text));
            } else {
                T value{};
                WF_CHECK(read(json[i], field, item, value));
                out.push_back(std::move(value));
            }
        }
        return boost::outcome_v2::success();
    }

    template <NamedEnum E>
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path, E& out) const {
        if (json.is_string()) {
            if (const auto value = enum_value<E>(json.get_ref<const std::string&>())) {
                out = *value;
                return boost::outcome_v2::success();
            }
        }
        std::string names;
        for (const auto& entry : EnumNames<E>::all) {
            names += (names.empty() ? "\"" : ", \"") + std::string{entry.name} + "\"";
        }
        return wrong(json, path, "one of " + names);
    }

    [[nodiscard]] Result<std::string> text_of(const Json& json, const std::string& path,
                                              std::size_t most) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    std::string& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path, Id& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path, bool& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    double& out) const;
    /// Counts: whole numbers within the field's range.
    [[nodiscard]] Result<void> read(const Json& json, const Field& field, const std::string& path,
                                    int& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path,
                                    std::int64_t& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path,
                                    WallTime& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path,
                                    TimeOfDay& out) const;
    [[nodiscard]] Result<void> read(const Json& json, const Field&, const std::string& path,
                                    Stroke& out) const;

    bool whole_file_;
};

}  // namespace wetfront
