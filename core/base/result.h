// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <boost/outcome/basic_result.hpp>
#include <boost/outcome/policy/terminate.hpp>
#include <string>
#include <string_view>
#include <utility>

namespace wetfront {

/// Why something could not be done, in the three parts a person needs. Text is English and locale-free.
struct Error {
    enum class Kind {
        bad_input,  ///< a value, text or file that is not acceptable; exit status 2
        storage,    ///< a store or file that could not be read or written; exit status 3
    };
    Kind kind = Kind::bad_input;
    std::string item;      ///< what it is about: "header length", "visit.json line 12"
    std::string read;      ///< what was found there, shortened to something printable; may be empty
    std::string accepted;  ///< what would be accepted, or what to do

    [[nodiscard]] std::string text() const;
    friend bool operator==(const Error&, const Error&) = default;
};

/// A bad-input error; `read` is shortened to 60 characters and made printable.
[[nodiscard]] Error bad_input(std::string item, std::string_view read, std::string accepted);

/// A storage error: what failed and what is safe or can be done.
[[nodiscard]] Error storage_error(std::string item, std::string_view cause, std::string what_to_do);

/// A value or the reason why there is none. Asking an error for its value terminates: check first.
template <class T>
using Result = boost::outcome_v2::basic_result<T, Error, boost::outcome_v2::policy::terminate>;

// NOLINTBEGIN(cppcoreguidelines-macro-usage,bugprone-macro-parentheses): an early return needs a macro
#define WF_JOIN_2(a, b) a##b
#define WF_JOIN(a, b) WF_JOIN_2(a, b)
#define WF_TRY_AS(name, declaration, expression) \
    auto&& name = (expression);                  \
    if (!name) {                                 \
        return std::move(name).error();          \
    }                                            \
    declaration = std::move(name).value()
/// Leave the function with the error of an expression, or go on with its value: WF_TRY(const auto x,
/// compute());
#define WF_TRY(declaration, expression) WF_TRY_AS(WF_JOIN(wf_try_, __COUNTER__), declaration, expression)
/// The same where only success matters: WF_CHECK(store.commit());
#define WF_CHECK_AS(name, expression)   \
    auto&& name = (expression);         \
    if (!name) {                        \
        return std::move(name).error(); \
    }
#define WF_CHECK(expression) WF_CHECK_AS(WF_JOIN(wf_check_, __COUNTER__), expression)
// NOLINTEND(cppcoreguidelines-macro-usage,bugprone-macro-parentheses)

/// Text that can be shown: control characters and broken UTF-8 become '?', longer text ends in "...".
[[nodiscard]] std::string printable(std::string_view text, std::size_t most_bytes = 60);

/// True if the bytes are well-formed UTF-8 (no overlong forms, no surrogates, at most U+10FFFF).
[[nodiscard]] bool is_utf8(std::string_view bytes);

}  // namespace wetfront
