// SPDX-License-Identifier: Apache-2.0
#include "cycle/expected_fill.h"

#include <numbers>

namespace wetfront {

std::optional<Duration> expected_fill(const VisitFile& file, const Id& bank_id) {
    const auto* bank = file.house.bank(bank_id);
    if (bank == nullptr || !bank->length || !bank->header_bore) {
        return std::nullopt;
    }
    const auto flow = file.visit.flow_of(bank->pump);
    const auto* pump = file.house.pump(bank->pump);
    if (!flow || pump == nullptr) {
        return std::nullopt;
    }
    Length fed{};
    for (const auto& other : file.house.banks) {
        if (other.pump == bank->pump) {
            if (!other.length) {
                return std::nullopt;
            }
            fed += other.length->value();
        }
    }
    constexpr double healthy_fill_ratio = 1.75;
    const auto bore = bank->header_bore->value();
    const Volume pipe = std::numbers::pi / 4.0 * bore * bore * bank->length->value();
    const VolumeFlow share = flow->value() * (bank->length->value() / fed);
    const Volume riser = pump->riser_volume ? pump->riser_volume->value() : Volume{};
    return healthy_fill_ratio * pipe / share + riser / flow->value();
}

}  // namespace wetfront
