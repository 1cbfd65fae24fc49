// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "records/settings.h"
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

/// Flow measured for one pump.
struct PumpFlow {
    Id pump;
    Optional<VolumeFlow> flow;
    friend bool operator==(const PumpFlow&, const PumpFlow&) = default;
};

struct Conditions {
    Optional<Temperature> outside_dry_bulb;
    Optional<Fraction> outside_humidity;
    Optional<AbsolutePressure> barometer;
    Optional<Temperature> behind_pad;
    Optional<Temperature> house_temperature;
    Optional<Fraction> house_humidity;
    Optional<PressureDifference> static_pressure;
    Optional<Velocity> face_velocity;
    std::optional<double> bird_age_days;
    std::vector<PumpFlow> flows;
    Optional<Concentration> hardness;    ///< as CaCO3
    Optional<Concentration> alkalinity;  ///< as CaCO3
    std::optional<double> ph;
    Optional<Conductivity> conductivity;

    friend bool operator==(const Conditions&, const Conditions&) = default;
};

struct Signature {
    Person person;
    WallTime at;
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
    std::vector<std::string> open_points;
    std::vector<Signature> signatures;
    std::optional<Id> replaces;  ///< the visit that this one corrects

    [[nodiscard]] bool is_signed() const { return !signatures.empty(); }
    [[nodiscard]] bool ticked(std::string_view id) const;
    [[nodiscard]] const TimerSettings* found_of(const Id& timer) const;
    [[nodiscard]] const TimerSettings* left_of(const Id& timer) const;
    [[nodiscard]] Optional<VolumeFlow> flow_of(const Id& pump) const;
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

/// The stopwatch's results for this visit, banks in the house's order.
[[nodiscard]] VisitTimings timings_of(const VisitFile& file);

}  // namespace wetfront
