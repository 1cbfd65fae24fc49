// SPDX-License-Identifier: Apache-2.0
#include "water/header.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/numbers.h"
#include "water/header_solver.h"

namespace wetfront {

namespace {

Error bad_size(const char* item, double metres, std::string accepted) {
    return bad_input(item, print_number(1e3 * metres, 4) + " mm", std::move(accepted));
}

}  // namespace

Result<Header> even_header(Length length, Length bore, Length outlet_bore, Length spacing,
                           double discharge_coefficient) {
    const double end = in_si(length);
    const double step = in_si(spacing);
    Header header;
    header.length = length;
    header.bore = bore;
    WF_CHECK(check_header(header, "header"));
    if (!(step > 0.0)) {
        return bad_size("outlet spacing", step, "above 0 mm");
    }
    // 18.288 m hold sixty outlets 0.3048 m apart, whatever the last digit of the quotient says.
    const double fit = std::floor(end / step * (1.0 + 1e-12));
    if (fit < 1.0) {
        return bad_size("outlet spacing", step,
                        "at most the header's length of " + print_number(end, 4) +
                            " m: the first outlet is one spacing from the inlet");
    }
    if (fit > static_cast<double>(most_outlets)) {
        return bad_size("outlet spacing", step,
                        "at least " + print_number(1e3 * end / static_cast<double>(most_outlets), 3) +
                            " mm in this header: at most " + std::to_string(most_outlets) + " outlets");
    }
    const auto count = static_cast<std::size_t>(fit);
    header.outlets.reserve(count);
    for (std::size_t i = 1; i <= count; ++i) {
        const double at = std::min(static_cast<double>(i) * step, end);
        header.outlets.push_back({from_si<Length>(at), outlet_bore, discharge_coefficient, 1.0});
    }
    WF_CHECK(check_header(header, "header"));
    return header;
}

Result<HeaderFlow> flow_for_head(const Header& header, Length inlet_head) {
    WF_TRY(auto solver, HeaderSolver::of(header, "header"));
    const double head = in_si(inlet_head);
    if (!(head >= 0.0 && head <= highest_head_m)) {
        return bad_input("head at the inlet", print_number(head, 4) + " m",
                         "0 m to " + print_number(highest_head_m, 0) + " m");
    }
    solver.at_head(head);
    return solver.state();
}

Result<HeaderFlow> head_for_flow(const Header& header, VolumeFlow flow) {
    WF_TRY(auto both, shared_flow(std::span{&header, 1}, flow));
    return std::move(both.front());
}

}  // namespace wetfront
