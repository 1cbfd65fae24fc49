// SPDX-License-Identifier: Apache-2.0
#include "records/record_text.h"

#include "records/json_text.h"
#include "records/record_json.h"
#include "records/record_reader.h"

namespace wetfront {
namespace {

template <class R>
Result<R> parsed_part(std::string_view text, const char* path, Result<R> (*record_of)(const Json&)) {
    WF_TRY(const auto json, read_json(text, path));
    return record_of(json);
}

// What a later version wrote may look like a mistake to this one: say which it is.
Result<void> check_format(const Json& json) {
    const auto found = json.find("format_version");
    if (found != json.end() && found->is_number_integer() && *found > template_format_version) {
        return bad_input("format_version", glimpse(*found),
                         "this template file was written by a later version of the program, and this one "
                         "reads format " +
                             std::to_string(template_format_version) + "; update the program");
    }
    return boost::outcome_v2::success();
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

Result<SettingTemplate> parse_template_file(std::string_view text) {
    WF_TRY(const auto json, read_json(text, "template file"));
    if (!json.is_object()) {
        return bad_input("template file", glimpse(json),
                         "an object with format_version and template is expected");
    }
    WF_CHECK(check_format(json));
    WF_TRY(const auto file, RecordReader{true}.record<TemplateFile>(json, ""));
    WF_CHECK(check_template(file.setting_template, "template"));
    return file.setting_template;
}

Result<Farm> parse_farm(std::string_view text) {
    return parsed_part(text, "farm", farm_of);
}
Result<House> parse_house(std::string_view text) {
    return parsed_part(text, "house", house_of);
}
Result<Visit> parse_visit(std::string_view text) {
    return parsed_part(text, "visit", visit_of);
}
Result<SettingTemplate> parse_template(std::string_view text) {
    return parsed_part(text, "template", template_of);
}

Result<Farm> farm_of(const Json& json) {
    return RecordReader{false}.record<Farm>(json, "farm");
}
Result<House> house_of(const Json& json) {
    return RecordReader{false}.record<House>(json, "house");
}
Result<Visit> visit_of(const Json& json) {
    return RecordReader{false}.record<Visit>(json, "visit");
}
Result<SettingTemplate> template_of(const Json& json) {
    return RecordReader{false}.record<SettingTemplate>(json, "template");
}

}  // namespace wetfront
