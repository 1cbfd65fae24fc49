// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "records/house.h"
#include "records/photo.h"
#include "records/stroke.h"
#include "timing/readings.h"

namespace wetfront {

struct Person {
    std::string name;
    std::string role;
    friend bool operator==(const Person&, const Person&) = default;
};

struct Instrument {
    std::string name;
    std::string last_checked;  ///< a date as written, "2026-03-14"
    friend bool operator==(const Instrument&, const Instrument&) = default;
};

/// What was agreed with the grower before any pump was stopped.
struct StopAgreement {
    Optional<Duration> longest_pump_off;
    Optional<Temperature> stop_temperature;  ///< house temperature at which the test ends
    std::string agreed_with;

    friend bool operator==(const StopAgreement&, const StopAgreement&) = default;
};

/// A line of a checklist that somebody ticked. Ids are those of the checklists in core/rules.
struct Tick {
    std::string id;
    bool done = false;
    std::string note;
    friend bool operator==(const Tick&, const Tick&) = default;
};

/// Flow measured for one pump: as read, or by what it was read from.
struct PumpFlow {
    Id pump;
    Optional<VolumeFlow> flow;
    Optional<Length> drawdown_fall{};  ///< of the sump's level with the make-up shut
    Optional<Duration> drawdown_time{};
    Optional<Volume> meter_volume{};
    Optional<Duration> meter_time{};
    Optional<Volume> bucket_volume{};  ///< the pump's whole flow into a vessel
    Optional<Duration> bucket_time{};
    Optional<VolumeFlow> lost{};  ///< by leaks and drift
    friend bool operator==(const PumpFlow&, const PumpFlow&) = default;
};

/// Air speed at one point of a pad's face.
struct FacePoint {
    Optional<Velocity> speed;
    friend bool operator==(const FacePoint&, const FacePoint&) = default;
};

/// Water caught at one outlet.
struct OutletCatch {
    Optional<Length> at;  ///< from the pump end
    Optional<Volume> volume;
    Optional<Duration> time;
    friend bool operator==(const OutletCatch&, const OutletCatch&) = default;
};

/// What was measured at one bank.
struct BankConditions {
    Id bank;
    Optional<Temperature> behind_pad;
    Optional<PressureDifference> pressure_drop;  ///< of the air through the pad
    Optional<Length> inlet_head;                 ///< water's, at the pump end of the header
    std::vector<FacePoint> face_points;
    std::vector<OutletCatch> catches;
    friend bool operator==(const BankConditions&, const BankConditions&) = default;
};

struct Conditions {
    Optional<Temperature> outside_dry_bulb;
    Optional<Fraction> outside_humidity;
    Optional<Temperature> outside_wet_bulb;   ///< in place of the humidity
    Optional<Temperature> outside_dew_point;  ///< in place of both
    Optional<AbsolutePressure> barometer;
    Optional<Temperature> behind_pad;  ///< of all banks, where not taken bank by bank
    Optional<Temperature> house_temperature;
    Optional<Fraction> house_humidity;
    Optional<PressureDifference> static_pressure;
    Optional<Velocity> face_velocity;
    Optional<TemperatureDifference> thermometer_accuracy;
    Optional<Fraction> hygrometer_accuracy;  ///< in relative humidity
    std::optional<double> bird_age_days;
    std::vector<PumpFlow> flows;
    std::vector<BankConditions> at_banks;
    Optional<Concentration> hardness;          ///< total, of the make-up water, as CaCO3
    Optional<Concentration> calcium_hardness;  ///< as CaCO3
    Optional<Concentration> alkalinity;        ///< as CaCO3
    Optional<Concentration> dissolved_solids;
    std::optional<double> ph;             ///< of the make-up water
    Optional<Conductivity> conductivity;  ///< of the make-up water
    std::optional<double> sump_ph;
    Optional<Conductivity> sump_conductivity;
    Optional<Temperature> sump_temperature;

    friend bool operator==(const Conditions&, const Conditions&) = default;
};

/// What was looked at in a proof run rather than timed: of one bank or of one timer, the other Id is empty.
struct ProofNotes {
    Id timer;
    Id bank;
    std::optional<bool> even_drip;  ///< of a bank: its far end drips evenly before the pump stops
    std::optional<bool> dry_patch;  ///< of a bank: somewhere on its face, at any time of the cycle
    /// Of a timer: the first run watched counted from the last change of a setting; 1: the first after it.
    std::optional<double> cycles_since_change;
    std::optional<Moment> answered{};  ///< the last of these answers

    friend bool operator==(const ProofNotes&, const ProofNotes&) = default;
};

struct Signature {
    Person person;
    WallTime at;
    std::vector<Stroke> drawn{};  ///< by hand; empty: he signs on paper
    friend bool operator==(const Signature&, const Signature&) = default;
};

/// One visit to one house: everything that was asked, seen, timed and set. Marks come from the journal.
struct Visit {
    Id id;
    Id house;
    WallTime started;
    std::vector<Person> persons;
    std::vector<Instrument> instruments;
    StopAgreement agreement;
    std::vector<Tick> ticks;
    Conditions conditions;
    std::vector<Mark> marks;
    std::vector<SetAside> set_aside;
    std::vector<TimerSettings> found;
    std::vector<TimerSettings> left;
    std::vector<ProofNotes> proof;
    std::vector<std::string> open_points;
    std::vector<Signature> signatures;
    std::optional<Id> replaces;   ///< the visit that this one corrects
    std::vector<Photo> photos{};  ///< each picture once

    [[nodiscard]] bool is_signed() const { return !signatures.empty(); }
    [[nodiscard]] bool ticked(std::string_view id) const;
    [[nodiscard]] const TimerSettings* found_of(const Id& timer) const;
    [[nodiscard]] const TimerSettings* left_of(const Id& timer) const;
    [[nodiscard]] const PumpFlow* measured_flow(const Id& pump) const;
    [[nodiscard]] const BankConditions* conditions_at(const Id& bank) const;
    [[nodiscard]] const ProofNotes* proof_of_timer(const Id& timer) const;
    [[nodiscard]] const ProofNotes* proof_of_bank(const Id& bank) const;
    friend bool operator==(const Visit&, const Visit&) = default;
};

/// A visit with all that it speaks of: what a visit file holds and what advice, rules and sheet are made
/// from.
struct VisitFile {
    Farm farm;
    House house;
    Visit visit;

    friend bool operator==(const VisitFile&, const VisitFile&) = default;
};

/// Every bank with its pump, in the house's order.
[[nodiscard]] std::vector<BankOfPump> banks_of_pumps(const House& house);

/// The stopwatch's results for this visit, banks in the house's order.
[[nodiscard]] VisitTimings timings_of(const VisitFile& file);

}  // namespace wetfront
