// SPDX-License-Identifier: Apache-2.0
#include "timing/readings.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>

#include "timing/mark_order.h"

namespace wetfront {
namespace {

StartedBy less_certain(StartedBy a, StartedBy b) {
    return is_by_signal(b) && !is_by_signal(a) ? b : a;
}

/// The reasons stand in their order of precedence.
void give_reason(Reading& reading, NotUsed why) {
    if (!reading.not_used || why < *reading.not_used) {
        reading.not_used = why;
    }
}

/// Goes through the marks of one visit in time order and pairs them.
class Pairing {
public:
    explicit Pairing(std::span<const SetAside> set_aside) : set_aside_{set_aside} {}

    void take(const Mark& mark, const Id& pump_id) {
        auto& pump = pumps_[pump_id];
        if (ends_watching(mark, MarksOf::timing)) {
            pump = Pump{};  // from here on nobody knows what the pump does
        } else if (mark.proof) {
            return;
        } else if (is_pump_event(mark)) {
            take_pump_event(mark, pump);
        } else if (pump.since != nullptr) {
            take_bank_mark(mark, pump_id, pump);
        }
    }

    [[nodiscard]] std::vector<Reading> finished() && {
        std::stable_sort(readings_.begin(), readings_.end(), [](const Placed& a, const Placed& b) {
            return std::tie(a.end_order, a.reading.kind, a.reading.bank) <
                   std::tie(b.end_order, b.reading.kind, b.reading.bank);
        });
        std::vector<Reading> readings;
        readings.reserve(readings_.size());
        for (auto& placed : readings_) {
            readings.push_back(std::move(placed.reading));
        }
        return readings;
    }

private:
    struct Placed {
        Reading reading;
        std::size_t end_order;
    };
    struct Pump {
        const Mark* since = nullptr;        ///< the start or stop it has been in since
        const Mark* stop_before = nullptr;  ///< the stop just before that start, if it is in a run
        /// Where the readings of the first press for a bank stand: the return of a wet start brings two.
        std::map<std::pair<Id, MarkKind>, std::vector<std::size_t>> first_press;
        std::map<Id, const Mark*> last_of_bank;
    };

    void take_pump_event(const Mark& mark, Pump& pump) {
        order_.emplace(&mark, order_.size());
        if (is_same_press(pump.since, mark)) {
            return;
        }
        const bool starts = mark.kind == MarkKind::pump_start;
        const bool stood = pump.since != nullptr && pump.since->kind == MarkKind::pump_stop;
        pump.stop_before = starts && stood ? pump.since : nullptr;
        pump.since = &mark;
        pump.first_press.clear();
    }

    void take_bank_mark(const Mark& mark, const Id& pump_id, Pump& pump) {
        order_.emplace(&mark, order_.size());
        const auto kind = kind_of(mark, pump);
        if (!kind) {
            return;
        }
        auto& last = pump.last_of_bank[mark.bank];
        const bool doubtful = doubt_of(mark, pump.since, last).has_value();
        last = &mark;

        auto& first = pump.first_press[{mark.bank, mark.kind}];
        const bool again = !first.empty();
        const auto index = add(*kind, *pump.since, mark, mark.bank, pump_id);
        auto& reading = readings_[index].reading;
        if (doubtful) {
            give_reason(reading, NotUsed::too_quick);
            return;
        }
        if (again) {
            give_reason(reading, NotUsed::pressed_again);
            return;
        }
        first.push_back(index);
        if (*kind == TimingKind::wet_return) {
            first.push_back(add(TimingKind::wet_off, *pump.stop_before, *pump.since, mark.bank, pump_id));
            stand_or_fall_together(first);
        }
        check_water_before_drip(mark, pump);
    }

    /// What the mark ends; nothing if the pump is not in the state in which that can happen.
    static std::optional<TimingKind> kind_of(const Mark& mark, const Pump& pump) {
        const bool running = pump.since->kind == MarkKind::pump_start;
        switch (mark.kind) {
            case MarkKind::water_at_far_end:
                return running ? std::optional{TimingKind::fill} : std::nullopt;
            case MarkKind::far_end_drips: {
                const bool wet_start =
                    pump.since->pads == PadsAtStart::dripping && pump.stop_before != nullptr;
                const auto drip = wet_start ? TimingKind::wet_return : TimingKind::wet_through;
                return running ? std::optional{drip} : std::nullopt;
            }
            case MarkKind::drip_ends:
                return running ? std::nullopt : std::optional{TimingKind::run_off};
            case MarkKind::first_dry_patch:
                return running ? std::nullopt : std::optional{TimingKind::dry_out};
            case MarkKind::pump_start:
            case MarkKind::pump_stop:
            case MarkKind::back_on_automatic:
                return std::nullopt;
        }
        return std::nullopt;
    }

    std::size_t add(TimingKind kind, const Mark& from, const Mark& to, const Id& bank, const Id& pump_id) {
        const auto interval = between(from, to);
        Reading reading;
        reading.kind = kind;
        reading.pump = pump_id;
        reading.bank = bank;
        reading.start_mark = from.id;
        reading.end_mark = to.id;
        reading.value = seconds(interval.seconds);
        reading.started_by =
            kind == TimingKind::wet_off ? less_certain(from.started_by, to.started_by) : from.started_by;
        reading.fans_running = from.fans_running;

        const bool is_set_aside = std::any_of(set_aside_.begin(), set_aside_.end(),
                                              [&](const SetAside& aside) { return aside.end_mark == to.id; });
        const bool switching_unseen =
            from.seen == Seen::already_there || (is_pump_event(to) && to.seen == Seen::already_there);
        if (is_set_aside) {
            give_reason(reading, NotUsed::set_aside);
        }
        if (!interval.verified || switching_unseen) {
            give_reason(reading, NotUsed::unverified);
        }
        if (interval.seconds <= 0.0) {
            give_reason(reading, NotUsed::not_positive);
        }
        if (interval.seconds > longest_reading_s) {
            give_reason(reading, NotUsed::too_long);
        }
        if (!is_pump_event(to) && to.seen == Seen::already_there) {
            give_reason(reading, NotUsed::upper_bound);
        }
        if (kind == TimingKind::wet_through && from.pads != PadsAtStart::dry) {
            give_reason(reading, NotUsed::pads_not_dry);
        }
        if (kind == TimingKind::dry_out && !from.fans_running) {
            give_reason(reading, NotUsed::fans_not_stated);
        } else if (kind == TimingKind::dry_out && !*from.fans_running) {
            give_reason(reading, NotUsed::fans_off);
        }
        readings_.push_back({std::move(reading), order_.at(&to)});
        return readings_.size() - 1;
    }

    /// Neither half of a wet start means anything without the other.
    void stand_or_fall_together(const std::vector<std::size_t>& indices) {
        for (const auto from : indices) {
            for (const auto to : indices) {
                if (readings_[from].reading.not_used && !readings_[to].reading.not_used) {
                    readings_[to].reading.not_used = readings_[from].reading.not_used;
                }
            }
        }
    }

    /// The far end cannot drip before the water is there: one of the two presses is wrong, and nothing says
    /// which.
    void check_water_before_drip(const Mark& mark, Pump& pump) {
        const auto drip = pump.first_press.find({mark.bank, MarkKind::far_end_drips});
        if (mark.kind != MarkKind::water_at_far_end || drip == pump.first_press.end()) {
            return;
        }
        for (const auto index : drip->second) {
            give_reason(readings_[index].reading, NotUsed::not_positive);
        }
        for (const auto index : pump.first_press.at({mark.bank, mark.kind})) {
            give_reason(readings_[index].reading, NotUsed::not_positive);
        }
    }

    std::span<const SetAside> set_aside_;
    std::map<Id, Pump> pumps_;
    std::map<const Mark*, std::size_t> order_;
    std::vector<Placed> readings_;
};

/// The readings of one bank and kind that count, by their place among all readings.
std::vector<std::size_t> used(const std::vector<Reading>& readings, const Id& bank, TimingKind kind) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (!readings[i].not_used && readings[i].bank == bank && readings[i].kind == kind) {
            places.push_back(i);
        }
    }
    return places;
}

std::vector<Duration> values_at(const std::vector<Reading>& readings,
                                const std::vector<std::size_t>& places) {
    std::vector<Duration> values;
    values.reserve(places.size());
    for (const auto place : places) {
        values.push_back(readings[place].value);
    }
    return values;
}

bool is_usable(const EventUncertainty& u) {
    const auto from_zero = [](double value) { return std::isfinite(value) && value >= 0.0; };
    return from_zero(in_seconds(u.hand)) && from_zero(in_seconds(u.drip_or_patch)) &&
           from_zero(in_seconds(u.by_signal)) && from_zero(u.dry_patch_share) &&
           from_zero(u.single_reading_share);
}

double mean_s(const std::vector<Duration>& values) {
    double sum = 0.0;
    for (const auto& value : values) {
        sum += in_seconds(value);
    }
    return sum / static_cast<double>(values.size());
}

/// Type B of a reading: the hand, what seeing its event adds, and the signal. Assumed values, see
/// EventUncertainty.
Duration systematic_part(TimingKind kind, bool by_signal, double mean, const EventUncertainty& u) {
    double seeing = 0.0;
    switch (kind) {
        case TimingKind::fill:
        case TimingKind::wet_off:
            break;
        case TimingKind::wet_through:
        case TimingKind::wet_return:
        case TimingKind::run_off:
            seeing = in_seconds(u.drip_or_patch);
            break;
        case TimingKind::dry_out:
            seeing = std::max(in_seconds(u.drip_or_patch), u.dry_patch_share * mean);
            break;
    }
    return seconds(std::hypot(in_seconds(u.hand), seeing, by_signal ? in_seconds(u.by_signal) : 0.0));
}

/// Spread of that kind over the banks that have repeated it.
std::optional<Spread> pooled_spread(const std::vector<Reading>& readings, std::span<const BankOfPump> banks,
                                    TimingKind kind) {
    std::vector<Spread> groups;
    for (const auto& bank : banks) {
        const auto values = values_at(readings, used(readings, bank.bank, kind));
        if (values.size() < 2) {
            continue;
        }
        if (const auto result = evaluate(values, seconds(0.0))) {
            const double deviation = in_seconds(*result.value().standard_deviation);
            groups.push_back({deviation * deviation, static_cast<int>(values.size()) - 1});
        }
    }
    return pooled(groups);
}

std::optional<TimingResult> result_of(std::vector<Reading>& readings, std::span<const BankOfPump> banks,
                                      const Id& bank, TimingKind kind, const EventUncertainty& uncertainty) {
    const auto places = used(readings, bank, kind);
    const auto values = values_at(readings, places);
    if (values.empty() || !is_usable(uncertainty)) {
        return std::nullopt;
    }
    const bool by_signal = std::any_of(places.begin(), places.end(), [&](std::size_t place) {
        return is_by_signal(readings[place].started_by);
    });
    const double mean = mean_s(values);
    const auto systematic = systematic_part(kind, by_signal, mean, uncertainty);
    // Two of three readings may coincide by chance, and Grubbs' test then calls any third one far off: what
    // the hand and the eye explain does not stand out.
    if (const auto far_off = outlier(values);
        far_off && std::abs(in_seconds(values[*far_off]) - mean) > 2.0 * in_seconds(systematic)) {
        readings[places[*far_off]].stands_out = true;
    }
    const auto spread = values.size() == 1 ? pooled_spread(readings, banks, kind) : std::nullopt;
    auto result = evaluate(values, systematic, spread, uncertainty.single_reading_share);
    return result ? std::optional{std::move(result).value()} : std::nullopt;
}

void note_fans(BankTimings& timings, const std::vector<Reading>& readings) {
    bool some_running = false;
    bool some_not = false;
    for (const auto place : used(readings, timings.bank, TimingKind::wet_through)) {
        const bool running = readings[place].fans_running.value_or(false);
        some_running = some_running || running;
        some_not = some_not || !running;
    }
    timings.fans_ran_during_wet_through = some_running && !some_not;
    timings.fans_mixed = some_running && some_not;
}

}  // namespace

std::string_view name_of(TimingKind kind) {
    return enum_name(kind);
}

std::string_view name_of(NotUsed why) {
    return enum_name(why);
}

const BankTimings* VisitTimings::of(const Id& bank) const {
    const auto found = std::find_if(banks.begin(), banks.end(),
                                    [&](const BankTimings& timings) { return timings.bank == bank; });
    return found == banks.end() ? nullptr : &*found;
}

std::vector<Reading> readings_of(std::span<const Mark> marks, std::span<const BankOfPump> banks,
                                 std::span<const SetAside> set_aside) {
    Pairing pairing{set_aside};
    for (const auto* mark : in_time_order(marks)) {
        pairing.take(*mark, pump_of(*mark, banks));
    }
    return std::move(pairing).finished();
}

VisitTimings timings_of(std::span<const Mark> marks, std::span<const BankOfPump> banks,
                        std::span<const SetAside> set_aside, const EventUncertainty& uncertainty) {
    VisitTimings visit;
    visit.readings = readings_of(marks, banks, set_aside);
    for (const auto& entry : banks) {
        const auto result = [&](TimingKind kind) {
            return result_of(visit.readings, banks, entry.bank, kind, uncertainty);
        };
        BankTimings timings;
        timings.bank = entry.bank;
        timings.pump = entry.pump;
        timings.fill = result(TimingKind::fill);
        timings.wet_through = result(TimingKind::wet_through);
        timings.run_off = result(TimingKind::run_off);
        timings.dry_out = result(TimingKind::dry_out);
        timings.wet_off = result(TimingKind::wet_off);
        timings.wet_return = result(TimingKind::wet_return);
        if (timings.fill && timings.wet_through) {
            timings.wetting = difference(*timings.wet_through, *timings.fill);
        }
        note_fans(timings, visit.readings);
        visit.banks.push_back(std::move(timings));
    }
    return visit;
}

std::vector<PumpState> pump_states(std::span<const Mark> marks, std::span<const Id> pumps, MarksOf of) {
    std::vector<PumpState> states;
    states.reserve(pumps.size());
    for (const auto& pump : pumps) {
        states.push_back({pump, false, std::nullopt, {}});
    }
    std::map<Id, const Mark*> last_of_bank;
    for (const auto* mark : in_time_order(marks)) {
        const auto state = std::find_if(states.begin(), states.end(),
                                        [&](const PumpState& entry) { return entry.pump == mark->pump; });
        if (state == states.end()) {
            continue;
        }
        if (ends_watching(*mark, of)) {
            *state = {state->pump, false, std::nullopt, {}};
            continue;
        }
        if (mark->proof != (of == MarksOf::proof_run)) {
            continue;
        }
        const auto* since = state->since ? &*state->since : nullptr;
        if (is_pump_event(*mark)) {
            if (!is_same_press(since, *mark)) {
                state->running = mark->kind == MarkKind::pump_start;
                state->since = *mark;
                state->marks_since.clear();
            }
            continue;
        }
        auto& last = last_of_bank[mark->bank];
        if (!doubt_of(*mark, since, last)) {
            state->marks_since.push_back(*mark);
        }
        last = mark;
    }
    return states;
}

}  // namespace wetfront
