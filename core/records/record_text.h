// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "records/fields.h"
#include "records/visit.h"

namespace wetfront {

// Records as JSON text, and back. One description of the fields (fields.h) serves reading, writing and the
// schema. Quantities are text with their unit as entered, times ISO 8601 with offset; what was not entered is
// left out.

/// Most bytes that are read from a file: 8 MiB.
constexpr std::size_t most_file_bytes = std::size_t{8} * 1024 * 1024;

/// Two-space indented, keys in the order of fields.h, newline at the end. Works for every record of fields.h.
[[nodiscard]] std::string visit_file_text(const VisitFile& file);
[[nodiscard]] std::string template_file_text(const SettingTemplate& described);
[[nodiscard]] std::string farm_text(const Farm& farm);                      ///< one line, for the store
[[nodiscard]] std::string house_text(const House& house);                   ///< one line, for the store
[[nodiscard]] std::string template_text(const SettingTemplate& described);  ///< one line, for the store
[[nodiscard]] std::string visit_text(
    const Visit& visit);  ///< one line, without marks: those live in the journal

/// Reads and checks a whole file: UTF-8, JSON, no unknown or repeated key (named), every value in range, ids
/// unique, every reference (bank to pump, timer to pump, mark to bank, settings to timer, house to farm)
/// resolved. The error names the item by its path: "visit.conditions.outside_dry_bulb". Nothing is computed
/// on half a file.
[[nodiscard]] Result<VisitFile> parse_visit_file(std::string_view text);
[[nodiscard]] Result<Farm> parse_farm(std::string_view text);
[[nodiscard]] Result<House> parse_house(std::string_view text);
[[nodiscard]] Result<Visit> parse_visit(std::string_view text);
/// From the store: it may still be being entered; check_template() says whether it is whole.
[[nodiscard]] Result<SettingTemplate> parse_template(std::string_view text);

/// Reads and checks a template file: as parse_visit_file() does, and check_template(). A file of a later
/// format is refused before anything else of it is looked at.
[[nodiscard]] Result<SettingTemplate> parse_template_file(std::string_view text);

/// Checks between fields that a file needs and a form only warns of: references and unique ids.
[[nodiscard]] Result<void> check_references(const VisitFile& file);

/// JSON Schema (draft 2020-12) of a visit file and of a template file, generated from fields.h.
[[nodiscard]] std::string visit_schema_text();
[[nodiscard]] std::string template_schema_text();

/// A typed text for one field: its unit, its range. Used by forms before anything is stored.
template <class Q>
[[nodiscard]] Result<Entered<Q>> parse_field(const Field& field, std::string_view text,
                                             std::string_view item);

/// The range as a person reads it: "0.5 m to 200 m". Empty if the field has none.
[[nodiscard]] std::string range_text(const Field& field, Kind kind, UnitSystem system);

/// A limit typed in another unit may miss it by the last bit. Fields without a range take everything.
[[nodiscard]] bool in_range(const Field& field, double si);

/// An error if the quantity lies outside the field's range, or if that is only what is usual, outside what a
/// record can hold (1e12 in the SI unit); names both limits in the unit system of the typed
/// unit.
[[nodiscard]] Result<void> check_range(const Field& field, const AnyQuantity& value, std::string_view text,
                                       std::string_view item);

/// An error if a free text is not one line of plain UTF-8 or longer than that: files take 200 characters,
/// 2000 for an open point. Forms ask before they store.
[[nodiscard]] Result<void> check_text(std::string_view text, std::size_t most_characters,
                                      std::string_view item);

template <class Q>
Result<Entered<Q>> parse_field(const Field& field, std::string_view text, std::string_view item) {
    WF_TRY(auto entry, Entered<Q>::parse(text, item));
    WF_CHECK(check_range(field, any(entry.value(), field.scale), text, item));
    return entry;
}

}  // namespace wetfront
