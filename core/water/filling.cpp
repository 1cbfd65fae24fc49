// SPDX-License-Identifier: Apache-2.0
#include "water/filling.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "base/numbers.h"
#include "water/header_solver.h"

namespace wetfront {

namespace {

/// The filled stretch of a header behind a front.
class FilledStretch {
public:
    FilledStretch(const Header& header, const PipeFriction& pipe)
        : header_{header},
          pipe_{pipe},
          bore_{in_si(header.bore)},
          steepness_{in_si(header.rise) / in_si(header.length)} {}

    struct Inlet {
        double velocity;  ///< that a front speed asks of the inlet, m/s
        double slope;     ///< over the front speed
        double given;     ///< of it through the outlets
    };
    /// With the front at `at` m, past the first `passed` outlets.
    [[nodiscard]] Inlet inlet(double at, std::size_t passed, double front_speed) const {
        HeaderMarch march{0.5 * bore_, 0.0, front_speed, 1.0};
        double given = 0.0;
        double below = at;
        for (std::size_t i = passed; i-- > 0;) {
            const double here = in_si(header_.outlets[i].at);
            march.up_pipe(pipe_, below - here, steepness_ * (below - here));
            given += march.up_outlet(capacity_of(header_.outlets[i], bore_), header_.static_recovery);
            below = here;
        }
        return {march.velocity, march.velocity_slope, given};
    }

    struct Front {
        double speed;
        double given;
    };
    /// Front speed at which the inlet takes `velocity`; there is one above 0. The inlet takes at least what
    /// the front does, so 0 and `velocity` are a bracket.
    [[nodiscard]] Front front(double at, std::size_t passed, double velocity, double start) const {
        double low = 0.0;
        double high = velocity;
        double speed = start;
        Inlet there = inlet(at, passed, speed);
        for (int step = 0; step < 100 && std::abs(there.velocity - velocity) > 1e-12 * velocity; ++step) {
            (there.velocity < velocity ? low : high) = speed;
            if (high - low <= 1e-15 * velocity) {
                break;
            }
            speed -= (there.velocity - velocity) / there.slope;
            if (step >= newton_steps || !(speed > low && speed < high)) {
                speed = 0.5 * (low + high);
            }
            there = inlet(at, passed, speed);
        }
        return {speed, there.given};
    }

    /// How far the front comes between two points of which only the first is reached.
    [[nodiscard]] double stop(double reached, double beyond, std::size_t passed, double velocity) const {
        for (int halving = 0; halving < 50; ++halving) {
            const double middle = 0.5 * (reached + beyond);
            (inlet(middle, passed, 0.0).velocity < velocity ? reached : beyond) = middle;
        }
        return reached;
    }

private:
    static constexpr int newton_steps = 20;
    const Header& header_;
    const PipeFriction& pipe_;
    double bore_;
    double steepness_;
};

/// Front positions that bound the pieces: outlets, the far end, and points between that lie far apart.
std::vector<double> piece_ends(const Header& header) {
    const double end = in_si(header.length);
    const double longest = end / 100.0;
    std::vector<double> ends;
    double from = 0.0;
    const auto go_to = [&](double to) {
        const double pieces = std::ceil((to - from) / longest);
        for (double piece = 1.0; piece <= pieces; ++piece) {
            ends.push_back(piece == pieces ? to : from + (to - from) * piece / pieces);
        }
        from = to;
    };
    for (const Outlet& outlet : header.outlets) {
        go_to(in_si(outlet.at));
    }
    go_to(end);
    return ends;
}

}  // namespace

double Filling::arrival_share(double share) const {
    const auto after = std::lower_bound(shares.begin(), shares.end(), share);
    if (after == shares.begin()) {
        return times.front();
    }
    if (after == shares.end()) {
        return times.back();
    }
    const auto i = static_cast<std::size_t>(after - shares.begin());
    const double part = (share - shares[i - 1]) / (shares[i] - shares[i - 1]);
    return times[i - 1] + part * (times[i] - times[i - 1]);
}

Result<Filling> filling_of(const Header& header, VolumeFlow flow) {
    WF_CHECK(check_header(header, "header"));
    WF_TRY(const auto pipe, PipeFriction::of("header", header.bore, header.roughness));
    if (!(in_si(flow) >= least_flow_si && in_si(flow) <= most_flow_si)) {
        return bad_input("flow into the header", print_exact(in_si(flow)) + " m3/s",
                         print_exact(least_flow_si) + " m3/s to " + print_exact(most_flow_si) + " m3/s");
    }
    const double end = in_si(header.length);
    const double area = std::numbers::pi / 4.0 * in_si(header.bore) * in_si(header.bore);
    const double velocity = in_si(flow) / area;
    const FilledStretch filled{header, pipe};

    Filling result;
    result.arrivals.reserve(header.outlets.size());
    result.shares.push_back(0.0);
    result.times.push_back(0.0);
    double from = 0.0;
    double time = 0.0;
    double supplied = 0.0;
    double speed = velocity;
    for (const double to : piece_ends(header)) {
        while (result.arrivals.size() < header.outlets.size() &&
               in_si(header.outlets[result.arrivals.size()].at) <= from) {
            result.arrivals.push_back(seconds(time));
        }
        const std::size_t passed = result.arrivals.size();
        if (!(filled.inlet(to, passed, 0.0).velocity < velocity)) {
            return bad_input("flow into the header", print_number(in_si(flow), 9) + " m3/s",
                             "more: with this the water comes " +
                                 print_number(filled.stop(from, to, passed, velocity), 2) + " m of " +
                                 print_number(end, 2) + " m, as the outlets behind its front take all of it");
        }
        const auto front = filled.front(0.5 * (from + to), passed, velocity, speed);
        speed = front.speed;
        const double lasts = (to - from) / speed;
        time += lasts;
        supplied += front.given * area * lasts;
        from = to;
        result.shares.push_back(to / end);
        result.times.push_back(time);
    }
    while (result.arrivals.size() < header.outlets.size()) {
        result.arrivals.push_back(seconds(time));
    }
    std::for_each(result.times.begin(), result.times.end(), [&](double& each) { each /= time; });
    result.fill = seconds(time);
    result.pipe_time = seconds(end / velocity);
    result.supplied = from_si<Volume>(supplied);
    return result;
}

}  // namespace wetfront
