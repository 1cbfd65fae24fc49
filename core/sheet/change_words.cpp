// SPDX-License-Identifier: Apache-2.0
#include "sheet/change_words.h"

#include <algorithm>
#include <array>

#include "base/result.h"
#include "rules/checklists.h"
#include "sheet/words.h"

namespace wetfront {
namespace {

constexpr std::size_t most_told = 3;

std::string name_of(const House& house, const Id& id) {
    if (const auto* timer = house.timer(id)) {
        return timer->name;
    }
    if (const auto* bank = house.bank(id)) {
        return bank->name;
    }
    const auto* pump = house.pump(id);
    return pump != nullptr ? pump->name : std::string{};
}

/// The name of the item that the place is in; empty where it has none.
std::string whose(const House& house, const ChangedPlace& place) {
    constexpr std::array lists_of_ids{"found", "left", "flows", "at_banks", "proof"};
    if (std::ranges::find(lists_of_ids, place.list) != lists_of_ids.end()) {
        return name_of(house, Id{place.item});
    }
    // Its own name is what was changed.
    return std::string_view{place.field.key} == "name" ? std::string{} : place.item;
}

/// The words for a choice of that kind; none if the text is none of them.
template <class E>
std::optional<Message> words_if(const std::string& text) {
    const auto value = enum_value<E>(text);
    return value ? std::optional{label_of(*value)} : std::nullopt;
}

Message choice_words(std::string_view key, const std::string& text) {
    std::optional<Message> words;
    if (key == "pump_end") {
        words = words_if<PumpEnd>(text);
    } else if (key == "kind") {
        words = words_if<TimerKind>(text);
        words = words ? words : words_if<SensorKind>(text);
    } else if (key == "place") {
        words = words_if<SensorPlace>(text);
    } else if (key == "counts_from") {
        words = words_if<CountsFrom>(text);
    } else if (key == "what") {
        words = words_if<Upkeep>(text);
    } else if (key == "setting") {
        words = words_if<TemplateKey>(text);
    }
    return words ? *words : verbatim(text);
}

Message::Arg value_words(const House& house, const ChangedPlace& place, const std::string& text) {
    switch (place.holds) {
        case PlaceHolds::quantity:
            if (const auto quantity = parse_any(*place.kind, text, place.field.key)) {
                return AnyQuantity{*place.kind, quantity.value().si, place.field.scale};
            }
            break;
        case PlaceHolds::yes_no:
            return text == "true" ? Message{WF_TEXT("yes")} : Message{WF_TEXT("no")};
        case PlaceHolds::choice:
            return choice_words(place.field.key, text);
        case PlaceHolds::reference: {
            const auto name = name_of(house, Id{text});
            return name.empty() ? Message{WF_TEXT("one that is not here")} : verbatim(name);
        }
        case PlaceHolds::number:
        case PlaceHolds::text:
            break;
    }
    return verbatim(printable(text));
}

Message place_words(const House& house, const ChangedPlace& place) {
    const Message label{place.field.label};
    const std::string name = whose(house, place);
    if (name.empty()) {
        return label;
    }
    const Message owner = place.list == "found"  ? Message{WF_TEXT("%1 as found"), {name}}
                          : place.list == "left" ? Message{WF_TEXT("%1 as left"), {name}}
                                                 : verbatim(name);
    // Of a list of names or ids the place is the row itself.
    if (place.inner_row && std::string_view{place.inner_list_label} != place.field.label) {
        return {WF_TEXT("%1, %2 %3: %4"),
                {owner, Message{place.inner_list_label}, static_cast<int>(*place.inner_row) + 1, label}};
    }
    return {WF_TEXT("%1: %2"), {owner, label}};
}

/// The line of a checklist that was ticked or not.
Message line_of(const ChangedPlace& place) {
    for (const auto step : {Step::safety, Step::before_leaving}) {
        for (const auto& each : checklist(step)) {
            if (each.id == place.item) {
                return each.text;
            }
        }
    }
    return verbatim(place.item);
}

Message tick_words(const ChangedPlace& place) {
    const Message line = line_of(place);
    return place.after == "true" ? Message{WF_TEXT("%1: ticked again"), {line}}
                                 : Message{WF_TEXT("%1: not ticked any more"), {line}};
}

Message told(const House& house, const ChangedPlace& place) {
    if (place.list == "ticks") {
        return tick_words(place);
    }
    if (place.list == "set_aside") {
        return place.after.empty() ? WF_TEXT("A reading that was set aside counts again")
                                   : WF_TEXT("A reading is set aside again");
    }
    const Message where = place_words(house, place);
    if (place.after.empty()) {
        return {WF_TEXT("%1: %2 taken out"), {where, value_words(house, place, place.before)}};
    }
    if (place.before.empty()) {
        return {WF_TEXT("%1: %2 put back in"), {where, value_words(house, place, place.after)}};
    }
    return {WF_TEXT("%1: %2 back to %3"),
            {where, value_words(house, place, place.before), value_words(house, place, place.after)}};
}

}  // namespace

Message change_words(const VisitFile& file, const ChangedPlaces& changed, const Message& record) {
    const auto& places = changed.places;
    const auto count = static_cast<int>(places.size());
    if (places.empty()) {
        return record;
    }
    if (!changed.told_apart || places.size() > most_told) {
        const std::string_view list = places.front().list_label;
        const bool one_list = !list.empty() && std::ranges::all_of(places, [&](const ChangedPlace& place) {
            return list == place.list_label;
        });
        return {WF_TEXT("%1, changed places: %2"),
                {one_list ? Message{places.front().list_label} : record, count}};
    }
    // An item that came or went says more than what hangs on it.
    const auto whole = std::ranges::find_if(places, &ChangedPlace::whole_item);
    const auto words = told(file.house, whole != places.end() ? *whole : places.front());
    return count == 1 ? words : Message{WF_TEXT("%1; other places: %2"), {words, count - 1}};
}

std::vector<TwoStates> state_words(const House& house, const ChangedPlaces& changed) {
    std::vector<TwoStates> all;
    for (const auto& place : changed.places) {
        const auto value = [&](const std::string& text) {
            return text.empty() ? Message{} : Message{"%1", {value_words(house, place, text)}};
        };
        if (place.list == "ticks") {
            all.push_back({line_of(place), value(place.before), value(place.after)});
        } else if (place.list == "set_aside") {
            const auto aside = [](const std::string& mark) {
                return mark.empty() ? Message{WF_TEXT("counts")} : Message{WF_TEXT("set aside")};
            };
            all.push_back({WF_TEXT("A reading"), aside(place.before), aside(place.after)});
        } else {
            all.push_back({place_words(house, place), value(place.before), value(place.after)});
        }
    }
    return all;
}

}  // namespace wetfront
