// SPDX-License-Identifier: Apache-2.0
#include "units/file_keys.h"

namespace wetfront {

std::string file_unit(Kind kind) {
    if (kind == Kind::temperature) {
        return "degC";
    }
    if (kind == Kind::fraction) {
        return "";
    }
    return std::string{units_of(kind).front().symbol};
}

double file_number(const AnyQuantity& quantity) {
    return quantity.kind == Kind::temperature ? in_celsius(from_si<Temperature>(quantity.si)) : quantity.si;
}

std::string file_key(const std::string& name, Kind kind) {
    std::string key = name;
    const auto unit = file_unit(kind);
    if (!unit.empty() && unit.front() != '/') {
        key += '_';
    }
    for (std::size_t i = 0; i < unit.size(); ++i) {
        if (unit[i] == '/') {
            // "kg/s/m2" reads as kg per s and m2.
            key += unit.find('/') == i ? "_per_" : "_";
        } else {
            key += unit[i];
        }
    }
    return key;
}

}  // namespace wetfront
