// SPDX-License-Identifier: Apache-2.0
// Typed numbers and quantities. The first byte chooses the kind.
#include <cmath>
#include <limits>

#include "base/numbers.h"
#include "properties.h"
#include "units/quantity_text.h"

namespace wetfront::fuzz {
namespace {

void check_number(std::string_view text) {
    const auto number = parse_number(text, "number");
    if (!number) {
        must_be_told_well(number.error());
        return;
    }
    const auto exact = parse_number(print_exact(number.value()), "number");
    must(exact.has_value() && exact.value() == number.value(), "print_exact() reads back as the same number");
    for (int decimals = 0; decimals <= 12; ++decimals) {
        const auto fixed = print_fixed(number.value(), decimals);
        const auto back = fixed.size() <= 40 ? parse_number(fixed, "number") : number;
        const double slack = 0.5 * std::pow(10.0, -decimals) * (1.0 + 1e-6) +
                             std::abs(number.value()) * std::numeric_limits<double>::epsilon();
        must(back.has_value() && std::abs(back.value() - number.value()) <= slack,
             "print_fixed() is off by half of its last digit at most");
        must(print_number(number.value(), decimals).find('e') == std::string::npos,
             "print_number() has no exponent");
    }
}

void check_quantity(Kind kind, std::string_view text) {
    const auto quantity = parse_any(kind, text, "quantity");
    if (!quantity) {
        must_be_told_well(quantity.error());
        return;
    }
    const double si = quantity.value().si;
    must(quantity.value().kind == kind && std::isfinite(si), "a quantity is of its kind, and finite");
    for (const auto& unit : units_of(kind)) {
        // At the ends of what a double holds there is no number in every unit, or one of fewer digits.
        const double number = number_in(unit, si);
        const double size = std::abs(si) + unit.offset * unit.factor;
        if (!std::isfinite(number) || size > 1e290 || (si != 0.0 && size < 1e-290)) {
            continue;
        }
        const auto back = parse_any(kind, print_any(quantity.value(), unit), "quantity");
        must(back.has_value(), "what print_any() writes is read");
        must(std::abs(back.value().si - si) <= 8.0 * std::numeric_limits<double>::epsilon() * size,
             "print_any() reads back within a few units of the last binary place");
    }
    for (const auto system : {UnitSystem::us, UnitSystem::si}) {
        must(!show(quantity.value(), system).joined(system).empty(), "a quantity can be shown");
    }
}

}  // namespace
}  // namespace wetfront::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace wetfront;
    if (size == 0) {
        return 0;
    }
    const auto text = fuzz::text_of(data + 1, size - 1);
    fuzz::check_number(text);
    fuzz::check_quantity(static_cast<Kind>(data[0] % (static_cast<int>(last_kind) + 1)), text);
    return 0;
}
