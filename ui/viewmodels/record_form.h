// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <algorithm>
#include <functional>
#include <memory>
#include <string_view>
#include <type_traits>
#include <vector>

#include "base/numbers.h"
#include "records/record_text.h"
#include "sheet/words.h"
#include "viewmodels/form_model.h"

namespace wetfront::ui {

// Turns the description of a record's fields into lines of a form, so that a field is described once for
// files and screens.

namespace record_form_detail {

template <class T>
struct IsEntry : std::false_type {};
template <class Q>
struct IsEntry<Optional<Q>> : std::true_type {
    using Quantity = Q;
};

/// Calls use(field, member) for the field with that key.
template <class Record, class Use>
void with_field(Record& record, std::string_view key, const Use& use) {
    each_field(record, [&](const Field& field, auto& member) {
        if (key == field.key) {
            use(field, member);
        }
    });
}

/// An enumerator's label, translated.
[[nodiscard]] QString enumerator_words(const Message& label);
[[nodiscard]] std::vector<std::pair<QString, QString>> yes_no_choices();

template <class T>
constexpr bool has_line =
    IsEntry<T>::value || std::is_same_v<T, std::string> || std::is_enum_v<T> ||
    std::is_same_v<T, std::optional<bool>> || std::is_same_v<T, std::optional<double>> ||
    std::is_same_v<T, std::optional<TimeOfDay>>;

template <class T>
QString entry_of(const T& member) {
    if constexpr (IsEntry<T>::value) {
        return member ? QString::fromStdString(member->text()) : QString{};
    } else if constexpr (std::is_same_v<T, std::string>) {
        return QString::fromStdString(member);
    } else if constexpr (std::is_enum_v<T>) {
        const auto name = enum_name(member);
        return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
        return member ? (*member ? QStringLiteral("yes") : QStringLiteral("no")) : QString{};
    } else if constexpr (std::is_same_v<T, std::optional<double>>) {
        return member ? QString::fromStdString(print_exact(*member)) : QString{};
    } else {
        return member ? QString::fromStdString(member->text()) : QString{};
    }
}

template <class T>
Result<void> take(const Field& field, T& member, const std::string& text) {
    const std::string item = field.label;
    if constexpr (std::is_same_v<T, std::string>) {
        if (text.size() > 200) {
            return bad_input(item, text, "at most 200 characters");
        }
        member = text;
    } else if constexpr (std::is_enum_v<T>) {
        const auto value = enum_value<T>(text);
        if (!value) {
            return bad_input(item, text, "choose one of the list");
        }
        member = *value;
    } else if (text.empty()) {
        member.reset();
    } else if constexpr (IsEntry<T>::value) {
        WF_TRY(member, parse_field<typename IsEntry<T>::Quantity>(field, text, item));
    } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
        member = text == "yes";
    } else if constexpr (std::is_same_v<T, std::optional<double>>) {
        WF_TRY(const double value, parse_number(text, item));
        if (value < field.least || value > field.most) {
            return bad_input(
                item, text,
                print_number(field.least, 3) + " to " + print_number(field.most, 3) + " is accepted");
        }
        member = value;
    } else {
        WF_TRY(member, TimeOfDay::parse(text, item));
    }
    return boost::outcome_v2::success();
}

template <class T>
void describe(FormField& line, const T& /*member*/) {
    using Type = FormField::Type;
    if constexpr (IsEntry<T>::value) {
        line.type = Type::quantity;
        line.kind = KindOf<typename IsEntry<T>::Quantity>::value;
    } else if constexpr (std::is_same_v<T, std::string>) {
        line.type = Type::text;
    } else if constexpr (std::is_enum_v<T>) {
        line.type = Type::choice;
        for (const auto& entry : EnumNames<T>::all) {
            line.choices.emplace_back(
                QString::fromUtf8(entry.name.data(), static_cast<qsizetype>(entry.name.size())),
                enumerator_words(label_of(entry.value)));
        }
    } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
        line.type = Type::yes_no;
        line.choices = yes_no_choices();
    } else if constexpr (std::is_same_v<T, std::optional<double>>) {
        line.type = Type::number;
    } else {
        line.type = Type::time_of_day;
    }
}

}  // namespace record_form_detail

/// Lines for the fields with those keys, in that order. `record` gives the record at the time of each call;
/// `stored` is called after a change and may refuse it (the change is then taken back).
template <class Record>
std::vector<FormField> form_lines(const std::function<Record&()>& record,
                                  const std::vector<std::string_view>& keys,
                                  const std::function<Result<void>()>& stored) {
    namespace detail = record_form_detail;
    std::vector<FormField> lines;
    for (const auto key : keys) {
        detail::with_field(record(), key, [&](const Field& field, auto& found) {
            using Member = std::remove_cvref_t<decltype(found)>;
            if constexpr (detail::has_line<Member>) {
                FormField line;
                line.about = field;
                detail::describe(line, found);
                line.entry = [record, key] {
                    QString text;
                    detail::with_field(record(), key, [&](const Field&, auto& member) {
                        if constexpr (detail::has_line<std::remove_cvref_t<decltype(member)>>) {
                            text = detail::entry_of(member);
                        }
                    });
                    return text;
                };
                line.quantity = [record, key, scale = field.scale] {
                    std::optional<AnyQuantity> value;
                    detail::with_field(record(), key, [&](const Field&, auto& member) {
                        if constexpr (detail::IsEntry<std::remove_cvref_t<decltype(member)>>::value) {
                            if (member) {
                                value = any(member->value(), scale);
                            }
                        }
                    });
                    return value;
                };
                line.set = [record, key, stored](const std::string& text) -> Result<void> {
                    const Record before = record();
                    Result<void> result = boost::outcome_v2::success();
                    detail::with_field(record(), key, [&](const Field& about, auto& member) {
                        if constexpr (detail::has_line<std::remove_cvref_t<decltype(member)>>) {
                            result = detail::take(about, member, text);
                        }
                    });
                    if (result) {
                        result = stored();
                    }
                    if (!result) {
                        record() = before;
                    }
                    return result;
                };
                lines.push_back(std::move(line));
            }
        });
    }
    return lines;
}

/// Puts lines below others.
void append(std::vector<FormField>& lines, std::vector<FormField> more);

/// Lines for the items of a list and for one more, empty, as long as there are fewer than `most`: entering
/// into that one adds an item, emptying an item takes it out. `title` names an item: "Point %1". `list` and
/// `stored` as above. Give the form to change_fields() whenever the record changed.
template <class Item>
std::vector<FormField> list_lines(const std::function<std::vector<Item>&()>& list,
                                  const std::vector<std::string_view>& keys, const QString& title,
                                  std::size_t most, const std::function<Result<void>()>& stored) {
    const auto blank = std::make_shared<Item>();
    std::vector<FormField> all;
    const auto items = list().size();
    for (std::size_t i = 0; i < std::min(items + 1, most); ++i) {
        const auto item = [list, blank, i]() -> Item& {
            auto& now = list();
            *blank = Item{};
            return i < now.size() ? now[i] : *blank;
        };
        for (auto& line :
             form_lines<Item>(item, keys, [] { return Result<void>{boost::outcome_v2::success()}; })) {
            line.title = title.arg(i + 1);
            line.spare = i == items;
            if (i > 0) {
                line.about.why = "";  // said once a list is enough
            }
            line.set = [list, stored, i, take = line.set](const std::string& text) -> Result<void> {
                const auto before = list();
                if (i >= before.size()) {
                    list().emplace_back();
                }
                auto result = take(text);
                if (result) {
                    std::erase(list(), Item{});
                    result = stored();
                }
                if (!result) {
                    list() = before;
                }
                return result;
            };
            all.push_back(std::move(line));
        }
    }
    return all;
}

/// The item of a list that belongs to one bank or pump. It is in the list only while something is entered in
/// it.
template <class Item>
class ListedItem {
public:
    /// `owner` is the member that says whose it is.
    ListedItem(std::function<std::vector<Item>&()> list, Id Item::*owner, Id id)
        : list_{std::move(list)}, owner_{owner}, id_{std::move(id)}, draft_{blank()} {}

    /// For forms: to be changed, and then kept.
    [[nodiscard]] Item& item() {
        auto& list = list_();
        const auto at = std::ranges::find(list, id_, owner_);
        return at != list.end() ? *at : draft_;
    }
    /// Calls `stored` with the list as it has to be; puts the list back where that fails.
    [[nodiscard]] Result<void> keep(const std::function<Result<void>()>& stored) {
        auto& list = list_();
        const auto before = list;
        if (std::ranges::find(list, id_, owner_) == list.end()) {
            list.push_back(draft_);
        }
        std::erase(list, blank());
        auto result = stored();
        if (result) {
            draft_ = blank();
        } else {
            list_() = before;
        }
        return result;
    }

private:
    [[nodiscard]] Item blank() const {
        Item item;
        item.*owner_ = id_;
        return item;
    }

    std::function<std::vector<Item>&()> list_;
    Id Item::*owner_;
    Id id_;
    Item draft_;
};

}  // namespace wetfront::ui
