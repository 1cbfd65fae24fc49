// SPDX-License-Identifier: Apache-2.0
#include <concepts>

#include "records/file_shape.h"
#include "records/marks_text.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

template <Record R>
Json written(const R& record);

template <class T>
requires std::integral<T> || std::floating_point<T> Json written(T value) {
    return value;
}
Json written(const std::string& text) {
    return text;
}
Json written(const Id& id) {
    return id.text;
}
Json written(WallTime time) {
    return to_iso8601(time);
}
Json written(TimeOfDay time) {
    return time.text();
}
Json written(const Stroke& stroke) {
    return stroke.text();
}
template <class Q>
Json written(const Entered<Q>& entry) {
    return entry.text();
}
template <NamedEnum E>
Json written(E value) {
    return std::string{enum_name(value)};
}
template <class T>
Json written(const std::vector<T>& items) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(written(item));
    }
    return list;
}

// What reads back the same when its key is missing.
template <class R, class Member>
bool can_be_left_out(const Field& field, const Member& member) {
    if constexpr (is_optional<Member>) {
        return !member.has_value();
    } else if constexpr (is_list<Member> || std::same_as<Member, Id>) {
        return member.empty();
    } else if constexpr (std::same_as<Member, std::string>) {
        return member.empty() && need_of<R, Member>(field.key) != Need::always;
    } else if constexpr (std::same_as<Member, bool>) {
        return !member && need_of<R, Member>(field.key) == Need::never;
    } else if constexpr (std::same_as<Member, StopAgreement> || std::same_as<Member, Conditions> ||
                         std::same_as<Member, Limits>) {
        return member == Member{};
    } else {
        return false;
    }
}

template <Record R>
Json written(const R& record) {
    Json object = Json::object();
    each_field(record, [&]<class Member>(const Field& field, const Member& member) {
        if (can_be_left_out<R>(field, member)) {
            return;
        }
        if constexpr (is_optional<Member>) {
            object[field.key] = written(*member);
        } else {
            object[field.key] = written(member);
        }
    });
    return object;
}

// Bytes that are not UTF-8 become U+FFFD: writing never fails.
std::string one_line(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace

std::string visit_file_text(const VisitFile& file) {
    return written(file).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string template_file_text(const SettingTemplate& described) {
    return written(TemplateFile{template_format_version, described})
               .dump(2, ' ', false, Json::error_handler_t::replace) +
           "\n";
}

std::string farm_text(const Farm& farm) {
    return one_line(written(farm));
}
std::string house_text(const House& house) {
    return one_line(written(house));
}

std::string template_text(const SettingTemplate& described) {
    return one_line(written(described));
}

std::string marks_file_text(const Visit& visit) {
    Visit bare;
    bare.id = visit.id;
    bare.house = visit.house;
    bare.started = visit.started;
    bare.marks = visit.marks;
    return written(bare).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string visit_text(const Visit& visit) {
    auto json = written(visit);
    json.erase("marks");
    return one_line(json);
}

}  // namespace wetfront
