// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <optional>
#include <string>

#include "cli/cli.h"

namespace wetfront {

/// What every command is given besides its own options.
struct Common {
    const CliSurroundings& surroundings;
    UnitSystem units = UnitSystem::us;
    bool json = false;
    std::string store;  ///< file, empty if not named

    [[nodiscard]] std::ostream& out() const { return surroundings.out; }
};

/// A command that was chosen on the command line, ready to run.
using Work = std::function<Result<ExitStatus>()>;

/// Adds a command to `app`. When it is chosen, `chosen` becomes what it has to do; nothing runs while
/// arguments are read.
void add_air(CLI::App& app, const Common& common, Work& chosen);
void add_pad(CLI::App& app, const Common& common, Work& chosen);
void add_header(CLI::App& app, const Common& common, Work& chosen);
void add_water(CLI::App& app, const Common& common, Work& chosen);
void add_timing(CLI::App& app, const Common& common, Work& chosen);
void add_cycle(CLI::App& app, const Common& common, Work& chosen);
void add_advise(CLI::App& app, const Common& common, Work& chosen);
void add_check(CLI::App& app, const Common& common, Work& chosen);
void add_simulate(CLI::App& app, const Common& common, Work& chosen);
void add_sheet(CLI::App& app, const Common& common, Work& chosen);
void add_example(CLI::App& app, const Common& common, Work& chosen);
void add_schema(CLI::App& app, const Common& common, Work& chosen);
void add_store(CLI::App& app, const Common& common, Work& chosen);
void add_bundle(CLI::App& app, const Common& common, Work& chosen);

/// An option that is one of a few words; anything else is refused with the words, `words` naming them all.
template <class Choice>
[[nodiscard]] CLI::Validator one_of(std::vector<std::pair<std::string, Choice>> choices, std::string words) {
    return CLI::Validator{[choices = std::move(choices), words = std::move(words)](std::string& text) {
                              for (const auto& [word, choice] : choices) {
                                  if (text == word) {
                                      text = std::to_string(static_cast<int>(choice));
                                      return std::string{};
                                  }
                              }
                              return "'" + printable(text, 40) + "': write " + words;
                          },
                          ""};
}

/// The text of an option as a quantity; none if the option was not given. `item` names it in errors.
template <class Q>
[[nodiscard]] Result<std::optional<Q>> option_value(const std::optional<std::string>& text,
                                                    std::string_view item) {
    if (!text) {
        return std::optional<Q>{};
    }
    WF_TRY(const auto value, parse_quantity<Q>(*text, item));
    return std::optional<Q>{value};
}

}  // namespace wetfront
