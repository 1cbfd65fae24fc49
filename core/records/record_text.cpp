// SPDX-License-Identifier: Apache-2.0
#include "records/record_text.h"

#include "records/json_text.h"
#include "records/record_reader.h"

namespace wetfront {
namespace {

template <Record R>
Result<R> parsed_part(std::string_view text, const std::string& path) {
    WF_TRY(const auto json, read_json(text, path));
    return RecordReader{false}.record<R>(json, path);
}

}  // namespace

Result<VisitFile> parse_visit_file(std::string_view text) {
    WF_TRY(const auto json, read_json(text, "visit file"));
    if (!json.is_object()) {
        return bad_input("visit file", glimpse(json), "an object with farm, house and visit is expected");
    }
    WF_TRY(auto file, RecordReader{true}.record<VisitFile>(json, ""));
    WF_CHECK(check_references(file));
    return file;
}

Result<Farm> parse_farm(std::string_view text) {
    return parsed_part<Farm>(text, "farm");
}
Result<House> parse_house(std::string_view text) {
    return parsed_part<House>(text, "house");
}
Result<Visit> parse_visit(std::string_view text) {
    return parsed_part<Visit>(text, "visit");
}

}  // namespace wetfront
