// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "units/quantity_text.h"

/// Marks a text for the translators; the text stays as it is. lupdate knows this name.
#define WF_TEXT(text) text

namespace wetfront {

/// A sentence for a person as data: an English text with %1 to %9 and what stands there. Values keep their
/// kind, so that each reader gets his own units, and the text can be translated without touching a number.
struct Message {
    using Arg = std::variant<std::string, int, AnyQuantity, Message>;

    std::string text;  ///< English, the key of its translation; written with WF_TEXT
    std::vector<Arg> args;

    Message() = default;
    Message(const char* text_in)
        : text{text_in} {}  // NOLINT(google-explicit-constructor): a sentence is a message
    Message(std::string text_in, std::vector<Arg> args_in)
        : text{std::move(text_in)}, args{std::move(args_in)} {}

    [[nodiscard]] bool empty() const { return text.empty(); }
    friend bool operator==(const Message&, const Message&);
};

/// Text that is shown as it stands and never translated: a person's name, a house's name.
[[nodiscard]] Message verbatim(std::string text);

/// The sentence in English and in that unit system, locale-free. Placeholders in an argument are not expanded
/// again.
[[nodiscard]] std::string in_english(const Message& message, UnitSystem system);

/// Expands %1 to %9 in `text` with `args`; other characters are copied.
[[nodiscard]] std::string expand(std::string_view text, const std::vector<std::string>& args);

}  // namespace wetfront
