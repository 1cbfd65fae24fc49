// SPDX-License-Identifier: Apache-2.0
#include "water/header_solver.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/numbers.h"

namespace wetfront {

namespace {

// An outlet with less than this above it, m, gives less than 1e-15 of what it gives under a metre: nothing.
constexpr double no_head = 1e-30;
constexpr double nothing_known = std::numeric_limits<double>::quiet_NaN();
constexpr int newton_steps = 30;
constexpr int most_marches = 200;

Error refused(const std::string& item, double value, const char* unit, std::string accepted) {
    return bad_input(item, print_number(value, 6) + unit, std::move(accepted));
}

Result<void> check_outlet(const Outlet& outlet, const Header& header, double earliest,
                          const std::string& name) {
    const double at = in_si(outlet.at);
    const double bore = in_si(outlet.bore);
    const double end = in_si(header.length);
    if (!(at >= 0.0 && at <= end)) {
        return refused(name + " position", at, " m",
                       "0 m to the header's length of " + print_number(end, 4) + " m");
    }
    if (at < earliest) {
        return refused(
            name + " position", at, " m",
            "outlets from the inlet to the far end, here " + print_number(earliest, 4) + " m or more");
    }
    if (!(bore > 0.0 && bore < in_si(header.bore))) {
        return refused(
            name + " bore", 1e3 * bore, " mm",
            "above 0 mm, below the header's bore of " + print_number(1e3 * in_si(header.bore), 3) + " mm");
    }
    if (!(outlet.discharge_coefficient > 0.0 && outlet.discharge_coefficient <= 1.0)) {
        return refused(name + " discharge coefficient", outlet.discharge_coefficient, "",
                       "above 0, at most 1");
    }
    if (!(outlet.open_share >= 0.0 && outlet.open_share <= 1.0)) {
        return refused(name + " open share", 100.0 * outlet.open_share, " %", "0 to 100 %");
    }
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> check_header(const Header& header, const std::string& name) {
    const double length = in_si(header.length);
    const double rise = in_si(header.rise);
    if (!(length > 0.0 && length <= longest_header_m)) {
        return refused(name + " length", length, " m",
                       "above 0 m, at most " + print_number(longest_header_m, 0) + " m");
    }
    WF_CHECK(PipeFriction::of(name, header.bore, header.roughness));
    if (!(std::abs(rise) <= length)) {
        return refused(name + " rise", rise, " m",
                       "up or down by at most its length of " + print_number(length, 3) + " m");
    }
    if (!(header.static_recovery >= 0.0 && header.static_recovery <= 1.0)) {
        return refused(name + " static recovery", header.static_recovery, "", "0 to 1");
    }
    if (header.outlets.size() > most_outlets) {
        return bad_input(name + " outlets", std::to_string(header.outlets.size()),
                         "at most " + std::to_string(most_outlets));
    }
    double earliest = 0.0;
    for (std::size_t i = 0; i < header.outlets.size(); ++i) {
        WF_CHECK(
            check_outlet(header.outlets[i], header, earliest, name + " outlet " + std::to_string(i + 1)));
        earliest = in_si(header.outlets[i].at);
    }
    return boost::outcome_v2::success();
}

HeaderSolver::HeaderSolver(const Header& header, const PipeFriction& pipe)
    : header_{&header},
      pipe_{pipe},
      bore_{in_si(header.bore)},
      area_{std::numbers::pi / 4.0 * bore_ * bore_},
      steepness_{in_si(header.rise) / in_si(header.length)} {
    for (const Outlet& outlet : header.outlets) {
        capacity_ += capacity_of(outlet, bore_);
    }
    next_to_nothing_ = march({std::ssize(header.outlets) - 1, {no_head, 1.0, 0.0, 0.0}});
}

Result<HeaderSolver> HeaderSolver::of(const Header& header, const std::string& name) {
    WF_CHECK(check_header(header, name));
    if (header.outlets.empty()) {
        return bad_input(name + " outlets", "none", "at least one");
    }
    WF_TRY(const auto pipe, PipeFriction::of(name, header.bore, header.roughness));
    return HeaderSolver{header, pipe};
}

double HeaderSolver::climb_to(std::ptrdiff_t outlet) const {
    return steepness_ * in_si(header_->outlets[static_cast<std::size_t>(outlet)].at);
}

// Past the outlet before, or at the inlet, where the outlet is -1.
void HeaderSolver::up_to_before(Start& at) const {
    const Outlet& outlet = header_->outlets[static_cast<std::size_t>(at.outlet)];
    at.past.up_outlet(capacity_of(outlet, bore_), header_->static_recovery);
    --at.outlet;
    const double before =
        at.outlet < 0 ? 0.0 : in_si(header_->outlets[static_cast<std::size_t>(at.outlet)].at);
    const double stretch = in_si(outlet.at) - before;
    at.past.up_pipe(pipe_, stretch, steepness_ * stretch);
}

HeaderMarch HeaderSolver::march(Start at) const {
    while (at.outlet >= 0) {
        up_to_before(at);
    }
    return at.past;
}

double HeaderSolver::place_furthest(Aim aim, double target) {
    std::ptrdiff_t beyond = std::ssize(header_->outlets) - 1;
    const double all = value(aim, next_to_nothing_);
    if (all < target) {
        furthest_ = beyond;
        return all;
    }
    // The end stands too high, or its outlets get next to nothing: the furthest that gives water lies before.
    furthest_ = -1;
    double base = 0.0;
    while (beyond - furthest_ > 1) {
        const std::ptrdiff_t middle = furthest_ + (beyond - furthest_) / 2;
        const double there = value(aim, march({middle, {no_head, 1.0, 0.0, 0.0}}));
        if (there < target) {
            furthest_ = middle;
            base = there;
        } else {
            beyond = middle;
        }
    }
    return base;
}

void HeaderSolver::solve(Aim aim, double target) {
    const std::ptrdiff_t before = fresh_starts_.empty() ? furthest_ : -1;
    fresh_starts_.clear();
    const double base = place_furthest(aim, target);
    if (furthest_ < 0) {
        furthest_head_ = nothing_known;
        inlet_ = {target, 1.0, 0.0, 0.0};
        return;
    }
    const double enough =
        1e-12 * (aim == Aim::inlet_head ? std::abs(target) + std::abs(in_si(header_->rise)) : target);
    // Newton's next head on the logarithms, from a march that started with head u.
    const auto next_after = [&](double u, const HeaderMarch& at) {
        const double above = value(aim, at) - base;
        return u * std::exp(std::log((target - base) / above) * above / (slope(aim, at) * u));
    };
    double low = no_head;
    double high = std::numeric_limits<double>::infinity();
    double u = furthest_ == before ? next_after(furthest_head_, inlet_) : nothing_known;
    if (!(u > low && u < high)) {
        u = aim == Aim::inlet_head ? target - base : std::pow(target / (area_ * capacity_), 2.0);
    }
    for (int step = 0; step < most_marches; ++step) {
        inlet_ = march(start_with(u));
        furthest_head_ = u;
        const double got = value(aim, inlet_);
        if (std::abs(got - target) <= enough) {
            return;
        }
        (got < target ? low : high) = u;
        if (high <= low * (1.0 + 4.0 * std::numeric_limits<double>::epsilon())) {
            refine(aim, target, enough, low, high);
            return;
        }
        u = next_after(u, inlet_);
        if (step >= newton_steps || !(u > low && u < high)) {
            u = std::isinf(high) ? 16.0 * low : std::sqrt(low) * std::sqrt(high);
        }
    }
}

void HeaderSolver::refine(Aim aim, double target, double enough, double low, double high) {
    const double scale = std::abs(inlet_.head) + std::abs(in_si(header_->rise));
    const auto agree = [&](const HeaderMarch& a, const HeaderMarch& b) {
        return std::abs(a.velocity - b.velocity) <= 1e-10 * (a.velocity + b.velocity) &&
               std::abs(a.head - b.head) <=
                   std::max(1e-10 * (std::abs(a.head) + std::abs(b.head)), 1e-14 * scale);
    };
    Start below = start_with(low);
    Start above = start_with(high);
    furthest_head_ = low;
    while (below.outlet >= 0) {
        const std::ptrdiff_t begun = below.outlet;
        Start next_below = below;
        Start next_above = above;
        do {
            below = next_below;
            above = next_above;
            if (below.outlet < 0) {
                return;  // they agree all the way
            }
            up_to_before(next_below);
            up_to_before(next_above);
        } while (agree(next_below.past, next_above.past));
        if (below.outlet == begun && !fresh_starts_.empty()) {
            return;  // one outlet alone outruns the digits: no nearer than this
        }
        const auto between = [&](double part) {
            const HeaderMarch& a = below.past;
            const HeaderMarch& b = above.past;
            return Start{below.outlet,
                         {std::lerp(a.head, b.head, part), b.head - a.head,
                          std::lerp(a.velocity, b.velocity, part), b.velocity - a.velocity}};
        };
        // Rounding on the way is as large as what lies between both, so some more on either side.
        double from = -64.0;
        double to = 65.0;
        fresh_starts_.push_back(below);
        for (int halving = 0; halving < 60 && from != to; ++halving) {
            const double part = 0.5 * (from + to);
            fresh_starts_.back() = between(part);
            inlet_ = march(fresh_starts_.back());
            const double got = value(aim, inlet_);
            if (std::abs(got - target) <= enough) {
                return;
            }
            (got < target ? from : to) = part;
        }
        const Start lower = between(from);
        above = between(to);
        below = lower;
    }
}

HeaderSolver::Flow HeaderSolver::at_head(double inlet_head) {
    solve(Aim::inlet_head, inlet_head);
    return {inlet_.velocity * area_, area_ * inlet_.velocity_slope / inlet_.head_slope};
}

double HeaderSolver::at_flow(double flow) {
    solve(Aim::flow, flow);
    return inlet_.head;
}

HeaderFlow HeaderSolver::state() const {
    HeaderFlow result;
    const std::size_t count = header_->outlets.size();
    const double end_climb = climb_to(std::ssize(header_->outlets) - 1);
    result.outlets.assign(count, from_si<VolumeFlow>(0.0));
    double first_head = inlet_.head - climb_to(0);
    double last_head = inlet_.head - end_climb;
    double flow = 0.0;
    auto fresh = fresh_starts_.begin();
    for (Start at = start_with(furthest_head_); at.outlet >= 0;) {
        if (fresh != fresh_starts_.end() && fresh->outlet == at.outlet) {
            at = *fresh++;
        }
        const auto i = static_cast<std::size_t>(at.outlet);
        HeaderMarch before = at.past;
        const double given =
            area_ * before.up_outlet(capacity_of(header_->outlets[i], bore_), header_->static_recovery);
        result.outlets[i] = from_si<VolumeFlow>(given);
        flow += given;
        if (at.outlet == furthest_) {
            last_head = before.head - (end_climb - climb_to(furthest_));
        }
        if (at.outlet == 0) {
            first_head = before.head;
        }
        up_to_before(at);
    }
    result.flow = from_si<VolumeFlow>(flow);
    result.inlet_head = from_si<Length>(inlet_.head);
    result.inlet_velocity = from_si<Velocity>(flow / area_);
    result.first_head = from_si<Length>(first_head);
    result.last_head = from_si<Length>(last_head);
    const auto [lowest, highest] = std::minmax_element(result.outlets.begin(), result.outlets.end());
    result.lowest = *lowest;
    result.highest = *highest;
    if (flow > 0.0) {
        std::vector<double> flows(count);
        std::transform(result.outlets.begin(), result.outlets.end(), flows.begin(),
                       [](VolumeFlow each) { return in_si(each); });
        result.uniformity = uniformity_of(flows).value();
    }
    return result;
}

}  // namespace wetfront
