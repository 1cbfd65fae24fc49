// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>

#include "base/numbers.h"
#include "water/header.h"
#include "water/header_solver.h"

namespace wetfront {

namespace {

std::string metres(double value) {
    return print_number(value, 4) + " m";
}
std::string flow_text(double value) {
    return print_number(value, 9) + " m3/s";
}

struct Residual {
    double value;
    double slope;  ///< over the root of the head
};
enum class Found { here, below, above };

/// Where a residual that rises with the inlet's head is 0, from no head to the highest. Newton on the root of
/// the head, over which flow is nearly a straight line, inside a bracket.
template <class At>
Found find_head(double enough, const At& at) {
    const double highest = std::sqrt(highest_head_m);
    double low = 0.0;
    double high = highest;
    double root = 1.0;
    for (int step = 0; step < 100; ++step) {
        const Residual got = at(root);
        if (std::abs(got.value) <= enough) {
            return Found::here;
        }
        if (got.value < 0.0) {
            if (root >= highest) {
                return Found::above;
            }
            low = root;
        } else {
            if (root <= 0.0) {
                return Found::below;
            }
            high = root;
        }
        if (high - low <= 4.0 * std::numeric_limits<double>::epsilon() * high) {
            return Found::here;
        }
        const double newton = root - got.value / got.slope;
        if (newton >= highest && high == highest) {
            root = highest;
        } else if (newton <= 0.0 && low == 0.0) {
            root = 0.0;
        } else {
            root = step < 30 && newton > low && newton < high ? newton : 0.5 * (low + high);
        }
    }
    return Found::here;
}

/// Headers side by side under one head. Those that are alike share a solver, as they share their state: banks
/// of one house usually are.
class SideBySide {
public:
    static Result<SideBySide> of(std::span<const Header> headers) {
        SideBySide made;
        if (headers.empty()) {
            return bad_input("headers", "none", "at least one");
        }
        for (std::size_t i = 0; i < headers.size(); ++i) {
            const std::string name =
                headers.size() == 1 ? std::string{"header"} : "header " + std::to_string(i + 1);
            const auto alike = static_cast<std::size_t>(
                std::find(headers.begin(), headers.end(), headers[i]) - headers.begin());
            if (alike < i) {
                made.kind_of_.push_back(made.kind_of_[alike]);
            } else {
                WF_TRY(const auto solver, HeaderSolver::of(headers[i], name));
                made.kind_of_.push_back(made.kinds_.size());
                made.kinds_.push_back({solver, 0.0});
            }
            made.kinds_[made.kind_of_.back()].count += 1.0;
        }
        if (std::all_of(made.kinds_.begin(), made.kinds_.end(),
                        [](const Kind& each) { return each.solver.all_blocked(); })) {
            return bad_input("header outlets", "all blocked", "one that is open");
        }
        return made;
    }

    HeaderSolver::Flow at_head(double head) {
        HeaderSolver::Flow sum{0.0, 0.0};
        for (auto& [solver, count] : kinds_) {
            const auto flow = solver.at_head(head);
            sum.value += count * flow.value;
            sum.per_head += count * flow.per_head;
        }
        return sum;
    }

    [[nodiscard]] std::vector<HeaderFlow> states() const {
        std::vector<HeaderFlow> of_kind;
        for (const Kind& each : kinds_) {
            of_kind.push_back(each.solver.state());
        }
        std::vector<HeaderFlow> result;
        result.reserve(kind_of_.size());
        for (const std::size_t kind : kind_of_) {
            result.push_back(of_kind[kind]);
        }
        return result;
    }

    /// Where all are alike: the head at which they take that flow together, below 0 where it does not fill
    /// them.
    [[nodiscard]] std::optional<double> head_of_alike(double flow) {
        return kinds_.size() == 1 ? std::optional{kinds_.front().solver.at_flow(flow / kinds_.front().count)}
                                  : std::nullopt;
    }

private:
    struct Kind {
        HeaderSolver solver;
        double count;  ///< of the headers
    };
    std::vector<Kind> kinds_;
    std::vector<std::size_t> kind_of_;  ///< of each header
};

Error does_not_fill(double flow, double filled_by) {
    return bad_input(
        "flow into the headers", flow_text(flow),
        "at least " + flow_text(filled_by) + ": a header that falls this much runs part empty with less");
}

Error too_much(double flow, double at_most) {
    return bad_input("flow into the headers", flow_text(flow),
                     "at most " + flow_text(at_most) + ": more would take over " +
                         print_number(highest_head_m, 0) + " m of head at the inlet");
}

struct PumpLine {
    double head;
    double per_flow;  ///< below 0
};

/// The straight line at a flow; the first and the last go on beyond the curve's ends.
PumpLine pump_at(std::span<const PumpPoint> points, double flow) {
    std::size_t end = 1;
    while (end + 1 < points.size() && flow > in_si(points[end].flow)) {
        ++end;
    }
    const double q0 = in_si(points[end - 1].flow);
    const double h0 = in_si(points[end - 1].head);
    const double per_flow = (in_si(points[end].head) - h0) / (in_si(points[end].flow) - q0);
    return {h0 + per_flow * (flow - q0), per_flow};
}

Result<void> check_pump(std::span<const PumpPoint> points) {
    if (points.size() < 2) {
        return bad_input("pump curve", std::to_string(points.size()) + " points", "at least two points");
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double flow = in_si(points[i].flow);
        const double head = in_si(points[i].head);
        const std::string name = "pump curve point " + std::to_string(i + 1);
        if (!(flow >= 0.0 && flow <= most_flow_si)) {
            return bad_input(name + " flow", flow_text(flow), "0 m3/s to " + flow_text(most_flow_si));
        }
        if (!(head >= 0.0) || !std::isfinite(head)) {
            return bad_input(name + " head", metres(head), "0 m or more");
        }
        if (i > 0 && !(flow > in_si(points[i - 1].flow))) {
            return bad_input(name + " flow", flow_text(flow),
                             "more than at the point before, " + flow_text(in_si(points[i - 1].flow)));
        }
        if (i > 0 && !(head < in_si(points[i - 1].head))) {
            return bad_input(name + " head", metres(head),
                             "less than at the point before, " + metres(in_si(points[i - 1].head)) +
                                 ": a pump's head falls as its flow rises");
        }
    }
    return boost::outcome_v2::success();
}

/// The way from the sump to the headers.
class SupplyPipe {
public:
    static Result<SupplyPipe> of(const Supply& supply) {
        SupplyPipe made;
        made.lift_ = in_si(supply.static_lift);
        made.length_ = in_si(supply.pipe_length);
        if (!(std::abs(made.lift_) <= highest_head_m)) {
            return bad_input("static lift", metres(made.lift_),
                             "up or down by at most " + metres(highest_head_m));
        }
        if (!(made.length_ >= 0.0) || !std::isfinite(made.length_)) {
            return bad_input("supply pipe length", metres(made.length_), "0 m or more");
        }
        if (made.length_ > 0.0) {
            WF_TRY(made.pipe_, PipeFriction::of("supply pipe", supply.pipe_bore, supply.roughness));
            made.area_ = std::numbers::pi / 4.0 * std::pow(in_si(supply.pipe_bore), 2.0);
        }
        return made;
    }

    struct Loss {
        double head;
        double per_flow;
    };
    [[nodiscard]] Loss loss(double flow) const {
        if (!pipe_) {
            return {0.0, 0.0};
        }
        const auto lost = pipe_->at(flow / area_);
        return {length_ * lost.head, length_ * lost.per_velocity / area_};
    }
    [[nodiscard]] double lift() const { return lift_; }

private:
    double lift_ = 0.0;
    double length_ = 0.0;
    double area_ = 0.0;
    std::optional<PipeFriction> pipe_;
};

}  // namespace

Result<std::vector<HeaderFlow>> shared_flow(std::span<const Header> headers, VolumeFlow flow) {
    WF_TRY(auto all, SideBySide::of(headers));
    const double wanted = in_si(flow);
    if (!(wanted >= least_flow_si && wanted <= most_flow_si)) {
        return bad_input("flow into the headers", print_exact(wanted) + " m3/s",
                         print_exact(least_flow_si) + " m3/s to " + flow_text(most_flow_si));
    }
    Found found = Found::here;
    if (const auto head = all.head_of_alike(wanted)) {
        found = *head < 0.0 ? Found::below : *head > highest_head_m ? Found::above : Found::here;
    } else {
        found = find_head(1e-12 * wanted, [&](double root) {
            const auto at = all.at_head(root * root);
            return Residual{at.value - wanted, 2.0 * root * at.per_head};
        });
    }
    switch (found) {
        case Found::below:
            return does_not_fill(wanted, all.at_head(0.0).value);
        case Found::above:
            return too_much(wanted, all.at_head(highest_head_m).value);
        case Found::here:
            break;
    }
    return all.states();
}

Result<PumpedFlow> flow_on_pump(std::span<const Header> headers, const Supply& supply) {
    WF_TRY(auto all, SideBySide::of(headers));
    const std::span<const PumpPoint> points = supply.pump;
    WF_CHECK(check_pump(points));
    WF_TRY(const auto pipe, SupplyPipe::of(supply));
    double flow = 0.0;
    const Found found = find_head(1e-12 * in_si(points.front().head), [&](double root) {
        const auto at = all.at_head(root * root);
        const auto pump = pump_at(points, at.value);
        const auto lost = pipe.loss(at.value);
        flow = at.value;
        return Residual{root * root + pipe.lift() + lost.head - pump.head,
                        2.0 * root * (1.0 + (lost.per_flow - pump.per_flow) * at.per_head)};
    });
    const double pumped = pump_at(points, flow).head;
    if (found == Found::above) {
        return bad_input("pump curve", metres(in_si(points.front().head)) + " at its first point",
                         "a pump that leaves at most " + metres(highest_head_m) + " at the headers' inlets");
    }
    if (!(flow > 0.0)) {
        return bad_input("static lift", metres(pipe.lift()),
                         "less than the pump's head without flow, " + metres(pumped) +
                             ", with what the first outlets stand above the inlets");
    }
    if (found == Found::below) {
        return bad_input("pump curve", metres(pumped) + " at " + flow_text(flow),
                         "more than lift and friction of " + metres(pipe.lift() + pipe.loss(flow).head) +
                             " there: headers that fall this much take that flow without any pressure");
    }
    const double first = in_si(points.front().flow);
    const double last = in_si(points.back().flow);
    if (flow > last * (1.0 + 1e-9)) {
        return bad_input("pump curve", "ends at " + flow_text(last),
                         "points to at least " + flow_text(flow) + ", which the headers would take");
    }
    if (flow < first * (1.0 - 1e-9)) {
        return bad_input("pump curve", "starts at " + flow_text(first),
                         "points from at most " + flow_text(flow) + ", which the headers would take");
    }
    PumpedFlow result;
    result.flow = from_si<VolumeFlow>(flow);
    result.pump_head = from_si<Length>(pumped);
    result.supply_loss = from_si<Length>(pipe.loss(flow).head);
    result.headers = all.states();
    return result;
}

}  // namespace wetfront
