// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/enum_names.h"
#include "base/ids.h"
#include "records/limits.h"
#include "records/setting_template.h"
#include "units/quantity_text.h"

namespace wetfront {

/// A customer's site with the weather its houses are designed for.
struct Farm {
    Id id;
    std::string name;
    std::string customer;
    std::string service_firm;
    Optional<Length> elevation;
    Optional<Temperature> design_dry_bulb;  ///< hottest hour of the design day
    Optional<Temperature> design_wet_bulb;  ///< coincident with it
    Optional<TemperatureDifference> design_daily_range;
    Limits limits;
    std::string currency{};              ///< what the two prices are in, as people write it
    Optional<WaterPrice> water_price{};  ///< of what the pads use
    Optional<EnergyPrice> energy_price{};

    friend bool operator==(const Farm&, const Farm&) = default;
};

/// What a pump lifts at a flow.
struct PumpCurvePoint {
    Optional<VolumeFlow> flow;
    Optional<Length> head;

    friend bool operator==(const PumpCurvePoint&, const PumpCurvePoint&) = default;
};

/// A pump with its sump; it feeds one or more banks.
struct Pump {
    Id id;
    std::string name;
    Optional<Volume> sump_volume;     ///< that the pump can take, at the working level
    Optional<Area> sump_area;         ///< of its water's surface
    Optional<Length> sump_freeboard;  ///< from the working level to where it runs over
    Optional<VolumeFlow> make_up_flow;
    Optional<VolumeFlow> bleed_flow;
    Optional<Volume> riser_volume;   ///< pipe between pump and header
    Optional<Length> supply_length;  ///< of that pipe
    Optional<Length> supply_bore;
    Optional<Length> static_lift;  ///< of the header above the water in the sump
    std::vector<PumpCurvePoint> curve;
    Optional<Power> power{};  ///< electric, while it runs

    friend bool operator==(const Pump&, const Pump&) = default;
};

/// Where a bank's header is fed, seen from outside the house.
enum class PumpEnd { left, right };

/// From there on, seen from the pump end, outlets of another bore.
struct OutletChange {
    Optional<Length> from;
    Optional<Length> bore;

    friend bool operator==(const OutletChange&, const OutletChange&) = default;
};

/// One row of pads under one header.
struct PadBank {
    Id id;
    std::string name;
    Id pump;
    PumpEnd pump_end = PumpEnd::left;
    Optional<Length> length;
    Optional<Length> height;
    Optional<Length> thickness;
    Optional<Length> header_bore;
    Optional<Length> outlet_bore;
    Optional<Length> outlet_spacing;
    std::vector<OutletChange> outlet_changes;
    std::optional<double> discharge_coefficient;
    Optional<Fraction> clogged_share;  ///< of the outlets
    Optional<Length> header_rise;      ///< of the far end above the pump end; below 0 where it falls

    friend bool operator==(const PadBank&, const PadBank&) = default;
};

/// What switches pumps: one timer drives one or more pumps.
struct Timer {
    Id id;
    std::string name;
    TimerKind kind = TimerKind::trimmed;
    std::vector<Id> pumps;
    Optional<Duration> resolution;         ///< smallest step of an on-time
    Optional<Duration> period_resolution;  ///< smallest step of a period
    Id template_id;                        ///< of the setting template that describes it; empty: none
    /// That template as it was when it was chosen, so that a visit stands alone. The kind above is then the
    /// one that it says; the steps were taken over with it, and nothing checks that they stayed the same.
    std::optional<SettingTemplate> controller;

    friend bool operator==(const Timer&, const Timer&) = default;
};

/// Takes over a template: its id, its content, and the kind and the steps of on-time and period that it says.
/// Asks for one that check_template() accepts.
void choose_controller(Timer& timer, const SettingTemplate& chosen);
/// Takes it out again; kind and steps stay as they are.
void forget_controller(Timer& timer);
/// How its controller is described; null where it is not, or where that is not whole (check_template()).
[[nodiscard]] const SettingTemplate* described_controller(const Timer& timer);
/// Whether base, ceiling and shown on-time of that timer count from a full header.
[[nodiscard]] bool counts_from_full_header(const Timer& timer);
/// A trimmed timer can hold any setting, another the ones that its controller is described with.
[[nodiscard]] bool can_hold(const Timer& timer, TemplateKey key);

enum class SensorKind { temperature, humidity };
enum class SensorPlace { outside, in_house, behind_pad };

struct Sensor {
    Id id;
    SensorKind kind = SensorKind::temperature;
    SensorPlace place = SensorPlace::in_house;

    friend bool operator==(const Sensor&, const Sensor&) = default;
};

/// What was done to pads, outlets or pumps, so that they are other than before.
enum class Upkeep { outlets_cleaned, new_pads, new_pump, other };
[[nodiscard]] Message label_of(Upkeep what);

/// Something that was done on one day. It is done to banks, or to a pump and with it to all banks that it
/// feeds; to at least one of both.
struct Maintenance {
    Id id;
    WallTime on;  ///< when that day began there; what is dirty is cleaned before it is timed, so a visit of
                  ///< the same day comes after it
    Upkeep what = Upkeep::outlets_cleaned;
    std::vector<Id> banks;
    Id pump;  ///< empty: none
    std::string note;

    [[nodiscard]] bool done_to(const PadBank& bank) const;
    friend bool operator==(const Maintenance&, const Maintenance&) = default;
};

/// From that much above target on, this much air goes through the pads. A timer's target counts, as the
/// controller of most houses switches fans and pads by one.
struct FanStage {
    Optional<TemperatureDifference> above_target;
    Optional<VolumeFlow> airflow;

    friend bool operator==(const FanStage&, const FanStage&) = default;
};

struct House {
    Id id;
    Id farm;
    std::string name;
    Optional<VolumeFlow> fan_airflow;  ///< of all fans that run with the pads
    Optional<Area> cross_section;      ///< through which that air goes down the house
    std::vector<Pump> pumps;
    std::vector<PadBank> banks;
    std::vector<Timer> timers;
    std::vector<Sensor> sensors;
    std::vector<Maintenance> maintenance;  ///< in the order of entry
    std::vector<FanStage> fan_stages{};    ///< empty: all fans run whenever pads may
    std::optional<double> birds{};         ///< how many the house holds
    Optional<Mass> bird_mass{};            ///< of one, when they are heaviest
    Optional<Power> building_gain{};       ///< by sun and building into the house's air, at the hottest hour
    Optional<Duration> sensor_lag{};       ///< until the house sensor shows 63 % of a step of its air

    [[nodiscard]] const Pump* pump(const Id& id) const;
    [[nodiscard]] const PadBank* bank(const Id& id) const;
    [[nodiscard]] const Timer* timer(const Id& id) const;
    [[nodiscard]] std::vector<const PadBank*> banks_of(const Timer& timer) const;
    [[nodiscard]] std::vector<const PadBank*> banks_of(const Pump& pump) const;
    friend bool operator==(const House&, const House&) = default;
};

// clang-format off
template <> struct EnumNames<PumpEnd> { static constexpr std::array all{
    EnumName{PumpEnd::left, "left"}, EnumName{PumpEnd::right, "right"}}; };
template <> struct EnumNames<SensorKind> { static constexpr std::array all{
    EnumName{SensorKind::temperature, "temperature"}, EnumName{SensorKind::humidity, "humidity"}}; };
template <> struct EnumNames<SensorPlace> { static constexpr std::array all{
    EnumName{SensorPlace::outside, "outside"}, EnumName{SensorPlace::in_house, "in house"},
    EnumName{SensorPlace::behind_pad, "behind pad"}}; };
template <> struct EnumNames<Upkeep> { static constexpr std::array all{
    EnumName{Upkeep::outlets_cleaned, "outlets cleaned"}, EnumName{Upkeep::new_pads, "new pads"},
    EnumName{Upkeep::new_pump, "new pump"}, EnumName{Upkeep::other, "other"}}; };
// clang-format on

}  // namespace wetfront
