// SPDX-License-Identifier: Apache-2.0
// A header of 300 outlets on a pump curve, to stay under 1 ms; beside it the same equations solved by plain
// bisection to the same accuracy, and what filling takes.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdlib>
#include <iostream>
#include <numbers>

#include "water/filling.h"
#include "water/header.h"
#include "water/pipe.h"

namespace {

using namespace wetfront;

Header long_header() {
    const auto made = even_header(from_si<Length>(30.0), from_si<Length>(0.052), from_si<Length>(0.0032),
                                  from_si<Length>(0.1));
    return made.value();
}

Supply supply() {
    return {{{from_si<VolumeFlow>(0.0), from_si<Length>(6.0)},
             {from_si<VolumeFlow>(2e-3), from_si<Length>(5.4)},
             {from_si<VolumeFlow>(6e-3), from_si<Length>(3.0)},
             {from_si<VolumeFlow>(1e-2), from_si<Length>(0.2)}},
            from_si<Length>(1.8),
            from_si<Length>(6.0),
            from_si<Length>(0.052)};
}

// Nothing but bisection: for 1/sqrt(f), for the head at the far end, until doubles end.
class Bisection {
public:
    Bisection(const Header& header, const Supply& supply) : header_{header}, supply_{supply} {}

    [[nodiscard]] double flow() const {
        double low = 0.0;
        double high = 100.0;
        double flow = 0.0;
        while (true) {
            const double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) {
                return flow;
            }
            double inlet_head = 0.0;
            flow = march(middle, inlet_head);
            const double pipe = in_si(supply_.pipe_length) * gradient(flow, in_si(supply_.pipe_bore));
            const double needed = inlet_head + in_si(supply_.static_lift) + pipe;
            (needed < pump(flow) ? low : high) = middle;
        }
    }

private:
    double march(double end_head, double& inlet_head) const {
        const double bore = in_si(header_.bore);
        double head = end_head;
        double flow = 0.0;
        for (std::size_t i = header_.outlets.size(); i-- > 0;) {
            const Outlet& outlet = header_.outlets[i];
            const double hole = std::numbers::pi / 4.0 * in_si(outlet.bore) * in_si(outlet.bore);
            flow += outlet.discharge_coefficient * hole * std::sqrt(2.0 * standard_gravity * head);
            const double from = i == 0 ? 0.0 : in_si(header_.outlets[i - 1].at);
            head += (in_si(outlet.at) - from) * gradient(flow, bore);
        }
        inlet_head = head;
        return flow;
    }

    static double colebrook(double reynolds, double rough) {
        double low = 0.5;
        double high = 40.0;
        while (true) {
            const double x = 0.5 * (low + high);
            if (x <= low || x >= high) {
                return 1.0 / (x * x);
            }
            (x + 2.0 * std::log10(rough / 3.7 + 2.51 * x / reynolds) < 0.0 ? low : high) = x;
        }
    }

    static double gradient(double flow, double bore) {
        const double velocity = flow / (std::numbers::pi / 4.0 * bore * bore);
        const double reynolds = velocity * bore / water_viscosity_si;
        if (reynolds <= 0.0) {
            return 0.0;
        }
        const double rough = 1.5e-6 / bore;
        // In the transition the library's own factor: a few of 300 stretches.
        const double f = reynolds <= 2000.0  ? 64.0 / reynolds
                         : reynolds < 4000.0 ? friction_factor(reynolds, rough).value()
                                             : colebrook(reynolds, rough);
        return f * velocity * velocity / (2.0 * standard_gravity * bore);
    }

    [[nodiscard]] double pump(double flow) const {
        std::size_t end = 1;
        while (end + 1 < supply_.pump.size() && flow > in_si(supply_.pump[end].flow)) {
            ++end;
        }
        const PumpPoint& a = supply_.pump[end - 1];
        const PumpPoint& b = supply_.pump[end];
        return in_si(a.head) + in_si(b.head - a.head) * (flow - in_si(a.flow)) / in_si(b.flow - a.flow);
    }

    const Header& header_;
    const Supply& supply_;
};

void on_a_pump(benchmark::State& state) {
    const Header header = long_header();
    const Supply from = supply();
    const double ours = in_si(flow_on_pump(std::span{&header, 1}, from).value().flow);
    const double theirs = Bisection{header, from}.flow();
    if (std::abs(ours / theirs - 1.0) > 1e-11) {
        std::cerr << "header_bench: " << ours << " and " << theirs << " m3/s differ\n";
        std::exit(1);
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(flow_on_pump(std::span{&header, 1}, from));
    }
    state.counters["outlets"] = static_cast<double>(header.outlets.size());
}
BENCHMARK(on_a_pump)->Unit(benchmark::kMicrosecond);

void on_a_pump_by_bisection(benchmark::State& state) {
    const Header header = long_header();
    const Supply from = supply();
    for (auto _ : state) {
        benchmark::DoNotOptimize(Bisection{header, from}.flow());
    }
}
BENCHMARK(on_a_pump_by_bisection)->Unit(benchmark::kMicrosecond);

void filling(benchmark::State& state) {
    const Header header = long_header();
    for (auto _ : state) {
        benchmark::DoNotOptimize(filling_of(header, from_si<VolumeFlow>(5e-3)));
    }
}
BENCHMARK(filling)->Unit(benchmark::kMicrosecond);

}  // namespace
