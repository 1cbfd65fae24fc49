// SPDX-License-Identifier: Apache-2.0
#include "cli/json_output.h"

#include <ostream>

namespace wetfront {

void print_json(std::ostream& out, const JsonObject& object) {
    out << object.dump(2, ' ', false, JsonObject::error_handler_t::replace) << '\n';
}

}  // namespace wetfront
