// SPDX-License-Identifier: Apache-2.0
#include "units/message.h"

namespace wetfront {

bool operator==(const Message& a, const Message& b) {
    return a.text == b.text && a.args == b.args;
}

Message verbatim(std::string text) {
    return Message{"%1", {Message::Arg{std::move(text)}}};
}

std::string expand(std::string_view text, const std::vector<std::string>& args) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool placeholder =
            text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9';
        const auto index = placeholder ? static_cast<std::size_t>(text[i + 1] - '1') : args.size();
        if (index < args.size()) {
            out += args[index];
            ++i;
        } else {
            out += text[i];
        }
    }
    return out;
}

std::string in_english(const Message& message, UnitSystem system) {
    std::vector<std::string> shown;
    shown.reserve(message.args.size());
    for (const auto& arg : message.args) {
        if (const auto* text = std::get_if<std::string>(&arg)) {
            shown.push_back(*text);
        } else if (const auto* count = std::get_if<int>(&arg)) {
            shown.push_back(std::to_string(*count));
        } else if (const auto* quantity = std::get_if<AnyQuantity>(&arg)) {
            shown.push_back(show(*quantity, system).joined(system));
        } else {
            shown.push_back(in_english(std::get<Message>(arg), system));
        }
    }
    return expand(message.text, shown);
}

}  // namespace wetfront
