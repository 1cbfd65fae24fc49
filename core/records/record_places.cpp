// SPDX-License-Identifier: Apache-2.0
#include "records/record_places.h"

#include <algorithm>
#include <span>
#include <string_view>

#include "records/file_shape.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

using Pointer = Json::json_pointer;

template <class T>
struct EntryOf;
template <class Q>
struct EntryOf<Entered<Q>> {
    using Quantity = Q;
};
template <class T>
concept AnEntry = requires {
    typename EntryOf<T>::Quantity;
};

// Keys of records need no escapes.
std::vector<std::string> keys_of(std::string_view pointer) {
    std::vector<std::string> keys;
    while (!pointer.empty()) {
        const auto end = std::min(pointer.find('/', 1), pointer.size());
        keys.emplace_back(pointer.substr(1, end - 1));
        pointer.remove_prefix(end);
    }
    return keys;
}

std::optional<std::size_t> index_in(std::string_view key) {
    if (key.empty() || key.size() > 6 || (key.size() > 1 && key.front() == '0') ||
        !std::ranges::all_of(key, [](char digit) { return digit >= '0' && digit <= '9'; })) {
        return std::nullopt;
    }
    return std::stoul(std::string{key});
}

/// Goes down the keys; false if there is no such place.
template <class T>
bool find(std::span<const std::string> keys, ChangedPlace& place) {
    if constexpr (is_optional<T>) {
        return find<typename T::value_type>(keys, place);
    } else if constexpr (is_list<T>) {
        if (keys.empty()) {
            return true;
        }
        const auto row = index_in(keys.front());
        if (!row) {
            return false;
        }
        if (place.list.empty()) {
            place.list = place.field.key;
            place.list_label = place.field.label;
        } else {
            place.inner_list_label = place.field.label;
            place.inner_row = row;
        }
        return find<typename T::value_type>(keys.subspan(1), place);
    } else if constexpr (Record<T>) {
        if (keys.empty()) {
            return true;
        }
        T blank{};
        bool found = false;
        each_field(blank, [&]<class Member>(const Field& field, Member&) {
            if (keys.front() == field.key) {
                place.field = field;
                found = find<Member>(keys.subspan(1), place);
            }
        });
        return found;
    } else {
        if constexpr (AnEntry<T>) {
            place.holds = PlaceHolds::quantity;
            place.kind = KindOf<typename EntryOf<T>::Quantity>::value;
        } else if constexpr (std::same_as<T, bool>) {
            place.holds = PlaceHolds::yes_no;
        } else if constexpr (std::floating_point<T> || std::integral<T>) {
            place.holds = PlaceHolds::number;
        } else if constexpr (std::same_as<T, Id>) {
            place.holds = PlaceHolds::reference;
        } else if constexpr (std::is_enum_v<T>) {
            place.holds = PlaceHolds::choice;
        }
        return keys.empty();
    }
}

std::string name_in(const Json& item) {
    const auto at = item.find("name");
    return at != item.end() && at->is_string() ? at->get<std::string>() : std::string{};
}

/// Whose an item of that list is: a name, or the id of what it is about.
std::string who_is(const Json& item, std::string_view list) {
    const auto text_at = [&](const char* key) {
        const auto at = item.is_object() ? item.find(key) : item.end();
        return at != item.end() && at->is_string() ? at->get<std::string>() : std::string{};
    };
    if (list == "ticks") {
        return text_at("id");
    }
    if (list == "flows") {
        return text_at("pump");
    }
    if (list == "found" || list == "left" || list == "at_banks" || list == "proof") {
        const auto timer = text_at("timer");
        return timer.empty() ? text_at("bank") : timer;
    }
    return text_at("name");
}

bool is_taken_apart(const Json& value) {
    return value.is_structured() && (value.is_array() || name_in(value).empty());
}

std::string words_in(const Json& value) {
    return value.is_string() ? value.get<std::string>() : value.is_object() ? name_in(value) : value.dump();
}

class Places {
public:
    Places(std::string_view present, bool (*find_place)(std::span<const std::string>, ChangedPlace&))
        : present_(Json::parse(present, nullptr, false)), find_{find_place} {}

    void add(const FieldChange& change) {
        change_ = &change;
        // What is more than one value is JSON; a single value is not, though it may look like it.
        const auto parsed = [&](const std::string& text) {
            auto value = Json::parse(text, nullptr, false);
            return value.is_structured() ? value : Json{};
        };
        before_ = parsed(change.before);
        after_ = parsed(change.after);
        ChangedPlace place;
        const auto keys = keys_of(change.pointer);
        if (!find_(keys, place)) {
            return;
        }
        if (place.holds == PlaceHolds::text && (before_.is_structured() || after_.is_structured()) &&
            holds_parts(keys)) {
            take_apart(change.pointer, before_, after_);
        } else {
            put(change.pointer, change.before, change.after);
        }
    }

    [[nodiscard]] ChangedPlaces all() && {
        for (const auto& item : whole_items_) {
            result_.told_apart = result_.told_apart && std::ranges::none_of(rows_, [&](const auto& other) {
                                     return other.first == item.first && other.second != item.second;
                                 });
        }
        return std::move(result_);
    }

private:
    // A free text may look like JSON; below it there is nothing.
    [[nodiscard]] bool holds_parts(std::vector<std::string> keys) const {
        ChangedPlace below;
        keys.emplace_back("0");
        if (find_(keys, below)) {
            return true;
        }
        const auto& value = before_.is_structured() ? before_ : after_;
        for (auto part = value.begin(); value.is_object() && part != value.end(); ++part) {
            keys.back() = part.key();
            if (find_(keys, below)) {
                return true;
            }
        }
        return false;
    }

    void take_apart(const std::string& pointer, const Json& before, const Json& after) {
        if (!is_taken_apart(before) && !is_taken_apart(after)) {
            put(pointer, before.is_null() ? std::string{} : words_in(before),
                after.is_null() ? std::string{} : words_in(after));
            return;
        }
        const auto part = [this](const Json& of, const auto& key) -> const Json& {
            return of.contains(key) ? of.at(key) : nothing_;
        };
        const auto& leading = before.is_structured() ? before : after;
        if (leading.is_array()) {
            const auto size =
                std::max(before.is_array() ? before.size() : 0, after.is_array() ? after.size() : 0);
            for (std::size_t i = 0; i < size; ++i) {
                take_apart(pointer + "/" + std::to_string(i),
                           before.is_array() && i < before.size() ? before[i] : nothing_,
                           after.is_array() && i < after.size() ? after[i] : nothing_);
            }
            return;
        }
        for (auto each = leading.begin(); each != leading.end(); ++each) {
            take_apart(pointer + "/" + each.key(), part(before, each.key()), part(after, each.key()));
        }
    }

    /// The item of the outermost list as it stands in the record, or in what came or went.
    [[nodiscard]] std::string owner(const std::string& item, std::string_view list) const {
        if (const Pointer at{item}; present_.contains(at)) {
            return who_is(present_.at(at), list);
        }
        if (!item.starts_with(change_->pointer)) {
            return {};
        }
        const Pointer within{item.substr(change_->pointer.size())};
        const auto& value = before_.is_structured() ? before_ : after_;
        return value.contains(within) ? who_is(value.at(within), list) : std::string{};
    }

    void put(const std::string& pointer, const std::string& before, const std::string& after) {
        ChangedPlace place;
        const auto keys = keys_of(pointer);
        if (!find_(keys, place)) {
            return;
        }
        place.before = before;
        place.after = after;
        const bool one_sided = before.empty() != after.empty();
        std::string item;
        std::size_t depth = 0;
        for (const auto& key : keys) {
            item += "/" + key;
            ++depth;
            if (index_in(key)) {
                break;
            }
        }
        const auto list = item.substr(0, item.rfind('/'));
        if (!place.list.empty()) {
            rows_.emplace_back(list, keys[depth - 1]);
            if (depth == keys.size()) {
                place.whole_item = true;
                if (one_sided) {
                    whole_items_.emplace_back(list, keys[depth - 1]);
                }
            } else {
                place.item = owner(item, place.list);
            }
            // Whose an item is never changes by itself.
            if (place.holds == PlaceHolds::reference && std::string_view{place.field.label}.empty() &&
                !one_sided) {
                result_.told_apart = false;
            }
        }
        if (is_shown(place, one_sided)) {
            result_.places.push_back(std::move(place));
        }
    }

    [[nodiscard]] static bool is_shown(const ChangedPlace& place, bool one_sided) {
        const std::string_view key = place.field.key;
        if (place.list == "ticks") {
            return key == "done";
        }
        if (place.list == "set_aside") {
            return key == "end_mark" || !one_sided;
        }
        if (place.list == "maintenance") {
            return key == "what" || !one_sided;
        }
        return !std::string_view{place.field.label}.empty();
    }

    Json present_;
    const Json nothing_;
    bool (*find_)(std::span<const std::string>, ChangedPlace&);
    const FieldChange* change_ = nullptr;
    Json before_;
    Json after_;
    std::vector<std::pair<std::string, std::string>> rows_;
    std::vector<std::pair<std::string, std::string>> whole_items_;
    ChangedPlaces result_;
};

template <class R>
ChangedPlaces places_in(const std::string& text, const std::vector<FieldChange>& changes) {
    Places places{text, find<R>};
    for (const auto& change : changes) {
        places.add(change);
    }
    return std::move(places).all();
}

}  // namespace

ChangedPlaces changed_places(const Farm& present, const std::vector<FieldChange>& changes) {
    return places_in<Farm>(farm_text(present), changes);
}

ChangedPlaces changed_places(const House& present, const std::vector<FieldChange>& changes) {
    return places_in<House>(house_text(present), changes);
}

ChangedPlaces changed_places(const Visit& present, const std::vector<FieldChange>& changes) {
    return places_in<Visit>(visit_text(present), changes);
}

}  // namespace wetfront
