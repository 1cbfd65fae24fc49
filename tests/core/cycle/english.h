// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "units/message.h"

namespace wetfront::test {

inline std::string english(const Message& message) {
    return in_english(message, UnitSystem::si);
}

inline std::vector<std::string> english(const std::vector<Message>& messages) {
    std::vector<std::string> texts;
    for (const auto& message : messages) {
        texts.push_back(english(message));
    }
    return texts;
}

}  // namespace wetfront::test
