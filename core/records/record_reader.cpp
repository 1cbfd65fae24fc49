// SPDX-License-Identifier: Apache-2.0
#include "records/record_reader.h"

#include <limits>

namespace wetfront {

Result<std::string> RecordReader::text_of(const Json& json, const std::string& path, std::size_t most) const {
    if (!json.is_string()) {
        return wrong(json, path, "text in quotes is expected here");
    }
    const auto& text = json.get_ref<const std::string&>();
    if (whole_file_) {
        WF_CHECK(check_text(text, most, path));
    }
    return text;
}

Result<void> RecordReader::read(const Json& json, const Field& field, const std::string& path,
                                std::string& out) const {
    WF_TRY(out, text_of(json, path, most_characters(field.key)));
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path, Id& out) const {
    if (!json.is_string()) {
        return wrong(json, path, "an id has 1 to 64 letters, digits and hyphens, in quotes");
    }
    WF_TRY(out, parse_id(json.get_ref<const std::string&>(), path));
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path, bool& out) const {
    if (!json.is_boolean()) {
        return wrong(json, path, "true or false is expected here");
    }
    out = json.get<bool>();
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field& field, const std::string& path,
                                double& out) const {
    const auto limits = print_number(field.least, 6) + " to " + print_number(field.most, 6);
    if (!json.is_number()) {
        return wrong(json, path, "a plain number is expected here, " + limits);
    }
    const double value = json.get<double>();
    if (!(value >= field.least && value <= field.most)) {
        return wrong(json, path, "must be " + limits);
    }
    out = value;
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field& field, const std::string& path,
                                int& out) const {
    const double value = json.is_number_integer() ? json.get<double>() : field.least - 1.0;
    if (!(value >= field.least && value <= field.most)) {
        return wrong(json, path,
                     "a whole number is expected here, " + print_number(field.least, 0) +
                         (field.least == field.most ? std::string{} : " to " + print_number(field.most, 0)));
    }
    out = static_cast<int>(value);
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path,
                                std::int64_t& out) const {
    constexpr auto most = std::numeric_limits<std::int64_t>::max();
    if (!json.is_number_unsigned() || json.get<std::uint64_t>() > static_cast<std::uint64_t>(most)) {
        return wrong(json, path, "a whole number of nanoseconds, 0 or more, is expected here");
    }
    out = json.get<std::int64_t>();
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path,
                                WallTime& out) const {
    if (!json.is_string()) {
        return wrong(json, path, "write date, time and offset in quotes, as \"2026-07-01T10:04:05-05:00\"");
    }
    WF_TRY(out, parse_iso8601(json.get_ref<const std::string&>(), path));
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path,
                                TimeOfDay& out) const {
    if (!json.is_string()) {
        return wrong(json, path, "write a time of day in quotes, as \"09:30\"");
    }
    WF_TRY(out, TimeOfDay::parse(json.get_ref<const std::string&>(), path));
    return boost::outcome_v2::success();
}

Result<void> RecordReader::read(const Json& json, const Field&, const std::string& path, Stroke& out) const {
    if (!json.is_string()) {
        return wrong(json, path, "write the points of a line in quotes, as \"212,480 230,455\"");
    }
    WF_TRY(out, Stroke::parse(json.get_ref<const std::string&>(), path));
    return boost::outcome_v2::success();
}

}  // namespace wetfront
