// SPDX-License-Identifier: Apache-2.0
#include "day/visit_day.h"

#include <algorithm>
#include <cmath>

#include "cycle/bank_evidence.h"
#include "cycle/labels.h"
#include "cycle/pump_runs.h"
#include "day/design_weather.h"
#include "pad/wet_pad.h"

namespace wetfront {
namespace {

constexpr double least_circulation_m2_per_s = 9.31e-3 / 60.0;
constexpr double water_kg_per_m3 = 1000.0;
constexpr double joules_per_kwh = 3.6e6;
constexpr double minute_s = 60.0;

double face_of(const PadBank& bank) {
    return bank.length && bank.height ? in_si(bank.length->value()) * in_si(bank.height->value()) : 0.0;
}

/// Puts one house together; what it cannot know it says.
class HouseWork {
public:
    HouseWork(const VisitFile& file, const Advice& advice)
        : file_{file}, house_{file.house}, advice_{advice}, timings_{timings_of(file)} {}

    VisitDay done() && {
        add_fans();
        add_banks();
        add_pumps();
        add_heat();
        return std::move(day_);
    }

private:
    void lacks(Message what) { day_.missing.push_back(std::move(what)); }
    void lacks(const PadBank& bank, Message what) {
        lacks({WF_TEXT("%1: %2"), {label_of(house_, bank), std::move(what)}});
    }
    void assume(Message what) { day_.assumed.push_back(std::move(what)); }

    void add_fans() {
        auto& stages = day_.house.fan_stages;
        for (const auto& stage : house_.fan_stages) {
            if (stage.above_target && stage.airflow) {
                stages.push_back({stage.above_target->value(), stage.airflow->value()});
            }
        }
        std::ranges::stable_sort(stages, {}, [](const auto& stage) { return in_si(stage.above_target); });
        if (!stages.empty()) {
            day_.house.target = target();
            if (stages.size() > 1 && !day_.house.target) {
                lacks(WF_TEXT("the target of a timer, by which the fan stages go"));
            }
            return;
        }
        if (house_.fan_airflow) {
            stages.push_back({from_si<TemperatureDifference>(0.0), house_.fan_airflow->value()});
            assume(WF_TEXT("all fans run all day, as no stages are entered"));
            return;
        }
        lacks(WF_TEXT("the airflow of the fans"));
    }

    [[nodiscard]] std::optional<Temperature> target() const {
        for (const auto* all : {&file_.visit.left, &file_.visit.found}) {
            for (const auto& settings : *all) {
                if (settings.target) {
                    return settings.target->value();
                }
            }
        }
        return std::nullopt;
    }

    void add_banks() {
        double whole_face = 0.0;
        for (const auto& bank : house_.banks) {
            if (face_of(bank) <= 0.0) {
                lacks(bank, WF_TEXT("length and height of the pad"));
            }
            whole_face += face_of(bank);
        }
        if (house_.banks.empty()) {
            lacks(WF_TEXT("a pad bank"));
        }
        if (!advice_.weather.test) {
            lacks(WF_TEXT("the weather in which the readings were taken"));
        }
        if (!day_.missing.empty()) {
            return;
        }
        for (const auto& bank : house_.banks) {
            add_bank(bank, face_of(bank) / whole_face);
        }
    }

    void add_bank(const PadBank& bank, double share) {
        const auto evidence =
            evidence_of(file_, timings_, advice_.weather, advice_.water, bank, advice_.margins);
        const auto* dry = evidence.question ? evidence.question->dry_start() : nullptr;
        if (dry == nullptr) {
            lacks(bank, WF_TEXT("fill, wet-through from a dry pad, and dry-out"));
            return;
        }
        const auto fill = evidence.question->fill;
        const auto rates = rates_from_timings(dry->wet_through - fill, dry->dry_out, dry->fans_on,
                                              advice_.margins.constant_share);
        const auto area = from_si<Area>(face_of(bank));
        const auto speed = face_of(file_, bank);
        const auto flux = speed
                              ? evaporation(*advice_.weather.test, evidence.effectiveness.value, speed->speed)
                              : Result<EvaporationFlux>{bad_input("face speed", "", "")};
        const auto holds = rates && flux ? water_held(rates.value(), flux.value(), area)
                                         : Result<Mass>{bad_input("water held", "", "")};
        if (!holds) {
            lacks(bank, WF_TEXT("readings from which the water that the pad holds can be worked out"));
            return;
        }
        DayBank of_day;
        of_day.face_share = share;
        of_day.holds = holds.value();
        of_day.wetting = rates.value().wetting;
        of_day.constant_share = advice_.margins.constant_share;
        of_day.effectiveness = {evidence.effectiveness.value};
        of_day.fill = fill;
        add_water(bank, of_day);
        day_.house.banks.push_back(std::move(of_day));
    }

    void add_water(const PadBank& bank, DayBank& of_day) {
        const auto* water = advice_.water.bank(bank.id);
        const double taken_up = in_si(of_day.wetting) * in_si(of_day.holds) / water_kg_per_m3;
        double flow = least_circulation_m2_per_s * in_si(bank.length->value());
        if (water != nullptr && water->flow && water->flow_measured) {
            flow = in_si(*water->flow);
            if (flow < taken_up) {
                // Two readings that contradict each other, which is a finding elsewhere: no more than what
                // comes can be taken up.
                of_day.wetting = from_si<Rate>(flow * water_kg_per_m3 / in_si(of_day.holds));
                assume({WF_TEXT("%1: the pad takes up all that its header brings, less than its wet-through "
                                "time asks for"),
                        {label_of(house_, bank)}});
            }
        } else {
            flow = std::max(flow, taken_up);
            assume({WF_TEXT("%1: %2 flow into its header, as none was measured"),
                    {label_of(house_, bank), any(from_si<VolumeFlow>(flow))}});
        }
        of_day.flow = from_si<VolumeFlow>(flow);
        if (water != nullptr && water->filling) {
            of_day.arrival_shares = water->filling->shares;
            of_day.arrival_times = water->filling->times;
        }
        const auto* pump = advice_.water.pump(bank.pump);
        const auto* flow_of_pump = pump == nullptr ? nullptr : pump->flow();
        if (pump != nullptr && pump->riser && flow_of_pump != nullptr) {
            const double riser = in_si(*pump->riser) / in_si(flow_of_pump->flow);
            of_day.riser = seconds(std::min(riser, 0.5 * in_seconds(of_day.fill)));
        }
    }

    void add_pumps() {
        for (const auto& pump : house_.pumps) {
            DayPump of_day;
            for (std::size_t i = 0; i < house_.banks.size(); ++i) {
                if (house_.banks[i].pump == pump.id) {
                    of_day.banks.push_back(i);
                }
            }
            of_day.power = pump.power ? std::optional{pump.power->value()} : std::nullopt;
            of_day.bleed = pump.bleed_flow ? pump.bleed_flow->value() : of_day.bleed;
            day_.house.pumps.push_back(std::move(of_day));
        }
        for (const auto& timer : house_.timers) {
            DayTimer of_day;
            for (std::size_t i = 0; i < house_.pumps.size(); ++i) {
                if (std::ranges::find(timer.pumps, house_.pumps[i].id) != timer.pumps.end()) {
                    of_day.pumps.push_back(i);
                }
            }
            day_.house.timers.push_back(std::move(of_day));
        }
    }

    void add_heat() {
        if (house_.birds && house_.bird_mass) {
            day_.house.flock = {*house_.birds, house_.bird_mass->value()};
        } else {
            assume(WF_TEXT("no heat of birds, as their number or mass is not entered"));
        }
        if (house_.building_gain) {
            day_.house.building_gain = house_.building_gain->value();
        } else {
            assume(WF_TEXT("no heat of sun and building, as none is entered"));
        }
        if (house_.sensor_lag) {
            day_.house.sensor_lag = house_.sensor_lag->value();
        } else {
            assume({WF_TEXT("a lag of the house sensor of %1"), {any(day_.house.sensor_lag)}});
        }
        if (const auto& price = file_.farm.energy_price) {
            day_.house.prices.energy = in_si(price->value()) * joules_per_kwh;
        }
        if (const auto& price = file_.farm.water_price) {
            day_.house.prices.water = in_si(price->value());
        }
    }

    const VisitFile& file_;
    const House& house_;
    const Advice& advice_;
    VisitTimings timings_;
    VisitDay day_;
};

bool has_humidity_sensor_outside(const House& house) {
    return std::ranges::any_of(house.sensors, [](const Sensor& sensor) {
        return sensor.kind == SensorKind::humidity && sensor.place == SensorPlace::outside;
    });
}

template <class Q>
std::optional<Q> value_of(const Optional<Q>& entry) {
    return entry ? std::optional{entry->value()} : std::nullopt;
}
std::optional<Duration> since_midnight(const std::optional<TimeOfDay>& time) {
    return time ? std::optional{seconds(minute_s * time->minutes)} : std::nullopt;
}

class PlanWork {
public:
    PlanWork(const VisitFile& file, const Advice& advice) : file_{file}, advice_{advice} {}

    DayPlans of(DaySettings which) && {
        for (const auto& timer : file_.house.timers) {
            add(timer, which);
        }
        return std::move(plans_);
    }

private:
    void lacks(const Timer& timer, Message what) {
        plans_.missing.push_back({WF_TEXT("%1: %2"), {label_of(file_.house, timer), std::move(what)}});
    }

    void add(const Timer& timer, DaySettings which) {
        TimerPlan plan;
        if (which == DaySettings::none) {
            plans_.plans.push_back(plan);
            return;
        }
        const auto* advised = advice_.of(timer.id);
        const bool by_advice = which == DaySettings::advised || which == DaySettings::continuous;
        const auto* held = which == DaySettings::found  ? file_.visit.found_of(timer.id)
                           : which == DaySettings::left ? file_.visit.left_of(timer.id)
                                                        : nullptr;
        if (by_advice ? advised == nullptr : held == nullptr) {
            lacks(timer, by_advice ? WF_TEXT("nothing is advised") : WF_TEXT("no settings are entered"));
            return;
        }
        const auto settings = by_advice ? settings_to_enter(*advised) : *held;
        add_when(timer, settings, plan);
        const bool on_demand = timer.kind == TimerKind::on_demand || which == DaySettings::continuous ||
                               (which == DaySettings::advised && !advised->cycled);
        if (on_demand) {
            plan.pumping = Pumping::while_called;
        } else if (!add_cycle(timer, settings, plan)) {
            return;
        }
        plans_.plans.push_back(std::move(plan));
    }

    void add_when(const Timer& timer, const TimerSettings& settings, TimerPlan& plan) {
        plan.start_temperature = value_of(settings.start_temperature);
        plan.lowest_house_temperature = value_of(settings.lowest_house_temperature);
        if (settings.humidity_cut_off) {
            if (has_humidity_sensor_outside(file_.house)) {
                plan.humidity_cut_off = settings.humidity_cut_off->value();
            } else {
                plans_.notes.push_back(
                    {WF_TEXT("%1: its humidity cut-off is not in this, as its sensor does not hang outside"),
                     {label_of(file_.house, timer)}});
            }
        }
        const auto from = since_midnight(settings.pad_hours_from);
        const auto to = since_midnight(settings.pad_hours_to);
        if (from && to) {
            plan.hours_from = from;
            plan.hours_to = to;
        }
        if (settings.rinse_at && settings.rinse_length) {
            plan.rinse_at = since_midnight(settings.rinse_at);
            plan.rinse_length = settings.rinse_length->value();
        }
    }

    /// False: it lacks something.
    bool add_cycle(const Timer& timer, const TimerSettings& settings, TimerPlan& plan) {
        const auto runs = pump_runs(file_.house, timings_of(file_), timer, settings);
        if (!settings.period || !runs.settings.base_on_time) {
            lacks(timer, runs.fill_missing ? WF_TEXT("the fill time, from which its on-times count")
                                           : WF_TEXT("period and base on-time"));
            return false;
        }
        plan.pumping = Pumping::in_cycles;
        plan.period = settings.period->value();
        plan.base = std::min(runs.settings.base_on_time->value(), plan.period);
        if (runs.settings.on_time_ceiling) {
            plan.ceiling = std::clamp(runs.settings.on_time_ceiling->value(), plan.base, plan.period);
        }
        plan.target = value_of(settings.target);
        for (const auto& row : settings.trim_rows) {
            if (row.above_target && row.change) {
                plan.trim_rows.push_back({row.above_target->value(), row.change->value()});
            }
        }
        std::ranges::stable_sort(plan.trim_rows, {},
                                 [](const TrimStep& row) { return in_si(row.above_target); });
        if (!plan.trim_rows.empty() && !plan.target) {
            plan.trim_rows.clear();
            plans_.notes.push_back(
                {WF_TEXT("%1: its trim rows are not in this, as its target is not entered"),
                 {label_of(file_.house, timer)}});
        }
        if (settings.review_interval) {
            plan.review_interval = settings.review_interval->value();
        }
        return true;
    }

    const VisitFile& file_;
    const Advice& advice_;
    DayPlans plans_;
};

}  // namespace

Message label_of(DaySettings which) {
    switch (which) {
        case DaySettings::found:
            return WF_TEXT("found");
        case DaySettings::advised:
            return WF_TEXT("advised");
        case DaySettings::left:
            return WF_TEXT("left");
        case DaySettings::continuous:
            return WF_TEXT("continuous");
        case DaySettings::none:
            return WF_TEXT("no pads");
    }
    return {};
}

VisitDay visit_day(const VisitFile& file, const Advice& advice) {
    return HouseWork{file, advice}.done();
}

DayPlans day_plans(const VisitFile& file, const Advice& advice, DaySettings which) {
    return PlanWork{file, advice}.of(which);
}

std::optional<Weather> design_weather(const VisitFile& file, const Advice& advice) {
    if (!advice.weather.day) {
        return std::nullopt;
    }
    const auto started = file.visit.started;
    const std::chrono::sys_time<std::chrono::milliseconds> local{
        std::chrono::milliseconds{started.unix_ms} + std::chrono::minutes{started.utc_offset_minutes}};
    const std::chrono::year_month_day date{std::chrono::floor<std::chrono::days>(local)};
    auto weather = design_day_weather(*advice.weather.day, advice.margins.clock_ahead_of_sun, date,
                                      started.utc_offset_minutes);
    return weather ? std::optional{std::move(weather).value()} : std::nullopt;
}

}  // namespace wetfront
