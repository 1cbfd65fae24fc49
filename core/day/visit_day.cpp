// SPDX-License-Identifier: Apache-2.0
#include "day/visit_day.h"

#include <algorithm>

#include "cycle/labels.h"
#include "cycle/pump_runs.h"
#include "pad/wet_pad.h"

namespace wetfront {
namespace {

constexpr double water_density = 1000.0;  // kg/m3, as in cycle/visit_water.h

// The advice of one bank, on whichever timer it hangs.
const BankAdvice* advice_of(const Advice& advice, const Id& bank) {
    for (const auto& timer : advice.timers) {
        for (const auto& of : timer.banks) {
            if (of.bank == bank) {
                return &of;
            }
        }
    }
    return nullptr;
}

std::optional<ColumnRates> rates_of(const BankQuestion& question, const CycleMargins& margins) {
    const double c = margins.constant_share;
    if (const auto* dry = question.dry_start()) {
        const auto rates =
            rates_from_timings(dry->wet_through - question.fill, dry->dry_out, dry->fans_on, c);
        return rates ? std::optional{rates.value()} : std::nullopt;
    }
    const auto& wet = std::get<WetStart>(question.start);
    const auto share = evaporated_share_from_wet_start(wet.off, wet.drip_return, question.fill);
    if (!share || !(share.value() > 0.0)) {
        return std::nullopt;
    }
    const double drying = c / in_seconds(wet.off + question.fill);
    return ColumnRates{from_si<Rate>(drying / share.value()), from_si<Rate>(drying), c};
}

// What is put together for one house.
class VisitHouse {
public:
    VisitHouse(const VisitFile& file, const Advice& advice, VisitDay& day)
        : file_{file}, advice_{advice}, day_{day} {}

    void build() {
        DayHouse house;
        double airflow = 0.0;
        for (const auto& bank : file_.house.banks) {
            airflow += add_bank(bank, house);
        }
        if (file_.house.banks.empty()) {
            day_.missing.emplace_back(WF_TEXT("a pad bank"));
        }
        if (!day_.missing.empty()) {
            return;
        }
        for (auto& bank : house.banks) {
            bank.face_share /= airflow;
        }
        add_fans(house, airflow);
        add_pumps(house);
        add_heat(house);
        house.prices.water = price_of(file_.farm.water_price, 1.0);
        constexpr double joules_in_kwh = 3.6e6;
        house.prices.energy = price_of(file_.farm.energy_price, joules_in_kwh);
        day_.house = std::move(house);
    }

private:
    // Air through the bank, m3/s, which its share of the face is put down as for now.
    double add_bank(const PadBank& bank, DayHouse& house) {
        const auto label = label_of(file_.house, bank);
        const auto* known = advice_of(advice_, bank.id);
        if (known == nullptr || !known->question) {
            if (known != nullptr && !known->missing.empty()) {
                day_.missing.insert(day_.missing.end(), known->missing.begin(), known->missing.end());
            } else if (!advice_.missing.empty()) {
                for (const auto& missing : advice_.missing) {
                    if (std::find(day_.missing.begin(), day_.missing.end(), missing) == day_.missing.end()) {
                        day_.missing.push_back(missing);
                    }
                }
            } else {
                day_.missing.push_back({WF_TEXT("%1: readings by the stopwatch"), {label}});
            }
            return 0.0;
        }
        const auto face = face_of(file_, bank);
        if (!bank.length || !bank.height || !face) {
            day_.missing.push_back(
                {WF_TEXT("%1: length and height of the pads, and the fans' airflow"), {label}});
            return 0.0;
        }
        const auto& question = *known->question;
        const auto rates = rates_of(question, advice_.margins);
        const auto area = bank.length->value() * bank.height->value();
        const auto effectiveness = effectiveness_of(file_, advice_.weather, bank);
        const auto flux = advice_.weather.test
                              ? evaporation(*advice_.weather.test, effectiveness.value, face->speed)
                              : bad_input("weather of the readings", "not known", "both its temperatures");
        const auto held = rates && flux ? water_held(*rates, flux.value(), area)
                                        : bad_input("readings", "not usable", "others");
        if (!held) {
            day_.missing.push_back({WF_TEXT("%1: readings in drier air (%2)"), {label, held.error().text()}});
            return 0.0;
        }
        DayBank made;
        made.holds = held.value();
        made.constant_share = rates->constant_share;
        made.effectiveness = {effectiveness.value};
        if (effectiveness.origin == Origin::assumed) {
            day_.assumed.push_back({WF_TEXT("%1: effectiveness %2"), {label, any(effectiveness.value)}});
        }
        if (question.dry_start() == nullptr) {
            day_.assumed.push_back(
                {WF_TEXT("%1: its pads begin to dry as soon as the pause tested at the wet start is over"),
                 {label}});
        }
        made.fill = question.fill;
        add_water(bank, question, *rates, made, label);
        const double air = in_si(face->speed) * in_si(area);
        made.face_share = air;
        house.banks.push_back(made);
        return air;
    }

    // How fast it is wetted and by how much water.
    void add_water(const PadBank& bank, const BankQuestion& question, const ColumnRates& rates, DayBank& made,
                   const Message& label) {
        double wetting = in_si(rates.wetting);
        if (question.evaporated_share && *question.evaporated_share > 0.0) {
            wetting = std::min(wetting, in_si(rates.drying) / *question.evaporated_share);
        }
        const auto* water = advice_.water.bank(bank.id);
        const auto taken = [&] { return wetting * in_si(made.holds) / water_density; };
        if (water != nullptr && water->flow) {
            made.flow = *water->flow;
            wetting = std::min(wetting, water_density * in_si(made.flow) / in_si(made.holds));
        } else {
            made.flow = from_si<VolumeFlow>(taken());
            day_.assumed.push_back(
                {WF_TEXT("%1: flow of %2, no more than its pads take up"), {label, any(made.flow)}});
        }
        made.wetting = from_si<Rate>(wetting);
        const auto* pump = advice_.water.pump(bank.pump);
        if (pump != nullptr && pump->riser && pump->flow() != nullptr) {
            const auto riser = *pump->riser / pump->flow()->flow;
            made.riser = riser < made.fill ? riser : made.riser;
        }
        if (water != nullptr && water->filling) {
            made.arrival_shares = water->filling->shares;
            made.arrival_times = water->filling->times;
        } else {
            day_.assumed.push_back({WF_TEXT("%1: water comes along the header evenly"), {label}});
        }
    }

    // The fan stages where they are described whole, else all fans.
    void add_fans(DayHouse& house, double airflow) {
        house.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(airflow)}};
        const auto& stages = file_.house.fan_stages;
        const auto target = target_of_house();
        const bool whole = std::all_of(stages.begin(), stages.end(), [](const FanStage& stage) {
            return stage.above_target && stage.airflow;
        });
        const bool rising =
            whole && std::adjacent_find(stages.begin(), stages.end(), [](const auto& one, const auto& next) {
                         return !(one.above_target->value() < next.above_target->value() &&
                                  one.airflow->value() < next.airflow->value());
                     }) == stages.end();
        if (stages.empty() || !rising || !target) {
            day_.assumed.emplace_back(WF_TEXT("all fans run at all hours"));
            if (!stages.empty()) {
                day_.assumed.emplace_back(WF_TEXT(
                    "fan stages are not used: they need degrees and airflow rising from stage to stage, and "
                    "a timer's target"));
            }
            return;
        }
        house.target = target;
        house.fan_stages.clear();
        for (const auto& stage : stages) {
            house.fan_stages.push_back({stage.above_target->value(), stage.airflow->value()});
        }
        for (std::size_t b = 0; b < house.banks.size(); ++b) {
            add_effectiveness(file_.house.banks[b], house.banks[b], house.fan_stages, airflow);
        }
        day_.assumed.push_back({WF_TEXT("a fan stage ends %1 below where it begins"), {any(house.fan_band)}});
    }

    // A pad that slower air passes cools it more. What was measured, at the airflow `measured`, is moved by
    // as much as the published curve moves.
    void add_effectiveness(const PadBank& bank, DayBank& made, const std::vector<DayFanStage>& stages,
                           double measured) {
        const auto face = face_of(file_, bank);
        if (!face || !bank.thickness) {
            return;
        }
        const auto at = [&](double share) {
            return expected_effectiveness(share * face->speed, bank.thickness->value());
        };
        const auto full = at(1.0);
        std::vector<Fraction> effectiveness;
        for (const auto& stage : stages) {
            const auto here = at(in_si(stage.airflow) / measured);
            const double value =
                full && here ? in_si(made.effectiveness.front()) + in_si(here.value()) - in_si(full.value())
                             : 0.0;
            if (!(value > 0.0 && value <= 1.0)) {
                day_.assumed.push_back({WF_TEXT("%1: the same effectiveness at every fan stage"),
                                        {label_of(file_.house, bank)}});
                return;
            }
            effectiveness.push_back(from_si<Fraction>(value));
        }
        made.effectiveness = std::move(effectiveness);
    }

    [[nodiscard]] std::optional<Temperature> target_of_house() const {
        for (const auto* list : {&file_.visit.left, &file_.visit.found}) {
            for (const auto& settings : *list) {
                if (settings.target) {
                    return settings.target->value();
                }
            }
        }
        return std::nullopt;
    }

    void add_heat(DayHouse& house) {
        const auto& entered = file_.house;
        if (entered.birds && entered.bird_mass) {
            house.flock = {*entered.birds, entered.bird_mass->value()};
        } else {
            day_.assumed.emplace_back(WF_TEXT("no heat of birds, as their number or mass is not entered"));
        }
        if (entered.building_gain) {
            house.building_gain = entered.building_gain->value();
            house.clock_ahead_of_sun = advice_.margins.clock_ahead_of_sun;
        } else {
            day_.assumed.emplace_back(WF_TEXT("no heat from sun and building, as none is entered"));
        }
        if (entered.sensor_lag &&
            (house.fan_stages.size() == 1 || entered.sensor_lag->value() >= seconds(10.0))) {
            house.sensor_lag = entered.sensor_lag->value();
        } else {
            day_.assumed.push_back({WF_TEXT("lag of the house sensor %1"), {any(house.sensor_lag)}});
        }
    }

    template <class Price>
    static std::optional<double> price_of(const Optional<Price>& price, double unit) {
        return price ? std::optional{in_si(price->value()) * unit} : std::nullopt;
    }

    void add_pumps(DayHouse& house) const {
        for (const auto& pump : file_.house.pumps) {
            DayPump made;
            for (std::size_t b = 0; b < file_.house.banks.size(); ++b) {
                if (file_.house.banks[b].pump == pump.id) {
                    made.banks.push_back(b);
                }
            }
            if (pump.bleed_flow) {
                made.bleed = pump.bleed_flow->value();
            }
            if (pump.power) {
                made.power = pump.power->value();
            }
            house.pumps.push_back(made);
        }
        for (const auto& timer : file_.house.timers) {
            DayTimer made;
            for (std::size_t p = 0; p < file_.house.pumps.size(); ++p) {
                if (std::find(timer.pumps.begin(), timer.pumps.end(), file_.house.pumps[p].id) !=
                    timer.pumps.end()) {
                    made.pumps.push_back(p);
                }
            }
            house.timers.push_back(made);
        }
    }

    const VisitFile& file_;
    const Advice& advice_;
    VisitDay& day_;
};

template <class Q>
std::optional<Q> value_of(const Optional<Q>& entered) {
    return entered ? std::optional{entered->value()} : std::nullopt;
}

std::optional<Duration> since_midnight(const std::optional<TimeOfDay>& time) {
    return time ? std::optional{seconds(60.0 * time->minutes)} : std::nullopt;
}

// What a timer does with settings, on-times as its controller counts them.
class VisitPlans {
public:
    VisitPlans(const VisitFile& file, const Advice& advice)
        : file_{file}, advice_{advice}, timings_{timings_of(file)} {}

    // `settings_of` a timer: none where they are not known; `cycled`: its pumps run by period and on-time.
    template <class Settings, class Cycled>
    WayToRun way(const char* whose, Settings settings_of, Cycled cycled) const {
        WayToRun way;
        std::vector<TimerPlan> plans;
        for (const auto& timer : file_.house.timers) {
            const auto settings = settings_of(timer);
            if (!settings) {
                way.missing.push_back({whose, {label_of(file_.house, timer)}});
                continue;
            }
            if (auto plan = plan_of(timer, *settings, cycled(timer), way)) {
                plans.push_back(std::move(*plan));
            }
        }
        if (plans.size() == file_.house.timers.size() && !plans.empty()) {
            way.plans = std::move(plans);
        }
        return way;
    }

    // The advised settings; what they don't speak of is that of the timer.
    [[nodiscard]] std::optional<TimerSettings> advised(const Timer& timer) const {
        const auto* of = advice_.of(timer.id);
        if (of == nullptr) {
            return std::nullopt;
        }
        auto settings = settings_to_enter(*of);
        for (const auto* own : {file_.visit.left_of(timer.id), file_.visit.found_of(timer.id)}) {
            if (own != nullptr) {
                settings.target = settings.target ? settings.target : own->target;
                settings.start_temperature =
                    settings.start_temperature ? settings.start_temperature : own->start_temperature;
            }
        }
        return settings;
    }
    // When pads may run, the same whatever the pumping.
    TimerPlan when_pads_may_run(const Timer& timer, const TimerSettings& settings, WayToRun& way) const {
        TimerPlan plan;
        plan.start_temperature = value_of(settings.start_temperature);
        if (!plan.start_temperature) {
            way.assumed.push_back(
                {WF_TEXT("%1: pads called for at all hours, as there is no start temperature"),
                 {label_of(file_.house, timer)}});
        }
        plan.lowest_house_temperature = value_of(settings.lowest_house_temperature);
        plan.humidity_cut_off = value_of(settings.humidity_cut_off);
        if (settings.pad_hours_from && settings.pad_hours_to) {
            plan.hours_from = since_midnight(settings.pad_hours_from);
            plan.hours_to = since_midnight(settings.pad_hours_to);
        }
        return plan;
    }

private:
    std::optional<TimerPlan> plan_of(const Timer& timer, const TimerSettings& settings, bool cycled,
                                     WayToRun& way) const {
        auto plan = when_pads_may_run(timer, settings, way);
        const auto label = label_of(file_.house, timer);
        if (!cycled) {
            plan.pumping = Pumping::while_called;
            return plan;
        }
        const auto runs = pump_runs(file_.house, timings_, timer, settings);
        const auto& base =
            runs.settings.base_on_time ? runs.settings.base_on_time : runs.settings.shown_on_time;
        if (!settings.period || !base) {
            way.missing.push_back({WF_TEXT("%1: period and on-time"), {label}});
            return std::nullopt;
        }
        plan.pumping = Pumping::in_cycles;
        plan.period = settings.period->value();
        plan.base = base->value();
        plan.ceiling = value_of(runs.settings.on_time_ceiling);
        plan.target = value_of(settings.target);
        for (const auto& row : settings.trim_rows) {
            if (row.above_target && row.change) {
                plan.trim_rows.push_back({row.above_target->value(), row.change->value()});
            }
        }
        if (!plan.trim_rows.empty() && !plan.target) {
            plan.trim_rows.clear();
            way.assumed.push_back(
                {WF_TEXT("%1: the on-time stays at its base, as there is no target temperature"), {label}});
        }
        plan.dead_band = advice_.margins.dead_band;
        if (settings.review_interval) {
            plan.review_interval = settings.review_interval->value();
        }
        plan.rinse_at = since_midnight(settings.rinse_at);
        if (settings.rinse_length) {
            plan.rinse_length = settings.rinse_length->value();
        }
        return plan;
    }

    const VisitFile& file_;
    const Advice& advice_;
    VisitTimings timings_;
};

std::optional<TimerSettings> copy_of(const TimerSettings* settings) {
    return settings != nullptr ? std::optional{*settings} : std::nullopt;
}

}  // namespace

VisitDay visit_day(const VisitFile& file, const Advice& advice) {
    VisitDay day;
    VisitHouse{file, advice, day}.build();
    const VisitPlans plans{file, advice};
    const auto by_interval = [](const Timer& timer) { return timer.kind != TimerKind::on_demand; };
    day.found = plans.way(
        WF_TEXT("%1: settings found"),
        [&](const Timer& timer) { return copy_of(file.visit.found_of(timer.id)); }, by_interval);
    day.left = plans.way(
        WF_TEXT("%1: settings left"),
        [&](const Timer& timer) { return copy_of(file.visit.left_of(timer.id)); }, by_interval);
    const auto advised = [&](const Timer& timer) { return plans.advised(timer); };
    day.advised = plans.way(WF_TEXT("%1: advice"), advised, [&](const Timer& timer) {
        return by_interval(timer) && advice.of(timer.id)->cycled;
    });
    day.continuous = plans.way(WF_TEXT("%1: advice"), advised, [](const Timer&) { return false; });
    day.none.plans.emplace(file.house.timers.size());
    return day;
}

}  // namespace wetfront
