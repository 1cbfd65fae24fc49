// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <random>
#include <string>
#include <vector>

#include "records/fields.h"
#include "records/record_text.h"

namespace wetfront::test {

/// Fills records with values from anywhere in their ranges. Invented, and consistent: every reference
/// resolves.
class VisitMaker {
public:
    /// `share` of the optional fields are filled; 1 fills all.
    VisitMaker(unsigned seed, double share) : random_{seed}, share_{share} {}

    VisitFile file() {
        VisitFile file;
        fill(file.farm);
        file.farm.name = "Farm \"quoted\" \\ back";
        // A wet bulb above the dry bulb is refused: keep these two apart.
        file.farm.design_dry_bulb = entered<Temperature>("55degC");
        file.farm.design_wet_bulb = entered<Temperature>("5degC");
        file.house = house(file.farm.id);
        file.visit = visit(file.house);
        return file;
    }

    template <class Q>
    static Entered<Q> entered(std::string_view text) {
        return Entered<Q>::parse(text, "made").value();
    }

private:
    std::size_t below(std::size_t count) { return random_() % count; }
    bool chance() { return static_cast<double>(random_()) < share_ * 4294967296.0; }
    Id new_id() { return Id{"id-" + std::to_string(++ids_)}; }

    template <class R>
    void fill(R& record) {
        each_field(record, [&](const Field& field, auto& member) { fill(field, member); });
    }

    template <class Q>
    void fill(const Field& field, Optional<Q>& member) {
        if (!chance()) {
            return;
        }
        const auto units = units_of(KindOf<Q>::value);
        const auto& unit = units[below(units.size())];
        const double where = static_cast<double>(random_()) / 4294967296.0;
        const AnyQuantity value{KindOf<Q>::value, field.least + where * (field.most - field.least)};
        // The unit of a plain share is a lone "1", which only reads apart from the number after a blank.
        const bool bare = unit.symbol == "1";
        auto text = print_any(value, unit);
        member = entered<Q>(bare ? text.substr(0, text.size() - 1) + " 1" : text);
    }
    void fill(const Field& field, std::optional<double>& member) {
        if (chance()) {
            member = field.least + static_cast<double>(below(1000)) / 1000.0 * (field.most - field.least);
        }
    }
    void fill(const Field&, std::optional<TimeOfDay>& member) {
        if (chance()) {
            member = TimeOfDay{static_cast<int>(below(1440))};
        }
    }
    void fill(const Field&, std::optional<bool>& member) {
        if (chance()) {
            member = below(2) == 1;
        }
    }
    void fill(const Field&, std::optional<std::int64_t>& member) {
        if (chance()) {
            member = static_cast<std::int64_t>(random_());
        }
    }
    void fill(const Field&, std::optional<Id>& member) {
        if (chance()) {
            member = new_id();
        }
    }
    void fill(const Field&, std::optional<Moment>& member) {
        if (chance()) {
            fill(member.emplace());
        }
    }
    void fill(const Field&, bool& member) { member = below(2) == 1; }
    void fill(const Field&, std::int64_t& member) {
        member = static_cast<std::int64_t>(random_()) * 1'000'000'007;
    }
    void fill(const Field&, std::string& member) {
        constexpr std::array texts{"", "pl\xC3\xA1stico", "a, b; c", "{[\"%1\"]}",
                                   "90 \xC2\xB0"
                                   "F"};
        member = texts[below(texts.size())];
    }
    void fill(const Field& field, Id& member) {
        const std::string_view key = field.key;
        if (key == "id" || (key == "template_id" && chance())) {
            member = new_id();
        }
    }
    // Put in where the kind of its timer is known.
    void fill(const Field&, std::optional<SettingTemplate>&) {}
    void fill(const Field&, WallTime& member) {
        member.unix_ms = static_cast<std::int64_t>(random_()) * 1000 + static_cast<std::int64_t>(below(1000));
        member.utc_offset_minutes = static_cast<std::int32_t>(below(1681)) - 840;
    }
    template <NamedEnum E>
    void fill(const Field&, E& member) {
        member = EnumNames<E>::all[below(EnumNames<E>::all.size())].value;
    }
    // Lists are filled where it is known how many are wanted; records inside records are filled in turn.
    template <class T>
    void fill(const Field&, std::vector<T>&) {}
    template <class T>
    requires RecordOf<T, PumpCurvePoint> || RecordOf<T, OutletChange> || RecordOf<T, FacePoint> ||
        RecordOf<T, OutletCatch> || RecordOf<T, FanStage>
    void fill(const Field&, std::vector<T>& list) {
        list.resize(below(4));
        for (auto& item : list) {
            fill(item);
        }
    }
    // The last one makes it long enough for a signature.
    void fill(const Field&, std::vector<Stroke>& strokes) {
        if (!chance()) {
            return;
        }
        strokes.resize(below(4));
        for (auto& stroke : strokes) {
            stroke.points.resize(1 + below(30));
            for (auto& point : stroke.points) {
                point = {static_cast<int>(below(2501)), static_cast<int>(below(1001))};
            }
        }
        strokes.push_back({{{0, 1000}, {2500, 0}}});
    }
    template <class R>
    requires RecordOf<R, StopAgreement> || RecordOf<R, Conditions> || RecordOf<R, Limits> ||
        RecordOf<R, BootTime> || RecordOf<R, Person>
    void fill(const Field&, R& member) { fill(member); }

    template <class T>
    T made() {
        T record;
        fill(record);
        return record;
    }

    House house(const Id& farm) {
        auto house = made<House>();
        house.farm = farm;
        house.name = "House";
        for (std::size_t i = 0; i < 1 + below(4); ++i) {
            house.pumps.push_back(made<Pump>());
        }
        for (std::size_t i = 0; i < 1 + below(8); ++i) {
            house.banks.push_back(made<PadBank>());
            house.banks.back().pump = house.pumps[below(house.pumps.size())].id;
        }
        house.timers.push_back(made<Timer>());
        if (chance()) {
            house.timers.back().controller = generic_template(house.timers.back().kind);
        }
        for (const auto& pump : house.pumps) {
            house.timers.back().pumps.push_back(pump.id);
        }
        house.sensors.push_back(made<Sensor>());
        house.maintenance.push_back(made<Maintenance>());
        house.maintenance.back().banks = {house.banks.front().id};
        house.maintenance.push_back(made<Maintenance>());
        house.maintenance.back().pump = house.pumps.front().id;
        return house;
    }

    TimerSettings settings(const Id& timer) {
        auto settings = made<TimerSettings>();
        settings.timer = timer;
        settings.trim_rows.resize(1 + below(4));
        for (auto& row : settings.trim_rows) {
            fill(row);
        }
        return settings;
    }

    Visit visit(const House& house) {
        auto visit = made<Visit>();
        visit.house = house.id;
        visit.persons.push_back(made<Person>());
        visit.instruments.push_back(made<Instrument>());
        visit.ticks.push_back({"safety.first", true, ""});
        visit.ticks.push_back({"safety.second", false, "later"});
        visit.conditions.flows.push_back(made<PumpFlow>());
        visit.conditions.flows.back().pump = house.pumps.front().id;
        visit.conditions.at_banks.push_back(made<BankConditions>());
        visit.conditions.at_banks.back().bank = house.banks.front().id;
        visit.found.push_back(settings(house.timers.front().id));
        visit.left.push_back(settings(house.timers.front().id));
        visit.proof.push_back(made<ProofNotes>());
        visit.proof.back().timer = house.timers.front().id;
        visit.proof.back().even_drip.reset();
        visit.proof.back().dry_patch.reset();
        visit.proof.push_back(made<ProofNotes>());
        visit.proof.back().bank = house.banks.front().id;
        visit.proof.back().cycles_since_change.reset();
        visit.photos.push_back(made<Photo>());
        visit.photos.back().sha256 = std::string(64, 'a');
        visit.photos.push_back(made<Photo>());
        visit.photos.back().sha256 = std::string(32, '0') + std::string(32, 'f');
        visit.photos.back().bank = house.banks.front().id;
        visit.open_points = {"one", "two \xE2\x80\x93 dash"};
        visit.signatures.push_back(made<Signature>());
        for (std::size_t i = 0; i < 3 + below(20); ++i) {
            auto mark = made<Mark>();
            mark.at.boot_id = "boot";
            const auto& bank = house.banks[below(house.banks.size())];
            mark.pump = bank.pump;
            mark.bank = mark.kind == MarkKind::pump_start || mark.kind == MarkKind::pump_stop ||
                                mark.kind == MarkKind::back_on_automatic
                            ? Id{}
                            : bank.id;
            visit.marks.push_back(mark);
        }
        visit.set_aside.push_back({visit.marks.back().id, "seen too late"});
        return visit;
    }

    std::mt19937 random_;
    double share_;
    int ids_ = 0;
};

/// A consistent visit with every optional field filled.
inline VisitFile full_visit(unsigned seed = 1) {
    return VisitMaker{seed, 2.0}.file();
}

}  // namespace wetfront::test
