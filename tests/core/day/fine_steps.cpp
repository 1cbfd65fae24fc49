// SPDX-License-Identifier: Apache-2.0
#include "fine_steps.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "air/comfort.h"
#include "air/design_day.h"
#include "day/bird_heat.h"
#include "pad/wet_pad.h"

namespace wetfront::test {
namespace {

constexpr double inf = std::numeric_limits<double>::infinity();

struct Outside {
    MoistAir air;
    std::vector<double> gain;  // of each bank's wet pad, kg per kg of dry air
};

struct InHouse {
    double behind = 0.0;
    double house = 0.0;
    double ratio = 0.0;
    double birds = 0.0;
};

struct FineTimer {
    TimerPlan plan;
    bool called = false;
    bool warm = true;
    bool active = false;
    bool on = false;
    bool rinsing = false;
    double started = 0.0;  // pump
    double on_time = 0.0;
    double stop_at = inf;
    double start_at = inf;
    double review_at = inf;
    double rinsed_day = -1.0;
};

class FineSteps {
public:
    FineSteps(const DayHouse& house, const Weather& weather, std::span<const TimerPlan> plans, double step)
        : house_{house}, weather_{weather}, step_{step} {
        for (const auto& plan : plans) {
            timers_.push_back({plan});
        }
        for (const auto& bank : house.banks) {
            dry_.emplace_back(static_cast<std::size_t>(house.columns), 1.0);
            std::vector<double> arrivals;
            for (int i = 0; i < house.columns; ++i) {
                arrivals.push_back(arrival(bank, (i + 0.5) / house.columns));
            }
            arrivals_.push_back(arrivals);
            timer_of_.push_back(nullptr);
        }
        for (std::size_t t = 0; t < house.timers.size(); ++t) {
            for (const auto p : house.timers[t].pumps) {
                for (const auto b : house.pumps[p].banks) {
                    timer_of_[b] = &timers_[t];
                }
            }
        }
        const double epoch =
            static_cast<double>(weather.from.unix_ms) / 1000.0 + 60.0 * weather.from.utc_offset_minutes;
        clock_ = std::fmod(epoch, 86400.0);
    }

    FineDay run() {
        const double end = 3600.0 * static_cast<double>(weather_.hours.size() - 1);
        begin_piece();
        auto inside = in_house(now_);
        shown_ = inside.house;
        while (stage_ + 1 < house_.fan_stages.size() && shown_ >= stage_from(stage_ + 1)) {
            ++stage_;
            begin_piece();
            inside = in_house(now_);
            shown_ = inside.house;
        }
        for (auto& timer : timers_) {
            timer.called =
                !timer.plan.start_temperature || shown_ >= in_celsius(*timer.plan.start_temperature);
            timer.warm = !timer.plan.lowest_house_temperature ||
                         shown_ >= in_celsius(*timer.plan.lowest_house_temperature);
            decide(timer);
            due(timer);
        }
        while (now_ < end - 1e-6) {
            double length = std::min({step_, end - now_, next_hour() - now_, piece_end_ - now_});
            for (const auto& timer : timers_) {
                for (const double at : {timer.stop_at, timer.start_at, timer.review_at, next_clock(timer)}) {
                    length = std::min(length, std::max(at - now_, 1e-4));
                }
            }
            auto tried = dry_;
            FineDay work;
            InHouse after = advance(tried, length, inside, work);
            double reading = read(inside.house, after.house, length);
            if (const auto share = passes(reading)) {
                length = std::max(1e-4, length * *share);
                tried = dry_;
                work = FineDay{};
                after = advance(tried, length, inside, work);
                reading = read(inside.house, after.house, length);
            }
            take(work, length, inside, after);
            dry_ = tried;
            now_ += length;
            shown_ = reading;
            if (now_ >= piece_end_ - 1e-6 || now_ >= next_hour() - 1e-6) {
                begin_piece();
            }
            switchings();
            inside = in_house(now_);
        }
        for (std::size_t b = 0; b < dry_.size(); ++b) {
            day_.returned += drained_[b];
        }
        return day_;
    }

private:
    double arrival(const DayBank& bank, double share) const {
        double g = share;
        for (std::size_t i = 1; i < bank.arrival_shares.size(); ++i) {
            const double x0 = bank.arrival_shares[i - 1];
            const double x1 = bank.arrival_shares[i];
            if (share >= x0 && share <= x1) {
                g = bank.arrival_times[i - 1] +
                    (share - x0) / (x1 - x0) * (bank.arrival_times[i] - bank.arrival_times[i - 1]);
            }
        }
        return in_seconds(bank.riser) + g * in_seconds(bank.fill - bank.riser);
    }
    double stage_from(std::size_t stage) const {
        return in_celsius(*house_.target) + in_si(house_.fan_stages[stage].above_target);
    }
    double effectiveness(std::size_t b) const {
        const auto& e = house_.banks[b].effectiveness;
        return in_si(e[e.size() == 1 ? 0 : stage_]);
    }
    double next_hour() const { return 3600.0 * (std::floor(now_ / 3600.0 + 1e-9) + 1.0); }

    Outside outside_at(double time) const {
        const auto hour =
            std::min(static_cast<std::size_t>(piece_begin_ / 3600.0 + 1e-9), weather_.hours.size() - 2);
        const double part = (time - 3600.0 * static_cast<double>(hour)) / 3600.0;
        const auto& first = weather_.hours[hour];
        const auto& second = weather_.hours[hour + 1];
        const auto between = [&](double one, double other) { return one + part * (other - one); };
        const auto dry_bulb = celsius(between(in_celsius(first.dry_bulb), in_celsius(second.dry_bulb)));
        const double ratio = between(in_si(first.humidity_ratio), in_si(second.humidity_ratio));
        auto air = air_from_humidity_ratio(dry_bulb, from_si<HumidityRatio>(ratio), first.pressure);
        if (!air) {
            air = air_from_humidity(dry_bulb, 100_percent, first.pressure);  // it would not fit in
        }
        Outside outside{air.value(), {}};
        for (std::size_t b = 0; b < house_.banks.size(); ++b) {
            const auto leaving = air_behind_pad(air.value(), from_si<Fraction>(effectiveness(b)));
            outside.gain.push_back(
                std::max(0.0, in_si(leaving.value().humidity_ratio) - in_si(air.value().humidity_ratio)));
        }
        return outside;
    }
    // Outside air for the 10 s to come, straight between its ends.
    void begin_piece() {
        piece_begin_ = now_;
        piece_end_ = std::min(now_ + 10.0, next_hour());
        first_ = outside_at(now_);
        second_ = outside_at(piece_end_);
    }
    double part(double time) const { return (time - piece_begin_) / (piece_end_ - piece_begin_); }
    double of(double time, double one, double other) const { return one + part(time) * (other - one); }
    double gain(std::size_t b, double time) const { return of(time, first_.gain[b], second_.gain[b]); }
    double dry_bulb(double time) const {
        return of(time, in_celsius(first_.air.dry_bulb), in_celsius(second_.air.dry_bulb));
    }
    double wet_bulb(double time) const {
        return of(time, in_celsius(first_.air.wet_bulb), in_celsius(second_.air.wet_bulb));
    }
    double air_flow(double time) const {
        return in_si(house_.fan_stages[stage_].airflow) /
               of(time, in_si(first_.air.specific_volume), in_si(second_.air.specific_volume));
    }
    double drying(std::size_t b, double time) const {
        return house_.banks[b].face_share * air_flow(time) * gain(b, time) / in_si(house_.banks[b].holds);
    }
    static double phi(double d, double c) { return d <= c ? 1.0 : (1.0 - d) / (1.0 - c); }
    double wet(const std::vector<std::vector<double>>& dry, std::size_t b) const {
        double sum = 0.0;
        for (const double d : dry[b]) {
            sum += phi(d, house_.banks[b].constant_share);
        }
        return sum / static_cast<double>(dry[b].size());
    }
    double building(double time) const {
        const double by_the_sun =
            clock_ + time + in_seconds(house_.clock_ahead) - in_seconds(house_.clock_ahead_of_sun);
        const double hour = std::fmod(by_the_sun + 86400.0, 86400.0) / 3600.0;
        const int full = static_cast<int>(hour) % 24;
        const double one = 1.0 - share_of_daily_range(full);
        const double other = 1.0 - share_of_daily_range((full + 1) % 24);
        return in_si(house_.building_gain) * (one + (hour - std::floor(hour)) * (other - one));
    }

    InHouse in_house(double time) const { return in_house(time, dry_); }
    InHouse in_house(double time, const std::vector<std::vector<double>>& dry) const {
        const double t = dry_bulb(time);
        const double w = of(time, in_si(first_.air.humidity_ratio), in_si(second_.air.humidity_ratio));
        double gained = 0.0;
        for (std::size_t b = 0; b < dry.size(); ++b) {
            gained += house_.banks[b].face_share * wet(dry, b) * gain(b, time);
        }
        const double enthalpy = 1.006 * t + w * (2501.0 + 1.86 * t) + gained * 4.186 * wet_bulb(time);
        InHouse in;
        const double ratio = w + gained;
        in.behind = (enthalpy - 2501.0 * ratio) / (1.006 + 1.86 * ratio);
        const double flow = air_flow(time);
        const double carried = 1000.0 * flow * (1.006 + 1.86 * ratio);
        in.house = in.behind;
        double latent = 0.0;
        for (int i = 0; i < 60; ++i) {
            double sensible = building(time);
            latent = in.birds = 0.0;
            if (house_.flock.birds > 0.0) {
                const auto heat = bird_heat(house_.flock.mass, celsius(0.5 * (in.behind + in.house)));
                sensible += house_.flock.birds * in_si(heat.sensible);
                latent = house_.flock.birds * (in_si(heat.total) - in_si(heat.sensible));
                in.birds = house_.flock.birds * in_si(heat.total);
            }
            const double next = in.behind + sensible / carried;
            const bool there = std::abs(next - in.house) < 1e-9;
            in.house = next;
            if (there) {
                break;
            }
        }
        in.ratio = ratio + latent / (1000.0 * flow * (2501.0 + 1.86 * in.house));
        return in;
    }

    // Columns over one step; what they evaporate and what drips goes to `work`.
    InHouse advance(std::vector<std::vector<double>>& dry, double length, const InHouse& before,
                    FineDay& work) {
        const double end = now_ + length;
        drip_.assign(dry.size(), 0.0);
        for (std::size_t b = 0; b < dry.size(); ++b) {
            const auto& bank = house_.banks[b];
            const double c = bank.constant_share;
            const double a = in_si(bank.wetting);
            const auto* timer = timer_of_[b];
            const double count = static_cast<double>(dry[b].size());
            const double holds = in_si(bank.holds) / count;
            const double flow = 1000.0 * in_si(bank.flow) / count;
            const double at_begin = drying(b, now_);
            const double at_end = drying(b, end);
            for (std::size_t i = 0; i < dry[b].size(); ++i) {
                const double from = timer != nullptr && timer->on
                                        ? std::clamp(timer->started + arrivals_[b][i], now_, end)
                                        : end;
                double& d = dry[b][i];
                const auto piece = [&](double begin, double stop, bool supplied) {
                    const double h = stop - begin;
                    if (h <= 0.0) {
                        return;
                    }
                    const auto rate = [&](double time) {
                        return at_begin + (time - now_) / length * (at_end - at_begin);
                    };
                    const double b0 = rate(begin);
                    const double b1 = rate(stop);
                    const double minus = supplied ? a : 0.0;
                    const double e0 = b0 * phi(d, c);
                    const double guess = std::clamp(d + h * (e0 - minus), 0.0, 1.0);
                    const double e1 = b1 * phi(guess, c);
                    const double lost = 0.5 * h * (e0 + e1);
                    const double next = std::max(0.0, d + lost - h * minus);
                    work.evaporated += holds * lost;
                    if (supplied) {
                        drip_[b] += flow * h - holds * (d + lost - next);
                    }
                    d = next;
                };
                piece(now_, from, false);
                piece(from, end, true);
            }
        }
        const auto after = in_house(end, dry);
        work.house = 0.5 * length * (before.house + after.house);
        work.cooling = 0.5 * length * (dry_bulb(now_) - before.behind + dry_bulb(end) - after.behind);
        for (std::size_t b = 0; b < dry.size(); ++b) {
            if (timer_of_[b] != nullptr && timer_of_[b]->active) {
                const double withheld = (1.0 - wet(dry_, b)) * (dry_bulb(now_) - wet_bulb(now_)) +
                                        (1.0 - wet(dry, b)) * (dry_bulb(end) - wet_bulb(end));
                work.lost += 0.5 * length * house_.banks[b].face_share * effectiveness(b) * withheld;
            }
        }
        return after;
    }

    double read(double before, double after, double length) const {
        const double lag = in_seconds(house_.sensor_lag);
        if (lag <= 0.0) {
            return after;
        }
        const double slope = (after - before) / length;
        const double start = shown_ - (before - lag * slope);
        return after - lag * slope + start * std::exp(-length / lag);
    }

    template <class Found>
    void limits(Found found) {
        for (auto& timer : timers_) {
            if (timer.plan.pumping == Pumping::never) {
                continue;
            }
            if (timer.plan.start_temperature) {
                const double start = in_celsius(*timer.plan.start_temperature);
                found(timer.called ? start - in_si(timer.plan.call_band) : start, !timer.called,
                      [&] { timer.called = !timer.called; });
            }
            if (timer.plan.lowest_house_temperature) {
                found(in_celsius(*timer.plan.lowest_house_temperature), !timer.warm,
                      [&] { timer.warm = !timer.warm; });
            }
        }
        if (stage_ + 1 < house_.fan_stages.size()) {
            found(stage_from(stage_ + 1), true, [&] { next_stage_ = stage_ + 1; });
        }
        if (stage_ > 0) {
            found(stage_from(stage_) - in_si(house_.fan_band), false, [&] { next_stage_ = stage_ - 1; });
        }
    }
    static bool past(double value, double limit, bool rising) {
        return rising ? value >= limit : value < limit;
    }
    std::optional<double> passes(double reading) {
        std::optional<double> first;
        limits([&](double limit, bool rising, auto) {
            if (past(reading, limit, rising) && !past(shown_, limit, rising)) {
                const double share = (limit - shown_) / (reading - shown_) + 1e-7;
                first = std::min(first.value_or(1.0), share);
            }
        });
        return first;
    }

    bool in_hours(const FineTimer& timer) const {
        if (!timer.plan.hours_from || *timer.plan.hours_from == *timer.plan.hours_to) {
            return true;
        }
        const double time = clock_of_timers() - 86400.0 * std::floor(clock_of_timers() / 86400.0);
        const double from = in_seconds(*timer.plan.hours_from);
        const double to = in_seconds(*timer.plan.hours_to);
        return from < to ? time >= from && time < to : time >= from || time < to;
    }
    double clock_of_timers() const { return clock_ + in_seconds(house_.clock_ahead) + now_ + 1e-3; }
    double next_clock(const FineTimer& timer) const {
        double next = inf;
        for (const auto& at : {timer.plan.hours_from, timer.plan.hours_to, timer.plan.rinse_at}) {
            if (at) {
                const double since = clock_of_timers() - in_seconds(*at);
                next = std::min(next, now_ + 1e-3 + 86400.0 * (std::floor(since / 86400.0) + 1.0) - since);
            }
        }
        return next;
    }

    void decide(FineTimer& timer) {
        const double humidity =
            of(now_, in_si(first_.air.relative_humidity), in_si(second_.air.relative_humidity));
        const bool active = timer.called && timer.warm && in_hours(timer) &&
                            timer.plan.pumping != Pumping::never &&
                            (!timer.plan.humidity_cut_off || humidity <= in_si(*timer.plan.humidity_cut_off));
        if (active && !timer.active) {
            timer.active = true;
            if (timer.plan.pumping == Pumping::while_called) {
                pump(timer, true);
            } else {
                timer.on_time = in_seconds(timer.plan.base);
                timer.review_at =
                    timer.plan.trim_rows.empty() ? inf : now_ + in_seconds(timer.plan.review_interval);
                if (!rinse(timer)) {
                    period(timer);
                }
            }
        } else if (!active && timer.active) {
            timer.active = timer.rinsing = false;
            pump(timer, false);
            timer.stop_at = timer.start_at = timer.review_at = inf;
        }
    }
    bool rinse(FineTimer& timer) {
        if (!timer.plan.rinse_at || in_seconds(timer.plan.rinse_length) <= 0.0) {
            return false;
        }
        const double day = std::floor(clock_of_timers() / 86400.0);
        const double time = clock_of_timers() - 86400.0 * day;
        if (time < in_seconds(*timer.plan.rinse_at) || timer.rinsed_day == day) {
            return false;
        }
        timer.rinsed_day = day;
        timer.rinsing = true;
        pump(timer, true);
        timer.stop_at = now_ + in_seconds(timer.plan.rinse_length);
        timer.start_at = inf;
        return true;
    }
    void period(FineTimer& timer) {
        pump(timer, true);
        const double length = in_seconds(timer.plan.period);
        const bool rests = timer.on_time < length;
        timer.stop_at = rests ? now_ + timer.on_time : inf;
        timer.start_at = now_ + length;
    }
    void pump(FineTimer& timer, bool on) {
        if (on && !timer.on) {
            ++day_.starts;
            timer.started = now_;
        }
        if (!on && timer.on) {
            for (std::size_t b = 0; b < dry_.size(); ++b) {
                if (timer_of_[b] == &timer) {
                    for (const double at : arrivals_[b]) {
                        drained_[b] += 1000.0 * in_si(house_.banks[b].flow) /
                                       static_cast<double>(arrivals_[b].size()) *
                                       std::min(at, now_ - timer.started);
                    }
                }
            }
        }
        timer.on = on;
    }
    void due(FineTimer& timer) {
        if (timer.active && timer.plan.pumping == Pumping::in_cycles && !timer.rinsing) {
            rinse(timer);
        }
    }
    void review(FineTimer& timer) {
        const auto& plan = timer.plan;
        const double above = shown_ - in_celsius(*plan.target);
        std::optional<double> change;
        for (const auto& row : plan.trim_rows) {
            if (above >= in_si(row.above_target)) {
                change = in_seconds(row.change);
            }
        }
        if (!change && above < -in_si(plan.dead_band)) {
            for (const auto& row : plan.trim_rows) {
                if (in_seconds(row.change) > 0.0) {
                    change = -in_seconds(row.change);
                    break;
                }
            }
        }
        timer.on_time = std::clamp(timer.on_time + change.value_or(0.0), in_seconds(plan.base),
                                   in_seconds(plan.ceiling.value_or(plan.base)));
        timer.review_at = now_ + in_seconds(plan.review_interval);
    }
    void switchings() {
        limits([&](double limit, bool rising, auto pass) {
            if (past(shown_, limit, rising)) {
                pass();
            }
        });
        if (next_stage_) {
            stage_ = *next_stage_;
            next_stage_.reset();
            begin_piece();
        }
        for (auto& timer : timers_) {
            decide(timer);
            due(timer);
            if (timer.stop_at <= now_ + 1e-6) {
                timer.stop_at = inf;
                if (timer.rinsing) {
                    timer.rinsing = false;
                    if (timer.on_time >= in_seconds(timer.plan.period)) {
                        period(timer);
                    } else {
                        timer.start_at = now_ - timer.on_time + in_seconds(timer.plan.period);
                        pump(timer, false);
                    }
                } else {
                    pump(timer, false);
                }
            }
            if (timer.start_at <= now_ + 1e-6) {
                period(timer);
            }
            if (timer.review_at <= now_ + 1e-6) {
                review(timer);
            }
        }
    }

    struct Felt {
        double index = 0.0;
        double humidity = 0.0;
    };
    Felt felt(const InHouse& in) const {
        const auto t = celsius(in.house);
        auto air = air_from_humidity_ratio(t, from_si<HumidityRatio>(in.ratio), first_.air.pressure);
        if (!air) {
            air = air_from_humidity(t, 100_percent, first_.air.pressure);  // fog
        }
        return {in_celsius(temperature_humidity_index(air.value())), in_si(air.value().relative_humidity)};
    }
    static double share_above(double first, double last, double limit) {
        const double above = std::max(first, last) - limit;
        return std::clamp(above / std::max(std::abs(first - last), 1e-12), 0.0, 1.0);
    }
    void take(const FineDay& work, double length, const InHouse& before, const InHouse& after) {
        day_.evaporated += work.evaporated;
        day_.house += work.house;
        day_.cooling += work.cooling;
        day_.lost += work.lost;
        day_.hottest = std::max(day_.hottest, after.house);
        day_.bird_heat += 0.5 * length * (before.birds + after.birds);
        const auto first = felt(before);
        const auto last = felt(after);
        day_.index += 0.5 * length * (first.index + last.index);
        day_.above_house += length * share_above(before.house, after.house, in_celsius(house_.limits.house));
        day_.above_index += length * share_above(first.index, last.index, in_celsius(house_.limits.index));
        day_.litter_wet += length * share_above(first.humidity, last.humidity, in_si(house_.limits.litter));
        for (const auto& timer : timers_) {
            day_.pump_on += timer.on ? length : 0.0;
        }
        for (std::size_t b = 0; b < dry_.size(); ++b) {
            if (timer_of_[b] != nullptr && timer_of_[b]->on) {
                day_.pumped += 1000.0 * in_si(house_.banks[b].flow) * length;
            }
            day_.returned += drip_[b];
        }
    }

    const DayHouse& house_;
    const Weather& weather_;
    double step_;
    double clock_ = 0.0;
    double now_ = 0.0;
    double piece_begin_ = 0.0;
    double piece_end_ = 0.0;
    Outside first_{};
    Outside second_{};
    double shown_ = 0.0;
    std::size_t stage_ = 0;
    std::optional<std::size_t> next_stage_;
    std::vector<FineTimer> timers_;
    std::vector<std::vector<double>> dry_;
    std::vector<std::vector<double>> arrivals_;
    std::vector<FineTimer*> timer_of_;
    std::vector<double> drip_;
    std::vector<double> drained_ = std::vector<double>(house_.banks.size());
    FineDay day_;
};

}  // namespace

FineDay fine_steps(const DayHouse& house, const Weather& weather, std::span<const TimerPlan> plans,
                   double step) {
    return FineSteps{house, weather, plans, step}.run();
}

}  // namespace wetfront::test
