// SPDX-License-Identifier: Apache-2.0
// Moist air from dry bulb, humidity and pressure, against a plain loop over the same equations (ASHRAE
// Handbook - Fundamentals 2017, chapter 1, eqs. 5, 6, 20, 26, 30, 33, 35) in the manner of PsychroLib and to
// its tolerance: dew point by Newton's rule from the dry bulb until a step is under 0.001 K, wet bulb by
// bisection between dew point and dry bulb until the bracket is under 0.001 K. The loop comes twice: as such
// a library has it (powers by std::pow, each quantity by its own function, so that the dew point is found
// twice for a full state), and trimmed (powers multiplied out, the dew point found once). Ours comes as
// wet bulb alone and as the full state.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <ctime>
#include <limits>
#include <random>
#include <vector>

#include "air/moist_air.h"

namespace {

using namespace wetfront;

struct Question {
    double t;
    double humidity;
    double p;
};

struct Plain {
    double wet;
    double dew;
    double ratio;
    double enthalpy;
    double volume;
    double density;
};

enum class Manner { library, trimmed };

constexpr double tolerance = 0.001;  // K

template <Manner manner>
double cubed(double x) {
    return manner == Manner::library ? std::pow(x, 3) : x * x * x;
}
template <Manner manner>
double to_the_fourth(double x) {
    return manner == Manner::library ? std::pow(x, 4) : x * x * x * x;
}

template <Manner manner>
double saturation(double t) {
    const double k = t + 273.15;
    if (t <= 0.01) {
        return std::exp(-5.6745359e3 / k + 6.3925247 - 9.6778430e-3 * k + 6.2215701e-7 * k * k +
                        2.0747825e-9 * cubed<manner>(k) - 9.4840240e-13 * to_the_fourth<manner>(k) +
                        4.1635019 * std::log(k));
    }
    return std::exp(-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k * k -
                    1.4452093e-8 * cubed<manner>(k) + 6.5459673 * std::log(k));
}

template <Manner manner>
double log_slope(double t) {
    const double k = t + 273.15;
    if (t <= 0.01) {
        return 5.6745359e3 / (k * k) - 9.6778430e-3 + 2.0 * 6.2215701e-7 * k + 3.0 * 2.0747825e-9 * k * k -
               4.0 * 9.4840240e-13 * cubed<manner>(k) + 4.1635019 / k;
    }
    return 5.8002206e3 / (k * k) - 4.8640239e-2 + 2.0 * 4.1764768e-5 * k - 3.0 * 1.4452093e-8 * k * k +
           6.5459673 / k;
}

double ratio_of(double vapour, double p) {
    return 0.621945 * vapour / (p - vapour);
}

template <Manner manner>
double ratio_from_wet(double t, double wet, double p) {
    const double saturated = ratio_of(saturation<manner>(wet), p);
    if (wet >= 0.0) {
        return ((2501.0 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501.0 + 1.86 * t - 4.186 * wet);
    }
    return ((2830.0 - 0.24 * wet) * saturated - 1.006 * (t - wet)) / (2830.0 + 1.86 * t - 2.1 * wet);
}

template <Manner manner>
double plain_dew_point(double t, double vapour) {
    const double wanted = std::log(vapour);
    double dew = t;
    for (int step = 0; step < 100; ++step) {
        const double last = dew;
        dew = last - (std::log(saturation<manner>(last)) - wanted) / log_slope<manner>(last);
        dew = std::clamp(dew, -100.0, 200.0);
        if (std::abs(dew - last) <= tolerance) {
            break;
        }
    }
    return std::min(dew, t);
}

template <Manner manner>
double plain_wet_bulb(const Question& q, double ratio, double dew) {
    double low = dew;
    double high = q.t;
    while (high - low > tolerance) {
        const double middle = 0.5 * (low + high);
        (ratio_from_wet<manner>(q.t, middle, q.p) > ratio ? high : low) = middle;
    }
    return 0.5 * (low + high);
}

template <Manner manner>
Plain plain_wet_bulb_of(const Question& q) {
    Plain air{};
    const double vapour = q.humidity * saturation<manner>(q.t);
    air.ratio = ratio_of(vapour, q.p);
    air.dew = plain_dew_point<manner>(q.t, vapour);
    air.wet = plain_wet_bulb<manner>(q, air.ratio, air.dew);
    return air;
}

template <Manner manner>
Plain plain_state_of(const Question& q) {
    Plain air = plain_wet_bulb_of<manner>(q);
    if (manner == Manner::library) {
        air.dew = plain_dew_point<manner>(q.t, q.p * air.ratio / (0.621945 + air.ratio));
    }
    air.enthalpy = 1000.0 * (1.006 * q.t + air.ratio * (2501.0 + 1.86 * q.t));
    air.volume = 287.042 * (q.t + 273.15) * (1.0 + 1.607858 * air.ratio) / q.p;
    air.density = (1.0 + air.ratio) / air.volume;
    return air;
}

MoistAir our_state_of(const Question& q) {
    return air_from_humidity(celsius(q.t), from_si<Fraction>(q.humidity), from_si<AbsolutePressure>(q.p))
        .value();
}

// The whole range, shuffled so that no loop can learn its way through.
std::vector<Question> questions() {
    std::vector<Question> all;
    for (int t = -40; t <= 80; t += 2) {
        for (int humidity = 2; humidity <= 100; humidity += 7) {
            for (int p = 60; p <= 110; p += 5) {
                all.push_back({1.0 * t, 0.01 * humidity, 1000.0 * p});
            }
        }
    }
    std::shuffle(all.begin(), all.end(), std::mt19937{1});
    return all;
}

// Ours and the plain way in turn on all questions, by the processor time of the quickest go.
template <class PlainWay>
double times_faster(const std::vector<Question>& all, PlainWay plain_way) {
    const auto time = [&](auto way) {
        const std::clock_t start = std::clock();
        for (const auto& q : all) {
            benchmark::DoNotOptimize(way(q));
        }
        return static_cast<double>(std::clock() - start);
    };
    double plain = std::numeric_limits<double>::infinity();
    double ours = plain;
    for (int go = 0; go < 20; ++go) {
        plain = std::min(plain, time(plain_way));
        ours = std::min(ours, time(our_state_of));
    }
    return plain / ours;
}

// How far the answer is from solving its equation, K: the equation's residual over its slope.
double wet_bulb_residual(const Question& q, double ratio, double wet) {
    constexpr double aside = 1e-3;
    const auto at = [&](double x) { return ratio_from_wet<Manner::trimmed>(q.t, x, q.p); };
    // The slope is taken on the side away from 0 degC, where the equation changes.
    const double step = wet >= 0.0 ? aside : -aside;
    return std::abs((at(wet) - ratio) * step / (at(wet + step) - at(wet)));
}
double dew_point_residual(const Question& q, double dew) {
    const double wanted = std::log(q.humidity * saturation<Manner::trimmed>(q.t));
    return std::abs((std::log(saturation<Manner::trimmed>(dew)) - wanted) / log_slope<Manner::trimmed>(dew));
}

void count_residuals(benchmark::State& state, const std::vector<Question>& all) {
    double our_wet = 0.0;
    double our_dew = 0.0;
    double plain_wet = 0.0;
    double plain_dew = 0.0;
    for (const auto& q : all) {
        const Plain plain = plain_state_of<Manner::library>(q);
        const MoistAir ours = our_state_of(q);
        plain_wet = std::max(plain_wet, wet_bulb_residual(q, plain.ratio, plain.wet));
        plain_dew = std::max(plain_dew, dew_point_residual(q, plain.dew));
        our_wet = std::max(our_wet, wet_bulb_residual(q, plain.ratio, in_celsius(ours.wet_bulb)));
        our_dew = std::max(our_dew, dew_point_residual(q, in_celsius(*ours.dew_point)));
    }
    state.counters["our_wet_bulb_residual_K"] = our_wet;
    state.counters["our_dew_point_residual_K"] = our_dew;
    state.counters["plain_wet_bulb_residual_K"] = plain_wet;
    state.counters["plain_dew_point_residual_K"] = plain_dew;
}

template <class Way>
void answer_all(benchmark::State& state, const std::vector<Question>& all, Way way) {
    for (auto _ : state) {
        for (const auto& q : all) {
            benchmark::DoNotOptimize(way(q));
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(all.size()));
}

void full_state(benchmark::State& state) {
    const auto all = questions();
    answer_all(state, all, our_state_of);
    state.counters["times_library_wet_bulb"] = times_faster(all, plain_wet_bulb_of<Manner::library>);
    state.counters["times_library_state"] = times_faster(all, plain_state_of<Manner::library>);
    state.counters["times_trimmed_state"] = times_faster(all, plain_state_of<Manner::trimmed>);
    count_residuals(state, all);
}
BENCHMARK(full_state);

void wet_bulb(benchmark::State& state) {
    answer_all(state, questions(), [](const Question& q) {
        return in_celsius(wet_bulb_from_humidity(celsius(q.t), from_si<Fraction>(q.humidity),
                                                 from_si<AbsolutePressure>(q.p))
                              .value());
    });
}
BENCHMARK(wet_bulb);

void plain_wet_bulb_as_a_library_has_it(benchmark::State& state) {
    answer_all(state, questions(), plain_wet_bulb_of<Manner::library>);
}
BENCHMARK(plain_wet_bulb_as_a_library_has_it);

void plain_state_as_a_library_has_it(benchmark::State& state) {
    answer_all(state, questions(), plain_state_of<Manner::library>);
}
BENCHMARK(plain_state_as_a_library_has_it);

void plain_state_trimmed(benchmark::State& state) {
    answer_all(state, questions(), plain_state_of<Manner::trimmed>);
}
BENCHMARK(plain_state_trimmed);

}  // namespace
