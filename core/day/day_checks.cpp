// SPDX-License-Identifier: Apache-2.0
#include "day/day_checks.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/numbers.h"

namespace wetfront::day_detail {
namespace {

std::string numbered(const char* what, std::size_t index) {
    return std::string{what} + " " + std::to_string(index + 1);
}

std::string with(double value, const char* unit) {
    return print_number(value, 6) + (*unit != '\0' ? " " : "") + unit;
}

// `holds` where the value is finite and as wanted.
Result<void> that(bool holds, const std::string& item, double value, const char* unit, const char* accepted) {
    if (!holds || !std::isfinite(value)) {
        return bad_input(item, with(value, unit), accepted);
    }
    return boost::outcome_v2::success();
}

Result<void> check_arrival(const DayBank& bank, const std::string& name) {
    const auto& shares = bank.arrival_shares;
    const auto& times = bank.arrival_times;
    const auto rises = [](const std::vector<double>& points) {
        return points.size() >= 2 && points.front() == 0.0 && points.back() == 1.0 &&
               std::is_sorted(points.begin(), points.end());
    };
    const bool even = shares.empty() && times.empty();
    const bool strict = std::adjacent_find(shares.begin(), shares.end(), [](double one, double next) {
                            return !(one < next);
                        }) == shares.end();
    if (!even && !(shares.size() == times.size() && rises(shares) && rises(times) && strict)) {
        return bad_input(name + " arrival shape", std::to_string(shares.size()) + " points",
                         "shares and times rising from 0 to 1, as many of each");
    }
    return boost::outcome_v2::success();
}

Result<void> check_bank(const DayBank& bank, std::size_t index, std::size_t stages) {
    const auto name = numbered("bank", index);
    const double share = bank.face_share;
    const double a = in_si(bank.wetting);
    const double holds = in_si(bank.holds);
    const double flow = in_si(bank.flow);
    WF_CHECK(that(share > 0.0 && share <= 1.0 + 1e-9, name + " share of the air", share, "",
                  "more than 0, up to 1"));
    WF_CHECK(that(holds > 0.0, name + " water held", holds, "kg", "more than 0 kg"));
    WF_CHECK(that(a > 0.0, name + " wetting rate", a, "per second", "more than 0"));
    const double c = bank.constant_share;
    WF_CHECK(that(c > 0.0 && c < 1.0, name + " share of drying at constant rate", c, "",
                  "more than 0 and less than 1"));
    if (bank.effectiveness.size() != 1 && bank.effectiveness.size() != stages) {
        return bad_input(name + " effectiveness", std::to_string(bank.effectiveness.size()) + " values",
                         "one, or one for each fan stage");
    }
    for (const auto& e : bank.effectiveness) {
        WF_CHECK(that(in_si(e) > 0.0 && in_si(e) <= 1.0, name + " effectiveness", 100.0 * in_si(e), "%",
                      "more than 0, up to 100 %"));
    }
    WF_CHECK(that(flow > 0.0, name + " flow", flow, "m3/s", "more than 0"));
    WF_CHECK(that(a * holds <= 1000.0 * flow * (1.0 + 1e-9), name + " wetting rate", a * holds, "kg/s",
                  "at most what the header brings"));
    const double riser = in_seconds(bank.riser);
    const double fill = in_seconds(bank.fill);
    WF_CHECK(that(riser >= 0.0, name + " riser", riser, "s", "0 s or more"));
    WF_CHECK(that(fill > riser && fill <= 86400.0, name + " fill", fill, "s",
                  "more than the riser takes, up to 24 h"));
    return check_arrival(bank, name);
}

// Each of them hangs on one of the others at most.
Result<void> check_hung(const std::string& name, const std::vector<std::size_t>& hung,
                        std::vector<bool>& taken, const char* what) {
    for (const auto index : hung) {
        if (index >= taken.size() || taken[index]) {
            return bad_input(name, numbered(what, index),
                             std::string{what} + "s that the house has, each once");
        }
        taken[index] = true;
    }
    return boost::outcome_v2::success();
}

Result<void> check_fans(const DayHouse& house) {
    const auto& stages = house.fan_stages;
    if (stages.empty()) {
        return bad_input("fan stages", "none", "at least one");
    }
    for (std::size_t i = 0; i < stages.size(); ++i) {
        const auto name = numbered("fan stage", i);
        WF_CHECK(that(in_si(stages[i].airflow) > (i > 0 ? in_si(stages[i - 1].airflow) : 0.0),
                      name + " airflow", in_si(stages[i].airflow), "m3/s",
                      "more than 0, and more than that of the stage before"));
        WF_CHECK(that(i == 0 || stages[i].above_target > stages[i - 1].above_target, name + " degrees",
                      in_si(stages[i].above_target), "K", "more than at the stage before"));
    }
    WF_CHECK(that(in_si(house.fan_band) > 0.0, "fan band", in_si(house.fan_band), "K", "more than 0 K"));
    if (stages.size() > 1 && !house.target) {
        return bad_input("target temperature", "not entered", "one, as there are several fan stages");
    }
    const double lag = in_seconds(house.sensor_lag);
    return that(stages.size() == 1 ? lag >= 0.0 : lag >= 10.0, "sensor lag", lag, "s",
                "0 s or more; at least 10 s where there are several fan stages");
}

Result<void> check_plan(const TimerPlan& plan, const std::string& name) {
    WF_CHECK(
        that(in_si(plan.call_band) > 0.0, name + " call band", in_si(plan.call_band), "K", "more than 0 K"));
    if (plan.hours_from.has_value() != plan.hours_to.has_value()) {
        return bad_input(name + " pad hours", "one of two", "both or none");
    }
    for (const auto& time : {plan.hours_from, plan.hours_to, plan.rinse_at}) {
        if (time) {
            WF_CHECK(that(in_seconds(*time) >= 0.0 && in_seconds(*time) <= 86400.0, name + " time of day",
                          in_seconds(*time) / 3600.0, "h", "0 to 24 h"));
        }
    }
    if (plan.pumping != Pumping::in_cycles) {
        return boost::outcome_v2::success();
    }
    constexpr double shortest = 10.0;
    const double base = in_seconds(plan.base);
    WF_CHECK(that(in_seconds(plan.period) >= shortest, name + " period", in_seconds(plan.period), "s",
                  "10 s or more"));
    WF_CHECK(that(base > 0.0, name + " base on-time", base, "s", "more than 0 s"));
    if (plan.ceiling) {
        WF_CHECK(that(*plan.ceiling >= plan.base, name + " on-time ceiling", in_seconds(*plan.ceiling), "s",
                      "at least the base on-time"));
    }
    WF_CHECK(that(in_seconds(plan.rinse_length) >= 0.0, name + " rinse length", in_seconds(plan.rinse_length),
                  "s", "0 s or more"));
    if (plan.trim_rows.empty()) {
        return boost::outcome_v2::success();
    }
    if (!plan.target) {
        return bad_input(name + " target", "not entered", "a temperature, as there are trim rows");
    }
    WF_CHECK(that(in_seconds(plan.review_interval) >= shortest, name + " review interval",
                  in_seconds(plan.review_interval), "s", "10 s or more"));
    WF_CHECK(
        that(in_si(plan.dead_band) >= 0.0, name + " dead band", in_si(plan.dead_band), "K", "0 K or more"));
    for (std::size_t i = 1; i < plan.trim_rows.size(); ++i) {
        const auto degrees = plan.trim_rows[i].above_target;
        WF_CHECK(that(degrees > plan.trim_rows[i - 1].above_target, name + " trim rows", in_si(degrees), "K",
                      "more than in the row before"));
    }
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> check_house(const DayHouse& house) {
    WF_CHECK(check_fans(house));
    WF_CHECK(that(house.columns >= 1 && house.columns <= 1000, "columns", house.columns, "", "1 to 1,000"));
    if (house.banks.empty()) {
        return bad_input("banks", "none", "at least one");
    }
    double air = 0.0;
    for (std::size_t i = 0; i < house.banks.size(); ++i) {
        WF_CHECK(check_bank(house.banks[i], i, house.fan_stages.size()));
        air += house.banks[i].face_share;
    }
    WF_CHECK(that(std::abs(air - 1.0) < 1e-6, "shares of the air", air, "", "1 over all banks"));
    std::vector<bool> banks(house.banks.size());
    for (std::size_t i = 0; i < house.pumps.size(); ++i) {
        const auto& pump = house.pumps[i];
        const auto name = numbered("pump", i);
        WF_CHECK(check_hung(name, pump.banks, banks, "bank"));
        WF_CHECK(that(in_si(pump.bleed) >= 0.0, name + " bleed", in_si(pump.bleed), "m3/s", "0 or more"));
        if (pump.power) {
            WF_CHECK(that(in_si(*pump.power) > 0.0, name + " power", in_si(*pump.power), "W", "more than 0"));
        }
    }
    std::vector<bool> pumps(house.pumps.size());
    for (std::size_t i = 0; i < house.timers.size(); ++i) {
        WF_CHECK(check_hung(numbered("timer", i), house.timers[i].pumps, pumps, "pump"));
    }
    const double birds = house.flock.birds;
    WF_CHECK(that(birds >= 0.0, "birds", birds, "", "0 or more"));
    WF_CHECK(that(birds == 0.0 || in_si(house.flock.mass) > 0.0, "mass of a bird", in_si(house.flock.mass),
                  "kg", "more than 0 kg"));
    WF_CHECK(that(in_si(house.building_gain) >= 0.0, "building gain", in_si(house.building_gain), "W",
                  "0 W or more"));
    const double ahead = in_seconds(house.clock_ahead);
    WF_CHECK(that(std::abs(ahead) <= 3.0 * 3600.0, "clock ahead of the weather's", ahead / 3600.0, "h",
                  "-3 to 3 h"));
    const double of_sun = in_seconds(house.clock_ahead_of_sun);
    WF_CHECK(that(of_sun >= 0.0 && of_sun <= 3.0 * 3600.0, "clock ahead of the sun", of_sun / 3600.0, "h",
                  "0 to 3 h"));
    for (const auto& price : {house.prices.energy, house.prices.water}) {
        if (price) {
            WF_CHECK(that(*price >= 0.0, "price", *price, "", "0 or more"));
        }
    }
    return boost::outcome_v2::success();
}

Result<void> check_plans(const DayHouse& house, std::span<const TimerPlan> plans) {
    if (plans.size() != house.timers.size()) {
        return bad_input("plans", std::to_string(plans.size()),
                         "one for each timer, " + std::to_string(house.timers.size()));
    }
    for (std::size_t i = 0; i < plans.size(); ++i) {
        WF_CHECK(check_plan(plans[i], numbered("timer", i)));
    }
    return boost::outcome_v2::success();
}

Result<void> check_choice(const SimulationChoice& choice) {
    const double slot = in_seconds(choice.slot);
    const double count = 3600.0 / slot;
    return that(slot >= 60.0 && slot <= 3600.0 && std::abs(count - std::round(count)) < 1e-9, "slot", slot,
                "s", "60 to 3,600 s, a whole number of them in an hour");
}

}  // namespace wetfront::day_detail
