// SPDX-License-Identifier: Apache-2.0
#include "day/visit_day.h"

#include <algorithm>

#include "cycle/pump_runs.h"
#include "day/design_weather.h"

namespace wetfront {
namespace visit_day_detail {
namespace {

Message about(const std::string& name, Message what) {
    return {WF_TEXT("%1: %2"), {name, std::move(what)}};
}

/// The place of an item with that id in a list of the house; none: there is no such item.
template <class Item>
std::optional<std::size_t> place_of(const std::vector<Item>& items, const Id& id) {
    const auto found = std::ranges::find(items, id, &Item::id);
    return found == items.end() ? std::nullopt
                                : std::optional{static_cast<std::size_t>(found - items.begin())};
}

const BankQuestion* question_of(const Advice& advice, const Id& bank) {
    for (const auto& timer : advice.timers) {
        for (const auto& each : timer.banks) {
            if (each.bank == bank && each.question) {
                return &*each.question;
            }
        }
    }
    return nullptr;
}

class HouseMaker {
public:
    HouseMaker(const VisitFile& file, const Advice& advice) : file_{file}, advice_{advice} {}

    [[nodiscard]] VisitDayHouse make() {
        for (const auto& bank : file_.house.banks) {
            add_bank(bank);
        }
        if (file_.house.banks.empty()) {
            made_.missing.push_back(WF_TEXT("a pad bank"));
        }
        for (const auto& pump : file_.house.pumps) {
            add_pump(pump);
        }
        for (const auto& timer : file_.house.timers) {
            DayTimer made;
            for (const auto& pump : timer.pumps) {
                if (const auto place = place_of(file_.house.pumps, pump)) {
                    made.pumps.push_back(*place);
                }
            }
            house_.timers.push_back(std::move(made));
        }
        house_.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(airflow_)}};
        made_.assumed.push_back(WF_TEXT("All fans run all the time."));
        made_.assumed.push_back(WF_TEXT("Without the heat of birds and building."));
        for (auto& bank : house_.banks) {
            bank.face_share /= airflow_;
        }
        if (made_.missing.empty()) {
            made_.house = std::move(house_);
        }
        return std::move(made_);
    }

private:
    void lacks(const PadBank& bank, Message what) {
        made_.missing.push_back(about(bank.name, std::move(what)));
    }

    void add_bank(const PadBank& bank) {
        const auto* question = question_of(advice_, bank.id);
        if (question == nullptr) {
            lacks(bank, WF_TEXT("readings of the water, or the weather in which they were taken"));
            return;
        }
        const auto* dry = question->dry_start();
        if (dry == nullptr) {
            lacks(bank,
                  WF_TEXT("wet-through and dry-out of a dry pad; a wet start does not say what it holds"));
            return;
        }
        const auto face = face_of(file_, bank);
        if (!face || !bank.length || !bank.height) {
            lacks(bank, WF_TEXT("length, height and the speed of the air at its face, or the fans' airflow"));
            return;
        }
        const auto& test = advice_.weather.test;
        const auto evaporated =
            test ? evaporation_of(file_, advice_.weather, *test, bank) : std::optional<MassFlow>{};
        const auto rates = rates_from_timings(dry->wet_through - question->fill, dry->dry_out, dry->fans_on,
                                              advice_.margins.constant_share);
        if (!rates || !evaporated || !(in_si(*evaporated) > 0.0)) {
            lacks(bank, WF_TEXT("a weather in which it dried"));
            return;
        }
        DayBank made;
        made.face_share = in_si(face->speed) * in_si(bank.length->value()) * in_si(bank.height->value());
        airflow_ += made.face_share;
        made.holds = *evaporated / rates.value().drying;
        made.wetting = rates.value().wetting;
        made.constant_share = rates.value().constant_share;
        made.effectiveness = {effectiveness_of(file_, advice_.weather, bank).value};
        made.fill = question->fill;
        add_water(bank, made);
        house_.banks.push_back(std::move(made));
    }

    void add_water(const PadBank& bank, DayBank& made) {
        constexpr double water_density = 1000.0;
        const double taken_up = in_si(made.wetting) * in_si(made.holds) / water_density;
        const auto* water = advice_.water.bank(bank.id);
        const double measured = water != nullptr && water->flow ? in_si(*water->flow) : 0.0;
        if (measured < taken_up) {
            made_.assumed.push_back(
                about(bank.name, measured > 0.0
                                     ? Message{WF_TEXT("as much water as the pad took up by the stopwatch, "
                                                       "which is more than what was measured.")}
                                     : Message{WF_TEXT("as much water as the pad took up by the "
                                                       "stopwatch.")}));
        }
        made.flow = from_si<VolumeFlow>(std::max(measured, taken_up));
        const auto* pump = advice_.water.pump(bank.pump);
        if (pump != nullptr && pump->riser && measured > 0.0) {
            // The riser belongs to all banks of the pump, whose flows fill it together.
            double all = 0.0;
            for (const auto& other : file_.house.banks) {
                const auto* at = advice_.water.bank(other.id);
                all += other.pump == bank.pump && at != nullptr && at->flow ? in_si(*at->flow) : 0.0;
            }
            const auto riser = seconds(in_si(*pump->riser) / all);
            made.riser = riser < made.fill ? riser : seconds(0.0);
        }
        if (water != nullptr && water->filling) {
            made.arrival_shares = water->filling->shares;
            made.arrival_times = water->filling->times;
        }
    }

    void add_pump(const Pump& pump) {
        DayPump made;
        for (std::size_t i = 0; i < file_.house.banks.size(); ++i) {
            if (file_.house.banks[i].pump == pump.id) {
                made.banks.push_back(i);
            }
        }
        if (pump.bleed_flow) {
            made.bleed = pump.bleed_flow->value();
        }
        house_.pumps.push_back(std::move(made));
    }

    const VisitFile& file_;
    const Advice& advice_;
    DayHouse house_;
    VisitDayHouse made_;
    double airflow_ = 0.0;  ///< m3/s
};

class PlanMaker {
public:
    PlanMaker(const VisitFile& file, const Advice& advice, DaySettings which)
        : file_{file}, advice_{advice}, which_{which}, timings_{timings_of(file)} {}

    [[nodiscard]] VisitDayPlans make() {
        for (const auto& timer : file_.house.timers) {
            add_timer(timer);
        }
        if (!made_.missing.empty()) {
            made_.plans.clear();
        }
        return std::move(made_);
    }

private:
    void add_timer(const Timer& timer) {
        TimerPlan plan;
        if (which_ == DaySettings::none) {
            made_.plans.push_back(plan);
            return;
        }
        const auto settings = settings_of(timer);
        if (!settings) {
            made_.missing.push_back(about(timer.name, WF_TEXT("these settings were not entered")));
            return;
        }
        when_pads_may_run(timer, *settings, plan);
        const auto* advised = advice_.of(timer.id);
        const bool continuous = which_ == DaySettings::continuous || timer.kind == TimerKind::on_demand ||
                                (which_ == DaySettings::advised && (advised == nullptr || !advised->cycled));
        if (continuous) {
            plan.pumping = Pumping::while_called;
        } else {
            how_long(timer, *settings, plan);
        }
        made_.plans.push_back(std::move(plan));
    }

    [[nodiscard]] std::optional<TimerSettings> settings_of(const Timer& timer) const {
        const auto* found = file_.visit.found_of(timer.id);
        const auto* left = file_.visit.left_of(timer.id);
        std::optional<TimerSettings> settings;
        if (which_ == DaySettings::found || which_ == DaySettings::left) {
            const auto* entered = which_ == DaySettings::found ? found : left;
            return entered != nullptr ? std::optional{*entered} : std::nullopt;
        }
        if (const auto* advised = advice_.of(timer.id)) {
            settings = settings_to_enter(*advised);
            for (const auto* other : {found, left}) {
                if (other != nullptr && other->target) {
                    settings->target = other->target;
                }
            }
        }
        return settings;
    }

    void when_pads_may_run(const Timer& timer, const TimerSettings& settings, TimerPlan& plan) {
        const auto take = [](const auto& entered, auto& into) {
            if (entered) {
                into = entered->value();
            }
        };
        take(settings.start_temperature, plan.start_temperature);
        take(settings.lowest_house_temperature, plan.lowest_house_temperature);
        take(settings.target, plan.target);
        if (settings.humidity_cut_off) {
            const bool outside = std::ranges::any_of(file_.house.sensors, [](const Sensor& sensor) {
                return sensor.kind == SensorKind::humidity && sensor.place == SensorPlace::outside;
            });
            if (outside) {
                plan.humidity_cut_off = settings.humidity_cut_off->value();
            } else {
                made_.notes.push_back(about(
                    timer.name,
                    WF_TEXT("the humidity cut-off is not simulated, as no humidity sensor hangs outside.")));
            }
        }
        if (settings.pad_hours_from && settings.pad_hours_to) {
            plan.hours_from = seconds(60.0 * settings.pad_hours_from->minutes);
            plan.hours_to = seconds(60.0 * settings.pad_hours_to->minutes);
        }
    }

    void how_long(const Timer& timer, const TimerSettings& settings, TimerPlan& plan) {
        const auto runs = pump_runs(file_.house, timings_, timer, settings).settings;
        if (!runs.period || !runs.base_on_time) {
            made_.missing.push_back(about(timer.name, WF_TEXT("period and base on-time, from pump start")));
            return;
        }
        plan.pumping = Pumping::in_cycles;
        plan.period = runs.period->value();
        plan.base = runs.base_on_time->value();
        plan.dead_band = advice_.margins.dead_band;
        if (runs.on_time_ceiling) {
            plan.ceiling = runs.on_time_ceiling->value();
        }
        for (const auto& row : runs.trim_rows) {
            if (row.above_target && row.change) {
                plan.trim_rows.push_back({row.above_target->value(), row.change->value()});
            }
        }
        std::ranges::sort(plan.trim_rows, {}, [](const TrimStep& row) { return in_si(row.above_target); });
        if (!plan.trim_rows.empty() && !plan.target) {
            plan.trim_rows.clear();
            made_.notes.push_back(
                about(timer.name, WF_TEXT("the trim rows are not simulated, as no target is entered.")));
        }
        if (runs.review_interval) {
            plan.review_interval = runs.review_interval->value();
        }
        if (runs.rinse_at && runs.rinse_length) {
            plan.rinse_at = seconds(60.0 * runs.rinse_at->minutes);
            plan.rinse_length = runs.rinse_length->value();
        }
    }

    const VisitFile& file_;
    const Advice& advice_;
    DaySettings which_;
    VisitTimings timings_;
    VisitDayPlans made_;
};

}  // namespace
}  // namespace visit_day_detail

VisitDayHouse day_house_of(const VisitFile& file, const Advice& advice) {
    return visit_day_detail::HouseMaker{file, advice}.make();
}

VisitDayPlans day_plans_of(const VisitFile& file, const Advice& advice, DaySettings which) {
    return visit_day_detail::PlanMaker{file, advice, which}.make();
}

Result<Weather> design_weather_of(const VisitFile& file, const Advice& advice) {
    if (!advice.weather.day) {
        return bad_input(
            "design day", "",
            "the farm's design dry bulb, coincident wet bulb and daily range, or a weather file");
    }
    WF_TRY(const auto midnight, parse_iso8601(local_date(file.visit.started) + "T00:00:00Z", "visit"));
    const auto date = std::chrono::sys_days{
        std::chrono::floor<std::chrono::days>(std::chrono::milliseconds{midnight.unix_ms})};
    return design_day_weather(*advice.weather.day, advice.margins.clock_ahead_of_sun, date,
                              file.visit.started.utc_offset_minutes);
}

}  // namespace wetfront
