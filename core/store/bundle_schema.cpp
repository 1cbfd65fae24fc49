// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <nlohmann/json.hpp>

#include "store/bundle.h"
#include "store/bundle_text.h"

namespace wetfront {
namespace {

using Json = nlohmann::ordered_json;

Json object(Json properties, const std::vector<std::string>& left_out = {}) {
    Json required = Json::array();
    for (const auto& each : properties.items()) {
        if (std::find(left_out.begin(), left_out.end(), each.key()) == left_out.end()) {
            required.push_back(each.key());
        }
    }
    return {{"type", "object"},
            {"additionalProperties", false},
            {"required", std::move(required)},
            {"properties", std::move(properties)}};
}

Json hash(const char* of_what) {
    return {{"type", "string"}, {"pattern", "^[0-9a-f]{64}$"}, {"description", of_what}};
}
Json id(const char* of_what) {
    return {{"type", "string"}, {"pattern", "^[A-Za-z0-9-]{1,64}$"}, {"description", of_what}};
}
Json time(const char* of_what) {
    return {{"type", "string"},
            {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]+(Z|[+-][0-9]{2}:[0-9]{2})$"},
            {"description", std::string{of_what} + ", ISO 8601 with offset"}};
}
Json number(const char* of_what, std::int64_t least) {
    return {{"type", "integer"}, {"minimum", least}, {"description", of_what}};
}

Json device() {
    return object({{"id", id("for ever")},
                   {"name", {{"type", "string"}, {"maxLength", 256}, {"pattern", "^[^/\\\\]*$"}}},
                   {"made", time("when its record file was made")}});
}

Json fields() {
    const Json bytes = object({{"base64", {{"type", "string"}, {"contentEncoding", "base64"}}}});
    return {{"type", "object"},
            {"additionalProperties",
             {{"anyOf", Json::array({Json{{"type", "string"}}, Json{{"type", "integer"}}, bytes})}}},
            {"description",
             "What the entry says: the columns of its row in the record file that are not NULL. `body` of a "
             "revision is a JSON Patch (RFC 6902) against the state of its parent, as text."}};
}

Json entry() {
    return object(
        {{"device", id("the device that wrote it")},
         {"number", number("of that device's entries, from 1 without a gap", 1)},
         {"unix_ms",
          {{"type", "integer"}, {"description", "when it was written, milliseconds since 1970 UTC"}}},
         {"utc_offset_min", {{"type", "integer"}, {"minimum", -840}, {"maximum", 840}}},
         {"before", hash("of the entry before it of the same device; left out where that stands in the line "
                         "before, and for number 1")},
         {"hash", hash("of this entry, over `before` and all that is here")},
         {"table",
          {{"type", "string"}, {"description", "revision, mark, mark_change, removal, sheet or picture"}}},
         {"fields", fields()}},
        {"before"});
}

std::string text_of(const char* format, const char* title, const char* description, Json content) {
    const std::string version = std::to_string(store_detail::bundle_format_version);
    std::string name{format};
    name.replace(name.find(' '), 1, ":");
    Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"$id", "urn:" + name + ":" + version},
                {"title", title},
                {"description", description}};
    schema.update(object({{"format", {{"const", format}}},
                          {"format_version", {{"const", store_detail::bundle_format_version}}},
                          {"sha256", hash("of the bytes between the first line and the last")},
                          {"content", std::move(content)}}));
    return schema.dump(2) + "\n";
}

}  // namespace

std::string bundle_schema_text() {
    return text_of(
        "wetfront bundle", "Wetfront bundle",
        "Entries of a record file on their way to another machine. The text is laid out in lines: first "
        "{\"format\":\"wetfront bundle\",\"format_version\":1,\"sha256\":\"..\",\"content\": then the "
        "content, "
        "then }, each line ended by a newline. The SHA-256 is that of what is between the first line and the "
        "last: tail -n +2 FILE | head -n -1 | sha256sum. Of the content one line says where it comes from, "
        "up "
        "to the bracket that opens the list of entries, each further line is one entry, and the last is ]}. "
        "An entry is proved by its own hash: the SHA-256 of the hash of the entry before it (32 bytes, of "
        "number 1 zeros) and these lines, each name=<type><length>:<value> and a newline, type t for text, i "
        "for a whole number in decimal, b for bytes, length in bytes: device, seq (its number), unix_ms, "
        "utc_offset_min, table, then each of its fields in the order of their names as bytes. An entry "
        "stands "
        "behind those that it refers to, if they are in the bundle. Tables and fields that a reader does not "
        "know are kept as they are and passed on.",
        object(
            {{"from", id("the device that made the bundle")},
             {"made", time("when")},
             {"devices", {{"type", "array"}, {"maxItems", store_detail::most_devices}, {"items", device()}}},
             {"entries", {{"type", "array"}, {"items", entry()}}}}));
}

std::string receipt_schema_text() {
    return text_of(
        "wetfront receipt", "Wetfront receipt",
        "Which entries of a bundle arrived at another machine, for the one that sent it. Laid out in "
        "lines as a bundle is. The hash of the last entry of a run covers all those before it.",
        object({{"receiver", device()},
                {"bundle", hash("the SHA-256 of the bundle")},
                {"made", time("when")},
                {"received",
                 {{"type", "array"},
                  {"items", object({{"device", id("the device that wrote the entries")},
                                    {"first", number("number of the first", 1)},
                                    {"last", number("number of the last", 1)},
                                    {"hash", hash("of the last")}})}}}}));
}

}  // namespace wetfront
