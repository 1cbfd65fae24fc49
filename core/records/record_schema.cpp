// SPDX-License-Identifier: Apache-2.0
#include <concepts>

#include "base/numbers.h"
#include "records/file_shape.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

constexpr const char* plain_text_pattern = "^[^\\u0000-\\u001f\\u007f]*$";
constexpr const char* number_pattern = "[+-]?([0-9]+[.,]?[0-9]*|[.,][0-9]+)([eE][+-]?[0-9]+)?";

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '(' || c == ')' || c == '.' || c == '*' || c == '+') {
            out += '\\';
        }
        out += c;
    }
    return out;
}

std::string quantity_pattern(Kind kind) {
    std::string units;
    for (const auto& unit : units_of(kind)) {
        for (const auto symbol : {unit.symbol, unit.display}) {
            if (!symbol.empty()) {
                units += (units.empty() ? "" : "|") + escaped(symbol);
            }
        }
    }
    return "^ *" + std::string{number_pattern} + " *(" + units + ") *$";
}

// Points as Stroke::parse() reads them: up to 2500 across, 1000 down.
std::string stroke_pattern() {
    static_assert(field_width == 2500 && field_height == 1000);
    const std::string point = "(2500|2[0-4][0-9]{2}|1[0-9]{3}|[1-9][0-9]{0,2}|0),(1000|[1-9][0-9]{0,2}|0)";
    return "^" + point + "( " + point + "){0," + std::to_string(most_drawn_points - 1) + "}$";
}

/// What a type looks like in a file; the member is only asked for its type.
template <class T>
struct Shape;

template <Record R>
Json record_shape() {
    Json properties = Json::object();
    Json required = Json::array();
    R record;
    each_field(record, [&]<class Member>(const Field& field, const Member&) {
        auto shape = Shape<Member>::of(field);
        if (*field.label != '\0') {
            shape["title"] = field.label;
        }
        if (*field.why != '\0') {
            const auto range =
                shape.contains("description") ? shape["description"].template get<std::string>() + ". " : "";
            shape["description"] = range + field.why;
        }
        properties[field.key] = std::move(shape);
        if (need_of<R, Member>(field.key) != Need::never) {
            required.push_back(field.key);
        }
    });
    Json shape{{"type", "object"}, {"additionalProperties", false}};
    if (!required.empty()) {
        shape["required"] = std::move(required);
    }
    shape["properties"] = std::move(properties);
    return shape;
}

template <Record R>
struct Shape<R> {
    static Json of(const Field&) { return record_shape<R>(); }
};
template <class T>
struct Shape<std::optional<T>> : Shape<T> {};
template <class T>
struct Shape<std::vector<T>> {
    static Json of(const Field& field) {
        return {{"type", "array"}, {"maxItems", most_items(field.key)}, {"items", Shape<T>::of(field)}};
    }
};
template <>
struct Shape<std::vector<std::string>> {
    static Json of(const Field& field) {
        return {
            {"type", "array"},
            {"maxItems", most_items(field.key)},
            {"items",
             {{"type", "string"}, {"maxLength", most_point_characters}, {"pattern", plain_text_pattern}}}};
    }
};
template <>
struct Shape<std::vector<Stroke>> {
    static Json of(const Field& field) {
        return {{"type", "array"},
                {"maxItems", most_items(field.key)},
                {"items", {{"type", "string"}, {"pattern", stroke_pattern()}}},
                {"description",
                 "A signature drawn by hand. Each item is one line, as the points of an SVG polyline: x from "
                 "left to right, y from top to bottom, in thousandths of the field's height. All lines "
                 "together have at most " +
                     std::to_string(most_drawn_points) + " points and a length of at least " +
                     print_number(least_signature_length, 0) + "; left out where nobody drew one"}};
    }
};
template <>
struct Shape<std::string> {
    static Json of(const Field& field) {
        return {
            {"type", "string"}, {"maxLength", most_characters(field.key)}, {"pattern", plain_text_pattern}};
    }
};
template <>
struct Shape<Id> {
    static Json of(const Field&) { return {{"type", "string"}, {"pattern", "^[A-Za-z0-9-]{1,64}$"}}; }
};
template <>
struct Shape<bool> {
    static Json of(const Field&) { return {{"type", "boolean"}}; }
};
template <>
struct Shape<double> {
    static Json of(const Field& field) {
        return {{"type", "number"}, {"minimum", field.least}, {"maximum", field.most}};
    }
};
template <>
struct Shape<int> {
    static Json of(const Field& field) {
        return {{"type", "integer"},
                {"minimum", static_cast<int>(field.least)},
                {"maximum", static_cast<int>(field.most)}};
    }
};
template <>
struct Shape<std::int64_t> {
    static Json of(const Field&) {
        return {{"type", "integer"}, {"minimum", 0}, {"maximum", std::numeric_limits<std::int64_t>::max()}};
    }
};
template <>
struct Shape<WallTime> {
    static Json of(const Field&) {
        return {
            {"type", "string"},
            {"pattern",
             "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?(Z|[+-][0-9]{2}:[0-9]{2})$"},
            {"description", "ISO 8601 with offset, as 2026-07-01T10:04:05-05:00"}};
    }
};
template <>
struct Shape<TimeOfDay> {
    static Json of(const Field&) {
        return {{"type", "string"}, {"pattern", "^([01][0-9]|2[0-3]):[0-5][0-9]$"}};
    }
};
template <NamedEnum E>
struct Shape<E> {
    static Json of(const Field&) {
        Json names = Json::array();
        for (const auto& entry : EnumNames<E>::all) {
            names.push_back(std::string{entry.name});
        }
        return {{"enum", std::move(names)}};
    }
};
template <class Q>
struct Shape<Entered<Q>> {
    static Json of(const Field& field) {
        constexpr Kind kind = KindOf<Q>::value;
        Json shape{{"type", "string"}, {"maxLength", 64}, {"pattern", quantity_pattern(kind)}};
        const auto si = range_text(field, kind, UnitSystem::si);
        const auto us = range_text(field, kind, UnitSystem::us);
        if (!si.empty()) {
            const auto range = si == us ? si : si + " (" + us + ")";
            shape["description"] =
                field.kept ? "usual: " + range + "; what lies outside is kept as found, and flagged" : range;
        }
        return shape;
    }
};

}  // namespace

std::string visit_schema_text() {
    Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"$id", "urn:wetfront:visit-file:1"},
                {"title", "Wetfront visit file"},
                {"description",
                 "One visit to one house, with the farm and the house it speaks of. A quantity is text with "
                 "its unit, as "
                 "\"75 s\" or \"98degF\"; what was not measured or not entered is left out. Beyond this "
                 "schema the program "
                 "checks that quantities lie in the range their description names (unless that is only what "
                 "is usual), that ids are unique and "
                 "references "
                 "resolve, and that no key stands twice."}};
    schema.update(record_shape<VisitFile>());
    return schema.dump(2) + "\n";
}

std::string template_schema_text() {
    Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"$id", "urn:wetfront:template-file:" + std::to_string(template_format_version)},
                {"title", "Wetfront template file"},
                {"description",
                 "A controller as a firm describes it: which settings it has, in the order in which it asks, "
                 "under which label, in which unit and steps and within which range. Beyond this schema the "
                 "program checks that no setting stands twice, that those which its kind of timer needs are "
                 "there and none that it cannot have, that units fit, that ranges hold at least one step, "
                 "and that they leave room for what the controller demands between settings."}};
    schema.update(record_shape<TemplateFile>());
    return schema.dump(2) + "\n";
}

}  // namespace wetfront
