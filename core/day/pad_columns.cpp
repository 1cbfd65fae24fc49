// SPDX-License-Identifier: Apache-2.0
#include "day/pad_columns.h"

#include <algorithm>
#include <cmath>

namespace wetfront::day_detail {
namespace {

constexpr double water_density = 1000.0;  // kg/m3, as in cycle/visit_water.h

double arrival_share(const DayBank& bank, double share) {
    const auto& shares = bank.arrival_shares;
    if (shares.empty()) {
        return share;
    }
    const auto after = std::upper_bound(shares.begin(), shares.end(), share);
    if (after == shares.end()) {
        return bank.arrival_times.back();
    }
    const auto i = static_cast<std::size_t>(after - shares.begin());
    const double part = (share - shares[i - 1]) / (shares[i] - shares[i - 1]);
    return bank.arrival_times[i - 1] + part * (bank.arrival_times[i] - bank.arrival_times[i - 1]);
}

}  // namespace

void DryingCurve::turn_to(const Parabola& rate, double origin, double time) {
    const double so_far = at(time);
    rate_ = rate;
    origin_ = origin;
    offset_ = so_far - rate.integral_to(time - origin);
    highest_ = rate.range(3600.0).second;
}

double DryingCurve::time_of(double value, double from, double within) const {
    return zero_between([&](double time) { return at(time) - value; }, from, within);
}

void ColumnWork::add(const ColumnWork& other) {
    evaporated += other.evaporated;
    taken_up += other.taken_up;
    supplied += other.supplied;
    began_to_dry += other.began_to_dry;
}

double Deficits::largest() const {
    return uniform ? of.front() : *std::max_element(of.begin(), of.end());
}

bool Deficits::all_zero() const {
    return uniform ? of.front() == 0.0
                   : std::all_of(of.begin(), of.end(), [](double deficit) { return deficit == 0.0; });
}

PadColumns::PadColumns(const DayBank& bank, int columns)
    : a_{in_si(bank.wetting)},
      c_{bank.constant_share},
      holds_{in_si(bank.holds)},
      flow_{water_density * in_si(bank.flow)} {
    const double riser = in_seconds(bank.riser);
    const double along = in_seconds(bank.fill) - riser;
    for (int i = 0; i < columns; ++i) {
        arrivals_.push_back(riser + along * arrival_share(bank, (i + 0.5) / columns));
    }
}

double PadColumns::filling_time(double running) const {
    double sum = 0.0;
    for (const double arrival : arrivals_) {
        sum += std::min(arrival, running);
    }
    return sum / static_cast<double>(arrivals_.size());
}

double PadColumns::wet_share(const Deficits& deficits) const {
    const auto share = [&](double deficit) { return deficit <= c_ ? 1.0 : (1.0 - deficit) / (1.0 - c_); };
    if (deficits.uniform) {
        return share(deficits.of.front());
    }
    double sum = 0.0;
    for (const double deficit : deficits.of) {
        sum += share(deficit);
    }
    return sum / static_cast<double>(deficits.of.size());
}

double PadColumns::mean(const Deficits& deficits) const {
    if (deficits.uniform) {
        return deficits.of.front();
    }
    double sum = 0.0;
    for (const double deficit : deficits.of) {
        sum += deficit;
    }
    return sum / static_cast<double>(deficits.of.size());
}

void PadColumns::fill_with(double deficit, Deficits& into) const {
    into.of.assign(arrivals_.size(), deficit);
    into.uniform = true;
}

/// A piece of time as all columns see it that dry through the whole of it, or are supplied.
struct PadColumns::Interval {
    Interval(double seconds, double dried, double c)
        : length{seconds},
          drying{dried},
          decay{dried / (1.0 - c)},
          kept{std::exp(-decay)},
          lost{-std::expm1(-decay)} {}
    double length;
    double drying;  ///< b times the length
    double decay;   ///< k times the length, k = b / (1 - c)
    double kept;    ///< exp(-k t)
    double lost;    ///< 1 - exp(-k t)
};

void PadColumns::dry(double from, double& to, const Interval& interval, ColumnWork& work) const {
    if (from + interval.drying <= c_) {
        to = from + interval.drying;
        work.evaporated += interval.drying;
        return;
    }
    if (from > c_) {
        const double held = 1.0 - from;
        to = 1.0 - held * interval.kept;
        work.evaporated += held * interval.lost;
        return;
    }
    const double rest = (interval.drying - (c_ - from)) / (1.0 - c_);
    to = 1.0 - (1.0 - c_) * std::exp(-rest);
    work.evaporated += (c_ - from) - (1.0 - c_) * std::expm1(-rest);
    work.began_to_dry += 1.0;
}

void PadColumns::supply(double from, double& to, const Interval& interval, ColumnWork& work) const {
    work.supplied += interval.length;
    const double given = a_ * interval.length;
    const double surplus = given - interval.drying;
    if (from <= c_) {
        const double end = from - surplus;
        if (end < 0.0) {  // drips for the rest of the time
            to = 0.0;
            work.evaporated += interval.drying;
            work.taken_up += from + interval.drying;
            return;
        }
        if (end <= c_) {
            to = end;
            work.evaporated += interval.drying;
            work.taken_up += given;
            return;
        }
        // Dries although it is supplied, and the first patch shows on the way.
        const double part = (c_ - from) / (end - from);
        work.began_to_dry += 1.0;
        work.evaporated += part * interval.drying;
        work.taken_up += part * given;
        work.supplied -= (1.0 - part) * interval.length;
        const Interval rest{(1.0 - part) * interval.length, (1.0 - part) * interval.drying, c_};
        supply(std::nextafter(c_, 1.0), to, rest, work);
        return;
    }
    // y' = a - k y; integral of k y = a t - (y - y0), worked out apart.
    const double held = 1.0 - from;
    const auto held_after = [&](const Interval& i) {
        return held * i.kept + a_ * i.length * (i.decay > 0.0 ? i.lost / i.decay : 1.0);
    };
    const auto evaporated_in = [&](const Interval& i) {
        if (i.decay < 1e-5) {
            return i.decay * (held + 0.5 * a_ * i.length);  // the rest is below 1e-10 of what is supplied
        }
        return a_ * i.length + (held - a_ * i.length / i.decay) * i.lost;
    };
    const double end = 1.0 - held_after(interval);
    if (end > c_ || surplus <= 0.0) {
        to = end;
        work.evaporated += evaporated_in(interval);
        work.taken_up += given;
        return;
    }
    const double k = interval.decay / interval.length;
    const double missing = from - c_;
    const double face = k > 0.0 ? std::log1p(k * missing * interval.length / surplus) / k : missing / a_;
    const double part = std::min(face / interval.length, 1.0);
    const Interval above{part * interval.length, part * interval.drying, c_};
    work.evaporated += evaporated_in(above);
    work.taken_up += a_ * above.length;
    work.supplied -= (1.0 - part) * interval.length;
    supply(c_, to, Interval{(1.0 - part) * interval.length, (1.0 - part) * interval.drying, c_}, work);
}

ColumnWork PadColumns::advance(const Deficits& from, Deficits& to, double begin, double end,
                               const DryingCurve& drying, double pump_start) const {
    const double at_begin = drying.at(begin);
    const double dried = drying.at(end) - at_begin;
    const Interval whole{end - begin, dried, c_};
    ColumnWork work;
    to.of.resize(arrivals_.size());
    if (from.uniform && pump_start + arrivals_.front() >= end) {
        to.uniform = true;
        dry(from.of.front(), to.of.front(), whole, work);
        return work;
    }
    to.uniform = false;
    const double count = static_cast<double>(arrivals_.size());
    for (std::size_t i = 0; i < arrivals_.size(); ++i) {
        const double deficit = from.uniform ? from.of.front() : from.of[i];
        const double arrival = pump_start + arrivals_[i];
        if (arrival >= end) {
            dry(deficit, to.of[i], whole, work);
        } else if (arrival <= begin) {
            supply(deficit, to.of[i], whole, work);
        } else {
            const double before = drying.at(arrival) - at_begin;
            double on_arrival = deficit;
            dry(deficit, on_arrival, Interval{arrival - begin, before, c_}, work);
            supply(on_arrival, to.of[i], Interval{end - arrival, dried - before, c_}, work);
        }
    }
    to.uniform = std::all_of(to.of.begin(), to.of.end(), [&](double d) { return d == to.of.front(); });
    work.evaporated /= count;
    work.taken_up /= count;
    work.supplied /= count;
    work.began_to_dry /= count;
    return work;
}

void PadColumns::in_cycle(double now, const DryingCurve& drying, double at_last_stop, double pump_start,
                          Deficits& into) const {
    const double dried = drying.at(now) - at_last_stop;
    into.uniform = pump_start + arrivals_.front() >= now;
    into.of.resize(arrivals_.size());
    if (into.uniform) {
        into.of.front() = dried;
        return;
    }
    for (std::size_t i = 0; i < arrivals_.size(); ++i) {
        const double supplied = std::max(0.0, now - pump_start - arrivals_[i]);
        into.of[i] = std::max(0.0, dried - a_ * supplied);
    }
}

}  // namespace wetfront::day_detail
